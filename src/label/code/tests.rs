//! Codes against the worked examples and tables of ISO/IEC 18004.

use super::*;

/// Data and error-correction words of `text`, in the order in which they are placed.
fn words(text: &str, level: EcLevel) -> (Vec<u8>, Vec<u8>) {
    let version = Version::Normal(1);
    let mut bits = Bits::new(version);
    bits.push_optimal_data(text.as_bytes()).unwrap();
    bits.push_terminator(level).unwrap();
    ec::construct_codewords(&bits.into_bytes(), version, level).unwrap()
}

/// The words of a code of version 1, read back from its modules: the format information names the mask (ISO/IEC 18004,
/// 7.9), which is taken off; the words run in pairs of columns from the lower right (7.7.3).
fn read_back(code: &Code) -> Vec<u8> {
    let grid: Vec<&[bool]> = code.rows().collect();
    assert_eq!(grid.len(), 21);
    let format = (0..5).fold(0, |bits, x| bits << 1 | usize::from(grid[8][x])) ^ 0b10101;
    let masked = |y: usize, x: usize| match format & 7 {
        0 => (y + x).is_multiple_of(2),
        1 => y.is_multiple_of(2),
        2 => x.is_multiple_of(3),
        3 => (y + x).is_multiple_of(3),
        4 => (y / 2 + x / 3).is_multiple_of(2),
        5 => y * x % 2 + y * x % 3 == 0,
        6 => (y * x % 2 + y * x % 3).is_multiple_of(2),
        _ => (y * x % 3 + (y + x) % 2).is_multiple_of(2),
    };
    let function = |y: usize, x: usize| (y < 9 && !(9..=12).contains(&x)) || (y > 12 && x < 9) || y == 6 || x == 6;
    let mut bits = Vec::new();
    for (turn, right) in [20, 18, 16, 14, 12, 10, 8, 5, 3, 1].into_iter().enumerate() {
        for step in 0..21 {
            let y = if turn % 2 == 0 { 20 - step } else { step };
            for x in [right, right - 1] {
                if !function(y, x) {
                    bits.push(grid[y][x] != masked(y, x));
                }
            }
        }
    }
    bits.chunks(8).map(|byte| byte.iter().fold(0, |word, bit| word << 1 | u8::from(*bit))).collect()
}

/// ISO/IEC 18004, annex I: 01234567 at 1-M.
const ANNEX_I: ([u8; 16], [u8; 10]) = (
    [0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11],
    [0xA5, 0x24, 0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55],
);

/// HELLO WORLD at 1-Q, worked out with Reed-Solomon code apart from this encoder.
const HELLO_Q: ([u8; 13], [u8; 13]) = (
    [32, 91, 11, 120, 209, 114, 220, 77, 67, 64, 236, 17, 236],
    [168, 72, 22, 82, 217, 54, 156, 0, 46, 15, 180, 122, 16],
);

/// The same at 1-M.
const HELLO_M: [u8; 10] = [196, 35, 39, 119, 235, 215, 231, 226, 93, 23];

#[test]
fn the_worked_examples_come_out_word_for_word() {
    assert_eq!(words("01234567", EcLevel::M), (ANNEX_I.0.to_vec(), ANNEX_I.1.to_vec()));
    assert_eq!(words("HELLO WORLD", EcLevel::Q), (HELLO_Q.0.to_vec(), HELLO_Q.1.to_vec()));
    assert_eq!(words("HELLO WORLD", EcLevel::M).1, HELLO_M);
}

#[test]
fn the_modules_of_a_code_hold_the_words_of_the_worked_example() {
    let code = Code::new("HELLO WORLD", Correction::Q).unwrap();
    assert_eq!((code.version(), code.correction), (1, Correction::Q));
    assert_eq!(read_back(&code), [&HELLO_Q.0[..], &HELLO_Q.1[..]].concat());
}

/// Alphanumeric characters and bytes at levels L, M, Q and H (ISO/IEC 18004, table 7).
const CAPACITIES: &[(usize, [usize; 4], [usize; 4])] = &[
    (1, [25, 20, 16, 10], [17, 14, 11, 7]),
    (2, [47, 38, 29, 20], [32, 26, 20, 14]),
    (3, [77, 61, 47, 35], [53, 42, 32, 24]),
    (4, [114, 90, 67, 50], [78, 62, 46, 34]),
    (5, [154, 122, 87, 64], [106, 84, 60, 44]),
    (6, [195, 154, 108, 84], [134, 106, 74, 58]),
    (7, [224, 178, 125, 93], [154, 122, 86, 64]),
    (8, [279, 221, 157, 122], [192, 152, 108, 84]),
    (9, [335, 262, 189, 143], [230, 180, 130, 98]),
    (10, [395, 311, 221, 174], [271, 213, 151, 119]),
    (20, [1249, 970, 702, 557], [858, 666, 482, 382]),
    (40, [4296, 3391, 2420, 1852], [2953, 2331, 1663, 1273]),
];

#[test]
fn each_version_holds_what_the_standard_says_and_one_more_takes_the_next() {
    for (version, alphanumeric, bytes) in CAPACITIES {
        for (number, correction) in Correction::ALL.iter().enumerate() {
            for (letter, most) in [("A", alphanumeric[number]), ("a", bytes[number])] {
                let full = Code::new(&letter.repeat(most), *correction).unwrap();
                assert_eq!((full.version(), full.correction), (*version, *correction), "{letter}");
                assert_eq!(full.modules, 17 + 4 * version);
                match Code::new(&letter.repeat(most + 1), *correction) {
                    Some(more) => assert_eq!(more.version(), version + 1),
                    None => assert_eq!(*version, 40),
                }
            }
        }
    }
}

#[test]
fn a_size_takes_the_highest_level_that_fits_and_never_less_than_asked() {
    for length in 1..200 {
        let text = "A".repeat(length);
        for least in Correction::ALL {
            let code = Code::new(&text, *least).unwrap();
            assert!(code.correction >= *least);
            let (_, most, _) = CAPACITIES[code.version() - 1];
            let fits = |correction: &Correction| length <= most[*correction as usize];
            assert_eq!(Some(&code.correction), Correction::ALL.iter().rev().find(|level| fits(level)), "{length}");
        }
    }
}

#[test]
fn an_address_in_capitals_is_small_and_one_in_small_letters_larger() {
    // 35 alphanumeric characters: what version 3 holds at level H (ISO/IEC 18004, table 7).
    let capitals = "HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/";
    assert_eq!(capitals.len(), 35);
    let of = |text: &str, least| Code::new(text, least).map(|code| (code.version(), code.correction)).unwrap();
    assert_eq!(of(capitals, Correction::Q), (3, Correction::H));
    assert_eq!(of(&capitals.to_lowercase(), Correction::Q).0, 4);
}

#[test]
fn an_address_that_is_too_long_has_no_code() {
    assert_eq!(Code::new(&"a".repeat(3000), Correction::L), None);
}

/// The encoder tries all masks module by module: much slower, and the same.
#[test]
fn the_mask_is_the_one_that_the_encoder_would_choose() {
    let mut texts: Vec<_> =
        (0..60).map(|n| format!("HTTPS://GUIDES.EXAMPLE/M7QK3W{:02}/G{}/", n * 7 % 100, n % 9)).collect();
    texts.extend((1..12).map(|n| "Some Text ".repeat(n * 2)));
    for text in texts {
        for least in Correction::ALL {
            let code = Code::new(&text, *least).unwrap();
            let version = Version::Normal(code.version() as i16);
            let slow = QrCode::with_version(&text, version, level(code.correction)).unwrap();
            let slow: Vec<_> = slow.into_colors().into_iter().map(|colour| colour == Color::Dark).collect();
            assert_eq!(code.dark, slow, "{text}");
        }
    }
}

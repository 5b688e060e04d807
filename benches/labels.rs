//! Times 10,000 labels in one process: encoding and drawing, apart and together.
//!
//!     cargo bench --bench labels

use lockerleaf::label::address::address;
use lockerleaf::label::code::Code;
use lockerleaf::label::draw;
use lockerleaf::model::files::book::Correction;
use std::time::Instant;

const LABELS: usize = 10_000;

fn main() {
    let addresses: Vec<_> = (0..LABELS).map(one).collect();
    let least = |number: usize| if number.is_multiple_of(2) { Correction::Q } else { Correction::H };
    let encode = |number: usize| Code::new(&addresses[number], least(number)).expect("an address of 45 letters fits");
    let codes: Vec<_> = timed("encode", || (0..LABELS).map(encode).collect());
    let drawn: usize = timed("draw as SVG", || codes.iter().map(|code| draw::svg(code, &addresses[0]).len()).sum());
    let whole: usize = timed("encode and draw as SVG", || {
        (0..LABELS).map(|number| draw::svg(&encode(number), &addresses[number]).len()).sum()
    });
    let pictures: usize = timed("draw as PNG", || codes.iter().map(|code| draw::png(code, 8).len()).sum());
    println!("bytes of a label: {} as SVG, {} as PNG", drawn / LABELS, pictures / LABELS);
    assert!(whole > LABELS * 1000, "labels are pictures");
}

/// An address of a made-up guide: no two are the same.
fn one(number: usize) -> String {
    const LETTERS: &[u8] = b"23456789ABCDEFGHJKMNPQRSTVWXYZ";
    let mut rest = number.wrapping_mul(2_654_435_761);
    let key: String = (0..8)
        .map(|_| {
            let letter = LETTERS[rest % LETTERS.len()];
            rest = rest / LETTERS.len() + 7919 * number;
            letter as char
        })
        .collect();
    address("https://guides.saltmarrow.example", &key, &format!("G{}", number % 9 + 1))
}

fn timed<T>(what: &str, work: impl FnOnce() -> T) -> T {
    let started = Instant::now();
    let out = work();
    let seconds = started.elapsed().as_secs_f64();
    println!("{what:<24} {seconds:.3} s  {:.0} labels/s on one core", LABELS as f64 / seconds);
    out
}

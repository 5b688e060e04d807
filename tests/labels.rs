//! Single labels, read back by a third decoder (rqrr), whole and with a patch.

mod common;

use lockerleaf::label::printing;
use lockerleaf::label::{code::Code, draw};
use lockerleaf::load::disk::Folder;
use lockerleaf::look;
use lockerleaf::model::files::book::Correction;

/// The pixels of a PNG of one bit a pixel.
fn pixels(png: &[u8]) -> (usize, Vec<u8>) {
    let mut reader = png::Decoder::new(std::io::Cursor::new(png)).read_info().unwrap();
    let mut data = vec![0; reader.output_buffer_size().unwrap()];
    let frame = reader.next_frame(&mut data).unwrap();
    let side = frame.width as usize;
    let light = |at: usize| data[at / side * frame.line_size + at % side / 8] & (0x80 >> (at % side % 8)) != 0;
    (side, (0..side * side).map(|at| if light(at) { 255 } else { 0 }).collect())
}

fn read(side: usize, grey: &[u8]) -> Option<(usize, u16, String)> {
    let mut picture = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| grey[y * side + x]);
    let grids = picture.detect_grids();
    let (about, text) = grids.first()?.decode().ok()?;
    Some((about.version.0, about.ecc_level, text))
}

#[test]
fn each_label_of_the_demo_is_read_by_a_third_decoder() {
    let looked = look(&Folder::new(common::root())).unwrap();
    let mut count = 0;
    for van in &looked.vans {
        for place in van.places.iter().filter(|place| place.labelled) {
            let (address, code) = printing::code(&looked.book, van, place).unwrap();
            let (side, grey) = pixels(&draw::png(&code, 8));
            let (version, _, text) = read(side, &grey).unwrap_or_else(|| panic!("{address} is not read"));
            assert_eq!((version, text), (code.version(), address));
            count += 1;
        }
    }
    assert!(count > 50, "only {count} labels");
}

#[test]
fn the_level_that_is_asked_is_the_one_in_the_code() {
    // How the format information numbers the levels (ISO/IEC 18004, table 12).
    for (correction, number) in [(Correction::L, 1), (Correction::M, 0), (Correction::Q, 3), (Correction::H, 2)] {
        // As long as version 3 holds at that level, so that no higher one fits.
        let length = [77, 61, 47, 35][correction as usize];
        let text = "A".repeat(length);
        let (side, grey) = pixels(&draw::png(&Code::new(&text, correction).unwrap(), 8));
        assert_eq!(read(side, &grey), Some((3, number, text)));
    }
}

/// A label that lost a patch of 10 % is read at level H, and with four times as much it is not: the damage is real.
#[test]
fn a_patch_of_a_tenth_is_borne_at_level_h_and_not_four_times_as_much() {
    let code = Code::new("HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/", Correction::H).unwrap();
    let (side, grey) = pixels(&draw::png(&code, 8));
    let patched = |share: f64| {
        let patch = (code.modules as f64 * 8.0 * share.sqrt()) as usize;
        let start = (4 + 10) * 8;
        let mut grey = grey.clone();
        for y in start..start + patch.min(side - start - 32) {
            for x in start..start + patch.min(side - start - 32) {
                grey[y * side + x] = 255;
            }
        }
        read(side, &grey).map(|(_, _, text)| text)
    };
    assert_eq!(patched(0.1).as_deref(), Some("HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/"));
    assert_eq!(patched(0.4), None);
}

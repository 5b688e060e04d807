//! The icon of a guide on a phone's screen: a daymark, a triangle on a post, as seamen steer by.

use super::png::{Pixels, encode};
use std::sync::LazyLock;

const GREEN: [u8; 3] = [0x13, 0x4f, 0x43];
const CREAM: [u8; 3] = [0xf6, 0xef, 0xdd];

/// Samples along each side of a pixel, for smooth edges.
const SAMPLES: u32 = 4;

/// Sides of the icons, in pixels: those that phones ask for.
pub const SIDES: [u32; 2] = [192, 512];

/// The icons, each with its side. Every guide has the same, so they are drawn once.
pub static ICONS: LazyLock<[(u32, Vec<u8>); 2]> = LazyLock::new(|| SIDES.map(|side| (side, png(side))));

/// The icon as PNG, `side` pixels wide and high. Its ground fills the square and the mark keeps within the middle 80 %,
/// so that a phone may cut it round (W3C Web Application Manifest, maskable icons).
fn png(side: u32) -> Vec<u8> {
    let mut pixels = Vec::with_capacity((side * side * 3) as usize);
    for y in 0..side {
        for x in 0..side {
            pixels.extend(pixel(x, y, f64::from(side)));
        }
    }
    encode(side as usize, Pixels::Colour, &pixels)
}

fn pixel(x: u32, y: u32, side: f64) -> [u8; 3] {
    let at = |pixel: u32, sample: u32| (f64::from(pixel) + (f64::from(sample) + 0.5) / f64::from(SAMPLES)) / side;
    let samples = (0..SAMPLES).flat_map(|row| (0..SAMPLES).map(move |column| (row, column)));
    let hits = samples.filter(|(row, column)| is_mark(at(x, *column), at(y, *row))).count() as u32;
    let mix = |ground: u8, mark: u8| {
        let (ground, mark, all) = (u32::from(ground), u32::from(mark), SAMPLES * SAMPLES);
        ((ground * (all - hits) + mark * hits) / all) as u8
    };
    [0, 1, 2].map(|channel| mix(GREEN[channel], CREAM[channel]))
}

/// Whether a point of the unit square belongs to the mark: a triangle with its tip up, its post, and the ground line.
fn is_mark(x: f64, y: f64) -> bool {
    let triangle = (0.2..0.56).contains(&y) && (x - 0.5).abs() <= (y - 0.2) / 0.36 * 0.26;
    let post = (0.56..0.76).contains(&y) && (x - 0.5).abs() <= 0.05;
    let ground = (0.74..0.8).contains(&y) && (x - 0.5).abs() <= 0.2;
    triangle || post || ground
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mark_keeps_within_the_circle_that_a_phone_may_cut() {
        for row in 0..200 {
            for column in 0..200 {
                let (x, y) = (f64::from(column) / 200.0, f64::from(row) / 200.0);
                let away = ((x - 0.5).powi(2) + (y - 0.5).powi(2)).sqrt();
                assert!(!is_mark(x, y) || away <= 0.4, "the mark reaches {away} at {x}, {y}");
            }
        }
    }

    #[test]
    fn the_icon_is_a_picture_of_its_size_with_both_colours() {
        let bytes = png(192);
        let mut reader = png::Decoder::new(std::io::Cursor::new(&bytes)).read_info().unwrap();
        let mut pixels = vec![0; reader.output_buffer_size().unwrap()];
        let info = reader.next_frame(&mut pixels).unwrap();
        assert_eq!((info.width, info.height), (192, 192));
        assert_eq!(pixels[..3], GREEN);
        let middle = (96 * 192 + 96) * 3;
        assert_eq!(pixels[middle..middle + 3], CREAM);
    }
}

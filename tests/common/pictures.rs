//! Pictures for tests, drawn from shapes: nobody's photo, and the same on every machine.

// Each test program uses a part of this.
#![allow(dead_code)]

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage, Rgba, RgbaImage};
use std::io::Cursor;

/// What the camera is said to be; no byte of it may come out.
pub const CAMERA: &str = "Nobody's Pocket Camera";

/// A locker front: red at its top left, a hinge at the left, a lever at the right.
pub fn locker(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let (across, down) = (f64::from(x) / f64::from(width), f64::from(y) / f64::from(height));
        let within =
            |left: f64, top: f64, w: f64, h: f64| (left..left + w).contains(&across) && (top..top + h).contains(&down);
        match () {
            () if within(0.0, 0.0, 0.25, 0.25) => Rgb([200, 30, 30]),
            () if within(0.12, 0.4, 0.04, 0.3) => Rgb([90, 90, 90]),
            () if within(0.7, 0.45, 0.06, 0.3) => Rgb([30, 60, 120]),
            () if within(0.1, 0.3, 0.8, 0.6) => Rgb([225, 222, 214]),
            () => Rgb([150, 160, 150]),
        }
    })
}

/// The picture that a fixture asks for by name.
pub fn named(name: &str) -> Vec<u8> {
    let small = jpeg(&locker(640, 480));
    match name {
        "locker" => small,
        "turned" => with_exif(&small, 6),
        "cut-off" => small[..small.len() / 2].to_vec(),
        "for-print" => for_print(small),
        "vast" => vast(),
        "logo" => saved(DynamicImage::ImageRgba8(see_through()), ImageFormat::Png),
        _ => panic!("there is no picture `{name}`"),
    }
}

pub fn jpeg(picture: &RgbImage) -> Vec<u8> {
    let mut out = Vec::new();
    JpegEncoder::new_with_quality(&mut out, 90).encode_image(picture).unwrap();
    out
}

pub fn saved(picture: DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut out = Cursor::new(Vec::new());
    picture.write_to(&mut out, format).unwrap();
    out.into_inner()
}

/// A green disc on nothing.
pub fn see_through() -> RgbaImage {
    RgbaImage::from_fn(900, 300, |x, y| {
        let away = f64::from(x) - 450.0;
        if away.hypot(f64::from(y) - 150.0) < 140.0 { Rgba([20, 90, 60, 255]) } else { Rgba([0, 0, 0, 0]) }
    })
}

/// The same file with what a phone writes beside the picture: how it was held, which camera, where on Earth (Exif 2.32:
/// tags 0x0112, 0x010f, 0x8825).
pub fn with_exif(jpeg: &[u8], orientation: u16) -> Vec<u8> {
    let mut tiff: Vec<u8> = b"II*\0\x08\0\0\0".to_vec();
    let camera = format!("{CAMERA}\0").into_bytes();
    let (camera_at, places_at) = (8 + 2 + 3 * 12 + 4, 8 + 2 + 3 * 12 + 4 + camera.len() as u32);
    let entry = |tag: u16, kind: u16, count: u32, value: u32, tiff: &mut Vec<u8>| {
        tiff.extend(tag.to_le_bytes());
        tiff.extend(kind.to_le_bytes());
        tiff.extend(count.to_le_bytes());
        tiff.extend(value.to_le_bytes());
    };
    tiff.extend(3u16.to_le_bytes());
    entry(0x010f, 2, camera.len() as u32, camera_at, &mut tiff);
    entry(0x0112, 3, 1, u32::from(orientation), &mut tiff);
    entry(0x8825, 4, 1, places_at, &mut tiff);
    tiff.extend([0; 4]);
    tiff.extend(&camera);
    // Latitude 51° 28' 38", as three fractions.
    tiff.extend(2u16.to_le_bytes());
    entry(0x0001, 2, 2, u32::from_le_bytes(*b"N\0\0\0"), &mut tiff);
    entry(0x0002, 5, 3, places_at + 2 + 2 * 12 + 4, &mut tiff);
    tiff.extend([0; 4]);
    for part in [51u32, 1, 28, 1, 38, 1] {
        tiff.extend(part.to_le_bytes());
    }
    let mut out = jpeg[..2].to_vec();
    out.extend([0xff, 0xe1]);
    out.extend((tiff.len() as u16 + 8).to_be_bytes());
    out.extend(b"Exif\0\0");
    out.extend(tiff);
    out.extend(&jpeg[2..]);
    out
}

/// The frame says four inks, as files for a printing press do.
fn for_print(mut jpeg: Vec<u8>) -> Vec<u8> {
    let frame = jpeg.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap();
    jpeg[frame + 9] = 4;
    jpeg
}

/// A small PNG file that claims 60,000 by 60,000 pixels; its check sum is right (PNG, 3rd edition, annex D).
fn vast() -> Vec<u8> {
    let mut png = saved(DynamicImage::ImageRgb8(locker(8, 8)), ImageFormat::Png);
    png[16..24].copy_from_slice(&[0, 0, 0xea, 0x60, 0, 0, 0xea, 0x60]);
    let sum = png[12..29].iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| if sum & 1 == 1 { 0xedb8_8320 ^ (sum >> 1) } else { sum >> 1 })
    });
    png[29..33].copy_from_slice(&(!sum).to_be_bytes());
    png
}

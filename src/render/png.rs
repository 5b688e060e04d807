//! Square pictures as PNG, in memory. The only file that knows the encoder.

use png::{BitDepth, ColorType, Compression, Encoder, EncodingError};

/// How pixels are given.
#[derive(Debug, Clone, Copy)]
pub enum Pixels {
    /// One bit each, 1 for white, each row filled up to a whole byte.
    BlackAndWhite,
    /// Three bytes each: red, green, blue.
    Colour,
}

/// A picture of `side` by `side` pixels, rows from the top. Empty when `data` does not hold that many.
pub fn encode(side: usize, pixels: Pixels, data: &[u8]) -> Vec<u8> {
    write(side, pixels, data).unwrap_or_default()
}

fn write(side: usize, pixels: Pixels, data: &[u8]) -> Result<Vec<u8>, EncodingError> {
    let mut out = Vec::new();
    let side = u32::try_from(side).unwrap_or(u32::MAX);
    let mut encoder = Encoder::new(&mut out, side, side);
    let (colour, depth) = match pixels {
        Pixels::BlackAndWhite => (ColorType::Grayscale, BitDepth::One),
        Pixels::Colour => (ColorType::Rgb, BitDepth::Eight),
    };
    encoder.set_color(colour);
    encoder.set_depth(depth);
    encoder.set_compression(Compression::Balanced);
    encoder.write_header()?.write_image_data(data)?;
    Ok(out)
}

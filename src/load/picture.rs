//! From the file of a photo to sizes for pages. The only file that knows how pictures are coded.
//!
//! Each size is coded anew from its pixels alone, so that no position, camera, date or colour profile is carried over.

use crate::model::photo::{Photo, Size};
use fast_image_resize::images::{Image, ImageRef};
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::codecs::jpeg::JpegEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, RgbImage, Rgba, RgbaImage};
use std::io::Cursor;

/// Widths in pixels: a phone, a sharp phone or a tablet, a desk.
const WIDTHS: [u32; 3] = [480, 960, 1600];
/// Of 100: edges of letters on a panel stay clear.
const QUALITY: u8 = 78;
/// Says how photos are made ready; it changes whenever any of that does.
const MADE: &str = "1: 480 960 1600, lanczos 3, jpeg 78";
/// More pixels than this are refused before any is read: a small file can claim to be enormous.
const MOST_PIXELS: u64 = 64_000_000;
/// A larger file is not from a phone's camera.
const MOST_BYTES: usize = 40_000_000;
/// A logo is shown 80 pixels high at most, on screens with up to three dots a pixel.
const LOGO: (u32, u32) = (720, 240);

/// Why a file cannot be used, and what to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Trouble {
    /// One phrase: what it is.
    pub what: String,
    /// What to do.
    pub help: &'static str,
}

fn trouble(what: impl Into<String>, help: &'static str) -> Trouble {
    Trouble { what: what.into(), help }
}

/// The name of the photo that `make` makes of a file's bytes.
pub fn id(bytes: &[u8]) -> String {
    let mut hasher = blake3::Hasher::new();
    hasher.update(MADE.as_bytes()).update(&[0]).update(bytes);
    hasher.finalize().to_hex()[..20].to_string()
}

/// Makes a photo ready: upright, in each of the widths that are less than its own, in its own when it is not wide.
pub fn make(bytes: &[u8]) -> Result<Photo, Trouble> {
    let (picture, turn) = decode(bytes)?;
    let picture = on_white(picture);
    let quarter = matches!(
        turn,
        Orientation::Rotate90 | Orientation::Rotate270 | Orientation::Rotate90FlipH | Orientation::Rotate270FlipH
    );
    let own = if quarter { picture.height() } else { picture.width() };
    let mut widths: Vec<u32> = WIDTHS.iter().copied().filter(|width| *width < own).collect();
    if own <= WIDTHS[WIDTHS.len() - 1] {
        widths.push(own);
    }
    let sizes = widths.into_iter().map(|width| size(&picture, turn, quarter, width));
    Ok(Photo { id: id(bytes), sizes: sizes.collect::<Result<_, _>>()? })
}

/// Makes a logo ready as PNG: no larger than it is shown, see-through where it was. Gives its size in pixels too.
pub fn logo(bytes: &[u8]) -> Result<(Vec<u8>, u32, u32), Trouble> {
    let (mut picture, turn) = decode(bytes)?;
    picture.apply_orientation(turn);
    if picture.width() > LOGO.0 || picture.height() > LOGO.1 {
        picture = picture.resize(LOGO.0, LOGO.1, image::imageops::FilterType::Lanczos3);
    }
    let (pixels, mut out) = (DynamicImage::ImageRgba8(picture.to_rgba8()), Cursor::new(Vec::new()));
    let coded = pixels.write_to(&mut out, ImageFormat::Png);
    coded.map_err(|e| trouble(format!("cannot be coded: {e}"), BROKEN))?;
    Ok((out.into_inner(), pixels.width(), pixels.height()))
}

const BROKEN: &str = "copy it from the phone again, or open it in any program for photos and save it as JPEG";
const KINDS: &str = "photos are JPEG, PNG or WebP: save it as JPEG";

/// The pixels of a file, and how they are to be turned.
fn decode(bytes: &[u8]) -> Result<(DynamicImage, Orientation), Trouble> {
    if bytes.len() > MOST_BYTES {
        return Err(trouble("is larger than 40 MB", "make it smaller first, or save it as JPEG"));
    }
    let read = |form| pixels(ImageReader::with_format(Cursor::new(bytes), form).into_decoder().map_err(broken)?);
    match bytes {
        [0xff, 0xd8, 0xff, ..] => whole_jpeg(bytes).and_then(|()| read(ImageFormat::Jpeg)),
        [0x89, b'P', b'N', b'G', ..] => read(ImageFormat::Png),
        [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', ..] => read(ImageFormat::WebP),
        [_, _, _, _, b'f', b't', b'y', b'p', ..] => Err(trouble(
            "is in the form that some phones use, which many browsers cannot show",
            "set the phone's camera to the most compatible form, or save the photo as JPEG",
        )),
        [] => Err(trouble("is empty", BROKEN)),
        _ => Err(trouble("is not a picture that can be read", KINDS)),
    }
}

fn broken(error: image::ImageError) -> Trouble {
    trouble(format!("is broken: {}", error.to_string().replace('\n', ", ")), BROKEN)
}

fn pixels(mut decoder: impl ImageDecoder) -> Result<(DynamicImage, Orientation), Trouble> {
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        let what = format!("is {width} by {height} pixels, and 64 million are the most");
        return Err(trouble(what, "make it smaller: 4000 pixels wide is plenty"));
    }
    if width == 0 || height == 0 {
        return Err(trouble("has no pixels", BROKEN));
    }
    // A file whose record of how the camera was held cannot be read is shown as it is.
    let turn = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    Ok((DynamicImage::from_decoder(decoder).map_err(broken)?, turn))
}

/// Walks the segments of a JPEG file (ISO/IEC 10918-1, annex B). The decoder fills what is missing with grey, and takes
/// the inks of print for light, so both are found here.
fn whole_jpeg(bytes: &[u8]) -> Result<(), Trouble> {
    let mut at = 2;
    while let Some([0xff, marker, high, low]) = bytes.get(at..at + 4) {
        let length = usize::from(u16::from_be_bytes([*high, *low]));
        match marker {
            0xff => {
                at += 1;
                continue;
            }
            0xc0..=0xcf if !matches!(marker, 0xc4 | 0xc8 | 0xcc) && bytes.get(at + 9) == Some(&4) => {
                return Err(trouble(
                    "is coloured for print (CMYK)",
                    "save it again in RGB colours, as photos from a phone are",
                ));
            }
            0xda => {
                let scans = &bytes[at..];
                let ends = scans.windows(2).any(|pair| pair == [0xff, 0xd9]);
                return if ends { Ok(()) } else { Err(trouble("is not all there: its end is missing", BROKEN)) };
            }
            _ => {}
        }
        at += 2 + length.max(2);
    }
    Err(trouble("is not all there: it holds no picture", BROKEN))
}

/// What is see-through becomes white, as on paper.
fn on_white(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let mut paper = RgbaImage::from_pixel(picture.width(), picture.height(), Rgba([255; 4]));
    image::imageops::overlay(&mut paper, &picture.into_rgba8(), 0, 0);
    DynamicImage::ImageRgba8(paper).into_rgb8()
}

/// One size, `width` pixels wide once it is upright. Smaller first and turned then: there is less to turn.
fn size(picture: &RgbImage, turn: Orientation, quarter: bool, width: u32) -> Result<Size, Trouble> {
    let (w, h) = picture.dimensions();
    let scaled = |side: u32, by: u32, of: u32| {
        u32::try_from((u64::from(side) * u64::from(by) + u64::from(of) / 2) / u64::from(of)).unwrap_or(side).max(1)
    };
    let (to_w, to_h) = if quarter { (scaled(w, width, h), width) } else { (width, scaled(h, width, w)) };
    let mut small =
        DynamicImage::ImageRgb8(if (to_w, to_h) == (w, h) { picture.clone() } else { shrunk(picture, to_w, to_h)? });
    small.apply_orientation(turn);
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, QUALITY)
        .encode_image(&small)
        .map_err(|e| trouble(format!("cannot be coded: {e}"), BROKEN))?;
    Ok(Size { width: small.width(), height: small.height(), bytes })
}

fn shrunk(picture: &RgbImage, width: u32, height: u32) -> Result<RgbImage, Trouble> {
    let failed = |e: String| trouble(format!("cannot be made smaller: {e}"), BROKEN);
    let from = ImageRef::new(picture.width(), picture.height(), picture.as_raw(), PixelType::U8x3)
        .map_err(|e| failed(e.to_string()))?;
    let mut to = Image::new(width, height, PixelType::U8x3);
    let way = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
    Resizer::new().resize(&from, &mut to, &way).map_err(|e| failed(e.to_string()))?;
    RgbImage::from_raw(width, height, to.into_vec()).ok_or_else(|| failed("too few pixels".into()))
}

//! Codes as pictures: dark on white, with the quiet zone.

use super::code::{Code, QUIET};
use crate::render::png::{Pixels, encode};
use std::fmt::Write;

/// The code as SVG: one path, in units of one module. `title` says what it is, for whoever cannot see it.
pub fn svg(code: &Code, title: &str) -> String {
    let side = code.side();
    let mut out = String::with_capacity(512 + 4 * code.modules * code.modules);
    let _ = write!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\" shape-rendering=\"crispEdges\">\
         <title>{}</title><rect width=\"{side}\" height=\"{side}\" fill=\"#fff\"/><path stroke=\"#000\" d=\"",
        escape(title)
    );
    for (y, row) in code.rows().enumerate() {
        strokes(&mut out, row, y + QUIET);
    }
    out.push_str("\"/></svg>\n");
    out
}

/// Along each run of dark modules a stroke, one module wide.
fn strokes(out: &mut String, row: &[bool], y: usize) {
    let mut pen = None;
    let mut x = 0;
    for run in row.chunk_by(|one, next| one == next) {
        if run[0] {
            match pen {
                None => {
                    let _ = write!(out, "M{} {y}.5", x + QUIET);
                }
                Some(pen) => put(out, 'm', x - pen, " 0"),
            }
            put(out, 'h', run.len(), "");
            pen = Some(x + run.len());
        }
        x += run.len();
    }
}

/// A letter, a number of at most three digits (a code has 177 modules at most) and what follows: several times as fast as
/// the standard library's way, and a guide has many codes.
fn put(out: &mut String, letter: char, number: usize, end: &str) {
    out.push(letter);
    for (from, unit) in [(100, 100), (10, 10), (0, 1)] {
        if number >= from {
            out.push(char::from(b'0' + (number / unit % 10) as u8));
        }
    }
    out.push_str(end);
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

/// The code as PNG of one bit a pixel, `scale` pixels to a module (1 at least).
pub fn png(code: &Code, scale: usize) -> Vec<u8> {
    let (side, scale) = (code.side(), scale.max(1));
    let pixels = side * scale;
    let white = vec![0xff_u8; pixels.div_ceil(8)];
    let mut data = white.repeat(QUIET * scale);
    for row in code.rows() {
        let mut line = white.clone();
        let dark = row.iter().enumerate().filter(|(_, dark)| **dark);
        for x in dark.flat_map(|(x, _)| (x + QUIET) * scale..(x + QUIET + 1) * scale) {
            line[x / 8] &= !(0x80 >> (x % 8));
        }
        data.extend(line.repeat(scale));
    }
    data.extend(white.repeat(QUIET * scale));
    encode(pixels, Pixels::BlackAndWhite, &data)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::files::book::Correction;

    fn code() -> Code {
        Code::new("HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/", Correction::Q).unwrap()
    }

    /// The strokes of the path, put back on a grid by a reader of its own, are the modules.
    #[test]
    fn the_path_draws_the_modules_and_nothing_else() {
        let code = code();
        let svg = svg(&code, "Label <G1> & more");
        let path = svg.split("d=\"").nth(1).unwrap().split('"').next().unwrap();
        let mut grid = vec![vec![false; code.side()]; code.side()];
        for line in path.split('M').skip(1) {
            let (start, rest) = line.split_once('h').unwrap();
            let (x, y) = start.split_once(' ').unwrap();
            let (mut x, y): (usize, usize) = (x.parse().unwrap(), y.strip_suffix(".5").unwrap().parse().unwrap());
            for part in rest.split('h') {
                let (run, gap) = part.split_once('m').unwrap_or((part, "0 0"));
                let run: usize = run.parse().unwrap();
                grid[y][x..x + run].fill(true);
                x += run + gap.split(' ').next().unwrap().parse::<usize>().unwrap();
            }
        }
        for (y, row) in grid.iter().enumerate() {
            for (x, dark) in row.iter().enumerate() {
                let inside = (QUIET..QUIET + code.modules).contains(&x) && (QUIET..QUIET + code.modules).contains(&y);
                let wanted = inside && code.rows().nth(y - QUIET).unwrap()[x - QUIET];
                assert_eq!(*dark, wanted, "{x} {y}");
            }
        }
        assert!(svg.contains("<title>Label &lt;G1&gt; &amp; more</title>"));
        assert!(svg.len() < 2600, "{} bytes", svg.len());
    }

    #[test]
    fn a_png_has_one_bit_a_pixel_and_the_quiet_zone() {
        let code = code();
        let png = png(&code, 8);
        let mut reader = png::Decoder::new(std::io::Cursor::new(&png)).read_info().unwrap();
        let mut data = vec![0; reader.output_buffer_size().unwrap()];
        let frame = reader.next_frame(&mut data).unwrap();
        assert_eq!((frame.width, frame.height), (37 * 8, 37 * 8));
        let dark = |x: usize, y: usize| data[y * frame.line_size + x / 8] & (0x80 >> (x % 8)) == 0;
        for y in 0..37 * 8 {
            for x in 0..37 * 8 {
                let inside = (32..32 + 29 * 8).contains(&x) && (32..32 + 29 * 8).contains(&y);
                let wanted = inside && code.rows().nth((y - 32) / 8).unwrap()[(x - 32) / 8];
                assert_eq!(dark(x, y), wanted, "{x} {y}");
            }
        }
    }
}

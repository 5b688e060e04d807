//! Colours and the contrast between them, as WCAG 2.2 defines it.

/// The least contrast of text that is not large (WCAG 2.2, 1.4.3).
pub const READABLE: f64 = 4.5;

/// A colour of the screen (sRGB), each part from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Colour([f64; 3]);

impl Colour {
    /// Reads `#9b2423` or `#fff`; anything else is `None`.
    pub fn parse(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#')?;
        let values: Vec<u32> = digits.chars().map(|c| c.to_digit(16)).collect::<Option<_>>()?;
        let parts = match values.as_slice() {
            [r, g, b] => [r * 17, g * 17, b * 17],
            [r, s, g, t, b, u] => [r * 16 + s, g * 16 + t, b * 16 + u],
            _ => return None,
        };
        Some(Colour(parts.map(|part| f64::from(part) / 255.0)))
    }

    /// As it is written in a style sheet: `#9b2423`.
    pub fn hex(self) -> String {
        let [r, g, b] = self.0.map(|part| (part * 255.0).round() as u8);
        format!("#{r:02x}{g:02x}{b:02x}")
    }

    /// The colour nearest to this one that has at least `ratio` against each of `others`: mixed with black or with
    /// white, a hundredth at a time. `None` when no mixture has.
    pub fn readable(self, others: &[Colour], ratio: f64) -> Option<Colour> {
        let towards = |end: f64, share: f64| Colour(self.0.map(|part| part + (end - part) * share));
        let mixed = (0..=100).flat_map(|step| [0.0, 1.0].map(|end| towards(end, f64::from(step) / 100.0)));
        let mut written = mixed.filter_map(|colour| Colour::parse(&colour.hex()));
        written.find(|colour| others.iter().all(|other| colour.contrast(*other) >= ratio))
    }

    /// Relative luminance, 0 for black to 1 for white (WCAG 2.2, definition of relative luminance).
    pub fn luminance(self) -> f64 {
        let [r, g, b] = self.0.map(|part| match part <= 0.04045 {
            true => part / 12.92,
            false => ((part + 0.055) / 1.055).powf(2.4),
        });
        0.2126 * r + 0.7152 * g + 0.0722 * b
    }

    /// Contrast ratio against another colour, 1 to 21 (WCAG 2.2, definition of contrast ratio).
    pub fn contrast(self, other: Colour) -> f64 {
        let (a, b) = (self.luminance(), other.luminance());
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn contrast(a: &str, b: &str) -> f64 {
        Colour::parse(a).unwrap().contrast(Colour::parse(b).unwrap())
    }

    /// Published anchors: black on white is 21, #767676 the palest grey that passes 4.5 on white, #777777 the first that
    /// does not; the others are pairs of ISO 3864 and ANSI Z535 colours computed by the same definition elsewhere.
    #[test]
    fn contrast_is_what_its_published_anchors_say() {
        let anchors = [
            ("#000", "#fff", 21.0),
            ("#767676", "#fff", 4.542),
            ("#777777", "#ffffff", 4.478),
            ("#fff", "#d05d29", 3.98),
            ("#fff", "#ff0000", 4.00),
            ("#000", "#d05d29", 5.28),
            ("#fff", "#9b2423", 7.86),
            ("#fff", "#c8102e", 5.88),
            ("#fff", "#005387", 8.12),
            ("#fff", "#0072ce", 4.89),
        ];
        for (a, b, expected) in anchors {
            assert!((contrast(a, b) - expected).abs() <= 0.005, "{a} on {b}: {}", contrast(a, b));
        }
        assert!((contrast("#000", "#f9a800") - 10.6).abs() <= 0.05);
        assert!((contrast("#000", "#ffd100") - 14.4).abs() <= 0.05);
    }

    #[test]
    fn the_nearest_readable_colour_is_readable_and_no_further_than_it_must_be() {
        let white = Colour::parse("#fff").unwrap();
        let orange = Colour::parse("#ff8200").unwrap();
        let darker = orange.readable(&[white], 4.5).unwrap();
        assert!(darker.contrast(white) >= 4.5 && darker.contrast(white) < 4.7, "{}", darker.hex());
        assert_eq!(Colour::parse("#000").unwrap().readable(&[white], 4.5).unwrap().hex(), "#000000");
        assert_eq!(orange.readable(&[white, Colour::parse("#000").unwrap()], 5.0), None);
    }

    #[test]
    fn what_is_no_colour_is_refused() {
        for text in ["", "#", "red", "#12", "#12345", "#ggg", "9b2423"] {
            assert_eq!(Colour::parse(text), None, "{text}");
        }
    }

    /// Each signal word of the theme: what is written on it has 4.5 to 1 (WCAG 2.2, 1.4.3), and they differ in colour as
    /// ISO 3864-2 has them: red, orange, yellow, blue.
    #[test]
    fn signal_words_can_be_read_on_their_colours() {
        let css = include_str!("../../themes/daymark/components/note/note.css");
        let base = include_str!("../../themes/daymark/base.css");
        let danger = base.split("--danger:").nth(1).and_then(|rest| rest.split(';').next()).unwrap().trim();
        let mut pairs = 0;
        for rule in css.split('}').filter(|rule| rule.contains("--signal:")) {
            let value = |name: &str| rule.split(name).nth(1).unwrap().split(';').next().unwrap().trim().to_string();
            let (back, front) = (value(" --signal:").replace("var(--danger)", danger), value("--on-signal:"));
            assert!(contrast(&front, &back) >= 4.5, "{front} on {back}: {:.2}", contrast(&front, &back));
            pairs += 1;
        }
        assert_eq!(pairs, 4);
    }
}

//! Colours and the contrast between them, as WCAG 2.2 defines it.

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

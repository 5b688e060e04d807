//! The code of a label: its address as a QR code (ISO/IEC 18004). The only file that knows the encoder.

use super::Artifact;
use crate::model::guide::Guide;
use qrcode::render::svg;
use qrcode::{EcLevel, QrCode};

/// The address that the label of a place carries. Scheme and host are upper case, which RFC 3986 lets them be, so that
/// an address without a path of its own takes the small alphanumeric mode of the code.
pub fn address(base: &str, key: &str, code: &str) -> String {
    let (scheme, rest) = base.split_once("://").unwrap_or(("https", base));
    let (host, path) = rest.split_once('/').map_or((rest, String::new()), |(host, path)| (host, format!("/{path}")));
    format!("{}://{}{path}/{key}/{code}/", scheme.to_uppercase(), host.to_uppercase())
}

/// A picture of the code of each labelled place.
pub fn codes(guide: &Guide) -> Vec<Artifact> {
    let labelled = guide.places.iter().filter(|place| place.labelled);
    labelled
        .filter_map(|place| {
            let address = address(guide.identity.address, guide.identity.key, place.code);
            Some(Artifact::text(path(guide.identity.key, place.code), picture(&address)?))
        })
        .collect()
}

/// Where the picture of a place's code stands.
pub fn path(key: &str, code: &str) -> String {
    format!("{key}/{code}/code.svg")
}

/// The code of `address`: dark on white, with the quiet zone of four modules that the standard asks for; level Q
/// survives a tenth of the code being lost. `None` when the address is too long for any code.
pub fn picture(address: &str) -> Option<String> {
    let code = QrCode::with_error_correction_level(address, EcLevel::Q).ok()?;
    Some(code.render::<svg::Color>().module_dimensions(8, 8).quiet_zone(true).build())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn scheme_and_host_are_upper_case_and_a_path_is_kept() {
        assert_eq!(address("https://guides.example", "M7QK3WZD", "G1"), "HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/");
        assert_eq!(
            address("https://example.example/vans", "M7QK3WZD", "G1"),
            "HTTPS://EXAMPLE.EXAMPLE/vans/M7QK3WZD/G1/"
        );
    }

    #[test]
    fn an_address_in_capitals_takes_version_3_at_level_q() {
        let code = QrCode::with_error_correction_level("HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/", EcLevel::Q).unwrap();
        // 36 alphanumeric characters: more than the 29 of version 2-Q, fewer than the 47 of 3-Q (ISO/IEC 18004, table 7).
        assert_eq!(code.version(), qrcode::Version::Normal(3));
    }
}

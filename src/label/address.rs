//! The address that a label carries.

/// The address of the place `code` of the guide `key`. Scheme and host are upper case, which RFC 3986 (6.2.2.1) lets
/// them be, so that an address without a path of its own takes the small alphanumeric mode of a QR code.
pub fn address(base: &str, key: &str, code: &str) -> String {
    format!("{}{code}/", guide_address(base, key))
}

/// The address of a whole guide, in the same form.
pub fn guide_address(base: &str, key: &str) -> String {
    let (scheme, rest) = base.split_once("://").unwrap_or(("https", base));
    let (host, path) = rest.split_once('/').map_or((rest, String::new()), |(host, path)| (host, format!("/{path}")));
    format!("{}://{}{path}/{key}/", scheme.to_uppercase(), host.to_uppercase())
}

/// The address of a place, or of a whole guide when `code` is empty, as a person types it.
pub fn typed(base: &str, key: &str, code: &str) -> String {
    let (_, rest) = base.split_once("://").unwrap_or(("", base));
    format!("{rest}/{key}/{code}").trim_end_matches('/').to_string()
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
        assert_eq!(guide_address("https://guides.example", "M7QK3WZD"), "HTTPS://GUIDES.EXAMPLE/M7QK3WZD/");
    }

    #[test]
    fn people_type_no_scheme() {
        assert_eq!(typed("https://guides.example", "M7QK3WZD", "G1"), "guides.example/M7QK3WZD/G1");
        assert_eq!(typed("https://guides.example", "M7QK3WZD", ""), "guides.example/M7QK3WZD");
    }
}

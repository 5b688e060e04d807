//! A photo made ready for pages: the same picture in a few sizes, turned upright, with nothing in it but the picture.

/// A photo made ready.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Photo {
    /// Letters and digits that change with the picture or with how it is made ready; they name its files.
    pub id: String,
    /// The sizes, the smallest first; none when the file could not be used, which has been said.
    pub sizes: Vec<Size>,
}

/// One size of a photo.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Size {
    /// In pixels.
    pub width: u32,
    /// In pixels.
    pub height: u32,
    /// The picture as a JPEG file.
    pub bytes: Vec<u8>,
}

impl Photo {
    /// Where a size stands below the van's folder. Nothing of the file's own name shows: it may name people.
    pub fn path(&self, size: &Size) -> String {
        format!("photos/{}/{}.jpg", self.id, size.width)
    }

    /// The largest size.
    pub fn largest(&self) -> Option<&Size> {
        self.sizes.last()
    }

    /// The sizes as one file for a later run: a line of hash, a line of numbers for each size, an empty line, the pictures.
    pub fn pack(&self) -> Vec<u8> {
        let lines: String =
            self.sizes.iter().map(|size| format!("{} {} {}\n", size.width, size.height, size.bytes.len())).collect();
        let mut body = (lines + "\n").into_bytes();
        self.sizes.iter().for_each(|size| body.extend(&size.bytes));
        let mut packed = format!("{}\n", blake3::hash(&body).to_hex()).into_bytes();
        packed.extend(body);
        packed
    }

    /// What [`Photo::pack`] made of the photo `id`; none when a byte of it has changed.
    pub fn unpack(id: &str, packed: &[u8]) -> Option<Self> {
        let (hash, body) = (packed.get(..64)?, packed.get(65..)?);
        if hash != blake3::hash(body).to_hex().as_bytes() {
            return None;
        }
        let end = body.windows(2).position(|pair| pair == b"\n\n")?;
        let mut rest = &body[end + 2..];
        let mut photo = Photo { id: id.to_string(), sizes: vec![] };
        for line in std::str::from_utf8(&body[..end]).ok()?.lines() {
            let numbers: Vec<u32> = line.split(' ').filter_map(|number| number.parse().ok()).collect();
            let [width, height, length] = numbers.as_slice() else { return None };
            let (bytes, after) = rest.split_at_checked(*length as usize)?;
            photo.sizes.push(Size { width: *width, height: *height, bytes: bytes.to_vec() });
            rest = after;
        }
        Some(photo)
    }
}

/// Whether a file's name is that of a photo: it is then made ready, and never published as it is.
pub fn is_photo(path: &str) -> bool {
    const ENDINGS: [&str; 12] =
        ["jpg", "jpeg", "png", "webp", "heic", "heif", "avif", "gif", "tif", "tiff", "bmp", "dng"];
    path.rsplit_once('.').is_some_and(|(_, ending)| ENDINGS.iter().any(|known| ending.eq_ignore_ascii_case(known)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_packed_comes_back_unless_a_byte_changed() {
        let sizes = [(4, 3), (8, 6)].map(|(width, height)| Size { width, height, bytes: vec![10; width as usize] });
        let photo = Photo { id: "a1".into(), sizes: sizes.into() };
        let packed = photo.pack();
        assert_eq!(Photo::unpack("a1", &packed), Some(photo));
        for at in 0..packed.len() {
            let mut changed = packed.clone();
            changed[at] ^= 1;
            // The byte after the hash is only a line's end.
            assert!(at == 64 || Photo::unpack("a1", &changed).is_none(), "byte {at}");
            assert_eq!(Photo::unpack("a1", &packed[..at]), None);
        }
    }

    #[test]
    fn a_photo_is_known_by_its_ending_whatever_its_capitals() {
        assert!(is_photo("a/IMG_1.JPG") && is_photo("b.webp") && is_photo("c.HEIC"));
        assert!(!is_photo("lever.svg") && !is_photo("jpg") && !is_photo("leaflet.pdf"));
    }
}

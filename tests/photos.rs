//! Photos: from a phone's file to sizes on a page, with nothing in them but the picture.

mod common;

use common::pictures::{self, CAMERA};
use common::{book, findings};
use image::{DynamicImage, GenericImageView, ImageFormat};
use lockerleaf::error::Error;
use lockerleaf::load::disk::Folder;
use lockerleaf::load::files::{Entry, Files, Memory};
use lockerleaf::load::picture;
use lockerleaf::render::Artifact;
use lockerleaf::{assemble, guide, look};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Mutex;

const VAN: &str = "//- models/test/one.toml
key = \"M7QK3WZD\"
year = 2019

[[photo]]
file = \"SLV-1042 owner.jpg\"
place = \"G1\"
alt = \"The gas locker <open>\"

[[photo.callout]]
at = [72, 50]
says = \"The lever & its stop\"

[[photo.callout]]
at = [12.5, 55]
says = \"The hinge\"
";

fn made(files: &Memory) -> Vec<Artifact> {
    let looked = look(files).unwrap();
    assert_eq!(findings(&looked.acc, &looked.book.sources), BTreeSet::new());
    guide(looked.theme.as_ref().unwrap(), &looked.book, &looked.vans[0]).unwrap()
}

fn with_photo() -> Memory {
    let mut files = book(VAN);
    let photo = pictures::with_exif(&pictures::jpeg(&pictures::locker(2000, 1500)), 6);
    files.0.insert("models/test/one/SLV-1042 owner.jpg".into(), photo);
    files
}

fn page<'a>(made: &'a [Artifact], path: &str) -> &'a str {
    let artifact = made.iter().find(|artifact| artifact.path == format!("M7QK3WZD/{path}")).expect(path);
    std::str::from_utf8(&artifact.bytes).unwrap()
}

/// Exif 2.32, 4.6.4: what is at the top left of the file is, once upright, at one of four corners.
#[test]
fn each_way_of_holding_the_phone_comes_out_upright() {
    let upright = DynamicImage::ImageRgb8(pictures::locker(64, 48));
    let stored: [(u16, DynamicImage); 8] = [
        (1, upright.clone()),
        (2, upright.fliph()),
        (3, upright.rotate180()),
        (4, upright.flipv()),
        (5, upright.rotate90().fliph()),
        (6, upright.rotate270()),
        (7, upright.rotate90().flipv()),
        (8, upright.rotate90()),
    ];
    for (orientation, stored) in stored {
        let file = pictures::with_exif(&pictures::jpeg(&stored.to_rgb8()), orientation);
        let photo = picture::make(&file).unwrap();
        let made = image::load_from_memory(&photo.sizes[0].bytes).unwrap();
        assert_eq!(made.dimensions(), (64, 48), "{orientation}");
        let (corner, lever) = (made.get_pixel(6, 5).0, made.get_pixel(47, 28).0);
        assert!(corner[0] > 150 && corner[1] < 80, "{orientation}: {corner:?}");
        assert!(lever[2] > lever[0] + 30, "{orientation}: {lever:?}");
    }
}

#[test]
fn nothing_but_the_picture_comes_out() {
    let file = pictures::with_exif(&pictures::jpeg(&pictures::locker(2000, 1500)), 6);
    assert!(file.windows(CAMERA.len()).any(|part| part == CAMERA.as_bytes()), "the test's own photo says the camera");
    let photo = picture::make(&file).unwrap();
    assert_eq!(
        photo.sizes.iter().map(|size| (size.width, size.height)).collect::<Vec<_>>(),
        [(480, 640), (960, 1280), (1500, 2000)]
    );
    for size in &photo.sizes {
        for secret in [b"Exif".as_slice(), b"II*\0", b"MM\0*", CAMERA.as_bytes(), b"http", b"ICC_PROFILE", b"Photoshop"]
        {
            assert!(!size.bytes.windows(secret.len()).any(|part| part == secret), "{secret:?}");
        }
        // Only the segments that a picture needs (ISO/IEC 10918-1, table B.1): APP0, DQT, SOF0, DHT, SOS.
        let mut at = 2;
        while size.bytes[at + 1] != 0xda {
            assert!([0xe0, 0xdb, 0xc0, 0xc4].contains(&size.bytes[at + 1]), "segment {:x}", size.bytes[at + 1]);
            at += 2 + usize::from(u16::from_be_bytes([size.bytes[at + 2], size.bytes[at + 3]]));
        }
    }
}

#[test]
fn a_page_shows_the_photo_in_its_sizes_and_says_what_the_numbers_are() {
    let made = made(&with_photo());
    for path in ["G1/index.html", "part/gas/index.html"] {
        let shown = page(&made, path).contains("<figure class=\"photo");
        assert_eq!(shown, path.starts_with("G1"), "{path}");
    }
    let page = page(&made, "G1/index.html");
    let image = page.split("<img").find(|part| part.contains("srcset")).unwrap().split('>').next().unwrap();
    for part in [
        "alt=\"The gas locker &lt;open&gt;\"",
        "width=\"1500\" height=\"2000\"",
        "loading=\"lazy\"",
        "480w",
        "sizes=\"",
    ] {
        assert!(image.contains(part), "{part} in {image}");
    }
    assert!(page.contains("photo-tall") && !page.contains("style=\""));
    assert!(page.contains("<circle cx=\"12.5%\" cy=\"55%\"") && page.contains("<li>The lever &amp; its stop</li>"));
    let mut named = 0;
    for part in image.split('"').flat_map(|part| part.split([' ', ','])).filter(|part| part.ends_with(".jpg")) {
        let path = format!("M7QK3WZD/{}", part.trim_start_matches("../"));
        let file = made.iter().find(|artifact| artifact.path == path).expect(part);
        let width: u32 = path.rsplit('/').next().unwrap().trim_end_matches(".jpg").parse().unwrap();
        assert_eq!(image::load_from_memory(&file.bytes).unwrap().width(), width);
        named += 1;
    }
    assert_eq!(named, 4, "{image}");
    assert!(made.iter().all(|artifact| !artifact.path.contains("SLV") && !artifact.path.contains("owner")));
}

#[test]
fn a_photo_in_a_text_is_never_published_as_the_camera_wrote_it() {
    let mut files = book(
        "//- content/mains/unit/text.md\n# Consumer unit\n\nSwitches the mains off. ![The lid](lid.JPG)\n\nSee [the lid](lid.JPG) and [the label](label.png). ![A lever](lever.svg)\n//- content/mains/unit/lever.svg\n<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 360 200\"/>\n",
    );
    let file = pictures::named("turned");
    files.0.insert("content/mains/unit/lid.JPG".into(), file.clone());
    files.0.insert("content/mains/unit/label.png".into(), pictures::named("logo"));
    files.0.insert("content/mains/unit/unused.jpg".into(), b"never read".to_vec());
    let made = made(&files);
    let page = page(&made, "part/unit/index.html");
    assert!(page.contains("width=\"480\" height=\"640\"") && page.contains("/480.jpg\">the lid</a>"), "{page}");
    assert!(page.contains("alt=\"A lever\" width=\"360\" height=\"200\">"), "{page}");
    assert!(made.iter().all(|artifact| artifact.bytes != file && !artifact.path.contains("unused")));
    assert_eq!(made.iter().filter(|artifact| artifact.path.contains("/photos/")).count(), 3);
}

#[test]
fn what_is_see_through_becomes_white_and_each_form_is_read() {
    for format in [ImageFormat::Png, ImageFormat::WebP] {
        let file = pictures::saved(DynamicImage::ImageRgba8(pictures::see_through()), format);
        let photo = picture::make(&file).unwrap();
        let made = image::load_from_memory(&photo.largest().unwrap().bytes).unwrap();
        assert_eq!(made.dimensions(), (900, 300));
        assert!(made.get_pixel(5, 5).0[..3].iter().all(|part| *part > 245));
        assert!(made.get_pixel(450, 150).0[0] < 60);
    }
}

#[test]
fn what_cannot_be_used_says_why() {
    let says = |file: &[u8]| picture::make(file).unwrap_err().what;
    assert!(says(&pictures::named("cut-off")).contains("not all there"));
    assert!(says(&pictures::named("for-print")).contains("CMYK"));
    assert!(says(&pictures::named("vast")).contains("60000 by 60000"));
    assert!(says(b"\0\0\0\x18ftypheic\0\0\0\0").contains("some phones"));
    assert!(says(b"GIF89a").contains("not a picture") && says(b"").contains("empty"));
    assert!(says(&vec![0xff; 41_000_000]).contains("40 MB"));
}

/// Any part of a file, and any one byte changed, is made ready or refused: never a panic.
#[test]
fn no_file_makes_a_panic() {
    let small = pictures::with_exif(&pictures::jpeg(&pictures::locker(32, 24)), 6);
    let drawn = |format| pictures::saved(DynamicImage::ImageRgb8(pictures::locker(32, 24)), format);
    for file in [small, drawn(ImageFormat::Png), drawn(ImageFormat::WebP)] {
        for at in 0..file.len() {
            let _ = picture::make(&file[..at]);
            let mut changed = file.clone();
            changed[at] ^= 0xff;
            let _ = picture::make(&changed);
            let _ = picture::logo(&changed);
        }
    }
}

/// Files in memory that keep what they are given, and count how often.
struct Keeping(Memory, Mutex<(BTreeMap<String, Vec<u8>>, usize)>);

impl Files for Keeping {
    fn list(&self) -> Result<Vec<Entry>, Error> {
        self.0.list()
    }
    fn read(&self, path: &str) -> Result<Vec<u8>, Error> {
        self.0.read(path)
    }
    fn recall(&self, name: &str) -> Option<Vec<u8>> {
        self.1.lock().unwrap().0.get(name).cloned()
    }
    fn keep(&self, name: &str, bytes: &[u8]) {
        let mut kept = self.1.lock().unwrap();
        kept.0.insert(name.into(), bytes.into());
        kept.1 += 1;
    }
}

#[test]
fn an_unchanged_photo_is_made_once_and_a_damaged_result_anew() {
    let files = Keeping(with_photo(), Mutex::default());
    let times = || files.1.lock().unwrap().1;
    let photos = || look(&files).unwrap().book.photos;
    let first = photos();
    assert_eq!(times(), 1);
    assert_eq!(photos(), first);
    assert_eq!(times(), 1, "the second look made it again");
    files.1.lock().unwrap().0.values_mut().for_each(|bytes| *bytes.last_mut().unwrap() ^= 1);
    assert_eq!(photos(), first);
    assert_eq!(times(), 2);
    assert_eq!(look(&with_photo()).unwrap().book.photos, first, "the same file gives the same bytes");
}

#[test]
fn in_a_folder_results_are_kept_beside_the_guides_and_a_changed_photo_makes_its_guide_again() {
    let folder = tempfile::tempdir().unwrap();
    let put = |path: &str, bytes: &[u8]| {
        let path = folder.path().join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    };
    with_photo().0.iter().for_each(|(path, bytes)| put(path, bytes));
    let out = folder.path().join("out");
    let run = || {
        let looked = look(&Folder::new(folder.path())).unwrap();
        assemble(&looked, &out, &|_| true).unwrap().unwrap()
    };
    let first = run();
    assert!(first.written > 10);
    let kept = || std::fs::read_dir(out.join(".made/photos")).unwrap().count();
    assert_eq!((run().written, kept()), (0, 1));
    put("models/test/one/SLV-1042 owner.jpg", &pictures::named("turned"));
    let third = run();
    assert!(third.written > 0 && third.removed == 3, "{third:?}");
    assert_eq!(kept(), 2);
}

#[test]
fn the_dealers_logo_stands_on_home_and_about_with_its_name() {
    let dealer = "//- book.toml\n[dealer]\nname = \"A & B\"\nphone = \"01632 960123\"\nlogo = \"logo.png\"\n//- logo.png\n(picture logo)\n";
    let drawn = dealer
        .replace("logo.png", "logo.svg")
        .replace("(picture logo)", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 300 100\"/>");
    for (fixture, name, size) in [
        (dealer, "logo.png", "width=\"720\" height=\"240\""),
        (drawn.as_str(), "logo.svg", "width=\"300\" height=\"100\""),
    ] {
        let made = made(&book(fixture));
        assert!(made.iter().any(|artifact| artifact.path == format!("M7QK3WZD/{name}")));
        for path in ["index.html", "about/index.html"] {
            let page = page(&made, path);
            let image = page.split("<img").find(|part| part.contains(name)).expect(path);
            assert!(image.contains("alt=\"A &amp; B\"") && image.contains(size), "{image}");
        }
    }
}

use super::*;

/// A marker segment.
fn segment(marker: u8, body: &[u8]) -> Vec<u8> {
    let length = (body.len() + 2) as u16;
    [&[0xFF, marker][..], &length.to_be_bytes(), body].concat()
}

/// A frame of this size.
fn frame(width: u16, height: u16) -> Vec<u8> {
    segment(0xC0, &[&[8][..], &height.to_be_bytes(), &width.to_be_bytes(), &[1, 1, 0x11, 0]].concat())
}

/// The packed numbers, with an FF among them and a place to start anew.
fn scan() -> Vec<u8> {
    [segment(0xDA, &[1, 1, 0, 0, 63, 0]), vec![1, 2, 0xFF, 0, 3, 0xFF, 0xD0, 4]].concat()
}

fn jpeg(beside: &[Vec<u8>], behind: &[u8]) -> Vec<u8> {
    let tables = segment(0xDB, &[7; 65]);
    [&[0xFF, 0xD8][..], &beside.concat(), &tables, &frame(40, 30), &scan(), &[0xFF, 0xD9], behind].concat()
}

/// Exif as a camera writes it, with a maker, a place and which way is up.
fn camera(turn: u8) -> Vec<u8> {
    let mut tiff = b"II*\0\x08\0\0\0\x03\0".to_vec();
    tiff.extend(b"\x0F\x01\x02\0\x0E\0\0\0\x40\0\0\0");
    tiff.extend(b"\x12\x01\x03\0\x01\0\0\0");
    tiff.extend([turn, 0, 0, 0]);
    tiff.extend(b"\x25\x88\x04\0\x01\0\0\0\x50\0\0\0");
    tiff.extend(b"\0\0\0\0Invented Maker GPS 48 08 N 11 34 E");
    segment(0xE1, &[b"Exif\0\0", &tiff[..]].concat())
}

fn chunk(name: &[u8], body: &[u8]) -> Vec<u8> {
    [&(body.len() as u32).to_be_bytes()[..], name, body, b"sum."].concat()
}

fn png(beside: &[Vec<u8>], behind: &[u8]) -> Vec<u8> {
    let head = chunk(b"IHDR", &[0, 0, 0, 50, 0, 0, 0, 20, 8, 0, 0, 0, 0]);
    let parts = [head, beside.concat(), chunk(b"IDAT", &[1, 2, 3]), chunk(b"IEND", &[]), behind.to_vec()];
    [&png::START[..], &parts.concat()].concat()
}

fn holds(bytes: &[u8], text: &[u8]) -> bool {
    bytes.windows(text.len()).any(|window| window == text)
}

fn print(bytes: &[u8]) -> Print {
    Photo::of_file("A-1.jpg", bytes).picture.expect("a picture").print
}

#[test]
fn size_and_kind_are_read_from_the_file_whatever_its_name() {
    let (a, b) = (Photo::of_file("a.png", &jpeg(&[], b"")), Photo::of_file("b.jpg", &png(&[], b"")));
    let of = |photo: &Photo| photo.picture.as_ref().map(|one| (one.media_type, one.size)).unwrap();
    assert_eq!(of(&a), (MediaType::Jpeg, Size { width: 40, height: 30 }));
    assert_eq!(of(&b), (MediaType::Png, Size { width: 50, height: 20 }));
    assert_eq!(a.sha256, digest(&jpeg(&[], b"")), "the digest is that of the file as it was given");
}

#[test]
fn nothing_that_a_camera_writes_beside_the_picture_is_printed() {
    let beside = [
        segment(0xE0, b"JFIF\0\x01\x02\0\0\x01\0\x01\x01\x01thumbnail"),
        camera(1),
        segment(0xE1, b"http://ns.adobe.com/xap/1.0/\0secret xmp"),
        segment(0xE2, b"ICC_PROFILE\0\x01\x01secret"),
        segment(0xED, b"Photoshop 3.0\0secret"),
        segment(0xEE, b"Adobe\0\x64\0\0\0\0\x01"),
        segment(0xFE, b"secret comment"),
    ];
    let bare = print(&jpeg(&beside, b"secret film behind the picture"));
    for secret in [&b"GPS"[..], b"Maker", b"Exif", b"secret", b"thumbnail", b"xap"] {
        assert!(!holds(&bare.bytes, secret), "{}", String::from_utf8_lossy(secret));
    }
    assert!(holds(&bare.bytes, b"Adobe"), "without the colour transform the colours would be wrong");
    assert!(holds(&bare.bytes, &scan()) && holds(&bare.bytes, &frame(40, 30)));
    assert_eq!(print(&bare.bytes), bare, "what is bare stays as it is");
    assert_eq!(bare.sha256, digest(&bare.bytes));

    let beside = [
        chunk(b"gAMA", &[0, 1, 0x86, 0xA0]),
        chunk(b"tEXt", b"Author\0secret"),
        chunk(b"iTXt", b"XML\0secret"),
        chunk(b"eXIf", b"II*\0secret GPS"),
        chunk(b"tIME", &[7, 0xEA, 1, 1, 1, 1, 1]),
        chunk(b"iCCP", b"secret"),
    ];
    let bare = print(&png(&beside, b"secret behind"));
    assert!(!holds(&bare.bytes, b"secret") && !holds(&bare.bytes, b"tIME"));
    assert!(holds(&bare.bytes, b"gAMA") && bare.bytes.ends_with(&chunk(b"IEND", &[])));
}

#[test]
fn a_picture_that_lies_on_its_side_stays_the_right_way_up() {
    for turn in 1..=8 {
        let bare = print(&jpeg(&[camera(turn)], b""));
        let upright = Size { width: 40, height: 30 };
        let turned = Size { width: 30, height: 40 };
        assert_eq!(bare.size, if turn < 5 { upright } else { turned }, "{turn}");
        assert_eq!(holds(&bare.bytes, b"Exif"), turn != 1, "{turn}");
        assert_eq!(print(&bare.bytes).size, bare.size, "{turn}: it is read back as it was written");
        assert!(!holds(&bare.bytes, b"GPS"));
    }
    for turn in [0, 9] {
        assert!(!holds(&print(&jpeg(&[camera(turn)], b"")).bytes, b"Exif"), "{turn} is no way to lie");
    }
}

#[test]
fn what_is_cut_short_or_damaged_is_refused_at_every_length() {
    for whole in [jpeg(&[camera(6)], b""), png(&[chunk(b"tEXt", b"a")], b"")] {
        assert!(Photo::of_file("a", &whole).picture.is_ok());
        for length in 0..whole.len() {
            let state = Photo::of_file("a", &whole[..length]).picture.expect_err("a part of a picture");
            assert!(matches!(state, PhotoState::DamagedPhoto | PhotoState::NoPhoto), "{length}");
        }
        // Whatever one byte is changed to, the answer is a picture or a refusal.
        for at in 0..whole.len() {
            for value in [0, 1, 0x7F, 0x80, 0xD9, 0xDA, 0xFF] {
                let mut spoilt = whole.clone();
                spoilt[at] = value;
                if let Ok(picture) = Photo::of_file("a", &spoilt).picture {
                    assert!(!holds(&picture.print.bytes, b"GPS"), "{at} {value}");
                }
            }
        }
    }
    let none = |bytes: &[u8]| Photo::of_file("a", bytes).picture.unwrap_err();
    assert_eq!(none(b"GIF89a\x01\0\x01\0"), PhotoState::NoPhoto);
    assert_eq!(none(b""), PhotoState::NoPhoto);
    assert_eq!(none(b"Sample,Pb\nA-1,5\n"), PhotoState::NoPhoto);
    let nothing = [&[0xFF, 0xD8][..], &frame(0, 30), &scan(), &[0xFF, 0xD9]].concat();
    assert_eq!(none(&nothing), PhotoState::DamagedPhoto, "a picture without width");
    let twice = [&[0xFF, 0xD8][..], &frame(4, 4), &frame(4000, 4), &scan(), &[0xFF, 0xD9]].concat();
    assert_eq!(none(&twice), PhotoState::DamagedPhoto, "two frames");
    let endless = [&png::START[..], &[0xFF; 4], b"IHDR", &[0; 40]].concat();
    assert_eq!(none(&endless), PhotoState::DamagedPhoto, "a chunk longer than any file");
}

#[test]
fn a_picture_has_bounds_in_bytes_and_in_pixels() {
    let many = [&[0xFF, 0xD8][..], &frame(4001, 4000), &scan(), &[0xFF, 0xD9]].concat();
    assert_eq!(Photo::of_file("a", &many).picture, Err(PhotoState::PhotoTooLarge));
    let most = [&[0xFF, 0xD8][..], &frame(4000, 4000), &scan(), &[0xFF, 0xD9]].concat();
    assert!(Photo::of_file("a", &most).picture.is_ok());
    // What the camera wrote beside the picture does not count.
    let beside: Vec<_> = (0..20).map(|_| segment(0xE1, &vec![b'x'; 60_000])).collect();
    assert!(Photo::of_file("a", &jpeg(&beside, b"")).picture.is_ok());
    let body: Vec<_> = (0..20).map(|_| segment(0xDB, &vec![7; 60_000])).collect();
    assert_eq!(Photo::of_file("a", &jpeg(&body, b"")).picture, Err(PhotoState::PhotoTooLarge));
}

/// The words of the bounds stand in the catalogue in figures.
#[test]
fn the_bounds_are_those_that_people_are_told() {
    assert_eq!((PRINT_BYTES, ALL_PRINT_BYTES, FILE_BYTES), (1 << 20, 24 << 20, 64 << 20));
    assert_eq!((PHOTOS, PRINT_PIXELS), (200, 16_000_000));
}

#[test]
fn an_inspection_takes_so_many_photographs_and_no_more() {
    let mut photos = Vec::new();
    for number in 0..=PHOTOS {
        add(&mut photos, Photo::of_file(&format!("{number}.jpg"), &jpeg(&[], b"")));
    }
    assert_eq!(photos.iter().filter(|one| one.picture == Err(PhotoState::TooManyPhotos)).count(), 1);
    assert_eq!(photos.len(), PHOTOS + 1, "none is dropped without a word");

    let mut photos = Vec::new();
    let large: Vec<_> = (0..16).map(|_| segment(0xDB, &vec![7; 60_000])).collect();
    for number in 0..30 {
        add(&mut photos, Photo::of_file(&format!("{number}.jpg"), &jpeg(&large, b"")));
    }
    assert!(photos.iter().map(Photo::print_bytes).sum::<usize>() <= ALL_PRINT_BYTES);
    assert!(photos.iter().any(|one| one.picture == Err(PhotoState::TooManyPhotos)));
}

#[test]
fn photographs_stand_in_one_order_and_the_same_one_counts_once() {
    let names = |order: &[&str]| {
        let mut photos = Vec::new();
        for name in order {
            add(&mut photos, Photo::of_file(name, &jpeg(&[], b"")));
        }
        photos.into_iter().map(|one| one.name).collect::<Vec<_>>()
    };
    assert_eq!(names(&["b", "a", "b", "B"]), ["B", "a", "b"]);
    assert_eq!(names(&["a", "B", "b"]), names(&["b", "a", "B"]));
}

#[test]
fn what_an_act_says_of_a_photograph_is_read_and_written() {
    let sha256 = "a".repeat(64);
    let text = format!("file=top view\\; left.jpg;sha256={sha256};x=0;y=1000");
    let said = PhotoSaid::parse(&text).unwrap();
    assert_eq!((said.file.as_str(), said.spot), ("top view; left.jpg", Some(Spot { x: 0, y: 1000 })));
    assert_eq!(PhotoSaid::parse("file=a.jpg").unwrap().spot, None);
    for (bad, code) in [
        ("", ProblemCode::Missing),
        ("x=1;y=1", ProblemCode::Missing),
        ("file=a;x=1", ProblemCode::Missing),
        ("file=a;x=1;y=1001", ProblemCode::OutOfRange),
        ("file=a;x=-1;y=1", ProblemCode::OutOfRange),
        ("file=a;x=1.5;y=1", ProblemCode::OutOfRange),
        ("file=a;sha256=ABC", ProblemCode::Malformed),
        ("file=a;by=me", ProblemCode::UnknownName),
    ] {
        assert_eq!(PhotoSaid::parse(bad), Err(code), "{bad}");
    }
}

#[test]
fn the_photograph_that_is_meant_is_found_by_digest_then_by_name_and_never_guessed() {
    let of = |name: &str, turn| Photo::of_file(name, &jpeg(&[camera(turn)], b""));
    let mut photos = Vec::new();
    for photo in [of("in/a.jpg", 1), of("out/a.jpg", 2), of("b.jpg", 3), of("c/b.jpg", 4), of("in/d.jpg", 5)]
    {
        add(&mut photos, photo);
    }
    add(&mut photos, Photo::refused("huge.jpg", PhotoState::PhotoTooLarge));
    let find = |file: &str, sha256: &str| {
        let said = PhotoSaid { file: file.into(), sha256: sha256.into(), spot: None };
        said.find(&photos).map(|at| photos[at].name.as_str())
    };
    let digest = |turn| of("", turn).sha256;
    assert_eq!(find("in/a.jpg", ""), Ok("in/a.jpg"));
    assert_eq!(find("d.jpg", ""), Ok("in/d.jpg"), "a bare name means the file in the folder");
    assert_eq!(find("x/d.jpg", ""), Err(PhotoState::NotAtHand), "another folder is another file");
    assert_eq!(find("a.jpg", ""), Err(PhotoState::SeveralFiles));
    assert_eq!(find("a.jpg", &digest(2)), Ok("out/a.jpg"), "the digest says which");
    assert_eq!(find("b.jpg", ""), Ok("b.jpg"), "the whole name stands above the name in a folder");
    assert_eq!(find("renamed.jpg", &digest(3)), Ok("b.jpg"), "the same file under another name");
    assert_eq!(find("b.jpg", &"0".repeat(64)), Err(PhotoState::OtherFile));
    assert_eq!(find("none.jpg", ""), Err(PhotoState::NotAtHand));
    assert_eq!(find("none.jpg", &"0".repeat(64)), Err(PhotoState::NotAtHand));
    assert_eq!(find("huge.jpg", &"0".repeat(64)), Err(PhotoState::PhotoTooLarge));
}

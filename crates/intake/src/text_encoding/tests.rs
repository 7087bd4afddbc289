use super::*;

use TextEncoding::{
    Big5, EucJp, EucKr, Gb18030, ShiftJis, Utf8, Utf16Be, Utf16Le, Windows1250, Windows1251, Windows1252,
};

const ENGLISH: &str = "Sample,Part,Supplier,Cd (µg/g),Cd ±,Pb (µg/g),Pb ±\r\n\
    A-001,Washer,Birch Works,< 5,,812,15\r\n\
    A-002,Clip – black,Alder Works,12,3,n.d.,\r\n\
    A-003,Sleeve 25 °C,Cedar Works,7,2,44,6\r\n";
const GERMAN: &str = "Prüfer;Müller-Fernbrook\nProbe;Größe;Lieferant;Blei µg/g;±;Cadmium µg/g;±\n\
    1;10 mm²;Süd-Erle;812,5;15,2;<5;\n2;12 mm²;Grün-Birke;n.n.;;7,5;1,1\n";
const CHINESE: &str = "样品编号,供应商,铅,误差,镉,误差,汞,铬,溴,氯\r\n\
    一号,桦木厂,812,15,<5,,3,120,ND,45\r\n二号,赤杨厂,44,6,7,2,<2,88,300,900\r\n";
const CHINESE_TRADITIONAL: &str = "樣品編號,供應商,鉛,誤差,鎘,誤差,汞,鉻,溴,氯\r\n\
    一號,樺木廠,812,15,<5,,3,120,ND,45\r\n二號,赤楊廠,44,6,7,2,<2,88,300,900\r\n";
const JAPANESE: &str = "試料名,部品,鉛,±,カドミウム,水銀,クロム,臭素,塩素\r\n\
    一,ワッシャー表,812,15,<5,3,120,ND,45\r\n二,ソケット能,44,6,7,<2,88,300,900\r\n";
const KOREAN: &str = "시료,부품,납,오차,카드뮴,수은,크로뮴,브로민,염소\r\n\
    가나,와셔,812,15,<5,3,120,ND,45\r\n다라,소켓,44,6,7,<2,88,300,900\r\n";
const POLISH: &str = "próbka,część,ołów,kadm,rtęć\nżółta,śruba,812,<5,3\nźródło,łącznik,44,7,<2\n";
const RUSSIAN: &str = "проба,поставщик,свинец,кадмий,ртуть,хром,бром\nодин,берёза,812,<5,3,120,45\n";

/// Every table in every encoding that is said to hold it.
const TABLES: [(&str, &[TextEncoding]); 8] = [
    (ENGLISH, &[Utf8, Utf16Le, Utf16Be, Windows1252]),
    (GERMAN, &[Utf8, Utf16Le, Utf16Be, Windows1252]),
    (CHINESE, &[Utf8, Utf16Le, Utf16Be, Gb18030]),
    (CHINESE_TRADITIONAL, &[Utf8, Utf16Le, Utf16Be, Big5]),
    (JAPANESE, &[Utf8, Utf16Le, Utf16Be, ShiftJis, EucJp]),
    (KOREAN, &[Utf8, Utf16Le, Utf16Be, EucKr]),
    (POLISH, &[Utf8, Utf16Le, Utf16Be, Windows1250]),
    (RUSSIAN, &[Utf8, Utf16Le, Utf16Be, Windows1251]),
];

fn encode(text: &str, encoding: TextEncoding) -> Vec<u8> {
    match encoding {
        Utf16Le => text.encode_utf16().flat_map(u16::to_le_bytes).collect(),
        Utf16Be => text.encode_utf16().flat_map(u16::to_be_bytes).collect(),
        _ => {
            let (bytes, _, unmappable) = encoding.standard().encode(text);
            assert!(!unmappable, "{text:?} can't be written in {encoding:?}");
            bytes.into_owned()
        }
    }
}

fn look(bytes: &[u8]) -> Found {
    find(bytes, true, &words_of_result_tables)
}

struct Decoded {
    text: Vec<u8>,
    broken: u64,
    first_broken_line: Option<u32>,
    marks: u64,
}

fn decode<'a>(encoding: TextEncoding, pieces: impl IntoIterator<Item = &'a [u8]>) -> Decoded {
    let mut decoder = Decoder::new(encoding);
    let mut text = Vec::new();
    let mut sink = |piece: &[u8]| {
        assert!(!piece.is_empty());
        text.extend_from_slice(piece);
    };
    for piece in pieces {
        decoder.push(piece, &mut sink);
    }
    decoder.finish(&mut sink);
    Decoded {
        text,
        broken: decoder.broken(),
        first_broken_line: decoder.first_broken_line(),
        marks: decoder.marks_left_out(),
    }
}

fn assert_any_cut_decodes_alike(encoding: TextEncoding, bytes: &[u8]) -> Decoded {
    let whole = decode(encoding, [bytes]);
    let same = |cut: Decoded, how: String| {
        assert_eq!(cut.text, whole.text, "{encoding:?} {how}");
        assert_eq!(cut.broken, whole.broken, "{encoding:?} {how}");
        assert_eq!(cut.first_broken_line, whole.first_broken_line, "{encoding:?} {how}");
        assert_eq!(cut.marks, whole.marks, "{encoding:?} {how}");
    };
    for at in 0..=bytes.len() {
        let (left, right) = bytes.split_at(at);
        same(decode(encoding, [left, right]), format!("cut at {at}"));
    }
    for size in 1..=7 {
        same(decode(encoding, bytes.chunks(size)), format!("in pieces of {size}"));
    }
    whole
}

/// Bytes that are the same on every run (a linear congruential generator; constants by Knuth, MMIX; from memory).
struct Bytes(u64);

impl Bytes {
    fn next(&mut self) -> u8 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 56) as u8
    }

    fn take(&mut self, count: usize) -> Vec<u8> {
        (0..count).map(|_| self.next()).collect()
    }
}

#[test]
fn every_table_is_found_in_every_encoding_by_more_than_a_guess() {
    for (text, encodings) in TABLES {
        for encoding in encodings {
            let found = look(&encode(text, *encoding));
            let known_by = match encoding {
                Utf8 => KnownBy::ValidUtf8,
                Utf16Le | Utf16Be => KnownBy::ByteCounts,
                _ => KnownBy::WordsFound,
            };
            assert_eq!(found, Found { encoding: *encoding, known_by, bom_length: 0 }, "{text}");
        }
    }
}

#[test]
fn every_table_decodes_to_its_text_wherever_the_stream_is_cut() {
    for (text, encodings) in TABLES {
        for encoding in encodings {
            let decoded = assert_any_cut_decodes_alike(*encoding, &encode(text, *encoding));
            assert_eq!(String::from_utf8(decoded.text).as_deref(), Ok(text), "{encoding:?}");
            assert_eq!((decoded.broken, decoded.first_broken_line), (0, None));
        }
    }
}

#[test]
fn a_byte_order_mark_settles_it_and_is_not_part_of_the_text() {
    for encoding in [Utf8, Utf16Le, Utf16Be, Gb18030] {
        let bytes = encode(&format!("\u{FEFF}{CHINESE}"), encoding);
        let found = look(&bytes);
        let bom_length = encode("\u{FEFF}", encoding).len();
        assert_eq!(found, Found { encoding, known_by: KnownBy::ByteOrderMark, bom_length });
        assert_eq!(Found::told(encoding, &bytes), Found { known_by: KnownBy::Told, ..found });
        let decoded = assert_any_cut_decodes_alike(encoding, &bytes);
        assert_eq!(String::from_utf8(decoded.text).as_deref(), Ok(CHINESE));
        assert_eq!(decoded.marks, 0);
        let without = decode(encoding, [bytes.get(bom_length..).unwrap()]);
        assert_eq!(String::from_utf8(without.text).as_deref(), Ok(CHINESE));
    }
    assert_eq!(Found::told(Big5, b"\xFF\xFE").bom_length, 0);
}

#[test]
fn a_mark_at_a_line_start_is_left_out_and_counted_and_elsewhere_it_stays() {
    let joined = "\u{FEFF}\u{FEFF}a,b\r\n1,2\r\n\u{FEFF}a,b\n\u{FEFF}\u{FEFF}3,4\r\u{FEFF}\n5\u{FEFF},＃\n＃,\u{FEFF}6\n\u{FEFF}";
    for encoding in [Utf8, Utf16Le, Utf16Be, Gb18030] {
        let decoded = assert_any_cut_decodes_alike(encoding, &encode(joined, encoding));
        let text = String::from_utf8(decoded.text).unwrap();
        assert_eq!(text, "a,b\r\n1,2\r\na,b\n3,4\r\n5\u{FEFF},＃\n＃,\u{FEFF}6\n", "{encoding:?}");
        assert_eq!(decoded.marks, 6, "{encoding:?}");
    }
}

#[test]
fn utf8_is_handed_on_in_the_very_slices_it_came_in() {
    let text = format!("{CHINESE}{GERMAN}");
    let mut decoder = Decoder::new(Utf8);
    let mut seen = Vec::new();
    for piece in text.as_bytes().chunks(100) {
        decoder.push(piece, &mut |handed| seen.push(handed.as_ptr_range()));
    }
    let pushed: Vec<_> = text.as_bytes().chunks(100).map(<[u8]>::as_ptr_range).collect();
    assert_eq!(seen, pushed);
}

#[test]
fn broken_bytes_of_utf8_pass_through_for_the_cell_reader() {
    let bytes = b"Pb,Supplier\n1,M\xFCller\n2,\xEF\n\xEF\xBB,3\n\xEF\xBB";
    let decoded = assert_any_cut_decodes_alike(Utf8, bytes);
    assert_eq!(decoded.text, bytes);
    assert_eq!((decoded.broken, decoded.first_broken_line), (0, None));
}

#[test]
fn utf8_with_a_few_broken_bytes_stays_utf8() {
    let mut bytes = GERMAN.as_bytes().to_vec();
    bytes.extend_from_slice(b"3;5;M\xFCller \xB1;1;;2;\n");
    assert_eq!(look(&bytes), Found { encoding: Utf8, known_by: KnownBy::ByteCounts, bom_length: 0 });
    let mut bytes = CHINESE.as_bytes().to_vec();
    bytes.extend_from_slice(b"\xE6\xA0,\xFF\n");
    assert_eq!(look(&bytes), Found { encoding: Utf8, known_by: KnownBy::ByteCounts, bom_length: 0 });
}

#[test]
fn a_character_cut_off_where_the_head_ends_is_no_fault() {
    for (text, encodings) in TABLES {
        for encoding in encodings {
            let bytes = encode(text, *encoding);
            let least = bytes.len() / 2;
            for end in least..bytes.len() {
                let head = bytes.get(..end).unwrap();
                let found = find(head, false, &words_of_result_tables);
                assert_eq!(found.encoding, *encoding, "cut at {end} of {text}");
            }
        }
    }
    let mut cut = encode("鉛,試", ShiftJis);
    cut.pop();
    let found = find(&cut, false, &words_of_result_tables);
    assert_eq!((found.encoding, found.known_by), (ShiftJis, KnownBy::WordsFound));
    let cut = b"Pb\n1 \xE9\x89";
    assert_eq!(find(cut, false, &words_of_result_tables).known_by, KnownBy::ValidUtf8);
    assert_ne!(find(cut, true, &words_of_result_tables).known_by, KnownBy::ValidUtf8);
}

#[test]
fn ascii_is_utf8_and_so_is_nothing() {
    for bytes in [&b""[..], b"a", b"Sample,Pb\nA,5\n", b"Pb\0\0,5\0\n", b"abc\0,def\0\nab\0\0,12\0\0"] {
        assert_eq!(look(bytes), Found { encoding: Utf8, known_by: KnownBy::ValidUtf8, bom_length: 0 });
    }
}

#[test]
fn one_cell_beyond_ascii_is_enough_where_it_is_a_known_word() {
    let cases = [
        ("Sample,Pb,Pb ±\nA,812,15\n", Windows1252),
        ("Sample,Pb µg/g\nA,812\n", Windows1252),
        ("Sample,Supplier,Pb,±\nA,Müller,812,15\nB,Société à Genève,812,15\n", Windows1252),
        ("Sample,Room,Pb\nA,25°C,812\n", Windows1252),
        ("Sample,Layer,Pb\nA,5µm,812\n", Windows1252),
        ("ID,铅\nA,812\n", Gb18030),
        ("ID,铅,Cd\nA,812,5\n", Gb18030),
        ("样品,铅,铅\nA,812,5\n", Gb18030),
        ("ID,Pb\n样品,812\n", Gb18030),
        ("ID,Pb铅\n样品A,812\n", Gb18030),
        ("ID,鎘\nA,812\n", Big5),
        ("樣品,Pb\nA,812\n", Big5),
        ("ID,鉛\nA,812\n", ShiftJis),
        ("試料,Pb\nA,812\n", ShiftJis),
        ("ID,ｶﾄﾞﾐｳﾑ\nA,812\n", ShiftJis),
        ("ID,납\nA,812\n", EucKr),
        ("시료,Pb\nA,812\n", EucKr),
    ];
    for (text, encoding) in cases {
        let found = look(&encode(text, encoding));
        assert_eq!((found.encoding, found.known_by), (encoding, KnownBy::WordsFound), "{text}");
    }
}

#[test]
fn a_name_without_a_known_word_is_a_guess_and_says_so() {
    let cases = [
        ("Sample,Supplier,Pb\nA,Müller,812\n", Windows1252),
        ("Sample,Supplier,Pb\nA,Société Générale d'Aulne,812\n", Windows1252),
        ("Sample,Supplier,Pb\nA,深圳桦木五金制品有限公司,812\n", Gb18030),
        ("Sample,Supplier,Pb\nA,ワッシャー製作所,812\n", ShiftJis),
        ("Sample,Supplier,Pb\nA,자작나무 공업사,812\n", EucKr),
        ("Sample,Supplier,Pb\nA,берёзовая фабрика,812\n", Windows1251),
    ];
    for (text, encoding) in cases {
        let found = look(&encode(text, encoding));
        assert_eq!((found.encoding, found.known_by), (encoding, KnownBy::Guess), "{text}");
    }
}

#[test]
fn where_nothing_speaks_for_any_encoding_it_is_windows_1252() {
    let found = find(b"a,\xFF\xFF\xFF\n\x81,\x81\x20\n", true, &|_| 0);
    assert_eq!((found.encoding, found.known_by), (Windows1252, KnownBy::Guess));
}

#[test]
fn the_words_of_the_caller_decide() {
    let bytes = encode("ID,铅\nA,812\n", Gb18030);
    assert_eq!(find(&bytes, true, &|_| 0).encoding, Utf8, "C7 A6 is a letter of UTF-8 too");
    let found = find(&bytes, true, &|text| text.matches('铅').count());
    assert_eq!((found.encoding, found.known_by), (Gb18030, KnownBy::WordsFound));
}

#[test]
fn words_in_ascii_prove_no_encoding() {
    for text in ["Blei,Müller,Blei\n", "Blei;ü;\n"] {
        let bytes = encode(text, Windows1252);
        let found = find(&bytes, true, &|text| text.matches("Blei").count());
        assert_eq!((found.encoding, found.known_by), (Windows1252, KnownBy::Guess), "{text}");
    }
}

#[test]
fn words_are_looked_for_only_in_lines_that_could_read_otherwise() {
    let bytes = encode(&format!("Sample,Pb\r\n1,2\r\n{GERMAN}3,4\n"), Windows1252);
    let words = |text: &str| {
        assert!(text.lines().all(|line| line.is_empty() || !line.is_ascii()), "{text}");
        words_of_result_tables(text)
    };
    assert_eq!(find(&bytes, true, &words).known_by, KnownBy::WordsFound);
}

#[test]
fn utf8_that_can_be_no_accident_is_not_challenged_by_words() {
    let accident = decode(Gb18030, ["µ".as_bytes()]).text;
    let accident = std::str::from_utf8(&accident).unwrap();
    let found = find("Pb,µg\n1,2\n".as_bytes(), true, &|text| text.matches(accident).count());
    assert_eq!((found.encoding, found.known_by), (Utf8, KnownBy::ValidUtf8));
    // One raw ± among those of UTF-8: read as Windows-1252 there is one more of them.
    let mut bytes = "Pb ±,Cd ±\n".as_bytes().to_vec();
    bytes.extend_from_slice(b"\xB1 5,2\n");
    assert_eq!((look(&bytes).encoding, look(&bytes).known_by), (Utf8, KnownBy::ByteCounts));
}

#[test]
fn a_reading_with_much_that_is_no_character_can_have_no_words() {
    let found = find(b"\xFF,\xFF,\xFF,\xC7\xA6\n", true, &|text| text.matches('铅').count());
    assert_eq!((found.encoding, found.known_by), (Windows1252, KnownBy::Guess));
}

#[test]
fn of_two_readings_with_as_many_words_the_one_without_a_fault_is_taken() {
    let bytes = encode(&format!("{}上\n", "铅,".repeat(12)), Gb18030);
    let korean = decode(EucKr, [&encode("铅", Gb18030)[..]]);
    assert_eq!((korean.broken, decode(EucKr, [&bytes[..]]).broken), (0, 1));
    let korean = String::from_utf8(korean.text).unwrap();
    let found = find(&bytes, true, &|text| text.matches('铅').count() + text.matches(&korean).count());
    assert_eq!((found.encoding, found.known_by), (Gb18030, KnownBy::WordsFound));
}

#[test]
fn where_words_leave_two_readings_open_it_is_a_guess_among_those() {
    // µ and ± are the same in both; the letters tell them apart.
    let text = "Dostawca;Pb ±\nZakłady Łączności w Gdańsku, Wałbrzych i Łódź;5\n";
    let found = look(&encode(text, Windows1250));
    assert_eq!((found.encoding, found.known_by), (Windows1250, KnownBy::Guess));

    let bytes = encode("A,Müller,Küfer\n", Windows1252);
    let reading = |encoding| String::from_utf8(decode(encoding, [&bytes[..]]).text).unwrap();
    let among = |one, other| {
        let (one, other) = (reading(one), reading(other));
        find(&bytes, true, &|text| usize::from(text == one || text == other))
    };
    let found = among(Windows1252, Gb18030);
    assert_eq!((found.encoding, found.known_by), (Windows1252, KnownBy::Guess));
    let found = among(Big5, Gb18030);
    assert_eq!((found.encoding, found.known_by), (Gb18030, KnownBy::Guess));
}

#[test]
fn utf16_is_found_in_spite_of_a_broken_character_or_one_that_looks_like_two() {
    for encoding in [Utf16Le, Utf16Be] {
        // U+2264 is made of `"` and `d`.
        assert_eq!(look(&encode("Pb,Cd\n≤ 5,12\n", encoding)).encoding, encoding);
        let mut bytes = encode(JAPANESE, encoding);
        bytes.extend(encode("😀", encoding).into_iter().take(2));
        bytes.extend(encode("\n", encoding));
        assert_eq!(look(&bytes).encoding, encoding);
    }
}

#[test]
fn one_zero_byte_makes_no_utf16() {
    let mut bytes = encode(&"一".repeat(40), Gb18030);
    bytes.extend_from_slice(b"A\0");
    assert!(!matches!(look(&bytes).encoding, Utf16Le | Utf16Be));
}

#[test]
fn a_text_with_one_cell_cut_in_the_middle_of_a_character_keeps_its_encoding() {
    let mut bytes = encode(CHINESE, Gb18030);
    bytes.extend_from_slice(b"\xB3\xE0\xD1,812,15\n");
    let found = look(&bytes);
    assert_eq!((found.encoding, found.known_by), (Gb18030, KnownBy::WordsFound));
    let decoded = assert_any_cut_decodes_alike(Gb18030, &bytes);
    assert_eq!((decoded.broken, decoded.first_broken_line), (1, Some(4)));
    assert!(String::from_utf8(decoded.text).unwrap().ends_with("赤\u{FFFD},812,15\n"));
}

#[test]
fn chinese_in_utf16_with_few_numbers_is_found_by_its_line_ends_and_delimiters() {
    let text = "样品编号,供应商名称\r\n一号样品一,桦木五金厂\r\n二号样品一,赤杨五金厂\r\n上海上里,一一上上\r\n　　　　　　　　一,　　　　　　　　一\r\n";
    for encoding in [Utf16Le, Utf16Be] {
        let found = look(&encode(text, encoding));
        assert_eq!((found.encoding, found.known_by), (encoding, KnownBy::ByteCounts));
    }
}

#[test]
fn bytes_of_numbers_are_no_utf16() {
    let small: Vec<u8> = (0..2000_u16).flat_map(|n| (n % 40).to_le_bytes()).collect();
    let large: Vec<u8> = (0..2000_u32).flat_map(|n| (n * 7).to_le_bytes()).collect();
    for bytes in [small, large, b"abc\0def\0ghi\0jk,\0l\r\n\0".repeat(20)] {
        assert!(!matches!(look(&bytes).encoding, Utf16Le | Utf16Be));
    }
}

#[test]
fn a_half_of_a_pair_and_an_odd_last_byte_are_broken_and_counted() {
    for (encoding, unit) in [(Utf16Le, u16::to_le_bytes as fn(u16) -> [u8; 2]), (Utf16Be, u16::to_be_bytes)] {
        let units = [0x41, 0x0D, 0x0A, 0xD83D, 0x42, 0x0A, 0xDE00, 0x43, 0xD83D, 0xDE00, 0x0A];
        let mut bytes: Vec<u8> = units.into_iter().flat_map(unit).collect();
        bytes.push(0x33);
        let decoded = assert_any_cut_decodes_alike(encoding, &bytes);
        assert_eq!(String::from_utf8(decoded.text).unwrap(), "A\r\n\u{FFFD}B\n\u{FFFD}C😀\n\u{FFFD}");
        assert_eq!((decoded.broken, decoded.first_broken_line), (3, Some(2)));
    }
}

#[test]
fn a_character_cut_off_at_the_end_of_the_file_is_broken() {
    for (encoding, text) in [(Gb18030, "铅"), (Big5, "鉛"), (ShiftJis, "鉛"), (EucKr, "납"), (EucJp, "鉛")]
    {
        let mut bytes = b"1\r2\r\n3\n".to_vec();
        bytes.extend(encode(text, encoding));
        bytes.pop();
        let decoded = assert_any_cut_decodes_alike(encoding, &bytes);
        assert_eq!(decoded.text, "1\r2\r\n3\n\u{FFFD}".as_bytes(), "{encoding:?}");
        assert_eq!((decoded.broken, decoded.first_broken_line), (1, Some(4)));
    }
}

#[test]
fn a_delimiter_that_is_half_a_character_is_none() {
    // Second bytes 0x7C and 0x5C: `|` and `\`.
    for (encoding, text) in [(ShiftJis, "ポ|ソ\\|能"), (Big5, "功|許|育"), (Gb18030, "誀|亅|")] {
        let bytes = encode(text, encoding);
        assert!(bytes.iter().filter(|byte| matches!(byte, b'|' | b'\\')).count() > 2, "{encoding:?}");
        assert_eq!(decode(encoding, [&bytes[..]]).text, text.as_bytes());
    }
}

#[test]
fn every_byte_of_windows_1252_reads_as_the_cell_reader_reads_it() {
    let bytes: Vec<u8> = (0..=255).collect();
    let decoded = decode(Windows1252, [&bytes[..]]);
    assert_eq!(decoded.text, crate::cell::text(&bytes).as_bytes());
    assert_eq!(decoded.broken, 0);
}

#[test]
fn bytes_at_random_decode_alike_however_they_are_cut_and_never_panic() {
    let mut random = Bytes(7);
    for round in 0..40_usize {
        let mut bytes = random.take(20 + round * 3);
        if round % 2 == 0 {
            // Half of them with many line ends and marks.
            for chunk in bytes.chunks_mut(5) {
                let pattern: &[u8] = if round % 4 == 0 { b"\n\xEF\xBB\xBF" } else { b"\r\n\xFF\xFE" };
                chunk.iter_mut().zip(pattern).for_each(|(byte, set)| *byte = *set);
            }
        }
        let found = look(&bytes);
        assert_eq!(look(&bytes), found);
        for encoding in TextEncoding::ALL {
            let decoded = assert_any_cut_decodes_alike(encoding, &bytes);
            assert!(encoding == Utf8 || String::from_utf8(decoded.text).is_ok());
        }
    }
}

#[test]
fn a_long_stream_decodes_as_a_short_one() {
    for (text, encodings) in TABLES {
        let many = text.repeat(600);
        for encoding in encodings {
            let bytes = encode(&many, *encoding);
            assert!(decode(*encoding, [&bytes[..]]).text == many.as_bytes(), "{encoding:?} whole");
            assert!(decode(*encoding, bytes.chunks(4093)).text == many.as_bytes(), "{encoding:?} in pieces");
        }
    }
}

#[test]
fn many_broken_bytes_are_handed_on_in_large_pieces_and_none_is_lost() {
    for encoding in [Gb18030, Big5, ShiftJis, EucKr, EucJp] {
        for ascii in 0..4 {
            let mut bytes = vec![b'a'; ascii];
            bytes.resize(ascii + 100_000, 0xFF);
            let (mut pieces, mut length) = (0, 0);
            let mut decoder = Decoder::new(encoding);
            decoder.push(&bytes, &mut |piece| {
                pieces += 1;
                length += piece.len();
            });
            assert_eq!((decoder.broken(), decoder.first_broken_line()), (100_000, Some(1)), "{encoding:?}");
            assert_eq!(length, ascii + 300_000, "{encoding:?}");
            assert!(pieces < 10, "{pieces} pieces in {encoding:?}");
        }
    }
}

#[test]
fn a_decoder_that_has_finished_takes_a_new_stream() {
    let mut decoder = Decoder::new(ShiftJis);
    let mut text = Vec::new();
    for piece in [&b"a\n\x89"[..], b"\x94"] {
        decoder.push(piece, &mut |piece| text.extend_from_slice(piece));
        decoder.finish(&mut |piece| text.extend_from_slice(piece));
    }
    assert_eq!(String::from_utf8(text).unwrap(), "a\n\u{FFFD}\u{FFFD}");
    assert_eq!((decoder.broken(), decoder.first_broken_line()), (2, Some(2)));

    let mut decoder = Decoder::new(ShiftJis);
    decoder.push(b"1\n2\n", &mut |_| ());
    decoder.finish(&mut |_| ());
    decoder.push(b"1\n\xFF", &mut |_| ());
    assert_eq!(decoder.first_broken_line(), Some(2), "lines of the stream before don't count");
}

#[test]
fn every_label_leads_back_to_its_encoding() {
    for encoding in TextEncoding::ALL {
        assert_eq!(TextEncoding::from_label(encoding.label()), Some(encoding));
        assert_eq!(TextEncoding::from_label(&encoding.label().to_uppercase()), Some(encoding));
        // The decoder's own table of labels is the standard's.
        assert_eq!(encoding_rs::Encoding::for_label(encoding.label().as_bytes()), Some(encoding.standard()));
    }
    for (label, encoding) in [
        (" latin1 ", Windows1252),
        ("SJIS", ShiftJis),
        ("gbk", Gb18030),
        ("gb2312", Gb18030),
        ("cp949", EucKr),
    ] {
        assert_eq!(TextEncoding::from_label(label), Some(encoding));
    }
    for label in ["", "utf-7", "klingon"] {
        assert_eq!(TextEncoding::from_label(label), None);
    }
}

#[test]
fn more_than_is_looked_at_changes_nothing() {
    let mut bytes = b"Sample,Pb\n".to_vec();
    bytes.resize(LOOKED_AT, b'1');
    let ascii = find(&bytes, false, &words_of_result_tables);
    bytes.extend_from_slice(&encode(JAPANESE, ShiftJis));
    assert_eq!(find(&bytes, true, &words_of_result_tables), ascii);
    assert_eq!(ascii.encoding, Utf8);
}

#[test]
fn a_person_may_state_every_encoding_and_no_other() {
    let mut ours: Vec<&str> = TextEncoding::ALL.iter().map(|encoding| encoding.label()).collect();
    let mut stated = plumbline_core::reading::TEXT_ENCODINGS.to_vec();
    ours.sort_unstable();
    stated.sort_unstable();
    assert_eq!(ours, stated);
}

use plumbline_core::quantity::DecimalMark;

use super::*;

fn point(text: &str) -> CellText {
    read(text.as_bytes(), Some(DecimalMark::Point))
}

#[test]
fn blank_zero_not_detected_and_below_a_number_are_four_things() {
    assert_eq!(point("  "), CellText::Blank);
    assert!(matches!(point("0"), CellText::Number(number, None) if number.digits == 0));
    assert_eq!(point("< LOD"), CellText::NotDetected);
    assert!(matches!(point("<5"), CellText::Below(number, None) if number.digits == 5));
    assert!(matches!(point("< 0.5 %"), CellText::Below(_, Some(Unit::Percent))));
    assert!(matches!(point("> 5000"), CellText::Above(..)));
}

#[test]
fn bytes_that_are_no_utf8_are_windows_1252() {
    assert_eq!(text(b"Pb \xB1"), "Pb ±");
    assert_eq!(text("Pb ±".as_bytes()), "Pb ±");
    assert_eq!(text(b"\x80\x99"), "€™");
    assert_ne!(text(b"M\xFC"), text(b"M\xE4"));
}

#[test]
fn words_of_the_trade_are_known() {
    for text in ["ND", "n.d.", "BDL", "<LOD", "<lod", "< DL"] {
        assert_eq!(point(text), CellText::NotDetected, "{text}");
    }
    for text in ["-", "--", "n/a"] {
        assert_eq!(point(text), CellText::NotMeasured, "{text}");
    }
    for text in ["NaN", "inf", "1e", "pass", "=1+1", "<", "< 0", "<-5", "12 furlongs", "#REF!"] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
}

#[test]
fn a_unit_behind_the_number_is_read() {
    assert!(matches!(point("12 ppm"), CellText::Number(_, Some(Unit::MgPerKg))));
    assert!(matches!(point("1.2e3mg/kg"), CellText::Number(_, Some(Unit::MgPerKg))));
    assert!(matches!(point("-3.5"), CellText::Number(number, None) if number.negative));
    assert!(matches!(point("\u{2212}3.5"), CellText::Number(number, None) if number.negative));
}

#[test]
fn a_mark_that_may_be_either_is_never_guessed() {
    assert_eq!(read(b"1,250", None), CellText::MarkUnclear);
    assert_eq!(read(b"1.250", None), CellText::MarkUnclear);
    assert_eq!(read(b"1,250", Some(DecimalMark::Point)), CellText::MarkUnclear);
    assert!(matches!(read(b"1250", None), CellText::Number(..)));
    assert!(matches!(read(b"0,5", Some(DecimalMark::Comma)), CellText::Number(..)));
}

#[test]
fn thousands_marks_are_read_where_they_can_be_nothing_else() {
    let is = |read: CellText, digits: u64, exponent: i32| {
        assert!(
            matches!(read, CellText::Number(n, None) if n.digits == digits && n.exponent == exponent),
            "{read:?}"
        );
    };
    let told = |decimal| Marks { decimal: Some(decimal), told: true };
    is(read(b"1,234.5", Some(DecimalMark::Point)), 12_345, -1);
    is(read(b"1.234,5", Some(DecimalMark::Comma)), 12_345, -1);
    is(read(b"1,505", told(DecimalMark::Point)), 1_505, 0);
    is(read(b"-1.234.567", told(DecimalMark::Comma)), 1_234_567, 0);
    for text in ["1,50", "1,5055", ",505", "1,234,5.6", "12,34.5"] {
        assert_eq!(read(text.as_bytes(), told(DecimalMark::Point)), CellText::MarkUnclear, "{text}");
    }
}

#[test]
fn evidence_of_a_mark_is_only_what_can_be_nothing_else() {
    assert_eq!(mark_evidence(b"0,125"), Some(DecimalMark::Comma));
    assert_eq!(mark_evidence(b"< 12,5"), Some(DecimalMark::Comma));
    assert_eq!(mark_evidence(b"12.5"), Some(DecimalMark::Point));
    assert_eq!(mark_evidence(b"1,234.5"), Some(DecimalMark::Point));
    assert_eq!(mark_evidence(b"1.250"), None);
    assert_eq!(mark_evidence(b"1250"), None);
    assert_eq!(mark_evidence(b"< LOD"), None);
}

/// A number and its exponent, brought to the shortest digits.
fn shortest(number: &Number) -> (bool, u64, i32) {
    let (mut digits, mut exponent) = (number.digits, number.exponent);
    while digits != 0 && digits.is_multiple_of(10) {
        (digits, exponent) = (digits / 10, exponent + 1);
    }
    (number.negative, digits, if digits == 0 { 0 } else { exponent })
}

/// A cell in few words, so that many can stand in a table.
fn told(cell: CellText) -> String {
    let number = |number: &Number| {
        let (negative, digits, exponent) = shortest(number);
        format!("{}{digits}e{exponent}", if negative { "-" } else { "" })
    };
    let unit = |unit: Option<Unit>| unit.map_or(String::new(), |unit| format!(" {}", unit.sign()));
    match cell {
        CellText::Number(n, u) => format!("{}{}", number(&n), unit(u)),
        CellText::WithError(n, e, u) => format!("{} +- {}{}", number(&n), number(&e), unit(u)),
        CellText::Below(n, u) => format!("< {}{}", number(&n), unit(u)),
        CellText::Above(n, u) => format!("> {}{}", number(&n), unit(u)),
        other => format!("{other:?}"),
    }
}

fn comma(text: &str) -> CellText {
    read(text.as_bytes(), Some(DecimalMark::Comma))
}

#[test]
fn a_value_with_its_uncertainty_is_two_numbers() {
    for (text, is) in [
        ("12.3 ± 0.5", "123e-1 +- 5e-1"),
        ("12.3±0.5", "123e-1 +- 5e-1"),
        ("12.3 +/- 0.5", "123e-1 +- 5e-1"),
        ("12.3+/-0.5", "123e-1 +- 5e-1"),
        ("12.3 +- 0.5", "123e-1 +- 5e-1"),
        ("12.3 ± 0.5 mg/kg", "123e-1 +- 5e-1 mg/kg"),
        ("(12.3 ± 0.5) mg/kg", "123e-1 +- 5e-1 mg/kg"),
        ("(12.3 ± 0.5)", "123e-1 +- 5e-1"),
        ("12.3 mg/kg ± 0.5 mg/kg", "123e-1 +- 5e-1 mg/kg"),
        ("12.3 mg/kg ± 0.5", "123e-1 +- 5e-1 mg/kg"),
        ("0.12±0.01%", "12e-2 +- 1e-2 %"),
        ("1 234 ± 56", "1234e0 +- 56e0"),
        ("-1.5 ± 2", "-15e-1 +- 2e0"),
        ("1.2e3 ± 4e1", "12e2 +- 4e1"),
        ("12 ± 0", "12e0 +- 0e0"),
        ("１２±３", "12e0 +- 3e0"),
    ] {
        assert_eq!(told(point(text)), is, "{text}");
    }
    assert_eq!(told(comma("12,3 ± 0,5")), "123e-1 +- 5e-1");
    assert_eq!(told(read(b"12.3 \xB1 0.5", Some(DecimalMark::Point))), "123e-1 +- 5e-1");
    for text in [
        "120 mg/kg ± 5 %",
        "± 0.5",
        "12 ±",
        "12 ± -1",
        "<5 ± 1",
        "12 ± 3 furlongs",
        "12 ± 3 ± 4",
        "a ± b",
        "(12 ± 3",
    ] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
    assert_eq!(point("12,3 ± 0,5"), CellText::MarkUnclear);
}

#[test]
fn a_limit_is_read_behind_a_sign_or_a_word_that_names_it() {
    for (text, is) in [
        ("<5", "< 5e0"),
        ("< 5", "< 5e0"),
        ("<=5", "< 5e0"),
        ("≤5", "< 5e0"),
        ("≦ 5", "< 5e0"),
        ("＜５", "< 5e0"),
        ("＜ 5 ｐｐｍ", "< 5e0 mg/kg"),
        ("LOD: 5", "< 5e0"),
        ("LOD 5", "< 5e0"),
        ("LOD=5", "< 5e0"),
        ("<LOD 5", "< 5e0"),
        ("<LOD (5)", "< 5e0"),
        ("< LOD=5", "< 5e0"),
        ("< LOD (5 ppm)", "< 5e0 mg/kg"),
        ("<LOD (<5)", "< 5e0"),
        ("ND (<5)", "< 5e0"),
        ("n.d. (5)", "< 5e0"),
        ("ND<5", "< 5e0"),
        ("n.n. (< 0.5 mg/kg)", "< 5e-1 mg/kg"),
        ("bdl 3", "< 3e0"),
        ("unter 5", "< 5e0"),
        ("kleiner als 5", "< 5e0"),
        ("unter Nachweisgrenze (5)", "< 5e0"),
        ("inférieur à 5", "< 5e0"),
        ("menor que 5 ppm", "< 5e0 mg/kg"),
        ("小于5", "< 5e0"),
        ("未检出(<5)", "< 5e0"),
        ("5未満", "< 5e0"),
        ("5 ppm以下", "< 5e0 mg/kg"),
        ("5 미만", "< 5e0"),
        ("below 5", "< 5e0"),
        ("<1 000", "< 1e3"),
        ("> 10 %", "> 1e1 %"),
        ("＞5", "> 5e0"),
        ("≥5", "> 5e0"),
    ] {
        assert_eq!(told(point(text)), is, "{text}");
    }
    assert_eq!(told(comma("< 0,5 %")), "< 5e-1 %");
    assert_eq!(told(comma("ND (<0,5)")), "< 5e-1");
    for text in [
        "nd 5",
        "- 5",
        "n.a. (5)",
        ">LOQ",
        "< -5",
        "<0",
        "≤ 0",
        "LOD 0",
        "<<5",
        "5 <",
        "< 5 furlongs",
        "LOD five",
    ] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
}

#[test]
fn words_for_not_detected_and_not_measured_are_known_in_six_languages() {
    for text in [
        "ND",
        "nd",
        "N.D.",
        "n.d.",
        "bdl",
        "BDL",
        "<LOD",
        "< LOD",
        "＜LOD",
        "below LOD",
        "not det.",
        "not detected",
        "n.n.",
        "nicht nachweisbar",
        "u.d.N.",
        "unter Nachweisgrenze",
        "< NG",
        "< BG",
        "< NWG",
        "non détecté",
        "non detecte",
        "< LD",
        "< LQ",
        "no detectado",
        "未检出",
        "未檢出",
        "検出せず",
        "不検出",
        "検出限界以下",
        "불검출",
    ] {
        assert_eq!(point(text), CellText::NotDetected, "{text}");
    }
    for text in [
        "n.a.",
        "n/a",
        "-",
        "--",
        "–",
        "—",
        "nicht gemessen",
        "non mesuré",
        "no medido",
        "未测",
        "測定なし",
        "미측정",
        "not measured",
    ] {
        assert_eq!(point(text), CellText::NotMeasured, "{text}");
    }
}

#[test]
fn thousands_parted_by_spaces_or_apostrophes_are_one_number() {
    for (text, is) in [
        ("1 234", "1234e0"),
        ("12 345 678", "12345678e0"),
        ("1\u{A0}234", "1234e0"),
        ("1\u{2009}234", "1234e0"),
        ("1\u{202F}234.5", "12345e-1"),
        ("1'234.5", "12345e-1"),
        ("1’234", "1234e0"),
        ("-1 234", "-1234e0"),
        ("1 234 ppm", "1234e0 mg/kg"),
    ] {
        assert_eq!(told(point(text)), is, "{text}");
    }
    assert_eq!(told(comma("1 234,5")), "12345e-1");
    assert_eq!(told(comma("1 234,567")), "1234567e-3");
    assert_eq!(told(comma("1'234,5")), "12345e-1");
    assert_eq!(told(read("1 234".as_bytes(), None)), "1234e0");
    assert_eq!(read("1 234,5".as_bytes(), None), CellText::MarkUnclear);
    for text in [
        "12 3",
        "1 23",
        "1 2345",
        "0 123",
        "1 234'567",
        "1234 567",
        "1 234.567 8",
        "5 10 ppm",
        "1''234",
        "'123",
    ] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
}

#[test]
fn powers_of_ten_are_read_in_every_writing() {
    for (text, is) in [
        ("1.2e3", "12e2"),
        ("1.2E+03", "12e2"),
        ("1.2×10^3", "12e2"),
        ("1.2 x 10³", "12e2"),
        ("1.2×10³", "12e2"),
        ("1.2*10^3", "12e2"),
        ("1.2×10⁻³ %", "12e-4 %"),
        ("1.2 × 10^-3", "12e-4"),
        ("1.2e3 ppm", "12e2 mg/kg"),
    ] {
        assert_eq!(told(point(text)), is, "{text}");
    }
    assert_eq!(told(comma("1,2E+03")), "12e2");
    assert_eq!(told(comma("1,2×10³")), "12e2");
    for text in ["1.2 x 103", "1.2 x", "1.2×10", "1.2^3", "2x3"] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
}

#[test]
fn units_behind_a_number_are_known_in_many_words() {
    for (text, is) in [
        ("0.5%", "5e-1 %"),
        ("0.5 ％", "5e-1 %"),
        ("+5 %", "5e0 %"),
        ("-0.1 %", "-1e-1 %"),
        ("12 mg·kg⁻¹", "12e0 mg/kg"),
        ("12 mg kg-1", "12e0 mg/kg"),
        ("12µg/g", "12e0 mg/kg"),
        ("3 Gew.-%", "3e0 %"),
        ("3 wt.%", "3e0 %"),
        ("3 g/kg", "3e0 g/kg"),
        ("3‰", "3e0 g/kg"),
        ("3 ppb", "3e0 ug/kg"),
        ("3 质量%", "3e0 %"),
    ] {
        assert_eq!(told(point(text)), is, "{text}");
    }
}

#[test]
fn what_is_no_measurement_stays_text() {
    for text in [
        "12 (3)",
        "0.5 J",
        "5 U",
        "=A1+1",
        "#DIV/0!",
        "#N/A",
        "&lt;5",
        "<b>5</b>",
        "2024-05-12",
        "12-05-2024",
        "1/2",
        "12:30",
        "5 ppt",
        "5 mg/l",
        "12 -%",
        "yes",
        "S1",
        "1e5 e6",
        "1_000",
        "0x1F",
        "١٢",
        "5 at%",
        "n.b.",
        "/",
    ] {
        assert_eq!(point(text), CellText::Unreadable, "{text}");
    }
    assert_eq!(point(&"9 ".repeat(60)), CellText::Unreadable);
}

#[test]
fn every_form_shows_its_decimal_mark() {
    for (text, mark) in [
        ("12,3 ± 0,5", Some(DecimalMark::Comma)),
        ("12 ± 0,5", Some(DecimalMark::Comma)),
        ("(12.3 ± 0.5) mg/kg", Some(DecimalMark::Point)),
        ("ND (<0,5)", Some(DecimalMark::Comma)),
        ("LOD: 0.5", Some(DecimalMark::Point)),
        ("≤ 0,5", Some(DecimalMark::Comma)),
        ("＜０．５", Some(DecimalMark::Point)),
        ("1 234,567", Some(DecimalMark::Comma)),
        ("1'234.567", Some(DecimalMark::Point)),
        ("1,2E+03", Some(DecimalMark::Comma)),
        ("1,25 %", Some(DecimalMark::Comma)),
        ("1,250 ± 3", None),
        ("1 234", None),
        ("S1,5", None),
        ("Zink, 0,5", None),
        (".", None),
        ("", None),
    ] {
        assert_eq!(mark_evidence(text.as_bytes()), mark, "{text}");
    }
}

#[test]
fn a_number_written_in_another_form_is_never_remade_as_plain() {
    for text in ["1 234", "12 ppm", "1.2×10³", "<LOD 5", "１２"] {
        let plain = match point(text) {
            CellText::Number(number, _) | CellText::Below(number, _) => number.plain,
            other => panic!("{text}: {other:?}"),
        };
        assert!(!plain, "{text}");
    }
}

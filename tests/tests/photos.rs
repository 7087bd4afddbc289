//! Photographs from the files to the report: what is offered, what is joined, and where the spot is drawn.

use plumbline_core::acts::{Act, ActKind, Target};
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::photo::{MediaType, Photo, PhotoState, Size};
use plumbline_core::report::photos::{self, Offer, OfferFrom};
use plumbline_core::report::{Length, evidence};
use plumbline_core::settings_file::{parse_settings, settings_text};
use plumbline_proof::{Verdict, prove, said};
use plumbline_tests::delivery::{english, report_of};
use plumbline_tests::program::{findings_json, inspect, report_html, with_words};
use serde_json::Value;

const TABLE: &str = "Sample,Supplier,Lot,Part,Material,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s)\n\
    A-1,Alder,L-1,P-1,sheath,polymer,2,1,5400,40\n\
    A-2,Alder,L-1,P-1,core,metal,1,0.5,20,4\n\
    A-12,Alder,L-1,P-2,clip,metal,1,0.5,20,4\n";

/// A PNG of this size by its header; what it shows does not matter here.
fn png(width: u32, height: u32, shade: u8) -> Vec<u8> {
    let chunk = |name: &[u8], body: &[u8]| {
        [&u32::try_from(body.len()).expect("short").to_be_bytes()[..], name, body, b"sum."].concat()
    };
    let head = [&width.to_be_bytes()[..], &height.to_be_bytes(), &[8, 0, 0, 0, 0]].concat();
    let parts = [chunk(b"IHDR", &head), chunk(b"IDAT", &[shade]), chunk(b"IEND", b"")].concat();
    [b"\x89PNG\r\n\x1A\n", &parts[..]].concat()
}

fn with_photos(settings: &str, table: &str, names: &[&str]) -> Inspection {
    let mut inspection = inspect(settings, &[("results.csv", table.as_bytes())]);
    for (at, name) in names.iter().enumerate() {
        inspection.add_photo(Photo::of_file(name, &png(400, 300, u8::try_from(at).expect("few"))));
    }
    inspection
}

fn joined(line: u32, value: &str) -> Act {
    Act {
        kind: ActKind::Photo,
        target: Target::Reading("results.csv".into(), line),
        value: value.into(),
        by: "AB".into(),
        at: String::new(),
        note: String::new(),
    }
}

/// What each photograph is offered for: its name, how it was found, the ids of the readings.
fn offers(inspection: &Inspection) -> Vec<(String, OfferFrom, Vec<u32>, bool)> {
    let of = |offer: &Offer| {
        let name = inspection.photos[offer.photo].name.clone();
        (name, offer.from, offer.readings.clone(), offer.is_ambiguous())
    };
    photos::offers(inspection, &review(inspection)).iter().map(of).collect()
}

fn one_offer(table: &str, name: &str) -> Option<(OfferFrom, Vec<u32>, bool)> {
    offers(&with_photos("", table, &[name])).pop().map(|(_, from, readings, many)| (from, readings, many))
}

#[test]
fn a_photograph_is_offered_for_the_reading_whose_sample_its_name_is_or_holds() {
    for (name, from, reading) in [
        ("A-1.png", OfferFrom::Name, 0),
        ("stick/2026/a_01.PNG", OfferFrom::Name, 0),
        ("A1.png", OfferFrom::Name, 0),
        ("A-2 seen from above.png", OfferFrom::Within, 1),
        ("IMG_2026_A-12.png", OfferFrom::Within, 2),
    ] {
        assert_eq!(one_offer(TABLE, name), Some((from, vec![reading], false)), "{name}");
    }
    for name in ["A-3.png", "A-123.png", "DATA-1.png", "A.png", "1.png", "-.png", ".png", "photograph.png"] {
        assert_eq!(one_offer(TABLE, name), None, "{name}");
    }
}

#[test]
fn a_sample_that_is_a_number_is_a_whole_number_in_the_name() {
    let table = "Sample,Class,Pb mg/kg,Pb u (1s)\n7,metal,5,1\n17,metal,5,1\n";
    assert_eq!(one_offer(table, "IMG_0007.png"), Some((OfferFrom::Within, vec![0], false)));
    assert_eq!(one_offer(table, "IMG0017.png"), Some((OfferFrom::Within, vec![1], false)));
    assert_eq!(one_offer(table, "IMG_0177.png"), None);
    assert_eq!(
        one_offer(table, "7 and 17.png"),
        Some((OfferFrom::Within, vec![0, 1], true)),
        "two numbers, two candidates, and it says so"
    );
}

#[test]
fn several_readings_of_one_sample_are_listed_as_such_and_none_is_picked() {
    let table = "Sample,Spot,Class,Pb mg/kg,Pb u (1s)\nA-1,1,metal,5,1\nA-1,2,metal,5,1\n";
    assert_eq!(one_offer(table, "A-1.png"), Some((OfferFrom::Name, vec![0, 1], true)));
    let many = (0..40).map(|spot| format!("A-1,{spot},metal,5,1\n")).collect::<Vec<_>>().concat();
    let many = with_photos("", &format!("Sample,Spot,Class,Pb mg/kg,Pb u (1s)\n{many}"), &["A-1.png"]);
    let offer = photos::offers(&many, &review(&many)).pop().expect("an offer");
    assert_eq!((offer.readings.len(), offer.more, offer.is_ambiguous()), (20, 20, true));
}

#[test]
fn a_column_that_names_the_file_says_more_than_any_name() {
    let table = "Sample,Photo,Class,Pb mg/kg,Pb u (1s)\nA-1,img_4.PNG,metal,5,1\nIMG-4,,metal,5,1\nA-3,IMG_4,metal,5,1\n";
    assert_eq!(
        one_offer(table, "stick/IMG_4.png"),
        Some((OfferFrom::Column, vec![0, 2], false)),
        "the file names it for two readings: it shows both"
    );
}

#[test]
fn an_offer_records_nothing_and_ends_when_somebody_joins_the_photograph() {
    let mut inspection = with_photos("", TABLE, &["A-1.png"]);
    let findings = review(&inspection);
    let json: Value = serde_json::from_slice(&findings_json(&inspection, &findings)).expect("JSON");
    assert_eq!(json["photos"], serde_json::json!([]));
    assert!(!report_html(&inspection, &findings).contains("<img"));
    inspection.acts.push(joined(3, "file=A-1.png"));
    assert_eq!(offers(&inspection), []);
    inspection.acts.push(Act { kind: ActKind::Undo, value: "1".into(), ..joined(3, "") });
    assert_eq!(offers(&inspection).len(), 1, "undone, it is offered again");
}

#[test]
fn the_findings_tell_what_each_photograph_shows_and_where() {
    let mut inspection = with_photos("", TABLE, &["A-1.png", "both.png"]);
    let material = ["Alder", "L-1", "P-1", "core"].map(str::to_owned);
    inspection.acts = vec![
        joined(2, "file=both.png;x=100;y=900"),
        joined(3, "file=both.png;x=1;y=1"),
        joined(3, "file=both.png;x=500;y=250"),
        joined(2, "file=A-1.png"),
        Act { target: Target::LotMaterial(material), ..joined(0, "file=gone.png") },
        joined(99, "file=A-1.png"),
    ];
    let findings = review(&inspection);
    let json: Value = serde_json::from_slice(&findings_json(&inspection, &findings)).expect("JSON");
    let photos = json["photos"].as_array().expect("a list");
    let names: Vec<_> = photos.iter().map(|one| (one["name"].as_str(), one["state"].as_str())).collect();
    assert_eq!(
        names,
        [
            (Some("A-1.png"), Some("at_hand")),
            (Some("both.png"), Some("at_hand")),
            (Some("gone.png"), Some("not_at_hand"))
        ]
    );
    let both = &photos[1];
    assert_eq!((&both["width"], &both["height"]), (&400.into(), &300.into()));
    assert_eq!(both["sha256"], Value::from(inspection.photos[1].sha256.clone()));
    assert_eq!(both["shows"][0]["spot"], serde_json::json!({"x_permille": 100, "y_permille": 900}));
    assert_eq!(both["shows"][1]["spot"], serde_json::json!({"x_permille": 500, "y_permille": 250}), "moved");
    assert_eq!(both["shows"][1]["reading"], Value::from(1));
    assert_eq!(photos[2]["shows"][0]["material"], Value::from(0));
    let matched: Vec<_> =
        json["acts"].as_array().expect("acts").iter().map(|act| act["matched"].as_bool()).collect();
    assert_eq!(matched, [true, true, true, true, true, false].map(Some));
    let told = with_words(|words| photos::troubles(&inspection, &findings, words));
    assert!(told.len() == 1 && told[0].contains("gone.png") && told[0].contains("core"), "{told:?}");
}

#[test]
fn no_photograph_changes_a_verdict() {
    let (without, mut with) = (with_photos("", TABLE, &[]), with_photos("", TABLE, &["A-1.png"]));
    with.acts.push(joined(2, "file=A-1.png;x=1;y=1"));
    with.acts.push(joined(3, "file=gone.png"));
    let (one, other) = (review(&without), review(&with));
    assert_eq!(one.verdicts, other.verdicts);
    assert_eq!(format!("{:?}", one.lots), format!("{:?}", other.lots));
}

/// The figure of the only photograph of a report.
fn figure(inspection: &Inspection) -> String {
    let report = report_html(inspection, &review(inspection));
    let from = report.find("<figure class=\"shot\">").expect("a figure");
    let to = from + report[from..].find("</figure>").expect("its end");
    report[from..to].to_owned()
}

#[test]
fn the_figure_holds_the_picture_its_digests_and_what_was_found_there() {
    let mut inspection = with_photos("", TABLE, &["A-1.png"]);
    inspection.acts.push(joined(2, "file=A-1.png;x=250;y=500"));
    let figure = figure(&inspection);
    let photo = &inspection.photos[0];
    let print = &photo.picture.as_ref().expect("a picture").print;
    assert!(figure.contains("src=\"data:image/png;base64,iVBORw0KGgo"), "{figure}");
    for text in
        [&photo.sha256, &print.sha256, "A-1.png, 400 × 300 pixels", "Pb: over limit", "Cd: below limit"]
    {
        assert!(figure.contains(text), "{text}: {figure}");
    }
    assert!(figure.contains("25.0 % from the left, 50.0 % from the top"), "{figure}");
    assert!(figure.contains("alt=\"Photograph A-1.png, showing A-1"), "{figure}");
    assert!(figure.contains("The measured spot is marked.\">"), "{figure}");
}

#[test]
fn ring_and_cross_stand_at_the_spot_in_black_on_white() {
    // The longer side is 10 000 units, and the frame has the picture's own proportions.
    for (size, x, y, view, ring) in [
        ((400, 300), 250, 500, "0 0 10000 7500", "M2180 3750a320"),
        ((300, 400), 1000, 0, "0 0 7500 10000", "M7180 0a320"),
        ((400, 400), 0, 1000, "0 0 10000 10000", "M-320 10000a320"),
    ] {
        let mut inspection = with_photos("", TABLE, &[]);
        inspection.add_photo(Photo::of_file("p.png", &png(size.0, size.1, 0)));
        inspection.acts.push(joined(2, &format!("file=p.png;x={x};y={y}")));
        let figure = figure(&inspection);
        assert!(figure.contains(&format!("viewBox=\"{view}\"")), "{figure}");
        for class in ["w", "b"] {
            assert!(figure.contains(&format!("<path class=\"{class}\" d=\"{ring}")), "{ring}: {figure}");
        }
        assert!(figure.contains(&format!("aspect-ratio:{}/{}", size.0, size.1)), "{figure}");
    }
    let mut inspection = with_photos("", TABLE, &["p.png"]);
    inspection.acts.push(joined(2, "file=p.png"));
    assert!(!figure(&inspection).contains("<path"), "no spot, no mark");
}

#[test]
fn one_photograph_of_two_readings_is_one_figure_with_two_numbered_marks() {
    let mut inspection = with_photos("", TABLE, &["p.png"]);
    inspection.acts = vec![joined(2, "file=p.png;x=200;y=500"), joined(3, "file=p.png;x=700;y=500")];
    let report = report_html(&inspection, &review(&inspection));
    assert_eq!(report.matches("<figure class=\"shot\">").count(), 1);
    let figure = figure(&inspection);
    assert!(
        figure.contains(">1</text>") && figure.contains(">2</text>") && figure.contains("2 measured spots")
    );
    assert!(figure.contains("<b>1. </b>") && figure.contains("<b>2. </b>"));
}

#[test]
fn what_was_named_and_cannot_be_shown_is_said_in_the_report_with_what_to_do() {
    let mut inspection = with_photos("", TABLE, &["a/p.png", "b/p.png"]);
    inspection.add_photo(Photo::of_file("cut.png", &png(4, 4, 0)[..30]));
    inspection.add_photo(Photo::of_file("text.png", b"Sample,Pb\n"));
    inspection.acts = vec![
        joined(2, "file=gone.png"),
        joined(2, "file=p.png"),
        joined(3, "file=cut.png"),
        joined(3, "file=text.png"),
        joined(3, &format!("file=a/p.png;sha256={}", "0".repeat(64))),
    ];
    let findings = review(&inspection);
    let report = report_html(&inspection, &findings);
    assert!(report.contains("Photographs named, not at hand") && !report.contains("<figure class=\"shot\">"));
    let states: Vec<PhotoState> =
        photos::joins(&inspection, &findings).iter().map(|join| join.state).collect();
    assert_eq!(
        states,
        [
            PhotoState::NotAtHand,
            PhotoState::SeveralFiles,
            PhotoState::DamagedPhoto,
            PhotoState::NoPhoto,
            PhotoState::OtherFile
        ]
    );
    for state in states {
        let (said, todo) =
            with_words(|words| (photos::state(words, "FILE", state), photos::remedy(words, state)));
        let (before, _) = said.split_once("FILE").expect("the file is named");
        assert!(
            report.contains(before.trim()) && report.contains(&todo.replace('"', "&quot;")),
            "{said} {todo}"
        );
    }
}

#[test]
fn a_hostile_name_stays_text() {
    let name = "\"><script>alert(1)</script>.png";
    let mut inspection = with_photos("", TABLE, &[name]);
    inspection.acts.push(joined(2, &format!("file={name};x=1;y=1")));
    inspection.acts.push(joined(3, "file=gone\" onerror=\"alert(1)<b>.png"));
    let report = report_html(&inspection, &review(&inspection));
    let (shown, carried) = report.split_once(evidence::OPENS).expect("what the report carries");
    assert!(!shown.contains("<script") && !shown.contains("onerror=\""), "{shown}");
    // Nothing in what is carried ends the element it stands in.
    let (carried, _) = carried.split_once(evidence::CLOSES).expect("its end");
    assert!(carried.contains("onerror=") && !carried.contains('<'));
    assert!(figure(&inspection).contains("alt=\"Photograph &quot;&gt;&lt;script&gt;"));
}

#[test]
fn a_copy_made_elsewhere_keeps_the_digest_and_size_of_the_original() {
    let mut inspection = with_photos("", TABLE, &[]);
    let sha256 = "ab".repeat(32);
    let size = Size { width: 4000, height: 3000 };
    inspection.add_photo(Photo::of_copy("A-1.jpg", &sha256, MediaType::Jpeg, size, &png(1024, 768, 0)));
    inspection.acts.push(joined(2, &format!("file=A-1.jpg;sha256={sha256};x=1;y=1")));
    let figure = figure(&inspection);
    assert!(
        figure.contains("4000 × 3000")
            && figure.contains(&sha256)
            && figure.contains("aspect-ratio:1024/768")
    );
}

#[test]
fn settings_join_photographs_to_readings_and_materials_and_come_back_as_they_were() {
    let text = "schema = \"plumbline.settings/1\"\n\
        [[photo]]\nsource = \"results.csv\"\nline = 2\nfile = \"A-1.png\"\nx = 450\ny = 520\n\
        [[photo]]\nsupplier = \"Alder\"\nlot = \"L-1\"\npart = \"P-1\"\nmaterial = \"core\"\nfile = \"core.png\"\n";
    let acts = parse_settings(text, "s").expect("settings");
    assert_eq!(acts[0].target, Target::Reading("results.csv".into(), 2));
    assert_eq!(acts[0].value, "file=A-1.png;x=450;y=520");
    assert_eq!(acts[1].target.to_text(), "lot_material:Alder|L-1|P-1|core");
    let again = parse_settings(&settings_text(&acts), "s").expect("what was written can be read");
    assert_eq!(again, acts);
    for bad in [
        "[[photo]]\nsource = \"results.csv\"\nline = 2\n",
        "[[photo]]\nfile = \"a.png\"\n",
        "[[photo]]\nline = 2\nfile = \"a.png\"\n",
        "[[photo]]\nsource = \"results.csv\"\nline = 2\nlot = \"L-1\"\nfile = \"a.png\"\n",
        "[[photo]]\nsource = \"results.csv\"\nline = 2\nfile = \"a.png\"\nx = 3\n",
        "[[photo]]\nsource = \"r\"\nline = 2\nfile = \"a\"\n[[photo]]\nsource = \"r\"\nline = 2\nfile = \"a\"\nx = 1\ny = 1\n",
    ] {
        assert!(parse_settings(&format!("schema = \"plumbline.settings/1\"\n{bad}"), "s").is_err(), "{bad}");
    }
}

#[test]
fn a_report_carries_the_photographs_that_acts_may_mean_and_proves_itself_with_them() {
    let mut inspection = with_photos("", TABLE, &["A-1.png", "stick/A-1.png", "A-2.png", "nobody.png"]);
    inspection.add_photo(Photo::refused("A-12.png", PhotoState::PhotoTooLarge));
    // Two files may be the first; the second is the one of that name; the third could not be read; the last is not there.
    inspection.acts = vec![
        joined(2, "file=A-1.png;x=450;y=520"),
        joined(3, "file=A-2.png"),
        joined(4, "file=A-12.png"),
        joined(4, "file=lost.png"),
    ];
    let named: Vec<&str> = inspection.named_photos().iter().map(|photo| photo.name.as_str()).collect();
    assert_eq!(named, ["A-1.png", "A-12.png", "A-2.png", "stick/A-1.png"]);
    let report = report_of(&inspection, Length::Full);
    let told = |report: &[u8]| {
        let proof = prove(report, &[], None, &english);
        (proof.verdict, with_words(|words| said::places(words, &proof)).join("\n"))
    };
    assert_eq!(told(&report), (Verdict::Agrees, String::new()));
    // A pixel of the printed copy, here and in what the report carries.
    let text = String::from_utf8(report).expect("UTF-8");
    assert!(!text.contains("nobody.png"));
    let record = text.find("\nphoto\t3\tA-2.png\t").expect("the record of the photograph");
    let packed = record + text[record..].find("\n ").expect("its bytes") + 20;
    let mut changed = text.clone().into_bytes();
    changed[packed] = if changed[packed] == b'A' { b'B' } else { b'A' };
    let (verdict, places) = told(&changed);
    assert_eq!(verdict, Verdict::Differs);
    assert!(places.contains("A-2.png"), "{places}");
    let image = text.find("<img src=\"data:image/png;base64,").expect("the picture") + 60;
    let mut changed = text.into_bytes();
    changed[image] = if changed[image] == b'A' { b'B' } else { b'A' };
    assert_eq!(told(&changed).0, Verdict::Differs);
}

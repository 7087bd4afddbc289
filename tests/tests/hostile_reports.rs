//! Reports made to break the one who proves them: always a plain answer, never a panic, never more memory than is stated.

use std::fmt::Write as _;
use std::io::Write as _;

use flate2::Compression;
use flate2::write::DeflateEncoder;
use plumbline_core::reading::sha256_hexadecimal;
use plumbline_core::report::Length;
use plumbline_core::report::evidence::{CLOSES, MOST_CANONICAL, OPENS, SCHEMA, check_of};
use plumbline_core::report::html::BEGINS;
use plumbline_proof::{MOST_INFLATED, PartKind, PlaceKind, Proof, Verdict, prove};
use plumbline_tests::chance::Chance;
use plumbline_tests::delivery::{delivery, english, report_of};
use plumbline_tests::program::inspect;

fn alone(report: &[u8]) -> Proof {
    prove(report, &[], None, &english)
}

/// Records with right checks and a right last line, whatever they say.
fn report(records: &[(&str, String)]) -> Vec<u8> {
    let mut lines = format!("{SCHEMA}\n");
    for (fields, data) in records {
        let _ = writeln!(lines, "{fields}\t{}", check_of(fields, data));
        for piece in data.as_bytes().chunks(120) {
            let _ = writeln!(lines, " {}", String::from_utf8_lossy(piece));
        }
    }
    let end = format!("end\t{}\t{}", records.len() + 1, sha256_hexadecimal(lines.as_bytes()));
    let _ = writeln!(lines, "{end}\t{}", check_of(&end, ""));
    format!("{BEGINS}<html><body><main></main>\n{OPENS}{lines}{CLOSES}</body></html>\n").into_bytes()
}

fn deflated(bytes: &[u8]) -> Vec<u8> {
    let mut packer = DeflateEncoder::new(Vec::new(), Compression::new(9));
    packer.write_all(bytes).expect("a Vec takes all bytes");
    packer.finish().expect("a Vec takes all bytes")
}

/// Base64 as RFC 4648 has it, written here so that the test trusts no crate of the program.
fn base64(bytes: &[u8]) -> String {
    const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::new();
    for group in bytes.chunks(3) {
        let number = (0..3).fold(0_u32, |sum, at| sum << 8 | u32::from(group.get(at).copied().unwrap_or(0)));
        for at in 0..4 {
            let letter = LETTERS[(number >> (18 - 6 * at)) as usize & 63];
            text.push(if at <= group.len() { char::from(letter) } else { '=' });
        }
    }
    text
}

const DIGEST: &str = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

fn head() -> Vec<(&'static str, String)> {
    vec![("program\tplumbline\t0.1.0", String::new())]
}

fn of_file(fields: &str, data: String) -> Vec<u8> {
    let about = format!("report\ten\tfull\t{DIGEST}\t{DIGEST}");
    let mut records = head();
    records.push((&about, String::new()));
    records.push((fields, data));
    records.push(("canonical\t0\ttoo_large", String::new()));
    report(&records)
}

#[test]
fn a_report_that_was_cut_off_anywhere_is_never_taken_for_whole() {
    let whole = delivery("09-thin-sample-plan").report(Length::Full);
    let mut chance = Chance::new(1);
    for _ in 0..400 {
        let cut = &whole[..chance.below(whole.len())];
        let proof = alone(cut);
        assert!(!proof.nothing_differs(), "{} of {}", cut.len(), whole.len());
        assert!(
            matches!(proof.verdict, Verdict::Differs | Verdict::EvidenceMissing | Verdict::NotAReport),
            "{} bytes: {}",
            cut.len(),
            proof.verdict.code()
        );
    }
}

#[test]
fn a_file_that_unpacks_to_more_than_it_says_is_not_unpacked() {
    // A thousand zeros a byte: a gigabyte would take minutes and all memory if it were unpacked.
    let bomb = base64(&deflated(&vec![0; 64 << 20]));
    let small = of_file(&format!("file\t1\ta.csv\tnamed\t10\t{DIGEST}\tcarried"), bomb.clone());
    let beyond = of_file(&format!("file\t1\ta.csv\tnamed\t{}\t{DIGEST}\tcarried", u64::MAX), bomb.clone());
    let honest = of_file(&format!("file\t1\ta.csv\tnamed\t{}\t{DIGEST}\tcarried", 64 << 20), bomb);
    for report in [small, beyond, honest] {
        let proof = alone(&report);
        assert_eq!(proof.verdict, Verdict::Differs);
        let place = &proof.places.list[0];
        assert_eq!(place.kind, PlaceKind::NotUsable);
        let part = place.part.as_ref().expect("a part");
        assert_eq!((part.kind, part.name.as_str()), (PartKind::File, "a.csv"));
    }
}

#[test]
fn many_parts_together_unpack_to_no_more_than_is_stated() {
    let size = MOST_CANONICAL;
    let bomb = base64(&deflated(&vec![b'#'; size]));
    let digest = sha256_hexadecimal(&vec![b'#'; size]);
    let about = format!("report\ten\tfull\t{DIGEST}\t{DIGEST}");
    let fields: Vec<String> =
        (1..=8).map(|at| format!("book\t{at}\tb{at}\tloaded\t{size}\t{digest}")).collect();
    let mut records = head();
    records.push((&about, String::new()));
    records.extend(fields.iter().map(|fields| (fields.as_str(), bomb.clone())));
    records.push(("canonical\t0\ttoo_large", String::new()));
    let proof = alone(&report(&records));
    assert_eq!(proof.verdict, Verdict::Differs);
    let refused = proof.places.list.iter().filter(|place| place.kind == PlaceKind::NotUsable).count();
    assert_eq!(refused, 8 - MOST_INFLATED / size);
}

#[test]
fn long_data_and_bytes_that_are_no_text_are_named() {
    let long = of_file(&format!("file\t1\ta.csv\tnamed\t10\t{DIGEST}\tcarried"), "A".repeat(20 << 20));
    assert_eq!(alone(&long).places.list[0].kind, PlaceKind::NotUsable);
    let whole = delivery("09-thin-sample-plan").report(Length::OnePage);
    let mut chance = Chance::new(2);
    for _ in 0..200 {
        let at = chance.below(whole.len());
        let bytes: Vec<u8> = (0..=chance.below(40)).map(|_| 0x80 + chance.below(128) as u8).collect();
        let altered = [&whole[..at], &bytes, &whole[at..]].concat();
        let proof = alone(&altered);
        assert!(!proof.nothing_differs() && (!proof.places.is_empty() || !proof.could_be_proved()), "{at}");
    }
}

#[test]
fn records_that_are_sound_and_senseless_are_refused() {
    let about = format!("report\ten\tfull\t{DIGEST}\t{DIGEST}");
    let senseless: [&str; 16] = [
        "act\t1\tno_such_kind\t\tx\t\t\t",
        "act\t2\tclass\t\tpolymer\t\t\t",
        "act\t1\tclass\tnowhere:x\tpolymer\t\t\t",
        "act\t1\tclass\t\tpolymer",
        "act\t1\tclass\t\tpolymer\t\t\t\tmore",
        "book\t1\tx\tloaded\t0\te3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "history\t\\-\t0",
        "file\t1\ta.csv\tnamed\t-1\tx\tcarried",
        "file\t1\ta.csv\tnowhere\t0\tx\ttoo_large",
        "source\t1\ta.csv\t\t0\titself\tskipped\t",
        "source\t0\ta.csv\t\t0\titself\tskipped\t",
        "photo\t1\ta.png\t\tat_hand\timage/png\t5\tx",
        "nothing\t1",
        "program\tplumbline\t0.1.0",
        "report\ten\tno_such_length\te3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "end\t3\te3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    ];
    for fields in senseless {
        let mut records = head();
        records.push((&about, String::new()));
        records.push((fields, String::new()));
        records.push(("canonical\t0\ttoo_large", String::new()));
        let proof = alone(&report(&records));
        assert_eq!(proof.verdict, Verdict::Differs, "{fields:?}");
        assert!(!proof.places.is_empty(), "{fields:?}");
    }
}

#[test]
fn a_report_without_files_is_proved_with_them_only_if_all_are_given() {
    let table = b"Sample,Pb mg/kg\nS,5\n";
    let sha256 = sha256_hexadecimal(table);
    let fields = format!("file\t1\ta.csv\tnamed\t{}\t{sha256}\ttoo_large", table.len());
    let report = of_file(&fields, String::new());
    assert_eq!(alone(&report).verdict, Verdict::FilesNeeded);
    let other = [("a.csv".to_owned(), b"Sample,Pb mg/kg\nS,6\n".to_vec())];
    assert_eq!(prove(&report, &other, None, &english).verdict, Verdict::FilesNeeded);
    let given = [("elsewhere/b.csv".to_owned(), table.to_vec())];
    // The data are there; the report is none that they give.
    assert_eq!(prove(&report, &given, None, &english).verdict, Verdict::Differs);
}

#[test]
fn a_report_inside_a_report_is_text() {
    let inner = String::from_utf8(delivery("09-thin-sample-plan").report(Length::OnePage)).expect("UTF-8");
    let name = format!("{OPENS}{SCHEMA}\nprogram\tx\t{CLOSES}<!--");
    let table = format!(
        "Sample,Remark,Pb mg/kg\n\"{}\",\"{}\",5\n",
        name.replace('"', "\"\""),
        name.replace('"', "\"\"")
    );
    let files: [(&str, &[u8]); 2] = [("report.html", inner.as_bytes()), ("<script>.csv", table.as_bytes())];
    let inspection = inspect("", &files);
    let report = report_of(&inspection, Length::Full);
    assert_eq!(memchr::memmem::find_iter(&report, OPENS.as_bytes()).count(), 1);
    assert_eq!(memchr::memmem::find_iter(&report, CLOSES.as_bytes()).count(), 1);
    let proof = alone(&report);
    assert_eq!(proof.verdict, Verdict::Agrees, "{:?}", proof.places.list);
    // A report among the files is no table.
    let own = inspection.sources.iter().find(|source| source.name == "report.html").expect("it is listed");
    assert_eq!(own.problem.map(plumbline_core::reading::NoticeCode::code), Some("skipped"));
    // Two of them behind each other are not one.
    assert!(!alone(&[report.as_slice(), &report].concat()).nothing_differs());
}

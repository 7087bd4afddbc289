//! What a disposition must not overlook.

use plumbline_core::inspection::review;
use plumbline_core::judging::SourceReview;
use plumbline_core::lot::Disposition;
use plumbline_core::outcome::SigmaFrom;
use plumbline_tests::program::inspect;

const ADVISORY: &str = "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\nthickness_mm = 1000\n";

fn lot(rows: &str) -> (Disposition, Vec<&'static str>) {
    let text = format!(
        "Sample,Part,Material,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),\
         Br mg/kg,Br u (1s)\n{rows}"
    );
    let inspection = inspect(ADVISORY, &[("a.csv", text.as_bytes())]);
    let findings = review(&inspection);
    assert_eq!(findings.lots.len(), 1);
    let lot = &findings.lots[0];
    (lot.disposition, lot.reasons.iter().map(|reason| reason.code.code()).collect())
}

const CLEAN: &str = "< 20,,5,1,5,1,5,1,5,1";

#[test]
fn readings_that_agree_on_their_class_can_be_accepted() {
    let rows = format!("S1,P-1,pin,metal,{CLEAN}\nS2,P-1,pin,metal,{CLEAN}\n");
    assert_eq!(lot(&rows).0, Disposition::Accept);
}

/// Design 4.10: unknown or contested, evaluated under every class, else hold.
#[test]
fn a_contested_class_holds_even_where_every_reading_is_below() {
    let rows = format!("S1,P-1,pin,metal,{CLEAN}\nS2,P-1,pin,composite,{CLEAN}\n");
    let (disposition, reasons) = lot(&rows);
    assert_eq!(disposition, Disposition::Hold, "{reasons:?}");
    assert!(reasons.contains(&"class_unknown"), "{reasons:?}");
}

/// Pb 1400 ± 20 is OL in a polymer (1400 - 60 >= 1300) and X in a composite (1400 - 60 < 1500). Design 4.10: *not
/// accept* only if OL under all classes.
#[test]
fn over_limit_under_one_of_two_contested_classes_only_holds() {
    let rows = format!("S1,P-1,pin,polymer,< 20,,1400,20,5,1,5,1,5,1\nS2,P-1,pin,composite,{CLEAN}\n");
    let (disposition, reasons) = lot(&rows);
    assert_eq!(disposition, Disposition::Hold, "{reasons:?}");
}

/// Design 4.10 and 4.6: what metal alone excuses (Br) is not excused where the class is contested.
#[test]
fn bromine_is_not_excused_where_only_some_readings_say_metal() {
    let rows = "S1,P-1,pin,metal,< 20,,5,1,5,1,5,1,9000,20\nS2,P-1,pin,polymer,< 20,,5,1,5,1,5,1,5,1\n";
    let (disposition, reasons) = lot(rows);
    assert_eq!(disposition, Disposition::Hold, "{reasons:?}");
}

/// Design 4.4: which s was used stands on every outcome, halogens included.
#[test]
fn a_halogen_says_which_sigma_it_used() {
    let inspection = inspect("", &[("a.csv", b"Sample,Class,Cl mg/kg,Cl error\nS1,polymer,10,1\n")]);
    let settings = inspection.settings();
    let assessed = SourceReview::new(&inspection.sources[0], &inspection.books, &settings).assess(0);
    assert_eq!(assessed.halogens[0].used.from, SigmaFrom::PrintedMultipleUnknown);
    assert!(assessed.multiple_unknown, "and the lot is told so");
}

#[test]
fn a_multiple_nobody_stated_is_said_of_the_lot() {
    let text = b"Sample,Class,Pb mg/kg,Pb error\nS1,metal,640,20\n";
    let inspection = inspect("", &[("a.csv", text)]);
    let findings = review(&inspection);
    assert!(findings.lots[0].reasons.iter().any(|reason| reason.code.code() == "multiple_not_stated"));
}

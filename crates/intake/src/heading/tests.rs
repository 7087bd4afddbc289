use plumbline_core::column::{ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::substance::Element;

use super::named::Of;
use super::said::{ErrorWords, Said, say};
use super::*;

fn of(symbol: &str) -> Of {
    Of { element: Element::from_symbol(symbol).unwrap(), oxide: None }
}

fn owned(headings: &[&str]) -> Vec<String> {
    headings.iter().map(|heading| (*heading).to_owned()).collect()
}

/// The roles of a header in words, one after the other.
fn words(headings: &[&str]) -> Vec<String> {
    meanings(&owned(headings)).iter().map(|column| column.role.to_words()).collect()
}

fn evidence(headings: &[&str]) -> Vec<Evidence> {
    meanings(&owned(headings)).iter().map(|column| column.evidence).collect()
}

fn role(heading: &str) -> Said {
    say(heading)
}

fn multiple(text: &str) -> Option<SigmaMultiple> {
    SigmaMultiple::from_text(text)
}

#[test]
fn an_element_with_its_unit_is_a_value() {
    let pb = of("Pb");
    for (heading, unit) in [
        ("Pb", None),
        ("Pb (ppm)", Some(Unit::MgPerKg)),
        ("Pb mg/kg", Some(Unit::MgPerKg)),
        ("Pb [%]", Some(Unit::Percent)),
        ("Pb_ppm", Some(Unit::MgPerKg)),
        ("Pb wt %", Some(Unit::Percent)),
        ("Pb-ppm", Some(Unit::MgPerKg)),
        ("Pb%", Some(Unit::Percent)),
        ("Lead (mg/kg)", Some(Unit::MgPerKg)),
        ("Pb Concentration", None),
        (" Pb  µg/g ", Some(Unit::MgPerKg)),
    ] {
        assert_eq!(role(heading), Said::Value(pb, unit), "{heading}");
    }
    assert_eq!(role("U ppm"), Said::Value(of("U"), Some(Unit::MgPerKg)));
}

#[test]
fn an_element_with_an_error_word_is_an_uncertainty() {
    let pb = Some(of("Pb"));
    for (heading, stated, unit) in [
        ("Pb Error", None, None),
        ("Pb 2s (ppm)", multiple("2"), Some(Unit::MgPerKg)),
        ("Pb u (1s)", multiple("1"), None),
        ("Pb +/-", None, None),
        ("Pb ± 3σ", multiple("3"), None),
        ("Pb U k=2", multiple("2"), None),
        ("U Pb", None, None),
        ("u(Pb)", None, None),
        ("Pb SD", multiple("1"), None),
        ("Pb_err_2s", multiple("2"), None),
    ] {
        assert_eq!(
            role(heading),
            Said::Error(pb, ErrorWords { multiple: stated, unit, relative: false }),
            "{heading}"
        );
    }
    assert_eq!(role("+/-"), Said::Error(None, ErrorWords::default()));
    assert_eq!(role("Pb LOD"), Said::Limit(pb, None));
}

#[test]
fn a_heading_with_words_not_understood_is_no_mass_fraction() {
    for heading in ["Pb counts", "Pb (cps) net", "Pb Ka area", "Cr(VI) ppm", "Pb pass/fail", "Cd z-score"] {
        assert_eq!(role(heading), Said::NotUnderstood, "{heading}");
    }
    for heading in ["CO", "PO", "PM2.5", "Sulfate", "hexavalent chromium"] {
        assert_eq!(role(heading), Said::Unknown, "{heading}");
    }
}

#[test]
fn a_unit_that_is_not_known_keeps_the_column_and_loses_to_a_known_one() {
    let headings: Vec<String> = ["Pb (cps)", "Cr(VI)", "Cr (ppm)"].iter().map(|h| (*h).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(columns[0].role, ColumnRole::Value { element: Element::PB, oxide: None, unit: None });
    assert_eq!(columns[0].evidence, Evidence::UnitNotUnderstood);
    assert_eq!(columns[1].role, ColumnRole::Unused);
    assert_eq!(
        columns[2].role,
        ColumnRole::Value { element: Element::CR, oxide: None, unit: Some(Unit::MgPerKg) }
    );
}

#[test]
fn identity_words_are_known_by_rank() {
    let headings: Vec<String> =
        ["Reading No", "SAMPLE", "Lot", "Units", "Pb"].iter().map(|heading| (*heading).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(columns[0].role, ColumnRole::Unused);
    assert_eq!(columns[0].evidence, Evidence::AlreadyTaken);
    assert_eq!(columns[1].role, ColumnRole::Identity(Identity::Id));
    assert_eq!(columns[2].role, ColumnRole::Identity(Identity::Lot));
    assert_eq!(columns[3].role, ColumnRole::UnitOfMeasure);
    assert_eq!(element_columns(&columns), 1);
}

#[test]
fn a_bare_error_heading_belongs_to_the_element_before_it() {
    let headings: Vec<String> = ["Pb (ppm)", "+/-", "Cd %", "err"].iter().map(|h| (*h).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(
        columns[1].role,
        ColumnRole::Error {
            element: Element::PB,
            oxide: None,
            error: ErrorKind { unit: Some(Unit::MgPerKg), clear: true, relative: false, multiple: None }
        }
    );
    assert_eq!(
        columns[3].role,
        ColumnRole::Error {
            element: Element::CD,
            oxide: None,
            error: ErrorKind { unit: Some(Unit::Percent), clear: true, relative: false, multiple: None }
        }
    );
}

#[test]
fn a_bare_error_heading_that_stands_elsewhere_is_paired_with_nothing() {
    for headings in [
        vec!["Pb mg/kg", "Flags", "±"],
        vec!["Pb", "Cd", "±", "±"],
        vec!["±", "Cd mg/kg", "±", "Pb mg/kg"],
        vec!["Br mg/kg", "Operator", "Error"],
    ] {
        let headings: Vec<String> = headings.into_iter().map(str::to_owned).collect();
        let paired = meanings(&headings).iter().any(|column| matches!(column.role, ColumnRole::Error { .. }));
        assert!(!paired, "{headings:?}");
    }
}

#[test]
fn a_legal_limit_is_no_detection_limit() {
    assert_eq!(role("Pb limit"), Said::NotUnderstood);
    assert_eq!(role("Limit"), Said::Unknown);
    assert_eq!(role("Pb detection limit"), Said::Limit(Some(of("Pb")), None));
    assert_eq!(role("Lead (Pb) mg/kg"), Said::Value(of("Pb"), Some(Unit::MgPerKg)));
}

#[test]
fn a_percent_beside_mg_per_kg_may_be_relative_and_is_not_guessed() {
    let headings: Vec<String> = ["Pb ppm", "Pb error %"].iter().map(|h| (*h).to_owned()).collect();
    assert_eq!(
        meanings(&headings)[1].role,
        ColumnRole::Error {
            element: Element::PB,
            oxide: None,
            error: ErrorKind { unit: None, clear: false, relative: false, multiple: None }
        }
    );
}

#[test]
fn a_unit_row_gives_units_to_columns_that_state_none() {
    let headings: Vec<String> = ["Sample", "Pb", "Pb err", "Cd"].iter().map(|h| (*h).to_owned()).collect();
    let mut columns = meanings(&headings);
    let units = unit_row(&columns, &["", "ppm", "", "%"]).unwrap();
    apply_unit_row(&mut columns, &units);
    assert_eq!(
        columns[1].role,
        ColumnRole::Value { element: Element::PB, oxide: None, unit: Some(Unit::MgPerKg) }
    );
    assert!(columns[2].role.unit() == Some(Unit::MgPerKg) && columns[2].role.error().is_some());
    assert!(unit_row(&columns, &["", "12", "", "%"]).is_none());
}

#[test]
fn units_of_a_heading_are_known_in_many_writings() {
    for heading in [
        "Pb / ppm",
        "Pb/ppm",
        "Pb in mg/kg",
        "Pb, mg/kg",
        "Pb（ppm）",
        "Pb_mg_kg",
        "Pb.ppm",
        "Pb..mg.kg.",
        "PbPPM",
        "Pb (ppm (w/w))",
        "Pb mg kg-1",
        "Pb (mg·kg⁻¹)",
        "Pb [µg/g]",
        "Pb [μg g-1]",
        "Pb (mcg/g)",
        "w(Pb) in mg/kg",
        "w(Pb)/(mg/kg)",
        "Blei [mg/kg]",
        "Bleigehalt (mg/kg)",
        "Pb-Gehalt [mg/kg]",
        "Gehalt an Blei in mg/kg",
        "Teneur en plomb (mg/kg)",
        "Contenido de plomo (ppm)",
        "铅含量(mg/kg)",
        "Pb含量（mg/kg）",
        "铅(ppm)",
        "鉛濃度 (ppm)",
        "鉛含有量[mg/kg]",
        "납 함량 (ppm)",
        "납(mg/kg)",
        "总铅 mg/kg",
        "Pb Lα (ppm)",
        "Pb La ppm",
        "PbLa1 (ppm)",
        "Pb-Lα [ppm]",
        "Total Pb (mg/kg)",
        "Lead / Pb (ppm)",
        "铅/Pb ppm",
        "208Pb (mg/kg)",
        "Pb mass fraction (mg/kg)",
        "Pb ppm (mg/kg)",
        "Pb\nmg/kg",
    ] {
        assert_eq!(role(heading), Said::Value(of("Pb"), Some(Unit::MgPerKg)), "{heading}");
    }
    for heading in [
        "Pb [Gew.-%]",
        "Pb (wt.-%)",
        "Pb (mass%)",
        "Pb % (m/m)",
        "Pb Ma.-%",
        "Pb (Massen-%)",
        "Plomb (% en masse)",
        "Plomo (% peso)",
        "铅(质量%)",
        "铅 重量%",
        "鉛 (質量%)",
        "Pb％",
        "Pb_pct",
    ] {
        assert_eq!(role(heading), Said::Value(of("Pb"), Some(Unit::Percent)), "{heading}");
    }
    assert_eq!(role("Pb (‰)"), Said::Value(of("Pb"), Some(Unit::GramPerKg)));
    assert_eq!(role("Pb ng/g"), Said::Value(of("Pb"), Some(Unit::MicrogramPerKg)));
    for heading in ["Cd K", "Cr Kα", "CrKa", "Pb L", "Pb-Lα"] {
        assert!(matches!(role(heading), Said::Value(_, None)), "{heading}");
    }
}

#[test]
fn what_is_no_mass_fraction_of_the_element_is_not_understood() {
    for heading in [
        "Pb Ka area",
        "Pb La cps",
        "Pb intensity",
        "Pb net",
        "Pb peak area",
        "Pb 95%",
        "Pb (95 %)",
        "Cr(VI)",
        "Cr(VI) ppm",
        "Cr6+",
        "Chrom VI",
        "Chrom (VI) mg/kg",
        "Pb/Cd",
        "Pb / Cd",
        "208Pb/206Pb",
        "206Pb / 204Pb",
        "208Pb %",
        "Pb % ppm",
        "Pb rel",
        "Pb RSD (ppm)",
        "Pb min",
        "Pb 1",
        "Pb content relative %",
        "Pb z-score",
        "Pb (at.%)",
        "Pb cps",
        "Pb as PbO",
    ] {
        assert!(
            matches!(role(heading), Said::NotUnderstood | Said::Unknown | Said::ValueInUnknownUnit(_)),
            "{heading} {:?}",
            role(heading)
        );
        assert_eq!(value_element(heading), None, "{heading}");
    }
    for heading in ["六价铬", "六価クロム", "溴化物", "氯离子", "Cr(VI)", "Pb/Cd", "208Pb/206Pb", "Cr6+"]
    {
        assert!(matches!(role(heading), Said::NotUnderstood | Said::Unknown), "{heading}");
    }
}

#[test]
fn uncertainties_are_known_in_many_words_with_their_multiple() {
    let stated = |text: &str| if text.is_empty() { None } else { multiple(text) };
    for (heading, is, relative) in [
        ("Pb err.", "", false),
        ("Pb Fehler", "", false),
        ("Pb Messunsicherheit", "", false),
        ("Unsicherheit Pb", "", false),
        ("Pb incertitude", "", false),
        ("Incertidumbre de Pb", "", false),
        ("铅不确定度", "", false),
        ("Pb 误差", "", false),
        ("鉛 誤差", "", false),
        ("鉛の不確かさ", "", false),
        ("납 오차", "", false),
        ("Pb σ", "", false),
        ("Pb unc.", "", false),
        ("Pb std dev", "1", false),
        ("Pb std. dev.", "1", false),
        ("Pb Std.-Abw.", "1", false),
        ("Pb écart-type", "1", false),
        ("Pb S.D.", "1", false),
        ("s(Pb)", "1", false),
        ("Pb 1σ", "1", false),
        ("Pb 1 sigma", "1", false),
        ("Pb 2-sigma", "2", false),
        ("Pb_unc_2sigma", "2", false),
        ("Pb ±2σ", "2", false),
        ("Pb ± (2s)", "2", false),
        ("U(Pb) (k=2)", "2", false),
        ("Pb U (k = 2)", "2", false),
        ("Pb U k=1,96", "1.96", false),
        ("Pb 95% CI", "1.96", false),
        ("Pb CI95", "1.96", false),
        ("Pb (conf. 95 %)", "1.96", false),
        ("Pb ±95%", "1.96", false),
        ("Pb error (95%)", "1.96", false),
        ("Pb ± (99 %)", "2.58", false),
        ("Pb Konfidenzintervall 68%", "1", false),
        ("Pb expanded uncertainty k=2", "2", false),
        ("Pb %RSD", "1", true),
        ("Pb RSD", "1", true),
        ("Pb RSD (%)", "1", true),
        ("Pb CV", "1", true),
        ("Pb rel. err", "", true),
        ("Pb rel. %", "", true),
        ("Pb error (rel %)", "", true),
        ("Pb rel. error (%) 2s", "2", true),
        ("Pb relative Unsicherheit %", "", true),
        ("铅相对误差(%)", "", true),
        ("铅相对标准偏差", "1", true),
    ] {
        let words = ErrorWords { multiple: stated(is), unit: None, relative };
        assert_eq!(role(heading), Said::Error(Some(of("Pb")), words), "{heading}");
    }
    for heading in [
        "Pb LOD",
        "Pb detection limit",
        "Pb Nachweisgrenze",
        "LD Pb",
        "铅检出限",
        "鉛 検出限界",
        "Pb limite de détection",
    ] {
        assert_eq!(role(heading), Said::Limit(Some(of("Pb")), None), "{heading}");
    }
    for heading in ["s", "CI", "95%", "rel", "s."] {
        assert!(!matches!(role(heading), Said::Error(..)), "{heading}");
    }
}

#[test]
fn a_relative_uncertainty_needs_no_unit_and_keeps_none_from_a_unit_row() {
    let headings = owned(&["Sample", "Pb", "Pb %RSD", "Cd mg/kg", "Cd error (rel %)"]);
    let mut columns = meanings(&headings);
    let units = unit_row(&columns, &["", "ppm", "%", "", "%"]).unwrap();
    apply_unit_row(&mut columns, &units);
    let words: Vec<String> = columns.iter().map(|column| column.role.to_words()).collect();
    assert_eq!(
        words,
        ["id", "value Pb mg/kg", "uncertainty Pb relative k=1", "value Cd mg/kg", "uncertainty Cd relative"]
    );
}

#[test]
fn oxides_have_columns_of_their_own_and_never_stand_beside_the_element_as_rivals() {
    assert_eq!(
        words(&["Sample", "Cr2O3 (wt%)", "Cr2O3 Error", "PbO (ppm)", "PbO LOD"]),
        ["id", "value Cr2O3 %", "uncertainty Cr2O3 %", "value PbO mg/kg", "detection_limit PbO mg/kg"]
    );
    assert_eq!(evidence(&["Cr2O3 (wt%)", "Cr2O3 Error"]), [Evidence::OxideHeading, Evidence::OxideHeading]);
    let both = ["Cr2O3", "Cr2O3 Error", "Cr", "Cr Error"];
    assert_eq!(words(&both), ["value Cr2O3", "uncertainty Cr2O3", "value Cr", "uncertainty Cr"]);
    assert_eq!(evidence(&both)[0], Evidence::OxideBesideElement);
    assert_eq!(evidence(&both)[2], Evidence::ElementHeading);
    // Two oxides of one element are parts of it: they contest each other, and neither stands in for the element.
    assert_eq!(words(&["FeO", "Fe2O3"]), ["value FeO", "unused"]);
    assert_eq!(evidence(&["FeO", "Fe2O3"])[1], Evidence::AlreadyTaken);
    assert_eq!(words(&["FeO", "Fe2O3", "Fe"]), ["unused", "unused", "value Fe"]);
    assert_eq!(
        words(&["FeOT", "Fe2O3* (%)", "CR2O3(WT%)", "SIO2(WT%)"])[2..],
        ["value Cr2O3 %", "value SiO2 %"]
    );
    assert_eq!(words(&["CO", "PO", "SO", "Pb"]), ["unused", "unused", "unused", "value Pb"]);
    assert_eq!(value_element("Cr2O3 (%)"), Some(Element::CR));
}

#[test]
fn a_bare_n_numbers_the_rows_and_names_nitrogen_beside_a_unit() {
    assert_eq!(words(&["N.", "Pb [ppm]"]), ["id", "value Pb mg/kg"]);
    assert_eq!(words(&["Sample", "N", "S", "N %"]), ["id", "unused", "value S", "value N %"]);
}

#[test]
fn a_symbol_in_another_case_is_an_element_where_the_header_bears_it_out() {
    assert_eq!(
        words(&["CITATION", "SAMPLE NAME", "CR(PPM)", "NI(PPM)", "PB(PPM)", "CR2O3(WT%)"]),
        ["unused", "id", "value Cr mg/kg", "value Ni mg/kg", "value Pb mg/kg", "value Cr2O3 %"]
    );
    assert_eq!(evidence(&["CR(PPM)"]), [Evidence::ElementInAnotherCase]);
    assert_eq!(
        words(&["id", "cd_ppm", "cd_err", "pb"]),
        ["id", "value Cd mg/kg", "uncertainty Cd mg/kg", "unused"]
    );
    assert_eq!(
        words(&["sample_no", "cd", "pb", "hg", "cr", "as", "s"]),
        ["id", "value Cd", "value Pb", "value Hg", "value Cr", "value As", "value S"]
    );
    assert_eq!(
        words(&["ID", "PB", "PB ERROR", "CD", "CD ERROR", "HG"])[1..4],
        ["value Pb", "uncertainty Pb", "value Cd"]
    );
    // Too few, or beside chemistry's own case, or none that is screened for: words, and no elements.
    assert_eq!(words(&["id", "pb", "cd"]), ["id", "unused", "unused"]);
    assert_eq!(words(&["Pb", "Cd", "AL", "GA", "PB", "CR"])[2..], ["unused", "unused", "unused", "unused"]);
    assert_eq!(words(&["AL", "CA", "GA", "MN", "IN"]), vec!["unused"; 5]);
    for heading in [
        "no", "in", "as", "at", "i", "id", "CO", "co", "NO", "AT", "No.", "ID", "as %", "at %", "CO (ppm)",
        "no ppm", "i (ppm)",
    ] {
        let found = words(&["Pb", "Cd", heading]);
        assert!(
            !found[2].starts_with("value") || heading == "i" && found[2] == "value I",
            "{heading}: {}",
            found[2]
        );
    }
    // Chemistry's own case wins over another, wherever it stands.
    assert_eq!(words(&["PB (ppm)", "Pb (ppm)"]), ["unused", "value Pb mg/kg"]);
    assert_eq!(evidence(&["PB (ppm)", "Pb (ppm)"])[0], Evidence::AlreadyTaken);
}

#[test]
fn two_isotopes_of_one_element_contest_each_other() {
    assert_eq!(words(&["206Pb (ppm)", "208Pb (ppm)", "Cr52"]), ["value Pb mg/kg", "unused", "value Cr"]);
    assert_eq!(evidence(&["206Pb (ppm)", "208Pb (ppm)"])[1], Evidence::AlreadyTaken);
    assert_eq!(value_element("208Pb (ppm)"), Some(Element::PB));
}

#[test]
fn a_long_table_is_known_by_a_column_that_names_elements() {
    assert_eq!(
        words(&[
            "reading",
            "group",
            "duration_s",
            "unit",
            "sigma_of_error",
            "element",
            "value",
            "below_LOD",
            "error_or_LOD"
        ]),
        [
            "id",
            "unused",
            "seconds",
            "unit",
            "error_multiple",
            "element",
            "value",
            "below_mark",
            "uncertainty"
        ]
    );
    assert_eq!(
        words(&["Probe", "Element", "Gehalt [mg/kg]", "U (k=2)"]),
        ["id", "element", "value mg/kg", "uncertainty mg/kg k=2"]
    );
    assert_eq!(
        words(&["Échantillon", "Élément", "Teneur (mg/kg)", "Incertitude"]),
        ["id", "element", "value mg/kg", "uncertainty mg/kg"]
    );
    assert_eq!(
        words(&["muestra", "analito", "resultado", "unidades"]),
        ["id", "element", "value", "unit_of_measure"]
    );
    assert_eq!(
        words(&["样品编号", "元素", "含量", "单位", "检出限"]),
        ["id", "element", "value", "unit_of_measure", "detection_limit"]
    );
    assert_eq!(words(&["试样", "检测项目", "检测结果"]), ["id", "element", "value"]);
    assert_eq!(words(&["試料名", "元素名", "測定値", "単位"]), ["id", "element", "value", "unit_of_measure"]);
    assert_eq!(words(&["시료명", "원소", "농도 (ppm)"]), ["id", "element", "value mg/kg"]);
    assert_eq!(
        words(&["sample", "analyte", "ppm", "±"]),
        ["id", "element", "value mg/kg", "uncertainty mg/kg"]
    );
    assert_eq!(
        words(&["sample", "parameter", "mass fraction (mg/kg)", "LOD"]),
        ["id", "element", "value mg/kg", "detection_limit mg/kg"]
    );
    // A table with a column for an element is no long one, and words for elements need values beside them.
    assert_eq!(words(&["sample", "element", "Pb", "value"]), ["id", "unused", "value Pb", "unused"]);
    assert_eq!(words(&["sample", "element", "remark"]), ["id", "unused", "note"]);
}

#[test]
fn a_column_whose_cells_name_elements_makes_a_long_table_when_asked() {
    let headings = owned(&["var", "value", "units", "unc_2sigma", "constraint_var"]);
    assert_eq!(element_columns(&meanings(&headings)), 0);
    let columns = long_roles(&headings, 0);
    let words: Vec<String> = columns.iter().map(|column| column.role.to_words()).collect();
    assert_eq!(words, ["element", "value", "unit_of_measure", "uncertainty k=2", "unused"]);
    assert_eq!(columns[0].evidence, Evidence::HoldsElements);
    assert_eq!(columns[1].evidence, Evidence::KnownHeading);
}

#[test]
fn a_cell_names_an_element_in_any_case_and_with_its_unit() {
    for (text, element, oxide, unit) in [
        ("Pb", "Pb", None, None),
        (" pb ", "Pb", None, None),
        ("PB", "Pb", None, None),
        ("lead", "Pb", None, None),
        ("Lead (Pb)", "Pb", None, None),
        ("Pb (lead)", "Pb", None, None),
        ("PbO", "Pb", Some("PbO"), None),
        ("CR2O3", "Cr", Some("Cr2O3"), None),
        ("Pb [ppm]", "Pb", None, Some(Unit::MgPerKg)),
        ("CD (mg/kg)", "Cd", None, Some(Unit::MgPerKg)),
        ("鉛", "Pb", None, None),
        ("镉", "Cd", None, None),
        ("铅(Pb)", "Pb", None, None),
        ("铅含量", "Pb", None, None),
        ("Quecksilber", "Hg", None, None),
        ("總鉻", "Cr", None, None),
        ("Total Cr", "Cr", None, None),
        ("Pb Lα", "Pb", None, None),
        ("as", "As", None, None),
        ("CO", "Co", None, None),
    ] {
        let found = element_cell(text).unwrap_or_else(|| panic!("{text}"));
        assert_eq!(found.element.symbol(), element, "{text}");
        assert_eq!(found.oxide.map(|oxide| oxide.to_string()).as_deref(), oxide, "{text}");
        assert_eq!(found.unit, unit, "{text}");
    }
    for text in [
        "",
        "LOI",
        "Cr(VI)",
        "Cr VI",
        "六价铬",
        "hexavalent chromium",
        "PBB",
        "PBDE",
        "Pb area",
        "Pb/Cd",
        "Total",
        "12",
        "H2O",
        "CO2",
        "DEHP",
    ] {
        assert_eq!(element_cell(text), None, "{text}");
    }
}

#[test]
fn identities_are_known_in_seven_languages() {
    for (role, headings) in [
        (
            "id",
            "Sample ID|Sample #|Probe|Proben-Nr.|Probenbezeichnung|Prüfling|échantillon|N° d'échantillon|muestra|Nº de muestra|样品编号|試料名|サンプルNo.|시료번호|样品名称|Campione|Codice campione|N. campione|provino",
        ),
        ("unit", "piece|Stück|Stück-Nr.|exemplaire|ejemplar|件号|個体番号|pezzo"),
        (
            "spot",
            "Spot|Messpunkt|Messstelle|point de mesure|punto de medida|测试点|測定位置|측정위치|punto di misura",
        ),
        (
            "part",
            "Part No.|Teilenummer|Teil-Nr.|Bauteil|Artikelnummer|Materialnummer|artículo|料号|物料编号|部品番号|品番|부품번호|Codice articolo|particolare",
        ),
        ("material", "Material|Werkstoff|Materialbezeichnung|matériau|matière|材质|材料名称|재질|Materiale"),
        (
            "lot",
            "Lot|Lot-Nr.|Batch No|Charge|Chargennummer|Chargen-Nr.|N° de lot|numéro de lot|lote|Nº de lote|批号|批次号|ロット番号|로트번호|Lotto|Numero lotto|N. lotto|partita",
        ),
        (
            "supplier",
            "Supplier|Lieferant|Lieferantenname|fournisseur|proveedor|供应商|供应商名称|仕入先|공급업체|Fornitore|Nome fornitore",
        ),
        ("class", "Class|Materialklasse|classe|clase|材料类别|材料分類|재질분류|Classe materiale"),
        (
            "time",
            "Date|Datum|Messdatum|date de mesure|fecha|日期|测试日期|测试时间|測定日|測定日時|날짜|Time|Uhrzeit|heure|时间|時刻|Data misura|data e ora",
        ),
        (
            "seconds",
            "Messzeit [s]|Messdauer|temps de mesure (s)|tiempo de medida|测量时间(s)|测试时间（秒）|測定時間|측정시간|Time (s)|Duration|Livetime (s)|Tempo di misura (s)|durata",
        ),
        (
            "instrument",
            "Instrument|Gerät|Gerätenummer|appareil|equipo|instrumento|仪器编号|装置|장비|Instrument serial no|strumento",
        ),
        ("mode", "Mode|Messmodus|mode de mesure|modo|测试模式|測定モード|모드|modalità"),
        ("operator", "Operator|Bediener|Prüfer|opérateur|operador|操作员|測定者|담당자|operatore"),
        (
            "thickness",
            "Thickness|Thickness (mm)|Dicke [mm]|épaisseur|espesor|厚度(mm)|厚さ|두께|spessore (mm)",
        ),
        ("note", "Note|Bemerkung|remarque|observaciones|备注|備考|비고|osservazioni"),
        (
            "spectrum",
            "Filter|Beam|Spectrum|Spektrum|filtre|filtro|滤光片|フィルター|필터|Condition|Phase|spettro",
        ),
        ("photo", "Photo|Picture|Bild|Foto|imagen|照片|写真|사진|immagine"),
        ("unit_of_measure", "Units|Einheit|unité|unidades|单位|単位|단위|UoM|unità di misura"),
    ] {
        for heading in headings.split('|') {
            assert_eq!(words(&[heading, "Pb"]), [role, "value Pb"], "{heading}");
        }
    }
    for heading in ["Thickness (µm)", "Lead time", "Colour", "Price"] {
        assert_eq!(words(&[heading, "Cd"])[0], "unused", "{heading}");
    }
}

#[test]
fn a_clock_time_beside_a_date_is_a_part_of_it() {
    for pair in
        [["Date", "Time"], ["Datum", "Uhrzeit"], ["fecha", "hora"], ["日期", "时间"], ["測定日", "時刻"]]
    {
        let [date, clock] = pair;
        assert_eq!(words(&[clock, "Pb", date]), ["time_of_day", "value Pb", "time"], "{pair:?}");
    }
    assert_eq!(words(&["Time", "Pb"]), ["time", "value Pb"]);
    assert_eq!(words(&["Timestamp", "Time", "Pb"]), ["time", "unused", "value Pb"]);
    assert_eq!(words(&["Date", "Time (s)", "Pb"]), ["time", "seconds", "value Pb"]);
}

#[test]
fn a_bare_u_is_an_uncertainty_behind_a_value_and_uranium_in_a_list_of_elements() {
    assert_eq!(words(&["Pb", "U"]), ["value Pb", "uncertainty Pb"]);
    assert_eq!(words(&["Pb", "U", "Cd", "U", "Hg", "U"])[4..], ["value Hg", "uncertainty Hg"]);
    assert_eq!(words(&["Pb", "Cd", "U", "Hg", "Cr"])[2], "uncertainty Cd");
    assert_eq!(words(&["Ag", "As", "Cd", "Cr", "Hg", "Pb", "Th", "Tl", "U", "V"])[8], "value U");
}

//! The parts of findings that matter to a golden case, short enough to be checked by hand.

// Plain to read matters here; how fast a few short lines are put together does not.
#![allow(clippy::format_push_string)]

use serde::{Deserialize, Serialize};
use serde_json::Value;

/// What a case expects. Everything but `exit` can be seen in `findings.json`; `exit` is the command line's.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expected {
    /// Exit status of the command line.
    pub exit: u8,
    /// Problems of settings and rule book: `file line:column code "found"`. Where there are any, nothing else is.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<String>,
    /// The sources.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sources: Vec<SourceView>,
    /// The readings.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub readings: Vec<ReadingView>,
    /// The materials.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub materials: Vec<DisposedView>,
    /// Repeats of one spot: the readings' places, then each element's `how value ± sigma (from)`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub repeats: Vec<String>,
    /// Check readings: `source:line kind sample`, then each element's `symbol class x ± u against X ± u: zeta, E_n verdict`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub checks: Vec<String>,
    /// The parts: `supplier | lot | part: disposition`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<String>,
    /// The lots.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lots: Vec<DisposedView>,
    /// The days of expiry that claims rest on, or may: `day entry renewal: materials in lots`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub expiries: Vec<String>,
    /// The charts of check readings: what makes the stream, its points, limits, signals (`code@point`) and drift.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub charts: Vec<String>,
    /// Photographs that were named: `name state: target @ x,y`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<String>,
}

/// One source.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SourceView {
    /// Its name.
    pub name: String,
    /// Rows in and their fates.
    pub rows: String,
    /// Why no table could be made of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub problem: Option<String>,
    /// Refusals: `line:column code rows`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub refusals: Vec<String>,
    /// Notices: `line:column code rows`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notices: Vec<String>,
    /// Lines before the header.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub preamble: Vec<String>,
    /// What each block's columns were taken for.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub blocks: Vec<String>,
}

/// One reading.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReadingView {
    /// `source:line id`, with `check` where it is one.
    pub at: String,
    /// What else the file says of it: spot, time, seconds and the like.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub named: String,
    /// Class and where it came from.
    pub class: String,
    /// What each element's cell says.
    pub says: String,
    /// Outcomes with their reasons.
    pub outcomes: String,
    /// What the composition says: class, reason, alloy group, family with its ranges, contradiction, calibration.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub composition: String,
    /// Outcomes under each class, where the class is unknown.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub by_class: String,
    /// The sigmas used and where each came from.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub sigmas: String,
    /// Halogens with their reasons and the interval of the total.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub halogens: String,
    /// Limits of the named books with their reasons, and the interval of what was added up.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limits: Vec<String>,
    /// Its trust, where any check reading is there: the worst, and each element's where they differ.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub trust: String,
    /// What physics makes doubtful: `outcome: code partner apparent`, with `strong` where it is.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub cautions: Vec<String>,
}

/// A material or a lot.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DisposedView {
    /// `supplier | lot`, for a material `supplier | lot | part | name (class)`.
    pub of: String,
    /// Worst outcomes of a material.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub outcomes: String,
    /// How its spots differ: `element spots/readings test p`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub spots: Vec<String>,
    /// The disposition.
    pub disposition: String,
    /// A lot's plan, what it asks for and what was seen.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sampling: Vec<String>,
    /// Claims of a material: `substance entry: state number why...`, and results by area.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub claims: Vec<String>,
    /// Entries that nobody claimed of a material and that may be: `substance entry: number question...`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub candidates: Vec<String>,
    /// Its reasons: `effect kind code about...`, worst first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub reasons: Vec<String>,
}

impl Expected {
    /// Leaves out the entries that nobody claimed: whatever is over limit may be many of them.
    pub fn forget_candidates(&mut self) {
        self.materials.iter_mut().for_each(|material| material.candidates.clear());
        self.expiries.retain(|expiry| !expiry.contains(NOT_CLAIMED));
    }
}

const NOT_CLAIMED: &str = ", not claimed";

/// The view of a `findings.json`, with exit status 0 still to be set.
pub fn of_findings(findings: &Value) -> Expected {
    let list = |key: &str| findings[key].as_array().cloned().unwrap_or_default();
    let sources = list("sources");
    let name_of = |index: &Value| {
        index
            .as_u64()
            .and_then(|at| sources.get(usize::try_from(at).ok()?))
            .map_or("?".to_owned(), |source| text(&source["name"]))
    };
    Expected {
        exit: 0,
        problems: Vec::new(),
        sources: sources.iter().map(source).collect(),
        readings: list("readings")
            .iter()
            .map(|one| {
                let view = reading(one, &name_of(&one["source"]));
                let trust = if list("checks").is_empty() || one["check"] == true {
                    String::new()
                } else {
                    trust(one)
                };
                ReadingView { trust, ..view }
            })
            .collect(),
        materials: list("materials")
            .iter()
            .map(|one| DisposedView { candidates: candidates(one, &list("exemptions")), ..material(one) })
            .collect(),
        repeats: list("repeats").iter().map(|one| repeats(one, &list("readings"))).collect(),
        checks: list("checks").iter().map(|one| check(one, &list("readings"), &name_of)).collect(),
        parts: list("parts")
            .iter()
            .map(|part| {
                let key = [&part["supplier"], &part["lot"], &part["part"]].map(or_dash).join(" | ");
                format!("{key}: {}", text(&part["disposition"]))
            })
            .collect(),
        lots: list("lots")
            .iter()
            .map(|lot| {
                let mut of = [&lot["supplier"], &lot["lot"]].map(or_dash).join(" | ");
                if !lot["source"].is_null() {
                    of += &format!(" (of {})", name_of(&lot["source"]));
                }
                disposed(of, String::new(), lot)
            })
            .collect(),
        charts: list("charts").iter().map(chart).collect(),
        photos: list("photos").iter().map(photo).collect(),
        expiries: list("expiries").iter().filter_map(|one| expiry(one, &list("exemptions"))).collect(),
    }
}

fn photo(photo: &Value) -> String {
    let shows: Vec<String> = photo["shows"]
        .as_array()
        .into_iter()
        .flatten()
        .map(|one| {
            let spot = &one["spot"];
            let of = [&one["target"], &one["reading"], &one["material"]].map(or_dash).join(" ");
            format!("{of} @ {},{}", or_dash(&spot["x_permille"]), or_dash(&spot["y_permille"]))
        })
        .collect();
    format!("{} {}: {}", text(&photo["name"]), text(&photo["state"]), shows.join("; "))
}

fn repeats(group: &Value, readings: &[Value]) -> String {
    let line = |at: &Value| {
        at.as_u64()
            .and_then(|at| readings.get(usize::try_from(at).ok()?))
            .map_or("?".to_owned(), |reading| text(&reading["line"]))
    };
    let all = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let lines: Vec<String> = all(&group["readings"]).iter().map(line).collect();
    let elements: Vec<String> = all(&group["elements"])
        .iter()
        .map(|one| {
            let mut says = format!("{} {}", text(&one["element"]), text(&one["how"]));
            for (key, sign) in [
                ("value_mg_kg", ""),
                ("sigma_mg_kg", "± "),
                ("sigma_from", ""),
                ("scatter_mg_kg", "s "),
                ("factor_for_few", "t "),
                ("chi_square", "chi² "),
                ("p", "p "),
            ] {
                if !one[key].is_null() {
                    says += &format!(" {sign}{}", text(&one[key]));
                }
            }
            if !one["outlier"].is_null() {
                says += &format!(" outlier in line {}", line(&one["outlier"]));
            }
            says
        })
        .collect();
    let together: Vec<String> = all(&group["judged_together"]).iter().map(text).collect();
    format!("lines {}: {}; judged together: {}", lines.join(" "), elements.join("; "), together.join(" "))
}

fn trust(reading: &Value) -> String {
    let mut said = text(&reading["trust"]);
    let differ: Vec<String> = reading["trust_by_element"]
        .as_object()
        .into_iter()
        .flatten()
        .map(|(element, trust)| format!("{element} {}", text(trust)))
        .collect();
    if !differ.is_empty() {
        said += &format!(": {}", differ.join(", "));
    }
    said
}

fn check(check: &Value, readings: &[Value], name_of: &dyn Fn(&Value) -> String) -> String {
    let reading = check["reading"].as_u64().and_then(|at| readings.get(usize::try_from(at).ok()?));
    let place =
        reading.map_or("?".to_owned(), |one| format!("{}:{}", name_of(&one["source"]), text(&one["line"])));
    let score = |value: &Value| value.as_f64().map_or("-".to_owned(), |score| format!("{score:.3}"));
    let elements: Vec<String> = check["elements"]
        .as_array()
        .into_iter()
        .flatten()
        .map(|one| {
            let mut said = [&one["element"], &one["class"]].map(text).join(" ");
            if one["value_mg_kg"].is_null() {
                said += &format!(" {}", text(&one["state"]));
            } else {
                said += &format!(" {} ± {}", text(&one["value_mg_kg"]), or_dash(&one["sigma_mg_kg"]));
            }
            if !one["certified_mg_kg"].is_null() {
                let [x, u] = ["certified_mg_kg", "certified_sigma_mg_kg"].map(|key| or_dash(&one[key]));
                said += &format!(" against {x} ± {u}");
            }
            if !one["zeta"].is_null() {
                said += &format!(": zeta {} E_n {}", score(&one["zeta"]), score(&one["en"]));
            }
            format!("{said} {}", text(&one["verdict"]))
        })
        .collect();
    format!("{place} {} {}: {}", text(&check["kind"]), or_dash(&check["sample"]), elements.join("; "))
}

fn row_of<'v>(exemption: &Value, exemptions: &'v [Value]) -> Option<&'v Value> {
    exemptions.get(usize::try_from(exemption.as_u64()?).ok()?)
}

/// A day that a claim rests on, or that an entry does which only may be claimed.
fn expiry(expiry: &Value, exemptions: &[Value]) -> Option<String> {
    let row = row_of(&expiry["exemption"], exemptions)?;
    Some(format!(
        "{} {} {}{}: {} in {}",
        text(&expiry["date"]),
        text(&row["entry"]),
        text(&expiry["renewal"]),
        if expiry["kind"] == "claimed" { "" } else { NOT_CLAIMED },
        expiry["materials"],
        expiry["lots"]
    ))
}

/// What nobody claimed of a material and may.
fn candidates(material: &Value, exemptions: &[Value]) -> Vec<String> {
    let candidates = material["exemptions"]["candidates"].as_array().into_iter().flatten();
    let one = |candidate: &Value| {
        let row = row_of(&candidate["exemption"], exemptions)?;
        let asked = candidate["questions"].as_array().into_iter().flatten().map(text);
        let said = [text(&row["substance"]), format!("{}:", text(&row["entry"])), text(&candidate["number"])];
        Some(said.into_iter().chain(asked).collect::<Vec<_>>().join(" "))
    };
    candidates.filter_map(one).collect()
}

/// What is claimed of a material, and results by area.
fn claims(material: &Value) -> Vec<String> {
    let claims = material["exemptions"]["claims"].as_array().into_iter().flatten();
    let claims = claims.map(|claim| {
        let mut said = [&claim["substance"], &claim["entry"]].map(text).join(" ");
        said += &format!(": {} {}", text(&claim["state"]), text(&claim["number"]));
        for why in claim["why"].as_array().into_iter().flatten() {
            said += &format!(" {}", text(&why["code"]));
        }
        said
    });
    let areas = material["cr6_area"].as_array().into_iter().flatten();
    let areas = areas.map(|area| {
        let sign = if area["below"] == true { "< " } else { "" };
        format!("Cr(VI) {sign}{} ug/cm2: {}", area["area_ug_cm2"], or_dash(&area["result"]))
    });
    let results = material["laboratory"].as_array().into_iter().flatten().map(|one| {
        let value = if one["value_mg_kg"].is_null() {
            format!("< {}", one["below_mg_kg"])
        } else {
            one["value_mg_kg"].to_string()
        };
        let verdict = [&one["analyte"], &Value::String(value), &one["verdict"]].map(or_dash);
        let mut said = format!("laboratory {}; screen {}", verdict.join(" "), text(&one["screen"]));
        for (key, word) in [("traceable", "not traceable"), ("placed", "not placed")] {
            if one[key] == false {
                said += &format!("; {word}");
            }
        }
        said
    });
    let ends = &material["hold_ends"];
    let ends = (!ends.is_null() && ends.is_object()).then(|| {
        let said = [&ends["who"], &ends["until"], &ends["quarantined"], &ends["place"]].map(or_dash);
        format!("hold ends: {}", said.join(", "))
    });
    claims.chain(areas).chain(results).chain(ends).collect()
}

fn text(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Null => String::new(),
        other => other.to_string(),
    }
}

fn or_dash(value: &Value) -> String {
    if value.is_null() { "-".to_owned() } else { text(value) }
}

fn source(source: &Value) -> SourceView {
    let set_aside = &source["set_aside"];
    let mut aside = text(&source["rows_set_aside"]);
    let fates: Vec<String> = ["blank", "heading", "unit_row"]
        .iter()
        .filter(|fate| set_aside[**fate] != 0)
        .map(|fate| format!("{fate} {}", set_aside[*fate]))
        .collect();
    if !fates.is_empty() {
        aside += &format!(" ({})", fates.join(", "));
    }
    let notices = |key: &str| -> Vec<String> {
        let list = source[key].as_array().cloned().unwrap_or_default();
        let place = |one: &Value| [&one["line"], &one["column"]].map(or_dash).join(":");
        list.iter().map(|one| format!("{} {} {}", place(one), text(&one["code"]), one["rows"])).collect()
    };
    let blocks = source["mapping"]["blocks"].as_array().cloned().unwrap_or_default();
    SourceView {
        name: text(&source["name"]),
        rows: format!(
            "{} in = {} used + {} check + {} duplicate + {aside} set aside + {} refused; {} readings",
            source["rows_in"],
            source["rows_used"],
            source["rows_check"],
            source["rows_duplicate"],
            source["rows_refused"],
            source["readings"],
        ),
        problem: source["problem"].as_str().map(str::to_owned),
        refusals: notices("refusals"),
        notices: notices("notices"),
        preamble: source["mapping"]["preamble"].as_array().into_iter().flatten().map(text).collect(),
        blocks: blocks.iter().map(|block| self::block(block, &source["mapping"]["delimiter"])).collect(),
    }
}

fn block(block: &Value, delimiter: &Value) -> String {
    let columns: Vec<String> = block["columns"]
        .as_array()
        .into_iter()
        .flatten()
        .map(|column| {
            let mut meaning = text(&column["role"]);
            for key in ["element", "unit"] {
                if !column[key].is_null() {
                    meaning += &format!(" {}", text(&column[key]));
                }
            }
            if !column["sigma_multiple"].is_null() {
                meaning += &format!(" {}s", text(&column["sigma_multiple"]));
            }
            // A plain heading needs no word about how it was understood.
            let evidence = text(&column["evidence"]);
            if !["element_heading", "known_heading"].contains(&evidence.as_str()) {
                meaning += &format!(" ({evidence})");
            }
            format!("{} = {meaning}", text(&column["heading"]))
        })
        .collect();
    format!(
        "line {}, cells by {:?}, decimals by {:?}: {}",
        block["header_line"],
        text(delimiter),
        or_dash(&block["decimal_mark"]),
        columns.join("; ")
    )
}

fn reading(reading: &Value, source: &str) -> ReadingView {
    let mut at = format!("{source}:{} {}", reading["line"], or_dash(&reading["id"]));
    if reading["check"] == true {
        at += " check";
    }
    if !reading["set_aside"].is_null() {
        at += &format!(" set aside: {}", text(&reading["set_aside"]));
    }
    let outcomes = &reading["outcomes"];
    let says: Vec<String> = reading["elements"]
        .as_object()
        .into_iter()
        .flatten()
        .map(|(element, cell)| format!("{element} {}", says(cell)))
        .collect();
    let halogens = ["Cl", "Br", "total"].map(|key| {
        let judged = &reading["halogens"][key];
        let mut said = self::outcome(judged);
        if !judged["low_mg_kg"].is_null() {
            let [high, sigma] = [&judged["high_mg_kg"], &judged["sigma_mg_kg"]].map(or_dash);
            said += &format!(" [{} to {high} ± {sigma}]", judged["low_mg_kg"]);
        }
        (key, said)
    });
    let named: Vec<String> = ["spot", "unit", "time", "seconds", "instrument", "mode", "operator"]
        .into_iter()
        .filter(|key| !reading[key].is_null())
        .map(|key| format!("{key} {}", text(&reading[key])))
        .collect();
    ReadingView {
        at,
        named: named.join("; "),
        class: format!("{} {}", text(&reading["class"]), text(&reading["class_from"])),
        says: says.join("; "),
        outcomes: grouped(SUBSTANCES.map(|key| (key, outcome(&outcomes[key])))),
        composition: composition(&reading["composition"]),
        by_class: SUBSTANCES
            .iter()
            .filter_map(|key| by_class(key, &outcomes[*key]))
            .collect::<Vec<_>>()
            .join("; "),
        sigmas: grouped(SUBSTANCES.map(|key| {
            let (sigma, from) = (&outcomes[key]["sigma_used_mg_kg"], text(&outcomes[key]["sigma_from"]));
            (key, if from == "none" { String::new() } else { format!("{} {from}", or_dash(sigma)) })
        })),
        halogens: grouped(halogens),
        limits: reading["limits"].as_array().into_iter().flatten().map(limit).collect(),
        trust: String::new(),
        cautions: ["outcomes", "halogens"].iter().flat_map(|list| cautions(list, &reading[*list])).collect(),
    }
}

fn limit(judged: &Value) -> String {
    let mut said = format!("{} {}: {}", text(&judged["book"]), text(&judged["row"]), outcome(judged));
    if !judged["low_mg_kg"].is_null() {
        let [high, sigma, together] =
            ["high_mg_kg", "sigma_mg_kg", "sigma_if_together_mg_kg"].map(|key| or_dash(&judged[key]));
        said += &format!(" [{} to {high} ± {sigma}, together {together}]", judged["low_mg_kg"]);
    }
    said
}

fn cautions(list: &str, judged: &Value) -> Vec<String> {
    let of = if list == "halogens" { "halogen " } else { "" };
    let entries = judged.as_object().into_iter().flatten();
    entries
        .flat_map(|(key, judged)| {
            judged["cautions"].as_array().into_iter().flatten().map(move |one| {
                let mut said = format!("{of}{key}: {}", text(&one["code"]));
                for (key, unit) in
                    [("partner", ""), ("apparent_mg_kg", ""), ("percent_missing", " % missing")]
                {
                    if !one[key].is_null() {
                        said += &format!(" {}{unit}", text(&one[key]));
                    }
                }
                if one["strong"] == true { said + " strong" } else { said }
            })
        })
        .collect()
}

const SUBSTANCES: [&str; 5] = ["Cd", "Pb", "Hg", "Cr", "Br"];

/// `BL: Cd Pb; X inside_band: Hg`: what is said of several is said once, in the order of its first.
fn grouped<const N: usize>(said: [(&str, String); N]) -> String {
    let mut groups: Vec<(String, Vec<&str>)> = Vec::new();
    for (key, said) in said.into_iter().filter(|(_, said)| !said.is_empty()) {
        match groups.iter_mut().find(|(known, _)| *known == said) {
            Some((_, keys)) => keys.push(key),
            None => groups.push((said, vec![key])),
        }
    }
    let groups: Vec<String> =
        groups.into_iter().map(|(said, keys)| format!("{said}: {}", keys.join(" "))).collect();
    groups.join("; ")
}

fn composition(of: &Value) -> String {
    if of.is_null() {
        return String::new();
    }
    let mut said = Vec::new();
    if !of["class"].is_null() {
        said.push(format!("{} {}", text(&of["class"]), text(&of["reason"])));
    }
    if !of["group"].is_null() {
        let sure = if of["group_is_sure"] == true { "" } else { " perhaps" };
        said.push(format!("{}{sure}", text(&of["group"])));
    }
    if let Some(family) = of["family"].as_object() {
        let ranges = family["ranges"].as_array().into_iter().flatten().map(|range| {
            let by = text(&range["outside_by_mg_kg"]);
            let by = if by == "0" { String::new() } else { format!(" by {by}") };
            format!("{} {}{by}", text(&range["element"]), text(&range["fit"]))
        });
        let also = family["also"].as_array().into_iter().flatten().map(text).collect::<Vec<_>>().join(" ");
        said.push(format!(
            "{} {} ({}; {}){}",
            text(&family["code"]),
            text(&family["fit"]),
            ranges.collect::<Vec<_>>().join(", "),
            text(&family["confidence"]),
            if also.is_empty() { String::new() } else { format!(" also {also}") }
        ));
    }
    said.extend(
        ["contradicts", "calibration"].iter().map(|key| text(&of[*key])).filter(|code| !code.is_empty()),
    );
    said.push(text(&of["text"]));
    said.join("; ")
}

/// Only where the classes disagree.
fn by_class(key: &str, judged: &Value) -> Option<String> {
    let by_class = judged["by_class"].as_object()?;
    let said = ["polymer", "metal", "composite"]
        .map(|class| (class, by_class.get(class).map_or_else(String::new, text)));
    let alike = said.iter().all(|(_, outcome)| *outcome == said[0].1);
    (!alike)
        .then(|| format!("{key} {}", said.map(|(class, outcome)| format!("{class} {outcome}")).join(", ")))
}

fn outcome(judged: &Value) -> String {
    let reason = text(&judged["reason"]);
    let outcome = text(&judged["outcome"]);
    if reason.is_empty() { outcome } else { format!("{outcome} {reason}") }
}

fn says(cell: &Value) -> String {
    let state = text(&cell["state"]);
    let limit = &cell["below_detection_mg_kg"];
    let amount = match state.as_str() {
        "number" => text(&cell["value_mg_kg"]),
        "below_detection" => format!("< {limit}"),
        "above_range" => format!("> {}", cell["above_range_mg_kg"]),
        other => other.to_owned(),
    };
    let mut said = amount.clone();
    if !cell["sigma_mg_kg"].is_null() {
        said += &format!(" ± {}", cell["sigma_mg_kg"]);
    }
    if state == "number" && !limit.is_null() {
        said += &format!(" (limit {limit})");
    }
    let written = text(&cell["as_written"]);
    if written == amount || written.is_empty() { said } else { format!("{said} {written:?}") }
}

fn material(material: &Value) -> DisposedView {
    let mut of = [&material["supplier"], &material["lot"], &material["part"], &material["material"]]
        .map(or_dash)
        .join(" | ");
    of += &format!(" ({})", text(&material["class"]));
    let mut view =
        disposed(of, grouped(SUBSTANCES.map(|key| (key, text(&material["outcomes"][key])))), material);
    view.spots = material["spots"]
        .as_array()
        .into_iter()
        .flatten()
        .map(|one| {
            let differ = if one["differ"] == true { ", differ" } else { "" };
            format!(
                "{} {} spots, {} readings, {} {} p {}{differ}",
                text(&one["element"]),
                one["spots"],
                one["readings"],
                text(&one["test"]),
                one["statistic"],
                one["p"],
            )
        })
        .collect();
    view
}

/// A plan and what it came to; nothing where none was asked for.
fn sampling(of: &Value) -> Vec<String> {
    if of["rule"].is_null() {
        return Vec::new();
    }
    let said = |keys: &[&str]| {
        keys.iter().map(|key| format!("{key} {}", or_dash(&of[*key]))).collect::<Vec<_>>().join(", ")
    };
    let mut lines = vec![format!("{}: {}", text(&of["rule"]), said(&["lot_size", "n", "units_wanted"]))];
    if let Some(table) = of["table"].as_object() {
        let cells = table.iter().map(|(key, value)| format!("{key} {}", or_dash(value)));
        lines.push(cells.collect::<Vec<_>>().join(", "));
    }
    lines.push(said(&["units_measured", "units_seen", "units_conforming", "units_undecided", "units_over"]));
    lines.push(said(&["at_most_nonconforming", "confidence_percent"]));
    let risk = of["risk"].as_array().into_iter().flatten();
    lines.extend(risk.map(|at| {
        format!("accepted {} %: {}", text(&at["accepted_percent"]), text(&at["nonconforming_units"]))
    }));
    if !of["list_seed"].is_null() {
        lines.push(format!("list of seed {}: {}", text(&of["list_seed"]), of["list"]));
    }
    lines
}

fn disposed(of: String, outcomes: String, value: &Value) -> DisposedView {
    let mut reasons: Vec<(String, Vec<String>)> = Vec::new();
    for reason in value["reasons"].as_array().into_iter().flatten() {
        let code = [&reason["effect"], &reason["kind"], &reason["code"]].map(text).join(" ");
        let about = text(&reason["about"]);
        match reasons.last_mut() {
            Some((known, abouts)) if *known == code => abouts.push(about),
            _ => reasons.push((code, vec![about])),
        }
    }
    let reasons =
        reasons.into_iter().map(|(code, about)| format!("{code} {}", about.join(" ")).trim_end().to_owned());
    DisposedView {
        of,
        outcomes,
        spots: Vec::new(),
        disposition: text(&value["disposition"]),
        sampling: sampling(&value["sampling"]),
        claims: claims(value),
        candidates: Vec::new(),
        reasons: reasons.collect(),
    }
}

/// `XRF-1 | Plastics | CHK-1 | polymer | Pb: 9 points, 8 of history; centre ...; rules: signals; drift`.
fn chart(chart: &Value) -> String {
    let word = |key: &str| chart[key].as_str().unwrap_or("-").to_owned();
    let names = ["instrument", "mode", "sample", "class", "element"].map(word).join(" | ");
    let points = chart["points"].as_array().expect("points");
    let earlier = points.iter().filter(|point| point["from"] == "history").count();
    let mut text = format!("{names}: {} points, {earlier} of history", points.len());
    match chart["without_time"].as_u64() {
        None | Some(0) => {}
        Some(some) => text += &format!(", {some} without time"),
    }
    let short = |value: &Value| format!("{:.4}", value.as_f64().expect("a number"));
    if let Some(why) = chart["no_limits"].as_str() {
        text += &format!("; {why}");
    } else {
        let [centre, lower, upper, range] =
            ["centre_mg_kg", "lower_mg_kg", "upper_mg_kg", "range_upper_mg_kg"].map(|key| short(&chart[key]));
        let from = match chart["baseline_points"].as_u64() {
            Some(points) => format!("baseline of {points}"),
            None => format!("certificate, {}", word("repeatability_from")),
        };
        text += &format!("; {from}: {centre} ({lower} to {upper}), ranges to {range}");
    }
    let signals: Vec<String> = chart["signals"]
        .as_array()
        .expect("signals")
        .iter()
        .map(|one| format!("{}@{}", one["signal"].as_str().expect("a signal"), one["point"]))
        .collect();
    text += &format!(
        "; {}: {}",
        word("rule_set"),
        if signals.is_empty() { "none".to_owned() } else { signals.join(" ") }
    );
    let drift = &chart["drift"];
    if !drift.is_null() {
        let (slope, sigma) = (short(&drift["slope_mg_kg_per_day"]), short(&drift["sigma_mg_kg_per_day"]));
        let drifts = if drift["drifts"] == true { "drifts" } else { "no drift" };
        let month =
            drift["percent_in_30_days"].as_f64().map(|percent| format!(", {percent:.2} % in 30 days"));
        text += &format!("; {drifts}: {slope} +- {sigma} a day{}", month.unwrap_or_default());
    }
    text
}

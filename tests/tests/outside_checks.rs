//! Statistics, pooling, conformity, decision rules, totals and times against other people's libraries.
//!
//! The files in `vectors/` are made by `outside/make_vectors.py` (`scripts/check-values` remakes and compares them), which
//! shares no code with the program; what each was made with stands in `vectors/README.md`. Tails are compared with
//! mpmath's 50 digits, and with scipy's where scipy itself is that good.

use std::fs;

use plumbline_core::conformity::{GUARD, conformity};
use plumbline_core::longer::{Longer, Never, Timed, for_band, for_limit};
use plumbline_core::pool::{Repeat, pool, repeatability};
use plumbline_core::quantity::{Coverage, MassFraction, Sigma, parse_with_unit};
use plumbline_core::statistics::{
    anova, chi_square_upper, f_upper, factor_for_few, grubbs, moments, normal_lower, normal_upper, t_upper,
};
use plumbline_tests::places::in_tests;
use serde_json::Value;

fn text(file: &str) -> String {
    fs::read_to_string(in_tests("vectors").join(file)).unwrap_or_else(|error| panic!("{file}: {error}"))
}

fn json(file: &str) -> Value {
    serde_json::from_str(&text(file)).unwrap_or_else(|error| panic!("{file}: {error}"))
}

/// Rows of a file without its heading.
fn rows(file: &str) -> Vec<Vec<String>> {
    text(file).lines().skip(1).map(|line| line.split(',').map(str::to_owned).collect()).collect()
}

fn float(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text} is no number"))
}

fn whole<Number: std::str::FromStr>(text: &str) -> Number {
    text.parse().unwrap_or_else(|_| panic!("{text} is no whole number"))
}

fn amount(value: &Value) -> MassFraction {
    amount_of(value.as_str().unwrap_or_else(|| panic!("{value} is no text")))
}

fn amount_of(text: &str) -> MassFraction {
    parse_with_unit(&format!("{text} mg/kg")).unwrap_or_else(|error| panic!("{text}: {error:?}"))
}

fn sigma(value: &Value) -> Sigma {
    Sigma::from_one_sigma(amount(value)).expect("a sigma")
}

fn cases<'a>(document: &'a Value, list: &str) -> &'a [Value] {
    let cases = document[list].as_array().unwrap_or_else(|| panic!("no {list}"));
    assert!(!cases.is_empty(), "{list} is empty");
    cases
}

#[track_caller]
fn near(found: f64, wanted: f64, relative: f64, about: &impl std::fmt::Debug) {
    let off = (found - wanted).abs();
    assert!(
        off <= wanted.abs() * relative,
        "{about:?}: {found:e} for {wanted:e}, off by {:e}",
        off / wanted.abs()
    );
}

/// Source: mpmath, erfc with 50 digits; scipy, norm.sf.
#[test]
fn normal_tails_are_those_of_mpmath_and_scipy() {
    for row in rows("normal_tails.csv") {
        let z = float(&row[0]);
        near(normal_lower(z), float(&row[1]), 1e-12, &row);
        near(normal_upper(z), float(&row[2]), 1e-12, &row);
        near(normal_upper(z), float(&row[3]), 1e-11, &row);
    }
}

/// Source: mpmath, betainc with 50 digits; scipy, t.sf.
#[test]
fn tails_of_t_are_those_of_mpmath_and_scipy() {
    for row in rows("student_t.csv") {
        let found = t_upper(float(&row[1]), whole(&row[0]));
        near(found, float(&row[2]), 1e-12, &row);
        near(found, float(&row[3]), 1e-9, &row);
    }
}

/// Source: mpmath, root of betainc at the tail of erfc; scipy, t.isf.
#[test]
fn factors_for_few_are_those_of_mpmath_and_scipy() {
    for row in rows("t_for_few.csv") {
        let found = factor_for_few(float(&row[0]), whole(&row[1])).expect("a factor");
        near(found, float(&row[2]), 1e-12, &row);
        near(found, float(&row[3]), 1e-9, &row);
    }
}

/// Source: mpmath, gammainc with 50 digits; scipy, chi2.sf.
#[test]
fn tails_of_chi_square_are_those_of_mpmath_and_scipy() {
    for row in rows("chi_square.csv") {
        let found = chi_square_upper(float(&row[1]), whole(&row[0]));
        near(found, float(&row[2]), 1e-12, &row);
        near(found, float(&row[3]), 1e-9, &row);
    }
}

/// Source: mpmath, betainc with 50 digits; scipy, f.sf.
#[test]
fn tails_of_f_are_those_of_mpmath_and_scipy() {
    for row in rows("f_tails.csv") {
        let found = f_upper(float(&row[2]), whole(&row[0]), whole(&row[1]));
        near(found, float(&row[3]), 1e-12, &row);
        near(found, float(&row[4]), 1e-9, &row);
    }
}

/// Source: scipy, t.isf in the formula of the R package outliers.
#[test]
fn the_critical_distances_of_grubbs_are_scipys() {
    for row in rows("grubbs.csv") {
        let n: usize = whole(&row[0]);
        let values: Vec<f64> = (0..n).map(|at| if at == 0 { 1.0 } else { 0.0 }).collect();
        let found = grubbs(&values).expect("an answer");
        near(found.critical().expect("a distance"), float(&row[1]), 1e-11, &row);
        // One value apart from n - 1 equal ones lies (n - 1) / sqrt n away, whatever n.
        near(found.g, (n as f64 - 1.0) / (n as f64).sqrt(), 1e-12, &row);
    }
}

/// Source: numpy and scipy for the distance, statsmodels (`anova_lm`) and scipy (`f_oneway`) for the analysis.
#[test]
fn outliers_and_spots_are_those_of_scipy_and_statsmodels() {
    let document = json("outliers_and_spots.json");
    for case in cases(&document, "outliers") {
        let values: Vec<f64> = case["values"]
            .as_array()
            .expect("values")
            .iter()
            .map(|x| x.as_f64().expect("a number"))
            .collect();
        let found = grubbs(&values).expect("an answer");
        assert_eq!(Some(found.index as u64), case["index"].as_u64(), "{case}");
        near(found.g, case["g"].as_f64().expect("g"), 1e-12, case);
        near(
            found.critical().expect("a distance"),
            case["critical"].as_f64().expect("critical"),
            1e-11,
            case,
        );
    }
    for case in cases(&document, "spots") {
        let groups = groups_of(case["groups"].as_array().expect("groups"));
        let slices: Vec<&[f64]> = groups.iter().map(Vec::as_slice).collect();
        let found = anova(&slices).expect("an analysis");
        assert_eq!(Some(u64::from(found.df_between)), case["df_between"].as_u64(), "{case}");
        assert_eq!(Some(u64::from(found.df_within)), case["df_within"].as_u64(), "{case}");
        for (number, name) in [
            (found.f, "f"),
            (found.p, "p"),
            (found.ms_between, "ms_between"),
            (found.ms_within, "ms_within"),
            (found.n0, "n0"),
            (found.s_bb, "s_bb"),
            (found.u_bb_min, "u_bb_min"),
        ] {
            near(number, case[name].as_f64().expect("a number"), 1e-9, &(name, case));
        }
    }
}

fn groups_of(groups: &[Value]) -> Vec<Vec<f64>> {
    groups
        .iter()
        .map(|group| {
            group.as_array().expect("a group").iter().map(|x| x.as_f64().expect("a number")).collect()
        })
        .collect()
}

/// Source: NIST Statistical Reference Datasets, certified values (the source stands in each file). What is left of the
/// tolerance is the rounding of the data themselves to floats: 1e-9 in 0.1 for `NumAcc4`, 1e-14 in 1e-5 for `AtmWtAg`.
#[test]
fn certified_data_sets_give_their_certified_values() {
    let mut seen = 0;
    for (name, mean_within, within) in [
        ("Lew", 1e-15, 1e-14),
        ("Lottery", 1e-14, 1e-14),
        ("Mavro", 1e-14, 1e-11),
        ("Michelso", 1e-14, 1e-13),
        ("NumAcc3", 1e-15, 1e-8),
        ("NumAcc4", 1e-15, 1e-7),
    ] {
        let document = json(&format!("nist_strd/{name}.json"));
        let values: Vec<f64> = if let Some(data) = document["data"].as_array() {
            data.iter().map(|x| x.as_f64().expect("a number")).collect()
        } else {
            let base = document["base"].as_f64().expect("a base");
            let mut values = vec![base + 0.2];
            (0..500).for_each(|_| values.extend([base + 0.1, base + 0.3]));
            values
        };
        assert_eq!(Some(values.len() as u64), document["n"].as_u64(), "{name}");
        let found = moments(&values).expect("moments");
        near(found.mean, document["certified"]["mean"].as_f64().expect("a mean"), mean_within, &name);
        near(found.sd(), document["certified"]["sd"].as_f64().expect("sd"), within, &name);
        seen += 1;
    }
    for (name, within) in [("AtmWtAg", 1e-9), ("SiRstv", 1e-10), ("SmLs01", 1e-12)] {
        let document = json(&format!("nist_strd/{name}.json"));
        let groups: Vec<Value> = document["groups"].as_object().expect("groups").values().cloned().collect();
        let groups = groups_of(&groups);
        let slices: Vec<&[f64]> = groups.iter().map(Vec::as_slice).collect();
        let found = anova(&slices).expect("an analysis");
        let certified = &document["certified"];
        assert_eq!(Some(u64::from(found.df_between)), certified["df_between"].as_u64(), "{name}");
        assert_eq!(Some(u64::from(found.df_within)), certified["df_within"].as_u64(), "{name}");
        for (number, key) in
            [(found.f, "F"), (found.ms_between, "MS_between"), (found.ms_within, "MS_within")]
        {
            near(number, certified[key].as_f64().expect("a number"), within, &(name, key));
        }
        seen += 1;
    }
    let kept = fs::read_dir(in_tests("vectors/nist_strd")).expect("the sets").count();
    // Norris is a straight line: tests/tests/control_charts.rs compares it.
    assert_eq!(seen + 1, kept, "every set that is kept is compared");
}

/// A whole number of millionths that was rounded up from `wanted`.
#[track_caller]
fn rounded_up(found: MassFraction, wanted: f64, about: &impl std::fmt::Debug) {
    let found = found.to_mg_per_kg();
    let slack = wanted.abs() * 1e-12;
    assert!(found >= wanted - slack && found <= wanted + 1e-6 + slack, "{about:?}: {found} for {wanted}");
}

/// Source: numpy, scipy (chi2.sf, t.isf) and statsmodels (`DescrStatsW`), with the t rule written out a second time.
#[test]
fn pooled_repeats_are_those_of_scipy_and_statsmodels() {
    let (mut stated, mut few) = (0, 0);
    for case in cases(&json("repeats.json"), "cases") {
        let about = &(case["name"].as_str(), case["k"].as_str());
        let values = case["values"].as_array().expect("values");
        let repeats: Vec<Repeat> = values
            .iter()
            .enumerate()
            .map(|(at, value)| {
                let sigma = case["sigmas"].as_array().map(|sigmas| sigma(&sigmas[at]));
                Repeat::new(amount(value), sigma)
            })
            .collect();
        let k = Coverage::from_text(case["k"].as_str().expect("k")).expect("k");
        let found = pool(&repeats, amount(&case["constant"]), k).expect("a pooled value");
        assert_eq!(Some(found.n as u64), case["n"].as_u64(), "{about:?}");
        rounded_up(found.mean, case["mean"].as_f64().expect("a mean"), about);
        assert_eq!(found.internal.is_some(), case["internal"].is_number(), "{about:?}");
        if let Some(internal) = found.internal {
            rounded_up(internal, case["internal"].as_f64().expect("internal"), about);
            stated += 1;
        }
        assert_eq!(found.scatter.is_some(), case["s"].is_number(), "{about:?}");
        if let Some(scatter) = found.scatter {
            rounded_up(scatter, case["s"].as_f64().expect("s"), about);
        }
        assert_eq!(found.agree(), case["agree"].as_bool(), "{about:?}");
        if let Some(agreement) = found.agreement {
            near(agreement.chi_square, case["chi_square"].as_f64().expect("chi-square"), 1e-9, about);
            near(agreement.p, case["p"].as_f64().expect("p"), 1e-8, about);
        }
        assert_eq!(found.few.is_some(), case["t"].is_number(), "{about:?}");
        if let Some(factor) = found.few {
            near(factor.t, case["t"].as_f64().expect("t"), 1e-11, about);
            few += 1;
        }
        // Each step rounds up: a millionth of mg/kg, times t / k, and a millionth of t / k.
        let wanted = case["sigma"].as_f64().expect("sigma");
        let sigma = found.sigma.expect("a sigma").to_mg_per_kg();
        let factor = found.few.map_or(1.0, |few| few.t / few.k);
        assert!(sigma >= wanted * (1.0 - 1e-12), "{about:?}: {sigma} for {wanted}");
        assert!(sigma <= wanted * (1.0 + 1e-6) + 1e-6 * (factor + 2.0), "{about:?}: {sigma} for {wanted}");
        let of_one = repeatability(&repeats, k);
        assert_eq!(of_one.is_some(), case["s"].as_f64().is_some_and(|s| s > 0.0), "{about:?}");
        if let Some(shown) = of_one {
            let wanted = case["s"].as_f64().expect("s") * factor;
            assert!(shown.sigma.to_mg_per_kg() >= wanted * (1.0 - 1e-12), "{about:?}");
            assert!(shown.sigma.to_mg_per_kg() <= wanted * (1.0 + 1e-6) + 1e-6 * (factor + 2.0), "{about:?}");
        }
    }
    assert!(stated > 10 && few > 5, "both kinds were compared: {stated}, {few}");
}

/// Source: mpmath, erfc with 50 digits; inputs of JCGM 106:2012, 7.4, and of its resistors.
#[test]
fn probabilities_of_conformity_are_those_of_mpmath() {
    let document = json("conformity.json");
    let tails = |y: &Value, u: &Value, limit: &Value| {
        conformity(amount(y), sigma(u), amount(limit), true, GUARD).expect("an answer")
    };
    for case in cases(&document, "cases") {
        let found = tails(&case["x"], &case["sigma"], &case["limit"]);
        let number = |name: &str| float(case[name].as_str().expect("a number"));
        near(found.within, number("within"), 1e-12, case);
        near(found.beyond, number("beyond"), 1e-12, case);
    }
    let two = &document["two_limits"];
    let above = tails(&two["y"], &two["u"], &two["upper"]);
    let below = tails(&two["y"], &two["u"], &two["lower"]);
    near(above.beyond, float(two["above"].as_str().expect("above")), 1e-13, two);
    near(below.within, float(two["below"].as_str().expect("below")), 1e-13, two);
    // The probability between the limits, as 7.4 rounds it: 0.66.
    near(above.within - below.within, 0.662_629_786_495_307_9, 1e-13, two);
    let resistors = &document["resistors"];
    let upper = tails(&resistors["mean"], &resistors["sd"], &resistors["upper"]);
    let lower = tails(&resistors["mean"], &resistors["sd"], &resistors["lower"]);
    let conforming = float(resistors["conforming"].as_str().expect("a number"));
    near(upper.within - lower.within, conforming, 1e-13, resistors);
}

/// Source: ILAC-G8:09/2019, 4.2.1 to 4.2.3, in exact decimals; the risk by mpmath.
#[test]
fn decision_rules_state_what_the_guide_says() {
    let mut seen = std::collections::BTreeSet::new();
    for row in rows("decision_rules.csv") {
        let [limit, operator, expanded, y, simple, guarded, non_binary, beyond] = &row[..] else {
            panic!("{row:?}")
        };
        let u = Sigma::from_printed(
            amount_of(expanded),
            plumbline_core::quantity::SigmaMultiple::from_hundredths(200).expect("two"),
        );
        let found = conformity(amount_of(y), u.expect("a sigma"), amount_of(limit), operator == "<=", GUARD)
            .expect("an answer");
        let statements = found.said.map(|said| said.statement.code());
        assert_eq!(statements, [simple, guarded, non_binary].map(String::as_str), "{row:?}");
        near(found.beyond, float(beyond), 1e-12, &row);
        for said in found.said {
            let wrong = if said.statement.code().ends_with("pass") { found.beyond } else { found.within };
            assert_eq!(said.risk.to_bits(), wrong.to_bits(), "{row:?}");
        }
        seen.extend(statements);
    }
    assert_eq!(seen.len(), 4, "every statement was made");
}

/// Source: uncertainties, `correlated_values`. Correlation 0 is the program's rule and 1 the bound it shows.
#[test]
fn the_uncertainty_of_a_total_is_that_of_a_propagation_library() {
    for case in cases(&json("totals.json"), "cases") {
        let (cl, br) = (sigma(&case["u_cl"]), sigma(&case["u_br"]));
        let wanted = case["u_total"].as_f64().expect("a number");
        let total = amount(&case["cl"]).plus(amount(&case["br"]));
        near(total.to_mg_per_kg(), case["total"].as_f64().expect("a number"), 1e-15, case);
        let (apart, together) = (cl.in_quadrature(br).to_mg_per_kg(), cl.to_mg_per_kg() + br.to_mg_per_kg());
        match case["rho"].as_f64().expect("a correlation") {
            0.0 => near(apart, wanted, 1e-12, case),
            1.0 => near(together, wanted, 1e-12, case),
            _ => assert!(apart < wanted && wanted < together, "{case}"),
        }
    }
}

/// Whole seconds, rounded up from `wanted`. A time that is whole to a part in 1e9 may come out as the next second.
#[track_caller]
fn seconds_up(found: Option<u32>, wanted: f64, took: f64, about: &Value) {
    let found = f64::from(found.unwrap_or_else(|| panic!("no time: {about}")));
    let wanted = wanted.max(took);
    assert!(
        found >= wanted * (1.0 - 1e-9) && found < wanted * (1.0 + 1e-9) + 1.0,
        "{found} for {wanted}: {about}"
    );
}

/// Source: scipy, brentq.
#[test]
fn measuring_times_are_those_of_a_root_finder() {
    let document = json("times.json");
    let far = 10_000_000;
    let timed = |case: &Value| Timed {
        value: amount(&case["y"]),
        counting: sigma(&case["counting"]),
        constant: amount(&case["constant"]),
        deciseconds: (case["took_s"].as_f64().expect("a time") * 10.0) as u16,
    };
    let k =
        |case: &Value| Coverage::from_tenths((case["k"].as_u64().expect("k") * 10) as u8).expect("a factor");
    let check = |found: Longer, case: &Value, distance: f64| {
        let took = case["took_s"].as_f64().expect("a time");
        match case["even_s"].as_f64() {
            Some(even) => {
                seconds_up(found.even(), even, took, case);
                seconds_up(found.surely(), case["nine_in_ten_s"].as_f64().expect("a time"), took, case);
            }
            None if distance <= 0.0 => assert_eq!(found, Longer::Never(Never::InsideEdges), "{case}"),
            None => assert_eq!(found, Longer::Never(Never::ConstantPart), "{case}"),
        }
    };
    let number = |value: &Value| amount(value).to_mg_per_kg();
    for case in cases(&document, "limits") {
        let distance = (number(&case["y"]) - number(&case["limit"])).abs();
        check(for_limit(timed(case), amount(&case["limit"]), k(case), far), case, distance);
    }
    for case in cases(&document, "bands") {
        let high = case["high"].as_str().map(amount_of);
        let over = high.map_or(0.0, |high| number(&case["y"]) - high.to_mg_per_kg());
        let distance = (number(&case["low"]) - number(&case["y"])).max(over);
        check(for_band(timed(case), amount(&case["low"]), high, k(case), far), case, distance);
    }
}

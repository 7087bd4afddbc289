//! Repeats of one spot and spots beside each other, in the sentences that report, page and command line share.

use std::collections::BTreeMap;

use crate::conformity;
use crate::inspection::{Findings, Inspection, MaterialFinding};
use crate::judging::{JUDGED, PooledElement, PooledHow, SourceReview};
use crate::pool::{self, PooledFrom, Repeat, Spots};
use crate::reading::Identity;
use crate::rules::RuleBooks;
use crate::statistics::Grubbs;
use crate::substance::Element;
use crate::words::Words;

/// A chance in words.
pub fn chance(words: &Words, p: f64) -> String {
    // What is left to certainty only chooses the words; no test is decided by it.
    let (id, percent) = conformity::phrase(p, libm::fdim(1.0, p));
    words.with(id, &[("percent", &percent)])
}

/// How the `n` repeats of one spot were put together for one element. `name` gives the name of a repeat by its place.
pub fn told(
    words: &Words,
    books: &RuleBooks,
    one: &PooledElement,
    n: usize,
    name: &dyn Fn(usize) -> String,
) -> String {
    let n = n.to_string();
    let mut texts = Vec::new();
    let pooled = one.pooled.as_ref();
    let agreement = pooled.and_then(|pooled| pooled.agreement);
    let p = agreement.map(|agreement| chance(words, agreement.p)).unwrap_or_default();
    match one.how {
        PooledHow::LargestLimit => texts.push(words.with("repeats-largest_limit", &[("n", &n)])),
        PooledHow::Mixed => texts.push(words.with("repeats-mixed", &[("n", &n)])),
        PooledHow::Disagree => texts.push(words.with("pooled-disagree", &[("n", &n), ("p", &p)])),
        PooledHow::Pooled => {
            if agreement.is_some() {
                texts.push(words.with("pooled-agree", &[("n", &n), ("p", &p)]));
            }
            if let Some(pooled) = pooled {
                let few = pooled.few.filter(|_| pooled.from == PooledFrom::ScatterOfFew);
                let t = few.map(|few| format!("{:.2}", few.t)).unwrap_or_default();
                let k = books.screening().map(|(_, rule)| rule.sigma_factor.to_string()).unwrap_or_default();
                let from = words
                    .with(&format!("pooled-from-{}", pooled.from.code()), &[("n", &n), ("t", &t), ("k", &k)]);
                texts.push(words.with("repeats-sigma", &[("from", &from)]));
            }
        }
    }
    if let Some(far) = pooled.and_then(|pooled| pooled.outlier).filter(|far| far.is_flagged()) {
        let critical = far.critical().map(|g| format!("{g:.2}")).unwrap_or_default();
        let Grubbs { index, g, .. } = far;
        texts.push(words.with(
            "pooled-outlier",
            &[("which", &name(index)), ("g", &format!("{g:.2}")), ("critical", &critical)],
        ));
    }
    words.sentences(&texts)
}

/// How the spots of a material differ, element by element; empty where it has fewer than two stated spots.
pub fn spots(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    material: &MaterialFinding,
) -> Vec<(Element, Spots)> {
    let mut groups: BTreeMap<[String; 3], Vec<(usize, usize)>> = BTreeMap::new();
    for reading in &material.readings {
        let Some((at, row)) = findings.place(*reading as usize) else { continue };
        let Some(source) = inspection.sources.get(at) else { continue };
        if source.readings.identity_id(Identity::Spot, row).is_some() {
            let text = |identity| source.readings.identity(identity, row).unwrap_or("").to_owned();
            let spot = [Identity::Unit, Identity::Id, Identity::Spot].map(text);
            groups.entry(spot).or_default().push((at, row));
        }
    }
    if groups.len() < 2 {
        return Vec::new();
    }
    let of_element = |element| {
        let repeats: Vec<Vec<Repeat>> = groups
            .values()
            .map(|places| {
                places.iter().filter_map(|(at, row)| reviewers.get(*at)?.repeat(element, *row)).collect()
            })
            .collect();
        Some((element, pool::spots(&repeats)?))
    };
    JUDGED.into_iter().filter_map(of_element).collect()
}

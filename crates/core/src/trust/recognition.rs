//! Which readings are checks: by the list of names, by certificate, by a person's mark.

use std::collections::{BTreeMap, BTreeSet};

use super::CheckKind;
use crate::acts::Settings;
use crate::certificate::Certificate;
use crate::identity::Identity;
use crate::reading::Source;

/// What a reading is taken as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taken {
    /// Product.
    Product,
    /// A check reading: no product, in no material.
    Check(CheckKind),
    /// Product, although a person marked it as a check: it belongs to a lot or a part, or it is over limit and no certificate
    /// names its sample. A mark must not take away what a lot has to answer for.
    MarkNotTaken,
}

/// The names and marks of an inspection.
pub struct Names<'a> {
    by_name: BTreeMap<&'a str, CheckKind>,
    certified: BTreeSet<&'a str>,
    /// By source, then by line; `None` is a mark as product.
    marks: BTreeMap<&'a str, BTreeMap<u32, Option<CheckKind>>>,
}

impl<'a> Names<'a> {
    /// Gathers what settings and certificates name. A name that is listed as a blank is one, whatever else it is.
    pub fn new(settings: &'a Settings, certificates: &'a [Certificate]) -> Names<'a> {
        let standards = settings.check_samples.iter().map(String::as_str);
        let certified: BTreeSet<&str> = certificates.iter().map(|one| one.sample.as_str()).collect();
        let mut by_name: BTreeMap<&str, CheckKind> =
            standards.chain(certified.iter().copied()).map(|name| (name, CheckKind::Standard)).collect();
        by_name.extend(settings.blank_samples.iter().map(|name| (name.as_str(), CheckKind::Blank)));
        let mut marks: BTreeMap<&str, BTreeMap<u32, Option<CheckKind>>> = BTreeMap::new();
        for (source, line, mark) in settings.marks() {
            let kind = CheckKind::ALL.iter().copied().find(|kind| kind.code() == mark);
            marks.entry(source).or_default().insert(line, kind);
        }
        Names { by_name, certified, marks }
    }

    /// The names and marks as they concern one source.
    pub fn of_source<'n>(&'n self, source: &'n Source) -> NamesOf<'n> {
        NamesOf { names: self, marks: self.marks.get(source.name.as_str()), source }
    }
}

/// The names and marks that concern one source.
pub struct NamesOf<'n> {
    names: &'n Names<'n>,
    marks: Option<&'n BTreeMap<u32, Option<CheckKind>>>,
    source: &'n Source,
}

impl NamesOf<'_> {
    /// What a reading is taken as. One that belongs to a lot or a part is product all the same: naming its sample must not
    /// take a lot's reading away, also where the file states no lots. `is_over`: it is over some limit.
    pub fn taken(&self, row: usize, is_over: impl FnOnce() -> bool) -> Taken {
        if self.names.by_name.is_empty() && self.marks.is_none() {
            return Taken::Product;
        }
        let readings = &self.source.readings;
        let belongs = [Identity::Lot, Identity::Part]
            .iter()
            .any(|identity| readings.identity_id(*identity, row).is_some());
        match self.marks.and_then(|marks| marks.get(&readings.line(row))) {
            Some(None) => Taken::Product,
            Some(Some(_)) if belongs || (!self.is_certified(row) && is_over()) => Taken::MarkNotTaken,
            Some(Some(kind)) => Taken::Check(*kind),
            None if belongs => Taken::Product,
            None => readings
                .identity(Identity::Id, row)
                .and_then(|name| self.names.by_name.get(name))
                .map_or(Taken::Product, |kind| Taken::Check(*kind)),
        }
    }

    fn is_certified(&self, row: usize) -> bool {
        let name = self.source.readings.identity(Identity::Id, row);
        name.is_some_and(|name| self.names.certified.contains(name))
    }
}

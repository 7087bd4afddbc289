//! Which readings are checks: by the list of names, by certificate, by a person's mark.

use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

use super::CheckKind;
use crate::acts::{Settings, folded_name};
use crate::certificate::Certificate;
use crate::identity::Identity;
use crate::outcome::Outcome;
use crate::reading::Source;

/// What a reading is taken as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taken {
    /// Product.
    Product,
    /// A check reading: no product, in no material.
    Check(CheckKind),
    /// A check standard by name or mark alone: undecided, certified by nothing, and beside product that states neither lot
    /// nor part, of which it may be.
    CheckByNameAlone,
    /// Product, although a person named or marked it as a check: a marked one that belongs to a lot or a part, or one that is
    /// over limit and that no certificate names. Neither a name nor a mark must take away what a lot has to answer for.
    MarkNotTaken,
}

/// The names, however they are spelled, and marks of an inspection.
pub struct Names<'a> {
    by_name: BTreeMap<String, CheckKind>,
    certified: BTreeSet<String>,
    /// By source, then by line; `None` is a mark as product.
    marks: BTreeMap<&'a str, BTreeMap<u32, Option<CheckKind>>>,
}

impl<'a> Names<'a> {
    /// Gathers what settings and certificates name. A name that is listed as a blank is one, whatever else it is.
    pub fn new(settings: &'a Settings, certificates: &[Certificate]) -> Names<'a> {
        let standards = settings.check_samples.iter().map(|name| folded_name(name));
        let certified: BTreeSet<String> = certificates.iter().map(|one| folded_name(&one.sample)).collect();
        let mut by_name: BTreeMap<String, CheckKind> =
            standards.chain(certified.iter().cloned()).map(|name| (name, CheckKind::Standard)).collect();
        by_name.extend(settings.blank_samples.iter().map(|name| (folded_name(name), CheckKind::Blank)));
        let mut marks: BTreeMap<&str, BTreeMap<u32, Option<CheckKind>>> = BTreeMap::new();
        for (source, line, mark) in settings.marks() {
            let kind = CheckKind::ALL.iter().copied().find(|kind| kind.code() == mark);
            marks.entry(source).or_default().insert(line, kind);
        }
        Names { by_name, certified, marks }
    }

    /// The names and marks as they concern one source.
    pub fn of_source<'n>(&'n self, source: &'n Source) -> NamesOf<'n> {
        NamesOf { names: self, marks: self.marks.get(source.name.as_str()), source, apart: OnceCell::new() }
    }
}

/// The names and marks that concern one source.
pub struct NamesOf<'n> {
    names: &'n Names<'n>,
    marks: Option<&'n BTreeMap<u32, Option<CheckKind>>>,
    source: &'n Source,
    apart: OnceCell<bool>,
}

impl NamesOf<'_> {
    /// What a reading is taken as. One that belongs to a lot or a part is product all the same: naming its sample must not
    /// take a lot's reading away, also where the file states no lots. `worst`: over if it is over some limit, undecided if
    /// it is that.
    ///
    /// # Decision
    /// Without a certificate nothing shows that a sample is a check. Over limit, a marked reading then stays product, and so
    /// does a named one in a file with other product that states neither lot nor part: there it may be product of the same
    /// lot. An undecided one is a check, told apart. A blank in which something was found fails as a blank.
    ///
    /// One person's mark as product does not take away a failed check: a sample that a certificate or the list of blanks
    /// names stays a check until it is taken out there.
    pub fn taken(&self, row: usize, worst: impl FnOnce() -> Outcome) -> Taken {
        if self.names.by_name.is_empty() && self.marks.is_none() {
            return Taken::Product;
        }
        let mark = self.mark(row);
        let belongs = self.belongs(row);
        let kind = match mark {
            Some(None) if belongs || !self.is_held_as_check(row) => return Taken::Product,
            Some(None) => CheckKind::Standard,
            Some(Some(_)) if belongs => return Taken::MarkNotTaken,
            Some(Some(kind)) => *kind,
            None if belongs => return Taken::Product,
            None => match self.named(row) {
                None => return Taken::Product,
                Some(kind) => kind,
            },
        };
        if let (Some(None), Some(named)) = (mark, self.named(row)) {
            return Taken::Check(named);
        }
        if self.is_certified(row) {
            return Taken::Check(kind);
        }
        match (worst(), kind, mark) {
            (Outcome::Over, _, Some(_)) => Taken::MarkNotTaken,
            (Outcome::Over, CheckKind::Standard, _) if !self.tells_apart() => Taken::MarkNotTaken,
            (Outcome::Undecided, CheckKind::Standard, _) if !self.tells_apart() => Taken::CheckByNameAlone,
            _ => Taken::Check(kind),
        }
    }

    fn is_held_as_check(&self, row: usize) -> bool {
        self.is_certified(row) || self.named(row) == Some(CheckKind::Blank)
    }

    /// What a person marked it as; `Some(None)` is product.
    fn mark(&self, row: usize) -> Option<&Option<CheckKind>> {
        self.marks.and_then(|marks| marks.get(&self.source.readings.line(row)))
    }

    fn named(&self, row: usize) -> Option<CheckKind> {
        let name = self.source.readings.identity(Identity::Id, row)?;
        self.names.by_name.get(&folded_name(name)).copied()
    }

    fn belongs(&self, row: usize) -> bool {
        let readings = &self.source.readings;
        [Identity::Lot, Identity::Part].iter().any(|identity| readings.identity_id(*identity, row).is_some())
    }

    /// True where every reading that nobody calls a check states its lot or its part.
    fn tells_apart(&self) -> bool {
        let is_loose = |row: usize| {
            !self.belongs(row) && self.mark(row).copied().unwrap_or_else(|| self.named(row)).is_none()
        };
        *self.apart.get_or_init(|| !(0..self.source.readings.len()).any(is_loose))
    }

    fn is_certified(&self, row: usize) -> bool {
        let name = self.source.readings.identity(Identity::Id, row);
        name.is_some_and(|name| self.names.certified.contains(&folded_name(name)))
    }
}

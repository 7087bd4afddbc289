//! Class words, looked at when a source has ended.

use plumbline_core::column::{ColumnRole, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::material::MaterialClass;
use plumbline_core::reading::{Notice, NoticeCode};

use crate::table::{Table, cut};

impl Table {
    /// A material column that holds only class words is the class.
    pub(crate) fn material_or_class(&mut self) {
        let readings = &self.source.readings;
        let any_class = (0..readings.len()).any(|row| readings.identity_id(Identity::Class, row).is_some());
        let mut names =
            (0..readings.len()).filter_map(|row| readings.identity(Identity::Material, row)).peekable();
        if any_class || names.peek().is_none() {
            return;
        }
        let mut last = ("", false);
        let only_classes = names.all(|name| {
            if name != last.0 {
                last = (name, MaterialClass::from_word(name).is_some());
            }
            last.1
        });
        if only_classes {
            self.source.readings.material_is_class();
            for column in self.source.blocks.iter_mut().flat_map(|block| &mut block.columns) {
                if column.role == ColumnRole::Identity(Identity::Material) {
                    column.role = ColumnRole::Identity(Identity::Class);
                    column.evidence = Evidence::ClassWordsOnly;
                }
            }
        }
    }

    /// Says once for every class word that is none.
    pub(crate) fn class_words(&mut self) {
        let mut counted: std::collections::BTreeMap<_, (u32, u64)> = std::collections::BTreeMap::new();
        let readings = &self.source.readings;
        for row in 0..readings.len() {
            let id = readings.identity_id(Identity::Class, row);
            if id.is_some() {
                counted.entry(id).or_insert((readings.line(row), 0)).1 += 1;
            }
        }
        let column = self.source.blocks.last().and_then(|block| {
            block.columns.iter().find(|column| column.role == ColumnRole::Identity(Identity::Class))
        });
        let (column, heading) =
            column.map_or((0, String::new()), |column| (column.column, column.heading.clone()));
        for (id, (line, rows)) in counted {
            let word = self.source.readings.pool.get(id).unwrap_or("");
            if MaterialClass::from_word(word).is_none() {
                self.source.notices.push(Notice {
                    line,
                    column,
                    heading: heading.clone(),
                    code: NoticeCode::ClassNotUnderstood,
                    found: cut(word),
                    rows,
                });
            }
        }
    }
}

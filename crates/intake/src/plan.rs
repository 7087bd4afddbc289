//! What to read from the rows of one block: the roles of its columns, turned into places.

use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::date_order::DateOrder;
use plumbline_core::identity::Identity;
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::reading::{Layout, NoticeCode, Readings};
use plumbline_core::substance::Element;
use plumbline_core::text_pool::TextId;

use crate::cell::Marks;
use crate::heading;

/// Places of a block's cells and what to take them for.
pub(crate) struct Plan {
    pub(crate) layout: Layout,
    pub(crate) elements: Vec<CellPlan>,
    /// The cells of a long table's row, whose element the row names.
    pub(crate) row_element: Option<RowElement>,
    pub(crate) identities: Vec<(usize, Identity)>,
    /// Columns that name the sample under one and the same heading: more than one where tables stand side by side.
    pub(crate) samples: Vec<usize>,
    pub(crate) time: Option<TimePlan>,
    pub(crate) unit_column: Option<usize>,
    /// Where the row states the multiple of its uncertainties.
    pub(crate) multiple_column: Option<usize>,
    /// The multiple the block's uncertainties are kept in, where rows state their own.
    pub(crate) block_multiple: Option<SigmaMultiple>,
    /// A heading further down was not understood: what the rows below it mean is open.
    pub(crate) closed: bool,
    pub(crate) mark: Marks,
    pub(crate) columns: usize,
    /// Once-a-block notices: code, its place in `Source::notices`, the last line that was counted.
    pub(crate) counted: Vec<(NoticeCode, usize, u32)>,
}

/// Where a row of a long table names its element.
#[derive(Clone, Copy)]
pub(crate) struct RowElement {
    pub(crate) name: usize,
    pub(crate) below_mark: Option<usize>,
}

/// Where a reading's date stands and how it is written.
#[derive(Clone, Copy)]
pub(crate) struct TimePlan {
    pub(crate) date: usize,
    pub(crate) clock: Option<usize>,
    pub(crate) order: Option<DateOrder>,
    /// Numbers are day counts of a spreadsheet.
    pub(crate) serials: bool,
}

/// One element's cells in a row.
#[derive(Clone)]
pub(crate) struct CellPlan {
    pub(crate) element: Element,
    pub(crate) index: usize,
    pub(crate) value: usize,
    pub(crate) oxide: Option<Oxide>,
    pub(crate) unit: Option<Unit>,
    /// The heading states a unit that is not known: no other source of a unit may stand in for it.
    pub(crate) unit_foreign: bool,
    /// The text kept last for this column: `<LOD` mostly follows `<LOD`.
    pub(crate) last_kept: TextId,
    pub(crate) error: Option<ErrorPlan>,
    pub(crate) limit: Option<(usize, Option<Unit>)>,
    /// Other columns that claim to be this element's value.
    pub(crate) rivals: Vec<usize>,
    /// The element stated as an oxide, used where the element's own cell is empty.
    pub(crate) as_oxide: Option<Box<CellPlan>>,
}

/// Where an uncertainty stands and how it is stated.
#[derive(Clone, Copy)]
pub(crate) struct ErrorPlan {
    pub(crate) at: usize,
    pub(crate) kind: ErrorKind,
}

impl Default for Plan {
    fn default() -> Plan {
        Plan {
            layout: Layout::Wide,
            elements: Vec::new(),
            row_element: None,
            identities: Vec::new(),
            samples: Vec::new(),
            time: None,
            unit_column: None,
            multiple_column: None,
            block_multiple: None,
            closed: false,
            mark: Marks { decimal: None, told: false },
            columns: 0,
            counted: Vec::new(),
        }
    }
}

fn place(column: &ColumnMeaning) -> usize {
    (column.column as usize).saturating_sub(1)
}

impl Plan {
    /// Plans a block with these columns; columns of elements are made in the store.
    pub(crate) fn new(columns: &[ColumnMeaning], layout: Layout, readings: &mut Readings) -> Plan {
        let first = |wanted: &dyn Fn(&ColumnRole) -> bool| {
            columns.iter().find(|column| wanted(&column.role)).map(place)
        };
        let mut plan = Plan { layout, columns: columns.len(), ..Plan::default() };
        let is_id = |column: &&ColumnMeaning| column.role == ColumnRole::Identity(Identity::Id);
        if let Some(id) = columns.iter().find(is_id) {
            let heading = id.heading.trim();
            let again = columns.iter().filter(|other| {
                other.evidence == Evidence::AlreadyTaken && other.heading.trim().eq_ignore_ascii_case(heading)
            });
            plan.samples = [place(id)].into_iter().chain(again.map(place)).collect();
        }
        plan.unit_column = first(&|role| *role == ColumnRole::UnitOfMeasure);
        plan.multiple_column = first(&|role| *role == ColumnRole::ErrorMultiple);
        for column in columns {
            match &column.role {
                ColumnRole::Identity(Identity::Time) => {
                    let clock = first(&|role| *role == ColumnRole::TimeOfDay);
                    plan.time = Some(TimePlan { date: place(column), clock, order: None, serials: false });
                }
                ColumnRole::Identity(identity) => plan.identities.push((place(column), *identity)),
                _ => {}
            }
        }
        if plan.time.is_none()
            && let Some(clock) = first(&|role| *role == ColumnRole::TimeOfDay)
        {
            plan.identities.push((clock, Identity::Time));
        }
        if layout == Layout::Long {
            plan.row_element = first(&|role| *role == ColumnRole::ElementName)
                .map(|name| RowElement { name, below_mark: first(&|role| *role == ColumnRole::BelowMark) });
            let any = columns.iter().find_map(|column| match column.role {
                ColumnRole::AnyValue { unit } => Some((column, unit)),
                _ => None,
            });
            if let Some((column, unit)) = any {
                plan.elements.push(CellPlan {
                    // The row names the element.
                    element: Element::PB,
                    index: 0,
                    value: place(column),
                    oxide: None,
                    unit,
                    unit_foreign: column.evidence == Evidence::UnitNotUnderstood,
                    last_kept: TextId::NONE,
                    error: columns.iter().find_map(|other| match other.role {
                        ColumnRole::AnyError { error } => Some(ErrorPlan { at: place(other), kind: error }),
                        _ => None,
                    }),
                    limit: columns.iter().find_map(|other| match other.role {
                        ColumnRole::AnyLimit { unit } => Some((place(other), unit)),
                        _ => None,
                    }),
                    // Other columns that may hold the value: what is a verdict or a remark there is no rival.
                    rivals: columns
                        .iter()
                        .filter(|other| {
                            other.evidence == Evidence::AlreadyTaken && heading::says_a_value(&other.heading)
                        })
                        .map(place)
                        .collect(),
                    as_oxide: None,
                });
            }
            return plan;
        }
        plan.element_columns(columns);
        // A column made in front of another moves it: places are looked up when all are made.
        for planned in &plan.elements {
            readings.element_index(planned.element);
        }
        for planned in &mut plan.elements {
            planned.index = readings.element_index(planned.element);
            if let Some(oxide) = &mut planned.as_oxide {
                oxide.index = planned.index;
            }
        }
        plan
    }

    fn element_columns(&mut self, columns: &[ColumnMeaning]) {
        for column in columns {
            let ColumnRole::Value { element, oxide, unit } = column.role else { continue };
            let planned = CellPlan {
                element,
                index: 0,
                value: place(column),
                oxide,
                unit,
                unit_foreign: column.evidence == Evidence::UnitNotUnderstood,
                last_kept: TextId::NONE,
                error: columns.iter().find_map(|other| match other.role {
                    ColumnRole::Error { element: of, oxide: as_oxide, error }
                        if of == element && as_oxide == oxide =>
                    {
                        Some(ErrorPlan { at: place(other), kind: error })
                    }
                    _ => None,
                }),
                limit: columns.iter().find_map(|other| match other.role {
                    ColumnRole::DetectionLimit { element: of, oxide: as_oxide, unit }
                        if of == element && as_oxide == oxide =>
                    {
                        Some((place(other), unit))
                    }
                    _ => None,
                }),
                rivals: columns
                    .iter()
                    .filter(|other| {
                        other.column != column.column
                            && other.evidence == Evidence::AlreadyTaken
                            && heading::value_element(&other.heading) == Some(element)
                    })
                    .map(place)
                    .collect(),
                as_oxide: None,
            };
            let known = self.elements.iter_mut().find(|known| known.element == element);
            match known {
                None => self.elements.push(planned),
                // Two of the same kind, which only a person can have said: neither is known to be the one.
                Some(known) if known.oxide.is_some() == oxide.is_some() => known.rivals.push(planned.value),
                Some(known) if known.oxide.is_none() => known.as_oxide = Some(Box::new(planned)),
                Some(known) => {
                    let as_oxide = std::mem::replace(known, planned);
                    known.as_oxide = Some(Box::new(as_oxide));
                }
            }
        }
    }
}

//! What names a reading: sample, part, lot, supplier, time and the like.

/// Identity columns a reading may carry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum Identity {
    /// Sample or reading id.
    Id,
    /// The physical unit (piece) that was measured.
    Unit,
    /// Spot on the unit.
    Spot,
    /// Part number.
    Part,
    /// Name of the homogeneous material.
    Material,
    /// Lot, batch or delivery.
    Lot,
    /// Supplier.
    Supplier,
    /// Material class, as the file words it.
    Class,
    /// Date and time, as the file words it.
    Time,
    /// Measuring time in seconds, as the file words it.
    Seconds,
    /// Instrument.
    Instrument,
    /// Measuring mode or calibration.
    Mode,
    /// Operator.
    Operator,
    /// Thickness in millimetres, as the file words it.
    Thickness,
    /// Remark.
    Note,
    /// The spectrum, filter or beam a row of partial results comes from.
    Spectrum,
    /// Name of a photograph.
    Photo,
}

impl Identity {
    /// All identity columns in store order.
    pub const ALL: [Identity; Identity::COUNT] = [
        Identity::Id,
        Identity::Unit,
        Identity::Spot,
        Identity::Part,
        Identity::Material,
        Identity::Lot,
        Identity::Supplier,
        Identity::Class,
        Identity::Time,
        Identity::Seconds,
        Identity::Instrument,
        Identity::Mode,
        Identity::Operator,
        Identity::Thickness,
        Identity::Note,
        Identity::Spectrum,
        Identity::Photo,
    ];

    /// How many there are.
    pub const COUNT: usize = 17;

    /// The code used in mappings.
    pub const fn code(self) -> &'static str {
        match self {
            Identity::Id => "id",
            Identity::Unit => "unit",
            Identity::Spot => "spot",
            Identity::Part => "part",
            Identity::Material => "material",
            Identity::Lot => "lot",
            Identity::Supplier => "supplier",
            Identity::Class => "class",
            Identity::Time => "time",
            Identity::Seconds => "seconds",
            Identity::Instrument => "instrument",
            Identity::Mode => "mode",
            Identity::Operator => "operator",
            Identity::Thickness => "thickness",
            Identity::Note => "note",
            Identity::Spectrum => "spectrum",
            Identity::Photo => "photo",
        }
    }

    /// The identity column of a code.
    pub fn from_code(code: &str) -> Option<Identity> {
        Identity::ALL.into_iter().find(|identity| identity.code() == code)
    }
}

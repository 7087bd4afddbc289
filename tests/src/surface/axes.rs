//! In what ways one table may be written, and which of them go together.

use super::amounts::Unit;
use super::words::Language;

macro_rules! axis {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident => $text:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name { $($(#[$variant_doc])* $variant,)* }
        impl $name {
            /// All of them.
            pub const ALL: &'static [$name] = &[$($name::$variant,)*];
            /// Its name in the name of a form.
            pub const fn name(self) -> &'static str { match self { $($name::$variant => $text,)* } }
        }
    };
}
pub(super) use axis;

axis! {
    /// How characters become bytes.
    Encoding {
        /// UTF-8.
        Utf8 => "utf-8",
        /// UTF-8 behind a byte order mark.
        Utf8Marked => "utf-8 marked",
        /// UTF-16, low byte first.
        Utf16Le => "utf-16le",
        /// The same behind a byte order mark.
        Utf16LeMarked => "utf-16le marked",
        /// UTF-16, high byte first.
        Utf16Be => "utf-16be",
        /// The same behind a byte order mark.
        Utf16BeMarked => "utf-16be marked",
        /// Windows-1252.
        Windows1252 => "windows-1252",
        /// Japanese, as Windows writes it.
        ShiftJis => "shift_jis",
        /// GB 18030.
        Gb18030 => "gb18030",
        /// Big5.
        Big5 => "big5",
        /// EUC-KR.
        EucKr => "euc-kr",
    }
}

axis! {
    /// What stands between cells.
    Delimiter {
        /// `,`
        Comma => "comma",
        /// `;`
        Semicolon => "semicolon",
        /// A tab.
        Tab => "tab",
        /// `|`
        Pipe => "pipe",
    }
}

axis! {
    /// What stands before decimals.
    Mark {
        /// `.`
        Point => "0.5",
        /// `,`
        Comma => "0,5",
    }
}

axis! {
    /// What parts thousands.
    Thousands {
        /// Nothing.
        None => "1000",
        /// A space.
        Space => "1 000",
        /// A thin space.
        ThinSpace => "1-thin-000",
        /// A space that does not break.
        NoBreakSpace => "1-nbsp-000",
        /// An apostrophe.
        Apostrophe => "1'000",
        /// A comma beside decimal points, a point beside decimal commas.
        OtherMark => "1-mark-000",
    }
}

axis! {
    /// What ends lines.
    LineEnd {
        /// LF.
        Lf => "lf",
        /// CR LF.
        CrLf => "crlf",
        /// CR.
        Cr => "cr",
    }
}

axis! {
    /// How readings lie in rows.
    Layout {
        /// A row a reading.
        Wide => "wide",
        /// A row an element.
        Long => "long",
        /// A column a reading.
        Turned => "turned",
        /// A row a spectrum, two spectra a reading.
        Joined => "joined",
    }
}

axis! {
    /// Where the unit stands.
    UnitPlace {
        /// Beside the element.
        Heading => "unit in heading",
        /// In a row below the headings.
        Row => "unit row",
        /// In a column of its own.
        Column => "unit column",
        /// Behind every number.
        Suffix => "unit in cell",
    }
}

axis! {
    /// How a unit stands beside a heading.
    Brackets {
        /// `Pb mg/kg`
        None => "bare",
        /// `Pb (mg/kg)`
        Round => "round",
        /// `Pb [mg/kg]`
        Square => "square",
    }
}

axis! {
    /// How many sigmas the printed errors are.
    Factor {
        /// `1s`
        One => "1s",
        /// `2s`
        Two => "2s",
        /// `3s`
        Three => "3s",
        /// `k=2`
        K2 => "k=2",
        /// `95 %`
        Percent95 => "95 %",
    }
}

impl Factor {
    /// In hundredths. 95 % of a normal distribution lie within 1.96 standard uncertainties (JCGM 100:2008, G.1.3).
    pub const fn hundredths(self) -> i64 {
        match self {
            Factor::One => 100,
            Factor::Two | Factor::K2 => 200,
            Factor::Three => 300,
            Factor::Percent95 => 196,
        }
    }
}

axis! {
    /// Where the factor stands.
    FactorPlace {
        /// Beside the word for the error.
        Heading => "factor in heading",
        /// In a line above the table.
        LineAbove => "factor above",
        /// In a column of its own.
        Column => "factor column",
    }
}

axis! {
    /// Where errors stand.
    ErrorPlace {
        /// In columns that name their element.
        Named => "named error",
        /// In columns headed by a sign only, each right of its element.
        Bare => "bare error",
        /// In the value's cell, behind `±`.
        InCell => "a ± b",
    }
}

axis! {
    /// What errors are of.
    ErrorKind {
        /// In the value's unit.
        Absolute => "absolute",
        /// Percent of the value.
        Relative => "relative",
    }
}

axis! {
    /// What elements are called.
    Naming {
        /// `Pb`
        Symbol => "Pb",
        /// `Lead`
        English => "English",
        /// `Blei`
        German => "German",
        /// `Plomb`
        French => "French",
        /// `Plomo`
        Spanish => "Spanish",
        /// Simplified characters.
        Chinese => "Chinese",
        /// Traditional characters.
        Taiwanese => "Chinese, traditional",
        /// Japanese.
        Japanese => "Japanese",
        /// `pb`
        LowerCase => "pb",
        /// `Pb La`
        Line => "Pb La",
        /// `PbO`, for those that have one.
        Oxide => "PbO",
    }
}

impl Naming {
    /// The language of all headings.
    pub const fn language(self) -> Language {
        match self {
            Naming::German => Language::German,
            Naming::French => Language::French,
            Naming::Spanish => Language::Spanish,
            Naming::Chinese => Language::Chinese,
            Naming::Taiwanese => Language::Taiwanese,
            Naming::Japanese => Language::Japanese,
            _ => Language::English,
        }
    }
}

axis! {
    /// What stands above the table.
    Preamble {
        /// Nothing.
        None => "no preamble",
        /// `Key: value` lines.
        Colon => "key: value",
        /// Key and value in two cells.
        Cells => "key|value",
    }
}

axis! {
    /// In what the table is handed over.
    Container {
        /// A text file.
        Plain => "text",
        /// A text file in an archive.
        Zip => "zip",
        /// A workbook whose numbers are numbers.
        XlsxNumbers => "xlsx",
        /// A workbook of texts only.
        XlsxTexts => "xlsx of texts",
        /// An open document whose numbers are numbers.
        OdsNumbers => "ods",
        /// An open document of texts only.
        OdsTexts => "ods of texts",
    }
}

impl Container {
    /// A workbook of either kind.
    pub const fn is_workbook(self) -> bool {
        !matches!(self, Container::Plain | Container::Zip)
    }

    /// A workbook whose cells hold numbers.
    pub const fn holds_numbers(self) -> bool {
        matches!(self, Container::XlsxNumbers | Container::OdsNumbers)
    }
}

axis! {
    /// How "below 5" is written.
    Below {
        /// `< 5`
        Sign => "< 5",
        /// `<5`
        SignClose => "<5",
        /// `LOD: 5`
        Word => "LOD: 5",
        /// `<LOD`, and the limit in a column of its own.
        LimitColumn => "limit column",
        /// `<LOD`, and the limit in the error column.
        InError => "limit in error",
    }
}

axis! {
    /// How "not detected" is written, without a limit anywhere.
    Missing {
        /// `n.d.`
        Nd => "n.d.",
        /// `BDL`
        Bdl => "BDL",
        /// `<LOD`
        LessLod => "<LOD",
        /// The language's own word.
        Own => "own word",
    }
}

axis! {
    /// How nothing at all is written.
    Blank {
        /// An empty cell.
        Empty => "empty",
        /// `-`
        Dash => "dash",
    }
}

axis! {
    /// How the moment of measuring is written.
    Moment {
        /// `2026-03-14T08:05:00`
        Iso => "iso",
        /// `2026-03-14 08:05:00`
        IsoSpace => "iso with space",
        /// `14.03.2026 08:05:00`
        DayFirst => "d.m.y",
        /// `03/14/2026 08:05:00`
        MonthFirst => "m/d/y",
        /// Date and time in two columns.
        TwoColumns => "date and time",
        /// A date cell of a workbook.
        DateCell => "date cell",
    }
}

macro_rules! form {
    ($($(#[$doc:meta])* $field:ident: $axis:ident,)*) => {
        /// One way to write the table.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub struct Form {
            $($(#[$doc])* pub $field: $axis,)*
        }

        impl Form {
            /// How many values each axis has.
            pub const SIZES: &'static [usize] = &[$($axis::ALL.len(),)*];

            /// The form of one choice for each axis.
            pub fn of(choices: &[u8]) -> Form {
                let mut choices = choices.iter().map(|choice| usize::from(*choice));
                Form { $($field: $axis::ALL[choices.next().expect("a choice for each axis")],)* }
            }

            /// The values it has, by name.
            pub fn name(&self) -> String {
                [$(self.$field.name(),)*].join(" / ")
            }
        }
    };
}

form! {
    /// Container.
    container: Container,
    /// Encoding.
    encoding: Encoding,
    /// Layout.
    layout: Layout,
    /// Naming of elements.
    naming: Naming,
    /// Unit.
    unit: Unit,
    /// Where the unit stands.
    unit_place: UnitPlace,
    /// Brackets around it.
    brackets: Brackets,
    /// Delimiter.
    delimiter: Delimiter,
    /// Decimal mark.
    mark: Mark,
    /// Thousands mark.
    thousands: Thousands,
    /// Line ends.
    line_end: LineEnd,
    /// Factor of errors.
    factor: Factor,
    /// Where it stands.
    factor_place: FactorPlace,
    /// Where errors stand.
    error_place: ErrorPlace,
    /// Absolute or relative.
    error_kind: ErrorKind,
    /// Lines above the table.
    preamble: Preamble,
    /// Below a limit.
    below: Below,
    /// Not detected.
    missing: Missing,
    /// Blank.
    blank: Blank,
    /// Moments.
    moment: Moment,
}

impl Form {
    /// True where nobody could read the form in two ways, and somebody would write it.
    pub fn goes_together(&self) -> bool {
        self.container_fits()
            && self.numbers_are_clear()
            && self.errors_fit()
            && self.layout_fits()
            && self.encodes()
    }

    fn container_fits(&self) -> bool {
        let date_cell = self.moment == Moment::DateCell;
        if !self.container.is_workbook() {
            return !date_cell;
        }
        // Cells and sheets have no bytes between them.
        let no_text_file = self.encoding == Encoding::Utf8
            && self.delimiter == Delimiter::Comma
            && self.line_end == LineEnd::Lf;
        let numbers = self.mark == Mark::Point
            && self.thousands == Thousands::None
            && self.unit_place != UnitPlace::Suffix
            && self.error_place != ErrorPlace::InCell;
        no_text_file && if self.container.holds_numbers() { numbers } else { !date_cell }
    }

    fn numbers_are_clear(&self) -> bool {
        // `640,000` alone may be one thing or a thousand times as much.
        !(self.thousands == Thousands::OtherMark && self.unit == Unit::Ppb)
    }

    fn errors_fit(&self) -> bool {
        let in_cell = self.error_place == ErrorPlace::InCell;
        let relative = self.error_kind == ErrorKind::Relative;
        match self.factor_place {
            FactorPlace::Heading if in_cell => return false,
            FactorPlace::LineAbove if self.preamble == Preamble::None => return false,
            FactorPlace::Column if self.layout != Layout::Long || self.factor == Factor::Percent95 => {
                return false;
            }
            _ => {}
        }
        // `640 ± 2.5 %` may be percent of the whole.
        !(in_cell && (relative || self.below == Below::InError))
            && !(relative && self.below == Below::InError)
    }

    fn layout_fits(&self) -> bool {
        let (turned, long) = (self.layout == Layout::Turned, self.layout == Layout::Long);
        let bare = self.error_place == ErrorPlace::Bare;
        if (turned || long) && (self.unit_place == UnitPlace::Row || bare) {
            return false;
        }
        // One unit column cannot speak of errors in percent and values in mg/kg; in a turned table it speaks by row.
        let own_word = self.missing != Missing::Own
            || !matches!(
                self.naming,
                Naming::Symbol | Naming::LowerCase | Naming::Line | Naming::Oxide | Naming::English
            );
        // Without a unit beside it there are no brackets around it.
        own_word && (self.unit_place == UnitPlace::Heading || self.brackets == Brackets::None)
    }
}

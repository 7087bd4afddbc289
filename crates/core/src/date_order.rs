//! In which order the numbers of a written date stand.

/// The order of year, month and day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DateOrder {
    /// 2026-11-25, as ISO 8601 writes it.
    YearMonthDay,
    /// 25.11.2026.
    DayMonthYear,
    /// 11/25/2026.
    MonthDayYear,
}

impl DateOrder {
    /// All of them.
    pub const ALL: [DateOrder; 3] =
        [DateOrder::YearMonthDay, DateOrder::DayMonthYear, DateOrder::MonthDayYear];

    /// The code used in acts, settings files and findings.
    pub const fn code(self) -> &'static str {
        match self {
            DateOrder::YearMonthDay => "ymd",
            DateOrder::DayMonthYear => "dmy",
            DateOrder::MonthDayYear => "mdy",
        }
    }

    /// The order of a code.
    pub fn from_code(code: &str) -> Option<DateOrder> {
        DateOrder::ALL.into_iter().find(|order| order.code() == code)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_order_has_a_code_of_its_own_that_leads_back() {
        for order in DateOrder::ALL {
            assert_eq!(DateOrder::from_code(order.code()), Some(order));
        }
        assert_eq!(DateOrder::from_code("ydm"), None);
        assert_eq!(DateOrder::from_code("DMY"), None, "codes are lower case");
    }
}

# Rule books and limits: what they say and how they are explained.

## Why a limit is open, or does not apply

reason-class_not_covered = The limit does not speak of this class of material.
reason-outside_validity = The limit does not hold on the day of placing on the market.
reason-placing_date_not_stated = The limit holds for certain days of placing on the market, and that day is not stated.
reason-question_open = Over the limit if it applies; whether it applies, a person has to answer.
reason-source_not_seen = At or above the limit. It counts the element only from certain sources, and X-rays do not show where it comes from.
reason-mixed_materials = Below the limit in several materials together: one of them may be above it.

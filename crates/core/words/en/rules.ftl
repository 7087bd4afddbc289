# Rule books and limits: what they say and how they are explained.

## Reasons of a disposition

lot-reason-limit_over = Over the limit "{ $about }" in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Quarantine the lot. Send the worst sample to a laboratory by the reference method; only its result can change this.
lot-reason-limit_open = Open under the limit "{ $about }" in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = See the limit's own words: a longer measurement, a separated material, the placing date, a laboratory, or the answer to its question.
lot-reason-book_not_loaded = The inspection names the rule book "{ $about }", which is not there, or another one stands in for what it holds.
    .remedy = Give the rule book file, name one that is there, or take out the one that stands in its place.
lot-reason-book_differs = The inspection names the rule book "{ $about }" by its digest, and the book of that id here is another file.
    .remedy = Give the file that was meant, or name the book that is here after looking at what changed.
summary-limit_over = over the limit { $about } in { $count }
summary-limit_open = open under the limit { $about } in { $count }
evidence-short-book_not_loaded = a named rule book
evidence-short-book_differs = the rule book that was meant
act-books = rule books: { $value }

## Why a limit is open, or does not apply

reason-class_not_covered = The limit does not speak of this class of material.
reason-outside_validity = The limit does not hold on the day of placing on the market.
reason-placing_date_not_stated = The limit holds for certain days of placing on the market, and that day is not stated.
reason-question_open = Over the limit if it applies; whether it applies, a person has to answer.
reason-source_not_seen = At or above the limit. It counts the element only from certain sources, and X-rays do not show where it comes from.
reason-mixed_materials = Below the limit in several materials together: one of them may be above it.

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
lot-reason-book_not_in_use = The rule book "{ $about }" does not hold on the day that counts (placing on the market, else the review), or that day is not stated.
    .remedy = Give the rule book that holds on that day, or state the day of placing on the market.
lot-reason-book_differs = The inspection names the rule book "{ $about }" by its digest, and the book of that id here is another file.
    .remedy = Give the file that was meant, or name the book that is here after looking at what changed.
summary-limit_over = over the limit { $about } in { $count }
summary-limit_open = open under the limit { $about } in { $count }
evidence-short-book_not_loaded = a named rule book
evidence-short-book_not_in_use = a rule book that holds on the day
evidence-short-book_differs = the rule book that was meant
act-books = rule books: { $value }

## Why a limit is open, or does not apply

reason-answered_no = A person answered that this limit does not apply.
reason-class_not_covered = The limit does not speak of this class of material.
reason-outside_validity = The limit does not hold on the day of placing on the market.
reason-placing_date_not_stated = The limit holds for certain days of placing on the market, and that day is not stated.
reason-question_open = Over the limit if it applies; whether it applies, a person has to answer.
reason-source_not_seen = At or above the limit. It counts the element only from certain sources, and X-rays do not show where it comes from.
reason-mixed_materials = Below the limit in several materials together: one of them may be above it.

## Rule books explained

rules-edition = edition { $edition }
rules-days-any = placed on the market on any day
rules-days-from = placed on the market from { $from } on
rules-days-until = placed on the market until { $until }
rules-days-both = placed on the market from { $from } until { $until }
rules-digest = SHA-256 { $digest }
rules-holds-bands = { $count ->
        [one] one band
       *[other] { $count } bands
    }
rules-holds-halogens = { $count ->
        [one] one halogen limit
       *[other] { $count } halogen limits
    }
rules-holds-limits = { $count ->
        [one] one limit
       *[other] { $count } limits
    }
rules-holds-exemptions = { $count ->
        [one] one exemption
       *[other] { $count } exemptions
    }
rules-holds-areas = { $count ->
        [one] one rule for chromium(VI) by area
       *[other] { $count } rules for chromium(VI) by area
    }
rules-holds-routes = { $count ->
        [one] one reference method
       *[other] { $count } reference methods
    }
confidence-confirmed = Confirmed in the text of the law or standard.
confidence-restated = Restated by a secondary source; the law or standard itself was not seen at this clause.
confidence-memory = From memory; check it in the law or standard before relying on it.
confidence-derived = Derived by arithmetic or from the wording, as the row says.
confidence-own = In the book's own words: { $words }.
rules-screening = Screening bands; s is one sigma.
rules-halogens = Halogen limits; s is one sigma.
rules-cited = { $text } Source: { $source }, { $clause }. { $confidence }
rules-band = { $about }, { $class }: { $low }; { $high }; undecided between.
rules-band-none = { $about }, { $class }: does not apply.
rules-low = below limit when value + { $k } s is { $equal ->
        [yes] at or under
       *[no] under
    } { $limit } mg/kg
rules-low-detection = below limit when at or under the reading's own detection limit, and that is at most { $limit } mg/kg
rules-high = over limit when value - { $k } s is { $equal ->
        [yes] at or over
       *[no] over
    } { $limit } mg/kg
rules-high-none = never over limit, since the element cannot prove the substance
rules-within = within the limit when value + { $k } s is { $equal ->
        [yes] at or under
       *[no] under
    } { $limit } mg/kg
rules-over = over it when value - { $k } s is { $equal ->
        [yes] over
       *[no] at or over
    } { $limit } mg/kg
rules-over-without = over it when { $about } alone - { $k } s is { $equal ->
        [yes] over
       *[no] at or over
    } { $limit } mg/kg
rules-over-never = never over it by a reading
rules-halogen = { $about }: { $rule }.
rules-limit = { $id }: { $about }, as a share of { $basis }: { $rule }. For: { $classes }.
rules-species = { $about } only stands for { $species }: within the limit it rules out too much of that, and above it shows nothing of it.
rules-source_unknown = The element counts only from certain sources, which X-rays do not show: at or above the limit is undecided.
rules-mixed = Within the limit in several materials together is undecided, since one of them may be above it.
rules-scope = It is about: { $scope }.
rules-question = A person has to answer: { $question } Until then, over is undecided.
rules-dated = For what is { $days }.
rules-exemption = { $entry }: { $scope }; { $bound ->
        [at_most] up to { $limit } mg/kg, the number itself conforms.
        [at_least] from { $limit } mg/kg on, the number itself conforms.
       *[none] no number.
    } Its text from: { $from ->
        [none] not stated
       *[other] { $from }
    }. Expires: { $until ->
        [none] not stated
       *[other] { $until }
    }.
rules-exemption-starred = Not for parts for the general public that a child could put in the mouth, unless a test shows that they release little enough lead.
rules-exemption-not_found = Whether it still stands, or for which product categories, was not found: a claim holds.
rules-area = Chromium(VI) on metal, by area: negative below { $below } ug/cm2, positive above { $above } ug/cm2, inconclusive from one to the other.
rules-route = Undecided { $about } goes to { $method }: { $technique }. For: { $classes }. Source: { $source }. { $confidence }
rules-route-halogens = chlorine or bromine
basis-homogeneous_material = one homogeneous material
basis-plastic = the plastic
basis-coating_alone = the coating alone, taken off what it lies on (below is undecided too, until it is known to be alone)
basis-article = the article or the part of it
basis-packaging_component = the packaging or the component of it
cli-rules_unknown = no rule book has the id "{ $found }", and there is no such file

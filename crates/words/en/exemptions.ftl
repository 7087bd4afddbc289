# Exemptions and claims.

## What a person says

act-claim = exemption claimed: { $entry } for { $substance }; evidence: { $evidence ->
        [none] not named
       *[other] { $evidence }
    }; second person: { $second ->
        [none] missing
       *[other] { $second }
    }
act-renewal = renewal of { $entry }: { $state ->
        [pending] pending
        [refused] refused
       *[not_filed] not asked for
    }; source: { $source ->
        [none] not named
       *[other] { $source }
    }; { $state ->
        [not_filed] date
       *[other] applied for on
    }: { $date ->
        [none] not stated
       *[other] { $date }
    }
act-mouthing = could a child put it in the mouth? { $value ->
        [cannot] no, or not for the general public
        [can] yes
       *[release_shown] yes, and a test shows that it releases little enough
    }
act-cr6_area = chromium(VI) by area: { $area }; laboratory: { $laboratory ->
        [none] not named
       *[other] { $laboratory }
    }; report: { $report ->
        [none] not named
       *[other] { $report }
    }

## Reasons of a disposition

lot-reason-claim_covers = { $about } is covered by a claim of exemption { $entry }, with evidence and a second person's initials, in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Keep the evidence with the report. Look at the day on which the exemption expires.
lot-reason-claim_open = Exemption { $entry } is claimed for { $about }, and something is open: { $why }
    .remedy = Answer the question; until then the claim holds the lot.
lot-reason-claim_exceeded = Exemption { $entry } is claimed for { $about }, and the readings lie beyond its number by more than the guard band of k sigma.
    .remedy = The exemption does not cover this. Quarantine the lot, or have the content confirmed by the reference method.
lot-reason-claim_expired = Exemption { $entry } is claimed for { $about }; it expired before the product is placed on the market, and its renewal was refused or never asked for.
    .remedy = The exemption does not cover this. Quarantine the lot.
lot-reason-claim_not_covered = Exemption { $entry } is claimed for { $about } and does not cover it: { $why }
    .remedy = Withdraw the claim or claim the entry that fits; the reading stands.
lot-reason-cr6_negative = Chromium(VI) by area is negative, with the laboratory's report, so the open chromium is settled for this coating.
    .remedy = Keep the report with this one.
lot-reason-cr6_inconclusive = Chromium(VI) by area is neither negative nor positive (0.10 to 0.13 ug/cm2, or a bound that shows neither).
    .remedy = Have more specimens tested by IEC 62321-7-1.
lot-reason-cr6_present = Chromium(VI) by area is positive: it is present in the coating. Whether it is more than 0.1 % of the layer is a question for the laboratory; this test gives no mg/kg.
    .remedy = Quarantine the lot. Ask the laboratory for the content of the layer, or the supplier for a coating without chromium(VI).
lot-reason-cr6_no_report = Chromium(VI) by area is said to be negative, and the laboratory or its report is not named.
    .remedy = Name the laboratory and its report.
lot-reason-cr6_other_class = Chromium(VI) by area is stated for a material that is not metal; the test by area (IEC 62321-7-1) is for coatings on metal, so it settles nothing here.
    .remedy = Plastics and electronics need IEC 62321-7-2.

summary-claim_covers = { $about } covered by a claimed exemption in { $count }
summary-claim_exceeded = { $about } beyond the number of the claimed exemption in { $count }
summary-claim_expired = { $about } under an exemption that has expired in { $count }
summary-claim_not_covered = { $about } not covered by the claimed exemption in { $count }
summary-cr6_negative = chromium(VI) by area negative
summary-cr6_inconclusive = chromium(VI) by area inconclusive
summary-cr6_present = chromium(VI) present by area
evidence-short-claim_open = answers to a claimed exemption
evidence-short-cr6_no_report = the laboratory's report of chromium(VI)
evidence-short-cr6_other_class = chromium(VI) by area, stated for what is no metal

## What became of a claim

claim-covered = covers
claim-open = open
claim-exceeded = number exceeded
claim-expired = expired
claim-not_covered = does not cover
claim-not_needed = not needed: no reading is over limit or undecided

number-within = the exemption states a maximum, and the readings stay within it even with k sigma added
number-within_minimum = the exemption states a minimum, and the readings reach it even with k sigma taken off
number-no_number = the exemption states no maximum, so there is none that the readings could exceed
number-open = the exemption's number lies within k sigma of a reading
number-not_stated = a reading is no number with an uncertainty
number-exceeded = beyond the exemption's number by more than k sigma

direction-at_most = at most { $limit } mg/kg
direction-at_least = at least { $limit } mg/kg
direction-none = no number
claims-guard = No screening band is published for exempt limits, and none is made up here: they are decided by a guard band of k = { $k } sigma on either side of the limit.

question-status_not_found = it was not found whether the entry still stands
question-category_not_stated = which product category (Directive 2011/65/EU)?
question-category_unclear = the entry covers one half of the category: industrial (9i) or other (9o), in vitro diagnostic (8ivd) or other medical (8o)?
question-entry_categories_not_found = which product categories the entry covers was not found
question-placing_date_not_stated = when is the product placed on the market?
question-earlier_text = placed on the market before this text of the entry came into force; the earlier text counts, and no loaded book holds it
question-day_of_expiry = placed on the market on the very day of expiry, and the law does not say whether that day is in
question-renewal_unknown = placed on the market after the day of expiry; is a renewal pending?
question-renewal_not_sourced = a renewal is said to be pending; where is that written, and on which day was it applied for?
question-renewal_after_review = the renewal is said to have been applied for after the day of this review, or the day of this review is not stated; which days are right?
question-renewal_late = the renewal was applied for later than 18 months before the day of expiry, the term of Directive 2011/65/EU, Article 5(5); is the entry valid all the same?
question-mouthing_not_answered = could a child put the part, or a part that comes off it, in the mouth?
question-class_not_known = what class of material is it?
question-layer_not_resolved = a layer and what lies under it are averaged, so the reading is not the material's own; separate them
question-not_homogeneous = a composite: the reading is not that of one homogeneous material; separate it
question-group_not_known = what alloy (or glass, ceramic) is it? The readings do not show it, and the claim does not say it
question-number_not_stated = a reading is no number with an uncertainty
question-bound_within_sigma = the entry's number lies within k sigma of a reading; measure longer or have it confirmed
question-evidence_missing = which document shows that the entry applies?
question-second_missing = the initials of two different persons are not both there

refusal-entry_not_in_book = no loaded rule book has this entry
refusal-entry_near = no loaded rule book has an entry written like that; { $entry } comes nearest
refusal-other_substance = the entry is about another substance
refusal-other_class = the entry is about another class of material
refusal-other_group = the entry is about another alloy, or readings and claim differ on it
refusal-other_category = the entry does not cover the product's category
refusal-child_could_mouth = the entry does not cover what a child could put in the mouth

group-steel = steel
group-aluminium = aluminium
group-copper = copper alloy
group-zinc = zinc
group-tin = tin
group-lead = lead
group-nickel = nickel
group-titanium = titanium
group-magnesium = magnesium
group-precious = precious metal
group-glass_ceramic = glass or ceramic
group-any = any material

renewal-pending = renewal pending
renewal-refused = renewal refused
renewal-not_filed = no renewal asked for
renewal-unknown = renewal not known

cr6-negative = negative: no chromium(VI) found
cr6-inconclusive = inconclusive
cr6-positive = positive: chromium(VI) is present

expiries-title = Which exemptions run out, and when
expiries-none = No claimed or possible exemption has a day of expiry here.
expiry-claimed = { $day }: exemption { $entry } for { $about } expires ({ $renewal }). Claimed for { $count ->
        [one] one material
       *[other] { $count } materials
    }, in: { $names }.
expiry-candidate = { $day }: exemption { $entry } for { $about } expires ({ $renewal }). Not claimed; it may be, for { $count ->
        [one] one material
       *[other] { $count } materials
    }, in: { $names }.
expiry-undated = { $day }: exemption { $entry } for { $about } expires ({ $renewal }). Not claimed; whether it may be depends on the day of placing on the market, which is not stated. It would be for { $count ->
        [one] one material
       *[other] { $count } materials
    }, in: { $names }.

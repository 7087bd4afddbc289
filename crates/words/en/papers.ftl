# The papers that go out beside a report: request to a laboratory, notice to a supplier, labels.

paper-end = End of { $number }
paper-invented = Invented data, for training. This paper is about nothing real: do not send it, and do not act on it.
paper-contact = Questions to
paper-capped = The first { $shown } of { $total } are printed; findings.json holds all of them.
paper-band = band { $low } to { $high } mg/kg
paper-band_open = undecided from { $low } mg/kg on
paper-band_detection = band from the detection limit to { $high } mg/kg
paper-limit = limit { $limit } mg/kg
paper-line = line { $line }

## Self-check sheet of a supplier

paper-self_check = Self-check before shipping
paper-self_check-is = A supplier's self-check: what the customer would accept, hold or not accept by the rule books below, from these same readings. It is not a declaration of conformity, and no decision of the customer: the customer decides by its own inspection.
paper-self_check-full = The full report to these readings has the number { $number }. Send report.html with this sheet or keep it ready: by its number the customer can find it and check it.
paper-self_check-books = Rule books it was held against
paper-self_check-books_given = What was given as a file is marked. Whoever gave it answers for its limits: ask the customer whether this is its book, by the digest.
paper-self_check-books_built_in = No rule book of a customer was used: the books below are those that come with this program. The customer's book may differ. Ask for it and check again before shipping.
paper-self_check-whose = Whose
paper-self_check-given = given as a file
paper-self_check-built_in = comes with this program
paper-self_check-would-accept = nothing found
paper-self_check-would-hold = would be held
paper-self_check-would-not_accept = would not be accepted
paper-self_check-group-accept = { $count ->
    [one] Nothing found that would hold it: one lot
   *[other] Nothing found that would hold them: { $count } lots
}
paper-self_check-group-accept-is = For the substances screened, nothing in these readings would keep the customer from accepting. That is no assurance: what was not assessed stands below.
paper-self_check-group-hold = { $count ->
    [one] Would be held: do this before shipping. One lot
   *[other] Would be held: do this before shipping. { $count } lots
}
paper-self_check-group-hold-is = Something is neither shown within nor beyond its limit, or is over it with a claim or a doubt that is not settled, or something is still missing to say so. Each point says what would end it, in the order in which it is of use.
paper-self_check-group-not_accept = { $count ->
    [one] Would not be accepted: do not ship it as it is. One lot
   *[other] Would not be accepted: do not ship them as they are. { $count } lots
}
paper-self_check-group-not_accept-is = Something was found beyond a limit. Keep the lot back until what is named here is settled.
paper-self_check-noted = Only noted. By the settings of this check it would not hold the lot; by the customer's it may:
paper-self_check-settles = What would settle it
paper-self_check-sampling = Sampling:
paper-self_check-sampling_none = No lot size with a number of units to take is stated, so these readings speak for the measured pieces only.
paper-self_check-units = Lot of { $size } units; wanted of every material: { $take }.
paper-self_check-claims_none = No exemption is claimed.
paper-self_check-claim = The claim
paper-self_check-in_force = In force on the day of placing on the market
paper-self_check-in_force_on = yes, on { $day }
paper-self_check-trust = Readings by the checks beside them: between good checks { $ok }; covered by no check { $none }; not between good checks { $not_bracketed }; beside a check that failed { $failed }. Check readings: { $checks }.
paper-self_check-signed = Who signs says that these are the readings of these lots, and nothing beyond that.
paper-self_check-checked = Checked by
paper-self_check-released = Responsible person

## Request to a laboratory

paper-laboratory = Laboratory request
paper-laboratory-is = Asks a laboratory to determine what X-ray fluorescence screening left open or found over its limit. It is no order and holds no result of a laboratory.
paper-samples = Samples
paper-samples_none = Nothing waits for a laboratory.
paper-samples_order = { $count ->
    [one] One sample.
   *[other] { $count } samples, the most urgent first: by the day their hold is to end, then lots that are not accepted before lots on hold.
}
paper-sample = Sample { $number } of { $total }
paper-class = Material class
paper-needed_by = Needed by
paper-piece = Piece that was measured
paper-amount = Amount sent, marked as
paper-of_id = sample
paper-of_unit = piece
paper-of_spot = spot
paper-determine = Determine
paper-determine_cr6 = Cr(VI), hexavalent chromium (screening saw total chromium)
paper-determine_pbb_pbde = PBB and PBDE, each by itself (screening saw total bromine)
paper-by_method = Reference method
paper-no_method = The rule books name no method: the laboratory proposes one.
paper-why = Why
paper-asked_back = What the laboratory is asked to state
paper-back-result = The result for the material as sent: not for a mixture of materials.
paper-back-unit = Its unit; mg/kg of the homogeneous material, or the area of a coating where the method says so.
paper-back-u = Its expanded uncertainty U.
paper-back-k = The coverage factor k of that uncertainty.
paper-back-lod = The limit of detection.
paper-back-loq = The limit of quantification.
paper-back-method = The method with part and edition, and any departure from it.
paper-back-date = The day of the analysis, and the number of the laboratory's report.
paper-fill-result = Result
paper-fill-unit = Unit
paper-fill-u = U
paper-fill-k = k
paper-fill-lod = LOD
paper-fill-loq = LOQ
paper-fill-method = Method, edition
paper-fill-date = Date, report
paper-safety = Safety
paper-safety_text = The samples may hold lead, cadmium, mercury, chromium or bromine above legal limits. Cut and grind them under ventilation only.
paper-custody = Chain of custody
paper-custody_text = Each hand fills in a line. Say under condition whether the seal is whole and the package is undamaged.
paper-custody-number = No.
paper-custody-by = Handed over by
paper-custody-to = Received by
paper-custody-when = Date and time
paper-custody-seal = Seal number
paper-custody-condition = Condition

## Notice to a supplier

paper-notice = Notice to a supplier
paper-notice-is = Tells a supplier what screening found in its lots, and what is asked of it.
paper-to = To
paper-reply_by = Please reply by
paper-notice_facts = The lots below were screened by X-ray fluorescence at incoming inspection. This notice states what was measured. It accuses nobody and decides nothing about fault.
paper-notice_undecided = What is on hold is undecided: it was found neither within nor beyond its limits, or something is still missing to say so.
paper-lot_counts = { $readings ->
    [one] One reading
   *[other] { $readings } readings
}; materials of the lot: { $materials }
paper-found = What was found
paper-substance = Substance
paper-worst = Highest of the worst readings, and what it stands against
paper-reasons = Why the lot is not accepted yet
paper-own_reasons = There are also reasons that the inspection has to settle by itself. Nothing is asked of you for them.
paper-asked = What we ask of you
paper-asked_nothing = Nothing for now. This notice is for your information.
paper-ask-contain = Keep back what you still hold of this lot, and tell us which other deliveries may hold the same material.
paper-ask-laboratory = Send a laboratory's result for the substances named above, by the reference method, with its uncertainty and the number of the laboratory's report; or say that you have none.
paper-ask-materials = Send the list of the homogeneous materials of the part, with the class and the thickness of each, coatings included.
paper-ask-exemption = Say which exemption you rely on, with its entry and wording, and send the evidence that it applies.
paper-ask-change = Say whether a material, a recipe or a sub-supplier was changed, since when, and for which lots.
paper-ask-correct = Tell us the cause once you know it, and what you do so that it does not happen again.
paper-ask-replace = Tell us when you can replace the lot, and what shall happen to this one.
paper-answer = Your answer
paper-answer_text = Please answer in writing under the report number above. If you find a mistake of ours, tell us.
paper-answer_by = Answered by
paper-answer_date = Date
paper-answer_signature = Signature

## Labels

paper-labels = Labels for lots that must wait
paper-labels-is = One label for each lot that is held or not accepted. Cut along the dashed lines. A label says how a lot stands at the report named on it; a later report stands above it.
paper-labels_none = No lot is held or not accepted.
paper-word-hold = HOLD
paper-word-not_accept = NOT ACCEPTED
paper-label_more_parts = { $count ->
    [one] and one more
   *[other] and { $count } more
}
paper-label_more_reasons = { $count ->
    [one] One more reason stands in the report.
   *[other] { $count } more reasons stand in the report.
}
paper-label_lift_two = Lifted only by a new report or by the initials of two people.
paper-label_lift_result = Lifted only by a new report in which what is named above is settled.

## Acts

act-reply_by = suppliers are asked to reply by { $value }
act-requested_action = asked of the supplier: { $value }
act-contact = questions to { $value }

## The workbook

workbook-lots = Lots
workbook-materials = Materials
workbook-readings = Readings
workbook-checks = Checks
workbook-about = About
workbook-program = Program
workbook-rule_book = Rule book
workbook-readings_all = All { $count } readings stand on the sheet of readings.
workbook-readings_capped = The first { $shown } of { $total } readings stand on the sheet of readings; findings.csv holds all of them.
workbook-cut = Texts that were longer than a cell may hold and were cut: { $count }. findings.json holds them whole.
workbook-columns = Columns are named and meant as in findings.csv and findings.json. Amounts are mass fractions in mg/kg, uncertainties one sigma.

## Command line

cli-no_notice = { $count ->
    [one] One lot that is held or not accepted states no supplier: there is no notice for it.
   *[other] { $count } lots that are held or not accepted state no supplier: there is no notice for them.
}

# The trainer's room: lessons, exercises, the score sheet.
page-train-enter = Enter the training room
page-train-heading = Training room
page-train-invented = Everything in this room is invented: company, suppliers, lots and numbers. An inspection that is open stays as it is.
page-train-lead = Eight short lessons on deciding from XRF readings. You decide first; then the tool shows its working.
page-train-lessons = Lessons
page-train-titled = Lesson { $n }: { $title }
page-train-progress = { $done } of { $of } exercises answered, { $right } right
page-train-not-begun = not begun
page-train-begin = Begin with lesson 1
page-train-go-on = Go on with lesson { $n }: { $title }
page-train-to-sheet = Go to the score sheet
page-train-home = All lessons
page-train-before = Previous lesson
page-train-after = Next lesson: { $title }
page-train-source = Source
page-train-look = An invented delivery to look at
page-train-open = Open { $title }
page-train-deliveries = Deliveries to review
page-train-deliveries-hint = Opening one puts an open inspection by; "{ $back }" at the top returns it.
page-train-fresh = A fresh delivery
page-train-fresh-hint = One lot from the seed above, to be reviewed like a real one: what it says, what is missing, and who signs.
page-train-fresh-open = Open the delivery of this seed
page-train-fresh-title = Invented delivery, seed { $seed }
page-train-fresh-story = An invented lot, drawn from seed { $seed }. Review it like a real one: why does each reading say what it says, what is missing, and would you put your name to it?
page-train-seed = Seed of the exercises
page-train-seed-hint = The same seed gives the same exercises on every computer.
page-train-seed-use = Use this seed
page-train-seed-new = New seed
page-train-seed-wrong = A seed is a whole number from 0 to 18446744073709551615, in digits only.
page-train-seed-now = Exercises from seed { $seed }, invented

# The ruler that can be moved.
page-train-ruler = Move the ruler
page-train-ruler-lead = Choose a class and a substance, then drag the bob or an end of its whiskers. The words below follow.
page-train-ruler-figure = Ruler that can be moved; the fields below do the same
page-train-ruler-none = There is no ruler to draw for this. The words below say why.
page-train-class = Class
page-train-class-polymer = polymer
page-train-class-metal = metal
page-train-class-composite = composite or electronics
page-train-class-plated = plated or coated
page-train-class-unknown = glass or ceramic
page-train-substance = Substance
page-train-substance-cd = cadmium (Cd)
page-train-substance-pb = lead (Pb)
page-train-substance-hg = mercury (Hg)
page-train-substance-cr = chromium (Cr)
page-train-substance-br = bromine (Br)
page-train-kind = What the file says
page-train-kind-number = a number
page-train-kind-below = below a detection limit
page-train-kind-none = not detected, no limit stated
page-train-value = Value, mg/kg
page-train-limit = Detection limit, mg/kg
page-train-sigma = One sigma, mg/kg
page-train-slide-value = Move the value
page-train-slide-limit = Move the limit
page-train-slide-sigma = Move the sigma
page-train-slid = { $value } mg/kg
page-train-thickness = Thickness, mm
page-train-now = Now: { $outcome }

# Exercises.
page-train-exercises = Exercises
page-train-exercise = Exercise { $n }
page-train-ask-outcome = What does this reading say of { $substance }?
page-train-ask-disposition = What becomes of this lot?
page-train-none-stated = none stated
page-train-readings = The readings of the file, in mg/kg ± one sigma
page-train-column-sample = Sample
page-train-column-unit = Unit
page-train-column-material = Material
page-train-fact-size = The lot has { $n } pieces.
page-train-fact-size-none = Nobody said how many pieces the lot has.
page-train-fact-take = { $n ->
    [one] One piece was to be measured.
   *[other] { $n } pieces were to be measured.
 }
page-train-fact-materials = The part is made of: { $list }.
page-train-fact-trust-advisory = Check readings are for information only in this exercise.
page-train-fact-certificate = { $sample } is the check disc. Its certificate says Cd { $cadmium } and Pb, Hg, Cr, Br { $others } mg/kg each.
page-train-fact-seconds = Each reading took { $seconds } seconds.
page-train-fact-category = The product is of category { $category }, monitoring and control instruments. No child can put the part in the mouth.
page-train-fact-placed = The product is placed on the market on { $day }.
page-train-fact-placed-none = Nobody said when the product is placed on the market.
page-train-fact-claim = The supplier claims exemption { $entry } (at most { $percent } % of lead, until { $day }), with a letter. Two people signed the claim.
page-train-fact-claim-one = The supplier claims exemption { $entry } (at most { $percent } % of lead, until { $day }), with a letter. One person signed the claim.
page-train-fact-claim-none = Nobody claims an exemption.
page-train-fact-renewal-none = Nobody asked for exemption { $entry } to be renewed.
page-train-check = Check my answer
page-train-choose = Choose an answer first.
page-train-right = Right
page-train-wrong = Not right
page-train-you-said = Your answer: { $answer }.
page-train-tool-says = The tool says:
page-train-move = Move these numbers on the ruler
page-train-more = One more, with other numbers

# The score sheet.
page-train-sheet = Score sheet
page-train-sheet-empty = Nothing answered yet. Answer some exercises; they are listed here.
page-train-sheet-name = Name or initials of the trainee (optional, never stored)
page-train-sheet-day = Date
page-train-sheet-print = Print the score sheet
page-train-sheet-asked = Asked
page-train-sheet-answered = Answered
page-train-sheet-right = Right answer
page-train-sheet-result = Result
page-train-sheet-clause = Source
page-train-sheet-total = { $right } of { $of } right
page-train-sheet-trainee = Trainee
page-train-sheet-trainer = Trainer
page-train-sheet-signature = Date and signature
page-train-sheet-no-certificate = All readings and lots are invented. This sheet records an exercise; it is no certificate of competence.
page-train-where = the training room
page-step-what-if = asking what a reading would say
page-step-exercises = making exercises
page-step-solved = working an exercise out
page-step-invented-delivery = making an invented delivery

# The lessons.
page-train-band-title = What a band is
page-train-band-1 = A reading is never exact. Around a limit lies a band in which a quick XRF reading cannot tell good from bad.
page-train-band-2 = For lead in a polymer the law allows 1000 mg/kg, and the band runs from 700 to 1300. Clearly below it is "below limit" (BL), clearly above it "over limit" (OL). Between, the reading is "undecided" (X) and a laboratory decides.
page-train-band-3 = Undecided is an answer, not a failure: it says what to do next.
page-train-band-source = Band: IEC 62321-3-1:2013, table of screening limits. Limit: Directive 2011/65/EU, Annex II (both confirmed).
page-train-band-try = Drag the bob from left to right. Where do the words change?

page-train-sigma-title = Why three sigma
page-train-sigma-1 = Measure the same spot again and the number differs a little. One sigma says by how much, typically.
page-train-sigma-2 = The whiskers are three sigma long. "Below limit" needs the whole whisker below the band, "over limit" the whole whisker above it. Just touching the edge counts.
page-train-sigma-3 = If three sigma alone are as long as the band's low edge is high, no value can be shown to be below: measure longer. A number without any uncertainty decides nothing.
page-train-sigma-source = IEC 62321:2008: three sigma express the repeatability of the analyser at the action level, with 99.7 % confidence (confirmed).
page-train-sigma-try = Leave the bob where it is and pull the whisker longer. Watch the answer go from below limit to undecided to not capable.

page-train-element-title = Why bromine and chromium are never "over"
page-train-element-1 = The law restricts PBB and PBDE, which contain bromine, and hexavalent chromium. XRF sees only the element.
page-train-element-2 = Little bromine means little PBB and PBDE: that clears. Much bromine may come from something allowed: that is undecided, whatever the number, and a laboratory looks for the substance itself. The same holds for chromium.
page-train-element-3 = PBB and PBDE do not occur in metals, so bromine in metal is not applicable.
page-train-element-source = IEC 62321-3-1:2013, table of screening limits: no upper edge for Br and Cr. Directive 2011/65/EU, Annex II: the limits are on PBB, PBDE and Cr(VI) (both confirmed).
page-train-element-try = Drag the bob as far right as it goes. It never says "over".

page-train-censored-title = Values below detection
page-train-censored-1 = "< 40" means: not seen, and the instrument would have seen 40. It does not mean zero.
page-train-censored-2 = A detection limit D stands for three sigma, so the true value may still reach up to two times D. Only if that stays below the band is the reading below limit; else the detection limit is too high.
page-train-censored-3 = "n.d." without a limit clears nothing. A dash is no measurement. In a composite, cadmium clears only against a stated limit of at most 50 mg/kg.
page-train-censored-source = Detection limit as three sigma: IUPAC 1978 (from memory); US EPA Method 6200, 9.6 (confirmed). Cadmium in composites: IEC 62321-3-1:2013, table of screening limits (confirmed); the 50 mg/kg are our own rule.
page-train-censored-try = Move the limit up until it no longer clears. Then choose "not detected, no limit stated".

page-train-material-title = One material at a time
page-train-material-1 = Limits hold for each homogeneous material: whatever cannot be taken apart by unscrewing, cutting, crushing or grinding. A cable is several materials, and each plating is one.
page-train-material-2 = One material over limit makes the whole part not accepted. A material that nobody measured is open: the lot is on hold.
page-train-material-3 = On a plated piece the beam mixes layer and base, so no verdict is given. A thin piece sends back too little signal: a low number there is undecided. Stack thin pieces.
page-train-material-source = Directive 2011/65/EU, Article 3(20) (number from memory); IEC 62321-2:2021, 4.6 (confirmed). No verdict on layers, and the correction for thickness, are our own rules.
page-train-material-try = Change the class from metal to plated and back, without moving the bob.

page-train-exemption-title = Exemptions
page-train-exemption-1 = Some uses are allowed more. Copper alloys may hold up to 4 % of lead under entry 6(c) until its last day. An exemption never changes the outcome: the lead is over limit, and the claim covers it or not.
page-train-exemption-2 = A claim covers only if everything is there: the right material, a value clearly within the entry's limit, the product category, the day of placing on the market, evidence, and two people's initials.
page-train-exemption-3 = Clearly above the entry's limit, or past its day without renewal: not accepted. Anything missing or too close to call: hold.
page-train-exemption-source = Directive 2011/65/EU, Annex III, entry 6(c), as amended in 2025 (restated by a secondary source). The margin at its limit and the second initials are our own rules.
page-train-exemption-try = 27 000 mg/kg of lead in brass is 2.7 %. The ruler says over; only a claim on the lot can cover it.

page-train-trust-title = Can the instrument be trusted today?
page-train-trust-1 = Before and after the readings a disc of known content is measured. If both come out right, the readings between them count.
page-train-trust-2 = No check, a failed check, or none after the last reading: the numbers stand, but the lot is on hold. A reading over limit stays over limit, whatever the checks say.
page-train-trust-3 = Time matters too: four times as long halves the sigma. Very short readings can be too rough to clear anything.
page-train-trust-source = US EPA Method 6200, 9.4 (checks at the beginning, during and at the end) and 9.5 (four times the time, twice the precision) (confirmed). Counting only readings between two good checks is our own rule.
page-train-trust-try = The sigma here is that of five seconds. Halve it: that costs four times as long. How long until it clears?

page-train-sampling-title = Sampling, and what accept means
page-train-sampling-1 = A lot is judged by the pieces that were measured. How many to take is set before anything is measured, and it counts pieces, not readings: four spots on one piece are one piece.
page-train-sampling-2 = One piece over limit: the lot is not accepted. One piece undecided or not fully measured, too few pieces, or an unknown lot size: hold.
page-train-sampling-3 = "Accept" means: for the substances screened, on these pieces, nothing was found against the lot. It is no declaration of conformity, and phthalates are never seen by XRF.
page-train-sampling-source = IEC 62321-2:2021, 4.6: one result over the limit in any part, and the whole is non-conforming (confirmed). "Hold" and what leads to it are our own rules.
page-train-sampling-try = One undecided piece holds the lot. Find the values that would let it go, and those that would end it.
page-train-sample = What a clean sample leaves possible
page-train-sample-size = Pieces in the lot
page-train-sample-taken = Pieces measured
page-train-sample-told = { $n ->
    [0] None of { $taken } pieces measured is over the limit: then none of the { $size } in the lot may be, at 95 % confidence.
    [one] None of { $taken } pieces measured is over the limit: one of the { $size } in the lot may still be, at 95 % confidence.
   *[other] None of { $taken } pieces measured is over the limit: up to { $n } of the { $size } in the lot may still be, at 95 % confidence.
 }
page-train-sample-none = No more pieces can be measured than the lot has.
page-step-clean-sample = asking what a sample leaves possible

# The same in short, for the score sheet.
page-train-clause-material = IEC 62321-2:2021, 4.6; for layers and thin pieces our own rule
page-train-clause-exemption = Directive 2011/65/EU, Annex III, entry 6(c) (restated by a secondary source)
page-train-clause-trust = US EPA Method 6200, 9.4 and 9.5; our own rule of two good checks
page-train-clause-sampling = IEC 62321-2:2021, 4.6; what leads to a hold is our own rule

# The titles of the invented deliveries, by the number their folders begin with.
page-delivery-01 = Clean housing
page-delivery-02 = Red cable
page-delivery-03 = Brass valve
page-delivery-04 = Flame retardant
page-delivery-05 = PVC hose
page-delivery-06 = Short readings
page-delivery-07 = Check standard
page-delivery-08 = Swapped material
page-delivery-09 = Thin sample plan
page-delivery-10 = Decimal comma
page-delivery-11 = Plated screws
page-delivery-12 = Thin film
page-delivery-13 = Steel pins
page-delivery-14 = Repeats
page-delivery-15 = Changed compound

# Help where one stands: terms, the guide, the tour, shortcuts, the diagnostic file.

## Cards of terms

page-words-here = Words used here
page-term-close = Close
page-term-source = Source:
page-term-guide = All words in the guide

# A term: its name, what it is, and under which source. The sources stand below, since several terms share one.
page-term-screening = Screening
page-term-screening-is = A quick test that sorts materials into clearly below a limit, clearly over it, and undecided. What is undecided goes to a laboratory; nothing is declared by it.
page-term-xrf = XRF
page-term-xrf-is = X-ray fluorescence: the analyser sends X-rays into a spot, and each element answers with its own lines. It sees elements, not compounds, and only a thin layer under the surface.
page-term-reading = Reading
page-term-reading-is = One measurement at one spot: a value and an uncertainty for each element, with the time it took.
page-term-lot = Lot
page-term-lot-is = Goods delivered together under one name by one supplier. It is accepted, held or not accepted as a whole.
page-term-limit = Limit
page-term-limit-is = The most of a substance that a rule allows in a material, such as 1000 mg/kg of lead. Each rule book says whether the limit itself is still allowed.
page-term-band = Band
page-term-band-is = The stretch round a limit where a screen must not decide. It reaches from its low edge to its high edge, and three sigma further on both sides.
page-term-action-level = Action level
page-term-action-level-is = The content near the limit at which something has to be done. The standard asks how well the analyser repeats there, not at zero.
page-term-sigma = One sigma
page-term-sigma-is = The size of the usual scatter of a reading: about two of three repeats lie within one sigma. Analysers print one, two or three of them, so the multiple must be known.
page-term-repeatability = Repeatability
page-term-repeatability-is = How much readings of the same sample scatter when nothing is changed. In the bands it is the scatter of single readings near the limit.
page-term-bl = BL, below limit
page-term-bl-is = The value and its three sigma lie below the band. For this element, in this material, at this spot.
page-term-x = X, undecided
page-term-x-is = The value or its three sigma touch the band. It is no pass and no fail: something else has to settle it.
page-term-ol = OL, over limit
page-term-ol-is = The value, less its three sigma, lies above the band. Bromine and chromium are never OL: the limit is on compounds, which XRF cannot see.
page-term-not-measured = Not measured
page-term-not-measured-is = The file holds no value for this element, or none with a known unit. That is not the same as not detected.
page-term-no-uncertainty = No uncertainty
page-term-no-uncertainty-is = A number stands there without its sigma, so nobody can say how far it may be trusted. It counts as open.
page-term-detection-limit = Detection limit
page-term-detection-limit-is = The smallest amount an analyser can tell from nothing, usually three times the scatter of a sample that holds next to none.
page-term-detection-too-high = Detection limit too high or not stated
page-term-detection-too-high-is = Nothing was found, but the analyser could not have seen enough to show “below”. Measure longer, or by another method.
page-term-not-capable = Not capable
page-term-not-capable-is = Three sigma alone reach the low edge of the band, so even a clean sample could not come out as BL. A smaller sigma is needed.
page-term-not-applicable = Not applicable
page-term-not-applicable-is = The rule does not speak of this element in this material, such as bromine in metal.
page-term-class = Material class
page-term-class-is = Polymer, metal, composite or plated: it decides which band holds. Where it is unknown, all classes are tried and the worst counts.
page-term-homogeneous = Homogeneous material
page-term-homogeneous-is = A material that no unscrewing, cutting, grinding or scraping parts into different ones. Limits hold for each of them, not for the whole part.
page-term-composite = Composite
page-term-composite-is = Several materials under one beam that cannot be measured apart, such as a populated board. Its bands are wider.
page-term-plated = Plated
page-term-plated-is = A layer on another material. The beam averages over both, so a screen says X for the layer.
page-term-halogens = Halogen total
page-term-halogens-is = Chlorine plus bromine, as “halogen-free” rules ask for. It holds a lot only under a rule book that you name.
page-term-accept = Accept
page-term-accept-is = All that was asked for was measured and lies below its limits, and the evidence is there. It reaches only as far as what was measured.
page-term-hold = Hold
page-term-hold-is = The lot waits: something is undecided or missing. It is no rejection, and it ends by a result.
page-term-not-accept = Not accept
page-term-not-accept-is = At least one material is over a limit and no exemption covers it.
page-term-evidence = Evidence
page-term-evidence-is = What must stand beside the readings before anyone can accept: checks, sampling, the list of materials and more.
page-term-trust = Trust
page-term-trust-is = Whether checks show that the analyser was right when a reading was made. It stands beside the outcome and never changes it.
page-term-check = Check standard, a known sample
page-term-check-is = A sample whose content is known, measured before and after the goods to show that the analyser is right.
page-term-blank = Blank
page-term-blank-is = A clean piece that must show nothing. If it shows something, dirt or the analyser adds to every reading.
page-term-certified = Certified value
page-term-certified-is = The content of a check standard as its certificate states it, with an uncertainty.
page-term-bracketed = Between good checks
page-term-bracketed-is = A reading is trusted when the last check before it and the first one after it were good.
page-term-chart = Control chart
page-term-chart-is = Check readings in the order of their times, with a middle line and limits. It shows drift before a check fails.
page-term-plan = Sampling plan
page-term-plan-is = The rule that says how many pieces of a lot are measured, and what that shows. Unseen pieces stay unseen.
page-term-acceptance-number = Acceptance number
page-term-acceptance-number-is = How many bad pieces a plan still allows. For restricted substances it is 0 here, whatever a table says.
page-term-exemption = Exemption
page-term-exemption-is = An entry of the law that allows a substance in one named use until a date. Somebody must claim it, with evidence and a second person.
page-term-placing = Placing on the market
page-term-placing-is = The first time a product is made available on a market. Exemptions and dated limits go by that day.
page-term-category = Product category
page-term-category-is = One of the eleven groups of equipment in the law. Exemptions end on different days for different groups.
page-term-next-step = Next step
page-term-next-step-is = The cheapest thing that could settle what is open: measure longer, elsewhere, a separate piece, or a laboratory.
page-term-reference = Reference method
page-term-reference-is = A laboratory method that takes a sample apart chemically and measures the restricted substance itself.
page-term-declaration = Declaration of conformity
page-term-declaration-is = The maker’s own legal statement about a product, resting on technical documents. A screen is at most one of these documents.
page-term-decision-rule = Decision rule
page-term-decision-rule-is = The rule that says how uncertainty counts when a value is held against a limit. Here the bands of the method are the rule.
page-term-guard-band = Guard band
page-term-guard-band-is = A distance kept from the limit so that a wrong “within” becomes rare. The bands hold one already.
page-term-probability = Chance to be within
page-term-probability-is = How likely the true value lies within the limit, if the uncertainty is right and complete. It decides nothing here.
page-term-margin = Margin
page-term-margin-is = How many of its own sigma a value lies from the nearer edge of its band, on either side. The smaller, the nearer to another outcome.
page-term-digest = Digest (SHA-256)
page-term-digest-is = A fingerprint of a file in 64 digits. Change one letter and it is another one; it tells nothing about the content.
page-term-act = Act
page-term-act-is = Something you set, answer or take back here. All acts stand in the report, with your initials; no reading is ever changed.
page-term-book = Rule book
page-term-book-is = A dated list of limits, bands or exemptions, each with its source and clause. The report names the ones that were used.
page-term-caution = Caution
page-term-caution-is = Something that makes a reading doubtful, such as another element’s line. It changes no outcome; a strong one holds the lot.

page-from-bands = IEC 62321-3-1:2013, table of screening limits
page-from-scope = IEC 62321-3-1:2013, scope
page-from-action = IEC 62321:2008, how results are evaluated, with the performance test of 6.5.4
page-from-annex-ii = Directive 2011/65/EU, Annex II
page-from-homogeneous = Directive 2011/65/EU, Article 3(20) (number of the article from memory)
page-from-categories = Directive 2011/65/EU, Annex I
page-from-exemptions = Directive 2011/65/EU, Annexes III and IV; that two people sign is our own rule
page-from-placing = Directive 2011/65/EU, Article 3 (from memory)
page-from-declaration = Directive 2011/65/EU, Article 13 (from memory); EN IEC 63000:2018
page-from-halogens = IEC 61249-2-21:2003 (restated by a secondary source)
page-from-detection = US EPA Method 6200, 9.6
page-from-check = US EPA Method 6200, 9.4
page-from-bracket = Our own rule, built on US EPA Method 6200, 9.4
page-from-score = ISO 13528
page-from-chart = ISO 7870-2
page-from-plan = MIL-STD-105E
page-from-zero = Our own rule: the law knows no allowed share of bad pieces
page-from-disposition = Word of ISO 2859-1; what leads to it is our own rule
page-from-decision = ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019
page-from-guard = ILAC-G8:09/2019, 4.1; JCGM 106:2012
page-from-probability = JCGM 106:2012, 7
page-from-reference = IEC 62321-4 to IEC 62321-8 and IEC 62321-12
page-from-digest = FIPS 180-4 (from memory)
page-from-gum = JCGM 100:2008 (from memory)
page-from-own = Our own word
page-from-habit = Common practice, no source

## The picture of the ruler

page-ruler-heading = What am I looking at?
page-ruler-alt = A rail from left to right. Round the limit stands a hatched band. A plumb bob hangs where the reading is, with a whisker to each side.
page-ruler-bob = Bob: the reading
page-ruler-whiskers = Whiskers: three sigma each way
page-ruler-band = band round the limit
page-ruler-left = left: below
page-ruler-right = right: over
page-ruler-rail = Rail: mg/kg, little to much
page-ruler-why = A limit is no line for a screen: in the hatched band round it nothing is decided.
page-ruler-below = Bob and whiskers left of the band
page-ruler-undecided = Something touches the band
page-ruler-over = Bob and whiskers right of the band
page-ruler-others = A broken rail without a bob: not measured. A short rail alone: the rule does not apply. A post with a crossbar: a limit without a band. Dashes: somewhere on that side, or between two uprights.

## The guide

page-guide = Guide
page-guide-close = Close
page-guide-search = Search the guide
page-guide-found = { $n ->
    [0] Nothing found.
    [one] { $n } place found.
   *[other] { $n } places found.
  }
page-guide-go = Go there
page-guide-words = Words
page-guide-keys = Keys
page-guide-tour = Show me round
page-guide-bring = Bringing files
page-guide-bring-text =
    Choose result files, or drop files or a folder anywhere on the page. Tables as CSV, TSV or text, workbooks (XLSX, ODS) and ZIP archives are read.
    Settings, a mapping of columns, a rule book, a history and a bill of materials have fields of their own. Photographs may come with the results.
    Suppliers go in by “Check before shipping”: the same review, as a self-check for the customer’s rule book.
    Nothing is sent anywhere. Files are read and never changed.
page-guide-columns = What the page makes of columns
page-guide-columns-text =
    Every row has one fate: used, check, duplicate, set aside or refused. The counts add up, and each refused row says why.
    Each column stands under the meaning that was found for it. Where it is wrong, pick another; the file is read again at once.
    What a file leaves open (unit, multiple of sigma, order of dates, class) is asked at the top. Until it is answered the strict reading is used. Nothing is guessed.
page-guide-trust = Can the readings be trusted?
page-guide-trust-text =
    Each card names one kind of evidence: what it is for, what is missing, and where to give it. “Missing” holds lots.
    Check readings need certified values, else they prove nothing. A reading is trusted between two good checks.
    Give your initials once; they stand on every act. Any act can be taken back, and that is recorded too.
page-guide-ruler = Reading the ruler
page-guide-ruler-text =
    Look where the bob hangs: left of the band is below, right of it is over, and whatever touches the band is undecided.
    Words stand beside every mark; colour only helps. Open a reading to see how its outcome was worked out, step by step.
    Where a number is missing the page says which: not measured, no uncertainty, detection limit too high, not capable, not applicable. None of these is a pass.
page-guide-materials = Materials, parts, lots
page-guide-materials-text =
    A limit holds for each homogeneous material. The worst spot of a material counts; spots are never averaged.
    A part is clear when all its materials are: list them by hand or as a bill of materials. A lot is as good as its worst part.
    Lot size and sampling plan say how many pieces must be measured. No measured piece may be over.
page-guide-exemptions = Exemptions
page-guide-exemptions-text =
    An exemption is never applied by itself. Claim it for one material, name the evidence, and let a second person sign.
    It counts only for its use, its category and until its day. State the day of placing on the market and the category.
    Dates that were not found, or are known from memory only, are marked as such. Look them up before you rely on them.
page-guide-halogens = Halogens
page-guide-halogens-text =
    Chlorine, bromine and their total are always computed. They hold a lot only if you name halogen rules under “Halogen rules”.
    Where one part was not detected, the total is a range. It is below only if its upper end is.
    Clean the surface first: flux, salt and labels hold chlorine.
page-guide-next = What comes next
page-guide-next-text =
    All that is open is gathered by what would settle it, worst first. Each step leads to its readings or to the field that is missing.
    Measuring longer helps only outside the band’s edges; the page says how long, or that no time will do.
    A laboratory’s result is entered under “Laboratory results”. Request, notice and labels lie ready in “Write it down”.
page-guide-report = Writing the report
page-guide-report-text =
    Fill in who, where and when. The program reads no clock: a day stands there only if you give it.
    Take one page for whoever decides, the full report for your records, and the data as CSV, workbook or JSON. The report can be in another language than the page.
    Sign the printed page: its digest stands beside the signatures and ties the paper to the data.
page-guide-prove = Proving a report
page-guide-prove-text =
    Drop a report back on the page. It is computed again from the data it carries, and every difference is named.
    Alone, that shows only that the report agrees with itself. With its files beside it, that the data are theirs; with the digest from signed paper, that it is the report that was signed.
page-guide-keep = Keeping, and leaving nothing
page-guide-keep-text =
    The head of the page says whether your work is saved. Press it to save the inspection to a file; everyone who has that file can read it.
    An encrypted recovery copy lies in this browser. After a crash only the code you were shown opens it, so write it down.
    “Leave nothing on this computer” keeps no copy and remembers nothing. Use it on a borrowed computer, and empty its folder of downloads.
page-guide-wrong = When something goes wrong
page-guide-wrong-text =
    A message says what, where, why and what to do, and stays until you close it. Your files are never changed.
    If the program stops, it starts afresh with your files and acts, without the file that stopped it.
    A diagnostic file helps whoever mends the program. It holds no measurement and no name; look at it before you save it.
page-guide-safety = Safety
page-guide-safety-text =
    An analyser sends out ionising radiation. Never point it at anyone, never hold a sample in front of it by hand, and use its stand or shield.
    Grinding, scraping and cutting make dust that may hold lead, cadmium or chromium: wear a mask and gloves, draw the dust off, wash your hands.
    Follow the rules of the site and of the analyser’s papers. This page knows neither.
page-guide-law = Law and licence
page-guide-law-text =
    In many countries only trained or licensed people may use an X-ray analyser, and only where it is registered. Ask before you measure.
    Rules differ by country and change. The rule books here have dates and sources; check that they are the ones that hold for you.
    Screening is no declaration of conformity, and an accept here is not one either. It shows that nothing over a limit was found in what was measured.

## The tour

page-tour-offer = First time here? Six stops, one minute, with invented data.
page-tour-start = Show me round
page-tour-not = No, thank you
page-tour-at = Stop { $n } of { $of }
page-tour-next = Next
page-tour-back = Back
page-tour-leave = Leave
page-tour-end = Back to the first screen
page-tour-none = This copy of the page carries no deliveries to show.
page-tour-steps = Five questions
page-tour-steps-text = Every delivery goes through five questions, from left to right. A number shows where something waits for you. This one is invented.
page-tour-came-in-text = Every row of a file has one fate, and the counts add up. What the file left open is asked below.
page-tour-trust-text = Each card is one kind of evidence. Where it says “missing”, the lot is held until it is given.
page-tour-says-text = Each lot stands with its worst reasons first. Words with a dotted line explain themselves: point at one, or tap it.
page-tour-next-stop-text = All that is open, gathered by what would settle it. Each button leads to its place.
page-tour-write-text = Say who reviewed what, and take the report away. Undo takes back anything you record. That was all.

## Keys

page-keys-heading = Keys of this page
page-keys-what = What it does
page-keys-key = Key
page-keys-anywhere = Anywhere
page-keys-table = In the table of readings
page-keys-cards = In cards and lists
page-keys-photo = On a photograph
page-keys-single = Use keys without Ctrl or Alt ({ $keys })
page-keys-single-hint = Switch them off if you speak to your computer or press keys by mistake.
page-key-guide = Open the guide
page-key-keys = Show this list
page-key-place = Go to { $place }
page-key-next = To the next thing to do
page-key-filter = Go to the search field of the table
page-key-rows = One row up or down
page-key-cells = One cell to the side
page-key-heads = From one heading to the next
page-key-head-sort = Sort by this heading
page-key-head-term = What the heading means
page-key-screens = A screenful up or down
page-key-ends = First or last row
page-key-open = Open the reading
page-key-fold = Open or close a group
page-key-select = Select rows
page-key-select-one = Select this row, or leave it out
page-key-select-all = Select all rows shown
page-key-copy = Copy what is selected, for a spreadsheet
page-key-select-none = Select nothing
page-key-close = Close what is open
page-key-take = Record what was picked
page-key-pick = Pass over the values of a list, without recording
page-key-spot = Move the mark; with Shift, finely
page-key-spot-take = Record the mark

## The diagnostic file

page-diagnostic = Diagnostic file
page-diagnostic-save = Save a diagnostic file
page-diagnostic-look = This is all that will be in the file. No name, no heading, no cell, no number you measured and nothing you typed. Nothing is sent: give the file to whoever looks after Plumbline for you.
page-diagnostic-text = Content of the diagnostic file
page-diagnostic-write = Save this file

## Why something went wrong, in plain words

page-trouble-raw = For whoever helps you
page-trouble-crash-why = Plumbline itself has a fault: it met something its makers did not think of. Your files are as they were.
page-trouble-crash-no-answer-why = The calculating part gave no answer for five seconds. The computer may be very busy or short of memory.
page-trouble-page-why = Plumbline itself has a fault. Your files are as they were.
page-trouble-engine-why = The browser did not run the calculating part of this page. It may be short of memory, or a security setting stops it.
page-trouble-gone-why = It is no longer where it was when you chose it: it was moved, renamed or deleted, or the stick was pulled out.
page-trouble-locked-why = The computer does not let the browser read it: it was changed since you chose it, another program has it open, or the stick was pulled out.
page-trouble-reading-why = The browser could not read it.
page-trouble-not-text-why = It holds signs that are no plain text. It may be another kind of file, or saved in another text encoding.
page-trouble-not-text-todo = Choose the file that was written as settings, mapping, rule book or history. If you wrote it by hand, save it as UTF-8.
page-keycap-enter = Enter
page-keycap-ctrl = Ctrl
page-keycap-space = Space
page-keycap-escape = Esc
page-keycap-shift = Shift
page-keycap-pgup = Page Up
page-keycap-pgdn = Page Down
page-keycap-home = Home
page-keycap-end = End

# What the program was doing when it stopped; the others stand with the page's own words.
page-step-ahead = looking at what lies ahead of a lot
page-step-checks = looking at check readings
page-step-shelf = listing the rule books
page-step-explained = explaining a rule book
page-step-summary = gathering the findings
page-step-teach = learning a language
page-step-speak = changing the language
page-step-history = reading a history
page-step-bill = reading a bill of materials

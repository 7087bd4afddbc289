# The page's own words. What the findings say stands in core.ftl.

page-skip = Skip to the work
page-steps = The five questions
page-undo = Undo
page-redo = Redo
page-cancel = Cancel
page-start-again = New inspection
page-bring-back = Back to the inspection before
page-today = Today
page-program = Plumbline { $version }. Works from this one file; nothing leaves this computer.
page-not-a-declaration = Screening is not a declaration of conformity.
page-cautions = What screening cannot tell
page-cautions-read = { $n ->
    [one] Read { $n } caution
   *[other] Read { $n } cautions
  }
page-written = Written down
page-invented = invented
page-nothing-yet = Nothing has come in yet. Choose result files, or drop them anywhere on this page.
page-no-file-read = No file could be read.
page-no-readings = No reading came out of the files.
page-look-at-came-in = Look at What came in.
page-and-more = { $names } and { $n } more

# Sizes and places in a file
page-bytes = { $n } bytes
page-kib = { $n } KiB
page-mib = { $n } MiB
page-at-line = line { $line }
page-at-column = column { $column }
page-at-column-headed = column { $column } “{ $heading }”
page-line-name = Line { $line }
page-unit-name = piece { $unit }
page-spot-name = spot { $spot }

# The first screen
page-start-heading = Does the delivery hang true?
page-start-lead = Plumbline reads the XRF screening results of a delivery, says for each substance whether it lies below its limit, over it, or undecided, and says what is still missing before anyone can accept the lot.
page-promise = Everything happens inside this file, on this computer. The page is not able to send anything anywhere.
page-door-inspect = Inspect a delivery
page-door-inspect-what = Results came with the goods, or from your own analyser. See what they say, lot by lot, and what to do next.
page-door-inspect-enter = Choose result files
page-door-ship = Check before shipping
page-door-ship-what = For suppliers: the same review before the goods leave, showing what your customer would hold. If the customer gave you a rule book file, add it first.
page-door-ship-enter = Choose files for a self-check
page-door-ship-rules = Add the customer’s rule book first
page-door-ship-title = Self-check before shipping
page-door-train = Train
page-door-train-what = Try everything on deliveries to a company that does not exist. Each shows one thing worth knowing.
page-door-train-invented = All invented: company, suppliers, lots and numbers.
page-lesson = { $title }: the story, and what the review should show
page-lesson-before = Previous delivery
page-lesson-next = Next delivery
page-door-label-inspect = Inspection
page-door-label-ship = Self-check, not a declaration of conformity
page-door-label-train = Training with invented data
page-self-check = Self-check.
page-self-check-what = It shows what your customer would hold or not accept. It is not a declaration of conformity.
page-demo-none = This copy of the page carries no training deliveries.

# Bringing files in
page-bring-heading = Bring files in
page-bring-drop = Or drop files and folders anywhere on this page.
page-bring-kinds = Tables as CSV, TSV or text, workbooks (XLSX, ODS), or ZIP archives of them; also an inspection that was saved.
page-bring-files = Result files
page-bring-folder = Result folder
page-bring-settings = Settings file
page-bring-mapping = Mapping file
page-bring-rules = Rule book file
page-bring-history = History file
page-bring-bill = Bill of materials
page-drop-cover = Drop to read

# The five places
page-place-came-in = What came in?
page-place-trust = Can we trust it?
page-place-says = What does it say?
page-place-next = What next?
page-place-write = Write it down
page-needs-came-in = { $n ->
    [one] { $n } thing to look at
   *[other] { $n } things to look at
  }
page-needs-trust = { $n ->
    [one] { $n } item missing
   *[other] { $n } items missing
  }
page-needs-says-held = { $n ->
    [one] { $n } lot held
   *[other] { $n } lots held
  }
page-needs-says-not-accept = { $n ->
    [one] { $n } lot not accept
   *[other] { $n } lots not accept
  }
page-needs-next = { $n ->
    [one] { $n } step open
   *[other] { $n } steps open
  }
page-needs-write = { $n ->
    [one] { $n } field empty
   *[other] { $n } fields empty
  }

# Work, events
page-work-label = Work under way
page-work-reading = Reading file { $n } of { $of }: { $name } ({ $size })
page-work-folder = { $n ->
    [one] Looking through the folder: { $n } file so far
   *[other] Looking through the folder: { $n } files so far
  }
page-work-reviewing = Reviewing
page-work-writing = Writing { $file }
page-event-files = { $of ->
    [0] Nothing new came in.
    [one] { $n } of { $of } file read.
   *[other] { $n } of { $of } files read.
  }
page-event-twice = { $n ->
    [one] One was here already and is not counted twice: { $names }.
   *[other] { $n } were here already and are not counted twice: { $names }.
  }
page-event-removed = { $name } was taken out. Undo puts it back.
page-event-settings = Settings taken from { $name }.
page-event-rules = Rule book taken from { $name }.
page-event-history = History taken from { $name }.
page-event-bill = Bill of materials taken from { $name }.
page-event-mapping = Meanings of columns taken from { $name }.
page-event-cancelled = Cancelled. Everything stands as it did before.
page-event-undone = Undone: { $act }
page-event-brought-back = The inspection before is back, with its files and acts.
page-event-same-name = Here already under this name, with other content: { $names }. Both count. Take one out if it replaces the other.
page-event-taken = Taken: { $act }
page-event-redone = Done again: { $act }
page-event-shown = { $n ->
    [one] { $n } of { $of } readings shown.
   *[other] { $n } of { $of } readings shown.
  }
page-event-written = { $file } was handed to the browser’s downloads.

# Troubles: what, where, why, what to do
page-troubles = What went wrong
page-trouble-where = Where
page-trouble-why = Why
page-trouble-todo = What to do
page-trouble-close = Close
page-trouble-engine-what = The calculating part did not start.
page-trouble-engine-where = This page, while it was opening
page-trouble-engine-todo = Reload the page. If it happens again, the file may be damaged: get a fresh copy, or use the command line program.
page-trouble-page-what = Something in the page itself went wrong.
page-trouble-page-where = The page, not your files
page-trouble-page-todo = What you see may be incomplete. Under “Saving”, save the inspection to a file; then reload the page and open that file, or bring the inspection back with its code.
page-trouble-unreadable-what = A file could not be read.
page-trouble-changed-why = It is shorter than it was when it was chosen: it was changed or cut short while it was read.
page-trouble-unreadable-todo = The file may have been moved, changed or unplugged since it was chosen. Choose it again. The other files were read.
page-trouble-folder-what = A dropped folder could not be opened.
page-trouble-folder-todo = Choose it with “Result folder” instead.
page-trouble-settings-what = The settings file was not taken; nothing was changed.
page-trouble-settings-results-why = This looks like results, not settings.
page-trouble-settings-results-todo = Choose it under “Result files”. A settings file is one that was downloaded here, under “Settings”, or one written by hand; its name ends in .toml.
page-trouble-rules-what = The rule book was not taken; nothing was changed.
page-trouble-history-what = The history was not taken; nothing was changed.
page-trouble-bill-what = The bill of materials was not taken; nothing was changed.
page-trouble-mapping-what = The mapping file was not taken; nothing was changed.
page-trouble-act-what = This value was not taken; nothing was changed.
page-trouble-crash-what = The program stopped while it was { $step }.
page-trouble-crash-file-todo = The program was started afresh and the other files were read again without this one. Please report the file to whoever gave you Plumbline.
page-trouble-crash-step-todo = The program was started afresh and stands where it stood before this step.
page-trouble-crash-look-todo = The program was started afresh with all files and acts. Try once more.
page-trouble-crash-all-todo = The program could not be brought back to where it was. Choose the files again, a few at a time.
page-step-start = starting
page-step-open = opening a file
page-step-chunk = reading a file
page-step-finish = finishing a file
page-step-unreadable = noting an unreadable file
page-step-clear = clearing
page-step-settings = reading settings
page-step-rule-book = reading a rule book
page-step-mapping = reading a mapping file
page-step-mapping-acts = reading remembered columns
page-step-mapping-text = writing a mapping file
page-step-kept-mapping = remembering columns
page-step-choices = listing what a column may be
page-step-preview = showing rows of a file
page-step-id-template = taking ids apart
page-step-act = recording an act
page-step-review = reviewing
page-step-offers = listing what may be given
page-step-order = sorting the readings
page-step-worst = looking for the worst reading of each material
page-step-window = showing readings
page-step-detail = showing one reading
page-step-export = writing a file
page-step-settings-text = writing the settings
page-step-cancel = cancelling
page-where-act = Act “{ $kind }”
page-where-table = Table of readings
page-where-detail = Details of a reading
page-where-settings = Settings file
page-where-preview = Rows of a file
page-where-mapping = Mapping file
page-where-everything = All files and acts

# What came in?
page-rows-in = rows came in
page-rows-used = used
page-rows-check = check
page-rows-duplicate = duplicate
page-rows-set-aside = set aside
page-rows-refused = refused
page-adds-up = The rows add up: each one has exactly one fate.
page-adds-wrong = The rows do not add up. This is a fault of the program: do not rely on this review.
page-readings-made = { $n ->
    [one] They make { $n } reading.
   *[other] They make { $n } readings.
  }
page-questions-heading = { $n ->
    [one] { $n } question the files left open
   *[other] { $n } questions the files left open
  }
page-questions-all = For all { $n } files
page-need-class-of-all = { $count ->
    [one] One reading states
   *[other] { $count } readings state
    } no material class known here. Which class is it?
page-class-several = { $n } materials have no class yet: { $names }. Set one class here only if it is right for all of them.
page-class-each = Say it for each material
page-questions-each = File by file
page-questions-left = { $n ->
    [one] { $n } more file asks this: answer it for all, or in a settings file.
   *[other] { $n } more files ask this: answer it for all, or in a settings file.
  }
page-questions-lead = Until answered, the strict reading is used. Pick an answer and press Set; it shows its effect at once and can be taken back.
page-questions-answered = { $n ->
    [one] { $n } question, answered
   *[other] { $n } questions, answered
  }
page-question-answered = Answered: { $value }.
page-question-still = Still open: { $text }
page-files-heading = { $n ->
    [one] { $n } file
   *[other] { $n } files
  }
page-source-unread = not read
page-source-skipped = skipped
page-source-questions = { $n ->
    [one] { $n } question
   *[other] { $n } questions
  }
page-source-refused = { $n ->
    [one] { $n } row refused
   *[other] { $n } rows refused
  }
page-source-notices = { $n ->
    [one] { $n } notice
   *[other] { $n } notices
  }
page-source-size = { $n ->
    [one] { $n } reading, { $size }
   *[other] { $n } readings, { $size }
  }
page-source-digest = SHA-256
page-source-remove = Take this file out
page-source-remove-archive = Take the whole archive { $name } out
page-set-aside-heading = Set aside:
page-refusals-heading = { $n ->
    [one] { $n } refused row
   *[other] { $n } refused rows
  }
page-notices-heading = { $n ->
    [one] { $n } notice
   *[other] { $n } notices
  }
page-table-where = Where
page-table-why = Why
page-table-remedy = What to do
page-table-rows = Rows
page-table-left-out = { $n ->
    [one] { $n } more is not shown here; findings.json has it.
   *[other] { $n } more are not shown here; findings.json has them.
  }
page-columns-heading = { $n ->
    [one] How its { $n } column was understood
   *[other] How its { $n } columns were understood
  }
page-columns-unused = { $n ->
    [one] { $n } column not used
   *[other] { $n } columns not used
  }: { $names }
page-columns-caption = Columns of { $name }
page-columns-lead = Each column stands under the meaning that was found for it. Pick another where it is wrong: the file is read again and the effect shows at once. By keys, Enter takes what was picked.
page-columns-look = { $n ->
    [one] { $n } column to look at
   *[other] { $n } columns to look at
  }
page-columns-line = Line
page-columns-unheaded = no heading
page-columns-about = column { $column } { $heading }
page-columns-as = Taken as
page-columns-element = Element
page-columns-element-none = which?
page-columns-element-in-row = named in each row
page-columns-which-element = Pick the element it is about; until then nothing is changed.
page-columns-unit = Unit
page-columns-unit-none = not stated
page-columns-unit-as-value = as the value
page-columns-relative = % of the value itself
page-columns-sigma = Stands for
page-columns-sigma-none = not stated
page-columns-elsewhere = { $value }, stated or set for all columns
page-columns-right = Right as it is
page-columns-more-rows = { $n ->
    [one] Show { $n } row
   *[other] Show { $n } rows
  }
page-columns-fewer-rows = { $n ->
    [one] Show { $n } row only
   *[other] Show { $n } rows only
  }
page-elements-screened = The limits speak of
page-elements-other = Other elements
page-elements-oxides = Oxides, converted to the element
page-role-group-measured = Measured
page-role-group-identity = What names the reading
page-role-group-rows = Tables with a row for each element
page-role-group-unit-of-measure = Unit of measure
page-role-group-unused = Not used
page-table-heading = Table headed on line { $line }
page-table-name = { $name }, headings on line { $line }
page-table-layout = Read as { $layout }.
page-table-lines = { $n ->
    [one] The headings stand on line { $lines }.
   *[other] The headings stand on { $n } lines: { $lines }.
  }
page-table-others = { $n ->
    [one] A change here counts for { $n } other file with the same headings too.
   *[other] A change here counts for { $n } other files with the same headings too.
  }
page-blocks-left-out = { $n ->
    [one] { $n } more table in this file is not shown here.
   *[other] { $n } more tables in this file are not shown here.
  }
page-files-all = { $n ->
    [one] Show { $n } file
   *[other] Show all { $n } files
  }
page-heading-where = Where do the headings stand?
page-heading-where-why = No line was found that heads a table of elements. Press the button beside the line that does.
page-heading-rows = First rows of { $name }
page-heading-here = Headings are here
page-evidence-stands = What stands there:
page-evidence-of-file = In { $name }:
page-evidence-more = { $n ->
    [one] and { $n } more column
   *[other] and { $n } more columns
  }
page-evidence-range = { $n ->
    [one] { $n } number: { $lowest }
   *[other] { $n } numbers from { $lowest } to { $highest }
  }
page-evidence-written = as written: { $list }

# Facts of a file
page-fact-archive = From the archive
page-fact-sheet = Sheet
page-fact-sheets = { $n ->
    [one] of { $n } sheet
   *[other] of { $n } sheets
  }
page-fact-encoding = Text encoding
page-fact-stated = Used from above the table
page-fact-stated-line = line { $line }: { $key } { $value }, as { $use }
page-sheet = { $name }: { $rows ->
    [one] { $rows } row
   *[other] { $rows } rows
  }, { $columns ->
    [one] { $columns } column
   *[other] { $columns } columns
  }, { $elements ->
    [0] none
   *[other] { $elements }
  } of an element
page-sheet-hidden = hidden
page-sheet-read = read now
page-sheet-passed-over = seems to hold a table too, not read
page-encoding-utf-8 = Unicode (UTF-8)
page-encoding-utf-16le = Unicode (UTF-16, low byte first)
page-encoding-utf-16be = Unicode (UTF-16, high byte first)
page-encoding-windows-1252 = Western European (Windows-1252)
page-encoding-windows-1250 = Central European (Windows-1250)
page-encoding-windows-1251 = Cyrillic (Windows-1251)
page-encoding-shift-jis = Japanese (Shift JIS)
page-encoding-euc-jp = Japanese (EUC-JP)
page-encoding-gb18030 = Chinese, simplified (GB 18030)
page-encoding-big5 = Chinese, traditional (Big5)
page-encoding-euc-kr = Korean (EUC-KR)

# Combined ids
page-id-heading = Ids that hold part, lot or spot
page-id-lead = Where an id such as { $example } holds several things, say what each piece of it is. The others are cut the same way; one that does not fit stays whole.
page-id-piece = Piece
page-id-ignore = ignore
page-id-pattern = Pattern:
page-id-no-fit = does not fit, stays whole
page-id-set = Cut ids like this

# Remembered columns
page-remembered-heading = What is kept of columns for another day
page-remembered-note = remembered in this browser
page-remembered-used = { $n ->
    [one] Columns remembered for these headings are used.
   *[other] Columns remembered for { $n } sets of headings are used.
  }
page-remembered-meanings = { $n ->
    [one] { $n } meaning comes from another day.
   *[other] { $n } meanings come from another day.
  }
page-remembered-forget = Forget
page-remembered-forgotten = Forgotten: the columns are read as they were found.
page-remembered-recall = Bring them back
page-remembered-back = The remembered columns are used again.
page-mapping-save = Save mapping file
page-keep-nothing = Leave nothing on this computer
page-kept-hint = Meanings you give to columns are kept in this browser, by their headings, so that the next file from the same analyser needs no work. No measurement is kept. A mapping file carries them to another computer.
page-kept-nothing = Nothing is kept in this browser any more, but the wish that nothing is to be kept.
page-kept-nothing-hint = Nothing is kept but this wish itself. Save a mapping file to have the meanings of columns another day.
page-kept-again = Meanings of columns are kept in this browser again.
page-kept-refused = This browser keeps nothing for this page. Everything else works; save a mapping file to have the meanings of columns another day.

page-correct-heading = Correct how this file was read
page-correct-lead = Each correction is recorded as an act and can be undone. Some make the file be read again.

# Acts
page-act-given = Given by { $signature }.
page-act-given-unsigned = Given without initials.
page-act-in-force = Counts now: { $value }.
page-act-for = For { $about }.
page-act-for-all = For the whole inspection.
page-act-about = { $act } ({ $about })
page-act-narrower = { $n ->
    [one] { $n } narrower value stands above this one, for what it speaks of.
   *[other] { $n } narrower values stand above this one, for what they speak of.
  }
page-act-pick-one = Pick one first.
page-act-no-number = “{ $typed }” is no number. Write digits with one comma or point, such as 0.5 or 0,5.
page-act-no-whole-number = “{ $typed }” is no whole number. Write digits only, such as 480.
page-millimetres = { $value } mm
page-target-file = file { $name }
page-target-header = tables with the headings of { $name }
page-target-lot = lot { $lot } of { $supplier }
page-target-lot-unnamed = what states neither lot nor supplier
page-target-part = part { $part }
page-target-material = material { $material } of part { $part }
page-target-lot-material = material { $material } of part { $part } in lot { $lot } of { $supplier }
page-target-reading = reading at line { $line } of { $name }
page-target-unnamed = not named
page-act-no-initials = no initials
page-act-take-back = Take back
page-act-undone = (undone)
page-act-give = Set
page-act-remember = Also for later files with these headings
page-act-class-label = Material class
page-act-class-hint = For readings whose class the file does not declare. The class decides which limit band applies.
page-act-class-value-polymer = Polymer
page-act-class-value-metal = Metal
page-act-class-value-composite = Composite or electronics
page-act-class-value-plated = Plated or coated
page-act-sigma-multiple-label = The printed uncertainty is
page-act-sigma-multiple-hint = Look in the analyser’s settings or ask whoever exported the file.
page-act-sigma-multiple-value-1 = 1 sigma
page-act-sigma-multiple-value-1-96 = 1.96 sigma (95 %)
page-act-sigma-multiple-value-2 = 2 sigma
page-act-sigma-multiple-value-3 = 3 sigma
page-act-unit-of-measure-label = Values are in
page-act-unit-of-measure-hint = Only used where the file states no unit.
page-act-unit-of-measure-value-percent = % (by mass)
page-act-decimal-mark-label = Decimal mark
page-act-decimal-mark-value-point = Point, as in 1.5
page-act-decimal-mark-value-comma = Comma, as in 1,5
page-act-date-order-label = Dates are written
page-act-date-order-value-ymd = Year, month, day
page-act-date-order-value-dmy = Day, month, year
page-act-date-order-value-mdy = Month, day, year
page-act-text-encoding-label = Text encoding
page-act-text-encoding-hint = Change it where names or signs look wrong.
page-act-sheet-label = Sheet that is read
page-act-header-line-label = The headings stand on line
page-act-header-line-hint = Lines are counted from 1, blank ones too. 0: the table has no headings, and its columns go by their numbers.
page-act-detection-in-error-column-label = A number beside “< LOD” is
page-act-detection-in-error-column-hint = Some analysers print the detection limit there. Others print the error of nothing: the uncertainty of a reading that found none, of which three make the limit.
page-act-detection-in-error-column-value-limit = The detection limit
page-act-detection-in-error-column-value-one-error = One error of nothing
page-act-trust-label = Where check readings are missing
page-act-trust-hint = Until set, the lot is held. Either way it is printed.
page-act-trust-value-holding = Hold the lot (default)
page-act-trust-value-advisory = Do not hold; print it
page-act-sampling-label = Where sampling is not stated
page-act-sampling-hint = Until set, the lot is held. Either way it is printed.
page-act-sampling-value-holding = Hold the lot (default)
page-act-sampling-value-advisory = Do not hold; print it
page-act-materials-label = Where a part’s materials are not listed
page-act-materials-hint = Until set, the lot is held. Either way it is printed.
page-act-materials-value-holding = Hold the lot (default)
page-act-materials-value-advisory = Do not hold; print it
page-act-check-samples-label = Sample ids that are checks
page-act-check-samples-hint = Readings of a check standard, not of goods. Put | between several ids.
page-act-lot-size-label = Lot size
page-act-lot-size-hint = Number of pieces delivered.
page-act-units-to-take-label = Pieces to take
page-act-units-to-take-hint = What your sampling plan asks for. For restricted substances no piece may be over.
page-act-thickness-mm-label = Thickness in mm
page-act-thickness-mm-hint = Of the plastic under the beam. Thin plastic hides part of its cadmium and lead.
page-act-bill-of-materials-label = All its materials
page-act-halogen-book-label = Halogen rules that count for this delivery
page-act-title-label = Title
page-act-title-hint = Stands at the head of the report.
page-act-inspector-label = Inspector
page-act-inspector-hint = Who measured, as the report should print it.
page-act-place-label = Place
page-act-place-hint = Where it was measured.
page-act-reviewed-at-label = Reviewed on
page-act-reviewed-at-hint = Typed by you: the program reads no clock. Left empty, the report prints a blank line.
page-act-category-label = Product category
page-act-category-hint = Annex I of Directive 2011/65/EU. Exemptions divide 8 and 9: say which half it is.
page-act-category-value-1 = 1: large household appliances
page-act-category-value-2 = 2: small household appliances
page-act-category-value-3 = 3: IT and telecommunications
page-act-category-value-4 = 4: consumer equipment
page-act-category-value-5 = 5: lighting
page-act-category-value-6 = 6: electrical and electronic tools
page-act-category-value-7 = 7: toys, leisure and sports
page-act-category-value-8 = 8: medical devices, which half not known
page-act-category-value-8ivd = 8: in vitro diagnostic medical devices
page-act-category-value-8o = 8: other medical devices
page-act-category-value-9 = 9: monitoring and control, which half not known
page-act-category-value-9i = 9: industrial monitoring and control
page-act-category-value-9o = 9: other monitoring and control
page-act-category-value-10 = 10: automatic dispensers
page-act-category-value-11 = 11: other equipment
page-category-none = Not stated
page-write-papers = For the laboratory and the supplier
page-write-papers-why = Printed on the request to a laboratory and on the notice to a supplier. A date and an action for one lot alone go into a settings file.
page-act-contact-label = Questions to
page-act-contact-hint = Name, telephone or address of who answers.
page-act-reply-by-label = Suppliers reply by
page-act-reply-by-hint = Left empty, the notice prints a blank line.
page-act-requested-action-label = What suppliers are asked to do
page-act-requested-action-hint = Stands in place of what the reasons of a lot ask for. Left empty, the program says it.
page-act-placing-date-label = Placed on the market on
page-act-placing-date-hint = The day the product is made available for the first time. Exemptions and dated limits go by it.
page-who-initials = Your initials
page-who-day = Date of what you record
page-who-hint = Put on every act you record from now on. A day is only put there if you type it or press Today.

page-percent = { $value } %
page-act-relative-sigma-label = More uncertainty, in % of the value
page-act-relative-sigma-hint = One sigma, for what the printed error leaves out. It is added to every uncertainty; it makes none where there is none.
page-act-repeats-label = Readings that count as repeats
page-act-repeats-hint = Repeats of one spot are judged together where they agree.
page-act-repeats-value-same-spot = Same id, same stated spot (usual)
page-act-repeats-value-same-id = Same id, also where no spot is stated
page-act-repeats-value-never = None: each stands for itself
page-act-uncertainty-holds-label = The uncertainties hold
page-act-uncertainty-holds-hint = Only labels the probabilities; decides nothing.
page-act-uncertainty-holds-value-repeatability = Repeatability only (usual)
page-act-uncertainty-holds-value-everything = Everything there is, calibration too
page-act-mouthing-label = Could a child put it in the mouth?
page-act-mouthing-hint = The part, or one that comes off it. The exemption asks this.
page-act-mouthing-value-cannot = No, or not for the general public
page-act-mouthing-value-can = Yes
page-act-mouthing-value-release-shown = Yes, and a test shows that it releases little enough
page-act-renewal-value-pending = Asked for, not decided
page-act-renewal-value-refused = Refused
page-act-renewal-value-not-filed = Never asked for

# Can we trust it?
page-evidence-trust = Check readings
page-evidence-trust-why = { $check ->
    [0] Readings of a known sample, before and after, show that the analyser was right that day. No row is known to be a check yet: if one came in, write its sample id below.
    [one] Readings of a known sample, before and after, show that the analyser was right that day. { $check } check row came in.
   *[other] Readings of a known sample, before and after, show that the analyser was right that day. { $check } check rows came in.
  }
page-evidence-sampling = Lot size and sampling
page-evidence-sampling-why = A few good pieces say little about a large lot. The plan says how many must be measured.
page-evidence-materials = All materials of each part
page-evidence-materials-why = A limit holds for every homogeneous material. A part is only clear when all of its materials were measured.
page-evidence-thickness = Thickness
page-evidence-thickness-why = The beam goes through thin plastic, so less cadmium and lead is seen than is there.
page-evidence-class = Material class
page-evidence-class-why = Which limits apply depends on what the beam met. Not declared, every class is tried and the worst counts.
page-evidence-sigma = Uncertainty
page-evidence-sigma-why = Analysers print one, two or three sigma and seldom say which. Your own repeatability at the limit is better still.
page-evidence-halogens = Halogen rules
page-evidence-halogens-why = Halogens are always computed. They hold a lot only under a rule book that you name here.
page-evidence-claims = Exemptions claimed
page-evidence-claims-why = An exemption is never applied by itself. Somebody claims it for a material, names the evidence, and a second person signs.
page-evidence-cr6 = Chromium(VI) in coatings
page-evidence-cr6-why = The analyser sees chromium and cannot tell which kind. A laboratory’s test by area (IEC 62321-7-1) can, on metal.
page-evidence-doubtful = Doubtful readings
page-evidence-doubtful-why = Another element’s line may have been taken for a restricted one, or the measuring mode did not fit. Only other readings settle that.
page-evidence-books = Rule books
page-evidence-books-why = The screening bands always apply. Name here what else this delivery has to keep; its limits then hold lots too.
page-evidence-missing = missing
page-evidence-advisory = advisory
page-evidence-advisory-hint = “Missing” holds lots. “Advisory” is printed and holds nothing: of its nature, or because somebody chose so here or in a settings file.
page-evidence-nothing-missing = nothing missing
page-evidence-per-lot = { $n ->
    [one] For its lot
   *[other] For each of { $n } lots
  }
page-evidence-per-material = { $n ->
    [one] For its material
   *[other] For each of { $n } materials
  }
page-evidence-for-all = For all that have none of their own
page-evidence-materials-left = { $n ->
    [one] { $n } more material: use a settings file.
   *[other] { $n } more materials: use a settings file.
  }
page-evidence-files = Files and rows
page-evidence-files-why = What could not be read may hold a reading that matters.
page-thickness-column = Where a file has a thickness of its own for a reading, that stands above what is given here.
page-class-now = Counts now: { $classes }.
page-material-unnamed = Material not named
page-evidence-lots-left = { $n ->
    [one] { $n } more lot: use a settings file.
   *[other] { $n } more lots: use a settings file.
  }
page-trust-others = Other evidence missing
page-trust-show = Show these readings
page-trust-lots = { $n ->
    [one] Lot: { $names }.
   *[other] { $n } lots: { $names }.
  }
page-parts-heading = { $n ->
    [one] { $n } part, { $open } not stated
   *[other] { $n } parts, { $open } not stated
  }
page-parts-hint = Name every homogeneous material of the part, with | between the names: each piece of one make-up throughout, that no cutting or scraping parts into different stuffs.
page-parts-measured = measured: { $names }
page-parts-all = { $n ->
    [one] The measured one is its only material
   *[other] The { $n } measured are all its materials
  }
page-parts-left = { $n ->
    [one] { $n } more part: use a settings file.
   *[other] { $n } more parts: use a settings file.
  }
page-parts-unnamed = The files name no parts, so materials cannot be listed for them.
page-site-heading = { $n ->
    [0] Your own repeatability: none given
    [one] Your own repeatability: { $n } row
   *[other] Your own repeatability: { $n } rows
  }
page-site-hint = One sigma of a single reading of a sample near the limit, from your own repeats. Used in place of the printed error where given. The constant part is the share of that sigma which measuring longer does not make smaller.
page-site-offers = { $n ->
    [one] { $n } row offered
   *[other] { $n } rows offered
  }
page-site-offers-hint = Worked out from the check readings that came in. Nothing is used until you take a row over.
page-site-no-offers = No row can be worked out: that needs check readings with at least two numbers of one sample and a stated class.
page-site-offer = { $element }, { $class }: 1 sigma { $sigma } mg/kg
page-site-offer-from = from { $n } readings of { $sample }, mean { $mean } mg/kg.
page-site-offer-earlier = { $n ->
        [one] One of them is
       *[other] { $n } of them are
    } of the history, which doesn't say how long was measured.
page-site-offer-seconds = { $seconds } s each.
page-site-offer-far = The mean is far from the limit: near the limit the scatter may be another one.
page-site-offer-few = { $n } readings are few: sigma is made larger for that, and is still a rough figure. Ten or more are better.
page-site-offer-take = Take over this row
page-site-offer-taken = taken over
page-site-element = Element
page-site-class = Class
page-site-sigma = 1 sigma, mg/kg
page-site-seconds = At seconds
page-site-constant = Constant part, mg/kg
page-site-add = Add row
page-books-heading = { $n ->
    [one] { $n } rule book in use
   *[other] { $n } rule books in use
  }
page-book-source = Source
page-book-confidence = How its values are known
page-book-id = Id

page-books-named = { $n } of { $of } further rule books chosen
page-books-send = Set the books
page-event-books-none = No rule book is named any more.
page-book-not-here = This copy of the page does not have it.
page-book-note = What to know of it
page-book-loaded = Counts, since its file was loaded.
page-book-differs = was named by its digest, and the book here is another file.
page-book-missing = is named and not here, or another book stands in its place. Load its file under “Rule book file”, or strike it.
page-book-take-this = Go by the book that is here
page-book-strike = Strike it
page-doubtful-bring = Add other readings
page-form-no-initials = Put in your initials first.
page-claims-none = Nothing here needs an exemption: no cadmium, lead or mercury is over limit or undecided.
page-claims-materials = { $n ->
    [one] { $n } material that an exemption might cover
   *[other] { $n } materials that an exemption might cover
  }
page-claim-of = { $entry } for { $substance }
page-claim-number = Readings: { $number }.
page-claim-by = Evidence: { $evidence }. Claimed by { $by }, second person { $second }.
page-claim-nothing = not named
page-claim-nobody = nobody
page-claim-missing = Still missing
page-claim-refused = Why not
page-claim-book = What the rule book says of it
page-claim-change = Complete or change this claim
page-claim-change-send = Change the claim
page-claim-take-back = Take the claim back
page-claim-new = { $n ->
    [0] Claim an exemption for { $substance }
   *[other] Claim another exemption for { $substance }
  }
page-claim-some = { $n ->
    [0] No entry seems to fit.
    [one] { $n } entry may fit.
   *[other] { $n } entries may fit.
  }
page-claim-none-fits = No entry of the rule book seems to fit this material and to be in force on the day of placing on the market. One that is claimed all the same, as when its renewal is pending, is judged and shown with what is against it.
page-claim-entry = Entry
page-claim-pick = Pick an entry
page-claim-pick-first = Pick the entry first.
page-claim-fitting = May cover this
page-claim-others = Others, not for this or no longer in force as far as is known
page-claim-group = What the material is
page-claim-group-hint = Only where the readings do not show it.
page-claim-group-none = As the readings show
page-claim-evidence = Evidence
page-claim-evidence-hint = The document that shows it, such as a certificate’s number.
page-claim-second = Second person’s initials
page-claim-second-hint = Somebody else who has seen the evidence.
page-claim-same-person = The second person must be somebody else.
page-claim-make = Claim
page-exemption-number = Number
page-exemption-reading = Readings
page-exemption-categories = Categories
page-exemption-categories-all = all
page-exemption-categories-unknown = not found
page-exemption-days = Placed on the market
page-exemption-from-until = from { $from } until { $until }; the law does not say whether that last day is in
page-exemption-note = Note
page-exemption-expires = Expires { $day }.
page-exemption-not-found = Whether it still stands was not found.
page-exemption-from-memory = from memory
page-exemption-not-filed = renewal never asked for
page-exemption-starred = asks whether a child could mouth it
page-exemption-asks = It would ask:
page-renewal-heading = Renewal of { $entry }
page-renewal-state = Where it stands
page-renewal-none = Nobody said
page-renewal-pick = Pick where the renewal stands.
page-renewal-source = Where that is written
page-renewal-source-hint = A renewal counts as pending only with its source and the date of the application, at least 18 months before the expiry.
page-renewal-day = Date of the application (if never asked for: of the source)
page-cr6-none = No metal here has open chromium.
page-cr6-area = Chromium(VI) in µg/cm²
page-cr6-area-hint = As the laboratory reports it, such as 0.08, or <0.10 where nothing was found.
page-cr6-no-area = “{ $typed }” is no amount by area. Write it as 0.08 or <0.10.
page-cr6-laboratory = Laboratory
page-cr6-report = Its report
page-cr6-not-judged = Not judged: the test by area is for metal.
# What does it say?
page-lots-heading = { $n ->
    [one] { $n } lot
   *[other] { $n } lots, worst first
  }
page-lots-more = { $n ->
    [one] { $n } more lot
   *[other] { $n } more lots
  }
page-lots-left = { $n ->
    [one] { $n } more lot; the report has it.
   *[other] { $n } more lots; the report has them.
  }
page-lot-unnamed = Lot not named
page-lot-of-source = Lot not named ({ $source })
page-lot-size = { $readings ->
    [one] { $readings } reading
   *[other] { $readings } readings
  } of { $materials ->
    [one] { $materials } material
   *[other] { $materials } materials
  }
page-lot-show = Show its readings
page-lot-more-reasons = { $n ->
    [one] { $n } more reason
   *[other] { $n } more reasons
  }
page-lot-parts = { $parts ->
    [one] Its { $parts } part
   *[other] Its { $parts } parts
  }, { $materials ->
    [one] { $materials } material
   *[other] { $materials } materials
  }
page-lot-not-assessed = Not assessed:
page-lots-not-assessed = What was not assessed in these lots
page-parts-in-report = { $n ->
    [one] { $n } more part; findings.json has it.
   *[other] { $n } more parts; findings.json has them.
  }
page-material-size = { $n ->
    [one] { $class }, { $n } reading
   *[other] { $class }, { $n } readings
  }
page-part-unnamed = Part not named
page-matrix-heading = How often each outcome came up
page-matrix-outcome = Outcome
page-matrix-show = { $n ->
    [one] Show { $n } reading: { $substance } { $outcome }
   *[other] Show { $n } readings: { $substance } { $outcome }
  }
page-to-readings = Go to the readings
page-readings-heading = The readings
page-readings-label = Readings
page-readings-keys = Arrow keys move through the table, Page Up and Page Down by a screenful, Home and End to its ends; Enter opens a reading, Escape closes it.
page-readings-none = No reading fits these filters.
page-shown = { $n ->
    [one] { $shown } of { $of } readings
   *[other] { $shown } of { $of } readings
  }
page-filters = Choose which readings are shown
page-filter-text = Find text
page-filter-text-where = sample, part, lot, supplier …
page-filter-substance = Substance
page-filter-outcome = Outcome
page-filter-sort = Order by
page-filter-any = Any
page-filter-open = Anything still open
page-filter-ascending = Ascending ▲
page-filter-descending = Descending ▼
page-filter-ascending-worst = Worst first ▲
page-filter-descending-worst = Best first ▼
page-filter-clear = Show all
page-go-to-row = Go to row
page-go = Go
page-no-such-row = { $of ->
    [one] There is no row “{ $typed }”: { $of } row is shown.
   *[other] There is no row “{ $typed }”: { $of } rows are shown, from 1 on.
  }
page-sort-by = Sort by { $column }
page-order-worst = worst outcome
page-order-file = file and line
page-order-id = sample
page-order-part = part
page-order-material = material
page-order-lot = lot
page-order-supplier = supplier
page-order-class = class
page-order-value = { $symbol } value
page-column-sample = Sample
page-column-part = Part, material
page-column-lot = Lot, supplier
page-column-class = Class
page-column-file = File
page-column-trust = Trust
page-column-halogen = Halogen { $symbol }
page-column-halogen-total = Halogen total
page-class-from-declared = stated in the file
page-class-from-setting = set by a person
page-class-from-not-stated = not stated
page-class-from-not-understood = word not understood
page-class-from-not-in-book = no limits in the rule book
page-class-from-contested = contradicted by what was measured
page-detail-close = Close
page-detail-next = Next step:
page-detail-working = How this was worked out
page-detail-other-rules = What other decision rules would say, for comparison only
page-caution = Caution
page-step-class = Class
page-step-rule = Rule
page-step-value = Value
page-step-sigma = Sigma
page-step-arithmetic = Comparison
page-step-repeats = Repeats
page-step-bound = At most
page-step-probability = Chance
page-rules-rule = Decision rule
page-rules-says = Says
page-rules-risk = Chance it is wrong
page-rules-within = Within
page-rules-between = In between
page-rules-beyond = Beyond
page-composition-heading = What it seems to be made of
page-composition-take = Take over: { $class }, for { $about }
page-composition-take-hint = A suggestion is no decision. Taken over, it is recorded as your answer, counts for every reading of that material, and can be undone.
page-composition-given = Class given for { $about }: { $class }.
page-composition-no-place = This reading names no part and no material, so its class can only be given for the whole file, in What came in.
page-repeats-heading = { $n } readings of this spot
page-repeats-this = { $name } (this one)
page-limits-heading = Limits of the rule books you named
page-limits-idle = { $n ->
    [one] { $n } limit that does not apply
   *[other] { $n } limits that do not apply
  }
page-detail-unit = Piece
page-detail-spot = Spot
page-detail-part = Part
page-detail-material = Material
page-detail-lot = Lot
page-detail-supplier = Supplier
page-detail-instrument = Analyser
page-detail-time = Measured
page-detail-seconds = Seconds
page-detail-others = { $n ->
    [one] { $n } other element in the file
   *[other] { $n } other elements in the file
  }

# What lies ahead of a lot
page-ahead = What would other rules say, what would measuring longer settle?
page-ahead-longer = Measuring longer
page-ahead-rules = Other decision rules
page-ahead-rules-why = How many readings each rule would put where. They are for comparison: the screening bands decide here.
page-ahead-limit = { $name }, limit { $limit } mg/kg
page-ahead-rules-none = { $n ->
    [one] the one reading has no number with an uncertainty, or its class has no limit on the element.
   *[other] none of the { $n } readings has a number with an uncertainty in a class with a limit on the element.
  }
page-ahead-not-applicable = { $n ->
    [one] ({ $n } reading without a number, an uncertainty, or a limit on the element)
   *[other] ({ $n } readings without a number, an uncertainty, or a limit on the element)
  }
page-ahead-count = { $n } { $text }
page-ahead-candidates = { $n ->
    [one] An exemption that nobody claimed may cover it
   *[other] { $n } exemptions that nobody claimed may cover it
  }
page-ahead-candidate = Exemption { $entry }, { $substance }:
page-ahead-candidate-number = Readings: { $number }.
page-ahead-left-out = { $n ->
    [one] { $n } more material is in the report.
   *[other] { $n } more materials are in the report.
  }
page-asked-for = Working it out …
page-asked-for-nothing = There is no answer. Close and open this again.
page-where-ahead = What lies ahead of a lot
page-where-books = Rule books

# The shelf of rule books
page-shelf = Rule books: what the readings are held against
page-shelf-used = { $n ->
    [one] { $n } book in force
   *[other] { $n } books in force
  }
page-shelf-idle = { $n ->
    [one] { $n } more book on the shelf
   *[other] { $n } more books on the shelf
  }
page-shelf-edition = edition { $edition }
page-shelf-where = Where
page-shelf-days = Holds for

# What next?
page-next-expiries = Which exemptions run out, and when
page-next-expiries-why = Days on which an exemption expires that something here rests on, or may rest on.
page-next-expiry-claimed = claimed
page-next-expiry-candidate = not claimed
page-next-nothing = Nothing is open.
page-next-outcomes = { $n ->
    [one] { $n } step because of what the readings say
   *[other] { $n } steps because of what the readings say
  }
page-next-evidence = { $n ->
    [one] { $n } piece of evidence missing for an accept
   *[other] { $n } pieces of evidence missing for an accept
  }
page-next-materials = { $n ->
    [one] { $n } material
   *[other] { $n } materials
  }
page-next-give = Give it now
page-next-files = Look at the files
page-next-show = Show { $lot }
page-next-lots-left = { $n ->
    [one] { $n } more lot
   *[other] { $n } more lots
  }

# Write it down
page-write-identification = Who reviewed what
page-write-files = Take it away
page-write-reviewed-today = Reviewed today
page-write-acts = { $n ->
    [0] Nothing recorded yet
    [one] { $n } act recorded
   *[other] { $n } acts recorded
  }
page-write-acts-why = The list only grows: taking something back is recorded too.
page-write-no-acts = What you set or answer on these pages will be listed here.

page-ahead-sampling = Sampling
page-where-checks = looking at check readings
page-checks-shown = What the check readings showed
page-charts-shown = Control charts
page-checks-none = No check reading was made.
page-checks-left = { $n ->
        [one] One more check reading stands in the report.
       *[other] { $n } more check readings stand in the report.
    }
page-checks-element = Element
page-checks-found = Found
page-checks-certified = Certified, mg/kg
page-checks-score = Scores
page-checks-verdict = Says
page-charts-none = A chart needs two readings of one check standard or more, here or in a history file.
page-charts-left = { $n ->
        [one] One more chart stands in the report.
       *[other] { $n } more charts stand in the report.
    }
page-suppliers-heading = Suppliers, over all inspections
page-suppliers-why = This delivery and the history files: what earlier lots were, how near to the band they came, and how to inspect the next one.
page-suppliers-shown = What is known of them
page-suppliers-none = Nothing is known yet: no reading names a supplier, and no history was given.
page-suppliers-count = Suppliers and parts: { $n }
page-suppliers-left = { $n ->
        [one] One more stands in the report.
       *[other] { $n } more stand in the report.
    }

## Acts of several fields

page-row-pick = Pick one
page-row-add = Add
page-row-empty = Fill in something first.
page-row-needed = “{ $field }” is missing.

page-act-tube-anode-label = Anode of the X-ray tube
page-act-tube-anode-hint = The analyser’s papers name it. Its own lines reach the detector too: a rhodium tube looks like a little chlorine.

page-act-blank-samples-label = Sample ids that are blanks
page-act-blank-samples-hint = A clean piece that must show nothing. Put | between several ids.
page-act-check-rule-label = A check reading is good when
page-act-check-rule-hint = Both compare reading and certificate with their uncertainties (ISO 13528).
page-act-check-rule-value-zeta = |zeta| is at most 3 (usual)
page-act-check-rule-value-en = |E_n| is at most 1 (stricter)
page-act-bracket-label = A reading is trusted
page-act-bracket-value-before-and-after = Between two good checks (usual)
page-act-bracket-value-before = After a good check
page-act-bracket-value-per-shift = In a shift with a good check and no bad one
page-act-shift-starts-label = Shifts start at
page-act-shift-starts-hint = Such as 06:00|14:00|22:00. Left empty: one shift a day.

page-act-certificate-label = Certified value
page-certificates = Certified values of check standards
page-certificates-hint = Copy them from the certificate. A check reading without a certified value is set apart and proves nothing. They can stand in a settings file too.
page-act-certificate-field-sample = Sample id as the analyser records it
page-act-certificate-field-element = Element
page-act-certificate-field-value = Certified value, mg/kg
page-act-certificate-field-u = Expanded uncertainty U, mg/kg
page-act-certificate-field-k = k of U
page-act-certificate-field-id = Number of the certificate
page-act-certificate-field-expires = Good until
page-act-certificate-field-class = Its material
page-act-certificate-field-class-polymer = Polymer
page-act-certificate-field-class-metal = Metal
page-act-certificate-field-class-composite = Composite or electronics
page-act-certificate-field-class-plated = Plated or coated

page-parts-learned-from = accepted lot { $lot } of { $day }
page-parts-learned = As the accepted lot { $lot } had them ({ $day }): { $names }
page-chart-rules = How control charts are drawn
page-act-control-chart-label = Control charts
page-act-control-chart-field-limits = Limits from
page-act-control-chart-field-limits-baseline = The first points
page-act-control-chart-field-limits-certificate = The certificate
page-act-control-chart-field-points = How many first points
page-act-control-chart-field-points-hint = At least 8; 20 where left empty.
page-act-control-chart-field-rules = Run rules
page-act-control-chart-field-rules-western-electric = Western Electric
page-act-control-chart-field-rules-nelson = Nelson

page-act-sampling-plan-label = Sampling plan
page-plan-shown = Which pieces to take, and what that shows
page-plan-new = Work out the pieces to take from a plan
page-act-sampling-plan-field-rule = Rule
page-act-sampling-plan-field-rule-zero-acceptance = None may be over: show with a stated confidence
page-act-sampling-plan-field-rule-single = Table of MIL-STD-105E by level and AQL
page-act-sampling-plan-field-confidence = Confidence, %
page-act-sampling-plan-field-share = that fewer are bad than, %
page-act-sampling-plan-field-level = Inspection level
page-act-sampling-plan-field-severity = Severity
page-act-sampling-plan-field-severity-normal = Normal
page-act-sampling-plan-field-severity-tightened = Tightened
page-act-sampling-plan-field-severity-reduced = Reduced (105E’s own table)
page-act-sampling-plan-field-aql = AQL
page-act-sampling-plan-field-seed = Seed of the random list
page-act-sampling-plan-field-seed-hint = Any whole number, such as today’s date. The same seed gives the same pieces; it is printed. Empty: no list.

page-evidence-laboratory = Laboratory results
page-evidence-laboratory-why = A screen is no laboratory. What a reference method found settles what the screen left open, and stands beside it.
page-laboratory-open = { $n ->
        [one] One material that is not accepted or has a result
       *[other] { $n } materials that are not accepted or have a result
    }
page-laboratory-rest = { $n ->
        [one] One other material
       *[other] { $n } other materials
    }
page-laboratory-new = Enter a result
page-laboratory-hint = Without method, laboratory, report and day nobody can look it up: it then lifts nothing. Copy U from the report too.
page-laboratory-another = Enter another result
page-act-laboratory-label = Laboratory result
page-act-laboratory-field-analyte = What was determined
page-act-laboratory-field-analyte-cd = Cadmium
page-act-laboratory-field-analyte-pb = Lead
page-act-laboratory-field-analyte-hg = Mercury
page-act-laboratory-field-analyte-cr6 = Chromium(VI)
page-act-laboratory-field-analyte-cr = Total chromium
page-act-laboratory-field-analyte-pbb = PBB
page-act-laboratory-field-analyte-pbde = PBDE
page-act-laboratory-field-analyte-br = Total bromine
page-act-laboratory-field-analyte-cl = Total chlorine
page-act-laboratory-field-value = Result, mg/kg
page-act-laboratory-field-value-hint = A number, or < and the limit below which nothing was found.
page-act-laboratory-field-u = Expanded uncertainty U, mg/kg
page-act-laboratory-field-k = k of U
page-act-laboratory-field-method = Method
page-act-laboratory-field-method-hint = Such as IEC 62321-5:2013.
page-act-laboratory-field-laboratory = Laboratory
page-act-laboratory-field-report = Number of its report
page-act-laboratory-field-date = Day of the result

page-evidence-holds = Holds: who ends them, and what two people lift
page-evidence-holds-why = A hold ends by a result. Say who brings it, by when, and how many pieces wait. Some holds two people may lift together; over limit never.
page-holds-none = No lot is on hold.
page-holds-lots = { $n ->
        [one] One lot
       *[other] { $n } lots
    }
page-holds-ends = Who ends the hold, and by when
page-holds-lift = Lift with two initials:
page-holds-lift-send = Lift it
page-holds-lift-hint = It stays in the report, with both initials and the reason. The pieces don’t change by it.
page-act-hold-ends-label = End of the hold
page-act-hold-ends-field-who = Who brings what is missing
page-act-hold-ends-field-until = By which day
page-act-hold-ends-field-quarantined = Pieces kept apart
page-act-hold-ends-field-place = Where they are kept
page-act-limit-answer-label = Answer
page-act-limit-answer-field-answer = Answer
page-act-limit-answer-field-answer-yes = Yes
page-act-limit-answer-field-answer-no = No

page-act-lift-label = Lift a hold
page-act-lift-field-why = Why it may be lifted
page-act-lift-field-second = Initials of the second person

page-of-reading = What this reading is
page-act-mark-label = This reading is of
page-act-mark-hint = Only for readings that name neither lot nor part.
page-act-mark-value-product = Goods
page-act-mark-value-check = A check standard
page-act-mark-value-blank = A blank
page-act-set-aside-label = Set it aside because
page-act-set-aside-hint = It then counts for nothing and stays in the report. One that is over limit or open leaves its lot on hold.

## Photographs

page-work-photo = Making a small copy of photograph { $n } of { $of }: { $name }
page-event-photos = { $of ->
        [one] { $n ->
            [0] The photograph could not be read.
           *[other] The photograph came in.
        }
       *[other] { $n } of { $of } photographs came in.
    }
page-trouble-photo-what = The photograph could not be read.
page-trouble-photo-kind-why = The file is neither a JPEG nor a PNG picture.
page-trouble-photo-kind-todo = Save it as JPEG or PNG and choose that file. Many cameras and phones can be set to write JPEG.
page-trouble-photo-large-why = The file has more than 64 MiB.
page-trouble-photo-large-todo = Make a smaller copy of the picture and choose that.
page-trouble-photo-broken-why = The browser could not read the picture.
page-trouble-photo-broken-todo = Copy the file once more from the camera or the stick, and choose it again.
page-trouble-photo-canvas-why = This browser is set so that a page cannot make a copy of a picture: it would get noise in its place.
page-trouble-photo-canvas-todo = Allow this page to read pictures (a browser asks for it beside the address), or open it in another browser.
page-step-photo = taking a photograph
page-step-photos = matching photographs
page-step-remove-photo = taking a photograph out
page-photos-heading = Photographs
page-photos-in = { $n ->
        [one] One photograph
       *[other] { $n } photographs
    }
page-photos-lead = JPEG and PNG pictures that came with the results. Only those that you join to a reading go into the report, as a small copy without place, time and owner. Open a reading to mark the spot that was measured.
page-photos-take-all = { $n ->
        [one] Join the photograph whose name fits one reading
       *[other] Join the { $n } photographs whose names fit one reading each
    }
page-photos-more = and { $n } more
page-photos-none-here = No photograph is joined to this reading.
page-photo-missing = { $text } It belongs to: { $about }.
page-photo-shows = Shows { $about }. { $marked ->
        [yes] The spot is marked.
       *[no] No spot is marked yet.
    }
page-photo-unmatched = Its name fits no reading. Open the reading it shows and choose it there.
page-photo-offered-column = The results name { $file } for this reading.
page-photo-offered-name = { $file } is named as the sample of this reading.
page-photo-offered-within = The name { $file } holds the sample of this reading.
page-photo-ambiguous = The name fits { $n } readings. Only you can say which it shows.
page-photo-take = Join this photograph
page-photo-choose = Photograph of this reading
page-photo-choose-none = Choose one
page-photo-leave = Not this photograph
page-photo-no-mark = Remove the spot
page-photo-alt = Photograph { $file }
page-photo-pad = Photograph { $file }. { $spot }
page-photo-spot = Spot at { $x } % from the left, { $y } % from the top.
page-photo-no-spot = No spot is marked.
page-photo-press-enter = { $spot } Press Enter to record it, Escape to leave it.
page-photo-move-first = Move the mark with the arrow keys first, then press Enter.
page-photo-keys = Tap where the measurement was made. By keyboard: arrow keys move the mark (with Shift, finely), Enter records it.

## Languages

page-language = Language
page-event-language = This page is in English now.
page-write-report-language = Reports and papers in

## Stated for the report

page-stated = More that the report says: issuer, customer, items, sampling, sign-off
page-stated-why = No file holds these. What you leave out is printed as not stated, or as a line to fill in by pen. None of it moves a disposition.
page-stated-all = whole inspection
page-stated-issuer = Who issues the report
page-stated-customer = Who it is for
page-stated-item = What the items are and how they looked
page-stated-sampled = How the samples were taken
page-stated-authorised = Who authorises the report
page-stated-lots = Lot by lot ({ $n })
page-stated-invented-none = Not said
page-act-issued-on-label = Date of issue
page-act-received-label = Items received on
page-act-received-hint = A lot that came another day can say so below.
page-act-environment-label = Conditions where it was measured
page-act-environment-hint = Such as temperature, dust, wind: what may matter to the readings.
page-act-deviations-label = Additions, deviations, exclusions
page-act-deviations-hint = What was done beside the method, otherwise than the method, or left out.
page-act-instrument-label = Instrument
page-act-instrument-hint = Where the files do not name it: type and number.
page-act-records-kept-label = Records are kept
page-act-records-kept-hint = How long, and where.
page-act-invented-label = Invented data
page-act-invented-hint = Marks every printed page, so that nobody takes an exercise for a result.
page-act-invented-value-yes = Yes, for training
page-act-invented-value-no = No, these are real
page-act-issuer-label = Issuer
page-act-issuer-field-name = Name
page-act-issuer-field-address = Address
page-act-customer-label = Customer
page-act-customer-field-name = Name
page-act-customer-field-contact = Contact
page-act-item-label = Items
page-act-item-field-description = Description
page-act-item-field-condition = Condition on arrival
page-act-sampled-label = Sampling
page-act-sampled-field-date = Day
page-act-sampled-field-by = By whom
page-act-sampled-field-place = Where
page-act-sampled-field-method = Plan or method
page-act-authorised-label = Sign-off
page-act-authorised-field-by = Authorised by
page-act-authorised-field-second = Second person

## Check a report

page-prove-heading = Check a report
page-prove-door-what = Someone handed you a Plumbline report? See whether it is what its own data give, and whether it was changed.
page-prove-door-enter = Go to the check
page-prove-lead = Everything in the report is computed again from the data it carries, and compared. What differs is named.
page-prove-drop = Drop the report anywhere on this page, or choose it. Drop its files with it, if you have them. An open inspection is not touched.
page-prove-report = Report to check
page-prove-beside = Files it was made from
page-prove-beside-hint = Only with these the check shows that the report holds the data of those files.
page-prove-digest = Digest from the signed paper
page-prove-digest-hint = The 64 digits beside the signatures. Spaces, capitals and line breaks do not matter.
page-prove-digest-enter = Compare the digest
page-prove-digest-odd = “{ $sign }” is no digit of a digest. It has the digits 0 to 9 and the letters a to f only: look whether a 0 was taken for an O, or a 1 for an l.
page-prove-digest-length = { $n ->
    [one] A digest has 64 digits. This is { $n } digit.
   *[other] A digest has 64 digits. These are { $n }.
  } Look whether one was left out or typed twice.
page-prove-report-first = Choose the report; the digest is compared then.
page-prove-waiting = { $n ->
    [one] { $n } file lies ready. Now choose the report.
   *[other] { $n } files lie ready. Now choose the report.
  }
page-prove-work = Checking { $name } ({ $n } of { $of })
page-prove-event = { $name }: { $word }. { $verdict }
page-prove-event-several = { $of ->
    [one] { $of } report checked. Reports that agree: { $n }.
   *[other] { $of } reports checked. Reports that agree: { $n }.
  }
page-prove-cancelled = The check was cancelled. The inspection was not touched.
page-prove-crash-todo = The inspection was not touched. Check the report once more, with only the files it names. If it happens again, send report and files to whoever gave you Plumbline.
page-prove-unreadable-todo = Choose the report and its files again. Take only the files that the report names.
page-prove-too-much = { $size } is more than the { $most } a browser can hold for this.
page-prove-not-yet = Not checked yet.
page-prove-word-findings = Only its findings agree
page-prove-word-self = Agrees with itself
page-prove-word-files = Agrees with its files
page-prove-word-digest = Agrees with the digest
page-prove-word-both = Agrees with files and digest
page-prove-word-differs = Differs
page-prove-word-contradicted = Contradicted by what was given
page-prove-word-open = Could not be checked
page-prove-differs = Where it differs
page-prove-shows = What this shows
page-prove-next = What to do next
page-prove-files = Files
page-prove-finding = Findings, line { $line }
page-prove-says = The report says
page-prove-gives = Its data give
page-prove-nothing-there = nothing
page-prove-digest-typed = Typed from paper
page-prove-digest-computed = Computed from the report
page-prove-digest-groups = { $n ->
    [one] { $n } of { $of } groups is another.
   *[other] { $n } of { $of } groups are others.
  } They are underlined.
page-prove-digest-not-compared = The digest you typed could not be compared: the data of this report give none.
page-prove-next-differs = Do not rely on this copy. Keep it as it is, and ask whoever issued it for the report again.
page-prove-next-other-bytes = Find out which file is the right one: ask for the file with the SHA-256 that the report names, and check again with it. Until then, do not rely on the report.
page-prove-next-digest-other = Compare the digits with the paper once more. If they are the same as on the paper, this is not the report that was signed: do not rely on it.
page-prove-next-other-version = To compare the wording too, check it with { $program }.
page-prove-next-language-not-here = To compare the wording too, check it with a copy of Plumbline that has its language.
page-prove-next-files = { $n ->
    [one] Give the file it was made from: { $n } is missing.
   *[other] Give the files it was made from: { $n } are missing.
  }
page-prove-next-digest = If you have the signed paper, type its digest: that shows whether this is the report that was signed.
page-prove-next-nothing = Nothing is left to check. Keep the report and its files together.
page-prove-next-files-needed = Give the files it was made from: without them there is nothing to compute from.
page-prove-next-evidence-missing = Ask for the report as the file that Plumbline wrote. A copy that an editor or a browser saved, or a printed one, has lost its data.
page-prove-next-not-a-report = Choose the HTML file that Plumbline wrote. Result files go to “Result files” on the first screen.
page-prove-files-more = { $n ->
    [one] { $n } more file
   *[other] { $n } more files
  }
page-prove-strangers = { $n ->
    [one] { $n } file given that the report does not name
   *[other] { $n } files given that the report does not name
  }
page-prove-another = Check another report
page-prove-print = Print this result
page-prove-inspect = { $n ->
    [one] Read the { $n } file as results instead
   *[other] Read the { $n } files as results instead
  }
page-prove-by = Checked by Plumbline { $version }.
page-prove-untouched = Checking a report changes nothing in an inspection, and nothing of it is kept.
page-step-prove-begin = beginning to check a report
page-step-prove-beside = taking a file beside a report
page-step-prove-push = reading a report
page-step-prove-end = checking a report

## What can be taken away

page-take-download = Download
page-take-open = Open or print
page-take-print = What opens in a tab of its own is printed there, by the browser’s own print command.
page-take-looking = Looking which papers there are …
page-take-one-page = Report on one page
page-take-one-page-why = For whoever decides: how the lots stand, the leading reasons, what comes next, and lines to sign.
page-take-report = Full report
page-take-report-why = For your records, the customer and the auditor: all that the decision rests on, and the data it can be checked by.
page-take-annex = Annex to the report
page-take-annex-why = For whoever wants to see the readings: up to a thousand of them, under the number of the report.
page-take-laboratory = Request to the laboratory
page-take-laboratory-why = Goes with the samples: what to determine, by which method, and why.
page-take-laboratory-count = { $n ->
    [one] { $n } sample.
   *[other] { $n } samples.
  }
page-take-laboratory-none = Nothing waits for a laboratory: no request.
page-take-notices = Notices to suppliers
page-take-notice = Notice to { $supplier }
page-take-notice-why = Goes to the supplier: what was found, what is asked of it, and when to reply.
page-take-notice-count = { $n ->
    [one] { $n } lot.
   *[other] { $n } lots.
  }
page-take-notices-none = No lot is held or not accepted: no notice.
page-take-notices-nameless = { $n ->
    [one] { $n } lot that is held or not accepted names no supplier: no notice for it.
   *[other] { $n } lots that are held or not accepted name no supplier: no notice for them.
  }
page-take-notices-more = { $n ->
    [one] { $n } more supplier has a notice. The command line writes it with --papers.
   *[other] { $n } more suppliers have a notice. The command line writes them all with --papers.
  }
page-take-labels = Labels
page-take-labels-why = For the goods: print the sheet, cut it, and stick a label on each lot that must wait.
page-take-labels-count = { $n ->
    [one] { $n } label.
   *[other] { $n } labels.
  }
page-take-labels-none = No lot is held or not accepted: no labels.
page-take-xlsx = Findings as a workbook
page-take-xlsx-why = For colleagues who work with a spreadsheet: a sheet each for lots, materials, readings and checks.
page-take-csv = Findings as CSV
page-take-csv-why = For a spreadsheet or another program: a row for each reading.
page-take-json = Findings as JSON
page-take-json-why = For another program: everything, in a documented form.
page-take-history = History for the next stick
page-take-history-why = For your next inspection: check readings and lots of this and earlier ones. Two that grew apart are united.
page-take-settings = Settings
page-take-settings-why = For another day: what you recorded, as a file that this page and the command line read.
page-where-papers = Papers for others
page-step-papers = listing papers

# Between things in a row; between longer pieces; after what a text is about; after a few words that a sentence follows;
# between sentences; and what adds to the word before it.
page-join-list = {", "}
page-join-series = {"; "}
page-join-colon = {": "}
page-join-stop = {". "}
page-join-gap = {" "}
page-join-brackets = {" "}({ $text })

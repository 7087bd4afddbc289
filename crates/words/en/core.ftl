### What core says: findings, reasons, errors, report. One message a code; numbers come as they are.

## Outcomes: the code's short form and its words

outcome-BL = below limit
    .short = BL
outcome-X = undecided
    .short = X
outcome-OL = over limit
    .short = OL
outcome-not_measured = not measured
    .short = not measured
outcome-no_uncertainty = no uncertainty
    .short = no sigma
outcome-detection_too_high = detection limit too high or not stated
    .short = limit high or none
outcome-not_capable = not capable at this sigma
    .short = not capable
outcome-not_applicable = not applicable
    .short = n/a

## Reasons of an outcome

reason-no_column = The file has no column for { $about }.
reason-cell_blank = The cell for { $about } is empty or a dash.
reason-cell_not_understood = The cell for { $about } holds text that is no measurement.
reason-unit_not_stated = The unit of { $about } is not stated, so the number is not a mass fraction yet.
reason-detection_limit_above_band = Not detected, but the detection limit is too high to show "below".
reason-limit_not_stated = Not detected, and no detection limit is stated anywhere.
reason-uncertainty_not_stated = The number has no uncertainty beside it (blank or zero).
reason-three_sigma_reaches_band = Three sigma alone reach the low edge of the band, so this measurement cannot show "below". For this value a sigma of at most { $enough } mg/kg would do.
reason-three_sigma_reaches_band-inside = Three sigma alone reach the low edge of the band, and the value itself lies at or above it: no measuring time can show "below".
reason-three_sigma_reaches_band-open = Three sigma alone reach the low edge of a band, so this measurement cannot show "below".
reason-inside_band = The reading and its three sigma touch the undecided band.
reason-element_only = Above the low edge. XRF sees the element, not the substance, so this can never be "over".
reason-layer_not_resolved = A plated, coated or passivated item: the beam averages the layer and what lies under it.
reason-above_range = Above the upper end of the analyser's range, which lies below the high edge of the band.
reason-negative_beyond_error = So far below zero that its error can't explain it: something moved the reading by as much as the limit, and may hide as much of the substance.
reason-composite_needs_detection_limit = Cadmium in a composite is "below" only at or under a stated detection limit of at most 50 mg/kg, with three sigma of at most 50 mg/kg.
reason-repeats_disagree = Repeats of this spot differ by more than their uncertainties allow, so none of them is taken for the spot's value.
reason-thin_sample = Too thin: the signal a thicker piece would add reaches the band.
reason-not_applicable_in_metal = Does not apply to metal.
reason-around_limit = The limit lies within the reading's three sigma.
reason-censored_part = One part is only known to lie below its detection limit; the total is an interval across the limit.
reason-part_not_measured = One part of the sum was not measured.
reason-part_without_uncertainty = One part of the sum has no uncertainty.
reason-part_limit_not_stated = One part of the sum was not detected and its detection limit is not stated.
reason-one_part_alone = One part alone is over the limit of the total.
reason-copper_or_glass_in_beam = Below the limit, but in a composite copper or glass in the beam dilutes the resin.

## Where the sigma came from

sigma-printed = printed error, multiple stated in the file
sigma-printed_multiple_unknown = printed error, multiple not stated: taken as one sigma, which widens the band
sigma-printed_multiple_set = printed error, multiple set by a person
sigma-site_table = the site's repeatability at the action level
sigma-repeats = what repeats of the spot show, which is more than what is printed
sigma-detection_limit = detection limit divided by three
sigma-none = none

## Material classes

class-polymer = polymer
class-metal = metal
class-composite = composite / electronics
class-plated = plated, coated or passivated
class-unknown = class not known
class-from-declared = stated in the file
class-from-setting = set by a person
class-from-not_stated = nobody stated it
class-from-not_understood = the file's word is not a class known here
class-from-not_in_book = the rule book has no bands for it

## Substances

substance-Cd = cadmium
substance-Pb = lead
substance-Hg = mercury
substance-Cr = chromium (total)
substance-Br = bromine (total)
substance-Cl = chlorine
substance-total = chlorine + bromine
halogen-Cl = Cl
halogen-Br = Br as a halogen
halogen-total = Cl + Br
stands-for-Cr = stands for Cr(VI), which XRF cannot see
stands-for-Br = stands for PBB and PBDE, which XRF cannot see

## Dispositions

disposition-accept = accept for the substances screened
material-disposition-accept = nothing found against it
material-disposition-hold = hold
material-disposition-not_accept = not accept
disposition-hold = hold
disposition-not_accept = not accept

## Reasons of a disposition, worst first, each with what ends it

lot-reason-over_limit = { $about } is over limit in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Quarantine the lot. Send the worst sample to a laboratory by the reference method; only its result or a valid exemption can change this.
lot-reason-halogen_over_limit = { $about } is over the halogen limit in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Quarantine the lot. Confirm by the method named with each reading.
lot-reason-over_in_some_classes = { $about } is over limit under some of the material classes this may be, in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = State the material class.
lot-reason-not_measured = { $about } was not measured in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Measure it, or state the unit where the number has none.
lot-reason-no_uncertainty = { $about } has no uncertainty in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Export the error column, or give a site table of repeatability.
lot-reason-detection_too_high = { $about }: the detection limit is too high or not stated in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Measure longer to lower the detection limit, or export it.
lot-reason-not_capable = { $about }: the sigma is too large to show "below" in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Measure longer, or use the reference method.
lot-reason-undecided = { $about } is undecided in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Follow the next step of each reading: measure longer, another spot, or the reference method.
lot-reason-halogen_open = { $about } is open under the halogen book in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }.
    .remedy = Follow the next step of each reading.
lot-reason-file_not_read = The file "{ $about }" was not read, or none of its rows; something measured may stand in it.
    .remedy = Look at the file under "What came in?": give it in a form that is read, or take it out of the inspection.
lot-reason-units_not_stated = { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    } do not say which physical unit they were made on, so the plan's units cannot be counted.
    .remedy = Name the unit (piece) of each reading in a Unit column.
lot-reason-rows_refused = { $count ->
        [one] One row of the source was
       *[other] { $count } rows of the source were
    } refused; something measured may be missing here.
    .remedy = Look at the refused rows, correct the file or measure again.
lot-reason-layer_among_classes = Readings of this material differ on its class, and { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    } { $count ->
        [one] is
       *[other] are
    } of a layer (plated, coated or passivated); what is measured through a layer stays undecided.
    .remedy = Give layer and bare material two names in the file and bring it again, or state plated for both.
lot-reason-class_unknown = The material class of { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    } is not known, or readings of one material differ on it; they were judged under every class and the worst counts.
    .remedy = State the material class. What is two materials needs two names.
lot-reason-thickness_not_stated = Cadmium or lead is below limit in plastic or light alloy whose thickness is not stated ({ $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }); a thin piece shows less than it holds.
    .remedy = State the thickness in millimetres.
lot-reason-material_not_measured = Material "{ $about }" of the part was not measured: no reading of it counts.
    .remedy = Measure it.
lot-reason-bill_of_materials_none = No bill of materials is given for { $count ->
        [one] a part
       *[other] { $count } parts
    }, so materials may be unmeasured.
    .remedy = List the part's homogeneous materials.
lot-reason-material_not_listed = "{ $about }" was measured and is not on the part's bill of materials: this may not be the material that was agreed.
    .remedy = Find out what it is; correct the bill of materials or reject the change.
lot-reason-sampling_none = The lot size, or how many units the plan asks for, is not given, so nothing shows that enough was measured.
    .remedy = Give the lot size and how many units the plan asks for.
lot-reason-sampling_too_few = { $count ->
        [one] One unit was
       *[other] { $count } units were
    } measured of the least sampled material; the plan asks for { $of }.
    .remedy = Measure the missing units.
lot-reason-multiple_not_stated = The multiple of the printed errors is not stated for { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }; taken as one sigma, which widens the band.
    .remedy = State whether the error column is one, two or three sigma.
lot-reason-halogen_book_not_loaded = The inspection names the halogen book "{ $about }", which is not loaded.
    .remedy = Load the rule book file, or name one that is loaded.
reason-advisory = (printed, does not hold)

## What screening does not answer

not-assessed-phthalates = Phthalates (DEHP, BBP, DBP, DIBP): XRF gives no answer at all (IEC 62321-8).
not-assessed-pbb_pbde = PBB and PBDE: ruled out by low bromine only, never measured (IEC 62321-6). Low bromine here does not show the 10 mg/kg limit for PBDE of Regulation (EU) 2019/1021.
not-assessed-cr6 = Cr(VI): ruled out by low total chromium only, never measured (IEC 62321-7-1, -7-2). On a passivated or plated surface total chromium says nothing.
not-assessed-exemptions = Exemptions that nobody claimed: none is applied unless a claim names it, with evidence and a second person's initials.
not-assessed-change = Materials, layers and parts that were not measured.

## Next steps

next-measure_element = Measure { $about }.
next-state_unit = State the unit of the { $about } column.
next-read_cell_again = Look at the cell in the file: correct it or measure again.
next-state_uncertainty = Export the uncertainty of { $about }, or give a site table of repeatability.
next-state_detection_limit = Export the detection limit of { $about }.
next-state_class = State the material class.
next-measure_longer = Measure this spot for about { $seconds } s in all (beam not stated) for an even chance of a decision, { $surely } s for nine in ten; an estimate.
next-measure_longer_even_only = Measure this spot for about { $seconds } s in all (beam not stated) for an even chance of a decision; nine in ten would take more than { $cap } s; an estimate.
next-another_spot = Measure another spot: it shows whether the material is uneven. It may find more, and it never clears this one.
next-repeat_again = Clean the spot, lay it flat and repeat: the readings contradict each other.
next-find_shift = Find what moved the reading (calibration, background, unit), then measure the spot again.
next-lower_detection_limit = Measure longer: four times the time halves the detection limit.
next-thicker_piece = Stack pieces or measure a thicker one.
next-separate_layers = Separate the layer from what lies under it, or measure each as its own material.
next-laboratory = Send it to a laboratory; the rule book names no method.
next-reference_method = Laboratory: { $method }, { $technique }.

## Intake: what a column was taken for, and why

role-value = value
role-uncertainty = uncertainty
role-detection_limit = detection limit
role-id = sample or reading id
role-unit = physical unit
role-spot = spot
role-part = part
role-material = material name
role-lot = lot
role-supplier = supplier
role-class = material class
role-time = date and time
role-seconds = measuring time
role-instrument = instrument
role-mode = measuring mode
role-operator = operator
role-thickness = thickness
role-note = remark
role-spectrum = spectrum or filter
role-photo = photograph
role-element = name of the element
role-below_mark = mark for "below detection"
role-error_multiple = how many sigma the uncertainty stands for
role-time_of_day = time of day
role-unit_of_measure = unit of measure of the row
role-unused = not used
evidence-element_heading = the heading names the element and every other word in it is understood
evidence-element_in_another_case = the heading is an element written in another case, and so are those beside it
evidence-oxide_heading = the heading is an oxide; its numbers are converted to the element by atomic weights
evidence-holds_elements = its cells name elements
evidence-oxide_beside_element = the oxide of an element that has a column of its own; used only where that column is empty
evidence-told = a person said so
evidence-follows_element = an error heading right after the element's column
evidence-known_heading = the heading is a known word
evidence-class_words_only = every cell is a word for a material class
evidence-holds_units = the cells hold units of measure
evidence-holds_seconds = the heading says time, and its cells are small numbers and no dates
evidence-unit_not_understood = the heading names the element, but its unit is not known here, so its numbers stay text
evidence-words_not_understood = the heading starts like an element but has words that are not understood
evidence-already_taken = another column already has this meaning
evidence-not_known = the heading is not known here
confidence-sure = sure
confidence-likely = likely
confidence-look = please look
layout-wide = a row for each reading, a column for each element
layout-long = a row for each element of a reading
layout-turned = on its side: a column for each reading, a row for each element
layout-joined = several rows for each reading, joined here
encoding-by-byte_order_mark = stated by the file's first bytes
encoding-by-valid_utf8 = every byte fits it
encoding-by-byte_counts = told by where its zero bytes stand
encoding-by-words_found = words of result tables appear when it is read so
encoding-by-guess = a guess from its bytes alone: please look whether names and signs are right
encoding-by-told = a person said so
id-template-no_field = Nothing is named yet: say of at least one piece what it is.
id-template-unknown_field = One name is not known here.
id-template-field_twice = Two pieces are named the same.
id-template-nothing_between = Two pieces have nothing between them, so nobody can tell where the one ends.
id-template-open_brace = The id holds a brace, which a pattern cannot show.
id-template-too_many_fields = The id has more pieces than a pattern may have.
id-template-piece_not_in_id = A piece does not stand in the id.
id-template-separator_in_piece = What parts the pieces also stands inside one of them, so the id cannot be cut without a guess.
relative-to-value = in percent of the value
sigmas = { $multiple } sigma
set-aside-blank = empty rows
set-aside-heading = headings repeated inside the table
set-aside-remark = no sample: a remark, a key with its value, a statistic or a limit
set-aside-unit_row = rows of units

## Intake: notices and refusals, each with its remedy

notice-unreadable = The file could not be read: { $found }
    .remedy = Copy it again from the stick and try once more.
notice-empty_file = The file is empty.
    .remedy = Export it again; nothing was lost here because nothing was in it.
notice-header_only = The file has a heading row and no rows below it.
    .remedy = Export it again with the readings.
notice-not_text = The bytes are not text; this is no table, whatever its name says.
    .remedy = Export the results as CSV text.
notice-workbook_broken = { $found ->
        [no_sheet] The workbook has no sheet of cells.
       *[damaged] The workbook is cut off or damaged, or is none.
    }
    .remedy = Open it in a spreadsheet program, save it again as XLSX or CSV, and bring that file.
notice-workbook_not_read = The workbook is locked by a password, or of an old format that is not read here.
    .remedy = Save it without a password as XLSX, ODS or CSV, and bring that file.
notice-workbook_too_large = The workbook holds more than is unpacked here: { $found ->
        [ratio] it is packed far tighter than cells are.
        [cells] more than 20 million cells.
       *[part_size] more than 256 MiB in one part.
    }
    .remedy = Save the sheet with the results as CSV, and bring that file.
notice-other_sheets = Sheet "{ $found }" was read; { $rows } { $rows ->
        [one] other sheet was
       *[other] other sheets were
    } not.
    .remedy = If the results stand on another sheet, choose it for this file.
notice-sheet_not_there = The workbook has no sheet "{ $found }".
    .remedy = Choose one of its sheets for this file.
notice-archive_broken = The archive is cut off or damaged, or is none.
    .remedy = Unpack it and bring the files, or have it sent again.
notice-archive_too_large = More is packed here than is unpacked: { $found ->
        [ratio] it is packed far tighter than results are.
        [files] more than 20 000 files.
        [entry_size] a file of more than 512 MiB.
        [packed_size] more than 1 GiB as it is packed.
       *[archive_size] more than 2 GiB in all.
    }
    .remedy = If you trust where it comes from, unpack it and bring the files.
notice-entry_not_read = The file in the archive could not be unpacked: { $found ->
        [password] it is locked by a password.
        [method] it is packed by a method that is not read here.
       *[damaged] it is damaged.
    }
    .remedy = Unpack the archive with its password, and bring the files.
notice-archive_in_archive = An archive inside an archive is not unpacked.
    .remedy = Unpack the outer archive and bring the inner one.
notice-encoding_inferred = The text was read as { $found }; the file does not say so.
    .remedy = If names look wrong, choose the encoding for this file.
notice-bytes_no_character = Bytes that are no character in the encoding used, first on this line; { $rows } in all, each shown as "�".
    .remedy = If names look wrong, choose the encoding for this file.
notice-no_element_column = No column of an element was found, such as "Pb (mg/kg)". { $rows ->
        [one] Its one row is
       *[other] All { $rows } rows are
    } refused.
    .remedy = Check that the file has one heading row with element symbols, and rows below it.
notice-column_twice = "{ $found }": two columns claim to be the same element. Where both hold something, the cell counts as not measured.
    .remedy = Remove or rename one of the two.
notice-heading_not_understood = "{ $found }" starts like an element, but its other words are not understood, so it is not used.
    .remedy = If it is a mass fraction, name it like "Pb mg/kg".
notice-quote_left_open = A quotation mark opens on this line and is never closed, or closes lines later with what look like whole rows in between. What it swallowed is refused; reading goes on after it.
    .remedy = Close or remove the quotation mark.
notice-line_too_long = This line is longer than any table row (over 1 MiB). It is refused; reading goes on at the next.
    .remedy = Look at the line in the file; a line break may be missing.
notice-row_too_long = The row has more cells than the heading, first "{ $found }", so its cells may stand in the wrong columns. It is refused.
    .remedy = Look for a delimiter inside a cell that is not in quotation marks.
notice-under_unknown_heading = The row stands under a heading that was not understood, so what its numbers mean is open. It is refused.
    .remedy = Look at the heading above it: name elements like "Pb mg/kg", or give the table as a file of its own.
notice-far_below_zero = "{ $found }" is more than three printed errors below zero: perhaps a code for a missing value, or a wrong calibration. It is kept as a number.
    .remedy = Look at the cell; if it stands for a missing value, leave it empty.
notice-row_short = { $rows } { $rows ->
        [one] row has
       *[other] rows have
    } fewer cells than the heading; the missing cells count as empty.
    .remedy = Check that the rows were not cut off.
notice-nothing_usable = The row has nothing in any column that is used.
    .remedy = Remove it, or name its columns.
notice-not_utf8 = Names in { $rows } { $rows ->
        [one] row
       *[other] rows
    } are not UTF-8 and were read as Windows-1252 ("{ $found }" first).
    .remedy = If a name looks wrong, save the file as CSV (UTF-8) and load it again.
notice-cell_not_understood = "{ $found }" is not a measurement. The cell counts as not measured; the rest of its row is used.
    .remedy = Correct the cell, or measure again.
notice-number_out_of_range = "{ $found }" is beyond any mass fraction. The cell counts as not measured; the rest of its row is used.
    .remedy = Check the number and its unit.
notice-more_than_whole = "{ $found }" is more than the whole sample (over 1 000 000 mg/kg).
    .remedy = Check the unit of the column.
notice-mark_unclear = "{ $found }" has a comma or point that may be a decimal or a thousands mark. The cell counts as not measured.
    .remedy = Write numbers without thousands marks, or state the file's decimal mark.
notice-error_not_understood = The uncertainty "{ $found }" is no usable number. The value stands without uncertainty.
    .remedy = Correct the cell.
notice-error_unit_unclear = The uncertainty's unit cannot be told in { $rows } { $rows ->
        [one] row
       *[other] rows
    }: a percent sign may mean percent of the value. The values stand without uncertainty.
    .remedy = Name the column with its unit, like "Pb u mg/kg (1s)".
notice-unit_not_stated = The unit is not stated in { $rows } { $rows ->
        [one] row
       *[other] rows
    } ("{ $found }" first). The numbers are kept as text and count as not measured.
    .remedy = State the unit of the file.
notice-unit_not_known = "{ $found }" is no unit of mass fraction known here.
    .remedy = Use mg/kg, ppm, %, g/kg, ug/g or ppb.
notice-multiple_not_stated = How many sigma the error column stands for is not stated ({ $rows } { $rows ->
        [one] row
       *[other] rows
    }). Taken as one, which widens the undecided band and never clears anything.
    .remedy = State one, two or three sigma for this file.
notice-limit_in_error_column = "Not detected" with a number in the error column, in { $rows } { $rows ->
        [one] row
       *[other] rows
    } ("{ $found }" first): the number was read as { $reading ->
        [one_error] one printed error, three sigma of it as the detection limit
       *[limit] the detection limit
    }.
    .remedy = If the column means the other thing there, say so for this file.
notice-class_not_understood = "{ $found }" is not a material class known here ({ $rows } { $rows ->
        [one] row
       *[other] rows
    }). The class counts as not known.
    .remedy = Use polymer, metal, composite or plated, or set the class.
notice-same_as_another = The file has the same bytes as another and was merged with it.
    .remedy = Nothing to do.
notice-too_many_columns = A row has { $found } columns, more than any table of results. The file is not read.
    .remedy = Look at the file; export it again, or bring the table inside it.
notice-element_not_understood = "{ $found }" is no element known here. The row measures something, so it is refused.
    .remedy = If it is an element, say so for its column or correct the name.
notice-element_twice = The same element stands twice in one reading ("{ $found }"), in { $rows } { $rows ->
        [one] row
       *[other] rows
    }. Which is meant cannot be told, so it counts as not measured.
    .remedy = Say which column or spectrum is meant, or remove the other.
notice-summary_row = "{ $found }" names no sample: it sums others up or states a limit, in { $rows } { $rows ->
        [one] row or column
       *[other] rows or columns
    }. It is set aside and is no reading.
    .remedy = If it is a sample, give it another name.
notice-two_readings_in_row = The row also names "{ $found }" under the same heading: two tables stand side by side. It is refused, since a value could go to the wrong sample.
    .remedy = Put the tables one below the other, or into files of their own.
notice-stated_twice = "{ $found }" contradicts a line before it. From there on neither is used.
    .remedy = State the unit, or the multiple of sigma, for this file.
notice-oxide_converted = Numbers of { $found } are mass fractions of the oxide; they were converted to the element by atomic weights.
    .remedy = Nothing to do, if the heading is right.
notice-date_order_unclear = "{ $found }" may be day and month or month and day, in { $rows } { $rows ->
        [one] row
       *[other] rows
    }. Dates are kept as written.
    .remedy = State the order of day and month for this file.
notice-date_not_understood = "{ $found }" is no date known here, in { $rows } { $rows ->
        [one] row
       *[other] rows
    }. It is kept as written.
    .remedy = Correct the date, or state the order of day and month.
notice-id_pattern_differs = "{ $found }" does not fit the pattern shown for combined ids, in { $rows } { $rows ->
        [one] row
       *[other] rows
    }. The id is kept whole.
    .remedy = Show the pattern by another example, or correct the id.
notice-stated_above = "{ $found }", stated above the table, is used for every reading below that states none.
    .remedy = If it does not hold for all of them, set the column by hand.
notice-table_turned = The table lies on its side: each column is a reading, each row an element.
    .remedy = Nothing to do, if this is right.
notice-rows_joined = { $rows } rows, one a spectrum or filter, were joined to readings with the same sample and time.
    .remedy = If they are readings of their own, mark the spectrum column as not used.
notice-mapped_by_hand = { $rows } { $rows ->
        [one] column was
       *[other] columns were
    } set by hand for these headings.
    .remedy = Take the act back to see what is found without it.
notice-mapping_differs = A person's mapping speaks of column or line { $found }, which this table does not have. It was not used.
    .remedy = Look at the columns of this file and set them again.
notice-duplicate_reading = { $rows } { $rows ->
        [one] reading, here, stands
       *[other] readings, the first of them here, stand
    } in { $found } too and { $rows ->
        [one] says
       *[other] say
    } no more here than there. Counted once.
    .remedy = Nothing to do. If they are measurements of their own, give each its own id, spot or time.
notice-same_reading_in_parts = { $rows } { $rows ->
        [one] reading, here, stands
       *[other] readings, the first of them here, stand
    } in { $found } too, and each of the two says something that the other does not. All are kept, so the measurement counts more than once.
    .remedy = Give one file that says it all, or take out the one that is wrong. If they are measurements of their own, give each its own id, spot or time.
notice-new_header = A new heading row with other columns starts here.
    .remedy = Check that the columns below it were understood.
notice-preamble = { $found } lines before the heading row are kept as remarks.
    .remedy = Nothing to do.
notice-skipped = Not a table of results; skipped.
    .remedy = Nothing to do. Settings and rule books are given on their own, not as results.

## Settings, mapping and rule book files

problem-malformed = This line cannot be read: { $found }
    .remedy = Correct the line; a text stands in quotation marks.
problem-wrong_schema = "{ $found }" is not a kind of file read here.
    .remedy = The first line must read schema = "{ $expected }".
problem-unknown_key = There is no such key here: { $found }
    .remedy = Correct its spelling, or take the line out. The keys known in this table stand in brackets.
problem-wrong_kind = "{ $found }" is not the kind of value that belongs here.
    .remedy = A text stands in quotation marks, a list in square brackets, a table in braces or under its own heading.
problem-unknown_unit = "{ $found }" is no unit of mass fraction known here.
    .remedy = Use mg/kg, %, g/kg or ug/kg.
problem-not_a_quantity = "{ $found }" is not a number with a unit.
    .remedy = Write it like "700 mg/kg".
problem-unknown_name = "{ $found }" is not a name known here.
    .remedy = Correct its spelling. What is set on the page and downloaded under “Settings” has every name right; all names stand in contract.md.
problem-band_upside_down = The band's low edge is not below its high edge: { $found }.
    .remedy = Correct the two edges.
problem-not_above_zero = "{ $found }" is not above zero.
    .remedy = A limit must be above zero.
problem-twice = "{ $found }" stands twice.
    .remedy = Remove one of the rows.
problem-missing = "{ $found }" is missing.
    .remedy = Add it.
problem-out_of_range = "{ $found }" is outside what is possible.
    .remedy = Look for a slip in the number. What is possible here stands in contract.md.
problem-nothing_in_book = The book "{ $found }" has neither bands nor halogen limits.
    .remedy = Add a table.
problem-no_source = A row has no source or clause.
    .remedy = Every value must name its document and clause.
problem-aql_not_in_table = "{ $found }" names no AQL of the sampling tables.
    .remedy = Use one of 0.010 0.015 0.025 0.040 0.065 0.10 0.15 0.25 0.40 0.65 1.0 1.5 2.5 4.0 6.5 10 15 25 40 65 100 150 250 400 650 1000.

## Acts in words

act-class = material class set to { $value }
act-sigma_multiple = printed errors taken as { $value } sigma
act-unit_of_measure = unit of values without one set to { $value }
act-decimal_mark = decimal mark set to "{ $value }"
act-detection_in_error_column = number in the error column of a non-detect: { $value ->
        [one_error] one printed error
       *[limit] the detection limit
    }
act-column_role = column set by hand: { $value }
act-column_role_named = column { $column } "{ $heading }" taken as { $role }
act-header_line = { $value ->
        [none] no heading row; columns named by their numbers
       *[other] heading row set to line { $value }
    }
act-text_encoding = text read as { $value }
act-sheet = sheet "{ $value }" chosen
act-date_order = order of dates set to { $value ->
        [ymd] year, month, day
        [dmy] day, month, year
       *[mdy] month, day, year
    }
act-id_pattern = combined ids are made up as { $value }
act-halogen_book = halogens count by { $value }
act-trust = missing check readings: { $value }
act-sampling = missing sampling plan: { $value }
act-materials = missing bill of materials: { $value }
act-thickness_mm = thickness set to { $value } mm
act-lot_size = lot size { $value }
act-units_to_take = units the plan asks for: { $value }
act-bill_of_materials = homogeneous materials listed: { $value }
act-category = product category { $value }
act-placing_date = placing on the market on { $value }
act-reviewed_at = reviewed on { $value }
act-inspector = inspector { $value }
act-place = place { $value }
act-title = title { $value }
act-check_samples = check samples: { $value }
act-site_sigma = site repeatability { $value }
act-relative_sigma = { $value } % of the value added to every sigma, in quadrature
act-repeats = repeats of a spot: { $value }
act-uncertainty_holds = the uncertainties hold { $value }
act-undo = took back act { $value }
target-inspection = whole inspection
target-source = file { $name }
target-header = tables with headings { $name }
target-lot = lot { $lot } of { $supplier }
target-lot_unnamed = what states neither lot nor supplier
target-part = part { $part }
target-material = material { $material } of part { $part }

## Summary lines

summary-no_readings = No readings yet.
summary-counts = { $readings ->
        [one] One reading
       *[other] { $readings } readings
    } in { $lots ->
        [one] one lot
       *[other] { $lots } lots
    }{ $aside ->
        [0] { "" }
       *[other] { " " }({ $aside } set aside by a person)
    }{ $checks ->
        [0] { "" }
        [one] { " " }and one check reading
       *[other] { " " }and { $checks } check readings
    }: { $accept } accept (for the substances screened), { $hold } hold, { $not_accept } not accept.
summary-only_checks = All readings are named as checks: nothing of a lot was measured.
summary-all_set_aside = Every reading is set aside: none says anything of a lot.
summary-readings_below = What the readings say: every substance screened is below limit or not applicable.
summary-readings_say = What the readings say: { $list }.
summary-over_limit = { $about } over limit in { $count }
summary-halogen_over_limit = { $about } over the halogen limit in { $count }
summary-over_in_some_classes = { $about } over limit under some classes in { $count }
summary-not_measured = { $about } not measured in { $count }
summary-no_uncertainty = { $about } without uncertainty in { $count }
summary-detection_too_high = { $about } detection limit too high or not stated in { $count }
summary-not_capable = { $about } not capable in { $count }
summary-undecided = { $about } undecided in { $count }
summary-halogen_open = { $about } open under the halogen book in { $count }
summary-evidence_none = Evidence: nothing that is missing holds a lot.
summary-evidence_advisory = Not given, and does not hold: { $list }.
summary-evidence_missing = Evidence missing for an accept: { $list }.
evidence-short-file_not_read = a file that was not read
evidence-short-units_not_stated = the unit of each reading
evidence-short-rows_refused = refused rows to look at
evidence-short-layer_among_classes = a layer and a bare material under two names
evidence-short-class_unknown = material class
evidence-short-thickness_not_stated = thickness
evidence-short-material_not_measured = unmeasured materials
evidence-short-bill_of_materials_none = bill of materials
evidence-short-material_not_listed = a material that is not on the bill
evidence-short-sampling_none = lot size and sampling plan
evidence-short-sampling_too_few = more units
evidence-short-multiple_not_stated = multiple of sigma
evidence-short-halogen_book_not_loaded = halogen rule book
not-stated = not stated
no-lot = lot not stated

## Values

value-number = { $value } mg/kg ± { $sigma } (1s)
value-number_bare = { $value } mg/kg, no uncertainty
value-below = < { $value } mg/kg
value-above = > { $value } mg/kg
value-not_detected = not detected
value-not_measured = –
value-text = "{ $written }"
value-interval = { $low } to { $high } mg/kg
value-at_least = at least { $low } mg/kg

## Working, in words

working-below = { $x } + { $k } × { $sigma } = { $end } mg/kg, at or under the low edge { $low } mg/kg.
working-over = { $x } − { $k } × { $sigma } = { $end } mg/kg, at or over the high edge { $high } mg/kg.
working-between = { $x } ± { $k } × { $sigma } mg/kg runs from { $from } to { $to }; the undecided band is { $low } to { $high } mg/kg.
working-between_open = { $x } ± { $k } × { $sigma } mg/kg runs from { $from } to { $to }; "below" ends at { $low } mg/kg and there is no "over".
working-detection = Not detected at { $x } mg/kg, one third of it as sigma: { $x } + { $k } × { $sigma } = { $end } mg/kg against the low edge { $low } mg/kg.
working-detection_composite = Not detected at { $x } mg/kg; clears only at or under { $low } mg/kg.
working-composite = { $x } ± { $k } × { $sigma } mg/kg runs from { $from } to { $to }; "below" needs a stated detection limit of at most { $low } mg/kg with the value at or under it, "over" begins at { $high } mg/kg.
working-thin = { $x } + { $k } × { $sigma } = { $end } mg/kg. A plastic this thin may give as little as { $share } % of the full signal, so "below" ends at { $scaled } mg/kg here, not at { $low }.
working-not_capable = { $k } × { $sigma } = { $end } mg/kg, at or over the low edge { $low } mg/kg.

## Cautions

caution-declaration = Screening is not a declaration of conformity and is not a laboratory result.
caution-homogeneous = A result speaks for the spot that was measured. Limits apply to each homogeneous material, layers included.
caution-radiation = X-ray analysers give off ionising radiation. Follow local law, the licence and the training that go with the instrument; never hold a sample in the beam by hand.
caution-dust = Cutting, grinding or scraping samples can release toxic dust (lead, cadmium, chromium). Use extraction, gloves and a mask, and dispose of residues by local rules.
caution-shipping = Do not ship a held or not accepted lot on the strength of this page; a person with the authority decides.
caution-items = Results relate only to the items tested.

## Report

report-title = Screening report
report-subtitle = Restricted substances by X-ray fluorescence
report-end = End of report
report-id = Identification
report-program = Made with
report-number = Report number
report-reviewed = Reviewed on
report-inspector = Inspector
report-place = Place
report-category = Product category (Directive 2011/65/EU)
report-placing = Placing on the market
report-blank = ____________________
report-summary = Summary
report-lots = Lots
report-lot = Lot
report-supplier = Supplier
report-source = Source
report-disposition = Disposition
report-reasons = Reasons, worst first, and what ends each
report-readings = Readings
report-materials = Materials
report-part = Part
report-material = Material
report-class = Class
report-sources = Sources
report-file = File
report-rows = Rows in = used + check + duplicate + set aside + refused
report-digest = SHA-256
report-method = Method, rules and decision rule
report-method_text = Screening by X-ray fluorescence; each reading was judged by the bands of the rule book below. Values are mass fractions in mg/kg; s is one sigma.
report-rule_text = Below limit (BL): x + { $k } s { $low_sign } low edge. Over limit (OL): x − { $k } s { $high_sign } high edge. Undecided (X): between. Cr and Br have no "over". Not detected at D: s = D / 3, BL if D + { $k } s { $low_sign } low edge. Cadmium in a composite: BL only at or under a stated detection limit within the bound below. Plated, coated or passivated items: always X. Class not known: judged under every class, the worst counts. What risk of a wrong decision the bands leave is not computed for a lot; the chance that a single value lies within a legal limit stands with its explanation.
report-rule_halogens = Halogens: BL if x + { $k } s { $within_sign } limit, OL if x − { $k } s { $over_sign } limit; in a composite or an unknown class a BL is X (copper or glass in the beam); metal is not applicable; the total adds the squares of both sigmas; a part below its detection limit makes the total an interval.
report-halogens_moved = Halogens move dispositions by { $book }.
report-halogens_shown = Halogens are shown for information; no halogen book is named, so they move no disposition.
report-uncertainty = Uncertainty: s is the printed error divided by the multiple it stands for, but never less than the site's repeatability at the action level where a table of it is given, and never less than what repeats of the spot show. A multiple that nobody stated is taken as one, which widens the undecided interval. Which s was used, and its multiple, stands beside each result in the annex.
report-uncertainty_full = The inspector states that the uncertainties given are full ones, calibration, matrix and sampling included.
report-probability = The chance that a true value lies within a limit is that of a normal distribution about the value (JCGM 106:2012), for Cd, Pb and Hg where the limit is on the element itself in that material. It decides nothing here.
report-thickness = Thickness: where it is stated, a BL of a plastic, or of a metal whose base was measured, stands only if it survives the signal that is missing. A plastic is taken as polyethylene, the most transparent, with the chlorine that was measured as a major element; so this is cautious for filled plastics.
report-book = Rule book
report-edition = Edition
report-confidence = Confidence in its values
report-bands = Bands used (mg/kg)
report-substance = Substance
report-low = Low edge
report-high = High edge
report-none = none
report-detection_edge = detection limit of the reading, at most { $limit }
report-limit = Limit
report-clause = Clause
report-results = Results
report-results_text = The worst outcome of each material, with the ruler of the reading that shows it highest; the readings themselves stand in the annex.
report-open = Open outcomes and next steps
report-open_none = No outcome is open; what holds a lot stands with the lot.
report-reading = Reading
report-outcome = Outcome
report-why = Why
report-next = Next step
report-material_head = Material, part, lot
report-annex = Annex: every reading
report-annex_values = Values in mg/kg ± one sigma; "<" a detection limit; "–" not measured; text in quotation marks as it stands in the file. Sigma: p printed, multiple stated in the file; m printed, multiple set by a person (the number after p or m is that multiple: p2 is a printed error of two sigma); u printed, multiple unknown and taken as one; t the site's table; r what repeats of the spot show. "!": something makes the outcome doubtful; it stands under doubts beside results, or with the open outcome.
report-also = The same for
report-also_more = and { $count } more
report-annex_capped = The first { $shown } of { $total } readings are printed; findings.csv holds all of them.
report-open_capped = About the first { $shown } of { $total } open outcomes are printed, worst first; findings.csv holds all of them.
report-materials_capped = The first { $shown } of { $total } materials are printed; findings.json holds all of them.
report-line = Line
report-sample = Sample
report-columns_used = Columns used
report-packed_in = packed in { $name }, SHA-256
report-sheet_read = sheet "{ $name }" read, { $others } others
report-stated_above = line { $line } "{ $text }" holds for the whole table
report-notices = Notices
report-notices_none = None.
report-check = check reading, no product
report-rests_on = Rests on: lot size { $size }; the plan asks for { $take } units; { $units } measured of the least sampled material.
report-hold_ends = How this ends, beside what each reason asks for
report-refused = Refused rows
report-refused_none = No row was refused.
report-refused_capped = { $left } more refused rows are counted and not listed.
report-column = Column
report-remedy = What to do
report-acts = Settings and acts
report-acts_none = None.
report-by = By
report-unsigned = no initials
report-at = At
report-act = Act
report-target = About
report-note = Note
report-not_assessed = Not assessed
report-cautions = Cautions
report-signatures = Signatures
report-sign_inspector = Inspected by (name, date, signature)
report-sign_second = Checked by a second person (name, date, signature)
report-findings_digest = SHA-256 of the findings
report-total_rows = All files
report-rules_beside = Decision rules side by side, as numbers of readings. For comparison: this decides nothing here.
report-rules_repeatability = Repeatability only: what calibration, matrix and sampling add is not in it.
report-decision_rule = Decision rule
report-rule_bands = screening bands (the rule of this report)
report-rule_not_applicable = no rule on the limit applies (readings)
report-composition = Composition
report-caution = Caution
report-doubts = Doubts beside results
report-doubts_none = Nothing that was measured makes a BL doubtful, and no composition speaks against a class.
report-doubts_below = Below limit, and doubtful
report-doubts_capped = The first { $shown } of { $total } are printed; findings.json holds all of them.
report-compositions = Compositions that matter
report-compositions_text = Where the class is not known or what was measured contradicts it. What a composition suggests is never taken for the class.
report-repeats = Repeats and spots
report-repeats_text = Repeats of one spot are judged together where they agree, and none of them is over limit by itself; spots are never averaged. Readings that lie far out are named; none is taken away.
report-repeats_none = No spot was measured more than once, and no material at two stated spots.
report-repeats_capped = The first { $shown } of { $total } groups of repeats are printed; findings.json holds all of them.
report-spot = Spot
report-element = Element
report-lines = lines
report-repeats_values = Readings (mg/kg)
report-together = Together (± one sigma)
report-how = How
report-each_alone = each for itself
report-one_is_over = not counted: one of them is over limit by itself, and that stands
report-spots_of = { $about } ({ $n } spots, chance { $p })
report-spots_alike = No difference between spots was seen in { $list }. That does not prove they are alike; the worst spot governs.
report-limits = Limits of the rule books named
report-limits_text = The worst outcome of each material under each limit that applies to it. Only what the lot's reasons name moves its disposition.
report-limits_none = None of the limits applies to these materials.
report-limits_capped = The first { $shown } of { $total } are printed; findings.json holds all of them.
report-worst_reading = Worst reading
report-exemptions = Exemptions
report-exemptions_none = No exemption is claimed, and none of the entries loaded may cover what was found.
report-claims = Claimed
report-claims_capped = The first { $shown } of { $total } are printed; findings.json holds all of them.
report-candidates = Not claimed; these entries may cover a result
report-candidates_text = An entry that may cover is no exemption: somebody has to claim it, with evidence and a second person's initials.
report-entry = Entry
report-scope = What the entry covers
report-text = Text of the law
report-text_from = In force from { $day }.
report-number_said = What the readings say
report-expires = Day of expiry
report-no_day = none in the book
report-renewal = Renewal
report-renewal_said = source: { $source }; { $state ->
        [not_filed] of
       *[other] applied for on
    } { $date }
report-group = Alloy or material claimed
report-evidence = Evidence
report-initials = Initials / second person
report-questions = To be answered
report-expiries = Days of expiry, over all lots
report-cr6 = Chromium(VI) by area (IEC 62321-7-1)
report-cr6_area = ug/cm2
report-cr6_not_judged = not judged: no loaded book tells, or the material is no metal
report-laboratory = Laboratory, report
report-reached = How each outcome was reached
report-reached_text = The rule once for each substance and class, with the number of readings it left below, undecided and over. Which sigma and multiple each reading was judged with stands in the annex; open and over outcomes have their own paragraph above.
report-rule = Rule
report-rule_plated = A layer and what lies under it are read together: undecided whatever the number, until thickness and what lies under it are known.
report-other_outcomes = other
report-halogens = Halogens
report-validity = Holds for products
report-in_use = In use
report-open_day = open
report-jurisdiction = Where
report-legend = BL below limit · X undecided · OL over limit · n/a not applicable. Every other word says why there is no outcome of these; none of them stands for below limit.

## Ruler

ruler-title = { $about }: { $outcome }
ruler-description = Logarithmic scale in mg/kg. { $value }. { $edges }.
# Against what a ruler is drawn: the band in which nothing is decided, or a limit without a band.
ruler-edges = Undecided from { $low } to { $high }
ruler-edges_open = Undecided from { $low } upwards
ruler-edges_limit = Limit { $limit }
ruler-band = undecided
ruler-limit = limit
ruler-strip = { $value }. { $edges }
report-rulers = Under an outcome stands its ruler: a logarithmic scale in mg/kg, the reading as a plumb bob with whiskers of k sigma (k = { $k } for the bands), and the band round the limit, hatched. An arrowhead where it goes on beyond the scale.
report-rulers_below = left of the band, whiskers and all: below limit
report-rulers_undecided = something touches the band: undecided
report-rulers_over = right of the band, whiskers and all: over limit
report-rulers_limit = a limit without a band: a post with a crossbar
report-rulers_bound = not detected: somewhere on the dashed side of the upright
report-rulers_between = a sum with a part not detected: somewhere between the two uprights

## Command line

# Between things in a row, between longer pieces in a row, and between the sentences of a paragraph.
join-list = {", "}
join-series = {"; "}
join-sentences = {" "}
# After what a text is about; after a few words that a sentence follows; and what adds to the word before it.
join-colon = {": "}
join-stop = {". "}
join-brackets = {" "}({ $text })
cli-help = Plumbline reviews X-ray fluorescence screening results of electronics materials, offline.

    Usage:
      plumbline review --out DIR [--papers] [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--history FILE]... [--bill FILE]... PATH...
      plumbline explain [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--bill FILE]... [--of NAME]...
                        (--reading ID | --line SOURCE:LINE) PATH...
      plumbline plan --lot-size N --rule single --aql AQL [--level LEVEL] [--severity SEVERITY] [--seed SEED]
      plumbline plan --lot-size N --rule zero_acceptance --confidence PERCENT --share PERCENT [--seed SEED]
      plumbline rules [ID | FILE]
      plumbline help
      plumbline version

    review     reads result tables (CSV, TSV; files or folders) and writes into DIR:
                 findings.json   everything found, for programs
                 findings.csv    one row a reading, for spreadsheets
                 report.html     the report, for people; print it from a browser
                 (see --length for its one page and its annex)
                 history.txt     the histories given and this inspection together, for the next time
    --out DIR        where to write; made if it is not there
    --papers         also writes, as far as there is a need: findings.xlsx, laboratory-request.html,
                     supplier-notice-N-NAME.html (one for each supplier of a held or not accepted lot), labels.html
    --length LENGTH  of the report: one_page (report-one-page.html), full (report.html, the usual), annex
                     (report-annex.html, every reading), or all; may be given again
    --settings FILE  class, lot size, thickness, certificates, plans ... (see contract.md);
                     of several the later count above the earlier
    --mapping FILE   what the columns under known headings mean, as the page saved it
    --bill FILE      a bill of materials: a table with columns Part and Material, perhaps Class
    --rules FILE     a rule book: its bands or halogen limits in place of the built-in ones, its limits beside them
    --history FILE   what earlier inspections found (their history.txt); several are merged
    explain    prints, for the readings that match, what was found, the rule with its clause and every step to the outcome
    --reading ID     readings with this sample id, as it stands in the file
    --line S:LINE    the reading that begins at this line of source S, named as in the report
    --of NAME        only this outcome: Cd, Pb, Hg, Cr, Br, Cl or total; may be given again
    plan       says how many units of a lot to take, with --seed which ones, and what risk that leaves; as [[sampling_plan]] in
               a settings file
    rules      lists the rule books that come with the program, or explains one of them, or a file, row by row

    Exit status: 0 every lot accepted for the substances screened; 1 some lot held or not accepted;
    2 an input could not be read, or there were no readings (the rest is still written), or none to explain;
    64 wrong usage, or a bad settings, mapping, rule or history file (nothing written); 74 the output could not be written.

    Screening is not a declaration of conformity and is not a laboratory result.
cli-usage = plumbline: { $what }
    .remedy = See "plumbline help".
cli-missing_reading = say which readings are meant: once --reading ID or --line SOURCE:LINE
cli-no_line = "{ $found }" is no SOURCE:LINE, as in results.csv:12
cli-no_outcome = "{ $found }" is no outcome; known are Cd, Pb, Hg, Cr, Br, Cl and total
cli-no_reading = No reading matches. A reading is named by its sample id as it stands in the file, or by the name of its file and the line it begins at.
cli-unknown = "{ $found }" is not known here
cli-missing_out = --out DIR is missing
cli-missing_value = { $found } needs a value
cli-missing_path = no file or folder is named
cli-bad_file = { $file }, line { $line }, column { $column }: { $text }
cli-unreadable = { $file }: { $text }
cli-cannot_write = { $file } could not be written: { $text }
cli-source = { $file }: rows in { $rows_in } = used { $used } + check { $check } + duplicate { $duplicate } + set aside { $set_aside } + refused { $refused }; readings { $total }
cli-source_problem = { $file }: { $text }
cli-refused = { $file }, line { $line }, column { $column }: { $text }
cli-refused_row = { $file }, line { $line }: { $text }
cli-more_refused = { $file }: { $left } more refused rows are in findings.json
cli-lot = Lot: { $lot } · supplier: { $supplier } · { $disposition }
cli-written = Written: { $file }

## Questions a file leaves open

need-unit_not_stated = The file does not state the unit of its values. Which unit is it?
need-sigma_multiple_not_stated = The file does not state how many sigma its error column stands for. One, two or three?
need-decimal_mark_unclear = Some numbers have a comma or point that may be a decimal or a thousands mark. Which is the decimal mark?
need-date_order_unclear = Some dates may be day and month or month and day. In which order do they stand?
need-class_not_stated = { $count ->
        [one] One reading states
       *[other] { $count } readings state
    } no material class known here. Which class is it?

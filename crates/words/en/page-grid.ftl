# The table of readings: filters, groups, columns, selection.

page-grid-filters-back = Put the filters back
page-grid-more-filters = More filters
page-grid-more-used = { $n ->
    [one] ({ $n } in use)
   *[other] ({ $n } in use)
  }
page-grid-filter-sample = Sample, unit or spot
page-grid-filter-part = Part
page-grid-filter-lot-name = Lot
page-grid-filter-supplier = Supplier
page-grid-filter-margin = Within how many sigma of an edge
page-grid-margin-why = Finds values that lie this many of their own sigma or less from an edge of the undecided band, on either side; for halogens, from the limit. With a substance chosen, only its values count.
page-grid-margin-refused = “{ $typed }” is not a number of sigma from 0.1 to 5 with at most one decimal, such as 1.5.
page-grid-one-lot = Only lot { $lot }: show all lots
page-grid-group-by = Group by
page-grid-group-none = No groups
page-grid-group-part = Part
page-grid-group-lot = Lot
page-grid-group-supplier = Supplier
page-grid-group-count = { $n ->
    [one] { $shown } reading
   *[other] { $shown } readings
  }
page-grid-group-worst = Worst:
page-grid-group-checks = Check readings
page-grid-group-no-supplier = Supplier not stated
page-grid-fold-all = Fold all
page-grid-unfold-all = Unfold all
page-grid-columns = Columns
page-grid-columns-which = Columns shown
page-grid-columns-first = As at first
page-grid-column-element = Element { $symbol }
page-grid-selected = { $n ->
    [one] { $shown } reading selected
   *[other] { $shown } readings selected
  }
page-grid-select-all = Select all
page-grid-select-none = Select none
page-grid-set-aside = Set the selected readings aside because
page-grid-set-aside-why = Write why first: the report prints it.
page-grid-set-aside-checks = Check readings are in no lot and cannot be set aside.
page-grid-set-aside-most = At most { $most } at a time: select fewer.
page-grid-copy = Copy for a spreadsheet
page-grid-copying = Putting the selected readings together
page-grid-copied = { $n ->
    [one] { $shown } reading is on the clipboard. Paste it into a spreadsheet.
   *[other] { $shown } readings are on the clipboard. Paste them into a spreadsheet.
  }
page-grid-copied-now = The readings are on the clipboard. Paste them into a spreadsheet.
page-grid-copy-stopped = Copying was stopped. Nothing was put on the clipboard.
page-grid-copy-refused = The browser did not let the page write to the clipboard. The readings are ready: try once more, or save them as a file that a spreadsheet opens.
page-grid-copy-again = Copy now
page-grid-copy-file = Save as a file
page-grid-copy-saved = The readings were saved as { $file }.
page-grid-keys = Space selects a row, Shift with the arrows several, Ctrl+A all; Ctrl+C copies them for a spreadsheet and Escape lets them go. On a group, the right and left arrows unfold and fold it. The / key leads to the search field.
page-step-copied = copying readings

# Printed with the table: what of it is not on the sheet.
page-grid-paper-rows = On paper: lines { $from } to { $to } of { $n }, those that were in sight.
page-grid-paper-columns = No room on the sheet for: { $names }.
page-grid-paper-all = The annex of the report (report-annex.html) prints every reading.

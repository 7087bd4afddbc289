# The table of readings: filters, groups, columns, selection.

# translate
page-grid-filters-back = Put the filters back

# translate
page-grid-more-filters = More filters

# translate
page-grid-more-used = { $n ->
    [one] ({ $n } in use)
   *[other] ({ $n } in use)
  }

# translate
page-grid-filter-sample = Sample, unit or spot

# translate
page-grid-filter-part = Part

# translate
page-grid-filter-lot-name = Lot

# translate
page-grid-filter-supplier = Supplier

# translate
page-grid-filter-margin = Within how many sigma of an edge

# translate
page-grid-margin-why = Finds values that lie this many of their own sigma or less from an edge of the undecided band, on either side; for halogens, from the limit. With a substance chosen, only its values count.

# translate
page-grid-margin-refused = “{ $typed }” is not a number of sigma from 0.1 to 5 with at most one decimal, such as 1.5.

# translate
page-grid-one-lot = Only lot { $lot }: show all lots

# translate
page-grid-group-by = Group by

# translate
page-grid-group-none = No groups

# translate
page-grid-group-part = Part

# translate
page-grid-group-lot = Lot

# translate
page-grid-group-supplier = Supplier

# translate
page-grid-group-count = { $n ->
    [one] { $shown } reading
   *[other] { $shown } readings
  }

# translate
page-grid-group-worst = Worst:

# translate
page-grid-group-checks = Check readings

# translate
page-grid-group-no-supplier = Supplier not stated

# translate
page-grid-fold-all = Fold all

# translate
page-grid-unfold-all = Unfold all

# translate
page-grid-columns = Columns

# translate
page-grid-columns-which = Columns shown

# translate
page-grid-columns-first = As at first

# translate
page-grid-column-element = Element { $symbol }

# translate
page-grid-selected = { $n ->
    [one] { $shown } reading selected
   *[other] { $shown } readings selected
  }

# translate
page-grid-select-all = Select all

# translate
page-grid-select-none = Select none

# translate
page-grid-copy = Copy for a spreadsheet

# translate
page-grid-copying = Putting the selected readings together

# translate
page-grid-copied = { $n ->
    [one] { $shown } reading is on the clipboard. Paste it into a spreadsheet.
   *[other] { $shown } readings are on the clipboard. Paste them into a spreadsheet.
  }

# translate
page-grid-copied-now = The readings are on the clipboard. Paste them into a spreadsheet.

# translate
page-grid-copy-stopped = Copying was stopped. Nothing was put on the clipboard.

# translate
page-grid-copy-refused = The browser did not let the page write to the clipboard. The readings are ready: try once more, or save them as a file that a spreadsheet opens.

# translate
page-grid-copy-again = Copy now

# translate
page-grid-copy-file = Save as a file

# translate
page-grid-copy-saved = The readings were saved as { $file }.

# translate
page-grid-keys = Space selects a row, Shift with the arrows several, Ctrl+A all; Ctrl+C copies them for a spreadsheet and Escape lets them go. On a group, the right and left arrows unfold and fold it. The / key leads to the search field.

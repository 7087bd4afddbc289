# The table of readings: filters, groups, columns, selection.

//! Findings as a spreadsheet workbook: typed cells, frozen heads, text that no program takes for a formula.

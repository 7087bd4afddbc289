//! Were the readings trustworthy: check standards and blanks, judged, and the readings between them.

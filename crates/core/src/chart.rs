//! Charts drawn as SVG: control charts and operating characteristics.

//! Data files (TOML) read with the place of every value, so that each problem names its line and column.

//! In which encoding a text table is written, and its text as UTF-8, piece by piece.
//!
//! Decoding stands before splitting: in the double-byte encodings of East Asia the second byte of a character may be
//! `|` or `\`, so a cell can only be cut once its characters are known.
//!
//! [`find`] looks at the first bytes once; [`Decoder`] then takes the whole file, cut anywhere.

mod decoding;
mod finding;
mod line_start_marks;
#[cfg(test)]
mod result_words;
mod utf16_pattern;

pub use decoding::Decoder;
pub use finding::{LOOKED_AT, find};
pub use plumbline_core::reading::EncodingKnownBy as KnownBy;
#[cfg(test)]
pub(crate) use result_words::words_of_result_tables;

/// An encoding this program reads. The decoders are those of the WHATWG Encoding Standard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TextEncoding {
    /// UTF-8, handed on as it is.
    Utf8,
    /// UTF-16, low byte first.
    Utf16Le,
    /// UTF-16, high byte first.
    Utf16Be,
    /// Western European; every byte is a character.
    Windows1252,
    /// Chinese, simplified; GBK and GB 2312 are parts of it.
    Gb18030,
    /// Chinese, traditional, with the Hong Kong supplement.
    Big5,
    /// Japanese, as Windows writes it.
    ShiftJis,
    /// Korean, with the Unified Hangul Code extension.
    EucKr,
    /// Japanese, as Unix wrote it.
    EucJp,
    /// Central European.
    Windows1250,
    /// Cyrillic.
    Windows1251,
}

impl TextEncoding {
    /// Every encoding, in the order a person would look for them.
    pub const ALL: [TextEncoding; 11] = [
        TextEncoding::Utf8,
        TextEncoding::Utf16Le,
        TextEncoding::Utf16Be,
        TextEncoding::Windows1252,
        TextEncoding::Gb18030,
        TextEncoding::Big5,
        TextEncoding::ShiftJis,
        TextEncoding::EucKr,
        TextEncoding::EucJp,
        TextEncoding::Windows1250,
        TextEncoding::Windows1251,
    ];

    /// Its name in the WHATWG Encoding Standard.
    pub const fn label(self) -> &'static str {
        match self {
            TextEncoding::Utf8 => "UTF-8",
            TextEncoding::Utf16Le => "UTF-16LE",
            TextEncoding::Utf16Be => "UTF-16BE",
            TextEncoding::Windows1252 => "windows-1252",
            TextEncoding::Gb18030 => "gb18030",
            TextEncoding::Big5 => "Big5",
            TextEncoding::ShiftJis => "Shift_JIS",
            TextEncoding::EucKr => "EUC-KR",
            TextEncoding::EucJp => "EUC-JP",
            TextEncoding::Windows1250 => "windows-1250",
            TextEncoding::Windows1251 => "windows-1251",
        }
    }

    /// The encoding a person means by a label: its name, or one of the labels the WHATWG Encoding Standard lists for
    /// it, or the number of its code page.
    pub fn from_label(label: &str) -> Option<TextEncoding> {
        Some(match label.trim().to_ascii_lowercase().as_str() {
            "utf-8" | "utf8" | "unicode-1-1-utf-8" | "cp65001" => TextEncoding::Utf8,
            "utf-16le" | "utf-16" | "utf16" | "utf16le" | "unicode" | "ucs-2" | "cp1200" => {
                TextEncoding::Utf16Le
            }
            "utf-16be" | "utf16be" | "unicodefffe" | "cp1201" => TextEncoding::Utf16Be,
            "windows-1252" | "cp1252" | "x-cp1252" | "latin1" | "latin-1" | "l1" | "iso-8859-1"
            | "iso8859-1" | "iso_8859-1" | "ascii" | "us-ascii" | "ansi_x3.4-1968" => {
                TextEncoding::Windows1252
            }
            "gb18030" | "gbk" | "x-gbk" | "gb2312" | "gb_2312" | "gb_2312-80" | "csgb2312" | "chinese"
            | "cp936" => TextEncoding::Gb18030,
            "big5" | "big5-hkscs" | "x-x-big5" | "cn-big5" | "csbig5" | "cp950" => TextEncoding::Big5,
            "shift_jis" | "shift-jis" | "sjis" | "x-sjis" | "ms_kanji" | "ms932" | "windows-31j"
            | "csshiftjis" | "cp932" => TextEncoding::ShiftJis,
            "euc-kr" | "euckr" | "cseuckr" | "korean" | "ks_c_5601-1987" | "ks_c_5601-1989" | "ksc5601"
            | "ksc_5601" | "windows-949" | "uhc" | "cp949" => TextEncoding::EucKr,
            "euc-jp" | "eucjp" | "x-euc-jp" | "cseucpkdfmtjapanese" | "cp51932" => TextEncoding::EucJp,
            "windows-1250" | "cp1250" | "x-cp1250" => TextEncoding::Windows1250,
            "windows-1251" | "cp1251" | "x-cp1251" => TextEncoding::Windows1251,
            _ => return None,
        })
    }

    const fn standard(self) -> &'static encoding_rs::Encoding {
        match self {
            TextEncoding::Utf8 => encoding_rs::UTF_8,
            TextEncoding::Utf16Le => encoding_rs::UTF_16LE,
            TextEncoding::Utf16Be => encoding_rs::UTF_16BE,
            TextEncoding::Windows1252 => encoding_rs::WINDOWS_1252,
            TextEncoding::Gb18030 => encoding_rs::GB18030,
            TextEncoding::Big5 => encoding_rs::BIG5,
            TextEncoding::ShiftJis => encoding_rs::SHIFT_JIS,
            TextEncoding::EucKr => encoding_rs::EUC_KR,
            TextEncoding::EucJp => encoding_rs::EUC_JP,
            TextEncoding::Windows1250 => encoding_rs::WINDOWS_1250,
            TextEncoding::Windows1251 => encoding_rs::WINDOWS_1251,
        }
    }
}

/// The encoding of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Found {
    /// Which one.
    pub encoding: TextEncoding,
    /// How it is known.
    pub known_by: KnownBy,
    /// Bytes of the byte order mark in front. The decoder takes the mark away itself.
    pub bom_length: usize,
}

impl Found {
    /// What a person said the encoding is.
    pub fn told(encoding: TextEncoding, head: &[u8]) -> Found {
        let bom_length = match finding::byte_order_mark(head) {
            Some((marked, length)) if marked == encoding => length,
            _ => 0,
        };
        Found { encoding, known_by: KnownBy::Told, bom_length }
    }
}

#[cfg(test)]
mod tests;

//! Names in the code page that ZIP names are in unless they say otherwise.

/// What bytes 128 to 255 stand for (from memory; compared letter by letter with the codec of a scripting language).
const UPPER: &str = "ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜ¢£¥₧ƒáíóúñÑªº¿⌐¬½¼¡«»░▒▓│┤╡╢╖╕╣║╗╝╜╛┐└┴┬├─┼╞╟╚╔╩╦╠═╬╧╨╤╥╙╘╒╓╫╪┘┌█▄▌▐▀αßΓπΣσµτΦΘΩδ∞φε∩≡±≥≤⌠⌡÷≈°∙·√ⁿ²■\u{A0}";

/// A name as text.
pub(super) fn decode(name: &[u8]) -> String {
    let upper: Vec<char> = UPPER.chars().collect();
    name.iter()
        .map(|&byte| {
            let at = usize::from(byte).checked_sub(128);
            at.map_or(char::from(byte), |at| upper.get(at).copied().unwrap_or(char::REPLACEMENT_CHARACTER))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_byte_has_its_letter() {
        assert_eq!(UPPER.chars().count(), 128);
        assert_eq!(decode(b"Pr\x81fung \x84\x94\xE1.csv"), "Prüfung äöß.csv");
        assert_eq!(decode(&[0x80, 0xB0, 0xDB, 0xE3, 0xFF]), "Ç░█π\u{A0}");
    }
}

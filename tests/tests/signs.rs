//! No sign of one script is glued between the words of another: Japanese and Chinese reports and papers part their texts by
//! their own signs.

use plumbline_core::inspection::review;
use plumbline_core::report::evidence::OPENS;
use plumbline_core::report::{Length, html};
use plumbline_core::words::Words;
use plumbline_tests::delivery::all;
use plumbline_tests::program::papers_in;
use plumbline_words::LANGUAGES;

/// Markup within a line of text; any other begins a new one.
const WITHIN: [&str; 9] = ["a", "b", "bdi", "code", "em", "i", "small", "span", "strong"];
/// Attributes that are read to a person.
const HEARD: [&str; 3] = [" aria-label=\"", " alt=\"", " title=\""];

/// Kana, Han characters and the signs that go with them.
fn wide(letter: char) -> bool {
    matches!(letter, '\u{3040}'..='\u{30ff}' | '\u{3400}'..='\u{9fff}' | '々' | '」' | '』' | '”' | '）' | '】')
}

/// The lines of text that a page shows or says.
fn lines(page: &str) -> Vec<String> {
    let seen = page.split_once(OPENS).map_or(page, |(seen, _)| seen);
    let (mut lines, mut line) = (Vec::new(), String::new());
    for part in seen.split('<') {
        let (tag, text) = part.split_once('>').unwrap_or(("", part));
        let name = tag.trim_start_matches('/').split([' ', '/']).next().unwrap_or("");
        if !WITHIN.contains(&name) {
            lines.push(std::mem::take(&mut line));
        }
        for heard in HEARD {
            lines.extend(
                tag.split_once(heard).and_then(|(_, said)| said.split('"').next()).map(str::to_owned),
            );
        }
        // A style sheet is no text.
        if tag != "style" {
            line.push_str(text);
        }
    }
    lines.push(line);
    let plain = |line: &String| {
        let line =
            line.replace("&quot;", "\"").replace("&#39;", "'").replace("&lt;", "<").replace("&gt;", ">");
        line.replace("&amp;", "&").split_whitespace().collect::<Vec<_>>().join(" ")
    };
    lines.iter().map(plain).filter(|line| !line.is_empty()).collect()
}

/// The places of a line at which a sign of Latin script parts words of a wide one, with what stands round each. A number, a
/// Latin name or a citation on both sides keeps its own signs.
fn glued(line: &str) -> Vec<String> {
    let letters: Vec<char> = line.chars().collect();
    let at = |index: usize| letters.get(index).copied();
    let mut found = Vec::new();
    for (index, letter) in letters.iter().enumerate() {
        let before = index.checked_sub(1).and_then(at);
        let after = at(index + 1);
        let bad = match letter {
            ':' | ';' | ',' | '.' => {
                before.is_some_and(wide) || after == Some(' ') && at(index + 2).is_some_and(wide)
            }
            '(' => after.is_some_and(wide),
            ')' => before.is_some_and(wide),
            // A sentence ends with a sign that has its space in it.
            ' ' => matches!(before, Some('。' | '、' | '：' | '；')),
            _ => false,
        };
        if bad {
            found.push(letters[index.saturating_sub(12)..letters.len().min(index + 12)].iter().collect());
        }
    }
    found
}

#[test]
fn a_glued_sign_is_found_and_the_signs_of_names_numbers_and_citations_are_left_alone() {
    for line in [
        "供給者: Elm Works",
        "hc210.csv, 供給者",
        "限度値以下; 値",
        "未確定. 21.6 mg/kg",
        "Cd (カドミウム)",
        "未満。 出典",
    ] {
        assert_eq!(glued(line).len(), 1 + usize::from(line.contains('(')), "{line}");
    }
    for line in [
        "供給者：Elm Works",
        "IEC 62321-5:2013、AAS, AFS, ICP-OES",
        "規則 (EU) 2019/1021の10 mg/kg",
        "Cr(VI)は21.6 mg/kg ± 18.1 (1s)",
        "11SMnPb30 (1.0718)の公表された範囲",
        "2026年11月17日 08:02",
    ] {
        assert!(glued(line).is_empty(), "{line}");
    }
    let page = "<p title=\"鉛: 1\"><b>供給者<span>: </span></b>Elm</p><p>鉛</p><p>: </p>";
    assert_eq!(lines(page), ["鉛: 1", "供給者: Elm", "鉛", ":"]);
}

#[test]
fn japanese_and_chinese_reports_and_papers_part_their_texts_by_their_own_signs() {
    let (mut read, mut found) = (0, Vec::new());
    for language in LANGUAGES.iter().filter(|language| ["ja", "zh-Hans"].contains(&language.tag)) {
        let words = Words::of(language);
        for delivery in all() {
            let inspection = delivery.inspection();
            let findings = review(&inspection);
            let mut pages = papers_in(&inspection, &findings, &words);
            for length in Length::ALL {
                let mut bytes = Vec::new();
                html::write(&inspection, &findings, &words, *length, &mut bytes)
                    .expect("a Vec takes all bytes");
                let page = String::from_utf8(bytes).expect("the report is UTF-8");
                pages.push((length.file().to_owned(), page));
            }
            for (file, page) in &pages {
                for line in lines(page) {
                    read += usize::from(line.contains(wide));
                    found.extend(
                        glued(&line)
                            .into_iter()
                            .map(|one| format!("{} {} {file}: {one}", language.tag, delivery.name)),
                    );
                }
            }
        }
    }
    assert!(read > 10_000, "{read}");
    assert!(found.is_empty(), "{}:\n{}", found.len(), found[..found.len().min(40)].join("\n"));
}

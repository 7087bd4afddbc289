// Reads the texts of a language and holds them against English: the build does it (`build.rs`), and a test holds that a
// planted gap does not get by.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use fluent_syntax::parser;

/// The arguments of every text, under `room: id` or `room: id.attribute`.
pub(crate) type Texts = BTreeMap<String, BTreeSet<String>>;

/// Languages in which a count has one form for all numbers (Unicode CLDR, Language Plural Rules, the group "other"), as far as they are
/// likely here: in them a form for `one` is never chosen, and what it says in place of the number never seen.
const ONE_FORM: [&str; 8] = ["id", "ja", "ko", "ms", "th", "vi", "yue", "zh"];

/// The texts of one file of a language.
pub(crate) fn add_texts(texts: &mut Texts, tag: &str, room: &str, text: &str, problems: &mut Vec<String>) {
    let place = format!("{tag}/{room}.ftl");
    let resource = parser::parse(text).unwrap_or_else(|(resource, errors)| {
        for error in errors {
            let line = text.get(..error.pos.start).unwrap_or("").matches('\n').count() + 1;
            problems.push(format!("{place} line {line}: {error}"));
        }
        resource
    });
    for entry in resource.body {
        let Entry::Message(message) = entry else { continue };
        let id = format!("{room}: {}", message.id.name);
        let mut add = |id: String, pattern: &Pattern<&str>| {
            let mut arguments = BTreeSet::new();
            of_pattern(pattern, &mut arguments);
            let language = tag.split('-').next().unwrap_or(tag);
            if ONE_FORM.contains(&language) && names_one(pattern) {
                problems.push(format!(
                    "{place}: {id} has a form for [one], which {language} never chooses; write [1]"
                ));
            }
            if texts.insert(id.clone(), arguments).is_some() {
                problems.push(format!("{tag}: {id} stands twice"));
            }
        };
        if let Some(pattern) = &message.value {
            add(id.clone(), pattern);
        }
        for attribute in &message.attributes {
            add(format!("{id}.{}", attribute.id.name), &attribute.value);
        }
    }
}

fn of_pattern(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, found);
        }
    }
}

fn of_expression(expression: &Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, found),
        // What only chooses a form may be chosen in one language and not in another: plurals.
        Expression::Select { variants, .. } => {
            for variant in variants {
                of_pattern(&variant.value, found);
            }
        }
    }
}

/// Whether a pattern has a form for the plural category `one`.
fn names_one(pattern: &Pattern<&str>) -> bool {
    pattern.elements.iter().any(|element| {
        let PatternElement::Placeable { expression: Expression::Select { variants, .. } } = element else {
            return false;
        };
        variants.iter().any(|variant| {
            matches!(variant.key, VariantKey::Identifier { name: "one" }) || names_one(&variant.value)
        })
    })
}

fn of_inline(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, found),
        _ => {}
    }
}

/// Holds the texts of a language against those of English.
pub(crate) fn compare(tag: &str, texts: &Texts, first: &Texts, problems: &mut Vec<String>) {
    for (id, arguments) in first {
        match texts.get(id) {
            None => problems.push(format!("{tag} has no text for {id}")),
            Some(found) if found != arguments => problems.push(format!(
                "{tag}: {id} names {found:?}, English names {arguments:?}; an argument may be left out in no language"
            )),
            Some(_) => {}
        }
    }
    for id in texts.keys().filter(|id| !first.contains_key(*id)) {
        problems.push(format!("{tag}: {id} is a text English does not have"));
    }
}

/// The text of a message without arguments.
pub(crate) fn plain(text: &str, id: &str) -> Option<String> {
    let resource = parser::parse(text).unwrap_or_else(|(resource, _)| resource);
    let value = resource.body.into_iter().find_map(|entry| match entry {
        Entry::Message(message) if message.id.name == id => message.value,
        _ => None,
    })?;
    match value.elements.as_slice() {
        [PatternElement::TextElement { value }] => Some((*value).to_owned()),
        _ => None,
    }
}

//! What differs between two views, place by place.

use serde::Serialize;
use serde_json::Value;

/// Every place where two values differ: path, expected, got.
pub fn differences<T: Serialize>(expected: &T, got: &T) -> Vec<String> {
    let value = |one: &T| serde_json::to_value(one).expect("a view is JSON");
    let mut found = Vec::new();
    walk("", &value(expected), &value(got), &mut found);
    found
}

fn walk(path: &str, expected: &Value, got: &Value, found: &mut Vec<String>) {
    match (expected, got) {
        (Value::Object(left), Value::Object(right)) => {
            let mut keys: Vec<&String> = left.keys().chain(right.keys()).collect();
            keys.sort();
            keys.dedup();
            for key in keys {
                let (left, right) =
                    (left.get(key).unwrap_or(&Value::Null), right.get(key).unwrap_or(&Value::Null));
                walk(&format!("{path}/{key}"), left, right, found);
            }
        }
        (Value::Array(left), Value::Array(right)) => {
            for at in 0..left.len().max(right.len()) {
                let (left, right) =
                    (left.get(at).unwrap_or(&Value::Null), right.get(at).unwrap_or(&Value::Null));
                walk(&format!("{path}/{at}"), left, right, found);
            }
        }
        _ if expected == got => {}
        _ => found.push(format!("  {path}\n    expected {expected}\n    got      {got}")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_difference_is_named_with_its_place() {
        let found = differences(&serde_json::json!({"a": [1, 2]}), &serde_json::json!({"a": [1, 3, 4]}));
        assert_eq!(found.len(), 2);
        assert!(found[0].contains("/a/1") && found[1].contains("/a/2"), "{found:?}");
    }
}

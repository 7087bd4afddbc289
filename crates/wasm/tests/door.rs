//! The boundary in a real browser: what goes in as bytes and objects comes out as the page expects it.
#![cfg(target_arch = "wasm32")]

use std::cell::RefCell;
use std::rc::Rc;

use plumbline_wasm::Session;
use wasm_bindgen::prelude::*;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

const TABLE: &[u8] = b"Sample,Class,Lot,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\nS1,polymer,A,20,2,3,1\nS2,polymer,A,1360,20,<5,\n";

fn get(object: &JsValue, key: &str) -> JsValue {
    js_sys::Reflect::get(object, &JsValue::from_str(key)).unwrap()
}

fn at(list: &JsValue, index: u32) -> JsValue {
    js_sys::Reflect::get_u32(list, index).unwrap()
}

fn session() -> Session {
    let session = Session::new().ok().unwrap();
    session.open("a.csv", None);
    // Cut in the middle of a row, as a file slice would be.
    let (left, right) = TABLE.split_at(70);
    session.push(left).ok().unwrap();
    session.push(right).ok().unwrap();
    session
}

#[wasm_bindgen_test]
fn a_source_crosses_as_an_object_with_its_counts() {
    let views = session().finish().ok().unwrap();
    let view = at(&views, 0);
    assert_eq!(get(&view, "rows_in"), JsValue::from_f64(2.0));
    assert_eq!(get(&view, "problem"), JsValue::NULL);
    assert_eq!(get(&view, "sha256").as_string().unwrap().len(), 64);
}

#[wasm_bindgen_test]
fn a_review_gives_outcomes_and_an_order_as_a_typed_array() {
    let session = session();
    session.finish().ok().unwrap();
    let summary = session.review().ok().unwrap();
    assert_eq!(get(&at(&get(&summary, "lots"), 0), "disposition"), JsValue::from_str("not_accept"));
    let query = js_sys::JSON::parse(
        r#"{"text":"","part":"","lot_name":"","supplier":"","sample":"","substance":"Pb","outcome":"OL","trust":"","margin":"",
            "lot":-1,"group":"lot","sort":"file","descending":false}"#,
    )
    .unwrap();
    let answer = session.order(query).ok().unwrap();
    let order: js_sys::Uint32Array = get(&answer, "indices").into();
    assert_eq!(order.to_vec(), [1]);
    let starts: js_sys::Uint32Array = get(&answer, "starts").into();
    assert_eq!(starts.to_vec(), [0]);
    let rows = session.rows(&order.to_vec(), Vec::new()).ok().unwrap();
    let cell = at(&get(&at(&rows, 0), "cells"), 1);
    assert_eq!(get(&cell, "outcome"), JsValue::from_str("OL"));
    let detail = session.detail(1).ok().unwrap();
    let lead = at(&get(&detail, "findings"), 1);
    assert!(get(&lead, "ruler").as_string().unwrap().starts_with("<svg"));
    let worst = session.worst(0).ok().unwrap();
    assert_eq!(get(&at(&worst, 0), "material").as_f64(), Some(0.0));
}

#[wasm_bindgen_test]
fn the_three_files_come_out_as_bytes() {
    let session = session();
    session.finish().ok().unwrap();
    session.review().ok().unwrap();
    for (kind, start) in [
        ("findings.json", "{"),
        ("findings.csv", "source,line"),
        ("report.html", "<!DOCTYPE html>"),
        ("report-one-page.html", "<!DOCTYPE html>"),
        ("report-annex.html", "<!DOCTYPE html>"),
    ] {
        let gathered: Rc<RefCell<Vec<u8>>> = Rc::default();
        let into = Rc::clone(&gathered);
        let sink = Closure::<dyn FnMut(js_sys::Uint8Array)>::new(move |piece: js_sys::Uint8Array| {
            into.borrow_mut().extend(piece.to_vec());
        });
        session.write(kind, "en", sink.as_ref().unchecked_ref()).ok().unwrap();
        assert!(gathered.borrow().starts_with(start.as_bytes()), "{kind}");
    }
    let sink = js_sys::Function::new_no_args("");
    assert!(session.write("other", "en", &sink).is_err());
    assert!(session.write("report.html", "de", &sink).is_err(), "a language that was not taught");
    assert!(session.speak("de").is_err());
    session.teach("de", "outcome-BL = unter dem Grenzwert\nlocale-decimal = ,\n");
    assert!(session.speak("de").is_ok());
}

#[wasm_bindgen_test]
fn an_act_that_cannot_be_read_is_a_problem_and_not_a_panic() {
    let session = session();
    session.finish().ok().unwrap();
    let act = |text: &str| session.act(js_sys::JSON::parse(text).unwrap()).ok().unwrap();
    let bad = act(r#"{"kind":"sigma_multiple","target":"","value":"7","by":"","at":"","note":""}"#);
    assert_eq!(get(&get(&bad, "problem"), "code"), JsValue::from_str("out_of_range"));
    let good =
        act(r#"{"kind":"unit_of_measure","target":"source:a.csv","value":"%","by":"AB","at":"","note":""}"#);
    assert_eq!(get(&good, "problem"), JsValue::NULL);
    assert_eq!(get(&good, "reread"), JsValue::TRUE);
    let problems =
        session.settings("s.toml", "schema = \"plumbline.settings/1\"\ntrust = \"odd\"\n").ok().unwrap();
    assert_eq!(get(&at(&problems, 0), "line"), JsValue::from_f64(2.0));
}

#[wasm_bindgen_test]
fn a_call_out_of_turn_is_an_error_and_the_session_lives_on() {
    let session = Session::new().ok().unwrap();
    assert!(session.push(b"x").is_err());
    assert!(session.finish().is_err());
    assert!(session.detail(0).is_err());
    session.open("b.csv", Some(true));
    session.push(b"just text").ok().unwrap();
    let views = session.finish().ok().unwrap();
    assert!(get(&at(&views, 0), "problem").is_string());
}

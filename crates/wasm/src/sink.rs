//! A byte sink that hands pieces to a JavaScript function.

use std::io::{self, Write};

use wasm_bindgen::JsValue;

/// Bytes gathered before the function is called.
const PIECE: usize = 256 * 1024;

/// Gathers bytes and hands them over as copies.
pub(crate) struct FunctionSink<'a> {
    function: &'a js_sys::Function,
    gathered: Vec<u8>,
}

impl<'a> FunctionSink<'a> {
    pub(crate) fn new(function: &'a js_sys::Function) -> FunctionSink<'a> {
        FunctionSink { function, gathered: Vec::with_capacity(PIECE) }
    }

    fn hand_over(&mut self) -> io::Result<()> {
        if self.gathered.is_empty() {
            return Ok(());
        }
        let piece = js_sys::Uint8Array::from(self.gathered.as_slice());
        self.gathered.clear();
        match self.function.call1(&JsValue::NULL, &piece) {
            Ok(_) => Ok(()),
            Err(_) => Err(io::Error::other("the page did not take the bytes")),
        }
    }
}

impl Write for FunctionSink<'_> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.gathered.extend_from_slice(bytes);
        if self.gathered.len() >= PIECE {
            self.hand_over()?;
        }
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.hand_over()
    }
}

//! A failing file made smaller while it still fails.

/// Tries before it is small enough.
const TRIES: usize = 3000;

/// Leaves out pieces, large ones first, as long as `fails` still says so.
pub fn smaller(bytes: &[u8], mut fails: impl FnMut(&[u8]) -> bool) -> Vec<u8> {
    let mut best = bytes.to_vec();
    let mut size = best.len().div_ceil(2);
    let mut tries = 0;
    while size > 0 && tries < TRIES {
        let mut at = 0;
        let mut went = false;
        while at < best.len() && tries < TRIES {
            tries += 1;
            let end = (at + size).min(best.len());
            let candidate = [&best[..at], &best[end..]].concat();
            if fails(&candidate) {
                best = candidate;
                went = true;
            } else {
                at = end;
            }
        }
        if size == 1 && !went {
            break;
        }
        size = if size == 1 && went { 1 } else { size / 2 };
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_matter_is_left_out() {
        let fails = |bytes: &[u8]| bytes.contains(&b'x') && bytes.contains(&b'y');
        assert_eq!(smaller(b"many bytes, an x, and more, and a y at the end", fails).len(), 2);
    }
}

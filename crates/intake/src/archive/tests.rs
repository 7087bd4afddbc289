use super::*;
use crate::test_package::{CHECKSUM, FLAGS, LOCKED, METHOD, SIZE, change_record, pack};

fn names(archive: &Archive<'_>) -> Vec<String> {
    archive.entries().iter().map(|entry| entry.name.clone()).collect()
}

fn read(archive: &Archive<'_>, index: usize) -> Result<Vec<u8>, EntryProblem> {
    let mut bytes = Vec::new();
    archive.stream(index, &mut |piece| {
        bytes.extend_from_slice(piece);
        ControlFlow::Continue(())
    })?;
    Ok(bytes)
}

#[test]
fn files_come_sorted_and_whole_and_folders_and_system_files_do_not_come() {
    let long = b"id,Pb\n1,2\n".repeat(20_000);
    let package = pack(&[
        ("b/", b""),
        ("b/two.csv", &long),
        ("__MACOSX/b/._two.csv", b"x"),
        (".DS_Store", b"x"),
        ("b/Thumbs.db", b"x"),
        ("a.csv", b"id\n1\n"),
        ("empty.csv", b""),
        ("B.csv", b"id\n2\n"),
    ]);
    let archive = Archive::open(&package).expect("a sound archive");
    assert_eq!(names(&archive), ["B.csv", "a.csv", "b/two.csv", "empty.csv"]);
    assert_eq!(read(&archive, 1), Ok(b"id\n1\n".to_vec()));
    assert_eq!(read(&archive, 2), Ok(long.clone()));
    assert_eq!(read(&archive, 3), Ok(Vec::new()));
    assert_eq!(archive.entries()[2].size, long.len() as u64);
    assert_eq!(read(&archive, 4), Err(EntryProblem::Broken));
}

#[test]
fn a_sink_may_break_off() {
    let package = pack(&[("a.csv", &b"id,Pb\n1,2\n".repeat(50_000))]);
    let archive = Archive::open(&package).expect("a sound archive");
    let mut seen = 0;
    let outcome = archive.stream(0, &mut |piece| {
        seen += piece.len();
        ControlFlow::Break(())
    });
    assert_eq!((outcome, seen), (Ok(()), PIECE));
}

#[test]
fn names_stay_inside_and_visible() {
    assert_eq!(clean("../../etc/results.csv"), "etc/results.csv");
    assert_eq!(clean("/abs/./a.csv"), "abs/a.csv");
    assert_eq!(clean("C:\\data\\a.csv"), "data/a.csv");
    assert_eq!(clean("C:a.csv"), "a.csv");
    assert_eq!(clean("..\\..\\a.csv"), "a.csv");
    assert_eq!(clean("a\u{7}b.csv"), "a\u{FFFD}b.csv");
    assert_eq!(clean("../.."), "unnamed");
    assert_eq!(clean(""), "unnamed");
    let package = pack(&[("../../slip.csv", b"1"), ("/slip.csv", b"2")]);
    let archive = Archive::open(&package).expect("a sound archive");
    assert_eq!(names(&archive), ["slip (2).csv", "slip.csv"]);
}

#[test]
fn files_of_one_name_are_kept_apart_and_none_is_lost() {
    let package = pack(&[
        ("r/a.csv", b"one"),
        ("r/a.csv", b"two"),
        ("r/a (2).csv", b"taken"),
        ("r/a.csv", b"three"),
        ("no.ending/x", b"four"),
        ("no.ending/x", b"five"),
    ]);
    let archive = Archive::open(&package).expect("a sound archive");
    let found: Vec<_> = (0..archive.entries().len())
        .map(|index| {
            let text = String::from_utf8(read(&archive, index).expect("readable")).expect("text");
            (archive.entries()[index].name.clone(), text)
        })
        .collect();
    let expected = [
        ("no.ending/x", "four"),
        ("no.ending/x (2)", "five"),
        ("r/a (2).csv", "taken"),
        ("r/a (3).csv", "two"),
        ("r/a (4).csv", "three"),
        ("r/a.csv", "one"),
    ];
    assert_eq!(found, expected.map(|(name, text)| (name.to_owned(), text.to_owned())));
}

#[test]
fn names_are_read_as_utf_8_or_in_the_old_code_page() {
    let mut package = pack(&[("Pr__fung.csv", b"1"), ("測定.csv", b"2")]);
    // Both names, in the local header and in the directory, with bytes of code page 437.
    let places: Vec<usize> = memchr::memmem::find_iter(&package, b"Pr__fung").collect();
    for at in places {
        package[at + 2..at + 4].copy_from_slice(&[0x81, 0x81]);
    }
    let archive = Archive::open(&package).expect("a sound archive");
    assert_eq!(names(&archive), ["Prüüfung.csv", "測定.csv"]);
}

#[test]
fn an_archive_inside_is_refused_and_a_workbook_inside_is_not() {
    let inner = pack(&[("a.csv", b"1")]);
    let workbook = pack(&[("[Content_Types].xml", b"<Types/>"), ("xl/workbook.xml", b"<workbook/>")]);
    let package = pack(&[
        ("1.dat", &inner),
        ("2.dat", &workbook),
        ("3.dat", b"7z\xBC\xAF\x27\x1C and more"),
        ("4.dat", b"\x1F\x8B\x08 and more"),
        ("5.dat", b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1 old workbook"),
    ]);
    let archive = Archive::open(&package).expect("a sound archive");
    assert_eq!(read(&archive, 0), Err(EntryProblem::Nested));
    assert_eq!(read(&archive, 1), Ok(workbook));
    assert_eq!(read(&archive, 2), Err(EntryProblem::Nested));
    assert_eq!(read(&archive, 3), Err(EntryProblem::Nested));
    assert!(read(&archive, 4).is_ok());
}

#[test]
fn what_cannot_be_read_is_listed_with_its_problem() {
    let mut package = pack(&[("a.csv", b"1"), ("b.csv", b"2"), ("c.csv", b"3"), ("d.csv", b"4")]);
    change_record(&mut package, 0, FLAGS, &LOCKED);
    change_record(&mut package, 1, METHOD, &[93, 0]);
    change_record(&mut package, 2, CHECKSUM, &[1, 2, 3, 4]);
    let archive = Archive::open(&package).expect("a sound directory");
    let problems: Vec<_> = archive.entries().iter().map(|entry| entry.problem).collect();
    assert_eq!(problems, [Some(EntryProblem::Locked), Some(EntryProblem::MethodUnknown), None, None]);
    assert_eq!(read(&archive, 0), Err(EntryProblem::Locked));
    assert_eq!(read(&archive, 1), Err(EntryProblem::MethodUnknown));
    assert_eq!(read(&archive, 2), Err(EntryProblem::Broken));
    assert_eq!(read(&archive, 3), Ok(b"4".to_vec()));
}

#[test]
fn a_bomb_is_refused_by_its_claim_and_stopped_where_the_claim_lies() {
    let zeros = vec![0; 8 * 1024 * 1024];
    let mut package = pack(&[("bomb.csv", &zeros), ("a.csv", b"1")]);
    let archive = Archive::open(&package).expect("a sound directory");
    assert_eq!(archive.entries()[1].problem, Some(EntryProblem::PackedTooTight));
    assert_eq!(read(&archive, 1), Err(EntryProblem::PackedTooTight));
    assert_eq!(read(&archive, 0), Ok(b"1".to_vec()));
    // The same bomb claiming to be small: no more than the claim and one piece is ever handed over.
    change_record(&mut package, 0, SIZE, &1000_u32.to_le_bytes());
    let archive = Archive::open(&package).expect("a sound directory");
    let mut seen = 0;
    let outcome = archive.stream(1, &mut |piece| {
        seen += piece.len();
        ControlFlow::Continue(())
    });
    assert_eq!((outcome, seen), (Err(EntryProblem::Broken), 0));
    // And claiming to be huge.
    change_record(&mut package, 0, SIZE, &0x7000_0000_u32.to_le_bytes());
    let archive = Archive::open(&package).expect("a sound directory");
    assert_eq!(archive.entries()[1].problem, Some(EntryProblem::TooLarge));
}

#[test]
fn an_archive_beyond_its_bounds_is_refused_whole() {
    let many: Vec<(&str, &[u8])> = vec![("a", b""); MOST_ENTRIES + 1];
    assert_eq!(Archive::open(&pack(&many)).err(), Some(ArchiveProblem::TooManyEntries));
    assert!(Archive::open(&pack(&many[..MOST_ENTRIES])).is_ok());
    // Five entries that share nothing but a claim of 500 MiB each.
    let mut package = pack(&[("a", b"1"), ("b", b"1"), ("c", b"1"), ("d", b"1"), ("e", b"1")]);
    for index in 0..5 {
        change_record(&mut package, index, SIZE, &(500_u32 * 1024 * 1024).to_le_bytes());
    }
    assert_eq!(Archive::open(&package).err(), Some(ArchiveProblem::TooLarge));
    assert_eq!(Archive::open(b"").err(), Some(ArchiveProblem::Broken));
    assert_eq!(Archive::open(b"PK\x03\x04").err(), Some(ArchiveProblem::Broken));
}

#[test]
fn an_archive_cut_anywhere_or_damaged_anywhere_is_told_and_never_stops_the_program() {
    let package = pack(&[("a.csv", b"id,Pb\n1,2\n"), ("b/c.csv", b"id\n3\n"), ("a.csv", b"again")]);
    for cut in 0..package.len() {
        assert!(Archive::open(&package[..cut]).is_err(), "cut at {cut}");
    }
    let mut told = 0;
    for at in 0..package.len() {
        let mut damaged = package.clone();
        damaged[at] ^= 0xFF;
        match Archive::open(&damaged) {
            Ok(archive) => {
                for index in 0..archive.entries().len() {
                    told += usize::from(read(&archive, index).is_err());
                }
            }
            Err(_) => told += 1,
        }
    }
    assert!(told > 0);
}

# German: what is said of a report that was held against what it carries

# The verdict, in one line.
proof-verdict-agrees = Der Bericht ist Byte für Byte das, was seine eigenen Daten ergeben.
proof-verdict-line_ends = Der Bericht ist das, was seine eigenen Daten ergeben. Nur seine Zeilenenden sind andere, wie Mail- und Textprogramme sie ändern; zu sehen ist davon nichts.
proof-verdict-findings_agree = Geprüft wurden nur die Daten im Bericht: Sie ergeben die Befunde, die er mitführt. Der Text, den Sie darin lesen, wurde NICHT geprüft und kann etwas anderes sagen.
proof-verdict-differs = Der Bericht ist nicht das, was seine eigenen Daten ergeben.
proof-verdict-files_needed = Der Bericht ließ sich nicht nachprüfen: Die Dateien, auf denen er beruht, sind zu groß, um darin zu stehen. Die Dateien mit ihm vorlegen.
proof-verdict-evidence_missing = Der Bericht ließ sich nicht nachprüfen: Die Daten, die jeder Bericht mitführt, fehlen in diesem.
proof-verdict-not_a_report = Das ist kein Bericht dieses Programms.

# Why only the findings were compared.
proof-only-other_version = Er gibt an, mit { $program } { $version } erstellt zu sein; das kann jeder hineinschreiben. Vor jedem Verlass auf seinen Wortlaut mit jener Version nachprüfen lassen. Bis dahin zählt, was seine Daten hier ergeben:
proof-only-language_not_here = Die Wörter seiner Sprache sind hier nicht vorhanden. Vor jedem Verlass auf seinen Wortlaut dort nachprüfen lassen, wo sie vorhanden sind. Bis dahin zählt, was seine Daten hier ergeben:

# What was shown, and what was not.
proof-shows-self = Das zeigt, dass der Bericht mit sich selbst übereinstimmt. Es zeigt nicht, woher seine Daten kommen: Wer die Daten ändert, kann wieder einen Bericht erzeugen, der ebenfalls mit sich selbst übereinstimmt.
proof-shows-data = Jede Datei, auf der die Befunde beruhen, wurde vorgelegt und ist die, die der Bericht nennt: Seine Messungen sind die Messungen dieser Dateien. Was Menschen festgelegt haben, und die Regelwerke stehen in keiner solchen Datei: Der Bericht führt sie auf.
proof-shows-some = Einige der Dateien, auf denen die Befunde beruhen, wurden nicht vorgelegt. Nur für die vorgelegten wurde gezeigt, dass der Bericht ihre Daten enthält.
proof-shows-other_bytes = Eine vorgelegte Datei hat den Namen einer Datei, auf der der Bericht beruht, und andere Bytes. Entweder ist es nicht diese Datei, oder der Bericht wurde nicht aus ihr erstellt.
proof-shows-digest_same = Die angegebene Prüfsumme ist die Prüfsumme dieser Befunde: Das ist der Bericht mit dieser Prüfsumme.
proof-shows-digest_other = Die angegebene Prüfsumme ist nicht die Prüfsumme dieser Befunde: Das ist nicht der Bericht mit dieser Prüfsumme.
proof-digest = SHA-256 der Befunde, berechnet aus den Daten im Bericht: { $digest }

# A file the report names.
proof-file-matched = { $file }: vorgelegt, und dieselben Bytes.
proof-file-other_bytes = { $file }: Eine Datei dieses Namens wurde vorgelegt und hat andere Bytes. Der Bericht beruht auf der mit SHA-256 { $sha256 }.
proof-file-not_given = { $file }: nicht vorgelegt. SHA-256 { $sha256 }.
proof-file-nothing_read = { $file }: Nichts wurde daraus gelesen.
proof-stranger = { $file }: vorgelegt, aber keine Datei, die dieser Bericht nennt.

# Where something is another.
proof-where-top = Vor dem ersten Abschnitt
proof-where-top_row = Vor dem ersten Abschnitt, bei „{ $row }“
proof-where-section = Abschnitt „{ $section }“
proof-where-row = Abschnitt „{ $section }“, Zeile „{ $row }“
proof-where-cell = Abschnitt „{ $section }“, Zeile „{ $row }“, Spalte „{ $column }“
proof-where-frame = In den Daten, die der Bericht mitführt
proof-where-program = In den Daten, die der Bericht mitführt, Name und Version des Programms
proof-where-report = In den Daten, die der Bericht mitführt, seine Sprache, Länge oder Prüfsumme
proof-where-act = In den Daten, die der Bericht mitführt, Eingabe { $name }
proof-where-book = In den Daten, die der Bericht mitführt, Regelwerk { $name }
proof-where-history = In den Daten, die der Bericht mitführt, der Verlauf
proof-where-file = In den Daten, die der Bericht mitführt, Datei { $name }
proof-where-source = In den Daten, die der Bericht mitführt, was aus { $name } wurde
proof-where-photo = In den Daten, die der Bericht mitführt, Foto { $name }
proof-where-canonical = In den Daten, die der Bericht mitführt, die Befunde
proof-where-end = In den Daten, die der Bericht mitführt, die Schlusszeile
proof-where-unknown = In den Daten, die der Bericht mitführt, eine Zeile unbekannter Art

# What is another there.
proof-place-text = { $where }: Der Bericht sagt „{ $says }“, seine Daten ergeben „{ $gives }“.
proof-place-missing = { $where }: fehlt im Bericht. Seine Daten ergeben „{ $gives }“.
proof-place-extra = { $where }: Der Bericht sagt „{ $says }“, und seine Daten ergeben nichts dergleichen.
proof-place-markup = { $where }: Der Bericht ist anders aufgebaut. Er hat { $says }; das Programm schreibt { $gives }.
proof-place-style = { $where }: Die Formatvorlage ist eine andere. Sie kann verbergen oder ändern, was zu sehen ist.
proof-place-active = { $where }: Der Bericht enthält etwas, was ein Browser ausführen oder abrufen kann: { $says }
proof-place-picture = { $where }: Das Bild ist nicht das, das dorthin gehört. Seine SHA-256 ist { $says } und müsste { $gives } sein.
proof-place-changed = { $where }: nach dem Schreiben geändert.
proof-place-part_missing = { $where }: fehlt.
proof-place-not_usable = { $where }: nicht brauchbar.
proof-place-written_otherwise = { $where }: nicht so, wie das Programm es schreibt.
proof-place-finding = Befunde, { $row }: Der Bericht führt „{ $says }“ mit, seine Daten ergeben „{ $gives }“.
proof-place-text_changed = Der Text des Berichts wurde nach dem Schreiben geändert. Wo, kann nur die Version sagen, die ihn geschrieben hat.
proof-place-digest_not_printed = Der Bericht druckt die Prüfsumme der Befunde, die er mitführt, nicht: { $gives }.
proof-more = { $count ->
    [one] Und { $count } weitere Stelle.
   *[other] Und { $count } weitere Stellen.
}
proof-shows-digest_findings = Die angegebene Prüfsumme ist die Prüfsumme dieser Befunde. Über den Text dieses Berichts, der nicht geprüft wurde, sagt sie nichts.
proof-lot = Los { $lot }, Lieferant { $supplier }: { $disposition }
proof-more_lots = { $count ->
    [one] Und { $count } weiteres Los, nicht schlechter als diese.
   *[other] Und { $count } weitere Lose, keines schlechter als diese.
}
proof-foreign_books = Nicht jedes Regelwerk, nach dem er beurteilt wurde, gehört zu dieser Version des Programms: { $books }. Welchen Namen es auch trägt, seine Grenzwerte sind die einer Datei, die jemand geladen hat, oder einer anderen Version. Die Grenzwerte im Bericht mit dem Gesetz oder der Norm vergleichen.
proof-nothing = nichts

# On the command line.
proof-no_report = kein Bericht ist genannt
proof-no_digest = „{ $found }“ ist keine Prüfsumme: Eine SHA-256 hat 64 Zeichen von 0 bis 9 und a bis f
proof-help =

    Einen Bericht nachprüfen:
      plumbline prove REPORT [--source FILE-OR-FOLDER]... [--digest HEX]

    prove      berechnet einen Bericht noch einmal aus den Daten, die er mitführt, und sagt, wo er abweicht
    --source PATH    die Dateien, aus denen er erstellt wurde, oder ihr Ordner: zeigt, dass seine Daten aus ihnen stammen
    --digest HEX     die Prüfsumme auf dem unterschriebenen Papier: zeigt, dass es der unterschriebene Bericht ist

    Rückgabewert von prove: 0 er stimmt überein, und nichts Vorgelegtes widerspricht; 1 er weicht ab;
    2 er ließ sich nicht nachprüfen;
    3 nur die Befunde darin ließen sich nachprüfen, nicht der Text, den Sie lesen (andere Version oder Sprache);
    64 falscher Aufruf, oder eine nicht lesbare Datei.

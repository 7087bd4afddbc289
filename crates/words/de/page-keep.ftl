# Keeping: the recovery copy, the inspection file, leaving nothing behind.

## In the head of the page

page-keep-open = Sichern
page-keep-state-file = Um { $time } in einer Datei gespeichert
page-keep-state-copy = In der Sicherungskopie
page-keep-state-none = Nicht gesichert

## Steps, as they are named when they are taken back

page-keep-step-files = { $n ->
    [one] { $name } geladen
   *[other] { $n } Dateien geladen
  }
page-keep-step-out = { $name } herausgenommen
page-keep-step-put-back = { $name } wieder aufgenommen
page-keep-step-settings = Einstellungen aus { $name }
page-keep-step-rule-book = Regelwerk aus { $name }
page-keep-step-mapping = Bedeutungen von Spalten aus { $name }
page-keep-step-history = Verlauf aus { $name }
page-keep-step-bill = Werkstoffliste aus { $name }
page-keep-step-photos = { $n ->
    [one] ein Foto geladen
   *[other] { $n } Fotos geladen
  }
page-keep-step-set-aside = { $n ->
    [one] eine Messung beiseitegelegt
   *[other] { $n } Messungen beiseitegelegt
  }
page-keep-step-and-more = { $act } und { $n } weitere
page-keep-taken-out = { $name } wurde herausgenommen.
page-keep-put-back = Wieder aufnehmen
page-keep-event-put-back = { $name } wurde wieder aufgenommen.

## The panel

page-keep-heading = Sichern und Wiederherstellen
page-keep-training = Dies ist eine Übung mit erfundenen Daten: Von ihr wird keine Sicherungskopie gemacht.
page-keep-off = Von dieser Prüfung wird auf diesem Rechner nichts behalten. Schließt sich der Browser, ist sie weg: Speichern Sie sie in einer Datei, wenn Sie sie behalten wollen.
page-keep-unsaved-full = Für die Sicherungskopie ist kein Platz mehr: Was Sie ab jetzt tun, steht nicht darin. Sie können weiterarbeiten. Speichern Sie die Prüfung in einer Datei, gleich hier.
page-keep-unsaved-refused = Dieser Browser lässt die Seite keine Sicherungskopie behalten: Ein privates Fenster oder eine Regel dieses Rechners kann das bewirken. Sie können weiterarbeiten. Speichern Sie die Prüfung in einer Datei, gleich hier.
page-keep-event-code = Ein Sicherungscode wird angezeigt: Schreiben Sie ihn auf.
page-keep-code-name = Sicherungscode
page-keep-code-new = Schreiben Sie diesen Code auf und behalten Sie ihn bei sich. Alles, was Sie hier tun, wird sofort verschlüsselt auf diesem Rechner gesichert. Nach einem Absturz bringt es nur dieser Code zurück.
page-keep-code-again = Dieser Code bringt nach einem Absturz alles zurück.
page-keep-code-hint = Die Seite bewahrt den Code nirgends auf. Ohne ihn kann niemand die Kopie öffnen, und niemand kann Ihnen einen anderen geben. Als Datei gehört er auf Ihren Stick, nicht auf diesen Rechner.
page-keep-noted = Ich habe ihn aufgeschrieben
page-keep-copy-code = Code kopieren
page-keep-save-code = Code als Textdatei
page-keep-code-file = Sicherungscode einer Plumbline-Prüfung. Er öffnet die verschlüsselte Kopie in dem Browser, in dem sie entstanden ist. Nicht bei diesem Rechner aufbewahren.
page-keep-event-noted = Der Code ist unter „Sichern“ jederzeit wieder zu sehen.
page-keep-event-code-copied = Der Code wurde kopiert.
page-keep-event-code-marked = Der Code ist markiert: Kopieren Sie ihn mit der Tastatur.
page-keep-file-what = Speichern Sie die Prüfung, um sie anderswo oder an einem anderen Tag fortzusetzen: Dateien, Einstellungen und alle Eingaben in einer Datei. Wer diese Datei hat, kann sie lesen.
page-keep-file-kind = Prüfung
page-keep-save-as = Prüfung speichern …
page-keep-download = Prüfung herunterladen
page-keep-event-saved = { $file } wurde gespeichert.
page-keep-close = Schließen und entfernen
page-keep-close-hint = Das Schließen entfernt die Sicherungskopie dieser Prüfung von diesem Rechner. Solange diese Seite offen ist, können Sie noch zu ihr zurück.
page-keep-event-closed = Geschlossen. Die Sicherungskopie wurde von diesem Rechner entfernt.
page-keep-others = { $n ->
    [one] Eine weitere Sicherungskopie liegt in diesem Browser.
   *[other] { $n } weitere Sicherungskopien liegen in diesem Browser.
  }
page-keep-remove-others = { $n ->
    [one] Diese entfernen
   *[other] Alle { $n } entfernen
  }

## What the copy is against, and what not

page-keep-threats = Wovor die Kopie schützt und wovor nicht
page-keep-threat-copied = Jeder Schritt steht in der Kopie, bevor die Seite sagt, dass er übernommen ist. Nach einem Absturz, einem beendeten Browser oder einem abgezogenen Stick machen Sie dort weiter, wo Sie waren.
page-keep-threat-where = Die Kopie liegt in diesem Browser auf diesem Rechner, nicht auf dem Stick. Offen lesbar ist nur, wann sie gesichert wurde und wie viele Einträge und Dateien sie hat.
page-keep-threat-against = Sie schützt vor einer anderen Person oder einer anderen Seite, die ansieht, was dieser Browser behält: Ohne den Code sehen sie nichts davon. Ein Eintrag, der geändert oder verschoben wurde oder fehlt, wird bemerkt und gemeldet.
page-keep-threat-not-against = Sie schützt nicht vor jemandem, der Ihnen zusieht, nicht vor einem schädlichen Programm, das jetzt läuft, nicht vor dem, was im Speicher steht oder was das System davon auf die Platte schreibt, und nicht vor jemandem, der die Kopie entfernt oder eine ältere an ihre Stelle setzt.
page-keep-threat-code = Wer den aufgeschriebenen Code findet und diesen Rechner hat, kann die Kopie öffnen.
page-keep-threat-size = Dateien von mehr als { $size } werden nicht kopiert, damit niemand warten muss und die Platte nicht voll wird: nur Name, Größe und Prüfsumme. Nach ihnen wird wieder gefragt.
page-keep-threat-closed = „Neue Prüfung“ behält die Kopie, weil Sie zurückkommen können. Entfernt wird sie durch „Schließen und entfernen“, durch „Auf diesem Rechner nichts hinterlassen“ oder in der Startansicht. Heruntergeladene Dateien bleiben, wohin der Browser sie gelegt hat: Die Seite kann sie nicht entfernen.

## Leave nothing

page-keep-leave-off = Dann gibt es keine Sicherungskopie, und weder Spalten noch Sprache noch helle oder dunkle Darstellung werden gemerkt; was behalten war, wird sofort entfernt. Nur dieser Wunsch selbst wird behalten.
page-keep-leave-on = Keine Sicherungskopie, keine gemerkten Spalten, keine Sprache. Behalten wird nur dieser Wunsch selbst, der nichts über Ihre Arbeit sagt. Heruntergeladene Dateien bleiben, wohin der Browser sie gelegt hat.

## Copies found

page-keep-found = { $n ->
    [one] Eine Prüfung lässt sich zurückholen
   *[other] { $n } Prüfungen lassen sich zurückholen
  }
page-keep-found-what = { $n ->
    [one] In diesem Browser liegt eine Sicherungskopie. Nur der aufgeschriebene Code öffnet sie.
   *[other] In diesem Browser liegen Sicherungskopien. Nur der aufgeschriebene Code öffnet sie.
  }
page-keep-found-one = Gesichert { $when }: { $records ->
    [one] { $records } Eintrag
   *[other] { $records } Einträge
  }, { $files ->
    [one] { $files } Datei
   *[other] { $files } Dateien
  }
page-keep-found-many = Die älteren werden vielleicht nicht mehr gebraucht.
page-keep-found-where = Was dieser Browser behält
page-keep-code-typed-hint = Großbuchstaben, Leerzeichen und Bindestriche spielen keine Rolle.
page-keep-bring-back = Zurückholen
page-keep-remove = Entfernen
page-keep-remove-older = { $n ->
    [one] Die ältere entfernen
   *[other] Die { $n } älteren entfernen
  }
page-keep-removed = { $n ->
    [one] Eine Sicherungskopie wurde von diesem Rechner entfernt.
   *[other] { $n } Sicherungskopien wurden von diesem Rechner entfernt.
  }
page-keep-event-copies-back = Wiederhergestellt.
page-keep-work-opening = Sicherungskopie wird geöffnet
page-keep-code-odd = „{ $sign }“ steht in keinem Code. Sehen Sie nach, was aufgeschrieben wurde: Die Zeichen 0, 1, 5, 8 und die Buchstaben B, I, L, O, S, U, V, Z kommen nie vor.
page-keep-code-length = Ein Code hat { $of } Zeichen. { $n ->
    [one] Dies ist { $n }.
   *[other] Dies sind { $n }.
  } Sehen Sie nach, ob eines fehlt oder doppelt steht.
page-keep-code-wrong = Dieser Code öffnet in diesem Browser keine Kopie. Nichts ist verloren: Sehen Sie nach, was aufgeschrieben wurde, und versuchen Sie es noch einmal.
page-keep-not-back-what = Die Sicherungskopie ließ sich nicht öffnen.
page-keep-browser-why = Der Browser ließ die Seite nicht an das, was er behält.
page-keep-not-back-todo = Sie blieb, wie sie ist. Versuchen Sie es noch einmal; geschieht es wieder, beginnen Sie mit Ihren Dateien.
page-keep-not-removed-what = Was dieser Browser behält, ließ sich nicht entfernen.
page-keep-not-removed-todo = Versuchen Sie es noch einmal, oder löschen Sie die Daten dieses Browsers in seinen Einstellungen.
page-keep-event-recovered = { $n ->
    [one] Die Prüfung ist wieder da, mit ihren Dateien und Eingaben.
   *[other] { $n } Prüfungen sind wieder da. Die neueste steht hier; „Zurück zur Prüfung davor“ führt zu den anderen.
  }
page-keep-lost-what = Die Sicherungskopie wurde geändert oder beschädigt.
page-keep-lost-where = Sicherungskopie, gesichert { $when }
page-keep-lost-why = { $n ->
    [one] Ein Eintrag ist nicht so, wie er geschrieben wurde, oder er fehlt. Alles davor ist wieder da.
   *[other] Ein Eintrag ist nicht so, wie er geschrieben wurde, oder er fehlt. Er und die dahinter, zusammen { $n }, waren nicht zu gebrauchen. Alles davor ist wieder da.
  }
page-keep-lost-todo = Sehen Sie die letzten Eingaben an und holen Sie nach, was fehlt. Die beschädigte Kopie blieb, wie sie ist, und lässt sich in der Startansicht entfernen; eine neue wurde mit demselben Code begonnen.

## Inspection files

page-keep-event-opened = Die Prüfung aus { $name } ist offen, mit ihren Dateien und Eingaben.
page-keep-event-changed = { $n ->
    [one] Eine Datei daneben ist eine andere als damals: { $names }.
   *[other] { $n } Dateien daneben sind andere als damals: { $names }.
  }
page-keep-event-awaited = { $n ->
    [one] Eine Datei muss erneut gewählt werden: siehe „Sichern“.
   *[other] { $n } Dateien müssen erneut gewählt werden: siehe „Sichern“.
  }
page-keep-changed-what = Eine Datei wurde geändert, seit die Prüfung gespeichert wurde.
page-keep-changed-why = Die Datei daneben heißt gleich, aber ihre Bytes sind andere. Die Prüfung steht mit der Datei, wie sie war.
page-keep-changed-todo = Um die geänderte Datei zu verwenden, nehmen Sie die alte unter „Was kam an?“ heraus und wählen Sie die geänderte als Ergebnisdatei.
page-keep-acts-what = Die Prüfung wurde nicht ganz übernommen.
page-keep-acts-why = { $n } von { $of } Eingaben wurden übernommen: Dieses Exemplar von Plumbline weist die anderen zurück.
page-keep-acts-todo = Öffnen Sie sie mit der Version von Plumbline, mit der sie gespeichert wurde.
page-keep-not-opened-what = Die Prüfungsdatei wurde nicht geöffnet; nichts wurde geändert.
page-keep-not-opened-newer-why = Sie wurde von einem neueren Plumbline geschrieben ({ $schema }), und dieses kennt ihre Form nicht.
page-keep-not-opened-newer-todo = Öffnen Sie sie mit dem neueren Plumbline.
page-keep-not-opened-damaged-why = Dieser Teil ist beschädigt: Er ist nicht, was geschrieben wurde.
page-keep-not-opened-damaged-todo = Kopieren Sie die Datei noch einmal von dort, woher sie kam. Hilft das nicht, beginnen Sie mit den Ergebnisdateien.
page-keep-not-opened-foreign-why = Sie ist nicht, was Plumbline schreibt ({ $schema }).
page-keep-not-opened-foreign-todo = Bitten Sie um die Datei, wie Plumbline sie gespeichert hat.
page-keep-part-list = der Anfang
page-keep-part-head = was festgehalten wurde
page-keep-part-file = der Teil mit { $name }
page-keep-awaited = { $n ->
    [one] Diese Datei war zu groß, um mit der Prüfung behalten zu werden. Wählen Sie sie erneut:
   *[other] Diese Dateien waren zu groß, um mit der Prüfung behalten zu werden. Wählen Sie sie erneut:
  }
page-keep-choose-again = Wählen
page-keep-without = Ohne sie weiter
page-keep-other-file-what = Dies ist nicht die Datei, auf die gewartet wird.
page-keep-other-file-why = Sie heißt gleich, aber ihre Bytes sind andere ({ $size }; jene Datei hat { $meant }).
page-keep-other-file-todo = Wählen Sie die Datei, wie sie war. Um stattdessen diese zu nehmen, öffnen Sie „Sichern“, gehen Sie ohne die alte Datei weiter und wählen Sie diese noch einmal.

page-trouble-kept-what = Eine Datei ist dort, wo sie herkam, nicht mehr lesbar.
page-trouble-kept-why = Der Stick wurde vielleicht abgezogen, oder die Datei wurde verschoben oder geändert. Ihr Inhalt, wie er hereinkam, steht in der Sicherungskopie.
page-trouble-kept-todo = Nichts ist verloren: Die Arbeit geht mit dem weiter, was hereinkam. Sollte sich die Datei ändern, sie herausnehmen und erneut wählen.

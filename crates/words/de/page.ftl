# German: what the page says of itself

page-skip = Zum Inhalt springen
page-steps = Die fünf Fragen
page-undo = Rückgängig
page-redo = Wiederholen
page-cancel = Abbrechen
page-start-again = Neue Prüfung
page-bring-back = Zurück zur Prüfung davor
page-today = Heute
page-program = Plumbline { $version }. Arbeitet aus dieser einen Datei; nichts verlässt diesen Rechner.
page-not-a-declaration = Ein Screening ist keine Konformitätserklärung.
page-cautions = Was ein Screening nicht sagen kann
page-cautions-read = { $n ->
    [one] { $n } Warnhinweis lesen
   *[other] { $n } Warnhinweise lesen
  }
page-written = Festgehalten
page-invented = erfunden
page-nothing-yet = Noch ist nichts da. Ergebnisdateien wählen oder irgendwo auf dieser Seite ablegen.
page-no-file-read = Keine Datei konnte gelesen werden.
page-no-readings = Aus den Dateien kam keine Messung heraus.
page-look-at-came-in = Unter „Was kam an?“ nachsehen.
page-and-more = { $names } und { $n } weitere

# Sizes and places in a file
page-bytes = { $n } Bytes
page-kib = { $n } KiB
page-mib = { $n } MiB
page-at-line = Zeile { $line }
page-at-column = Spalte { $column }
page-at-column-headed = Spalte { $column } „{ $heading }“
page-line-name = Zeile { $line }
page-unit-name = Stück { $unit }
page-spot-name = Messstelle { $spot }

# The first screen
page-start-heading = Ist die Lieferung im Lot?
page-start-lead = Plumbline liest die RFA-Screening-Ergebnisse einer Lieferung, sagt für jeden Stoff, ob er unter seinem Grenzwert, darüber oder unentschieden ist, und sagt, was noch fehlt, bevor jemand das Los annehmen kann.
page-promise = Alles geschieht in dieser Datei, auf diesem Rechner. Die Seite kann nirgendwohin etwas senden.
page-door-inspect = Eine Lieferung prüfen
page-door-inspect-what = Ergebnisse kamen mit der Ware oder vom eigenen Gerät. Hier steht, was sie sagen, Los für Los, und was als Nächstes zu tun ist.
page-door-inspect-enter = Ergebnisdateien wählen
page-door-ship = Vor dem Versand prüfen
page-door-ship-what = Für Lieferanten: dieselbe Auswertung, bevor die Ware das Haus verlässt; sie zeigt, was Ihr Kunde sperren würde. Hat Ihnen der Kunde eine Regelwerk-Datei gegeben, diese zuerst hinzufügen.
page-door-ship-enter = Dateien zur Selbstprüfung wählen
page-door-ship-rules = Zuerst das Regelwerk des Kunden
page-door-ship-title = Selbstprüfung vor dem Versand
page-door-train = Üben
page-door-train-what = Alles mit Lieferungen an eine erfundene Firma ausprobieren. Jede zeigt etwas, das zu wissen sich lohnt.
page-door-train-invented = Alles erfunden: Firma, Lieferanten, Lose und Zahlen.
page-lesson = { $title }: die Geschichte, und was die Auswertung zeigen soll
page-lesson-before = Vorige Lieferung
page-lesson-next = Nächste Lieferung
page-door-label-inspect = Prüfung
page-door-label-ship = Selbstprüfung, keine Konformitätserklärung
page-door-label-train = Übung mit erfundenen Daten
page-self-check = Selbstprüfung.
page-self-check-what = Sie zeigt, was Ihr Kunde sperren oder nicht annehmen würde. Sie ist keine Konformitätserklärung.
page-demo-none = Dieses Exemplar der Seite enthält keine Übungslieferungen.

# Bringing files in
page-bring-heading = Dateien laden
page-bring-drop = Oder Dateien und Ordner irgendwo auf dieser Seite ablegen.
page-bring-kinds = Tabellen als CSV, TSV oder Text, Arbeitsmappen (XLSX, ODS) oder ZIP-Archive davon; auch eine gespeicherte Prüfung.
page-bring-files = Ergebnisdateien
page-bring-folder = Ergebnisordner
page-bring-settings = Einstellungsdatei
page-bring-mapping = Zuordnungsdatei
page-bring-rules = Regelwerk-Datei
page-bring-history = Verlaufsdatei
page-bring-bill = Werkstoffliste
page-drop-cover = Zum Lesen ablegen

# The five places
page-place-came-in = Was kam an?
page-place-trust = Ist es verlässlich?
page-place-says = Was sagt es?
page-place-next = Was nun?
page-place-write = Festhalten
page-needs-came-in = { $n ->
    [one] { $n } Punkt anzusehen
   *[other] { $n } Punkte anzusehen
  }
page-needs-trust = { $n ->
    [one] { $n } Angabe fehlt
   *[other] { $n } Angaben fehlen
  }
page-needs-says-held = { $n ->
    [one] { $n } Los gesperrt
   *[other] { $n } Lose gesperrt
  }
page-needs-says-not-accept = { $n ->
    [one] { $n } Los nicht annehmen
   *[other] { $n } Lose nicht annehmen
  }
page-needs-next = { $n ->
    [one] { $n } Schritt offen
   *[other] { $n } Schritte offen
  }
page-needs-write = { $n ->
    [one] { $n } Feld leer
   *[other] { $n } Felder leer
  }

# Work, events
page-work-label = Arbeit läuft
page-work-reading = Datei { $n } von { $of } wird gelesen: { $name } ({ $size })
page-work-folder = { $n ->
    [one] Der Ordner wird durchsucht: bisher { $n } Datei
   *[other] Der Ordner wird durchsucht: bisher { $n } Dateien
  }
page-work-reviewing = Auswertung läuft
page-work-writing = { $file } wird geschrieben
page-event-files = { $of ->
    [0] Nichts Neues kam an.
    [one] { $n } von { $of } Datei gelesen.
   *[other] { $n } von { $of } Dateien gelesen.
  }
page-event-twice = { $n ->
    [one] Eine war schon da und wird nicht zweimal gezählt: { $names }.
   *[other] { $n } waren schon da und werden nicht zweimal gezählt: { $names }.
  }
page-event-removed = { $name } wurde herausgenommen. „Rückgängig“ holt es zurück.
page-event-settings = Einstellungen aus { $name } übernommen.
page-event-rules = Regelwerk aus { $name } übernommen.
page-event-history = Verlauf aus { $name } übernommen.
page-event-bill = Werkstoffliste aus { $name } übernommen.
page-event-mapping = Bedeutungen von Spalten aus { $name } übernommen.
page-event-cancelled = Abgebrochen. Alles steht wie zuvor.
page-event-undone = Rückgängig gemacht: { $act }
page-event-brought-back = Die Prüfung davor ist wieder da, mit ihren Dateien und Eingaben.
page-event-same-name = Unter diesem Namen schon da, mit anderem Inhalt: { $names }. Beide zählen. Eine entfernen, falls sie die andere ersetzt.
page-event-taken = Übernommen: { $act }
page-event-redone = Wiederholt: { $act }
page-event-shown = { $n ->
    [one] { $n } von { $of } Messungen gezeigt.
   *[other] { $n } von { $of } Messungen gezeigt.
  }
page-event-written = { $file } wurde an die Downloads des Browsers übergeben.

# Troubles: what, where, why, what to do
page-troubles = Was schiefging
page-trouble-where = Wo
page-trouble-why = Warum
page-trouble-todo = Was zu tun ist
page-trouble-close = Schließen
page-trouble-engine-what = Der rechnende Teil ist nicht gestartet.
page-trouble-engine-where = Diese Seite, beim Öffnen
page-trouble-engine-todo = Die Seite neu laden. Geschieht es wieder, ist die Datei vielleicht beschädigt: eine neue Kopie besorgen oder das Befehlszeilenprogramm benutzen.
page-trouble-page-what = In der Seite selbst ging etwas schief.
page-trouble-page-where = Die Seite, nicht Ihre Dateien
page-trouble-page-todo = Was Sie sehen, ist vielleicht unvollständig. Unter „Sichern“ die Prüfung in einer Datei speichern; dann die Seite neu laden und diese Datei öffnen oder die Prüfung mit ihrem Code zurückholen.
page-trouble-unreadable-what = Eine Datei konnte nicht gelesen werden.
page-trouble-changed-why = Sie ist kürzer als beim Wählen: Sie wurde beim Lesen geändert oder abgeschnitten.
page-trouble-unreadable-todo = Die Datei wurde vielleicht seit dem Wählen verschoben, geändert oder der Stick abgezogen. Die Datei erneut wählen. Die anderen Dateien wurden gelesen.
page-trouble-folder-what = Ein abgelegter Ordner ließ sich nicht öffnen.
page-trouble-folder-todo = Stattdessen mit „Ergebnisordner“ wählen.
page-trouble-settings-what = Die Einstellungsdatei wurde nicht übernommen; nichts wurde geändert.
page-trouble-settings-results-why = Das sieht nach Ergebnissen aus, nicht nach Einstellungen.
page-trouble-settings-results-todo = Unter „Ergebnisdateien“ wählen. Eine Einstellungsdatei wurde hier unter „Einstellungen“ heruntergeladen oder ist von Hand geschrieben; ihr Name endet auf .toml.
page-trouble-rules-what = Das Regelwerk wurde nicht übernommen; nichts wurde geändert.
page-trouble-history-what = Der Verlauf wurde nicht übernommen; nichts wurde geändert.
page-trouble-bill-what = Die Werkstoffliste wurde nicht übernommen; nichts wurde geändert.
page-trouble-mapping-what = Die Zuordnungsdatei wurde nicht übernommen; nichts wurde geändert.
page-trouble-act-what = Dieser Wert wurde nicht übernommen; nichts wurde geändert.
page-trouble-crash-what = Das Programm blieb stehen bei diesem Schritt: { $step }.
page-trouble-crash-file-todo = Das Programm wurde neu gestartet, und die anderen Dateien wurden ohne diese neu gelesen. Bitte die Datei dem melden, von dem Sie Plumbline haben.
page-trouble-crash-step-todo = Das Programm wurde neu gestartet und steht da, wo es vor diesem Schritt stand.
page-trouble-crash-look-todo = Das Programm wurde mit allen Dateien und Eingaben neu gestartet. Noch einmal versuchen.
page-trouble-crash-all-todo = Das Programm ließ sich nicht dahin zurückbringen, wo es war. Die Dateien erneut wählen, wenige auf einmal.
page-step-start = starten
page-step-open = eine Datei öffnen
page-step-chunk = eine Datei lesen
page-step-finish = eine Datei abschließen
page-step-unreadable = eine unlesbare Datei vermerken
page-step-clear = leeren
page-step-settings = Einstellungen lesen
page-step-rule-book = ein Regelwerk lesen
page-step-mapping = eine Zuordnungsdatei lesen
page-step-mapping-acts = gemerkte Spalten lesen
page-step-mapping-text = eine Zuordnungsdatei schreiben
page-step-kept-mapping = Spalten merken
page-step-choices = auflisten, was eine Spalte sein kann
page-step-preview = Zeilen einer Datei zeigen
page-step-id-template = Kennungen zerlegen
page-step-act = eine Eingabe festhalten
page-step-review = auswerten
page-step-offers = auflisten, was angegeben werden kann
page-step-order = die Messungen sortieren
page-step-worst = die ungünstigste Messung je Werkstoff heraussuchen
page-step-window = Messungen zeigen
page-step-detail = eine Messung zeigen
page-step-export = eine Datei schreiben
page-step-settings-text = die Einstellungen schreiben
page-step-cancel = abbrechen
page-where-act = Eingabe „{ $kind }“
page-where-table = Tabelle der Messungen
page-where-detail = Einzelheiten einer Messung
page-where-settings = Einstellungsdatei
page-where-preview = Zeilen einer Datei
page-where-mapping = Zuordnungsdatei
page-where-everything = Alle Dateien und Eingaben

# What came in?
page-rows-in = Zeilen kamen an
page-rows-used = verwendet
page-rows-check = Kontrolle
page-rows-duplicate = doppelt
page-rows-set-aside = beiseitegelegt
page-rows-refused = abgewiesen
page-adds-up = Die Zeilen gehen auf: Jede hat genau einen Verbleib.
page-adds-wrong = Die Zeilen gehen nicht auf. Das ist ein Fehler des Programms: Verlassen Sie sich nicht auf diese Auswertung.
page-readings-made = { $n ->
    [one] Sie ergeben { $n } Messung.
   *[other] Sie ergeben { $n } Messungen.
  }
page-questions-heading = { $n ->
    [one] { $n } Frage, die die Dateien offen lassen
   *[other] { $n } Fragen, die die Dateien offen lassen
  }
page-questions-all = Für alle { $n } Dateien
page-need-class-of-all = { $count ->
    [one] Eine Messung nennt
   *[other] { $count } Messungen nennen
    } keine hier bekannte Werkstoffklasse. Welche Klasse ist es?
page-class-several = { $n } Werkstoffe haben noch keine Klasse: { $names }. Setzen Sie hier nur dann eine Klasse, wenn sie für alle stimmt.
page-class-each = Für jeden Werkstoff angeben
page-questions-each = Datei für Datei
page-questions-left = { $n ->
    [one] { $n } weitere Datei fragt das: für alle beantworten oder in einer Einstellungsdatei.
   *[other] { $n } weitere Dateien fragen das: für alle beantworten oder in einer Einstellungsdatei.
  }
page-questions-lead = Bis zur Antwort gilt die strenge Lesart. Eine Antwort wählen und „Festlegen“ drücken; die Wirkung zeigt sich sofort und lässt sich zurücknehmen.
page-questions-answered = { $n ->
    [one] { $n } Frage, beantwortet
   *[other] { $n } Fragen, beantwortet
  }
page-question-answered = Beantwortet: { $value }.
page-question-still = Noch offen: { $text }
page-files-heading = { $n ->
    [one] { $n } Datei
   *[other] { $n } Dateien
  }
page-source-unread = nicht gelesen
page-source-skipped = übergangen
page-source-questions = { $n ->
    [one] { $n } Frage
   *[other] { $n } Fragen
  }
page-source-refused = { $n ->
    [one] { $n } Zeile abgewiesen
   *[other] { $n } Zeilen abgewiesen
  }
page-source-notices = { $n ->
    [one] { $n } Meldung
   *[other] { $n } Meldungen
  }
page-source-size = { $n ->
    [one] { $n } Messung, { $size }
   *[other] { $n } Messungen, { $size }
  }
page-source-digest = SHA-256
page-source-remove = Diese Datei herausnehmen
page-source-remove-archive = Das ganze Archiv { $name } herausnehmen
page-set-aside-heading = Beiseitegelegt:
page-refusals-heading = { $n ->
    [one] { $n } abgewiesene Zeile
   *[other] { $n } abgewiesene Zeilen
  }
page-notices-heading = { $n ->
    [one] { $n } Meldung
   *[other] { $n } Meldungen
  }
page-table-where = Wo
page-table-why = Warum
page-table-remedy = Was zu tun ist
page-table-rows = Zeilen
page-table-left-out = { $n ->
    [one] { $n } weitere ist hier nicht gezeigt; findings.json enthält sie.
   *[other] { $n } weitere sind hier nicht gezeigt; findings.json enthält sie.
  }
page-columns-heading = { $n ->
    [one] Wie ihre { $n } Spalte verstanden wurde
   *[other] Wie ihre { $n } Spalten verstanden wurden
  }
page-columns-unused = { $n ->
    [one] { $n } Spalte nicht verwendet
   *[other] { $n } Spalten nicht verwendet
  }: { $names }
page-columns-caption = Spalten von { $name }
page-columns-lead = Jede Spalte steht unter der Bedeutung, die für sie gefunden wurde. Wo sie falsch ist, eine andere wählen: Die Datei wird neu gelesen, und die Wirkung zeigt sich sofort. Mit der Tastatur übernimmt die Eingabetaste das Gewählte.
page-columns-look = { $n ->
    [one] { $n } Spalte anzusehen
   *[other] { $n } Spalten anzusehen
  }
page-columns-line = Zeile
page-columns-unheaded = keine Überschrift
page-columns-about = Spalte { $column } { $heading }
page-columns-as = Gilt als
page-columns-element = Element
page-columns-element-none = welches?
page-columns-element-in-row = in jeder Zeile genannt
page-columns-which-element = Das Element wählen, um das es geht; bis dahin wird nichts geändert.
page-columns-unit = Einheit
page-columns-unit-none = nicht angegeben
page-columns-unit-as-value = wie der Wert
page-columns-relative = % des Werts selbst
page-columns-sigma = Steht für
page-columns-sigma-none = nicht angegeben
page-columns-elsewhere = { $value }, für alle Spalten angegeben oder festgelegt
page-columns-right = Stimmt so
page-columns-more-rows = { $n ->
    [one] { $n } Zeile zeigen
   *[other] { $n } Zeilen zeigen
  }
page-columns-fewer-rows = { $n ->
    [one] Nur { $n } Zeile zeigen
   *[other] Nur { $n } Zeilen zeigen
  }
page-elements-screened = Von den Grenzwerten erfasst
page-elements-other = Andere Elemente
page-elements-oxides = Oxide, in das Element umgerechnet
page-role-group-measured = Gemessen
page-role-group-identity = Was die Messung benennt
page-role-group-rows = Tabellen mit einer Zeile je Element
page-role-group-unit-of-measure = Einheit
page-role-group-unused = Nicht verwendet
page-table-heading = Tabelle mit Kopfzeile in Zeile { $line }
page-table-name = { $name }, Überschriften in Zeile { $line }
page-table-layout = Gelesen als: { $layout }.
page-table-lines = { $n ->
    [one] Die Überschriften stehen in Zeile { $lines }.
   *[other] Die Überschriften stehen in { $n } Zeilen: { $lines }.
  }
page-table-others = { $n ->
    [one] Eine Änderung hier gilt auch für { $n } andere Datei mit denselben Überschriften.
   *[other] Eine Änderung hier gilt auch für { $n } andere Dateien mit denselben Überschriften.
  }
page-blocks-left-out = { $n ->
    [one] { $n } weitere Tabelle dieser Datei ist hier nicht gezeigt.
   *[other] { $n } weitere Tabellen dieser Datei sind hier nicht gezeigt.
  }
page-files-all = { $n ->
    [one] { $n } Datei zeigen
   *[other] Alle { $n } Dateien zeigen
  }
page-heading-where = Wo stehen die Überschriften?
page-heading-where-why = Es wurde keine Zeile gefunden, die über einer Tabelle von Elementen steht. Den Knopf neben der richtigen Zeile drücken.
page-heading-rows = Erste Zeilen von { $name }
page-heading-here = Überschriften sind hier
page-evidence-stands = Was dort steht:
page-evidence-of-file = In { $name }:
page-evidence-more = { $n ->
    [one] und { $n } weitere Spalte
   *[other] und { $n } weitere Spalten
  }
page-evidence-range = { $n ->
    [one] { $n } Zahl: { $lowest }
   *[other] { $n } Zahlen von { $lowest } bis { $highest }
  }
page-evidence-written = wie geschrieben: { $list }

# Facts of a file
page-fact-archive = Aus dem Archiv
page-fact-sheet = Blatt
page-fact-sheets = { $n ->
    [one] von { $n } Blatt
   *[other] von { $n } Blättern
  }
page-fact-encoding = Textkodierung
page-fact-stated = Aus den Zeilen über der Tabelle
page-fact-stated-line = Zeile { $line }: { $key } { $value }, als { $use }
page-sheet = { $name }: { $rows ->
    [one] { $rows } Zeile
   *[other] { $rows } Zeilen
  }, { $columns ->
    [one] { $columns } Spalte
   *[other] { $columns } Spalten
  }, davon { $elements ->
    [0] keine
   *[other] { $elements }
  } zu einem Element
page-sheet-hidden = ausgeblendet
page-sheet-read = jetzt gelesen
page-sheet-passed-over = enthält wohl auch eine Tabelle, nicht gelesen
page-encoding-utf-8 = Unicode (UTF-8)
page-encoding-utf-16le = Unicode (UTF-16, niederwertiges Byte zuerst)
page-encoding-utf-16be = Unicode (UTF-16, höherwertiges Byte zuerst)
page-encoding-windows-1252 = Westeuropäisch (Windows-1252)
page-encoding-windows-1250 = Mitteleuropäisch (Windows-1250)
page-encoding-windows-1251 = Kyrillisch (Windows-1251)
page-encoding-shift-jis = Japanisch (Shift JIS)
page-encoding-euc-jp = Japanisch (EUC-JP)
page-encoding-gb18030 = Chinesisch, vereinfacht (GB 18030)
page-encoding-big5 = Chinesisch, traditionell (Big5)
page-encoding-euc-kr = Koreanisch (EUC-KR)

# Combined ids
page-id-heading = Kennungen, die Teil, Los oder Messstelle enthalten
page-id-lead = Wo eine Kennung wie { $example } mehreres enthält: angeben, was jeder Abschnitt ist. Die anderen werden ebenso zerlegt; eine, die nicht passt, bleibt ganz.
page-id-piece = Abschnitt
page-id-ignore = übergehen
page-id-pattern = Muster:
page-id-no-fit = passt nicht, bleibt ganz
page-id-set = Kennungen so zerlegen

# Remembered columns
page-remembered-heading = Was von Spalten für später behalten wird
page-remembered-note = in diesem Browser gemerkt
page-remembered-used = { $n ->
    [one] Für diese Überschriften gemerkte Spalten werden verwendet.
   *[other] Für { $n } Sätze von Überschriften gemerkte Spalten werden verwendet.
  }
page-remembered-meanings = { $n ->
    [one] { $n } Bedeutung stammt von einem anderen Tag.
   *[other] { $n } Bedeutungen stammen von einem anderen Tag.
  }
page-remembered-forget = Vergessen
page-remembered-forgotten = Vergessen: Die Spalten werden gelesen, wie sie gefunden wurden.
page-remembered-recall = Zurückholen
page-remembered-back = Die gemerkten Spalten werden wieder verwendet.
page-mapping-save = Zuordnungsdatei speichern
page-keep-nothing = Auf diesem Rechner nichts hinterlassen
page-kept-hint = Bedeutungen, die Sie Spalten geben, bleiben in diesem Browser unter ihren Überschriften, damit die nächste Datei vom selben Gerät keine Arbeit macht. Kein Messwert wird behalten. Eine Zuordnungsdatei bringt sie auf einen anderen Rechner.
page-kept-nothing = In diesem Browser wird nichts mehr behalten, außer dass nichts behalten werden soll.
page-kept-nothing-hint = Behalten wird nur dieser Wunsch selbst. Eine Zuordnungsdatei speichern, um die Bedeutungen von Spalten an einem anderen Tag zu haben.
page-kept-again = Bedeutungen von Spalten werden in diesem Browser wieder behalten.
page-kept-refused = Dieser Browser behält für diese Seite nichts. Alles andere geht; eine Zuordnungsdatei speichern, um die Bedeutungen von Spalten an einem anderen Tag zu haben.

page-correct-heading = Berichtigen, wie diese Datei gelesen wurde
page-correct-lead = Jede Berichtigung wird als Eingabe festgehalten und lässt sich rückgängig machen. Bei manchen wird die Datei neu gelesen.

# Acts
page-act-given = Angegeben von { $signature }.
page-act-given-unsigned = Ohne Kürzel angegeben.
page-act-in-force = Gilt jetzt: { $value }.
page-act-for = Für { $about }.
page-act-for-all = Für die ganze Prüfung.
page-act-about = { $act } ({ $about })
page-act-narrower = { $n ->
    [one] { $n } engerer Wert geht diesem vor, wo er gilt.
   *[other] { $n } engere Werte gehen diesem vor, wo sie gelten.
  }
page-act-pick-one = Zuerst etwas wählen.
page-act-no-number = „{ $typed }“ ist keine Zahl. Ziffern mit einem Komma oder Punkt schreiben, etwa 0.5 oder 0,5.
page-act-no-whole-number = „{ $typed }“ ist keine ganze Zahl. Nur Ziffern schreiben, etwa 480.
page-millimetres = { $value } mm
page-target-file = Datei { $name }
page-target-header = Tabellen mit den Überschriften von { $name }
page-target-lot = Los { $lot } von { $supplier }
page-target-lot-unnamed = alles ohne Angabe von Los und Lieferant
page-target-part = Teil { $part }
page-target-material = Werkstoff { $material } des Teils { $part }
page-target-lot-material = Werkstoff { $material } des Teils { $part } in Los { $lot } von { $supplier }
page-target-reading = Messung in Zeile { $line } von { $name }
page-target-unnamed = nicht benannt
page-act-no-initials = kein Kürzel
page-act-take-back = Zurücknehmen
page-act-undone = (rückgängig)
page-act-give = Festlegen
page-act-remember = Auch für spätere Dateien mit diesen Überschriften
page-act-class-label = Werkstoffklasse
page-act-class-hint = Für Messungen, deren Klasse die Datei nicht angibt. Die Klasse entscheidet, welches Grenzwertband gilt.
page-act-class-value-polymer = Polymer
page-act-class-value-metal = Metall
page-act-class-value-composite = Verbundwerkstoff oder Elektronik
page-act-class-value-plated = Metallisch überzogen oder beschichtet
page-act-sigma-multiple-label = Die ausgegebene Unsicherheit ist
page-act-sigma-multiple-hint = In den Einstellungen des Geräts nachsehen oder fragen, wer die Datei exportiert hat.
page-act-sigma-multiple-value-1 = 1 Sigma
page-act-sigma-multiple-value-1-96 = 1,96 Sigma (95 %)
page-act-sigma-multiple-value-2 = 2 Sigma
page-act-sigma-multiple-value-3 = 3 Sigma
page-act-unit-of-measure-label = Werte sind in
page-act-unit-of-measure-hint = Nur verwendet, wo die Datei keine Einheit angibt.
page-act-unit-of-measure-value-percent = % (Massenanteil)
page-act-decimal-mark-label = Dezimalzeichen
page-act-decimal-mark-value-point = Punkt, wie in 1.5
page-act-decimal-mark-value-comma = Komma, wie in 1,5
page-act-date-order-label = Daten sind geschrieben als
page-act-date-order-value-ymd = Jahr, Monat, Tag
page-act-date-order-value-dmy = Tag, Monat, Jahr
page-act-date-order-value-mdy = Monat, Tag, Jahr
page-act-text-encoding-label = Textkodierung
page-act-text-encoding-hint = Ändern, wo Namen oder Zeichen falsch aussehen.
page-act-sheet-label = Gelesenes Blatt
page-act-header-line-label = Die Überschriften stehen in Zeile
page-act-header-line-hint = Zeilen zählen ab 1, leere auch. 0: Die Tabelle hat keine Überschriften, und ihre Spalten heißen nach ihren Nummern.
page-act-detection-in-error-column-label = Eine Zahl neben „< LOD“ ist
page-act-detection-in-error-column-hint = Manche Geräte geben dort die Nachweisgrenze aus, andere einen einfachen Fehler: die Unsicherheit einer Messung, die nichts fand. Das Dreifache davon ist die Nachweisgrenze.
page-act-detection-in-error-column-value-limit = Die Nachweisgrenze
page-act-detection-in-error-column-value-one-error = Ein einfacher Fehler
page-act-trust-label = Wo Kontrollmessungen fehlen
page-act-trust-hint = Bis zur Festlegung ist das Los gesperrt. Gedruckt wird es in jedem Fall.
page-act-trust-value-holding = Los sperren (Vorgabe)
page-act-trust-value-advisory = Nicht sperren, nur Hinweis
page-act-sampling-label = Wo die Stichprobe nicht angegeben ist
page-act-sampling-hint = Bis zur Festlegung ist das Los gesperrt. Gedruckt wird es in jedem Fall.
page-act-sampling-value-holding = Los sperren (Vorgabe)
page-act-sampling-value-advisory = Nicht sperren, nur Hinweis
page-act-materials-label = Wo die Werkstoffe eines Teils nicht aufgelistet sind
page-act-materials-hint = Bis zur Festlegung ist das Los gesperrt. Gedruckt wird es in jedem Fall.
page-act-materials-value-holding = Los sperren (Vorgabe)
page-act-materials-value-advisory = Nicht sperren, nur Hinweis
page-act-check-samples-label = Probenkennungen, die Kontrollen sind
page-act-check-samples-hint = Messungen einer Kontrollprobe, nicht der Ware. Zwischen mehrere Kennungen ein | setzen.
page-act-lot-size-label = Losumfang
page-act-lot-size-hint = Zahl der gelieferten Stücke.
page-act-units-to-take-label = Zu entnehmende Stücke
page-act-units-to-take-hint = Was Ihr Stichprobenplan verlangt. Bei beschränkten Stoffen darf kein Stück über dem Grenzwert sein.
page-act-thickness-mm-label = Dicke in mm
page-act-thickness-mm-hint = Des Kunststoffs unter dem Strahl. Dünner Kunststoff zeigt nicht sein ganzes Cadmium und Blei.
page-act-bill-of-materials-label = Alle seine Werkstoffe
page-act-halogen-book-label = Halogenregeln, die für diese Lieferung gelten
page-act-title-label = Titel
page-act-title-hint = Steht oben im Bericht.
page-act-inspector-label = Prüfer
page-act-inspector-hint = Wer gemessen hat, so wie der Bericht den Namen drucken soll.
page-act-place-label = Ort
page-act-place-hint = Wo gemessen wurde.
page-act-reviewed-at-label = Ausgewertet am
page-act-reviewed-at-hint = Von Ihnen eingetippt: Das Programm liest keine Uhr. Bleibt es leer, druckt der Bericht eine leere Linie.
page-act-category-label = Gerätekategorie
page-act-category-hint = Anhang I der Richtlinie 2011/65/EU. Ausnahmen unterteilen 8 und 9: angeben, welche Hälfte es ist.
page-act-category-value-1 = 1: Haushaltsgroßgeräte
page-act-category-value-2 = 2: Haushaltskleingeräte
page-act-category-value-3 = 3: IT- und Telekommunikationsgeräte
page-act-category-value-4 = 4: Geräte der Unterhaltungselektronik
page-act-category-value-5 = 5: Beleuchtungskörper
page-act-category-value-6 = 6: Elektrische und elektronische Werkzeuge
page-act-category-value-7 = 7: Spielzeug, Sport- und Freizeitgeräte
page-act-category-value-8 = 8: Medizinische Geräte, Hälfte nicht bekannt
page-act-category-value-8ivd = 8: In-vitro-Diagnostika
page-act-category-value-8o = 8: andere medizinische Geräte
page-act-category-value-9 = 9: Überwachungs- und Kontrollinstrumente, Hälfte nicht bekannt
page-act-category-value-9i = 9: Überwachungs- und Kontrollinstrumente in der Industrie
page-act-category-value-9o = 9: andere Überwachungs- und Kontrollinstrumente
page-act-category-value-10 = 10: Automatische Ausgabegeräte
page-act-category-value-11 = 11: Sonstige Geräte
page-category-none = Nicht angegeben
page-write-papers = Für Labor und Lieferant
page-write-papers-why = Gedruckt auf der Anfrage an ein Labor und auf der Mitteilung an einen Lieferanten. Datum und Bitte für nur ein Los gehören in eine Einstellungsdatei.
page-act-contact-label = Fragen an
page-act-contact-hint = Name, Telefon oder Adresse der Person, die antwortet.
page-act-reply-by-label = Lieferanten antworten bis
page-act-reply-by-hint = Bleibt es leer, druckt die Mitteilung eine leere Linie.
page-act-requested-action-label = Was Lieferanten tun sollen
page-act-requested-action-hint = Steht anstelle dessen, was die Gründe eines Loses verlangen. Bleibt es leer, sagt es das Programm.
page-act-placing-date-label = In Verkehr gebracht am
page-act-placing-date-hint = Der Tag, an dem das Produkt erstmals bereitgestellt wird. Danach richten sich Ausnahmen und Grenzwerte mit Datum.
page-who-initials = Ihr Kürzel
page-who-day = Datum Ihrer Eingaben
page-who-hint = Steht ab jetzt an jeder Eingabe, die Sie festhalten. Ein Tag steht nur da, wenn Sie ihn eintippen oder „Heute“ drücken.

page-percent = { $value } %
page-act-relative-sigma-label = Mehr Unsicherheit, in % des Werts
page-act-relative-sigma-hint = Ein Sigma, für das, was der ausgegebene Fehler auslässt. Es wird zu jeder Unsicherheit addiert; wo keine ist, schafft es keine.
page-act-repeats-label = Messungen, die als Wiederholung zählen
page-act-repeats-hint = Wiederholmessungen einer Messstelle werden zusammen beurteilt, wo sie übereinstimmen.
page-act-repeats-value-same-spot = Gleiche Kennung, gleiche angegebene Messstelle (üblich)
page-act-repeats-value-same-id = Gleiche Kennung, auch ohne angegebene Messstelle
page-act-repeats-value-never = Keine: Jede steht für sich
page-act-uncertainty-holds-label = Die Unsicherheiten enthalten
page-act-uncertainty-holds-hint = Beschriftet nur die Wahrscheinlichkeiten; entscheidet nichts.
page-act-uncertainty-holds-value-repeatability = Nur Wiederholbarkeit (üblich)
page-act-uncertainty-holds-value-everything = Alles, auch die Kalibrierung
page-act-mouthing-label = Könnte ein Kind es in den Mund nehmen?
page-act-mouthing-hint = Das Teil oder eines, das sich davon löst. Die Ausnahme fragt danach.
page-act-mouthing-value-cannot = Nein, oder nicht für die Allgemeinheit
page-act-mouthing-value-can = Ja
page-act-mouthing-value-release-shown = Ja, und eine Prüfung zeigt, dass es wenig genug abgibt
page-act-renewal-value-pending = Beantragt, nicht entschieden
page-act-renewal-value-refused = Abgelehnt
page-act-renewal-value-not-filed = Nie beantragt

# Can we trust it?
page-evidence-trust = Kontrollmessungen
page-evidence-trust-why = { $check ->
    [0] Messungen einer bekannten Probe, vorher und nachher, zeigen, dass das Gerät an dem Tag stimmte. Noch ist keine Zeile als Kontrolle bekannt: Wenn eine ankam, unten ihre Proben-ID eintragen.
    [one] Messungen einer bekannten Probe, vorher und nachher, zeigen, dass das Gerät an dem Tag stimmte. { $check } Kontrollzeile kam an.
   *[other] Messungen einer bekannten Probe, vorher und nachher, zeigen, dass das Gerät an dem Tag stimmte. { $check } Kontrollzeilen kamen an.
  }
page-evidence-sampling = Losumfang und Stichprobe
page-evidence-sampling-why = Ein paar gute Stücke sagen wenig über ein großes Los. Der Plan sagt, wie viele gemessen werden müssen.
page-evidence-materials = Alle Werkstoffe jedes Teils
page-evidence-materials-why = Ein Grenzwert gilt für jeden homogenen Werkstoff. Ein Teil ist erst entlastet, wenn alle seine Werkstoffe gemessen sind.
page-evidence-thickness = Dicke
page-evidence-thickness-why = Der Strahl geht durch dünnen Kunststoff hindurch, also wird weniger Cadmium und Blei gesehen, als da ist.
page-evidence-class = Werkstoffklasse
page-evidence-class-why = Welche Grenzwerte gelten, hängt davon ab, was der Strahl traf. Ist sie nicht angegeben, wird nach jeder Klasse beurteilt, und das schlechteste Ergebnis zählt.
page-evidence-sigma = Unsicherheit
page-evidence-sigma-why = Geräte geben ein, zwei oder drei Sigma aus und sagen selten, welches. Die eigene Wiederholbarkeit am Grenzwert ist noch besser.
page-evidence-halogens = Halogenregeln
page-evidence-halogens-why = Halogene werden immer berechnet. Ein Los sperren sie nur nach einem Regelwerk, das Sie hier nennen.
page-evidence-claims = Beanspruchte Ausnahmen
page-evidence-claims-why = Eine Ausnahme wird nie von selbst angewandt. Jemand beansprucht sie für einen Werkstoff und nennt den Beleg, und eine zweite Person zeichnet ab.
page-evidence-cr6 = Chrom(VI) in Beschichtungen
page-evidence-cr6-why = Das Gerät sieht Chrom und kann nicht sagen, in welcher Form. Die Laborprüfung je Fläche (IEC 62321-7-1) kann es, auf Metall.
page-evidence-doubtful = Zweifelhafte Messungen
page-evidence-doubtful-why = Die Linie eines anderen Elements kann für die eines beschränkten gehalten worden sein, oder der Messmodus passte nicht. Nur andere Messungen klären das.
page-evidence-books = Regelwerke
page-evidence-books-why = Die Screening-Bänder gelten immer. Hier nennen, was diese Lieferung sonst einhalten muss; dessen Grenzwerte sperren dann auch Lose.
page-evidence-missing = fehlt
page-evidence-advisory = nur Hinweis
page-evidence-advisory-hint = „Fehlt“ sperrt Lose. „Nur Hinweis“ wird gedruckt und sperrt nichts: der Sache nach, oder weil es jemand hier oder in einer Einstellungsdatei so gewählt hat.
page-evidence-nothing-missing = nichts fehlt
page-evidence-per-lot = { $n ->
    [one] Für sein Los
   *[other] Für jedes von { $n } Losen
  }
page-evidence-per-material = { $n ->
    [one] Für seinen Werkstoff
   *[other] Für jeden von { $n } Werkstoffen
  }
page-evidence-for-all = Für alle, die keine eigene haben
page-evidence-materials-left = { $n ->
    [one] { $n } weiterer Werkstoff: eine Einstellungsdatei benutzen.
   *[other] { $n } weitere Werkstoffe: eine Einstellungsdatei benutzen.
  }
page-evidence-files = Dateien und Zeilen
page-evidence-files-why = Was nicht gelesen werden konnte, kann eine Messung enthalten, auf die es ankommt.
page-thickness-column = Wo eine Datei für eine Messung eine eigene Dicke hat, geht diese der hier angegebenen vor.
page-class-now = Gilt jetzt: { $classes }.
page-material-unnamed = Werkstoff nicht benannt
page-evidence-lots-left = { $n ->
    [one] { $n } weiteres Los: eine Einstellungsdatei benutzen.
   *[other] { $n } weitere Lose: eine Einstellungsdatei benutzen.
  }
page-trust-others = Andere fehlende Belege
page-trust-show = Diese Messungen zeigen
page-trust-lots = { $n ->
    [one] Los: { $names }.
   *[other] { $n } Lose: { $names }.
  }
page-parts-heading = { $n ->
    [one] { $n } Teil, { $open } nicht angegeben
   *[other] { $n } Teile, { $open } nicht angegeben
  }
page-parts-hint = Jeden homogenen Werkstoff des Teils nennen, zwischen den Namen ein |: jedes Stück, das durch und durch gleich zusammengesetzt ist und sich durch kein Schneiden oder Schaben in verschiedene Werkstoffe trennen lässt.
page-parts-measured = gemessen: { $names }
page-parts-all = { $n ->
    [one] Der gemessene ist sein einziger Werkstoff
   *[other] Die { $n } gemessenen sind alle seine Werkstoffe
  }
page-parts-left = { $n ->
    [one] { $n } weiteres Teil: eine Einstellungsdatei benutzen.
   *[other] { $n } weitere Teile: eine Einstellungsdatei benutzen.
  }
page-parts-unnamed = Die Dateien nennen keine Teile, also lassen sich für sie keine Werkstoffe auflisten.
page-site-heading = { $n ->
    [0] Eigene Wiederholbarkeit: keine angegeben
    [one] Eigene Wiederholbarkeit: { $n } Zeile
   *[other] Eigene Wiederholbarkeit: { $n } Zeilen
  }
page-site-hint = Ein Sigma einer einzelnen Messung einer Probe nahe am Grenzwert, aus eigenen Wiederholmessungen. Wo angegeben, statt des ausgegebenen Fehlers verwendet. Der konstante Teil ist der Anteil dieses Sigma, den längeres Messen nicht kleiner macht.
page-site-offers = { $n ->
    [one] { $n } Zeile vorgeschlagen
   *[other] { $n } Zeilen vorgeschlagen
  }
page-site-offers-hint = Aus den angekommenen Kontrollmessungen errechnet. Nichts wird verwendet, bevor Sie eine Zeile übernehmen.
page-site-no-offers = Es lässt sich keine Zeile errechnen: Dazu braucht es Kontrollmessungen mit mindestens zwei Zahlen einer Probe und einer angegebenen Klasse.
page-site-offer = { $element }, { $class }: 1 Sigma { $sigma } mg/kg
page-site-offer-from = aus { $n } Messungen von { $sample }, Mittelwert { $mean } mg/kg.
page-site-offer-earlier = { $n ->
        [one] Eine davon stammt
       *[other] { $n } davon stammen
    } aus dem Verlauf, der nicht sagt, wie lange gemessen wurde.
page-site-offer-seconds = Je { $seconds } s.
page-site-offer-far = Der Mittelwert liegt weit vom Grenzwert: Nahe am Grenzwert kann die Streuung eine andere sein.
page-site-offer-few = { $n } Messungen sind wenige: Sigma wird dafür vergrößert und ist doch nur ein grober Wert. Zehn oder mehr sind besser.
page-site-offer-take = Diese Zeile übernehmen
page-site-offer-taken = übernommen
page-site-element = Element
page-site-class = Klasse
page-site-sigma = 1 Sigma, mg/kg
page-site-seconds = Bei Messzeit, s
page-site-constant = Konstanter Teil, mg/kg
page-site-add = Zeile hinzufügen
page-books-heading = { $n ->
    [one] { $n } Regelwerk in Gebrauch
   *[other] { $n } Regelwerke in Gebrauch
  }
page-book-source = Quelle
page-book-confidence = Woher seine Werte bekannt sind
page-book-id = Kennung

page-books-named = { $n } von { $of } weiteren Regelwerken gewählt
page-books-send = Regelwerke festlegen
page-event-books-none = Es ist kein Regelwerk mehr genannt.
page-book-not-here = Dieses Exemplar der Seite hat es nicht.
page-book-note = Was dazu zu wissen ist
page-book-loaded = Gilt, da seine Datei geladen wurde.
page-book-differs = wurde mit seiner Prüfsumme genannt, und das Regelwerk hier ist eine andere Datei.
page-book-missing = ist genannt und nicht hier, oder ein anderes Regelwerk steht an seiner Stelle. Seine Datei unter „Regelwerk-Datei“ laden, oder streichen.
page-book-take-this = Das vorhandene Regelwerk verwenden
page-book-strike = Streichen
page-doubtful-bring = Andere Messungen hinzufügen
page-form-no-initials = Zuerst Ihr Kürzel eintragen.
page-claims-none = Nichts braucht hier eine Ausnahme: Kein Cadmium, Blei oder Quecksilber ist über dem Grenzwert oder unentschieden.
page-claims-materials = { $n ->
    [one] { $n } Werkstoff, den eine Ausnahme decken könnte
   *[other] { $n } Werkstoffe, die eine Ausnahme decken könnte
  }
page-claim-of = { $entry } für { $substance }
page-claim-number = Messungen: { $number }.
page-claim-by = Beleg: { $evidence }. Beansprucht von { $by }, zweite Person { $second }.
page-claim-nothing = nicht genannt
page-claim-nobody = niemand
page-claim-missing = Fehlt noch
page-claim-refused = Warum nicht
page-claim-book = Was das Regelwerk dazu sagt
page-claim-change = Diesen Anspruch ergänzen oder ändern
page-claim-change-send = Anspruch ändern
page-claim-take-back = Anspruch zurücknehmen
page-claim-new = { $n ->
    [0] Eine Ausnahme für { $substance } beanspruchen
   *[other] Eine weitere Ausnahme für { $substance } beanspruchen
  }
page-claim-some = { $n ->
    [0] Kein Eintrag scheint zu passen.
    [one] { $n } Eintrag passt vielleicht.
   *[other] { $n } Einträge passen vielleicht.
  }
page-claim-none-fits = Kein Eintrag des Regelwerks scheint zu diesem Werkstoff zu passen und am Tag des Inverkehrbringens zu gelten. Wird dennoch einer beansprucht, etwa weil über seine Erneuerung noch nicht entschieden ist, wird er beurteilt und mit dem gezeigt, was gegen ihn spricht.
page-claim-entry = Eintrag
page-claim-pick = Eintrag wählen
page-claim-pick-first = Zuerst den Eintrag wählen.
page-claim-fitting = Decken dies vielleicht
page-claim-others = Andere, soweit bekannt nicht dafür oder nicht mehr gültig
page-claim-group = Was der Werkstoff ist
page-claim-group-hint = Nur wo die Messungen es nicht zeigen.
page-claim-group-none = Wie die Messungen zeigen
page-claim-evidence = Beleg
page-claim-evidence-hint = Das Dokument, das es zeigt, etwa die Nummer eines Zertifikats.
page-claim-second = Kürzel der zweiten Person
page-claim-second-hint = Jemand anderes, der den Beleg gesehen hat.
page-claim-same-person = Die zweite Person muss jemand anderes sein.
page-claim-make = Beanspruchen
page-exemption-number = Grenzwert
page-exemption-reading = Messungen
page-exemption-categories = Kategorien
page-exemption-categories-all = alle
page-exemption-categories-unknown = nicht gefunden
page-exemption-days = In Verkehr gebracht
page-exemption-from-until = ab { $from } bis { $until }; ob dieser letzte Tag dazugehört, sagt das Gesetz nicht
page-exemption-note = Bemerkung
page-exemption-expires = Läuft am { $day } ab.
page-exemption-not-found = Ob er noch gilt, ließ sich nicht feststellen.
page-exemption-from-memory = aus dem Gedächtnis
page-exemption-not-filed = Erneuerung nie beantragt
page-exemption-starred = fragt, ob ein Kind es in den Mund nehmen könnte
page-exemption-asks = Er würde fragen:
page-renewal-heading = Erneuerung von { $entry }
page-renewal-state = Stand der Erneuerung
page-renewal-none = Keine Angabe
page-renewal-pick = Den Stand der Erneuerung wählen.
page-renewal-source = Wo das steht
page-renewal-source-hint = Als „beantragt, nicht entschieden“ gilt eine Erneuerung nur mit Quelle und Datum des Antrags, spätestens 18 Monate vor dem Ablauf.
page-renewal-day = Datum des Antrags (falls nie beantragt: der Quelle)
page-cr6-none = Kein Metall hat hier offenes Chrom.
page-cr6-area = Chrom(VI) in µg/cm²
page-cr6-area-hint = Wie das Labor es berichtet, etwa 0,08, oder <0,10, wo nichts gefunden wurde.
page-cr6-no-area = „{ $typed }“ ist keine Menge je Fläche. So schreiben: 0,08 oder <0,10.
page-cr6-laboratory = Labor
page-cr6-report = Sein Bericht
page-cr6-not-judged = Nicht beurteilt: Die Prüfung je Fläche ist für Metall.
# What does it say?
page-lots-heading = { $n ->
    [one] { $n } Los
   *[other] { $n } Lose, die schlechtesten zuerst
  }
page-lots-more = { $n ->
    [one] { $n } weiteres Los
   *[other] { $n } weitere Lose
  }
page-lots-left = { $n ->
    [one] { $n } weiteres Los; der Bericht enthält es.
   *[other] { $n } weitere Lose; der Bericht enthält sie.
  }
page-lot-unnamed = Los nicht benannt
page-lot-of-source = Los nicht benannt ({ $source })
page-lot-size = { $readings ->
    [one] { $readings } Messung
   *[other] { $readings } Messungen
  } an { $materials ->
    [one] { $materials } Werkstoff
   *[other] { $materials } Werkstoffen
  }
page-lot-show = Messungen zeigen
page-lot-more-reasons = { $n ->
    [one] { $n } weiterer Grund
   *[other] { $n } weitere Gründe
  }
page-lot-parts = { $parts ->
    [one] Sein { $parts } Teil
   *[other] Seine { $parts } Teile
  }, { $materials ->
    [one] { $materials } Werkstoff
   *[other] { $materials } Werkstoffe
  }
page-lot-not-assessed = Nicht bewertet:
page-lots-not-assessed = Was in diesen Losen nicht bewertet wurde
page-parts-in-report = { $n ->
    [one] { $n } weiteres Teil; findings.json enthält es.
   *[other] { $n } weitere Teile; findings.json enthält sie.
  }
page-material-size = { $n ->
    [one] { $class }, { $n } Messung
   *[other] { $class }, { $n } Messungen
  }
page-part-unnamed = Teil nicht benannt
page-matrix-heading = Wie oft jedes Ergebnis vorkam
page-matrix-outcome = Ergebnis
page-matrix-show = { $n ->
    [one] { $n } Messung zeigen: { $substance } { $outcome }
   *[other] { $n } Messungen zeigen: { $substance } { $outcome }
  }
page-to-readings = Zu den Messungen
page-readings-heading = Die Messungen
page-readings-label = Messungen
page-readings-keys = Pfeiltasten führen durch die Tabelle, Bild auf und Bild ab um eine Bildschirmhöhe, Pos1 und Ende an ihre Enden; die Eingabetaste öffnet eine Messung, Esc schließt sie.
page-readings-none = Keine Messung passt zu diesen Filtern.
page-shown = { $n ->
    [one] { $shown } von { $of } Messungen
   *[other] { $shown } von { $of } Messungen
  }
page-filters = Wählen, welche Messungen gezeigt werden
page-filter-text = Text suchen
page-filter-text-where = Probe, Teil, Los, Lieferant …
page-filter-substance = Stoff
page-filter-outcome = Ergebnis
page-filter-sort = Ordnen nach
page-filter-any = Alle
page-filter-open = Alles noch Offene
page-filter-ascending = Aufsteigend ▲
page-filter-descending = Absteigend ▼
page-filter-ascending-worst = Schlechteste zuerst ▲
page-filter-descending-worst = Beste zuerst ▼
page-filter-clear = Alle zeigen
page-go-to-row = Zu Zeile springen
page-go = Springen
page-no-such-row = { $of ->
    [one] Eine Zeile „{ $typed }“ gibt es nicht: { $of } Zeile ist gezeigt.
   *[other] Eine Zeile „{ $typed }“ gibt es nicht: { $of } Zeilen sind gezeigt, ab 1.
  }
page-sort-by = Nach { $column } ordnen
page-order-worst = schlechtestes Ergebnis
page-order-file = Datei und Zeile
page-order-id = Probe
page-order-part = Teil
page-order-material = Werkstoff
page-order-lot = Los
page-order-supplier = Lieferant
page-order-class = Klasse
page-order-value = Wert von { $symbol }
page-column-sample = Probe
page-column-part = Teil, Werkstoff
page-column-lot = Los, Lieferant
page-column-class = Klasse
page-column-file = Datei
page-column-trust = Verlässlich
page-column-halogen = Halogen { $symbol }
page-column-halogen-total = Halogensumme
page-class-from-declared = in der Datei angegeben
page-class-from-setting = von jemandem festgelegt
page-class-from-not-stated = nicht angegeben
page-class-from-not-understood = Wort nicht verstanden
page-class-from-not-in-book = keine Grenzwerte im Regelwerk
page-class-from-contested = das Gemessene widerspricht ihr
page-detail-close = Schließen
page-detail-next = Nächster Schritt:
page-detail-working = Wie das errechnet wurde
page-detail-other-rules = Was andere Entscheidungsregeln sagen würden, nur zum Vergleich
page-caution = Warnhinweis
page-step-class = Klasse
page-step-rule = Regel
page-step-value = Wert
page-step-sigma = Sigma
page-step-arithmetic = Vergleich
page-step-repeats = Wiederholmessungen
page-step-bound = Höchstens
page-step-probability = Wahrscheinlichkeit
page-rules-rule = Entscheidungsregel
page-rules-says = Aussage
page-rules-risk = Irrtumsrisiko
page-rules-within = Innerhalb
page-rules-between = Dazwischen
page-rules-beyond = Außerhalb
page-composition-heading = Woraus es zu bestehen scheint
page-composition-take = Übernehmen: { $class }, für { $about }
page-composition-take-hint = Ein Vorschlag ist keine Entscheidung. Übernommen, wird er als Ihre Antwort festgehalten, gilt für jede Messung dieses Werkstoffs und lässt sich rückgängig machen.
page-composition-given = Klasse angegeben für { $about }: { $class }.
page-composition-no-place = Diese Messung nennt kein Teil und keinen Werkstoff; ihre Klasse lässt sich also nur für die ganze Datei angeben, unter „Was kam an?“.
page-repeats-heading = { $n } Messungen dieser Messstelle
page-repeats-this = { $name } (diese)
page-limits-heading = Grenzwerte der Regelwerke, die Sie genannt haben
page-limits-idle = { $n ->
    [one] { $n } Grenzwert, der nicht gilt
   *[other] { $n } Grenzwerte, die nicht gelten
  }
page-detail-unit = Stück
page-detail-spot = Messstelle
page-detail-part = Teil
page-detail-material = Werkstoff
page-detail-lot = Los
page-detail-supplier = Lieferant
page-detail-instrument = Gerät
page-detail-time = Gemessen
page-detail-seconds = Sekunden
page-detail-others = { $n ->
    [one] { $n } weiteres Element in der Datei
   *[other] { $n } weitere Elemente in der Datei
  }

# What lies ahead of a lot
page-ahead = Was würden andere Regeln sagen, was würde längeres Messen klären?
page-ahead-longer = Länger messen
page-ahead-rules = Andere Entscheidungsregeln
page-ahead-rules-why = Wie viele Messungen jede Regel wo einordnen würde. Sie dienen dem Vergleich: Hier entscheiden die Screening-Bänder.
page-ahead-limit = { $name }, Grenzwert { $limit } mg/kg
page-ahead-rules-none = { $n ->
    [one] Die eine Messung hat keine Zahl mit Unsicherheit, oder ihre Klasse hat keinen Grenzwert für das Element.
   *[other] Keine der { $n } Messungen hat eine Zahl mit Unsicherheit in einer Klasse mit einem Grenzwert für das Element.
  }
page-ahead-not-applicable = { $n ->
    [one] ({ $n } Messung ohne Zahl, Unsicherheit oder Grenzwert für das Element)
   *[other] ({ $n } Messungen ohne Zahl, Unsicherheit oder Grenzwert für das Element)
  }
page-ahead-count = { $n } { $text }
page-ahead-candidates = { $n ->
    [one] Eine Ausnahme, die niemand beansprucht hat, deckt es vielleicht
   *[other] { $n } Ausnahmen, die niemand beansprucht hat, decken es vielleicht
  }
page-ahead-candidate = Ausnahme { $entry }, { $substance }:
page-ahead-candidate-number = Messungen: { $number }.
page-ahead-left-out = { $n ->
    [one] { $n } weiterer Werkstoff steht im Bericht.
   *[other] { $n } weitere Werkstoffe stehen im Bericht.
  }
page-asked-for = Wird errechnet …
page-asked-for-nothing = Es kommt keine Antwort. Schließen und noch einmal öffnen.
page-where-ahead = Was vor einem Los liegt
page-where-books = Regelwerke

# The shelf of rule books
page-shelf = Regelwerke: wonach die Messungen beurteilt werden
page-shelf-used = { $n ->
    [one] { $n } Regelwerk gilt
   *[other] { $n } Regelwerke gelten
  }
page-shelf-idle = { $n ->
    [one] { $n } weiteres Regelwerk im Regal
   *[other] { $n } weitere Regelwerke im Regal
  }
page-shelf-edition = Ausgabe { $edition }
page-shelf-where = Geltungsgebiet
page-shelf-days = Gilt für

# What next?
page-next-expiries = Welche Ausnahmen ablaufen, und wann
page-next-expiries-why = Tage, an denen eine Ausnahme abläuft, auf der hier etwas beruht oder beruhen kann.
page-next-expiry-claimed = beansprucht
page-next-expiry-candidate = nicht beansprucht
page-next-nothing = Nichts ist offen.
page-next-outcomes = { $n ->
    [one] { $n } Schritt aufgrund der Messungen
   *[other] { $n } Schritte aufgrund der Messungen
  }
page-next-evidence = { $n ->
    [one] { $n } Beleg fehlt zum Annehmen
   *[other] { $n } Belege fehlen zum Annehmen
  }
page-next-materials = { $n ->
    [one] { $n } Werkstoff
   *[other] { $n } Werkstoffe
  }
page-next-give = Jetzt angeben
page-next-files = Dateien ansehen
page-next-show = { $lot } zeigen
page-next-lots-left = { $n ->
    [one] { $n } weiteres Los
   *[other] { $n } weitere Lose
  }

# Write it down
page-write-identification = Wer was ausgewertet hat
page-write-files = Mitnehmen
page-write-reviewed-today = Heute ausgewertet
page-write-acts = { $n ->
    [0] Noch nichts festgehalten
    [one] { $n } Eingabe festgehalten
   *[other] { $n } Eingaben festgehalten
  }
page-write-acts-why = Die Liste wächst nur: Auch das Zurücknehmen wird festgehalten.
page-write-no-acts = Was Sie auf diesen Seiten festlegen oder beantworten, steht dann hier.

page-ahead-sampling = Stichprobe
page-where-checks = Kontrollmessungen ansehen
page-checks-shown = Was die Kontrollmessungen zeigten
page-charts-shown = Regelkarten
page-checks-none = Es wurde keine Kontrollmessung gemacht.
page-checks-left = { $n ->
        [one] Eine weitere Kontrollmessung steht im Bericht.
       *[other] { $n } weitere Kontrollmessungen stehen im Bericht.
    }
page-checks-element = Element
page-checks-found = Gefunden
page-checks-certified = Zertifiziert, mg/kg
page-checks-score = Kennzahlen
page-checks-verdict = Beurteilung
page-charts-none = Eine Regelkarte braucht zwei oder mehr Messungen einer Kontrollprobe, hier oder in einer Verlaufsdatei.
page-charts-left = { $n ->
        [one] Eine weitere Regelkarte steht im Bericht.
       *[other] { $n } weitere Regelkarten stehen im Bericht.
    }
page-suppliers-heading = Lieferanten, über alle Prüfungen
page-suppliers-why = Diese Lieferung und die Verlaufsdateien: was frühere Lose waren, wie nahe sie dem Band kamen und wie das nächste zu prüfen ist.
page-suppliers-shown = Was von ihnen bekannt ist
page-suppliers-none = Noch ist nichts bekannt: Keine Messung nennt einen Lieferanten, und kein Verlauf wurde geladen.
page-suppliers-count = Lieferanten und Teile: { $n }
page-suppliers-left = { $n ->
        [one] Ein weiterer Eintrag steht im Bericht.
       *[other] { $n } weitere Einträge stehen im Bericht.
    }

## Acts of several fields

page-row-pick = Eines wählen
page-row-add = Hinzufügen
page-row-empty = Zuerst etwas ausfüllen.
page-row-needed = „{ $field }“ fehlt.

page-act-tube-anode-label = Anode der Röntgenröhre
page-act-tube-anode-hint = Die Unterlagen des Geräts nennen sie. Auch ihre eigenen Linien erreichen den Detektor: Eine Rhodiumröhre sieht nach ein wenig Chlor aus.

page-act-blank-samples-label = Probenkennungen, die Blindproben sind
page-act-blank-samples-hint = Ein sauberes Stück, das nichts zeigen darf. Zwischen mehrere Kennungen ein | setzen.
page-act-check-rule-label = Eine Kontrollmessung ist gut, wenn
page-act-check-rule-hint = Beide vergleichen Messung und Zertifikat mit ihren Unsicherheiten (ISO 13528).
page-act-check-rule-value-zeta = |zeta| höchstens 3 ist (üblich)
page-act-check-rule-value-en = |E_n| höchstens 1 ist (strenger)
page-act-bracket-label = Eine Messung gilt als verlässlich
page-act-bracket-value-before-and-after = Zwischen zwei guten Kontrollen (üblich)
page-act-bracket-value-before = Nach einer guten Kontrolle
page-act-bracket-value-per-shift = In einer Schicht mit einer guten Kontrolle und keiner schlechten
page-act-shift-starts-label = Schichten beginnen um
page-act-shift-starts-hint = Etwa 06:00|14:00|22:00. Leer gelassen: eine Schicht am Tag.

page-act-certificate-label = Zertifizierter Wert
page-certificates = Zertifizierte Werte von Kontrollproben
page-certificates-hint = Aus dem Zertifikat abschreiben. Eine Kontrollmessung ohne zertifizierten Wert wird abgetrennt und beweist nichts. Sie können auch in einer Einstellungsdatei stehen.
page-act-certificate-field-sample = Probenkennung, wie das Gerät sie aufzeichnet
page-act-certificate-field-element = Element
page-act-certificate-field-value = Zertifizierter Wert, mg/kg
page-act-certificate-field-u = Erweiterte Messunsicherheit U, mg/kg
page-act-certificate-field-k = k von U
page-act-certificate-field-id = Nummer des Zertifikats
page-act-certificate-field-expires = Gültig bis
page-act-certificate-field-class = Ihr Werkstoff
page-act-certificate-field-class-polymer = Polymer
page-act-certificate-field-class-metal = Metall
page-act-certificate-field-class-composite = Verbundwerkstoff oder Elektronik
page-act-certificate-field-class-plated = Metallisch überzogen oder beschichtet

page-parts-learned-from = angenommenes Los { $lot } vom { $day }
page-parts-learned = Wie beim angenommenen Los { $lot } ({ $day }): { $names }
page-chart-rules = Wie Regelkarten gezeichnet werden
page-act-control-chart-label = Regelkarten
page-act-control-chart-field-limits = Grenzen aus
page-act-control-chart-field-limits-baseline = Den ersten Punkten
page-act-control-chart-field-limits-certificate = Dem Zertifikat
page-act-control-chart-field-points = Wie viele erste Punkte
page-act-control-chart-field-points-hint = Mindestens 8; 20, wenn leer gelassen.
page-act-control-chart-field-rules = Regeln für Folgen
page-act-control-chart-field-rules-western-electric = Western Electric
page-act-control-chart-field-rules-nelson = Nelson

page-act-sampling-plan-label = Stichprobenplan
page-plan-shown = Welche Stücke zu entnehmen sind, und was das zeigt
page-plan-new = Zu entnehmende Stücke aus einem Plan errechnen
page-act-sampling-plan-field-rule = Regel
page-act-sampling-plan-field-rule-zero-acceptance = Keines über dem Grenzwert: mit angegebener Sicherheit zeigen
page-act-sampling-plan-field-rule-single = Tabelle von MIL-STD-105E nach Niveau und AQL
page-act-sampling-plan-field-confidence = Statistische Sicherheit, %
page-act-sampling-plan-field-share = dass weniger fehlerhaft sind als, %
page-act-sampling-plan-field-level = Prüfniveau
page-act-sampling-plan-field-severity = Prüfschärfe
page-act-sampling-plan-field-severity-normal = Normal
page-act-sampling-plan-field-severity-tightened = Verschärft
page-act-sampling-plan-field-severity-reduced = Reduziert (eigene Tabelle von 105E)
page-act-sampling-plan-field-aql = AQL
page-act-sampling-plan-field-seed = Startwert der Zufallsliste
page-act-sampling-plan-field-seed-hint = Irgendeine ganze Zahl, etwa das heutige Datum. Derselbe Startwert ergibt dieselben Stücke; er wird gedruckt. Leer: keine Liste.

page-evidence-laboratory = Laborergebnisse
page-evidence-laboratory-why = Ein Screening ist keine Laborprüfung. Was ein Referenzverfahren fand, klärt, was das Screening offen ließ, und steht daneben.
page-laboratory-open = { $n ->
        [one] Ein Werkstoff, der nicht angenommen ist oder ein Ergebnis hat
       *[other] { $n } Werkstoffe, die nicht angenommen sind oder ein Ergebnis haben
    }
page-laboratory-rest = { $n ->
        [one] Ein anderer Werkstoff
       *[other] { $n } andere Werkstoffe
    }
page-laboratory-new = Ergebnis eingeben
page-laboratory-hint = Ohne Verfahren, Labor, Bericht und Tag kann es niemand nachschlagen: Dann hebt es nichts auf. Auch U aus dem Bericht abschreiben.
page-laboratory-another = Weiteres Ergebnis eingeben
page-act-laboratory-label = Laborergebnis
page-act-laboratory-field-analyte = Was bestimmt wurde
page-act-laboratory-field-analyte-cd = Cadmium
page-act-laboratory-field-analyte-pb = Blei
page-act-laboratory-field-analyte-hg = Quecksilber
page-act-laboratory-field-analyte-cr6 = Chrom(VI)
page-act-laboratory-field-analyte-cr = Gesamtchrom
page-act-laboratory-field-analyte-pbb = PBB
page-act-laboratory-field-analyte-pbde = PBDE
page-act-laboratory-field-analyte-br = Gesamtbrom
page-act-laboratory-field-analyte-cl = Gesamtchlor
page-act-laboratory-field-value = Ergebnis, mg/kg
page-act-laboratory-field-value-hint = Eine Zahl, oder < und die Grenze, unter der nichts gefunden wurde.
page-act-laboratory-field-u = Erweiterte Messunsicherheit U, mg/kg
page-act-laboratory-field-k = k von U
page-act-laboratory-field-method = Verfahren
page-act-laboratory-field-method-hint = Etwa IEC 62321-5:2013.
page-act-laboratory-field-laboratory = Labor
page-act-laboratory-field-report = Nummer seines Berichts
page-act-laboratory-field-date = Tag des Ergebnisses

page-evidence-holds = Sperren: wer sie beendet, und was zwei Personen aufheben
page-evidence-holds-why = Eine Sperre endet durch ein Ergebnis. Angeben, wer es beibringt, bis wann, und wie viele Stücke warten. Manche Sperren können zwei Personen gemeinsam aufheben; „über dem Grenzwert“ nie.
page-holds-none = Kein Los ist gesperrt.
page-holds-lots = { $n ->
        [one] Ein Los
       *[other] { $n } Lose
    }
page-holds-ends = Wer die Sperre beendet, und bis wann
page-holds-lift = Mit zwei Kürzeln aufheben:
page-holds-lift-send = Aufheben
page-holds-lift-hint = Die Aufhebung bleibt im Bericht, mit beiden Kürzeln und dem Grund. Die Stücke ändern sich dadurch nicht.
page-act-hold-ends-label = Ende der Sperre
page-act-hold-ends-field-who = Wer das Fehlende beibringt
page-act-hold-ends-field-until = Bis zu welchem Tag
page-act-hold-ends-field-quarantined = Separierte Stücke
page-act-hold-ends-field-place = Wo sie gelagert sind
page-act-limit-answer-label = Antwort
page-act-limit-answer-field-answer = Antwort
page-act-limit-answer-field-answer-yes = Ja
page-act-limit-answer-field-answer-no = Nein

page-act-lift-label = Sperre aufheben
page-act-lift-field-why = Warum sie aufgehoben werden darf
page-act-lift-field-second = Kürzel der zweiten Person

page-of-reading = Was diese Messung ist
page-act-mark-label = Gemessen wurde hier
page-act-mark-hint = Nur für Messungen, die weder Los noch Teil nennen.
page-act-mark-value-product = Ware
page-act-mark-value-check = Eine Kontrollprobe
page-act-mark-value-blank = Eine Blindprobe
page-act-set-aside-label = Beiseitelegen, weil
page-act-set-aside-hint = Sie zählt dann für nichts und bleibt im Bericht. Eine, die über dem Grenzwert oder offen ist, lässt ihr Los gesperrt.
page-work-photo = Kleine Kopie von Foto { $n } von { $of } wird gemacht: { $name }
page-event-photos = { $of ->
        [one] { $n ->
            [0] Das Foto konnte nicht übernommen werden.
           *[other] Das Foto wurde übernommen.
        }
       *[other] { $n } von { $of } Fotos wurden übernommen.
    }
page-trouble-photo-what = Das Foto konnte nicht übernommen werden.
page-trouble-photo-kind-why = Die Datei ist weder ein JPEG- noch ein PNG-Bild.
page-trouble-photo-kind-todo = Als JPEG oder PNG speichern und diese Datei wählen. Viele Kameras und Telefone lassen sich so einstellen, dass sie JPEG schreiben.
page-trouble-photo-large-why = Die Datei hat mehr als 64 MiB.
page-trouble-photo-large-todo = Eine kleinere Kopie des Bildes machen und diese wählen.
page-trouble-photo-broken-why = Der Browser konnte das Bild nicht lesen.
page-trouble-photo-broken-todo = Die Datei noch einmal von der Kamera oder vom Stick kopieren und erneut wählen.
page-trouble-photo-canvas-why = Dieser Browser ist so eingestellt, dass eine Seite keine Kopie eines Bildes machen kann: Sie bekäme stattdessen Rauschen.
page-trouble-photo-canvas-todo = Dieser Seite erlauben, Bilder zu lesen (ein Browser fragt danach neben der Adresse), oder sie in einem anderen Browser öffnen.
page-step-photo = ein Foto übernehmen
page-step-photos = Fotos zuordnen
page-step-remove-photo = ein Foto herausnehmen
page-photos-heading = Fotos
page-photos-in = { $n ->
        [one] Ein Foto
       *[other] { $n } Fotos
    }
page-photos-lead = JPEG- und PNG-Bilder, die mit den Ergebnissen kamen. Nur die, die Sie einer Messung zuordnen, kommen in den Bericht, als kleine Kopie ohne Ort, Zeit und Eigentümer. Zum Markieren der gemessenen Stelle eine Messung öffnen.
page-photos-take-all = { $n ->
        [one] Das Foto zuordnen, dessen Name zu genau einer Messung passt
       *[other] Die { $n } Fotos zuordnen, deren Namen zu je einer Messung passen
    }
page-photos-more = und { $n } weitere
page-photos-none-here = Dieser Messung ist kein Foto zugeordnet.
page-photo-missing = { $text } Es gehört zu: { $about }.
page-photo-shows = Zeigt { $about }. { $marked ->
        [yes] Die Messstelle ist markiert.
       *[no] Noch ist keine Messstelle markiert.
    }
page-photo-unmatched = Der Name passt zu keiner Messung. Die Messung öffnen, die es zeigt, und es dort wählen.
page-photo-offered-column = Die Ergebnisse nennen { $file } für diese Messung.
page-photo-offered-name = { $file } heißt wie die Probe dieser Messung.
page-photo-offered-within = Der Name { $file } enthält die Probe dieser Messung.
page-photo-ambiguous = Der Name passt zu { $n } Messungen. Welche es zeigt, können nur Sie sagen.
page-photo-take = Dieses Foto zuordnen
page-photo-choose = Foto dieser Messung
page-photo-choose-none = Eines wählen
page-photo-leave = Nicht dieses Foto
page-photo-no-mark = Markierung entfernen
page-photo-alt = Foto { $file }
page-photo-pad = Foto { $file }. { $spot }
page-photo-spot = Messstelle bei { $x } % von links, { $y } % von oben.
page-photo-no-spot = Keine Messstelle ist markiert.
page-photo-press-enter = { $spot } Die Eingabetaste hält sie fest, Esc verwirft sie.
page-photo-move-first = Die Markierung zuerst mit den Pfeiltasten bewegen, dann die Eingabetaste drücken.
page-photo-keys = Dort tippen, wo gemessen wurde. Mit der Tastatur: Pfeiltasten bewegen die Markierung (mit der Umschalttaste fein), die Eingabetaste hält sie fest.
page-language = Sprache
page-event-language = Diese Seite ist jetzt auf Deutsch.
page-write-report-language = Berichte und Papiere auf
page-stated = Was der Bericht noch sagt: Aussteller, Auftraggeber, Prüfgegenstände, Probenahme, Freigabe
page-stated-why = Keine Datei enthält das. Was Sie weglassen, wird als nicht angegeben gedruckt, oder als Linie zum Ausfüllen mit dem Stift. Nichts davon ändert einen Losentscheid.
page-stated-all = ganze Prüfung
page-stated-issuer = Wer den Bericht ausstellt
page-stated-customer = Für wen er ist
page-stated-item = Was die Prüfgegenstände sind und wie sie aussahen
page-stated-sampled = Wie die Proben entnommen wurden
page-stated-authorised = Wer den Bericht freigibt
page-stated-lots = Los für Los ({ $n })
page-stated-invented-none = Nicht angegeben
page-act-issued-on-label = Ausstellungsdatum
page-act-received-label = Prüfgegenstände eingegangen am
page-act-received-hint = Für ein Los, das an einem anderen Tag kam, lässt sich das unten angeben.
page-act-environment-label = Bedingungen am Messort
page-act-environment-hint = Etwa Temperatur, Staub, Wind: was für die Messungen von Bedeutung sein kann.
page-act-deviations-label = Ergänzungen, Abweichungen, Ausschlüsse
page-act-deviations-hint = Was zusätzlich zum Verfahren getan wurde, anders als nach dem Verfahren, oder ausgelassen.
page-act-instrument-label = Gerät
page-act-instrument-hint = Wo die Dateien es nicht nennen: Typ und Nummer.
page-act-records-kept-label = Aufbewahrung der Aufzeichnungen
page-act-records-kept-hint = Wie lange und wo.
page-act-invented-label = Erfundene Daten
page-act-invented-hint = Kennzeichnet jede gedruckte Seite, damit niemand eine Übung für ein Ergebnis hält.
page-act-invented-value-yes = Ja, zu Übungszwecken
page-act-invented-value-no = Nein, sie sind echt
page-act-issuer-label = Aussteller
page-act-issuer-field-name = Name
page-act-issuer-field-address = Adresse
page-act-customer-label = Auftraggeber
page-act-customer-field-name = Name
page-act-customer-field-contact = Kontakt
page-act-item-label = Prüfgegenstände
page-act-item-field-description = Beschreibung
page-act-item-field-condition = Zustand bei Eingang
page-act-sampled-label = Probenahme
page-act-sampled-field-date = Tag
page-act-sampled-field-by = Durch wen
page-act-sampled-field-place = Wo
page-act-sampled-field-method = Plan oder Verfahren
page-act-authorised-label = Freigabe des Berichts
page-act-authorised-field-by = Freigegeben von
page-act-authorised-field-second = Zweite Person

## Check a report

page-prove-heading = Einen Bericht nachprüfen
page-prove-door-what = Sie haben einen Plumbline-Bericht erhalten? Hier sehen Sie, ob er das ist, was seine eigenen Daten ergeben, und ob er geändert wurde.
page-prove-door-enter = Zur Nachprüfung
page-prove-lead = Alles im Bericht wird aus den Daten, die er mitführt, noch einmal berechnet und verglichen. Was abweicht, wird genannt.
page-prove-drop = Den Bericht irgendwo auf dieser Seite ablegen oder ihn wählen. Seine Dateien mit ablegen, wenn Sie sie haben. Eine offene Prüfung wird nicht berührt.
page-prove-report = Bericht zum Nachprüfen
page-prove-beside = Dateien, aus denen er erstellt wurde
page-prove-beside-hint = Nur mit ihnen zeigt die Nachprüfung, dass der Bericht die Daten dieser Dateien enthält.
page-prove-digest = Prüfsumme vom unterschriebenen Papier
page-prove-digest-hint = Die 64 Zeichen neben den Unterschriften. Leerzeichen, Großbuchstaben und Zeilenumbrüche spielen keine Rolle.
page-prove-digest-enter = Prüfsumme vergleichen
page-prove-digest-odd = „{ $sign }“ ist kein Zeichen einer Prüfsumme. Sie hat nur die Ziffern 0 bis 9 und die Buchstaben a bis f: Nachsehen, ob eine 0 für ein O gehalten wurde, oder eine 1 für ein l.
page-prove-digest-length = { $n ->
    [one] Eine Prüfsumme hat 64 Zeichen. Hier steht { $n } Zeichen.
   *[other] Eine Prüfsumme hat 64 Zeichen. Hier stehen { $n }.
  } Nachsehen, ob eines ausgelassen oder doppelt getippt wurde.
page-prove-report-first = Den Bericht wählen; die Prüfsumme wird dann verglichen.
page-prove-waiting = { $n ->
    [one] { $n } Datei liegt bereit. Jetzt den Bericht wählen.
   *[other] { $n } Dateien liegen bereit. Jetzt den Bericht wählen.
  }
page-prove-work = { $name } wird nachgeprüft ({ $n } von { $of })
page-prove-event = { $name }: { $word }. { $verdict }
page-prove-event-several = { $of ->
    [one] { $of } Bericht nachgeprüft. Berichte, die übereinstimmen: { $n }.
   *[other] { $of } Berichte nachgeprüft. Berichte, die übereinstimmen: { $n }.
  }
page-prove-cancelled = Die Nachprüfung wurde abgebrochen. Die Prüfung wurde nicht berührt.
page-prove-crash-todo = Die Prüfung wurde nicht berührt. Den Bericht noch einmal nachprüfen, nur mit den Dateien, die er nennt. Geschieht es wieder, Bericht und Dateien an den senden, von dem Sie Plumbline haben.
page-prove-unreadable-todo = Den Bericht und seine Dateien erneut wählen. Nur die Dateien nehmen, die der Bericht nennt.
page-prove-too-much = { $size } sind mehr als die { $most }, die ein Browser dafür halten kann.
page-prove-not-yet = Noch nicht nachgeprüft.
page-prove-word-findings = Nur seine Befunde stimmen überein
page-prove-word-self = Stimmt mit sich selbst überein
page-prove-word-files = Stimmt mit seinen Dateien überein
page-prove-word-digest = Stimmt mit der Prüfsumme überein
page-prove-word-both = Stimmt mit Dateien und Prüfsumme überein
page-prove-word-differs = Weicht ab
page-prove-word-contradicted = Vorgelegtes widerspricht ihm
page-prove-word-open = Ließ sich nicht nachprüfen
page-prove-differs = Wo er abweicht
page-prove-shows = Was das zeigt
page-prove-next = Was als Nächstes zu tun ist
page-prove-files = Dateien
page-prove-finding = Befunde, Zeile { $line }
page-prove-says = Der Bericht sagt
page-prove-gives = Seine Daten ergeben
page-prove-nothing-there = nichts
page-prove-digest-typed = Vom Papier getippt
page-prove-digest-computed = Aus dem Bericht berechnet
page-prove-digest-groups = { $n ->
    [one] { $n } von { $of } Gruppen ist eine andere. Sie ist unterstrichen.
   *[other] { $n } von { $of } Gruppen sind andere. Sie sind unterstrichen.
  }
page-prove-digest-not-compared = Die getippte Prüfsumme ließ sich nicht vergleichen: Die Daten dieses Berichts ergeben keine.
page-prove-next-differs = Verlassen Sie sich nicht auf dieses Exemplar. Behalten Sie es, wie es ist, und bitten Sie den Aussteller noch einmal um den Bericht.
page-prove-next-other-bytes = Herausfinden, welche Datei die richtige ist: um die Datei mit der SHA-256 bitten, die der Bericht nennt, und mit ihr noch einmal nachprüfen. Verlassen Sie sich bis dahin nicht auf den Bericht.
page-prove-next-digest-other = Die Zeichen noch einmal mit dem Papier vergleichen. Sind sie dieselben wie auf dem Papier, ist das nicht der Bericht, der unterschrieben wurde: Verlassen Sie sich nicht auf ihn.
page-prove-next-other-version = Um auch den Wortlaut zu vergleichen, mit { $program } nachprüfen.
page-prove-next-language-not-here = Um auch den Wortlaut zu vergleichen, mit einem Exemplar von Plumbline nachprüfen, das seine Sprache hat.
page-prove-next-files = { $n ->
    [one] Die Datei vorlegen, aus der er erstellt wurde: { $n } fehlt.
   *[other] Die Dateien vorlegen, aus denen er erstellt wurde: { $n } fehlen.
  }
page-prove-next-digest = Wenn Sie das unterschriebene Papier haben, dessen Prüfsumme eintippen: Das zeigt, ob das der Bericht ist, der unterschrieben wurde.
page-prove-next-nothing = Es ist nichts mehr nachzuprüfen. Den Bericht und seine Dateien zusammen aufbewahren.
page-prove-next-files-needed = Die Dateien vorlegen, aus denen er erstellt wurde: Ohne sie gibt es nichts, woraus sich etwas berechnen lässt.
page-prove-next-evidence-missing = Um den Bericht als die Datei bitten, die Plumbline geschrieben hat. Ein Exemplar, das ein Textprogramm oder ein Browser gespeichert hat, oder ein gedrucktes, hat seine Daten verloren.
page-prove-next-not-a-report = Die HTML-Datei wählen, die Plumbline geschrieben hat. Ergebnisdateien gehören unter „Ergebnisdateien“ in der Startansicht.
page-prove-files-more = { $n ->
    [one] { $n } weitere Datei
   *[other] { $n } weitere Dateien
  }
page-prove-strangers = { $n ->
    [one] { $n } Datei vorgelegt, die der Bericht nicht nennt
   *[other] { $n } Dateien vorgelegt, die der Bericht nicht nennt
  }
page-prove-another = Einen weiteren Bericht nachprüfen
page-prove-print = Dieses Ergebnis drucken
page-prove-inspect = { $n ->
    [one] Stattdessen { $n } Datei als Ergebnisse lesen
   *[other] Stattdessen die { $n } Dateien als Ergebnisse lesen
  }
page-prove-by = Nachgeprüft von Plumbline { $version }.
page-prove-untouched = Das Nachprüfen eines Berichts ändert nichts an einer Prüfung, und nichts davon wird behalten.
page-step-prove-begin = anfangen, einen Bericht nachzuprüfen
page-step-prove-beside = eine Datei zu einem Bericht übernehmen
page-step-prove-push = einen Bericht lesen
page-step-prove-end = einen Bericht nachprüfen

## What can be taken away

page-take-download = Herunterladen
page-take-open = Öffnen oder drucken
page-take-print = Was sich in einem eigenen Tab öffnet, wird dort gedruckt, mit dem Druckbefehl des Browsers.
page-take-looking = Es wird nachgesehen, welche Papiere es gibt …
page-take-one-page = Kurzfassung des Berichts
page-take-one-page-why = Eine Seite für die Person, die entscheidet: wie die Lose stehen, die wichtigsten Gründe, was als Nächstes kommt, und Linien zum Unterschreiben.
page-take-report = Gesamtbericht
page-take-report-why = Für Ihre Unterlagen, den Kunden und den Auditor: alles, worauf die Entscheidung beruht, und die Daten, mit denen sich der Bericht nachprüfen lässt.
page-take-annex = Anhang zum Bericht
page-take-annex-why = Für alle, die die Messungen sehen wollen: bis zu tausend davon, unter der Nummer des Berichts.
page-take-laboratory = Anfrage an das Labor
page-take-laboratory-why = Geht mit den Proben: was zu bestimmen ist, nach welchem Verfahren, und warum.
page-take-laboratory-count = { $n ->
    [one] { $n } Probe.
   *[other] { $n } Proben.
  }
page-take-laboratory-none = Nichts wartet auf ein Labor: keine Anfrage.
page-take-notices = Mitteilungen an Lieferanten
page-take-notice = Mitteilung an { $supplier }
page-take-notice-why = Geht an den Lieferanten: was gefunden wurde, worum er gebeten wird, und bis wann er antworten soll.
page-take-notice-count = { $n ->
    [one] { $n } Los.
   *[other] { $n } Lose.
  }
page-take-notices-none = Kein Los ist gesperrt oder nicht angenommen: keine Mitteilung.
page-take-notices-nameless = { $n ->
    [one] { $n } Los, das gesperrt oder nicht angenommen ist, nennt keinen Lieferanten: keine Mitteilung dafür.
   *[other] { $n } Lose, die gesperrt oder nicht angenommen sind, nennen keinen Lieferanten: keine Mitteilung dafür.
  }
page-take-notices-more = { $n ->
    [one] Für { $n } weiteren Lieferanten gibt es eine Mitteilung. Die Befehlszeile schreibt sie mit --papers.
   *[other] Für { $n } weitere Lieferanten gibt es eine Mitteilung. Die Befehlszeile schreibt sie alle mit --papers.
  }
page-take-labels = Etiketten
page-take-labels-why = Für die Ware: den Bogen drucken, zerschneiden, und auf jedes Los, das warten muss, ein Etikett kleben.
page-take-labels-count = { $n ->
    [one] { $n } Etikett.
   *[other] { $n } Etiketten.
  }
page-take-labels-none = Kein Los ist gesperrt oder nicht angenommen: keine Etiketten.
page-take-xlsx = Befunde als Arbeitsmappe
page-take-xlsx-why = Für Kollegen, die mit einem Tabellenprogramm arbeiten: je ein Blatt für Lose, Werkstoffe, Messungen und Kontrollen.
page-take-csv = Befunde als CSV
page-take-csv-why = Für ein Tabellenprogramm oder ein anderes Programm: eine Zeile je Messung.
page-take-json = Befunde als JSON
page-take-json-why = Für ein anderes Programm: alles, in einer dokumentierten Form.
page-take-history = Verlauf für den nächsten Stick
page-take-history-why = Für Ihre nächste Prüfung: Kontrollmessungen und Lose dieser und früherer Prüfungen. Zwei, die auseinandergelaufen sind, werden zusammengeführt.
page-take-settings = Einstellungen
page-take-settings-why = Für einen anderen Tag: was Sie festgehalten haben, als Datei, die diese Seite und die Befehlszeile lesen.
page-where-papers = Papiere für andere
page-step-papers = Papiere auflisten

page-join-list = {", "}
page-join-series = {"; "}
page-join-colon = {": "}
page-join-stop = {". "}
page-join-gap = {" "}
page-join-brackets = {" "}({ $text })

# Die Tabelle der Messungen: Filter, Gruppen, Spalten, Auswahl.

page-grid-filters-back = Filter wieder setzen
page-grid-more-filters = Weitere Filter
page-grid-more-used = { $n ->
    [one] ({ $n } gesetzt)
   *[other] ({ $n } gesetzt)
  }
page-grid-filter-sample = Probe, Stück oder Messstelle
page-grid-filter-part = Teil
page-grid-filter-lot-name = Los
page-grid-filter-supplier = Lieferant
page-grid-filter-margin = Höchstens so viele Sigma neben einem Rand
page-grid-margin-why = Findet Werte, die höchstens so viele ihrer eigenen Sigma neben einem Rand des unentschiedenen Bandes liegen, auf beiden Seiten; bei Halogenen neben dem Grenzwert. Ist ein Stoff gewählt, zählen nur dessen Werte.
page-grid-margin-refused = „{ $typed }“ ist keine Anzahl Sigma von 0,1 bis 5 mit höchstens einer Nachkommastelle, etwa 1,5.
page-grid-one-lot = Nur Los { $lot }: alle Lose zeigen
page-grid-group-by = Gruppieren nach
page-grid-group-none = Keine Gruppen
page-grid-group-part = Teil
page-grid-group-lot = Los
page-grid-group-supplier = Lieferant
page-grid-group-count = { $n ->
    [one] { $shown } Messung
   *[other] { $shown } Messungen
  }
page-grid-group-worst = Schlechtestes:
page-grid-group-checks = Kontrollmessungen
page-grid-group-no-supplier = Lieferant nicht angegeben
page-grid-fold-all = Alle zuklappen
page-grid-unfold-all = Alle aufklappen
page-grid-columns = Spalten
page-grid-columns-which = Gezeigte Spalten
page-grid-columns-first = Wie am Anfang
page-grid-column-element = Element { $symbol }
page-grid-selected = { $n ->
    [one] { $shown } Messung ausgewählt
   *[other] { $shown } Messungen ausgewählt
  }
page-grid-select-all = Alle auswählen
page-grid-select-none = Auswahl aufheben
page-grid-set-aside = Die ausgewählten Messungen beiseitelegen, weil
page-grid-set-aside-why = Zuerst den Grund angeben: Der Bericht druckt ihn.
page-grid-set-aside-checks = Kontrollmessungen gehören zu keinem Los und werden nicht beiseitegelegt.
page-grid-set-aside-most = Höchstens { $most } auf einmal: weniger auswählen.
page-grid-copy = Für eine Tabellenkalkulation kopieren
page-grid-copying = Die ausgewählten Messungen werden zusammengestellt
page-grid-copied = { $n ->
    [one] { $shown } Messung liegt in der Zwischenablage. Sie lässt sich in eine Tabellenkalkulation einfügen.
   *[other] { $shown } Messungen liegen in der Zwischenablage. Sie lassen sich in eine Tabellenkalkulation einfügen.
  }
page-grid-copied-now = Die Messungen liegen in der Zwischenablage. Sie lassen sich in eine Tabellenkalkulation einfügen.
page-grid-copy-stopped = Das Kopieren wurde abgebrochen. In die Zwischenablage kam nichts.
page-grid-copy-refused = Der Browser ließ die Seite nicht in die Zwischenablage schreiben. Die Messungen stehen bereit: Bitte noch einmal versuchen oder sie als Datei speichern, die eine Tabellenkalkulation öffnet.
page-grid-copy-again = Jetzt kopieren
page-grid-copy-file = Als Datei speichern
page-grid-copy-saved = Die Messungen wurden als { $file } gespeichert.
page-grid-keys = Die Leertaste wählt eine Zeile aus, Umschalt mit den Pfeilen mehrere, Strg+A alle; Strg+C kopiert sie für eine Tabellenkalkulation, und Esc hebt die Auswahl auf. Auf einer Gruppe klappen die Pfeile nach rechts und links auf und zu. Die Taste / führt zum Suchfeld.
page-step-copied = Messungen kopieren

page-grid-paper-rows = Auf dem Papier: Zeilen { $from } bis { $to } von { $n }, die gerade zu sehen waren.
page-grid-paper-columns = Keinen Platz auf dem Blatt haben: { $names }.
page-grid-paper-all = Der Anhang des Berichts (report-annex.html) druckt jede Messung.

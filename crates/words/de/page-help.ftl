# German: help where one stands: terms, the guide, the tour, shortcuts, the diagnostic file.

page-words-here = Wörter auf dieser Seite
page-term-close = Schließen
page-term-source = Quelle:
page-term-guide = Alle Wörter im Leitfaden

page-term-screening = Screening
page-term-screening-is = Eine schnelle Prüfung, die Werkstoffe in drei Gruppen teilt: klar unter einem Grenzwert, klar darüber und unentschieden. Unentschiedenes geht ins Labor; erklärt wird damit nichts.
page-term-xrf = RFA
page-term-xrf-is = Röntgenfluoreszenzanalyse: Das Gerät richtet Röntgenstrahlung auf eine Messstelle, und jedes Element antwortet mit seinen eigenen Linien. Es sieht Elemente, keine Verbindungen, und nur eine dünne Schicht unter der Oberfläche.
page-term-reading = Messung
page-term-reading-is = Ein Messvorgang an einer Messstelle: für jedes Element ein Wert und eine Unsicherheit, dazu die Messzeit.
page-term-lot = Los
page-term-lot-is = Ware, die ein Lieferant unter einem Namen zusammen liefert. Sie wird als Ganzes angenommen, gesperrt oder nicht angenommen.
page-term-limit = Grenzwert
page-term-limit-is = So viel von einem Stoff lässt eine Regel in einem Werkstoff höchstens zu, etwa 1000 mg/kg Blei. Jedes Regelwerk sagt, ob der Grenzwert selbst noch zulässig ist.
page-term-band = Band
page-term-band-is = Der Bereich um einen Grenzwert, in dem ein Screening nicht entscheiden darf. Er reicht vom unteren bis zum oberen Rand und auf beiden Seiten noch drei Sigma weiter.
page-term-action-level = Eingriffswert
page-term-action-level-is = Der Gehalt nahe am Grenzwert, bei dem gehandelt werden muss. Die Norm fragt nach der Wiederholbarkeit des Geräts dort, nicht bei null.
page-term-sigma = Ein Sigma
page-term-sigma-is = Das Maß der üblichen Streuung einer Messung: Etwa zwei von drei Wiederholmessungen liegen innerhalb von einem Sigma. Geräte geben eines, zwei oder drei davon aus; das Vielfache muss also bekannt sein.
page-term-repeatability = Wiederholbarkeit
page-term-repeatability-is = Wie stark Messungen derselben Probe streuen, wenn nichts verändert wird. In den Bändern ist es die Streuung einzelner Messungen nahe am Grenzwert.
page-term-bl = BL, unter dem Grenzwert
page-term-bl-is = Der Wert mit seinen drei Sigma liegt unter dem Band. Das gilt für dieses Element, in diesem Werkstoff, an dieser Stelle.
page-term-x = X, unentschieden
page-term-x-is = Der Wert oder seine drei Sigma berühren das Band. Das heißt weder „bestanden“ noch „nicht bestanden“: Etwas anderes muss es klären.
page-term-ol = OL, über dem Grenzwert
page-term-ol-is = Der Wert liegt auch nach Abzug von drei Sigma über dem Band. Brom und Chrom sind nie OL: Der Grenzwert gilt für Verbindungen, und die sieht die RFA nicht.
page-term-not-measured = Nicht gemessen
page-term-not-measured-is = Die Datei enthält für dieses Element keinen Wert oder keinen mit bekannter Einheit. Das ist etwas anderes als nicht nachgewiesen.
page-term-no-uncertainty = Keine Unsicherheit
page-term-no-uncertainty-is = Eine Zahl steht ohne ihr Sigma da; niemand kann sagen, wie weit man ihr trauen darf. Sie gilt als offen.
page-term-detection-limit = Nachweisgrenze
page-term-detection-limit-is = Die kleinste Menge, die ein Gerät von nichts unterscheiden kann; meist das Dreifache der Streuung an einer Probe, die fast nichts enthält.
page-term-detection-too-high = Nachweisgrenze zu hoch oder nicht angegeben
page-term-detection-too-high-is = Es wurde nichts gefunden, aber das Gerät hätte zu wenig gesehen, um „unter“ zu zeigen. Messen Sie länger oder mit einem anderen Verfahren.
page-term-not-capable = Nicht fähig
page-term-not-capable-is = Schon drei Sigma allein erreichen den unteren Rand des Bandes; selbst eine saubere Probe könnte nicht BL werden. Das Sigma muss kleiner sein.
page-term-not-applicable = Nicht anwendbar
page-term-not-applicable-is = Die Regel sagt nichts über dieses Element in diesem Werkstoff, etwa über Brom in Metall.
page-term-class = Werkstoffklasse
page-term-class-is = Polymer, Metall, Verbundwerkstoff oder metallisch überzogen: Sie bestimmt, welches Band gilt. Ist sie unbekannt, wird nach allen Klassen beurteilt, und das schlechteste Ergebnis zählt.
page-term-homogeneous = Homogener Werkstoff
page-term-homogeneous-is = Ein Werkstoff, der sich durch Abschrauben, Schneiden, Schleifen oder Schaben nicht in verschiedene trennen lässt. Grenzwerte gelten für jeden davon, nicht für das ganze Teil.
page-term-composite = Verbundwerkstoff
page-term-composite-is = Mehrere Werkstoffe unter einem Strahl, die sich nicht einzeln messen lassen, etwa eine bestückte Leiterplatte. Seine Bänder sind breiter.
page-term-plated = Metallisch überzogen, beschichtet
page-term-plated-is = Eine Schicht auf einem anderen Werkstoff. Der Strahl mittelt über beide; das Screening sagt für die Schicht deshalb X.
page-term-halogens = Summe der Halogene
page-term-halogens-is = Chlor plus Brom, wie Regeln für „halogenfrei“ es verlangen. Die Summe sperrt ein Los nur nach einem Regelwerk, das Sie nennen.
page-term-accept = Annehmen
page-term-accept-is = Alles Verlangte wurde gemessen und liegt unter seinen Grenzwerten, und die Belege sind da. Das reicht nur so weit, wie gemessen wurde.
page-term-hold = Sperren
page-term-hold-is = Das Los wartet: Etwas ist unentschieden oder fehlt. Das ist keine Zurückweisung; ein Ergebnis beendet die Sperre.
page-term-not-accept = Nicht annehmen
page-term-not-accept-is = Mindestens ein Werkstoff liegt über einem Grenzwert, und keine Ausnahme deckt ihn.
page-term-evidence = Belege
page-term-evidence-is = Was neben den Messungen stehen muss, bevor jemand annehmen kann: Kontrollen, Stichprobe, Werkstoffliste und mehr.
page-term-trust = Verlässlichkeit
page-term-trust-is = Ob Kontrollen zeigen, dass das Gerät richtig maß, als eine Messung entstand. Sie steht neben dem Ergebnis und ändert es nie.
page-term-check = Kontrollprobe
page-term-check-is = Eine Probe mit bekanntem Gehalt. Vor und nach der Ware gemessen, zeigt sie, dass das Gerät richtig misst.
page-term-blank = Blindprobe
page-term-blank-is = Ein sauberes Stück, das nichts zeigen darf. Zeigt es etwas, kommt durch Schmutz oder Gerät zu jeder Messung etwas hinzu.
page-term-certified = Zertifizierter Wert
page-term-certified-is = Der Gehalt einer Kontrollprobe, wie ihn das Zertifikat angibt, mit einer Unsicherheit.
page-term-bracketed = Zwischen guten Kontrollen
page-term-bracketed-is = Eine Messung ist verlässlich, wenn die letzte Kontrolle davor und die erste danach gut waren.
page-term-chart = Regelkarte
page-term-chart-is = Kontrollmessungen in zeitlicher Folge, mit Mittellinie und Eingriffsgrenzen. Sie zeigt eine Drift, bevor eine Kontrolle nicht bestanden wird.
page-term-plan = Stichprobenplan
page-term-plan-is = Die Regel, wie viele Stücke eines Loses gemessen werden und was das zeigt. Ungesehene Stücke bleiben ungesehen.
page-term-acceptance-number = Annahmezahl
page-term-acceptance-number-is = So viele fehlerhafte Stücke lässt ein Plan noch zu. Bei beschränkten Stoffen ist sie hier 0, was auch immer eine Tabelle sagt.
page-term-exemption = Ausnahme
page-term-exemption-is = Ein Eintrag des Gesetzes, der einen Stoff für einen genannten Zweck bis zu einem Tag erlaubt. Jemand muss ihn beanspruchen, mit Beleg und einer zweiten Person.
page-term-placing = Inverkehrbringen
page-term-placing-is = Wenn ein Produkt zum ersten Mal auf einem Markt bereitgestellt wird. Nach diesem Tag richten sich Ausnahmen und Grenzwerte mit Datum.
page-term-category = Gerätekategorie
page-term-category-is = Eine der elf Gruppen von Geräten im Gesetz. Ausnahmen enden für verschiedene Gruppen an verschiedenen Tagen.
page-term-next-step = Nächster Schritt
page-term-next-step-is = Das Günstigste, was Offenes klären könnte: länger messen, an anderer Stelle messen, ein getrenntes Stück messen oder ein Labor.
page-term-reference = Referenzverfahren
page-term-reference-is = Ein Laborverfahren, das eine Probe chemisch aufschließt und den beschränkten Stoff selbst misst.
page-term-declaration = Konformitätserklärung
page-term-declaration-is = Die rechtliche Aussage des Herstellers über ein Produkt, gestützt auf technische Unterlagen. Ein Screening ist höchstens eine dieser Unterlagen.
page-term-decision-rule = Entscheidungsregel
page-term-decision-rule-is = Die Regel, wie die Unsicherheit zählt, wenn ein Wert mit einem Grenzwert verglichen wird. Hier sind die Bänder des Verfahrens die Regel.
page-term-guard-band = Sicherheitsabstand
page-term-guard-band-is = Ein Abstand zum Grenzwert, damit ein falsches „innerhalb“ selten wird. Die Bänder enthalten schon einen.
page-term-probability = Wahrscheinlichkeit, innerhalb zu liegen
page-term-probability-is = Wie wahrscheinlich der wahre Wert innerhalb des Grenzwerts liegt, wenn die Unsicherheit stimmt und vollständig ist. Sie entscheidet hier nichts.
page-term-margin = Abstand
page-term-margin-is = Um wie viele eigene Sigma ein Wert vom näheren Rand seines Bandes entfernt ist, nach beiden Seiten. Je kleiner, desto näher an einem anderen Ergebnis.
page-term-digest = Prüfsumme (SHA-256)
page-term-digest-is = Ein Fingerabdruck einer Datei in 64 Zeichen. Ändert sich ein Buchstabe, ist es ein anderer; über den Inhalt verrät er nichts.
page-term-act = Eingabe
page-term-act-is = Was Sie hier festlegen, beantworten oder zurücknehmen. Alle Eingaben stehen mit Ihrem Kürzel im Bericht; keine Messung wird je geändert.
page-term-book = Regelwerk
page-term-book-is = Eine datierte Liste von Grenzwerten, Bändern oder Ausnahmen, jeweils mit Quelle und Abschnitt. Der Bericht nennt die verwendeten.
page-term-caution = Warnhinweis
page-term-caution-is = Etwas, das eine Messung zweifelhaft macht, etwa die Linie eines anderen Elements. Er ändert kein Ergebnis; ein starker sperrt das Los.

page-from-bands = IEC 62321-3-1:2013, Tabelle der Screening-Grenzwerte
page-from-scope = IEC 62321-3-1:2013, Anwendungsbereich
page-from-action = IEC 62321:2008, Auswertung der Ergebnisse, mit der Leistungsprüfung nach 6.5.4
page-from-annex-ii = Richtlinie 2011/65/EU, Anhang II
page-from-homogeneous = Richtlinie 2011/65/EU, Artikel 3 Nummer 20 (Artikelnummer aus dem Gedächtnis)
page-from-categories = Richtlinie 2011/65/EU, Anhang I
page-from-exemptions = Richtlinie 2011/65/EU, Anhänge III und IV; dass zwei Personen abzeichnen, ist unsere eigene Regel
page-from-placing = Richtlinie 2011/65/EU, Artikel 3 (aus dem Gedächtnis)
page-from-declaration = Richtlinie 2011/65/EU, Artikel 13 (aus dem Gedächtnis); EN IEC 63000:2018
page-from-halogens = IEC 61249-2-21:2003 (von einer Sekundärquelle wiedergegeben)
page-from-detection = US EPA Method 6200, 9.6
page-from-check = US EPA Method 6200, 9.4
page-from-bracket = Unsere eigene Regel, nach US EPA Method 6200, 9.4
page-from-score = ISO 13528
page-from-chart = ISO 7870-2
page-from-plan = MIL-STD-105E
page-from-zero = Unsere eigene Regel: Das Gesetz kennt keinen zulässigen Anteil fehlerhafter Stücke
page-from-disposition = Wort aus ISO 2859-1; was dazu führt, ist unsere eigene Regel
page-from-decision = ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019
page-from-guard = ILAC-G8:09/2019, 4.1; JCGM 106:2012
page-from-probability = JCGM 106:2012, 7
page-from-reference = IEC 62321-4 bis IEC 62321-8 und IEC 62321-12
page-from-digest = FIPS 180-4 (aus dem Gedächtnis)
page-from-gum = JCGM 100:2008 (aus dem Gedächtnis)
page-from-own = Unser eigenes Wort
page-from-habit = Übliche Praxis, ohne Quelle

page-ruler-heading = Was sehe ich hier?
page-ruler-alt = Eine Schiene von links nach rechts. Um den Grenzwert steht ein schraffiertes Band. Wo die Messung liegt, hängt ein Senklot mit Fehlerbalken nach beiden Seiten.
page-ruler-bob = Senklot: die Messung
page-ruler-whiskers = Fehlerbalken: je drei Sigma
page-ruler-band = Band um den Grenzwert
page-ruler-left = links: darunter
page-ruler-right = rechts: darüber
page-ruler-rail = Schiene: mg/kg, von wenig nach viel
page-ruler-why = Ein Grenzwert ist für ein Screening keine Linie: Im schraffierten Band um ihn wird nichts entschieden.
page-ruler-below = Senklot und Fehlerbalken links vom Band
page-ruler-undecided = Etwas berührt das Band
page-ruler-over = Senklot und Fehlerbalken rechts vom Band
page-ruler-others = Gestrichelte Schiene ohne Senklot: nicht gemessen. Nur eine kurze Schiene: Die Regel gilt nicht. Ein Pfosten mit Querbalken: ein Grenzwert ohne Band. Striche: irgendwo auf dieser Seite oder zwischen zwei Pfosten ohne Querbalken.

page-guide = Leitfaden
page-guide-close = Schließen
page-guide-search = Im Leitfaden suchen
page-guide-found = { $n ->
    [0] Nichts gefunden.
    [one] { $n } Stelle gefunden.
   *[other] { $n } Stellen gefunden.
  }
page-guide-go = Dorthin gehen
page-guide-words = Wörter
page-guide-keys = Tasten
page-guide-tour = Rundgang
page-guide-bring = Dateien laden
page-guide-bring-text =
    Wählen Sie Ergebnisdateien, oder ziehen Sie Dateien oder einen Ordner irgendwo auf die Seite. Gelesen werden Tabellen als CSV, TSV oder Text, Arbeitsmappen (XLSX, ODS) und ZIP-Archive davon.
    Einstellungen, eine Zuordnung der Spalten, ein Regelwerk, ein Verlauf und eine Werkstoffliste haben eigene Felder. Fotos dürfen mit den Ergebnissen kommen.
    Lieferanten wählen „Vor dem Versand prüfen“: dieselbe Auswertung als Selbstprüfung, nach dem Regelwerk des Kunden.
    Es wird nichts gesendet. Dateien werden gelesen und nie verändert.
page-guide-columns = Was die Seite aus Spalten macht
page-guide-columns-text =
    Jede Zeile hat genau einen Verbleib: verwendet, Kontrolle, doppelt, beiseitegelegt oder abgewiesen. Die Zahlen gehen auf, und jede abgewiesene Zeile nennt den Grund.
    Jede Spalte steht unter der Bedeutung, die für sie gefunden wurde. Ist sie falsch, wählen Sie eine andere; die Datei wird sofort neu gelesen.
    Was eine Datei offen lässt (Einheit, Vielfaches des Sigmas, Reihenfolge im Datum, Klasse), wird oben gefragt. Bis zur Antwort gilt die strenge Lesart. Geraten wird nichts.
page-guide-trust = Sind die Messungen verlässlich?
page-guide-trust-text =
    Jede Karte nennt eine Art von Beleg: wozu er dient, was fehlt und wo er anzugeben ist. „Fehlt“ sperrt Lose.
    Kontrollmessungen brauchen zertifizierte Werte, sonst beweisen sie nichts. Verlässlich ist eine Messung zwischen zwei guten Kontrollen.
    Geben Sie Ihr Kürzel einmal an; es steht bei jeder Eingabe. Jede Eingabe lässt sich zurücknehmen, und auch das wird festgehalten.
page-guide-ruler = Das Lineal lesen
page-guide-ruler-text =
    Sehen Sie, wo das Senklot hängt: links vom Band ist darunter, rechts davon darüber, und was das Band berührt, ist unentschieden.
    Neben jedem Zeichen stehen Wörter; Farbe hilft nur zusätzlich. Öffnen Sie eine Messung, um Schritt für Schritt zu sehen, wie ihr Ergebnis entstand.
    Fehlt eine Zahl, sagt die Seite, warum: nicht gemessen, keine Unsicherheit, Nachweisgrenze zu hoch, nicht fähig, nicht anwendbar. Nichts davon heißt „bestanden“.
page-guide-materials = Werkstoffe, Teile, Lose
page-guide-materials-text =
    Ein Grenzwert gilt für jeden homogenen Werkstoff. Es zählt die schlechteste Messstelle; Messstellen werden nie gemittelt.
    Ein Teil ist entlastet, wenn alle seine Werkstoffe es sind: Nennen Sie sie von Hand oder mit einer Werkstoffliste. Ein Los ist so gut wie sein schlechtestes Teil.
    Losumfang und Stichprobenplan sagen, wie viele Stücke zu messen sind. Kein gemessenes Stück darf über dem Grenzwert liegen.
page-guide-exemptions = Ausnahmen
page-guide-exemptions-text =
    Eine Ausnahme gilt nie von selbst. Beanspruchen Sie sie für einen Werkstoff, nennen Sie den Beleg, und lassen Sie eine zweite Person abzeichnen.
    Sie gilt nur für ihren Zweck, ihre Kategorie und bis zu ihrem Tag. Geben Sie den Tag des Inverkehrbringens und die Kategorie an.
    Daten, die nicht gefunden wurden oder nur aus dem Gedächtnis stammen, sind so gekennzeichnet. Schlagen Sie sie nach, bevor Sie sich darauf verlassen.
page-guide-halogens = Halogene
page-guide-halogens-text =
    Chlor, Brom und ihre Summe werden immer berechnet. Ein Los sperren sie nur, wenn Sie unter „Halogenregeln“ ein Regelwerk nennen.
    Wurde ein Anteil nicht nachgewiesen, ist die Summe ein Bereich. Sie liegt nur dann darunter, wenn ihr oberes Ende darunter liegt.
    Reinigen Sie zuerst die Oberfläche: Flussmittel, Salz und Aufkleber enthalten Chlor.
page-guide-next = Was als Nächstes kommt
page-guide-next-text =
    Alles Offene ist danach geordnet, was es klären würde, das Schwerste zuerst. Jeder Schritt führt zu seinen Messungen oder zu dem Feld, das fehlt.
    Länger messen hilft nur außerhalb der Ränder des Bandes; die Seite sagt, wie lange, oder dass keine Zeit genügt.
    Das Ergebnis eines Labors geben Sie unter „Laborergebnisse“ ein. Anfrage, Mitteilung und Etiketten liegen unter „Festhalten“ bereit.
page-guide-report = Den Bericht schreiben
page-guide-report-text =
    Tragen Sie ein, wer, wo und wann. Das Programm liest keine Uhr: Ein Tag steht nur da, wenn Sie ihn angeben.
    Nehmen Sie die Kurzfassung für die, die entscheiden, den Gesamtbericht für Ihre Akten und die Daten als CSV, Arbeitsmappe oder JSON. Der Bericht darf in einer anderen Sprache sein als die Seite.
    Unterschreiben Sie die gedruckte Seite: Neben den Unterschriften steht die Prüfsumme und bindet das Papier an die Daten.
page-guide-prove = Einen Bericht nachprüfen
page-guide-prove-text =
    Ziehen Sie einen Bericht zurück auf die Seite. Er wird aus den Daten, die er mitführt, neu berechnet, und jeder Unterschied wird genannt.
    Allein zeigt das nur, dass der Bericht mit sich selbst übereinstimmt. Mit seinen Dateien daneben, dass die Daten aus ihnen stammen; mit der Prüfsumme vom unterschriebenen Papier, dass es der unterschriebene Bericht ist.
page-guide-keep = Behalten und nichts hinterlassen
page-guide-keep-text =
    Oben auf der Seite steht, ob Ihre Arbeit gesichert ist. Drücken Sie dort, um die Prüfung in eine Datei zu sichern; wer diese Datei hat, kann sie lesen.
    In diesem Browser liegt eine verschlüsselte Sicherungskopie. Nach einem Absturz öffnet sie nur der Code, der Ihnen gezeigt wurde; schreiben Sie ihn auf.
    „Auf diesem Rechner nichts hinterlassen“ behält keine Kopie und merkt sich nichts. Nehmen Sie das auf einem geliehenen Rechner, und leeren Sie dort den Ordner der Downloads.
page-guide-wrong = Wenn etwas schiefgeht
page-guide-wrong-text =
    Eine Meldung sagt was, wo, warum und was zu tun ist, und bleibt stehen, bis Sie sie schließen. Ihre Dateien werden nie verändert.
    Bleibt das Programm stehen, beginnt es neu mit Ihren Dateien und Eingaben, ohne die Datei, an der es stehen blieb.
    Eine Diagnosedatei hilft denen, die das Programm reparieren. Sie enthält keine Messung und keinen Namen; sehen Sie sie an, bevor Sie sie speichern.
page-guide-safety = Sicherheit
page-guide-safety-text =
    Ein Röntgengerät sendet ionisierende Strahlung aus. Richten Sie es nie auf einen Menschen, halten Sie nie eine Probe mit der Hand davor, und benutzen Sie den Messstand oder die Abschirmung.
    Beim Schleifen, Schaben und Schneiden entsteht Staub, der Blei, Cadmium oder Chrom enthalten kann: Tragen Sie Maske und Handschuhe, saugen Sie ihn ab, waschen Sie sich die Hände.
    Halten Sie sich an die Vorschriften vor Ort und an die Unterlagen des Geräts. Diese Seite kennt beide nicht.
page-guide-law = Recht und Genehmigung
page-guide-law-text =
    In vielen Ländern dürfen nur geschulte oder zugelassene Personen ein Röntgengerät benutzen, und nur dort, wo es angemeldet ist. Fragen Sie, bevor Sie messen.
    Regeln sind von Land zu Land verschieden und ändern sich. Die Regelwerke hier haben Datum und Quelle; prüfen Sie, ob sie für Sie gelten.
    Ein Screening ist keine Konformitätserklärung, und ein „annehmen“ hier ist auch keine. Es zeigt, dass in dem, was gemessen wurde, nichts über einem Grenzwert gefunden wurde.

page-tour-offer = Zum ersten Mal hier? Sechs Stationen, eine Minute, mit erfundenen Daten.
page-tour-start = Rundgang
page-tour-not = Nein, danke
page-tour-at = Station { $n } von { $of }
page-tour-next = Weiter
page-tour-back = Zurück
page-tour-leave = Verlassen
page-tour-end = Zurück zur Startansicht
page-tour-none = Dieses Exemplar der Seite enthält keine Lieferungen zum Zeigen.
page-tour-steps = Fünf Fragen
page-tour-steps-text = Jede Lieferung geht durch fünf Fragen, von links nach rechts. Eine Zahl zeigt, wo etwas auf Sie wartet. Diese hier ist erfunden.
page-tour-came-in-text = Jede Zeile einer Datei hat genau einen Verbleib, und die Zahlen gehen auf. Was die Datei offen ließ, wird darunter gefragt.
page-tour-trust-text = Jede Karte ist eine Art von Beleg. Wo „fehlt“ steht, ist das Los gesperrt, bis er da ist.
page-tour-says-text = Bei jedem Los stehen die schwersten Gründe zuerst. Wörter mit einer gepunkteten Linie erklären sich selbst: Zeigen Sie darauf oder tippen Sie sie an.
page-tour-next-stop-text = Alles Offene, geordnet nach dem, was es klären würde. Jeder Knopf führt an seinen Ort.
page-tour-write-text = Geben Sie an, wer was ausgewertet hat, und nehmen Sie den Bericht mit. „Rückgängig“ nimmt alles zurück, was Sie eingeben. Das war alles.

page-keys-heading = Tasten dieser Seite
page-keys-what = Was sie tut
page-keys-key = Taste
page-keys-anywhere = Überall
page-keys-table = In der Tabelle der Messungen
page-keys-cards = In Karten und Listen
page-keys-photo = Auf einem Foto
page-keys-single = Tasten ohne Strg oder Alt benutzen ({ $keys })
page-keys-single-hint = Schalten Sie sie ab, wenn Sie den Rechner per Sprache steuern oder aus Versehen Tasten drücken.
page-key-guide = Den Leitfaden öffnen
page-key-keys = Diese Liste zeigen
page-key-place = Zu „{ $place }“ gehen
page-key-next = Zum nächsten Schritt
page-key-filter = Zum Suchfeld der Tabelle gehen
page-key-rows = Eine Zeile nach oben oder unten
page-key-cells = Eine Zelle zur Seite
page-key-heads = Von einer Überschrift zur nächsten
page-key-head-sort = Nach dieser Überschrift ordnen
page-key-head-term = Was die Überschrift bedeutet
page-key-screens = Eine Bildschirmhöhe nach oben oder unten
page-key-ends = Erste oder letzte Zeile
page-key-open = Die Messung öffnen
page-key-fold = Eine Gruppe auf- oder zuklappen
page-key-select = Zeilen auswählen
page-key-select-one = Diese Zeile auswählen oder auslassen
page-key-select-all = Alle gezeigten Zeilen auswählen
page-key-copy = Das Ausgewählte für eine Tabellenkalkulation kopieren
page-key-select-none = Nichts auswählen
page-key-close = Schließen, was offen ist
page-key-take = Festhalten, was gewählt ist
page-key-pick = Über die Werte einer Liste gehen, ohne festzuhalten
page-key-spot = Die Markierung verschieben; mit Umschalt fein
page-key-spot-take = Die Markierung festhalten

page-diagnostic = Diagnosedatei
page-diagnostic-save = Diagnosedatei speichern
page-diagnostic-look = Das ist alles, was in der Datei stehen wird. Kein Name, keine Überschrift, keine Zelle, keine gemessene Zahl und nichts, was Sie eingetippt haben. Es wird nichts gesendet: Geben Sie die Datei denen, die sich für Sie um Plumbline kümmern.
page-diagnostic-text = Inhalt der Diagnosedatei
page-diagnostic-write = Diese Datei speichern

page-trouble-raw = Für die, die Ihnen helfen
page-trouble-crash-why = Plumbline selbst hat einen Fehler: Es traf auf etwas, woran beim Bauen niemand gedacht hat. Ihre Dateien sind, wie sie waren.
page-trouble-crash-no-answer-why = Der rechnende Teil hat fünf Sekunden lang nicht geantwortet. Vielleicht ist der Rechner sehr beschäftigt oder hat zu wenig Speicher.
page-trouble-page-why = Plumbline selbst hat einen Fehler. Ihre Dateien sind, wie sie waren.
page-trouble-engine-why = Der Browser hat den rechnenden Teil dieser Seite nicht gestartet. Vielleicht fehlt Speicher, oder eine Sicherheitseinstellung verhindert es.
page-trouble-gone-why = Sie ist nicht mehr dort, wo sie bei der Auswahl war: Sie wurde verschoben, umbenannt oder gelöscht, oder der Stick wurde herausgezogen.
page-trouble-locked-why = Der Rechner lässt den Browser sie nicht lesen: Sie wurde seit der Auswahl verändert, ein anderes Programm hat sie offen, oder der Stick wurde herausgezogen.
page-trouble-reading-why = Der Browser konnte sie nicht lesen.
page-trouble-not-text-why = Sie enthält Zeichen, die kein einfacher Text sind. Vielleicht ist es eine andere Art von Datei, oder sie wurde in einer anderen Textkodierung gespeichert.
page-trouble-not-text-todo = Wählen Sie die Datei, die als Einstellungen, Zuordnung, Regelwerk oder Verlauf geschrieben wurde. Haben Sie sie von Hand geschrieben, speichern Sie sie als UTF-8.
page-keycap-enter = Eingabe
page-keycap-ctrl = Strg
page-keycap-space = Leertaste
page-keycap-escape = Esc
page-keycap-shift = Umschalt
page-keycap-pgup = Bild auf
page-keycap-pgdn = Bild ab
page-keycap-home = Pos1
page-keycap-end = Ende

page-step-ahead = zeigen, was vor einem Los liegt
page-step-checks = Kontrollmessungen zeigen
page-step-shelf = Regelwerke auflisten
page-step-explained = ein Regelwerk erklären
page-step-summary = Befunde sammeln
page-step-teach = eine Sprache lernen
page-step-speak = die Sprache wechseln
page-step-history = einen Verlauf lesen
page-step-bill = eine Werkstoffliste lesen

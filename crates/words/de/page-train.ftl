# The trainer's room: lessons, exercises, the score sheet.
page-train-enter = Zum Übungsraum
page-train-heading = Übungsraum
page-train-invented = Alles in diesem Raum ist erfunden: Firma, Lieferanten, Lose und Zahlen. Eine offene Prüfung bleibt, wie sie ist.
page-train-lead = Acht kurze Lektionen über das Entscheiden nach RFA-Messungen. Zuerst entscheiden Sie; dann zeigt das Programm, wie es rechnet.
page-train-lessons = Lektionen
page-train-titled = Lektion { $n }: { $title }
page-train-progress = { $done } von { $of } Aufgaben beantwortet, { $right } richtig
page-train-not-begun = nicht begonnen
page-train-begin = Mit Lektion 1 beginnen
page-train-go-on = Weiter mit Lektion { $n }: { $title }
page-train-to-sheet = Zum Ergebnisblatt
page-train-home = Alle Lektionen
page-train-before = Vorige Lektion
page-train-after = Nächste Lektion: { $title }
page-train-source = Quelle
page-train-look = Eine erfundene Lieferung zum Ansehen
page-train-open = { $title } öffnen
page-train-deliveries = Lieferungen zum Auswerten
page-train-deliveries-hint = Eine offene Prüfung wird dabei beiseitegelegt; „{ $back }“ ganz oben holt sie zurück.
page-train-fresh = Eine neue Lieferung
page-train-fresh-hint = Ein Los aus dem Startwert oben, das Sie wie ein echtes auswerten: was es sagt, was fehlt und wer unterschreibt.
page-train-fresh-open = Lieferung dieses Startwerts öffnen
page-train-fresh-title = Erfundene Lieferung, Startwert { $seed }
page-train-fresh-story = Ein erfundenes Los aus dem Startwert { $seed }. Werten Sie es aus wie ein echtes: Warum sagt jede Messung, was sie sagt, was fehlt, und würden Sie Ihren Namen daruntersetzen?
page-train-seed = Startwert der Aufgaben
page-train-seed-hint = Derselbe Startwert ergibt auf jedem Rechner dieselben Aufgaben.
page-train-seed-use = Diesen Startwert nehmen
page-train-seed-new = Neuer Startwert
page-train-seed-wrong = Ein Startwert ist eine ganze Zahl von 0 bis 18446744073709551615, nur aus Ziffern.
page-train-seed-now = Aufgaben aus Startwert { $seed }, erfunden

# The ruler that can be moved.
page-train-ruler = Das Lineal bewegen
page-train-ruler-lead = Wählen Sie Klasse und Stoff und ziehen Sie dann das Senklot oder ein Ende des Fehlerbalkens. Die Worte darunter folgen.
page-train-ruler-figure = Lineal, das sich bewegen lässt; die Felder darunter tun dasselbe
page-train-ruler-none = Hierfür gibt es kein Lineal zu zeichnen. Die Worte darunter sagen, warum.
page-train-class = Klasse
page-train-class-polymer = Polymer
page-train-class-metal = Metall
page-train-class-composite = Verbundwerkstoff oder Elektronik
page-train-class-plated = metallisch überzogen oder beschichtet
page-train-class-unknown = Glas oder Keramik
page-train-substance = Stoff
page-train-substance-cd = Cadmium (Cd)
page-train-substance-pb = Blei (Pb)
page-train-substance-hg = Quecksilber (Hg)
page-train-substance-cr = Chrom (Cr)
page-train-substance-br = Brom (Br)
page-train-kind = Was die Datei sagt
page-train-kind-number = eine Zahl
page-train-kind-below = unter einer Nachweisgrenze
page-train-kind-none = nicht nachgewiesen, keine Grenze angegeben
page-train-value = Wert, mg/kg
page-train-limit = Nachweisgrenze, mg/kg
page-train-sigma = Ein Sigma, mg/kg
page-train-slide-value = Den Wert bewegen
page-train-slide-limit = Die Nachweisgrenze bewegen
page-train-slide-sigma = Das Sigma bewegen
page-train-slid = { $value } mg/kg
page-train-thickness = Dicke, mm
page-train-now = Jetzt: { $outcome }

# Exercises.
page-train-exercises = Aufgaben
page-train-exercise = Aufgabe { $n }
page-train-ask-outcome = Was sagt diese Messung über den Stoff { $substance }?
page-train-ask-disposition = Was wird aus diesem Los?
page-train-none-stated = keines angegeben
page-train-readings = Die Messungen der Datei, in mg/kg ± ein Sigma
page-train-column-sample = Probe
page-train-column-unit = Stück
page-train-column-material = Werkstoff
page-train-fact-size = Das Los hat { $n } Stück.
page-train-fact-size-none = Niemand hat gesagt, wie viele Stück das Los hat.
page-train-fact-take = { $n ->
    [one] Ein Stück war zu messen.
   *[other] { $n } Stück waren zu messen.
 }
page-train-fact-materials = Das Teil besteht aus: { $list }.
page-train-fact-trust-advisory = Kontrollmessungen sind in dieser Aufgabe „nur Hinweis“.
page-train-fact-certificate = { $sample } ist die Kontrollprobe. Nach ihrem Zertifikat enthält sie Cd { $cadmium } und Pb, Hg, Cr, Br je { $others } mg/kg.
page-train-fact-seconds = Jede Messung dauerte { $seconds } Sekunden.
page-train-fact-category = Das Produkt gehört zur Kategorie { $category }, Überwachungs- und Kontrollinstrumente. Kein Kind kann das Teil in den Mund nehmen.
page-train-fact-placed = Das Produkt wird am { $day } in Verkehr gebracht.
page-train-fact-placed-none = Niemand hat gesagt, wann das Produkt in Verkehr gebracht wird.
page-train-fact-claim = Der Lieferant beansprucht die Ausnahme { $entry } (höchstens { $percent } % Blei, bis { $day }), mit einem Schreiben. Zwei Personen haben den Anspruch abgezeichnet.
page-train-fact-claim-one = Der Lieferant beansprucht die Ausnahme { $entry } (höchstens { $percent } % Blei, bis { $day }), mit einem Schreiben. Eine Person hat den Anspruch abgezeichnet.
page-train-fact-claim-none = Niemand beansprucht eine Ausnahme.
page-train-fact-renewal-none = Niemand hat beantragt, die Ausnahme { $entry } zu erneuern.
page-train-check = Meine Antwort prüfen
page-train-choose = Wählen Sie zuerst eine Antwort.
page-train-right = Richtig
page-train-wrong = Nicht richtig
page-train-you-said = Ihre Antwort: { $answer }.
page-train-tool-says = Das Programm sagt:
page-train-move = Diese Zahlen auf dem Lineal bewegen
page-train-more = Noch eine, mit anderen Zahlen

# The score sheet.
page-train-sheet = Ergebnisblatt
page-train-sheet-empty = Noch nichts beantwortet. Lösen Sie einige Aufgaben; sie stehen dann hier.
page-train-sheet-name = Name oder Kürzel der übenden Person (freiwillig, wird nie gespeichert)
page-train-sheet-day = Datum
page-train-sheet-print = Ergebnisblatt drucken
page-train-sheet-asked = Gefragt
page-train-sheet-answered = Geantwortet
page-train-sheet-right = Richtige Antwort
page-train-sheet-result = Ergebnis
page-train-sheet-clause = Quelle
page-train-sheet-total = { $right } von { $of } richtig
page-train-sheet-trainee = Übende Person
page-train-sheet-trainer = Ausbildende Person
page-train-sheet-signature = Datum und Unterschrift
page-train-sheet-no-certificate = Alle Messungen und Lose sind erfunden. Dieses Blatt hält eine Übung fest; es ist kein Befähigungsnachweis.
page-train-where = der Übungsraum
page-step-what-if = nach einer gedachten Messung fragen
page-step-exercises = Aufgaben erstellen
page-step-solved = eine Aufgabe ausrechnen
page-step-invented-delivery = eine erfundene Lieferung erstellen

# The lessons.
page-train-band-title = Was ein Band ist
page-train-band-1 = Eine Messung ist nie ganz genau. Um einen Grenzwert liegt ein Band, in dem eine schnelle RFA-Messung gut und schlecht nicht unterscheiden kann.
page-train-band-2 = Für Blei in einem Polymer erlaubt das Gesetz 1000 mg/kg, und das Band reicht von 700 bis 1300. Deutlich darunter heißt „unter dem Grenzwert“ (BL), deutlich darüber „über dem Grenzwert“ (OL). Dazwischen ist die Messung „unentschieden“ (X), und ein Labor entscheidet.
page-train-band-3 = Unentschieden ist eine Antwort, kein Versagen: Sie sagt, was als Nächstes zu tun ist.
page-train-band-source = Band: IEC 62321-3-1:2013, Tabelle der Screening-Grenzwerte. Grenzwert: Richtlinie 2011/65/EU, Anhang II (beides bestätigt).
page-train-band-try = Ziehen Sie das Senklot von links nach rechts. Wo ändern sich die Worte?

page-train-sigma-title = Warum drei Sigma
page-train-sigma-1 = Wer dieselbe Stelle noch einmal misst, bekommt eine etwas andere Zahl. Ein Sigma sagt, wie viel das üblicherweise ausmacht.
page-train-sigma-2 = Der Fehlerbalken reicht drei Sigma nach jeder Seite. „Unter dem Grenzwert“ verlangt, dass der ganze Balken unter dem Band liegt, „über dem Grenzwert“, dass er ganz darüber liegt. Den Rand gerade zu berühren genügt.
page-train-sigma-3 = Reichen drei Sigma allein schon so weit wie der untere Rand des Bandes, so lässt sich für keinen Wert „unter“ zeigen: länger messen. Eine Zahl ganz ohne Unsicherheit entscheidet nichts.
page-train-sigma-source = IEC 62321:2008: Drei Sigma drücken die Wiederholbarkeit des Geräts am Eingriffswert aus, mit 99,7 % Sicherheit (bestätigt).
page-train-sigma-try = Lassen Sie das Senklot, wo es ist, und ziehen Sie den Fehlerbalken länger. Die Antwort geht von „unter dem Grenzwert“ über „unentschieden“ zu „nicht fähig“.

page-train-element-title = Warum Brom und Chrom nie „über“ sind
page-train-element-1 = Das Gesetz beschränkt PBB und PBDE, die Brom enthalten, und sechswertiges Chrom. Die RFA sieht nur das Element.
page-train-element-2 = Wenig Brom heißt wenig PBB und PBDE: Das entlastet. Viel Brom kann aus etwas Erlaubtem stammen: Das ist unentschieden, wie groß die Zahl auch ist, und ein Labor sucht den Stoff selbst. Für Chrom gilt dasselbe.
page-train-element-3 = PBB und PBDE kommen in Metallen nicht vor; Brom in Metall ist darum nicht anwendbar.
page-train-element-source = IEC 62321-3-1:2013, Tabelle der Screening-Grenzwerte: kein oberer Rand für Br und Cr. Richtlinie 2011/65/EU, Anhang II: Die Grenzwerte gelten für PBB, PBDE und Cr(VI) (beides bestätigt).
page-train-element-try = Ziehen Sie das Senklot so weit nach rechts, wie es geht. „Über“ heißt es nie.

page-train-censored-title = Werte unter der Nachweisgrenze
page-train-censored-1 = „< 40“ heißt: nicht gesehen, und 40 hätte das Gerät gesehen. Es heißt nicht null.
page-train-censored-2 = Eine Nachweisgrenze D steht für drei Sigma; der wahre Wert kann also bis zum Zweifachen von D reichen. Nur wenn das unter dem Band bleibt, ist die Messung unter dem Grenzwert; sonst ist die Nachweisgrenze zu hoch.
page-train-censored-3 = „n.d.“ ohne Grenze entlastet nichts. Ein Strich ist keine Messung. In einem Verbundwerkstoff wird Cadmium nur durch eine angegebene Grenze von höchstens 50 mg/kg entlastet.
page-train-censored-source = Nachweisgrenze als drei Sigma: IUPAC 1978 (aus dem Gedächtnis); US EPA Method 6200, 9.6 (bestätigt). Cadmium in Verbundwerkstoffen: IEC 62321-3-1:2013, Tabelle der Screening-Grenzwerte (bestätigt); die 50 mg/kg sind unsere eigene Regel.
page-train-censored-try = Schieben Sie die Grenze höher, bis sie nicht mehr entlastet. Wählen Sie dann „nicht nachgewiesen, keine Grenze angegeben“.

page-train-material-title = Ein Werkstoff nach dem anderen
page-train-material-1 = Grenzwerte gelten für jeden homogenen Werkstoff: alles, was sich durch Abschrauben, Schneiden, Zerkleinern oder Schleifen nicht weiter zerlegen lässt. Ein Kabel besteht aus mehreren Werkstoffen, und jeder Überzug ist einer.
page-train-material-2 = Ist ein Werkstoff über dem Grenzwert, wird das ganze Teil nicht angenommen. Ein Werkstoff, den niemand gemessen hat, ist offen: Das Los wird gesperrt.
page-train-material-3 = Auf einem überzogenen Stück mischt der Strahl Schicht und Grundwerkstoff, darum gibt es kein Urteil. Ein dünnes Stück gibt zu wenig Signal zurück: Eine kleine Zahl ist dort unentschieden. Dünne Stücke stapeln.
page-train-material-source = Richtlinie 2011/65/EU, Artikel 3(20) (Nummer aus dem Gedächtnis); IEC 62321-2:2021, 4.6 (bestätigt). Kein Urteil über Schichten und die Korrektur der Dicke sind unsere eigenen Regeln.
page-train-material-try = Wechseln Sie die Klasse von Metall zu metallisch überzogen und zurück, ohne das Senklot zu bewegen.

page-train-exemption-title = Ausnahmen
page-train-exemption-1 = In manchen Verwendungen ist mehr erlaubt. Kupferlegierungen dürfen nach Eintrag 6(c) bis zu seinem letzten Tag bis zu 4 % Blei enthalten. Eine Ausnahme ändert nie das Ergebnis: Das Blei ist über dem Grenzwert, und der Anspruch deckt es oder nicht.
page-train-exemption-2 = Ein Anspruch deckt nur, wenn alles da ist: der richtige Werkstoff, ein Wert deutlich innerhalb des Grenzwerts des Eintrags, die Gerätekategorie, der Tag des Inverkehrbringens, ein Beleg und die Kürzel von zwei Personen.
page-train-exemption-3 = Deutlich über dem Grenzwert des Eintrags oder nach seinem Tag ohne Erneuerung: nicht annehmen. Fehlt etwas oder ist es zu knapp: sperren.
page-train-exemption-source = Richtlinie 2011/65/EU, Anhang III, Eintrag 6(c), geändert 2025 (von einer Sekundärquelle wiedergegeben). Der Sicherheitsabstand an seinem Grenzwert und das zweite Kürzel sind unsere eigenen Regeln.
page-train-exemption-try = 27 000 mg/kg Blei in Messing sind 2,7 %. Das Lineal sagt „über“; nur ein Anspruch für das Los kann das decken.

page-train-trust-title = Ist das Gerät heute verlässlich?
page-train-trust-1 = Vor und nach den Messungen wird eine Probe mit bekanntem Gehalt gemessen. Stimmen beide, zählen die Messungen dazwischen.
page-train-trust-2 = Keine Kontrolle, eine nicht bestandene oder keine nach der letzten Messung: Die Zahlen bleiben, aber das Los wird gesperrt. Was über dem Grenzwert ist, bleibt darüber, was die Kontrollen auch sagen.
page-train-trust-3 = Auch die Zeit zählt: Viermal so lange halbiert das Sigma. Sehr kurze Messungen können zu grob sein, um etwas zu entlasten.
page-train-trust-source = US EPA Method 6200, 9.4 (Kontrollen am Anfang, zwischendurch und am Ende) und 9.5 (vierfache Zeit, doppelte Präzision) (bestätigt). Dass nur Messungen zwischen zwei guten Kontrollen zählen, ist unsere eigene Regel.
page-train-trust-try = Dieses Sigma gehört zu fünf Sekunden. Halbieren Sie es: Das kostet die vierfache Zeit. Wie lange, bis es entlastet?

page-train-sampling-title = Stichprobe, und was „annehmen“ heißt
page-train-sampling-1 = Ein Los wird nach den gemessenen Stücken beurteilt. Wie viele zu entnehmen sind, steht vor der ersten Messung fest, und es zählt Stücke, nicht Messungen: Vier Stellen auf einem Stück sind ein Stück.
page-train-sampling-2 = Ein Stück über dem Grenzwert: Das Los wird nicht angenommen. Ein Stück unentschieden oder nicht ganz gemessen, zu wenige Stücke oder ein unbekannter Losumfang: sperren.
page-train-sampling-3 = „Annehmen“ heißt: Für die Stoffe des Screenings wurde an diesen Stücken nichts gefunden, was gegen das Los spricht. Das ist keine Konformitätserklärung, und Phthalate sieht die RFA nie.
page-train-sampling-source = IEC 62321-2:2021, 4.6: ein Ergebnis über dem Grenzwert in irgendeinem Teil, und das Ganze ist nicht konform (bestätigt). „Sperren“ und was dazu führt, sind unsere eigenen Regeln.
page-train-sampling-try = Ein unentschiedenes Stück sperrt das Los. Finden Sie die Werte, mit denen die Sperre entfiele, und die, mit denen es nicht angenommen würde.

page-train-sample = Was eine saubere Stichprobe offenlässt
page-train-sample-size = Stücke im Los
page-train-sample-taken = Gemessene Stücke
page-train-sample-told = { $n ->
    [0] Von { $taken } gemessenen Stück ist keines über dem Grenzwert: Dann ist es mit 95 % Sicherheit keines der { $size } im Los.
    [one] Von { $taken } gemessenen Stück ist keines über dem Grenzwert: Im Los kann es mit 95 % Sicherheit noch höchstens eines von { $size } sein.
   *[other] Von { $taken } gemessenen Stück ist keines über dem Grenzwert: Im Los können es mit 95 % Sicherheit noch höchstens { $n } von { $size } sein.
 }
page-train-sample-none = Es lassen sich nicht mehr Stück messen, als das Los hat.
page-step-clean-sample = fragen, was eine Stichprobe offenlässt

# The same in short, for the score sheet.
page-train-clause-material = IEC 62321-2:2021, 4.6; für Schichten und dünne Stücke unsere eigene Regel
page-train-clause-exemption = Richtlinie 2011/65/EU, Anhang III, Eintrag 6(c) (von einer Sekundärquelle wiedergegeben)
page-train-clause-trust = US EPA Method 6200, 9.4 und 9.5; unsere eigene Regel der zwei guten Kontrollen
page-train-clause-sampling = IEC 62321-2:2021, 4.6; was zum Sperren führt, ist unsere eigene Regel

page-delivery-01 = Sauberes Gehäuse
page-delivery-02 = Rotes Kabel
page-delivery-03 = Messingventil
page-delivery-04 = Flammschutzmittel
page-delivery-05 = PVC-Schlauch
page-delivery-06 = Kurze Messungen
page-delivery-07 = Kontrollprobe
page-delivery-08 = Vertauschtes Material
page-delivery-09 = Dünner Stichprobenplan
page-delivery-10 = Dezimalkomma
page-delivery-11 = Beschichtete Schrauben
page-delivery-12 = Dünne Folie
page-delivery-13 = Stahlstifte
page-delivery-14 = Wiederholungen
page-delivery-15 = Geänderte Mischung

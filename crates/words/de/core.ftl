# German: what the core says

# Terms, the same in every file:
#   accept = annehmen; hold = sperren, die Sperre (until a result ends it; never a rejection); not accept = nicht annehmen
#   disposition = Losentscheid; quarantine, keep apart = separieren; lift a hold = eine Sperre aufheben
#   below limit = unter dem Grenzwert; over limit = über dem Grenzwert; undecided = unentschieden
#   within (a limit) = innerhalb; not capable = nicht fähig; not applicable = nicht anwendbar
#   not measured = nicht gemessen; not detected = nicht nachgewiesen; detection limit = Nachweisgrenze
#   limit = Grenzwert; band = Band; low edge, high edge = unterer Rand, oberer Rand; guard band = Sicherheitsabstand
#   screening = Screening; XRF = RFA (Röntgenfluoreszenz); reference method = Referenzverfahren; laboratory = Labor
#   substance = Stoff; restricted = beschränkt; material = Werkstoff; homogeneous material = homogener Werkstoff
#   material class = Werkstoffklasse; plated, coated, passivated = metallisch überzogen, beschichtet, passiviert
#   composite = Verbundwerkstoff; plastic = Kunststoff; polymer = Polymer; bill of materials = Werkstoffliste
#   part = Teil; physical unit, piece = Stück; unit of measure = Einheit; sample = Probe; spot = Messstelle; id = Kennung
#   reading = Messung; repeat = Wiederholmessung; value = Wert; analyser, instrument = Gerät; measuring mode = Messmodus
#   check, check reading, check standard = Kontrolle, Kontrollmessung, Kontrollprobe; blank = Blindprobe
#   certified value = zertifizierter Wert; certificate = Zertifikat; trust, trusted = Verlässlichkeit, verlässlich
#   uncertainty = Unsicherheit; expanded uncertainty = erweiterte Messunsicherheit; one sigma = ein Sigma; chance = Wahrscheinlichkeit
#   printed error = ausgegebener Fehler; repeatability = Wiederholbarkeit; caution = Warnhinweis; doubt = Zweifel
#   lot = Los; lot size = Losumfang; sampling = Stichprobe; sampling plan = Stichprobenplan; conforming, nonconforming (pieces) = ohne Beanstandung, fehlerhaft
#   acceptance number = Annahmezahl; code letter = Kennbuchstabe; inspection level = Prüfniveau; severity = Prüfschärfe
#   normal, tightened, reduced inspection = normale, verschärfte, reduzierte Prüfung; switching rules = Wechselregeln
#   rule book = Regelwerk; entry = Eintrag; exemption = Ausnahme; claim = Anspruch, beanspruchen; renewal = Erneuerung
#   placing on the market = Inverkehrbringen; product category = Gerätekategorie; expire, expiry = ablaufen, Ablaufdatum
#   evidence = Beleg; initials = Kürzel; finding = Befund; act = Eingabe; notice = Meldung; advisory = nur Hinweis
#   row, line (of a file) = Zeile; refused = abgewiesen; set aside = beiseitegelegt; heading (row) = Überschrift, Kopfzeile
#   mapping = Zuordnung; digest = Prüfsumme; history = Verlauf; control chart = Regelkarte; line (X-ray) = Linie
#   declaration of conformity = Konformitätserklärung; decision rule = Entscheidungsregel
#   request to a laboratory = Anfrage an ein Labor; notice to a supplier = Mitteilung an einen Lieferanten; label = Etikett
#   limit of quantification = Bestimmungsgrenze; coverage factor = Erweiterungsfaktor; chain of custody = Übergabenachweis
#   issuer = Aussteller; customer = Auftraggeber; item = Prüfgegenstand; authorise (a report) = freigeben
#   external provider = externer Anbieter; opinions and interpretations = Meinungen und Interpretationen
#   one page, full report, annex = Kurzfassung, Gesamtbericht, Anhang; photograph = Foto; join (to a reading) = zuordnen
#   prove (a report) = nachprüfen; carry (data) = mitführen; give (a file to prove with) = vorlegen
#   bring, give (a file) = laden; review = auswerten, Auswertung; self-check = Selbstprüfung; cleared = entlastet
#   the number of an exemption or entry = Grenzwert der Ausnahme, des Eintrags; action level = Eingriffswert
#   confidence (of a plan) = Sicherheit; confidence (in a value) = wie sicher; restated by a secondary source = von einer
#   Sekundärquelle wiedergegeben; seed = Startwert; computer = Rechner; copy (of the page) = Exemplar
#   ruler = Lineal; bob = Senklot; whiskers = Fehlerbalken; first screen = Startansicht; mark (on a photograph) = Markierung
#   for training = zu Übungszwecken; beyond (a limit) = außerhalb; centre line of a chart = Mittellinie

## Outcomes

outcome-BL = unter dem Grenzwert
    .short = BL
outcome-X = unentschieden
    .short = X
outcome-OL = über dem Grenzwert
    .short = OL
outcome-not_measured = nicht gemessen
    .short = ungemessen
outcome-no_uncertainty = keine Unsicherheit
    .short = kein Sigma
outcome-detection_too_high = Nachweisgrenze zu hoch oder nicht angegeben
    .short = NWG hoch oder fehlt
outcome-not_capable = nicht fähig bei diesem Sigma
    .short = nicht fähig
outcome-not_applicable = nicht anwendbar
    .short = n. anw.

## Reasons of an outcome

reason-no_column = Die Datei hat keine Spalte für { $about }.
reason-cell_blank = Die Zelle für { $about } ist leer oder enthält nur einen Strich.
reason-cell_not_understood = Die Zelle für { $about } enthält Text, der kein Messwert ist.
reason-unit_not_stated = Die Einheit von { $about } ist nicht angegeben, die Zahl ist also noch kein Massenanteil.
reason-detection_limit_above_band = Nicht nachgewiesen, aber die Nachweisgrenze ist zu hoch, um „unter“ zu zeigen.
reason-limit_not_stated = Nicht nachgewiesen, und nirgends ist eine Nachweisgrenze angegeben.
reason-uncertainty_not_stated = Neben der Zahl steht keine Unsicherheit (leer oder null).
reason-three_sigma_reaches_band = Schon drei Sigma allein erreichen den unteren Rand des Bandes, diese Messung kann also „unter“ nicht zeigen. Für diesen Wert würde ein Sigma von höchstens { $enough } mg/kg genügen.
reason-three_sigma_reaches_band-inside = Schon drei Sigma allein erreichen den unteren Rand des Bandes, und der Wert selbst liegt auf oder über ihm: Keine Messzeit kann „unter“ zeigen.
reason-three_sigma_reaches_band-open = Schon drei Sigma allein erreichen den unteren Rand eines Bandes, diese Messung kann also „unter“ nicht zeigen.
reason-inside_band = Die Messung mit ihren drei Sigma berührt das Band „unentschieden“.
reason-element_only = Über dem unteren Rand. Die RFA sieht das Element, nicht den Stoff; das kann also nie „über“ sein.
reason-layer_not_resolved = Metallisch überzogen, beschichtet oder passiviert: Der Strahl mittelt über die Schicht und das, was darunter liegt.
reason-above_range = Über dem oberen Ende des Messbereichs des Geräts; dieses Ende liegt unter dem oberen Rand des Bandes.
reason-negative_beyond_error = So weit unter null, dass der Fehler es nicht erklären kann: Etwas hat die Messung um so viel verschoben, wie der Grenzwert beträgt, und kann ebenso viel von dem Stoff verbergen.
reason-composite_needs_detection_limit = Cadmium in einem Verbundwerkstoff ist nur „unter“, wenn es auf oder unter einer angegebenen Nachweisgrenze von höchstens 50 mg/kg liegt, mit drei Sigma von höchstens 50 mg/kg.
reason-repeats_disagree = Wiederholmessungen dieser Messstelle weichen stärker voneinander ab, als ihre Unsicherheiten zulassen; keine davon gilt als Wert der Messstelle.
reason-thin_sample = Zu dünn: Das Signal, das ein dickeres Stück mehr gäbe, reicht bis in das Band.
reason-not_applicable_in_metal = Gilt nicht für Metall.
reason-around_limit = Der Grenzwert liegt innerhalb von drei Sigma der Messung.
reason-censored_part = Von einem Anteil ist nur bekannt, dass er unter seiner Nachweisgrenze liegt; die Summe ist ein Bereich, der den Grenzwert einschließt.
reason-part_not_measured = Ein Anteil der Summe wurde nicht gemessen.
reason-part_without_uncertainty = Ein Anteil der Summe hat keine Unsicherheit.
reason-part_limit_not_stated = Ein Anteil der Summe wurde nicht nachgewiesen, und seine Nachweisgrenze ist nicht angegeben.
reason-one_part_alone = Ein Anteil allein liegt über dem Grenzwert der Summe.
reason-copper_or_glass_in_beam = Unter dem Grenzwert, aber in einem Verbundwerkstoff verdünnt Kupfer oder Glas im Strahl das Harz.

## Where the sigma came from

sigma-printed = ausgegebener Fehler, Vielfaches in der Datei angegeben
sigma-printed_multiple_unknown = ausgegebener Fehler, Vielfaches nicht angegeben: als ein Sigma gewertet, was das Band verbreitert
sigma-printed_multiple_set = ausgegebener Fehler, Vielfaches von Hand festgelegt
sigma-site_table = die eigene Wiederholbarkeit am Eingriffswert
sigma-repeats = was Wiederholmessungen der Messstelle zeigen; das ist mehr als ausgegeben
sigma-detection_limit = Nachweisgrenze geteilt durch drei
sigma-none = keines

## Material classes

class-polymer = Polymer
class-metal = Metall
class-composite = Verbundwerkstoff / Elektronik
class-plated = metallisch überzogen, beschichtet oder passiviert
class-unknown = Klasse nicht bekannt
class-from-declared = in der Datei angegeben
class-from-setting = von Hand festgelegt
class-from-not_stated = niemand hat sie angegeben
class-from-not_understood = das Wort der Datei ist keine hier bekannte Klasse
class-from-not_in_book = das Regelwerk hat dafür keine Bänder

## Substances

substance-Cd = Cadmium
substance-Pb = Blei
substance-Hg = Quecksilber
substance-Cr = Chrom (gesamt)
substance-Br = Brom (gesamt)
substance-Cl = Chlor
substance-total = Chlor + Brom
halogen-Cl = Cl
halogen-Br = Br als Halogen
halogen-total = Cl + Br
stands-for-Cr = steht für Cr(VI), das mit RFA nicht zu sehen ist
stands-for-Br = steht für PBB und PBDE, die mit RFA nicht zu sehen sind

## Dispositions

disposition-accept = annehmen für die Stoffe des Screenings
material-disposition-accept = nichts dagegen gefunden
material-disposition-hold = sperren
material-disposition-not_accept = nicht annehmen
disposition-hold = sperren
disposition-not_accept = nicht annehmen

## Reasons of a disposition, worst first, each with what ends it

lot-reason-over_limit = { $about } ist über dem Grenzwert bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Los separieren. Die schlechteste Probe nach dem Referenzverfahren im Labor prüfen lassen; nur dessen Ergebnis oder eine gültige Ausnahme kann daran etwas ändern.
lot-reason-halogen_over_limit = { $about } ist über dem Halogengrenzwert bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Los separieren. Nach dem Verfahren bestätigen, das bei jeder Messung genannt ist.
lot-reason-over_in_some_classes = { $about } ist in einigen der Werkstoffklassen, die infrage kommen, über dem Grenzwert, bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Werkstoffklasse angeben.
lot-reason-not_measured = { $about } wurde bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } nicht gemessen.
    .remedy = Messen, oder die Einheit angeben, wo die Zahl keine hat.
lot-reason-no_uncertainty = { $about } hat bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } keine Unsicherheit.
    .remedy = Fehlerspalte mit exportieren, oder eine eigene Tabelle der Wiederholbarkeit angeben.
lot-reason-detection_too_high = { $about }: Die Nachweisgrenze ist zu hoch oder nicht angegeben, bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Länger messen, um die Nachweisgrenze zu senken, oder sie mit exportieren.
lot-reason-not_capable = { $about }: Das Sigma ist zu groß, um „unter“ zu zeigen, bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Länger messen, oder das Referenzverfahren anwenden.
lot-reason-undecided = { $about } ist unentschieden bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Dem nächsten Schritt jeder Messung folgen: länger messen, andere Messstelle oder Referenzverfahren.
lot-reason-halogen_open = { $about } ist nach dem Halogen-Regelwerk offen bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Dem nächsten Schritt jeder Messung folgen.
lot-reason-file_not_read = Die Datei „{ $about }“ wurde nicht gelesen, oder keine ihrer Zeilen; es kann etwas Gemessenes darin stehen.
    .remedy = Die Datei unter „Was kam an?“ ansehen: sie in einer lesbaren Form laden oder aus der Prüfung herausnehmen.
lot-reason-units_not_stated = Bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } ist nicht angegeben, an welchem Stück gemessen wurde; die vom Plan verlangten Stücke lassen sich also nicht zählen.
    .remedy = In einer Spalte „Unit“ zu jeder Messung das Stück nennen.
lot-reason-rows_refused = { $count ->
        [one] Eine Zeile der Quelle wurde
       *[other] { $count } Zeilen der Quelle wurden
    } abgewiesen; hier kann etwas Gemessenes fehlen.
    .remedy = Abgewiesene Zeilen ansehen, Datei berichtigen oder erneut messen.
lot-reason-layer_among_classes = Die Messungen dieses Werkstoffs unterscheiden sich in der Klasse, und { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } { $count ->
        [one] gilt
       *[other] gelten
    } einer Schicht (metallisch überzogen, beschichtet oder passiviert); was durch eine Schicht gemessen wurde, bleibt unentschieden.
    .remedy = Der Schicht und dem blanken Werkstoff in der Datei zwei Namen geben und sie erneut laden, oder für beide die überzogene Klasse (plated) angeben.
lot-reason-class_unknown = Die Werkstoffklasse von { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } ist nicht bekannt, oder Messungen eines Werkstoffs nennen verschiedene; beurteilt wurde nach jeder Klasse, und das schlechteste Ergebnis zählt.
    .remedy = Werkstoffklasse angeben. Zwei Werkstoffe brauchen zwei Namen.
lot-reason-thickness_not_stated = Cadmium oder Blei ist unter dem Grenzwert in Kunststoff oder Leichtmetall, dessen Dicke nicht angegeben ist ({ $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }); ein dünnes Stück zeigt weniger, als es enthält.
    .remedy = Dicke in Millimetern angeben.
lot-reason-material_not_measured = Werkstoff „{ $about }“ des Teils wurde nicht gemessen: Keine Messung davon zählt.
    .remedy = Messen.
lot-reason-bill_of_materials_none = Für { $count ->
        [one] ein Teil
       *[other] { $count } Teile
    } liegt keine Werkstoffliste vor; es können also Werkstoffe ungemessen sein.
    .remedy = Die homogenen Werkstoffe des Teils auflisten.
lot-reason-material_not_listed = „{ $about }“ wurde gemessen und steht nicht auf der Werkstoffliste des Teils: Das ist vielleicht nicht der vereinbarte Werkstoff.
    .remedy = Klären, was es ist; die Werkstoffliste berichtigen oder die Änderung zurückweisen.
lot-reason-sampling_none = Der Losumfang oder die vom Plan verlangte Stückzahl ist nicht angegeben; nichts zeigt also, dass genug gemessen wurde.
    .remedy = Losumfang und die vom Plan verlangte Stückzahl angeben.
lot-reason-sampling_too_few = Vom am wenigsten geprüften Werkstoff { $count ->
        [one] wurde ein Stück
       *[other] wurden { $count } Stück
    } gemessen; der Plan verlangt { $of }.
    .remedy = Die fehlenden Stücke messen.
lot-reason-multiple_not_stated = Das Vielfache der ausgegebenen Fehler ist für { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } nicht angegeben; als ein Sigma gewertet, was das Band verbreitert.
    .remedy = Angeben, ob die Fehlerspalte ein, zwei oder drei Sigma ist.
lot-reason-halogen_book_not_loaded = Die Prüfung nennt das Halogen-Regelwerk „{ $about }“, das nicht geladen ist.
    .remedy = Die Datei des Regelwerks laden, oder ein geladenes nennen.
reason-advisory = (wird gedruckt, sperrt nicht)

## What screening does not answer

not-assessed-phthalates = Phthalate (DEHP, BBP, DBP, DIBP): Die RFA gibt gar keine Antwort (IEC 62321-8).
not-assessed-pbb_pbde = PBB und PBDE: nur durch wenig Brom ausgeschlossen, nie gemessen (IEC 62321-6). Wenig Brom zeigt hier nicht, dass der Grenzwert von 10 mg/kg für PBDE der Verordnung (EU) 2019/1021 eingehalten ist.
not-assessed-cr6 = Cr(VI): nur durch wenig Gesamtchrom ausgeschlossen, nie gemessen (IEC 62321-7-1, -7-2). Auf einer passivierten oder metallisch überzogenen Oberfläche sagt Gesamtchrom nichts.
not-assessed-exemptions = Ausnahmen, die niemand beansprucht hat: Keine wird angewandt, wenn kein Anspruch sie nennt, mit Beleg und dem Kürzel einer zweiten Person.
not-assessed-change = Werkstoffe, Schichten und Teile, die nicht gemessen wurden.

## Next steps

next-measure_element = { $about } messen.
next-state_unit = Einheit der Spalte { $about } angeben.
next-read_cell_again = Die Zelle in der Datei ansehen: berichtigen oder erneut messen.
next-state_uncertainty = Unsicherheit von { $about } mit exportieren, oder eine eigene Tabelle der Wiederholbarkeit angeben.
next-state_detection_limit = Nachweisgrenze von { $about } mit exportieren.
next-state_class = Werkstoffklasse angeben.
next-measure_longer = Diese Messstelle insgesamt etwa { $seconds } s messen (Strahl nicht angegeben) für eine Entscheidung mit 50 % Wahrscheinlichkeit, { $surely } s für 90 %; eine Schätzung.
next-measure_longer_even_only = Diese Messstelle insgesamt etwa { $seconds } s messen (Strahl nicht angegeben) für eine Entscheidung mit 50 % Wahrscheinlichkeit; für 90 % wären mehr als { $cap } s nötig; eine Schätzung.
next-another_spot = Eine andere Messstelle messen: Das zeigt, ob der Werkstoff ungleichmäßig ist. Es kann mehr gefunden werden, entlastet wird diese Stelle dadurch nie.
next-repeat_again = Die Messstelle reinigen, das Stück flach auflegen und erneut messen: Die Messungen widersprechen einander.
next-find_shift = Feststellen, was die Messung verschoben hat (Kalibrierung, Untergrund, Einheit), dann die Messstelle erneut messen.
next-lower_detection_limit = Länger messen: Vierfache Zeit halbiert die Nachweisgrenze.
next-thicker_piece = Stücke stapeln oder ein dickeres messen.
next-separate_layers = Die Schicht von dem trennen, was darunter liegt, oder beides als eigenen Werkstoff messen.
next-laboratory = Ins Labor geben; das Regelwerk nennt kein Verfahren.
next-reference_method = Labor: { $method }, { $technique }.

## Intake: what a column was taken for, and why

role-value = Wert
role-uncertainty = Unsicherheit
role-detection_limit = Nachweisgrenze
role-id = Kennung der Probe oder Messung
role-unit = Stück
role-spot = Messstelle
role-part = Teil
role-material = Name des Werkstoffs
role-lot = Los
role-supplier = Lieferant
role-class = Werkstoffklasse
role-time = Datum und Uhrzeit
role-seconds = Messzeit
role-instrument = Gerät
role-mode = Messmodus
role-operator = Bediener
role-thickness = Dicke
role-note = Bemerkung
role-spectrum = Spektrum oder Filter
role-photo = Foto
role-element = Name des Elements
role-below_mark = Zeichen für „unter Nachweisgrenze“
role-error_multiple = für wie viele Sigma die Unsicherheit steht
role-time_of_day = Uhrzeit
role-unit_of_measure = Einheit der Zeile
role-unused = nicht verwendet
evidence-element_heading = die Überschrift nennt das Element, und jedes andere Wort darin ist verstanden
evidence-element_in_another_case = die Überschrift ist ein Element in anderer Groß- und Kleinschreibung, die daneben ebenso
evidence-oxide_heading = die Überschrift ist ein Oxid; seine Zahlen werden mit den Atommassen in das Element umgerechnet
evidence-holds_elements = die Zellen nennen Elemente
evidence-oxide_beside_element = das Oxid eines Elements, das eine eigene Spalte hat; nur verwendet, wo jene Spalte leer ist
evidence-told = jemand hat es so angegeben
evidence-follows_element = eine Fehlerüberschrift direkt nach der Spalte des Elements
evidence-known_heading = die Überschrift ist ein bekanntes Wort
evidence-class_words_only = jede Zelle ist ein Wort für eine Werkstoffklasse
evidence-holds_units = die Zellen enthalten Einheiten
evidence-holds_seconds = die Überschrift nennt eine Zeit, und die Zellen sind kleine Zahlen und kein Datum
evidence-unit_not_understood = die Überschrift nennt das Element, aber die Einheit ist hier nicht bekannt; die Zahlen bleiben Text
evidence-words_not_understood = die Überschrift beginnt wie ein Element, hat aber Wörter, die nicht verstanden wurden
evidence-already_taken = eine andere Spalte hat diese Bedeutung schon
evidence-not_known = die Überschrift ist hier nicht bekannt
confidence-sure = sicher
confidence-likely = wahrscheinlich
confidence-look = bitte ansehen
layout-wide = je Messung eine Zeile, je Element eine Spalte
layout-long = je Element einer Messung eine Zeile
layout-turned = quer: je Messung eine Spalte, je Element eine Zeile
layout-joined = mehrere Zeilen je Messung, hier zusammengeführt
encoding-by-byte_order_mark = durch die ersten Bytes der Datei angegeben
encoding-by-valid_utf8 = jedes Byte passt dazu
encoding-by-byte_counts = daran erkannt, wo die Nullbytes stehen
encoding-by-words_found = so gelesen, erscheinen Wörter aus Ergebnistabellen
encoding-by-guess = nur aus den Bytes geraten: bitte ansehen, ob Namen und Zeichen stimmen
encoding-by-told = jemand hat es so angegeben
id-template-no_field = Noch ist nichts benannt: von mindestens einem Abschnitt sagen, was er ist.
id-template-unknown_field = Ein Name ist hier nicht bekannt.
id-template-field_twice = Zwei Abschnitte sind gleich benannt.
id-template-nothing_between = Zwischen zwei Abschnitten steht nichts, also lässt sich nicht sagen, wo der eine endet.
id-template-open_brace = Die Kennung enthält eine geschweifte Klammer, die ein Muster nicht zeigen kann.
id-template-too_many_fields = Die Kennung hat mehr Abschnitte, als ein Muster haben darf.
id-template-piece_not_in_id = Ein Abschnitt kommt in der Kennung nicht vor.
id-template-separator_in_piece = Was die Abschnitte trennt, steht auch in einem von ihnen; ohne Raten lässt sich die Kennung also nicht zerlegen.
relative-to-value = in Prozent des Werts
sigmas = { $multiple } Sigma
set-aside-blank = leere Zeilen
set-aside-heading = in der Tabelle wiederholte Überschriften
set-aside-remark = keine Probe: Bemerkung, Stichwort mit Wert, Statistik oder Grenzwert
set-aside-unit_row = Zeilen mit Einheiten

## Intake: notices and refusals, each with its remedy

notice-unreadable = Die Datei konnte nicht gelesen werden: { $found }
    .remedy = Noch einmal vom Stick kopieren und erneut versuchen.
notice-empty_file = Die Datei ist leer.
    .remedy = Noch einmal exportieren; hier ging nichts verloren, weil nichts darin stand.
notice-header_only = Die Datei hat eine Kopfzeile und keine Zeilen darunter.
    .remedy = Mit den Messungen noch einmal exportieren.
notice-not_text = Die Bytes sind kein Text; das ist keine Tabelle, wie die Datei auch heißt.
    .remedy = Die Ergebnisse als CSV-Text exportieren.
notice-workbook_broken = { $found ->
        [no_sheet] Die Arbeitsmappe hat kein Blatt mit Zellen.
       *[damaged] Die Arbeitsmappe ist abgeschnitten oder beschädigt, oder es ist keine.
    }
    .remedy = In einem Tabellenprogramm öffnen, neu als XLSX oder CSV speichern und diese Datei laden.
notice-workbook_not_read = Die Arbeitsmappe ist durch ein Kennwort gesperrt oder in einem alten Format, das hier nicht gelesen wird.
    .remedy = Ohne Kennwort als XLSX, ODS oder CSV speichern und diese Datei laden.
notice-workbook_too_large = Die Arbeitsmappe enthält mehr, als hier entpackt wird: { $found ->
        [ratio] Sie ist viel dichter gepackt, als Zellen es sind.
        [cells] mehr als 20 Millionen Zellen.
       *[part_size] mehr als 256 MiB in einem Teil.
    }
    .remedy = Das Blatt mit den Ergebnissen als CSV speichern und diese Datei laden.
notice-other_sheets = Blatt „{ $found }“ wurde gelesen; { $rows } { $rows ->
        [one] anderes Blatt
       *[other] andere Blätter
    } nicht.
    .remedy = Stehen die Ergebnisse auf einem anderen Blatt, dieses für die Datei wählen.
notice-sheet_not_there = Die Arbeitsmappe hat kein Blatt „{ $found }“.
    .remedy = Eines ihrer Blätter für diese Datei wählen.
notice-archive_broken = Das Archiv ist abgeschnitten oder beschädigt, oder es ist keines.
    .remedy = Entpacken und die Dateien laden, oder noch einmal schicken lassen.
notice-archive_too_large = Hier ist mehr gepackt, als entpackt wird: { $found ->
        [ratio] Es ist viel dichter gepackt, als Ergebnisse es sind.
        [files] mehr als 20 000 Dateien.
        [entry_size] eine Datei von mehr als 512 MiB.
        [packed_size] mehr als 1 GiB in gepackter Form.
       *[archive_size] mehr als 2 GiB insgesamt.
    }
    .remedy = Wenn Sie der Herkunft vertrauen: entpacken und die Dateien laden.
notice-entry_not_read = Die Datei im Archiv konnte nicht entpackt werden: { $found ->
        [password] Sie ist durch ein Kennwort gesperrt.
        [method] Sie ist mit einem Verfahren gepackt, das hier nicht gelesen wird.
       *[damaged] Sie ist beschädigt.
    }
    .remedy = Das Archiv mit seinem Kennwort entpacken und die Dateien laden.
notice-archive_in_archive = Ein Archiv in einem Archiv wird nicht entpackt.
    .remedy = Das äußere Archiv entpacken und das innere laden.
notice-encoding_inferred = Der Text wurde als { $found } gelesen; die Datei gibt es nicht an.
    .remedy = Sehen Namen falsch aus, die Kodierung für diese Datei wählen.
notice-bytes_no_character = Bytes, die in der verwendeten Kodierung kein Zeichen sind, zuerst in dieser Zeile; insgesamt { $rows }, jedes als „�“ gezeigt.
    .remedy = Sehen Namen falsch aus, die Kodierung für diese Datei wählen.
notice-no_element_column = Es wurde keine Spalte eines Elements gefunden, etwa „Pb (mg/kg)“. { $rows ->
        [one] Ihre eine Zeile ist
       *[other] Alle { $rows } Zeilen sind
    } abgewiesen.
    .remedy = Prüfen, ob die Datei eine Kopfzeile mit Elementsymbolen und Zeilen darunter hat.
notice-column_twice = „{ $found }“: Zwei Spalten stehen für dasselbe Element. Wo beide etwas enthalten, zählt die Zelle als nicht gemessen.
    .remedy = Eine der beiden entfernen oder umbenennen.
notice-heading_not_understood = „{ $found }“ beginnt wie ein Element, aber die anderen Wörter wurden nicht verstanden; die Spalte wird also nicht verwendet.
    .remedy = Ist es ein Massenanteil, so benennen: „Pb mg/kg“.
notice-quote_left_open = In dieser Zeile beginnt ein Anführungszeichen, das nie geschlossen wird, oder erst Zeilen später, mit scheinbar ganzen Zeilen dazwischen. Was es verschluckt hat, ist abgewiesen; danach wird weitergelesen.
    .remedy = Das Anführungszeichen schließen oder entfernen.
notice-line_too_long = Diese Zeile ist länger als jede Tabellenzeile (über 1 MiB). Sie ist abgewiesen; bei der nächsten wird weitergelesen.
    .remedy = Die Zeile in der Datei ansehen; vielleicht fehlt ein Zeilenumbruch.
notice-row_too_long = Die Zeile hat mehr Zellen als die Kopfzeile, als erste „{ $found }“; ihre Zellen können also in falschen Spalten stehen. Sie ist abgewiesen.
    .remedy = Nach einem Trennzeichen in einer Zelle suchen, die nicht in Anführungszeichen steht.
notice-under_unknown_heading = Die Zeile steht unter einer Kopfzeile, die nicht verstanden wurde; was ihre Zahlen bedeuten, ist also offen. Sie ist abgewiesen.
    .remedy = Die Kopfzeile darüber ansehen: Elemente etwa als „Pb mg/kg“ benennen, oder die Tabelle als eigene Datei laden.
notice-far_below_zero = „{ $found }“ liegt mehr als drei ausgegebene Fehler unter null: vielleicht ein Zeichen für einen fehlenden Wert oder eine falsche Kalibrierung. Es bleibt als Zahl stehen.
    .remedy = Die Zelle ansehen; steht sie für einen fehlenden Wert, leer lassen.
notice-row_short = { $rows } { $rows ->
        [one] Zeile hat
       *[other] Zeilen haben
    } weniger Zellen als die Kopfzeile; die fehlenden Zellen zählen als leer.
    .remedy = Prüfen, ob die Zeilen abgeschnitten wurden.
notice-nothing_usable = Die Zeile hat in keiner verwendeten Spalte etwas.
    .remedy = Entfernen, oder ihre Spalten benennen.
notice-not_utf8 = Namen in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    } sind nicht in UTF-8 und wurden als Windows-1252 gelesen (zuerst „{ $found }“).
    .remedy = Sieht ein Name falsch aus, die Datei als CSV (UTF-8) speichern und neu laden.
notice-cell_not_understood = „{ $found }“ ist kein Messwert. Die Zelle zählt als nicht gemessen; der Rest ihrer Zeile wird verwendet.
    .remedy = Die Zelle berichtigen oder erneut messen.
notice-number_out_of_range = „{ $found }“ liegt jenseits jedes Massenanteils. Die Zelle zählt als nicht gemessen; der Rest ihrer Zeile wird verwendet.
    .remedy = Die Zahl und ihre Einheit prüfen.
notice-more_than_whole = „{ $found }“ ist mehr als die ganze Probe (über 1 000 000 mg/kg).
    .remedy = Die Einheit der Spalte prüfen.
notice-mark_unclear = In „{ $found }“ kann das Komma oder der Punkt Dezimal- oder Tausenderzeichen sein. Die Zelle zählt als nicht gemessen.
    .remedy = Zahlen ohne Tausenderzeichen schreiben, oder das Dezimalzeichen der Datei angeben.
notice-error_not_understood = Die Unsicherheit „{ $found }“ ist keine brauchbare Zahl. Der Wert bleibt ohne Unsicherheit.
    .remedy = Die Zelle berichtigen.
notice-error_unit_unclear = Die Einheit der Unsicherheit ist in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    } nicht zu erkennen: Ein Prozentzeichen kann Prozent des Werts bedeuten. Die Werte bleiben ohne Unsicherheit.
    .remedy = Die Spalte mit ihrer Einheit benennen, etwa „Pb u mg/kg (1s)“.
notice-unit_not_stated = Die Einheit ist in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    } nicht angegeben (zuerst „{ $found }“). Die Zahlen bleiben Text und zählen als nicht gemessen.
    .remedy = Die Einheit der Datei angeben.
notice-unit_not_known = „{ $found }“ ist keine hier bekannte Einheit eines Massenanteils.
    .remedy = mg/kg, ppm, %, g/kg, ug/g oder ppb verwenden.
notice-multiple_not_stated = Für wie viele Sigma die Fehlerspalte steht, ist nicht angegeben ({ $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }). Als eines gewertet, was das Band „unentschieden“ verbreitert und nie etwas entlastet.
    .remedy = Für diese Datei ein, zwei oder drei Sigma angeben.
notice-limit_in_error_column = „Nicht nachgewiesen“ mit einer Zahl in der Fehlerspalte, in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    } (zuerst „{ $found }“): Die Zahl wurde gelesen als { $reading ->
        [one_error] ein ausgegebener Fehler, drei Sigma davon als Nachweisgrenze
       *[limit] Nachweisgrenze
    }.
    .remedy = Bedeutet die Spalte dort das andere, dies für diese Datei angeben.
notice-class_not_understood = „{ $found }“ ist keine hier bekannte Werkstoffklasse ({ $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }). Die Klasse zählt als nicht bekannt.
    .remedy = Die Wörter polymer, metal, composite oder plated verwenden, oder die Klasse festlegen.
notice-same_as_another = Die Datei hat dieselben Bytes wie eine andere und wurde mit ihr zusammengeführt.
    .remedy = Nichts zu tun.
notice-too_many_columns = Eine Zeile hat { $found } Spalten, mehr als jede Ergebnistabelle. Die Datei wird nicht gelesen.
    .remedy = Die Datei ansehen; noch einmal exportieren, oder nur die Tabelle daraus laden.
notice-element_not_understood = „{ $found }“ ist kein hier bekanntes Element. Die Zeile misst etwas, daher ist sie abgewiesen.
    .remedy = Ist es ein Element, dies für die Spalte angeben oder den Namen berichtigen.
notice-element_twice = Dasselbe Element steht in einer Messung zweimal („{ $found }“), in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }. Welches gemeint ist, lässt sich nicht sagen; es zählt also als nicht gemessen.
    .remedy = Angeben, welche Spalte oder welches Spektrum gemeint ist, oder das andere entfernen.
notice-summary_row = „{ $found }“ nennt keine Probe: Es fasst andere zusammen oder nennt einen Grenzwert, in { $rows } { $rows ->
        [one] Zeile oder Spalte
       *[other] Zeilen oder Spalten
    }. Es ist beiseitegelegt und keine Messung.
    .remedy = Ist es eine Probe, ihr einen anderen Namen geben.
notice-two_readings_in_row = Die Zeile nennt unter derselben Überschrift auch „{ $found }“: Zwei Tabellen stehen nebeneinander. Sie ist abgewiesen, weil ein Wert an die falsche Probe geraten könnte.
    .remedy = Die Tabellen untereinander stellen oder in eigene Dateien.
notice-stated_twice = „{ $found }“ widerspricht einer früheren Zeile. Von dort an wird keine der beiden Angaben verwendet.
    .remedy = Für diese Datei die Einheit oder das Vielfache von Sigma angeben.
notice-oxide_converted = Zahlen von { $found } sind Massenanteile des Oxids; sie wurden mit den Atommassen in das Element umgerechnet.
    .remedy = Nichts zu tun, wenn die Überschrift stimmt.
notice-date_order_unclear = „{ $found }“ kann Tag und Monat oder Monat und Tag sein, in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }. Die Daten bleiben, wie sie geschrieben sind.
    .remedy = Für diese Datei die Reihenfolge von Tag und Monat angeben.
notice-date_not_understood = „{ $found }“ ist kein hier bekanntes Datum, in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }. Es bleibt, wie es geschrieben ist.
    .remedy = Das Datum berichtigen, oder die Reihenfolge von Tag und Monat angeben.
notice-id_pattern_differs = „{ $found }“ passt nicht zum gezeigten Muster für zusammengesetzte Kennungen, in { $rows } { $rows ->
        [one] Zeile
       *[other] Zeilen
    }. Die Kennung bleibt ganz.
    .remedy = Das Muster an einem anderen Beispiel zeigen, oder die Kennung berichtigen.
notice-stated_above = „{ $found }“, über der Tabelle angegeben, gilt für jede Messung darunter, die selbst nichts angibt.
    .remedy = Gilt es nicht für alle, die Spalte von Hand festlegen.
notice-table_turned = Die Tabelle liegt quer: Jede Spalte ist eine Messung, jede Zeile ein Element.
    .remedy = Nichts zu tun, wenn das stimmt.
notice-rows_joined = { $rows } Zeilen, je eine für ein Spektrum oder einen Filter, wurden zu Messungen mit gleicher Probe und Zeit zusammengeführt.
    .remedy = Sind es eigene Messungen, die Spektrumspalte als nicht verwendet kennzeichnen.
notice-mapped_by_hand = Für diese Überschriften { $rows ->
        [one] wurde { $rows } Spalte
       *[other] wurden { $rows } Spalten
    } von Hand festgelegt.
    .remedy = Die Eingabe zurücknehmen, um zu sehen, was ohne sie gefunden wird.
notice-mapping_differs = Eine von Hand gemachte Zuordnung nennt Spalte oder Zeile { $found }, die diese Tabelle nicht hat. Sie wurde nicht verwendet.
    .remedy = Die Spalten dieser Datei ansehen und neu festlegen.
notice-duplicate_reading = { $rows ->
        [one] { $rows } Messung, hier, steht
       *[other] { $rows } Messungen, die erste davon hier, stehen
    } auch in { $found } und { $rows ->
        [one] sagt
       *[other] sagen
    } hier nicht mehr als dort. Einmal gezählt.
    .remedy = Nichts zu tun. Sind es eigene Messungen, jeder eine eigene Kennung, Messstelle oder Zeit geben.
notice-same_reading_in_parts = { $rows ->
        [one] { $rows } Messung, hier, steht
       *[other] { $rows } Messungen, die erste davon hier, stehen
    } auch in { $found }, und jede der beiden Fassungen sagt etwas, was die andere nicht sagt. Alle bleiben erhalten, die Messung zählt also mehrfach.
    .remedy = Eine Datei laden, die alles enthält, oder die falsche herausnehmen. Sind es eigene Messungen, jeder eine eigene Kennung, Messstelle oder Zeit geben.
notice-new_header = Hier beginnt eine neue Kopfzeile mit anderen Spalten.
    .remedy = Prüfen, ob die Spalten darunter verstanden wurden.
notice-preamble = { $found } Zeilen vor der Kopfzeile bleiben als Bemerkungen erhalten.
    .remedy = Nichts zu tun.
notice-skipped = Keine Ergebnistabelle; übergangen.
    .remedy = Nichts zu tun. Einstellungen und Regelwerke werden für sich geladen, nicht als Ergebnisse.

## Settings, mapping and rule book files

problem-malformed = Diese Zeile lässt sich nicht lesen: { $found }
    .remedy = Die Zeile berichtigen; ein Text steht in Anführungszeichen.
problem-wrong_schema = „{ $found }“ ist keine Art von Datei, die hier gelesen wird.
    .remedy = Die erste Zeile muss lauten: schema = "{ $expected }".
problem-unknown_key = Diesen Schlüssel gibt es hier nicht: { $found }
    .remedy = Die Schreibweise berichtigen oder die Zeile herausnehmen. Die in dieser Tabelle bekannten Schlüssel stehen in Klammern.
problem-wrong_kind = „{ $found }“ ist nicht die Art von Wert, die hierher gehört.
    .remedy = Ein Text steht in Anführungszeichen, eine Liste in eckigen Klammern, eine Tabelle in geschweiften Klammern oder unter eigener Überschrift.
problem-unknown_unit = „{ $found }“ ist keine hier bekannte Einheit eines Massenanteils.
    .remedy = mg/kg, %, g/kg oder ug/kg verwenden.
problem-not_a_quantity = „{ $found }“ ist keine Zahl mit Einheit.
    .remedy = So schreiben: "700 mg/kg".
problem-unknown_name = „{ $found }“ ist kein hier bekannter Name.
    .remedy = Die Schreibweise berichtigen. Was auf der Seite festgelegt und unter „Einstellungen“ heruntergeladen wird, hat jeden Namen richtig; alle Namen stehen in contract.md.
problem-band_upside_down = Der untere Rand des Bandes liegt nicht unter seinem oberen Rand: { $found }.
    .remedy = Die beiden Ränder berichtigen.
problem-not_above_zero = „{ $found }“ ist nicht größer als null.
    .remedy = Ein Grenzwert muss größer als null sein.
problem-twice = „{ $found }“ steht zweimal da.
    .remedy = Eine der Zeilen entfernen.
problem-missing = „{ $found }“ fehlt.
    .remedy = Ergänzen.
problem-out_of_range = „{ $found }“ liegt außerhalb des Möglichen.
    .remedy = Nachsehen, ob die Zahl verschrieben ist. Was hier möglich ist, steht in contract.md.
problem-nothing_in_book = Das Regelwerk „{ $found }“ hat weder Bänder noch Halogengrenzwerte.
    .remedy = Eine Tabelle ergänzen.
problem-no_source = Eine Zeile hat keine Quelle oder keinen Abschnitt.
    .remedy = Jeder Wert muss sein Dokument und dessen Abschnitt nennen.
problem-aql_not_in_table = „{ $found }“ nennt keine AQL der Stichprobentabellen.
    .remedy = Eine davon verwenden: 0.010 0.015 0.025 0.040 0.065 0.10 0.15 0.25 0.40 0.65 1.0 1.5 2.5 4.0 6.5 10 15 25 40 65 100 150 250 400 650 1000.

## Acts in words

act-class = Werkstoffklasse festgelegt: { $value }
act-sigma_multiple = ausgegebene Fehler gelten als { $value } Sigma
act-unit_of_measure = Einheit der Werte ohne Einheit festgelegt: { $value }
act-decimal_mark = Dezimalzeichen festgelegt: „{ $value }“
act-detection_in_error_column = Zahl in der Fehlerspalte, wo nichts nachgewiesen ist: { $value ->
        [one_error] ein ausgegebener Fehler
       *[limit] die Nachweisgrenze
    }
act-column_role = Spalte von Hand festgelegt: { $value }
act-column_role_named = Spalte { $column } „{ $heading }“ gilt als: { $role }
act-header_line = { $value ->
        [none] keine Kopfzeile; Spalten nach ihren Nummern benannt
       *[other] Kopfzeile festgelegt: Zeile { $value }
    }
act-text_encoding = Text gelesen als { $value }
act-sheet = Blatt „{ $value }“ gewählt
act-date_order = Reihenfolge in Daten festgelegt: { $value ->
        [ymd] Jahr, Monat, Tag
        [dmy] Tag, Monat, Jahr
       *[mdy] Monat, Tag, Jahr
    }
act-id_pattern = zusammengesetzte Kennungen sind so aufgebaut: { $value }
act-halogen_book = Halogene zählen nach { $value }
act-trust = fehlende Kontrollmessungen: { $value }
act-sampling = fehlender Stichprobenplan: { $value }
act-materials = fehlende Werkstoffliste: { $value }
act-thickness_mm = Dicke festgelegt: { $value } mm
act-lot_size = Losumfang { $value }
act-units_to_take = vom Plan verlangte Stückzahl: { $value }
act-bill_of_materials = homogene Werkstoffe aufgelistet: { $value }
act-category = Gerätekategorie { $value }
act-placing_date = Inverkehrbringen am { $value }
act-reviewed_at = ausgewertet am { $value }
act-inspector = Prüfer { $value }
act-place = Ort { $value }
act-title = Titel { $value }
act-check_samples = Kontrollproben: { $value }
act-site_sigma = eigene Wiederholbarkeit: { $value }
act-relative_sigma = { $value } % des Werts quadratisch zu jedem Sigma addiert
act-repeats = Wiederholmessungen einer Messstelle: { $value }
act-uncertainty_holds = die Unsicherheiten enthalten: { $value }
act-undo = Eingabe { $value } zurückgenommen
target-inspection = ganze Prüfung
target-source = Datei { $name }
target-header = Tabellen mit den Überschriften { $name }
target-lot = Los { $lot } von { $supplier }
target-lot_unnamed = alles ohne Angabe von Los und Lieferant
target-part = Teil { $part }
target-material = Werkstoff { $material } des Teils { $part }

## Summary lines

summary-no_readings = Noch keine Messungen.
summary-counts = { $readings ->
        [one] Eine Messung
       *[other] { $readings } Messungen
    } in { $lots ->
        [one] einem Los
       *[other] { $lots } Losen
    }{ $aside ->
        [0] { "" }
       *[other] { " " }({ $aside } von Hand beiseitegelegt)
    }{ $checks ->
        [0] { "" }
        [one] { " " }und eine Kontrollmessung
       *[other] { " " }und { $checks } Kontrollmessungen
    }: { $accept } annehmen (für die Stoffe des Screenings), { $hold } sperren, { $not_accept } nicht annehmen.
summary-only_checks = Alle Messungen sind als Kontrollen benannt: Von einem Los wurde nichts gemessen.
summary-all_set_aside = Alle Messungen sind beiseitegelegt: Keine sagt etwas über ein Los.
summary-readings_below = Was die Messungen sagen: Jeder Stoff des Screenings ist unter dem Grenzwert oder nicht anwendbar.
summary-readings_say = Was die Messungen sagen: { $list }.
summary-over_limit = { $about } über dem Grenzwert bei { $count }
summary-halogen_over_limit = { $about } über dem Halogengrenzwert bei { $count }
summary-over_in_some_classes = { $about } in einigen Klassen über dem Grenzwert bei { $count }
summary-not_measured = { $about } nicht gemessen bei { $count }
summary-no_uncertainty = { $about } ohne Unsicherheit bei { $count }
summary-detection_too_high = { $about } Nachweisgrenze zu hoch oder nicht angegeben bei { $count }
summary-not_capable = { $about } nicht fähig bei { $count }
summary-undecided = { $about } unentschieden bei { $count }
summary-halogen_open = { $about } offen nach dem Halogen-Regelwerk bei { $count }
summary-evidence_none = Belege: Nichts, was fehlt, sperrt ein Los.
summary-evidence_advisory = Nicht angegeben, sperrt aber nicht: { $list }.
summary-evidence_missing = Zum Annehmen fehlen Belege: { $list }.
evidence-short-file_not_read = eine Datei, die nicht gelesen wurde
evidence-short-units_not_stated = das Stück jeder Messung
evidence-short-rows_refused = abgewiesene Zeilen, die anzusehen sind
evidence-short-layer_among_classes = Schicht und blanker Werkstoff unter zwei Namen
evidence-short-class_unknown = Werkstoffklasse
evidence-short-thickness_not_stated = Dicke
evidence-short-material_not_measured = ungemessene Werkstoffe
evidence-short-bill_of_materials_none = Werkstoffliste
evidence-short-material_not_listed = ein Werkstoff, der nicht auf der Liste steht
evidence-short-sampling_none = Losumfang und Stichprobenplan
evidence-short-sampling_too_few = mehr Stücke
evidence-short-multiple_not_stated = Vielfaches von Sigma
evidence-short-halogen_book_not_loaded = Halogen-Regelwerk
not-stated = nicht angegeben
no-lot = Los nicht angegeben

## Values

value-number = { $value } mg/kg ± { $sigma } (1s)
value-number_bare = { $value } mg/kg, keine Unsicherheit
value-below = < { $value } mg/kg
value-above = > { $value } mg/kg
value-not_detected = nicht nachgewiesen
value-not_measured = –
value-text = „{ $written }“
value-interval = { $low } bis { $high } mg/kg
value-at_least = mindestens { $low } mg/kg

## Working, in words

working-below = { $x } + { $k } × { $sigma } = { $end } mg/kg, auf oder unter dem unteren Rand { $low } mg/kg.
working-over = { $x } − { $k } × { $sigma } = { $end } mg/kg, auf oder über dem oberen Rand { $high } mg/kg.
working-between = { $x } ± { $k } × { $sigma } mg/kg reicht von { $from } bis { $to }; das Band „unentschieden“ ist { $low } bis { $high } mg/kg.
working-between_open = { $x } ± { $k } × { $sigma } mg/kg reicht von { $from } bis { $to }; „unter“ endet bei { $low } mg/kg, und ein „über“ gibt es nicht.
working-detection = Nicht nachgewiesen bei { $x } mg/kg, ein Drittel davon als Sigma: { $x } + { $k } × { $sigma } = { $end } mg/kg gegen den unteren Rand { $low } mg/kg.
working-detection_composite = Nicht nachgewiesen bei { $x } mg/kg; entlastet nur auf oder unter { $low } mg/kg.
working-composite = { $x } ± { $k } × { $sigma } mg/kg reicht von { $from } bis { $to }; „unter“ braucht eine angegebene Nachweisgrenze von höchstens { $low } mg/kg und den Wert auf oder unter ihr, „über“ beginnt bei { $high } mg/kg.
working-thin = { $x } + { $k } × { $sigma } = { $end } mg/kg. Ein so dünner Kunststoff gibt vielleicht nur { $share } % des vollen Signals; „unter“ endet hier also bei { $scaled } mg/kg, nicht bei { $low }.
working-not_capable = { $k } × { $sigma } = { $end } mg/kg, auf oder über dem unteren Rand { $low } mg/kg.

## Cautions

caution-declaration = Ein Screening ist keine Konformitätserklärung und kein Laborergebnis.
caution-homogeneous = Ein Ergebnis gilt für die Messstelle, die gemessen wurde. Grenzwerte gelten für jeden homogenen Werkstoff, Schichten eingeschlossen.
caution-radiation = Röntgengeräte geben ionisierende Strahlung ab. Örtliches Recht, Genehmigung und Unterweisung zum Gerät beachten; eine Probe nie mit der Hand in den Strahl halten.
caution-dust = Beim Schneiden, Schleifen oder Schaben von Proben kann giftiger Staub frei werden (Blei, Cadmium, Chrom). Absaugung, Handschuhe und Maske verwenden und Reste nach den örtlichen Vorschriften entsorgen.
caution-shipping = Ein gesperrtes oder nicht angenommenes Los nicht allein auf diese Seite hin versenden; es entscheidet eine Person, die dazu befugt ist.
caution-items = Die Ergebnisse beziehen sich nur auf die geprüften Gegenstände.

## Report

report-title = Screening-Bericht
report-subtitle = Prüfung auf beschränkte Stoffe mit Röntgenfluoreszenz
report-end = Ende des Berichts
report-id = Kenndaten
report-program = Erstellt mit
report-number = Berichtsnummer
report-reviewed = Ausgewertet am
report-inspector = Prüfer
report-place = Ort
report-category = Gerätekategorie (Richtlinie 2011/65/EU)
report-placing = Inverkehrbringen
report-blank = ____________________
report-summary = Zusammenfassung
report-lots = Lose
report-lot = Los
report-supplier = Lieferant
report-source = Quelle
report-disposition = Losentscheid
report-reasons = Gründe, die schwersten zuerst, und was jeden beendet
report-readings = Messungen
report-materials = Werkstoffe
report-part = Teil
report-material = Werkstoff
report-class = Klasse
report-sources = Quellen
report-file = Datei
report-rows = Zeilen gesamt = verwendet + Kontrolle + doppelt + beiseitegelegt + abgewiesen
report-digest = SHA-256
report-method = Verfahren, Regeln und Entscheidungsregel
report-method_text = Screening mit Röntgenfluoreszenz; jede Messung wurde nach den Bändern des unten genannten Regelwerks beurteilt. Werte sind Massenanteile in mg/kg; s ist ein Sigma.
report-rule_text = Unter dem Grenzwert (BL): x + { $k } s { $low_sign } unterer Rand. Über dem Grenzwert (OL): x − { $k } s { $high_sign } oberer Rand. Unentschieden (X): dazwischen. Cr und Br haben kein „über“. Nicht nachgewiesen bei D: s = D / 3, BL, wenn D + { $k } s { $low_sign } unterer Rand. Cadmium in einem Verbundwerkstoff: BL nur auf oder unter einer angegebenen Nachweisgrenze innerhalb der unten genannten Schranke. Metallisch überzogen, beschichtet oder passiviert: immer X. Klasse nicht bekannt: nach jeder Klasse beurteilt, das schlechteste Ergebnis zählt. Welches Risiko einer falschen Entscheidung die Bänder lassen, wird für ein Los nicht berechnet; die Wahrscheinlichkeit, dass ein einzelner Wert innerhalb eines gesetzlichen Grenzwerts liegt, steht bei seiner Erklärung.
report-rule_halogens = Halogene: BL, wenn x + { $k } s { $within_sign } Grenzwert, OL, wenn x − { $k } s { $over_sign } Grenzwert; in einem Verbundwerkstoff oder einer unbekannten Klasse ist ein BL ein X (Kupfer oder Glas im Strahl); bei Metall nicht anwendbar; die Summe addiert die Quadrate beider Sigma; ein Anteil unter seiner Nachweisgrenze macht die Summe zu einem Bereich.
report-halogens_moved = Halogene gehen nach { $book } in die Losentscheide ein.
report-halogens_shown = Halogene werden zur Information gezeigt; kein Halogen-Regelwerk ist genannt, sie ändern also keinen Losentscheid.
report-uncertainty = Unsicherheit: s ist der ausgegebene Fehler geteilt durch das Vielfache, für das er steht, aber nie kleiner als die eigene Wiederholbarkeit am Eingriffswert, wo eine Tabelle dafür angegeben ist, und nie kleiner als das, was Wiederholmessungen der Messstelle zeigen. Ein Vielfaches, das niemand angegeben hat, gilt als eins, was den unentschiedenen Bereich verbreitert. Welches s mit welchem Vielfachen verwendet wurde, steht im Anhang bei jedem Ergebnis.
report-uncertainty_full = Der Prüfer gibt an, dass die angegebenen Unsicherheiten vollständig sind, einschließlich Kalibrierung, Matrix und Probenahme.
report-probability = Die Wahrscheinlichkeit, dass ein wahrer Wert innerhalb eines Grenzwerts liegt, ist die einer Normalverteilung um den Wert (JCGM 106:2012), für Cd, Pb und Hg, wo der Grenzwert in diesem Werkstoff für das Element selbst gilt. Sie entscheidet hier nichts.
report-thickness = Dicke: Wo sie angegeben ist, bleibt ein BL eines Kunststoffs, oder eines Metalls, dessen Grundmetall gemessen wurde, nur bestehen, wenn es trotz des fehlenden Signals gilt. Als Kunststoff wird Polyethylen angesetzt, der durchlässigste, mit dem Chlor, das als Hauptelement gemessen wurde; das ist bei gefüllten Kunststoffen also vorsichtig.
report-book = Regelwerk
report-edition = Ausgabe
report-confidence = Wie sicher seine Werte sind
report-bands = Verwendete Bänder (mg/kg)
report-substance = Stoff
report-low = Unterer Rand
report-high = Oberer Rand
report-none = keiner
report-detection_edge = Nachweisgrenze der Messung, höchstens { $limit }
report-limit = Grenzwert
report-clause = Abschnitt
report-results = Ergebnisse
report-results_text = Das schlechteste Ergebnis jedes Werkstoffs, mit der Messlatte der Messung, die es am höchsten zeigt; die Messungen selbst stehen im Anhang.
report-open = Offene Ergebnisse und nächste Schritte
report-open_none = Kein Ergebnis ist offen; was ein Los sperrt, steht beim Los.
report-reading = Messung
report-outcome = Ergebnis
report-why = Warum
report-next = Nächster Schritt
report-material_head = Werkstoff, Teil, Los
report-annex = Anhang: jede Messung
report-annex_values = Werte in mg/kg ± ein Sigma; „<“ eine Nachweisgrenze; „–“ nicht gemessen; Text in Anführungszeichen, wie er in der Datei steht. Sigma: p ausgegeben, Vielfaches in der Datei angegeben; m ausgegeben, Vielfaches von Hand festgelegt (die Zahl nach p oder m ist dieses Vielfache: p2 ist ein ausgegebener Fehler von zwei Sigma); u ausgegeben, Vielfaches unbekannt und als eins gewertet; t eigene Tabelle; r was Wiederholmessungen der Messstelle zeigen. „!“: Etwas macht das Ergebnis zweifelhaft; es steht unter „Zweifel an Ergebnissen“ oder bei dem offenen Ergebnis.
report-also = Dasselbe für
report-also_more = und { $count } weitere
report-annex_capped = Die ersten { $shown } von { $total } Messungen sind gedruckt; findings.csv enthält alle.
report-open_capped = Etwa die ersten { $shown } von { $total } offenen Ergebnissen sind gedruckt, die schlechtesten zuerst; findings.csv enthält alle.
report-materials_capped = Die ersten { $shown } von { $total } Werkstoffen sind gedruckt; findings.json enthält alle.
report-line = Zeile
report-sample = Probe
report-columns_used = Verwendete Spalten
report-packed_in = gepackt in { $name }, SHA-256
report-sheet_read = Blatt „{ $name }“ gelesen, { $others } weitere
report-stated_above = Zeile { $line } „{ $text }“ gilt für die ganze Tabelle
report-notices = Meldungen
report-notices_none = Keine.
report-check = Kontrollmessung, keine Ware
report-rests_on = Grundlage: Losumfang { $size }; der Plan verlangt { $take } Stück; { $units } vom am wenigsten geprüften Werkstoff gemessen.
report-hold_ends = Wie die Sperre endet, zusätzlich zu dem, was jeder Grund verlangt
report-refused = Abgewiesene Zeilen
report-refused_none = Keine Zeile wurde abgewiesen.
report-refused_capped = { $left } weitere abgewiesene Zeilen sind gezählt und nicht aufgeführt.
report-column = Spalte
report-remedy = Was zu tun ist
report-acts = Einstellungen und Eingaben
report-acts_none = Keine.
report-by = Von
report-unsigned = kein Kürzel
report-at = Datum
report-act = Eingabe
report-target = Betrifft
report-note = Bemerkung
report-not_assessed = Nicht bewertet
report-cautions = Warnhinweise
report-signatures = Unterschriften
report-sign_inspector = Geprüft von (Name, Datum, Unterschrift)
report-sign_second = Von einer zweiten Person geprüft (Name, Datum, Unterschrift)
report-findings_digest = SHA-256 der Befunde
report-total_rows = Alle Dateien
report-rules_beside = Entscheidungsregeln nebeneinander, als Anzahl der Messungen. Zum Vergleich: Das entscheidet hier nichts.
report-rules_repeatability = Nur Wiederholbarkeit: Was Kalibrierung, Matrix und Probenahme hinzufügen, ist nicht darin.
report-decision_rule = Entscheidungsregel
report-rule_bands = Screening-Bänder (die Regel dieses Berichts)
report-rule_not_applicable = keine Regel zum Grenzwert anwendbar (Messungen)
report-composition = Zusammensetzung
report-caution = Warnhinweis
report-doubts = Zweifel an Ergebnissen
report-doubts_none = Nichts Gemessenes macht ein BL zweifelhaft, und keine Zusammensetzung spricht gegen eine Klasse.
report-doubts_below = Unter dem Grenzwert, und zweifelhaft
report-doubts_capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.
report-compositions = Zusammensetzungen, auf die es ankommt
report-compositions_text = Wo die Klasse nicht bekannt ist oder das Gemessene ihr widerspricht. Was eine Zusammensetzung nahelegt, gilt nie als Klasse.
report-repeats = Wiederholmessungen und Messstellen
report-repeats_text = Wiederholmessungen einer Messstelle werden zusammen beurteilt, wo sie übereinstimmen und keine davon für sich über dem Grenzwert ist; über Messstellen wird nie gemittelt. Weit abliegende Messungen werden genannt; keine wird weggenommen.
report-repeats_none = Keine Messstelle wurde mehr als einmal gemessen und kein Werkstoff an zwei angegebenen Messstellen.
report-repeats_capped = Die ersten { $shown } von { $total } Gruppen von Wiederholmessungen sind gedruckt; findings.json enthält alle.
report-spot = Messstelle
report-element = Element
report-lines = Zeilen
report-repeats_values = Messungen (mg/kg)
report-together = Zusammen (± ein Sigma)
report-how = Wie
report-each_alone = jede für sich
report-one_is_over = nicht gewertet: Eine davon ist für sich über dem Grenzwert, und das bleibt bestehen
report-spots_of = { $about } ({ $n } Messstellen, Wahrscheinlichkeit { $p })
report-spots_alike = Kein Unterschied zwischen Messstellen war zu sehen bei { $list }. Das beweist nicht, dass sie gleich sind; die schlechteste Messstelle ist maßgebend.
report-limits = Grenzwerte der genannten Regelwerke
report-limits_text = Das schlechteste Ergebnis jedes Werkstoffs nach jedem Grenzwert, der für ihn gilt. Nur was die Gründe des Loses nennen, ändert seinen Losentscheid.
report-limits_none = Keiner der Grenzwerte gilt für diese Werkstoffe.
report-limits_capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.
report-worst_reading = Schlechteste Messung
report-exemptions = Ausnahmen
report-exemptions_none = Keine Ausnahme ist beansprucht, und keiner der geladenen Einträge kann decken, was gefunden wurde.
report-claims = Beansprucht
report-claims_capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.
report-candidates = Nicht beansprucht; diese Einträge decken vielleicht ein Ergebnis
report-candidates_text = Ein Eintrag, der vielleicht deckt, ist noch keine Ausnahme: Jemand muss sie beanspruchen, mit Beleg und dem Kürzel einer zweiten Person.
report-entry = Eintrag
report-scope = Was der Eintrag umfasst
report-text = Gesetzestext
report-text_from = In Kraft ab { $day }.
report-number_said = Was die Messungen sagen
report-expires = Ablaufdatum
report-no_day = keines im Regelwerk
report-renewal = Erneuerung
report-renewal_said = Quelle: { $source }; { $state ->
        [not_filed] vom
       *[other] beantragt am
    } { $date }
report-group = Beanspruchte Legierung oder beanspruchter Werkstoff
report-evidence = Beleg
report-initials = Kürzel / zweite Person
report-questions = Zu beantworten
report-expiries = Ablaufdaten, über alle Lose
report-cr6 = Chrom(VI) je Fläche (IEC 62321-7-1)
report-cr6_area = µg/cm²
report-cr6_not_judged = nicht beurteilt: Kein geladenes Regelwerk sagt etwas dazu, oder der Werkstoff ist kein Metall
report-laboratory = Labor, Bericht
report-reached = Wie jedes Ergebnis zustande kam
report-reached_text = Die Regel einmal für jeden Stoff und jede Klasse, mit der Zahl der Messungen, die danach unter, unentschieden und über sind. Mit welchem Sigma und Vielfachen jede Messung beurteilt wurde, steht im Anhang; offene Ergebnisse und solche über dem Grenzwert haben oben ihren eigenen Absatz.
report-rule = Regel
report-rule_plated = Eine Schicht und das, was darunter liegt, werden zusammen gemessen: unentschieden bei jeder Zahl, bis die Dicke und das Darunterliegende bekannt sind.
report-other_outcomes = andere
report-halogens = Halogene
report-validity = Gilt für Produkte
report-in_use = In Gebrauch
report-open_day = offen
report-jurisdiction = Geltungsgebiet
report-legend = BL unter dem Grenzwert · X unentschieden · OL über dem Grenzwert · n. anw. nicht anwendbar. Jedes andere Wort sagt, warum es keines dieser Ergebnisse gibt; keines steht für „unter dem Grenzwert“.

## Ruler

ruler-title = { $about }: { $outcome }
ruler-description = Logarithmische Skala in mg/kg. { $value }. { $edges }.
# Wogegen ein Lineal gezeichnet ist: das Band, in dem nichts entschieden ist, oder eine Grenze ohne Band.
ruler-edges = Unentschieden von { $low } bis { $high }
ruler-edges_open = Unentschieden ab { $low } aufwärts
ruler-edges_limit = Grenzwert { $limit }
ruler-band = unentschieden
ruler-limit = Grenzwert
ruler-strip = { $value }. { $edges }
report-rulers = Unter einem Ergebnis steht seine Messlatte: eine logarithmische Skala in mg/kg, die Messung als Senklot mit Fühlern von k Sigma (k = { $k } für die Bänder) und schraffiert das Band um den Grenzwert. Eine Pfeilspitze, wo es über die Skala hinausgeht.
report-rulers_below = mit beiden Fühlern links vom Band: unter dem Grenzwert
report-rulers_undecided = etwas berührt das Band: unentschieden
report-rulers_over = mit beiden Fühlern rechts vom Band: über dem Grenzwert
report-rulers_limit = ein Grenzwert ohne Band: ein Pfosten mit Querbalken
report-rulers_bound = nicht nachgewiesen: irgendwo auf der gestrichelten Seite
report-rulers_between = Summe mit einem nicht nachgewiesenen Teil: irgendwo zwischen den beiden Strichen
join-list = {", "}
join-series = {"; "}
join-sentences = {" "}
join-colon = {": "}
join-stop = {". "}
join-brackets = {" "}({ $text })

## Command line

cli-help = Plumbline wertet Screening-Ergebnisse der Röntgenfluoreszenz an Werkstoffen der Elektronik aus, ohne Netz.

    Aufruf:
      plumbline review --out DIR [--papers] [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--history FILE]... [--bill FILE]... PATH...
      plumbline explain [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--bill FILE]... [--of NAME]...
                        (--reading ID | --line SOURCE:LINE) PATH...
      plumbline plan --lot-size N --rule single --aql AQL [--level LEVEL] [--severity SEVERITY] [--seed SEED]
      plumbline plan --lot-size N --rule zero_acceptance --confidence PERCENT --share PERCENT [--seed SEED]
      plumbline rules [ID | FILE]
      plumbline help
      plumbline version

    review     liest Ergebnistabellen (CSV, TSV; Dateien oder Ordner) und schreibt nach DIR:
                 findings.json   alles, was gefunden wurde, für Programme
                 findings.csv    eine Zeile je Messung, für Tabellenprogramme
                 report.html     der Bericht, für Menschen; aus einem Browser zu drucken
                 (Kurzfassung und Anhang: siehe --length)
                 history.txt     die geladenen Verläufe und diese Prüfung zusammen, für das nächste Mal
    --out DIR        wohin geschrieben wird; wird angelegt, wenn es fehlt
    --papers         schreibt auch, soweit nötig: findings.xlsx, laboratory-request.html,
                     supplier-notice-N-NAME.html (je eine für jeden Lieferanten eines gesperrten oder
                     nicht angenommenen Loses), labels.html
    --length LENGTH  des Berichts: one_page (report-one-page.html), full (report.html, üblich), annex
                     (report-annex.html, jede Messung) oder all; darf mehrfach stehen
    --settings FILE  Klasse, Losumfang, Dicke, Zertifikate, Pläne ... (siehe contract.md);
                     von mehreren gilt die spätere vor der früheren
    --mapping FILE   was die Spalten unter bekannten Überschriften bedeuten, wie die Seite es gespeichert hat
    --bill FILE      eine Werkstoffliste: eine Tabelle mit den Spalten Part und Material, vielleicht Class
    --rules FILE     ein Regelwerk: seine Bänder oder Halogengrenzwerte statt der eingebauten, seine Grenzwerte daneben
    --history FILE   was frühere Prüfungen fanden (deren history.txt); mehrere werden zusammengeführt
    explain    druckt zu den passenden Messungen, was gefunden wurde, die Regel mit Abschnitt und jeden Schritt zum Ergebnis
    --reading ID     Messungen mit dieser Probenkennung, wie sie in der Datei steht
    --line S:LINE    die Messung, die in dieser Zeile der Quelle S beginnt, benannt wie im Bericht
    --of NAME        nur dieses Ergebnis: Cd, Pb, Hg, Cr, Br, Cl oder total; darf mehrfach stehen
    plan       sagt, wie viele Stück eines Loses zu nehmen sind, mit --seed welche, und welches Risiko bleibt;
               wie [[sampling_plan]] in einer Einstellungsdatei
    rules      listet die mitgelieferten Regelwerke auf, oder erklärt eines davon, oder eine Datei, Zeile für Zeile

    Rückgabewert: 0 jedes Los angenommen für die Stoffe des Screenings; 1 ein Los gesperrt oder nicht angenommen;
    2 eine Eingabe war nicht lesbar, oder es gab keine Messungen (der Rest wird trotzdem geschrieben), oder keine zu erklären;
    64 falscher Aufruf, oder schlechte Einstellungs-, Zuordnungs-, Regel- oder Verlaufsdatei (nichts geschrieben);
    74 die Ausgabe ließ sich nicht schreiben.

    Ein Screening ist keine Konformitätserklärung und kein Laborergebnis.
cli-usage = plumbline: { $what }
    .remedy = Siehe "plumbline help".
cli-missing_reading = angeben, welche Messungen gemeint sind: einmal --reading ID oder --line SOURCE:LINE
cli-no_line = „{ $found }“ ist kein SOURCE:LINE, wie in results.csv:12
cli-no_outcome = „{ $found }“ ist kein Ergebnis; bekannt sind Cd, Pb, Hg, Cr, Br, Cl und total
cli-no_reading = Keine Messung passt. Eine Messung wird mit ihrer Probenkennung genannt, wie sie in der Datei steht, oder mit dem Namen ihrer Datei und der Zeile, in der sie beginnt.
cli-unknown = „{ $found }“ ist hier nicht bekannt
cli-missing_out = --out DIR fehlt
cli-missing_value = { $found } braucht einen Wert
cli-missing_path = keine Datei und kein Ordner ist genannt
cli-bad_file = { $file }, Zeile { $line }, Spalte { $column }: { $text }
cli-unreadable = { $file }: { $text }
cli-cannot_write = { $file } ließ sich nicht schreiben: { $text }
cli-source = { $file }: Zeilen gesamt { $rows_in } = verwendet { $used } + Kontrolle { $check } + doppelt { $duplicate } + beiseitegelegt { $set_aside } + abgewiesen { $refused }; Messungen { $total }
cli-source_problem = { $file }: { $text }
cli-refused = { $file }, Zeile { $line }, Spalte { $column }: { $text }
cli-refused_row = { $file }, Zeile { $line }: { $text }
cli-more_refused = { $file }: { $left } weitere abgewiesene Zeilen stehen in findings.json
cli-lot = Los: { $lot } · Lieferant: { $supplier } · { $disposition }
cli-written = Geschrieben: { $file }

## Questions a file leaves open

need-unit_not_stated = Die Datei gibt die Einheit ihrer Werte nicht an. Welche Einheit ist es?
need-sigma_multiple_not_stated = Die Datei gibt nicht an, für wie viele Sigma ihre Fehlerspalte steht. Eins, zwei oder drei?
need-decimal_mark_unclear = In einigen Zahlen kann das Komma oder der Punkt Dezimal- oder Tausenderzeichen sein. Welches ist das Dezimalzeichen?
need-date_order_unclear = Einige Daten können Tag und Monat oder Monat und Tag sein. In welcher Reihenfolge stehen sie?
need-class_not_stated = { $count ->
        [one] Eine Messung nennt
       *[other] { $count } Messungen nennen
    } keine hier bekannte Werkstoffklasse. Welche Klasse ist es?

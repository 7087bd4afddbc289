# German: the papers that go out beside a report: request to a laboratory, notice to a supplier, labels

paper-end = Ende von { $number }
paper-invented = Erfundene Daten, zu Übungszwecken. Dieses Papier handelt von nichts Wirklichem: nicht versenden und nicht danach handeln.
paper-determine_cr6 = Cr(VI), sechswertiges Chrom (das Screening erfasste Gesamtchrom)
paper-determine_pbb_pbde = PBB und PBDE, jedes für sich (das Screening erfasste Gesamtbrom)
paper-contact = Fragen an
paper-capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.
paper-band = Band { $low } bis { $high } mg/kg
paper-band_open = unentschieden ab { $low } mg/kg
paper-band_detection = Band von der Nachweisgrenze bis { $high } mg/kg
paper-limit = Grenzwert { $limit } mg/kg
paper-line = Zeile { $line }

## Self-check sheet of a supplier

paper-self_check = Selbstprüfung vor dem Versand
paper-self_check-is = Die Selbstprüfung eines Lieferanten: was der Kunde nach den unten genannten Regelwerken aus denselben Messungen annehmen, sperren oder nicht annehmen würde. Sie ist keine Konformitätserklärung und keine Entscheidung des Kunden: Der Kunde entscheidet nach seiner eigenen Prüfung.
paper-self_check-full = Der vollständige Bericht zu diesen Messungen hat die Nummer { $number }. Senden Sie report.html mit diesem Blatt oder halten Sie die Datei bereit: Anhand der Nummer kann der Kunde den Bericht finden und nachprüfen.
paper-self_check-books = Regelwerke, nach denen geprüft wurde
paper-self_check-books_given = Was als Datei geladen wurde, ist gekennzeichnet. Wer die Datei geliefert hat, steht für ihre Grenzwerte ein: Fragen Sie den Kunden anhand der Prüfsumme, ob dies sein Regelwerk ist.
paper-self_check-books_built_in = Es wurde kein Regelwerk eines Kunden verwendet: Die unten genannten sind die mitgelieferten. Das Regelwerk des Kunden kann davon abweichen. Bitten Sie darum und prüfen Sie vor dem Versand noch einmal.
paper-self_check-whose = Herkunft
paper-self_check-given = als Datei geladen
paper-self_check-built_in = mitgeliefert
paper-self_check-would-accept = nichts gefunden
paper-self_check-would-hold = würde gesperrt
paper-self_check-would-not_accept = würde nicht angenommen
paper-self_check-group-accept = { $count ->
    [one] Nichts gefunden, was es sperren würde: ein Los
   *[other] Nichts gefunden, was sie sperren würde: { $count } Lose
}
paper-self_check-group-accept-is = Für die Stoffe des Screenings würde nichts in diesen Messungen den Kunden am Annehmen hindern. Das ist keine Zusicherung: Was nicht beurteilt wurde, steht unten.
paper-self_check-group-hold = { $count ->
    [one] Würde gesperrt: Dies ist vor dem Versand zu tun. Ein Los
   *[other] Würden gesperrt: Dies ist vor dem Versand zu tun. { $count } Lose
}
paper-self_check-group-hold-is = Etwas liegt weder sicher innerhalb noch sicher außerhalb seines Grenzwerts, oder es liegt darüber, und ein Anspruch oder Zweifel ist noch offen, oder es fehlt noch etwas, um das zu sagen. Zu jedem Punkt steht, was ihn beendet, in der Reihenfolge, in der es nützt.
paper-self_check-group-not_accept = { $count ->
    [one] Würde nicht angenommen: so nicht versenden. Ein Los
   *[other] Würden nicht angenommen: so nicht versenden. { $count } Lose
}
paper-self_check-group-not_accept-is = Etwas wurde außerhalb eines Grenzwerts gefunden. Halten Sie das Los zurück, bis geklärt ist, was hier genannt ist.
paper-self_check-noted = Nur vermerkt. Nach den Einstellungen dieser Prüfung würde es das Los nicht sperren; nach denen des Kunden vielleicht:
paper-self_check-settles = Was es klären würde
paper-self_check-sampling = Stichprobe:
paper-self_check-sampling_none = Es ist kein Losumfang mit einer Anzahl zu entnehmender Stücke angegeben; diese Messungen sprechen daher nur für die gemessenen Stücke.
paper-self_check-units = Los von { $size } Stück; verlangt von jedem Werkstoff: { $take }.
paper-self_check-claims_none = Es wird keine Ausnahme beansprucht.
paper-self_check-claim = Der Anspruch
paper-self_check-in_force = In Kraft am Tag des Inverkehrbringens
paper-self_check-in_force_on = ja, am { $day }
paper-self_check-trust = Messungen nach den Kontrollen neben ihnen: zwischen guten Kontrollen { $ok }; von keiner Kontrolle abgedeckt { $none }; nicht zwischen guten Kontrollen { $not_bracketed }; neben einer nicht bestandenen Kontrolle { $failed }. Kontrollmessungen: { $checks }.
paper-self_check-signed = Wer unterschreibt, sagt damit, dass dies die Messungen dieser Lose sind, und nichts darüber hinaus.
paper-self_check-checked = Geprüft von
paper-self_check-released = Verantwortlich

## Request to a laboratory

paper-laboratory = Anfrage an ein Labor
paper-laboratory-is = Bittet ein Labor zu bestimmen, was das Screening mit Röntgenfluoreszenz offen ließ oder über seinem Grenzwert fand. Diese Anfrage ist kein Auftrag und enthält kein Ergebnis eines Labors.
paper-samples = Proben
paper-samples_none = Nichts wartet auf ein Labor.
paper-samples_order = { $count ->
    [one] Eine Probe.
   *[other] { $count } Proben, die dringendsten zuerst: nach dem Tag, an dem ihre Sperre enden soll, dann nicht angenommene Lose vor gesperrten.
}
paper-sample = Probe { $number } von { $total }
paper-class = Werkstoffklasse
paper-needed_by = Benötigt bis
paper-piece = Gemessenes Stück
paper-amount = Gesandte Menge, gekennzeichnet als
paper-of_id = Probe
paper-of_unit = Stück
paper-of_spot = Messstelle
paper-determine = Zu bestimmen
paper-by_method = Referenzverfahren
paper-no_method = Die Regelwerke nennen kein Verfahren: Das Labor schlägt eines vor.
paper-why = Warum
paper-asked_back = Was das Labor angeben soll
paper-back-result = Das Ergebnis für den Werkstoff, wie er gesandt wurde: nicht für ein Gemisch von Werkstoffen.
paper-back-unit = Seine Einheit; mg/kg des homogenen Werkstoffs, oder je Fläche einer Beschichtung, wo das Verfahren es so vorsieht.
paper-back-u = Seine erweiterte Messunsicherheit U.
paper-back-k = Den Erweiterungsfaktor k dieser Unsicherheit.
paper-back-lod = Die Nachweisgrenze (NWG).
paper-back-loq = Die Bestimmungsgrenze (BG).
paper-back-method = Das Verfahren mit Teil und Ausgabe, und jede Abweichung davon.
paper-back-date = Den Tag der Analyse und die Nummer des Laborberichts.
paper-fill-result = Ergebnis
paper-fill-unit = Einheit
paper-fill-u = U
paper-fill-k = k
paper-fill-lod = NWG
paper-fill-loq = BG
paper-fill-method = Verfahren, Ausgabe
paper-fill-date = Datum, Bericht
paper-safety = Sicherheit
paper-safety_text = Die Proben können Blei, Cadmium, Quecksilber, Chrom oder Brom über den gesetzlichen Grenzwerten enthalten. Nur unter Absaugung schneiden und mahlen.
paper-custody = Übergabenachweis
paper-custody_text = Bei jeder Übergabe wird eine Zeile ausgefüllt. Unter Zustand angeben, ob das Siegel unversehrt und die Verpackung unbeschädigt ist.
paper-custody-number = Nr.
paper-custody-by = Übergeben von
paper-custody-to = Erhalten von
paper-custody-when = Datum und Uhrzeit
paper-custody-seal = Siegelnummer
paper-custody-condition = Zustand

## Notice to a supplier

paper-notice = Mitteilung an einen Lieferanten
paper-notice-is = Teilt einem Lieferanten mit, was das Screening in seinen Losen fand und worum er gebeten wird.
paper-to = An
paper-reply_by = Um Antwort wird gebeten bis
paper-notice_facts = Die unten genannten Lose wurden bei der Wareneingangsprüfung mit Röntgenfluoreszenz einem Screening unterzogen. Diese Mitteilung gibt an, was gemessen wurde. Sie beschuldigt niemanden und entscheidet nichts über ein Verschulden.
paper-notice_undecided = Was gesperrt ist, ist unentschieden: Es wurde weder sicher innerhalb noch sicher außerhalb seiner Grenzwerte gefunden, oder es fehlt noch etwas, um das zu sagen.
paper-lot_counts = { $readings ->
    [one] Eine Messung
   *[other] { $readings } Messungen
}; Werkstoffe des Loses: { $materials }
paper-found = Was gefunden wurde
paper-substance = Stoff
paper-worst = Höchste der schlechtesten Messungen, und womit sie verglichen wird
paper-reasons = Warum das Los noch nicht angenommen ist
paper-own_reasons = Es gibt auch Gründe, die die Prüfung selbst klären muss. Dafür wird von Ihnen nichts erbeten.
paper-asked = Worum wir Sie bitten
paper-asked_nothing = Vorerst um nichts. Diese Mitteilung dient Ihrer Information.
paper-ask-contain = Halten Sie zurück, was Sie von diesem Los noch haben, und teilen Sie uns mit, welche anderen Lieferungen denselben Werkstoff enthalten können.
paper-ask-laboratory = Senden Sie ein Laborergebnis für die oben genannten Stoffe, nach dem Referenzverfahren, mit seiner Messunsicherheit und der Nummer des Laborberichts; oder teilen Sie mit, dass Sie keines haben.
paper-ask-materials = Senden Sie die Liste der homogenen Werkstoffe des Teils, mit Klasse und Dicke jedes Werkstoffs, Beschichtungen eingeschlossen.
paper-ask-exemption = Geben Sie an, auf welche Ausnahme Sie sich stützen, mit Eintrag und Wortlaut, und senden Sie den Beleg, dass sie gilt.
paper-ask-change = Geben Sie an, ob ein Werkstoff, eine Rezeptur oder ein Unterlieferant geändert wurde, seit wann und für welche Lose.
paper-ask-correct = Teilen Sie uns die Ursache mit, sobald Sie sie kennen, und was Sie tun, damit es nicht wieder geschieht.
paper-ask-replace = Teilen Sie uns mit, wann Sie das Los ersetzen können und was mit diesem geschehen soll.
paper-answer = Ihre Antwort
paper-answer_text = Bitte antworten Sie schriftlich unter der obigen Berichtsnummer. Sollten Sie einen Fehler von uns finden, teilen Sie ihn uns bitte mit.
paper-answer_by = Beantwortet von
paper-answer_date = Datum
paper-answer_signature = Unterschrift

## Labels

paper-labels = Etiketten für Lose, die warten müssen
paper-labels-is = Ein Etikett für jedes Los, das gesperrt oder nicht angenommen ist. An den gestrichelten Linien ausschneiden. Ein Etikett sagt, was der darauf genannte Bericht über ein Los sagt; ein späterer Bericht geht ihm vor.
paper-labels_none = Kein Los ist gesperrt oder nicht angenommen.
paper-word-hold = GESPERRT
paper-word-not_accept = NICHT ANGENOMMEN
paper-label_more_parts = { $count ->
    [one] und ein weiteres
   *[other] und { $count } weitere
}
paper-label_more_reasons = { $count ->
    [one] Ein weiterer Grund steht im Bericht.
   *[other] { $count } weitere Gründe stehen im Bericht.
}
paper-label_lift_two = Nur ein neuer Bericht oder die Kürzel zweier Personen heben dies auf.
paper-label_lift_result = Nur ein neuer Bericht, in dem das oben Genannte geklärt ist, hebt dies auf.

## Acts

act-reply_by = Lieferanten werden um Antwort gebeten bis { $value }
act-requested_action = vom Lieferanten erbeten: { $value }
act-contact = Fragen an { $value }

## The workbook

workbook-lots = Lose
workbook-materials = Werkstoffe
workbook-readings = Messungen
workbook-checks = Kontrollen
workbook-about = Angaben
workbook-program = Programm
workbook-rule_book = Regelwerk
workbook-readings_all = Alle { $count } Messungen stehen auf dem Blatt der Messungen.
workbook-readings_capped = Die ersten { $shown } von { $total } Messungen stehen auf dem Blatt der Messungen; findings.csv enthält alle.
workbook-cut = Texte, die länger waren, als eine Zelle aufnehmen kann, und gekürzt wurden: { $count }. findings.json enthält sie ganz.
workbook-columns = Spalten heißen und bedeuten dasselbe wie in findings.csv und findings.json. Gehalte sind Massenanteile in mg/kg, Unsicherheiten ein Sigma.

## Command line

cli-no_notice = { $count ->
    [one] Ein gesperrtes oder nicht angenommenes Los gibt keinen Lieferanten an: Dafür gibt es keine Mitteilung.
   *[other] { $count } gesperrte oder nicht angenommene Lose geben keinen Lieferanten an: Dafür gibt es keine Mitteilung.
}

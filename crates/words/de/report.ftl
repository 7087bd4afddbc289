# German: the report: what standards ask it to hold, its three lengths, and how acts read in it

## What a person states for the report

act-issuer = Bericht ausgestellt von { $name }{ $address ->
        [none] { "" }
       *[other] , { $address }
    }
act-customer = Bericht für { $name }{ $contact ->
        [none] { "" }
       *[other] , { $contact }
    }
act-received = eingegangen am { $value }
act-sampled = Probenahme: Tag { $date ->
        [none] nicht angegeben
       *[other] { $date }
    }; von: { $by ->
        [none] niemand genannt
       *[other] { $by }
    }; Ort: { $place ->
        [none] nicht angegeben
       *[other] { $place }
    }; Verfahren: { $method ->
        [none] nicht angegeben
       *[other] { $method }
    }
act-item = Prüfgegenstände: { $description ->
        [none] nicht beschrieben
       *[other] { $description }
    }; Zustand: { $condition ->
        [none] nicht angegeben
       *[other] { $condition }
    }
act-issued_on = Bericht ausgestellt am { $value }
act-environment = Bedingungen am Messort: { $value }
act-deviations = Ergänzungen, Abweichungen und Ausschlüsse: { $value }
act-instrument = Gerät: { $value }
act-authorised = Bericht freigegeben von { $by }; zweite Person: { $second ->
        [none] nicht genannt
       *[other] { $second }
    }
act-records_kept = Aufzeichnungen werden aufbewahrt: { $value }
act-invented = { $value ->
        [yes] die Daten sind erfunden, zu Übungszwecken
       *[no] die Daten sind nicht erfunden
    }

## Values of acts, in words

said-trust-holding = sie sperren das Los
said-trust-advisory = werden genannt und sperren nichts
said-sampling-holding = er sperrt das Los
said-sampling-advisory = wird genannt und sperrt nichts
said-materials-holding = sie sperrt das Los
said-materials-advisory = wird genannt und sperrt nichts
said-repeats-same_spot = gleiche Probenkennung, gleiche angegebene Messstelle
said-repeats-same_id = gleiche Probenkennung, auch wo keine Messstelle angegeben ist
said-repeats-never = keine; jede Messung steht für sich
said-uncertainty_holds-repeatability = nur Wiederholbarkeit
said-uncertainty_holds-everything = alles, Kalibrierung, Matrix und Probenahme eingeschlossen
said-mark-check = Kontrollprobe
said-mark-blank = Blindprobe
said-mark-product = Ware, keine Kontrolle
said-category-8 = 8, Hälfte nicht angegeben
said-category-8ivd = 8, In-vitro-Diagnostika
said-category-8o = 8, andere medizinische Geräte
said-category-9 = 9, Hälfte nicht angegeben
said-category-9i = 9, Überwachungs- und Kontrollinstrumente in der Industrie
said-category-9o = 9, andere Überwachungs- und Kontrollinstrumente
said-site_sigma = { $element } in { $class }: ein Sigma { $s }, { $seconds ->
        [none] Messzeit nicht angegeben
       *[other] für { $seconds } s
    }, davon { $constant ->
        [none] nichts konstant
       *[other] { $constant } konstant
    }

## Lengths and parts

length-one_page = Kurzfassung
length-full = Gesamtbericht
length-annex = Anhang
report-parts = Teil { $part } von 3 des Berichts { $number }: { $name }. Die anderen Teile, unter derselben Nummer: { $others }.
report-part_named = Teil { $part }, { $name } ({ $file })
report-part_short = Teil { $part } von 3
report-contents = Dieser Teil enthält diese Abschnitte, in dieser Reihenfolge, und endet mit „{ $end }“:
report-invented = Erfundene Daten, zu Übungszwecken. Dieser Bericht handelt von nichts Wirklichem.
report-invented_short = ERFUNDENE DATEN
report-annex_elsewhere = Jede Messung mit ihrer Datei und Zeile steht im Anhang, Teil 3 dieses Berichts ({ $file }).

## Who, for whom, when

report-issuer = Ausgestellt von
report-customer = Auftraggeber
report-issued_on = Ausstellungsdatum
report-authorised = Freigegeben von
report-authorised_second = Zweite Person
report-relates = Die Ergebnisse beziehen sich nur auf die geprüften Gegenstände. Ohne schriftliche Zustimmung des Ausstellers darf dieser Bericht nur vollständig, in allen seinen Teilen, vervielfältigt werden.

## Items

report-items = Prüfgegenstände, ihr Zustand und wie sie entnommen wurden
report-items_text = Wie die in den Eingaben genannten Personen es angegeben haben. Jedes Los ist durch Lieferant und Los bezeichnet, seine Teile und Werkstoffe durch ihre Namen in den Ergebnissen.
report-items_capped = Die ersten { $shown } von { $total } Losen sind gedruckt; findings.json enthält alle.
report-description = Beschreibung
report-condition = Zustand
report-received = Eingegangen
report-sampled = Probenahme (Datum, durch wen, Ort)
report-sampled_method = Plan oder Verfahren der Probenahme
report-sampled_plan = der Plan steht beim Los
report-none_stated_plan = kein Plan angegeben

## How it was measured

report-measured = Wie, wo, wann und von wem gemessen wurde
report-measured_when = Gemessen
report-measured_days = { $from } bis { $until }
report-measured_undated = { $count ->
        [one] eine Messung hat kein lesbares Datum
       *[other] { $count } Messungen haben kein lesbares Datum
    }
report-operators = Gemessen von
report-instruments = Gerät
report-modes = Messmodus
report-seconds = Messzeit
report-seconds_range = { $from } bis { $until } s
report-seconds_one = { $from } s
report-environment = Bedingungen
report-deviations = Ergänzungen, Abweichungen, Ausschlüsse
report-deviations_aside = { $count ->
        [one] Eine Messung wurde von jemandem beiseitegelegt
       *[other] { $count } Messungen wurden von jemandem beiseitegelegt
    }, mit dem Grund; siehe den Abschnitt über beiseitegelegte Messungen.
report-deviations_refused = { $count ->
        [one] Eine Zeile wurde abgewiesen und zählt
       *[other] { $count } Zeilen wurden abgewiesen und zählen
    } für nichts; siehe den Abschnitt über Quellen.
report-deviations_said = { $text }.
report-external = Ergebnisse externer Anbieter
report-external_none = Keine: Es wurde kein Laborergebnis angegeben.
report-external_count = { $count ->
        [one] Ein Laborergebnis
       *[other] { $count } Laborergebnisse
    }; siehe den Abschnitt über Laborergebnisse.
report-external_text = Ergebnisse externer Anbieter: Labore haben sie ermittelt, nicht der Aussteller dieses Berichts.
report-records_kept = Aufbewahrung der Aufzeichnungen
report-and_more = { $list } und { $count } weitere

## Decision rule and opinions

report-inherent = Entscheidungsregel: Die Bänder des Verfahrens sind die Regel. Sie enthalten einen eigenen Sicherheitsabstand (vom Grenzwert hinab zum unteren Rand, hinauf zum oberen Rand, und { $k } s darüber hinaus); es kommt also kein weiterer Sicherheitsabstand hinzu (ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019).
report-risk = Risiko der Regel: Wo s stimmt, Messungen normalverteilt um den wahren Wert streuen und sonst nichts falsch ist, ergibt eine Messung bei einem Gehalt am unteren Rand mit einer Wahrscheinlichkeit von { $chance } % „unter dem Grenzwert“, und bei einem Gehalt am oberen Rand mit einer Wahrscheinlichkeit von { $chance } % „über dem Grenzwert“. Ein Gehalt auf oder über dem Grenzwert ergibt also mit noch kleinerer Wahrscheinlichkeit „unter“, und einer auf oder unter dem Grenzwert mit noch kleinerer „über“. Wo wenige Wiederholmessungen s ergeben, hält ein größerer Faktor diese Wahrscheinlichkeit. Was Kalibrierung, Matrix, Homogenität und Probenahme hinzufügen, ist nicht darin. Das ist aus der Normalverteilung berechnet; die Ränder der Bänder sind die der Norm.
report-foreign_book = Dieses Regelwerk gehört nicht zum Programm: Jemand hat es aus einer Datei geladen. Was es über seine Quelle und die Sicherheit seiner Werte sagt, ist die Aussage dieser Datei.
report-foreign_books = Beurteilt auch nach einem Regelwerk, das nicht zum Programm gehört: { $books }. Seine Grenzwerte sind die Aussage der geladenen Datei.
report-day_sampled = Probenahme
report-day_amiss = Daten, die nicht zueinander passen: „{ $later }“ ist { $later_day }, also vor „{ $earlier }“, { $earlier_day }. Eines davon ist falsch.
report-opinions = Was einen Grund beendet, nächste Schritte, Warnhinweise, Vergleiche mit anderen Regeln und Einträge, die vielleicht decken, sind Meinungen und Interpretationen, keine Ergebnisse.
report-standards = Dieser Bericht soll enthalten, was ISO/IEC 17025:2017 (7.8), IEC 62321-1:2013 (4.8) und EN IEC 63000:2018 von einem Bericht über ein Screening verlangen. Er ist eines der Dokumente der technischen Unterlagen, ersetzt diese allein nicht und beansprucht keine Akkreditierung.
report-settled_by_laboratory = hier keiner mehr: Ein Labor hat es geklärt. { $text }
report-sign_authorised = Freigegeben von (Name, Funktion, Datum, Unterschrift)

## One page

report-page_lots = Lose, die schlechtesten zuerst
report-page_reasons = Wichtigste Gründe
report-page_next = Was als Nächstes geschehen muss
report-page_by = Durch wen
report-page_until = bis wann
report-page_more_reasons = { $count ->
        [one] und ein weiterer Grund
       *[other] und { $count } weitere Gründe
    }
report-page_nothing = Nichts sperrt es.
report-page_more_lots = { $count ->
        [one] Ein weiteres Los steht
       *[other] { $count } weitere Lose stehen
    } im Gesamtbericht: { $accept } annehmen, { $hold } sperren, { $not_accept } nicht annehmen.
report-page_inspected = Was geprüft wurde
report-page_decided = Entschieden von (Name, Datum, Unterschrift)
report-page_checked = Zweite Person (Name, Datum, Unterschrift)

## Command line

cli-no_length = „{ $found }“ ist keine Länge eines Berichts; bekannt sind one_page, full, annex und all

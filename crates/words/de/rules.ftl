# German: what rule books and limits say, and how they are explained

## Reasons of a disposition

lot-reason-limit_over = Über dem Grenzwert „{ $about }“ bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Los separieren. Die schlechteste Probe nach dem Referenzverfahren im Labor prüfen lassen; nur dessen Ergebnis kann daran etwas ändern.
lot-reason-limit_open = Offen nach dem Grenzwert „{ $about }“ bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Siehe den Wortlaut des Grenzwerts: eine längere Messung, ein getrennter Werkstoff, das Datum des Inverkehrbringens, ein Labor oder die Antwort auf seine Frage.
lot-reason-book_not_loaded = Die Prüfung nennt das Regelwerk „{ $about }“, das nicht da ist, oder ein anderes steht an der Stelle dessen, was es enthält.
    .remedy = Die Datei des Regelwerks laden, eines nennen, das da ist, oder das herausnehmen, das an seiner Stelle steht.
lot-reason-book_not_in_use = Das Regelwerk „{ $about }“ gilt nicht an dem Tag, auf den es ankommt (Inverkehrbringen, sonst Prüfung), oder dieser Tag ist nicht angegeben.
    .remedy = Das Regelwerk laden, das an diesem Tag gilt, oder den Tag des Inverkehrbringens angeben.
lot-reason-book_differs = Die Prüfung nennt das Regelwerk „{ $about }“ mit seiner Prüfsumme, und das Regelwerk mit dieser Kennung hier ist eine andere Datei.
    .remedy = Die gemeinte Datei laden, oder ansehen, was sich geändert hat, und dann das vorhandene Regelwerk nennen.
summary-limit_over = über dem Grenzwert { $about } bei { $count }
summary-limit_open = offen nach dem Grenzwert { $about } bei { $count }
evidence-short-book_not_loaded = ein genanntes Regelwerk
evidence-short-book_not_in_use = ein Regelwerk, das an dem Tag gilt
evidence-short-book_differs = das gemeinte Regelwerk
act-books = Regelwerke: { $value }

## Why a limit is open, or does not apply

reason-answered_no = Jemand hat geantwortet, dass dieser Grenzwert nicht gilt.
reason-class_not_covered = Der Grenzwert betrifft diese Werkstoffklasse nicht.
reason-outside_validity = Der Grenzwert gilt am Tag des Inverkehrbringens nicht.
reason-placing_date_not_stated = Der Grenzwert gilt für bestimmte Tage des Inverkehrbringens, und dieser Tag ist nicht angegeben.
reason-question_open = Über dem Grenzwert, falls er gilt; ob er gilt, muss jemand beantworten.
reason-source_not_seen = Auf oder über dem Grenzwert. Er zählt das Element nur aus bestimmten Quellen, und Röntgenstrahlen zeigen nicht, woher es kommt.
reason-mixed_materials = In mehreren Werkstoffen zusammen unter dem Grenzwert: Einer davon kann darüber sein.

## Rule books explained

rules-edition = Ausgabe { $edition }
rules-days-any = an irgendeinem Tag in Verkehr gebracht
rules-days-from = ab { $from } in Verkehr gebracht
rules-days-until = bis { $until } in Verkehr gebracht
rules-days-both = ab { $from } bis { $until } in Verkehr gebracht
rules-digest = SHA-256 { $digest }
rules-holds-bands = { $count ->
        [one] ein Band
       *[other] { $count } Bänder
    }
rules-holds-halogens = { $count ->
        [one] ein Halogengrenzwert
       *[other] { $count } Halogengrenzwerte
    }
rules-holds-limits = { $count ->
        [one] ein Grenzwert
       *[other] { $count } Grenzwerte
    }
rules-holds-exemptions = { $count ->
        [one] eine Ausnahme
       *[other] { $count } Ausnahmen
    }
rules-holds-areas = { $count ->
        [one] eine Regel für Chrom(VI) je Fläche
       *[other] { $count } Regeln für Chrom(VI) je Fläche
    }
rules-holds-routes = { $count ->
        [one] ein Referenzverfahren
       *[other] { $count } Referenzverfahren
    }
confidence-confirmed = Im Text des Gesetzes oder der Norm bestätigt.
confidence-restated = Von einer Sekundärquelle wiedergegeben; Gesetz oder Norm selbst wurde an dieser Stelle nicht eingesehen.
confidence-memory = Aus dem Gedächtnis; vor Verwendung im Gesetz oder in der Norm prüfen.
confidence-derived = Durch Rechnen oder aus dem Wortlaut abgeleitet, wie die Zeile sagt.
confidence-own = In den Worten des Regelwerks: { $words }.
rules-screening = Screening-Bänder; s ist ein Sigma.
rules-halogens = Halogengrenzwerte; s ist ein Sigma.
rules-cited = { $text } Quelle: { $source }, { $clause }. { $confidence }
rules-band = { $about }, { $class }: { $low }; { $high }; dazwischen unentschieden.
rules-band-none = { $about }, { $class }: gilt nicht.
rules-low = unter dem Grenzwert, wenn Wert + { $k } s { $equal ->
        [yes] auf oder unter
       *[no] unter
    } { $limit } mg/kg liegt
rules-low-detection = unter dem Grenzwert, wenn auf oder unter der eigenen Nachweisgrenze der Messung und diese höchstens { $limit } mg/kg ist
rules-high = über dem Grenzwert, wenn Wert - { $k } s { $equal ->
        [yes] auf oder über
       *[no] über
    } { $limit } mg/kg liegt
rules-high-none = nie über dem Grenzwert, weil das Element den Stoff nicht beweisen kann
rules-within = innerhalb des Grenzwerts, wenn Wert + { $k } s { $equal ->
        [yes] auf oder unter
       *[no] unter
    } { $limit } mg/kg liegt
rules-over = darüber, wenn Wert - { $k } s { $equal ->
        [yes] über
       *[no] auf oder über
    } { $limit } mg/kg liegt
rules-over-without = darüber, wenn { $about } allein - { $k } s { $equal ->
        [yes] über
       *[no] auf oder über
    } { $limit } mg/kg liegt
rules-over-never = durch eine Messung nie darüber
rules-halogen = { $about }: { $rule }.
rules-limit = { $id }: { $about }, als Anteil an { $basis }: { $rule }. Für: { $classes }.
rules-species = { $about } steht nur für { $species }: Innerhalb des Grenzwerts schließt es aus, dass zu viel davon da ist, und darüber zeigt es nichts davon.
rules-source_unknown = Das Element zählt nur aus bestimmten Quellen, die Röntgenstrahlen nicht zeigen: Was auf oder über dem Grenzwert liegt, ist unentschieden.
rules-mixed = Was in mehreren Werkstoffen zusammen innerhalb des Grenzwerts liegt, ist unentschieden, weil einer davon darüber sein kann.
rules-scope = Es geht um: { $scope }.
rules-question = Jemand muss beantworten: { $question } Bis dahin ist „darüber“ unentschieden.
rules-dated = Für das, was { $days } wird.
rules-exemption = { $entry }: { $scope }; { $bound ->
        [at_most] bis { $limit } mg/kg, die Zahl selbst eingeschlossen.
        [at_least] ab { $limit } mg/kg, die Zahl selbst eingeschlossen.
       *[none] kein Grenzwert genannt.
    } Text in Kraft ab: { $from ->
        [none] nicht angegeben
       *[other] { $from }
    }. Läuft ab: { $until ->
        [none] nicht angegeben
       *[other] { $until }
    }.
rules-exemption-starred = Nicht für Teile für die Allgemeinheit, die ein Kind in den Mund nehmen könnte, es sei denn, eine Prüfung zeigt, dass sie wenig genug Blei abgeben.
rules-exemption-not_found = Ob er noch gilt, oder für welche Gerätekategorien, ließ sich nicht feststellen: Ein Anspruch sperrt.
rules-area = Chrom(VI) auf Metall, je Fläche: negativ unter { $below } µg/cm², positiv über { $above } µg/cm², von einem bis zum anderen nicht eindeutig.
rules-route = Unentschiedenes { $about } ist zu klären nach { $method }: { $technique }. Für: { $classes }. Quelle: { $source }. { $confidence }
rules-route-halogens = Chlor oder Brom
basis-homogeneous_material = einem homogenen Werkstoff
basis-plastic = dem Kunststoff
basis-coating_alone = der Beschichtung allein, abgenommen von dem, worauf sie liegt (auch darunter ist unentschieden, bis bekannt ist, dass sie allein ist)
basis-article = dem Erzeugnis oder dem Teil davon
basis-packaging_component = der Verpackung oder dem Bestandteil davon
cli-rules_unknown = kein Regelwerk hat die Kennung „{ $found }“, und eine solche Datei gibt es nicht

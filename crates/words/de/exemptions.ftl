# German: what is said of exemptions and claims

## What a person says

act-claim = Ausnahme beansprucht: { $entry } für { $substance }; Beleg: { $evidence ->
        [none] nicht genannt
       *[other] { $evidence }
    }; zweite Person: { $second ->
        [none] fehlt
       *[other] { $second }
    }
act-renewal = Erneuerung von { $entry }: { $state ->
        [pending] beantragt, nicht entschieden
        [refused] abgelehnt
       *[not_filed] nicht beantragt
    }; Quelle: { $source ->
        [none] nicht genannt
       *[other] { $source }
    }; { $state ->
        [not_filed] Datum
       *[other] Datum des Antrags
    }: { $date ->
        [none] nicht angegeben
       *[other] { $date }
    }
act-mouthing = könnte ein Kind es in den Mund nehmen? { $value ->
        [cannot] nein, oder nicht für die Allgemeinheit
        [can] ja
       *[release_shown] ja, und eine Prüfung zeigt, dass es wenig genug abgibt
    }
act-cr6_area = Chrom(VI) je Fläche: { $area }; Labor: { $laboratory ->
        [none] nicht genannt
       *[other] { $laboratory }
    }; Bericht: { $report ->
        [none] nicht genannt
       *[other] { $report }
    }

## Reasons of a disposition

lot-reason-claim_covers = { $about } ist durch die beanspruchte Ausnahme { $entry } gedeckt, mit Beleg und dem Kürzel einer zweiten Person, bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }.
    .remedy = Den Beleg beim Bericht aufbewahren. Auf den Tag achten, an dem die Ausnahme abläuft.
lot-reason-claim_open = Ausnahme { $entry } ist für { $about } beansprucht, aber etwas ist noch offen: { $why }
    .remedy = Die Frage beantworten; bis dahin sperrt der Anspruch das Los.
lot-reason-claim_exceeded = Ausnahme { $entry } ist für { $about } beansprucht, und die Messungen liegen um mehr als den Sicherheitsabstand von k Sigma außerhalb ihres Grenzwerts.
    .remedy = Die Ausnahme deckt dies nicht. Los separieren, oder den Gehalt nach dem Referenzverfahren bestätigen lassen.
lot-reason-claim_expired = Ausnahme { $entry } ist für { $about } beansprucht; sie ist vor dem Inverkehrbringen des Produkts abgelaufen, und ihre Erneuerung wurde abgelehnt oder nie beantragt.
    .remedy = Die Ausnahme deckt dies nicht. Los separieren.
lot-reason-claim_not_covered = Ausnahme { $entry } ist für { $about } beansprucht und deckt es nicht: { $why }
    .remedy = Den Anspruch zurückziehen oder den passenden Eintrag beanspruchen; die Messung bleibt bestehen.
lot-reason-cr6_negative = Chrom(VI) je Fläche ist negativ, mit dem Bericht des Labors; das offene Chrom ist für diese Beschichtung also geklärt.
    .remedy = Den Laborbericht zusammen mit diesem aufbewahren.
lot-reason-cr6_inconclusive = Chrom(VI) je Fläche ist weder negativ noch positiv (0,10 bis 0,13 ug/cm2, oder eine Schranke, die keines von beiden zeigt).
    .remedy = Weitere Prüfstücke nach IEC 62321-7-1 prüfen lassen.
lot-reason-cr6_present = Chrom(VI) je Fläche ist positiv: Es ist in der Beschichtung vorhanden. Ob es mehr als 0,1 % der Schicht ist, ist eine Frage an das Labor; diese Prüfung ergibt keinen Wert in mg/kg.
    .remedy = Los separieren. Das Labor nach dem Gehalt der Schicht fragen, oder den Lieferanten nach einer Beschichtung ohne Chrom(VI).
lot-reason-cr6_no_report = Chrom(VI) je Fläche soll negativ sein, und das Labor oder sein Bericht ist nicht genannt.
    .remedy = Das Labor und seinen Bericht nennen.
lot-reason-cr6_other_class = Chrom(VI) je Fläche ist für einen Werkstoff angegeben, der kein Metall ist; die Prüfung je Fläche (IEC 62321-7-1) ist für Beschichtungen auf Metall, sie klärt hier also nichts.
    .remedy = Kunststoffe und Elektronik brauchen IEC 62321-7-2.

summary-claim_covers = { $about } durch eine beanspruchte Ausnahme gedeckt bei { $count }
summary-claim_exceeded = { $about } außerhalb des Grenzwerts der beanspruchten Ausnahme bei { $count }
summary-claim_expired = { $about } unter einer abgelaufenen Ausnahme bei { $count }
summary-claim_not_covered = { $about } von der beanspruchten Ausnahme nicht gedeckt bei { $count }
summary-cr6_negative = Chrom(VI) je Fläche negativ
summary-cr6_inconclusive = Chrom(VI) je Fläche nicht eindeutig
summary-cr6_present = Chrom(VI) je Fläche vorhanden
evidence-short-claim_open = Antworten zu einer beanspruchten Ausnahme
evidence-short-cr6_no_report = der Bericht des Labors zu Chrom(VI)
evidence-short-cr6_other_class = Chrom(VI) je Fläche, angegeben für etwas, das kein Metall ist

## What became of a claim

claim-covered = deckt
claim-open = offen
claim-exceeded = Grenzwert der Ausnahme überschritten
claim-expired = abgelaufen
claim-not_covered = deckt nicht
claim-not_needed = nicht nötig: keine Messung ist über dem Grenzwert oder unentschieden

number-within = die Ausnahme nennt einen Höchstwert, und die Messungen halten ihn auch mit k Sigma Aufschlag ein
number-within_minimum = die Ausnahme nennt einen Mindestwert, und die Messungen erreichen ihn auch nach Abzug von k Sigma
number-no_number = die Ausnahme nennt keinen Höchstwert, also gibt es keinen, den die Messungen überschreiten könnten
number-open = der Grenzwert der Ausnahme liegt innerhalb von k Sigma einer Messung
number-not_stated = eine Messung ist keine Zahl mit Unsicherheit
number-exceeded = um mehr als k Sigma außerhalb des Grenzwerts der Ausnahme

direction-at_most = höchstens { $limit } mg/kg
direction-at_least = mindestens { $limit } mg/kg
direction-none = kein Grenzwert genannt
claims-guard = Für Grenzwerte von Ausnahmen ist kein Screening-Band veröffentlicht, und hier wird keines erfunden: Über sie entscheidet ein Sicherheitsabstand von k = { $k } Sigma auf beiden Seiten des Grenzwerts.

question-status_not_found = es ließ sich nicht feststellen, ob der Eintrag noch gilt
question-category_not_stated = welche Gerätekategorie (Richtlinie 2011/65/EU)?
question-category_unclear = der Eintrag umfasst eine Hälfte der Kategorie: Industrie (9i) oder andere (9o), In-vitro-Diagnostika (8ivd) oder andere medizinische Geräte (8o)?
question-entry_categories_not_found = welche Gerätekategorien der Eintrag umfasst, ließ sich nicht feststellen
question-placing_date_not_stated = wann wird das Produkt in Verkehr gebracht?
question-earlier_text = in Verkehr gebracht, bevor dieser Text des Eintrags in Kraft trat; der frühere Text zählt, und kein geladenes Regelwerk enthält ihn
question-day_of_expiry = genau am Ablaufdatum in Verkehr gebracht, und das Gesetz sagt nicht, ob dieser Tag dazugehört
question-renewal_unknown = nach dem Ablaufdatum in Verkehr gebracht; ist eine Erneuerung beantragt und nicht entschieden?
question-renewal_not_sourced = eine Erneuerung soll beantragt und nicht entschieden sein; wo steht das, und an welchem Tag wurde sie beantragt?
question-renewal_after_review = die Erneuerung soll nach dem Tag dieser Auswertung beantragt worden sein, oder der Tag der Auswertung ist nicht angegeben; welche Tage stimmen?
question-renewal_late = die Erneuerung wurde später als 18 Monate vor dem Ablaufdatum beantragt, der Frist der Richtlinie 2011/65/EU, Artikel 5(5); gilt der Eintrag trotzdem?
question-mouthing_not_answered = könnte ein Kind das Teil, oder ein Teil, das sich davon löst, in den Mund nehmen?
question-class_not_known = welche Werkstoffklasse ist es?
question-layer_not_resolved = eine Schicht und das, was darunter liegt, sind gemittelt, die Messung ist also nicht die des Werkstoffs selbst; Schichten trennen
question-not_homogeneous = ein Verbundwerkstoff: Die Messung ist nicht die eines homogenen Werkstoffs; Werkstoffe trennen
question-group_not_known = welche Legierung (oder Glas, Keramik) ist es? Die Messungen zeigen es nicht, und der Anspruch sagt es nicht
question-number_not_stated = eine Messung ist keine Zahl mit Unsicherheit
question-bound_within_sigma = der Grenzwert des Eintrags liegt innerhalb von k Sigma einer Messung; länger messen oder bestätigen lassen
question-evidence_missing = welches Dokument zeigt, dass der Eintrag zutrifft?
question-second_missing = die Kürzel zweier verschiedener Personen sind nicht beide da

refusal-entry_not_in_book = kein geladenes Regelwerk hat diesen Eintrag
refusal-entry_near = kein geladenes Regelwerk hat einen so geschriebenen Eintrag; am nächsten kommt { $entry }
refusal-other_substance = der Eintrag betrifft einen anderen Stoff
refusal-other_class = der Eintrag betrifft eine andere Werkstoffklasse
refusal-other_group = der Eintrag betrifft eine andere Legierung, oder Messungen und Anspruch sind sich darin uneins
refusal-other_category = der Eintrag umfasst die Kategorie des Produkts nicht
refusal-child_could_mouth = der Eintrag umfasst nicht, was ein Kind in den Mund nehmen könnte

group-steel = Stahl
group-aluminium = Aluminium
group-copper = Kupferlegierung
group-zinc = Zink
group-tin = Zinn
group-lead = Blei
group-nickel = Nickel
group-titanium = Titan
group-magnesium = Magnesium
group-precious = Edelmetall
group-glass_ceramic = Glas oder Keramik
group-any = jeder Werkstoff

renewal-pending = Erneuerung beantragt, nicht entschieden
renewal-refused = Erneuerung abgelehnt
renewal-not_filed = keine Erneuerung beantragt
renewal-unknown = Erneuerung nicht bekannt

cr6-negative = negativ: kein Chrom(VI) gefunden
cr6-inconclusive = nicht eindeutig
cr6-positive = positiv: Chrom(VI) ist vorhanden

expiries-title = Welche Ausnahmen ablaufen, und wann
expiries-none = Keine beanspruchte oder mögliche Ausnahme hat hier ein Ablaufdatum.
expiry-claimed = { $day }: Ausnahme { $entry } für { $about } läuft ab ({ $renewal }). Beansprucht für { $count ->
        [one] einen Werkstoff
       *[other] { $count } Werkstoffe
    }, in: { $names }.
expiry-candidate = { $day }: Ausnahme { $entry } für { $about } läuft ab ({ $renewal }). Nicht beansprucht; das wäre vielleicht möglich, für { $count ->
        [one] einen Werkstoff
       *[other] { $count } Werkstoffe
    }, in: { $names }.
expiry-undated = { $day }: Ausnahme { $entry } für { $about } läuft ab ({ $renewal }). Nicht beansprucht; ob das möglich ist, hängt vom Tag des Inverkehrbringens ab, und der ist nicht angegeben. Es ginge um { $count ->
        [one] einen Werkstoff
       *[other] { $count } Werkstoffe
    }, in: { $names }.

# German: the working behind an outcome, sentence by sentence
explain-class = Beurteilt als { $class } ({ $from }).
explain-rule = { $book }, { $clause } ({ $confidence }): { $about } ist unter dem Grenzwert, wo der Wert plus { $k } Sigma auf oder unter { $low } mg/kg liegt, über dem Grenzwert, wo der Wert minus { $k } Sigma auf oder über { $high } mg/kg liegt, und dazwischen unentschieden.
explain-rule_open = { $book }, { $clause } ({ $confidence }): { $about } ist unter dem Grenzwert, wo der Wert plus { $k } Sigma auf oder unter { $low } mg/kg liegt; darüber ist es unentschieden, weil das Element allein den beschränkten Stoff nicht zeigen kann.
explain-rule_detection = { $book }, { $clause } ({ $confidence }): { $about } ist nur auf oder unter der eigenen Nachweisgrenze der Messung unter dem Grenzwert, über dem Grenzwert, wo der Wert minus { $k } Sigma auf oder über { $high } mg/kg liegt, und dazwischen unentschieden.
explain-rule_none = { $book }, { $clause } ({ $confidence }): { $about } wird in dieser Klasse nicht beurteilt.
explain-rule_every_class = { $book }: Die Klasse ist nicht bekannt, die Messung wird also nach jeder Klasse beurteilt, und das schlechteste Ergebnis zählt.
explain-rule_layers = { $book } hat kein Band für eine Schicht: Eine Messung vermischt sie mit dem, was darunter liegt.
explain-halogen_at_most = { $book }, { $clause } ({ $confidence }): { $about } ist innerhalb des Grenzwerts, wo der Wert plus { $k } Sigma höchstens { $limit } mg/kg ist, darüber, wo der Wert minus { $k } Sigma über { $limit } mg/kg liegt.
explain-halogen_below = { $book }, { $clause } ({ $confidence }): { $about } ist innerhalb des Grenzwerts, wo der Wert plus { $k } Sigma unter { $limit } mg/kg liegt, darüber, wo der Wert minus { $k } Sigma auf oder über { $limit } mg/kg liegt.
explain-value = Die Datei nennt „{ $written }“ für { $about }, das ist { $value }.
explain-value_plain = { $value } mg/kg
explain-value_none = Die Datei nennt nichts für { $about }.
explain-value_text = Die Datei nennt „{ $written }“ für { $about }, das ist kein brauchbarer Messwert.
explain-total = Die Summe von Chlor und Brom: { $value }.
explain-sigma = Ein Sigma ist { $sigma } mg/kg: { $from }.
explain-sigma_printed = Ein Sigma ist { $sigma } mg/kg: { $from } (ausgegebene Fehler stehen für { $multiple } Sigma).
explain-relative = { $percent } % des Werts werden quadratisch addiert, wie festgelegt.
explain-under_class = Als { $class }: { $outcome }. { $working }
explain-outcome = { $about }: { $outcome }.
explain-outcome_because = { $about }: { $outcome }. { $reason }
explain-next = Als Nächstes: { $list }
explain-not_the_cautions = Auch was die Warnhinweise sagen, ist nicht darin: Ein zu niedrig oder zu hoch gemessener Wert macht die Wahrscheinlichkeit falsch.
explain-rule_says = { $rule }: { $statement } (Irrtumsrisiko { $risk })
explain-other_rules_agree = Andere Entscheidungsregeln (einfach, abgesichert, mit bedingten Aussagen) würden zum Vergleich alle sagen: { $statement } (Irrtumsrisiko { $risk }).
explain-other_rules = Andere Entscheidungsregeln würden zum Vergleich sagen: { $list }.
explain-repeats = Eine von { $n } Messungen dieser Messstelle. { $said } { $counts }

# Repeats of one spot.
repeats-line = von Zeile { $line }
repeats-sigma = Ein Sigma ihres Mittelwerts: { $from }.
repeats-largest_limit = Keine der { $n } Messungen dieser Messstelle weist es nach; beurteilt wird die größte Nachweisgrenze.
repeats-mixed = Einige der { $n } Messungen dieser Messstelle sind Zahlen mit Unsicherheit und andere nicht: Sie werden nicht gemittelt, jede steht für sich, und die schlechteste ist maßgebend.
repeats-together = Zusammen beurteilt sind sie: { $outcome }; das zählt für den Werkstoff.
repeats-alone = Sie werden nicht zusammen beurteilt: Jede steht für sich, und die schlechteste ist maßgebend.
explain-limit_sum = Was der Grenzwert zählt, ergibt zusammen { $value } mg/kg, ein Sigma { $sigma } mg/kg.
explain-limit_sum_between = Was der Grenzwert zählt, ergibt zusammen zwischen { $low } und { $value } mg/kg, ein Sigma { $sigma } mg/kg am oberen Ende.
explain-limit_sum_from = Was der Grenzwert zählt, ergibt zusammen mindestens { $low } mg/kg, ein Sigma { $sigma } mg/kg.

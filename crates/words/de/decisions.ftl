# German: what is said of sigma, repeats, probabilities, decision rules, time, next steps and working

## Repeats of one spot

pooled-from-stated = die von den Messungen angegebene Unsicherheit, durch die Wurzel aus ihrer Anzahl
pooled-from-scatter = die Streuung der Messungen, durch die Wurzel aus ihrer Anzahl
pooled-from-scatter_of_few = die Streuung von { $n } Messungen, durch die Wurzel aus ihrer Anzahl; so wenige, dass { $t } für { $k } Sigma steht
pooled-disagree = Die { $n } Messungen dieser Messstelle weichen stärker voneinander ab, als ihre Unsicherheiten zulassen (Wahrscheinlichkeit { $p }): Die schlechteste davon ist maßgebend, nicht ihr Mittelwert.
pooled-agree = Die { $n } Messungen dieser Messstelle stimmen im Rahmen ihrer Unsicherheiten überein (Wahrscheinlichkeit { $p }).
pooled-not_asked = Die { $n } Messungen dieser Messstelle wurden zusammengenommen; ob sie übereinstimmen, lässt sich nicht prüfen.
pooled-largest_limit = Keine der { $n } Messungen dieser Messstelle hat es nachgewiesen: Die größte Nachweisgrenze ist maßgebend.
pooled-mixed = In einigen der { $n } Messungen dieser Messstelle nachgewiesen und in anderen nicht: Jede steht für sich, und die schlechteste ist maßgebend.
pooled-sigma = Ein Sigma des Mittelwerts: { $from }.
pooled-outlier = Messung { $which } liegt { $g } Standardabweichungen vom Mittelwert aller, mehr als die { $critical }, die der Zufall einmal in zwanzig Fällen überschreiten würde (Grubbs). Sie bleibt in den Befunden.

## Spots beside each other

spots-differ = Die { $n } Messstellen unterscheiden sich stärker, als der Zufall zeigen würde (Wahrscheinlichkeit { $p }): Die schlechteste Messstelle ist maßgebend.
spots-no-difference = Kein Unterschied zwischen den { $n } Messstellen war zu sehen (Wahrscheinlichkeit { $p }). Das beweist nicht, dass sie gleich sind; die schlechteste Messstelle ist maßgebend.

## Probability within a limit, and decision rules side by side

probability-about = { $percent } %
probability-more_than = mehr als { $percent } %
probability-less_than = weniger als { $percent } %
conformity-within = Wahrscheinlichkeit, dass der wahre Wert innerhalb des Grenzwerts von { $limit } mg/kg liegt: { $chance }.
conformity-beyond = Wahrscheinlichkeit, dass er außerhalb liegt: { $chance }.
conformity-repeatability_only = Das zählt nur die Wiederholbarkeit: Was Kalibrierung, Matrix und Probenahme hinzufügen, ist nicht darin.
conformity-risk = Wahrscheinlichkeit, dass diese Aussage für diesen Wert falsch ist: { $chance }.
rule-simple_acceptance = einfache Annahme (bis zum Grenzwert)
rule-guarded_acceptance = abgesicherte Annahme (bis zum Grenzwert abzüglich { $k } Sigma)
rule-non_binary = mit bedingten Aussagen ({ $k } Sigma auf beiden Seiten des Grenzwerts)
statement-pass = bestanden
statement-conditional_pass = bedingt bestanden
statement-conditional_fail = bedingt nicht bestanden
statement-fail = nicht bestanden

rule-bands = die hier verwendeten Screening-Bänder

## Measuring longer

longer-seconds = Etwa { $even } s für eine Entscheidung mit 50 % Wahrscheinlichkeit, etwa { $surely } s für 90 % (Schätzung).
longer-seconds_even_only = Etwa { $even } s für eine Entscheidung mit 50 % Wahrscheinlichkeit; für 90 % mehr als { $cap } s (Schätzung).
longer-never-inside_edges = Keine Messzeit kann entscheiden: Der Wert selbst liegt dort, wo diese Regel ihn unentschieden lässt.
longer-never-constant_part = Keine Messzeit kann entscheiden: Der Teil der Unsicherheit, den die Zeit nicht beseitigt, ist schon für sich zu groß.
longer-never-too_long = Es würde an einer Messstelle länger als { $cap } s dauern.
longer-never-not_known = Wie lange genügen würde, lässt sich nicht sagen: Messzeit oder Unsicherheit ist nicht bekannt.
longer-plan = { $readings ->
    [one] 1 Messung von { $longest } s würde
   *[other] { $readings } Messungen von höchstens { $longest } s, zusammen { $total } s, würden
} { $settles } von { $of } offenen Ergebnissen mit einer Wahrscheinlichkeit von je 90 % klären (Schätzung).
longer-plan-none = { $of ->
        [one] Längeres Messen würde das eine offene Ergebnis nicht klären.
       *[other] Längeres Messen würde keines der { $of } offenen Ergebnisse klären.
    }
longer-plan_even = { $readings ->
    [one] 1 Messung von { $longest } s würde
   *[other] { $readings } Messungen von höchstens { $longest } s, zusammen { $total } s, würden
} { $settles } von { $of } offenen Ergebnissen mit einer Wahrscheinlichkeit von je 50 % klären (Schätzung).
longer-plan-nothing_open = Kein Ergebnis ist unentschieden oder nicht fähig; längeres Messen könnte also nichts klären.

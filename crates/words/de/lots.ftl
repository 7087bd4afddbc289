# German: what is said of trust, sampling, lots and laboratories

## Trust: checks and the readings between them

lot-reason-trust_failed = Eine Kontrolle neben { $count ->
        [one] einer Messung
       *[other] { $count } Messungen
    } ist nicht bestanden: { $about }. Auf das, was dort gemessen wurde, ist kein Verlass.
    .remedy = Das Gerät in Ordnung bringen, die Kontrollprobe messen, bis sie gut ist, dann diese Messungen zwischen zwei guten Kontrollen wiederholen und die hier genannten mit dem Grund beiseitelegen.
lot-reason-trust_not_bracketed = { $count ->
        [one] Eine Messung liegt
       *[other] { $count } Messungen liegen
    } nicht zwischen zwei guten Kontrollen: { $about }. Eine Messung gilt nur mit den guten Kontrollen als verlässlich, die die Regel dafür verlangt.
    .remedy = Die Kontrollprobe jetzt messen, falls seither nichts verändert wurde, oder diese Messungen zwischen zwei guten Kontrollen wiederholen und die hier genannten mit dem Grund beiseitelegen.
lot-reason-trust_none = { $count ->
        [0] Es ist weder Kontrollprobe noch Blindprobe angegeben; nichts zeigt also, dass das Gerät stimmte.
        [one] Bei einer Messung (von insgesamt { $of }) deckt keine Kontrolle { $about } ab. Es wurde dafür keine passende Kontrollprobe gemessen: Gerät { $instrument ->
            [none] nicht angegeben
           *[other] { $instrument }
        }, Modus { $mode ->
            [none] nicht angegeben
           *[other] { $mode }
        }, Klasse { $class_name }.
       *[other] Bei { $count } von { $of } Messungen deckt keine Kontrolle { $about } ab. Es wurde dafür keine passende Kontrollprobe gemessen: Gerät { $instrument ->
            [none] nicht angegeben
           *[other] { $instrument }
        }, Modus { $mode ->
            [none] nicht angegeben
           *[other] { $mode }
        }, Klasse { $class_name }.
    }
    .nothing = Kontrollmessungen sind da, und keine davon deckt diese Messungen ab: Es wurde keine Kontrollprobe mit gleichem Gerät, Modus und gleicher Klasse gemessen, in derselben Datei oder zu bekannter Zeit. Eine, deren Klasse niemand nennt, deckt nichts ab.
    .remedy = Eine Kontrollprobe derselben Klasse vor und nach diesen Messungen messen{ $instrument ->
        [none] { "" }
       *[other] , auf Gerät { $instrument }
    }{ $mode ->
        [none] { "" }
       *[other] , im Modus { $mode }
    }{ $class ->
        [none] { "" }
        [unknown] , sobald ihre Klasse angegeben ist
       *[other] { " " }({ $class_name })
    }. Eine Kontrolle zählt nur in derselben Datei oder zu bekannter Zeit; eine, deren Klasse niemand nennt, deckt nichts ab.
lot-reason-trust_not_certified = Eine passende Kontrollprobe wurde gemessen, und ihr zertifizierter Wert für { $about } ist nicht angegeben: Nichts zeigt, dass das Gerät für { $about } stimmte, bei { $count ->
        [one] einer Messung (von insgesamt { $of })
       *[other] { $count } von { $of } Messungen
    }.
    .expired = Die Kontrollprobe { $sample } wurde gemessen, und ihr Zertifikat { $certificate } endete am { $cause }: Nichts zeigt, dass das Gerät für { $about } stimmte, bei { $count ->
        [one] einer Messung (von insgesamt { $of })
       *[other] { $count } von { $of } Messungen
    }.
    .open = Die Kontrollprobe { $sample } wurde gemessen (Zertifikat { $certificate }) und zeigt für { $about } nichts, bei { $count ->
        [one] einer Messung (von insgesamt { $of })
       *[other] { $count } von { $of } Messungen
    }: { $cause }.
    .remedy = Den zertifizierten Wert aus dem Zertifikat der Kontrollprobe angeben. Nennt das Zertifikat keinen, eine Kontrollprobe messen, die einen hat.
    .expired_remedy = Ein Zertifikat der Kontrollprobe { $sample } angeben, das am Tag ihrer Messung gilt. Noch einmal messen hilft nicht, solange das Zertifikat abgelaufen ist.
    .open_remedy = In der Datei oder in den Einstellungen angeben, was den Messungen der Kontrollprobe { $sample } fehlt (Unsicherheit, Einheit oder Tag). Auf dieselbe Weise noch einmal gemessen, zeigt sie nicht mehr.
lot-reason-trust_not_judged = { $count ->
        [one] Eine Kontrollmessung ist
       *[other] { $count } Kontrollmessungen sind
    } abgetrennt und nicht zu beurteilen (siehe die Liste der Kontrollen); nichts zeigt also, dass das Gerät stimmte.
    .alone = { $count ->
        [one] Eine unentschiedene Messung von { $about } heißt
       *[other] { $count } unentschiedene Messungen von { $about } heißen
    } nur dem Namen oder der Kennzeichnung nach Kontrolle. Kein Zertifikat sagt, was die Probe enthält, und andere Messungen der Datei nennen weder Los noch Teil: Es kann Ware dieses Loses sein.
    .remedy = Die zertifizierten Werte der Kontrollprobe angeben. Los oder Teil der Ware in der Datei zeigt, welche Messungen keine Ware sind.
lot-reason-check_times_differ = { $count ->
        [one] Eine Messung dauerte
       *[other] { $count } Messungen dauerten
    } länger als eine Kontrolle derselben Klasse oder weniger als halb so lang: Die Kontrolle zeigt davon weniger, als sie könnte.
    .remedy = Kontrollen so lange messen wie Ware.
lot-reason-checks_far_apart = Die guten Kontrollen von { $count ->
        [one] einer Messung
       *[other] { $count } Messungen
    } liegen mehr als einen Tag auseinander: { $about }. US EPA Method 6200 (9.4) verlangt eine Kontrolle zu Beginn und am Ende jedes Arbeitstags.
    .remedy = Diese Messungen zwischen guten Kontrollen eines Tages wiederholen und die hier genannten mit dem Grund beiseitelegen.
lot-reason-mark_not_taken = { $count ->
        [one] Eine Messung wurde als Kontrolle benannt oder gekennzeichnet und bleibt Ware
       *[other] { $count } Messungen wurden als Kontrollen benannt oder gekennzeichnet und bleiben Ware
    }: Eine Kennzeichnung nimmt keine Messung aus einem Los oder Teil heraus, und keine, die über dem Grenzwert ist, solange kein Zertifikat ihre Probe nennt.
    .remedy = Los und Teil von Kontrollmessungen in der Datei leer lassen und das Zertifikat der Kontrollprobe angeben.
evidence-short-trust_failed = neue Messungen für die neben einer nicht bestandenen Kontrolle
evidence-short-trust_not_bracketed = Messungen zwischen zwei guten Kontrollen
evidence-short-trust_none = Kontrollmessungen
evidence-short-trust_not_certified = zertifizierte Werte einer Kontrollprobe
evidence-short-trust_not_judged = beurteilte Kontrollmessungen
evidence-short-check_times_differ = die Messzeit einer Kontrolle
evidence-short-checks_far_apart = Kontrollen am selben Tag
evidence-short-mark_not_taken = eine Kennzeichnung, die nicht übernommen wurde
trust-ok = zwischen guten Kontrollen
trust-none = keine Kontrolle deckt es ab
trust-not_bracketed = nicht zwischen guten Kontrollen
trust-failed = eine Kontrolle daneben wurde nicht bestanden
trust-aside = von Hand beiseitegelegt
check-kind-check = Kontrollprobe
check-kind-blank = Blindprobe
check-verdict-good = gut
check-verdict-warning = gut, mit Warnung (|zeta| über 2)
check-verdict-failed = nicht bestanden
check-verdict-no_uncertainty = nicht beurteilt: keine Unsicherheit
check-verdict-not_measured = nicht gemessen
check-verdict-not_seen = nicht beurteilt: nicht nachgewiesen, oder so unsicher, dass der zertifizierte Wert ganz verfehlt sein könnte
check-verdict-unit_unknown = nicht beurteilt: Die Einheit ist nicht angegeben
check-verdict-expired = nicht gewertet: Das Zertifikat ist abgelaufen
check-verdict-day_unknown = nicht gewertet: Das Zertifikat hat einen letzten Tag, und der Tag der Messung ist nicht bekannt
check-verdict-no_certificate = kein zertifizierter Wert
check-scores = zeta { $zeta }, E_n { $en }
report-trust = Verlässlichkeit
report-trust_text = Messungen gelten als verlässlich { $bracket ->
        [before] nach einer guten Kontrolle
        [per_shift] in einer Schicht mit einer guten Kontrolle und keiner schlechten
       *[before_and_after] zwischen zwei guten Kontrollen
    }, für jedes Element, jedes Gerät, jeden Modus und jede Klasse der Kontrolle. Eine Kontrollprobe ist gut nach { $rule ->
        [en] |E_n| (höchstens 1)
       *[zeta] |zeta| (höchstens 3; über 2 Warnung)
    } gemäß ISO 13528; ein Fehler, dessen Vielfaches niemand angibt, zählt hier als drei Sigma. Eine Blindprobe ist gut, wo nichts gefunden wird: höchstens drei Sigma, oder unter ihrer Nachweisgrenze. Eine nicht bestandene Kontrollprobe wird nur durch sich selbst entlastet, eine Blindprobe durch eine saubere Blindprobe. Nicht bestandene Kontrollen sperren ein Los immer; fehlende Verlässlichkeit sperrt es, wenn nicht eine Einstellung unten sie auf „nur Hinweis“ setzt; ebenso gute Kontrollen, die mehr als einen Tag auseinanderliegen (US EPA Method 6200, 9.4). Losumfang und Stichprobenplan: siehe die Gründe jedes Loses.
report-trust_none = Es kam keine Kontrollmessung an.
report-trust_by_rows = { $names }: Nicht jede Messung hat ein lesbares Datum mit Uhrzeit; die Reihenfolge der Zeilen steht also für die zeitliche, nur innerhalb dieser Datei.
report-trust_one_stream = Einige Kontrollen geben weder Gerät noch Modus an: Mit den Messungen, die auch keine angeben, zählen sie als ein Gerät in einem Modus.
report-trust_capped = Die ersten { $shown } von { $total } Kontrollmessungen sind gedruckt; findings.json enthält alle.
report-trust_sample = Kontrolle
report-trust_element = Element
report-trust_measured = Gemessen
report-trust_certified = Zertifiziert, U
report-trust_bias = Abweichung
report-trust_recovery = Wiederfindung, %
report-trust_zeta = zeta
report-trust_en = E_n
report-trust_verdict = Beurteilung
report-trust_readings = Messungen

## What a person says

target-lot_material = Werkstoff { $material } des Teils { $part } in Los { $lot } von { $supplier }
target-reading = Messung in Zeile { $line } von { $name }

act-tube_anode = Anode der Röntgenröhre: { $value }
act-limit_answer = Grenzwert { $row } von { $book }: { $answer ->
        [yes] er gilt
       *[no] er gilt nicht
    }
act-certificate = Kontrollprobe { $sample }: { $element } { $value }, U { $u } (k = { $k }), Zertifikat { $id }, { $expires ->
        [none] kein Ablaufdatum angegeben
       *[other] gültig bis { $expires }
    }
act-blank_samples = Blindproben: { $value }
act-bracket = eine Messung gilt als verlässlich { $value ->
        [before] nach einer guten Kontrolle
        [per_shift] in einer Schicht mit einer guten Kontrolle und keiner schlechten
       *[before_and_after] zwischen zwei guten Kontrollen
    }
act-shift_starts = Schichten beginnen um { $value }
act-check_rule = eine Kontrollmessung ist gut nach { $value ->
        [en] |E_n| (höchstens 1)
       *[zeta] |zeta| (höchstens 3)
    }
act-control_chart = Regelkarten: Grenzen aus { $limits ->
        [baseline] den ersten Punkten
        [certificate] dem Zertifikat
       *[other] den ersten Punkten, sonst dem Zertifikat
    }, Basis von { $points ->
        [none] 20
       *[other] { $points }
    } Punkten, { $rules ->
        [nelson] Nelson-Regeln
       *[other] Western-Electric-Regeln
    }
act-sampling_plan = Stichprobenplan: { $rule ->
        [zero_acceptance] Annahmezahl null, Sicherheit { $confidence } %, um { $share } % fehlerhafte Stücke zu entdecken
       *[single] Einfachstichprobe nach MIL-STD-105E, Niveau { $level ->
            [none] II
           *[other] { $level }
        }, { $severity ->
            [none] normale Prüfung
            [normal] normale Prüfung
            [tightened] verschärfte Prüfung
            [reduced] reduzierte Prüfung
           *[other] { $severity }
        }, AQL { $aql }
    }{ $seed ->
        [none] { "" }
       *[other] , Zufallsliste aus Startwert { $seed }
    }
act-mark = gilt als { $value }
act-set_aside = beiseitegelegt: { $value }
act-laboratory = Laborergebnis: { $analyte } { $value }{ $u ->
        [none] { "" }
       *[other] , U { $u } (k = { $k })
    }; Verfahren: { $method ->
        [none] nicht genannt
       *[other] { $method }
    }; Labor: { $laboratory ->
        [none] nicht genannt
       *[other] { $laboratory }
    }; Bericht: { $report ->
        [none] nicht genannt
       *[other] { $report }
    }; Datum: { $date ->
        [none] nicht angegeben
       *[other] { $date }
    }
act-lift = Sperre aufgehoben: { $reason }{ $about ->
        [none] { "" }
       *[other] { " " }für { $about }
    }; warum: { $why }; erste Person: { $by ->
        [none] fehlt
       *[other] { $by }
    }; zweite Person: { $second ->
        [none] fehlt
       *[other] { $second }
    }
act-hold_ends = die Sperre endet durch: { $who ->
        [none] niemand genannt
       *[other] { $who }
    }; bis: { $until ->
        [none] kein Tag festgelegt
       *[other] { $until }
    }; separiert: { $quarantined ->
        [none] nicht angegeben
       *[other] { $quarantined } Stück
    }{ $place ->
        [none] { "" }
       *[other] , { $place }
    }

## The history file

problem-history_version = „{ $found }“ ist nicht der Name eines Verlaufs, der hier gelesen wird.
    .remedy = Einen Verlauf wählen, den dieses Programm geschrieben hat; seine erste Zeile lautet { $expected }. Ein neuerer Name heißt, dass ihn ein neueres Programm geschrieben hat.
problem-history_line = Diese Zeile des Verlaufs ist abgeschnitten oder enthält zu viel: { $found }
    .remedy = Eine vollständige Kopie des Verlaufs nehmen. Jede Zeile ist ein Datensatz, mit einem Tabulator zwischen seinen Feldern.
## Change of material

lot-reason-material_changed = { $of ->
        [0] „{ $about }“ gehört zu einer anderen Klasse als die angenommenen Lose: Das ist nicht der Werkstoff, den Sie freigegeben haben.
       *[other] { $count } von { $of } verglichenen { $of ->
            [one] Element
           *[other] Elementen
        } von „{ $about }“ { $count ->
            [one] weicht
           *[other] weichen
        } von den angenommenen Losen ab: Das ist nicht der Werkstoff, den Sie freigegeben haben.
    }
    .remedy = Den Lieferanten fragen, was sich geändert hat, und den Werkstoff vor der Verwendung erneut freigeben lassen.
lot-reason-change_not_compared = „{ $about }“ wurde nicht mit früheren angenommenen Losen verglichen: { $of ->
        [0] Lieferant, Teil oder Klasse ist nicht bekannt, oder kein Element lässt sich vergleichen
       *[other] { $count } der { $of } nötigen Lose stehen im Verlauf
    }.
    .remedy = Einen Verlauf mit mindestens fünf angenommenen Losen dieses Lieferanten, Teils und Werkstoffs laden.
evidence-short-material_changed = eine neue Freigabe eines geänderten Werkstoffs
evidence-short-change_not_compared = genug frühere Lose zum Vergleich
## Sampling

lot-reason-lot_size_too_small = { $count } Stück wurden aus einem Los gemessen, das angeblich { $of ->
        [one] ein Stück
       *[other] { $of } Stück
    } hat: Eine der beiden Zahlen ist falsch.
    .remedy = Den Losumfang oder die Namen der Stücke berichtigen.
lot-reason-lot_size_missing = Ein Stichprobenplan ist angegeben, der Losumfang nicht; niemand kann also sagen, wie viele Stück er verlangt.
    .remedy = Losumfang angeben.
evidence-short-lot_size_too_small = ein Losumfang, der zu den gemessenen Stücken passt
evidence-short-lot_size_missing = Losumfang
sampling-title = Stichprobenplan:
sampling-plan_single = Einfachstichprobe nach MIL-STD-105E, Niveau { $level }, { $severity ->
        [normal] normale Prüfung
        [tightened] verschärfte Prüfung
        [reduced] reduzierte Prüfung
       *[other] { $severity }
    }, AQL { $aql } (Tabelle { $table }){ $letter ->
        [none] { "" }
       *[other] , Kennbuchstabe { $letter }
    }{ $led ->
        [same] { "" }
       *[other] , dessen Pfeil zu Buchstabe { $led } führt
    }: { $whole ->
        [yes] alle { $size } Stück des Loses entnehmen.
       *[no] { $n } von { $size } Stück entnehmen.
    }
sampling-plan_zero = Annahmezahl null: { $whole ->
        [yes] alle { $size } Stück des Loses entnehmen: Weniger geben keine { $confidence } % Sicherheit gegen { $share } % fehlerhafte Stücke ({ $bad } in diesem Los).
       *[no] { $n } von { $size } Stück entnehmen. Ist keines davon fehlerhaft, zeigt das mit { $confidence } % Sicherheit, dass weniger als { $bad } Stück des Loses ({ $share } %) es sind.
    }
sampling-table = Die Zahlen der Tabelle, nur für andere Merkmale: annehmen bei { $ac }, zurückweisen bei { $re } oder mehr. Für beschränkte Stoffe ist die Annahmezahl 0, wie der Plan auch lautet.
sampling-units = Los von { $size } Stück. Verlangt von jedem Werkstoff: { $take } Stück. Gemessen vom am wenigsten geprüften Werkstoff: { $measured }. Verschiedene Stücke gesehen: { $units }; davon nach dem Screening { $conforming } ohne Beanstandung, { $undecided } unentschieden, { $over } über dem Grenzwert. Ein unentschiedenes Stück zählt nie als „ohne Beanstandung“.
sampling-list = Zu entnehmende Stücke, zufällig aus 1 bis { $size } gezogen (SplitMix64, Startwert { $seed }; { $n } Stück; die Stücke nummerieren, wie sie liegen, dann kann jeder dieselbe Liste noch einmal ziehen):
sampling-list_capped = Die ersten { $shown } von { $total } zu entnehmenden Stücken sind gedruckt; findings.json enthält alle.
sampling-risk = Risiko dieses Plans für ein Los von { $size }, wenn { $n } Stück zufällig entnommen werden und keines über dem Grenzwert sein darf (hypergeometrische Verteilung): angenommen mit einer Wahrscheinlichkeit von mindestens 95 %, wo höchstens { $at95 } Stück fehlerhaft sind, mindestens 50 %, wo höchstens { $at50 }, mindestens 10 %, wo höchstens { $at10 }.
sampling-risk_none = Jedes Stück des Loses wird entnommen: Es bleibt kein Stichprobenrisiko, nur das des Messens.
sampling-risk_process = Für den Prozess, aus dem das Los kam, oder ein Los, das viel größer ist als die Stichprobe (Binomialverteilung): dieselben Wahrscheinlichkeiten bei { $at95 } %, { $at50 } % und { $at10 } % fehlerhaften Stücken.
sampling-zero_process = In einem unbegrenzt großen Los brauchte dieselbe Sicherheit { $n } Stück.
sampling-at_most = Mit { $confidence } % Sicherheit sind, falls die Stücke zufällig entnommen wurden, höchstens { $most } der { $size } Stück fehlerhaft; jedes Stück, dessen Konformität nicht gezeigt wurde, zählt als fehlerhaft.
sampling-isolated = Normale, verschärfte und reduzierte Prüfung und die Regeln für den Wechsel zwischen ihnen sind für eine fortlaufende Serie von Losen; für ein einzelnes Los gelten sie nicht (ISO 2859-2 behandelt einzelne Lose).
sampling-proves = Ein Plan nennt ein Risiko und nichts weiter: Das Gesetz gilt je homogenem Werkstoff und kennt keine AQL, und über kein einzelnes Stück, das nicht gemessen wurde, ist etwas gezeigt.
sampling-curve = Wie wahrscheinlich ein Los von { $size } bei einer Stichprobe von { $n } Stück angenommen wird
sampling-curve_across = fehlerhafte Stücke im Los
sampling-curve_up = Annahmewahrscheinlichkeit
sampling-curve_zero = keines darüber (beschränkte Stoffe)
sampling-curve_table = Tabelle, annehmen bei { $ac }
## Control charts

report-charts = Kontrollmessungen im Lauf der Zeit
report-charts_text = Eine Regelkarte je Gerät, Modus, Kontrollprobe und Element. Sie beurteilt keine Messung und entscheidet hier nichts: Sie zeigt einen Sprung oder eine Drift, solange einzelne Kontrollen noch gut sind. Ein ausgefüllter Kreis ist eine Messung dieser Prüfung, ein Ring eine frühere; eine Raute mit Nummer ist ein Signal, das unter der Karte bei dieser Nummer erklärt ist.
report-charts_capped = Die ersten { $shown } von { $total } Regelkarten sind gedruckt, zuerst die, die etwas zu sagen haben; alle stehen in findings.json.
report-charts_others = { $count ->
        [one] Eine weitere Regelkarte beruht allein auf dem Verlauf, weil diese Prüfung ihre Probe nicht gemessen hat; sie steht
       *[other] { $count } weitere Regelkarten beruhen allein auf dem Verlauf, weil diese Prüfung ihre Proben nicht gemessen hat; sie stehen
    } in findings.json.
report-signals_capped = Die ersten { $shown } von { $total } Signalen sind aufgeführt; alle stehen in findings.json.
report-history = Geladener Verlauf: { $checks } Zahlen aus Kontrollmessungen, { $records } Datensätze zu Losen. SHA-256:
report-history_none = Es wurde kein Verlauf geladen: Die Regelkarten zeigen nur diese Prüfung.

chart-name = { $element } in { $sample } ({ $class }), Gerät { $instrument }
chart-values = Wert, mg/kg
chart-ranges = Gleitende Spannweite, mg/kg
chart-upper = obere Grenze { $value }
chart-centre = Mittellinie { $value }
chart-lower = untere Grenze { $value }
chart-largest = größter { $value }
chart-smallest = kleinster { $value }
chart-baseline = Basis: { $points } Punkte
chart-no_time = keine Zeit angegeben
chart-limits-baseline = Mittellinie { $centre } mg/kg, Eingriffsgrenzen { $lower } bis { $upper } mg/kg (drei Sigma auf jeder Seite, Sigma { $sigma }): aus den ersten { $points } Punkten, ihrem Mittelwert und ihrer mittleren gleitenden Spannweite durch 1,128 (ISO 7870-2).
chart-limits-certificate = Mittellinie { $centre } mg/kg, Eingriffsgrenzen { $lower } bis { $upper } mg/kg (drei Sigma auf jeder Seite): aus dem Zertifikat. Sigma { $sigma } ist dessen Unsicherheit zusammen mit der Wiederholbarkeit einer Messung, { $from ->
        [site_table] aus der eigenen Tabelle
       *[stated] wie die Messungen sie angeben
    }.
chart-none-too_few_points = Keine Eingriffsgrenzen: Es sind { $points } Punkte da, und eine Basis braucht { $needed }. Ob das Gerät statistisch beherrscht ist, ist nicht bekannt.
chart-none-no_spread = Keine Eingriffsgrenzen: Alle Punkte der Basis sind gleich. Ob das Gerät statistisch beherrscht ist, ist nicht bekannt.
chart-none-no_certificate = Keine Eingriffsgrenzen: Sie sollen aus dem Zertifikat kommen, und keines, das am Tag des neuesten Punkts gilt, nennt dieses Element. Ob das Gerät statistisch beherrscht ist, ist nicht bekannt.
chart-none-no_repeatability = Keine Eingriffsgrenzen: Sie sollen aus dem Zertifikat kommen, und weder die eigene Tabelle noch jede Messung sagt, wie gut sich eine Messung wiederholt. Ob das Gerät statistisch beherrscht ist, ist nicht bekannt.
chart-rules-western_electric = den Western-Electric-Regeln (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3)
chart-rules-nelson = den Nelson-Regeln (Journal of Quality Technology 16, 1984)
chart-no_signal = Kein Signal in { $points } Punkten nach { $rules }.
chart-signals = { $count ->
        [one] Ein Signal
       *[other] Signale an { $count } Stellen
    } in { $points } Punkten nach { $rules }:
chart-signal_at = { $first }, { $value } mg/kg: { $codes }.
chart-signal_run = { $count } Punkte von { $first } bis { $last }, der erste { $value } mg/kg: { $codes }.
chart-drift = Der Wert driftet um { $slope } mg/kg je Tag (Standardunsicherheit { $sigma }; { $n } Punkte über { $span } Tage, 95 %, t { $t }): { $percent } % davon in 30 Tagen.
chart-drift_short = Der Wert driftet um { $slope } mg/kg je Tag (Standardunsicherheit { $sigma }; { $n } Punkte über { $span } Tage, 95 %, t { $t }). Weniger als ein Tag sagt nichts über einen Monat.
chart-no_drift = Es zeigt sich keine Drift: { $slope } mg/kg je Tag mit einer Standardunsicherheit von { $sigma } ({ $n } Punkte über { $span } Tage, 95 %, t { $t }).
chart-drift_unknown = Über Drift wird nichts gesagt: Dazu braucht es { $n } Messungen zu zwei oder mehr Zeiten.
chart-without_time = { $count ->
        [one] Eine Messung gibt keine Zeit an und hat keinen Platz in der Reihenfolge
       *[other] { $count } Messungen geben keine Zeit an und haben keinen Platz in der Reihenfolge
    }.
chart-not_drawn = Die neuesten Punkte sind gezeichnet; { $count } frühere nicht.

signal-beyond_3s = jenseits von drei Sigma
signal-two_of_three_beyond_2s = zwei von dreien jenseits von zwei Sigma auf einer Seite
signal-four_of_five_beyond_1s = vier von fünfen jenseits von einem Sigma auf einer Seite
signal-eight_on_one_side = acht auf einer Seite der Mittellinie
signal-nine_on_one_side = neun auf einer Seite der Mittellinie
signal-six_rising_or_falling = sechs nacheinander steigend oder fallend
signal-fourteen_alternating = vierzehn abwechselnd auf und ab
signal-fifteen_within_1s = fünfzehn innerhalb von einem Sigma: für diese Grenzen zu schön, um wahr zu sein
signal-eight_none_within_1s = acht auf beiden Seiten, keiner innerhalb von einem Sigma
signal-moving_range_beyond = der Sprung vom Punkt davor liegt über der Grenze der gleitenden Spannweite
change-changed = Das ist nicht der Werkstoff, den Sie freigegeben haben, gemessen an { $lots } angenommenen { $lots ->
        [one] Los
       *[other] Losen
    } ({ $elements } Elemente verglichen).
change-other_class = Das ist nicht der Werkstoff, den Sie freigegeben haben: Die { $lots } angenommenen Lose sind { $class }.
change-not_changed = Bei keinem Element zeigt sich eine Abweichung von den { $lots } angenommenen Losen ({ $elements } verglichen). Das ist kein Beweis, dass es derselbe Werkstoff ist.
change-too_few = Zu wenige zum Vergleich: Der Verlauf hat { $lots } { $lots ->
        [one] angenommenes Los
       *[other] angenommene Lose
    } dieses Lieferanten, Teils und Werkstoffs; { $fewest } sind nötig.
change-not_comparable = Nicht mit angenommenen Losen verglichen: Lieferant, Teil oder Klasse ist nicht bekannt, oder kein Element lässt sich vergleichen.
change-moved = { $element }: { $from } auf { $to } mg/kg (x { $factor }), { $spreads } Streuungen entfernt, { $allowed } erlaubt.
change-not_measured = In den meisten angenommenen Losen, und jetzt nicht gemessen: { $list }.
report-change = Änderung des Werkstoffs
report-change_text = Jedes Element im Verhältnis zum Rest des Kilogramms, verglichen mit den angenommenen Losen desselben Lieferanten, Teils, Werkstoffs und derselben Klasse im Verlauf. Ihre Mitte ist der Median, ihre Streuung lässt das entfernteste Fünftel weg. Von Losen, die sich nicht geändert haben, werden höchstens 1 % als geändert bezeichnet, für alle Elemente zusammen (simuliert für normale Streuung; der Anteil ist unsere eigene Wahl). Was nicht nachgewiesen wurde, kann irgendwo unter seiner Nachweisgrenze liegen und wird deswegen nie eine Änderung genannt. Wenige Lose lassen nur große Änderungen erkennen.
report-change_says = Neben den angenommenen Losen
report-change_capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.

## Suppliers

supplier-next = Nächstes Los: { $severity ->
        [normal] normale Prüfung
        [tightened] verschärfte Prüfung
        [reduced] reduzierte Prüfung
       *[none] die Prüfung ist ausgesetzt, bis der Lieferant sich verbessert hat
    } (Wechselregeln von MIL-STD-105E, über { $lots } { $lots ->
        [one] entschiedenes Los
       *[other] entschiedene Lose
    } mit Tag).
supplier-may_reduce = Zehn nacheinander wurden angenommen: Reduzierte Prüfung darf beantragt werden, bei gleichmäßiger Fertigung und mit einer Person, die das entscheiden darf (aus dem Gedächtnis).
supplier-no_series = Ohne Lieferant und Teil gibt es keine Serie von Losen.
supplier-near_miss = { $substance } lag in { $lots } { $lots ->
        [one] Los
       *[other] Losen
    } um weniger als ein Sigma unter dem Grenzwert; das nächste lag { $nearest } Sigma vom Rand.
supplier-trend = { $element } in { $material } ändert sich über { $lots } Lose um { $percent } % je Los: { $first } mg/kg im ersten, { $last } mg/kg im letzten.
supplier-laboratory-over_was_within = { $class }: { $count } im Screening darüber und im Labor innerhalb (falsch positiv).
supplier-laboratory-below_was_over = { $class }: { $count } im Screening darunter und im Labor darüber (falsch negativ).
supplier-laboratory-open_was_within = { $class }: { $count } im Screening unentschieden und im Labor innerhalb.
supplier-laboratory-open_was_over = { $class }: { $count } im Screening unentschieden und im Labor darüber.
supplier-laboratory-agreed = { $class }: { $count } vom Labor bestätigt.
supplier-laboratory-open = { $class }: { $count } mit einem Laborergebnis, das nichts klärt, oder nicht beurteilt.
supplier-open_holds = Gesperrt: { $list }.
supplier-without_day = { $count ->
        [one] Ein Los hat
       *[other] { $count } Lose haben
    } keinen Tag und { $count ->
        [one] ist
       *[other] sind
    } in der Serie und den Trends nicht enthalten.
report-suppliers = Lieferanten und Teile
report-suppliers_text = Die Teile dieser Prüfung über alle Lose im Verlauf und hier. Ein Los, das in beiden steht, zählt einmal, mit seinem neuesten Tag. All das wird gezeigt und entscheidet nichts: Eine gute Vorgeschichte macht kein Los besser. Ein Trend ist eine Gerade durch die Logarithmen, Los für Los, die der Zufall über alle betrachteten zusammen in weniger als 5 % der Fälle ergäbe.
report-suppliers_known = Was bekannt ist
report-suppliers_capped = Die ersten { $shown } von { $total } sind gedruckt; findings.json enthält alle.
## What laboratories found

lot-reason-lab_over = Labor: { $analyte } { $value } liegt über { $limit } mg/kg (Verfahren { $method ->
        [none] nicht genannt
       *[other] { $method }
    }; { $laboratory ->
        [none] Labor nicht genannt
       *[other] { $laboratory }
    }, Bericht { $report ->
        [none] nicht genannt
       *[other] { $report }
    }, { $date ->
        [none] Tag nicht angegeben
       *[other] { $date }
    }); das Screening ergab: { $screen }.{ $effect ->
        [accept] { " " }Eine beanspruchte Ausnahme deckt dies.
        [hold] { " " }Ob der Grenzwert gilt oder eine Ausnahme dies deckt, ist offen.
       *[other] { "" }
    }
    .remedy = Los separieren. Nur eine gültige Ausnahme, deren Grenzwert den Wert des Labors deckt, kann daran etwas ändern.
lot-reason-lab_open = Labor: { $analyte } { $value } liegt weder sicher innerhalb noch sicher über { $limit } mg/kg (Verfahren { $method ->
        [none] nicht genannt
       *[other] { $method }
    }, Bericht { $report ->
        [none] nicht genannt
       *[other] { $report }
    }); das Screening ergab: { $screen }.{ $effect ->
        [accept] { " " }Andere Ergebnisse klären dies.
       *[other] { "" }
    }
    .remedy = Das Labor um eine kleinere Unsicherheit, eine niedrigere Nachweisgrenze oder (bei Chrom und Brom) um die Bestimmung des Stoffs selbst bitten: Cr(VI), PBB und PBDE.
lot-reason-lab_within = Labor: { $analyte } { $value } liegt innerhalb des Grenzwerts von { $limit } mg/kg (Verfahren { $method }; { $laboratory }, Bericht { $report }, { $date }); das Screening ergab: { $screen }.
    .remedy = Den Bericht des Labors zusammen mit diesem aufbewahren. Er gilt für die Probe, die geprüft wurde: Bei einem beschichteten oder gemischten Stück muss er sagen, welche Schicht oder welcher Werkstoff das war.
lot-reason-lab_no_uncertainty = Labor: { $analyte } { $value } ist ohne Unsicherheit angegeben, liegt also weder sicher innerhalb noch sicher über { $limit } mg/kg; das Screening ergab: { $screen }.
    .remedy = Das Labor um die erweiterte Messunsicherheit und ihr k bitten.
lot-reason-lab_not_traceable = Labor: { $analyte } { $value } lässt sich nicht nachschlagen, hebt also nichts auf (Verfahren: { $method ->
        [none] fehlt
       *[other] { $method }
    }; Labor: { $laboratory ->
        [none] fehlt
       *[other] { $laboratory }
    }; Bericht: { $report ->
        [none] fehlt
       *[other] { $report }
    }; Tag: { $date ->
        [none] fehlt
       *[other] { $date }
    }); das Screening ergab: { $screen }.
    .remedy = Verfahren, Labor, Berichtsnummer und Tag eintragen, wie der Bericht sie nennt. Ein Tag nach dem dieser Auswertung gilt als Schreibfehler.
lot-reason-lab_group_missing = Ein Labor hat nur zu PBB oder nur zu PBDE geantwortet; { $about } wird erst durch beide geklärt.
    .remedy = Das Labor um die andere Gruppe nach IEC 62321-6 oder IEC 62321-12 bitten, oder um den Gesamtbromgehalt, falls er so niedrig ist, dass keine von beiden vorliegen kann.
lot-reason-lab_not_placed = Ein Laborergebnis klärt hier nichts: { $analyte } { $value } (Bericht { $report ->
        [none] nicht genannt
       *[other] { $report }
    }) gilt für einen Werkstoff, der in diesem Los nicht gemessen oder aufgelistet ist, für mehrere zugleich, oder für ein anders geschriebenes Los oder einen anders geschriebenen Lieferanten.
    .remedy = Lieferant, Los, Teil und Werkstoff so nennen wie die Datei der Messungen.

## What people did

lot-reason-set_aside = { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } { $count ->
        [one] wurde
       *[other] wurden
    } von jemandem beiseitegelegt; nichts hier beruht auf { $count ->
        [one] ihr
       *[other] ihnen
    }, und die Befunde behalten sie.
    .remedy = In der Bemerkung angeben, warum; erneut messen, wo weniger übrig sind, als der Plan verlangt.
lot-reason-set_aside_over = { $about ->
        [none] Eine beiseitegelegte Messung
       *[other] { $about } in einer beiseitegelegten Messung
    } ist über dem Grenzwert ({ $count } von { $of } beiseitegelegten). Das Beiseitelegen entlastet nichts.
    .remedy = Diese Probe ins Labor geben, oder die Messung wieder aufnehmen.
lot-reason-set_aside_open = { $about ->
        [none] Eine beiseitegelegte Messung
       *[other] { $about } in einer beiseitegelegten Messung
    } war nicht unter dem Grenzwert ({ $count } von { $of } beiseitegelegten). Das Beiseitelegen entlastet nichts.
    .remedy = Diese Probe ins Labor geben, oder die Messung wieder aufnehmen.
lifted-undecided = unentschiedenes Ergebnis
lifted-trust_none = keine Kontrollmessungen
lifted-trust_not_certified = zertifizierte Werte nicht angegeben
lifted-trust_not_judged = Kontrollmessungen nicht beurteilt
lifted-trust_not_bracketed = nicht zwischen zwei guten Kontrollen
lifted-checks_far_apart = Kontrollen mehr als einen Tag auseinander
lifted-sampling_none = kein Stichprobenplan
lifted-lot_size_missing = kein Losumfang
lifted-sampling_too_few = zu wenige Stück
lifted-units_not_stated = Stücke nicht angegeben
lifted-material_changed = Werkstoff geändert
lot-reason-lifted = Die Sperre „{ $reason }“{ $about ->
        [none] { "" }
       *[other] { " " }für { $about }
    } wurde aufgehoben von { $by } und { $second }: { $why }
    .remedy = Den Grund bei diesem Bericht aufbewahren.
lot-reason-lift_not_allowed = { $by ->
        [none] Jemand
       *[other] { $by }
    } wollte „{ $reason }“{ $about ->
        [none] { "" }
       *[other] { " " }für { $about }
    } aufheben ({ $why }). Das kann niemand: Zu zweit lassen sich nur Sperren wegen unentschiedener Ergebnisse, fehlender Verlässlichkeit, fehlender Stichprobe oder eines geänderten Werkstoffs aufheben.
    .remedy = Die Messung, die Datei oder das Laborergebnis beibringen, das die Sperre beendet.
lot-reason-lift_not_countersigned = Die Sperre „{ $reason }“{ $about ->
        [none] { "" }
       *[other] { " " }für { $about }
    } sollte aufgehoben werden ({ $why }), und die Kürzel zweier verschiedener Personen sind nicht da (erste: { $by ->
        [none] fehlt
       *[other] { $by }
    }; zweite: { $second ->
        [none] fehlt
       *[other] { $second }
    }). Sie sperrt weiterhin.
    .remedy = Eine zweite Person ihr Kürzel dazusetzen lassen.
lot-reason-lift_not_needed = Die Sperre „{ $reason }“{ $about ->
        [none] { "" }
       *[other] { " " }für { $about }
    } wurde aufgehoben ({ $why }), und eine solche Sperre gibt es nicht, oder mehrere Lose hier haben keinen Namen, und die Eingabe kann jedes davon meinen.
    .remedy = Die Eingabe zurücknehmen, oder zuerst die Lose in ihren Dateien benennen.
lot-reason-hold_overdue = Die Sperre sollte bis { $about } enden, und dieser Tag ist vorbei.
    .remedy = Angeben, wer sie beendet, und bis wann.
lot-reason-quarantine_exceeds_lot = { $count } Stück sollen separiert sein, aber das Los hat nur { $of }.
    .remedy = Noch einmal zählen: Der Losumfang oder die Zahl der separierten Stücke ist falsch.
act-not_matched = { $act }: für { $target }; das kommt hier nicht vor. Es klärt nichts.
act-not_aside = { $act }: für { $target }, eine Kontrollmessung: Sie zählt in keinem Los, und was sie über das Gerät sagt, bleibt.
act-not_followed = { $act }: für { $target }; ein Zertifikat oder die Liste der Blindproben nennt diese Probe. Sie bleibt eine Kontrolle; ist sie Ware, ihren Namen dort herausnehmen.

lab-verdict-within = innerhalb
lab-verdict-not_the_species = das Element sagt nichts über den Stoff
lab-verdict-no_uncertainty = keine Unsicherheit
lab-verdict-open = weder innerhalb noch darüber
lab-verdict-over = darüber

report-laboratory_results = Laborergebnisse
report-laboratory_screen = Screening
report-laboratory_verdict = Aussage
report-laboratory_value = Ergebnis
report-laboratory_method = Verfahren
report-laboratory_source = Labor, Bericht, Tag
report-laboratory_text = Ein Ergebnis ist innerhalb, wo Wert + U innerhalb des gesetzlichen Grenzwerts liegt, darüber, wo Wert - U außerhalb davon liegt; U wird mit k von mindestens 2 angesetzt. Das schlechteste Ergebnis eines Stoffs zählt, und das Ergebnis des Screenings bleibt daneben stehen.
report-laboratory_not_traceable = lässt sich nicht nachschlagen: klärt nichts
report-laboratory_not_placed = passt zu mehreren Werkstoffen: klärt nichts
report-set_aside = Beiseitegelegte Messungen
report-set_aside_text = Diese Messungen hat jemand beiseitegelegt. Sie zählen für nichts, und die Befunde behalten sie mit ihren Ergebnissen.
report-aside = beiseitegelegt, zählt für nichts
report-set_aside_why = Warum
report-unmatched = Eingaben, die nichts betreffen, was hier vorkommt
report-hold_what = Was sie beendet
report-hold_who = Wer
report-hold_until = Bis wann
report-hold_quarantined = Separiert (Stück)
report-hold_place = Wo
cli-set_aside = { $file }: { $count ->
        [one] eine Messung ist
       *[other] { $count } Messungen sind
    } von jemandem beiseitegelegt; { $count ->
        [one] ihre Zeile bleibt
       *[other] ihre Zeilen bleiben
    } bei den verwendeten.
cli-not_matched = Hinweis: { $text }

## Bills of materials

bill-merged = „{ $found }“ steht zweimal da und zählt einmal.
bill-respelled = „{ $found }“ gelten als zwei Schreibweisen eines Namens.
bill-column_ignored = Die Spalte „{ $found }“ sagt nichts über Teile und Werkstoffe und bleibt weg.
problem-readings_not_bill = Die Spalte „{ $found }“ enthält Messwerte: Das ist eine Tabelle von Messungen und keine Werkstoffliste.
    .remedy = Eine Tabelle laden, die jeden Werkstoff des Teils auflistet, auch die, die niemand gemessen hat.
cli-bill = { $file } Zeile { $line }, Spalte { $column }: { $text }
cli-bill_twice = { $file }: Für { $target } sagen die Einstellungen oder eine andere Werkstoffliste schon etwas. Eines von beiden herausnehmen; nichts wurde geschrieben.

## The summary

summary-lab_over = { $about } laut Labor darüber
summary-lab_open = { $about } laut Labor offen
summary-lab_within = { $about } laut Labor innerhalb
summary-set_aside_over = { $about ->
        [none] über dem Grenzwert
       *[other] { $about } über dem Grenzwert
    } in Beiseitegelegtem
summary-set_aside_open = { $about ->
        [none] offen
       *[other] { $about } offen
    } in Beiseitegelegtem
evidence-short-lab_no_uncertainty = Unsicherheit eines Laborergebnisses
evidence-short-lab_not_traceable = Verfahren, Labor, Bericht und Tag eines Laborergebnisses
evidence-short-lab_group_missing = Ergebnisse zu PBB und PBDE
evidence-short-lab_not_placed = der Werkstoff eines Laborergebnisses
evidence-short-set_aside = beiseitegelegte Messungen
evidence-short-lifted = aufgehobene Sperren
evidence-short-lift_not_allowed = eine Sperre, die niemand aufheben kann
evidence-short-lift_not_countersigned = das Kürzel einer zweiten Person
evidence-short-lift_not_needed = eine Aufhebung ohne Sperre
evidence-short-hold_overdue = ein neuer Tag für das Ende einer Sperre
evidence-short-quarantine_exceeds_lot = die Zahl der separierten Stücke

supplier-counts = Bekannte Lose: { $accept } angenommen, { $hold } gesperrt, { $not_accept } nicht angenommen.

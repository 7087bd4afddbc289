# German: what is said of line overlaps, thickness, composition and stoichiometry

# Composition: what it suggests, why, and what it contradicts. A suggestion is never a decision.
composition-suggests = Die Zusammensetzung legt nahe: { $what } ({ $numbers }). Grund: { $because }.
composition-suggests_perhaps = Die Zusammensetzung legt ein Metall nahe, vielleicht { $what } ({ $numbers }). Grund: { $because }.
composition-class-metal = ein Metall
composition-class-polymer = ein Kunststoff
composition-class-composite = ein Verbundwerkstoff
composition-reason-mostly_metal = Metalle ergeben zusammen { $metals } %
composition-reason-little_seen = alles Nachgewiesene ergibt zusammen { $sum } %, obwohl jedes Element gemessen wurde, das der Hauptbestandteil sein könnte; leichte Elemente werden nicht gesehen
composition-reason-much_chlorine = Chlor ist ein Hauptelement und Metalle sind es nicht, wie in PVC und anderen chlorierten Kunststoffen
composition-reason-conductor_in_laminate = Leitermetalle neben mindestens zweien von Brom, Silicium und Calcium, wie in einer Leiterplatte
composition-contests-metals_in_polymer = Die angegebene Klasse ist ein Kunststoff, und Metalle ergeben zusammen { $sum } % ({ $numbers }).
composition-contests-no_metal_in_metal = Die angegebene Klasse ist ein Metall, und von jedem Metall wurde so gut wie nichts gefunden, obwohl jedes Hauptmetall gemessen wurde.
composition-contests-halogen_in_metal = Die angegebene Klasse ist ein Metall, und es ist so viel Brom oder Chlor da wie in einem flammgeschützten oder chlorierten Kunststoff.
composition-calibration-pvc_in_polymer_mode = Chlor ist ein Hauptelement, und der Modus ist einer für Kunststoffe ohne Chlor: Seine Zahlen können weit danebenliegen.
composition-calibration-metal_in_polymer_mode = Ein Metall wurde in einem Modus für Kunststoffe gemessen: Seine Zahlen können weit danebenliegen.
composition-calibration-metal_in_soil_mode = Ein Metall wurde in einem Modus für Boden oder Erz gemessen: Seine Zahlen können weit danebenliegen.
composition-calibration-plastic_in_metal_mode = Ein Kunststoff wurde in einem Modus für Metalle gemessen: Seine Zahlen können weit danebenliegen.
composition-calibration-plastic_in_soil_mode = Ein Kunststoff wurde in einem Modus für Boden oder Erz gemessen: Seine Zahlen können weit danebenliegen.
family-group-steel = ein Stahl oder eine andere Eisenlegierung
family-group-aluminium = eine Aluminiumlegierung
family-group-copper = eine Kupferlegierung
family-group-zinc = eine Zinklegierung
family-group-tin = eine Zinnlegierung
family-group-lead = eine Bleilegierung
family-group-nickel = eine Nickellegierung
family-group-titanium = eine Titanlegierung
family-group-magnesium = eine Magnesiumlegierung
family-group-precious = ein Edelmetall
family-fits = Es liegt in den veröffentlichten Bereichen von { $name } ({ $source }).
family-may_be = Es kann { $name } sein ({ $source }): Ein Rand liegt innerhalb von drei Sigma, oder etwas wurde nicht gemessen.
family-near = Die nächste Familie ist { $name } ({ $source }), verfehlt um { $by } % bei { $element }.
family-also = Ebenso möglich: { $names }.
next-state_class_suggested = Werkstoffklasse angeben; die Zusammensetzung legt nahe: { $what }.
class-from-contested = angegeben, und das Gemessene widerspricht ihr
lot-reason-class_contested = Das Gemessene widerspricht der Klasse klar, die für { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    } angegeben ist; beurteilt wurde nach jeder Klasse, und das schlechteste Ergebnis zählt.
    .remedy = Das Teil ansehen und prüfen, was der Strahl traf; die Klasse berichtigen, die Werkstoffe trennen oder erneut messen.
lot-reason-calibration_doubtful = { $count } von { $of } { $of ->
        [one] Messung wurde
       *[other] Messungen wurden
    } in einem Messmodus gemacht, der nicht zum Werkstoff passt; die Zahlen können also weit danebenliegen.
    .remedy = In dem Modus erneut messen, der zum Werkstoff passt.
evidence-short-class_contested = eine Klasse, der das Gemessene widerspricht
evidence-short-calibration_doubtful = Messungen im passenden Modus

## Cautions beside an outcome

doubt-line_overlap = { $partner } ({ $partner_line }, { $gap } eV entfernt) liegt auf der Linie { $line } von { $about }: Unkorrigiert sähe es nach { $apparent } mg/kg { $about } aus ({ $basis }).
doubt-other_line = Falls { $about } an seiner Linie { $line } gemessen wurde: { $partner } ({ $partner_line }, { $gap } eV entfernt) liegt darauf und sähe nach { $apparent } mg/kg { $about } aus ({ $basis }).
doubt-sum_peak = Zwei als einer gezählte Impulse von { $partner } ({ $partner_line }, { $gap } eV entfernt) liegen auf der Linie { $line } von { $about }: Unkorrigiert sähen sie nach { $apparent } mg/kg { $about } aus ({ $basis }).
doubt-escape_peak = Ein Escape-Peak von { $partner } ({ $partner_line }, { $gap } eV entfernt) liegt auf der Linie { $line } von { $about }: Unkorrigiert sähe er nach { $apparent } mg/kg { $about } aus ({ $basis }).
doubt-tube_line = Die eigene { $partner }-Linie der Röntgenröhre ({ $partner_line }, { $gap } eV entfernt) liegt auf der Linie { $line } von { $about }: Unkorrigiert kann sie nach { $apparent } mg/kg { $about } aussehen ({ $basis }).
doubt-thin_piece = Das Stück ist dünn: { $percent } % vom Signal eines dicken Stücks fehlen, { $about } wird also zu niedrig gemessen.
doubt-strong_below = Das Gerät hat dafür korrigiert; wäre ein Zehntel davon übrig (Annahme: übliche Praxis, keine Quelle), könnte der Wert über dem Rand liegen. Das BL klärt es nicht: an einer freien Linie messen, oder das Referenzverfahren anwenden.
doubt-strong_over = Ohne dies wäre der Wert nicht über dem Grenzwert. Von einem Labor bestätigen lassen, bevor etwas zurückgewiesen wird.

lot-reason-overlap_unresolved = { $about } ist unter dem Grenzwert bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }, aber eine starke Linie eines anderen Elements liegt auf seiner Linie, und was eine Korrektur davon übrig gelassen haben kann, reicht bis zum Rand.
    .remedy = An einer freien Linie messen, oder eine Probe nach dem Referenzverfahren im Labor prüfen lassen.
lot-reason-over_may_be_overlap = { $about } ist über dem Grenzwert bei { $count } von { $of } { $of ->
        [one] Messung
       *[other] Messungen
    }, vielleicht nur durch eine starke Linie eines anderen Elements, die auf seiner Linie liegt.
    .remedy = Los separieren, und vor einer Zurückweisung von einem Labor nach dem Referenzverfahren bestätigen lassen.
evidence-short-overlap_unresolved = eine Linie ohne Überlagerung
evidence-short-over_may_be_overlap = das Ergebnis eines Labors

## What an element allows at most

bound-hexavalent = Höchstens { $most } mg/kg Cr(VI), wenn alles Chrom sechswertig wäre.
bound-brominated = Höchstens { $pbde } mg/kg irgendeines PBDE und { $pbb } mg/kg irgendeines PBB, wenn alles Brom in dem Kongener mit einem Bromatom wäre; höchstens { $deca } mg/kg, wenn es DecaBDE wäre. Es kann ebenso gut von einem Flammschutzmittel kommen, das die Richtlinie nicht beschränkt, etwa TBBPA oder DBDPE.
bound-pops = Das zeigt nicht, dass der Grenzwert von { $limit } mg/kg für PBDE der Verordnung (EU) 2019/1021 in der durch (EU) 2025/1482 geänderten Fassung (von einer Sekundärquelle wiedergegeben) eingehalten ist; das ist ein anderes Gesetz.

# German: how it writes numbers and dates in text. Decimal sign and the order of a date are CLDR's for de (from memory); the
# grouping sign of CLDR is left out: a point between thousands is a decimal sign to half the world.

language-name = Deutsch
locale-decimal = ,
locale-two_digits = yes
locale-day = { $day }.{ $month }.{ $year }
locale-moment = { $day }, { $time }

line-name = Zeile { $line }
report-page_number = Seite { $page } von { $pages }
sure-confirmed = bestätigt
sure-restated = von einer Sekundärquelle wiedergegeben
sure-memory = aus dem Gedächtnis
sure-derived = abgeleitet

cli-help_language =
    Jeder Befehl nimmt auch:
    --language TAG         die Sprache seiner Meldungen: { $list }
    --report-language TAG  die Sprache des Berichts, wo sie eine andere ist (review)
    Befunde und Verlauf sind in jeder Sprache dieselben Bytes.
cli-no_language = „{ $found }“ ist keine Sprache dieses Programms; vorhanden sind { $list }

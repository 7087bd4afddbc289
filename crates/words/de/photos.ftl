# German: photographs of what was measured

act-photo = Foto { $file }{ $x ->
        [none] , keine Messstelle markiert
       *[other] , Messstelle bei { $x } und { $y } Tausendsteln
    }

photo-at_hand = Das Foto { $file } liegt vor.
    .remedy = Nichts zu tun.
photo-not_at_hand = Das Foto { $file } wurde genannt und liegt nicht vor.
    .remedy = Die Datei zusammen mit den Ergebnissen laden, unter dem Namen, den sie hatte, als sie genannt wurde.
photo-other_file = Das Foto { $file } ist ein anderes Bild als das genannte: Seine Prüfsumme weicht ab.
    .remedy = Die genannte Datei laden, oder diese neu nennen.
photo-several_files = Mehrere Dateien heißen { $file }, und nirgends steht, welche gemeint ist.
    .remedy = Die Datei mit ihrem Ordner nennen, oder ihre SHA-256 angeben.
photo-no_photo = Die Datei { $file } ist weder ein JPEG- noch ein PNG-Bild.
    .remedy = Das Bild als JPEG oder PNG speichern und diese Datei laden. Kamera oder Telefon lassen sich oft so einstellen, dass sie JPEG schreiben.
photo-damaged_photo = Das Bild { $file } ist abgeschnitten oder beschädigt.
    .remedy = Die Datei noch einmal von der Kamera oder vom Stick kopieren.
photo-photo_too_large = Das Bild { $file } ist größer, als ein Bericht aufnimmt: bis zu 1 MiB, 16 Millionen Bildpunkte, und 64 MiB für eine Datei, die überhaupt gelesen wird.
    .remedy = Eine kleinere Kopie machen (1024 Bildpunkte an der längeren Seite genügen) und diese nennen. Die Seite macht das von selbst.
photo-too_many_photos = Das Bild { $file } geht über das hinaus, was eine Prüfung aufnimmt: 200 Fotos, zusammen 24 MiB.
    .remedy = Fotos weglassen, die nichts Weiteres zeigen, oder die Lieferung auf zwei Prüfungen aufteilen.
photo-trouble = { $text } Es gehört zu: { $of }. { $remedy }

report-photos = Fotos
report-photos_text = Was jemand einer Messung oder einem Werkstoff zugeordnet hat. Der Ring mit dem Kreuz kennzeichnet die gemessene Stelle, wie diese Person ihn gesetzt hat; das Bild ist kein Ergebnis. Bilder werden ohne das gedruckt, was eine Kamera dazuschreibt.
report-photos_missing = Fotos, die genannt wurden und nicht vorliegen
report-photos_no_reading = Diese Messung oder dieser Werkstoff kommt in den Ergebnissen nicht vor.
report-photos_spot = Gemessene Stelle: { $x } % von links, { $y } % von oben.
report-photos_no_spot = Keine Messstelle ist markiert.
report-photos_outcome = { $substances }: { $outcome }
report-photos_file = { $file }, { $width } × { $height } Bildpunkte
report-photos_original = SHA-256 der Datei, wie sie geladen wurde:
report-photos_print = SHA-256 des hier gedruckten Bildes:
report-photos_alt = Foto { $file }, zeigt { $of }. { $n ->
        [0] Keine Messstelle ist markiert.
        [one] Die Messstelle ist markiert.
       *[other] { $n } Messstellen sind markiert.
    }

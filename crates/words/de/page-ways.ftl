# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = Darstellung
page-theme-system = wie das System
page-theme-light = hell
page-theme-dark = dunkel

## Addresses

page-address-nothing = Die Adresse zeigt auf etwas, das hier nicht ist. Was sie nennt, kann zu anderen Dateien gehört haben.
page-address-no-data = Die Adresse gehört zu einer Prüfung, die hier nicht offen ist. Laden Sie deren Dateien noch einmal oder holen Sie die Prüfung zurück.
page-address-typed-gone = Was in die Filter getippt wurde, wird in Adressen nicht aufbewahrt und ist weg. Der Rest der Adresse wird gezeigt.

## Doors

page-door-change = Einstieg wechseln
page-door-inspect-go-on = Mit den offenen Dateien als Prüfung weitermachen
page-door-ship-go-on = Mit den offenen Dateien als Selbstprüfung weitermachen
page-event-door-inspect = Dies ist jetzt die Prüfung einer Lieferung. Nichts ging verloren; der andere Einstieg bleibt offen.
page-event-door-ship = Dies ist jetzt die Selbstprüfung eines Lieferanten. Nichts ging verloren; der andere Einstieg bleibt offen.

## The self-check sheet

page-take-self-check = Blatt zur Selbstprüfung
page-take-self-check-why = Für Ihre Unterlagen und Ihren Kunden: was der Kunde sperren oder nicht annehmen würde und was vor dem Versand zu tun ist. Es ist keine Konformitätserklärung.
page-take-self-check-count = { $n ->
    [one] Ein Los.
   *[other] { $n } Lose.
  }
page-take-self-check-none = Es gibt kein Los, also ist über keines etwas zu sagen.

## The next action

page-do = Nächster Schritt
page-do-later = Später
page-do-later-done = Zurückgestellt: { $what }. Das kommt am Ende wieder.
page-do-waiting = { $n ->
    [one] Eines wurde zurückgestellt.
   *[other] { $n } Dinge wurden zurückgestellt.
  }
page-do-put-off = Zurückgestelltes aufnehmen
page-event-last = Zuletzt:
page-do-book = Regelwerk des Kunden hinzufügen
page-do-book-why = Die Prüfung richtet sich nach den eigenen Grenzwerten Ihres Kunden. Ohne dessen Datei wird das mitgelieferte Regelwerk verwendet.
page-do-bring = Ergebnisdateien laden
page-do-bring-why = Es ist noch nichts da: Nehmen Sie die Dateien vom Stick, wie sie sind.
page-do-bring-why-ship = Laden Sie die Messungen dessen, was Sie versenden wollen.
page-do-unread = { $name } ansehen
page-do-unread-why = { $name } konnte nicht gelesen werden; etwas Gemessenes kann daher fehlen.
page-do-question-why = Eine Datei lässt das offen.
page-do-question-unit-not-stated = Die Einheit angeben
page-do-question-sigma-multiple-not-stated = Angeben, wie viele Sigma die Fehler sind
page-do-question-decimal-mark-unclear = Das Dezimalzeichen angeben
page-do-question-date-order-unclear = Die Reihenfolge der Datumsangaben angeben
page-do-question-class-not-stated = Die Werkstoffklasse angeben
page-do-columns = { $n ->
    [one] Eine Spalte ansehen
   *[other] { $n } Spalten ansehen
  }
page-do-columns-why = In { $name } kann niemand sicher sein, wie das gemeint war.
page-do-refused = { $n ->
    [one] Eine abgewiesene Zeile ansehen
   *[other] { $n } abgewiesene Zeilen ansehen
  }
page-do-refused-why = Zeilen von { $name } konnten nicht verwendet werden. Bei jeder steht, warum; berichtigen Sie die Datei und laden Sie sie noch einmal, oder lassen Sie es dabei.
page-do-evidence-class = Die Werkstoffklasse angeben
page-do-evidence-layer = Schicht und blanken Werkstoff getrennt benennen oder beide als überzogen angeben
page-do-evidence-sigma = Angeben, wie viele Sigma die Fehler sind
page-do-evidence-thickness = Die Dicke angeben
page-do-evidence-materials = Angeben, woraus das Teil besteht
page-do-evidence-lot-size = { $named ->
    [yes] Den Umfang von Los { $lot } angeben
   *[no] Den Umfang des Loses ohne Namen angeben
  }
page-do-evidence-units-to-take = { $named ->
    [yes] Angeben, wie viele Stücke von Los { $lot } zu entnehmen sind
   *[no] Angeben, wie viele Stücke vom Los ohne Namen zu entnehmen sind
  }
page-do-evidence-sampling = Die Stichprobe ansehen
page-do-evidence-trust = Die Kontrollproben nennen
page-do-evidence-certificate = Das Zertifikat der Kontrollprobe angeben
page-do-evidence-doubtful = Andere Messungen des Zweifelhaften laden
page-do-evidence-claims = Den Anspruch auf eine Ausnahme vervollständigen
page-do-claim = Nachsehen, ob eine Ausnahme es deckt
page-do-claim-why = { $substance } liegt in { $material } über dem Grenzwert, und niemand hat eine Ausnahme beansprucht.
page-do-evidence-cr6 = Das Ergebnis je Fläche vervollständigen
page-do-evidence-laboratory = Das Laborergebnis vervollständigen
page-do-evidence-books = Klären, welche Regelwerke gelten
page-do-evidence-halogens = Klären, welches Regelwerk für Halogene gilt
page-do-evidence-holds = Die Sperren ansehen
page-do-again-trust-failed = Noch einmal messen, laden, die alten Messungen beiseitelegen
page-do-again-trust-none = Eine Kontrollprobe für diese Messungen messen und laden
page-do-again-check = Die Messungen der Kontrollprobe vervollständigen
page-do-again-trust-not-bracketed = Zwischen zwei Kontrollen messen, laden, die alten Messungen beiseitelegen
page-do-again-sampling-too-few = Mehr Stücke messen und die Messungen laden
page-do-again-material-not-measured = Den fehlenden Werkstoff messen und die Messungen laden
page-do-lot-hold = { $named ->
    [yes] Angeben, wer die Sperre von Los { $lot } beendet
   *[no] Angeben, wer die Sperre des Loses ohne Namen beendet
  }
page-do-lot-not-accept = { $named ->
    [yes] Angeben, wer über Los { $lot } entscheidet
   *[no] Angeben, wer über das Los ohne Namen entscheidet
  }
page-do-field-title = Dem Bericht einen Titel geben
page-do-field-inspector = Schreiben, wer gemessen hat
page-do-field-place = Schreiben, wo gemessen wurde
page-do-field-reviewed-at = Den Tag schreiben
page-do-field-contact = Schreiben, wer Fragen beantwortet
page-do-field-customer = Schreiben, an wen der Bericht geht
page-do-field-why = Im Kopf des Berichts ist dort eine leere Zeile.
page-do-sheet = Das Blatt zur Selbstprüfung mitnehmen
page-do-sheet-why = Es sagt, was Ihr Kunde sperren würde und was vor dem Versand zu tun ist.
page-do-report = Den Bericht mitnehmen
page-do-report-why = Sonst wartet jetzt nichts auf Sie. Der Bericht ist noch nicht gespeichert.
page-do-again = Mit der nächsten Lieferung beginnen
page-do-again-why = Alles ist getan und gespeichert.
page-do-again-why-left = { $n ->
    [one] Eines blieb offen; der Bericht sagt es. Alles ist gespeichert.
   *[other] { $n } Dinge blieben offen; der Bericht sagt es. Alles ist gespeichert.
  }
page-do-lesson = Zur nächsten Lieferung gehen
page-do-lesson-why = Sehen Sie sich diese Lieferung an, solange Sie möchten.
page-do-lesson-last = Wählen, was jetzt zu tun ist
page-do-lesson-last-why = Dies war die letzte Lieferung.
page-do-fresh = Zurück zum Übungsraum
page-do-fresh-why = Werten Sie dieses Los aus wie ein echtes. Ein anderer Startwert ergibt ein anderes Los.
page-do-room = Zu den Lektionen
page-do-room-why = Der Raum zeigt, wo Sie aufgehört haben.
page-do-lessons = Zurück zu den Lektionen
page-do-exercise = Aufgabe { $n } beantworten
page-do-exercise-why = Sie entscheiden zuerst; dann zeigt das Programm, wie es rechnet.
page-do-after = Nach dieser Lektion weitergehen
page-do-after-why = Alle Aufgaben auf dieser Seite sind beantwortet.

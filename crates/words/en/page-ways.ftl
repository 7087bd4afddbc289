# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = Look
page-theme-system = as the system
page-theme-light = light
page-theme-dark = dark

## Addresses

page-address-nothing = The address points at something that is not here. What it names may have been of other files.
page-address-no-data = The address is of an inspection that is not open here. Bring its files again, or bring the inspection back.
page-address-typed-gone = What was typed into the filters is not kept in addresses and is gone. The rest of the address is shown.

## Doors

page-door-change = Change the door
page-door-inspect-go-on = Go on with the open files as an inspection
page-door-ship-go-on = Go on with the open files as a self-check
page-event-door-inspect = This is now the inspection of a delivery. Nothing was lost; the other door is still there.
page-event-door-ship = This is now a supplier's self-check. Nothing was lost; the other door is still there.

## The self-check sheet

page-take-self-check = Self-check sheet
page-take-self-check-why = For your records and your customer: what the customer would hold or not accept, and what to do about it before shipping. It is not a declaration of conformity.
page-take-self-check-count = { $n ->
    [one] One lot.
   *[other] { $n } lots.
  }
page-take-self-check-none = There is no lot, so there is nothing to say of one.

## The next action

page-do = Next
page-do-later = Later
page-do-later-done = Put off: { $what }. It comes back at the end.
page-do-waiting = { $n ->
    [one] One thing was put off.
   *[other] { $n } things were put off.
  }
page-do-put-off = Take up what was put off
page-event-last = Last:
page-do-book = Add the customer's rule book
page-do-book-why = The check goes by your customer's own limits. Without its file, the book that comes with this program is used.
page-do-bring = Bring result files
page-do-bring-why = Nothing has come in yet: take the files from the stick as they are.
page-do-bring-why-ship = Bring the readings of what you are about to ship.
page-do-unread = Look at { $name }
page-do-unread-why = { $name } could not be read, so something measured may be missing.
page-do-question-why = A file leaves this open.
page-do-question-unit-not-stated = Say the unit
page-do-question-sigma-multiple-not-stated = Say how many sigma the errors are
page-do-question-decimal-mark-unclear = Say the decimal mark
page-do-question-date-order-unclear = Say the order of dates
page-do-question-class-not-stated = Say the material class
page-do-columns = { $n ->
    [one] Look at one column
   *[other] Look at { $n } columns
  }
page-do-columns-why = In { $name } nobody can be sure what it was meant as.
page-do-refused = { $n ->
    [one] Look at one refused row
   *[other] Look at { $n } refused rows
  }
page-do-refused-why = Rows of { $name } could not be used. Each says why; mend the file and bring it again, or leave it.
page-do-evidence-class = Say the material class
page-do-evidence-layer = Give layer and bare material two names, or say plated for both
page-do-evidence-sigma = Say how many sigma the errors are
page-do-evidence-thickness = Give the thickness
page-do-evidence-materials = Say what the part is made of
page-do-evidence-lot-size = { $named ->
    [yes] Give the size of lot { $lot }
   *[no] Give the size of the lot without a name
  }
page-do-evidence-units-to-take = { $named ->
    [yes] Say how many units to take of lot { $lot }
   *[no] Say how many units to take of the lot without a name
  }
page-do-evidence-sampling = Look at the sampling
page-do-evidence-trust = Name the check samples
page-do-evidence-certificate = Give the certificate of the check standard
page-do-evidence-doubtful = Bring other readings of what is doubtful
page-do-evidence-claims = Complete the claim of an exemption
page-do-claim = See whether an exemption covers it
page-do-claim-why = { $substance } is over its limit in { $material }, and nobody has claimed an exemption.
page-do-evidence-cr6 = Complete the result by area
page-do-evidence-laboratory = Complete the laboratory's result
page-do-evidence-books = Settle which rule books count
page-do-evidence-halogens = Settle which halogen book counts
page-do-evidence-holds = Look at the holds
page-do-again-trust-failed = Measure again, bring the readings, set the old ones aside
page-do-again-trust-none = Measure a check standard for these readings and bring its readings
page-do-again-check = Complete the readings of the check standard
page-do-again-trust-not-bracketed = Measure between two checks, bring the readings, set the old ones aside
page-do-again-sampling-too-few = Measure more units and bring the readings
page-do-again-material-not-measured = Measure the missing material and bring the readings
page-do-lot-hold = { $named ->
    [yes] Say who ends the hold of lot { $lot }
   *[no] Say who ends the hold of the lot without a name
  }
page-do-lot-not-accept = { $named ->
    [yes] Say who decides about lot { $lot }
   *[no] Say who decides about the lot without a name
  }
page-do-field-title = Give the report a title
page-do-field-inspector = Write who measured
page-do-field-place = Write where it was measured
page-do-field-reviewed-at = Write the day
page-do-field-contact = Write who answers questions
page-do-field-customer = Write whom the report goes to
page-do-field-why = The head of the report has a blank line there.
page-do-sheet = Take the self-check sheet
page-do-sheet-why = It says what your customer would hold and what to do before shipping.
page-do-report = Take the report
page-do-report-why = Nothing else wants you now. The report is not saved yet.
page-do-again = Start with the next delivery
page-do-again-why = Everything is done and saved.
page-do-again-why-left = { $n ->
    [one] One thing was left open; the report says so. Everything is saved.
   *[other] { $n } things were left open; the report says so. Everything is saved.
  }
page-do-lesson = Go on to the next delivery
page-do-lesson-why = Look at this delivery as long as you like.
page-do-lesson-last = Choose what to do now
page-do-lesson-last-why = This was the last delivery.
page-do-fresh = Back to the training room
page-do-fresh-why = Review this lot as if it were a real one. Another seed gives another lot.
page-do-room = Go to the lessons
page-do-room-why = The room shows where you stopped.
page-do-lessons = Back to the lessons
page-do-exercise = Answer exercise { $n }
page-do-exercise-why = You decide first; then the tool shows its working.
page-do-after = Go on after this lesson
page-do-after-why = All exercises on this page are answered.

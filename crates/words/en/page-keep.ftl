# Keeping: the recovery copy, the inspection file, leaving nothing behind.

## In the head of the page

page-keep-open = Saving
page-keep-state-file = Saved to a file at { $time }
page-keep-state-copy = In the recovery copy
page-keep-state-none = Not saved

## Steps, as they are named when they are taken back

page-keep-step-files = { $n ->
    [one] { $name } brought in
   *[other] { $n } files brought in
  }
page-keep-step-out = { $name } taken out
page-keep-step-put-back = { $name } put back
page-keep-step-settings = settings from { $name }
page-keep-step-rule-book = rule book from { $name }
page-keep-step-mapping = meanings of columns from { $name }
page-keep-step-history = history from { $name }
page-keep-step-bill = bill of materials from { $name }
page-keep-step-photos = { $n ->
    [one] one photograph brought in
   *[other] { $n } photographs brought in
  }
page-keep-step-set-aside = { $n ->
    [one] one reading set aside
   *[other] { $n } readings set aside
  }
page-keep-step-and-more = { $act } and { $n } more
page-keep-taken-out = { $name } was taken out.
page-keep-put-back = Put back
page-keep-event-put-back = { $name } was put back.

## The panel

page-keep-heading = Saving and recovery
page-keep-training = This is an exercise with invented data: no recovery copy is made of it.
page-keep-off = Nothing of this inspection is kept on this computer. If the browser closes, it is gone: save it to a file when you want to keep it.
page-keep-unsaved-full = There is no room left for the recovery copy: what you do from now on is not in it. You can go on working. Save the inspection to a file, here below.
page-keep-unsaved-refused = This browser does not let the page keep a recovery copy: a private window or a rule of this computer can do that. You can go on working. Save the inspection to a file, here below.
page-keep-event-code = A recovery code is shown: write it down.
page-keep-code-name = Recovery code
page-keep-code-new = Write this code down and keep it with you. All you do here is saved at once, encrypted, on this computer. After a crash, only this code brings it back.
page-keep-code-again = This code brings everything back after a crash.
page-keep-code-hint = The page keeps the code nowhere. Without it nobody can open the copy, and nobody can give you another one. As a file it belongs on your stick, not on this computer.
page-keep-noted = I have written it down
page-keep-copy-code = Copy the code
page-keep-save-code = Code as a text file
page-keep-code-file = Recovery code of a Plumbline inspection. It opens the encrypted copy in the browser it was made in. Keep it apart from that computer.
page-keep-event-noted = The code is always to be seen again under “Saving”.
page-keep-event-code-copied = The code was copied.
page-keep-event-code-marked = The code is marked: copy it by the keys of your computer.
page-keep-file-what = Save the inspection to carry it on elsewhere or another day: files, settings and everything you recorded, in one file. Everyone who has that file can read it.
page-keep-file-kind = Inspection
page-keep-save-as = Save the inspection …
page-keep-download = Download the inspection
page-keep-event-saved = { $file } was saved.
page-keep-close = Close and remove
page-keep-close-hint = Closing removes the recovery copy of this inspection from this computer. As long as this page is open, you can still go back to it.
page-keep-event-closed = Closed. Its recovery copy was removed from this computer.
page-keep-others = { $n ->
    [one] One other recovery copy lies in this browser.
   *[other] { $n } other recovery copies lie in this browser.
  }
page-keep-remove-others = { $n ->
    [one] Remove it
   *[other] Remove all { $n }
  }

## What the copy is against, and what not

page-keep-threats = What the copy protects from, and what it does not
page-keep-threat-copied = Each step stands in the copy before the page says that it was taken. After a crash, a killed browser or a pulled stick you go on where you were.
page-keep-threat-where = The copy lies in this browser on this computer, not on the stick. In clear stand only when it was saved and how many records and files it has.
page-keep-threat-against = It protects from another person or another page that looks at what this browser keeps: without the code they see nothing of it. A record that was changed, moved or is missing is noticed and told.
page-keep-threat-not-against = It does not protect from someone who watches you, from a harmful program that runs now, from what stands in memory or what the system writes of it to the disk, nor from someone who removes the copy or puts an older one in its place.
page-keep-threat-code = Whoever finds the code you wrote down, and this computer, can open the copy.
page-keep-threat-size = Files of more than { $size } are not copied, so that nobody has to wait and the disk does not fill: only their name, size and digest. They are asked for again.
page-keep-threat-closed = “New inspection” keeps the copy, because you can come back. It is removed by “Close and remove”, by “Leave nothing on this computer”, or on the first screen. Files that you downloaded stay where the browser put them: the page cannot remove those.

## Leave nothing

page-keep-leave-off = Then there is no recovery copy, and neither columns nor language nor light or dark are remembered; what was kept is removed at once. Only this wish itself is kept.
page-keep-leave-on = No recovery copy, no remembered columns, no language. Kept is only this wish itself, which tells nothing of your work. Files that you downloaded stay where the browser put them.

## Copies found

page-keep-found = { $n ->
    [one] An inspection can be brought back
   *[other] { $n } inspections can be brought back
  }
page-keep-found-what = { $n ->
    [one] A recovery copy lies in this browser. Only the code that was written down opens it.
   *[other] Recovery copies lie in this browser. Only the code that was written down opens them.
  }
page-keep-found-one = Saved { $when }: { $records ->
    [one] { $records } record
   *[other] { $records } records
  }, { $files ->
    [one] { $files } file
   *[other] { $files } files
  }
page-keep-found-many = The older ones are perhaps of no use any more.
page-keep-found-where = What this browser keeps
page-keep-code-typed-hint = Capitals, blanks and hyphens do not matter.
page-keep-bring-back = Bring back
page-keep-remove = Remove
page-keep-remove-older = { $n ->
    [one] Remove the older one
   *[other] Remove the { $n } older ones
  }
page-keep-removed = { $n ->
    [one] One recovery copy was removed from this computer.
   *[other] { $n } recovery copies were removed from this computer.
  }
page-keep-event-copies-back = Put back.
page-keep-work-opening = Opening the recovery copy
page-keep-code-odd = “{ $sign }” stands in no code. Look at what was written down: the signs 0, 1, 5, 8 and the letters B, I, L, O, S, U, V, Z are never used.
page-keep-code-length = A code has { $of } signs. { $n ->
    [one] This is { $n }.
   *[other] These are { $n }.
  } Look whether one was left out or typed twice.
page-keep-code-wrong = This code opens no copy in this browser. Nothing was lost: look at what was written down and try again.
page-keep-not-back-what = The recovery copy could not be opened.
page-keep-browser-why = The browser did not let the page at what it keeps.
page-keep-not-back-todo = It was left as it is. Try once more; if it happens again, go on from your files.
page-keep-not-removed-what = What this browser keeps could not be removed.
page-keep-not-removed-todo = Try once more, or clear this browser’s data by its own settings.
page-keep-event-recovered = { $n ->
    [one] The inspection is back, with its files and acts.
   *[other] { $n } inspections are back. The newest stands here; “Back to the inspection before” goes to the others.
  }
page-keep-lost-what = The recovery copy was changed or damaged.
page-keep-lost-where = Recovery copy, saved { $when }
page-keep-lost-why = { $n ->
    [one] One record is not as it was written, or is missing. All before it is back.
   *[other] A record is not as it was written, or is missing. It and those behind it, { $n } in all, could not be used. All before it is back.
  }
page-keep-lost-todo = Look at the last things you recorded and do again what is missing. The damaged copy was left as it is and can be removed on the first screen; a new copy was begun with the same code.

## Inspection files

page-keep-event-opened = The inspection in { $name } is open, with its files and acts.
page-keep-event-changed = { $n ->
    [one] One file beside it is another than it was: { $names }.
   *[other] { $n } files beside it are others than they were: { $names }.
  }
page-keep-event-awaited = { $n ->
    [one] One file has to be chosen again: see “Saving”.
   *[other] { $n } files have to be chosen again: see “Saving”.
  }
page-keep-changed-what = A file was changed since the inspection was saved.
page-keep-changed-why = The file beside it bears the same name, but its bytes are others. The inspection stands with the file as it was.
page-keep-changed-todo = To go by the changed file, take the old one out under “What came in?” and choose the changed one as a result file.
page-keep-acts-what = The inspection was not taken over whole.
page-keep-acts-why = { $n } of { $of } acts were taken: this copy of Plumbline refuses the others.
page-keep-acts-todo = Open it with the version of Plumbline it was saved with.
page-keep-not-opened-what = The inspection file was not opened; nothing was changed.
page-keep-not-opened-newer-why = It was written by a newer Plumbline ({ $schema }), and this one does not know its form.
page-keep-not-opened-newer-todo = Open it with the newer Plumbline.
page-keep-not-opened-damaged-why = This part is damaged: it is not what was written.
page-keep-not-opened-damaged-todo = Copy the file once more from where it came from. If that does not help, begin from the result files.
page-keep-not-opened-foreign-why = It is not what Plumbline writes ({ $schema }).
page-keep-not-opened-foreign-todo = Ask for the file as Plumbline saved it.
page-keep-part-list = the beginning
page-keep-part-head = what was recorded
page-keep-part-file = the part that holds { $name }
page-keep-awaited = { $n ->
    [one] This file was too large to be kept with the inspection. Choose it again:
   *[other] These files were too large to be kept with the inspection. Choose them again:
  }
page-keep-choose-again = Choose it
page-keep-without = Go on without it
page-keep-other-file-what = This is not the file that is waited for.
page-keep-other-file-why = It bears the same name, but its bytes are others ({ $size }; that file has { $meant }).
page-keep-other-file-todo = Choose the file as it was. To use this one instead, open “Saving”, go on without the old file, and choose this one again.

page-trouble-kept-what = A file can no longer be read from where it came from.
page-trouble-kept-why = The stick may have been unplugged, or the file was moved or changed. Its bytes as they came in stand in the recovery copy.
page-trouble-kept-todo = Nothing is lost: the work goes on with what came in. If the file was meant to change, take it out and choose it again.

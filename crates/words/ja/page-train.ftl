# The trainer's room: lessons, exercises, the score sheet.

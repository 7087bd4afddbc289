# Finding the way: doors, places, the next action, the self-check sheet, the look.

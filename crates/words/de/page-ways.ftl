# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = Ansicht
page-theme-system = wie das System
page-theme-light = hell
page-theme-dark = dunkel

# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = Look
page-theme-system = as the system
page-theme-light = light
page-theme-dark = dark

# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = 外观
page-theme-system = 跟随系统
page-theme-light = 浅色
page-theme-dark = 深色

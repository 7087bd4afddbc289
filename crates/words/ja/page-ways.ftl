# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = 表示
page-theme-system = システムに合わせる
page-theme-light = 明るい
page-theme-dark = 暗い

# Rule books and limits: what they say and how they are explained.

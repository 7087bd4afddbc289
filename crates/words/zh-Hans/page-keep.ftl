# Keeping: the recovery copy, the inspection file, leaving nothing behind.

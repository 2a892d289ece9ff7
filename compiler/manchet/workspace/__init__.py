"""The bakery on disk: which files belong together, what was asked for, what is written and where."""

"""What the command's exit status means. Scripts lean on these; they do not change."""

FINE = 0
"""Nothing wrong; warnings and notes too, unless `--strict`."""
ERRORS = 1
"""A formula has an error, something could not be written, a plan can't be done, or `tidy --check` found a file that is not in normal form."""
USAGE = 2
"""The command was not understood, or what it names is not there."""
OUR_FAULT = 3
"""A fault of manchet's own."""
MISSING = 4
"""This machine lacks something that is needed."""
STOPPED = 130
"""Stopped from the keyboard."""

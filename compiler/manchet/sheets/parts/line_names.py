"""What a line of a weighing is called where all lines of a stage stand together."""

from __future__ import annotations

from manchet.batch.weighed_table import WeighedLine
from manchet.sheets.page.measures import Measures


def line_name(line: WeighedLine, lines: tuple[WeighedLine, ...], m: Measures) -> str:
    """Its name; of two lines of one thing the one that is held back says so."""
    portion = line.weighed.portion
    twice = any(other is not line and other.weighed.portion.key == portion.key for other in lines)
    return m.words.say("bowl.later", portion.name) if twice and portion.held else portion.name

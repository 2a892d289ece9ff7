"""The figures on a kitchen's lines, read into their values; what does not fit its line is reported."""

from __future__ import annotations

import re
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.kitchen import plausible
from manchet.kitchen.sizes import SIZE_EXAMPLES, Sides, sides_of
from manchet.larder.figures import worth
from manchet.quantities.units import TEMPERATURE
from manchet.syntax.nodes import Entry as Written, Setting

COLDEST, HOTTEST = Fraction(-60), Fraction(900)
"""Degrees Celsius between which anything in a bakehouse lies: a blast freezer, a bread oven just fired. Our rule."""

Lines = dict[str, tuple[Written, Setting]]
"""The lines of one thing by their words."""


_BY_THE_DECK = re.compile(r" (?:per|each|every|a|on each|in each) \w+$", re.IGNORECASE)
"""No part of a noun: what an oven `holds` is of each of its decks anyway."""


class FigureReading:
    """Reads figures, and gathers what is wrong with them."""

    measures = ""
    """Whose pints and gallons."""

    def __init__(self) -> None:
        self.reports: list[Diagnostic] = []

    def _sides(self, lines: Lines) -> dict[str, Sides]:
        """The measures of a thing by their lines, in millimetres."""
        found = {}
        for key, example in SIZE_EXAMPLES.items():
            if key in lines:
                sides = sides_of(lines[key][1])
                if sides is None:
                    self._unfit(*lines[key], example)
                else:
                    found[key] = sides
        return found

    def _holds(self, lines: Lines) -> tuple[tuple[int, str], ...]:
        """`holds 24 loaves, or 6 rounds`: each figure with the word after it."""
        if "holds" not in lines:
            return ()
        line, node = lines["holds"]
        found: list[tuple[int, str]] = []
        for number, amount in enumerate(node.amounts):
            noun = node.names[number].text if number < len(node.names) else ""
            if (
                amount.unit
                or amount.low is None
                or amount.low != amount.high
                or amount.low < 1
                or amount.low.denominator != 1
                or not noun
            ):
                self._unfit(line, node, "24 loaves, or 6 rounds")
                return ()
            if (by := _BY_THE_DECK.search(noun)) is not None:
                self._unfit(line, node, f"{amount.low} {noun[: by.start()]}")
                return ()
            if any(fold(noun) == fold(held) for _, held in found):
                message, help = f"`holds` says twice how many {noun}", "keep one figure for them"
                self.reports.append(report("kitchen-line-twice", line.line.place(), message, help))
                return ()
            found.append((int(amount.low), noun))
        return tuple(found)

    def _turns(self, lines: Lines, key: str) -> Fraction | None:
        """Turns a minute: `slow 110 turns a minute`."""
        if key not in lines:
            return None
        line, node = lines[key]
        amount = node.amounts[0] if node.amounts else None
        if amount is None or amount.unit not in ("turns", "") or not amount.low or amount.low != amount.high:
            self._unfit(line, node, "110 turns a minute")
            return None
        return amount.low

    def _figure(self, lines: Lines, key: str, dimension: str, example: str) -> Fraction | None:
        """A single positive figure in its base unit; pints and gallons are of the kitchen's `measures`."""
        if key not in lines:
            return None
        line, node = lines[key]
        figure = worth(node.amounts[0], dimension, self.measures) if node.amounts else None
        if figure is None or figure <= 0:
            self._unfit(line, node, example)
            return None
        return figure

    def _maybe_temperature(self, lines: Lines, key: str, example: str, what: str) -> Fraction | None:
        return self._temperature(*lines[key], example, what) if key in lines else None

    def _temperature(self, line: Written, node: Setting, example: str, what: str) -> Fraction | None:
        """Degrees Celsius of `what`, a key of `plausible.SPANS`. What cannot be is not kept."""
        degrees = worth(node.amounts[0], TEMPERATURE) if node.amounts else None
        if degrees is None or not COLDEST <= degrees <= HOTTEST:
            self._unfit(line, node, example)
            return None
        odd = tuple(plausible.temperature(what, node.key, node.amounts[0], degrees, line.line.place()))
        self.reports += odd
        return None if any(one.severity is Severity.ERROR for one in odd) else degrees

    def _humidity(self, lines: Lines) -> Fraction | None:
        """`keeps 28 C, 75% humidity`"""
        line, node = lines.get("keeps", (None, None))
        amount = node.amounts[1] if node is not None and len(node.amounts) > 1 else None
        if line is None or node is None or amount is None or amount.low is None:
            return None
        if amount.low != amount.high or not 0 < amount.low <= 100:
            self._unfit(line, node, "28 C, 75% humidity")
            return None
        return amount.low / 100

    def _count(self, line: Written, node: Setting, example: str) -> int | None:
        amount = node.amounts[0] if node.amounts else None
        figure = amount.low if amount and amount.low == amount.high and amount.unit in ("", "whole") else None
        if figure is None or figure.denominator != 1 or figure < 1:
            self._unfit(line, node, example)
            return None
        return int(figure)

    def _number(self, lines: Lines) -> int | None:
        return self._count(*lines["count"], "24") if "count" in lines else None

    def _unfit(self, line: Written, node: Setting, example: str) -> None:
        message = f"`{line.line.body}` is not a figure that fits `{node.key}`"
        self.reports.append(report("kitchen-figure-unfit", line.line.place(), message, f"write `{node.key} {example}`"))

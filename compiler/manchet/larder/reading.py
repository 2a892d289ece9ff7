"""A larder as written in a file, read into ingredients and questions."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Fix, Place
from manchet.diagnostics.fixes import one_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.larder.allergens import ALLERGENS, allergen
from manchet.larder.composition import composition_of, parts_of
from manchet.larder.figures import worth
from manchet.larder.ingredient import CLASSES, Ingredient, Price, Question, Takes
from manchet.quantities.units import DENSITY, MASS, PERCENT, TEMPERATURE, TIME
from manchet.syntax.nodes import Entry as Written, EntryName, Setting, Unread

LIGHTEST, HEAVIEST = Fraction(1, 20), Fraction(5, 2)
"""Kilograms a litre that something in a bakehouse may weigh: puffed grain, and lye beads in a heap. Our rule."""

_DATE = re.compile(r"\d{4}-\d\d-\d\d")
_CURRENCY = re.compile(r"[A-Z]{3}|[€£$]")


def ingredients_of(block: Written) -> Outcome[tuple[Ingredient | Question, ...]]:
    """The entries of one `larder` block, in order, each with what could be read of it.

    An entry without a class keeps class "": `Larder.with_entries` knows whether the larder below has one.
    """
    found: list[Ingredient | Question] = []
    reports: list[Diagnostic] = []
    for entry in block.children:
        node = entry.node
        if isinstance(node, EntryName):
            reading = _LarderReading(node.name.text, entry.line.place(node.name.start, node.name.end))
            for line in sorted(entry.children, key=_class_first):
                reading.read(line)
            found.append(reading.result())
            reports += reading.reports
        elif not isinstance(node, Unread):
            reports.append(_misplaced(entry))
    return Outcome(tuple(found), tuple(reports))


def _class_first(line: Written) -> bool:
    """Sorts the class before the rest: what else is said is judged by it, wherever it stands."""
    return not (isinstance(line.node, Setting) and line.node.key == "class")


class _LarderReading:
    """One entry while its lines are read."""

    def __init__(self, name: str, place: Place) -> None:
        self.ingredient = Ingredient(name=name, class_="", place=place)
        self.question: Question | None = None
        self.seen: set[str] = set()
        self.reports: list[Diagnostic] = []

    def result(self) -> Ingredient | Question:
        return self.question or self.ingredient

    def read(self, line: Written) -> None:
        node = line.node
        if isinstance(node, Unread):
            word, _, rest = line.line.body.partition(" ")
            if nearest(word, ("class",)):  # what could not be read is not missing too
                said = next((one for one in CLASSES if fold(rest).startswith(one)), None)
                self.ingredient = self.ingredient._replace(class_=said or nearest(fold(rest), CLASSES) or "other")
            return
        if not isinstance(node, Setting) or node.key not in _LINES:
            self.reports.append(_misplaced(line))
            return
        if node.key in self.seen:
            message = f"{self.ingredient.name} has two `{node.key}` lines"
            self.reports.append(
                report("larder-line-twice", line.line.place(), message, "keep one", fixes=_left_out(line))
            )
            return
        self.seen.add(node.key)
        _LINES[node.key](self, line, node)

    def fault(self, name: str, place: Place, message: str, help: str, fixes: tuple[Fix, ...] = ()) -> None:
        self.reports.append(report(name, place, message, help, fixes=fixes))

    def single(self, line: Written, node: Setting, dimension: str, example: str) -> Fraction | None:
        """The one figure of a line in its base unit, or None with a report."""
        amount = node.amounts[0]
        figure = worth(amount, dimension)
        if figure is None or (figure < 0 and dimension != TEMPERATURE):
            place = line.line.place(amount.start, amount.end)
            said = line.line.body[amount.start : amount.end]
            message = f"`{said}` does not fit `{node.key}`"
            self.fault("larder-figure-unfit", place, message, f"write `{node.key} {example}`")
            return None
        return figure

    def class_(self, line: Written, node: Setting) -> None:
        name = fold(" ".join(word.text for word in node.names))
        if name in CLASSES:
            self.ingredient = self.ingredient._replace(class_=name)
            return
        near = nearest(name, CLASSES)
        known = list_of_words(tuple(sorted(CLASSES)))
        self.ingredient = self.ingredient._replace(class_=near or "other")
        help = f"did you mean `class {near}`? the classes are {known}" if near else f"the classes are {known}"
        place = _words_place(line, node)
        fixes = one_of(place, [near] if near else ())
        self.fault("class-unknown", place, f"there is no class `{name}`", help, fixes)

    def also_called(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(aliases=tuple(word.text for word in node.names))

    def composition(self, line: Written, node: Setting) -> None:
        composition, reports = composition_of(self.ingredient.name, line)
        self.ingredient = self.ingredient._replace(composition=composition)
        self.reports += reports

    def made_of(self, line: Written, node: Setting) -> None:
        parts, reports = parts_of(self.ingredient, line)
        self.ingredient = self.ingredient._replace(made_of=parts)
        self.reports += reports

    def gives_water(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(gives_water=True)

    def flour(self, line: Written, node: Setting) -> None:
        if self.ingredient.flour is not None:
            message = f"{self.ingredient.name} is said both to count as flour and not to"
            self.fault("flour-yes-and-no", line.line.place(), message, "keep one of the two lines", _left_out(line))
        self.ingredient = self.ingredient._replace(flour=node.key == "counts as flour")

    def no_allergens(self, line: Written, node: Setting) -> None:
        if self.ingredient.allergens is not None:
            self._both(line)
            return
        self.ingredient = self.ingredient._replace(allergens=())

    def allergens(self, line: Written, node: Setting) -> None:
        if self.ingredient.allergens is not None:
            self._both(line)
        self.ingredient = self.ingredient._replace(allergens=self._allergens(line, node))

    def may_contain(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(may_contain=self._allergens(line, node))

    def _both(self, line: Written) -> None:
        message = f"{self.ingredient.name} is said both to have allergens and to have none"
        self.fault("allergens-yes-and-no", line.line.place(), message, "keep one of the two lines", _left_out(line))

    def _allergens(self, line: Written, node: Setting) -> tuple[str, ...]:
        found: dict[str, None] = {}
        for word in node.names:
            known = allergen(word.text)
            if known is None:
                near = nearest(word.text, ALLERGENS)
                place = line.line.place(word.start, word.end)
                message = f"`{word.text}` is not one of the listed allergens"
                help = (f"did you mean `{near}`? " if near else "") + f"they are {list_of_words(ALLERGENS, 'and')}"
                self.fault("allergen-unknown", place, message, help, one_of(place, [near] if near else ()))
            found[known or word.text] = None
        return tuple(found)

    def density(self, line: Written, node: Setting) -> None:
        """`0.55 kg/l`, or `0.56-0.98 kg/l` where its grain decides."""
        amount = node.amounts[0]
        low, high = (worth(amount._replace(low=end, high=end), DENSITY) for end in (amount.low, amount.high))
        if low is not None and high is not None and LIGHTEST <= low < high <= HEAVIEST:
            self.ingredient = self.ingredient._replace(density_span=(low, high))
            return
        density = self.single(line, node, DENSITY, "0.55 kg/l")
        if density is not None and not LIGHTEST <= density <= HEAVIEST:
            start, end = node.amounts[0].start, node.amounts[0].end
            written = line.line.body[start:end]
            message = f"{written} of {self.ingredient.name} cannot be: flour has about 0.5 kg/l, honey 1.4"
            self.fault("density-impossible", line.line.place(start, end), message, "write `density 0.55 kg/l`")
            density = None
        self.ingredient = self.ingredient._replace(density=density)

    def whole(self, line: Written, node: Setting) -> None:
        grams = self.single(line, node, MASS, "50 g")
        if grams == 0:
            message = f"one of {self.ingredient.name} has to weigh something"
            self.fault("larder-figure-unfit", line.line.place(), message, "write `whole 50 g`")
            grams = None
        self.ingredient = self.ingredient._replace(whole=grams)

    def kept_at(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(kept_at=self.single(line, node, TEMPERATURE, "4 C"))

    def good_for(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(good_for=self.single(line, node, TIME, "7 d"))

    def takes_water(self, line: Written, node: Setting) -> None:
        """`68%`, or `64-68%` for an estimate."""
        amount = node.amounts[0]
        low, high = (worth(amount._replace(low=end, high=end), PERCENT) for end in (amount.low, amount.high))
        if low is None or high is None or not 0 < low <= high:
            self.single(line, node._replace(amounts=(amount._replace(high=None),)), PERCENT, "68%")
            return
        self.ingredient = self.ingredient._replace(takes_water=Takes(low, high))

    def price(self, line: Written, node: Setting) -> None:
        """`21.40 EUR for 25 kg on 2026-09-14`; the day may be left out."""
        currency, date = _CURRENCY.search(line.line.body), _DATE.search(line.line.body)
        money = next((a.low for a in node.amounts if a.unit == "" and a.low == a.high), None)
        weight = next((worth(a, MASS) for a in node.amounts if worth(a, MASS)), None)
        if money is None or money < 0 or weight is None or currency is None:
            message = f"the price of {self.ingredient.name} needs an amount of money and a weight"
            help = "write `price 21.40 EUR for 25 kg on 2026-09-14`"
            self.fault("price-unreadable", line.line.place(), message, help)
            return
        self.ingredient = self.ingredient._replace(price=Price(money, currency[0], weight, date[0] if date else ""))

    def source(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(source=" ".join(word.text for word in node.names))

    def could_be(self, line: Written, node: Setting) -> None:
        choices = tuple(word.text for word in node.names)
        why = node.because.text if node.because else ""
        if len(choices) < 2:
            message = f"`{self.ingredient.name}` could be only one thing, which leaves nothing to ask"
            help = 'write `could be one thing, another because "…"`, or `also called` in the entry of that one thing'
            self.fault("choice-missing", line.line.place(), message, help)
        self.question = Question(self.ingredient.name, choices, why, self.ingredient.place, line.line.place())


_LINES: dict[str, Callable[[_LarderReading, Written, Setting], None]] = {
    "class": _LarderReading.class_,
    "also called": _LarderReading.also_called,
    "per 100 g": _LarderReading.composition,
    "made of": _LarderReading.made_of,
    "gives its water": _LarderReading.gives_water,
    "counts as flour": _LarderReading.flour,
    "not counted as flour": _LarderReading.flour,
    "no allergens": _LarderReading.no_allergens,
    "allergens": _LarderReading.allergens,
    "may contain": _LarderReading.may_contain,
    "density": _LarderReading.density,
    "whole": _LarderReading.whole,
    "kept at": _LarderReading.kept_at,
    "good for": _LarderReading.good_for,
    "price": _LarderReading.price,
    "source": _LarderReading.source,
    "absorbs water": _LarderReading.takes_water,
    "could be": _LarderReading.could_be,
}


def _left_out(line: Written) -> tuple[Fix, ...]:
    """The line is left out, where nothing stands under it."""
    return () if line.children else (without_line(line.line.place(), "leave out this line"),)


def _words_place(line: Written, node: Setting) -> Place:
    if not node.names:
        return line.line.place()
    return line.line.place(node.names[0].start, node.names[-1].end)


def _misplaced(entry: Written) -> Diagnostic:
    help = f"under an ingredient go {list_of_words(tuple(f'`{key}`' for key in _LINES), 'and')}"
    return report("no-larder-line", entry.line.place(), f"`{entry.line.body}` says nothing about an ingredient", help)

"""A larder as written in a file, read into ingredients and questions."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Fix, Place
from manchet.diagnostics.fixes import one_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.larder.composition import composition_of, parts_of
from manchet.larder.figures import worth
from manchet.larder.ingredient import CLASSES, FACTS, Ingredient, Question, Takes
from manchet.quantities.units import CONTENT, DENSITY, MASS, PERCENT, TEMPERATURE, TIME
from manchet.syntax.nodes import Entry as Written, EntryName, Setting, Unread

LIGHTEST, HEAVIEST = Fraction(1, 20), Fraction(5, 2)
"""Kilograms a litre that something in a bakehouse may weigh: puffed grain, and lye beads in a heap. Our rule."""


Find = Callable[[str], Ingredient | Question | None]
"""Finds an entry by one of its names."""


def ingredients_of(block: Written, below: Find = lambda name: None) -> Outcome[tuple[Ingredient | Question, ...]]:
    """The entries of one `larder` block, in order, each with what could be read of it. `below` finds what is in the larder they
    are put on top of: an egg is priced by the dozen where that larder knows what one weighs.

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
            found.append(reading.result(below))
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
        self.bought: list[tuple[Written, Setting]] = []
        """Its lines about buying: an egg is priced by what it weighs, which a later line may say."""
        self.reports: list[Diagnostic] = []

    def result(self, below: Find) -> Ingredient | Question:
        if self.bought:
            from manchet.larder.buying import buying_of

            buying = buying_of(self.ingredient, below(self.ingredient.name), self.bought)
            self.reports += buying.diagnostics
            self.ingredient = self.ingredient._replace(buying=buying.value)
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
        if node.key in self.seen and node.key not in _SEVERAL:
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
        self._has_both(line, node)

    def may_contain(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(may_contain=self._allergens(line, node))

    def _both(self, line: Written) -> None:
        message = f"{self.ingredient.name} is said both to have allergens and to have none"
        self.fault("allergens-yes-and-no", line.line.place(), message, "keep one of the two lines", _left_out(line))

    def _allergens(self, line: Written, node: Setting) -> tuple[str, ...]:
        from manchet.larder.allergens import allergens_of  # only a house's own larder says them line by line

        found = allergens_of(node.names, line.line)
        self.reports += found.diagnostics
        return found.value

    def ask(self, line: Written, node: Setting) -> None:
        """`ask egg because "lysozyme in some"`"""
        why = node.because.text if node.because else ""
        asked = tuple((allergen, why) for allergen in self._allergens(line, node))
        self.ingredient = self.ingredient._replace(asked=(*self.ingredient.asked, *asked))
        self._has_both(line, node)

    def has_not(self, line: Written, node: Setting) -> None:
        """`no sulphites`"""
        has_not = (*self.ingredient.has_not, *self._allergens(line, node))
        self.ingredient = self.ingredient._replace(has_not=has_not)
        self._has_both(line, node)

    def _has_both(self, line: Written, node: Setting) -> None:
        """An allergen that the entry says twice, and not the same: it has it, has it not, or nobody knows."""
        entry = self.ingredient
        said = [*(entry.allergens or ()), *(("sulphites",) if entry.sulphites else ())]
        answers = (said, entry.has_not, [allergen for allergen, _ in entry.asked])
        words = ("has", "does not have", "asks about")
        for word in dict.fromkeys(allergen for answer in answers for allergen in answer):
            ways = [way for way, answer in zip(words, answers, strict=True) if word in answer]
            if len(ways) > 1:
                message = f"{entry.name} {ways[0]} {word} by one line, and {ways[1]} it by another"
                self.fault("allergens-yes-and-no", line.line.place(), message, "keep one of the two", _left_out(line))
                return

    def sulphites(self, line: Written, node: Setting) -> None:
        grams = self.single(line, node, CONTENT, "2000 mg/kg")
        self.ingredient = self.ingredient._replace(sulphites=grams)
        self._has_both(line, node)

    def protein_factor(self, line: Written, node: Setting) -> None:
        """Between 5.18, of almonds, and 6.38, of milk, lie those in use (FAO, food energy, 2003, table 2.1)."""
        self.ingredient = self.ingredient._replace(protein_factor=self._number(line, node, 5, 7, "5.7"))

    def ph(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(ph=self._number(line, node, 0, 14, "3.8"))

    def water_activity(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(water_activity=self._number(line, node, 0, 1, "0.80"))

    def _number(self, line: Written, node: Setting, least: int, most: int, example: str) -> Fraction | None:
        amount = node.amounts[0]
        if amount.low is not None and amount.low == amount.high and least <= amount.low <= most:
            return amount.low
        place, said = line.line.place(amount.start, amount.end), line.line.body[amount.start : amount.end]
        message = f"`{said}` does not fit `{node.key}`: it lies between {least} and {most}"
        self.fault("larder-figure-unfit", place, message, f"write `{node.key} {example}`")
        return None

    def listed_as(self, line: Written, node: Setting) -> None:
        from manchet.larder.selling import listed_as

        found = listed_as(node, line.line)
        self.reports += found.diagnostics
        there = next((one for one in self.ingredient.listed_as if one.market == found.value.market), None)
        if there is not None and not found.diagnostics:
            message, help = f"{self.ingredient.name} is listed as two things", "keep one line for each market"
            self.fault("larder-line-twice", line.line.place(), message, help, _left_out(line))
            return
        self.ingredient = self.ingredient._replace(listed_as=(*self.ingredient.listed_as, found.value))

    def made_from(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(made_from=" ".join(word.text for word in node.names))

    def fact(self, line: Written, node: Setting) -> None:
        facts = self.ingredient.facts | {node.key}
        if {"fresh", "dried"} <= facts:
            message = f"{self.ingredient.name} is said to be both fresh and dried"
            self.fault("fresh-and-dried", line.line.place(), message, "keep one of the two lines", _left_out(line))
            return
        self.ingredient = self.ingredient._replace(facts=facts)

    def nothing_else(self, line: Written, node: Setting) -> None:
        self.ingredient = self.ingredient._replace(nothing_else_known=True)

    def buys(self, line: Written, node: Setting) -> None:
        self.bought.append((line, node))

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


_SEVERAL = frozenset({"price", "ask", "no", "listed as"})
"""Lines that an entry may have more than one of."""

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
    "price": _LarderReading.buys,
    "pack": _LarderReading.buys,
    "loses": _LarderReading.buys,
    "ask": _LarderReading.ask,
    "no": _LarderReading.has_not,
    "sulphites": _LarderReading.sulphites,
    "protein by": _LarderReading.protein_factor,
    "listed as": _LarderReading.listed_as,
    "from": _LarderReading.made_from,
    "pH": _LarderReading.ph,
    "water activity": _LarderReading.water_activity,
    **dict.fromkeys(FACTS, _LarderReading.fact),
    "nothing else known": _LarderReading.nothing_else,
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

"""What 100 g of an ingredient hold, and what a blend or culture is made of, as lines of a larder."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.larder.figures import show_figure, worth
from manchet.larder.ingredient import Blend, Ingredient
from manchet.quantities.units import MASS, PERCENT, UNITS
from manchet.syntax.nodes import Amount, Entry, MaterialNode, Unread, Word

FIGURES = (
    "water", "protein", "fat", "saturates", "carbohydrate", "sugars", "starch", "fibre", "salt", "sodium", "ash",
    "alcohol",
    "acid",
    "polyols",
)  # fmt: skip
"""What `per 100 g` may name. Saturates are of fat; sugars and starch of carbohydrate, which is without fibre."""

_OTHER_SPELLINGS = {
    "fiber": "fibre",
    "carbohydrates": "carbohydrate",
    "carbs": "carbohydrate",
    "sugar": "sugars",
    "saturated fat": "saturates",
    "saturate": "saturates",
    "moisture": "water",
    "minerals": "ash",
    "organic acid": "acid",
    "polyol": "polyols",
}
_WHOLES = ("water", "protein", "fat", "carbohydrate", "fibre", "ash", "alcohol", "acid", "polyols")
_PARTS = (("saturates", "fat"), ("sugars", "carbohydrate"), ("starch", "carbohydrate"))

ROUNDING = Fraction(1)
"""Grams by which figures rounded one by one may pass what holds them. Our rule: tables are rounded to tenths."""


def composition_of(name: str, head: Entry) -> Outcome[Mapping[str, Fraction]]:
    """Grams in 100 g, from the lines under `per 100 g`."""
    found: dict[str, Fraction] = {}
    lines, unread = _lines(head, "water 13 g")
    reports = list(unread)
    for word, amount, entry in lines:
        place = entry.line.place(word.start, word.end)
        figure = _figure(word.text)
        if figure is None:
            near = nearest(fold(word.text), FIGURES)
            help = f"did you mean `{near}`? " if near else ""
            message, help = (
                f"`{word.text}` is not a figure of composition",
                f"{help}they are {list_of_words(FIGURES, 'and')}",
            )
            fixes = one_of(place, [near] if near else ())
            reports.append(report("composition-unknown", place, message, help, fixes=fixes))
            continue
        grams = worth(amount, MASS)
        if grams is None or grams < 0:
            place = entry.line.place(amount.start, amount.end)
            written = entry.line.body[amount.start : amount.end]
            message = f"{written} of {figure} in 100 g is not a weight"
            as_grams = one_of(place, [f"{said[0]} g"]) if (said := re.match(r"[0-9.]+", written)) else ()
            reports.append(report("composition-no-weight", place, message, f"write `{figure} 13 g`", fixes=as_grams))
            continue
        if figure in found:
            message = f"{figure} of {name} is given twice"
            reports.append(report("composition-twice", place, message, "keep one of the two lines"))
            continue
        found[figure] = grams
    reports += _impossible(name, found, head)
    return Outcome(found, tuple(reports))


def parts_of(ingredient: Ingredient, head: Entry) -> Outcome[tuple[Blend, ...]]:
    """The parts of a blend or culture and their shares of the whole, from the lines under `made of`.

    Weights, or per cent: of the whole for a blend, which then make up 100; of its flour for a
    culture, as printed sheets have it.
    """
    lines, unread = _lines(head, "white flour 100%")
    reports = list(unread)
    figures: list[tuple[Word, Fraction, Entry]] = []
    kinds: set[str] = set()
    for word, amount, entry in lines:
        kind = UNITS[amount.unit].dimension if amount.unit else ""
        figure = worth(amount, kind) if kind in (MASS, PERCENT) else None
        if figure is None or figure <= 0:
            place = entry.line.place(amount.start, amount.end)
            message = f"{entry.line.body[amount.start : amount.end]} of {word.text} is no part of {ingredient.name}"
            reports.append(report("part-not-weighed", place, message, f"write per cent or a weight: `{word.text} 50%`"))
            continue
        kinds.add(kind)
        figures.append((word, figure, entry))
    total = sum((figure for _word, figure, _entry in figures), Fraction(0))
    if len(kinds) > 1:
        message = f"{ingredient.name} mixes per cents and weights"
        help = "write all of them in per cent, or all as weights"
        reports.append(report("parts-of-two-kinds", head.line.place(), message, help))
        return Outcome((), tuple(reports))
    if not figures:
        if not reports:
            message = f"nothing is said of what {ingredient.name} is made of"
            help = "write the parts one step deeper: `white flour 100%`"
            reports.append(report("parts-missing", head.line.place(), message, help))
        return Outcome((), tuple(reports))
    if kinds == {PERCENT} and total != 1 and ingredient.class_ not in ("culture", "") and not reports:
        message = f"the parts of {ingredient.name} add up to {show_figure(total * 100)}%, not 100%"
        reports.append(report("parts-not-100", head.line.place(), message, "change one of them, or write weights"))
    parts = tuple(
        Blend(word.text, figure / total, entry.line.place(word.start, word.end)) for word, figure, entry in figures
    )
    return Outcome(parts, tuple(reports))


def _lines(head: Entry, example: str) -> Outcome[list[tuple[Word, Amount, Entry]]]:
    found: list[tuple[Word, Amount, Entry]] = []
    reports: list[Diagnostic] = []
    for entry in head.children:
        if isinstance(entry.node, MaterialNode):
            found.append((entry.node.name, entry.node.amount, entry))
        elif not isinstance(entry.node, Unread):
            message = f"`{entry.line.body}` is not a name with its amount"
            reports.append(report("part-without-amount", entry.line.place(), message, f"write `{example}`"))
    return Outcome(found, tuple(reports))


def _figure(text: str) -> str | None:
    name = fold(text)
    name = _OTHER_SPELLINGS.get(name, name)
    return name if name in FIGURES else None


def _impossible(name: str, found: Mapping[str, Fraction], head: Entry) -> Iterator[Diagnostic]:
    total = sum((found.get(whole, Fraction(0)) for whole in _WHOLES), Fraction(0))
    if total > 100 + ROUNDING:
        message = f"100 g of {name} hold {show_figure(total)} g"
        help = "carbohydrate leaves out fibre here: take the fibre off, or check the decimal points"
        yield report("composition-over-100", head.line.place(), message, help)
        return
    for part, whole in _PARTS:
        if part in found and whole in found and found[part] > found[whole] + ROUNDING:
            message = f"{name} has {show_figure(found[part])} g of {part} in {show_figure(found[whole])} g of {whole}"
            yield report("composition-part-over-whole", head.line.place(), message, f"{part} are counted in {whole}")
            return

"""The view of a comparison: each bread with its lines, so many of them as can be read at a glance."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.comparison.compare import Comparison
from manchet.sheets.comparison.lines import changed_lines
from manchet.sheets.comparison.view import ComparedBread, ComparisonPage
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Running
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import Words, words_of

MOST = 10
"""Lines of one bread, unless all are asked for."""
TEMPLATE = "comparison/template.html"


def compared_bread(
    comparison: Comparison, sides: tuple[str, str], house: House, everything: bool = False
) -> ComparedBread:
    """`sides` are what the older and the newer side are called: nothing is said of them where both are called alike."""
    m = Measures(house, words_of(house.words))
    lines = changed_lines(comparison, m)
    shown = lines if everything or len(lines) <= MOST else lines[: MOST - 1]
    over = len(lines) - len(shown)
    return ComparedBread(
        _title(comparison.before.formula.name, comparison.after.formula.name, m),
        _between(sides, m.words),
        shown,
        more=m.words.say("compared.more", str(over)) if over else "",
    )


def bread_on_one_side(name: str, sides: tuple[str, str], is_new: bool, house: House) -> ComparedBread:
    """One that only the newer side, or only the older, has."""
    words = words_of(house.words)
    note = words.say("compared.only_after", sides[1]) if is_new else words.say("compared.only_before", sides[0])
    return ComparedBread(name, _between(sides, words), (), note)


def unreadable_bread(name: str, sides: tuple[str, str], side: str, why: str, house: House) -> ComparedBread:
    """One that has a mistake on one side."""
    words = words_of(house.words)
    if sides[0] == sides[1]:
        return ComparedBread(name, "", (), words.say("compared.unreadable_here", why))
    return ComparedBread(name, _between(sides, words), (), words.say("compared.unreadable", side, why))


def comparison_page(breads: Sequence[ComparedBread], as_they_were: int, house: House) -> ComparisonPage:
    words = words_of(house.words)
    alike = ""
    if as_they_were:
        alike = words["compared.same_one"] if as_they_were == 1 else words.say("compared.same", str(as_they_were))
    title = breads[0].title if len(breads) == 1 else words["compared.title"]
    running = Running(title, "", "", "", "", "", "")
    return ComparisonPage(title, words["language"], house.paper, running, tuple(breads), alike)


def html_of_comparison(page: ComparisonPage) -> str:
    """One self-contained page."""
    from manchet.sheets.page.html import html_page

    return html_page(page, TEMPLATE, landscape=False, layout="normal")


def _between(sides: tuple[str, str], words: Words) -> str:
    return words.say("compared.sides", *sides) if sides[0] != sides[1] else ""


def _title(before: str, after: str, m: Measures) -> str:
    return after if before == after else m.words.say("compared.from_to", before, after)

"""The allergen card of a kitchen: YES, MAY and apart as they are known and stated, ? where nobody knows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.label.allergens import AllergenAnswer, AllergenFinding, all_findings
from manchet.label.contact import kept_apart, may_contain
from manchet.label.markets import allergen_list, markets_of
from manchet.records import NamedTuple
from manchet.sheets.form import Bakehouse
from manchet.sheets.forms.allergens.view import AllergenCard, AllergenRow, Cell
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import Words, words_of
from manchet.sheets.parts.allergens import called_in, listed_words, wholly_unknown
from manchet.sheets.parts.caution import caution_note

MOST_UPRIGHT = 14
"""Columns that a page upright holds."""


class Food(NamedTuple):
    """One sort of thing that is made, and what is said of it."""

    name: str
    work: Work
    piece: SoldPiece
    findings: tuple[AllergenFinding, ...]

    def answers(self, answer: AllergenAnswer) -> dict[str, AllergenFinding]:
        return {one.allergen: one for one in self.findings if one.answer is answer}


def allergen_card(bakehouse: Bakehouse, issue: Issue, house: House) -> AllergenCard | None:
    words = words_of(house.words)
    foods = list(_foods(bakehouse.works))
    if not foods:
        return None
    listed = listed_words(foods[0].work)
    rows = [(food, _cells(food)) for food in foods]
    occurring = [word for word in listed if any(word in cells for _, cells in rows)]
    kitchen = bakehouse.kitchen
    return AllergenCard(
        title=words["allergens.title"],
        kitchen=kitchen.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(
            kitchen.name or words["allergens.title"], words["allergens.title"] if kitchen.name else "", issue
        ),
        columns=tuple(called_in(foods[0].work, word) for word in occurring),
        rows=tuple(
            AllergenRow(food.name, tuple(_cell(food, cells, word) for word in occurring)) for food, cells in rows
        ),
        reasons=tuple(_reasons(foods, bakehouse, words, Measures(house, words))),
        lists=tuple(_law(market, words) for market in markets_of(kitchen)),
        landscape=len(occurring) > MOST_UPRIGHT,
    )


def _foods(works: Sequence[Work]) -> Iterator[Food]:
    """Every sort that is made; of what is made ahead only what is sold."""
    for work in works:
        made_ahead = work.formula.preparation and not work.formula.dish
        if made_ahead and (work.formula.sale is None or not work.formula.sale.ways):
            continue
        pieces = sold_pieces(work)
        for piece in pieces:
            name = work.formula.name if len(pieces) == 1 else f"{work.formula.name}, {piece.noun}"
            yield Food(name, work, piece, all_findings(piece))


def _cells(food: Food) -> dict[str, Cell]:
    """By allergen. What nothing is known of has no place of its own: then every column would be there for it."""
    found: dict[str, Cell] = dict.fromkeys((one.allergen for one in kept_apart(food.work, food.piece)), "apart")
    found |= dict.fromkeys((one.allergen for one in may_contain(food.work, food.piece)), "may")
    unknown = food.answers(AllergenAnswer.NOT_KNOWN)
    nothing = wholly_unknown(unknown.values())
    for allergen, one in unknown.items():
        if any(because.ingredient.name not in nothing for because in one.because):
            found[allergen] = "unknown"
    return found | dict.fromkeys(food.answers(AllergenAnswer.HAS), "yes")


def _cell(food: Food, cells: dict[str, Cell], word: str) -> Cell:
    """A blank would say that it is in no ingredient: nobody knows that of a food with one of which nothing is known."""
    return cells.get(word) or ("unknown" if word in food.answers(AllergenAnswer.NOT_KNOWN) else "")


def _reasons(foods: Sequence[Food], bakehouse: Bakehouse, words: Words, m: Measures) -> Iterator[str]:
    may: dict[tuple[str, str], list[str]] = {}
    apart: dict[tuple[str, str], list[str]] = {}
    for food in foods:
        for judged, said in ((may_contain(food.work, food.piece), may), (kept_apart(food.work, food.piece), apart)):
            for one in judged:
                said.setdefault((called_in(food.work, one.allergen), one.because), []).append(food.name)
    has = {
        called_in(food.work, allergen): len([1 for one in foods if allergen in one.answers(AllergenAnswer.HAS)])
        for food in foods
        for allergen in food.answers(AllergenAnswer.HAS)
    }
    for said, key in ((may, "allergens.may_because"), (apart, "allergens.apart_because")):
        for (allergen, because), names in said.items():
            without = len(foods) - has.get(allergen, 0)
            whole = words["allergens.all_others" if has.get(allergen) else "allergens.all"]
            yield words.say(key, allergen, because, whole if 1 < without == len(names) else "; ".join(names))
    yield from _unknown(foods, words)
    handled = bakehouse.kitchen.selling.handles
    if handled:
        yield words.say("allergens.also_handled", ", ".join(handled))
    for food in foods:
        for caution in cautions_of(food.work):
            if caution.of == "eater":
                yield words.say("allergens.of_food", food.name, caution_note(caution, m).words)


def _unknown(foods: Sequence[Food], words: Words) -> Iterator[str]:
    said: dict[tuple[str, str, str], list[str]] = {}
    for food in foods:
        unknown = food.answers(AllergenAnswer.NOT_KNOWN)
        nothing = wholly_unknown(unknown.values())
        for name in nothing:
            said.setdefault(("", name, ""), []).append(food.name)
        for allergen, one in unknown.items():
            for because in one.because:
                if because.ingredient.name not in nothing and allergen in listed_words(food.work):
                    key = (called_in(food.work, allergen), because.ingredient.name, because.why)
                    said.setdefault(key, []).append(food.name)
    for (allergen, ingredient, why), names in said.items():
        if allergen:
            yield words.say("allergens.unknown_because", allergen, ingredient, "; ".join(dict.fromkeys(names)), why)
        else:
            yield words.say("allergens.nothing_known", ingredient, "; ".join(dict.fromkeys(names)))


def _law(market: str, words: Words) -> str:
    row = allergen_list(market)
    return words.say("allergens.list", row.market, row.source, row.valid_from)

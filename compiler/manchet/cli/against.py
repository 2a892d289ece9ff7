"""`build --against REV`: what is said of each bread now, and what was said of it at a revision; nothing is written."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.diagnostics.terminal import show
from manchet.quantities.printing import decimal

if TYPE_CHECKING:
    from manchet.costing.before_and_after import Difference, PieceState
    from manchet.workspace.selection import Selection


def differences_against(selection: Selection, revision: str, kitchen: str) -> Iterator[str]:
    """Lines for each formula of the selection that is otherwise than it was; one line where none is. Raises `Unknown` where git
    knows no such revision."""
    from manchet.costing.before_and_after import differences
    from manchet.diagnostics.suggest import fold
    from manchet.workspace.revision import bakery_at

    then = bakery_at(selection.root, selection.prefix, revision)
    old, new = then.bakery.read(), selection.bakery.read(selection.paths, kitchen)
    wanted = selection.names
    names = {fold(one.name): one.name for one in (*old.formulas, *new.formulas)}
    inside = {fold(one.name) for one in new.formulas if one.place.path in selection.paths}
    gone = {fold(one.name) for one in old.formulas if one.place.path in selection.paths} - {
        fold(one.name) for one in new.formulas
    }
    found: list[Difference] = []
    for key, name in names.items():
        if (wanted and key not in wanted) or key not in inside | gone:
            continue
        before, after = old.formula(name), new.formula(name)
        work_then = None if before is None else old.work(before, kitchen="").value
        work_now = None if after is None else new.work(after, kitchen=kitchen).value
        found += differences(name, work_then, work_now)
    changed = [one for one in found if not one.is_same]
    yield f"{then.name} → working copy"
    for one in changed:
        yield from _lines(one)
    alike = len(found) - len(changed)
    if alike:
        yield f"{alike} {'is' if alike == 1 else 'are'} as {'it was' if alike == 1 else 'they were'}"


def _lines(one: Difference) -> Iterator[str]:
    called = show(f"{one.name} {one.noun}".strip())
    if one.before is None or one.after is None:
        yield f"{called}: {'new' if one.before is None else 'gone'}"
        return
    yield called
    yield from (f"  {line}" for line in _changes(one.before, one.after, "of one cost" if one.noun else "cost"))


def _changes(before: PieceState, after: PieceState, cost: str) -> Iterator[str]:
    if before.allergens != after.allergens:
        yield f"contains {_list(before.allergens)} → {_list(after.allergens)}"
    if before.unknown != after.unknown:
        yield f"allergens not known of {_list(before.unknown)} → {_list(after.unknown)}"
    if before.ingredients != after.ingredients:
        yield f"ingredients by weight {_list(before.ingredients)} → {_list(after.ingredients)}"
    if before.finished != after.finished:
        yield f"finished {_grams(before.finished)} → {_grams(after.finished)}"
    if before.sold != after.sold:
        yield f"sold at {_sold(before.sold)} → {_sold(after.sold)}"
    if (before.cost, before.currency) != (after.cost, after.currency):
        yield f"ingredients {cost} {_money(before.cost, before.currency)} → {_money(after.cost, after.currency)}"


def _list(words: Sequence[str]) -> str:
    return show(", ".join(words)) or "none listed"


def _grams(grams: Fraction | None) -> str:
    return "not known" if grams is None else f"{decimal(grams, 1)} g"


def _money(amount: Fraction | None, currency: str) -> str:
    from manchet.sheets.parts.money import money_text

    if amount is None:
        return "not known in full"
    return f"{money_text(amount, currency, 1)} {currency}"  # a tenth of a cent is a euro on a thousand loaves


def _sold(sold: tuple[Fraction, str] | None) -> str:
    from manchet.sheets.parts.money import money_text

    return "no price" if sold is None else f"{money_text(*sold)} {sold[1]}"

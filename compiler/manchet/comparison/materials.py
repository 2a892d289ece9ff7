"""What the bread is made of, in per cent of all flour: other amounts, what came in, what went out, what was exchanged."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from manchet.batch.totals import YEASTS
from manchet.batch.work import Work
from manchet.comparison.values import ExchangedFor, OptionalChange, ShareChange
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, OverallLine
from manchet.records import NamedTuple

NEAR = Fraction(1, 20)
"""Two per cents that differ by no more than this part of the larger are the same for an exchange. Our own rule."""
LEAVENS = YEASTS | {"water", "salt", "culture"}
NOTHING = Fraction(0)


class Material(NamedTuple):
    """An ingredient or preparation of the overall formula, all its lines together. `share` and `more` per gram of all flour."""

    name: str
    key: str
    class_: str
    """"" of a preparation."""
    share: Fraction
    more: Fraction
    optional: bool

    @property
    def is_leaven(self) -> bool:
        return self.class_ in LEAVENS


def materials_of(formula: Formula) -> dict[str, Material]:
    """By key: an ingredient is the same by whichever of its names a file calls it."""
    found: dict[str, Material] = {}
    for line in formula.overall:
        one = _material(line)
        there = found.get(one.key)
        if there is not None:
            one = there._replace(
                share=there.share + one.share, more=there.more + one.more, optional=there.optional and one.optional
            )
        found[one.key] = one
    return found


def _material(line: OverallLine) -> Material:
    ingredient = line.ingredient
    key = line.stage or fold(line.name if ingredient is None else ingredient.name)
    return Material(
        line.name, key, "" if ingredient is None else ingredient.class_, line.share, line.more, line.optional
    )


def exchanges(before: Work, after: Work) -> tuple[ExchangedFor, ...]:
    """The nearest in per cent first; in the order of the newer formula."""
    old, new = materials_of(before.formula), materials_of(after.formula)
    gone = [one for key, one in old.items() if key not in new]
    come = [one for key, one in new.items() if key not in old]
    pairs = sorted(
        (abs(a.share - b.share), sorted((a.key, b.key)), a, b) for a in gone for b in come if _for_another(a, b)
    )
    found: dict[str, ExchangedFor] = {}
    taken: set[str] = set()
    for _, keys, a, b in pairs:
        if taken.isdisjoint(keys):
            taken |= {a.key, b.key}
            found[b.key] = ExchangedFor(a.name, b.name, a.key, b.key, a.share, b.share, b.is_leaven)
    return tuple(found[key] for key in new if key in found)


def _for_another(a: Material, b: Material) -> bool:
    if a.class_ in YEASTS and b.class_ in YEASTS:
        return True
    return bool(a.class_) and a.class_ == b.class_ and abs(a.share - b.share) <= max(a.share, b.share) * NEAR


def share_changes(
    before: Work, after: Work, exchanged: tuple[ExchangedFor, ...], renamed: Mapping[str, str]
) -> Iterator[ShareChange | OptionalChange]:
    """In the order of the newer formula; what is gone after it. `renamed`: newer keys by older ones, of what is called otherwise."""
    old = {renamed.get(key, key): one for key, one in materials_of(before.formula).items()}
    new = materials_of(after.formula)
    out = {one.key_before for one in exchanged} | {one.key_after for one in exchanged}
    for key in dict.fromkeys((*new, *old)):
        a, b = old.get(key), new.get(key)
        known = b or a
        if key in out or known is None:
            continue
        shares = (a.share if a else None, b.share if b else None)
        more = (a.more if a else NOTHING, b.more if b else NOTHING)
        if shares[0] != shares[1] or more[0] != more[1]:
            yield ShareChange(known.name, key, "", *shares, *more, known.is_leaven)
        if a is not None and b is not None and a.optional != b.optional:
            yield OptionalChange(b.name, a.optional, b.optional)

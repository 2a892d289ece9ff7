"""What the ways of writing a formula have in common: stages with their shares, worked out in working order."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.formula.draft import Draft, Item
from manchet.formula.model import Booking, OverallLine, Stage
from manchet.formula.portions import FilledStage
from manchet.formula.poured_off import per_flour
from manchet.larder.book import Larder
from manchet.records import NamedTuple

NOTHING = Fraction(0)
ONE = Fraction(1)


class Drafts(NamedTuple):
    """Everything a way works on: the stages by key in working order, and how their cultures are booked."""

    stages: dict[str, Draft]
    returned: dict[tuple[str, str], str]
    larder: Larder
    plates: Fraction | None = None
    """Of a dish: for how many it is written."""


class Shares(NamedTuple):
    """A formula resolved: overall and stages per gram of all flour, and the flour the file itself weighs (or 1)."""

    overall: tuple[OverallLine, ...]
    stages: tuple[Stage, ...]
    flour: Fraction
    sound: bool
    """False where the balance could not be closed: there are reports, and nothing may be printed."""


def is_flour(item: Item, overruled: dict[str, bool]) -> bool:
    """Whether an item counts towards the 100 %: the line says, or overall's line, or the larder."""
    if item.flour is not None:
        return item.flour
    ingredient = item.meaning.ingredient
    if ingredient is None:
        return False
    return overruled.get(item.meaning.key, ingredient.counts_as_flour)


def overruled_by(items: tuple[Item, ...]) -> dict[str, bool]:
    """What the lines of overall say of counting as flour, by key; the stages follow it."""
    return {item.meaning.key: item.flour for item in items if item.flour is not None}


def stage_of(draft: Draft, filled: FilledStage, reaching: Fraction, per: Fraction) -> Stage:
    """The stage as the model holds it; every share is divided by `per`, the unit the way worked in."""
    account = filled.account
    portions = tuple(p._replace(share=p.share / per) for p in filled.portions)
    moved = (
        step._replace(goes=tuple(g if g.share is None else g._replace(share=g.share / per) for g in step.goes))
        if step.goes
        else step
        for step in filled.steps
    )
    steps = tuple(per_flour(step, per) for step in moved)
    return Stage(
        key=draft.key,
        name=draft.name,
        word=draft.word,
        flour_share=draft.share,
        portions=portions,
        steps=steps,
        keeps=draft.keeps,
        into_share=account.into / per,
        out_share=account.out / per,
        returned_share=account.returned / per,
        reaching=reaching,
        for_each_mix=draft.for_each_mix,
        shared=draft.shared,
        place=draft.place,
        notes=draft.notes,
        from_nothing=draft.from_nothing,
        pictures=draft.pictures,
        lost_share=account.lost / per,
        topped_up_share=account.topped_up / per,
        listed_as=draft.listed_as,
        boiled_off_share=account.boiled_off / per,
    )


def cultures_returned(key: str, drafts: Drafts, filled: dict[str, FilledStage], wanted: str) -> Fraction:
    """How much of a culture came into a stage, directly and through the stages used in it."""
    came = NOTHING
    for portion in filled[key].portions:
        if portion.stage in filled:
            made = filled[portion.stage].account.out
            if made:
                came += cultures_returned(portion.stage, drafts, filled, wanted) * portion.share / made
        elif portion.key == wanted and portion.booking is Booking.RETURNED:
            came += portion.share
    return came


def has_errors(reports: Iterable[Diagnostic]) -> bool:
    """Whether any report is an error."""
    return any(r.severity.value == "error" for r in reports)

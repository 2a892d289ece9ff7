"""The oven card: what goes into an oven whose fire is out, in order, posted at the oven."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Bakehouse, Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.oven_card.view import OvenCard
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from collections.abc import Sequence

    from manchet.kitchen.model import Kitchen, Oven
    from manchet.sheets.page.view import View
    from manchet.timing.card.values import Card


def falling_ovens(kitchen: Kitchen) -> list[Oven]:
    """Those of which the kitchen says how they grow colder when the fire is out."""
    return [oven for oven in kitchen.ovens if oven.falls]


def render(bakehouse: Bakehouse, page: PageSetup) -> Outcome[View | None]:
    """None where nothing is baked in an oven of the kitchen that falls: then the last card stays."""
    from manchet.figures.oven.bakes import bakes_of
    from manchet.figures.oven.loading_order import loading_order
    from manchet.sheets.forms.oven_card.card import oven_card

    bakes = [bake for work in bakehouse.works if not work.formula.dish for bake in bakes_of(work) if bake.of_a_day]
    falling = ((oven, [bake for bake in bakes if bake.oven == oven]) for oven in falling_ovens(bakehouse.kitchen))
    plans = [loading_order(own, oven) for oven, own in falling if own]
    formulas = {work.formula.name: work.formula for work in bakehouse.works}
    kitchen = bakehouse.kitchen
    timed = _timed(bakehouse, [bake.formula for bake in bakes if bake.oven.falls], page)
    card = oven_card(
        kitchen.name, plans, formulas, bakehouse.missing, page.issue, page.house, page.when, kitchen.zone, timed
    )
    return Outcome(card if plans else None)


def _timed(bakehouse: Bakehouse, names: Sequence[str], page: PageSetup) -> tuple[Card, ...]:
    """The timing cards of what goes into these ovens, where it was said when; () where not all of it can have one."""
    from manchet.figures.past_a_day import past_a_day
    from manchet.timing.card.card import card_of

    works = [work for work in bakehouse.works if work.formula.name in names]
    if page.when is None or page.when.assumed or any(True for work in works for _ in past_a_day(work)):
        return ()
    return tuple(card_of(work, page.when, page.house.system) for work in works)


FORM = Form(
    name="oven",
    place=4,
    about=Subject.BAKEHOUSE,
    view=OvenCard,
    template="forms/oven_card/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 70), PageLayout("tight bare", 55)),
    preparations=OfPreparations.NEVER,
    fits=lambda kitchen: bool(falling_ovens(kitchen)),
    none_made=(
        "no oven card was made: nothing that was asked for is baked in an oven of which the kitchen says how it grows "
        "colder, as measured, in a line such as `falls 12 C an hour from 250 C`"
    ),
)

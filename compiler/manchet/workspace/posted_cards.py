"""The cards that are posted in a bakehouse: its hazards, and what goes when into an oven whose fire is out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.kitchen.model import Kitchen
from manchet.sheets.oven_card_values import OvenCard
from manchet.sheets.views import HouseCard
from manchet.workspace import cache
from manchet.workspace.bakery import Bakery
from manchet.workspace.opening import kitchen_of
from manchet.workspace.press import Press
from manchet.workspace.print_options import Wish
from manchet.workspace.rendering import Made, Version, house_of, in_forms, issue_of
from manchet.workspace.selection import Asked
from manchet.workspace.slugs import slugs
from manchet.workspace.unprintable import unprintable
from manchet.workspace.versions import versions


class Baking(NamedTuple):
    """What a run bakes: each formula at its size; and the names and files of those that have mistakes."""

    works: tuple[Work, ...]
    missing: tuple[tuple[str, str], ...]


def posted(asked: Asked, bakery: Bakery, baking: Baking, wish: Wish, press: Press) -> Iterator[Made]:
    """The cards of each kitchen that the bakery has; of a plain one where it has none."""
    data = {file.path: file.data for file in asked.files}
    kitchens = [kitchen_of(bakery, wish.kitchen, "")] if wish.kitchen or not bakery.kitchens else bakery.kitchens
    slug_of = slugs(kitchen.name for kitchen in kitchens)
    known = versions(asked.root, asked.prefix, {kitchen.place.path for kitchen in kitchens if kitchen.place})
    for kitchen in kitchens:
        path = kitchen.place.path if kitchen.place else ""
        commit, edited = known.get(path, ("", False))
        version = Version(path.removeprefix(asked.prefix), cache.digest(data.get(path, b""))[:8], commit, edited)
        own = Baking(
            tuple(work for work in baking.works if work.kitchen == kitchen),
            tuple(one for one in baking.missing if kitchen_of(bakery, wish.kitchen, one[1]) == kitchen),
        )
        made = _cards(kitchen, own, wish, version, press)
        if made.files or made.lacking:
            yield made._replace(slug=slug_of[kitchen.name] if kitchen.name else "kitchen")


def _cards(kitchen: Kitchen, baking: Baking, wish: Wish, version: Version, press: Press) -> Made:
    views: list[HouseCard | OvenCard] = []
    if "house" in wish.kinds:
        from manchet.cautions.house import card_of
        from manchet.sheets.caution_view import house_card

        views.append(house_card(kitchen.name, card_of(kitchen), issue_of(wish, version), house_of(kitchen, wish)))
    if "oven" in wish.kinds:
        card = _oven_card(kitchen, baking, wish, version)
        views += () if card is None else (card,)
    files: dict[str, bytes] = {}
    reports: list[Diagnostic] = []
    lacking = ""
    for view in views:
        printed = in_forms(
            view, wish.forms, press, (version.file, kitchen.place.line if kitchen.place else 0, view.form)
        )
        files |= {f"{view.form}.{form}": content for form, content in printed.files.items()}
        lacking = lacking or printed.lacking
        reports += () if kitchen.place is None else unprintable(printed.missing, view, view.form, kitchen.place)
    title = views[0].title if views else kitchen.name
    return Made(title, files, tuple(reports), lacking, is_formula=False)


def _oven_card(kitchen: Kitchen, baking: Baking, wish: Wish, version: Version) -> OvenCard | None:
    """None where this run bakes nothing in an oven of the kitchen that falls: then the last card stays."""
    falling = [oven for oven in kitchen.ovens if oven.falls]
    if not falling:
        return None
    from manchet.figures.oven.bakes import bakes_of
    from manchet.figures.oven.loading_order import ordered
    from manchet.sheets.oven_card_view import oven_card

    bakes = [bake for work in baking.works for bake in bakes_of(work)]
    plans = [ordered(own, oven) for oven in falling if (own := [bake for bake in bakes if bake.oven == oven])]
    formulas = {work.formula.name: work.formula for work in baking.works}
    missing = [name for name, _ in baking.missing]
    issue, house = issue_of(wish, version), house_of(kitchen, wish)
    return oven_card(kitchen.name, plans, formulas, missing, issue, house) if plans else None

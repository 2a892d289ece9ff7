"""The cards that are posted in a bakehouse: its hazards, and what goes when into an oven whose fire is out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from manchet.batch.work import Work
from manchet.kitchen.model import Kitchen
from manchet.sheets.form import Bakehouse, PageSetup, Subject
from manchet.workspace import cache
from manchet.workspace.bakery import Bakery
from manchet.workspace.opening import kitchen_of
from manchet.workspace.press import Press
from manchet.workspace.print_options import Wish
from manchet.workspace.rendering import Made, Version, house_of, in_formats, issue_of
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
    page = PageSetup(issue_of(wish, version), house_of(kitchen, wish))
    bakehouse = Bakehouse(kitchen, baking.works, tuple(name for name, _ in baking.missing))
    rendered = (
        *(form.render(kitchen, page) for form in wish.forms(Subject.KITCHEN) if form.fits(kitchen)),
        *(form.render(bakehouse, page) for form in wish.forms(Subject.BAKEHOUSE) if form.fits(kitchen)),
    )
    views = [outcome.value for outcome in rendered if outcome.value is not None]
    files: dict[str, bytes] = {}
    reports = [report for outcome in rendered for report in outcome.diagnostics]
    lacking = ""
    for view in views:
        line = kitchen.place.line if kitchen.place else 0
        printed = in_formats(view, wish.formats, press, (version.file, line, view.form))
        files |= {f"{view.form}.{name}": content for name, content in printed.files.items()}
        lacking = lacking or printed.lacking
        reports += () if kitchen.place is None else unprintable(printed.missing, view, kitchen.place)
    title = views[0].title if views else kitchen.name
    return Made(title, files, tuple(reports), lacking, is_formula=False)

"""The cards that are posted in a bakehouse: its hazards, and what goes when into an oven whose fire is out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import partial
from pathlib import PurePath

from manchet.batch.order import Order
from manchet.batch.work import Work, work_of
from manchet.cautions.house import mixes_lye
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.larder.stocktake import Stock
from manchet.records import NamedTuple
from manchet.sheets.form import Ahead, Bakehouse, OfPreparations, PageSetup, Subject
from manchet.sheets.page.house import House
from manchet.sheets.parts.own_pictures import Pictures
from manchet.timing.when import moment_of
from manchet.timing.zones import zone_of
from manchet.workspace import cache
from manchet.workspace.bakery import Bakery
from manchet.workspace.baking import Baking
from manchet.workspace.faults import kept_to
from manchet.workspace.file_versions import Version, file_versions
from manchet.workspace.made_ahead import made_ahead
from manchet.workspace.opening import has_errors, kitchen_of
from manchet.workspace.press import Press
from manchet.workspace.print_options import KINDS, PrintOptions
from manchet.workspace.rendering import Rendered, house_of, in_formats, issue_of
from manchet.workspace.selection import Selection
from manchet.workspace.slugs import NO_KITCHEN, slugs
from manchet.workspace.unprintable import unprintable


def render_posted_cards(
    selection: Selection, bakery: Bakery, baking: Baking, options: PrintOptions, press: Press
) -> Iterator[Rendered]:
    """The cards of each kitchen that the bakery has; of a plain one where it has none."""
    kitchens = [kitchen_of(bakery, options.kitchen, "")] if options.kitchen or not bakery.kitchens else bakery.kitchens
    slug_of = slugs(kitchen.name for kitchen in kitchens)
    paths = [kitchen.place.path if kitchen.place else "" for kitchen in kitchens]
    version_of = file_versions(selection, paths)
    lye = mixes_lye((*bakery.formulas, *bakery.preparations.values()))
    for kitchen, path in zip(kitchens, paths, strict=True):
        own = Baking(
            tuple(work for work in baking.works if work.kitchen == kitchen),
            tuple(one for one in baking.missing if kitchen_of(bakery, options.kitchen, one[1]) == kitchen),
        )
        ahead = _ahead(selection, bakery, kitchen, own.works) if options.forms(Subject.BAKEHOUSE) else NOTHING_AHEAD
        made = kept_to(
            _place_of(kitchen, own),
            f"the cards of {kitchen.name or 'the kitchen'} could not be printed",
            partial(_cards, kitchen, own, ahead, bakery.stock, options, version_of[path], press, lye),
            partial(_broken_off, kitchen.name),
        )
        if made.files or made.lacking or made.diagnostics:
            yield made._replace(slug=slug_of[kitchen.name] if kitchen.name else NO_KITCHEN)


def _place_of(kitchen: Kitchen, baking: Baking) -> Place:
    """Where the kitchen is written; of one that nobody wrote, the first formula that is baked in it."""
    return kitchen.place or next((work.formula.place for work in baking.works), Place(".", 1, 1, 1, 1))


def _broken_off(name: str, fault: Diagnostic) -> Rendered:
    return Rendered(name, {}, (fault,), is_formula=False)


class MadeToday(NamedTuple):
    """The preparations of a run, and of which state of their files they are."""

    preparations: tuple[Ahead, ...]
    version: Version


NOTHING_AHEAD = MadeToday((), Version("", ""))


def _ahead(selection: Selection, bakery: Bakery, kitchen: Kitchen, works: Sequence[Work]) -> MadeToday:
    """What these breads want made ahead, and the preparations that this run is asked for without naming them: one that is
    named has a page of its own."""
    known = {
        key: formula
        for key, formula in bakery.preparations.items()
        if not has_errors(bakery.mistakes, formula.place.path)
    }

    def sized(preparation: Formula, grams: Fraction | None) -> Work | None:
        return work_of(preparation, Order(dough=grams), kitchen, bakery.larder, bakery.preparations).value

    users = [work for work in works if work.formula.dish or not work.formula.preparation]
    asked_for = [fold(work.formula.name) for work in works if work not in users]
    ahead = made_ahead(users, known, sized, at_home=False, more=() if selection.names else asked_for)
    return MadeToday(ahead, _of_files(selection, sorted({each.work.formula.place.path for each in ahead})))


def _of_files(selection: Selection, paths: Sequence[str]) -> Version:
    """The state of several files that stand on one page: their commit, where they have one in common."""
    known = file_versions(selection, paths)
    commits = {version.commit for version in known.values()}
    data = b"".join(file.data for file in selection.files if file.path in paths)
    names = ", ".join(dict.fromkeys(PurePath(path).name for path in paths))
    edited = any(version.edited for version in known.values())
    return Version(names, cache.digest(data)[:8], commits.pop() if len(commits) == 1 else "", edited)


def _day(kitchen: Kitchen, works: Sequence[Work], options: PrintOptions, house: House) -> str:
    """The day that a run starts, or is to be ready on, where that was said; else that of printing."""
    when = options.when
    if when is None or not options.dated:
        return options.today
    from manchet.figures.past_a_day import past_a_day
    from manchet.timing.card.card import card_of

    timed = [work for work in works if not past_a_day(work)] if when.is_ready else []
    ready = [card_of(work, when, house.system).ready for work in timed]
    return options.day_of(max(ready, default=moment_of(when, zone_of(kitchen.zone))))


def _cards(
    kitchen: Kitchen,
    baking: Baking,
    ahead: MadeToday,
    stock: Stock | None,
    options: PrintOptions,
    version: Version,
    press: Press,
    lye: bool,
) -> Rendered:
    pictures: Pictures = {} if options.pictures else None
    house = house_of(kitchen, options)
    day = _day(kitchen, baking.works, options, house)
    page = PageSetup(issue_of(options, version), house, pictures, options.when, has_lye=lye)
    of_run = page._replace(issue=page.issue._replace(date=day))
    of_ahead = page._replace(issue=issue_of(options, ahead.version)._replace(date=day))
    bakehouse = Bakehouse(kitchen, baking.works, tuple(name for name, _ in baking.missing), ahead.preparations, stock)
    rendered = (
        *(form.render(kitchen, page) for form in options.forms(Subject.KITCHEN) if form.fits(kitchen)),
        *(
            form.render(bakehouse, of_run if form.preparations is OfPreparations.NEVER else of_ahead)
            for form in options.forms(Subject.BAKEHOUSE)
            if form.fits(kitchen) and (options.kinds != KINDS or form.unasked(bakehouse))
        ),
    )
    views = [outcome.value for outcome in rendered if outcome.value is not None]
    files: dict[str, bytes] = {}
    reports = [report for outcome in rendered for report in outcome.diagnostics]
    lacking = ""
    for view in views:
        line = kitchen.place.line if kitchen.place else 0
        printed = in_formats(view, options.formats, press, (version.file, line, view.form))
        files |= {f"{view.form}.{name}": content for name, content in printed.files.items()}
        lacking = lacking or printed.lacking
        reports += () if kitchen.place is None else unprintable(printed.missing, view, kitchen.place)
    title = views[0].title if views else kitchen.name
    return Rendered(title, files, tuple(reports), lacking, is_formula=False)

"""From a sound formula to the bytes of its sheets: sized, split into mixes, weighed, laid out, printed."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import NamedTuple

from manchet.batch.order import AS_WRITTEN
from manchet.batch.scales import System
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.sheets.handout_values import Handout
from manchet.sheets.oven_card_values import OvenCard
from manchet.sheets.own_pictures import Pictures
from manchet.sheets.pdf import NoPdf
from manchet.sheets.views import House, Issue, Sheet
from manchet.source.files import Stamp
from manchet.workspace.bakery import Bakery
from manchet.workspace.pictures import pictures_of, stamps_of
from manchet.workspace.press import Press
from manchet.workspace.print_options import Wish
from manchet.workspace.replacing import Last
from manchet.workspace.unprintable import unprintable


class Version(NamedTuple):
    """Which state of its file a sheet was printed from. `commit` is "" outside of a git checkout."""

    file: str
    digest: str
    commit: str = ""
    edited: bool = False
    before: Mapping[str, Fraction] = {}
    """The overall formula of the committed version before, by key; {} if there is none."""
    last: Mapping[str, Last] = {}
    """What the sheets of this name in the output folder say of themselves, by kind."""


class Made(NamedTuple):
    """The files of one formula (or of a kitchen: its posted cards), by their endings (`sheet.html`); the reports; and
    what a PDF would need, or ""."""

    name: str
    files: Mapping[str, bytes]
    diagnostics: tuple[Diagnostic, ...]
    lacking: str = ""
    slug: str = ""
    is_formula: bool = True
    bound: bool = True
    """Its formula could be put together."""
    shows: Mapping[str, Stamp | None] = {}
    """The files of the pictures it shows, and how they were before they were read; None for one that is not there."""


class Printed(NamedTuple):
    """A page by its forms; what a PDF would need, or ""; signs that stand in it and are not in the font."""

    files: Mapping[str, bytes]
    lacking: str = ""
    missing: tuple[str, ...] = ()


def made(bakery: Bakery, formula: Formula, wish: Wish, version: Version, press: Press, root: str = "") -> Made:
    """Everything that was wished for. No file at all where the size asked for cannot be made.

    A page that `press` has printed as it is now has its PDF already, and none is made.
    """
    asked = bakery.work(formula, wish.order, wish.kitchen)
    if asked.value is None:
        return Made(formula.name, {}, asked.diagnostics)
    work = asked.value
    shows = stamps_of(formula, root) if _shows_pictures(wish) else {}
    pictures, reports = _pictures(formula, wish, root)
    sheets, more = _views(work, wish, version, pictures)
    reports = (*reports, *more, *_of_this_size(work, wish))
    views: dict[str, Sheet | Handout] = {**sheets}
    if "handout" in wish.kinds:
        from manchet.workspace.handouts import taken_home

        taken = taken_home(bakery, formula, wish, issue_of(wish, version), house_of(work.kitchen, wish), pictures)
        reports = (*reports, *taken.diagnostics)
        if taken.value is not None:
            views["handout"] = taken.value
    files: dict[str, bytes] = {}
    lacking = ""
    for kind, view in views.items():
        printed = in_forms(view, wish.forms, press, (formula.place.path, formula.place.line, kind))
        files |= {f"{kind}.{form}": content for form, content in printed.files.items()}
        lacking = lacking or printed.lacking
        reports = (*reports, *unprintable(printed.missing, view, kind, formula.place))
    return Made(formula.name, files, (*asked.diagnostics, *reports), lacking, shows=shows)


def _of_this_size(work: Work, wish: Wish) -> tuple[Diagnostic, ...]:
    """What an amount that was asked for wants of mixer, oven and tins. The file's own amount was judged with the file."""
    if wish.order == AS_WRITTEN or {"sheet", "card"}.isdisjoint(wish.kinds):
        return ()
    from manchet.checks.registry import check_size

    return check_size(work)


def _pictures(formula: Formula, wish: Wish, root: str) -> Outcome[Pictures]:
    """The baker's own, where a form that shows them is wanted."""
    if not wish.pictures:
        return Outcome(None)
    if not _shows_pictures(wish):
        return Outcome({})
    return Outcome(*pictures_of(formula, root))


def _shows_pictures(wish: Wish) -> bool:
    return wish.pictures and not {"sheet", "handout"}.isdisjoint(wish.kinds)


def house_of(kitchen: Kitchen, wish: Wish) -> House:
    """How this house prints: as asked for, else as the kitchen says (or writes its temperatures), else A4, metric, Celsius,
    British."""
    words = wish.words or kitchen.words or "British"
    degrees, lengths = wish.degrees or kitchen.degrees or "C", kitchen.lengths or "mm"
    return House(wish.paper or "A4", wish.units or "metric", degrees, words, lengths)


def issue_of(wish: Wish, version: Version) -> Issue:
    """What a page says of itself: its day, and which state of its file it is of."""
    return Issue(wish.today, version.file, _state(version), version.digest, edited=version.edited)


def _state(version: Version) -> str:
    return f"edited since {version.commit}" if version.edited and version.commit else version.commit


def _views(work: Work, wish: Wish, version: Version, pictures: Pictures) -> Outcome[Mapping[str, Sheet]]:
    house = house_of(work.kitchen, wish)
    issue = issue_of(wish, version)
    views: dict[str, Sheet] = {}
    reports: tuple[Diagnostic, ...] = ()
    if wish.when is not None:
        from manchet.timing.card.card import card_of

        card = card_of(work, wish.when)
        issue = issue._replace(date=wish.day_of(card.ready), out_at=wish.clock_of(card.out_of_oven))
        if "card" in wish.kinds:
            from manchet.sheets.card_view import timing_card

            views["card"] = timing_card(work, wish.when, _replacing(issue, version, "card"), house)
    if "sheet" in wish.kinds:
        from manchet.sheets.prep_view import prep_sheet

        issue = _replacing(issue, version, "sheet")
        views["sheet"] = prep_sheet(work, issue, house, version.before, pictures)
        reports = weighings(work, System.US if house.units == "US" else System.METRIC).diagnostics
    return Outcome(views, reports)


def _replacing(issue: Issue, version: Version, kind: str) -> Issue:
    last = version.last.get(kind)
    return issue if last is None else issue._replace(replaces=last.replaced_by(issue.date, issue.digest))


def in_forms(
    view: Sheet | Handout | OvenCard, forms: tuple[str, ...], press: Press, key: tuple[str, int, str]
) -> Printed:
    """The page in each form that is wanted."""
    from manchet.sheets.html import html_of

    html = html_of(view)
    data: dict[str, bytes] = {}
    if "html" in forms:
        data["html"] = html.encode()
    if "json" in forms:
        from manchet.sheets.data import json_of

        data["json"] = json_of(view).encode()
    if "pdf" in forms and press.printed.get(key) != html:
        pdf = press.print_page(html)
        if isinstance(pdf, NoPdf):
            return Printed(data, f"{pdf.reason}; {pdf.install}")
        data["pdf"] = pdf.content
        press.printed[key] = html
        return Printed(data, missing=pdf.missing)
    return Printed(data)

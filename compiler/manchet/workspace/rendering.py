"""From a sound formula to the bytes of its sheets: sized, split into mixes, weighed, laid out, printed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from manchet.batch.order import AS_WRITTEN
from manchet.batch.scales import System
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.outcome import Outcome
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.sheets.form import Ahead, Bakehouse, Form, OfPreparations, PageSetup, Subject
from manchet.sheets.page.house import House
from manchet.sheets.page.html import set_layout
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.pdf import NoPdf, Pdf
from manchet.sheets.page.view import View
from manchet.sheets.parts.own_pictures import Pictures
from manchet.sheets.registry import FORMS, form_called, html_of
from manchet.source.files import Stamp
from manchet.workspace.bakery import Bakery
from manchet.workspace.file_versions import Version
from manchet.workspace.made_for import made_for
from manchet.workspace.pictures import not_drawn, pictures_of, stamps_of
from manchet.workspace.press import Press, Sheet
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.unprintable import no_room, unprintable


class Rendered(NamedTuple):
    """The files of one formula (or of a kitchen: its posted cards), by their endings (`sheet.html`); the reports; and
    what a PDF would need, or ""."""

    name: str
    files: Mapping[str, bytes]
    diagnostics: tuple[Diagnostic, ...]
    lacking: str = ""
    slug: str = ""
    no_card: str = ""
    """Why no timing card was made, where one was asked for; ""."""
    is_formula: bool = True
    bound: bool = True
    """Its formula could be put together."""
    shows: Mapping[str, Stamp | None] = {}
    """The files of the pictures it shows, and how they were before they were read; None for one that is not there."""


class Printed(NamedTuple):
    """A page by its formats; what a PDF would need, or ""; signs that stand in it and are not in the font."""

    files: Mapping[str, bytes]
    lacking: str = ""
    missing: tuple[str, ...] = ()
    undrawn: tuple[str, ...] = ()
    """The addresses of pictures that the PDF does not show."""
    crowded: bool = False
    """What it has to say has no room in the places of its paper: it is not printed."""


def render_formula(
    bakery: Bakery,
    formula: Formula,
    options: PrintOptions,
    version: Version,
    press: Press,
    root: str = "",
    named: bool = False,
) -> Rendered:
    """Every page of it that is to be printed. No file at all where the size asked for cannot be made, or cannot be weighed.

    A page that `press` has printed as it is now has its PDF already, and none is made. `named`: it was asked for by name. A
    preparation that was not stands with the others on one page of its kitchen, and in the cards of the breads that want it.
    """
    sized = bakery.work(formula, options.order, options.kitchen)
    if sized.value is None:
        return Rendered(formula.name, {}, sized.diagnostics)
    work = sized.value
    shows = stamps_of(formula, root) if _shows_pictures(options) else {}
    pictures, reports = _pictures(formula, options, root)
    house, issue = house_of(work.kitchen, options), issue_of(options, version)
    ahead = made_for(work)
    page = PageSetup(issue, house, pictures, options.when, version.before, options.benches, options.blanks, ahead)
    forms = [form for form in options.forms(Subject.FORMULA) if form.prints(formula, named)]
    rendered = (
        *_render_forms(work, forms, page._replace(issue=_timed(work, options, issue, house)), version),
        *(
            _render_forms(*_alone(work, options), page, version)
            if formula.preparation and named and not formula.dish
            else ()
        ),
        *(() if formula.dish else _at_home(bakery, formula, options, page, version)),
    )
    reports = (*reports, *(report for outcome in rendered for report in outcome.diagnostics))
    reports = (*sized.diagnostics, *reports, *_of_this_size(work, options), *_at_the_scale(work, house.system))
    if any(one.severity is Severity.ERROR for one in reports):
        return Rendered(formula.name, {}, reports, shows=shows)
    files: dict[str, bytes] = {}
    lacking = ""
    for view in (outcome.value for outcome in rendered):
        if view is not None:
            printed = in_formats(view, options.formats, press, (formula.place.path, formula.place.line, view.form))
            files |= {f"{view.form}.{name}": content for name, content in printed.files.items()}
            lacking = lacking or printed.lacking
            reports = (*reports, *unprintable(printed.missing, view, formula.place))
            reports = (
                *reports,
                *not_drawn(printed.undrawn, pictures or {}),
                *no_room(printed.crowded, view, formula.place),
            )
    return Rendered(formula.name, files, reports, lacking, no_card=_no_card(work, forms), shows=shows)


def _no_card(work: Work, forms: Sequence[Form]) -> str:
    from manchet.figures.past_a_day import past_a_day

    wanted = any(form.name == "card" for form in forms)
    return next((past.said for past in past_a_day(work)), "") if wanted else ""


def _render_forms(
    what: Any, forms: Sequence[Form], page: PageSetup, version: Version
) -> tuple[Outcome[View | None], ...]:
    return tuple(form.render(what, page._replace(issue=_replacing(page.issue, version, form.name))) for form in forms)


def _alone(work: Work, options: PrintOptions) -> tuple[Bakehouse, Sequence[Form]]:
    """A preparation on a page of its own, in the forms that show preparations."""
    forms = [form for form in options.forms(Subject.BAKEHOUSE) if form.preparations is not OfPreparations.NEVER]
    return Bakehouse(work.kitchen, ahead=(Ahead(work),)), forms


def _at_home(
    bakery: Bakery, formula: Formula, options: PrintOptions, page: PageSetup, version: Version
) -> tuple[Outcome[View | None], ...]:
    """The forms that are about a work of their own; none, with the reason, where the size asked for cannot be made."""
    forms = options.forms(Subject.HOME)
    if not forms:
        return ()
    from manchet.workspace.home_work import home_work

    home = home_work(bakery, formula, options, page.house)
    if home.value is None:
        return (Outcome(None, home.diagnostics),)
    return (Outcome(None, home.diagnostics), *_render_forms(home.value, forms, page, version))


def _timed(work: Work, options: PrintOptions, issue: Issue, house: House) -> Issue:
    """With the day and the hour that the bread is out of the oven, where it is known what the timing counts from."""
    from manchet.figures.past_a_day import past_a_day

    if options.when is None or past_a_day(work):
        return issue
    from manchet.timing.card.card import card_of

    card = card_of(work, options.when, house.system)
    made = card.ready.date() if options.dated else options.made
    out_at = options.clock_of(card.out_of_oven, card.ready)
    return issue._replace(date=options.day_of(card.ready), made=made, out_at=out_at)


def _of_this_size(work: Work, options: PrintOptions) -> tuple[Diagnostic, ...]:
    """What an amount that was asked for wants of mixer, oven and tins. The file's own amount was judged with the file."""
    if options.order == AS_WRITTEN or not options.forms(Subject.FORMULA):
        return ()
    from manchet.checks.registry import check_size

    return check_size(work)


def _at_the_scale(work: Work, system: System) -> tuple[Diagnostic, ...]:
    """What cannot be weighed, whichever of the forms are printed: a form that weighs says the rest of it too."""
    return tuple(one for one in weighings(work, system).diagnostics if one.severity is Severity.ERROR)


def _pictures(formula: Formula, options: PrintOptions, root: str) -> Outcome[Pictures]:
    """The baker's own, where a form that shows them is wanted."""
    if not options.pictures:
        return Outcome(None)
    if not _shows_pictures(options):
        return Outcome({})
    return Outcome(*pictures_of(formula, root))


def _shows_pictures(options: PrintOptions) -> bool:
    return options.pictures and any(form.illustrated for form in FORMS if form.name in options.kinds)


def house_of(kitchen: Kitchen, options: PrintOptions) -> House:
    """How this house prints: as asked for, else as the kitchen says (or writes its temperatures), else A4, metric, Celsius,
    British."""
    words = options.words or kitchen.words or "British"
    degrees, lengths = options.degrees or kitchen.degrees or "C", kitchen.lengths or "mm"
    return House(options.paper or "A4", options.units or "metric", degrees, words, lengths)


def issue_of(options: PrintOptions, version: Version) -> Issue:
    """What a page says of itself: its day, and which state of its file it is of."""
    return Issue(options.today, version.file, _state(version), version.digest, edited=version.edited, made=options.made)


def _state(version: Version) -> str:
    return f"edited since {version.commit}" if version.edited and version.commit else version.commit


def _replacing(issue: Issue, version: Version, kind: str) -> Issue:
    last = version.last.get(kind)
    return issue if last is None else issue._replace(replaces=last.replaced_by(issue.date, issue.digest))


def in_formats(view: View, formats: tuple[str, ...], press: Press, key: tuple[str, int, str]) -> Printed:
    """The page in each format that is wanted. What a PDF has chosen of its layouts, the HTML has too."""
    html, pdf = html_of(view), None
    data: dict[str, bytes] = {}
    if "json" in formats:
        from manchet.sheets.page.json_data import json_of

        data["json"] = json_of(view).encode()
    table = form_called(view.form).table
    if "csv" in formats and table is not None:
        data["csv"] = table(view).encode()
    if "pdf" in formats and not press.has_printed(key, html):
        pdf = press.print_page(html, form_called(view.form).layouts)
        if isinstance(pdf, Pdf) and pdf.crowded:
            return Printed({}, crowded=True)
        if not isinstance(pdf, NoPdf):
            data["pdf"] = pdf.content
            press.printed[key] = Sheet(html, pdf.layout)
    if "html" in formats:
        chosen = "pdf" in formats and press.has_printed(key, html)
        data["html"] = (set_layout(html, press.printed[key].layout) if chosen else html).encode()
    if isinstance(pdf, NoPdf):
        return Printed(data, f"{pdf.reason}; {pdf.install}")
    return Printed(data) if pdf is None else Printed(data, "", pdf.missing, pdf.undrawn)

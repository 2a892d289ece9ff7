"""Print a formula as computed: every material of every stage, and the totals.

As text to read, as JSON (exact values as strings beside rounded numbers, and for every figure its rule, inputs and
source; the steps with their times, heats and places, pieces, allergens, hours), or as CSV for a spreadsheet.
"""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from manchet.cli import sizing
from manchet.cli.arguments import one_of
from manchet.cli.reporting import UNEXPLAINED, write_reports
from manchet.cli.status import ERRORS, FINE
from manchet.diagnostics.diagnostic import Severity
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.diagnostics.diagnostic import Diagnostic
    from manchet.figures.derived import Figures, MaterialFigures
    from manchet.figures.dish_figures import PartFigures

EXAMPLES = (
    "manchet figures 'Tern loaf'",
    "manchet figures 'Tern loaf' --pieces 24 --format csv > tern-loaf.csv",
    "manchet figures recipes/tern-loaf.bake --format json",
)


LAID_DOWN = frozenset({"weighed_grams", "made_grams"})
"""Of a dish these are of what is laid down first, and of nothing that is put on it."""


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="?", default="", metavar="FORMULA", help="its name, or a file that holds only it")
    parser.add_argument("--format", type=one_of("text", "json", "csv"), default="text", help="text, json or csv")
    sizing.arguments(parser)
    sizing.swapping(parser)


def run(options: argparse.Namespace) -> int:
    found = figures_for(options)
    if found is None:
        return ERRORS
    work, figures = found
    if options.format == "json":
        sys.stdout.write(json_text(figures, work))
    else:
        sys.stdout.write(text(figures) if options.format == "text" else csv_text(figures))
    return FINE


def figures_for(options: argparse.Namespace) -> tuple[Work, Figures] | None:
    """The work asked for, and its figures; None after saying why there are none."""
    from manchet.figures.derived import figures_of
    from manchet.workspace.faults import kept_to
    from manchet.workspace.opening import baked_beside, open_formula

    if not options.what:
        raise Unknown("which formula?", "give its name, as in: manchet figures 'Tern loaf'")
    found = open_formula(options.what, options.kitchen, tuple(options.swap), tuple(options.wait))
    if found.formula is None:
        write_reports(found.diagnostics)
        if not any(one.severity is Severity.ERROR for one in found.diagnostics):
            from manchet.diagnostics.terminal import show

            print(f"{show(options.what)} has no figures: {UNEXPLAINED}", file=sys.stderr)
        return None
    work, reports = found.bakery.work(found.formula, sizing.order_of(options), options.kitchen)
    if work is None:
        write_reports(reports)
        return None

    def worked_out() -> tuple[Work, Figures] | None:
        figures = figures_of(work, baked_beside(found, options.kitchen))
        write_reports(reports)
        return work, figures

    def broken_off(fault: Diagnostic) -> None:
        write_reports((*reports, fault))

    return kept_to(found.formula.place, f"{found.formula.name} could not be worked out", worked_out, broken_off)


def json_text(figures: Figures, work: Work) -> str:
    import json

    from manchet.figures.report import full_report
    from manchet.timing.card.card import course_of

    return json.dumps(full_report(figures, work, course_of(work).total), indent=2, ensure_ascii=True) + "\n"


def csv_text(figures: Figures) -> str:
    """One row a material: stage, name, per cent, its basis, grams, to six decimals; then both figures exact, what may go in on top, and whether it
    may be left out."""
    import csv
    import io

    from manchet.quantities.printing import decimal, exact_text

    written = io.StringIO()
    rows = csv.writer(written, lineterminator="\n")
    rows.writerow(
        ("stage", "material", "percent", "of", "grams", "exact percent", "exact grams", "more grams", "optional")
    )
    for part in figures.parts:
        grams = None if part.grams is None else part.grams.value
        plain, exact = ("", "") if grams is None else (decimal(grams, 6), exact_text(grams))
        rows.writerow((_cell(figures.name), _cell(part.name), "", "", plain, "", exact, "", ""))
    for stage, materials in _tables(figures):
        for material in materials:
            percent, grams = material.percent.value if material.percent else None, material.grams.value
            plain, exact = ("", "") if percent is None else (decimal(percent, 6), exact_text(percent))
            name, of = _cell(material.name), _cell(material.basis)
            more = decimal(material.more.value, 6) if material.more is not None else ""
            beside = more, "yes" if material.optional else ""
            rows.writerow((_cell(stage), name, plain, of, decimal(grams, 6), exact, exact_text(grams), *beside))
    return written.getvalue()


def text(figures: Figures) -> str:
    from manchet.diagnostics.terminal import show, width
    from manchet.figures.degrees import beside
    from manchet.figures.explaining import spelling_of
    from manchet.quantities.printing import decimal, telling

    lines = [show(figures.name)]
    if figures.parts:
        lines += ["", "  on the plates, in all", *(_part_line(part) for part in figures.parts)]
    for stage, materials in _tables(figures):
        lines += ["", f"  {show(stage)}"]
        for material in materials:
            name = show(material.name)
            percent = (
                f"{decimal(material.percent.value, telling(material.percent.value, 2))} %" if material.percent else ""
            )
            pad = " " * max(28 - width(name), 1)
            grams = decimal(material.grams.value, telling(material.grams.value, 1))
            lines.append(f"    {name}{pad}{grams:>10} g {percent:>12}{_beside(material)}")
    lines += ["", "  totals"]
    for name, figure in figures.totals.items():
        if figures.parts and name in LAID_DOWN:
            continue
        said = f"    {spelling_of(name, figure):<28}{decimal(figure.value, telling(figure.value, 2)):>10} {figure.unit}"
        lines.append((said + beside(figure, figures.degrees)).rstrip())
    return "\n".join(lines) + "\n"


def _part_line(part: PartFigures) -> str:
    from manchet.diagnostics.terminal import show, width
    from manchet.quantities.printing import decimal, telling

    name = show(part.name)
    weight = f"{decimal(part.grams.value, telling(part.grams.value, 1))} g" if part.grams is not None else "? g"
    number = "" if part.number is None else f"   {decimal(part.number.value, 1)} {part.unit}"
    return f"    {name}{' ' * max(28 - width(name), 1)}{weight:>12}{number}"


def _beside(material: MaterialFigures) -> str:
    from manchet.quantities.printing import decimal, telling

    more, said = material.more, []
    if more is not None:
        said.append(f"up to {decimal(more.value, telling(more.value, 1))} g more, as the flour asks")
    if material.optional:
        said.append("optional")
    return f"   {', '.join(said)}" if said else ""


def _tables(figures: Figures) -> list[tuple[str, tuple[MaterialFigures, ...]]]:
    """Of a dish its stages alone: what it is built of is told as what is on its plates."""
    stages = [(stage.name, stage.materials) for stage in figures.stages]
    return stages[:-1] if figures.parts else [("overall", figures.overall), *stages]


def _cell(text: str) -> str:
    """A text that no spreadsheet takes for a formula of its own."""
    from unicodedata import normalize

    # Some take a sign in its wide form for the sign.
    return f"'{text}" if normalize("NFKC", text[:1]) in ("=", "+", "-", "@", "\t", "\r") else text

"""Where a figure comes from: its rule, what went into it, and who says so, down to the lines of the file.

Without a figure's name, the names there are.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from manchet.cli import sizing
from manchet.cli.figures import figures_for
from manchet.cli.status import ERRORS, FINE
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.figures.derived import Figures
    from manchet.figures.figure import Figure, Given

EXAMPLES = (
    "manchet trace 'Tern loaf'",
    "manchet trace 'Tern loaf' hydration_percent",
    "manchet trace 'Tern loaf' 'dough: water'",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="?", default="", metavar="FORMULA", help="its name, or a file that holds only it")
    parser.add_argument("figure", nargs="?", default="", metavar="FIGURE", help="a total, or STAGE: MATERIAL")
    sizing.arguments(parser)
    sizing.swapping(parser)


def run(options: argparse.Namespace) -> int:
    figures = figures_for(options)
    if figures is None:
        return ERRORS
    from manchet.diagnostics.suggest import fold, nearest
    from manchet.diagnostics.terminal import show

    known = {fold(name.replace("_", " ")): (name, figure) for name, figure in _named(figures).items()}
    if not options.figure:
        for name, figure in known.values():
            print(f"{show(name)}  {_value(figure)}")
        return FINE
    wanted = fold(options.figure.replace("_", " "))
    if wanted not in known:
        near = nearest(wanted, known)
        raise Unknown(
            f"{figures.name} has no figure called {options.figure}",
            f"near: {known[near][0]}" if near else f"manchet trace '{figures.name}' lists them",
        )
    sys.stdout.write("\n".join(chain(known[wanted][1])) + "\n")
    return FINE


def chain(figure: Figure | Given, depth: int = 0, seen: frozenset[str] = frozenset()) -> Iterator[str]:
    """The lines that explain a figure, what it is made of one step deeper each time."""
    from manchet.diagnostics.terminal import show
    from manchet.figures.figure import Given

    margin = "  " * depth
    if isinstance(figure, Given):
        yield f"{margin}{show(figure.name)}  {_value(figure)}  ({show(figure.where)})"
        return
    yield f"{margin}{show(figure.name)}  {_value(figure)}"
    key = f"{figure.name} {figure.value} {figure.unit}"
    if key in seen:
        return
    yield f"{margin}  rule: {show(figure.rule)}"
    if figure.source:
        yield f"{margin}  source: {show(figure.source)}"
    for given in figure.inputs:
        yield from chain(given, depth + 1, seen | {key})


def _named(figures: Figures) -> Mapping[str, Figure]:
    named = dict(figures.totals)
    for material in figures.overall:
        named[f"overall: {material.name}"] = material.grams
    for stage in figures.stages:
        for material in stage.materials:
            named[f"{stage.name}: {material.name}"] = material.grams
        for what in ("total", "out", "flour_share", "kept", "returned", "lost"):
            figure: Figure = getattr(stage, what)
            if figure.value or what in ("total", "flour_share"):
                named[f"{stage.name}: {what.replace('_', ' ')}"] = figure
    return {**named, **figures.estimates}


def _value(figure: Figure | Given) -> str:
    from manchet.quantities.printing import exact_text

    return f"{exact_text(figure.value)} {figure.unit}".rstrip()

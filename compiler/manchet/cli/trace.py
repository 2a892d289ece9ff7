"""Show where a figure comes from: its rule, what went into it and the source, down to the lines of the file.

For a caution: its source, and the steps that cause it.

With no figure given, lists the names there are. A name may be written with spaces or with underscores.
"""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Iterable

from manchet.cli import sizing
from manchet.cli.caution_text import caution_lines, where_met
from manchet.cli.figures import figures_for
from manchet.cli.status import ERRORS, FINE
from manchet.workspace.trouble import Unknown

MOST_NAMED = 12
"""Figures named in an answer: as many as are read at a glance."""

EXAMPLES = (
    "manchet trace 'Tern loaf'",
    "manchet trace 'Tern loaf' 'hydration percent'",
    "manchet trace 'Tern loaf' 'dough: water' --exact",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="?", default="", metavar="FORMULA", help="its name, or a file that holds only it")
    parser.add_argument(
        "--exact", action="store_true", help="also show exact values, as fractions where the decimals never end"
    )
    parser.add_argument(
        "figure", nargs="?", default="", metavar="FIGURE", help="a total, STAGE: MATERIAL, or the name of a caution"
    )
    sizing.arguments(parser)
    sizing.swapping(parser)


def run(options: argparse.Namespace) -> int:
    found = figures_for(options)
    if found is None:
        return ERRORS
    work, figures = found
    met = where_met(work, options.figure.strip("[] "))
    if met:
        from manchet.diagnostics.terminal import show

        lines = caution_lines(options.figure.strip("[] "), figures.degrees)
        print("\n".join([*lines, *(f"caused by: {show(line)}" for line in met)]))
        return FINE
    from manchet.diagnostics.suggest import fold, nearest
    from manchet.diagnostics.terminal import show
    from manchet.figures.degrees import beside, with_fahrenheit
    from manchet.figures.explaining import chain, every_figure, spelling_of, value_text

    named = every_figure(figures)
    known = {fold(name.replace("_", " ")): (name, figure) for name, figure in named.items()}
    # As the sheet heads it: `sour first: water` for `first: water`; and a total as the data call it.
    also = {
        fold(f"{stage.word} {name}"): fold(name)
        for stage in figures.stages
        for name in named
        if name.startswith(f"{stage.name}: ")
    } | {fold(key.replace("_", " ")): fold(spelling_of(key, figure)) for key, figure in figures.totals.items()}
    if not options.figure:
        for name, figure in known.values():
            house = figures.degrees
            print(f"{show(with_fahrenheit(name, house))}  {value_text(figure, options.exact)}{beside(figure, house)}")
        return FINE
    wanted = fold(options.figure.replace("_", " "))
    wanted = wanted if wanted in known else also.get(wanted, wanted)
    alike = [wanted] if wanted in known else _with_the_words(wanted, known)
    if len(alike) > 1:
        names = "; ".join(known[key][0] for key in alike[:MOST_NAMED])
        raise Unknown(
            f"{figures.name} has {len(alike)} figures with {options.figure} in their name", f"which of: {names}"
        )
    if not alike:
        near = nearest(wanted, known)
        raise Unknown(
            f"{figures.name} has no figure called {options.figure}",
            f"near: {known[near][0]}" if near else f"manchet trace '{figures.name}' lists them",
        )
    wanted = alike[0]
    sys.stdout.write("\n".join(chain(known[wanted][1], options.exact, figures.degrees)) + "\n")
    return FINE


def _with_the_words(wanted: str, known: Iterable[str]) -> list[str]:
    """The names in which every word that is asked for begins a word."""
    return [
        name for name in known
        if all(any(word.startswith(part) for word in re.findall(r"\w+", name)) for part in wanted.split())
    ]  # fmt: skip

"""Show where something is used: an ingredient, a preparation, a stage, a bread in a dish, a tin or a place.

For what is eaten: its share of each finished piece, how it gets there (cultures and dishes included), its part of the cost, and what
label and cost would be without it: list, allergens, panel and cost before and after. Last comes the total weight used, at written sizes.
"""

from __future__ import annotations

import argparse
import sys
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from manchet.cli.arguments import one_of
from manchet.cli.status import ERRORS, FINE
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.costing.where_used import PlacedIn, UsedIn

EXAMPLES = (
    "manchet where 'medium rye flour'",
    "manchet where 'egg wash'",
    "manchet where 'round basket'",
    "manchet where butter recipes --format json",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "name", metavar="NAME", help="of an ingredient, a preparation, a stage, a bread, a tin or a place"
    )
    parser.add_argument("folder", nargs="?", default=".", metavar="FOLDER", help="the bakery (default: this folder)")
    parser.add_argument("--format", type=one_of("text", "json"), default="text", help="text or json")


def run(options: argparse.Namespace) -> int:
    from manchet.costing.where_used import placed_in, used_in
    from manchet.workspace.selection import selections

    used: list[UsedIn] = []
    placed: list[PlacedIn] = []
    known = False
    broken: list[str] = []
    for selection in selections([options.folder]):
        bakery = selection.bakery.read({file.path for file in selection.files})
        known = known or bakery.larder.find(options.name) is not None
        made = [bakery.work(formula).value for formula in bakery.formulas]
        works = [work for work in made if work is not None]
        used += used_in(works, options.name)
        placed += placed_in(works, options.name)
        broken += [name for name, _ in bakery.unsound]
    if broken:
        print(f"not looked at, for there are mistakes in their files: {', '.join(broken)}", file=sys.stderr)
    if not used and not placed and not known:
        raise Unknown(f"nothing here is called {options.name}", "give it its name in the larder, or as its file has it")
    sys.stdout.write(
        json_text(options.name, used, placed) if options.format == "json" else text(options.name, used, placed)
    )
    return ERRORS if broken and not used and not placed else FINE


def text(name: str, used: list[UsedIn], placed: list[PlacedIn]) -> str:
    """A block for each piece that holds it, a line for each step that names it."""
    from manchet.cli.label_changes import changes
    from manchet.diagnostics.terminal import show
    from manchet.formula.nouns import singular

    lines = []
    for one in used:
        share = (
            "share not known: weigh ten cooled pieces"
            if one.share is None
            else f"{_figure(one.share * 100, 2)}% of the finished weight"
        )
        stays = f" put in, {_figure(one.left, 1)} g left" if one.share is not None and one.left != one.grams else ""
        noun = f" {one.noun}" if one.noun else ""
        lines.append(
            f"{show(one.name)}{show(noun)}  {_figure(one.grams, 1)} g{stays}, {share}  ({show(one.place.where)})"
        )
        for way in one.ways:
            through = " in ".join(reversed(way.through)) or "by itself"
            lines.append(f"  {_figure(way.grams, 1)} g  {show(through)}")
        says = [f"{allergen.upper()} is in it by this alone" for allergen in one.allergens]
        if one.money is not None:
            says.append(f"{_figure(one.money * 100, 1)}% of what the ingredients cost")
        if one.unpriced:
            says.append(f"part of the cost not known in full: no price of {show(', '.join(one.unpriced))}")
        if says:
            lines.append(f"  {', '.join(says)}")
        if one.without is not None:
            of_one = f"a {singular(one.noun)}" if one.noun else "all of it"
            lines.append("  with it → without it")
            lines += [f"    {line}" for line in changes(one.now, one.without, of_one)]
    lines += [f"{show(one.name)}  {show(one.stage)}  ({show(one.place.where)})" for one in placed]
    weighed = sum({one.name: one.weighed for one in used}.values(), Fraction(0))  # of two sorts from one dough once
    if weighed:
        lines.append(f"weighed of it for all of these at their written size: {_figure(weighed, 0)} g")
    if not lines:
        lines.append(f"{show(name)} is in the larder, and nothing is made with it")
    return "\n".join(lines) + "\n"


def json_text(name: str, used: list[UsedIn], placed: list[PlacedIn]) -> str:
    """The same as data; weights in grams, shares of 1."""
    import json

    from manchet.cli.label_changes import state_data

    found: dict[str, Any] = {
        "name": name,
        "used": [
            {
                "in": one.name,
                "piece": one.noun,
                "grams": float(round(one.grams, 3)),
                "share": None if one.share is None else float(round(one.share, 6)),
                "ways": [{"through": list(way.through), "grams": float(round(way.grams, 3))} for way in one.ways],
                "allergens_by_it_alone": list(one.allergens),
                "share_of_cost": None if one.money is None else float(round(one.money, 6)),
                "weighed_grams": float(round(one.weighed, 3)),
                "now": state_data(one.now),
                "without_it": None if one.without is None else state_data(one.without),
                "file": one.place.path,
                "line": one.place.line,
            }
            for one in used
        ],
        "placed": [
            {"in": one.name, "stage": one.stage, "file": one.place.path, "line": one.place.line} for one in placed
        ],
    }
    return json.dumps(found, indent=2, ensure_ascii=True) + "\n"


def _figure(value: Fraction, places: int) -> str:
    """Rounded half up, thousands parted."""
    from manchet.quantities.printing import round_to

    rounded = round_to(value, places)
    return f"{int(rounded):,}" if rounded.denominator == 1 and not places else f"{float(rounded):,.{places}f}"

"""What a command may be asked with a formula: amounts, swaps, waits, days, papers, units and words, as words of the command line."""

from __future__ import annotations

import random

from manchet.cli import build
from manchet.cli.arguments import parser_for
from manchet.cli.build import print_options_of
from manchet.formula.model import Formula
from manchet.workspace.print_options import KINDS, ON_DEMAND, PrintOptions
from manchet.workspace.trouble import Unknown

SWAPS = (
    "fresh yeast for instant yeast", "instant yeast for fresh yeast", "active dry yeast for fresh yeast", "milk for water",
    "ripe wheat starter for instant yeast with 20% of all flour", "salt for water",
)  # fmt: skip
WAITS = ("poolish 16 h at 18 C", "dough 3 h", "dough at 19 C", "levain 5 h at 30 C", "dough 1 min at 2 C")
DAYS = ("Fri 20:00", "2026-11-27T20:00", "2028-02-29 23:59", "07:00")


def print_options(words: list[str]) -> PrintOptions | None:
    """What the command makes of them; None, where it refuses them."""
    try:
        return print_options_of(parser_for("build", build).parse_args(words))
    except Unknown:
        return None


def any_looks(rng: random.Random) -> list[str]:
    """Forms, paper, units, words, day."""
    kinds = rng.sample([*KINDS, *ON_DEMAND], k=rng.randint(1, 3))
    words = ["--only", ",".join(["html", "json", *kinds])]
    for option, values in (
        ("--paper", ("A4", "Letter")), ("--units", ("metric", "US")), ("--temperature", ("C", "F")),
        ("--words", ("British", "American")), (rng.choice(("--start", "--ready")), DAYS),
    ):  # fmt: skip
        if rng.random() < 0.4:
            words += [option, rng.choice(values)]
    words += ["--no-pictures"] * (rng.random() < 0.1)
    if "class" in kinds and rng.random() < 0.5:
        words += ["--benches", str(rng.choice((1, 2, 7, 200)))]
    return words + ["--blanks"] * ("handout" in kinds and rng.random() < 0.5)


def any_amount(formula: Formula, rng: random.Random) -> list[str]:
    """How much, mostly of what the formula has."""
    nouns = [makes.noun for makes in formula.makes] or [""]
    lines = [line.name for line in formula.overall] or ["water"]
    weight = f"{rng.choice((1, 3, 47, 250, 999, 2600, 12345, 900000))} {rng.choice(('g', 'g', 'kg', 'oz', 'lb'))}"
    number = str(rng.choice((1, 2, 3, 7, 24, 100, 999)))
    return rng.choice((
        ["--pieces", f"{number} {rng.choice(nouns)}".strip()],
        ["--pieces", number, "--piece-weight", f"{weight} {rng.choice(('dough', 'baked'))}"],
        ["--piece-weight", f"{weight} {rng.choice(('dough', 'baked'))}"],
        ["--dough", weight],
        ["--flour", weight],
        ["--have", f"{rng.choice(lines)} {weight}"],
        ["--have", f"{rng.choice(lines)} {number} whole"],
        ["--tin", rng.choice(("large", "tin", "2 lb", "900 g"))],
    ))  # fmt: skip


def any_change(rng: random.Random) -> list[str]:
    return rng.choice(([], [], [], ["--swap", rng.choice(SWAPS)], ["--wait", rng.choice(WAITS)]))

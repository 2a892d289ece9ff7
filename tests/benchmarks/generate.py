"""Makes sound formulas, as many as wanted, no two alike.

    python tests/benchmarks/generate.py 1000 FOLDER

A `Recipe` is a bread with a poolish, a levain, a scald and a soaker, in exact shares of all flour. It can be written in
the three ways of the language; the property tests hold the three against each other.
"""

from __future__ import annotations

import sys
from fractions import Fraction
from pathlib import Path
from random import Random
from typing import NamedTuple

FLOURS = ("white flour", "spelt flour", "emmer flour", "barley flour", "durum flour", "whole wheat flour")
RYES = ("medium rye flour", "whole rye flour", "light rye flour")
SEEDS = ("sunflower seeds", "pumpkin seeds", "sesame seeds", "flaxseed", "rolled oats", "millet")
EXTRAS = ("honey", "butter", "malt syrup", "olive oil", "sugar", "milk powder")
CULTURE = "ripe rye starter"
BOOKINGS = ("counted", "apart", "returned")
FIRST = ("Ebb", "Salt", "Tern", "Pilot", "Copper", "Quay", "Marsh", "Heron", "Sluice", "Dune", "Lantern", "Rope")
SECOND = ("loaf", "rye", "round", "long", "bread", "brick", "boule", "plait")


class RecipeLine(NamedTuple):
    """A material: its share of all flour, and what the file adds after the amount."""

    name: str
    share: Fraction
    booking: str = ""


class RecipeStage(NamedTuple):
    """`flour` is the share of all flour in its heading, None for a stage without flour."""

    word: str
    name: str
    flour: Fraction | None
    lines: tuple[RecipeLine, ...]
    steps: tuple[str, ...]
    loses: Fraction = Fraction(0)
    returned: Fraction = Fraction(0)

    @property
    def heading(self) -> str:
        return f"{self.word} {self.name}".strip()

    @property
    def name_used(self) -> str:
        return self.name or self.word

    @property
    def out(self) -> Fraction:
        return sum((line.share for line in self.lines), Fraction(0)) * (1 - self.loses) - self.returned


class Recipe(NamedTuple):
    name: str
    head: tuple[str, ...]
    overall: tuple[RecipeLine, ...]
    stages: tuple[RecipeStage, ...]
    steps: tuple[str, ...]

    def left_for_dough(self) -> tuple[RecipeLine, ...]:
        """What of overall no stage takes, a counted culture being half flour and half water."""
        left = {line.name: line.share for line in self.overall}
        for stage in self.stages:
            for line in stage.lines:
                if line.booking.startswith("counted as "):
                    left[line.booking.removeprefix("counted as ")] -= line.share / 2
                    left["water"] -= line.share / 2
                elif line.name in left:
                    left[line.name] -= line.share
        return tuple(RecipeLine(name, share) for name, share in left.items() if share)


def whole(random: Random, low: int, high: int, step: int = 1) -> Fraction:
    """Between low and high whole per cent, as a share."""
    return Fraction(random.randrange(low, high + 1, step), 100)


def tenths(random: Random, low: int, high: int) -> Fraction:
    """Between low and high tenths of a per cent, as a share."""
    return Fraction(random.randint(low, high), 1000)


def recipe(random: Random, number: int) -> Recipe:
    """A sound bread: what its stages take, overall has."""
    flour, rye = random.choice(FLOURS[1:]), random.choice(RYES)
    seed, extra = random.choice(SEEDS), random.choice(EXTRAS)
    second, third = tenths(random, 100, 250), tenths(random, 250, 350)
    poolish, levain, scald = whole(random, 8, 25), whole(random, 5, 12), whole(random, 2, 6)
    yeast, seeds, culture = Fraction(random.randint(10, 50), 10000), tenths(random, 40, 120), whole(random, 5, 20, 5)
    booking = random.choice(BOOKINGS)
    hours, slow = random.randint(9, 13), random.randint(3, 6)

    overall = (
        RecipeLine("white flour", 1 - second - third),
        RecipeLine(flour, second),
        RecipeLine(rye, third),
        RecipeLine("water", tenths(random, 680, 760)),
        RecipeLine(seed, seeds),
        RecipeLine(extra, tenths(random, 5, 40)),
        RecipeLine("salt", tenths(random, 18, 22)),
        RecipeLine("instant yeast", yeast),
    )
    said = {"counted": f"counted as {rye}", "apart": "counted apart", "returned": ""}[booking]
    stages = (
        RecipeStage(
            "poolish",
            "",
            poolish,
            (
                RecipeLine("white flour", poolish),
                RecipeLine("water", poolish),
                RecipeLine("instant yeast", poolish * Fraction(random.randint(1, 2), 1000)),
            ),
            ("mix by hand 3 min to 23 C", f'ripen covered {hours}-{hours + 3} h at 20 C until "domed, dimples show"'),
        ),
        RecipeStage(
            "levain",
            "",
            levain,
            (
                RecipeLine(rye, levain),
                RecipeLine("water", levain * whole(random, 60, 100, 5)),
                RecipeLine(CULTURE, levain * culture, said),
            ),
            ("mix by hand 4 min to 26 C", f"ripen covered {hours - 1}-{hours + 2} h at 24 C")
            + ((f"return {CULTURE}",) if booking == "returned" else ()),
            returned=levain * culture if booking == "returned" else Fraction(0),
        ),
        RecipeStage(
            "scald",
            "",
            scald,
            (RecipeLine(rye, scald), RecipeLine("water", scald * whole(random, 180, 260, 10))),
            ("mix by hand 3 min, loses 2%", "rest covered 60-90 min", "cool 1-2 h to 30 C"),
            loses=Fraction(2, 100),
        ),
        RecipeStage(
            "soaker",
            "wet seeds",
            None,
            (RecipeLine(seed, seeds), RecipeLine("water", seeds * whole(random, 70, 100, 10))),
            (f"soak covered {random.randint(2, 6)}-12 h at 20 C",),
        ),
    )
    steps = (
        f"mix slow {slow} min",
        "rest covered 20-30 min",
        f'mix fast 2 min to {random.randint(24, 27)} C until "stretches to a rough window"',
        f"ferment covered {random.randint(90, 150)} min at 25 C with 2 folds every 30 min",
        "divide",
        "shape round",
        "rest covered 15-20 min",
        "shape long",
        f'prove covered {random.randint(50, 60)}-{random.randint(65, 80)} min at 26 C until "a mark fills slowly"',
        f'score "{random.randint(2, 4)} cuts, overlapping by a third"',
        f"bake 12 min at {random.randint(240, 255)} C, steam",
        f"bake {random.randint(24, 28)}-{random.randint(29, 34)} min at 220 C to 97 C core, vent open",
        f"cool {random.randint(12, 15)} h",
    )
    name = f"{random.choice(FIRST)} {random.choice(SECOND)} {number}"
    head = (
        f'about "A bread with poolish, levain, scald and seeds, number {number}."',
        "kind rye hearth loaf",
        f"makes {random.randint(8, 40)} loaves at {random.randint(60, 110) * 10} g dough",
        f"dough loss {random.randint(1, 3)}%",
        f"bake loss {random.randint(11, 15)}%",
    )
    return Recipe(name, head, overall, stages, steps)


def figure(value: Fraction) -> str:
    """An exact figure as the language writes it: a decimal of six places at most, else a whole number and a fraction."""
    scaled = value * 10**6
    if scaled.denominator == 1:
        digits = f"{int(scaled):07d}"
        return f"{digits[:-6]}.{digits[-6:]}".rstrip("0").rstrip(".")
    whole, part = divmod(value, 1)
    return f"{whole} {part.numerator}/{part.denominator}" if whole else f"{part.numerator}/{part.denominator}"


def percent(value: Fraction) -> str:
    return f"{figure(value * 100)}%"


def _line(name: str, amount: str, booking: str = "") -> str:
    return f"    {name:<22}{amount}" + (f", {booking}" if booking else "")


def _text(recipe: Recipe, head: tuple[str, ...], *blocks: list[str]) -> str:
    lines = [f"formula {recipe.name}", *(f"  {line}" for line in head)]
    for block in blocks:
        lines += ["", *block]
    return "\n".join(lines) + "\n"


def _steps(steps: tuple[str, ...]) -> list[str]:
    return [f"    {step}" for step in steps]


def in_overall(recipe: Recipe) -> str:
    """The recipe as an overall formula with shares."""
    blocks = [["  overall", *(_line(line.name, percent(line.share)) for line in recipe.overall)]]
    for stage in recipe.stages:
        if stage.flour is None:
            seed, water = stage.lines
            lines = [
                f"    all of the {seed.name}",
                _line("water", f"{percent(water.share / seed.share)} of what is soaked"),
            ]
            heading = f"  {stage.heading}"
        else:
            lines = [_line(line.name, percent(line.share / stage.flour), line.booking) for line in stage.lines]
            heading = f"  {stage.heading} with {percent(stage.flour)} of all flour"
        blocks.append([heading, *lines, *_steps(stage.steps)])
    dough = [*(f"    {stage.name_used}" for stage in recipe.stages), "    everything else", *_steps(recipe.steps)]
    return _text(recipe, recipe.head, *blocks, ["  dough", *dough])


def by_weight(recipe: Recipe, flour: Fraction) -> str:
    """The recipe in grams, for that much flour in all."""
    blocks = [
        [
            f"  {stage.heading}",
            *(_line(line.name, f"{figure(line.share * flour)} g", line.booking) for line in stage.lines),
            *_steps(stage.steps),
        ]
        for stage in recipe.stages
    ]
    dough = [
        *(f"    {stage.name_used}" for stage in recipe.stages),
        *(_line(line.name, f"{figure(line.share * flour)} g") for line in recipe.left_for_dough()),
        *_steps(recipe.steps),
    ]
    head = tuple(line for line in recipe.head if not line.startswith("makes"))
    return _text(recipe, head, *blocks, ["  dough", *dough])


def on_dough_flour(recipe: Recipe) -> str:
    """The recipe in per cent of the flour that goes into the dough itself."""
    left = recipe.left_for_dough()
    flours = {line.name for line in recipe.overall[:3]}
    own = sum((line.share for line in left if line.name in flours), Fraction(0))
    blocks = []
    for stage in recipe.stages:
        basis = stage.flour or own
        lines = [_line(line.name, percent(line.share / basis), line.booking) for line in stage.lines]
        blocks.append([f"  {stage.heading}", *lines, *_steps(stage.steps)])
    dough = [
        *(_line(stage.name_used, percent(stage.out / own)) for stage in recipe.stages),
        *(_line(line.name, percent(line.share / own)) for line in left),
        *_steps(recipe.steps),
    ]
    return _text(recipe, ("written on dough flour", *recipe.head), *blocks, ["  dough", *dough])


def formulas(number: int, seed: int = 0) -> list[str]:
    """That many formulas, no two alike, always the same ones."""
    random = Random(seed)
    return [in_overall(recipe(random, one)) for one in range(1, number + 1)]


def write(folder: Path, number: int, seed: int = 0) -> list[Path]:
    """One formula a file, a hundred files a folder."""
    written = []
    for one, text in enumerate(formulas(number, seed), 1):
        file = folder / f"shelf-{one // 100:03d}" / f"formula-{one:05d}.bake"
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
        written.append(file)
    return written


if __name__ == "__main__":
    write(Path(sys.argv[2]), int(sys.argv[1]))

"""Worked examples from handbooks, millers, manuals and bakers, each through a real formula file.

A case is a folder in `cases/`: `formula.bake`, and `expected.toml` with where the example is printed and what is printed.
A printed figure holds when the exact one is within half a unit of its last printed digit, or `within` where the case says
why its source is less exact. A `slip` is a figure that is printed wrong: ours must differ from it.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path
from typing import Any

from every import every
from reference.reading import figures_of

from manchet.diagnostics.suggest import fold

CASES = sorted((Path(__file__).parent / "cases").iterdir())
GRAMS = {
    "g": Fraction(1),
    "kg": Fraction(1000),
    "oz": Fraction("28.349523125"),
    "lb": Fraction("453.59237"),
    "gal": Fraction("3785.411784"),
}
NAMES_OF_TOTALS = ("total", "out")


def expectations(table: dict[str, Any], path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], Any]]:
    """Every printed figure of a case as ("stages", "levain", "kg", "water") and what is printed for it."""
    for key, value in table.items():
        if isinstance(value, dict) and "printed" not in value:
            yield from expectations(value, (*path, key))
        else:
            yield (*path, key), value


def exact(figure: dict[str, Any]) -> Fraction:
    return Fraction(figure["exact"])


def computed_figures(report: dict[str, Any], path: tuple[str, ...]) -> list[Fraction]:
    """The figures at a path, in the path's unit: several when a stage weighs one ingredient on several lines."""
    *where, unit, name = path
    if where[0] == "estimates":
        return [exact(report["estimates"][name]) / GRAMS.get(unit, Fraction(1))]
    measure, size = ("percent", Fraction(1)) if unit == "percent" else ("grams", GRAMS[unit])
    if where[0] == "totals":
        return [exact(report["totals"][f"{name}_{measure}"]) / size]
    if where[0] == "overall":
        lines = report["overall"]
    else:
        (stage,) = [s for s in report["stages"] if fold(s["name"]) == where[1]]
        if name in NAMES_OF_TOTALS:
            return [exact(stage[f"{name}_grams"]) / size]
        lines = stage["materials"]
    if name == "sum":
        return [sum((exact(line[measure]) for line in lines), Fraction(0)) / size]
    return [exact(line[measure]) / size for line in lines if fold(line["name"]) == name]


def precision(printed: str) -> Fraction:
    """Half a unit of the last digit of a printed figure."""
    decimals = len(printed.partition(".")[2])
    return Fraction(1, 2 * 10**decimals)


def within(figure: Fraction, printed: str, tolerance: Fraction) -> bool:
    return abs(figure - Fraction(printed)) <= tolerance


@every(CASES, at_least=90)
def test_printed_example(case: Path) -> None:
    expected = tomllib.loads((case / "expected.toml").read_text(encoding="utf-8"))
    assert expected.pop("source") and expected.pop("address") and expected.pop("about")
    order, slips = expected.pop("order", {}), expected.pop("slip", [])
    report = figures_of(case / "formula.bake", order)

    faults = []
    for path, says in expectations(expected):
        for printed, figure in zip(
            says if isinstance(says, list) else [says], found := computed_figures(report, path), strict=False
        ):
            text = printed["printed"] if isinstance(printed, dict) else printed
            tolerance = Fraction(printed["within"]) if isinstance(printed, dict) else precision(text)
            if not within(figure, text, tolerance):
                faults.append(f"{'.'.join(path)}: printed {text}, computed {float(figure):.6g} ({figure})")
        if len(found) != (len(says) if isinstance(says, list) else 1):
            faults.append(f"{'.'.join(path)}: {len(found)} lines of that name")
    for slip in slips:
        (figure,) = computed_figures(report, tuple(slip["figure"].split(".")))
        if within(figure, slip["printed"], precision(slip["printed"])):
            faults.append(f"{slip['figure']}: agrees with the slip {slip['printed']} ({slip['why']})")
    assert not faults, "\n".join(faults)


def test_there_are_fifty_examples() -> None:
    assert len(CASES) >= 50

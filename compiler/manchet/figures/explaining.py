"""A figure explained: what it is made of, by which rule and whose word, down to the lines of the file."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from manchet.diagnostics.terminal import show
from manchet.figures.degrees import beside, with_fahrenheit
from manchet.figures.derived import Figures
from manchet.figures.figure import Figure, Given
from manchet.quantities.printing import decimal, exact_text


def chain(
    figure: Figure | Given, exact: bool, house: str = "", depth: int = 0, seen: frozenset[str] = frozenset()
) -> Iterator[str]:
    """The lines that explain a figure, what it is made of one step deeper each time."""
    margin = "  " * depth
    line = f"{margin}{show(with_fahrenheit(figure.name, house))}  {value_text(figure, exact)}{beside(figure, house)}"
    if isinstance(figure, Given):
        yield f"{line}  ({show(figure.where)})"
        return
    yield line
    key = f"{figure.name} {figure.value} {figure.unit}"
    if key in seen:
        return
    yield f"{margin}  rule: {show(with_fahrenheit(figure.rule, house))}"
    if figure.source:
        yield f"{margin}  source: {show(figure.source)}"
    for given in figure.inputs:
        yield from chain(given, exact, house, depth + 1, seen | {key})


def every_figure(figures: Figures) -> Mapping[str, Figure]:
    """Every figure by the name that it is asked for: a total, `STAGE: MATERIAL`, an estimate, what is in a piece."""
    named = {spelling_of(name, figure): figure for name, figure in figures.totals.items()}
    for material in figures.overall:
        named[f"overall: {material.name}"] = material.grams
        if material.more is not None:
            named[f"overall: {material.more.name}"] = material.more
    for stage in figures.stages:
        for material in stage.materials:
            named[f"{stage.name}: {material.name}"] = material.grams
            if material.more is not None:
                named[f"{stage.name}: {material.more.name}"] = material.more
        for what in ("total", "out", "flour_share", "kept", "returned", "lost", "discarded"):
            figure: Figure = getattr(stage, what)
            if figure.value or what in ("total", "flour_share"):
                named[f"{stage.name}: {what.replace('_', ' ')}"] = figure
    return {**named, **figures.estimates, **figures.contents}


def value_text(figure: Figure | Given, exact: bool = False) -> str:
    """`23.14 g`; with `exact` also `(162/7 g)` where that is rounded. What is small keeps three figures."""
    places = 2
    while places < 6 and 0 < abs(figure.value) < Fraction(1, 10 ** (places - 2)):
        places += 1
    plain, whole = decimal(figure.value, places), exact_text(figure.value)
    said = f"{plain} {figure.unit}".rstrip()
    return f"{said} ({whole})" if exact and whole != plain else said


def spelling_of(name: str, figure: Figure) -> str:
    """A total's name in words. What one piece weighs says so, among figures of the whole."""
    return figure.name if name == "baked_grams" else name.replace("_", " ")

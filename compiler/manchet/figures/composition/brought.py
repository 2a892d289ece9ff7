"""What each line brings of water, salt, sugar and fat: its own share of all flour, and how much of it is in 100 g."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.figure import Figure, Given
from manchet.formula.model import OverallLine

NOTHING = Fraction(0)
LARDER = "the larder's composition of each ingredient"

SALT = "what each line brings, summed: of salt, and of what is salted; the sodium that is in everything is not tasted"
SUGAR = "what each line brings, summed: of sweeteners, liquids and malt syrup; not of milk, fruit or flour"
FAT = (
    "what each line brings, summed: of butter, oil, dairy, egg, chocolate and the like; not what flour, grain, seeds and "
    "nuts keep to themselves"
)
WATER = (
    "what each line brings, summed: water, dairy, egg, fat, syrup, yeast, culture; not the moisture of flour and dry goods, "
    "nor of whole fruit"
)


def brought(work: Work, what: str, per_cents: Sequence[Figure | None]) -> tuple[Figure, ...]:
    """What each line of overall brings of `what` (water, salt, sugar, fat), per cent of all flour; a line that brings none is
    left out. `per_cents` are the lines' own."""
    found = []
    for line, percent in zip(work.formula.overall, per_cents, strict=True):
        in_100_g = _held(work, line, what) * 100
        if in_100_g and percent is not None and line.ingredient is not None:
            given = Given(f"{what} in 100 g of {line.ingredient.name}", in_100_g, "g", "the larder")
            rule = f"per cent of all flour x {what} in 100 g / 100"
            name = line.name if what == line.name else f"{what} from {line.name}"
            found.append(
                Figure(name, line.share * in_100_g, "%", rule, (percent, given), line.ingredient.source or LARDER)
            )
    return tuple(found)


def _held(work: Work, line: OverallLine, what: str) -> Fraction:
    if line.ingredient is None:
        return NOTHING
    poured = work.larder.poured(line.ingredient)
    return {"water": poured.water, "salt": poured.salt, "sugar": poured.sugar, "fat": poured.fat}[what]


def water_in_all_figures(work: Work, per_cents: Sequence[Figure | None]) -> dict[str, Figure]:
    """Water in all as it stands in the bowl; and, where some of it has boiled off by then, as it is weighed in."""
    totals, formula = work.totals, work.formula
    lines: tuple[Figure | Given, ...] = brought(work, "water", per_cents)
    rule = WATER
    if totals.flour_apart:
        apart = Given("flour in what is counted apart", totals.flour_apart * 100, "%", formula.place.where)
        lines = (*lines, apart)
        rule += "; / all flour and the flour in cultures counted apart, so that both of theirs count"
    weighed = Figure("water in all, weighed in", totals.water_weighed * 100, "%", rule, lines, LARDER)
    if not totals.boiled_off:
        return {"hydration_percent": weighed._replace(name="water in all")}
    off = tuple(
        Given(
            f"boiled or poured off in {stage.name}",
            stage.boiled_off_share * stage.reaching * 100,
            "%",
            stage.place.where,
        )
        for stage in formula.stages
        if stage.boiled_off_share
    )
    stands = Figure(
        "water in all", totals.water_in_all * 100, "%", "as it stands in the bowl: weighed in, less what has boiled or was poured off",
        (weighed, *off), LARDER,
    )  # fmt: skip
    return {"hydration_percent": stands, "water_weighed_in_percent": weighed}

"""How warm the middle of a bread is when it is done, by kind, where the file does not say. An estimate."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.figure import Figure
from manchet.formula.model import Formula, Step
from manchet.records import NamedTuple


class Core(NamedTuple):
    celsius: int
    source: str


LEAN = Core(96, "lean bread 205 F: bakers' handbook, The Fresh Loaf; done at 93-99 C: Home Baking Association")
RYE = Core(
    98, "crumb about 98 C: New Zealand baking institute; rye not at 96 C or below: IREKS Compendium, coarse grain"
)
RICH = Core(91, "enriched bread 195 F: bakers' handbook, The Fresh Loaf")
CORES = {"lean": LEAN, "rye": RYE, "rich": RICH}
"""By what the vocabulary says of the kind; the source's figure for lean bread serves quick and gluten-free ones by common practice."""


def core_of(formula: Formula, phases: Sequence[Step] = ()) -> Core | None:
    """The core of the kind; None where the file says one itself, where nothing is baked, and for kinds with no crumb to
    measure. `phases`: of one bake, else of all the formula's."""
    bakes = [step for step in phases or formula.steps if step.verb == "bake"]
    if not bakes or any(reach.what == "core" for step in bakes for reach in step.reaches):
        return None
    return CORES.get(formula.bread.core)


def core_figures(formula: Formula) -> dict[str, Figure]:
    core = core_of(formula)
    if core is None:
        return {}
    rule = f"an estimate for a {formula.kind}, within 2 C; the file says none"
    return {"core when done, estimate": Figure("core when done", Fraction(core.celsius), "C", rule, (), core.source)}

"""Every hazard of a formula, each at the step that causes it.

Unknown temperature counts as that of a room, unknown acidity as none. A bread that is baked through is let off what
baking mends; only the words for the bench are left.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.after_heat import after_the_last_heat
from manchet.cautions.burns import burns_met, hands_in_the_mixer
from manchet.cautions.caution import Caution
from manchet.cautions.cooked import cooked_and_kept
from manchet.cautions.eaten import told_to_eaters
from manchet.cautions.keeping import rope_in_warm_weather, wrapped_warm
from manchet.cautions.lye import lye_met
from manchet.cautions.meat_and_fish import fish_never_cooked, meat_through
from manchet.cautions.standing import standing_warm
from manchet.cautions.under_fat import plants_under_fat


def hazards_met(work: Work) -> Iterator[Caution]:
    """Every hazard of the formula, at each step that causes it; the same one may come several times."""
    for stage in work.formula.stages:
        yield from lye_met(work, stage)
        yield from plants_under_fat(work, stage)
        yield from cooked_and_kept(work, stage)
        yield from standing_warm(work, stage)
        yield from burns_met(work, stage)
        yield from hands_in_the_mixer(stage)
    yield from meat_through(work)
    yield from fish_never_cooked(work)
    yield from after_the_last_heat(work)
    yield from rope_in_warm_weather(work)
    yield from wrapped_warm(work)
    yield from told_to_eaters(work)

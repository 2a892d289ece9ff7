"""The things of a kitchen: a row each, with what may be said of it, and sets of them that share a column."""

from __future__ import annotations

from manchet.records import NamedTuple

KEEPING = ("keeps", "holds", "count")
HOLDING = ("volume", "count", "holds")
MEASURES = ("volume", "holds water", "inside", "top", "bottom", "round", "deep", "count", "holds")


class Thing(NamedTuple):
    """A thing of a kitchen, and what is said of it."""

    word: str
    lines: tuple[str, ...]
    """What may stand under it."""
    also: tuple[str, ...] = ()
    """Read as the same: the other English."""
    american: str = ""
    """Which of these an American house writes."""
    keeps_cold_or_warm: bool = False
    """A place that keeps a temperature."""
    goes_in_oven: bool = False
    """What it holds is baked in it; of any other the bread is turned out first."""
    one_piece: bool = False
    """It takes one piece, and the dough stands in it to a level."""

    @property
    def measured(self) -> bool:
        """Its sides can be told, and so how much it holds."""
        return "inside" in self.lines


THINGS = (
    Thing("mixer", ("takes", "stiff dough up to", "slow", "fast", "warms", "friction", "count", "wash", "wash after")),
    Thing("oven", ("heat", "hottest", "holds", "recovers", "heats in", "steam", "floor", "round floor", "door", "falls",
                   "each load cools it", "decks", "loads within", "climbs", "sinks", "cooks at the mouth",
                   "costs")),
    Thing("scale", ("reads", "up to")),
    Thing("fridge", KEEPING, ("refrigerator",), keeps_cold_or_warm=True),
    Thing("freezer", KEEPING, keeps_cold_or_warm=True),
    Thing("prover", KEEPING, ("proofer",), "proofer", keeps_cold_or_warm=True),
    Thing("tin", (*MEASURES, "lidded"), ("pan", "loaf pan"), "pan", one_piece=True, goes_in_oven=True),
    Thing("tray", HOLDING, ("sheet pan",), "sheet pan", goes_in_oven=True),
    Thing("basket", HOLDING, one_piece=True),
    Thing("couche", HOLDING),
    Thing("rack", HOLDING),
    Thing("tub", HOLDING),
    Thing("griddle", HOLDING),
    Thing("pot", MEASURES, goes_in_oven=True),
    Thing("bench", HOLDING),
)  # fmt: skip

THING = {thing.word: thing for thing in THINGS}

ONE_PIECE = frozenset(thing.word for thing in THINGS if thing.one_piece)
MEASURED = frozenset(thing.word for thing in THINGS if thing.measured)
GOES_IN_OVEN = frozenset(thing.word for thing in THINGS if thing.goes_in_oven)
HEATS = frozenset({"gas", "electric", "wood", "oil"})
"""What heats an oven, and is seldom its name."""

"""Every check, and what it is about; how their reports are silenced by `allow`.

A check stands in the file of its name (`salt-low` in `salt_low.py`). It is only loaded when the formula has one of the
things it is about: a start of the command is a tenth of a second, and a plain loaf has no use for the lye.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache
from importlib import import_module

from manchet.batch.work import Work
from manchet.checks.traits import traits_of
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.reports import note, warning

Check = Callable[[Work], Iterator[Diagnostic]]

CHECKS: dict[str, tuple[str, ...]] = {
    "bake-loss-implausible": ("bake loss",),
    "bake-too-short": ("verb bake",),
    "cold-too-warm": ("verb chill", "verb freeze"),
    "cooling-missing": ("a loaf",),
    "core-above-boiling": ("core",),
    "core-low": ("core",),
    "culture-does-not-carry-on": ("keep",),
    "dough-left-over": ("by weight",),
    "dough-loss-implausible": ("dough loss",),
    "dough-over-mixer": ("kitchen mixer",),
    "dough-short-of-pieces": ("by weight",),
    "dough-temperature-implausible": ("verb mix",),
    "dough-under-mixer": ("kitchen mixer",),
    "fermentation-too-hot": ("verb ferment", "verb prove", "verb ripen", "verb retard"),
    "frying-temperature-odd": ("verb fry",),
    "hours-for-minutes": (),
    "hydration-high": (),
    "hydration-low": (),
    "ice-not-enough": ("kitchen air",),
    "inclusions-in-first-mix": ("class fruit", "class nut", "class vegetable", "class dairy", "class other"),
    "kept-too-warm": ("good for",),
    "kind-against-flour": ("class rye flour", "kind rye hearth loaf", "kind rye tin loaf"),
    "kind-without-its-step": ("kind boiled", "kind laminated", "kind lye", "kind fried", "kind filled"),
    "levain-unripe": ("class culture",),
    "level-too-low": ("level",),
    "liquid-above-boiling": ("warm",),
    "lye-bath-strong": ("class lye",),
    "lye-in-dough": ("class lye",),
    "malt-active-high": ("class malt",),
    "minutes-for-hours": (),
    "mix-too-hot-for-yeast": ("warm",),
    "mix-warm-for-yeast": ("warm",),
    "mixed-too-long": ("verb mix",),
    "never-baked": ("unbaked",),
    "never-divided": ("undivided",),
    "never-ferments": (),
    "nothing-raises-it": ("unraised",),
    "oven-fahrenheit-for-celsius": ("verb bake", "verb roast"),
    "oven-holds-too-many": ("kitchen oven",),
    "oven-over-hottest": ("kitchen oven",),
    "oven-too-cold": ("verb bake",),
    "piece-weight-implausible": (),
    "place-misspelt": ("kitchen vessel", "kitchen oven"),
    "preferment-over-ripe": ("verb ripen",),
    "preferment-wetness-odd": ("stage poolish", "stage biga"),
    "preferment-without-leaven": ("verb ripen",),
    "preferment-yeast-against-time": ("stage poolish", "stage biga", "stage sponge", "stage preferment"),
    "prefermented-high": ("verb ripen",),
    "raising-agent-high": ("class raising agent",),
    "retard-too-warm": ("verb retard",),
    "roll-in-odd": ("verb lock in",),
    "room-far-from-written": ("kitchen air",),
    "rye-cooling-short": ("class rye flour",),
    "rye-mixed-fast": ("class rye flour",),
    "salt-high": (),
    "salt-low": (),
    "salt-missing": ("unsalted",),
    "scald-not-hot": ("stage scald",),
    "scald-too-small": ("stage scald",),
    "seed-implausible": ("class culture",),
    "share-implausible": (),
    "shelf-life-missing": ("preparation",),
    "soda-without-acid": ("class raising agent",),
    "steam-missing": ("kind hearth loaf",),
    "stiff-dough-on-fast": ("kitchen mixer",),
    "sugar-against-ordinary-yeast": ("class sweetener",),
    "tin-fill-odd": ("kitchen vessel",),
    "tin-not-named": ("kind tin loaf", "kind rye tin loaf"),
    "topping-implausible": ("applied",),
    "under-oil-too-long": ("good for",),
    "vent-never-opened": ("kind hearth loaf", "kind rye hearth loaf"),
    "vessels-too-few": ("kitchen vessel",),
    "water-hotter-than-the-tap": ("kitchen air",),
    "water-misses-the-dough": ("kitchen air",),
    "yeast-against-time": ("class yeast", "class sweet-dough yeast"),
    "yeast-high": ("class yeast", "class sweet-dough yeast"),
}
"""Name of the report -> what the formula must have one of (see `traits`); nothing: every formula is looked at."""

NAMES = frozenset(CHECKS)


OF_SIZE = frozenset({
    "dough-over-mixer", "dough-under-mixer", "oven-holds-too-many", "piece-weight-implausible", "scald-too-small",
    "tin-fill-odd", "vessels-too-few",
})  # fmt: skip
"""Checks of what the amount asks of the house: made again for another amount than the file's."""


@cache
def check_called(name: str) -> Check:
    """The check that makes the report of that name."""
    found: Check = import_module(f"manchet.checks.{name.replace('-', '_')}").check
    return found


def check_size(work: Work) -> tuple[Diagnostic, ...]:
    """What the checks `OF_SIZE` say of the subject's batch, but for what is allowed."""
    quiet = {allowed.name for allowed in work.formula.allowed} | set(work.kitchen.always_allow)
    traits = traits_of(work)
    about = ((name, CHECKS[name]) for name in sorted(OF_SIZE - quiet))
    return tuple(
        report
        for name, words in about
        if not words or not traits.isdisjoint(words)
        for report in check_called(name)(work)
    )


def check(work: Work) -> tuple[Diagnostic, ...]:
    """The reports of all checks that the formula, its stages and the kitchen do not allow; and each `allow` of one of
    these checks that allowed nothing. An error cannot be allowed.
    """
    traits = traits_of(work)
    reports: list[Diagnostic] = []
    for name, about in CHECKS.items():
        if not about or not traits.isdisjoint(about):
            reports += check_called(name)(work)
    formula = work.formula
    quiet = {allowed.name for allowed in formula.allowed} | set(work.kitchen.always_allow)
    heard = {report.name for report in reports if report.severity is not Severity.ERROR}
    left = [report for report in reports if report.severity is Severity.ERROR or report.name not in quiet]
    for allowed in formula.allowed:
        if allowed.name in KITCHEN_REMARKS:
            message = f"{allowed.name} is a remark on the kitchen, and none on {formula.name}"
            help = f"write `always allow {allowed.name} because …` in the kitchen"
            left.append(warning("unknown-allow", allowed.place, message, help))
        elif allowed.name not in NAMES and allowed.name not in OTHER_REMARKS:
            left.append(
                warning(
                    "unknown-allow",
                    allowed.place,
                    f"there is no remark called {allowed.name}; an error cannot be allowed",
                    _near(allowed.name),
                )
            )
        if allowed.name in NAMES and allowed.name not in heard:
            left.append(
                note(
                    "allow-unused",
                    allowed.place,
                    f"`allow {allowed.name}` allows nothing: {formula.name} has no such report",
                    "take the line out, or look at the name",
                )
            )
    return tuple(left)


OTHER_REMARKS = frozenset(
    {
        "culture-flour-not-in-overall", "culture-of-nothing", "measured-by-spoon",
        "moved-by-rounding", "too-small-to-weigh", "water-unknown",
    }
)  # fmt: skip
"""Remarks that are made elsewhere than here and may be allowed too. (Looking them up among all explanations would cost
each start some milliseconds; a test holds this list to them.)"""

KITCHEN_REMARKS = frozenset({"kitchen-temperature-odd", "oven-falls-faster-when-colder", "tin-wider-below"})
"""Remarks on a kitchen: the kitchen itself allows them."""


def _near(name: str) -> str:
    from manchet.diagnostics.suggest import nearest

    near = nearest(name, NAMES)
    return f"did you mean `{near}`?" if near else "copy the name from the report that is meant"

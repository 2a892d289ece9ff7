"""What all formulas of a bakery share: its larder, its kitchens, the stages and preparations that stand by themselves."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.binding import Offered
from manchet.formula.draft import stage_key
from manchet.formula.model import Formula
from manchet.formula.naming import Names
from manchet.formula.stage_reading import draft_of
from manchet.kitchen.model import PLAIN, Kitchen
from manchet.larder.book import Larder, builtin
from manchet.larder.ingredient import Ingredient, Question
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of
from manchet.workspace.top_blocks import TopBlocks


class Kitchens(NamedTuple):
    """The kitchens of a bakery, in the order of files and lines."""

    all: tuple[Kitchen, ...] = ()
    for_plans: tuple[tuple[str, Kitchen], ...] = ()
    """The path of a file with a plan, and a kitchen with what that file says instead of it."""

    @property
    def first(self) -> Kitchen:
        """The kitchen to plan with where none is named."""
        return self.all[0] if self.all else PLAIN

    def nearest(self, path: str, named: str = "") -> Kitchen:
        """The kitchen a file's breads are made in: the one named, else the one that stands nearest to the file.

        Nearest is the kitchen in the same folder, then in the folder above, and so on; else the first of the bakery.
        """
        if named:
            return self.called(named) or self.first
        above = [k for k in self.all if k.place is not None and path.startswith(_folder(k.place.path))]
        return max(above, key=lambda k: len(_folder(k.place.path)) if k.place else 0, default=self.first)

    def for_plan(self, path: str, named: str = "") -> Kitchen:
        """The kitchen a file's plans are made in: the one that stands in the file, else the nearest, else the one named."""
        own = [kitchen for there, kitchen in self.for_plans if there == path]
        own += [kitchen for kitchen in self.all if kitchen.place is not None and kitchen.place.path == path]
        if own:
            return own[0]
        near = self.nearest(path)
        is_near = near.place is not None and path.startswith(_folder(near.place.path))
        near = near if is_near or not named else self.called(named) or near
        return next((over for there, over in self.for_plans if there == path and over.name == near.name), near)

    def called(self, name: str) -> Kitchen | None:
        wanted = fold(name)
        return next((k for k in self.all if fold(k.name) == wanted), None)


class Around(NamedTuple):
    """What a formula is bound in: its kitchen, and what the bakery offers to it."""

    kitchen: Kitchen
    offered: Offered
    preparations: Mapping[str, Formula]
    """The bakery's sound ones, by key; all of them once all formulas are bound."""
    made_by: object
    """What these follow from, to be compared."""


def larder_of(entries: tuple[Entry, ...]) -> Outcome[Larder]:
    """The built-in larder with the house's own entries on top."""
    larder = builtin()
    if not entries:
        return Outcome(larder)
    from manchet.larder.reading import ingredients_of

    reports: list[Diagnostic] = []
    own: list[Ingredient | Question] = []
    for entry in entries:
        ingredients = ingredients_of(entry, larder.find)
        reports += ingredients.diagnostics
        own += ingredients.value
    filled = larder.with_entries(own)
    return Outcome(filled.value, (*reports, *filled.diagnostics))


def kitchens_of(entries: tuple[Entry, ...], for_plans: tuple[Entry, ...] = ()) -> Outcome[Kitchens]:
    """The kitchens, and those of plans: `for_plans` are the blocks laid over them."""
    if not entries:
        return Outcome(Kitchens())
    from manchet.kitchen.reading import kitchen_of

    reports: list[Diagnostic] = []
    kitchens = []
    for entry in entries:
        kitchen = kitchen_of(entry)
        reports += kitchen.diagnostics
        reports += _strange_zone(entry, kitchen.value.zone)
        kitchens.append(kitchen.value)
    laid: list[tuple[str, Kitchen]] = []
    for over in for_plans:
        from manchet.kitchen.laid_over import kitchen_laid_over  # few bakeries have one

        entry = kitchen_laid_over(next(one for one in entries if fold(name_of(one)) == fold(name_of(over))), over)
        kitchen = kitchen_of(entry)
        reports += kitchen.diagnostics
        reports += _strange_zone(entry, kitchen.value.zone)
        laid.append((over.line.path, kitchen.value))
    return Outcome(Kitchens(tuple(kitchens), tuple(laid)), tuple(reports))


def _strange_zone(entry: Entry, zone: str) -> Iterator[Diagnostic]:
    """A zone that the machine does not know, or whose clock it cannot know, having no zone data."""
    line = next((one.line for one in entry.children if getattr(one.node, "key", "") == "zone"), None)
    if line is None:
        return
    from manchet.timing.zones import zone_of, zones_known  # dates and zones take longer to load than a kitchen to read

    if zone_of(zone) is not None:
        return
    known = zones_known()
    if not known:
        message = f"this machine has no zone data: the clock of {zone} is taken never to change"
        yield report("zone-data-missing", line.place(), message, "`manchet doctor` says what to install")
        return
    near = nearest_zone(zone, known)
    help = (
        f"write `zone {near}`"
        if near
        else "zones are called as in `zone Europe/Lisbon`: a part of the world, then a city"
    )
    message = f"no zone is called {zone}" if zone else "`zone` says nothing"
    yield report("zone-unknown", line.place(), message, help)


def nearest_zone(zone: str, known: Iterable[str]) -> str | None:
    """The zone that is meant: written a little otherwise, or its city alone."""
    wanted = fold(zone).replace(" ", "_")
    named = {fold(name): name for name in sorted(known)}
    cities = {name.rpartition("/")[2]: name for name in named if "/" in name}
    near = nearest(wanted, named)
    if near is None:
        city = nearest(wanted.rpartition("/")[2], cities)
        near = None if city is None else cities[city]
    return None if near is None else named[near]


def offered_by(blocks: TopBlocks, larder: Larder, measures: str) -> Offered:
    """What the bakery offers to a formula in a kitchen of such `measures`."""
    shared: dict[str, Entry] = {}
    for entry in blocks.stages:
        assert isinstance(entry.node, nodes.StageHead)
        shared.setdefault(stage_key(entry.node), entry)
    preparations = {fold(name_of(p)): name_of(p) for p in blocks.preparations}
    return Offered(larder, shared, preparations, measures)


def mistakes_in_shared(stages: tuple[Entry, ...], offered: Offered) -> Iterator[Diagnostic]:
    """Report on each shared stage once, where it stands, and not in every formula that draws on it."""
    names = Names({k: name_of(e) for k, e in offered.shared.items()}, offered.preparations, offered.larder)
    for entry in stages:
        assert isinstance(entry.node, nodes.StageHead)
        draft = draft_of(entry.node, entry, entry.children, names, offered.measures, shared=True)
        yield from draft.diagnostics


def _folder(path: str) -> str:
    """The folder of a path with its last stroke, "" for none."""
    return path[: path.rfind("/") + 1]

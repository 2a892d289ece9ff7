"""The bake as a domestic oven does it: each phase with and without a fan, in both degrees and in gas marks; what to know of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.usual_bake_loss import THIN_NAMES
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.figures.oven.floor import shapes
from manchet.formula.bake_events import STEAM
from manchet.formula.model import Range, Step
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.sheets.forms.handout.home_measures import FAN_LESS, HOTTEST, oven_marks
from manchet.sheets.forms.handout.view import HomeBake, HomeOven, HomePhase
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.steps import for_the_sort
from manchet.sheets.parts.wording import single

POTTED = Fraction(350)
"""Grams from which a piece is a loaf that a pot is worth heating for. Our own rule."""
FULL_POT = Fraction(1200)
"""Grams of dough that a pot of 5 litres takes with room to rise. Our own rule."""
IN_A_POT = frozenset({"round", "oval", "ball", "boule", "batard"})
"""What is shaped so is round, or short enough for a pot. Our own rule."""
HEATS = {"plain": Fraction(20 * 60), "bare": Fraction(40 * 60), "stone": Fraction(40 * 60)}
"""Seconds that an oven is on before it bakes: alone, with a stone or a tray in it, with a pot in it (common practice)."""
ON_SOMETHING = ("tray", "trays", "tin", "tins")


class Baked(NamedTuple):
    """The phases of one bake, of one sort of piece ("" for all)."""

    noun: str
    phases: tuple[Step, ...]


def bakes_of(work: Work) -> tuple[Baked, ...]:
    """The bakes of the dough, then of each sort, in order."""
    ways = [("", work.formula.dough.steps), *((branch.noun, branch.steps) for branch in work.formula.branches)]
    return tuple(Baked(noun, phases) for noun, steps in ways for phases in _runs(steps))


def _runs(steps: Sequence[Step]) -> Iterator[tuple[Step, ...]]:
    run: list[Step] = []
    for step in steps:
        if step.verb == "bake":
            run.append(step)
        elif run:
            yield tuple(run)
            run = []
    if run:
        yield tuple(run)


def heats_in(work: Work) -> dict[str, Fraction]:
    """Seconds that the oven is on before the first bake of each sort."""
    found: dict[str, Fraction] = {}
    for baked in bakes_of(work):
        found.setdefault(baked.noun, HEATS[_heated(baked, work)])
    return found


def home_oven(work: Work, m: Measures) -> HomeOven | None:
    bakes = bakes_of(work)
    if not bakes:
        return None
    other = {"C": "F", "F": "C"}[m.house.degrees]
    advice = dict.fromkeys(line for baked in bakes for line in _advice(baked, work, m))
    tables = tuple(_bake(baked, work, m) for baked in bakes)
    return HomeOven(m.degree(), m.words["units." + other], tables, tuple(advice))


def _bake(baked: Baked, work: Work, m: Measures) -> HomeBake:
    title = for_the_sort(baked.noun, work.batch, m) if baked.noun else ""
    return HomeBake(title, tuple(_phase(step, m) for step in baked.phases))


def _phase(step: Step, m: Measures) -> HomePhase:
    heat = dial(step)
    minutes = "" if step.time is None else _minutes(step.time, m)
    if heat is None:
        return HomePhase(minutes, "", "", "", "")
    ramp = m.words.say("say." + step.ramp[0], m.oven(step.ramp[1])) if step.ramp is not None else ""
    return HomePhase(minutes, *oven_marks(heat, m), ramp)


def _minutes(time: Range, m: Measures) -> str:
    """Without a unit, which stands over them; seconds with theirs."""
    if any(end is not None and end % 60 for end in time):
        return m.time(time)
    return m.plain(Range(*(None if end is None else end / 60 for end in time)))


def dial(step: Step) -> Range | None:
    """The one heat a domestic oven is set to: the middle of what the file says of floor, air, top and bottom."""
    still = [heat.celsius for heat in step.heats if heat.where != "fan"]
    if not still:
        return next((_still(heat.celsius) for heat in step.heats), None)
    if len(still) == 1:
        return still[0]
    heats = [heat.likely for heat in still]
    middle = sum(heats, Fraction(0)) / len(heats)
    return Range(middle, middle)


def _still(fan: Range) -> Range:
    """The heat without a fan that does what this does with one."""
    return Range(*(None if end is None else end + FAN_LESS for end in fan))


def is_on_a_stone(bake: Sequence[Step], work: Work, noun: str) -> bool:
    """A hearth bread with nothing under or over it."""
    formula = work.formula
    bare = not any(step.lid is not None for step in bake) and not any(piece.tin for piece in work.batch.pieces)
    lie = (step.where[1] for step in formula.way_of(noun) if step.verb == "place" and step.where is not None)
    return bare and formula.bread.hearth and not any(fold(what).split()[-1] in ON_SOMETHING for what in lie)


def _fits_a_pot(work: Work, noun: str) -> bool:
    """A round or a short loaf; one that is not shaped, by its name."""
    nouns = [fold(noun)] if noun else [fold(piece.noun) for piece in work.batch.pieces]
    grams = max((p.grams for p in work.batch.pieces if not noun or same_noun(p.noun, noun)), default=work.batch.dough)
    other = any(name in word for word in nouns for name in (*THIN_NAMES, "roll", "bun", "flat"))
    shaped = next((word for word in shapes(work.formula, noun) if word), "round")
    return POTTED <= grams <= FULL_POT and shaped in IN_A_POT and not other


def _is_lidded(baked: Baked) -> bool:
    return any(step.lid is not None for step in baked.phases)


def _heated(baked: Baked, work: Work) -> str:
    """With what in it the oven is heated."""
    stone = is_on_a_stone(baked.phases, work, baked.noun)
    if _is_lidded(baked) or (stone and _fits_a_pot(work, baked.noun)):
        return "stone"
    return "bare" if stone else "plain"


def is_potted(work: Work) -> bool:
    """Whether the advice speaks of a hot pot that the file does not."""
    return any(_heated(baked, work) == "stone" and not _is_lidded(baked) for baked in bakes_of(work))


def _steamed_later(bake: Sequence[Step], m: Measures) -> Iterator[str]:
    """When steam is wanted, counted from when it goes in, where that is not at once alone."""
    begun, times = Range(Fraction(0), Fraction(0)), []
    for step in bake:
        times += [_plus(begun, single(event.after)) for event in step.events if event.what == STEAM]
        begun = _plus(begun, step.time or single(Fraction(0)))
    later = [m.time(time) for time in times if time.high]
    if later:
        phrase = "handout.steam_again" if len(later) < len(times) else "handout.steam_then"
        yield m.words.say(phrase, ", ".join(later))


def _plus(one: Range, other: Range) -> Range:
    """The end that is open, planned as likely."""
    low, high = one.low or one.likely, one.high or one.likely
    return Range(low + (other.low or other.likely), high + (other.high or other.likely))


def _advice(baked: Baked, work: Work, m: Measures) -> Iterator[str]:
    """What a pot or a stone does here, when to heat the oven, and what to do where the file is hotter than it."""
    say, heated, bake = m.words.say, _heated(baked, work), baked.phases
    yield say("handout.heat_" + heated, m.time(Range(HEATS[heated], HEATS[heated])))
    if heated == "bare":
        yield m.words["handout.stone_alone"]
    if heated == "stone" and not _is_lidded(baked):
        first = bake[0].time if len(bake) > 1 else None
        yield say("handout.pot", m.time(first) if first is not None else m.words["handout.first_third"])
        yield m.words["handout.stone"]
    if any(step.steamed for step in bake) and not _is_lidded(baked):
        yield " ".join((m.words["handout.steam_at_home"], *_steamed_later(bake, m)))
    if any((heat := dial(step)) is not None and heat.likely > HOTTEST for step in bake):
        yield say("handout.too_hot", m.degrees(Range(HOTTEST, HOTTEST)))
    if _is_lidded(baked) and sum(piece.number for piece in work.batch.pieces) > 1:
        yield m.words["handout.one_after_another"]

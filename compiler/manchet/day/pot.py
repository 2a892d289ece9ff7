"""The pots over several days: what doughs take of each culture and give back, when it is fed, and whether it reaches.

A pot is taken to be there for its first use, where no plan says what there is. From then on it holds what was given back to it; before a use that wants
more it is fed up to that, and once it has stood for as long as it is good it is fed anew.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date, datetime, timedelta
from fractions import Fraction

from manchet.batch.work import Work
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

NOTHING = Fraction(0)
MOST_FED = Fraction(11)
"""One feeding makes at most so many times what was there: one part on five of flour and five of water. Common practice."""
GOOD_FOR = Fraction(3 * 24 * 3600)
"""Seconds that a pot stands unfed where the larder does not say. Our own rule."""


STEP = Fraction(5)
"""Grams to which a pot is told: nobody weighs one more finely."""

NOTHING_SAID: Mapping[str, Fraction] = {}


class PotMove(NamedTuple):
    """Grams of a culture that a bread takes out of its pot at a moment, or gives back to it."""

    culture: str
    bread: str
    at: datetime
    out: Fraction
    back: Fraction = NOTHING


class Feeding(NamedTuple):
    """What is put into a pot on a day: grams of each of what it is made of, on what is there."""

    on: date
    there: Fraction
    parts: tuple[tuple[str, Fraction], ...]
    because: str
    """"use" (a dough wants more than is there) or "stands" (it has stood for as long as it is good)."""
    wanted: Fraction
    """Grams that it holds afterwards."""


class NotEnough(NamedTuple):
    """A use that no single feeding reaches: so much is wanted, so much can be there."""

    bread: str
    at: datetime
    wanted: Fraction
    most: Fraction


class PotWeek(NamedTuple):
    """One culture."""

    culture: str
    moves: tuple[PotMove, ...]
    needed: Fraction
    """Grams that are there before the first use."""
    feedings: tuple[Feeding, ...]
    short: tuple[NotEnough, ...]


def moves_of(work: Work, took: dict[str, datetime], gave: dict[str, datetime]) -> Iterator[PotMove]:
    """What a work moves: `took` is when each stage (by key) is weighed, `gave` when it is used."""
    for made in work.batch.stages:
        key = made.stage.key
        for weighed in made.weighed:
            ingredient = weighed.portion.ingredient
            if ingredient is not None and ingredient.class_ == "culture" and key in took:
                yield PotMove(ingredient.name, work.formula.name, took[key], weighed.grams)
        for name, grams in (*made.kept, *made.returned):
            known = work.larder.ingredient(name)
            if known is not None and known.class_ == "culture" and key in gave:
                yield PotMove(known.name, work.formula.name, gave[key], NOTHING, grams)


def pots_of(
    moves: Iterable[PotMove],
    cultures: Mapping[str, Ingredient],
    until: date,
    there: Mapping[str, Fraction] = NOTHING_SAID,
) -> tuple[PotWeek, ...]:
    """Each culture that is moved, day by day up to `until`; `cultures` by name, for what they are made of; `there` are the grams
    that a plan says of a pot, before its first use."""
    found: dict[str, list[PotMove]] = {}
    for move in moves:
        found.setdefault(move.culture, []).append(move)
    return tuple(
        _pot(name, sorted(mine, key=lambda move: (move.at, move.out == 0)), cultures[name], until, there.get(name))
        for name, mine in sorted(found.items())
    )


def _pot(name: str, moves: Sequence[PotMove], culture: Ingredient, until: date, said: Fraction | None) -> PotWeek:
    days = sorted({move.at.date() for move in moves})
    needed = _taken_before_given(moves)
    there, fed_on = needed if said is None else said, days[0]
    feedings: list[Feeding] = []
    short: list[NotEnough] = []
    keeps = timedelta(seconds=int(culture.good_for or GOOD_FOR))
    day, last = days[0], max(until, days[-1])
    while day <= last:
        mine = [move for move in moves if move.at.date() == day]
        wanted = _taken_before_given(mine)
        if wanted > there:
            most = there * MOST_FED
            if most < wanted:
                first = next(move for move in mine if move.out)
                short.append(NotEnough(first.bread, first.at, wanted, most))
            before = day - timedelta(days=1)
            if feedings and feedings[-1].on == before:
                feedings.pop()  # it stood, and is fed for the dough in the same go
            feedings.append(_feeding(culture, before, there, min(wanted, most), "use"))
            there, fed_on = min(wanted, most), before
        there = max(there - sum((m.out for m in mine), NOTHING), NOTHING) + sum((m.back for m in mine), NOTHING)
        if any(move.back for move in mine):
            fed_on = day
        elif there and day - fed_on >= keeps:
            feedings.append(_feeding(culture, day, there / 2, there, "stands"))
            fed_on = day
        day += timedelta(days=1)
    return PotWeek(name, tuple(moves), needed, tuple(feedings), tuple(short))


def to_step(grams: Fraction) -> Fraction:
    """To the next `STEP` above: a pot holds rather more than less."""
    return -(-grams // STEP) * STEP


def _taken_before_given(moves: Sequence[PotMove]) -> Fraction:
    """The most that is wanted at once: what is out at the worst moment, of moves in their order."""
    held, worst = NOTHING, NOTHING
    for move in moves:
        held += move.back - move.out
        worst = min(worst, held)
        if move.back:
            break
    return -worst


def _feeding(culture: Ingredient, on: date, there: Fraction, wanted: Fraction, because: str) -> Feeding:
    parts = tuple((part.name, (wanted - there) * part.share) for part in culture.made_of)
    return Feeding(on, there, parts, because, wanted)

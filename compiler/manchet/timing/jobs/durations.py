"""How long one step takes: as the file says, or as the pieces, the hands and the mixer make of it."""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.bake_events import BakeEvent
from manchet.formula.model import Range, Step, Who
from manchet.kitchen.model import Kitchen, Mixer
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BOILS
from manchet.timing.jobs.rounds import rounds_of
from manchet.timing.jobs.usual_times import WAITS, usual_time

NOTHING = Fraction(0)


class Length(NamedTuple):
    """Seconds. `high` is None for an open end; `planned` lies between and is what is counted with."""

    low: Fraction
    planned: Fraction
    high: Fraction | None
    is_estimate: bool
    """Nobody says how long it takes: it is what is usual."""
    by_piece: bool = False
    """Done piece after piece, so that the first is done long before the last."""

    @property
    def range(self) -> Range:
        return Range(self.low, self.high)

    def longer(self, seconds: Fraction) -> Length:
        high = None if self.high is None else self.high + seconds
        return self._replace(low=self.low + seconds, planned=self.planned + seconds, high=high)


def length_of(step: Step, pieces: Fraction, kitchen: Kitchen, hands: int, mixer: Mixer | None = None) -> Length:
    """How long a step takes for so many pieces. The one measure of a step, for a dough alone and in a day of many.

    * `12-15 h`: that; what is counted with is the middle, or the end that is given.
    * `20 s each`: times the pieces, shared by so many `hands`.
    * `60 s a side`: twice; `6 at a time`, or a griddle or pot that holds six: once for every six, and what is left.
    * `700 turns`: by the mixer's turns a minute, if the kitchen gives them.
    * nothing said: the kitchen's seconds a piece for this verb, if it has them; else what is usual, an estimate.
    """
    if step.time is not None:
        times = Fraction(1)
        rounds = rounds_of(step, pieces, kitchen)
        if rounds is not None:
            times = Fraction(rounds.number)
        elif step.per == "each":
            return _by_piece(step.time, pieces, hands) if pieces else _usual(step, pieces, hands)
        return _length(step.time, times * 2 if step.per == "side" else times)
    if step.turns is not None and mixer is not None:
        turns_a_minute = mixer.fast_turns if "fast" in step.manner else mixer.slow_turns
        if turns_a_minute:
            return _length(step.turns, 60 / turns_a_minute)
    each = dict(kitchen.minutes).get(step.verb)
    if each is None or not pieces:
        return _usual(step, pieces, hands)
    return _by_piece(Range(each, each), pieces, hands)


def _length(once: Range, times: Fraction) -> Length:
    low = NOTHING if once.low is None else once.low * times
    high = None if once.high is None else once.high * times
    return Length(low, once.likely * times, high, False)


def _by_piece(each: Range, pieces: Fraction, hands: int) -> Length:
    return _length(each, pieces / hands)._replace(by_piece=pieces > 1)


def _usual(step: Step, pieces: Fraction, hands: int) -> Length:
    """What is usual: of pieces that nobody counts there is one. Of waits only the baker's own words go without a time."""
    if not is_attended(step):
        low, high = map(Fraction, WAITS)
        return Length(low, (low + high) / 2, high, True)
    usual = usual_time(step.verb)
    seconds = usual.each * max(pieces / hands, Fraction(1)) + usual.once
    return Length(seconds, seconds, seconds, True, bool(usual.each) and pieces > 1)


def is_attended(step: Step) -> bool:
    """Somebody is there: what boils is over when its time is, and is not left alone."""
    return step.who is not Who.WAITING or step.verb in BOILS


def stands_longer(step: Step, length: Length) -> Fraction | None:
    """Seconds that what a step made may stand beyond its planned end: within its range if it is a wait, then what it `may
    wait`. None: for ever."""
    waits = step.who is Who.WAITING
    if waits and length.high is None:
        return None
    stretch = (length.high or NOTHING) - length.planned if waits else NOTHING
    wait = step.may_wait
    return stretch + (NOTHING if wait is None else wait.seconds.high or wait.seconds.low or NOTHING)


class Inside(NamedTuple):
    """Work inside a wait or a bake, `after` seconds from its beginning: the `number`th of `of`."""

    work: str
    """"fold", "turn", "stir", "turn bread", "steam", "vent open" or "vent closed"."""
    after: Fraction
    number: int
    of: int
    event: BakeEvent | None = None
    """Of steam and vent."""


def inside(step: Step) -> tuple[Inside, ...]:
    """The folds, turns and stirs of a wait, the turn of the bread in a bake, and its steam and damper where they come later
    than at once; in order of time.

    `with 4 folds every 30 min` are at 30, 60, 90 and 120 min; `with a fold after 45 min` is one.
    """
    found = [
        Inside(folds.work, folds.seconds * (at if folds.every else 1), at, folds.number)
        for folds in step.folds
        for at in range(1, folds.number + 1)
    ]
    if step.turn_after is not None:
        found.append(Inside("turn bread", step.turn_after, 1, 1))
    found += [Inside(event.what, event.after, 1, 1, event) for event in step.events if event.after]
    return tuple(sorted(found, key=lambda one: one.after))

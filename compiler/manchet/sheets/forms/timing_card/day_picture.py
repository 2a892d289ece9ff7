"""The day drawn: a row for each product, oven, mixer and person, in inks that need no colour. One unit is a point."""

from __future__ import annotations

from bisect import bisect_left
from datetime import datetime, timedelta
from itertools import pairwise

from manchet.records import NamedTuple
from manchet.sheets.forms.timing_card.view import DayBar, DayLane, DayPicture, HourMark, InkKey
from manchet.sheets.page.measures import Measures
from manchet.syntax.vocabulary import COLD
from manchet.timing.card import values as card_values
from manchet.timing.card.values import Card

WIDTH = 750
LEFT = 112
"""Where the time begins: left of it stand the names."""
TOP = 20
HIGHEST = 360
"""A picture with its key fits a page that lies on its side, in full size."""
BAR = 12
LINE = 11
"""Height of a line of words under the bars."""
MOST_LINES = 5
LETTER = 5.0
"""About how wide a letter of the 10-point face is; words are set apart by it, never cut by it."""
APART = 36
"""Hour marks stand at least so far apart."""
LONG = 60.0
"""Minutes without an event that are drawn in full."""
MEANS = frozenset({"oven", "mixer", "person"})
"""Where not all fits one picture, the bread has one and what it is made with has the next."""
THIN = 1.4
"""The width of what has no length."""


class Axis(NamedTuple):
    """Where a moment stands: straight from mark to mark, and long stretches without a mark are drawn short."""

    marks: tuple[datetime, ...]
    places: tuple[float, ...]
    is_cut: bool

    def at(self, moment: datetime) -> float:
        """The moment's place across; it lies between the first mark and the last."""
        after = min(bisect_left(self.marks, moment), len(self.marks) - 1)
        if after == 0:
            return self.places[0]
        left, right = self.marks[after - 1], self.marks[after]
        part = (moment - left) / (right - left)
        return self.places[after - 1] + part * (self.places[after] - self.places[after - 1])


def axis_of(moments: set[datetime]) -> Axis:
    """An axis from the first moment to the last. Of a stretch, what goes beyond an hour counts a tenth."""
    marks = tuple(sorted(moments))
    lengths = [(b - a).total_seconds() / 60 for a, b in pairwise(marks)]
    drawn = [min(length, LONG) + max(0.0, length - LONG) / 10 for length in lengths]
    scale = (WIDTH - LEFT - 8) / max(1.0, sum(drawn))
    places = [float(LEFT)]
    for length in drawn:
        places.append(places[-1] + length * scale)
    return Axis(marks, tuple(places), any(length > LONG for length in lengths))


def day_pictures(card: Card, m: Measures) -> tuple[DayPicture, ...]:
    """The picture of a card, in as many as its rows need to stay readable; none where nothing has a length."""
    lanes = [lane for lane in card.lanes if any(bar.end > bar.start for bar in lane.bars)]
    if not lanes:
        return ()
    axis = axis_of({moment for lane in lanes for bar in lane.bars for moment in (bar.start, bar.end)})
    found: list[DayPicture] = []
    drawn: list[tuple[card_values.CardLane, DayLane]] = []
    y = float(TOP)
    too_high = sum(_lane(lane, card, axis, 0.0, m)[1] for lane in lanes) > HIGHEST - TOP
    for lane in lanes:
        row, foot = _lane(lane, card, axis, y, m)
        means = too_high and bool(drawn) and lane.what in MEANS and drawn[-1][0].what not in MEANS
        if drawn and (means or foot > HIGHEST):
            found.append(_picture(drawn, axis, y, m))
            drawn = []
            row, foot = _lane(lane, card, axis, float(TOP), m)
        drawn.append((lane, row))
        y = foot
    return (*found, _picture(drawn, axis, y, m))


def _picture(drawn: list[tuple[card_values.CardLane, DayLane]], axis: Axis, foot: float, m: Measures) -> DayPicture:
    inks = dict.fromkeys(bar.ink for _, row in drawn for bar in row.bars)
    return DayPicture(
        width=_at(WIDTH),
        height=_at(foot + 24),
        foot=_at(foot),
        ticks=tuple(_ticks(axis, m)),
        lanes=tuple(row for _, row in drawn),
        keys=tuple(_keys(inks, foot + 8, m)),
        words=_in_words([lane for lane, _ in drawn], m),
        note=m.words["card.drawn_short"] if axis.is_cut else "",
    )


def _lane(lane: card_values.CardLane, card: Card, axis: Axis, y: float, m: Measures) -> tuple[DayLane, float]:
    """One row from `y` down, and where it ends."""
    bars, lines = _bars(lane, card, axis, y, m)
    bars_foot = y + 4 + BAR
    foot = bars_foot + 4 + lines * LINE + 2
    title = _short_title(_title(lane, m))
    return DayLane(title, _at(y), _at(bars_foot - 2), _at(bars_foot), _at(foot), tuple(bars)), foot


def _at(figure: float) -> str:
    """A coordinate: a tenth of a point is finer than any printer."""
    return f"{figure:.1f}".removesuffix(".0")


def _bars(lane: card_values.CardLane, card: Card, axis: Axis, y: float, m: Measures) -> tuple[list[DayBar], int]:
    """The bars of a lane, each with its word in the first line that has room; how many lines that took."""
    ends = [0.0] * MOST_LINES
    lines, found, said, until = 0, [], "", None
    for bar in sorted(lane.bars, key=lambda b: (b.start, b.end)):
        x = axis.at(bar.start)
        width = max(THIN, axis.at(bar.end) - x)
        word = "" if bar.label == said and until == bar.start else _word(bar.label, m)
        said, until = bar.label, bar.end
        wide = len(word) * LETTER + 5
        text_x = min(x, WIDTH - wide)
        line = next((n for n in range(MOST_LINES) if ends[n] <= text_x), None)
        if line is None:
            word = ""
        elif word:
            ends[line] = text_x + wide
            lines = max(lines, line + 1)
        text_y = y + 4 + BAR + 2 + ((line or 0) + 1) * LINE - 2
        found.append(DayBar(_at(x), _at(width), _at(y + 4), _ink(bar, lane, card), word, _at(text_x), _at(text_y)))
    return found, lines


def _ink(bar: card_values.CardBar, lane: card_values.CardLane, card: Card) -> str:
    if bar.kind == "fire out":
        return "wait"
    if lane.what == "oven" or bar.kind == "preheat":
        return "oven"
    step = card.rows[bar.row].step
    if bar.kind == "waiting":
        return "cold" if step is not None and step.verb in COLD else "wait"
    return "machine" if bar.kind == "machine" else "hands"


def _word(label: str, m: Measures) -> str:
    """A verb in the house's words; a name as it is."""
    return m.words.known("short", label) or (m.words.known("verbs", label) or label).lower()


def _title(lane: card_values.CardLane, m: Measures) -> str:
    if lane.what == "person":
        return m.words.say("card.person", lane.name)
    return m.words.say("card.mix", lane.name, str(lane.mix)) if lane.mix else lane.name


def _short_title(title: str) -> str:
    """A name as long as the place for it: the card's lines have it in full."""
    most = int((LEFT - 8) / 6)
    return title if len(title) <= most else title[: most - 1] + "…"


def _ticks(axis: Axis, m: Measures) -> list[HourMark]:
    """Full hours, as many as can be told apart."""
    found: list[HourMark] = []
    first, last = axis.marks[0], axis.marks[-1]
    at, free = first.replace(minute=0, second=0) + timedelta(hours=1), 0.0
    while at <= last:
        x = axis.at(at)
        if x >= free:
            found.append(HourMark(_at(x), m.clock(at)))
            free = x + APART
        at += timedelta(hours=1)
    return found


def _keys(inks: dict[str, None], y: float, m: Measures) -> list[InkKey]:
    found = []
    for n, ink in enumerate(inks):
        x = LEFT + n * 105
        found.append(InkKey(ink, m.words["inks." + ink], _at(x), _at(y), _at(x + 27), _at(y + 9)))
    return found


def _in_words(lanes: list[card_values.CardLane], m: Measures) -> str:
    """The picture in words, for whoever cannot see it."""
    said = []
    for lane in lanes:
        bars = ", ".join(
            m.words.say("card.bar", _word(bar.label, m), m.clock(bar.start), m.clock(bar.end)) for bar in lane.bars
        )
        said.append(m.words.say("card.line", _title(lane, m), bars))
    return "; ".join(said)

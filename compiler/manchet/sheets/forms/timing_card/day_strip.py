"""The day of a card as a strip: what is drawn of each stage, branch and oven, and the same in words."""

from __future__ import annotations

from datetime import datetime

from manchet.sheets.drawings.day import Bar, Lane, day
from manchet.sheets.drawings.pen import breadth, drawing
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.views import Illustration
from manchet.syntax.vocabulary import COLD, IN_OVEN
from manchet.timing.card.values import Card, CardBar, CardLane

SHORT = 180
"""Minutes of work under which a strip says nothing that the jobs do not. Our own rule."""
WIDEST = 84.0
"""Of a name beside its lane, in units; the jobs have it in full."""


def day_strip(card: Card, m: Measures) -> Illustration | None:
    """None for a short day, for several mixes, and where nothing has a length."""
    lanes = [lane for lane in card.lanes if any(bar.end > bar.start for bar in lane.bars)]
    if not lanes or card.mixes > 1 or _minute(card.ready, card.start) < SHORT:
        return None
    drawn = [
        Lane(_short(_title(lane, card, m)), tuple(_bar(bar, lane, card, m) for bar in lane.bars)) for lane in lanes
    ]
    art = day(drawn, _wall(card), m.words["strip.cut"])
    said = drawing("day", _in_words(lanes, card, m), art)
    return Illustration(said.title, said.svg, high=said.high)


def _wall(card: Card) -> WallClock:
    jumps = tuple((_minute(change.after, card.start), change.minutes) for change in card.clock_changes)
    return WallClock(card.start.hour * 60 + card.start.minute, jumps)


def _minute(at: datetime, start: datetime) -> int:
    return int((at - start).total_seconds()) // 60


def _bar(bar: CardBar, lane: CardLane, card: Card, m: Measures) -> Bar:
    ink = _ink(bar, lane, card)
    text = _word(bar.label, m) if ink in ("alone", "cold") else ""
    return Bar(_minute(bar.start, card.start), _minute(bar.end, card.start), ink, text)


def _ink(bar: CardBar, lane: CardLane, card: Card) -> str:
    step = card.rows[bar.row].step
    if bar.kind == "preheat":
        return "rises"
    if lane.what == "oven" and step is not None and step.verb in IN_OVEN:
        return "bakes"
    if bar.kind != "waiting":
        return "work"
    return "cold" if step is not None and step.verb in COLD else "alone"


def _word(label: str, m: Measures) -> str:
    """A verb in the house's words; a name as it is."""
    return m.words.known("short", label) or (m.words.known("verbs", label) or label).lower()


def _title(lane: CardLane, card: Card, m: Measures) -> str:
    """The dough is called so; its name is the card's."""
    return m.words["late.dough"] if lane.what == "product" and lane.name == card.name else lane.name


def _short(title: str) -> str:
    while breadth(title, 9) > WIDEST:
        title = title.removesuffix("…")[:-1].rstrip() + "…"
    return title


def _in_words(lanes: list[CardLane], card: Card, m: Measures) -> str:
    """The strip in words, for whoever cannot see it."""
    said = []
    for lane in lanes:
        bars = ", ".join(
            m.words.say("strip.bar", _word(bar.label, m), m.clock(bar.start), m.clock(bar.end))
            for bar in lane.bars
            if bar.end > bar.start
        )
        said.append(m.words.say("strip.lane", _title(lane, card, m), bars))
    return "; ".join(said)

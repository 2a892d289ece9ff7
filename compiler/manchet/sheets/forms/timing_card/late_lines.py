"""The card's foot: what gives when it is late, what the dough's warmth does, what is to be seen to before anybody goes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from manchet.sheets.forms.timing_card.view import CardClash, LateLine
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.timing.card.late_spans import CutWait, LateSpan
from manchet.timing.card.values import Clash


def late_lines(spans: Iterable[LateSpan], m: Measures) -> tuple[LateLine, ...]:
    return tuple(LateLine(_clocks(span, m), _gives(span, m)) for span in spans)


def _clocks(span: LateSpan, m: Measures) -> str:
    if span.to_the_end and not span.minutes:
        return m.words.say("late.from", m.clock(span.first))
    if span.first == span.last:
        return m.clock(span.first)
    return m.words.say("late.between", m.clock(span.first), m.clock(span.last))


def _gives(span: LateSpan, m: Measures) -> str:
    words = m.words
    if not span.minutes:
        return words["late.all_later"]
    waits = ", ".join(dict.fromkeys(_wait(thing, m) for thing in span.shorter))
    gives = words.say("late.shorter", waits) if waits else words["late.nothing"]
    said = words.say("late.up_to", str(span.minutes), gives)
    if not span.over:
        return said
    looks = ", ".join(dict.fromkeys(stage or words["late.dough"] for stage in span.over))
    return words.say("late.look", said, looks)


def _wait(thing: CutWait, m: Measures) -> str:
    """`retard`, `poolish ripening`."""
    wait = m.words.known("waits", thing.verb) or wording.verb_alone(thing.verb, m)
    return m.words.say("late.wait_of", thing.stage, wait) if thing.stage else wait


def clash_lines(clashes: Sequence[Clash], m: Measures) -> tuple[CardClash, ...]:
    """Each once, with all its clocks."""
    clocks: dict[str, list[str]] = {}
    for clash in clashes:
        who = ", ".join(clash.who)
        said = (
            m.words.say("clash." + clash.what, who)
            if clash.what == "hands"
            else m.words.say("clash." + clash.what, clash.name, who)
        )
        clocks.setdefault(said, []).append(m.words.say("late.between", m.clock(clash.start), m.clock(clash.end)))
    return tuple(CardClash(tuple(dict.fromkeys(times)), said) for said, times in clocks.items())

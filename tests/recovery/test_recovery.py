"""Of two or three mistakes in one text each is reported as if it were alone: none lost, none besides, none twice.

A hundred pairs and triples here; MANCHET_RECOVERY says how many otherwise.
"""

from __future__ import annotations

import os
import random
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from functools import cache
from hashlib import sha256
from itertools import count

from fuzz.texts import sound_texts
from recovery.mistakes import Mistake, carried_out, fitting, of_the_pen, put_in_at, slips
from run_length import at_length
from works import bakery_of

from manchet.checks.index import CHECKS
from manchet.day.reading import OF_ITS_DAY
from manchet.diagnostics.catalogue import explain
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.names import REPORTS
from manchet.records import NamedTuple

SEED = 20261130
HOW_MANY = int(os.environ.get("MANCHET_RECOVERY", at_length(400, 100)))
DEEPEST = 64
LONGEST = 120
"""Lines of a text that mistakes are put into."""


class Said(NamedTuple):
    """A report, at the line of the text before its mistakes that it stands on."""

    name: str
    line: int


class Heard(NamedTuple):
    """What is said of a text: of its reading, and of the dough; and the lines that each report points to."""

    reading: Counter[Said]
    dough: Counter[Said]
    points: dict[Said, set[int]]


def heard(rows: Sequence[str], mistakes: Sequence[Mistake]) -> Heard:
    text, origins = carried_out(rows, mistakes)
    bakery = bakery_of(text)

    def of(reports: Sequence[Diagnostic]) -> Iterator[tuple[Said, set[int]]]:
        for one in (one for one in reports if one.name not in OF_WHATEVER_MISTAKES):
            places = (one.place, *(related.place for related in one.related))
            lines = [origins[place.line - 1] for place in places]
            yield Said(one.name, lines[0]), set(lines)

    read, all_ = [*of(bakery.mistakes)], [*of(bakery.diagnostics)]
    reading = Counter(said for said, _ in read)
    return Heard(reading, Counter(said for said, _ in all_) - reading, dict(all_))


OF_WHATEVER_MISTAKES = frozenset({"part-has-mistakes"})
"""Said of a dish because a part of it could not be put together: of what is said of the part, and not of a line of its own."""


class Trial(NamedTuple):
    rows: tuple[str, ...]
    alone: tuple[tuple[Mistake, Heard], ...]
    """The mistakes, and what is said of each by itself."""

    @property
    def mistakes(self) -> tuple[Mistake, ...]:
        return tuple(one for one, _ in self.alone)


def trials(seed: int, how_many: int) -> Iterator[Trial]:
    """Texts that nothing is to be said of, each with two or three mistakes whose lines do not touch."""
    for number in range(how_many):
        yield next(trial for again in count() if (trial := drawn(f"{seed} {number} {again}")) is not None)


def drawn(lot: str) -> Trial | None:
    """The trial of a lot; None where the lot falls on a text or on mistakes that make none. What else there is to draw from
    changes it only where the lot falls on that, so a new case leaves nearly all trials as they were."""
    rows = sound_rows(falls_on(lot, texts()))
    if rows is None:
        return None
    rng = random.Random(lot)
    chosen: list[tuple[Mistake, Heard]] = []
    for at in range(rng.choice((2, 2, 3))):
        by_title = fitting(rows)
        by_a_case = rng.random() < 0.6 and bool(by_title)
        slip = random.Random(f"{lot} {at}")
        made = by_title[falls_on(f"{lot} {at}", by_title)] if by_a_case else of_the_pen(rows, slip)
        if made is not None and all(independent(made, other, rows) for other, _ in chosen):
            said = heard(rows, (made,))
            if any(said[:2]):
                chosen.append((made, said))
    return Trial(rows, tuple(chosen)) if len(chosen) > 1 else None


def falls_on(lot: str, names: Iterable[str]) -> str:
    """One of the names, as the lot has it: the same whatever other names there are, unless it falls on one of those."""
    return min(names, key=lambda name: sha256(f"{lot} {name}".encode()).digest())


@cache
def texts() -> dict[str, str]:
    """All texts that may be sound: of the cases by their names, of files by themselves."""
    cases = {one.title: case.put_right for one in slips() if (case := explain(one.title)) is not None}
    return cases | {text: text for text in sound_texts()}


@cache
def sound_rows(name: str) -> tuple[str, ...] | None:
    """The rows of a text; None where it is long, or something is said of it."""
    text = texts()[name]
    rows = tuple(text.split("\n"))
    return None if len(rows) > LONGEST or bakery_of(text).diagnostics else rows


def independent(one: Mistake, other: Mistake, rows: Sequence[str]) -> bool:
    """Whether two mistakes have nothing to do with each other: they change other lines, of other things, and allow nothing that
    the other brings."""
    if one.touches(other) or one.things(rows) & other.things(rows):
        return False
    if {one.title, other.title} in ANOTHER_BREAD:
        return False
    return not any(
        two.title in row for a, two in ((one, other), (other, one)) for change in a.changes for row in change.rows
    )


ANOTHER_BREAD = (
    {"takes-more-than-there-is", "preferment-yeast-against-time"},
    {"fermentation-too-hot", "yeast-against-time"},
    {"dough-temperature-implausible", "mix-warm-for-yeast"},
    {"dough-temperature-implausible", "nothing-raises-it"},
    {"under-oil-too-long", "dried-under-fat"},
    {"same-name-twice", "never-used"},
)
"""Two that together make a bread of which something else is true: more of a stronger poolish, another time at another heat, a hot
dough with nothing alive in it, another stage that is the first of its name."""

WITH_THE_WHOLE = frozenset(name for name, (_, room) in REPORTS.items() if room == "changes/reports")
"""What is said of a swap that is carried out: in a formula that can be put together, like what is said of a dough."""


def excluded(said: Said, of: Heard, others: Sequence[tuple[Mistake, Heard]], trial: Trial, together: Heard) -> str:
    """Why this report is not made beside those mistakes; "" where it should be."""
    if any(said.line in points for one, points in together.points.items() if one.name == said.name):
        return "it is said with another of its name"
    if any(
        change.start <= line < change.end for line in of.points[said] for one, _ in others for change in one.changes
    ):
        return "another mistake spoils a line that it speaks of"
    reports = [report for _, other in others for report in other.reading + other.dough]
    over = set(headings_over(said.line, trial.rows)) | {said.line}
    of_two = (points for _, other in others for one, points in other.points.items() if one.name == "same-name-twice")
    if any(over & points for points in of_two):
        return "its stage is the second of its name, which nobody takes"
    stray = (place(one.line) for one in reports if one.name == "line-outside-block")
    if any(min(map(place, over)) < at <= place(said.line) for at in stray):
        return "a line at the left edge, under which nothing is read, parts it from its formula"
    unread = {one.line for one in reports if REPORTS[one.name][1] == "syntax/reports"}
    nearby = {line for at in unread for line in (at, *headings_over(at, trial.rows)) if line >= 0}
    if (over & nearby or said.line in nearby) and REPORTS[said.name][1] in ("larder/reports", "kitchen/reports"):
        return "a heading in its entry cannot be read"
    unknown = unread | {one.line for one in reports if one.name == "unknown-ingredient"}
    over_unknown = {line for at in unknown for line in headings_over(at, trial.rows)}
    if said.name in ("takes-more-than-there-is", "leftover") and (over & unknown or over_unknown & of.points[said]):
        return "how much there is of it follows from what cannot be read"
    if (
        said.name == "never-used"
        and said.line >= 0
        and any(at >= 0 and is_of(said.line, at, trial.rows) for at in unread)
    ):
        return "how much of it goes in cannot be read"
    if said.name in OF_ITS_DAY and any(one.name in WHICH_DAY for one in reports):
        return "the day of its plan is not known"
    if said.name in ("takes-more-than-there-is", "never-used") and any(is_heading(at, trial.rows) for at in unread):
        return "how much a stage is of all flour cannot be read"
    if unknown and said.name == "stage-of-no-size":
        return "whether it sizes itself follows from its flours, and one of them is not known"
    if said.name == "no-such-piece" and any(trial.rows[at].lstrip().startswith("makes ") for at in unread if at >= 0):
        return "the line that says what is made cannot be read"
    if said.name == "wanted-how-many" and any(one.name == "no-such-bread" for one in reports):
        return "nobody knows the bread, nor how it is counted"
    if reports and said.name in ABOUT_WHAT_IS_NOT_THERE:
        return "what is not there may be the line that cannot be read"
    if any(one.name in CHECKS and said.name in CHECKS[one.name].explains for one in reports):
        return "another report explains it"
    errors = any(REPORTS[one.name][0] == "error" for one in reports)
    if errors and (said in of.dough or said.name in WITH_THE_WHOLE):
        return "it is said of a dough, and another mistake leaves none to speak of"
    return ""


ABOUT_WHAT_IS_NOT_THERE = frozenset({"tin-size-unclear", "breads-too-many", "made-of-itself", "plan-said-twice"})


WHICH_DAY = frozenset({"plan-on-another-day", "plan-no-such-date", "plan-without-a-day"})


def is_of(line: int, other: int, rows: Sequence[str]) -> bool:
    """Whether two lines of the text begin with the same thing."""
    words, others = rows[line].split(), rows[other].split()
    return bool(words and others) and words[0] == others[0]


def place(line: int) -> int:
    """Where a line stands in the text, or before which line it was put in."""
    return line if line >= 0 else put_in_at(line)


def is_heading(line: int, rows: Sequence[str]) -> bool:
    """Whether something stands under a line of the text."""
    return 0 <= line < len(rows) - 1 and line in headings_over(line + 1, rows)


def headings_over(line: int, rows: Sequence[str]) -> Iterator[int]:
    """The lines that a line of the text stands under, or that one put in there does."""
    deep = DEEPEST
    for at in range(line if line >= 0 else put_in_at(line) - 1, -1, -1):
        indent = len(rows[at]) - len(rows[at].lstrip(" "))
        if rows[at] and indent < deep:
            deep = indent
            if at != line:
                yield at


class Finding(NamedTuple):
    trial: Trial
    lost: Counter[Said]
    besides: Counter[Said]

    def __str__(self) -> str:
        put = [
            f"  {one.title}, line {change.start + 1}: {' | '.join(change.rows) or 'left out'}"
            for one in self.trial.mistakes
            for change in one.changes
        ]
        return "\n".join((f"lost {[*self.lost]}, besides {[*self.besides]}", *put))


def findings(seed: int, how_many: int, why: Counter[str]) -> Iterator[Finding]:
    """Where the reports on several mistakes are not those on each; in `why`, how many reports were left out, and for what."""
    for trial in trials(seed, how_many):
        alone = trial.alone
        together = heard(trial.rows, trial.mistakes)
        found = together.reading + together.dough
        wanted: Counter[Said] = Counter()
        for at, (_, of) in enumerate(alone):
            for said, times in (of.reading + of.dough).items():
                others = alone[:at] + alone[at + 1 :]
                reason = "" if found[said] else excluded(said, of, others, trial, together)
                why[reason] += 1
                if not reason:
                    wanted[said] = max(wanted[said], times)
        if found != wanted:
            yield Finding(trial, wanted - found, found - wanted)


def test_no_mistake_hides_another() -> None:
    why: Counter[str] = Counter()
    found = [str(one) for one in findings(SEED, HOW_MANY, why)]
    assert not found, f"{len(found)} of {HOW_MANY}:\n" + "\n".join(found)
    assert why[""] > why.total() * 0.8, why

"""The timing card of one formula: from clock times and minutes to text, line by line."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.fermentation.yeast_grid import hours_to_say, yeast_grids
from manchet.formula.model import Range, Who
from manchet.quantities.printing import round_to
from manchet.sheets.forms.timing_card.day_picture import day_pictures
from manchet.sheets.forms.timing_card.view import BulkTime, JobLine, TimingCard
from manchet.sheets.forms.timing_card.yeast_table import STEP, yeast_table
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts import wording
from manchet.sheets.parts.far_from_written import far_line
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import Fact
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import DONE_BY_LOOK
from manchet.timing.card.card import card_of
from manchet.timing.card.values import BeforeYouGo, Card, CardRow, Change, Clash, Gives, Late
from manchet.timing.jobs.loads import RECOVER
from manchet.timing.when import When


def timing_card(work: Work, when: When, issue: Issue, house: House) -> TimingCard:
    """The view of the timing card. Pure: the day, the version and the house's habits all come in."""
    words = words_of(house.words)
    m = Measures(house, words)
    card = card_of(work, when, m.system)
    mix = words.say("head.mixes_short", str(card.mixes)) if card.mixes > 1 else ""
    date = issue.date or m.day(card.ready)
    head = [Fact(words["card.starts"], _moment(card.start, m))]
    if card.out_of_oven is not None:
        head.append(Fact(words["card.out_at"], _moment(card.out_of_oven, m)))
    head.append(Fact(words["card.ready"], _moment(card.ready, m)))
    return TimingCard(
        title=card.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(card.name, mix, issue._replace(date=date)),
        head=tuple(head),
        jobs=tuple(_jobs(card, m)),
        warmths=tuple(
            BulkTime(
                m.degrees(single(x.celsius)),
                words.say("card.about", m.time(Range(_fives(x.low), None if x.high is None else _fives(x.high)))),
            )
            for x in card.came_out_at
        ),
        before=tuple(_before(item, m) for item in card.before_you_go),
        pictures=day_pictures(card, m),
        notes=(*_loads_apart(card, m), *(_clash(clash, m) for clash in card.clashes)),
        untimed=_untimed_line(card, m),
        swapped=(*swap_lines(card.swapped, m), *wait_lines(card.moved, m)),
        yeasts=tuple(yeast_table(grid, work.kitchen, m) for grid in yeast_grids(work, STEP[house.degrees])),
    )  # fmt: skip


def _moment(at: datetime, m: Measures) -> str:
    return m.words.say("card.moment", m.day(at), m.clock(at))


def _minutes(seconds: Fraction) -> Fraction:
    """On a card nothing is more exact than a minute."""
    return round_to(seconds / 60, 0) * 60


def _fives(seconds: Fraction) -> Fraction:
    """An estimate is no more exact than five minutes."""
    return round_to(seconds / 300, 0) * 300


# ---- its lines ------------------------------------------------------------------------------------


def _jobs(card: Card, m: Measures) -> Iterable[JobLine]:
    day = None
    for row in card.rows:
        new = row.start.date() != day
        day = row.start.date()
        yield _job(row, m)._replace(day=m.day(row.start) if new else "")


def _job(row: CardRow, m: Measures) -> JobLine:
    words = m.words
    latest, moves = _latest(row, m)
    return JobLine(
        clock=m.clock(row.start),
        elapsed=f"+{row.elapsed // 60}:{row.elapsed % 60:02}",
        job=job_text(row, m),
        where=row.place,
        who=words["card." + row.who.value] if row.job == "step" else "",
        look=_look(row, m),
        latest=latest,
        moves=moves,
        late=tuple(_lates(row, m)),
        gives=_gives(row, m),
        critical=row.critical,
        tight=row.latest is not None and row.slack <= 0,
    )


def job_text(row: CardRow, m: Measures) -> str:
    """What is done, for which stage, sort and mix."""
    words = m.words
    if row.job == "step" and row.step is not None:
        said = wording.sentence(row.step._replace(where=None) if row.place else row.step, m, names=True)
        if row.pieces and row.who is Who.HANDS:
            one = row.pieces == 1
            said = words.say("card.one_piece" if one else "card.pieces", said, m.plain(single(row.pieces), 0))
        if row.of > 1:
            said = words.say("card.load", said, str(row.number), str(row.of))
    elif row.job == "preheat":
        said = words["card.preheat"] if row.celsius is None else words.say("card.preheat_to", m.oven(row.celsius))
        if row.seconds.low:
            said = words.say("card.preheat_takes", said, m.time(row.seconds))
    elif row.job == "fire out" and row.celsius is not None:
        said = words.say("card.fire_out", _about(row.celsius.likely, m))
        if row.falls_to is not None and row.end > row.start:
            said = words.say("card.fire_out_falls", said, _about(row.falls_to, m), m.clock(row.end))
    else:
        said = words["card." + row.job]
        if row.of > 1:
            said = words.say("card.counted", said, str(row.number), str(row.of))
    whose = row.stage or row.branch
    if row.mix:
        whose = words.say("card.in_mix", whose or words["card.dough"], str(row.mix))
    return words.say("card.in_stage", whose, said) if whose else said


def _look(row: CardRow, m: Measures) -> str:
    until = row.step.until if row.step is not None and row.job == "step" else ""
    return "; ".join(filter(None, (until, _floor(row, m), _cold(row, m), _in_room(row, m), _far(row, m))))


def _in_room(row: CardRow, m: Measures) -> str:
    """About how long a wait takes in the room as it is, in hours that a baker plans by."""
    if row.in_room is None:
        return ""
    room, there = m.degrees(single(row.in_room.celsius)), row.in_room.seconds
    if there is None:
        return m.words.say("card.in_room_silent", room, m.degrees(single(row.in_room.written)))
    low, high = (None if end is None else hours_to_say(end) for end in there)
    if low is None or high is None:
        open_end = "card.in_room_up_to" if low is None else "card.in_room_down_to"
        return m.words.say(open_end, room, m.time(single(low or high or Fraction(0))))
    return m.words.say("card.in_room", room, m.time(Range(low, high)))


def _far(row: CardRow, m: Measures) -> str:
    return "" if row.far is None else far_line(row.far, m)


def _cold(row: CardRow, m: Measures) -> str:
    """From when to when the middle of what is put into the fridge is cold."""
    return "" if row.cold_after is None else m.words.say("card.cold", m.time(row.cold_after))


def _floor(row: CardRow, m: Measures) -> str:
    """What the floor of a falling oven should show when the load goes in, and what to do if it does not."""
    if row.floor is None:
        return ""
    under = m.words.say("card.floor_under", m.oven(single(row.floor.least)))
    if not row.floor.fallen:
        return under
    return m.words.say("card.floor_now", _about(row.floor.heat, m), m.oven(row.floor.written), under)


def _about(celsius: Fraction, m: Measures) -> str:
    """A floor's heat, to what its thermometer tells apart."""
    return m.oven(single(round_to(celsius / 5, 0) * 5))


def _latest(row: CardRow, m: Measures) -> tuple[str, str]:
    """Until when it may begin; how long that is from its time, and what moves then."""
    words = m.words
    if row.latest is None:
        return "", ""
    slack = m.duration(Fraction(row.slack * 60))
    said = [words.say("card.slack", slack) if row.slack > 0 else words["card.no_slack"]]
    if row.moves in ("oven", "ready", "mixer"):
        said.append(words["card.moves_" + row.moves])
    elif row.moves:
        said.append(words.say("card.moves_stage", row.moves))
    return m.clock(row.latest), ", ".join(said)


def _gives(row: CardRow, m: Measures) -> str:
    """For a wait: whether it stretches, shortens, or what it made may stand; for what may not, that too."""
    words, gives = m.words, row.gives
    if row.job != "step" or row.step is None or row.who is not Who.WAITING:
        return ""
    if row.step.verb == RECOVER:
        return ""
    if row.step.verb == "cool" and not row.step.reaches and gives.must_not_wait:
        return ""  # bread that has cooled is in nobody's way
    if gives.must_not_wait and not gives.shortens:
        return words["card.must_not_wait"]
    return ", ".join(_yields(gives, m))


def _yields(gives: Gives, m: Measures) -> Iterable[str]:
    words = m.words
    both = bool(gives.shortens) and gives.shortens == gives.stretches
    if both:
        yield words.say("card.either_way", m.duration(_minutes(gives.shortens)))
    elif gives.stretches is None:
        yield words["card.stretches_open"]
    elif gives.stretches:
        yield words.say("card.stretches", m.duration(_minutes(gives.stretches)))
    if gives.shortens and not both:
        yield words.say("card.shortens", m.duration(_minutes(gives.shortens)))
    if gives.waits and gives.waits_at is not None:
        yield words.say("card.may_wait_at", m.duration(gives.waits), m.degrees(gives.waits_at))
    elif gives.waits:
        yield words.say("card.may_wait", m.duration(gives.waits))
    if gives.must_not_wait:
        yield words["card.must_not_wait"]


# ---- lateness -------------------------------------------------------------------------------------


def _lates(row: CardRow, m: Measures) -> Iterable[str]:
    """What the file says to do, then 15, 30 and 45 minutes; equal answers share a line."""
    if row.step is not None and row.job == "step" and row.step.if_late:
        yield row.step.if_late
    answers: dict[tuple[str, bool], list[Late]] = {}
    for late in row.late:
        answers.setdefault((_answer(late, row, m), late.ready > 0), []).append(late)
    first = min((late.minutes for late in row.late), default=0)
    for (answer, later), lates in answers.items():
        most = max(late.minutes for late in lates)
        from_the_first = len(lates) > 1 and lates[0].minutes == first
        said = [answer] if answer else []
        if later and answer.endswith(m.words["card.must_not_wait"]):
            said = [answer.removesuffix(m.words["card.must_not_wait"]) + m.words["card.or_all_is_later"]]
            if len(answers) == 1:
                yield said[0]
                continue
        elif later:
            said.append(_later(lates, m))
        minutes = "/".join(str(late.minutes) for late in lates)
        told = "; ".join(said) or m.words["card.nothing"]
        yield (
            m.words.say("card.late_upto", str(most), told)
            if from_the_first
            else m.words.say("card.late", minutes, told)
        )


def _later(lates: list[Late], m: Measures) -> str:
    """By how much. A bake that nobody should cut short is not taken to catch anything up."""
    late = lates[-1]
    minutes = late.minutes if any(change.step.verb in DONE_BY_LOOK for change in late.shorter) else late.ready
    return m.words.say("card.later" if len(lates) == 1 else "card.later_upto", str(minutes))


def _answer(late: Late, row: CardRow, m: Measures) -> str:
    """Which waits are shortened, and what has then stood longer than its range. By how much, the cue says."""
    words, said = m.words, []
    shorter = [_wait(change, row, m) for change in late.shorter if change.step.verb not in DONE_BY_LOOK]
    if shorter:
        said.append(words.say("card.cut", _list(shorter)))
    if any(change.step.verb in DONE_BY_LOOK for change in late.over):
        said.append(words["card.must_not_wait"])
    elif late.over:
        over = (words.say("card.the_thing", change.stage or words["card.dough"]) for change in late.over)
        said.append(words.say("card.over", _list(over)))
    return "; ".join(said)


def _list(names: Iterable[str]) -> str:
    """Each once, however many bowls go through it."""
    return ", ".join(dict.fromkeys(names))


def _wait(change: Change, row: CardRow, m: Measures) -> str:
    """`the retard`, `the ripening of the poolish`; in a line of the poolish itself `the ripening`."""
    wait = m.words.known("waits", change.step.verb) or wording.verb_alone(change.step.verb, m)
    if change.stage and change.stage != row.stage:
        return m.words.say("card.the_wait_of", wait, change.stage)
    return m.words.say("card.the_wait", wait)


# ---- remarks --------------------------------------------------------------------------------------


def _untimed_line(card: Card, m: Measures) -> str:
    if not card.untimed:
        return ""
    return m.words["card.untimed_one"] if card.untimed == 1 else m.words.say("card.untimed", str(card.untimed))


def _loads_apart(card: Card, m: Measures) -> Iterable[str]:
    """How much longer the pieces of a later load stand, where the oven does not take all at once."""
    first: dict[tuple[str, int], CardRow] = {}
    said: set[tuple[str, int, int]] = set()
    for row in card.rows:
        whose = row.branch, row.mix
        if row.job != "step" or row.step is None or row.step.verb not in DONE_BY_LOOK or row.of < 2:
            continue
        if (*whose, row.number) in said:
            continue
        said.add((*whose, row.number))
        if row.number == 1:
            first[whose] = row
        elif whose in first:
            longer = m.duration(Fraction(int((row.start - first[whose].start).total_seconds())))
            name = row.branch or card.name
            if row.mix:
                name = m.words.say("card.in_mix", name, str(row.mix))
            yield m.words.say("card.loads_apart", name, str(row.number), longer)


def _clash(clash: Clash, m: Measures) -> str:
    who = ", ".join(clash.who)
    start, end = m.clock(clash.start), m.clock(clash.end)
    if clash.what == "hands":
        return m.words.say("card.clash_hands", start, end, who)
    return m.words.say("card.clash_" + clash.what, start, end, clash.name, who)


def _before(item: BeforeYouGo, m: Measures) -> str:
    words = m.words
    warm = None if item.celsius is None else m.degrees(single(item.celsius))
    at = "" if item.at is None else _moment(item.at, m)
    match item.what:
        case "feed":
            return words.say("card.feed", item.name, m.mass(item.grams))
        case "put away" if warm is not None:
            return words.say("card.put_away_at", m.mass(item.grams), item.name, warm)
        case "put away":
            return words.say("card.put away", m.mass(item.grams), item.name)
        case "soak":
            return words.say("card.soak", item.name, at)
        case "take out":
            if warm is None:
                return words.say("card.take out", item.name)
            return words.say("card.take_out_to", item.name, warm)
        case _:
            name = item.name or words["oven"]
            if item.celsius is None:
                return words.say("card.set oven", name, at)
            return words.say("card.set_oven_to", name, at, m.oven(single(item.celsius)))

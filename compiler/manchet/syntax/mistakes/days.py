"""Why a line of a plan or an order could not be read: the first reason that fits."""

from __future__ import annotations

import re
from collections.abc import Callable

from manchet.diagnostics.suggest import nearest
from manchet.syntax.loose.normal import LONGEST, normal_form
from manchet.syntax.loose.rules import any_of
from manchet.syntax.mistakes.faults import Fault, LineTrouble, choices, in_place
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.plan_tokens import WEEKDAYS, time_kind
from manchet.syntax.things import THING

DAYS = tuple(word.capitalize() for word in WEEKDAYS)
IN_FULL = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


def _no_weekday(t: LineTrouble) -> Fault | None:
    """A word before a time, or in a list of days, that is nearly one of the seven."""
    for at, raw in enumerate(t.raws):
        before_a_time = at + 1 < len(t.raws) and time_kind(list(t.raws), at + 1) == "CLOCK"
        listed = t.rule == "every_day" and at > 0
        if raw.kind == "WORD" and raw.text not in WEEKDAYS and (before_a_time or listed) and len(raw.text) < 11:
            near = nearest(raw.text, IN_FULL) if len(raw.text) > 4 else nearest(raw.text, DAYS)
            if near is not None:
                near = near[:3].capitalize()
                words = {"text": short(t.body[raw.start : raw.end]), "form": f"did you mean `{near}`?"}
                return Fault("unreadable-line", raw.start, raw.end, words, choices(raw.start, raw.end, near))
    return None


_FOR_ONE = re.compile(
    r"(?P<name>[^\W\d_][^,\d]*?) (?P<count>[0-9]+),? for (?P<customer>[^\W\d_][^,\d]*)", re.IGNORECASE
)


def _no_noun(t: LineTrouble) -> Fault | None:
    """`Ebb rye 14`, `Ebb rye 14 for Quay cafe`: of what?"""
    last = t.raws[-1]
    meant = _FOR_ONE.fullmatch(t.body) if t.rule == "want" and len(t.body) < LONGEST else None
    if meant is not None:
        day = meant["customer"].lower() in (*WEEKDAYS, *IN_FULL)
        end = f"ready {meant['customer'][:3].capitalize()} 06:00" if day else f"for {meant['customer']}"
        typed = f"{meant['name']} {meant['count']} loaves, {end}"
        words = {"text": short(t.body), "form": f"write how many of what, as in `{typed}`"}
        return Fault("unreadable-line", meant.start("count"), len(t.body), words, choices(0, len(t.body), typed))
    if t.rule in ("want", "want_line") and last.kind == "NUMBER" and last.text.isdigit() and t.at >= len(t.spans):
        form = f"write of what, as in `{short(t.body)} loaves`"
        fix = in_place(len(t.body), len(t.body), " loaves", title=f"write `{last.text} loaves`")
        return Fault("line-unfinished", 0, len(t.body), {"text": short(t.body), "form": form}, (fix,))
    return None


def _name_with_a_figure(t: LineTrouble) -> Fault | None:
    """`Rye 80% 12 loaves`: a figure that belongs to the name wants quotes."""
    counts = list(re.finditer(r"(?<=\s)[0-9]+ [^\W\d_]", t.body))
    odd = next((raw for raw in t.raws[1:] if raw.kind in ("PERCENT", "TEMPERATURE", "LENGTH", "VOLUME")), None)
    if t.rule != "want" or odd is None or not counts or counts[-1].start() <= odd.end:
        return None
    name = t.body[: counts[-1].start()].strip(" ,")
    instead = f'"{name}" {t.body[counts[-1].start() :]}'
    words = {"what": "a figure", "instead": short(instead)}
    return Fault("name-needs-quotes", odd.start, odd.end, words, (in_place(0, len(t.body), instead),))


_COUNT_FIRST = re.compile(
    rf"(?P<count>[0-9]+)(?: ?[x×])? (?P<name>[^\W\d_][^,\d]*?)(?:,? (?:for |on )?(?P<day>{any_of((*WEEKDAYS, *IN_FULL))}))?",
    re.IGNORECASE,
)


def _count_first(t: LineTrouble) -> Fault | None:
    """`14 Ebb rye for Saturday`: the bread, then how many and of what."""
    found = _COUNT_FIRST.fullmatch(t.body) if t.rule == "want" and len(t.body) < LONGEST else None
    if found is None:
        return None
    day = f", ready {found['day'][:3].capitalize()} 06:00" if found["day"] else ""
    typed = f"{found['name']} {found['count']} loaves{day}"
    form = f"first the bread, then how many of what: `{typed}`{', with your own hour' if day else ''}"
    words = {"text": short(t.body), "form": form}
    return Fault("unreadable-line", 0, len(t.body), words, choices(0, len(t.body), typed))


def _with_whom(t: LineTrouble) -> Fault | None:
    """`van leaves 06:00`: whose bread is on it?"""
    if t.rule != "departs" or t.at < len(t.spans) or t.raws[-1].text == "with":
        return None
    form = f"write whose bread it takes, as in `{short(t.body)} with Quay cafe`"
    return Fault("line-unfinished", 0, len(t.body), {"text": short(t.body), "form": form})


_TIME = rf"(?:(?:{any_of(WEEKDAYS)}) )?[0-9]{{1,2}}:[0-9]{{2}}"
_SHIFT = re.compile(
    rf"(?P<name>(?!(?:{any_of((*THING, 'van', 'hands'))})\b)[^\W\d_][^,\d:]*?) (?P<from>{_TIME})(?: to |-)(?P<to>{_TIME})(?P<rest>, break .*)?",
    re.IGNORECASE,
)


def as_a_shift(body: str) -> str | None:
    """`Tom 4pm to 2am` as the shift that it may be, `hands Tom 16:00 to 02:00`; else None."""
    joined = re.sub(r" ?[-–] ?(?=[0-9])| from(?= )", lambda m: "" if m[0] == " from" else "-", body)
    found = _SHIFT.fullmatch(normal_form(joined, "plan") or joined) if len(body) < LONGEST else None
    if found is None or found["name"].rpartition(" ")[2].lower() in ("ready", "packed", "served"):
        return None
    return f"hands {found['name']} {found['from']} to {found['to']}{found['rest'] or ''}"


def _shift(t: LineTrouble) -> Fault | None:
    """`Tom 16:00 to 02:00`: when somebody works."""
    typed = as_a_shift(t.body) if t.rule == "want" else None
    if typed is None:
        return None
    words = {"text": short(t.body), "form": f"a shift is written `{typed}`"}
    return Fault("unreadable-line", 0, len(t.body), words, choices(0, len(t.body), typed))


DAY_REASONS: tuple[Callable[[LineTrouble], Fault | None], ...] = (
    _shift, _no_weekday, _no_noun, _name_with_a_figure, _count_first, _with_whom,
)  # fmt: skip

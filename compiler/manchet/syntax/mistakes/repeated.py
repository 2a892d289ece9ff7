"""What is done several times: folds on a line of their own, folds without a count, steam once more without a time."""

from __future__ import annotations

import re
from fractions import Fraction
from math import ceil

from manchet.quantities.units import UNITS
from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.loose.rules import any_of
from manchet.syntax.loose.words import NUMBERS
from manchet.syntax.mistakes.faults import Fault, LineTrouble, choices, in_place
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.tokens import pieces

_TIMES = NUMBERS | {"once": "1", "twice": "2", "thrice": "3", "a couple of": "2"}
_N = rf"(?:[0-9]+|{any_of(_TIMES)})"
_SORT = r"(?:(?:stretch(?:es)?(?: and |-and-| ?& ?)|s&|coil |gentle |light )*)"
_WORK = r"(?P<{}>folds?|turns?|stirs?)"
_COUNT = rf"(?P<{{}}>{_N}) ?(?:x|×|times)?(?: (?:more )?(?:sets?|rounds?) of)?"

_FOLDS_ALONE = re.compile(
    r"(?:then |now |next,? )?(?:(?:give|do|perform|make|apply)\b ?)?(?:(?:it|the dough) )?"
    rf"(?:{_COUNT.format('before')} {_SORT}{_WORK.format('one')}|{_SORT}{_WORK.format('other')}"
    rf"(?: ?(?:x|×) ?(?P<cross>[0-9]+)| (?P<after>{_N})(?: ?(?:x|×|times))?)?)"
    r"(?P<apart>,? (?:every |at |with |in |over |during |for |, )*(?:(?:[0-9]+(?:-[0-9]+)? ?(?:min|h)\w*|half (?:an )?hour|hour)"
    r"(?: ?(?:apart|intervals?|between|rests?|each))*[ ,.]*)*)?",
    re.IGNORECASE,
)
_APART = re.compile(
    r"(?P<number>[0-9]+)(?:-[0-9]+)? ?(?P<unit>min|h)|(?P<half>half (?:an )?hour)|\bhour", re.IGNORECASE
)


def folds_alone(t: LineTrouble) -> Fault | None:
    """`fold 3 times every 30 min`, `stretch and fold x4`, `do 4 sets of folds`: folds interrupt a wait, and are said with it."""
    found = _FOLDS_ALONE.fullmatch(t.body.strip(" .")) if len(t.body) < LONGEST else None
    if found is None:
        return None
    count = found["before"] or found["cross"] or found["after"]
    apart = _APART.search(found["apart"] or "")
    if count is None and apart is None:
        return None
    number = int(_TIMES.get((count or "3").lower(), count or "3"))
    every = _every(apart)
    work = (found["one"] or found["other"]).lower().rstrip("s")
    wait = _long((number + 1) * _minutes(every))
    lacks = " and ".join(
        (*(() if count else ("how many",)), *(() if apart else ("how far apart",))),
    )
    why = f"say {lacks + ' ' if lacks else 'it '}at the end of the wait above"
    words = {
        "text": short(t.body),
        "form": f"{why}, as in `ferment {wait} with {number} {work}{'' if number == 1 else 's'} every {every}`",
    }
    return Fault("unreadable-line", 0, len(t.body), words)


_TURNS = re.compile(
    rf"(?:then |give |do |make )?(?:it |the dough )?(?:(?P<before>{_N}) (?P<sort>single|letter|simple|double|book|half) (?:folds?|turns?)"
    rf"|(?P<verb>fold in (?:three|four)|single fold|letter fold|simple fold|double fold|book fold) ?(?:x|×)? ?(?P<after>{_N})(?: ?(?:x|×|times))?)",
    re.IGNORECASE,
)


def turns_alone(t: LineTrouble) -> Fault | None:
    """`3 single folds`, `fold in three twice`: each turn is a line, with its rest under it."""
    found = _TURNS.fullmatch(t.body.strip(" .")) if len(t.body) < LONGEST else None
    if found is None:
        return None
    sort = (found["sort"] or found["verb"]).lower()
    fold = "fold in four" if re.search("double|book|four", sort) else "fold in three"
    count = (found["before"] or found["after"]).lower()
    number = int(_TIMES.get(count, count))
    if number < 2:
        fixes = choices(0, len(t.body), fold)
        return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": f"write `{fold}`"}, fixes)
    words = {
        "text": short(t.body),
        "form": f"write `{fold}` {number} times, each on a line of its own, with the rest between them",
    }
    return Fault("unreadable-line", 0, len(t.body), words)


_ONCE = re.compile(
    r"(?:then |give |do )?(?:it |the dough )?(?:an? |one |1 )?(?:stretch (?:and|&) |coil )?fold(?:s|ed)?(?: once)? (?:after|at) "
    r"(?P<when>[0-9]+(?:(?:,| and|,? then) [0-9]+)*) ?(?P<unit>min|h)\w*\.?",
    re.IGNORECASE,
)


def fold_after(t: LineTrouble) -> Fault | None:
    """`fold after 45 min` on a line of its own."""
    found = _ONCE.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    unit = found["unit"].lower()
    when = [int(each) for each in re.findall("[0-9]+", found["when"])]
    wait = _long(_minutes(f"{when[-1]} {unit}") + _minutes(f"{when[0]} {unit}"))
    folds = " ".join(f"with a fold after {each} {unit}" for each in when)
    words = {"text": short(t.body), "form": f"say it at the end of the wait above, as in `ferment {wait} {folds}`"}
    return Fault("unreadable-line", 0, len(t.body), words)


def _every(apart: re.Match[str] | None) -> str:
    if apart is None or apart["half"]:
        return "30 min"
    return f"{apart['number'] or 1} {(apart['unit'] or 'h').lower()}"


def _minutes(time: str) -> int:
    number, unit = time.split()
    return int(number) * (60 if unit == "h" else 1)


def _long(minutes: int) -> str:
    hours, rest = divmod(minutes, 60)
    return " ".join((*((f"{hours} h",) if hours else ()), *((f"{rest} min",) if rest or not hours else ())))


_FOLDS = re.compile(r",? ?(?:with )?(?:some )?fold(?:s|ing|ed)? every ([0-9]+) ?(min|h)\w*", re.IGNORECASE)


def folds_without_a_count(t: LineTrouble) -> Fault | None:
    return folds_every(t.body)


def folds_every(body: str) -> Fault | None:
    """`folding every 30 min`: how often follows from the wait, the last one before its end."""
    found = _FOLDS.search(body) if len(body) < LONGEST else None
    if found is None or re.search(r"[0-9]\S* folds? every", body):
        return None
    every = f"every {found[1]} {found[2].lower()}"
    wait = _first_time(body[: found.start()])
    number = 3
    if wait is not None:
        apart = Fraction(found[1]) * UNITS[found[2].lower()].factor
        number = max(1, ceil(wait / apart) - 1) if apart else 1
    instead = f" with {number} folds {every}"
    fix = in_place(*found.span(), instead, title=f"write `{instead.strip()}`")
    return Fault("how-many-folds", *found.span(), {"written": found[0].strip(" ,"), "instead": instead.strip()}, (fix,))


def _first_time(body: str) -> Fraction | None:
    """The time that is written first, by its shorter end, in the unit that all times are reckoned in."""
    return next(
        (raw.low * UNITS[raw.unit].factor for raw in pieces(body) if raw.kind == "TIME" and raw.low is not None), None
    )


_FOLDED = re.compile(
    rf",? ?(?:with |and |avec )?(?:{_COUNT.format('before')} {_SORT}(?P<one>folds?|turns?|rabats?)|{_SORT}(?P<other>fold|turn|rabat)(?:s|ed|ing)? "
    rf"(?P<after>{_N})(?: ?(?:x|×|times))?)(?: after| in between| during)?$",
    re.IGNORECASE,
)
_MOST_FOLDS = 12


def folds_without_a_time(t: LineTrouble) -> Fault | None:
    return folds_counted(t.body) if t.rule in ("step", "clause_line") else None


def folds_counted(body: str) -> Fault | None:
    """`ferment 2 h at 25 C, 2 folds`: how far apart is not said; evenly, to five minutes, is what is offered."""
    found = _FOLDED.search(body.rstrip(" .")) if len(body) < LONGEST else None
    if found is None or not found.start():
        return None
    count = (found["before"] or found["after"]).lower()
    number = int(_TIMES.get(count, count))
    wait = _first_time(body[: found.start()])
    if wait is None or not 1 <= number <= _MOST_FOLDS:
        return None
    work = (found["one"] or found["other"]).lower().rstrip("s").replace("rabat", "fold")
    minutes = int(wait / UNITS["min"].factor) // (number + 1)
    apart = _long(max(1, minutes if minutes < 10 else minutes - minutes % 5))
    instead = f" with a {work} after {apart}" if number == 1 else f" with {number} {work}s every {apart}"
    words = {"text": found[0].strip(" ,"), "form": f"say when: `{instead.strip()}`, with your own minutes"}
    return Fault(
        "unreadable-line", *found.span(), words, (in_place(*found.span(), instead, title=f"write `{instead.strip()}`"),)
    )


_STEAM_AGAIN = re.compile(
    rf"\b(?:(?P<before>{_N}|double) ?(?:x |× ?|times |lots of |bursts of |shots of )?steam\b|"
    rf"steam(?P<much> [0-9]+ ?(?:s|ml))?,? ?(?:(?P<after>{_N}|double)(?: ?(?:x|×|times))?|(?:x|×) ?(?P<cross>[0-9]+)))"
    r"(?![\w:]| ?(?:min|s|ml|h|g|l)\b)",
    re.IGNORECASE,
)
_MOST_STEAM = 6
LATER = 5
"""Minutes between one steam and the next in what is offered: no more than an example."""


def steam_again(t: LineTrouble) -> Fault | None:
    """`steam twice`: when the second comes is not said."""
    found = _STEAM_AGAIN.search(t.body) if len(t.body) < LONGEST and t.rule in ("step", "clause_line") else None
    if found is None:
        return None
    count = (found["before"] or found["after"] or found["cross"]).lower()
    number = int(_TIMES.get(count, "2" if count == "double" else count))
    if not 1 < number <= _MOST_STEAM:
        return None
    steam = f"steam{found['much'] or ''}"
    each = ", ".join((steam, *(f"{steam} after {LATER * at} min" for at in range(1, number))))
    written = found[0].strip()
    if found.start() == 0 and t.rule == "step":
        words = {"text": written, "form": f"say it in the bake, with the minutes: `bake 30 min at 230 C, {each}`"}
        return Fault("unreadable-line", *found.span(), words)
    words = {"text": written, "form": f"say when each comes: `{each}`, with your own minutes"}
    return Fault("unreadable-line", *found.span(), words, (in_place(*found.span(), each),))

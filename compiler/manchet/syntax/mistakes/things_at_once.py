"""A thing of a kitchen told in one line, with what it does or how many there are: `fridge 3 C`, `10 tins 1900 ml`."""

from __future__ import annotations

import re
from collections.abc import Callable

from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.loose.rules import any_of
from manchet.syntax.loose.words import NUMBERS
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place, two_lines, with_under
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.odd_lines import LINES_WITH_FIGURES, YES_OR_NO
from manchet.syntax.things import HEATS, THING, THINGS


def _fault(t: LineTrouble, form: str, *fixes: LineFix, start: int = 0) -> Fault:
    return Fault("unreadable-line", start, len(t.body), {"text": short(t.body[start:].strip()), "form": form}, fixes)


def _kept_at(t: LineTrouble) -> Fault | None:
    """`fridge 3 C` in a kitchen: how cold it is stands under it, or the fridge is called `3 C`."""
    found = _OF_A_THING.fullmatch(t.body) if t.context == "kitchen" else None
    if found is None or found["thing"].lower() not in THING:
        return None
    thing = found["thing"].lower()
    head = f"{found['thing']}{found['name'] or ''}"
    start = len(head) + 1
    if found["degrees"]:
        damp = f", {found['damp']}% humidity" if found["damp"] and thing == "prover" else ""
        line = f"{'hottest' if thing == 'oven' else 'keeps'} {found['degrees']} {found['scale'].upper()}{damp}"
    elif found["reads"]:
        line = f"reads {found['reads']} g"
    elif thing == "mixer":
        form = f"write `{head}`, and under it how much dough it mixes, as in `takes 6-45 kg dough`"
        return _fault(t, form, start=start)
    else:
        line = f"volume {found['volume']} {found['unit'].lower()}"
    fix = with_under(t.body, head, line)
    return _fault(t, fix.title, fix, start=start)


_OF_A_THING = re.compile(
    r"(?P<thing>[a-z]+):?(?:(?: (?:at |@ ?)?(?P<degrees>-?[0-9]+) ?°?(?P<scale>[CF])(?:,? (?P<damp>[0-9]+) ?%)?)"
    r"|(?: (?:reads (?:to )?)?(?P<reads>[0-9.]+) ?g)|(?P<name>(?: [^\W\d_]+)*) (?P<volume>[0-9.]+) ?(?P<unit>ml|l|qt))",
    re.IGNORECASE,
)


def _several(t: LineTrouble) -> Fault | None:
    """`8 trays`, `10 tins 1900 ml`, `6 black trays`, `tins: 12 x 900 g`: the thing, and under it how many there are."""
    if t.context != "kitchen":
        return None
    found = _SEVERAL.fullmatch(t.body)
    if found is not None:
        word, name = found["thing"].lower(), found["name"].lower()
        head = f"{word} {name}{word}" if name else word
        volume = (f"volume {found['volume']} {found['unit'].lower()}",) if found["volume"] else ()
        fix = with_under(t.body, head, f"count {found['number']}", *volume)
        return _fault(t, fix.title, fix)
    many = _MANY.fullmatch(t.body)
    if many is None:
        return None
    word = many[1].lower()
    form = f"write `{word}` and its name, and under it `count {many[2]}` and what it holds to the rim, as in `volume 1900 ml`"
    return _fault(t, form)


_COUNTED = any_of(word for thing in THINGS if "count" in thing.lines for word in (thing.word, *thing.also))
_SEVERAL = re.compile(
    rf"(?P<number>[0-9]+)(?: ?[x×])? (?P<name>(?:[^\W\d_]+ ){{0,2}}?)(?P<thing>{_COUNTED})s?"
    rf"(?:(?<=tins|pans|pots),? (?:of |à |@ ?)?(?P<volume>[0-9.]+) ?(?P<unit>ml|l|qt)(?: each)?)?",
    re.IGNORECASE,
)
_MANY = re.compile(r"(tin|pan|basket|pot)s?[:=]? ([0-9]+)(?: ?[x×] ?.*| of .*)?", re.IGNORECASE)


def _decks(t: LineTrouble) -> Fault | None:
    """`oven deck 3 decks`, `3 decks, 8 loaves each`: the oven, and under it how many decks it has and what each holds."""
    found = _OF_DECKS.fullmatch(t.body) if t.context in ("kitchen", "thing") else None
    if found is None:
        return None
    decks = f"decks {NUMBERS.get(found['decks'].lower(), found['decks'])}"
    holds = (f"holds {found['number']} {found['noun'].lower()}",) if found["noun"] else ()
    if t.context == "thing":
        lines = two_lines(t.body, decks, *holds) if holds else in_place(0, len(t.body), decks)
        return _fault(t, lines.title, lines)
    name = (found["name"] or "").strip(" ,:").lower()
    heat = (f"heat {name}",) if name in HEATS else ()
    head = "oven" if heat or (found["oven"] and not name) else f"oven {name or 'deck'}"
    fix = with_under(t.body, head, *heat, decks, *holds)
    return _fault(t, fix.title, fix)


_N = f"[0-9]+|{any_of(NUMBERS)}"
_OF_DECKS = re.compile(
    rf"(?:(?:deck oven|(?P<oven>oven)(?P<name>:?(?: [^\W\d_]+)*?))[:,]? (?:with )?)?(?P<decks>{_N}) decks?"
    r"(?:,? (?:(?:of|with|each|each holds) )?(?P<number>[0-9]+) (?P<noun>[^\W\d_]+)(?: (?:each|a deck|per deck|on each))?)?",
    re.IGNORECASE,
)


def _heated(t: LineTrouble) -> Fault | None:
    """`gas oven`, and `gas` or `wood fired` under an oven: what heats it is a line under it."""
    found = _OF_A_HEAT.fullmatch(t.body)
    if found is None or (t.context == "thing") is bool(found["oven"]) or t.context not in ("kitchen", "thing"):
        return None
    line = f"heat {found['heat'].lower()}"
    fix = with_under(t.body, "oven", line) if found["oven"] else in_place(0, len(t.body), line)
    return _fault(t, fix.title, fix)


_OF_A_HEAT = re.compile(rf"(?P<heat>{any_of(HEATS)})(?:[- ](?:fired|heated))?(?P<oven> oven)?", re.IGNORECASE)


def _named_by_a_line(t: LineTrouble) -> Fault | None:
    """`fridge holds 6 trays`, `mixer spiral takes 20 kg dough`, `mixer spiral 20 kg`: what stands under the thing."""
    found = _LINE_BEHIND.fullmatch(t.body) if t.context == "kitchen" else None
    if found is None:
        return None
    head = found["head"] or found["mixer"]
    line = f"{found['key'].lower()} {found['rest']}" if found["key"] else f"takes {found['dough']} dough"
    fix = with_under(t.body, head.replace(":", ""), line)
    return _fault(t, fix.title, fix, start=len(head) + 1)


_LINE_BEHIND = re.compile(
    rf"(?:(?P<head>(?:{any_of(THING)}):?(?: [^\W\d_]+)*?),? (?P<key>{LINES_WITH_FIGURES}) "
    r"(?P<rest>-?[0-9].*)|(?P<mixer>mixer:?(?: [^\W\d_]+)*?),? (?P<dough>[0-9.-]+ ?(?:kg|lb))(?: (?:of )?dough)?)",
    re.IGNORECASE,
)


def _held(t: LineTrouble) -> Fault | None:
    """`12 loaves per deck` under an oven or a tray."""
    found = _HELD.fullmatch(t.body) if t.context == "thing" else None
    if found is None:
        return None
    typed = f"holds {found[1]} {found[2]}"
    decks = ", and on a line of its own how many decks there are, as in `decks 3`" if found[3] == "deck" else ""
    return _fault(t, f"write `{typed}`{decks}", *choices(0, len(t.body), typed))


_HELD = re.compile(
    r"([0-9]+) ([a-z]+(?: [a-z]+)?)(?: (?:per|a|each|every|to a|on each|in each) (deck|tray|oven|load|batch|rack|shelf))",
    re.IGNORECASE,
)


def _steams(t: LineTrouble) -> Fault | None:
    """`steam yes` of an oven: how it makes it."""
    opened, _, said = t.body.partition(" ")
    if t.context not in ("kitchen", "thing") or opened.lower().rstrip(":") != "steam":
        return None
    if not re.search(YES_OR_NO, said, re.IGNORECASE):
        return None
    if said.lower() == "no":
        return _fault(t, "leave the line out")
    if said[0].isdigit():
        return _fault(t, f"how much steam a bread gets stands in its bake, as in `bake 30 min at 230 C, steam {said}`")
    where = "" if t.context == "thing" else ", under its `oven`"
    return _fault(t, f"write how the oven makes its steam, as in `steam by pan`{where}")


def _short_only(reason: Callable[[LineTrouble], Fault | None]) -> Callable[[LineTrouble], Fault | None]:
    return lambda t: reason(t) if len(t.body) < LONGEST else None


OF_THINGS = tuple(map(_short_only, (_named_by_a_line, _kept_at, _several, _decks, _heated, _held, _steams)))
"""Reasons why a line of a kitchen, or one under its things, could not be read."""

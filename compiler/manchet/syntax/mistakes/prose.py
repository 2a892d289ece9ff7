"""A step told as one tells it to a colleague: how, before the verb; until when, without quotes; two things on one line."""

from __future__ import annotations

import re
from decimal import Decimal

from manchet.diagnostics.reports import list_of_words
from manchet.quantities.units import UNITS
from manchet.syntax.loose.normal import LONGEST, normal_form
from manchet.syntax.loose.rules import any_of
from manchet.syntax.loose.words import NUMBERS
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place, two_lines, with_under
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED, WEIGHS
from manchet.syntax.tokens import pieces
from manchet.syntax.vocabulary import IN_OVEN, VERB, VERBS

_FIRST_WORDS = frozenset(OPENINGS[UNLESS_WEIGHED])
ANY_VERB = any_of({verb.word for verb in VERBS} | {other for verb in VERBS for other in verb.also} | {"add"})

_UNTIL = re.compile(
    r"\b(?:(?:or )?until|'?till?) (?!\")(?P<look>(?:(?!,? ?[0-9]+(?:-[0-9]+)? ?(?:min|h|hrs?|hours?|C|F)\b)[^\"])+)"
)


_CORE = re.compile(
    r"\b(?:until|'?till?|to|or until) (?:it |the )?(?:reads |(?:(?:internal|core|inside|inner) )(?:temp(?:erature|\.)? )?"
    r"(?:is |reaches |of |hits |at |reads |registers )*)(?P<heat>[0-9]+(?:-[0-9]+)?) ?[°º]?(?: ?degrees)? ?(?P<scale>[CF])?\b",
    re.IGNORECASE,
)


def until_unquoted(t: LineTrouble) -> Fault | None:
    """`prove till doubled`, `prove until 80%`: read as a weight, it would be a thing called `prove until`."""
    if t.raws[0].text not in _FIRST_WORDS or len(t.body) >= LONGEST:
        return None
    if t.raws[0].text in IN_OVEN and (core := _CORE.search(t.body)) is not None:
        ways = [f"to {core['heat']} {scale} core" for scale in (core["scale"] or "CF").upper()]
        words = {"text": short(core[0]), "form": f"write {list_of_words(tuple(f'`{way}`' for way in ways))}"}
        return Fault("unreadable-line", *core.span(), words, choices(*core.span(), *ways))
    found = _UNTIL.search(t.body)
    if found is None or (t.rule == "step" and t.at and found[0].startswith("until ")):
        return None
    instead = f'until "{found["look"].strip(" ,")}"'
    end = found.start("look") + len(found["look"].rstrip(" ,"))
    fix = in_place(found.start(), end, instead)
    return Fault(
        "quotes-missing",
        found.start(),
        end,
        {"word": found[0].removeprefix("or ").split()[0], "instead": instead},
        (fix,),
    )


_ADVERB = re.compile(
    rf"(?P<how>(?:very |more )?(?:[a-z]+ly|carefully|slowly|well)(?:,? (?:and |but )?[a-z]+ly)?),? (?P<step>(?:{ANY_VERB})\b.*)",
    re.IGNORECASE,
)


def adverb_before(t: LineTrouble) -> Fault | None:
    """`gently shape round`: the line begins with its verb, and how is said in words for people."""
    found = _ADVERB.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    how, written = found["how"], found["step"]
    if written.lower().startswith("add ") and how.lower() in ("gradually", "slowly"):
        return None  # in several additions
    step = normal_form(written, t.context) or written
    row = VERB.get(step.partition(" ")[0].lower())
    note = f'note "{how.lower()}"'
    fixes: tuple[LineFix, ...] = ()
    if row is None or not row.needs_time or re.search("[0-9]", step):
        fixes = (with_under(t.body, step, note),)
    words = {"word": how, "offer": f"begin with the verb, and say how in words: `{step}`, and under it `{note}`"}
    return Fault("unknown-word", 0, len(how), words, fixes)


_ADD_AFTER = re.compile(
    r"(?P<add>add [^\d]+?),? (?:in )?(?:after|at) (?P<time>[0-9]+(?:-[0-9]+)? ?(?:min|h)\w*)", re.IGNORECASE
)


def add_after(t: LineTrouble) -> Fault | None:
    """`add salt after 30 min`: lines follow each other, so what goes before it takes the time."""
    found = _ADD_AFTER.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    add = normal_form(found["add"], t.context) or found["add"]
    time = (normal_form(f"rest {found['time']}", t.context) or f"rest {found['time']}").removeprefix("rest ")
    before = f"mix slow {time}` or `rest covered {time}"
    words = {"text": short(t.body), "form": f"the line above it takes the time: `{before}`, and then `{add}`"}
    return Fault("unreadable-line", 0, len(t.body), words)


_TWO_VERBS = re.compile(
    rf"(?P<one>(?:{ANY_VERB})\b[^,0-9]*?)(?:,? (?:and|then|and then)|,(?= (?:{ANY_VERB}) [0-9])) (?P<two>(?:{ANY_VERB})\b.*)",
    re.IGNORECASE,
)


_ADD_WHEN = re.compile(
    r"(?P<add>add [^\d]+?),? (?:at the (?:end|last minute|very end|start|beginning)|last minute|last|first|at last|towards the end)",
    re.IGNORECASE,
)


def add_when(t: LineTrouble) -> Fault | None:
    """`add salt at the end`: lines follow each other, so its place says when."""
    found = _ADD_WHEN.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    add = normal_form(found["add"], t.context) or found["add"]
    words = {
        "text": t.body[found.end("add") :].strip(" ,"),
        "form": f"its place among the lines says when: write `{add}`",
    }
    start = found.end("add") + len(t.body[found.end("add") :]) - len(t.body[found.end("add") :].lstrip(" ,"))
    return Fault("unreadable-line", start, len(t.body), words, choices(0, len(t.body), add))


_AND_TIN = re.compile(
    rf"(?P<one>(?:{ANY_VERB})\b[^,0-9]*?),? (?:and|then|and then|&) (?P<two>(?:tin|pan)(?: up)?)", re.IGNORECASE
)


def two_verbs(t: LineTrouble) -> Fault | None:
    """`fold and shape round`: a step a line. `mould and tin` puts the pieces in the tin."""
    tinned = _AND_TIN.fullmatch(t.body) if t.rule == "step" and len(t.body) < LONGEST else None
    if tinned is not None:
        one = normal_form(tinned["one"], t.context) or tinned["one"]
        fix = two_lines(t.body, one, f"place in {tinned['two'][:3].lower()}")
        return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))
    found = _TWO_VERBS.fullmatch(t.body) if t.rule in ("step", "add") and len(t.body) < LONGEST else None
    if found is None or '"' in t.body:
        return None
    one, two = (normal_form(found[part], t.context) or found[part] for part in ("one", "two"))
    fix = two_lines(t.body, one, two)
    return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))


_MIXING = "mixing|kneading|kneten|impasto|pétrissage|petrissage|mélange|amasado"
_SPEED = r"(?:on |at |in )?(?:the )?(?:{}|{} ?(?:speed|gear|gang|vitesse|velocit[àa]|velocidad)|(?:speed|gear|gang|vitesse|v) ?{})"
_FIRST = _SPEED.format(
    "slow|low|langsam|lent|lente|lento|1st|first|1(?=$|,| min| for| [0-9]+ min)",
    r"(?:1st|first|1[.ªa]?|1[èe]re|prima|primera|erster|slow|low)",
    "1",
)
_SECOND = _SPEED.format(
    "fast|high|schnell|rapide|veloce|2nd|second|2(?=$|,| min| for| [0-9]+ min)",
    r"(?:2nd|second|2[.ªa]?|2[èe]me|seconda|segunda|zweiter|fast|high)",
    "2",
)
_TIME = r"(?:for )?(?P<{}>[0-9]+(?:-[0-9]+)?) ?(?:min(?:ute)?[snun]?|mn|m|')?\.?"
_MIXES = tuple(
    re.compile(rf"(?:(?:mix|knead|{_MIXING}):? )?(?:{one})(?:,? ?(?:then |and |\+ ?|/ ?)*(?:{two}))?", re.IGNORECASE)
    for one, two in (
        (f"{_TIME.format('a')},? {_FIRST}", f"{_TIME.format('b')},? {_SECOND}"),
        (f"{_FIRST}:? {_TIME.format('a')}", f"{_SECOND}:? {_TIME.format('b')}"),
        (f"{_TIME.format('c')},? {_SECOND}", f"{_TIME.format('d')},? {_FIRST}"),
        (f"{_SECOND}:? {_TIME.format('c')}", f"{_FIRST}:? {_TIME.format('d')}"),
    )
)


def speeds(t: LineTrouble) -> Fault | None:
    """`4 min first speed, 6 min second`, `1st speed 4 min`: a mix a line."""
    if len(t.body) >= LONGEST or t.context not in ("stage", "preparation", "step"):
        return None
    found = next((match for pattern in _MIXES if (match := pattern.fullmatch(t.body.strip(" .")))), None)
    if found is None:
        return None
    words_of_speed = re.search(
        r"\b(?:slow|low|fast|high|langsam|schnell|lente?|lento|rapide|veloce)\b", t.body, re.IGNORECASE
    )
    first, second = ("slow", "fast") if words_of_speed else ("speed 1", "speed 2")
    at = {"a": first, "b": second, "c": second, "d": first}
    lines = [f"mix {at[name]} {time} min" for name, time in found.groupdict().items() if time]
    if len(lines) < 2:
        fixes = choices(0, len(t.body), lines[0])
        return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": f"write `{lines[0]}`"}, fixes)
    fix = two_lines(t.body, lines[0], lines[1])
    return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))


_SLOW_FAST = re.compile(
    rf"(?:mix|knead|{_MIXING}):? (?P<one>[0-9]+) ?[/+] ?(?P<two>[0-9]+)(?: ?min\w*)?(?P<rest>(?: to .*)?)",
    re.IGNORECASE,
)


def slow_and_fast(t: LineTrouble) -> Fault | None:
    """`mix 4/6`: four minutes slow, then six fast; or from four to six."""
    found = _SLOW_FAST.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    low, high = sorted((int(found["one"]), int(found["two"])))
    two = two_lines(t.body, f"mix slow {found['one']} min", f"mix fast {found['two']} min{found['rest']}")
    either = in_place(0, len(t.body), f"mix slow {low}-{high} min{found['rest']}")
    words = {"text": short(t.body), "form": f"{two.title}; or, of one speed, {either.title.removeprefix('write ')}"}
    return Fault("unreadable-line", 0, len(t.body), words, (two, either))


_STEAM_FIRST = re.compile(
    r"\b(?:with )?steam (?:on |in )?(?:for |during |in )?(?:the )?(?:first|initial) (?P<number>[0-9]+) ?(?P<unit>min|s|h)?[a-z]*",
    re.IGNORECASE,
)


def steam_first(t: LineTrouble) -> Fault | None:
    """`steam first 10 min`: let in with the bread, and out again after ten."""
    found = _STEAM_FIRST.search(t.body) if t.rule == "step" and len(t.body) < LONGEST else None
    if found is None or found.start() == 0:
        return None
    instead = f"steam, vent open after {found['number']} {found['unit'] or 'min'}"
    words = {"text": found[0], "form": f"write `{instead}`, if the vent then lets it out"}
    return Fault("unreadable-line", *found.span(), words, choices(*found.span(), instead))


_VENT_LAST = re.compile(
    r"\b(?:with )?(?:(?:open (?:the )?(?:vent|damper|valve)|(?:vent|damper|valve) (?:opened|open))(?: for| in)?(?: the)? last) "
    r"(?P<number>[0-9]+)(?: ?(?:min|m)[a-z]*)?",
    re.IGNORECASE,
)


def vent_at_the_end(t: LineTrouble) -> Fault | None:
    """`bake 30 min at 230 C, vent open last 5 min`: it is told from when the bread goes in."""
    found = _VENT_LAST.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    times = re.findall(r"(?<![-0-9])([0-9]+) ?(?:min|m\b)", t.body[: found.start()])
    after = int(times[0]) - int(found["number"]) if len(times) == 1 else 0
    instead = f"vent open after {after} min"
    form = f"write `{instead}`" if after > 0 else "write `vent open after 20 min`, counted from when the bread goes in"
    fixes = choices(*found.span(), instead) if after > 0 else ()
    return Fault("unreadable-line", *found.span(), {"text": found[0], "form": form}, fixes)


_TWO_THINGS = re.compile(r"(?P<one>[0-9½¼¾].*?[^\W\d_]) ?(?:\+|&|and|plus) ?(?P<two>[0-9½¼¾].*[^\W\d_])")


def two_things(t: LineTrouble) -> Fault | None:
    """`1 egg yolk + 1 tbsp milk`: an ingredient a line."""
    if t.context not in WEIGHS or t.rule == "step" or len(t.body) >= LONGEST:
        return None
    found = _TWO_THINGS.fullmatch(t.body)
    if found is None or found["two"].rpartition(" ")[2].rstrip(".").lower() in UNITS:
        return None
    one, two = (normal_form(found[part], t.context) for part in ("one", "two"))
    if one is None or two is None:
        return None
    fix = two_lines(t.body, one, two)
    return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))


_PARTS_OF = r"(?P<part>(?:grated |finely grated )?(?:zest|rind|peel|juice)(?: and (?:zest|juice))?)"
_FRUIT = r"(?P<fruit>(?:small |large |unwaxed )?(?:lemon|orange|lime|clementine|grapefruit|bergamot|apple)s?)"
_COUNT = rf"(?:[0-9]+|½|half an?|an?|{any_of(NUMBERS)})"
_OF_FRUIT = (
    re.compile(rf"{_PARTS_OF} of (?P<count>{_COUNT}) {_FRUIT}", re.IGNORECASE),
    re.compile(
        rf"(?P<count>{_COUNT}) {_FRUIT},? \(?(?P<part>zest|rind|peel|juice|zested|juiced|grated zest)(?: only)?\)?",
        re.IGNORECASE,
    ),
)


def of_a_fruit(t: LineTrouble) -> Fault | None:
    """`zest of 1 lemon`: fruits differ, and a label wants grams."""
    found = (
        next((match for pattern in _OF_FRUIT if (match := pattern.fullmatch(t.body))), None)
        if len(t.body) < LONGEST
        else None
    )
    if found is None:
        return None
    fruit = found["fruit"].split()[-1].lower().rstrip("s")
    part = "juice" if "juic" in found["part"].lower() else "zest"
    words = {"written": t.body, "offer": f"weigh it once, and write `{fruit} {part} … g`"}
    return Fault("packet", 0, len(t.body), words)


_OF_TWO_AMOUNTS = re.compile(
    r"(?P<name>[^\W\d_][^\d]*?) (?P<one>[0-9.]+) ?(?P<unit>%|g|kg|ml|l) ?\+ ?(?P<two>[0-9.]+) ?(?P=unit)"
)


def sum_of_two(t: LineTrouble) -> Fault | None:
    """`water 65% + 10%`: in all, of which the second is held back."""
    found = _OF_TWO_AMOUNTS.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    gap = "" if found["unit"] == "%" else " "
    total = f"{(Decimal(found['one']) + Decimal(found['two'])).normalize():f}{gap}{found['unit']}"
    name, later = found["name"], f"{found['two']}{gap}{found['unit']}"
    words = {
        "first": f"{found['one']}{gap}{found['unit']}",
        "second": later,
        "offer": f"`{name} {total}`, and among the steps `hold back {name} {later}`, `add {name}`",
    }
    return Fault("weight-twice", found.start("two"), found.end(), words, choices(0, len(t.body), f"{name} {total}"))


_EGGS = re.compile(
    r"(?P<count>[0-9]+) (?:(?:whole|large|medium|small|extra large|free[- ]range) )*(?P<what>eggs?|egg yolks?|yolks?|egg whites?)"
    r",? ?\(?(?:about |ca\.? )?(?P<weight>[0-9.]+ ?k?g)\)?(?: in all| total)?",
    re.IGNORECASE,
)


def eggs_weighed(t: LineTrouble) -> Fault | None:
    """`3 large eggs (150 g)`: by number or by weight."""
    found = _EGGS.fullmatch(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    name = found["what"].lower() + ("s" if not found["what"].endswith("s") and found["count"] != "1" else "")
    weight = next(iter(pieces(found["weight"]))).text
    ways = (f"{name} {weight}", f"{name} {found['count']} whole")
    words = {"first": found["count"], "second": weight, "offer": f"`{ways[0]}` or `{ways[1]}`"}
    return Fault("weight-twice", found.start("weight"), found.end("weight"), words, choices(0, len(t.body), *ways))


def dough_yield(t: LineTrouble) -> Fault | None:
    """`TA 170`: dough per hundred of flour, as German bakers count their water."""
    found = re.fullmatch(r"TA:? ?(1[3-9][0-9]|2[0-9][0-9])", t.body, re.IGNORECASE)
    if found is None:
        return None
    offer = f"a dough yield of {found[1]} is `water {int(found[1]) - 100}%` under `overall`, where all of the liquid is water"
    return Fault("unknown-word", 0, len(t.body), {"word": t.body, "offer": offer})

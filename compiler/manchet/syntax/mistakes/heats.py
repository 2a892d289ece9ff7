"""The heat of an oven as a bare number, or as two: `bake 230 30 min`, `240/220`, `250 falling to 200`."""

from __future__ import annotations

import re

from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.loose.times import DOUGH_WARMTH
from manchet.syntax.mistakes.faults import Fault, LineTrouble, choices, in_place, with_under
from manchet.syntax.vocabulary import IN_OVEN

LEAST_HEAT = 100
"""No oven is set lower, and no bake is written in so many minutes of two kinds. Our rule."""

SURELY_HEAT = 150
"""Where no other figure stands beside it: nobody writes a bake of so many minutes. Our rule."""

ALWAYS_CELSIUS, NEVER_CELSIUS = 260, 350
"""Under the one nobody writes two heats of an oven in Fahrenheit, over the other none in Celsius. Our rule."""

OF_TWO = re.compile(r"([0-9]{2,3}) ?/ ?([0-9]{2,3})(?![0-9./])")
_UNITS = r"(?: ?[°º]? ?(?P<{}>[CF]))?"
_DOWN = (
    r"(?:,? ?(?:and |then )*(?:falling|dropping|reducing|lowering|turning down|going down|down|fading|sinking)"
    r"(?: down)? ?(?:to )?|,? then (?:at )?| ?(?:->|→|>) ?|(?P<to> to ))"
)
_FALLING = re.compile(
    rf"(?P<lead>\b(?:at|from) )?\b(?P<one>[0-9]{{3}}){_UNITS.format('first')}{_DOWN}"
    rf"(?P<other>[0-9]{{3}}){_UNITS.format('last')}(?![\w./]| ?(?:min|h|s|g|kg|ml)\b)",
    re.IGNORECASE,
)
_BACKWARDS = re.compile(
    rf"(?P<lead>\bat )?\b(?P<one>[0-9]{{3}}) ?[-–] ?(?P<other>[0-9]{{3}}){_UNITS.format('last')}(?![\w./]| ?(?:min|h|s)\b)"
)


def scales(*heats: int) -> tuple[str, ...]:
    """The scales that an oven's heats may be in, the likeliest first."""
    return ("C",) if max(heats) < ALWAYS_CELSIUS else ("F",) if max(heats) > NEVER_CELSIUS else ("C", "F")


def with_scale(step: str) -> str:
    """A step of an oven, with `at` and a scale at a heat that has neither."""
    if step.partition(" ")[0].lower() not in IN_OVEN or re.search(r"[0-9] ?[CF]\b", step):
        return step
    return _BARE.sub(lambda m: f" at {m[1]} {scales(int(m[1]))[0]}", step, count=1)


_BARE = re.compile(r"(?: at)? ([1-9][0-9]{2})\b(?![./-]| ?(?:min|h|s|g|kg|ml|mm|cm)\b)")


def two_heats(t: LineTrouble, two: re.Match[str]) -> Fault:
    """`bake 20 min at 240/220`: from one to the other, or above and below; of one and the same scale."""
    one, other = int(two[1]), int(two[2])
    ways = []
    for unit in scales(one, other):
        there = [f"{one} {unit} falling to {other} {unit}", f"{one} {unit} top {other} {unit} bottom"]
        ways += there if one > other else [f"{one}-{other} {unit}"]
    led = re.search(r"\bat\s*$", t.body[: two.start()], re.IGNORECASE)
    return _without_unit(t, led.start() if led else two.start(), two.end(), [f"at {way}" for way in ways])


def falling(t: LineTrouble) -> Fault | None:
    """`bake 250 falling to 200`, `at 250 C falling to 200`, `bake from 250 to 200 C`, `250-200`: two heats, one after the other."""
    if len(t.body) >= LONGEST or not in_oven(t):
        return None
    found = _FALLING.search(t.body) or _BACKWARDS.search(t.body)
    if found is None or int(found["one"]) <= int(found["other"]) or int(found["other"]) < LEAST_HEAT:
        return None
    groups = found.groupdict()
    bare = "other" if groups.get("first") else "one"
    if groups.get("to") and (found["lead"] or "").lower() != "from ":
        return None  # `at 450 to 205 F`: the second is the core
    said = groups.get("first") or groups.get("last")
    units = (said.upper(),) if said else scales(int(found["one"]))
    ways = [f"at {found['one']} {unit} falling to {found['other']} {unit}" for unit in units]
    if said and groups.get("first") and groups.get("last"):
        return None
    return _without_unit(t, *found.span(), ways, found[bare])


def bare_heat(t: LineTrouble, start: int, end: int) -> Fault | None:
    """`bake 230 30 min`: a number that no bake takes in minutes."""
    number = t.body[start:end]
    if not in_oven(t) or not number.isdigit() or int(number) < SURELY_HEAT:
        return None
    units = ("F",) if int(number) > NEVER_CELSIUS else ("C", "F")
    return _without_unit(t, start, end, [f"at {number} {unit}" for unit in units])


def in_oven(t: LineTrouble) -> bool:
    return t.rule in ("step", "material") and t.raws[0].text in IN_OVEN


def _without_unit(t: LineTrouble, start: int, end: int, ways: list[str], written: str = "") -> Fault:
    *first, last = (f"`{way}`" for way in ways)
    offer = f"write {', '.join(first)} or {last}" if first else f"write {last}"
    words = {"written": written or t.body[start:end], "offer": offer}
    return Fault("missing-unit", start, end, words, choices(start, end, *ways))


_DOUGH_WARMTH = re.compile(rf",? ?\b{DOUGH_WARMTH} ?(?P<degrees>[0-9]+(?:-[0-9]+)?) ?[°º]?$", re.IGNORECASE)
LEAST_FAHRENHEIT = 60
"""A dough that is mixed to 60 or more: no dough is so warm in Celsius, and none so cold as 59 F. Our rule."""


def dough_warmth(t: LineTrouble) -> Fault | None:
    """`mix slow 8 min, DT 26`: the heat of the mixed dough, without its scale."""
    found = _DOUGH_WARMTH.search(t.body) if t.rule == "step" and len(t.body) < LONGEST else None
    if found is None or not found.start():
        return None
    degrees = found["degrees"]
    way = f"to {degrees} {'F' if int(degrees.partition('-')[0]) >= LEAST_FAHRENHEIT else 'C'}"
    fix = in_place(*found.span(), f" {way}", title=f"write `{way}`")
    start = found.start() + len(found[0]) - len(found[0].lstrip(" ,"))
    return Fault("missing-unit", start, found.end(), {"written": t.body[start:], "offer": fix.title}, (fix,))


_REMARKED = re.compile(r"(?P<head>[^()]*[^\W\d_]) ?\((?P<remark>[^()%]+)\)(?P<share>(?: with| at)? ?[0-9.]+ ?% of .*)?")


def heading_with_remark(t: LineTrouble) -> Fault | None:
    """`biga (night before) with 30% of all flour`: what is said beside a heading is a note under it."""
    found = _REMARKED.fullmatch(t.body) if t.rule == "stage" and len(t.body) < LONGEST else None
    if found is None or "overnight" in found["remark"]:
        return None
    typed, note = f"{found['head']}{found['share'] or ''}", f'note "{found["remark"]}"'
    fix = with_under(t.body, typed, note)
    start = found.start("remark") - 1
    return Fault(
        "unreadable-line", start, found.end("remark") + 1, {"text": f"({found['remark']})", "form": fix.title}, (fix,)
    )


_BETWEEN = re.compile(
    r"(?P<name>[^\W\d_][^\d,(]*?),? ?\(?(?:at )?(?P<low>[0-9]+)(?: ?[-–] ?| to )(?P<high>[0-9]+) ?[°º]? ?(?P<scale>[CF])\)? (?P<amount>[0-9½¼¾].*)"
)


def between_two_warmths(line: str) -> Fault | None:
    """`warm water (40-43 C) 250 g`: the balance of the dough goes by one."""
    found = _BETWEEN.fullmatch(line)
    if found is None:
        return None
    ways = (f"{found['name']} {found['amount']} at {found[end]} {found['scale']}" for end in ("low", "high"))
    written = f"{found['low']}-{found['high']} {found['scale']}"
    return Fault(
        "range-as-number", found.start("low"), found.end("scale"), {"written": written}, choices(0, len(line), *ways)
    )

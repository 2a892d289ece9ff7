"""Figures in other measures and words than ours: gas marks, two scales at once, clocks, packets, numbers in words."""

from __future__ import annotations

import re

from manchet.diagnostics.reports import list_of_words
from manchet.diagnostics.suggest import fold
from manchet.syntax.loose.normal import LONGEST, normal_form
from manchet.syntax.loose.rules import any_of
from manchet.syntax.loose.words import NUMBERS
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place, two_lines
from manchet.syntax.mistakes.heats import with_scale
from manchet.syntax.mistakes.odd_figures import range_as_amount, short
from manchet.syntax.mistakes.several_kinds import KINDS
from manchet.syntax.openings import WEIGHS
from manchet.syntax.plan_tokens import WEEKDAYS
from manchet.syntax.tokens import WEIGHTS, pieces
from manchet.syntax.vocabulary import IN_OVEN, VERBS

GAS_MARKS = {
    "1/4": 110, "¼": 110, "1/2": 120, "½": 120, "1": 140, "2": 150, "3": 170, "4": 180, "5": 190, "6": 200, "7": 220, "8": 230, "9": 240,
}  # fmt: skip
"""Degrees Celsius of the British marks: common practice, from memory; stoves differ by ten degrees and more."""

_GAS = re.compile(r"\b(?:at )?(?:gas(?: mark)?|regulo|mark) ?(1/[24]|[¼½]|[1-9])(?![\w.])", re.IGNORECASE)
_TWO_SCALES = re.compile(r"([0-9]+(?:-[0-9]+)?) ?[°º]? ?([CF])(?: ?/ ?| ?\()([0-9]+(?:-[0-9]+)?) ?[°º]? ?([CF])\)?")
_CLOCK = re.compile(r"(?<![\w:.])([0-9]{1,2}):([0-5][0-9])(?![\w:])")
_PACKET = re.compile(
    r"(?:^|\s)([0-9]+|an?|one|half an?) ?(?:small |large )?"
    r"(packets?|packages?|pkgs?\.?|pkts?\.?|envelopes?|sachets?|cubes?|sticks?|cans?|jars?|tins?|bags?|bottles?|packs?|würfel|päckchen|bustina|bustine|cubetto)(?!\w)",
    re.IGNORECASE,
)
_DEGREES = re.compile(r"\b([0-9]+(?:-[0-9]+)?) ?(?:degrees?|deg\b\.?|[°º])(?! ?[CF]\b)", re.IGNORECASE)
_FEW = re.compile(r"\b(?:a few|some|several|a couple of) (?:min\w*|hours?|h|secs?|seconds?|days?)\b", re.IGNORECASE)
_THEN = re.compile(r",? (?:and )?then (?:at )?([0-9]+ [CF])\b")
_TWO_STEPS = re.compile(r"^(.*[0-9].*?)(?:,? (?:and )?then | ?\+ ?)(.*[0-9].*)$", re.IGNORECASE)
_ROOM = re.compile(
    r",? ?(?:\b|@ ?)(?:at |in )?(?:the )?(?:(?:room|ambient|kitchen) temp(?:erature\b|\b\.?)|RT\b|ambient\b)",
    re.IGNORECASE,
)


def gas_mark(t: LineTrouble) -> Fault | None:
    found = _GAS.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    if re.search(r"[0-9] ?[°º]? ?[CF]\b", t.body[: found.start()]):
        start = len(t.body[: found.start()].rstrip(" /,("))
        end = found.end() + len(re.match(r"\)?", t.body[found.end() :])[0])  # type: ignore[index]
        fix = LineFix(((start, end, ""),), f"leave out `{found[0]}`")
        return Fault(
            "gas-mark", *found.span(), {"written": found[0], "offer": "leave it out: the degrees say it"}, (fix,)
        )
    degrees = f"at {GAS_MARKS[found[1]]} C"
    return Fault(
        "gas-mark",
        *found.span(),
        {"written": found[0], "offer": f"write `{degrees}`, which is about the same"},
        choices(*found.span(), degrees),
    )


def two_scales(t: LineTrouble) -> Fault | None:
    found = _TWO_SCALES.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    fan = re.match(r" (?:fan|convection)\b", t.body[found.end() :])
    end = found.end() + (fan.end() if fan else 0)
    if found[2] == found[4]:
        one, other, unit = found[1], found[3], found[2]
        ways = (f"{one} {unit} falling to {other} {unit}", f"{one} {unit} top {other} {unit} bottom")
        form = "write which of the two it is"
        if fan:  # `230 C/210 C fan`: the second is the fan's
            ways, form = (f"{one} {unit}", f"{other} {unit} fan"), "write the heat of the oven you have"
        words = {"text": t.body[found.start() : end], "form": f"{form}: `{ways[0]}` or `{ways[1]}`"}
        return Fault("unreadable-line", found.start(), end, words, choices(found.start(), end, *ways))
    fixes = choices(*found.span(), f"{found[1]} {found[2]}", f"{found[3]} {found[4]}")
    return Fault("two-scales", *found.span(), {"written": found[0]}, fixes)


_TIME_OF_A_DAY = re.compile(
    rf"\b(?:{'|'.join(WEEKDAYS)}) [0-9]{{1,2}}:[0-9]{{2}}\b|:[0-9]{{2}}\b.*:[0-9]{{2}}\b", re.IGNORECASE
)
"""Of a plan's line that stands elsewhere: it is no time that passes."""


def clock(t: LineTrouble) -> Fault | None:
    """`1:30` where both minutes and hours may be meant."""
    found = _CLOCK.search(t.body) if len(t.body) < LONGEST else None
    if found is None or _TIME_OF_A_DAY.search(t.body):
        return None
    first, second = int(found[1]), int(found[2])
    if not first:
        ways = (f"{second} min", f"{second} s")
    elif not second:
        ways = (f"{first} min", f"{first} h")
    else:
        ways = (f"{first} min {second} s", f"{first} h {second} min")
    return Fault("clock-or-minutes", *found.span(), {"written": found[0]}, choices(*found.span(), *ways))


def packet(t: LineTrouble) -> Fault | None:
    if t.context not in WEIGHS or t.rule == "step":
        return None
    found = _PACKET.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    written = found[0].strip()
    name = (
        re.sub(r"^(?:of )", "", f"{t.body[: found.start()]} {t.body[found.end() :]}".strip(" ,.")).partition(",")[0]
        or "yeast"
    )
    typed = list_of_words(tuple(f"`{short(kind)} … g`" for kind in KINDS.get(fold(name), (name,))))
    it = "what one weighs" if found[1].lower() in ("1", "a", "an", "one") else f"the weight of `{written}`"
    box = _SHORT.get(box := found[2].lower().rstrip("s."), box)
    return Fault(
        "packet", *found.span(), {"written": written, "offer": f"write {it}, as printed on the {box}: {typed}"}
    )


_SHORT = {"pkg": "packet", "pkt": "packet", "bustine": "bustina"}


def degrees_of_no_scale(t: LineTrouble) -> Fault | None:
    found = _DEGREES.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    words = {"written": found[0], "offer": f"write `{found[1]} C` or `{found[1]} F`"}
    return Fault("missing-unit", *found.span(), words, choices(*found.span(), f"{found[1]} C", f"{found[1]} F"))


def a_few(t: LineTrouble) -> Fault | None:
    found = _FEW.search(t.body) if len(t.body) < LONGEST else None
    if found is None:
        return None
    return Fault(
        "about-amount", *found.span(), {"written": found[0], "offer": "write how many, as in `5 min`, or a range"}
    )


def then_another_heat(t: LineTrouble) -> Fault | None:
    found = _THEN.search(t.body) if len(t.body) < LONGEST else None
    if found is None or t.rule not in ("step", "clause_line"):
        return None
    falling = f" falling to {found[1]}"
    words = {
        "text": found[0].strip(" ,"),
        "form": f"write `{falling.strip()}`, or a second `bake` on a line of its own",
    }
    return Fault(
        "unreadable-line", *found.span(), words, (in_place(*found.span(), falling, title=f"write `{falling.strip()}`"),)
    )


def two_steps(t: LineTrouble) -> Fault | None:
    """`bake 20 min at 240 C then 20 min at 200 C`: a step a line."""
    if t.rule != "step" or len(t.body) >= LONGEST:
        return None
    if (added := _ADDED.match(t.body)) is not None:
        return _added(t.body, added)
    found = _TWO_STEPS.match(t.body)
    if found is None:
        return None
    verb = next((verb.word for verb in VERBS if f"{found[1]} ".lower().startswith(f"{verb.word} ")), "")
    again = any(f"{found[2]} ".lower().startswith(f"{verb.word} ") for verb in VERBS)
    second = found[2] if again or not verb else f"{verb} {found[2]}"
    first, second = (_normal(with_scale(part), t.context) for part in (found[1].rstrip(" ,"), second))
    heat = re.search(r"\bat [0-9]+ [CF]\b", first)
    if verb in IN_OVEN and heat is not None and not re.search(r"[0-9] [CF]\b", second):
        second = f"{second} {heat[0]}"
    fix = two_lines(t.body, first, second)
    return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))


def _normal(step: str, context: str) -> str:
    return normal_form(step, context) or step


def _added(body: str, found: re.Match[str]) -> Fault:
    """`mix 5+3 min to 25 C`: five minutes, then three; of a mix slow, then fast, and its end is the end of the second."""
    verb, how, rest = found["verb"], found["how"].strip(), found["rest"]
    before, after = (how, how) if verb.lower() != "mix" or how not in ("", "slow") else ("slow", "fast")
    first = " ".join(filter(None, (verb, before, f"{found['one']} {found['unit']}", *_AROUND.findall(rest))))
    second = " ".join(filter(None, (verb, after, f"{found['two']} {found['unit']}", rest.strip())))
    fix = two_lines(body, first, second)
    return Fault("unreadable-line", 0, len(body), {"text": short(body), "form": fix.title}, (fix,))


_ADDED = re.compile(
    r"(?P<verb>[a-z]+)(?P<how>(?: [a-z]+){0,2}) (?P<one>[0-9.]+) ?\+ ?(?P<two>[0-9.]+) ?(?P<unit>min|h|s)\b(?P<rest>.*)$",
    re.IGNORECASE,
)
_AROUND = re.compile(r"\bat [0-9-]+ [CF]\b")
"""The heat around it holds for both."""


def room_warmth(t: LineTrouble) -> Fault | None:
    """`at room temperature`: how warm the room is, the kitchen says."""
    found = _ROOM.search(t.body) if len(t.body) < LONGEST else None
    if found is None or t.rule not in ("step", "clause_line"):
        return None
    said = found[0].strip(" ,")
    words = {
        "text": said,
        "form": "leave it out: what has no temperature stands in the kitchen's `air`; or write the degrees, as in `at 22 C`",
    }
    start = found.end() - len(found[0].lstrip(" ,"))
    fix = LineFix(((found.start(), found.end(), ""),), f"leave out `{said}`")
    return Fault("unreadable-line", start, found.end(), words, (fix,))


def kept_for(t: LineTrouble) -> Fault | None:
    """`keep 2 days in fridge`, `keep frozen 2 months`: how long it is good."""
    found = _KEPT.match(t.body) if len(t.body) < LONGEST and t.context in ("preparation", "stage", "entry") else None
    if found is None or (found["keep"].lower().startswith("freeze") and not re.search("month|week", found["time"])):
        return None
    days = _MONTHS.sub(_in_days, found["time"])
    normal = normal_form(f"rest {days}", "stage") or f"rest {days}"
    where = f"{found['keep']} {found['how']} {found['where']}".lower()
    cold = re.search(r"(-?[0-9]+) ?°?C\b", found["where"])
    degrees = (
        cold[1] if cold else "-18" if "freez" in where or "frozen" in where else "4" if _COLD.search(where) else ""
    )
    instead = f"good for {normal.removeprefix('rest ')}{f' at {degrees} C' if degrees else ''}"
    month = ", a month as 30 days" if days != found["time"] else ""
    start, end = found.span("time") if found["keep"].lower() == "good" else (0, found.end("how"))
    words = {"text": t.body[start:end].strip(), "form": f"for how long it is good write `{instead}`{month}"}
    fixes: tuple[LineFix, ...] = (in_place(0, len(t.body), instead),)
    if t.context == "stage":
        fixes = ()
    return Fault("unreadable-line", start, end, words, fixes)


def _in_days(months: re.Match[str]) -> str:
    numbers = NUMBERS | {"a": "1", "an": "1"}
    return "-".join(str(30 * int(numbers.get(each.lower(), each))) for each in months.groups() if each) + " d"


_MONTHS = re.compile(rf"([0-9]+|an?|{any_of(NUMBERS)})(?: ?(?:-|to|or) ?([0-9]+))? ?months?", re.IGNORECASE)
"""Thirty days each: common practice, for nothing is kept to the day that long."""


_HOW = r"(?: (?:frozen|chilled|cold|refrigerated|covered|airtight|in (?:the |a )?(?:fridge|freezer|refrigerator|cold)))"

_KEPT = re.compile(
    rf"(?P<keep>keeps?|stored?s?|good|lasts?|freezes?|use within|shelf[- ]life(?: of)?:?)(?P<how>{_HOW}?)(?: for)?(?: up to)? (?P<time>(?:[0-9]+(?:(?:-| to | or )[0-9]+)?|an?|{any_of(NUMBERS)})"
    r" ?(?:d|days?|weeks?|months?|h|hours?|hrs?))\b(?P<where>.*)$",
    re.IGNORECASE,
)
_COLD = re.compile(r"\b(?:fridge|refrigerat\w*|cold|chilled|cooler|retarder)\b")


def figure_in_words(t: LineTrouble) -> Fault | None:
    """`butter two kg`, where the line could also be the name of a stage."""
    if t.rule != "bare_name" or len(t.body) > LONGEST or re.search(r"[0-9]", t.body):
        return None
    normal = normal_form(t.body, t.context)
    if normal is None or not any(raw.kind in WEIGHTS for raw in pieces(normal)):
        return None
    return Fault("figure-in-words", 0, len(t.body), {"text": short(t.body)}, choices(0, len(t.body), normal))


def weighed_from_to(t: LineTrouble) -> Fault | None:
    """`butter 1 kg to 1.2 kg`: a range with a unit at both ends."""
    weights = [at for at, raw in enumerate(t.raws) if raw.kind in WEIGHTS]
    if t.context not in WEIGHS or t.rule != "material" or len(weights) != 2:
        return None
    one, two = weights
    if two != one + 2 or t.raws[one + 1].text != "to" or not one:
        return None
    low, high = t.raws[one], t.raws[two]
    return range_as_amount(t.body[: low.start].strip(), t.body[low.start : high.end], low.start)


_HEAPED = re.compile(
    r"\b(?P<how>heaping|heaped|rounded|generous|scant|mounded|overflowing|big|small|good) "
    r"(?P<spoon>tablespoons?|teaspoons?|cups?|tbsps?|tsps?|tbs)\b(?: of (?:the )?)?",
    re.IGNORECASE,
)


def heaped_spoon(t: LineTrouble) -> Fault | None:
    """`honey 1 heaping tablespoon`: a level spoon is a measure, a heaped one is not."""
    if t.context not in WEIGHS or t.rule == "step" or len(t.body) >= LONGEST:
        return None
    found = _HEAPED.search(t.body)
    if found is None:
        return None
    level = f"{t.body[: found.start()]}{found['spoon']} {t.body[found.end() :]}".strip()
    normal = normal_form(level, t.context) or level
    words = {
        "written": f"{found['how']} {found['spoon']}",
        "offer": f"weigh it; level spoons are written `{normal}`",
    }
    return Fault("about-amount", found.start("how"), found.end("spoon"), words, choices(0, len(t.body), normal))


def weighed_twice(t: LineTrouble) -> Fault | None:
    """`butter 2 oz (56 g)`, `butter 56 g / 2 oz`: one amount in two measures."""
    if t.context not in WEIGHS or t.rule not in ("material", "bare_name") or len(t.body) > LONGEST:
        return None
    plain = re.sub(r"[()/]", " ", t.body)
    weights = [raw for raw in pieces(plain) if raw.kind in WEIGHTS]
    if len(weights) != 2 or plain == t.body or not weights[0].start:
        return None
    one, two = weights
    if "hydration" in t.body.lower():
        name = plain[: one.start].strip(" ,")
        words = {
            "first": one.text,
            "second": two.text,
            "offer": f"`{one.text}`: hydration follows from what is weighed",
        }
        return Fault("weight-twice", two.start, two.end, words, choices(0, len(t.body), f"{name} {one.text}"))
    name = plain[: one.start].strip(" ,")
    fixes: tuple[LineFix, ...] = choices(0, len(t.body), f"{name} {one.text}", f"{name} {two.text}")
    words = {"first": one.text, "second": two.text, "offer": f"`{one.text}` or `{two.text}`"}
    return Fault("weight-twice", two.start, two.end, words, fixes)


def overnight(t: LineTrouble) -> Fault | None:
    for at, raw in enumerate(t.raws):
        if raw.text == "over" and t.raws[at + 1 : at + 2] and t.raws[at + 1].text == "night":
            end = t.raws[at + 1].end
            return Fault("overnight", raw.start, end, {"word": "over night"}, choices(raw.start, end, "8-12 h"))
        if raw.kind == "WORD" and raw.text.strip("()") in ("overnight", "nightly", "o/n"):
            return Fault("overnight", raw.start, raw.end, {"word": raw.text}, choices(raw.start, raw.end, "8-12 h"))
    return None

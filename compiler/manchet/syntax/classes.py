"""Which rule of the grammar reads a line: its first words decide, then what it ends in, then its verb, then it is a name.

Where a line stands decides which first words count: `flour` opens a setting in a kitchen and an ingredient in a dough.
"""

from __future__ import annotations

from typing import NamedTuple

from manchet.syntax import phrases as p
from manchet.syntax.phrases import Phrases
from manchet.syntax.tokens import Raw


class Reading(NamedTuple):
    """How the rest of a line is read: by which start rule, with which closed phrases, and what is special about it.

    `mode` is "line" (the rest is one name), "list" (quotes protect names), "step" (names after in, on, with, as),
    or "" (none of these).
    """

    rule: str
    phrases: Phrases
    mode: str = ""


class Opening(NamedTuple):
    """The words that open a line, the token they are, and how the rest is read."""

    rest: tuple[str, ...]
    token: str
    canonical: str
    reading: Reading


Openings = dict[str, tuple[Opening, ...]]


def _openings(*tables: tuple[Reading, str]) -> Openings:
    found: dict[str, list[Opening]] = {}
    for reading, table in tables:
        for first, group in p.phrases(table).items():
            found.setdefault(first, []).extend(Opening(q.rest, q.token, q.canonical, reading) for q in group)
    return {word: tuple(sorted(group, key=lambda o: -len(o.rest))) for word, group in found.items()}


BLOCK = Reading("block", {}, "line")
STAGE = Reading("stage", p.SHARE, "stage")
RESERVED = Reading("reserved", {}, "line")
STEP = Reading("step", p.CLAUSES, "step")
CLAUSE_LINE = Reading("clause_line", p.CLAUSES, "step")
MATERIAL = Reading("material", p.TAIL, "material")
TAIL = Reading("tail", p.TAIL)
BARE_NAME = Reading("bare_name", {}, "line")
ENTRY_NAME = Reading("entry_name", {}, "line")
SETTING = Reading("setting", p.SETTINGS, "dated")
NAMES_SETTING = Reading("setting", {}, "list")

_STAGES = (
    STAGE,
    "STAGE: poolish, biga, sponge, preferment, old dough, levain, sour, soaker, scald, stage, dough",
)
_RESERVED = "RESERVED: assembly, plan, bake log"
_PROSE = (CLAUSE_LINE, "PROSE: note, picture")
_ALLOW = (Reading("allow", p.ALLOW), "ALLOW: allow, always allow")
_ABOUT = (Reading("about", {}), "_ABOUT: about")
_KIND = (Reading("kind", {}, "line"), "_KIND: kind")
_STATUS = (Reading("status", p.STATUS, "dated"), "_STATUS: status")
_VERBS = (
    STEP,
    """
VERB: mix, stretch, fold, stir, whisk, rub, blend, rest, ripen, ferment, bulk = ferment, prove, proof = prove, retard
VERB: chill, freeze, thaw, soak, cool, divide, shape, roll out, roll, press, cut, trim, slice, fill, spread, brush
VERB: sprinkle, dust, dip, grease, place, wrap, turn out, score, dock, bake, roast, griddle, fry, boil, simmer
VERB: heat, chop, grate, grind, peel, rinse, strain, drain, pack, do, mould = shape, mold = shape
""",
)

TOP = _openings(
    (BLOCK, "BLOCK: formula, preparation, larder, kitchen"),
    (RESERVED, _RESERVED),
    _STAGES,
)

_MAKES = Reading("makes", p.MAKES)
_HEAD = (
    _ABOUT,
    _KIND,
    (_MAKES, "_MAKES: makes"),
    (Reading("from_flour", p.FROM), "_FROM: from"),
    (Reading("loss", {}), "LOSS: dough loss = dough, bake loss = bake"),
    (Reading("percentages", {}), "_PERCENTAGES: percentages of dough flour"),
    _STATUS,
    _ALLOW,
    _PROSE,
)

_UNDER_A_FORMULA = (*_HEAD, _STAGES, (Reading("overall", {}), "_OVERALL: overall"))

FORMULA = _openings(*_UNDER_A_FORMULA, (Reading("variant", {}, "line"), "_VARIANT: variant"))

VARIANT = _openings(
    *_UNDER_A_FORMULA,
    (Reading("swap", p.SWAP, "stage"), "_SWAP: swap"),
    (Reading("without", {}, "line"), "_WITHOUT: without"),
)
"""What may be different in a variant: the same lines and headings, what is swapped, what is left out."""

_WORK = (
    (Reading("take_all", p.AT), "_ALL_OF_THE: all of the, all the"),
    (Reading("take_left", p.AT), "_WHAT_IS_LEFT_OF_THE: what is left of the, what's left of the"),
    (Reading("everything_else", p.AT), "_EVERYTHING_ELSE: everything else"),
    (Reading("hold_back", p.LIST, "list"), "_HOLD_BACK: hold back"),
    (Reading("add", p.LIST, "list"), "_ADD: add"),
    (
        Reading("keep", p.KEEP, "list"),
        "_KEEP: keep\n_KEEP_LEFT_AS: keep what is left as\n_KEEP_ENOUGH_AS: keep enough as",
    ),
    (Reading("discard", {}), "_DISCARD_LEFT: discard what is left"),
    (Reading("top_up", {}, "line"), "_TOP_UP_WITH: top up with"),
    (Reading("lock_in", {}, "line"), "_LOCK_IN: lock in"),
    (Reading("each_mix", {}), "_MADE_FOR_EACH_MIX: made for each mix"),
    (Reading("from_nothing", {}), "_START_FROM_NOTHING: start from nothing"),
    (Reading("good_for", p.AT), "_GOOD_FOR: good for"),
    (Reading("branch", {}, "line"), "_FOR_THE: for the"),
    _ABOUT,
    _ALLOW,
    _PROSE,
    (STEP, "VERB: fill with = fill, spread with = spread, brush with = brush, sprinkle with = sprinkle"),
    (STEP, "VERB: dust with = dust"),
)

WORK = _openings(*_WORK)
"""What opens a line of a stage, a dough or a preparation whatever it ends in."""

PREPARATION = _openings(*_WORK, _KIND, (_MAKES, "_MAKES: makes"), _STATUS)

VERBS = _openings(
    _VERBS,
    (Reading("give_back", {}, "line"), "_RETURN: return"),
)
"""What opens a line of a stage that does not end in a weight."""

CLAUSES = _openings((CLAUSE_LINE, "PROSE: until, if late, why, note, picture"))

ENTRY = _openings(
    (
        SETTING,
        "FLAG: gives its water, counts as flour, not counted as flour, no allergens, made of\nCOMPOSITION_KEY: per = per 100 g",
    ),
    (Reading("setting", {}, "line"), "NAME_KEY: class"),
    (NAMES_SETTING, "NAMES_KEY: also called, allergens, may contain"),
    (SETTING, "DENSITY_KEY: density\nMASS_KEY: whole\nTEMPERATURE_KEY: kept at\nPRICE_KEY: price\nTEXT_KEY: source"),
    (SETTING, "SHELF_KEY: good for\nPERCENT_KEY: takes water"),
    (Reading("could_be", p.SETTINGS, "list"), "QUESTION_KEY: could be"),
    _PROSE,
)

COMPOSITION = _openings(_PROSE)
"""Lines under `per 100 g` and `made of`: materials, whatever they begin with."""

KITCHEN = _openings(
    (SETTING, "TEMPERATURE_KEY: air, flour, tap\nNUMBER_KEY: hands"),
    (Reading("setting", {}, "line"), "NAME_KEY: measures, yeast, yeast factors, words"),
    (
        Reading("setting", {}, "line"),
        "THING: mixer, oven, prover, proofer = prover, fridge, refrigerator = fridge, freezer, bench, tin, pan = tin\n"
        "THING: loaf pan = tin, tray, sheet pan = tray, basket, couche, scale, griddle, pot",
    ),
    _ALLOW,
    _ABOUT,
    _PROSE,
    _VERBS,
)

THING = _openings(
    (SETTING, "CAPACITY_KEY: takes\nPACE_KEY: slow, fast\nWARMS_KEY: warms\nTEMPERATURE_KEY: hottest, keeps"),
    (Reading("setting", {}, "list"), "NAMES_KEY: heat"),
    (SETTING, "COUNT_KEY: holds\nTIME_KEY: recovers, heats in\nVOLUME_KEY: volume\nNUMBER_KEY: count"),
    (SETTING, "MASS_KEY: reads, up to, holds water, stiff dough up to\nLOAD_KEY: each load takes"),
    (
        Reading("setting", p.SIZES),
        "SIZE_KEY: inside, top, bottom, round, deep, floor, round floor, door\nFALLS_KEY: falls",
    ),
    (Reading("setting", {}, "line"), "NAME_KEY: steam by = steam, steam"),
    _PROSE,
)


def opening_of(openings: Openings, raws: list[Raw]) -> tuple[Opening, int] | None:
    """The opening a line begins with and how many pieces it takes, the longest first; or None."""
    group = openings.get(raws[0].text)
    if group is None or raws[0].kind != "WORD":
        return None
    for found in group:
        rest = found.rest
        size = len(rest) + 1
        if size == 1:
            return found, 1
        if len(raws) >= size and all(raw.text == word for raw, word in zip(raws[1:size], rest, strict=True)):
            return found, size
    return None


OPENINGS: dict[str, Openings] = {
    "top": TOP,
    "formula": FORMULA,
    "variant": VARIANT,
    "preparation": PREPARATION,
    "stage": WORK,
    "verbs": VERBS,
    "overall": COMPOSITION,
    "composition": COMPOSITION,
    "material": CLAUSES,
    "step": CLAUSES,
    "larder": {},
    "entry": ENTRY,
    "kitchen": KITCHEN,
    "thing": THING,
}
"""What opens a line in each context. In a stage and a preparation, `verbs` open what does not end in a weight."""

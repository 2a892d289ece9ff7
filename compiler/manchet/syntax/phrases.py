"""The closed phrases of the language: which words, in which kind of line, are which token of the grammar.

Each table is a text of `TOKEN: phrase, phrase = canonical, …` lines. A phrase after `=` is what the one before it is
read as: both Englishes are read, one is kept.
"""

from __future__ import annotations

from manchet.records import NamedTuple


class Phrase(NamedTuple):
    """`rest` are the words after the first; `token` is a terminal of the grammar, `canonical` the words kept."""

    rest: tuple[str, ...]
    token: str
    canonical: str


Phrases = dict[str, tuple[Phrase, ...]]


def phrases(*tables: str) -> Phrases:
    """The phrases of some tables by their first word, longest first."""
    found: dict[str, list[Phrase]] = {}
    for table in tables:
        for row in table.strip().splitlines():
            token, _, listed = row.partition(":")
            for item in listed.split(","):
                written, _, canonical = item.partition("=")
                words = written.split()
                kept = canonical.strip() or " ".join(words)
                found.setdefault(words[0], []).append(Phrase(tuple(words[1:]), token.strip(), kept))
    return {word: tuple(sorted(group, key=lambda p: -len(p.rest))) for word, group in found.items()}


_BASES = """
BASIS: of all flour = all flour, of what is soaked = what is soaked, of the dough = the dough
"""

SHARE = phrases("""
_WITH: with
_OF_ALL_FLOUR: of all flour
""")

SWAP = phrases("""
_FOR: for
_WITH: with
_OF_ALL_FLOUR: of all flour
""")

MAKES = phrases("""
_AT: at
_IN: in
STATE: dough, baked
""")

MAKES_AHEAD = phrases("""
_AT: at
_IN: in
_AT_LEAST: at least
STATE: raw, ready, dough, baked
""")

SOLD = phrases("_OLD: old")
FROM = phrases("_FLOUR: flour, of flour")
STATUS = phrases("_BY: by")
ALLOW = phrases("_BECAUSE: because")

AND = phrases("_AND: and")
NET = phrases("_NET: net")
LISTED = phrases("_IN: in")
SELLS = phrases("""
PER: each, apiece = each, a piece = each
_FOR: for
_TAX: tax
_IN_IT: in it
_IN_THE_PRICE: in the price
""")
CONTACT = phrases("""
_AND: and
_BECAUSE: because
""")

TAIL = phrases(
    _BASES,
    """
_AT: at
BOOKING: counted apart = apart, counted as flour = flour, not counted as flour = no flour, to taste = taste, optional
ASKED: as the flour asks = asked
_COUNTED_AS: counted as
""",
)
LAID = phrases("""
_AT: at
PER: each, apiece = each, a piece = each, in all = all
BOOKING: to taste = taste, optional
""")
AT = phrases("_AT: at")

LIST = phrases(
    _BASES,
    """
_AND: and
_AT: at
_AS_NEEDED: as needed
_UP_TO: up to
_ADDITIONS: additions, addition
""",
)
KEEP = phrases("_AS: as")

CLAUSES = phrases("""
_AT: at
PER: each, apiece = each, a piece = each, in all = all, a side = side
SPOT: floor, air, top, bottom, fan
RAMP: falling to = falling, rising to = rising
_TO: to
_CORE: core, internal temperature, internal
_BELOW_THE_RIM: below the rim, under the rim
_TO_PH: to ph
_TIMES_VOLUME: times its volume
_MAY_WAIT: may wait
PROSE: until, if late, why, note, picture
PREPOSITION: in, on, into = in, onto = on, under, over = on
_AS: as
MANNER: slow, fast, covered, uncovered, round, long, oval, flat, seam up, seam down, in three, in four, by hand
MANNER: hands-on, hands on = hands-on, waiting, optional
_SPEED: speed
BY_FIRE: beside the fire, by the fire = beside the fire, next to the fire = beside the fire, at the mouth, in the mouth = at the mouth
_HUMIDITY: humidity, relative humidity = humidity, rel humidity = humidity, rh = humidity
_STEAM: steam, with steam
VENT: vent open = open, vent closed = closed, damper open = open, damper closed = closed, vents open = open
_AFTER: after
LID: lid on = on, lid off = off
_TURN_AFTER: turn after
ONE_WORK: with a fold = fold, with one fold = fold, with a turn = turn, with one turn = turn, with a stir = stir
ONE_WORK: with one stir = stir
WORK: folds = fold, fold, turns = turn, turn, stirs = stir, stir
_EVERY: every
_AT_A_TIME: at a time
_LOSES: loses
_TAKES_UP: takes up
_WITHIN: within
ONTO: with, tins with = tins, trays with = trays, pans with = tins, sheet pans with = trays, tin with = tins
ONTO: tray with = trays, pan with = tins
""")

SETTINGS = phrases("""
_HUMIDITY: humidity, relative humidity = humidity, rel humidity = humidity, rh = humidity
_AT: at
_IN: in
_FOR: for
_ON: on
_OR: or
_BECAUSE: because
_A_MINUTE: a minute
_DOUGH: dough
READINGS: in the sum = sum, of the dough = dough
""")

PRICE = phrases("""
_FOR: for
_ON: on
_FROM: from
""")
MONEY = phrases("MONEY_PER: an hour, a firing, a fire = a firing")
TAX = phrases("_IN_THE_PRICE: in the price")
TRIMMING = phrases("_IN_TRIMMING: in trimming")
LABELS = phrases("""
_ROLL: roll
_ACROSS: across
_DOWN: down
_ON: on
""")
PACKS_COUNTED = phrases("_PACKS: packs, pack")

EACH = phrases("PER: each, apiece = each, a piece = each")
PACKS = phrases("""
_AFTER: after
_AND: and
""")
MOUTH = phrases("""
_FROM: from
_UNTIL: until, to
_BEFORE_THE_FIRE_IS_OUT: before the fire is out
""")

_WHEN = """
WHICH: first, second
"""
DAYS = phrases("_AND: and")
LEAVES = phrases(
    _WHEN,
    """
_LEAVES: leaves
_WITH: with
_AND: and
""",
)
ALREADY = phrases(
    _WHEN,
    """
_MADE: made
_AND: and
""",
)
SHIFT = phrases(
    _WHEN,
    """
_FROM: from
_TO: to, until
_BREAK: break
""",
)
ABOUT_A_THING = phrases(
    _WHEN,
    """
_FIRES: fire, fires
_LIT: lit
_TAKEN: taken
_FROM: from
_TO: to, until
""",
)
APPOINTMENT = phrases(_WHEN)
WANT = phrases(
    _WHEN,
    """
_FOR: for
SPARE: spare
ENDING: ready, packed, served
_TO: to, until
_OLD: old
""",
)

SIZES = phrases("""
_BY_SIGN: x, × = x, by = x
_AN_HOUR: an hour
_FROM: from
""")

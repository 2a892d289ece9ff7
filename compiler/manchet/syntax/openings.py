"""The words that open a line, a row each: where they may stand, how the rest of the line is read, what may stand under it.

Which rule of the grammar reads a line: its first words decide, then what it ends in, then its verb, then it is a name. Where a
line stands decides which first words count: `flour` opens a setting in a kitchen and an ingredient in a dough. Verbs, stage
words and a kitchen's things have tables of their own in `vocabulary`; here they are put together with all other words.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.records import NamedTuple
from manchet.syntax import phrases as p
from manchet.syntax.phrases import Phrases
from manchet.syntax.tokens import Raw
from manchet.syntax.vocabulary import STAGES, THINGS, VERBS

# ---- where a line may stand ------------------------------------------------------------------------


class Context(NamedTuple):
    """What the lines under a line are. `skipped` is none of these: what stands there is not read."""

    name: str
    weighs: bool = False
    """A line that ends in a weight weighs an ingredient."""
    works: bool = False
    """Any other line may begin with a verb."""
    names: bool = False
    """A line may be a name alone; what it lacks is said where names are looked up."""
    one_line: bool = False
    """They belong to one line (its clauses), not to a heading."""


CONTEXTS = (
    Context("top"),
    Context("formula"),
    Context("variant"),
    Context("preparation", weighs=True, works=True, names=True),
    Context("stage", weighs=True, works=True, names=True),
    Context("overall", weighs=True),
    Context("composition", weighs=True, names=True),
    Context("material", one_line=True),
    Context("step", one_line=True),
    Context("larder"),
    Context("entry"),
    Context("kitchen"),
    Context("thing"),
)

WEIGHS = frozenset(context.name for context in CONTEXTS if context.weighs)
WORKS = frozenset(context.name for context in CONTEXTS if context.works)
NAMES = frozenset(context.name for context in CONTEXTS if context.names)
ONE_LINE = frozenset(context.name for context in CONTEXTS if context.one_line) | {"skipped"}

UNLESS_WEIGHED = "verbs"
"""Where a line `works` and does not end in a weight: `return` may begin the name of an ingredient."""

HEAD = ("formula", "variant")
WORK = ("stage", "preparation")
MADE = (*HEAD, *WORK)
ANYWHERE = (*MADE, "overall", "composition", "material", "step", "entry", "kitchen", "thing")

# ---- how the rest of a line is read ----------------------------------------------------------------


class Reading(NamedTuple):
    """How the rest of a line is read: by which start rule, with which closed phrases, and what is special about it.

    `mode` is "line" (the rest is one name), "list" (quotes protect names), "step" (names after in, on, with, as),
    or "" (none of these).
    """

    rule: str
    phrases: Phrases
    mode: str = ""


STAGE = Reading("stage", p.SHARE, "stage")
STEP = Reading("step", p.CLAUSES, "step")
CLAUSE_LINE = Reading("clause_line", p.CLAUSES, "step")
MATERIAL = Reading("material", p.TAIL, "material")
TAIL = Reading("tail", p.TAIL)
BARE_NAME = Reading("bare_name", {}, "line")
ENTRY_NAME = Reading("entry_name", {}, "line")
SETTING = Reading("setting", p.SETTINGS, "dated")
NAME_SETTING = Reading("setting", {}, "line")
NAMES_SETTING = Reading("setting", {}, "list")
SIZE_SETTING = Reading("setting", p.SIZES)
BLOCK = Reading("block", {}, "line")
RESERVED = Reading("reserved", {}, "line")
ALLOW = Reading("allow", p.ALLOW)
KEEP = Reading("keep", p.KEEP, "list")


class Line(NamedTuple):
    """Words that open a line."""

    words: str
    token: str
    """The terminal of the grammar that they are."""
    reading: Reading
    under: tuple[str, ...]
    """The contexts in which they open a line."""
    opens: str = "step"
    """The context of the lines one step deeper."""
    example: str = ""
    """Of a larder's or a kitchen's line: offered where it cannot be read."""
    also: tuple[str, ...] = ()
    """Read as the same."""
    kept: str = ""
    """What they are called in the tree, if not so."""

    @property
    def called(self) -> str:
        return self.kept or self.words


LINES = (
    # ---- blocks
    Line("formula", "BLOCK", BLOCK, ("top",), "formula"),
    Line("preparation", "BLOCK", BLOCK, ("top",), "preparation"),
    Line("larder", "BLOCK", BLOCK, ("top",), "larder"),
    Line("kitchen", "BLOCK", BLOCK, ("top",), "kitchen"),
    Line("assembly", "RESERVED", RESERVED, ("top",), "skipped"),
    Line("plan", "RESERVED", RESERVED, ("top",), "skipped"),
    Line("bake log", "RESERVED", RESERVED, ("top",), "skipped"),
    # ---- the head
    Line("about", "_ABOUT", Reading("about", {}), (*MADE, "kitchen")),
    Line("kind", "_KIND", Reading("kind", {}, "line"), (*HEAD, "preparation")),
    Line("makes", "_MAKES", Reading("makes", p.MAKES), (*HEAD, "preparation")),
    Line("from", "_FROM", Reading("from_flour", p.FROM), HEAD),
    Line("dough loss", "LOSS", Reading("loss", {}), HEAD, kept="dough"),
    Line("bake loss", "LOSS", Reading("loss", {}), HEAD, kept="bake"),
    Line("percentages of dough flour", "_PERCENTAGES", Reading("percentages", {}), HEAD),
    Line("status", "_STATUS", Reading("status", p.STATUS, "dated"), (*HEAD, "preparation")),
    Line("allow", "ALLOW", ALLOW, (*MADE, "kitchen")),
    Line("always allow", "ALLOW", ALLOW, (*MADE, "kitchen")),
    Line("overall", "_OVERALL", Reading("overall", {}), HEAD, "overall"),
    Line("variant", "_VARIANT", Reading("variant", {}, "line"), ("formula",), "variant"),
    Line("swap", "_SWAP", Reading("swap", p.SWAP, "stage"), ("variant",)),
    Line("without", "_WITHOUT", Reading("without", {}, "line"), ("variant",)),
    # ---- materials
    Line("all of the", "_ALL_OF_THE", Reading("take_all", p.AT), WORK, "material", also=("all the",)),
    Line("what is left of the", "_WHAT_IS_LEFT_OF_THE", Reading("take_left", p.AT), WORK, "material",
         also=("what's left of the",)),
    Line("everything else", "_EVERYTHING_ELSE", Reading("everything_else", p.AT), WORK, "material"),
    Line("hold back", "_HOLD_BACK", Reading("hold_back", p.LIST, "list"), WORK),
    Line("add", "_ADD", Reading("add", p.LIST, "list"), WORK),
    Line("keep", "_KEEP", KEEP, WORK),
    Line("keep what is left as", "_KEEP_LEFT_AS", KEEP, WORK),
    Line("keep enough as", "_KEEP_ENOUGH_AS", KEEP, WORK),
    Line("discard what is left", "_DISCARD_LEFT", Reading("discard", {}), WORK),
    Line("top up with", "_TOP_UP_WITH", Reading("top_up", {}, "line"), WORK),
    Line("lock in", "_LOCK_IN", Reading("lock_in", {}, "line"), WORK),
    Line("made for each mix", "_MADE_FOR_EACH_MIX", Reading("each_mix", {}), WORK),
    Line("start from nothing", "_START_FROM_NOTHING", Reading("from_nothing", {}), WORK),
    Line("good for", "_GOOD_FOR", Reading("good_for", p.AT), WORK),
    Line("for the", "_FOR_THE", Reading("branch", {}, "line"), WORK, "stage"),
    Line("return", "_RETURN", Reading("give_back", {}, "line"), (UNLESS_WEIGHED,)),
    # ---- clauses
    Line("until", "PROSE", CLAUSE_LINE, ("material", "step")),
    Line("if late", "PROSE", CLAUSE_LINE, ("material", "step")),
    Line("why", "PROSE", CLAUSE_LINE, ("material", "step")),
    # ---- a larder's entries
    Line("class", "NAME_KEY", NAME_SETTING, ("entry",), example="class rye flour"),
    Line("also called", "NAMES_KEY", NAMES_SETTING, ("entry",), example="also called rye 1150, medium rye"),
    Line("per", "COMPOSITION_KEY", SETTING, ("entry",), "composition", "per 100 g", kept="per 100 g"),
    Line("made of", "FLAG", SETTING, ("entry",), "composition", "made of"),
    Line("gives its water", "FLAG", SETTING, ("entry",)),
    Line("counts as flour", "FLAG", SETTING, ("entry",)),
    Line("not counted as flour", "FLAG", SETTING, ("entry",)),
    Line("no allergens", "FLAG", SETTING, ("entry",)),
    Line("allergens", "NAMES_KEY", NAMES_SETTING, ("entry",), example="allergens rye, gluten"),
    Line("may contain", "NAMES_KEY", NAMES_SETTING, ("entry",), example="may contain nuts"),
    Line("density", "DENSITY_KEY", SETTING, ("entry",), example="density 0.55 kg/l"),
    Line("whole", "MASS_KEY", SETTING, ("entry",), example="whole 50 g"),
    Line("kept at", "TEMPERATURE_KEY", SETTING, ("entry",), example="kept at 4 C"),
    Line("good for", "SHELF_KEY", SETTING, ("entry",), example="good for 5 d at 4 C"),
    Line("price", "PRICE_KEY", SETTING, ("entry",), example="price 21.40 EUR for 25 kg on 2026-09-14"),
    Line("source", "TEXT_KEY", SETTING, ("entry",), example='source "mill\'s own sheet, August 2026"'),
    Line("takes water", "PERCENT_KEY", SETTING, ("entry",), example="takes water 68%"),
    Line("could be", "QUESTION_KEY", Reading("could_be", p.SETTINGS, "list"), ("entry",)),
    # ---- a kitchen's own lines
    Line("air", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "air 22 C"),
    Line("flour", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "flour 20 C"),
    Line("tap", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "tap 12 C"),
    Line("hands", "NUMBER_KEY", SETTING, ("kitchen",), "thing", "hands 2"),
    Line("measures", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "measures US"),
    Line("words", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "words American"),
    Line("yeast", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "yeast fresh"),
    Line("yeast factors", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "yeast factors Hamelman"),
    # ---- what a thing of the kitchen is like
    Line("takes", "CAPACITY_KEY", SETTING, ("thing",), example="takes 6-45 kg dough"),
    Line("stiff dough up to", "MASS_KEY", SETTING, ("thing",), example="stiff dough up to 27 kg"),
    Line("slow", "PACE_KEY", SETTING, ("thing",), example="slow 110 turns a minute"),
    Line("fast", "PACE_KEY", SETTING, ("thing",), example="fast 210 turns a minute"),
    Line("warms", "WARMS_KEY", SETTING, ("thing",), example="warms 11 C in 8 min slow, 4 min fast"),
    Line("hottest", "TEMPERATURE_KEY", SETTING, ("thing",), example="hottest 330 C"),
    Line("keeps", "TEMPERATURE_KEY", SETTING, ("thing",), example="keeps 4 C"),
    Line("heat", "NAMES_KEY", NAMES_SETTING, ("thing",), example="heat wood, falling"),
    Line("holds", "COUNT_KEY", SETTING, ("thing",), example="holds 24 loaves, or 6 rounds"),
    Line("recovers", "TIME_KEY", SETTING, ("thing",), example="recovers 4 min"),
    Line("heats in", "TIME_KEY", SETTING, ("thing",), example="heats in 90 min"),
    Line("volume", "VOLUME_KEY", SETTING, ("thing",), example="volume 1900 ml"),
    Line("count", "NUMBER_KEY", SETTING, ("thing",), example="count 24"),
    Line("reads", "MASS_KEY", SETTING, ("thing",), example="reads 5 g"),
    Line("up to", "MASS_KEY", SETTING, ("thing",), example="up to 30 kg"),
    Line("holds water", "MASS_KEY", SETTING, ("thing",), example="holds water 1900 g"),
    Line("each load takes", "LOAD_KEY", SETTING, ("thing",), example="each load takes 15 C for 20 kg dough"),
    Line("inside", "SIZE_KEY", SIZE_SETTING, ("thing",), example="inside 230 x 110 x 95 mm"),
    Line("top", "SIZE_KEY", SIZE_SETTING, ("thing",), example="top 229 x 114 mm"),
    Line("bottom", "SIZE_KEY", SIZE_SETTING, ("thing",), example="bottom 210 x 96 mm"),
    Line("round", "SIZE_KEY", SIZE_SETTING, ("thing",), example="round 200 mm"),
    Line("deep", "SIZE_KEY", SIZE_SETTING, ("thing",), example="deep 80 mm"),
    Line("floor", "SIZE_KEY", SIZE_SETTING, ("thing",), example="floor 120 x 90 cm"),
    Line("round floor", "SIZE_KEY", SIZE_SETTING, ("thing",), example="round floor 110 cm"),
    Line("door", "SIZE_KEY", SIZE_SETTING, ("thing",), example="door 45 cm"),
    Line("falls", "FALLS_KEY", SIZE_SETTING, ("thing",), example="falls 12 C an hour from 250 C"),
    Line("steam by", "NAME_KEY", NAME_SETTING, ("thing",), example="steam by pan", also=("steam",), kept="steam"),
    # ---- words for people
    Line("note", "PROSE", CLAUSE_LINE, ANYWHERE),
    Line("picture", "PROSE", CLAUSE_LINE, ANYWHERE),
)  # fmt: skip

BLOCKS = tuple(line.words for line in LINES if line.token == "BLOCK")
FORMULAS = frozenset({"formula", "preparation"})
"""Blocks that something is made of."""
HOUSE = frozenset({"larder", "kitchen"})
"""Blocks that the others draw on."""


def example_of(words: str) -> str:
    """A line of a larder or a kitchen that begins with these words; "" if none does."""
    return next((line.example for line in LINES if line.example and words in (line.words, *line.also)), "")


# ---- put together --------------------------------------------------------------------------------

Openings = dict[str, tuple[tuple[tuple[str, ...], Line], ...]]
"""By the first word: the words after it, and the row of the vocabulary that they open; the longest first."""


def lines() -> Iterator[Line]:
    """Every line that words of the language open: those of the other tables too."""
    yield from LINES
    for stage in STAGES:
        yield Line(stage.word, "STAGE", STAGE, ("top", *HEAD), "stage")
    for thing in THINGS:
        yield Line(thing.word, "THING", NAME_SETTING, ("kitchen",), "thing", also=thing.also)
    for verb in VERBS:
        if verb.opens_with:
            yield Line(f"{verb.word} with", "VERB", STEP, WORK, kept=verb.word)
        if not verb.moves:
            yield Line(verb.word, "VERB", STEP, (UNLESS_WEIGHED, "kitchen"), also=verb.also)


def _openings() -> dict[str, Openings]:
    found: dict[str, Openings] = {name: {} for name in (*(context.name for context in CONTEXTS), UNLESS_WEIGHED)}
    for line in lines():
        for words in (line.words, *line.also):
            first, *rest = words.split()
            opening = tuple(rest), line
            for context in line.under:
                found[context][first] = (*found[context].get(first, ()), opening)
    for openings in found.values():
        for word, group in openings.items():
            if len(group) > 1:
                openings[word] = tuple(sorted(group, key=lambda opening: -len(opening[0])))
    return found


OPENINGS = _openings()
"""What opens a line in each context. In a stage and a preparation, `verbs` open what does not end in a weight."""


def opening_of(openings: Openings, raws: list[Raw]) -> tuple[Line, int] | None:
    """The row that a line begins with and how many pieces its words take, the longest first; or None."""
    group = openings.get(raws[0].text)
    if group is None or raws[0].kind != "WORD":
        return None
    for rest, line in group:
        size = len(rest) + 1
        if size == 1:
            return line, 1
        if len(raws) >= size and all(raw.text == word for raw, word in zip(raws[1:size], rest, strict=True)):
            return line, size
    return None

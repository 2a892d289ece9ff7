"""The words that open a line, a row each: where they may stand, how the rest of the line is read, what may stand under it.

Which rule of the grammar reads a line: its first words decide, then what it ends in, then its verb, then it is a name. Where a
line stands decides which first words count: `flour` opens a setting in a kitchen and an ingredient in a dough. Verbs, stage
words and a kitchen's things have tables of their own in `vocabulary`; here they are put together with all other words.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.records import NamedTuple
from manchet.syntax import phrases as p
from manchet.syntax.block import BLOCKS
from manchet.syntax.contexts import (
    ANYWHERE as ANYWHERE,
    CONTEXTS as CONTEXTS,
    HEAD as HEAD,
    MADE as MADE,
    NAMES as NAMES,
    OF_A_DAY as OF_A_DAY,
    ONE_LINE as ONE_LINE,
    PER_PIECE as PER_PIECE,
    SOLD as SOLD,
    UNLESS_COUNTED as UNLESS_COUNTED,
    UNLESS_WEIGHED as UNLESS_WEIGHED,
    WEIGHS as WEIGHS,
    WORK as WORK,
    WORKS as WORKS,
)
from manchet.syntax.phrases import Phrases
from manchet.syntax.things import THINGS
from manchet.syntax.tokens import RawToken
from manchet.syntax.vocabulary import STAGES, VERBS

# ---- how the rest of a line is read ----------------------------------------------------------------


class RestOfLine(NamedTuple):
    """How the rest of a line is read: by which start rule, with which closed phrases, and what is special about it.

    `mode` is "line" (the rest is one name), "list" (quotes protect names), "step" (names after in, on, with, as),
    "plan" (clock times, days and dates), "days" (days of the week by themselves), or "" (none of these).
    """

    rule: str
    phrases: Phrases
    mode: str = ""


STAGE = RestOfLine("stage", p.SHARE, "stage")
STEP = RestOfLine("step", p.CLAUSES, "step")
CLAUSE_LINE = RestOfLine("clause_line", p.CLAUSES, "step")
MATERIAL = RestOfLine("material", p.TAIL, "material")
LAID = RestOfLine("laid", p.LAID, "material")
TAIL = RestOfLine("tail", p.TAIL)
BARE_NAME = RestOfLine("bare_name", {}, "line")
ENTRY_NAME = RestOfLine("entry_name", {}, "line")
SETTING = RestOfLine("setting", p.SETTINGS, "dated")
NAME_SETTING = RestOfLine("setting", {}, "line")
NAMES_SETTING = RestOfLine("setting", {}, "list")
SIZE_SETTING = RestOfLine("setting", p.SIZES)
EACH_SETTING = RestOfLine("setting", p.EACH)
PACKS_SETTING = RestOfLine("setting", p.PACKS)
MOUTH_SETTING = RestOfLine("setting", p.MOUTH)
SALE = RestOfLine("sale", {})
DATE_MARK = RestOfLine("sale", p.AT)
CONTACT = RestOfLine("contact", p.CONTACT, "list")
LISTED = RestOfLine("sale", p.LISTED)
COUNTED = RestOfLine("counted", p.PACKS_COUNTED)
BLOCK = RestOfLine("block", {}, "line")
RESERVED = RestOfLine("reserved", {}, "line")
ALLOW = RestOfLine("allow", p.ALLOW)
KEEP = RestOfLine("keep", p.KEEP, "list")
WANT = RestOfLine("want", p.WANT, "plan")
WANT_LINE = RestOfLine("want_line", p.WANT, "plan")
OF_A_THING = RestOfLine("of_a_thing", p.ABOUT_A_THING, "plan")
APPOINTMENT = RestOfLine("appointment", p.APPOINTMENT, "plan")


class OpeningLine(NamedTuple):
    """Words that open a line."""

    words: str
    token: str
    """The terminal of the grammar that they are."""
    reading: RestOfLine
    under: tuple[str, ...]
    """The contexts in which they open a line."""
    opens: str = "step"
    """The context of the lines one step deeper."""
    example: str = ""
    """Of a larder's or a kitchen's line: offered where it cannot be read."""
    also: tuple[str, ...] = ()
    """Read as the same."""
    was: tuple[str, ...] = ()
    """How it was written in earlier files: read as the same, with a note that says the words of now."""
    kept: str = ""
    """What they are called in the tree, if not so."""
    american: str = ""
    """Which of `also` an American house writes."""
    quoted: bool = False
    """They open a line only where quoted words follow: `store` alone is a name like another."""

    @property
    def called(self) -> str:
        return self.kept or self.words


LINES = (
    # ---- blocks
    *(OpeningLine(word, "BLOCK", BLOCK, ("top",), word) for word in BLOCKS),
    OpeningLine("stock counted", "_STOCK_COUNTED", RestOfLine("stock", {}, "dated"), ("top",), "stock"),
    OpeningLine("bake log", "RESERVED", RESERVED, ("top",), "skipped"),
    # ---- the head
    OpeningLine("about", "_ABOUT", RestOfLine("about", {}), (*MADE, "kitchen")),
    OpeningLine("kind", "_KIND", RestOfLine("kind", {}, "line"), (*HEAD, "preparation")),
    OpeningLine("makes", "_MAKES", RestOfLine("makes", p.MAKES), HEAD),
    OpeningLine("makes", "_MAKES", RestOfLine("makes", p.MAKES_AHEAD), ("preparation",)),
    OpeningLine("makes", "_MAKES", RestOfLine("makes_dish", {}), ("assembly",)),
    OpeningLine("from", "_FROM", RestOfLine("from_flour", p.FROM), HEAD),
    OpeningLine("sold", "_SOLD", RestOfLine("sold", p.SOLD), HEAD),
    OpeningLine("dough loss", "LOSS", RestOfLine("loss", {}), HEAD, kept="dough"),
    OpeningLine("bake loss", "LOSS", RestOfLine("loss", {}), HEAD, kept="bake"),
    OpeningLine("written on dough flour", "_ON_DOUGH_FLOUR", RestOfLine("on_dough_flour", {}), HEAD, was=("percentages of dough flour",)),
    OpeningLine("status", "_STATUS", RestOfLine("status", p.STATUS, "dated"), (*HEAD, "preparation", "assembly")),
    OpeningLine("allow", "ALLOW", ALLOW, (*MADE, "kitchen")),
    OpeningLine("always allow", "ALLOW", ALLOW, (*MADE, "kitchen")),
    OpeningLine("overall", "_OVERALL", RestOfLine("overall", {}), HEAD, "overall"),
    OpeningLine("variant", "_VARIANT", RestOfLine("variant", {}, "line"), ("formula",), "variant"),
    OpeningLine("swap", "_SWAP", RestOfLine("swap", p.SWAP, "stage"), ("variant",)),
    OpeningLine("without", "_WITHOUT", RestOfLine("without", {}, "line"), ("variant",)),
    # ---- how it is sold
    OpeningLine("sold loose", "SALE_FLAG", SALE, SOLD, example="sold loose"),
    OpeningLine("sold prepacked", "SALE_FLAG", SALE, SOLD, example="sold prepacked"),
    OpeningLine("sold prepacked for direct sale", "SALE_FLAG", SALE, SOLD, example="sold prepacked for direct sale"),
    OpeningLine("sold prepacked at", "NET_KEY", RestOfLine("sale", p.NET), SOLD, example="sold prepacked at 740 g net"),
    OpeningLine("called", "SAID_KEY", SALE, HEAD, example='called "Rye and wheat bread"'),
    OpeningLine("store", "SAID_KEY", SALE, HEAD, example='store "cool and dry"'),
    OpeningLine("opened", "SAID_KEY", SALE, HEAD, example='opened "within 3 d"'),
    *(OpeningLine(word, "SAID_KEY", SALE, (UNLESS_WEIGHED,), quoted=True, example=f'{word} "…"') for word in ("called", "store", "opened")),
    OpeningLine("sells at", "SELLS_KEY", RestOfLine("sale", p.SELLS), SOLD, example="sells at 7.20 EUR each"),
    OpeningLine("best before", "DATE_MARK", DATE_MARK, SOLD, example="best before 6 d"),
    OpeningLine("use by", "DATE_MARK", DATE_MARK, SOLD, example="use by 2 d at 5 C"),
    OpeningLine("says how much of", "SAYS_KEY", RestOfLine("sale", p.AND, "list"), (*HEAD, UNLESS_WEIGHED), example="says how much of sunflower seeds, rye"),
    OpeningLine("listed as", "LISTED_KEY", LISTED, (*SOLD, "entry"), example='listed as "wheat flour"'),
    OpeningLine("may contain", "CONTACT_KEY", CONTACT, (*HEAD, UNLESS_WEIGHED, "kitchen"), example='may contain hazelnut because "same mixer"'),
    OpeningLine("kept apart from", "CONTACT_KEY", CONTACT, (*HEAD, UNLESS_WEIGHED, "kitchen"), example='kept apart from sesame because "own bench, first in the oven"'),
    OpeningLine("label approved", "APPROVED_KEY", RestOfLine("sale", p.STATUS, "dated"), SOLD, example="label approved 2026-11-20 by Ada as cdvgjptn"),
    # ---- materials
    OpeningLine("all of the", "_ALL_OF_THE", RestOfLine("take_all", p.AT), WORK, "material", also=("all the",)),
    OpeningLine("what is left of the", "_WHAT_IS_LEFT_OF_THE", RestOfLine("take_left", p.AT), WORK, "material",
         also=("what's left of the",)),
    OpeningLine("everything else", "_EVERYTHING_ELSE", RestOfLine("everything_else", p.AT), WORK, "material"),
    OpeningLine("hold back", "_HOLD_BACK", RestOfLine("hold_back", p.LIST, "list"), WORK),
    OpeningLine("add", "_ADD", RestOfLine("add", p.LIST, "list"), WORK),
    OpeningLine("keep", "_KEEP", KEEP, WORK),
    OpeningLine("keep what is left as", "_KEEP_LEFT_AS", KEEP, WORK),
    OpeningLine("keep enough as", "_KEEP_ENOUGH_AS", KEEP, WORK),
    OpeningLine("discard what is left", "_DISCARD_LEFT", RestOfLine("discard", {}), WORK),
    OpeningLine("top up with", "_TOP_UP_WITH", RestOfLine("top_up", {}, "line"), WORK),
    OpeningLine("lock in", "_LOCK_IN", RestOfLine("lock_in", {}, "line"), WORK),
    OpeningLine("pour off", "_POUR_OFF", RestOfLine("pour_off", {}, "list"), WORK),
    OpeningLine("made for each mix", "_MADE_FOR_EACH_MIX", RestOfLine("each_mix", {}), WORK),
    OpeningLine("start from nothing", "_START_FROM_NOTHING", RestOfLine("from_nothing", {}), WORK),
    OpeningLine("good for", "_GOOD_FOR", RestOfLine("good_for", p.AT), WORK),
    OpeningLine("never under", "_NEVER_UNDER", RestOfLine("never_under", {}), ("preparation",)),
    OpeningLine("for the", "_FOR_THE", RestOfLine("branch", {}, "line"), WORK, "stage"),
    OpeningLine("return", "_RETURN", RestOfLine("give_back", {}, "line"), (UNLESS_WEIGHED,)),
    # ---- clauses
    OpeningLine("until", "PROSE", CLAUSE_LINE, ("material", "step")),
    OpeningLine("if late", "PROSE", CLAUSE_LINE, ("material", "step")),
    OpeningLine("why", "PROSE", CLAUSE_LINE, ("material", "step")),
    # ---- a larder's entries
    OpeningLine("class", "NAME_KEY", NAME_SETTING, ("entry",), example="class rye flour"),
    OpeningLine("also called", "NAMES_KEY", NAMES_SETTING, ("entry",), example="also called rye 1150, medium rye"),
    OpeningLine("per", "COMPOSITION_KEY", SETTING, ("entry",), "composition", "per 100 g", kept="per 100 g"),
    OpeningLine("made of", "FLAG", SETTING, ("entry",), "composition", "made of"),
    OpeningLine("gives its water", "FLAG", SETTING, ("entry",)),
    OpeningLine("counts as flour", "FLAG", SETTING, ("entry",)),
    OpeningLine("not counted as flour", "FLAG", SETTING, ("entry",)),
    OpeningLine("no allergens", "FLAG", SETTING, ("entry",)),
    OpeningLine("allergens", "NAMES_KEY", NAMES_SETTING, ("entry",), example="allergens rye, gluten"),
    OpeningLine("may contain", "NAMES_KEY", NAMES_SETTING, ("entry",), example="may contain nuts"),
    OpeningLine("density", "DENSITY_KEY", SETTING, ("entry",), example="density 0.55 kg/l"),
    OpeningLine("whole", "MASS_KEY", SETTING, ("entry",), example="whole 50 g"),
    OpeningLine("kept at", "TEMPERATURE_KEY", SETTING, ("entry",), example="kept at 4 C"),
    OpeningLine("good for", "SHELF_KEY", SETTING, ("entry",), example="good for 5 d at 4 C"),
    OpeningLine("protein by", "NUMBER_KEY", SETTING, ("entry",), example="protein by 5.7"),
    OpeningLine("ask", "ASK_KEY", RestOfLine("ask", p.CONTACT, "list"), ("entry",), example='ask egg because "lysozyme in some"'),
    OpeningLine("no", "NAMES_KEY", NAMES_SETTING, ("entry",), example="no sulphites"),
    OpeningLine("sulphites", "CONTENT_KEY", SETTING, ("entry",), example="sulphites 2000 mg/kg", also=("sulfites",)),
    OpeningLine("from", "NAME_KEY", NAME_SETTING, ("entry",), example="from soya"),
    OpeningLine("fresh", "FLAG", SETTING, ("entry",)),
    OpeningLine("dried", "FLAG", SETTING, ("entry",)),
    OpeningLine("pasteurised", "FLAG", SETTING, ("entry",), also=("pasteurized",), american="pasteurized"),
    OpeningLine("heat-treated", "FLAG", SETTING, ("entry",), also=("heat treated",)),
    OpeningLine("ready to eat", "FLAG", SETTING, ("entry",), also=("ready-to-eat",)),
    OpeningLine("ph", "NUMBER_KEY", SETTING, ("entry",), example="pH 3.8", kept="pH"),
    OpeningLine("water activity", "NUMBER_KEY", SETTING, ("entry",), example="water activity 0.80"),
    OpeningLine("nothing else known", "FLAG", SETTING, ("entry",)),
    OpeningLine("price", "PRICE_KEY", RestOfLine("setting", p.PRICE, "dated"), ("entry",),
         example="price 21.40 EUR for 25 kg on 2026-09-14 from Harbour Mill"),
    OpeningLine("pack", "PACK_KEY", SETTING, ("entry",), example="pack 25 kg"),
    OpeningLine("loses", "TRIMMING_KEY", RestOfLine("setting", p.TRIMMING), ("entry",), example="loses 20% in trimming"),
    OpeningLine("source", "TEXT_KEY", SETTING, ("entry",), example='source "mill\'s own sheet, August 2026"'),
    OpeningLine("absorbs water", "PERCENT_KEY", SETTING, ("entry",), example="absorbs water 68%", was=("takes water",)),
    OpeningLine("could be", "QUESTION_KEY", RestOfLine("could_be", p.SETTINGS, "list"), ("entry",)),
    # ---- a kitchen's own lines
    OpeningLine("air", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "air 22 C"),
    OpeningLine("flour", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "flour 20 C"),
    OpeningLine("tap", "TEMPERATURE_KEY", SETTING, ("kitchen",), "thing", "tap 12 C"),
    OpeningLine("hands", "NUMBER_KEY", SETTING, ("kitchen",), "thing", "hands 2"),
    OpeningLine("measures", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "measures US"),
    OpeningLine("words", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "words American"),
    OpeningLine("yeast", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "yeast fresh"),
    OpeningLine("zone", "NAME_KEY", NAME_SETTING, ("kitchen",), "thing", "zone Europe/Lisbon"),
    OpeningLine("yeast factors", "FACTORS_KEY", SETTING, ("kitchen",), "thing", "yeast factors 0.33 0.40"),
    OpeningLine("weigh", "EACH_KEY", EACH_SETTING, ("kitchen",), "thing", "weigh 25 s each"),
    OpeningLine("load", "EACH_KEY", EACH_SETTING, ("kitchen",), "thing", "load 10 s each"),
    OpeningLine("take out", "EACH_KEY", EACH_SETTING, ("kitchen",), "thing", "take out 5 s each"),
    OpeningLine("packs", "PACKS_KEY", PACKS_SETTING, ("kitchen",), "thing", "packs loaves after 2 h"),
    OpeningLine("busy", "PERCENT_KEY", SETTING, ("kitchen",), "thing", "busy 20%"),
    OpeningLine("sells in", "NAMES_KEY", NAMES_SETTING, ("kitchen",), "thing", "sells in EU"),
    OpeningLine("name and address", "TEXT_KEY", SETTING, ("kitchen",), "thing", 'name and address "Saltpan Row, 3 Quay Lane, Port Avel"'),
    OpeningLine("also handles", "NAMES_KEY", NAMES_SETTING, ("kitchen",), "thing", "also handles mustard"),
    OpeningLine("work", "MONEY_KEY", RestOfLine("setting", p.MONEY), ("kitchen",), "thing", "work 24 EUR an hour"),
    OpeningLine("prices are old after", "TIME_KEY", SETTING, ("kitchen",), "thing", "prices are old after 90 d"),
    OpeningLine("tax", "TAX_KEY", RestOfLine("setting", p.TAX), ("kitchen",), "thing", "tax 10% in the price"),
    OpeningLine("margin", "PERCENT_KEY", SETTING, ("kitchen",), "thing", "margin 65%"),
    OpeningLine("labels", "LABELS_KEY", RestOfLine("setting", p.LABELS), ("kitchen",), "thing", "labels 62 mm roll"),
    # ---- what a thing of the kitchen is like
    OpeningLine("costs", "MONEY_KEY", RestOfLine("setting", p.MONEY), ("thing",), example="costs 14 EUR a firing"),
    OpeningLine("takes", "CAPACITY_KEY", SETTING, ("thing",), example="takes 6-45 kg dough"),
    OpeningLine("stiff dough up to", "MASS_KEY", SETTING, ("thing",), example="stiff dough up to 27 kg"),
    OpeningLine("slow", "PACE_KEY", SETTING, ("thing",), example="slow 110 turns a minute"),
    OpeningLine("fast", "PACE_KEY", SETTING, ("thing",), example="fast 210 turns a minute"),
    OpeningLine("warms", "WARMS_KEY", SETTING, ("thing",), example="warms 11 C in 8 min slow, 4 min fast"),
    OpeningLine("friction", "FRICTION_KEY", SETTING, ("thing",), example="friction 24 F in the sum"),
    OpeningLine("hottest", "TEMPERATURE_KEY", SETTING, ("thing",), example="hottest 330 C"),
    OpeningLine("keeps", "KEEPS_KEY", SETTING, ("thing",), example="keeps 4 C"),
    OpeningLine("heat", "NAMES_KEY", NAMES_SETTING, ("thing",), example="heat wood, falling"),
    OpeningLine("holds", "COUNT_KEY", SETTING, ("thing",), example="holds 24 loaves, or 6 rounds"),
    OpeningLine("recovers", "TIME_KEY", SETTING, ("thing",), example="recovers 4 min"),
    OpeningLine("heats in", "TIME_KEY", SETTING, ("thing",), example="heats in 90 min"),
    OpeningLine("decks", "NUMBER_KEY", SETTING, ("thing",), example="decks 2"),
    OpeningLine("loads within", "TIME_KEY", SETTING, ("thing",), example="loads within 6 min"),
    OpeningLine("climbs", "RATE_KEY", SETTING, ("thing",), example="climbs 2 C a minute"),
    OpeningLine("sinks", "RATE_KEY", SETTING, ("thing",), example="sinks 1 C a minute"),
    OpeningLine("cooks at the mouth", "MOUTH_KEY", MOUTH_SETTING, ("thing",),
         example="cooks at the mouth from 60 min until 5 min before the fire is out"),
    OpeningLine("wash", "TIME_KEY", SETTING, ("thing",), example="wash 6 min"),
    OpeningLine("wash after", "WASH_KEY", SETTING, ("thing",), example="wash after lye, gluten 15 min"),
    OpeningLine("volume", "VOLUME_KEY", SETTING, ("thing",), example="volume 1900 ml"),
    OpeningLine("count", "NUMBER_KEY", SETTING, ("thing",), example="count 24"),
    OpeningLine("lidded", "FLAG", SETTING, ("thing",)),
    OpeningLine("reads", "MASS_KEY", SETTING, ("thing",), example="reads 5 g"),
    OpeningLine("up to", "MASS_KEY", SETTING, ("thing",), example="up to 30 kg"),
    OpeningLine("holds water", "MASS_KEY", SETTING, ("thing",), example="holds water 1900 g"),
    OpeningLine("each load cools it", "LOAD_KEY", SETTING, ("thing",), example="each load cools it 15 C for 20 kg dough",
         was=("each load takes",)),
    OpeningLine("inside", "SIZE_KEY", SIZE_SETTING, ("thing",), example="inside 230 x 110 x 95 mm"),
    OpeningLine("top", "SIZE_KEY", SIZE_SETTING, ("thing",), example="top 229 x 114 mm"),
    OpeningLine("bottom", "SIZE_KEY", SIZE_SETTING, ("thing",), example="bottom 210 x 96 mm"),
    OpeningLine("round", "SIZE_KEY", SIZE_SETTING, ("thing",), example="round 200 mm"),
    OpeningLine("deep", "SIZE_KEY", SIZE_SETTING, ("thing",), example="deep 80 mm"),
    OpeningLine("floor", "SIZE_KEY", SIZE_SETTING, ("thing",), example="floor 120 x 90 cm"),
    OpeningLine("round floor", "SIZE_KEY", SIZE_SETTING, ("thing",), example="round floor 110 cm"),
    OpeningLine("door", "SIZE_KEY", SIZE_SETTING, ("thing",), example="door 45 cm"),
    OpeningLine("falls", "FALLS_KEY", SIZE_SETTING, ("thing",), example="falls 12 C an hour from 250 C"),
    OpeningLine("steam by", "NAME_KEY", NAME_SETTING, ("thing",), example="steam by pan", also=("steam",), kept="steam"),
    # ---- a plan, and an order
    OpeningLine("on", "_ON_DAY", RestOfLine("on_day", {}, "plan"), ("plan", "order")),
    OpeningLine("every", "_EVERY_DAY", RestOfLine("every_day", p.DAYS, "days"), ("plan", "order")),
    OpeningLine("until", "_UNTIL_DAY", RestOfLine("until_day", {}, "plan"), ("plan", "order")),
    OpeningLine("without", "_WITHOUT", RestOfLine("without", {}, "line"), ("plan",)),
    OpeningLine("van", "VAN", RestOfLine("departs", p.LEAVES, "plan"), ("plan",)),
    OpeningLine("already made", "_ALREADY_MADE", RestOfLine("already", p.ALREADY, "plan"), ("plan",)),
    OpeningLine("hands", "_HANDS", RestOfLine("shift", p.SHIFT, "plan"), ("plan",)),
    OpeningLine("orders", "_ORDERS", RestOfLine("takes_orders", {}), ("plan",)),
    # ---- words for people
    OpeningLine("note", "PROSE", CLAUSE_LINE, ANYWHERE),
    OpeningLine("picture", "PROSE", CLAUSE_LINE, ANYWHERE),
)  # fmt: skip


def example_of(words: str, context: str) -> str:
    """A line that begins with these words, one that stands in the context if any does; "" if none begins so."""
    such = [line for line in LINES if line.example and words in (line.words, *line.also, *line.was)]
    return next((line.example for line in (*(one for one in such if context in one.under), *such)), "")


# ---- put together --------------------------------------------------------------------------------

Openings = dict[str, tuple[tuple[tuple[str, ...], OpeningLine], ...]]
"""By the first word: the words after it, and the row of the vocabulary that they open; the longest first."""


def lines() -> Iterator[OpeningLine]:
    """Every line that words of the language open: those of the other tables too."""
    yield from LINES
    for stage in STAGES:
        yield OpeningLine(stage.word, "STAGE", STAGE, ("top", *HEAD), "stage")
        if stage.named:
            yield OpeningLine(stage.word, "STAGE", STAGE, ("preparation",), "stage")
            yield OpeningLine(stage.word, "STAGE", STAGE, ("assembly",), "part")
    for thing in THINGS:
        yield OpeningLine(
            thing.word, "THING", NAME_SETTING, ("kitchen",), "thing", also=thing.also, american=thing.american
        )
        yield OpeningLine(thing.word, "THING", OF_A_THING, (UNLESS_COUNTED,), also=thing.also, american=thing.american)
    for verb in VERBS:
        if verb.opens_with:
            words = verb.word if verb.word.endswith(verb.opens_with) else f"{verb.word} {verb.opens_with}"
            yield OpeningLine(words, "VERB", STEP, WORK, kept=verb.word)
        if not verb.moves:
            yield OpeningLine(
                verb.word, "VERB", STEP, (UNLESS_WEIGHED, "kitchen"), also=verb.also, american=verb.american
            )
            yield OpeningLine(verb.word, "VERB", APPOINTMENT, (UNLESS_COUNTED,), also=verb.also, american=verb.american)


def _openings() -> dict[str, Openings]:
    found: dict[str, Openings] = {
        name: {} for name in (*(context.name for context in CONTEXTS), UNLESS_WEIGHED, UNLESS_COUNTED)
    }
    for line in lines():
        for words in (line.words, *line.also, *line.was):
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
"""What opens a line in each context. In a stage and a preparation, `verbs` open what does not end in a weight; in a plan
`fixed times` what counts no pieces."""


def opening_of(openings: Openings, raws: list[RawToken]) -> tuple[OpeningLine, int] | None:
    """The row that a line begins with and how many pieces its words take, the longest first; or None."""
    group = openings.get(raws[0].text)
    if group is None or raws[0].kind != "WORD":
        return None
    for rest, line in group:
        size = len(rest) + 1
        if line.quoted and (len(raws) == 1 or raws[1].kind != "QUOTED"):
            continue
        if size == 1:
            return line, 1
        if len(raws) >= size and all(raw.text == word for raw, word in zip(raws[1:size], rest, strict=True)):
            return line, size
    return None

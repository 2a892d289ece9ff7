"""Words of the trade that are not words of this language, and what to write instead of each.

Asked before edit distance, which answers these wrongly (`cook` is a letter from `cool`, `scale` from nothing useful).
Words that mean the same in the other English (`proof`, `bulk`, `mould`, `pan`) are read and are not here.

`{TIME|10 min}` in an answer is the baker's own time, where the line has one, and else an example; TEMPERATURE, LENGTH, MASS and
PERCENT likewise, and REST is what stands behind the word.
"""

from __future__ import annotations

import re
from collections.abc import Container, Sequence

from manchet.syntax.tokens import RawToken

_SAID_IN_REST = "say it in the rest it belongs to: `ferment 2 h with a fold after {TIME|60 min}`"
_REST = "write `rest {TIME|20 min}`"
_RISE = "write `ferment {TIME|2 h} at {TEMPERATURE|25 C}` for the whole dough, `prove {TIME|60 min} at {TEMPERATURE|28 C}` for the pieces"
_COLD = "write `chill {TIME|2 h} at {TEMPERATURE|4 C}`, or `retard {TIME|12 h} at {TEMPERATURE|4 C}` for dough that goes on fermenting"
_FROZEN = "write `freeze {TIME|40 min} at {TEMPERATURE|-30 C}`"
_CHILLED = "write `chill {TIME|20 min} at {TEMPERATURE|2 C}`"
_MAKES = "write `makes {NUMBER|14} loaves at {MASS|900 g} dough`"
_TOP = "write `top with {REST|celeriac 40 g each}`"
_DIVIDE = "write `divide`: the weight of a piece stands in the `makes` line"
_PLACE = "write `place in long tin`, or `place on tray`"
_LEVAIN = "write the heading `levain`, and the culture's own name as a material"
_EVERYTHING = "write `everything else`, or `what is left of the water`"
_ADD = "write `add {REST|butter}`, then `mix slow 4 min`"
_SIFT = 'write `do "sift" 2 min hands-on`'
_WATER = "hydration follows from the lines: write `water {PERCENT|70%}` under `overall` or in the dough"
_VENT = "say it in the bake: `bake 30 min at 230 C, vent open after {TIME|20 min}`"
_FOLD = "write `fold in three` for a single fold, `fold in four` for a double one"

_FERMENT = "write `ferment {TIME|2 h} at {TEMPERATURE|25 C}`"
_PROVE = "write `prove {TIME|60 min} at {TEMPERATURE|28 C}`"
_MIX = "write `mix slow {TIME|5 min}`, or `mix fast {TIME|5 min}`"
_BAKE_AGAIN = "write a line of its own: `bake {TIME|20 min} at {TEMPERATURE|200 C}`"
_LID_OFF = "write a line of its own: `bake {TIME|20 min} at {TEMPERATURE|230 C}, lid off`"
_AS_MIXED = "say it where the mixing ends: `mix slow 5 min to {TEMPERATURE|25 C}`"
_CORE = "say it in the bake: `bake 30 min at 230 C to {TEMPERATURE|97 C} core`"

AS_A_FOLD = ("knock back", "knock down", "knock", "punch", "degas")
TWINS: dict[str, str] = {
    "knead": "write `mix by hand {TIME|10 min}`, or `mix slow {TIME|8 min}` for a machine",
    "ddt": _AS_MIXED,
    "desired dough temperature": _AS_MIXED,
    "desired dough temp": _AS_MIXED,
    "dough temperature": _AS_MIXED,
    "dough temp": _AS_MIXED,
    "teigtemperatur": _AS_MIXED,
    "closing temperature": _AS_MIXED,
    "close the dough": _AS_MIXED,
    "finished dough temperature": _AS_MIXED,
    "kerntemperatur": _CORE,
    "temperatura al cuore": _CORE,
    "lievitazione": _RISE,
    "prima lievitazione": _FERMENT,
    "seconda lievitazione": _PROVE,
    "ressuage": "write `cool {TIME|2 h}`",
    "abkühlen": "write `cool {TIME|2 h}`",
    "enfournement": "say it in the bake: `bake 30 min at 230 C, steam`",
    **dict.fromkeys(
        (
            "turn oven down",
            "turn the oven down",
            "turn down the oven",
            "turn down",
            "reduce oven",
            "reduce the oven",
            "reduce heat",
            "reduce temperature",
            "lower the oven",
            "lower oven",
        ),
        _BAKE_AGAIN,
    ),
    **dict.fromkeys(("remove lid", "remove the lid", "take off the lid", "take lid off", "uncover"), _LID_OFF),
    "flip": "say it in the bake: `bake {TIME|2 min} a side at {TEMPERATURE|250 C}`",
    "wash with": "write `brush with {REST|egg} 6 g each`",
    "spritz": "write `brush with water 5 g each`; steam is said in the bake: `bake 30 min at 230 C, steam`",
    "spray": "write `brush with water 5 g each`; steam is said in the bake: `bake 30 min at 230 C, steam`",
    "mist": "write `brush with water 5 g each`; steam is said in the bake: `bake 30 min at 230 C, steam`",
    "division": _DIVIDE,
    "teigeinlage": _DIVIDE,
    "base temperature": "leave it out: how warm the water is to be is worked out from the kitchen's air, flour and mixer",
    "base temp": "leave it out: how warm the water is to be is worked out from the kitchen's air, flour and mixer",
    "internal temperature": _CORE,
    "internal temp": _CORE,
    "internal": _CORE,
    "core temperature": _CORE,
    "core temp": _CORE,
    "bf": _FERMENT,
    "pointage": _FERMENT,
    "puntata": _FERMENT,
    "stockgare": _FERMENT,
    "teigruhe": _FERMENT,
    "apprêt": _PROVE,
    "appret": _PROVE,
    "appretto": _PROVE,
    "stückgare": _PROVE,
    "leudar": _RISE,
    "détente": _REST,
    "detente": _REST,
    "frasage": "write `mix slow {TIME|4 min}`",
    "pétrissage": _MIX,
    "petrissage": _MIX,
    "amasar": _MIX,
    "impastare": _MIX,
    "kneten": _MIX,
    "bassinage": "write `hold back water {MASS|5%}` under the materials, and `add water` at the step where it goes in",
    "façonnage": "write `shape round`, or `shape long`",
    "faconnage": "write `shape round`, or `shape long`",
    "pirlare": "write `shape round`",
    "pirlatura": "write `shape round`",
    "bolear": "write `shape round`",
    "staglio": _DIVIDE,
    "schwaden": "say it in the bake: `bake 30 min at 230 C, steam`",
    "apply": "write `brush with {REST|butter} 5 g each`",
    "refresh": "a refreshment is a stage of its own: the heading `levain NAME`, and under it what it is fed",
    "feed": "a refreshment is a stage of its own: the heading `levain NAME`, and under it what it is fed",
    "tdw": "write `makes {MASS|18 kg} dough`",
    "total dough weight": "write `makes {MASS|18 kg} dough`",
    "batch size": "write `from {MASS|20 kg} flour`, or `makes {MASS|20 kg} dough`",
    "final mix": "write `dough`",
    "cook": "write `heat {TIME|4 min} to {TEMPERATURE|65 C}`, or `simmer {TIME|15 min}`",
    "toast": "write `roast {TIME|10 min} at {TEMPERATURE|160 C}`",
    "scale": _DIVIDE,
    "portion": _DIVIDE,
    "weigh off": _DIVIDE,
    "glaze": "write `brush with egg wash 6 g each`",
    "egg wash": "write `brush with egg wash {REST|6 g each}`",
    "coat": "write `sprinkle with {REST|sesame seeds 3 g each}`, `roll in {REST|sesame seeds 3 g each}` or `brush with` …",
    "coat with": "write `sprinkle with {REST|sesame seeds 3 g each}`, `roll in {REST|sesame seeds 3 g each}` or `brush with` …",
    "butter the": "write `grease tins with butter 3 g each`",
    "oil the": "write `grease tins with sunflower oil 3 g each`",
    **dict.fromkeys(AS_A_FOLD, _SAID_IN_REST),
    "half fold": _FOLD,
    "give": _FOLD,
    "autolyse": "write `mix slow 3 min`, then `rest covered {TIME|30 min}`, with salt and yeast held back",
    "autolyze": "write `mix slow 3 min`, then `rest covered {TIME|30 min}`, with salt and yeast held back",
    "prick": "write `dock`",
    "stand": _REST,
    "bench": _REST,
    "slowly add": "write `add {REST|butter} in 4 additions`",
    "slowly": "write `add {REST|butter} in 4 additions`",
    "leave": _REST,
    "let": _REST,
    "wait": _REST,
    "relax": _REST,
    "dough rest": _REST,
    "rise": _RISE,
    "raise": _RISE,
    "let rise": _RISE,
    "let it rise": _RISE,
    "let the dough rise": _RISE,
    "leave to rise": _RISE,
    "refrigerate": _COLD,
    "retarder": "write `retard {TIME|12 h} at {TEMPERATURE|4 C}`",
    "blast chiller": _CHILLED,
    "blast chilling": _CHILLED,
    "shock chiller": _CHILLED,
    "blast freezer": _FROZEN,
    "blast freezing": _FROZEN,
    "shock freezer": _FROZEN,
    "in the fridge": _COLD,
    "into the fridge": _COLD,
    "into fridge": _COLD,
    "fridge": _COLD,
    "freezer": "write `freeze {TIME|12 h} at {TEMPERATURE|-18 C}`",
    "pour": "write `add {REST|water}`",
    "throw": "write `add {REST|salt}`",
    "combine": "write `mix slow {TIME|3 min}`, or `whisk {TIME|2 min}`",
    "dissolve": "write `whisk {TIME|2 min}`, or `stir {TIME|2 min}`",
    "beat": "write `mix fast {TIME|5 min}`, or `whisk {TIME|2 min}`",
    "beat in": _ADD,
    "work in": _ADD,
    "whip": "write `whisk {TIME|2 min}`",
    "incorporate": _ADD,
    "gradually add": "write `add {REST|butter} in 4 additions`",
    "gradually": "write `add {REST|butter} in 4 additions`",
    "laminate": "write `lock in butter block`, then `fold in three`",
    "sheet": "write `roll out to {LENGTH|8 mm}`",
    "sheeter": "write `roll out to {LENGTH|8 mm}`",
    "preheat": "leave it out: the sheet works it out from the kitchen's oven and the first `bake` line",
    "heat oven": "leave it out: to preheat is no step, the sheet works it out from the kitchen's oven and the first `bake` line",
    "heat the oven": "leave it out: to preheat is no step, the sheet works it out from the kitchen's oven and the first `bake` line",
    "sift": _SIFT,
    "sieve": _SIFT,
    "form": "write `shape round`",
    "preshape": "write `shape round`, then `rest covered 20 min`",
    "pre-shape": "write `shape round`, then `rest covered 20 min`",
    "round": "write `shape round`",
    "plait": "write `shape as plait`",
    "braid": "write `shape as braid`",
    "cover": "say it in the step: `rest covered {TIME|30 min}`",
    "vent": _VENT,
    "open vent": _VENT,
    "open the vent": _VENT,
    "load": "write `bake {TIME|30 min} at {TEMPERATURE|230 C}`",
    "pan": "write `place in long tin`",
    "tin": "write `place in long tin`",
    "tin up": "write `place in long tin`",
    "transfer": _PLACE,
    "put": f"{_PLACE}; what goes on a dish is `top with celeriac 40 g each`",
    "lay": _TOP,
    "garnish with": _TOP,
    "garnish": _TOP,
    "layer": _TOP,
    "arrange": _TOP,
    "pile": _TOP,
    "set": "write `place on tray`, or `rest {TIME|20 min}`",
    "ferment overnight": "say how long: `ferment 8-12 h`",
    "overnight": "say how long: `8-12 h`",
    "sourdough": _LEVAIN.replace("levain`", "levain` or `sour`"),
    "starter": f"{_LEVAIN}, as in `ripe wheat starter 100 g`",
    "mother": _LEVAIN,
    "pate fermentee": "write the heading `old dough`",
    "pâte fermentée": "write the heading `old dough`",
    "tangzhong": "write the heading `scald`",
    "yudane": "write the heading `scald`",
    "roux": "write the heading `scald`",
    "stage": "a stage is a heading of the formula, not a line of another: `stage NAME`, two spaces further out",
    "the rest": "write `everything else`",
    "rest of everything": "write `everything else`",
    "rest of it": "write `everything else`",
    **dict.fromkeys(("rest of the", "remaining", "all remaining"), _EVERYTHING),
    "all that is left": "write `everything else`",
    "discard rest": "write `discard what is left`",
    "discard the rest": "write `discard what is left`",
    "hydration": _WATER,
    "ingredients": "write `overall` for the whole formula, or the name of a stage",
    "final dough": "write `dough`",
    "main dough": "write `dough`",
    "yield": _MAKES,
    "yields": _MAKES,
    "servings": "say what is made: `makes 1 loaf at {MASS|900 g} dough`, or of a dish `makes {NUMBER|8} plates`",
    "serves": "say what is made: `makes 1 loaf at {MASS|900 g} dough`, or of a dish `makes {NUMBER|8} plates`",
    "recipe": "write `formula {REST|NAME}`",
    "dish": "write `assembly {REST|NAME}`",
    "plate": "write `assembly {REST|NAME}`",
    "sandwich": "write `assembly {REST|NAME}`",
    "sub-recipe": "write `preparation {REST|NAME}`",
    "description": 'write `about "…"`',
    "notes": 'write `note "…"`',
    "comment": 'write `note "…"`, or begin the line with #',
    **dict.fromkeys(("source", "author", "by"), 'write `note "…"`, or begin the line with #'),
    "prep time": "leave it out: the timing card works it out from the steps",
    "type": "write `kind {REST|hearth loaf}`",
}

NEVER_WEIGHED = frozenset(
    {
        "scale", "portion", "weigh off", "hydration", "division", "teigeinlage", "divide", "bassinage", "staglio", "tdw", "total dough weight", "batch size",
        "base temp", "base temperature",
    }
)  # fmt: skip
"""Words before a weight that name no ingredient anywhere."""


def lookalike(words: list[str]) -> str | None:
    """The longest twin a line's words (in lower case) begin with."""
    return longest(words, TWINS)


def never_weighed(name: str) -> bool:
    """Whether what stands before a weight is no ingredient, but a word of the trade: `hydration 70%`, `scale 450 g`."""
    return longest(name.lower().split(), NEVER_WEIGHED) is not None


def longest(words: list[str], table: Container[str]) -> str | None:
    """The longest phrase of the table that the words begin with, of four words at most."""
    for size in (4, 3, 2, 1):
        written = " ".join(words[:size]).rstrip(".")
        if len(words) >= size and written in table:
            return written
    return None


_ONTO = re.compile(r" (?:on|onto|over|in|into) (?!all\b).*$")
"""Where something is laid: what it lies on is the line above."""
_OWN = re.compile(r"\{([A-Z]+)\|([^}]*)\}")


def answer_to(twin: str, raws: Sequence[RawToken], rest: str) -> str:
    """What to write instead of a twin, with the figures of the line it begins. `rest` is what stands behind it."""
    rest = _ONTO.sub("", rest) if TWINS.get(twin) is _TOP else rest
    own = {"REST": re.sub(r"^(?:in |with |the |of )+", "", rest.strip())}
    for raw in raws:
        own.setdefault(raw.kind, raw.text)
    if twin == "hydration" and raws and raws[-1].kind == "NUMBER":
        own.setdefault("PERCENT", f"{raws[-1].text}%")
    if (degrees := re.search(r"([0-9]+) ?[°º](?! ?[CF])", rest)) is not None:
        own.setdefault("TEMPERATURE", f"{degrees[1]} C")  # of a dough: no Fahrenheit is so written
    if twin == "cook" and in_an_oven(raws, rest):
        own.setdefault("TEMPERATURE", f"{own.get('NUMBER')} C")
        return _OWN.sub(lambda match: own.get(match[1]) or match[2], TWINS["load"])
    if raws and raws[-1].kind == "NUMBER":
        own.setdefault("TIME", f"{raws[-1].text} min")  # `bench 20`
    return _OWN.sub(lambda match: own.get(match[1]) or match[2], TWINS[twin])


def in_an_oven(raws: Sequence[RawToken], rest: str) -> bool:
    """Whether the line names a heat that no pot has: `cook 22 min at 250 C`, `cook 22 min at 250°`."""
    if re.search(r"[1-9][0-9]{2} ?[°º](?! ?[CF])", rest):
        return True
    heats = (raw for raw in raws if raw.kind in ("TEMPERATURE", "NUMBER"))
    return any((raw.low or 0) >= (250 if raw.unit == "F" else 120) for raw in heats)

"""Every word of the language that decides something, a row each: verbs, stage words, kinds of bread, a kitchen's things.

What tells one word from another stands in its row, in a column that has a name; what is not said in a row is not so.
Everybody else asks the row or the column: `step.verb in IN_OVEN`, `stage.word in HOLDS_WATER`, `formula.bread.loaf`. The words
that open all other lines are in `openings`.
"""

from __future__ import annotations

from manchet.records import NamedTuple

# ==== verbs ========================================================================================

HANDS, MACHINE, WAITING = "hands-on", "machine", "waiting"
MINUTES = "40-50 min"


class Verb(NamedTuple):
    """A verb and what a step of it is."""

    word: str
    example: str = ""
    """A whole step; "" for a verb that moves material: the line it stands on is a row of `openings`."""
    who: str = HANDS
    """Who works, if the line says nothing else. What boils waits for the clock too, but is not left alone."""
    also: tuple[str, ...] = ()
    """Read as the same: the other English."""
    american: str = ""
    """Which of these an American house writes; "" where it writes the same word."""

    # ---- what a step of it must say
    needs_time: str = ""
    """What could follow it. No card can be made without the time of what waits, or of what a machine does."""
    needs_heat: str = ""
    """A usual one. The heat around it has to be said."""
    has_place: bool = False
    """It is done somewhere: `in`, `on`, `into` and `under` name the place. After any other verb they would say something else."""
    needs_place: bool = False
    said_how: bool = False
    """Words in quotes say how, and into what: `cut "into squares"`."""
    touches: bool = False
    """Puts something on the bread that is no dough, with its weight."""
    may_touch: bool = False
    """May do so, and need not: `wrap in cloth`, `wrap in marzipan 90 g each`."""
    on_the_crust: bool = False
    """What it puts on lies on the surface, and takes its heat."""
    opens_with: str = ""
    """`brush with` opens a step even where the line ends in a weight, as an ingredient's does."""

    # ---- heat and cold
    heated: str = ""
    """In the "oven", on a "plate" (griddle, frying fat) or in a "pot"."""
    boils: bool = False
    in_fat: bool = False
    """In hot fat."""
    cold: bool = False
    """Stands in fridge or freezer, whatever else is said."""
    in_fridge: bool = False
    """Dough may stand in the fridge in it, if its temperature says so."""
    cools: bool = False
    """Its aim is that a thing grows cold."""
    cools_by_itself: bool = False
    """What is hot grows cooler in it, where the step names no temperature: what is made before a dough stands so."""

    # ---- dough
    by_leaven: bool = False
    """Over when the leaven has done its work. A retard is over when the baker comes back."""
    rises: bool = False
    """Dough rises in it, to a level in what it stands in."""
    time_to_rise: bool = False
    """A leaven has time to work in it."""
    stands: bool = False
    """Nothing is done to it and nothing is to rise: it stands in its water."""
    sets_warmth: bool = False
    """`to 25 C` is the dough's temperature as it goes into its bulk."""
    on_bench: bool = False
    """Done on the bench, with a dough that is mixed, though it warms it or brings something in."""
    ends_mixing: bool = False
    """What is mixed after it is another mix."""
    divides: bool = False
    gathers: bool = False
    """What was rolled out flat is so no longer."""
    for_oven: bool = False
    """Says that the way of the pieces to the oven is written down."""
    holds_piece: bool = False
    """Its place is what the bread stands in: `place in long tin`, `bake in long tin`."""
    wraps: bool = False
    at_the_door: bool = False
    """Done to pieces on their way into the oven: it belongs to loading them."""

    # ---- material
    pours_off: bool = False
    """What is lost in it is liquid, with whatever is dissolved in that; in every other step without heat it is the stuff itself."""
    of_the_first: bool = False
    """Its loss is of the first thing weighed, whatever lies in the vessel beside it: what is peeled."""
    moves: bool = False
    """Its line names a material or a stage and has a rule of its own in the grammar."""
    brings_in: bool = False
    """What it moves goes into the dough."""
    keeps: bool = False
    """Says how much of a stage is kept for next time, or that the rest of it is thrown away."""


VERBS = (
    Verb("mix", "mix slow 5 min", MACHINE, needs_time="slow 5 min", sets_warmth=True),
    Verb("stretch", "stretch 6 min to 26 C"),
    Verb("fold", "fold in three", sets_warmth=True, gathers=True, on_bench=True),
    Verb("stir", "stir 2 min", sets_warmth=True),
    Verb("whisk", "whisk 2 min"),
    Verb("rub", "rub 5 min"),
    Verb("blend", "blend 3 min", MACHINE, needs_time=MINUTES),
    Verb("rest", "rest covered 20 min", WAITING, needs_time=MINUTES, stands=True, in_fridge=True, cools_by_itself=True,
         time_to_rise=True, has_place=True),
    Verb("ripen", "ripen covered 12-15 h at 20 C", WAITING, needs_time=MINUTES, by_leaven=True, time_to_rise=True,
         in_fridge=True, cools_by_itself=True, ends_mixing=True, has_place=True),
    Verb("ferment", "ferment covered 2 h at 25 C with 2 folds every 40 min", WAITING, ("bulk",), needs_time=MINUTES,
         by_leaven=True, rises=True, time_to_rise=True, in_fridge=True, ends_mixing=True, has_place=True),
    Verb("prove", "prove 60 min at 28 C", WAITING, ("proof",), "proof", needs_time=MINUTES, by_leaven=True, rises=True,
         time_to_rise=True, for_oven=True, holds_piece=True, has_place=True),
    Verb("retard", "retard covered 12 h at 4 C", WAITING, needs_time=MINUTES, cold=True, in_fridge=True, rises=True,
         time_to_rise=True, has_place=True),
    Verb("chill", "chill 2 h at 4 C", WAITING, needs_time=MINUTES, cold=True, in_fridge=True, cools=True,
         cools_by_itself=True, time_to_rise=True, has_place=True),
    Verb("freeze", "freeze 2 h at -18 C", WAITING, needs_time=MINUTES, cold=True, cools=True, has_place=True),
    Verb("thaw", "thaw 30 min at 4 C", WAITING, needs_time=MINUTES, time_to_rise=True, has_place=True),
    Verb("soak", "soak covered 4-12 h at 20 C", WAITING, needs_time=MINUTES, stands=True, cools_by_itself=True, has_place=True),
    Verb("cool", "cool 2 h", WAITING, needs_time="1-2 h to 30 C", cools=True, cools_by_itself=True, has_place=True),
    Verb("divide", "divide", divides=True, ends_mixing=True, for_oven=True),
    Verb("shape", "shape round", also=("mould", "mold"), gathers=True, for_oven=True),
    Verb("roll out", "roll out to 8 mm"),
    Verb("roll in", "roll in poppy seeds 4 g each", touches=True, on_the_crust=True, opens_with="in", at_the_door=True),
    Verb("roll", "roll", gathers=True),
    Verb("press", "press to 12 mm"),
    Verb("cut", 'cut "into squares"', divides=True, said_how=True),
    Verb("trim", "trim", said_how=True),
    Verb("slice", 'slice "thin"', said_how=True),
    Verb("fill", "fill with pear butter 40 g each", touches=True, opens_with="with"),
    Verb("spread", "spread with pear butter 40 g each", touches=True, opens_with="with", at_the_door=True),
    Verb("pipe", "pipe with pear butter 12 g each", touches=True, opens_with="with", at_the_door=True),
    Verb("brush", "brush with egg wash 6 g each", touches=True, on_the_crust=True, opens_with="with", at_the_door=True),
    Verb("sprinkle", "sprinkle with hazelnuts 5 g each", touches=True, on_the_crust=True, opens_with="with", at_the_door=True),
    Verb("top", "top with celeriac 40 g each", touches=True, opens_with="with", at_the_door=True),
    Verb("dust", "dust with rice flour 6 g each", touches=True, on_the_crust=True, opens_with="with", at_the_door=True),
    Verb("dip", "dip in sesame 3 g each", touches=True, on_the_crust=True, opens_with="in", at_the_door=True),
    Verb("grease", "grease tins with sunflower oil 3 g each", touches=True, on_the_crust=True),
    Verb("place", "place in long tin", has_place=True, needs_place=True, holds_piece=True),
    Verb("wrap", "wrap in cloth", has_place=True, needs_place=True, wraps=True, may_touch=True, opens_with="in"),
    Verb("turn out", "turn out", has_place=True, at_the_door=True),
    Verb("score", 'score "a cross"', said_how=True, at_the_door=True),
    Verb("dock", "dock", said_how=True, at_the_door=True),
    Verb("bake", "bake 30 min at 230 C", WAITING, needs_time=MINUTES, needs_heat="220 C", heated="oven", holds_piece=True, has_place=True),
    Verb("roast", "roast 10 min at 160 C", WAITING, needs_time=MINUTES, needs_heat="200 C", heated="oven", has_place=True),
    Verb("griddle", "griddle 2 min a side at 200 C", needs_time=MINUTES, needs_heat="200 C", heated="plate", has_place=True),
    Verb("fry", "fry 100 s a side at 175 C, 4 at a time", needs_time=MINUTES, needs_heat="175 C", heated="plate", in_fat=True, has_place=True),
    Verb("boil", "boil 30 s a side, 6 at a time", WAITING, needs_time=MINUTES, heated="pot", boils=True, has_place=True),
    Verb("simmer", "simmer 15 min", WAITING, needs_time=MINUTES, heated="pot", boils=True, has_place=True),
    Verb("steam", "steam 12 min", WAITING, needs_time=MINUTES, heated="pot", boils=True, has_place=True),
    Verb("heat", "heat 4 min to 65 C", heated="pot", has_place=True),
    Verb("chop", "chop", said_how=True),
    Verb("grate", "grate", said_how=True),
    Verb("grind", "grind", said_how=True),
    Verb("peel", "peel", said_how=True, of_the_first=True),
    Verb("rinse", "rinse", has_place=True, pours_off=True),
    Verb("strain", "strain into jug", has_place=True),
    Verb("drain", "drain", has_place=True, pours_off=True),
    Verb("pack", "pack in jars", wraps=True, has_place=True),
    Verb("serve", "serve within 10 min", opens_with="within"),
    Verb("do", 'do "sift the flour" 2 min hands-on', has_place=True),
    Verb("add", moves=True, brings_in=True),
    Verb("lock in", moves=True, brings_in=True, on_bench=True),
    Verb("return", moves=True),
    Verb("keep", moves=True, keeps=True),
    Verb("discard", moves=True, keeps=True),
    Verb("top up", moves=True),
    Verb("pour off", moves=True),
)  # fmt: skip

VERB = {verb.word: verb for verb in VERBS}

# ---- heat and cold

IN_OVEN = frozenset(verb.word for verb in VERBS if verb.heated == "oven")
IN_POT = frozenset(verb.word for verb in VERBS if verb.heated == "pot")
BAKES = frozenset(verb.word for verb in VERBS if verb.heated in ("oven", "plate"))
"""The pieces lie in a heat that stands ready and waits for nobody."""
COOKS = BAKES | IN_POT
DONE_BY_LOOK = COOKS - {"heat"}
"""Nobody is told to cut these short when it is late: what they end by is a look, or a core. What is heated is done when it is so warm."""
IN_FAT = frozenset(verb.word for verb in VERBS if verb.in_fat)
BOILS = frozenset(verb.word for verb in VERBS if verb.boils)
COLD = frozenset(verb.word for verb in VERBS if verb.cold)
SLOWED_BY_COLD = COLD | {"thaw"}
"""In the cold, or on the way out of it: nobody can say how fast yeast works there."""
COOLS = frozenset(verb.word for verb in VERBS if verb.cools)
CHILLS = COLD & COOLS
"""In the cold for its own sake, and not so that a dough rises slowly."""
COOLS_BREAD = COOLS | {"rest"}
"""Bread out of the oven grows cold in it."""
IN_FRIDGE = frozenset(verb.word for verb in VERBS if verb.in_fridge)
COOLS_BY_ITSELF = frozenset(verb.word for verb in VERBS if verb.cools_by_itself)

# ---- dough

BY_LEAVEN = frozenset(verb.word for verb in VERBS if verb.by_leaven)
RISES = frozenset(verb.word for verb in VERBS if verb.rises)
FERMENTS = BY_LEAVEN | RISES
"""Yeast or a sour is meant to work in it."""
RISES_WARM = BY_LEAVEN & RISES
"""A dough rises until it is risen."""
PROVES = RISES - {"ferment"}
"""What rises are the pieces."""
TIME_TO_RISE = frozenset(verb.word for verb in VERBS if verb.time_to_rise)
STANDS = frozenset(verb.word for verb in VERBS if verb.stands)
SETS_WARMTH = frozenset(verb.word for verb in VERBS if verb.sets_warmth)
ENDS_MIXING = frozenset(verb.word for verb in VERBS if verb.ends_mixing)
DIVIDES = frozenset(verb.word for verb in VERBS if verb.divides)
GATHERS = frozenset(verb.word for verb in VERBS if verb.gathers)
FOR_OVEN = frozenset(verb.word for verb in VERBS if verb.for_oven)
HOLDS_PIECE = frozenset(verb.word for verb in VERBS if verb.holds_piece)
WRAPS = frozenset(verb.word for verb in VERBS if verb.wraps)
ON_THE_CRUST = frozenset(verb.word for verb in VERBS if verb.on_the_crust)
AT_THE_DOOR = frozenset(verb.word for verb in VERBS if verb.at_the_door)

# ---- material

POURS_OFF = frozenset(verb.word for verb in VERBS if verb.pours_off)
OF_THE_FIRST = frozenset(verb.word for verb in VERBS if verb.of_the_first)
BRINGS_IN = frozenset(verb.word for verb in VERBS if verb.brings_in)
KEEPS = frozenset(verb.word for verb in VERBS if verb.keeps)
MOVES_OUT = frozenset(verb.word for verb in VERBS if verb.moves) - BRINGS_IN
ON_BENCH = frozenset(verb.word for verb in VERBS if verb.on_bench)
AT_THE_BOWL = (SETS_WARMTH | BRINGS_IN) - ON_BENCH
"""What is mixed, and what is added to be mixed in."""


SHAPES = ("round", "long", "oval", "flat")
"""Said without `as`: how the piece lies, whatever it is called."""


# ==== stage words ==================================================================================


class StageWord(NamedTuple):
    """A kind of stage, and what is made in it."""

    word: str
    by_yeast: bool = False
    """A preferment raised by yeast that is weighed into it."""
    by_culture: bool = False
    """Raised and soured by a culture that is built up in it."""
    preferment: bool = False
    """Its flour counts as prefermented. An old dough is raised by nothing of its own: it comes with its salt and its history."""
    holds_water: bool = False
    """What is soaked or scalded in it binds the water that it brings."""
    hot_water: bool = False
    """Made with boiling water, so that nobody sets its temperature with the tap's."""
    may_ripen_fast: bool = False
    """May be ripe within the hour."""
    named: bool = False
    """Says nothing without a name."""
    vessel: str = "bowl"
    """What stands on the scale: a word of the printed table `stage`."""
    verb: str = ""
    """What it does until it is used: a preferment ripens, the dough ferments. "" where either may be said."""


STAGES = (
    StageWord("poolish", by_yeast=True, preferment=True, vessel="tub", verb="ripen"),
    StageWord("biga", by_yeast=True, preferment=True, vessel="tub", verb="ripen"),
    StageWord("sponge", by_yeast=True, preferment=True, may_ripen_fast=True, vessel="tub", verb="ripen"),
    StageWord("preferment", by_yeast=True, preferment=True, may_ripen_fast=True, vessel="tub", verb="ripen"),
    StageWord("old dough", preferment=True, vessel="tub"),
    StageWord("levain", by_culture=True, preferment=True, vessel="tub", verb="ripen"),
    StageWord("sour", by_culture=True, preferment=True, vessel="tub", verb="ripen"),
    StageWord("soaker", holds_water=True, vessel="tub"),
    StageWord("scald", holds_water=True, hot_water=True, vessel="pot"),
    StageWord("stage", may_ripen_fast=True, named=True),
    StageWord("dough", verb="ferment"),
)

PREPARATION = StageWord("preparation", vessel="pot")
"""The one stage of a preparation, which no heading opens."""

STAGE = {stage.word: stage for stage in (*STAGES, PREPARATION)}

BY_THE_STAGE = frozenset(stage.verb for stage in STAGES if stage.verb)
"""Verbs of which the stage says which one is meant."""
BY_YEAST = frozenset(stage.word for stage in STAGES if stage.by_yeast)
BY_CULTURE = frozenset(stage.word for stage in STAGES if stage.by_culture)
MADE_TO_RIPEN = BY_YEAST | BY_CULTURE
"""A preferment with a time at which it is ripe: an old dough is taken as it is."""
PREFERMENTS = frozenset(stage.word for stage in STAGES if stage.preferment)
HOLDS_WATER = frozenset(stage.word for stage in STAGES if stage.holds_water)
HOT_WATER = frozenset(stage.word for stage in STAGES if stage.hot_water)
MAY_RIPEN_FAST = frozenset(stage.word for stage in STAGES if stage.may_ripen_fast)
CALLED_BY_KIND = tuple(stage.word for stage in STAGES if not stage.named)
"""A stage that is given no name is called by one of these."""


# ==== kinds of bread ===============================================================================


class Kind(NamedTuple):
    """A kind of bread, and how it is judged."""

    word: str
    loaf: bool = False
    """A loaf in the narrow sense: flour, water and salt, no fat or sugar to hold its water."""
    flour: str = ""
    """What a loaf is mostly made of: "wheat" or "rye"."""
    hearth: bool = False
    tin: bool = False
    risen: bool = False
    """Raised by something."""
    baked: bool = False
    """Once its pieces are shaped, some heat has to follow."""
    divided: bool = False
    """Its pieces are weighed off one dough."""
    crust: str = ""
    """As a "loaf" or a "roll" loses in the oven; "" where that is its maker's to weigh: a crisp, a batter, a filled bread."""
    core: str = ""
    """"lean", "rye" or "rich": how warm its crumb is when it is done; "" where there is no crumb to measure."""
    whole_pieces: bool = False
    """Fruit, nuts and cheese are meant to stay whole in it."""
    stirred: bool = False
    """Only brought together: kneading gains nothing there."""
    soda_alone: bool = False
    """Soda is for its crust or its colour and needs nothing sour."""
    as_rich_as_you_like: bool = False
    """No share of fat, egg or sugar is too much."""
    wrapped_warm: bool = False
    """On purpose, to stay soft."""
    done_by: tuple[str, ...] = ()
    """What it is called after is done by one of these verbs."""
    done_as: str = ""
    """A step that does it."""


KINDS = (
    Kind("hearth loaf", loaf=True, flour="wheat", hearth=True, risen=True, baked=True, divided=True, crust="loaf", core="lean",
         whole_pieces=True),
    Kind("rye hearth loaf", loaf=True, flour="rye", hearth=True, risen=True, baked=True, divided=True, crust="loaf", core="rye",
         whole_pieces=True, stirred=True),
    Kind("tin loaf", loaf=True, flour="wheat", tin=True, risen=True, baked=True, divided=True, crust="loaf", core="lean",
         whole_pieces=True),
    Kind("rye tin loaf", loaf=True, flour="rye", tin=True, risen=True, baked=True, divided=True, crust="loaf", core="rye",
         whole_pieces=True, stirred=True, wrapped_warm=True),
    Kind("rolls", risen=True, baked=True, divided=True, crust="roll", core="lean", whole_pieces=True),
    Kind("flatbread", wrapped_warm=True),
    Kind("soft", risen=True, baked=True, divided=True, crust="loaf", core="rich", whole_pieces=True),
    Kind("laminated", risen=True, baked=True, core="rich", done_by=("lock in",), done_as="lock in butter block"),
    Kind("filled", risen=True, baked=True, core="rich", done_by=("fill", "spread", "add"), done_as="fill with … 30 g each"),
    Kind("boiled", risen=True, baked=True, divided=True, crust="roll", core="lean", soda_alone=True, done_by=("boil", "simmer"),
         done_as="boil 45 s"),
    Kind("lye", risen=True, baked=True, divided=True, crust="roll", core="lean", soda_alone=True, done_by=("dip", "brush"),
         done_as="dip in lye bath 4 g each"),
    Kind("fried", done_by=("fry",), done_as="fry 2 min a side at 175 C"),
    Kind("steamed", risen=True, wrapped_warm=True),
    Kind("crisp", baked=True),
    Kind("batter", stirred=True, as_rich_as_you_like=True, wrapped_warm=True),
    Kind("quick bread", core="lean", stirred=True),
    Kind("biscuit", baked=True, stirred=True, soda_alone=True, as_rich_as_you_like=True),
    Kind("gluten-free", risen=True, baked=True, core="lean", stirred=True),
)  # fmt: skip

KIND = {kind.word: kind for kind in KINDS}

NO_KIND = Kind("")
"""Of a preparation, and of a formula that does not say its kind."""

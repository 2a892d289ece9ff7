"""The words of the loose spellings: what is typed, and the word of the language that alone it can mean."""

from __future__ import annotations

from manchet.quantities.units import LONG_FORMS
from manchet.syntax.vocabulary import STAGES, VERBS

NUMBERS = {
    word: str(number)
    for number, word in enumerate(
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"], 1
    )
} | {"fifteen": "15", "twenty": "20", "thirty": "30", "forty": "40", "forty-five": "45"}

COUNTED = (
    "folds?", "turns?", "stirs?", "times", "additions?", "parts", "h", "hrs?", "hours?", "min", "mins", "minutes?", "s", "secs?",
    "seconds?", "days?", "loaves", "rolls", "buns", "pieces", "kg", "kilos?", "g", "grams?", "lb", "lbs", "pounds?", "ounces?",
)  # fmt: skip
"""What a number in words may count: nothing else is looked for behind it."""

UNITS_WRITTEN = (
    {word: short for word, short in LONG_FORMS.items() if short != "%"}
    | {
        word: short
        for short, words in {
            "g": "gramm grammi grammo gramos",
            "kg": "kilogramm chilo chili",
            "l": "lt",
            "h": "std stunde stunden heure heures ora ore horas",
            "min": "mn minuten minuti minutos",
            "s": "sekunden secondi secondes",
            "d": "tage jours giorni",
            "cl": "centilitres centiliters",
            "dl": "decilitres deciliters",
        }.items()
        for word in words.split()
    }
    | {"fl oz": "floz", "fl. oz": "floz", "fluid ounces": "floz", "fluid ounce": "floz"}
)
"""Units as they are written in words and in other languages. `tablespoons` and `EL` are of a country and are not here."""

OPENING_PHRASES = {
    written: ours
    for ours, listed in {
        "ferment": "first prove, first proof, bulk ferment, bulk fermentation, bulk rise, bulk proof, bulk prove, first rise, first fermentation, "
        "primary fermentation, let ferment, leave to ferment, allow to ferment, let it ferment",
        "prove": "piece proof, second prove, second proof, final proof, final prove, final rise, final fermentation, second rise, let prove, leave to prove, let proof, "
        "leave to proof, allow to prove, allow to proof",
        "rest": "bench rest, intermediate proof, let rest, leave to rest, allow to rest, let it rest, let the dough rest, "
        "let stand, leave to stand, let it stand",
        "retard": "cold proof, cold prove, cold ferment, cold fermentation, cold bulk, cold retard",
        "soak": "let soak, leave to soak, allow to soak",
        "ripen": "let ripen, leave to ripen, allow to ripen",
        "cool": "let cool, leave to cool, allow to cool, let it cool, cool down, cool completely, let cool completely",
        "chill": "blast chill, shock chill, let chill, leave to chill",
        "freeze": "blast freeze, shock freeze",
        "mix by hand": "hand mix, knead by hand",
        "mix slow": "knead slow, knead slowly",
        "mix fast": "knead fast",
        "shape round": "pre-shape round, preshape round, pre shape round, work up round",
        "shape long": "work up long, final shape long",
        "shape oval": "final shape oval",
        "fold": "stretch and fold, stretch & fold, coil fold",
        "fold in three": "single fold, letter fold, a single fold, 1 single fold, simple fold",
        "fold in four": "double fold, book fold, a double fold, 1 double fold, 1 book fold",
        "turn out": "depan, de-pan, demould, demold, unmould, unmold, de-tin, remove from tin, remove from tins, tip out",
        "turn out onto": "tip onto, tip it onto, tip out onto, tip the dough onto",
        "hold back": "reserve, set aside, withhold, keep back, holdback",
        "score": "slash",
        "fry": "deep-fry, deep fry",
        "boil": "poach",
        "add": "now add",
    }.items()
    for written in listed.split(", ")
}

STAGE_PHRASES = {
    "pâte fermentée": "old dough",
    "pate fermentee": "old dough",
    "tangzhong": "scald",
    "yudane": "scald",
    "water roux": "scald",
    "vorteig": "preferment",
    "sauerteig": "sour",
    "brühstück": "scald",
    "bruehstueck": "scald",
    "kochstück": "scald",
    "kochstueck": "scald",
    "quellstück": "soaker",
    "quellstueck": "soaker",
    "pasta di riporto": "old dough",
    "esponja": "sponge",
    "pre-ferment": "preferment",
}
"""Stages that other schools call so: the word is kept as the stage's name."""

STAGE_KINDS = tuple(stage.word for stage in STAGES if (stage.preferment or stage.holds_water) and " " not in stage.word)
"""Kinds that a describing word may stand before: `rye sour`, `liquid levain`."""

TOUCHING = tuple(verb.word for verb in VERBS if verb.touches or verb.may_touch)
"""Verbs that something goes with onto the bread: `brush with egg wash 6 g each`."""

TOUCHING_WITH = tuple(verb.word for verb in VERBS if verb.opens_with == "with")
"""Those of them that say so with `with`."""

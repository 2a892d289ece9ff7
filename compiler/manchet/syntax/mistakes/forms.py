"""The form of every kind of line, as an example that can be typed: offered where nothing surer can be said.

Of a verb and of a larder's or a kitchen's line the vocabulary has an example of its own.
"""

from __future__ import annotations

import re

from manchet.syntax.loose.normal import LONGEST

FORMS: dict[str, str] = {
    "block": "a block is a word and a name, as in `formula Tern loaf`",
    "stage": "a stage is a word, its name, and its share, as in `levain sour with 22% of all flour`",
    "overall": "`overall` goes alone on its line",
    "branch": "write it like `for the rolls`, with its steps two spaces deeper",
    "variant": "a variant is a word and a name, as in `variant by hand`",
    "swap": "write it like `swap fresh yeast for instant yeast`",
    "without": "write it like `without malt`",
    "about": 'write it like `about "a hearth loaf, two fifths rye"`',
    "kind": "write it like `kind hearth loaf`",
    "makes": "write it like `makes 14 loaves at 900 g dough`, `makes 20 kg dough` or `makes 6 loaves in long tin`",
    "makes_dish": "write it like `makes 24 plates`; what a plate weighs follows from what is on it",
    "from_flour": "write it like `from 10 kg flour`",
    "sold": "write it like `sold 8-48 h old`, or `sold at most 12 h old`",
    "loss": "write it like `dough loss 2%`",
    "on_dough_flour": "`written on dough flour` goes alone on its line",
    "status": "write it like `status trial`, or `status approved 2026-11-14 by Ada`",
    "allow": 'write it like `allow salt-missing because "saltless by tradition"`',
    "material": "after the amount may come: `of all flour`, `at 98 C`, `, counted apart`, `, to taste`, `, optional`",
    "laid": "after the amount comes `each` or `in all`, and perhaps `at 20 C`, `, to taste` or `, optional`",
    "tail": "under a material may come: `at 98 C`, `counted apart`, `counted as whole rye flour`, `to taste`, `optional`",
    "take_all": "write it like `all of the sunflower seeds`",
    "take_left": "write it like `what is left of the butter at 12 C`",
    "everything_else": "`everything else` goes alone, or with a temperature: `everything else at 20 C`",
    "hold_back": "write it like `hold back salt, seeds and butter`",
    "add": "write it like `add salt and seeds`, `add butter in 4 additions` or `add water as needed`; how warm it is, of one thing "
    "a line, as in `add butter at 16 C`",
    "give_back": "write it like `return ripe rye starter`",
    "keep": "write it like `keep 60 g as ripe rye starter`, or `keep what is left as old dough`",
    "discard": "write it as `discard what is left`",
    "top_up": "write it like `top up with water`",
    "pour_off": "write it like `pour off 200 g`, or `pour off whey 200 g`",
    "lock_in": "write it like `lock in butter block`",
    "each_mix": "`made for each mix` goes alone on its line",
    "from_nothing": "`start from nothing` goes alone on its line",
    "good_for": "write it like `good for 3 d at 4 C`",
    "never_under": "write it like `never under 1 kg`",
    "step": "write a step like `ferment covered 2 h at 25 C with 2 folds every 40 min`",
    "clause_line": 'under a step may come what belongs to it: a time, `at 25 C`, `until "…"`, `may wait 20 min`',
    "on_day": "write the day as `on 2026-11-28`",
    "every_day": "write the days as in `every Sat`, or `every Tue, Thu, Sat`",
    "until_day": "write the day as `until 2026-12-24`",
    "departs": "write it like `van leaves Sat 06:00 with Quay cafe, the stall`",
    "already": "write it like `already made ripe rye starter 4 kg, egg wash 800 g made Thu 18:00`",
    "shift": "write it like `hands Tom Fri 16:00 to Sat 02:30, break 30 min`",
    "of_a_thing": "write it like `oven mother 1 fire, lit Fri 15:00-18:00`, or `mixer spiral taken Fri 15:00 to Fri 17:00`",
    "appointment": "a fixed time is the verb, the bread and when: `divide Tern loaf Fri 12:00`",
    "takes_orders": "`orders` goes alone on its line",
    "want": "a bread and how many, as in `Ebb rye 14 loaves, ready Sat 06:00`; a name with figures or such words in it wants quotes",
    "want_line": "under a bread may come: `for Quay cafe 4 loaves`, `spare 2 loaves`, `ready Sat 07:00`, `8-48 h old`",
    "stock": "write it like `stock counted 2026-11-28`",
    "counted": "write what was counted like `medium rye flour 140 kg` or `butter 6 packs`; a name with figures in it wants quotes",
    "entry_name": "write the ingredient's name alone on its line",
    "could_be": 'write it like `could be golden syrup, black treacle because "two syrups share the name"`',
    "bare_name": "write an ingredient like `water 76%`",
}

BY_EXAMPLE = ("setting", "sale", "contact", "ask")
"""Rules that read lines of many openings: the vocabulary has an example of each."""

_PIECES = re.compile(
    r"(?:makes?|yields?):? ([0-9]+) ?(?:[-x×@] ?)?(?P<weight>[0-9.]+ ?(?:g|kg|lb|oz)\b)? ?(?P<noun>[^\W\d_]+(?: (?!at\b|in\b|of\b)[^\W\d_]+)*)?"
    r"(?: ?(?:at|of|à|@) ?(?P<each>[0-9.]+ ?(?:g|kg|lb|oz)\b))?.*",
    re.IGNORECASE,
)


def makes_of(body: str) -> str:
    """The forms of the line, with the pieces that the baker makes."""
    own = _PIECES.fullmatch(body) if len(body) < LONGEST else None
    if own is None:
        return FORMS["makes"]
    noun = "loaves" if own["noun"] in (None, "at", "in", "of", "dough", "baked") else own["noun"]
    form = re.sub(r"\b(?:14|6) loaves\b", f"{own[1]} {noun}", FORMS["makes"])
    usual = "90 g" if noun.rpartition(" ")[2].lower() in _SMALL else "900 g"
    return form.replace("900 g", own["weight"] or own["each"] or usual)


_SMALL = frozenset(
    {"rolls", "buns", "bagels", "croissants", "baps", "pretzels", "scones", "doughnuts", "donuts", "brioches"}
)
"""Pieces of which nobody makes one of 900 g."""

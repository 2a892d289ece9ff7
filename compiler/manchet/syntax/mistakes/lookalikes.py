"""Words of the trade that are not words of this language, and what to write instead of each.

Asked before edit distance, which answers these wrongly (`cook` is a letter from `cool`, `scale` from nothing useful).
Words that mean the same in the other English (`proof`, `bulk`, `mould`, `pan`) are read and are not here.
"""

from __future__ import annotations

TWINS: dict[str, str] = {
    "knead": "write `mix by hand 10 min`, or `mix slow 8 min` for a machine",
    "cook": "write `heat 4 min to 65 C`, or `simmer 15 min`",
    "toast": "write `roast 10 min at 160 C`",
    "scale": "write `divide`: the weight of a piece stands in the `makes` line",
    "glaze": "write `brush with egg wash 6 g each`",
    "egg wash": "write `brush with egg wash 6 g each`",
    "knock back": "say it in the rest it belongs to: `ferment 2 h with a fold after 60 min`",
    "knock down": "say it in the rest it belongs to: `ferment 2 h with a fold after 60 min`",
    "knock": "say it in the rest it belongs to: `ferment 2 h with a fold after 60 min`",
    "punch": "say it in the rest it belongs to: `ferment 2 h with a fold after 60 min`",
    "degas": "say it in the rest it belongs to: `ferment 2 h with a fold after 60 min`",
    "autolyse": "write `mix slow 3 min`, then `rest covered 30 min`, with salt and yeast held back",
    "autolyze": "write `mix slow 3 min`, then `rest covered 30 min`, with salt and yeast held back",
    "slash": 'write `score` and the cut in quotes, as in `score "two long cuts"`',
    "stand": "write `rest 20 min`",
    "leave": "write `rest 20 min`",
    "let": "write `rest 20 min`",
    "wait": "write `rest 20 min`",
    "relax": "write `rest 20 min`",
    "bench rest": "write `rest covered 20 min`",
    "rise": "write `ferment 2 h at 25 C` for the whole dough, `prove 60 min at 28 C` for the pieces",
    "raise": "write `ferment 2 h at 25 C` for the whole dough, `prove 60 min at 28 C` for the pieces",
    "refrigerate": "write `chill 2 h at 4 C`, or `retard 12 h at 4 C` for dough that goes on fermenting",
    "pour": "write `add water`",
    "combine": "write `mix slow 3 min`, or `whisk`",
    "dissolve": "write `whisk`, or `stir`",
    "beat": "write `mix fast 5 min`, or `whisk`",
    "whip": "write `whisk`",
    "incorporate": "write `add butter`, then `mix slow 4 min`",
    "laminate": "write `lock in butter block`, then `fold in three`",
    "sheet": "write `roll out to 8 mm`",
    "preheat": "leave it out: the sheet works it out from the kitchen's oven and the first `bake` line",
    "sift": 'write `do "sift" 2 min hands-on`',
    "form": "write `shape round`",
    "preshape": "write `shape round`, then `rest covered 20 min`",
    "pre-shape": "write `shape round`, then `rest covered 20 min`",
    "round": "write `shape round`",
    "plait": "write `shape as plait`",
    "braid": "write `shape as braid`",
    "cover": "say it in the step: `rest covered 30 min`",
    "steam": "say it in the step: `bake 15 min at 250 C, steam`",
    "load": "write `bake 30 min at 230 C`",
    "pan": "write `place in long tin`",
    "transfer": "write `place in long tin`, or `place on tray`",
    "put": "write `place in long tin`, or `place on tray`",
    "set": "write `place on tray`, or `rest 20 min`",
    "ferment overnight": "say how long: `ferment 8-12 h`",
    "overnight": "say how long: `8-12 h`",
    "sourdough": "write the heading `levain` or `sour`, and the culture's own name as a material",
    "starter": "write the heading `levain`, and the culture's own name as a material",
    "mother": "write the heading `levain`, and the culture's own name as a material",
    "pate fermentee": "write the heading `old dough`",
    "pâte fermentée": "write the heading `old dough`",
    "tangzhong": "write the heading `scald`",
    "yudane": "write the heading `scald`",
    "roux": "write the heading `scald`",
    "the rest": "write `everything else`",
    "rest of the": "write `everything else`, or `what is left of the water`",
    "remaining": "write `everything else`, or `what is left of the water`",
    "all that is left": "write `everything else`",
    "ingredients": "write `overall` for the whole formula, or the name of a stage",
    "final dough": "write `dough`",
    "main dough": "write `dough`",
    "yield": "write `makes 14 loaves at 900 g dough`",
    "yields": "write `makes 14 loaves at 900 g dough`",
    "serves": "write `makes 14 loaves at 900 g dough`",
    "recipe": "write `formula` and its name",
    "sub-recipe": "write `preparation` and its name",
    "description": 'write `about "…"`',
    "notes": 'write `note "…"`',
    "comment": 'write `note "…"`, or begin the line with #',
    "type": "write `kind hearth loaf`",
}


def lookalike(words: list[str]) -> tuple[str, str] | None:
    """The longest twin a line's words (in lower case) begin with, and what to write instead."""
    for size in (4, 3, 2, 1):
        written = " ".join(words[:size])
        if len(words) >= size and written in TWINS:
            return written, TWINS[written]
    return None

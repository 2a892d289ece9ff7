"""The words of every report about how a line is written: severity, message, help. `{…}` is filled from the line."""

from __future__ import annotations

ERROR, WARNING, NOTE = "error", "warning", "note"

MESSAGES: dict[str, tuple[str, str, str]] = {
    # ---- layout
    "tab-indentation": (ERROR, "a tab stands at the start of the line", "indent with spaces, two for each step deeper"),
    "odd-indentation": (ERROR, "{spaces} stand at the start of the line", "each step deeper is two spaces: use {near}"),
    "deep-indentation": (
        ERROR,
        "{spaces} stand at the start of the line, more than the line above it allows",
        "put {most} there, or write the heading that is missing above it",
    ),
    "too-deep": (ERROR, "this line stands more than {most} steps deep", "take it and its neighbours further out"),
    "too-many-mistakes": (NOTE, "{more} more lines of this file cannot be read", "put these right and look again"),
    # ---- characters
    "no-break-space": (WARNING, "a no-break space stands here and is read as a space", "type a plain space"),
    "odd-dash": (WARNING, "{shown} stands here and is read as a plain hyphen", "type a plain hyphen -"),
    "hidden-character": (
        ERROR,
        "a character that cannot be seen stands here ({shown})",
        "delete it, and type the words around it anew",
    ),
    "look-alike-letter": (
        ERROR,
        "`{word}` mixes alphabets: {shown} only looks like a letter of the others",
        "type the word anew",
    ),
    "other-digits": (ERROR, "{shown} is a digit of another script", "write numbers with 0 to 9: `{instead}`"),
    "quote-unclosed": (ERROR, "these quotes are opened and never closed", "close them at the end of the words"),
    # ---- figures
    "number-too-long": (
        ERROR,
        "this number has more digits than anything in a bakery: {written}",
        "at most 9 digits before the point and 6 after it",
    ),
    "fraction-by-zero": (ERROR, "`{written}` divides by 0", "write the fraction with another number below the line"),
    "number-exponent": (ERROR, "`{written}` is written with an exponent", "write the number out"),
    "negative-amount": (ERROR, "`{written}` is less than nothing", "write an amount above 0; a loss is `loses 3%`"),
    "decimal-comma": (ERROR, "a comma stands inside a number: `{written}`", "write `{instead}`"),
    "number-before-fraction": (ERROR, "`{written}` can be read two ways", "if {one}; if {other}"),
    "hyphen-fraction": (
        ERROR,
        "`{written}` is a range that runs backwards",
        "for {whole} and {fraction} write `{instead}`",
    ),
    "range-backwards": (ERROR, "the range `{written}` runs backwards", "write the smaller figure first"),
    "range-of-two-kinds": (ERROR, "the two ends of `{written}` are not of one kind", "give both ends the same unit"),
    "range-as-amount": (
        ERROR,
        "`{written}` is a range, and an amount must be one figure to balance",
        'choose one; say the range in a note: `note "{written}"`',
    ),
    "range-as-number": (ERROR, "`{written}` is a range where one number is needed", "choose one"),
    "part-of-a-number": (ERROR, "`{written}` is no whole number", "write a whole number, 1 or more"),
    "unit-small-c": (
        ERROR,
        "`{written}`: is this Celsius or cups?",
        "write a capital `C` for Celsius, or `cup`",
    ),
    "unit-long-form": (WARNING, "`{written}` is read, but the unit has a short form", "write `{instead}`"),
    "unknown-unit": (ERROR, "`{unit}` in `{written}` is no unit", "{offer}"),
    "missing-unit": (ERROR, "`{written}`: the number has no unit", "{offer}"),
    "about-amount": (ERROR, "`{written}` leaves the figure open", "{offer}"),
    "to-as-range": (ERROR, "`{written}`: `to` is for a temperature that is reached", "write the range `{instead}`"),
    "by-feel-amount": (
        ERROR,
        "`{written}` cannot be weighed, costed or labelled",
        "write a start, as in `salt 2 g, to taste`",
    ),
    "amount-first": (ERROR, "the amount stands before the name", "write `{instead}`"),
    "weight-twice": (ERROR, "this line has two amounts: `{first}` and `{second}`", "keep one; {offer}"),
    # ---- words
    "unknown-word": (ERROR, "`{word}` is none of the words that begin a line here", "{offer}"),
    "overnight": (ERROR, "how long is `{word}`?", "write the hours, as in `8-12 h`"),
    "of-the-flour": (ERROR, "`of the flour`: of which flour?", "write `of all flour`, or nothing for this stage's own"),
    "name-needs-quotes": (ERROR, "the name before the amount has {what} in it", "put the name in quotes: `{instead}`"),
    "name-missing": (ERROR, "{what} of what? the name is missing", "write `{instead}`"),
    "quotes-missing": (ERROR, "the words after `{word}` need quotes", "write `{instead}`"),
    "reserved-word": (NOTE, "`{word}` is kept for a later version; what stands under it is left out", "remove it"),
    # ---- where a line stands
    "line-outside-block": (ERROR, "`{word}` stands outside a formula", "{offer}"),
    "line-outside-stage": (
        ERROR,
        "this line stands in no stage",
        "put it under `overall`, `dough` or the heading of a stage, two spaces deeper",
    ),
    # ---- what a line lacks
    "makes-unclear": (ERROR, "how much does it make, and before or after baking?", "{offer}"),
    "touching-without-weight": (
        ERROR,
        "how much {name}?",
        "write its weight, as in `{instead}`: it is eaten, paid for and on the label",
    ),
    "each-or-in-all": (ERROR, "{amount} {name}: for each piece, or in all?", "write `{each}` or `{all}`"),
    "with-what": (
        ERROR,
        "`{verb} with {name}`: nothing of the kind goes with `{verb}`",
        "write folds as in `with 4 folds every 30 min`, an ingredient on a line of its own, as in `add {name}`",
    ),
    "touching-nothing": (ERROR, "{verb} with what?", "{offer}"),
    "place-without-thing": (ERROR, "{verb} where?", "{offer}"),
    "whose-time": (
        ERROR,
        "is this hands-on work or waiting?",
        "write `hands-on` or `waiting` at the end: the card plans with it",
    ),
    "why-allowed": (ERROR, "why is {name} allowed?", "say why: `{instead}`"),
    "line-unfinished": (ERROR, "`{text}` is not finished", "{form}"),
    "unreadable-line": (ERROR, "`{text}` cannot be read here", "{form}"),
}

FORMS: dict[str, str] = {
    "block": "a block is a word and a name, as in `formula Tern loaf`",
    "stage": "a stage is a word, its name, and its share, as in `levain sour with 22% of all flour`",
    "overall": "`overall` stands alone on its line",
    "branch": "write it as in `for the rolls`, with its steps two spaces deeper",
    "variant": "a variant is a word and a name, as in `variant by hand`",
    "swap": "write it as in `swap fresh yeast for instant yeast`",
    "without": "write it as in `without malt`",
    "about": 'write it as in `about "a hearth loaf, two fifths rye"`',
    "kind": "write it as in `kind hearth loaf`",
    "makes": "write it as in `makes 14 loaves at 900 g dough`, `makes 20 kg dough` or `makes 6 loaves in long tin`",
    "from_flour": "write it as in `from 10 kg flour`",
    "loss": "write it as in `dough loss 2%`",
    "percentages": "`percentages of dough flour` stands alone on its line",
    "status": "write it as in `status trial`, or `status approved 2026-11-14 by Ada`",
    "allow": 'write it as in `allow salt-missing because "saltless by tradition"`',
    "material": "after the amount may stand: `of all flour`, `at 98 C`, `, counted apart`, `, to taste`",
    "tail": "under a material may stand: `at 98 C`, `counted apart`, `counted as whole rye flour`, `to taste`",
    "take_all": "write it as in `all of the sunflower seeds`",
    "take_left": "write it as in `what is left of the butter at 12 C`",
    "everything_else": "`everything else` stands alone, or with a temperature: `everything else at 20 C`",
    "hold_back": "write it as in `hold back salt, seeds and butter`",
    "add": "write it as in `add salt and seeds`, `add butter in 4 additions` or `add water as needed`",
    "give_back": "write it as in `return ripe rye starter`",
    "keep": "write it as in `keep 60 g as ripe rye starter`, or `keep what is left as old dough`",
    "discard": "write it as `discard what is left`",
    "top_up": "write it as in `top up with water`",
    "lock_in": "write it as in `lock in butter block`",
    "each_mix": "`made for each mix` stands alone on its line",
    "from_nothing": "`start from nothing` stands alone on its line",
    "good_for": "write it as in `good for 3 d at 4 C`",
    "step": "write a step as in `ferment covered 2 h at 25 C with 2 folds every 40 min`",
    "clause_line": 'under a step may stand what belongs to it: a time, `at 25 C`, `until "…"`, `may wait 20 min`',
    "entry_name": "write the ingredient's name alone on its line",
    "setting": "{shape}",
    "could_be": 'write it as in `could be golden syrup, black treacle because "two syrups share the name"`',
    "bare_name": "write an ingredient as in `water 76%`",
}

SHAPES: dict[str, str] = {
    "class": "class rye flour", "also called": "also called rye 1150, medium rye", "allergens": "allergens rye, gluten",
    "may contain": "may contain nuts", "density": "density 0.55 kg/l", "whole": "whole 50 g", "kept at": "kept at 4 C",
    "price": "price 21.40 EUR for 25 kg on 2026-09-14", "source": 'source "mill\'s own sheet, August 2026"',
    "good for": "good for 5 d at 4 C", "air": "air 22 C", "flour": "flour 20 C", "tap": "tap 12 C", "hands": "hands 2",
    "measures": "measures US", "yeast": "yeast fresh", "words": "words American", "takes": "takes 6-45 kg dough",
    "slow": "slow 110 turns a minute", "fast": "fast 210 turns a minute", "hottest": "hottest 330 C",
    "warms": "warms 11 C in 8 min slow, 4 min fast", "keeps": "keeps 4 C", "heat": "heat wood, falling",
    "holds": "holds 24 loaves, or 6 rounds", "recovers": "recovers 4 min", "heats in": "heats in 90 min",
    "volume": "volume 1900 ml", "count": "count 24", "reads": "reads 5 g", "up to": "up to 30 kg",
    "takes water": "takes water 68%", "yeast factors": "yeast factors Hamelman",
    "steam": "steam by pan", "per 100 g": "per 100 g", "made of": "made of",
}  # fmt: skip
"""An example of every setting."""

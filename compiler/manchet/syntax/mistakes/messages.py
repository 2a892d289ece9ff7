"""The words of every report about how a line is written: message and help. `{…}` is filled from the line.

A help of "" is told from the fixes of the fault.
"""

from __future__ import annotations

_MEND = "`manchet check --mend` writes it so"
"""The help of what is read, where the message has all there is to type."""

MESSAGES: dict[str, tuple[str, str]] = {
    # ---- layout
    "tab-indentation": ("there is a tab at the start of the line", ""),
    "odd-indentation": ("{spaces} at the start of the line", "each step deeper is two spaces: use {near}"),
    "deep-indentation": (
        "{spaces} at the start of the line, more than the line above it allows",
        "put {most} there, or write the heading that is missing above it",
    ),
    "too-deep": ("this line is more than {most} steps deep", "move it and its neighbours to the left"),
    "too-many-mistakes": ("{more} more lines of this file cannot be read", "put these right and check again"),
    # ---- characters
    "no-break-space": ("there is a no-break space here; it is read as a space", ""),
    "odd-dash": ("{shown} is read as a plain hyphen here", ""),
    "hidden-character": (
        "there is a character here that cannot be seen ({shown})",
        "delete it, and retype the words around it",
    ),
    "look-alike-letter": (
        "`{word}` mixes alphabets: {shown} only looks like a letter of the others",
        "retype the word",
    ),
    "other-digits": ("{shown} is a digit of another script", "write numbers with 0 to 9: `{instead}`"),
    "quote-unclosed": ("the quotes before `{text}` are never closed", 'close them at the end of the words: `"{text}"`'),
    "read-as": ("read as `{normal}`", _MEND),
    # ---- figures
    "number-too-long": (
        "this number has more digits than anything in a bakery: {written}",
        "at most 9 digits before the point and 6 after it",
    ),
    "fraction-by-zero": ("`{written}` divides by 0", "write the fraction with another number below the line"),
    "fraction-or-two": ("`{written}`: a fraction, or two figures?", "write {offer}"),
    "number-exponent": ("`{written}` is written with an exponent", "write the number out"),
    "negative-amount": ("`{written}` is below zero", "write an amount above 0; a loss is `loses 3%`"),
    "thousands-point": ("`{written}`: is that a decimal point, or does it separate thousands?", ""),
    "decimal-comma": ("a comma stands inside a number: `{written}`", "write {instead}"),
    "number-before-fraction": ("`{written}` can be read two ways", "if {one}; if {other}"),
    "hyphen-fraction": ("`{written}` is a range that runs backwards", "for {whole} and {fraction} write `{instead}`"),
    "range-backwards": ("the range `{written}` runs backwards", "write `{instead}`"),
    "range-of-two-kinds": ("the two ends of `{written}` measure different things", "give both ends the same unit"),
    "range-as-amount": (
        "`{written}` is a range; an amount must be a single figure for the formula to balance",
        "{offer}",
    ),
    "how-much-more": (
        "`{name} {written}` goes in as the flour asks, and nothing says how much more that may be",
        "give a range, low end first; or leave the words out, and add what is held back by feel, as in `add water as needed`",
    ),
    "range-as-number": ("`{written}` is a range where one number is needed", "choose one"),
    "part-of-a-number": ("`{written}` is not a whole number", "write a whole number, 1 or more"),
    "unit-small-c": ("`{written}`: is this Celsius or cups?", "write a capital `C` for Celsius, or `cup`"),
    "old-spelling": ("`{written}` is an older spelling of `{now}`", _MEND),
    "ripen-or-ferment": ("`{verb}` in a {stage} is read as `{now}`", _MEND),
    "unit-long-form": ("`{written}` is read, but the unit has a short form", ""),
    "unknown-unit": ("`{unit}` in `{written}` is not a unit", "{offer}"),
    "missing-unit": ("`{written}`: the number has no unit", "{offer}"),
    "number-in-two": (
        "`{written}`: a space stands inside the number",
        "write `{whole}`; if the first number is part of the name, put the name in quotes",
    ),
    "gas-mark": (
        "`{written}` is a mark on a domestic gas oven; a bakery oven has none",
        "{offer}",
    ),
    "two-scales": ("`{written}`: one temperature in two scales, and they never agree to the degree", ""),
    "clock-or-minutes": ("`{written}`: hours and minutes, or minutes and seconds?", ""),
    "packet": ("`{written}`: how many grams is that?", "{offer}"),
    "figure-in-words": ("`{text}` gives its figure in words", ""),
    "how-many-folds": ("how many folds? `{written}` does not say", "write `{instead}`, with your own number"),
    "about-amount": ("`{written}` leaves the figure open", "{offer}"),
    "to-as-range": ("`{written}`: `to` is for a temperature to reach", "write the range `{instead}`"),
    "by-feel-amount": (
        "`{written}` cannot be weighed, costed or labelled",
        "write an amount to start from, as in `{name} 2 g, to taste`",
    ),
    "amount-first": ("`{written}` comes before the name", "write {instead}"),
    "weight-twice": ("this line has two amounts: `{first}` and `{second}`", "keep one; {offer}"),
    # ---- words
    "unknown-word": ("`{word}` is not a word that begins a line here", "{offer}"),
    "overnight": ("how long is `{word}`?", "write the hours, as in `8-12 h`"),
    "of-the-flour": ("`{written}`: of which flour?", "write {instead}"),
    "name-needs-quotes": ("the name before the amount has {what} in it", "put the name in quotes: `{instead}`"),
    "name-missing": ("{what} of what? the name is missing", "write `{instead}`"),
    "quotes-missing": ("the words after `{word}` need quotes", "write `{instead}`"),
    "reserved-word": ("`{word}` is reserved for a later version; the lines under it are left out", "remove it"),
    # ---- where a line stands
    "line-outside-block": ("`{word}` is outside a formula", "{offer}"),
    "line-outside-stage": (
        "`{text}` is in no stage",
        "put it under `overall`, `dough` or the heading of a stage, two spaces deeper",
    ),
    # ---- what a line lacks
    "makes-unclear": ("`{text}`: how much does it make, and before or after baking?", "{offer}"),
    "touching-without-weight": (
        "how much {name}?",
        "write its weight, as in `{instead}`: it is eaten, paid for and on the label",
    ),
    "each-or-in-all": ("{amount} {name}: for each piece, or in all?", "write `{each}` or `{all}`"),
    "no-place": ("`{written}`: no place is named after `{verb}`", "{offer}"),
    "with-what": ("`{verb} with {name}`: nothing of the kind goes with `{verb}`", "{offer}"),
    "touching-nothing": ("{verb} with what?", "{offer}"),
    "place-without-thing": ("{verb} where?", "{offer}"),
    "whose-time": (
        "is this hands-on work or waiting?",
        "write `hands-on` or `waiting` at the end: the card plans with it",
    ),
    "why-allowed": ("why is {name} allowed?", "say why: `{instead}`"),
    "line-unfinished": ("`{text}` is not finished", "{form}"),
    "unreadable-line": ("`{text}` cannot be read here", "{form}"),
}

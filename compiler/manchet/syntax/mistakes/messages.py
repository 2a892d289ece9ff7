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
    "quote-unclosed": (
        ERROR,
        "the quotes before `{text}` are never closed",
        'close them at the end of the words: `"{text}"`',
    ),
    # ---- figures
    "number-too-long": (
        ERROR,
        "this number has more digits than anything in a bakery: {written}",
        "at most 9 digits before the point and 6 after it",
    ),
    "fraction-by-zero": (ERROR, "`{written}` divides by 0", "write the fraction with another number below the line"),
    "number-exponent": (ERROR, "`{written}` is written with an exponent", "write the number out"),
    "negative-amount": (ERROR, "`{written}` is less than nothing", "write an amount above 0; a loss is `loses 3%`"),
    "decimal-comma": (ERROR, "a comma stands inside a number: `{written}`", "write {instead}"),
    "number-before-fraction": (ERROR, "`{written}` can be read two ways", "if {one}; if {other}"),
    "hyphen-fraction": (
        ERROR,
        "`{written}` is a range that runs backwards",
        "for {whole} and {fraction} write `{instead}`",
    ),
    "range-backwards": (ERROR, "the range `{written}` runs backwards", "write `{instead}`"),
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
        "write a start, as in `{name} 2 g, to taste`",
    ),
    "amount-first": (ERROR, "`{written}` stands before the name", "write `{instead}`"),
    "weight-twice": (ERROR, "this line has two amounts: `{first}` and `{second}`", "keep one; {offer}"),
    # ---- words
    "unknown-word": (ERROR, "`{word}` is none of the words that begin a line here", "{offer}"),
    "overnight": (ERROR, "how long is `{word}`?", "write the hours, as in `8-12 h`"),
    "of-the-flour": (ERROR, "`{written}`: of which flour?", "write {instead}"),
    "name-needs-quotes": (ERROR, "the name before the amount has {what} in it", "put the name in quotes: `{instead}`"),
    "name-missing": (ERROR, "{what} of what? the name is missing", "write `{instead}`"),
    "quotes-missing": (ERROR, "the words after `{word}` need quotes", "write `{instead}`"),
    "reserved-word": (NOTE, "`{word}` is kept for a later version; what stands under it is left out", "remove it"),
    # ---- where a line stands
    "line-outside-block": (ERROR, "`{word}` stands outside a formula", "{offer}"),
    "line-outside-stage": (
        ERROR,
        "`{text}` stands in no stage",
        "put it under `overall`, `dough` or the heading of a stage, two spaces deeper",
    ),
    # ---- what a line lacks
    "makes-unclear": (ERROR, "`{text}`: how much does it make, and before or after baking?", "{offer}"),
    "touching-without-weight": (
        ERROR,
        "how much {name}?",
        "write its weight, as in `{instead}`: it is eaten, paid for and on the label",
    ),
    "each-or-in-all": (ERROR, "{amount} {name}: for each piece, or in all?", "write `{each}` or `{all}`"),
    "with-what": (
        ERROR,
        "`{verb} with {name}`: nothing of the kind goes with `{verb}`",
        "{offer}",
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

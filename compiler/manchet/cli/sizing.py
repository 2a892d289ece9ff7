"""The options that say how much is wanted, and in whose units and words it is printed."""

from __future__ import annotations

import argparse
import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction

    from manchet.batch.order import Order

LONGEST = 200
"""Characters of a figure or a name that is given with an option."""


def arguments(parser: argparse.ArgumentParser) -> None:
    group = parser.add_argument_group("how much (default: what the file says)")
    group.add_argument(
        "--pieces",
        action="append",
        type=pieces,
        metavar="N",
        help="this many; '24 rolls' if the formula makes several sorts",
    )
    group.add_argument(
        "--piece-weight", type=piece_weight, metavar="WEIGHT", help="weight of one: '900 g dough', '800 g baked'"
    )
    group.add_argument("--dough", type=weight, metavar="WEIGHT", help="this much dough in all, such as 20kg")
    group.add_argument("--flour", type=weight, metavar="WEIGHT", help="this much flour in all")
    group.add_argument("--tin", default="", type=name, metavar="NAME", help="enough to fill this tin from the kitchen")
    group.add_argument(
        "--have", type=have, metavar="WHAT", help="as much as this will make: 'milk 500 g', 'eggs 12 whole'"
    )
    group.add_argument(
        "--kitchen", default="", type=name, metavar="NAME", help="for this kitchen, if there are several"
    )


def swapping(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--swap",
        action="append",
        default=[],
        type=swap,
        metavar="WHAT",
        help="swap an ingredient: 'fresh yeast for instant yeast'",
    )
    parser.add_argument(
        "--wait", action="append", default=[], type=wait, metavar="WHAT",
        help="another time or temperature, with the yeast to suit: 'poolish 16 h at 18 C'",
    )  # fmt: skip


def swap(text: str) -> str:
    """One ingredient for another: `fresh yeast for instant yeast`."""
    from manchet.changes.swaps.binding import swap_asked_for

    if len(text) > LONGEST or "\n" in text or swap_asked_for(text) is None:
        forms = "'fresh yeast for instant yeast', or 'fresh yeast for ripe wheat starter with 20% of all flour'"
        raise argparse.ArgumentTypeError(f"{text[:LONGEST]!r} is not a swap; write it as {forms}")
    return text


def wait(text: str) -> str:
    """A stage whose wait is to be another: `poolish 16 h at 18 C`, `poolish 16 h`, `dough at 22 C`."""
    from manchet.changes.waits import wanted_wait

    if len(text) > LONGEST or "\n" in text or wanted_wait(text) is None:
        raise argparse.ArgumentTypeError(
            f"{text[:LONGEST]!r} does not say which stage waits, how long and how warm; write it as "
            "'poolish 16 h at 18 C', 'poolish 16 h' or 'dough at 22 C'"
        )
    return text


def order_of(options: argparse.Namespace) -> Order:
    """What is wanted. Raises `Unknown` where two options contradict each other."""
    from manchet.batch.order import Order
    from manchet.workspace.trouble import Unknown

    whole = [word for word in ("dough", "flour", "have") if getattr(options, word) is not None]
    if len(whole) > 1 or (whole and options.pieces):
        both = [*(f"--{word}" for word in whole), *(["--pieces"] if options.pieces else [])]
        raise Unknown(f"{' and '.join(both[:2])} each say how much is made", "give one of them")
    state_grams = options.piece_weight or ("dough", None)
    return Order(
        pieces=tuple(options.pieces or ()),
        piece_grams=state_grams[1],
        piece_state=state_grams[0],
        dough=options.dough,
        flour=options.flour,
        tin=options.tin,
        have=options.have[:2] if options.have else None,
        have_whole=options.have is not None and options.have[2],
    )


def weight(text: str) -> Fraction:
    """Grams: `20kg`, `1.5 kg`, `2 lb 4 oz`."""
    grams, rest = _weight(text.strip())
    if rest:
        raise argparse.ArgumentTypeError(f"{text} is not a weight; write it as 20 kg or 900 g")
    return grams


def piece_weight(text: str) -> tuple[str, Fraction]:
    """What one weighs, as dough or baked: the word is obligatory, for the two differ by an eighth and more."""
    grams, state = _weight(text.strip())
    if state not in ("dough", "baked"):
        raise argparse.ArgumentTypeError(f"{text} does not say which: '900 g dough' or '800 g baked'")
    return state, grams


def pieces(text: str) -> tuple[Fraction, str]:
    """How many, and of what: `24`, `24 rolls`."""
    number, _, noun = text.strip().partition(" ")
    if not (number.isascii() and number.isdigit() and len(number) <= 9) or not int(number):
        raise argparse.ArgumentTypeError(f"{text} is not a number of pieces; write it as 24, or '24 rolls'")
    from fractions import Fraction

    return Fraction(int(number)), name(noun)


def have(text: str) -> tuple[str, Fraction, bool]:
    """An ingredient, how much there is of it, and whether that is counted: `milk 500 g`, `eggs 12 whole`, `wheat 550 20 kg`."""
    words = name(text).split(" ")
    if len(words) > 2 and words[-1] == "whole" and words[-2].isascii() and words[-2].isdigit() and int(words[-2]):
        from fractions import Fraction

        return " ".join(words[:-2]), Fraction(int(words[-2])), True
    wrong = argparse.ArgumentTypeError(f"{text} does not say how much of what; write it as 'milk 500 g'")
    for first in range(1, len(words)):
        if words[first][:1] in "0123456789.½⅓⅔¼¾⅛":
            try:
                grams, rest = _weight(" ".join(words[first:]))
            except argparse.ArgumentTypeError as no_weight:
                wrong = no_weight  # the figure may be the name's, as in `wheat 550`
                continue
            if not rest:
                return " ".join(words[:first]), grams, False
    raise wrong


def name(text: str) -> str:
    if len(text) > LONGEST:
        raise argparse.ArgumentTypeError(f"is longer than {LONGEST} characters")
    return " ".join(text.split())


def _weight(text: str) -> tuple[Fraction, str]:
    """Grams, and what stands after them."""
    from manchet.quantities.reading import figure_at
    from manchet.quantities.units import MASS, UNITS

    comma = re.match(r"(\d{1,9}),(\d{1,9}) ?([A-Za-z]+)", text)
    if comma and comma[3] in UNITS and len(comma[2]) != 3:
        raise argparse.ArgumentTypeError(f"{text[:LONGEST]} has a comma; write `{comma[1]}.{comma[2]} {comma[3]}`")
    if comma and comma[3] in UNITS:
        whole, rest, unit = comma.groups()
        raise argparse.ArgumentTypeError(
            f"{text[:LONGEST]} has a comma; write `{whole}{rest} {unit}`, or `{whole}.{rest} {unit}`"
        )
    figure = figure_at(text, 0) if len(text) <= LONGEST else None
    unit = UNITS.get(figure.unit) if figure else None
    if figure is None or unit is None or unit.dimension != MASS or figure.fault or figure.low != figure.high:
        raise argparse.ArgumentTypeError(f"{text[:LONGEST]} is not a weight; write it as 20 kg or 900 g")
    if figure.low <= 0:
        raise argparse.ArgumentTypeError(f"{text} is nothing to weigh; ask for more than 0")
    return figure.low * unit.factor, text[figure.length :].strip()

"""A food that is sold with a label, with an ingredient of which nobody knows whether it has an allergen."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.allergens import sulphites_at_most
from manchet.label.declaration import labelled_pieces
from manchet.label.markets import MOST_SULPHITES, sulphite_limit
from manchet.quantities.printing import decimal

NAME = "label-allergen-unknown"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        markets = tuple(label.market for label in labels)
        unknown: dict[str, dict[str, str]] = {}
        for label in labels:
            for finding in label.unknown:
                for because in finding.because:
                    unknown.setdefault(because.ingredient.name, {})[finding.allergen] = because.why
        for name, allergens in unknown.items():
            if name not in told:
                told.add(name)
                yield _told(work, piece, name, allergens, markets)


def _told(work: Work, piece: SoldPiece, name: str, allergens: dict[str, str], markets: tuple[str, ...]) -> Diagnostic:
    place = line_that_brings(work, piece, name)
    if len(allergens) > FEW:
        why = next(iter(allergens.values()))
        message = f"{name}: nobody knows which allergens it has, so no label can be printed; {why}"
        help = f"write under `{name}` in the larder what its packet says: `allergens …`, or `no allergens`"
        return report(NAME, place, message, help)
    reasons = dict.fromkeys(allergens.values())
    if "sulphites" in allergens:
        reasons[_sulphites(piece, name, markets)] = None
    why = "; ".join(filter(None, reasons))
    words = list_of_words(tuple(allergens), "and")
    message = f"{name}: not known whether it has {words}, so no label can be printed; {why}"
    answers = [
        f"`allergens {word}`{' (or how much: `sulphites 400 mg/kg`)' if word == 'sulphites' else ''} or `no {word}`"
        for word in allergens
    ]
    help = f"write under `{name}` in the larder what its packet says: {list_of_words(tuple(answers), 'and')}"
    return report(NAME, place, message, help)


def _sulphites(piece: SoldPiece, name: str, markets: tuple[str, ...]) -> str:
    """What it can bring of them, and from where on they are declared: the packet of dried fruit often tells."""
    brought = sulphites_at_most(piece, name)
    limits = dict.fromkeys(sulphite_limit(market) for market in markets if market)
    from_on = list_of_words(
        tuple(
            dict.fromkeys(
                f"{one.milligrams} mg/kg or more" if one.at_the_limit else f"over {one.milligrams}" for one in limits
            )
        )
    )
    share = decimal(brought.share * 100, 1 if brought.share >= Fraction(1, 100) else 2)
    return (
        f"at {share}% of the food, and up to {MOST_SULPHITES:,} mg/kg in it, it brings up to {decimal(brought.milligrams, 0 if brought.milligrams >= NEAR else 1)} mg/kg of"
        f" sulphites, and {from_on} is declared"
    )


NEAR = 20
"""Milligrams: under it a tenth decides."""
FEW = 3
"""So many are named one by one."""

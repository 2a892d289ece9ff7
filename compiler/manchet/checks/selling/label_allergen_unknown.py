"""A food that is sold, with a label or loose, with an ingredient of which nobody knows whether it has an allergen."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.formula.sale import LOOSE
from manchet.label.allergens import AllergenAnswer, findings, sulphites_at_most
from manchet.label.declaration import labelled_pieces
from manchet.label.how_sold import sale_of_noun
from manchet.label.markets import MOST_SULPHITES, markets_of, sulphite_limit
from manchet.quantities.printing import decimal

NAME = "label-allergen-unknown"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for sort in labelled_pieces(work):
        if sort.labels:
            markets = tuple(label.market for label in sort.labels)
            found = [finding for label in sort.labels for finding in label.unknown]
            cannot = "no label can be printed"
        elif any(way.way == LOOSE for way in sale_of_noun(work.formula, sort.piece.noun).ways):
            # Whoever sells loose tells of allergens too: Regulation (EU) 1169/2011, article 44(1)(a).
            markets = markets_of(work.kitchen)
            found = [
                one
                for market in markets
                for one in findings(sort.piece, market)
                if one.answer is AllergenAnswer.NOT_KNOWN
            ]
            cannot = "nobody who asks about allergens can be told"
        else:
            continue
        unknown: dict[str, dict[str, str]] = {}
        for finding in found:
            for because in finding.because:
                unknown.setdefault(because.ingredient.name, {})[finding.allergen] = because.why
        for name, allergens in unknown.items():
            if name not in told:
                told.add(name)
                yield _told(work, sort.piece, name, allergens, markets, cannot)


def _told(
    work: Work, piece: SoldPiece, name: str, allergens: dict[str, str], markets: tuple[str, ...], cannot: str
) -> Diagnostic:
    place = line_that_brings(work, piece, name)
    if len(allergens) > FEW:
        why = next(iter(allergens.values()))
        message = f"{name}: not known which allergens it has, so {cannot}; {why}"
        help = f"write under `{name}` in the larder what its packet says: `allergens …`, or `no allergens`"
        return report(NAME, place, message, help)
    reasons = dict.fromkeys(allergens.values())
    if "sulphites" in allergens:
        reasons[_sulphites(piece, name, markets)] = None
    why = "; ".join(filter(None, reasons))
    words = list_of_words(tuple(allergens), "and")
    message = f"{name}: not known whether it has {words}, so {cannot}; {why}"
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

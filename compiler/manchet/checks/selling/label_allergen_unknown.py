"""A food that is sold with a label, with an ingredient of which nobody knows whether it has an allergen."""

from collections.abc import Iterator

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.declaration import labelled_pieces

NAME = "label-allergen-unknown"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        unknown: dict[str, dict[str, str]] = {}
        for label in labels:
            for finding in label.unknown:
                for because in finding.because:
                    unknown.setdefault(because.ingredient.name, {})[finding.allergen] = because.why
        for name, allergens in unknown.items():
            if name not in told:
                told.add(name)
                yield _told(work, piece, name, allergens)


def _told(work: Work, piece: SoldPiece, name: str, allergens: dict[str, str]) -> Diagnostic:
    place = line_that_brings(work, piece, name)
    why = next(iter(allergens.values()))
    if len(allergens) > FEW:
        message = f"{name}: nobody knows which allergens it has, so no label can be printed; {why}"
        help = f"write under `{name}` in the larder what its packet says: `allergens …`, or `no allergens`"
        return report(NAME, place, message, help)
    words = list_of_words(tuple(allergens), "and")
    message = f"{name}: not known whether it has {words}, so no label can be printed; {why}"
    answers = [f"`allergens {word}` or `no {word}`" for word in allergens]
    help = f"write under `{name}` in the larder what its packet says: {list_of_words(tuple(answers), 'and')}"
    return report(NAME, place, message, help)


FEW = 3
"""So many are named one by one."""

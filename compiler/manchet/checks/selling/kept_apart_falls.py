"""A food that is said to be kept apart from an allergen, and has it, may have it, or has something in it of which nobody knows."""

from collections.abc import Iterator

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.contact import fallen

NAME = "kept-apart-falls"
ABOUT = ("kept apart",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[tuple[str, str]] = set()
    for piece in sold_pieces(work):
        for one in fallen(work, piece):
            if (one.allergen, one.why) in told:
                continue
            told.add((one.allergen, one.why))
            name = work.formula.name
            if one.of_kitchen:
                place = line_that_brings(work, piece, one.brought_by) if one.brought_by else work.formula.place
                message = (
                    f"the kitchen says `kept apart from {one.allergen}`, and that does not hold for {name}: {one.why}"
                )
                help = f"the card leaves it out for {name}; say it at the head of the breads it is true of"
            else:
                place = one.contact.place
                message = f"`kept apart from {one.allergen}` does not hold for {name}: {one.why}"
                help = "take the line out; as long as this is so it is printed nowhere"
            yield report(NAME, place, message, help)

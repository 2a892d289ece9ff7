"""A food whose label is called by a name that it may not have: `wholemeal`, with a flour in it that is not; `gluten-free`."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.declaration import labelled_pieces
from manchet.label.how_sold import sale_of_noun
from manchet.label.markets import US

NAME = "label-name-unlawful"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        called = sale_of_noun(work.formula, piece.noun).called
        for label in labels:
            found = label.misnamed
            if found is None or found.word in told:
                continue
            told.add(found.word)
            where = "the United States" if label.market == US else label.market
            message = (
                f"`{found.word}` stands in the name of {work.formula.name}; {found.why}. For {where} no label of it is printed"
                f" ({found.source})"
            )
            help = f"leave `{found.word}` out of its names"
            yield report(NAME, work.formula.place if called is None else called.place, message, help)

"""A bread whose label is called by a name that the law keeps for another: `wholemeal`, with a flour in it that is not."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.declaration import labelled_pieces
from manchet.label.how_sold import sale_of_noun

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
            flours = list_of_words(found.flours, "and")
            message = (
                f"`{found.word}` stands in the name of {work.formula.name}, and not all its flour is {found.word}: {flours}; in"
                f" {'the United States' if label.market == 'US' else label.market} no label of it can be printed ({found.rule.source})"
            )
            help = f"leave `{found.word}` out of its names; `says how much of …` tells of it in the list"
            yield report(NAME, work.formula.place if called is None else called.place, message, help)

"""A food that weighs less than its label says."""

from collections.abc import Iterator

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.how_sold import sale_of_noun
from manchet.label.net_weight import tolerable_error

NAME = "net-weight-short"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    for piece in sold_pieces(work):
        for way in sale_of_noun(work.formula, piece.noun).ways:
            weighs = piece.finished
            if way.net is None or weighs is None or weighs >= way.net:
                continue
            single = tolerable_error(way.net)
            message = (
                f"the label says {grams(way.net)}, and a cooled piece of {work.formula.name} weighs {grams(weighs)}; on average none may be"
                f" short, and about one in forty by up to {grams(single)}"
            )
            help = (
                f"declare {grams(weighs)} or less, with what it still loses on the shelf taken off, or divide heavier"
            )
            yield report(NAME, way.place, message, help)

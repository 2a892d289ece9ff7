"""A food that weighs less than its label says, when it is cooled or while it is sold."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.losses.bake_loss import kept_weight
from manchet.formula.sale import SoldAs
from manchet.label.how_sold import sale_of_noun
from manchet.label.net_weight import shortfall, tolerable_error
from manchet.quantities.printing import decimal
from manchet.syntax.vocabulary import WRAPS

NAME = "net-weight-short"
ABOUT = ("sold",)

HOUR = 3600
A_DAY = Fraction(24)
"""Hours on the shelf, of a bread that does not say how old it is sold. Our rule."""
HOLDS_STEAM = frozenset({"film", "bag", "bags", "plastic", "foil"})
"""What a bread loses little in."""


def check(work: Work) -> Iterator[Diagnostic]:
    for piece in sold_pieces(work):
        for way in sale_of_noun(work.formula, piece.noun).ways:
            weighs = piece.finished
            if way.net is None or weighs is None:
                continue
            if weighs < way.net:
                yield _short_when_cooled(work, way, way.net, weighs)
                continue
            hours = _hours_sold(work)
            kept = None if _holds_its_weight(work, piece.noun) else kept_weight(work.formula, weighs, hours)
            at_best = (
                way.net if kept is None else kept[1]
            )  # of two ends of an estimate: nobody is told of a loss that may not be
            if at_best < way.net:
                yield _short_on_the_shelf(work, way, way.net, weighs, at_best, hours)


def _short_when_cooled(work: Work, way: SoldAs, net: Fraction, weighs: Fraction) -> Diagnostic:
    short, single = shortfall(net, weighs), tolerable_error(net)
    over = 0 if short is None else short.errors
    allowed = (
        f"the average may not be short, and about one in forty may be, by up to {grams(single)}"
        if not over
        else f"that is over the {grams(single)} by which one in forty may be short"
        if over == 1
        else f"that is over {grams(2 * single)}, by which none may be short"
    )
    message = (
        f"the label says {grams(net)}, and a cooled piece of {work.formula.name} weighs {grams(weighs)}; {allowed}"
    )
    help = f"declare {grams(weighs)} or less, with what it still loses on the shelf taken off, or divide heavier"
    return report(NAME, way.place, message, help)


def _short_on_the_shelf(
    work: Work, way: SoldAs, net: Fraction, weighs: Fraction, later: Fraction, hours: Fraction
) -> Diagnostic:
    message = (
        f"the label says {grams(net)}, and a piece of {work.formula.name} weighs {grams(weighs)} when cooled; unwrapped it weighs at"
        f" best about {decimal(later, 0)} g after {decimal(hours, 0)} h (estimate), and it has to weigh what its label says for as long as it is sold"
    )
    help = (
        f"declare {decimal(later, 0)} g or less, or divide heavier; if it is wrapped tight, say so, as in `pack in bags`: what it loses then"
        " is not counted"
    )
    return report(NAME, way.place, message, help)


def _hours_sold(work: Work) -> Fraction:
    sold = work.formula.sold
    return A_DAY if sold is None or sold.high is None else sold.high / HOUR


def _holds_its_weight(work: Work, noun: str) -> bool:
    steps = work.formula.way_of(noun)
    return any(
        step.verb in WRAPS and step.where is not None and not HOLDS_STEAM.isdisjoint(step.where[1].split())
        for step in steps
    )

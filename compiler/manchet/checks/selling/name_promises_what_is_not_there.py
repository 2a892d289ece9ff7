"""A food that is sold by a name which promises an ingredient that is not in it: `Butter bread with walnuts` without walnuts."""

from collections.abc import Iterator

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.formula.sale import LOOSE
from manchet.label.absent import absent_from, source_in
from manchet.label.how_sold import sale_of_noun
from manchet.label.markets import markets_of

NAME = "name-promises-what-is-not-there"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece in sold_pieces(work):
        sale = sale_of_noun(work.formula, piece.noun)
        if sale.called is None or not sale.ways or sale.called.text in told:
            continue
        absent = absent_from(piece, sale.called.text)
        if not absent:
            continue
        told.add(sale.called.text)
        words = list_of_words(tuple(f"`{word}`" for word in absent), "and")
        stands, is_in = (
            ("stands", "it is not")
            if len(absent) == 1
            else ("stand", "neither is" if len(absent) == 2 else "none of them is")
        )
        prints = "" if all(way.way == LOOSE for way in sale.ways) else ", and no label of it is printed"
        source = list_of_words(tuple(dict.fromkeys(source_in(market) for market in markets_of(work.kitchen))), "and")
        message = f"{words} {stands} in the name of {work.formula.name}, and {is_in} in it: the name misleads{prints} ({source})"
        which = "it" if len(absent) == 1 else "them"
        help = (
            f"leave {words} out of `called`, or weigh {which} in; an ingredient that is just that, by another name, gets a line in the larder:"
            f" `also called {absent[0]}`"
        )
        yield report(NAME, sale.called.place, message, help)

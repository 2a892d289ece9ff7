"""The shelf tickets of one formula: name, price, weight, and what it contains."""

from __future__ import annotations

from fractions import Fraction

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.formula.sale import LOOSE, Sale, SellsAt
from manchet.label.how_sold import sale_of_noun
from manchet.sheets.forms.shelf.view import ShelfTicket, ShelfTickets
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergens_of_piece
from manchet.sheets.parts.label_paper import label_paper
from manchet.sheets.parts.money import price_tag

KILO = 1000


def shelf_tickets(work: Work, issue: Issue, house: House) -> ShelfTickets | None:
    """None where nothing of it is sold loose."""
    words = words_of(house.words)
    m = Measures(house, words)
    sold = [(piece, sale_of_noun(work.formula, piece.noun)) for piece in sold_pieces(work)]
    loose = [(piece, sale) for piece, sale in sold if any(one.way == LOOSE for one in sale.ways)]
    if not loose:
        return None
    tickets = tuple(_ticket(work, piece, sale, len(loose) > 1, m) for piece, sale in loose)
    name = work.formula.name
    paper = label_paper(work.kitchen.selling.labels, house.paper)
    return ShelfTickets(name, words["language"], house.paper, running_head(name, "", issue), paper, tickets)


def _ticket(work: Work, piece: SoldPiece, sale: Sale, several: bool, m: Measures) -> ShelfTicket:
    formula = work.formula.name
    return ShelfTicket(
        name=f"{formula}, {piece.noun}" if several and piece.noun else formula,
        called=sale.called.text if sale.called else "",
        price=_price(sale.sells_at, m) if sale.sells_at else "",
        about=_about(piece.finished, sale.sells_at, m),
        allergens=allergens_of_piece(work, piece, m),
    )


def _price(sells: SellsAt, m: Measures) -> str:
    """`5.60 €` of one piece, `8.00 € a kg`, `2.40 € for 250 g`"""
    price = price_tag(sells.price)
    if sells.grams is None:
        return price
    return (
        m.words.say("shelf.kilo", price)
        if sells.grams == KILO
        else m.words.say("shelf.for", price, m.mass(sells.grams))
    )


def _about(finished: Fraction | None, sells: SellsAt | None, m: Measures) -> str:
    if finished is None:
        return ""
    about = m.words.say("shelf.about", m.about(finished))
    if sells is None or sells.grams is not None:
        return about
    return f"{about} · {m.words.say('shelf.kilo', price_tag(sells.price._replace(amount=sells.price.amount * KILO / finished)))}"

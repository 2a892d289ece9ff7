"""The order list of a bakehouse as it is printed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import groupby

from manchet.batch.work import Work
from manchet.costing.ordering import Bought, ordering
from manchet.diagnostics.suggest import fold
from manchet.formula.nouns import noun_beside, noun_for
from manchet.larder.ingredient import Ingredient
from manchet.larder.stocktake import Stock
from manchet.quantities.money import decimals
from manchet.quantities.printing import round_to
from manchet.sheets.form import Bakehouse, PageSetup
from manchet.sheets.forms.order_list.view import OrderList, OrderRow, SellerOrder
from manchet.sheets.page.issue import running_head
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.money import money_text
from manchet.sheets.parts.wording import single


def order_list(bakehouse: Bakehouse, stock: Stock, page: PageSetup) -> OrderList:
    words = words_of(page.house.words)
    m = Measures(page.house, words)
    works = _works(bakehouse)
    order = ordering(works, stock)
    sellers = tuple(
        _seller(seller, tuple(rows), m) for seller, rows in groupby(order.bought, key=lambda one: one.seller)
    )
    return OrderList(
        title=words["order.title"],
        language=words["language"],
        paper=page.house.paper,
        running=running_head(words["order.title"], "", page.issue),
        total=_total(order.bought, m),
        makes=(
            *(words.say("order.of_it", work.formula.name, ", ".join(_made(work, m))) for work in works),
            *(words.say("order.missing", name) for name in bakehouse.missing),
        ),
        counted=words.say("order.counted", stock.date),
        sellers=sellers,
        enough=tuple(
            words.say("order.of_it", one.ingredient.name, _mass((one.stock or Fraction(0)) - one.grams, m))
            for one in order.enough
        ),
        unsaid=tuple(words.say("order.wanted", one.ingredient.name, _mass(one.grams, m)) for one in order.unsaid),
    )


def _made(work: Work, m: Measures) -> Iterator[str]:
    """`10 loaves`, `24 rolls`; of what is not made by the piece how much of it there is."""
    if not work.batch.pieces or not work.batch.pieces[0].noun:
        yield m.mass(work.batch.dough)
        return
    for piece in work.batch.pieces:
        noun = noun_beside(work.formula.name, noun_for(piece.number, piece.noun))
        yield f"{m.plain(single(piece.number), 1)}{NBSP}{noun}".strip()


def _works(bakehouse: Bakehouse) -> tuple[Work, ...]:
    """What is weighed today: the breads, and each preparation once, in the amount that is made of it."""
    ahead = tuple(each.work for each in bakehouse.ahead)
    made = {fold(work.formula.name) for work in ahead}
    return (*(work for work in bakehouse.works if fold(work.formula.name) not in made), *ahead)


def _seller(seller: str, rows: Sequence[Bought], m: Measures) -> SellerOrder:
    return SellerOrder(seller or m.words["order.no_seller"], tuple(_row(one, m) for one in rows), _total(rows, m))


def _row(one: Bought, m: Measures) -> OrderRow:
    words, wanted = m.words, one.wanted
    left, lacks = one.left, wanted.grams - (wanted.stock or Fraction(0))
    money = "" if one.money is None else money_text(one.money, one.currency)
    return OrderRow(
        packs=words.say("order.times", str(one.packs), one.packed_as.replace(" ", NBSP))
        if one.pack
        else _mass(lacks, m),
        name=wanted.ingredient.name,
        allergens=_allergens(wanted.ingredient),
        why=_why(one, m),
        money=money,
        number=str(one.packs) if one.pack else "",
        pack=one.packed_as,
        needed_grams=_exact(wanted.grams),
        stock_grams="" if wanted.stock is None else _exact(wanted.stock),
        left_grams="" if left is None else _exact(left),
        currency=one.currency,
    )


def _why(one: Bought, m: Measures) -> str:
    """`1,440 g wanted, none here, 60 g over`"""
    say, stock = m.words.say, one.wanted.stock
    here = (
        say("order.here", m.mass(stock)) if stock else m.words["order.not_counted" if stock is None else "order.none"]
    )
    parts = [say("order.needed", m.mass(one.wanted.grams)), here]
    parts.append(m.words["order.no_pack"] if not one.pack else say("order.over", _mass(one.left or Fraction(0), m)))
    return ", ".join(parts)


def _total(bought: Iterable[Bought], m: Measures) -> str:
    """The sum of some rows as they are printed; no sum of two currencies."""
    bought = tuple(bought)
    currencies = sorted({one.currency for one in bought if one.currency})
    if not bought:
        return m.words["order.nothing"]
    if len(currencies) > 1:
        return m.words.say("order.mixed", ", ".join(currencies))
    if not currencies:
        return ""
    (currency,) = currencies
    sums = (round_to(one.money, decimals(currency)) for one in bought if one.money is not None)
    whole = all(one.money is not None for one in bought)
    money = money_text(sum(sums, Fraction(0)), currency)
    return m.words.say("order.total" if whole else "order.at_least", money, currency)


def _mass(grams: Fraction, m: Measures) -> str:
    return m.mass(grams) if grams else "0"


def _exact(grams: Fraction) -> str:
    """Grams in decimals, to a tenth: what a spreadsheet reads."""
    tenths = int(round_to(grams, 1) * 10)
    return f"{tenths // 10}.{tenths % 10}" if tenths % 10 else str(tenths // 10)


def _allergens(ingredient: Ingredient) -> str:
    """Those it has, and those that nobody knows of, in capitals."""
    has = [one.upper() for one in ingredient.allergens or () if one != "gluten"]
    unknown = [f"{one.upper()}?" for one, _ in ingredient.asked]
    return ", ".join((*has, *unknown)) if ingredient.allergens is not None or unknown else "?"

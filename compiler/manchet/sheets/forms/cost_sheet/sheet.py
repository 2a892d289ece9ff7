"""The cost of a work as it is printed."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from fractions import Fraction

from manchet.account.piece import slices_of
from manchet.batch.model import PieceBatch
from manchet.batch.work import Work
from manchet.costing.charges import TOUCHING
from manchet.costing.cost import Cost, CostLine
from manchet.formula.nouns import same_noun, singular
from manchet.formula.sale import SellsAt
from manchet.larder.ingredient import Price
from manchet.quantities.printing import round_to
from manchet.sheets.form import PageSetup
from manchet.sheets.forms.cost_sheet.view import CostRow, CostSheet, MoneyRow, PieceMoney, PriceRow
from manchet.sheets.page.issue import running_head
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.money import money_column, money_text
from manchet.sheets.parts.pieces_line import made_lines
from manchet.sheets.parts.wording import single

NOTHING = Fraction(0)
DAY = 86400
USUAL = Fraction(65, 100)
"""The margin whose prices are shown where the kitchen names none: what many bakeries go by. Common practice."""
APART = Fraction(5, 100)
MOST_MOVES = 3


def cost_sheet(work: Work, cost: Cost, page: PageSetup) -> CostSheet:
    words = words_of(page.house.words)
    return _Sheet(work, cost, page, Measures(page.house, words)).view()


class _Sheet:
    def __init__(self, work: Work, cost: Cost, page: PageSetup, m: Measures) -> None:
        self.work, self.cost, self.page, self.m = work, cost, page, m
        self.words = m.words
        self.printed_on = page.issue.made

    def money(self, amount: Fraction, more: int = 0) -> str:
        return money_text(amount, self.cost.currency, more)

    def view(self) -> CostSheet:
        cost, work, m, words = self.cost, self.work, self.m, self.words
        name = work.formula.name
        priced = [line for line in cost.lines if line.money is not None]
        rounded = dict(
            zip(
                (line.ingredient.name for line in priced),
                money_column([line.money or NOTHING for line in priced], cost.currency),
                strict=True,
            )
        )
        margins = self.margins()
        one = len(cost.pieces) == 1
        return CostSheet(
            title=name,
            made=", ".join(made_lines(work, m)),
            language=words["language"],
            paper=self.page.house.paper,
            running=running_head(name, "", self.page.issue),
            currency=cost.currency,
            all=words.say("cost.for_all", m.plain(single(cost.pieces[0].piece.number), 1))
            if one
            else words["cost.for_it"],
            pieces=tuple(self.pieces()),
            rows=tuple(self.row(line, rounded.get(line.ingredient.name, "")) for line in cost.lines),
            total=self.money(cost.ingredients),
            total_weight=m.mass(sum((line.grams for line in cost.lines), NOTHING)),
            at_least="" if cost.is_whole else words.say("cost.at_least", ", ".join(cost.without)),
            said=(words.say("cost.pot", m.mass(cost.from_pot)),) if cost.from_pot else (),
            stages=self.stages(),
            spare=tuple(self.spare()),
            besides=tuple(self.besides()),
            not_in_it=tuple(self.not_in_it()),
            moves=tuple(self.moves()),
            moves_of=words.say("cost.moves_each", singular(cost.pieces[0].piece.noun))
            if one
            else words["cost.moves_all"],
            margins=tuple(m.percent(margin) for margin in margins),
            prices=tuple(self.price_row(piece, margins) for piece in work.batch.pieces),
            over=self.over(),
        )

    # ---- ingredients

    def row(self, line: CostLine, money: str) -> CostRow:
        words, weight = self.words, self.m.mass(line.grams)
        if line.price is None:
            return CostRow("–", line.ingredient.name, weight, words["cost.no_price"], "", "", "")
        price = line.price.price
        if price is None:
            oldest = min(line.price.prices, key=lambda one: one.date)
            return CostRow(money, line.ingredient.name, weight, words["cost.made_of"], "", "", self.old(oldest))
        said = words.say("cost.per", self.money(price.amount), price.bought.replace(" ", NBSP))
        return CostRow(money, line.ingredient.name, weight, said, price.date, price.seller, self.old(price))

    def old(self, price: Price) -> str:
        """`182 days old`, of a price that the kitchen calls old."""
        after = self.work.kitchen.selling.prices_old_after
        if after is None or self.printed_on is None or not price.date:
            return ""
        days = (self.printed_on - date.fromisoformat(price.date)).days
        return self.words.say("cost.old", str(days)) if days * DAY > after else ""

    def stages(self) -> tuple[MoneyRow, ...]:
        shares = [share for share in self.cost.by_stage if share.grams]
        money = money_column([share.money for share in shares], self.cost.currency)
        touching = self.words["cost.topping" if self.work.formula.dish else "cost.touching"]
        names = [touching if share.name == TOUCHING else share.name for share in shares]
        return tuple(
            MoneyRow(one, name, self.m.mass(share.grams)) for one, name, share in zip(money, names, shares, strict=True)
        )

    def spare(self) -> Iterator[MoneyRow]:
        stages = {share.name for share in self.cost.by_stage}
        for share in self.cost.spare:
            if not share.name:
                name = self.words["cost.lost"]
            else:
                name = self.words.say("cost.left" if share.name in stages else "cost.kept", share.name)
            yield MoneyRow(self.money(share.money), name, self.m.mass(share.grams) if share.grams else "")

    # ---- hands and oven

    def besides(self) -> Iterator[MoneyRow]:
        hands = self.cost.hands
        if hands.rate is not None and hands.seconds:
            time = self.m.duration(hands.seconds)
            yield MoneyRow(
                self.money(hands.money or NOTHING), self.words.say("cost.hours", time, self.money(hands.rate.amount))
            )
        for fire in self.cost.fires:
            if fire.currency:
                which = "cost.by_hours" if fire.an_hour else "cost.firing"
                yield MoneyRow(self.money(fire.money), self.words.say(which, self.oven(fire.oven)))

    def oven(self, name: str) -> str:
        return self.words.say("cost.fire", name) if name else self.words["cost.an_oven"]

    def share(self, piece: PieceBatch, amount: Fraction) -> Fraction:
        """What of it one piece carries: by its weight of dough."""
        dough = sum((one.number * one.grams for one in self.work.batch.pieces), NOTHING)
        return amount * piece.grams / dough

    def fire(self) -> Fraction:
        return sum((fire.money for fire in self.cost.fires), NOTHING)

    # ---- a piece

    def pieces(self) -> Iterator[PieceMoney]:
        cost = self.cost
        hands = cost.hands.money
        has_fire = any(fire.currency for fire in cost.fires)
        for each in cost.pieces:
            piece = each.piece
            sold = self.sold(piece)
            hundred = "" if not each.finished else self.money(each.money / each.finished * 100, 1)
            slices = slices_of(self.work, piece.noun)
            in_all = self.whole_cost(piece)
            leaves = "" if sold is None or not cost.is_whole else f"{round_to((1 - in_all / sold[1]) * 100, 0)}{NBSP}%"
            work = (
                *((self.share(piece, hands),) if hands else ()),
                *((self.share(piece, self.fire()),) if has_fire else ()),
            )
            own, *others = money_column((each.money, *work), cost.currency)
            yield PieceMoney(
                self.words.say("cost.a_piece", singular(piece.noun)),
                own,
                others[0] if hands else "",
                others[-1] if has_fire else "",
                self.money(in_all) if others else "",
                hundred,
                "" if slices is None else self.money(each.money / slices, 1),
                "" if sold is None else self.money(sold[0]),
                "" if sold is None else self.taxed(self.tax(self.sells_at(piece))),
                leaves,
            )

    def taxed(self, tax: Fraction) -> str:
        return self.words.say("cost.tax", self.m.percent(tax)) if tax else self.words["cost.no_tax"]

    def whole_cost(self, piece: PieceBatch) -> Fraction:
        own = next(each.money for each in self.cost.pieces if each.piece == piece)
        return own + self.share(piece, self.cost.work)

    def sells_at(self, piece: PieceBatch) -> SellsAt | None:
        formula = self.work.formula
        branch = next((one for one in formula.branches if one.sale and same_noun(one.noun, piece.noun)), None)
        sale = branch.sale if branch is not None and branch.sale and branch.sale.sells_at else formula.sale
        parted = formula.is_parted and (branch is None or branch.sale is None) and len(self.work.batch.pieces) > 1
        return None if sale is None or (parted and piece is not self.work.batch.pieces[0]) else sale.sells_at

    def sold(self, piece: PieceBatch) -> tuple[Fraction, Fraction] | None:
        """The price of one piece with tax, and without it."""
        sells = self.sells_at(piece)
        if sells is None:
            return None
        price = sells.price.amount
        if sells.grams is not None:
            if piece.baked_grams is None:
                return None
            price = price * piece.baked_grams / sells.grams
        return price, price / (1 + self.tax(sells))

    def tax(self, sells: SellsAt | None = None) -> Fraction:
        said = sells.tax if sells is not None else None
        return (self.work.kitchen.selling.tax or NOTHING) if said is None else said

    # ---- prices

    def margins(self) -> tuple[Fraction, ...]:
        if not self.cost.pieces or not self.cost.is_whole:
            return ()
        wanted = self.work.kitchen.selling.margin or USUAL
        return tuple(margin for margin in (wanted - APART, wanted, wanted + APART) if 0 <= margin < 1)

    def price_row(self, piece: PieceBatch, margins: tuple[Fraction, ...]) -> PriceRow:
        tax = self.tax(self.sells_at(piece))
        net = [self.whole_cost(piece) / (1 - margin) for margin in margins]
        return PriceRow(
            singular(piece.noun),
            tuple(self.money(price * (1 + tax)) for price in net),
            tuple(self.words.say("cost.net", self.money(price)) for price in net) if tax else (),
        )

    def over(self) -> str:
        has_hands, has_fire = bool(self.cost.hands.money), bool(self.fire())
        which = {(True, True): "parts", (True, False): "parts_hands", (False, True): "parts_oven"}
        parts = self.words[f"cost.{which.get((has_hands, has_fire), 'parts_none')}"]
        taxes = {self.tax(self.sells_at(piece)) for piece in self.work.batch.pieces}
        taxed = ", ".join(self.taxed(tax) for tax in sorted(taxes))
        return f"{self.words.say('cost.over', parts)}, {taxed}" if taxed else self.words.say("cost.over", parts)

    def moves(self) -> Iterator[MoneyRow]:
        """The ingredients that a tenth more makes dearest."""
        pieces = self.cost.pieces
        number = pieces[0].piece.number if len(pieces) == 1 else Fraction(1)
        more = 1 if len(pieces) == 1 else 0
        for line in self.cost.lines[:MOST_MOVES]:
            if line.money is not None:
                yield MoneyRow(self.money(line.money / 10 / number, more), line.ingredient.name)

    def not_in_it(self) -> Iterator[str]:
        cost, words = self.cost, self.words
        if cost.without:
            yield words.say("cost.no_price_of", ", ".join(cost.without))
        if cost.free_water:
            yield words["cost.water"]
        hands = cost.hands
        if not hands.seconds:
            yield words["cost.no_hands"]
        elif hands.rate is None:
            yield words.say("cost.no_rate", self.m.duration(hands.seconds))
        if hands.untimed and hands.seconds:
            yield words.say("cost.untimed", ", ".join(hands.untimed))
        for fire in cost.fires:
            if not fire.currency:
                yield words.say("cost.no_fire", self.oven(fire.oven))
        yield words["cost.rest"]

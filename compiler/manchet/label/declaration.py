"""All that the label of one food says for one market, and what is still missing for it. A value, whatever paper it goes on.

Regulation (EU) 1169/2011, articles 9, 16 to 24 and 44, in Great Britain as kept there; food packed for direct sale by article 44 as
each country orders it (in England and Wales name and list of ingredients); 21 CFR 101 in the United States. A draft for a competent
person, who approves it.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from hashlib import sha256

from manchet.account.piece import SoldPiece, slices_of, sold_pieces
from manchet.batch.work import Work, once
from manchet.formula.sale import DIRECT, PREPACKED, Approval, DateMark, Sale, SoldAs
from manchet.label.absent import absent_from
from manchet.label.allergens import AllergenAnswer, AllergenFinding, contains, every_content, findings
from manchet.label.bread_names import Misnamed, misnaming_of
from manchet.label.contact import may_contain
from manchet.label.how_sold import sale_of_noun
from manchet.label.ingredients import IngredientList, ingredient_list
from manchet.label.markets import EU, US, allergen_list
from manchet.label.nutrition import Panel, panel_of
from manchet.larder.ingredient import Ingredient
from manchet.larder.sources import lacks_source
from manchet.records import NamedTuple

_LETTERS = str.maketrans("0123456789abcdef", "bcdfghjkmnpqrstv")
"""A mark is typed into a file, where a figure would be read as an amount; and no two of these are taken for one another."""
MARK_LENGTH = 8


class Lack(NamedTuple):
    """Something that a label cannot do without: in words, and what to write. `in_kitchen`: it is written there."""

    what: str
    write: str
    in_kitchen: bool = False


class Declaration(NamedTuple):
    market: str
    name: str
    """The house's own name of it."""
    noun: str
    way: SoldAs
    called: str
    """The name of the food."""
    ingredients: IngredientList
    contains: tuple[str, ...]
    """Allergens as the market names them."""
    may_contain: tuple[str, ...]
    """As the operator has judged; nothing of it is worked out."""
    panel: Panel | None
    """None where none is asked for: packed for direct sale; and in the United States, where it asks for more than is known here."""
    date_mark: DateMark | None
    store: str
    opened: str
    address: str
    approval: Approval | None
    lacks: tuple[Lack, ...] = ()
    sold_by_weight: bool = False
    """Its price is for a weight, so that what each weighs is written on it when it is weighed."""
    unknown: tuple[AllergenFinding, ...] = ()
    """Allergens of which nobody knows whether it has them."""
    sourceless: tuple[Ingredient, ...] = ()
    """Ingredients of which the list has to say what they come from, and nobody has."""
    slices: int | None = None
    """Slices that it is cut into, as its file says: the panel is told of one too (Regulation (EU) 1169/2011, article 33)."""
    slice_grams: Fraction | None = None
    misnamed: Misnamed | None = None
    """What the law has against its names."""
    absent: tuple[str, ...] = ()
    """Words of its name that promise what is not in it."""

    @property
    def net(self) -> Fraction | None:
        return self.way.net

    @property
    def table(self) -> Panel | None:
        """The panel as it is printed: none where something that it must say cannot be told."""
        return self.panel if self.panel is not None and self.panel.says_all_it_must else None

    @property
    def is_withheld(self) -> bool:
        """It cannot be printed: something that it must say is missing."""
        return bool(self.lacks or self.unknown or self.sourceless or self.misnamed or self.absent)

    @property
    def is_approved(self) -> bool:
        """A person has approved this very label."""
        return self.approval is not None and self.mark in self.approval.labels

    @property
    def mark(self) -> str:
        """Another label has another: all that it says counts, but the day and the lot."""
        panel = () if self.table is None else tuple((line.name, line.text) for line in self.table.lines)
        dated = (
            None
            if self.date_mark is None
            else (self.date_mark.word, str(self.date_mark.seconds), str(self.date_mark.celsius))
        )
        said = [
            self.name, self.way.way, self.called, self.ingredients.text, self.contains, self.may_contain, panel,
            str(self.net), dated, self.store, self.opened, self.address,
            *(() if self.slices is None else (self.slices,)),
        ]  # fmt: skip
        digest = sha256(repr(said).encode()).hexdigest()
        return digest[:MARK_LENGTH].translate(_LETTERS)


class Labelled(NamedTuple):
    """What a work makes of one sort, with its labels."""

    piece: SoldPiece
    labels: tuple[Declaration, ...]


@once
def labelled_pieces(work: Work) -> tuple[Labelled, ...]:
    """Each sort of piece that a work makes, with those labels that it is sold with."""
    return tuple(Labelled(piece, tuple(declarations(work, piece))) for piece in sold_pieces(work))


def declarations(work: Work, piece: SoldPiece) -> Iterator[Declaration]:
    """One for each way of selling it with a label and each market of the kitchen; one of no market where the kitchen names none."""
    sale = sale_of_noun(work.formula, piece.noun)
    for way in sale.ways:
        if way.way in (PREPACKED, DIRECT):
            for market in work.kitchen.selling.markets or ("",):
                yield declaration(work, piece, sale, way, market)


def declaration(work: Work, piece: SoldPiece, sale: Sale, way: SoldAs, market: str) -> Declaration:
    """As the law of a market has it; where nobody says which, none is gone by, and that is missing."""
    selling = work.kitchen.selling
    called = sale.called.text if sale.called else ""
    more = tuple(name.text for name in sale.how_much_of)
    law = market or EU
    may = tuple(one.allergen for one in may_contain(work, piece) if one.allergen in allergen_list(law).words)
    whole = way.way == PREPACKED
    declared = Declaration(
        market,
        work.formula.name,
        piece.noun,
        way,
        called,
        ingredient_list(piece, law, called, more),
        contains(piece, law),
        may,
        panel_of(piece, market) if whole and market not in ("", US) else None,
        sale.date_mark,
        sale.store.text if sale.store else "",
        sale.opened.text if sale.opened else "",
        selling.address,
        sale.approved,
    )
    unknown = tuple(one for one in findings(piece, market) if one.answer is AllergenAnswer.NOT_KNOWN) if market else ()
    slices = slices_of(work, piece.noun)
    by_weight = sale.sells_at is not None and sale.sells_at.grams is not None
    held = {content.ingredient.name: content.ingredient for content in every_content(piece.mixture)}
    sourceless = tuple(one for one in held.values() if lacks_source(one))
    declared = declared._replace(
        sold_by_weight=whole and by_weight,
        unknown=unknown,
        sourceless=sourceless,
        slices=slices,
        slice_grams=piece.finished / slices if piece.finished and slices else None,
        misnamed=misnaming_of(piece, market, called, work.formula.name),
        absent=absent_from(piece, called),
    )
    return declared._replace(lacks=tuple(_lacks(declared, piece)))


def _lacks(label: Declaration, piece: SoldPiece) -> Iterator[Lack]:
    if not label.market:
        yield Lack("whose law it keeps", "sells in EU", in_kitchen=True)
    if not label.called:
        yield Lack("the name of the food", 'called "Rye bread with sunflower seeds"')
    if piece.finished is None:
        yield Lack("what a cooled piece weighs", "bake loss 12%, as weighed")
    if label.way.way != PREPACKED:
        return
    if label.net is None and not label.sold_by_weight:
        yield Lack("the net weight", "sold prepacked at 740 g net")
    if label.date_mark is None and label.market != US:
        yield Lack("the date", "best before 4 d")
    if not label.store and label.market != US:
        yield Lack("how to store it", 'store "cool and dry"')
    if not label.address:
        yield Lack("who answers for it", 'name and address "…"', in_kitchen=True)

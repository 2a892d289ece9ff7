"""How each piece of a formula is sold: as its branch says, and where that says nothing, as the head does."""

from __future__ import annotations

from manchet.formula.model import Formula
from manchet.formula.nouns import same_noun
from manchet.formula.sale import Sale

NOT_SAID = Sale()


def sale_of_noun(formula: Formula, noun: str) -> Sale:
    """Of each thing that may be said of selling, the branch's own word comes before the head's."""
    head = formula.sale or NOT_SAID
    branch = next((one.sale for one in formula.branches if same_noun(one.noun, noun)), None)
    if branch is None:
        return head
    return Sale._make(own or heads for own, heads in zip(branch, head, strict=True))


def is_sold(formula: Formula, *ways: str) -> bool:
    """In one of these ways, as its head or a branch says; without any, in some way."""
    sales = [formula.sale, *(branch.sale for branch in formula.branches)]
    said = {one.way for sale in sales if sale is not None for one in sale.ways}
    return not said.isdisjoint(ways) if ways else bool(said)

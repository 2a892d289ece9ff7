"""What is wanted today."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Order(NamedTuple):
    """What is wanted. Nothing said: what the file says. At most one of dough, flour and have."""

    pieces: tuple[tuple[Fraction, str], ...] = ()
    """How many of which noun; a noun of "" means the only (or the first) thing the formula makes."""
    piece_grams: Fraction | None = None
    piece_state: str = "dough"
    """"dough" or "baked"."""
    dough: Fraction | None = None
    """Grams of dough in all, as mixed and finished."""
    flour: Fraction | None = None
    """Grams of all flour."""
    tin: str = ""
    have: tuple[str, Fraction] | None = None
    """The ingredient there is least of, and grams of it, or how many."""
    have_whole: bool = False
    """It is counted, and the larder says what one weighs."""

    @property
    def is_whole(self) -> bool:
        """Whether it is for an amount in all, of dough, of flour or of one ingredient: pieces follow from it."""
        return self.dough is not None or self.flour is not None or self.have is not None


AS_WRITTEN = Order()

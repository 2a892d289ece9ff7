"""What of a bread is otherwise than it was: its list, allergens, panel, finished weight, price and cost."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.costing.piece_state import PieceState, state_of
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple


class Difference(NamedTuple):
    """A piece before and after; None on the side where there is none."""

    name: str
    noun: str
    before: PieceState | None
    after: PieceState | None

    @property
    def is_same(self) -> bool:
        return self.before == self.after


def differences(name: str, before: Work | None, after: Work | None) -> Iterator[Difference]:
    """Each piece that a formula makes, or made."""
    then = () if before is None else sold_pieces(before)
    now = () if after is None else sold_pieces(after)
    for piece in now:
        old = next((one for one in then if one.noun == piece.noun or same_noun(one.noun, piece.noun)), None)
        yield Difference(
            name,
            piece.noun,
            None if old is None or before is None else state_of(before, old),
            None if after is None else state_of(after, piece),
        )
    for piece in then:
        if before is not None and not any(one.noun == piece.noun or same_noun(one.noun, piece.noun) for one in now):
            yield Difference(name, piece.noun, state_of(before, piece), None)

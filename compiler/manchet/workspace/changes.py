"""What is asked for on top of what the files say."""

from __future__ import annotations

from manchet.records import NamedTuple


class Changes(NamedTuple):
    """`fresh yeast for instant yeast`, `poolish 16 h at 18 C`.

    A formula among `names` (folded) has to have what is swapped out or moved; any other is left as it is where it has not.
    """

    swaps: tuple[str, ...] = ()
    names: frozenset[str] = frozenset()
    waits: tuple[str, ...] = ()


NO_CHANGES = Changes()

"""What a file consists of: blocks, the words that begin them, and how much of one can be told without reading it.

Every command asks for these before it reads anything, so they stand apart from the rest of the language.
"""

from __future__ import annotations

from manchet.records import NamedTuple

BLOCKS = ("formula", "preparation", "assembly", "larder", "kitchen", "plan", "order")
FORMULAS = frozenset({"formula", "preparation", "assembly"})
"""Blocks that make something."""
HOUSE = frozenset({"larder", "kitchen"})
"""Blocks that say what the house has."""
PLANNED = frozenset({"plan", "order"})
"""Blocks that tell of a day; no formula draws on them."""


class Heading(NamedTuple):
    """`word` opens the line: `formula`, `larder`, a stage's word; "" where no such word does.

    `name` is that of a formula, preparation, larder or kitchen, or of what was probably meant to be one; else "". `line`
    counts from 1.
    """

    word: str
    name: str
    line: int
    variants: tuple[tuple[str, int], ...] = ()
    """The variants of a formula: the name of each and its line."""


class Block(NamedTuple):
    """A heading and all that stands under it, `text`. A variant is a block too, named in full and at its own line; its
    text is that of its formula."""

    word: str
    name: str
    line: int
    text: str
    variants: tuple[tuple[str, int], ...] = ()
    spans: tuple[range, ...] = ()
    """The lines it follows from, where that is not all of its text."""

    @property
    def is_formula(self) -> bool:
        return self.word in ("formula", "variant")

    @property
    def end(self) -> int:
        """The line behind its last."""
        return self.line + self.text.count("\n") + (not self.text.endswith("\n"))

    def holds(self, line: int) -> bool:
        """Whether it follows from a line of its file."""
        return any(line in span for span in self.spans or (range(self.line, self.end),))

    def with_variants(self) -> tuple[Block, ...]:
        """The block itself, then its variants."""
        if not self.variants:
            return (self,)
        spans = [self._under(line) for _, line in self.variants]
        own = tuple(
            range(*gap)
            for gap in zip([self.line, *(s.stop for s in spans)], [*(s.start for s in spans), self.end], strict=True)
        )
        return (
            self._replace(spans=own),
            *(
                Block("variant", f"{self.name}, {name}", line, self.text, (), (*own, span))
                for (name, line), span in zip(self.variants, spans, strict=True)
            ),
        )

    def _under(self, line: int) -> range:
        """The line and all that stands deeper below it. What follows the variants of a formula is the formula's again."""
        rows = self.text.split("\n")[line - self.line :]
        deep = _depth(rows[0])
        below = (at for at, row in enumerate(rows) if at and _depth(row) <= deep and row.strip()[:1] not in ("", "#"))
        return range(line, line + next(below, self.end - line))


def _depth(row: str) -> int:
    return len(row) - len(row.lstrip())

"""What the bakery can be asked for: its breads and preparations by name, and what each makes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from manchet.changes.variants import full_name, rewrite_variant, variants_of, without_variants
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.head import head_of, may_be_made_by_unread
from manchet.formula.measures import celsius, seconds
from manchet.formula.model import KeptFor
from manchet.formula.names_taken import all_lines, names_taken
from manchet.formula.nouns import same_noun
from manchet.formula.ranges import Range
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of
from manchet.syntax.vocabulary import VERB


class Offer(NamedTuple):
    """A bread or a preparation that a plan may want. `nouns` are what it makes, `by_weight` whether it is wanted in kg;
    `is_whole` is False where a line that says so is missing or could not be read."""

    name: str
    nouns: tuple[str, ...]
    by_weight: bool
    sold: Range | None
    verbs: frozenset[str]
    """Of all its steps, and of the lines that may have been one."""
    stages: Mapping[str, str]
    """By folded name, as written."""
    is_preparation: bool = False
    is_whole: bool = True
    is_dish: bool = False
    kept: tuple[KeptFor, ...] = ()
    """How long it is good for, each way of keeping it."""
    takes: frozenset[str] = frozenset()
    """The folded names that its lines may mean."""

    @property
    def keeps(self) -> KeptFor | None:
        """The way of keeping it for longest."""
        return max(self.kept, key=lambda one: one.seconds, default=None)

    def noun(self, said: str) -> str | None:
        """The noun of the formula for that of the plan: `loaves` for `loaf`."""
        return next((noun for noun in self.nouns if same_noun(noun, said)), None)


class Menu:
    """The offers of a bakery, each worked out when it is first asked for."""

    def __init__(self, formulas: Iterable[Entry], preparations: Iterable[Entry], names: Iterable[str] = ()) -> None:
        self._entries: dict[str, tuple[str, Entry, Entry | None]] = {}
        self._offers: dict[str, Offer] = {}
        self.names: frozenset[str] = frozenset()
        """Every name, for whoever mistypes one."""
        for formula in formulas:
            self._entries.setdefault(fold(name_of(formula)), (name_of(formula), formula, None))
            for variant in variants_of(formula):
                name = full_name(formula, variant)
                self._entries.setdefault(fold(name), (name, formula, variant))
        for one in preparations:
            self._entries.setdefault(fold(name_of(one)), (name_of(one), one, None))
        self.names = frozenset((*(name for name, _, _ in self._entries.values()), *names))

    def offer(self, name: str) -> Offer | None:
        key = fold(name)
        if key not in self._offers and key in self._entries:
            self._offers[key] = _offer_of(*self._entries[key])
        return self._offers.get(key)


def _offer_of(name: str, block: Entry, variant: Entry | None) -> Offer:
    whole = without_variants(block)
    entry = whole if variant is None else rewrite_variant(whole, variant, fold).value
    head = head_of(entry.children).value
    is_preparation = isinstance(block.node, nodes.BlockHead) and block.node.word == "preparation"
    lines = tuple(child.node for child in entry.children)
    nouns = tuple(
        one.noun.text for one in lines if isinstance(one, nodes.MakesNode) and one.noun
    )  # weighing nothing too
    by_parts = any(isinstance(one, nodes.OverallHead) for one in lines) or _may_be_overall(entry.children)
    unsaid = by_parts and not any(isinstance(one, nodes.MakesNode | nodes.FromFlour) for one in lines)
    return Offer(
        name,
        nouns,
        is_preparation or not nouns,
        head.sold,
        frozenset(_verbs(entry.children)),
        things_made((entry,)),
        is_preparation,
        not unsaid and not may_be_made_by_unread(entry.children),
        isinstance(block.node, nodes.BlockHead) and block.node.word == "assembly",
        tuple(_kept(entry)),
        frozenset(names_taken(entry)),
    )


def _kept(block: Entry) -> Iterator[KeptFor]:
    for entry in all_lines(block):
        if isinstance(entry.node, nodes.GoodFor):
            time, at = entry.node
            yield KeptFor(seconds(time).likely, celsius(at) if at else None, entry.line.place())


def _may_be_overall(entries: Iterable[Entry]) -> bool:
    """Whether a heading that could not be read may have been `overall`."""
    unread = (one.line.body.split() for one in entries if isinstance(one.node, nodes.Unread))
    return any(len(words) == 1 and nearest(words[0].lower(), ("overall",)) for words in unread)


def _verbs(entries: Iterable[Entry]) -> Iterator[str]:
    for entry in entries:
        if isinstance(entry.node, nodes.StepNode):
            yield entry.node.verb.text
        elif isinstance(entry.node, nodes.Unread):
            yield nearest(entry.line.body.split()[0], VERB) or ""  # it may have been that step
        yield from _verbs(entry.children)


def things_made(blocks: Iterable[Entry]) -> Mapping[str, str]:
    """What stands ready before a dough: each stage by its folded name, and as written."""
    found: dict[str, str] = {}
    for block in blocks:
        for entry in (block, *block.children):
            if isinstance(entry.node, nodes.StageHead):
                found.setdefault(fold(name_of(entry)), name_of(entry))
    return found

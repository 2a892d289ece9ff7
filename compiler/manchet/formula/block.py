"""What can be told of a block's lines without binding them."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.draft import stage_key
from manchet.formula.model import Allowed
from manchet.formula.picture import Picture
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.vocabulary import STAGES


def written_name(entry: Entry) -> str:
    """The name of a stage as its heading writes it, its kind where it has none."""
    assert isinstance(entry.node, nodes.StageHead)
    return (entry.node.name or entry.node.word).text


def has_lines(entry: Entry) -> bool:
    """Whether a stage heading has anything to weigh or do under it."""
    return any(not isinstance(c.node, nodes.Allow | nodes.ClauseLine) for c in entry.children)


def any_unread(entry: Entry) -> bool:
    """Whether a line of the block could not be read."""
    return isinstance(entry.node, nodes.Unread) or any(any_unread(c) for c in entry.children)


def is_dough(entry: Entry) -> bool:
    """Whether a line is the heading of the dough."""
    return isinstance(entry.node, nodes.StageHead) and stage_key(entry.node) == "dough"


def is_overall(entry: Entry) -> bool:
    """Whether a line is the heading `overall`, or was meant to be."""
    node = entry.node
    return isinstance(node, nodes.OverallHead) or (isinstance(node, nodes.Unread) and node.opens == "overall")


def stage_meant(entry: Entry) -> nodes.StageHead | None:
    """The heading that was meant by one that could not be read and has lines under it; its share is not known."""
    node = entry.node
    if not isinstance(node, nodes.Unread) or node.opens != "stage" or not entry.children:
        return None
    first = entry.line.body.split()[0]
    word = nearest(fold(first), _STAGE_WORDS) or "stage"
    name = node.name or nodes.Word(first, 0, len(first))
    return nodes.StageHead(nodes.Word(word, 0, len(first)), None if word in ("dough", fold(name.text)) else name, None)


_STAGE_WORDS = tuple(stage.word for stage in STAGES)


def unread_stages(block: Entry) -> Iterable[str]:
    """The names of stages whose headings could not be read: to take them elsewhere is no second mistake."""
    for entry in block.children:
        if isinstance(entry.node, nodes.Unread) and entry.node.opens == "stage" and entry.node.name is not None:
            yield entry.node.name.text


def allowed_in(block: Entry) -> Iterable[Allowed]:
    """Every `allow` of a formula and of its stages."""
    for entry in block.children:
        if isinstance(entry.node, nodes.Allow):
            yield Allowed(entry.node.name.text, entry.node.because.text, "", entry.line.place())
        elif isinstance(entry.node, nodes.StageHead):
            key = stage_key(entry.node)
            for inner in entry.children:
                if isinstance(inner.node, nodes.Allow):
                    yield Allowed(inner.node.name.text, inner.node.because.text, key, inner.line.place())


def notes_in(entries: Iterable[Entry]) -> Iterable[str]:
    """The notes among the lines of a block: they belong to it as a whole."""
    return (text for text, _ in _prose(entries, "note"))


def pictures_in(entries: Iterable[Entry]) -> Iterable[Picture]:
    """The same of pictures."""
    return (Picture(path, entry.line.place()) for path, entry in _prose(entries, "picture"))


def _prose(entries: Iterable[Entry], what: str) -> Iterable[tuple[str, Entry]]:
    for entry in entries:
        if isinstance(entry.node, nodes.ClauseLine):
            yield from (
                (c.text.text, entry) for c in entry.node.clauses if isinstance(c, nodes.Prose) and c.what == what
            )

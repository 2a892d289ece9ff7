"""What a line that could not be read may weigh: so much is not said to be missing, and all else is."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.draft import Draft
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.syntax.tokens import WEIGHTS, pieces
from manchet.syntax.vocabulary import VERBS

MOST_WORDS = 12
"""Of a name; no ingredient has more."""


def may_be_any(lines: Iterable[str], key: str, larder: Larder) -> bool:
    """Whether one of these lines may be that of the thing found by this key, or bring it as a culture does."""
    found = (_meant(line, larder) for line in lines if not _weighs_nothing(line))
    return any(not meant or any(fold(one.name) == key or one.made_of for one in meant) for meant in found)


def may_be_flour(line: str, larder: Larder) -> bool:
    """Whether a line may be a flour's."""
    if _weighs_nothing(line):
        return False
    meant = _meant(line, larder)
    return not meant or any(one.counts_as_flour for one in meant)


def flours_read(draft: Draft, larder: Larder) -> bool:
    """Whether every line of a stage that may be a flour could be read."""
    return draft.whole or bool(draft.slips and not any(may_be_flour(slip, larder) for slip in draft.slips))


def weights_read(draft: Draft) -> bool:
    """Whether every line of a stage that may weigh something could be read."""
    return draft.heading_read and (draft.whole or bool(draft.slips and all(map(_weighs_nothing, draft.slips))))


def _weighs_nothing(line: str) -> bool:
    """Whether a line is a step's: it begins nearly like one, or has a time or a heat and no amount."""
    raws = pieces(line)
    kinds = {raw.kind for raw in raws}
    times = bool(kinds & {"TIME", "TEMPERATURE"})
    if not raws or (kinds & WEIGHTS and not (times and raws[0].text in _VERBS)):
        return False
    return times or nearest(raws[0].text, _VERBS) is not None


_VERBS = frozenset(verb.word.partition(" ")[0] for verb in VERBS)


def _meant(line: str, larder: Larder) -> tuple[Ingredient, ...]:
    """What a line may weigh: what its words name, or nearly; nothing where nobody knows."""
    words = [raw.text for raw in pieces(line)[:MOST_WORDS] if raw.kind == "WORD"]
    for start in range(len(words)):
        for end in range(len(words), start, -1):
            found = larder.find(" ".join(words[start:end]))
            if isinstance(found, Ingredient):
                return (found,)
            if found is not None:
                return _known(found.choices, larder)
    return _known(larder.near(" ".join(words)), larder) if words else ()


def _known(names: Iterable[str], larder: Larder) -> tuple[Ingredient, ...]:
    return tuple(one for name in names if (one := larder.ingredient(name)) is not None)

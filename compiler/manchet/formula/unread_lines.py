"""What a line that could not be read may weigh: so much is not said to be missing, and all else is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from itertools import takewhile

from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.cultures import leaves
from manchet.formula.draft import Draft
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.syntax.tokens import WEIGHTS, pieces
from manchet.syntax.vocabulary import VERBS

_NAMES = ("WORD", "NUMBER")
MOST_WORDS = 12
"""Of a name; no ingredient has more."""


def slips_of(stages: Mapping[str, Draft]) -> tuple[str, ...]:
    """The lines of these stages that could not be read and may weigh something that is none of them."""
    return tuple(slip for draft in stages.values() for slip in draft.slips if not any(name in slip for name in stages))


def may_be_any(lines: Iterable[str], key: str, larder: Larder) -> bool:
    """Whether one of these lines may be that of the thing found by this key, or bring it as a culture does."""
    return any(_may_be(line, key, larder) for line in lines if not _weighs_nothing(line, larder))


def _may_be(line: str, key: str, larder: Larder) -> bool:
    meant = _meant(line, larder)
    if not meant or any(fold(one.name) == key for one in meant):
        return True
    parts = [leaf.key for one in meant for leaf in leaves(one, larder)]
    return key in parts or (bool(parts) and key in fold(line))  # `counted as` names another flour


def may_be_flour(line: str, larder: Larder) -> bool:
    """Whether a line may be a flour's."""
    if _weighs_nothing(line, larder):
        return False
    meant = _meant(line, larder)
    return not meant or any(one.counts_as_flour for one in meant)


def flours_read(draft: Draft, larder: Larder) -> bool:
    """Whether every line of a stage that may be a flour could be read."""
    return draft.whole or bool(draft.slips and not any(may_be_flour(slip, larder) for slip in draft.slips))


def weights_read(draft: Draft, larder: Larder) -> bool:
    """Whether every line of a stage that may weigh something could be read."""
    return draft.heading_read and (
        draft.whole or bool(draft.slips and all(_weighs_nothing(slip, larder) for slip in draft.slips))
    )


def _weighs_nothing(line: str, larder: Larder) -> bool:
    """Whether a line is a step's: it begins nearly like one, or has a time or a heat, and no amount before its commas."""
    raws = pieces(line)
    name = tuple(takewhile(lambda raw: raw.kind != "COMMA", raws))
    if name and name[0].text in _VERBS and not WEIGHTS & {raw.kind for raw in name}:
        return larder.find(line.partition(",")[0]) is None  # no weight after a comma is an ingredient's
    kinds = {raw.kind for raw in raws}
    times = bool(kinds & {"TIME", "TEMPERATURE"})
    if not raws or (kinds & WEIGHTS and not (times and raws[0].text in _VERBS)):
        return False
    words = [raw.text for raw in raws if raw.kind in _NAMES]
    named = any(larder.find(" ".join(words[:end])) for end in range(1, min(len(words), MOST_WORDS) + 1))
    near = None if named else nearest(raws[0].text, _VERBS)  # `pearl sugar`: no `peel`; `wheat 1050`: no `heat`
    return times or raws[0].text in _VERBS or near is not None


_VERBS = frozenset(verb.word.partition(" ")[0] for verb in VERBS)


def _meant(line: str, larder: Larder) -> tuple[Ingredient, ...]:
    """What a line may weigh: what its words name, or nearly; nothing where nobody knows."""
    words = [raw.text for raw in pieces(line)[:MOST_WORDS] if raw.kind in _NAMES]
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

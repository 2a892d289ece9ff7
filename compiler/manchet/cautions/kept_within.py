"""How long and how cold a preparation is kept, as it may be printed: the limit, where the file is laxer."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.facts import markets_of
from manchet.cautions.limits import figure
from manchet.cautions.registry import cautions_of
from manchet.formula.model import KeptFor, Range


def kept_within(work: Work) -> tuple[KeptFor, ...]:
    """Each way of keeping of its file. A figure that a caution is against is printed nowhere: its limit stands in its place."""
    kept = work.formula.kept
    if not kept:
        return ()
    met = {one.name for one in cautions_of(work)}
    cold, frozen = figure("cold", markets_of(work)), figure("frozen")
    if "plants-under-fat" in met:
        return tuple(_at_most(one, figure("under-fat-longest"), figure("under-fat-cold"), frozen) for one in kept)
    if "raw-egg-kept" in met:
        return tuple(_at_most(one, figure("raw-egg-longest"), cold, frozen) for one in kept)
    if "neither-cold-nor-hot" in met:
        hot = figure("hot", markets_of(work))
        return tuple(one if _is_hot(one, hot) else _at_most(one, None, cold, frozen) for one in kept)
    return kept


def _at_most(kept: KeptFor, seconds: Fraction | None, celsius: Fraction, frozen: Fraction) -> KeptFor:
    warmth = _warmth(kept)
    if warmth is not None and warmth <= frozen:
        return kept
    if warmth is None or warmth > celsius:
        kept = kept._replace(celsius=Range(celsius, celsius))
    return kept if seconds is None or kept.seconds <= seconds else kept._replace(seconds=seconds)


def _warmth(kept: KeptFor) -> Fraction | None:
    """As warm as it may be; None where the file does not say."""
    if kept.celsius is None:
        return None
    return kept.celsius.high if kept.celsius.high is not None else kept.celsius.likely


def _is_hot(kept: KeptFor, hot: Fraction) -> bool:
    return kept.celsius is not None and kept.celsius.likely >= hot

"""How soon each sort of change is told: what can hurt first, words last."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from manchet.comparison.values import (
    AllergenChange,
    Change,
    CostChange,
    CountedChange,
    ExchangedFor,
    FlourChange,
    HeadChange,
    HeldBack,
    HoursChange,
    KeptChange,
    LiquidWarmth,
    LossChange,
    MadeWith,
    MakesChange,
    OptionalChange,
    Rank,
    ShareChange,
    StageCalled,
    StageComesOrGoes,
    StageShare,
    StepChange,
    StepMoved,
    TotalChange,
    UnknownAllergens,
    WeighedOtherwise,
)

_RANKS: Mapping[type, Rank] = MappingProxyType(
    {
        AllergenChange: Rank.ALLERGENS,
        UnknownAllergens: Rank.ALLERGENS,
        MakesChange: Rank.SIZE,
        FlourChange: Rank.SIZE,
        LossChange: Rank.SIZE,
        OptionalChange: Rank.MATERIALS,
        CountedChange: Rank.MATERIALS,
        KeptChange: Rank.MATERIALS,
        WeighedOtherwise: Rank.MATERIALS,
        MadeWith: Rank.MATERIALS,
        CostChange: Rank.COST,
        LiquidWarmth: Rank.TIMES,
        HoursChange: Rank.TIMES,
        HeldBack: Rank.STEPS,
        StageCalled: Rank.NAMES,
    }
)
_OF_LEAVEN = frozenset({"water in all", "salt in all", "prefermented flour"})


def rank_of(change: Change) -> Rank:
    """Of two of one rank the one that stands first in its file is told first."""
    match change:
        case StepChange() | StepMoved() | HeadChange():
            return change.rank
        case ShareChange() | ExchangedFor() | StageShare() | StageComesOrGoes():
            return Rank.LEAVEN if change.is_leaven else Rank.MATERIALS
        case TotalChange():
            return Rank.LEAVEN if change.total in _OF_LEAVEN else Rank.MATERIALS
    return _RANKS[type(change)]

"""A change as plain data, with its exact values, in the shape of `comparison.schema.json`."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

from manchet.comparison.ranks import rank_of
from manchet.comparison.values import Change, Rank
from manchet.figures.exact import ends, quantity
from manchet.figures.step_report import step_data
from manchet.formula.model import Step
from manchet.formula.ranges import Range

FORMAT, VERSION = "manchet-comparison", 1


def change_data(change: Change) -> dict[str, Any]:
    """`kind` is the class of the change in words, `rank` how soon it is told; then its fields. Shares are of 1, times seconds, weights
    grams."""
    fields = {name: _plain(value) for name, value in change._asdict().items() if name != "rank"}
    return {"kind": kind_of(type(change)), "rank": rank_of(change).name.lower(), **fields}


def kind_of(change: type) -> str:
    """`share change` for `ShareChange`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", change.__name__).lower()


def _plain(value: Any) -> Any:
    match value:
        case Fraction():
            return {name: said for name, said in quantity(value, "").items() if name != "unit"}
        case Step():
            return step_data(value)
        case Range():
            return ends(value, "")
        case Rank():
            return value.name.lower()
        case tuple() if hasattr(value, "_asdict"):
            return {name: _plain(part) for name, part in value._asdict().items()}
        case tuple():
            return [_plain(part) for part in value]
    return value

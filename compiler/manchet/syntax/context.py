"""What the lines under a line are: that decides which first words open them."""

from __future__ import annotations

from typing import Any

from manchet.syntax import nodes as n

MATERIALS = frozenset({"stage", "preparation", "overall", "composition"})
"""Contexts in which ingredients are weighed."""

_BLOCKS = {"formula": "formula", "preparation": "preparation", "larder": "larder", "kitchen": "kitchen"}
_SETTINGS = {"made of": "composition", "per 100 g": "composition"}


def context_under(node: Any, context: str) -> str:
    """The context of the lines one step deeper than a node that stands in `context`."""
    kind = type(node)
    if kind is n.Material or kind is n.TakeAll or kind is n.TakeLeft or kind is n.EverythingElse:
        return "material"
    if kind is n.Step:
        return "step"
    if kind is n.BlockHead:
        return _BLOCKS[node.word]
    if kind is n.StageHead or kind is n.BranchHead:
        return "stage"
    if kind is n.OverallHead:
        return "overall"
    if kind is n.VariantHead:
        return "variant"
    if kind is n.ReservedHead:
        return "skipped"
    if kind is n.EntryName:
        return "entry"
    if kind is n.Setting:
        return _SETTINGS.get(node.key, "thing" if context == "kitchen" else "step")
    if kind is n.Unread:
        return node.opens or "skipped"
    return "step"

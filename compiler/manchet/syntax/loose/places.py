"""Where what was read stands in what was written."""

from __future__ import annotations

import re
from typing import Any

from manchet.quantities.reading import figure_at
from manchet.quantities.units import OF_A_COUNTRY
from manchet.syntax.nodes import Amount, Word


def as_written(node: Any, body: str) -> Any:
    """The node with the places of the line as it was written: of each word and figure that of the same text, and all of the
    line for what was rewritten."""
    if isinstance(node, Word):
        at = body.casefold().find(node.text.casefold())
        return node._replace(start=at, end=at + len(node.text)) if at >= 0 else node._replace(start=0, end=len(body))
    if isinstance(node, Amount):
        start, end = _figure_in(body, node)
        return node._replace(start=start, end=end)
    if isinstance(node, tuple):
        parts = [as_written(part, body) for part in node]
        return node._make(parts) if hasattr(node, "_make") else tuple(parts)
    return node


def _figure_in(body: str, amount: Amount) -> tuple[int, int]:
    for match in re.finditer(r"(?<![\w.,])[0-9½⅓⅔¼¾⅛⅜⅝⅞]", body):
        figure = figure_at(body, match.start())
        if figure is None or (figure.low, figure.high) != (amount.low, amount.high):
            continue
        if figure.unit or amount.unit not in OF_A_COUNTRY:  # `1 level tablespoon` is no `1`
            return match.start(), match.start() + figure.length
    return 0, len(body)

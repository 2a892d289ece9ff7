"""Why a line could not be read, in the words of the person who wrote it."""

from __future__ import annotations

from typing import Any

from manchet.syntax.faults import Fault
from manchet.syntax.nodes import Unread


def suspicious(body: str) -> tuple[str, tuple[Fault, ...]]:
    return body, ()


def stuck(body: str, raws: Any, context: str, rule: str, tokens: Any, at: Any, odd: tuple[Fault, ...]) -> Any:
    return Unread("line"), (*odd, Fault("unreadable-line", 0, len(body), {"text": body, "form": f"{context} {rule} {tokens.types} {at}"}))

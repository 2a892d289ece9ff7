"""What was worked out before, kept for as long as what it follows from is the same."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from typing import TypeVar, cast

T = TypeVar("T")


class Memory:
    """One answer a slot. A pass that is run again gets the last answer, the very same object, where its inputs are equal.

    So what follows from an answer can be kept beside it, and what did not change is found to be the same at a glance.
    """

    def __init__(self) -> None:
        self._kept: dict[Hashable, tuple[object, object]] = {}

    def answer(
        self, slot: Hashable, inputs: object, make: Callable[[], T], holds: Callable[[T], bool] = lambda _: True
    ) -> T:
        """What `make` gives, or what it gave for equal `inputs`, if that still `holds`."""
        kept = self._kept.get(slot)
        if kept is not None and kept[0] == inputs and holds(cast(T, kept[1])):
            return cast(T, kept[1])
        made = make()
        self._kept[slot] = inputs, made
        return made

    def forget(self, slots: Callable[[Hashable], bool]) -> None:
        """Forgets the answers in these slots."""
        self._kept = {slot: kept for slot, kept in self._kept.items() if not slots(slot)}

"""What a person sets in the editor, as far as it concerns Manchet. Never written to a file."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from manchet.batch.order import AS_WRITTEN, Order
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple

ReadOrder = Callable[[str], Order]
"""From the options of a command (`--pieces 24`) to what they ask for. Raises `Exception` where they are none."""


class Settings(NamedTuple):
    orders: Mapping[str, Order] = {}
    """What is wanted today, by the folded name of a formula; of all others, what the file says."""
    spelt: Mapping[str, str] = {}
    """The same, in the options of a command."""
    hints: bool = True
    wrong: tuple[str, ...] = ()
    """What could not be understood of them, in words."""

    def order(self, formula: str) -> Order:
        """How much is wanted of a formula today."""
        return self.orders.get(fold(formula), AS_WRITTEN)

    def words(self, formula: str) -> str:
        """What is wanted of a formula today, in the options of a command; "" for what its file says."""
        return self.spelt.get(fold(formula), "")

    def is_today(self, formula: str) -> bool:
        """Whether today's amount was set, and is not just the file's."""
        return fold(formula) in self.orders


def settings_of(value: Any, read_order: ReadOrder) -> Settings:
    """The settings in what an editor sends: `{"today": {"Tern loaf": "--pieces 24"}, "hints": false}`. What is none of these is
    passed over; an amount that cannot be read is told."""
    if not isinstance(value, dict):
        return Settings()
    wanted = value.get("today")
    orders: dict[str, Order] = {}
    spelt: dict[str, str] = {}
    wrong: list[str] = []
    for name, words in wanted.items() if isinstance(wanted, dict) else ():
        try:
            orders[fold(str(name))] = read_order(str(words))
            spelt[fold(str(name))] = str(words)
        except Exception as error:
            wrong.append(f"manchet.today: {name}: {getattr(error, 'message', None) or error}")
    return Settings(orders, spelt, value.get("hints") is not False, tuple(wrong))

"""Money with its sign: `€21.40`, `21.40€`, where the sign is of one currency."""

from __future__ import annotations

from manchet.quantities.money import SIGNS
from manchet.syntax.loose.rules import Rewriter, any_of, rule

_OF_ONE = {sign: currencies[0] for sign, currencies in SIGNS.items() if len(currencies) == 1 and not sign.isalpha()}
_SIGN = f"({any_of(_OF_ONE)})"

MONEY: tuple[Rewriter, ...] = (
    rule(rf"{_SIGN} ?(<n>)", lambda m: f"{m[2]} {_OF_ONE[m[1]]}"),
    rule(rf"(<n>) ?{_SIGN}", lambda m: f"{m[1]} {_OF_ONE[m[2]]}"),
    rule(r"^(work <n> [A-Z]{3}) ?(?:/|per) ?h(?:our)?$", r"\1 an hour"),
)

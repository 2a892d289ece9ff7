"""The hazards and the limits as Python modules, made from their TOML."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from manchet.cautions.hazard import Hazard, PenBox, Said
from manchet.cautions.market_limit import MarketLimit
from manchet.cautions.phrase import wording_of

_KEYS = {"level", "of", "catchword", "in_full", "source", "address", "american", *Said._fields}


def module_of(toml: str) -> str:
    """The text of `hazards.py` for the text of `hazards.toml`. Raises `ValueError` on what no hazard has."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from hazards.toml by `python -m manchet.generate`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from fractions import Fraction as F",
        "",
        "from manchet.cautions.hazard import Hazard, PenBox, Said",
        "from manchet.cautions.phrase import LocalWord, Measured",
        "",
        f'DATED = "{dated}"',
        "",
        "HAZARDS = {",
    ]
    lines += [f"    {name!r}: {_literal(hazard_of(name, entry))}," for name, entry in data.items()]
    return "\n".join([*lines, "}", ""])


def hazard_of(name: str, entry: Mapping[str, Any]) -> Hazard:
    """One entry of the TOML. Raises `ValueError` on a key that no hazard has, or on a figure without a unit."""
    unknown = {*entry, *entry.get("american", {})} - _KEYS
    if unknown:
        raise ValueError(f"{name}: {', '.join(sorted(unknown))}")
    british = _said(entry)
    american = _said({**entry, **entry.get("american", {})})
    return Hazard(
        entry["level"],
        entry["of"],
        entry.get("catchword", ""),
        entry.get("in_full", False),
        british,
        american,
        entry["source"],
        entry.get("address", ""),
    )


def _said(entry: Mapping[str, Any]) -> Said:
    words, limit, own_limit, if_missed = (
        wording_of(entry.get(key, "")) for key in ("words", "limit", "own_limit", "if_missed")
    )
    boxes = tuple(
        PenBox(wording_of(box["label"]), box.get("unit", ""), box.get("unless", "")) for box in entry.get("boxes", ())
    )
    return Said(words, limit, own_limit, if_missed, boxes)


_UNITS = {
    "C": Fraction(1), "pH": Fraction(1), "%": Fraction(1, 100), "min": Fraction(60), "h": Fraction(3600), "d": Fraction(86400),
}  # fmt: skip
_MARKETS = ("EU", "Britain", "US")


def limits_module_of(toml: str) -> str:
    """The text of `limit_figures.py` for the text of `limits.toml`. Raises `ValueError` on what no limit has."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from limits.toml by `python -m manchet.generate`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from fractions import Fraction as F",
        "",
        "from manchet.cautions.market_limit import MarketLimit",
        "",
        f'DATED = "{dated}"',
        "",
        "LIMITS = {",
    ]
    lines += [f"    {name!r}: {_literal(limit_of(name, entry))}," for name, entry in data.items()]
    return "\n".join([*lines, "}", ""])


def limit_of(name: str, entry: Mapping[str, str]) -> MarketLimit:
    """One entry of the limits. Raises `ValueError` on a key or a unit that none has, or where no source is named."""
    (keeps,) = entry.keys() & {"most", "least"}
    unknown = entry.keys() - {keeps, "source", *_MARKETS}
    if unknown or not entry.get("source"):
        raise ValueError(f"{name}: {', '.join(sorted(unknown)) or 'no source'}")
    markets = tuple((market, _figure(entry[market])) for market in _MARKETS if market in entry)
    return MarketLimit(keeps, _figure(entry[keeps]) if entry[keeps] else None, markets)  # type: ignore[arg-type]


def _figure(text: str) -> Fraction:
    figure, unit = text.split()
    if unit not in _UNITS:
        raise ValueError(f"{text}: {unit!r} is not a unit; it is one of {', '.join(_UNITS)}")
    return Fraction(figure) * _UNITS[unit]


def _literal(value: object) -> str:
    """A value as it is written in Python, a `Fraction` as `F`."""
    if isinstance(value, Hazard | Said | PenBox) or hasattr(value, "_fields"):
        return f"{type(value).__name__}({', '.join(map(_literal, value))})"  # type: ignore[call-overload]
    if isinstance(value, tuple):
        return f"({''.join(f'{_literal(part)}, ' for part in value)})".replace(", )", ",)")
    return repr(value).replace("Fraction(", "F(")

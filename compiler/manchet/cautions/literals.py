"""The hazards as a Python module, made from their TOML."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from manchet.cautions.hazard import Hazard, PenBox, Said
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
    words, limit, if_missed = (wording_of(entry.get(key, "")) for key in ("words", "limit", "if_missed"))
    boxes = tuple(PenBox(wording_of(box["label"]), box.get("unit", "")) for box in entry.get("boxes", ()))
    return Said(words, limit, if_missed, boxes)


def _literal(value: object) -> str:
    """A value as it is written in Python, a `Fraction` as `F`."""
    if isinstance(value, Hazard | Said | PenBox) or hasattr(value, "_fields"):
        return f"{type(value).__name__}({', '.join(map(_literal, value))})"  # type: ignore[call-overload]
    if isinstance(value, tuple):
        return f"({''.join(f'{_literal(part)}, ' for part in value)})".replace(", )", ",)")
    return repr(value).replace("Fraction(", "F(")

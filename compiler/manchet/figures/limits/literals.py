"""The thresholds as a Python module, made from their TOML."""

from __future__ import annotations

from fractions import Fraction

_UNITS = {
    "%": Fraction(1, 100), "x": Fraction(1), "C": Fraction(1), "g": Fraction(1), "kg": Fraction(1000),
    "s": Fraction(1), "min": Fraction(60), "h": Fraction(3600), "d": Fraction(86400), "%h": Fraction(1),
}  # fmt: skip


def _value(text: str) -> Fraction:
    figure, unit = text.split()
    return Fraction(figure) * _UNITS[unit]


def module_of(toml: str) -> str:
    """The text of `thresholds.py` for the text of `thresholds.toml`. Raises `KeyError` on an unknown unit."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from thresholds.toml by `python -m manchet.generate`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from fractions import Fraction as F",
        "",
        "from manchet.figures.limits.limit import Limit",
        "",
        f'DATED = "{dated}"',
        "",
        "THRESHOLDS = {",
    ]
    for name, entry in data.items():
        any_bread = f"F({_parts(entry['any'])})" if "any" in entry else "None"
        kinds = ", ".join(
            f'"{kind.strip()}": F({_parts(value)})'
            for kinds, value in entry.get("kinds", {}).items()
            for kind in kinds.split(",")
        )
        source = entry["source"].replace("\\", "\\\\").replace('"', '\\"')
        lines.append(f'    "{name}": Limit({any_bread}, {{{kinds}}}, "{source}"),')
    return "\n".join([*lines, "}", ""])


def _parts(text: str) -> str:
    value = _value(text)
    return f"{value.numerator}, {value.denominator}" if value.denominator != 1 else str(value.numerator)

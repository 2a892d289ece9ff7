"""The thresholds of the checks, by kind of bread.

The figures and who says so stand in `thresholds.toml`; `thresholds.py` is written from it (`literals`), since
reading TOML would cost every start of the command.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import NamedTuple


class Limit(NamedTuple):
    """A threshold: shares of 1, seconds, Celsius or grams.

    `any_bread` holds where no kind is given and for kinds not named; None: no such limit there.
    """

    any_bread: Fraction | None
    kinds: Mapping[str, Fraction]
    source: str


@cache
def limit(name: str, kind: str = "") -> Fraction | None:
    """The threshold of that name for that kind; None where there is none."""
    from manchet.checks.thresholds import THRESHOLDS

    found = THRESHOLDS.get(name)
    return None if found is None else found.kinds.get(kind, found.any_bread)


_UNITS = {
    "%": Fraction(1, 100), "x": Fraction(1), "C": Fraction(1), "g": Fraction(1), "kg": Fraction(1000),
    "s": Fraction(1), "min": Fraction(60), "h": Fraction(3600), "d": Fraction(86400), "%h": Fraction(1),
}  # fmt: skip


def _value(text: str) -> Fraction:
    figure, unit = text.split()
    return Fraction(figure) * _UNITS[unit]


def literals(toml: str) -> str:
    """The text of `thresholds.py` for the text of `thresholds.toml`. Raises `KeyError` on an unknown unit."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from thresholds.toml by `python -m manchet.checks.limits`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from fractions import Fraction as F",
        "",
        "from manchet.checks.limits import Limit",
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


if __name__ == "__main__":
    from manchet.source.generated import write_beside

    write_beside(__file__, "thresholds.toml", "thresholds.py", literals)

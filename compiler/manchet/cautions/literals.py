"""The hazards as a Python module, made from their TOML."""

from __future__ import annotations

from manchet.cautions.hazard import Hazard


def module_of(toml: str) -> str:
    """The text of `hazards.py` for the text of `hazards.toml`."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from hazards.toml by `python -m manchet.generate`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from manchet.cautions.hazard import Hazard",
        "",
        f'DATED = "{dated}"',
        "",
        "HAZARDS = {",
    ]
    for name, entry in data.items():
        fields = ", ".join(repr(entry.get(field, "")) for field in Hazard._fields)
        lines.append(f"    {name!r}: Hazard({fields}),")
    return "\n".join([*lines, "}", ""])

"""The names of all reports as a Python module, made from their cases."""

from __future__ import annotations

from collections.abc import Mapping

from manchet.diagnostics.case import case_of
from manchet.diagnostics.diagnostic import Severity


def module_of(cases: Mapping[str, str]) -> str:
    """The text of `names.py` for the text of every case by its path, such as `checks/composition/salt-low.bake`.

    Raises `ValueError` where a text is no case, or where two are of one name: a name means one thing, for ever.
    """
    rows: dict[str, tuple[str, str]] = {}
    for path, text in cases.items():
        folder, _, file = path.rpartition("/")
        name = file.removesuffix(".bake")
        if name in rows:
            raise ValueError(f"{name} is explained in {rows[name][1]} and in {folder}")
        rows[name] = (Severity(case_of(name, text).severity).value, folder)
    lines = [
        '"""Written from the cases of the reports by `python -m manchet.generate`; change them, not this one."""',
        "",
        "# fmt: off",
        "REPORTS = {",
        *(f"    {name!r}: {rows[name]!r}," for name in sorted(rows)),
        "}",
        '"""Name of a report -> how grave it is, and the folder of the package where its case stands."""',
        "",
    ]
    return "\n".join(lines)

"""The index of checks as a Python module, made from what the checks say of themselves."""

from __future__ import annotations

from collections.abc import Mapping


def module_of(checks: Mapping[str, str]) -> str:
    """The text of `index.py` for the text of every check by its path, such as `composition/salt_low.py`.

    Raises `ValueError` where a check says no name or not what it is about, or where two have one name.
    """
    rows: dict[str, str] = {}
    for path, code in checks.items():
        said = _said(code)
        if not {"NAME", "ABOUT"} <= said.keys():
            raise ValueError(f"{path} says no NAME or no ABOUT")
        name, topic = said["NAME"], path.split("/")[0]
        if path != f"{topic}/{str(name).replace('-', '_')}.py" or name in rows:
            raise ValueError(f"{path} is called {name}: a check stands in the file of its name, once")
        explains = f", {said['EXPLAINS']!r}" if "EXPLAINS" in said else ""
        rows[str(name)] = (
            f"    {name!r}: Listed({topic!r}, {said['ABOUT']!r}, {said.get('OF_SIZE', False)!r}{explains}),"
        )
    lines = [
        '"""Written from the checks by `python -m manchet.generate`; change them, not this one."""',
        "",
        "# fmt: off",
        "from manchet.checks.listed import Listed",
        "",
        "CHECKS = {",
        *(rows[name] for name in sorted(rows)),
        "}",
        "",
    ]
    return "\n".join(lines)


def _said(code: str) -> dict[str, object]:
    """The constants `NAME`, `ABOUT`, `OF_SIZE` and `EXPLAINS` of a module, read without running it."""
    import ast

    return {
        target.id: ast.literal_eval(node.value)
        for node in ast.parse(code).body
        if isinstance(node, ast.Assign)
        for target in node.targets
        if isinstance(target, ast.Name) and target.id in ("NAME", "ABOUT", "OF_SIZE", "EXPLAINS")
    }

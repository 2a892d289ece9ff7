"""The index of checks as a Python module, made from what the checks say of themselves."""

from __future__ import annotations

from collections.abc import Mapping
from typing import cast


def module_of(checks: Mapping[str, str]) -> str:
    """The text of `index.py` for the text of every check by its path, such as `composition/salt_low.py`.

    Raises `ValueError` where a check says no name or not what it is about, or where two have one name.
    """
    found: dict[str, dict[str, object]] = {}
    for path, code in checks.items():
        said = _said(code)
        if not {"NAME", "ABOUT"} <= said.keys():
            raise ValueError(f"{path} says no NAME or no ABOUT")
        name, topic = said["NAME"], path.split("/")[0]
        if path != f"{topic}/{str(name).replace('-', '_')}.py" or name in found:
            raise ValueError(f"{path} is called {name}: a check stands in the file of its name, once")
        found[str(name)] = said | {"TOPIC": topic}
    lines = [
        '"""Written from the checks by `python -m manchet.generate`; change them, not this one."""',
        "",
        "# fmt: off",
        "from manchet.checks.listed import Listed",
        "",
        "CHECKS = {",
        *(_row(name, found) for name in sorted(found)),
        "}",
        "",
    ]
    return "\n".join(lines)


def _row(name: str, found: Mapping[str, Mapping[str, object]]) -> str:
    said, explained = found[name], _all_explained(name, found)
    last = f", {explained!r}" if explained else ""
    return f"    {name!r}: Listed({said['TOPIC']!r}, {said['ABOUT']!r}, {said.get('OF_SIZE', False)!r}{last}),"


def _all_explained(name: str, found: Mapping[str, Mapping[str, object]]) -> tuple[str, ...]:
    """What a check explains, with what each of these would explain: that is not heard once they are not."""
    explained: dict[str, None] = {}
    waiting = [name]
    while waiting:
        for one in cast("tuple[str, ...]", found.get(waiting.pop(), {}).get("EXPLAINS", ())):
            if one != name and one not in explained:
                explained[one] = None
                waiting.append(one)
    return tuple(explained)


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

"""Every generated file of the project, made anew: `python -m manchet.generate`. The tests ask that each is fresh."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import manchet.grammar  # type: ignore[import-not-found]
from manchet.records import NamedTuple

PACKAGE = Path(__file__).parent
PROJECT = PACKAGE.parents[1] / "pyproject.toml"
GRAMMAR = Path(str(manchet.grammar.__file__)).parent


class Generated(NamedTuple):
    """A file that is made from others. `text` makes it; it raises `ValueError` where a source has mistakes."""

    file: Path
    text: Callable[[], str]


def all_generated() -> tuple[Generated, ...]:
    """The names of the reports first: whatever can make a report needs them."""
    return (
        Generated(PACKAGE / "diagnostics" / "names.py", _names),
        Generated(PACKAGE / "checks" / "index.py", _checks),
        Generated(GRAMMAR / "tables.py", _grammar),
        Generated(PACKAGE / "larder" / "builtin.py", _larder),
        Generated(PACKAGE / "syntax" / "mistakes" / "several_kinds.py", _several_kinds),
        Generated(PACKAGE / "figures" / "limits" / "thresholds.py", _thresholds),
        Generated(PACKAGE / "cautions" / "hazards.py", _hazards),
        Generated(PACKAGE / "cautions" / "limit_figures.py", _caution_limits),
        Generated(PACKAGE / "sheets" / "sheet.schema.json", _schema),
        Generated(GRAMMAR / "editors" / "bake.tmLanguage", _colours),
        Generated(PACKAGE / "comparison" / "comparison.schema.json", _comparison),
        Generated(PROJECT, _packages),
    )


def _names() -> str:
    from manchet.diagnostics.literals import module_of

    return module_of(_texts(PACKAGE, "*/reports/*.bake", "checks/*/*.bake"))


def _checks() -> str:
    from manchet.checks.literals import module_of

    return module_of(_texts(PACKAGE / "checks", "*/[!_]*.py"))


def _grammar() -> str:
    from manchet.syntax.tables import module_of

    return module_of(_text(GRAMMAR / "manchet.lark"))


def _larder() -> str:
    from manchet.larder.compile import module_of

    return module_of(_text(PACKAGE / "larder" / "builtin.bake"))


def _several_kinds() -> str:
    from manchet.larder.compile import kinds_module_of

    return kinds_module_of(_text(PACKAGE / "larder" / "builtin.bake"))


def _thresholds() -> str:
    from manchet.figures.limits.literals import module_of

    return module_of(_text(PACKAGE / "figures" / "limits" / "thresholds.toml"))


def _hazards() -> str:
    from manchet.cautions.literals import module_of

    return module_of(_text(PACKAGE / "cautions" / "hazards.toml"))


def _caution_limits() -> str:
    from manchet.cautions.literals import limits_module_of

    return limits_module_of(_text(PACKAGE / "cautions" / "limits.toml"))


def _colours() -> str:
    """The same colours in the notation that Sublime Text reads: a property list."""
    import json
    import plistlib

    return plistlib.dumps(json.loads(_text(GRAMMAR / "editors" / "bake.tmLanguage.json")), sort_keys=False).decode()


def _schema() -> str:
    from manchet.sheets.published import schema_text

    return schema_text()


def _comparison() -> str:
    from manchet.comparison.schema import schema_text

    return schema_text(_text(PACKAGE / "figures" / "figures.schema.json"))


def _packages() -> str:
    """The project file with every package there is: one that it does not name would be missing from what is installed."""
    folders = {file.parent.relative_to(PACKAGE.parent) for file in PACKAGE.rglob("*.py")}
    names = sorted({".".join(folder.parts) for folder in folders} | {"manchet.grammar"})
    before, opening, rest = _text(PROJECT).partition("packages = [\n")
    _, closing, after = rest.partition("]\n")
    return before + opening + "".join(f'  "{name}",\n' for name in names) + closing + after


def _text(file: Path) -> str:
    """As it is to the byte: in some cases the ends of lines are what is wrong."""
    return file.read_bytes().decode("utf-8")


def _texts(folder: Path, *patterns: str) -> dict[str, str]:
    """The text of every such file by its path in the folder."""
    files = {file for pattern in patterns for file in folder.glob(pattern)}
    return {file.relative_to(folder).as_posix(): _text(file) for file in sorted(files)}


def main() -> None:
    for one in all_generated():
        try:
            text = one.text()
        except ValueError as mistakes:
            sys.exit(str(mistakes))
        if not one.file.exists() or one.file.read_text(encoding="utf-8") != text:
            one.file.write_text(text, encoding="utf-8")
            print(one.file.name)


if __name__ == "__main__":
    main()

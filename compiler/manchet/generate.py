"""Every generated file of the project, made anew: `python -m manchet.generate`. The tests ask that each is fresh."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import manchet.grammar  # type: ignore[import-not-found]

PACKAGE = Path(__file__).parent
GRAMMAR = Path(str(manchet.grammar.__file__)).parent


class Generated(NamedTuple):
    """A file that is made from others. `text` makes it; it raises `ValueError` where a source has mistakes."""

    file: Path
    text: Callable[[], str]


def all_generated() -> tuple[Generated, ...]:
    from manchet.cautions import literals as hazards
    from manchet.figures.limits import literals as thresholds
    from manchet.larder import compile as larder
    from manchet.sheets import data
    from manchet.syntax import tables as grammar

    limits, cautions, built_in = (PACKAGE / "figures" / "limits", PACKAGE / "cautions", PACKAGE / "larder")
    return (
        _translated(GRAMMAR / "manchet.lark", GRAMMAR / "tables.py", grammar.module_of),
        _translated(built_in / "builtin.bake", built_in / "builtin.py", larder.module_of),
        _translated(limits / "thresholds.toml", limits / "thresholds.py", thresholds.module_of),
        _translated(cautions / "hazards.toml", cautions / "hazards.py", hazards.module_of),
        Generated(PACKAGE / "sheets" / "sheet.schema.json", data.schema_text),
    )


def _translated(source: Path, file: Path, text_of: Callable[[str], str]) -> Generated:
    """A file that says what one other says, for the program to read."""
    return Generated(file, lambda: text_of(source.read_text(encoding="utf-8")))


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

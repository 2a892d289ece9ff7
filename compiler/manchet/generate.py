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
    """A file that is made from another. `text` makes it; it raises `ValueError` where the source has mistakes."""

    file: Path
    source: Path
    text: Callable[[str], str]


def all_generated() -> tuple[Generated, ...]:
    from manchet.cautions import literals as hazards
    from manchet.figures.limits import literals as thresholds
    from manchet.larder import compile as larder
    from manchet.syntax import tables as grammar

    limits, cautions, built_in = (PACKAGE / "figures" / "limits", PACKAGE / "cautions", PACKAGE / "larder")
    return (
        Generated(GRAMMAR / "tables.py", GRAMMAR / "manchet.lark", grammar.module_of),
        Generated(built_in / "builtin.py", built_in / "builtin.bake", larder.module_of),
        Generated(limits / "thresholds.py", limits / "thresholds.toml", thresholds.module_of),
        Generated(cautions / "hazards.py", cautions / "hazards.toml", hazards.module_of),
    )


def main() -> None:
    for one in all_generated():
        try:
            text = one.text(one.source.read_text(encoding="utf-8"))
        except ValueError as mistakes:
            sys.exit(str(mistakes))
        if not one.file.exists() or one.file.read_text(encoding="utf-8") != text:
            one.file.write_text(text, encoding="utf-8")
            print(one.file.name)


if __name__ == "__main__":
    main()

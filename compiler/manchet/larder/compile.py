"""Writes `builtin.py` from `builtin.bake`: `python -m manchet.larder.compile`."""

from __future__ import annotations

import os
import sys

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient, Question
from manchet.larder.reading import ingredients_of
from manchet.larder.stock import keys_of, line_of
from manchet.outcome import Outcome
from manchet.source.text import SourceText
from manchet.syntax.nodes import BlockHead
from manchet.syntax.parser import parse

HERE = os.path.dirname(os.path.abspath(__file__))
SOURCE = os.path.join(HERE, "builtin.bake")
TARGET = os.path.join(HERE, "builtin.py")

_HEAD = '''"""The built-in larder, made of builtin.bake by `python -m manchet.larder.compile`. Read by stock.py."""

# fmt: off
'''


def entries_of(source: SourceText) -> Outcome[tuple[Ingredient | Question, ...]]:
    """Every entry of every larder in the text, and all that is wrong with them."""
    file, diagnostics = parse(source)
    found = list(diagnostics)
    entries: list[Ingredient | Question] = []
    for block in file.entries:
        if isinstance(block.node, BlockHead) and block.node.word == "larder":
            read, wrong = ingredients_of(block)
            entries += read
            found += wrong
    return Outcome(tuple(entries), tuple(found))


def module_of(entries: tuple[Ingredient | Question, ...]) -> str:
    """The text of `builtin.py`: a line for each entry, and the number of the line for each name."""
    lines = "\n".join(line_of(entry) for entry in entries)
    keys = "\n".join(f"{name}\t{number}" for name, number in keys_of(entries).items())
    assert '"""' not in lines + keys and "\\" not in lines + keys
    return f'{_HEAD}ENTRIES = """\n{lines}\n"""\n\nKEYS = """\n{keys}\n"""\n'


def main() -> int:
    with open(SOURCE, encoding="utf-8") as file:
        entries, diagnostics = entries_of(SourceText("builtin.bake", file.read()))
    _joined, also = Larder(below=lambda key: None).with_entries(entries)
    wrong: tuple[Diagnostic, ...] = (*diagnostics, *also)
    for diagnostic in wrong:
        print(f"{diagnostic.place.path}:{diagnostic.place.line}: {diagnostic.message}", file=sys.stderr)
    if any(diagnostic.severity is Severity.ERROR for diagnostic in wrong):
        return 1
    with open(TARGET, "w", encoding="utf-8") as file:
        file.write(module_of(entries))
    return 0


if __name__ == "__main__":
    sys.exit(main())

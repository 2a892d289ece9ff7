"""The built-in larder as a Python module, made from `builtin.bake`."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient, Question
from manchet.larder.reading import ingredients_of
from manchet.larder.stock import keys_of, line_of
from manchet.source.text import SourceText
from manchet.syntax.nodes import BlockHead
from manchet.syntax.parser import parse

_HEAD = '''"""The built-in larder, made of builtin.bake by `python -m manchet.generate`. Read by stock.py."""

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


def module_of(text: str) -> str:
    """The text of `builtin.py` for that of `builtin.bake`: a line for each entry, and the number of the line for each name.

    Raises `ValueError` with the mistakes of the larder, a line each.
    """
    entries = _sound_entries(text)
    lines = "\n".join(line_of(entry) for entry in entries)
    keys = "\n".join(f"{name}\t{number}" for name, number in keys_of(entries).items())
    assert '"""' not in lines + keys and "\\" not in lines + keys
    return f'{_HEAD}ENTRIES = """\n{lines}\n"""\n\nKEYS = """\n{keys}\n"""\n'


_KINDS_HEAD = '''"""Names that mean several things to the built-in larder, made of builtin.bake by `python -m manchet.generate`."""

# fmt: off
'''


def kinds_module_of(text: str) -> str:
    """The text of `syntax/mistakes/several_kinds.py` for that of `builtin.bake`. Raises `ValueError` as `module_of` does."""
    asked = {fold(one.name): one.choices for one in _sound_entries(text) if isinstance(one, Question)}
    lines = "".join(f"    {name!r}: {choices!r},\n" for name, choices in sorted(asked.items()))
    return f"{_KINDS_HEAD}KINDS: dict[str, tuple[str, ...]] = {{\n{lines}}}\n"


def _sound_entries(text: str) -> tuple[Ingredient | Question, ...]:
    entries, found = entries_of(SourceText("builtin.bake", text))
    _, also = Larder(below=lambda key: None).with_entries(entries)
    wrong = [one for one in (*found, *also) if one.severity is Severity.ERROR]
    if wrong:
        raise ValueError("\n".join(f"{one.place.path}:{one.place.line}: {one.message}" for one in wrong))
    return entries

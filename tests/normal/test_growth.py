"""Twice the text is twice the work to tidy, whatever there is twice as much of."""

from __future__ import annotations

from collections.abc import Callable

from every import every
from growth.test_growth import AT_MOST
from growth.work_done import calls

from manchet.normal.text import normal_text
from manchet.source.text import SourceText


def others(many: int) -> range:
    """So many numbers, and other ones for each size: a line that was read before costs nothing."""
    return range(100 * many, 101 * many)


HEAD = "formula Loaf\n  kind soft\n\n  levain\n"
TEXTS: dict[str, Callable[[int], str]] = {
    "clauses of one line": lambda many: HEAD + "    bake " + "at 240 C 12 min steam " * many + "\n",
    "names of one list": lambda many: HEAD + "    add " + "salt, " * many + "water\n",
    "lines": lambda many: HEAD + "".join(f"    salt {number} %\n" for number in others(many)),
    "safe fixes": lambda many: HEAD + "".join(f"    ferment {number} hours\n" for number in others(many)),
    "loose spellings": lambda many: HEAD + "".join(f"    - water: {number},5 g\n" for number in others(many)),
    "tabs": lambda many: HEAD + "\t\tsalt 2%\n" * many,
    "blank lines": lambda many: HEAD + "\n" * many + "# a remark\n" * many,
    "unread lines": lambda many: HEAD + "".join(f"    knead {number} x\n" for number in others(many)),
}


@every(TEXTS, at_least=8)
def test_the_work_grows_as_the_text_does(name: str) -> None:
    _work(name, 50)
    one, two, four = (_work(name, many) for many in (100, 200, 400))
    assert four - two <= AT_MOST * (two - one), (one, two, four)


def _work(name: str, many: int) -> int:
    text = SourceText("x", TEXTS[name](many))
    return calls(lambda: normal_text(text))

"""Every case of tests/corpus/syntax: `=== title`, the source, `---`, the tree and the reports.

`pytest tests/syntax --update-golden` writes what the parser makes of them now, for review in `git diff`.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from conftest import Golden
from syntax.outline import outline

FOLDER = Path(__file__).parent.parent / "corpus" / "syntax"
FILES = sorted(FOLDER.glob("*.txt"))


def cases(path: Path) -> list[tuple[str, str, str]]:
    found = []
    for part in path.read_text(encoding="utf-8").split("=== ")[1:]:
        title, _, rest = part.partition("\n")
        source, _, expected = rest.partition("---\n")
        found.append((title, source, expected.rstrip("\n") + "\n"))
    return found


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_lines_read_as_they_should(path: Path, golden: Golden) -> None:
    read = cases(path)
    assert read, "a file of the corpus has no case"
    made = [(title, source, outline(source)) for title, source, _ in read]
    golden(path, "".join(f"=== {title}\n{source}---\n{found}\n" for title, source, found in made))


def test_there_is_a_corpus() -> None:
    assert len(FILES) >= 5

"""A test of every row of a table: all that fail are told, none is passed over, and a table that has lost rows fails."""

from __future__ import annotations

from pathlib import Path

import pytest
from every import every

ROWS = [("salt", 2), ("water", 70), ("yeast", 1)]


def test_every_row_is_tried_with_the_fixtures(tmp_path: Path) -> None:
    tried = []

    @every(ROWS, at_least=3)
    def test(name: str, percent: int, tmp_path: Path) -> None:
        tried.append((name, percent, tmp_path))

    test(tmp_path=tmp_path)
    assert tried == [(*row, tmp_path) for row in ROWS]


def test_all_that_fail_are_told_by_their_rows() -> None:
    @every(ROWS, at_least=3)
    def test(name: str, percent: int) -> None:
        assert percent > 2, "too little"
        _ = {"water": 70}[name]

    with pytest.raises(AssertionError) as told:
        test()
    first, salt, *_, yeast = [line for line in str(told.value).splitlines() if line.startswith(("2 of", "("))]
    assert first == "2 of 3 rows:"
    assert salt.startswith("('salt', 2): AssertionError in line") and "too little" in salt
    assert yeast.startswith("('yeast', 1): AssertionError in line")


@every([[2, 70], [3, 65]], at_least=2)
def test_a_row_that_is_no_tuple_is_one_argument(row: list[int], tmp_path: Path) -> None:
    assert len(row) == 2 and tmp_path.is_dir()


@pytest.mark.parametrize("rows", [[], ROWS[:2]], ids=len)
def test_a_table_that_lost_rows_fails(rows: list[tuple[str, int]]) -> None:
    @every(rows, at_least=3)
    def test(name: str, percent: int) -> None:
        pass

    with pytest.raises(AssertionError, match=f"{len(rows)} rows"):
        test()

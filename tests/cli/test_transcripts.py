"""Every transcript comes out as it is written. `pytest tests/cli --update-golden` rewrites them; then read the diff."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from cli.transcripts import replay

CASES = sorted((Path(__file__).parent / "cases").glob("*.txt"))


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.stem)
def test_transcript(case: Path, tmp_path: Path, golden: Callable[[Path, str], None]) -> None:
    golden(case, replay(case.read_text("utf-8"), tmp_path))


def test_there_are_cases() -> None:
    assert len(CASES) >= 25

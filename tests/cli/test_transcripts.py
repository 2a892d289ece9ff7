"""Every transcript comes out as it is written. `MANCHET_UPDATE=1 pytest tests/cli` rewrites them; then read the diff."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from cli.transcripts import replay

CASES = sorted((Path(__file__).parent / "cases").glob("*.txt"))


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.stem)
def test_transcript(case: Path, tmp_path: Path) -> None:
    written = case.read_text("utf-8")
    now = replay(written, tmp_path)
    if os.environ.get("MANCHET_UPDATE"):
        case.write_text(now, "utf-8", newline="\n")
    else:
        assert now == written


def test_there_are_cases() -> None:
    assert len(CASES) >= 25

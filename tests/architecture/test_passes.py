"""The order of the way through is one list, which prints itself and is what the developers' page tells."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

from manchet.workspace.passes import CHECKING, READING, list_of_passes

PAGE = Path(__file__).parents[2] / "DEVELOPERS.md"


def test_the_list_prints_itself() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "manchet.workspace.passes"], capture_output=True, text=True, timeout=60, check=True
    )
    assert done.stdout == list_of_passes() + "\n"
    assert len(done.stdout.splitlines()) == len(READING) + len(CHECKING)


def test_the_page_tells_the_passes_in_their_order() -> None:
    rows = re.findall(r"^\| (reading|checking) \| `(\w+)` \| (.+) \|$", PAGE.read_text(encoding="utf-8"), re.MULTILINE)
    passes = [*(("reading", one) for one in READING), *(("checking", one) for one in CHECKING)]
    assert rows == [(kind, one.__name__, one.__doc__) for kind, one in passes]

from __future__ import annotations

import os

from bad_input.fuzz import run
from run_length import at_length


def test_spoilt_files_are_read_to_their_end() -> None:
    seconds = float(os.environ.get("MANCHET_FUZZ_SECONDS", at_length(60, 3)))
    assert run(seconds, seed=20260914) > 20

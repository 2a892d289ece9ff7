from __future__ import annotations

import os

from bad_input.fuzz import run


def test_spoilt_files_are_read_to_their_end() -> None:
    assert run(float(os.environ.get("MANCHET_FUZZ_SECONDS", "60" if os.environ.get("CI") else "3")), seed=20260914) > 20

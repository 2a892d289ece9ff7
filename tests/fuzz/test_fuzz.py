"""A minute of the fuzzer in continuous checks, some seconds of it elsewhere; MANCHET_FUZZ_SECONDS says otherwise."""

from __future__ import annotations

import os
from collections import Counter

from fuzz.run import TRIALS, findings
from run_length import at_length


def test_nothing_is_found() -> None:
    seconds = float(os.environ.get("MANCHET_FUZZ_SECONDS", at_length(60, 6)))
    done: Counter[str] = Counter()
    found = next(findings(seconds, 20261129, [*TRIALS], done), None)
    assert found is None, str(found)
    assert done.keys() == TRIALS.keys()

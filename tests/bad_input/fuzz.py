"""Spoils good files at random for a while: the parser never raises, never hangs, and what it says lies in the text.

`python tests/bad_input/fuzz.py [SECONDS]`; MANCHET_FUZZ_SECONDS sets it for the test (60 in continuous checks).
"""

from __future__ import annotations

import os
import random
import sys
import time
from pathlib import Path

from manchet.source.text import SourceText
from manchet.syntax.parser import parse

ROOT = Path(__file__).parent.parent.parent
SPICE = ['"', "“", "”", "#", ",", "\t", "  ", "\n", "-", "–", "½", "0", "9" * 50, "1/0", "%", "é", "\u202e", "\u200b", "𝟙", "\x00",
         " with ", " of ", " to ", " at ", " C", " g", "formula ", "\n    ", "each", "٣", "а", "\u00a0", "１"]  # fmt: skip


def with_slips(text: str, rng: random.Random) -> str:
    for _ in range(rng.randint(1, 12)):
        at = rng.randrange(len(text) + 1)
        to = min(len(text), at + rng.choice((0, 0, 1, 3, 40)))
        how = rng.random()
        put = rng.choice(SPICE) if how < 0.7 else text[to : to + 30] if how < 0.85 else ""
        text = text[:at] + put + text[to:]
    return text


def run(seconds: float, seed: int) -> int:
    """How many spoilt files were read. Fails with the seed and the text of the first that goes wrong."""
    rng = random.Random(seed)
    texts = [path.read_text(encoding="utf-8") for path in sorted(ROOT.glob("recipes/**/*.bake"))]
    until = time.monotonic() + seconds
    done = 0
    while time.monotonic() < until:
        text = with_slips(rng.choice(texts), rng)
        try:
            check(text)
        except Exception as problem:
            raise AssertionError(f"seed {seed}, file {done}: {problem!r}\n{text!r}") from problem
        done += 1
    return done


def check(text: str) -> None:
    out = parse(SourceText("x", text))
    assert "\n".join(line.raw for line in out.value.lines) == text.removesuffix("\n")
    rows = text.split("\n")
    for report in out.diagnostics:
        place = report.place
        assert 1 <= place.line <= len(rows)
        assert 1 <= place.column <= place.end_column <= len(rows[place.line - 1]) + 2, report
        assert report.message and "Traceback" not in report.message


if __name__ == "__main__":
    seed = random.randrange(10**6)
    print(
        run(float(sys.argv[1]) if len(sys.argv) > 1 else float(os.environ.get("MANCHET_FUZZ_SECONDS", "60")), seed),
        "files, seed",
        seed,
    )

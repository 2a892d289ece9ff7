"""The fuzzer: texts of bakeries are made at random, and each trial says what must hold of every one.

`PYTHONPATH=tests python -m fuzz.run [SECONDS] [--seed N] [--trial NAME] [--number N]`. It goes on after a finding, prints each
sort of finding once with the smallest text that still shows it, and ends with how many texts each trial was given. A finding is
seen again by its seed, trial and number.
"""

from __future__ import annotations

import argparse
import random
import re
import time
from collections import Counter
from collections.abc import Callable, Iterator

from fuzz.texts import any_text
from fuzz.trials.asking import asking
from fuzz.trials.commanding import commanding
from fuzz.trials.mending import mending
from fuzz.trials.picturing import picturing
from fuzz.trials.printing import printing
from fuzz.trials.reading import reading
from fuzz.trials.saving import saving
from fuzz.trials.tidying import tidying
from fuzz.trials.weighing import weighing
from fuzz.trials.writing_otherwise import permuting, remarks

from manchet.records import NamedTuple

Trial = Callable[[str, random.Random], None]
"""Raises where something does not hold of the text. Whatever else it chooses comes out of the second."""

TRIALS: dict[str, Trial] = {
    one.__name__: one
    for one in (
        reading,
        mending,
        tidying,
        printing,
        weighing,
        remarks,
        permuting,
        saving,
        commanding,
        picturing,
        asking,
    )
}


class Finding(NamedTuple):
    seed: int
    trial: str
    number: int
    fault: str
    text: str

    @property
    def sort(self) -> str:
        """Which findings are one: figures and names do not tell them apart."""
        return f"{self.trial} {re.sub(r'[0-9]+', '#', self.fault)[:50]}"

    def __str__(self) -> str:
        return f"--seed {self.seed} --trial {self.trial} --number {self.number}\n{self.fault}\n---\n{self.text}\n---"


def attempt(trial: str, seed: int, number: int) -> Finding | None:
    text = any_text(random.Random(f"{seed} {number}"))
    fault = _fault(trial, text, seed, number)
    if fault is None:
        return None
    small = _smallest(trial, text, fault, seed, number)
    return Finding(seed, trial, number, _fault(trial, small, seed, number) or fault, small)


def _fault(trial: str, text: str, seed: int, number: int) -> str | None:
    try:
        TRIALS[trial](text, random.Random(f"{seed} {number} {trial}"))
    except Exception as fault:
        return f"{type(fault).__name__}: {fault}"
    return None


def _smallest(trial: str, text: str, fault: str, seed: int, number: int) -> str:
    """The text with all lines taken out that its fault does not need, for half a minute."""
    rows, until = text.split("\n"), time.monotonic() + 30
    for size in (16, 4, 1):
        at = len(rows)
        while at > 0 and time.monotonic() < until:
            at -= size
            fewer = rows[: max(at, 0)] + rows[max(at + size, 0) :]
            if (_fault(trial, "\n".join(fewer), seed, number) or "")[:40] == fault[:40]:
                rows = fewer
    return "\n".join(rows)


def findings(seconds: float, seed: int, trials: list[str], done: Counter[str]) -> Iterator[Finding]:
    """What goes wrong in so much time, and in `done` how often each trial was made."""
    until, number = time.monotonic() + seconds, 0
    while time.monotonic() < until:
        for trial in trials:
            found = attempt(trial, seed, number)
            done[trial] += 1
            if found is not None:
                yield found
        number += 1


def main() -> None:
    words = argparse.ArgumentParser()
    words.add_argument("seconds", nargs="?", type=float, default=60)
    words.add_argument("--seed", type=int, default=random.randrange(10**6))
    words.add_argument("--trial", choices=[*TRIALS], action="append")
    words.add_argument("--number", type=int)
    asked = words.parse_args()
    trials = asked.trial or [*TRIALS]
    if asked.number is not None:
        for trial in trials:
            print(attempt(trial, asked.seed, asked.number) or f"{trial} holds")
        return
    done, seen = Counter[str](), Counter[str]()
    for found in findings(asked.seconds, asked.seed, trials, done):
        if not seen[found.sort]:
            print(found, flush=True)
        seen[found.sort] += 1
    print(f"seed {asked.seed}: {sum(done.values())} in all; {dict(done)}; findings: {dict(seen) or 'none'}")


if __name__ == "__main__":
    main()

"""Which sheet a new one replaces: the one of the same name that lies in the output folder."""

from __future__ import annotations

import os
from collections.abc import Mapping

from manchet.records import NamedTuple
from manchet.workspace.plain_files import plain_bytes

MOST_BYTES = 20_000_000
LONGEST = 40
"""Letters of a printed day; a file that says more was not written here."""


class Last(NamedTuple):
    """What the sheet in the output folder says of itself: its day, the digest of its file, what it replaced."""

    date: str
    digest: str
    replaces: str

    def replaced_by(self, date: str, digest: str) -> str:
        """The day that a new sheet names. A sheet made again names the day it named before, so that it stays as it is."""
        return self.replaces if (date, digest) == (self.date, self.digest) else self.date


def last_sheets(folder: str, slug: str, kinds: tuple[str, ...]) -> Mapping[str, Last]:
    """For each kind of sheet the last one of this name, from the data beside it; none where there is none."""
    import json

    found = {}
    for kind in kinds:
        data = plain_bytes(os.path.join(folder, f"{slug}.{kind}.json"), MOST_BYTES)
        if data is None:
            continue
        try:
            running = json.loads(data)["running"]
            said = Last(*(running[name] for name in Last._fields))
        except (ValueError, KeyError, TypeError, RecursionError):
            continue
        if all(isinstance(text, str) and len(text) <= LONGEST for text in said):
            found[kind] = said
    return found

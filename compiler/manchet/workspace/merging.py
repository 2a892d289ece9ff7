"""Three versions of a file joined: each in its normal form, then by git's own merge, line by line.

Where one baker set the columns anew and another changed the water, git by itself sees two changes of one line. In normal form
there is one.
"""

from __future__ import annotations

import os
import re
import subprocess
import tempfile
from collections import Counter
from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.records import NamedTuple
from manchet.workspace.folder import premises_of
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.tidying import tidy_bytes
from manchet.workspace.trouble import Absent, Blocked

OURS, BASE, THEIRS = "ours", "before", "theirs"
_END_OF_LINE = re.compile(rb"\r\n|\r|\n")
_MOST_MEETINGS = 127
"""`git merge-file` exits with the number of places left to a person, up to this; with more than it where it could not work."""
_SECONDS = 60


class Merged(NamedTuple):
    """`meetings` is how many places are left to a person; their two versions stand in `data` between git's marks."""

    data: bytes
    meetings: int


class Versions(NamedTuple):
    """The bytes of a file before, and as each of two sides has it."""

    base: bytes
    ours: bytes
    theirs: bytes


def merge(versions: Versions, path: str, words: str = "") -> Merged:
    """The three joined, with the ends of lines of our version, in the English of a house's `words`.

    A version that is no text is left as it is. Raises `Absent` where there is no git, `Blocked` where it will not merge.
    """
    end = _END_OF_LINE.search(versions.ours)
    forms = [_tidy(path, data, words, end[0] if end else b"\n") for data in versions]
    with tempfile.TemporaryDirectory() as folder:
        places = [os.path.join(folder, name) for name in (OURS, BASE, THEIRS)]
        for place, data in zip(places, (forms[1], forms[0], forms[2]), strict=True):
            with open(place, "wb") as file:
                file.write(data)
        labels = [word for name in (OURS, BASE, THEIRS) for word in ("-L", name)]
        try:
            ran = subprocess.run(
                ["git", "merge-file", "-p", *labels, *places], capture_output=True, timeout=_SECONDS, check=False
            )
        except FileNotFoundError:
            raise Absent("git is not installed, and it is git that merges", "install git") from None
        except (OSError, subprocess.SubprocessError) as error:
            raise Blocked(f"git could not merge {path}: {error}") from None
    if not 0 <= ran.returncode <= _MOST_MEETINGS:
        said = ran.stderr.decode("utf-8", "replace").strip()
        raise Blocked(f"git could not merge {path}: {said}")
    return Merged(ran.stdout, ran.returncode)


def mistakes_of_joining(path: str, versions: Versions, merged: bytes) -> tuple[Diagnostic, ...]:
    """The errors that the joined file has and neither side had: two changes, each sound, that together cannot be true.

    It is read in the bakery that stands round `path` now. What is not yet there of the other side's larder is missing in their
    version too, and so it is none of these.
    """
    premises = premises_of(path)
    inside = os.path.relpath(os.path.realpath(path), premises.root).replace(os.sep, "/")
    bakery = OpenBakery(premises)

    def errors(data: bytes) -> Iterator[Diagnostic]:
        bakery.update(inside, data)
        reports = bakery.reports([inside])
        return (one for one in reports if one.severity is Severity.ERROR and one.place.path == inside)

    known = Counter(one.name for one in errors(versions.ours)) | Counter(one.name for one in errors(versions.theirs))
    new = []
    for one in errors(merged):
        known[one.name] -= 1
        if known[one.name] < 0:
            new.append(one._replace(place=one.place._replace(path=path)))
    return tuple(new)


def _tidy(path: str, data: bytes, words: str, end: bytes) -> bytes:
    tidy = tidy_bytes(path, data, words).value
    return data if tidy is None else _END_OF_LINE.sub(lambda _: end, tidy)

"""The pictures that a formula names, in its head, its stages and its steps: found beside its file, never outside of the bakery, read and made safe."""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.formula.model import Formula
from manchet.formula.picture import Picture
from manchet.outcome import Outcome
from manchet.sheets.own_picture import MOST_BYTES, Refused, shown
from manchet.sheets.views import Figure

_SAYS = {
    "large": ("picture-too-large", "is larger than a page can use", f"save it smaller: {MOST_BYTES // 1_000_000} MB at most"),
    "kind": ("picture-of-no-kind", "is no picture that can be printed", "save it as SVG, PNG or JPEG"),
    "damaged": ("picture-damaged", "cannot be read: it is cut short or damaged", "open it in a drawing program and save it again"),
    "reaches out": ("picture-not-plain", "holds more than lines and words", "save it as a plain SVG, or as PNG"),
}  # fmt: skip


Pictures = Mapping[Picture, Figure] | None
"""The baker's own that can be shown; None where no pictures are wanted."""


def pictures_of(formula: Formula, root: str) -> Outcome[Mapping[Picture, Figure]]:
    """The pictures that can be shown; one that cannot is a warning, and left out.

    `root` is the bakery's folder; a place's path is its file's from where the command runs. A stage of the house that
    stands in another folder has its pictures there.
    """
    from manchet.sheets.words_of import words_of

    found: dict[Picture, Figure] = {}
    reports: list[Diagnostic] = []
    bad: set[tuple[str, str]] = set()
    """What is wrong with a file is said once, wherever it is named again."""
    for picture in dict.fromkeys(_named(formula)):
        path, place = picture
        if (path, place.path) in bad:
            continue
        data = _read(path, place, root)
        if isinstance(data, Diagnostic):
            reports.append(data)
            bad.add((path, place.path))
            continue
        made = shown(data)
        if isinstance(made, Refused):
            name, says, way_out = _SAYS[made.why]
            what = f": {made.what}" if made.what else ""
            reports.append(_warning(name, place, f"the picture {path} {says}{what}", way_out))
            bad.add((path, place.path))
            continue
        title = made.title or words_of("").say("drawings.own", os.path.splitext(os.path.basename(path))[0])
        found[picture] = Figure(title, data=made.address)
    return Outcome(found, tuple(reports))


def _named(formula: Formula) -> Iterator[Picture]:
    yield from formula.pictures
    for stage in formula.stages:
        yield from stage.pictures
    ways = [stage.steps for stage in formula.stages] + [branch.steps for branch in formula.branches]
    yield from (picture for steps in ways for step in steps for picture in step.pictures)


def _read(path: str, place: Place, root: str) -> bytes | Diagnostic:
    """The bytes of a picture inside the bakery."""
    parts = path.split("/")
    if not path or "\\" in path or ":" in path or "\0" in path or path.startswith("/") or ".." in parts:
        return _warning(
            "picture-outside", place, f"the picture {path!r} is not named as a file beside this one",
            'write its path from this file down, such as "pictures/plait.svg"',
        )  # fmt: skip
    whole = os.path.realpath(os.path.join(os.path.dirname(os.path.realpath(place.path)), *parts))
    top = os.path.realpath(root)
    if os.path.commonpath((whole, top)) != top:
        return _warning(
            "picture-outside", place, f"the picture {path} lies outside of the bakery", "copy it into the bakery's folder"
        )  # fmt: skip
    try:
        if not os.path.isfile(whole):
            return _warning(
                "picture-missing", place, f"there is no picture {path} beside this file",
                "put it there, or take the line out",
            )  # fmt: skip
        with open(whole, "rb") as file:
            return file.read(MOST_BYTES + 1)
    except OSError:
        return _warning("picture-missing", place, f"the picture {path} cannot be opened", "let yourself read it")


def _warning(name: str, place: Place, message: str, help: str) -> Diagnostic:
    return Diagnostic(name, Severity.WARNING, message, place, help)

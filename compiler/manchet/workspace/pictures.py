"""The pictures that a formula's steps name: found beside its file, never outside of the bakery, read and made safe."""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.formula.model import Formula
from manchet.outcome import Outcome
from manchet.sheets.handout_values import Figure
from manchet.sheets.own_picture import MOST_BYTES, Refused, shown

_SAYS = {
    "large": ("picture-too-large", "is larger than a page can use", f"save it smaller: {MOST_BYTES // 1_000_000} MB at most"),
    "kind": ("picture-of-no-kind", "is no picture that can be printed", "save it as SVG, PNG or JPEG"),
    "damaged": ("picture-damaged", "cannot be read: it is cut short or damaged", "open it in a drawing program and save it again"),
    "reaches out": ("picture-not-plain", "holds more than lines and words", "save it as a plain SVG, or as PNG"),
}  # fmt: skip


def pictures_of(formula: Formula, root: str) -> Outcome[Mapping[str, Figure]]:
    """The pictures by the paths that the file gives; one that cannot be shown is a warning, and left out.

    `root` is the bakery's folder; `formula.place.path` is the file's path from where the command runs.
    """
    from manchet.sheets.words_of import words_of

    folder = os.path.dirname(os.path.realpath(formula.place.path))
    found: dict[str, Figure] = {}
    reports: list[Diagnostic] = []
    for path, place in dict(_named(formula)).items():
        data = _read(path, place, folder, root)
        if isinstance(data, Diagnostic):
            reports.append(data)
            continue
        picture = shown(data)
        if isinstance(picture, Refused):
            name, says, way_out = _SAYS[picture.why]
            what = f": {picture.what}" if picture.what else ""
            reports.append(_warning(name, place, f"the picture {path} {says}{what}", way_out))
            continue
        title = picture.title or words_of("").say("drawings.own", os.path.splitext(os.path.basename(path))[0])
        found[path] = Figure(title, data=picture.address)
    return Outcome(found, tuple(reports))


def _named(formula: Formula) -> Iterator[tuple[str, Place]]:
    for stage in formula.stages:
        for step in stage.steps:
            yield from ((path, step.place) for path in step.pictures)
    for branch in formula.branches:
        for step in branch.steps:
            yield from ((path, step.place) for path in step.pictures)


def _read(path: str, place: Place, folder: str, root: str) -> bytes | Diagnostic:
    """The bytes of a picture inside the bakery."""
    parts = path.split("/")
    if not path or "\\" in path or ":" in path or "\0" in path or path.startswith("/") or ".." in parts:
        return _warning(
            "picture-outside", place, f"the picture {path!r} is not named as a file beside this one",
            'write its path from this file down, such as "pictures/plait.svg"',
        )  # fmt: skip
    whole = os.path.realpath(os.path.join(folder, *parts))
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

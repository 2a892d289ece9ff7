"""The pictures that a formula names, in its head, its stages and its steps: found beside its file, never outside the bakery, read and made safe."""

from __future__ import annotations

import os
from collections.abc import Container, Iterable, Iterator, Mapping
from typing import TYPE_CHECKING, Any

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.model import Formula
from manchet.formula.picture import Picture
from manchet.formula.pictured import pictures_named
from manchet.source.files import Stamp, stamp_of
from manchet.workspace.picture_file import MOST_BYTES, SafePicture, safe_picture

if TYPE_CHECKING:
    from manchet.sheets.parts.views import Illustration

_SAYS = {
    "large": ("picture-too-large", "is larger than a page can use", f"save it smaller: {MOST_BYTES // 1_000_000} MB at most"),
    "kind": ("picture-of-no-kind", "is not a picture that can be printed", "save it as SVG, PNG or JPEG"),
    "damaged": ("picture-damaged", "cannot be read: it is cut short or damaged", "open it in a drawing program and save it again"),
    "reaches out": ("picture-not-plain", "holds more than lines and words", "save it as a plain SVG, or as PNG"),
}  # fmt: skip


def pictures_of(formula: Formula, root: str) -> Outcome[Mapping[Picture, Illustration]]:
    """The pictures that can be shown; one that cannot is a warning, and left out.

    `root` is the bakery's folder; a place's path is its file's from where the command runs. A stage of the house that
    stands in another folder has its pictures there.
    """
    from manchet.sheets.page.words import words_of
    from manchet.sheets.parts.views import Illustration

    figures: dict[Picture, Illustration] = {}
    reports: list[Diagnostic] = []
    for picture, (found, wrong) in _opened(pictures_named(formula), root):
        reports += wrong
        if found is not None:
            name = os.path.splitext(os.path.basename(picture.path))[0]
            figures[picture] = Illustration(found.title or words_of("").say("drawings.own", name), data=found.address)
    return Outcome(figures, tuple(reports))


def not_shown(pictures: Iterable[Picture], root: str) -> tuple[Diagnostic, ...]:
    """The same reports of pictures that are named, without a sheet to show them on."""
    return tuple(wrong for _, found in _opened(pictures, root) for wrong in found.diagnostics)


def not_drawn(addresses: Container[str], pictures: Mapping[Picture, Illustration]) -> tuple[Diagnostic, ...]:
    """A report for each picture that was sound to look at, and that the writer of the PDF could not draw all the same."""
    return tuple(
        report(
            "picture-not-drawn",
            picture.place,
            f"the picture {picture.path} is not on the PDF: what writes the page could not draw it",
            "open it in a drawing program and save it again, as PNG perhaps",
        )
        for picture, shown in pictures.items()
        if shown.data in addresses
    )


def stamps_of(formula: Formula, root: str) -> Mapping[str, Stamp | None]:
    """Every file inside the bakery that the formula names as a picture, its links resolved, and how it is now."""
    files = (_located(picture.path, picture.place, root).value for picture in pictures_named(formula))
    return {file: stamp_of(file) for file in files if file is not None}


def _opened(pictures: Iterable[Picture], root: str) -> Iterator[tuple[Picture, Outcome[SafePicture | None]]]:
    """Each picture once. What is wrong with a file is said once, wherever it is named again."""
    bad: set[tuple[str, str]] = set()
    for picture in dict.fromkeys(pictures):
        path, place = picture
        if (path, place.path) in bad:
            continue
        found = _made_safe(path, place, root)
        if found.value is None:
            bad.add((path, place.path))
        yield picture, found


def _made_safe(path: str, place: Place, root: str) -> Outcome[SafePicture | None]:
    data, reports = _read(path, place, root)
    if data is None:
        return Outcome(None, reports)
    made = safe_picture(data)
    if isinstance(made, SafePicture):
        return Outcome(made)
    name, says, way_out = _SAYS[made.why]
    what = f": {made.what}" if made.what else ""
    return _none(name, place, f"the picture {path} {says}{what}", way_out)


def _located(path: str, place: Place, root: str) -> Outcome[str | None]:
    """The file of a picture inside the bakery, whether it is there or not."""
    parts = path.split("/")
    if not path or "\\" in path or ":" in path or "\0" in path or path.startswith("/") or ".." in parts:
        help = 'write its path from this file down, such as "pictures/plait.svg"'
        return _none("picture-outside", place, f"the picture {path!r} is not named as a file beside this one", help)
    whole = os.path.realpath(os.path.join(os.path.dirname(os.path.realpath(place.path)), *parts))
    top = os.path.realpath(root)
    if os.path.commonpath((whole, top)) != top:
        message = f"the picture {path} lies outside the bakery"
        return _none("picture-outside", place, message, "copy it into the bakery's folder")
    return Outcome(whole)


def _read(path: str, place: Place, root: str) -> Outcome[bytes | None]:
    """The bytes of a picture inside the bakery."""
    whole, reports = _located(path, place, root)
    if whole is None:
        return Outcome(None, reports)
    try:
        if not os.path.isfile(whole):
            message = f"there is no picture {path} beside this file"
            return _none("picture-missing", place, message, "put it there, or take out the line")
        with open(whole, "rb") as file:
            return Outcome(file.read(MOST_BYTES + 1))
    except OSError:
        return _none(
            "picture-missing", place, f"the picture {path} cannot be opened", "give yourself permission to read it"
        )


def _none(name: str, place: Place, message: str, help: str) -> Outcome[Any]:
    return Outcome(None, (report(name, place, message, help),))

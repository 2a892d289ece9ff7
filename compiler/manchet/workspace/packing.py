"""What was found in a file, as text and back.

Fields are escaped and parted by characters that then cannot stand in them: \\x1e between the head and the reports, \\x1f
between the fields of one; tab and newline are left to whoever keeps the text.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place, Related, Severity
from manchet.formula.picture import Picture
from manchet.records import NamedTuple


class Found(NamedTuple):
    """What checking one file gave: its reports, how many formulas it holds, and the pictures they name.

    Whether a picture can be shown follows from another file, so that is never kept; it is looked at each time.
    """

    diagnostics: tuple[Diagnostic, ...]
    formulas: int
    pictures: tuple[Picture, ...] = ()


def pack(found: Found) -> str:
    pictures = (field for picture in found.pictures for field in (picture.path, *_place_fields(picture.place)))
    head = "\x1f".join(map(escape, (str(found.formulas), *pictures)))
    return "\x1e".join([head, *map(_packed, found.diagnostics)])


def unpack(text: str) -> Found:
    """Raises ValueError for text that `pack` did not make."""
    head, *reports = text.split("\x1e")
    formulas, *named = map(unescape, head.split("\x1f"))
    pictures = tuple(Picture(path, place) for path, place in _placed(named))
    return Found(tuple(map(_unpacked, reports)), int(formulas), pictures)


def _packed(diagnostic: Diagnostic) -> str:
    fields = [diagnostic.name, diagnostic.severity.value, diagnostic.message, diagnostic.help]
    fields += [*_place_fields(diagnostic.place), str(len(diagnostic.related))]
    for related in diagnostic.related:
        fields += [related.message, *_place_fields(related.place)]
    for fix in diagnostic.fixes:
        fields += [fix.title, _SAFE if fix.safe else "", str(len(fix.edits))]
        for edit in fix.edits:
            fields += [edit.text, *_place_fields(_without_line(edit.place, diagnostic.place.text))]
    return "\x1f".join(map(escape, fields))


def _unpacked(text: str) -> Diagnostic:
    fields = [unescape(field) for field in text.split("\x1f")]
    name, severity, message, help = fields[:4]
    place = _place(fields[4:10])
    at = 11 + _PLACED * int(fields[10])
    related = tuple(Related(where, why) for why, where in _placed(fields[11:at]))
    fixes = []
    while at < len(fields):
        title, safe, number = fields[at : at + 3]
        end = at + 3 + _PLACED * int(number)
        edits = tuple(Edit(_with_line(where, place.text), text) for text, where in _placed(fields[at + 3 : end]))
        fixes.append(Fix(title, edits, safe == _SAFE))
        at = end
    return Diagnostic(name, Severity(severity), message, place, help, related, tuple(fixes))


_SAFE = "safe"
_PLACED = 7
"""Fields of a text and its place."""


def _without_line(place: Place, line: str) -> Place:
    """The place of an edit: most stand in the line of the report, and a long line is not kept for each."""
    return place._replace(text="=" if place.text == line else f"+{place.text}")


def _with_line(place: Place, line: str) -> Place:
    return place._replace(text=line if place.text == "=" else place.text[1:])


def _placed(fields: list[str]) -> Iterator[tuple[str, Place]]:
    """Texts, each with its place."""
    for at in range(0, len(fields), _PLACED):
        yield fields[at], _place(fields[at + 1 : at + _PLACED])


def _place_fields(place: Place) -> list[str]:
    return [place.path, *map(str, place[1:5]), place.text]


def _place(fields: list[str]) -> Place:
    path, line, column, end_line, end_column, text = fields
    return Place(path, int(line), int(column), int(end_line), int(end_column), text)


_ESCAPES = {"\\": "\\\\", "\n": "\\n", "\t": "\\t", "\x1e": "\\e", "\x1f": "\\f", "\r": "\\r"}
_TABLE = str.maketrans(_ESCAPES)


def escape(text: str) -> str:
    """The text without a character that parts fields or lines."""
    return text.translate(_TABLE)


def unescape(text: str) -> str:
    """The text that `escape` was given."""
    if "\\" not in text:
        return text
    # Two backslashes first become a character that cannot stand in the text, so that `\\n` is not taken for `\n`.
    parts = text.split("\\\\")
    for character, escape in _ESCAPES.items():
        if character != "\\":
            parts = [part.replace(escape, character) for part in parts]
    return "\\".join(parts)

"""A file in its normal form as edits: all of it, or the line that was just left."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Edit, Place
from manchet.editor.differences import edits_between
from manchet.normal.text import normal_row, normal_text
from manchet.source.files import with_plain_newlines
from manchet.source.text import SourceText
from manchet.syntax.contexts import ONE_LINE
from manchet.syntax.line import read_line
from manchet.syntax.nodes import File
from manchet.syntax.parser import STEP
from manchet.workspace.open_bakery import OpenBakery


def tidy_edits(bakery: OpenBakery, path: str, text: str) -> tuple[Edit, ...]:
    """What `tidy` would type in the text of a file, in the English of its kitchen."""
    source = SourceText(path, with_plain_newlines(text))
    return edits_between(path, source.text, normal_text(source, _words(bakery, path)))


def edits_on_new_line(bakery: OpenBakery, path: str, line: int) -> tuple[Edit, ...]:
    """After a new line was begun: the line above it in its normal form, and the new one as deep as what is typed under it
    stands. `line` is the number of the new one."""
    file = bakery.tree(path)
    if file is None or not 1 < line <= len(file.lines) + 1:
        return ()
    above = next((one for one in reversed(file.lines[: line - 1]) if one.body), None)
    if above is None:
        return ()
    edits: list[Edit] = []
    tidy = normal_row(file, above.number, _words(bakery, path) == "American")
    if above.number == line - 1 and tidy != above.raw:
        edits += edits_between(path, above.raw, tidy)
        edits = [edit._replace(place=edit.place._replace(line=above.number, end_line=above.number)) for edit in edits]
    written = file.lines[line - 1].raw if line <= len(file.lines) else ""
    if above.number == line - 1 and not written.strip():
        wanted = " " * depth_under(file, above.number)
        if wanted != written:
            edits.append(Edit(Place(path, line, 1, line, len(written) + 1, written), wanted))
    return tuple(edits)


def depth_under(file: File, number: int) -> int:
    """Spaces before a line that follows the line of this number: a heading's own lines stand one step deeper."""
    line, context = file.lines[number - 1], file.contexts[number - 1]
    opens = read_line(line.body, context).opens if context else ""
    return line.indent + (STEP if opens and opens not in ONE_LINE else 0)


def _words(bakery: OpenBakery, path: str) -> str:
    return bakery.read([path]).kitchen_for(path).words

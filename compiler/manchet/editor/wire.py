"""Between our values and those of the protocol: places, edits, reports.

Our columns are characters, counted from 1. The protocol counts from 0, in units that client and server agree on, mostly
those of UTF-16, of which a character beyond the basic plane takes two. Every column passes through the codec of pygls.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any

from lsprotocol import types as lsp
from pygls.workspace import PositionCodec

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Place, Severity
from manchet.diagnostics.json_form import in_three
from manchet.editor.reports import worth_saying

_SEVERITY = {
    Severity.ERROR: lsp.DiagnosticSeverity.Error,
    Severity.WARNING: lsp.DiagnosticSeverity.Warning,
    Severity.NOTE: lsp.DiagnosticSeverity.Information,
}

NameOf = Callable[[str], str]
"""From a path of the bakery to the address of the file."""


class Wire:
    """Speaks in the units of one client."""

    def __init__(self, codec: PositionCodec) -> None:
        self.codec = codec

    def position(self, line: int, column: int, text: str) -> lsp.Position:
        """Where a column of a line stands, whose text is this."""
        return lsp.Position(line - 1, self.codec.client_num_units(text[: column - 1]))

    def range(self, place: Place, lines: Sequence[str] = ()) -> lsp.Range:
        """The stretch of a place. One that ends in a later line, and not at its beginning, needs the lines of its file."""
        end_text = place.text
        if place.end_line != place.line:
            end_text = lines[place.end_line - 1] if place.end_line <= len(lines) else ""
        return lsp.Range(
            self.position(place.line, place.column, place.text),
            self.position(place.end_line, place.end_column, end_text),
        )

    def at(self, lines: Sequence[str], position: lsp.Position) -> tuple[int, int]:
        """The line and the column, each from 1, that a position of the client means; one beyond the end is at the end."""
        row = min(position.line, len(lines) - 1)
        longest = self.codec.client_num_units(lines[row])
        units = min(position.character, longest) if row == position.line else longest
        found = self.codec.position_from_client_units(lines, lsp.Position(row, units))
        return row + 1, found.character + 1

    def text_edit(self, edit: Edit, lines: Sequence[str] = (), newline: str = "\n") -> lsp.TextEdit:
        return lsp.TextEdit(self.range(edit.place, lines), edit.text.replace("\n", newline))

    def workspace_edit(self, edits: Iterable[Edit], name_of: NameOf, lines: Sequence[str] = ()) -> lsp.WorkspaceEdit:
        """The edits by file, for every client: those that know of versions take this form too."""
        changes: dict[str, list[lsp.TextEdit]] = {}
        for edit in edits:
            changes.setdefault(name_of(edit.place.path), []).append(self.text_edit(edit, lines))
        return lsp.WorkspaceEdit(changes=changes)

    def diagnostic(self, report: Diagnostic, name_of: NameOf, lines: Sequence[str] = ()) -> lsp.Diagnostic:
        address = address_of_case(report.name)
        return lsp.Diagnostic(
            range=self.range(report.place, lines),
            severity=_SEVERITY[in_three(report.severity)],
            code=report.name,
            code_description=lsp.CodeDescription(address) if address else None,
            source="manchet",
            message=worth_saying(report),
            related_information=[
                lsp.DiagnosticRelatedInformation(
                    lsp.Location(name_of(one.place.path), self.range(one.place)), one.message
                )
                for one in report.related
            ]
            or None,
            data=self._data(report, name_of, lines) if report.fixes else None,
        )

    def _data(self, report: Diagnostic, name_of: NameOf, lines: Sequence[str]) -> dict[str, Any]:
        """The fixes, for a client that makes something of its own of them."""
        return {
            "fixes": [
                {
                    "title": fix.title,
                    "safe": fix.safe,
                    "edits": [
                        {
                            "uri": name_of(edit.place.path),
                            "range": _plain(self.range(edit.place, lines)),
                            "newText": edit.text,
                        }
                        for edit in fix.edits
                    ],
                }
                for fix in report.fixes
            ]
        }


def address_of_case(name: str) -> str:
    """The address of the page that explains a report: its case, with a mistake and how it is put right. "" where there is none."""
    from importlib.resources import files
    from pathlib import Path

    from manchet.diagnostics.names import REPORTS

    if name not in REPORTS:
        return ""
    case = files("manchet") / REPORTS[name][1] / f"{name}.bake"
    return case.as_uri() if isinstance(case, Path) else ""


def _plain(found: lsp.Range) -> dict[str, dict[str, int]]:
    return {
        "start": {"line": found.start.line, "character": found.start.character},
        "end": {"line": found.end.line, "character": found.end.character},
    }

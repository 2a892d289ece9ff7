"""Reports as JSON, for editors and scripts. A caution is a note there, by the name of what can hurt.

    {"format": "manchet check", "version": 1,
     "summary": {"errors": 0, "warnings": 1, "notes": 0, "formulas": 3, "files": 2},
     "diagnostics": [{"name": "salt-missing", "severity": "warning", "message": "…", "help": "…",
                      "path": "…", "line": 3, "column": 1, "end_line": 3, "end_column": 8,
                      "related": [{"message": "…", "path": "…", "line": 1, …}],
                      "fixes": [{"title": "write `salt 2%`", "safe": false,
                                 "edits": [{"path": "…", "start": {"line": 3, "column": 1},
                                            "end": {"line": 3, "column": 8}, "text": "…"}]}]}]}

Lines and columns count from 1, in code points; an end is exclusive. Several fixes are choices; of one fix all edits are
done or none, and they do not overlap. `\\n` in an edit is the end of a line, however the file writes that. `version` goes up when a field changes its
meaning or goes; a new field may come at any time. Strings are plain: a reader shows them at its own risk, and
every character beyond ASCII is escaped, so that the document itself is harmless in a terminal.
"""

from __future__ import annotations

from collections.abc import Sequence

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place, Severity

VERSION = 1


def document(diagnostics: Sequence[Diagnostic], formulas: int, files: int) -> str:
    """The whole document, with a newline at its end."""
    import json

    def number_of(severity: Severity) -> int:
        return sum(one.severity is severity for one in diagnostics)

    value = {
        "format": "manchet check",
        "version": VERSION,
        "summary": {
            "errors": number_of(Severity.ERROR),
            "warnings": number_of(Severity.WARNING),
            "notes": number_of(Severity.NOTE) + number_of(Severity.CAUTION),
            "formulas": formulas,
            "files": files,
        },
        "diagnostics": [_report(one) for one in diagnostics],
    }
    return json.dumps(value, indent=2) + "\n"


def in_three(severity: Severity) -> Severity:
    """As programs know it, which have no caution: it is a note, and its name says which."""
    return Severity.NOTE if severity is Severity.CAUTION else severity


def _report(diagnostic: Diagnostic) -> dict[str, object]:
    return {
        "name": diagnostic.name,
        "severity": in_three(diagnostic.severity).value,
        "message": diagnostic.message,
        "help": diagnostic.help,
        **_place(diagnostic.place),
        "related": [{"message": related.message, **_place(related.place)} for related in diagnostic.related],
        "fixes": [_fix(fix) for fix in diagnostic.fixes],
    }


def _fix(fix: Fix) -> dict[str, object]:
    return {"title": fix.title, "safe": fix.safe, "edits": [_edit(edit) for edit in fix.edits]}


def _edit(edit: Edit) -> dict[str, object]:
    place = edit.place
    return {
        "path": place.path,
        "start": {"line": place.line, "column": place.column},
        "end": {"line": place.end_line, "column": place.end_column},
        "text": edit.text,
    }


def _place(place: Place) -> dict[str, object]:
    return {
        "path": place.path,
        "line": place.line,
        "column": place.column,
        "end_line": place.end_line,
        "end_column": place.end_column,
    }

"""One mistake (or remark) about a file: what is wrong, where, and what to type instead."""

from __future__ import annotations

from enum import Enum

from manchet.records import NamedTuple


class Severity(Enum):
    """An error cannot be true and stops the sheet; a warning or a note is craft and does not. A caution is of what can hurt: no
    mistake of the file, and nothing that can be allowed."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"
    CAUTION = "caution"


class Place(NamedTuple):
    """A stretch of one line of a file. Lines and columns count from 1, in code points; the end is exclusive."""

    path: str
    line: int
    column: int
    end_line: int
    end_column: int
    text: str = ""
    """The whole line as written, so that a report can quote it without opening the file again."""

    @property
    def where(self) -> str:
        """`breads/tern.bake:12`"""
        return f"{self.path}:{self.line}"


class Related(NamedTuple):
    """A second place that belongs to the same mistake, and a few words on why."""

    place: Place
    message: str


class Edit(NamedTuple):
    """What stands at `place` is exchanged for `text`. A place that ends where it starts takes text in; a place may end in a
    later line, and `\\n` in the text is the end of a line, however the file writes that."""

    place: Place
    text: str


class Fix(NamedTuple):
    """What a machine can type for the baker: all of its edits, or none. Several fixes of one report are choices."""

    title: str
    """What is typed, as a person would be told it: write `1 h 30 min`."""
    edits: tuple[Edit, ...]
    safe: bool = False
    """What is meant cannot change by it: the file is read as before, and the report is gone."""


class Diagnostic(NamedTuple):
    """A report. `message` is lower case, names the actual values and stands alone; `help` says what to type."""

    name: str
    """The stable name of the mistake (`salt-missing`), a key of the catalogue."""
    severity: Severity
    message: str
    place: Place
    help: str = ""
    related: tuple[Related, ...] = ()
    fixes: tuple[Fix, ...] = ()

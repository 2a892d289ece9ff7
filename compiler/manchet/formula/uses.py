"""Reports on stages that are used by nobody, or by too many."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import error
from manchet.formula.draft import Draft


def never_used(draft: Draft) -> Diagnostic:
    return error(
        "never-used", draft.place, f"{draft.name} is made and never used",
        f"write `{draft.name}` in the dough, or `keep what is left as …` in {draft.name}",
    )  # fmt: skip


def used_twice(draft: Draft, by: list[tuple[str, Place]]) -> Diagnostic:
    first, again = by[0], by[1]
    return error(
        "used-twice", again[1], f"all of {draft.name} is in {first[0]} already, and {again[0]} takes it again",
        "leave one of the two lines out", (first[1], "the first takes all of it"),
    )  # fmt: skip

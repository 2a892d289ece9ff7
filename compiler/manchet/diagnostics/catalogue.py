"""Every report that Manchet can make, explained: each has a case, which stands beside the code that makes it."""

from __future__ import annotations

from manchet.diagnostics.case import Case, case_of
from manchet.diagnostics.names import REPORTS


def explain(name: str) -> Case | None:
    """The case of that name, None where there is none."""
    from importlib.resources import files

    name = name.strip().casefold()
    if name not in REPORTS:
        return None
    _, folder = REPORTS[name]
    # Bytes, not text: in some cases the ends of lines are what is wrong.
    return case_of(name, (files("manchet") / folder / f"{name}.bake").read_bytes().decode("utf-8"))


def names() -> tuple[str, ...]:
    """Every name, in the order of the alphabet."""
    return tuple(sorted(REPORTS))

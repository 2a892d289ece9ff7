"""Entries that are made of themselves, however far round."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.larder.ingredient import Ingredient, Question, place_of
from manchet.larder.names import key

DEEPEST = 32
"""How many blends may stand inside one another."""

Entry = Ingredient | Question


def without_circles(own: dict[str, Entry]) -> Outcome[dict[str, Entry]]:
    """The entries with `made of` taken from one entry of each circle, and a report for each. Linear in its parts."""
    depths: dict[str, int] = {}
    cut: dict[str, Entry] = {}
    reports: list[Diagnostic] = []
    for start in own:
        # How deep it and all it is made of are; never by a call inside a call, so that no file is too deep for it.
        path = {start: _parts(own[start], own)} if start == key(own[start].name) and start not in depths else {}
        while path:
            name = next(reversed(path))
            entry = own[name]
            part = next((part for part in path[name] if part not in depths), None)
            if part is not None and part not in path:
                path[part] = _parts(own[part], own)
                continue
            depth = 1 + max((depths[inside] for inside in path.pop(name) if inside in depths), default=0)
            if part is not None or depth > DEEPEST:
                cut[name] = entry._replace(made_of=()) if isinstance(entry, Ingredient) else entry
                reports.append(_report(entry, (*path, name), part, own))
                depth = 1
            depths[name] = depth
    return Outcome({name: cut.get(key(entry.name), entry) for name, entry in own.items()}, tuple(reports))


def _parts(entry: Entry, own: dict[str, Entry]) -> tuple[str, ...]:
    """The keys of the house's own entries that this one is made of; the built-in ones go in no circle."""
    parts = entry.made_of if isinstance(entry, Ingredient) else ()
    return tuple(key(own[key(part.name)].name) for part in parts if key(part.name) in own)


def _report(entry: Entry, path: tuple[str, ...], part: str | None, own: dict[str, Entry]) -> Diagnostic:
    if part is None:
        message = f"{entry.name} is made of blends inside blends, more than {DEEPEST} deep"
        return report("made-of-too-much", place_of(entry), message, "write the blend with fewer blends inside it")
    round_ = [own[name].name for name in path[path.index(part) :]]
    shown = round_ if len(round_) < 6 else [*round_[:2], "…", *round_[-2:]]
    message = " is made of ".join((*shown, round_[0]))
    return report("made-of-itself", place_of(entry), message, f"take {round_[0]} out of `made of` there")

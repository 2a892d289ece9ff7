"""Above the heading of each formula: its sheet of today, how many reports it has, and what is otherwise since the last commit."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.text import count_of
from manchet.editor.documents import root_of
from manchet.editor.reports import reports_on
from manchet.editor.settings import Settings
from manchet.editor.today import size_of, work_today
from manchet.records import NamedTuple
from manchet.syntax.block import FORMULAS, Block
from manchet.workspace.open_bakery import OpenBakery


class Lens(NamedTuple):
    """Words above a heading; `does` is "sheet" or "compare" for the formula of that name, or "" where they only tell."""

    place: Place
    text: str
    does: str = ""
    formula: str = ""


def lenses(bakery: OpenBakery, path: str, settings: Settings) -> tuple[Lens, ...]:
    """What stands above the headings of a file."""
    file = bakery.tree(path)
    raw = next((one for one in bakery.files if one.path == path), None)
    if file is None or raw is None:
        return ()
    reports = reports_on(bakery, path)
    with_git = _is_kept_by_git(root_of(bakery))
    sound = {(one.place.path, one.place.line): one for one in bakery.read([path]).formulas}
    found: list[Lens] = []
    for block in (one for top in raw.blocks if top.word in FORMULAS for one in top.with_variants()):
        place = file.lines[block.line - 1].place()
        formula = sound.get((path, block.line))
        work = None if formula is None else work_today(bakery, formula, settings)
        if formula is not None and work is not None:
            today = "sheet of today" if settings.is_today(formula.name) else "sheet"
            found.append(Lens(place, f"{today} · {size_of(work)}", "sheet", formula.name))
        if block.word != "variant":
            found += (Lens(place, text) for text in _counts(reports, block))
            if with_git:
                found.append(Lens(place, "compare with last commit", "compare", block.name))
    return tuple(found)


def _counts(reports: Sequence[Diagnostic], block: Block) -> Iterator[str]:
    """`1 warning, 2 notes`, where there are any."""
    mine = [one for one in reports if block.line <= one.place.line < block.end]
    said = [count_of(number, one.value) for one in Severity if (number := sum(each.severity is one for each in mine))]
    if said:
        yield ", ".join(said)


def _is_kept_by_git(folder: str) -> bool:
    while folder:
        if os.path.exists(os.path.join(folder, ".git")):
            return True
        above = os.path.dirname(folder)
        if above == folder:
            break
        folder = above
    return False

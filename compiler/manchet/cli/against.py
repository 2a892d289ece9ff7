"""`build --against REV`: what is said of each bread now, and what was said of it at a revision; nothing is written."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from manchet.cli.label_changes import changes
from manchet.diagnostics.terminal import show

if TYPE_CHECKING:
    from manchet.costing.before_and_after import Difference
    from manchet.workspace.selection import Selection


def differences_against(selection: Selection, revision: str, kitchen: str) -> Iterator[str]:
    """Lines for each formula of the selection that is otherwise than it was; one line where none is. Raises `Unknown` where git
    knows no such revision."""
    from manchet.costing.before_and_after import differences
    from manchet.diagnostics.suggest import fold
    from manchet.workspace.revision import bakery_at

    then = bakery_at(selection.root, selection.prefix, revision)
    old, new = then.bakery.read(), selection.bakery.read(selection.paths, kitchen)
    wanted = selection.names
    names = {fold(one.name): one.name for one in (*old.formulas, *new.formulas)}
    inside = {fold(one.name) for one in new.formulas if one.place.path in selection.paths}
    gone = {fold(one.name) for one in old.formulas if one.place.path in selection.paths} - {
        fold(one.name) for one in new.formulas
    }
    found: list[Difference] = []
    for key, name in names.items():
        if (wanted and key not in wanted) or key not in inside | gone:
            continue
        before, after = old.formula(name), new.formula(name)
        work_then = None if before is None else old.work(before, kitchen="").value
        work_now = None if after is None else new.work(after, kitchen=kitchen).value
        found += differences(name, work_then, work_now)
    changed = [one for one in found if not one.is_same]
    yield f"{then.name} → working copy"
    for one in changed:
        yield from _lines(one)
    alike = len(found) - len(changed)
    if alike:
        yield f"{alike} {'is' if alike == 1 else 'are'} as {'it was' if alike == 1 else 'they were'}"


def _lines(one: Difference) -> Iterator[str]:
    from manchet.formula.nouns import singular

    called = show(f"{one.name} {one.noun}".strip())
    if one.before is None or one.after is None:
        yield f"{called}: {'new' if one.before is None else 'gone'}"
        return
    yield called
    of_one = f"a {singular(one.noun)}" if one.noun else "all of it"
    yield from (f"  {line}" for line in changes(one.before, one.after, of_one))

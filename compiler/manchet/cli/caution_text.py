"""What a caution says, and who says so: for `explain`, and for `trace` with the step that causes it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.cautions.caution import Caution


def caution_names() -> tuple[str, ...]:
    from manchet.cautions.hazards import HAZARDS

    return tuple(HAZARDS)


def caution_title(name: str) -> str:
    from manchet.cautions.hazards import HAZARDS

    return f"caution: {HAZARDS[name].catchword}"


def caution_lines(name: str, house: str = "") -> list[str]:
    """The lines that explain a caution. `house` is "F" for degrees Fahrenheit. Raises `KeyError` on an unknown name."""
    from manchet.cautions.caution import caution
    from manchet.sheets.page.house import House
    from manchet.sheets.page.measures import NBSP, Measures
    from manchet.sheets.page.words import words_of
    from manchet.sheets.parts.caution import caution_note

    words = words_of("")
    note = caution_note(caution(name), Measures(House(degrees="F" if house == "F" else "C"), words))
    level = "warning" if note.is_warning else note.level
    said = [f"{name} (caution, {level}): {note.catchword}", "", note.words]
    said += [f"limit: {note.limit}"] * bool(note.limit)
    said += [f"{words['caution.if_missed']} {note.if_missed}"] * bool(note.if_missed)
    said += ["", f"source: {note.source}"]
    said += [f"read at: {note.address}"] * bool(note.address)
    return [line.replace(NBSP, " ") for line in said]


def where_met(work: Work, name: str) -> list[str]:
    """A line for each step of a formula that causes this caution."""
    from manchet.cautions.registry import cautions_of

    return [_where(work, one) for one in cautions_of(work) if one.name == name and one.of == "formula"]


def _where(work: Work, found: Caution) -> str:
    at, formula = found.at, work.formula
    stage = formula.stage(at.stage)
    name = stage.name or stage.word if stage is not None else at.stage
    if stage is None or at.step is None:
        return f"{name}: what is weighed"
    steps = stage.steps if at.branch is None else formula.branches[at.branch].steps
    noun = "" if at.branch is None else f", {formula.branches[at.branch].noun}"
    step = steps[at.step]
    return f"{name}{noun}: step {at.step + 1}, {step.verb} ({step.place.path}:{step.place.line})"

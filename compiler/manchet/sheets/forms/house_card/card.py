"""The safety card of a kitchen: every hazard of the house, whatever is baked; the gravest first."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.cautions.caution import DEFERS
from manchet.cautions.house import house_hazards
from manchet.kitchen.model import Kitchen
from manchet.sheets.forms.house_card.view import SafetyCard, SafetyRow
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.caution import caution_note, sources_once
from manchet.sheets.parts.views import CautionNote


def safety_card(kitchen: Kitchen, issue: Issue, house: House, has_lye: bool = False) -> SafetyCard:
    words = words_of(house.words)
    m = Measures(house, words)
    notes = _help_once([caution_note(one, m) for one in house_hazards(kitchen, has_lye)])
    notes = sorted(notes, key=lambda note: not note.is_warning)
    return SafetyCard(
        title=words["house.title"],
        kitchen=kitchen.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(kitchen.name or words["house.title"], words["house.title"] if kitchen.name else "", issue),
        rows=tuple(_row(str(number), note) for number, note in enumerate(notes, 1)),
        emergency=words.several("house.to_fill_in"),
        sources=sources_once(notes),
        defers=DEFERS,
    )


def _help_once(notes: Sequence[CautionNote]) -> list[CautionNote]:
    """What to do when it has gone wrong, once where it is the same: with the last, nearest to what it is for. For a burn the card
    has a row of its own."""
    last = {note.if_missed: note.hazard for note in notes}
    return [
        note._replace(if_missed="")
        if last[note.if_missed] != note.hazard or note.if_missed.startswith("Burn:")
        else note
        for note in notes
    ]


def _row(number: str, note: CautionNote) -> SafetyRow:
    return SafetyRow(
        number,
        note.level,
        note.catchword,
        note.words,
        note.limit,
        note.if_missed,
        note.boxes,
        note.address or note.source,
    )

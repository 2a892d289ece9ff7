"""The safety card of a kitchen: every hazard of the house, whatever is baked; the gravest first."""

from __future__ import annotations

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


def safety_card(kitchen: Kitchen, issue: Issue, house: House) -> SafetyCard:
    words = words_of(house.words)
    m = Measures(house, words)
    notes = sorted((caution_note(one, m) for one in house_hazards(kitchen)), key=lambda note: not note.is_warning)
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

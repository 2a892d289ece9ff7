"""The posted card of a kitchen: every hazard of the house, whatever is baked."""

from __future__ import annotations

from manchet.cautions.caution import DEFERS
from manchet.cautions.house import house_hazards
from manchet.kitchen.model import Kitchen
from manchet.sheets.forms.house_card.view import HouseCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.caution import caution_note, sources_once


def house_card(kitchen: Kitchen, issue: Issue, house: House) -> HouseCard:
    words = words_of(house.words)
    m = Measures(house, words)
    title = words.say("house.title", kitchen.name) if kitchen.name else words["house.title_plain"]
    cautions = tuple(caution_note(caution, m) for caution in house_hazards(kitchen))
    return HouseCard(
        title=title,
        language=words["language"],
        paper=house.paper,
        running=running_head(title, "", issue),
        cautions=cautions,
        sources=sources_once(cautions),
        defers=DEFERS,
    )

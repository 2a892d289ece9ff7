"""Cautions as they are printed: those of the formula at their stage, those of the house on one posted card."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.cautions.caution import DEFERS, Caution
from manchet.sheets import views
from manchet.sheets.views import Box, House, Issue
from manchet.sheets.words_of import words_of


def at_stage(cautions: Sequence[Caution], key: str) -> tuple[views.Caution, ...]:
    """The formula's cautions that the stage of this key causes."""
    return tuple(caution_view(c) for c in cautions if c.of == "formula" and c.stage == key)


def belong_nowhere(cautions: Sequence[Caution], keys: Sequence[str]) -> tuple[views.Caution, ...]:
    """The formula's cautions of no stage that is printed: they stand under the head."""
    return tuple(caution_view(c) for c in cautions if c.of == "formula" and c.stage not in keys)


def caution_view(c: Caution) -> views.Caution:
    boxes = (Box(c.reading),) if c.reading else ()
    return views.Caution(c.words, c.limit, boxes, c.if_missed, c.source, c.level == "warning")


def house_card(kitchen: str, cautions: Sequence[Caution], issue: Issue, house: House) -> views.HouseCard:
    """The posted card of a kitchen."""
    words = words_of(house.words)
    title = words.say("house_title", kitchen) if kitchen else words["house_title_plain"]
    return views.HouseCard(
        title=title,
        language=words["language"],
        paper=house.paper,
        running=views.Running(title, "", issue.date, issue.file, issue.version, issue.digest, issue.replaces),
        cautions=tuple(caution_view(c) for c in cautions),
        defers=DEFERS,
    )

"""The label of a preparation's tub: what it is, what it contains, when it was made, how cold it stands and until when it is used."""

from __future__ import annotations

from datetime import date, timedelta

from manchet.batch.work import Work
from manchet.cautions.kept_within import kept_within
from manchet.cautions.registry import cautions_of
from manchet.formula.model import KeptFor
from manchet.sheets.forms.tub.view import KeepingWay, TubLabel, TubLabels
from manchet.sheets.page.dates import printed_day, weekday_day
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import DAY, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.caution import caution_note
from manchet.sheets.parts.label_paper import label_paper
from manchet.sheets.parts.wording import single

WHILE_IT_IS_KEPT = frozenset({"plants-under-fat", "lye-kept"})
"""Hazards that go with the tub wherever it stands."""


def tub_labels(work: Work, issue: Issue, house: House) -> TubLabels:
    words = words_of(house.words)
    m = Measures(house, words)
    name, allergens = work.formula.name, allergen_line(work, m)
    grave = {one.name: one for one in cautions_of(work) if one.name in WHILE_IT_IS_KEPT and one.level != "limit"}
    label = TubLabel(
        name,
        allergens,
        bool(allergens.unknown),
        weekday_day(issue.made) if issue.made else "",
        tuple(_way(kept, issue.made, m) for kept in kept_within(work)),
        tuple(caution_note(one, m) for one in grave.values()),
    )
    paper = label_paper(work.kitchen.selling.labels, house.paper)
    return TubLabels(name, words["language"], house.paper, running_head(name, "", issue), paper, (label,))


def _way(kept: KeptFor, made: date | None, m: Measures) -> KeepingWay:
    """Without the hour it was made at a day ends on the evening before: no date promises more than the file."""
    if kept.celsius is None:
        at = m.words["tub.room"]
    else:
        bound = "tub.at_least" if kept.way == "hot" else "tub.at_most" if kept.way else "tub.about"
        at = m.words.say(bound, m.degrees(kept.celsius))
    if kept.seconds < DAY or made is None:
        return KeepingWay(at, m.words.say("tub.within", m.time(single(kept.seconds))))
    last = made + timedelta(days=int(kept.seconds // DAY) - 1)
    day = printed_day(last) if last.year != made.year else weekday_day(last)
    return KeepingWay(at, m.words.say("tub.evening", day))

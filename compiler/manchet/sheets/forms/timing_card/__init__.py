"""The timing card: one formula by the clock."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.timing_card.view import TimingCard
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    """None where nobody says what the timing counts from, and of what no day holds: `check` says that."""
    from manchet.figures.past_a_day import past_a_day
    from manchet.sheets.forms.timing_card.card import timing_card

    if page.when is None or past_a_day(work):
        return Outcome(None)
    return Outcome(timing_card(work, page.when, page.issue, page.house))


FORM = Form(
    name="card",
    place=2,
    about=Subject.FORMULA,
    view=TimingCard,
    template="forms/timing_card/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 62), PageLayout("tight bare", 52)),
    preparations=OfPreparations.NAMED,
)

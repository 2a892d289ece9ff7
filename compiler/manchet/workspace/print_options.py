"""What is to be printed, and how this house prints."""

from __future__ import annotations

from datetime import date, datetime

from manchet.batch.order import AS_WRITTEN, Order
from manchet.records import NamedTuple
from manchet.sheets.form import Form, Subject
from manchet.sheets.page.dates import WEEKDAYS, printed_day
from manchet.sheets.registry import FORMS, forms_about
from manchet.timing.when import When

BUILT = tuple(form for form in FORMS if form.about is not Subject.DAY)
"""What a build prints; the others are printed of a plan."""
KINDS = tuple(form.name for form in BUILT if not form.on_demand)
ON_DEMAND = tuple(form.name for form in BUILT if form.on_demand)
"""Printed only where it is asked for by name."""
FORMATS = ("html", "pdf", "json", "csv")
"""CSV of forms that are a table."""


class PrintOptions(NamedTuple):
    """`kinds` are the names of forms, and `formats` some of FORMATS. "" leaves paper, units, degrees and words to the kitchen.

    The day and the clock come in, so that the same input gives the same sheet.
    """

    order: Order = AS_WRITTEN
    kitchen: str = ""
    kinds: tuple[str, ...] = KINDS
    formats: tuple[str, ...] = FORMATS
    paper: str = ""
    units: str = ""
    degrees: str = ""
    words: str = ""
    when: When | None = None
    """What the timing card counts from."""
    dated: bool = False
    """Whether that was said; else the day is the day of printing, and the sheet promises no hour."""
    made: date | None = None
    """The day of printing; None where nobody says."""
    swaps: tuple[str, ...] = ()
    """What is swapped in every formula: `fresh yeast for instant yeast`."""
    waits: tuple[str, ...] = ()
    """Waits of the one formula that are to be others: `poolish 16 h at 18 C`."""
    pictures: bool = True
    """Drawings, and the baker's own pictures, on sheet and handout."""
    benches: int = 0
    """For a class of so many benches; 0 where nobody says."""
    blanks: bool = False
    """The handout leaves its per cents blank."""

    def forms(self, about: Subject) -> tuple[Form, ...]:
        """The forms about one sort of thing that are to be printed."""
        return tuple(form for form in forms_about(about) if form.name in self.kinds)

    @property
    def today(self) -> str:
        """The day of printing, as it is printed."""
        return "" if self.made is None else printed_day(self.made)

    def day_of(self, moment: datetime) -> str:
        """The day of a run at that moment."""
        return printed_day(moment) if self.dated else self.today

    def clock_of(self, moment: datetime | None, heading: datetime) -> str:
        """`22:40`, or `Sat 22:40` on a page that is headed with another day."""
        if not self.dated or moment is None:
            return ""
        clock = f"{moment:%H:%M}"
        return clock if moment.date() == heading.date() else f"{WEEKDAYS[moment.weekday()]} {clock}"

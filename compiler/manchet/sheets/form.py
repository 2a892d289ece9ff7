"""What a printed form is: one folder of `forms`, whose `FORM` says all that the rest of the house knows of it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import Enum
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from manchet.figures.ahead import Ahead as Ahead
from manchet.records import NamedTuple
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.diagnostics.outcome import Outcome
    from manchet.formula.model import Formula
    from manchet.kitchen.model import Kitchen
    from manchet.larder.stocktake import Stock
    from manchet.sheets.page.house import House
    from manchet.sheets.page.issue import Issue
    from manchet.sheets.page.view import View
    from manchet.sheets.parts.own_pictures import Pictures
    from manchet.timing.when import When


class HomeWork(NamedTuple):
    """A formula as it is made at home: for one domestic oven, with the preparations it needs, in the order they are made."""

    work: Work
    made_ahead: tuple[Ahead, ...] = ()


class Bakehouse(NamedTuple):
    """A kitchen with all that this run bakes in it; `missing` are the names of what has mistakes in its file."""

    kitchen: Kitchen
    works: tuple[Work, ...] = ()
    missing: tuple[str, ...] = ()
    ahead: tuple[Ahead, ...] = ()
    """The preparations that are wanted, or were asked for, in the order they are made."""
    stock: Stock | None = None
    """What was counted last; None where nothing was."""


class Subject(Enum):
    """What a form is about, and so what it is rendered from. Those about a kitchen are posted there, once for all formulas;
    those about a day are printed of a plan, and no build prints them."""

    FORMULA = "a Work"
    HOME = "a HomeWork"
    KITCHEN = "a Kitchen"
    BAKEHOUSE = "a Bakehouse"
    DAY = "a DayPlan"


class OfPreparations(Enum):
    """Whether a form is printed of a preparation."""

    ALWAYS = "of each"
    NAMED = "of one that is asked for by name"
    NEVER = "of breads alone"


NO_PICTURES: Pictures = {}
NO_VERSION: Mapping[str, Fraction] = {}


class PageSetup(NamedTuple):
    """What a page adds to the work it shows."""

    issue: Issue
    house: House
    pictures: Pictures = NO_PICTURES
    when: When | None = None
    """What the timing counts from; None where nobody says."""
    before: Mapping[str, Fraction] = NO_VERSION
    """The overall formula of the version before, by key: grams per gram of all flour. {} where there is none."""
    benches: int = 0
    """For a class of so many benches; 0 where nobody says."""
    blanks: bool = False
    """Per cents are left for the pen."""
    ahead: tuple[Ahead, ...] = ()
    """What the work that the page is about wants made ahead, in whole batches."""
    has_lye: bool = False
    """The house mixes lye: its posted card says so, whatever this run bakes."""


def fits_any(_: object) -> bool:
    return True


class Form(NamedTuple):
    """One printed form. Its printed name is the word `forms.NAME`."""

    name: str
    """On the command line, in the names of its files (`tern-loaf.sheet.pdf`), and in `form` of its view."""
    place: int
    """Where it stands among the others: 1 is the first."""
    about: Subject
    view: type
    template: str
    """A path below `sheets`."""
    render: Callable[[Any, PageSetup], Outcome[View | None]]
    """The view of what it is about, and what is to be reported of it; None where there is nothing to print."""
    on_demand: bool = False
    """Printed only where it is asked for by name."""
    layouts: tuple[PageLayout, ...] = (NORMAL,)
    """How it can be set, the one to print first; the others are for where they save a side of paper."""
    landscape: bool = False
    illustrated: bool = False
    """Shows drawings, and the baker's own pictures."""
    preparations: OfPreparations = OfPreparations.ALWAYS
    of_dishes: bool = False
    """Printed of dishes, and of nothing else."""
    dishes_too: bool = False
    """Printed of breads and of dishes."""
    compares: bool = False
    """Says what was otherwise in the version before."""
    fits: Callable[[Kitchen], bool] = fits_any
    """Whether a kitchen has a use for it."""
    table: Callable[[Any], str] | None = None
    """Its view as a table for a spreadsheet (CSV); None where it has none."""
    unasked: Callable[[Bakehouse], bool] = fits_any
    """Of a form about a bakehouse: whether it is printed of what nobody asked it of by name."""
    is_label: bool = False
    """Goes on what is sold or kept: nothing stands at its head and foot, and it is printed on what the kitchen has for labels."""
    none_made: str = ""
    """What is said where it was asked for by name, and nothing had one."""

    def prints(self, formula: Formula, named: bool) -> bool:
        """Of a bread, a dish, or a preparation that was or was not asked for by name."""
        if formula.dish or self.of_dishes:
            return formula.dish and (self.of_dishes or self.dishes_too)
        if not formula.preparation or self.preparations is OfPreparations.ALWAYS:
            return True
        return named and self.preparations is OfPreparations.NAMED

"""What is done at home, one thing after another: by hand, with pictures, each bake in its table."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from manchet.batch.model import PieceBatch
from manchet.batch.pieces import added_after_dividing
from manchet.batch.tins import tin_called
from manchet.batch.work import Work
from manchet.formula.model import Formula, Step
from manchet.formula.nouns import noun_for
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.forms.handout.floor_plans import tray_plan
from manchet.sheets.forms.handout.oven import home_oven
from manchet.sheets.forms.handout.view import HomeStep, HomeWay
from manchet.sheets.page.measures import BOTH, Measures
from manchet.sheets.parts.baked_weight import about_baked_phrase
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.by_hand import differs_by_hand, sentence_by_hand
from manchet.sheets.parts.mixing import order_of_the_bowl
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.step_pictures import illustrations, lines_beside, step_illustrations
from manchet.sheets.parts.steps import for_the_sort, step_line
from manchet.sheets.parts.views import Illustration, WeighRow
from manchet.sheets.parts.wording import single

Adds = Bowl | Mapping[str, WeighRow]
"""Where the weights of what a step adds are looked up."""


class HomeWriter(NamedTuple):
    """One formula as it is made at home."""

    work: Work
    pictures: Pictures
    m: Measures

    def ways(
        self, noun: str, steps: Sequence[Step], follow: Sequence[Step], adds: Adds, is_dough: bool, grams: Fraction
    ) -> Iterator[HomeWay]:
        """The steps up to each bake, and that bake; the name of a sort stands over the first. `follow`: steps of the
        sorts that come after; `grams`: of the largest piece."""
        title = for_the_sort(noun, self.work.batch, self.m) if noun else ""
        doings: list[HomeStep] = []
        bake: list[Step] = []
        mixed = False
        drawn = step_illustrations(steps, noun, follow, self.work, self.pictures, self.m)
        for step, after, figures in zip(steps, [*steps, None][1:], drawn, strict=True):
            if step.verb == "bake":
                bake.append(step)
                if after is None or after.verb != "bake":
                    oven = home_oven(bake, self.work, self.pictures, noun, grams, self.m)
                    yield HomeWay(title, _with_rows(doings), oven)
                    title, doings, bake = "", [], []
                continue
            text = sentence_by_hand(step, self._is_stirred(is_dough), not mixed, after, self.m)
            doing = self._doing(step, text, adds, figures)
            if step.verb == "mix" and not mixed and isinstance(adds, Bowl):
                doing = doing._replace(notes=(*order_of_the_bowl(adds.table.making.stage, self.m), *doing.notes))
            doings.append(doing)
            mixed = mixed or step.verb == "mix"
        if doings:
            yield HomeWay(title, _with_rows(doings))

    def _is_stirred(self, is_dough: bool) -> bool:
        """A preferment is only stirred together, like a batter."""
        return not is_dough or self.work.batch.formula.bread.stirred

    def _doing(self, step: Step, text: str, bowl: Adds, figures: tuple[Illustration, ...]) -> HomeStep:
        line = step_line(step, bowl, (), self.m)
        notes = line.notes
        if not differs_by_hand(step):
            text = line.text
        if step.verb == "divide":
            sorts = [divided_line(p, self.work.batch.formula, self.m) for p in self.work.batch.pieces if p.noun]
            text = self.m.words.say("handout.divide_into", text, "; ".join(sorts)) if sorts else text
        notes = (*notes, *self._tin_holds(step))
        # At home there is one scale: what stands aside on a sheet, the fine scale, is said only as ounces.
        adds = line.adds if self.m.house.units == BOTH else tuple(row._replace(aside="") for row in line.adds)
        return HomeStep(text, line.look, step.why, notes, adds, line.counts, self._with_tray(step, figures))

    def _tin_holds(self, step: Step) -> tuple[str, ...]:
        """How large the bakery's tin is: at home another one serves, if it holds as much."""
        if step.verb != "place" or step.where is None:
            return ()
        tin = tin_called(step.where[1], self.work.kitchen)
        if tin is None or tin.word != "tin" or tin.millilitres is None:
            return ()
        return (self.m.words.say("handout.tin_holds", self.m.volume(tin.millilitres)),)

    def _with_tray(self, step: Step, figures: tuple[Illustration, ...]) -> tuple[Illustration, ...]:
        """Ours, and where pieces are shaped how they lie on the tray."""
        if (
            self.pictures is None
            or step.verb != "shape"
            or own_illustrations(step.pictures, self.pictures)
            or self._in_pots()
        ):
            return figures
        return figures + illustrations(tray_plan(step, self.work.batch.pieces, self.m))

    def _in_pots(self) -> bool:
        return any(step.verb == "bake" and step.lid is not None for step in self.work.batch.formula.steps)


LINE = 8
"""Millimetres of a step's line on the handout."""


def _with_rows(doings: Sequence[HomeStep]) -> tuple[HomeStep, ...]:
    rows = lines_beside([doing.figures for doing in doings], LINE)
    return tuple(doing._replace(rows=n) for doing, n in zip(doings, rows, strict=True))


def divided_line(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """The same, as it is weighed off: without what is worked into it after dividing."""
    added = added_after_dividing(formula, p.noun)
    if not added:
        return pieces_line(p, formula, m)
    number, weight = m.plain(single(p.number), 1), m.with_ounces(round_to(p.grams / (1 + added), 0))
    said = m.words.say("head.pieces", number, noun_for(p.number, p.noun), weight)
    return f"{said}, {m.words.say('divide.with_added', m.mass(p.grams))}"


def pieces_line(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """`2 loaves at 850 g dough, about 730 g baked`"""
    number, weight = m.plain(single(p.number), 1), m.with_ounces(p.grams)
    if not p.noun:
        return m.words.say("handout.whole_dough", weight)
    return m.words.say("head.pieces", number, noun_for(p.number, p.noun), weight) + about_baked_phrase(p, formula, m)

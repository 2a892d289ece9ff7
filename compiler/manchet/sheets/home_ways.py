"""What is done at home, one thing after another: by hand, with pictures, each bake in its table."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from manchet.batch.model import PieceBatch
from manchet.batch.pieces import added_after_dividing
from manchet.batch.tins import tin_called
from manchet.batch.work import Work
from manchet.formula.model import Formula, Step
from manchet.formula.nouns import counted
from manchet.quantities.printing import rounded
from manchet.sheets import home_steps, prep_steps, step_pictures, wording
from manchet.sheets.baked_view import after_the_dough
from manchet.sheets.handout_oven import oven_of
from manchet.sheets.handout_values import Doing, Way
from manchet.sheets.home_size import tray_plan
from manchet.sheets.measures import BOTH, Measures
from manchet.sheets.mixing_view import order
from manchet.sheets.own_pictures import Pictures, own
from manchet.sheets.views import Figure, Row
from manchet.sheets.weigh_view import Bowl

Adds = Bowl | Mapping[str, Row]
"""Where the weights of what a step adds are looked up."""


class Home(NamedTuple):
    """One formula as it is made at home."""

    work: Work
    pictures: Pictures
    m: Measures

    def ways(
        self, noun: str, steps: Sequence[Step], follow: Sequence[Step], adds: Adds, is_dough: bool, grams: Fraction
    ) -> Iterator[Way]:
        """The steps up to each bake, and that bake; the name of a sort stands over the first. `follow`: steps of the
        sorts that come after; `grams`: of the largest piece."""
        title = prep_steps.for_the(noun, self.work.batch, self.m) if noun else ""
        doings: list[Doing] = []
        bake: list[Step] = []
        mixed = False
        drawn = step_pictures.pictures_of_steps(steps, noun, follow, self.work, self.pictures, self.m)
        for step, after, figures in zip(steps, [*steps, None][1:], drawn, strict=True):
            if step.verb == "bake":
                bake.append(step)
                if after is None or after.verb != "bake":
                    oven = oven_of(bake, self.work, self.pictures, noun, grams, self.m)
                    yield Way(title, _with_rows(doings), oven)
                    title, doings, bake = "", [], []
                continue
            text = home_steps.sentence(step, self._is_stirred(is_dough), not mixed, after, self.m)
            doing = self._doing(step, text, adds, figures)
            if step.verb == "mix" and not mixed and isinstance(adds, Bowl):
                doing = doing._replace(notes=(*order(adds.table.making.stage, self.m), *doing.notes))
            doings.append(doing)
            mixed = mixed or step.verb == "mix"
        if doings:
            yield Way(title, _with_rows(doings))

    def _is_stirred(self, is_dough: bool) -> bool:
        """A preferment is only stirred together, like a batter."""
        return not is_dough or self.work.batch.formula.bread.stirred

    def _doing(self, step: Step, text: str, bowl: Adds, figures: tuple[Figure, ...]) -> Doing:
        line = prep_steps.line_of(step, bowl, (), self.m)
        notes = line.notes
        if not home_steps.is_rewritten(step):
            text = line.text
        if step.verb == "divide":
            sorts = [divided(p, self.work.batch.formula, self.m) for p in self.work.batch.pieces if p.noun]
            text = self.m.words.say("handout.divide_into", text, "; ".join(sorts)) if sorts else text
        notes = (*notes, *self._tin_holds(step))
        # At home there is one scale: what stands aside on a sheet, the fine scale, is said only as ounces.
        adds = line.adds if self.m.house.units == BOTH else tuple(row._replace(aside="") for row in line.adds)
        return Doing(text, line.look, step.why, notes, adds, line.counts, self._with_tray(step, figures))

    def _tin_holds(self, step: Step) -> tuple[str, ...]:
        """How large the bakery's tin is: at home another one serves, if it holds as much."""
        if step.verb != "place" or step.where is None:
            return ()
        tin = tin_called(step.where[1], self.work.kitchen)
        if tin is None or tin.word != "tin" or tin.millilitres is None:
            return ()
        return (self.m.words.say("handout.tin_holds", self.m.volume(tin.millilitres)),)

    def _with_tray(self, step: Step, figures: tuple[Figure, ...]) -> tuple[Figure, ...]:
        """Ours, and where pieces are shaped how they lie on the tray."""
        if self.pictures is None or step.verb != "shape" or own(step.pictures, self.pictures) or self._in_pots():
            return figures
        return figures + step_pictures.figures(tray_plan(step, self.work.batch.pieces, self.m))

    def _in_pots(self) -> bool:
        return any(step.verb == "bake" and step.lid is not None for step in self.work.batch.formula.steps)


LINE = 8
"""Millimetres of a step's line on the handout."""


def _with_rows(doings: Sequence[Doing]) -> tuple[Doing, ...]:
    rows = step_pictures.spans([doing.figures for doing in doings], LINE)
    return tuple(doing._replace(rows=n) for doing, n in zip(doings, rows, strict=True))


def divided(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """The same, as it is weighed off: without what is worked into it after dividing."""
    added = added_after_dividing(formula, p.noun)
    if not added:
        return pieces_of(p, formula, m)
    number, weight = m.plain(wording.once(p.number), 1), m.with_ounces(rounded(p.grams / (1 + added), 0))
    said = m.words.say("head.pieces", number, counted(p.number, p.noun), weight)
    return f"{said}, {m.words.say('divide.with_added', m.mass(p.grams))}"


def pieces_of(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """`2 loaves at 850 g dough, about 730 g baked`"""
    number, weight = m.plain(wording.once(p.number), 1), m.with_ounces(p.grams)
    if not p.noun:
        return m.words.say("head.whole", weight)
    return m.words.say("head.pieces", number, counted(p.number, p.noun), weight) + after_the_dough(p, formula, m)

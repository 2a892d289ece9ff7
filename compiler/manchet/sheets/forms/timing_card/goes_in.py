"""The weights on a card: what goes into the bowl, what a step adds, keeps or divides. The very figures of the prep sheet."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.figures.water.stage_water import stage_waters
from manchet.formula.model import Goes, Range
from manchet.formula.nouns import noun_for, same_noun
from manchet.records import NamedTuple
from manchet.sheets.forms.timing_card.view import CardWeight
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.dough_ice import degrees_of_the_dough, ice_in_the_dough
from manchet.sheets.parts.steps import grams_moved, grams_poured, worked_in_rows
from manchet.sheets.parts.views import WeighRow
from manchet.sheets.parts.water import stage_water_note
from manchet.sheets.parts.wording import is_by_feel
from manchet.syntax.vocabulary import BRINGS_IN
from manchet.timing.card.values import CardRow
from manchet.timing.jobs.chains import pieces_of_mix


class GoesIn(NamedTuple):
    """Of one work."""

    work: Work
    m: Measures

    def bowl(self, stage: str) -> Bowl | None:
        """What is weighed for the stage of that name, "" for the dough."""
        for table in weighings(self.work, self.m.system).value:
            made = table.making.stage
            is_dough = made is self.work.dough
            if (not stage and is_dough) or (not is_dough and (made.stage.name or made.stage.word) == stage):
                ice = ice_in_the_dough(self.work, self.m) if is_dough else {}
                return Bowl(table, self.work, self.m, stage_waters(self.work), ice)
        return None

    def into_the_bowl(self, stage: str) -> tuple[CardWeight, ...]:
        """All that goes in at once, with how hot what the file gives a heat for is, and how warm the water of a preferment is to be."""
        bowl = self.bowl(stage)
        if bowl is None:
            return ()
        water = stage_waters(self.work).get(bowl.table.making.stage.stage.key)
        of_dough = {} if stage else degrees_of_the_dough(self.work, self.m)
        found = []
        for line, row in zip(bowl.lines(held=False), bowl.rows(held=False), strict=True):
            is_liquid = water is not None and water.can_be and line.weighed.portion.key in water.liquids
            about = stage_water_note(water, self.m) if water is not None and is_liquid else ""
            about = about or of_dough.get(line.weighed.portion.key, "")
            ice = self.m.words.say("bowl.plus_ice", row.ice) if row.ice else ""
            said = " ".join(filter(None, (bowl.given_degrees(line), about, ice)))
            beside = ", ".join(filter(None, (said, *bowl.left_to_the_baker(line))))
            found.append(CardWeight(row.weight, row.unit, row.name, beside))
        return tuple(found)

    def of_step(self, row: CardRow) -> tuple[CardWeight, ...]:
        """What a step adds, keeps, gives back or divides."""
        step = row.step
        if step is None or row.job != "step":
            return ()
        if step.verb == "divide":
            return self._pieces(row)
        bowl = self.bowl(row.stage)
        if bowl is not None and step.poured is not None:
            figure, _, unit = self.m.mass(grams_poured(step.poured, bowl)).rpartition(NBSP)
            return (CardWeight(figure, unit, step.poured.name),)
        if bowl is None or not step.goes:
            return ()
        if step.verb in BRINGS_IN:
            return tuple(self._added(goes, row, bowl) for goes in step.goes)
        return tuple(self._moved(goes, grams, step.verb) for goes, grams in grams_moved(step, bowl))

    def _added(self, goes: Goes, row: CardRow, bowl: Bowl) -> CardWeight:
        if is_by_feel(goes):
            return CardWeight("", "", goes.name, f"{self.m.words['say.by_feel']} ({bowl.jug(goes)})")
        found, beside = bowl.added(goes), bowl.beside_of(goes)
        if found is None:
            found = self._worked_in(row.branch).get(goes.key)
            beside = self.m.words["card.in_all"] if self.work.mixes.number > 1 else ""
        return (
            CardWeight("", "", goes.name) if found is None else CardWeight(found.weight, found.unit, goes.name, beside)
        )

    def _worked_in(self, noun: str) -> dict[str, WeighRow]:
        branches = [branch for branch in self.work.formula.branches if same_noun(branch.noun, noun)]
        return worked_in_rows(branches[0], self.work.batch, self.m) if branches else {}

    def _moved(self, goes: Goes, grams: Fraction | None, verb: str) -> CardWeight:
        """`180 g as ripe rye starter` that is kept, `53 g ripe rye starter` that goes back, `41 g water` that tops up."""
        name = self.m.words.say("card.kept_as", goes.name) if verb == "keep" else goes.name
        if grams is None:
            return CardWeight("", "", f"{self.m.words['say.what_is_left']} {name}")
        figure, _, unit = self.m.mass(grams).rpartition(NBSP)
        return CardWeight(figure, unit, name)

    def _pieces(self, row: CardRow) -> tuple[CardWeight, ...]:
        """`16 × 850 g loaves`; of several mixes what each has."""
        found = []
        for piece in self.work.batch.pieces:
            numbers = [pieces_of_mix(self.work, piece.noun, mix) for mix in range(1, self.work.mixes.number + 1)]
            if not row.mix:
                numbers = [piece.number]
            weight = self.m.piece(piece.grams)
            number = self.m.plain(Range(min(numbers), max(numbers)), 1)
            noun = noun_for(max(numbers), piece.noun)
            found.append(CardWeight(weight.figure, weight.unit, noun, number=number))
        return tuple(found)

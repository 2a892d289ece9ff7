"""The weighing of one bowl: its lines, what is set aside, what the bowl then holds, what is added later."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.tubs import goes_whole, leaves_some
from manchet.batch.weighed_table import Table, WeighedLine, part_of
from manchet.batch.weighing import NOTABLE, weighings
from manchet.batch.work import Work
from manchet.figures.water.stage_water import StageWater
from manchet.formula.model import Booking, Goes
from manchet.records import NamedTuple
from manchet.sheets.page.measures import LIGHT, OUNCE, Measures, Weight
from manchet.sheets.parts.views import WeighRow
from manchet.sheets.parts.water import stage_water_note
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import STAGE

LARGE = Fraction(10000)
"""From here on a table is in kilograms: a bench scale shows them so, and long figures are misread."""

NUMBERED = 4
"""Up to so many bowls, each has its own tick box."""


class Bowl(NamedTuple):
    """One making of a stage, as it stands on the scale."""

    table: Table
    work: Work
    m: Measures
    waters: Mapping[str, StageWater] = {}
    """What is poured into stages before the dough, by key, where a sheet says how warm it is to be at its line."""

    @property
    def tables(self) -> tuple[Table, ...]:
        """Those of all stages, this one among them."""
        return weighings(self.work, self.m.system).value

    @property
    def times(self) -> int:
        return self.table.making.times

    @property
    def numbers(self) -> tuple[str, ...]:
        """What stands over the tick boxes, if there are several bowls and not too many."""
        return tuple(str(n + 1) for n in range(self.times)) if 1 < self.times <= NUMBERED else ()

    @property
    def ticks(self) -> int:
        return max(1, len(self.numbers))

    def rows(self, held: bool) -> tuple[WeighRow, ...]:
        """The lines in order, those for the fine scale together at the end."""
        lines = [line for line in self.table.lines if line.weighed.portion.held is held]
        return tuple(self._row(line) for line in sorted(lines, key=self._is_fine))

    def holds(self) -> str:
        """What the scale shows when all is in: what is held back is not in yet."""
        inside = [line for line in self.table.lines if not line.weighed.portion.held]
        if len(inside) < 2:
            return ""
        total = sum((line.reading.grams for line in inside), Fraction(0))
        step = max(line.reading.step for line in inside)
        vessel = self.m.words["bowl." + STAGE[self.table.making.stage.stage.word].vessel]
        return self.m.words.say("bowl.holds", vessel, str(self.weight(total, step)))

    def added(self, goes: Goes) -> WeighRow | None:
        """What a step adds of what was held back; None if the table does not know it."""
        line = self._held(goes)
        if line is None:
            return None
        if goes.share is None:
            return self._row(line, late=True)
        part = part_of(line, goes, self.table)
        weight = self.weight(part, line.reading.step)
        return WeighRow(
            line.weighed.portion.name, weight.figure, weight.unit, aside=self.m.ounces(part), ticks=self.ticks
        )

    def jug(self, goes: Goes) -> str:
        """How much there is to add by feel."""
        line = self._held(goes)
        if line is not None:
            return self.m.words.say("say.jug", str(self.weight(line.reading.grams, line.reading.step)))
        if goes.share is not None:
            return self.m.words.say("say.jug", self.m.mass(goes.share * self.work.batch.flour / self.times))
        return self.m.words["say.jug_open"]

    def _held(self, goes: Goes) -> WeighedLine | None:
        found = (x for x in self.table.lines if x.weighed.portion.held and x.weighed.portion.key == goes.key)
        return next(found, None)

    def _is_fine(self, line: WeighedLine) -> bool:
        return self.table.fine is not None and line.reading.step < self.table.fine

    def weight(self, grams: Fraction, step: Fraction) -> Weight:
        fine = self.table.fine is not None and step < self.table.fine
        if self._in_hundredths():
            return self.m.pounds_and_hundredths(grams)
        largest = max((line.reading.grams for line in self.table.lines), default=Fraction(0))
        return self.m.weight(grams, step, in_kg=largest >= LARGE and not fine)

    def _in_hundredths(self) -> bool:
        """In pounds: some line, and no light one, is weighed finer than in quarter ounces; then all are said so."""
        return self.m.house.units == "US" and any(
            line.reading.step < OUNCE / 4 and line.reading.grams >= LIGHT for line in self.table.lines
        )

    def _row(self, line: WeighedLine, late: bool = False) -> WeighRow:
        portion = line.weighed.portion
        weight = self.weight(line.shown, line.reading.step)
        return WeighRow(
            portion.name, weight.figure, weight.unit, "" if late else self._percent(line),
            self._aside(line), () if late else self._notes(line), self.ticks, self._is_fine(line),
        )  # fmt: skip

    def _percent(self, line: WeighedLine) -> str:
        portion = line.weighed.portion
        if portion.percent is None:
            return ""
        said = self.m.worked_out(portion.percent / 100)
        return self.m.words.say("bowl.of_soaked", said) if portion.basis == "what is soaked" else said

    def _aside(self, line: WeighedLine) -> str:
        """The fine scale is named; beside its ounces stand grams, and spoons where the density is known."""
        beside = self.m.ounces(line.shown)
        if beside or not self._is_fine(line):
            return beside
        if self.m.house.units != "US":
            return self.m.words["bowl.fine"]
        ingredient = line.weighed.portion.ingredient
        density = ingredient.density if ingredient else None
        spoons = self.m.spoons(line.reading.grams, density, self.work.kitchen.measures)
        fine = self.m.words["bowl.fine"]
        return ", ".join(part for part in (self.m.grams(line.reading.grams), spoons, fine) if part)

    def _notes(self, line: WeighedLine) -> tuple[str, ...]:
        say, words, portion = self.m.words.say, self.m.words, line.weighed.portion
        notes = []
        if portion.celsius is not None:
            notes.append(say("bowl.at", self.m.degrees(single(portion.celsius))))
        water = self.waters.get(self.table.making.stage.stage.key)
        if water is not None and portion.key in water.liquids and not portion.held:
            notes.append(stage_water_note(water, self.m))
        if portion.booking is not Booking.NONE:
            notes.append(words["bowl.from_pot"])
        tables = self.tables
        source = next((x for x in tables if portion.stage and x.making.stage.stage.key == portion.stage), None)
        if source is not None and goes_whole(source, tables):
            notes.append(words["bowl.all_left" if leaves_some(source) else "bowl.all_of_it"])
        if portion.stage and self._made_once(portion.stage):
            notes.append(say("bowl.part_for_bowl", str(self.work.mixes.number)))
        if line.dilution is not None:
            d = line.dilution
            notes.append(
                say("bowl.dilution", self.m.grams(d.dissolve), self.m.grams(d.into), d.carrier, self.m.grams(d.use))
            )
        if line.reading.goes > 1:
            notes.append(say("bowl.goes", str(line.reading.goes)))
        if portion.to_taste:
            notes.append(words["bowl.to_taste"])
        if line.dilution is None and line.moved > NOTABLE:
            notes.append(exact_weight(line, self.m))
        return tuple(notes)

    def _made_once(self, key: str) -> bool:
        """A stage that was made once, and goes into several bowls from here."""
        if self.times == 1:
            return False
        return any(x.stage.stage.key == key and x.times == 1 for x in self.work.mixes.makings)


def exact_weight(line: WeighedLine, m: Measures) -> str:
    """What a line would weigh on a scale ten times as fine: said where the scale moves it far."""
    return m.words.say("bowl.moved", str(m.weight(line.weighed.grams, line.reading.step / 10)))

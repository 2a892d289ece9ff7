"""The weighing of one bowl: its lines, what is set aside, what the bowl then holds, what is added later."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.scales import System, scales_of
from manchet.batch.tubs import goes_whole, leaves_some
from manchet.batch.was_weighed import is_new, was_weighed
from manchet.batch.weighed_table import Table, WeighedLine, more_on_the_scale, part_of
from manchet.batch.weighing import weighings
from manchet.batch.work import Work, once
from manchet.figures.water.stage_water import StageWater
from manchet.formula.model import ALL_WEIGHED, Booking, Goes
from manchet.records import NamedTuple
from manchet.sheets.page.measures import OUNCE, Measures, Weight
from manchet.sheets.parts.views import WeighRow
from manchet.sheets.parts.water import ice_of_stage, stage_water_note, weight_of_ice
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import BRINGS_IN, STAGE

LARGE = Fraction(10000)
"""From here on all weights of a sheet are in kilograms: a bench scale shows them so, and long figures are misread."""

SOAKED = "what is soaked"
"""What a per cent may be of, beside flour: then that is said with it."""

NUMBERED = 4
"""Up to so many bowls, each has its own tick box."""


@once
def largest_row(work: Work, system: System) -> Fraction:
    """Grams of the largest row of the sheet."""
    return max(
        (line.reading.grams for table in weighings(work, system).value for line in table.lines), default=Fraction(0)
    )


class Bowl(NamedTuple):
    """One making of a stage, as it stands on the scale."""

    table: Table
    work: Work
    m: Measures
    waters: Mapping[str, StageWater] = {}
    """What is poured into stages before the dough, by key, where a sheet says how warm it is to be at its line."""
    ice: Mapping[str, Fraction] = {}
    """Grams of ice in one bowl, by the key of the liquid that it is part of."""
    before: Mapping[str, Fraction] = {}
    """The overall formula of the version before, by key, where a sheet says what was weighed then."""

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
        return tuple(self._row(line) for line in self.lines(held))

    def lines(self, held: bool) -> list[WeighedLine]:
        """What the rows are made from, in their order."""
        return sorted((x for x in self.table.lines if x.weighed.portion.held is held), key=self._is_fine)

    def later(self) -> tuple[WeighRow, ...]:
        """What is weighed now and goes in later, in the order it goes in, each under its letter."""
        letters = self.letters
        named = [(letters.get(line.weighed.portion.key, ""), line) for line in self.lines(held=True)]
        named.sort(key=lambda one: one[0] or "~")
        return tuple(self._row(line)._replace(letter=letter) for letter, line in named)

    @property
    def letters(self) -> Mapping[str, str]:
        """By the key of what is held back: A for what the first step adds that adds any, B for the next."""
        held = {line.weighed.portion.key for line in self.table.lines if line.weighed.portion.held}
        found: dict[str, str] = {}
        for step in self.table.making.stage.stage.steps:
            new = [] if step.verb not in BRINGS_IN else [g.key for g in step.goes if g.key in held - found.keys()]
            letter = chr(ord("A") + len(set(found.values())))
            found |= dict.fromkeys(new, letter)
        return found

    @property
    def vessel(self) -> str:
        return self.m.words["bowl." + STAGE[self.table.making.stage.stage.word].vessel]

    def holds(self) -> Weight | None:
        """What the scale shows when all is in: what is held back is not in yet. None for a single line."""
        inside = [line for line in self.table.lines if not line.weighed.portion.held]
        if len(inside) < 2:
            return None
        total = sum((line.reading.grams for line in inside), Fraction(0))
        return self.weight(total, max(line.reading.step for line in inside))

    def added(self, goes: Goes) -> WeighRow | None:
        """What a step adds of what was held back; None if the table does not know it."""
        line = self._held(goes)
        if line is None:
            return None
        if goes.share is None:
            return self._row(line, late=True)
        part = part_of(line, goes, self.table)
        weight = self.weight(part, line.reading.step)
        optional = f" {self.m.words['say.optional']}" if line.weighed.portion.optional else ""
        return WeighRow(
            line.weighed.portion.name + optional, weight.figure, weight.unit, aside=self.m.ounces(part), ticks=self.ticks,
            fine=self._is_fine(line),
        )  # fmt: skip

    def jug(self, goes: Goes) -> str:
        """How much there is to add by feel."""
        line = self._held(goes)
        if line is not None:
            return self.m.words.say("say.jug", str(self.weight(line.reading.grams, line.reading.step)))
        if goes.share is not None:
            return self.m.words.say("say.jug", self.m.mass(goes.share * self.work.batch.flour / self.times))
        return self.m.words["say.jug_open"]

    def given_degrees(self, line: WeighedLine) -> str:
        """`95 °C`: how hot the file says that it is weighed in; "" where it does not."""
        celsius = line.weighed.portion.celsius
        return "" if celsius is None else self.m.degrees(single(celsius))

    def beside_of(self, goes: Goes) -> str:
        """Of what a step adds: how hot it is weighed in, where the step does not say how warm it goes in, and what the baker
        may do with it."""
        line = self._held(goes)
        if line is None:
            return ""
        degrees = self.given_degrees(line) if goes.celsius is None else ""
        return ", ".join(filter(None, (degrees, *self.left_to_the_baker(line))))

    def _held(self, goes: Goes) -> WeighedLine | None:
        found = (x for x in self.table.lines if x.weighed.portion.held and x.weighed.portion.key == goes.key)
        return next(found, None)

    def _is_fine(self, line: WeighedLine) -> bool:
        return line.reading.step < self._platform

    @property
    def _platform(self) -> Fraction:
        """Grams that the coarsest scale of the house reads to."""
        return max(scale.reads for scale in scales_of(self.work.kitchen, self.m.system))

    def weight(self, grams: Fraction, step: Fraction) -> Weight:
        """On the fine scale grams in every house; on the platform all of a sheet in one unit."""
        if step < self._platform:
            return self.m.in_grams(grams, step)
        return self.m.weight(grams, step, in_kg=largest_row(self.work, self.m.system) >= LARGE)

    def _row(self, line: WeighedLine, late: bool = False) -> WeighRow:
        portion, step = line.weighed.portion, line.reading.step
        ice = Fraction(0) if late or portion.held else self._ice(line)
        weight = self.weight(line.shown - ice, step)
        name = f"{portion.name} {self.m.words['say.optional']}" if late and portion.optional else portion.name
        return WeighRow(
            name, weight.figure, weight.unit, "" if late else self._percent(line),
            self._aside(line), () if late else self._notes(line), self.ticks, self._is_fine(line),
            was="" if late else self._was(line),
            ice=weight_of_ice(ice, self.m) if ice else "",
            whole=str(self.weight(line.shown, step)) if ice else "",
        )  # fmt: skip

    def _ice(self, line: WeighedLine) -> Fraction:
        """Grams of ice in the line, less than all of it."""
        key, water = line.weighed.portion.key, self.waters.get(self.table.making.stage.stage.key)
        if water is not None and key in water.liquids:
            ice = ice_of_stage(water, self.m)
        else:
            ice = self.ice.get(key, Fraction(0))
        return ice if ice < line.shown else Fraction(0)

    def _was(self, line: WeighedLine) -> str:
        """`156 g`, `new`; "" where the version before weighs the same on this scale, or nobody can say."""
        if is_new(line, self.work, self.before):
            return self.m.words["bowl.new"]
        grams = was_weighed(line, self.work, self.before)
        was = None if grams is None else self.weight(grams, line.reading.step)
        if was is None or was == self.weight(line.shown, line.reading.step):
            return ""
        return self.m.words.say("bowl.was", str(was))

    def _percent(self, line: WeighedLine) -> str:
        portion = line.weighed.portion
        if portion.percent is None:
            return ""
        if portion.basis == ALL_WEIGHED:
            return self.m.part(portion.percent / 100)
        return "" if portion.basis == SOAKED else self.m.worked_out(portion.percent / 100)

    def _aside(self, line: WeighedLine) -> str:
        """Beside grams the ounces, where the house weighs in these or asks for both."""
        beside = self.m.ounces(line.shown)
        if beside or self.m.house.units != "US" or not self._is_fine(line):
            return beside
        return str(self.m.weight(line.shown, OUNCE / 100))

    def _notes(self, line: WeighedLine) -> tuple[str, ...]:
        say, words, portion = self.m.words.say, self.m.words, line.weighed.portion
        notes = [warm] if (warm := self.given_degrees(line)) else []
        water = self.waters.get(self.table.making.stage.stage.key)
        if water is not None and portion.key in water.liquids and not portion.held:
            notes.append(stage_water_note(water, self.m))
        if portion.percent is not None and portion.basis == SOAKED:
            notes.append(say("bowl.of_soaked", self.m.worked_out(portion.percent / 100)))
        if portion.booking is not Booking.NONE:
            notes.append(words["bowl.from_pot"])
        tables = self.tables
        source = next((x for x in tables if portion.stage and x.making.stage.stage.key == portion.stage), None)
        if source is not None and goes_whole(source, tables):
            notes.append(words["bowl.all_left" if leaves_some(source) else "bowl.all_of_it"])
        if line.dilution is not None:
            d = line.dilution
            notes.append(
                say("bowl.dilution", self.m.grams(d.dissolve), self.m.grams(d.into), d.carrier, self.m.grams(d.use))
            )
        if line.reading.goes > 1:
            notes.append(say("bowl.goes", str(line.reading.goes)))
        if portion.to_taste:
            notes.append(words["bowl.to_taste"])
        return (*notes, *self.left_to_the_baker(line))

    def left_to_the_baker(self, line: WeighedLine) -> tuple[str, ...]:
        """`optional`; `up to 250 g more, as the flour asks`, on the row's own scale."""
        words, more = self.m.words, more_on_the_scale(line)
        optional = (words["bowl.optional"],) if line.weighed.portion.optional else ()
        asked = (words.say("bowl.as_asked", str(self.weight(more, line.reading.step))),) if more else ()
        return (*optional, *asked)

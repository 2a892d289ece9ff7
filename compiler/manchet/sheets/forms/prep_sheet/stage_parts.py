"""What is done in a stage: in mixing beside its weights; from the bulk on, on the bench, with the way of each sort."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.formula.model import Stage, Step
from manchet.sheets.forms.prep_sheet.bake_table import bake_table
from manchet.sheets.forms.prep_sheet.divide_list import divide_list
from manchet.sheets.forms.prep_sheet.leaf_lines import join_lines, leaf_line
from manchet.sheets.forms.prep_sheet.view import IllustrationRow, LeafLine, StagePart, Steps, WayHeading
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import all_cautions_at_step, cautions_at_step, limits_at_step, read_once
from manchet.sheets.parts.far_from_written import far_step_notes
from manchet.sheets.parts.mixing import mixing_notes
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.rounds import rounds_line
from manchet.sheets.parts.step_pictures import bake_illustration, step_illustrations
from manchet.sheets.parts.steps import bakes_from, for_the_sort, worked_in_rows
from manchet.sheets.parts.views import Box, CautionNote, Illustration, WeighRow
from manchet.syntax.vocabulary import AT_THE_BOWL, DIVIDES
from manchet.timing.jobs.chains import pieces_of_mix
from manchet.timing.jobs.rounds import rounds_of


def mixed_up_to(stage: Stage, work: Work) -> int:
    """How many of a stage's steps are done at the bowl. All of what goes into a dough; of a dough, up to its last mixing."""
    if stage is not work.dough.stage or work.formula.preparation:
        return len(stage.steps)
    before = next((n for n, step in enumerate(stage.steps) if step.verb in DIVIDES), len(stage.steps))
    return max((n + 1 for n, step in enumerate(stage.steps[:before]) if _at_the_bowl(step)), default=0)


def _at_the_bowl(step: Step) -> bool:
    return step.verb in AT_THE_BOWL


class _Way:
    """One way of the dough, or a stage: its steps with all that stands beside them."""

    def __init__(
        self, work: Work, pictures: Pictures, m: Measures, seen: set[tuple[str, str]], stage: StageBatch | None,
        adds: Bowl | Mapping[str, WeighRow], noun: str = "", branch: int | None = None,
    ) -> None:  # fmt: skip
        self.work, self.pictures, self.m, self.seen = work, pictures, m, seen
        self.stage, self.adds, self.noun, self.branch = stage, adds, noun, branch
        self.steps = stage.stage.steps if stage is not None else work.formula.branches[branch or 0].steps
        after = () if stage is None else tuple(s for b in work.formula.branches for s in b.steps)
        self.drawn = step_illustrations(self.steps, noun, after if stage is work.dough else (), work, pictures, m)

    def parts(self, start: int, end: int, bench: bool, numbers: tuple[str, ...] = ()) -> Iterator[StagePart]:
        """The steps from `start` up to `end`: lines, the divide list, the phases of a bake."""
        waiting: list[tuple[Step, LeafLine]] = []
        at = start
        while at < end:
            step = self.steps[at]
            phases = bakes_from(self.steps, at, end)
            if not phases and not (step.verb == "divide" and self.work.batch.pieces):
                waiting.append((step, self._line(at, not bench)))
                at += 1
                continue
            if waiting:
                yield self._steps(waiting, bench, numbers)
                waiting = []
            if phases:
                yield self._bake(at, phases)
                at += len(phases)
            else:
                yield divide_list(step, self.work, self._notes(at), self._all_cautions(at), self.m)
                numbers = ()
                at += 1
        if waiting:
            yield self._steps(waiting, bench, numbers)

    def _steps(self, waiting: Sequence[tuple[Step, LeafLine]], bench: bool, numbers: tuple[str, ...]) -> Steps:
        return Steps(tuple(line._replace(numbers=numbers) for line in join_lines(waiting, bench)))

    def _line(self, at: int, times: bool) -> LeafLine:
        step = self.steps[at]
        figures, above = self._new(self.drawn[at]), self._cautions(at)
        line = leaf_line(step, self.adds, self._notes(at), figures, above, times, self.m, self._rounds(step))
        limits = limits_at_step(cautions_of(self.work), self._key, at, self.m, self.branch)
        return line._replace(boxes=(*self._on_top(at), *read_once(line.boxes, limits, self.m)), limits=limits)

    def _on_top(self, at: int) -> tuple[Box, ...]:
        """At the last mixing: how much went in that the flour asked for."""
        last = max((n for n, step in enumerate(self.steps) if _at_the_bowl(step)), default=0)
        if at != last or not isinstance(self.adds, Bowl):
            return ()
        names = [x.weighed.portion.name for x in self.adds.table.lines if x.weighed.portion.more]
        labels = [self.m.words["box.on_top"]] if len(names) == 1 else names  # a box is as wide as a short word
        return tuple(Box(label, self.m.weight_unit()) for label in labels)

    def _rounds(self, step: Step) -> str:
        """Of the pieces of one mix, as the timing card has them."""
        if self.stage is not None and self.stage is not self.work.dough:
            return ""
        mixes = {1, self.work.mixes.number}  # pieces are spread evenly: the first mix has the fewest, the last the most
        pieces = (pieces_of_mix(self.work, self.noun, mix) for mix in mixes)
        return rounds_line((rounds_of(step, each, self.work.kitchen) for each in pieces), self.m)

    def _notes(self, at: int) -> tuple[str, ...]:
        step = self.steps[at]
        far = far_step_notes(self.work, step.verb, self.stage, self.noun, self.m)
        return (*far, *mixing_notes(step, self.stage, self.work, self.m))

    def _cautions(self, at: int) -> tuple[CautionNote, ...]:
        return cautions_at_step(cautions_of(self.work), self._key, at, self.m, self.branch)

    def _all_cautions(self, at: int) -> tuple[CautionNote, ...]:
        return all_cautions_at_step(cautions_of(self.work), self._key, at, self.m, self.branch)

    @property
    def _key(self) -> str:
        return self.work.dough.stage.key if self.stage is None else self.stage.stage.key

    def _bake(self, at: int, phases: tuple[Step, ...]) -> StagePart:
        is_last = not any(step.verb == "bake" for step in self.steps[at + len(phases) :])
        table = bake_table(self.work, phases, is_last, self.noun, self.m)
        far = far_step_notes(self.work, "bake", self.stage, self.noun, self.m)
        shown = [one for n in range(at, at + len(phases)) for one in self.drawn[n]]
        figures = (*bake_illustration(phases, self.pictures, self.m), *self._new(tuple(shown)))
        above = tuple(note for n in range(at, at + len(phases)) for note in self._all_cautions(n))
        return table._replace(notes=(*table.notes, *far), figures=figures, cautions=above)

    def _new(self, figures: tuple[Illustration, ...]) -> tuple[Illustration, ...]:
        """Each picture where it first stands, and nowhere again."""
        kept = tuple(one for one in figures if (one.svg, one.data) not in self.seen)
        self.seen.update((one.svg, one.data) for one in kept)
        return kept


class Pages:
    """Both sides of one sheet, in the order of the work: a picture that was shown is not shown again."""

    def __init__(self, work: Work, pictures: Pictures, m: Measures) -> None:
        self.work, self.pictures, self.m = work, pictures, m
        self.seen: set[tuple[str, str]] = set()
        self.ways: dict[str, _Way] = {}

    def mixing(self, batch: StageBatch, bowl: Bowl) -> tuple[StagePart, ...]:
        """What stands beside the weights of a stage."""
        shown = own_illustrations(batch.stage.pictures, self.pictures)
        way = _Way(self.work, self.pictures, self.m, self.seen, batch, bowl)
        self.ways[batch.stage.key] = way
        lines = way.parts(0, mixed_up_to(batch.stage, self.work), self.work.formula.preparation, bowl.numbers)
        return (*((IllustrationRow(shown),) if shown else ()), *lines)

    def bench(self, numbers: tuple[str, ...]) -> tuple[StagePart, ...]:
        """What follows the last mixing, and the way of each sort. To be asked after the dough's `mixing`."""
        stage = self.work.dough.stage
        way = self.ways[stage.key]
        parts = list(way.parts(mixed_up_to(stage, self.work), len(stage.steps), True, numbers))
        for number, branch in enumerate(self.work.formula.branches):
            adds = worked_in_rows(branch, self.work.batch, self.m)
            parts.append(WayHeading(for_the_sort(branch.noun, self.work.batch, self.m)))
            own = _Way(self.work, self.pictures, self.m, self.seen, None, adds, branch.noun, number)
            parts += own.parts(0, len(branch.steps), True)
        return tuple(parts)

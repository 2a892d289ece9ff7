"""The other two ways of writing: by weight, and in percentages of the dough's own flour.

Neither has an `overall`; the compiler makes it. A stage is either given outright (its lines are weights, or per cent
of the dough's flour), or written in per cent of its own flour and sized by what its user asks for.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import instead
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.cultures import Leaf, booking_of, is_culture, leaves
from manchet.formula.draft import Draft, Item
from manchet.formula.model import ALL_WEIGHED, THE_LINE, Booking, OverallLine, Stage, Way
from manchet.formula.percents import percent
from manchet.formula.portions import FilledStage, fill_portions
from manchet.formula.shares import (
    NOTHING,
    ONE,
    Drafts,
    Shares,
    cultures_returned,
    has_errors,
    is_flour,
    stage_of,
)
from manchet.formula.unread_lines import flours_read, may_be_any, weights_read
from manchet.formula.uses import may_be_used, never_used, used_twice
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import mass_text

NO_RULING: dict[str, bool] = {}


def shares_without_overall(way: Way, last: str, drafts: Drafts) -> Outcome[Shares]:
    """Resolve a formula without `overall`. `last` is the key of the dough (or of a preparation's only stage)."""
    return _Asked(way, last, drafts).resolve()


class _Asked:
    """Works from the last stage back to the first (what is asked for), in grams or in parts of the dough's flour."""

    def __init__(self, way: Way, last: str, drafts: Drafts) -> None:
        self.way = way
        self.last = last
        self.drafts = drafts
        self.one_way = True
        """No weight stands in a formula that is in per cent."""
        self.reports: list[Diagnostic] = []
        self.unit: dict[str, FilledStage] = {}
        """Each stage filled at its own size: outright, or with its own flour as 1."""
        self.size: dict[str, Fraction] = {}
        """How many of those units are made; 1 for a stage given outright."""
        self.reaching: dict[str, Fraction] = {}

    def resolve(self) -> Outcome[Shares]:
        for key, draft in self.drafts.stages.items():
            self._judge_writing(draft)
            self.unit[key] = self._fill(draft)
        for key in reversed(tuple(self.drafts.stages)):
            self._ask(key)
        lines = self._overall()
        base = self._base(lines) or ONE
        self._judge_base(base, any(line.is_flour for line in lines))
        stages = tuple(self._stage(key, draft, base) for key, draft in self.drafts.stages.items())
        overall = tuple(line._replace(share=line.share / base, more=line.more / base) for line in lines)
        return Outcome(Shares(overall, stages, base, not has_errors(self.reports)), tuple(self.reports))

    def _base(self, lines: tuple[OverallLine, ...]) -> Fraction:
        """What 100 % is: all flour. Of a preparation the line that says 100 %, or like without flour all that is weighed."""
        last = self.drafts.stages[self.last]
        if _of_one_line(last):
            return ONE
        flour = sum((line.share for line in lines if line.is_flour), NOTHING)
        whole = sum((line.share for line in lines), NOTHING)
        return whole if last.word == "preparation" else flour or whole

    def _judge_base(self, base: Fraction, any_flour: bool) -> None:
        """What the per cents of a dough without flour come to be of; where something else is wrong, that is said first."""
        last = self.drafts.stages[self.last]
        if self.way is not Way.DOUGH_FLOUR or last.word != "dough" or has_errors(self.reports):
            return
        if any(self._flour(item) for item in last.items) or not flours_read(last, self.drafts.larder):
            return
        stages = [draft for draft in self.drafts.stages.values() if self._outright(draft)]
        sources = [item for item in last.items if self._brings_flour(item)]
        from manchet.formula.of_no_flour import per_cents_that_move  # most doughs weigh a flour

        self.reports += per_cents_that_move(stages, base, any_flour, sources)

    def _brings_flour(self, item: Item) -> bool:
        inner = self.drafts.stages.get(item.meaning.stage)
        if inner is not None:
            return any(map(self._brings_flour, inner.items))
        if item.meaning.ingredient is not None and booking_of(item, self.last, self.drafts.returned) is Booking.COUNTED:
            parts = leaves(item.meaning.ingredient, self.drafts.larder)
            return any(self._booked(item, leaf).counts_as_flour for leaf in parts)
        return self._flour(item)

    # ---- how each stage is written ---------------------------------------------------------------

    def _outright(self, draft: Draft) -> bool:
        """Whether the lines of a stage give its size themselves: weights, or per cent of the dough's flour."""
        if any(item.how == "grams" for item in draft.items):
            return True
        if self.way is Way.BY_WEIGHT:
            return draft.key == self.last
        return draft.word == "dough" or not any(self._flour(item) for item in draft.items)

    def _flour(self, item: Item) -> bool:
        return is_flour(item, NO_RULING)

    def _judge_writing(self, draft: Draft) -> None:
        if draft.share is not None:
            message = f"{draft.name} asks for a share of all flour, but this formula has no `overall`"
            help = f"leave out the share: {draft.name} is sized by what its user asks, or by its weights"
            heading = draft.place.text[draft.place.column - 1 : draft.place.end_column - 1]
            alone = re.split(r"\s+with\s", heading)[0]
            fixes = (instead(draft.place, alone, f"write `{alone}` alone"),)
            self.reports.append(report("share-without-overall", draft.place, message, help, fixes=fixes))
        weights = [i for i in draft.items if i.how == "grams"]
        of_flour = self.way is Way.DOUGH_FLOUR
        for item in draft.items:
            if item.how in ("left", "else") or (item.how == "all" and not item.meaning.stage):
                message = "there is no `overall` to take this from"
                help = "give the amount here, or write the formula with `overall`"
                self.reports.append(report("not-in-overall", item.place, message, help))
            elif (
                item.how == "percent"
                and item.basis != "what is soaked"
                and not of_flour
                and (weights or (self.way is Way.BY_WEIGHT and draft.key == self.last))
                and not _basis_line(draft)
            ):
                message = f"{item.meaning.name} is in per cent, other lines of {draft.name} are weights"
                help = "write all of them as weights, or all in per cent"
                self.reports.append(report("percent-and-weight-mixed", item.place, message, help))
        if of_flour and weights:
            self.one_way = False
            message = f"{weights[0].meaning.name} is given as a weight in a formula written in per cent"
            help = "write it in per cent of the flour"
            self.reports.append(report("percent-and-weight-mixed", weights[0].place, message, help))
            return
        flours = [i for i in draft.items if self._flour(i) and i.how == "percent" and i.basis == ""]
        total = sum((i.figure for i in flours), NOTHING)
        if flours and total != 1 and flours_read(draft, self.drafts.larder) and not weights and not _of_one_line(draft):
            listed = " + ".join(f"{i.meaning.name} {percent(i.figure)}" for i in flours)
            name = "flours-not-100" if draft.word == "dough" else "stage-flours-not-100"
            message = f"the flours of {draft.name} come to {percent(total)}: {listed}"
            help = "change one of them so that they add up to 100%; a culture or another stage stands on top"
            self.reports.append(report(name, draft.place, message, help))

    def _fill(self, draft: Draft) -> FilledStage:
        shares: list[Fraction] = []
        for item in draft.items:
            if item.how in ("grams", "percent") and item.basis != "what is soaked":
                shares.append(item.figure)
            elif item.how == "all" and item.meaning.stage in self.unit:
                shares.append(self._all_of(item, draft))
            else:
                shares.append(NOTHING)
        base = sum(shares, NOTHING)
        shares = [
            base * item.figure if item.basis == "what is soaked" and item.how == "percent" else share
            for item, share in zip(draft.items, shares, strict=True)
        ]
        fixed = tuple(shares)

        def booking(item: Item) -> Booking:
            return booking_of(item, draft.key, self.drafts.returned)

        def may_weigh(wanted: str) -> bool:
            return may_be_any(draft.slips, wanted, self.drafts.larder)

        def fill(returned: dict[str, Fraction]) -> Outcome[FilledStage]:
            return fill_portions(draft, draft.items, fixed, ONE, self._flour, booking, returned, may_weigh)

        first, reports = fill({})
        self.reports += reports
        self.unit[draft.key] = first
        back = {
            goes.key: cultures_returned(draft.key, self.drafts, self.unit, goes.key)
            for step in draft.steps
            if step.verb == "return"
            for goes in step.goes
        }
        return fill(back).value if back else first  # what is wrong with it has been said

    def _all_of(self, item: Item, draft: Draft) -> Fraction:
        """All there is of a stage that is given outright: what its other users do not take by weight."""
        used = self.drafts.stages[item.meaning.stage]
        if not self._outright(used):
            message = f"how much {used.name}? it is written in per cent of its own flour, so its user must say"
            help = f"write `{used.name} 40%` or `{used.name} 400 g` here"
            self.reports.append(report("stage-of-no-size", item.place, message, help))
            return NOTHING
        taken = sum(
            (
                other.figure
                for d in self.drafts.stages.values()
                for other in d.items
                if other.meaning.stage == used.key and other.how == "grams"
            ),
            NOTHING,
        )
        return max(self.unit[used.key].account.out - taken, NOTHING)

    # ---- from the dough backwards ----------------------------------------------------------------

    def _ask(self, key: str) -> None:
        """Size one stage by all that its users take; they have been sized before."""
        draft, unit = self.drafts.stages[key], self.unit[key]
        if key == self.last:
            self.size[key] = self.reaching[key] = ONE
            return
        asked = reaching = NOTHING
        by: list[tuple[str, Place]] = []
        for user, other in self.drafts.stages.items():
            for portion in self.unit[user].portions:
                if portion.stage == key and user in self.size:
                    asked += portion.share * self.size[user]
                    reaching += portion.share * self.size[user] * self.reaching[user]
                    by.append((other.name, portion.place))
        for grams, reaches, where in self._laid(key):
            asked += grams
            reaching += grams * reaches
            by.append(where)
        alls = [
            b
            for b in by
            if any(i.how == "all" and i.place == b[1] for d in self.drafts.stages.values() for i in d.items)
        ]
        if len(alls) > 1:
            self.reports.append(used_twice(draft, alls))
        made = unit.account.out
        if not by or not made:
            self.size[key] = ONE
            self.reaching[key] = NOTHING
            if (
                not by
                and draft.heading_read
                and not may_be_used(draft, self.drafts.stages.values())
                and not any(k.how in ("left", "discard") for k in draft.keeps)
            ):
                self.reports.append(never_used(draft))
            return
        if self._outright(draft):
            self.size[key] = ONE
            self.reaching[key] = reaching / made
            self._judge_rest(draft, made, asked, by[-1][1])
        else:
            self.size[key] = asked / made
            self.reaching[key] = reaching / asked if asked else ONE

    def _laid(self, key: str) -> Iterator[tuple[Fraction, Fraction, tuple[str, Place]]]:
        """Grams of a stage that go onto a dish by a step, the part of them that reaches it, and where."""
        plates = self.drafts.plates
        for user, draft in self.drafts.stages.items() if plates is not None else ():
            for step in draft.steps:
                if step.applied is not None and step.applied.stage == key and user in self.size:
                    grams = step.applied.grams * (plates or ONE if step.applied.each else ONE)
                    yield grams * self.size[user], self.reaching[user], (draft.name, step.place)

    def _judge_rest(self, draft: Draft, made: Fraction, asked: Fraction, place: Place) -> None:
        if asked > made and self._is_sure(draft):
            message = f"{mass_text(asked)} of {draft.name} is taken, but only {mass_text(made)} is made"
            help = f"take {mass_text(made)} or less, or make more; to take all of it write `{draft.name}` alone"
            there = (draft.place, "it is made here")
            self.reports.append(report("takes-more-than-there-is", place, message, help, there))
        elif asked < made and self._is_left(draft) and not any(k.how in ("left", "discard") for k in draft.keeps):
            message = f"{mass_text(made - asked)} of {draft.name} is left over ({mass_text(made)} is made)"
            help = (
                f"leave out the amount to take all of it: `{draft.name}`; or say in {draft.name} "
                "`keep what is left as …` or `discard what is left`"
            )
            fixes = (instead(place, draft.name, f"write `{draft.name}` alone"),)
            there = (draft.place, "it is made here")
            self.reports.append(report("leftover", place, message, help, there, fixes=fixes))

    def _is_sure(self, draft: Draft) -> bool:
        """Whether how much of a stage is made is known."""
        stages = self.drafts.stages
        inside = (stages[item.meaning.stage] for item in draft.items if item.meaning.stage in stages)
        return self.one_way and weights_read(draft, self.drafts.larder) and all(map(self._is_sure, inside))

    def _is_left(self, draft: Draft) -> bool:
        """Whether no line that could not be read may take the rest of it."""
        return self._is_sure(draft) and not may_be_used(draft, self.drafts.stages.values())

    # ---- the overall formula that follows --------------------------------------------------------

    def _overall(self) -> tuple[OverallLine, ...]:
        """Add up what reaches the bread; cultures that are counted are split into what they are made of."""
        sums: dict[str, OverallLine] = {}

        def enter(name: str, line: OverallLine) -> None:
            key = f"{name}, flour" if line.is_flour else name
            there = sums.get(key)
            sums[key] = (
                line
                if there is None
                else there._replace(
                    share=there.share + line.share,
                    more=there.more + line.more,
                    optional=there.optional and line.optional,
                )
            )

        for key in reversed(tuple(self.drafts.stages)):
            for portion, item in self._portions(key):
                share = portion * self.size[key] * self.reaching[key]
                booking = booking_of(item, key, self.drafts.returned)
                if item.meaning.stage in self.drafts.stages or booking is Booking.RETURNED or not share:
                    continue
                meaning = item.meaning
                parts: tuple[Leaf, ...] = ()
                if booking is Booking.COUNTED and meaning.ingredient is not None:
                    parts = leaves(meaning.ingredient, self.drafts.larder)
                for leaf in parts:
                    part = self._booked(item, leaf)
                    line = OverallLine(part.name, part, "", share * leaf.share, part.counts_as_flour, False, None)
                    enter(fold(part.name), line)
                if not parts:
                    apart = is_culture(item)
                    line = OverallLine(
                        meaning.name, meaning.ingredient, meaning.stage, share, self._flour(item), apart, item.place,
                        share * item.more, item.optional,
                    )  # fmt: skip
                    enter(meaning.key + (" (apart)" if apart else ""), line)
        return tuple(sorted(sums.values(), key=lambda line: (not line.is_flour, line.apart)))

    def _booked(self, item: Item, leaf: Leaf) -> Ingredient:
        """What a part of a culture counts as: a flour as the line says, anything else as itself."""
        if not (item.counted_as and leaf.ingredient.counts_as_flour):
            return leaf.ingredient
        return self.drafts.larder.ingredient(item.counted_as) or leaf.ingredient

    def _portions(self, key: str) -> list[tuple[Fraction, Item]]:
        """(share, item) of a stage; an item that is partly held back is one again here. A swap puts what it makes up at
        the place of the line it swapped, so that a place alone does not tell them apart."""
        totals: dict[tuple[Place, str], Fraction] = {}
        for portion in self.unit[key].portions:
            where = (portion.place, portion.key)
            totals[where] = totals.get(where, NOTHING) + portion.share
        items = self.drafts.stages[key].items
        return [(totals.get((item.place, item.meaning.key), NOTHING), item) for item in items]

    def _stage(self, key: str, draft: Draft, base: Fraction) -> Stage:
        size = self.size[key]
        unit = self.unit[key]
        stage = stage_of(draft, unit, self.reaching[key], base / size if size else base)
        own, basis = self._own(draft, stage)
        by_weight = self.way is Way.BY_WEIGHT
        portions = tuple(
            p._replace(percent=p.share / own * 100 if own else None, basis=basis if own else "")
            if by_weight and p.basis != "what is soaked"
            else p._replace(basis="dough flour" if draft.word == "dough" else p.basis)
            for p in stage.portions
        )
        return stage._replace(portions=portions)

    def _own(self, draft: Draft, stage: Stage) -> tuple[Fraction, str]:
        """What is 100 % in a stage that is weighed: its flour; of a preparation its line at 100 %, or all of it."""
        if draft.word != "preparation":
            return sum((p.share for p in stage.portions if p.is_flour and not p.stage), NOTHING), "stage flour"
        if _of_one_line(draft):
            return ONE, THE_LINE
        return sum((p.share for p in stage.portions), NOTHING), ALL_WEIGHED


def _basis_line(draft: Draft) -> bool:
    """A preparation in per cent: exactly one line says 100 % and is the basis."""
    return sum(1 for i in draft.items if i.how == "percent" and i.figure == 1) == 1 and all(
        i.how == "percent" for i in draft.items
    )


def _of_one_line(draft: Draft) -> bool:
    return draft.word == "preparation" and _basis_line(draft)

"""The first way of writing: `overall` in per cent, and stages that take their share of it."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import at_the_end, instead
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula import uses
from manchet.formula.as_asked import more_of, nowhere_to_go, with_the_rest
from manchet.formula.cultures import booking_of, counted_key, is_culture, leaves
from manchet.formula.draft import Draft, Item
from manchet.formula.flours import Overall
from manchet.formula.model import Booking, OverallLine
from manchet.formula.naming import Meaning
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
    overruled_by,
    stage_of,
)
from manchet.formula.unread_lines import flours_read, may_be_any, slips_of
from manchet.records import NamedTuple


class _Apart(NamedTuple):
    item: Item
    share: Fraction


def shares_with_overall(overall: Overall, drafts: Drafts) -> Outcome[Shares]:
    """Resolve a formula written with `overall`. Shares are grams per gram of all flour (overall's flours are 1)."""
    return _OverallWay(overall, drafts).resolve()


class _OverallWay:
    def __init__(self, overall: Overall, drafts: Drafts) -> None:
        self.lines = {item.meaning.key: item for item in overall.lines}
        self.unsure: set[str] = set()
        """The keys of what a stage takes no one knows how much of."""
        self.overall = overall
        self.drafts = drafts
        self.overruled = overruled_by(overall.lines)
        self.reports: list[Diagnostic] = []
        self.shares: dict[str, list[Fraction | None]] = {}
        self.used: dict[str, list[tuple[Fraction, str, Place]]] = {}
        self.apart: list[_Apart] = []
        self.bookings: dict[tuple[str, int], Booking] = {}
        self.filled: dict[str, FilledStage] = {}
        self.forgotten: list[Item] = []

    def resolve(self) -> Outcome[Shares]:
        for key, draft in self.drafts.stages.items():
            self.shares[key] = [self._explicit(item, draft) for item in draft.items]
            if not draft.heading_read:
                self.unsure |= {item.meaning.key for item in draft.items}
        for key, draft in self.drafts.stages.items():
            self._soaked(key, draft)
            self._judge_stage_flours(key, draft)
        for draft in self.drafts.stages.values():
            self._book(draft)
        self._take_left()
        self.reports += uses.elses_twice(self.drafts.stages.values())
        self.forgotten = self._forgotten(any(i.how == "else" for d in self.drafts.stages.values() for i in d.items))
        stages = {key: self._everything_else(draft) for key, draft in self.drafts.stages.items()}
        for key, draft in stages.items():
            self._fill(key, draft)
        self._judge_uses(stages)
        if self.forgotten:
            self.reports.append(uses.everything_else_missing(tuple(self.drafts.stages.values())[-1], self.forgotten))
        self._close()
        lines = tuple(self._overall_line(item) for item in self.lines.values()) + self._apart_lines()
        made = tuple(stage_of(stages[key], self.filled[key], ONE, ONE) for key in stages)
        return Outcome(Shares(lines, made, ONE, not has_errors(self.reports)), tuple(self.reports))

    # ---- what is written -------------------------------------------------------------------------

    def _explicit(self, item: Item, draft: Draft) -> Fraction | None:
        """The share of an item that says itself how much it is; None for one that follows from the others."""
        key = item.meaning.key
        if item.how == "all":
            if item.meaning.stage:
                return None
            return self._all_of(item, key)
        if item.how in ("left", "else") or item.basis == "what is soaked":
            return None
        if item.how == "grams":
            self._weight_among_percents(item)
            return NOTHING
        if item.meaning.stage in self.drafts.stages:
            self._share_and_ask(item)
            return None
        if item.basis == "all flour" or draft.share is None:
            return item.figure
        return item.figure * draft.share

    def _all_of(self, item: Item, key: str) -> Fraction:
        line = self.lines.get(key)
        if line is None:
            if not may_be_any(self.overall.slips, key, self.drafts.larder):
                message = f"overall has no {item.meaning.name}, so there is none to take"
                help = f"add `{item.meaning.name} …%` to overall, or leave out this line"
                self.reports.append(report("not-in-overall", item.place, message, help))
            return NOTHING
        return line.figure

    def _weight_among_percents(self, item: Item) -> None:
        self.unsure.add(item.meaning.key)
        message = f"{item.meaning.name} is given as a weight in a formula written in per cent"
        help = "write it in per cent, or write the whole formula by weight, without `overall`"
        self.reports.append(report("percent-and-weight-mixed", item.place, message, help))

    def _share_and_ask(self, item: Item) -> None:
        name = item.meaning.name
        message = f"how much {name} there is follows from its own lines, not from here"
        help = f"write `{name}` alone: the bread gets all of it"
        fixes = (instead(item.place, name, f"write `{name}` alone"),)
        self.reports.append(report("share-and-ask", item.place, message, help, fixes=fixes))

    def _soaked(self, key: str, draft: Draft) -> None:
        shares = self.shares[key]
        soaked = [i for i, item in enumerate(draft.items) if item.basis == "what is soaked" and item.how == "percent"]
        if not soaked:
            return
        base = sum((s for s in shares if s is not None), NOTHING)
        for i in soaked:
            shares[i] = base * draft.items[i].figure

    def _judge_stage_flours(self, key: str, draft: Draft) -> None:
        flours = [
            (item, share)
            for item, share in zip(draft.items, self.shares[key], strict=True)
            if is_flour(item, self.overruled) and share is not None
        ]
        if draft.word == "dough":
            return
        total = sum((share for _, share in flours), NOTHING)
        if draft.share is None:
            if flours and draft.heading_read:
                self.unsure |= {item.meaning.key for item in draft.items}
                message = f"{draft.name} weighs flour ({flours[0][0].meaning.name}) but does not say how much of it"
                help = f"write `{uses.heading_of(draft)} with {percent(total)} of all flour`, and its flours as 100%"
                self.reports.append(report("share-missing", draft.place, message, help))
            return
        if total != draft.share and flours_read(draft, self.drafts.larder):
            of_stage = total / draft.share if draft.share else NOTHING
            listed = " + ".join(f"{i.meaning.name} {percent(s / draft.share)}" for i, s in flours if draft.share)
            message = (
                f"the flours weighed into {draft.name} come to {percent(of_stage)} of its flour"
                f": {listed or 'it weighs none'}"
            )
            help = "its own flours are 100%; a culture stands on top and is not counted here"
            not_flour = [i.meaning.name for i in draft.items if self.overruled.get(i.meaning.key) is False]
            if not flours and not_flour:
                help = (
                    f"overall says of all {not_flour[0]} that it is not counted as flour: take that away there, or the share "
                    f"away here (`{not_flour[0]} 10% of all flour`)"
                )
            self.reports.append(report("stage-flours-not-100", draft.place, message, help))

    # ---- what follows ----------------------------------------------------------------------------

    def _book(self, draft: Draft) -> None:
        """Enter what a stage takes against the lines of overall."""
        for at, (item, share) in enumerate(zip(draft.items, self.shares[draft.key], strict=True)):
            booking = booking_of(item, draft.key, self.drafts.returned)
            self.bookings[draft.key, at] = booking
            if share is None or item.meaning.stage in self.drafts.stages:
                continue
            key = item.meaning.key
            if item.how == "all" and key not in self.lines:
                continue  # reported where it is taken
            if key in self.lines:
                if booking is Booking.COUNTED:
                    self.bookings[draft.key, at] = Booking.NONE  # overall lists the culture itself
                self._use(key, share, draft, item)
            elif booking is Booking.RETURNED:
                continue
            elif booking is Booking.APART:
                self.apart.append(_Apart(item, share))
            elif booking is Booking.COUNTED:
                self._book_culture(draft, at, item, share)
            elif not item.meaning.stage and not may_be_any(self.overall.slips, key, self.drafts.larder):
                message = f"{draft.name} weighs {item.meaning.name}, but overall has none"
                help = f"add `{item.meaning.name} {percent(share)}` to overall: it holds all that is weighed"
                self.reports.append(report("not-in-overall", item.place, message, help))

    def _use(self, key: str, share: Fraction, draft: Draft, item: Item) -> None:
        self.used.setdefault(key, []).append((share, draft.name, item.place))

    def _book_culture(self, draft: Draft, at: int, item: Item, share: Fraction) -> None:
        """Split a culture into its flour and water; apart, with a note, where overall lacks one of them."""
        assert item.meaning.ingredient is not None
        parts = []
        counted_as = self._counted_as(item)
        for leaf in leaves(item.meaning.ingredient, self.drafts.larder):
            key = leaf.key
            if counted_as and leaf.ingredient.counts_as_flour:
                key = counted_as
            if key not in self.lines:
                self._culture_apart(draft, at, item, share, leaf.ingredient.name)
                return
            parts.append((key, share * leaf.share))
        if not parts:
            self._culture_apart(draft, at, item, share, "")
            return
        for key, part in parts:
            self._use(key, part, draft, item)

    def _counted_as(self, item: Item) -> str:
        if not item.counted_as:
            return ""
        key = counted_key(item.counted_as, self.drafts.larder)
        if key not in self.lines and not may_be_any(self.overall.slips, key, self.drafts.larder):
            message = f"counted as {item.counted_as}, but overall has none"
            self.reports.append(report("not-in-overall", item.place, message, "name a flour that is in overall"))
        return key

    def _culture_apart(self, draft: Draft, at: int, item: Item, share: Fraction, missing: str) -> None:
        self.bookings[draft.key, at] = Booking.APART
        self.apart.append(_Apart(item, share))
        name = item.meaning.name
        if missing and not may_be_any(self.overall.slips, fold(missing), self.drafts.larder) and not item.counted_as:
            flours = [i.meaning.name for i in self.lines.values() if is_flour(i, self.overruled)]
            message = f"{name} brings {missing}, which overall does not list: it is counted on a line of its own"
            help = (
                f"say which you mean: `{name} …, counted as {flours[0] if flours else 'white flour'}`, "
                f"or `{name} …, counted apart`"
            )
            ways = (*(f", counted as {flour}" for flour in flours), ", counted apart")
            fixes = tuple(at_the_end(item.place, way) for way in ways)
            self.reports.append(report("culture-flour-not-in-overall", item.place, message, help, fixes=fixes))

    def _left_of(self, key: str) -> Fraction:
        return self.lines[key].figure - sum((share for share, _, _ in self.used.get(key, ())), NOTHING)

    def _take_left(self) -> None:
        for draft in self.drafts.stages.values():
            for at, item in enumerate(draft.items):
                if item.how != "left":
                    continue
                key = item.meaning.key
                # Where more is taken than there is, nothing is left; what is wanting is told when the balance closes.
                share = self._all_of(item, key) and max(self._left_of(key), NOTHING)
                self.shares[draft.key][at] = share
                if key in self.lines:
                    self._use(key, share, draft, item)

    def _everything_else(self, draft: Draft) -> Draft:
        """The draft with `everything else` written out line by line, in overall's order."""
        items: list[Item] = []
        shares: list[Fraction | None] = []
        bookings: list[Booking] = []
        for at, (item, share) in enumerate(zip(draft.items, self.shares[draft.key], strict=True)):
            if item.how != "else":
                rest = self.lines.get(item.meaning.key) if item.how in ("all", "left") else None
                items.append(item if rest is None else with_the_rest(item, rest, share or NOTHING))
                shares.append(share)
                bookings.append(self.bookings[draft.key, at])
                continue
            for key, line in self.lines.items():
                left = self._left_of(key)
                if left > 0:
                    taken = line._replace(
                        how="percent", figure=left, basis="all flour", place=item.place, celsius=item.celsius
                    )
                    items.append(with_the_rest(taken, line, left))
                    shares.append(left)
                    bookings.append(Booking.NONE)
                    self._use(key, left, draft, items[-1])
        self.shares[draft.key] = shares
        self.bookings |= {(draft.key, at): b for at, b in enumerate(bookings)}
        return draft._replace(items=tuple(items))

    def _fill(self, key: str, draft: Draft) -> None:
        shares = tuple(
            self.filled[item.meaning.stage].account.out
            if share is None and item.meaning.stage in self.filled
            else share or NOTHING
            for item, share in zip(draft.items, self.shares[key], strict=True)
        )
        bookings = {id(item): self.bookings[key, at] for at, item in enumerate(draft.items)}
        base = draft.share if draft.share is not None else ONE

        def flour(item: Item) -> bool:
            return is_flour(item, self.overruled)

        def booking(item: Item) -> Booking:
            return bookings[id(item)]

        def may_weigh(wanted: str) -> bool:
            return bool(self.forgotten) or may_be_any((*draft.slips, *self.overall.slips), wanted, self.drafts.larder)

        def fill(returned: dict[str, Fraction]) -> Outcome[FilledStage]:
            return fill_portions(draft, draft.items, shares, base, flour, booking, returned, may_weigh)

        self.filled[key], reports = fill({})
        self.reports += reports
        back = {
            goes.key: cultures_returned(key, self.drafts, self.filled, goes.key)
            for step in draft.steps
            if step.verb == "return"
            for goes in step.goes
        }
        if back:
            self.filled[key] = fill(back).value  # what is wrong with it has been said

    # ---- what must hold --------------------------------------------------------------------------

    def _judge_uses(self, stages: dict[str, Draft]) -> None:
        users: dict[str, list[tuple[str, Place]]] = {}
        for draft in stages.values():
            for item in draft.items:
                if item.meaning.stage in stages:
                    users.setdefault(item.meaning.stage, []).append((draft.name, item.place))
        for key, draft in stages.items():
            by = users.get(key, [])
            if not by and draft.word != "dough" and draft.heading_read and not uses.may_be_used(draft, stages.values()):
                self.reports.append(uses.never_used(draft))
            elif len(by) > 1:
                self.reports.append(uses.used_twice(draft, by))

    def _forgotten(self, taken: bool) -> list[Item]:
        """The lines of overall that go nowhere because no stage takes `everything else`; one alone is its own slip."""
        left = [
            item
            for key, item in self.lines.items()
            if self._left_of(key) > 0 and not may_be_any(slips_of(self.drafts.stages), key, self.drafts.larder)
        ]
        taken = taken or any(draft.may_take_the_rest() for draft in self.drafts.stages.values())
        return left if left and not taken and len(left) + len(self.overall.slips) > 1 else []

    def _close(self) -> None:
        blamed = {draft.name for draft in self.drafts.stages.values() if draft.share is not None and draft.share > 1}
        for draft in self.drafts.stages.values():
            if draft.name in blamed:
                self.reports.append(uses.more_than_all_flour(draft))
        for key, item in self.lines.items():
            left = self._left_of(key)
            takes = self.used.get(key, [])
            if (
                not left
                or self._is_unsure(key, left)
                or (self.forgotten and left > 0)
                or (not takes and uses.moved_unweighed(key, self.drafts.stages.values()))
            ):
                continue
            if left < 0 and any(stage in blamed for _, stage, _ in takes):
                continue
            if left < 0:
                if is_flour(item, self.overruled):
                    blamed.add(takes[-1][1])
                self.reports.append(uses.more_than_overall(item, left, takes))
            else:
                self.reports.append(uses.left_in_overall(item, left, takes))

    def _is_unsure(self, key: str, left: Fraction) -> bool:
        """Whether a stage may take more or less of a line of overall than is read; what it could not read takes only more."""
        stages = self.drafts.stages
        if key in self.unsure or may_be_any(self.overall.slips, key, self.drafts.larder):
            return True
        if left < 0:
            return False
        takes_it = may_be_any(slips_of(stages), key, self.drafts.larder)
        return takes_it or any(draft.may_take_the_rest() for draft in stages.values())

    # ---- overall as it is printed ----------------------------------------------------------------

    def _overall_line(self, item: Item) -> OverallLine:
        meaning = item.meaning
        flour = is_flour(item, self.overruled)
        portions = [p for filled in self.filled.values() for p in filled.portions if p.key == meaning.key]
        more, optional = more_of(meaning.key, portions), item.optional or any(p.optional for p in portions)
        if item.more and not more and not (self.forgotten or self._is_unsure(meaning.key, ONE)):
            self.reports.append(nowhere_to_go(item))
        return OverallLine(
            meaning.name, meaning.ingredient, meaning.stage, item.figure, flour, False, item.place, more, optional
        )

    def _apart_lines(self) -> tuple[OverallLine, ...]:
        sums: dict[str, OverallLine] = {}
        for item, share in self.apart:
            meaning: Meaning = item.meaning
            there = sums.get(meaning.key)
            total = share + (there.share if there else NOTHING)
            sums[meaning.key] = OverallLine(
                meaning.name, meaning.ingredient, meaning.stage, total, False, is_culture(item), item.place
            )
        return tuple(sums.values())

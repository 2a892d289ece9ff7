"""From the lines of a block to a formula: names bound, ways told apart, shares resolved, the balance closed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.block import (
    allowed_in,
    any_unread,
    has_lines,
    is_overall,
    notes_in,
    pictures_in,
    stage_meant,
    unread_stages,
    written_name,
)
from manchet.formula.cultures import returned_in
from manchet.formula.draft import Draft, DraftBranch, Item, stage_key
from manchet.formula.flours import Overall, flour_reports
from manchet.formula.head import Head, head_of, may_be_made_by_unread
from manchet.formula.impossible import circle_reports, return_reports
from manchet.formula.losses import loss_reports
from manchet.formula.model import Branch, Formula, Makes, Way
from manchet.formula.naming import Names
from manchet.formula.nouns import same_noun
from manchet.formula.order_of_work import users_last
from manchet.formula.parts import NO_PARTS, Parts
from manchet.formula.portion_of_dough import portion_of_dough
from manchet.formula.raw_pieces import raw_pieces
from manchet.formula.said_once import say_once
from manchet.formula.shares import Drafts, Shares, has_errors, is_flour, overruled_by
from manchet.formula.stage_reading import draft_of
from manchet.formula.too_many import MOST_BREADS, MOST_STAGES, breads_at, breads_too_many, stages_too_many
from manchet.formula.unread_lines import may_be_flour
from manchet.formula.uses import elses_twice
from manchet.formula.with_overall import shares_with_overall
from manchet.formula.without_overall import shares_without_overall
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

if TYPE_CHECKING:
    from manchet.formula.sale import Sale

NOTHING = Fraction(0)
ONE = Fraction(1)


class Offered(NamedTuple):
    """What a bakery offers to each of its formulas."""

    larder: Larder
    shared: Mapping[str, Entry]
    """Stages in column 0, by key."""
    preparations: Mapping[str, str]
    """Folded name -> name as written."""
    measures: str
    """Whose cups and spoons: "US", "metric", "imperial", or "" where no kitchen says."""
    parts: Parts = NO_PARTS
    """What other blocks make by the piece: for a dish."""


def bind(block: Entry, offered: Offered) -> Outcome[Formula | None]:
    """The formula (or preparation) a block describes; None where its balance cannot be closed."""
    assert isinstance(block.node, nodes.BlockHead)
    return _Binder(block, block.node, offered).bind()


class _Binder:
    def __init__(self, block: Entry, head: nodes.BlockHead, offered: Offered) -> None:
        self.block = block
        self.name = head.name.text
        self.place = block.line.place()
        self.dish = head.word == "assembly"
        self.preparation = head.word != "formula"
        self.plates = ONE
        self.offered = offered
        self.reports: list[Diagnostic] = []
        self.drafts: dict[str, Draft] = {}
        self.unread: frozenset[str] = frozenset()
        """The keys of the stages whose headings could not be read."""

    def bind(self) -> Outcome[Formula | None]:
        bound = self._bound()
        return Outcome(bound, tuple(say_once(self.reports)))

    def _bound(self) -> Formula | None:
        head, reports = head_of(self.block.children)
        self.reports += reports
        headings = self._headings()
        if len(headings) > MOST_STAGES:
            self.reports.append(stages_too_many([*headings.values()]))
            return None
        names = self._names(headings)
        if self.dish:
            from manchet.formula.dish import names_on_a_dish, plates_of  # few formulas are dishes

            self.plates = plates_of(head.makes)
            names, reports = names_on_a_dish((self.block, *headings.values()), names, self.offered.parts)
            self.reports += reports
        self._draft_stages(headings, names)
        if self.preparation:
            self._draft_last(names)
        overall = self._overall(names)
        last = self._last()
        way = self._way(head, overall, last)
        places = breads_at(head.makes, last)
        if len(places) > MOST_BREADS:
            self.reports.append(breads_too_many(places))
            return None
        if not may_be_made_by_unread(self.block.children):
            self._judge_nouns(head.makes)
            self._judge_amount(way)
        if overall is not None:
            self.reports += flour_reports(overall, overruled_by(overall.lines))
        if last is None or way is None:
            return None
        order = users_last(self._uses())
        if order is None:
            self.reports += circle_reports(self.drafts, self._uses(), self.offered.larder, self.reports)
            self.reports += elses_twice(self.drafts.values())
            return None
        ordered = {key: self.drafts[key] for key in order if key != last.key} | {last.key: last}
        if self.dish:
            from manchet.formula.dish import cut_as_weighed

            ordered = {key: cut_as_weighed(draft) for key, draft in ordered.items()}
        plates = self.plates if self.dish else None
        drafts = Drafts(ordered, returned_in(self.drafts), self.offered.larder, plates)
        self.reports += return_reports(drafts)
        if overall is not None:
            shares, found = shares_with_overall(overall, drafts)
        else:
            shares, found = shares_without_overall(way, last.key, drafts)
        self.reports += found
        formula = self._formula(head, way, shares, last)
        self.reports += loss_reports(formula)
        if self.dish:
            from manchet.formula.dish import as_dish  # few formulas are dishes

            formula, found = as_dish(formula, self.offered.parts, self.plates)
            self.reports += found
            if not all(part.is_sound for part in formula.parts):
                return None
        return None if has_errors(self.reports) or self._unread() else formula

    # ---- stages ----------------------------------------------------------------------------------

    def _headings(self) -> dict[str, Entry]:
        """The stage headings of this block, by key; a second one of the same name is reported."""
        found: dict[str, Entry] = {}
        for entry in self.block.children:
            if not isinstance(entry.node, nodes.StageHead):
                continue
            key = stage_key(entry.node)
            if key in found:
                self.reports.append(_two_of_a_name(entry, entry.node, found[key]))
            else:
                found[key] = entry
        meant = {stage_key(head): entry for entry in self.block.children if (head := stage_meant(entry))}
        self.unread = frozenset(meant.keys() - found.keys())
        both = found | {key: meant[key] for key in self.unread}
        return dict(sorted(both.items(), key=lambda one: one[1].line.number))

    def _names(self, headings: dict[str, Entry]) -> Names:
        stages = {key: written_name(entry) for key, entry in self.offered.shared.items()}
        stages |= {key: written_name(entry) for key, entry in headings.items() if key not in self.unread}
        stages |= {key: (head.name or head.word).text for key in self.unread if (head := stage_meant(headings[key]))}
        stages |= {fold(name): name for name in unread_stages(self.block)}
        own = fold(self.name)
        preparations = {key: name for key, name in self.offered.preparations.items() if key != own}
        return Names(stages, preparations, self.offered.larder)

    def _draft_stages(self, headings: dict[str, Entry], names: Names) -> None:
        for key, entry in headings.items():
            self._add_draft(key, entry, names)
        waiting = [item.meaning.stage for draft in self.drafts.values() for item in draft.items]
        while waiting:
            key = waiting.pop()
            if key in self.offered.shared and key not in self.drafts:
                self._add_draft(key, self.offered.shared[key], names, shared=True)
                waiting += [item.meaning.stage for item in self.drafts[key].items]

    def _add_draft(self, key: str, entry: Entry, names: Names, shared: bool = False) -> None:
        head = entry.node if isinstance(entry.node, nodes.StageHead) else stage_meant(entry)
        assert head is not None
        lines = entry
        if not has_lines(entry):
            there = self.offered.shared.get(key)
            if there is None:
                message = f"{written_name(entry)} has nothing under it"
                help = (
                    "write what goes into it below, two spaces deeper; "
                    "or write it once in column 0 for several formulas to use"
                )
                self.reports.append(report("stage-empty", entry.line.place(), message, help))
                lines = entry
            else:
                lines, shared = there, True
        draft, reports = draft_of(head, entry, lines.children, names, self.offered.measures, shared, self.plates)
        if shared:
            reports = ()  # its own block is read, and reported on, once
        if key in self.unread and key != "dough":  # of the dough's heading nothing else follows
            draft = draft._replace(heading_read=False)
        self.drafts[key] = draft if has_lines(lines) else draft._replace(whole=False)
        self.reports += reports

    def _draft_last(self, names: Names) -> None:
        """The vessel of a preparation or a dish itself, into which its stages go."""
        draft, reports = draft_of(
            None, self.block, self.block.children, names, self.offered.measures, plates=self.plates
        )
        if draft.key in self.drafts:
            stage = self.drafts[draft.key]
            message = f"the stage {stage.name} has the name of what it is a stage of"
            self.reports.append(report("same-name-twice", stage.place, message, "give it another name"))
        self.drafts[draft.key] = draft
        self.reports += reports

    def _last(self) -> Draft | None:
        if self.preparation:
            return self.drafts[fold(self.name)]
        if "dough" in self.drafts:
            return self.drafts["dough"]
        if not any(
            isinstance(e.node, nodes.Unread) and e.node.opens == "stage" and e.children for e in self.block.children
        ):
            help = "write the heading `dough`, and under it what is mixed into it and how"
            self.reports.append(report("no-dough", self.place, f"{self.name} has no `dough`", help))
        named = [draft for draft in self.drafts.values() if draft.word == "dough"]
        return named[0] if len(named) == 1 else None  # a dough with a name is looked over like one

    # ---- overall and the ways --------------------------------------------------------------------

    def _overall(self, names: Names) -> Overall | None:
        """The lines of overall; None without one."""
        entry = next((e for e in self.block.children if is_overall(e)), None)
        if entry is None:
            return None
        head = nodes.StageHead(nodes.Word("overall", 0, 7), None, None)
        own = names._replace(stages={})
        draft, reports = draft_of(head, entry, entry.children, own, self.offered.measures)
        self.reports += reports
        seen: dict[str, Item] = {}
        whole, slips = draft.whole, [*draft.slips]
        for item in draft.items:
            if item.how == "grams":
                whole = False
                slips.append(item.meaning.key)
                message = f"{item.meaning.name} is given as a weight; overall is per cent only"
                help = "write it in per cent of all flour"
                self.reports.append(report("weight-in-overall", item.place, message, help))
            else:
                seen.setdefault(item.meaning.key, item)
            self._judge_stage_name(item)
        twice = (item for item in draft.items if seen.get(item.meaning.key, item) is not item)
        flours_whole = not any(may_be_flour(slip, self.offered.larder) for slip in draft.slips) and not any(
            is_flour(item, {}) for item in twice
        )
        return Overall(tuple(seen.values()), whole, flours_whole, entry.line.place(), tuple(slips))

    def _judge_stage_name(self, item: Item) -> None:
        stage = self.drafts.get(fold(item.meaning.name))
        if stage is not None:
            message = f"the stage {stage.name} has the same name as the ingredient {item.meaning.name}"
            help = f"give the stage another name, such as `{stage.word} soaked {stage.name}`"
            there = (item.place, "this is the ingredient")
            self.reports.append(report("stage-named-like-ingredient", stage.place, message, help, there))

    def _way(self, head: Head, overall: object, last: Draft | None) -> Way | None:
        if self.preparation:
            return Way.BY_WEIGHT
        if overall is not None:
            if head.of_dough_flour is not None:
                message = "`written on dough flour` and `overall` are two ways of writing a formula"
                fixes = (without_line(head.of_dough_flour, "leave out this line"),)
                self.reports.append(report("two-ways", head.of_dough_flour, message, "keep one of them", fixes=fixes))
                return None
            return Way.OVERALL
        if head.of_dough_flour is not None:
            return Way.DOUGH_FLOUR
        if last is None:
            return Way.BY_WEIGHT
        in_percent = [i for i in last.items if i.how == "percent" and i.basis != "what is soaked"]
        if in_percent and not any(i.how == "grams" for i in last.items):
            help = "add `overall` with the whole formula, or write `written on dough flour` in the head"
            self.reports.append(report("way-not-said", last.place, "the dough is in per cent, but of what?", help))
            return None
        return Way.BY_WEIGHT

    # ---- circles and returns ---------------------------------------------------------------------

    def _uses(self) -> dict[str, tuple[str, ...]]:
        return {
            key: tuple(stage for stage in self._takes(draft) if stage in self.drafts)
            for key, draft in self.drafts.items()
        }

    def _takes(self, draft: Draft) -> Iterator[str]:
        """The keys of the stages that go into a vessel, and in a dish of those that are laid on what is in it."""
        yield from (item.meaning.stage for item in draft.items)
        if self.dish:
            yield from (step.applied.stage for step in draft.steps if step.applied is not None)

    def _unread(self) -> bool:
        """Whether a line of this block could not be read: the parser has reported it."""
        return any_unread(self.block) or not all(d.whole for d in self.drafts.values())

    # ---- the formula -----------------------------------------------------------------------------

    def _formula(self, head: Head, way: Way, shares: Shares, last: Draft) -> Formula:
        branches = tuple(self._branch(b) for b in last.branches)
        last_stage = shares.stages[-1]
        return Formula(
            name=self.name,
            way=way,
            kind=head.kind,
            about=head.about,
            status=head.status,
            makes=raw_pieces(head.makes, last.steps) if self.preparation else head.makes,
            from_flour=head.from_flour,
            dough_loss=head.dough_loss,
            bake_loss=head.bake_loss,
            sold=head.sold,
            overall=shares.overall,
            stages=shares.stages,
            branches=branches,
            dough_share=last_stage.out_share,
            own_flour=shares.flour if way is Way.BY_WEIGHT else None,
            allowed=tuple(allowed_in(self.block)),
            notes=tuple(notes_in(self.block.children)) if not self.preparation else last.notes,
            pictures=() if self.preparation else tuple(pictures_in(self.block.children)),
            place=self.place,
            preparation=self.preparation,
            kept=last.kept,
            never_under=last.never_under if head.never_under is None else head.never_under,
            sale=self._sale(),
        )

    def _judge_nouns(self, makes: tuple[Makes, ...]) -> None:
        nouns = [m.noun for m in makes]
        for branch in (b for draft in self.drafts.values() for b in draft.branches if b.noun):
            if any(same_noun(branch.noun, n) for n in nouns):
                continue
            listed = ", ".join(f"`{n}`" for n in nouns if n) or "none"
            message = f"nothing this formula makes is called {branch.noun}"
            help = f"the head makes {listed}; add a line `makes 24 {branch.noun} at 110 g dough`"
            fixes = one_of(branch.place, [n for n in nouns if n])
            self.reports.append(report("unknown-noun", branch.place, message, help, fixes=fixes))

    def _branch(self, draft: DraftBranch) -> Branch:
        return Branch(draft.noun, draft.steps, tuple(map(portion_of_dough, draft.added)), draft.sale)

    def _sale(self) -> Sale | None:
        if not any(type(entry.node) is nodes.Setting for entry in self.block.children):
            return None
        from manchet.formula.sale import sale_of  # few formulas say how they are sold

        sale = sale_of(self.block.children)
        self.reports += sale.diagnostics
        return sale.value

    def _judge_amount(self, way: Way | None) -> None:
        said = any(isinstance(e.node, nodes.MakesNode | nodes.FromFlour) for e in self.block.children)
        if self.dish and not said:
            help = "write how many, as in `makes 24 plates`"
            self.reports.append(report("no-makes", self.place, f"how many plates of {self.name}?", help))
        if way in (None, Way.BY_WEIGHT) or said:
            return
        help = "add a line such as `makes 12 loaves at 900 g dough` or `from 10 kg flour`"
        self.reports.append(report("no-makes", self.place, f"how much? {self.name} does not say what it makes", help))


def _two_of_a_name(entry: Entry, head: nodes.StageHead, first: Entry) -> Diagnostic:
    message = f"there are two stages called {(head.name or head.word).text}"
    there = (first.line.place(), "the first is here")
    if stage_key(head) == "dough":
        help = "a formula has one dough: write the first mix as `stage first dough`"
        return report("two-doughs", entry.line.place(), message, help, there)
    return report("same-name-twice", entry.line.place(), message, "give one of them another name", there)

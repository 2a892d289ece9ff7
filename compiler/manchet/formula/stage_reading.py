"""From the lines of a stage to its draft: names looked up, amounts weighed, steps bound."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula import measures
from manchet.formula.as_asked import flour_left_out, not_poured
from manchet.formula.draft import Draft, DraftBranch, Hold, Item, stage_key
from manchet.formula.how_hot import how_hot
from manchet.formula.ingredient_twice import line_key, stands_twice
from manchet.formula.model import Goes, Keep, KeptFor, PouredOff, Range, Step
from manchet.formula.naming import Meaning, Names
from manchet.formula.parts import NO_PARTS, CountedAmount
from manchet.formula.picture import Picture
from manchet.formula.poured_off import water_in
from manchet.formula.steps import step_of
from manchet.larder.densities import weight_of
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

if TYPE_CHECKING:
    from manchet.formula.sale import Sale

ONE = Fraction(1)


def draft_of(
    head: nodes.StageHead | None,
    entry: Entry,
    children: Iterable[Entry],
    names: Names,
    measures_of: str,
    shared: bool = False,
    plates: Fraction = ONE,
) -> Outcome[Draft]:
    """Read the lines of one stage (or of a preparation, which has no heading of its own). `plates`: of a dish, how many."""
    reader = _Reader(names, measures_of, head is not None and fold(head.word.text) == "overall", plates)
    reader.read(tuple(children))
    if head is None:
        assert isinstance(entry.node, nodes.BlockHead)
        key, name, word, share = fold(entry.node.name.text), entry.node.name.text, "preparation", None
    else:
        key = stage_key(head)
        name, word = (head.name or head.word).text, fold(head.word.text)
        share = None if head.share is None else (head.share.low or Fraction(0)) / 100
        if share == 0 and head.share is not None and not shared:
            from manchet.formula.slips import share_of_none  # a sound file has no need of it

            reader.reports.append(share_of_none(head.share, name, entry))
    draft = Draft(
        key=key,
        name=name,
        word=word,
        share=share,
        items=tuple(reader.items),
        holds=tuple(reader.holds),
        steps=tuple(reader.steps),
        keeps=tuple(reader.keeps),
        branches=tuple(reader.branches),
        for_each_mix=reader.for_each_mix,
        from_nothing=reader.from_nothing,
        shared=shared,
        notes=tuple(reader.notes),
        kept=tuple(reader.kept),
        never_under=reader.never_under,
        place=entry.line.place(),
        whole=reader.whole,
        pictures=tuple(reader.pictures),
        slips=tuple(reader.slips),
    )
    if reader.sale_lines and head is not None:
        from manchet.formula.sale_lines import listed_as_of_stage  # few stages have one

        listed = listed_as_of_stage(reader.sale_lines, name)
        return Outcome(draft._replace(listed_as=listed.value), (*reader.reports, *listed.diagnostics))
    return Outcome(draft, tuple(reader.reports))


class _Reader:
    """Collects what the lines of a stage say, in order."""

    def __init__(self, names: Names, measures_of: str, in_overall: bool = False, plates: Fraction = ONE) -> None:
        self.names = names
        self.plates = plates
        self.measures_of = measures_of
        self.in_overall = in_overall
        self.items: list[Item] = []
        self.holds: list[Hold] = []
        self.steps: list[Step] = []
        self.keeps: list[Keep] = []
        self.branches: list[DraftBranch] = []
        self.notes: list[str] = []
        self.pictures: list[Picture] = []
        self.reports: list[Diagnostic] = []
        self.for_each_mix = self.from_nothing = False
        self.kept: list[KeptFor] = []
        self.sale_lines: list[Entry] = []
        self.never_under: Fraction | None = None
        self.whole = True
        self.slips: list[str] = []
        self.made_good = False
        self.amount = "10%"
        """An amount as this stage writes them, to be offered where one is missing."""

    def read(self, entries: tuple[Entry, ...]) -> None:
        self.made_good = any(isinstance(e.node, nodes.TopUp) for e in entries)
        amounts = [e.node.amount.unit for e in entries if isinstance(e.node, nodes.MaterialNode)]
        self.amount = "100 g" if amounts and "%" not in amounts else "10%"
        for entry in entries:
            before, self.whole = self.whole, True
            self._line(entry)
            if not self.whole:
                under = (one for one in entry.children if isinstance(one.node, nodes.Unread))
                self.slips += [fold(one.line.body) for one in (entry, *under)]
            self.whole = self.whole and before
        self._judge_twice()

    def _judge_twice(self) -> None:
        """The same thing may stand twice in a stage only if it is weighed at two temperatures; in overall never."""
        seen: dict[tuple[str, Fraction | None], Item] = {}
        for item in self.items:
            key = (item.meaning.key, None) if self.in_overall else (line_key(item.meaning), item.celsius)
            there = seen.setdefault(key, item)
            if there is not item and (self.in_overall or item.meaning.ingredient is not None):
                one_cause = {item.place.line, there.place.line}
                self.reports = [r for r in self.reports if r.name != "heat-in-overall" or r.place.line not in one_cause]
                self.reports.append(stands_twice(item.meaning, item.place, there.meaning, there.place))

    def _line(self, entry: Entry) -> None:
        line = entry.line
        match entry.node:
            case nodes.MaterialNode() as node:
                self._material(node, entry)
            case nodes.BareName(name):
                self._bare(name, entry)
            case nodes.TakeAll(name, at) | nodes.TakeLeft(name, at):
                how = "all" if isinstance(entry.node, nodes.TakeAll) else "left"
                if meaning := self._look_up(name, entry):
                    self._weigh(how, meaning, at, entry)
            case nodes.EverythingElse(at):
                self._weigh("else", Meaning("", "everything else", None, ""), at, entry)
            case nodes.HoldBack(items):
                self.holds += [h for h in (self._hold(part, entry) for part in items) if h]
            case nodes.MadeForEachMix():
                self.for_each_mix = True
            case nodes.StartFromNothing():
                self.from_nothing = True
            case nodes.GoodFor(time, at):
                self._good_for(measures.seconds(time).likely, measures.celsius(at) if at else None, entry)
            case nodes.NeverUnder(mass):
                self.never_under, reports = weight_of(mass, None, self.measures_of, entry.line)
                self.reports += reports
            case nodes.ClauseLine(clauses):
                prose = [clause for clause in clauses if isinstance(clause, nodes.Prose)]
                self.notes += [said.text.text for said in prose if said.what == "note"]
                self.pictures += [
                    Picture(said.text.text, entry.line.place()) for said in prose if said.what == "picture"
                ]
            case nodes.StepNode(verb, _):
                self.steps.append(self._step(verb.text, entry, self.made_good))
            case nodes.Add() as node:
                self._add(node, entry)
            case nodes.LockIn(name):
                if meaning := self._look_up(name, entry):
                    self._use_later(meaning, line.place(name.start, name.end))
                    self._moves("lock in", (Goes(meaning.name, meaning.key),), entry)
            case nodes.Return(name):
                if meaning := self._look_up(name, entry):
                    self._moves("return", (Goes(meaning.name, meaning.key),), entry)
            case nodes.PourOff(name, amount):
                self._pour_off(name, amount, entry)
            case nodes.TopUp(name):
                if meaning := self._look_up(name, entry):
                    self._moves("top up", (Goes(meaning.name, meaning.key),), entry)
            case nodes.KeepNode(how, amount, name):
                self._keep(how, amount, name.text, entry)
            case nodes.DiscardLeft():
                self._keep("discard", None, "", entry)
            case nodes.BranchHead(noun):
                self._branch(noun, entry)
            case nodes.Setting():
                self.sale_lines.append(entry)
            case nodes.Unread(guess):
                self.whole = self.whole and guess not in ("material", "line")
            case _:
                pass  # head lines and blocks are read elsewhere

    def _look_up(self, name: nodes.Word, entry: Entry) -> Meaning | None:
        meaning, reports = self.names.look_up(name, entry.line)
        self.reports += reports
        self.whole = self.whole and meaning is not None
        return meaning

    def _step(self, verb: str, entry: Entry, made_good: bool = False) -> Step:
        step, reports = step_of(verb, entry, self.names, self.measures_of, made_good)
        self.reports += reports
        return step

    def _bare(self, name: nodes.Word, entry: Entry) -> None:
        found = self.names.meaning(name.text)
        place = entry.line.place(name.start, name.end)
        if isinstance(found, Meaning) and found.stage:
            self._weigh("all", found, None, entry)
            return
        self.whole = False
        from manchet.formula.slips import slip_in_a_name  # a sound file has no need of it

        slips = tuple(slip_in_a_name(entry))
        if slips:
            self.reports += slips
            return
        if isinstance(found, Meaning):
            message = f"how much {name.text}? the line gives no amount"
            help = f"write `{name.text} {self.amount}`, or `all of the {name.text}` if overall says how much"
            self.reports.append(report("amount-missing", place, message, help))
            return
        self.reports.append(self.names.no_such_line(name, entry.line, self.amount))

    def _weigh(self, how: str, meaning: Meaning, at: nodes.Amount | None, entry: Entry) -> None:
        if self.steps:
            name = meaning.name
            message = f"{name} is weighed after work has begun"
            help = f"move this line above the first step, `hold back {name}`, and here write `add {name}`"
            if self.names.parts is not NO_PARTS:
                help = f"what goes on later is laid on by a step: `top with {name} 40 g each`"
            self.reports.append(report("weighed-after-a-step", entry.line.place(), message, help))
        self.reports += how_hot(meaning, at, entry, self.in_overall)
        celsius = measures.celsius(at).likely if at else None
        self.items.append(Item(how, meaning, Fraction(0), "", celsius, "", "", None, False, False, entry.line.place()))

    def _material(self, node: nodes.MaterialNode, entry: Entry) -> None:
        if any(isinstance(under.node, nodes.Unread) for under in entry.children):
            self.whole = False  # perhaps a material of its own, indented too deep
        meaning = self._look_up(node.name, entry)
        if meaning is None:
            from manchet.formula.slips import slip_in_an_ingredient  # a sound file has no need of it

            self.reports[-1:] = tuple(slip_in_an_ingredient(node, entry, self.names.knows)) or self.reports[-1:]
            return
        self._weigh("", meaning, node.at, entry)
        count: CountedAmount | None = None
        if node.per is None:
            figure, how = self._figure(node.amount, meaning, entry)
        else:
            from manchet.formula.laid import weight_laid  # few formulas are dishes

            how = "grams"
            figure, count, found = weight_laid(node.amount, meaning, self.names, self.measures_of, entry.line)
            self.reports += found
            figure = figure if figure is None or node.per == "all" else figure * self.plates
        if figure == 0:
            amount = entry.line.place(node.amount.start, node.amount.end)
            message = f"`{entry.line.body[node.amount.start : node.amount.end]}` of {meaning.name} is none"
            help = "write how much goes in, or take out the line"
            self.reports.append(report("nothing-of-it", amount, message, help))
        if not figure:
            self.items.pop()
            self.whole = False
            return
        self.items[-1] = self.items[-1]._replace(
            how=how,
            figure=figure,
            basis=node.basis,
            booking=node.booking if node.booking in ("apart", "as") else "",
            counted_as=node.counted_as.text if node.counted_as else "",
            flour=node.flour,
            to_taste=node.to_taste,
            more=node.more,
            optional=node.optional,
            counted=count,
        )
        self.reports += (
            *not_poured(node, meaning, entry.line),
            *flour_left_out(node, meaning, entry.line),
        )

    def _figure(self, amount: nodes.Amount, meaning: Meaning, entry: Entry) -> tuple[Fraction | None, str]:
        """A share of 1 or grams; None where the amount has no weight we know, or a dish counts it."""
        if amount.unit == "%":
            return (amount.low or Fraction(0)) / 100, "percent"
        if meaning.part is not None or amount.unit == "slices":
            from manchet.formula.laid import weight_laid  # few formulas are dishes

            grams, _, reports = weight_laid(amount, meaning, self.names, self.measures_of, entry.line)
            self.reports += reports
            return grams, "grams"
        grams, reports = weight_of(amount, meaning.ingredient, self.measures_of, entry.line)
        self.reports += reports
        return grams, "grams"

    def _hold(self, part: nodes.Part, entry: Entry) -> Hold | None:
        meaning = self._look_up(part.name, entry)
        if meaning is None:
            return None
        place = entry.line.place(part.name.start, part.name.end)
        if part.amount is None:
            return Hold(meaning, None, "", "", place)
        figure, how = self._figure(part.amount, meaning, entry)
        return Hold(meaning, figure, how, part.basis, place)

    def _add(self, node: nodes.Add, entry: Entry) -> None:
        goes: list[Goes] = []
        celsius = measures.celsius(node.at).likely if node.at else None
        for part in node.items:
            meaning = self._look_up(part.name, entry)
            if meaning is None:
                continue
            place = entry.line.place(part.name.start, part.name.end)
            if part.basis == "the dough" and part.amount is not None:
                share = (part.amount.low or Fraction(0)) / 100
                item = Item("of dough", meaning, share, "the dough", celsius, "", "", None, False, True, place)
                self.branches.append(DraftBranch("", (), (item,), place))
                goes.append(Goes(part.name.text, meaning.key, None, share, celsius=celsius))
                continue
            figure, how = None, ""
            if part.amount is not None:
                figure, how = self._figure(part.amount, meaning, entry)
            if meaning.stage:
                self._use_later(meaning, place)
            goes.append(Goes(part.name.text, meaning.key, figure, None, how == "percent", node.as_needed, celsius))
        if node.up_to is not None and goes:
            more, how = self._figure(node.up_to, Meaning("", "", None, ""), entry)
            goes[-1] = goes[-1]._replace(share=more, per_base=how == "percent", by_feel=True, beyond=True)
        self.steps.append(self._step("add", entry)._replace(goes=tuple(goes), additions=node.additions))

    def _pour_off(self, name: nodes.Word | None, amount: nodes.Amount, entry: Entry) -> None:
        meaning = self._look_up(name or nodes.Word("water", 0, 0), entry)
        if meaning is None:
            return
        figure, how = self._figure(amount, meaning, entry)
        if figure is None:
            self.whole = False
            return
        poured = PouredOff(meaning.name, figure, water_in(meaning.ingredient), how == "percent")
        self.steps.append(self._step("pour off", entry)._replace(poured=poured))

    def _sale(self, lines: list[Entry]) -> Sale | None:
        if not lines:
            return None
        from manchet.formula.sale import sale_of  # few branches are sold otherwise than their formula

        sale = sale_of(lines)
        self.reports += sale.diagnostics
        return sale.value

    def _use_later(self, meaning: Meaning, place: Place) -> None:
        """A stage that comes in by a step is used here, all of it, unless it was weighed above and held back."""
        if meaning.stage and all(item.meaning.key != meaning.key for item in self.items):
            self.items.append(Item("all", meaning, Fraction(0), "", None, "", "", None, False, True, place))

    def _moves(self, verb: str, goes: tuple[Goes, ...], entry: Entry) -> None:
        self.steps.append(self._step(verb, entry)._replace(goes=goes))

    def _keep(self, how: str, amount: nodes.Amount | None, name: str, entry: Entry) -> None:
        grams = None
        found = self.names.meaning(name) if name else None
        ingredient = found.ingredient if isinstance(found, Meaning) else None
        key = fold(ingredient.name if ingredient else name)
        if amount is not None:
            grams, reports = weight_of(amount, ingredient, self.measures_of, entry.line)
            self.reports += reports
        self.keeps.append(Keep(grams, name, key, how, entry.line.place()))
        verb = "discard" if how == "discard" else "keep"
        goes = (Goes(name, key),) if name else ()
        self.steps.append(self._step(verb, entry)._replace(goes=goes))

    def _good_for(self, seconds: Fraction, celsius: Range | None, entry: Entry) -> None:
        kept = KeptFor(seconds, celsius, entry.line.place())
        there = next((one for one in self.kept if one.way == kept.way), None)
        if there is not None:
            message, help = "it is said twice how long it is good for", "keep one line for each way of keeping it"
            also = (there.place, "the first is here")
            fixes = (without_line(kept.place, "leave out this line"),)
            self.reports.append(report("said-twice", kept.place, message, help, also, fixes=fixes))
            return
        self.kept.append(kept)

    def _branch(self, noun: nodes.Word, entry: Entry) -> None:
        inner = _Reader(self.names, self.measures_of)
        inner.steps = []
        inner.read(entry.children)
        self.reports += inner.reports
        self.slips += inner.slips
        self.notes += inner.notes
        self.pictures += inner.pictures
        added = tuple(item for branch in inner.branches for item in branch.added)
        place = entry.line.place(noun.start, noun.end)
        self.branches.append(DraftBranch(noun.text, tuple(inner.steps), added, place, self._sale(inner.sale_lines)))
        for item in inner.items:
            message = f"{item.meaning.name} is weighed after the dough is divided"
            help = f"write `add {item.meaning.name} 12% of the dough`, or weigh it above"
            self.reports.append(report("weighed-in-a-branch", item.place, message, help))

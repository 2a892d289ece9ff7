"""What the pieces of a formula weigh, and how much dough and flour they take."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.tins import TinRule, dough_for_tin, tin_called, tin_rule
from manchet.batch.usual_bake_loss import dough_for_baked, piece_for_baked
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.model import Branch, Formula, Makes, Portion, Way
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import PLAIN, Kitchen
from manchet.records import NamedTuple

NOTHING = Fraction(0)
ONE = Fraction(1)
OF_NO_AMOUNT = Fraction(1000)
"""Grams that are made of a preparation in per cent where nobody says how much. Our own rule."""


class PieceWeights(NamedTuple):
    """What a formula's pieces weigh in a kitchen, by whose tins some of them go."""

    formula: Formula
    kitchen: Kitchen = PLAIN

    def of_one(self, makes: Makes) -> Fraction | None:
        """Grams of dough for one piece: as said, from its baked weight, or from its tin; None if that is not known.

        From a baked weight an estimate where the file gives no bake loss.
        """
        if makes.grams is not None:
            return makes.grams
        if makes.state == "baked":
            return piece_for_baked(self.formula, makes)
        tin = dough_for_tin(makes.tin, self._tin_rule(makes), self.kitchen)
        return None if tin is None else tin.grams

    def _tin_rule(self, makes: Makes) -> TinRule:
        return tin_rule(self.formula, tin_called(makes.tin, self.kitchen))

    def dough(self, makes: tuple[Makes, ...]) -> Outcome[Fraction | None]:
        """Grams of divided dough that pieces take; None where a tin's volume is not known here.

        What a branch adds after dividing is part of its pieces' weight, not of the dough.
        """
        dough = NOTHING
        for line in makes:
            grams = self.of_one(line)
            if grams is None and line.state == "baked":
                return Outcome(None, (_no_bake_loss(self.formula, line),))
            if grams is None:
                return Outcome(None)
            number = ONE if line.number is None else line.number
            dough += number * grams / (1 + added_after_dividing(self.formula, line.noun))
        return Outcome(dough * (1 - self.formula.loss_in_its_pot))

    def flour(self, makes: tuple[Makes, ...]) -> Outcome[Fraction | None]:
        """Grams of all flour for some pieces, losses made up: divided / (1 - dough loss) / dough share."""
        dough, reports = self.dough(makes)
        if dough is None:
            return Outcome(None, reports)
        return Outcome(dough / (1 - self.formula.dough_loss) / self.formula.dough_share)

    def written_flour(self) -> Outcome[Fraction | None]:
        """Grams of all flour for the amount the file asks for; None where it asks for a tin that is not known here."""
        formula = self.formula
        if formula.is_in_percent:
            return Outcome(OF_NO_AMOUNT / formula.dough_share if formula.dough_share else ONE)
        if formula.way is Way.BY_WEIGHT:
            reports = self.dough(formula.makes).diagnostics
            return Outcome(None if reports else formula.own_flour, reports)
        return self.flour(formula.makes) if formula.from_flour is None else Outcome(formula.from_flour)


def _no_bake_loss(formula: Formula, line: Makes) -> Diagnostic:
    message = (
        f"{line.noun or 'the bread'}: a baked weight, but the head has no bake loss, and {_what(formula, line)} has "
        "none that could be taken instead"
    )
    help = "add a line such as `bake loss 13%`, or give the weight as dough"
    return report("no-bake-loss-for-baked-weight", line.place, message, help)


def _what(formula: Formula, line: Makes) -> str:
    if line.number is None:
        return "bread that is not made by the piece"
    return (
        f"{'an' if formula.kind[:1] in 'aeiou' else 'a'} {formula.kind}" if formula.kind else "a formula without a kind"
    )


def dough_span(formula: Formula) -> tuple[Fraction, Fraction] | None:
    """Grams of divided dough that the file's pieces take, least and most; apart only where a baked weight is told by an
    estimate. None where a tin decides."""
    spans = [dough_for_baked(formula, line) if line.state == "baked" else None for line in formula.makes]
    ends = []
    for end in range(2):
        lines = (
            line if span is None else line._replace(grams=span[end])
            for line, span in zip(formula.makes, spans, strict=True)
        )
        dough = PieceWeights(formula).dough(tuple(lines)).value
        if dough is None:
            return None
        ends.append(dough)
    return ends[0], ends[1]


def left_at_the_scale(batch: Batch) -> Fraction:
    """Grams of divided dough beyond what the pieces take; 0 where the batch is not made by the piece."""
    if not batch.pieces:
        return NOTHING
    return batch.divided - sum(
        (p.number * p.grams / (1 + added_after_dividing(batch.formula, p.noun)) for p in batch.pieces), NOTHING
    ) * (1 - batch.formula.loss_in_its_pot)


def branch_for(formula: Formula, noun: str) -> Branch | None:
    return next((b for b in formula.branches if not b.noun or same_noun(b.noun, noun)), None)


def added_after_dividing(formula: Formula, noun: str) -> Fraction:
    """What a branch adds to its dough, per gram of it."""
    branch = branch_for(formula, noun)
    return sum((p.share for p in branch.added), NOTHING) if branch else NOTHING


def branch_additions(branch: Branch, batch: Batch) -> list[tuple[Portion, Fraction]]:
    """What one sort gets of its own, and grams of it: of the dough alone, for a piece is weighed with it."""
    pieces = sum((p.number * p.grams for p in batch.pieces if same_noun(p.noun, branch.noun)), NOTHING)
    dough = pieces / (1 + sum((portion.share for portion in branch.added), NOTHING))
    return [(portion, portion.share * dough) for portion in branch.added]

"""What is done, what comes of it and what is in it, as plain data: added to the figures of the same work."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.figures.exact import quantity
from manchet.figures.step_report import step_data
from manchet.formula.model import Branch, Stage
from manchet.label.allergens import AllergenAnswer, AllergenFinding, all_findings
from manchet.label.contact import may_contain

HOUR = 3600


def work_report(work: Work, seconds: Fraction) -> dict[str, Any]:
    """`pieces`, `branches`, `allergens` and `hours`. `seconds`: from the first job to the bread that is ready."""
    return {
        "pieces": [
            {
                "noun": piece.noun,
                "number": quantity(piece.number, ""),
                "dough_grams": quantity(piece.grams, "g"),
                "baked_grams": None if piece.baked_grams is None else quantity(piece.baked_grams, "g"),
                **({"tin": piece.tin} if piece.tin else {}),
            }
            for piece in work.batch.pieces
        ],
        "branches": [_branch(branch) for branch in work.formula.branches],
        "allergens": [_allergens(work, piece) for piece in sold_pieces(work)],
        "hours": quantity(seconds / HOUR, "h"),
    }


def stage_work(stage: Stage) -> dict[str, Any]:
    """What is held back of a stage at the start, by name, and its steps."""
    held = dict.fromkeys(portion.name for portion in stage.portions if portion.held)
    return {"held_back": list(held), "steps": [step_data(step) for step in stage.steps]}


def _branch(branch: Branch) -> dict[str, Any]:
    adds = [{"name": portion.name, "share_of_dough": quantity(portion.share * 100, "%")} for portion in branch.added]
    return {"noun": branch.noun, "adds": adds, "steps": [step_data(step) for step in branch.steps]}


def _allergens(work: Work, piece: SoldPiece) -> dict[str, Any]:
    """An allergen that is in no list here is in none of its ingredients, and nothing more is said of it."""
    findings = all_findings(piece)
    return {
        "noun": piece.noun,
        "contains": [_because(one) for one in findings if one.answer is AllergenAnswer.HAS],
        "not_known": [_because(one) for one in findings if one.answer is AllergenAnswer.NOT_KNOWN],
        "may_contain": [{"allergen": one.allergen, "because": one.because} for one in may_contain(work, piece)],
    }


def _because(finding: AllergenFinding) -> dict[str, Any]:
    return {"allergen": finding.allergen, "because": [one.ingredient.name for one in finding.because]}

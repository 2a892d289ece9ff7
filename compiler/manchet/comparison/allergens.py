"""What is to be said of allergens, now and before: through blends, preparations and what touches the bread. They outrank all else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.comparison.pieces import paired_pieces
from manchet.comparison.values import AllergenChange, Answer, UnknownAllergens
from manchet.label.allergens import AllergenAnswer, AllergenFinding, all_findings
from manchet.label.contact import may_contain
from manchet.records import NamedTuple

NOT_IN_IT: tuple[Answer, tuple[str, ...]] = ("not in it", ())


class ToldAllergens(NamedTuple):
    """Of one piece: the answer of each allergen that is not simply absent, with its reasons; ingredients of which nothing is known."""

    answers: Mapping[str, tuple[Answer, tuple[str, ...]]]
    unknown: tuple[str, ...]


def allergen_changes(before: Work, after: Work) -> Iterator[AllergenChange | UnknownAllergens]:
    """Once, where it is the same of all sorts that are made; else of each sort. A sort that only one side makes is told elsewhere."""
    each = {
        new.noun: list(_changes(_told(before, old), _told(after, new)))
        for old, new in paired_pieces(sold_pieces(before), sold_pieces(after))
        if old is not None and new is not None
    }
    kinds = list(each.values())
    common = [one for one in kinds[0] if all(one in others for others in kinds)] if kinds else []
    yield from common
    for noun, changes in each.items():
        yield from (one._replace(noun=noun) for one in changes if one not in common)


def _told(work: Work, piece: SoldPiece) -> ToldAllergens:
    findings = all_findings(piece)
    nothing_known = _wholly_unknown(findings)
    answers: dict[str, tuple[Answer, tuple[str, ...]]] = {}
    for one in may_contain(work, piece):
        answers[one.allergen] = "may be in it", (one.because,) if one.because else ()
    for finding in findings:
        names = tuple(because.ingredient.name for because in finding.because)
        if finding.answer is AllergenAnswer.HAS:
            answers[finding.allergen] = "in it", names
        elif finding.answer is AllergenAnswer.NOT_KNOWN:
            asked = tuple(name for name in names if name not in nothing_known)
            if asked:
                answers[finding.allergen] = "not known", asked
    return ToldAllergens(answers, nothing_known)


def _wholly_unknown(findings: tuple[AllergenFinding, ...]) -> tuple[str, ...]:
    """Ingredients of whose allergens nothing is known at all: one line, not one for each allergen."""
    unknown = (one for one in findings if one.answer is AllergenAnswer.NOT_KNOWN)
    entries = (because.ingredient for one in unknown for because in one.because)
    return tuple(dict.fromkeys(entry.name for entry in entries if entry.allergens is None and not entry.asked))


def _changes(before: ToldAllergens, after: ToldAllergens) -> Iterator[AllergenChange | UnknownAllergens]:
    for allergen in dict.fromkeys((*after.answers, *before.answers)):
        was, why_before = before.answers.get(allergen, NOT_IN_IT)
        now, why_after = after.answers.get(allergen, NOT_IN_IT)
        if was != now:
            # Gone from the list is not out of the bread, where something came in of which nobody knows.
            if now == "not in it" and after.unknown:
                now, why_after = "not known", after.unknown
            if was == "not in it" and before.unknown:
                was, why_before = "not known", before.unknown
            yield AllergenChange(allergen, "", was, now, why_before, why_after)
    for name in dict.fromkeys((*after.unknown, *before.unknown)):
        if (name in before.unknown) != (name in after.unknown):
            yield UnknownAllergens(name, "", name in before.unknown, name in after.unknown)

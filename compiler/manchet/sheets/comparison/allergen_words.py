"""What is said of an allergen that came, went, or is no longer known."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.comparison.values import AllergenChange, UnknownAllergens
from manchet.sheets.comparison.view import ChangedLine
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.allergens import called_in

_ABOUT_BEFORE = frozenset({"no_longer", "may_no_longer", "now_known"})
"""Phrases whose reason is that of the older side."""


def allergen_line(change: AllergenChange, work: Work, m: Measures) -> ChangedLine:
    """`now contains MILK (from butter)`, by the name it has where the house sells."""
    phrase = _phrase(change)
    said = m.words.say(f"compared.{phrase}", called_in(work, change.allergen).upper())
    reasons = change.why_before if phrase in _ABOUT_BEFORE else change.why_after
    told = _because(phrase, ", ".join(reasons), m) if reasons else ""
    text = f"{said} ({told})" if told else said
    return _grave(text, change.noun, m)


def unknown_line(change: UnknownAllergens, m: Measures) -> ChangedLine:
    said = m.words.say("compared.unknown" if change.after else "compared.unknown_no_longer", change.ingredient)
    return _grave(said, change.noun, m)


def _grave(text: str, noun: str, m: Measures) -> ChangedLine:
    said = m.words.say("compared.of_sort", noun, text) if noun else text
    return ChangedLine(said, said, grave=True)


def _phrase(change: AllergenChange) -> str:
    match change.after:
        case "in it":
            return "now_contains"
        case "not known":
            return "contained_not_known" if change.before == "in it" else "not_known"
        case "may be in it":
            return "was_may" if change.before == "in it" else "may_contain"
    return {"in it": "no_longer", "may be in it": "may_no_longer"}.get(change.before, "now_known")


def _because(phrase: str, reasons: str, m: Measures) -> str:
    """Where it comes from, or came from; of what nobody knows, and of what may be, the reason alone."""
    known = {"now_contains": "compared.because", "no_longer": "compared.because_was"}
    return m.words.say(known[phrase], reasons) if phrase in known else reasons

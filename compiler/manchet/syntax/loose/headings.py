"""Headings of stages, the head of a formula, and the lines of a kitchen."""

from __future__ import annotations

from manchet.diagnostics.suggest import nearest
from manchet.syntax.loose.rules import Rewriter, any_of, rule
from manchet.syntax.loose.words import NUMBERS, STAGE_KINDS, STAGE_PHRASES
from manchet.syntax.openings import OPENINGS
from manchet.syntax.vocabulary import STAGES

_OF_ALL = (
    r"(?:of (?:all (?:the )?|the (?:total|whole|entire) |total )flour|(?:of )?(?:the )?(?:pff|pre-?fermented flour))"
)

_STAGE_FIRST = frozenset(stage.word.partition(" ")[0] for stage in STAGES) | frozenset(OPENINGS["formula"])


def _without_its_with(heading: str) -> str:
    """What is before the share, but for a `with` that belongs to it, well written or not."""
    before, _, last = heading.rpartition(" ")
    return before.rstrip(",") if before and nearest(last.lower(), ("with",)) else heading


HEADINGS: tuple[Rewriter, ...] = (
    rule(rf"\b{_OF_ALL}\b", "of all flour"),
    rule(
        r"^(.*?[^\W\d_]),? ?\(?(?:with |at |using )?(<n>) ?% of all flour\)?$",
        lambda m: f"{_without_its_with(m[1].rstrip(' ,('))} with {m[2]}% of all flour",
    ),
    rule(rf"^({any_of(STAGE_PHRASES)})(?= with\b|$)", lambda m: f"{STAGE_PHRASES[m[1].lower()]} {m[1]}"),
    rule(
        rf"^((?:[^\W\d_]+ ){{1,3}}({any_of(STAGE_KINDS)}))(?= with\b|$)",
        lambda m: m[1] if m[1].partition(" ")[0].lower() in _STAGE_FIRST else f"{m[2]} {m[1]}",
    ),
)
HEAD: tuple[Rewriter, ...] = (
    rule(r"^(?:yields?|makes?) ", "makes "),
    rule(r"^(makes [0-9]+ [^\W\d_][^\d]*?) (?:of|at|à) (?=<n>)", r"\1 at "),
    rule(r"^(makes .*\b(?:dough|baked)) (?:each|apiece)$", r"\1"),
    rule(r"^(makes <n> k?g) of dough$", r"\1 dough"),
    rule(r"^notes? (?=\")", "note "),
    rule(r"^for (<n> ?kg) (?:of )?flour$", r"from \1 flour"),
    rule(r"^from (<n> ?kg) of flour$", r"from \1 flour"),
)

SETTINGS: tuple[Rewriter, ...] = (
    rule(r"^(recovers) in ", r"\1 "),
    rule(r"^([0-9]+) (decks|hands)$", r"\2 \1"),
    rule(r"^([0-9]+) (?:bakers|people|staff)$", r"hands \1"),
    rule(r"^(air|flour|tap) (?:temp(?:erature|\.)? |is |at )+(?=<n>)", r"\1 "),
    rule(r"^(price <n> ?[A-Z]{3}) ?(?:/|per|a) ?(kg|g|l|lb)$", r"\1 for 1 \2"),
    rule(r"^(price <n> ?[A-Z]{3}) ?(?:/|per) ?(?=<n>)", r"\1 for "),
    rule(
        r"^(?:speed 1|1st(?: speed)?|first(?: speed)?|low(?: speed)?|slow speed)[ :=]+(?=<n> ?(?:rpm|turns?))", "slow "
    ),
    rule(
        r"^(?:speed 2|2nd(?: speed)?|second(?: speed)?|high(?: speed)?|fast speed)[ :=]+(?=<n> ?(?:rpm|turns?))",
        "fast ",
    ),
    rule(r"^(slow|fast):? (<n>) ?(?:rpm|turns? ?(?:/|per ) ?min(?:ute|\.)?)$", r"\1 \2 turns a minute"),
    rule(r"^(falls <n>(?:-<n>)? [CF]) ?(?:/ ?|per )h(?:our)?\b", r"\1 an hour"),
    rule(rf"^(hands) ({any_of(NUMBERS)})$", lambda m: f"{m[1]} {NUMBERS[m[2].lower()]}"),
)

"""Reports on stages that are used by nobody, or by too many."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import line_under, without_line
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft, Item
from manchet.formula.percents import percent
from manchet.syntax.vocabulary import BRINGS_IN


def heading_of(draft: Draft) -> str:
    """A stage's heading as it is written, without its share."""
    return draft.word if draft.word == draft.name else f"{draft.word} {draft.name}"


def may_be_used(draft: Draft, drafts: Iterable[Draft]) -> bool:
    """Whether a line that was not understood may take this stage."""
    return any(other.may_use(draft.name) for other in drafts)


def never_used(draft: Draft) -> Diagnostic:
    help = f"write `{draft.name}` in the dough, or `keep what is left as …` in {draft.name}"
    return report("never-used", draft.place, f"{draft.name} is made and never used", help)


def used_twice(draft: Draft, by: list[tuple[str, Place]]) -> Diagnostic:
    first, again = by[0], by[1]
    message = f"all of {draft.name} is in {first[0]} already, and {again[0]} takes it again"
    help = "leave out one of the two lines"
    fixes = (without_line(again[1], "leave out this line"),)
    return report("used-twice", again[1], message, help, (first[1], "the first takes all of it"), fixes=fixes)


def everything_else_missing(dough: Draft, left: list[Item]) -> Diagnostic:
    """Several lines of overall go nowhere, and nothing takes the rest: one slip, one report."""
    names = ", ".join(item.meaning.name for item in left)
    message = f"these lines of overall go into no stage, or not all of them: {names}"
    title = "write `everything else` under `dough`"
    return report(
        "everything-else-missing", dough.place, message, fixes=(line_under(dough.place, "  everything else", title),)
    )


def elses_twice(drafts: Iterable[Draft]) -> Iterator[Diagnostic]:
    """Each `everything else` after the first, in the order of the work."""
    takers = [(draft, item) for draft in drafts for item in draft.items if item.how == "else"]
    return (_everything_else_twice(item, takers[0][0]) for _, item in takers[1:])


def _everything_else_twice(item: Item, first: Draft) -> Diagnostic:
    message = f"`everything else` is in {first.name} already, so nothing is left here"
    help = "leave out one of the two lines"
    fixes = (without_line(item.place, "leave out this line"),)
    return report("everything-else-twice", item.place, message, help, (first.place, "this stage takes it"), fixes=fixes)


def more_than_all_flour(draft: Draft) -> Diagnostic:
    message = f"{draft.name} is to weigh {percent(draft.share or Fraction(0))} of all flour, and there is 100%"
    help = "check the figure after `with`: it is this stage's part of all the flour"
    return report("takes-more-than-there-is", draft.place, message, help)


Takes = list[tuple[Fraction, str, Place]]
"""How much each stage takes of a line of overall, and where."""


def more_than_overall(item: Item, left: Fraction, takes: Takes) -> Diagnostic:
    name, taken = item.meaning.name, percent(item.figure - left)
    message = f"the stages take {taken} {name}, overall has {percent(item.figure)}: {_sum(takes)}"
    help = f"raise {name} in overall to {taken}, or take less"
    return report("takes-more-than-there-is", takes[-1][2], message, help, (item.place, "overall says this"))


def left_in_overall(item: Item, left: Fraction, takes: Takes) -> Diagnostic:
    name = item.meaning.name
    rest = f"{percent(left)} of it goes nowhere ({_sum(takes)})" if takes else "goes into no stage"
    help = f"use it: `{name}` in a stage, or `everything else` in the dough"
    return report("never-used", item.place, f"{name} {percent(item.figure)} is in overall, but {rest}", help)


def _sum(takes: Takes) -> str:
    return " + ".join(f"{stage} {percent(share)}" for share, stage, _ in takes)


def moved_unweighed(key: str, drafts: Iterable[Draft]) -> bool:
    """Whether a stage holds back or adds what no stage weighs: that line has its report, the unused one needs none."""
    return any(
        any(hold.meaning.key == key for hold in draft.holds)
        or any(
            goes.key == key and goes.of_dough is None and not goes.beyond
            for step in draft.steps
            if step.verb in BRINGS_IN
            for goes in step.goes
        )
        for draft in drafts
    )

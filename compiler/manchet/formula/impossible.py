"""Reports on work that cannot be done in any order, and on cultures that go back without having come in."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import without_line
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft
from manchet.formula.order_of_work import circle
from manchet.formula.shares import Drafts
from manchet.larder.book import Larder


def circle_reports(
    drafts: Mapping[str, Draft], uses: Mapping[str, tuple[str, ...]], larder: Larder, so_far: Iterable[Diagnostic]
) -> Iterator[Diagnostic]:
    """What to say of stages that go round in a circle: a name taken for a stage's, a stage in itself, or a true circle."""
    path = [drafts[key] for key in circle(uses)]
    first = path[0]
    if any(draft is not first for draft in path):
        chain = " goes into ".join(draft.name for draft in reversed(path))
        yield report("circle", first.place, f"these stages go round in a circle: {chain}", "leave out one of the uses")
        return
    if any(one.name == "stage-named-like-ingredient" for one in so_far):
        return
    if larder.ingredient(first.name) is not None:
        message = f"the stage {first.name} has the same name as the ingredient it weighs"
        help = f"give the stage another name, such as `{first.word} soaked {first.name}`"
        yield report("stage-named-like-ingredient", first.place, message, help)
        return
    item = next(item for item in first.items if item.meaning.stage == first.key)
    yield report("added-to-itself", item.place, f"{first.name} goes into itself", "leave out this line")


def return_reports(drafts: Drafts) -> Iterator[Diagnostic]:
    """A report for each `return` of a culture that neither this stage nor one before it weighs."""
    for draft in drafts.stages.values():
        for step in draft.steps:
            if step.verb != "return":
                continue
            for goes in step.goes:
                if not _came_in(goes.key, draft, drafts):
                    message = f"{goes.name} goes back to the pot, but none came in"
                    help = f"weigh {goes.name} into {draft.name} or a stage before it, or leave out this line"
                    fixes = (without_line(step.place, "leave out this line"),)
                    yield report("return-of-nothing", step.place, message, help, fixes=fixes)


def _came_in(culture: str, draft: Draft, drafts: Drafts) -> bool:
    return any(
        item.meaning.key == culture
        for (stage, key), taken_out in drafts.returned.items()
        if key == culture and taken_out == draft.key
        for item in drafts.stages[stage].items
    )

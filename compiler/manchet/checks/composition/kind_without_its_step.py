"""A kind that promises something the steps never do: boiled but never boiled, laminated but nothing locked in."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import all_steps
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "kind-without-its-step"
ABOUT = ("kind boiled", "kind laminated", "kind lye", "kind fried", "kind filled")
PROMISES = {
    "boiled": (("boil", "simmer"), "boil 45 s"),
    "laminated": (("lock in",), "lock in butter block"),
    "lye": (("dip", "brush"), "dip in lye bath 4 g each"),
    "fried": (("fry",), "fry 2 min a side at 175 C"),
    "filled": (("fill", "spread", "add"), "fill with … 30 g each"),
}


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if formula.kind not in PROMISES or formula.preparation:
        return
    verbs, example = PROMISES[formula.kind]
    verbs_used = {step.verb for step in all_steps(formula)}
    if not verbs_used or verbs_used & {*verbs, "do"}:
        return
    message = f"{formula.name} is of kind {formula.kind}, but no step does it"
    yield report(NAME, formula.place, message, f"add a line such as `{example}`, or change the kind")

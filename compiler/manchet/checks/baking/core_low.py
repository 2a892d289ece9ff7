"""The last bake ends at a core too low for this kind: the crumb is still raw or gummy.

With raw meat or fish inside, what is measured is that: `cook-meat-through` says what it has to come to, and no other figure stands beside it.
"""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "core-low"
ABOUT = ("core",)


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("core-least", work.kind)
    if least is None:
        return
    for _, steps in work.formula.ways:
        cores = [(step, r.value.likely) for step in of_verbs(steps, "bake") for r in step.reaches if r.what == "core"]
        if not cores:
            continue
        step, core = cores[-1]
        if core < least and not _is_measured_in_meat(work):
            message = f"a core of {degrees(work.kitchen, core)} leaves a {work.kind} raw inside; {degrees(work.kitchen, least)} is the least we know of"
            yield report(NAME, step.place, message, "bake it on to a higher core, or check the figure")


def _is_measured_in_meat(work: Work) -> bool:
    from manchet.account.piece import sold_pieces  # asked of a low core alone
    from manchet.label.allergens import every_content
    from manchet.larder.foods import raw_meat_or_fish

    foods = [
        (one.ingredient, one.ingredient.name) for piece in sold_pieces(work) for one in every_content(piece.mixture)
    ]
    return any(raw_meat_or_fish(*food) for food in foods)

"""More pieces of this size than the measured floor of the oven has room for, by what the kitchen says it holds."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.oven.curve import first_bakes, oven_of
from manchet.figures.oven.floor import load_of
from manchet.formula.nouns import same_noun

NAME = "oven-holds-too-many"
ABOUT = ("kitchen oven",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    slack = limit("oven-load-slack")
    assert slack is not None
    for noun, first in first_bakes(work.formula):
        oven = oven_of(first, work.kitchen)
        for piece in work.batch.pieces if oven is not None else ():
            load = load_of(work, piece, oven) if noun in ("", piece.noun) and oven else None
            said = next((n for n, held in oven.holds if same_noun(held, piece.noun)), 0) if oven else 0
            if load is None or oven is None or not said or said <= load.number * slack:
                continue
            size = f"{int(load.piece.wide) // 10} x {int(load.piece.deep) // 10} cm"
            message = (
                f"{oven.name} holds {said} {piece.noun}, says the kitchen; on its floor there is room for about "
                f"{load.number} of about {size}"
            )
            help = f"correct `holds {said} {piece.noun}`, `floor` or `door` in the kitchen"
            yield report(NAME, first.place, message, help)

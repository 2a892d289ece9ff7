"""A food that is sold with a label, with a lecithin, a vegetable fat or an improver of which nobody says what it comes from."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.declaration import labelled_pieces

NAME = "label-source-unknown"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        for name in dict.fromkeys(one.name for label in labels for one in label.sourceless):
            if name not in told:
                told.add(name)
                message = f"{name}: nothing says what it is made from, so no label can be printed"
                help = (
                    f"write under `{name}` in the larder what its packet says: `from soya`, `from sunflower`, `from rapeseed`, `from egg`, `from palm`;"
                    ' of what is mixed `listed as "…"`, with all that is in it'
                )
                yield report(NAME, line_that_brings(work, piece, name), message, help)

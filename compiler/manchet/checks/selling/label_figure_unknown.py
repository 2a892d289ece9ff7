"""A food that is sold with a nutrition declaration, of which a figure can't be told: an ingredient's composition is not known."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.declaration import labelled_pieces
from manchet.label.nutrition import VOLUNTARY, PanelLine

NAME = "label-figure-unknown"
ABOUT = ("sold",)

EXEMPT = (
    "only what is made in small quantities, and sold by its maker or in a shop nearby, may do without the table"
    " (Regulation (EU) 1169/2011, Annex V, no. 19)"
)


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        widest: dict[str, list[PanelLine]] = {}
        for label in labels:
            for line in () if label.panel is None else label.panel.lines:
                if not line.is_known and line.name not in told:
                    told.add(line.name)
                    widest.setdefault(line.wide[0].ingredient.name, []).append(line)
        for name, lines in widest.items():
            words = list_of_words(
                tuple(f"{line.name.removesuffix(' kj').removesuffix(' kcal')} {line.between}" for line in lines), "and"
            )
            help = f"write the `per 100 g` of {name} in the larder, from its maker's sheet"
            if all(line.name in VOLUNTARY for line in lines):
                message = f"the table of nutrition leaves something out: per 100 g {words}, because of {name}"
            else:
                message = (
                    f"the label has no table of nutrition, for a figure is open: per 100 g {words}, because of {name}"
                )
                help += f"; {EXEMPT}"
            yield report(NAME, line_that_brings(work, piece, name), message, help)

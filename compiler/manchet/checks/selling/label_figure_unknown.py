"""A food that is sold with a nutrition declaration, of which a figure can't be told: an ingredient's composition is not known."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.declaration import labelled_pieces
from manchet.label.nutrition import PanelLine

NAME = "label-figure-unknown"
ABOUT = ("sold",)


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
            message = f"the label leaves a figure open: per 100 g {words}, because of {name}"
            help = f"write the `per 100 g` of {name} in the larder, from its maker's sheet"
            yield report(NAME, line_that_brings(work, piece, name), message, help)

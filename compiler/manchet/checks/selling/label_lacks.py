"""A food that is sold with a label, of which the label has to say more than the files do."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.label.declaration import labelled_pieces

NAME = "label-lacks"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    sorts = labelled_pieces(work)
    for piece, labels in sorts:
        lacks = {lack: label.way.place for label in labels for lack in label.lacks}
        if not lacks:
            continue
        what = f"{work.formula.name}, {piece.noun}" if piece.noun and len(sorts) > 1 else work.formula.name
        here = tuple(f"`{lack.write}`" for lack in lacks if not lack.in_kitchen)
        there = tuple(f"`{lack.write}`" for lack in lacks if lack.in_kitchen)
        told = [f"write {list_of_words(here, 'and')}"] if here else []
        told += [f"{'in' if here else 'write in'} the kitchen {list_of_words(there, 'and')}"] if there else []
        missing = list_of_words(tuple(lack.what for lack in lacks), "and")
        message = f"no label can be printed for {what}: it does not say {missing}"
        yield report(NAME, next(iter(lacks.values())), message, "; ".join(told))

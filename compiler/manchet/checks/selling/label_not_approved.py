"""A label that nobody has approved, or that is another one since."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.declaration import labelled_pieces

NAME = "label-not-approved"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    labels = [one for sort in labelled_pieces(work) for one in sort.labels if not one.is_withheld]
    wanting = [one for one in labels if not one.is_approved]
    if not wanting:
        return
    name, approval = work.formula.name, wanting[0].approval
    marks = " and ".join(dict.fromkeys(one.mark for one in labels))
    if approval is None:
        message = f"nobody has approved the label of {name}: it prints NOT APPROVED"
        help = f"when a competent person has read it, add a line such as `label approved 2026-11-20 by Ada as {marks}`"
        yield report(NAME, wanting[0].way.place, message, help)
        return
    now = f"`label approved {approval.date} by {approval.by} as {marks}`"
    if approval.labels:
        message = f"the label of {name} is no longer the one that {approval.by} approved on {approval.date}: it prints NOT APPROVED"
        help = f"have it read again, then write {now} with that day's date"
    else:
        message = f"{approval.by} approved a label of {name}, and the line does not say which: it prints NOT APPROVED"
        help = f"if it is the label as it prints now, write {now}"
    yield report(NAME, approval.place, message, help)

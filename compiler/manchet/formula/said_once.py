"""A remark that holds for many lines of a formula, said at the first of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Related

_OF_A_NAME = frozenset({"unknown-ingredient", "ambiguous-ingredient"})


def say_once(reports: Iterable[Diagnostic]) -> Iterator[Diagnostic]:
    """The reports, with those that one change puts right made into one: spoons, and a name that means nothing yet."""
    groups: dict[tuple[str, str], list[Diagnostic]] = {}
    for report in reports:
        what = "" if report.name == "measured-by-spoon" else report.message
        groups.setdefault((report.name, what), []).append(report)
    for (name, _), group in groups.items():
        if name == "measured-by-spoon":
            more = len(group) - 1
            also = f" ({more} more {'line' if more == 1 else 'lines'} here)" if more else ""
            yield group[0]._replace(message=group[0].message + also)
        elif name in _OF_A_NAME:
            first, *others = sorted(group, key=lambda report: report.place.line)
            yield first._replace(related=(*first.related, *(Related(o.place, "it is here too") for o in others)))
        else:
            yield from group

"""Show what is otherwise in a bread, in a baker's terms: at most ten lines, the gravest first.

Each of OLD and NEW is the name of a formula, a file, or a revision of git: HEAD~2, HEAD~2:FILE, HEAD~2 'NAME'. Of a revision the whole
bakery counts, its larder and kitchen too. Without NEW a revision is compared with the files as they are now; a name or a file alone is
compared with its last commit. Ends with status 0 if nothing is otherwise, 1 if something is.
"""

from __future__ import annotations

import argparse
import os
import sys
from typing import TYPE_CHECKING

from manchet.cli.arguments import one_of
from manchet.cli.status import ERRORS, FINE
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.comparison.compare import Comparison
    from manchet.diagnostics.diagnostic import Diagnostic
    from manchet.sheets.comparison.view import ComparedBread
    from manchet.workspace.comparing import BreadPair, ComparedSides

DIFFTOOL, EXTERNAL_DIFF = 3, 7
"""How many words git calls it with."""

SOURCE_OF_MESSAGE = "PRE_COMMIT_COMMIT_MSG_SOURCE"
"""In which pre-commit says where the message comes from."""

EXAMPLES = (
    "manchet compare HEAD~2",
    "manchet compare HEAD~2 'Tern loaf'",
    "manchet compare 'Plain loaf' 'Plain loaf, by hand'",
    "manchet compare HEAD~2:breads/tern-loaf.bake breads/tern-loaf.bake --all",
    "manchet compare 'Tern loaf' --format html > changes.html",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "what", nargs="*", metavar="OLD [NEW]", help="a name, a file, a revision, or a revision and a name"
    )
    parser.add_argument("--all", action="store_true", help="every line, however many there are")
    parser.add_argument("--format", type=one_of("text", "json", "html"), default="text", help="text, json or html")
    parser.add_argument(
        "--git", action="store_true", help="as git calls it: PATH BEFORE AFTER, or the seven words of an external diff"
    )
    parser.add_argument(
        "--message",
        default="",
        metavar="FILE",
        help="put what is about to be committed as remarks into this commit message",
    )
    parser.add_argument("--quiet", action="store_true", help="print nothing: the exit status tells")


def run(options: argparse.Namespace) -> int:
    from manchet.workspace.comparing import compared_sides

    if options.message:
        return _into_message(options.message, options.what[0] if options.what else "")
    sides = _of_git(options.what) if options.git else compared_sides(options.what)
    wanted = [pair for pair in sides.pairs if len(sides.pairs) == 1 or not pair.is_same_mistake]
    found = [_one(pair, sides.called, options.all or options.format == "json") for pair in wanted]
    otherwise = [one for one in found if one[0] is not None]
    if not options.quiet:
        sys.stdout.write(_written(options.format, sides, otherwise, len(found) - len(otherwise)))
    # git takes any other status of a diff for a failure.
    return ERRORS if otherwise and not options.git else FINE


def _into_message(name: str, source: str) -> int:
    """As git calls it before it shows a message; `source` is where that comes from, as git or the tool that runs hooks says."""
    from manchet.workspace.commit_message import WRITTEN, mark_of_remarks, with_remarks
    from manchet.workspace.comparing import compared_staged
    from manchet.workspace.named_places import bytes_named
    from manchet.workspace.writing import write

    source = source or os.environ.get(SOURCE_OF_MESSAGE, "")
    sides = None if source in WRITTEN else compared_staged()
    found = (
        [] if sides is None else [_one(pair, sides.called, False) for pair in sides.pairs if not pair.is_same_mistake]
    )
    lines = text([bread._replace(sides="") for bread, _ in found if bread is not None], 0).splitlines()
    mark = mark_of_remarks(".") if lines else ""
    if mark:
        message = bytes_named(name).decode("utf-8", "surrogateescape")
        write(name, with_remarks(message, lines, mark).encode("utf-8", "surrogateescape"))
    return FINE


def _of_git(words: list[str]) -> ComparedSides:
    """The path, and the two files in which git holds what was there and is there: of `git difftool` these three, of an external diff
    with their hashes and modes between (git(1), GIT_EXTERNAL_DIFF)."""
    from manchet.workspace.comparing import compared_file
    from manchet.workspace.named_places import bytes_named

    if len(words) == EXTERNAL_DIFF:
        path, before, _, _, after, _, _ = words
    elif len(words) == DIFFTOOL:
        path, before, after = words
    else:
        raise Unknown("--git takes a path and two files, as git hands them over", "manchet doctor --git sets git up")
    return compared_file(path, *(None if name == os.devnull else bytes_named(name) for name in (before, after)))


Found = tuple["ComparedBread | None", "Comparison | None"]
"""What is to be shown of a bread, None where it is the same on both sides; and what was found, None where it could not be compared."""


def _one(pair: BreadPair, called: tuple[str, str], everything: bool) -> Found:
    from manchet.comparison.compare import comparison_of
    from manchet.sheets.comparison.page import bread_on_one_side, compared_bread, unreadable_bread
    from manchet.sheets.page.house import House
    from manchet.workspace.faults import kept_to
    from manchet.workspace.print_options import PrintOptions
    from manchet.workspace.rendering import house_of

    before, after = pair.before, pair.after
    for bread, side in ((after, called[1]), (before, called[0])):
        if bread is not None and bread.work is None:
            return unreadable_bread(bread.name, called, side, bread.why, House()), None
    if before is None or before.work is None:
        return bread_on_one_side(after.name if after else "", called, True, House()), None
    if after is None or after.work is None:
        return bread_on_one_side(before.name, called, False, House()), None
    old, new = before.work, after.work
    house = house_of(new.kitchen, PrintOptions())

    def compared() -> Found:
        comparison = comparison_of(old, new)
        return (None if comparison.is_same else compared_bread(comparison, called, house, everything)), comparison

    def broken_off(fault: Diagnostic) -> Found:
        from manchet.cli.reporting import write_reports

        write_reports((fault,))
        return unreadable_bread(new.formula.name, called, called[1], fault.message, house), None

    return kept_to(new.formula.place, f"{new.formula.name} could not be compared", compared, broken_off)


def _written(form: str, sides: ComparedSides, otherwise: list[Found], same: int) -> str:
    from manchet.sheets.comparison.page import comparison_page, html_of_comparison
    from manchet.sheets.page.house import House
    from manchet.workspace.print_options import PrintOptions
    from manchet.workspace.rendering import house_of

    breads = [bread for bread, _ in otherwise if bread is not None]
    if form == "json":
        return json_text(sides.called, otherwise, same)
    if form == "html":
        works = [bread.work for pair in sides.pairs for bread in (pair.after, pair.before) if bread and bread.work]
        house = house_of(works[0].kitchen, PrintOptions()) if works else House()
        return html_of_comparison(comparison_page(breads, same, house))
    return text(breads, same)


def json_text(called: tuple[str, str], otherwise: list[Found], same: int) -> str:
    """The same lines as data, each with its exact values, in the shape of `comparison/comparison.schema.json`."""
    import json

    from manchet.comparison.report import FORMAT, VERSION, change_data

    breads = []
    for bread, comparison in otherwise:
        if bread is None:
            continue
        changes = [] if comparison is None else comparison.changes
        lines = [
            {"text": _no_more_than_spaces(line.text), **change_data(change)}
            for line, change in zip(bread.lines, changes, strict=True)
        ]
        note = _no_more_than_spaces(bread.note)
        breads.append({"name": bread.title, **({"note": note} if note else {}), "changes": lines})
    old, new = called
    found = {"format": FORMAT, "version": VERSION, "old": old, "new": new, "breads": breads, "same": same}
    return json.dumps(found, indent=2, ensure_ascii=True) + "\n"


def text(breads: list[ComparedBread], same: int) -> str:
    """A block for each bread, and how many are the same."""
    lines: list[str] = []
    for bread in breads:
        head = ": ".join(filter(None, (bread.title, bread.note or bread.sides)))
        lines.append(_plain(head))
        lines += [f"  {_plain(line.text)}" for line in bread.lines]
        lines += [f"  {_plain(bread.more)}"] if bread.more else []
    if same:
        lines.append(f"{same} {'is' if same == 1 else 'are'} the same on both sides")
    return "".join(f"{line}\n" for line in lines)


def _plain(text: str) -> str:
    """For a terminal: a figure and its unit may part."""
    from manchet.diagnostics.terminal import show

    return show(_no_more_than_spaces(text))


def _no_more_than_spaces(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")

"""Join two versions of a file that both come from a third, as git does when it merges.

Git runs this by itself where `manchet doctor --git` has set it up. Each version is put in its normal form first, so that a
file one side has only tidied meets no conflict. OURS is written anew; status 1 where places are left to a person, or where
the two changes together cannot be true. PATH says where the file stands in the bakery, by default where OURS stands.
"""

from __future__ import annotations

import argparse
import sys

from manchet.cli.status import ERRORS, FINE
from manchet.diagnostics.text import count_of

EXAMPLES = ("manchet merge before.bake tern-loaf.bake theirs.bake",)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("base", metavar="BEFORE", help="the version both sides come from")
    parser.add_argument("ours", metavar="OURS", help="our version; it is written anew")
    parser.add_argument("theirs", metavar="THEIRS", help="the other side's version")
    parser.add_argument("path", nargs="?", metavar="PATH", help="where the file stands in the bakery (default: OURS)")


def run(options: argparse.Namespace) -> int:
    from manchet.cli.reporting import write_reports
    from manchet.workspace.merging import Versions, merge, mistakes_of_joining
    from manchet.workspace.named_places import bytes_named
    from manchet.workspace.tidying import words_at
    from manchet.workspace.writing import write

    path = options.path or options.ours
    versions = Versions(*(bytes_named(name) for name in (options.base, options.ours, options.theirs)))
    merged = merge(versions, path, words_at(path))
    write(options.ours, merged.data)
    if merged.meetings:
        places = count_of(merged.meetings, "place")
        print(
            f"{path}: {places} changed on both sides; look for <<<<<<<, or ask `manchet check {path}`", file=sys.stderr
        )
        return ERRORS
    mistakes = mistakes_of_joining(path, versions, merged.data)
    write_reports(mistakes)
    if mistakes:
        print(f"{path}: each side is sound by itself, and both together are not", file=sys.stderr)
    return ERRORS if mistakes else FINE

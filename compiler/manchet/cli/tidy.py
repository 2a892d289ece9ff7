"""Write files in their normal form: amounts and values in their columns, short units, clauses in one order.

With no name given, tidies every file in this folder and below; with - reads standard input and writes standard output. What a
file says never changes, and its remarks stay. A line that cannot be read is left as it is, so a file with mistakes can be
tidied too. `--stdout` writes the normal form of one file to standard output and leaves the file alone, as git wants it to show
changes. `proof` or `prove`, `pan` or `tin` follows the `words` line of the nearest kitchen; without a kitchen, British.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from typing import TYPE_CHECKING

from manchet.cli.status import ERRORS, FINE
from manchet.diagnostics.text import count_of
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.diagnostics.diagnostic import Diagnostic
    from manchet.workspace.tidying import TidyFile

EXAMPLES = (
    "manchet tidy",
    "manchet tidy recipes/tern-loaf.bake",
    "manchet tidy --check",
    "manchet tidy recipes --diff",
    "manchet tidy - < tern-loaf.bake",
    "manchet tidy --stdout tern-loaf.bake",
)
INPUT = "standard input"


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "what", nargs="*", metavar="FILE|FOLDER", help="what to tidy (default: this folder); - for standard input"
    )
    parser.add_argument(
        "--check", action="store_true", help="write nothing; exit with status 1 if a file is not in normal form"
    )
    parser.add_argument("--diff", action="store_true", help="write nothing; show the lines that would change")
    parser.add_argument(
        "--stdout", action="store_true", help="write the normal form of one file to standard output, not into the file"
    )


def run(options: argparse.Namespace) -> int:
    from manchet.cli.check import status_of
    from manchet.cli.reporting import write_reports
    from manchet.workspace.rewriting import write_anew
    from manchet.workspace.selection import selections
    from manchet.workspace.tidying import tidy_files

    if "-" in options.what:
        return _standard_input(options)
    if options.stdout:
        return _one_to_standard_output(options)
    files: list[TidyFile] = []
    reports: list[Diagnostic] = []
    for selection in selections(options.what):
        found = tidy_files(selection)
        files += found.value
        reports += found.diagnostics
    untidy = [file for file in files if not file.was_tidy]
    if options.check or options.diff:
        sys.stdout.writelines(f"{line}\n" for file in untidy for line in _shown(file, options))
    else:
        for file in write_anew(untidy):
            print(f"{_from_here(file.path)}: tidied")
    write_reports(reports)
    print(_summary(len(untidy), len(files), "would be tidied" if options.check or options.diff else "tidied"))
    return ERRORS if options.check and untidy else status_of(tuple(reports), strict=False)


def _shown(file: TidyFile, options: argparse.Namespace) -> Iterator[str]:
    from manchet.cli.differences import difference

    if options.diff:
        yield from difference(_from_here(file.path), file.before, file.after, "tidy")
    else:
        yield f"{_from_here(file.path)}:{_first_line(file)}: not tidy"


def _first_line(file: TidyFile) -> int:
    """The first line that changes."""
    from manchet.source.files import rough_text_of

    before, after = (rough_text_of(data).split("\n") for data in (file.before, file.after))
    same = zip(before, after, strict=False)
    return next((at for at, (one, other) in enumerate(same, 1) if one != other), min(len(before), len(after)))


def _summary(untidy: int, files: int, done: str) -> str:
    tidy = f"{count_of(files - untidy, 'file')} tidy already"
    return tidy if not untidy else f"{count_of(untidy, 'file')} {done}" + (f", {tidy}" if files > untidy else "")


def _standard_input(options: argparse.Namespace) -> int:
    from manchet.cli.reporting import write_reports
    from manchet.source.files import LARGEST
    from manchet.workspace.tidying import TidyFile, tidy_bytes, words_here

    if len(options.what) > 1:
        raise Unknown("- is standard input, and stands by itself", "name the files in another command")
    data = sys.stdin.buffer.read(LARGEST + 1)
    tidy = tidy_bytes(INPUT, data, words_here())
    if tidy.value is None:
        write_reports(tidy.diagnostics)
        return ERRORS
    file = TidyFile(INPUT, "", data, tidy.value)
    if not options.check and not options.diff:
        _put_out(file.after)
    elif not file.was_tidy:
        sys.stdout.writelines(f"{line}\n" for line in _shown(file, options))
    return ERRORS if options.check and not file.was_tidy else FINE


def _one_to_standard_output(options: argparse.Namespace) -> int:
    """A file of any name, in the English of the folder the command runs in: git hands over a copy without a house around it.
    What is no text is written as it is."""
    from manchet.workspace.named_places import bytes_named
    from manchet.workspace.tidying import tidy_bytes, words_here

    if len(options.what) != 1 or options.check or options.diff:
        raise Unknown("--stdout is for one file, without --check or --diff", "manchet tidy --stdout tern-loaf.bake")
    (name,) = options.what
    data = bytes_named(name)
    tidy = tidy_bytes(name, data, words_here()).value
    _put_out(data if tidy is None else tidy)
    return FINE


def _put_out(data: bytes) -> None:
    """The text as it is, whatever letters the terminal has."""
    sys.stdout.flush()
    bytewise = getattr(sys.stdout, "buffer", None)
    if bytewise is None:
        sys.stdout.write(data.decode())
    else:
        bytewise.write(data)


def _from_here(path: str) -> str:
    from manchet.cli.reporting import path_from_here
    from manchet.diagnostics.terminal import show

    return show(path_from_here(path))

"""Start a formula, or import one from a table.

`manchet new NAME` writes a commented formula to change. With --from it writes a formula by weight from a table
(name, amount, unit and, if there is one, stage): a CSV file, or - for what is pasted from a spreadsheet. Names it
does not know and amounts it cannot read are asked about; nothing is guessed. A file that is there already is never
touched.
"""

from __future__ import annotations

import argparse
import os
import sys
from typing import TYPE_CHECKING

from manchet.cli.arguments import WIDTH
from manchet.cli.screen import columns
from manchet.cli.status import FINE
from manchet.diagnostics.terminal import show
from manchet.diagnostics.text import wrap
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.intake.table_import import Known

EXAMPLES = (
    "manchet new 'Saturday tin'",
    "manchet new --from saturday-tin.csv",
    "manchet new 'Saturday tin' --from table.csv",
    "manchet new 'Saturday tin' --from - < pasted.txt",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "name", nargs="?", default="", metavar="NAME", help="what the bread is called (default: the table's name)"
    )
    parser.add_argument(
        "--out",
        "--output",
        dest="output",
        metavar="FILE",
        help="where to write; - for the terminal (default: from NAME)",
    )

    table = parser.add_argument_group("the table", _headings())
    table.add_argument("--from", dest="table", metavar="TABLE", help="a CSV file, or - to read what is pasted")


def _headings() -> str:
    """The headings that are known, a line for each column."""
    from manchet.intake.table_columns import HEADINGS

    known: dict[str, list[str]] = {}
    for heading, column in HEADINGS.items():
        known.setdefault(column, []).append(heading)
    lines = [
        "Its first row names the columns, in any order; a unit may stand for the amount (kg), or in its heading (Menge (g)).",
        "Without such a row the columns are told by their contents. Headings that are known:",
        *(f"  {column}: {', '.join(headings)}" for column, headings in known.items()),
    ]
    wide = min(columns(sys.stdout) or WIDTH, WIDTH) - 2
    return "\n".join(wrap(line, wide, "    " if line.startswith(" ") else "") for line in lines)


def run(options: argparse.Namespace) -> int:
    from manchet.intake.starter import is_a_name, starter

    name = " ".join((options.name or _named_by(options.table)).split())
    if not is_a_name(name):
        why = "a name is one line of plain characters, without # and quotes, and has letters in it"
        why = why if name else "a formula needs a name"
        raise Unknown(why, "such as: manchet new 'Saturday tin'")
    if options.table is None:
        _write(options.output, name, starter(name))
        return FINE
    from manchet.intake.table_import import import_table, rows_asking

    try:
        made = import_table(name, _table(options.table), _known)
    except ValueError as error:
        raise Unknown(f"{options.table}: {error}") from None
    _write(options.output, name, made.text)
    for line in made.said:
        print(show(line), file=sys.stderr)
    if made.questions:
        for line in rows_asking(made.questions).split("\n"):
            print(show(line), file=sys.stderr)
        print("these are in the formula as comments: answer each, and check it", file=sys.stderr)
    return FINE


def _named_by(table: str | None) -> str:
    """A name from that of the table: `rye-2.csv` is `rye 2`; "" where there is no file."""
    if table is None or table == "-":
        return ""
    stem = os.path.splitext(os.path.basename(table))[0]
    return stem.replace("-", " ").replace("_", " ")


def _write(output: str | None, name: str, text: str) -> None:
    if output == "-":
        sys.stdout.write(text)
        return
    from manchet.workspace.slugs import slug
    from manchet.workspace.writing import write_new

    path = output or f"{slug(name) or 'formula'}.bake"
    write_new(path, text)
    print(path)


def _table(path: str) -> str:
    from manchet.source.files import bytes_of

    if path == "-":
        data = sys.stdin.buffer.read(4_000_000)
    else:
        if not os.path.lexists(path):
            raise Unknown(f"there is no file {path}")
        read = bytes_of(os.path.realpath(path), path)
        if read.value is None:
            raise Unknown(f"{path}: {read.diagnostics[0].message}")
        data = read.value
    try:
        return data.decode("utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError:
        raise ValueError("it is not UTF-8 text; save the table as CSV UTF-8") from None


def _known(name: str) -> Known:
    from manchet.intake.table_import import Known
    from manchet.larder.book import builtin
    from manchet.larder.ingredient import Question

    larder = builtin()
    found = larder.find(name)
    if found is None:
        near = larder.near(name)
        return Known(f"what is {name}?" + (f" near: {', '.join(near[:3])}" if near else " the larder does not know it"))
    if isinstance(found, Question):
        return Known(f"which {name}: {' or '.join(found.choices)}?")
    return Known("")

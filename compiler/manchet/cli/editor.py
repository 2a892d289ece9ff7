"""Serve an editor: reports as you type, fixes, figures under the cursor, names, the normal form.

The editor starts it and talks with it over standard input and output, in the Language Server Protocol; README.md says what to
set in which editor. It ends when the editor does.
"""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from manchet.cli.status import FINE
from manchet.workspace.trouble import Absent, Unknown

if TYPE_CHECKING:
    from manchet.batch.order import Order

EXAMPLES = ("manchet editor",)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--stdio", action="store_true", help="over standard input and output, as it does anyway")


def run(options: argparse.Namespace) -> int:
    try:
        from manchet.editor.server import serve
    except ModuleNotFoundError as missing:
        lacking = (missing.name or "").partition(".")[0]
        if lacking not in ("pygls", "lsprotocol", "cattrs", "attrs"):
            raise
        message = f"an editor cannot be served here: {lacking} is not installed"
        raise Absent(message, "pip install 'manchet[editor]'") from None
    if sys.stdin.isatty():
        raise Unknown("this is for an editor to start, not for a person", "README.md says what to set in your editor")
    serve(order_in_words)
    return FINE


def order_in_words(words: str) -> Order:
    """What is wanted, in the options of `build`: `--pieces 24`. Raises `Misread`, `Unknown` or `ValueError`."""
    import shlex

    from manchet.cli import sizing
    from manchet.cli.arguments import Parser

    parser = Parser(add_help=False, allow_abbrev=False)
    sizing.arguments(parser)
    return sizing.order_of(parser.parse_args(shlex.split(words)))

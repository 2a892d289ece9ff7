"""Reading the words of one command, and saying in plain ones what was not understood."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from functools import partial
from types import ModuleType
from typing import Any, NoReturn

from manchet.cli.screen import columns
from manchet.diagnostics.terminal import show
from manchet.diagnostics.text import wrap

WIDTH = 110
"""Columns of a help text at most."""


class Misread(Exception):
    """The command line is not one: `message` says why and ends in what was perhaps meant."""

    def __init__(self, message: str) -> None:
        super().__init__(message)
        self.message = message


class Parser(argparse.ArgumentParser):
    """An argument parser that raises `Misread` where the standard one writes to the terminal and stops."""

    def parse_args(self, args: Any = None, namespace: Any = None) -> Any:
        options, unread = self.parse_known_intermixed_args(args, namespace)
        if unread:
            raise Misread(self._unread(unread[0]))
        return options

    def error(self, message: str) -> NoReturn:
        message = message.removeprefix("argument ")
        for technical, plain in _PLAIN.items():
            message = message.replace(technical, plain)
        raise Misread(show(message))

    def options_of(self) -> dict[str, argparse.Action]:
        """Every option by its name, for completion and suggestions."""
        return dict(self._option_string_actions)

    def _unread(self, word: str) -> str:
        if not word.startswith("-"):
            return f"{show(word)} is one word too many"
        from manchet.diagnostics.suggest import nearest

        written = word.split("=", 1)[0]
        near = nearest(written, [name for name in self.options_of() if name.startswith("--")])
        return f"there is no option {show(written)}" + (f"; did you mean {near}?" if near else "")


_PLAIN = {
    ": expected one argument": " needs a value after it",
    ": expected at least one argument": " needs a value after it",
    "the following arguments are required: ": "what is missing: ",
    ": ignored explicit argument ": " takes no value, but was given ",
    ": not allowed with argument ": " cannot stand together with ",
}


def parser_for(name: str, module: ModuleType) -> Parser:
    """The parser of one command. The module's docstring is its help; `EXAMPLES` are shown under it."""
    wide = columns(sys.stdout)
    examples = "\n".join(f"  {line}" for line in module.EXAMPLES)
    parser = Parser(
        prog=f"manchet {name}",
        description="\n".join(wrap(line, wide, "") for line in (module.__doc__ or "").strip().split("\n")),
        epilog=f"examples:\n{examples}",
        formatter_class=partial(argparse.RawDescriptionHelpFormatter, width=min(wide or WIDTH, WIDTH)),
        allow_abbrev=False,
    )
    module.arguments(parser)
    return parser


def one_of(*choices: str) -> Callable[[str], str]:
    """A converter for an option with a closed list of values; capitals do not matter."""

    def chosen(text: str) -> str:
        for choice in choices:
            if choice.casefold() == text.casefold():
                return choice
        raise argparse.ArgumentTypeError(f"{text} is not one of {_or(choices)}")

    chosen.choices = choices  # type: ignore[attr-defined]  # for shell completion
    return chosen


def some_of(*choices: str) -> Callable[[str], tuple[str, ...]]:
    """The same for a list parted by commas."""
    one = one_of(*choices)

    def chosen(text: str) -> tuple[str, ...]:
        found = tuple(dict.fromkeys(one(part.strip()) for part in text.split(",") if part.strip()))
        if not found:
            raise argparse.ArgumentTypeError(f"nothing is named; name some of {_or(choices)}")
        return found

    chosen.choices = choices  # type: ignore[attr-defined]
    return chosen


def processes(parser: argparse.ArgumentParser) -> None:
    """`--jobs N`, of commands that look at many formulas."""
    parser.add_argument(
        "--jobs",
        type=whole_number(1, 64),
        default=os.cpu_count() or 1,
        metavar="N",
        help="number of processes, at most",
    )


def whole_number(least: int, most: int) -> Callable[[str], int]:
    def number(text: str) -> int:
        if not (text.isascii() and text.isdigit()) or len(text) > 9 or not least <= int(text) <= most:
            raise argparse.ArgumentTypeError(f"{text} is not a whole number from {least:,} to {most:,}")
        return int(text)

    return number


def _or(words: Sequence[str]) -> str:
    return f"{', '.join(words[:-1])} or {words[-1]}" if len(words) > 1 else words[0]

"""The command `manchet`: finds the command that was meant, runs it, and ends calmly whatever happens.

Each command is a module of this package with `arguments(parser)` and `run(options)`, imported only when it is
asked for: looking over one formula must not cost the start of a PDF writer.
"""

from __future__ import annotations

import gc
import os
import sys
from typing import NoReturn

from manchet.cli.status import ERRORS, FINE, MISSING, OUR_FAULT, STOPPED, USAGE

COMMANDS = {
    "check": "check formulas and report mistakes",
    "build": "write prep sheets and timing cards",
    "watch": "rebuild whenever a file is saved",
    "plan": "plan a day: who does what when, and what is in the oven",
    "compare": "show what is otherwise in a bread, in a baker's terms",
    "tidy": "write files in their normal form",
    "merge": "join two versions of a file, as git does when it merges",
    "figures": "print a formula's figures as text, JSON or CSV",
    "trace": "show where a figure comes from",
    "where": "show where an ingredient, a preparation or a tin is used",
    "explain": "explain a report and how to put it right",
    "editor": "serve an editor: reports, fixes, figures as you type",
    "new": "start a formula, or import one from a table",
    "doctor": "show what is installed on this machine and what is missing",
    "completion": "print a completion script for your shell",
}


def main() -> NoReturn:
    """The command as the shell calls it."""
    checks = sys.argv[1:2] == ["check"]
    if checks:
        gc.disable()  # from its first import on: see workspace/collecting.py
    status = run()
    if checks:
        # A check leaves nothing to tidy up, and the interpreter's own tidying takes a twentieth of a short one.
        sys.stderr.flush()
        os._exit(status)
    sys.exit(status)


def run() -> int:
    """Runs the command line and gives its exit status."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    _listen_for_stops()
    try:
        status = command(sys.argv[1:])
        sys.stdout.flush()
    except Stopped as stopped:
        _stopped()
        return 128 + stopped.number
    except KeyboardInterrupt:
        return _stopped()
    except BrokenPipeError:
        return _nobody_reads()
    except Exception as fault:
        # The one place where an exception ends: what a person can act on is said, all else is our own fault.
        return _ended_by(fault)
    return status


class Stopped(KeyboardInterrupt):
    """Asked to end by a polite kill, or by a terminal that is closed: as by Ctrl-C, but for the status."""

    def __init__(self, number: int) -> None:
        super().__init__(number)
        self.number = number


def _listen_for_stops() -> None:
    """Signals that would end the process where it stands are exceptions from now on, so that nothing is left behind."""
    import signal
    import threading

    def stop(number: int, frame: object) -> None:
        raise Stopped(number)

    if threading.current_thread() is not threading.main_thread():
        return
    for name in ("SIGTERM", "SIGHUP"):
        number = getattr(signal, name, None)
        if number is not None and signal.getsignal(number) is signal.SIG_DFL:
            signal.signal(number, stop)


def command(words: list[str]) -> int:
    """The exit status of one command line, given without the program's name."""
    name = words[0] if words else "--help"
    if name in ("--help", "-h", "help"):
        if len(words) > 1 and words[1] in COMMANDS:
            return command([words[1], "--help"])
        print(overview())
        return FINE
    if name in ("--version", "-V"):
        from manchet import __version__

        print(f"manchet {__version__}")
        return FINE
    if name not in COMMANDS:
        return _no_such_command(name)
    from importlib import import_module

    from manchet.cli.arguments import Misread, parser_for

    module = import_module(f"manchet.cli.{name}")
    parser = parser_for(name, module)
    if not {"--help", "-h"}.isdisjoint(words[1:]):
        print(parser.format_help(), end="")
        return FINE
    try:
        options = parser.parse_args(words[1:])
    except Misread as misread:
        _say(f"manchet {name}: {misread.message}", f"manchet {name} --help shows how it is used")
        return USAGE
    status: int = module.run(options)
    return status


def overview() -> str:
    longest = max(map(len, COMMANDS))
    lines = [f"  {name:<{longest}}  {does}" for name, does in COMMANDS.items()]
    return "\n".join(
        [
            "usage: manchet COMMAND …",
            "",
            "Manchet reads bread formulas (.bake files), checks and sizes them, and prints what a baker works from.",
            "",
            *lines,
            "",
            "manchet COMMAND --help shows a command's options, with examples.",
            "examples:",
            "  manchet new 'Saturday tin'",
            "  manchet check .",
            "  manchet build 'Saturday tin' --pieces 24",
        ]
    )


def _no_such_command(name: str) -> int:
    from manchet.diagnostics.suggest import nearest
    from manchet.diagnostics.terminal import show

    near = nearest(name, COMMANDS)
    help = f"did you mean manchet {near}?" if near else "manchet --help lists the commands"
    _say(f"manchet: there is no command called {show(name)}", help)
    return USAGE


def _ended_by(fault: Exception) -> int:
    from manchet.workspace.trouble import Absent, Blocked, Trouble

    if isinstance(fault, Trouble):
        from manchet.diagnostics.terminal import show

        _say(f"manchet: {show(fault.message)}", show(fault.help))
        return MISSING if isinstance(fault, Absent) else ERRORS if isinstance(fault, Blocked) else USAGE
    from manchet.workspace.fault_record import record_fault

    _say(*record_fault(fault))
    return OUR_FAULT


def _say(message: str, help: str) -> None:
    try:
        sys.stdout.flush()
        from manchet.cli.screen import columns
        from manchet.diagnostics.terminal import in_brief
        from manchet.diagnostics.text import wrap

        wide = columns(sys.stderr)
        print(wrap(in_brief(message), wide, "  "), file=sys.stderr)
        if help:
            print(wrap(f"  {in_brief(help)}", wide, "  "), file=sys.stderr)
    except BrokenPipeError:
        _nobody_reads()


def _stopped() -> int:
    _say("", "stopped")
    return STOPPED


def _nobody_reads() -> int:
    """The reader of our output went away (`manchet check | head`): nothing to say, and nobody to say it to."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    for stream in (sys.stdout, sys.stderr):
        try:
            os.dup2(nowhere, stream.fileno())
        except (OSError, ValueError):
            continue
    return FINE


if __name__ == "__main__":
    main()

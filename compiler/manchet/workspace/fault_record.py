"""A fault of our own: one calm line for the baker, and all we need to put it right in a file."""

from __future__ import annotations

MOST_KEPT = 20
"""Accounts in our folder; the oldest go first."""


def record_fault(fault: BaseException) -> tuple[str, str]:
    """Writes down what happened; what to say about it, and what can be done."""
    said = "manchet: something went wrong inside manchet itself; no formula of yours is to blame"
    return said, way_to_send(fault)


def way_to_send(fault: BaseException) -> str:
    """Writes down what happened, and says where. The same fault is one account, however often it is met."""
    import os
    import sys
    import traceback

    from manchet import __version__
    from manchet.workspace.cache_folder import account_folder

    told = "".join(traceback.format_exception(fault))
    account = f"manchet {__version__}, Python {sys.version}, {sys.platform}\ncommand line: {sys.argv!r}\n\n{told}"
    folder = account_folder()
    try:
        if folder is None:
            raise PermissionError
        path = os.path.join(folder, f"fault-{_digest(fault)}.log")
        flags = (
            os.O_WRONLY | os.O_CREAT | os.O_TRUNC | sum(getattr(os, name, 0) for name in ("O_NONBLOCK", "O_NOFOLLOW"))
        )
        with os.fdopen(os.open(path, flags, 0o600), "w", encoding="utf-8", errors="backslashreplace") as file:
            file.write(account)
        _thin_out(folder)
    except OSError:
        kind = type(fault).__name__
        return f"it could not be recorded ({kind}); please report what you did when it happened"
    return f"what happened is recorded in {path}: please send that file with your report"


def _digest(fault: BaseException) -> str:
    """A name for what went wrong and where: the kind of fault and the lines of ours that led to it."""
    import traceback

    from manchet.workspace.cache import digest

    steps = traceback.extract_tb(fault.__traceback__)
    return digest(type(fault).__name__, *(f"{step.filename} {step.lineno}" for step in steps))[:12]


def _thin_out(folder: str) -> None:
    import os

    accounts = [entry for entry in os.scandir(folder) if entry.name.startswith("fault-")]
    by_age = sorted(accounts, key=lambda entry: entry.stat(follow_symlinks=False).st_mtime_ns)
    for entry in by_age[: max(len(by_age) - MOST_KEPT, 0)]:
        os.unlink(entry.path)

"""A fault of our own: one calm line for the baker, and all we need to put it right in a file."""

from __future__ import annotations


def record_fault(fault: BaseException) -> tuple[str, str]:
    """Writes down what happened; what to say about it, and what can be done."""
    import os
    import sys
    import tempfile
    import time
    import traceback

    from manchet import __version__
    from manchet.workspace.cache_folder import cache_folder

    said = "manchet: something went wrong inside manchet itself; no formula of yours is to blame"
    account = "".join(
        [
            f"manchet {__version__}, Python {sys.version}, {sys.platform}\n",
            f"command line: {sys.argv!r}\n\n",
            *traceback.format_exception(fault),
        ]
    )
    name = f"fault-{time.strftime('%Y%m%d-%H%M%S')}-{os.getpid()}.log"
    try:
        path = os.path.join(cache_folder() or tempfile.mkdtemp(prefix="manchet-"), name)
        with open(path, "x", encoding="utf-8", errors="backslashreplace") as file:
            file.write(account)
    except OSError:
        kind = type(fault).__name__
        return said, f"it could not be written down ({kind}); please report what you did when it happened"
    return said, f"what happened is written down in {path}: please send that file with your report"

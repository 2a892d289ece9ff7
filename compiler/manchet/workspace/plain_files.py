"""Files that nobody has looked at: read if they are plain files, passed over if they are pipes or devices."""

from __future__ import annotations

import os
import stat


def plain_bytes(path: str, most: int) -> bytes | None:
    """The bytes of a plain file; None where there is none, where it cannot be read, or has more than `most`. Never waits."""
    try:
        handle = os.open(path, os.O_RDONLY | sum(getattr(os, name, 0) for name in ("O_NONBLOCK", "O_BINARY")))
    except (OSError, ValueError):
        return None
    try:
        status = os.fstat(handle)
        if not stat.S_ISREG(status.st_mode) or status.st_size > most:
            return None
        with os.fdopen(handle, "rb", closefd=False) as file:
            data = file.read(most + 1)
    except OSError:
        return None
    finally:
        os.close(handle)
    return data if len(data) <= most else None

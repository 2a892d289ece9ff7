"""Our folder in the user's cache folder: nobody else's, or none."""

from __future__ import annotations

import os
import sys


def cache_folder() -> str | None:
    """Our folder in the user's cache folder, made if need be; None where it is not to be used."""
    if os.environ.get("MANCHET_CACHE", "").lower() in ("off", "0", "no"):
        return None
    return _ours(os.path.join(_user_cache(), "manchet"))


def account_folder() -> str | None:
    """Where the accounts of our own faults are written: the same folder, or one for files that may be thrown away."""
    import tempfile

    user = f"manchet-{os.geteuid()}" if hasattr(os, "geteuid") else "manchet"
    return cache_folder() or _ours(os.path.join(tempfile.gettempdir(), user))


def _ours(path: str) -> str | None:
    """The folder, made if need be; None where it is a link, or someone else's, or others may enter it."""
    try:
        os.makedirs(os.path.dirname(path), mode=0o700, exist_ok=True)
        if not os.path.lexists(path):
            os.mkdir(path, 0o700)
        status = os.lstat(path)
    except OSError:
        return None
    if not os.path.isdir(path) or os.path.islink(path):
        return None
    if hasattr(os, "geteuid") and (status.st_uid != os.geteuid() or status.st_mode & 0o077):
        return None
    return path


def _user_cache() -> str:
    named = os.environ.get("XDG_CACHE_HOME", "")
    if os.path.isabs(named):
        return named
    if sys.platform == "win32":
        return os.environ.get("LOCALAPPDATA") or os.path.expanduser("~\\AppData\\Local")
    if sys.platform == "darwin":
        return os.path.expanduser("~/Library/Caches")
    return os.path.expanduser("~/.cache")

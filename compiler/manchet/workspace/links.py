"""Links among the files of a bakery: whether what one leads to is read where it is, and what to say where it is not."""

from __future__ import annotations

import os

from manchet.records import NamedTuple
from manchet.source.files import SUFFIX


class LooseLink(NamedTuple):
    """Why a link is not followed. `leads_out`: it leads out of the bakery."""

    message: str
    help: str
    leads_out: bool = False


def loose_link(root: str, path: str) -> LooseLink | None:
    """Why the link at `path` in the bakery's folder `root` (both real, but for the link itself) cannot be followed; None
    where it leads to a formula file or a folder inside, which is read where it is."""
    try:
        target = os.path.realpath(path, strict=True)
    except FileNotFoundError:
        target = os.path.realpath(path)
        if not is_within(root, target):
            return _out()
        message = f"this link leads to {os.path.relpath(target, root)}, and there is no such file"
        return LooseLink(message, "put the file there, or remove the link")
    except OSError:
        return LooseLink("this link leads round in a circle, to no file", "put the file itself here")
    if not is_within(root, target):
        return _out()
    inside = os.path.relpath(target, root)
    if inside != "." and any(part.startswith(".") for part in inside.split(os.sep)):
        return LooseLink(
            f"this link leads to {inside}, which is hidden, and what is hidden is not read", "put the file itself here"
        )
    if not (os.path.isdir(target) or target.endswith(SUFFIX)):
        help = f"formulas stand in files that end in {SUFFIX}: put the file itself here"
        return LooseLink(f"this link leads to {inside}, which is no formula file", help)
    return None


def is_within(root: str, path: str) -> bool:
    try:
        return os.path.commonpath([root, path]) == root
    except ValueError:  # another drive
        return False


def _out() -> LooseLink:
    message = "this link leads out of the bakery's folder, and was not followed"
    return LooseLink(message, "put the file itself here, or a copy of it", leads_out=True)

"""What stops the work and is no mistake in a formula: said in one calm line, with a way out."""

from __future__ import annotations


class Trouble(Exception):
    """`message` says what is wrong (lower case, the actual names), `help` what can be done about it."""

    def __init__(self, message: str, help: str = "") -> None:
        super().__init__(message)
        self.message = message
        self.help = help


class Unknown(Trouble):
    """What was asked for is not there, or cannot be asked for like this."""


class Blocked(Trouble):
    """The disk said no: a folder that cannot be written, a file in the way, no room."""


class Absent(Trouble):
    """Something this machine needs and does not have."""


def reason(error: OSError) -> str:
    """Why the disk said no, in plain words."""
    from errno import EACCES, EDQUOT, EFBIG, EISDIR, ELOOP, ENAMETOOLONG, ENOENT, ENOSPC, ENOTDIR, EPERM, EROFS

    plain = {
        ENOSPC: "the disk is full",
        EDQUOT: "your disk quota is full",
        EFBIG: "the file would be larger than this disk allows",
        EACCES: "you may not",
        EPERM: "you may not",
        EROFS: "the disk is read-only",
        ENOENT: "it is not there",
        ENOTDIR: "a file stands where a folder should be",
        EISDIR: "a folder stands where a file should be",
        ENAMETOOLONG: "the name is too long",
        ELOOP: "its links lead round in a circle",
    }
    return plain.get(error.errno or 0, (error.strerror or "the disk gave no reason").lower())

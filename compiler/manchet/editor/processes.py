"""Work in a process of its own, which ends with the talk."""

from __future__ import annotations

import asyncio
from asyncio.subprocess import DEVNULL, PIPE
from collections.abc import Sequence

from manchet.records import NamedTuple


class Ended(NamedTuple):
    """What a process left: its exit status, what it wrote and what it complained of."""

    status: int
    output: bytes
    complaint: bytes


async def end_of(command: Sequence[str], folder: str | None = None) -> Ended:
    """Starts a command in a folder and waits for its end; where nobody waits any more, it is ended at once."""
    process = await asyncio.create_subprocess_exec(*command, cwd=folder, stdin=DEVNULL, stdout=PIPE, stderr=PIPE)
    try:
        output, complaint = await process.communicate()
    finally:
        if process.returncode is None:
            process.kill()
            await process.wait()
    return Ended(process.returncode or 0, output, complaint)

"""The language server, put together, and its talk over standard input and output."""

from __future__ import annotations

import logging
import os
import sys

from manchet.editor.beside import showing_beside
from manchet.editor.corrections import correcting
from manchet.editor.notices import listening
from manchet.editor.overviews import overlooking
from manchet.editor.questions import answering
from manchet.editor.session import EditorServer
from manchet.editor.settings import ReadOrder


def server_of(read_order: ReadOrder) -> EditorServer:
    """A server that knows how to answer. `read_order` reads the options of a command that say how much is wanted."""
    server = EditorServer(read_order)
    listening(server)
    for taught in (correcting, answering, overlooking, showing_beside):
        taught(server)
    return server


def serve(read_order: ReadOrder) -> None:
    """Talks with the editor over standard input and output, until it says so or goes away. What is printed meanwhile by
    anything else goes to standard error: the output is the editor's alone."""
    logging.getLogger("pygls").setLevel(logging.CRITICAL)
    sys.stdout.flush()
    output = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)
    server_of(read_order).start_io(sys.stdin.buffer, output)

"""What stands on every page of a PDF is an artefact: who listens to a page does not hear its head and foot again each time.

The type engine hangs the text of margin boxes into no tree of tags, but marks it in the page like the rest. PDF/UA (ISO 14289-1,
7.1 and 7.8) wants what is in no tree marked as an artefact, and running heads and feet as such of the pagination.
"""

from __future__ import annotations

from typing import Any


def mark_artefacts(_: Any, pdf: Any) -> None:
    """The finisher of a PDF: rewrites the marks of all text that hangs in no tree."""
    objects = {item.number: item for item in pdf.objects}
    root = objects[_number(pdf.catalog["StructTreeRoot"])]
    in_tree = _below(root, objects)
    mapped = objects[_number(root["ParentTree"])]["Nums"]
    elements = dict(zip(mapped[::2], mapped[1::2], strict=True))
    for at, number in enumerate(pdf.pages["Kids"][::3]):
        outside = {mcid for mcid, element in enumerate(elements[at]) if _number(element) not in in_tree}
        stream = objects[_number(objects[number]["Contents"])].stream
        for i, mark in enumerate(stream):
            if isinstance(mark, dict) and mark.get("MCID") in outside:
                stream[i - 1 : i + 1] = ["/Artifact", b"<</Type /Pagination>>"]


def _number(reference: bytes) -> int:
    """Of `b"12 0 R"`."""
    return int(reference.split()[0])


def _below(root: Any, objects: dict[int, Any]) -> set[int]:
    """The numbers of all elements of the tree of tags."""
    found: set[int] = set()
    waiting = list(root["K"])
    while waiting:
        kid = waiting.pop()
        if not isinstance(kid, int) and _number(kid) not in found:  # a plain number is text, not an element
            found.add(_number(kid))
            waiting += objects[_number(kid)].get("K", [])
    return found

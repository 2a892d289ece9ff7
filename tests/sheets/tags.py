"""The tags of a PDF, read back: its elements in the order of a voice, with the text that each has."""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any, NamedTuple

from pypdf import PdfReader
from pypdf.generic import ContentStream, IndirectObject

PAINTS = {
    b"Tj",
    b"TJ",
    b"'",
    b'"',
    b"f",
    b"F",
    b"f*",
    b"B",
    b"B*",
    b"b",
    b"b*",
    b"S",
    b"s",
    b"sh",
    b"Do",
    b"INLINE IMAGE",
}
"""The operators that put something on the paper (ISO 32000-1, annex A)."""


class Tag(NamedTuple):
    """An element: `role` without its stroke, `said` its own text and that of all below it."""

    role: str
    said: str
    kids: tuple[Tag, ...]
    raw: Any

    @property
    def table(self) -> Any:
        """What it says of itself as a part of a table, or of the layout."""
        return self.raw.get("/A", {})

    def below(self) -> Iterator[Tag]:
        """Itself, and all below it, in order."""
        yield self
        for kid in self.kids:
            yield from kid.below()

    def all(self, *roles: str) -> list[Tag]:
        return [tag for tag in self.below() if tag.role in roles]


def reader_of(pdf: bytes) -> PdfReader:
    return PdfReader(io.BytesIO(pdf))


def root_of(reader: PdfReader) -> Any:
    return reader.trailer["/Root"]


def tags_of(reader: PdfReader) -> Tag:
    texts = [text_by_mark(page) for page in reader.pages]
    pages = {page.indirect_reference: number for number, page in enumerate(reader.pages)}

    def tag(raw: Any) -> Tag:
        here = raw.raw_get("/Pg") if "/Pg" in raw else None
        said, kids = "", []
        inside = raw.get("/K", [])
        for kid in inside if isinstance(inside, list) else [inside]:
            kid = kid.get_object() if isinstance(kid, IndirectObject) else kid
            if isinstance(kid, int):
                said += texts[pages[here]].get(kid, "")
            elif "/S" in kid:
                kids.append(tag(kid))
                said += kids[-1].said
        return Tag(str(raw["/S"]).removeprefix("/"), said, tuple(kids), raw)

    (document,) = root_of(reader)["/StructTreeRoot"]["/K"]
    return tag(document.get_object())


def text_by_mark(page: Any) -> dict[int | str, str]:
    """The text of a page by the number of its mark; by "Artifact" what is one, by "" what has no mark."""
    inside: list[int | str] = []
    said: dict[int | str, str] = {}

    def mark(operator: bytes, operands: Any, *_: Any) -> None:
        if operator in (b"BDC", b"BMC"):
            inside.append(_mark(operands))
        elif operator == b"EMC":
            inside.pop()

    def hear(text: str, *_: Any) -> None:
        if text.strip():
            at = inside[-1] if inside else ""
            said[at] = said.get(at, "") + text

    page.extract_text(visitor_operand_before=mark, visitor_text=hear)
    return said


def painted_by_mark(page: Any, reader: PdfReader) -> dict[int | str, set[bytes]]:
    """What paints on a page, by its mark as above."""
    inside: list[int | str] = []
    found: dict[int | str, set[bytes]] = {}
    for operands, operator in ContentStream(page.get_contents(), reader).operations:
        if operator in (b"BDC", b"BMC"):
            inside.append(_mark(operands))
        elif operator == b"EMC":
            inside.pop()
        elif operator in PAINTS:
            found.setdefault(inside[-1] if inside else "", set()).add(operator)
    return found


def _mark(operands: Any) -> int | str:
    if operands[0] == "/Artifact":
        return "Artifact"
    return int(operands[1]["/MCID"])


def named_in(root: Any) -> dict[bytes, Any]:
    """The table of the names of elements: each with what it names."""
    names = root["/StructTreeRoot"].get("/IDTree", {}).get("/Names", [])
    keys = [key.original_bytes for key in names[::2]]
    assert keys == sorted(set(keys)), "a table of names is sorted, and has each once"
    return dict(zip(keys, (item.get_object() for item in names[1::2]), strict=True))

"""Which heads a cell of a table has, said in the tags of a PDF: a voice that reads a weight can say whose it is, and of what.

The type engine looks for the heads of a cell in its row and in its column alone, takes a head over several rows for one of a
column, and gives heads a name without the table of names (PDF/UA, ISO 14289-1, 7.5; ISO 32000-1, table 322). So the page's
own `scope` and `headers` are written here, as HTML means them.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from manchet.records import NamedTuple

_SCOPES = {"row": "/Row", "col": "/Column", "rowgroup": "/Both", "colgroup": "/Both"}
"""HTML's word for what a head stands over, and the nearest that a PDF has."""


class _Cell(NamedTuple):
    """A cell in its table: its element in HTML and in the PDF, the number of its row group, and the rows and columns it covers."""

    html: Any
    tag: Any
    group: int
    rows: range
    columns: range

    @property
    def scope(self) -> str:
        """What it stands over; "" where it is no head."""
        return str(self.html.get("scope", "col")) if self.html.tag == "th" else ""


def head_tables(document: Any, pdf: Any) -> None:
    """The finisher of a PDF: what each head stands over, which heads each cell has, and the table of their names."""
    named: dict[bytes, bytes] = {}
    for side in document.pages:
        for box in side._page_box.descendants():
            if box.element_tag == "table" and not box.is_table_wrapper:
                cells = tuple(_cells(box))
                for cell in cells:
                    _say_heads(cell, cells)
                named |= {cell.tag["ID"].data: cell.tag.reference for cell in cells if cell.scope}
    if named:
        root = next(item for item in pdf.objects if item.reference == pdf.catalog["StructTreeRoot"])
        root["IDTree"] = b"<</Names [%s]>>" % b" ".join(b"%s %s" % pair for pair in sorted(named.items()))


def _cells(table: Any) -> Iterator[_Cell]:
    row = 0
    for group, rows in enumerate(table.children):
        for line in rows.children:
            for box in line.children:
                reach, wide = range(row, row + box.rowspan), range(box.grid_x, box.grid_x + box.colspan)
                # A cell that a side has no room for is not drawn there, and has no tag.
                if hasattr(box, "mark"):
                    yield _Cell(box.element, box.mark, group, reach, wide)
            row += 1


def _say_heads(cell: _Cell, cells: tuple[_Cell, ...]) -> None:
    if cell.scope:
        cell.tag["A"]["Scope"] = _SCOPES[cell.scope]
    else:
        wanted = cell.html.get("headers", "").split()
        heads = [
            head for head in cells if head.scope and (head.html.get("id") in wanted if wanted else _is_over(head, cell))
        ]
        cell.tag["A"]["Headers"] = b"[%s]" % b" ".join(head.tag["ID"].data for head in heads)


def _is_over(head: _Cell, cell: _Cell) -> bool:
    """As `scope` says it. A head of a row is that of the whole row: a weight before its ingredient is the ingredient's."""
    match head.scope:
        case "row":
            return _meet(head.rows, cell.rows)
        case "rowgroup":
            return head.group == cell.group and head.rows.start <= cell.rows.start
        case _:
            return head.rows.stop <= cell.rows.start and _meet(head.columns, cell.columns)


def _meet(some: range, others: range) -> bool:
    return some.start < others.stop and others.start < some.stop

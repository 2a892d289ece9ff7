"""The fixes of a mistake in a line, tried before they are offered: the line can then be read."""

from __future__ import annotations

from collections.abc import Set

from manchet.diagnostics.fixes import as_help
from manchet.syntax.line import read_line
from manchet.syntax.mistakes.faults import Fault, LineFix, in_place
from manchet.syntax.mistakes.lacking import lacking
from manchet.syntax.nodes import StepNode


def mending(fault: Fault, body: str, context: str) -> Fault:
    """The fault with those of its fixes by which the line can be read, and with no other fault than it has. Where more is
    wrong with the line than one fix mends, they all stay as advice."""
    if not fault.fixes:
        return fault
    before = {one.name for one in read_line(body, context).faults} - {fault.name}
    mended = (_mended(fix, body, context, before) for fix in fault.fixes)
    fixes = tuple({fix.title: fix for fix in mended if fix is not None}.values())
    return fault._replace(fixes=fixes, advice=as_help(fix.title for fix in fault.fixes))


def _mended(fix: LineFix, body: str, context: str, allowed: Set[str]) -> LineFix | None:
    """The fix, if the line can then be read and lacks nothing; in its normal form where it could only be read loosely."""
    typed = fix.of(body)
    found = read_line(typed, context)
    more = [text.split("\n")[1:] for _, _, text in fix.parts if text.find("\n") > 0]
    if any(read_line(line, context).trouble is not None for lines in more for line in lines):
        return None
    if found.trouble is not None or (type(found.node) is StepNode and lacking(found.node, (), typed) is not None):
        return None
    if all(fault.name in allowed for fault in found.faults):
        return fix
    if not more and len(found.faults) == 1 and found.faults[0].name == "read-as" and fix.title.startswith("write"):
        return in_place(0, len(body), found.faults[0].fixes[0].of(typed))
    return None

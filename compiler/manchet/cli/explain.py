"""Explain what a report means, why it matters and what to do; or what a caution says, and its source.

The name is in brackets at the end of every report. With no name given, lists them all.
"""

from __future__ import annotations

import argparse
import sys

from manchet.cli.screen import columns
from manchet.cli.status import FINE
from manchet.diagnostics.sarif import SarifRule
from manchet.workspace.trouble import Unknown

EXAMPLES = ("manchet explain salt-missing", "manchet explain lye-mixing", "manchet explain")


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "name", nargs="?", default="", metavar="NAME", help="the name in brackets, such as salt-missing"
    )


def run(options: argparse.Namespace) -> int:
    from manchet.cli.caution_text import caution_lines, caution_names, caution_title
    from manchet.diagnostics.catalogue import explain, names
    from manchet.diagnostics.suggest import nearest
    from manchet.diagnostics.text import wrap

    wide = columns(sys.stdout)
    if not options.name:
        for name in names():
            found = explain(name)
            print(wrap(f"{name:<36} {found.title if found else ''}".rstrip(), wide, " " * 37))
        for name in caution_names():
            print(wrap(f"{name:<36} {caution_title(name)}", wide, " " * 37))
        return FINE
    # Pasted with its brackets, as often as not.
    wanted = options.name.strip("[] ")
    case = explain(wanted)
    if case is None and wanted in caution_names():
        print("\n".join(wrap(line, wide, "") for line in caution_lines(wanted)))
        return FINE
    if case is None:
        near = nearest(wanted, (*names(), *caution_names()))
        raise Unknown(
            f"no report or caution is called {options.name}",
            f"near: {near}" if near else "manchet explain lists the names",
        )
    said = f"{case.name} ({case.severity}): {case.title}\n\n{case.text}"
    print("\n".join(wrap(line, wide, "") for line in said.split("\n")))
    if case.mistake:
        print(f"\nfor example\n\n{_indented(case.mistake)}")
        print(f"\ninstead\n\n{_indented(case.put_right)}")
    return FINE


def rule_for(name: str) -> SarifRule | None:
    """What the catalogue says of a report, as SARIF wants it."""
    from manchet.diagnostics.catalogue import explain

    found = explain(name)
    if found is None:
        from manchet.cli.caution_text import caution_lines, caution_names, caution_title

        return SarifRule(caution_title(name), "\n".join(caution_lines(name)[2:])) if name in caution_names() else None
    return SarifRule(found.title, found.text)


def _indented(text: str) -> str:
    return "\n".join(f"    {line}".rstrip() for line in text.rstrip("\n").split("\n"))

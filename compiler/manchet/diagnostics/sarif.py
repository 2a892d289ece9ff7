"""Reports as SARIF 2.1.0 (OASIS standard, 2020), which code hosts and editors read.

Paths are relative to the bakery's folder (`%SRCROOT%`); columns count code points. A finding is known again by its
fingerprint when lines above it come or go.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place, Severity
from manchet.diagnostics.json_form import in_three
from manchet.records import NamedTuple

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"


class SarifRule(NamedTuple):
    """What the catalogue says of one name: a title, and why it matters."""

    title: str
    text: str


def document(diagnostics: Sequence[Diagnostic], version: str, explained: Callable[[str], SarifRule | None]) -> str:
    """The whole log, with a newline at its end. `explained` gives the catalogue's entry for a name."""
    import json

    names = sorted({diagnostic.name for diagnostic in diagnostics})
    index = {name: number for number, name in enumerate(names)}
    value = {
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [
            {
                "tool": {
                    "driver": {
                        "name": "manchet",
                        "version": version,
                        "rules": [_rule(name, explained(name)) for name in names],
                    }
                },
                "columnKind": "unicodeCodePoints",
                "results": [_result(one, index[one.name]) for one in diagnostics],
            }
        ],
    }
    return json.dumps(value, indent=2) + "\n"


def _rule(name: str, rule: SarifRule | None) -> dict[str, object]:
    if rule is None:
        return {"id": name}
    return {"id": name, "shortDescription": {"text": rule.title}, "fullDescription": {"text": rule.text}}


def _result(diagnostic: Diagnostic, index: int) -> dict[str, object]:
    text = f"{diagnostic.message}. {diagnostic.help}" if diagnostic.help else diagnostic.message
    result: dict[str, object] = {
        "ruleId": diagnostic.name,
        "ruleIndex": index,
        "level": _level(diagnostic.severity),
        "message": {"text": text},
        "locations": [_location(diagnostic.place)],
        "partialFingerprints": {"lineWithoutSpaces/v1": _fingerprint(diagnostic)},
    }
    if diagnostic.related:
        result["relatedLocations"] = [
            {"id": number, "message": {"text": related.message}, **_location(related.place)}
            for number, related in enumerate(diagnostic.related, start=1)
        ]
    if diagnostic.fixes:
        result["fixes"] = [_fix(fix) for fix in diagnostic.fixes]
    return result


def _fix(fix: Fix) -> dict[str, object]:
    """A change of each file that the fix touches (the standard, 3.55)."""
    changed: dict[str, list[dict[str, object]]] = {}
    for edit in fix.edits:
        changed.setdefault(edit.place.path, []).append(_replacement(edit))
    return {
        "description": {"text": fix.title},
        "artifactChanges": [
            {"artifactLocation": _artifact(path), "replacements": replacements}
            for path, replacements in changed.items()
        ],
    }


def _replacement(edit: Edit) -> dict[str, object]:
    replaced: dict[str, object] = {"deletedRegion": _region(edit.place)}
    return replaced | {"insertedContent": {"text": edit.text}} if edit.text else replaced


def _fingerprint(diagnostic: Diagnostic) -> str:
    """Of the report's name and its line without spaces: the same for a line that was moved or put in its column."""
    from hashlib import sha256

    written = "".join(diagnostic.place.text.split())
    return sha256(f"{diagnostic.name}\n{written}".encode("utf-8", "replace")).hexdigest()[:32]


def _level(severity: Severity) -> str:
    """SARIF's words for how bad it is are ours; it has none for a caution."""
    return in_three(severity).value


def _location(place: Place) -> dict[str, object]:
    return {"physicalLocation": {"artifactLocation": _artifact(place.path), "region": _region(place)}}


def _artifact(path: str) -> dict[str, object]:
    from urllib.parse import quote

    return {"uri": quote(path.encode("utf-8", "replace")), "uriBaseId": "%SRCROOT%"}


def _region(place: Place) -> dict[str, object]:
    return {
        "startLine": max(place.line, 1),
        "startColumn": max(place.column, 1),
        "endLine": max(place.end_line, 1),
        "endColumn": max(place.end_column, 1),
    }

"""How a report looks: text with a caret, one line, JSON, SARIF; and nothing in it can harm the terminal."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from manchet.cli.reporting import from_here
from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place, Related, Severity
from manchet.diagnostics.json_form import document
from manchet.diagnostics.sarif import SarifRule, document as sarif
from manchet.diagnostics.terminal import show, width
from manchet.diagnostics.text import COLOURED, WIDEST, full, short, summary


def report(text: str, column: int, end: int, **more: object) -> Diagnostic:
    place = Place("breads/tern.bake", 12, column, 12, end, text)
    one = Diagnostic("salt-missing", Severity.WARNING, "there is no salt", place, "write salt 2%")
    return one._replace(**more)


def test_the_caret_stands_under_what_is_meant() -> None:
    assert full(report("    salt     2.1%", 5, 9)).split("\n") == [
        "breads/tern.bake:12:5: warning: there is no salt [salt-missing]",
        "   12 |     salt     2.1%",
        "      |     ^^^^",
        "  help: write salt 2%",
    ]


def test_the_caret_allows_for_wide_characters_marks_and_escapes() -> None:
    line = full(report("小麦粉 e\u0301 \x1b salt", 10, 14)).split("\n")
    assert line[1] == "   12 | 小麦粉 e\u0301 \\u001b salt"
    assert line[2] == "      | " + " " * width("小麦粉 e\u0301 \\u001b ") + "^^^^"
    assert width("小麦粉 e\u0301 ") == 9


def test_a_second_place_is_quoted_too() -> None:
    first = Place("larder.bake", 3, 3, 3, 7, "  salt")
    said = full(report("  salt", 3, 7, related=(Related(first, "the first one"),)))
    assert said.endswith("  larder.bake:3:3: the first one\n    3 |   salt\n      |   ^^^^")


def test_a_line_of_a_megabyte_is_quoted_round_the_caret() -> None:
    said = full(report("a" * 500_000 + "salt" + "b" * 500_000, 500_001, 500_005))
    quoted, caret = said.split("\n")[1:3]
    assert len(quoted) < WIDEST + 10
    assert quoted[caret.index("^") :].startswith("salt")
    assert caret.count("^") == 4


@pytest.mark.parametrize("end", [0, 1, 5, 400])
def test_places_beyond_the_line_are_borne(end: int) -> None:
    assert "^" in full(report("salt", 90, end))


HOSTILE = "a\x1b[31m\x9b2J\r\u202eb\u2066\u200b\ue000\ud800\u2028\x07\u00ad"


def test_nothing_hidden_reaches_the_terminal() -> None:
    place = Place(HOSTILE, 1, 1, 1, 2, HOSTILE)
    hostile = Diagnostic("x", Severity.ERROR, HOSTILE, place, HOSTILE, (Related(place, HOSTILE),))
    for said in (full(hostile), short(hostile)):
        assert all(character.isprintable() or character == "\n" for character in said)
    assert show(HOSTILE) == ("a\\u001b[31m\\u009b2J\\u000d\\u202eb\\u2066\\u200b\\ue000\\ud800\\u2028\\u0007\\u00ad")
    assert json.dumps(HOSTILE)[1:-1] in document([hostile], 1, 1)
    assert document([hostile], 1, 1).isascii()


def test_only_our_own_colours_are_escapes() -> None:
    said = full(report("salt \x1b[0m", 1, 5), COLOURED)
    for escape in COLOURED:
        said = said.replace(escape, "")
    assert "\x1b" not in said


def test_the_summary_counts() -> None:
    errors = report("salt", 1, 2, severity=Severity.ERROR)
    assert summary([], 1, 1) == "nothing to report; 1 formula in 1 file"
    assert summary([errors, errors, report("salt", 1, 2)], 1200, 2) == "2 errors, 1 warning; 1,200 formulas in 2 files"


PLACE = {
    "path": {"type": "string"},
    "line": {"type": "integer", "minimum": 1},
    "column": {"type": "integer", "minimum": 1},
    "end_line": {"type": "integer", "minimum": 1},
    "end_column": {"type": "integer", "minimum": 1},
}
RELATED = {
    "type": "object",
    "properties": {"message": {"type": "string"}, **PLACE},
    "required": ["message", *PLACE],
    "additionalProperties": False,
}
POINT = {
    "type": "object",
    "properties": {name: {"type": "integer", "minimum": 1} for name in ("line", "column")},
    "required": ["line", "column"],
    "additionalProperties": False,
}
EDIT = {
    "type": "object",
    "properties": {"path": {"type": "string"}, "start": POINT, "end": POINT, "text": {"type": "string"}},
    "required": ["path", "start", "end", "text"],
    "additionalProperties": False,
}
FIX = {
    "type": "object",
    "properties": {
        "title": {"type": "string", "minLength": 1},
        "safe": {"type": "boolean"},
        "edits": {"type": "array", "minItems": 1, "items": EDIT},
    },
    "required": ["title", "safe", "edits"],
    "additionalProperties": False,
}
REPORT = {
    "type": "object",
    "properties": {
        "name": {"type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$"},
        "severity": {"enum": ["error", "warning", "note"]},
        "message": {"type": "string", "minLength": 1},
        "help": {"type": "string"},
        **PLACE,
        "related": {"type": "array", "items": RELATED},
        "fixes": {"type": "array", "items": FIX},
    },
    "additionalProperties": False,
}
REPORT["required"] = list(REPORT["properties"])  # type: ignore[call-overload]
COUNTS = ("errors", "warnings", "notes", "formulas", "files")
DOCUMENT = {
    "type": "object",
    "properties": {
        "format": {"const": "manchet check"},
        "version": {"const": 1},
        "summary": {
            "type": "object",
            "properties": {name: {"type": "integer", "minimum": 0} for name in COUNTS},
            "required": list(COUNTS),
            "additionalProperties": False,
        },
        "diagnostics": {"type": "array", "items": REPORT},
    },
    "required": ["format", "version", "summary", "diagnostics"],
    "additionalProperties": False,
}


def some() -> list[Diagnostic]:
    first = Place("larder.bake", 3, 3, 3, 7, "  salt")
    return [
        report("salt", 1, 5, severity=Severity.ERROR, related=(Related(first, "here"),)),
        report("salt", 1, 5, severity=Severity.NOTE, help=""),
        report("salt", 1, 5, fixes=(Fix("write `sea salt`", (Edit(first, "sea salt"), Edit(first, ""))),)),
        Diagnostic("file-unreadable", Severity.ERROR, "it cannot be read", Place("a b/ö#?.bake", 1, 1, 1, 1)),
    ]


def test_json_keeps_its_shape() -> None:
    value = json.loads(document(some(), 2, 3))
    Draft202012Validator(DOCUMENT).validate(value)
    assert value["summary"] == {"errors": 2, "warnings": 1, "notes": 1, "formulas": 2, "files": 3}


MESSAGE = {"type": "object", "properties": {"text": {"type": "string", "minLength": 1}}, "required": ["text"]}
ARTIFACT = {
    "type": "object",
    "properties": {"uri": {"type": "string", "pattern": "^[!-~]+$"}, "uriBaseId": {"type": "string"}},
    "required": ["uri"],
    "additionalProperties": False,
}
REGION = {
    "type": "object",
    "properties": {
        name: {"type": "integer", "minimum": 1} for name in ("startLine", "startColumn", "endLine", "endColumn")
    },
    "required": ["startLine"],
    "additionalProperties": False,
}
LOCATION = {
    "type": "object",
    "properties": {
        "id": {"type": "integer", "minimum": 0},
        "message": MESSAGE,
        "physicalLocation": {
            "type": "object",
            "properties": {"artifactLocation": ARTIFACT, "region": REGION},
            "required": ["artifactLocation"],
            "additionalProperties": False,
        },
    },
    "additionalProperties": False,
}
REPLACEMENT = {
    "type": "object",
    "properties": {"deletedRegion": REGION, "insertedContent": MESSAGE},
    "required": ["deletedRegion"],
    "additionalProperties": False,
}
CHANGE = {
    "type": "object",
    "properties": {
        "artifactLocation": ARTIFACT,
        "replacements": {"type": "array", "minItems": 1, "items": REPLACEMENT},
    },
    "required": ["artifactLocation", "replacements"],
    "additionalProperties": False,
}
SARIF_FIX = {
    "type": "object",
    "properties": {
        "description": MESSAGE,
        "artifactChanges": {"type": "array", "minItems": 1, "uniqueItems": True, "items": CHANGE},
    },
    "required": ["artifactChanges"],
    "additionalProperties": False,
}
SARIF = {
    "type": "object",
    "properties": {
        "$schema": {"type": "string", "format": "uri"},
        "version": {"const": "2.1.0"},
        "runs": {
            "type": "array",
            "minItems": 1,
            "items": {
                "type": "object",
                "properties": {
                    "tool": {
                        "type": "object",
                        "properties": {
                            "driver": {
                                "type": "object",
                                "properties": {
                                    "name": {"type": "string"},
                                    "version": {"type": "string"},
                                    "rules": {
                                        "type": "array",
                                        "uniqueItems": True,
                                        "items": {
                                            "type": "object",
                                            "properties": {
                                                "id": {"type": "string"},
                                                "shortDescription": MESSAGE,
                                                "fullDescription": MESSAGE,
                                            },
                                            "required": ["id"],
                                            "additionalProperties": False,
                                        },
                                    },
                                },
                                "required": ["name"],
                                "additionalProperties": False,
                            }
                        },
                        "required": ["driver"],
                        "additionalProperties": False,
                    },
                    "columnKind": {"enum": ["utf16CodeUnits", "unicodeCodePoints"]},
                    "results": {
                        "type": "array",
                        "items": {
                            "type": "object",
                            "properties": {
                                "ruleId": {"type": "string"},
                                "ruleIndex": {"type": "integer", "minimum": 0},
                                "level": {"enum": ["none", "note", "warning", "error"]},
                                "message": MESSAGE,
                                "locations": {"type": "array", "items": LOCATION},
                                "relatedLocations": {"type": "array", "uniqueItems": True, "items": LOCATION},
                                "partialFingerprints": {
                                    "type": "object",
                                    "additionalProperties": {"type": "string"},
                                },
                                "fixes": {"type": "array", "uniqueItems": True, "items": SARIF_FIX},
                            },
                            "required": ["message"],
                            "additionalProperties": False,
                        },
                    },
                },
                "required": ["tool"],
                "additionalProperties": False,
            },
        },
    },
    "required": ["version", "runs"],
    "additionalProperties": False,
}
"""The parts of SARIF 2.1.0 (OASIS, 2020) that we write, with the limits the standard sets for them."""


def test_sarif_keeps_to_the_standard() -> None:
    value = json.loads(sarif(some(), "1.0", lambda name: SarifRule("title", "text") if "salt" in name else None))
    Draft202012Validator(SARIF).validate(value)
    (run,) = value["runs"]
    rules = run["tool"]["driver"]["rules"]
    for result in run["results"]:
        assert rules[result["ruleIndex"]]["id"] == result["ruleId"]
    assert run["results"][3]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] == "a%20b/%C3%B6%23%3F.bake"


def test_a_finding_is_known_again_when_its_line_moves() -> None:
    def prints(one: Diagnostic) -> str:
        (run,) = json.loads(sarif([one], "1.0", lambda name: None))["runs"]
        found: str = run["results"][0]["partialFingerprints"]["lineWithoutSpaces/v1"]
        return found

    here = report("  salt     2%", 3, 7)
    moved = report("    salt 2%", 5, 9)
    moved = moved._replace(place=moved.place._replace(line=40, end_line=40))
    assert prints(here) == prints(moved) != prints(report("  salt     3%", 3, 7))
    assert prints(here) != prints(here._replace(name="salt-low"))


def test_a_file_is_named_as_it_is_from_here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The bakery begins above, where its kitchen stands; who works in a folder below it types names of that folder."""
    here = tmp_path / "breads"
    here.mkdir()
    monkeypatch.chdir(here)
    places = [Place(path, 1, 1, 1, 2, "x") for path in ("../breads/tern.bake", "../kitchen.bake", "tern.bake")]
    reports = [
        Diagnostic("salt-missing", Severity.NOTE, "x", place, fixes=(Fix("x", (Edit(place, ""),)),)) for place in places
    ]
    shown = from_here(reports)
    assert {one.place.path for one in shown} == {"tern.bake", "../kitchen.bake"}
    assert {edit.place.path for one in shown for fix in one.fixes for edit in fix.edits} == {
        "tern.bake",
        "../kitchen.bake",
    }

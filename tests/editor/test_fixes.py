"""What the editor can type for a report."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from editor.client import ABLE, Client, client
from editor.houses import LOAF, house, write_house
from every import every

from manchet.diagnostics.catalogue import explain, names
from manchet.diagnostics.diagnostic import Fix
from manchet.diagnostics.names import REPORTS
from manchet.editor.fixes import repairs
from manchet.editor.reports import may_be_allowed, reports_on
from manchet.source.mending import mend

NO_SALT = LOAF.replace("    salt                   2%\n", "")
HASTE = LOAF.replace("ferment covered 2 h at", "ferment covered 2 hours @").replace("cool 2 h", "cool 2h30")
OF_CRAFT = [name for name in names() if REPORTS[name][1].startswith("checks/")]


@every(OF_CRAFT, at_least=100)
def test_what_is_allowed_is_told_no_more(name: str) -> None:
    case = explain(name)
    assert case is not None
    if REPORTS[name][0] == "error" or not case.mistake or name in ("allow-unused", "unknown-allow"):
        return
    bakery = house({"case.bake": case.mistake})
    report = next(one for one in reports_on(bakery, "case.bake") if one.name == name)
    file = bakery.tree("case.bake")
    assert file is not None
    assert may_be_allowed(report)
    offered = [one for one in repairs(file, [report], 1, 10_000) if one.title.startswith("allow ")]
    if not offered:
        assert name in OF_THE_HOUSE
        return
    mended = mend("case.bake", case.mistake, [Fix("", offered[0].edits)])
    assert mended.done
    after = [one.name for one in reports_on(house({"case.bake": mended.text}), "case.bake")]
    assert name not in after and "allow-unused" not in after and "unknown-allow" not in after


OF_THE_HOUSE: frozenset[str] = frozenset()
"""Reports that stand in no formula."""


def _actions(editor: Client, line: int, only: list[str] | None = None) -> list[dict[str, Any]]:
    at = {"line": line, "character": 0}
    context = {"diagnostics": [], **({} if only is None else {"only": only})}
    params = {
        "textDocument": {"uri": editor.uri("breads/plain.bake")},
        "range": {"start": at, "end": at},
        "context": context,
    }
    return list(editor.ask("textDocument/codeAction", params))


def _typed(text: str, edits: list[dict[str, Any]]) -> str:
    """A text of plain letters after some edits of the protocol."""
    lines = text.split("\n")
    for edit in sorted(
        edits, key=lambda one: (one["range"]["start"]["line"], one["range"]["start"]["character"]), reverse=True
    ):
        start, end = edit["range"]["start"], edit["range"]["end"]
        before, after = lines[start["line"]][: start["character"]], lines[end["line"]][end["character"] :]
        lines[start["line"] : end["line"] + 1] = (before + edit["newText"] + after).split("\n")
    return "\n".join(lines)


def test_a_quick_fix_leaves_no_report(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        wrong = LOAF.replace("white flour ", "white flower ")
        editor.open("breads/plain.bake", wrong)
        fix = _actions(editor, 5, ["quickfix"])[0]
        assert fix["title"] == "write `white flour`" and fix["isPreferred"]
        assert fix["diagnostics"][0]["code"] == "unknown-ingredient"
        edits = fix["edit"]["changes"][editor.uri("breads/plain.bake")]
        assert editor.type("breads/plain.bake", _typed(wrong, edits)) == []


def test_what_is_meant_so_is_allowed_with_the_cursor_at_its_reason(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake", NO_SALT)
        (allow,) = _actions(editor, 0)
        assert allow["title"] == 'allow salt-missing because "…"'
        text = _typed(NO_SALT, allow["edit"]["changes"][editor.uri("breads/plain.bake")])
        assert text.split("\n")[3] == '  allow salt-missing because ""'
        assert editor.type("breads/plain.bake", text) == []
        command = allow["command"]
        editor.ask("workspace/executeCommand", {"command": command["command"], "arguments": command["arguments"]})
        shown = next(one["params"] for one in editor.asked if one["method"] == "window/showDocument")
        at = shown["selection"]["start"]
        assert text.split("\n")[at["line"]][: at["character"]].endswith('because "')


def test_every_safe_fix_at_once(tmp_path: Path) -> None:
    for able in (ABLE, {key: ABLE[key] for key in ("general", "workspace")}):
        with client(write_house(tmp_path), able=able) as editor:
            editor.open("breads/plain.bake", HASTE)
            (fix,) = _actions(editor, 0, ["source.fixAll"])
            assert fix["kind"] == "source.fixAll.manchet"
            if "edit" not in fix:
                fix = editor.ask("codeAction/resolve", fix)
            text = _typed(HASTE, fix["edit"]["changes"][editor.uri("breads/plain.bake")])
            assert text == LOAF.replace("cool 2 h", "cool 2 h 30 min")
            assert _actions(editor, 0, ["refactor"]) == []

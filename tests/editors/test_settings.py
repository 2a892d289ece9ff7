"""The settings for other editors: each is read by a parser of its own notation, and starts the same server for the same files."""

from __future__ import annotations

import json
import plistlib
import tomllib
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import sexpdata
from lupa import LuaRuntime

EDITORS = Path(__file__).parents[2] / "grammar" / "editors"
COMMAND = ["manchet", "editor"]


def text(name: str) -> str:
    return (EDITORS / name).read_text(encoding="utf-8")


def test_neovim() -> None:
    """Run by Lua itself, in a Neovim that writes down what it is told."""
    lua: Any = LuaRuntime()
    lua.execute("""
        told = {}
        vim = { filetype = { add = function(what) told.extension = what.extension.bake end },
                lsp = { config = function(name, what) told[name] = what end,
                        enable = function(name) told.enabled = name end } }
    """)
    lua.execute(text("neovim.lua"))
    told = lua.globals().told
    server = told[told.enabled]
    assert list(server.cmd.values()) == COMMAND
    assert list(server.filetypes.values()) == [told.extension] == ["bake"]


def test_helix() -> None:
    settings = tomllib.loads(text("helix.toml"))
    (language,) = settings["language"]
    (name,) = language["language-servers"]
    server = settings["language-server"][name]
    assert [server["command"], *server["args"]] == COMMAND
    assert (language["file-types"], language["comment-token"]) == (["bake"], "#")
    assert language["scope"] == json.loads(text("bake.tmLanguage.json"))["scopeName"]


def test_emacs() -> None:
    forms = sexpdata.loads(f"({text('emacs.el')})", nil=None, true=None)
    assert [form[0].value() for form in forms] == [
        "define-derived-mode",
        "add-to-list",
        "with-eval-after-load",
        "add-hook",
    ]
    mode = forms[0][1].value()
    assert "bake" in sexpdata.dumps(forms[1]) and all(
        mode.removesuffix("-mode") in sexpdata.dumps(form) for form in forms
    )
    assert '"manchet" "editor")' in sexpdata.dumps(forms[2])


def test_kate() -> None:
    (server,) = json.loads(text("kate.json"))["servers"].values()
    language = ElementTree.fromstring(text("bake.xml"))
    assert server["command"] == COMMAND
    assert server["highlightingModeRegex"] == f"^{language.get('name')}$" and language.get("extensions") == "*.bake"
    drawn = {item.get("name") for item in language.iter("itemData")}
    assert {rule.get("attribute") for context in language.iter("context") for rule in context.iter()} <= drawn


def test_sublime() -> None:
    (client,) = json.loads(text("sublime.json"))["clients"].values()
    colours = plistlib.loads(text("bake.tmLanguage").encode())
    assert client["command"] == COMMAND and client["selector"] == colours["scopeName"]
    assert colours == json.loads(text("bake.tmLanguage.json"))

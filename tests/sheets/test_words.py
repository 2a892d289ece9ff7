"""Each language has every printed word, in its own spelling."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from typing import Any

import pytest

import manchet.sheets
from manchet.sheets.page.words import DEFAULT, LANGUAGES, OVERLAYS, words_by_folder, words_of

SHEETS = Path(manchet.sheets.__path__[0])


def phrases(table: Any, path: str = "") -> dict[str, Any]:
    """Every phrase by its address."""
    found: dict[str, Any] = {}
    for name, value in table.items():
        found |= phrases(value, f"{path}{name}.") if isinstance(value, dict) else {path + name: value}
    return found


def places(phrase: str | list[str]) -> int:
    """How many places a phrase leaves open, or how many words a list has."""
    return phrase.count("{}") if isinstance(phrase, str) else len(phrase)


def test_every_language_has_the_same_words_with_the_same_places() -> None:
    base = phrases(words_of(DEFAULT).table)
    assert len(base) > 500
    for language in LANGUAGES:
        said = phrases(words_of(language).table)
        assert [address for address, phrase in base.items() if places(said[address]) != places(phrase)] == []
        assert list(said) == list(base)


@pytest.mark.parametrize("language", OVERLAYS)
def test_an_overlay_says_only_what_it_prints_otherwise(language: str) -> None:
    words = phrases(words_of(language).table)
    for folder, overlay in words_by_folder(language).items():
        base, said = phrases(words_by_folder(DEFAULT)[folder]), phrases(overlay)
        assert [address for address in said if address not in base] == [], f"{folder}: no such word there"
        assert [address for address, phrase in said.items() if phrase == base[address]] == [], (
            f"{folder}: as in the base"
        )
        assert {address: words[address] for address in said} == said


def test_no_word_stands_in_two_folders() -> None:
    folders = {folder: phrases(said) for folder, said in words_by_folder(DEFAULT).items()}
    assert len(folders) > 5
    addresses = [address for said in folders.values() for address in said]
    assert sorted(set(addresses)) == sorted(addresses)


ANY_NAME = re.compile(r"""["'](\w+)\.\w*["'] \+|["'](\w+)\.\{|known\(["'](\w+)["']""")
"""Where the name of a word is put together: `words["verbs." + verb]`. Then any of its group may be printed."""

NAME = re.compile(r"""["'](\w+\.[\w -]+|\w+)["'](?! \+)|\bw\.(\w+(?:\.\w+)?)""")
"""Where one may be named whole: `words["foot.salt"]`, and `w.foot.salt` in a template."""


@cache
def source() -> str:
    files = [file for ending in ("*.py", "*.html", "*.css", "*.svg") for file in SHEETS.rglob(ending)]
    files += (SHEETS.parent / "workspace").rglob("*.py")
    return "\n".join(file.read_text(encoding="utf-8") for file in files)


@cache
def named() -> set[str]:
    return {name for found in NAME.findall(source()) for name in found if name}


def test_every_word_is_printed_somewhere() -> None:
    open_groups = {name for found in ANY_NAME.findall(source()) for name in found if name} | {"forms"}
    words = phrases(words_of(DEFAULT).table)
    assert [word for word in words if word not in named() and word.split(".")[0] not in open_groups] == []


def test_every_word_that_is_named_is_there() -> None:
    words, groups = phrases(words_of(DEFAULT).table), words_of(DEFAULT).table
    assert len(named() & words.keys()) > 300
    assert [name for name in named() if name.split(".")[0] in groups and "." in name and name not in words] == []


def test_each_house_has_its_own_spelling() -> None:
    british, american = words_of("British"), words_of("American")
    assert (british["verbs.prove"], american["verbs.prove"]) == ("Prove", "Proof")
    assert (british["nouns.tins"], american["nouns.tins"]) == ("tins", "pans")
    assert (british["vent"], american["vent"]) == ("damper", "vent")
    assert words_of("")["language"] == "en-GB"


def test_every_verb_and_manner_of_the_language_can_be_printed() -> None:
    from manchet.syntax.phrases import CLAUSES
    from manchet.syntax.vocabulary import VERBS

    verbs = {verb.word for verb in VERBS}
    manners = {p.canonical for found in CLAUSES.values() for p in found if p.token == "MANNER"}
    assert len(verbs) > 40 and len(manners) > 10
    for language in LANGUAGES:
        assert [verb for verb in verbs if words_of(language).known("verbs", verb) is None] == []
        assert [word for word in manners if words_of(language).known("manner", word) is None] == []


def test_a_word_that_is_missing_is_an_error_not_a_gap() -> None:
    with pytest.raises(KeyError):
        words_of("British")["no such word"]
    with pytest.raises(KeyError):
        words_of("British").say("replaces")

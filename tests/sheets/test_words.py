"""Each language has every printed word, in its own spelling."""

from __future__ import annotations

from typing import Any

import pytest

from manchet.sheets.words_of import TABLES, words_of


def shape(table: Any, path: str = "") -> dict[str, int]:
    """Every phrase by its address, and how many places it leaves open."""
    found: dict[str, int] = {}
    for name, value in table.items():
        if isinstance(value, dict):
            found |= shape(value, f"{path}{name}.")
        else:
            found[path + name] = value.count("{}") if isinstance(value, str) else len(value)
    return found


def test_the_tables_have_the_same_words_with_the_same_places() -> None:
    shapes = {name: shape(words_of(name).table) for name in TABLES}
    assert shapes["British"] == shapes["American"]


def test_each_house_has_its_own_spelling() -> None:
    british, american = words_of("British"), words_of("American")
    assert (british["verbs.prove"], american["verbs.prove"]) == ("Prove", "Proof")
    assert (british["nouns.tins"], american["nouns.tins"]) == ("tins", "pans")
    assert (british["vent"], american["vent"]) == ("damper", "vent")
    assert words_of("")["language"] == "en-GB"


def test_every_verb_and_manner_of_the_language_can_be_printed() -> None:
    from manchet.syntax.classes import VERBS

    verbs = {o.canonical for openings in VERBS.values() for o in openings if o.token == "VERB"}
    phrases = [o.reading.phrases for openings in VERBS.values() for o in openings if o.token == "VERB"]
    manners = {p.canonical for some in phrases for found in some.values() for p in found if p.token == "MANNER"}
    assert len(verbs) > 40 and len(manners) > 10
    for language in TABLES:
        assert [verb for verb in verbs if words_of(language).known("verbs", verb) is None] == []
        assert [word for word in manners if words_of(language).known("manner", word) is None] == []


def test_a_word_that_is_missing_is_an_error_not_a_gap() -> None:
    with pytest.raises(KeyError):
        words_of("British")["no such word"]
    with pytest.raises(KeyError):
        words_of("British").say("page", "1")

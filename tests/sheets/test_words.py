"""Each language has every printed word, in its own spelling."""

from __future__ import annotations

from typing import Any

import pytest

from manchet.sheets.words_of import DEFAULT, LANGUAGES, OVERLAYS, table_called, words_of


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
    base, overlay = phrases(words_of(DEFAULT).table), phrases(table_called(OVERLAYS[language]))
    assert [address for address in overlay if address not in base] == [], "the base has no such word"
    assert [address for address, phrase in overlay.items() if phrase == base[address]] == [], "as in the base"
    assert all(phrases(words_of(language).table)[address] == phrase for address, phrase in overlay.items())


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
        words_of("British").say("page", "1")

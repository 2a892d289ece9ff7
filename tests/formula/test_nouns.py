"""One loaf, two loaves; and what is no sure plural stays as the baker wrote it."""

from __future__ import annotations

from fractions import Fraction

from every import every

from manchet.formula.nouns import noun_beside, noun_for, same_noun, singular

ONE = {
    "loaves": "loaf", "rolls": "roll", "baguettes": "baguette", "batches": "batch", "boxes": "box", "buns": "bun",
    "plaits": "plait", "brioches": "brioche", "pastries": "pastry", "cookies": "cookie", "small loaves": "small loaf",
    "loaves of rye": "loaf of rye", "buns with seeds": "bun with seeds", "Loaves": "Loaf", "wreaths": "wreath",
    "rounds": "round", "pitas": "pitas", "couronnes": "couronne", "radishes": "radish", "pieces": "piece",
}  # fmt: skip
AS_WRITTEN = ["loaf", "focaccia", "panettone", "bread", "olives", "chives", "citrus", "brioche", "mass", "naan"]


@every(ONE.items(), at_least=20)
def test_the_singular(many: str, one: str) -> None:
    assert singular(many) == one
    assert noun_for(Fraction(1), many) == one
    assert noun_for(Fraction(2), many) == many
    assert same_noun(many, one) and same_noun(one, many)


@every(AS_WRITTEN, at_least=10)
def test_what_is_no_sure_plural_stays(noun: str) -> None:
    assert singular(noun) == noun


def test_a_word_and_its_plural_are_one() -> None:
    for one, many in (
        ("olive", "olives"),
        ("knife", "knives"),
        ("potato", "potatoes"),
        ("pita", "pitas"),
        ("Loaf", "loaves"),
    ):
        assert same_noun(one, many)
    assert not same_noun("loaf", "rolls")


@every(
    [
        ("Ebb rye", "loaves", "loaves"), ("Weir rolls", "rolls", ""), ("Tern loaf", "loaves", ""),
        ("Regatta plait", "buns", "buns"), ("Small Rolls", "small rolls", ""), ("Mill loaf", "", ""), ("", "loaves", "loaves"),
    ],
    at_least=7,
)  # fmt: skip
def test_no_label_has_its_noun_twice(name: str, noun: str, beside: str) -> None:
    assert noun_beside(name, noun) == beside

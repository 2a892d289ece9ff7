"""One loaf, two loaves; and what is no sure plural stays as the baker wrote it."""

from __future__ import annotations

from fractions import Fraction

from every import every

from manchet.formula.nouns import be, noun_beside, noun_for, number_beside, pieces_of, same_noun, singular

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


@every(
    [
        (20, "rolls", "Weir rolls", "20 Weir rolls", "20"), (1, "rolls", "Weir rolls", "1 Weir roll", "1"),
        (16, "loaves", "Tern loaf", "16 Tern loaves", "16"), (30, "buns", "Regatta plait", "30 buns of Regatta plait", "30 buns"),
        (1, "plaits", "Harbour bread", "1 plait of Harbour bread", "1 plait"),
    ],
    at_least=5,
)  # fmt: skip
def test_how_many_of_a_bread(number: int, noun: str, name: str, said: str, beside: str) -> None:
    assert pieces_of(number, noun, name) == said
    assert number_beside(name, number, noun) == beside


@every([("Weir rolls", "are"), ("Tern loaf", "is"), ("Ebb rye", "is"), ("small loaves", "are")], at_least=4)
def test_a_name_that_is_a_plural_has_its_verb(name: str, verb: str) -> None:
    assert be(name) == verb

"""Every word of the closed lists has its drawing, with a title in words; a word we have none for gets none."""

from __future__ import annotations

from fractions import Fraction
from typing import Any
from xml.etree import ElementTree

import pytest

from manchet.diagnostics.diagnostic import Place
from manchet.figures.oven_floor import GAP, places
from manchet.formula.model import Heat, Range, Reach, Step, Work
from manchet.larder.kitchen import Floor
from manchet.sheets.drawings.choosing import SHAPE_WORDS, bake_curve, drawings_of, vessel_of
from manchet.sheets.drawings.oven import plan
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.drawings.plaits import MOVES
from manchet.sheets.measures import Measures
from manchet.sheets.views import House
from manchet.sheets.words_of import words_of

M = Measures(House(), words_of("British"))
NOWHERE = Place("", 1, 1, 1, 1)
SVG = "{http://www.w3.org/2000/svg}"

PLAITS = {"plait of 3": 3, "plait of four strands": 4, "six-strand plait": 6, "braid of 3": 3, "4-strand braid": 4}
SCORES = {
    "one long cut": "one long",
    "two long cuts, overlapping by a third": "two overlapping",
    "one cross, a finger deep": "cross",
    "a cross": "cross",
    "a square, 6 mm deep": "square",
    "a leaf": "leaf",
    "five slanted cuts": "slanted row",
}
NO_SCORE = ("", "the thick part, a finger deep", "one curved cut, shallow", "a ladder of short cuts", "two crosses",
            "no cross", "one cross and a leaf", "a leaf on one side only", "crossing cuts", "a square of paper on top")  # fmt: skip


def size(across: int, deep: int, is_round: bool = False) -> Floor:
    return Floor(Fraction(across), Fraction(deep), is_round)


def step(verb: str, **more: Any) -> Step:
    return Step(verb, Work.HANDS, NOWHERE, **more)


def once(figure: int) -> Range:
    return Range(Fraction(figure), Fraction(figure))


def one(found: tuple[Drawing, ...]) -> Drawing:
    assert len(found) == 1
    return found[0]


def every_drawing() -> list[Drawing]:
    found = [one(drawings_of(step("shape", shape=word), M)) for word in (*SHAPE_WORDS, *PLAITS)]
    found += [one(drawings_of(step("score", how=how), M)) for how in SCORES]
    found += [one(drawings_of(step("fold", manner=(way,)), M)) for way in ("in three", "in four")]
    rim = step("prove", reaches=(Reach("below rim", once(20)),))
    found += [one(drawings_of(rim, M, vessel)) for vessel in ("tin", "basket")]
    found.append(one(drawings_of(step("prove", until="a fingertip's mark fills slowly"), M)))
    falls = step("bake", time=once(1800), heats=(Heat(once(230)),), ramp=("falling", once(210)))
    fallen = bake_curve((falls,), M)
    assert fallen is not None
    floor, loaf = size(1200, 800), Fraction(220)
    return [
        *found,
        fallen,
        drawing(
            "floor",
            "floor",
            plan(floor, places(floor, loaf, loaf, Fraction(40)), loaf, loaf, "door", "", Fraction(450)),
        ),
    ]


@pytest.mark.parametrize("word", SHAPE_WORDS)
def test_every_shape_has_its_drawing(word: str) -> None:
    assert one(drawings_of(step("shape", shape=word), M)).name == SHAPE_WORDS[word]


@pytest.mark.parametrize("word", ["plait", "braid", "plait of 5", "star", "knotted ring", "", "round-ish", "strand"])
def test_a_shape_we_have_no_drawing_for_gets_none(word: str) -> None:
    assert drawings_of(step("shape", shape=word), M) == ()


@pytest.mark.parametrize("word", PLAITS)
def test_a_plait_says_its_moves_with_numbers(word: str) -> None:
    found = one(drawings_of(step("shape", shape=word), M))
    strands = PLAITS[word]
    written = [node.text for node in ElementTree.fromstring(found.svg).iter(SVG + "text")]
    assert written[:strands] == [str(n) for n in range(1, strands + 1)]
    for start, end in MOVES[strands][1]:
        assert f"{start} over {end}" in found.title and f"{start} over {end}" in written


@pytest.mark.parametrize("strands", MOVES)
def test_a_plait_takes_every_strand_in_turn(strands: int) -> None:
    """Done long enough, each strand has lain on top: no strand is left hanging straight down."""
    first, again = MOVES[strands]
    order, moved = list(range(strands)), set()
    for start, end in (*first, *(again * strands * 2)):
        strand = order.pop(start - 1)
        order.insert(end - 1, strand)
        moved.add(strand)
    assert moved == set(range(strands))


@pytest.mark.parametrize(("how", "name"), SCORES.items())
def test_a_score_that_plainly_says_one_thing(how: str, name: str) -> None:
    assert one(drawings_of(step("score", how=how), M)).name == name


@pytest.mark.parametrize("how", NO_SCORE)
def test_a_score_in_doubt_gets_none(how: str) -> None:
    assert drawings_of(step("score", how=how), M) == ()


def test_depth_and_angle_are_said_as_the_file_says_them() -> None:
    found = one(drawings_of(step("score", how="one long cut, 6 mm deep, at 45 degrees"), M))
    assert "45 degrees" in found.title and found.title.endswith("6 mm deep")
    assert "deep" not in one(drawings_of(step("score", how="one long cut"), M)).title


def test_a_level_needs_a_tin_or_a_basket_and_a_figure() -> None:
    rim = step("prove", reaches=(Reach("below rim", once(20)),))
    assert drawings_of(rim, M) == () and drawings_of(step("prove"), M, "tin") == ()
    assert "20 mm" in one(drawings_of(rim, M, "tin")).title.replace("\N{NO-BREAK SPACE}", " ")
    assert [vessel_of(p, ("brick",), ()) for p in ("brick", "long tin", "basket", "tub", "")] == [
        "tin", "tin", "basket", "", "",
    ]  # fmt: skip


def test_two_phases_of_steady_heat_need_no_curve() -> None:
    phase = step("bake", time=once(900), heats=(Heat(once(250)),))
    assert bake_curve((phase, phase), M) is None
    assert bake_curve((phase, phase, phase), M) is not None


def test_every_drawing_is_sound_svg_with_a_title_and_no_style() -> None:
    for found in every_drawing():
        root = ElementTree.fromstring(found.svg)
        assert root.attrib["role"] == "img" and root.attrib["aria-label"] == found.title
        title = root.find(SVG + "title")
        assert title is not None and title.text == found.title and len(found.title) > 4
        for node in root.iter():
            assert node.tag.removeprefix(SVG) in {"svg", "title", "path", "ellipse", "rect", "text"}
            assert not {"style", "class", "id"} & set(node.attrib)
            if node.tag.removeprefix(SVG) in {"path", "ellipse", "rect", "text"}:
                assert node.attrib["fill"] in {"none", "#fff", "#000"}
                assert node.attrib["stroke"] in {"none", "#fff", "#000"}


def test_everything_is_drawn_on_the_paper() -> None:
    for found in every_drawing():
        root = ElementTree.fromstring(found.svg)
        wide, high = (float(n) for n in root.attrib["viewBox"].split()[2:])
        for node in root.iter(SVG + "text"):
            assert 0 <= float(node.attrib["x"]) <= wide and 0 <= float(node.attrib["y"]) <= high, found.name
        for node in root.iter(SVG + "ellipse"):
            assert float(node.attrib["rx"]) <= float(node.attrib["cx"]) <= wide - float(node.attrib["rx"]), found.name


@pytest.mark.parametrize("floor", [size(1200, 800), size(1200, 1200, True), size(460, 330), size(100, 50)])
@pytest.mark.parametrize("piece", [Fraction(60), Fraction(93), Fraction(220)])
def test_pieces_lie_inside_the_oven_and_apart(floor: Floor, piece: Fraction) -> None:
    lie = places(floor, piece, piece, GAP)
    for at, a in enumerate(lie):
        assert piece / 2 <= a.x + 0.01 and a.x + piece / 2 <= floor.across + 0.01
        assert piece / 2 <= a.y + 0.01 and a.y + piece / 2 <= floor.deep + 0.01
        if floor.is_round:
            half = floor.across / 2
            assert ((a.x - half) ** 2 + (a.y - half) ** 2) ** 0.5 + piece / 2 <= half + 0.01
        for b in lie[:at]:
            assert ((a.x - b.x) ** 2 + (a.y - b.y) ** 2) ** 0.5 >= piece + 19.9
    assert [p.y for p in lie] == sorted(p.y for p in lie), "the back row goes in first"
    assert len(places(floor, piece, piece, GAP, 2)) <= 2

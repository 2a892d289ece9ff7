"""Every word of the closed lists has its drawing, with a title in words; a word we have none for gets none."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from itertools import product
from typing import Any
from xml.etree import ElementTree

import pytest
from every import every

from manchet.diagnostics.diagnostic import Place
from manchet.figures.losses.level import Stands
from manchet.figures.oven.floor import GAP, places
from manchet.formula.model import Folds, Heat, Range, Reach, Step, Who
from manchet.kitchen.model import Floor, Vessel
from manchet.sheets.drawings.choosing import bake_curve, drawings_of
from manchet.sheets.drawings.oven import plan
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.drawings.plaits import MOVES
from manchet.sheets.drawings.shapes import SHAPE_WORDS
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of

M = Measures(House(), words_of("British"))
US = Measures(House(units="US", words="American"), words_of("American"))
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
    "one long cut, 10 mm deep, at 10 degrees": "one long",
    "one long cut, a finger deep, blade upright": "one long",
    "a cross, 3 mm deep, at 45 degrees": "cross",
    "one long cut, a finger deep, at 5 degrees": "one long",
    "two long cuts, overlapping by a third, 12 mm deep, blade flat": "two overlapping",
    "one long cut, a finger deep, at 75 degrees": "one long",
}
NO_SCORE = ("", "the thick part, a finger deep", "one curved cut, shallow", "a ladder of short cuts", "two crosses",
            "no cross", "one cross and a leaf", "a leaf on one side only", "crossing cuts", "a square of paper on top")  # fmt: skip


def size(across: int, deep: int, is_round: bool = False) -> Floor:
    return Floor(Fraction(across), Fraction(deep), is_round)


def step(verb: str, **more: Any) -> Step:
    return Step(verb, Who.HANDS, NOWHERE, **more)


def once(figure: int) -> Range:
    return Range(Fraction(figure), Fraction(figure))


def one(found: tuple[Drawing, ...]) -> Drawing:
    assert len(found) == 1
    return found[0]


LONG = Vessel(
    "tin", "long tin", Fraction(2500), 1, (Fraction(260), Fraction(110)), (Fraction(245), Fraction(95)), Fraction(95)
)
SHALLOW = Vessel("tin", "tray", Fraction(3000), 1, (Fraction(300), Fraction(200)), None, Fraction(50))
UNMEASURED = Vessel("tin", "old tin", Fraction(1900))
BELOW = Reach("below rim", once(20))
TWICE = Reach("volume", once(2))
STANDS = (
    Stands("tin"), Stands("basket"), Stands("tin", LONG, Fraction(1000), "down"), Stands("tin", UNMEASURED, Fraction(1000)),
    Stands("basket", None, None, "up"), Stands("tin", SHALLOW, Fraction(1000), "up"),
)  # fmt: skip


def every_drawing(m: Measures = M) -> list[Drawing]:
    found = [one(drawings_of(step("shape", shape=word), m)) for word in (*SHAPE_WORDS, *PLAITS)]
    found.append(one(drawings_of(step("shape", shape="round"), m, after=(step("shape", shape="long"),))))
    found += [one(drawings_of(step("score", how=how), m)) for how in SCORES]
    found += [one(drawings_of(step("fold", manner=way), m)) for way in (("in three",), ("in four",), ())]
    for stands in STANDS:
        found += drawings_of(step("prove", reaches=(BELOW,)), m, stands)
        found += drawings_of(step("prove", reaches=(TWICE,)), m, stands)
        found += drawings_of(step("place"), m, stands)
    found.append(one(drawings_of(step("prove", until="a fingertip's mark fills slowly"), m)))
    falls = step("bake", time=once(1800), heats=(Heat(once(230)),), ramp=("falling", once(210)))
    fallen = bake_curve((falls,), m)
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


@every(SHAPE_WORDS, at_least=21)
def test_every_shape_has_its_drawing(word: str) -> None:
    assert one(drawings_of(step("shape", shape=word), M)).name == SHAPE_WORDS[word]


@every(["plait", "braid", "plait of 5", "star", "knotted ring", "", "round-ish", "strand"], at_least=8)
def test_a_shape_we_have_no_drawing_for_gets_none(word: str) -> None:
    assert drawings_of(step("shape", shape=word), M) == ()


@pytest.mark.parametrize("word", PLAITS)
def test_a_plait_says_its_moves_with_numbers(word: str) -> None:
    found = one(drawings_of(step("shape", shape=word), M))
    strands = PLAITS[word]
    said = written(found)
    assert said[:strands] == [str(n) for n in range(1, strands + 1)]
    for start, end in MOVES[strands][1]:
        assert f"{start} over {end}" in found.title and f"{start} over {end}" in said


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


@every(SCORES.items(), at_least=13)
def test_a_score_that_plainly_says_one_thing(how: str, name: str) -> None:
    assert one(drawings_of(step("score", how=how), M)).name == name


@every(NO_SCORE, at_least=10)
def test_a_score_in_doubt_gets_none(how: str) -> None:
    assert drawings_of(step("score", how=how), M) == ()


def test_depth_and_angle_are_said_as_the_file_says_them() -> None:
    found = one(drawings_of(step("score", how="one long cut, 6 mm deep, at 45 degrees"), M))
    assert "45 degrees" in found.title and plain(found.title).endswith("6 mm deep")
    assert [plain(text) for text in written(found)] == ["45°", "6 mm"]
    assert "deep" not in one(drawings_of(step("score", how="one long cut"), M)).title


@pytest.mark.parametrize(
    "how", ["one long cut", "one long cut, 8 mm deep", "a cross", "a leaf, blade flat", "a square, blade upright"]
)
def test_no_angle_is_said_that_the_file_does_not_give(how: str) -> None:
    found = one(drawings_of(step("score", how=how), M))
    assert "°" not in found.svg and "degrees" not in found.title, found.title
    assert ("no angle given" in found.title) == ("blade" not in how)


@every(product(("one long cut", "five slanted cuts", "a cross"), range(0, 91, 5)), at_least=57)
def test_an_angle_stands_clear_of_the_loaf(how: str, degrees: int) -> None:
    """Both of the loaf that is cut, which ends at 68, and of the crust below the blade, which rises to 43."""
    found = one(drawings_of(step("score", how=f"{how}, at {degrees} degrees"), M))
    (said,) = ElementTree.fromstring(found.svg).findall(SVG + "text")
    left, foot = float(said.attrib["x"]), float(said.attrib["y"])
    assert said.attrib["text-anchor"] == "start" and left > 70 and foot < 39


def test_a_height_in_inches_is_told_to_the_quarter() -> None:
    found = drawings_of(step("prove", reaches=(TWICE,)), US, Stands("tin", LONG, Fraction(1000)))
    assert [plain(text) for text in written(found[0])] == ["after", "about 2¾ in", "before", "about 1½ in"]


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def written(found: Drawing) -> list[str]:
    return [node.text or "" for node in ElementTree.fromstring(found.svg).iter(SVG + "text")]


@every([0, 5, 10, 20, 30, 45, 60, 75, 90], at_least=9)
def test_the_blade_lies_as_steep_as_it_is_said(degrees: int) -> None:
    """Its long edge, from the cut backwards, rises by that angle over the crust."""
    from math import atan2, degrees as in_degrees
    from re import search

    found = one(drawings_of(step("score", how=f"one long cut, at {degrees} degrees"), M))
    edge = search(r'd="M(\S+) (\S+) L(\S+) (\S+) L\S+ \S+ L\S+ \S+ Z"', found.svg)
    assert edge is not None
    x, y, back_x, back_y = (float(figure) for figure in edge.groups())
    assert in_degrees(atan2(y - back_y, x - back_x)) == pytest.approx(degrees, abs=0.5)


@every(
    [
        ("a fingertip's mark fills slowly", ["finger mark"]),
        ("A finger's mark stays", ["finger mark"]),
        ("the mark of a finger fills slowly", ["finger mark"]),
        ("a poked dough comes back slowly", ["finger mark"]),
        ("a finger below the rim", []),
        ("two fingers wide of the edge", []),
        ("doubled", []),
        ("", []),
    ],
    at_least=8,
)
def test_a_finger_s_mark_is_drawn_where_the_cue_means_one(cue: str, names: list[str]) -> None:
    assert [found.name for found in drawings_of(step("prove", until=cue), M)] == names


def test_rounding_before_another_shape_is_a_pre_shape() -> None:
    rounded, rest, long = step("shape", shape="round"), step("rest"), step("shape", shape="long")
    assert one(drawings_of(rounded, M, after=(rest, long))).name == "pre-shape"
    assert one(drawings_of(rounded, M, after=(rest,))).name == "round"
    assert one(drawings_of(long, M, after=(rest, rounded))).name == "long"


def test_folds_inside_a_wait_are_hand_folds() -> None:
    inside = step("ferment", folds=(Folds("fold", 2, Fraction(2400), True),))
    assert one(drawings_of(inside, M)).name == "hand fold"
    for work in ("turn", "stir"):
        assert drawings_of(step("ferment", folds=(Folds(work, 2, Fraction(2400), True),)), M) == ()
    assert drawings_of(step("ferment"), M) == ()


def level(verb: str, stands: Stands, *reaches: Reach, after: tuple[Step, ...] = ()) -> str:
    found = drawings_of(step(verb, reaches=reaches), M, stands, after)
    return plain("; ".join(drawing.title for drawing in found))


def test_a_level_to_scale_says_both_heights() -> None:
    """1000 g fill 909 ml of a tin 95 mm deep that holds 2371 ml by its sides: 40 mm, as a tin is narrower below."""
    vessel = LONG._replace(millilitres=Fraction(2371))
    said = level("prove", Stands("tin", vessel, Fraction(1000)), BELOW)
    assert said.startswith("A tin cut through, to scale, 95 mm deep")
    assert "before proving: about 40 mm" in said and "after proving 20 mm below the rim" in said


def test_a_level_that_nobody_measured_says_so() -> None:
    assert "not to scale" in level("prove", Stands("tin"), BELOW) and "is not known" in level(
        "prove", Stands("tin"), BELOW
    )
    said = level("prove", Stands("tin", UNMEASURED, Fraction(1045)), BELOW)
    assert "not to scale" in said and "about 50 % full" in said  # 1045 / 1.1 = 950 of 1900 ml
    assert "about 100 % full" in level("prove", Stands("tin", UNMEASURED, Fraction(1045)), TWICE)


def test_a_level_needs_a_vessel_and_something_to_say() -> None:
    assert level("prove", Stands(), BELOW) == "" and level("prove", Stands("tin")) == ""
    assert level("prove", Stands("tin"), TWICE) == "", "twice of what nobody knows"
    assert level("place", Stands("tin")) == "" and level("place", Stands("tin", UNMEASURED)) == ""
    assert "about 50 % full" in level("place", Stands("tin", UNMEASURED, Fraction(1045)))
    later = step("prove", reaches=(BELOW,))
    assert level("place", Stands("tin", UNMEASURED, Fraction(1045)), after=(later,)) == "", "it is drawn there"
    assert level("place", Stands("basket", None, None, "up")).endswith("seam up")


@pytest.mark.parametrize("below", [70, 95, 150])
def test_a_level_that_would_sink_is_not_drawn(below: int) -> None:
    """1000 g stand 40 mm high in a tin 95 mm deep; a check tells of it."""
    assert level("prove", Stands("tin", LONG, Fraction(1000)), Reach("below rim", once(below))) == ""


def test_two_phases_of_steady_heat_need_no_curve() -> None:
    phase = step("bake", time=once(900), heats=(Heat(once(250)),))
    assert bake_curve((phase, phase), M) is None
    assert bake_curve((phase, phase, phase), M) is not None


@pytest.mark.parametrize("words", ["British", "American"])
def test_every_drawing_is_sound_svg_with_a_title_and_no_style(words: str) -> None:
    for found in every_drawing(Measures(House(words=words), words_of(words))):
        root = ElementTree.fromstring(found.svg)
        assert root.attrib["role"] == "img" and root.attrib["aria-label"] == found.title
        title = root.find(SVG + "title")
        assert title is not None and title.text == found.title and len(found.title) > 4
        for node in root.iter():
            assert node.tag.removeprefix(SVG) in {"svg", "g", "title", "path", "ellipse", "rect", "text"}
            assert not {"style", "class", "id"} & set(node.attrib)
            if node.tag.removeprefix(SVG) in {"path", "ellipse", "rect", "text"}:
                assert node.attrib["fill"] in {"none", "#fff", "#000"}
                assert node.attrib["stroke"] in {"none", "#fff", "#000"}


def test_no_two_drawings_are_alike() -> None:
    """Of one name, those that differ show another thing: another level, another way to say a depth."""
    by_look: dict[str, str] = {}
    for found in every_drawing():
        body = found.svg.partition("</title>")[2]
        assert by_look.setdefault(body, found.name) == found.name
    names = {found.name for found in every_drawing()}
    assert names >= {*SHAPE_WORDS.values(), "pre-shape", *SCORES.values(), "fold in three", "fold in four", "hand fold"}
    assert len(set(by_look.values())) == len(names)


def test_american_titles_have_american_words() -> None:
    said = " ".join(found.title for found in every_drawing(Measures(House(words="American"), words_of("American"))))
    assert "pan cut through" in said and "braid" in said and "proofing" in said
    assert not {"tin", "plait", "proving"} & set(said.casefold().replace(",", " ").replace(";", " ").split())


@cache
def advances() -> tuple[dict[int, float], float]:
    """How wide each sign of the face that comes with us is, as a share of its size."""
    from pathlib import Path

    from font_source_sans_pro import font_directory  # type: ignore[import-untyped]
    from fontTools.ttLib import TTFont

    from manchet.sheets.page.pdf import FACES

    font = TTFont(Path(font_directory, FACES[0][0]))
    wide = {code: font["hmtx"][name][0] / font["head"].unitsPerEm for code, name in font.getBestCmap().items()}
    return wide, max(wide.values())


def set_in_our_face(text: str, size: float) -> float:
    wide, widest = advances()
    return sum(wide.get(ord(sign), widest) for sign in text) * size


def points(node: ElementTree.Element, x: float, y: float, scale: float) -> Iterator[tuple[str, float, float]]:
    """Where every coordinate and the ends of every word lie on the paper."""
    moved = re.fullmatch(r"translate\((\S+) (\S+)\) scale\((\S+)\)", node.attrib.get("transform", ""))
    if moved:
        right, down, smaller = (float(figure) for figure in moved.groups())
        x, y, scale = x + right * scale, y + down * scale, scale * smaller
    tag, said = node.tag.removeprefix(SVG), node.attrib
    if tag == "text":
        wide = set_in_our_face(node.text or "", float(said["font-size"]))
        left = {"start": 0.0, "middle": wide / 2, "end": wide}[said["text-anchor"]]
        for far in (-left, wide - left):
            yield tag, x + scale * (float(said["x"]) + far), y + scale * float(said["y"])
            yield (
                tag,
                x + scale * (float(said["x"]) + far),
                y + scale * (float(said["y"]) - 0.66 * float(said["font-size"])),
            )
    if tag == "ellipse":
        for way in (-1, 1):
            yield (
                tag,
                x + scale * (float(said["cx"]) + way * float(said["rx"])),
                y + scale * (float(said["cy"]) + way * float(said["ry"])),
            )
    if tag == "path":
        for end in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", said["d"]):
            yield tag, x + scale * float(end[0]), y + scale * float(end[1])
    for child in node:
        yield from points(child, x, y, scale)


def letter_sizes(node: ElementTree.Element, scale: float) -> Iterator[float]:
    moved = re.search(r"scale\((\S+)\)", node.attrib.get("transform", ""))
    scale *= float(moved[1]) if moved else 1
    if node.tag == SVG + "text":
        yield float(node.attrib["font-size"]) * scale
    for child in node:
        yield from letter_sizes(child, scale)


@pytest.mark.parametrize("m", [M, US], ids=["millimetres", "inches"])
def test_everything_is_drawn_on_the_paper_and_can_be_read(m: Measures) -> None:
    for found in every_drawing(m):
        root = ElementTree.fromstring(found.svg)
        left, top, wide, high = (float(n) for n in root.attrib["viewBox"].split())
        assert left == 0
        unit = float(root.attrib["width"].removesuffix("mm")) / wide
        for size in letter_sizes(root, 1):
            assert size * unit >= 2.82, (found.name, "8 points on paper")
        for tag, x, y in points(root, 0, 0, 1):
            off = 0.0 if tag == "text" else 1.5
            assert -off <= x <= wide + off and top - off <= y <= top + high + off, (found.name, found.title, tag, x, y)


@pytest.mark.parametrize("m", [M, US], ids=["millimetres", "inches"])
def test_a_drawing_is_small_enough_to_stand_beside_its_step(m: Measures) -> None:
    for found in every_drawing(m):
        across = float(ElementTree.fromstring(found.svg).attrib["width"].removesuffix("mm"))
        if found.name not in ("bake curve", "floor"):
            assert 16 <= across <= 37, (found.name, across)
            assert found.high <= 21, (found.name, found.high)


FLOORS = (size(1200, 800), size(1200, 1200, True), size(460, 330), size(100, 50))


@every(product(FLOORS, (Fraction(60), Fraction(93), Fraction(220))), at_least=12)
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

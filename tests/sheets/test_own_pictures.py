"""A baker's own picture: a real image inside the bakery, made safe, or a calm report and no picture."""

from __future__ import annotations

import base64
from pathlib import Path

import pytest
from every import every
from loaves import LOAF_BY_WEIGHT, vary

from manchet.workspace.picture_file import MOST_BYTES, RefusedPicture, SafePicture, safe_picture

SVG = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><title>Two cuts</title><path d="M1 1 L8 8" stroke="#000"/></svg>'
PNG = base64.b64decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==")
JPEG = base64.b64decode(
    "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAFA3PEY8MlBGQUZaVVBfeMiCeG5uePWvuZHI//"
    "//////////////////////////////////////////////////wAALCAABAAEBAREA/8QAF"
    "AABAAAAAAAAAAAAAAAAAAAAAP/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AP//Z"
)


def inside(found: SafePicture | RefusedPicture) -> str:
    assert isinstance(found, SafePicture), found
    return base64.b64decode(found.address.partition(",")[2]).decode()


def test_a_plain_drawing_is_shown_with_its_title() -> None:
    found = safe_picture(SVG)
    assert isinstance(found, SafePicture) and found.title == "Two cuts"
    assert found.address.startswith("data:image/svg+xml;base64,")
    assert "M1 1 L8 8" in inside(found)


def test_photographs_by_what_is_in_them() -> None:
    for data, start in ((PNG, "data:image/png"), (JPEG, "data:image/jpeg")):
        found = safe_picture(data)
        assert isinstance(found, SafePicture) and found.address.startswith(start)


@every(
    [
        b"<script>alert(1)</script>",
        b"<style>*{fill:red}</style>",
        b'<image href="http://a.b/x.png"/>',
        b'<use href="#a"/>',
        b'<a href="javascript:x"><path d="M0 0"/></a>',
        b'<foreignObject><p xmlns="http://www.w3.org/1999/xhtml">x</p></foreignObject>',
        b'<path d="M0 0" onload="x()"/>',
        b'<path d="M0 0" style="fill:url(http://a.b)"/>',
        b'<path d="M0 0" fill="url(http://a.b/#c)"/>',
        b'<path d="M0 0" xmlns:x="http://www.w3.org/1999/xlink" x:href="file:///etc/passwd"/>',
        b"<animate/>",
        b'<g xmlns="http://example.com/other"/>',
    ],
    at_least=12,
)
def test_what_could_reach_out_is_refused(inner: bytes) -> None:
    found = safe_picture(SVG.replace(b"<path", inner + b"<path", 1))
    assert isinstance(found, RefusedPicture) and found.why == "reaches out"


def test_entities_are_refused_unopened() -> None:
    bomb = b'<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>' + SVG.replace(b"Two cuts", b"&b;")
    assert safe_picture(bomb) == RefusedPicture("reaches out", "DOCTYPE")


def test_what_is_no_picture() -> None:
    assert safe_picture(b"") == RefusedPicture("kind") and safe_picture(b"GIF89a....") == RefusedPicture("kind")
    assert safe_picture(b"formula Tern loaf\n") == RefusedPicture("kind")
    assert safe_picture(SVG[:-9]) == RefusedPicture("damaged")
    assert safe_picture(PNG[:-8]) == RefusedPicture("damaged") and safe_picture(JPEG[:-2]) == RefusedPicture("damaged")
    assert safe_picture(PNG + bytes(MOST_BYTES)) == RefusedPicture("large")


def test_words_in_a_drawing_stay_words() -> None:
    found = safe_picture(SVG.replace(b"Two cuts", b"&lt;script&gt; &amp; &quot;x&quot;"))
    assert isinstance(found, SafePicture) and found.title == '<script> & "x"'
    assert "<script>" not in inside(found)


FORMULA = vary(LOAF_BY_WEIGHT, shape='as wreath 30 s each\n      picture "PICTURE"')


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path / "bakery"
    (folder / "pictures").mkdir(parents=True)
    (folder / "pictures" / "cuts.svg").write_bytes(SVG)
    (folder / "pictures" / "photo.png").write_bytes(PNG)
    (folder / "pictures" / "bad.svg").write_bytes(SVG.replace(b"<path", b"<script/><path"))
    (folder / "pictures" / "words.png").write_bytes(b"not a picture")
    (folder / "pictures" / "large.png").write_bytes(PNG + bytes(MOST_BYTES))
    (folder / "pictures" / "folder.png").mkdir()
    (tmp_path / "outside.svg").write_bytes(SVG)
    (folder / "pictures" / "link.svg").symlink_to(tmp_path / "outside.svg")
    (folder / "kitchen.bake").write_text("kitchen House\n  hands 1\n", encoding="utf-8")
    monkeypatch.chdir(folder)
    return folder


def built(bakery: Path, picture: str, capsys: pytest.CaptureFixture[str]) -> tuple[str, str]:
    from manchet.cli.main import command

    (bakery / "quay.bake").write_text(FORMULA.replace("PICTURE", picture), encoding="utf-8")
    command(["build", "quay.bake", "--only", "handout,html"])
    return (bakery / "output" / "quay-loaf.handout.html").read_text(encoding="utf-8"), capsys.readouterr().err


def test_it_stands_on_its_step_instead_of_ours(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page, said = built(bakery, "pictures/cuts.svg", capsys)
    assert 'alt="Two cuts"' in page and "picture" not in said
    assert "A wreath:" not in page
    page, _ = built(bakery, "pictures/photo.png", capsys)
    assert 'src="data:image/png;base64,' in page and 'alt="picture: photo"' in page


@pytest.mark.parametrize(
    ("picture", "report"),
    [
        ("pictures/none.svg", "picture-missing"),
        ("pictures/folder.png", "picture-missing"),
        ("../outside.svg", "picture-outside"),
        ("pictures/../../outside.svg", "picture-outside"),
        ("/etc/passwd", "picture-outside"),
        ("C:pictures/cuts.svg", "picture-outside"),
        ("file:///etc/passwd", "picture-outside"),
        ("pictures/link.svg", "picture-outside"),
        ("pictures/bad.svg", "picture-not-plain"),
        ("pictures/words.png", "picture-of-no-kind"),
        ("pictures/large.png", "picture-too-large"),
    ],
)
def test_one_that_cannot_be_shown_is_reported_once(
    bakery: Path, capsys: pytest.CaptureFixture[str], picture: str, report: str
) -> None:
    page, said = built(bakery, picture, capsys)
    assert said.count(f"[{report}]") == 1, said
    assert "<img" not in page and "A wreath:" in page, "then ours stands there"


@every(
    [
        b'viewBox="0 0 9"',
        b'viewBox="a b c d"',
        b'viewBox=""',
        b'viewBox="0 0 0 9"',
        b'viewBox="0 0 nan 9"',
        b'viewBox="0 0 9 9" width="wide"',
        b'viewBox="0 0 9 9" height="1e999"',
        b'viewBox="0 0 9 9" transform="rotate(a)"',
        b'viewBox="0 0 9 9" transform="turn(3)"',
        b'viewBox="0 0 9 9" opacity="x"',
        b'viewBox="0 0 9 9" stroke-dasharray="-1 2"',
    ],
    at_least=11,
)
def test_a_drawing_that_says_what_cannot_be_drawn_is_damaged(said: bytes) -> None:
    found = safe_picture(SVG.replace(b'viewBox="0 0 9 9"', said))
    assert isinstance(found, RefusedPicture) and found.why == "damaged" and b'"' in found.what.encode()


@every(["wibble", "UTF-16", "shift_jis", "utf-7", "rot13"], at_least=5)
def test_an_encoding_that_is_not_known_is_damaged(encoding: str) -> None:
    found = safe_picture(f'<?xml version="1.0" encoding="{encoding}"?>'.encode() + SVG)
    assert isinstance(found, RefusedPicture) and found.why == "damaged"


def test_figures_as_drawing_programs_write_them_are_possible() -> None:
    for said in (
        'viewBox="-1.5,-2 9e1 9.5"',
        'viewBox="0 0 9 9" width="210mm" height="100%" transform="translate(1,2) rotate(45 3-3), scale(.5)"',
        'viewBox="0 0 9 9" stroke-dasharray="none" points="1,2 3-4,5.5.5"',
        'viewBox="0 0 9 9" font-size="12px" x="1 2 3" rx="auto"',
    ):
        assert isinstance(safe_picture(SVG.replace(b'viewBox="0 0 9 9"', said.encode())), SafePicture), said


def test_every_byte_of_a_photograph_counts() -> None:
    """Whatever is cut off or spoilt, it is a picture or it is damaged; nothing else."""
    for whole in (PNG, JPEG):
        for at in range(8, len(whole) - 1):
            for spoilt in (whole[:at], whole[:at] + bytes([whole[at] ^ 255]) + whole[at + 1 :]):
                assert isinstance(safe_picture(spoilt), SafePicture | RefusedPicture)
        assert isinstance(safe_picture(whole[:-4]), RefusedPicture)
    for at in range(8, len(PNG) - 1):
        assert safe_picture(PNG[:at] + bytes([PNG[at] ^ 1]) + PNG[at + 1 :]) == RefusedPicture("damaged"), at


def test_what_the_page_writer_cannot_draw_is_read_back(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A sound look is no proof: here the one that looks lets everything by."""
    from cli.transcripts import manchet, scene

    from manchet.workspace import picture_file

    monkeypatch.setattr(picture_file, "is_whole_jpeg", lambda _: True)
    with scene(tmp_path, {}):
        Path("quay.bake").write_text(FORMULA.replace("PICTURE", "cuts.jpg"))
        Path("cuts.jpg").write_bytes(b"\xff\xd8\xff no photograph \xff\xd9")
        ran = manchet(["build", "--only", "sheet,pdf", "--jobs", "1"])
    assert ran.status == 0 and "the picture cuts.jpg is not on the PDF" in ran.err and "[picture-not-drawn]" in ran.err

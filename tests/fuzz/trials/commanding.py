from __future__ import annotations

import random
import re
import time
from pathlib import Path
from tempfile import TemporaryDirectory

from cli.transcripts import CommandRun, manchet, scene
from fuzz.asked import any_amount, any_change, any_looks
from fuzz.odd_pictures import any_picture
from fuzz.read import bakery_at, bytes_of
from pypdf import PdfReader

from manchet.syntax.block import FORMULAS
from manchet.workspace.raw_files import Raw

SLOW = 2.0
"""Seconds of the processor that a check, or pages without PDF, may take."""


def commanding(text: str, rng: random.Random) -> None:
    """The whole command in a folder, with a picture beside: no fault, check and build of one mind, every formula printed or named,
    and a second build finds nothing to write."""
    with TemporaryDirectory() as folder, scene(Path(folder), {"SOURCE_DATE_EPOCH": "1790000000"}):
        text = with_picture(text, rng)
        data = bytes_of(text)
        Path("x.bake").write_bytes(data)
        Path("cut.svg").write_bytes(any_picture(rng))
        checked = asked(["check", "--jobs", "1"])
        assert asked(["check", "--jobs", "1"]) == checked, "check says something else of the same"
        build = ["build", "--jobs", "1", "--only", "html,json,sheet,card,preparations"]
        built = asked(build)
        assert (checked.status == 0) == (built.status == 0), (
            f"check ends in {checked.status}, build in {built.status}: {built.err}"
        )
        every_formula_is_accounted_for(Raw("x.bake", data), built)
        again = asked(build)
        assert not again.out and again.status == built.status, f"not the same again: {again.out}"
        formulas = bakery_at(text).formulas
        if formulas:
            one = rng.choice(formulas)
            asked(
                [
                    "build",
                    "--jobs",
                    "1",
                    *any_looks(rng),
                    *any_amount(one, rng),
                    *any_change(rng),
                    "--out",
                    "other",
                    one.name,
                ]
            )
            by_name = asked(["check", "--jobs", "1", one.name])
            assert by_name.status <= checked.status, f"check of {one.name} alone finds more: {by_name.out}"
            asked([rng.choice(("figures", "trace")), one.name, *rng.choice(([], any_amount(one, rng)))])
            if rng.random() < 0.1:
                printed = asked(
                    ["build", "--jobs", "1", "--only", "pdf,sheet,card", "--out", "paper", one.name], slow=60
                )
                assert printed.status in (0, 1), printed


def asked(words: list[str], slow: float = SLOW) -> CommandRun:
    started = time.process_time()
    ran = manchet(words)
    took = time.process_time() - started
    assert ran.status in (0, 1, 2), f"{words} ends in {ran.status}: {ran.err}"
    assert "fault of manchet" not in ran.out + ran.err and "Traceback" not in ran.out + ran.err, f"{words}: {ran}"
    assert took < slow, f"{words} takes {took:.1f} s"
    return ran


def every_formula_is_accounted_for(file: Raw, built: CommandRun) -> None:
    """Each has a page of its own or is named in a report; a preparation has a page of its kitchen."""
    blocks = [block for top in file.blocks if top.word in FORMULAS for block in top.with_variants()]
    told = [int(line) for line in re.findall(r"^x\.bake:(\d+):\d+: error", built.err, re.MULTILINE)]
    pages = {name for name in built.out.splitlines() if ".sheet." in name}
    breads = [block for block in blocks if block.word != "preparation"]
    silent = [block.name for block in breads if not any(block.holds(line) for line in told)]
    named = [name for name in silent if f"{name} was not printed" in built.err]
    if not told:
        assert len(pages) == 2 * len(silent), f"{len(silent)} formulas and {pages}"
    assert not named, f"{named}: nothing says why"


def paper_holds_every_weight(folder: Path) -> None:
    """What the JSON of a page weighs stands on its PDF."""
    for data in folder.glob("*.json"):
        sides = PdfReader(data.with_suffix(".pdf")).pages
        said = "".join("".join(side.extract_text() for side in sides).split())
        weights = re.findall(r'"weight": "([^"]+)"', data.read_text())
        missing = [one for one in weights if "".join(one.split()) not in said]
        assert not missing, f"not on {data.stem}.pdf: {missing}"


def with_picture(text: str, rng: random.Random) -> str:
    """With a picture in a head, a stage or a step."""
    rows = text.split("\n")
    if rng.random() < 0.5:
        at = rng.randrange(len(rows))
        deep = len(rows[at]) - len(rows[at].lstrip()) + rng.choice((0, 2))
        rows.insert(at + 1, " " * deep + f'picture "{rng.choice(("cut.svg", "cut.svg", "none.png", "../cut.svg"))}"')
    return "\n".join(rows)

from __future__ import annotations

import json
import random
import re
import time
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from cli.transcripts import CommandRun, manchet, scene
from fuzz.asked import any_amount, any_change, any_looks
from fuzz.odd_pictures import any_picture
from fuzz.read import bytes_of
from pypdf import PdfReader

from manchet.formula.model import Formula
from manchet.syntax.block import FORMULAS
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.slugs import slugs

SLOW = 2.0
"""Seconds of the processor that a check, or pages without PDF, may take."""
BUILD = ["build", "--jobs", "1", "--only", "html,json,sheet,card,preparations"]
CHECK = ["check", "--jobs", "1"]


def commanding(text: str, rng: random.Random) -> None:
    """The whole command in a folder of files with a picture beside: no fault, check and build of one mind, every formula printed
    or named, and the same again the same, whatever is asked of one formula in between."""
    with TemporaryDirectory() as folder, scene(Path(folder), {"SOURCE_DATE_EPOCH": "1790000000"}):
        files = in_files(with_picture(text, rng), rng)
        for path, said in files.items():
            Path(path).write_bytes(bytes_of(said))
        Path("cut.svg").write_bytes(any_picture(rng))
        checked, built = asked(CHECK), asked(BUILD)
        assert (checked.status == 0) == (built.status == 0), (
            f"check ends in {checked.status}, build in {built.status}: {checked.out} {built.err}"
        )
        raws = [Raw(path, bytes_of(said)) for path, said in files.items()]
        printed_or_named(raws, built)
        formulas = OpenBakery(files=raws).read().formulas
        if formulas:
            of_one_formula(rng.choice(formulas), checked.status, rng)
        assert asked(CHECK) == checked, "check says something else of the same"
        again = asked(BUILD)
        assert not again.out and again.status == built.status, f"not the same again: {again.out}"


def of_one_formula(formula: Formula, status: int, rng: random.Random) -> None:
    name = formula.name
    by_name = asked([*CHECK, name])
    assert by_name.status in (0, 2) or status == 1, f"check of {name} alone finds more: {by_name.out}"
    asked(
        ["build", "--jobs", "1", "--out", "other", *any_looks(rng), *any_amount(formula, rng), *any_change(rng), name]
    )
    asked(["figures", name, *rng.choice(([], any_amount(formula, rng)))])
    asked(["trace", name, rng.choice(("salt", "dough temperature", "water temperature", "hydration"))])
    if rng.random() < 0.1:
        asked(["build", "--jobs", "1", "--only", "pdf,json,sheet,card", "--out", "paper", name], slow=60)
        paper_holds_every_weight(Path("paper"))


def asked(words: list[str], slow: float = SLOW) -> CommandRun:
    started = time.process_time()
    ran = manchet(words)
    took = time.process_time() - started
    assert ran.status in (0, 1, 2), f"{words} ends in {ran.status}: {ran.err}"
    assert "fault of manchet" not in ran.out + ran.err and "Traceback" not in ran.out + ran.err, f"{words}: {ran}"
    assert took < slow, f"{words} takes {took:.1f} s"
    return ran


def printed_or_named(files: Iterable[Raw], built: CommandRun) -> None:
    """Each bread has a page, or an error in its own lines or in what all share says why not. Dishes have a form of their own, which is
    not asked for: where there is none, that would be told."""
    told = [(path, int(line)) for path, line in re.findall(r"^(\w+\.bake):(\d+):\d+: error", built.err, re.MULTILINE)]
    makes = [
        (file.path, block)
        for file in files
        for top in file.blocks
        if top.word in FORMULAS
        for block in top.with_variants()
    ]
    shared = [one for one in told if not any(one[0] == path and block.holds(one[1]) for path, block in makes)]
    slug_of = slugs(block.name for _, block in makes)
    for path, block in makes:
        printed = f"output/{slug_of[block.name]}.sheet.html" in built.out
        named = bool(shared) or any(where == path and block.holds(line) for where, line in told)
        assert printed or named or block.word in ("preparation", "assembly"), (
            f"{block.name} is neither printed nor named"
        )


def paper_holds_every_weight(folder: Path) -> None:
    """What the JSON of a page weighs, by name, stands on its PDF."""
    for data in folder.glob("*.json"):
        sides = PdfReader(data.with_suffix(".pdf")).pages
        said = "".join("".join(side.extract_text() for side in sides).split())
        missing = [one for one in weighed_in(json.loads(data.read_text())) if "".join(one.split()) not in said]
        assert not missing, f"not on {data.stem}.pdf: {missing}"


def weighed_in(data: Any) -> Iterator[str]:
    if isinstance(data, dict) and {"name", "weight"} <= data.keys():
        yield data["weight"]
    for part in data.values() if isinstance(data, dict) else data if isinstance(data, list) else ():
        yield from weighed_in(part)


def in_files(text: str, rng: random.Random) -> Mapping[str, str]:
    """All in one file, or each block in one of two."""
    blocks = re.split(r"(?m)^(?=\w)", text)
    if rng.random() < 0.6:
        return {"x.bake": text}
    parts = {"x.bake": "", "y.bake": ""}
    for block in blocks:
        parts[rng.choice(("x.bake", "y.bake"))] += block.rstrip("\n") + "\n"
    return parts


def with_picture(text: str, rng: random.Random) -> str:
    """With a picture in a head, a stage or a step."""
    rows = text.split("\n")
    if rng.random() < 0.5:
        at = rng.randrange(len(rows))
        deep = len(rows[at]) - len(rows[at].lstrip()) + rng.choice((0, 2))
        rows.insert(at + 1, " " * deep + f'picture "{rng.choice(("cut.svg", "cut.svg", "none.png", "../cut.svg"))}"')
    return "\n".join(rows)

"""Which day stands on the papers of a run that was given one: `--start` or `--ready`."""

from __future__ import annotations

import json
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF

KITCHEN = "kitchen House\n  oven mother\n    heats in 1 h\n    falls 12 C an hour from 250 C\n"
GLAZED = PLAIN_LOAF.replace("    bake 40 min", "    brush with glaze 6 g each\n    bake 40 min")
GLAZE = "preparation glaze\n\n  water 100 g\n  honey 100 g\n  mix by hand 1 min\n"


def papers(*words: str) -> dict[str, Any]:
    """Each by its form."""
    with TemporaryDirectory() as folder, scene(Path(folder), {}):
        Path("loaf.bake").write_text(f"{GLAZED}\n{GLAZE}\n{KITCHEN}", encoding="utf-8")
        ran = manchet(["build", "--only", "sheet,card,oven,preparations,json", *words])
        assert ran.status == 0, ran.err
        views = [json.loads(file.read_text(encoding="utf-8")) for file in Path("output").rglob("*.json")]
    return {view["form"]: view for view in views}


def test_what_is_posted_has_the_day_of_the_run() -> None:
    """Begun on a Saturday evening in March; the bread is ready on Sunday, and its own papers are headed so."""
    found = papers("--start", "2027-03-06 20:00")
    assert {form: view["running"]["date"] for form, view in found.items()} == {
        "sheet": "Sun 7 Mar 2027", "card": "Sun 7 Mar 2027",
        "oven": "Sat 6 Mar 2027", "preparations": "Sat 6 Mar 2027",
    }  # fmt: skip
    assert {view["running"]["date"] for view in papers("--ready", "2027-03-07 07:00").values()} == {"Sun 7 Mar 2027"}


def test_out_of_the_oven_has_its_day_where_the_heading_is_of_another() -> None:
    def out(*words: str) -> str:
        return next(line for line in papers(*words)["sheet"]["lines"] if line.startswith("out of the oven"))

    assert out("--ready", "2027-03-07 12:00") == "out of the oven 10:00"
    assert out("--ready", "2027-03-07 01:00") == "out of the oven Sat 23:00"

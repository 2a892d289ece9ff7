"""Which day stands on the papers of a run that was given one: `--start` or `--ready`."""

from __future__ import annotations

import json
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF

KITCHEN = "kitchen House\n  oven mother\n    heats in 1 h\n    falls 12 C an hour from 250 C\n"
GLAZED = PLAIN_LOAF.replace("    bake 40 min", "    brush with glaze 6 g each\n    bake 40 min")
GLAZE = "preparation glaze\n\n  water 100 g\n  honey 100 g\n  mix by hand 1 min\n"


def papers(*words: str, text: str = f"{GLAZED}\n{GLAZE}\n{KITCHEN}") -> dict[str, Any]:
    """Each by its form."""
    with TemporaryDirectory() as folder, scene(Path(folder), {}):
        Path("loaf.bake").write_text(text, encoding="utf-8")
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

    assert out("--ready", "2027-03-07 12:00") == "out of the oven 09:59"
    assert out("--ready", "2027-03-07 01:00") == "out of the oven Sat 22:59"


@pytest.mark.parametrize("holds", ("", "    holds 5 loaves\n"), ids=("one load", "two loads"))
@pytest.mark.parametrize("said", ("--start", "--ready"))
def test_card_and_oven_card_of_one_bread_have_the_same_clocks(said: str, holds: str) -> None:
    found = papers(said, "2027-03-06 20:00", text=f"{PLAIN_LOAF}\n{KITCHEN}{holds}")
    (oven,) = found["oven"]["ovens"]
    jobs = [job for day in found["card"]["days"] for job in day["jobs"]]
    (fire,) = (job["clock"] for job in jobs if "Fire out" in json.dumps(job))
    assert oven["fire_out"].startswith(f"fire out Sat {fire} at") or oven["fire_out"].startswith(
        f"fire out Sun {fire} at"
    )
    assert found["card"]["out"].endswith(oven["loads"][-1]["out"])
    loads = [one for job in jobs if job["part"] == "loads" for one in job["loads"]]
    assert len(oven["loads"]) == 1 + bool(holds)
    if holds:
        assert [(one["into"], one["out"]) for one in oven["loads"]] == [(one["into"], one["out"]) for one in loads]
    else:
        assert oven["loads"][0]["into"] == fire


def test_what_several_breads_are_ready_for_leaves_them_time_to_cool() -> None:
    """They cool two hours and three: the last of them is out three hours before, or sooner."""
    other = PLAIN_LOAF.replace("Plain loaf", "Long loaf").replace("cool 2 h", "cool 3 h")
    (oven,) = papers("--ready", "2027-03-07 12:00", text=f"{PLAIN_LOAF}\n{other}\n{KITCHEN}")["oven"]["ovens"]
    outs = {one["name"]: one["out"] for one in oven["loads"]}
    assert outs["Long loaf"] <= "09:00" and outs["Plain loaf"] <= "10:00"
    assert outs["Long loaf"] == "09:00" or outs["Plain loaf"] == "10:00"

"""What the pages show of the command is what the command prints, letter by letter."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest
from reference_page.examples import Example, examples_of

ROOT = Path(__file__).parents[2]
SHOWN = [
    pytest.param(example, id=f"{page}:{example.line}")
    for page in ("grammar/reference.md", "README.md")
    for example in examples_of(ROOT / page)
    if example.kind == "wrong"
]


@pytest.mark.parametrize("example", SHOWN)
def test_a_shown_report_is_the_real_one(example: Example, tmp_path: Path) -> None:
    """Each wrong example is `first.bake`, looked over in a folder of its own."""
    assert example.shown, "a wrong example is followed by a ```text block with what the command prints"
    (tmp_path / "first.bake").write_text(example.text, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "manchet.cli.main", "check", "first.bake"],
        cwd=tmp_path, capture_output=True, text=True, check=False, timeout=60,
    )  # fmt: skip
    assert done.returncode == 1
    assert done.stdout + done.stderr == example.shown


def test_the_front_page_has_two_command_lines_to_start() -> None:
    start = (ROOT / "README.md").read_text(encoding="utf-8").split("## Start")[1].split("\n## ")[0]
    lines = [line for block in re.findall(r"```sh\n(.*?)```", start, re.S) for line in block.splitlines()]
    assert lines == [
        "bash .ci/setup && .venv/bin/manchet build recipes",
        "bash .ci/setup test && .venv/bin/python -m pytest -n 2",
    ]


@pytest.mark.parametrize("page", ["README.md", "grammar/reference.md", "output/README.md"])
def test_links_lead_to_files(page: str) -> None:
    text = (ROOT / page).read_text(encoding="utf-8")
    for target in re.findall(r"\]\(([^)#:]+)\)", text):
        assert ((ROOT / page).parent / target).exists(), target


def test_the_front_page_shows_small_pictures() -> None:
    pictures = re.findall(r"!\[([^\]]+)\]\(([^)]+)\)", (ROOT / "README.md").read_text(encoding="utf-8"))
    assert pictures
    for words, path in pictures:
        assert len(words) > 20, "a picture has words for those who cannot see it"
        assert (ROOT / path).stat().st_size < 300_000

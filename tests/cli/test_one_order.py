"""The same reports in the same words and one order, whatever the seed by which this run of Python sorts its sets."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from loaves import PLAIN_LOAF
from run_length import at_length

from manchet.checks.registry import NAMES
from manchet.diagnostics.catalogue import explain, names
from manchet.larder.ingredient import CLASSES
from manchet.syntax.openings import OPENINGS

SEEDS = range(at_length(10, 3))


def with_slips() -> dict[str, str]:
    """A bakery with every case of a report, and with a slip in each word that is told from a list."""
    files = {f"cases/{name}/a.bake": case.mistake for name in names() if (case := explain(name)) is not None}
    slips = [f'  allow {name[1:]} because "it is ours"\n' for name in sorted(NAMES)]
    files["allowed.bake"] = PLAIN_LOAF + "\n" + "".join(slips)
    lines = [f"  {word[1:]} 3\n" for context in OPENINGS for word in OPENINGS[context]]
    files["openings.bake"] = "".join(f"formula Slip {at}\n{line}" for at, line in enumerate(lines))
    files["larder.bake"] = "larder Slips\n" + "".join(
        f"  flour {at}\n    class {one[1:]}\n" for at, one in enumerate(sorted(CLASSES))
    )
    return files


@pytest.mark.parametrize("form", ["text", "json", "sarif"])
def test_a_check_is_the_same_bytes_for_any_seed(tmp_path: Path, form: str) -> None:
    for name, text in with_slips().items():
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(text, encoding="utf-8")
    words = [sys.executable, "-m", "manchet.cli.main", "check", "--no-cache", "--jobs", "1", "--format", form]
    said = set()
    for seed in SEEDS:
        environment = {**os.environ, "PYTHONHASHSEED": str(seed)}
        ran = subprocess.run(words, cwd=tmp_path, env=environment, capture_output=True, check=False)
        assert ran.returncode == 1 and ran.stderr == b""
        said.add(ran.stdout)
    assert len(said) == 1

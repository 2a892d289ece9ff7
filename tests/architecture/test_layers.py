"""The import contracts of `.importlinter` hold, all of them."""

from __future__ import annotations

import configparser
import re
import subprocess
import sysconfig
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_import_contracts_are_kept() -> None:
    contracts = configparser.ConfigParser()
    contracts.read(ROOT / ".importlinter", encoding="utf-8")
    declared = sum(section.startswith("importlinter:contract:") for section in contracts.sections())

    # The console script: running the module itself does nothing and succeeds.
    script = Path(sysconfig.get_path("scripts")) / "lint-imports"
    done = subprocess.run([script, "--no-cache"], cwd=ROOT, capture_output=True, text=True, timeout=120)

    counts = re.search(r"Contracts: (\d+) kept, (\d+) broken", done.stdout)
    assert counts, done.stdout + done.stderr
    assert (int(counts[1]), int(counts[2])) == (declared, 0), done.stdout
    assert declared == 15

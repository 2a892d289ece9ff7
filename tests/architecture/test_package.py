"""What is installed is what stands on disk: every package listed, every data file in the wheel."""

from __future__ import annotations

import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

ROOT = Path(__file__).parents[2]
SOURCE = ROOT / "compiler"


def tracked(*patterns: str) -> list[Path]:
    listed = subprocess.run(
        ["git", "ls-files", "-z", *patterns], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout
    return [ROOT / name for name in listed.split("\0") if name]


def test_package_list_equals_disk() -> None:
    listed = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["setuptools"]["packages"]
    on_disk = {".".join(file.parent.relative_to(SOURCE).parts) for file in (SOURCE / "manchet").rglob("*.py")} | {
        "manchet.grammar"
    }
    assert sorted(listed) == sorted(on_disk)


def test_wheel_holds_code_and_data(tmp_path: Path) -> None:
    # Built from a copy of the tracked files: a `build/` left from another day would be installed again.
    clean = tmp_path / "clean"
    for file in tracked("compiler", "grammar", "pyproject.toml", "README.md"):
        if file.exists():
            copy = clean / file.relative_to(ROOT)
            copy.parent.mkdir(parents=True, exist_ok=True)
            copy.write_bytes(file.read_bytes())
    subprocess.run(
        [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--wheel-dir", tmp_path, clean],
        check=True,
        timeout=240,
    )
    (wheel,) = tmp_path.glob("*.whl")
    inside = {name for name in zipfile.ZipFile(wheel).namelist() if ".dist-info/" not in name}
    here = (file.relative_to(ROOT / "grammar") for file in tracked("grammar"))
    # An editor's extension is built from a checkout.
    expected = {f"manchet/grammar/{name}" for name in here if "vscode" not in name.parts} | {
        str(file.relative_to(SOURCE)) for file in tracked("compiler/manchet")
    }
    assert expected - inside == set(), "missing from the wheel"
    assert inside - expected == set(), "in the wheel, not in the project"


def test_top_level_is_fixed() -> None:
    names = {file.relative_to(ROOT).parts[0] for file in tracked()}
    visible = {name for name in names if not name.startswith(".")}
    assert visible == {
        "README.md",
        "DEVELOPERS.md",
        "pyproject.toml",
        "grammar",
        "compiler",
        "recipes",
        "output",
        "tests",
    }

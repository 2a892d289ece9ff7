"""The thresholds: written from their dated file, each with its source, each asked for by a check."""

import re
import tomllib
from fractions import Fraction
from pathlib import Path

import manchet.checks
import manchet.figures.limits
from manchet.figures.limits.literals import module_of
from manchet.figures.limits.lookup import limit
from manchet.figures.limits.thresholds import DATED, THRESHOLDS
from manchet.syntax.vocabulary import KIND

CHECKS = Path(manchet.checks.__file__).parent
FOLDER = Path(manchet.figures.limits.__file__).parent
TOML = (FOLDER / "thresholds.toml").read_text(encoding="utf-8")


def test_the_literals_are_fresh() -> None:
    assert (FOLDER / "thresholds.py").read_text(encoding="utf-8") == module_of(TOML), "run `python -m manchet.generate`"
    assert re.fullmatch(r"\d{4}-\d\d-\d\d", DATED)


def test_every_threshold_names_its_source() -> None:
    for name, entry in tomllib.loads(TOML).items():
        if name != "dated":
            assert entry["source"].strip(), name
            assert "any" in entry or entry["kinds"], name


def test_every_kind_is_a_kind_of_the_language() -> None:
    for name, found in THRESHOLDS.items():
        assert set(found.kinds) <= set(KIND), name


def test_every_threshold_is_asked_for() -> None:
    """By its whole name, or by the end of it where a check makes the name from a verb, a class or a kind of stage."""
    code = "".join(path.read_text(encoding="utf-8") for path in CHECKS.rglob("*.py"))
    ends = set(re.findall(r'f"\{[a-z_.]+\}(-[a-z-]+)"', code))
    for name in THRESHOLDS:
        assert f'"{name}"' in code or any(name.endswith(end) for end in ends), name


def test_units_become_those_of_the_model() -> None:
    assert limit("salt-most") == Fraction(4, 100)
    assert limit("salt-most", "hearth loaf") == Fraction(29, 1000)
    assert limit("bake-longest", "hearth loaf") == Fraction(7, 2) * 3600
    assert limit("piece-most", "hearth loaf") == 6000
    assert limit("core-most") == 110
    assert limit("water-least") is None, "no bread at all has a least of water"
    assert limit("no such thing") is None

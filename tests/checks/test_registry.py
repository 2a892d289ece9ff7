"""Every check can be called by its name; what `allow` silences, and what it does not."""

from works import reports_of

from manchet.checks.index import CHECKS
from manchet.checks.registry import NAMES, check_called
from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.reports import remarks_of


def test_every_check_is_found_by_its_name() -> None:
    assert CHECKS.keys() == NAMES
    assert all(callable(check_called(name)) for name in NAMES)


HOT = """formula Loaf
  kind hearth loaf
  makes 1 loaf at 900 g dough
{allow}
  overall
    white flour 100%
    water 70%
    fresh yeast 2%
    salt {salt}%
  dough
    everything else
    mix slow 6 min to 25 C
    ferment 90 min at 26 C
    shape round
    prove 60 min at 27 C
    bake 20 min at 240 C, steam
    bake 25 min at 220 C to {core} C core, vent open
    cool 2 h
"""


def names_of(salt: str = "2", core: str = "97", allow: str = "", kitchen: str = "") -> list[str]:
    text = HOT.format(salt=salt, core=core, allow=allow) + kitchen
    return [r.name for r in reports_of(text)]


def test_allow_silences_a_warning() -> None:
    assert names_of() == []
    assert names_of(salt="4") == ["salt-high"]
    assert names_of(salt="4", allow='  allow salt-high because "for the sea"') == []


def test_a_kitchen_allows_for_the_whole_house() -> None:
    house = '\nkitchen Sea\n  always allow salt-high because "for the sea"\n'
    assert names_of(salt="4", kitchen=house) == []
    assert names_of(kitchen=house) == [], "a house rule may lie idle"


def test_an_allow_that_allows_nothing_is_reported() -> None:
    assert names_of(allow='  allow salt-high because "for the sea"') == ["allow-unused"]


def test_an_error_cannot_be_allowed() -> None:
    found = names_of(core="205", allow='  allow core-above-boiling because "the probe says so"')
    assert "core-above-boiling" in found


def test_only_what_cannot_be_true_is_an_error() -> None:
    from manchet.diagnostics.catalogue import explain

    errors = {name for name in NAMES if (entry := explain(name)) and entry.severity == Severity.ERROR.value}
    assert errors == {
        "core-above-boiling",
        "liquid-above-boiling",
        "lye-bath-strong",
        "mix-too-hot-for-yeast",
    }


def test_remarks_of_binding_and_the_larder_can_be_allowed() -> None:
    assert remarks_of("batch", "formula", "kitchen", "larder") == {
        "culture-flour-not-in-overall",
        "culture-of-nothing",
        "kitchen-figure-odd",
        "kitchen-temperature-odd",
        "oven-called-by-its-heat",
        "measured-by-spoon",
        "mouth-before-the-fire",
        "moved-by-rounding",
        "oven-falls-and-is-set",
        "peel-beside-others",
        "per-cents-of-no-flour",
        "oven-falls-faster-when-colder",
        "tin-wider-below",
        "too-small-to-weigh",
        "water-unknown",
    }


def test_a_remark_on_the_kitchen_is_allowed_there() -> None:
    assert "unknown-allow" in names_of(allow='  allow tin-wider-below because "it is a drum"')

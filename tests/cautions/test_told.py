"""`check` names each caution at the line that causes it: beside the reports, none of them a mistake, none to be allowed."""

from works import bakery_of, works

from manchet.cautions.hazards import HAZARDS
from manchet.cautions.kept_within import kept_within
from manchet.cautions.under_fat import tub_label_withheld
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.names import REPORTS

GARLIC = "preparation garlic butter\n  butter 1000 g\n  garlic 120 g\n  mix by hand 4 min\n  good for {}\n"
GLAZED = """preparation glaze
  eggs 500 g
  whisk 2 min
  good for 1 d at 4 C

formula Loaf
  kind hearth loaf
  makes 4 loaves at 500 g dough
{allow}  dough
    white flour 1200 g
    water 790 g
    salt 22 g
    instant yeast 5 g
    mix slow 8 min to 25 C
    ferment covered 60 min at 25 C
    divide
    shape round
    prove 60 min at 25 C
    bake 30 min at 230 C to 97 C core, steam
    {after}
    cool 2 h
"""


def told(text: str) -> dict[str, Diagnostic]:
    return {one.name: one for one in bakery_of(text).cautions}


def test_a_caution_stands_at_its_line_with_the_figures_of_the_file() -> None:
    one = told(
        GARLIC.format("6 d at 4 C").replace("6 d", "5 d")
        + "\n"
        + GLAZED.format(allow="", after="brush with glaze 5 g each")
    )
    assert one["raw-egg-after-heat"].place.text.strip() == "brush with glaze 5 g each"
    assert one["raw-egg-after-heat"].severity is Severity.CAUTION
    assert one["raw-egg-after-heat"].message == "raw egg, never cooked: eggs, on after the last heat"
    assert "plants-under-fat" not in one, "a check tells of the five days already"


def test_where_a_check_says_it_already_it_is_not_said_twice() -> None:
    bakery = bakery_of(GARLIC.format("1 d at 20 C"))
    assert {one.name for one in bakery.diagnostics} == {"kept-too-warm"}
    (one,) = bakery.cautions
    assert one.name == "plants-under-fat" and one.place.text.strip() == "good for 1 d at 20 C"
    assert one.message == "botulism: garlic with no air round it; 20 C, and the limit is 4 C"


def test_nothing_allows_a_caution() -> None:
    silent = told(GLAZED.format(allow="", after="brush with butter 5 g each"))
    assert silent == {}
    allowed = GLAZED.format(allow='  allow raw-egg-on-baked because "we like it"\n', after="brush with eggs 5 g each")
    assert "raw-egg-on-baked" not in {one.name for one in bakery_of(allowed).diagnostics}
    assert set(told(allowed)) == {"raw-egg-after-heat"}, "the check is quiet, and the caution is told instead"
    by_name = GLAZED.format(allow='  allow raw-egg-after-heat because "no"\n', after="brush with eggs 5 g each")
    assert "unknown-allow" in {one.name for one in bakery_of(by_name).diagnostics}


def test_what_a_file_keeps_to_is_not_told() -> None:
    assert told("preparation wash\n  eggs 500 g\n  whisk 2 min\n  good for 1 d at 4 C\n") == {}
    custard = "preparation custard\n  milk 500 g\n  egg yolks 90 g\n  heat 8 min to 85 C\n  cool 2 h to 21 C\n  chill 3 h to 5 C\n  good for 2 d at 4 C\n"
    assert told(custard) == {}
    assert set(told(custard.replace("cool 2 h", "cool 3 h"))) == {"cool-it-fast"}


def test_degrees_are_those_of_the_kitchen() -> None:
    kitchen = "kitchen House\n  air 70 F\n  measures US\n\n"
    custard = "preparation custard\n  milk 500 g\n  egg yolks 90 g\n  heat 8 min to 150 F\n"
    one = told(kitchen + custard)["cook-egg-through"]
    assert "167 F, or 160 F for 2 min" in one.message and "C" not in one.message.replace("Cold", "")


def test_a_bath_over_six_per_cent_is_an_error_and_no_other_caution_is() -> None:
    bath = "preparation bath\n  water 930 g\n  lye {} g\n  stir 1 min\n"
    bakery = bakery_of(bath.format(70))
    (error,) = (one for one in bakery.diagnostics if one.severity is Severity.ERROR)
    assert error.name == "lye-bath-strong" and "7% lye" in error.message
    assert set(told(bath.format(70))) == {"lye-mixing"}, "how strong it is the error says"
    assert not [one for one in bakery_of(bath.format(55)).diagnostics if one.severity is Severity.ERROR]


def test_no_caution_is_called_as_a_report_is() -> None:
    assert set(HAZARDS) & set(REPORTS) == set()


def test_the_stricter_figure_is_printed_and_the_laxer_is_not() -> None:
    day = 86400

    def kept(text: str) -> list[tuple[object, object]]:
        return [
            (one.seconds / day, one.celsius and one.celsius.high)
            for work in works(bakery_of(text))
            for one in kept_within(work)
        ]

    assert kept(GARLIC.format("3 d at 3 C")) == [(3, 3)]
    assert kept(GARLIC.format("9 d at 20 C")) == [(4, 4)]
    assert kept(GARLIC.format("1 d")) == [(1, 4)]
    assert kept(GARLIC.format("90 d at -18 C")) == [(90, -18)]
    assert kept("preparation wash\n  eggs 500 g\n  whisk 2 min\n  good for 2 d at 4 C\n") == [(1, 4)]
    cream = "preparation cream\n  heavy cream 500 g\n  whisk 4 min\n  good for 1 d at {} C\n"
    assert kept(cream.format(15)) == [(1, 5)] and kept(cream.format(4)) == [(1, 4)]
    assert kept("kitchen House\n  sells in Britain\n\n" + cream.format(7)) == [(1, 7)]


def test_no_tub_says_by_when_where_that_would_be_our_word() -> None:
    def withheld(text: str) -> bool:
        (work,) = works(bakery_of(text))
        return tub_label_withheld(work)

    assert [withheld(GARLIC.format(f"{days} d at {at} C")) for days, at in ((4, 4), (5, 4), (3, 6), (60, -18))] == [
        False, True, True, False,
    ]  # fmt: skip


def test_the_reports_of_checks_have_the_degrees_of_the_kitchen_too() -> None:
    kitchen = "kitchen House\n  air 70 F\n  measures US\n\n"
    oil = "preparation garlic oil\n  olive oil 300 g\n  garlic 100 g\n  pack in jars\n  good for 9 d at 39 F\n"
    (one,) = (one for one in bakery_of(kitchen + oil).diagnostics if one.name == "under-oil-too-long")
    assert one.message == "garlic under fat (75% of it) kept 9 d; public advice is 4 d at 39 F"


def test_with_raw_meat_inside_one_core_is_named() -> None:
    """FSA: 75 C in the middle; how done a crumb is says nothing of what lies in it."""
    pork = "larder House\n  pork\n    class meat\n\n"
    bun = GLAZED.format(allow="", after="").replace("preparation glaze", "preparation other")
    filled = bun.replace("    shape round\n", "    shape round\n    fill with pork 40 g each\n").replace(
        "97 C core", "70 C core"
    )
    bakery = bakery_of(pork + filled)
    assert "core-low" not in {one.name for one in bakery.diagnostics}
    (one,) = (one for one in bakery.cautions if one.name == "cook-meat-through")
    assert one.message.endswith("comes to 75 C")
    assert "core-low" in {one.name for one in bakery_of(bun.replace("97 C core", "70 C core")).diagnostics}


def test_a_best_before_on_food_that_has_to_stay_cold_says_what_to_write() -> None:
    cream = GLAZED.format(
        allow="  sold loose\n  best before 1 d\n", after="cool 2 h\n    fill with heavy cream 30 g each"
    )
    one = told(cream)["keep-filling-cold"]
    assert "a `best before` is for what keeps without the cold: write `use by … at 5 C` or colder" in one.message

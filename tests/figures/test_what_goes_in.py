"""The dough's water over everything that goes in, on real files: each thing at its own temperature moves it its own way."""

from fractions import Fraction

from every import every
from works import bakery_of, reports_of, work_in

from manchet.checks.saying import fahrenheit
from manchet.figures.water.mix_inputs import MixInput
from manchet.figures.water.water_grid import DoughWater, water_of

RICH = """
formula Rich loaf
  kind soft
  makes 20 loaves at 500 g dough

  overall
    white flour          100%
    rye flakes            10%
    water                 64%
    eggs                  {eggs}
    butter                {butter}
    salt                   1.8%
    fresh yeast            3%

  soaker flakes
    all of the rye flakes
    water                100% of what is soaked
    soak covered 8 h at {soaked} C

  scald with 5% of all flour
    white flour          100%
    water                300%
      at {scalded}
    mix by hand 2 min
    {cools}

  dough
    scald
    flakes
    everything else
    {mix}
    ferment covered 60 min at 26 C
    divide
    shape long
    prove covered 90 min at 28 C
    bake 30 min at 200 C to 93 C core
    cool 1 h

kitchen House
  air    {air}
  flour  {flour}
  tap    {tap}
  {fridge}
  mixer spiral
    warms {warms} in 8 min slow, 4 min fast
"""

USUAL = {
    "eggs": "10%", "butter": "10%", "soaked": "20", "scalded": "98 C", "cools": "cool 1-2 h to 30 C",
    "mix": "mix slow 5 min\n    mix fast 3 min to 26 C", "air": "22 C", "flour": "20 C", "tap": "14 C",
    "fridge": "fridge box\n    keeps 4 C", "warms": "11 C",
}  # fmt: skip


def water(**changed: str) -> DoughWater:
    bakery = bakery_of(RICH.format(**{**USUAL, **changed}))
    errors = [d for d in bakery.diagnostics if d.severity.value == "error"]
    assert not errors, errors
    work = work_in(bakery, bakery.formulas[0])
    found = water_of(work)
    assert found is not None
    return found


def likely(**changed: str) -> Fraction:
    return water(**changed).celsius.likely


def test_each_thing_comes_as_warm_as_it_is_kept() -> None:
    why = {thing.portion.name: (thing.celsius, thing.why) for thing in water().balance.rest}
    assert why["eggs"] == why["butter"] == why["fresh yeast"] == (4, "from the fridge")
    assert why["white flour"] == (20, "the kitchen's flour")
    assert why["scald"] == (30, "as its last step leaves it")
    assert why["flakes"] == (20, "as its last step leaves it")
    assert why["salt"] == (22, "as warm as the room")


@every(
    [
        ({"eggs": "20%"}, True),  # more that is cold
        ({"butter": "20%"}, True),
        ({"fridge": ""}, False),  # eggs and butter as warm as the room
        ({"soaked": "28"}, False),
        ({"cools": "cool 1-2 h to 45 C"}, False),  # a scald that goes in warm
        ({"cools": ""}, False),  # and hot
        ({"cools": "cool 6 h at 10 C"}, True),
        ({"flour": "26 C"}, False),
        ({"air": "28 C"}, False),
        ({"mix": "mix slow 5 min\n    mix fast 6 min to 26 C"}, False),
        ({"mix": "mix by hand 10 min to 26 C"}, True),  # no machine
    ],
    at_least=11,
)  # fmt: skip
def test_what_is_cold_asks_for_warmer_water(changed: dict[str, str], warmer: bool) -> None:
    usual, now = likely(), likely(**changed)
    assert (now > usual) == warmer and now != usual


def test_a_hot_scald_goes_in_hot() -> None:
    hot = {thing.portion.name: thing.celsius for thing in water(cools="").balance.rest}["scald"]
    assert 60 < hot < 90


def scald(cools: str, air: str = "22 C") -> MixInput:
    return next(thing for thing in water(cools=cools, air=air).balance.rest if thing.portion.name == "scald")


def test_a_scald_that_only_stands_cools_toward_the_room() -> None:
    """Its own temperature in the file is taken as it is; without one its cooling is estimated, with a range."""
    hot, stood, longer = scald(""), scald("rest covered 30 min"), scald("cool covered 3 h")
    assert scald("cool 1-2 h to 30 C").ends is None
    assert hot.celsius > stood.celsius > longer.celsius > 22
    assert stood.ends is not None and stood.ends[0] < stood.celsius < stood.ends[1] < hot.celsius
    assert stood.why.startswith("an estimate of how far it has cooled")
    assert longer.celsius > scald("cool covered 3 h", "10 C").celsius, "a colder room takes more"
    assert scald("cool covered 20 h").celsius < 27


def test_the_water_may_lie_further_apart_where_the_scald_was_left_to_cool() -> None:
    known, left = water(cools="cool 1-2 h to 70 C").celsius, water(cools="rest covered 30 min").celsius
    assert left.high - left.low > known.high - known.low


def test_what_goes_in_hot_is_told() -> None:
    assert [thing.portion.name for thing in water(cools="rest covered 30 min").hot] == ["scald"]
    assert water(cools="cool 2 h to 26 C").hot == ()


def test_fahrenheit_is_the_same_balance() -> None:
    """22 C is 71.6 F; a mix that warms 11 C warms 19.8 F, a difference and not a reading."""
    celsius = water()
    same = water(air="71.6 F", flour="68 F", tap="57.2 F", fridge="fridge box\n    keeps 39.2 F", warms="19.8 F",
                 mix="mix slow 5 min\n    mix fast 3 min to 78.8 F", scalded="208.4 F",
                 cools="cool 1-2 h to 86 F")  # fmt: skip
    assert same.celsius == celsius.celsius and same.base == celsius.base
    assert fahrenheit(Fraction(26)) == "78.8 F"


def test_hot_water_is_judged_by_the_mix() -> None:
    """Water at 98 C over three times its weight of cold things makes a mix that yeast bears; much of it makes one that kills."""
    text = RICH.format(**USUAL).replace(
        "    everything else\n", "    what is left of the water at {} C\n    everything else\n"
    )

    def reports_on_the_mix(celsius: int, percent: int) -> set[str]:
        much = text.format(celsius).replace("water                 64%", f"water                 {percent}%")
        found = reports_of(much)
        return {d.name for d in found if d.name.startswith(("mix-too-hot", "mix-warm"))}

    assert reports_on_the_mix(98, 64) == reports_on_the_mix(50, 110) == set()
    assert reports_on_the_mix(98, 110)


def test_all_the_ice_is_not_enough_and_the_way_out_is_told() -> None:
    hot = {"air": "38 C", "flour": "38 C", "tap": "28 C", "eggs": "1%", "butter": "1%",
           "cools": "", "mix": "mix slow 8 min\n    mix fast 12 min to 20 C"}  # fmt: skip
    found = reports_of(RICH.format(**{**USUAL, **hot}))
    (report,) = [d for d in found if d.name == "ice-not-enough"]
    assert "chill the flour" in report.help and "20 C is wanted" in report.message

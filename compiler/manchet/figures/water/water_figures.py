"""The water of a dough as figures that can say why: balance and rule side by side, and by how much they differ."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.figures.figure import Figure, Given
from manchet.figures.water import base_temperature, ice
from manchet.figures.water.dough_temperature import RULE, SOURCE
from manchet.figures.water.heat import BOWL, CHOI_OKOS, WETTING
from manchet.figures.water.mix_inputs import MixInput
from manchet.figures.water.water_grid import DoughWater
from manchet.quantities.printing import decimal, round_to

WETTED = "bakingbusiness.com, bakers' dictionary: 6.5 BTU for a pound of flour"


def water_figures(water: DoughWater, batch: Batch) -> dict[str, Figure]:
    """By name: the balance with its ends, base temperature, the rule with its friction counted both ways, ice."""
    dough = batch.formula.dough
    wanted = Given("dough temperature", water.balance.wanted, "C", dough.place.where)
    balance = _balance(water, wanted)
    others = _other_readings(water)
    compared = _rule(water, wanted, others, balance)
    by_rule = compared.get("water_by_rule_celsius")
    if water.friction is None or by_rule is None:
        found = {"water_celsius": balance}
        for name, end in (("water_celsius_low", water.celsius.low), ("water_celsius_high", water.celsius.high)):
            rule = "the balance with the friction at its other end, and by either heat of wetting in print"
            found[name] = Figure(f"{balance.name}, {name[14:]}", round_to(end, 0), "C", rule, (balance,), SOURCE)
        why, leads = "where the heat balance was made", balance
    else:
        leads = by_rule._replace(name=balance.name)
        found = {
            "water_celsius": leads,
            "water_by_balance_celsius": balance._replace(name=f"{water.liquid} by the balance"),
        }
        why = "by the rule"
    found["base_celsius"] = Figure(
        "base temperature", _tenth(water.base), "C",
        f"the sum of the readings {why}: water + flour + room (+ preferment)", (leads, *others), base_temperature.SOURCE,
    )  # fmt: skip
    found |= compared
    if water.ice and water.tap is not None:
        bowl = Given(f"{water.liquid} in one bowl", round_to(water.grams, 0), "g", wanted.where)
        tap = Given("tap", water.tap, "C", "the kitchen")
        found["ice_grams"] = Figure("ice", round_to(water.ice, 0), "g", ice.RULE, (bowl, tap, balance), ice.SOURCE)
    return found


def _balance(water: DoughWater, wanted: Given) -> Figure:
    balance = water.balance
    work, wetting = balance.warming.friction, balance.warming.wetting
    friction = Figure("friction, of the dough", _tenth(work.likely), "C", work.rule, work.inputs, work.source)
    wetted = Figure(
        "heat of wetting", _tenth(wetting), "kJ", f"kg of flour wetted here x {decimal(WETTING)}", (), WETTED
    )
    bowl = Figure(
        "the bowl", _tenth(balance.bowl), "kJ for 1 C", f"as warm as the room; {decimal(BOWL)} of what is in it", (),
        "our rule",
    )  # fmt: skip
    rule = f"{RULE}; for each kg of all flour; an estimate, to the nearest degree"
    brought = tuple(_brought(thing) for thing in (*balance.free, *balance.rest))
    inputs: tuple[Given | Figure, ...] = (wanted, friction, wetted, bowl, *brought)
    return Figure(f"{water.liquid} temperature", round_to(water.celsius.likely, 0), "C", rule, inputs, SOURCE)


def _brought(thing: MixInput) -> Figure:
    portion = thing.portion
    where = portion.place.where
    inputs = (
        Given("weight for 1 kg of all flour", round_to(portion.share, 3), "kg", where),
        Given("specific heat", round_to(thing.specific, 2), "kJ for 1 kg and 1 C", CHOI_OKOS),
        Given(f"temperature ({thing.why})", round_to(thing.celsius, 1), "C", where),
    )
    return Figure(portion.name, round_to(thing.capacity, 2), "kJ for 1 C", "weight x specific heat", inputs, CHOI_OKOS)


def _other_readings(water: DoughWater) -> tuple[Given, ...]:
    where = "the kitchen" if water.assumed else "nothing is said"
    found = [Given("flour", water.flour, "C", where), Given("room", water.room, "C", where)]
    if water.preferment is not None:
        found.append(Given("preferment", _tenth(water.preferment), "C", "its last step"))
    return tuple(found)


def _rule(water: DoughWater, wanted: Given, others: tuple[Given, ...], balance: Figure) -> dict[str, Figure]:
    """The trade's rule from the same warming, its friction counted both ways, beside the balance. No rule gives water colder
    than freezing: there ice says it, and the balance alone."""
    source, readings = base_temperature.SOURCE, len(others) + 1
    of_dough, of_sum = _frictions(water, readings)
    values = [other.value for other in others]
    led = water.friction is not None
    by_rule = Figure(
        f"{water.liquid} by the rule",
        _tenth(water.celsius.likely if led else base_temperature.water(wanted.value, values, of_sum.value)), "C",
        f"{readings} x dough temperature - the other readings - friction in the sum", (wanted, *others, of_sum), source,
    )  # fmt: skip
    once = Figure(
        f"{water.liquid} by the rule, friction of the dough taken off once",
        base_temperature.water(wanted.value, values, of_dough.value), "C",
        "the same with the other friction: what comes out if one is taken for the other", (wanted, *others, of_dough),
        source,
    )  # fmt: skip
    differs = Figure(
        "rule less balance", by_rule.value - balance.value, "C",
        "the rule knows no weights: flour counts as much as water, and the room, which is no ingredient, too",
        (by_rule, balance), source,
    )  # fmt: skip
    fits = Figure(
        "friction that fits", _tenth(readings * wanted.value - water.balance.water().likely - sum(values)), "C",
        "in the sum: with it the rule gives what the balance gives, at these temperatures",
        (wanted, balance, *others), source,
    )  # fmt: skip
    if by_rule.value < 0:
        return {"friction_in_the_dough_celsius": of_dough, "friction_in_the_sum_celsius": of_sum}
    return {
        "friction_in_the_dough_celsius": of_dough,
        "friction_in_the_sum_celsius": of_sum,
        "water_by_rule_celsius": by_rule,
        "water_by_rule_taken_once_celsius": once,
        "rule_less_balance_celsius": differs,
        "friction_that_fits_celsius": fits,
    }


def _frictions(water: DoughWater, readings: int) -> tuple[Figure, Figure]:
    """Of the dough and in the sum: as the kitchen's mixer says, or from the warming of the balance."""
    said, source = water.friction, base_temperature.SOURCE
    if said is not None and said.in_the_sum:
        of_sum = Figure(
            "friction in the sum", _tenth(said.celsius), "C", "as the kitchen's mixer says", (), "the kitchen"
        )
        shared = _tenth(base_temperature.in_the_dough(said.celsius, readings))
        rule = f"friction in the sum / {readings} readings"
        return Figure("friction in the dough", shared, "C", rule, (of_sum,), source), of_sum
    if said is not None:
        of_dough = Figure(
            "friction in the dough", _tenth(said.celsius), "C", "as the kitchen's mixer says", (), "the kitchen"
        )
    else:
        warming = water.balance.warming
        of_dough = Figure(
            "friction in the dough", _tenth(warming.friction.likely + warming.wetting / water.balance.capacity), "C",
            "what working and wetting warm the dough by; the rule knows no other warming", (), SOURCE,
        )  # fmt: skip
    in_all = base_temperature.in_the_sum(of_dough.value, readings)
    return of_dough, Figure(
        "friction in the sum", in_all, "C", f"friction in the dough x {readings} readings", (of_dough,), source
    )


def _tenth(value: Fraction) -> Fraction:
    return round_to(value, 1)

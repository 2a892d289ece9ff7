"""Every check, in the order of the alphabet, and how their reports are silenced by `allow`."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from manchet.checks import (
    bake_loss_implausible,
    bake_too_short,
    cold_too_warm,
    cooling_missing,
    core_above_boiling,
    core_low,
    culture_does_not_carry_on,
    dough_loss_implausible,
    dough_over_mixer,
    dough_temperature_implausible,
    dough_under_mixer,
    fermentation_too_hot,
    folds_longer_than_rest,
    frying_temperature_odd,
    heat_missing,
    hours_for_minutes,
    hydration_high,
    hydration_low,
    inclusions_in_first_mix,
    kept_too_warm,
    kind_against_flour,
    kind_without_its_step,
    levain_unripe,
    lye_bath_strong,
    lye_in_dough,
    malt_active_high,
    minutes_for_hours,
    mix_too_hot_for_yeast,
    mix_warm_for_yeast,
    mixed_too_long,
    never_baked,
    never_divided,
    never_ferments,
    nothing_raises_it,
    oven_fahrenheit_for_celsius,
    oven_over_hottest,
    oven_too_cold,
    piece_weight_implausible,
    preferment_over_ripe,
    preferment_wetness_odd,
    preferment_without_leaven,
    preferment_yeast_against_time,
    prefermented_high,
    raising_agent_high,
    retard_too_warm,
    roll_in_odd,
    rye_cooling_short,
    rye_mixed_fast,
    salt_high,
    salt_low,
    salt_missing,
    scald_not_hot,
    scald_too_small,
    seed_implausible,
    share_implausible,
    shelf_life_missing,
    soda_without_acid,
    steam_missing,
    step_time_missing,
    sugar_against_ordinary_yeast,
    tin_not_named,
    topping_implausible,
    under_oil_too_long,
    vent_never_opened,
    vessels_too_few,
    yeast_against_time,
    yeast_high,
)
from manchet.checks.reporting import note, warning
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic, Severity

Check = Callable[[Subject], Iterator[Diagnostic]]

CHECKS: tuple[tuple[str, Check], ...] = (
    (bake_loss_implausible.NAME, bake_loss_implausible.check),
    (bake_too_short.NAME, bake_too_short.check),
    (cold_too_warm.NAME, cold_too_warm.check),
    (cooling_missing.NAME, cooling_missing.check),
    (core_above_boiling.NAME, core_above_boiling.check),
    (core_low.NAME, core_low.check),
    (culture_does_not_carry_on.NAME, culture_does_not_carry_on.check),
    (dough_loss_implausible.NAME, dough_loss_implausible.check),
    (dough_over_mixer.NAME, dough_over_mixer.check),
    (dough_temperature_implausible.NAME, dough_temperature_implausible.check),
    (dough_under_mixer.NAME, dough_under_mixer.check),
    (fermentation_too_hot.NAME, fermentation_too_hot.check),
    (folds_longer_than_rest.NAME, folds_longer_than_rest.check),
    (frying_temperature_odd.NAME, frying_temperature_odd.check),
    (heat_missing.NAME, heat_missing.check),
    (hours_for_minutes.NAME, hours_for_minutes.check),
    (hydration_high.NAME, hydration_high.check),
    (hydration_low.NAME, hydration_low.check),
    (inclusions_in_first_mix.NAME, inclusions_in_first_mix.check),
    (kept_too_warm.NAME, kept_too_warm.check),
    (kind_against_flour.NAME, kind_against_flour.check),
    (kind_without_its_step.NAME, kind_without_its_step.check),
    (levain_unripe.NAME, levain_unripe.check),
    (lye_bath_strong.NAME, lye_bath_strong.check),
    (lye_in_dough.NAME, lye_in_dough.check),
    (malt_active_high.NAME, malt_active_high.check),
    (minutes_for_hours.NAME, minutes_for_hours.check),
    (mix_too_hot_for_yeast.NAME, mix_too_hot_for_yeast.check),
    (mix_warm_for_yeast.NAME, mix_warm_for_yeast.check),
    (mixed_too_long.NAME, mixed_too_long.check),
    (never_baked.NAME, never_baked.check),
    (never_divided.NAME, never_divided.check),
    (never_ferments.NAME, never_ferments.check),
    (nothing_raises_it.NAME, nothing_raises_it.check),
    (oven_fahrenheit_for_celsius.NAME, oven_fahrenheit_for_celsius.check),
    (oven_over_hottest.NAME, oven_over_hottest.check),
    (oven_too_cold.NAME, oven_too_cold.check),
    (piece_weight_implausible.NAME, piece_weight_implausible.check),
    (preferment_over_ripe.NAME, preferment_over_ripe.check),
    (preferment_wetness_odd.NAME, preferment_wetness_odd.check),
    (preferment_without_leaven.NAME, preferment_without_leaven.check),
    (preferment_yeast_against_time.NAME, preferment_yeast_against_time.check),
    (prefermented_high.NAME, prefermented_high.check),
    (raising_agent_high.NAME, raising_agent_high.check),
    (retard_too_warm.NAME, retard_too_warm.check),
    (roll_in_odd.NAME, roll_in_odd.check),
    (rye_cooling_short.NAME, rye_cooling_short.check),
    (rye_mixed_fast.NAME, rye_mixed_fast.check),
    (salt_high.NAME, salt_high.check),
    (salt_low.NAME, salt_low.check),
    (salt_missing.NAME, salt_missing.check),
    (scald_not_hot.NAME, scald_not_hot.check),
    (scald_too_small.NAME, scald_too_small.check),
    (seed_implausible.NAME, seed_implausible.check),
    (share_implausible.NAME, share_implausible.check),
    (shelf_life_missing.NAME, shelf_life_missing.check),
    (soda_without_acid.NAME, soda_without_acid.check),
    (steam_missing.NAME, steam_missing.check),
    (step_time_missing.NAME, step_time_missing.check),
    (sugar_against_ordinary_yeast.NAME, sugar_against_ordinary_yeast.check),
    (tin_not_named.NAME, tin_not_named.check),
    (topping_implausible.NAME, topping_implausible.check),
    (under_oil_too_long.NAME, under_oil_too_long.check),
    (vent_never_opened.NAME, vent_never_opened.check),
    (vessels_too_few.NAME, vessels_too_few.check),
    (yeast_against_time.NAME, yeast_against_time.check),
    (yeast_high.NAME, yeast_high.check),
)
"""(name of the report, the check that makes it)."""

NAMES = frozenset(name for name, _ in CHECKS)


def check(subject: Subject) -> tuple[Diagnostic, ...]:
    """The reports of all checks that the formula, its stages and the kitchen do not allow; and each `allow` of one of
    these checks that allowed nothing. An error cannot be allowed.
    """
    reports = [report for _, look in CHECKS for report in look(subject)]
    formula = subject.formula
    quiet = {allowed.name for allowed in formula.allowed} | set(subject.kitchen.always_allow)
    heard = {report.name for report in reports if report.severity is not Severity.ERROR}
    left = [report for report in reports if report.severity is Severity.ERROR or report.name not in quiet]
    for allowed in formula.allowed:
        if allowed.name not in NAMES and not _is_a_report(allowed.name):
            left.append(
                warning(
                    "unknown-allow",
                    allowed.place,
                    f"there is no report called {allowed.name}",
                    _near(allowed.name),
                )
            )
        if allowed.name in NAMES and allowed.name not in heard:
            left.append(
                note(
                    "allow-unused",
                    allowed.place,
                    f"`allow {allowed.name}` allows nothing: {formula.name} has no such report",
                    "take the line out, or look at the name",
                )
            )
    return tuple(left)


def _is_a_report(name: str) -> bool:
    from manchet.diagnostics.catalogue import explain

    return explain(name) is not None


def _near(name: str) -> str:
    from manchet.diagnostics.suggest import nearest

    near = nearest(name, NAMES)
    return f"did you mean `{near}`?" if near else "copy the name from the report that is meant"

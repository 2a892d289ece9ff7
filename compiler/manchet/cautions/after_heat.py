"""What goes in or on after the last heat is eaten as it is: what of it has to stay cold, and flour that nobody cooked."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, where_kept
from manchet.cautions.caution import Caution, caution, celsius, warning_unless
from manchet.cautions.cooked import is_egg_cooked
from manchet.cautions.facts import (
    is_cut_leaf,
    is_dairy,
    is_kept_by_itself,
    is_meat_or_fish,
    is_raw_egg,
    is_raw_flour,
    is_wet,
    markets_of,
    needs_no_cold,
    perishes_cooked,
    water_in,
)
from manchet.cautions.kill import is_heated_through
from manchet.cautions.legs import was_heated
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Wording
from manchet.cautions.under_fat import is_from_under_fat
from manchet.cautions.vessel import Foodstuff, FoodVessel, breads_of, vessel_called, vessels_of
from manchet.formula.ranges import Range
from manchet.formula.sale import DateMark
from manchet.larder.foods import grows_wet
from manchet.syntax.vocabulary import WRAPS


def after_the_last_heat(work: Work) -> Iterator[Caution]:
    """At each step that puts it on; raw egg has a caution of its own."""
    for bread in breads_of(work):
        last = bread.last_heat
        for since, foods in _by_step(bread, last).items():
            at = bread.legs[since].at
            if any(is_raw_egg(food) and not is_egg_cooked(food.before, markets_of(work)) for food in foods):
                continue
            cold = next((food for food in foods if stays_cold(food)), None)
            if cold is not None and not (_is_sweet_or_dry(bread, since, work) or _has_its_own(bread, since, work)):
                keeps = is_sold_cold(work, at)
                why: Wording = (f"{cold.name}, on after the last heat",)
                if not keeps:
                    why += _not_cold(_mark(work, at), work)
                yield caution("keep-filling-cold", at, warning_unless(keeps), why=why)
            flour = next(
                (
                    food
                    for food in foods
                    if is_raw_flour(food) and not (was_heated(food.before) and is_heated_through(food.before))
                ),
                None,
            )
            if flour is not None:
                yield caution("raw-flour-after-heat", at, "warning", why=(f"{flour.name}, on after the last heat",))


def is_sold_cold(work: Work, at: CautionPlace) -> bool:
    """Whether what is sold says by when and how cold, or is served soon; a `best before` is for what keeps without."""
    formula, cold = work.formula, figure("cold", markets_of(work))
    if formula.serve_within is not None and formula.serve_within <= figure("served-within"):
        return True
    mark = _mark(work, at)
    if mark is not None and mark.word == "best before":
        return False
    if any(kept.celsius is not None and _warmest(kept.celsius) <= cold for kept in formula.kept):
        return True
    if mark is None or mark.word != "use by" or mark.celsius is None:
        return False
    return _warmest(mark.celsius) <= cold


def _warmest(celsius: Range) -> Fraction:
    return celsius.high if celsius.high is not None else celsius.likely


def _mark(work: Work, at: CautionPlace) -> DateMark | None:
    formula = work.formula
    branch = formula.branches[at.branch].sale if at.branch is not None else None
    return next((sale.date_mark for sale in (branch, formula.sale) if sale is not None and sale.date_mark), None)


def _not_cold(mark: DateMark | None, work: Work) -> Wording:
    """What its date says instead: Regulation (EU) 1169/2011, article 24(1), asks a `use by` of what perishes fast."""
    cold = celsius(figure("cold", markets_of(work)))
    if mark is not None and mark.word == "best before":
        return ("; a `best before` is for what keeps without the cold: write `use by … at ", cold, "` or colder")
    return ("; no `use by` at ", cold, " or colder")


def best_before_of_cold_food(work: Work) -> Iterator[Caution]:
    """A preparation that is sold, and has to stay cold, with the date of what keeps without."""
    formula = work.formula
    at = where_kept(formula)
    mark = _mark(work, at)
    if not is_kept_by_itself(formula) or mark is None or mark.word != "best before":
        return
    (vessel,) = vessels_of(work)[-1:]
    food = next((food for food in vessel.foods if _perishes(food, vessel)), None)
    if food is not None and is_wet(vessel):
        yield caution("keep-filling-cold", at, "warning", why=(food.name, *_not_cold(mark, work)))


def _perishes(food: Foodstuff, vessel: FoodVessel) -> bool:
    return stays_cold(food) or (
        perishes_cooked(food) and was_heated(vessel.line(food)) and not needs_no_cold(food, _is_packed(vessel))
    )


def _is_packed(vessel: FoodVessel) -> bool:
    """Into something, after its last heat."""
    last = vessel.last_heat
    return last is not None and any(leg.step.verb in WRAPS for leg in vessel.legs[last + 1 :])


def _by_step(bread: FoodVessel, last: int | None) -> dict[int, list[Foodstuff]]:
    found: dict[int, list[Foodstuff]] = {}
    for food in bread.foods:
        if food.put_on and (last is not None or bread.formula.dish) and food.since > (-1 if last is None else last):
            found.setdefault(food.since, []).append(food)
    return found


def stays_cold(food: Foodstuff) -> bool:
    """Milk, cream, cheese, egg, meat, fish; what was cooked of vegetables, starch or grain and is wet; what is cut and raw."""
    if needs_no_cold(food):
        return False
    if food.ingredient.class_ == "egg" or is_dairy(food) or is_meat_or_fish(food) or is_cut_leaf(food):
        return True
    if food.ingredient.class_ == "vegetable":
        return grows_wet(food.ingredient, food.name)
    return food.ingredient.class_ in ("starch", "grain") and was_heated(food.before)


def _has_its_own(bread: FoodVessel, since: int, work: Work) -> bool:
    """From under fat it has limits that are the stricter."""
    goods = bread.legs[since].step.applied
    return goods is not None and is_from_under_fat(goods.stage, work)


def _is_sweet_or_dry(bread: FoodVessel, since: int, work: Work) -> bool:
    """Whether what goes on there is kept by its sugar, or has too little water for germs: caramel, butter cream of sugar."""
    goods = bread.legs[since].step.applied
    made = vessel_called(work, goods.stage) if goods is not None else None
    if made is not None:
        return not is_wet(made)
    food = next(food for food in bread.foods if food.put_on and food.since == since)
    return water_in(food) < figure("wet-from") and not is_meat_or_fish(food) and not is_dairy(food)

"""What goes on or in after the last heat is eaten as it is; raw egg that goes on before it waits between trays."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.at import ways_done
from manchet.cautions.caution import Caution, caution
from manchet.larder.foods import FISH, MEAT, grows_wet, is_pasteurised, words_of_name
from manchet.syntax.vocabulary import COOKS

MILKY = frozenset({"dairy", "egg"})


def after_the_last_heat(work: Work) -> Iterator[Caution]:
    if work.formula.preparation:
        return
    for done in ways_done(work.formula):
        last = max((n for n, (_, step) in enumerate(done) if step.verb in COOKS), default=None)
        if last is None:
            continue
        for number, (at, step) in enumerate(done):
            applied = step.applied
            if applied is None:
                continue
            class_ = applied.ingredient.class_ if applied.ingredient is not None else ""
            name = applied.name.casefold()
            raw_egg = (class_ == "egg" or "egg wash" in name) and not is_pasteurised(name)
            if raw_egg:
                yield caution("raw-egg-kept" if number < last else "raw-egg-after-heat", at)
            elif number < last:
                continue
            elif (
                class_ in MILKY
                or any(word in name for word in ("custard", "cream"))
                or words_of_name(name) & (MEAT | FISH)
                or (class_ == "vegetable" and applied.ingredient and grows_wet(applied.ingredient, name))
            ):
                yield caution("keep-filling-cold", at)
            elif class_.endswith("flour"):
                yield caution("raw-flour-after-heat", at)

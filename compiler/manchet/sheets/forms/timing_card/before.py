"""Before you go: what is put away, fed, soaked, taken out and laid in the oven, a line each."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.kitchen.model import Kitchen
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.wording import single
from manchet.timing.card.values import BeforeYouGo


def before_lines(items: Iterable[BeforeYouGo], kitchen: Kitchen, m: Measures) -> tuple[str, ...]:
    return tuple(_line(item, kitchen, m) for item in items)


def _line(item: BeforeYouGo, kitchen: Kitchen, m: Measures) -> str:
    words = m.words
    warm = None if item.celsius is None else m.degrees(single(item.celsius))
    at = (
        ""
        if item.at is None
        else words.say("card.moment", words.several("days.short")[item.at.weekday()], m.clock(item.at))
    )
    match item.what:
        case "feed":
            return words.say("before.feed", item.name, m.mass(item.grams))
        case "put away" if warm is not None:
            return words.say("before.put_away_at", m.mass(item.grams), item.name, warm)
        case "put away":
            return words.say("before.put_away", m.mass(item.grams), item.name)
        case "soak":
            return words.say("before.soak", item.name, at)
        case "take out":
            out = words.say("before.take_out", item.name)
            return out if warm is None else words.say("before.take_out_to", item.name, warm)
        case _:
            fired = any(oven.name == item.name and (oven.falls or "wood" in oven.heat) for oven in kitchen.ovens)
            return words.say("before.light" if fired else "before.on", item.name or words["oven"], at)

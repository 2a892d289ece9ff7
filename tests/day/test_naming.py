"""What the words after `--done` and `--late` mean: each thing of a day can be typed as it is shown."""

from __future__ import annotations

from day.market import demo, market_day
from every import every

from manchet.day.model import DayWait
from manchet.day.naming import Named, Unnamed, job_named, thing_named
from manchet.workspace.planning import day_planned


@every([plan.name for plan in demo().plans], at_least=4)
def test_every_name_that_is_shown_can_be_typed_as_it_stands(name: str) -> None:
    day = day_planned(next(plan for plan in demo().plans if plan.name == name), demo()).value
    assert day is not None
    for bread in day.day.breads:
        answer = thing_named(day.day, f"{bread} nonsense")
        assert isinstance(answer, Unnamed)
        shown = [part for part in answer.help.split("`") if bread in part]
        assert shown
        for words in shown:
            found = thing_named(day.day, words)
            assert isinstance(found, Named) and found.words == words


def test_what_is_called_alike_is_numbered_so_that_it_can_be_told_apart() -> None:
    day = market_day()[1].day
    at = next(at for at, wait in enumerate(day.waits) if wait.what == "ferment")
    twice = day._replace(waits=(*day.waits, DayWait(*day.waits[at])))
    answer = thing_named(twice, f"{day.jobs[day.waits[at].before].breads[0]} ferment")
    assert isinstance(answer, Unnamed)
    first, second = (part for part in answer.help.split("`") if "ferment" in part)
    found = [thing_named(twice, words) for words in (first, second)]
    assert [one.wait for one in found if isinstance(one, Named)] == [at, len(day.waits)]


def test_a_job_is_named_by_its_bread_and_one_of_its_verbs() -> None:
    day = market_day()[1].day
    found = job_named(day, "Ebb rye divide")
    assert isinstance(found, Named) and found.words == "Ebb rye: divide, shape, dust, place"


def test_what_is_of_no_bread_has_no_key_in_its_name() -> None:
    found = job_named(market_day()[1].day, "beacon: light the fire")
    assert isinstance(found, Named) and found.words == "beacon: light the fire"

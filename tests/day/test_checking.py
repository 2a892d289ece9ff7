"""Whoever looks over a day's plan refuses what breaks a rule, by a minute or a unit, and nothing that holds by as much."""

from __future__ import annotations

import ast
import importlib
from collections.abc import Callable, Iterator
from pathlib import Path
from types import ModuleType

from day.days import FIRE_NIGHT, MORNING, Made
from day.mutations import MUTATIONS, Mutation
from every import every

import manchet.day.rules
from manchet.day import checking
from manchet.day.checking import check, check_planned
from manchet.day.model import Goal, Planned
from manchet.day.rules.refusal import Refusal


@every(MUTATIONS, at_least=70)
def test_a_rule_broken_by_a_hair_is_caught_and_one_held_by_a_hair_is_not(mutation: Mutation) -> None:
    assert check(*mutation.holds) == ()
    assert {refusal.rule for refusal in check(*mutation.breaks)} == {mutation.rule}


@every([(MORNING,), (FIRE_NIGHT,)], at_least=2)
def test_a_whole_day_that_holds_is_not_refused(made: Made) -> None:
    assert check(*made) == ()


def test_a_refusal_says_what_and_where() -> None:
    late = MORNING.plan._replace(starts=(*MORNING.plan.starts[:2], 331, *MORNING.plan.starts[3:]))
    moved = MORNING.day._replace(
        waits=tuple(wait._replace(least=82) if wait.after == 2 else wait for wait in MORNING.day.waits)
    )
    words = "tin/divide begins 81 min after tin/mix, and 82 is the least"
    assert check(moved, late) == (Refusal("wait", words, (1, 2), (), 331),)


def test_only_who_and_what_clashes_is_named() -> None:
    by_key = {mutation.what: check(*mutation.breaks)[0] for mutation in MUTATIONS}
    assert (by_key["one place at once"].jobs, by_key["one place at once"].minute) == ((2, 3), 351)
    assert (by_key["hands of a minute"].jobs, by_key["hands of a minute"].minute) == ((0, 1, 2), 9)
    assert (by_key["shares"].loads, by_key["shares"].minute) == ((0, 1, 2), 3)


def test_minutes_late_and_waited_are_counted_again() -> None:
    day = MORNING.day._replace(ends=tuple(end._replace(due=end.due - 200) for end in MORNING.day.ends))
    late = (583 - 580) + (602 - 520)  # the tin, the rye
    waits = 27 + 3  # the levain ripens 207 min for the rye, 180 is its most; the rye proves 78 min, 75 is its most
    told = (Goal("late", late, 0, False), Goal("may wait", waits, waits, True))
    assert check_planned(day, Planned(MORNING.plan, told, "by hand")) == ()
    for wrong, words in (
        (told[0]._replace(value=late - 1), f"late is said to be {late - 1} min, and is {late}"),
        (told[1]._replace(value=31, bound=31), "may wait is said to be 31 min, and is 30"),
        (told[1]._replace(bound=2), "may wait is said to be proven at 30, with a bound of 2"),
    ):
        refused = check_planned(day, Planned(MORNING.plan, (wrong,), "by hand"))
        assert [(refusal.rule, refusal.words) for refusal in refused] == [("goal", words)]


RULES = sorted(
    file for file in Path(manchet.day.rules.__file__).parent.glob("*.py") if "yield" in file.read_text("utf-8")
)


class SwitchedOff(ast.NodeTransformer):
    """A module's source with one of its refusals never made."""

    def __init__(self, at: int) -> None:
        self.at, self.seen = at, 0

    def visit_Expr(self, node: ast.Expr) -> ast.stmt:
        if isinstance(node.value, ast.Yield):
            self.seen += 1
            if self.seen - 1 == self.at:
                # Still a generator, and one that says nothing.
                return ast.copy_location(ast.parse("yield from ()").body[0], node)
        return node


def _switched_off() -> Iterator[tuple[str, int, dict[str, Callable[..., Iterator[Refusal]]]]]:
    """Each refusal that some rule can make, and the functions of its module without it."""
    for file in RULES:
        module: ModuleType = importlib.import_module(f"manchet.day.rules.{file.stem}")
        text = file.read_text("utf-8")
        for at in range(sum(isinstance(node, ast.Yield) for node in ast.walk(ast.parse(text)))):
            off = SwitchedOff(at)
            tree = ast.fix_missing_locations(off.visit(ast.parse(text)))
            line = [node.lineno for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Yield)][at]
            space = {"__name__": module.__name__}
            exec(compile(tree, str(file), "exec"), space)
            yield file.stem, line, space  # type: ignore[misc]


@every(_switched_off(), at_least=30)
def test_each_refusal_switched_off_is_noticed(
    module: str, line: int, off: dict[str, Callable[..., Iterator[Refusal]]]
) -> None:
    def refuses(each: Mutation) -> bool:
        if any(off.get("whole", checking.whole)(*each.breaks)):
            return True
        try:
            return any(refusal for rule in checking.RULES for refusal in off.get(rule.__name__, rule)(*each.breaks))
        except (LookupError, ValueError):
            return False  # no other rule can be looked at before the plan is whole

    assert not all(refuses(each) for each in MUTATIONS)

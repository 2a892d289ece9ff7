"""All at its latest, and clash by clash one thing goes before another, until nothing clashes."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from manchet.day.model import Day
from manchet.day.posting.choices import Choice, Rule, SoFar
from manchet.day.posting.decks import Decks, deck_rules, heating_rules
from manchet.day.posting.falling import falling_rules
from manchet.day.posting.giving_way import Give, least_give
from manchet.day.posting.hands import breaks_rule, hands_rules
from manchet.day.posting.machines import mixer_rules
from manchet.day.posting.net import Conflict, Net
from manchet.day.posting.outset import Leave, Outset
from manchet.day.posting.places import place_rules
from manchet.records import NamedTuple


def rules_of(day: Day, decks: Sequence[Decks], turns: Sequence[Rule] = ()) -> tuple[Rule, ...]:
    """What is scarcest first: ovens, by turns or clash by clash, then mixers and places, then hands."""
    rules = (
        *falling_rules(day),
        *heating_rules(day),
        *turns,
        *deck_rules(decks),
        *mixer_rules(day),
        *place_rules(day),
        *hands_rules(day),
        breaks_rule(day),
    )
    return tuple(rule for rule in rules if rule.jobs)


Worth = Callable[[Net, Choice], int]
"""How dear a way out is; the least is tried first."""


class Quest(NamedTuple):
    """How far a search came."""

    taken: tuple[Choice, ...]
    """The choices made; where it failed, those it had made at the dead end that costs least to undo, or was furthest."""
    starts: tuple[int, ...]
    """Of each knot, all at their latest."""
    found: bool
    is_proven: bool = False
    """There is no way at all: nothing was taken before, and none was left out."""
    give: Give | None = None
    """What would undo one of the conflicts that ended it there."""
    conflicts: tuple[Conflict, ...] = ()
    """What stood against each way on from where it was furthest."""
    behind: tuple[Conflict, ...] = ()
    """All that the dead ends since go back to."""


class _Level:
    """A clash, the ways out of it that have not been tried, and what stood against those that have."""

    __slots__ = ("behind", "blame", "conflicts", "mark", "ways")

    def __init__(self, ways: list[Choice], mark: tuple[int, int], blame: set[int]) -> None:
        self.ways, self.mark, self.blame = ways, mark, blame
        self.conflicts: list[Conflict] = []
        self.behind: dict[Conflict, None] = {}


class Search:
    """One way through the clashes of a day, deepest first; from a dead end back to the last choice that had a part in it."""

    def __init__(self, outset: Outset, rules: Sequence[Rule], worth: Worth) -> None:
        self._outset, self._rules, self._worth = outset, rules, worth
        self.steps = 0
        self._is_complete = not any(rule.leaves_out for rule in rules)

    def run(self, net: Net, leave: Leave, taken: Sequence[Choice], fails: int) -> Quest:
        """Makes choices after those already taken until nothing clashes, and gives up after so many that could not hold."""
        made = list(taken)
        first = len(made)
        if net.conflict is not None:
            give = least_give(self._outset, leave, (net.conflict,))
            return Quest(tuple(made), tuple(net.high), False, not taken, give, (net.conflict,), (net.conflict,))
        clean: list[list[int]] = [[] for _ in self._rules]
        levels: list[_Level] = []
        furthest = Quest(tuple(taken), tuple(net.high), False)
        best: tuple[int, ...] = ()
        failed = 0
        while True:
            self.steps += 1
            ways = self._first_clash(net, made, clean)
            if ways is None:
                return Quest(tuple(made), tuple(net.high), True)
            levels.append(_Level(_best_last(net, ways, self._worth), net.mark(), _turns_before(ways, made)))
            while not self._go_on(net, made, levels[-1]):
                level = levels[-1]
                failed += len(level.conflicts)
                self.steps += len(level.conflicts)
                give = least_give(self._outset, leave, level.conflicts)
                worth = (give is not None, give is not None and not give.is_late, len(levels))
                if worth > best:
                    best = worth
                    furthest = Quest(tuple(made), tuple(net.high), False, False, give, tuple(level.conflicts))
                to = max(level.blame, default=-1)
                if failed > fails or to < first:
                    behind = (
                        level.behind if to < first else dict.fromkeys(each for one in levels for each in one.behind)
                    )
                    return furthest._replace(is_proven=to < 0 and self._is_complete, behind=tuple(behind))
                del levels[to - first + 1 :], made[to:]
                levels[-1].blame |= level.blame - {to}
                levels[-1].behind |= level.behind
                net.back_to(levels[-1].mark)

    def _go_on(self, net: Net, made: list[Choice], level: _Level) -> bool:
        """Takes the best way out that can hold; there may be none."""
        while level.ways:
            way = level.ways.pop()
            if net.add(way.ties, len(made)):
                made.append(way)
                return True
            assert net.conflict is not None
            level.conflicts.append(net.conflict)
            level.behind[net.conflict] = None
            level.blame |= net.conflict.choices - {len(made)}
            net.back_to(level.mark)
        return False

    def _first_clash(self, net: Net, made: list[Choice], clean: list[list[int]]) -> tuple[Choice, ...] | None:
        high = net.high
        for at, rule in enumerate(self._rules):
            now = [high[job] for job in rule.jobs]
            if now == clean[at] and not rule.hangs_on_choices:
                continue
            ways = rule.ways_out(SoFar(high, net.low, made))
            if ways is not None:
                return ways
            clean[at] = now
        return None


def _turns_before(ways: Sequence[Choice], made: Sequence[Choice]) -> set[int]:
    """The turn before these, where they are turns: another one would leave others."""
    turn = ways[0].turn if ways else None
    if turn is None:
        return set()
    before = [at for at, choice in enumerate(made) if choice.turn and choice.turn.oven == turn.oven]
    return set(before[-1:])


def _best_last(net: Net, ways: Sequence[Choice], worth: Worth) -> list[Choice]:
    """The ways that change anything; turns are in their order already."""
    if any(way.turn for way in ways):
        return list(reversed(ways))
    high = net.high
    rows = [
        (-worth(net, way), -at, way)
        for at, way in enumerate(ways)
        if any(high[tie.before] + tie.least > high[tie.after] for tie in way.ties)
    ]
    return [way for _, _, way in sorted(rows, key=lambda row: row[:2])]


def share_of_room(net: Net, way: Choice) -> int:
    """In thousandths of its room, by how much the job that has to give way moves; its follower counts an eighth."""
    low, high = net.low, net.high
    worst = 0
    for before, after, least, _ in way.ties:
        moved = high[before] - high[after] + least
        if moved > 0:
            worst = max(worst, moved * 1000 // (high[before] - low[before] + 1))
        raised = low[before] + least - low[after]
        if raised > 0:
            worst = max(worst, raised * 125 // (high[after] - low[after] + 1))
    return worst


def room_left(net: Net, way: Choice) -> int:
    """How little room is left to the one of the two that then has less; less is better, so it is less than 0 where there is any."""
    low, high = net.low, net.high
    return -min(
        min(high[after] - least - low[before], high[after] - max(low[after], low[before] + least))
        for before, after, least, _ in way.ties
    )

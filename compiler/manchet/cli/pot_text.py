"""The pots over a week, as text for the terminal and as data."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from fractions import Fraction

from manchet.day.pot import Feeding, PotMove, PotWeek, to_step
from manchet.diagnostics.terminal import show
from manchet.quantities.printing import mass_text
from manchet.workspace.pot_week import PlannedWeek


def week_lines(week: PlannedWeek) -> Iterator[str]:
    """Day by day for each pot."""
    yield f"the pots in the week of {week.monday:%a %Y-%m-%d}"
    for on, name in week.plans:
        yield f"  {on:%a}  {show(name)}" + (
            ": no plan of it was found, its doughs are not counted" if name in week.unplanned else ""
        )
    if not week.pots:
        yield "  no dough of these plans takes a culture"
    for pot in week.pots:
        yield ""
        first = next(move for move in pot.moves if move.out or move.back)
        yield f"{show(pot.culture)}: {grams(pot.needed)} are wanted there by {first.at:%a %H:%M}"
        yield from (f"  {line}" for _, line in sorted(_lines(pot), key=lambda one: one[0]))
        for short in pot.short:
            yield (
                f"  it does not reach: {show(short.bread)} wants {grams(short.wanted)} on {short.at:%a %H:%M}, "
                f"and one feeding brings it to {grams(short.most)} at the most"
            )


def _lines(pot: PotWeek) -> Iterator[tuple[tuple[date, int], str]]:
    for at, move in enumerate(pot.moves):
        yield (move.at.date(), at), _move(move)
    for fed in pot.feedings:
        yield (fed.on, len(pot.moves)), _feeding(fed)


def _move(move: PotMove) -> str:
    way = f"out  {grams(move.out)}" if move.out else f"back {grams(move.back)}"
    return f"{move.at:%a %H:%M}  {way}  {show(move.bread)}"


def _feeding(fed: Feeding) -> str:
    parts = " and ".join(f"{grams(part)} {show(name)}" for name, part in fed.parts) or grams(fed.wanted - fed.there)
    why = (
        "the next dough wants more than is there" if fed.because == "use" else "it has stood for as long as it is good"
    )
    if fed.because == "stands":
        return f"{fed.on:%a} evening  feed half of it with {parts}: {why}"
    return f"{fed.on:%a} evening  feed it with {parts}: {why}"


def grams(value: Fraction) -> str:
    return mass_text(to_step(value))


def _grams(value: Fraction) -> int:
    """As it is said in words: whole fives."""
    return int(to_step(value))


def week_report(week: PlannedWeek) -> dict[str, object]:
    return {
        "week": week.monday.isoformat(),
        "plans": [
            {"date": on.isoformat(), "plan": name, "planned": name not in week.unplanned} for on, name in week.plans
        ],
        "pots": [
            {
                "culture": pot.culture,
                "needed_grams": _grams(pot.needed),
                "moves": [
                    {
                        "bread": move.bread,
                        "at": move.at.isoformat(timespec="minutes"),
                        "out_grams": _grams(move.out),
                        "back_grams": _grams(move.back),
                    }
                    for move in pot.moves
                ],
                "feedings": [
                    {
                        "date": fed.on.isoformat(),
                        "there_grams": _grams(fed.there),
                        "afterwards_grams": _grams(fed.wanted),
                        "parts": {name: _grams(part) for name, part in fed.parts},
                        "because": fed.because,
                    }
                    for fed in pot.feedings
                ],
                "not_enough": [
                    {
                        "bread": short.bread,
                        "at": short.at.isoformat(timespec="minutes"),
                        "wanted_grams": _grams(short.wanted),
                        "most_grams": _grams(short.most),
                    }
                    for short in pot.short
                ],
            }
            for pot in week.pots
        ],
    }

"""What a kitchen says for the sake of a day with several breads: how fast, how often, how many at once."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.kitchen.lines import FigureReading, Lines
from manchet.kitchen.model import Kitchen, Mixer, Mouth, Oven
from manchet.larder.figures import show_figure, worth
from manchet.quantities.units import TEMPERATURE, TIME, UNITS
from manchet.records import NamedTuple
from manchet.syntax.nodes import Entry as Written, Setting

MINUTE, HOUR = 60, 3600


class Most(NamedTuple):
    """The most that a figure usually is, in its base unit, and that in words."""

    figure: int
    words: str
    instead: str
    """What to write, as an example."""


MOST = {
    "weigh": Most(5 * MINUTE, "5 min for one line of a bowl", "weigh 25 s each"),
    "load": Most(5 * MINUTE, "5 min for one piece", "load 10 s each"),
    "take out": Most(5 * MINUTE, "5 min for one piece", "take out 5 s each"),
    "packs": Most(48 * HOUR, "two days", "packs loaves after 2 h"),
    "busy": Most(60, "60% of the hours", "busy 20%"),
    "decks": Most(12, "12 decks", "decks 2"),
    "loads within": Most(30 * MINUTE, "30 min", "loads within 6 min"),
    "climbs": Most(30, "30 C a minute", "climbs 2 C a minute"),
    "sinks": Most(30, "30 C a minute", "sinks 1 C a minute"),
    "cooks at the mouth": Most(12 * HOUR, "12 h", "cooks at the mouth from 60 min until 5 min before the fire is out"),
    "wash": Most(2 * HOUR, "2 h", "wash 6 min"),
    "wash after": Most(2 * HOUR, "2 h", "wash after lye, gluten 15 min"),
}
"""Our own limits of 2026-11-30, drawn wide: what lies beyond was most likely typed wrong."""


class DayLines(FigureReading):
    """Reads those lines."""

    def _plausible(self, line: Written, key: str, figure: Fraction) -> None:
        if figure > MOST[key].figure:
            message = f"`{line.line.body}` is more than {MOST[key].words}"
            help = f"look at the unit and at the point, as in `{MOST[key].instead}`"
            self.reports.append(report("kitchen-figure-odd", line.line.place(), message, help))

    def _each(self, line: Written, node: Setting) -> Fraction | None:
        """Seconds for one piece, or for one line of a bowl."""
        return self._said_figure(line, node, TIME)

    def _said_figure(self, line: Written, node: Setting, dimension: str) -> Fraction | None:
        """The figure of a line in its base unit."""
        ends = [worth(amount, dimension) for amount in node.amounts[:1]]
        if not ends or not ends[0] or ends[0] <= 0:
            self._unfit(line, node, MOST[node.key].instead.removeprefix(f"{node.key} "))
            return None
        self._plausible(line, node.key, ends[0])
        return ends[0]

    def _packs(self, kitchen: Kitchen, line: Written, node: Setting) -> Kitchen:
        seconds = self._said_figure(line, node, TIME)
        for word in node.names if seconds is not None else ():
            assert seconds is not None
            if any(fold(word.text) == fold(noun) for noun, _ in kitchen.packs):
                message = f"the kitchen says twice after how long it packs {word.text}"
                place = line.line.place(word.start, word.end)
                self.reports.append(report("kitchen-line-twice", place, message, "keep one figure for them"))
                continue
            kitchen = kitchen._replace(packs=(*kitchen.packs, (word.text, seconds)))
        return kitchen

    def _busy(self, line: Written, node: Setting) -> Fraction:
        """The share of an hour, as a fraction of 1."""
        amount = node.amounts[0] if node.amounts else None
        if amount is None or amount.low is None or amount.low != amount.high or not 0 <= amount.low < 100:
            self._unfit(line, node, "20%")
            return Fraction(0)
        self._plausible(line, "busy", amount.low)
        return amount.low / 100

    def _day_of_mixer(self, mixer: Mixer, lines: Lines) -> Mixer:
        after: tuple[tuple[str, Fraction], ...] = ()
        if "wash after" in lines:
            line, node = lines["wash after"]
            seconds = self._said_figure(line, node, TIME)
            if seconds is not None:
                after = tuple((word.text, seconds) for word in node.names)
        number = self._count(*lines["count"], "2") if "count" in lines else None
        return mixer._replace(number=number, wash=self._day_figure(lines, "wash"), wash_after=after)

    def _day_of_oven(self, what: str, oven: Oven, lines: Lines) -> Oven:
        decks = self._count(*lines["decks"], "2") if "decks" in lines else None
        if decks is not None:
            self._plausible(lines["decks"][0], "decks", Fraction(decks))
        oven = oven._replace(
            decks=decks,
            loads_within=self._day_figure(lines, "loads within"),
            climbs=self._rate(lines, "climbs"),
            sinks=self._rate(lines, "sinks"),
            mouth=self._mouth(lines),
        )
        places = {key: line.line.place() for key, (line, _) in lines.items()}
        self.reports += tuple(_beside_its_fire(what, oven, places))
        return oven

    def _day_figure(self, lines: Lines, key: str) -> Fraction | None:
        return self._said_figure(*lines[key], TIME) if key in lines else None

    def _rate(self, lines: Lines, key: str) -> Fraction | None:
        """Degrees Celsius a minute: a difference, so 4 F are 2.2 C."""
        if key not in lines:
            return None
        line, node = lines[key]
        amount = node.amounts[0] if node.amounts else None
        is_heat = amount is not None and amount.unit and UNITS[amount.unit].dimension == TEMPERATURE
        if amount is None or not is_heat or not amount.low or amount.low != amount.high or amount.low < 0:
            self._unfit(line, node, MOST[key].instead.removeprefix(f"{key} "))
            return None
        celsius = amount.low * UNITS[amount.unit].factor
        self._plausible(line, key, celsius)
        return celsius

    def _mouth(self, lines: Lines) -> Mouth | None:
        key = "cooks at the mouth"
        if key not in lines:
            return None
        line, node = lines[key]
        ends = [worth(amount, TIME) for amount in node.amounts]
        if len(ends) != 2 or ends[0] is None or ends[1] is None or ends[0] <= ends[1]:
            self._unfit(line, node, MOST[key].instead.removeprefix(f"{key} "))
            return None
        self._plausible(line, key, ends[0])
        return Mouth(ends[0], ends[1])


def _beside_its_fire(what: str, oven: Oven, places: dict[str, Place]) -> Iterator[Diagnostic]:
    """What does not go with how the oven is heated: it falls by itself, or has no fire before the bread."""
    for key in ("climbs", "sinks") if oven.falls else ():
        if key in places:
            message = f"{what} falls by itself, so nobody has it {'climb' if key == 'climbs' else 'sink'}"
            help = f"leave out `{key}`: it is of an oven that holds the heat it is set to"
            yield report("oven-falls-and-is-set", places[key], message, help)
    if oven.mouth is not None and oven.heats_in is not None and oven.mouth.start > oven.heats_in:
        minutes, heats = (show_figure(seconds / MINUTE) for seconds in (oven.mouth.start, oven.heats_in))
        message = f"{what} heats in {heats} min: {minutes} min before the fire is out it is not lit"
        help = f"write `cooks at the mouth from {heats} min until …`, or less"
        yield report("mouth-before-the-fire", places["cooks at the mouth"], message, help)

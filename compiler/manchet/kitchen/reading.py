"""A kitchen as written in a file, read into its values."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.fixes import at_the_end, exchange_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.kitchen import plausible
from manchet.kitchen.day_lines import MOST, DayLines
from manchet.kitchen.lines import COLDEST, HOTTEST, Lines
from manchet.kitchen.model import Cold, Fall, Kitchen, LoadTakes, Mixer, Oven, RunningCost, SaidFriction, Scale, Vessel
from manchet.kitchen.sizes import (
    FALL_EXAMPLE,
    LOAD_EXAMPLE,
    SIZE_EXAMPLES,
    Sides,
    base_of,
    depth_of,
    fall_of,
    floor_of,
    load_takes_of,
    rim_of,
    volume_of,
)
from manchet.kitchen.tin_volume import volume_by_water
from manchet.kitchen.words import OWN_LINES, SALE_LINES, SEVERAL, SHOWN, WORD_SETS
from manchet.larder.figures import show_figure, worth
from manchet.larder.yeast_factors import ONCE_WORDS, factors_of
from manchet.quantities.units import MASS, TIME, UNITS, VOLUME
from manchet.syntax.nodes import Allow, Entry as Written, Setting, StepNode, Time, Unread
from manchet.syntax.things import THING


def kitchen_of(block: Written) -> Outcome[Kitchen]:
    """The kitchen of a `kitchen` block, with what could be read of it."""
    name = getattr(getattr(block.node, "name", None), "text", "")
    reading = _KitchenReading(Kitchen(name=name, place=block.line.place()))
    for entry in sorted(block.children, key=_measures_first):
        reading.read(entry)
    return Outcome(reading.kitchen, _loud(reading))


def _loud(reading: _KitchenReading) -> tuple[Diagnostic, ...]:
    """All reports but the warnings that the house always allows."""
    quiet = reading.kitchen.always_allow
    return tuple(one for one in reading.reports if one.severity is Severity.ERROR or one.name not in quiet)


def _measures_first(line: Written) -> bool:
    """Sorts `measures` before the rest: pints and gallons below are of its country, wherever it stands."""
    return not (isinstance(line.node, Setting) and line.node.key == "measures")


class _KitchenReading(DayLines):
    """A kitchen while its lines are read."""

    def __init__(self, kitchen: Kitchen) -> None:
        super().__init__()
        self.kitchen = kitchen
        self.seen: set[str] = set()

    def read(self, entry: Written) -> None:
        node = entry.node
        if isinstance(node, Allow):
            self.kitchen = self.kitchen._replace(always_allow=(*self.kitchen.always_allow, node.name.text))
        elif isinstance(node, StepNode):
            self._minutes(entry, node)
        elif isinstance(node, Setting):
            if node.key in THING:
                self._thing(entry, node)
            elif node.key in SALE_LINES:
                if node.key in SEVERAL or self._first(entry, node.key, self.seen, "the kitchen"):
                    self._of_sale(entry, node)
            elif node.key in OWN_LINES:
                if node.key == "packs" or self._first(entry, node.key, self.seen, "the kitchen"):
                    self._own_line(entry, node)
            else:
                self._misplaced(entry, "the kitchen", (*OWN_LINES, *SALE_LINES, *THING))

    def _own_line(self, entry: Written, node: Setting) -> None:
        if node.key in WORD_SETS:
            said = fold(" ".join(word.text for word in node.names))
            known = WORD_SETS[node.key].get(said)
            if known is None:
                shown = SHOWN[node.key]
                message = f"`{node.key} {said}` is not one we know" if said else f"`{node.key}` says nothing"
                help = f"write `{node.key} {list_of_words(shown)}`"
                fixes = exchange_of(entry.line.place(), said, *shown)
                self.reports.append(report("kitchen-word-unknown", entry.line.place(), message, help, fixes=fixes))
            else:
                self.kitchen = _with(self.kitchen, node.key.replace(" ", "_"), known)
                self.measures = self.kitchen.measures
        elif node.key == "zone":
            self.kitchen = self.kitchen._replace(zone=entry.line.body[len("zone") :].strip())
        elif node.key == "yeast factors":
            self._yeast_factors(entry, node)
        elif node.key == "hands":
            self.kitchen = self.kitchen._replace(hands=self._count(entry, node, "2"))
        elif node.key == "packs":
            self.kitchen = self._packs(self.kitchen, entry, node)
        elif node.key == "busy":
            self.kitchen = self.kitchen._replace(busy=self._busy(entry, node))
        elif node.key in MOST:
            seconds = self._each(entry, node)
            if seconds is not None:
                self.kitchen = self.kitchen._replace(minutes=(*self.kitchen.minutes, (node.key, seconds)))
        else:
            degrees = self._temperature(entry, node, "22 C", node.key)
            self.kitchen = _with(self.kitchen, node.key, degrees)
            if degrees is not None and not self.kitchen.degrees:
                self.kitchen = self.kitchen._replace(degrees=node.amounts[0].unit)

    def _of_sale(self, entry: Written, node: Setting) -> None:
        from manchet.kitchen.sale_lines import with_sale_line  # few kitchens sell by it

        self.kitchen, reports = with_sale_line(self.kitchen, node, entry.line)
        self.reports += reports

    def _yeast_factors(self, entry: Written, node: Setting) -> None:
        """`yeast factors 0.33 0.40`: of instant and of active dry yeast, for 1 of fresh."""
        said = fold(" ".join(word.text for word in node.names))
        if said:
            written = " ".join(word.text for word in node.names)
            message = f"`yeast factors {written}`: the factors are two figures, of instant and of active dry yeast"
            instead = ONCE_WORDS.get(said, "0.33 0.40")
            fixes = exchange_of(entry.line.place(), written, instead)
            help = f"write `yeast factors {instead}`"
            self.reports.append(report("yeast-factors-in-words", entry.line.place(), message, help, fixes=fixes))
            return
        figures = [amount.low for amount in node.amounts if amount.low is not None and amount.low == amount.high]
        if len(figures) != 2 or not all(0 < figure < 1 for figure in figures):
            self._unfit(entry, node, "yeast factors 0.33 0.40")
            return
        self.kitchen = self.kitchen._replace(yeast_factors=factors_of(*figures))

    def _minutes(self, entry: Written, step: StepNode) -> None:
        if not self._first(entry, step.verb.text, self.seen, "the kitchen"):
            return
        for clause in step.clauses:
            if isinstance(clause, Time) and clause.per == "each":
                seconds = worth(clause.amount, TIME)
                if seconds:
                    self.kitchen = self.kitchen._replace(minutes=(*self.kitchen.minutes, (step.verb.text, seconds)))
                    return
        message = f"`{entry.line.body}` does not say how long one piece takes"
        help = f"write `{step.verb.text} 20 s each`"
        self.reports.append(report("kitchen-time-missing", entry.line.place(), message, help))

    def _thing(self, entry: Written, node: Setting) -> None:
        name = " ".join(word.text for word in node.names)
        what = f"{node.key} {name}".strip()
        if not self._first(entry, fold(what), self.seen, "the kitchen"):
            return
        lines: Lines = {}
        seen: set[str] = set()
        falls: list[Written] = []
        for line in entry.children:
            inner = line.node
            if isinstance(inner, Setting):
                if inner.key not in THING[node.key].lines:
                    self._misplaced(line, what, THING[node.key].lines)
                elif inner.key == "falls":
                    falls.append(line)
                elif self._first(line, inner.key, seen, what) and self._one_floor(line, inner.key, seen, what):
                    lines[inner.key] = (line, inner)
        kitchen = self.kitchen
        if node.key == "mixer":
            self.kitchen = kitchen._replace(mixers=(*kitchen.mixers, self._mixer(name, lines)))
        elif node.key == "oven":
            oven = self._oven(name, lines, falls)
            self.reports += plausible.named_by_its_heat(oven, entry.line.place())
            self.kitchen = kitchen._replace(ovens=(*kitchen.ovens, oven))
            if oven.falls and not kitchen.degrees:
                fall = falls[0].node
                assert isinstance(fall, Setting)
                self.kitchen = self.kitchen._replace(degrees=fall.amounts[-1].unit)
        elif node.key == "scale":
            scale = self._scale(entry, name, lines)
            if scale is not None:
                self.kitchen = kitchen._replace(scales=(*kitchen.scales, scale))
        elif THING[node.key].keeps_cold_or_warm:
            keeps = self._maybe_temperature(lines, "keeps", "4 C", node.key)
            cold = Cold(node.key, name, keeps, self._holds(lines), self._number(lines), self._humidity(lines))
            self.kitchen = kitchen._replace(colds=(*kitchen.colds, cold))
        else:
            count = self._number(lines)
            sides = self._sides(lines)
            inches = any(lines[key][1].amounts[-1].unit == "inch" for key in sides)
            kitchen = kitchen._replace(lengths="inch" if inches else kitchen.lengths)
            volume = self._volume(entry, what, lines, sides)
            rim, base = rim_of(sides), base_of(sides)
            if node.key == "tin" and "bottom" in sides and rim is not None and base is not None and volume_of(sides):
                self.reports += plausible.tin(what, rim, base, lines["bottom"][0].line.place())
            held = self._holds(lines)
            vessel = Vessel(node.key, name, volume, count, rim, base, depth_of(sides), held, "lidded" in lines)
            self.kitchen = kitchen._replace(vessels=(*kitchen.vessels, vessel))

    def _mixer(self, name: str, lines: Lines) -> Mixer:
        mixer = Mixer(name, slow_turns=self._turns(lines, "slow"), fast_turns=self._turns(lines, "fast"))
        if "takes" in lines:
            line, node = lines["takes"]
            mixer = self._takes(mixer, line, node)
        if "stiff dough up to" in lines:
            mixer = self._stiff(mixer, lines)
        if "warms" in lines:
            line, node = lines["warms"]
            mixer = self._warms(mixer, line, node)
        if "friction" in lines:
            line, node = lines["friction"]
            mixer = self._friction(mixer, line, node)
        return self._day_of_mixer(mixer, lines)

    def _takes(self, mixer: Mixer, line: Written, node: Setting) -> Mixer:
        amount = node.amounts[0] if node.amounts else None
        if amount is None or not amount.unit or UNITS[amount.unit].dimension != MASS:
            self._unfit(line, node, "6-45 kg dough")
            return mixer
        grams = UNITS[amount.unit].factor
        least = None if amount.low is None or amount.low == amount.high else amount.low * grams
        most = None if amount.high is None else amount.high * grams
        return mixer._replace(least_grams=least, most_grams=most)

    def _stiff(self, mixer: Mixer, lines: Lines) -> Mixer:
        line, _ = lines["stiff dough up to"]
        grams = self._figure(lines, "stiff dough up to", MASS, "27 kg")
        if mixer.most_grams is None or (grams is not None and grams > mixer.most_grams):
            most = "nothing is said" if mixer.most_grams is None else f"{show_figure(mixer.most_grams / 1000)} kg"
            message = f"a stiff dough is the harder one; of a softer dough {most}"
            help = "write what it takes of a dough of 60% water, as in `takes 6-45 kg dough`, and less here"
            self.reports.append(report("stiff-dough-without-soft", line.line.place(), message, help))
            return mixer
        return mixer._replace(stiff_grams=grams)

    def _warms(self, mixer: Mixer, line: Written, node: Setting) -> Mixer:
        """`warms 11 C in 8 min slow, 4 min fast`: a difference, so 20 F are 11.1 C and not -6.7."""
        example = "11 C in 8 min slow, 4 min fast"
        degrees = next((a for a in node.amounts if a.unit in ("C", "F")), None)
        times = [a for a in node.amounts if a.unit and UNITS[a.unit].dimension == TIME]
        if degrees is None or degrees.low is None or degrees.low != degrees.high or degrees.low < 0 or not times:
            self._unfit(line, node, example)
            return mixer
        found: dict[str, Fraction] = {}
        for amount in times:
            seconds = worth(amount, TIME)
            following = line.line.body[amount.end :].split(maxsplit=1)
            speed = fold(following[0].strip(",")) if following else "slow"
            if seconds is None or speed not in ("slow", "fast") or speed in found:
                self._unfit(line, node, example)
                return mixer
            found[speed] = seconds
        warms = degrees.low * UNITS[degrees.unit].factor
        return mixer._replace(warms=warms, warms_slow=found.get("slow"), warms_fast=found.get("fast"))

    def _friction(self, mixer: Mixer, line: Written, node: Setting) -> Mixer:
        """`friction 24 F in the sum`, a difference; or `friction 8 F of the dough`."""
        degrees = node.amounts[0] if node.amounts else None
        if degrees is None or degrees.low is None or degrees.low != degrees.high or degrees.low < 0:
            self._unfit(line, node, "24 F in the sum")
            return mixer
        if not node.names:
            figure = f"{show_figure(degrees.low)} {degrees.unit}"
            message = f"`friction {figure}` is counted in two ways, and they are far apart"
            help = (
                f"write `friction {figure} in the sum` where it is taken off once, "
                f"`friction {figure} of the dough` where the mixer warms the dough by it"
            )
            place = line.line.place()
            fixes = tuple(
                at_the_end(place, f" {way}", f"write `{way}` behind it") for way in ("in the sum", "of the dough")
            )
            self.reports.append(report("friction-unclear", place, message, help, fixes=fixes))
            return mixer
        celsius = degrees.low * UNITS[degrees.unit].factor
        return mixer._replace(friction=SaidFriction(celsius, node.names[0].text == "sum"))

    def _volume(self, entry: Written, what: str, lines: Lines, sides: dict[str, Sides]) -> Fraction | None:
        """Millilitres: said, or of the water weighed in it, or by its measures, and in that order."""
        said = self._figure(lines, "volume", VOLUME, "1900 ml")
        water = self._figure(lines, "holds water", MASS, "1900 g")
        measured = volume_of(sides) if sides else None
        unread = any(isinstance(line.node, Unread) for line in entry.children)
        if measured is None and sides.keys() == SIZE_EXAMPLES.keys() & lines.keys() != set() and not unread:
            message = f"the measures of {what} do not make a volume"
            help = "write `inside` with three; or `top`, `bottom` and `deep`; or `round` and `deep`"
            self.reports.append(report("tin-size-unclear", entry.line.place(), message, help))
        return said or (volume_by_water(water) if water else measured)

    def _falls(self, what: str, lines: list[Written]) -> dict[Fraction, tuple[Fall, Place]]:
        """The stretches of a falling oven, the hottest first, by the heat each begins at; with its line."""
        found: dict[Fraction, tuple[Fall, Place]] = {}
        for line in lines:
            assert isinstance(line.node, Setting)
            fall = fall_of(line.node)
            if fall is None or not COLDEST <= fall.start <= HOTTEST:
                self._unfit(line, line.node, FALL_EXAMPLE)
            elif fall.start in found:
                message = f"{what} falls from {show_figure(fall.start)} C in two lines"
                help = "keep one line `falls` for each heat it begins at"
                self.reports.append(report("kitchen-line-twice", line.line.place(), message, help))
            else:
                found[fall.start] = (fall, line.line.place())
        return dict(sorted(found.items(), reverse=True))

    def _load_takes(self, lines: Lines) -> LoadTakes | None:
        if "each load cools it" not in lines:
            return None
        line, node = lines["each load cools it"]
        takes = load_takes_of(node)
        if takes is None:
            self._unfit(line, node, LOAD_EXAMPLE)
        return takes

    def _oven(self, name: str, lines: Lines, falls: list[Written]) -> Oven:
        sides = self._sides(lines)
        door = sides.get("door")
        what = f"oven {name}".rstrip()
        stretches = self._falls(what, falls)
        oven = Oven(
            name,
            heat=_said(lines, "heat"),
            hottest=self._maybe_temperature(lines, "hottest", "330 C", "hottest"),
            holds=self._holds(lines),
            recovers=self._figure(lines, "recovers", TIME, "4 min"),
            heats_in=self._figure(lines, "heats in", TIME, "90 min"),
            steam=_said(lines, "steam"),
            floor=floor_of(sides),
            door=door[0] if door else None,
            falls=tuple(fall for fall, _ in stretches.values()),
            costs=self._costs(lines),
            load_takes=self._load_takes(lines),
        )
        places = {start: place for start, (_, place) in stretches.items()}
        said = (line.node.amounts[-1].unit for line in falls if isinstance(line.node, Setting) and line.node.amounts)
        unit = next((unit for unit in said if unit in ("C", "F")), "C")
        self.reports += plausible.falls(what, oven, places, unit)
        return self._day_of_oven(what, oven, lines)

    def _costs(self, lines: Lines) -> RunningCost | None:
        """`costs 14 EUR a firing`, `costs 6 EUR an hour`"""
        if "costs" not in lines:
            return None
        from manchet.kitchen.sale_lines import running_of  # few ovens say it

        costs = running_of(lines["costs"][1], lines["costs"][0].line)
        self.reports += costs.diagnostics
        return costs.value

    def _scale(self, entry: Written, name: str, lines: Lines) -> Scale | None:
        reads = self._figure(lines, "reads", MASS, "5 g")
        if not reads:
            if "reads" not in lines:
                message, help = f"nobody knows to what the scale {name}".rstrip() + " reads", "add a line `reads 5 g`"
                self.reports.append(report("scale-reads-missing", entry.line.place(), message, help))
            return None
        most = self._figure(lines, "up to", MASS, "30 kg")
        if most is not None and most <= reads:
            self._unfit(*lines["up to"], "30 kg")
            most = None
        return Scale(name, reads, most)

    def _first(self, entry: Written, key: str, seen: set[str], owner: str) -> bool:
        if key in seen:
            message, help = f"{owner} has two lines `{key}`", "keep one, or give each its own name"
            fixes = () if entry.children else (without_line(entry.line.place(), "leave out this line"),)
            self.reports.append(report("kitchen-line-twice", entry.line.place(), message, help, fixes=fixes))
            return False
        seen.add(key)
        return True

    def _one_floor(self, entry: Written, key: str, seen: set[str], owner: str) -> bool:
        """An oven's floor is square or round, and a line for each says two things of one floor."""
        other = {"floor": "round floor", "round floor": "floor"}.get(key)
        if other not in seen:
            return True
        message = f"{owner} has a `floor` and a `round floor`"
        help = "keep `floor` for one with corners, else `round floor`"
        self.reports.append(report("kitchen-line-twice", entry.line.place(), message, help))
        return False

    def _misplaced(self, entry: Written, owner: str, keys: tuple[str, ...]) -> None:
        assert isinstance(entry.node, Setting)
        near = nearest(entry.node.key, keys)
        help = (f"did you mean `{near}`? " if near else "") + f"here go {list_of_words(keys, 'and')}"
        message = f"`{entry.node.key}` is not a line of {owner}"
        fixes = exchange_of(entry.line.place(), entry.node.key, near) if near else ()
        self.reports.append(report("no-kitchen-line", entry.line.place(), message, help, fixes=fixes))


def _with(kitchen: Kitchen, field: str, value: Any) -> Kitchen:
    """The kitchen with one field changed that is called as its line is."""
    return kitchen._replace(**{field: value})


def _said(lines: Lines, key: str) -> str:
    return ", ".join(word.text for word in lines[key][1].names) if key in lines else ""

"""The small print of a prep sheet: the overall formula in per cent, its totals, what was taken as flour."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.batch.scales import ASSUMED
from manchet.batch.totals import Totals
from manchet.batch.weighed_table import Table
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, OverallLine
from manchet.sheets.page.measures import OUNCE, Measures
from manchet.sheets.parts.views import Fact, OverallShare

NOTABLE = Fraction(1, 2000)
"""Sugar and fat below this would be printed as nothing."""


def overall_shares(formula: Formula, before: Mapping[str, Fraction], m: Measures) -> tuple[OverallShare, ...]:
    """Per cent only, so that nobody weighs from it; what was otherwise in the version before says so."""
    lines = []
    said = m.part if formula.preparation and not formula.is_in_percent else m.percent
    for line in formula.overall:
        share = line.share
        was = before.get(fold(line.name)) if before else None
        name = f"{line.name} ({aside})" if (aside := _aside(line, m)) else line.name
        percent = m.words.say("foot.from_to", said(share), said(share + line.more)) if line.more else said(share)
        if before and was is None:
            mark = m.words["foot.was_not"]
        else:
            mark = m.words.say("foot.was", m.percent(was)) if was is not None and was != share else ""
        lines.append(OverallShare(name, percent, mark))
    now = {fold(line.name) for line in formula.overall}
    gone = ((name, was) for name, was in before.items() if name not in now)
    lines += [OverallShare(name, m.words["foot.none"], m.words.say("foot.was", m.percent(was))) for name, was in gone]
    return tuple(lines)


def per_cents_of(formula: Formula, m: Measures) -> str:
    """`% of all flour`, `% of total weight`, `% of milk`: what a list of per cents is headed with."""
    if formula.is_in_percent:
        return m.words.say("foot.per_cent_of", next(line.name for line in formula.overall if line.share == 1))
    return m.words["foot.per_cent" if formula.has_flour else "foot.per_cent_whole"]


def _aside(line: OverallLine, m: Measures) -> str:
    """What sets a line apart from the flour it is."""
    if line.apart:
        return m.words["foot.apart"]
    if line.optional:
        return m.words["foot.optional"]
    ingredient = line.ingredient
    return m.words["foot.not_flour"] if ingredient and ingredient.counts_as_flour and not line.is_flour else ""


def total_facts(t: Totals, m: Measures) -> tuple[Fact, ...]:
    """Both waters, flour that ferments first, salt, each yeast with its kind, sugar and fat where there is any."""
    words = m.words
    facts = [
        Fact(words["foot.water_added"], m.worked_out(t.water_added)),
        Fact(words["foot.water_in_all"], m.worked_out(t.water_in_all)),
        *((Fact(words["foot.water_weighed"], m.worked_out(t.water_weighed)),) if t.boiled_off else ()),
        Fact(words["foot.prefermented"], m.worked_out(t.prefermented)),
        Fact(words["foot.salt"], m.worked_out(t.salt)),
        *(Fact(yeast.name, m.percent(share)) for yeast, share in t.yeasts),
    ]
    if t.sugar >= NOTABLE:
        facts.append(Fact(words["foot.sugar"], m.worked_out(t.sugar)))
    if t.fat >= NOTABLE:
        facts.append(Fact(words["foot.fat"], m.worked_out(t.fat)))
    return tuple(facts)


def flours_line(formula: Formula, m: Measures) -> str:
    """What was taken as flour: all else is per cent of it."""
    if formula.preparation:
        return ""
    names = [line.name for line in formula.overall if line.is_flour]
    if not names:
        return m.words["foot.nothing_as_flour"]
    return m.words.say("foot.counted_as_flour", ", ".join(names))


def scale_notes(tables: Sequence[Table], m: Measures) -> tuple[str, ...]:
    """Which scale was assumed, where the kitchen names none."""
    if not any(table.assumed for table in tables):
        return ()
    step = OUNCE / 4
    coarse, fine = (m.in_grams(scale.reads, scale.reads) for scale in ASSUMED)
    if m.house.units == "US":
        return (m.words.say("foot.assumed_pounds", str(m.weight(step, step)), str(coarse), str(fine)),)
    return (m.words.say("foot.assumed", str(coarse), str(fine)),)

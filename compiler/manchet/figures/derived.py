"""Every figure of a batch, with the rule that made it, its inputs and its source."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch, Weighed
from manchet.batch.totals import stage_prefermented
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Place
from manchet.figures.composition.as_asked import at_most_figures, joined_more, more_figure
from manchet.figures.composition.brought import FAT, SALT, SUGAR, brought, water_in_all_figures
from manchet.figures.composition.contents import contents_figures
from manchet.figures.composition.label import label_figures
from manchet.figures.composition.swapped import swap_figures
from manchet.figures.composition.worked_in import worked_in_figures
from manchet.figures.dish_figures import PartFigures, dish_figures, part_figures
from manchet.figures.fermentation.another_warmth import fermentation_figures
from manchet.figures.fermentation.chilling import chilling_figures
from manchet.figures.fermentation.yeast_grid import moved_figures, yeast_figures
from manchet.figures.figure import Figure, Given
from manchet.figures.losses.bake_loss import finished_rule, loss_figures, said_loss, what_touches
from manchet.figures.mixing.turns import kneading_figures, mixing_figures
from manchet.figures.oven.core import core_figures
from manchet.figures.oven.curve import first_bakes, oven_of
from manchet.figures.oven.floor import load_figures
from manchet.figures.oven.oven_figures import oven_figures
from manchet.figures.water.stage_water import stage_water_figures, stage_waters
from manchet.figures.water.water_figures import water_figures
from manchet.figures.water.water_grid import water_of
from manchet.formula.model import ALL_WEIGHED, THE_LINE, Formula, OverallLine, Portion, Way
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import PREFERMENTS

NOTHING = Fraction(0)
BALANCE = "arithmetic of the formula: what is weighed equals what comes out and what is lost"
PERCENT = "baker's percentage: weight of the ingredient / weight of all flour x 100 (the trade's definition)"
GUILD = "prefermented flour as the Bread Bakers Guild of America counts it: flour in preferments / all flour"
LARDER = "the larder's composition of each ingredient"
FILE = "the file"


class MaterialFigures(NamedTuple):
    """One line of overall or of a stage. `percent` is None where a line has none (a weight in a flourless stage)."""

    name: str
    percent: Figure | None
    grams: Figure
    basis: str
    flour: bool
    stage: str
    """The key of the stage that is used, else ""."""
    booking: str
    more: Figure | None = None
    """Grams that may go in on top, as the flour asks; None where the line is one figure."""
    optional: bool = False


class StageFigures(NamedTuple):
    key: str
    name: str
    word: str
    materials: tuple[MaterialFigures, ...]
    total: Figure
    """All that is weighed in, grams."""
    out: Figure
    """What comes out after losses and returns, grams."""
    flour_share: Figure
    """Flour weighed into it and in its counted culture, per cent of all flour."""
    kept: Figure
    returned: Figure
    lost: Figure
    discarded: Figure


class Figures(NamedTuple):
    name: str
    way: str
    overall: tuple[MaterialFigures, ...]
    stages: tuple[StageFigures, ...]
    totals: dict[str, Figure]
    estimates: Mapping[str, Figure] = {}
    """What the file leaves open, by a name in words: each wait somewhere cooler or warmer, how soon a retarded
    dough is cold, bake loss, baked weight."""
    contents: Mapping[str, Figure] = {}
    """What is in one finished piece, by a name in words."""
    degrees: str = ""
    """"F" where the kitchen writes its temperatures so; every figure is in Celsius all the same."""
    parts: tuple[PartFigures, ...] = ()
    """Of a dish: all that is on its plates, in the order in which it is built. Empty for what is no dish."""


def figures_of(work: Work, beside: tuple[Work, ...] = ()) -> Figures:
    """Derive every figure of a work. `beside` is what it shares a falling oven with."""
    batch, formula, kitchen = work.batch, work.formula, work.kitchen
    flour = _flour(batch)
    overall = tuple(_overall_line(line, formula, flour) for line in formula.overall)
    stages = tuple(_stage(stage, work, flour) for stage in batch.stages)
    found = _totals(work, overall, stages, flour)
    found |= swap_figures(formula) | moved_figures(formula) | worked_in_figures(batch)
    if "water_percent" in found:
        found |= at_most_figures(formula, found["water_percent"])
    found |= mixing_figures(formula.dough.steps, work.mixes.mixer)
    water = water_of(work)
    if water is not None and water.known and not formula.preparation:
        found |= water_figures(water, batch)
    estimates = fermentation_figures(formula, kitchen.air) | chilling_figures(work) | loss_figures(work)
    estimates |= yeast_figures(work) | core_figures(formula) | kneading_figures(formula.dough.steps)
    estimates |= stage_water_figures(stage_waters(work))
    if kitchen.ovens and not formula.preparation:
        baked_in = next((oven_of(step, kitchen) for _, step in first_bakes(formula)), None)
        estimates |= load_figures(work, baked_in) | oven_figures(work, beside)
    inside = contents_figures(work) | label_figures(work)
    parts = tuple(part_figures(work))
    return Figures(formula.name, formula.way.value, overall, stages, found, estimates, inside, kitchen.degrees, parts)


def where(place: Place | None) -> str:
    return place.where if place else "the larder"


def _flour(batch: Batch) -> Figure:
    formula = batch.formula
    if formula.way is Way.BY_WEIGHT and batch.flour == formula.own_flour:
        flours = [line for line in formula.overall if line.is_flour]
        inputs = tuple(
            Given(line.name, line.share * batch.flour, "g", where(line.place)) for line in flours or formula.overall
        )
        what = "flour" if flours else "what is weighed (there is no flour)"
        return Figure("flour", batch.flour, "g", f"the sum of all {what}, as the file weighs it", inputs, FILE)
    if formula.from_flour == batch.flour:
        given = Given("from … flour", batch.flour, "g", where(formula.place))
        return Figure("flour", batch.flour, "g", "as the head says", (given,), FILE)
    dough = _pieces(batch)
    loss = Given("dough loss", formula.dough_loss * 100, "%", where(formula.place))
    share = Figure(
        "dough from 100 g flour", formula.dough_share * 100, "g",
        "all that is weighed for the bread, less what is lost before dividing", (), BALANCE,
    )  # fmt: skip
    rule = "dough wanted / (1 - dough loss / 100) / dough from 1 g of flour"
    return Figure("flour", batch.flour, "g", rule, (dough, loss, share), BALANCE)


def _one(piece: PieceBatch) -> str:
    """What the baked weight of one is called, so that it is not taken for the weight of all."""
    noun = piece.noun or "pieces"
    return f"baked, the {noun}" if piece.number == 1 else f"baked, one of the {noun}"


def _pieces(batch: Batch) -> Figure:
    inputs: list[Given] = []
    for piece in batch.pieces:
        place = where(batch.formula.makes[0].place) if batch.formula.makes else where(batch.formula.place)
        inputs.append(Given(f"{piece.noun or 'pieces'}", piece.number, "", place))
        inputs.append(Given(f"dough for one of the {piece.noun or 'pieces'}", piece.grams, "g", place))
    rule = "number of pieces x dough for one, summed; what is added after dividing is left out"
    return Figure("dough wanted", batch.divided, "g", rule, tuple(inputs), FILE)


def _overall_line(line: OverallLine, formula: Formula, flour: Figure) -> MaterialFigures:
    share, of = line.share * 100, _per_cents_of(formula)
    if formula.way is Way.OVERALL and not line.apart:
        percent = Figure(
            line.name, share, "%", "as overall says", (Given(line.name, share, "%", where(line.place)),), FILE
        )
    elif line.apart:
        percent = Figure(
            line.name, share, "%", "culture weighed into the stages / all flour x 100; its flour is not counted",
            (Given(line.name, share, "%", where(line.place)),), PERCENT,
        )  # fmt: skip
    else:
        rule = f"what of it reaches the bread through all stages / {of} x 100; counted cultures are split"
        percent = Figure(line.name, share, "%", rule, (flour,), PERCENT)
    grams = Figure(line.name, line.share * flour.value, "g", f"per cent of {of} x {of}", (percent, flour), PERCENT)
    more = more_figure(line.name, grams.value, line.more * flour.value, line.place)
    apart = "apart" if line.apart else ""
    return MaterialFigures(line.name, percent, grams, of, line.is_flour, line.stage, apart, more, line.optional)


def _per_cents_of(formula: Formula) -> str:
    """What 100 % is."""
    if formula.has_flour:
        return "all flour"
    return THE_LINE if formula.is_in_percent else ALL_WEIGHED


def _stage(stage: StageBatch, work: Work, flour: Figure) -> StageFigures:
    materials = tuple(_material(w, stage, work.batch, flour) for w in _joined(stage.weighed))
    weighed = tuple(m.grams for m in materials)
    name = stage.stage.name
    total = Figure(f"{name}, weighed in", stage.into, "g", "the sum of its lines", weighed, BALANCE)
    left = {keep.how: (keep.name or "what is left", stage.left) for keep in stage.stage.keeps if stage.left}
    kept_left = (left["left"],) if "left" in left else ()
    kept = _sum(f"{name}, kept", (*stage.kept, *kept_left), stage, "kept, as the file says")
    thrown = (left["discard"],) if "discard" in left else ()
    discarded = _sum(
        f"{name}, thrown away", thrown, stage, "made - taken: what is left is thrown away, as the file says"
    )
    returned = _sum(f"{name}, back to the pot", stage.returned, stage, "the weight of culture that came in goes back")
    losses = tuple(
        Given(f"loses ({step.verb})", step.loses * 100, "%", where(step.place))
        for step in stage.stage.steps
        if step.loses is not None
    )
    poured = tuple(
        Given(f"poured off ({poured.name})", poured.share * stage.size, "g", where(step.place))
        for step in stage.stage.steps
        if (poured := step.poured) is not None
    )
    lost = Figure(
        f"{name}, lost",
        stage.lost,
        "g",
        "each loss is of what is in the vessel then, one after another"
        + ("; what is poured off is gone" if poured else ""),
        (*losses, *poured),
        BALANCE,
    )
    rule = "weighed in - lost + topped up - back to the pot"
    out = Figure(f"{name}, made", stage.out, "g", rule, (total, lost, returned), BALANCE)
    return StageFigures(
        stage.stage.key,
        name,
        stage.stage.word,
        materials,
        total,
        out,
        _flour_share(stage, work.larder),
        kept,
        returned,
        lost,
        discarded,
    )


def _joined(weighed: tuple[Weighed, ...]) -> tuple[Weighed, ...]:
    """The lines of a stage with what is held back joined to the rest of the same line."""
    joined: dict[tuple[str, Place, Fraction | None], Weighed] = {}
    for w in weighed:
        key = w.portion.key, w.portion.place, w.portion.celsius
        there = joined.get(key)
        if there is None:
            joined[key] = w
            continue
        a, b = there.portion, w.portion
        percent = None if a.percent is None or b.percent is None else a.percent + b.percent
        both = a._replace(share=a.share + b.share, percent=percent, more=joined_more(a, b))
        joined[key] = Weighed(both, there.grams + w.grams)
    return tuple(joined.values())


def _material(weighed: Weighed, stage: StageBatch, batch: Batch, flour: Figure) -> MaterialFigures:
    portion = weighed.portion
    percent = _portion_percent(portion)
    larger = weighed.grams / (portion.share * batch.flour) if portion.share * batch.flour else Fraction(1)
    inputs: tuple[Given | Figure, ...] = (percent, flour) if percent else (flour,)
    rule = _grams_rule(portion, stage)
    if larger != 1:
        kept = sum((g for _, g in stage.kept), NOTHING)
        inputs = (*inputs, Given("the stage is mixed larger by", (larger - 1) * 100, "%", where(stage.stage.place)))
        rule += (
            f"; mixed larger so that {_plain(kept)} g can be kept" if kept else "; mixed larger for what is kept later"
        )
    grams = Figure(portion.name, weighed.grams, "g", rule, inputs, BALANCE if portion.stage else PERCENT)
    return MaterialFigures(
        portion.name, percent, grams, portion.basis, portion.is_flour, portion.stage, portion.booking.value,
        more_figure(portion.name, weighed.grams, weighed.grams * portion.more, portion.place), portion.optional,
    )  # fmt: skip


def _plain(value: Fraction) -> str:
    return str(value.numerator) if value.denominator == 1 else f"{value.numerator}/{value.denominator}"


def _portion_percent(portion: Portion) -> Figure | None:
    if portion.percent is None:
        return None
    given = Given(portion.name, portion.percent, "%", where(portion.place))
    basis = portion.basis or "this stage's flour"
    return Figure(portion.name, portion.percent, "%", f"per cent of {basis}", (given,), PERCENT)


def _grams_rule(portion: Portion, stage: StageBatch) -> str:
    if portion.stage:
        return "all of the stage, or as much of it as the file says"
    if portion.basis == "what is soaked":
        return "per cent of everything in the stage that is not itself written so"
    if portion.basis == "stage flour" and stage.stage.flour_share is not None:
        return "per cent of this stage's flour x the stage's share of all flour x all flour"
    of = portion.basis if portion.basis in (ALL_WEIGHED, THE_LINE) else "all flour"
    return f"per cent of {of} x {of}"


def _sum(name: str, amounts: tuple[tuple[str, Fraction], ...], stage: StageBatch, rule: str) -> Figure:
    inputs = tuple(Given(what, grams, "g", where(stage.stage.place)) for what, grams in amounts)
    return Figure(name, sum((grams for _, grams in amounts), NOTHING), "g", rule, inputs, FILE)


def _flour_share(stage: StageBatch, larder: Larder) -> Figure:
    value = stage_prefermented(stage.stage, larder) * 100
    inputs = tuple(Given(p.name, p.share * 100, "%", where(p.place)) for p in stage.stage.portions if p.is_flour)
    rule = "flour weighed into it, and in its counted culture, / all flour x 100"
    return Figure(f"{stage.stage.name}, share of all flour", value, "%", rule, inputs, GUILD)


def _totals(
    work: Work, overall: tuple[MaterialFigures, ...], stages: tuple[StageFigures, ...], flour: Figure
) -> dict[str, Figure]:
    batch, totals = work.batch, work.totals
    per_cents = tuple(m.percent for m in overall)
    lines = tuple(percent for percent in per_cents if percent is not None)
    preferments = tuple(s.flour_share for s in stages if s.word in PREFERMENTS)
    formula = batch.formula

    def share(name: str, value: Fraction, rule: str, inputs: tuple[Figure, ...], source: str) -> Figure:
        return Figure(name, value * 100, "%", rule, inputs, source)

    def of_class(*classes: str) -> tuple[Figure, ...]:
        return tuple(
            m.percent
            for m, line in zip(overall, formula.overall, strict=True)
            if m.percent is not None and line.ingredient is not None and line.ingredient.class_ in classes
        )

    made = Figure(
        "dough", batch.dough, "g", "all flour x dough from 1 g of flour: weighed in, less what is lost before dividing",
        (flour,), BALANCE,
    )  # fmt: skip
    pieces = Figure(
        "dough at the scale", batch.divided, "g", "dough x (1 - dough loss / 100)",
        (made, Given("dough loss", formula.dough_loss * 100, "%", where(formula.place))), BALANCE,
    )  # fmt: skip
    weighed = sum((m.grams.value for m in overall), NOTHING)
    sum_of = Figure(
        "sum of the overall formula", weighed / batch.flour * 100 if batch.flour else NOTHING, "%",
        "the sum of overall's lines", lines, PERCENT,
    )  # fmt: skip
    if formula.preparation:
        return {
            "weighed_grams": stages[-1].total,
            "made_grams": made._replace(name="made"),
            **dish_figures(work),
        }
    found = {
        "flour_grams": flour,
        "dough_grams": made,
        "divided_grams": pieces,
        "overall_percent": sum_of,
        "water_percent": share("water added", totals.water_added, "the ingredient water alone / all flour x 100",
                               of_class("water"), PERCENT),
        **water_in_all_figures(work, per_cents),
        "prefermented_flour_percent": share(
            "prefermented flour", totals.prefermented,
            "flour weighed into preferments, and in counted cultures, / all flour x 100", preferments, GUILD),
        "salt_percent": share("salt", totals.salt, SALT, brought(work, "salt", per_cents), LARDER),
        "yeast_percent": share("yeast", sum((s for _, s in totals.yeasts), NOTHING),
                               "yeasts as weighed / all flour x 100", of_class("yeast", "sweet-dough yeast"), PERCENT),
        "sugar_percent": share("sugar", totals.sugar, SUGAR, brought(work, "sugar", per_cents), LARDER),
        "fat_percent": share("fat", totals.fat, FAT, brought(work, "fat", per_cents), LARDER),
    }  # fmt: skip
    return found | _baked(batch)


def _shortest(figure: Figure) -> tuple[Figure | Given, ...]:
    """A figure as an input: the one fact that it only repeats, or itself."""
    return figure.inputs if len(figure.inputs) == 1 and figure.inputs[0].value == figure.value else (figure,)


def _baked(batch: Batch) -> dict[str, Figure]:
    """What one piece weighs when it is bread, and what all bread weighs together, where the file says what is lost."""
    formula = batch.formula
    found: dict[str, Figure] = {}
    total: list[tuple[Figure, Fraction]] = []
    for piece in batch.pieces:
        loss = said_loss(formula, piece.noun)
        if piece.baked_grams is None or loss is None:
            return found
        inputs = (*_shortest(loss), *what_touches(batch, piece.noun))
        one = Figure(_one(piece), piece.baked_grams, "g", finished_rule(piece), inputs, FILE)
        found.setdefault("baked_grams", one)
        total.append((one, piece.number * piece.baked_grams))
    whole = said_loss(formula, formula.makes[0].noun) if formula.makes and not batch.pieces else None
    if whole is not None:
        at_scale = Given("dough at the scale", batch.divided, "g", where(formula.place))
        found["baked_total_grams"] = Figure(
            "all the bread", batch.divided * (1 - whole.value / 100), "g", "dough at the scale x (1 - bake loss / 100)",
            (at_scale, *_shortest(whole)), FILE,
        )  # fmt: skip
    elif total:
        found["baked_total_grams"] = Figure(
            "all the bread", sum((grams for _, grams in total), NOTHING), "g", "baked weight of one x pieces, summed",
            tuple(one for one, _ in total), FILE,
        )  # fmt: skip
    return found

"""The figures of a batch as plain data, in the documented and versioned shape of `figures --format json`: `figures.schema.json`.

Shape, version 1: `format`, `version`, `name`, `way`, `overall` (a list of materials), `stages` (a list of stages, each
with `name`, `kind`, `materials`, `total_grams`, `out_grams`, `flour_share`, `kept_grams`, `returned_grams`,
`lost_grams`, `discarded_grams`), `totals` (by name), `estimates` and `contents` (by a name in words: what is in one finished piece). A material has `name`, `percent`, `grams`,
`basis`, `flour`, and `stage` where a stage is used, `more_grams` where more may go in as the flour asks, `optional` where it
may be left out. A dish has `parts` too: all that is on its plates, each with `name`, `grams` (null where nobody knows what one
weighs), `number` and `unit` where it is counted, and `stage` where it is made. A figure is an object: `exact` (a finite decimal as a string, else
"a/b"), `rounded` (a number with at most six decimals), `unit`, `rule`, `inputs` (figures, or facts of the file with
`where`) and `source`.

With the work beside the figures (`full_report`) a stage has `held_back` and `steps` too, and the whole has `pieces`, `branches`
(what each part of the divided dough goes on to be), `allergens` and `hours`.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from manchet.batch.work import Work
from manchet.figures.derived import Figures, MaterialFigures, StageFigures
from manchet.figures.dish_figures import PartFigures
from manchet.figures.figure import Figure, Given
from manchet.figures.work_report import stage_work, work_report
from manchet.quantities.printing import exact_text, rounded_number

FORMAT, VERSION = "manchet-figures", 1


def report_of(figures: Figures) -> dict[str, Any]:
    return {
        "format": FORMAT,
        "version": VERSION,
        "name": figures.name,
        "way": figures.way,
        "overall": [_material(m) for m in figures.overall],
        "stages": [_stage(s) for s in figures.stages],
        "totals": {name: _figure(f) for name, f in figures.totals.items()},
        "estimates": {name: _figure(f) for name, f in figures.estimates.items()},
        "contents": {name: _figure(f) for name, f in figures.contents.items()},
        **({"parts": [_part(one) for one in figures.parts]} if figures.parts else {}),
    }


def full_report(figures: Figures, work: Work, seconds: Fraction) -> dict[str, Any]:
    """The figures with what is done, made and in it. `seconds`: from the first job to the bread that is ready."""
    report = report_of(figures)
    stages = zip(report["stages"], work.formula.stages, strict=True)
    return {
        **report,
        "stages": [{**said, **stage_work(stage)} for said, stage in stages],
        **work_report(work, seconds),
    }


def _part(part: PartFigures) -> dict[str, Any]:
    found: dict[str, Any] = {"name": part.name, "grams": None if part.grams is None else _figure(part.grams)}
    if part.number is not None:
        found |= {"number": _figure(part.number), "unit": part.unit}
    return found | ({"stage": part.stage} if part.stage else {})


def _stage(stage: StageFigures) -> dict[str, Any]:
    return {
        "name": stage.name,
        "kind": stage.word,
        "materials": [_material(m) for m in stage.materials],
        "total_grams": _figure(stage.total),
        "out_grams": _figure(stage.out),
        "flour_share": _figure(stage.flour_share),
        "kept_grams": _figure(stage.kept),
        "returned_grams": _figure(stage.returned),
        "lost_grams": _figure(stage.lost),
        "discarded_grams": _figure(stage.discarded),
    }


def _material(material: MaterialFigures) -> dict[str, Any]:
    found = {
        "name": material.name,
        "percent": None if material.percent is None else _figure(material.percent),
        "grams": _figure(material.grams),
        "basis": material.basis,
        "flour": material.flour,
    }
    if material.stage:
        found["stage"] = material.stage
    if material.booking:
        found["culture"] = material.booking
    if material.more is not None:
        found["more_grams"] = _figure(material.more)
    if material.optional:
        found["optional"] = True
    return found


def _figure(figure: Figure | Given, depth: int = 1) -> dict[str, Any]:
    """One figure; its inputs one level deep, each of which stands in full elsewhere in the report."""
    found: dict[str, Any] = {}
    found["exact"] = exact_text(figure.value)
    found["rounded"] = rounded_number(figure.value)
    found["unit"] = figure.unit
    if isinstance(figure, Given):
        return {"name": figure.name, **found, "where": figure.where}
    found["rule"] = figure.rule
    if depth:
        found["inputs"] = [_input(i) for i in figure.inputs]
    found["source"] = figure.source
    return found


def _input(given: Figure | Given) -> dict[str, Any]:
    return _figure(given) if isinstance(given, Given) else {"name": given.name, **_figure(given, 0)}

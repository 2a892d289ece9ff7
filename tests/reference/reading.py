"""From a formula file and an order to the figures as `manchet figures --format json` gives them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from pathlib import Path
from typing import Any

from works import work_in

from manchet.batch.order import Order
from manchet.diagnostics.diagnostic import Severity
from manchet.figures.derived import figures_of as derive
from manchet.figures.report import report_of
from manchet.quantities.units import UNITS
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.changes import Changes


def bakery_of(text: str, path: str = "formula.bake", swaps: Sequence[str] = ()) -> Bakery:
    """A bakery of one file that has to be sound; craft may be reported, a mistake may not."""
    bakery = read([SourceText(path, text)], changes=Changes(tuple(swaps)) if swaps else None)
    errors = [report for report in bakery.diagnostics if report.severity is Severity.ERROR]
    assert not errors, "\n".join(f"{e.place.path}:{e.place.line}: {e.message} [{e.name}]" for e in errors)
    return bakery


def figures_of(file: Path, asked: Mapping[str, Any]) -> dict[str, Any]:
    """The report on the one formula of a file at the size that is asked for."""
    bakery = bakery_of(file.read_text(encoding="utf-8"), file.name, asked.get("swaps", ()))
    (formula,) = bakery.formulas
    beside = (bakery.work(other).value for other in bakery.formulas)
    return report_of(
        derive(work_in(bakery, formula, order_of(asked)), tuple(work for work in beside if work is not None))
    )


def order_of(asked: Mapping[str, Any]) -> Order:
    """An order as a case writes it: `pieces = 73`, `piece = "390 g"`, `dough`, `flour`, `baked`, `have = "milk 50 g"`;
    `swaps = ["fresh yeast for instant yeast"]` as with `--swap`."""
    order = Order()
    for key, value in asked.items():
        match key:
            case "pieces":
                order = order._replace(pieces=((Fraction(value), ""),))
            case "piece":
                order = order._replace(piece_grams=grams(value))
            case "dough":
                order = order._replace(dough=grams(value))
            case "flour":
                order = order._replace(flour=grams(value))
            case "have":
                name, amount = value.split(" ", 1)
                order = order._replace(have=(name, grams(amount)))
            case "swaps":
                pass  # carried out before anything is sized
            case _:
                raise KeyError(key)
    return order


def grams(amount: str) -> Fraction:
    """`390 g`, `1.5 kg`, `500 lb`"""
    figure, unit = amount.split()
    return Fraction(figure) * UNITS[unit].factor

"""How much is done for a bakery: calls counted, never seconds, so that a busy machine changes nothing."""

from __future__ import annotations

import sys
from collections.abc import Callable
from datetime import datetime
from types import FrameType

from benchmarks.growing import BUILD, Family

from manchet.sheets.form import PageSetup, Subject
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.registry import forms_about, html_of
from manchet.source.text import SourceText
from manchet.timing.when import When
from manchet.workspace.bakery import read

PAGE = PageSetup(Issue(), House(), when=When(datetime(2026, 11, 27, 6, 0), False))


def calls(work: Callable[[], object]) -> int:
    """How many functions are called, ours, the library's and the interpreter's, each round of a generator among them."""
    number = 0

    def count(_: FrameType, event: str, __: object) -> None:
        nonlocal number
        number += event in ("call", "c_call")

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        work()
    finally:
        sys.setprofile(before)
    return number


def look_over(family: Family, number: int) -> None:
    """What the family's command does with a bakery of that size, in memory: all reports, and the pages if it is built."""
    bakery = read([SourceText(name, text) for name, text in family.files(number).items()])
    assert bakery.diagnostics is not None
    if family.words != BUILD:
        return
    for formula in bakery.formulas:
        work = bakery.work(formula).value
        if work is None or formula.preparation:
            continue
        for form in forms_about(Subject.FORMULA):
            view = form.render(work, PAGE).value
            if view is not None:
                html_of(view)


def growth(family: Family, number: int) -> float:
    """How much more work another doubling is: 2 where it grows as the size does, 4 where as its square.

    Of three sizes, each twice the one before, so that what is done once for any size falls out.
    """
    look_over(family, number)
    small, middle, large = (
        calls(lambda size=size: look_over(family, size)) for size in (number, 2 * number, 4 * number)
    )  # type: ignore[misc]
    return (large - middle) / (middle - small)

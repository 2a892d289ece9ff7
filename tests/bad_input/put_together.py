"""Bakeries put together at random from lines that may stand where they stand, and what must hold of each of them.

`PYTHONPATH=tests python tests/bad_input/put_together.py [SECONDS] [SEED]`. A line is put under a heading of the sort it was found under in
the demo and the corpus, so that most of what comes out can be read, and much of it nobody would have thought of.
"""

from __future__ import annotations

import random
import sys
import time
from collections.abc import Iterator, Mapping
from fractions import Fraction
from pathlib import Path

from bad_input.fuzz import with_slips

from manchet.batch.order import AS_WRITTEN, Order
from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.source.text import SourceText
from manchet.syntax.nodes import Entry
from manchet.syntax.parser import parse
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.faults import OUR_FAULT
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import Version, render_formula

TESTS = Path(__file__).parent.parent
Lines = Mapping[tuple[str, ...], list[str]]
SLOW = 2.0
"""Seconds of the processor that no bakery of this size may take."""


def sort_of(entry: Entry) -> str:
    """What a line is, as far as it matters to what may stand under it: the name of its node, and the word of a block."""
    return f"{type(entry.node).__name__} {getattr(entry.node, 'word', '')}".strip()


def lines_found() -> Lines:
    """Every line of the demo and the quiet corpus, by the sorts of the headings over it."""
    found: dict[tuple[str, ...], list[str]] = {}

    def gather(entries: tuple[Entry, ...], over: tuple[str, ...]) -> None:
        for entry in entries:
            found.setdefault(over, []).append(entry.line.body)
            gather(entry.children, (*over[-1:], sort_of(entry)))

    for path in sorted([*TESTS.parent.glob("recipes/**/*.bake"), *TESTS.glob("corpus/quiet/**/*.bake")]):
        gather(parse(SourceText("x", path.read_text(encoding="utf-8"))).value.entries, ())
    return found


def bakery_text(lines: Lines, rng: random.Random) -> str:
    """A bakery of one to four blocks."""

    def block(body: str, over: tuple[str, ...], above: tuple[str, ...]) -> Iterator[str]:
        lines_so_far = (*above, "  " * len(above) + body)
        yield lines_so_far[-1]
        entries = parse(SourceText("x", "\n".join(lines_so_far))).value.entries
        here = (*over[-1:], sort_of(_last(entries)))
        known = lines.get(here, []) if len(above) < 4 else []
        chosen = rng.sample(range(len(known)), k=min(len(known), rng.choice((0, 1, 3, 6))))
        for child in sorted(chosen):  # in the order in which they were found, so that heads stand before doughs
            yield from block(known[child], here, lines_so_far)

    text: list[str] = []
    for _ in range(rng.randint(1, 4)):
        text += [*block(rng.choice(lines[()]), (), ()), ""]
    return "\n".join(text) + "\n"


def _last(entries: tuple[Entry, ...]) -> Entry:
    found = entries[-1]
    while found.children:
        found = found.children[-1]
    return found


def spliced(texts: list[str], rng: random.Random) -> str:
    """A sound bakery in which some lines were exchanged for lines of another that stand as deep."""
    rows = rng.choice(texts).split("\n")
    for _ in range(rng.randint(1, 4)):
        other = rng.choice(texts).split("\n")
        at = rng.randrange(len(rows))
        deep = len(rows[at]) - len(rows[at].lstrip())
        fitting = [row for row in other if row.strip() and len(row) - len(row.lstrip()) == deep]
        if fitting:
            rows[at : at + rng.choice((0, 1, 1, 1, 2))] = rng.sample(
                fitting, k=min(len(fitting), rng.choice((0, 1, 2)))
            )
    return "\n".join(rows)


def bakery_at(path: str, text: str) -> Bakery:
    return read([SourceText(path, text)])


def examine(text: str, rng: random.Random) -> None:
    """What must hold: no fault, every report at a place, check and build of one mind, the same pages again, and remarks and blank
    lines of no account."""
    started = time.process_time()
    bakery = bakery_at("x.bake", text)
    reports = bakery.diagnostics
    rows = text.split("\n")
    for report in reports:
        assert report.name != OUR_FAULT, report
        assert report.place.path and 1 <= report.place.line <= len(rows), report
        assert report.message.strip() and "Traceback" not in report.message, report
    wrong = {report.place.line for report in reports if report.severity is Severity.ERROR}
    for formula in bakery.formulas[:3]:
        pages = sheets(bakery, formula)
        if not wrong and not formula.preparation:  # those stand together, on a page of their own
            assert pages, f"{formula.name} is sound, and is not printed"
            assert pages == sheets(bakery_at("x.bake", text), formula), "not the same again"
        order = rng.choice((Order(dough=Fraction(5000)), Order(flour=Fraction(70))))
        assert all(one.name != OUR_FAULT for one in bakery.work(formula, order).diagnostics), order
    assert time.process_time() - started < SLOW * 4, "slow"
    remarked = "\n".join(
        row + (" # a remark" if row.strip() and '"' not in row and "#" not in row else "") for row in rows
    )
    assert shares(bakery_at("x.bake", "\n# more\n\n" + remarked)) == shares(bakery), "a remark changes a figure"


def shares(bakery: Bakery) -> Mapping[str, Mapping[str, Fraction]]:
    return {fold(one.name): {line.name: line.share for line in one.overall} for one in bakery.formulas}


def sheets(bakery: Bakery, formula: Formula) -> Mapping[str, bytes]:
    options = PrintOptions(order=AS_WRITTEN, formats=("html", "json"))
    one = next(found for found in bakery.formulas if found.place == formula.place)
    return render_formula(bakery, one, options, Version("x.bake", "0"), Press()).files


def run(seconds: float, seed: int) -> int:
    """How many bakeries were tried. Fails with the seed and the text of the first that goes wrong."""
    rng = random.Random(seed)
    lines = lines_found()
    paths = [*TESTS.parent.glob("recipes/**/*.bake"), *TESTS.glob("corpus/quiet/**/*.bake")]
    texts = [path.read_text(encoding="utf-8") for path in sorted(paths)]
    until, done = time.monotonic() + seconds, 0
    while time.monotonic() < until:
        how = rng.random()
        text = bakery_text(lines, rng) if how < 0.3 else spliced(texts, rng)
        text = with_slips(text, rng) if how > 0.9 else text
        try:
            examine(text, rng)
        except Exception as problem:
            raise AssertionError(f"seed {seed}, bakery {done}: {problem!r}\n{text}") from problem
        done += 1
    return done


if __name__ == "__main__":
    given = [*sys.argv[1:], "60", "1"][:2] if len(sys.argv) < 3 else sys.argv[1:3]
    print(run(float(given[0]), int(given[1])), "bakeries, seed", given[1])

"""What is said of what lies under the pointer: a figure and why it is so, an ingredient, what a verb asks for, a report's reason."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.batch.work import Work
from manchet.diagnostics.catalogue import explain
from manchet.diagnostics.diagnostic import Place
from manchet.editor.larder_words import about_entry
from manchet.editor.settings import Settings
from manchet.editor.standing import LineAt, line_at
from manchet.editor.today import figures_today, formula_at, size_of, work_today
from manchet.figures.derived import Figures
from manchet.figures.explaining import chain, every_figure, spelling_of, value_text
from manchet.figures.figure import Figure
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.syntax import nodes as n
from manchet.syntax.openings import example_of
from manchet.syntax.vocabulary import VERB, Verb
from manchet.workspace.open_bakery import OpenBakery

DEEPEST = 2
"""How far a figure is explained under the pointer; `manchet trace` goes down to the lines of the file."""
MOST_LINES = 16
MOST_EXPLAINED = 2
"""Figures of one line that are explained; of more the line is told as a table."""


class HoverText(NamedTuple):
    """What is told of a stretch of a line, in Markdown."""

    place: Place
    text: str


def hover(bakery: OpenBakery, path: str, line: int, column: int, settings: Settings) -> HoverText | None:
    """What there is to tell at a position; None where there is nothing."""
    file = bakery.tree(path)
    found = line_at(file, line, column) if file is not None else None
    if file is None or found is None:
        return None
    parts = [*_of_the_line(found), *_figures(bakery, found, settings), *_ingredient(bakery, found)]
    return HoverText(found.line.place(), "\n\n".join(parts)) if parts else None


def _of_the_line(found: LineAt) -> Iterator[str]:
    node = found.node
    if isinstance(node, n.StepNode) and node.verb.start <= found.at <= node.verb.end:
        yield from _verb(VERB[node.verb.text]) if node.verb.text in VERB else ()
    elif isinstance(node, n.Allow) and (case := explain(node.name.text)) is not None:
        yield f"**{case.name}** ({case.severity}): {case.title}"
        yield case.text
    elif isinstance(node, n.Setting):
        context = (
            "entry"
            if isinstance(found.entries[0].node, n.BlockHead) and found.entries[0].node.word == "larder"
            else "thing"
        )
        if example := example_of(node.key, context):
            yield f"**{node.key}**, as in `{example}`"


def _verb(verb: Verb) -> Iterator[str]:
    does = {"hands-on": "work by hand", "machine": "a machine's work", "waiting": "a wait"}[verb.who]
    yield f"**{verb.word}**: {does}"
    needs = []
    if verb.needs_time:
        needs.append(f"how long: `{verb.needs_time}`")
    if verb.needs_heat:
        needs.append(f"the heat around it: `{verb.needs_heat}`")
    if verb.needs_place:
        needs.append("where: `in …`, `on …`")
    if verb.touches:
        needs.append("what goes on it and how much: `… 6 g each`")
    if needs:
        yield "It has to say " + "; ".join(needs) + "."
    if verb.example:
        yield f"For example `{verb.example}`"


def _figures(bakery: OpenBakery, found: LineAt, settings: Settings) -> Iterator[str]:
    file = bakery.tree(found.line.path)
    formula = formula_at(bakery, file, found.line.number) if file is not None else None
    work = work_today(bakery, formula, settings) if formula is not None else None
    if formula is None or work is None:
        return
    figures = figures_today(work)
    size = f"{size_of(work)}{' today' if settings.is_today(formula.name) else ''}"
    if isinstance(found.node, n.BlockHead | n.VariantHead):
        yield f"**{formula.name}**, {size}"
        yield _listed(f"{name}: {value_text(figure)}" for name, figure in _of_the_whole(figures))
        return
    there = list(_at_line(work, figures, found))
    if len(there) > MOST_EXPLAINED:  # `everything else`
        yield _listed(f"{name} {value_text(figure)}" for name, figure in there) + f"\n\nfor {size}"
        return
    for name, figure in there:
        yield f"**{name}** {value_text(figure)}, for {size}"
        yield _why(figure, figures.degrees)


def _of_the_whole(figures: Figures) -> Iterator[tuple[str, Figure]]:
    for key in _OF_THE_WHOLE:
        if key in figures.totals:
            yield (
                spelling_of(key, figures.totals[key]).removesuffix(" grams").removesuffix(" percent"),
                figures.totals[key],
            )


_OF_THE_WHOLE = (
    "flour_grams", "dough_grams", "hydration_percent", "prefermented_flour_percent", "salt_percent", "yeast_percent",
    "baked_grams",
)  # fmt: skip


def _at_line(work: Work, figures: Figures, found: LineAt) -> Iterator[tuple[str, Figure]]:
    """The figures that the line gives rise to, by what is weighed or made."""
    named = every_figure(figures)
    at = (found.line.path, found.line.number)
    for stage in work.batch.stages:
        if (stage.stage.place.path, stage.stage.place.line) == at:
            for what in ("total", "flour share"):
                if f"{stage.stage.name}: {what}" in named:
                    yield f"{stage.stage.name}, {what}", named[f"{stage.stage.name}: {what}"]
        for one in stage.weighed:
            key = f"{stage.stage.name}: {one.portion.name}"
            if (one.portion.place.path, one.portion.place.line) == at and key in named:
                yield one.portion.name, named[key]
    for line in work.formula.overall:
        key = f"overall: {line.name}"
        if line.place is not None and (line.place.path, line.place.line) == at and key in named:
            yield line.name, named[key]
    if isinstance(found.node, n.MakesNode | n.FromFlour):
        totals = (figures.totals[key] for key in ("flour_grams", "dough_grams") if key in figures.totals)
        yield from ((figure.name, figure) for figure in totals)


def _why(figure: Figure, degrees: str) -> str:
    """A figure explained, its rule and what went into it."""
    _, *told = chain(figure, exact=False, house=degrees)
    lines = [line[2:] for line in told if len(line) - len(line.lstrip()) <= 2 * DEEPEST]
    more = [] if len(lines) <= MOST_LINES else ["…"]
    return "\n".join(["```text", *lines[:MOST_LINES], *more, "```"])


def _ingredient(bakery: OpenBakery, found: LineAt) -> Iterator[str]:
    """What the larder knows of the name under the pointer."""
    word = found.word
    is_name = isinstance(
        found.node,
        n.MaterialNode | n.TakeAll | n.TakeLeft | n.HoldBack | n.Add | n.EntryName | n.Swap | n.Without | n.TopUp | n.KeepNode
        | n.BareName | n.Return | n.StepNode | n.ClauseLine | n.Setting,
    )  # fmt: skip
    if word is None or not is_name or (isinstance(found.node, n.StepNode) and word == found.node.verb):
        return
    larder = bakery.read([found.line.path]).larder
    known = larder.find(word.text)
    if isinstance(known, Ingredient):
        yield about_entry(known, larder)


def _listed(lines: Iterable[str]) -> str:
    return "\n".join(f"- {line}" for line in lines)

"""Every example that a baker is shown compiles: those of the language page and of the front page."""

from __future__ import annotations

import re
from pathlib import Path

from every import every
from reference_page.examples import OVERALL, Example, examples_of, whole
from works import bakery_of, reports_of

from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.text import short

ROOT = Path(__file__).parents[2]
PAGES = ("grammar/reference.md", "README.md")
EXAMPLES = [(page, example) for page in PAGES for example in examples_of(ROOT / page) if example.kind != "wrong"]


@every(EXAMPLES, at_least=30)
def test_every_example_compiles(page: str, example: Example) -> None:
    """A whole file without any report; a piece of one, put into a plain bread it was not made for, without an error."""
    text = whole(example)
    bakery = bakery_of(text)
    a_piece = example.kind != ""
    reports = [short(d) for d in bakery.diagnostics if d.severity is Severity.ERROR or not a_piece]
    assert not reports, "\n".join([*reports, text])


def test_the_language_page_has_an_example_of_every_kind() -> None:
    kinds = {example.kind for example in examples_of(ROOT / PAGES[0])}
    assert kinds >= {"", "in head", "in formula", "in dough", "in weights", "wrong"}


def test_links_within_the_language_page_lead_somewhere() -> None:
    text = (ROOT / PAGES[0]).read_text(encoding="utf-8")
    headings = {
        re.sub(r"[^a-z0-9 -]", "", line.lstrip("# ").lower()).replace(" ", "-")
        for line in text.splitlines()
        if line.startswith("## ")
    }
    assert set(re.findall(r"\]\(#([a-z-]+)\)", text)) == headings


def _words() -> list[str]:
    """Every word a line can begin with, every kind of bread, class, unit, and closed phrase: as the compiler has them."""
    from manchet.larder.reading import CLASSES
    from manchet.quantities.units import UNITS
    from manchet.syntax.openings import lines
    from manchet.syntax.phrases import CLAUSES
    from manchet.syntax.vocabulary import KIND

    found = {*KIND, *CLASSES, *UNITS} | {line.words for line in lines()}
    for word, clauses in CLAUSES.items():
        written = {" ".join((word, *p.rest)): p.canonical for p in clauses}
        found |= {said for said, kept in written.items() if said == kept}
    return sorted(found - OTHER_ENGLISH)


OTHER_ENGLISH = {"with steam", "under the rim"}
"""Read, and not taught."""


@every(_words(), at_least=250)
def test_the_language_page_names_every_word(word: str) -> None:
    page = " ".join((ROOT / PAGES[0]).read_text(encoding="utf-8").lower().split())
    assert re.search(rf"(?<![a-z]){re.escape(word.lower())}(?![a-z])", page)


def _answers() -> list[tuple[str, str]]:
    """Word and answer, from the page's table of words that mean something else here."""
    table = (ROOT / PAGES[0]).read_text(encoding="utf-8").split("| you write | the answer is |")[1].split("\n\n")[0]
    rows = [line.strip("| ").split(" | ") for line in table.splitlines()[2:]]
    return [(word, answer) for words, answer in rows for word in words.split(", ")]


@every(_answers(), at_least=24)
def test_a_word_of_another_house_gets_the_answer_the_page_says(word: str, answer: str) -> None:
    line = f"    white flour 50% {word}" if word == "of the flour" else f"    {word}"
    text = f"formula Example\n  kind hearth loaf\n\n{OVERALL}\n  dough\n{line}\n"
    (report,) = [d for d in reports_of(text) if d.place.line == text.count("\n")]
    assert any(first in report.help for first in re.findall(r"`(\S+?)[ `]", answer)), report.help

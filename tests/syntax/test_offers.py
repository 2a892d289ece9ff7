"""What is offered for a line that cannot be read: the word that was meant, or a line that can be typed."""

from __future__ import annotations

import random
from pathlib import Path

from every import every
from run_length import at_length
from works import bakery_of

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.formula.block import any_unread
from manchet.source.mending import mend
from manchet.source.text import SourceText
from manchet.syntax.mistakes.faults import REMARKS
from manchet.syntax.parser import parse
from manchet.syntax.vocabulary import STAGES, VERBS
from manchet.workspace import bakery

ROOT = Path(__file__).parent.parent.parent
FILES = sorted(ROOT.glob("recipes/**/*.bake")) + sorted(ROOT.glob("tests/corpus/quiet/*.bake"))
HEAD = "formula A\n  makes 2 loaves at 900 g dough\n  dough\n    white flour 1000 g\n    salt 20 g\n"

OFFERS = [
    ("bake at 230 for 30 minutes", "missing-unit", "write `at 230 C`"),
    ("bake at 230 for 30 min", "missing-unit", "write `at 230 C`"),
    ("bake at 230 30 min", "missing-unit", "write `at 230 C`"),
    ("bake 30 min at 230", "missing-unit", "write `at 230 C`"),
    ("bake 30-35 at 230 C", "missing-unit", "write `30-35 min`"),
    ("bake for the night at 230 C", "unreadable-line", "leave out `for`; write it like `bake 30 min at 230 C`"),
    ("bake at hot oven for 30 min", "unreadable-line", "after `at` stands a figure; write it like `bake 30 min at 230 C`"),
    ("shape rond", "unreadable-line", "did you mean `round`?"),
    ("ferment coverd", "unreadable-line", "did you mean `covered`?"),
    ("rest cover 20 min", "unreadable-line", "did you mean `covered`?"),
    ("bake 30 min at 230 C, steem", "unreadable-line", "did you mean `steam`?"),
    ("bake 30 min at 230 C with steem", "with-what", "did you mean `with steam`?"),
    ("bake 30 min to 97 C cor", "unreadable-line", "did you mean `core`?"),
    ("brush egg wash", "unreadable-line", "write it like `brush with egg wash 6 g each`"),
    ("fold 4 times", "unreadable-line", "say how far apart at the end of the wait above, as in `ferment 2 h 30 min with 4 folds every 30 min`"),
    ("bake 30 min 97 C", "unreadable-line", "write `at 97 C` for the heat around it, `to 97 C` for its own"),
    ("bake 97 C 30 min", "unreadable-line", "write `at 97 C`"),
    ("mix fast 3 to 22 C", "missing-unit", "write `3 min`"),
    ("bake 30 min at 230 to 250 C", "to-as-range", "write the range `230-250 C`"),
    ("freeze 2 h at -18", "missing-unit", "write `at -18 C`"),
    ("mix slow 3 min to about 25 C", "about-amount", "write `25 C`, or a range"),
    ("bake ~30 min at 230 C", "about-amount", "write `30`, or a range"),
    ("simmer 15 min, lose 12%", "unreadable-line", "did you mean `loses`?"),
    ("cool 8-2 h", "range-backwards", "write `2-8 h`"),
    ('score "a cross', "quote-unclosed", 'close them at the end of the words: `"a cross"`'),
    ("divide into 10", "missing-unit", "the pieces and their weight stand in `makes`"),
    ("eggs 2", "missing-unit", "write `eggs 2 whole`, `eggs 2 g` or `eggs 2%`"),
    ("water 700", "missing-unit", "write `water 700 g` or `water 700%`"),
    ("scale at 450 g", "unreadable-line", "write `divide`; the 450 g stands in `makes`"),
    ("divide at 450 g", "unreadable-line", "write `divide`; the 450 g stands in `makes`"),
    ("kneed", "unknown-word", "for `knead`: write `mix by hand 10 min`"),
    ("kned 5 min", "unknown-word", "for `knead`: write `mix by hand 5 min`"),
    ("autolise 30 min", "unknown-word", "for `autolyse`: write `mix slow 3 min`"),
    ("preheet oven", "unknown-word", "for `preheat`: leave it out"),
    ("honey 2 cups", "measure-of-no-country", "write grams or ml, or `measures US` or `measures metric` under the kitchen"),
    ("milk to taste", "by-feel-amount", "write an amount to start from, as in `milk 2 g, to taste`"),
    ("milk", "amount-missing", "write `milk 100 g`"),
    ("caraway dust", "neither-stage-nor-step", "an ingredient needs an amount: `caraway dust 100 g`"),
    ("devide", "neither-stage-nor-step", "did you mean `divide`?"),
    ("everything", "neither-stage-nor-step", "did you mean `everything else`?"),
    ("strong white flour 1,000 g", "decimal-comma", "write `1000 g`, or `1 g` if the comma is a decimal point"),
    ("oil 1,500 kg", "decimal-comma", "write `1500 kg`, or `1.5 kg` if the comma is a decimal point"),
]  # fmt: skip


def _reports(body: str) -> list[Diagnostic]:
    read = bakery_of(f"{HEAD}    {body}\n")
    return [report for report in read.diagnostics if report.place.line == 6]


@every(OFFERS, at_least=42)
def test_a_newcomer_is_told_what_to_type(body: str, name: str, offer: str) -> None:
    reports = _reports(body)
    assert [report.name for report in reports] == [name]
    assert reports[0].severity is Severity.ERROR
    assert offer in reports[0].help
    if reports[0].help.startswith("did you mean"):
        assert reports[0].help.endswith("?")


def _stage_of(verb: str) -> str:
    return next((stage.word for stage in STAGES if stage.verb == verb), "dough")


WITHOUT_A_FIX = {
    "bake at hot oven for 30 min": "how hot it is, is the baker's to say",
    "bake for the night at 230 C": "how long a night is, is the baker's to say",
    "brush egg wash": "how much goes on a piece is the baker's to say",
    "fold 4 times": "what it is folded into is the baker's to say",
    "divide into 10": "it is said in another line",
    "scale at 450 g": "it is said in another line",
    "divide at 450 g": "it is said in another line",
    "preheet oven": "it is left out, and a line is never taken away without a word",
    "honey 2 cups": "the country, or the weight, is the baker's to say",
    "milk to taste": "how much is the baker's to say",
    "milk": "how much is the baker's to say",
    "caraway dust": "how much is the baker's to say",
}
"""Lines of newcomers that no machine can put right by itself, and why."""


@every(OFFERS, at_least=42)
def test_a_newcomer_can_have_it_typed(body: str, name: str, offer: str) -> None:
    (report,) = _reports(body)
    assert bool(report.fixes) is (body not in WITHOUT_A_FIX), report.help
    text = f"{HEAD}    {body}\n"
    for fix in report.fixes:
        made = mend("test.bake", text, [fix])
        left = bakery_of(made.text).diagnostics
        assert made.done == (0,) and name not in {one.name for one in left if one.place.line == 6}, fix


def test_every_verb_has_an_example_that_can_be_typed() -> None:
    for verb in VERBS:
        assert bool(verb.example) is not verb.moves
        out = parse(SourceText("x", f"formula A\n  {_stage_of(verb.word)}\n    {verb.example}\n"))
        assert verb.moves or verb.example.startswith(verb.word), verb
        assert not out.diagnostics, (verb.example, out.diagnostics)


def test_one_report_for_an_odd_indentation() -> None:
    text = "formula A\n  dough\n    salt 2%\n   rest 5 min\n   rest 6 min\nformula B\n salt 2%\n"
    out = parse(SourceText("x", text))
    assert [(r.place.line, r.name, r.help) for r in out.diagnostics] == [
        (4, "odd-indentation", "each step deeper is two spaces: use 4 spaces"),
        (7, "odd-indentation", "each step deeper is two spaces: use 2 spaces"),
    ]


def test_spoilt_files_say_why_in_words_that_help() -> None:
    """Every message is lower case and has something to type; what is left unread, and what is not bound, has an error."""
    rng = random.Random(11)
    for path in FILES:
        rows = path.read_text(encoding="utf-8").split("\n")
        own = [at for at, row in enumerate(rows) if row.strip() and not row.lstrip().startswith("#")]
        for _ in range(at_length(3, 1)):
            spoilt = list(rows)
            for at in rng.sample(own, min(6, len(own))):
                spoilt[at] = _with_a_slip(spoilt[at], rng)
            source = SourceText("x.bake", "\n".join(spoilt))
            out = parse(source)
            errors = [r for r in out.diagnostics if r.severity is Severity.ERROR]
            assert errors or not any(any_unread(entry) for entry in out.value.entries), spoilt
            read = bakery.read((source,))
            for report in read.diagnostics:
                assert report.help or report.name in REMARKS, report
                first = report.message.split()[0]
                assert first == first.lower() or first.startswith("`") or first in source.text, report
            if len(read.formulas) < sum(row.startswith("formula ") for row in spoilt):
                assert any(r.severity is Severity.ERROR for r in read.diagnostics), spoilt


def _with_a_slip(row: str, rng: random.Random) -> str:
    words = row.split(" ")
    first = next(at for at, word in enumerate(words) if word)
    at = rng.randrange(first, len(words))
    way = rng.randrange(5)
    if way == 0 and len(words[at]) > 2:
        letter = rng.randrange(len(words[at]) - 1)
        words[at] = words[at][:letter] + words[at][letter + 1 :]
    elif way == 1 and at > first:
        del words[at]
    elif way == 2:
        words[at] = words[at].replace(" min", " minutes").rstrip("%")
    elif way == 3:
        words.insert(at + 1, rng.choice(("for", "12", "about", "with", "minutes", "at")))
    else:
        words[at] += rng.choice(("x", "1", ","))
    return " ".join(words)

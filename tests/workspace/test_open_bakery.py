"""A bakery held open answers, after any changes, what one opened afresh would; and reads again only what changed."""

from __future__ import annotations

import json
import pickle
from pathlib import Path

import pytest
from every import every
from hypothesis import given, settings, strategies as st
from loaves import HOUSE_POOLISH, LOAF_OF_HOUSE_POOLISH, PLAIN_LOAF, POOLISH_LOAF
from run_length import FEW_EXAMPLES, at_length
from workspace.folder_edits import EDITS, PATHS, Files, edited

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.figures.derived import figures_of
from manchet.figures.report import report_of
from manchet.workspace import bound_formula, passes
from manchet.workspace.changes import Changes
from manchet.workspace.folder import Premises
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw


def figures_said(bakery: OpenBakery) -> dict[str, str]:
    """Every figure of every formula, in words."""
    read = bakery.read()
    said = {}
    for formula in read.formulas:
        work = read.work(formula).value
        if work is not None:
            said[f"{formula.place.path}:{formula.place.line}"] = json.dumps(report_of(figures_of(work)))
    return said


def said_of(bakery: OpenBakery) -> tuple[object, ...]:
    reports: list[tuple[Diagnostic, ...]] = [bakery.reports(), *(bakery.reports([path]) for path in PATHS)]
    mistakes = [bakery.read([path]).mistakes for path in PATHS]
    return reports, mistakes, figures_said(bakery)


def opened(files: Files) -> OpenBakery:
    return OpenBakery(files=[Raw(path, data) for path, data in files.items()])


@settings(FEW_EXAMPLES, max_examples=at_length(120, 12))
@given(st.lists(EDITS, min_size=1, max_size=8))
def test_warm_is_cold_word_for_word(edits: list[tuple[str, ...]]) -> None:
    warm = opened({})
    files: Files = {}
    for edit in edits:
        before, files = files, edited(files, edit)
        for path in before.keys() - files.keys():
            warm.update(path, None)
        for path, data in files.items():
            if before.get(path) != data:
                warm.update(path, data)
        assert said_of(warm) == said_of(opened(files))


@settings(FEW_EXAMPLES, max_examples=at_length(40, 6))
@given(st.lists(EDITS, min_size=1, max_size=6))
def test_after_a_look_at_the_folder_too(tmp_path_factory: pytest.TempPathFactory, edits: list[tuple[str, ...]]) -> None:
    premises = Premises(str(tmp_path_factory.mktemp("bakery")), whole=True)
    warm = OpenBakery(premises)
    files: Files = {}
    for edit in edits:
        before, files = files, edited(files, edit)
        for path in before.keys() - files.keys():
            (Path(premises.root) / path).unlink()
        for path, data in files.items():
            place = Path(premises.root) / path
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(data)
        warm.refresh()
        assert said_of(warm) == said_of(OpenBakery(premises)) == said_of(opened(files))


ALL_DRAWN_ON = {
    "a.bake": PLAIN_LOAF.replace("white flour          100%", "Row flour            100%"),
    "b.bake": LOAF_OF_HOUSE_POOLISH.replace("    salt  ", "    Paste                  5%\n    salt  "),
    "kitchen.bake": "kitchen Row\n  air 22 C\n  flour 20 C\n",
    "larder.bake": "larder Row\n  Row flour\n    class wheat flour\n",
    "paste.bake": "preparation Paste\n  water 500 g\n  white flour 100 g\n  cook 5 min to 65 C\n  good for 2 d at 4 C\n",
    "poolish.bake": HOUSE_POOLISH,
}


@every(
    [
        ("kitchen.bake", "22 C", "31 C"),
        ("kitchen.bake", "  air", '  always allow steam-missing because "a wood oven"\n  air'),
        ("larder.bake", "wheat", "rye"),
        ("larder.bake", "Row flour", "Other flour"),
        ("paste.bake", "Paste", "Other paste"),
        ("poolish.bake", "water                100%", "water                 80%"),
        ("poolish.bake", "House poolish", "Other poolish"),
        ("poolish.bake", "poolish House", "# ours\npoolish House"),
        ("poolish.bake", "100%", "100 %%"),
        ("a.bake", "Plain loaf", "Poolish loaf"),
    ],
    at_least=10,
)
def test_each_thing_that_is_shared_is_followed(path: str, was: str, becomes: str) -> None:
    texts = {name: text.encode() for name, text in ALL_DRAWN_ON.items()}
    bakery = opened(texts)
    before = said_of(bakery)
    texts[path] = texts[path].replace(was.encode(), becomes.encode())
    bakery.update(path, texts[path])
    after = said_of(bakery)
    assert after == said_of(opened(texts)) and after != before
    bakery.update(path, ALL_DRAWN_ON[path].encode())
    assert said_of(bakery) == before


class Counted:
    """How often something was parsed or bound."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.parsed: list[str] = []
        self.bound: list[str] = []
        parse, bind = passes.parse, bound_formula.bind

        def parsing(source):  # type: ignore[no-untyped-def]
            self.parsed.append(source.path)
            return parse(source)

        def binding(block, offered):  # type: ignore[no-untyped-def]
            self.bound.append(block.node.name.text)
            return bind(block, offered)

        monkeypatch.setattr(passes, "parse", parsing)
        monkeypatch.setattr(bound_formula, "bind", binding)

    def since(self) -> tuple[list[str], list[str]]:
        seen = self.parsed, self.bound
        self.parsed, self.bound = [], []
        return seen


HOUSE = "kitchen Row\n  air 22 C\n"


def test_only_what_changed_is_read_again(monkeypatch: pytest.MonkeyPatch) -> None:
    counted = Counted(monkeypatch)
    bakery = opened(
        {
            "house.bake": HOUSE.encode(),
            "poolish.bake": HOUSE_POOLISH.encode(),
            "a.bake": PLAIN_LOAF.encode(),
            "b.bake": LOAF_OF_HOUSE_POOLISH.encode(),
        }
    )
    bakery.reports()
    assert counted.since() == (
        ["a.bake", "b.bake", "house.bake", "poolish.bake"],
        ["Plain loaf", "Poolish loaf"],
    )
    work = bakery.work("plain loaf").value
    bakery.update("a.bake", PLAIN_LOAF.encode())
    bakery.reports(["b.bake"])
    assert counted.since() == ([], []) and bakery.work("Plain loaf").value is work is not None
    bakery.update("b.bake", LOAF_OF_HOUSE_POOLISH.replace("68%", "69%").encode())
    bakery.reports()
    assert counted.since() == (["b.bake"], ["Poolish loaf"])
    bakery.update("poolish.bake", HOUSE_POOLISH.replace("3 min", "4 min").encode())
    bakery.reports()
    assert counted.since() == (["poolish.bake"], ["Poolish loaf"])
    bakery.update("house.bake", HOUSE.replace("22", "20").encode())
    bakery.reports()
    assert counted.since() == (["house.bake"], ["Plain loaf", "Poolish loaf"])
    assert bakery.work("Plain loaf").value is not work


def test_one_formula_is_read_without_the_others(monkeypatch: pytest.MonkeyPatch) -> None:
    counted = Counted(monkeypatch)
    bakery = opened({"a.bake": PLAIN_LOAF.encode(), "b.bake": POOLISH_LOAF.encode()})
    formula = bakery.formula("POOLISH  loaf")
    assert formula is not None and formula.name == "Poolish loaf"
    assert counted.since() == (["b.bake"], ["Poolish loaf"])
    assert bakery.formula("no loaf") is None and bakery.work("no loaf").value is None


def test_reading_does_not_check(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.checks import registry

    monkeypatch.setattr(registry, "check", lambda work: pytest.fail("this was to be read alone"))
    read = opened({"a.bake": PLAIN_LOAF.replace("2%", "22%").encode()}).read()
    assert read.mistakes == () and read.work(read.formulas[0]).value is not None


def test_what_an_editor_holds_comes_before_the_disk(tmp_path: Path) -> None:
    (tmp_path / "a.bake").write_text(PLAIN_LOAF)
    bakery = OpenBakery(Premises(str(tmp_path), whole=True))
    bakery.update("a.bake", POOLISH_LOAF.encode())
    bakery.update("b.bake", PLAIN_LOAF.encode())
    bakery.refresh()
    assert [formula.name for formula in bakery.read().formulas] == ["Poolish loaf", "Plain loaf"]
    bakery.update("a.bake", None)
    bakery.update("b.bake", None)
    assert [formula.name for formula in bakery.read().formulas] == ["Plain loaf"]


def test_what_was_asked_on_top_is_not_remembered_as_written() -> None:
    bakery = opened({"a.bake": POOLISH_LOAF.encode()})
    written = bakery.read().formulas
    swapped = bakery.read(changes=Changes(("instant yeast for fresh yeast",))).formulas
    assert [line.name for line in swapped[0].overall][-1] == "fresh yeast"
    assert bakery.read().formulas == written
    bakery.update("b.bake", b"")
    assert bakery.read().formulas == written


def test_in_another_process_it_has_the_same_files() -> None:
    bakery = opened({"a.bake": POOLISH_LOAF.encode(), "b.bake": PLAIN_LOAF.encode()})
    there = pickle.loads(pickle.dumps(bakery))
    assert said_of(there) == said_of(bakery)


GLAZE = "preparation glaze\n  eggs {} g\n  milk 100 g\n  whisk 2 min\n  good for 1 d at 4 C\n"


def test_a_work_knows_the_preparations_as_they_are_now() -> None:
    glazed = PLAIN_LOAF + "    brush with glaze 5 g each\n"
    warm = opened({"loaf.bake": glazed.encode(), "glaze.bake": GLAZE.format(500).encode()})
    name = warm.read().formulas[0].name

    def grams_of_egg() -> set[int]:
        work = warm.work(name).value
        assert work is not None
        return {int(p.share * 600) for p in work.preparations["glaze"].dough.portions if p.name == "eggs"}

    before = grams_of_egg()
    warm.update("glaze.bake", GLAZE.format(200).encode())
    assert grams_of_egg() != before
    warm.update("glaze.bake", b"")
    gone = warm.work(name).value
    assert gone is None or not gone.preparations

"""Odd words, dates, tables and files in the way: a calm sentence each, never a fault, a flood or a wait without end."""

from __future__ import annotations

import csv
import os
import signal
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path
from unicodedata import normalize

import pytest
from cli.transcripts import CommandRun, manchet, scene
from every import every
from loaves import PLAIN_LOAF

from manchet.cli import sizing

BUILD = ["build", "--only", "html,sheet,card,json", "--jobs", "1"]
LINE = 500
"""Characters of a message and its help at most, whatever was typed."""


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[None]:
    with scene(tmp_path, {}):
        Path("plain.bake").write_text(PLAIN_LOAF)
        yield


@pytest.fixture
def within_time() -> Iterator[None]:
    """Ends the test where it waits for what never comes."""

    def too_long(*_: object) -> None:
        raise AssertionError("it waits for ever")

    before = signal.signal(signal.SIGALRM, too_long)
    signal.alarm(60)
    yield
    signal.alarm(0)
    signal.signal(signal.SIGALRM, before)


def calm(ran: CommandRun, *status: int) -> str:
    assert ran.status in status, ran
    assert "Traceback" not in ran.out + ran.err and "fault" not in ran.err
    return ran.err


@pytest.mark.parametrize("option", ["--start", "--ready"])
def test_the_ends_of_the_calendar(option: str) -> None:
    for when in (
        "9999-12-31T23:00",
        "0001-01-01T00:00",
        "0001-01-01",
        "1699-01-01 05:00",
        "99999-01-01 05:00",
        "٢٠٢٦-١١-٢٨ ٠٥:٠٠",
    ):
        calm(manchet([*BUILD, option, when]), 0, 2)
    assert "there is no day 9999-12-31" in calm(manchet([*BUILD, option, "9999-12-31T23:00"]), 2)


@pytest.mark.parametrize("epoch", ["9" * 30, "253402300799", "x", "-1", "１"])
def test_a_held_clock_that_is_none(epoch: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    assert "SOURCE_DATE_EPOCH" in calm(manchet(BUILD), 2)


def test_a_cell_of_two_hundred_thousand_characters() -> None:
    for cell in ("x" * 200_000, '"' + "x\n" * 100_000 + '"'):
        Path("table.csv").write_text(f"name,amount\n{cell},500 g\nwater,300 g\n")
        said = calm(manchet(["new", "Rye", "--from", "table.csv"]), 1, 2)
        assert len(said) < LINE and "table.csv" in said


@every(
    [
        ["check", "{}"],
        ["check", "{}.bake"],
        ["check", "a/{}"],
        ["{}"],
        ["check", "--{}"],
        ["check", "--format", "{}"],
        ["check", "--kitchen", "{}"],
        ["check", "--swap", "{}"],
        ["check", "--jobs", "{}"],
        ["build", "--only", "{}"],
        ["build", "--out", "{}"],
        ["build", "--start", "{}"],
        ["build", "--pieces", "{}"],
        ["build", "--pieces", "3 {}"],
        ["build", "--piece-weight", "{}"],
        ["build", "--dough", "{}"],
        ["build", "--have", "{}"],
        ["figures", "{}"],
        ["figures", "Plain loaf", "--have", "{} 5 g"],
        ["trace", "Plain loaf", "{}"],
        ["explain", "{}"],
        ["completion", "{}"],
        ["new", "{}"],
        ["new", "Rye", "--from", "{}"],
        ["new", "Rye", "--output", "{}"],
        ["watch", "{}"],
    ],
    at_least=26,
)
def test_a_message_repeats_no_more_than_a_line_of_what_was_typed(words: list[str]) -> None:
    for typed in ("x" * 100_000, "9" * 100_000, "very long " * 10_000, "x\n" * 50_000):
        ran = manchet([word.replace("{}", typed) for word in words])
        said = calm(ran, 0, 1, 2)
        assert len(said) + len(ran.out) < 2 * LINE, (words, typed[:10], len(said), len(ran.out))


@every(
    [
        "{} 5 g",
        "salt {}",
        "mix {}",
        "{}",
        "salt 5% {}",
        'note "{}',
        "kind {}",
        'allow {} because "x"',
        "bake {} at 230 C",
    ],
    at_least=9,
)
def test_a_report_repeats_no_more_than_a_line_of_the_file(line: str) -> None:
    for typed in ("x" * 20_000, "9" * 20_000, "a b " * 5_000, "ж" * 20_000):
        for place in ("    mix slow", "  kind hearth loaf", "    salt  ", "  dough\n"):
            Path("plain.bake").write_text(PLAIN_LOAF.replace(place, f"    {line.replace('{}', typed)}\n{place}", 1))
            ran = manchet(["check", "--no-cache"])
            assert ran.status in (0, 1)
            assert "fault-of-manchet" not in ran.out
            longest = max(map(len, ran.out.split("\n")))
            assert longest < 2 * LINE, (line, typed[:5], longest)


def test_a_folder_is_shown_without_its_escapes() -> None:
    odd = "red\x1b[31m\u202e"
    os.mkdir(odd)
    (Path(odd) / "plain.bake").write_text(PLAIN_LOAF)
    for words in (
        ["check", odd],
        [*BUILD, odd, "--out", f"{odd}/out"],
        ["check", f"{odd}x"],
        ["figures", f"{odd}/plain.bake"],
    ):
        ran = manchet(words)
        assert not {"\x1b", "\u202e"} & set(ran.out + ran.err), words
    assert "red\\u001b[31m\\u202e/out/plain-loaf.sheet.html" in manchet(
        ["build", odd, "--only", "html,sheet", "--out", f"{odd}/other"]
    ).out.replace("other", "out")


def test_a_pipe_in_the_output_folder_is_replaced(within_time: None) -> None:
    os.mkdir("output")
    for name in ("plain-loaf.sheet.json", "plain-loaf.sheet.html", "plain-loaf.card.json"):
        os.mkfifo(f"output/{name}")
    calm(manchet(BUILD), 0)
    assert Path("output/plain-loaf.sheet.json").is_file() and Path("output/plain-loaf.sheet.html").is_file()


def test_a_device_or_a_pipe_in_the_place_of_the_cache_is_passed_over(within_time: None) -> None:
    manchet(["check"])
    (store,) = Path("../home/cache/manchet").glob("check-*")
    for make in (lambda: os.mkfifo(store), lambda: store.symlink_to("/dev/zero"), lambda: store.mkdir()):
        store.unlink()
        make()
        calm(manchet(["check"]), 0)
        if store.is_dir():
            break
    Path("../home/cache/manchet").rename("../home/cache/elsewhere")
    os.mkfifo("../home/cache/manchet")
    calm(manchet(["check"]), 0)


def test_signs_that_begin_a_spreadsheet_s_formula_are_made_harmless() -> None:
    for sign in "=+-@＝＋－＠":
        Path("plain.bake").write_text(
            PLAIN_LOAF.replace("salt   ", f'"{sign}salt"  ') + f'\nlarder Ours\n  "{sign}salt"\n    class salt\n'
        )
        ran = manchet(["figures", "plain.bake", "--format", "csv"])
        cells = [cell for row in csv.reader(ran.out.splitlines()) for cell in row]
        assert not [cell for cell in cells if normalize("NFKC", cell[:1]) in tuple("=+-@")], ran.out
        assert ran.status or any(cell.startswith("'") for cell in cells)


def test_a_build_of_all_names_the_sheets_of_no_formula() -> None:
    Path("rye.bake").write_text(PLAIN_LOAF.replace("Plain loaf", "Rye loaf"))
    assert "of no formula" not in calm(manchet(BUILD), 0)
    Path("rye.bake").unlink()
    Path("output/notes.txt").touch()
    Path("output/my.sheet.doc").touch()
    said = calm(manchet(BUILD), 0)
    assert "of no formula here any more: " in said and "rye-loaf.sheet.html" in said
    assert (
        "notes.txt" not in said
        and "my.sheet.doc" not in said
        and "plain-loaf" not in said.split("any more: ")[1].split("\n")[0]
    )
    assert "of no formula" not in calm(manchet([*BUILD, "Plain loaf"]), 0)


@every(
    [
        ("milk 500 g", ("milk", Fraction(500), False)),
        ("eggs 12 whole", ("eggs", Fraction(12), True)),
        ("wheat 550 20 kg", ("wheat 550", Fraction(20000), False)),
        ("rye 1150 1 1/2 kg", ("rye 1150", Fraction(1500), False)),
        ("wheat 550 12 whole", ("wheat 550", Fraction(12), True)),
    ],
    at_least=5,
)
def test_what_there_is_of_a_name_with_a_figure(said: str, means: tuple[str, Fraction, bool]) -> None:
    assert sizing.have(said) == means


@pytest.mark.parametrize("form", ["handout", "class", "card"])
def test_an_amount_of_loads_without_end_is_counted_and_not_laid_out(form: str, within_time: None) -> None:
    Path("kitchen.bake").write_text("kitchen Row\n  oven deck\n    holds 20 loaves\n")
    said = calm(manchet(["build", "Plain loaf", "--jobs", "1", "--only", f"html,{form}", "--dough", "900000 kg"]), 0, 1)
    assert said.count("[past-a-day]") == 1, said
    assert not list(Path("output").glob(f"plain-loaf.{form}.*"))


def test_a_card_that_is_left_out_is_told_where_its_report_is_allowed() -> None:
    Path("kitchen.bake").write_text("kitchen Row\n  oven deck\n    holds 1 loaf\n")
    text = PLAIN_LOAF.replace("\n", '\n  allow past-a-day because "we bake for two days"\n', 1)
    Path("plain.bake").write_text(text.replace("makes 10 loaves", "makes 100 loaves"))
    said = calm(manchet(BUILD), 0)
    assert "[past-a-day]" not in said
    assert "Plain loaf: no timing card was made: 100 loads of 1 loaf in deck take" in said
    assert Path("output/plain-loaf.sheet.html").exists() and not Path("output/plain-loaf.card.html").exists()

"""A check that remembers says what one that does not says, over any changes of a folder."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from hypothesis import given, settings, strategies as st
from loaves import PLAIN_LOAF
from run_length import FEW_EXAMPLES, at_length
from workspace.folder_edits import EDITS, PATHS, Files, edited

from manchet.workspace.checking import check_selection
from manchet.workspace.selection import selections
from manchet.workspace.trouble import Unknown


def write(root: Path, files: Files) -> None:
    for path in PATHS:
        place = root / path
        place.parent.mkdir(parents=True, exist_ok=True)
        if path in files:
            place.write_bytes(files[path])
        else:
            place.unlink(missing_ok=True)


def said_here(words: list[str], use_cache: bool) -> object:
    try:
        return [check_selection(one, use_cache=use_cache) for one in selections(words)]
    except Unknown as unknown:
        return unknown.message


@settings(FEW_EXAMPLES, max_examples=at_length(80, 10))
@given(st.lists(EDITS, min_size=1, max_size=8))
def test_remembered_is_said_as_at_first(tmp_path_factory: pytest.TempPathFactory, edits: list[tuple[str, ...]]) -> None:
    root = tmp_path_factory.mktemp("bakery")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("XDG_CACHE_HOME", str(tmp_path_factory.mktemp("cache")))
        patch.delenv("MANCHET_CACHE", raising=False)
        patch.chdir(root)
        files: Files = {}
        for edit in edits:
            files = edited(files, edit)
            write(root, files)
            for words in ([], ["breads"], ["z.bake"], ["plain loaf"]):
                assert said_here(words, use_cache=True) == said_here(words, use_cache=False)


@pytest.mark.parametrize("second", ['formula "plain  LOAF" # ours', "formula\u00a0Plain loaf", "formla Plain loaf"])
def test_two_spellings_of_one_name_are_one(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, second: str) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    monkeypatch.delenv("MANCHET_CACHE", raising=False)
    monkeypatch.chdir(tmp_path)
    Path("a.bake").write_text(PLAIN_LOAF, encoding="utf-8")
    Path("b.bake").write_text(PLAIN_LOAF.replace("Plain loaf", "Other loaf"), encoding="utf-8")
    (selection,) = selections([])
    assert "two-blocks-one-name" not in {report.name for report in check_selection(selection).diagnostics}
    Path("b.bake").write_text(PLAIN_LOAF.replace("formula Plain loaf", second), encoding="utf-8")
    (selection,) = selections([])
    found = [report for report in check_selection(selection).diagnostics if report.name == "two-blocks-one-name"]
    assert [(report.place.path, report.related[0].place.path) for report in found] == [("b.bake", "a.bake")]
    assert os.listdir(tmp_path / "cache" / "manchet")


def test_two_names_are_two_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.workspace.print_jobs import jobs_of

    monkeypatch.chdir(tmp_path)
    Path("a.bake").write_text('formula "Rye #1"\n\nformula "Rye #2"\n\nformula\u00a0Oat\n', encoding="utf-8")
    (selection,) = selections([])
    assert [(job.block.name, job.slug) for job in jobs_of(selection)] == [
        ("Rye #1", "rye-1-8fc5bd"), ("Rye #2", "rye-2-1a3cdf"), ("Oat", "oat"),
    ]  # fmt: skip
    (selection,) = selections(["rye #2"])
    assert [job.slug for job in jobs_of(selection)] == ["rye-2-1a3cdf"]

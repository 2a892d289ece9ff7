"""While a check runs nobody looks for garbage; afterwards it is as it was before."""

from __future__ import annotations

import gc
from pathlib import Path

import pytest
from loaves import PLAIN_LOAF

from manchet.cli.main import command
from manchet.workspace import checking


@pytest.mark.parametrize("on", [True, False])
def test_a_check_does_not_collect(on: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "a.bake").write_text(PLAIN_LOAF)
    monkeypatch.chdir(tmp_path)
    seen = []
    look = checking.look

    def looking(*given: object) -> object:
        seen.append(gc.isenabled())
        return look(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(checking, "look", looking)
    was = gc.isenabled()
    try:
        gc.enable() if on else gc.disable()
        command(["check", "--no-cache"])
        assert seen == [False] and gc.isenabled() is on
        with pytest.raises(ZeroDivisionError), checking.without_collecting():
            1 / 0  # noqa: B018
        assert gc.isenabled() is on
    finally:
        gc.enable() if was else gc.disable()

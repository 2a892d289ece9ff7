"""Every generated file is what its sources make now."""

from __future__ import annotations

import pytest

from manchet.generate import Generated, all_generated


@pytest.mark.parametrize("one", all_generated(), ids=lambda one: one.file.name)
def test_a_generated_file_is_fresh(one: Generated) -> None:
    assert one.file.read_text(encoding="utf-8") == one.text(), "run `python -m manchet.generate`"

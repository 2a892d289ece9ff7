"""Every generated file is what its source makes now."""

from __future__ import annotations

import pytest

from manchet.generate import Generated, all_generated


@pytest.mark.parametrize("one", all_generated(), ids=lambda one: one.file.name)
def test_a_generated_file_is_fresh(one: Generated) -> None:
    made = one.text(one.source.read_text(encoding="utf-8"))
    assert one.file.read_text(encoding="utf-8") == made, "run `python -m manchet.generate`"

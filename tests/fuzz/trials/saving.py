from __future__ import annotations

import random

from fuzz.asked import any_looks, print_options
from fuzz.read import bytes_of
from fuzz.texts import any_text, with_slips

from manchet.workspace.file_versions import Version
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.press import Press
from manchet.workspace.raw_files import Raw
from manchet.workspace.rendering import render_formula

PATHS = ("a.bake", "breads/b.bake", "breads/sweet/c.bake", "house.bake")


def saving(text: str, rng: random.Random) -> None:
    """After any sequence of saves, slips and removals a bakery held open says and prints what one opened afresh does."""
    warm, files = OpenBakery(files=[]), {PATHS[0]: text}
    options = print_options(any_looks(rng))
    assert options is not None
    warm.update(PATHS[0], bytes_of(text))
    for _ in range(rng.randint(1, 4)):
        path = rng.choice(PATHS)
        before = files.get(path)
        how = rng.random()
        if before is not None and how < 0.2:
            del files[path]
            warm.update(path, None)
        else:
            files[path] = with_slips(before, rng) if before is not None and how < 0.6 else any_text(rng)
            warm.update(path, bytes_of(files[path]))
        cold = OpenBakery(files=[Raw(path, bytes_of(said)) for path, said in files.items()])
        assert warm.reports() == cold.reports(), "a bakery held open says something else"
        asked = rng.choice(PATHS)
        assert warm.reports([asked]) == cold.reports([asked]), f"of {asked} a bakery held open says something else"
        for here, there in zip(warm.read().formulas[:2], cold.read().formulas[:2], strict=True):
            pages = [
                render_formula(one.read(), formula, options, Version("x.bake", "0"), Press()).files
                for one, formula in ((warm, here), (cold, there))
            ]
            assert pages[0] == pages[1], f"a bakery held open prints another {here.name}"

"""Bakeries for tests of the editor: written into a folder, and opened in memory."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from loaves import PLAIN_LOAF, POOLISH_LOAF

from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw

LOAF = PLAIN_LOAF.replace(
    "    bake 40 min at 230 C\n", "    bake 20 min at 230 C, steam\n    bake 20 min at 230 C, vent open\n"
)
"""Without a report in a kitchen."""

LARDER = """\
larder Test
  white flour
    class         wheat flour
    also called   strong flour
    allergens     wheat, gluten
    source        "the sack"

  strong bran
    class         grain

  ripe pot
    class         culture
    made of
      white flour        100%
      water              100%
"""

KITCHEN = """\
kitchen Test
  air 22 C
  oven deck
    hottest 280 C
  fridge walk in
    keeps 4 C
  tin long tin
    volume 1900 ml
"""

SHARED = """\
levain house sour
  white flour          100%
  water                100%
  ripe pot              20%
  mix by hand 4 min to 26 C
  ripen covered 8-10 h at 24 C
"""

HOUSE: Mapping[str, str] = {
    "larder.bake": LARDER,
    "kitchen.bake": KITCHEN,
    "sours.bake": SHARED,
    "breads/plain.bake": LOAF,
    "breads/poolish.bake": POOLISH_LOAF,
}


def write_house(folder: Path, files: Mapping[str, str] = HOUSE) -> Path:
    for path, text in files.items():
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_bytes(text.encode())
    return folder


def house(files: Mapping[str, str] = HOUSE) -> OpenBakery:
    return OpenBakery(files=[Raw(path, text.encode()) for path, text in files.items()])

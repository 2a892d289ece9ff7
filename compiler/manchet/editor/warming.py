"""A few lines in haste, looked over before anybody waits: what finds out what was meant is loaded with the first mistake, and
that would hold up a stroke."""

from __future__ import annotations

from manchet.editor.reports import reports_on
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw

IN_HASTE = b"""\
formula Haste
  kind hearth loaf
  makes 10 lofes at 900g dough
  overal
    whit flower 100%
    water 70 %
    fresh yeast 1.5%
  dough
    everything else
    mixx slow 8 min
    ferment covered 2 hours @ 25 C
    re
    prove
    bake 40 min at 230 degrees
      @@
formula Second
  makes 10 loaves at 900 g dough
  dough
    wheat flour 1 kg
    salty 20 g
    mix slow 8 min
    add everything
larder Haste
  thing
    class         whet flour
    alergens      none
kitchen Haste
  ovn deck
"""


def warm_up() -> None:
    """Loads what a sound file has no need of."""
    bakery = OpenBakery(files=[Raw("haste.bake", IN_HASTE)])
    reports_on(bakery, "haste.bake")
    for line in (b"    wat", b"    water 7", b"  mak"):
        bakery.update("haste.bake", IN_HASTE.split(b"larder")[0] + line)
        reports_on(bakery, "haste.bake")

"""A picture as a file names it. Apart from the model so that both stay small."""

from manchet.diagnostics.diagnostic import Place
from manchet.records import NamedTuple


class Picture(NamedTuple):
    """`picture "cut.svg"`: the path as written, from the folder of the file that `place` stands in."""

    path: str
    place: Place

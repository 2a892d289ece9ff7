"""Which layout is printed: the fewest sides, then the earliest; fillers where they are free; no more laying out than it takes."""

from __future__ import annotations

from every import every

from manchet.sheets.page.layouts import LaidOut, PageLayout, fewest_sides

LAYOUTS = (PageLayout("turned", sides=2), PageLayout("run"), PageLayout("tight", 80))
FILLER = 0.1


def chosen(height: float, turned: int, filled: bool) -> tuple[str, list[str]]:
    """What is printed of a work of that height in sides, which takes `turned` sides where it is turned; what was laid out."""
    asked = []

    def lay_out(classes: str) -> LaidOut:
        asked.append(classes)
        layout, more = classes.split()[0], FILLER if filled and "filled" in classes else 0.0
        high = height * (0.8 if layout == "tight" else 1) + more
        return LaidOut(classes, max(-int(-high // 1), turned if layout == "turned" else 1), high, more)

    return fewest_sides(LAYOUTS, lay_out).classes, asked


@every(
    [
        # height, sides where turned, with fillers: what is printed, how often it was laid out
        (0.7, 2, False, "run filled", 2),
        (1.5, 2, False, "turned filled", 1),
        (1.1, 2, False, "tight filled", 2),
        (1.9, 3, False, "run filled", 2),
        (2.3, 3, False, "tight filled", 2),
        (1.5, 2, True, "turned filled", 1),
        (1.95, 2, True, "turned", 2),
        (0.95, 2, True, "run", 3),
    ],
    at_least=8,
)
def test_the_fewest_sides_then_the_earliest(height: float, turned: int, filled: bool, classes: str, times: int) -> None:
    printed, asked = chosen(height, turned, filled)
    assert printed == classes
    assert len(asked) == times, asked

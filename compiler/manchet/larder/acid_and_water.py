"""Whether a food needs time and temperature against germs, by how sour it is and how much of its water they can use.

US Food Code, 1-201.10(B), "time/temperature control for safety food": table A for what was heated and then packaged, table B for what was not heated, or
was heated and not packaged (read in Tennessee 0080-04-09-.01 and 25 TAC 228.2). What is not known is the worse. Bread by itself is by custom no such
food, and is not asked about here.
"""

from __future__ import annotations

from fractions import Fraction

_A = ((Fraction("0.92"), None), (Fraction("0.95"), Fraction("5.6")), (Fraction(1), Fraction("4.6")))
"""Up to so much water activity, up to this pH; None for any pH."""
_B = ((Fraction("0.90"), Fraction("5.0")), (Fraction("0.92"), Fraction("4.6")))
_B_ANY_BELOW = Fraction("0.88")
_B_WET_BELOW = Fraction("4.2")


def keeps_without_cold(ph: Fraction | None, water_activity: Fraction | None, heated_and_packed: bool = False) -> bool:
    """True where a table says that it is no such food; else it is one, or nobody knows: it has to be assessed, and is kept cold."""
    activity = Fraction(1) if water_activity is None else water_activity
    if heated_and_packed:
        return any(activity <= most and (sour is None or (ph is not None and ph <= sour)) for most, sour in _A)
    if activity < _B_ANY_BELOW:
        return True
    if ph is None:
        return False
    return ph < _B_WET_BELOW or any(activity <= most and ph <= sour for most, sour in _B)

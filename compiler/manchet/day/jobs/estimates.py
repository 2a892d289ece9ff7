"""What a day counts with where neither file nor kitchen says it: Manchet's own estimates, marked as such wherever they count.

They are common practice of small bakehouses and have no source. How long the work of a formula takes is in
`timing.jobs.usual_times`.
"""

from __future__ import annotations

from fractions import Fraction

LIGHT = 600
"""Seconds to lay and light a fire."""
SWITCH_ON = 60
FOLD = 60
AT_THE_OVEN = 60
"""Seconds to open a damper, to turn the bread, to set another heat."""
STANDS = 30 * 60
"""Seconds that a dough may stand between two works of the hand with no wait between them."""
KEEPS = 4 * 3600
"""Seconds that a stage which ends in work of the hand may stand before it is used, where nothing says how long it is good."""
STRETCH, STRETCH_PART = 5 * 60, Fraction(1, 10)
"""A wait of one figure may be longer by so many seconds, or by so much of itself, whichever is more."""
FOLD_EARLY, FOLD_LATE = 5 * 60, 10 * 60
"""Seconds by which a fold inside a wait may be early, and late."""
AT_THE_OVEN_LATE = 3 * 60
"""Seconds by which a damper may be opened late, a bread turned late."""
IN_THE_BOWL = 90 * 60
"""Seconds that a dough may stay in the mixer's bowl between two mixes; for longer waits it is tipped out."""

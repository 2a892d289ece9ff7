"""Why a day can't be planned, or not on time: what clashes, and what would help. `find.py` is the way in."""

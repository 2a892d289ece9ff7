"""How hard the properties are tried: no deadline on a shared machine, and in CI the same cases every time."""

import os

from hypothesis import settings

settings.register_profile("bench", deadline=None, max_examples=100)
settings.register_profile("ci", deadline=None, max_examples=150, derandomize=True, print_blob=True)
settings.load_profile("ci" if os.environ.get("CI") else "bench")

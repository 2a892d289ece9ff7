"""Words before an ingredient's name that only describe it: `softened butter` is butter, to the larder and to the balance."""

from __future__ import annotations

DESCRIBING = (
    "softened", "melted", "cold", "chilled", "warm", "warmed", "lukewarm", "tepid", "organic", "strong", "sifted", "sieved",
    "beaten", "lightly beaten", "whisked", "chopped", "coarsely chopped", "roughly chopped", "finely chopped", "diced", "cubed",
    "toasted", "active", "bubbly",
)  # fmt: skip
"""What is said of an ingredient and leaves it what it is: its water, its salt, its allergens."""

_WORDS = frozenset(word for words in DESCRIBING for word in words.split()) | {"and"}


def without_description(name: str) -> str:
    """The name without what only describes it; "" where nothing does, or nothing else is left."""
    words = name.split()
    at = 0
    while at < len(words) and words[at].lower().rstrip(",") in _WORDS:
        at += 1
    return " ".join(words[at:]) if at else ""

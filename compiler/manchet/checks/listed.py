"""What the index says of a check, so that it need not be loaded to be passed over."""

from manchet.records import NamedTuple


class Listed(NamedTuple):
    """A row of the index: the check of `salt-low` stands in `TOPIC/salt_low.py`, and says the rest itself."""

    topic: str
    about: tuple[str, ...]
    """What the formula must have one of, in the words of `traits`; nothing: every formula is looked at."""
    of_size: bool
    """Whether it is about what the amount asks of the house; then it is made again for another amount than the file's."""
    explains: tuple[str, ...] = ()
    """Reports that its mistake brings with it: where it is made, they are not."""

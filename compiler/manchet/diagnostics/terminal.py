"""Text from a file made fit for a terminal: nothing in it can move the cursor, colour the screen or hide.

Everything a baker typed is shown through `show`. Control, format, surrogate and private-use characters and
line or paragraph separators become visible escapes (`\\u001b`), so that what is read is what is there.
"""

from __future__ import annotations


def show(text: str) -> str:
    """`text` with every character that is not plainly visible written as an escape."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(map(show_plainly, text))


LONGEST = 400
"""Characters of a sentence at most."""


def in_brief(text: str) -> str:
    """A sentence that is told: where it quotes more than fits, the middle is left out."""
    return text if len(text) <= LONGEST else f"{text[: LONGEST // 2]} … {text[-LONGEST // 4 :]}"


def show_plainly(character: str) -> str:
    """One character as it is shown: itself, or its escape (`\\u` and four figures, `\\U` and eight)."""
    # isprintable is false for the categories Cc, Cf, Cs, Co, Cn, Zl, Zp and for every space but the plain one.
    if character.isprintable() or character == "\u00a0":
        return character
    number = ord(character)
    return f"\\u{number:04x}" if number < 0x10000 else f"\\U{number:08x}"


def width(text: str) -> int:
    """How many columns a terminal gives `text` (already shown): wide characters take two, marks none."""
    if text.isascii():
        return len(text)
    from unicodedata import category, east_asian_width

    columns = 0
    for character in text:
        if category(character) in ("Mn", "Me"):
            continue
        columns += 2 if east_asian_width(character) in "WF" else 1
    return columns

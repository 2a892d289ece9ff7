"""Pictures as programs save them and as disks spoil them: drawings with odd figures, photographs cut short, files that are none."""

from __future__ import annotations

import random

from sheets.test_own_pictures import JPEG, PNG, SVG

from manchet.workspace.picture_file import DRAWN, SAID

SHAPES = sorted(DRAWN)
SAYS = sorted(SAID)
VALUES = (
    "", "0", "-1", "1e999", "nan", "9" * 40, "a", "50%", "12px", "1 2 3 4", "0 0 9 9", "0 0 0 0", "0,0,-9,9", "M1 1L8 8z", "M", "M1",
    "m 1 1 a 0 0 0 0 0 1 1", "M1 1 C 1 1", "M0 0 A 1e308 1 0 0 1 2 2", "1,2 3", "1,2 3,4", "rotate(45)", "scale(0)", "matrix(1 2 3)",
    "matrix(0 0 0 0 0 0)", "skewX(90)", "none", "#000", "#zz", "currentColor", "rgb(1,2)", "evenodd", "xMidYMid slice", "bold", "١",
    "url(#a)", "http://x", "\N{SNOWMAN}",
)  # fmt: skip


def any_picture(rng: random.Random) -> bytes:
    return rng.choice((_drawing, _drawing, _spoilt, _cut))(rng)


def _drawing(rng: random.Random) -> bytes:
    """An SVG of shapes inside one another, each with a few attributes that may not go together."""

    def shape(name: str, deep: int) -> str:
        said = {rng.choice(SAYS): rng.choice(VALUES) for _ in range(rng.choice((0, 1, 2, 4)))}
        inside = "".join(shape(rng.choice(SHAPES), deep + 1) for _ in range(rng.choice((0, 1, 3)) if deep < 4 else 0))
        words = rng.choice(("", "", "cut", "\N{SNOWMAN}", "&amp;"))
        space = ' xmlns="http://www.w3.org/2000/svg"' if deep == 0 else ""
        if deep == 0 and rng.random() < 0.8:
            said.setdefault("viewBox", "0 0 9 9")
        return (
            f"<{name}{space}"
            + "".join(f' {key}="{value}"' for key, value in said.items())
            + f">{words}{inside}</{name}>"
        )

    return shape("svg", 0).encode()


def _spoilt(rng: random.Random) -> bytes:
    data = bytearray(rng.choice((SVG, PNG, JPEG)))
    for _ in range(rng.randint(1, 4)):
        data[rng.randrange(len(data))] = rng.randrange(256)
    return bytes(data)


def _cut(rng: random.Random) -> bytes:
    data = rng.choice((SVG, PNG, JPEG))
    return data[: rng.randrange(len(data) + 1)] + bytes(rng.choice((0, 0, 3, 300)))

"""The ```bake examples of a page, and the whole files that pieces of them stand in."""

from __future__ import annotations

import re
from pathlib import Path
from typing import NamedTuple

_FENCE = re.compile(
    r"^```bake(?: +(?P<kind>[a-z ]+))?\n(?P<text>.*?)^```\n(?:\n```text\n(?P<shown>.*?)^```$)?", re.M | re.S
)
_STAGE = re.compile(
    r"^(?P<word>poolish|biga|sponge|preferment|old dough|levain|sour|soaker|scald|stage)\b(?P<rest>.*)$"
)

OVERALL = """\
  overall
    white flour           60%
    medium rye flour      20%
    whole rye flour       20%
    water                 76%
    sunflower seeds        8%
    butter                 5%
    salt                   2%
    instant yeast          0.5%
"""
LATER = """\
    mix slow 8 min to 25 C
    ferment covered 60 min at 25 C
    divide
    shape round
    prove 60 min at 26 C
    bake 15 min at 250 C, steam
    bake 25 min at 225 C to 97 C core, vent open
    cool 2 h
"""


def _bread(name: str, *nouns: str) -> str:
    """A bread that makes these."""
    makes = "".join(f"  makes 10 {noun} at 420 g dough\n" for noun in nouns)
    before, after = LATER.split("    divide\n")
    ways = "".join(f"    for the {noun}\n{_deeper(after, 2)}" for noun in nouns) if len(nouns) > 1 else after
    return f"formula {name}\n{makes}\n{OVERALL}\n  dough\n    everything else\n{before}    divide\n{ways}\n"


def _deeper(text: str, by: int) -> str:
    return "".join(f"{' ' * by}{line}\n" if line else "\n" for line in text.splitlines())


BAKED = (
    "".join(_bread(name, "loaves") for name in ("Ebb rye", "Pilot rye", "Mudlark"))
    + _bread("Regatta plait", "plaits", "buns")
    + "preparation Egg wash\n  good for 2 d at 4 C\n\n  egg                    100%\n  milk                    20%\n  whisk 2 min\n"
)
"""What a plan on the page may want."""


class Example(NamedTuple):
    """`kind` is what follows ```bake: "" for a whole file, "wrong" for one that shows a mistake, else where it stands.

    `shown` is the ```text block right after it: what the command prints.
    """

    line: int
    kind: str
    text: str
    shown: str


def examples_of(page: Path) -> list[Example]:
    text = page.read_text(encoding="utf-8")
    return [
        Example(text.count("\n", 0, m.start()) + 2, m["kind"] or "", m["text"], m["shown"] or "")
        for m in _FENCE.finditer(text)
    ]


def whole(example: Example) -> str:
    """The example as a file of its own."""
    match example.kind:
        case "" | "wrong":
            return example.text
        case "in head":
            return f"formula Example\n{_deeper(example.text, 2)}\n{OVERALL}\n  dough\n    everything else\n{_rest(example)}"
        case "in formula":
            used = "".join(f"    {name}\n" for name in _used(example.text))
            return f"{_HEAD}{OVERALL}\n{_deeper(example.text, 2)}\n  dough\n{used}    everything else\n{LATER}"
        case "in dough":
            return f"{_HEAD}{OVERALL}\n  dough\n    everything else\n{_deeper(example.text, 4)}"
        case "in weights":
            return (
                f"{_HEAD.replace('10 loaves', '2 loaves')}  dough\n    white flour         1000 g\n    water                720 g\n"
                f"    salt                  20 g\n    instant yeast          5 g\n{_deeper(example.text, 4)}{LATER}"
            )
        case "in bakery":
            return f"{example.text}\n{BAKED}"
        case other:
            raise ValueError(f"line {example.line}: an example of no known kind: bake {other}")


_HEAD = "formula Example\n  kind hearth loaf\n  makes 10 loaves at 900 g dough\n\n"


def _rest(example: Example) -> str:
    """The dough's steps; a head that makes two breads sends each its own way."""
    nouns = re.findall(r"^makes \d+ (\w+)", example.text, re.M)
    if len(nouns) < 2:
        return LATER
    before, after = LATER.split("    divide\n")
    branches = "".join(f"    for the {noun}\n{_deeper(after, 2)}" for noun in nouns)
    return f"{before}    divide\n{branches}"


def _used(text: str) -> list[str]:
    """The names of the stages in a piece that no other stage of it uses."""
    names = []
    for line in text.splitlines():
        if heading := _STAGE.match(line):
            name = heading["rest"].split(" with ")[0].strip()
            names.append(name or heading["word"])
    inside = {line.strip() for line in text.splitlines() if line.startswith(" ")}
    return [name for name in names if name not in inside]

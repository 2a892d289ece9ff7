"""Bakeries that grow in one thing, to see that the time grows no faster.

    python tests/benchmarks/growing.py FAMILY 1000 FOLDER

A `Family` makes the files of a bakery for any size; `smallest` is the size from which on the thing itself, and not the start
of the command, is what takes the time.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path
from typing import NamedTuple

Files = dict[str, str]
"""Name of a file -> its text."""


class Family(NamedTuple):
    """`words` are those of the command that it is tried with, at sizes from `smallest` to `largest`."""

    files: Callable[[int], Files]
    words: tuple[str, ...]
    smallest: int
    largest: int = 1_000_000
    """What is more is refused, or more than a file may hold."""


CHECK = ("check",)
BUILD = ("build", "--only", "html,sheet,card")

HEAD = ("kind hearth loaf",)
OVERALL = ("white flour 100%", "water 70%", "salt 2%", "instant yeast 0.4%")
MIXED = ("mix slow 8 min to 25 C", "ferment covered 2 h at 25 C")
BAKED = ("divide", "shape round", "prove covered 1 h at 27 C", "bake 40 min at 230 C, steam", "cool 2 h")

OVEN = ("oven stone", "  holds 20 loaves", "  recovers 4 min")
MIXER = ("mixer spiral", "  takes 2-20 kg dough", "  slow 110 turns a minute", "  fast 210 turns a minute")


def under(indent: int, lines: Iterable[str]) -> str:
    return "".join(f"{' ' * indent}{line}\n" for line in lines)


def bread(
    name: str = "Plain loaf",
    pieces: int = 10,
    head: Sequence[str] = (),
    overall: Iterable[str] = OVERALL,
    stages: str = "",
    uses: Iterable[str] = (),
    mixed: Iterable[str] = MIXED,
    baked: Iterable[str] = BAKED,
) -> str:
    """A plain bread, of which a part may be many."""
    head = (*HEAD, *(head or (f"makes {pieces} loaves at 900 g dough",)))
    return (
        f"formula {name}\n{under(2, head)}\n  overall\n{under(4, overall)}\n{stages}"
        f"  dough\n{under(4, (*uses, 'everything else', *mixed, *baked))}"
    )


def kitchen(*lines: str) -> str:
    return f"kitchen Bakehouse\n{under(2, lines)}"


def loads(number: int) -> Files:
    """So many loads of twenty; the dough is mixed at once."""
    return {"bread.bake": bread(pieces=20 * number), "kitchen.bake": kitchen(*OVEN)}


def mixes(number: int) -> Files:
    """So many bowls of twenty kilograms."""
    return {"bread.bake": bread(pieces=22 * number), "kitchen.bake": kitchen(*MIXER)}


def mixes_and_loads(number: int) -> Files:
    """As many bowls as loads, near enough: each load waits for pieces of one mix or two."""
    return {"bread.bake": bread(pieces=20 * number), "kitchen.bake": kitchen(*MIXER, *OVEN)}


def folds(number: int) -> Files:
    """So many folds in one wait."""
    mixed = (MIXED[0], f"ferment covered {number + 1} min at 25 C with {number} folds every 1 min")
    return {"bread.bake": bread(mixed=mixed)}


def stage_chain(number: int) -> Files:
    """So many stages, each made with the one before."""
    stages = ""
    for one in range(number):
        before = [f"build {one - 1}"] if one else []
        lines = (
            *before,
            "white flour 100%",
            "water 100%",
            "instant yeast 0.1%",
            "mix by hand 3 min",
            "ripen 1 h at 25 C",
        )
        stages += f"  poolish build {one} with {_share(number)}% of all flour\n{under(4, lines)}\n"
    return {"bread.bake": bread(stages=stages, uses=(f"build {number - 1}",))}


def stages_abreast(number: int) -> Files:
    """So many stages, all of them for the dough."""
    stages = ""
    for one in range(number):
        lines = ("white flour 100%", "water 100%", "instant yeast 0.1%", "mix by hand 3 min", "ripen 9 h at 20 C")
        stages += f"  poolish part {one} with {_share(number)}% of all flour\n{under(4, lines)}\n"
    return {"bread.bake": bread(stages=stages, uses=[f"part {one}" for one in range(number)])}


def _share(number: int) -> str:
    """Half of all flour, shared by so many stages."""
    return f"50/{number}"


def variants(number: int) -> Files:
    """So many variants of one formula."""
    changes = (f"variant number {one}\n    overall\n      water {60 + one % 20}%\n" for one in range(number))
    return {"bread.bake": bread() + "\n" + under(2, changes)}


def unknown_names(number: int) -> Files:
    """So many ingredients that no larder knows, all to be compared with those that one does."""
    return {"bread.bake": bread(overall=(*OVERALL, *(f"wite flouer {_letters(one)} 1%" for one in range(number))))}


def ingredients(number: int) -> Files:
    """So many ingredients of the house in one dough, as much of each however many they are."""
    larder = "".join(
        f"  {_letters(one)} seeds\n    class seed\n    no allergens\n    per 100 g\n      water 5 g\n"
        for one in range(number)
    )
    lines = (f"{_letters(one)} seeds {_tenth(number)}%" for one in range(number))
    return {"bread.bake": bread(pieces=number, overall=(*OVERALL, *lines)), "larder.bake": f"larder House\n{larder}"}


def _tenth(number: int) -> str:
    return f"10/{number}"


def steps(number: int) -> Files:
    """A dough with so many steps before it is divided."""
    between = ("rest covered 10 min", "fold") * (number // 2)
    return {"bread.bake": bread(mixed=(MIXED[0], *between, MIXED[1]))}


def formulas(number: int) -> Files:
    """So many formulas, each in a file."""
    return {f"bread-{one}.bake": bread(f"Loaf {_letters(one)}") for one in range(number)}


def formulas_of_one_file(number: int) -> Files:
    return {"bread.bake": "\n".join(bread(f"Loaf {_letters(one)}") for one in range(number))}


def reports(number: int) -> Files:
    """One file with so many lines that something is said of: each starter is told once more."""
    baked = (*BAKED[:-1], *("bake 40 min at 480 C",) * number, BAKED[-1])
    return {"bread.bake": bread(baked=baked)}


def unread_lines(number: int) -> Files:
    """So many lines that are no lines of the language."""
    return {"bread.bake": bread(mixed=(*(f"knaed the dogh {one}" for one in range(number)), *MIXED))}


def empty_headings(number: int) -> Files:
    """So many formulas of which there is nothing but the name."""
    return {"bread.bake": "".join(f"formula {_letters(one)}\n" for one in range(number))}


def one_name(number: int) -> Files:
    """So many formulas of one name."""
    return {"bread.bake": "\n".join(bread() for _ in range(number))}


def branches(number: int) -> Files:
    """So many breads of one dough."""
    makes = [f"makes 10 {_letters(one)} loaves at 100 g dough" for one in range(number)]
    baked = ["divide"]
    for one in range(number):
        baked += [f"for the {_letters(one)} loaves", *(f"  {step}" for step in BAKED[1:])]
    return {"bread.bake": bread(head=makes, baked=baked)}


def kitchens(number: int) -> Files:
    """So many kitchens beside one bread."""
    texts = (f"kitchen House {_letters(one)}\n{under(2, (*MIXER, *OVEN))}" for one in range(number))
    return {"bread.bake": bread(), "kitchen.bake": "\n".join(texts)}


def ovens(number: int) -> Files:
    """One kitchen with so many ovens, mixers and tins."""
    things: list[str] = []
    for one in range(number):
        word = _letters(one)
        things += [f"oven {word}", *OVEN[1:], f"mixer {word}", *MIXER[1:], f"tin {word}", "  volume 1900 ml"]
    return {"bread.bake": bread(), "kitchen.bake": kitchen(*things)}


def preparations(number: int) -> Files:
    """So many preparations, each of them for one formula."""
    made = (
        f"preparation wash {_letters(one)}\n  eggs 500 g\n  milk 100 g\n  whisk 2 min\n  good for 1 d at 4 C\n"
        for one in range(number)
    )
    brush = [f"brush with wash {_letters(one)} 1 g each" for one in range(number)]
    return {"bread.bake": bread(baked=(*BAKED[:3], *brush, *BAKED[3:])), "washes.bake": "\n".join(made)}


def house_stages(number: int) -> Files:
    """So many stages that stand by themselves, and a formula that draws on one."""
    lines = ("white flour 100%", "water 100%", "instant yeast 0.1%", "mix by hand 3 min", "ripen covered 9 h at 20 C")
    made = "\n".join(f"poolish base {_letters(one)}\n{under(2, lines)}" for one in range(number))
    stages = f"  poolish base {_letters(0)} with 20% of all flour\n\n"
    return {"bread.bake": bread(stages=stages, uses=(f"base {_letters(0)}",)), "stages.bake": made}


def blends(number: int) -> Files:
    """A larder of so many blends, each of the one before and water: past 32 deep it is refused."""
    first = f"  blend {_letters(0)}\n    class wheat flour\n"
    made = (
        f"  blend {_letters(one)}\n    class wheat flour\n    made of\n      blend {_letters(one - 1)} 90%\n      water 10%\n"
        for one in range(1, number)
    )
    return {"bread.bake": bread(), "larder.bake": f"larder House\n{first}{''.join(made)}"}


def unknown_parts(number: int) -> Files:
    """A larder with a blend of so many things that it does not have."""
    parts = "      white flour 100%\n" + "".join(f"      wite flouer {_letters(one)} 1%\n" for one in range(number))
    return {
        "bread.bake": bread(),
        "larder.bake": f"larder House\n  house blend\n    class wheat flour\n    made of\n{parts}",
    }


def deep_lines(number: int) -> Files:
    """Lines that stand ever deeper, down to so many steps."""
    return {"bread.bake": bread() + "".join(f'{"  " * depth}note "deep"\n' for depth in range(1, number + 1))}


def long_lists(number: int) -> Files:
    """One line that holds back so many names, as much of each however many they are."""
    names = ", ".join(f"{_letters(one)} seeds" for one in range(number))
    lines = [f"{_letters(one)} seeds {_tenth(number)}%" for one in range(number)]
    larder = "".join(f"  {_letters(one)} seeds\n    class seed\n    no allergens\n" for one in range(number))
    mixed = (f"hold back {names}", MIXED[0], f"add {names}", *MIXED)
    return {
        "bread.bake": bread(pieces=number, overall=(*OVERALL, *lines), mixed=mixed),
        "larder.bake": f"larder House\n{larder}",
    }


def _letters(number: int) -> str:
    """A word for a number, of letters alone: a name, and none the plural of another."""
    word = ""
    while True:
        number, letter = divmod(number, 26)
        word += "abcdefghijklmnopqrstuvwxyz"[letter]
        if not number:
            return f"zu{word}n"
        number -= 1


FAMILIES: dict[str, Family] = {
    "loads": Family(loads, BUILD, 8, 32),
    "mixes": Family(mixes, BUILD, 8, 180),
    "mixes and loads": Family(mixes_and_loads, BUILD, 8, 32),
    "folds": Family(folds, BUILD, 25, 100),
    "stage chain": Family(stage_chain, BUILD, 12, 49),
    "stages abreast": Family(stages_abreast, BUILD, 12, 49),
    "variants": Family(variants, CHECK, 50),
    "unknown names": Family(unknown_names, CHECK, 250),
    "ingredients": Family(ingredients, BUILD, 250),
    "long lists": Family(long_lists, CHECK, 250),
    "steps": Family(steps, BUILD, 100),
    "branches": Family(branches, BUILD, 12, 50),
    "formulas": Family(formulas, CHECK, 250),
    "formulas of one file": Family(formulas_of_one_file, CHECK, 250),
    "reports": Family(reports, CHECK, 250),
    "unread lines": Family(unread_lines, CHECK, 1000),
    "empty headings": Family(empty_headings, CHECK, 2500),
    "one name": Family(one_name, CHECK, 250),
    "kitchens": Family(kitchens, CHECK, 250),
    "ovens": Family(ovens, BUILD, 100),
    "preparations": Family(preparations, BUILD, 50),
    "house stages": Family(house_stages, CHECK, 250),
    "blends": Family(blends, CHECK, 500),
    "unknown parts": Family(unknown_parts, CHECK, 250),
    "deep lines": Family(deep_lines, CHECK, 250),
}


def write_grown(family: Family, number: int, folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in family.files(number).items():
        (folder / name).write_text(text, encoding="utf-8")


if __name__ == "__main__":
    write_grown(FAMILIES[sys.argv[1]], int(sys.argv[2]), Path(sys.argv[3]))

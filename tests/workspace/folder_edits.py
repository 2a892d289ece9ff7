"""A folder that is edited at random: texts that draw on each other and clash, and what may happen to a file."""

from __future__ import annotations

from collections.abc import Mapping

from hypothesis import strategies as st
from loaves import HOUSE_POOLISH, LOAF_OF_HOUSE_POOLISH, PLAIN_LOAF, POOLISH_LOAF

FALLING = "  oven Stone\n    heat wood, falling\n    falls 12 C an hour from 280 C\n    holds 6 loaves\n"
VARIANT = "  variant by hand\n    makes 4 loaves at 900 g dough\n\n  variant with fresh\n    swap instant yeast for fresh yeast\n"

TEXTS = (
    "",
    PLAIN_LOAF,
    POOLISH_LOAF,
    POOLISH_LOAF + VARIANT,
    LOAF_OF_HOUSE_POOLISH,
    HOUSE_POOLISH,
    HOUSE_POOLISH.replace("water                100%", "water                 90%"),
    HOUSE_POOLISH.replace("House poolish", "house  Poolish"),
    f"# ours\n\n{HOUSE_POOLISH}\n{PLAIN_LOAF.replace('70%', '7%')}",
    f"{HOUSE_POOLISH}\n{LOAF_OF_HOUSE_POOLISH}",
    HOUSE_POOLISH.replace("instant yeast", "instant yest"),
    PLAIN_LOAF.replace("formula Plain loaf", 'formula "Plain loaf"  # quoted'),
    PLAIN_LOAF.replace("formula Plain loaf", "formula plain\u00a0LOAF"),
    PLAIN_LOAF.replace("formula Plain loaf", "formla Plain loaf"),
    PLAIN_LOAF.replace("formula Plain loaf", "formula Poolish loaf, by hand"),
    PLAIN_LOAF.replace("salt                   2%", "salt                  22%"),
    PLAIN_LOAF.replace("salt                   2%", "salt                   2 percents"),
    PLAIN_LOAF.replace("white flour          100%", "Row flour            100%"),
    PLAIN_LOAF.replace("    salt  ", "    paste                  5%\n    salt  "),
    "preparation Paste\n  white flour  100 g\n  water  500 g\n  cook 5 min to 65 C\n",
    "larder Row\n  Row flour\n    class wheat flour\n    per 100 g\n      water 14 g\n",
    "larder Row\n  Row flour\n    class rye flour\n",
    "larder Row\n  white flour\n    class nothing\n",
    "kitchen Back room\n  air 24 C\n  measures US\n",
    "kitchen Back room\n  always allow cooling-missing because \"sold warm\"\n" + FALLING,
    "kitchen Front room\n  air 17 C\n  scale small\n    reads 5 g\n",
    "\tkitchen Back room\n\tair 20 C\n",
)  # fmt: skip
PATHS = ("breads/a.bake", "breads/b.bake", "breads/sweet/c.bake", "house.bake", "z.bake")

Files = Mapping[str, bytes]

PATH = st.sampled_from(PATHS)
DATA = st.sampled_from([*(text.encode() for text in TEXTS), b"\xff no text", PLAIN_LOAF.replace("\n", "\r").encode()])
EDITS = st.one_of(
    st.tuples(st.just("write"), PATH, DATA),
    st.tuples(st.just("write"), PATH, DATA),
    st.tuples(st.just("remove"), PATH),
    st.tuples(st.just("rename"), PATH, PATH),
    st.tuples(st.just("add line above"), PATH),
)


def edited(files: Files, edit: tuple[str, ...]) -> Files:
    match edit:
        case ("write", path, data):
            return {**files, path: data}  # type: ignore[dict-item]
        case ("remove", path):
            return {name: data for name, data in files.items() if name != path}
        case ("rename", path, other) if path in files:
            return {name: data for name, data in files.items() if name != path} | {other: files[path]}
        case ("add line above", path) if path in files:
            return {**files, path: b"# a line more\n" + files[path]}
        case _:
            return files

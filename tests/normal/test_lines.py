"""The normal form of a line: what a hasty hand typed, and how it is written."""

from __future__ import annotations

from typing import get_args

from every import every

from manchet.normal.columns import column_of
from manchet.normal.figures import in_short
from manchet.normal.line import normal_line
from manchet.syntax.clause_order import ORDER, sort_of
from manchet.syntax.clauses import Clause, Prose

STEPS = """
Bake at 240°C 12 mins with steam -> bake 12 min at 240 C, steam
bake 12 min, at 240 C,steam -> bake 12 min at 240 C, steam
bake 30 min at 240 C, vent open after 25 min, steam, steam 5 s after 15 min -> bake 30 min at 240 C, steam, steam 5 s after 15 min, vent open after 25 min
bake 30 min at 240 C, steam after 2 min, vent closed after 120 s, vent open after 9 min -> bake 30 min at 240 C, vent closed after 120 s, steam after 2 min, vent open after 9 min
Prove at 24 C covered 60–75 min until “a mark fills slowly” -> prove covered 60-75 min at 24 C until "a mark fills slowly"
bake vent open to 97 C internal, 22 - 26 min, at 220 C -> bake 22-26 min at 220 C to 97 C core, vent open
ferment covered 2 h with 2 folds every 40 min at 24 C -> ferment covered 2 h at 24 C with 2 folds every 40 min
proof 60 min -> prove 60 min
bulk 2 h -> ferment 2 h
mould round -> shape round
bake 12 min 260 C floor 240 C air -> bake 12 min 260 C floor 240 C air
bake 12 min 240 C air at 260 C floor -> bake 12 min 240 C air at 260 C floor
bake falling to 215 C at 230 C 30 min -> bake 30 min at 230 C falling to 215 C
ripen 36 h in tub, to pH 4.2 -> ripen 36 h in tub to pH 4.2
ripen to PH 4.2 36 h in tub -> ripen 36 h in tub to pH 4.2
mix speed 2, 1/2 h -> mix speed 2, ½ h
mix to 25 C by hand 8 min -> mix by hand 8 min to 25 C
trim loses 4% -> trim, loses 4%
dock optional -> dock, optional
place in long tin, seam down -> place seam down in long tin
strain into jug -> strain into jug
dip in malt bath 4 g apiece -> dip in malt bath 4 g each
Brush With  butter 3g each -> brush with butter 3 g each
Roll  in poppy seeds 4g each -> roll in poppy seeds 4 g each
grease tin with butter 3 g each -> grease tins with butter 3 g each
boil, 12 at a time, 30-40 s a side in copper kettle at 96 C -> boil 30-40 s a side at 96 C in copper kettle, 12 at a time
score why "it opens" note "ask" "a cross" -> score "a cross" why "it opens" note "ask"
do "wait, # and see" waiting 20 min -> do "wait, # and see" 20 min waiting
cool 1 h, may wait 2 h at 4 C -> cool 1 h, may wait 2 h at 4 C
hold back salt, butter, water 4% -> hold back salt, butter and water 4%
add salt, and butter in 3 additions -> add salt and butter in 3 additions
add "salt and pepper" and oil -> add "salt and pepper" and oil
keep  60 grams as  the Pot -> keep 60 g as the Pot
good for 3 days, at 4 C -> good for 3 d at 4 C
Everything Else -> everything else
what is left of the Butter at 16C -> what is left of the Butter at 16 C
"""

MATERIALS = """
salt 20g ->                   salt                  20 g
Salt  20 g ->                 Salt                  20 g
water   67.6 % ->             water                 67.6%
salt 2.0% ->                  salt                   2.0%
butter 1 1/2 lb ->            butter                 1½ lb
butter 1/2 lb ->              butter                 ½ lb
flour 33 1/3 % ->             flour                 33⅓%
butter 2 LB 4 OZ ->           butter                 2 lb 4 oz
rye 20 grams counted as flour -> rye                   20 g, counted as flour
sugar 8 g to taste, ->        sugar                  8 g, to taste
water 100% of what is soaked , at 98°C -> water                100% of what is soaked at 98 C
“36% cream” 20% ->            "36% cream"           20%
a flour that has a very long name 20% -> a flour that has a very long name  20%
"""

SETTINGS = """
kitchen -> tap 12C -> tap           12 C
kitchen -> hands          2 -> hands         2
kitchen -> shape 18 secs each -> shape         18 s each
kitchen -> mixer   spiral -> mixer spiral
kitchen -> proofer warm cupboard -> prover warm cupboard
kitchen -> always allow steam-missing because “it steams” -> always allow steam-missing because "it steams"
thing -> Takes 6 – 45 kilos dough -> takes         6-45 kg dough
thing -> inside 230 by 110 × 95 mm -> inside        230 x 110 x 95 mm
thing -> lidded -> lidded
thing -> holds 24 loaves or 6 rounds -> holds         24 loaves or 6 rounds
thing -> steam by pan -> steam by      pan
entry -> also called rye 1150 ,medium rye -> also called     rye 1150, medium rye
entry -> takes water 68 % -> absorbs water   68%
entry -> per 100 g -> per 100 g
entry -> price 21.40 EUR for 25 kilos on 2026-09-14 -> price           21.40 EUR for 25 kg on 2026-09-14
larder -> Medium  Rye -> Medium Rye
formula -> makes 14 loaves, at 900g dough -> makes 14 loaves, at 900g dough
formula -> Makes 14 loaves at 900g Dough -> makes 14 loaves at 900 g dough
formula -> from 10kg of flour -> from 10 kg flour
formula -> Levain  white with 12.5 % of all flour -> levain white with 12.5% of all flour
formula -> percentages of dough flour -> written on dough flour
top -> Formula  Tern  loaf -> formula Tern loaf
"""

AS_THEY_ARE = """
stage -> bake 30 min at 230 degrees
stage -> mix 1:30
stage -> water 1,200 g
stage -> knead  8 min
stage -> bake 12 C min
stage -> water 20-30 g
stage -> brush with  egg wash 6 g
stage -> mix fast 0.5.5 min
entry -> density 5 g
"""


def rows(table: str) -> list[tuple[str, ...]]:
    return [tuple(part.strip() for part in row.split("->")) for row in table.strip().splitlines()]


@every(rows(STEPS), at_least=30)
def test_a_step_is_written_in_one_order(written: str, normal: str) -> None:
    assert normal_line(written, "stage", column_of("stage", 4, False)) == normal
    assert normal_line(normal, "stage", column_of("stage", 4, False)) == normal


@every(rows(MATERIALS), at_least=12)
def test_the_ones_digit_of_an_amount_stands_in_column_28(written: str, normal: str) -> None:
    assert normal_line(written, "stage", column_of("stage", 4, False)) == normal
    assert normal_line(normal, "stage", column_of("stage", 4, False)) == normal


@every(rows(SETTINGS), at_least=20)
def test_a_setting_has_its_value_in_a_column(context: str, written: str, normal: str) -> None:
    assert normal_line(written, context, column_of(context, 2, False)) == normal
    assert normal_line(normal, context, column_of(context, 2, False)) == normal


@every(rows(AS_THEY_ARE), at_least=8)
def test_a_line_with_a_mistake_stays_as_it_was_written(context: str, written: str) -> None:
    assert normal_line(written, context, column_of(context, 4, False)) == written


def test_every_sort_of_clause_has_its_place() -> None:
    assert {sort_of(kind(*[""] * len(kind._fields))) for kind in get_args(Clause) if kind is not Prose} | WORDS <= set(
        ORDER
    )


WORDS = {"until", "if late", "why", "note", "picture", "how", "who", "optional"}
"""Sorts of prose and of manner."""

AMERICAN = [
    ("stage", "prove 60 min", "proof 60 min"),
    ("stage", "grease trays with butter 20 g in all", "grease sheet pans with butter 20 g in all"),
    ("stage", "grease tin with butter 3 g each", "grease pans with butter 3 g each"),
    ("stage", "bulk 2 h", "ferment 2 h"),
    ("kitchen", "tin long tin", "pan long tin"),
    ("kitchen", "refrigerator cold room", "fridge cold room"),
    ("stage", 'score "prove it on the tray"', 'score "prove it on the tray"'),
]


@every(AMERICAN, at_least=7)
def test_an_american_house_writes_its_own_english(context: str, british: str, american: str) -> None:
    assert normal_line(british, context, None, american=True) == american


FIGURES = """
12 – 15 h -> 12-15 h
at  least 24 hours -> at least 24 h
45 min - 1 h -> 45 min-1 h
1 h 30 min -> 1 h 30 min
-18°C -> -18 C
2 1/2-3 h -> 2½-3 h
1 ½ oz -> 1½ oz
3/7 kg -> 3/7 kg
1/6 kg -> 1/6 kg
.5 KG -> .5 kg
2 Cups -> 2 cups
5 whole -> 5 whole
700-800 revolutions -> 700-800 turns
0.55 kg/l -> 0.55 kg/l
007 -> 007
"""


@every(rows(FIGURES), at_least=14)
def test_a_figure_is_written_shortly_and_its_digits_stay(written: str, short: str) -> None:
    assert in_short(written) == short == in_short(short)

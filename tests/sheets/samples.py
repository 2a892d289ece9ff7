"""Hand-made views: what a page looks like can be judged, and tried, without a formula behind it."""

from __future__ import annotations

from manchet.sheets.forms.prep_sheet.view import (
    BakeTable,
    DivideList,
    DivideRow,
    PrepSheet,
    StageBlock,
    Steps,
    WayHeading,
)
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import BakePhase, Box, CautionNote, Fact, OverallShare, StepLine, WeighRow

TIME = Box("time")
WARMTH = Box("dough", "°C")


def running(name: str = "Ebb rye") -> Running:
    return Running(
        name, "2 mixes", "Thu 26 Nov 2026", "ebb-rye.bake", "commit 4f2a91c", "9b1e 07d4", "14 Nov 2026"
    )  # fmt: skip


def ebb_rye(name: str = "Ebb rye") -> PrepSheet:
    """A rye hearth loaf in two mixes: a sour, a hot scald, soaked seeds."""
    return PrepSheet(
        title=name,
        about="Hearth loaf, two fifths rye, with a sour, a hot scald and soaked seeds.",
        language="en-GB",
        paper="A4",
        running=running(name),
        status="trial",
        warning="",
        head=(
            Fact("makes", "14 loaves at 900 g dough, about 783 g baked"),
            Fact("dough", "28 °C, 12.79 kg"),
            Fact("mixes", "2, each 6,395 g"),
            Fact("out of the oven", "10:40"),
        ),
        readings=(Box("flour", "°C"), Box("room", "°C"), Box("water", "°C"), Box("started at")),
        blocks=(
            StageBlock(
                "1", "ferry sour", "sour", "made once for both mixes", "1,483 g of 6,743 g flour", (),
                (
                    WeighRow("medium rye flour", "1,515", "g", "100 %"),
                    WeighRow("water", "1,210", "g", "80 %"),
                    WeighRow("ripe rye starter", "150", "g", "10 %", notes=("from the pot",)),
                ),
                "the tub now holds 2,875 g",
                (),
                ("60 g more is mixed, to keep",),
                ((Steps((
                    StepLine("Mix by hand 3 min, to 27 °C", boxes=(TIME, WARMTH)),
                    StepLine("Ripen covered 12–15 h at 24 °C", "until risen, cracked on top, smells sharp",
                         boxes=(TIME, Box("room", "°C"))),
                    StepLine("Keep 60 g as ripe rye starter", boxes=(TIME,)),
                )),),),
                ("to the dough: 2,815 g, 1,407 g for each bowl",),
                (False,),
            ),
            StageBlock(
                "2", "scald", "", "made once for both mixes", "539 g of 6,743 g flour", (),
                (WeighRow("medium rye flour", "540", "g", "100 %"), WeighRow("water", "1,350", "g", "250 %", notes=("at 98 °C",))),
                "",
                (),
                (),
                ((
                    CautionNote("warning", "The scald is hot enough to burn, and to kill yeast and sour.",
                                "in the dough at 40 °C at most", "wait, and measure again in the middle",
                                (Box("scald", "°C"),), "common practice"),
                    Steps((StepLine("Mix by hand 2 min", boxes=(TIME,)),
                           StepLine("Rest covered 60–90 min", boxes=(TIME,)),
                           StepLine("Cool 1–2 h, to 32 °C", boxes=(TIME, Box("scald", "°C"))))),
                ),),
                ("to the dough: 1,833 g, 917 g for each bowl",),
                (False,),
            ),
            StageBlock(
                "3", "dough", "", "weights for one bowl of 2", "2,360 g of 6,743 g flour", ("1", "2"),
                (
                    WeighRow("sour", "1,407", "g", ticks=2, notes=("made once for 2 mixes: this is the part for each bowl",)),
                    WeighRow("scald", "917", "g", ticks=2),
                    WeighRow("white flour", "2,025", "g", "60 %", ticks=2),
                    WeighRow("water", "1,020", "g", "", ticks=2, notes=("at ____ °C", "jug: 135 g kept aside")),
                    WeighRow("malt syrup", "67", "g", "2 %", ticks=2),
                    WeighRow("caraway", "13.5", "g", "0.4 %", ticks=2, fine=True),
                    WeighRow("instant yeast", "8.4", "g", "0.25 %", ticks=2, fine=True),
                ),
                "the bowl now holds 5,458 g",
                (WeighRow("salt", "64", "g", "1.9 %", ticks=2), WeighRow("water", "135", "g", "2 %", ticks=2)),
                (),
                ((
                    Steps((
                        StepLine("Mix slow 5 min", boxes=(TIME,)),
                        StepLine("Add", adds=(WeighRow("salt", "64", "g", "1.9 %", ticks=2, aside="was 1.8 %"),
                                          WeighRow("seeds", "610", "g", ticks=2)), boxes=(TIME,)),
                        StepLine("Mix fast 2 min, to 28 °C", "until even, sticky, holds a dome", boxes=(TIME, WARMTH)),
                        StepLine("Add water as the flour asks", notes=("jug: 135 g at most",),
                             boxes=(Box("went in", "g"), Box("went in", "g"))),
                        StepLine("Ferment covered 2–3 h at 28 °C", counts=("fold, 40 min", "fold, 1 h 20 min"),
                             notes=("may wait 20 min",), boxes=(TIME, Box("room", "°C"))),
                    )),
                    DivideList((DivideRow("14", "loaves", "900", "g", baked="783 g"), DivideRow("24", "rolls", "110", "g", baked="95 g"))),
                ), (
                    WayHeading("for the loaves"),
                    Steps((StepLine("Shape round", boxes=(TIME,)),
                           StepLine("Prove 50–70 min at 28 °C", "until small cracks show", boxes=(TIME, Box("room", "°C"))))),
                    BakeTable((BakePhase("15 min", "250 °C", "steam", "", ""),
                          BakePhase("35–40 min", "215 °C", "", "open", "97 °C", "until deep chestnut")),
                         (TIME, Box("oven", "°C"))),
                ), (
                    WayHeading("for the rolls", (WeighRow("hazelnuts", "317", "g", "12 % of the dough"),)),
                    Steps((StepLine("Cool 4 h", boxes=(TIME,)),)),
                )),
                (),
                (False, False, False),
            ),
        ),
        cautions=(),
        hazards="Oven, mixer, dust, lifting, raw flour: see the card on the wall.",
        overall_head="Overall formula, per cent of all flour (weigh nothing from here)",
        overall=(OverallShare("white flour", "60 %"), OverallShare("medium rye flour", "40 %"), OverallShare("water", "76 %"),
                 OverallShare("salt", "1.9 %", "was 1.8 %"), OverallShare("instant yeast", "0.25 %")),
        totals=(Fact("water added", "76 %"), Fact("water in all", "84.5 %"), Fact("prefermented flour", "22 %"),
                Fact("salt", "1.9 %"), Fact("instant yeast", "0.25 %")),
        flours="taken as flour: white flour, medium rye flour",
        lots=("lots: flour", "seeds", "dairy"),
    )  # fmt: skip

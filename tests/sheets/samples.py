"""Hand-made views: what a page looks like can be judged, and tried, without a formula behind it."""

from __future__ import annotations

from typing import Any

from manchet.sheets.forms.prep_sheet.view import (
    BakeTable,
    DivideList,
    DivideRow,
    Gone,
    Handed,
    HotStage,
    LeafLine,
    MadeAmount,
    MakeAhead,
    OtherWait,
    OtherWaits,
    PrepSheet,
    StageBlock,
    Steps,
    Tub,
    WaterCell,
    WaterPanel,
    WaterRow,
    WayHeading,
)
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import BakePhase, Box, CautionNote, Fact, OverallShare, StepClause, WeighRow

TIME = Box("time")
WARMTH = Box("dough", "°C")


def running(name: str = "Ebb rye") -> Running:
    return Running(
        name, "2 mixes", "Thu 26 Nov 2026", "ebb-rye.bake", "commit 4f2a91c", "9b1e 07d4", "14 Nov 2026"
    )  # fmt: skip


MIXES = ("1", "2")


def clause(by: Any, doing: str, minutes: str = "", rest: str = "", **more: Any) -> StepClause:
    return StepClause(by, doing.lower(), doing, minutes=minutes, rest=rest, **more)


def line(*clauses: StepClause, boxes: tuple[Box, ...] = (TIME,), **more: Any) -> LeafLine:
    return LeafLine(clauses, boxes=boxes, **more)


def ebb_rye(name: str = "Ebb rye") -> PrepSheet:
    """A rye hearth loaf in two mixes: a sour, a hot scald, soaked seeds."""
    return PrepSheet(
        title=name,
        language="en-GB",
        paper="A4",
        units="metric",
        running=running(name),
        status="trial",
        warning="",
        amounts=(MadeAmount("14", "loaves", "900", "g", "", "783 g"), MadeAmount("24", "rolls", "110", "g", "roll tin", "95 g")),
        lines=("2 mixes, 6,395 g dough each", "out of the oven 10:40"),
        ahead=(MakeAhead("egg wash", "84 g", True),),
        beside=(MakeAhead("rice flour", "96 g"),),
        wanted="28 °C",
        dough="12.79 kg",
        readings=(Box("flour", "°C"), Box("room", "°C"), Box("water", "°C"), Box("start")),
        blocks=(
            StageBlock(
                "1", "ferry sour", "sour", "22 %", "2", "", (),
                (
                    WeighRow("medium rye flour", "1,515", "g", "100 %"),
                    WeighRow("water", "1,180", "g", "80 %", ice="30 g", whole="1,210 g"),
                    WeighRow("ripe rye starter", "150", "g", "10 %", notes=("from the pot",), fine=True, aside="5.3 oz"),
                ),
                (),
                (),
                Tub("tub", "2,875 g", (), (Handed("60 g", "ripe rye starter"),), (Handed("2,815 g", "dough", "1,407 g"),)),
                ("stir it once",),
                (),
                (Steps((
                    line(clause("hands", "Mix by hand", "3 min", " to 27 °C"), boxes=(WARMTH, TIME)),
                    line(clause("left alone", "Ripen covered", "12–15 h", " at 24 °C until risen, cracked on top"),
                         boxes=(Box("", "°C"), TIME)),
                    line(clause("hands", "Keep", object="60 g as ripe rye starter")),
                )),),
            ),
            StageBlock(
                "2", "scald", "", "8 %", "2", "", (),
                (WeighRow("medium rye flour", "540", "g", "100 %"), WeighRow("water", "1,350", "g", "250 %", notes=("98 °C",))),
                (),
                (),
                None,
                (),
                (CautionNote("note", "Hot paste sticks.", "", "", (), "common practice"),),
                (Steps((
                    line(clause("hands", "Mix by hand", "2 min"), cautions=(SCALDING,)),
                    line(clause("left alone", "Rest covered", "60–90 min")),
                    line(clause("left alone", "Cool", "1–2 h", " to 32 °C"), boxes=(Box("scald", "°C"), TIME)),
                )),),
            ),
            StageBlock(
                "3", "dough", "", "70 %", "", "2", MIXES,
                (
                    WeighRow("sour", "1,407", "g", ticks=2),
                    WeighRow("scald", "917", "g", ticks=2),
                    WeighRow("white flour", "2,025", "g", "60 %", ticks=2),
                    WeighRow("water", "1,020", "g", "", ticks=2),
                    WeighRow("malt syrup", "67", "g", "2 %", ticks=2),
                    WeighRow("caraway", "13.5", "g", "0.4 %", ticks=2, fine=True),
                    WeighRow("instant yeast", "8.4", "g", "0.25 %", ticks=2, fine=True),
                ),
                (
                    WeighRow("salt", "64", "g", "1.9 %", ticks=2, letter="A", was="was 61 g"),
                    WeighRow("water", "135", "g", "2 %", ticks=2, letter="B"),
                ),
                (Gone("fennel", "0.3 %"),),
                Tub("bowl", "5,458 g", ("A", "B")),
                (),
                (),
                (Steps((
                    line(clause("machine", "Mix slow", "5 min"), numbers=MIXES, notes=("order: water, sour, then flour",)),
                    line(
                        clause("hands", "Add", letter="A", adds=(WeighRow("salt", "64", "g", "1.9 %", ticks=2),)),
                        clause("machine", "mix fast", "2 min", " to 28 °C until even, sticky, holds a dome"),
                        boxes=(WARMTH, TIME), numbers=MIXES,
                    ),
                    line(clause("hands", "Add", object="water as the flour asks", letter="B"), notes=("jug: 135 g at most",),
                         boxes=(Box("went in", "g"), TIME), numbers=MIXES),
                )),),
            ),
        ),
        bench=(
            Steps((line(clause("left alone", "Ferment covered", "2–3 h", " at 28 °C", counts=("fold at 40 min", "fold at 80 min")),
                        notes=("may wait 20 min",), boxes=(Box("", "°C"),), numbers=MIXES),)),
            DivideList(
                clause("hands", "Divide"),
                (DivideRow("14", "loaves", "900", "g", "", "783 g", "7"), DivideRow("24", "rolls", "110", "g", "roll tin", "95 g")),
                "24 g of dough is left over", ("loaves: 880 g to 910 g for about 783 g baked",), ("cut clean",), (SCALDING,),
            ),
            WayHeading("for the loaves"),
            Steps((
                line(clause("hands", "Shape round"), boxes=()),
                line(clause("left alone", "Prove", "50–70 min", " at 28 °C until small cracks show"), boxes=(Box("", "°C"),)),
            )),
            BakeTable((BakePhase("15 min", "250 °C", ("steam",), "", "", ("on stone",)),
                       BakePhase("35–40 min", "215 °C", ("damper open",), "97 °C", "until deep chestnut")),
                      (Box("oven", "°C"),), ("24 at once",), (), (SCALDING,)),
            WayHeading("for the rolls"),
            Steps((line(clause("cold", "Cool", "4 h"), boxes=()),)),
        ),
        cautions=(SCALDING,),
        hazards="Oven, mixer, dust, lifting, raw flour: see Bakehouse safety on the wall.",
        overall_head="Overall, % of all flour (weigh nothing from here):",
        overall=(OverallShare("white flour", "60 %"), OverallShare("medium rye flour", "40 %"), OverallShare("water", "76 %"),
                 OverallShare("salt", "1.9 %", "was 1.8 %"), OverallShare("instant yeast", "0.25 %")),
        totals=(Fact("water added", "76 %"), Fact("water in all", "84.5 %"), Fact("prefermented flour", "22 %")),
        flours="counted as flour: white flour, medium rye flour",
        lots=("lots: flour", "seeds", "dairy"),
        notes=("Better on the second day.",),
        water=WaterPanel(
            "water = 75 °C − flour − room", "water", "30 °C + 30 g ice", "20 °C", "25 °C", "28–32 °C", ("21 °C", "25 °C"),
            (WaterRow("20 °C", (WaterCell("34 °C", ""), WaterCell("30 °C", "30 g ice", True))),),
            ("Estimate: write down what the dough came to.",),
            (HotStage("scald", "assumed 60 °C", "5 °C warmer: water 2 °C colder"),),
        ),
        waits=(OtherWaits("ferry sour", "fresh yeast", (OtherWait("colder", "colder", "12 h", "22 °C", "4.1 g"),),
                          ("An estimate.",)),),
        swapped=("instant yeast for fresh yeast: × 0.4 (Hamelman)",),
    )  # fmt: skip


SCALDING = CautionNote(
    "warning",
    "The scald is hot enough to burn, and to kill yeast and sour.",
    "in the dough at 40 °C at most",
    "wait, and measure again in the middle",
    (Box("scald", "°C"),),
    "common practice",
)

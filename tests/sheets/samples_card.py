"""A hand-made timing card over a night, with everything a card can hold."""

from __future__ import annotations

from manchet.sheets.drawings.day import Bar, Lane, day
from manchet.sheets.drawings.pen import drawing
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.forms.timing_card.view import (
    BulkTime,
    CardClash,
    CardDay,
    CardJob,
    CardLine,
    CardLoad,
    CardWait,
    CardWeight,
    Clause,
    LateLine,
    LoadList,
    MixTick,
    TimingCard,
)
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Illustration


def strip() -> Illustration:
    lanes = (
        Lane("sour", (Bar(0, 3, "work"), Bar(3, 720, "alone", "ripen"))),
        Lane("mother", (Bar(600, 720, "rises"), Bar(720, 770, "bakes"))),
    )
    said = drawing("day", "sour: ripen 21:33–09:33", day(lanes, WallClock(21 * 60 + 30), "{} h cut"))
    return Illustration(said.title, said.svg, high=said.high)


def night_card(name: str = "Ebb rye") -> TimingCard:
    return TimingCard(
        title=name,
        language="en-GB",
        paper="A4",
        running=Running(name, "2 mixes", "Fri 27 Nov 2026", "ebb-rye.bake", "commit 4f2a91c", "9b1e07d4", ""),
        makes=("14 loaves × 900 g",),
        start="start Thu 21:30", out="out Fri 10:45", ready="ready Fri 11:00",
        strip=strip(),
        days=(
            CardDay("Thursday 26 Nov", (
                CardJob("21:30", "+0:00", (
                    CardLine("Sour", "sour", "", (Clause("mix by hand 3 min", "to 27 °C", "hands", 3),),
                        CardWait("ripen 12–15 h", "covered until risen, cracked on top", "left alone", 720,
                            "21:33", "09:33", "Fri", "room 21 °C: about 14–17 h"),
                        (CardWeight("1,515", "g", "medium rye flour"), CardWeight("1,210", "g", "water", "at about 28 °C"))),
                ), "22:15"),
                CardJob("21:50", "+0:20", (
                    CardLine("", "", "", (Clause("Fold 1 of 2", "", "hands", 0),)),
                ), mixes=(MixTick(1, "mix 1", "21:50"), MixTick(2, "mix 2", "22:10"))),
            )),
            CardDay("Friday 27 Nov", (
                LoadList("10:00", "+12:30", "Loaves", "Mother, 2 loads",
                    (Clause("score", ": one cut", "hands", 2), Clause("bake 15 min", "at 250 °C, steam", "left alone", 15)),
                    ("damper",), (CardLoad("1", "7", "10:02", ("10:17",), "10:20", (1,)),
                                  CardLoad("2", "7", "10:24", ("10:39",), "10:45", (1, 2)))),
                CardJob("10:45", "+13:15", (
                    CardLine("Loaves", "", "loaves", (
                        Clause("divide", "", "hands", 4, (CardWeight("900", "g", "loaves", number="14"),), "may wait 10 min"),)),
                ), sharp=True),
            )),
        ),
        late=(LateLine("21:30", "up to 45 min: shorter ripening"), LateLine("from 10:00", "all that follows is that much later")),
        warmths=(BulkTime("24 °C", "47–59 min"), BulkTime("28 °C", "40–50 min")),
        before=("feed the ripe rye starter, 90 g short", "mother: wood laid; light at Fri 07:30"),
        clashes=(CardClash(("10:00 – 10:02",), "two jobs at once: loaves, rolls"),),
        notes=("Later loads stand longer: shape them later, or prove them cooler.",),
        swapped=("instant yeast for fresh yeast: × 0.33 (Hamelman, Bread, 2004)",),
    )  # fmt: skip

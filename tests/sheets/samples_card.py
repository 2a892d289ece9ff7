"""A hand-made timing card over a night, with everything a card can hold."""

from __future__ import annotations

from manchet.sheets.forms.timing_card.view import (
    BulkTime,
    DayBar,
    DayLane,
    DayPicture,
    HourMark,
    InkKey,
    JobLine,
    TimingCard,
)
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Fact


def night_card(name: str = "Ebb rye") -> TimingCard:
    return TimingCard(
        title=name,
        language="en-GB",
        paper="A4",
        running=Running(name, "2 mixes", "Fri 27 Nov 2026", "ebb-rye.bake", "commit 4f2a91c", "9b1e07d4", ""),
        head=(Fact("first job", "Thursday 26 Nov 21:30"), Fact("ready", "Friday 27 Nov 11:00")),
        jobs=(
            JobLine("21:30", "+0:00", "sour: Mix by hand 3 min, to 27 °C", "", "by hand", "", "22:15, 45 min on",
                "then the dough moves", ("15/30/45: cut sour ripen",), critical=True, day="Thursday 26 Nov"),
            JobLine("21:33", "+0:03", "sour: Ripen covered 12–15 h", "shelf", "waits", "risen, cracked on top",
                "22:20, 45 min on", "then the dough moves", ("15: nothing moves",), "gives 90 min either way", True),
            JobLine("10:00", "+12:30", "Bake 15 min at 250 °C", "mother", "waits", "", "10:00, no slack",
                "then the bread is later", ("15: bread 15 min later",), "must not wait", True, True, "Friday 27 Nov"),
        ),
        warmths=(BulkTime("24 °C", "about 47–59 min"), BulkTime("28 °C", "about 40–50 min")),
        before=("feed the ripe rye starter", "oven (mother): heat it from Friday 27 Nov 09:00, to 250 °C"),
        pictures=(DayPicture(
            "750", "80", "56", (HourMark("120", "22:00"), HourMark("400", "10:00")),
            (DayLane("sour", "20", "34", "36", "50", (DayBar("120", "280", "24", "wait", "ripen", "120", "46"),)),),
            (InkKey("wait", "waiting", "112", "60", "139", "69"),), "sour: ripen 21:33–09:33",
            "Long waits are drawn short.",
        ),),
        notes=("For one job neither the file nor the kitchen says how long it takes.",),
    )  # fmt: skip

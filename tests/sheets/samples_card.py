"""A hand-made timing card over a night, with everything a card can hold."""

from __future__ import annotations

from manchet.sheets.views import Bar, Fact, Job, Key, Lane, Picture, Running, Tick, TimingCard, Warmth


def night_card(name: str = "Ebb rye") -> TimingCard:
    return TimingCard(
        title=name,
        language="en-GB",
        paper="A4",
        running=Running(name, "2 mixes", "Fri 27 Nov 2026", "ebb-rye.bake", "commit 4f2a91c", "9b1e07d4", ""),
        head=(Fact("first job", "Thursday 26 Nov 21:30"), Fact("ready", "Friday 27 Nov 11:00")),
        jobs=(
            Job("21:30", "+0:00", "sour: Mix by hand 3 min, to 27 °C", "", "by hand", "", "22:15, 45 min on",
                "then the dough moves", ("15/30/45: cut sour ripen",), critical=True, day="Thursday 26 Nov"),
            Job("21:33", "+0:03", "sour: Ripen covered 12–15 h", "shelf", "waits", "risen, cracked on top",
                "22:20, 45 min on", "then the dough moves", ("15: nothing moves",), "gives 90 min either way", True),
            Job("10:00", "+12:30", "Bake 15 min at 250 °C", "mother", "waits", "", "10:00, no slack",
                "then the bread is later", ("15: bread 15 min later",), "must not wait", True, True, "Friday 27 Nov"),
        ),
        warmths=(Warmth("24 °C", "about 47–59 min"), Warmth("28 °C", "about 40–50 min")),
        before=("feed the ripe rye starter", "oven (mother): heat it from Friday 27 Nov 09:00, to 250 °C"),
        pictures=(Picture(
            "750", "80", "56", (Tick("120", "22:00"), Tick("400", "10:00")),
            (Lane("sour", "20", "34", "36", "50", (Bar("120", "280", "24", "wait", "ripen", "120", "46"),)),),
            (Key("wait", "waiting", "112", "60", "139", "69"),), "sour: ripen 21:33–09:33",
            "Long waits are drawn short.",
        ),),
        notes=("For one job neither the file nor the kitchen says how long it takes.",),
    )  # fmt: skip

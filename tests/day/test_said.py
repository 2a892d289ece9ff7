"""What a plan and an order say, read from a text: wants, ends, shifts, things, days."""

from __future__ import annotations

from datetime import date, datetime
from fractions import Fraction

from every import every
from loaves import PLAIN_LOAF
from works import bakery_of

from manchet.day.said import Finish, Plan, SaidShift
from manchet.formula.ranges import Range
from manchet.workspace.bakery import Bakery

BREADS = PLAIN_LOAF.replace("Plain loaf", "Ebb rye").replace("  makes", "  sold 8-48 h old\n  makes", 1) + PLAIN_LOAF
HOUSE = "kitchen House\n  oven mother\n    heat wood\n  mixer spiral\n    takes 6-45 kg dough\n  tray black tray\n    count 20\n"
HOUR = 3600


def bakery(*lines: str, more: str = "") -> Bakery:
    """A bakery with a plan for Saturday 2026-11-28 that has these lines."""
    body = "".join(f"  {line}\n" for line in lines)
    return bakery_of(f"{HOUSE}{more}plan Market\n  on 2026-11-28\n{body}{BREADS}")


def plan(*lines: str, more: str = "") -> Plan:
    read = bakery(*lines, more=more)
    assert [one for one in read.mistakes if one.place.path == "test.bake"] == []
    (found,) = read.plans
    return found


def at(day: int, hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 11, day, hour, minute)


WANT = "Plain loaf 12 loaves, ready Sat 06:00"


def test_a_bread_with_its_end_and_its_age() -> None:
    (want,) = plan("Ebb rye 14 loaves, ready Sat 05:00-06:00").wants
    assert (want.name, want.pieces, want.grams, want.spare) == ("Ebb rye", ((14, "loaves"),), None, ())
    assert (want.end.how, want.end.by, want.end.not_before, want.end.departure) == (
        Finish.READY,
        at(28, 6),
        at(28, 5),
        "",
    )
    assert want.age == Range(Fraction(8 * HOUR), Fraction(48 * HOUR))
    (own,) = plan("Ebb rye 14 loaves, served Sat 06:00, at most 30 h old").wants
    assert (own.end.how, own.age) == (Finish.SERVED, Range(None, Fraction(30 * HOUR)))
    (unsaid,) = plan(WANT).wants
    assert unsaid.age is None


def test_orders_and_spare_make_the_count_where_the_bread_has_none() -> None:
    read = plan(
        "van leaves Sat 06:00 with Quay cafe", "van north leaves Sat 08:00 with the stall",
        "Ebb rye", "  for Quay cafe 4 loaves", "  for the stall 8 loaves", "  spare 2 loaves",
    )  # fmt: skip
    (want,) = read.wants
    assert (want.pieces, want.spare) == (((14, "loaves"),), ((2, "loaves"),))
    ends = {order.customer: (order.end.how, order.end.by, order.end.departure) for order in want.orders}
    assert ends == {
        "Quay cafe": (Finish.PACKED, at(28, 6), "van"),
        "the stall": (Finish.PACKED, at(28, 8), "van north"),
    }
    assert want.end.by == at(28, 6)
    assert [one.customers for one in read.departures] == [("Quay cafe",), ("the stall",)]


def test_one_customer_without_a_count_gets_what_is_left() -> None:
    (want,) = plan("Plain loaf 12 loaf, for Quay cafe 4 loaves, for the stall, spare 1 loaf, ready 06:00").wants
    assert [(order.customer, order.pieces) for order in want.orders] == [
        ("Quay cafe", ((4, "loaves"),)),
        ("the stall", ((7, "loaves"),)),
    ]
    assert want.pieces == ((12, "loaves"),)


def test_people_things_and_what_is_there() -> None:
    read = plan(
        WANT,
        "hands Tom Fri 16:00 to Sat 02:30, break 30 min", "hands 2 Thu 22:00-23:00", "hands Ines Fri 20:00 to 04:00",
        "oven 2 fires, lit Fri 15:00 to Sat 02:00", "mixer spiral taken Fri 15:00 to 17:00", "tray taken Mon 08:00 to Tue 08:00",
        "already made ripe rye starter 4 kg, white flour made Thu 18:00", "divide Plain loaf Fri 12:00",
    )  # fmt: skip
    tom, two, ines = (shift._replace(place=read.place) for shift in read.shifts)
    assert tom == SaidShift("Tom", 1, at(27, 16), at(28, 2, 30), Fraction(1800), read.place)
    assert two == SaidShift("", 2, at(26, 22), at(26, 23), None, read.place)
    assert ines == SaidShift("Ines", 1, at(27, 20), at(28, 4), None, read.place)
    (fires,) = read.fires
    assert (fires.oven, fires.number, fires.lit) == ("mother", 2, (at(27, 15), at(28, 2)))
    assert [(one.word, one.name, one.start, one.end) for one in read.away] == [
        ("mixer", "spiral", at(27, 15), at(27, 17)),
        ("tray", "black tray", at(23, 8), at(24, 8)),
    ]
    assert [(one.name, one.key, one.grams, one.made) for one in read.already] == [
        ("ripe rye starter", "ripe rye starter", 4000, None),
        ("white flour", "white flour", None, at(26, 18)),
    ]
    assert [(one.verb, one.name, one.at) for one in read.appointments] == [("divide", "Plain loaf", at(27, 12))]


def test_a_weekday_is_the_nearest_before_the_day_or_that_day() -> None:
    days = {"Sat": 28, "Fri": 27, "Thu": 26, "Wed": 25, "Tue": 24, "Mon": 23, "Sun": 22}
    for name, day in days.items():
        (want,) = plan(f"Plain loaf 12 loaves, ready {name} 06:00").wants
        assert want.end.by == at(day, 6)
    (night,) = plan(WANT, "hands Tom Sat 20:00 to 2026-11-29 02:00").shifts
    assert night.end == at(29, 2)


def test_an_hour_that_comes_twice_is_the_one_that_is_said() -> None:
    text = (
        "kitchen House\n  zone Europe/Lisbon\nplan Sunday\n  on 2026-10-25\n"
        "  Plain loaf 12 loaves, ready Sun 01:30 {}\n" + PLAIN_LOAF
    )
    folds = [bakery_of(text.format(which)).plans[0].wants[0].end.by.fold for which in ("first", "second")]
    assert folds == [0, 1]
    assert [one.name for one in bakery_of(text.replace(" {}", "")).mistakes] == ["hour-of-the-clock-change"]


STANDING = (
    "order Quay cafe\n  every Tue, Sat\n  until 2026-12-24\n  Plain loaf 4 loaves\n  Ebb rye 2 loaves\n"
    "order Weir House\n  every Mon\n  Plain loaf 40 loaves\n"
)


def test_standing_orders_of_the_day_are_taken_in() -> None:
    read = plan("orders", "van leaves 06:00 with Quay cafe", "Plain loaf", "  spare 3 loaves", more=STANDING)
    assert read.takes_orders
    assert {want.name: want.pieces for want in read.wants} == {
        "Plain loaf": ((7, "loaves"),),
        "Ebb rye": ((2, "loaves"),),
    }
    assert all(order.standing for want in read.wants for order in want.orders)


def test_what_the_plan_says_of_a_customer_stands_instead_of_the_standing_order() -> None:
    lines = ("orders", "without Ebb rye", "Plain loaf, ready 06:00", "  for Quay cafe 6 loaves")
    (want,) = plan(*lines, more=STANDING).wants
    assert want.pieces == ((6, "loaves"),)
    assert [(order.pieces, order.standing) for order in want.orders] == [(((6, "loaves"),), False)]


PATTERN = (
    "plan Market day\n  every Sat\n  van leaves Sat 06:00 with Quay cafe, the stall\n"
    "  Plain loaf 12 loaves\n    for Quay cafe 4 loaves\n    for the stall 6 loaves\n    spare 2 loaves\n"
    "  Ebb rye 6 loaves, for the stall\n  hands Tom Fri 16:00 to Sat 02:00\n  hands Ines Sat 03:00 to Sat 08:00\n"
)


def like(*lines: str) -> Plan:
    own = "".join(f"  {line}\n" for line in lines)
    read = bakery_of(f"{PATTERN}plan 2026-12-05 like Market day\n{own}{BREADS}")
    assert [(one.name, one.message) for one in read.mistakes] == []
    (found,) = read.plans
    return found


def test_a_plan_like_another_says_what_differs() -> None:
    read = like(
        "Plain loaf 20 loaves",
        "without Ebb rye",
        "hands Tom Fri 18:00 to Sat 01:00",
        "van leaves Sat 07:00 with Quay cafe, the stall",
    )
    assert (read.name, read.date, read.like, read.every) == (
        "Market day 2026-12-05",
        date(2026, 12, 5),
        "Market day",
        (5,),
    )
    (want,) = read.wants
    assert (want.pieces, want.spare, want.end.by) == (((20, "loaves"),), ((10, "loaves"),), datetime(2026, 12, 5, 7))
    assert [(shift.name, shift.start) for shift in read.shifts] == [
        ("Ines", datetime(2026, 12, 5, 3)),
        ("Tom", datetime(2026, 12, 4, 18)),
    ]


def test_one_order_that_differs_leaves_the_others() -> None:
    wants = {want.name: want for want in like("Plain loaf", "  for Quay cafe 1 loaf", "  spare 1 loaf").wants}
    assert wants["Plain loaf"].pieces == ((8, "loaves"),)
    assert wants["Ebb rye"].pieces == ((6, "loaves"),)


def test_a_pattern_alone_is_looked_over_and_is_no_plan_of_a_day() -> None:
    assert bakery_of(PATTERN + BREADS).plans == ()
    wrong = bakery_of(PATTERN.replace("12 loaves", "12 rolls") + BREADS)
    assert [one.name for one in wrong.mistakes] == ["no-such-piece"]


BAD = [
    (("Ebb rye 14 loaves, ready 06:00", "  for Quay cafe 4 loaves", "  for quay cafe 4 loaves"), "customer-twice"),
    (("on 2026-02-31", WANT), "plan-said-twice"),
    ((WANT, "hands Tom Sat 16:00 to Sun 02:00"), "shift-ends-first"),
    ((WANT, "hands Tom Fri 16:00 to Fri 16:00"), "shift-ends-first"),
    ((WANT, "hands Tom Fri 16:00 to Fri 20:00", "hands tom Fri 19:00 to Fri 22:00"), "shifts-overlap"),
    (("Plain loaf 12 loaves, served Sat 14:00-12:00",), "window-ends-first"),
    (("Plain loaf 12 loaves, ready Sat 06:00 to 05:00",), "window-ends-first"),
    ((WANT, "hands two Fri 16:00 to Fri 20:00"), "shift-of-two"),
    (("Ebb ray 14 loaves, ready 06:00",), "no-such-bread"),
    (("Ebb rye, by hand 14 loaves, ready 06:00",), "no-such-bread"),
    (("Herring on rye 24 plates, served 12:00",), "no-such-bread"),
    (("Ebb rye 14 rolls, ready 06:00",), "no-such-piece"),
    (("Ebb rye 2 kg, ready 06:00",), "no-such-piece"),
    (("Ebb rye 0 loaves, ready 06:00",), "wanted-no-number"),
    (("Ebb rye 1.5 loaves, ready 06:00",), "wanted-no-number"),
    (("Ebb rye 14 loaves, ready 25:00",), "no-such-hour"),
    (("Ebb rye 14 loaves, ready 06:00", "  for A 4 loaves", "  spare 9 loaves"), "orders-do-not-add-up"),
    (("Ebb rye 14 loaves, ready 06:00", "Ebb Rye 2 loaves, ready 07:00"), "bread-twice"),
    (("Ebb rye 14 loaves",), "wanted-by-when"),
    (("Ebb rye 14 loaves, for A",), "wanted-by-when"),
    ((WANT, "divide Ebb rye Fri 12:00"), "appointment-of-no-bread"),
    ((WANT, "roast Plain loaf Fri 12:00"), "appointment-of-no-step"),
    ((WANT, "oven deck 1 fire"), "no-such-thing"),
    ((WANT, "fridge taken Fri 12:00 to 14:00"), "no-such-thing"),
    ((WANT, "already made moon dust"), "nothing-made-so"),
    ((WANT, "without Ebb rye"), "nothing-left-out"),
    ((WANT, "orders"), "no-orders-that-day"),
    (("already made white flour",), "plan-wants-nothing"),
    (("van leaves 06:00 with A, B", "Ebb rye 14 loaves, for A"), "nothing-for-a-customer"),
    (tuple(f"Bread {'i' * number}v 2 loaves, ready 06:00" for number in range(500)), "plan-too-large"),
]


@every(BAD, at_least=25)
def test_bad_input_is_told_once_with_what_to_type(lines: tuple[str, ...], name: str) -> None:
    read = bakery(*lines)
    assert [one.name for one in read.mistakes] == [name]
    (one,) = read.mistakes
    assert one.help and one.place.line > 2


def test_a_line_that_cannot_be_read_still_opens_what_stands_under_it() -> None:
    read = bakery(WANT, "14 loaves of Ebb rye, of the", "  for A 4 loaves", "  for B 2")
    assert [(one.name, one.place.text.strip()) for one in read.mistakes] == [
        ("unreadable-line", "14 loaves of Ebb rye, of the"), ("line-unfinished", "for B 2"),
    ]  # fmt: skip


@every([("  makes 10 loaves at 0 g dough\n", "no-weight"), ("", "no-makes")], at_least=2)
def test_a_bread_that_says_amiss_what_it_makes_is_not_said_to_be_made_by_weight(makes: str, name: str) -> None:
    bread = PLAIN_LOAF.replace("  makes 10 loaves at 900 g dough\n", makes, 1)
    assert [one.name for one in bakery_of(f"plan Market\n  on 2026-11-28\n  {WANT}\n{bread}").mistakes] == [name]


def test_a_heading_that_cannot_be_read_says_nothing_of_what_is_made() -> None:
    bread = PLAIN_LOAF.replace("  overall\n", "  overall with\n")
    text = f"plan Market\n  on 2026-11-28\n  {WANT.replace('loaves', 'rolls')}\n{bread}"
    assert [one.name for one in bakery_of(text).mistakes] == ["no-such-piece", "unreadable-line"]


def test_no_hour_is_too_far_from_a_day_that_cannot_be_read() -> None:
    text = f'plan Market\n  on 2026-11-28 "x\n  {WANT}\n  hands Tom 2026-11-27 16:00 to 22:00\n{PLAIN_LOAF}'
    assert [one.name for one in bakery_of(text).mistakes] == ["quote-unclosed"]


def test_an_appointment_may_be_with_a_step_that_cannot_be_read() -> None:
    bread = PLAIN_LOAF.replace("    divide\n", "    divide and so on\n")
    text = f"plan Market\n  on 2026-11-28\n  {WANT}\n  divide Plain loaf Fri 12:00\n{bread}"
    assert [one.name for one in bakery_of(text).mistakes] == ["unreadable-line"]


def test_a_mistake_in_a_standing_order_is_told_at_its_line_once() -> None:
    read = bakery("orders", WANT, more="order Quay cafe\n  every Sat\n  Plane loaf 4 loaves\n")
    assert [(one.name, one.place.text.strip()) for one in read.mistakes] == [("no-such-bread", "Plane loaf 4 loaves")]


OVER = """\
kitchen House
  oven mother
    heat electric
    holds 24 loaves, or 6 rounds
    recovers 4 min
  mixer spiral
    takes 6-45 kg dough
  packs loaves and rolls after 2 h
  hands 2
"""


def files(**texts: str) -> Bakery:
    from manchet.source.text import SourceText
    from manchet.workspace.bakery import read

    return read([SourceText(f"{path.replace('__', '/')}.bake", text) for path, text in texts.items()])


def test_a_second_block_holds_for_the_plans_of_its_file_thing_by_thing() -> None:
    day = "plan Market\n  on 2026-11-28\n  Plain loaf 12 loaves, ready 06:00\n"
    over = "kitchen House\n  oven mother\n    holds 30 loaves, or 20 plaits\n    decks 2\n  packs rolls after 40 min\n  tub blue\n    count 3\n"
    read = files(a__house=OVER, b__loaf=PLAIN_LOAF, b__market=over + day, b__plain=day.replace("Market", "Other"))
    assert read.mistakes == ()
    market, other = sorted(read.plans, key=lambda one: one.name)
    (oven,) = market.kitchen.ovens
    assert (oven.heat, oven.recovers, oven.decks) == ("electric", 240, 2)
    assert set(oven.holds) == {(30, "loaves"), (6, "rounds"), (20, "plaits")}
    assert dict(market.kitchen.packs) == {"loaves": 7200, "rolls": 2400}
    assert [one.name for one in market.kitchen.vessels] == ["blue"]
    assert (market.kitchen.mixers, market.kitchen.hands) == (other.kitchen.mixers, 2)
    assert other.kitchen == read.kitchens[0] == read.kitchen_for("b/loaf.bake")
    assert len(read.kitchens) == 1


def test_anywhere_else_a_second_block_is_an_error() -> None:
    assert [one.name for one in files(a=OVER, b=OVER).mistakes] == ["two-blocks-one-name"]
    day = "plan Market\n  on 2026-11-28\n  Plain loaf 12 loaves, ready 06:00\n" + PLAIN_LOAF
    assert [one.name for one in files(a=OVER, b=OVER + OVER + day).mistakes] == ["two-blocks-one-name"]


def test_a_plan_is_made_in_the_kitchen_of_its_own_file_else_the_nearest() -> None:
    day = "plan Market\n  on 2026-11-28\n  Plain loaf 12 loaves, ready 06:00\n"
    house, shop = "kitchen House\n  hands 1\n", "kitchen Shop\n  hands 2\n"
    own = files(a=house, b__shop=shop + day + PLAIN_LOAF)
    near = files(a=house, b__shop=shop, b__day=day + PLAIN_LOAF)
    far = files(b__shop=shop, c=house, d__day=day + PLAIN_LOAF)
    assert [one.plans[0].kitchen.name for one in (own, near, far)] == ["Shop", "Shop", "House"]

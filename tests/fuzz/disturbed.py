"""A text typed by a hasty hand: other spaces, tabs, long units, capitals, commas, clauses in another order. It says the same."""

from __future__ import annotations

import random
import re
from collections.abc import Callable

LONG = {
    "g": "grams",
    "kg": "kilos",
    "lb": "lbs",
    "oz": "ounces",
    "min": "minutes",
    "h": "hours",
    "s": "secs",
    "ml": "mls",
}
CLAUSE = re.compile(
    r"(?P<covered>covered)|(?P<time>[0-9]+(?:-[0-9]+)? (?:min|h|s)(?: a side)?)|(?P<at>at [0-9]+ [CF])|(?P<to>to [0-9]+ [CF](?: core)?)"
    r"|(?P<folds>with [0-9]+ folds every [0-9]+ min)|, (?P<beside>steam|vent open|vent closed|lid on|lid off|loses [0-9]+%)"
)
STEP = re.compile(r"(mix (?:slow|fast|by hand)|rest|ripen|ferment|prove|retard|bake|cool|simmer|boil|heat)(?: (.*))?")


def disturbed(text: str, rng: random.Random) -> str:
    """As text in its normal form might be typed by one who never saw it."""
    tabs = rng.random() < 0.2
    rows: list[str] = []
    for row in text.split("\n"):
        body = row.lstrip(" ")
        indent = row[: len(row) - len(body)]
        if tabs and len(indent) % 2 == 0:
            indent = "\t" * (len(indent) // 2)
        body, mark, remark = body.partition("#")
        body = body.rstrip(" ")
        if '"' not in body and body.strip() and not mark:
            for change in rng.sample(CHANGES, k=rng.choice((0, 1, 2, 3))):
                body = change(body, rng)
        elif mark and body and '"' not in body and remark[:1] == " ":
            body += " " * rng.randint(1, 9)
        elif mark and body:
            body = row.strip(" ").partition("#")[0]
        elif '"' in body and rng.random() < 0.3 and body.count('"') == 2:
            body = body.replace('"', "“", 1).replace('"', "”", 1)
        rows.append(f"{indent}{body}{mark}{remark}{' ' * rng.choice((0, 0, 0, 1, 4)) if body or mark else ''}")
        if not body and not mark and rng.random() < 0.3:
            rows += [" " * rng.choice((0, 2))] * rng.randint(1, 3)
    return "\n".join(rows) + "\n" * rng.choice((0, 0, 1, 3))


WITHIN_A_FIGURE = re.compile(r"(?:[0-9½⅓⅔¼¾⅛⅜⅝⅞-]|\b(?:d|h|min|lb|kg|least|most|at))$")


def _spaces(body: str, rng: random.Random) -> str:
    """Other spaces, but for those within a figure."""
    first, *rest = body.split()
    for word in rest:
        first += (" " if WITHIN_A_FIGURE.search(first) else " " * rng.choice((1, 1, 2, 4))) + word
    return first


def _long_units(body: str, rng: random.Random) -> str:
    return re.sub(
        r"(?<=[0-9])(?<!lb [0-9])(?<!h [0-9]{2}) (min|h|s|g|kg|lb|oz|ml)$", lambda unit: f" {LONG[unit[1]]}", body
    )


def _percent(body: str, rng: random.Random) -> str:
    return re.sub(r"(?<=[0-9])%", " %", body)


def _no_space(body: str, rng: random.Random) -> str:
    return re.sub(r"(?<=[0-9]) (min|h|g|kg|C|F|mm|cm)\b(?! [0-9]+ (?:min|g)\b)", r"\1", body, count=1)


def _degrees(body: str, rng: random.Random) -> str:
    return re.sub(r"(?<=[0-9]) ?([CF])\b", r"°\1", body)


def _dash(body: str, rng: random.Random) -> str:
    return re.sub(r"(?<=[0-9])-(?=[0-9]+(?:-[0-9]+)? (?:min|h|s|d)\b)", rng.choice(("–", " - ", "—")), body)


def _fractions(body: str, rng: random.Random) -> str:
    return re.sub(r"(?<=[0-9])½", " 1/2", body)


def _capital(body: str, rng: random.Random) -> str:
    found = STEP.fullmatch(body)
    return body[0].upper() + body[1:] if found else body


def _clauses(body: str, rng: random.Random) -> str:
    """The clauses of a plain step in another order, with commas or without."""
    step = STEP.fullmatch(body)
    if step is None or not step[2]:
        return body
    found = [next(filter(None, one.groups())) for one in CLAUSE.finditer(step[2])]
    if len(CLAUSE.sub("", step[2]).strip()) or len(found) < 2:
        return body
    rng.shuffle(found)
    if re.search(r"steam [0-9]", " ".join(found)):
        return body  # for how long is the steam's then
    return step[1] + "".join(rng.choice((" ", ", ", ",")) + one for one in found)


def _and(body: str, rng: random.Random) -> str:
    return re.sub(r" and ", ", ", body) if re.match(r"(add|hold back) ", body) else body


CHANGES: tuple[Callable[[str, random.Random], str], ...] = (
    _spaces, _long_units, _percent, _no_space, _degrees, _dash, _fractions, _capital, _clauses, _and,
)  # fmt: skip

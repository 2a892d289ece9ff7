"""Signs around a line and its figures, and figures as they are written elsewhere."""

from __future__ import annotations

from decimal import Decimal

from manchet.syntax.loose.rules import Rewriter, any_of, rule
from manchet.syntax.loose.words import NUMBERS, UNITS_WRITTEN

SIGNS: tuple[Rewriter, ...] = (
    # a bullet, a box to tick, a number of the list
    rule(r"^(?:[-*•·▪●◦‣□☐☑✓–]|[+>](?= )|\[[ x]?\])\s*(?=[^\W_])", ""),
    rule(r"^\(?[0-9]{1,2}[.)]\s*(?=[^\W\d_])", ""),
    rule(r"^step [0-9]{1,2}\s*[.:)–-]\s*(?=[^\W\d_])", ""),
    # the end of a sentence
    rule(r"(?<!\.[a-z])\s*[.;:,]+\s*$", ""),
    # a sign between a name and its figure, or behind a heading's word
    rule(r"(?<=[^\W\d_])\s*:(?=\s|$|\")", ""),
    rule(r"(?<=[A-Za-zÀ-ÿ)%])\s*(?:=|\||\.{2,}|…|\s[-–](?=\s))\s*(?=[0-9½⅓⅔¼¾⅛⅜⅝⅞])", " "),
    rule(r"(?<=[0-9])['’](?=[0-9]{3}\b)", ""),
)

FIGURES: tuple[Rewriter, ...] = (
    rule(r"(?<![0-9,.])([0-9]+),([0-9]{1,2})(?![0-9,.])(?=\s*[a-z%°'#])", r"\1.\2"),
    rule(r"\bhalf a kilo(?:gram(?:me)?)?\b", "500 g"),
    rule(r"([0-9]+(?:\.[0-9])?) ?‰", lambda m: f"{Decimal(m[1]) / 10:f}%"),
    rule(
        rf"\b({any_of(NUMBERS)})(?= (?:weeks?|(?:to|or) (?:{any_of(NUMBERS)}) weeks)\b)",
        lambda m: NUMBERS[m[1].lower()],
    ),
    rule(r"\ba week\b", "7 d"),
    rule(r"(?<![\w.,/½⅓⅔¼¾-])([0-9]+)(?: ?(?:-|to|or) ?([0-9]+))? weeks?\b", lambda m: _weeks(m[1], m[2])),
    rule(r"\ban hour and a half\b", "1 h 30 min"),
    rule(r"\b(?:a )?quarter of an hour\b", "15 min"),
    rule(r"\bhalf an hour\b", "30 min"),
    rule(r"\ban? hour\b", "1 h"),
    rule(rf"\b({any_of(NUMBERS)})(?= <counted>\b)", lambda m: NUMBERS[m[1].lower()]),
    rule(r"(?<![\w.,/-])([0-9]+) dozen\b", lambda m: str(12 * int(m[1]))),
    rule(r"\ba dozen\b", "12"),
    # every unit by its short form
    rule(
        rf"(<n>) ?({any_of(UNITS_WRITTEN)})\b\.?(?!\w)",
        lambda m: f"{m[1]} {UNITS_WRITTEN[m[2].lower()]}",
    ),
    rule(r"(<n>) ?(g|kg|lb|oz|ml|l|h|min|s|cups?|tbsps?|tsps?|tbs)\.(?=\s|$)", r"\1 \2"),
    rule(r"(<n>) ?(kg|g|lb|oz|ml|l|cl|dl|min|h|s|C|F)(?=[\s,;/)-]|$)", r"\1 \2"),
    rule(r"(<n>)#(?=\s|$)", r"\1 lb"),
    rule(r"(<n>)\s*(?:per cent|percent|pct)\b", r"\1%"),
    rule(r"\bper cent\b", "%"),
    # two units of one figure
    rule(r"(?<!\bbetween )(?<![0-9.])(<n> (?:kg|lb|l|h|d))(?:,| and| \+| &)? (?=<n> (?:g|oz|ml|min|h)\b)", r"\1 "),
    rule(
        r"(?<![0-9.])(<n> (?:gal|qt|pt|cups?|floz|tbsp))(?:,| and| plus| \+| &)? (?=<n> (?:cups?|floz|tbsp|tsp)\b)",
        r"\1 ",
    ),
)


def _weeks(*weeks: str | None) -> str:
    return f"{'-'.join(str(7 * int(each)) for each in weeks if each)} d"

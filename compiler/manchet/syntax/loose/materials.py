"""An ingredient and its amount, in whatever order they stand, with what only describes."""

from __future__ import annotations

import re

from manchet.quantities.reading import figure_at
from manchet.syntax.describing import DESCRIBING
from manchet.syntax.loose.rules import NUMBER, Rewriter, any_of, rule
from manchet.syntax.mistakes.lookalikes import never_weighed
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED
from manchet.syntax.tokens import KINDS, WEIGHTS

_VERBS = frozenset(OPENINGS[UNLESS_WEIGHED])


def beside(text: str) -> str:
    """A figure or a word of ours in brackets is one beside them."""
    if text.partition(" ")[0].lower() in _VERBS:
        return re.sub(r"\s*\(([^()]*)\)", r" \1 ", text)
    return re.sub(r"\s*\(\s*((?:at )?<n>[^()]*)\s*\)".replace("<n>", "[0-9½⅓⅔¼¾]"), r" \1", text)


def _warm(text: str) -> str:
    """`water 300 g (28 C)`, `water at 28 C 300 g`, `water @ 28 C 300 g`, `water 300 g 28 C`: a temperature behind a liquid is its own."""
    match = re.fullmatch(
        r"(?P<name>[^\d,@]*?[^\W\d_]),? ?(?:at |@ ?)?(?P<warm><n> [CF]),? (?P<amount>.*[^CF\s])".replace("<n>", NUMBER),
        text,
    )
    if match is None:
        match = re.fullmatch(
            r"(?P<name>[^\d,]*?[^\W\d_]) (?P<amount>.*[^\s,]),? (?:at )?(?P<warm><n> [CF])".replace("<n>", NUMBER), text
        )
    if match is None or text.partition(" ")[0].lower() in _VERBS or " at " in match["amount"]:
        return text
    if not _is_amount(match["amount"]):
        return text
    return f"{match['name']} {match['amount']} at {match['warm']}"


def _is_amount(text: str) -> bool:
    figure = figure_at(text, 0)
    return figure is not None and figure.length == len(text) and KINDS[figure.unit] in WEIGHTS


def _amount_first(text: str) -> str:
    """`50 g of butter` is `butter 50 g`, and `2 eggs` are `eggs 2 whole`."""
    figure = figure_at(text, 0)
    if figure is None or figure.length == len(text):
        return text
    amount, rest = text[: figure.length], text[figure.length :].lstrip(" ,")
    rest = re.sub(r"^(?:of (?:the )?|de |d['’]|di |von )", "", rest)
    kind = KINDS[figure.unit]
    if kind == "WHOLE" and rest.split(" ")[-1].rstrip("s") in _WHOLE:
        return f"{rest} {amount}"
    if kind == "NUMBER":
        rest = re.sub(r"^whole (?=\w)", "", rest)
        name, comma, tail = rest.partition(",")
        if amount.isdigit() and not re.search(r"\d", rest) and name.split(" ")[-1].lower().rstrip("s") in _WHOLE:
            return f"{name if int(amount) < 2 or name.endswith('s') else name + 's'} {amount} whole{comma}{tail}"
        return text
    if kind not in WEIGHTS or re.search(r"[0-9]", rest.partition(",")[0]):
        return text
    name, comma, tail = rest.partition(",")
    return f"{name.strip()} {amount}{comma}{tail}" if re.match(r"[^\W\d_]", name) else text


_WHOLE = ("egg", "yolk", "egg white")


def _out_of_its_packet(text: str) -> str:
    """`7g sachet instant yeast`, `1 x 7 g sachet of instant yeast`: what one weighs is said."""
    match = re.fullmatch(
        rf"(?:1 ?x ?)?(<n> ?(?:k?g|oz|lb|ml)) {PACKED} (?:of )?([^\W\d_].*)".replace("<n>", NUMBER), text, re.IGNORECASE
    )
    return f"{match[2]} {match[1]}" if match else text


PACKED = r"(?:packets?|packages?|pkgs?\.?|sachets?|envelopes?|cubes?|cans?|jars?|tins?|bags?|bottles?)"
"""What things are sold in."""

_KIND_BEHIND = re.compile(
    r"(yeast) (.*[0-9] ?(?:%|k?g|oz|tsp|tbsp)),? \(?(fresh|instant|active dry|dry|dried)\)?", re.IGNORECASE
)


def _kind_behind(text: str) -> str:
    """`yeast 0.3% fresh`: the one word without which its name is a question."""
    match = _KIND_BEHIND.fullmatch(text)
    return f"{match[3].lower()} {match[1]} {match[2]}" if match and _is_amount(match[2]) else text


def _amount_after_at(text: str) -> str:
    """`levain @ 20%`: an amount behind the sign of a price list."""
    match = re.fullmatch(r"([^\W\d_][^@]*?) ?(?:@|\bat\b) ?(<n>.*)".replace("<n>", "[0-9½⅓⅔¼¾]"), text)
    if match is None or not _is_amount(match[2]) or match[1].split(" ")[0].lower() in _VERBS or never_weighed(match[1]):
        return text
    return f"{match[1]} {match[2]}"


def _amount_in_its_place(text: str) -> str:
    """A comma between a name and its amount: `butter, 50 g`, `bread flour,100%`, `rye flour type 1150, 400 g`."""
    match = re.fullmatch(r"([^\W\d_](?:[^,\d]*,\s*|[^,]*, ))(?<=,|\s)(<n>.*)".replace("<n>", "[0-9½⅓⅔¼¾]"), text)
    return (
        f"{match[1].rstrip(' ,')} {match[2]}"
        if match and _is_amount(match[2]) and match[1].split(" ")[0].lower() not in _VERBS
        else text
    )


_DESCRIBED = rf"(?:(?:{any_of(DESCRIBING)})(?: and |,? )?)+"


def _described(text: str) -> str:
    """`butter 50 g, softened`, `butter (softened) 50 g`: words that only describe stand before the name."""
    text = re.sub(r"^(butter .*?),? \(?(?:at )?room temperature\)?$", r"\1, softened", text, flags=re.IGNORECASE)
    name, words, amount = "", "", ""
    for pattern in _TAILS:
        match = pattern.fullmatch(text)
        if match is not None and _is_amount(match["amount"]):
            name, words, amount = match["name"], match["words"], match["amount"]
            return f"{words.strip(' ,').replace(',', '').lower()} {name} {amount}"
    return text


_NAME = r"(?P<name>[^\W\d_][^,()]*?)"
_TAILS = tuple(
    re.compile(pattern, re.IGNORECASE)
    for pattern in (
        rf"{_NAME} (?P<amount>[0-9½⅓⅔¼¾][^,()]*?),? ?\((?P<words>{_DESCRIBED})\)",
        rf"{_NAME} (?P<amount>[0-9½⅓⅔¼¾][^,()]*?), (?P<words>{_DESCRIBED})",
        rf"{_NAME} ?\((?P<words>{_DESCRIBED})\) (?P<amount>[0-9½⅓⅔¼¾][^,()]*)",
        rf"{_NAME}, (?P<words>{_DESCRIBED}) (?P<amount>[0-9½⅓⅔¼¾][^,()]*)",
    )
)


def boiling(text: str) -> str:
    """`boiling water 200%`, `water 200%, boiling`, `all of the boiling water`: so hot it is when it has left the kettle."""
    if re.search(r" at <n>".replace("<n>", NUMBER), text):
        return text
    line = " ".join(text.split())
    for pattern in _BOILING:
        match = pattern.fullmatch(line)
        if match is not None and ("take" in match.groupdict() or _is_amount(match["amount"])):
            before = match["take"] if "take" in match.groupdict() else ""
            after = "" if before else f" {match['amount']}"
            return f"{before}{match['liquid'].lower()}{after} at {KETTLE} C"
    return text


KETTLE = 98
"""Water that has boiled, as it comes out of the kettle: common practice."""

_LIQUID = "(?P<liquid>water|milk)"
_BOILING = tuple(
    re.compile(pattern.replace("<b>", "(?:boiling(?: hot)?|freshly boiled)"), re.IGNORECASE)
    for pattern in (
        rf"<b> {_LIQUID} (?P<amount>[0-9½⅓⅔¼¾⅛⅜⅝⅞][^,()]*)",
        rf"{_LIQUID} (?P<amount>[0-9½⅓⅔¼¾⅛⅜⅝⅞][^,()]*?),? \(?<b>\)?",
        rf"{_LIQUID},? \(?<b>\)? (?P<amount>[0-9½⅓⅔¼¾⅛⅜⅝⅞][^,()]*)",
        rf"(?P<take>(?:all|what is left) of the )<b> {_LIQUID}",
    )
)


def _counted(text: str) -> str:
    """`eggs x 3`, `eggs 3 pcs`; but `score x 3` and `divide 12 pcs` are steps."""
    return text if text.partition(" ")[0].lower() in _VERBS else _PIECES(_CROSS(text))


_CROSS = rule(r"(?<=[^\W\d_]) x ([0-9]+)$", r" \1 whole")
_PIECES = rule(r"(?<!\bin)(?<!into)(?<!\bto) ([0-9]+) (?:pcs?|pieces?|stk|stück|no|nos)\.?$", r" \1 whole")

COUNTS: tuple[Rewriter, ...] = (
    rule(
        r"^([^\W\d_][^,()]*?) (kg|gr?|ml|lt?)\.? ([0-9]+(?:\.[0-9]+)?)$", lambda m: f"{m[1]} {m[3]} {m[2].rstrip('rt')}"
    ),
    rule(r"\blevel (?=(?:tablespoons?|teaspoons?|cups?|tbsps?|tsps?|tbs)\b)", ""),  # all spoons of ours are level
    _counted,
)

_LEFT_OUT = r"(?:optional|if you like|if liked|if wanted|if desired|may be left out)"

OPTIONAL: tuple[Rewriter, ...] = (
    rule(r"^optional:? (?=[^\W\d_])(.*[0-9½⅓⅔¼¾%].*)$", r"\1, optional"),
    rule(rf"^([^\W\d_][^\d,()]*?),? ?\({_LEFT_OUT}\) (?=[0-9½⅓⅔¼¾])(.*)$", r"\1 \2, optional"),
    rule(rf"(?<=[\w%]),? ?\(?{_LEFT_OUT}\)?$", ", optional"),
)
"""What the baker may leave out."""

ASKED: tuple[Rewriter, ...] = (
    rule(r"(<n>(?: ?[a-z%]+)?) to (<n> ?[a-z%]+)(?=,? (?:or )?(?:as|by feel|to feel|depending)\b)", r"\1-\2"),
    rule(
        r"(<n> ?[a-z%]*-<n>(?: ?[a-z%]+)?),? (?:or )?(?:as (?:needed|required|necessary)|by feel|to feel|depending on (?:the )?flour"
        r"|as the dough (?:asks|needs|wants)|as the flour (?:needs|wants|takes|demands))$",
        r"\1, as the flour asks",
    ),
)

MATERIALS: tuple[Rewriter, ...] = (
    *COUNTS, *OPTIONAL, *ASKED, _amount_after_at, _out_of_its_packet, _kind_behind, _amount_first, _amount_in_its_place, _warm, _described,
)  # fmt: skip

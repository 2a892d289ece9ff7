"""The words of a step: how it begins, and what else is said of it."""

from __future__ import annotations

import re

from manchet.syntax.loose.rules import Rewriter, any_of, rule
from manchet.syntax.loose.words import OPENING_PHRASES, TOUCHING, TOUCHING_WITH

VESSELS = "(?:tin|pan|tray|basket|banneton|mould|mold|couche|cloth|board|peel)s?"
"""What a piece is put in or on: after `shape into` it is no shape."""

_SPEEDS = {"1st": "1", "first": "1", "2nd": "2", "second": "2", "3rd": "3", "third": "3"}
_SPEED_WORDS = {"slow": "slow", "low": "slow", "fast": "fast", "high": "fast"}


def _moved_after(m: re.Match[str]) -> str:
    return f"vent {'open' if m[2].lower() == 'open' else 'closed'} after {m[1]}"


STEP_WORDS: tuple[Rewriter, ...] = (
    rule(r"^(?:and |then |now |next,? )+(?=\w)", ""),
    rule(
        rf"^({any_of(OPENING_PHRASES)})(?!\w)",
        lambda m: OPENING_PHRASES[m[1].lower()],
    ),
    rule(r"^hold (.+) back$", r"hold back \1"),
    rule(r"\bw/ ?(?=[^\W\d_])(?!o\b)", "with "),
    rule(r"(?<= )w (?=(?:steam|lid|folds?)\b)", "with "),
    rule(r"\bw/o (?=[^\W\d_])", "without "),
    # the mixer's speeds
    rule(r"^mix (?:on|in|at) speed (?=[0-9])", "mix speed "),
    rule(
        r"^mix (?:on|in|at) (1st|2nd|3rd|first|second|third)(?: speed| gear)?\b",
        lambda m: f"mix speed {_SPEEDS[m[1].lower()]}",
    ),
    rule(r"^mix (?:on|in|at) (slow|low|fast|high)(?: speed| gear)?\b", lambda m: f"mix {_SPEED_WORDS[m[1].lower()]}"),
    rule(r"^mix (?:slowly|gently)\b|^(?:slowly|gently) mix\b", "mix slow"),
    rule(r"^mix quickly\b", "mix fast"),
    rule(r"^mix (?:with (?:the )?)?hands?\b", "mix by hand"),
    # shapes
    rule(r"\bseam[- ]?side[- ](up|down)\b|\bseam-(up|down)\b", lambda m: f"seam {(m[1] or m[2]).lower()}"),
    rule(r"^shape to (?=(?:an? )?[^\W\d_])", "shape into "),
    rule(r"^shape (?:(?:into|in|as) )?(?:a )?(?:round|rounds|ball|balls)$", "shape round"),
    rule(rf"^shape (?:into|as) (?:an? )?(?!.*\b{VESSELS}\b)(?=\w)", "shape as "),
    rule(
        r"^shape ((?:(?:tight|loose|small|large|short|long) )?(?:boules?|batards?|bâtards?|baguettes?|rings?|knots?|plaits?|batons?|bloomers?|wreaths?))$",
        r"shape as \1",
    ),
    rule(r"^(shape (?:round|long|oval|flat)) and then\b", r"\1"),
    # where to
    rule(r"^place (?:into|inside) ", "place in "),
    rule(r"^place (?:to|onto) (?=(?:the )?(?:couche|tray|board|peel|rack|bench|stone)s?\b)", "place on "),
    rule(
        r"^(?:put|transfer|tin|pan|load|move) (?:in|into|to) (?=(?:the )?(?:\w+ )*(?:couche|tray|board|peel|rack|bench|stone)s?$)",
        "place on ",
    ),
    rule(r"^(?:put|transfer|pan|move) (?:in|into|to) ", "place in "),
    rule(r"^(?:put|transfer|move) (?:on|onto) ", "place on "),
    rule(
        r"^(rest|ferment|prove|proof|bulk|ripen|retard|cool)\b(.*?) covered with (?:an? )?(?:damp )?(cloth|towel|tea towel)\b",
        r"\1\2 under \3",
    ),
    # the air of a prover
    rule(
        r",? ?(?:\bat |\bwith |\band |(?<= ))([0-9]+(?:-[0-9]+)?) ?% (?:relative |rel\.? )?(?:humidity|rh)\b",
        r", \1% humidity",
    ),
    rule(r",? ?(?:\bat |\bwith )?(?:relative )?(?:humidity|rh) (?:of )?([0-9]+(?:-[0-9]+)?) ?%", r", \1% humidity"),
    # lids, steam, vent, turning
    rule(r"\b(?:with (?:the )?lid on|with (?:a |the )?lid)\b", "lid on"),
    rule(
        r"\b(?:without (?:a |the )?lid|(?:with (?:the )?)?lid (?:removed|taken off)|with (?:the )?lid off)\b", "lid off"
    ),
    rule(r",? (?:without|no) steam\b", ""),
    rule(r"\bwith (?:schwaden|buée|buee|vapeur|vapore|vapor|dampf)\b", "with steam"),
    rule(r"\bsteam at (?:the )?(?:start|beginning|loading)(?: and (?:again )?(?=after\b))", "steam, steam "),
    rule(r"\bsteam at (?:the )?(?:start|beginning|loading)\b", "steam"),
    rule(r"\bsteamed$", "steam"),
    rule(r"\b(?:(?:more|another|again) steam|steam (?:again|once more))\b", "steam"),
    rule(r"\b(?:open (?:the )?(?:vents?|damper)|(?:vents?|damper) (?:opens|opened))(?= (?:after|at)\b)", "vent open"),
    rule(
        r"\b(?:(?:close|shut) (?:the )?(?:vents?|damper)|(?:vents?|damper) (?:closes|shuts|shut)|dampers? closed)"
        r"(?=$|,| (?:after|at)\b)",
        "vent closed",
    ),
    rule(r"\bafter (<n> (?:min|s)),? (open|close|shut) (?:the )?(?:vents?|damper)\b", _moved_after),
    rule(r"\bafter (<n> (?:min|s)),? (vent open|vent closed|steam(?: <n> (?:s|ml))?)\b", r"\2 after \1"),
    rule(r"\b(vent open|vent closed|steam(?: <n> (?:s|ml))?) at (?=<n> (?:min|s)\b)", r"\1 after "),
    rule(r"\brotate (?=after\b)", "turn "),
    rule(r"\b(?:losing|and loses) (?=<n>%)", "loses "),
    # thickness
    rule(r"^(?:sheet|roll|pin)(?: out)?(?: down)? to (?=<n>(?:-<n>)? ?(?:mm|cm|inch|in)\b)", "roll out to "),
    rule(r"(?<=mm|cm) (?:thick|thickness|in thickness)\b", ""),
    rule(r"(<n>) in(?=$| thick)", r"\1 inch"),
    # what touches the bread
    rule(r"^(?:glaze|wash) with (?=.*\b(?:each|in all)$)", "brush with "),
    rule(r"^(?:oil|butter|grease) (?:the )?(tins|trays|pans) with\b", r"grease \1 with"),
    rule(rf"^((?:{any_of(TOUCHING_WITH)}) with) (<n> (?:g|kg|oz)) (?:of )?(.+?) (each|in all)$", r"\1 \3 \2 \4"),
    rule(rf"^((?:{any_of(TOUCHING)})\b[^,\d]+), (?=<n> (?:g|kg|oz) (?:each|in all)$)", r"\1 "),
    rule(r"^dip into\b", "dip in"),
    rule(r"(?<=\d g) (?:apiece|a piece)\b", " each"),
    # what goes out again
    rule(
        r"^(?:drain(?: off)?|pour (?:away|out|off)|tip (?:away|off)|decant|strain off) (?:the )?(?:([^\W\d_][^\d,]*?) )?(?=<n> ?(?:k?g|%|m?l|dl|cl|lb|oz|cups?|qt|pt)\b|<n>%)",
        lambda m: f"pour off {m[1]} " if m[1] else "pour off ",
    ),
    rule(
        r"^pour off (<n> ?(?:k?g|m?l|dl|cl|lb|oz|cups?|qt|pt|%))(?: of)?(?: the)? ([^\W\d_][^\d,]*)$", r"pour off \2 \1"
    ),
    # lists
    rule(r"^(add|hold back)\b(.*)$", lambda m: m[1] + _list_of(m[2])),
    rule(r"^(add (?![^,]*\band\b)[^\d,()]*?[^\W\d_](?<! at)),? \(?(?:at )?(<n> [CF])\)?(?=$| in)", r"\1 at \2"),
    rule(r"^(add [^\d,]+?) (in <n> additions),? at (<n> [CF])$", r"\1 at \3 \2"),
    rule(r"^((?:return|top up with|all of the|keep [^ ]+ [^ ]+ as|lock in)) the (?=\w)", r"\1 "),
)


def _list_of(rest: str) -> str:
    rest = re.sub(r"\s+[&+]\s+", " and ", rest)
    rest = re.sub(r"(^ |, |\band )(?:in )?the (?=\w)", r"\1", rest)
    rest = re.sub(r"^ in (?=[^\W\d_])", " ", rest)
    return re.sub(r"\bin ([0-9]+) (?:parts|batches|lots|goes|stages)$", r"in \1 additions", rest)

"""A share of flour that does not say of which, and pieces at the head of a formula that say too little of themselves."""

from __future__ import annotations

import re

from manchet.syntax.loose.normal import LONGEST, normal_form
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.vocabulary import STAGES


def of_the_flour(t: LineTrouble) -> Fault | None:
    """A share of flour that does not say of which: of a stage it is always of all flour."""
    bracket = (
        re.search(r"\(([0-9.]+ ?%) (?:of )?(?:the )?flour\)$|([0-9.]+ ?%) flour$", t.body)
        if t.rule == "stage"
        else None
    )
    if bracket is not None:
        name = re.sub(r",?(?: with)?$", "", t.body[: bracket.start()].strip(" ,"))
        typed = f"{name} with {(bracket[1] or bracket[2]).replace(' ', '')} of all flour"
        words = {"written": bracket[0].strip("()"), "instead": f"`{typed}`"}
        return Fault("of-the-flour", *bracket.span(), words, choices(0, len(t.body), typed))
    shares = t.rule in ("stage", "swap")
    instead = "`of all flour`" if shares else "`of all flour`, or nothing for this stage's own"
    for at, raw in enumerate(t.raws):
        rest = [after.text for after in t.raws[at + 1 : at + 3]]
        if raw.text == "of" and (rest[:1] == ["flour"] or rest in (["the", "flour"], ["total", "flour"])):
            end = t.raws[at + 1 + rest.index("flour")].end
            out = LineFix(((len(t.body[: raw.start].rstrip()), end, ""),), f"leave out `{t.body[raw.start : end]}`")
            of_all = choices(raw.start, end, "of all flour")
            fixes = of_all if shares else (out,) if t.context == "overall" else (*of_all, out)
            words = {"written": t.body[raw.start : end], "instead": instead}
            return Fault("of-the-flour", raw.start, end, words, fixes)
    last = t.raws[-1]
    share = next((raw for raw in t.raws if raw.kind == "PERCENT"), None)
    if t.rule == "stage" and share is not None and "with" not in (raw.text for raw in t.raws):
        behind = t.body[share.end :]
        if not behind or re.fullmatch(r",? ?\(?@? ?(?:at )?[0-9]+ ?% (?:hydration|water)\)?", behind):
            name = t.body[: share.start].strip(" ,@(")
            typed = f"{name} with {share.text} of all flour"
            if name:
                words = {"written": share.text, "instead": f"`{typed}`"}
                return Fault("of-the-flour", share.start, share.end, words, choices(0, len(t.body), typed))
    if shares and last.kind == "PERCENT" and "with" in (raw.text for raw in t.raws):
        written, whole = t.body[last.start : last.end], short(t.body)
        words = {"written": written, "instead": f"`{whole} of all flour`"}
        fixes = (in_place(last.end, last.end, " of all flour", title=f"write `{written} of all flour`"),)
        return Fault("of-the-flour", last.start, last.end, words, fixes)
    return None


def share_of_a_stage(t: LineTrouble) -> Fault | None:
    """`rye sour 35%`, `tangzhong 5%` as a heading."""
    found = _SHARE.fullmatch(t.body) if len(t.body) <= LONGEST and t.context in ("formula", "variant") else None
    if found is None:
        return None
    typed = f"{found[1].strip()} with {found[2]}% of all flour"
    typed = normal_form(typed, t.context) or typed
    if typed.partition(" ")[0].lower() not in _STAGE_WORDS:
        return None
    words = {"written": f"{found[2]}%", "instead": f"`{typed}`"}
    return Fault("of-the-flour", *found.span(2), words, choices(0, len(t.body), typed))


_SHARE = re.compile(
    r"([^\W\d_][^,()%0-9]*?),? \(?([0-9.]+) ?%\)?(?:,? ?\(?@? ?(?:at )?[0-9]+ ?% (?:hydration|water)\)?)?"
)
_STAGE_WORDS = frozenset(stage.word.partition(" ")[0] for stage in STAGES)


def pieces_made(t: LineTrouble) -> Fault | None:
    """`12 buns 80 g` at the head of a formula."""
    found = _PIECES.fullmatch(t.body) if len(t.body) <= LONGEST and t.context == "formula" else None
    if found is None:
        return None
    typed = f"makes {found[1]} {found[2]} at {found[3]} {found[4]}"
    offer = f"write `{typed} dough` or `{typed} baked`"
    fixes = choices(0, len(t.body), f"{typed} dough", f"{typed} baked")
    return Fault("makes-unclear", 0, len(t.body), {"text": short(t.body), "offer": offer}, fixes)


_PIECES = re.compile(
    r"(?:makes?:? |yields?:? |for )?([0-9]+) ((?:[a-z]+ )?(?:loaves|rolls|buns|pieces|rounds|baguettes|boules|batards|sticks|pizzas|bases|bagels|croissants|cobs|baps))"
    r",? ?\(?(?:at|of|x|×|@|à)? ?([0-9.]+) ?(k?g|oz|lb)(?: each| apiece)?\)?",
    re.IGNORECASE,
)


def dough_made(t: LineTrouble) -> Fault | None:
    """`dough 1800 g` at the head of a formula."""
    found = _DOUGH.fullmatch(t.body) if len(t.body) <= LONGEST and t.context == "formula" else None
    if found is None:
        return None
    typed = f"makes {found[1] or found[3]} {(found[2] or found[4]).lower()} dough"
    words = {"text": short(t.body), "form": f"write `{typed}`"}
    return Fault("unreadable-line", 0, len(t.body), words, choices(0, len(t.body), typed))


_DOUGH = re.compile(
    r"(?:total |final |the )?dough(?: weight| yield| in all| total)?[:=]? ?(?:of )?([0-9.]+) ?(k?g|oz|lb)|([0-9.]+) ?(k?g|oz|lb) (?:of )?dough",
    re.IGNORECASE,
)


def pieces_times_weight(t: LineTrouble) -> Fault | None:
    """`tins: 12 x 900 g` at the head of a formula: how many and how heavy, and not whether before or after baking."""
    found = _TIMES.fullmatch(t.body) if len(t.body) <= LONGEST and t.context == "formula" else None
    if found is None:
        return None
    called = (found["called"] or "loaves").lower()
    in_tins = called in ("tin", "tins", "pan", "pans")
    typed = f"makes {found['number']} {'loaves' if in_tins else called} at {found['figure']} {found['unit'].lower()}"
    tin = ", and after the shaping `place in` with the tin's name" if in_tins else ""
    words = {"text": short(t.body), "offer": f"write `{typed} dough` or `{typed} baked`{tin}"}
    return Fault("makes-unclear", 0, len(t.body), words, choices(0, len(t.body), f"{typed} dough", f"{typed} baked"))


_TIMES = re.compile(
    r"(?:(?!makes|yields)(?P<called>[a-z]+s)[:=]? )?(?P<number>[0-9]+) ?[x×] ?(?P<figure>[0-9.]+) ?(?P<unit>k?g|oz|lb)",
    re.IGNORECASE,
)

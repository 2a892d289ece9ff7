"""A part of a step that cannot be read: the word it may have been meant as, else the form of that verb."""

from __future__ import annotations

import re
from collections.abc import Iterable

from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.mistakes.beginnings import slip_of
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place, left_out
from manchet.syntax.mistakes.forms import FORMS
from manchet.syntax.mistakes.heats import LEAST_HEAT, OF_TWO, bare_heat, two_heats
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.phrases import CLAUSES
from manchet.syntax.tokens import WEIGHTS, RawToken
from manchet.syntax.vocabulary import VERB, VERBS


def form_of(t: LineTrouble) -> str:
    """`write bake 30 min at 230 C`: the form of the verb a step begins with."""
    if t.rule == "step":
        for size in (2, 1):
            verb = " ".join(raw.text for raw in t.raws[:size])
            verb = _SAME.get(verb, verb)
            if verb == "divide":
                return "write `divide` alone: the pieces and their weight stand in `makes`"
            if verb in VERB:
                return f"write it like `{VERB[verb].example}`"
    return FORMS["clause_line"]


_SAME = {other: verb.word for verb in VERBS for other in verb.also}


def unreadable_part(t: LineTrouble) -> Fault | None:
    """What stands where a step stopped making sense."""
    if t.rule not in ("step", "clause_line"):
        return None
    warm = _heat_alone(t)
    if warm is not None:
        return warm
    if t.at >= len(t.spans):
        if t.raws[-1].kind == "NUMBER" and len(t.raws) > 1:
            return _number(t, len(t.raws) - 1)
        words = {"text": short(t.body), "form": form_of(t)}
        return Fault("line-unfinished", 0, len(t.body), words, without_last_word(t))
    start, end = t.spans[t.at]
    at = next(number for number, raw in enumerate(t.raws) if raw.end > start)
    raw, before = t.raws[at], t.raws[at - 1] if at else None
    if before is not None and before.kind == "NUMBER" and at > 1:
        return _number(t, at - 1)
    if raw.kind == "NUMBER":
        return _number(t, at)
    if raw.text == "for":
        words = {"text": "for", "form": f"leave out `for`; {form_of(t)}"}
        out = LineFix(((raw.start, len(t.body) - len(t.body[raw.end :].lstrip()), ""),), "leave out `for`")
        return Fault("unreadable-line", raw.start, raw.end, words, (out,))
    written = [piece for piece in t.raws[at:] if piece.end <= end] or [raw]
    return _meant(t, written)


_SIZE = re.compile(
    r"(?:\b(?:to|into|in) )?\b[0-9.]+ ?(?:mm|cm|in|inch)? ?[x×] ?[0-9.]+ ?(?:mm|cm|inch|inches|in)\b(?: (?:sheet|rectangle|square)s?\b)?"
)


def said_how(t: LineTrouble) -> Fault | None:
    """`cut 12 x 9 cm`, `score 3 times`, `roll out to 40 x 60 cm`: how it is done stands in quotes, figures and all."""
    size = _SIZE.search(t.body) if t.rule in ("step", "clause_line") and len(t.body) < LONGEST else None
    row = VERB.get(t.raws[0].text) if t.rule == "step" else None
    if size is not None and '"' not in t.body and not (row is not None and (row.said_how or row.needs_place)):
        words = {"text": size[0], "form": f'how large it is stands in quotes: `"{size[0]}"`'}
        return Fault("unreadable-line", *size.span(), words, choices(*size.span(), f'"{size[0]}"'))
    if row is None or not row.said_how or '"' in t.body or len(t.raws) < 3 or t.raws[1].text == "with":
        return None
    start = t.raws[1].start
    said = t.body[start:].partition(",")[0].rstrip()
    end = start + len(said)
    inside = [raw for raw in t.raws[1:] if raw.end <= end]
    if len(inside) < 2 or any(raw.kind in ("TIME", "TEMPERATURE") for raw in inside):
        return None
    words = {"text": short(said), "form": f'write `{t.raws[0].text} "{said}"`'}
    return Fault("unreadable-line", start, end, words, (in_place(start, end, f'"{said}"'),))


def _heat_alone(t: LineTrouble) -> Fault | None:
    """`bake 230 C 30 min`: a temperature that neither `at` nor `to` leads in."""
    end = t.spans[t.at - 1][1] if t.at else 0
    at = next((number for number, raw in enumerate(t.raws) if raw.end == end), 0)
    raw = t.raws[at]
    if not at or raw.kind != "TEMPERATURE" or t.raws[at - 1].text in ("at", "to") or set(t.expected) != {"SPOT"}:
        return None
    offer = f"write `at {raw.text}` for the heat around it, `to {raw.text}` for its own"
    fixes = choices(raw.start, raw.end, f"at {raw.text}", f"to {raw.text}")
    return Fault("unreadable-line", raw.start, raw.end, {"text": raw.text, "form": offer}, fixes)


def without_last_word(t: LineTrouble) -> tuple[LineFix, ...]:
    """A line that stops short of what its last word leads in: without that word."""
    last = t.raws[-1]
    before = t.body[: last.start].rstrip(" ,")
    return (LineFix(((len(before), len(t.body), ""),), f"leave out `{last.text}`"),) if before else ()


def _meant(t: LineTrouble, written: list[RawToken]) -> Fault:
    near = None
    size = min(len(written), 4)  # no phrase has more words
    while size and near is None:
        last = written[size - 1]
        near = nearest_part(" ".join(raw.text for raw in written[:size]), t.expected)
        size -= near is None
    if near is not None:
        last = written[size - 1]
        text = t.body[written[0].start : last.end]
        words = {"text": short(text), "form": f"did you mean `{near}`?"}
        return Fault("unreadable-line", written[0].start, last.end, words, choices(written[0].start, last.end, near))
    start, end = written[0].start, written[-1].end
    if "TEMPERATURE" in t.expected and t.at > 0 and "TIME" not in t.expected:
        before = t.body[slice(*t.spans[t.at - 1])]
        form = f"after `{before}` stands a figure; {form_of(t)}"
        return Fault("unreadable-line", start, end, {"text": short(t.body[start:end]), "form": form})
    said = t.body[start:end]
    row = VERB.get(t.raws[0].text) if t.rule == "step" else None
    if row is not None and row.touches and row.opens_with and t.raws[-1].text in ("each", "all", "apiece"):
        rest = t.body[t.raws[0].end :].strip().removeprefix(f"{row.opens_with} ")
        if t.raws[1].kind in WEIGHTS:
            offer = f"write `{re.sub(r' [0-9].*', '', row.example)} {rest}`"
            return Fault("touching-nothing", 0, t.raws[0].end, {"verb": row.word, "offer": offer})
        instead = f"{row.word} {row.opens_with} {rest}"
        words = {"text": short(said), "form": f"write `{instead}`"}
        return Fault("unreadable-line", start, end, words, (in_place(0, len(t.body), instead),))
    if t.rule == "step" and t.raws[0].text in VERB and VERB[t.raws[0].text].said_how and '"' not in said:
        said = t.body[start:].partition(",")[0].rstrip()
        end = start + len(said)
        quoted = (in_place(start, end, f'"{said}"'),)
        return Fault(
            "unreadable-line", start, end, {"text": short(said), "form": f'write `{t.raws[0].text} "{said}"`'}, quoted
        )
    if written[0].kind == "LENGTH":
        fixes = choices(start, end, f"to {said}")
        return Fault("unreadable-line", start, end, {"text": short(said), "form": f"write `to {said}`"}, fixes)
    words = {"text": short(t.body[start:end]), "form": form_of(t)}
    return Fault("unreadable-line", start, end, words, left_out(t.body, start, end))


def nearest_part(word: str, expected: Iterable[str]) -> str | None:
    """The phrase that `word` begins or is a slip of, of those whose tokens are expected."""
    allowed = set(expected)
    phrases = [
        " ".join((first, *phrase.rest))
        for first, group in CLAUSES.items()
        for phrase in group
        if phrase.token in allowed and len(first) > 2
    ]
    return slip_of(word, phrases)


def _number(t: LineTrouble, at: int) -> Fault:
    """A bare number: after `at` and `to` a temperature, in an oven's or a wait's place a time."""
    raw = t.raws[at]
    before = t.raws[at - 1]
    two = OF_TWO.match(t.body, raw.start)
    if two is not None and (before.text == "at" or int(two[1]) >= LEAST_HEAT <= int(two[2])):
        return two_heats(t, two)
    if (row := VERB.get(before.text)) is not None and row.said_how:  # `score 3`
        how = f'"{raw.text} times"'
        words = {"written": raw.text, "offer": f"write `{before.text} {how}` or `{before.text} {raw.text} min`"}
        return Fault("missing-unit", raw.start, raw.end, words, choices(raw.start, raw.end, how, f"{raw.text} min"))
    if before.text not in ("at", "to") and (heat := bare_heat(t, raw.start, raw.end)):
        return heat
    units = ("C", "F") if before.text in ("at", "to") else ("min", "h")
    fixes = tuple(in_place(raw.start, raw.end, f"{raw.text} {unit}") for unit in units)
    if before.text in ("at", "to"):
        start, offer = before.start, f"write `{before.text} {raw.text} C` or `{before.text} {raw.text} F`"
    elif before.text in ("into", "in", "on", "as"):
        start, offer, fixes = before.start, form_of(t), ()
    else:
        start, offer = (
            raw.start,
            f"write `{raw.text} min`, or with another unit; {form_of(t).removeprefix('write it ')}",
        )
    return Fault("missing-unit", raw.start, raw.end, {"written": t.body[start : raw.end], "offer": offer}, fixes)

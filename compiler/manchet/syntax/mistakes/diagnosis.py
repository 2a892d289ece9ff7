"""Why a line could not be read, in the words of the person who wrote it: the first reason that fits."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from itertools import islice, pairwise

from manchet.diagnostics.reports import list_of_words
from manchet.diagnostics.suggest import fold
from manchet.quantities.units import LONG_FORMS, UNITS
from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.mistakes.beginnings import of_another_trade, outside, pieces_of, unknown
from manchet.syntax.mistakes.characters import other_digit
from manchet.syntax.mistakes.days import DAY_REASONS
from manchet.syntax.mistakes.faults import REMARKS, Fault, LineTrouble, choices, in_place, left_out
from manchet.syntax.mistakes.for_the_bench import for_the_bench
from manchet.syntax.mistakes.forms import BY_EXAMPLE, FORMS, makes_of
from manchet.syntax.mistakes.heats import between_two_warmths, dough_warmth, falling, heading_with_remark, in_oven
from manchet.syntax.mistakes.lacking import LOOSE
from manchet.syntax.mistakes.lookalikes import never_weighed
from manchet.syntax.mistakes.odd_figures import fault_of, short, units_of, written_out
from manchet.syntax.mistakes.otherwise import (
    a_few,
    clock,
    degrees_of_no_scale,
    figure_in_words,
    gas_mark,
    heaped_spoon,
    kept_for,
    overnight,
    packet,
    room_warmth,
    then_another_heat,
    two_scales,
    two_steps,
    weighed_from_to,
    weighed_twice,
)
from manchet.syntax.mistakes.places import place_by_its_weight
from manchet.syntax.mistakes.prices import price_of_how_much, whose_money
from manchet.syntax.mistakes.prose import (
    add_after,
    add_when,
    adverb_before,
    dough_yield,
    eggs_weighed,
    of_a_fruit,
    slow_and_fast,
    speeds,
    steam_first,
    sum_of_two,
    two_things,
    two_verbs,
    until_unquoted,
    vent_at_the_end,
)
from manchet.syntax.mistakes.repeated import (
    fold_after,
    folds_alone,
    folds_without_a_count,
    folds_without_a_time,
    steam_again,
    turns_alone,
)
from manchet.syntax.mistakes.several_kinds import KINDS
from manchet.syntax.mistakes.shares import (
    dough_made,
    of_the_flour,
    pieces_made,
    pieces_times_weight,
    share_of_a_stage,
)
from manchet.syntax.mistakes.step_parts import nearest_part, said_how, unreadable_part, without_last_word
from manchet.syntax.mistakes.things_at_once import OF_THINGS
from manchet.syntax.mistakes.units_meant import shape_of, units
from manchet.syntax.nodes import MaterialNode
from manchet.syntax.openings import OF_A_DAY, OPENINGS, UNLESS_WEIGHED, WEIGHS
from manchet.syntax.tokens import WEIGHTS, RawToken, pieces

Reason = Callable[[LineTrouble], Fault | None]


def first_reason(trouble: LineTrouble) -> Fault:
    """The one report of a line that could not be read, if all of it is to be as the grammar has it."""
    for reason in OF_A_DAY_LINE if trouble.context in OF_A_DAY else REASONS:
        fault = reason(trouble)
        if fault is not None:
            return fault
    return _generic(trouble)


def is_plain_name(t: LineTrouble) -> bool:
    """Whether a line that is only a name may be one: a stage's, to be looked up. A figure, a comma or a number that
    wants a unit says no; the last number may belong to the name, as in `build 1`."""
    if any(raw.kind not in ("WORD", "NUMBER") for raw in t.raws):
        return len(t.raws) == 1 and t.raws[0].kind == "QUOTED"
    if any(reason(t) for reason in (_digits, _figures, _about)):
        return False
    lack = units(t)
    return lack is None or (lack.name == "missing-unit" and lack.end == len(t.body) and t.context != "composition")


def no_name(body: str) -> Fault | None:
    """The mistake in a line that is only words, and turned out to be no stage's name: `salt 2`, `knead`, a pinch."""
    t = LineTrouble(body, tuple(pieces(body)), "stage", "bare_name", ((0, len(body)),), 1, ())
    return next((fault for reason in _OF_A_NAME if (fault := reason(t))), None)


def no_ingredient(node: MaterialNode, line: str) -> Fault | None:
    """The mistake in a line that reads as an ingredient and its weight, and whose name nobody knows: a word of the trade, a
    number that a space parts in two."""
    body = f"{node.name.text} {line[node.amount.start : node.amount.end]}"
    if len(line) > LONGEST:
        return None
    t = LineTrouble(body, tuple(pieces(body)), "stage", "bare_name", ((0, len(body)),), 1, ())
    if t.raws[0].text == "divide" or never_weighed(node.name.text):
        return _divided(t._replace(rule="material")) or of_another_trade(t)
    whole_line = LineTrouble(line, tuple(pieces(line)), "stage", "material", ((0, len(line)),), 1, ())
    if (other := eggs_weighed(whole_line) or until_unquoted(whole_line)) is not None:
        return other
    if (warm := between_two_warmths(line)) is not None:
        return warm
    parted = re.search(r"([^\W\d_] +)([0-9]{1,3}) ([0-9]{3}(?:\.[0-9]+)?) ?(g|ml)\b", line)
    if parted is None:
        return None
    start, end = parted.start(2), parted.end()
    whole = f"{parted[2]}{parted[3]} {parted[4]}"
    fix = in_place(start, end, whole)
    words = {"written": line[start:end], "whole": f"{' '.join(line[:start].split())} {whole}"}
    return Fault("number-in-two", start, end, words, (fix,))


# ---- reasons, the surest first ---------------------------------------------------------------------


def _unclosed(t: LineTrouble) -> Fault | None:
    last = t.raws[-1]
    if last.kind != "UNCLOSED":
        return None
    inside = last.text[1:].strip()
    if not inside:
        return Fault("quote-unclosed", last.start, last.end, {"text": "…"})
    # Where a clause follows a comma it may have been swallowed: `until "doubled, 2 h at 25 C`.
    offset = t.body.index(inside, last.start)
    cuts = [offset + comma.start() for comma in islice(re.finditer(",", inside), 3)]
    fixes = tuple(
        in_place(at, at, '"', title=f'close them: `{t.body[last.start : at]}"`') for at in (*cuts, len(t.body))
    )
    return Fault("quote-unclosed", last.start, last.end, {"text": short(inside)}, fixes)


def _digits(t: LineTrouble) -> Fault | None:
    return other_digit(t.body)


def _comma(t: LineTrouble) -> Fault | None:
    for one, comma, two in _threes(t.raws):
        glued = one.end == comma.start and comma.end == two.start
        if one.kind == "NUMBER" and comma.kind == "COMMA" and glued and two.text[:1].isdigit():
            written = t.body[one.start : two.end]
            point = f"{one.text}.{two.text}"
            instead = f"`{point}`"
            if re.match(r"[0-9]{3}(?![0-9])", two.text):
                exact = re.sub(r"\.?0+(?![0-9.])", "", point)
                instead = f"`{one.text}{two.text}`, or `{exact}` if the comma is a decimal point"
            fixes = choices(one.start, two.end, point)
            if re.match(r"[0-9]{3}(?![0-9])", two.text):
                fixes = choices(one.start, two.end, f"{one.text}{two.text}", exact)
            return Fault("decimal-comma", one.start, two.end, {"written": written, "instead": instead}, fixes)
    return None


def _figures(t: LineTrouble) -> Fault | None:
    for raw in t.raws:
        if raw.kind == "WORD":
            if re.fullmatch(r"[0-9.]+e[+-]?[0-9]+[a-z%]*", raw.text):
                words = {"written": t.body[raw.start : raw.end]}
                return Fault("number-exponent", raw.start, raw.end, words, written_out(raw))
            if re.match(r"-[0-9.]", raw.text) and raw.start and t.raws[t.raws.index(raw) - 1].text in ("at", "to"):
                start, word = t.raws[t.raws.index(raw) - 1].start, t.body[: raw.start].split()[-1]
                words = {"written": t.body[start : raw.end], "offer": f"write `{word} {raw.text} C`"}
                return Fault("missing-unit", raw.start, raw.end, words, choices(raw.start, raw.end, f"{raw.text} C"))
            if re.match(r"-[0-9.]", raw.text):
                end = t.raws[-1].end
                fixes = choices(raw.start, end, t.body[raw.start + 1 : end])
                return Fault("negative-amount", raw.start, end, {"written": t.body[raw.start : end]}, fixes)
            if re.fullmatch(r"[0-9]{40,}.*", raw.text):
                return Fault("number-too-long", raw.start, raw.end, {"written": short(raw.text)})
        elif raw.fault and raw.fault not in REMARKS:
            return fault_of(raw, t.body)
    return None


_FIGURES = WEIGHTS | {"TIME", "TEMPERATURE", "LENGTH", "TURNS", "NUMBER"}
_PINCHES = {"pinch", "dash", "handful", "knob", "drizzle", "splash", "sprinkling", "touch", "bit", "glug", "some"}


def _about(t: LineTrouble) -> Fault | None:
    for one, two in _twos(t.raws):
        loose = one.kind == "WORD" and one.text in LOOSE and two.kind in _FIGURES
        if loose:
            offer = _loose_offer(two, t.rule)
            words = {"written": t.body[one.start : two.end], "offer": offer}
            return Fault("about-amount", one.start, two.end, words, choices(one.start, two.end, two.text))
    for raw in t.raws:
        if raw.kind == "WORD" and re.match(r"[~≈±][0-9.]", raw.text):
            return Fault(
                "about-amount",
                raw.start,
                raw.end,
                {"written": t.body[raw.start : raw.end], "offer": _loose_offer(raw, t.rule)},
                choices(raw.start, raw.end, raw.text.lstrip("~≈±")),
            )
    return None


def _loose_offer(raw: RawToken, rule: str) -> str:
    if raw.kind in ("WORD", "TIME", "TEMPERATURE") or rule in ("step", "clause_line"):
        return f"write `{raw.text.lstrip('~≈±')}`, or a range with both its ends"
    if raw.kind in WEIGHTS:
        return f"write `{raw.text}`; what is by feel is `add water as needed`, or `, to taste`"
    return "give a range, as in `40-50 min`"


def _to_range(t: LineTrouble) -> Fault | None:
    for one, word, two in _threes(t.raws):
        if two.kind == "TEMPERATURE" and in_oven(t) and (one.low or 0) > (two.low or 0):
            continue  # `bake at 450 to 205 F`: to its core
        if two.kind == "TEMPERATURE" and not t.body.endswith(("at ", "to "), 0, one.start):
            continue  # `mix fast 3 to 22 C`: the 3 lacks its unit
        if word.text in ("to", "until", "or") and one.kind == "NUMBER" and two.kind in _FIGURES and t.rule != "makes":
            written = t.body[one.start : two.end]
            down = two.kind == "TIME" and one.low is not None and two.low is not None and one.low > two.low
            smaller = {"d": "h", "h": "min", "min": "s"}.get(two.unit, "") if down else ""  # `45 to 1 h`
            instead = f"{one.text} {smaller}-{two.text}" if smaller else f"{one.text}-{two.text}"
            fixes = choices(one.start, two.end, instead)
            return Fault("to-as-range", one.start, two.end, {"written": written, "instead": instead}, fixes)
    return None


def _by_feel(t: LineTrouble) -> Fault | None:
    if t.context not in WEIGHS:
        return None
    for at, raw in enumerate(t.raws):
        if (
            raw.kind == "WORD"
            and raw.text in _PINCHES
            and (at == 0 or t.raws[at - 1].text in ("a", "an", "one", "1", "some") or at == len(t.raws) - 1)
        ):
            start = t.raws[at - 1].start if at else raw.start
            return _no_amount(t, start, raw.end)
    if t.rule == "bare_name" and all(raw.kind in ("WORD", "COMMA") for raw in t.raws):
        feel = (
            None
            if len(t.body) > LONGEST
            else re.search(r",?\s*(to taste|as needed|as required|q\. ?s\.?|q\. ?b\.?|qs|qb)$", t.body, re.IGNORECASE)
        )
        return _no_amount(t, *feel.span(1)) if feel else None
    return None


def _no_amount(t: LineTrouble, start: int, end: int) -> Fault:
    name = t.body[:start].strip(" ,") or re.sub("^of ", "", t.body[end:].strip()) or "salt"
    name = KINDS.get(fold(name), (name,))[0]
    return Fault("by-feel-amount", start, end, {"written": t.body[start:end], "name": short(name)})


def _amount_first(t: LineTrouble) -> Fault | None:
    first = t.raws[0]
    if t.context not in WEIGHS or first.kind not in WEIGHTS | {"NUMBER"} or len(t.raws) < 2 or t.raws[1].kind != "WORD":
        return None
    if first.kind == "NUMBER":
        unit = t.raws[1].text
        if unit.rstrip("s.") in UNITS or unit in LONG_FORMS:
            return None
    rest = re.sub(r"^(?:of |de |d['’]|di |von )", "", t.body[first.end :].strip())
    if any(raw.kind in WEIGHTS for raw in t.raws[1:]):
        return None
    name = re.split(r"\s*,|\s+(?=at\s|of all flour)", rest, maxsplit=1)[0]
    ways = (first.text,) if first.kind != "NUMBER" else units_of(first.text, t.context, name)
    typed = tuple(f"{name} {way}{rest[len(name) :]}" for way in ways)
    words = {"written": first.text, "instead": list_of_words(tuple(f"`{way}`" for way in typed))}
    return Fault("amount-first", first.start, first.end, words, choices(0, len(t.body), *typed))


def _divided(t: LineTrouble) -> Fault | None:
    """`divide into 90 g pieces`: how heavy they are stands in the head."""
    weight = next((raw for raw in t.raws if raw.kind == "MASS"), None)
    if weight is None or t.raws[0].text != "divide" or t.rule != "material":
        return None
    words = {"text": short(t.body), "form": pieces_of(weight.text)}
    return Fault("unreadable-line", 0, len(t.body), words, choices(0, len(t.body), "divide"))


def _lacks(t: LineTrouble) -> Fault | None:
    """What the rule still waits for where the line ends."""
    body, first = t.body, t.raws[0]
    ended = t.at >= len(t.spans)
    word = body[: t.spans[0][1]] if t.spans else first.text
    if t.rule == "makes":
        weight = next((raw for raw in t.raws if raw.kind == "MASS"), None)
        offer = f"write `{body} dough` or `{body} baked`" if weight is not None and ended else makes_of(body)
        fixes = choices(0, len(body), f"{body} dough", f"{body} baked") if weight is not None and ended else ()
        return Fault("makes-unclear", 0, len(body), {"text": short(body), "offer": offer}, fixes)
    if t.rule == "allow" and ended and len(t.spans) > 1:
        name = body[t.spans[1][0] : t.spans[1][1]]
        return Fault("why-allowed", 0, len(body), {"name": name, "instead": f'{word} {name} because "…"'})
    if (
        "QUOTED" in t.expected
        and t.rule in ("about", "allow", "setting", "clause_line", "step", "sale", "contact", "ask")
        and t.at > 0
    ):
        before = body[t.spans[t.at - 1][0] : t.spans[t.at - 1][1]]
        known = before in ("about", "because", "until", "why", "note", "picture", "if late", "source", *_QUOTED)
        if known and len(t.expected) < 4:
            rest = re.sub('["“”„]', "", body[t.spans[t.at - 1][1] :]).strip() or "…"
            start, end = (len(body) - 1, len(body)) if ended else (t.spans[t.at][0], len(body))
            quoted, figures = rest, ""
            if before == "until" and (swallowed := re.search(r",\s*(?=[0-9½¼¾])", rest)):
                quoted, figures = rest[: swallowed.start()], f", {rest[swallowed.end() :]}"
            instead = f'{before} "{quoted}"{figures}'
            fixes = () if rest == "…" else (in_place(t.spans[t.at - 1][0], len(body), instead),)
            return Fault("quotes-missing", start, end, {"word": before, "instead": instead}, fixes)
    if (
        ended
        and "NAME" in t.expected
        and t.rule in ("block", "kind", "top_up", "lock_in", "give_back", "branch", "variant", "without")
    ):
        return Fault("name-missing", 0, len(body), {"what": f"`{word}`", "instead": f"{word} NAME"})
    return None


def _name(t: LineTrouble) -> Fault | None:
    """A name that a comma or a quote cuts in two."""
    if t.rule != "material":
        return None
    weights = [raw for raw in t.raws if raw.kind in WEIGHTS]
    if t.raws[0].text in OPENINGS[UNLESS_WEIGHED] and weights and t.raws.index(weights[0]) > 1:
        before = t.raws[t.raws.index(weights[0]) - 1]
        near = nearest_part(before.text, ("_LOSES", "_STEAM"))
        if near:
            words = {"text": before.text, "form": f"did you mean `{near}`?"}
            fixes = choices(before.start, before.end, near)
            return Fault("unreadable-line", before.start, before.end, words, fixes)
    for raw in t.raws[: t.raws.index(weights[0])] if weights else ():
        if raw.kind in ("COMMA", "QUOTED"):
            name = t.body[: weights[0].start].strip()
            what = "a comma" if raw.kind == "COMMA" else "quotes"
            instead = f'"{name.replace(chr(34), "")}" {weights[0].text}'
            fixes = (in_place(0, weights[0].end, instead),)
            return Fault("name-needs-quotes", raw.start, raw.end, {"what": what, "instead": instead}, fixes)
    if len(weights) > 1:
        one, two = weights[0], weights[1]
        quoted = (
            f'if the first belongs to the name, put the name in quotes: `"{t.body[: two.start].strip()}" {two.text}`'
        )
        fixes = (
            in_place(one.start, two.end, two.text, title=f"keep `{two.text}`"),
            in_place(one.start, two.end, one.text, title=f"keep `{one.text}`"),
            in_place(0, two.end, f'"{t.body[: two.start].strip()}" {two.text}'),
        )
        words = {"first": one.text, "second": two.text, "offer": quoted}
        return Fault("weight-twice", two.start, two.end, words, fixes)
    return None


def _generic(t: LineTrouble) -> Fault:
    form = shape_of(t) if t.rule in BY_EXAMPLE else FORMS.get(t.rule, FORMS["bare_name"])
    if t.at >= len(t.spans):
        return Fault("line-unfinished", 0, len(t.body), {"text": short(t.body), "form": form}, without_last_word(t))
    start, end = t.spans[t.at]
    words = {"text": short(t.body[start:end]), "form": form}
    return Fault("unreadable-line", start, end, words, left_out(t.body, start, end))


_QUOTED = ("called", "store", "opened", "listed as", "name and address")

REASONS: tuple[Reason, ...] = (
    _unclosed, _digits, *OF_THINGS, whose_money, price_of_how_much, heading_with_remark, place_by_its_weight, share_of_a_stage, pieces_made, dough_made, pieces_times_weight, of_a_fruit, sum_of_two, eggs_weighed, dough_yield, speeds, slow_and_fast, adverb_before, add_after, add_when, until_unquoted, two_verbs, two_things, steam_first, vent_at_the_end, for_the_bench, gas_mark, two_scales, falling, dough_warmth, _figures, _comma, clock, a_few, _about, then_another_heat, _to_range, overnight,
    folds_alone, turns_alone, fold_after, folds_without_a_count, folds_without_a_time, steam_again, heaped_spoon, kept_for, two_steps, room_warmth, of_the_flour, of_another_trade, outside, packet, _by_feel, _amount_first, weighed_from_to, weighed_twice,
    degrees_of_no_scale, _divided, _name, _lacks, said_how, units, unreadable_part, unknown,
)  # fmt: skip


OF_A_DAY_LINE: tuple[Reason, ...] = (_unclosed, _digits, _figures, *DAY_REASONS)
"""Of a plan's or an order's line: what is odd in a dough's means something there."""

_OF_A_NAME: tuple[Reason, ...] = (
    overnight, of_the_flour, of_a_fruit, for_the_bench, dough_yield, speeds, adverb_before, folds_alone, turns_alone, fold_after, heaped_spoon, of_another_trade, packet, _by_feel, _amount_first, figure_in_words, units,
)  # fmt: skip


def _twos(raws: tuple[RawToken, ...]) -> Iterator[tuple[RawToken, RawToken]]:
    return pairwise(raws)


def _threes(raws: tuple[RawToken, ...]) -> Iterator[tuple[RawToken, RawToken, RawToken]]:
    return zip(raws, raws[1:], raws[2:], strict=False)

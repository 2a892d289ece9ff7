"""How a line begins: a word that is none of ours, a word of the trade for one of ours, a line in the wrong place."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from itertools import takewhile

from manchet.diagnostics.reports import list_of_words
from manchet.diagnostics.suggest import LONGEST, distance, nearest
from manchet.syntax.mistakes.faults import Fault, LineTrouble, choices
from manchet.syntax.mistakes.kitchen_words import OF_A_KITCHEN, of_a_kitchen
from manchet.syntax.mistakes.lookalikes import AS_A_FOLD, TWINS, answer_to, in_an_oven, lookalike
from manchet.syntax.mistakes.meant import INSTEAD
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.mistakes.repeated import folds_counted
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED, WORKS, Openings
from manchet.syntax.tokens import WEIGHTS, pieces
from manchet.syntax.vocabulary import VERB


def of_another_trade(t: LineTrouble) -> Fault | None:
    """A word of the trade that is not one of this language, or a slip of one, and what to write instead."""
    words = [raw.text.rstrip(":") for raw in takewhile(lambda raw: raw.kind == "WORD", t.raws[:4])]
    if (
        t.context in OF_A_KITCHEN
        and t.rule in ("bare_name", "setting")
        and (thing := of_a_kitchen(words, t.context, any(raw.kind == "MASS" for raw in t.raws)))
    ):
        from manchet.syntax.loose.normal import normal_form

        typed = [f"{ours}{t.body[len(thing[0]) :]}" for ours in thing[1].split(", ")]
        typed = [normal_form(line, t.context) or line for line in typed]
        said = {"word": short(thing[0]), "offer": f"write {list_of_words(tuple(f'`{line}`' for line in typed))}"}
        return Fault("unknown-word", 0, len(thing[0]), said, choices(0, len(t.body), *typed))
    if t.rule not in ("bare_name", "material", "step") or t.context in ("composition", "larder", "entry", "thing"):
        return None
    meant = lookalike(words)
    written = meant or (words[0] if words else "")
    if meant is None and words and t.rule == "bare_name" and t.context != "kitchen":
        meant = _slip_of_a_twin(written, t.context)
    if meant is None or (t.rule == "step" and " " not in written):
        return None
    offer = _offer(written, meant, t)
    weight = next((raw.text for raw in t.raws if raw.kind == "MASS"), None)
    if TWINS["scale"] in offer and weight is not None:
        offer = pieces_of(weight)
    rest, instead = t.body[len(written) :], INSTEAD.get(meant, "")
    if meant == "knead" and " by hand" in rest:
        rest, instead = rest.replace(" by hand", ""), "mix by hand"
    if meant == "cook" and in_an_oven(t.raws, rest):
        instead = "bake"
    lines = [f"{ours}{rest}" for ours in instead.split(", ") if ours]
    if lines and (folded := _with_folds(lines[0], t.context)) is not None:
        lines, offer = [folded], f"write `{folded}`"
    fixes = choices(0, len(t.body), *lines)
    return Fault("unknown-word", 0, len(written), {"word": written, "offer": offer}, fixes)


def _with_folds(line: str, context: str) -> str | None:
    """`ferment 1h30 avec 1 rabat` with the moment of its fold; None where it counts none."""
    from manchet.syntax.loose.normal import normal_form

    plain = normal_form(line, context) or line
    folds = folds_counted(plain)
    return None if folds is None else folds.fixes[0].of(plain)


def pieces_of(weight: str) -> str:
    return f"write `divide`; the {weight} stands in `makes`, as in `makes 14 loaves at {weight} dough`"


def after_a_name(name: str, weight: str) -> str:
    """What to write for `scale at 450 g`: what looks like an ingredient and its amount, with an `at` between."""
    words = name.split()
    if words[0] in ("scale", "divide", "portion"):
        return pieces_of(weight)
    found = lookalike(words)
    meant = found or _slip_of_a_twin(words[0], "stage")
    if meant is not None:
        answer = answer_to(meant, pieces(weight), "")
        return answer if found else f"for `{meant}`: {answer}"
    if words[0] in VERB and VERB[words[0]].example:
        return f"write it like `{VERB[words[0]].example}`"
    return f"write `{short(name.rpartition(' ')[0])} {weight}`"


def _offer(written: str, meant: str, t: LineTrouble) -> str:
    from manchet.syntax.loose.normal import normal_form

    _, and_, then = t.body.partition(" and ")
    if (
        and_ and meant in AS_A_FOLD and re.search("[0-9]", then)
    ):  # `knock back and rest 10 min`: the figure is of the second
        second = normal_form(then, t.context) or then
        twin = None if second.partition(" ")[0] in VERB else lookalike(then.lower().split())
        if twin is not None and twin in INSTEAD:
            then = f"{INSTEAD[twin].partition(', ')[0]}{then[len(twin) :]}"
            second = normal_form(then, t.context) or then
        return f"{answer_to(meant, (), '')}; what follows it is a line of its own: `{second}`"
    body = normal_form(t.body, t.context) or t.body
    ours = (
        f"{INSTEAD.get(meant, '').partition(', ')[0]}{t.body[len(written) :]}"  # `rise 1:30` is of hours, as a wait is
    )
    answer = answer_to(meant, pieces(normal_form(ours, t.context) or body), body[len(written) :])
    return answer if written == meant else f"for `{meant}`: {answer}"


_LONG_ENOUGH = 5
"""Letters of a word of the trade that a slip is looked for of: `coat` is a letter from `oat`."""


def _slip_of_a_twin(word: str, context: str) -> str | None:
    """`kneed` for `knead`: nearer to a word of the trade than to any of ours, and a letter or two from it."""
    least = steps_allowed(word) + 1
    if least < 2:
        return None
    found = None
    for other in TWINS:
        if len(other) >= _LONG_ENOUGH and (steps := distance(word, other, least - 1)) < least:
            least, found = steps, other
    if found is None or any(distance(word, own, least) <= least for own in candidates_of(context)):
        return None
    return found


def steps_allowed(word: str) -> int:
    """How many letters a slip may be away: none in two letters, one in four, else two."""
    return 0 if not 2 < len(word) <= LONGEST else 1 if len(word) < 6 else 2


def slip_of(word: str, phrases: Iterable[str]) -> str | None:
    """The shortest of the phrases that `word` begins, else the first of those it is a slip of."""
    phrases = tuple(phrases)
    if len(word) > 3:
        begun = min((phrase for phrase in phrases if phrase.startswith(word)), key=len, default=None)
        if begun is not None:
            return begun
    least, found = steps_allowed(word) + 1, None
    if least < 2:
        return None
    for phrase in phrases:
        if (steps := distance(word, phrase, least - 1)) < least:
            least, found = steps, phrase
    return found


def outside(t: LineTrouble) -> Fault | None:
    """A line that would be sound elsewhere."""
    first = t.raws[0].text
    if t.context == "top" and t.rule == "bare_name":
        if first in OPENINGS["formula"] or first in OPENINGS["stage"] or first in OPENINGS[UNLESS_WEIGHED]:
            return Fault(
                "line-outside-block",
                0,
                t.raws[0].end,
                {"word": first, "offer": "put it under its `formula` line, two spaces deeper"},
            )
        if any(raw.kind in WEIGHTS for raw in t.raws):
            return Fault(
                "line-outside-block",
                0,
                len(t.body),
                {"word": short(t.body), "offer": "put it under a stage of a `formula`, as `overall` or `dough`"},
            )
    if t.context in ("formula", "variant") and t.rule == "bare_name":
        works = first in OPENINGS[UNLESS_WEIGHED] or first in OPENINGS["stage"]
        if not works and nearest(first, (*OPENINGS[t.context],)) is not None:
            return None
        if works or any(raw.kind in WEIGHTS for raw in t.raws[1:]):
            return Fault("line-outside-stage", 0, len(t.body), {"text": short(t.body)})
    return None


def unknown(t: LineTrouble) -> Fault | None:
    """A first word that begins no line here."""
    if t.rule != "bare_name":
        return None
    first = t.raws[0]
    candidates = tuple(candidates_of(t.context))
    words = [raw.text for raw in t.raws if raw.kind == "WORD"]
    near = None
    for size in (3, 2, 1):
        written = " ".join(words[:size])
        if len(words) >= size and (near := nearest(written, [c for c in candidates if c.count(" ") == size - 1])):
            break
    else:
        written = first.text
    offer = f"did you mean `{near}`?" if near else _begin(t.context)
    end = first.start + len(written)
    fixes = choices(first.start, end, near) if near else ()
    return Fault("unknown-word", first.start, end, {"word": short(written), "offer": offer}, fixes)


def candidates_of(context: str) -> Iterator[str]:
    """Every phrase that may open a line in a context."""
    for openings in _openings_of(context):
        for word, group in openings.items():
            for rest, _ in group:
                yield " ".join((word, *rest))


def _openings_of(context: str) -> tuple[Openings, ...]:
    if context in WORKS:
        return OPENINGS[context], OPENINGS[UNLESS_WEIGHED]
    return (OPENINGS[context],) if context in OPENINGS else ()


def _begin(context: str) -> str:
    return {
        "top": "at the left edge go `formula`, `preparation`, `assembly`, `larder`, `kitchen`, `plan`, `order`, or a stage that several formulas share",
        "formula": "here go `kind`, `makes`, `dough loss`, `bake loss`, `overall`, `dough` or the heading of a stage",
        "variant": "here goes what is different: head lines, `overall`, `swap … for …`, `without …`, a stage with its heading",
        "kitchen": "here go `air`, `tap`, `mixer`, `oven`, `tin`, `scale` and the other things of a kitchen",
        "thing": "here go its figures, as in `takes 6-45 kg dough`, `keeps 4 C`, `volume 1900 ml`, `reads 5 g`",
        "entry": "here go `class`, `also called`, `per 100 g`, `made of`, `allergens`, `density`, `price`, `source`",
        "overall": "here go ingredients and their share, as in `water 76%`",
        "plan": "here go `on 2026-11-28`, breads and how many, `van leaves`, `hands`, `oven … 1 fire`, `already made`, `orders`",
        "order": "here go `every Sat`, `until 2026-12-24`, and breads with how many",
        "want": "here go `for NAME 4 loaves`, `spare 2 loaves`, `ready Sat 07:00`, `8-48 h old`",
        "composition": "here go parts and their weight, as in `protein 8.9 g`",
    }.get(
        context,
        "an ingredient is a name and an amount, as in `water 76%`; a step begins with its verb, as in `mix slow 5 min`",
    )

"""One line, read: which rule it belongs to, its tokens, its node; or what is wrong with it."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Any

from manchet.quantities.reading import THOUSANDS, forget_figures
from manchet.quantities.units import UNITS
from manchet.records import NamedTuple
from manchet.syntax import tables as t
from manchet.syntax.building import ACTIONS
from manchet.syntax.driver import Stuck, run
from manchet.syntax.lexer import Tokens, fold_word
from manchet.syntax.mistakes.characters import look_alike, plain
from manchet.syntax.mistakes.faults import REMARKS, Fault, LineFix, LineTrouble, in_place
from manchet.syntax.mistakes.lacking import CHECKED, as_spelt_now, old_spelling, wrong_with
from manchet.syntax.mistakes.odd_figures import fault_of
from manchet.syntax.nodes import (
    Add,
    BareName,
    FromFlour,
    HoldBack,
    KeepNode,
    Loss,
    MakesNode,
    MaterialNode,
    ReservedHead,
    Setting,
    StageHead,
    StepNode,
    Unread,
    Word,
)
from manchet.syntax.odd_lines import LAYING, is_odd, is_unmeant
from manchet.syntax.openings import (
    BARE_NAME,
    CLAUSE_LINE,
    COUNTED,
    ENTRY_NAME,
    LAID,
    MATERIAL,
    NAMES,
    OF_A_DAY,
    OPENINGS,
    PER_PIECE,
    STEP,
    TAIL,
    UNLESS_COUNTED,
    UNLESS_WEIGHED,
    WANT,
    WANT_LINE,
    WEIGHS,
    WORKS,
    OpeningLine,
    RestOfLine,
    opening_of,
)
from manchet.syntax.tokens import WEIGHTS, RawToken, pieces, with_slices

TABLES = t.load()


class Read(NamedTuple):
    """What became of a line: its node, what is odd about it, what the lines under it are (a context of the vocabulary), and
    why it could not be read (then `node` is None)."""

    node: Any
    faults: tuple[Fault, ...]
    opens: str
    trouble: LineTrouble | None = None


_REMEMBERED = 50_000
_LONGEST_REMEMBERED = 200


def read_line(body: str, context: str) -> Read:
    """A line, read. Equal lines in equal contexts share one reading."""
    return _read(body, context) if len(body) > _LONGEST_REMEMBERED else _read_short(body, context)


@lru_cache(maxsize=_REMEMBERED)
def _read_short(body: str, context: str) -> Read:
    return _read(body, context)


def forget_lines() -> None:
    """Forgets the lines read so far: of whoever reads all day, half of them are lines that were being typed."""
    _read_short.cache_clear()
    forget_figures()


def _read(written: str, context: str) -> Read:
    """A line as the grammar has it, else as it is loosely written, where only one reading exists."""
    found = read_strictly(written, context)
    if found.trouble is None and not (found.faults and _in_error(found.faults)) and not is_odd(found.node):
        return found
    from manchet.syntax.loose.normal import normal_form  # a sound file has no need of them
    from manchet.syntax.loose.places import as_written

    body = plain(written)[0]
    normal = normal_form(body, context)
    meant = None if normal is None else read_strictly(normal, context)
    if normal is None or meant is None or meant.trouble is not None or meant.faults or is_odd(meant.node):
        if is_unmeant(found.node):
            rule = {StageHead: "stage", Setting: "setting"}.get(type(found.node), "step")
            return Read(
                None, found.faults, "", LineTrouble(body, tuple(pieces(body)), context, rule, ((0, len(body)),), 0, ())
            )
        return found
    fix = in_place(0, len(body), normal, safe=True)
    read_as = Fault("read-as", 0, len(body), {"normal": normal}, (fix,))
    return meant._replace(node=as_written(meant.node, body), faults=(read_as,))


def _in_error(faults: tuple[Fault, ...]) -> bool:
    return any(fault.name not in REMARKS for fault in faults)


def read_strictly(written: str, context: str) -> Read:
    """A line as the grammar has it, and only so."""
    body, faults = plain(written)
    raws = pieces(body)
    if not raws:
        return Read(Unread("line"), faults, "skipped")
    tokens, rule, opens, opening = tokens_of(body, raws, context)
    if rule == "reserved":
        word = tokens.values[0]
        assert isinstance(word, Word)
        fix = LineFix((), "make a remark of it, with # before each of its lines")
        kept = Fault("reserved-word", word.start, word.end, {"word": word.text}, (fix,))
        return Read(ReservedHead(word), (*faults, kept), opens)
    made = run(TABLES, rule, tokens.types, tokens.values, _actions_in(context))
    if type(made) is Stuck:
        spans = tuple((v.start, v.end) if v else (0, 0) for v in tokens.values)
        return Read(None, faults, "", LineTrouble(body, tuple(raws), context, rule, spans, made.at, made.expected))
    if type(made) is BareName:
        trouble = LineTrouble(body, tuple(raws), context, rule, ((0, len(body)),), 1, ())
        if context not in NAMES or not _is_name(trouble):
            return Read(None, faults, "", trouble)
    if not body.isascii():
        alike = look_alike(body)
        faults = faults if alike is None else (*faults, alike)
    if opening is not None and opening.was:
        words = tokens.values[0]
        assert isinstance(words, Word)
        if fold_word(body[words.start : words.end]).lower() in opening.was:
            faults = (*faults, old_spelling(body, words.start, words.end, opening.words))
    if rule not in _FREE_TEXT:
        odd = (raw for raw in raws if raw.fault and not _has_a_country(raw))
        faults = (*faults, *(fault_of(raw, body) for raw in odd if context != "composition" or raw.fault != THOUSANDS))
    if type(made) in CHECKED:
        wrong = wrong_with(made, body)
        if wrong:
            faults = (*faults, *wrong)
            made = as_spelt_now(made)
    if faults and any(fault.name not in KEEPS_ITS_NODE for fault in faults):
        made = _set_aside(made)
        opens = made.opens if isinstance(made, Unread) else opens
    return Read(made, faults, opens)


def _actions_in(context: str) -> dict[str, Callable[..., Any]]:
    if context not in OF_A_DAY:
        return ACTIONS
    from manchet.syntax.plan_building import OF_A_PLAN  # few files have a plan

    return OF_A_PLAN


def _is_name(trouble: LineTrouble) -> bool:
    """Whether a line alone may be a name: words without a digit always; of all else the diagnosis judges."""
    if not any(letter.isdigit() for letter in trouble.body) and all(raw.kind == "WORD" for raw in trouble.raws):
        return True
    from manchet.syntax.mistakes.diagnosis import is_plain_name

    return is_plain_name(trouble)


def _has_a_country(raw: RawToken) -> bool:
    """A cup or a spoon in its long form: what is to say of it is said where it is weighed."""
    return raw.fault == "unit-long-form" and not UNITS[raw.unit].factor


KEEPS_ITS_NODE = REMARKS | {"each-or-in-all", "touching-without-weight", "part-of-a-number"}
"""Faults that leave the meaning of the rest of their line whole."""


def _set_aside(made: Any) -> Any:
    """A line whose figures or name cannot be trusted is not handed on: its mistake is said once."""
    if isinstance(made, StepNode):
        return Unread("step", made.verb, "step")
    if isinstance(made, MaterialNode):
        return Unread("material", made.name, "step")
    if isinstance(made, (MakesNode, FromFlour, Loss)):
        return Unread("line", None, "step")
    return Unread("material", None, "step") if isinstance(made, (HoldBack, Add, KeepNode)) else made


_FREE_TEXT = frozenset({"block", "entry_name", "kind", "bare_name", "branch"})
"""Rules whose name runs to the end of the line, whatever looks like a figure in it."""


class LineTokens(NamedTuple):
    """The tokens of a line, the rule that reads it, what the lines under it are, and the row of the words that open it, if
    any do."""

    tokens: Tokens
    rule: str
    opens: str
    opening: OpeningLine | None = None


def tokens_of(body: str, raws: list[RawToken], context: str) -> LineTokens:
    """The pieces of a plain body as the grammar takes them. Never fails: what fits no phrase is a name."""
    if context in WORKS and "slice" in body.lower() and raws[0].text != "makes":
        raws = with_slices(raws)
    found = opening_of(OPENINGS[context], raws)
    if found is None and context in WEIGHS and not (context in PER_PIECE and raws[0].text in LAYING):
        reading = LAID if context in PER_PIECE else MATERIAL
        weight = weight_at(raws, context in PER_PIECE)
        if weight:
            tokens = Tokens(body, raws, reading.phrases, "")
            _name_before(tokens, weight)
            tokens.figure(raws[weight], True)
            tokens.at = weight + 1
            tokens.rest()
            return LineTokens(tokens, reading.rule, reading.mode)
    if found is None and context == "plan" and not counts_pieces(raws):
        found = opening_of(OPENINGS[UNLESS_COUNTED], raws)
    if found is None and context in WORKS:
        found = opening_of(OPENINGS[UNLESS_WEIGHED], raws)
    reading, opens = (found[0].reading, found[0].opens) if found is not None else _unopened(context, raws[0])
    tokens = _tokens_in(reading)(body, raws, reading.phrases, reading.mode)
    if found is not None:
        line, size = found
        if reading is STEP and line.kept:
            size -= 1  # `brush with` tells a step from an ingredient; the `with` opens its clause
        tokens.opening(line.token, line.called, size)
    if reading.mode == "line":
        tokens.whole_rest()
    else:
        tokens.rest()
    return LineTokens(tokens, reading.rule, opens, found[0] if found is not None else None)


def _tokens_in(reading: RestOfLine) -> type[Tokens]:
    if reading.mode not in ("plan", "days"):
        return Tokens
    from manchet.syntax.plan_tokens import PlanTokens  # few files have a plan

    return PlanTokens


def _unopened(context: str, first: RawToken) -> tuple[RestOfLine, str]:
    """How a line is read that no words of the language open, and what the lines under it are."""
    if context == "larder":
        return ENTRY_NAME, "entry"
    if context == "stock":
        return COUNTED, "step"
    if context in OF_A_DAY:
        return (WANT_LINE, "step") if context == "want" else (WANT, "want")
    if context == "step" or (context == "material" and first.kind == "QUOTED"):
        return CLAUSE_LINE, "step"
    return (TAIL if context == "material" else BARE_NAME), "step"


def counts_pieces(raws: list[RawToken]) -> bool:
    """Whether a line of a plan says how many of something: an oven's fires are none of it."""
    return any(
        raw.kind in ("NUMBER", "MASS") and not (after and after[0].text in ("fire", "fires"))
        for raw, after in ((raw, raws[at + 1 : at + 2]) for at, raw in enumerate(raws))
    )


def weight_at(raws: list[RawToken], per_piece: bool = False) -> int:
    """Where the weight of a material line stands, or 0: the first weight that no `loses` or `steam` claims, nor `into` the slices, that is not of
    the air, and that neither `each` nor `in all` follows, unless it is to be said `per_piece`."""
    for at in range(1, len(raws)):
        raw = raws[at]
        if raw.kind in WEIGHTS and raws[at - 1].text not in ("loses", "steam"):
            after = raws[at + 1].text if at + 1 < len(raws) else ""
            if (raw.kind == "PERCENT" and after in _OF_THE_AIR) or (
                raw.kind == "SLICES" and raws[at - 1].text == "into"
            ):
                continue
            if raws[at - 1].text == "up" and raws[at - 2].text == "takes":
                continue
            if not per_piece and (
                after in ("each", "apiece") or (after == "in" and raws[at + 2 : at + 3] and raws[at + 2].text == "all")
            ):
                return 0
            return at
    return 0


_OF_THE_AIR = frozenset({"humidity", "relative", "rel", "rh"})
"""Words that begin what a per cent of humidity is called."""


def _name_before(tokens: Tokens, weight: int) -> None:
    raws = tokens.raws
    if weight == 1 and raws[0].kind == "QUOTED":
        first = raws[0]
        tokens.add("NAME", Word(" ".join(first.text.split()), first.start, first.end))
        return
    for at in range(weight):
        kind = raws[at].kind
        if kind == "COMMA" or kind == "QUOTED":
            tokens.add("_COMMA", Word(",", raws[at].start, raws[at].end))
            return
    tokens.name(raws[0].start, raws[weight - 1].end)

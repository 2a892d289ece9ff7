"""What could be typed at the cursor, by where it stands, and only what goes on from what is typed already."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator

from manchet.diagnostics.catalogue import explain, names as report_names
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.suggest import fold
from manchet.editor.names import made_blocks, own_stages, shared_stages
from manchet.editor.reports import may_be_allowed, reports_on
from manchet.editor.typed import Typed, typed_at
from manchet.larder.ingredient import CLASSES, Ingredient
from manchet.quantities.units import UNITS
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.syntax.block import FORMULAS
from manchet.syntax.contexts import OF_A_DAY, UNLESS_COUNTED, UNLESS_WEIGHED, WEIGHS, WORKS
from manchet.syntax.openings import OPENINGS, OpeningLine, opening_of
from manchet.syntax.phrases import CLAUSES
from manchet.syntax.tokens import pieces
from manchet.syntax.vocabulary import KIND, VERB
from manchet.workspace.open_bakery import OpenBakery

MOST = 120
"""Proposals at once; with more typed there are fewer."""
MOST_HEATS = 5


class Proposal(NamedTuple):
    """Something to type. `sort`: "word", "verb", "ingredient", "stage", "made", "thing", "unit", "figure", "report" or "kind";
    `says` stands beside it. It takes the place of the line from column `start` (from 1) to the cursor."""

    text: str
    sort: str
    start: int
    says: str = ""


class Proposals(NamedTuple):
    """The best first. `is_whole`: no more would be offered for what is typed."""

    items: tuple[Proposal, ...] = ()
    is_whole: bool = True


NOTHING = Proposals()
_IN_ORDER = {word: number for number, word in enumerate(VERB)}
"""Verbs in the order of the work, as the vocabulary has them; they come before all other words."""


def completion(bakery: OpenBakery, path: str, text: str, line: int, column: int) -> Proposals:
    """What could be typed at a position of a text."""
    at = typed_at(path, text, line, column)
    if at is None or not at.context or at.context == "skipped":
        return NOTHING
    offers = dict.fromkeys(_offers(bakery, at))
    items = tuple({fold(one.text): one for one in reversed(offers)}.values())[::-1]
    return Proposals(items[:MOST], len(items) <= MOST)


def _offers(bakery: OpenBakery, at: Typed) -> Iterator[Proposal]:
    if at.unit is not None:
        yield from _units(at, at.unit)
        return
    before = at.before.lower()
    opening = _opening(at)
    last = before.rpartition(" ")[2]
    if opening is not None and opening.token == "ALLOW" and before in ("allow", "always allow"):
        yield from _reports(bakery, at)
    elif before == "kind" and at.context in ("formula", "variant", "preparation"):
        yield from _begun(at, ((kind, "kind", "") for kind in KIND), after="kind")
    elif before == "class" and at.context == "entry":
        yield from _begun(at, ((name, "kind", "") for name in sorted(CLASSES)), after="class")
    elif (after := _after_one_of(at, _NAMES_FOLLOW)) is not None:
        yield from _begun(at, (*_materials(bakery, at), *_built_in(bakery)), after)
    elif (
        last in ("in", "on", "into") and before != last and (opening is not None or at.context in ("step", "material"))
    ):
        yield from _begun(at, _things(bakery, at), at.before)
    elif last == "at" and before != last and opening is not None and opening.token == "VERB":
        yield from _heats(bakery, opening.called, at)
    else:
        words = sorted(_openings(at.context), key=lambda one: _IN_ORDER.get(one[0], len(_IN_ORDER)))
        yield from _begun(at, (*_materials(bakery, at), *words) if at.context in WEIGHS else words)
        if at.context in WEIGHS and at.body:
            yield from _begun(at, _built_in(bakery))
        if at.context in OF_A_DAY:
            yield from _begun(at, ((block.name, "made", path) for path, block in made_blocks(bakery).values()))
        if before and (at.context in ("step", "material") or (opening is not None and opening.token == "VERB")):
            yield from _clauses(at)


def _opening(at: Typed) -> OpeningLine | None:
    """The row of the words that the line begins with, and goes on from."""
    raws = pieces(at.before)
    if not raws:
        return None
    for openings in (
        at.context,
        UNLESS_WEIGHED if at.context in WORKS else "",
        UNLESS_COUNTED if at.context == "plan" else "",
    ):
        found = opening_of(OPENINGS[openings], raws) if openings in OPENINGS else None
        if found is not None:
            return found[0]
    return None


# ---- what goes on from what is typed --------------------------------------------------------------


def _begun(at: Typed, offered: Iterable[tuple[str, str, str]], after: str = "") -> Iterator[Proposal]:
    """Of these texts, with their sort and what they say, those that begin with what is typed since `after`; then those of
    which a later word does."""
    begins = len(at.body[: len(after)]) + (1 if after else 0)
    since = at.body[begins:].lstrip()
    start = at.begins + len(at.body) - len(since)
    wanted, later = fold(since), []
    for text, sort, says in offered:
        folded = fold(text)
        if folded.startswith(wanted):
            yield Proposal(text, sort, start, says)
        elif wanted and f" {wanted}" in f" {folded}":
            later.append(Proposal(text, sort, start, says))
    yield from later


def _after_one_of(at: Typed, phrases: Iterable[str]) -> str | None:
    """The part of the line after which a name is begun; None where none of these phrases stands there."""
    body = at.body.lower()
    for phrase in phrases:
        if body.startswith(f"{phrase} "):
            since = max(body.rfind(", "), body.rfind(" and "), len(phrase) - 1)
            if body.startswith((", ", " and "), since):
                return at.body[: since + (1 if body[since] == "," else 4)]
            return at.body[: len(phrase)]
    return None


_NAMES_FOLLOW = (
    "all of the", "what is left of the", "hold back", "add", "top up with", "lock in", "return", "without", "swap",
    "keep what is left as", "keep enough as", *(f"{verb.word} with" for verb in VERB.values() if verb.touches),
)  # fmt: skip
"""Words that open a line and that a name of an ingredient or a stage follows."""


# ---- what there is --------------------------------------------------------------------------------


def _openings(context: str) -> Iterator[tuple[str, str, str]]:
    """The words that open a line in a context."""
    contexts = [context]
    if context in WORKS:
        contexts.append(UNLESS_WEIGHED)
    if context == "plan":
        contexts.append(UNLESS_COUNTED)
    for one in contexts:
        for group in OPENINGS.get(one, {}).values():
            for _, line in group:
                verb = VERB.get(line.called) if line.token == "VERB" else None
                says = verb.example if verb is not None else line.example
                yield line.words, "verb" if verb is not None else "word", says


def _materials(bakery: OpenBakery, at: Typed) -> list[tuple[str, str, str]]:
    """Stages of the formula that nothing has drawn on yet; the house's own ingredients, what it makes, its shared stages. What the
    formula names already comes first."""
    found = [*_own_stages(at)]
    for entry in bakery.read([]).larder.own():
        if isinstance(entry, Ingredient):
            found += ((name, "ingredient", entry.class_) for name in (entry.name, *(entry.aliases if at.body else ())))
    for stage, (path, _) in shared_stages(bakery).items():
        found.append((stage, "stage", path))
    for path, made in made_blocks(bakery).values():
        if made.word == "preparation" or at.context in ("assembly", "part"):
            found.append((made.name, "made", path))
    text = "" if at.block is None else at.block.text.lower()
    return sorted(found, key=lambda one: one[0].lower() not in text)


def _built_in(bakery: OpenBakery) -> Iterator[tuple[str, str, str]]:
    return ((name, "ingredient", "") for name in bakery.read([]).larder.names())


def _own_stages(at: Typed) -> Iterator[tuple[str, str, str]]:
    block = at.block
    if block is not None and block.word in FORMULAS:
        for stage, line in own_stages(block).items():
            if stage != "dough" and line < at.line and not _is_drawn_on(block.text, stage):
                yield stage, "stage", "a stage of this formula"


def _is_drawn_on(text: str, stage: str) -> bool:
    """Whether a line of the block takes the stage: its name alone, or with an amount."""
    return re.search(rf"^ +{re.escape(stage)}(?: {{2,}}.*| +[0-9].*)?$", text, re.MULTILINE | re.IGNORECASE) is not None


def _things(bakery: OpenBakery, at: Typed) -> Iterator[tuple[str, str, str]]:
    """What the nearest kitchen has to put dough in."""
    kitchen = bakery.read([at.path]).kitchen_for(at.path)
    for vessel in kitchen.vessels:
        yield vessel.name or vessel.word, "thing", vessel.word
    if not at.body.lower().startswith("makes "):
        for cold in kitchen.colds:
            yield cold.name or cold.word, "thing", cold.word
        for oven in kitchen.ovens:
            yield oven.name, "thing", "oven"


def _units(at: Typed, begun: str) -> Iterator[Proposal]:
    """The units that a figure may have where it stands, as far as that can be told from the words before it."""
    figure = at.body[: len(at.body) - len(begun)]
    wanted = _dimensions(at, figure)
    start = at.begins + len(figure)
    for unit in (*(["%"] if not wanted or "percent" in wanted else []), *UNITS):
        dimension = "percent" if unit == "%" else UNITS[unit].dimension
        if unit and unit.lower().startswith(begun.lower()) and (not wanted or dimension in wanted):
            yield Proposal(unit, "unit", start)


def _dimensions(at: Typed, figure: str) -> frozenset[str]:
    """What a figure measures there; nothing where that is open."""
    words = [raw.text for raw in pieces(figure) if raw.kind == "WORD"]
    opening = _opening(at)
    if words and words[-1] in ("at", "to") and (opening is None or opening.token != "_MAKES"):
        return frozenset({"temperature"})
    if opening is None:
        return frozenset({"percent", "mass", "volume", "whole"}) if at.context in WEIGHS else frozenset()
    verb = VERB.get(opening.called) if opening.token == "VERB" else None
    if verb is not None:
        return frozenset({"mass"}) if "with" in words else frozenset({"time", "temperature"} if verb.needs_time else ())
    kinds = {raw.kind.lower() for raw in pieces(opening.example)} & {unit.dimension for unit in UNITS.values()}
    return frozenset(kinds)


def _heats(bakery: OpenBakery, verb: str, at: Typed) -> Iterator[Proposal]:
    """The heats that this house writes after `at` for a verb, the most usual first; else that of the language's own example."""
    spelt = VERB[verb]
    words = "|".join(re.escape(word) for word in (spelt.word, *spelt.also)).encode()
    said = re.compile(
        rb"^ +(?:" + words + rb")\b[^#\n]*? at (-?[0-9.]+(?:-[0-9.]+)? [CF])\b", re.MULTILINE | re.IGNORECASE
    )
    counted = Counter(heat.decode() for file in bakery.files for heat in said.findall(file.data))
    usual = [heat for heat, _ in counted.most_common(MOST_HEATS)] or re.findall(
        r"at (-?[0-9.]+ C)", f"{spelt.example} {spelt.needs_heat}"
    )
    start = at.begins + len(at.body) - len(at.word)
    for heat in usual:
        if heat.startswith(at.word):
            yield Proposal(heat, "figure", start, f"{counted[heat]} times in this house" if counted[heat] > 1 else "")


def _clauses(at: Typed) -> Iterator[Proposal]:
    """What may follow in a step."""
    start = at.begins + len(at.body) - len(at.word)
    for first, group in CLAUSES.items():
        for phrase in group:
            text = " ".join((first, *phrase.rest))
            if at.word and fold(text).startswith(fold(at.word)) and phrase.canonical in (text, *_AS_WRITTEN):
                yield Proposal(text, "word", start)


_AS_WRITTEN = frozenset(
    {"falling", "rising", "each", "all", "side", "open", "closed", "on", "off", "fold", "turn", "stir"}
)
"""What phrases are called that are written longer: the others with another name are older or looser spellings."""


def _reports(bakery: OpenBakery, at: Typed) -> Iterator[Proposal]:
    """What is reported of this formula and may be allowed; then whatever else may be, once something is typed."""
    start = at.begins + len(at.body) - len(at.word)
    block = at.block
    wanted = fold(at.word)
    for one in _without_line(bakery, at):
        if block is not None and block.holds(one.place.line) and may_be_allowed(one) and one.name.startswith(wanted):
            yield Proposal(f'{one.name} because ""', "report", start, one.message)
    for name in report_names() if at.word else ():
        if name.startswith(wanted) and (case := explain(name)) is not None and case.severity in ("warning", "note"):
            yield Proposal(f'{name} because ""', "report", start, case.title)


def _without_line(bakery: OpenBakery, at: Typed) -> tuple[Diagnostic, ...]:
    """The reports on a file without the line that is being typed: with it half a line, the checks have nothing to say."""
    apart = bakery.part(bakery.needed(frozenset({at.path})))
    file = next(file for file in apart.files if file.path == at.path)
    rows = rough_text_of(file.data).split("\n")
    rows[at.line - 1] = ""
    apart.update(at.path, "\n".join(rows).encode("utf-8", "replace"))
    return reports_on(apart, at.path)

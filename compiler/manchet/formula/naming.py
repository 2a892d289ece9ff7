"""What a name in a formula means: a stage, a preparation, an ingredient; or a question; or nothing we know."""

from __future__ import annotations

from collections.abc import Mapping

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of, one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.parts import NO_PARTS, DishPart, Parts, Slicing
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient, Question
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.nodes import Word
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED
from manchet.syntax.vocabulary import STAGE


class Meaning(NamedTuple):
    """What a name stands for. Exactly one of `ingredient` and `stage` is set; `key` compares equal for equal things."""

    key: str
    name: str
    ingredient: Ingredient | None
    stage: str
    """The key of a stage, a preparation or a part, else ""."""
    part: DishPart | None = None
    """In a dish: what it is of what another block makes by the piece."""


class Names(NamedTuple):
    """Everything a formula's names can mean: its own stages first, then shared ones, preparations, the larder."""

    stages: Mapping[str, str]
    """Folded name -> name as written, of the formula's own and of shared stages."""
    preparations: Mapping[str, str]
    larder: Larder
    parts: Parts = NO_PARTS
    """For a dish alone."""
    slicing: Mapping[str, Slicing] = {}
    """How the dish cuts a part, by its key."""

    def meaning(self, name: str) -> Meaning | Question | None:
        key = fold(name)
        if key in self.stages:
            return Meaning(key, self.stages[key], None, key)
        if self.parts.all and (called := self.parts.called(name)):
            if len(called) > 1:
                return Question(name, tuple(one.name for one in called), "its formula makes both")
            return Meaning(called[0].key, called[0].name, None, called[0].key, called[0])
        if key in self.preparations:
            return Meaning(key, self.preparations[key], None, key)
        found = self.larder.find(name)
        if isinstance(found, Ingredient):
            return Meaning(fold(found.name), name, found, "")
        return found

    def knows(self, name: str) -> bool:
        """Whether the name means one thing."""
        return isinstance(self.meaning(name), Meaning)

    def look_up(self, word: Word, line: Line) -> Outcome[Meaning | None]:
        """The meaning of a word, or the report that says why it has none."""
        found = self.meaning(word.text)
        if isinstance(found, Meaning):
            return Outcome(found)
        place = line.place(word.start, word.end)
        if isinstance(found, Question):
            choices = ", ".join(f"`{c}`" for c in found.choices)
            why = f": {found.why}" if found.why else ""
            message = f"`{word.text}` can mean more than one thing{why}"
            return Outcome(
                None,
                (
                    report(
                        "ambiguous-ingredient",
                        place,
                        message,
                        f"write which one: {choices}",
                        fixes=one_of(place, map(as_name, found.choices)),
                    ),
                ),
            )
        return Outcome(None, (self.unknown(word, line),))

    def unknown(self, word: Word, line: Line) -> Diagnostic:
        near = tuple(filter(self.knows, self.near(word.text)))
        offer = f"did you mean {' or '.join(f'`{n}`' for n in near)}? if not, add" if near else "add"
        where = "neither a stage of this formula nor in the larder"
        if self.parts is not NO_PARTS:
            where = "no bread, preparation or dish of this bakery, no stage of this dish and not in the larder"
        message = f"`{word.text}` is {where}"
        if fold(word.text) in STAGE:
            place = line.place(word.start, word.end)
            help = f"write what it is made of under a heading of its own: `{fold(word.text)}`, two spaces further out, above the dough"
            return report("unknown-ingredient", place, message, help)
        help = f"{offer} it under a `larder` heading with its class: `{word.text}`, and below it `class …`"
        place = line.place(word.start, word.end)
        return report("unknown-ingredient", place, message, help, fixes=one_of(place, map(as_name, near)))

    def no_such_line(self, word: Word, line: Line, amount: str) -> Diagnostic:
        """The report for a line that is only a name, and not a stage's. `amount` is one as this formula writes them."""
        from manchet.syntax.mistakes.beginnings import slip_of  # a sound file has no need of it

        phrases = first_words()
        first = word.text.partition(" ")[0]
        near, meant = nearest(word.text, self.stages.values()) or slip_of(fold(word.text), phrases), word.text
        if near is None:
            near, meant = slip_of(fold(first), phrases), first
        message = f"`{word.text}` is neither a stage of this formula nor the beginning of a step"
        asked = self.larder.find(word.text)
        kinds = asked.choices if isinstance(asked, Question) else (word.text,)
        with_amount = list_of_words(tuple(f"`{kind} {amount}`" for kind in kinds))
        help = f"did you mean `{near}`?" if near else f"an ingredient needs an amount: {with_amount}"
        place = line.place(word.start, word.end)
        fixes = exchange_of(place, meant, as_name(near)) if near else ()
        return report("neither-stage-nor-step", place, message, help, fixes=fixes)

    def near(self, name: str) -> tuple[str, ...]:
        parts = {fold(part): part for part in self.parts.names}
        own = nearest(fold(name), (*self.stages, *self.preparations, *parts))
        own = parts.get(own or "", own)
        found = self.larder.near(name)
        return ((own,) if own else ())[:1] + tuple(found[:2])


def as_name(name: str) -> str:
    """A name as it is typed before an amount: in quotes, where a comma would end it."""
    return f'"{name}"' if "," in name else name


def first_words() -> tuple[str, ...]:
    """Every word or phrase that may begin a line of a stage."""
    return tuple(
        " ".join((first, *rest))
        for openings in (OPENINGS[UNLESS_WEIGHED], OPENINGS["stage"])
        for first, group in openings.items()
        for rest, _ in group
    )

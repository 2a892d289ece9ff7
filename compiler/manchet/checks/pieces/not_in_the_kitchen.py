"""A tin, a tray, an oven, a prover, a fridge or a speed that the formula names and the kitchen does not describe."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.pieces.place_misspelt import near_name
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold
from manchet.figures.mixing.turns import by_machine, is_fast
from manchet.formula.model import Step
from manchet.kitchen.model import Kitchen
from manchet.syntax.things import THING
from manchet.syntax.vocabulary import IN_OVEN

NAME = "not-in-the-kitchen"
ABOUT = ("kitchen", "a third speed")

EXAMPLES = {
    "tin": "volume 1900 ml",
    "tray": "holds 12 rolls",
    "oven": "hottest 300 C",
    "prover": "keeps 28 C",
    "fridge": "keeps 4 C",
    "freezer": "keeps -18 C",
}
"""The things that are asked about, and a line that tells what the sheets want of each."""
KINDS = {word: kind for kind in EXAMPLES for word in (kind, *THING[kind].also)}
IN_AN_OVEN = (
    "dutch oven", "pot", "cloche", "casserole", "cocotte", "baker", "cooker", "dish", "ring", "case", "mould", "mold", "basket",
    "paper", "foil", "iron", "stone", "brick", "steel", "pan", "cup", "bell", "jar", "tray", "tin", "skillet",
)  # fmt: skip
"""What stands in an oven, in words of its name."""


def check(work: Work) -> Iterator[Diagnostic]:
    told = set()
    for step in work.formula.steps if work.kitchen.place is not None else ():
        named = step.where[1] if step.where is not None else ""
        kind = _kind_of(step, work) if named and fold(named) not in told else ""
        if not kind or _is_there(work.kitchen, step, named) or near_name(work.kitchen, named) is not None:
            continue
        told.add(fold(named))
        there = _names(work.kitchen, kind)
        oven = next((oven.name for oven in work.kitchen.ovens), "") if kind == "oven" else ""
        then = f"it is taken to be {oven}" if oven else "nothing is looked up or counted for it"
        house = work.kitchen.name or "the kitchen"
        lacks = f"which of the {kind}s of {house}" if fold(named) in KINDS and there else f"{house} has no {named}"
        message = f"{lacks}{'?' if lacks.startswith('which') else ':'} {then}"
        has = f"if you mean {list_of_words(tuple(f'`{name}`' for name in there))}, write that; else " if there else ""
        called = f"{kind} {_own(named, kind)}".strip()
        help = f"{has}describe it in the kitchen: `{called}`, and under it `{EXAMPLES[kind]}`"
        yield report(NAME, step.place, message, help, fixes=exchange_of(step.place, named, *there[:3]))
    yield from _speeds(work)


def _kind_of(step: Step, work: Work) -> str:
    """Which of a kitchen's things its place is by its last word; "" where it is none: a shelf, a cloth, a stone. What is baked in
    a thing of no such name is baked in an oven, unless it stands in that already or is called after something that does."""
    preposition, named = step.where or ("", "")
    words = fold(named).split()
    kind = next((KINDS[last] for last in (" ".join(words[-2:]), words[-1]) if last in KINDS), "")
    if step.verb in IN_OVEN:
        before = any(
            other.where and fold(other.where[1]) == fold(named) for other in work.formula.steps if other.verb == "place"
        )
        stands = before or preposition != "in" or any(word in fold(named) for word in IN_AN_OVEN)
        named_ovens = any(oven.name for oven in work.kitchen.ovens)
        return kind if kind and fold(named) not in IN_AN_OVEN else "" if stands or not named_ovens else "oven"
    return "" if kind == "oven" else kind


def _is_there(kitchen: Kitchen, step: Step, named: str) -> bool:
    if kitchen.vessel(named) is not None or kitchen.cold(named) is not None:
        return True
    ovens = {fold(oven.name) for oven in kitchen.ovens}
    if step.verb in IN_OVEN and any(oven and oven in fold(named) for oven in ovens):
        return True
    return fold(named) == "oven" and len(kitchen.ovens) == 1


def _names(kitchen: Kitchen, kind: str) -> tuple[str, ...]:
    ovens = [oven.name for oven in kitchen.ovens] if kind == "oven" else []
    vessels = [vessel.name for vessel in kitchen.vessels if vessel.word == kind]
    colds = [cold.name for cold in kitchen.colds if cold.word == kind]
    return tuple(filter(None, (*ovens, *vessels, *colds)))


def _own(named: str, kind: str) -> str:
    """What it is called besides its kind: `small` of `small prover`; of a tin its whole name, as the file has it."""
    return "" if fold(named) in KINDS else named


def _speeds(work: Work) -> Iterator[Diagnostic]:
    """A third speed, or a fast one where only the slow one is described: both are reckoned as the usual fast one."""
    mixers = [mixer for mixer in work.kitchen.mixers if mixer.slow_turns or mixer.fast_turns]
    told = set()
    for step in by_machine(work.formula.steps):
        said = f"speed {step.speed}" if (step.speed or 0) > MOST_SPEEDS else "fast" if is_fast(step) else "slow"
        lacking = all(not (mixer.fast_turns if said == "fast" else mixer.slow_turns) for mixer in mixers)
        if said in told or not (said.startswith("speed") or (mixers and lacking)):
            continue
        told.add(said)
        name = (mixers[0].name if mixers else "") or "the mixer"
        if said.startswith("speed"):
            message = f"a mixer has two speeds here, slow and fast: {said} of {name} is counted as fast"
            yield report(
                NAME,
                step.place,
                message,
                "write `fast`, or `speed 2`, which is the same",
                fixes=exchange_of(step.place, said, "fast"),
            )
        else:
            usual = "210" if said == "fast" else "110"
            message = f"the kitchen does not say how many turns {name} makes {said}: the usual are counted"
            yield report(NAME, step.place, message, f"add it under the mixer: `{said} {usual} turns a minute`")


MOST_SPEEDS = 2
"""A kitchen describes two: `slow`, `fast`."""

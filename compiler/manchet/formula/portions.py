"""From items with known shares to the portions of a stage: what is held back, and what its steps add."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from fractions import Fraction
from itertools import chain

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import instead, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft, Hold, Item
from manchet.formula.model import Booking, Goes, Portion, Step
from manchet.formula.peeling import peeled_beside
from manchet.formula.poured_off import poured_of_base, wrongly_poured
from manchet.formula.stage_balance import Contents, contents, first_share, held_by_name, start_share
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN, HOT_WATER

NOTHING = Fraction(0)


class FilledStage(NamedTuple):
    """A stage with its shares: the portions, the steps with what they move, and the account of the vessel."""

    portions: tuple[Portion, ...]
    steps: tuple[Step, ...]
    account: Contents


def fill_portions(
    draft: Draft,
    items: tuple[Item, ...],
    shares: tuple[Fraction, ...],
    base: Fraction,
    flour: Callable[[Item], bool],
    booking: Callable[[Item], Booking],
    returned: Mapping[str, Fraction],
    may_weigh: Callable[[str], bool],
) -> Outcome[FilledStage]:
    """Portions of a stage. `base` is what 100 % means in it; `returned` what goes back to the pot, by culture.

    `may_weigh` says of a key whether a line that could not be read may bring it: then it is not said to be missing.
    """
    whole = [_portion(i, s, base, draft, flour(i), booking(i)) for i, s in zip(items, shares, strict=True)]
    held, reports = _with_held_back(whole, draft, base, may_weigh)
    portions = tuple(_as_warm_as_added(portion, draft.steps) for portion in held)
    steps = tuple(poured_of_base(_sized(step, base), base) for step in draft.steps)
    hot, first = draft.word in HOT_WATER, first_share(portions)
    account = contents(start_share(portions), held_by_name(portions), steps, dict(returned), hot, first)
    wrong = (*_wrong_adds(portions, steps, draft), *_of_two_warmths(draft))
    in_percent = any(item.how == "percent" for item in items)
    wrong = (*wrong, *wrongly_poured(steps, in_percent, account.left), *peeled_beside(portions, steps))
    return Outcome(FilledStage(portions, steps, account), (*reports, *wrong))


def _portion(item: Item, share: Fraction, base: Fraction, draft: Draft, flour: bool, booking: Booking) -> Portion:
    if item.how == "grams":
        percent, basis = None, ""
    elif item.basis == "what is soaked":
        percent, basis = item.figure * 100, item.basis
    elif item.basis == "all flour" or draft.share is None:
        percent, basis = share * 100, "all flour"
    else:
        percent, basis = (share / base * 100 if base else NOTHING), "stage flour"
    return Portion(
        name=item.meaning.name,
        key=item.meaning.key,
        ingredient=item.meaning.ingredient,
        stage=item.meaning.stage,
        share=share,
        percent=percent,
        basis=basis,
        celsius=item.celsius,
        booking=booking,
        counted_as=item.counted_as,
        is_flour=flour,
        to_taste=item.to_taste,
        held=item.held,
        place=item.place,
        more=item.more,
        optional=item.optional,
        counted=item.counted,
    )


def _with_held_back(
    whole: list[Portion], draft: Draft, base: Fraction, may_weigh: Callable[[str], bool]
) -> Outcome[tuple[Portion, ...]]:
    parts = [[portion] for portion in whole]
    at_hand: dict[str, list[list[Portion]]] = {}
    for part in parts:
        if not part[0].held:
            at_hand.setdefault(part[0].key, []).append(part)
    reports: list[Diagnostic] = []
    for hold in draft.holds:
        found = at_hand.get(hold.meaning.key)
        if not found and may_weigh(hold.meaning.key):
            continue
        if not found:
            message = f"{hold.meaning.name} is held back, but {draft.name} weighs none"
            help = f"weigh {hold.meaning.name} above, or leave it off the `hold back` line"
            reports.append(report("held-back-but-not-weighed", hold.place, message, help))
            continue
        part, held = found[0], _held_share(hold, base)
        if held is not None and held > part[0].share:
            name = part[0].name
            message = f"more {name} is held back than this stage weighs"
            help = f"hold back less, or write `hold back {name}` for all of it"
            reports.append(report("more-held-back-than-weighed", hold.place, message, help))
            held = None
        part[:1] = _split(part[0], held)
        if part[0].held:
            del found[0]
    return Outcome(tuple(chain.from_iterable(parts)), tuple(reports))


def _as_warm_as_added(portion: Portion, steps: Iterable[Step]) -> Portion:
    """What comes in by `add butter at 16 C` is as warm as that line says: so it is when it meets the dough."""
    if not portion.held:
        return portion
    said = (goes.celsius for step in steps for goes in step.goes if goes.key == portion.key)
    celsius = next((each for each in said if each is not None), portion.celsius)
    return portion._replace(celsius=celsius)


def _of_two_warmths(draft: Draft) -> Iterator[Diagnostic]:
    warm: dict[str, set[Fraction | None]] = {}
    for step in draft.steps:
        for goes in step.goes if step.verb in BRINGS_IN else ():
            there = warm.setdefault(goes.key, {goes.celsius})
            if goes.celsius in there:
                continue
            message = f"{goes.name} is added once at one temperature and once at another, or at none"
            help = f"say the same at both, or make a stage of what is heated apart: `stage hot {goes.name}`"
            yield report("added-at-two-warmths", step.place, message, help)


def _held_share(hold: Hold, base: Fraction) -> Fraction | None:
    if hold.figure is None:
        return None
    return hold.figure * base if hold.unit == "percent" else hold.figure


def _split(portion: Portion, held: Fraction | None) -> list[Portion]:
    """What stays of a portion and what is held back; None is all of it."""
    if held is None or held == portion.share:
        return [portion._replace(held=True)]
    stay = portion.share - held
    percent = portion.percent
    part = None if percent is None else percent * stay / portion.share
    late = None if percent is None or part is None else percent - part
    more = portion.more * portion.share / stay
    return [
        portion._replace(share=stay, percent=part, more=more),
        portion._replace(share=held, percent=late, held=True, more=NOTHING),
    ]


def _sized(step: Step, base: Fraction) -> Step:
    """`add water 3%` in shares of what 100 % means here. Weights are shares already."""
    if not step.goes or not any(goes.share is not None and goes.per_base for goes in step.goes):
        return step
    return step._replace(
        goes=tuple(
            g._replace(share=g.share * base, per_base=False) if g.share is not None and g.per_base else g
            for g in step.goes
        )
    )


def _wrong_adds(portions: tuple[Portion, ...], steps: tuple[Step, ...], draft: Draft) -> Iterator[Diagnostic]:
    waiting = held_by_name(portions)
    unweighed = {hold.meaning.key for hold in draft.holds} - set(waiting)  # said at `hold back` already
    emptied: set[str] = set()
    for step in steps:
        if step.verb not in BRINGS_IN:
            continue
        for goes in step.goes:
            if goes.of_dough is not None or goes.beyond:
                continue
            if goes.key in unweighed:
                if goes.key in emptied:
                    yield _nothing_held(goes, step.place, draft, True)
                if goes.share is None:
                    emptied.add(goes.key)
                continue
            if goes.key not in waiting:
                if not draft.may_mean("hold", goes.name):
                    yield _nothing_held(goes, step.place, draft, goes.key in emptied)
                continue
            left = waiting[goes.key] - (waiting[goes.key] if goes.share is None else goes.share)
            if left < 0:
                message = f"more {goes.name} is added than is held back"
                help = f"write `add {goes.name}` for all that is left of it"
                fixes = (instead(step.place, f"add {goes.name}"),) if len(step.goes) == 1 else ()
                yield report("more-added-than-held", step.place, message, help, fixes=fixes)
            if left <= 0:
                del waiting[goes.key]
                emptied.add(goes.key)
            else:
                waiting[goes.key] = left
    for key in waiting:
        held = next(p for p in portions if p.held and p.key == key)
        if draft.may_mean("add", held.name):
            continue
        where = next((h.place for h in draft.holds if h.meaning.key == key), held.place)
        help = f"write `add {held.name}` at the step where it goes in"
        yield report("held-back-never-added", where, f"{held.name} is held back and never added", help)


def _nothing_held(goes: Goes, place: Place, draft: Draft, emptied: bool) -> Diagnostic:
    if emptied:
        help = f"leave this one out, or say how much goes in at each: `add {goes.name} 3%`"
        message = f"{goes.name} is added here again, but all of it is in already"
        return report("added-twice", place, message, help, fixes=(without_line(place, "leave out this line"),))
    message = f"{goes.name} is added, but was neither weighed and held back nor made as a stage"
    help = f"weigh {goes.name} among the materials of {draft.name} and write `hold back {goes.name}`"
    return report("add-of-nothing-held", place, message, help)

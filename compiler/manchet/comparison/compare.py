"""Two breads, or one at two times: what is otherwise, the gravest first, and no consequence beside its cause."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction

from manchet.batch.order import AS_WRITTEN
from manchet.batch.totals import stage_prefermented
from manchet.batch.work import Work, work_of
from manchet.comparison.allergens import allergen_changes
from manchet.comparison.dishes import counted_changes
from manchet.comparison.head import head_changes
from manchet.comparison.made_with import made_with
from manchet.comparison.materials import exchanges, materials_of, share_changes
from manchet.comparison.pieces import of_noun
from manchet.comparison.portions import held_changes, kept_changes, stage_changes, warmth_changes
from manchet.comparison.ranks import rank_of
from manchet.comparison.size import at_the_size_of, size_changes
from manchet.comparison.stages import StagePairs, paired_stages
from manchet.comparison.steps import step_changes
from manchet.comparison.totals import total_changes, with_prefermented
from manchet.comparison.values import (
    Change,
    ExchangedFor,
    FlourChange,
    LossChange,
    MadeWith,
    MakesChange,
    OptionalChange,
    ShareChange,
    StageCalled,
    StageComesOrGoes,
    StageShare,
    WeighedOtherwise,
)
from manchet.comparison.worth import cost_changes, hours_change
from manchet.formula.model import Branch, Formula, Stage, Step
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import PREFERMENTS

OF_A_SIZE = (MakesChange, FlourChange, LossChange)


class Comparison(NamedTuple):
    """Two works, each as its file says, and what of the one is otherwise than in the other."""

    before: Work
    after: Work
    changes: tuple[Change, ...]

    @property
    def is_same(self) -> bool:
        return not self.changes


def comparison_of(before: Work, after: Work) -> Comparison:
    """The changes in the order they are told in; none where both are the same bread."""
    old = at_the_size_of(before, after)
    pairs = paired_stages(old, after)
    renamed = _called_otherwise(old, after)
    materials = tuple(_of_materials(old, after, pairs, renamed))
    found = [
        *allergen_changes(old, after),
        *size_changes(before, after),
        *materials,
        *_of_work(old, after, pairs, materials, renamed),
        *cost_changes(old, after),
        *hours_change(old, after),
        *head_changes(old, after),
    ]
    return Comparison(before, after, tuple(sorted(found, key=rank_of)))


# ---- materials ------------------------------------------------------------------------------------


def _of_materials(before: Work, after: Work, pairs: StagePairs, renamed: Mapping[str, str]) -> Iterator[Change]:
    """What is weighed otherwise, and what that comes to."""
    old, new = before.formula, after.formula
    exchanged = exchanges(before, after)
    shares = tuple(share_changes(before, after, exchanged, renamed))
    told: list[Change] = list(_in_file_order(new, shares, exchanged))
    told += counted_changes(before, after, renamed)
    told += _stage_shares(before, after, pairs)
    known = frozenset(key for one in told for key in _keys(one))
    names = {**pairs.now_called, **renamed, **{one.key_before: one.key_after for one in exchanged}}
    for a, b in pairs.same[:-1]:
        told += stage_changes(a, b, names, known)
    for was, now in _branch_pairs(before, after):
        told += stage_changes(_as_stage(old, was), _as_stage(new, now), names, known)
    for a, b in pairs.same:
        told += kept_changes(a, b)
    told += total_changes(before.totals, after.totals, told, _classes(before, after, known))
    told = list(with_prefermented(before.totals, after.totals, told))
    yield from told or _weighed_otherwise(pairs)
    yield from _prepared_otherwise(before, after)
    for older, newer in renamed.items():
        one, other = before.preparations[older], after.preparations[newer]
        yield StageCalled(one.name, other.name, "", "")


def _in_file_order(
    formula: Formula, shares: Sequence[ShareChange | OptionalChange], exchanged: Sequence[ExchangedFor]
) -> list[Change]:
    places = {key: at for at, key in enumerate(materials_of(formula))}
    names = {material.name: key for key, material in materials_of(formula).items()}

    def place(change: ShareChange | OptionalChange | ExchangedFor) -> int:
        key = change.key if isinstance(change, ShareChange) else names.get(_name_after(change), "")
        return places.get(key, len(places))

    return [*sorted((*shares, *exchanged), key=place)]


def _name_after(change: OptionalChange | ExchangedFor) -> str:
    return change.after if isinstance(change, ExchangedFor) else change.name


def _keys(change: Change) -> tuple[str, ...]:
    """Of the ingredients that a change of the overall formula is about."""
    if isinstance(change, ShareChange):
        return (change.key,)
    return (change.key_before, change.key_after) if isinstance(change, ExchangedFor) else ()


def _classes(before: Work, after: Work, keys: Iterable[str]) -> frozenset[str]:
    known = materials_of(before.formula) | materials_of(after.formula)
    return frozenset(known[key].class_ for key in keys)


def _stage_shares(before: Work, after: Work, pairs: StagePairs) -> Iterator[StageShare | StageComesOrGoes]:
    """In the order of the newer formula; what is gone after it."""
    partner = {new.key: old for old, new in pairs.same}
    for stage in after.formula.stages[:-1]:
        old = partner.get(stage.key)
        now = _flour_in(stage, after)
        if old is None:
            yield StageComesOrGoes(stage.name, None, now, stage.word in PREFERMENTS)
            continue
        said = old.flour_share is not None and stage.flour_share is not None
        was, now = (old.flour_share, stage.flour_share) if said else (_computed(old, before), _computed(stage, after))  # type: ignore[assignment]
        if was != now and was is not None:
            yield StageShare(stage.name, was, now, stage.word in PREFERMENTS)
    for stage in pairs.gone:
        yield StageComesOrGoes(stage.name, _flour_in(stage, before), None, stage.word in PREFERMENTS)


def _flour_in(stage: Stage, work: Work) -> Fraction:
    return _computed(stage, work) if stage.flour_share is None else stage.flour_share


def _computed(stage: Stage, work: Work) -> Fraction:
    return stage_prefermented(stage, work.larder)


def _weighed_otherwise(pairs: StagePairs) -> Iterator[WeighedOtherwise]:
    for old, new in pairs.same:
        if old.into_share != new.into_share or old.reaching != new.reaching:
            yield WeighedOtherwise(new.name, old.into_share, new.into_share)


def _prepared_otherwise(before: Work, after: Work) -> Iterator[MadeWith]:
    """By whatever is otherwise in a preparation but its size."""
    for key in made_with(after.formula):
        if key in made_with(before.formula) and _are_alike(before, after, key, key) is False:
            yield MadeWith(after.preparations[key].name)


def _called_otherwise(before: Work, after: Work) -> Mapping[str, str]:
    """The newer keys, by the older ones, of breads and preparations that go into it and are the same but for their names."""
    old, new = made_with(before.formula), made_with(after.formula)
    gone, come = [key for key in old if key not in new], [key for key in new if key not in old]
    # What still stands beside the other is another thing, and was exchanged for it.
    gone = [key for key in gone if key not in after.preparations]
    come = [key for key in come if key not in before.preparations]
    found: dict[str, str] = {}
    for key in gone:
        alike = [one for one in come if one not in found.values() and _are_alike(before, after, key, one)]
        if len(alike) == 1:
            found[key] = alike[0]
    return found


def _are_alike(before: Work, after: Work, was: str, now: str) -> bool | None:
    """Whether two things made differ in nothing but their size; None where one of them cannot be read."""
    old, new = before.preparations.get(was), after.preparations.get(now)
    if old is None or new is None:
        return None
    works = [
        work_of(formula, AS_WRITTEN, work.kitchen, work.larder, work.preparations).value
        for formula, work in ((old, before), (new, after))
    ]
    if works[0] is None or works[1] is None:
        return None
    return all(isinstance(one, OF_A_SIZE) for one in comparison_of(works[0], works[1]).changes)


# ---- what is done ---------------------------------------------------------------------------------


def _of_work(
    before: Work, after: Work, pairs: StagePairs, materials: Sequence[Change], renamed: Mapping[str, str]
) -> Iterator[Change]:
    names: Mapping[str, str] = {
        **pairs.now_called,
        **renamed,
        **{one.key_before: one.key_after for one in materials if isinstance(one, ExchangedFor)},
    }
    stages = {stage.key for stage in (*pairs.gone, *pairs.new)}
    one_sided = [one for one in materials if isinstance(one, ShareChange) and (one.before is None or one.after is None)]

    def without(stage: str) -> frozenset[str]:
        return frozenset(stages | {one.key for one in one_sided if one.stage in ("", stage)})

    for old, new in pairs.same:
        yield from warmth_changes(old, new, names)
        yield from held_changes(old, new, names)
        was, now = (old.steps, new.steps) if new is not after.formula.dough else _dough_steps(before, after)
        yield from step_changes(new.name, was, now, names, without(new.name))
        if (old.key, old.word) != (new.key, new.word):
            yield StageCalled(old.name, new.name, old.word, new.word)
    for branch, other in _branch_pairs(before, after):
        yield from step_changes(other.noun, branch.steps, other.steps, names, without(other.noun))


def _branch_pairs(before: Work, after: Work) -> Iterator[tuple[Branch, Branch]]:
    """What is done to pieces of one noun, where both sides part their dough. Of a noun that only one side makes the size tells."""
    if before.formula.is_parted != after.formula.is_parted:
        return
    for branch in after.formula.branches:
        was = of_noun(branch.noun, before.formula.branches)
        if was is not None or not branch.noun:
            yield was or Branch("", (), ()), branch
    for branch in before.formula.branches:
        if not branch.noun and of_noun("", after.formula.branches) is None:
            yield branch, Branch("", (), ())


def _dough_steps(before: Work, after: Work) -> tuple[tuple[Step, ...], tuple[Step, ...]]:
    """All that is done to the dough; where only one side parts it, with what that does to the pieces that the other makes."""
    old, new = before.formula, after.formula
    if old.is_parted == new.is_parted:
        return old.dough.steps, new.dough.steps
    noun = (new if old.is_parted else old).ways[0][0]
    return _way_of(before, noun), _way_of(after, noun)


def _way_of(work: Work, noun: str) -> tuple[Step, ...]:
    formula = work.formula
    if not formula.is_parted:
        return formula.dough.steps
    branch = of_noun(noun, formula.branches) or formula.branches[0]
    return formula.dough.steps + branch.steps


def _as_stage(formula: Formula, branch: Branch) -> Stage:
    """What is worked into the dough of one sort, as a stage is compared."""
    return formula.dough._replace(name=branch.noun, word="stage", portions=branch.added, keeps=())

"""Batches put together by hand for the tests of weighing, mixes and timing: short names, sensible defaults."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch, Weighed
from manchet.diagnostics.diagnostic import Place
from manchet.formula.model import (
    Booking,
    Branch,
    Folds,
    Formula,
    Goes,
    Heat,
    OverallLine,
    Portion,
    Range,
    Stage,
    Step,
    Wait,
    Way,
    Who,
)
from manchet.larder.ingredient import Ingredient

HERE = Place("test.bake", 1, 1, 1, 2)
MACHINES = {"mix", "blend"}
WAITS = {"rest", "ripen", "ferment", "prove", "retard", "chill", "soak", "cool", "bake", "roast", "simmer", "boil"}


def ingredient(name: str, class_: str, kept_at: int | None = None) -> Ingredient:
    return Ingredient(name, class_, kept_at=None if kept_at is None else Fraction(kept_at))


FLOUR = ingredient("white flour", "wheat flour")
WATER = ingredient("water", "water")._replace(composition={"water": Fraction(100)})
SALT = ingredient("salt", "salt")
YEAST = ingredient("instant yeast", "yeast")
STARTER = ingredient("ripe rye starter", "culture", 4)
SEEDS = ingredient("sunflower seeds", "seed")
BUTTER = ingredient("butter", "fat", 5)


def weighed(
    of: Ingredient | str, grams: Fraction | int | str, held: bool = False, celsius: int | None = None
) -> Weighed:
    """A line of an ingredient, or of the stage with this key."""
    name = of if isinstance(of, str) else of.name
    known = None if isinstance(of, str) else of
    portion = Portion(
        name=name,
        key=name,
        ingredient=known,
        stage=of if isinstance(of, str) else "",
        share=Fraction(0),
        percent=None,
        basis="",
        celsius=None if celsius is None else Fraction(celsius),
        booking=Booking.NONE,
        counted_as="",
        is_flour=known is not None and known.counts_as_flour,
        to_taste=False,
        held=held,
        place=HERE,
    )
    return Weighed(portion, Fraction(grams))


def minutes(low: int, high: int | None = None) -> Range:
    return Range(Fraction(low * 60), Fraction((low if high is None else high) * 60))


def step(
    verb: str,
    low: int | None = None,
    high: int | None = None,
    *,
    by_hand: bool = False,
    add: Sequence[str] = (),
    folds: tuple[int, int] | None = None,
    may_wait: int | None = None,
    at: int | None = None,
    each: int | None = None,
    **more: object,
) -> Step:
    """A step of `low` to `high` minutes; `each` is seconds a piece; `folds` is (number, every so many minutes)."""
    work = Who.MACHINE if verb in MACHINES else Who.WAITING if verb in WAITS else Who.HANDS
    time = minutes(low, high) if low is not None else None
    if each is not None:
        time = Range(Fraction(each), Fraction(each))
    made = Step(
        verb=verb,
        who=Who.HANDS if by_hand else work,
        place=HERE,
        time=time,
        per="each" if each is not None else "",
        goes=tuple(Goes(name, name) for name in add),
        folds=() if folds is None else (Folds("fold", folds[0], Fraction(folds[1] * 60), True),),
        may_wait=None if may_wait is None else Wait(minutes(may_wait)),
        heats=() if at is None else (Heat(Range(Fraction(at), Fraction(at))),),
    )
    return made._replace(**more) if more else made


def stage(
    key: str,
    lines: Sequence[Weighed],
    steps: Sequence[Step] = (),
    *,
    word: str = "levain",
    for_each_mix: bool = False,
    kept: Sequence[tuple[str, int]] = (),
) -> StageBatch:
    into = sum((line.grams for line in lines), Fraction(0))
    made = Stage(
        key=key,
        name="" if key == "dough" else key,
        word="dough" if key == "dough" else word,
        flour_share=None,
        portions=tuple(line.portion for line in lines),
        steps=tuple(steps),
        keeps=(),
        into_share=Fraction(0),
        out_share=Fraction(0),
        reaching=Fraction(1),
        returned_share=Fraction(0),
        for_each_mix=for_each_mix,
        shared=False,
        place=HERE,
    )
    return StageBatch(
        stage=made,
        weighed=tuple(lines),
        into=into,
        lost=Fraction(0),
        topped_up=Fraction(0),
        out=into,
        used=(),
        kept=tuple((name, Fraction(grams)) for name, grams in kept),
        returned=(),
        left=Fraction(0),
    )


def batch(
    *stages: StageBatch, pieces: Sequence[tuple[int, str]] = (), branches: Sequence[tuple[str, Sequence[Step]]] = ()
) -> Batch:
    """A batch of these stages, the dough last; `pieces` are (number, noun)."""
    formula = Formula(
        name="Test loaf",
        way=Way.BY_WEIGHT,
        kind="",
        about="",
        status="",
        makes=(),
        from_flour=None,
        dough_loss=Fraction(0),
        bake_loss=None,
        overall=(OverallLine("water", WATER, "", Fraction(65, 100), False, False, None),),
        stages=tuple(s.stage for s in stages),
        branches=tuple(Branch(noun, tuple(steps), ()) for noun, steps in branches),
        dough_share=Fraction(0),
        own_flour=Fraction(0),
        allowed=(),
        notes=(),
        pictures=(),
        place=HERE,
    )
    flour = sum((w.grams for s in stages for w in s.weighed if w.portion.is_flour), Fraction(0))
    dough = stages[-1].into
    each = dough / sum(number for number, _ in pieces) if pieces else Fraction(0)
    return Batch(
        formula=formula,
        flour=flour,
        stages=tuple(stages),
        pieces=tuple(PieceBatch(Fraction(n), noun, each, None, "") for n, noun in pieces),
        dough=dough,
        divided=dough,
    )

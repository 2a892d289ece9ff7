"""Our named tuples are those of the standard library in all that anybody sees of them."""

from __future__ import annotations

import copy
import pickle
import typing
from fractions import Fraction
from typing import Generic, TypeVar

import pytest

from manchet.records import NamedTuple

T = TypeVar("T")


class Ours(NamedTuple):
    """A crumb."""

    name: str
    grams: Fraction = Fraction(1)
    notes: tuple[str, ...] = ()

    @property
    def double(self) -> Fraction:
        return self.grams * 2


class Theirs(typing.NamedTuple):
    name: str
    grams: Fraction = Fraction(1)
    notes: tuple[str, ...] = ()


class Nothing(NamedTuple):
    pass


class Box(NamedTuple, Generic[T]):
    value: T


BOTH = pytest.mark.parametrize("kind", [Ours, Theirs])


@BOTH
def test_made_read_and_changed(kind: type[Ours]) -> None:
    one = kind("crumb", notes=("dry",))
    assert one == ("crumb", 1, ("dry",)) and hash(one) == hash(("crumb", 1, ("dry",)))
    assert (one.name, one.grams, one[2]) == ("crumb", 1, ("dry",))
    assert one._replace(grams=Fraction(2)) == kind("crumb", Fraction(2), ("dry",))
    assert kind._make(("a", 1, ())) == kind("a")
    assert one._asdict() == {"name": "crumb", "grams": 1, "notes": ("dry",)}
    assert repr(one) == f"{kind.__name__}(name='crumb', grams=Fraction(1, 1), notes=('dry',))"
    assert kind._fields == kind.__match_args__ == ("name", "grams", "notes")
    assert kind._field_defaults == {"grams": 1, "notes": ()}
    assert typing.get_type_hints(kind)["grams"] is Fraction
    assert copy.deepcopy(one) == copy.copy(one) == pickle.loads(pickle.dumps(one)) == one
    match one:
        case kind(name, grams):
            assert (name, grams) == ("crumb", 1)


@BOTH
@pytest.mark.parametrize(
    "wrong", [lambda k: k(), lambda k: k("a", 1, (), 4), lambda k: k("a", weight=2), lambda k: k._make("ab")]
)
def test_what_cannot_be_is_a_type_error(kind: type[Ours], wrong: typing.Callable[[type[Ours]], object]) -> None:
    with pytest.raises(TypeError):
        wrong(kind)


def test_a_wrong_field_is_not_replaced() -> None:
    with pytest.raises(TypeError, match="has no weight"):
        Ours("a")._replace(weight=2)  # type: ignore[call-arg]


def test_properties_generics_and_no_fields() -> None:
    assert Ours("a").double == 2
    assert Nothing() == () and Box(3).value == 3 and Box[int](3) == (3,)
    assert not hasattr(Ours("a"), "__dict__"), "as light as a tuple"


def test_a_default_before_none_is_refused() -> None:
    with pytest.raises(TypeError, match="without a default"):

        class _Wrong(NamedTuple):
            a: int = 1
            b: int  # type: ignore[misc]

"""Named tuples that are cheap to define: `from manchet.records import NamedTuple`, and on as with `typing.NamedTuple`.

The standard library writes and compiles a constructor for each class, and evaluates each annotation, at every start of
the command; of some three hundred classes a `check` makes instances of a third. Here the constructor is compiled when
the first instance is made, annotations are left as they stand, and all else is shared.
"""

from __future__ import annotations

from collections.abc import Iterable
from operator import itemgetter
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from typing import NamedTuple as NamedTuple
else:
    try:
        from _collections import _tuplegetter  # as the standard library's: faster than a property
    except ImportError:

        def _tuplegetter(index: int, doc: str) -> property:
            return property(itemgetter(index), doc=doc)

    class _Record(tuple):
        __slots__ = ()
        _fields = ()

        @classmethod
        def _make(cls, values: Iterable[Any]) -> Any:
            made = tuple.__new__(cls, values)
            if len(made) != len(cls._fields):
                raise TypeError(f"{cls.__name__} takes {len(cls._fields)} values, not {len(made)}")
            return made

        def _replace(self, /, **changes: Any) -> Any:
            made = tuple.__new__(type(self), map(changes.pop, self._fields, self))
            if changes:
                raise TypeError(f"{type(self).__name__} has no {', '.join(changes)}")
            return made

        def _asdict(self) -> dict[str, Any]:
            return dict(zip(self._fields, self, strict=True))

        def __getnewargs__(self) -> tuple[Any, ...]:
            return tuple(self)

        def __repr__(self) -> str:
            fields = ", ".join(f"{name}={value!r}" for name, value in zip(self._fields, self, strict=True))
            return f"{type(self).__name__}({fields})"

    def _constructor(cls: type[_Record]) -> Any:
        """`__new__` for one class, with its fields for arguments: as quick to call as if it stood in the file."""
        scope: dict[str, Any] = {"_tuple": tuple.__new__, "__builtins__": {}}
        values = "".join(f"{field}, " for field in cls._fields)
        made = eval(f"lambda _cls, {values}: _tuple(_cls, ({values}))", scope)
        made.__defaults__ = tuple(cls._field_defaults.values())
        made.__name__, made.__qualname__ = "__new__", f"{cls.__qualname__}.__new__"
        return made

    class _Definition(type):
        """Makes a record of a class statement; the class itself is then an ordinary one."""

        def __new__(mcs, name: str, bases: tuple[type, ...], space: dict[str, Any]) -> Any:
            fields = tuple(space.get("__annotations__", ()))
            defaults = {field: space.pop(field) for field in fields if field in space}
            if list(defaults) != list(fields[len(fields) - len(defaults) :]):
                raise TypeError(f"{name}: a field without a default follows one with a default")

            def first(cls: Any, *values: Any, **named: Any) -> Any:
                made.__new__ = _constructor(made)
                return made.__new__(cls, *values, **named)

            space |= {field: _tuplegetter(at, "") for at, field in enumerate(fields)}
            space |= {"__slots__": (), "_fields": fields, "_field_defaults": defaults, "__match_args__": fields}
            space["__new__"] = first
            made = type(name, tuple(_Record if base is _named_tuple else base for base in bases), space)
            return made

    _named_tuple = type.__new__(_Definition, "NamedTuple", (), {})

    def NamedTuple() -> None:
        """What a class statement names for its base; see this module."""

    NamedTuple.__mro_entries__ = lambda bases: (_named_tuple,)

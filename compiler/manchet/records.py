"""Named tuples that are cheap to define: `from manchet.records import NamedTuple`, and on as with `typing.NamedTuple`.

The standard library writes and compiles a constructor for each class, and evaluates each annotation, at every start of
the command. Here records of equally many fields share one compiled constructor, in which each puts the names of its own,
annotations are left as they stand, and all else is shared.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from operator import itemgetter
from types import CodeType, FunctionType
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

    _SCOPE: dict[str, Any] = {"_tuple": tuple.__new__, "__builtins__": {}}

    @cache
    def _compiled(number: int) -> CodeType:
        """The constructor of every record of so many fields, but for their names."""
        values = "".join(f"_{at}, " for at in range(number))
        made: FunctionType = eval(f"lambda _cls, {values}: _tuple(_cls, ({values}))", _SCOPE)
        return made.__code__

    def _constructor(name: str, fields: tuple[str, ...], defaults: tuple[Any, ...]) -> FunctionType:
        """`__new__` for one class, with its fields for arguments: as quick to call as if it stood in the file."""
        code = _compiled(len(fields)).replace(
            co_varnames=("_cls", *fields), co_name="__new__", co_qualname=f"{name}.__new__"
        )
        return FunctionType(code, _SCOPE, None, defaults)

    class _Definition(type):
        """Makes a record of a class statement; the class itself is then an ordinary one."""

        def __new__(mcs, name: str, bases: tuple[type, ...], space: dict[str, Any]) -> Any:
            fields = tuple(space.get("__annotations__", ()))
            defaults = {field: space.pop(field) for field in fields if field in space}
            if list(defaults) != list(fields[len(fields) - len(defaults) :]):
                raise TypeError(f"{name}: a field without a default follows one with a default")

            space |= {field: _tuplegetter(at, "") for at, field in enumerate(fields)}
            space |= {"__slots__": (), "_fields": fields, "_field_defaults": defaults, "__match_args__": fields}
            space["__new__"] = _constructor(space["__qualname__"], fields, tuple(defaults.values()))
            return type(name, tuple(_Record if base is _named_tuple else base for base in bases), space)

    _named_tuple = type.__new__(_Definition, "NamedTuple", (), {})

    def NamedTuple() -> None:
        """What a class statement names for its base; see this module."""

    NamedTuple.__mro_entries__ = lambda bases: (_named_tuple,)

"""The files that are open in an editor, each in its bakery: what is typed counts, saved or not."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator

from manchet.records import NamedTuple
from manchet.source.text import END_OF_LINE
from manchet.syntax.block import HOUSE
from manchet.workspace.folder import Premises, premises_of
from manchet.workspace.open_bakery import OpenBakery


class OpenText(NamedTuple):
    """A file as it stands in the editor. `place` is where it lies on the disk, "" for one that was never saved; `path` is
    its path in the bakery."""

    name: str
    """What the editor calls it: an address that is handed back as it came."""
    place: str
    bakery: OpenBakery
    path: str
    text: str
    version: int | None = None

    @property
    def lines(self) -> tuple[str, ...]:
        """Its lines without their ends, told as the language and the protocol tell them: no other character ends one."""
        return tuple(END_OF_LINE.split(self.text))


class Desk:
    """What lies open, and the bakeries around it, each held open once. `folders` are those that the editor works in."""

    def __init__(self, folders: Iterable[str] = ()) -> None:
        self._given = {os.path.realpath(folder): folder.rstrip(os.sep) for folder in folders}
        self.folders = tuple(self._given)
        """With all links resolved."""
        self._bakeries: dict[Premises, OpenBakery] = {}
        self._open: dict[str, OpenText] = {}

    def __iter__(self) -> Iterator[OpenText]:
        """All that is open, the last typed in first."""
        return reversed(list(self._open.values()))

    def open(self, name: str, place: str, text: str, version: int | None = None) -> OpenText:
        """Takes a file up, or what was typed in it since. Raises `Unknown` where its folder cannot be read."""
        known = self._open.pop(name, None)
        if known is None:
            bakery, path = self._at(name, place)
            known = OpenText(name, os.path.realpath(place) if place else "", bakery, path, text, version)
        opened = known._replace(text=text, version=version)
        opened.bakery.update(opened.path, text.encode("utf-8", "surrogatepass"))
        self._open[name] = opened
        return opened

    def close(self, name: str) -> None:
        """From now on what is on the disk counts."""
        closed = self._open.pop(name, None)
        if closed is not None:
            closed.bakery.update(closed.path, None)
            closed.bakery.refresh()

    def at(self, name: str) -> OpenText | None:
        return self._open.get(name)

    def name_of(self, bakery: OpenBakery, path: str) -> str | None:
        """What the editor calls a file of a bakery, where it is open."""
        return next((one.name for one in self if one.bakery is bakery and one.path == path), None)

    def as_given(self, place: str) -> str:
        """Where a file lies, by the way on which the editor came to its folder: that may lead over a link."""
        for folder, given in self._given.items():
            if place.startswith(folder.rstrip(os.sep) + os.sep):
                return given + place[len(folder.rstrip(os.sep)) :]
        return place

    def refresh(self) -> None:
        """Looks at the disk again: something was saved. Raises `Unknown` where a folder cannot be read any more."""
        for bakery in self._bakeries.values():
            bakery.refresh()

    def bakeries_in(self, folder: str) -> tuple[OpenBakery, ...]:
        """The bakeries of a folder that the editor works in: each house in it, as `check` of a file there finds it; the folder
        itself, where it is one, or belongs to one, or has none. Raises `Unknown`."""
        whole = self._held(premises_of(folder))
        root = root_of(whole)
        with_house = (file for file in whole.files if not HOUSE.isdisjoint(file.words))
        houses = sorted({premises_of(place_of(root, file.path)) for file in with_house})
        if not houses or any(house.root == root for house in houses):
            return (whole,)
        return tuple(map(self._held, houses))

    def _held(self, premises: Premises) -> OpenBakery:
        if premises not in self._bakeries:
            self._bakeries[premises] = OpenBakery(premises)
        return self._bakeries[premises]

    def _at(self, name: str, place: str) -> tuple[OpenBakery, str]:
        """The bakery of a file, and its path there. What was never saved is a bakery by itself."""
        if not place:
            return OpenBakery(), name
        place = os.path.realpath(place)
        bakery = self._around(place)
        return bakery, os.path.relpath(place, root_of(bakery)).replace(os.sep, "/")

    def _around(self, place: str) -> OpenBakery:
        """The house that a file belongs to; of one without a house the folder that the editor works in, if no house is there."""
        own = premises_of(place)
        folder = next((one for one in self.folders if place.startswith(one.rstrip(os.sep) + os.sep)), None)
        if not own.whole and folder is not None:
            found = self.bakeries_in(folder)
            if place.startswith(root_of(found[0]).rstrip(os.sep) + os.sep):
                return found[0]
        return self._held(own)


def root_of(bakery: OpenBakery) -> str:
    """The folder of a bakery; "" for one that is on no disk."""
    return "" if bakery.premises is None else bakery.premises.root


def place_of(root: str, path: str) -> str:
    """Where a file of the bakery in that folder lies."""
    return os.path.join(root, *path.split("/"))

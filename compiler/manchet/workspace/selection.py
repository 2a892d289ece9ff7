"""What was asked for on the command line: files, folders and names of formulas, found on disk.

Paths are shown as the baker can use them: relative to the folder the command runs in.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple
from manchet.source.files import SUFFIX
from manchet.syntax.block import FORMULAS
from manchet.workspace.folder import Premises, premises_of
from manchet.workspace.named_places import no_such_path, place_named, unread
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.trouble import Unknown


class Selection(NamedTuple):
    """One bakery, and what of it is wanted.

    `files` is all of it, for a formula draws on larder, kitchens and shared stages wherever they stand. `paths` are
    the files asked about; `names` the formulas asked for by name (folded), empty for every formula in `paths`.
    """

    bakery: OpenBakery
    premises: Premises
    prefix: str
    """Put before a path inside the bakery to make it a path from here."""
    paths: frozenset[str]
    names: frozenset[str]
    diagnostics: tuple[Diagnostic, ...]

    @property
    def files(self) -> tuple[Raw, ...]:
        return self.bakery.files

    @property
    def is_everything(self) -> bool:
        """No formula of the bakery is left out."""
        return not self.names and all(file.path in self.paths for file in self.files)

    @property
    def root(self) -> str:
        return self.premises.root


def selections(words: Sequence[str], held: OpenBakery | None = None) -> tuple[Selection, ...]:
    """What `words` ask for, one bakery at a time. No words ask for this folder. A bakery that is `held` open from before is
    looked at again, not opened again. Raises `Unknown`."""
    try:
        os.getcwd()
    except OSError:
        raise Unknown("the folder the command runs in no longer exists", "change to one that does") from None
    bakeries: dict[Premises, tuple[set[str], list[str]]] = {}
    for word in words or ["."]:
        _refuse_nonsense(word)
        if os.path.lexists(word):
            place = place_named(word)
            bakeries.setdefault(premises_of(place), (set(), []))[0].add(place)
        else:
            bakeries.setdefault(premises_of("."), (set(), []))[1].append(word)
    return tuple(_in_bakery(premises, places, names, held) for premises, (places, names) in bakeries.items())


class NamedPlace(NamedTuple):
    """Where a formula or preparation stands, and what it is called there."""

    name: str
    path: str
    line: int


def formula_names(files: Iterable[Raw]) -> dict[str, tuple[NamedPlace, ...]]:
    """The formulas and preparations of some files by their folded names: mostly one place each."""
    found: dict[str, tuple[NamedPlace, ...]] = {}
    for file in files:
        for top in file.blocks:
            if top.word in FORMULAS and top.name:
                for block in top.with_variants():
                    place = NamedPlace(block.name, file.path, block.line)
                    found[fold(block.name)] = (*found.get(fold(block.name), ()), place)
    return found


def never_two_of_a_name(selection: Selection) -> None:
    """Raises `Unknown` where a formula asked for by name stands in two places: which is meant has to be said."""
    for name, places in formula_names(selection.files).items():
        if name in selection.names and len(places) > 1:
            listed = " and ".join(f"{one.path}:{one.line}" for one in places)
            apart = len({one.path for one in places}) > 1
            help = f"name the file instead: {places[0].path}" if apart else "give one of them another name"
            raise Unknown(f"{places[0].name} is in {len(places)} places: {listed}", help)


def no_such_kitchen(name: str, known: Sequence[str]) -> Unknown:
    near = nearest(name, known)
    here = f"kitchens here: {', '.join(known)}" if known else "no file here has a kitchen"
    return Unknown(f"there is no kitchen called {name}", f"near: {near}" if near else here)


def _in_bakery(premises: Premises, places: set[str], names: Sequence[str], held: OpenBakery | None) -> Selection:
    root = premises.root
    prefix = _prefix(root)
    if held is not None and (held.premises, held.prefix) == (premises, prefix):
        held.refresh()
    else:
        held = OpenBakery(premises, prefix)
    files, diagnostics = held.files, held.refused
    real = {file.path: os.path.join(root, file.path.removeprefix(prefix)) for file in files}
    paths = {path for path, place in real.items() if any(_inside(place, asked) for asked in places)}
    known = formula_names(files)
    wanted = set()
    for name in names:
        if fold(name) not in known:
            if name.endswith(SUFFIX) or os.sep in name:
                raise no_such_path(name)
            raise _no_such_formula(name, [places[0].name for places in known.values()])
        wanted.add(fold(name))
        paths |= {one.path for one in known[fold(name)]}
    if places and names:
        # A folder and a name together: everything in the folder, and the one.
        wanted |= {
            key
            for key, there in known.items()
            if any(_inside(real[one.path], asked) for one in there for asked in places)
        }
    links = tuple(unread(places, real.values(), root, prefix))
    told = {one.place.path for one in links}
    said = tuple(
        one
        for one in diagnostics
        if one.place.path not in told and (not places or any(_inside(_at(root, prefix, one), p) for p in places))
    )
    return Selection(
        held, premises, prefix, frozenset(paths), frozenset(wanted) if names else frozenset(), links + said
    )


def _at(root: str, prefix: str, diagnostic: Diagnostic) -> str:
    return os.path.join(root, diagnostic.place.path.removeprefix(prefix))


def _inside(place: str, asked: str) -> bool:
    return place == asked or place.startswith(asked.rstrip(os.sep) + os.sep)


def _prefix(root: str) -> str:
    here = os.path.realpath(os.getcwd())
    try:
        relative = os.path.relpath(root, here)
    except ValueError:  # another drive
        return root.replace(os.sep, "/") + "/"
    return "" if relative == "." else relative.replace(os.sep, "/").rstrip("/") + "/"


def _refuse_nonsense(word: str) -> None:
    if not word.strip():
        raise Unknown("an empty name was given", "give a file, a folder or the name of a formula")
    if "\0" in word:
        raise Unknown(f"{word!r} is not a name for a file or a formula")


def _no_such_formula(name: str, known: Sequence[str]) -> Unknown:
    near = nearest(name, known)
    if near:
        return Unknown(f"there is no formula, file or folder called {name}", f"near: {near}")
    few = ", ".join(sorted(known)[:8])
    return Unknown(
        f"there is no formula, file or folder called {name}",
        f"formulas here: {few}{' …' if len(known) > 8 else ''}" if known else f"no {SUFFIX} file here holds a formula",
    )

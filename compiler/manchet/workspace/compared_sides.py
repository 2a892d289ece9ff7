"""What two things a comparison is of, as its words say: names, files, and either of them at a revision of git."""

from __future__ import annotations

import os
from collections.abc import Sequence

from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple
from manchet.source.files import SUFFIX
from manchet.workspace.folder import premises_of
from manchet.workspace.named_places import no_such_path
from manchet.workspace.revision import commit_of
from manchet.workspace.selection import Selection, formula_names, selections
from manchet.workspace.trouble import Unknown
from manchet.workspace.versions import in_checkout

WORKING_COPY = "working copy"
LAST_COMMIT = "HEAD"
HOW = "manchet compare OLD [NEW]: each a name, a file, a revision such as HEAD~2, HEAD~2:FILE or HEAD~2 'NAME'"


class AskedSide(NamedTuple):
    """One side as it was asked for. `revision` is "" for the working copy, or what else a side is called that git hands over; `what` a name, a file or a folder, "" for all there is."""

    revision: str
    what: str

    @property
    def called(self) -> str:
        return self.revision or WORKING_COPY


def asked_sides(words: Sequence[str]) -> tuple[AskedSide, AskedSide]:
    """The older side and the newer. One revision alone is compared with the working copy; one name or file alone, in the working copy,
    with its last commit. What only one side names is meant of both. Raises `Unknown`."""
    (here,) = selections([])
    sides = _sides(words, here)
    if not sides:
        raise Unknown("compare what?", HOW)
    if len(sides) > 2:
        raise Unknown("a comparison is of two, the older first", HOW)
    if len(sides) == 1:
        (only,) = sides
        if not only.revision:
            if not in_checkout(here.root):
                help = "name two: manchet compare OLD NEW"
                raise Unknown(f"{only.what} has no last commit: this folder is in no git checkout", help)
            sides = [AskedSide(LAST_COMMIT, only.what), only]
        else:
            sides = [only, AskedSide("", only.what)]
    old, new = sides
    return old._replace(what=old.what or new.what), new._replace(what=new.what or old.what)


def _sides(words: Sequence[str], here: Selection) -> list[AskedSide]:
    names = formula_names(here.files)
    found: list[AskedSide] = []
    waiting = list(words)
    while waiting:
        word = waiting.pop(0)
        if not word.strip() or "\0" in word:
            raise Unknown("an empty name was given" if not word.strip() else f"{word!r} is not a name", HOW)
        if os.path.lexists(word) or fold(word) in names:
            found.append(AskedSide("", word))
            continue
        revision, colon, file = word.partition(":")
        if colon and file and commit_of(here.root, revision):
            found.append(AskedSide(revision, file))
        elif commit_of(here.root, word):
            of_it = waiting.pop(0) if waiting and _is_of_a_revision(waiting[0], here) else ""
            found.append(AskedSide(word, of_it))
        else:
            raise _nothing_of_the_name(word, here)
    return found


def _is_of_a_revision(word: str, here: Selection) -> bool:
    """Whether a word behind a revision names something of it: a name, of then or of now, and no second side."""
    if os.path.lexists(word) or not word.strip():
        return False
    if fold(word) in formula_names(here.files):
        return True
    revision, colon, file = word.partition(":")
    return not commit_of(here.root, revision if colon and file else word)


def _nothing_of_the_name(word: str, here: Selection) -> Unknown:
    if not in_checkout(here.root) and ("~" in word or "^" in word or word == LAST_COMMIT):
        return Unknown(
            f"{word} cannot be looked up: this folder is in no git checkout", "commit the bakery once with git"
        )
    if word.endswith(SUFFIX) or os.sep in word:
        return no_such_path(word)
    known = [places[0].name for places in formula_names(here.files).values()]
    near = nearest(word, known)
    return Unknown(
        f"there is no formula, file or revision of git called {word}",
        f"near: {near}" if near else "a revision is a commit, a tag or a branch, as in HEAD~2",
    )


def root_of(side: AskedSide, here: Selection) -> Selection:
    """The bakery that a side is of: that of the file or folder it names, else this folder's."""
    if side.what and os.path.lexists(side.what) and premises_of(side.what) != here.premises:
        return selections([side.what])[0]
    return here

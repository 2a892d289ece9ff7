"""Another name for something, wherever it is named; refused where that name is taken or the result would not check."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from manchet.diagnostics.diagnostic import Edit, Fix, Place
from manchet.diagnostics.suggest import fold
from manchet.editor.names import Meant, Name, NamingLine, known_names, meaning, meant_at, thing_called
from manchet.editor.references import Occurrence, occurrences, place_of_definition
from manchet.larder.names import key
from manchet.source.files import rough_text_of
from manchet.source.mending import mend
from manchet.syntax import nodes as n
from manchet.syntax.nodes import Word
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.trouble import Unknown


def name_to_change(bakery: OpenBakery, path: str, line: int, column: int) -> Place:
    """The name at a position, if it can be changed. Raises `Unknown`, which says why not."""
    there, name, meant = _found(bakery, path, line, column)
    return _place(Occurrence(there, name), meant)


def rename(bakery: OpenBakery, path: str, line: int, column: int, new: str) -> tuple[Edit, ...]:
    """The edits that give what is named at a position another name. Raises `Unknown`, which says why, where that cannot be.

    An ingredient's other names, under `also called`, stay: what is changed is the name under the cursor.
    """
    there, name, meant = _found(bakery, path, line, column)
    new = " ".join(new.split())
    if not new or any(sign in new for sign in '"“”„#,'):
        raise Unknown("a name is letters, figures and spaces, without commas, quotes and #")
    old = _written(name, meant)
    if key(new) != key(old):
        _refuse_taken(bakery, there, name, new)
    changed = [one for one in occurrences(bakery, meant) if key(_written(one.name, meant)) == key(old)]
    edits = tuple(Edit(_place(one, meant), new) for one in changed)
    _check_again(bakery, edits)
    return edits


def _found(bakery: OpenBakery, path: str, line: int, column: int) -> tuple[NamingLine, Name, Meant]:
    found = meant_at(bakery, path, line, column)
    if found is None:
        raise Unknown(
            "here is no name that can be changed: put the cursor on that of a stage, an ingredient, a bread, a tin"
        )
    _, _, meant = found
    definition = place_of_definition(bakery, meant)
    if definition is None:
        raise Unknown(
            f"{meant.name} is in the larder that Manchet brings, and keeps its name: give it another one with `also called`"
        )
    if meant.sort in ("stage", "shared stage") and _is_called_by_kind(bakery, definition):
        raise Unknown(f"`{meant.name}` is a kind of stage: give it a name behind that, as in `levain sour`")
    return found


def _is_called_by_kind(bakery: OpenBakery, heading: Place) -> bool:
    found = meant_at(bakery, heading.path, heading.line, heading.column)
    return found is not None and isinstance(found[0].node, n.StageHead) and found[0].node.name is None


def _written(name: Name, meant: Meant) -> str:
    """The name as it stands there; of a variant, called after its formula, that of the formula."""
    text = name.word.text
    return text.split(", ")[0] if meant.sort == "made" and fold(text) != meant.key else text


def _place(one: Occurrence, meant: Meant) -> Place:
    """Where the name stands, without quotes around it, and without the variant behind it."""
    word, body = one.name.word, one.there.line.body
    quoted = body[word.start : word.start + 1] in ('"', "“", "„")
    start = word.start + quoted
    written = _written(one.name, meant)
    end = start + len(written) if written != word.text else word.end - quoted
    return one.there.line.place(start, end)


def _refuse_taken(bakery: OpenBakery, there: NamingLine, name: Name, new: str) -> None:
    sort = "material" if name.sort in ("made", "stage") else name.sort
    if name.sort == "variant" and there.block is not None:
        taken = any(fold(new) == fold(variant) for variant, _ in there.block.variants)
        where = there.line.place().where if taken else ""
    else:
        word = Name(Word(new, 0, 0), sort)
        meant = thing_called(bakery, new) if sort == "thing" else meaning(known_names(bakery), there, word)
        place = place_of_definition(bakery, meant) if meant is not None else None
        taken, where = meant is not None, place.where if place is not None else "in the built-in larder"
    if taken:
        raise Unknown(f"the name `{new}` is taken: {where}")


def _check_again(bakery: OpenBakery, edits: Sequence[Edit]) -> None:
    """Raises `Unknown` where the files would read otherwise: with a report that they do not have without these edits. (What the
    checks say of a dough does not hang on what its parts are called.)"""
    by_path: dict[str, list[Edit]] = {}
    for edit in edits:
        by_path.setdefault(edit.place.path, []).append(edit)
    files = bakery.part(bakery.needed(by_path.keys())).files
    names = bakery.names
    left = Counter(one.name for one in OpenBakery(files=files, elsewhere=names).read(by_path).mistakes)
    changed = [_with(file, by_path.get(file.path, ())) for file in files]
    for one in OpenBakery(files=changed, elsewhere=names).read(by_path).mistakes:
        left[one.name] -= 1
        if left[one.name] < 0:
            raise Unknown(f"with that name it would not check: {one.place.where}: {one.message}")


def _with(file: Raw, edits: Sequence[Edit]) -> Raw:
    """A file after some edits."""
    if not edits:
        return file
    text = mend(file.path, rough_text_of(file.data), [Fix("", tuple(edits))]).text
    return Raw(file.path, text.encode("utf-8", "replace"))

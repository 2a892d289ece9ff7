from __future__ import annotations

import random
from contextlib import suppress
from itertools import pairwise

from fuzz.disturbed import disturbed
from fuzz.read import PATH, bytes_of

from manchet.diagnostics.diagnostic import Fix
from manchet.editor.completion import completion
from manchet.editor.fixes import repairs
from manchet.editor.hints import hints
from manchet.editor.hover import hover
from manchet.editor.lenses import lenses
from manchet.editor.outline import folds, named_like, outline
from manchet.editor.references import definition, references
from manchet.editor.rename import rename
from manchet.editor.reports import reports_on
from manchet.editor.settings import Settings
from manchet.editor.tidying import edits_on_new_line, tidy_edits
from manchet.editor.tokens import colours
from manchet.normal.text import normal_text
from manchet.source.files import text_of
from manchet.source.mending import mend
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.trouble import Unknown

PLACES = 3
"""Of a text, that are asked about."""


def asking(text: str, rng: random.Random) -> None:
    """Whatever an editor asks, at any place of a text in haste, is answered; colours never meet; a name that is another one brings
    no new report; and what formatting types is the normal form."""
    if rng.random() < 0.5:
        text = disturbed(text, rng)
    if rng.random() < 0.3:
        text = text[: rng.randrange(len(text) + 1)]
    bakery = OpenBakery(files=[Raw(PATH, bytes_of(text))])
    source = text_of(PATH, bytes_of(text)).value
    file, settings = bakery.tree(PATH), Settings()
    reports = reports_on(bakery, PATH)
    if file is None or source is None:
        return
    last = len(file.lines) + 1
    (
        outline(file),
        folds(file),
        named_like(bakery, "a"),
        lenses(bakery, PATH, settings),
        hints(bakery, PATH, 1, last, settings),
    )
    list(repairs(file, reports, 1, last))
    for one, other in pairwise(colours(file)):
        assert one.start < one.end and (one.line < other.line or one.end <= other.start), f"colours meet: {one} {other}"
    edits = tidy_edits(bakery, PATH, source.text)
    words = bakery.read([PATH]).kitchen_for(PATH).words
    tidy = mend(PATH, source.text, [Fix("", edits)]).text if edits else source.text
    assert tidy == normal_text(source, words), f"tidied otherwise\n{tidy}"
    for _ in range(PLACES):
        line, column = rng.randrange(1, last + 2), rng.randrange(1, 60)
        hover(bakery, PATH, line, column, settings)
        completion(bakery, PATH, text, line, column)
        definition(bakery, PATH, line, column)
        references(bakery, PATH, line, column, with_definition=True)
        edits_on_new_line(bakery, PATH, line)
        with suppress(Unknown):
            rename(bakery, PATH, line, column, "quite another")

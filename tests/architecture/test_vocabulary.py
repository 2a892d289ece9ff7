"""One vocabulary: which verbs, stage words, kinds, blocks and things belong together is said there, and nowhere else."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from architecture.modules import MODULES, name_of, tree_of
from every import every

from manchet.syntax.block import BLOCKS
from manchet.syntax.openings import CONTEXTS, LINES
from manchet.syntax.things import THING, THINGS
from manchet.syntax.vocabulary import KIND, KINDS, STAGE, VERB

VOCABULARY = ("syntax/vocabulary.py", "syntax/things.py", "syntax/openings.py", "syntax/contexts.py", "syntax/block.py")
GENERATED = ("larder/builtin.py", "figures/limits/thresholds.py", "cautions/hazards.py")
"""Made from data files that have their own tests."""

TABLES = [frozenset(table) for table in (VERB, STAGE, KIND, BLOCKS, THING)]
TRAITS = ("verb ", "stage ", "kind ")
"""What stands before a word where a check says what it is about."""

OTHERS = [module for module in MODULES if name_of(module) not in VOCABULARY + GENERATED]

WORDS_THAT_ONLY_COINCIDE: dict[str, tuple[str, ...]] = {}
"""Module -> words that stand together there and mean something else than in the language."""


def _word(node: ast.AST) -> str:
    """The word a literal is, without the `verb ` of a trait; "" for anything else."""
    if not isinstance(node, ast.Constant) or not isinstance(node.value, str):
        return ""
    return next((node.value.removeprefix(trait) for trait in TRAITS if node.value.startswith(trait)), node.value)


def _groups(tree: ast.AST) -> Iterator[tuple[int, list[str]]]:
    """The words of every literal set, tuple and list, of every call, and of `x == "a" or x == "b"`, with their line."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Set | ast.Tuple | ast.List):
            yield node.lineno, [_word(element) for element in node.elts]
        elif isinstance(node, ast.Call):
            yield node.lineno, [_word(argument) for argument in node.args if _word(argument)]
        elif isinstance(node, ast.BoolOp):
            sides = [side for side in node.values if isinstance(side, ast.Compare)]
            for asked in {ast.dump(side.left) for side in sides}:
                same = [side.comparators[0] for side in sides if ast.dump(side.left) == asked]
                yield node.lineno, [_word(side) for side in same if _word(side)]


@every(OTHERS, at_least=300)
def test_words_stand_together_in_the_vocabulary_alone(module: Path) -> None:
    allowed = WORDS_THAT_ONLY_COINCIDE.get(name_of(module))
    found = [
        f"line {line}: {', '.join(words)}"
        for line, words in _groups(tree_of(module))
        if len({*words}) > 1 and any(table.issuperset(words) for table in TABLES) and tuple(words) != allowed
    ]
    assert found == [], "say it in a column of the vocabulary"


def test_the_tables_speak_of_one_another_in_words_that_are_there() -> None:
    assert {verb for kind in KINDS for verb in kind.done_by} <= VERB.keys()
    of_things = {line.words for line in LINES if "thing" in line.under} | {line.kept for line in LINES}
    assert {line for thing in THINGS for line in thing.lines} <= of_things
    contexts = {context.name for context in CONTEXTS} | {"verbs", "skipped"}
    assert {context for line in LINES for context in (*line.under, line.opens)} <= contexts

"""What holds for every test: golden files and how to renew them, no skipping where it counts, no case left unread."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings
from run_length import EXAMPLES, IS_LONG

settings.register_profile("bench", EXAMPLES)
settings.load_profile("bench")

TESTS = Path(__file__).parent

Golden = Callable[[Path, str], None]


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--update-golden", action="store_true", help="write what is computed as the expected text")


@pytest.fixture
def golden(request: pytest.FixtureRequest) -> Golden:
    """Compares a text with the one kept in a file; with --update-golden keeps it, for a person to review."""
    update = request.config.getoption("--update-golden")

    def compare(file: Path, text: str) -> None:
        if update:
            file.parent.mkdir(exist_ok=True)
            file.write_text(text, encoding="utf-8")
        assert file.exists(), f"{file} is not there: run with --update-golden and look it over"
        assert text == file.read_text(encoding="utf-8")

    return compare


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_makereport(item: pytest.Item) -> Iterator[None]:
    """On the machine that decides, a test that does not run has failed."""
    outcome: Any = yield
    report = outcome.get_result()
    if report.skipped and IS_LONG and not hasattr(report, "wasxfail"):
        report.outcome = "failed"
        report.longrepr = f"{item.nodeid} was skipped, and nothing may be: {report.longrepr}"


# ---- a case that no test reads ------------------------------------------------------------------------

_opened: set[str] = set()


def _note_opened(event: str, arguments: tuple[Any, ...]) -> None:
    if event == "open" and isinstance(arguments[0], str | os.PathLike):
        name = os.fspath(arguments[0])
        if isinstance(name, str) and name.startswith(str(TESTS)):
            _opened.add(name)


sys.addaudithook(_note_opened)


@pytest.hookimpl(optionalhook=True)
def pytest_testnodedown(node: Any) -> None:
    """A worker of a parallel run has ended: what it read counts."""
    _opened.update(getattr(node, "workeroutput", {}).get("opened", ()))


@pytest.hookimpl(trylast=True)
def pytest_sessionfinish(session: pytest.Session, exitstatus: int) -> None:
    if hasattr(session.config, "workeroutput"):
        session.config.workeroutput["opened"] = sorted(_opened)
    elif exitstatus == 0 and _ran_everything(session.config):
        unread = sorted(name for name in _data_files() if name not in _opened)
        if unread:
            session.exitstatus = pytest.ExitCode.TESTS_FAILED
            shown = "\n".join(unread[:20])
            print(f"\n{len(unread)} files under tests/ are read by no test:\n{shown}")


def _ran_everything(config: pytest.Config) -> bool:
    options = config.option
    return config.args_source is pytest.Config.ArgsSource.TESTPATHS and not any(
        (options.keyword, options.markexpr, getattr(options, "lf", False), options.collectonly, options.deselect)
    )


def _data_files() -> Iterator[str]:
    for folder, folders, files in os.walk(TESTS):
        folders[:] = [name for name in folders if not name.startswith((".", "__pycache__"))]
        yield from (os.path.join(folder, name) for name in files if not name.endswith((".py", ".pyc")))

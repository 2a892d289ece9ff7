"""Build again whenever a file is saved.

Builds everything once, then only what a save affects: the formulas in that file, those that show that picture, or, when a larder,
a kitchen, a preparation or a shared stage changed, every formula whose page would differ. While a formula has errors, its last
good sheet stays. Ctrl-C stops it.
"""

from __future__ import annotations

import argparse
import gc
import os
import signal
import sys
import time
from collections.abc import Callable, Iterator, Mapping, Sequence, Set
from contextlib import contextmanager
from typing import TYPE_CHECKING

from manchet.cli import build, sizing
from manchet.cli.reporting import UNEXPLAINED, from_here
from manchet.cli.screen import columns, paint
from manchet.cli.status import FINE
from manchet.workspace.trouble import Trouble
from manchet.workspace.workers import STOPS

if TYPE_CHECKING:
    from manchet.diagnostics.diagnostic import Diagnostic
    from manchet.source.files import Stamp
    from manchet.workspace.output import Built
    from manchet.workspace.press import Press
    from manchet.workspace.print_jobs import PrintJob
    from manchet.workspace.saves import SavedFiles, Watch
    from manchet.workspace.selection import Selection

MOST_NAMED = 6
"""Formulas that a block names; of more it says how many."""

CHANGED = (0, 0, 0)
"""The stamp of no file."""

EXAMPLES = (
    "manchet watch",
    "manchet watch recipes --out sheets --only sheet,html",
    "manchet watch /mnt/share/recipes --poll",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="*", metavar="FILE|FOLDER|FORMULA", help="what to build (default: this folder)")
    build.printing(parser)
    sizing.arguments(parser)
    parser.add_argument(
        "--poll", action="store_true", help="poll the folder, for network shares that report no changes"
    )


def run(options: argparse.Namespace) -> int:
    from manchet.diagnostics.terminal import show
    from manchet.workspace.press import Apart, Press
    from manchet.workspace.saves import Watch
    from manchet.workspace.selection import selections
    from manchet.workspace.trouble import Unknown
    from manchet.workspace.writing import output_folder

    found = selections(options.what)
    if len(found) != 1:
        raise Unknown("these belong to more than one bakery", "watch one at a time")
    build.print_options_of(options)  # what was asked for in vain is said before anything is watched
    watch = Watch(found[0].premises, options.poll)
    with watch, _stopped_by_signals(watch), Apart() as printer:
        output_folder(options.output)
        bench = Bench(options, found[0], watch, Press(printer))
        how = f"polling the folder: {watch.polling}" if watch.polling else "Ctrl-C ends it"
        bench.begin(f"watching {show(found[0].root)} ({how})")
        # What is in memory now stays: the collector need not look through it again at every save.
        gc.collect()
        gc.freeze()
        while changes := watch.wait():
            bench.saved(changes)
    print("stopped")
    return FINE


class Bench:
    """What is remembered between two saves: the pages that were printed, and what the bakery shared then."""

    def __init__(self, options: argparse.Namespace, selection: Selection, watch: Watch, press: Press) -> None:
        self.watch = watch
        self.options = options
        self.selection = selection
        self.folder = ""
        self.lying: frozenset[str] = frozenset()
        """What lay in the output folder after the last build; "" and nothing before the first."""
        self.press = press
        self.jobs: Sequence[PrintJob] = ()
        self.shared = selection.bakery.shared
        self.shows: dict[str, tuple[str, Mapping[str, Stamp | None]]] = {}
        """For each formula's slug the path of its file, and the pictures it shows as they were when it was printed."""

    def begin(self, title: str) -> None:
        """Builds everything."""
        self._going_on(title, lambda: self.block(title, self.build(None)))

    def saved(self, changes: SavedFiles) -> None:
        """Builds what the changes reach, and says so in one block."""
        names = ", ".join([*changes.changed, *(f"{path} (gone)" for path in changes.gone)])
        self._going_on(names, lambda: self._build_after(changes, names))

    def _build_after(self, changes: SavedFiles, names: str) -> None:
        from manchet.workspace.selection import selections

        before, had = self.shared, self.jobs
        (self.selection,) = selections(self.options.what, self.selection.bakery)
        reached = None
        if before == self.selection.bakery.shared:
            reached = {self.selection.prefix + path for path in changes.changed}
            reached |= self.showing(
                {os.path.join(self.selection.root, path) for path in changes.changed + changes.gone}
            )
        self.block(names, self.build(reached), orphans=self.left_behind(had))

    def _going_on(self, title: str, work: Callable[[], None]) -> None:
        """Does the work. What cannot be done now is said, and everything is built at the next save."""
        try:
            work()
            return
        except Trouble as trouble:
            # The folder or the formula asked for is gone, perhaps for the blink of an eye: wait for the next save.
            said = f"{trouble.message}; {trouble.help}" if trouble.help else trouble.message
        except Exception as fault:
            from manchet.workspace.fault_record import record_fault

            said = "; ".join(record_fault(fault))
        self.lying = frozenset()
        self.folder = ""
        self.block(title, [], said)

    def printed(self) -> Mapping[str, Stamp | None]:
        """Every picture that is shown, as it was when it was printed; one that was printed in two states has changed."""
        stamps: dict[str, Stamp | None] = {}
        for _, shown in self.shows.values():
            for file, stamp in shown.items():
                stamps[file] = stamp if stamps.get(file, stamp) == stamp else CHANGED
        return stamps

    def showing(self, pictures: Set[str]) -> set[str]:
        """The files of the formulas that show one of these."""
        return {path for path, shown in self.shows.values() if not pictures.isdisjoint(shown)}

    def left_behind(self, had: Sequence[PrintJob]) -> list[str]:
        """A line for each formula that is gone and whose sheets still lie in the output folder."""
        from manchet.workspace.output import sheets_in

        now = {job.slug for job in self.jobs}
        return [
            f"{job.block.name} is gone; its sheets still lie in {self.options.output}: {', '.join(files)}"
            for job in had
            if job.slug not in now and (files := sheets_in(self.folder, job.slug))
        ]

    def build(self, paths: set[str] | None) -> list[Built]:
        """Builds the formulas of these files, or of all; the process that prints them is warm. Where a sheet was
        taken away since the last build, all are built. Raises `Blocked` where nothing can be written."""
        from manchet.workspace.building import renderings
        from manchet.workspace.output import files_in, write_sheets
        from manchet.workspace.print_jobs import jobs_of, sized_jobs, with_last
        from manchet.workspace.writing import output_folder

        print_options = build.print_options_of(self.options)
        folder = output_folder(self.options.output)
        if not (self.folder and self.lying <= files_in(folder)):
            self.press.printed.clear()
            paths = None
        self.folder = folder
        self.shared = self.selection.bakery.shared
        self.jobs = everything = sized_jobs(jobs_of(self.selection), print_options.order)
        jobs = with_last([job for job in everything if paths is None or job.path in paths], folder)
        places = {job.slug: job.path for job in everything}
        self.shows = {slug: shown for slug, shown in self.shows.items() if slug in places}
        results: list[Built] = []
        for one in renderings(self.selection, jobs, print_options, everything, self.press):
            if one.is_formula and one.slug in places:
                self.shows[one.slug] = places[one.slug], one.shows
            results.append(write_sheets(one, folder))
            if self.watch.stopped:
                break
        self.lying = files_in(folder)
        self.watch.look_at(self.printed())
        return results

    def block(self, title: str, built: Sequence[Built], trouble: str = "", orphans: Sequence[str] = ()) -> None:
        """One calm block: when, what was saved, what came of it."""
        from manchet.diagnostics.terminal import show
        from manchet.diagnostics.text import count_of, full

        colours = paint(sys.stdout)
        lines = [f"{time.strftime('%H:%M:%S')}  {show(title)}"]
        reports: Sequence[Diagnostic] = from_here(dict.fromkeys(one for each in built for one in each.diagnostics))
        lines += [_indented(full(one, colours, max(columns(sys.stdout) - 2, 0))) for one in reports]
        changed = [each for each in built if each.written]
        if len(changed) > MOST_NAMED:
            files = count_of(sum(len(each.written) for each in changed), "file")
            lines.append(f"  {files} written, {count_of(len(changed), 'formula')}")
        else:
            lines += [f"  {show(each.name)}: {_endings(each.written)}" for each in changed]
        for each in built:
            if each.kept:
                lines.append(f"  {show(each.name)}: the last good sheet stays")
            if each.no_card:
                lines.append(f"  {show(each.name)}: no timing card was made: {show(each.no_card)}")
            if each.is_formula and each.unexplained:
                lines.append(f"  {show(each.name)} was not printed: {UNEXPLAINED}")
        lines += [f"  {show(line)}" for line in orphans]
        if trouble:
            lines.append(f"  {show(trouble)}")
        elif not any(each.written or each.kept for each in built):
            lines.append(f"  nothing to write; {count_of(sum(each.is_formula for each in built), 'formula')} looked at")
        lacking = next((each.lacking for each in built if each.lacking), "")
        if lacking:
            lines.append(f"  no PDF: {lacking}")
        print("\n".join(lines), end="\n\n", flush=True)


@contextmanager
def _stopped_by_signals(watch: Watch) -> Iterator[None]:
    """Ctrl-C and a polite kill end the watch after the file in hand; a second Ctrl-C at once."""

    def stop(number: int, frame: object) -> None:
        watch.stop()
        signal.signal(signal.SIGINT, signal.default_int_handler)

    kept = {number: signal.signal(number, stop) for number in STOPS}
    try:
        yield
    finally:
        for number, handler in kept.items():
            signal.signal(number, handler)


def _endings(paths: Sequence[str]) -> str:
    """`card (html, pdf), sheet (html, pdf)`"""
    forms: dict[str, list[str]] = {}
    for path in paths:
        kind, form = os.path.basename(path).split(".")[-2:]
        forms.setdefault(kind, []).append(form)
    return ", ".join(f"{kind} ({', '.join(found)})" for kind, found in forms.items())


def _indented(text: str) -> str:
    return "\n".join(f"  {line}" for line in text.split("\n"))

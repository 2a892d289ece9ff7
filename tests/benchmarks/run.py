"""How fast, next to what: every ratio measured side by side in one run, none of them judged.

    python tests/benchmarks/run.py [SECTION …] [--large] [--before MANCHET]
    python tests/benchmarks/run.py scheduling FOLDER

Sections: start, many, kitchen, second, pdf, watch, build, before, memory, growth, planning, editing; all of them when none is named. `--large` checks
10,000 formulas too. `before` holds this version against another one, whose command is named. Ratios are printed beside what they
are hoped to be at most (or at least). Nothing else should be running, and an editable install hides half of a start:
measure from a wheel, with PYTHONDONTWRITEBYTECODE unset.

`scheduling` plans the published instances that the `optima.csv` of a folder names, each against its published optimum.
"""

from __future__ import annotations

import argparse
import os
import resource
import shutil
import statistics
import subprocess
import sys
import sysconfig
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from random import Random

from editing import editing
from generate import in_overall, recipe, write
from growing import FAMILIES, Family, write_grown
from planning import planning
from yaml_twin import yaml_of

from manchet.source.files import LARGEST

MANCHET = Path(sysconfig.get_path("scripts")) / "manchet"
DEMO = Path(__file__).parents[2] / "recipes"
Row = tuple[str, float, str]
Options = argparse.Namespace


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("section", nargs="*", metavar="SECTION", help=", ".join(SECTIONS))
    parser.add_argument("--large", action="store_true", help="check 10,000 formulas too")
    parser.add_argument("--before", type=Path, metavar="MANCHET", help="the command of another version, for `before`")
    options = parser.parse_args()
    options.folder = None
    if options.section[:1] == ["scheduling"]:
        options.folder = Path(options.section.pop()) if len(options.section) == 2 else parser.error("scheduling FOLDER")
    for name in options.section or [name for name in SECTIONS if name != "scheduling"]:
        print(f"\n{name}", flush=True)
        for what, figure, hoped in SECTIONS[name](options):
            print(f"  {what:<66}{figure:>10.3f}  {hoped}", flush=True)


# ---- measuring ----------------------------------------------------------------------------------------


def seconds(work: Callable[[], object], times: int = 1) -> float:
    """The median time of some work."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return statistics.median(taken)


def alternating(one: Callable[[], object], other: Callable[[], object], times: int) -> tuple[float, float]:
    """Median times of two works done in turn, so that both see the same machine."""
    pairs = [(seconds(one), seconds(other)) for _ in range(times)]
    return statistics.median(a for a, _ in pairs), statistics.median(b for _, b in pairs)


def run(*words: object, cache: Path | None = None, may_end_with: tuple[int, ...] = (0,)) -> None:
    """A command, its output thrown away. Without a cache folder, nothing is kept from one run to the next."""
    kept = {"XDG_CACHE_HOME": str(cache)} if cache else {"MANCHET_CACHE": "off"}
    done = subprocess.run(
        [str(word) for word in words], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, env={**os.environ, **kept}
    )
    if done.returncode not in may_end_with:
        sys.exit(f"{' '.join(map(str, words))} ended with {done.returncode}: {done.stderr.decode()[-2000:]}")


@contextmanager
def shelf(number: int, seed: int = 0) -> Iterator[Path]:
    """A folder of formulas for a while."""
    folder = Path(tempfile.mkdtemp(prefix="bakery-"))
    try:
        write(folder / "formulas", number, seed)
        yield folder
    finally:
        shutil.rmtree(folder)


# ---- sections -----------------------------------------------------------------------------------------


def start(_: Options) -> Iterator[Row]:
    with shelf(1) as folder:
        (file,) = (folder / "formulas").rglob("*.bake")
        cache = folder / "cache"
        bare, cold = alternating(lambda: run(sys.executable, "-c", "pass"), lambda: run(MANCHET, "check", file), 15)
        run(MANCHET, "check", file, cache=cache)
        bare_again, warm = alternating(
            lambda: run(sys.executable, "-c", "pass"), lambda: run(MANCHET, "check", file, cache=cache), 15
        )
        fresh = Path(tempfile.mkdtemp(dir=folder))
        emptied = seconds(lambda: (shutil.rmtree(fresh), run(MANCHET, "check", file, cache=fresh)), 9)
    yield "bare interpreter, ms", bare * 1000, ""
    yield "cold check of one formula, nothing kept / bare", cold / bare, "at most 6"
    yield "the same, filling an empty cache / bare", emptied / bare, "at most 7"
    yield "check when nothing changed / bare", warm / bare_again, "at most 2.9"


LOAD = "import sys, yaml\nfor name in sys.argv[1:]:\n    yaml.load(open(name).read(), yaml.SafeLoader)"


def many(options: Options) -> Iterator[Row]:
    with shelf(1000) as folder:
        random, facts = Random(0), folder / "facts"
        facts.mkdir()
        for one in range(1, 1001):
            (facts / f"{one:04d}.yaml").write_text(yaml_of(recipe(random, one)), encoding="utf-8")
        names = sorted(facts.iterdir())
        loading, one_core = alternating(
            lambda: run(sys.executable, "-c", LOAD, *names),
            lambda: run(MANCHET, "check", folder / "formulas", "--jobs", 1),
            3,
        )
        as_it_comes = seconds(lambda: run(MANCHET, "check", folder / "formulas"), 3)
    yield "SafeLoader over 1,000 files of the same facts, s", loading, ""
    yield "check of 1,000 formulas in one process / SafeLoader", one_core / loading, "at most 0.85"
    yield "check of 1,000 formulas as it comes / SafeLoader", as_it_comes / loading, "at most 1"
    if options.large:
        with shelf(10_000) as folder:
            yield (
                "10,000 formulas / 1,000",
                seconds(lambda: run(MANCHET, "check", folder / "formulas")) / as_it_comes,
                "10",
            )


@contextmanager
def shelf_in_a_kitchen(number: int) -> Iterator[Path]:
    """A shelf with the demo's kitchen: its oven, mixer, tins and scales are asked about every formula."""
    with shelf(number) as folder:
        shutil.copy(DEMO / "bakehouse.bake", folder / "formulas")
        yield folder


def kitchen(_: Options) -> Iterator[Row]:
    with shelf(300) as plain, shelf_in_a_kitchen(300) as equipped:
        without, with_kitchen = alternating(
            lambda: run(MANCHET, "check", plain / "formulas", "--jobs", 1),
            lambda: run(MANCHET, "check", equipped / "formulas", "--jobs", 1),
            3,
        )
    yield "check of 300 formulas with the demo's kitchen, s", with_kitchen, ""
    yield "check of 300 formulas with the demo's kitchen / without", with_kitchen / without, ""


def before(options: Options) -> Iterator[Row]:
    """This version and another, in turn, on what a baker waits for."""
    if options.before is None:
        return
    formula = DEMO / "breads" / "tern-loaf.bake"
    with shelf(1) as one, shelf_in_a_kitchen(300) as many_in_kitchen:
        for what, times, words, hoped in (
            ("cold check of one formula", 15, ("check", one / "formulas"), ""),
            (
                "check of 300 formulas with the demo's kitchen",
                3,
                ("check", many_in_kitchen / "formulas", "--jobs", 1),
                "0.6",
            ),
            ("check of the demo", 5, ("check", DEMO), ""),
            ("figures of one formula of the demo", 9, ("figures", formula), "0.6"),
            (
                "build of the demo without PDF",
                3,
                ("build", DEMO, "--only", "html,json", "--out", one / "out"),
                "0.75",
            ),
        ):
            then, now = alternating(
                # What one version has words for may be a mistake to the other: both work all the rest out.
                lambda words=words: run(options.before, *words, may_end_with=(0, 1)),  # type: ignore[misc]
                lambda words=words: run(MANCHET, *words, may_end_with=(0, 1)),  # type: ignore[misc]
                times,
            )
            yield f"{what} / before", now / then, hoped and f"at most {hoped}"


def second(_: Options) -> Iterator[Row]:
    with shelf(1000) as folder:
        file = sorted((folder / "formulas").rglob("*.bake"))[500]
        cache = folder / "cache"
        first = seconds(lambda: run(MANCHET, "check", folder / "formulas", cache=cache))
        other = recipe(Random(7), 501)
        changed = []
        for salt in range(5):
            text = in_overall(other).replace('about "', f'about "Tried {salt + 1} times. ')
            file.write_text(text, encoding="utf-8")
            changed.append(seconds(lambda: run(MANCHET, "check", folder / "formulas", cache=cache)))
        nothing = seconds(lambda: run(MANCHET, "check", folder / "formulas", cache=cache), 5)
    yield "first check of 1,000 formulas, s", first, ""
    yield "second check with one file changed / first", statistics.median(changed) / first, "at most 0.07"
    yield "second check with nothing changed / first", nothing / first, ""


def _alone(html: str) -> Callable[[], object]:
    """WeasyPrint by itself on a page, with the fonts it asks for, warm."""
    from manchet.sheets.page.pdf import engine

    tool = engine()

    def work() -> object:
        page = tool.weasyprint.HTML(string=html, url_fetcher=tool.fetch)  # type: ignore[union-attr]
        return page.write_pdf(
            stylesheets=[tool.style],  # type: ignore[union-attr]
            font_config=tool.fonts,  # type: ignore[union-attr]
            pdf_variant="pdf/ua-1",
        )

    return work


def _build(folder: Path, out: Path, *words: object) -> None:
    run(MANCHET, "build", folder, "--out", out, *words)


def pdf(_: Options) -> Iterator[Row]:
    from manchet.sheets.page.pdf import pdf_of

    with shelf(1) as folder:
        out = folder / "out"
        _build(folder / "formulas", out)
        for page in sorted(out.rglob("*.html")):
            html = page.read_text(encoding="utf-8")
            alone = _alone(html)
            alone(), pdf_of(html)
            by_itself, ours = alternating(alone, lambda html=html: pdf_of(html), 15)  # type: ignore[misc]
            yield f"{page.name}: WeasyPrint alone, ms", by_itself * 1000, ""
            yield f"{page.name}: our PDF / WeasyPrint alone", ours / by_itself, "at most 1.10"


def watch(_: Options) -> Iterator[Row]:
    with shelf(1) as folder:
        (file,) = (folder / "formulas").rglob("*.bake")
        out = folder / "out"
        _build(folder / "formulas", out)
        (page,) = out.rglob("*sheet*.html")
        alone = _alone(page.read_text(encoding="utf-8"))
        alone()
        by_itself = seconds(alone, 15)
        sheet = page.with_suffix(".pdf")
        watching = subprocess.Popen(
            [str(MANCHET), "watch", str(folder / "formulas"), "--out", str(out), "--only", "sheet"],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        try:
            time.sleep(4)
            taken = []
            for _ in range(12):
                before = sheet.stat().st_mtime_ns
                head, tail = file.read_text(encoding="utf-8").split("loaves at ", 1)
                weight, rest = tail.split(" ", 1)
                start = time.perf_counter()
                file.write_text(f"{head}loaves at {int(weight) + 1} {rest}", encoding="utf-8")
                while sheet.stat().st_mtime_ns == before:
                    if watching.poll() is not None or time.perf_counter() - start > 30:
                        sys.exit("watch did not write the sheet")
                    time.sleep(0.002)
                taken.append(time.perf_counter() - start)
                time.sleep(1)
        finally:
            watching.terminate()
            watching.wait(10)
    median = statistics.median(taken[2:])
    yield "WeasyPrint alone on that sheet, ms", by_itself * 1000, ""
    yield "save to finished PDF, ms", median * 1000, ""
    yield "save to finished PDF / WeasyPrint alone", median / by_itself, "at most 1.3"


def build(_: Options) -> Iterator[Row]:
    with shelf(200) as folder:
        one, two = alternating(
            lambda: _build(folder / "formulas", folder / "one", "--jobs", 1),
            lambda: _build(folder / "formulas", folder / "two", "--jobs", 2),
            1,
        )
    yield "build of 200 formulas on one core, s", one, ""
    yield "one core / two cores", one / two, "at least 1.7"


def memory(_: Options) -> Iterator[Row]:
    """Rebuilds as watching does them, which prints in a process of its own: the resident set of both, after 100 and
    after 1,000. A printing process grows until it is replaced, so the highest of the last 100 is what counts."""
    from manchet.workspace.press import Apart

    with shelf(1) as folder:
        _build(folder / "formulas", folder / "out")
        html = next((folder / "out").rglob("*sheet*.html")).read_text(encoding="utf-8")
    from manchet.source.text import SourceText
    from manchet.workspace.bakery import read

    random, sizes = Random(3), []
    with Apart() as printer:
        for turn in range(1, 1001):
            read([SourceText("formula.bake", in_overall(recipe(random, turn)))])
            printer(html.replace("<title>", f"<title>{turn} ", 1))
            sizes.append(_resident())
    yield "highest of the first 200 rebuilds, MB", max(sizes[:200]), ""
    yield "highest of the last 200 / of the first 200", max(sizes[-200:]) / max(sizes[:200]), "1 is flat"
    yield "highest ever, MB", max(sizes), ""


TELLING = 0.2
"""Seconds beside the start of the command from which on twice of it is more than chance."""


def growth(options: Options) -> Iterator[Row]:
    """Each thing that a bakery can have many of, at sizes that double until a run takes a second: how much longer the last takes
    than the one before, the start of the command taken off both. Where the most that there can be takes no time to speak of:
    how much longer than one it takes, start and all."""
    for name, family in FAMILIES.items():
        start, sizes, taken = _grown(family, 1), [], []
        for number in _sizes(family):
            sizes.append(number)
            taken.append(_grown(family, number) - start)
            if taken[-1] > 1.0 and len(taken) > 1:
                break
        if len(taken) > 1 and taken[-2] > TELLING:
            yield f"{name}: {sizes[-1]:,} / {sizes[-2]:,}", taken[-1] / taken[-2], "at most 2.3"
        else:
            yield f"{name}: {sizes[-1]:,}, the most of them / 1", 1 + taken[-1] / start, ""


def _sizes(family: Family) -> Iterator[int]:
    """Each twice the one before, up to the most that is not refused; none of them makes a file larger than one may be."""
    number = family.smallest
    while number <= family.largest and all(len(text) <= LARGEST for text in family.files(number).values()):
        yield number
        number *= 2


def _grown(family: Family, number: int) -> float:
    """Seconds of the processor for a bakery of that size, the least of three runs."""
    folder = Path(tempfile.mkdtemp(prefix="bakery-"))
    try:
        write_grown(family, number, folder / "bakery")
        command, *words = family.words
        out = ("--out", folder / "out") if command == "build" else ()
        taken = []
        for _ in range(3):
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            run(MANCHET, command, folder / "bakery", *words, *out, "--jobs", 1, may_end_with=(0, 1))
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
            taken.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
        return min(taken)
    finally:
        shutil.rmtree(folder)


def _resident() -> float:
    """Megabytes resident now, of this process and of those it started."""
    own = os.getpid()
    children = Path(f"/proc/{own}/task/{own}/children").read_text(encoding="ascii").split()
    pages = 0
    for process in (own, *children):
        with suppress(FileNotFoundError):
            pages += int(Path(f"/proc/{process}/statm").read_text(encoding="ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def scheduling(options: Options) -> Iterator[Row]:
    """Seconds of each, and what was found."""
    from published import published_in

    from manchet.day.model import Planned
    from manchet.day.posting import NotPlanned, plan_by_hand
    from manchet.day.solving.search import Answer, Limits, planned_by_solver

    def found(answer: Answer) -> str:
        if answer.planned is None:
            return "proven to have none" if answer.is_impossible else "none found"
        late = answer.planned.goals[0]
        return f"{late.value}, {'proven' if late.proven else f'at least {late.bound}'}"

    for name, day, optimum in published_in(options.folder):
        answers: list[Answer] = []
        taken = seconds(lambda day=day, kept=answers: kept.append(planned_by_solver(day, None, Limits(then=0))))  # type: ignore[misc]
        planned = answers[0].planned
        is_right = planned.goals[0].value == optimum if planned else answers[0].is_impossible and optimum is None
        verdict = "as published" if is_right else f"PUBLISHED IS {optimum}"
        yield f"seconds for {name}: {found(answers[0])}", taken, verdict
        by_hand: list[Planned | NotPlanned] = []
        taken = seconds(lambda day=day, kept=by_hand: kept.append(plan_by_hand(day)))  # type: ignore[misc]
        plan = by_hand[0]
        late = (
            f"{plan.goals[0].value} late"
            if isinstance(plan, Planned)
            else "proven to have none"
            if plan.is_impossible
            else "none found"
        )
        yield f"seconds for {name}, by hand: {late}", taken, f"published is {optimum}"


SECTIONS: dict[str, Callable[[Options], Iterator[Row]]] = {
    "start": start,
    "many": many,
    "kitchen": kitchen,
    "second": second,
    "pdf": pdf,
    "watch": watch,
    "build": build,
    "before": before,
    "memory": memory,
    "growth": growth,
    "scheduling": scheduling,
    "planning": planning,
    "editing": editing,
}

if __name__ == "__main__":
    main()

"""What a timing card says, read as one reads it: a line of text for each job."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.sheets.forms.timing_card.view import CardJob, CardLine, CardWait, CardWeight, Clause, LoadList, TimingCard


def plain(said: str) -> str:
    return said.replace("\N{NO-BREAK SPACE}", " ")


def jobs_of(card: TimingCard) -> Iterator[CardJob | LoadList]:
    return (job for day in card.days for job in day.jobs)


def lines_of(card: TimingCard) -> Iterator[tuple[str, CardLine]]:
    """Every line with its clock."""
    return ((job.clock, line) for job in jobs_of(card) if isinstance(job, CardJob) for line in job.lines)


def clauses_of(card: TimingCard) -> Iterator[Clause | CardWait]:
    for job in jobs_of(card):
        if isinstance(job, LoadList):
            yield from job.clauses
            continue
        for line in job.lines:
            yield from line.clauses
            if line.wait is not None:
                yield line.wait


def said_of(card: TimingCard) -> list[tuple[str, str]]:
    """Clock and text, without small remarks and what is weighed into the bowl."""
    return [(clock, text_of(line)) for clock, line in lines_of(card)]


def notes_of(card: TimingCard) -> list[str]:
    return [plain(clause.note) for clause in clauses_of(card) if clause.note]


def text_of(line: CardLine) -> str:
    said = [_clause(clause) for clause in line.clauses]
    if line.wait is not None:
        wait = line.wait
        do = f"{wait.do} {wait.about}".strip()
        said.append(" ".join(filter(None, (f"{do} → {wait.ends_day} {wait.ends}".replace("  ", " "), wait.how))))
    return plain(": ".join(filter(None, (line.whose, " · ".join(said)))))


def _clause(clause: Clause) -> str:
    weights = ", ".join(_weight(weight) for weight in clause.weights)
    do = " ".join(filter(None, (clause.do, weights, clause.about)))
    return f"{do}{clause.how}" if clause.how[:1] in (":", ",") else " ".join(filter(None, (do, clause.how)))


def _weight(weight: CardWeight) -> str:
    figure = " ".join(filter(None, (weight.number and f"{weight.number} ×", weight.weight, weight.unit)))
    return " ".join(filter(None, (figure, weight.name, weight.beside)))

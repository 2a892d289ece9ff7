"""The labels of one formula: what its declarations say, in the words and measures of their market."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from fractions import Fraction

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.label.declaration import Declaration, labelled_pieces
from manchet.label.markets import US, allergen_list
from manchet.label.nutrition import Panel, figure_in
from manchet.quantities.printing import decimal
from manchet.sheets.forms.label.view import LabelRun, Labels, PanelRow, SaleLabel
from manchet.sheets.page.dates import day_month, day_month_year
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import DAY, NBSP, OUNCE, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.label_paper import label_paper

PART_OF = frozenset({"saturates", "sugars"})


def labels(work: Work, issue: Issue, house: House) -> Labels | None:
    """None where no piece of it is sold with a label, or what it must say is not known: `check` says what."""
    words = words_of(house.words)
    m = Measures(house, words)
    made = [
        _label(declared, piece, issue.made, m)
        for piece, declarations in labelled_pieces(work)
        for declared in {one.mark: one for one in declarations if not one.is_withheld}.values()
    ]
    if not made:
        return None
    name = work.formula.name
    paper = label_paper(work.kitchen.selling.labels, house.paper)
    return Labels(name, words["language"], house.paper, running_head(name, "", issue), paper, tuple(made))


def _label(declared: Declaration, piece: SoldPiece, made: date | None, m: Measures) -> SaleLabel:
    say = m.words.say
    is_us = declared.market == US
    marked = any(run.strong for run in declared.ingredients.runs)
    may = tuple(allergen_list(declared.market).name(word).upper() for word in declared.may_contain)
    contains = ", ".join(word.upper() for word in declared.contains) if is_us else ""
    mark = declared.date_mark
    return SaleLabel(
        name=declared.name,
        called=declared.called,
        market=declared.market,
        contains=say("label.contains", contains) if contains else "",
        ingredients=tuple(
            LabelRun(run.text.replace(" %", f"{NBSP}%"), run.strong) for run in declared.ingredients.runs
        ),
        allergens=m.words["label.see"] if marked and not is_us else "",
        may_contain=", ".join(may),
        panel=tuple(_rows(declared, declared.table, m)) if declared.table else (),
        slice=_slice_head(declared, m) if declared.table else "",
        net=_net(declared.net, is_us) or (m.words["label.to_weigh"] if declared.sold_by_weight else ""),
        date_word=m.words[f"label.{mark.word.replace(' ', '_')}"] if mark else "",
        date=day_month_year(made + timedelta(days=_days(mark.seconds))) if mark and made else "",
        kept=tuple(_kept(declared, m)),
        lot=f"{declared.name}, {day_month(made)}" if made else "",
        address=declared.address,
        approved=declared.is_approved,
        mark=declared.mark,
        copies=int(piece.number),
    )


def _slice_head(declared: Declaration, m: Measures) -> str:
    if declared.slices is None or declared.slice_grams is None:
        return ""
    return m.words.say("label.per_slice", str(declared.slices), f"{decimal(declared.slice_grams, 0)}{NBSP}g")


def _rows(declared: Declaration, panel: Panel, m: Measures) -> Iterator[PanelRow]:
    for line in panel.lines:
        if not line.is_known:  # fibre alone, see `Declaration.table`
            continue
        figure = f"{line.text}{NBSP}{line.unit}"
        grams = declared.slice_grams
        of_slice = "" if grams is None else f"{figure_in(line, declared.market, grams)}{NBSP}{line.unit}"
        yield PanelRow(m.words.table["label"]["lines"][line.name], figure, line.name in PART_OF, of_slice)


def _net(grams: Fraction | None, is_us: bool) -> str:
    """In the United States in ounces first (21 CFR 101.7)."""
    if grams is None:
        return ""
    metric = f"{decimal(grams, 0)}{NBSP}g" if grams < 1000 else f"{decimal(grams / 1000, 3)}{NBSP}kg"
    return f"{decimal(grams / OUNCE, 1)}{NBSP}oz ({metric})" if is_us else metric


def _days(seconds: Fraction) -> int:
    """Whole days, so that no date promises more than the file."""
    return int(seconds // DAY)


def _kept(declared: Declaration, m: Measures) -> Sequence[str]:
    kept = []
    mark = declared.date_mark
    if declared.store:
        kept.append(_sentence(declared.store))
    elif mark is not None and mark.celsius is not None:
        kept.append(m.words.say("label.keep_at", m.degrees(mark.celsius)))
    if declared.opened:
        kept.append(m.words.say("label.opened", declared.opened.rstrip(".")))
    return kept


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:].rstrip(".")

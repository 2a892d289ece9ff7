"""A fix is data that heals: carried out, its report is gone and none has come."""

from __future__ import annotations

from diagnostics.fixing import after, said
from every import every
from works import reports_of

from manchet.diagnostics.catalogue import explain, names

CASES = {name: case for name in names() if (case := explain(name)) is not None and case.mistake}
"""Every report that a text can show, by its name."""
MENDABLE = {name: case for name, case in CASES.items() if any(one.fixes for one in reports_of(case.mistake))}


@every(MENDABLE, at_least=1)
def test_the_first_fix_of_a_case_leaves_no_report(name: str) -> None:
    (report,) = reports_of(CASES[name].mistake)
    assert said(reports_of(after(CASES[name].mistake, report.fixes[0]))) == []


@every(MENDABLE, at_least=1)
def test_each_choice_takes_its_own_report_away(name: str) -> None:
    (report,) = reports_of(CASES[name].mistake)
    for fix in report.fixes:
        left = reports_of(after(CASES[name].mistake, fix))
        assert name not in {one.name for one in left}, (fix.title, said(left))


@every(MENDABLE, at_least=1)
def test_a_fix_is_told_as_what_to_type(name: str) -> None:
    (report,) = reports_of(CASES[name].mistake)
    titles = [fix.title for fix in report.fixes]
    assert len(set(titles)) == len(titles)
    for fix in report.fixes:
        assert fix.edits and fix.title[0].islower() and not fix.title.endswith("."), fix.title
        assert not (fix.safe and len(report.fixes) > 1), "two readings are never safe"

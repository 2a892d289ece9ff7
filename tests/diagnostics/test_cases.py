"""How a case is read: its head, its marks, and a whole second file where the marks would be too many."""

from __future__ import annotations

import pytest

from manchet.checks.literals import module_of as index_of
from manchet.diagnostics.case import case_of
from manchet.diagnostics.literals import module_of as names_of

HEAD = "# warning: salt stands twice: keep one\n#\n# Nobody knows which is meant.\n#\n# Ask.\n"
MARKED = """
overall
  flour
#^ twice
  salt 2%
#=salt 1%
#+pepper

  salt 3%
#-
"""


def test_the_head_says_how_grave_it_is_and_why_it_matters() -> None:
    case = case_of("twice", HEAD)
    assert case[:4] == ("twice", "warning", "salt stands twice: keep one", "Nobody knows which is meant.\n\nAsk.")
    assert case[4:] == ("", 0, "")


def test_marks_say_where_the_report_is_and_how_it_is_put_right() -> None:
    case = case_of("twice", HEAD + MARKED)
    assert case.mistake == "overall\n  flour\n  salt 2%\n\n  salt 3%\n"
    assert case.line == 2
    assert case.put_right == "overall\n  flour\n  salt 1%\n  pepper\n\n"


def test_an_empty_line_comes_in_as_an_empty_mark() -> None:
    assert case_of("twice", f"{HEAD}\nsalt\n#^ twice\n#+\n").put_right == "salt\n\n"


def test_a_whole_second_file() -> None:
    case = case_of("twice", f"{HEAD}\nsalt\n#^ twice\n# ---- put right ----\npepper\n")
    assert (case.mistake, case.line, case.put_right) == ("salt\n", 1, "pepper\n")


@pytest.mark.parametrize("mistake", ["\tsalt\n", "salt\r\n\r", "sаlt", "  salt \n"], ids=repr)
def test_every_byte_of_a_mistake_is_kept(mistake: str) -> None:
    case = case_of("twice", f"{HEAD}\nx\n#^ twice\n{mistake}")
    assert case.mistake == case.put_right == f"x\n{mistake}"


@pytest.mark.parametrize(
    "text",
    [
        "",
        "formula Plain\n",
        "# no severity\n#\n# Text.\n",
        "# note: no text\n",
        f"{HEAD}\nsalt\n",
        f"{HEAD}\nsalt\n#^ thrice\n",
        f"{HEAD}salt\n#^ twice\n",
        f"{HEAD}\n#^ twice\nsalt\n",
        f"{HEAD}\n#- \nsalt\n#^ twice\n",
        f"{HEAD}\nsalt\n#^ twice\nsalt\n#^ twice\n",
    ],
    ids=repr,
)
def test_what_is_no_case_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"\btwice\b"):
        case_of("twice", text)


def test_a_name_is_used_by_one_package_only() -> None:
    with pytest.raises(ValueError, match="twice is explained in formula/reports and in larder/reports"):
        names_of({"formula/reports/twice.bake": HEAD, "larder/reports/twice.bake": HEAD})


def test_a_severity_is_one_of_three() -> None:
    with pytest.raises(ValueError, match="disaster"):
        names_of({"formula/reports/twice.bake": HEAD.replace("warning", "disaster")})


@pytest.mark.parametrize(
    "checks",
    [
        {"keeping/too_old.py": 'ABOUT = ("keep",)\n'},
        {"keeping/too_old.py": 'NAME = "too-old"\n'},
        {"keeping/too_old.py": 'NAME = "too-young"\nABOUT = ()\n'},
        {f"{topic}/too_old.py": 'NAME = "too-old"\nABOUT = ()\n' for topic in ("keeping", "baking")},
    ],
    ids=["no name", "about nothing said", "another name", "twice"],
)
def test_a_check_says_its_name_once_and_what_it_is_about(checks: dict[str, str]) -> None:
    with pytest.raises(ValueError, match=r"too_old\.py"):
        index_of(checks)

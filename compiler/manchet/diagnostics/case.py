"""A case: one report explained to a baker, a formula that has the mistake, and the same formula put right.

    # warning: less salt than such a bread usually has
    #
    # 0.2% salt is 2 g on 1 kg of flour, where 18 to 22 g are usual: mostly a slipped decimal point.

    formula Plain loaf
      …
        water                 70%
        salt                   0.2%
    #^ salt-low
    #=  salt                   2%

The file is called as its report and stands beside the code that makes it. It is itself a formula file, mistake and all;
what makes it a case stands in comments. The first says how grave the report is and what it is about, the rest of the head
why it matters. In the formula

    #^ NAME  the report stands on the line above
    #=       put right, the line above reads so; the mark stands where two spaces of its indentation are
    #+       put right, this line is added
    #-       put right, the line above is left out

and no other comment stands in the first column. Where more than a few lines differ, the whole file put right follows a
line `PUT_RIGHT`. A mistake that no formula can show has a head alone.
"""

from __future__ import annotations

from itertools import takewhile

from manchet.records import NamedTuple

PUT_RIGHT = "# ---- put right ----"


class Case(NamedTuple):
    """What is known of one report. `mistake` and `put_right` are bake text to the byte, "" where text cannot show it."""

    name: str
    severity: str
    """error, warning or note."""
    title: str
    text: str
    mistake: str
    line: int
    """Of the mistake, on which the report stands; 0 where there is none."""
    put_right: str


def case_of(name: str, text: str) -> Case:
    """The case of that name. Raises `ValueError` where the text is none."""
    lines = text.split("\n")
    head = [line[2:] for line in takewhile(lambda line: line.startswith("#"), lines)]
    if len(head) < 3 or ": " not in head[0] or head[1] or lines[len(head)]:
        raise ValueError(f"{name} begins with no `# severity: title`, an empty `#`, an explanation and an empty line")
    severity, title = head[0].split(": ", 1)
    mistake, line, put_right = _two_formulas(name, lines[len(head) + 1 :])
    return Case(name, severity, title, "\n".join(head[2:]), mistake, line, put_right)


def _two_formulas(name: str, lines: list[str]) -> tuple[str, int, str]:
    """The mistake, the line of its report, and the same put right."""
    mistake: list[str] = []
    right: list[str] = []
    reported = 0
    for number, line in enumerate(lines):
        mark = line[:2]
        if line == PUT_RIGHT:
            mistake.append("")
            right = lines[number + 1 :]
            break
        if mark == "#^" and line == f"#^ {name}" and not reported:
            reported = len(mistake)
        elif mark == "#=" and right:
            right[-1] = _indented(line)
        elif mark == "#+":
            right.append(_indented(line))
        elif line == "#-" and right:
            right.pop()
        elif line.startswith("#"):
            raise ValueError(f"{name} has a comment that is no mark here: {line}")
        else:
            mistake.append(line)
            right.append(line)
    if any(mistake) != bool(reported):
        raise ValueError(f"{name} marks no line with `#^ {name}`")
    return "\n".join(mistake), reported, "\n".join(right)


def _indented(line: str) -> str:
    """What follows a mark, with two spaces in its place; nothing is an empty line."""
    return f"  {line[2:]}" if line[2:] else ""

"""What a timing card says: both clocks, the day that begins, until when, and what gives."""

from __future__ import annotations

from xml.etree import ElementTree

from sheets.test_prep_view import FERRY
from sheets.work import card, sheet

from manchet.sheets.page.house import House
from manchet.sheets.page.json_data import data_of
from manchet.sheets.published import schema
from manchet.sheets.registry import html_of

OVEN = """  oven deck
    heats in      90 min
"""


def test_both_clocks_and_the_days() -> None:
    view = card(FERRY)
    assert view.jobs[0].elapsed == "+0:00"
    assert all(len(job.clock) == 5 for job in view.jobs)
    days = [job.day for job in view.jobs if job.day]
    assert days[0] == view.head[0].value.rsplit(" ", 1)[0] and len(days) == len(set(days))
    assert view.head[-1].value == "Saturday 28 Nov 07:00"


def test_latest_says_what_moves_and_late_answers_three_times() -> None:
    jobs = card(FERRY).jobs
    asked = [job for job in jobs if job.latest]
    assert asked and all(", then " in job.moves for job in asked)
    all_the_way = "must not wait: every minute late is a minute later at the end"
    assert any(job.late == (all_the_way,) for job in asked)
    assert not any("must not wait; ready" in line for job in jobs for line in job.late)
    for job in asked:
        if job.late[-1] == all_the_way:
            continue
        latest = [
            int(part) for line in job.late for part in line.split(":")[0].replace("/", " ").split() if part.isdigit()
        ]
        assert latest[-1] == 45 and latest == sorted(set(latest)) and set(latest) <= {15, 30, 45}, job.job
        first = job.late[0].partition(":")[0]
        assert first.startswith("up to ") or latest[0] == 15, job.job


def test_nobody_is_told_to_cut_a_bake_short() -> None:
    said = [line for job in card(FERRY).jobs for line in job.late]
    assert any("shorten the bulk" in line for line in said)
    assert not any("bake" in line.partition(";")[0] and "shorten" in line for line in said)
    loading = next(job for job in card(FERRY).jobs if "Bake 15" in job.job)
    assert (
        loading.late[-1].startswith("up to 45 min: look at the dough first; ready ")
        and "45 min later" in loading.late[-1]
    )


def test_the_oven_says_why_it_is_lit_so_early() -> None:
    lit = next(job for job in card(FERRY + OVEN).jobs if "Heat the oven" in job.job)
    assert lit.job.replace("\N{NO-BREAK SPACE}", " ") == "Heat the oven, to 240 °C (takes 90 min)"


def test_a_fold_is_a_line_of_its_own() -> None:
    assert [job.job for job in card(FERRY).jobs if "Fold" in job.job][:2] == [
        "dough, mix 1: Fold, 1 of 2",
        "dough, mix 2: Fold, 1 of 2",
    ]


def test_the_pictures_are_sound_svg_inside_their_frames() -> None:
    view = card(FERRY)
    page = html_of(view)
    drawings = ["<svg" + part.split("</svg>")[0] + "</svg>" for part in page.split("<svg")[1:]]
    assert len(drawings) == len(view.pictures) > 0
    lanes = [lane.title for picture in view.pictures for lane in picture.lanes]
    assert "levain" in lanes and "person 1" in lanes
    ids = [node.attrib["id"] for svg in drawings for node in ElementTree.fromstring(svg).iter() if "id" in node.attrib]
    assert len(ids) == len(set(ids))
    for svg in drawings:
        root = ElementTree.fromstring(svg)
        wide, high = (float(n) for n in root.attrib["viewBox"].split()[2:])
        for bar in root.iter("{http://www.w3.org/2000/svg}rect"):
            if "stroke" in bar.attrib:
                assert 0 <= float(bar.attrib["x"]) <= wide and float(bar.attrib["y"]) <= high
                assert float(bar.attrib["x"]) + float(bar.attrib["width"]) <= wide + 1
        assert root.attrib["role"] == "img" and root.attrib["aria-label"]


def test_real_sheets_fit_the_schema() -> None:
    import jsonschema

    for view in (card(FERRY), sheet(FERRY), card(FERRY, House("Letter", "US", "F", "American"))):
        jsonschema.validate(data_of(view), schema())


def test_that_some_jobs_have_no_length_is_said_before_the_first_of_them() -> None:
    view = card(FERRY)
    page = html_of(view)
    assert "no length" in view.untimed
    assert page.index(view.untimed) < page.index('class="jobs"')

"""What a label says, what it lacks, and which label it is."""

from __future__ import annotations

from works import bakery_of, first_work, reports_of

from manchet.account.piece import sold_pieces
from manchet.label.declaration import Declaration, declarations
from manchet.label.how_sold import sale_of_noun

LABELLED = """\
kitchen Quay
  sells in EU
  name and address "Quay Bakery, Port Avel"

formula Quay loaf
  kind hearth loaf
  bake loss 13%
  makes 10 loaves at 860 g dough
  sold prepacked at 740 g net
  called "Wheat bread with sunflower seeds"
  best before 4 d
  store "cool and dry"

  overall
    white flour          100%
    water                 70%
    sunflower seeds        8%
    salt                   2%
    fresh yeast            1.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 1 h at 27 C
    bake 40 min at 230 C
    cool 2 h
"""


def labels(text: str = LABELLED) -> list[Declaration]:
    work = first_work(text)
    return [one for piece in sold_pieces(work) for one in declarations(work, piece)]


def without(*lines: str) -> str:
    return "".join(line for line in LABELLED.splitlines(True) if not line.strip().startswith(lines))


def test_one_that_lacks_nothing_is_not_withheld() -> None:
    (label,) = labels()
    assert not label.is_withheld
    assert label.ingredients.text.startswith("WHEAT flour (")
    assert label.panel is not None and label.panel.is_whole


def test_all_that_a_whole_label_lacks_is_told_at_once() -> None:
    """Regulation (EU) 1169/2011, article 9(1): name, list, quantity, date, storage, operator."""
    bare = without("called", "best", "store", "name and", "bake loss", "sells in").replace(" at 740 g net", "")
    (label,) = labels(bare)
    assert [lack.write.split(" ")[0] for lack in label.lacks] == [
        "sells",
        "called",
        "bake",
        "sold",
        "best",
        "store",
        "name",
    ]
    assert [lack.in_kitchen for lack in label.lacks] == [True, False, False, False, False, False, True]


def test_food_packed_for_direct_sale_needs_its_name_and_its_list() -> None:
    """Regulation (EU) 1169/2011, article 44, as ordered in England: Food Information (Amendment) Regulations 2019."""
    direct = without("best", "store", "name and").replace(
        "sold prepacked at 740 g net", "sold prepacked for direct sale"
    )
    (label,) = labels(direct)
    assert not label.is_withheld and label.panel is None
    (unnamed,) = labels("".join(line for line in direct.splitlines(True) if "called" not in line))
    assert [lack.write.split(" ")[0] for lack in unnamed.lacks] == ["called"]


def test_an_allergen_of_which_nobody_knows_withholds_the_label() -> None:
    paste = "larder Quay\n  sweet paste\n    class other\n\n"
    (label,) = labels(paste + LABELLED.replace("    salt ", "    sweet paste 5%\n    salt "))
    assert label.is_withheld and not label.lacks
    assert {because.ingredient.name for one in label.unknown for because in one.because} == {"sweet paste"}


def test_another_label_has_another_mark_and_another_size_has_the_same() -> None:
    (label,) = labels()
    (more,) = labels(LABELLED.replace("makes 10", "makes 90"))
    assert label.mark == more.mark
    for old, new in (
        ("740 g net", "730 g net"),
        ("4 d", "5 d"),
        ("8%", "9%"),
        ("cool and dry", "cool"),
        ("Port", "Old Port"),
    ):
        assert labels(LABELLED.replace(old, new))[0].mark != label.mark, (old, new)


def test_it_is_approved_by_its_mark_alone() -> None:
    (label,) = labels()
    line = '  store "cool and dry"\n'
    for said, approved in (
        (label.mark, True),
        (f"bbbbbbbb and {label.mark}", True),
        ("bbbbbbbb", False),
        ("", False),
    ):
        by = f"Ada as {said}" if said else "Ada"
        (read,) = labels(LABELLED.replace(line, f"{line}  label approved 2026-11-20 by {by}\n"))
        assert read.approval is not None and (read.approval.by, read.is_approved) == ("Ada", approved)


def test_each_market_has_its_own_where_it_says_otherwise() -> None:
    european, american = labels(LABELLED.replace("sells in EU", "sells in EU, US"))
    assert european.panel is not None and american.panel is None
    assert american.contains == ("wheat",)


def test_what_may_be_in_it_is_what_the_operator_states() -> None:
    stated = '  may contain sesame, wheat because "same bench"\n'
    (label,) = labels(LABELLED.replace("  sells in EU\n", f"  sells in EU\n{stated}"))
    assert label.may_contain == ("sesame",)  # wheat is in it
    (apart,) = labels(LABELLED.replace("  store", '  kept apart from sesame because "own bench"\n  store'))
    assert apart.may_contain == ()


def test_a_branch_says_otherwise_than_the_head() -> None:
    branched = """\
formula Two
  kind hearth loaf
  makes 10 loaves at 900 g dough
  makes 20 rolls at 90 g dough
  sold loose
  called "Wheat bread"
  sells at 5 EUR each

  overall
    white flour          100%
    water                 70%
    salt                   2%

  dough
    everything else
    mix slow 8 min to 25 C
    divide
    for the loaves
      bake 40 min at 230 C
    for the rolls
      sold prepacked for direct sale
      sells at 1 EUR each
      bake 18 min at 240 C
"""
    (formula,) = bakery_of(branched).formulas
    loaf, roll = sale_of_noun(formula, "loaf"), sale_of_noun(formula, "roll")
    assert [one.way for one in loaf.ways] == ["loose"]
    assert [one.way for one in roll.ways] == ["prepacked for direct sale"]
    assert loaf.sells_at is not None and loaf.sells_at.price.amount == 5
    assert roll.sells_at is not None and roll.sells_at.price.amount == 1
    assert roll.called is not None and roll.called.text == "Wheat bread"


def asked(lines: str, more: str = "") -> list[str]:
    """What a check says of a labelled loaf with some more in it."""
    text = more + LABELLED.replace("    salt ", f"{lines}    salt ")
    return [f"{one.name}: {one.message}" for one in bakery_of(text).diagnostics if one.name.startswith("label-")]


def test_a_lecithin_of_which_nobody_says_what_it_comes_from_withholds_the_label() -> None:
    """Regulation (EU) 1169/2011, Annex II, no. 6; Annex VII, part C."""
    entry = "larder Quay\n  lecithin powder\n    class other\n    no allergens\n{}\n"
    line = "    lecithin powder 1%\n"
    (bare,) = labels(entry.format("") + LABELLED.replace("    salt ", f"{line}    salt "))
    assert bare.is_withheld and [one.name for one in bare.sourceless] == ["lecithin powder"]
    told = [one for one in asked(line, entry.format("")) if "made from" in one]
    assert told == [
        "label-source-unknown: lecithin powder: nothing says what it is made from, so no label can be printed"
    ]
    for source, text, contains in (
        ("soya", "emulsifier (SOYA lecithins)", ("wheat", "soya")),
        ("sunflower", "emulsifier (sunflower lecithins)", ("wheat",)),
        ("egg", "emulsifier (EGG lecithins)", ("wheat", "egg")),
    ):
        named = entry.replace("    no allergens\n", "").format(f"    from {source}\n")
        (label,) = labels(named + LABELLED.replace("    salt ", f"{line}    salt "))
        assert not label.is_withheld, source
        assert text in label.ingredients.text and label.contains == contains, source


def test_fat_of_plants_is_listed_with_its_plants() -> None:
    """Regulation (EU) 1169/2011, Annex VII, part A, no. 9."""
    entry = "larder Quay\n  vegetable fat\n    class fat\n    no allergens\n{}\n"
    added = LABELLED.replace("    salt ", "    vegetable fat 3%\n    salt ")
    assert labels(entry.format("") + added)[0].is_withheld
    (label,) = labels(entry.format("    from palm, rapeseed\n") + added)
    assert "vegetable fat (palm, rapeseed)" in label.ingredients.text and not label.is_withheld


def test_what_is_not_known_of_sulphites_is_told_with_how_much_they_can_be() -> None:
    """Regulation (EU) 1169/2011, Annex II, no. 12: above 10 mg/kg. 8 of 189.5 parts of dough, less 13 %: 4.9 %, at 2,000 mg/kg 97 mg/kg."""
    (told,) = (one for one in asked("    dried pears 8%\n") if "sulphites" in one)
    assert (
        "at 4.9% of the food, and up to 2,000 mg/kg in it, it brings up to 97 mg/kg of sulphites, and over 10 is declared"
        in told
    )
    assert not [one for one in asked("    dried pears 0.75%\n") if "sulphites" in one]  # 9.5 mg/kg


def short(text: str) -> list[str]:
    return [one.message for one in bakery_of(text).diagnostics if one.name == "net-weight-short"]


def test_what_a_loaf_loses_on_the_shelf_is_reckoned_with() -> None:
    """It has to meet its weight while it is sold (nibusinessinfo.co.uk, rules for bakers); 860 g less 13 % are 748.2 g, and the 4 lb loaf of
    Goddard's grocers' guide lost 1.25 oz of 64 in a day, at best three fifths of it: 739 g are left."""
    assert short(LABELLED) and "at best about 739 g after 24 h" in short(LABELLED)[0]
    assert not short(LABELLED.replace("740 g net", "735 g net"))
    assert not short(LABELLED + "    pack in bags\n")
    assert (
        "at best about 713 g after 48 h"
        in short(LABELLED.replace("  best before", "  sold 8-48 h old\n  best before"))[0]
    )


def test_a_flour_without_figures_leaves_the_salt_of_a_bread_known() -> None:
    """That self-raising flour has soda in it says nothing of spelt."""
    (label,) = labels(
        LABELLED.replace(
            "    white flour          100%", "    white flour           70%\n    spelt flour           30%"
        )
    )
    assert label.panel is not None and label.panel.line("salt").is_known


def test_no_table_is_printed_that_cannot_say_all_it_must() -> None:
    """Regulation (EU) 1169/2011, article 30(1): all but fibre. The mark is that of the label as it prints."""
    spelt = LABELLED.replace(
        "    white flour          100%", "    white flour           70%\n    spelt flour           30%"
    )
    (label,) = labels(spelt)
    assert label.panel is not None and not label.panel.line("carbohydrate").is_known
    assert label.table is None and not label.is_withheld
    assert labels()[0].table is not None


def test_an_allergen_that_is_not_known_is_asked_about_of_what_is_sold_loose() -> None:
    """Regulation (EU) 1169/2011, article 44(1)(a)."""
    paste = "larder Quay\n  sweet paste\n    class other\n\n"
    loose = LABELLED.replace("sold prepacked at 740 g net", "sold loose").replace(
        "    salt ", "    sweet paste 5%\n    salt "
    )
    assert "label-allergen-unknown" in [one.name for one in reports_of(paste + loose)]
    unsold = loose.replace("  sold loose\n", "")
    assert "label-allergen-unknown" not in [one.name for one in reports_of(paste + unsold)]


def test_a_name_that_promises_what_is_not_there_is_told_of_what_is_sold_loose_too() -> None:
    loose = LABELLED.replace("sold prepacked at 740 g net", "sold loose").replace(
        "with sunflower seeds", "with walnuts"
    )
    (told,) = [one for one in reports_of(loose) if one.name == "name-promises-what-is-not-there"]
    assert "no label" not in told.message
    (label,) = labels(LABELLED.replace("with sunflower seeds", "with walnuts"))
    assert label.is_withheld and label.absent == ("walnuts",)

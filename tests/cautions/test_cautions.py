"""When each hazard is met, at which stage, and when it must stay silent."""

import re
import tomllib
from pathlib import Path

from every import every
from works import bakery_of, work_in

import manchet.cautions
from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import DEFERS, Caution, caution
from manchet.cautions.hazard import WORST_FIRST, PenBox
from manchet.cautions.hazards import HAZARDS
from manchet.cautions.house import house_hazards
from manchet.cautions.phrase import Measured
from manchet.cautions.registry import cautions_of
from manchet.kitchen.model import PLAIN
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import LANGUAGES, words_of
from manchet.sheets.parts.caution import caution_note, said_in_units
from manchet.sheets.parts.views import CautionNote

FOLDER = Path(manchet.cautions.__file__).parent
QUIET = Path(__file__).parents[1] / "corpus" / "quiet"

BRITISH = Measures(House(), words_of("British"))


def said(found: Caution, language: str = "British") -> CautionNote:
    """As it is printed; a space that does not break as any other."""
    house = House(words=language)
    note = caution_note(found, Measures(house, words_of(language)))
    boxes = tuple(box._replace(label=plain(box.label)) for box in note.boxes)
    return note._replace(words=plain(note.words), limit=plain(note.limit), if_missed=plain(note.if_missed), boxes=boxes)


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def cautions(text: str, name: str = "") -> dict[str, Caution]:
    bakery = bakery_of(text)
    formula = bakery.formula(name) if name else bakery.formulas[0]
    assert formula is not None, [r.message for r in bakery.diagnostics]
    work = work_in(bakery, formula)
    found = cautions_of(work)
    assert len({(c.name, c.at) for c in found}) == len(found), "each hazard once a step"
    return {c.name: c for c in found}


def of_formula(text: str, name: str = "") -> dict[str, Caution]:
    return {k: c for k, c in cautions(text, name).items() if c.of == "formula"}


def quiet(case: str) -> str:
    return (QUIET / f"{case}.bake").read_text(encoding="utf-8")


GARLIC = """preparation garlic butter
  butter              1000 g
  garlic                120 g
  mix by hand 4 min
{kept}
"""


def test_a_plain_loaf_has_no_box() -> None:
    """Five boxes on every sheet are read by nobody."""
    assert of_formula(quiet("autolyse-half-hour")) == {}
    assert of_formula(quiet("milk-loaf")) == {}


def test_lye_is_cautioned_before_it_is_mixed_and_again_before_the_dip() -> None:
    bath = of_formula(quiet("lye-pretzels"), "lye bath")["lye-mixing"]
    assert (bath.level, bath.at) == ("top", CautionPlace("lye bath"))
    assert "running water 20 min" in said(bath).if_missed and "call 112/999" in said(bath).if_missed
    dip = of_formula(quiet("lye-pretzels"), "Square pretzels")["lye-corrosive"]
    assert dip.at.stage == "dough" and "over 6 %: dip nothing" in said(dip).boxes[0].label


def test_dry_lye_burns_however_weak_the_bath() -> None:
    weak = "preparation bath\n  water 1980 g\n  lye 20 g\n  hold back lye\n  add lye\n  whisk 1 min\n"
    assert of_formula(weak)["lye-mixing"].at == CautionPlace("bath", 0)
    assert set(of_formula(weak)) == {"lye-mixing"}
    assert set(of_formula(weak + "  good for 1 d at 18 C\n")) == {"lye-mixing", "lye-kept"}


def test_nothing_is_dipped_into_a_bath_over_six_per_cent() -> None:
    bath = "preparation bath\n  water {} g\n  lye {} g\n  whisk 1 min\n"
    assert "lye-too-strong" in of_formula(bath.format(930, 70))
    assert "lye-too-strong" not in of_formula(bath.format(940, 60))


def test_plants_kept_under_fat_are_the_gravest() -> None:
    kept = of_formula(GARLIC.format(kept="  good for 3 d at 4 C"))["plants-under-fat"]
    assert kept.level == "top"
    assert "3 days at 4 °C is this jar's whole life" in said(kept).limit, "its own figures are the stricter"
    kept = of_formula(GARLIC.format(kept="  good for 6 d at 4 C"))["plants-under-fat"]
    assert "4 days" in said(kept).limit and all(": bin" in box.label or "bin" in box.label for box in said(kept).boxes)
    assert of_formula(GARLIC.format(kept=""))["plants-in-fat-today"].level == "note"


def test_dried_plants_and_doughs_are_not_meant() -> None:
    dried = GARLIC.replace("garlic  ", "dried onions  ").format(kept="  good for 3 d at 4 C")
    assert "plants-under-fat" not in of_formula(dried)
    assert "plants-under-fat" not in of_formula(quiet("olive-and-cheese"))


CUSTARD = """preparation custard
  milk                1000 g
  eggs                 200 g
  sugar                150 g
  maize starch          80 g
  heat 10 min to {hot} C
  cool {cool} to 20 C
  chill 3 h to 4 C
  good for 2 d at 4 C
"""


def test_a_custard_says_how_to_cool_it() -> None:
    fast = of_formula(CUSTARD.format(hot=85, cool="90 min"))
    assert fast["cool-it-fast"].level == "limit"
    assert of_formula(CUSTARD.format(hot=85, cool="4 h"))["cool-it-fast"].level == "warning"
    assert fast["cook-egg-through"].level == "limit"
    assert said(of_formula(CUSTARD.format(hot=65, cool="90 min"))["cook-egg-through"]).limit.startswith("71 °C")


def test_egg_is_cooked_at_75_or_held_at_71() -> None:
    """Food Standards Agency: 70 C for two minutes, 75 C for half a minute; US Food Code 3-401.11."""

    def level(text: str) -> str:
        return of_formula(text)["cook-egg-through"].level

    assert level(CUSTARD.format(hot=71, cool="90 min")) == "warning"
    assert level(CUSTARD.format(hot=75, cool="90 min")) == "limit"
    held = CUSTARD.format(hot=71, cool="90 min").replace("  cool 90", "  heat 2 min at 72 C\n  cool 90")
    assert level(held) == "limit"
    assert level(held.replace("heat 2 min", "heat 1-3 min")) == "warning", "a kill counts by the shorter time"


def test_eggs_from_the_griddle_are_cooked_and_not_raw() -> None:
    """What was fried or griddled and is kept cools like anything else that was cooked."""
    omelette = (
        "preparation omelette\n  eggs 500 g\n  whisk 2 min\n  griddle 2 min a side at 160 C\n  good for 1 d at 4 C\n"
    )
    assert set(of_formula(omelette)) == {"cook-egg-through", "cool-it-fast"}


def test_a_loaf_that_cools_four_hours_is_no_cooled_food() -> None:
    assert "cool-it-fast" not in of_formula(quiet("rye-three-builds"))
    assert "cool-it-fast" not in of_formula(quiet("porridge-bread"))


def test_a_scald_that_stands_warm_is_told_though_it_is_baked() -> None:
    """The poison of Bacillus cereus outlives the oven (BfR 037/2020)."""
    rye = of_formula(quiet("pumpernickel"))
    assert rye["warm-and-wet"].level == "warning"
    assert "warm-and-wet" not in of_formula(quiet("red-malt-scald-rye")), "held over 60 C"


def test_a_soak_in_the_fridge_is_let_be() -> None:
    rye = quiet("seeded-danish-rye")
    cold, cool, warm = (
        rye.replace("soak covered 8-12 h at 6 C", f"soak covered 8-12 h at {at} C") for at in (5, 6, 20)
    )
    assert "warm-soak" not in of_formula(cold)
    assert of_formula(cool)["warm-soak"].level == of_formula(warm)["warm-soak"].level == "note"


def test_hot_fat_kettle_and_pot() -> None:
    assert "kettle-burns" in cautions(quiet("bagels"))
    assert "steamer-burns" in cautions(quiet("steamed-buns")) and "steamer-burns" not in cautions(quiet("bagels"))
    assert "hot-lid" in cautions(quiet("no-knead"))
    fried = quiet("hot-water-tortillas").replace("griddle 40 s a side at 230 C", "fry 40 s a side at 180 C")
    assert of_formula(fried)["hot-oil"].level == "top"


def test_what_goes_on_after_the_heat() -> None:
    buns = quiet("sweet-buns")
    assert "keep-filling-cold" not in of_formula(buns), "milk brushed on before the bake"
    after = buns.replace("    cool 30 min\n", "    cool 30 min\n    {line}\n")
    assert "keep-filling-cold" in of_formula(after.format(line="fill with heavy cream 30 g each"))
    assert "raw-flour-after-heat" in of_formula(after.format(line="dust with white flour 1 g each"))
    assert "raw-egg-after-heat" in of_formula(after.format(line="brush with egg whites 1 g each"))
    assert of_formula(after.format(line="brush with butter 2 g each")) == {}


def test_rope_only_in_warm_weather_and_unsoured() -> None:
    bran = quiet("no-knead")
    summer = "\nkitchen Hot\n  air 28 C\n"
    assert "rope-weather" not in of_formula(bran)
    assert "rope-weather" in of_formula(bran + summer)
    assert "rope-weather" not in of_formula(quiet("old-bread-loaf") + summer), "it is soured"


def test_wrapped_warm_on_purpose_is_let_be() -> None:
    assert "wrapped-warm" not in of_formula(quiet("hot-water-tortillas"))
    tin = quiet("milk-loaf").replace("    cool 2 h\n", '    cool 40 min\n    slice "12 mm"\n')
    assert "wrapped-warm" in of_formula(tin)


def test_the_house_stands_on_one_card() -> None:
    wood = "\nkitchen Row\n  oven mother\n    heat wood, falling\n"
    found = {k: c for k, c in cautions(quiet("autolyse-half-hour") + wood).items() if c.of == "house"}
    assert {"smoke-and-monoxide", "oven-steam", "raw-dough", "moving-machines"} <= set(found)
    assert all(c.at.stage == "" for c in found.values())
    assert "smoke-and-monoxide" not in {c.name for c in house_hazards(PLAIN)}
    assert {"raw-dough", "blades", "lifting"} <= {c.name for c in house_hazards(PLAIN)}


def test_warnings_come_first_and_the_house_last() -> None:
    found = list(cautions(quiet("lye-pretzels"), "Square pretzels").values())
    order = [(c.of != "formula", WORST_FIRST.index(c.level)) for c in found]
    assert order == sorted(order)


def test_the_words_are_fresh_dated_and_sourced() -> None:
    toml = (FOLDER / "hazards.toml").read_text(encoding="utf-8")
    for name, entry in tomllib.loads(toml).items():
        if name == "dated":
            continue
        assert entry["source"] and entry["words"].endswith("."), name
        assert entry["level"] in ("top", "warning", "note") and entry["of"] in ("formula", "hands", "house", "eater"), (
            name
        )
        assert entry.get("address") or entry["source"] == "common practice", name


@every(sorted(HAZARDS), at_least=36)
def test_no_text_is_longer_than_is_read(name: str) -> None:
    for language in LANGUAGES:
        note = said(caution(name), language)
        for text in (note.words, note.limit, note.if_missed):
            assert len(text.split()) <= 38, text


@every(sorted(HAZARDS), at_least=36)
def test_a_limit_in_a_box_says_what_to_do_beyond_it(name: str) -> None:
    for box in said(caution(name)).boxes:
        figure = any(isinstance(part, Measured) for part in box_of(name, box.label).label)
        assert not figure or re.search(r"[;:·] \S", box.label), box.label


def box_of(name: str, label: str) -> PenBox:
    return next(b for b in HAZARDS[name].british.boxes if plain(said_in_units(b.label, BRITISH)) == label)


@every(sorted(HAZARDS), at_least=36)
def test_nothing_is_ever_said_to_be_safe(name: str) -> None:
    for language in LANGUAGES:
        note = said(caution(name), language)
        texts = (note.words, note.limit, note.if_missed, *(box.label for box in note.boxes))
        assert not re.search(r"\b(safe|safely|harmless|no risk|guarantee)", " ".join(texts))


def test_local_codes_come_first() -> None:
    assert "Local codes" in DEFERS


def test_every_hazard_is_met_somewhere() -> None:
    code = "".join(f.read_text("utf-8") for f in FOLDER.glob("*.py") if f.name != "hazards.py")
    assert {name for name in HAZARDS if f'"{name}"' not in code} == set()

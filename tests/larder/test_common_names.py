"""What a home baker of either English writes: the larder knows it, or asks; and cups and spoons of it have a weight."""

from __future__ import annotations

from every import every

from manchet.larder.book import builtin
from manchet.larder.ingredient import Ingredient

NAMES = """
00 flour, farina 00, active dry yeast, agave, agave nectar, allspice, almond extract, almond flour, almond meal, almond milk,
almonds, apple, apple cider vinegar, apple juice, apple sauce, apples, applesauce, arrowroot, ascorbic acid, bacon,
baking powder, baking soda, banana, bananas, barley flour, barley malt syrup, basil, beer, besan, bicarb, bicarbonate
of soda, black olives, black pepper, black treacle, blue cheese, blueberries, boiled potatoes, boiling water, brandy,
brazil nuts, bread flour, bread machine yeast, breadcrumbs, brown sugar, buckwheat flour, bulgur, butter, buttermilk,
cake flour, cake yeast, candied peel, canola oil, caramel, caraway, caraway seeds, cardamom, carrot, cashews, caster
sugar, cheddar, cheese, cherries, chestnuts, chia seeds, chickpea flour, chili flakes, chilli flakes, chives,
chocolate chips, chopped nuts, chopped walnuts, cider, cinnamon, cloves, coarse salt, cocoa, cocoa powder, coconut
flour, coconut milk, coconut oil, coffee, cold water, condensed milk, confectioners sugar, cooked rice, corn syrup,
cornflakes, cornflour, cornmeal, cornstarch, cottage cheese, courgette, cracked wheat, cranberries, cream cheese,
cream of tartar, creme fraiche, crystallized ginger, cumin seeds, currant, currants, dark brown sugar, dark chocolate,
dark rye flour, date syrup, dates, demerara sugar, desiccated coconut, diastatic malt powder, dill, discard, double
cream, dried apricots, dried cherries, dried cranberries, dried figs, dried milk, dry milk, dulce de leche, egg, egg
white, egg whites, egg yolk, egg yolks, eggs, einkorn flour, emmental, emmer flour, espresso powder, evaporated milk,
EVOO, extra virgin olive oil, fast action dried yeast, fennel seeds, feta, fine sea salt, flaked almonds, flaky salt, flax
seeds, flaxseed, food colouring, fresh yeast, fried onions, full-fat milk, garlic, gelatin, ghee, ginger, glace
cherries, gluten, goat cheese, golden raisins, golden syrup, graham flour, gram flour, granola, granulated sugar,
grated carrot, grated cheddar, greek yoghurt, greek yogurt, ground almonds, ground cardamom, ground cinnamon, ground
flaxseed, ground ginger, gruyere, half and half, halloumi, ham, hazelnuts, heavy cream, honey, ice, icing sugar,
instant coffee, instant oats, instant yeast, jalapenos, jam, jumbo oats, kalamata olives, kamut flour, kefir, kimchi,
kosher salt, lard, large eggs, lecithin, lemon, lemon juice, lemon peel, lemon zest, light brown sugar, linseed, low-
fat milk, lukewarm water, macadamia nuts, malt extract, malted milk powder, maple syrup, maraschino cherries,
margarine, marmalade, marzipan, masa harina, mascarpone, mashed banana, mashed potato, melted butter, milk, milk
powder, millet, millet flour, mincemeat, mixed peel, mixed seeds, mixed spice, molasses, mozzarella, muesli,
muscovado, natural yoghurt, nigella seeds, nonfat dry milk, nutmeg, oat bran, oat drink, oat flour, oat milk, oatmeal,
oil, old bread, old-fashioned oats, olive oil, olives, onion, onions, orange, orange juice, orange peel, orange zest,
oregano, panko, paprika, parmesan, parsley, pastry flour, peanut butter, peanuts, pearl sugar, pecans, pepitas,
pepper, pesto, pine nuts, pistachios, plain flour, plain yogurt, polenta, poppy seeds, porridge oats, potato, potato
flakes, potato flour, potato starch, potatoes, powdered sugar, prunes, psyllium husk, pumpkin, pumpkin pie spice,
pumpkin puree, pumpkin seeds, quark, quick oats, quinoa, raisins, rapeseed oil, rapid rise yeast, raspberries, rice,
rice flour, rice syrup, ricotta, rock salt, rolled oats, rosemary, rum, runny honey, rye flour, saffron, salt, salted
butter, sauerkraut, sea salt, seed mix, self-raising flour, self-rising flour, semi-skimmed milk, semolina, sesame
oil, sesame seeds, shortening, shredded coconut, single cream, skim milk, skim milk powder, skimmed milk, sliced
almonds, slivered almonds, softened butter, sorghum flour, sour cherries, sour cream, sourdough discard, sourdough
starter, soy flour, soy milk, soya milk, spelt flour, spinach, sprinkles, starter, stout, strawberries, strong white
flour, suet, sugar, sultanas, sun-dried tomatoes, sunflower oil, sunflower seeds, superfine sugar, sweet potato, swiss
cheese, table salt, tahini, tapioca flour, tapioca starch, tea, teff flour, thyme, tomato paste, tomatoes, treacle,
turbinado, turmeric, unsalted butter, vanilla, vanilla extract, vanilla sugar, vegetable oil, vegetable shortening,
vinegar, vital wheat gluten, vitamin c, walnuts, warm water, water, wheat bran, wheat germ, whey, whipping cream,
whiskey, white chocolate, white flour, white vinegar, whole almonds, whole milk, whole rye flour, whole wheat flour,
wholemeal flour, wine, xanthan gum, yoghurt, yogurt, zucchini
"""
NEVER_IN_SPOONS = {
    "ascorbic acid", "bacon", "food colouring", "fried onions", "goat cheese", "halloumi", "lemons", "old bread", "oranges",
    "pearl sugar", "sprinkles",
}  # fmt: skip
"""Weighed in milligrams, or of no one size."""


def names() -> list[str]:
    return [name.strip() for name in " ".join(NAMES.split()).split(",")]


@every(names(), at_least=376)
def test_it_is_known_or_asked_about_and_has_a_weight(name: str) -> None:
    found = builtin().find(name)
    assert found is not None
    if isinstance(found, Ingredient) and found.class_ != "water" and found.name not in NEVER_IN_SPOONS:
        assert found.density is not None or found.whole is not None or found.density_span is not None


@every(
    ("tipo 0", "farina 0", "farina tipo 0", "flour 0", "tipo 1", "farina tipo 2", "farina 00", "type 00"), at_least=8
)
def test_italian_flours_are_known_by_their_type(name: str) -> None:
    """The types of Italian wheat flour: decree DPR 187/2001, article 1; from memory."""
    found = builtin().find(name)
    assert isinstance(found, Ingredient)
    assert found.class_ == "wheat flour"
    assert found.name.split()[0] == name.split()[-1] or found.name == f"tipo {name.split()[-1]} flour"

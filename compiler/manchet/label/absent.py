"""Ingredients that the name of a food promises, and that are nowhere in it: `Butter bread with walnuts` without butter or walnuts.

Such a name misleads about what the food is made of: Regulation (EU) 1169/2011, article 7(1), in Great Britain as kept there; FD&C Act 403(a)(1)
in the United States. Only words that can mean nothing else are asked about, in English; what might be another thing (`country`, `orange`,
`cream`, `butter beans`, `peanut butter`) is let be.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from manchet.account.piece import SoldPiece
from manchet.label.allergens import AllergenAnswer, answer_in_its_way, every_content
from manchet.label.markets import US
from manchet.larder.allergens import allergen
from manchet.larder.ingredient import names_of
from manchet.larder.names import key

SOURCE = "Regulation (EU) 1169/2011, article 7(1)"
US_SOURCE = "FD&C Act 403(a)(1)"


def source_in(market: str) -> str:
    """The law that a name which misleads breaks."""
    return US_SOURCE if market == US else SOURCE


_GRAINS = (
    "wheat", "rye", "spelt", "barley", "oat", "oatmeal", "maize", "cornmeal", "polenta", "millet", "buckwheat", "rice", "quinoa", "amaranth", "teff",
    "sorghum", "emmer", "einkorn", "khorasan", "durum", "semolina", "triticale", "chickpea", "soya", "lupin", "chestnut",
)  # fmt: skip
_NUTS = ("almond", "hazelnut", "walnut", "pecan", "pistachio", "cashew", "macadamia", "peanut", "coconut", "nut")
_SEEDS = ("sunflower", "pumpkin", "sesame", "poppy", "flaxseed", "linseed", "chia", "hemp", "caraway", "seed", "seeded")
_DAIRY = ("milk", "buttermilk", "butter", "yoghurt", "yogurt", "kefir", "quark", "ricotta", "mascarpone", "whey")
_CHEESES = ("cheese", "cheddar", "gruyere", "parmesan", "feta", "mozzarella", "emmental", "halloumi")
_FRUIT = (
    "raisin", "sultana", "currant", "cranberry", "apricot", "fig", "apple", "pear", "plum", "prune", "cherry", "blueberry",
    "raspberry", "strawberry", "banana", "lemon",
)  # fmt: skip
_VEGETABLES = ("potato", "onion", "garlic", "olive", "tomato", "beetroot", "carrot", "spinach", "leek")
_OTHERS = (
    "egg", "honey", "treacle", "molasses", "cinnamon", "cardamom", "rosemary", "saffron", "chocolate", "beer", "bacon", "ham", "anchovy", "sardine",
    "tuna",
)  # fmt: skip
_ASKED = frozenset(
    key(word) for word in (*_GRAINS, *_NUTS, *_SEEDS, *_DAIRY, *_CHEESES, *_FRUIT, *_VEGETABLES, *_OTHERS)
)
"""Words that name an ingredient and nothing else, most of them names of the built-in larder."""


def _by_key(words: Mapping[str, Iterable[str]]) -> dict[str, frozenset[str]]:
    return {key(word): frozenset(map(key, others)) for word, others in words.items()}


_ALSO_BY = _by_key(
    {
        **dict.fromkeys(_FRUIT, ("fruit", "fruited", "mincemeat", "muesli")),
        **dict.fromkeys(_GRAINS, ("muesli", "breadcrumbs")),
        "cheese": _CHEESES,
        "raisin": ("sultana", "currant", "fruit", "muesli"), "plum": ("prune", "fruit"), "prune": ("plum", "fruit"),
        "maize": ("cornmeal", "corn", "polenta", "masa", "popcorn"), "cornmeal": ("corn", "maize", "polenta"),
        "polenta": ("corn", "maize", "cornmeal"), "oatmeal": ("oat",), "soya": ("soy", "tofu", "miso"), "flaxseed": ("linseed",),
        "linseed": ("flaxseed",), "sesame": ("tahini",), "yogurt": ("yoghurt",), "yoghurt": ("yogurt",), "chocolate": ("cocoa",),
        "treacle": ("molasses",), "molasses": ("treacle",), "beer": ("ale", "stout"), "nut": ("praline", "marzipan"),
    }
)  # fmt: skip
"""What else a word may stand for: words of other ingredients' names."""
_BY_CLASS = _by_key(
    {
        "wheat": ("wheat flour",), "rye": ("rye flour",), "milk": ("dairy",), "egg": ("egg",), "nut": ("nut",),
        "seed": ("seed", "grain"), "seeded": ("seed", "grain"),
    }
)  # fmt: skip
"""Classes of which any ingredient will do."""
_FAT_OR_DRINK = frozenset({"butter", "milk", "cheese"})
_PLANTS = frozenset(
    map(key, (*_GRAINS, *_NUTS, *_FRUIT, "cocoa", "shea", "vegan", "plant", "vegetable", "malted", "bean"))
)
"""Before butter or milk it is no butter or milk of a cow: `peanut butter`, `oat milk`."""
_NOT_WITH = frozenset(map(key, ("bean", "lettuce", "squash", "plant", "tomato", "style", "type", "flavour", "flavoured", "flavor", "flavored",
    "coloured", "colored", "shaped", "scented", "free", "brown", "thyme", "balm", "grass")))  # fmt: skip
"""After a word it makes it another: `butter beans`, `cherry tomatoes`, `egg-shaped`."""
_WITHOUT = frozenset(map(key, ("without", "no", "not", "for", "from", "like")))
"""What comes after is not promised."""


def absent_from(piece: SoldPiece, called: str) -> tuple[str, ...]:
    """Words of a name, as it has them, that promise an ingredient which nothing of the piece is, nor any of its washes and toppings."""
    said = re.findall(r"\w+", called)
    keys = [key(word) for word in said]
    end = next((n for n, one in enumerate(keys) if one in _WITHOUT), len(keys))
    asked = {
        one: word.casefold()
        for n, (one, word) in enumerate(zip(keys, said, strict=True))
        if n < end and _promises(keys, n)
    }
    if not asked:
        return ()
    words, classes = _there(piece, asked)
    return tuple(word for one, word in asked.items() if not _is_there(one, words, classes))


def _promises(keys: list[str], n: int) -> bool:
    before, after = keys[n - 1] if n else "", keys[n + 1] if n + 1 < len(keys) else ""
    if keys[n] not in _ASKED or after in _NOT_WITH:
        return False
    return not (keys[n] in _FAT_OR_DRINK and before in _PLANTS)


def _there(piece: SoldPiece, asked: Iterable[str]) -> tuple[frozenset[str], frozenset[str]]:
    """Words of the names of all that is in it, those of its allergens that are asked about, and its classes."""
    # Milk as an allergen is in butter too, and no loaf is a milk loaf for its butter.
    allergens = {one: word for one in asked if one != "milk" and (word := allergen(one)) and key(word) == one}
    words: set[str] = set()
    classes: set[str] = set()
    for content in every_content(piece.mixture):
        entry = content.ingredient
        classes.add(key(entry.class_))
        said = (*names_of(entry), *(one.text for one in entry.listed_as), entry.made_from)
        words.update(key(word) for text in said for word in re.findall(r"\w+", text.replace("(milk)", "")))
        words.update(
            one for one, word in allergens.items() if answer_in_its_way(content, word)[0] is AllergenAnswer.HAS
        )
    return frozenset(words), frozenset(classes)


def _is_there(word: str, words: frozenset[str], classes: frozenset[str]) -> bool:
    nothing: frozenset[str] = frozenset()
    return bool(_BY_CLASS.get(word, nothing) & classes or ({word} | _ALSO_BY.get(word, nothing)) & words)

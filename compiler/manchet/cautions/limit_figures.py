"""Written from limits.toml by `python -m manchet.generate`; change that file, not this one."""

# fmt: off
from fractions import Fraction as F

from manchet.cautions.market_limit import MarketLimit

DATED = "2026-11-30"

LIMITS = {
    'cold': MarketLimit('most', F(5, 1), (('Britain', F(8, 1),),)),
    'hot': MarketLimit('least', F(63, 1), (('US', F(57, 1),),)),
    'frozen': MarketLimit('most', F(-15, 1), ()),
    'fat-closes-from': MarketLimit('least', F(3, 10), ()),
    'under-fat-cold': MarketLimit('most', F(4, 1), ()),
    'under-fat-longest': MarketLimit('most', F(345600, 1), ()),
    'under-fat-out': MarketLimit('most', F(7200, 1), ()),
    'sour-in-the-pieces': MarketLimit('most', F(21, 5), ()),
    'too-dry-for-germs': MarketLimit('most', F(17, 20), ()),
    'wet-from': MarketLimit('least', F(1, 4), ()),
    'cooled-from': MarketLimit('least', F(57, 1), ()),
    'warm-at-most': MarketLimit('most', F(21, 1), ()),
    'warm-within': MarketLimit('most', F(7200, 1), ()),
    'cold-within': MarketLimit('most', F(21600, 1), ()),
    'fridge-within': MarketLimit('most', None, (('Britain', F(5400, 1),),)),
    'reheated-to': MarketLimit('least', F(75, 1), (('US', F(74, 1),),)),
    'reheated-within': MarketLimit('most', F(7200, 1), ()),
    'egg-at-once': MarketLimit('least', F(75, 1), (('US', F(71, 1),),)),
    'egg-held': MarketLimit('least', F(71, 1), ()),
    'held-for': MarketLimit('least', F(120, 1), ()),
    'raw-egg-longest': MarketLimit('most', F(86400, 1), ()),
    'meat-at-once': MarketLimit('least', F(75, 1), (('US', F(74, 1),),)),
    'meat-held': MarketLimit('least', F(70, 1), ()),
    'fish-not-raw-from': MarketLimit('least', F(60, 1), ()),
    'fish-frozen-to': MarketLimit('most', F(-20, 1), ()),
    'fish-frozen-for': MarketLimit('least', F(86400, 1), (('US', F(604800, 1),),)),
    'served-within': MarketLimit('most', F(14400, 1), ()),
    'paste-cooks-from': MarketLimit('least', F(60, 1), ()),
    'paste-held': MarketLimit('least', F(60, 1), ()),
    'paste-stands': MarketLimit('most', F(7200, 1), ()),
    'soaked-and-baked': MarketLimit('most', F(43200, 1), ()),
    'soaked-and-eaten': MarketLimit('most', F(14400, 1), ()),
    'soaked-salt': MarketLimit('least', F(1, 10), ()),
    'lye-irritates-from': MarketLimit('least', F(1, 200), ()),
    'lye-burns-from': MarketLimit('least', F(1, 50), ()),
    'lye-bath': MarketLimit('most', F(3, 50), ()),
    'fat-heat': MarketLimit('most', F(190, 1), ()),
    'sugar-boils-from': MarketLimit('least', F(110, 1), ()),
    'sugar-from': MarketLimit('least', F(1, 2), ()),
    'cooled-to-wrap': MarketLimit('most', F(5400, 1), ()),
    'rope-coarse': MarketLimit('most', F(1, 5), ()),
    'rope-air': MarketLimit('most', F(25, 1), ()),
    'rope-keeps': MarketLimit('most', F(172800, 1), ()),
}

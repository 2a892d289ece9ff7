"""The built-in larder, made of builtin.bake by `python -m manchet.generate`. Read by stock.py."""

# fmt: off
ENTRIES = """
white flour	wheat flour	all-purpose flour, plain white flour, plain flour, unbleached flour, white wheat flour, AP flour, wheat flour white, maida	water 298/25, protein 1033/100, fat 49/50, saturates 31/200, carbohydrate 7361/100, sugars 27/100, fibre 27/10, sodium 1/500				wheat, gluten		53/100		27/50 29/50	USDA SR28 NDB 20481; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	listed : wheat flour | protein_factor 57/10
bread flour	wheat flour	strong white flour, strong flour, strong white bread flour, white bread flour, baker's flour, bread wheat flour	water 334/25, protein 599/50, fat 83/50, saturates 61/250, carbohydrate 7013/100, sugars 31/100, fibre 12/5, sodium 1/500				wheat, gluten		29/50		57/100 61/100	USDA SR28 NDB 20129; density: US Armed Forces Recipe Service, TM 10-412 (2003), card D 055 00, weight by measure; absorbs water: from memory	listed : wheat flour | protein_factor 57/10
high-gluten flour	wheat flour	very strong white flour, extra strong flour, very strong flour	water 257/20, protein 1533/100, fat 141/100, saturates 34/125, carbohydrate 1687/25, sugars 23/25, fibre 12/5, sodium 1/500				wheat, gluten				59/100 63/100	USDA SR28 NDB 20646; absorbs water: from memory	listed : wheat flour
medium-strong white flour	wheat flour	artisan white flour, medium-strong flour	water 317/25, protein 23/2, fat 29/20, saturates 67/250, carbohydrate 7141/100, sugars 28/25, fibre 12/5, sodium 1/500				wheat, gluten				14/25 3/5	USDA SR28 NDB 20636; absorbs water: from memory	listed : wheat flour
cake flour	wheat flour	sponge flour, soft cake flour	water 1251/100, protein 41/5, fat 43/50, saturates 127/1000, carbohydrate 7633/100, sugars 31/100, fibre 17/10, sodium 1/500				wheat, gluten		29/50		1/2 27/50	USDA SR28 NDB 20084; absorbs water: from memory; density: USDA SR portion weights, from memory	listed : wheat flour | protein_factor 57/10
pastry flour	wheat flour	soft white flour, soft flour, biscuit flour	water 119/10, protein 35/4, fat 41/25, sodium 1/1000				wheat, gluten		9/20		1/2 27/50	USDA FDC 1104913; absorbs water: from memory; density: USDA SR portion weights, from memory	listed : wheat flour
00 flour	wheat flour	flour 00, tipo 00, farina 00, farina tipo 00, type 00, doppio zero, pizza flour, Italian 00 flour	water 61/5, protein 57/5, fat 38/25, carbohydrate 3587/50, fibre 133/50, sodium 0				wheat, gluten		1/2		27/50 29/50	USDA FDC 2003586; absorbs water: from memory; density: common practice	listed : wheat flour | protein_factor 25/4
whole wheat flour	wheat flour	wholemeal flour, wholemeal, whole wheat, wholewheat flour, wholewheat, wholemeal wheat flour, graham flour, strong wholemeal flour, wholegrain wheat flour, stoneground wholemeal flour, atta, chakki atta	water 537/50, protein 1321/100, fat 5/2, saturates 43/100, carbohydrate 6127/100, sugars 41/100, fibre 107/10, sodium 1/500				wheat, gluten		51/100		31/50 17/25	USDA SR28 NDB 20080; absorbs water: from memory	listed : wholemeal wheat flour | protein_factor 583/100
soft whole wheat flour	wheat flour	whole wheat pastry flour, soft wholemeal flour	water 621/50, protein 961/100, fat 39/20, saturates 43/100, carbohydrate 3069/50, sugars 51/50, fibre 131/10, sodium 3/1000				wheat, gluten				29/50 16/25	USDA SR28 NDB 20649; absorbs water: from memory	listed : wholemeal wheat flour
high-extraction wheat flour	wheat flour	sifted wheat flour, bolted wheat flour, high extraction flour					wheat, gluten				29/50 31/50	common practice: about 80 to 85 parts of flour from 100 of wheat; absorbs water: from memory	
malted flour	wheat flour	malted white flour		white flour 497/500, diastatic malt 3/500			wheat, gluten, barley				27/50 29/50	common practice: a little active malt to even out the falling number; absorbs water: as white flour	
self-raising flour	wheat flour	self-rising flour, self raising white flour, SR flour	water 1059/100, protein 989/100, fat 97/100, saturates 77/500, carbohydrate 1788/25, sugars 11/50, fibre 27/10, sodium 1193/1000				wheat, gluten		53/100			USDA SR28 NDB 20082	protein_factor 57/10
tipo 0 flour	wheat flour	tipo 0, farina 0, farina tipo 0, flour 0, Italian 0 flour					wheat, gluten					Italian decree DPR 187/2001, article 1 (ash in the dry matter at most 0.65 %), from memory	listed : wheat flour
tipo 1 flour	wheat flour	tipo 1, farina 1, farina tipo 1, flour 1, Italian 1 flour					wheat, gluten					Italian decree DPR 187/2001, article 1 (ash in the dry matter at most 0.80 %), from memory	listed : wheat flour
tipo 2 flour	wheat flour	tipo 2, farina 2, farina tipo 2, flour 2, Italian 2 flour					wheat, gluten					Italian decree DPR 187/2001, article 1 (ash in the dry matter at most 0.95 %), from memory	listed : wheat flour
T45 flour	wheat flour	T45, type 45, flour T45, farine T45					wheat, gluten				13/25 14/25	French flour types by ash in the dry matter (about 0.45 %), from memory; absorbs water: from memory	
T55 flour	wheat flour	T55, type 55, flour T55, farine T55					wheat, gluten				27/50 29/50	French flour types by ash in the dry matter (about 0.55 %), from memory; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	
T65 flour	wheat flour	T65, type 65, flour T65, farine T65					wheat, gluten				14/25 3/5	French flour types by ash in the dry matter (about 0.65 %), from memory; absorbs water: from memory	
T80 flour	wheat flour	T80, type 80, flour T80, farine T80					wheat, gluten				29/50 31/50	French flour types by ash in the dry matter (about 0.80 %), from memory; absorbs water: from memory	
T110 flour	wheat flour	T110, type 110, flour T110, farine T110					wheat, gluten				3/5 16/25	French flour types by ash in the dry matter (about 1.10 %), from memory; absorbs water: from memory	
T150 flour	wheat flour	T150, type 150, flour T150, farine T150					wheat, gluten				31/50 17/25	French flour types by ash in the dry matter (1.40 % and more), from memory; absorbs water: from memory	
wheat 405	wheat flour	type 405, flour type 405, wheat flour 405, wheat flour type 405, Weizenmehl 405, Weizenmehl Type 405					wheat, gluten				13/25 14/25	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
wheat 550	wheat flour	wheat flour 550, type 550, flour type 550, wheat flour type 550, Weizenmehl 550, Weizenmehl Type 550					wheat, gluten				27/50 29/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	
wheat 812	wheat flour	type 812, flour type 812, wheat flour 812, wheat flour type 812, Weizenmehl 812, Weizenmehl Type 812					wheat, gluten				14/25 3/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
wheat 1050	wheat flour	type 1050, flour type 1050, wheat flour 1050, wheat flour type 1050, Weizenmehl 1050, Weizenmehl Type 1050					wheat, gluten				29/50 31/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
wheat 1600	wheat flour	type 1600, flour type 1600, wheat flour 1600					wheat, gluten				31/50 33/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
semolina	wheat flour	durum semolina, fine semolina, coarse semolina, semola	water 1267/100, protein 317/25, fat 21/20, saturates 3/20, carbohydrate 6893/100, fibre 39/10, sodium 1/1000				wheat, gluten		71/100		29/50 16/25	USDA SR28 NDB 20466; absorbs water: from memory	listed : durum wheat semolina | protein_factor 57/10
durum flour	wheat flour	durum wheat flour, durum, semolina rimacinata, rimacinata, re-milled semolina	water 547/50, protein 342/25, fat 247/100, saturates 227/500, sodium 1/500				wheat, gluten				29/50 16/25	milled durum wheat, common practice; absorbs water: from memory	listed : durum wheat flour | protein_factor 57/10
whole durum flour	wheat flour	wholemeal durum flour, whole grain durum flour					wheat, gluten				16/25 7/10	the whole of milled durum wheat, common practice; absorbs water: from memory; composition: USDA SR28 NDB 20076, of the whole grain	
spelt flour	wheat flour	white spelt flour, white spelt, spelt, light spelt flour, spelt 630, sifted spelt flour					wheat, gluten		47/100		51/100 11/20	spelt is a wheat: Regulation (EU) 1169/2011, Annex II; absorbs water: takes less than wheat (IREKS Compendium, spelt), the figure from memory; density: common practice	listed : spelt (wheat) flour
whole spelt flour	wheat flour	wholemeal spelt flour, wholemeal spelt, whole spelt, whole grain spelt flour, wholegrain spelt flour	water 107/10, protein 29/2, fat 127/50, carbohydrate 1534/25, fibre 467/50, sodium 0				wheat, gluten				29/50 16/25	USDA FDC 2003587; absorbs water: from memory	listed : wholemeal spelt (wheat) flour | protein_factor 25/4
emmer flour	wheat flour	emmer, whole emmer flour, wholemeal emmer flour, farro flour					wheat, gluten		47/100		27/50 3/5	emmer is a wheat, common practice; absorbs water: from memory; density: common practice	listed : emmer (wheat) flour
einkorn flour	wheat flour	einkorn, whole einkorn flour, wholemeal einkorn flour	water 21/2, protein 151/10, fat 381/100, carbohydrate 5979/100, fibre 891/100, sodium 0				wheat, gluten		47/100		12/25 27/50	USDA FDC 2710827, figures of the whole grain; absorbs water: from memory; density: common practice	listed : einkorn (wheat) flour | protein_factor 583/100
khorasan flour	wheat flour	khorasan, khorasan wheat flour, whole khorasan flour, kamut flour, Khorasan wheat	water 89/10, protein 74/5, fat 14/5, carbohydrate 613/10, fibre 21/2, sodium 197/50000				wheat, gluten		47/100		29/50 31/50	USDA FDC 2710830, figures of the whole grain; absorbs water: from memory; density: common practice	listed : khorasan (wheat) flour | protein_factor 583/100
triticale flour	wheat flour	triticale, whole triticale flour					wheat, rye, gluten					triticale is a cross of wheat and rye, common practice	
sprouted wheat flour	wheat flour	sprouted whole wheat flour					wheat, gluten					common practice	
wheat starch	starch	wheaten starch					wheat, gluten					common practice: starch washed out of wheat flour; some gluten stays in it	
vital wheat gluten	other	vital gluten, wheat gluten, gluten, gluten powder	water 41/5, protein 1879/25, fat 37/20, saturates 34/125, carbohydrate 1319/100, sugars 0, fibre 3/5, sodium 29/1000				wheat, gluten		11/20			USDA SR28 NDB 48052; density: common practice	listed : wheat gluten
wheat bran	grain	coarse bran, fine bran, miller's bran	water 989/100, protein 311/20, fat 17/4, saturates 63/100, carbohydrate 2171/100, sugars 41/100, fibre 214/5, sodium 1/500				wheat, gluten		1/4			USDA SR28 NDB 20077	protein_factor 631/100
wheat germ	grain	raw wheat germ, toasted wheat germ, wheatgerm	water 278/25, protein 463/20, fat 243/25, saturates 333/200, carbohydrate 193/5, fibre 66/5, sodium 3/250				wheat, gluten		49/100			USDA SR28 NDB 20078	protein_factor 29/5
wheat berries	grain	wheat grains, wheat kernels, whole wheat berries, whole wheat grains	water 319/25, protein 77/5, fat 48/25, saturates 157/500, carbohydrate 5583/100, sugars 41/100, fibre 61/5, sodium 1/500				wheat, gluten		81/100			USDA SR28 NDB 20071	protein_factor 583/100
cracked wheat	grain	wheat chops, kibbled wheat, wheat grits, wheat meal coarse	water 319/25, protein 77/5, fat 48/25, saturates 157/500, carbohydrate 5583/100, sugars 41/100, fibre 61/5, sodium 1/500				wheat, gluten		59/100			broken wheat grain, common practice; density: USDA SR portion weights, from memory; composition: USDA SR28 NDB 20071, of the whole grain	protein_factor 583/100
wheat flakes	grain	rolled wheat, flaked wheat	water 319/25, protein 77/5, fat 48/25, saturates 157/500, carbohydrate 5583/100, sugars 41/100, fibre 61/5, sodium 1/500				wheat, gluten					rolled wheat grain, common practice; composition: USDA SR28 NDB 20071, of the whole grain	protein_factor 583/100
malted wheat flakes	grain	malted flakes					wheat, barley, gluten					steamed, malted and rolled wheat, common practice	
bulgur	grain	bulgur wheat, bulghur, burghul	water 9, protein 1229/100, fat 133/100, saturates 29/125, carbohydrate 6337/100, sugars 41/100, fibre 25/2, sodium 17/1000				wheat, gluten		59/100			USDA SR28 NDB 20012	protein_factor 583/100
sprouted wheat	grain	wheat sprouts, sprouted wheat berries, sprouted wheat grains	water 191/4, protein 749/100, fat 127/100, saturates 103/500, carbohydrate 4143/100, fibre 11/10, sodium 2/125				wheat, gluten		23/50			USDA SR28 NDB 20087	protein_factor 583/100
spelt berries	grain	spelt grains, spelt kernels	water 551/50, protein 1457/100, fat 243/100, saturates 203/500, carbohydrate 5949/100, sugars 341/50, fibre 107/10, sodium 1/125				wheat, gluten		37/50			USDA SR28 NDB 20140	protein_factor 583/100
spelt flakes	grain	rolled spelt	water 551/50, protein 1457/100, fat 243/100, saturates 203/500, carbohydrate 5949/100, sugars 341/50, fibre 107/10, sodium 1/125				wheat, gluten					rolled spelt grain, common practice; composition: USDA SR28 NDB 20140, of the whole grain	protein_factor 583/100
spelt chops	grain	cracked spelt, kibbled spelt	water 551/50, protein 1457/100, fat 243/100, saturates 203/500, carbohydrate 5949/100, sugars 341/50, fibre 107/10, sodium 1/125				wheat, gluten					broken spelt grain, common practice; composition: USDA SR28 NDB 20140, of the whole grain	protein_factor 583/100
green spelt	grain	freekeh, gruenkern, grünkern					wheat, gluten					unripe dried wheat or spelt grain, common practice	
couscous	grain						wheat, gluten					common practice	
emmer berries	grain	emmer grains, farro					wheat, gluten					common practice	
white rye flour	rye flour	white rye, rye 815, rye flour 815					rye, gluten				17/25 18/25	the whitest rye flour, common practice; absorbs water: rye baking tests, 70 % for type 815 (samartha.net), give or take two	listed : rye flour
light rye flour	rye flour	light rye, rye 997, rye flour 997, rye type 997, type 997, rye flour type 997, Roggenmehl 997, Roggenmehl Type 997	water 57/5, protein 491/50, fat 133/100, saturates 3/20, carbohydrate 1717/25, sugars 93/100, fibre 8, sodium 1/500				rye, gluten		43/100		71/100 3/4	USDA SR28 NDB 20065; absorbs water: rye baking tests, 73 % for type 997 (samartha.net), give or take two	listed : rye flour | protein_factor 583/100
medium rye flour	rye flour	medium rye, rye 1150, rye flour 1150, rye type 1150, type 1150, rye flour type 1150, Roggenmehl 1150, Roggenmehl Type 1150, T85 rye flour	water 1097/100, protein 272/25, fat 38/25, saturates 9/50, carbohydrate 6363/100, sugars 11/10, fibre 59/5, sodium 1/500				rye, gluten		43/100		73/100 77/100	USDA SR28 NDB 20064; absorbs water: rye baking tests, 75 % for type 1150 (samartha.net), give or take two	listed : rye flour | protein_factor 583/100
rye 1370	rye flour	rye flour 1370, rye type 1370, type 1370, rye flour type 1370, Roggenmehl 1370, Roggenmehl Type 1370, T130 rye flour					rye, gluten				19/25 4/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: rye baking tests, 78 % for type 1370 (samartha.net), give or take two	
dark rye flour	rye flour	dark rye, rye 1740, rye flour 1740, rye type 1740, T170 rye flour	water 43/4, protein 1591/100, fat 111/50, saturates 269/1000, carbohydrate 4483/100, sugars 231/100, fibre 119/5, sodium 1/500				rye, gluten		27/50		19/25 4/5	USDA SR28 NDB 20063; absorbs water: from memory	listed : rye flour | protein_factor 583/100
whole rye flour	rye flour	whole rye, wholemeal rye flour, wholemeal rye, whole grain rye flour, wholegrain rye flour, rye wholemeal, rye meal, whole rye meal, fine rye meal, coarse rye meal, pumpernickel flour, pumpernickel meal	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten		27/50		19/25 4/5	USDA SR28 NDB 20062 (the whole grain; milling takes nothing away); absorbs water: German net dough yields 176 to 180 for wholegrain (encyclopaedia, Teigausbeute); density: USDA SR portion weights, from memory	listed : wholemeal rye flour | protein_factor 583/100
rye chops	grain	cracked rye, kibbled rye, chopped rye, rye grits, coarse rye chops, medium rye chops, fine rye chops	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten					broken rye grain, common practice; composition: USDA SR28 NDB 20062, of the whole grain	protein_factor 583/100
rye flakes	grain	rolled rye, flaked rye	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten					rolled rye grain, common practice; composition: USDA SR28 NDB 20062, of the whole grain	protein_factor 583/100
rye berries	grain	rye grains, rye kernels, whole rye berries, whole rye grains	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten		71/100			USDA SR28 NDB 20062	protein_factor 583/100
rye bran	grain						rye, gluten					common practice	
sprouted rye	grain	rye sprouts, sprouted rye grains					rye, gluten					common practice	
barley flour	other flour	barley meal, whole barley flour, wholemeal barley flour, bere meal	water 1211/100, protein 21/2, fat 8/5, saturates 67/200, carbohydrate 3221/50, sugars 4/5, fibre 101/10, sodium 1/250				barley, gluten		63/100			USDA SR28 NDB 20130	protein_factor 583/100
oat flour	other flour	whole oat flour, oatmeal flour	water 443/50, protein 66/5, fat 631/100, carbohydrate 297/5, fibre 21/2, sodium 181/50000				oats, gluten		11/25			USDA FDC 2261421; density: USDA SR portion weights, from memory	protein_factor 25/4
buckwheat flour	other flour	whole buckwheat flour	water 223/20, protein 631/50, fat 31/10, saturates 677/1000, carbohydrate 6059/100, sugars 13/5, fibre 10, sodium 11/1000						51/100			USDA SR28 NDB 20011	protein_factor 25/4
teff flour	other flour	teff, brown teff flour, ivory teff flour							63/100			common practice; density: common practice	
rice flour	other flour	white rice flour, ground rice, fine rice flour	water 1189/100, protein 119/20, fat 71/50, saturates 193/500, carbohydrate 7773/100, sugars 3/25, fibre 12/5, sodium 0						67/100			USDA SR28 NDB 20061	protein_factor 119/20
brown rice flour	other flour	whole rice flour, wholegrain rice flour	water 1197/100, protein 723/100, fat 139/50, saturates 557/1000, carbohydrate 1797/25, sugars 33/50, fibre 23/5, sodium 1/125						67/100			USDA SR28 NDB 20090	protein_factor 119/20
glutinous rice flour	other flour	sweet rice flour, sticky rice flour	water 59/5, protein 669/100, fat 29/25, sodium 3/500									USDA FDC 1104867	
maize flour	other flour	yellow maize flour, fine maize flour, whole maize flour, yellow corn flour, whole corn flour, corn flour whole-grain	water 1091/100, protein 693/100, fat 193/50, saturates 543/1000, carbohydrate 1391/20, sugars 16/25, fibre 73/10, sodium 1/200						49/100		9/10 6/5	USDA SR28 NDB 20016; absorbs water: from memory	protein_factor 25/4
cornmeal	other flour	maize meal, polenta, yellow cornmeal, fine cornmeal, coarse cornmeal, degermed cornmeal	water 559/50, protein 711/100, fat 7/4, saturates 11/50, carbohydrate 1511/20, sugars 161/100, fibre 39/10, sodium 7/1000						33/50		9/10 6/5	USDA SR28 NDB 20422; absorbs water: from memory	protein_factor 25/4
whole-grain cornmeal	other flour	whole cornmeal, stoneground cornmeal	water 513/50, protein 203/25, fat 359/100, saturates 101/200, carbohydrate 6959/100, sugars 16/25, fibre 73/10, sodium 7/200						13/25		9/10 6/5	USDA SR28 NDB 20020; absorbs water: from memory	protein_factor 25/4
masa harina	other flour	masa flour, nixtamalised maize flour, nixtamalized corn flour	water 101/10, protein 189/25, fat 217/50, carbohydrate 3483/50, fibre 176/25, sodium 273/100000						12/25		11/10 7/5	USDA FDC 2710835; density: USDA SR portion weights, from memory; absorbs water: from memory	protein_factor 25/4
millet flour	other flour	whole millet flour	water 867/100, protein 43/4, fat 17/4, saturates 67/125, carbohydrate 3581/50, sugars 83/50, fibre 7/2, sodium 1/250						1/2			USDA SR28 NDB 20647	protein_factor 583/100
sorghum flour	other flour	jowar flour, milo flour, white sorghum flour	water 941/100, protein 827/100, fat 359/100, carbohydrate 3569/50, fibre 301/50, sodium 0						51/100			USDA FDC 2512373; density: USDA SR portion weights, from memory	protein_factor 583/100
quinoa flour	other flour	whole quinoa flour	water 199/20, protein 119/10, fat 33/5, carbohydrate 316/5, fibre 63/10, sodium 79/12500									USDA FDC 2512372	protein_factor 583/100
amaranth flour	other flour	whole amaranth flour	water 949/100, protein 66/5, fat 156/25, carbohydrate 6159/100, fibre 721/100, sodium 0									USDA FDC 2512371	protein_factor 117/20
chickpea flour	other flour	gram flour, besan, garbanzo flour, garbanzo bean flour							39/100			common practice: weighed as flour where it replaces flour; density: USDA SR portion weights, from memory	
chestnut flour	other flour											common practice	
soya flour	other flour	soy flour, full-fat soya flour, full-fat soy flour	water 129/25, protein 3781/100, fat 413/20, saturates 2987/1000, carbohydrate 558/25, sugars 15/2, fibre 48/5, sodium 13/1000		no		soya		7/20			USDA SR28 NDB 16115	protein_factor 25/4
defatted soya flour	other flour	defatted soy flour	water 29/4, protein 2573/50, fat 61/50, saturates 17/125, carbohydrate 821/50, sugars 821/50, fibre 35/2, sodium 1/50		no		soya		11/25			USDA SR28 NDB 16117	protein_factor 25/4
lupin flour	other flour	lupine flour			no		lupin					common practice: an addition of a few per cent, on top of the flour	
bean flour	other flour	broad bean flour, fava bean flour, faba bean flour			no							common practice: an improver of one or two per cent, on top of the flour	
pea flour	other flour	yellow pea flour										common practice	
potato flour	vegetable	dried potato flour	water 163/25, protein 69/10, fat 17/50, saturates 9/100, carbohydrate 386/5, sugars 88/25, fibre 59/10, sodium 11/200						17/25			USDA SR28 NDB 11413; density: USDA SR portion weights, from memory	ask sulphites: often sulphited | protein_factor 25/4
potato flakes	vegetable	instant mashed potato, dehydrated potato flakes, mashed potato flakes, instant potato flakes	water 329/50, protein 417/50, fat 41/100, saturates 169/1000, carbohydrate 7457/100, sugars 84/25, fibre 33/5, sodium 77/1000						1/4			USDA SR28 NDB 11378; density: USDA SR portion weights, from memory	ask sulphites: often sulphited | protein_factor 25/4
potato starch	starch	potato starch flour, fecule							17/25			common practice; density: common practice	ask sulphites: potato starch may be sulphited
maize starch	starch	cornstarch, corn starch, maize cornflour, cornflour starch	water 208/25, protein 13/50, fat 1/20, saturates 9/1000, carbohydrate 9037/100, sugars 0, fibre 9/10, sodium 9/1000						27/50			USDA SR28 NDB 20027	protein_factor 25/4
tapioca starch	starch	tapioca flour, tapioca, cassava starch, manioc starch							51/100			common practice; density: USDA SR portion weights, from memory	
rice starch	starch											common practice	
arrowroot	starch	arrowroot starch, arrowroot powder							27/50			common practice; density: USDA SR portion weights, from memory	
cassava flour	other flour	manioc flour										the whole root, dried and milled, common practice	
psyllium husk	other	psyllium, ispaghula, whole psyllium husk							17/50			common practice: a binder, on top of the flour; density: common practice	
psyllium powder	other	psyllium husk powder, ground psyllium										common practice: a binder, on top of the flour	
xanthan gum	other	xanthan, E415							11/20			common practice; density: common practice	listed : thickener (xanthan gum)
guar gum	other	guar, E412										common practice	listed : thickener (guar gum)
rolled oats	grain	oat flakes, porridge oats, old-fashioned oats, jumbo oats, quick oats, flaked oats, large oat flakes, small oat flakes, instant oats	water 271/25, protein 263/20, fat 163/25, saturates 111/100, carbohydrate 288/5, sugars 99/100, fibre 101/10, sodium 3/500				oats, gluten		17/50			USDA SR28 NDB 08120	protein_factor 583/100
oat groats	grain	whole oats, whole oat groats, oat berries	water 411/50, protein 1689/100, fat 69/10, saturates 1217/1000, carbohydrate 5567/100, fibre 53/5, sodium 1/500				oats, gluten		33/50			USDA SR28 NDB 20038	protein_factor 583/100
steel-cut oats	grain	pinhead oats, cut oats, coarse oatmeal, pinhead oatmeal, Irish oatmeal	water 101/10, protein 25/2, fat 29/5, carbohydrate 289/5, fibre 12, sodium 31/100000				oats, gluten					USDA FDC 2346397	protein_factor 583/100
oat bran	grain		water 131/20, protein 173/10, fat 703/100, saturates 166/125, carbohydrate 2541/50, sugars 29/20, fibre 77/5, sodium 1/250				oats, gluten		2/5			USDA SR28 NDB 20033	protein_factor 583/100
barley flakes	grain	rolled barley, flaked barley					barley, gluten					common practice	
pearl barley	grain	pearled barley					barley, gluten					common practice; may carry sulphites, Regulation (EC) 1333/2008	ask sulphites: pearled grain may be sulphited
hulled barley	grain	barley berries, pot barley, barley grains, whole barley					barley, gluten					common practice	
millet	grain	hulled millet, whole millet, millet grain, proso millet							17/20			common practice; density: USDA SR portion weights, from memory	
buckwheat groats	grain	whole buckwheat, roasted buckwheat, kasha, buckwheat										common practice	
quinoa	grain	whole quinoa, white quinoa, red quinoa							18/25			common practice; density: USDA SR portion weights, from memory	
amaranth	grain	whole amaranth, amaranth seed										common practice	
cooked rice	grain	boiled rice							67/100			common practice; density: USDA SR portion weights, from memory	
rice	grain	white rice, long grain rice							39/50			common practice; density: USDA SR portion weights, from memory	
popcorn maize	grain	maize grits, corn grits, hominy grits, grits										common practice	
sunflower seeds	seed	sunflower kernels, hulled sunflower seeds, sunflower seed kernels, sunflower, toasted sunflower seeds, roasted sunflower seeds	water 473/100, protein 1039/50, fat 2573/50, saturates 891/200, carbohydrate 57/5, sugars 131/50, fibre 43/5, sodium 9/1000						59/100			USDA SR28 NDB 12036	protein_factor 53/10
pumpkin seeds	seed	pumpkin kernels, pepitas, toasted pumpkin seeds, roasted pumpkin seeds	water 523/100, protein 3023/100, fat 981/20, saturates 8659/1000, carbohydrate 471/100, sugars 7/5, fibre 6, sodium 7/1000						11/20			USDA SR28 NDB 12014	protein_factor 53/10
sesame seeds	seed	sesame, white sesame, unhulled sesame, whole sesame seeds, brown sesame, black sesame, black sesame seeds, toasted sesame seeds	water 469/100, protein 1773/100, fat 4967/100, saturates 6957/1000, carbohydrate 233/20, sugars 3/10, fibre 59/5, sodium 11/1000				sesame		61/100			USDA SR28 NDB 12023	protein_factor 53/10
hulled sesame	seed	hulled sesame seeds, sesame kernels	water 15/4, protein 409/20, fat 6121/100, saturates 1811/200, carbohydrate 13/100, sugars 12/25, fibre 58/5, sodium 47/1000				sesame		63/100			USDA SR28 NDB 12201	listed : sesame seeds | protein_factor 53/10
flaxseed	seed	linseed, flax, flax seed, golden linseed, golden flaxseed, brown linseed, brown flaxseed, lin seed	water 174/25, protein 1829/100, fat 1054/25, saturates 3663/1000, carbohydrate 79/50, sugars 31/20, fibre 273/10, sodium 3/100						71/100			USDA SR28 NDB 12220; density: USDA SR portion weights, from memory	protein_factor 53/10
ground flaxseed	seed	ground linseed, milled linseed, milled flaxseed, flax meal, flaxmeal	water 34/5, protein 18, fat 373/10, saturates 82/25, carbohydrate 113/10, fibre 231/10, sodium 367/10000						47/100			USDA FDC 2262075; density: USDA SR portion weights, from memory	protein_factor 53/10
poppy seeds	seed	poppy, blue poppy seeds, white poppy seeds	water 119/20, protein 1799/100, fat 1039/25, saturates 4517/1000, carbohydrate 863/100, sugars 299/100, fibre 39/2, sodium 13/500						57/100			USDA SR28 NDB 02033	protein_factor 53/10
ground poppy seeds	seed	milled poppy seeds	water 119/20, protein 1799/100, fat 1039/25, saturates 4517/1000, carbohydrate 863/100, sugars 299/100, fibre 39/2, sodium 13/500									common practice; composition: USDA SR28 NDB 02033, of the whole seed	protein_factor 53/10
chia seeds	seed	chia	water 29/5, protein 827/50, fat 1537/50, saturates 333/100, carbohydrate 193/25, fibre 172/5, sodium 2/125						7/10			USDA SR28 NDB 12006; density: common practice	protein_factor 53/10
hemp seeds	seed	hulled hemp seeds, hemp hearts										common practice	
nigella	spice	nigella seed, black cumin, kalonji, black caraway, onion seed							47/100			common practice; density: common practice	
hazelnuts	nut	filberts, roasted hazelnuts, chopped hazelnuts, whole hazelnuts, cobnuts, toasted hazelnuts	water 531/100, protein 299/20, fat 243/4, saturates 558/125, carbohydrate 7, sugars 217/50, fibre 97/10, sodium 0				hazelnut		49/100			USDA SR28 NDB 12120; density: USDA SR portion weights, from memory	protein_factor 53/10
walnuts	nut	walnut halves, walnut pieces, chopped walnuts, English walnuts, toasted walnuts	water 407/100, protein 1523/100, fat 6521/100, saturates 3063/500, carbohydrate 701/100, sugars 261/100, fibre 67/10, sodium 1/500				walnut		49/100			USDA SR28 NDB 12155; density: USDA SR portion weights, from memory	protein_factor 53/10
almonds	nut	whole almonds, chopped almonds, toasted almonds, roasted almonds	water 441/100, protein 423/20, fat 4993/100, saturates 1901/500, carbohydrate 181/20, sugars 87/20, fibre 25/2, sodium 1/1000				almond		3/5			USDA SR28 NDB 12061; density: USDA SR portion weights, from memory	protein_factor 259/50
blanched almonds	nut		water 451/100, protein 107/5, fat 1313/25, saturates 3953/1000, carbohydrate 877/100, sugars 463/100, fibre 99/10, sodium 19/1000				almond		31/50			USDA SR28 NDB 12062	protein_factor 259/50
flaked almonds	nut	sliced almonds, toasted flaked almonds, almond flakes	water 451/100, protein 107/5, fat 1313/25, saturates 3953/1000, carbohydrate 877/100, sugars 463/100, fibre 99/10, sodium 19/1000				almond		39/100			USDA SR28 NDB 12062; density: a cup of sliced almonds is 92 g, USDA SR28 NDB 12061	
slivered almonds	nut	almond slivers, nibbed almonds	water 451/100, protein 107/5, fat 1313/25, saturates 3953/1000, carbohydrate 877/100, sugars 463/100, fibre 99/10, sodium 19/1000				almond		23/50			USDA SR28 NDB 12062; density: a cup of slivered almonds is 108 g, USDA SR28 NDB 12061	
ground almonds	nut	almond flour, almond meal	water 108/25, protein 131/5, fat 251/5, carbohydrate 693/100, fibre 927/100, sodium 89/100000				almond		2/5			USDA FDC 2261420; density: USDA SR portion weights, from memory	protein_factor 25/4
pecans	nut	pecan nuts, pecan halves, toasted pecans	water 88/25, protein 917/100, fat 7197/100, saturates 309/50, carbohydrate 213/50, sugars 397/100, fibre 48/5, sodium 0				pecan		23/50			USDA SR28 NDB 12142; density: USDA SR portion weights, from memory	protein_factor 53/10
pistachios	nut	pistachio nuts, pistachio kernels					pistachio		13/25			common practice; density: USDA SR portion weights, from memory	
cashews	nut	cashew nuts					cashew		29/50			common practice; density: USDA SR portion weights, from memory	
macadamias	nut	macadamia nuts					macadamia		57/100			common practice; density: USDA SR portion weights, from memory	
brazil nuts	nut						brazil nut		14/25			common practice; density: USDA SR portion weights, from memory	
pine nuts	nut	pine kernels, pignoli					pine nut		57/100			common practice; a tree nut in the United States, not in Annex II of Regulation (EU) 1169/2011; density: USDA SR portion weights, from memory	
peanuts	nut	groundnuts, roasted peanuts					peanut		31/50			common practice; density: USDA SR portion weights, from memory	
chestnuts	nut	cooked chestnuts, peeled chestnuts							3/5			common practice; density: USDA SR portion weights, from memory	
desiccated coconut	nut	dried coconut, unsweetened coconut, shredded coconut	water 3, protein 172/25, fat 6453/100, saturates 28609/500, carbohydrate 147/20, sugars 147/20, fibre 163/10, sodium 37/1000						17/50			USDA SR28 NDB 12108; density: USDA SR portion weights, from memory	ask sulphites: desiccated nuts may be sulphited | protein_factor 53/10
coconut flour	nut								49/100			common practice; density: common practice	
marzipan	other	almond paste					almond		24/25			common practice; density: USDA SR portion weights, from memory	ask sulphites: may be sulphited
praline paste	other	hazelnut paste, hazelnut praline					hazelnut					common practice	ask almond: may be made with almonds
raisins	fruit	seedless raisins, dark raisins	water 1543/100, protein 307/100, fat 23/50, saturates 29/500, carbohydrate 1887/25, sugars 5919/100, fibre 37/10, sodium 11/1000						61/100			USDA SR28 NDB 09298; density: USDA SR portion weights, from memory	protein_factor 25/4
sultanas	fruit	golden raisins, golden sultanas	water 1497/100, protein 339/100, fat 23/50, saturates 151/1000, carbohydrate 1888/25, sugars 5919/100, fibre 4, sodium 3/250				?		61/100			USDA SR28 NDB 09297; density: USDA SR portion weights, from memory	ask sulphites: dried fruit is often sulphured | protein_factor 25/4
currants	fruit	dried currants, zante currants	water 1921/100, protein 102/25, fat 27/100, saturates 7/250, carbohydrate 1682/25, sugars 1682/25, fibre 34/5, sodium 1/125						61/100			USDA SR28 NDB 09085; density: USDA SR portion weights, from memory	protein_factor 25/4
dates	fruit	dried dates, pitted dates, chopped dates	water 2053/100, protein 49/20, fat 39/100, saturates 4/125, carbohydrate 6703/100, sugars 1267/20, fibre 8, sodium 1/500						31/50			USDA SR28 NDB 09087; density: USDA SR portion weights, from memory	protein_factor 25/4
dried figs	fruit		water 601/20, protein 33/10, fat 93/100, saturates 18/125, carbohydrate 5407/100, sugars 1198/25, fibre 49/5, sodium 1/100						63/100			USDA SR28 NDB 09094; density: USDA SR portion weights, from memory	protein_factor 25/4
fresh figs	fruit	ripe figs, raw figs	water 79							50		USDA SR NDB 09089, from memory: 79 g water, a medium one 50 g	
dried apricots	fruit		water 3089/100, protein 339/100, fat 51/100, saturates 17/1000, carbohydrate 2767/50, sugars 1336/25, fibre 73/10, sodium 1/100				?			7		USDA SR28 NDB 09032; one as there, without shell or skin	ask sulphites: dried fruit is often sulphured | protein_factor 25/4
dried cranberries	fruit	sweetened dried cranberries	water 1579/100, protein 17/100, fat 109/100, saturates 11/125, carbohydrate 155/2, sugars 1814/25, fibre 53/10, sodium 1/200						17/25			USDA SR28 NDB 09079; density: a quarter cup there is 40 g	
fresh cranberries	fruit	frozen cranberries, raw cranberries	water 87						21/50			USDA SR NDB 09078, from memory: 87 g water; 100 g a cup	
prunes	fruit	dried plums, pitted prunes	water 773/25, protein 109/50, fat 19/50, saturates 11/125, carbohydrate 2839/50, sugars 3813/100, fibre 71/10, sodium 1/500						37/50			USDA SR28 NDB 09291; density: USDA SR portion weights, from memory	protein_factor 25/4
dried pears	fruit						?					common practice	ask sulphites: dried fruit is often sulphured
dried apples	fruit	apple rings					?					common practice	ask sulphites: dried fruit is often sulphured
dried cherries	fruit	sour cherries dried					?		17/25			common practice; density: USDA SR portion weights, from memory	ask sulphites: dried fruit is often sulphured
mixed dried fruit	fruit	mixed vine fruit, vine fruit					?					common practice	ask sulphites: dried fruit is often sulphured
candied fruit	fruit	glace fruit, tutti frutti	water 167/10, protein 17/50, fat 7/100, saturates 1/100, carbohydrate 4057/50, sugars 2017/25, fibre 8/5, sodium 49/500				?					USDA SR28 NDB 09426	ask sulphites: dried fruit is often sulphured
candied peel	fruit	mixed peel, candied orange peel, candied lemon peel, candied orange, candied citrus peel, orangeat, citronat, succade					?		63/100			common practice; density: common practice	ask sulphites: dried fruit is often sulphured
glace cherries	fruit	candied cherries, maraschino cherries					?		17/20			common practice; density: common practice	ask sulphites: dried fruit is often sulphured
apples	fruit	peeled apples, diced apple, cooking apples	water 8667/100, protein 27/100, fat 13/100, saturates 21/1000, carbohydrate 573/50, sugars 101/10, fibre 13/10, sodium 0						53/100			USDA SR28 NDB 09004; density: USDA SR portion weights, from memory	protein_factor 25/4
pears	fruit	fresh pears										common practice	
blueberries	fruit	bilberries, fresh blueberries, frozen blueberries							63/100			common practice; density: USDA SR portion weights, from memory	
raspberries	fruit	frozen raspberries							13/25			common practice; density: USDA SR portion weights, from memory	
cherries	fruit	fresh cherries, pitted cherries, sour cherries							13/20			common practice; density: USDA SR portion weights, from memory	
plums	fruit	damsons										common practice	
bananas	fruit	ripe bananas, mashed banana							19/20			common practice; density: USDA SR portion weights, from memory; mashed	
lemon zest	fruit	lemon peel, grated lemon peel, lemon rind	water 408/5, protein 3/2, fat 3/10, saturates 39/1000, carbohydrate 27/5, sugars 417/100, fibre 53/5, sodium 3/500						41/100			USDA SR28 NDB 09156; density: common practice	protein_factor 25/4
orange zest	fruit	orange peel, grated orange peel, orange rind	water 145/2, protein 3/2, fat 1/5, saturates 3/125, carbohydrate 72/5, fibre 53/5, sodium 3/1000						41/100			USDA SR28 NDB 09216; density: common practice	protein_factor 25/4
apple puree	fruit	apple sauce, applesauce, stewed apple	water 88			yes			103/100			unsweetened, about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
lemon juice	liquid	fresh lemon juice	water 9231/100, protein 7/20, fat 6/25, saturates 1/25, carbohydrate 33/5, sugars 63/25, fibre 3/10, sodium 1/1000						103/100			USDA SR28 NDB 09152	ask sulphites: often sulphited to keep | protein_factor 25/4
orange juice	liquid	fresh orange juice	water 88						21/20			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
apple juice	liquid	sweet cider	water 88						21/20			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
jam	other	fruit spread, jelly jam, marmalade							27/20			common practice; density: USDA SR portion weights, from memory	ask sulphites: may be sulphited
lettuce	vegetable	salad leaves										common practice	
rocket	vegetable	arugula										common practice	
cucumber	vegetable											common practice	
boiled potatoes	vegetable	cooked potatoes, potatoes, mashed potato, cooked mashed potato, riced potatoes	water 3873/50, protein 171/100, fat 1/10, saturates 13/500, carbohydrate 1821/100, sugars 89/100, fibre 9/5, sodium 1/200						33/50			USDA SR28 NDB 11367; density: USDA SR portion weights, from memory	protein_factor 25/4
baked potatoes	vegetable	roast potatoes	water 7543/100, protein 21/10, fat 3/20, saturates 11/500, carbohydrate 949/50, sugars 153/100, fibre 21/10, sodium 7/1000									USDA SR28 NDB 11357	
raw potatoes	vegetable	grated potatoes, grated raw potato	water 317/4, protein 41/20, fat 9/100, saturates 1/40, carbohydrate 1539/100, sugars 41/50, fibre 21/10, sodium 3/500									USDA SR28 NDB 11352	protein_factor 25/4
sweet potatoes	vegetable	cooked sweet potato, mashed sweet potato							14/25			common practice; density: USDA SR portion weights, from memory	
onions	vegetable	raw onions, sliced onions, chopped onions, yellow onions	water 8911/100, protein 11/10, fat 1/10, saturates 21/500, carbohydrate 191/25, sugars 106/25, fibre 17/10, sodium 1/250						17/25			USDA SR28 NDB 11282; density: USDA SR portion weights, from memory	protein_factor 25/4
fried onions	vegetable	roasted onions, caramelised onions, caramelized onions, crisp onions					?					common practice; bought ones are often dusted with wheat flour	ask wheat: may be let down with wheat flour, or coated with it: the packet says
dried onions	vegetable	onion flakes, dehydrated onions	water 393/100, protein 179/20, fat 23/50, saturates 39/500, carbohydrate 1852/25, sugars 3741/100, fibre 46/5, sodium 21/1000						17/50			USDA SR28 NDB 11284; 5 g a tablespoon there	ask sulphites: often sulphited | protein_factor 25/4
garlic	vegetable	raw garlic, garlic cloves, peeled garlic	water 2929/50, protein 159/25, fat 1/2, saturates 89/1000, carbohydrate 774/25, sugars 1, fibre 21/10, sodium 17/1000						57/100	3		USDA SR28 NDB 11215; one as there, without shell or skin; 136 g a cup there	protein_factor 25/4
roasted garlic	vegetable	roast garlic										common practice	
tomatoes	vegetable	cherry tomatoes, fresh tomatoes, chopped tomatoes	water 2363/25, protein 22/25, fat 1/5, saturates 7/250, carbohydrate 269/100, sugars 263/100, fibre 6/5, sodium 1/200						19/25			USDA SR28 NDB 11529; density: USDA SR portion weights, from memory	protein_factor 25/4
sun-dried tomatoes	vegetable	dried tomatoes, sundried tomatoes	water 364/25, protein 1411/100, fat 297/100, saturates 213/500, carbohydrate 2173/50, sugars 3759/100, fibre 123/10, sodium 107/1000				?		23/100			USDA SR28 NDB 11955; density: USDA SR portion weights, from memory	ask sulphites: often sulphited | protein_factor 25/4
passata	vegetable	sieved tomatoes, tomato passata	water 2197/25, protein 33/20, fat 21/100, saturates 29/1000, carbohydrate 177/25, sugars 483/100, fibre 19/10, sodium 7/250			yes			53/50			USDA SR28 NDB 11547	
tomato paste	vegetable	tomato concentrate, double concentrate tomato	water 147/2, protein 108/25, fat 47/100, saturates 1/10, carbohydrate 1481/100, sugars 609/50, fibre 41/10, sodium 59/1000			yes			111/100			USDA SR28 NDB 11546; density: USDA SR portion weights, from memory	protein_factor 25/4
carrots	vegetable	grated carrots, raw carrots	water 8829/100, protein 93/100, fat 6/25, saturates 37/1000, carbohydrate 339/50, sugars 237/50, fibre 14/5, sodium 69/1000						23/50			USDA SR28 NDB 11124; density: USDA SR portion weights, from memory	protein_factor 25/4
beetroot	vegetable	beets, cooked beetroot, red beet, grated beetroot										common practice	
pumpkin puree	vegetable	squash puree, canned pumpkin	water 8997/100, protein 11/10, fat 7/25, saturates 73/500, carbohydrate 519/100, sugars 33/10, fibre 29/10, sodium 1/200			yes			26/25			USDA SR28 NDB 11424; density: USDA SR portion weights, from memory	protein_factor 25/4
leeks	vegetable	sliced leeks										common practice	
celeriac	vegetable	celery root, celeriac root	water 88				celery					celery of Annex II includes celeriac; about 88 g water in 100 g, from memory	
celery	vegetable	celery sticks, celery stalks					celery					Regulation (EU) 1169/2011, Annex II	
spinach	vegetable	spinach leaves							13/100			common practice; density: USDA SR portion weights, from memory	
nettles	vegetable	nettle leaves										common practice	
mushrooms	vegetable	sliced mushrooms										common practice	
sweet peppers	vegetable	bell peppers, red peppers, capsicum										common practice	
courgettes	vegetable	zucchini, grated courgette							13/25			common practice; density: USDA SR portion weights, from memory	
sauerkraut	vegetable	drained sauerkraut							3/5			common practice; density: USDA SR portion weights, from memory	ask sulphites: often sulphited
olives	vegetable	pitted olives, black olives, green olives, ripe olives, stoned olives, kalamata olives	water 7999/100, protein 21/25, fat 267/25, saturates 283/200, carbohydrate 153/50, sugars 0, fibre 16/5, salt 147/80						57/100			USDA SR28 NDB 09193; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory	protein_factor 25/4
capers	vegetable	pickled capers										common practice	ask sulphites: often sulphited
chives	vegetable	chopped chives, spring onions, scallions, green onions							1/5			common practice; density: common practice	
water	water	tap water, warm water, cold water, boiling water, hot water, ice, iced water, ice water, crushed ice, lukewarm water, h2o, Wasser, eau, acqua, agua	water 100						1			taken as water alone, 1 ml weighing 1 g	
beer	liquid	ale, lager, dark beer, stout	water 2299/25, protein 23/50, fat 0, saturates 0, carbohydrate 71/20, sugars 0, fibre 0, alcohol 39/10, sodium 1/250				barley, gluten		1			USDA SR28 NDB 14003	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask sulphites: often sulphited to keep | protein_factor 25/4
wheat beer	liquid	weissbier, hefeweizen, witbier, cloudy wheat beer	water 92				wheat, barley, gluten		1			about half of its malt is wheat, the rest barley; water as beer, from memory	
hard cider	liquid	dry cider, still cider, fermented cider	water 92				?		101/100			about 92 g water in 100 g, from memory; density: from memory	
kvass	liquid	bread kvass	water 94				rye, gluten					about 94 g water in 100 g, from memory	ask barley: may be brewed with barley | ask wheat: may be let down with wheat flour, or coated with it: the packet says
wine	liquid	red wine, white wine	water 87				sulphites		99/100			about 87 g water in 100 g, from memory; density: from memory	
rum	liquid	dark rum, brandy, kirsch, whiskey, whisky	water 333/5, alcohol 167/5						47/50			USDA SR NDB 14037, spirits of 40 per cent by volume, from memory: 33.4 g alcohol in 100 g, the rest water; density: 27.8 g a fluid ounce there	
coffee	liquid	brewed coffee, espresso	water 99						1			brewed, about 99 g water in 100 g, from memory; density: from memory	
distilled vinegar	liquid	spirit vinegar, white vinegar, white distilled vinegar	water 4739/50, protein 0, fat 0, saturates 0, carbohydrate 1/25, sugars 1/25, fibre 0, sodium 1/500						101/100			USDA SR28 NDB 02053	
cider vinegar	liquid	apple cider vinegar	water 9381/100, protein 0, fat 0, saturates 0, carbohydrate 93/100, sugars 2/5, fibre 0, sodium 1/200						101/100			USDA SR28 NDB 02048	ask sulphites: often sulphited to keep
malt vinegar	liquid		water 95				barley, gluten					about 95 g water in 100 g, from memory	
potato water	liquid	potato cooking water	water 99									common practice: water that potatoes were boiled in, taken as 99 g water in 100 g	
coconut milk	liquid	canned coconut milk	water 73, fat 21						24/25			canned, about 73 g water and 21 g fat in 100 g, from memory; density: USDA SR portion weights, from memory	
oat drink	liquid	oat milk	water 90				oats, gluten		103/100			about 90 g water in 100 g, from memory; density: common practice	
soya drink	liquid	soy milk, soya milk, soy drink	water 93				soya		103/100			about 93 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
almond drink	liquid	almond milk	water 97				almond		101/100			about 97 g water in 100 g, from memory; density: common practice	
milk	dairy	whole milk, full-fat milk, full cream milk, fresh milk, warm milk, cold milk, scalded milk, lukewarm milk, Milch, lait, latte, leche	water 8813/100, protein 63/20, fat 327/100, saturates 373/200, carbohydrate 239/50, sugars 101/20, fibre 0, sodium 43/1000				milk		103/100			USDA SR28 NDB 01211	
semi-skimmed milk	dairy	reduced-fat milk, half-fat milk, low-fat milk	water 446/5, protein 33/10, fat 99/50				milk		103/100			about 2 g fat in 100 g, from memory; density: USDA SR portion weights, from memory	
skimmed milk	dairy	skim milk, nonfat milk, fat-free milk, non-fat milk	water 2271/25, protein 337/100, fat 2/25, saturates 51/1000, carbohydrate 124/25, sugars 509/100, fibre 0, sodium 21/500				milk		26/25			USDA SR28 NDB 01151	
evaporated milk	dairy	unsweetened condensed milk	water 74				milk		107/100			about 74 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
sweetened condensed milk	dairy		water 27, sugars 54				milk					about 27 g water in 100 g, from memory	
milk powder	dairy	skimmed milk powder, skim milk powder, nonfat dry milk, nonfat dry milk powder, non-fat dry milk, NFDM, dry milk, dried milk, milk solids, nonfat milk powder, dried skimmed milk, high-heat nonfat dry milk	water 79/25, protein 904/25, fat 77/100, saturates 499/1000, carbohydrate 2599/50, sugars 2599/50, fibre 0, sodium 107/200				milk		51/100			USDA SR28 NDB 01091	protein_factor 319/50
instant milk powder	dairy	instant nonfat dry milk, instant dry milk, instant skimmed milk powder	water 99/25, protein 351/10, fat 18/25, saturates 47/100, carbohydrate 5219/100, sugars 5219/100, fibre 0, sodium 549/1000				milk		29/100			USDA SR28 NDB 01155	protein_factor 319/50
whole milk powder	dairy	dried whole milk, full-fat milk powder, dry whole milk, full cream milk powder	water 247/100, protein 658/25, fat 2671/100, saturates 8371/500, carbohydrate 1921/50, sugars 1921/50, fibre 0, sodium 371/1000				milk		27/50			USDA SR28 NDB 01212	protein_factor 319/50
buttermilk	dairy	cultured buttermilk, low-fat buttermilk	water 9013/100, protein 331/100, fat 22/25, saturates 137/250, carbohydrate 479/100, sugars 479/100, fibre 0, sodium 19/100				milk		26/25			USDA SR28 NDB 01088	protein_factor 319/50
buttermilk powder	dairy	dried buttermilk, dry buttermilk	water 297/100, protein 343/10, fat 289/50, saturates 1799/500, carbohydrate 49, sugars 49, fibre 0, sodium 517/1000				milk		51/100			USDA SR28 NDB 01094	protein_factor 319/50
whey	dairy	sweet whey, fresh whey	water 93				milk		26/25			about 93 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
whey powder	dairy	dried whey, dry whey	water 3				milk					about 3 g water in 100 g, from memory	
yoghurt	dairy	yogurt, natural yoghurt, plain yogurt, plain yoghurt, whole milk yoghurt, whole milk yogurt, yoghourt	water 879/10, protein 347/100, fat 13/4, saturates 262/125, carbohydrate 233/50, sugars 233/50, fibre 0, sodium 23/500				milk		26/25			USDA SR28 NDB 01116; density: USDA SR portion weights, from memory	protein_factor 319/50
strained yoghurt	dairy	Greek yoghurt, Greek yogurt, strained yogurt	water 81				milk		101/100			about 81 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
kefir	dairy		water 88				milk		103/100			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
quark	dairy	low-fat quark, curd cheese, fromage frais, fromage blanc	water 81				milk		26/25			low-fat, about 81 g water in 100 g, from memory; density: common practice	
cottage cheese	dairy		water 79				milk		19/20			about 79 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
ricotta	dairy	ricotta cheese	water 717/10, protein 563/50, fat 649/50, saturates 1659/200, carbohydrate 76/25, sugars 27/100, fibre 0, sodium 21/250				milk		21/20			USDA SR28 NDB 01036	protein_factor 319/50
cream cheese	dairy	full-fat soft cheese	water 53, fat 34				milk		49/50			about 53 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
heavy cream	dairy	whipping cream, heavy whipping cream	water 5781/100, protein 71/25, fat 902/25, saturates 2879/125, carbohydrate 137/50, sugars 73/25, fibre 0, sodium 27/1000				milk		101/100			USDA SR28 NDB 01053	protein_factor 319/50
double cream	dairy		water 47, fat 48				milk		101/100			British double cream, at least 48 g fat in 100 g, from memory; density: USDA SR portion weights, from memory	
single cream	dairy	light cream, coffee cream, table cream, pouring cream	water 7451/100, protein 74/25, fat 191/10, saturates 1272/125, carbohydrate 141/50, sugars 367/100, fibre 0, sodium 9/125				milk		101/100			USDA SR28 NDB 01050	protein_factor 319/50
half and half	dairy		water 80, fat 23/2				milk		51/50			about 80 g water in 100 g, from memory; density: USDA SR portion weights, from memory	
soured cream	dairy	sour cream, smetana, smetena	water 7307/100, protein 61/25, fat 387/20, saturates 507/50, carbohydrate 463/100, sugars 341/100, fibre 0, sodium 31/1000				milk		97/100			USDA SR28 NDB 01056; density: 230 g a cup there	protein_factor 319/50
creme fraiche	dairy		water 60, fat 35				milk		101/100			about 60 g water in 100 g, from memory; density: common practice	
butter	fat	unsalted butter, sweet cream butter, sweet butter, lactic butter, cultured butter, dairy butter, soft butter, melted butter, cold butter, softened butter, diced butter, beurre, burro, mantequilla	water 16, protein 17/20, fat 8111/100, saturates 50489/1000, carbohydrate 3/50, sugars 3/50, fibre 0, sodium 11/1000				milk		24/25			water: at most 16 g by Regulation (EU) 1308/2013, Annex VII (from memory); the rest USDA SR28 NDB 01145, which has 17.94 g water	listed : butter (milk) | protein_factor 319/50
salted butter	fat	lightly salted butter	water 1587/100, protein 17/20, fat 8111/100, saturates 6421/125, carbohydrate 3/50, sugars 3/50, fibre 0, salt 643/400				milk		24/25			USDA SR28 NDB 01001; salt is 2.5 times its sodium	listed : butter (milk, salt) | protein_factor 319/50
dry butter	fat	lamination butter, tourage butter, butter sheets, roll-in butter	water 14, fat 84				milk		24/25			butter of 84 g fat in 100 g made for laminating, common practice	
clarified butter	fat	ghee, butter oil, anhydrous butter, butterfat, browned butter	water 6/25, protein 7/25, fat 2487/25, saturates 15481/250, carbohydrate 0, sugars 0, fibre 0, sodium 1/500				milk		87/100			USDA SR28 NDB 01003	protein_factor 319/50
cheddar	other	cheddar cheese, grated cheddar, hard cheese, grated cheese	water 1851/50, protein 2287/100, fat 3331/100, saturates 18867/1000, carbohydrate 309/100, sugars 12/25, fibre 0, salt 653/400				milk		12/25			USDA SR28 NDB 01009; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory	
parmesan	other	parmesan cheese, grana, hard grating cheese	water 729/25, protein 143/4, fat 2583/100, saturates 1641/100, carbohydrate 161/50, sugars 4/5, fibre 0, salt 86/25				milk		21/50			USDA SR28 NDB 01033; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory; grana of some makers holds lysozyme of egg: read its label	ask egg: lysozyme in some | protein_factor 319/50
grated parmesan	other	grated parmesan cheese	water 453/20, protein 1421/50, fat 696/25, saturates 15371/1000, carbohydrate 1391/100, sugars 7/100, fibre 0, salt 451/100				milk		21/50			USDA SR28 NDB 01032; salt is 2.5 times its sodium; grana of some makers holds lysozyme of egg: read its label	ask egg: lysozyme in some | protein_factor 319/50
gruyere	other	gruyere cheese	water 3319/100, protein 2981/100, fat 1617/50, saturates 18913/1000, carbohydrate 9/25, sugars 9/25, fibre 0, salt 357/200				milk		23/50			USDA SR28 NDB 01023; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory	protein_factor 319/50
mozzarella	other	mozzarella cheese, low-moisture mozzarella, pizza mozzarella	water 4707/100, protein 95/4, fat 989/50, saturates 2259/200, carbohydrate 279/50, sugars 19/10, fibre 0, salt 333/200				milk		47/100			USDA SR28 NDB 01029; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory	
feta	other	feta cheese	water 2761/50, protein 1421/100, fat 532/25, saturates 7473/500, carbohydrate 409/100, sugars 409/100, fibre 0, salt 917/400				milk		63/100			USDA SR28 NDB 01019; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory	protein_factor 319/50
blue cheese	other						milk		57/100			common practice; density: USDA SR portion weights, from memory	
eggs	egg	whole eggs, large eggs, beaten egg, liquid egg, liquid whole egg, shell eggs, fresh eggs, hen's eggs, room temperature eggs, uova, huevos, Eier, œufs	water 1523/20, protein 314/25, fat 951/100, saturates 1563/500, carbohydrate 18/25, sugars 37/100, fibre 0, sodium 71/500				egg		103/100	50		USDA SR28 NDB 01123; one as there, without shell or skin; 243 g a cup there	listed : egg | protein_factor 25/4
egg yolks	egg	yolks, liquid egg yolk, liquid yolk, sugared yolk	water 5231/100, protein 793/50, fat 1327/50, saturates 9551/1000, carbohydrate 359/100, sugars 14/25, fibre 0, sodium 6/125				egg		103/100	17		USDA SR28 NDB 01125; one as there, without shell or skin	listed : egg yolk | protein_factor 25/4
egg whites	egg	whites, albumen, liquid egg white	water 8757/100, protein 109/10, fat 17/100, saturates 0, carbohydrate 73/100, sugars 71/100, fibre 0, sodium 83/500				egg		103/100	33		USDA SR28 NDB 01124; one as there, without shell or skin	listed : egg white | protein_factor 25/4
dried egg	egg	egg powder, whole egg powder, dried whole egg, dry egg, powdered egg, powdered whole egg	water 139/50, protein 961/20, fat 439/10, saturates 15069/1000, carbohydrate 113/100, sugars 14/25, fibre 0, sodium 119/250				egg		17/50			USDA SR28 NDB 01133	
dried egg white	egg	egg white powder, dried albumen, meringue powder	water 8				egg					about 8 g water in 100 g, from memory	
olive oil	fat	extra virgin olive oil, EVOO, virgin olive oil, light olive oil, EVO oil, olio EVO, olio d'oliva, aceite de oliva	water 0, protein 0, fat 100, saturates 1726/125, carbohydrate 0, sugars 0, fibre 0, sodium 1/500						91/100			USDA SR28 NDB 04053	
sunflower oil	fat	sunflower seed oil, cold-pressed sunflower oil, deodorised sunflower oil	water 0, protein 0, fat 100, saturates 103/10, carbohydrate 0, sugars 0, fibre 0, sodium 0						23/25			USDA SR28 NDB 04506	
high-oleic sunflower oil	fat		water 0, protein 0, fat 100, saturates 9859/1000, carbohydrate 0, sugars 0, fibre 0, sodium 0						23/25			USDA SR28 NDB 04584	
rapeseed oil	fat	canola oil, canola, colza oil, cold-pressed rapeseed oil	water 0, protein 0, fat 100, saturates 1473/200, carbohydrate 0, sugars 0, fibre 0, sodium 0						23/25			USDA SR28 NDB 04582; density: 218 g a cup there	
soya oil	fat	soybean oil, soy oil, soya bean oil	water 0, protein 0, fat 100, saturates 313/20, carbohydrate 0, sugars 0, fibre 0, sodium 0				soya		23/25			USDA SR28 NDB 04044	
sesame oil	fat	toasted sesame oil	water 0, protein 0, fat 100, saturates 71/5, carbohydrate 0, sugars 0, fibre 0, sodium 0				sesame		23/25			USDA SR28 NDB 04058	
pumpkin seed oil	fat	cold-pressed pumpkin seed oil	water 0, fat 100						23/25			common practice	
walnut oil	fat		water 0, fat 100				walnut		23/25			common practice	
linseed oil	fat	flaxseed oil	water 0, fat 100						23/25			common practice	
maize oil	fat	corn oil	water 0, fat 100						23/25			common practice	
coconut oil	fat	coconut fat, virgin coconut oil	water 3/100, protein 0, fat 991/10, saturates 165/2, sodium 0						23/25			USDA FDC 330458; density: USDA SR portion weights, from memory	protein_factor 25/4
palm fat	fat	palm oil, hardened palm fat	water 0, fat 100									common practice	
lard	fat	rendered pork fat, pork lard, strutto, leaf lard	water 0, protein 0, fat 100, saturates 196/5, carbohydrate 0, sugars 0, fibre 0, sodium 0						87/100			USDA SR28 NDB 04002	
beef dripping	fat	dripping, tallow	water 0, fat 100						87/100			common practice; density: USDA SR portion weights, from memory	
beef suet	fat	fresh suet, raw suet, block suet	water 4, fat 94						11/20			USDA SR NDB 13335, from memory: 4.0 g water and 94 g fat; density: common practice, grated	
shredded suet	fat	packet suet, suet pellets	water 2, fat 84				wheat, gluten		11/20			common practice: about a seventh of it is the flour that keeps it loose, mostly wheat, some rice: read its label; density: common practice	
goose fat	fat	duck fat, chicken fat, schmaltz	water 0, fat 100									common practice	
shortening	fat	vegetable shortening, vegetable fat, white vegetable fat, emulsified shortening, hydrogenated shortening, all-purpose shortening, high-ratio shortening	water 0, protein 0, fat 9997/100, saturates 1249/50, carbohydrate 0, sugars 0, fibre 0, sodium 1/250				?		87/100			USDA SR28 NDB 04615	ask soya: by its emulsifier or fat: the packet says | ask milk: the packet says | protein_factor 25/4
margarine	fat	baking margarine, block margarine, stick margarine, pastry margarine, cake margarine	water 413/25, protein 4/25, fat 8071/100, saturates 15189/1000, carbohydrate 7/10, sugars 0, fibre 0, salt 751/400				?		19/20			USDA SR28 NDB 04610; salt is 2.5 times its sodium	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
sugar	sweetener	white sugar, granulated sugar, caster sugar, castor sugar, superfine sugar, fine sugar, table sugar, cane sugar, beet sugar, crystal sugar, baker's sugar, fine granulated sugar, extra fine sugar, Zucker, sucre, zucchero, azúcar	water 1/50, protein 0, fat 0, saturates 0, carbohydrate 4999/50, sugars 4999/50, fibre 0, sodium 0						17/20			sucrose, dry but for 0.02 g water: USDA SR28 NDB 19335	protein_factor 25/4
brown sugar	sweetener	light brown sugar, dark brown sugar, soft brown sugar, light soft brown sugar, dark soft brown sugar, muscovado, muscovado sugar, demerara sugar, raw cane sugar, raw sugar, turbinado sugar, turbinado	water 67/50, protein 3/25, fat 0, saturates 0, carbohydrate 9809/100, sugars 4851/50, fibre 0, sodium 7/250						93/100			USDA SR28 NDB 19334; density: USDA SR portion weights, from memory	protein_factor 25/4
icing sugar	sweetener	powdered sugar, confectioners' sugar, 10X sugar	water 23/100, protein 0, fat 0, saturates 0, carbohydrate 9977/100, sugars 9781/100, fibre 0, sodium 1/500						51/100			USDA SR28 NDB 19336	protein_factor 25/4
pearl sugar	sweetener	nib sugar, sugar nibs, hail sugar, decorating sugar, coarse sugar, Belgian pearl sugar, preserving sugar	water 1/50, protein 0, fat 0, saturates 0, carbohydrate 4999/50, sugars 4999/50, fibre 0, sodium 0									sucrose, dry but for 0.02 g water: USDA SR28 NDB 19335	protein_factor 25/4
vanilla sugar	sweetener		water 1/50, carbohydrate 4999/50, sugars 4999/50						17/20			common practice: sugar with a little vanilla; density: common practice	
dextrose	sweetener	glucose powder, corn sugar, dextrose monohydrate	water 9, sugars 91									dextrose monohydrate is one molecule of water to one of sugar: 180.16 in 198.17 parts	
honey	sweetener	clear honey, runny honey, blossom honey, forest honey, liquid honey	water 171/10, protein 3/10, fat 0, saturates 0, carbohydrate 411/5, sugars 2053/25, fibre 1/5, sodium 1/250						143/100			USDA SR28 NDB 19296	protein_factor 25/4
malt syrup	sweetener	malt extract syrup, barley malt syrup, liquid malt, liquid malt extract, barley malt extract, non-diastatic malt syrup, inactive malt syrup, malt extract	water 211/10, protein 31/5, fat 0, saturates 0, carbohydrate 713/10, sugars 713/10, fibre 0, sodium 7/200				barley, gluten		7/5			USDA SR28 NDB 19352	listed : barley malt extract | protein_factor 25/4
diastatic malt syrup	malt	active malt syrup, diastatic malt extract	water 211/10, protein 31/5, fat 0, saturates 0, carbohydrate 713/10, sugars 713/10, fibre 0, sodium 7/200			yes	barley, gluten		7/5			water and sugars as malt syrup, USDA SR28 NDB 19352; 332 g a cup there	protein_factor 25/4
beet syrup	sweetener	sugar beet syrup, beet molasses	water 22, sugars 66									about 78 g dry matter in 100 g, from memory	
molasses	sweetener	blackstrap molasses, dark molasses, light molasses, cane molasses, unsulphured molasses, unsulfured molasses	water 2187/100, protein 0, fat 1/10, saturates 9/500, carbohydrate 7473/100, sugars 1868/25, fibre 0, sodium 37/1000						71/50			USDA SR28 NDB 19304	protein_factor 25/4
black treacle	sweetener		water 22						71/50			about 78 g dry matter in 100 g, from memory; density: from memory	
golden syrup	sweetener	light treacle, refiners' syrup	water 18, sugars 79						143/100			about 18 g water in 100 g, from memory; density: from memory	
maple syrup	sweetener		water 3239/100, protein 1/25, fat 3/50, saturates 7/1000, carbohydrate 1676/25, sugars 3023/50, fibre 0, sodium 3/250						27/20			USDA SR28 NDB 19353	protein_factor 25/4
corn syrup	sweetener	light corn syrup, glucose syrup, liquid glucose	water 2281/100, protein 0, fat 1/5, saturates 0, carbohydrate 7679/100, sugars 7677/100, fibre 0, sodium 31/500						36/25			USDA SR28 NDB 19350	protein_factor 25/4
invert syrup	sweetener	invert sugar, invert sugar syrup, trimoline	water 22, sugars 78									about 78 g dry matter in 100 g, from memory	
agave syrup	sweetener	agave nectar, agave	water 23, sugars 68						69/50			about 23 g water in 100 g, from memory; density: from memory	
rice syrup	sweetener	brown rice syrup	water 22						7/5			about 22 g water in 100 g, from memory; density: from memory	
date syrup	sweetener	date molasses, silan	water 25, sugars 65						7/5			about 25 g water in 100 g, from memory; density: from memory	
apple syrup	sweetener	apple molasses, pear syrup	water 30									about 30 g water in 100 g, from memory	
apple butter	fruit	apple spread	water 56, sugars 35			yes			119/100			USDA SR NDB 19294, from memory: 56 g water; 282 g a cup	
caramel colour	other	caramel color, burnt sugar, caramel colouring, caramel coloring					?					common practice	ask sulphites: may be sulphited | ask wheat: may be let down with wheat flour, or coated with it: the packet says
diastatic malt	malt	diastatic malt flour, active malt, active malt flour, enzyme-active malt, diastatic malt powder, enzyme-active malt flour, barley malt flour, active barley malt, diastatic barley malt, active malt powder	water 821/100, protein 257/25, fat 46/25, saturates 193/500, carbohydrate 356/5, sugars 4/5, fibre 71/10, sodium 11/1000				barley, gluten		17/25			USDA SR28 NDB 20131	ask wheat: may be let down with wheat flour, or coated with it: the packet says | listed : barley malt flour | protein_factor 583/100
rye malt	malt	active rye malt, diastatic rye malt, light rye malt, pale rye malt					rye, gluten					common practice	
non-diastatic malt powder	sweetener	inactive malt powder, non-diastatic malt, inactive malt, dry malt extract, dried malt extract, nondiastatic malt powder, inactive malt flour	water 3				barley, gluten					common practice: dried malt extract, its enzymes killed; about 3 g water in 100 g, from memory	
roasted malt	other	roasted barley malt, roast malt, dark malt, chocolate malt, black malt, roasted malt flour					barley, gluten					common practice: kilned so hot that no enzymes are left	
red rye malt	other	red malt, fermented rye malt, fermented malt, solod, roasted rye malt, dark rye malt					rye, gluten					common practice: stewed and dried so hot that no enzymes are left	
crystal malt	other	caramel malt, toffee malt					barley, gluten					common practice: stewed and kilned so hot that no enzymes are left	
malted barley	grain	malted barley grains, crushed malted barley					barley, gluten					common practice	
fresh yeast	yeast	compressed yeast, cake yeast, fresh compressed yeast, baker's compressed yeast, block yeast, wet yeast, levadura fresca, levure fraîche, lievito fresco, Frischhefe, Backhefe	water 69, protein 42/5, fat 19/10, saturates 243/1000, carbohydrate 10, sugars 0, fibre 81/10, sodium 3/100						31/50			USDA SR28 NDB 18374; density: Cotswold Flour, grams to teaspoons, 3.1 g a level teaspoon	listed : yeast | protein_factor 31/5
active dry yeast	yeast	active dried yeast, ADY, traditional dried yeast, dried active yeast	water 127/25, protein 1011/25, fat 761/100, saturates 1001/1000, carbohydrate 358/25, sugars 0, fibre 269/10, sodium 51/1000						81/100			USDA SR28 NDB 18375	listed : yeast | protein_factor 25/4
instant yeast	yeast	instant dry yeast, instant dried yeast, IDY, instant active dry yeast, rapid-rise yeast, quick-rise yeast, bread machine yeast, easy-blend yeast, easy-blend dried yeast	water 127/25, protein 1011/25, fat 761/100, saturates 1001/1000, carbohydrate 358/25, sugars 0, fibre 269/10, sodium 51/1000						16/25			about 5 g water in 100 g; 9.5 g a tablespoon, household tables; common practice; composition: USDA SR28 NDB 18375, active dry yeast	listed : yeast | protein_factor 25/4
sweet-dough yeast	sweet-dough yeast	osmotolerant yeast, osmotolerant instant yeast, sweet-dough instant yeast, instant yeast for sweet doughs, osmotolerant instant dry yeast	water 127/25, protein 1011/25, fat 761/100, saturates 1001/1000, carbohydrate 358/25, sugars 0, fibre 269/10, sodium 51/1000						16/25			instant yeast of a strain that bears sugar; common practice; composition: USDA SR28 NDB 18375, active dry yeast	listed : yeast | protein_factor 25/4
fresh sweet-dough yeast	sweet-dough yeast	osmotolerant fresh yeast, fresh osmotolerant yeast, compressed sweet-dough yeast	water 69, protein 42/5, fat 19/10, saturates 243/1000, carbohydrate 10, sugars 0, fibre 81/10, sodium 3/100									water as fresh yeast, USDA SR28 NDB 18374; common practice	listed : yeast | protein_factor 31/5
ripe rye starter	culture	rye starter, rye sour starter, rye sourdough starter, rye culture, medium rye starter, rye mother		medium rye flour 1/2, water 1/2			rye, gluten					common practice: kept on its own weight of water	
ripe whole rye starter	culture	whole rye starter, wholemeal rye starter, whole rye culture		whole rye flour 1/2, water 1/2			rye, gluten					common practice: kept on its own weight of water	
stiff rye starter	culture	firm rye starter		medium rye flour 5/8, water 3/8			rye, gluten					common practice	
ripe wheat starter	culture	wheat starter, white starter, ripe white starter, white wheat starter, ripe levain starter, levain culture, wheat culture, white culture, ripe starter, mature white starter, wheat mother		white flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water	
even starter	culture	starter of equal parts		white flour 1/2, water 1/2			wheat, gluten					common practice: as much flour as water by weight	
ripe whole wheat starter	culture	whole wheat starter, wholemeal starter, wholewheat starter, whole wheat culture, wholemeal wheat starter		whole wheat flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water	
ripe spelt starter	culture	spelt starter, spelt culture		spelt flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water	
ripe einkorn starter	culture	einkorn starter		einkorn flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water	
stiff starter	culture	stiff levain starter, stiff wheat starter, firm starter, ripe stiff starter, lievito madre, pasta madre, stiff levain culture		white flour 2/3, water 1/3			wheat, gluten					common practice: 50 parts of water to 100 of flour	
liquid levain starter	culture	liquid levain culture, liquid levain, levain liquide, ripe liquid levain starter		white flour 4/9, water 5/9			wheat, gluten					common practice: 125 parts of water to 100 of flour	
ripe rice starter	culture	rice starter, gluten-free starter		brown rice flour 1/2, water 1/2								common practice: kept on its own weight of water	
ripe buckwheat starter	culture	buckwheat starter		buckwheat flour 1/2, water 1/2								common practice: kept on its own weight of water	
ripe teff starter	culture	teff starter, ersho, injera starter		teff flour 2/5, water 3/5								common practice	
dried sourdough	other	dry sourdough, sourdough powder, rye sourdough powder					?					common practice: for taste only, nothing in it rises	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask rye: may be of any cereal | ask barley: may be brewed with barley
salt	salt	fine salt, sea salt, table salt, cooking salt, fine sea salt, iodised salt, iodized salt, Salz, sel, sale, sal	water 0, salt 100						61/50			taken as sodium chloride alone; USDA SR28 NDB 02047 has 0.2 g water; density from its spoon of 6 g	
kosher salt	salt		water 0, salt 100						14/25 49/50			taken as sodium chloride alone; a US teaspoon weighs 2.8 to 4.8 g by how its grain is made: household tables, from memory	
flaky salt	salt	salt flakes, flaked salt, finishing salt	water 0, salt 100						2/5 17/20			taken as sodium chloride alone; a US teaspoon weighs 2 to 4 g by its flakes: household tables, from memory	
coarse salt	salt	pretzel salt, rock salt, coarse sea salt, nib salt	water 0, salt 100						9/10 13/10			taken as sodium chloride alone; a US teaspoon weighs 4.5 to 6.4 g by its grain: household tables, from memory	
baking powder	raising agent	double-acting baking powder, phosphate baking powder	water 4, protein 1/10, fat 0, saturates 0, carbohydrate 239/10, sugars 0, fibre 1/5, sodium 7893/1000				?		93/100			USDA SR28 NDB 18370	ask wheat: may be let down with wheat flour, or coated with it: the packet says | protein_factor 31/5
bicarbonate of soda	raising agent	baking soda, bicarb, sodium bicarbonate, bread soda, bicarb of soda	water 1/5, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 684/25						93/100			USDA SR28 NDB 18372	listed : raising agent (sodium carbonates)
cream of tartar	raising agent	potassium bitartrate, tartar	water 17/10, protein 0, fat 0, saturates 0, carbohydrate 613/10, sugars 0, fibre 1/5, sodium 13/250						61/100			USDA SR28 NDB 18373	listed : acidity regulator (potassium tartrates) | protein_factor 31/5
baker's ammonia	raising agent	ammonium carbonate, hartshorn, ammonium bicarbonate, salt of hartshorn	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0									common practice: for thin dry biscuits only; formula weight: NH4HCO3, gone in the oven	listed : raising agent (ammonium carbonates)
potash	raising agent	potassium carbonate, pearl ash	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0, ash 100									common practice; formula weight: K2CO3	listed : raising agent (potassium carbonates)
lye	lye	sodium hydroxide, caustic soda, food-grade lye, lye beads, food-grade sodium hydroxide	sodium 1437/25									dry sodium hydroxide; common practice; formula weight: NaOH	listed : acidity regulator (sodium hydroxide)
lye solution	lye			water 24/25, lye 1/25								common practice: 3 to 4 per cent for pretzels	
washing soda	lye	sodium carbonate, baked soda, soda crystals, kansui powder	sodium 2169/50									sodium carbonate; common practice; formula weight: Na2CO3, anhydrous; crystals hold 63 % water: ask	
ascorbic acid	other	vitamin C, vitamin C powder, E300	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0, acid 100									common practice; formula weight: C6H8O6; counted as organic acid	listed : flour treatment agent (ascorbic acid)
citric acid	other	E330	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0, acid 100									common practice; formula weight: C6H8O7, organic acid	listed : acid (citric acid)
lactic acid	other	E270	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0, acid 100									common practice; formula weight: C3H6O3; often 80 % in water: ask	listed : acid (lactic acid)
calcium propionate	other	E282, bread preservative, preservative, propionate	water 0, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 0, ash 100									common practice; formula weight: Ca(C3H5O2)2	listed : preservative (calcium propionate)
yeast food	other	mineral yeast food, dough conditioner salts					?					common practice	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask soya: by its emulsifier or fat: the packet says
bread improver	other	improver, dough improver, dough conditioner, emulsifier, DATEM, dough strengthener					?					common practice: read its own label, for soya, wheat, milk and malt	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask soya: by its emulsifier or fat: the packet says | ask milk: the packet says
soya lecithin	other	soy lecithin					soya					common practice	listed : emulsifier (soya lecithins)
sunflower lecithin	other											common practice	listed : emulsifier (sunflower lecithins)
rapeseed lecithin	other	canola lecithin										common practice	listed : emulsifier (rapeseed lecithins)
egg lecithin	other	egg yolk lecithin					egg					common practice	listed : emulsifier (egg lecithins)
gelatine	other	gelatin, leaf gelatine, sheet gelatin					?		17/25			common practice; density: common practice	ask fish: may be of fish
pectin	other											common practice	listed : gelling agent (pectins)
inulin	other	chicory fibre, chicory fiber										common practice	
caraway	spice	caraway seed, ground caraway, whole caraway	water 987/100, protein 1977/100, fat 1459/100, saturates 31/50, carbohydrate 119/10, sugars 16/25, fibre 38, sodium 17/1000						43/100			USDA SR28 NDB 02005	protein_factor 25/4
fennel seed	spice	fennel, ground fennel, ground fennel seed	water 881/100, protein 79/5, fat 1487/100, saturates 12/25, carbohydrate 1249/100, fibre 199/5, sodium 11/125						41/100			USDA SR28 NDB 02018; density: USDA SR portion weights, from memory	protein_factor 25/4
coriander seed	spice	coriander, ground coriander, cracked coriander, crushed coriander, coriander seed ground	water 443/50, protein 1237/100, fat 1777/100, saturates 99/100, carbohydrate 1309/100, fibre 419/10, sodium 7/200						37/100			USDA SR28 NDB 02013	protein_factor 25/4
cumin seed	spice	cumin, ground cumin	water 403/50, protein 1781/100, fat 2227/100, saturates 307/200, carbohydrate 1687/50, sugars 9/4, fibre 21/2, sodium 21/125						43/100			USDA SR28 NDB 02014; density: USDA SR portion weights, from memory	protein_factor 25/4
anise seed	spice	aniseed, anise, ground aniseed, ground anise	water 477/50, protein 88/5, fat 159/10, saturates 293/500, carbohydrate 1771/50, fibre 73/5, sodium 2/125									USDA SR28 NDB 02002	protein_factor 25/4
cardamom	spice	ground cardamom, cardamom seed, green cardamom, black cardamom, cracked cardamom	water 207/25, protein 269/25, fat 67/10, saturates 17/25, carbohydrate 4047/100, fibre 28, sodium 9/500						41/100			USDA SR28 NDB 02006; density: USDA SR portion weights, from memory	protein_factor 25/4
cinnamon	spice	ground cinnamon, cassia	water 529/50, protein 399/100, fat 31/25, saturates 69/200, carbohydrate 2749/100, sugars 217/100, fibre 531/10, sodium 1/100						53/100			USDA SR28 NDB 02010	protein_factor 25/4
black pepper	spice	pepper, ground black pepper, cracked pepper, ground pepper	water 623/50, protein 1039/100, fat 163/50, saturates 174/125, carbohydrate 773/20, sugars 16/25, fibre 253/10, sodium 1/50						47/100			USDA SR28 NDB 02030; density: USDA SR portion weights, from memory	protein_factor 107/20
mustard seed	spice	mustard powder, ground mustard, dry mustard, mustard flour, yellow mustard seed, black mustard seed	water 527/100, protein 652/25, fat 906/25, saturates 1989/1000, carbohydrate 1589/100, sugars 679/100, fibre 61/5, sodium 13/1000				mustard		41/100			USDA SR28 NDB 02024	protein_factor 27/5
mustard	spice	prepared mustard, yellow mustard	water 2093/25, protein 187/50, fat 167/50, saturates 107/500, carbohydrate 183/100, sugars 23/25, fibre 4, salt 69/25			yes	mustard		21/20			USDA SR28 NDB 02046; salt is 2.5 times its sodium	ask sulphites: mustard may be sulphited | protein_factor 25/4
rosemary	spice	dried rosemary, fresh rosemary, chopped rosemary, rosemary leaves	water 931/100, protein 122/25, fat 761/50, saturates 7371/1000, carbohydrate 1073/50, fibre 213/5, sodium 1/20						6/25			USDA SR28 NDB 02036	protein_factor 25/4
thyme	spice	dried thyme, fresh thyme							1/5			common practice; density: USDA SR portion weights, from memory	
oregano	spice	dried oregano, marjoram							1/5			common practice; density: USDA SR portion weights, from memory	
sage	spice	fresh sage, dried sage, sage leaves										common practice	
dill	spice	fresh dill, dill weed, dill tips, dried dill, dill seed							1/5			common practice; density: USDA SR portion weights, from memory	
bread clover	spice	blue fenugreek, trigonella										common practice	
fenugreek	spice	fenugreek seed, ground fenugreek										common practice	
star anise	spice	ground star anise										common practice	
nutmeg	spice	ground nutmeg, mace, grated nutmeg							9/20			common practice; density: USDA SR portion weights, from memory	
cloves	spice	ground cloves							43/100			common practice; density: USDA SR portion weights, from memory	
allspice	spice	ground allspice, pimento							39/100			common practice; density: USDA SR portion weights, from memory	
ginger	spice	ground ginger, fresh ginger, grated ginger							37/100			common practice; density: USDA SR portion weights, from memory	
mixed spice	spice	gingerbread spice, pumpkin pie spice, lebkuchen spice, speculaas spice							17/50			common practice; density: USDA SR portion weights, from memory	
bread spice	spice	brotgewürz										common practice: caraway, fennel, coriander, anise	
saffron	spice	saffron threads							7/50			common practice; density: USDA SR portion weights, from memory	
turmeric	spice	ground turmeric							61/100			common practice; density: USDA SR portion weights, from memory	
paprika	spice	sweet paprika, smoked paprika							47/100			common practice; density: USDA SR portion weights, from memory	
chilli	spice	chili, chilli flakes, chili flakes, red pepper flakes, chile flakes, cayenne, jalapenos							11/20			common practice; density: USDA SR portion weights, from memory	
za'atar	spice	zatar					sesame					common practice	ask wheat: may be let down with wheat flour, or coated with it: the packet says
curry powder	spice						?					common practice; may hold mustard and celery	ask mustard: the packet says | ask celery: the packet says
celery seed	spice						celery					common practice	
celery salt	spice		salt 70				celery		1			common practice: two to three parts of salt to one of ground celery seed; read its label	
vanilla	spice	vanilla pod, vanilla bean, vanilla paste, vanilla extract, vanilla essence, vanilla seeds							17/20			common practice; density: USDA SR portion weights, from memory	
orange blossom water	liquid	orange flower water, rose water, rosewater	water 100									taken as water alone, common practice	
mahleb	spice	mahlab, mahlepi										common practice	
mastic	spice	mastiha										common practice	
basil	spice	dried basil, fresh basil, basil leaves							7/50			common practice; density: USDA SR portion weights, from memory	
parsley	spice	fresh parsley, dried parsley, chopped parsley							1/4			common practice; density: USDA SR portion weights of chopped fresh leaves, from memory	
almond extract	spice	almond essence, bitter almond extract					?		22/25			common practice; it may be made of almonds or of fruit kernels: read its label; density from memory	ask almond: may be made with almonds
instant coffee	spice	coffee powder, espresso powder, instant coffee powder, instant espresso							1/5			common practice; density: USDA SR portion weights, from memory	
food colouring	other	food coloring, food dye					?					common practice; read its label	
cocoa	other	cocoa powder, unsweetened cocoa, natural cocoa, baking cocoa	water 3, protein 98/5, fat 137/10, saturates 807/100, carbohydrate 209/10, sugars 7/4, fibre 37, sodium 21/1000						9/25			USDA SR28 NDB 19165	protein_factor 563/100
alkalised cocoa	other	Dutch-process cocoa, dutched cocoa, alkalized cocoa, Dutch cocoa, black cocoa	water 27/10, protein 181/10, fat 131/10, saturates 194/25, carbohydrate 57/2, sugars 44/25, fibre 149/5, sodium 19/1000						9/25			USDA SR28 NDB 19166	protein_factor 563/100
dark chocolate	other	bittersweet chocolate, chocolate chips, dark chocolate chips, chocolate drops, chocolate batons, chocolate sticks, semisweet chocolate, couverture, chocolate	water 5/4, protein 153/25, fat 3831/100, saturates 22031/1000, carbohydrate 2221/50, sugars 3671/100, fibre 8, sodium 1/100				?		71/100			USDA SR28 NDB 19903; density: USDA SR portion weights, from memory	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
very dark chocolate	other	extra dark chocolate	water 137/100, protein 779/100, fat 4263/100, saturates 24489/1000, carbohydrate 35, sugars 2399/100, fibre 109/10, sodium 1/50				?					USDA SR28 NDB 19904	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
plain chocolate	other	plain dark chocolate	water 97/100, protein 122/25, fat 782/25, saturates 18519/1000, carbohydrate 5417/100, sugars 479/10, fibre 7, sodium 3/125				?					USDA SR28 NDB 19902	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
unsweetened chocolate	other	baking chocolate, cocoa mass	water 67/50, protein 358/25, fat 5231/100, saturates 32277/1000, carbohydrate 591/50, sugars 91/100, fibre 83/5, sodium 3/125				?					USDA SR28 NDB 19078	ask milk: the packet says
milk chocolate	other	milk chocolate chips					milk					common practice; may hold soya	ask soya: by its emulsifier or fat: the packet says | ask hazelnut: the packet says
white chocolate	other	white chocolate chips					milk		18/25			common practice; may hold soya; density: USDA SR portion weights, from memory	ask soya: by its emulsifier or fat: the packet says
cocoa nibs	other	cacao nibs										common practice	
old bread	bread	stale bread, old bread soaked, altus, yesterday's bread, dry bread, bread leftovers, returned bread					?					common practice: what is in it is what was in the bread it comes from	
old rye bread	bread	rye altus, stale rye bread, old rye					rye, gluten					common practice: what is in it is what was in the bread it comes from	
breadcrumbs	bread	bread crumbs, dried breadcrumbs, dry breadcrumbs, panko, toasted breadcrumbs, rusk, rusk crumbs					?		23/50			common practice: what is in it is what was in the bread it comes from; density: USDA SR portion weights, from memory	
tahini	seed	sesame paste, tahini paste					sesame		101/100			common practice; density: USDA SR portion weights, from memory	listed : sesame paste
peanut butter	nut						peanut		109/100			common practice; density: USDA SR portion weights, from memory	
miso	other	miso paste					soya					common practice; may hold barley	ask barley: may be brewed with barley | ask wheat: may be let down with wheat flour, or coated with it: the packet says
soy sauce	liquid	soya sauce, tamari	water 71, salt 14				soya, wheat, gluten					about 71 g water and 14 g salt in 100 g, from memory	
bacon	meat	diced bacon, lardons, speck, smoked bacon					?					common practice; may hold milk, soya or mustard: read its label	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
Worcestershire sauce	liquid	Worcester sauce	water 787/10				fish					fish: the FSA's chart of 14 allergens; water: USDA SR28 NDB 06971	ask barley: may be made with malt vinegar: the packet says | ask wheat: may hold soy sauce: the packet says | ask soya: may hold soy sauce: the packet says
tinned sardines	fish	canned sardines, sardines in oil	water 5961/100, protein 1231/50, fat 229/20, saturates 191/125, carbohydrate 0, sugars 0, fibre 0				fish					USDA SR28 NDB 15088, in oil, drained; its sodium is by the tin	is ready to eat
tinned tuna	fish	canned tuna					fish					common practice	is ready to eat
mayonnaise	other						egg					common practice	ask mustard: the packet says
tofu	other	bean curd					soya					common practice	
piccalilli	other						mustard					common practice	ask sulphites: often sulphited to keep | ask wheat: may be thickened with wheat flour: the packet says
stock cube	other	bouillon					?					common practice	ask celery: the packet says | ask wheat: the packet says | ask milk: the packet says | ask soya: the packet says | ask egg: the packet says
pickled onions	other						?					common practice; up to 100 mg/kg of sulphites: Regulation (EC) 1333/2008, Annex II, from memory	ask sulphites: often sulphited to keep | ask barley: may be made with malt vinegar: the packet says
anchovies	fish	anchovy fillets					fish					common practice: salted fillets	is ready to eat
ham	meat	cooked ham, diced ham, prosciutto					?		59/100			common practice; density: USDA SR portion weights, from memory; may hold milk, soya or mustard: read its label	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says | ask mustard: the packet says | is ready to eat
sausage	other	salami, chorizo					?					common practice	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask soya: by its emulsifier or fat: the packet says | ask mustard: the packet says | ask celery: the packet says | ask milk: the packet says
pesto	other						milk		53/50			common practice; holds milk and nuts; density: common practice	ask cashew: often in place of pine nuts | ask pine nut: the packet says
squid ink	other	cuttlefish ink					molluscs					common practice	
activated charcoal	other	vegetable charcoal, vegetable carbon										common practice	
nutritional yeast	other	yeast flakes, inactive yeast, deactivated yeast										common practice: dead yeast, for taste or to slacken a dough	
wood ash	other											common practice	
custard	other	pastry cream, crème pâtissière, custard cream					milk, egg					common practice	
malted milk powder	other	malted milk					milk, barley, wheat, gluten		11/20			common practice; density: USDA SR portion weights, from memory	
cornflakes	grain	corn flakes					barley, gluten		3/25			common practice: mostly made with barley malt, read the label; density: USDA SR portion weights, from memory	
muesli	grain	granola, muesli mix					?		2/5			common practice: read its label for nuts and milk	
caramel	other	caramel sauce, toffee sauce, dulce de leche					milk		13/10			common practice; density from memory	
mincemeat	fruit	fruit mincemeat, mince pie filling					?		6/5			common practice: British fruit mincemeat, read its label; density from memory	ask sulphites: dried fruit is often sulphured | ask wheat: may be let down with wheat flour, or coated with it: the packet says
sprinkles	other	hundreds and thousands, nonpareils, sugar strands					?					common practice; read its label	ask wheat: may be let down with wheat flour, or coated with it: the packet says | ask soya: by its emulsifier or fat: the packet says | ask milk: the packet says
strawberries	fruit	fresh strawberries							16/25			common practice; density: USDA SR portion weights, from memory	
lemons	fruit	whole lemons										common practice	
oranges	fruit	whole oranges										common practice	
candied ginger	fruit	crystallised ginger, crystallized ginger, stem ginger					?		7/10			common practice; it may be sulphured: read its label	ask sulphites: dried fruit is often sulphured
kimchi	vegetable						?		63/100			common practice: it may hold fish, shellfish and wheat, read its label; density: USDA SR portion weights, from memory	ask fish: may be of fish | ask crustaceans: may be made with shrimp | ask soya: by its emulsifier or fat: the packet says | ask wheat: may be let down with wheat flour, or coated with it: the packet says
tea	liquid	brewed tea, cold tea, black tea	water 997/10						1			taken as water but for what is dissolved in it, from memory	
mascarpone	dairy	mascarpone cheese	water 46, fat 44				milk		1			about 46 g water and 44 g fat in 100 g, from memory	
emmental	other	emmenthal, Swiss cheese, grated emmental					milk		23/50			common practice; density: USDA SR portion weights of grated cheese, from memory	
goat cheese	other	chevre					milk					common practice	
halloumi	other	halloumi cheese					milk					common practice	
chocolate spread	other	hazelnut spread, chocolate hazelnut spread					?		5/4			common practice: mostly holds hazelnut, milk and soya, read its label; density from memory	ask hazelnut: the packet says | ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says
?	cornflour	maize starch, maize flour	in Britain it is starch, in America finely milled maize: they take up water quite differently
?	corn flour	maize flour, maize starch	in America it is finely milled maize, in Britain starch
?	corn meal flour	cornmeal, maize flour	meal is coarse, flour is fine
?	flour	white flour, bread flour, whole wheat flour	flours differ in strength and in the water they take
?	wheat flour	white flour, bread flour, whole wheat flour	white or whole: they take up different amounts of water
?	brown flour	high-extraction wheat flour, whole wheat flour	in Britain it is flour with part of the bran sifted out; others mean wholemeal
?	rye flour	white rye flour, light rye flour, medium rye flour, dark rye flour, whole rye flour	the darker the flour, the more water it takes and the faster it sours
?	rye	medium rye flour, whole rye flour, rye berries	flour or grain
?	barley	barley flour, pearl barley, hulled barley	only barley flour counts as flour
?	oats	rolled oats, oat groats, oat flour	rolled oats drink at once, whole ones hardly, and only oat flour counts as flour
?	oatmeal	rolled oats, steel-cut oats, oat flour	in Britain it is cut or ground grain, in America mostly rolled oats
?	maize	maize flour, cornmeal, popcorn maize	flour, meal or grain
?	corn	maize flour, cornmeal, popcorn maize	flour, meal or grain
?	bran	wheat bran, oat bran	they carry different allergens
?	wheat	white flour, whole wheat flour, wheat berries	flour or grain
?	wheatmeal	whole wheat flour, high-extraction wheat flour, cracked wheat	it was the name of all three
?	gluten-free flour	rice flour, maize starch, tapioca starch	a blend has a maker; write its parts in a larder of your own
?	starch	maize starch, potato starch, wheat starch, tapioca starch	they set at different heats, and wheat starch is an allergen
?	soya	soya flour, soya drink, soya oil	flour, drink or oil
?	yeast	fresh yeast, active dry yeast, instant yeast, sweet-dough yeast	one part of instant does the work of three parts of fresh
?	Hefe	fresh yeast, active dry yeast, instant yeast	one part of instant does the work of three parts of fresh
?	levure	fresh yeast, active dry yeast, instant yeast	one part of instant does the work of three parts of fresh
?	lievito di birra	fresh yeast, active dry yeast, instant yeast	one part of instant does the work of three parts of fresh
?	levadura	fresh yeast, active dry yeast, instant yeast	one part of instant does the work of three parts of fresh
?	curd	yoghurt, curd cheese	in India it is yoghurt, elsewhere a fresh cheese
?	manteca	lard, butter	lard in Spain and Mexico, butter in Argentina
?	dried yeast	active dry yeast, instant yeast	active dry is woken in warm water and is a quarter weaker; instant goes on the flour
?	dry yeast	active dry yeast, instant yeast	active dry is woken in warm water and is a quarter weaker; instant goes on the flour
?	fast-action yeast	instant yeast, active dry yeast	mostly instant with ascorbic acid in it: read the packet
?	fast-acting yeast	instant yeast, active dry yeast	mostly instant with ascorbic acid in it: read the packet
?	fast-action dried yeast	instant yeast, active dry yeast	mostly instant with ascorbic acid in it: read the packet
?	brewer's yeast	fresh yeast, nutritional yeast	barm that raises dough, or dead yeast for taste; it may carry barley
?	malt	diastatic malt, malt syrup, roasted malt, non-diastatic malt powder	only diastatic malt still works on starch: too much of it makes gum of the crumb
?	malt powder	diastatic malt, non-diastatic malt powder, roasted malt	one works on starch, the others only sweeten or colour
?	malt flour	diastatic malt, roasted malt, red rye malt	one works on starch, the others only colour
?	barley malt	diastatic malt, malt syrup, malted barley	flour, syrup or grain
?	dried malt	non-diastatic malt powder, diastatic malt	one works on starch, the other only sweetens
?	treacle	black treacle, golden syrup, molasses	in Britain mostly the black one, but light treacle is golden syrup
?	syrup	golden syrup, malt syrup, beet syrup, maple syrup, corn syrup	they differ in water, sugar and allergens
?	cream	double cream, heavy cream, single cream, soured cream	fat runs from 19 to 48 g in 100 g, and the water with it
?	condensed milk	sweetened condensed milk, evaporated milk	one is more than half sugar
?	powdered milk	milk powder, whole milk powder, instant milk powder	skimmed has no fat, whole a quarter
?	cheese	cheddar, parmesan, mozzarella, quark	hard cheese brings salt, fresh cheese water
?	soft cheese	cream cheese, quark, ricotta	fresh cheeses differ in water and fat
?	stick of butter	butter, salted butter	a stick is 113 g: write the weight, and salted or not
?	soda	bicarbonate of soda, washing soda, lye	one raises, one browns, one burns the skin
?	bicarbonate	bicarbonate of soda, baker's ammonia	of soda or of ammonium
?	tin-release agent	sunflower oil, shortening	read its label for soya lecithin
?	oil	sunflower oil, rapeseed oil, olive oil, soya oil	soya, sesame and nut oils are allergens
?	vegetable oil	sunflower oil, rapeseed oil, soya oil	soya oil is an allergen
?	fat	butter, lard, shortening, margarine	they differ in water, salt and allergens
?	starter	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	sourdough	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	sourdough starter	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	Sauerteig	ripe rye starter, ripe wheat starter, stiff starter	flour and water of the starter count in the formula
?	Anstellgut	ripe rye starter, ripe wheat starter, stiff starter	flour and water of the starter count in the formula
?	malto	diastatic malt, malt syrup, non-diastatic malt powder	only diastatic malt still works on starch
?	sourdough culture	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	culture	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	mother	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	lecithin	soya lecithin, sunflower lecithin, rapeseed lecithin, egg lecithin	soya and egg are allergens; the packet says which it comes from
?	vinegar	distilled vinegar, cider vinegar, malt vinegar	malt vinegar is made of barley
?	seeds	sunflower seeds, pumpkin seeds, sesame seeds, flaxseed	sesame is an allergen, flaxseed drinks three times its weight
?	mixed seeds	sunflower seeds, pumpkin seeds, sesame seeds, flaxseed	write its parts: sesame is an allergen
?	seed mix	sunflower seeds, pumpkin seeds, sesame seeds, flaxseed	write its parts: sesame is an allergen
?	nuts	hazelnuts, walnuts, almonds, pecans	each is an allergen by its own name
?	mixed nuts	hazelnuts, walnuts, almonds, pecans	each is an allergen by its own name
?	dried fruit	raisins, sultanas, currants, mixed dried fruit	some are sulphured
?	crumbs	breadcrumbs, old bread	what is in them is what was in the bread
?	bread	old bread, breadcrumbs	what is in it is what was in the bread
?	psyllium seed	psyllium husk, psyllium powder	powder binds faster than husk
?	coconut	desiccated coconut, coconut flour, coconut milk	dried, milled or liquid
?	glucose	corn syrup, dextrose	syrup holds a fifth of water, powder hardly any
?	egg substitute	dried egg, dried egg white	dried egg wants three parts of water to one
?	discard	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	sourdough discard	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	chopped nuts	hazelnuts, walnuts, almonds, pecans	each is an allergen by its own name
?	suet	beef suet, shredded suet	shredded suet is floured, mostly with wheat, which is an allergen
?	tomato puree	tomato paste, passata	in Britain it is the paste, in America sieved tomatoes: three quarters of water, or nine tenths
?	cranberries	dried cranberries, fresh cranberries	dried ones are mostly sugar, fresh ones mostly water
?	figs	dried figs, fresh figs	fresh ones are four fifths of water
?	pumpkin	pumpkin puree, pumpkin seeds	flesh or seeds
?	liquid starter	ripe wheat starter, liquid levain starter	kept on its own weight of water, or on a quarter more
?	baker's yeast	fresh yeast, active dry yeast, instant yeast	one part of instant does the work of three parts of fresh
?	cider	hard cider, apple juice	in Britain it has fermented, in America it is mostly juice
"""

KEYS = """
white flour	0
all purpose flour	0
plain white flour	0
plain flour	0
unbleached flour	0
white wheat flour	0
ap flour	0
wheat flour white	0
maida	0
bread flour	1
strong white flour	1
strong flour	1
strong white bread flour	1
white bread flour	1
baker flour	1
bread wheat flour	1
high gluten flour	2
very strong white flour	2
extra strong flour	2
very strong flour	2
medium strong white flour	3
artisan white flour	3
medium strong flour	3
cake flour	4
sponge flour	4
soft cake flour	4
pastry flour	5
soft white flour	5
soft flour	5
biscuit flour	5
00 flour	6
flour 00	6
tipo 00	6
farina 00	6
farina tipo 00	6
type 00	6
doppio zero	6
pizza flour	6
italian 00 flour	6
whole wheat flour	7
wholemeal flour	7
wholemeal	7
whole wheat	7
wholewheat flour	7
wholewheat	7
wholemeal wheat flour	7
graham flour	7
strong wholemeal flour	7
wholegrain wheat flour	7
stoneground wholemeal flour	7
atta	7
chakki atta	7
soft whole wheat flour	8
whole wheat pastry flour	8
soft wholemeal flour	8
high extraction wheat flour	9
sifted wheat flour	9
bolted wheat flour	9
high extraction flour	9
malted flour	10
malted white flour	10
self raising flour	11
self rising flour	11
self raising white flour	11
sr flour	11
tipo 0 flour	12
tipo 0	12
farina 0	12
farina tipo 0	12
flour 0	12
italian 0 flour	12
tipo 1 flour	13
tipo 1	13
farina 1	13
farina tipo 1	13
flour 1	13
italian 1 flour	13
tipo 2 flour	14
tipo 2	14
farina 2	14
farina tipo 2	14
flour 2	14
italian 2 flour	14
t45 flour	15
t45	15
type 45	15
flour t45	15
farine t45	15
t55 flour	16
t55	16
type 55	16
flour t55	16
farine t55	16
t65 flour	17
t65	17
type 65	17
flour t65	17
farine t65	17
t80 flour	18
t80	18
type 80	18
flour t80	18
farine t80	18
t110 flour	19
t110	19
type 110	19
flour t110	19
farine t110	19
t150 flour	20
t150	20
type 150	20
flour t150	20
farine t150	20
wheat 405	21
type 405	21
flour type 405	21
wheat flour 405	21
wheat flour type 405	21
weizenmehl 405	21
weizenmehl type 405	21
wheat 550	22
wheat flour 550	22
type 550	22
flour type 550	22
wheat flour type 550	22
weizenmehl 550	22
weizenmehl type 550	22
wheat 812	23
type 812	23
flour type 812	23
wheat flour 812	23
wheat flour type 812	23
weizenmehl 812	23
weizenmehl type 812	23
wheat 1050	24
type 1050	24
flour type 1050	24
wheat flour 1050	24
wheat flour type 1050	24
weizenmehl 1050	24
weizenmehl type 1050	24
wheat 1600	25
type 1600	25
flour type 1600	25
wheat flour 1600	25
semolina	26
durum semolina	26
fine semolina	26
coarse semolina	26
semola	26
durum flour	27
durum wheat flour	27
durum	27
semolina rimacinata	27
rimacinata	27
re milled semolina	27
whole durum flour	28
wholemeal durum flour	28
whole grain durum flour	28
spelt flour	29
white spelt flour	29
white spelt	29
spelt	29
light spelt flour	29
spelt 630	29
sifted spelt flour	29
whole spelt flour	30
wholemeal spelt flour	30
wholemeal spelt	30
whole spelt	30
whole grain spelt flour	30
wholegrain spelt flour	30
emmer flour	31
emmer	31
whole emmer flour	31
wholemeal emmer flour	31
farro flour	31
einkorn flour	32
einkorn	32
whole einkorn flour	32
wholemeal einkorn flour	32
khorasan flour	33
khorasan	33
khorasan wheat flour	33
whole khorasan flour	33
kamut flour	33
khorasan wheat	33
triticale flour	34
triticale	34
whole triticale flour	34
sprouted wheat flour	35
sprouted whole wheat flour	35
wheat starch	36
wheaten starch	36
vital wheat gluten	37
vital gluten	37
wheat gluten	37
gluten	37
gluten powder	37
wheat bran	38
coarse bran	38
fine bran	38
miller bran	38
wheat germ	39
raw wheat germ	39
toasted wheat germ	39
wheatgerm	39
wheat berry	40
wheat grain	40
wheat kernel	40
whole wheat berry	40
whole wheat grain	40
cracked wheat	41
wheat chop	41
kibbled wheat	41
wheat grit	41
wheat meal coarse	41
wheat flake	42
rolled wheat	42
flaked wheat	42
malted wheat flake	43
malted flake	43
bulgur	44
bulgur wheat	44
bulghur	44
burghul	44
sprouted wheat	45
wheat sprout	45
sprouted wheat berry	45
sprouted wheat grain	45
spelt berry	46
spelt grain	46
spelt kernel	46
spelt flake	47
rolled spelt	47
spelt chop	48
cracked spelt	48
kibbled spelt	48
green spelt	49
freekeh	49
gruenkern	49
grunkern	49
couscous	50
emmer berry	51
emmer grain	51
farro	51
white rye flour	52
white rye	52
rye 815	52
rye flour 815	52
light rye flour	53
light rye	53
rye 997	53
rye flour 997	53
rye type 997	53
type 997	53
rye flour type 997	53
roggenmehl 997	53
roggenmehl type 997	53
medium rye flour	54
medium rye	54
rye 1150	54
rye flour 1150	54
rye type 1150	54
type 1150	54
rye flour type 1150	54
roggenmehl 1150	54
roggenmehl type 1150	54
t85 rye flour	54
rye 1370	55
rye flour 1370	55
rye type 1370	55
type 1370	55
rye flour type 1370	55
roggenmehl 1370	55
roggenmehl type 1370	55
t130 rye flour	55
dark rye flour	56
dark rye	56
rye 1740	56
rye flour 1740	56
rye type 1740	56
t170 rye flour	56
whole rye flour	57
whole rye	57
wholemeal rye flour	57
wholemeal rye	57
whole grain rye flour	57
wholegrain rye flour	57
rye wholemeal	57
rye meal	57
whole rye meal	57
fine rye meal	57
coarse rye meal	57
pumpernickel flour	57
pumpernickel meal	57
rye chop	58
cracked rye	58
kibbled rye	58
chopped rye	58
rye grit	58
coarse rye chop	58
medium rye chop	58
fine rye chop	58
rye flake	59
rolled rye	59
flaked rye	59
rye berry	60
rye grain	60
rye kernel	60
whole rye berry	60
whole rye grain	60
rye bran	61
sprouted rye	62
rye sprout	62
sprouted rye grain	62
barley flour	63
barley meal	63
whole barley flour	63
wholemeal barley flour	63
bere meal	63
oat flour	64
whole oat flour	64
oatmeal flour	64
buckwheat flour	65
whole buckwheat flour	65
teff flour	66
teff	66
brown teff flour	66
ivory teff flour	66
rice flour	67
white rice flour	67
ground rice	67
fine rice flour	67
brown rice flour	68
whole rice flour	68
wholegrain rice flour	68
glutinous rice flour	69
sweet rice flour	69
sticky rice flour	69
maize flour	70
yellow maize flour	70
fine maize flour	70
whole maize flour	70
yellow corn flour	70
whole corn flour	70
corn flour whole grain	70
cornmeal	71
maize meal	71
polenta	71
yellow cornmeal	71
fine cornmeal	71
coarse cornmeal	71
degermed cornmeal	71
whole grain cornmeal	72
whole cornmeal	72
stoneground cornmeal	72
masa harina	73
masa flour	73
nixtamalised maize flour	73
nixtamalized corn flour	73
millet flour	74
whole millet flour	74
sorghum flour	75
jowar flour	75
milo flour	75
white sorghum flour	75
quinoa flour	76
whole quinoa flour	76
amaranth flour	77
whole amaranth flour	77
chickpea flour	78
gram flour	78
besan	78
garbanzo flour	78
garbanzo bean flour	78
chestnut flour	79
soya flour	80
soy flour	80
full fat soya flour	80
full fat soy flour	80
defatted soya flour	81
defatted soy flour	81
lupin flour	82
lupine flour	82
bean flour	83
broad bean flour	83
fava bean flour	83
faba bean flour	83
pea flour	84
yellow pea flour	84
potato flour	85
dried potato flour	85
potato flake	86
instant mashed potato	86
dehydrated potato flake	86
mashed potato flake	86
instant potato flake	86
potato starch	87
potato starch flour	87
fecule	87
maize starch	88
cornstarch	88
corn starch	88
maize cornflour	88
cornflour starch	88
tapioca starch	89
tapioca flour	89
tapioca	89
cassava starch	89
manioc starch	89
rice starch	90
arrowroot	91
arrowroot starch	91
arrowroot powder	91
cassava flour	92
manioc flour	92
psyllium husk	93
psyllium	93
ispaghula	93
whole psyllium husk	93
psyllium powder	94
psyllium husk powder	94
ground psyllium	94
xanthan gum	95
xanthan	95
e415	95
guar gum	96
guar	96
e412	96
rolled oat	97
oat flake	97
porridge oat	97
old fashioned oat	97
jumbo oat	97
quick oat	97
flaked oat	97
large oat flake	97
small oat flake	97
instant oat	97
oat groat	98
whole oat	98
whole oat groat	98
oat berry	98
steel cut oat	99
pinhead oat	99
cut oat	99
coarse oatmeal	99
pinhead oatmeal	99
irish oatmeal	99
oat bran	100
barley flake	101
rolled barley	101
flaked barley	101
pearl barley	102
pearled barley	102
hulled barley	103
barley berry	103
pot barley	103
barley grain	103
whole barley	103
millet	104
hulled millet	104
whole millet	104
millet grain	104
proso millet	104
buckwheat groat	105
whole buckwheat	105
roasted buckwheat	105
kasha	105
buckwheat	105
quinoa	106
whole quinoa	106
white quinoa	106
red quinoa	106
amaranth	107
whole amaranth	107
amaranth seed	107
cooked rice	108
boiled rice	108
rice	109
white rice	109
long grain rice	109
popcorn maize	110
maize grit	110
corn grit	110
hominy grit	110
grit	110
sunflower seed	111
sunflower kernel	111
hulled sunflower seed	111
sunflower seed kernel	111
sunflower	111
toasted sunflower seed	111
roasted sunflower seed	111
pumpkin seed	112
pumpkin kernel	112
pepita	112
toasted pumpkin seed	112
roasted pumpkin seed	112
sesame seed	113
sesame	113
white sesame	113
unhulled sesame	113
whole sesame seed	113
brown sesame	113
black sesame	113
black sesame seed	113
toasted sesame seed	113
hulled sesame	114
hulled sesame seed	114
sesame kernel	114
flaxseed	115
linseed	115
flax	115
flax seed	115
golden linseed	115
golden flaxseed	115
brown linseed	115
brown flaxseed	115
lin seed	115
ground flaxseed	116
ground linseed	116
milled linseed	116
milled flaxseed	116
flax meal	116
flaxmeal	116
poppy seed	117
poppy	117
blue poppy seed	117
white poppy seed	117
ground poppy seed	118
milled poppy seed	118
chia seed	119
chia	119
hemp seed	120
hulled hemp seed	120
hemp heart	120
nigella	121
nigella seed	121
black cumin	121
kalonji	121
black caraway	121
onion seed	121
hazelnut	122
filbert	122
roasted hazelnut	122
chopped hazelnut	122
whole hazelnut	122
cobnut	122
toasted hazelnut	122
walnut	123
walnut halve	123
walnut piece	123
chopped walnut	123
english walnut	123
toasted walnut	123
almond	124
whole almond	124
chopped almond	124
toasted almond	124
roasted almond	124
blanched almond	125
flaked almond	126
sliced almond	126
toasted flaked almond	126
almond flake	126
slivered almond	127
almond sliver	127
nibbed almond	127
ground almond	128
almond flour	128
almond meal	128
pecan	129
pecan nut	129
pecan halve	129
toasted pecan	129
pistachio	130
pistachio nut	130
pistachio kernel	130
cashew	131
cashew nut	131
macadamia	132
macadamia nut	132
brazil nut	133
pine nut	134
pine kernel	134
pignoli	134
peanut	135
groundnut	135
roasted peanut	135
chestnut	136
cooked chestnut	136
peeled chestnut	136
desiccated coconut	137
dried coconut	137
unsweetened coconut	137
shredded coconut	137
coconut flour	138
marzipan	139
almond paste	139
praline paste	140
hazelnut paste	140
hazelnut praline	140
raisin	141
seedless raisin	141
dark raisin	141
sultana	142
golden raisin	142
golden sultana	142
currant	143
dried currant	143
zante currant	143
date	144
dried date	144
pitted date	144
chopped date	144
dried fig	145
fresh fig	146
ripe fig	146
raw fig	146
dried apricot	147
dried cranberry	148
sweetened dried cranberry	148
fresh cranberry	149
frozen cranberry	149
raw cranberry	149
prune	150
dried plum	150
pitted prune	150
dried pear	151
dried apple	152
apple ring	152
dried cherry	153
sour cherry dried	153
mixed dried fruit	154
mixed vine fruit	154
vine fruit	154
candied fruit	155
glace fruit	155
tutti frutti	155
candied peel	156
mixed peel	156
candied orange peel	156
candied lemon peel	156
candied orange	156
candied citrus peel	156
orangeat	156
citronat	156
succade	156
glace cherry	157
candied cherry	157
maraschino cherry	157
apple	158
peeled apple	158
diced apple	158
cooking apple	158
pear	159
fresh pear	159
blueberry	160
bilberry	160
fresh blueberry	160
frozen blueberry	160
raspberry	161
frozen raspberry	161
cherry	162
fresh cherry	162
pitted cherry	162
sour cherry	162
plum	163
damson	163
banana	164
ripe banana	164
mashed banana	164
lemon zest	165
lemon peel	165
grated lemon peel	165
lemon rind	165
orange zest	166
orange peel	166
grated orange peel	166
orange rind	166
apple puree	167
apple sauce	167
applesauce	167
stewed apple	167
lemon juice	168
fresh lemon juice	168
orange juice	169
fresh orange juice	169
apple juice	170
sweet cider	170
jam	171
fruit spread	171
jelly jam	171
marmalade	171
lettuce	172
salad leave	172
rocket	173
arugula	173
cucumber	174
boiled potato	175
cooked potato	175
potato	175
mashed potato	175
cooked mashed potato	175
riced potato	175
baked potato	176
roast potato	176
raw potato	177
grated potato	177
grated raw potato	177
sweet potato	178
cooked sweet potato	178
mashed sweet potato	178
onion	179
raw onion	179
sliced onion	179
chopped onion	179
yellow onion	179
fried onion	180
roasted onion	180
caramelised onion	180
caramelized onion	180
crisp onion	180
dried onion	181
onion flake	181
dehydrated onion	181
garlic	182
raw garlic	182
garlic clove	182
peeled garlic	182
roasted garlic	183
roast garlic	183
tomato	184
cherry tomato	184
fresh tomato	184
chopped tomato	184
sun dried tomato	185
dried tomato	185
sundried tomato	185
passata	186
sieved tomato	186
tomato passata	186
tomato paste	187
tomato concentrate	187
double concentrate tomato	187
carrot	188
grated carrot	188
raw carrot	188
beetroot	189
beet	189
cooked beetroot	189
red beet	189
grated beetroot	189
pumpkin puree	190
squash puree	190
canned pumpkin	190
leek	191
sliced leek	191
celeriac	192
celery root	192
celeriac root	192
celery	193
celery stick	193
celery stalk	193
spinach	194
spinach leave	194
nettle	195
nettle leave	195
mushroom	196
sliced mushroom	196
sweet pepper	197
bell pepper	197
red pepper	197
capsicum	197
courgette	198
zucchini	198
grated courgette	198
sauerkraut	199
drained sauerkraut	199
olive	200
pitted olive	200
black olive	200
green olive	200
ripe olive	200
stoned olive	200
kalamata olive	200
caper	201
pickled caper	201
chive	202
chopped chive	202
spring onion	202
scallion	202
green onion	202
water	203
tap water	203
warm water	203
cold water	203
boiling water	203
hot water	203
ice	203
iced water	203
ice water	203
crushed ice	203
lukewarm water	203
h2o	203
wasser	203
eau	203
acqua	203
agua	203
beer	204
ale	204
lager	204
dark beer	204
stout	204
wheat beer	205
weissbier	205
hefeweizen	205
witbier	205
cloudy wheat beer	205
hard cider	206
dry cider	206
still cider	206
fermented cider	206
kvass	207
bread kvass	207
wine	208
red wine	208
white wine	208
rum	209
dark rum	209
brandy	209
kirsch	209
whiskey	209
whisky	209
coffee	210
brewed coffee	210
espresso	210
distilled vinegar	211
spirit vinegar	211
white vinegar	211
white distilled vinegar	211
cider vinegar	212
apple cider vinegar	212
malt vinegar	213
potato water	214
potato cooking water	214
coconut milk	215
canned coconut milk	215
oat drink	216
oat milk	216
soya drink	217
soy milk	217
soya milk	217
soy drink	217
almond drink	218
almond milk	218
milk	219
whole milk	219
full fat milk	219
full cream milk	219
fresh milk	219
warm milk	219
cold milk	219
scalded milk	219
lukewarm milk	219
milch	219
lait	219
latte	219
leche	219
semi skimmed milk	220
reduced fat milk	220
half fat milk	220
low fat milk	220
skimmed milk	221
skim milk	221
nonfat milk	221
fat free milk	221
non fat milk	221
evaporated milk	222
unsweetened condensed milk	222
sweetened condensed milk	223
milk powder	224
skimmed milk powder	224
skim milk powder	224
nonfat dry milk	224
nonfat dry milk powder	224
non fat dry milk	224
nfdm	224
dry milk	224
dried milk	224
milk solid	224
nonfat milk powder	224
dried skimmed milk	224
high heat nonfat dry milk	224
instant milk powder	225
instant nonfat dry milk	225
instant dry milk	225
instant skimmed milk powder	225
whole milk powder	226
dried whole milk	226
full fat milk powder	226
dry whole milk	226
full cream milk powder	226
buttermilk	227
cultured buttermilk	227
low fat buttermilk	227
buttermilk powder	228
dried buttermilk	228
dry buttermilk	228
whey	229
sweet whey	229
fresh whey	229
whey powder	230
dried whey	230
dry whey	230
yoghurt	231
yogurt	231
natural yoghurt	231
plain yogurt	231
plain yoghurt	231
whole milk yoghurt	231
whole milk yogurt	231
yoghourt	231
strained yoghurt	232
greek yoghurt	232
greek yogurt	232
strained yogurt	232
kefir	233
quark	234
low fat quark	234
curd cheese	234
fromage frais	234
fromage blanc	234
cottage cheese	235
ricotta	236
ricotta cheese	236
cream cheese	237
full fat soft cheese	237
heavy cream	238
whipping cream	238
heavy whipping cream	238
double cream	239
single cream	240
light cream	240
coffee cream	240
table cream	240
pouring cream	240
half and half	241
soured cream	242
sour cream	242
smetana	242
smetena	242
creme fraiche	243
butter	244
unsalted butter	244
sweet cream butter	244
sweet butter	244
lactic butter	244
cultured butter	244
dairy butter	244
soft butter	244
melted butter	244
cold butter	244
softened butter	244
diced butter	244
beurre	244
burro	244
mantequilla	244
salted butter	245
lightly salted butter	245
dry butter	246
lamination butter	246
tourage butter	246
butter sheet	246
roll in butter	246
clarified butter	247
ghee	247
butter oil	247
anhydrous butter	247
butterfat	247
browned butter	247
cheddar	248
cheddar cheese	248
grated cheddar	248
hard cheese	248
grated cheese	248
parmesan	249
parmesan cheese	249
grana	249
hard grating cheese	249
grated parmesan	250
grated parmesan cheese	250
gruyere	251
gruyere cheese	251
mozzarella	252
mozzarella cheese	252
low moisture mozzarella	252
pizza mozzarella	252
feta	253
feta cheese	253
blue cheese	254
egg	255
whole egg	255
large egg	255
beaten egg	255
liquid egg	255
liquid whole egg	255
shell egg	255
fresh egg	255
hen egg	255
room temperature egg	255
uova	255
huevo	255
eier	255
œuf	255
egg yolk	256
yolk	256
liquid egg yolk	256
liquid yolk	256
sugared yolk	256
egg white	257
white	257
albumen	257
liquid egg white	257
dried egg	258
egg powder	258
whole egg powder	258
dried whole egg	258
dry egg	258
powdered egg	258
powdered whole egg	258
dried egg white	259
egg white powder	259
dried albumen	259
meringue powder	259
olive oil	260
extra virgin olive oil	260
evoo	260
virgin olive oil	260
light olive oil	260
evo oil	260
olio evo	260
olio doliva	260
aceite de oliva	260
sunflower oil	261
sunflower seed oil	261
cold pressed sunflower oil	261
deodorised sunflower oil	261
high oleic sunflower oil	262
rapeseed oil	263
canola oil	263
canola	263
colza oil	263
cold pressed rapeseed oil	263
soya oil	264
soybean oil	264
soy oil	264
soya bean oil	264
sesame oil	265
toasted sesame oil	265
pumpkin seed oil	266
cold pressed pumpkin seed oil	266
walnut oil	267
linseed oil	268
flaxseed oil	268
maize oil	269
corn oil	269
coconut oil	270
coconut fat	270
virgin coconut oil	270
palm fat	271
palm oil	271
hardened palm fat	271
lard	272
rendered pork fat	272
pork lard	272
strutto	272
leaf lard	272
beef dripping	273
dripping	273
tallow	273
beef suet	274
fresh suet	274
raw suet	274
block suet	274
shredded suet	275
packet suet	275
suet pellet	275
goose fat	276
duck fat	276
chicken fat	276
schmaltz	276
shortening	277
vegetable shortening	277
vegetable fat	277
white vegetable fat	277
emulsified shortening	277
hydrogenated shortening	277
all purpose shortening	277
high ratio shortening	277
margarine	278
baking margarine	278
block margarine	278
stick margarine	278
pastry margarine	278
cake margarine	278
sugar	279
white sugar	279
granulated sugar	279
caster sugar	279
castor sugar	279
superfine sugar	279
fine sugar	279
table sugar	279
cane sugar	279
beet sugar	279
crystal sugar	279
baker sugar	279
fine granulated sugar	279
extra fine sugar	279
zucker	279
sucre	279
zucchero	279
azucar	279
brown sugar	280
light brown sugar	280
dark brown sugar	280
soft brown sugar	280
light soft brown sugar	280
dark soft brown sugar	280
muscovado	280
muscovado sugar	280
demerara sugar	280
raw cane sugar	280
raw sugar	280
turbinado sugar	280
turbinado	280
icing sugar	281
powdered sugar	281
confectioner sugar	281
10x sugar	281
pearl sugar	282
nib sugar	282
sugar nib	282
hail sugar	282
decorating sugar	282
coarse sugar	282
belgian pearl sugar	282
preserving sugar	282
vanilla sugar	283
dextrose	284
glucose powder	284
corn sugar	284
dextrose monohydrate	284
honey	285
clear honey	285
runny honey	285
blossom honey	285
forest honey	285
liquid honey	285
malt syrup	286
malt extract syrup	286
barley malt syrup	286
liquid malt	286
liquid malt extract	286
barley malt extract	286
non diastatic malt syrup	286
inactive malt syrup	286
malt extract	286
diastatic malt syrup	287
active malt syrup	287
diastatic malt extract	287
beet syrup	288
sugar beet syrup	288
beet molasse	288
molasse	289
blackstrap molasse	289
dark molasse	289
light molasse	289
cane molasse	289
unsulphured molasse	289
unsulfured molasse	289
black treacle	290
golden syrup	291
light treacle	291
refiner syrup	291
maple syrup	292
corn syrup	293
light corn syrup	293
glucose syrup	293
liquid glucose	293
invert syrup	294
invert sugar	294
invert sugar syrup	294
trimoline	294
agave syrup	295
agave nectar	295
agave	295
rice syrup	296
brown rice syrup	296
date syrup	297
date molasse	297
silan	297
apple syrup	298
apple molasse	298
pear syrup	298
apple butter	299
apple spread	299
caramel colour	300
caramel color	300
burnt sugar	300
caramel colouring	300
caramel coloring	300
diastatic malt	301
diastatic malt flour	301
active malt	301
active malt flour	301
enzyme active malt	301
diastatic malt powder	301
enzyme active malt flour	301
barley malt flour	301
active barley malt	301
diastatic barley malt	301
active malt powder	301
rye malt	302
active rye malt	302
diastatic rye malt	302
light rye malt	302
pale rye malt	302
non diastatic malt powder	303
inactive malt powder	303
non diastatic malt	303
inactive malt	303
dry malt extract	303
dried malt extract	303
nondiastatic malt powder	303
inactive malt flour	303
roasted malt	304
roasted barley malt	304
roast malt	304
dark malt	304
chocolate malt	304
black malt	304
roasted malt flour	304
red rye malt	305
red malt	305
fermented rye malt	305
fermented malt	305
solod	305
roasted rye malt	305
dark rye malt	305
crystal malt	306
caramel malt	306
toffee malt	306
malted barley	307
malted barley grain	307
crushed malted barley	307
fresh yeast	308
compressed yeast	308
cake yeast	308
fresh compressed yeast	308
baker compressed yeast	308
block yeast	308
wet yeast	308
levadura fresca	308
levure fraiche	308
lievito fresco	308
frischhefe	308
backhefe	308
active dry yeast	309
active dried yeast	309
ady	309
traditional dried yeast	309
dried active yeast	309
instant yeast	310
instant dry yeast	310
instant dried yeast	310
idy	310
instant active dry yeast	310
rapid rise yeast	310
quick rise yeast	310
bread machine yeast	310
easy blend yeast	310
easy blend dried yeast	310
sweet dough yeast	311
osmotolerant yeast	311
osmotolerant instant yeast	311
sweet dough instant yeast	311
instant yeast for sweet dough	311
osmotolerant instant dry yeast	311
fresh sweet dough yeast	312
osmotolerant fresh yeast	312
fresh osmotolerant yeast	312
compressed sweet dough yeast	312
ripe rye starter	313
rye starter	313
rye sour starter	313
rye sourdough starter	313
rye culture	313
medium rye starter	313
rye mother	313
ripe whole rye starter	314
whole rye starter	314
wholemeal rye starter	314
whole rye culture	314
stiff rye starter	315
firm rye starter	315
ripe wheat starter	316
wheat starter	316
white starter	316
ripe white starter	316
white wheat starter	316
ripe levain starter	316
levain culture	316
wheat culture	316
white culture	316
ripe starter	316
mature white starter	316
wheat mother	316
even starter	317
starter of equal part	317
ripe whole wheat starter	318
whole wheat starter	318
wholemeal starter	318
wholewheat starter	318
whole wheat culture	318
wholemeal wheat starter	318
ripe spelt starter	319
spelt starter	319
spelt culture	319
ripe einkorn starter	320
einkorn starter	320
stiff starter	321
stiff levain starter	321
stiff wheat starter	321
firm starter	321
ripe stiff starter	321
lievito madre	321
pasta madre	321
stiff levain culture	321
liquid levain starter	322
liquid levain culture	322
liquid levain	322
levain liquide	322
ripe liquid levain starter	322
ripe rice starter	323
rice starter	323
gluten free starter	323
ripe buckwheat starter	324
buckwheat starter	324
ripe teff starter	325
teff starter	325
ersho	325
injera starter	325
dried sourdough	326
dry sourdough	326
sourdough powder	326
rye sourdough powder	326
salt	327
fine salt	327
sea salt	327
table salt	327
cooking salt	327
fine sea salt	327
iodised salt	327
iodized salt	327
salz	327
sel	327
sale	327
sal	327
kosher salt	328
flaky salt	329
salt flake	329
flaked salt	329
finishing salt	329
coarse salt	330
pretzel salt	330
rock salt	330
coarse sea salt	330
nib salt	330
baking powder	331
double acting baking powder	331
phosphate baking powder	331
bicarbonate of soda	332
baking soda	332
bicarb	332
sodium bicarbonate	332
bread soda	332
bicarb of soda	332
cream of tartar	333
potassium bitartrate	333
tartar	333
baker ammonia	334
ammonium carbonate	334
hartshorn	334
ammonium bicarbonate	334
salt of hartshorn	334
potash	335
potassium carbonate	335
pearl ash	335
lye	336
sodium hydroxide	336
caustic soda	336
food grade lye	336
lye bead	336
food grade sodium hydroxide	336
lye solution	337
washing soda	338
sodium carbonate	338
baked soda	338
soda crystal	338
kansui powder	338
ascorbic acid	339
vitamin c	339
vitamin c powder	339
e300	339
citric acid	340
e330	340
lactic acid	341
e270	341
calcium propionate	342
e282	342
bread preservative	342
preservative	342
propionate	342
yeast food	343
mineral yeast food	343
dough conditioner salt	343
bread improver	344
improver	344
dough improver	344
dough conditioner	344
emulsifier	344
datem	344
dough strengthener	344
soya lecithin	345
soy lecithin	345
sunflower lecithin	346
rapeseed lecithin	347
canola lecithin	347
egg lecithin	348
egg yolk lecithin	348
gelatine	349
gelatin	349
leaf gelatine	349
sheet gelatin	349
pectin	350
inulin	351
chicory fibre	351
chicory fiber	351
caraway	352
caraway seed	352
ground caraway	352
whole caraway	352
fennel seed	353
fennel	353
ground fennel	353
ground fennel seed	353
coriander seed	354
coriander	354
ground coriander	354
cracked coriander	354
crushed coriander	354
coriander seed ground	354
cumin seed	355
cumin	355
ground cumin	355
anise seed	356
aniseed	356
anise	356
ground aniseed	356
ground anise	356
cardamom	357
ground cardamom	357
cardamom seed	357
green cardamom	357
black cardamom	357
cracked cardamom	357
cinnamon	358
ground cinnamon	358
cassia	358
black pepper	359
pepper	359
ground black pepper	359
cracked pepper	359
ground pepper	359
mustard seed	360
mustard powder	360
ground mustard	360
dry mustard	360
mustard flour	360
yellow mustard seed	360
black mustard seed	360
mustard	361
prepared mustard	361
yellow mustard	361
rosemary	362
dried rosemary	362
fresh rosemary	362
chopped rosemary	362
rosemary leave	362
thyme	363
dried thyme	363
fresh thyme	363
oregano	364
dried oregano	364
marjoram	364
sage	365
fresh sage	365
dried sage	365
sage leave	365
dill	366
fresh dill	366
dill weed	366
dill tip	366
dried dill	366
dill seed	366
bread clover	367
blue fenugreek	367
trigonella	367
fenugreek	368
fenugreek seed	368
ground fenugreek	368
star anise	369
ground star anise	369
nutmeg	370
ground nutmeg	370
mace	370
grated nutmeg	370
clove	371
ground clove	371
allspice	372
ground allspice	372
pimento	372
ginger	373
ground ginger	373
fresh ginger	373
grated ginger	373
mixed spice	374
gingerbread spice	374
pumpkin pie spice	374
lebkuchen spice	374
speculaa spice	374
bread spice	375
brotgewurz	375
saffron	376
saffron thread	376
turmeric	377
ground turmeric	377
paprika	378
sweet paprika	378
smoked paprika	378
chilli	379
chili	379
chilli flake	379
chili flake	379
red pepper flake	379
chile flake	379
cayenne	379
jalapeno	379
zaatar	380
zatar	380
curry powder	381
celery seed	382
celery salt	383
vanilla	384
vanilla pod	384
vanilla bean	384
vanilla paste	384
vanilla extract	384
vanilla essence	384
vanilla seed	384
orange blossom water	385
orange flower water	385
rose water	385
rosewater	385
mahleb	386
mahlab	386
mahlepi	386
mastic	387
mastiha	387
basil	388
dried basil	388
fresh basil	388
basil leave	388
parsley	389
fresh parsley	389
dried parsley	389
chopped parsley	389
almond extract	390
almond essence	390
bitter almond extract	390
instant coffee	391
coffee powder	391
espresso powder	391
instant coffee powder	391
instant espresso	391
food colouring	392
food coloring	392
food dye	392
cocoa	393
cocoa powder	393
unsweetened cocoa	393
natural cocoa	393
baking cocoa	393
alkalised cocoa	394
dutch process cocoa	394
dutched cocoa	394
alkalized cocoa	394
dutch cocoa	394
black cocoa	394
dark chocolate	395
bittersweet chocolate	395
chocolate chip	395
dark chocolate chip	395
chocolate drop	395
chocolate baton	395
chocolate stick	395
semisweet chocolate	395
couverture	395
chocolate	395
very dark chocolate	396
extra dark chocolate	396
plain chocolate	397
plain dark chocolate	397
unsweetened chocolate	398
baking chocolate	398
cocoa mass	398
milk chocolate	399
milk chocolate chip	399
white chocolate	400
white chocolate chip	400
cocoa nib	401
cacao nib	401
old bread	402
stale bread	402
old bread soaked	402
altus	402
yesterday bread	402
dry bread	402
bread leftover	402
returned bread	402
old rye bread	403
rye altus	403
stale rye bread	403
old rye	403
breadcrumb	404
bread crumb	404
dried breadcrumb	404
dry breadcrumb	404
panko	404
toasted breadcrumb	404
rusk	404
rusk crumb	404
tahini	405
sesame paste	405
tahini paste	405
peanut butter	406
miso	407
miso paste	407
soy sauce	408
soya sauce	408
tamari	408
bacon	409
diced bacon	409
lardon	409
speck	409
smoked bacon	409
worcestershire sauce	410
worcester sauce	410
tinned sardine	411
canned sardine	411
sardine in oil	411
tinned tuna	412
canned tuna	412
mayonnaise	413
tofu	414
bean curd	414
piccalilli	415
stock cube	416
bouillon	416
pickled onion	417
anchovy	418
anchovy fillet	418
ham	419
cooked ham	419
diced ham	419
prosciutto	419
sausage	420
salami	420
chorizo	420
pesto	421
squid ink	422
cuttlefish ink	422
activated charcoal	423
vegetable charcoal	423
vegetable carbon	423
nutritional yeast	424
yeast flake	424
inactive yeast	424
deactivated yeast	424
wood ash	425
custard	426
pastry cream	426
creme patissiere	426
custard cream	426
malted milk powder	427
malted milk	427
cornflake	428
corn flake	428
muesli	429
granola	429
muesli mix	429
caramel	430
caramel sauce	430
toffee sauce	430
dulce de leche	430
mincemeat	431
fruit mincemeat	431
mince pie filling	431
sprinkle	432
hundred and thousand	432
nonpareil	432
sugar strand	432
strawberry	433
fresh strawberry	433
lemon	434
whole lemon	434
orange	435
whole orange	435
candied ginger	436
crystallised ginger	436
crystallized ginger	436
stem ginger	436
kimchi	437
tea	438
brewed tea	438
cold tea	438
black tea	438
mascarpone	439
mascarpone cheese	439
emmental	440
emmenthal	440
swiss cheese	440
grated emmental	440
goat cheese	441
chevre	441
halloumi	442
halloumi cheese	442
chocolate spread	443
hazelnut spread	443
chocolate hazelnut spread	443
cornflour	444
corn flour	445
corn meal flour	446
flour	447
wheat flour	448
brown flour	449
rye flour	450
rye	451
barley	452
oat	453
oatmeal	454
maize	455
corn	456
bran	457
wheat	458
wheatmeal	459
gluten free flour	460
starch	461
soya	462
yeast	463
hefe	464
levure	465
lievito di birra	466
levadura	467
curd	468
manteca	469
dried yeast	470
dry yeast	471
fast action yeast	472
fast acting yeast	473
fast action dried yeast	474
brewer yeast	475
malt	476
malt powder	477
malt flour	478
barley malt	479
dried malt	480
treacle	481
syrup	482
cream	483
condensed milk	484
powdered milk	485
cheese	486
soft cheese	487
stick of butter	488
soda	489
bicarbonate	490
tin release agent	491
oil	492
vegetable oil	493
fat	494
starter	495
sourdough	496
sourdough starter	497
sauerteig	498
anstellgut	499
malto	500
sourdough culture	501
culture	502
mother	503
lecithin	504
vinegar	505
seed	506
mixed seed	507
seed mix	508
nut	509
mixed nut	510
dried fruit	511
crumb	512
bread	513
psyllium seed	514
coconut	515
glucose	516
egg substitute	517
discard	518
sourdough discard	519
chopped nut	520
suet	521
tomato puree	522
cranberry	523
fig	524
pumpkin	525
liquid starter	526
baker yeast	527
cider	528
"""

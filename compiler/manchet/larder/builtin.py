"""The built-in larder, made of builtin.bake by `python -m manchet.generate`. Read by stock.py."""

# fmt: off
ENTRIES = """
white flour	wheat flour	all-purpose flour, plain white flour, plain flour, unbleached flour, white wheat flour, AP flour, wheat flour white, maida	water 298/25, protein 1033/100, fat 49/50, saturates 31/200, carbohydrate 7361/100, sugars 27/100, fibre 27/10, sodium 1/500				wheat, gluten		53/100		27/50 29/50	USDA SR28 NDB 20481; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	listed : wheat flour | protein_factor 57/10
bread flour	wheat flour	strong white flour, strong flour, strong white bread flour, white bread flour, baker's flour, bread wheat flour	water 334/25, protein 599/50, fat 83/50, saturates 61/250, carbohydrate 7013/100, sugars 31/100, fibre 12/5, sodium 1/500				wheat, gluten		29/50		57/100 61/100	USDA SR28 NDB 20129; density: US Armed Forces Recipe Service, TM 10-412 (2003), card D 055 00, weight by measure; absorbs water: from memory	listed : wheat flour | protein_factor 57/10
high-gluten flour	wheat flour	very strong white flour, extra strong flour, very strong flour	water 257/20, protein 1533/100, fat 141/100, saturates 34/125, carbohydrate 1687/25, sugars 23/25, fibre 12/5, sodium 1/500				wheat, gluten				59/100 63/100	USDA SR28 NDB 20646; absorbs water: from memory	listed : wheat flour
medium-strong white flour	wheat flour	artisan white flour, medium-strong flour	water 317/25, protein 23/2, fat 29/20, saturates 67/250, carbohydrate 7141/100, sugars 28/25, fibre 12/5, sodium 1/500				wheat, gluten				14/25 3/5	USDA SR28 NDB 20636; absorbs water: from memory	listed : wheat flour
cake flour	wheat flour	sponge flour, soft cake flour	water 1251/100, protein 41/5, fat 43/50, saturates 127/1000, carbohydrate 7633/100, sugars 31/100, fibre 17/10, sodium 1/500				wheat, gluten		29/50		1/2 27/50	USDA SR28 NDB 20084; absorbs water: from memory; density: USDA SR portion weights, from memory	listed : wheat flour | protein_factor 57/10
pastry flour	wheat flour	soft white flour, soft flour, biscuit flour	water 119/10, protein 35/4, fat 41/25, sodium 1/1000				wheat, gluten		9/20		1/2 27/50	USDA FDC 1104913; absorbs water: from memory; density: USDA SR portion weights, from memory	listed : wheat flour
00 flour	wheat flour	flour 00, tipo 00, doppio zero, pizza flour, Italian 00 flour	water 61/5, protein 57/5, fat 38/25, carbohydrate 3587/50, fibre 133/50, sodium 0				wheat, gluten		1/2		27/50 29/50	USDA FDC 2003586; absorbs water: from memory; density: common practice	listed : wheat flour | protein_factor 25/4
whole wheat flour	wheat flour	wholemeal flour, wholemeal, whole wheat, wholewheat flour, wholewheat, wholemeal wheat flour, graham flour, strong wholemeal flour, wholegrain wheat flour, stoneground wholemeal flour, atta, chakki atta	water 537/50, protein 1321/100, fat 5/2, saturates 43/100, carbohydrate 6127/100, sugars 41/100, fibre 107/10, sodium 1/500				wheat, gluten		51/100		31/50 17/25	USDA SR28 NDB 20080; absorbs water: from memory	listed : wholemeal wheat flour | protein_factor 583/100
soft whole wheat flour	wheat flour	whole wheat pastry flour, soft wholemeal flour	water 621/50, protein 961/100, fat 39/20, saturates 43/100, carbohydrate 3069/50, sugars 51/50, fibre 131/10, sodium 3/1000				wheat, gluten				29/50 16/25	USDA SR28 NDB 20649; absorbs water: from memory	listed : wholemeal wheat flour
high-extraction wheat flour	wheat flour	sifted wheat flour, bolted wheat flour, high extraction flour					wheat, gluten				29/50 31/50	common practice: about 80 to 85 parts of flour from 100 of wheat; absorbs water: from memory	
malted flour	wheat flour	malted white flour		white flour 497/500, diastatic malt 3/500			wheat, gluten, barley				27/50 29/50	common practice: a little active malt to even out the falling number; absorbs water: as white flour	
self-raising flour	wheat flour	self-rising flour, self raising white flour, SR flour	water 1059/100, protein 989/100, fat 97/100, saturates 77/500, carbohydrate 1788/25, sugars 11/50, fibre 27/10, sodium 1193/1000				wheat, gluten		53/100			USDA SR28 NDB 20082	protein_factor 57/10
T45 flour	wheat flour	T45, type 45, flour T45, farine T45					wheat, gluten				13/25 14/25	French flour types by ash in the dry matter (about 0.45 %), from memory; absorbs water: from memory	
T55 flour	wheat flour	T55, type 55, flour T55, farine T55					wheat, gluten				27/50 29/50	French flour types by ash in the dry matter (about 0.55 %), from memory; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	
T65 flour	wheat flour	T65, type 65, flour T65, farine T65					wheat, gluten				14/25 3/5	French flour types by ash in the dry matter (about 0.65 %), from memory; absorbs water: from memory	
T80 flour	wheat flour	T80, type 80, flour T80, farine T80					wheat, gluten				29/50 31/50	French flour types by ash in the dry matter (about 0.80 %), from memory; absorbs water: from memory	
T110 flour	wheat flour	T110, type 110, flour T110, farine T110					wheat, gluten				3/5 16/25	French flour types by ash in the dry matter (about 1.10 %), from memory; absorbs water: from memory	
T150 flour	wheat flour	T150, type 150, flour T150, farine T150					wheat, gluten				31/50 17/25	French flour types by ash in the dry matter (1.40 % and more), from memory; absorbs water: from memory	
wheat 405	wheat flour	type 405, flour type 405, wheat flour 405, wheat flour type 405					wheat, gluten				13/25 14/25	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
wheat 550	wheat flour	wheat flour 550, type 550, flour type 550, wheat flour type 550					wheat, gluten				27/50 29/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)	
wheat 812	wheat flour	type 812, flour type 812, wheat flour 812, wheat flour type 812					wheat, gluten				14/25 3/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
wheat 1050	wheat flour	type 1050, flour type 1050, wheat flour 1050, wheat flour type 1050					wheat, gluten				29/50 31/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: from memory	
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
light rye flour	rye flour	light rye, rye 997, rye flour 997, rye type 997, type 997, rye flour type 997	water 57/5, protein 491/50, fat 133/100, saturates 3/20, carbohydrate 1717/25, sugars 93/100, fibre 8, sodium 1/500				rye, gluten		43/100		71/100 3/4	USDA SR28 NDB 20065; absorbs water: rye baking tests, 73 % for type 997 (samartha.net), give or take two	listed : rye flour | protein_factor 583/100
medium rye flour	rye flour	medium rye, rye 1150, rye flour 1150, rye type 1150, type 1150, rye flour type 1150, T85 rye flour	water 1097/100, protein 272/25, fat 38/25, saturates 9/50, carbohydrate 6363/100, sugars 11/10, fibre 59/5, sodium 1/500				rye, gluten		43/100		73/100 77/100	USDA SR28 NDB 20064; absorbs water: rye baking tests, 75 % for type 1150 (samartha.net), give or take two	listed : rye flour | protein_factor 583/100
rye 1370	rye flour	rye flour 1370, rye type 1370, type 1370, rye flour type 1370, T130 rye flour					rye, gluten				19/25 4/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; absorbs water: rye baking tests, 78 % for type 1370 (samartha.net), give or take two	
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
olive oil	fat	extra virgin olive oil, virgin olive oil, light olive oil, EVO oil, olio EVO, olio d'oliva, aceite de oliva	water 0, protein 0, fat 100, saturates 1726/125, carbohydrate 0, sugars 0, fibre 0, sodium 1/500						91/100			USDA SR28 NDB 04053	
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
fresh yeast	yeast	compressed yeast, cake yeast, fresh compressed yeast, baker's compressed yeast, block yeast, wet yeast, levadura fresca, levure fraîche, lievito fresco, Frischhefe	water 69, protein 42/5, fat 19/10, saturates 243/1000, carbohydrate 10, sugars 0, fibre 81/10, sodium 3/100						31/50			USDA SR28 NDB 18374; density: Cotswold Flour, grams to teaspoons, 3.1 g a level teaspoon	listed : yeast | protein_factor 31/5
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
liquid levain starter	culture	liquid levain culture, liquid levain, ripe liquid levain starter		white flour 4/9, water 5/9			wheat, gluten					common practice: 125 parts of water to 100 of flour	
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
sunflower lecithin	other	rapeseed lecithin										common practice	listed : emulsifier (sunflower lecithins)
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
anchovies	fish	anchovy fillets					fish					common practice: salted fillets	
ham	meat	cooked ham, diced ham, prosciutto					?		59/100			common practice; density: USDA SR portion weights, from memory; may hold milk, soya or mustard: read its label	ask milk: the packet says | ask soya: by its emulsifier or fat: the packet says | ask mustard: the packet says
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
?	sourdough culture	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	culture	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	mother	ripe wheat starter, ripe rye starter, stiff starter	flour and water of the starter count in the formula
?	lecithin	soya lecithin, sunflower lecithin	soya is an allergen; the label says which
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
t45 flour	12
t45	12
type 45	12
flour t45	12
farine t45	12
t55 flour	13
t55	13
type 55	13
flour t55	13
farine t55	13
t65 flour	14
t65	14
type 65	14
flour t65	14
farine t65	14
t80 flour	15
t80	15
type 80	15
flour t80	15
farine t80	15
t110 flour	16
t110	16
type 110	16
flour t110	16
farine t110	16
t150 flour	17
t150	17
type 150	17
flour t150	17
farine t150	17
wheat 405	18
type 405	18
flour type 405	18
wheat flour 405	18
wheat flour type 405	18
wheat 550	19
wheat flour 550	19
type 550	19
flour type 550	19
wheat flour type 550	19
wheat 812	20
type 812	20
flour type 812	20
wheat flour 812	20
wheat flour type 812	20
wheat 1050	21
type 1050	21
flour type 1050	21
wheat flour 1050	21
wheat flour type 1050	21
wheat 1600	22
type 1600	22
flour type 1600	22
wheat flour 1600	22
semolina	23
durum semolina	23
fine semolina	23
coarse semolina	23
semola	23
durum flour	24
durum wheat flour	24
durum	24
semolina rimacinata	24
rimacinata	24
re milled semolina	24
whole durum flour	25
wholemeal durum flour	25
whole grain durum flour	25
spelt flour	26
white spelt flour	26
white spelt	26
spelt	26
light spelt flour	26
spelt 630	26
sifted spelt flour	26
whole spelt flour	27
wholemeal spelt flour	27
wholemeal spelt	27
whole spelt	27
whole grain spelt flour	27
wholegrain spelt flour	27
emmer flour	28
emmer	28
whole emmer flour	28
wholemeal emmer flour	28
farro flour	28
einkorn flour	29
einkorn	29
whole einkorn flour	29
wholemeal einkorn flour	29
khorasan flour	30
khorasan	30
khorasan wheat flour	30
whole khorasan flour	30
kamut flour	30
khorasan wheat	30
triticale flour	31
triticale	31
whole triticale flour	31
sprouted wheat flour	32
sprouted whole wheat flour	32
wheat starch	33
wheaten starch	33
vital wheat gluten	34
vital gluten	34
wheat gluten	34
gluten	34
gluten powder	34
wheat bran	35
coarse bran	35
fine bran	35
miller bran	35
wheat germ	36
raw wheat germ	36
toasted wheat germ	36
wheatgerm	36
wheat berry	37
wheat grain	37
wheat kernel	37
whole wheat berry	37
whole wheat grain	37
cracked wheat	38
wheat chop	38
kibbled wheat	38
wheat grit	38
wheat meal coarse	38
wheat flake	39
rolled wheat	39
flaked wheat	39
malted wheat flake	40
malted flake	40
bulgur	41
bulgur wheat	41
bulghur	41
burghul	41
sprouted wheat	42
wheat sprout	42
sprouted wheat berry	42
sprouted wheat grain	42
spelt berry	43
spelt grain	43
spelt kernel	43
spelt flake	44
rolled spelt	44
spelt chop	45
cracked spelt	45
kibbled spelt	45
green spelt	46
freekeh	46
gruenkern	46
grunkern	46
couscous	47
emmer berry	48
emmer grain	48
farro	48
white rye flour	49
white rye	49
rye 815	49
rye flour 815	49
light rye flour	50
light rye	50
rye 997	50
rye flour 997	50
rye type 997	50
type 997	50
rye flour type 997	50
medium rye flour	51
medium rye	51
rye 1150	51
rye flour 1150	51
rye type 1150	51
type 1150	51
rye flour type 1150	51
t85 rye flour	51
rye 1370	52
rye flour 1370	52
rye type 1370	52
type 1370	52
rye flour type 1370	52
t130 rye flour	52
dark rye flour	53
dark rye	53
rye 1740	53
rye flour 1740	53
rye type 1740	53
t170 rye flour	53
whole rye flour	54
whole rye	54
wholemeal rye flour	54
wholemeal rye	54
whole grain rye flour	54
wholegrain rye flour	54
rye wholemeal	54
rye meal	54
whole rye meal	54
fine rye meal	54
coarse rye meal	54
pumpernickel flour	54
pumpernickel meal	54
rye chop	55
cracked rye	55
kibbled rye	55
chopped rye	55
rye grit	55
coarse rye chop	55
medium rye chop	55
fine rye chop	55
rye flake	56
rolled rye	56
flaked rye	56
rye berry	57
rye grain	57
rye kernel	57
whole rye berry	57
whole rye grain	57
rye bran	58
sprouted rye	59
rye sprout	59
sprouted rye grain	59
barley flour	60
barley meal	60
whole barley flour	60
wholemeal barley flour	60
bere meal	60
oat flour	61
whole oat flour	61
oatmeal flour	61
buckwheat flour	62
whole buckwheat flour	62
teff flour	63
teff	63
brown teff flour	63
ivory teff flour	63
rice flour	64
white rice flour	64
ground rice	64
fine rice flour	64
brown rice flour	65
whole rice flour	65
wholegrain rice flour	65
glutinous rice flour	66
sweet rice flour	66
sticky rice flour	66
maize flour	67
yellow maize flour	67
fine maize flour	67
whole maize flour	67
yellow corn flour	67
whole corn flour	67
corn flour whole grain	67
cornmeal	68
maize meal	68
polenta	68
yellow cornmeal	68
fine cornmeal	68
coarse cornmeal	68
degermed cornmeal	68
whole grain cornmeal	69
whole cornmeal	69
stoneground cornmeal	69
masa harina	70
masa flour	70
nixtamalised maize flour	70
nixtamalized corn flour	70
millet flour	71
whole millet flour	71
sorghum flour	72
jowar flour	72
milo flour	72
white sorghum flour	72
quinoa flour	73
whole quinoa flour	73
amaranth flour	74
whole amaranth flour	74
chickpea flour	75
gram flour	75
besan	75
garbanzo flour	75
garbanzo bean flour	75
chestnut flour	76
soya flour	77
soy flour	77
full fat soya flour	77
full fat soy flour	77
defatted soya flour	78
defatted soy flour	78
lupin flour	79
lupine flour	79
bean flour	80
broad bean flour	80
fava bean flour	80
faba bean flour	80
pea flour	81
yellow pea flour	81
potato flour	82
dried potato flour	82
potato flake	83
instant mashed potato	83
dehydrated potato flake	83
mashed potato flake	83
instant potato flake	83
potato starch	84
potato starch flour	84
fecule	84
maize starch	85
cornstarch	85
corn starch	85
maize cornflour	85
cornflour starch	85
tapioca starch	86
tapioca flour	86
tapioca	86
cassava starch	86
manioc starch	86
rice starch	87
arrowroot	88
arrowroot starch	88
arrowroot powder	88
cassava flour	89
manioc flour	89
psyllium husk	90
psyllium	90
ispaghula	90
whole psyllium husk	90
psyllium powder	91
psyllium husk powder	91
ground psyllium	91
xanthan gum	92
xanthan	92
e415	92
guar gum	93
guar	93
e412	93
rolled oat	94
oat flake	94
porridge oat	94
old fashioned oat	94
jumbo oat	94
quick oat	94
flaked oat	94
large oat flake	94
small oat flake	94
instant oat	94
oat groat	95
whole oat	95
whole oat groat	95
oat berry	95
steel cut oat	96
pinhead oat	96
cut oat	96
coarse oatmeal	96
pinhead oatmeal	96
irish oatmeal	96
oat bran	97
barley flake	98
rolled barley	98
flaked barley	98
pearl barley	99
pearled barley	99
hulled barley	100
barley berry	100
pot barley	100
barley grain	100
whole barley	100
millet	101
hulled millet	101
whole millet	101
millet grain	101
proso millet	101
buckwheat groat	102
whole buckwheat	102
roasted buckwheat	102
kasha	102
buckwheat	102
quinoa	103
whole quinoa	103
white quinoa	103
red quinoa	103
amaranth	104
whole amaranth	104
amaranth seed	104
cooked rice	105
boiled rice	105
rice	106
white rice	106
long grain rice	106
popcorn maize	107
maize grit	107
corn grit	107
hominy grit	107
grit	107
sunflower seed	108
sunflower kernel	108
hulled sunflower seed	108
sunflower seed kernel	108
sunflower	108
toasted sunflower seed	108
roasted sunflower seed	108
pumpkin seed	109
pumpkin kernel	109
pepita	109
toasted pumpkin seed	109
roasted pumpkin seed	109
sesame seed	110
sesame	110
white sesame	110
unhulled sesame	110
whole sesame seed	110
brown sesame	110
black sesame	110
black sesame seed	110
toasted sesame seed	110
hulled sesame	111
hulled sesame seed	111
sesame kernel	111
flaxseed	112
linseed	112
flax	112
flax seed	112
golden linseed	112
golden flaxseed	112
brown linseed	112
brown flaxseed	112
lin seed	112
ground flaxseed	113
ground linseed	113
milled linseed	113
milled flaxseed	113
flax meal	113
flaxmeal	113
poppy seed	114
poppy	114
blue poppy seed	114
white poppy seed	114
ground poppy seed	115
milled poppy seed	115
chia seed	116
chia	116
hemp seed	117
hulled hemp seed	117
hemp heart	117
nigella	118
nigella seed	118
black cumin	118
kalonji	118
black caraway	118
onion seed	118
hazelnut	119
filbert	119
roasted hazelnut	119
chopped hazelnut	119
whole hazelnut	119
cobnut	119
toasted hazelnut	119
walnut	120
walnut halve	120
walnut piece	120
chopped walnut	120
english walnut	120
toasted walnut	120
almond	121
whole almond	121
chopped almond	121
toasted almond	121
roasted almond	121
blanched almond	122
flaked almond	123
sliced almond	123
toasted flaked almond	123
almond flake	123
slivered almond	124
almond sliver	124
nibbed almond	124
ground almond	125
almond flour	125
almond meal	125
pecan	126
pecan nut	126
pecan halve	126
toasted pecan	126
pistachio	127
pistachio nut	127
pistachio kernel	127
cashew	128
cashew nut	128
macadamia	129
macadamia nut	129
brazil nut	130
pine nut	131
pine kernel	131
pignoli	131
peanut	132
groundnut	132
roasted peanut	132
chestnut	133
cooked chestnut	133
peeled chestnut	133
desiccated coconut	134
dried coconut	134
unsweetened coconut	134
shredded coconut	134
coconut flour	135
marzipan	136
almond paste	136
praline paste	137
hazelnut paste	137
hazelnut praline	137
raisin	138
seedless raisin	138
dark raisin	138
sultana	139
golden raisin	139
golden sultana	139
currant	140
dried currant	140
zante currant	140
date	141
dried date	141
pitted date	141
chopped date	141
dried fig	142
fresh fig	143
ripe fig	143
raw fig	143
dried apricot	144
dried cranberry	145
sweetened dried cranberry	145
fresh cranberry	146
frozen cranberry	146
raw cranberry	146
prune	147
dried plum	147
pitted prune	147
dried pear	148
dried apple	149
apple ring	149
dried cherry	150
sour cherry dried	150
mixed dried fruit	151
mixed vine fruit	151
vine fruit	151
candied fruit	152
glace fruit	152
tutti frutti	152
candied peel	153
mixed peel	153
candied orange peel	153
candied lemon peel	153
candied orange	153
candied citrus peel	153
orangeat	153
citronat	153
succade	153
glace cherry	154
candied cherry	154
maraschino cherry	154
apple	155
peeled apple	155
diced apple	155
cooking apple	155
pear	156
fresh pear	156
blueberry	157
bilberry	157
fresh blueberry	157
frozen blueberry	157
raspberry	158
frozen raspberry	158
cherry	159
fresh cherry	159
pitted cherry	159
sour cherry	159
plum	160
damson	160
banana	161
ripe banana	161
mashed banana	161
lemon zest	162
lemon peel	162
grated lemon peel	162
lemon rind	162
orange zest	163
orange peel	163
grated orange peel	163
orange rind	163
apple puree	164
apple sauce	164
applesauce	164
stewed apple	164
lemon juice	165
fresh lemon juice	165
orange juice	166
fresh orange juice	166
apple juice	167
sweet cider	167
jam	168
fruit spread	168
jelly jam	168
marmalade	168
boiled potato	169
cooked potato	169
potato	169
mashed potato	169
cooked mashed potato	169
riced potato	169
baked potato	170
roast potato	170
raw potato	171
grated potato	171
grated raw potato	171
sweet potato	172
cooked sweet potato	172
mashed sweet potato	172
onion	173
raw onion	173
sliced onion	173
chopped onion	173
yellow onion	173
fried onion	174
roasted onion	174
caramelised onion	174
caramelized onion	174
crisp onion	174
dried onion	175
onion flake	175
dehydrated onion	175
garlic	176
raw garlic	176
garlic clove	176
peeled garlic	176
roasted garlic	177
roast garlic	177
tomato	178
cherry tomato	178
fresh tomato	178
chopped tomato	178
sun dried tomato	179
dried tomato	179
sundried tomato	179
passata	180
sieved tomato	180
tomato passata	180
tomato paste	181
tomato concentrate	181
double concentrate tomato	181
carrot	182
grated carrot	182
raw carrot	182
beetroot	183
beet	183
cooked beetroot	183
red beet	183
grated beetroot	183
pumpkin puree	184
squash puree	184
canned pumpkin	184
leek	185
sliced leek	185
celeriac	186
celery root	186
celeriac root	186
celery	187
celery stick	187
celery stalk	187
spinach	188
spinach leave	188
nettle	189
nettle leave	189
mushroom	190
sliced mushroom	190
sweet pepper	191
bell pepper	191
red pepper	191
capsicum	191
courgette	192
zucchini	192
grated courgette	192
sauerkraut	193
drained sauerkraut	193
olive	194
pitted olive	194
black olive	194
green olive	194
ripe olive	194
stoned olive	194
kalamata olive	194
caper	195
pickled caper	195
chive	196
chopped chive	196
spring onion	196
scallion	196
green onion	196
water	197
tap water	197
warm water	197
cold water	197
boiling water	197
hot water	197
ice	197
iced water	197
ice water	197
crushed ice	197
lukewarm water	197
h2o	197
wasser	197
eau	197
acqua	197
agua	197
beer	198
ale	198
lager	198
dark beer	198
stout	198
wheat beer	199
weissbier	199
hefeweizen	199
witbier	199
cloudy wheat beer	199
hard cider	200
dry cider	200
still cider	200
fermented cider	200
kvass	201
bread kvass	201
wine	202
red wine	202
white wine	202
rum	203
dark rum	203
brandy	203
kirsch	203
whiskey	203
whisky	203
coffee	204
brewed coffee	204
espresso	204
distilled vinegar	205
spirit vinegar	205
white vinegar	205
white distilled vinegar	205
cider vinegar	206
apple cider vinegar	206
malt vinegar	207
potato water	208
potato cooking water	208
coconut milk	209
canned coconut milk	209
oat drink	210
oat milk	210
soya drink	211
soy milk	211
soya milk	211
soy drink	211
almond drink	212
almond milk	212
milk	213
whole milk	213
full fat milk	213
full cream milk	213
fresh milk	213
warm milk	213
cold milk	213
scalded milk	213
lukewarm milk	213
milch	213
lait	213
latte	213
leche	213
semi skimmed milk	214
reduced fat milk	214
half fat milk	214
low fat milk	214
skimmed milk	215
skim milk	215
nonfat milk	215
fat free milk	215
non fat milk	215
evaporated milk	216
unsweetened condensed milk	216
sweetened condensed milk	217
milk powder	218
skimmed milk powder	218
skim milk powder	218
nonfat dry milk	218
nonfat dry milk powder	218
non fat dry milk	218
nfdm	218
dry milk	218
dried milk	218
milk solid	218
nonfat milk powder	218
dried skimmed milk	218
high heat nonfat dry milk	218
instant milk powder	219
instant nonfat dry milk	219
instant dry milk	219
instant skimmed milk powder	219
whole milk powder	220
dried whole milk	220
full fat milk powder	220
dry whole milk	220
full cream milk powder	220
buttermilk	221
cultured buttermilk	221
low fat buttermilk	221
buttermilk powder	222
dried buttermilk	222
dry buttermilk	222
whey	223
sweet whey	223
fresh whey	223
whey powder	224
dried whey	224
dry whey	224
yoghurt	225
yogurt	225
natural yoghurt	225
plain yogurt	225
plain yoghurt	225
whole milk yoghurt	225
whole milk yogurt	225
yoghourt	225
strained yoghurt	226
greek yoghurt	226
greek yogurt	226
strained yogurt	226
kefir	227
quark	228
low fat quark	228
curd cheese	228
fromage frais	228
fromage blanc	228
cottage cheese	229
ricotta	230
ricotta cheese	230
cream cheese	231
full fat soft cheese	231
heavy cream	232
whipping cream	232
heavy whipping cream	232
double cream	233
single cream	234
light cream	234
coffee cream	234
table cream	234
pouring cream	234
half and half	235
soured cream	236
sour cream	236
smetana	236
smetena	236
creme fraiche	237
butter	238
unsalted butter	238
sweet cream butter	238
sweet butter	238
lactic butter	238
cultured butter	238
dairy butter	238
soft butter	238
melted butter	238
cold butter	238
softened butter	238
diced butter	238
beurre	238
burro	238
mantequilla	238
salted butter	239
lightly salted butter	239
dry butter	240
lamination butter	240
tourage butter	240
butter sheet	240
roll in butter	240
clarified butter	241
ghee	241
butter oil	241
anhydrous butter	241
butterfat	241
browned butter	241
cheddar	242
cheddar cheese	242
grated cheddar	242
hard cheese	242
grated cheese	242
parmesan	243
parmesan cheese	243
grana	243
hard grating cheese	243
grated parmesan	244
grated parmesan cheese	244
gruyere	245
gruyere cheese	245
mozzarella	246
mozzarella cheese	246
low moisture mozzarella	246
pizza mozzarella	246
feta	247
feta cheese	247
blue cheese	248
egg	249
whole egg	249
large egg	249
beaten egg	249
liquid egg	249
liquid whole egg	249
shell egg	249
fresh egg	249
hen egg	249
room temperature egg	249
uova	249
huevo	249
eier	249
œuf	249
egg yolk	250
yolk	250
liquid egg yolk	250
liquid yolk	250
sugared yolk	250
egg white	251
white	251
albumen	251
liquid egg white	251
dried egg	252
egg powder	252
whole egg powder	252
dried whole egg	252
dry egg	252
powdered egg	252
powdered whole egg	252
dried egg white	253
egg white powder	253
dried albumen	253
meringue powder	253
olive oil	254
extra virgin olive oil	254
virgin olive oil	254
light olive oil	254
evo oil	254
olio evo	254
olio doliva	254
aceite de oliva	254
sunflower oil	255
sunflower seed oil	255
cold pressed sunflower oil	255
deodorised sunflower oil	255
high oleic sunflower oil	256
rapeseed oil	257
canola oil	257
canola	257
colza oil	257
cold pressed rapeseed oil	257
soya oil	258
soybean oil	258
soy oil	258
soya bean oil	258
sesame oil	259
toasted sesame oil	259
pumpkin seed oil	260
cold pressed pumpkin seed oil	260
walnut oil	261
linseed oil	262
flaxseed oil	262
maize oil	263
corn oil	263
coconut oil	264
coconut fat	264
virgin coconut oil	264
palm fat	265
palm oil	265
hardened palm fat	265
lard	266
rendered pork fat	266
pork lard	266
strutto	266
leaf lard	266
beef dripping	267
dripping	267
tallow	267
beef suet	268
fresh suet	268
raw suet	268
block suet	268
shredded suet	269
packet suet	269
suet pellet	269
goose fat	270
duck fat	270
chicken fat	270
schmaltz	270
shortening	271
vegetable shortening	271
vegetable fat	271
white vegetable fat	271
emulsified shortening	271
hydrogenated shortening	271
all purpose shortening	271
high ratio shortening	271
margarine	272
baking margarine	272
block margarine	272
stick margarine	272
pastry margarine	272
cake margarine	272
sugar	273
white sugar	273
granulated sugar	273
caster sugar	273
castor sugar	273
superfine sugar	273
fine sugar	273
table sugar	273
cane sugar	273
beet sugar	273
crystal sugar	273
baker sugar	273
fine granulated sugar	273
extra fine sugar	273
zucker	273
sucre	273
zucchero	273
azucar	273
brown sugar	274
light brown sugar	274
dark brown sugar	274
soft brown sugar	274
light soft brown sugar	274
dark soft brown sugar	274
muscovado	274
muscovado sugar	274
demerara sugar	274
raw cane sugar	274
raw sugar	274
turbinado sugar	274
turbinado	274
icing sugar	275
powdered sugar	275
confectioner sugar	275
10x sugar	275
pearl sugar	276
nib sugar	276
sugar nib	276
hail sugar	276
decorating sugar	276
coarse sugar	276
belgian pearl sugar	276
preserving sugar	276
vanilla sugar	277
dextrose	278
glucose powder	278
corn sugar	278
dextrose monohydrate	278
honey	279
clear honey	279
runny honey	279
blossom honey	279
forest honey	279
liquid honey	279
malt syrup	280
malt extract syrup	280
barley malt syrup	280
liquid malt	280
liquid malt extract	280
barley malt extract	280
non diastatic malt syrup	280
inactive malt syrup	280
malt extract	280
diastatic malt syrup	281
active malt syrup	281
diastatic malt extract	281
beet syrup	282
sugar beet syrup	282
beet molasse	282
molasse	283
blackstrap molasse	283
dark molasse	283
light molasse	283
cane molasse	283
unsulphured molasse	283
unsulfured molasse	283
black treacle	284
golden syrup	285
light treacle	285
refiner syrup	285
maple syrup	286
corn syrup	287
light corn syrup	287
glucose syrup	287
liquid glucose	287
invert syrup	288
invert sugar	288
invert sugar syrup	288
trimoline	288
agave syrup	289
agave nectar	289
agave	289
rice syrup	290
brown rice syrup	290
date syrup	291
date molasse	291
silan	291
apple syrup	292
apple molasse	292
pear syrup	292
apple butter	293
apple spread	293
caramel colour	294
caramel color	294
burnt sugar	294
caramel colouring	294
caramel coloring	294
diastatic malt	295
diastatic malt flour	295
active malt	295
active malt flour	295
enzyme active malt	295
diastatic malt powder	295
enzyme active malt flour	295
barley malt flour	295
active barley malt	295
diastatic barley malt	295
active malt powder	295
rye malt	296
active rye malt	296
diastatic rye malt	296
light rye malt	296
pale rye malt	296
non diastatic malt powder	297
inactive malt powder	297
non diastatic malt	297
inactive malt	297
dry malt extract	297
dried malt extract	297
nondiastatic malt powder	297
inactive malt flour	297
roasted malt	298
roasted barley malt	298
roast malt	298
dark malt	298
chocolate malt	298
black malt	298
roasted malt flour	298
red rye malt	299
red malt	299
fermented rye malt	299
fermented malt	299
solod	299
roasted rye malt	299
dark rye malt	299
crystal malt	300
caramel malt	300
toffee malt	300
malted barley	301
malted barley grain	301
crushed malted barley	301
fresh yeast	302
compressed yeast	302
cake yeast	302
fresh compressed yeast	302
baker compressed yeast	302
block yeast	302
wet yeast	302
levadura fresca	302
levure fraiche	302
lievito fresco	302
frischhefe	302
active dry yeast	303
active dried yeast	303
ady	303
traditional dried yeast	303
dried active yeast	303
instant yeast	304
instant dry yeast	304
instant dried yeast	304
idy	304
instant active dry yeast	304
rapid rise yeast	304
quick rise yeast	304
bread machine yeast	304
easy blend yeast	304
easy blend dried yeast	304
sweet dough yeast	305
osmotolerant yeast	305
osmotolerant instant yeast	305
sweet dough instant yeast	305
instant yeast for sweet dough	305
osmotolerant instant dry yeast	305
fresh sweet dough yeast	306
osmotolerant fresh yeast	306
fresh osmotolerant yeast	306
compressed sweet dough yeast	306
ripe rye starter	307
rye starter	307
rye sour starter	307
rye sourdough starter	307
rye culture	307
medium rye starter	307
rye mother	307
ripe whole rye starter	308
whole rye starter	308
wholemeal rye starter	308
whole rye culture	308
stiff rye starter	309
firm rye starter	309
ripe wheat starter	310
wheat starter	310
white starter	310
ripe white starter	310
white wheat starter	310
ripe levain starter	310
levain culture	310
wheat culture	310
white culture	310
ripe starter	310
mature white starter	310
wheat mother	310
even starter	311
starter of equal part	311
ripe whole wheat starter	312
whole wheat starter	312
wholemeal starter	312
wholewheat starter	312
whole wheat culture	312
wholemeal wheat starter	312
ripe spelt starter	313
spelt starter	313
spelt culture	313
ripe einkorn starter	314
einkorn starter	314
stiff starter	315
stiff levain starter	315
stiff wheat starter	315
firm starter	315
ripe stiff starter	315
lievito madre	315
pasta madre	315
stiff levain culture	315
liquid levain starter	316
liquid levain culture	316
liquid levain	316
ripe liquid levain starter	316
ripe rice starter	317
rice starter	317
gluten free starter	317
ripe buckwheat starter	318
buckwheat starter	318
ripe teff starter	319
teff starter	319
ersho	319
injera starter	319
dried sourdough	320
dry sourdough	320
sourdough powder	320
rye sourdough powder	320
salt	321
fine salt	321
sea salt	321
table salt	321
cooking salt	321
fine sea salt	321
iodised salt	321
iodized salt	321
salz	321
sel	321
sale	321
sal	321
kosher salt	322
flaky salt	323
salt flake	323
flaked salt	323
finishing salt	323
coarse salt	324
pretzel salt	324
rock salt	324
coarse sea salt	324
nib salt	324
baking powder	325
double acting baking powder	325
phosphate baking powder	325
bicarbonate of soda	326
baking soda	326
bicarb	326
sodium bicarbonate	326
bread soda	326
bicarb of soda	326
cream of tartar	327
potassium bitartrate	327
tartar	327
baker ammonia	328
ammonium carbonate	328
hartshorn	328
ammonium bicarbonate	328
salt of hartshorn	328
potash	329
potassium carbonate	329
pearl ash	329
lye	330
sodium hydroxide	330
caustic soda	330
food grade lye	330
lye bead	330
food grade sodium hydroxide	330
lye solution	331
washing soda	332
sodium carbonate	332
baked soda	332
soda crystal	332
kansui powder	332
ascorbic acid	333
vitamin c	333
vitamin c powder	333
e300	333
citric acid	334
e330	334
lactic acid	335
e270	335
calcium propionate	336
e282	336
bread preservative	336
preservative	336
propionate	336
yeast food	337
mineral yeast food	337
dough conditioner salt	337
bread improver	338
improver	338
dough improver	338
dough conditioner	338
emulsifier	338
datem	338
dough strengthener	338
soya lecithin	339
soy lecithin	339
sunflower lecithin	340
rapeseed lecithin	340
gelatine	341
gelatin	341
leaf gelatine	341
sheet gelatin	341
pectin	342
inulin	343
chicory fibre	343
chicory fiber	343
caraway	344
caraway seed	344
ground caraway	344
whole caraway	344
fennel seed	345
fennel	345
ground fennel	345
ground fennel seed	345
coriander seed	346
coriander	346
ground coriander	346
cracked coriander	346
crushed coriander	346
coriander seed ground	346
cumin seed	347
cumin	347
ground cumin	347
anise seed	348
aniseed	348
anise	348
ground aniseed	348
ground anise	348
cardamom	349
ground cardamom	349
cardamom seed	349
green cardamom	349
black cardamom	349
cracked cardamom	349
cinnamon	350
ground cinnamon	350
cassia	350
black pepper	351
pepper	351
ground black pepper	351
cracked pepper	351
ground pepper	351
mustard seed	352
mustard powder	352
ground mustard	352
dry mustard	352
mustard flour	352
yellow mustard seed	352
black mustard seed	352
mustard	353
prepared mustard	353
yellow mustard	353
rosemary	354
dried rosemary	354
fresh rosemary	354
chopped rosemary	354
rosemary leave	354
thyme	355
dried thyme	355
fresh thyme	355
oregano	356
dried oregano	356
marjoram	356
sage	357
fresh sage	357
dried sage	357
sage leave	357
dill	358
fresh dill	358
dill weed	358
dill tip	358
dried dill	358
dill seed	358
bread clover	359
blue fenugreek	359
trigonella	359
fenugreek	360
fenugreek seed	360
ground fenugreek	360
star anise	361
ground star anise	361
nutmeg	362
ground nutmeg	362
mace	362
grated nutmeg	362
clove	363
ground clove	363
allspice	364
ground allspice	364
pimento	364
ginger	365
ground ginger	365
fresh ginger	365
grated ginger	365
mixed spice	366
gingerbread spice	366
pumpkin pie spice	366
lebkuchen spice	366
speculaa spice	366
bread spice	367
brotgewurz	367
saffron	368
saffron thread	368
turmeric	369
ground turmeric	369
paprika	370
sweet paprika	370
smoked paprika	370
chilli	371
chili	371
chilli flake	371
chili flake	371
red pepper flake	371
chile flake	371
cayenne	371
jalapeno	371
zaatar	372
zatar	372
curry powder	373
celery seed	374
celery salt	375
vanilla	376
vanilla pod	376
vanilla bean	376
vanilla paste	376
vanilla extract	376
vanilla essence	376
vanilla seed	376
orange blossom water	377
orange flower water	377
rose water	377
rosewater	377
mahleb	378
mahlab	378
mahlepi	378
mastic	379
mastiha	379
basil	380
dried basil	380
fresh basil	380
basil leave	380
parsley	381
fresh parsley	381
dried parsley	381
chopped parsley	381
almond extract	382
almond essence	382
bitter almond extract	382
instant coffee	383
coffee powder	383
espresso powder	383
instant coffee powder	383
instant espresso	383
food colouring	384
food coloring	384
food dye	384
cocoa	385
cocoa powder	385
unsweetened cocoa	385
natural cocoa	385
baking cocoa	385
alkalised cocoa	386
dutch process cocoa	386
dutched cocoa	386
alkalized cocoa	386
dutch cocoa	386
black cocoa	386
dark chocolate	387
bittersweet chocolate	387
chocolate chip	387
dark chocolate chip	387
chocolate drop	387
chocolate baton	387
chocolate stick	387
semisweet chocolate	387
couverture	387
chocolate	387
very dark chocolate	388
extra dark chocolate	388
plain chocolate	389
plain dark chocolate	389
unsweetened chocolate	390
baking chocolate	390
cocoa mass	390
milk chocolate	391
milk chocolate chip	391
white chocolate	392
white chocolate chip	392
cocoa nib	393
cacao nib	393
old bread	394
stale bread	394
old bread soaked	394
altus	394
yesterday bread	394
dry bread	394
bread leftover	394
returned bread	394
old rye bread	395
rye altus	395
stale rye bread	395
old rye	395
breadcrumb	396
bread crumb	396
dried breadcrumb	396
dry breadcrumb	396
panko	396
toasted breadcrumb	396
rusk	396
rusk crumb	396
tahini	397
sesame paste	397
tahini paste	397
peanut butter	398
miso	399
miso paste	399
soy sauce	400
soya sauce	400
tamari	400
bacon	401
diced bacon	401
lardon	401
speck	401
smoked bacon	401
anchovy	402
anchovy fillet	402
ham	403
cooked ham	403
diced ham	403
prosciutto	403
sausage	404
salami	404
chorizo	404
pesto	405
squid ink	406
cuttlefish ink	406
activated charcoal	407
vegetable charcoal	407
vegetable carbon	407
nutritional yeast	408
yeast flake	408
inactive yeast	408
deactivated yeast	408
wood ash	409
custard	410
pastry cream	410
creme patissiere	410
custard cream	410
malted milk powder	411
malted milk	411
cornflake	412
corn flake	412
muesli	413
granola	413
muesli mix	413
caramel	414
caramel sauce	414
toffee sauce	414
dulce de leche	414
mincemeat	415
fruit mincemeat	415
mince pie filling	415
sprinkle	416
hundred and thousand	416
nonpareil	416
sugar strand	416
strawberry	417
fresh strawberry	417
lemon	418
whole lemon	418
orange	419
whole orange	419
candied ginger	420
crystallised ginger	420
crystallized ginger	420
stem ginger	420
kimchi	421
tea	422
brewed tea	422
cold tea	422
black tea	422
mascarpone	423
mascarpone cheese	423
emmental	424
emmenthal	424
swiss cheese	424
grated emmental	424
goat cheese	425
chevre	425
halloumi	426
halloumi cheese	426
chocolate spread	427
hazelnut spread	427
chocolate hazelnut spread	427
cornflour	428
corn flour	429
corn meal flour	430
flour	431
wheat flour	432
brown flour	433
rye flour	434
rye	435
barley	436
oat	437
oatmeal	438
maize	439
corn	440
bran	441
wheat	442
wheatmeal	443
gluten free flour	444
starch	445
soya	446
yeast	447
hefe	448
levure	449
lievito di birra	450
levadura	451
curd	452
manteca	453
dried yeast	454
dry yeast	455
fast action yeast	456
fast acting yeast	457
fast action dried yeast	458
brewer yeast	459
malt	460
malt powder	461
malt flour	462
barley malt	463
dried malt	464
treacle	465
syrup	466
cream	467
condensed milk	468
powdered milk	469
cheese	470
soft cheese	471
stick of butter	472
soda	473
bicarbonate	474
tin release agent	475
oil	476
vegetable oil	477
fat	478
starter	479
sourdough	480
sourdough starter	481
sourdough culture	482
culture	483
mother	484
lecithin	485
vinegar	486
seed	487
mixed seed	488
seed mix	489
nut	490
mixed nut	491
dried fruit	492
crumb	493
bread	494
psyllium seed	495
coconut	496
glucose	497
egg substitute	498
discard	499
sourdough discard	500
chopped nut	501
suet	502
tomato puree	503
cranberry	504
fig	505
pumpkin	506
liquid starter	507
baker yeast	508
cider	509
"""

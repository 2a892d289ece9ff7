"""The built-in larder, made of builtin.bake by `python -m manchet.generate`. Read by stock.py."""

# fmt: off
ENTRIES = """
white flour	wheat flour	all-purpose flour, plain white flour, plain flour, unbleached flour, white wheat flour, AP flour, wheat flour white	water 298/25, protein 1033/100, fat 49/50, saturates 31/200, carbohydrate 7361/100, sugars 27/100, fibre 27/10, sodium 1/500				wheat, gluten		53/100		27/50 29/50	USDA SR28 NDB 20481; takes water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)
bread flour	wheat flour	strong white flour, strong flour, strong white bread flour, white bread flour, baker's flour, bread wheat flour	water 334/25, protein 599/50, fat 83/50, saturates 61/250, carbohydrate 7013/100, sugars 31/100, fibre 12/5, sodium 1/500				wheat, gluten		29/50		57/100 61/100	USDA SR28 NDB 20129; density: US Armed Forces Recipe Service, TM 10-412 (2003), card D 055 00, weight by measure; takes water: from memory
high-gluten flour	wheat flour	very strong white flour, extra strong flour, very strong flour	water 257/20, protein 1533/100, fat 141/100, saturates 34/125, carbohydrate 1687/25, sugars 23/25, fibre 12/5, sodium 1/500				wheat, gluten				59/100 63/100	USDA SR28 NDB 20646; takes water: from memory
medium-strong white flour	wheat flour	artisan white flour, medium-strong flour	water 317/25, protein 23/2, fat 29/20, saturates 67/250, carbohydrate 7141/100, sugars 28/25, fibre 12/5, sodium 1/500				wheat, gluten				14/25 3/5	USDA SR28 NDB 20636; takes water: from memory
cake flour	wheat flour	sponge flour, soft cake flour	water 1251/100, protein 41/5, fat 43/50, saturates 127/1000, carbohydrate 7633/100, sugars 31/100, fibre 17/10, sodium 1/500				wheat, gluten		29/50		1/2 27/50	USDA SR28 NDB 20084; takes water: from memory; density: USDA SR portion weights, from memory
pastry flour	wheat flour	soft white flour, soft flour, biscuit flour	water 119/10, protein 35/4, fat 41/25, sodium 1/1000				wheat, gluten		9/20		1/2 27/50	USDA FDC 1104913; takes water: from memory; density: USDA SR portion weights, from memory
00 flour	wheat flour	flour 00, tipo 00, doppio zero, pizza flour, Italian 00 flour	water 61/5, protein 57/5, fat 38/25, carbohydrate 3587/50, fibre 133/50, sodium 0				wheat, gluten		1/2		27/50 29/50	USDA FDC 2003586; takes water: from memory; density: common practice
whole wheat flour	wheat flour	wholemeal flour, wholemeal, whole wheat, wholewheat flour, wholewheat, wholemeal wheat flour, graham flour, strong wholemeal flour, wholegrain wheat flour, stoneground wholemeal flour	water 537/50, protein 1321/100, fat 5/2, saturates 43/100, carbohydrate 6127/100, sugars 41/100, fibre 107/10, sodium 1/500				wheat, gluten		51/100		31/50 17/25	USDA SR28 NDB 20080; takes water: from memory
soft whole wheat flour	wheat flour	whole wheat pastry flour, soft wholemeal flour	water 621/50, protein 961/100, fat 39/20, saturates 43/100, carbohydrate 3069/50, sugars 51/50, fibre 131/10, sodium 3/1000				wheat, gluten				29/50 16/25	USDA SR28 NDB 20649; takes water: from memory
high-extraction wheat flour	wheat flour	sifted wheat flour, bolted wheat flour, high extraction flour					wheat, gluten				29/50 31/50	common practice: about 80 to 85 parts of flour from 100 of wheat; takes water: from memory
malted flour	wheat flour	malted white flour		white flour 497/500, diastatic malt 3/500			wheat, gluten, barley				27/50 29/50	common practice: a little active malt to even out the falling number; takes water: as white flour
self-raising flour	wheat flour	self-rising flour, self raising white flour, SR flour	water 1059/100, protein 989/100, fat 97/100, saturates 77/500, carbohydrate 1788/25, sugars 11/50, fibre 27/10, sodium 1193/1000				wheat, gluten		53/100			USDA SR28 NDB 20082
T45 flour	wheat flour	T45, type 45, flour T45, farine T45					wheat, gluten				13/25 14/25	French flour types by ash in the dry matter (about 0.45 %), from memory; takes water: from memory
T55 flour	wheat flour	T55, type 55, flour T55, farine T55					wheat, gluten				27/50 29/50	French flour types by ash in the dry matter (about 0.55 %), from memory; takes water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)
T65 flour	wheat flour	T65, type 65, flour T65, farine T65					wheat, gluten				14/25 3/5	French flour types by ash in the dry matter (about 0.65 %), from memory; takes water: from memory
T80 flour	wheat flour	T80, type 80, flour T80, farine T80					wheat, gluten				29/50 31/50	French flour types by ash in the dry matter (about 0.80 %), from memory; takes water: from memory
T110 flour	wheat flour	T110, type 110, flour T110, farine T110					wheat, gluten				3/5 16/25	French flour types by ash in the dry matter (about 1.10 %), from memory; takes water: from memory
T150 flour	wheat flour	T150, type 150, flour T150, farine T150					wheat, gluten				31/50 17/25	French flour types by ash in the dry matter (1.40 % and more), from memory; takes water: from memory
wheat 405	wheat flour	type 405, flour type 405, wheat flour 405, wheat flour type 405					wheat, gluten				13/25 14/25	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: from memory
wheat 550	wheat flour	wheat flour 550, type 550, flour type 550, wheat flour type 550					wheat, gluten				27/50 29/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: German net dough yields 154 to 158 for wheat and toast (encyclopaedia, Teigausbeute)
wheat 812	wheat flour	type 812, flour type 812, wheat flour 812, wheat flour type 812					wheat, gluten				14/25 3/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: from memory
wheat 1050	wheat flour	type 1050, flour type 1050, wheat flour 1050, wheat flour type 1050					wheat, gluten				29/50 31/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: from memory
wheat 1600	wheat flour	type 1600, flour type 1600, wheat flour 1600					wheat, gluten				31/50 33/50	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: from memory
semolina	wheat flour	durum semolina, fine semolina, coarse semolina, semolina rimacinata, rimacinata, semola, re-milled semolina	water 1267/100, protein 317/25, fat 21/20, saturates 3/20, carbohydrate 6893/100, fibre 39/10, sodium 1/1000				wheat, gluten		71/100		29/50 16/25	USDA SR28 NDB 20466; takes water: from memory
durum flour	wheat flour	durum wheat flour, durum					wheat, gluten				29/50 16/25	milled durum wheat, common practice; takes water: from memory
whole durum flour	wheat flour	wholemeal durum flour, whole grain durum flour					wheat, gluten				16/25 7/10	the whole of milled durum wheat, common practice; takes water: from memory
spelt flour	wheat flour	white spelt flour, white spelt, spelt, light spelt flour, spelt 630, sifted spelt flour					wheat, gluten		47/100		51/100 11/20	spelt is a wheat: Regulation (EU) 1169/2011, Annex II; takes water: takes less than wheat (IREKS Compendium, spelt), the figure from memory; density: common practice
whole spelt flour	wheat flour	wholemeal spelt flour, wholemeal spelt, whole spelt, whole grain spelt flour, wholegrain spelt flour	water 107/10, protein 29/2, fat 127/50, carbohydrate 1534/25, fibre 467/50, sodium 0				wheat, gluten				29/50 16/25	USDA FDC 2003587; takes water: from memory
emmer flour	wheat flour	emmer, whole emmer flour, wholemeal emmer flour, farro flour					wheat, gluten		47/100		27/50 3/5	emmer is a wheat, common practice; takes water: from memory; density: common practice
einkorn flour	wheat flour	einkorn, whole einkorn flour, wholemeal einkorn flour	water 21/2, protein 151/10, fat 381/100, carbohydrate 5979/100, fibre 891/100, sodium 0				wheat, gluten		47/100		12/25 27/50	USDA FDC 2710827, figures of the whole grain; takes water: from memory; density: common practice
khorasan flour	wheat flour	khorasan, khorasan wheat flour, whole khorasan flour, kamut flour, Khorasan wheat	water 89/10, protein 74/5, fat 14/5, carbohydrate 613/10, fibre 21/2, sodium 197/50000				wheat, gluten		47/100		29/50 31/50	USDA FDC 2710830, figures of the whole grain; takes water: from memory; density: common practice
triticale flour	wheat flour	triticale, whole triticale flour					wheat, rye, gluten					triticale is a cross of wheat and rye, common practice
sprouted wheat flour	wheat flour	sprouted whole wheat flour					wheat, gluten					common practice
wheat starch	starch	wheaten starch					wheat, gluten					common practice: starch washed out of wheat flour; some gluten stays in it
vital wheat gluten	other	vital gluten, wheat gluten, gluten, gluten powder	water 41/5, protein 1879/25, fat 37/20, saturates 34/125, carbohydrate 1319/100, sugars 0, fibre 3/5, sodium 29/1000				wheat, gluten		11/20			USDA SR28 NDB 48052; density: common practice
wheat bran	grain	coarse bran, fine bran, miller's bran	water 989/100, protein 311/20, fat 17/4, saturates 63/100, carbohydrate 2171/100, sugars 41/100, fibre 214/5, sodium 1/500				wheat, gluten		1/4			USDA SR28 NDB 20077
wheat germ	grain	raw wheat germ, toasted wheat germ, wheatgerm	water 278/25, protein 463/20, fat 243/25, saturates 333/200, carbohydrate 193/5, fibre 66/5, sodium 3/250				wheat, gluten		49/100			USDA SR28 NDB 20078
wheat berries	grain	wheat grains, wheat kernels, whole wheat berries, whole wheat grains	water 319/25, protein 77/5, fat 48/25, saturates 157/500, carbohydrate 5583/100, sugars 41/100, fibre 61/5, sodium 1/500				wheat, gluten		81/100			USDA SR28 NDB 20071
cracked wheat	grain	wheat chops, kibbled wheat, wheat grits, wheat meal coarse					wheat, gluten		59/100			broken wheat grain, common practice; density: USDA SR portion weights, from memory
wheat flakes	grain	rolled wheat, flaked wheat					wheat, gluten					rolled wheat grain, common practice
malted wheat flakes	grain	malted flakes					wheat, barley, gluten					steamed, malted and rolled wheat, common practice
bulgur	grain	bulgur wheat, bulghur, burghul	water 9, protein 1229/100, fat 133/100, saturates 29/125, carbohydrate 6337/100, sugars 41/100, fibre 25/2, sodium 17/1000				wheat, gluten		59/100			USDA SR28 NDB 20012
sprouted wheat	grain	wheat sprouts, sprouted wheat berries, sprouted wheat grains	water 191/4, protein 749/100, fat 127/100, saturates 103/500, carbohydrate 4143/100, fibre 11/10, sodium 2/125				wheat, gluten		23/50			USDA SR28 NDB 20087
spelt berries	grain	spelt grains, spelt kernels	water 551/50, protein 1457/100, fat 243/100, saturates 203/500, carbohydrate 5949/100, sugars 341/50, fibre 107/10, sodium 1/125				wheat, gluten		37/50			USDA SR28 NDB 20140
spelt flakes	grain	rolled spelt					wheat, gluten					rolled spelt grain, common practice
spelt chops	grain	cracked spelt, kibbled spelt					wheat, gluten					broken spelt grain, common practice
green spelt	grain	freekeh, gruenkern, grünkern					wheat, gluten					unripe dried wheat or spelt grain, common practice
couscous	grain						wheat, gluten					common practice
emmer berries	grain	emmer grains, farro					wheat, gluten					common practice
white rye flour	rye flour	white rye, rye 815, rye flour 815					rye, gluten				17/25 18/25	the whitest rye flour, common practice; takes water: rye baking tests, 70 % for type 815 (samartha.net), give or take two
light rye flour	rye flour	light rye, rye 997, rye flour 997, rye type 997, type 997, rye flour type 997	water 57/5, protein 491/50, fat 133/100, saturates 3/20, carbohydrate 1717/25, sugars 93/100, fibre 8, sodium 1/500				rye, gluten		43/100		71/100 3/4	USDA SR28 NDB 20065; takes water: rye baking tests, 73 % for type 997 (samartha.net), give or take two
medium rye flour	rye flour	medium rye, rye 1150, rye flour 1150, rye type 1150, type 1150, rye flour type 1150, T85 rye flour	water 1097/100, protein 272/25, fat 38/25, saturates 9/50, carbohydrate 6363/100, sugars 11/10, fibre 59/5, sodium 1/500				rye, gluten		43/100		73/100 77/100	USDA SR28 NDB 20064; takes water: rye baking tests, 75 % for type 1150 (samartha.net), give or take two
rye 1370	rye flour	rye flour 1370, rye type 1370, type 1370, rye flour type 1370, T130 rye flour					rye, gluten				19/25 4/5	German flour types, DIN 10355 (mg of ash in 100 g dry flour), from memory; takes water: rye baking tests, 78 % for type 1370 (samartha.net), give or take two
dark rye flour	rye flour	dark rye, rye 1740, rye flour 1740, rye type 1740, T170 rye flour	water 43/4, protein 1591/100, fat 111/50, saturates 269/1000, carbohydrate 4483/100, sugars 231/100, fibre 119/5, sodium 1/500				rye, gluten		27/50		19/25 4/5	USDA SR28 NDB 20063; takes water: from memory
whole rye flour	rye flour	whole rye, wholemeal rye flour, wholemeal rye, whole grain rye flour, wholegrain rye flour, rye wholemeal, rye meal, whole rye meal, fine rye meal, coarse rye meal, pumpernickel flour, pumpernickel meal	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten		27/50		19/25 4/5	USDA SR28 NDB 20062 (the whole grain; milling takes nothing away); takes water: German net dough yields 176 to 180 for wholegrain (encyclopaedia, Teigausbeute); density: USDA SR portion weights, from memory
rye chops	grain	cracked rye, kibbled rye, chopped rye, rye grits, coarse rye chops, medium rye chops, fine rye chops					rye, gluten					broken rye grain, common practice
rye flakes	grain	rolled rye, flaked rye					rye, gluten					rolled rye grain, common practice
rye berries	grain	rye grains, rye kernels, whole rye berries, whole rye grains	water 53/5, protein 517/50, fat 163/100, saturates 197/1000, carbohydrate 1519/25, sugars 49/50, fibre 151/10, sodium 1/500				rye, gluten		71/100			USDA SR28 NDB 20062
rye bran	grain						rye, gluten					common practice
sprouted rye	grain	rye sprouts, sprouted rye grains					rye, gluten					common practice
barley flour	other flour	barley meal, whole barley flour, wholemeal barley flour, bere meal	water 1211/100, protein 21/2, fat 8/5, saturates 67/200, carbohydrate 3221/50, sugars 4/5, fibre 101/10, sodium 1/250				barley, gluten		63/100			USDA SR28 NDB 20130
oat flour	other flour	whole oat flour, oatmeal flour	water 443/50, protein 66/5, fat 631/100, carbohydrate 297/5, fibre 21/2, sodium 181/50000				oats, gluten		11/25			USDA FDC 2261421; density: USDA SR portion weights, from memory
buckwheat flour	other flour	whole buckwheat flour	water 223/20, protein 631/50, fat 31/10, saturates 677/1000, carbohydrate 6059/100, sugars 13/5, fibre 10, sodium 11/1000						51/100			USDA SR28 NDB 20011
teff flour	other flour	teff, brown teff flour, ivory teff flour							63/100			common practice; density: common practice
rice flour	other flour	white rice flour, ground rice, fine rice flour	water 1189/100, protein 119/20, fat 71/50, saturates 193/500, carbohydrate 7773/100, sugars 3/25, fibre 12/5, sodium 0						67/100			USDA SR28 NDB 20061
brown rice flour	other flour	whole rice flour, wholegrain rice flour	water 1197/100, protein 723/100, fat 139/50, saturates 557/1000, carbohydrate 1797/25, sugars 33/50, fibre 23/5, sodium 1/125						67/100			USDA SR28 NDB 20090
glutinous rice flour	other flour	sweet rice flour, sticky rice flour	water 59/5, protein 669/100, fat 29/25, sodium 3/500									USDA FDC 1104867
maize flour	other flour	yellow maize flour, fine maize flour, whole maize flour, yellow corn flour, whole corn flour, corn flour whole-grain	water 1091/100, protein 693/100, fat 193/50, saturates 543/1000, carbohydrate 1391/20, sugars 16/25, fibre 73/10, sodium 1/200						49/100		9/10 6/5	USDA SR28 NDB 20016; takes water: from memory
cornmeal	other flour	maize meal, polenta, yellow cornmeal, fine cornmeal, coarse cornmeal, degermed cornmeal	water 559/50, protein 711/100, fat 7/4, saturates 11/50, carbohydrate 1511/20, sugars 161/100, fibre 39/10, sodium 7/1000						33/50		9/10 6/5	USDA SR28 NDB 20422; takes water: from memory
whole-grain cornmeal	other flour	whole cornmeal, stoneground cornmeal	water 513/50, protein 203/25, fat 359/100, saturates 101/200, carbohydrate 6959/100, sugars 16/25, fibre 73/10, sodium 7/200						13/25		9/10 6/5	USDA SR28 NDB 20020; takes water: from memory
masa harina	other flour	masa flour, nixtamalised maize flour, nixtamalized corn flour	water 101/10, protein 189/25, fat 217/50, carbohydrate 3483/50, fibre 176/25, sodium 273/100000						12/25		11/10 7/5	USDA FDC 2710835; density: USDA SR portion weights, from memory; takes water: from memory
millet flour	other flour	whole millet flour	water 867/100, protein 43/4, fat 17/4, saturates 67/125, carbohydrate 3581/50, sugars 83/50, fibre 7/2, sodium 1/250						1/2			USDA SR28 NDB 20647
sorghum flour	other flour	jowar flour, milo flour, white sorghum flour	water 941/100, protein 827/100, fat 359/100, carbohydrate 3569/50, fibre 301/50, sodium 0						51/100			USDA FDC 2512373; density: USDA SR portion weights, from memory
quinoa flour	other flour	whole quinoa flour	water 199/20, protein 119/10, fat 33/5, carbohydrate 316/5, fibre 63/10, sodium 79/12500									USDA FDC 2512372
amaranth flour	other flour	whole amaranth flour	water 949/100, protein 66/5, fat 156/25, carbohydrate 6159/100, fibre 721/100, sodium 0									USDA FDC 2512371
chickpea flour	other flour	gram flour, besan, garbanzo flour, garbanzo bean flour							39/100			common practice: weighed as flour where it replaces flour; density: USDA SR portion weights, from memory
chestnut flour	other flour											common practice
soya flour	other flour	soy flour, full-fat soya flour, full-fat soy flour	water 129/25, protein 3781/100, fat 413/20, saturates 2987/1000, carbohydrate 558/25, sugars 15/2, fibre 48/5, sodium 13/1000		no		soya		7/20			USDA SR28 NDB 16115
defatted soya flour	other flour	defatted soy flour	water 29/4, protein 2573/50, fat 61/50, saturates 17/125, carbohydrate 821/50, sugars 821/50, fibre 35/2, sodium 1/50		no		soya		11/25			USDA SR28 NDB 16117
lupin flour	other flour	lupine flour			no		lupin					common practice: an addition of a few per cent, on top of the flour
bean flour	other flour	broad bean flour, fava bean flour, faba bean flour			no							common practice: an improver of one or two per cent, on top of the flour
pea flour	other flour	yellow pea flour										common practice
potato flour	vegetable	dried potato flour	water 163/25, protein 69/10, fat 17/50, saturates 9/100, carbohydrate 386/5, sugars 88/25, fibre 59/10, sodium 11/200						17/25			USDA SR28 NDB 11413; density: USDA SR portion weights, from memory
potato flakes	vegetable	instant mashed potato, dehydrated potato flakes, mashed potato flakes, instant potato flakes	water 329/50, protein 417/50, fat 41/100, saturates 169/1000, carbohydrate 7457/100, sugars 84/25, fibre 33/5, sodium 77/1000						1/4			USDA SR28 NDB 11378; density: USDA SR portion weights, from memory
potato starch	starch	potato starch flour, fecule							17/25			common practice; density: common practice
maize starch	starch	cornstarch, corn starch, maize cornflour, cornflour starch	water 208/25, protein 13/50, fat 1/20, saturates 9/1000, carbohydrate 9037/100, sugars 0, fibre 9/10, sodium 9/1000						27/50			USDA SR28 NDB 20027
tapioca starch	starch	tapioca flour, tapioca, cassava starch, manioc starch							51/100			common practice; density: USDA SR portion weights, from memory
rice starch	starch											common practice
arrowroot	starch	arrowroot starch, arrowroot powder							27/50			common practice; density: USDA SR portion weights, from memory
cassava flour	other flour	manioc flour										the whole root, dried and milled, common practice
psyllium husk	other	psyllium, ispaghula, whole psyllium husk							17/50			common practice: a binder, on top of the flour; density: common practice
psyllium powder	other	psyllium husk powder, ground psyllium										common practice: a binder, on top of the flour
xanthan gum	other	xanthan, E415							11/20			common practice; density: common practice
guar gum	other	guar, E412										common practice
rolled oats	grain	oat flakes, porridge oats, old-fashioned oats, jumbo oats, quick oats, flaked oats, large oat flakes, small oat flakes, instant oats	water 271/25, protein 263/20, fat 163/25, saturates 111/100, carbohydrate 288/5, sugars 99/100, fibre 101/10, sodium 3/500				oats, gluten		17/50			USDA SR28 NDB 08120
oat groats	grain	whole oats, whole oat groats, oat berries	water 411/50, protein 1689/100, fat 69/10, saturates 1217/1000, carbohydrate 5567/100, fibre 53/5, sodium 1/500				oats, gluten		33/50			USDA SR28 NDB 20038
steel-cut oats	grain	pinhead oats, cut oats, coarse oatmeal, pinhead oatmeal, Irish oatmeal	water 101/10, protein 25/2, fat 29/5, carbohydrate 289/5, fibre 12, sodium 31/100000				oats, gluten					USDA FDC 2346397
oat bran	grain		water 131/20, protein 173/10, fat 703/100, saturates 166/125, carbohydrate 2541/50, sugars 29/20, fibre 77/5, sodium 1/250				oats, gluten		2/5			USDA SR28 NDB 20033
barley flakes	grain	rolled barley, flaked barley					barley, gluten					common practice
pearl barley	grain	pearled barley					barley, gluten					common practice; may carry sulphites, Regulation (EC) 1333/2008
hulled barley	grain	barley berries, pot barley, barley grains, whole barley					barley, gluten					common practice
millet	grain	hulled millet, whole millet, millet grain, proso millet							17/20			common practice; density: USDA SR portion weights, from memory
buckwheat groats	grain	whole buckwheat, roasted buckwheat, kasha, buckwheat										common practice
quinoa	grain	whole quinoa, white quinoa, red quinoa							18/25			common practice; density: USDA SR portion weights, from memory
amaranth	grain	whole amaranth, amaranth seed										common practice
cooked rice	grain	boiled rice							67/100			common practice; density: USDA SR portion weights, from memory
rice	grain	white rice, long grain rice							39/50			common practice; density: USDA SR portion weights, from memory
popcorn maize	grain	maize grits, corn grits, hominy grits, grits										common practice
sunflower seeds	seed	sunflower kernels, hulled sunflower seeds, sunflower seed kernels, sunflower, toasted sunflower seeds, roasted sunflower seeds	water 473/100, protein 1039/50, fat 2573/50, saturates 891/200, carbohydrate 57/5, sugars 131/50, fibre 43/5, sodium 9/1000						59/100			USDA SR28 NDB 12036
pumpkin seeds	seed	pumpkin kernels, pepitas, pumpkin, toasted pumpkin seeds, roasted pumpkin seeds	water 523/100, protein 3023/100, fat 981/20, saturates 8659/1000, carbohydrate 471/100, sugars 7/5, fibre 6, sodium 7/1000						11/20			USDA SR28 NDB 12014
sesame seeds	seed	sesame, white sesame, unhulled sesame, whole sesame seeds, brown sesame, black sesame, black sesame seeds, toasted sesame seeds	water 469/100, protein 1773/100, fat 4967/100, saturates 6957/1000, carbohydrate 233/20, sugars 3/10, fibre 59/5, sodium 11/1000				sesame		61/100			USDA SR28 NDB 12023
hulled sesame	seed	hulled sesame seeds, sesame kernels	water 15/4, protein 409/20, fat 6121/100, saturates 1811/200, carbohydrate 13/100, sugars 12/25, fibre 58/5, sodium 47/1000				sesame		63/100			USDA SR28 NDB 12201
flaxseed	seed	linseed, flax, flax seed, golden linseed, golden flaxseed, brown linseed, brown flaxseed, lin seed	water 174/25, protein 1829/100, fat 1054/25, saturates 3663/1000, carbohydrate 79/50, sugars 31/20, fibre 273/10, sodium 3/100						71/100			USDA SR28 NDB 12220; density: USDA SR portion weights, from memory
ground flaxseed	seed	ground linseed, milled linseed, milled flaxseed, flax meal, flaxmeal	water 34/5, protein 18, fat 373/10, saturates 82/25, carbohydrate 113/10, fibre 231/10, sodium 367/10000						47/100			USDA FDC 2262075; density: USDA SR portion weights, from memory
poppy seeds	seed	poppy, blue poppy seeds, white poppy seeds	water 119/20, protein 1799/100, fat 1039/25, saturates 4517/1000, carbohydrate 863/100, sugars 299/100, fibre 39/2, sodium 13/500						57/100			USDA SR28 NDB 02033
ground poppy seeds	seed	milled poppy seeds										common practice
chia seeds	seed	chia	water 29/5, protein 827/50, fat 1537/50, saturates 333/100, carbohydrate 193/25, fibre 172/5, sodium 2/125						7/10			USDA SR28 NDB 12006; density: common practice
hemp seeds	seed	hulled hemp seeds, hemp hearts										common practice
nigella	spice	nigella seed, black cumin, kalonji, black caraway, onion seed							47/100			common practice; density: common practice
hazelnuts	nut	filberts, roasted hazelnuts, chopped hazelnuts, whole hazelnuts, cobnuts, toasted hazelnuts	water 531/100, protein 299/20, fat 243/4, saturates 558/125, carbohydrate 7, sugars 217/50, fibre 97/10, sodium 0				hazelnut		49/100			USDA SR28 NDB 12120; density: USDA SR portion weights, from memory
walnuts	nut	walnut halves, walnut pieces, chopped walnuts, English walnuts, toasted walnuts	water 407/100, protein 1523/100, fat 6521/100, saturates 3063/500, carbohydrate 701/100, sugars 261/100, fibre 67/10, sodium 1/500				walnut		49/100			USDA SR28 NDB 12155; density: USDA SR portion weights, from memory
almonds	nut	whole almonds, chopped almonds, toasted almonds, roasted almonds	water 441/100, protein 423/20, fat 4993/100, saturates 1901/500, carbohydrate 181/20, sugars 87/20, fibre 25/2, sodium 1/1000				almond		3/5			USDA SR28 NDB 12061; density: USDA SR portion weights, from memory
blanched almonds	nut	flaked almonds, slivered almonds, sliced almonds	water 451/100, protein 107/5, fat 1313/25, saturates 3953/1000, carbohydrate 877/100, sugars 463/100, fibre 99/10, sodium 19/1000				almond		31/50			USDA SR28 NDB 12062
ground almonds	nut	almond flour, almond meal	water 108/25, protein 131/5, fat 251/5, carbohydrate 693/100, fibre 927/100, sodium 89/100000				almond		2/5			USDA FDC 2261420; density: USDA SR portion weights, from memory
pecans	nut	pecan nuts, pecan halves, toasted pecans	water 88/25, protein 917/100, fat 7197/100, saturates 309/50, carbohydrate 213/50, sugars 397/100, fibre 48/5, sodium 0				pecan		23/50			USDA SR28 NDB 12142; density: USDA SR portion weights, from memory
pistachios	nut	pistachio nuts, pistachio kernels					pistachio		13/25			common practice; density: USDA SR portion weights, from memory
cashews	nut	cashew nuts					cashew		29/50			common practice; density: USDA SR portion weights, from memory
macadamias	nut	macadamia nuts					macadamia		57/100			common practice; density: USDA SR portion weights, from memory
brazil nuts	nut						brazil nut		14/25			common practice; density: USDA SR portion weights, from memory
pine nuts	nut	pine kernels, pignoli							57/100			common practice; a tree nut in the United States, not in Annex II of Regulation (EU) 1169/2011; density: USDA SR portion weights, from memory
peanuts	nut	groundnuts, roasted peanuts					peanut		31/50			common practice; density: USDA SR portion weights, from memory
chestnuts	nut	cooked chestnuts, peeled chestnuts							3/5			common practice; density: USDA SR portion weights, from memory
desiccated coconut	nut	dried coconut, unsweetened coconut, shredded coconut	water 3, protein 172/25, fat 6453/100, saturates 28609/500, carbohydrate 147/20, sugars 147/20, fibre 163/10, sodium 37/1000						17/50			USDA SR28 NDB 12108; density: USDA SR portion weights, from memory
coconut flour	nut								49/100			common practice; density: common practice
marzipan	other	almond paste					almond		24/25			common practice; density: USDA SR portion weights, from memory
praline paste	other	hazelnut paste, hazelnut praline					hazelnut					common practice
raisins	fruit	seedless raisins, dark raisins	water 1543/100, protein 307/100, fat 23/50, saturates 29/500, carbohydrate 1887/25, sugars 5919/100, fibre 37/10, sodium 11/1000						61/100			USDA SR28 NDB 09298; density: USDA SR portion weights, from memory
sultanas	fruit	golden raisins, golden sultanas	water 1497/100, protein 339/100, fat 23/50, saturates 151/1000, carbohydrate 1888/25, sugars 5919/100, fibre 4, sodium 3/250				?		61/100			USDA SR28 NDB 09297; density: USDA SR portion weights, from memory
currants	fruit	dried currants, zante currants	water 1921/100, protein 102/25, fat 27/100, saturates 7/250, carbohydrate 1682/25, sugars 1682/25, fibre 34/5, sodium 1/125						61/100			USDA SR28 NDB 09085; density: USDA SR portion weights, from memory
dates	fruit	dried dates, pitted dates, chopped dates	water 2053/100, protein 49/20, fat 39/100, saturates 4/125, carbohydrate 6703/100, sugars 1267/20, fibre 8, sodium 1/500						31/50			USDA SR28 NDB 09087; density: USDA SR portion weights, from memory
dried figs	fruit	figs	water 601/20, protein 33/10, fat 93/100, saturates 18/125, carbohydrate 5407/100, sugars 1198/25, fibre 49/5, sodium 1/100						63/100			USDA SR28 NDB 09094; density: USDA SR portion weights, from memory
dried apricots	fruit		water 3089/100, protein 339/100, fat 51/100, saturates 17/1000, carbohydrate 2767/50, sugars 1336/25, fibre 73/10, sodium 1/100				?			7		USDA SR28 NDB 09032; one as there, without shell or skin
dried cranberries	fruit	cranberries, sweetened dried cranberries	water 1579/100, protein 17/100, fat 109/100, saturates 11/125, carbohydrate 155/2, sugars 1814/25, fibre 53/10, sodium 1/200						51/100			USDA SR28 NDB 09079; density: USDA SR portion weights, from memory
prunes	fruit	dried plums, pitted prunes	water 773/25, protein 109/50, fat 19/50, saturates 11/125, carbohydrate 2839/50, sugars 3813/100, fibre 71/10, sodium 1/500						37/50			USDA SR28 NDB 09291; density: USDA SR portion weights, from memory
dried pears	fruit						?					common practice
dried apples	fruit	apple rings					?					common practice
dried cherries	fruit	sour cherries dried					?		17/25			common practice; density: USDA SR portion weights, from memory
mixed dried fruit	fruit	mixed vine fruit, vine fruit					?					common practice
candied fruit	fruit	glace fruit, tutti frutti	water 167/10, protein 17/50, fat 7/100, saturates 1/100, carbohydrate 4057/50, sugars 2017/25, fibre 8/5, sodium 49/500				?					USDA SR28 NDB 09426
candied peel	fruit	mixed peel, candied orange peel, candied lemon peel, candied orange, candied citrus peel, orangeat, citronat, succade					?		63/100			common practice; density: common practice
glace cherries	fruit	candied cherries, maraschino cherries					?		17/20			common practice; density: common practice
apples	fruit	peeled apples, diced apple, cooking apples	water 8667/100, protein 27/100, fat 13/100, saturates 21/1000, carbohydrate 573/50, sugars 101/10, fibre 13/10, sodium 0						53/100			USDA SR28 NDB 09004; density: USDA SR portion weights, from memory
pears	fruit	fresh pears										common practice
blueberries	fruit	bilberries, fresh blueberries, frozen blueberries							63/100			common practice; density: USDA SR portion weights, from memory
raspberries	fruit	frozen raspberries							13/25			common practice; density: USDA SR portion weights, from memory
cherries	fruit	fresh cherries, pitted cherries, sour cherries							13/20			common practice; density: USDA SR portion weights, from memory
plums	fruit	damsons										common practice
bananas	fruit	ripe bananas, mashed banana							19/20			common practice; density: USDA SR portion weights, from memory; mashed
lemon zest	fruit	lemon peel, grated lemon peel, lemon rind	water 408/5, protein 3/2, fat 3/10, saturates 39/1000, carbohydrate 27/5, sugars 417/100, fibre 53/5, sodium 3/500						41/100			USDA SR28 NDB 09156; density: common practice
orange zest	fruit	orange peel, grated orange peel, orange rind	water 145/2, protein 3/2, fat 1/5, saturates 3/125, carbohydrate 72/5, fibre 53/5, sodium 3/1000						41/100			USDA SR28 NDB 09216; density: common practice
apple puree	fruit	apple sauce, applesauce, stewed apple	water 88			yes			103/100			unsweetened, about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory
lemon juice	liquid	fresh lemon juice	water 9231/100, protein 7/20, fat 6/25, saturates 1/25, carbohydrate 33/5, sugars 63/25, fibre 3/10, sodium 1/1000						103/100			USDA SR28 NDB 09152
orange juice	liquid	fresh orange juice	water 88						21/20			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory
apple juice	liquid	sweet cider	water 88						21/20			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory
jam	other	fruit spread, jelly jam, marmalade							27/20			common practice; density: USDA SR portion weights, from memory
boiled potatoes	vegetable	cooked potatoes, potatoes, mashed potato, cooked mashed potato, riced potatoes	water 3873/50, protein 171/100, fat 1/10, saturates 13/500, carbohydrate 1821/100, sugars 89/100, fibre 9/5, sodium 1/200						33/50			USDA SR28 NDB 11367; density: USDA SR portion weights, from memory
baked potatoes	vegetable	roast potatoes	water 7543/100, protein 21/10, fat 3/20, saturates 11/500, carbohydrate 949/50, sugars 153/100, fibre 21/10, sodium 7/1000									USDA SR28 NDB 11357
raw potatoes	vegetable	grated potatoes, grated raw potato	water 317/4, protein 41/20, fat 9/100, saturates 1/40, carbohydrate 1539/100, sugars 41/50, fibre 21/10, sodium 3/500									USDA SR28 NDB 11352
sweet potatoes	vegetable	cooked sweet potato, mashed sweet potato							14/25			common practice; density: USDA SR portion weights, from memory
onions	vegetable	raw onions, sliced onions, chopped onions, yellow onions	water 8911/100, protein 11/10, fat 1/10, saturates 21/500, carbohydrate 191/25, sugars 106/25, fibre 17/10, sodium 1/250						17/25			USDA SR28 NDB 11282; density: USDA SR portion weights, from memory
fried onions	vegetable	roasted onions, caramelised onions, caramelized onions, crisp onions					?					common practice; bought ones are often dusted with wheat flour
dried onions	vegetable	onion flakes, dehydrated onions	water 393/100, protein 179/20, fat 23/50, saturates 39/500, carbohydrate 1852/25, sugars 3741/100, fibre 46/5, sodium 21/1000									USDA SR28 NDB 11284
garlic	vegetable	raw garlic, garlic cloves, peeled garlic	water 2929/50, protein 159/25, fat 1/2, saturates 89/1000, carbohydrate 774/25, sugars 1, fibre 21/10, sodium 17/1000							3		USDA SR28 NDB 11215; one as there, without shell or skin
roasted garlic	vegetable	roast garlic										common practice
tomatoes	vegetable	cherry tomatoes, fresh tomatoes, chopped tomatoes	water 2363/25, protein 22/25, fat 1/5, saturates 7/250, carbohydrate 269/100, sugars 263/100, fibre 6/5, sodium 1/200						19/25			USDA SR28 NDB 11529; density: USDA SR portion weights, from memory
sun-dried tomatoes	vegetable	dried tomatoes, sundried tomatoes	water 364/25, protein 1411/100, fat 297/100, saturates 213/500, carbohydrate 2173/50, sugars 3759/100, fibre 123/10, sodium 107/1000				?		23/100			USDA SR28 NDB 11955; density: USDA SR portion weights, from memory
tomato puree	vegetable	passata, sieved tomatoes	water 2197/25, protein 33/20, fat 21/100, saturates 29/1000, carbohydrate 177/25, sugars 483/100, fibre 19/10, sodium 7/250			yes						USDA SR28 NDB 11547
tomato paste	vegetable	tomato concentrate, double concentrate tomato	water 147/2, protein 108/25, fat 47/100, saturates 1/10, carbohydrate 1481/100, sugars 609/50, fibre 41/10, sodium 59/1000			yes			111/100			USDA SR28 NDB 11546; density: USDA SR portion weights, from memory
carrots	vegetable	grated carrots, raw carrots	water 8829/100, protein 93/100, fat 6/25, saturates 37/1000, carbohydrate 339/50, sugars 237/50, fibre 14/5, sodium 69/1000						23/50			USDA SR28 NDB 11124; density: USDA SR portion weights, from memory
beetroot	vegetable	beets, cooked beetroot, red beet, grated beetroot										common practice
pumpkin puree	vegetable	squash puree, canned pumpkin	water 8997/100, protein 11/10, fat 7/25, saturates 73/500, carbohydrate 519/100, sugars 33/10, fibre 29/10, sodium 1/200			yes			26/25			USDA SR28 NDB 11424; density: USDA SR portion weights, from memory
leeks	vegetable	sliced leeks										common practice
celeriac	vegetable	celery root, celeriac root	water 88				celery					celery of Annex II includes celeriac; about 88 g water in 100 g, from memory
celery	vegetable	celery sticks, celery stalks					celery					Regulation (EU) 1169/2011, Annex II
spinach	vegetable	spinach leaves							13/100			common practice; density: USDA SR portion weights, from memory
nettles	vegetable	nettle leaves										common practice
mushrooms	vegetable	sliced mushrooms										common practice
sweet peppers	vegetable	bell peppers, red peppers, capsicum										common practice
courgettes	vegetable	zucchini, grated courgette							13/25			common practice; density: USDA SR portion weights, from memory
sauerkraut	vegetable	drained sauerkraut							3/5			common practice; density: USDA SR portion weights, from memory
olives	vegetable	pitted olives, black olives, green olives, ripe olives, stoned olives, kalamata olives	water 7999/100, protein 21/25, fat 267/25, saturates 283/200, carbohydrate 153/50, sugars 0, fibre 16/5, salt 147/80						57/100			USDA SR28 NDB 09193; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
capers	vegetable	pickled capers										common practice
chives	vegetable	chopped chives, spring onions, scallions, green onions							1/5			common practice; density: common practice
water	water	tap water, warm water, cold water, boiling water, hot water, ice, iced water, ice water, crushed ice, lukewarm water	water 100						1			taken as water alone, 1 ml weighing 1 g
beer	liquid	ale, lager, wheat beer, dark beer, stout	water 2299/25, protein 23/50, fat 0, saturates 0, carbohydrate 71/20, sugars 0, fibre 0, alcohol 39/10, sodium 1/250				barley, gluten		1			USDA SR28 NDB 14003
cider	liquid	hard cider, dry cider	water 92				?		101/100			about 92 g water in 100 g, from memory; density: from memory
kvass	liquid	bread kvass	water 94				rye, gluten					about 94 g water in 100 g, from memory
wine	liquid	red wine, white wine	water 87				sulphites		99/100			about 87 g water in 100 g, from memory; density: from memory
rum	liquid	dark rum, brandy, kirsch, whiskey, whisky	water 60						47/50			at 40 per cent alcohol by volume, about 60 to 67 g water in 100 g, from memory; density: from memory
coffee	liquid	brewed coffee, espresso	water 99						1			brewed, about 99 g water in 100 g, from memory; density: from memory
distilled vinegar	liquid	spirit vinegar, white vinegar, white distilled vinegar	water 4739/50, protein 0, fat 0, saturates 0, carbohydrate 1/25, sugars 1/25, fibre 0, sodium 1/500						101/100			USDA SR28 NDB 02053
cider vinegar	liquid	apple cider vinegar	water 9381/100, protein 0, fat 0, saturates 0, carbohydrate 93/100, sugars 2/5, fibre 0, sodium 1/200						101/100			USDA SR28 NDB 02048
malt vinegar	liquid		water 95				barley, gluten					about 95 g water in 100 g, from memory
potato water	liquid	potato cooking water	water 99									common practice: water that potatoes were boiled in, taken as 99 g water in 100 g
coconut milk	liquid	canned coconut milk	water 73, fat 21						24/25			canned, about 73 g water and 21 g fat in 100 g, from memory; density: USDA SR portion weights, from memory
oat drink	liquid	oat milk	water 90				oats, gluten		103/100			about 90 g water in 100 g, from memory; density: common practice
soya drink	liquid	soy milk, soya milk, soy drink	water 93				soya		103/100			about 93 g water in 100 g, from memory; density: USDA SR portion weights, from memory
almond drink	liquid	almond milk	water 97				almond		101/100			about 97 g water in 100 g, from memory; density: common practice
milk	dairy	whole milk, full-fat milk, full cream milk, fresh milk, warm milk, cold milk, scalded milk, lukewarm milk	water 8813/100, protein 63/20, fat 327/100, saturates 373/200, carbohydrate 239/50, sugars 101/20, fibre 0, sodium 43/1000				milk		103/100			USDA SR28 NDB 01211
semi-skimmed milk	dairy	reduced-fat milk, half-fat milk, low-fat milk	water 446/5, protein 33/10, fat 99/50				milk		103/100			about 2 g fat in 100 g, from memory; density: USDA SR portion weights, from memory
skimmed milk	dairy	skim milk, nonfat milk, fat-free milk, non-fat milk	water 2271/25, protein 337/100, fat 2/25, saturates 51/1000, carbohydrate 124/25, sugars 509/100, fibre 0, sodium 21/500				milk		26/25			USDA SR28 NDB 01151
evaporated milk	dairy	unsweetened condensed milk	water 74				milk		107/100			about 74 g water in 100 g, from memory; density: USDA SR portion weights, from memory
sweetened condensed milk	dairy		water 27, sugars 54				milk					about 27 g water in 100 g, from memory
milk powder	dairy	skimmed milk powder, skim milk powder, nonfat dry milk, nonfat dry milk powder, non-fat dry milk, NFDM, dry milk, dried milk, milk solids, nonfat milk powder, dried skimmed milk, high-heat nonfat dry milk	water 79/25, protein 904/25, fat 77/100, saturates 499/1000, carbohydrate 2599/50, sugars 2599/50, fibre 0, sodium 107/200				milk		51/100			USDA SR28 NDB 01091
instant milk powder	dairy	instant nonfat dry milk, instant dry milk, instant skimmed milk powder	water 99/25, protein 351/10, fat 18/25, saturates 47/100, carbohydrate 5219/100, sugars 5219/100, fibre 0, sodium 549/1000				milk		29/100			USDA SR28 NDB 01155
whole milk powder	dairy	dried whole milk, full-fat milk powder, dry whole milk, full cream milk powder	water 247/100, protein 658/25, fat 2671/100, saturates 8371/500, carbohydrate 1921/50, sugars 1921/50, fibre 0, sodium 371/1000				milk		27/50			USDA SR28 NDB 01212
buttermilk	dairy	cultured buttermilk, low-fat buttermilk	water 9013/100, protein 331/100, fat 22/25, saturates 137/250, carbohydrate 479/100, sugars 479/100, fibre 0, sodium 19/100				milk		26/25			USDA SR28 NDB 01088
buttermilk powder	dairy	dried buttermilk, dry buttermilk	water 297/100, protein 343/10, fat 289/50, saturates 1799/500, carbohydrate 49, sugars 49, fibre 0, sodium 517/1000				milk		51/100			USDA SR28 NDB 01094
whey	dairy	sweet whey, fresh whey	water 93				milk		26/25			about 93 g water in 100 g, from memory; density: USDA SR portion weights, from memory
whey powder	dairy	dried whey, dry whey	water 3				milk					about 3 g water in 100 g, from memory
yoghurt	dairy	yogurt, natural yoghurt, plain yogurt, plain yoghurt, whole milk yoghurt, whole milk yogurt, yoghourt	water 879/10, protein 347/100, fat 13/4, saturates 262/125, carbohydrate 233/50, sugars 233/50, fibre 0, sodium 23/500				milk		26/25			USDA SR28 NDB 01116; density: USDA SR portion weights, from memory
strained yoghurt	dairy	Greek yoghurt, Greek yogurt, strained yogurt	water 81				milk		101/100			about 81 g water in 100 g, from memory; density: USDA SR portion weights, from memory
kefir	dairy		water 88				milk		103/100			about 88 g water in 100 g, from memory; density: USDA SR portion weights, from memory
quark	dairy	low-fat quark, curd cheese, fromage frais, fromage blanc	water 81				milk		26/25			low-fat, about 81 g water in 100 g, from memory; density: common practice
cottage cheese	dairy		water 79				milk		19/20			about 79 g water in 100 g, from memory; density: USDA SR portion weights, from memory
ricotta	dairy	ricotta cheese	water 717/10, protein 563/50, fat 649/50, saturates 1659/200, carbohydrate 76/25, sugars 27/100, fibre 0, sodium 21/250				milk		21/20			USDA SR28 NDB 01036
cream cheese	dairy	full-fat soft cheese	water 53, fat 34				milk		49/50			about 53 g water in 100 g, from memory; density: USDA SR portion weights, from memory
heavy cream	dairy	whipping cream, heavy whipping cream	water 5781/100, protein 71/25, fat 902/25, saturates 2879/125, carbohydrate 137/50, sugars 73/25, fibre 0, sodium 27/1000				milk		101/100			USDA SR28 NDB 01053
double cream	dairy		water 47, fat 48				milk		101/100			British double cream, at least 48 g fat in 100 g, from memory; density: USDA SR portion weights, from memory
single cream	dairy	light cream, coffee cream, table cream, pouring cream	water 7451/100, protein 74/25, fat 191/10, saturates 1272/125, carbohydrate 141/50, sugars 367/100, fibre 0, sodium 9/125				milk		101/100			USDA SR28 NDB 01050
half and half	dairy		water 80, fat 23/2				milk		51/50			about 80 g water in 100 g, from memory; density: USDA SR portion weights, from memory
soured cream	dairy	sour cream, smetana, smetena	water 7307/100, protein 61/25, fat 387/20, saturates 507/50, carbohydrate 463/100, sugars 341/100, fibre 0, sodium 31/1000				milk		81/100			USDA SR28 NDB 01056
creme fraiche	dairy		water 60, fat 35				milk		101/100			about 60 g water in 100 g, from memory; density: common practice
butter	fat	unsalted butter, sweet cream butter, sweet butter, lactic butter, cultured butter, dairy butter, soft butter, melted butter, cold butter, softened butter, diced butter	water 16, protein 17/20, fat 8111/100, saturates 50489/1000, carbohydrate 3/50, sugars 3/50, fibre 0, sodium 11/1000				milk		24/25			water: at most 16 g by Regulation (EU) 1308/2013, Annex VII (from memory); the rest USDA SR28 NDB 01145, which has 17.94 g water
salted butter	fat	lightly salted butter	water 1587/100, protein 17/20, fat 8111/100, saturates 6421/125, carbohydrate 3/50, sugars 3/50, fibre 0, salt 643/400				milk		24/25			USDA SR28 NDB 01001; salt is 2.5 times its sodium
dry butter	fat	lamination butter, tourage butter, butter sheets, roll-in butter	water 14, fat 84				milk		24/25			butter of 84 g fat in 100 g made for laminating, common practice
clarified butter	fat	ghee, butter oil, anhydrous butter, butterfat, browned butter	water 6/25, protein 7/25, fat 2487/25, saturates 15481/250, carbohydrate 0, sugars 0, fibre 0, sodium 1/500				milk		87/100			USDA SR28 NDB 01003
cheddar	other	cheddar cheese, grated cheddar, hard cheese, grated cheese	water 1851/50, protein 2287/100, fat 3331/100, saturates 18867/1000, carbohydrate 309/100, sugars 12/25, fibre 0, salt 653/400				milk		12/25			USDA SR28 NDB 01009; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
parmesan	other	parmesan cheese, grana, hard grating cheese	water 729/25, protein 143/4, fat 2583/100, saturates 1641/100, carbohydrate 161/50, sugars 4/5, fibre 0, salt 86/25				?		21/50			USDA SR28 NDB 01033; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
grated parmesan	other	grated parmesan cheese	water 453/20, protein 1421/50, fat 696/25, saturates 15371/1000, carbohydrate 1391/100, sugars 7/100, fibre 0, salt 451/100				?		21/50			USDA SR28 NDB 01032; salt is 2.5 times its sodium
gruyere	other	gruyere cheese	water 3319/100, protein 2981/100, fat 1617/50, saturates 18913/1000, carbohydrate 9/25, sugars 9/25, fibre 0, salt 357/200				milk		23/50			USDA SR28 NDB 01023; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
mozzarella	other	mozzarella cheese, low-moisture mozzarella, pizza mozzarella	water 4707/100, protein 95/4, fat 989/50, saturates 2259/200, carbohydrate 279/50, sugars 19/10, fibre 0, salt 333/200				milk		47/100			USDA SR28 NDB 01029; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
feta	other	feta cheese	water 2761/50, protein 1421/100, fat 532/25, saturates 7473/500, carbohydrate 409/100, sugars 409/100, fibre 0, salt 917/400				milk		63/100			USDA SR28 NDB 01019; salt is 2.5 times its sodium; density: USDA SR portion weights, from memory
blue cheese	other						milk		57/100			common practice; density: USDA SR portion weights, from memory
eggs	egg	whole eggs, large eggs, beaten egg, liquid egg, liquid whole egg, shell eggs, fresh eggs, hen's eggs, room temperature eggs	water 1523/20, protein 314/25, fat 951/100, saturates 1563/500, carbohydrate 18/25, sugars 37/100, fibre 0, sodium 71/500				egg			50		USDA SR28 NDB 01123; one as there, without shell or skin
egg yolks	egg	yolks, liquid egg yolk, liquid yolk, sugared yolk	water 5231/100, protein 793/50, fat 1327/50, saturates 9551/1000, carbohydrate 359/100, sugars 14/25, fibre 0, sodium 6/125				egg		103/100	17		USDA SR28 NDB 01125; one as there, without shell or skin
egg whites	egg	whites, albumen, liquid egg white	water 8757/100, protein 109/10, fat 17/100, saturates 0, carbohydrate 73/100, sugars 71/100, fibre 0, sodium 83/500				egg		103/100	33		USDA SR28 NDB 01124; one as there, without shell or skin
dried egg	egg	egg powder, whole egg powder, dried whole egg, dry egg, powdered egg, powdered whole egg	water 139/50, protein 961/20, fat 439/10, saturates 15069/1000, carbohydrate 113/100, sugars 14/25, fibre 0, sodium 119/250				egg		17/50			USDA SR28 NDB 01133
dried egg white	egg	egg white powder, dried albumen, meringue powder	water 8				egg					about 8 g water in 100 g, from memory
olive oil	fat	extra virgin olive oil, virgin olive oil, light olive oil	water 0, protein 0, fat 100, saturates 1726/125, carbohydrate 0, sugars 0, fibre 0, sodium 1/500						91/100			USDA SR28 NDB 04053
sunflower oil	fat	sunflower seed oil, cold-pressed sunflower oil, deodorised sunflower oil	water 0, protein 0, fat 100, saturates 103/10, carbohydrate 0, sugars 0, fibre 0, sodium 0						23/25			USDA SR28 NDB 04506
high-oleic sunflower oil	fat		water 0, protein 0, fat 100, saturates 9859/1000, carbohydrate 0, sugars 0, fibre 0, sodium 0						19/20			USDA SR28 NDB 04584
rapeseed oil	fat	canola oil, canola, colza oil, cold-pressed rapeseed oil	water 0, protein 0, fat 100, saturates 1473/200, carbohydrate 0, sugars 0, fibre 0, sodium 0						19/20			USDA SR28 NDB 04582
soya oil	fat	soybean oil, soy oil, soya bean oil	water 0, protein 0, fat 100, saturates 313/20, carbohydrate 0, sugars 0, fibre 0, sodium 0				soya		23/25			USDA SR28 NDB 04044
sesame oil	fat	toasted sesame oil	water 0, protein 0, fat 100, saturates 71/5, carbohydrate 0, sugars 0, fibre 0, sodium 0				sesame		23/25			USDA SR28 NDB 04058
pumpkin seed oil	fat	cold-pressed pumpkin seed oil	water 0, fat 100						23/25			common practice
walnut oil	fat		water 0, fat 100				walnut		23/25			common practice
linseed oil	fat	flaxseed oil	water 0, fat 100						23/25			common practice
maize oil	fat	corn oil	water 0, fat 100						23/25			common practice
coconut oil	fat	coconut fat, virgin coconut oil	water 3/100, protein 0, fat 991/10, saturates 165/2, sodium 0						23/25			USDA FDC 330458; density: USDA SR portion weights, from memory
palm fat	fat	palm oil, hardened palm fat	water 0, fat 100									common practice
lard	fat	rendered pork fat, pork lard, strutto, leaf lard	water 0, protein 0, fat 100, saturates 196/5, carbohydrate 0, sugars 0, fibre 0, sodium 0						87/100			USDA SR28 NDB 04002
beef dripping	fat	dripping, tallow, suet, beef suet	water 0, fat 100						87/100			common practice; density: USDA SR portion weights, from memory
goose fat	fat	duck fat, chicken fat, schmaltz	water 0, fat 100									common practice
shortening	fat	vegetable shortening, vegetable fat, white vegetable fat, emulsified shortening, hydrogenated shortening, all-purpose shortening, high-ratio shortening	water 0, protein 0, fat 9997/100, saturates 1249/50, carbohydrate 0, sugars 0, fibre 0, sodium 1/250				?		87/100			USDA SR28 NDB 04615
margarine	fat	baking margarine, block margarine, stick margarine, pastry margarine, cake margarine	water 413/25, protein 4/25, fat 8071/100, saturates 15189/1000, carbohydrate 7/10, sugars 0, fibre 0, salt 751/400				?		19/20			USDA SR28 NDB 04610; salt is 2.5 times its sodium
sugar	sweetener	white sugar, granulated sugar, caster sugar, castor sugar, superfine sugar, fine sugar, table sugar, cane sugar, beet sugar, crystal sugar, baker's sugar, fine granulated sugar, extra fine sugar	water 1/50, carbohydrate 4999/50, sugars 4999/50						17/20			sucrose, dry but for 0.02 g water: USDA SR28 NDB 19335
brown sugar	sweetener	light brown sugar, dark brown sugar, soft brown sugar, light soft brown sugar, dark soft brown sugar, muscovado, muscovado sugar, demerara sugar, raw cane sugar, raw sugar, turbinado sugar, turbinado	water 67/50, protein 3/25, fat 0, saturates 0, carbohydrate 9809/100, sugars 4851/50, fibre 0, sodium 7/250						93/100			USDA SR28 NDB 19334; density: USDA SR portion weights, from memory
icing sugar	sweetener	powdered sugar, confectioners' sugar, 10X sugar	water 23/100, protein 0, fat 0, saturates 0, carbohydrate 9977/100, sugars 9781/100, fibre 0, sodium 1/500						51/100			USDA SR28 NDB 19336
pearl sugar	sweetener	nib sugar, sugar nibs, hail sugar, decorating sugar, coarse sugar, Belgian pearl sugar, preserving sugar	water 1/50, carbohydrate 4999/50, sugars 4999/50									sucrose, dry but for 0.02 g water: USDA SR28 NDB 19335
vanilla sugar	sweetener		water 1/50, carbohydrate 4999/50, sugars 4999/50						17/20			common practice: sugar with a little vanilla; density: common practice
dextrose	sweetener	glucose powder, corn sugar, dextrose monohydrate	water 9, sugars 91									dextrose monohydrate is one molecule of water to one of sugar: 180.16 in 198.17 parts
honey	sweetener	clear honey, runny honey, blossom honey, forest honey, liquid honey	water 171/10, protein 3/10, fat 0, saturates 0, carbohydrate 411/5, sugars 2053/25, fibre 1/5, sodium 1/250						143/100			USDA SR28 NDB 19296
malt syrup	sweetener	malt extract syrup, barley malt syrup, liquid malt, liquid malt extract, barley malt extract, non-diastatic malt syrup, inactive malt syrup, malt extract	water 211/10, protein 31/5, fat 0, saturates 0, carbohydrate 713/10, sugars 713/10, fibre 0, sodium 7/200				barley, gluten		7/5			USDA SR28 NDB 19352
diastatic malt syrup	malt	active malt syrup, diastatic malt extract	water 211/10, sugars 713/10			yes	barley, gluten					water and sugars as malt syrup, USDA SR28 NDB 19352
beet syrup	sweetener	sugar beet syrup, beet molasses	water 22, sugars 66									about 78 g dry matter in 100 g, from memory
molasses	sweetener	blackstrap molasses, dark molasses, light molasses, cane molasses, unsulphured molasses, unsulfured molasses	water 2187/100, protein 0, fat 1/10, saturates 9/500, carbohydrate 7473/100, sugars 1868/25, fibre 0, sodium 37/1000						71/50			USDA SR28 NDB 19304
black treacle	sweetener		water 22						71/50			about 78 g dry matter in 100 g, from memory; density: from memory
golden syrup	sweetener	light treacle, refiners' syrup	water 18, sugars 79						143/100			about 18 g water in 100 g, from memory; density: from memory
maple syrup	sweetener		water 3239/100, protein 1/25, fat 3/50, saturates 7/1000, carbohydrate 1676/25, sugars 3023/50, fibre 0, sodium 3/250						27/20			USDA SR28 NDB 19353
corn syrup	sweetener	light corn syrup, glucose syrup, liquid glucose	water 2281/100, protein 0, fat 1/5, saturates 0, carbohydrate 7679/100, sugars 7677/100, fibre 0, sodium 31/500						36/25			USDA SR28 NDB 19350
invert syrup	sweetener	invert sugar, invert sugar syrup, trimoline	water 22, sugars 78									about 78 g dry matter in 100 g, from memory
agave syrup	sweetener	agave nectar, agave	water 23, sugars 68						69/50			about 23 g water in 100 g, from memory; density: from memory
rice syrup	sweetener	brown rice syrup	water 22						7/5			about 22 g water in 100 g, from memory; density: from memory
date syrup	sweetener	date molasses, silan	water 25, sugars 65						7/5			about 25 g water in 100 g, from memory; density: from memory
apple syrup	sweetener	apple butter, apple molasses, pear syrup	water 30									about 30 g water in 100 g, from memory
caramel colour	other	caramel color, burnt sugar, caramel colouring, caramel coloring					?					common practice
diastatic malt	malt	diastatic malt flour, active malt, active malt flour, enzyme-active malt, diastatic malt powder, enzyme-active malt flour, barley malt flour, active barley malt, diastatic barley malt, active malt powder	water 821/100, protein 257/25, fat 46/25, saturates 193/500, carbohydrate 356/5, sugars 4/5, fibre 71/10, sodium 11/1000				barley, gluten		17/25			USDA SR28 NDB 20131
rye malt	malt	active rye malt, diastatic rye malt, light rye malt, pale rye malt					rye, gluten					common practice
non-diastatic malt powder	sweetener	inactive malt powder, non-diastatic malt, inactive malt, dry malt extract, dried malt extract, nondiastatic malt powder, inactive malt flour	water 3				barley, gluten					common practice: dried malt extract, its enzymes killed; about 3 g water in 100 g, from memory
roasted malt	other	roasted barley malt, roast malt, dark malt, chocolate malt, black malt, roasted malt flour					barley, gluten					common practice: kilned so hot that no enzymes are left
red rye malt	other	red malt, fermented rye malt, fermented malt, solod, roasted rye malt, dark rye malt					rye, gluten					common practice: stewed and dried so hot that no enzymes are left
crystal malt	other	caramel malt, toffee malt					barley, gluten					common practice: stewed and kilned so hot that no enzymes are left
malted barley	grain	malted barley grains, crushed malted barley					barley, gluten					common practice
fresh yeast	yeast	compressed yeast, baker's yeast, cake yeast, fresh compressed yeast, baker's compressed yeast, block yeast, wet yeast	water 69, protein 42/5, fat 19/10, saturates 243/1000, carbohydrate 10, sugars 0, fibre 81/10, sodium 3/100						31/50			USDA SR28 NDB 18374; density: Cotswold Flour, grams to teaspoons, 3.1 g a level teaspoon
active dry yeast	yeast	active dried yeast, ADY, traditional dried yeast, dried active yeast	water 127/25, protein 1011/25, fat 761/100, saturates 1001/1000, carbohydrate 358/25, sugars 0, fibre 269/10, sodium 51/1000						81/100			USDA SR28 NDB 18375
instant yeast	yeast	instant dry yeast, instant dried yeast, IDY, instant active dry yeast, rapid-rise yeast, quick-rise yeast, bread machine yeast, easy-blend yeast, easy-blend dried yeast	water 5						16/25			about 5 g water in 100 g; 9.5 g a tablespoon, household tables; common practice
sweet-dough yeast	sweet-dough yeast	osmotolerant yeast, osmotolerant instant yeast, sweet-dough instant yeast, instant yeast for sweet doughs, osmotolerant instant dry yeast	water 5						16/25			instant yeast of a strain that bears sugar; common practice
fresh sweet-dough yeast	sweet-dough yeast	osmotolerant fresh yeast, fresh osmotolerant yeast, compressed sweet-dough yeast	water 69									water as fresh yeast, USDA SR28 NDB 18374; common practice
ripe rye starter	culture	rye starter, rye sour starter, rye sourdough starter, rye culture, medium rye starter, rye mother		medium rye flour 1/2, water 1/2			rye, gluten					common practice: kept on its own weight of water
ripe whole rye starter	culture	whole rye starter, wholemeal rye starter, whole rye culture		whole rye flour 1/2, water 1/2			rye, gluten					common practice: kept on its own weight of water
stiff rye starter	culture	firm rye starter		medium rye flour 5/8, water 3/8			rye, gluten					common practice
ripe wheat starter	culture	wheat starter, white starter, ripe white starter, white wheat starter, ripe levain starter, levain culture, wheat culture, white culture, liquid starter, ripe starter, mature white starter, wheat mother		white flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water
even starter	culture	starter of equal parts		white flour 1/2, water 1/2			wheat, gluten					common practice: as much flour as water by weight
ripe whole wheat starter	culture	whole wheat starter, wholemeal starter, wholewheat starter, whole wheat culture, wholemeal wheat starter		whole wheat flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water
ripe spelt starter	culture	spelt starter, spelt culture		spelt flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water
ripe einkorn starter	culture	einkorn starter		einkorn flour 1/2, water 1/2			wheat, gluten					common practice: kept on its own weight of water
stiff starter	culture	stiff levain starter, stiff wheat starter, firm starter, ripe stiff starter, lievito madre, pasta madre, stiff levain culture		white flour 2/3, water 1/3			wheat, gluten					common practice: 50 parts of water to 100 of flour
liquid levain starter	culture	liquid levain culture, liquid levain, ripe liquid levain starter		white flour 4/9, water 5/9			wheat, gluten					common practice: 125 parts of water to 100 of flour
ripe rice starter	culture	rice starter, gluten-free starter		brown rice flour 1/2, water 1/2								common practice: kept on its own weight of water
ripe buckwheat starter	culture	buckwheat starter		buckwheat flour 1/2, water 1/2								common practice: kept on its own weight of water
ripe teff starter	culture	teff starter, ersho, injera starter		teff flour 2/5, water 3/5								common practice
dried sourdough	other	dry sourdough, sourdough powder, rye sourdough powder					?					common practice: for taste only, nothing in it rises
salt	salt	fine salt, sea salt, table salt, cooking salt, rock salt, fine sea salt, kosher salt, flaky salt, coarse salt, pretzel salt, iodised salt, iodized salt	water 0, salt 100						61/50			taken as sodium chloride alone; USDA SR28 NDB 02047 has 0.2 g water; density from its spoon of 6 g
baking powder	raising agent	double-acting baking powder, phosphate baking powder	water 4, protein 1/10, fat 0, saturates 0, carbohydrate 239/10, sugars 0, fibre 1/5, sodium 7893/1000				?		93/100			USDA SR28 NDB 18370
bicarbonate of soda	raising agent	baking soda, bicarb, sodium bicarbonate, bread soda, bicarb of soda	water 1/5, protein 0, fat 0, saturates 0, carbohydrate 0, sugars 0, fibre 0, sodium 684/25						93/100			USDA SR28 NDB 18372
cream of tartar	raising agent	potassium bitartrate, tartar	water 17/10, protein 0, fat 0, saturates 0, carbohydrate 613/10, sugars 0, fibre 1/5, sodium 13/250						61/100			USDA SR28 NDB 18373
baker's ammonia	raising agent	ammonium carbonate, hartshorn, ammonium bicarbonate, salt of hartshorn										common practice: for thin dry biscuits only
potash	raising agent	potassium carbonate, pearl ash										common practice
lye	lye	sodium hydroxide, caustic soda, food-grade lye, lye beads, food-grade sodium hydroxide										dry sodium hydroxide; common practice
lye solution	lye			water 24/25, lye 1/25								common practice: 3 to 4 per cent for pretzels
washing soda	lye	sodium carbonate, baked soda, soda crystals, kansui powder										sodium carbonate; common practice
ascorbic acid	other	vitamin C, vitamin C powder, E300										common practice
citric acid	other	E330										common practice
lactic acid	other	E270										common practice
calcium propionate	other	E282, bread preservative, preservative, propionate										common practice
yeast food	other	mineral yeast food, dough conditioner salts					?					common practice
bread improver	other	improver, dough improver, dough conditioner, emulsifier, DATEM, dough strengthener					?					common practice: read its own label, for soya, wheat, milk and malt
soya lecithin	other	soy lecithin					soya					common practice
sunflower lecithin	other	rapeseed lecithin										common practice
gelatine	other	gelatin, leaf gelatine, sheet gelatin					?		17/25			common practice; density: common practice
pectin	other											common practice
inulin	other	chicory fibre, chicory fiber										common practice
caraway	spice	caraway seed, ground caraway, whole caraway	water 987/100, protein 1977/100, fat 1459/100, saturates 31/50, carbohydrate 119/10, sugars 16/25, fibre 38, sodium 17/1000						43/100			USDA SR28 NDB 02005
fennel seed	spice	fennel, ground fennel, ground fennel seed	water 881/100, protein 79/5, fat 1487/100, saturates 12/25, carbohydrate 1249/100, fibre 199/5, sodium 11/125						41/100			USDA SR28 NDB 02018; density: USDA SR portion weights, from memory
coriander seed	spice	coriander, ground coriander, cracked coriander, crushed coriander, coriander seed ground	water 443/50, protein 1237/100, fat 1777/100, saturates 99/100, carbohydrate 1309/100, fibre 419/10, sodium 7/200						37/100			USDA SR28 NDB 02013
cumin seed	spice	cumin, ground cumin	water 403/50, protein 1781/100, fat 2227/100, saturates 307/200, carbohydrate 1687/50, sugars 9/4, fibre 21/2, sodium 21/125						43/100			USDA SR28 NDB 02014; density: USDA SR portion weights, from memory
anise seed	spice	aniseed, anise, ground aniseed, ground anise	water 477/50, protein 88/5, fat 159/10, saturates 293/500, carbohydrate 1771/50, fibre 73/5, sodium 2/125									USDA SR28 NDB 02002
cardamom	spice	ground cardamom, cardamom seed, green cardamom, black cardamom, cracked cardamom	water 207/25, protein 269/25, fat 67/10, saturates 17/25, carbohydrate 4047/100, fibre 28, sodium 9/500						41/100			USDA SR28 NDB 02006; density: USDA SR portion weights, from memory
cinnamon	spice	ground cinnamon, cassia	water 529/50, protein 399/100, fat 31/25, saturates 69/200, carbohydrate 2749/100, sugars 217/100, fibre 531/10, sodium 1/100						53/100			USDA SR28 NDB 02010
black pepper	spice	pepper, ground black pepper, cracked pepper, ground pepper	water 623/50, protein 1039/100, fat 163/50, saturates 174/125, carbohydrate 773/20, sugars 16/25, fibre 253/10, sodium 1/50						47/100			USDA SR28 NDB 02030; density: USDA SR portion weights, from memory
mustard seed	spice	mustard powder, ground mustard, dry mustard, mustard flour, yellow mustard seed, black mustard seed	water 527/100, protein 652/25, fat 906/25, saturates 1989/1000, carbohydrate 1589/100, sugars 679/100, fibre 61/5, sodium 13/1000				mustard		41/100			USDA SR28 NDB 02024
mustard	spice	prepared mustard, yellow mustard	water 2093/25, protein 187/50, fat 167/50, saturates 107/500, carbohydrate 183/100, sugars 23/25, fibre 4, salt 69/25			yes	mustard		21/20			USDA SR28 NDB 02046; salt is 2.5 times its sodium
rosemary	spice	dried rosemary, fresh rosemary, chopped rosemary, rosemary leaves	water 931/100, protein 122/25, fat 761/50, saturates 7371/1000, carbohydrate 1073/50, fibre 213/5, sodium 1/20						6/25			USDA SR28 NDB 02036
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
za'atar	spice	zatar					sesame					common practice
curry powder	spice						?					common practice; may hold mustard and celery
celery seed	spice	celery salt					celery					common practice
vanilla	spice	vanilla pod, vanilla bean, vanilla paste, vanilla extract, vanilla essence, vanilla seeds							17/20			common practice; density: USDA SR portion weights, from memory
orange blossom water	liquid	orange flower water, rose water, rosewater	water 100									taken as water alone, common practice
mahleb	spice	mahlab, mahlepi										common practice
mastic	spice	mastiha										common practice
basil	spice	dried basil, fresh basil, basil leaves							7/50			common practice; density: USDA SR portion weights, from memory
parsley	spice	fresh parsley, dried parsley, chopped parsley							1/4			common practice; density: USDA SR portion weights of chopped fresh leaves, from memory
almond extract	spice	almond essence, bitter almond extract					?		22/25			common practice; it may be made of almonds or of fruit kernels: read its label; density from memory
instant coffee	spice	coffee powder, espresso powder, instant coffee powder, instant espresso							1/5			common practice; density: USDA SR portion weights, from memory
food colouring	other	food coloring, food dye					?					common practice; read its label
cocoa	other	cocoa powder, unsweetened cocoa, natural cocoa, baking cocoa	water 3, protein 98/5, fat 137/10, saturates 807/100, carbohydrate 209/10, sugars 7/4, fibre 37, sodium 21/1000						9/25			USDA SR28 NDB 19165
alkalised cocoa	other	Dutch-process cocoa, dutched cocoa, alkalized cocoa, Dutch cocoa, black cocoa	water 27/10, protein 181/10, fat 131/10, saturates 194/25, carbohydrate 57/2, sugars 44/25, fibre 149/5, sodium 19/1000						9/25			USDA SR28 NDB 19166
dark chocolate	other	bittersweet chocolate, chocolate chips, dark chocolate chips, chocolate drops, chocolate batons, chocolate sticks, semisweet chocolate, couverture, chocolate	water 5/4, protein 153/25, fat 3831/100, saturates 22031/1000, carbohydrate 2221/50, sugars 3671/100, fibre 8, sodium 1/100				?		71/100			USDA SR28 NDB 19903; density: USDA SR portion weights, from memory
very dark chocolate	other	extra dark chocolate	water 137/100, protein 779/100, fat 4263/100, saturates 24489/1000, carbohydrate 35, sugars 2399/100, fibre 109/10, sodium 1/50				?					USDA SR28 NDB 19904
plain chocolate	other	plain dark chocolate	water 97/100, protein 122/25, fat 782/25, saturates 18519/1000, carbohydrate 5417/100, sugars 479/10, fibre 7, sodium 3/125				?					USDA SR28 NDB 19902
unsweetened chocolate	other	baking chocolate, cocoa mass	water 67/50, protein 358/25, fat 5231/100, saturates 32277/1000, carbohydrate 591/50, sugars 91/100, fibre 83/5, sodium 3/125				?					USDA SR28 NDB 19078
milk chocolate	other	milk chocolate chips					milk					common practice; may hold soya
white chocolate	other	white chocolate chips					milk		18/25			common practice; may hold soya; density: USDA SR portion weights, from memory
cocoa nibs	other	cacao nibs										common practice
old bread	bread	stale bread, old bread soaked, altus, yesterday's bread, dry bread, bread leftovers, returned bread					?					common practice: what is in it is what was in the bread it comes from
old rye bread	bread	rye altus, stale rye bread, old rye					rye, gluten					common practice: what is in it is what was in the bread it comes from
breadcrumbs	bread	bread crumbs, dried breadcrumbs, dry breadcrumbs, panko, toasted breadcrumbs, rusk, rusk crumbs					?		23/50			common practice: what is in it is what was in the bread it comes from; density: USDA SR portion weights, from memory
tahini	seed	sesame paste, tahini paste					sesame		101/100			common practice; density: USDA SR portion weights, from memory
peanut butter	nut						peanut		109/100			common practice; density: USDA SR portion weights, from memory
miso	other	miso paste					soya					common practice; may hold barley
soy sauce	liquid	soya sauce, tamari	water 71, salt 14				soya, wheat, gluten					about 71 g water and 14 g salt in 100 g, from memory
bacon	other	diced bacon, lardons, speck, smoked bacon										common practice
ham	other	cooked ham, diced ham, prosciutto							59/100			common practice; density: USDA SR portion weights, from memory
sausage	other	salami, chorizo					?					common practice
pesto	other						?		53/50			common practice; holds milk and nuts; density: common practice
squid ink	other	cuttlefish ink					molluscs					common practice
activated charcoal	other	vegetable charcoal, vegetable carbon										common practice
nutritional yeast	other	yeast flakes, inactive yeast, deactivated yeast										common practice: dead yeast, for taste or to slacken a dough
wood ash	other											common practice
custard	other	pastry cream, crème pâtissière, custard cream					milk, egg					common practice
malted milk powder	other	malted milk					milk, barley, wheat, gluten		11/20			common practice; density: USDA SR portion weights, from memory
cornflakes	grain	corn flakes					barley, gluten		3/25			common practice: mostly made with barley malt, read the label; density: USDA SR portion weights, from memory
muesli	grain	granola, muesli mix					?		2/5			common practice: read its label for nuts and milk
caramel	other	caramel sauce, toffee sauce, dulce de leche					milk		13/10			common practice; density from memory
mincemeat	fruit	fruit mincemeat, mince pie filling					?		6/5			common practice: British fruit mincemeat, read its label; density from memory
sprinkles	other	hundreds and thousands, nonpareils, sugar strands					?					common practice; read its label
strawberries	fruit	fresh strawberries							16/25			common practice; density: USDA SR portion weights, from memory
lemons	fruit	whole lemons										common practice
oranges	fruit	whole oranges										common practice
candied ginger	fruit	crystallised ginger, crystallized ginger, stem ginger					?		7/10			common practice; it may be sulphured: read its label
kimchi	vegetable						?		63/100			common practice: it may hold fish, shellfish and wheat, read its label; density: USDA SR portion weights, from memory
tea	liquid	brewed tea, cold tea, black tea	water 997/10						1			taken as water but for what is dissolved in it, from memory
mascarpone	dairy	mascarpone cheese	water 46, fat 44				milk		1			about 46 g water and 44 g fat in 100 g, from memory
emmental	other	emmenthal, Swiss cheese, grated emmental					milk		23/50			common practice; density: USDA SR portion weights of grated cheese, from memory
goat cheese	other	chevre					milk					common practice
halloumi	other	halloumi cheese					milk					common practice
chocolate spread	other	hazelnut spread, chocolate hazelnut spread					?		5/4			common practice: mostly holds hazelnut, milk and soya, read its label; density from memory
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
?	granary flour	malted flour, malted wheat flakes	write what is in it: flour and malted flakes are two lines
?	gluten-free flour	rice flour, maize starch, tapioca starch	a blend has a maker; write its parts in a larder of your own
?	starch	maize starch, potato starch, wheat starch, tapioca starch	they set at different heats, and wheat starch is an allergen
?	soya	soya flour, soya drink, soya oil	flour, drink or oil
?	yeast	fresh yeast, active dry yeast, instant yeast, sweet-dough yeast	one part of instant does the work of three parts of fresh
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
semolina rimacinata	23
rimacinata	23
semola	23
re milled semolina	23
durum flour	24
durum wheat flour	24
durum	24
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
pumpkin	109
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
flaked almond	122
slivered almond	122
sliced almond	122
ground almond	123
almond flour	123
almond meal	123
pecan	124
pecan nut	124
pecan halve	124
toasted pecan	124
pistachio	125
pistachio nut	125
pistachio kernel	125
cashew	126
cashew nut	126
macadamia	127
macadamia nut	127
brazil nut	128
pine nut	129
pine kernel	129
pignoli	129
peanut	130
groundnut	130
roasted peanut	130
chestnut	131
cooked chestnut	131
peeled chestnut	131
desiccated coconut	132
dried coconut	132
unsweetened coconut	132
shredded coconut	132
coconut flour	133
marzipan	134
almond paste	134
praline paste	135
hazelnut paste	135
hazelnut praline	135
raisin	136
seedless raisin	136
dark raisin	136
sultana	137
golden raisin	137
golden sultana	137
currant	138
dried currant	138
zante currant	138
date	139
dried date	139
pitted date	139
chopped date	139
dried fig	140
fig	140
dried apricot	141
dried cranberry	142
cranberry	142
sweetened dried cranberry	142
prune	143
dried plum	143
pitted prune	143
dried pear	144
dried apple	145
apple ring	145
dried cherry	146
sour cherry dried	146
mixed dried fruit	147
mixed vine fruit	147
vine fruit	147
candied fruit	148
glace fruit	148
tutti frutti	148
candied peel	149
mixed peel	149
candied orange peel	149
candied lemon peel	149
candied orange	149
candied citrus peel	149
orangeat	149
citronat	149
succade	149
glace cherry	150
candied cherry	150
maraschino cherry	150
apple	151
peeled apple	151
diced apple	151
cooking apple	151
pear	152
fresh pear	152
blueberry	153
bilberry	153
fresh blueberry	153
frozen blueberry	153
raspberry	154
frozen raspberry	154
cherry	155
fresh cherry	155
pitted cherry	155
sour cherry	155
plum	156
damson	156
banana	157
ripe banana	157
mashed banana	157
lemon zest	158
lemon peel	158
grated lemon peel	158
lemon rind	158
orange zest	159
orange peel	159
grated orange peel	159
orange rind	159
apple puree	160
apple sauce	160
applesauce	160
stewed apple	160
lemon juice	161
fresh lemon juice	161
orange juice	162
fresh orange juice	162
apple juice	163
sweet cider	163
jam	164
fruit spread	164
jelly jam	164
marmalade	164
boiled potato	165
cooked potato	165
potato	165
mashed potato	165
cooked mashed potato	165
riced potato	165
baked potato	166
roast potato	166
raw potato	167
grated potato	167
grated raw potato	167
sweet potato	168
cooked sweet potato	168
mashed sweet potato	168
onion	169
raw onion	169
sliced onion	169
chopped onion	169
yellow onion	169
fried onion	170
roasted onion	170
caramelised onion	170
caramelized onion	170
crisp onion	170
dried onion	171
onion flake	171
dehydrated onion	171
garlic	172
raw garlic	172
garlic clove	172
peeled garlic	172
roasted garlic	173
roast garlic	173
tomato	174
cherry tomato	174
fresh tomato	174
chopped tomato	174
sun dried tomato	175
dried tomato	175
sundried tomato	175
tomato puree	176
passata	176
sieved tomato	176
tomato paste	177
tomato concentrate	177
double concentrate tomato	177
carrot	178
grated carrot	178
raw carrot	178
beetroot	179
beet	179
cooked beetroot	179
red beet	179
grated beetroot	179
pumpkin puree	180
squash puree	180
canned pumpkin	180
leek	181
sliced leek	181
celeriac	182
celery root	182
celeriac root	182
celery	183
celery stick	183
celery stalk	183
spinach	184
spinach leave	184
nettle	185
nettle leave	185
mushroom	186
sliced mushroom	186
sweet pepper	187
bell pepper	187
red pepper	187
capsicum	187
courgette	188
zucchini	188
grated courgette	188
sauerkraut	189
drained sauerkraut	189
olive	190
pitted olive	190
black olive	190
green olive	190
ripe olive	190
stoned olive	190
kalamata olive	190
caper	191
pickled caper	191
chive	192
chopped chive	192
spring onion	192
scallion	192
green onion	192
water	193
tap water	193
warm water	193
cold water	193
boiling water	193
hot water	193
ice	193
iced water	193
ice water	193
crushed ice	193
lukewarm water	193
beer	194
ale	194
lager	194
wheat beer	194
dark beer	194
stout	194
cider	195
hard cider	195
dry cider	195
kvass	196
bread kvass	196
wine	197
red wine	197
white wine	197
rum	198
dark rum	198
brandy	198
kirsch	198
whiskey	198
whisky	198
coffee	199
brewed coffee	199
espresso	199
distilled vinegar	200
spirit vinegar	200
white vinegar	200
white distilled vinegar	200
cider vinegar	201
apple cider vinegar	201
malt vinegar	202
potato water	203
potato cooking water	203
coconut milk	204
canned coconut milk	204
oat drink	205
oat milk	205
soya drink	206
soy milk	206
soya milk	206
soy drink	206
almond drink	207
almond milk	207
milk	208
whole milk	208
full fat milk	208
full cream milk	208
fresh milk	208
warm milk	208
cold milk	208
scalded milk	208
lukewarm milk	208
semi skimmed milk	209
reduced fat milk	209
half fat milk	209
low fat milk	209
skimmed milk	210
skim milk	210
nonfat milk	210
fat free milk	210
non fat milk	210
evaporated milk	211
unsweetened condensed milk	211
sweetened condensed milk	212
milk powder	213
skimmed milk powder	213
skim milk powder	213
nonfat dry milk	213
nonfat dry milk powder	213
non fat dry milk	213
nfdm	213
dry milk	213
dried milk	213
milk solid	213
nonfat milk powder	213
dried skimmed milk	213
high heat nonfat dry milk	213
instant milk powder	214
instant nonfat dry milk	214
instant dry milk	214
instant skimmed milk powder	214
whole milk powder	215
dried whole milk	215
full fat milk powder	215
dry whole milk	215
full cream milk powder	215
buttermilk	216
cultured buttermilk	216
low fat buttermilk	216
buttermilk powder	217
dried buttermilk	217
dry buttermilk	217
whey	218
sweet whey	218
fresh whey	218
whey powder	219
dried whey	219
dry whey	219
yoghurt	220
yogurt	220
natural yoghurt	220
plain yogurt	220
plain yoghurt	220
whole milk yoghurt	220
whole milk yogurt	220
yoghourt	220
strained yoghurt	221
greek yoghurt	221
greek yogurt	221
strained yogurt	221
kefir	222
quark	223
low fat quark	223
curd cheese	223
fromage frais	223
fromage blanc	223
cottage cheese	224
ricotta	225
ricotta cheese	225
cream cheese	226
full fat soft cheese	226
heavy cream	227
whipping cream	227
heavy whipping cream	227
double cream	228
single cream	229
light cream	229
coffee cream	229
table cream	229
pouring cream	229
half and half	230
soured cream	231
sour cream	231
smetana	231
smetena	231
creme fraiche	232
butter	233
unsalted butter	233
sweet cream butter	233
sweet butter	233
lactic butter	233
cultured butter	233
dairy butter	233
soft butter	233
melted butter	233
cold butter	233
softened butter	233
diced butter	233
salted butter	234
lightly salted butter	234
dry butter	235
lamination butter	235
tourage butter	235
butter sheet	235
roll in butter	235
clarified butter	236
ghee	236
butter oil	236
anhydrous butter	236
butterfat	236
browned butter	236
cheddar	237
cheddar cheese	237
grated cheddar	237
hard cheese	237
grated cheese	237
parmesan	238
parmesan cheese	238
grana	238
hard grating cheese	238
grated parmesan	239
grated parmesan cheese	239
gruyere	240
gruyere cheese	240
mozzarella	241
mozzarella cheese	241
low moisture mozzarella	241
pizza mozzarella	241
feta	242
feta cheese	242
blue cheese	243
egg	244
whole egg	244
large egg	244
beaten egg	244
liquid egg	244
liquid whole egg	244
shell egg	244
fresh egg	244
hen egg	244
room temperature egg	244
egg yolk	245
yolk	245
liquid egg yolk	245
liquid yolk	245
sugared yolk	245
egg white	246
white	246
albumen	246
liquid egg white	246
dried egg	247
egg powder	247
whole egg powder	247
dried whole egg	247
dry egg	247
powdered egg	247
powdered whole egg	247
dried egg white	248
egg white powder	248
dried albumen	248
meringue powder	248
olive oil	249
extra virgin olive oil	249
virgin olive oil	249
light olive oil	249
sunflower oil	250
sunflower seed oil	250
cold pressed sunflower oil	250
deodorised sunflower oil	250
high oleic sunflower oil	251
rapeseed oil	252
canola oil	252
canola	252
colza oil	252
cold pressed rapeseed oil	252
soya oil	253
soybean oil	253
soy oil	253
soya bean oil	253
sesame oil	254
toasted sesame oil	254
pumpkin seed oil	255
cold pressed pumpkin seed oil	255
walnut oil	256
linseed oil	257
flaxseed oil	257
maize oil	258
corn oil	258
coconut oil	259
coconut fat	259
virgin coconut oil	259
palm fat	260
palm oil	260
hardened palm fat	260
lard	261
rendered pork fat	261
pork lard	261
strutto	261
leaf lard	261
beef dripping	262
dripping	262
tallow	262
suet	262
beef suet	262
goose fat	263
duck fat	263
chicken fat	263
schmaltz	263
shortening	264
vegetable shortening	264
vegetable fat	264
white vegetable fat	264
emulsified shortening	264
hydrogenated shortening	264
all purpose shortening	264
high ratio shortening	264
margarine	265
baking margarine	265
block margarine	265
stick margarine	265
pastry margarine	265
cake margarine	265
sugar	266
white sugar	266
granulated sugar	266
caster sugar	266
castor sugar	266
superfine sugar	266
fine sugar	266
table sugar	266
cane sugar	266
beet sugar	266
crystal sugar	266
baker sugar	266
fine granulated sugar	266
extra fine sugar	266
brown sugar	267
light brown sugar	267
dark brown sugar	267
soft brown sugar	267
light soft brown sugar	267
dark soft brown sugar	267
muscovado	267
muscovado sugar	267
demerara sugar	267
raw cane sugar	267
raw sugar	267
turbinado sugar	267
turbinado	267
icing sugar	268
powdered sugar	268
confectioner sugar	268
10x sugar	268
pearl sugar	269
nib sugar	269
sugar nib	269
hail sugar	269
decorating sugar	269
coarse sugar	269
belgian pearl sugar	269
preserving sugar	269
vanilla sugar	270
dextrose	271
glucose powder	271
corn sugar	271
dextrose monohydrate	271
honey	272
clear honey	272
runny honey	272
blossom honey	272
forest honey	272
liquid honey	272
malt syrup	273
malt extract syrup	273
barley malt syrup	273
liquid malt	273
liquid malt extract	273
barley malt extract	273
non diastatic malt syrup	273
inactive malt syrup	273
malt extract	273
diastatic malt syrup	274
active malt syrup	274
diastatic malt extract	274
beet syrup	275
sugar beet syrup	275
beet molasse	275
molasse	276
blackstrap molasse	276
dark molasse	276
light molasse	276
cane molasse	276
unsulphured molasse	276
unsulfured molasse	276
black treacle	277
golden syrup	278
light treacle	278
refiner syrup	278
maple syrup	279
corn syrup	280
light corn syrup	280
glucose syrup	280
liquid glucose	280
invert syrup	281
invert sugar	281
invert sugar syrup	281
trimoline	281
agave syrup	282
agave nectar	282
agave	282
rice syrup	283
brown rice syrup	283
date syrup	284
date molasse	284
silan	284
apple syrup	285
apple butter	285
apple molasse	285
pear syrup	285
caramel colour	286
caramel color	286
burnt sugar	286
caramel colouring	286
caramel coloring	286
diastatic malt	287
diastatic malt flour	287
active malt	287
active malt flour	287
enzyme active malt	287
diastatic malt powder	287
enzyme active malt flour	287
barley malt flour	287
active barley malt	287
diastatic barley malt	287
active malt powder	287
rye malt	288
active rye malt	288
diastatic rye malt	288
light rye malt	288
pale rye malt	288
non diastatic malt powder	289
inactive malt powder	289
non diastatic malt	289
inactive malt	289
dry malt extract	289
dried malt extract	289
nondiastatic malt powder	289
inactive malt flour	289
roasted malt	290
roasted barley malt	290
roast malt	290
dark malt	290
chocolate malt	290
black malt	290
roasted malt flour	290
red rye malt	291
red malt	291
fermented rye malt	291
fermented malt	291
solod	291
roasted rye malt	291
dark rye malt	291
crystal malt	292
caramel malt	292
toffee malt	292
malted barley	293
malted barley grain	293
crushed malted barley	293
fresh yeast	294
compressed yeast	294
baker yeast	294
cake yeast	294
fresh compressed yeast	294
baker compressed yeast	294
block yeast	294
wet yeast	294
active dry yeast	295
active dried yeast	295
ady	295
traditional dried yeast	295
dried active yeast	295
instant yeast	296
instant dry yeast	296
instant dried yeast	296
idy	296
instant active dry yeast	296
rapid rise yeast	296
quick rise yeast	296
bread machine yeast	296
easy blend yeast	296
easy blend dried yeast	296
sweet dough yeast	297
osmotolerant yeast	297
osmotolerant instant yeast	297
sweet dough instant yeast	297
instant yeast for sweet dough	297
osmotolerant instant dry yeast	297
fresh sweet dough yeast	298
osmotolerant fresh yeast	298
fresh osmotolerant yeast	298
compressed sweet dough yeast	298
ripe rye starter	299
rye starter	299
rye sour starter	299
rye sourdough starter	299
rye culture	299
medium rye starter	299
rye mother	299
ripe whole rye starter	300
whole rye starter	300
wholemeal rye starter	300
whole rye culture	300
stiff rye starter	301
firm rye starter	301
ripe wheat starter	302
wheat starter	302
white starter	302
ripe white starter	302
white wheat starter	302
ripe levain starter	302
levain culture	302
wheat culture	302
white culture	302
liquid starter	302
ripe starter	302
mature white starter	302
wheat mother	302
even starter	303
starter of equal part	303
ripe whole wheat starter	304
whole wheat starter	304
wholemeal starter	304
wholewheat starter	304
whole wheat culture	304
wholemeal wheat starter	304
ripe spelt starter	305
spelt starter	305
spelt culture	305
ripe einkorn starter	306
einkorn starter	306
stiff starter	307
stiff levain starter	307
stiff wheat starter	307
firm starter	307
ripe stiff starter	307
lievito madre	307
pasta madre	307
stiff levain culture	307
liquid levain starter	308
liquid levain culture	308
liquid levain	308
ripe liquid levain starter	308
ripe rice starter	309
rice starter	309
gluten free starter	309
ripe buckwheat starter	310
buckwheat starter	310
ripe teff starter	311
teff starter	311
ersho	311
injera starter	311
dried sourdough	312
dry sourdough	312
sourdough powder	312
rye sourdough powder	312
salt	313
fine salt	313
sea salt	313
table salt	313
cooking salt	313
rock salt	313
fine sea salt	313
kosher salt	313
flaky salt	313
coarse salt	313
pretzel salt	313
iodised salt	313
iodized salt	313
baking powder	314
double acting baking powder	314
phosphate baking powder	314
bicarbonate of soda	315
baking soda	315
bicarb	315
sodium bicarbonate	315
bread soda	315
bicarb of soda	315
cream of tartar	316
potassium bitartrate	316
tartar	316
baker ammonia	317
ammonium carbonate	317
hartshorn	317
ammonium bicarbonate	317
salt of hartshorn	317
potash	318
potassium carbonate	318
pearl ash	318
lye	319
sodium hydroxide	319
caustic soda	319
food grade lye	319
lye bead	319
food grade sodium hydroxide	319
lye solution	320
washing soda	321
sodium carbonate	321
baked soda	321
soda crystal	321
kansui powder	321
ascorbic acid	322
vitamin c	322
vitamin c powder	322
e300	322
citric acid	323
e330	323
lactic acid	324
e270	324
calcium propionate	325
e282	325
bread preservative	325
preservative	325
propionate	325
yeast food	326
mineral yeast food	326
dough conditioner salt	326
bread improver	327
improver	327
dough improver	327
dough conditioner	327
emulsifier	327
datem	327
dough strengthener	327
soya lecithin	328
soy lecithin	328
sunflower lecithin	329
rapeseed lecithin	329
gelatine	330
gelatin	330
leaf gelatine	330
sheet gelatin	330
pectin	331
inulin	332
chicory fibre	332
chicory fiber	332
caraway	333
caraway seed	333
ground caraway	333
whole caraway	333
fennel seed	334
fennel	334
ground fennel	334
ground fennel seed	334
coriander seed	335
coriander	335
ground coriander	335
cracked coriander	335
crushed coriander	335
coriander seed ground	335
cumin seed	336
cumin	336
ground cumin	336
anise seed	337
aniseed	337
anise	337
ground aniseed	337
ground anise	337
cardamom	338
ground cardamom	338
cardamom seed	338
green cardamom	338
black cardamom	338
cracked cardamom	338
cinnamon	339
ground cinnamon	339
cassia	339
black pepper	340
pepper	340
ground black pepper	340
cracked pepper	340
ground pepper	340
mustard seed	341
mustard powder	341
ground mustard	341
dry mustard	341
mustard flour	341
yellow mustard seed	341
black mustard seed	341
mustard	342
prepared mustard	342
yellow mustard	342
rosemary	343
dried rosemary	343
fresh rosemary	343
chopped rosemary	343
rosemary leave	343
thyme	344
dried thyme	344
fresh thyme	344
oregano	345
dried oregano	345
marjoram	345
sage	346
fresh sage	346
dried sage	346
sage leave	346
dill	347
fresh dill	347
dill weed	347
dill tip	347
dried dill	347
dill seed	347
bread clover	348
blue fenugreek	348
trigonella	348
fenugreek	349
fenugreek seed	349
ground fenugreek	349
star anise	350
ground star anise	350
nutmeg	351
ground nutmeg	351
mace	351
grated nutmeg	351
clove	352
ground clove	352
allspice	353
ground allspice	353
pimento	353
ginger	354
ground ginger	354
fresh ginger	354
grated ginger	354
mixed spice	355
gingerbread spice	355
pumpkin pie spice	355
lebkuchen spice	355
speculaa spice	355
bread spice	356
brotgewurz	356
saffron	357
saffron thread	357
turmeric	358
ground turmeric	358
paprika	359
sweet paprika	359
smoked paprika	359
chilli	360
chili	360
chilli flake	360
chili flake	360
red pepper flake	360
chile flake	360
cayenne	360
jalapeno	360
zaatar	361
zatar	361
curry powder	362
celery seed	363
celery salt	363
vanilla	364
vanilla pod	364
vanilla bean	364
vanilla paste	364
vanilla extract	364
vanilla essence	364
vanilla seed	364
orange blossom water	365
orange flower water	365
rose water	365
rosewater	365
mahleb	366
mahlab	366
mahlepi	366
mastic	367
mastiha	367
basil	368
dried basil	368
fresh basil	368
basil leave	368
parsley	369
fresh parsley	369
dried parsley	369
chopped parsley	369
almond extract	370
almond essence	370
bitter almond extract	370
instant coffee	371
coffee powder	371
espresso powder	371
instant coffee powder	371
instant espresso	371
food colouring	372
food coloring	372
food dye	372
cocoa	373
cocoa powder	373
unsweetened cocoa	373
natural cocoa	373
baking cocoa	373
alkalised cocoa	374
dutch process cocoa	374
dutched cocoa	374
alkalized cocoa	374
dutch cocoa	374
black cocoa	374
dark chocolate	375
bittersweet chocolate	375
chocolate chip	375
dark chocolate chip	375
chocolate drop	375
chocolate baton	375
chocolate stick	375
semisweet chocolate	375
couverture	375
chocolate	375
very dark chocolate	376
extra dark chocolate	376
plain chocolate	377
plain dark chocolate	377
unsweetened chocolate	378
baking chocolate	378
cocoa mass	378
milk chocolate	379
milk chocolate chip	379
white chocolate	380
white chocolate chip	380
cocoa nib	381
cacao nib	381
old bread	382
stale bread	382
old bread soaked	382
altus	382
yesterday bread	382
dry bread	382
bread leftover	382
returned bread	382
old rye bread	383
rye altus	383
stale rye bread	383
old rye	383
breadcrumb	384
bread crumb	384
dried breadcrumb	384
dry breadcrumb	384
panko	384
toasted breadcrumb	384
rusk	384
rusk crumb	384
tahini	385
sesame paste	385
tahini paste	385
peanut butter	386
miso	387
miso paste	387
soy sauce	388
soya sauce	388
tamari	388
bacon	389
diced bacon	389
lardon	389
speck	389
smoked bacon	389
ham	390
cooked ham	390
diced ham	390
prosciutto	390
sausage	391
salami	391
chorizo	391
pesto	392
squid ink	393
cuttlefish ink	393
activated charcoal	394
vegetable charcoal	394
vegetable carbon	394
nutritional yeast	395
yeast flake	395
inactive yeast	395
deactivated yeast	395
wood ash	396
custard	397
pastry cream	397
creme patissiere	397
custard cream	397
malted milk powder	398
malted milk	398
cornflake	399
corn flake	399
muesli	400
granola	400
muesli mix	400
caramel	401
caramel sauce	401
toffee sauce	401
dulce de leche	401
mincemeat	402
fruit mincemeat	402
mince pie filling	402
sprinkle	403
hundred and thousand	403
nonpareil	403
sugar strand	403
strawberry	404
fresh strawberry	404
lemon	405
whole lemon	405
orange	406
whole orange	406
candied ginger	407
crystallised ginger	407
crystallized ginger	407
stem ginger	407
kimchi	408
tea	409
brewed tea	409
cold tea	409
black tea	409
mascarpone	410
mascarpone cheese	410
emmental	411
emmenthal	411
swiss cheese	411
grated emmental	411
goat cheese	412
chevre	412
halloumi	413
halloumi cheese	413
chocolate spread	414
hazelnut spread	414
chocolate hazelnut spread	414
cornflour	415
corn flour	416
corn meal flour	417
flour	418
wheat flour	419
brown flour	420
rye flour	421
rye	422
barley	423
oat	424
oatmeal	425
maize	426
corn	427
bran	428
wheat	429
wheatmeal	430
granary flour	431
gluten free flour	432
starch	433
soya	434
yeast	435
dried yeast	436
dry yeast	437
fast action yeast	438
fast acting yeast	439
fast action dried yeast	440
brewer yeast	441
malt	442
malt powder	443
malt flour	444
barley malt	445
dried malt	446
treacle	447
syrup	448
cream	449
condensed milk	450
powdered milk	451
cheese	452
soft cheese	453
stick of butter	454
soda	455
bicarbonate	456
tin release agent	457
oil	458
vegetable oil	459
fat	460
starter	461
sourdough	462
sourdough starter	463
sourdough culture	464
culture	465
mother	466
lecithin	467
vinegar	468
seed	469
mixed seed	470
seed mix	471
nut	472
mixed nut	473
dried fruit	474
crumb	475
bread	476
psyllium seed	477
coconut	478
glucose	479
egg substitute	480
discard	481
sourdough discard	482
chopped nut	483
"""

" Vim syntax for .bake formula files. Copy to ~/.vim/syntax/bake.vim
if exists("b:current_syntax")
  finish
endif
syntax case ignore
setlocal iskeyword+=-

syntax match bakeComment "\(^\|\s\)#.*$"
syntax region bakeProse start=+["“„]+ end=+["”“]+ oneline

" What opens a block in the first column, and what opens a stage.
syntax match bakeBlock "^\(formula\|preparation\|assembly\|larder\|kitchen\|plan\|order\|stock counted\)\>" nextgroup=bakeName skipwhite
syntax match bakeKept "^\s*\(bake log\)\>"
syntax match bakeName "[^#]*" contained contains=bakeComment
syntax match bakeStage "^\( \{2}\)\?\(poolish\|biga\|sponge\|preferment\|old dough\|levain\|sour\|soaker\|scald\|stage\|dough\|overall\|variant\)\>\( loss\>\)\@!"
syntax match bakeStage "^ \{4}for the\>"

" The head.
syntax match bakeHead +^ \{2,6}\(called\|store\|opened\)\ze\s\+["“„]+
syntax match bakeHead "^ \{2,6}\(sells at\|best before\|use by\|says how much of\|listed as\|may contain\|kept apart from\|label approved\)\>"
syntax match bakeHead "^ \{2,4}\(about\|kind\|makes\|from\|sold\|dough loss\|bake loss\|written on dough flour\|status\|allow\|always allow\)\>"

" Steps, and the lines that move materials.
syntax match bakeStep "^ \+\(mix\|fold\|stretch\|stir\|whisk\|rub\|blend\|rest\|ripen\|ferment\|prove\|proof\|retard\|chill\|freeze\|thaw\|soak\|cool\|divide\|shape\|roll out\|roll in\|roll\|press\|cut\|trim\|slice\|fill\|spread\|pipe\|brush\|sprinkle\|top\|serve\|dust\|dip\|grease\|place\|wrap\|turn out\|score\|dock\|bake\|roast\|griddle\|fry\|boil\|simmer\|steam\|heat\|chop\|grate\|grind\|peel\|rinse\|strain\|drain\|pack\|do\)\>\( loss\>\)\@!"
syntax match bakeMove "^ \+\(swap\|without\|all of the\|all the\|what is left of the\|what's left of the\|everything else\|hold back\|add\|return\|keep\|discard what is left\|pour off\|top up with\|lock in\|made for each mix\|start from nothing\|good for\|never under\)\>"
syntax match bakeClause "\<\(until\|if late\|why\|note\|picture\|because\|beside the fire\|at the mouth\|humidity\|may wait\|at least\|at most\|at a time\|loses\|takes up\|counted apart\|counted as\|not counted as\|of all flour\|of what is soaked\|of the dough\|to taste\|as the flour asks\|as needed\|up to\|falling to\|rising to\|steam\|vent open\|vent closed\|lid on\|lid off\|turn after\|covered\|uncovered\|by hand\|hands-on\|waiting\|optional\|seam up\|seam down\|in three\|in four\|each\|in all\|a side\|within\|slices\|slice\|raw\|ready\|core\|below the rim\|times its volume\)\>"

" The larder and the kitchen.
syntax match bakeEntry "^ \+\(class\|also called\|per 100 g\|made of\|gives its water\|counts as flour\|not counted as flour\|allergens\|no allergens\|may contain\|density\|whole\|kept at\|absorbs water\|price\|source\|could be\|air\|tap\|flour\ze\s\+-\?[0-9.]\+\s\?[CF]\|hands\|measures\|words\|zone\|yeast factors\|yeast\|mixer\|oven\|prover\|fridge\|freezer\|bench\|tin\|tray\|basket\|couche\|scale\|pot\|takes\|stiff dough up to\|slow\|fast\|warms\|friction\|hottest\|holds water\|holds\|recovers\|heats in\|falls\|each load cools it\|keeps\|volume\|inside\|top\|bottom\|round floor\|round\|deep\|floor\|door\|count\|lidded\|reads\|rack\|tub\|griddle\|weigh\|load\|take out\|packs\|busy\|decks\|loads within\|climbs\|sinks\|cooks at the mouth\|wash after\|wash\)\>"

syntax match bakeEntry "^ \+\(protein by\|ask\|water activity\|sells in\|name and address\|also handles\|prices are old after\)\>"
syntax match bakeEntry "^ \+\(sulphites\|pH\|pack\|work\|tax\|margin\|labels\|costs\)\ze\s\+[0-9]"
syntax match bakeEntry "^ \+\(no\|from\)\ze\s\+[a-z ,]\+$"
syntax match bakeEntry "^ \+\(fresh\|dried\|pasteurised\|heat-treated\|ready to eat\|nothing else known\)\ze\s*\($\|#\)"

" A plan, and an order.
syntax match bakeDay "^ \{2}\(on\ze\s\+\d\{4}-\|every\|until\ze\s\+\d\{4}-\|van\|already made\|orders\)\>"
syntax match bakeDay "^ \{4}\(for\|spare\)\>"
syntax match bakeClause "\<\(leaves\|ready\|packed\|served\|lit\|taken\)\ze\s\+\(\a\{3}\s\+\)\?\d"
syntax match bakeAmount "\<\(\(mon\|tue\|wed\|thu\|fri\|sat\|sun\)\s\+\)\?\d\{1,2}:\d\{2}\(-\d\{1,2}:\d\{2}\)\?\>"
syntax match bakeAmount "\<\d\{4}-\d\{2}-\d\{2}\>"

syntax match bakeAmount "\<\d[0-9.,/½¼¾⅓⅔ –-]*\s\?\(kg\|g\|mg\|lb\|oz\|l\|ml\|gal\|qt\|pt\|cup\|tbsp\|tsp\|d\|h\|min\|s\|C\|F\|cm\|mm\|inch\|whole\|turns\)\>"
syntax match bakeAmount "\d[0-9./½¼¾⅓⅔ ]*%"
syntax match bakeAmount "[½¼¾⅓⅔]\s\?\(cup\|tbsp\|tsp\|oz\|lb\|inch\|h\)\>"

highlight default link bakeComment Comment
highlight default link bakeProse   String
highlight default link bakeBlock   Keyword
highlight default link bakeName    Title
highlight default link bakeKept    Ignore
highlight default link bakeStage   Type
highlight default link bakeHead    PreProc
highlight default link bakeStep    Statement
highlight default link bakeMove    Special
highlight default link bakeClause  Identifier
highlight default link bakeEntry   PreProc
highlight default link bakeDay     PreProc
highlight default link bakeAmount  Number

let b:current_syntax = "bake"

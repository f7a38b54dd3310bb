"""Stool."""

from __future__ import annotations

CLASSES = {
    "othersense": """
        load_of bit_of_a pile_of this_cone full_of like_a piece_of stepped_in stepped trod pick_up picked_up
        recoger recogi pisado pise bags little_shit no_shit give_a talk_shit
        """,
    "poo": """
        kaka cacas popos poo poos pooed pooing pood poop poops pooped pooping pooper poopy
        poopie stool stools faeces feces number_two number_twos no_2 number_2 nr_2 no_2s
        number_2s bm bms bowel bowels bowel_movement bowel_movements turd turds crap craps
        crapped crapping shit shits shat shitting defecate defecated defecates defecating dump
        took_a_dump poop_emoji motion motions plop plops business_solid numero_dos numero_2
        dumped popo popó caca heces excremento evacuo evacua evacuado evacuar evacuando
        evacuacion evacuaciones defeco defeca defecado defecar defecando obro obra obrado
        del_dos del_2 popis popito hizo_del_dos del_baño_grande popocha cagar cago caga cagado
        cagada cagando deposicion deposiciones materia_fecal no_twos pooey ensucio number_twoed
        solids poopies cuita
        dado_del_cuerpo dar_del_cuerpo da_del_cuerpo dio_del_cuerpo hace_del_cuerpo
        hacer_del_cuerpo hizo_del_cuerpo hecho_del_cuerpo obraba logs
        firm_log nice_log proper_log good_log
        popocita popocitas popocha zurullo zurullos mojon ñordo cacona caquita caquitas
        bombed_out took_a_crap dropped_a_log logs_today poopoo doo_doo doodoo poops_are dookie plopped
        va_de_vientre ir_de_vientre fue_de_vientre ido_de_vientre popeo popea
        other_business other_job big_job big_jobs
        """,
    "diarrhoea": """
        diarrhea diarrhoea diarrea diarreas diarea diahrrea diarhea diarhoea the_runs squits
        squitty the_trots runny_bum runny_tummy scours churrias chorrillo con_chorro tiene_chorro trae_chorro mucho_chorro puro_chorro dio_chorro da_chorro hay_chorro con_chorrito del_chorro
        soltura flojo_del_estomago suelto_del_estomago suelta_del_estomago chorreo cagalera
        churria colitis
        skitters the_squirts squirts cagaderas cagadera chorrillos churretes obradera
        the_shits bad_tummy dicky_tummy upset_tummy upset_stomach stomach_upset mal_de_la_panza
        mal_de_la_barriga descompuesto descompuesta estomago_suelto panza_suelta soltura
        pebbledashed pebbledashing pebble_dashed chorriento chorrienta zurrado zurrada
        """,
    "constipated": """
        constipated constipation blocked_up backed_up bunged_up estrenido estrenida
        estrenimiento tapado tapada constipado estreñido
        estitico estitica costipado costipada constipado tapadito tapadita trancado trancada seco_de_vientre
        """,
    "runny": """
        runny loose soft watery liquid mushy sloppy squirty squishy soupy wet_poop mush pudding
        unformed puddle cow_pat slurry mucus mucousy blando blanda blandita blandito aguado
        aguada aguadita aguadito liquido liquida suelto suelta flojo floja pastosa pastoso moco
        mocos caldosa custard gravy_like softer looser jelly
        custardy squidgy porridge claylike soft_serve smoothie milkshake ice_cream atolito puré pure
        babosa babosas chocolate_milk chirle blandengue
        """,
    "formed": """
        durita brown cafe cafecita marron normal good fine solid formed firm regular healthy ok
        great well perfect normalito bien solida formada firme durito dura_normal consistente
        lovely yes si twice thumbsup
        """,
    "blood": """
        redcurrant currant_jelly raspberry_jam strawberry_jam blood bloody bloodstained
        blood_stained blood_streaked blood_tinged bloods sangre sangrita sangrado sangriento
        sangrienta ensangrentado ensangrentada sangrando sangra sangro hilitos_de_sangre
        haemorrhagic hemorrhagic haematochezia hematochezia sanguinolento sanguinolenta
        con_sangre red_streaks streaks_of_red red_streak sangrosa bleed bleeding
        """,
    "tarry": """
        black tarry tar melena melaena negra negro negras negruzca negruzco chapopote alquitran
        oscura_como_cafe coffee_grounds carbon petroleo pitch_black jet_black brea prieta
        renegrida blackish dark_black negrisima negrisimo
        liquorice licorice marmite treacle bitumen soot coal charcoal vegemite oil molasses
        melaza hollin
        axle_grease grease soy_sauce prietas prieto petroleo tinta ink
        """,
    "strain": """
        strain strains straining strained pushing push pushes pushed squat squats squatting
        squatted hunch hunches hunching hunched struggling struggle struggles struggled trying
        tries tried puja pujando pujo pujos esfuerzo esfuerza esforzandose esforzo batalla
        batallando batallo cuesta trying_hard tenesmus dyschezia estreñido trabajo_le_cuesta
        fuerza hace_fuerza intenta intentando trata tratando quiere strainin stranguria
        """,
    "bathroom": "bathroom baño potty toilet litter litterbox litter_box arenero tray loo",
    "yucky": "the_dumps runny loose watery bag bags eat eats",
    "butformed": "but_formed but_firm but_shaped",
    "comeword": "comes come coming came sale salio saliendo out hace happens happening happened",
    "but": "but pero",
    "neg_strain": """
        without_straining no_straining sin_esfuerzo easily sin_problema without_trouble
        """,
}

RULES = {
    "stool": """
    = normal
    nice|good|firm|proper|solid|healthy ~ firm|solid|healthy? log|logs|motion|stool|poo
    used|uso|usado ~ the|su|el|her|his? litter|litterbox|litter_box|tray|arenero ~4 both|dos|fine|bien|well|twice|normally
    <poo> ~3 no ~ durita|duritas|normal|formada|formadas|firme|formed|solid|firm
    conservada|conservado|conservadas ~2 <poo>
    <poo> ~3 conservada|conservadas|formadas
    <poo> -<yucky> -<othersense>
    <poo> ~3 <formed>
    did|done|made|had|hizo|ha|hecho|took|went|go|gone ~3 <poo>
    <poo> ~ and|n|y ~ pee|peed|wee|pipi|pis
    hizo ~ las? dos cosas|baño|banos|necesidades
    hizo|hace|haciendo|hecho ~ sus? necesidades
    hizo|hace|hecho del baño
    bathroom|toilet|toileting|baño|necesidades ~ <good>|<formed>
    did|done|doing|did_his|does ~2 business|businesses
    pipi|pis|pee|wee y|and|n popo|poo|poop|caca
    peed|wee'd and|n pooped|pooed
    regular as clockwork
    litter|tray|litterbox|litter_box|toileting|bathroom|toilet ~4 as_normal|as_usual|normally|
        normal|fine|like_normal -<strain>
    gone|went to|al the? bathroom|toilet|loo|baño
    passed|passing ~3 stool|stools|motion|motions|faeces
    had|did|done|passed|laid|dropped|produced ~2 nice|lovely|good|solid|firm|proper|perfect|big|healthy ~ solid|firm|formed|big ~ one|ones -<neg>
    <poo>|log|logs ~ como|like|as siempre|always|usual|normal
    hizo|hace|hecho ~ del ~ dos|2|baño
    two|three|couple|<number> ~ nice|good|firm|lovely|solid|normal ~ firm|solid? ~ ones|jobs|motions|poos
    <poo> ~2 <samey>
    <poo> ~2 bien ~ formada|formadas|durita|duritas|solida|formadito
    <poo> ~3 as ~ they|it|they_should|should ~ should|be
    = normal @stool @bathroom !@urine
    ^ <good> -thumbsup -<pee> -one -ones
    todo|all|everything ~2 <good>
    nice|good|lovely|all ~ and? firm|solid|formed
    firm|solid|formed|normal|proper|solida|durita|formada one|ones -<neg>
    proper|nice|good|big|perfect|lovely|great|firm sausage|sausages|log|logs|jobbie|jobbies|number_two
    bien|muy|nice|lovely|bastante firme|firm|formada|formed|durita|solida|solid
    = none
    <neg> ~ used|using|visited|usado|usa ~2 tray|litter|litterbox|litter_box|arenero
    hasnt|not|havent ~ been ~ since ~3 operation|surgery|op|home
    <zero> ~ <poo>
    ni <poo> ~ ni
    <constipated>
    <neg> ~4 <poo>
    <neg> ~3 hecho|done|had|made|passed|gone ~3 <poo>
    <poo> ~3 not_yet|none|nothing|nada|not|nope|nil|zero|yet_to -<but>
    <poo> ~3 no ha|han|he|hay|hizo|hace|hecho|salio|sale|todavia|aun|yet|today|tonight|since|at|for|desde|en|hoy|nothing|nada|sign|$ -<but>
    sin ~2 <poo>
    lleva ~4 sin ~3 <poo>
    still|yet|waiting|todavia|aun ~2 waiting|no|to|nada|on|for ~3 <poo>
    number|no two|2 not|no yet
    hasnt|not|havent|didnt|no gone|been|go|ido|ha ~3 number_two|two|2|dos|bathroom|baño|
        toilet|litter
    not|no yet|todavia on the? <poo>
    havent|hasnt|not seen|see|visto ~3 <poo>
    ^ <poo> no|not|nada|none|zero
    <poo> ~ todavia_no|aun_no|not_yet
    ^ <poo> ~2 todavia|aun|still no|nada
    no|ni poop|popo ni|nor|or pipi|pee
    nothing|nada|nowt ~4 <poo>|back_end|rear|back_door|other_end|rear_end|otro_lado
    <poo> ~2 awol|missing|mia|no_show|pending|pendiente|outstanding|ausente
    no|zero|without ~ poop_emoji|poo|poop|bm|stool
    no ~ va|ido|fue ~ de vientre|cuerpo
    hasnt|not|havent|nada|nothing ~ come|came|coming|happening|out|sale|salido ~2 back|other|rear|otro ~ end|door|lado
    hasnt|not|no ~ gone|go|been ~ number|del ~ two|2|dos
    bunged|blocked|backed|stopped|plugged up -<wound> -nose
    <poo> ~3 on strike|hold
    sin ~ ir|hacer ~ al|del? ~ baño|dos|grueso|solido ~ de? ~ lo? ~ grueso|solido? -<pee>
    aguanta|aguantando|holding|hold|guardando ~ la|his|her|it|in? ~ <poo>
    = none fixed
    <poo> ~2 since surgery|operation|before|cirugia
    back_end|bowels|rear on strike
    back_end|bowels|rear ~~ nothing|nada since|desde
    = none @stool @bathroom !@urine
    waiting|hoping|looking ~3 log|motion|movement|present|delivery|deposit|turd
    no|ninguna de|of las? dos
    neither|ninguna|nothing|nada -<pee> -wrong -<comeword> -<strain> -<wrongword> -dramatic -<runny> -mas -grave
    todavia|aun|no ~2 hace|hizo|ha_hecho|hecho ~ del baño
    not a sausage|dicky|jot
    = loose
    runny|dodgy|upset|loose|squirty ~ bottom|bum|tum|tummy|botty|guts
    hizo|hace ~3 aguadito|aguadita|blandito|blandita
    suelto|suelta|flojo|floja ~ de|del ~ la? panza|estomago|pancita|barriga
    haciendo|hace|hizo ~ pura|puro|solo|nomas? agua|agüita|aguita -<pee> -<wound> -<vomit>
    sale|echa|saca ~ pura|puro agua|agüita|aguita -<pee> -<wound> -<vomit>
    pura|puro agua|aguita ~3 <poo>|baño|cola|colita
    tummy|tum|stomach|bowels ~3 upset|dodgy|off|funny|bad ~~ water|liquid|four|out|runny|night|garden|all
    sloppy|runny|squitty|watery|liquid|aguado|aguada|floja|suelta ~3 like|como ~3 mousse|gravy|pudding|cow|soup|custard|water|sopa|agua|atole|pure
    bum|bottom|backend|back_end|rear|arse|behind ~3 running|runs|leaking|squirting|exploding|explosive
    splats|splattered|explosive ~4 patio|yard|garden|grass|floor|everywhere|wall
    <diarrhoea>
    <poo> ~4 <runny>
    <runny> ~3 <poo>
    <poo> & mush|water|liquid|soup|moco|mucus|sauce|custard|gravy|mousse|pudding|slurry|soup|
        sopa|atole
    cacas|popo|heces|popos blandas|sueltas|aguadas|liquidas|flojas
    hizo|hace|hecho ~3 aguado|aguada|suelto|suelta|liquido|liquida|chorro|chorros|chorrito
    salio ~3 aguado|aguada|suelto|suelta|chorro -<wound>
    got|has|have|having|had|with the runs|squits|trots
    cow_pat|cow_pats|cowpat|splat|splats|squits
    runny|watery|squirty ~ every_time|each_time|every|each -nose -eyes -eye
    loose|runny|soft|sloppy|squishy|wet|watery|squirty one|ones|motion|motions|tummy|bowels|guts|movement -<wound> -<coneword>
    <poo> ~3 <neg> ~ firm|solid|formed|firme|formada|dura|solida|durita
    no|not ~ firm|solid|formed|firme|formada|dura|solida ~ <poo>
    explode|explodes|exploded|exploding|shoot|shoots|shooting|squirt|squirts|squirted|squirting|pour|pours|poured|pouring|blast|blasts|blasted|blasting|spray|sprays|sprayed|spraying ~ out|all|from|over|everywhere|down ~~ back|rear|bum|brown|bottom|butt|behind|poo|poop|water|legs
    brown water|liquid|soup|puddle|puddles|juice -<wound> -<pee> -discharge
    hizo|hace|haciendo|hecho|salio ~2 muy|bien|medio|algo|puro|pura|super aguado|aguadito|aguada|aguadita|blando|blandito|blanda|suelto|suelta|liquido|agua|agüita|aguita|flojo|floja
    hizo|hace|haciendo ~ aguado|aguadito|aguada|blandito|blando|suelto|suelta|flojo|floja|liquido
    anda|esta|amanecio|sigue ~2 flojo|floja|suelto|suelta|malito|malita ~ del|de ~ estomago|panza|barriga|vientre|intestino
    estomago|panza|barriga|tripa|intestino ~ suelto|suelta|flojo|floja|descompuesto|descompuesta|revuelto
    <poo> ~~ pura|puro ~ agua|agüita|aguita|liquido
    como|like ~ sopa|soup|atole|agua|water|custard|pudding|gravy|mousse|porridge ~~ <poo>|baño
    <poo> ~3 como|like|consistency|textura ~3 sopa|soup|atole|agua|water|custard|pudding|gravy|mousse|porridge|milk|milkshake|smoothie|yogurt|mashed|pure|puré|cream|serve|lodo|mud|clay
    squirty|runny|leaky|explosive|exploding|messy bum|bottom|backend|arse|behind|butt
    <poo> ~3 like|como|consistency|textura ~3 batter|pancake|sludge|slop|syrup|dough|paste|pate|curry|chili|chilli|slush|wet
    <poo> ~2 sin forma
    <poo> ~3 shapeless|formless|unformed|deshecha|deshecho
    looser|softer|runnier|wetter ~ than ~ normal|usual|before|it -<bandageword> -<coneword>
    <poo> ~3 like|como ~3 toothpaste|mousse|puree|mash|yoghurt|cream|whip|dulce|derretido
    = loose @stool @bathroom
    runny|loose|watery|liquid|mushy|soft|aguada|aguado|suelta|suelto|liquida|blandita|blanda|
        floja|sloppy
    = bloody
    red ~ splashes|specks|flecks|spots|streaks|bits ~3 <poo>|<diarrhoea>|stool|motion
    sangre|sangrita ~ al ~ hacer|defecar|evacuar|obrar
    blood ~2 after|when|as ~ he|she ~ poos|goes|poops|pooed
    <poo> ~~ como|like|looks|parece ~3 mermelada|jam|ketchup|catsup|jamaica|fresa|raspberry|strawberry|redcurrant|jelly|vino
    <poo> & <blood>
    <diarrhoea> & <blood>
    <blood> ~2 <diarrhoea>
    red ~3 <poo>
    <poo> ~3 red
    haematochezia|hematochezia
    <blood> ~4 back_end|bum|bottom|butt|ano|anus|culo|colita|rear|rectum|recto|backside|ass \
        -<wound>
    <poo> ~4 roja|rojo
    <blood> ~4 when|after|as|while|cuando|al|despues ~2 he|she|it|hacer|hace|de? ~ <poo>|goes
    passed|passing|pooping|pooped|pasa|echa|hizo|hace|evacua|saca ~2 <blood> -<wound> -<pee> -<vomit>
    passed|passing|pooping|pooped|hizo|hace ~ jelly|slime|mucus|moco|mocos ~~ <blood>|red|roja
    <poo> ~2 rojiza|rojizo|rojas|rojos|reddish|pinkish|maroon|guinda|vino|tinto
    <blood> ~3 por|from|out ~ atras|detras
    <blood> ~3 por|from|out ~2 his|her|el|la|the ~ bum|rear|behind|trasero|cola|colita|ano|culo|bottom|butt -<wound>
    rojas|rojos|roja|rojo|rojizas ~3 <poo> -<wound>
    = bloody !@asked-incision
    blood|sangre ~4 paper|wipe|wiped|bottom|tissue|bum|limpio|papel|colita|rabo -<wound>
    = bloody @stool
    blood|bloody|sangre|bloods|red|sangrita -<pee>
    = black
    <poo> ~~ <tarry>
    dark|oscura|oscuro ~ as|like|como ~2 <tarry>
    <poo> & <tarry>
    <tarry> ~3 <poo>
    melena|melaena
    hizo|hace|salio|sale ~2 negro|negra|chapopote
    <diarrhoea> & <tarry>
    = black @stool @bathroom
    dark|oscura|oscuro|oscurita ~ and|y|n sticky|tacky|tarry|pegajosa|pegajoso|shiny|brillante|smelly|apestosa -<pee> -<wound>
    like|como ~ tar|liquorice|treacle|marmite|molasses|alquitran|chapopote|brea|petroleo
    black|tarry|negra|negro|chapopote|tar|alquitran -<pee>
    business ~ looks|was|like|came ~3 tar|black|tarry
    = straining
    sore|hurts|cries|yelps|squeals|painful|duele|llora|queja ~3 when|cuando|al|as|if ~ he|she? ~ tries|trying|goes|pushes|hacer|intenta|puja +<poo>|go|goes|baño|toilet
    <poo> ~~ sore|hurts|cries|yelps|squeals|painful|duele|llora ~ when|cuando ~3 tries|goes|intenta|puja
    straining|pushing|pujando ~3 grass|lawn|garden|patio|pasto|yard -<pee>
    queriendo|quiso|ganas|intentando|tratando|quiere ~ de? ~ hacer|ir ~ del|al baño ~~ no ~2 puede|pudo|sale|logra|nada -<pee>
    quiere|intenta|trata ~ hacer ~~ no ~2 puede|sale|hace -<pee> -fila
    hunched|hunching|hunches|squatting|squats|crouching|crouches ~~ pushing|pushes|nothing -<pee> -tray -litter
    circles|circling ~ squatting|hunching|pushing -<pee> -tray -litter
    strains|straining|pushes|pushing|puja ~~ rabbit|pebble|pebbles|nugget|nuggets|dropping|droppings|marble|marbles|bolita|bolitas|pellet|pellets
    pushing|straining|pujando ~ and|y|while|cuando ~ <whimper>|crying|yelping -<pee>
    pushing|straining|puja|pujando|pushes|strains ~~ cant|couldnt|wont|cannot ~2 go|poop|poo -<pee>
    <strain> ~3 <poo> -<neg_strain>
    <poo> ~4 <strain>
    <strain> ~3 go|poop|poo|defecate|defecar|popo|caca|baño|bathroom -<pee>
    hard_time|trouble|difficulty|painful|problema|problemas|dificultad|dolor|trabajo|hurts|
        cries|crying|llora|grita|yelps ~4 <poo> -<neg_strain>
    <poo> ~3 painful|hurts|cries|crying|hard_time|dolor|llora|duele
    le cuesta ~3 <poo>|baño|evacuar
    puja|pujando|pushing|strains|straining ~~ nada|nothing|no ~ sale|comes? ~3 <poo>
    push|pushing|pushes|straining|strains|puja ~3 go|nothing|nada -<pee>
    hard ~ pebbles|pellets|nuggets|bits|rocks|lumps|bolitas & <strain>
    pebbles|pellets|nuggets|bolitas & <strain>
    pebbles|pellets|nuggets|bolitas ~~ strains|straining|pushing|puja|pushes
    squat*|hunch* ~~ slime|mucus|jelly|moco|mocos -<pee>
    puja|pujando|pujo|puje ~~ nada|no ~2 sale|salir|hace|puede -<pee>
    puja|pujando|pujo|puje ~~ nada -<pee> -nada_mas
    <strain> ~4 para|pa|to ~ hacer|ir|go ~4 <poo>
    batalla|sufre|cuesta|trabajo|struggling|struggles ~4 hacer|ir ~ del|al ~ dos|2|baño
    struggle|struggles|struggled|struggling|batalla|batallo|batallando|strain|strains|strained|straining|push*|fight|fights|fighting|sufre ~ to|para|for|al ~ poo|poop|go|hacer|pass|get ~ anything|it|one|del|<poo>? ~ out? -<pee> -breathe -breath -breathing -<walkword>
    hunch*|squat*|crouch* ~ and|y|n? ~ hunch*|squat*|strain|strains|strained|straining|push* -<pee> -tray -litter
    hunch*|squat*|crouch* ~~ no|nothing|nada|zero ~ <poo>
    <poo> ~3 hard_work|effort|uncomfortable|sore|tough|hard ~ for|to|going ~ him|her|pass
    se ~ agacha|acomoda|pone|encorva ~~ no|ni ~ sale|salio|hace  -<pee> -<vomit>
    quiere|intenta|trata|tries|trying|wants ~ hacer|poop|poo|obrar|cagar|evacuar|defecar ~ popo|caca|del|baño? ~~ no|nada|nothing|cant|ni ~ puede|sale|out|comes? -<pee>
    le ~ cuesta|duele|arde|batalla ~ mucho|trabajo|al|para|hacer|evacuar ~ <poo>|hacer|evacuar|obrar|baño
    gets|get|sale|salen|only|solo ~2 out|pasa? ~2 tiny|little|hard|small|bolitas|pellets ~ hard|dry? ~ pellets|pebbles|nuggets|balls|duras|secas ~~ strain|strains|strained|straining|push*|puja|esfuerzo|cries
    other|another ~ business|thing|job ~ <patient>? ~ <strain>
    tries|tried|trying|keeps ~ and? ~ tries|trying|tried? to ~ <poo> -<pee>
    hurts|pains|duele|painful|arde ~ him|her|le? ~ to|al|when|cuando ~ he|she|hace|va|goes|hacer|a? ~ <poo>
    squat|squats|squatting|hunches|hunching|pushing|strains|straining|puja ~~ no|without|sin|zero ~ result|results|success|luck|joy|exito|resultado|avail
    <poo> ~~ effort|esfuerzo|difficulty|dificultad|trabajos -<neg_strain> -<neg>
    groan|groans|groaning|grunts|grunting|whimpers|yelps|cries|squeals|moans|queja|llora|chilla|grita ~ when|as|while|cuando|al|every|each|cada ~3 <poo>
    groan|groans|groaning|grunts|whimpers|yelps|cries|squeals|moans|queja|llora|chilla|grita ~ when|as|while|cuando|al ~ he|she|hes|it|va|a ~ goes|going|has|does|a|hacer ~ for|to|a? <poo>
    cada ~ que|vez ~4 <poo> ~ llora|queja|chilla|grita|puja|cries
    fuerza|esfuerzo|puja|pujando|pujar ~~ no|nada|ni ~ le? ~ sale|salio|puede|hace ~ la|el|nada|bien? ~ <poo> -<vomit>
    puja|pujando|pujar ~~ nada|nothing -<pee> -<vomit>
    <neg> ~2 push|get|squeeze|pass ~ <poo> ~ out
    crouched|squatted|hunched|squatting|crouching|hunching|crouches|squats|hunches ~~ nothing|nada|no|nowt ~ came|comes|coming|sale|salio|result|happened|happens|hace|come -<pee> -tray -litter -box
    squealed|squeals|yelped|cried|screamed|whimpered|grunted ~ when|as|while ~ he|she ~ did|does|had|was ~ a|doing|having? ~ <poo>
    = straining @stool
    cuesta|struggles|struggled|hard_time
    = straining @stool @bathroom
    batallo|batalla|batallando|sufrio|sufre|le_costo -<pee>
    strain|strains|straining|strained|puja|pujando|pujo|pushing|pushes|esfuerzo|tenesmus -<pee>
    hunch*|squat* ~~ nothing|nada -<pee>
    <neg> ~2 push|get|squeeze|pass ~ it|anything|one|them|much ~ out -<pee>
    fuerza|esfuerzo ~~ nada|nothing -<pee> -<vomit>
    tried|tries|trying|intento|quiso|intenta ~~ couldnt|cant|cannot|no ~ go|pudo|puede|manage|logro -<pee>
    = normal @bathroom
    <neg> ~ blood|sangre|straining|pujar|mucus|diarrhoea ~ in ~ it|them -<pee>
    came|come|salio|sale|out ~ out? ~ easy|easily|facil|facilito|no_problem|sin_esfuerzo|solita -<neg>
    pudo|logro|could|managed ~ hacer|go|ir ~ sin|without|fine|bien|ok -<pee>
    = none @bathroom
    ^ hasnt|not|havent|didnt|hadnt ~ gone|been yet|today|since?
    still hasnt|not|havent ~ gone|been|done|did|anything -<pee>
    hasnt|not|havent ~ gone|been ~~ <number>|several|few ~ days|day
    todavia|aun no ~ hace|ha|hizo|va|fue|ido|hecho ~ al|nada? -<pee>
    lleva|llevamos|va ~ <hours>|days|dias ~ sin ~ hacer|ir
    de|del|la lo|la|el otra|otro|dos|2|grande ~~ nada|no|todavia|aun
    otra|otro|segundo|second|2|other ~~ nada|nothing|no|zero ~ todavia|aun|yet|so|still|de?
    not|hasnt|havent ~ been ~ for|in|since|today|yet ~ days|a? -<pee>
    = none fixed @bathroom
    del ~ dos|2 nada|no|todavia|aun
    = loose @bathroom
    anda|esta|amanecio ~ flojo|floja|suelto|suelta|flojito|flojita
    bit|little|slightly|medio|algo|un_poco ~ loose|runny|soft|wet|sloppy|suelto|suelta|blando|blandito
    = bloody @stool @bathroom
    ^ hizo|hace|con|with|theres|there|some|bit|little ~3 <blood> ~ on|in|with|it?
    red|roja|rojo ~ streaks|specks|spots|flecks|bits|hilitos|puntitos|manchas
    = straining @bathroom @stool
    hunch*|squat* ~ over|and|n|again ~~ nothing|nada|no
    puja ~ y|que puja
    pushing ~ and pushing
    = normal @bathroom @stool
    both|las_dos|ambas ~ normal|good|fine|times
    both|las_dos|ambas ~ done|cosas
    ^ solid|firm|formed|durita|firme|dura|solida -<neg>
    good|nice|lovely|great|decent one|ones -<neg>
    = normal fixed
    first|finally|primera|primer ~2 <poo> ~ since|desde? ~ surgery|op|operation|cirugia|operacion? -no -not -still -waiting -yet -sin -todavia
    = none agent
    <neg> ~ seen|visto|see|found ~ any|a|him|her|one|nada? ~ <poo>
    = none @stool
    ^ none|nil|zero|nope|nada $
    = loose @bathroom @stool
    like|como|de ~ chocolate|pudding|soft_serve|ice_cream|toothpaste|puree|soup|sopa|water|agua|custard|atole|mud|lodo|batter|porridge|slurry -<pee>
    <neg> ~ solid|firm|formed|solida|firme|formada|dura -<strain>
    ^ pura|puro agua|agüita|aguita|liquido
    came|come|comes|coming|shot|salio|sale ~ out? ~ like|como ~3 soup|sauce|milk|water|gravy|custard|mousse|agua|sopa|atole|chocolate|tap|hose|llave|chisguete -<pee>
    trae|tiene|es|sale ~ puro? chorro|chorrillo
    como chocolate|atole|mole|pozol ~ derretido|aguado?
    = bloody @bathroom @stool
    moco|mocos|moquito|moquitos|mucus|slime ~ y|and|con|with|n <blood>
    bit|drop|drops|spot|some|poco|poquita|poquito|gotita|gotitas|little ~ of|de? ~ fresh|bright? ~ <blood> -<wound> -<pee> -<vomit> -<bandageword>
    <blood> ~2 at|al ~ the? end|final
    salio|salen|con ~2 <blood> -<wound> -<pee> -<vomit> -<bandageword>
    <redcolor> ~2 jelly|slime|mucus|stuff|gunk|goo|bits|moco|mocos|baba|gelatina|hilos ~2 on|in|with|around|all|en|con|encima? -<wound> -<pee>
    <redcolor> ~ mucus|slime|jelly|moco|baba -<wound>
    salio|sale|hizo|vino|trae|came|was ~ out? ~ con|with ~3 <blood>|<redcolor> -<wound> -<pee> -<bandageword> -<vomit>
    its|it|has|got|trae|con|sale|viene ~2 <blood> ~ in|on|with|it? -<pee> -<wound>
    <blood> ~ on|in|with|around|en|por ~ the|el? ~ outside|surface|end|ends|tip|orilla|alrededor -<pee> -<wound> -<vomit>
    """,
    "idiom": """
    = void
    strains|straining|strain|pulls|pulling ~ on|at|against ~ the|his|her? ~ lead|leash|harness|collar
    black|dark bag|bags|dog
    not pee|wee|poo|poop|urine|vomit|sick -does -did -do -has -have -could -can -will -he -she
    <poo>|<pee> ~ no ~ me|nos|he|lo ~ fije|fijado|fijamos
    """,
}

NEGATED = {
    "stool": {
        "normal": "none",
        "none": "normal",
        "loose": None,
        "bloody": None,
        "black": None,
        "straining": None,
    },
}

"""The incision: clean, red, weeping, smelling, open. Bleeding has its own module."""

from __future__ import annotations

CLASSES = {
    "applied": "put putting puse puso poner rub rubbed apply applied dabbed untamos cleaned limpie",
    "bowel": "stool poop poo house box tray mouth boca hocico casa oreja",
    # "x" is written out as "por".
    "xray": """
        x_ray x_rays xray xrays radiograph radiographs radiografia radiografias rayos_x imaging
        films tomografia ct_scan
        por_ray por_rays
        """,
    "redword": """
        red redness reddish redder reddened pink pinkish pinker erythema erythematous inflamed
        angry angry_looking rojo roja rojita rojito enrojecido enrojecida enrojecimiento rojiza
        rojizo rosada rosadita rosita coloradita colorada colorado eritema irritado irritada
        irritadita irritated flushed rosa rojos rojas ruborizada
        """,
    "seepword": """
        dribble dribbles dribbling goopy goop gloopy gloop straw_coloured straw_colored weep weeps
        discharge discharging seep seeps seeped seeping seepage weep weeps weeping wept weepy
        ooze oozes oozed oozing oozy drainage draining drains drain exudate serous
        serosanguinous serosanguineous leak leaks leaking leaked drips dripping moist damp wet
        fluid clear_fluid liquid clear_liquid watery secrecion secreciones supura supurando
        supuracion liquido liquidito aguita sale_liquido escurre escurriendo escurrimiento llora
        lloroso drenando drena drenaje exudado sanguaza serosa suero rezuma rezumando humeda
        humedo mojadita mojado mojada seeply plasma
        """,
    "pusword": """
        pus pussy pussing pussed pussy_stuff purulent purulento purulenta suppurating
        suppurative infected infection abscess abscessed infectado infectada infeccion infecto
        absceso postema materia pusy puss pús pusulento
        """,
    "puscolour": """
        yellow green greenish yellowish creamy cream thick cloudy white milky gunky gunk goo
        gooey grey gray brown custard amarillo amarilla amarillento amarillenta verde verdoso
        verdosa espeso espesa cremoso cremosa blanco blanca turbio lechoso gris blancuzco beige
        """,
    "goo": """
        discharge stuff goo gunk liquid fluid ooze oozing drainage liquido secrecion cosa
        materia exudate seep gunge slime weeping dripping leaking coming liquidito crema muck
        escurre sale saliendo mucky matter
        """,
    "smellword": """
        smell smells smelled smelly smelling smelt stink stinks stinky stinking stunk stank reek
        reeks reeking reeked whiff whiffs whiffy pong pongs pongy odour odor odours odors
        malodorous foul rank pungent fetid foetid stench niff niffy funky_smell manky_smell
        rotten putrid putrefied off_smell huele hiede apesta apestoso apestosa apesto olor
        oloroso mal_olor pestilente peste hedor fetido fetida olia oliendo hediondo hedionda
        oler huela tufo cheesy_smell podrido podrida ahiede jiede
        honks honk honking hums humming_smell ponging minging agrio rancio acido pestazo tufillo
        """,
    "openword": """
        open opened opening opens reopened gaping gape gapes gap gaps split splitting splits
        apart separated separating separation dehisced dehiscence dehiscing popped burst bursted
        unzipped came_apart come_apart came_open come_open coming_apart coming_open popped_open
        split_open wide_open parted hole undone abierto abierta abrio abriendo abre abierta_la
        abrieron reventado revento reventaron separo separado separada separados hueco hoyo
        hoyito rajada rajado boquete agujero dehiscencia descosio descosido descosida desgarro
        zafaron zafo_un
        """,
    "deepword": """
        bone metal plate screw screws pin pins wire wires implant implants hardware muscle meat
        flesh fat tendon tendons tissue inside insides guts raw_meat joint ligament hueso placa
        tornillo tornillos clavo clavos alambre implante musculo carne carnita tejido grasa
        adentro lo_de_adentro fierro fierros tripas intestines nail shiny deep hondo honda
        profundo profunda femur tibia
        fierrito fierritos tornillito tornillitos huesito placita metalito clavito musculito
        bistec
        rod rods bolt bolts spike varilla perno pernos
        """,
    "stitchword": """
        stitch stitches suture sutures staple staples puntos punto puntada puntadas grapa grapas
        sutura suturas hilo hilos
        """,
    "seeword": """
        see seeing sees saw visible showing shows exposed looking_at staring_at look_at sticking poking peeking protruding out
        through ve veo ven asoma asomando asoman salido expuesto expuesta ver mira miro aprecia
        visto looks viendo alcanza saliendo salida visibles viewable peeping
        """,
    "other_than_wound": """
        orina urine orin pipis ear ears eye eyes nose teeth breath mouth fart farts food poo
        poop pee wee bandage dressing wrap cast splint vendaje venda aliento pedo pedos orejas
        oreja boca popo caca pipi litter tray dog_food gums tongue ferula yeso farty
        """,
    "bloodything": """
        bandage vetwrap collar leash lead towel poop poo pee wee stool urine red_spots popo pipi
        """,
    "bagctx": "bag packet box tin bottle bandage cone food sack pill bin bolsa",
    "eyes": "eye eyes nose nasal ojo ojos nariz mouth boca puerta door gate reja",
    "dryword": "dry seca",
    "notpus": "chest ear ears eye urinary uti bladder throat stomach ojo oreja puss_in",
    "vomitctx": """
        vomit puke vomito sick bile foam poo poop popo diarrhea diarrhoea diarrea eye eyes nose
        bruise moreton food bowl gums
        """,
    "removal": """
        remove removed removal removing appointment today's dissolvable dissolved removeing
        quitar quitan quitaron retirar retiraron came_out_today vet_took when_do
        due_out out_on coming_out_on coming_out_tomorrow come_out_on due friday_at come_out_next
        coming_out_next
        """,
    "tooth": "teeth tooth fence gate hedge diente",
    "deepbone": """
        bone metal plate screw screws implant hardware hueso placa tornillo tornillos implante
        tendon tendons
        fierrito tornillito huesito
        rod varilla perno pernos
        """,
    "nodeep": """
        no_deeper no_bone no_muscle superficial nothing_to_see superficially no_deep toy chew
        """,
    "toyctx": """
        toy chew chewing chewed treat eating food bowl tin nylon ate juguete masticando
        mordiendo premio buried
        """,
}

RULES = {
    "incision": """
    = clean
    healed|sealed|closed|knitted ~ shut|over|together
    cerro|cierra|cerrado|sello|pego ~ bien? ~ la? <wound>
    c de i
    preciosa|hermosa|linda|bonita|lovely|beautiful|gorgeous|perfect|chula ~3 <wound>|costura|cicatriz
    <wound> ~6 clean|dry|perfect|fine|good|great|ok|lovely|healing|healed|neat|tidy|closed|
        intact|beautiful|nice|well|excellent|normal|flat|sealed|cicatrizando|limpia|limpio|
        limpita|seca|seco|sequita|bien|perfecta|cerrada|cerrado|cerradita|cerraditos|sana|
        sanando|bonita|excelente|impecable|linda|preciosa|hermosa|divina|chula|perfectita|cicatrizado|alright|gorgeous|limpios|secos|
        unremarkable|apposed|brilliant
    clean|dry|healing|healed|limpia|seca|cerrada|cicatriza|cicatrizando|intact|sana ~3 <wound>
    clean|limpia|limpio|limpita ~ and|y|n|& dry|seca|seco|sequita
    clean ~ dry|intact
    healing|healed|cicatrizando|sanando ~2 <good>|up|nicely|well|bien
    <good> ~ healing
    cdi
    hardly|barely|apenas|casi_no see|tell|notice|ve|nota ~3 <wound>|where
    looks|looking ~ clean|dry|healed
    no gap|infection
    spotless|immaculate
    = clean @incision
    scab|scabs|scabby|costra|costrita -<seepword> -<redword>
    clean|dry|closed|intact|neat|healed|limpia|seca|limpiecita|sequita|cerrada|cerradita|
        limpio|seco|healing|cicatrizando|tidy -<bandageword>
    ^ <good>
    looks|look|looking|se_ve|se_ven|la_veo|veo ~ <good>
    todo|all|everything ~2 <good>
    = red
    <redword> ~4 esquina|esquinita|corner|one_end|bottom_end|top_end|edge|orilla|orillita|puntita -gums -<bloodything> -<eyes>
    <wound> ~5 <redword> -<bloodything> -gums
    <redword> ~4 <wound>|edges|around|alrededor|bordes|orillas|stitches -<bloodything> -gums
    edges|bordes|orillas|skin|piel|around|alrededor|area|line ~3 <redword> -gums
    <redword> ~2 edges|bordes|skin
    skin|piel ~7 <redword> -gums -<bloodything>
    cherry|beefy|fiery|angry|beetroot red -gums -<bloodything>
    <redword> ~3 hot|hinchada|swollen|puffy|warm -gums
    = red @incision @swelling @licking
    <redword> -<bloodything> -gums
    = red @incision trend:better
    better ~6 red
    less|menos <redword>
    = red trend:worse @incision
    redder|more_red|mas_roja|mas_rojo
    more|mas <redword>
    = discharge
    clear|clearish|transparente|clarito|straw ~ stuff|goo|drops|gotitas|gotas|patch
    damp|wet ~ patch ~2 clear|straw|pink|line|wound|scar
    aguita|agua|liquido|liquidito|fluid|water|watery ~ con|with|and|mixed_with ~2 sangre|sangrita|blood
    yellow|yellowish|amber|amarilla ~ crust|crusts|crusty|scab|scabs|costra|costrita
    pinkish|pink|reddish|rosado|rosada|rosita ~ <goo>|stuff|fluid|seepage -<eyes>
    <wound> ~5 <seepword> -<bandageword>
    <seepword> ~4 <wound> -<bandageword>
    clear|thin|slight|little|bit|some|watery|pinkish|pink|straw|yellowish_clear|serous|
        poquito|poco|tantito|transparente|clarito ~2 <seepword>|goo -<bandageword> -<eyes>
    liquido|liquidito|aguita|fluid|liquid|discharge|seep ~3 transparente|claro|clarito|clear|
        rosado|rosita|pinkish|pink|straw|watery|serous
    sale|salio|saliendo|coming|comes|came|escurre ~3 liquido|liquidito|aguita|suero|fluid|
        liquid|agua_sangre|aguadija|sanguaza
    serosanguinous|serosanguineous|serous|exudate
    blood|bloody tinged|stained ~2 <seepword>
    blood_tinged|bloodstained ~2 <seepword>|fluid
    crust|crusty|crusting|crusts|costra|costrita ~3 wound|incision|herida|line
    = discharge @incision
    <seepword> -<bandageword> -<eyes> -<dryword>
    = pus
    <seepword>|sale|salio|escurre|brota ~4 colour|color|colour_of|de_color|like|como ~3 mustard|mostaza|custard|natilla|cream|crema|snot|pea_soup|mocos|guacamole -<bowel>
    <touched>|pressed|press|squeezed|aprieto|apretas|apriete ~~ sale|salio|came|comes|oozed|popped ~4 espeso|espesa|amarillo|amarilla|verde|blanco|thick|yellow|creamy|green|white -<poo>
    <wound> ~5 custard|natilla|crema|mayonesa|atole|mostaza|mustard|mayonnaise -<coneword>
    custard|natilla|mayonesa|mostaza|mustard ~5 <wound>|puntos
    <pusword> -<notpus>
    <puscolour> ~3 <goo> -<vomitctx>
    <goo> ~3 <puscolour> -<vomitctx>
    supura|supurando|weeping|oozing|oozes|leaking|draining|escurre|rezuma ~3 <puscolour> \
        -<vomitctx>
    <puscolour> ~ slime|mucus|matter|crud -<vomitctx>
    matter|materia ~2 like ~ custard|cream
    <wound> ~5 yellow|green|amarillo|amarilla|verde|cream|creamy|gunk|gunky|goo|verdoso|
        amarillento -<applied>
    yellow|green|amarillo|verde|creamy|thick|espeso|verdoso ~3 <wound>
    sale|salio|saliendo|coming|comes|escurre|sacando ~4 amarillo|verde|espeso|amarillento|
        verdoso|yellow|green|thick|blanco|creamy|materia
    = pus @incision
    yellow|green|gunk|gunky|goo|pus|creamy|amarillo|verde|thick|espeso|yellowish|greenish \
        -<poo> -<vomit> -<bruiseword>
    = odour
    olor|smell|odour|whiff|odor ~ agrio|acido|rancio|sour|sweet|acid -<other_than_wound>
    <smellword> ~3 operacion|cirugia|operation|surgery
    <wound>|operacion|operation|surgery ~5 <smellword> -<bandageword>
    <smellword> ~4 <wound> -<bandageword>
    = odour !@asked-bandage
    <smellword> ~3 bad|foul|rotten|awful|horrible|feo|mal|podrido|rancio|off|funky|disgusting|
        fuerte|nasty|rank|asqueroso|fishy|cheesy|sour|sweet|dead|muerto|raro|weird|funny|
        gacho|horrores|feito|putrido -<other_than_wound>
    bad|foul|rotten|nasty|strange|funny|horrible|awful|off|mal|funky|weird|strong|sweet|
        cheesy|dead ~ smell|smells|odour|odor|olor|whiff|stench -<other_than_wound>
    = odour @incision
    <smellword> -<other_than_wound>
    = open
    descosio|descosieron|descosido|descosida -<bandageword> -<coneword> -<toyctx>
    <wound> ~5 <openword> -<eyes>
    <openword> ~4 <wound>|incision|edges -<eyes>
    = open edges
    gap ~5 match|finger|fingernail|pencil|coin|penny|cerillo|lapiz|get_in|fit
    sprung|popped|pinged|burst|peeled|lifted|come ~ open|apart -<bagctx> -<coneword> -<bandageword>
    lips|mouth|boquita|labios ~4 come_apart|apart|opened|abierta|abierto
    stitches|puntos|staples|sutures ~ out ~3 teeth|mouth|tongue|himself|herself
    slot|slit|eyelet|buttonhole|ojalito|ojal|rajita|ranurita|boquita ~~ wound|cut|scar|stitches|penny|finger|herida|puntada|puntadas|punto|puntos
    desprendio|desprendieron|desprendido|given|gave|let ~ una|un|dos|way|go? <stitchword>
    <stitchword> ~3 given|gave way|out
    glue ~3 let|given|gave|failed|come|peeled|lifted
    <stitchword> ~3 given|gave way -<removal>
    edges|bordes|orillas|skin|sides ~4 apart|separated|open|separados|separada|abiertos|
        parting|not_meeting|pulled|abren|separan|gaping|lifting|abiertas
    <stitchword> ~4 popped|burst|came|come|missing|out|gone|fell|broke|broken|loose|undone|
        snapped|ripped|torn|pulled|solto|soltaron|salio|salieron|zafo|zafaron|cayo|cayeron|
        faltan|falta|revento|reventaron|rompio|rompieron|arranco|abrio|abrieron|suelto|
        sueltos|flojos|tronaron|trono|botaron|boto|desprendieron -<removal>
    soltaron|solto|zafo|zafaron|cayo|cayeron|botaron|reventaron|abrieron ~4 <stitchword> \
        -<removal>
    popped|burst|missing|lost|broke|pulled|ripped|snapped|tore|loose|chewed|arranco|perdio|
        solto|faltan|falta|se_quito|quito|mordio|bit|ate|comio ~4 <stitchword> -<removal>
    edges|bordes|orillas|lados|sides|skin ~4 no|not|arent|isnt|ya_no|never|dont|havent ~3 pegados|pegadas|juntos|juntas|together|meeting|meet|touching|joined|closed|met|cerrados|cerradas|unidos
    dehiscence|dehisced|dehiscing|dehiscencia
    gap|gaping|hole|hoyo|hoyito|hueco|agujero|abertura|slit ~4 <wound>|where|line|edges|in|
        stitches|en_la_herida|millimetres|mm|<size> -<tooth>
    <size> ~2 gap|hole|opening|dehiscence
    <slight> ~4 <openword> -<eyes>
    <openword> ~4 <slight>|<size>|superficial -<eyes>
    <size> ~5 <openword> -<eyes>
    = open @incision
    <openword> -<eyes> -<neg>
    popped open
    = open deep
    unzipped|parted|ripped|torn|split|gaping ~3 end|top|lado ~ to|a ~ end|bottom|lado
    see|ve|veo|seeing ~2 white|blanco|blanca|bone|red|rojo ~ in_there|inside|adentro|underneath|in ~ there?
    carne|hueso|musculo ~ de_fuera|de_afuera|al_aire|viva|afuera -<toyctx>
    carne|hueso|musculo de fuera -<toyctx>
    flesh|muscle ~3 exposed
    <seeword> ~ at ~ red|raw meat
    ve|ven|see|seeing|looking|veo ~ todo? por_dentro|adentro|inside|right_in|into_it|right_inside|hasta_adentro -<eyes> -<bowel>
    salio|sale|saliendo|came|coming|cayo ~3 pedazo|piece|bit|pedacito ~ de|of ~ metal|fierro|alambre|placa|tornillo|wire|plate|screw
    metal|fierro|fierrito|tornillo|placa|clavo|hueso|alambre|pin|screw|plate|wire ~3 sale|asoma|sobresale|salio|saliendo|sticks|pokes|protrudes|sobresaliendo ~3 de|por|out|through|la
    something|algo ~3 white|shiny|blanco|metal|metallic|brillante|duro|hard ~~ asomando|asoma|sale|saliendo|sticking|poking|through|sobresale -<eyes>
    abierta|abierto|open|opened|abrio|split ~2 de_lado_a_lado|end_to_end|from_end|top_to_bottom|de_arriba_abajo|completita|todita|de_punta_a_punta
    toda|todita|completamente|totalmente|entera ~ abierta|abierto -<slight>
    <seeword> ~5 <deepword> -<nodeep> -<toyctx>
    <deepword> ~4 <seeword> -<nodeep> -<toyctx>
    <deepbone> ~2 in|from|of|through|en|de ~2 <wound>
    down|hasta to|el ~ bone|hueso|muscle
    <openword> ~~ <deepbone> -<nodeep> -<eyes>
    hole|gap|open|opened|abierto|abierta|hueco|hoyo|abrio ~~ bone|metal|plate|screw|muscle|
        meat|flesh|hueso|placa|tornillo|musculo|carne|fat|tendon|tendons|tissue|grasa|tejido|
        deep|profunda|profundo|honda|hondo|clavo|fierro|pin -<nodeep> -<toyctx>
    hole|gap|open|opened|abierto|abierta|hueco|hoyo|abrio ~~ wide -<nodeep> -<toyctx> -<size> -<slight>
    gap|hole|hoyo|hueco|opening|abertura|slit|split ~~ shiny|white|blanco|brillante|bone|hueso
    <seeword> ~3 something|algo ~3 white|shiny|blanco|metal|metallic|brillante|duro|hard -<bandageword>
    something|algo|knuckle|bit ~3 white|shiny|blanco|metal|metallic|brillante ~5 <wound>|<seeword> \
        -<bandageword>
    <wound> ~~ something|algo ~3 white|shiny|blanco|metal|metallic|brillante
    wide open -<eyes> -mouth -jaw -door
    burst|bursted|split|popped|ripped|tore|torn ~ open|apart -<bagctx>
    tornillo|placa|clavo|hueso|fierro|alambre|plate|screw|pin|wire ~3 salio|salido|salir|
        fuera|out|poking
    salio|sale|asoma|salido|saliendo ~3 hueso|placa|tornillo|clavo|fierro|carne
    open wide
    abierta|abierto ~ completa|toda|completamente|totalmente|todita|bastante|de_par
    completely|totally|fully|all_the_way ~ open|opened|split|apart|burst
    gaping ~ wound|hole|open|incision
    bone|metal|plate|screw|pin|hueso|placa|tornillo|clavo|muscle|fierro ~3 showing|exposed|
        visible|out|sticking|through|expuesto|expuesta|salido|salida|poking|asoma|asomando|ve|
        protruding|fuera|afuera
    exposed|expuesto ~2 bone|metal|plate|hueso|implant|muscle|tissue|tendon
    se ve|ven|mira|asoma|alcanza ~4 hueso|placa|tornillo|carne|musculo|metal|adentro|clavo|
        tejido|tornillos|fierro|grasa|carnita
    """,
}

NEGATED = {
    "incision": {
        "clean": None,
        "red": None,
        "discharge": None,
        "pus": None,
        "odour": None,
        "open": None,
        "bleeding": None,
    },
}

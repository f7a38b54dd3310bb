"""The incision: clean, red, weeping, smelling. Opening and bleeding have their own modules."""

from __future__ import annotations

CLASSES = {
    "bearer": """
        eye eyes ear ears nose bandana bandanna tag leash lead harness toy toys crate kennel door gate
        bed blanket sofa jumper coat scarf bowl cushion pillow shirt sock carpet rug lid bag tooth teeth claw nail
        ojo ojos oreja orejas nariz panuelo paliacate placa_del correa arnes juguete juguetes jaula reja
        puerta cama cobija sillon ropita sueter chamarra plato cojin almohada tapete dientes diente bocina
        """,
    "applied": """
        put putting puse puso poner rub rubbed apply applied dabbed untamos cleaned limpie
        """,
    "bowel": "stool poop poo house box tray mouth boca hocico casa oreja",
    # "x" is written out as "por".
    "woundfine": """
        clean_as without_issue good_as_gold dry_as on_schedule on_track no_infection sin_infeccion
        lush dandy hunky fine_and_dandy no_ill no_bother flying clearing cleared prolija prolijo
        como_una_seda fenomenal nitida nitido fino finisima filete bacan bakan bakano impeke
        relinda super_bien_cerrada hecha_una_seda de_película de_pelicula flawless faultless
        exemplary by_the_book as_expected as_hoped exactly_as_expected ship_shape shipshape
        joined_up all_joined sano ya_sano a_su_lugar knitting_nicely hunky_dory spick_and_span
        awesome amazing superb terrific stellar fantastic fantastico fantastica buenisima
        buenisimo marvellous splendid first_class de_10 chingona al_tiro_la macanudo macanuda
        barbara joyita bien_cuidada no_dramas not_a_bother cant_fault_it healthy healthy_looking
        mending viento_en_popa estupenda estupendo dabuti chevere bacano bacana espectacular
        buena_pinta buen_aspecto buena_cara muy_sana sanita sana_sanita coming_on coming_along
        bang_on sound happy_with_it pleased_with_it delighted top_notch cojonudo de_puta_madre
        pura_rayita una_rayita thin_line white_line thin_white fina_linea no_trouble no_drama
        nada_que_decir textbook ace peachy tickety_boo the_business a_treat as_it_should
        like_it_should how_it_should present_and_correct como_nueva como_nuevo como_debe
        todo_en_su_lugar nada_raro na_raro nada_feo nothing_wrong nothing_weird nothing_odd
        nothing_nasty nothing_to_see nothing_alarming couldnt_ask_for_better couldnt_be_better
        not_a_mark picture_perfect chulada uncomplicated pristine mint immaculate spotless
        impecable no_leaks no_leaking no_oozing no_gunk no_goo good_as_new on_the_mend
        nada_de_que_preocuparse sin_nada_raro ni_se_nota de_lujo pro_job a1
        """,
    "shutword": """
        cicatrizada cicatrizado cicatrizados cicatrizando_sola cicatrizadita cerrandito mended
        mending skinned flush reconnected unida unido juntita juntitas pegadita pegaditos
        cerraditos firmes closed shut sealed knitted knitting fused glued_together pego pegada
        pegado cerro cerrado cerrada cerradita cerradito sellada sello soldo cicatrizo healed
        healing knits closing cerrando
        """,
    "redlike": """
        ruddy flared flared_up flare lit_up glowing strawberry raw_looking sore_looking brick
        rug_burn friction_burn carpet_burn razor_burn welt welts weal weals quemada quemado
        quemadura escaldada escaldado excoriated chafed raspada eczema hives urticaria raw rosy
        rash sarpullido roncha ronchas rozada rozado rozadura sunburn sunburnt ruby scarlet
        crimson blotchy salpullido
        encendida encendido encendidita beetroot_coloured beetroot_red lobster_red tomato_red lobster_coloured
        """,
    "spotword": """
        pimple zit boil pustule pustules pustula espinilla grano granito barro barrito whitehead
        absceso fistula
        """,
    "slimeword": """
        slough sloughy nata pudriendo pudriendose pudre gangrena necrotic necrosis grangrena gunge
        snot snotty moco mocos mayonesa mayo mayonnaise natilla custard atole yoghurt yogurt yogur
        cottage_cheese requeson curdled gusano gusanos gusanera maggot maggots larvas
        """,
    "xray": """
        x_ray x_rays xray xrays radiograph radiographs radiografia radiografias rayos_x imaging
        films tomografia ct_scan por_ray por_rays
        """,
    "redword": """
        pinkness angrier rubor rojura ruddiness irrita irritao colorao coloraa enrojecia
        rojiblanca rojez encarnada encarnado encarnadita eritematosa rubicunda rojona rojon
        rojisimo rojisima rojote rojiza enrojecio enrojeciendo enrojecidas enrojecidos colorados
        coloraditos coloradas irritadas irritados reds red redness reddish redder reddened pink
        pinkish pinker erythema erythematous inflamed angry angry_looking rojo roja rojita rojito
        enrojecido enrojecida enrojecimiento rojizo rosadito rosaditos rosada rosadita rosita
        coloradita colorada colorado eritema irritado irritada irritadita irritated flushed rosa
        rojos rojas ruborizada
        """,
    "seepword": """
        glistening glisteny stickiness gooey_clear wept weepiness lagrimea lagrimeando destilando
        supurita leakage weepage leakiness dribbly drippy aguadija aguadijas aguosa aguosidad
        linfa lymph agua_clarita agua_clara liquidos juguitos flujo destila gotea_claro
        chorreadita babeando soggy squelchy clammy sweating dewy seepy dampish wettish dampness
        wetness moistness escurrir mojadas mojados humedita humedito goteando goteo dribble
        dribbles dribbling goopy goop gloopy gloop straw_coloured straw_colored weep weeps
        discharge discharging seep seeps seeped seeping seepage weeping weepy ooze oozes oozed
        oozing oozy drainage draining drains drain exudate serous serosanguinous serosanguineous
        leak leaks leaking leaked drips dripping moist damp wet fluid clear_fluid liquid
        clear_liquid watery secrecion secreciones supura supurando supuracion liquido liquidito
        aguita moisture tacky serum juguito babosita baboso pegajosa pegajoso pegajosito llorosa
        sale_liquido escurre escurriendo escurrimiento llora lloroso drenando drena drenaje
        exudado sanguaza serosa suero rezuma rezumando humeda humedo mojadita mojado mojada seeply
        plasma
        """,
    "pusword": """
        pudricion podredumbre podre suppuration pyogenic empyema pus pussy pussing pussed
        pussy_stuff purulent purulento purulenta suppurating septic festering festered festers
        encono enconada enconado enconandose suppurative infected infection abscess abscessed
        infectado infectada infeccion infecto absceso postema materia pusy puss pús pusulento
        """,
    "puscolour": """
        yellowy greeny amarillosa verdusco verdusca amarilloso yellowgreen khaki mustard_coloured
        chunky clumpy curdled mostaza caqui pastoso pastosa marron cafe_espeso grumoso grumosa
        crema_espesa yellow green greenish yellowish creamy cream thick cloudy white milky gunky
        gunk goo gooey grey gray brown custard amarillo amarilla amarillento amarillenta verde
        verdoso verdosa espeso espesa cremoso cremosa blanco blanca turbio lechoso gris blancuzco
        beige
        whitish whiteish blanquecino blanquecina blancuzca blanquizco blanquizca yellowy_white
        """,
    "goo": """
        gunge crud yuck porqueria cochinada mugre plasta pasta discharge stuff goo gunk liquid
        fluid ooze oozing drainage liquido secrecion cosa materia exudate seep slime weeping
        dripping leaking coming liquidito crema muck escurre sale saliendo mucky matter
        """,
    "smellword": """
        humming baranda catinga vaho tufarada pestilencia huelen oliera atufa atufo hedionda
        olisco olisca chuquia chuquio grajo berrinche sniffy smellier ponged olorazo apestan
        hieden jede jediondo jedionda smell smells smelled smelly smelling smelt stink stinks
        stinky stinking stunk stank reek reeks reeking reeked whiff whiffs whiffy pong pongs pongy
        odour odor odours odors malodorous foul rank pungent fetid foetid stench niff niffy
        funky_smell manky_smell rotten putrid putrefied off_smell huele hiede apesta apestoso
        apestosa apesto olor oloroso mal_olor pestilente peste hedor fetido fetida olia oliendo
        hediondo oler huela tufo cheesy_smell podrido podrida ahiede jiede olorcito olorcillo ripe
        gamey gamy honks honk honking hums humming_smell ponging minging agrio rancio acido
        pestazo tufillo
        """,
    "seeword": """
        see seeing sees saw visible showing shows exposed looking_at staring_at look_at sticking
        poking peeking protruding out through ve veo ven asoma asomando asoman salido expuesto
        expuesta ver mira miro aprecia visto looks viendo alcanza saliendo salida visibles
        viewable peeping
        """,
    "other_than_wound": """
        orina urine orin pipis ear ears eye eyes nose teeth breath mouth fart farts food poo poop
        pee wee bandage dressing wrap cast splint vendaje venda aliento pedo pedos orejas oreja
        boca popo caca pipi litter tray dog_food gums tongue ferula yeso farty
        """,
    "bloodything": """
        bandage vetwrap collar leash lead towel poop poo pee wee stool urine red_spots popo pipi
        """,
    "bagctx": "bag packet box tin bottle bandage cone food sack pill bin bolsa",
    "eyes": "eye eyes nose nasal ojo ojos nariz mouth boca puerta door gate reja",
    "dryword": "dry seca",
    "looksbad": "but pero except though",
    "pinkline": "line linea rayita raya",
    "notpus": "chest ear ears eye urinary uti bladder throat stomach ojo oreja puss_in",
    "vomitctx": """
        vomit puke vomito sick bile foam poo poop popo diarrhea diarrhoea diarrea eye eyes nose
        bruise moreton food bowl gums
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
    <neg> ~ infection|infeccion|infected|infectada
    just|only|nomas|solo ~2 faint|thin|fine|white|pale|pink|delgadita|fina ~ line|scar|linea|rayita
    healthy|normal|nice|good ~ pink|colour|color ~3 skin|edges|line|wound|healthy|normal?
    pink|rosita ~ healthy|normal|sana|y_sana
    spotless|immaculate
    <wound> ~5 <woundfine>|<shutword>
    <woundfine>|<shutword> ~3 <wound> -<openword>
    hardly|barely|scarcely|never ~ know|think|guess|tell|believe ~5 surgery|operated|operation|cut|op|opened
    <wound> ~3 hardly|barely|scarcely|casi_ni|casi_no|apenas ~3 noticeable|visible|there|nota|ve|see|notice
    <wound> ~4 fading|faded|flat|flattening -<swell>
    fur|hair|pelo|pelito ~3 growing|grown|coming|creciendo|saliendo|sale|salio ~3 back|around|over? +<wound>
    los|las|all|every|todos|todas ~2 <stitchword> ~2 there|in|todos|todas|puestos|ahi -out -<removal>
    <stitchword> ~3 all|todos|todas ~ there|in|in_place|intact|secure|ahi|puestos|presentes
    operacion|cirugia|op|surgery ~2 seca|seco|limpia|clean|dry|healed|healing
    = clean fixed @incision @asked-incision
    nothing|nada ~ oozing|leaking|red|weeping|open|showing|coming|bleeding|bleeds|rojo|abierto|sale|saliendo|escurre|supura|sangra|sangrando -<poo> -<vomit> -<pee>
    = clean fixed @asked-incision
    cant|couldnt|ni ~ even|se ~ le? see|ve|nota|find -inside -adentro -bone -<seepword> -because
    just|pura|puro|basically|only ~ a? scar|cicatriz|line|rayita
    ni <redword> ni <swell>
    ni <swell> ni <redword>
    = clean @asked-incision
    doing|coming|going|healing|looking|coming_along|va|viene|sigue ~ well|good|great|fine|grand|nicely|lovely|away|bien|mejor|perfecto
    cada ~ dia|vez mejor
    smaller|paler|thinner|flatter|fainter ~~ smaller|paler|thinner|flatter|fainter -<swell> -<bruiseword>
    flat|smooth ~~ dry|seca
    its|it as flat as
    <woundfine>|<shutword> -<openword> -<stopneg>
    fur|hair|pelo|pelito ~3 growing|grown|coming|creciendo|saliendo|sale|salio
    hardly|barely|scarcely|casi_ni|casi_no ~3 noticeable|visible|there|nota|notan|ve|see|notice|tell -<swell>
    <neg> ~4 wrong|nasty|feo|fea|raro|rara|malo ~2 see? -<looksbad>
    bonita|bonito|linda|lindo|hermosa|divina|preciosa|chula|lisa|lisita
    fading|better ~ every|each|cada|day|dia
    cayo|cayendo|fallen|come|came|falling ~3 costra|costrita|scab ~~ smooth|lisa|lisita|new|pink|rosita|nueva
    costra|costrita|scab|scabs ~3 cayo|cayendo|fallen|come|came|falling ~~ smooth|lisa|lisita|new|nueva|pink|rosita
    = clean @incision @asked-incision
    dry|seca|hard ~ crust|crusty|scab|scabby|costra|costrita
    looks|looking|se_ve|va|way|much|lot|bit|esta|mucho|un_poco ~2 better|mejor|improved|prettier -<legword> -<swell>
    scab|scabs|scabby|costra|costrita -<seepword> -<redword>
    clean|dry|closed|intact|neat|healed|limpia|seca|limpiecita|sequita|cerrada|cerradita|
        limpio|seco|healing|cicatrizando|tidy -<bandageword>
    ^ <good>
    looks|look|looking|se_ve|se_ven|la_veo|veo|sanando|cicatrizando ~ <good>|rebien
    todo|all|everything ~2 <good>
    thin|fine|just|only|nomas|solo|little ~3 pink|red|rosa|rosita|roja ~ <pinkline>
    abajo|underneath|under ~3 rosita|pink ~ y|and lisa|smooth|lisita
    inflammation|inflamation|inflammed|inflamacion ~3 red|redness|roja|rojo
    inflammation|inflamation|irritation|irritacion ~ along|around|round|near|next|en|de ~2 <wound>
    = red
    <redword> ~4 esquina|esquinita|corner|one_end|bottom_end|top_end|edge|orilla|orillita|puntita -gums -<bloodything> -<eyes>
    <wound> ~5 <redword> -<bloodything> -gums
    <redword> ~4 <wound>|edges|around|alrededor|bordes|orillas|stitches -<bloodything> -gums
    edges|bordes|orillas|skin|piel|around|alrededor|area|line ~3 <redword> -gums
    <redword> ~2 edges|bordes|skin
    skin|piel ~7 <redword> -gums -<bloodything>
    cherry|beefy|fiery|angry|beetroot red -gums -<bloodything>
    <redword> ~3 hot|hinchada|swollen|puffy|warm -gums
    sore|tender|hot|warm|swollen_and|caliente|inflamada ~ and|y <redword> -gums -<eyes>
    <redlike> ~4 <wound>|edges|around|alrededor|bordes|orillas -meat -steak -chicken -carne
    <wound> ~5 <redlike> -meat -steak -chicken -carne
    edges|orillas|bordes ~3 sore ~ and|y? inflamed|inflamadas|irritadas
    <redword> ~~ <swell>|sore|hot|warm|puffy|caliente|hinchada ~4 <wound> -gums -<eyes> -<bloodything>
    <redword> and|y|e ~2 <swell>|hot|sore|warm|caliente ~4 <wound> -gums -<eyes>
    = red @incision @asked-incision
    <redlike> -meat -steak -chicken -carne -<food>
    = red @incision @swelling @licking @asked-incision
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
    pinkish|pink|reddish|rosado|rosada|rosita|rosa|rojizo ~ water|agua|aguita|juguito|moisture|drip|drips|liquido|liquidito
    water|watery|agua|aguita|escurrimiento|juguito|secrecion|secrecioncita ~ pinkish|pink|reddish|rosado|rosada|rosita|rosa|rojiza|rojizo
    liquidito|liquido|fluid|gotas ~ rosa|rosado|rosita|pink|pinkish|rojizo
    crust|crusts|crusted|costra|costrita|costras ~ yellow|yellowish|amber|amarilla|amarillas|amarillita
    <wound> ~3 llorando|llora|sudando|sudorosa|sticky|tacky
    llorando|llora ~2 <wound>
    yellow|yellowish|yellowy|amarillo|amarillita|amarillito|amber|straw|pale_yellow clear|thin|watery|aguado|aguadito|clara|clarito|claro|transparent|transparente|watery <goo>|seep|liquid?
    <goo>|agua|aguita ~3 amarillita|amarillito ~ clara|clarita|claro|clarito|transparente?
    agua|aguita|gotas|liquido ~2 clarita|clara|clarito|transparente
    sale|suelta|echa|bota|tira|botando|soltando|echando ~3 agua|aguita|liquido|liquidito|suero|jugo -<poo> -<eyes> -<vomit>
    suda|sweats|sweating|sudando ~2 <wound>
    = discharge @asked-incision
    clear|wet|damp|moist|humeda|mojada|clarita ~ stain|mark|marks|patch|patches|ring|spot|spots|mancha|manchita|marca
    = discharge @incision @asked-incision
    sticky|crusty|crusted|moist -<bandageword>
    <seepword> -<bandageword> -<eyes> -<dryword>
    = pus
    <wound> ~6 <spotword>|<slimeword> -<applied>
    <spotword>|<slimeword> ~4 <wound> -<applied>
    white|blanca|blanco head|cabeza|cabecita ~~ <wound>|pimple|barro|espinilla
    <wound> ~4 full|filled|llena|lleno ~ of|de <pusword>|matter|gunk|goo|muck
    cheesy|caseous|snotty|snot_like|mucky ~2 stuff|gunk|goo|matter|slime|material ~4 <wound>
    muck|gunge|crud|gunk|goop|yuck|porqueria|cochinada ~4 <wound> -clear
    <wound> ~5 muck|gunge|crud|goop|yuck|porqueria|cochinada -clear
    <slimeword> ~~ sale|saliendo|salio|coming|came|escurre|tira -<poo> -<vomit> -<eyes>
    yellow|green|white|amarilla|amarillo ~ blob|lump|bubble|patch|crater|spot|head|bolita|bulto ~~ burst|popped|revento|came|open
    amarillento|amarillo|verdoso|yellow ~ y|and ~ apestoso|stinky|smelly|espeso|thick
    suelta|soltando|echa|echando|bota|botando|tira|tirando|saca ~2 <pusword>|amarillo|verde
    got|has|is|its|gone|went|turned ~ all? septic|manky
    <seepword>|sale|salio|escurre|brota ~4 colour|color|colour_of|de_color|like|como ~3 mustard|mostaza|custard|natilla|cream|crema|snot|pea_soup|mocos|guacamole|milk|leche|queso|cheese -<bowel> -<smellword>
    <touched>|pressed|press|squeezed|aprieto|apretas|apriete ~~ sale|salio|came|comes|oozed|popped ~4 espeso|espesa|amarillo|amarilla|verde|blanco|thick|yellow|creamy|green|white -<poo>
    <wound> ~5 custard|natilla|crema|mayonesa|atole|mostaza|mustard|mayonnaise -<coneword>
    custard|natilla|mayonesa|mostaza|mustard ~5 <wound>|puntos
    <pusword> -<notpus>
    <puscolour> ~3 <goo> -<vomitctx>
    <goo> ~3 <puscolour> -<vomitctx>
    supura|supurando|weeping|oozing|oozes|leaking|draining|escurre|rezuma ~~ <puscolour> -<vomitctx> -<bowel>
    <puscolour> ~ slime|mucus|matter|crud -<vomitctx>
    matter|materia ~2 like ~ custard|cream
    <wound> ~5 yellow|green|amarillo|amarilla|verde|cream|creamy|gunk|gunky|goo|verdoso|
        amarillento -<applied>
    yellow|green|amarillo|verde|creamy|thick|espeso|verdoso ~3 <wound>
    sale|salio|saliendo|coming|comes|escurre|sacando ~4 amarillo|verde|espeso|amarillento|
        verdoso|yellow|green|thick|blanco|creamy|materia -<poo> -<vomit> -<eyes>
    = pus !@bruising
    blob|lump|bit|glob|dollop|string ~ of ~ yellow|green|thick|creamy|whitish
    = pus !@bruising @incision @asked-incision
    yellow|green|gunk|gunky|goo|pus|creamy|amarillo|verde|thick|espeso|yellowish|greenish \
        -<poo> -<vomit> -<bruiseword>
    <spotword>|<slimeword> -<applied> -<eyes> -<food> -toe -<smellword>
    = odour
    olor|smell|odour|whiff|odor ~ agrio|acido|rancio|sour|sweet|acid -<other_than_wound>
    <smellword> ~3 operacion|cirugia|operation|surgery
    <wound>|operacion|operation|surgery ~5 <smellword> -<bandageword>
    <smellword> ~4 <wound> -<bandageword>
    = odour agent
    i|we|you|can|puedo ~2 smell|smells|huelo|oler ~3 <wound>|leg|it ~4 from|across|room|desde|a_metros?
    i|we can smell ~2 <wound>
    sniff|whiff|smell|nose ~ of|at|to|near ~2 <wound> ~~ gagged|retched|heaved|recoiled|horrible|awful|disgusting
    no huele ~2 bien|rico|bonito
    doesnt|dont|not|isnt ~2 smell|smelling ~ so|too|very|that|particularly? great|good|right|nice|clean|healthy|sweet
    smell|smells|pong|whiff|olor|stink ~~ from|de ~2 where|donde ~4 <wound>|cut|operated|operaron|opened
    giving|gives|dando|coming ~ off ~3 smell|odour|odor|stink|pong|whiff -<bandageword>
    de|from ~3 <wound> ~ sale|viene|comes|coming ~3 <smellword>
    = odour !@asked-bandage
    <smellword> ~3 bad|foul|rotten|awful|horrible|feo|mal|podrido|rancio|off|funky|disgusting|
        fuerte|nasty|rank|asqueroso|fishy|cheesy|sour|sweet|dead|muerto|raro|weird|funny|
        gacho|horrores|feito|putrido|eggy|meaty|mouldy|moldy|musty|sickly|gross|unpleasant|vile|yeasty|iffy|dodgy|minging|horrid|maluco|asquerosa|asco|nauseabundo|espantoso -<other_than_wound> -<food>
    bad|foul|rotten|nasty|strange|funny|horrible|awful|off|mal|funky|weird|strong|sweet|
        cheesy|dead ~ smell|smells|odour|odor|olor|whiff|stench -<other_than_wound>
    = odour @incision @asked-incision
    <smellword> -<other_than_wound>
    = clean @asked-incision
    <stitchword> ~3 there|present|in_place|accounted|holding|intact|completos|completas|sitio|lugar -<neg>
    = red
    beetroot|lobster|tomato|strawberry|cherry ~ coloured|colored ~3 skin|<wound>|edges
    = discharge
    blood|bloody mixed|tinged|tinted|streaked|coloured|colored ~ stuff|fluid|goo|liquid|water
    watery|thin|weak ~ blood|bloody ~ stuff|fluid|liquid|mix|mixed|drops|spot
    = discharge @asked-incision
    mancha|manchas|manchita|manchitas|gotita|gotitas ~ rosada|rosadas|rosadita|rosaditas|rositas|aguada|aguadas|aguaditas
    spot|spots|drop|drops|mark|marks ~ of ~ pink|pinkish|watery
    = clean fixed @asked-incision
    not|isnt|no ~ red|hot|swollen ~~ not|isnt|no|or|nor ~ hot|leaky|leaking|oozing|weeping|red|swollen|smelly|open
    no splits|gaps|holes|leaks|weeping|pus|swelling|oozing no|or|nor ~ gaps|splits|holes|leaks|gunk|oozing|redness
    no ~ esta|se_ve|anda ~ abierta|abierto|roja|rojo|hinchada|infectada ~ ni tantito|nada|poquito|tantita
    no ~ smell|odour|odor|pong|whiff ~4 it|her|him|whatsoever|all
    dry|clean|closed|seca|cerrada ~ since|desde|now|ya
    = clean
    <wound> ~4 clear|tight|<good> -<seepword> -<goo> -<redword> -<openword> -<bandageword> -<vomit>
    <wound> ~~ shut|closed|cerrada|cerradita -<openword> -<neg>
    = clean @asked-incision
    tidy|neat|smooth|textbook|boring|uneventful -<neg> -<openword> -<redword> -<seepword>
    just|exactly ~ like|as ~ the|in? photo|picture|leaflet|before -<openword> -<redword>
    igual|igualita ~ que|a ~ la|en foto|ayer|antes -<openword> -<redword>
    sin ~ cambios|secreciones|novedades|enrojecimiento|complicaciones
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

"""Bleeding of the incision, and how much."""

from __future__ import annotations

CLASSES = {
    "wetfrom": """
        water bath rain shower lluvia agua bano pee drool
        """,
    "mopword": """
        towel towels washer washers flannel flannels cloth cloths rag rags pad pads gauze sheets tissue
        tissues wipes kitchen_roll nappy nappies swabs cotton_pads toalla toallas trapo trapos servilleta
        servilletas compresa compresas panales papeles
        """,
    "pressing": """
        pressing press pressed pressure presionando presiono presione apretando aprieto apriete
        apretandole comprimiendo compressing presion_con haciendo_presion
        """,
    "bleedword": """
        blood bloods bleed bleeds bleeding bled bleedin bloody haemorrhage hemorrhage
        haemorrhaging hemorrhaging sangre sangra sangrando sangro sangrado sangrar sangraba
        hemorragia sangrita sangrante ensangrentado ensangrentada hemorrhages gore
        """,
    "pour": """
        spraying sprays sprayed gushy flooded flooding flood galore reguerio regueria cantidad
        montón chorreadero charcote tirando_mucha machin litros_de un_monton montones bastantisima
        muchísima un_pocoton burda chorreo chorrea river rivers buckets pouring pours poured pour
        gushing gush gushes gushed spurting spurts spurt spurted squirting squirts squirted
        pumping pumps flowing flows flowed flow streaming streams pooling pool pools puddle
        puddles everywhere soaked soaking soaks drenched profuse profusely heavy heavily lots
        loads tons massive a_lot lot non_stop nonstop covered wont_stop cant_stop doesnt_stop
        hasnt_stopped not_stopping isnt_stopping running_down running dripping_constantly
        through_the_bandage chorro chorros chorreando a_chorros chorreaba mucha muchisima harta
        empapado empapada charco charcos brotando brota borbotones no_para no_deja no_ha_parado
        sin_parar no_se_detiene bastante bañado bañada litros hemorragia abundante un_chingo llena
        lleno tirando floods uncontrolled uncontrollably arterial
        """,
    "dripword": """
        spotty dotty rayita raya hilo veta vetita streaky smudges pinpricks tinge tinged smidgen
        teeny cachito poquitin tris chin pelin toque tilin pizquita nadita miaja mijita
        chorrito_chiquito spots_of dots specks flecks fleck streaks puntitos gotica goticas
        gotitas chispita chispitas pinta pintas pintitas poquitico poquititico apenitas
        manchaditas tad tantico bead beads smears dabs touch hint spot spots spotting drop drops
        drip drips dripping dripped drippy trickle trickling trickled bit little slight slightly
        slow slowly tiny few ooze oozes oozing oozed seep seeping speck smear streak dot dab stain
        stains light lightly minor small gota gotas gotita poquito poquita poco poca tantito
        tantita manchita manchitas mancha manchas hilito puntito unas leve lento ligero ligera
        manchado smudge patch stained
        """,
    "stopword2": """
        stopped stops quit ceased paro dejo_de se_detuvo ya_no detuvo paró se_quito dried clotted
        seco coagulo cedio quit_bleeding has_stopped its_stopped
        """,
    "notwoundblood": """
        vomit vomited vomiting puke puked poo poop poops stool stools pee wee urine sick popo caca
        vomito orina pipi diarrhea diarrhoea diarrea heces pressure test tests work gums nose
        mouth tongue ear eye nail claw cough coughing coughed nariz boca oreja su_una
        una_una sus_unas bile his_bottom her_bottom their_bottom bum heat period celo season spit
        escupe blood_pressure teeth diente nosebleed hematemesis threw_up brought_up vomits
        throwing_up pis chis tooth guacareo puking barf throw_up devolvio devolver devolviendo
        vomita vomitando arrojo basca
        """,
    "lightly": "stopped just_a_few",
    "pourblood": """
        bleeding_heavily bleeding_profusely bleeding_a_lot gushing spurting chorreando
        """,
    "bleedslots": "stool_blood urine_blood",
    "hesitates": "pero but",
    "sizeless": "nada_mas nomas",
    "rainword": "rain raining sky outside love tea weather head",
    "heavywords": "gushing pouring everywhere soaked",
}

RULES = {
    "incision": """
    = bleeding
    haemorrhage|hemorrhage|haemorrhaging|hemorrhaging|hemorragia -<notwoundblood>
    <bleedword> & <wound>
    <bleedword> & operacion|operation|surgery|cirugia
    <wound> ~5 <bleedword>
    bleeds|bleeding|bled|bleed|sangra|sangrando|sangro|sangrado|sangraba -<notwoundblood>
    <bleedword> ~4 leg|knee|pata|patita|rodilla|pierna|floor|bed|blanket|towel|piso|cama|
        cobija|bandage|venda|vendaje|bedding|everywhere|carpet|dressing|paw -<notwoundblood>
    blood|sangre on|all|en|por ~ floor|bed|blanket|bedding|carpet|cama|cobija|piso|everywhere|
        over -<notwoundblood>
    sale|salio|saliendo|salen|salieron|coming|comes|tira|saca|dripping|oozing|brota|leaking ~4 \
        sangre|blood|sangrita -<notwoundblood>
    blood|bloods|sangre ~3 dripping|coming|pouring|oozing|saliendo|sale|seeping|leaking|running|
        trickling|brotando|escurre -<notwoundblood>
    sangre ~ fresca|roja -<notwoundblood>
    fresh|bright ~2 blood -<notwoundblood>
    = bleeding !@vomiting !@stool !@urine !@swallowed !@gums
    ^ blood|sangre|bleeding|sangrando $
    <redword> ~ blood|sangre -<notwoundblood>
    there|theres|hay|veo|see|seeing|found|encontre|lots|tiene|has|trae ~3 blood|sangre \
        -<notwoundblood> -<neg>
    = bleeding @incision @licking @bandage
    <bleedword> -<notwoundblood>
    = bleeding heavy
    <bleedword> ~3 constantly|continuously|nonstop|non_stop|sin_parar|all_the_time|steadily|continually|constantemente|todo_el_tiempo
    <bleedword> ~~ cant|couldnt|cannot|unable|no_puedo|no_logro ~3 stop|staunch|stem|parar|pararla|detenerla|pararlo|control ~ it|la|lo?
    <bleedword> ~3 all ~ over|down -<bruiseword> -<notwoundblood>
    bleeding|bleeds|bled ~ out -fine -check
    spraying|sprays|jetting ~2 blood|everywhere
    squirts ~2 blood
    corre|corriendo|escurre|baja|bajando ~3 sangre
    sangre|blood ~ no ~2 para|detiene|cede|corta|deja
    sangra|sangrando|sangro ~2 feo|horrible|mucho|muchisimo|bastante|demasiado|harto|un_monton|cantidad
    steady|constant|continuous ~ stream|flow|trickle|drip ~ of? ~ blood|bleeding?
    mojo|moje|empape|empapo|gaste|llevo|van ~3 toallas|trapos|gasas|towels ~~ sangre|sangrando
    its|it|leg|wound|cut|pata|knee ~2 pissing|pishing|pissed|pouring ~ blood|out
    chorro|chorros ~ de sangre
    sigue|sale|saliendo|salia|salio ~ a chorro|chorros|chorritos|borbotones
    pumping|pouring|gushing|spurting|streaming ~2 red
    blood|bleeding ~4 buckets|rivers|stuck_pig|mad|tap
    bloody ~ paw? prints|pawprints|footprints|huellas ~ everywhere|all|por|todos
    <bleedword> ~4 everywhere|por_todos|por_toda|por_todas
    sin|no ~2 parar ~ de? sangrar
    <bandageword>|toalla|towel|bedding|blanket ~3 red|roja|rojo ~2 through|soaked|dripping|right|empapada
    <pressing>|holding|hold|held|aprieto ~3 towel|toalla|cloth|gauze|gasa|pad|trapo|flannel ~~ soaked|soaking|empapa|empapada|empapo|through
    tanta|tantisima|so_much|all_this ~ blood|sangre -<notwoundblood>
    between ~ my|the ~ fingers +<bleedword>|running
    tap|llave|manguera|hose +blood|sangre
    soaked|drenched|empapado|empapada|dripping ~ red|rojo|in_red
    <neg> ~ clot|clotting|clots|coagula|coagular|coagulando
    crime|murder scene
    bloodbath|carniceria|matadero|blood_bath
    reguero|rio|rastro|charcos|trail|trails|camino|hilera|hilerita ~ de|of sangre|blood
    <bleedword> ~~ not|isnt|no ~ slowing|easing|letting|baja|cede|disminuye
    <bleedword> y|and <bleedword>
    cant|cannot|couldnt|wont|doesnt|no|not|nothing|unable|hasnt|nada|isnt ~4 control|controlled|staunch|stem|slow|slowing|contener|controlar|cortar|corta|cede|para ~3 bleeding|blood|flow|sangre|sangrado|hemorragia|sangrando
    cant|cannot|couldnt|no|not|unable ~3 bleeding|blood|sangre|sangrado|hemorragia ~3 control|controlled|contener|controlar|to_stop
    no se ~3 corta|cortado|detiene|para|cierra ~3 sangre|sangrado|hemorragia
    desangr*
    ^ its|it|still|just|sigue|esta gushing|spurting|squirting|chorreando
    <pressing> ~~ <neg>|nada ~3 stop|stops|stopping|stopped|para|parar|detiene|corta -<cryout> -<vomit>
    <pressing> ~~ still|sigue|keeps|todavia ~2 <bleedword>|coming|saliendo|going -<notwoundblood>
    blood|sangre ~4 keeps|sigue ~ coming|saliendo|flowing
    sangre ~2 chorritos|chorrito|chorros|borbotones|a_mares
    bled|bleeds|bleeding ~ through|right_through ~3 towel|towels|bandage|gauze|blanket|bedding|shirt
    rivers|river|rios of|de blood|sangre
    <bleedword> & <pour> -<notwoundblood> -<lightly>
    <wound> & <pourblood>
    pumping|gushing|spurting|welling|spouting|squirting|pouring out|up|through|over|down -<rainword>
    pouring|gushing|spurting|squirting|chorreando|chorrea|borbotones ~2 blood|sangre|out
    blood|bloods|sangre ~ coming|running|pouring|gushing|comes ~ through|out|down -<stopword2> \
        -<dripword> -<notwoundblood>
    blood|sangre pouring|gushing|everywhere|spurting|squirting
    wont|cant|doesnt|hasnt|isnt|not|no|wouldnt|never|nothing|couldnt ~2 stop|stopped|quit|stopping|
        para|detener|parar|detiene|parado ~3 bleeding|blood|sangre|sangrar|sangrado
    bleeding|blood|sangre|sangrado|sangrando|sangra ~4 wont|cant|doesnt|hasnt|isnt|not|no|
        wouldnt ~2 stop|stopped|stopping|para|parar|detener|deja|detiene|parado
    no para|deja|ha_parado ~2 de? sangrar|sangrando
    soaked|soaking|through|empapo|empapado ~3 towel|towels|bandage|pads|dressing|toalla|venda|
        vendaje|gauze|sheet|gasa|rags ~~ blood|sangre
    blood|sangre ~5 soaked|soaking|empapada|empapado|pool|puddle|charco|through -<dripword>
    blood|sangre ~5 floor|piso|suelo -<dripword>
    pool|puddle|charco|pools|poza|pozo|lake of|de blood|sangre
    losing|lost|perdiendo|perdido ~3 blood|sangre
    covered|bañado|bañada|lleno|llena|cubierto ~2 in|de|en|with blood|sangre
    lots|lot|loads|tons|so_much|mucha|muchisima|harta|much|bastante ~ of? blood|sangre \
        -<notwoundblood> -<neg>
    = bleeding heavy @asked-incision
    ^ no para|cesa|deja|parara $
    ^ no se detiene|corta $
    its|it|is|still|now ~2 running|runs|ran|streaming ~ all? ~ down ~ his|her|the|its ~ back|hind|left|right? ~ leg|thigh|paw|knee|side|hock
    = bleeding heavy @incision
    soaked|soaking|through|empapo|empapado|gastado|gaste|ya_van ~4 towel|towels|gauze|dressings|toalla|toallas|gasas|rollo|papel|pads
    pouring|gushing|spurting|chorreando
    it|just|still|but|y|pero wont|doesnt|cant|hasnt|isnt|not|no ~ stop|stopped|stopping|para|
        detiene -<vomit> -<lick> -<cryout>
    ^ wont|doesnt|cant|hasnt|isnt stop|stopped|stopping
    = bleeding slow
    despacio|despacito|slowly|lentamente ~~ sangre|blood|sangrando|bleeding -<pour>
    <bleedword> ~~ gota|gotita|drop|drip ~ cada|every|a|at|each|now -<pour>
    faint|thin|tiny|small|little ~ streak|smear|trace|line|spot|stain|hint|smudge ~ of ~ blood
    wept|weeping|weeps|weep ~2 blood
    red|rojas|rojos|roja ~ spot|spots|drops|drop|smear|stain|manchas|manchitas|gotas|gotitas|puntitos|mancha ~~ <wound>|bed|bedding|blanket|gauze|sheet|floor|cama|cobija|gasa|bandage -<pee> -<poo> -<eyes> -gums -belly -<bruiseword>
    spotting ~4 blanket|bed|bedding|sheet|floor|gauze|towel -<pee>
    bead|pinprick|pinpricks|dab|dribble|smidge|touch|hint|trace|pizca|chin|chispa|rastro|rastrito|tiny ~3 blood|sangre|sangrita -<pour> -<vomit> -<bleedslots>
    sangrita -<pour> -<heavywords> -<notwoundblood>
    gotea|goteando|goteo ~3 sangre|sangrita -<pour>
    gotea|goteando|goteo|gotas|gotita|drip|drips|dripping ~ sangre|blood ~3 despacio|despacito|slow|slowly|lento|lentamente|apenas
    <bleedword> ~3 despacio|despacito|slowly|lentamente|apenitas
    manchita|manchitas|gota|gotita|gotitas|puntito|puntitos ~2 <redword>? de ~ sangre
    <dripword> ~3 <bleedword> -<notwoundblood> -<pour>
    <bleedword> ~3 <dripword> -<notwoundblood> -<pour>
    <dripword> ~4 blood|sangre -<notwoundblood> -<heavywords>
    <bleedword> ~3 <wound> & <dripword> -<pour>
    = bleeding stopped fixed
    <bleedword> ~~ nothing|none|nada ~ now|today|tonight|since|ahora|ahorita|hoy|ya
    <bleedword> ~~ ahorita|hoy|ahora|ya|now|today ~ nada|nothing|none|ninguna -<sizeless>
    <bleedword> ~~ but|pero ~ not|none|no|nothing|nada ~ since|desde|anymore|again|more|mas
    = bleeding stopped
    ya no ~ bota|sale|tira|echa|suelta|escurre|chorrea|gotea|corre ~ mas? sangre
    sangrado|sangro|sangre ~~ ya ~2 cortado|parado|detenido|secado|cesado|parao|cortao
    sangro|sangre|sangraba|bled|blood ~~ ya|now|its|all ~ esta|quedo|anda|is|looks? bien|seco|seca|limpia|limpio|mejor|ok|fine|dry -<neg> -<pour>
    bled|bleed|blood|bleeding|sangro|sangre ~~ dry|fine|clean|ok|okay|seco|seca|bien|limpio|limpia ~ now|today|this|ahora|hoy|ya -<neg> -<pour> -dry_blood
    bled|bleed|blood|bleeding ~~ but|and ~ its|it|all? dry|fine|ok|good ~ now|again|since -<pour>
    eased|slowed ~ off|down ~ and stopped
    ceased|halted ~2 bleeding
    <bleedword> ~~ not any_more|anymore|any_longer|now
    sangro|sangraba|sangre|bled|blood|bleeding ~~ <hesitates>? ya|y ~ paro|quito|corto|ya|nada|cedio|pasado|corta|detuvo|no -<neg> -sigue -todavia -ya_van
    se le? corto|detuvo|quito ~ la|el sangre|sangrado
    sangro|bled|sangre|blood ~2 ratito|rato|minute|moment|momento|second ~ y|and ya|stopped|done|paro|thats
    <bleedword> ~~ <stopword2> -<neg> -<notwoundblood>
    <stopword2> ~2 bleeding|sangrar|sangrando|sangrado -<neg>
    dejo de sangrar
    ya paro|no_sangra|dejo ~ sangrar?
    = bleeding stopped @incision
    <stopword2> -<neg> -<seepword> -dried -dry -seco
    = bleeding heavy
    through|thru ~2 every|each|another|<numword>|all ~3 <bandageword>|<mopword> -<pee> -<poo>
    soaked|soaking|soaks|gone|going ~2 through|thru ~4 <mopword> -<pee> -<poo> -<wetfrom>
    soaked_through ~4 <mopword> -<pee> -<poo> -<wetfrom>
    empapo|empapado|empapa|gaste|llevo|traspasa|traspaso ~ ya? <numword>|todas|cada|otra ~2 <mopword>|<bandageword> -<pee> -agua
    puddle|pool|pools|puddles ~ of ~ red|crimson|scarlet
    charco|charcos ~ rojo|rojos ~4 debajo|abajo|bajo|pata|cama|cobija -<pee>
    leaking|leaks|running|dripping|oozing|seeping ~ like ~ a? tap|faucet|hose|hosepipe|fountain -<pee> -<poo> -<eyes> -<vomit>
    escurre|chorrea|gotea|sale|sangra ~ como ~ una? llave|manguera|fuente|grifo|canilla -<pee> -<poo> -<eyes> -<vomit> -agua
    ^ its|it|still|just spurting|gushing|pumping|spurts $ -<pee> -<poo>
    it squirts|spurts|gushes|sprays -<pee> -<poo> -<eyes>
    = bleeding slow
    red|crimson drop|drops|bead|beads|droplet|droplets|dribble|trickle -<pee> -<poo> -<eyes> -gums
    drop|drops|bead|beads|droplet|droplets|dribble|trickle ~ of ~ red -<pee> -<poo> -<eyes> -gums
    gota|gotas|gotita|gotitas|perlita|perlitas|hilito|chorrito ~ roja|rojas|rojo|rojos|rojita|rojitas|rojito -<pee> -<poo> -<eyes>
    mancha|manchando|mancho|manchado|pinta|pintando ~6 de rojo -<pee> -<poo>
    """,
}

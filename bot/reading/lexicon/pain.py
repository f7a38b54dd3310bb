"""Pain, by what owners see."""

from __future__ import annotations

CLASSES = {
    "cross": """
        grumpy grouchy cranky crabby ratty snarky gruñon gruñona grunon grunona enojon
        enojona
        """,
    "badly": """
        so_loud really_loud horribly
        bad badly lots loads heaps bastante harto harta demasiado cañon gacho so_bad
        real_bad really_bad like_hell a_ton something_awful something_terrible
        like_crazy muchisimo resto burda horrores una_barbaridad un_monton
        something_awful summat_awful something_shocking something_fierce
        something_rotten muxo mucho como_loco como_loca
        """,
    "playing": "playing play playfully jugando juega playful jugar cariño game",
    "softly": "quedito bajito finito suavecito softly quietly occasionally faintly",
    "cryout": """
        screaming scream screams screamed shrieking shriek shrieks shrieked howling howls howled
        howl yelping_nonstop crying_out cries_out cried_out cry_out squealing squeals squealed
        squeal screeching screeches screeched shrill wailing wails wailed yowling yowls yowled
        yowl agony excruciating unbearable grito grita gritando gritaba gritos gritar aulla
        aullando aullo aullidos aullaba chilla chillando chillo chillidos chillaba alarido
        alaridos berrea berreando agonia insoportable berridos bramando aullar chillar
        yelled yells yelling
        hollered hollering hollers bawling bawled bellowed bellowing squawked squawking
        """,
    "whimper": """
        whimper whimpers whimpered whimpering whine whines whined whining whiny cry cries cried
        crying moan moans moaned moaning groan groans groaned groaning yelp yelps yelped yelping
        restless unsettled fidgety grimace grimacing flinch flinches flinched flinching winces
        wince winced wincing growls_when pacing paces paced trembling trembles trembled shaking
        shakes shivering shivers panting pants panted grumbles_when vocalising vocalizing
        cant_settle cant_get_comfortable cant_get_settled cannot_settle wont_settle
        doesnt_settle unable_to_settle couldnt_settle not_settling cannot_get_settled
        cant_get_comfy wont_lie_down never_settles hasnt_settled tossing_and_turning whinging
        whinge whinges guarding tender_to_touch llora llorando lloro llorar lloraba lloriquea
        lloriqueando lloriqueo lloron gime gimiendo gimio gemidos gemido gemir gimotea
        gimoteando gimotear quejandose queja quejo quejando quejaba quejidos quejido quejoso
        quejosa inquieto inquieta tiembla temblando temblaba temblor temblores jadea jadeando
        jadeo jadeaba intranquilo intranquila chillidito no_se_acomoda no_encuentra_acomodo
        no_halla_acomodo no_halla_como_ponerse no_se_hallaba desesperado desesperada no_se_halla
        no_puede_dormir no_puede_descansar ansioso ansiosa ay_ay da_vueltas dando_vueltas
        no_encuentra_como_ponerse
        whingey whingy chillon chillona chilloncito chillonsita grizzly grizzling grizzles
        lamenta lamentando lamentos lamento estremece estremecio brinca_si_lo_toco
        mewling mewing_in_pain yips yipped yipping yip grunting_when sobbing blubbering
        grizzly rechina_los_dientes chillotea chilloteando pucherea aulliditos
         grunts_when huffing_and_moaning
        """,
    "painword": """
        pain painful pains hurts hurt hurting hurty aching aches ache discomfort uncomfortable
        distress dolor duele dolorido dolorida adolorido adolorida doliendo dolores doler dolia
        dolio molestia lastima lastimado
        dolerle dolerles duela achiness owie owies suffering sufriendo sufre
        adoloridisimo
        """,
    "soreword": """
        sore soreness stiff stiffness tender tenderness uncomfy ouchy achey achy incomodo
        incomoda entumido entumida sentido sensible adoloridito adoloridita dolorcito tieso
        tiesa resentido resentida
        molestito molestita sentidito sentidita
        twinge twinges twingey niggle niggles niggly niggling stiffness resentidito
        punzada punzadas molestillas incomodita incomodito quisquilloso quisquillosa
        """,
    "touched": """
        touch touched touches touching petted handle handled pick picked lift lifted near move
        moves moved toco tocan toca tocar tocarle tocarlo acerco acerca cargo cargar cargarlo
        muevo mueven moverlo tocarla tocando rozar rozo agarro agarrar cargarla
        aprieto apretarle apretar presiono
        """,
    "bite": """
        bit bite bites biting snap snaps snapped snapping nip nips nipped lunged lunges attacked
        attacks growl growled growls growling savage aggressive snarls snarled snarling bared
        swiped swipes muerde mordio morder mordida tarascada
        tira_la_mordida tira_mordidas tira_a_morder gruñe gruno gruñó agresivo agresiva
        tarascadas mordernos morderme ataca ataco gruñendo mordidas avento_la_mordida
        avienta_la_mordida
        tarascon tarascazo tarascazos mordisco mordiscos mordernos dentellada snappy
        snippy
        """,
    "excited": """
        joy bath biscuits
        happily sunbathing thunder thunders fireworks doorbell postman excited excitement
        dreaming dream breakfast dinner treats food walk walkies leash lead car door attention
        at_the_vets the_vets nails hoover i_left we_left i_leave we_leave leaving_him leaving_her left_alone go_out me_voy nos_vamos salgo left_the_room cuddles fuss biscuit biscuits squirrel bill bills wallet want_out play toy emocionado emocionada salir comida hot_day heat correr post-ictal
        squirrels cats birds neighbours neighbors mailman toast dinnertime cartero
        vecino ardilla ardillas pajaros timbre
        """,
    "eightplus": "8 9 10 8/10 9/10 10/10",
    "dontlook": "not_that",
}

RULES = {
    "pain": """
    = severe
    cant|cannot|wont|doesnt|couldnt ~ bear|stand|tolerate|abide|take ~ anyone|anybody|anything|me|us|being|the ~ near|touching|touch|touched|brushing|handling -<coneword>
    <whimper> ~3 til|till|until ~3 dawn|morning|midnight|<clock> -<excited>
    <whimper>|<cryout> ~4 madrugada|amanecer|desde_anoche -<excited>
    shaking|trembling|shivering|quivering ~~ with|from ~ the? pain|agony
    <painword> ~ un|una chorro|monton|chingo|resto|barbaridad|buen|friego|madral
    bellow|bellows|bellowed|bellowing|caterwauling|caterwauls|squawks|hollers -<excited>
    brama|bramando|bramo|ruge|rugio -<excited>
    tirita|tiritando|tiembla|temblando ~ de|del|por ~2 dolor
    sunk|sank|sinks|sinking|buried ~ his|her|its|the? teeth|fangs|claws
    clavo|clavó|encajo|hinco|hundio|enterro ~ los|sus|el|las? dientes|dientitos|colmillo|colmillos|uñas
    <whimper>|<cryout> ~2 so|that|really|very loud|loudly|hard ~~ neighbours|neighbors|street|house|woke|heard|hear|everyone|next_door|keeps
    <whimper>|<cryout> ~~ neighbours|neighbors|next_door|whole_street|downstairs ~3 heard|hear|came|complained|knocked|woke|asked
    llora|lloro|lloraba|chillo|grito|gritaba|aullo|chilla|grita ~~ vecinos|vecina|vecino|cuadra ~3 oyen|oyeron|oyo|escucho|escucharon|salieron|vinieron|asomaron|quejaron|despertaron
    trembling|shaking|shivering|quivering|trembles|shakes ~5 with|from ~ the hurt|pain|agony|hurting
    <neg>|no ~ let|deja|lets ~~ he|she|y|and? snaps|bites|growls|snarls|muerde|gruñe
    deal ~ of pain|discomfort
    chorro|monton|buen|chingo|madral|friego|resto ~ de dolor
    let|lets|gave|gives ~ out? ~ a|one ~ cry|scream|shriek|howl|holler
    <whimper> ~2 something|summat|like|como ~ awful|terrible|fierce|shocking|rotten|mad|crazy|banshee|condenado|condenada|loco|loca|desesperado|desesperada -<excited>
    alot|tons|lotta ~2 pain|dolor|discomfort
    absolute|sheer|utter|total|worst ~2 pain|agony
    in bits|pieces ~2 with|from
    <painword> ~3 <badly> -<neg>
    7|8|9|10 ~ out_of|of|de? 10|ten|diez ~ pain|dolor
    snapped|snaps|growled|lunged|snarled|bit|bites|nipped|snapping|growls ~ at? me|us|husband|him|wife ~~ check|look|touch|touched|lift|move|picked|near -<coneword> -<meds> -<playing>
    cant|doesnt|wont|cannot|no|couldnt ~ bear|stand|tolerate|soporta|aguanta|tolera ~ to|que|ni ~3 touched|toquen|toque|tocar|tocarlo|touch|near|rozar
    toda|all|whole ~ the|la? night|noche|madrugada ~2 <whimper>|<cryout>
    noche|madrugada|night ~2 en ~ un? grito|llanto
    no_paro|no_dejo|no_deja_de|no_para_de|no_paraba|no_dejaba|sin_dejar_de|sin_parar_de|never_stopped|didnt_stop|wouldnt_stop|hasnt_quit|wont_quit ~ de? llorar|chillar|aullar|gritar|quejarse|gemir|crying|screaming|howling|yelping|whining|wailing -<excited>
    en ~ un ~ puro? grito
    beside himself|herself ~ with|in pain|agony
    never ~ heard ~ him|her ~2 cry|scream|yelp|make
    <whimper>|cried|crying ~~ none|nobody|no_one|nadie ~3 slept|durmio|dormimos|dormir|sleep
    paced|pacing|crying|cried|whimpering|llorando ~~ midnight|madrugada ~ till|until|to|hasta ~ dawn|morning|six|five|amanecer
    revuelca|revolcaba|retuerce|revolcandose ~ del|de dolor
    pegar|pegado|pego ~ ojo|el_ojo ~~ llorar|llorido|lloridos|chillidos|quejidos|dolor
    lloridos|lloridero|chillidos -<softly>
    <cryout> ~5 <touched>|lifted|picked|moved|carried|cargue|levante|toque -<coneword>
    <touched> ~~ <cryout> -<coneword>
    wont_stop|cant_stop|doesnt_stop|no_para|no_deja|hasnt_stopped|no_ha_parado|not_stopped ~ de? crying|howling|yelping|screaming|llorar|aullar|gritar|chillar -<excited>
    <cryout> -<coneword> -<excited> -<softly>
    <very>|severe|terrible|awful|extreme|intense|lot|lots|real|bad|horrible|tons|so_much ~3 \
        pain|dolor|hurting|discomfort|agony
    <painword> ~3 severe|terrible|horrible|unbearable|intense|intenso|fuerte|muchisimo|
        insoportable|fuertisimo|extreme|mucho|un_chingo|horrores|feo|10
    mucho|muchisimo|demasiado|tanto|fuerte|bastante|harto ~ dolor
    up|awake|despierto|despierta all|whole|entire|toda|all_night ~ night|noche? -<pee> -<good> \
        -<vomit> -<poo> -weighed -thought -worrying
    kept ~2 up|awake all_night|all|night
    all_night ~2 <whimper>|<painword>
    <whimper> ~4 all_night|constantly|nonstop|non_stop|todo_el_tiempo|inconsolably|
        inconsolable|sin_parar|toda_la_noche|whole_night|every|continuously|loudly|no_para \
        -slept -asleep -<neg>
    <whimper> ~3 all|whole|entire|toda ~ night|noche
    nobody|noone|none|nadie|neither ~4 slept|sleep|durmio|dormido ~2 night|house|noche|casa|wink
    no ~2 durmio|dormido|dormimos|dormi|pego|pegamos ~3 noche|ojo|casa
    <neg> ~2 slept a wink
    <neg> ~ slept|sleep|dormido|durmio|dormimos|dormir ~4 pain|dolor|crying|llorando
    no ~ dormimos|durmio|pego|pegamos ~3 noche|ojo
    = severe fixed
    no ~3 dejo|deja|dejaba ~ pegar ~ ojo|el_ojo
    no ~3 dejo|dejaba|deja|dejado|dejan ~ dormir|descansar
    nobody|noone|nadie ~3 slept|durmio|dormimos|sleep ~~ crying|llorando|llanto
    = severe
    llora|chilla|grita|aulla|gime ~~ y llora|chilla|grita|aulla|gime -<excited>
    crying|screaming|yelping|howling ~~ and crying|screaming|yelping|howling -<excited>
    desde ~4 madrugada|noche|manana|anoche ~~ llora|llorando|aullando|chillando -<excited>
    = severe agent
    hissed|hisses|clawed|clawing|swiped|swipes|swatted|scratched|lashed|flew ~ out|and|at? ~ clawed|swiped|bit|me|us|him|my|at? ~~ when|if|touched|near|lifted|picked -<coneword> -<meds> -<playing>
    took|takes|take|had|nearly ~ my|his|her|our|the finger|fingers|hand|arm|face ~ off
    turned|turns|turn|rounded|rounds|flew|flies|goes|went ~ on|at me|us|him|my ~2 when|if|as -walk
    como|hecho|hecha|vuelto|vuelta|puso ~ una|un? fiera|demonio|tigre|loco|loca ~~ toque|toco|tocar|tocan|cargue|cargar|muevo|movi|reviso|revise
    se ~ me|nos ~ voltea|volteo|lanza|lanzo|echa|echo|avienta|avento|aventó ~ encima|a|para|con? ~ morder|encima|mordida|mordidas|dientes|uñas
    me|nos|lo|la ~ araño|aruño|rasguño|arañó|rasgo|manoteo ~~ cuando|al|si toque|toco|tocar|tocan|cargue|cargar|muevo|moverlo|moverla|reviso|revisar
    <bite> ~~ when|cuando|if|si ~4 <touched>|levanto|levante|movio|movi|reviso|revise -<coneword> -<meds> -<playing> -<at_wound>
    mordio|bit ~ a? ~ la|el|the|my|mi|her|his ~2 cuando|when ~3 levanto|lifted|touched|toco|picked|moved -<meds>
    tira|avienta|lanza|suelta ~ mordidas|mordida|tarascadas|dentelladas|tarascazos -<coneword>
    touch|touching|near|move|lift|toca|toque|tocale|mueve ~ that|the|his|her|la|esa? ~ leg|foot|paw|hip|knee|pata|patita ~~ bites|snaps|growls|screams|shrieks|muerde|chilla|grita -<coneword> -<neg>
    had|has|have|having ~ a ~ go|pop|snap|lunge at me|us|him|my|anyone|hubby
    went|goes|going|lunged|lunges for ~ my|our|me|us|his|her|the ~ hand|arm|face|fingers|throat|finger
    quiso|quiere|intento|casi|trato|queria|intenta ~2 morder*|muerde|mordio -<coneword> -<bandageword> -<wound>
    tried|tries|trying|went|wants|almost|nearly ~ to? bite|bit|snap|nip|bitten ~2 me|us|him|my|when|if -<coneword> -<playing>
    touch|move|go_near|lift|toca|tocas|toco ~3 leg|him|it|her|pata|hip|knee ~~ he|she|hes|shes|hell|shell|te|me ~ bites|bite|snaps|snap|growls|muerde
    goes|went|come|comes ~ for ~ me|us|him ~~ if|when|hand|near|touch -walk
    tira|tiro|avienta ~ el|la|un|una mordisco|tarascada|mordida|dentellada
    trod|stepped|pise|pisamos ~~ yelled|screamed|yelped|shrieked|grito|chillo
    <touched> ~~ <bite> -<meds> -<at_wound> -a_mordidas
    <bite> & <touched> -<playing> -a_mordidas
    <bite> ~3 me|us|him|anyone|nos|dedo|finger|hand|mano|if|when|cuando|near -<at_wound> -<meds> -<playing>
    snapped|growled|lunged|nipped|snarled|hissed|swiped|bit ~5 when|if|cuando ~4 leg|pata|touched|moved|lifted|near|past|brushed -<playing>
    me|nos tira|tiro|avento|avienta|quiso|quiere|lanzo ~2 <bite>
    went|goes|going for me|us|him -walk -a
    take|took|taken|have|had ~2 hand|arm|finger|fingers ~ off me|us|him
    me muerde|mordio|gruñe
    = severe
    shaking|trembling|shakes|shivering|temblando|tiembla ~2 with|from|de|del|por ~2 pain|dolor
    pain|dolor ~2 shaking|trembling
    inconsolable|inconsolably
    cries|cried|crying|llora|cry|yelps|yelp|chilla|grita out ~ <touched>|loud|when|every|in|
        pain|cada
    crying|cries|cry|cried|screaming ~2 in|with|from|de pain|dolor
    llora|llorando|aulla|gime ~2 de ~ dolor
    se retuerce|retorcia|retorciendo
    writhing|writhes|writhed
    a grito|gritos|alaridos
    loud cry|cries|yelp|yelps|scream
    pain ~2 <eightplus>
    no soporta|aguanta ~2 dolor
    muere|muriendo ~ de|del dolor
    = moderate
    <cross> ~~ <touched>|near|hip|leg|pata|cadera -<coneword>
    cambia|cambiando|changes|changing|shifting|shifts ~ de? ~ posicion|postura|lado|lugar|position|positions ~2 rato|constantemente|seguido|constantly|all|every|keeps|mucho
    keeps ~ changing|shifting|moving ~ position|positions|spots|spot|places
    <cryout> ~ tantito|poquito|un_poco|little
    no ~ puede|logra ~ estarse|estar|quedarse ~ quieto|quieta|en_paz|tranquilo
    no ~ se ~ esta ~ quieto|quieta ~~ <painword>|acomoda|jadea
    <painword> ~3 4|5|6|four|five|six|cuatro|cinco|seis ~3 10|ten|diez
    getting|gets|keeps ~2 up ~~ lying|laying|lies|lay ~ back? down ~~ again|constantly|over
    se ~ levanta ~~ se acuesta|tumba
    de ~ un ~ lado ~ a|al|para|pa otro
    bad|rough|terrible|rotten|restless|poor|awful|mala|pesima|fatal|horrible night|noche -<pee> -<poo> -<vomit>
    durmio|dormido|duerme ~ mal|fatal|pesimo|entrecortado|a_ratos
    slept|sleeping|sleeps ~ badly|poorly|terribly|awful|fitfully
    <neg>|no ~ deja|dejo|dejaba ~3 toque|tocar|toquen|revise|revisar|mueva|mover|acerque ~ pata|patita|pierna|la|le? -<meds> -<coneword>
    <neg> ~ let|lets|letting|allow ~ me|us|anyone|anybody ~2 touch|near|handle|move|look|check -<meds> -<coneword> -<bandageword>
    no ~ para quieto|quieta +<painword>
    ears ~ pinned|flattened
    shifting|shuffling|fidgeting ~2 about|around|constantly|lots
    cant|couldnt ~ find ~2 position|spot
    no ~ halla|encuentra ~2 posicion|postura|lugar|lado
    <cryout> ~3 <softly>
    <softly> ~3 <cryout>
    <whimper> -<excited> -<coneword> -cold -frio -biscuit -biscuits -joy -laughing
    <painword>
    <painword> ~ moderate|moderado|moderada|medio
    in|de|with|con|shows|showing ~2 pain|dolor|discomfort
    <neg> ~ quiere|deja|want|wants|let|lets|like|likes ~5 touch|touched|touching|toque|toquen|toquemos|tocar|tocarle|tocarla|tocarlo|handle|handled|near -<meds> -<coneword> -<food> -<water> -<ground>
    jumps|jumped|jump|brinca|salta ~ when|if|whenever|cuando|si ~5 <touched>|near
    <whimper> ~3 <touched>|stands|standing|walk|walks|lying|hunches
    cant|wont|couldnt|not|doesnt|never|wouldnt|unable|no ~2 settle|settled|settling|comfy|
        comfortable|acomoda|acomodarse|descansa|echarse|acostarse ~ down?
    <neg> ~2 sleep|slept|sleeping|sleeps|duerme|dormido|durmio|dormir ~ well|much|properly|
        bien|properly|nada|mucho|at|a
    up_and_down ~3 all|night|constantly|like|wont|cant|panting|restless|settle|up_and_down -<perch>
    panting ~4 rest|nothing|lying|still|tiles
    jadea|jadeando|jadeo ~3 descanso|acostado|echado|nada|reposo
    guards|guarding|protecting|protects ~3 <legword>
    pulls|jerks|snatches|retira|quita|encoge|jala away|leg|paw|pata|patita|la -<coneword>
    flinches|flinched|winces|yelped|yelps|se_queja
    hunched|arched|encorvado|encorvada|jorobado back|up? -<poo> -<pee> -garden -tray -pushing -straining -squatting
    tense|tenso|tensa ~ belly|when
    se le ve|nota dolor|adolorido
    = mild
    stiff|stiffer|tieso|tiesa|entumido ~4 mornings|morning|mananas|first_thing -<neg>
    <painword> ~3 1|2|3|one|two|three|uno|dos|tres ~3 10|ten|diez
    poco|poquito|tantito|algo|poquitin|little|un_poco|un_poquito ~ de|of dolor|molestia|molestias|pain|discomfort
    molesta|molestan|duele|incomoda|molestando ~2 poco|poquito|tantito|algo|leve|apenas -<neg>
    minor|slight|odd|occasional|little twinge|niggle|wince|grumble|ache
    molesta|molesto ~ si|cuando ~3 <touched>|aprieto|presiono|reviso
    <soreword>
    <slight> ~2 <painword>|<soreword>|whiny|whimpery|uncomfortable|discomfort|moan|grumble
    <painword> ~3 <slight>
    <painword> ~ mild|leve|ligero|minimo|little|bit|slight|slightly
    grumbly|ouch|grumble|grumbles
    un poco|poquito adolorido|adolorida|molesto
    esta|anda|se_ve|lo_noto|la_noto ~ molesto|molesta|incomodo
    mild|slight|little|bit|some|minor ~2 pain|discomfort|painful|sore|tender|dolor
    algo|poco|poquito|leve|ligero|ligera ~2 dolor|duele|dolorido|adolorido|molestia
    = none
    slept|sleeps ~ straight|right|clean through
    <painword> ~3 0|cero|zero ~3 10|ten|diez
    lets|let|letting|allows|allowed|deja|dejo ~ me|us|que ~3 touch|handle|feel|bend|press|poke|toque|toquen|tocar|tocarle|tocarsela|mover|moversela|revisar|revisarla|palpar -<neg> -no_deja -no_dejo -no_dejaba -<meds> -<coneword>
    se ~ deja|dejo|deja_que ~3 tocar|agarrar|mover|revisar|palpar|manipular|toquen -<neg> -<meds>
    <neg> ~3 bother|bothering|bothers|bothered him|her|them -<coneword> -<bandageword> -<food>
    not|isnt|hardly|wasnt|barely bothered ~ by ~ it|leg|foot|op
    dolor ~ controlado|bajo_control|manejado|dominado
    pain ~2 under|well|nicely ~ control|controlled|managed
    snoring|snored|snores ~ away|happily|peacefully|head|soundly|all
    tranquilo|tranquila|calmado|calmada ~ y? descansando|durmiendo|dormido|dormida
    slept|dormido|durmio ~2 like|como ~ a|un|una ~ log|baby|top|rock|tronco|bebe|piedra|angelito|liron|rey
    paso|tuvo|pasado ~ muy? buena|bonita|linda|tranquila ~ noche
    comfy|comfortable|cosy ~ as
    out for the count
    se nota comodo|comoda
    durmio|dormido|duerme|dormida ~ de corrido|corridito|largo -<neg>
    a pierna suelta
    slept|sleeps ~ right|straight? through ~ til|till|until|to|all|six|seven|five
    durmio|dormido|duerme ~2 de_corrido|corrido|tiron|jalon
    comfortable|comfy|cosy|cozy|comodo|comoda|content|snug|relaxed|settled|relajado|relajada|
        a_gusto|agusto|pain_free|painfree|painless -<neg>
    lying|resting|sleeping|rests|sleeps|slept|duerme|durmio|descansa|dormido|resting ~2 \
        comfortably|peacefully|comfy|comfortable|well|soundly|like|tranquilo|tranquila|
        placidamente|toda
    slept|sleeping|durmio|sleeps well|like|soundly|peacefully|fine|good|bien|rico|great|
        tranquilo|tranquila|como
    slept|sleeps ~ through|all ~2 night
    dormido|durmio|duerme|dormida ~ del_tiron|de_un_jalon|de_corrido|corrido|toda_la_noche|a_pierna_suelta
    durmiendo|dormido|dormida|duermen ~ tranquilo|tranquila|placido|profundo|a_gusto|rico
    sleeping|asleep ~ peacefully|sound|soundly|comfortably
    pain ~ under_control|controlled|controlado|well
    = none fixed
    without|sin ~ a|un? peep|murmur|whimper|whine|quejido|chillido|ruido
    <neg> ~ mind|minds|minded|object|objects|fuss|fussed|react|flinch ~ me|us|when|if|it|to ~3 touch|touched|touching|poking|poke|handling|moving|feeling|checking|cleaning|pressing|bend|bending|move|press
    cero|zero|nil|nada_de|ningun|ninguna ~ <painword>|<whimper>|<soreword>
    <neg> ~3 murmur|squeak|whimper ~2 out|from|all|at|since|once|when
    ni ~ pio|un_ay|ay -comio
    <neg> ~ made|make|heard|hear ~ a ~ peep|murmur|squeak|whimper
    <neg> ~ parece|siento|veo|noto ~2 <painword>
    <neg> ~ le ~ molesta|duele|incomoda ~ nada|para_nada|ya|tanto
    ni ~ un|una quejido|chillido|lloro|queja|ay
    <neg> ~ look|seem|appear|act|looks|seems|acting ~3 <painword>|<soreword>
    no way|chance|doubt ~2 in pain
    <neg> ~3 <painword> -<dontlook>
    <neg> ~ sign|signs|signo|senales|muestra ~3 <painword>
    <neg> ~2 <soreword>
    <neg> ~2 <whimper> -<stopword>
    <neg> ~2 <cryout> -<stopword>
    <neg> ~ se ~ queja|quejado|quejo ~ nada?
    <neg> ~ le duele|molesta
    sin ~ <painword>|quejarse|molestias|quejas
    pain free
    = none fixed agent
    dont|doesnt|no ~ think|believe|creo|reckon|pienso ~~ <painword>|<soreword> -<very> -<badly>
    = none @pain
    ^ 0|cero|zero|none|nothing|nada|1 ~ 10|diez|ten
    ^ none|nada|nothing|ninguno
    ^ <neg> ~ that ~ i ~ can
    = mild @pain
    ^ 1|2|3|two|three|uno|dos|tres ~ out_of|of|de? 10|ten|diez
    ^ bit|slight|slightly|mild|poquito|poco|leve|minimal|tantito $
    = moderate @pain
    ^ 4|5|6|four|five|six|cuatro|cinco|seis ~ out_of|of|de? 10|ten|diez
    ^ moderate|medium|moderado|regular|middling|medio|bastante $
    up and down
    = severe fixed agent
    none|nobody|nadie|noone|neither ~3 slept|sleep|durmio|dormimos|dormi|pego ~~ cried|crying|whining|<whimper>|<cryout>|llantos|quejidos|ojo|wink
    <neg> ~ sleep|slept|pegar|pego|pegamos|pegue ~ a|el|un ~ wink|ojo
    = severe @pain
    ^ 7|8|9|10|seven|eight|nine|ten|siete|ocho|nueve|diez ~ out_of|of|de? 10|ten|diez
    ^ severe|agony|terrible|horrible|mucho|muchisimo|fuerte|awful|unbearable $
    = none fixed @asked-general @pain
    <neg> ~3 peep|sound|noise|grumble ~2 out|from|all|at|since|once|todo -<breath>
    """,
}

NEGATED = {
    "pain": {
        "severe": None,
        "moderate": "none",
        "mild": "none",
        "none": "moderate",
    },
}

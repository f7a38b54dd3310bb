"""Energy: bright, quiet, listless, collapsed."""

from __future__ import annotations

CLASSES = {
    "bright": """
        diez_puntos de_diez full_of_it brand_new a_new_dog himself_today like_new bright brighter perkier perky bouncing_off_the_walls cheerful cheery playful lively
        active alert bouncy energetic chirpy chipper chatty himself_again herself_again
        normal_self usual_self old_self own_self happy_self cheeky_self good_spirits
        great_spirits high_spirits full_of_beans full_of_life full_of_energy full_of_himself
        waggy wagging_tail tail_wagging wagging_his_tail wagging_her_tail wags_his_tail
        wags_her_tail tail_going bar_and_alert happy_as bright_eyed bushy_tailed in_good_form
        in_great_form in_fine_form spirited sparky right_as_rain fit_as_a_fiddle up_to_mischief
        happy content alegre contento contenta animado animada activo activa juguetón jugueton
        juguetona despierto despierta alerta feliz mueve_la_cola moviendo_la_cola
        moviendo_su_cola de_buenas de_buen_animo muy_vivo vivaracho vivaracha
        energia_normal energico energica inquieto_normal meneando_la_cola meneando movio_la_cola
        colita_moviendo menea_la_cola buen_humor bien_animado
        """,
    "quietword": """
        down_in_the_dumps in_the_dumps pachucho pachucha mustio mustia chilling chillin chill under_the_weather peaky not_on_form mimoso quiet quieter subdued sleepy sleepier drowsy groggy dozy dopey woozy tired
        sleeping_a_lot sleeping_more mellow sedate sedated spaced_out spacey out_of_it zonked
        sleeping_lots less_active bit_flat a_bit_flat bit_down bit_off off_colour off_color
        slept_all sleeping_most quietish dazed doped loopy stoned high_as_a_kite mopey
        adormilado adormilada dormilon dormilona somnoliento somnolienta cansado cansada
        tranquilo_de_mas calladito calladita apagadito apagadita adormecido adormecida atontado
        atontada mareado mareada borrachito borrachita sedado sedada amodorrado amodorrada
        modorro modorra dormido dormida duerme_mucho dormidito dormidita sonoliento
        medio_dormido medio_dormida zombi apachurrado tristón triston tristona triste sad grogui
        drugged hungover knackered pooped_out shattered
        crashed_out conked_out flaked_out zonked_out sparked_out
        seems_down looks_down feeling_down
        """,
    "lethargicword": """
        droopy lethargic lethargy listless lifeless floppy weak weakness very_flat flat_as
        depressed obtunded no_energy zero_energy no_interest withdrawn dull apathetic lacklustre
        like_a_rag_doll wet_dishcloth rag_doll ragdoll limp_as prostrate sluggish no_life
        wiped_out very_weak letargico letargica letargo decaido decaida decaimiento desganado
        desganada apatico apatica apagado apagada aplatanado aplatanada debil debilidad
        sin_fuerza sin_fuerzas sin_energia sin_animo sin_animos aguadito aguadita achicopalado
        achicopalada tirado tirada desvanecido_poco deprimido deprimida postrado postrada
        echado_todo flojito flojita guango lánguido languido languida agotado agotada exhausted
        bajoneado bajoneada caido_de_animo caida_de_animo como_trapo
        without_strength no_strength sin_ganas_de_nada no_puede_con_su_alma
        """,
    "collapseword": """
        collapse collapsed collapses collapsing collapsd passed_out passes_out passing_out
        pass_out fainted faints fainting blacked_out unconscious unresponsive
        nonresponsive non_responsive comatose lost_consciousness keeled_over keels_over syncope
        syncopal moribund knocked_out_cold lights_out desmayo desmaya desmayado desmayada
        desmayando desmayó desvanecio desvanece desvanecido desvanecida desvanecimiento
        inconsciente colapso colapsado colapsada desplomo desploma desplomado desplomada
        se_fue_de_lado perdio_el_conocimiento perdio_el_sentido perdio_la_conciencia
        no_reacciona no_responde se_nos_va desplomó sincope desfallecio
        """,
    "brightcolour": """
        bright_red bright_pink bright_yellow bright_green bright_orange bright_light
        bright_blood bright_fresh by_himself by_herself wet_himself wet_herself hurt_himself
        hurt_herself to_himself lift_himself lift_herself bit_himself getting_himself
        licking_himself licking_herself biting_himself scratching_himself throws_himself
        peed_himself
        """,
    "slipctx": "tiles tile lino laminate slipped slippery ice floor mat cone",
    "mishapwords": "cama sillon escalera escaleras puntos cono venda",
    "sleepwell": "during in_the_night overnight all_night once_in_the_night us me",
    "hungry": "hungry starvation hunger hambre food to for",
    "pillhide": "pill pills pastilla tablet cheese",
}

RULES = {
    "energy": """
    = normal
    his|her usual|normal|old ~ self
    happy as ~ larry|clam|pig|sandboy|anything|ever
    patient|pt|bright ~ bar|alert
    ^ bar $
    es|volvio|vuelve|parece|siendo ~ a? ser? ~ el|la|ella ~ de antes|siempre
    travieso|traviesa|latoso|latosa|necio|necia|inquieto_como|encimoso|tremendo ~ y|como|de|todo|siempre
    perked|perks|brightened ~ up -<neg> -ears
    sparkling|cracking|flying|top|fine|great|good ~ form|spirits|nick
    ^ el|la|the perro|perra|perrito|perrita|gato|gata|gatito|gatita|dog|cat <good> $
    bossing|bullying|terrorising|terrorizing|annoying|mithering|rude|bothering ~3 about|cat|dog|everyone|kitten|kids|us
    anda|esta|sigue|estaba|amanecio|ella|el|corre|juega ~2 como_si_nada
    seems|is|hes|shes|quite|completely|almost|like|very|totally ~ himself|herself \
        -<brightcolour>
    back to himself|herself
    <bright> -<brightcolour>
    <be>|in ~3 <bright> -<brightcolour>
    back to ~ himself|herself|normal|self|usual|old
    energy|energia|animo|spirits|mood|demeanour|demeanor ~3 <good>|up|high|back|alto|alta
    <good>|lots|plenty|loads|mucha|buena|full ~ of? energy|energia|animo|spirits
    wagging|wags|wag|wagged ~3 tail
    tail ~2 wagging|wag|going|wags|up
    mueve|moviendo|movio|mueve ~2 cola|colita|rabo
    wants|trying|quiere ~2 play|jugar
    playing|plays|played|juega|jugando|juego
    otherwise|apart_from_that|else ~3 <good>|bright|happy
    <good>|bright|happy ~ otherwise
    por lo demas ~3 <good>
    doing ~2 <good> -<neg>
    ^ bar $
    in himself|herself|itself ~4 <good>|<bright>
    greeted|greets|greeting|saludo|recibe ~3 me|us|door|puerta
    had|having ~2 <good> ~ day|night|morning|evening|weekend
    but|pero|otherwise ~2 he|she|hes|shes|ella|dog|cat|patient|perro|gato ~ is|esta|seems? <good> $
    con ~ energia|energias|animo|ganas_de_jugar -<neg>
    mad to be|get|go
    wants|quiere|queriendo ~ to? play|jugar -<neg>
    up and about|barking|at|doing|playing|raring|dressed|looking
    raring to
    wagging|wags ~2 at|everyone|everybody|away|tail|like|to
    as lively|happy|bright
    ours|mine ~~ <good>|bright
    dog|cat|patient|perro|gato|perrita|gatita is|esta|seems|anda ~2 <good> $
    = normal !@asked-incision !@asked-mobility !@incision !@swelling !@bandage !@stool !@urine \
        !@bruising
    seems|looks|acts|acting|se_ve <good> $
    = normal @general @asked-general
    no_complaints|no_complaint|cant_complain|not_a_bother|not_a_bad_day|bored|bossy|cheeky
    not ~ bad ~ day|night|today|all
    = normal @general @none
    todo|all bien|good|well|fine|normal|tranquilo -<neg>
    ^ sin_novedad|sin_novedades|nothing_to_report
    ^ hes|shes|doing|all|everything|todo|esta|anda|sigue|amanecio|se_ve ~2 <good> $
    he|she|dog|cat|patient|ella is|was|seems|looks|feels|doing|esta|anda|sigue ~2 <good> $
    anda|esta|sigue|amanecio|va ~ <good> -<neg> -<legword> -<wound>
    <good> ~ in himself|herself
    con pila|pilas|toda_la_pila|mucha_pila
    full of ~ joys|mischief|chat|devilment|the_joys
    is|hes|shes flying
    flying form|it
    skipping|bouncing|prancing ~2 like|about|around -<bear>
    in ~2 form|fettle|spirits +<good>
    = quiet
    qar
    <quietword>
    quiet|quieter|sleepy|tired
    sleeping|sleep|sleepy|duerme|duerma|dormir|tired|quiet ~ so|this|that|tanto|tan ~ much|
        tired?
    sleeping|sleeps|slept|sleep|duerme|durmiendo|dormido|dormir ~2 a_lot|more|mostly|most|
        mucho|lots|all_day|mas|loads|day|todo|constantly
    less|low|lower|poca|menos|not_much ~2 energy|energia|active|lively|animo|activo|activa
    bit|little|un_poco|slightly|poco ~ lethargic|flat|dull|weak|decaido|decaida|apagado|
        apagada|off
    slightly|bit|little off|subdued
    slightly|bit|little ~ subdued
    <neg> ~2 quite|fully|completely|totally himself|herself|self
    <neg> ~ as lively|active|playful|bright|energetic|bouncy|perky
    <neg> ~2 his|her usual|normal|bouncy|cheerful self
    <neg> ~ himself|herself
    no es|esta el|la mismo|misma|de_siempre
    menos activo|activa|juguetona|jugueton
    off|not_in form|sorts|his_form|her_form
    off his|her form|sorts|game
    out of sorts
    nods|nodding|dozing|doze|dozes off|on
    vuelve a dormir
    se ~ la pasa durmiendo|dormido|dormida
    = lethargic
    have|has|had|tengo ~ to|que ~ carry|cargar*|cargarlo|lift ~3 garden|toilet|out|wee|porque|afuera|patio|because
    <neg> ~ got|get|gotten|been|ha|paro|parado|levantado|levanta ~ up ~2 once|all|today|since
    no ~ se ~ ha ~ parado|levantado|movido ~3 dia|hoy|manana|desde|todo
    flat out|on ~~ staring|wall|blank|glazed
    staring|mirando|stares ~ at|into|a|la ~2 wall|space|nothing|pared|nada
    <neg> ~3 greet|greeted|greeting|meet|recibe|recibio|recibirme|saludar|saluda|recibir
    wont|not|doesnt|didnt|no ~ come ~ to ~ the? door
    slept|sleeps|sleeping|asleep ~ round|around the clock
    hardly|barely|apenas|cant ~ get ~ him|her ~ to|on|up ~ his|her ~ feet
    lie|lies|lying|hide|hides|esconde|sits|stays ~3 dark|oscuro|corner|rincon -toy
    lump|ton|sack ~ of ~ lead|bricks|potatoes|spuds|cement
    aplastado|aplastada|desmadejado|desmadejada|derrumbado|desguanzado|desguanzada|amolado
    ni ~ la|el|su ~ pelota|juguete|correa|premio ~2 llama|emociona|mueve|interesa|hace
    <neg> ~ tiene ~ fuerzas|fuerza|energia
    fuerzas|fuerza ~ no|ni ~ tiene
    ni fuerzas|energia|ganas tiene|trae
    mirada|ojos ~ triste|perdida|apagada|tristes ~~ sin|no ~ levantarse|levanta|moverse|mueve
    sin ~ levantarse|moverse|pararse
    head|ears|tail ~ down ~~ wont|not|no|hardly|doesnt
    <neg>|just ~2 there|with_us ~ today|mentally|at_all -pain
    <neg> ~ bothered ~ with ~ anything|everything|us|ball|toys
    no go|life|spark ~ in ~ him|her
    vive|pasa|la_pasa ~ echado|echada|tirado|tirada|acostado|acostada
    ni ~ se ~ inmuta|inmuto|mueve|entera
    no ~ se ~ inmuta
    no ~ sale|salio|ha_salido ~ de ~ su ~ casita|cama|jaula|rincon|transportadora|kennel|camita
    no ~ levanta|alza ~ cabeza|la
    hasnt|not|wont|doesnt|no ~ stirred|stirs|budged|budge|shifted|moved ~2 off|from|out ~ his|her|the|that? <perch>|basket|bed|sofa|rug|mat|crate|box|spot
    zero|no|little|lost ~ interest|enthusiasm ~ in ~ anything|life|us|everything|nothing
    <neg> ~2 wagged|wag|wagging|mueve|movido ~3 day|days|once|all|today|cola|since
    tail ~3 hasnt|not|no|doesnt ~ wagged|wag|moved
    glazed|vacant|staring ~ look|into_space|at_nothing
    no spark|life|fight|oomph|get_up_and_go
    sleeping|sleeps|asleep|duerme|dormido|dormida ~ all ~ time|todo_el_tiempo|todo_el_dia|constantly|non_stop|nonstop
    have|had|tengo|toca ~ to|que ~ wake|despertar*  ~~ for|para ~ his|her|<meds>|comer|food|meds
    no ~ tiene|le_quedan|trae ~ fuerza|fuerzas|energia|energias|animo|animos
    no ~3 quiere ~2 mover|moverse|levantar|levantarse|pararse -<legword> -pata
    moves|move|mueve ~2 only|just|solo|nomas ~ the|his|her|los ~ eyes|ojos
    <neg> ~ go|get_up_and_go|life|spark|pep|energy|interest|oomph in him|her
    like|acting|acts|seems|looks|if|walks|walking|parece|anda|como|como_si ~3 drunk|drunken|tipsy|
        borracho|borracha|borrachito|borrachita
    disoriented|disorientated|desorientado|desorientada|uncoordinated|staggering|staggers|
        tambalea|tambaleando|tambaleandose
    ni ~2 quiere ~ mover|levantar|parar|moverse|levantarse|pararse
    not|isnt|wont|hasnt ~ standing|stood ~ up
    esta|anda|se_ve|lo|la|muy|bien|re|toda|todo ~2 caido|caida|bajon|tirado|tirada \
        -<mishapwords>
    no ~3 bola|pelota ~ a nada|nadie
    no pela a? nada|nadie
    <neg> ~ himself|herself ~~ just|only ~ lies|lays|lying|sleeps|sits
    <lethargicword>
    <very> ~ lethargic|sleepy|weak|flat|quiet|tired|sluggish|letargico|decaido|decaida|
        apagado|debil|dull
    just|only ~ lies|laying|lays|lying|lay|sits|stays ~ in|on|under ~2 bed|basket|crate|
        corner|spot|sofa|floor|there
    just|only|solo|nomas|nada_mas ~ lies|laying|lays|lying|lay|sits|echado|acostado|tirado|
        echada|acostada|tirada ~ there
    lies|lays|lying|laying|sits there ~2 staring|wont|not|doing
    wont|doesnt|didnt|cant|barely|hardly|not|refuses|no|ni|apenas ~2 lift|lifts|lifted|raises|
        moves|lifting|raise|raising|
        levanta|alza|levanto|alzar|levantar ~2 head|cabeza|cabecita
    wont|doesnt|didnt|not|refuses|hasnt|no|isnt ~2 get|move|moving|moved|getting|stand|leave|
        left|come|budge|budged|quiere|se|levantarse|levanta|mueve|sale|salir|pararse|parar|
        want ~3 up|bed|sofa|couch|crate|basket|spot|corner|levantar|moverse|mover|parar|
        levantarse|pararse|salir|cama|all|off|out|camita|rincon|under -<legword>
    no se ~2 levanta|mueve|para|levanto|ha_movido|ha_levantado|quiere_parar|paro|movio \
        -<legword>
    no se quiere ~ levantar|mover|parar
    no quiere ~ levantarse|moverse|pararse|salir|hacer
    no ~2 interest|interes|interested|ganas|energy|energia|life|spark ~3 anything|nada|me|us|
        toys|life|todo|in?
    <neg> ~2 care|cares|interested ~2 about|in ~2 anything
    sin ~ ganas|interes|energia|fuerzas|animos
    doesnt|wont|no react|respond|hace|pela|greet|reacciona ~3 to|caso|me|us|cuando|name|nadie
    under|beneath|behind|debajo|bajo ~2 bed|sofa|couch|table|cama|sillon|mesa ~3 since|all_day|desde|all|whole|todo
    <barely> ~2 moves|move|moved|moving|mueve|levanta|stirs|stir|leaves|left|opens|abre -<legword>
    hiding|hides|esconde|escondido|escondida|escondiendose ~3 under|bajo|debajo|away|
        closet|bed|all -<pillhide>
    slept|sleeping|sleeps|duerme|durmiendo|dormido ~2 all|todo|entire|whole ~ day|dia -<nearly>
    glassy|vidriosos|glazed ~2 eyes|ojos
    eyes|ojos ~3 glassy|glazed|vidriosos
    no ~ sale ~3 abajo|debajo|cama|rincon|escondite
    hard to|difficult to rouse|wake|arouse
    cuesta ~ despertar|despertarlo|despertarla
    seems|looks|acts|se_ve drained|lifeless|terrible|miserable|sick|ill|malito|malita|muy_mal|
        enfermo|enferma
    se ve|siente|pone|esta muy? mal|malito|malita|enfermo|enferma
    like|como ~ zombie|zombi|rag|dishcloth|ragdoll|corpse|trapo|muerto|muneco
    = collapsed fixed agent
    <neg> ~2 wake|waking|rouse|roused|awaken|woken|woke|wakes|despierta|desperto|despertar|
        despertamos|reacciona|reaccionando|responde|respond|responding|responsive|responds ~ \
        up|him|her|at|to|all? -<sleepwell>
    = collapsed agent
    calling|shaking|shook|poked|poking|pinched|nudged|nudging|sacudo|muevo|toco|llamo|grito|hablo ~~ nothing|nada $ -clinic -vet -phone -office -you -clinica -veterinario -head
    = collapsed
    went|goes|fell|keeled|dropped|cayo ~ over|down|redondo ~ like|como ~3 tree|log|plank|skittle|domino|arbol|tronco|tabla
    eyes|ojos ~ are? ~ open|abiertos ~~ <neg>|sin|ausente|perdido ~ know|recognise|conoce|reconoce|responde|ausente
    shaking|shook|shaken|poked|pinched|nudged|sacudo|muevo|soplo|grito|gritado|shouted|hablo|llamo ~~ and|y nothing|nada -phone -clinic -vet
    flatlined|flatlining
    out_of_it ~~ cold|respond|responding|limp|floppy|wake
    aguado|aguada|guango|guanga|flojo|floja ~~ cerro|cierra|cerrados ~ ojos?
    floppy|limp ~~ wont|doesnt|not|isnt|no ~ answer|respond|responding|react|wake|waking|reacciona|responde
    eyes|ojos ~3 open|abiertos ~~ <neg>|sin ~2 there|responding|responds|responde|responder|reacciona|reaccionar|moving|blinking
    <barely>|semi|only_just ~ conscious|responsive|alive|consciente
    lost|losing|loses|lose|regained|out|perdio|perdia|pierde of? ~ consciousness|conciencia|conocimiento
    perdio|pierde|perdiendo el sentido|conocimiento
    in and out of? it|consciousness
    desguanz*
    se aflojo|fue|cayo ~ todo|toda|redondito
    legs|patas|back_end|back_legs ~2 gave|give|doblaron|buckled|went ~ way|from|out|under ~~ floor|up|piso|cant|wont|down
    barely|hardly|apenas ~2 alive|breathing|respira|vivo|viva
    floor|ground|side|lying|laid|tirado|tirada|echado|echada|suelo|piso ~~ <neg> ~ moving|responding|respond|mueve|responde|reacciona -much -mucho -around -<lastdone>
    limp ~3 rag_doll|doll|ragdoll|trapo|noodle|lettuce|dishrag
    no ~2 puedo|podemos|logro|logramos|consigo|pude|pudimos ~2 despert*|reanim*|reaccione
    ido|ida|perdido|perdida & no ~2 responde|contesta|reacciona|mira
    off his|her|their ~ legs|feet -<bandageword>
    <collapseword> -snoring
    faint -line -lines -pink -red -smell -scar -mark -whiff -limp -odour -odor -tinge -hint \
        -trace -bruise -wheeze -noise -heart
    legs|patas|hind ~3 buckled|buckle|gave|give|doblaron|fallaron|doblan|aflojaron ~ way|out?
    gave|give way ~ and|he|she fell
    fell|falls|drops|dropped|flops|flopped|went|slumped|crumpled ~3 over|down|flat ~4 \
        unconscious|wont|cant|limp|not|unable
    went|gone|goes|going|totally|completely|suddenly|all ~ limp|floppy|lifeless -free
    se me? ~ fue|cayo|va|voltea de lado
    legs|feet ~2 went|gave|go ~3 under|out|way -<slipctx>
    flat_out|out ~3 not|wont|isnt ~2 responding|moving|waking
    staring|stares ~3 nothing|space ~~ <neg> ~3 respond|responding|react|know|name
    <neg> ~2 respond|responds|responding|answer|answers|react|reacts|reacting|reaction|hear ~3 \
        name|voice|us|me|touch|call|anything|to
    le hablo|grito|llamo|toco ~4 no|ni ~3 reacciona|responde|contesta|abre|mueve|despierta|
        voltea|pela
    no|ni ~3 abre los|sus? ojos
    <neg> ~ opening|open|opens his|her eyes
    <neg> ~ stay|stayed|staying on|upright ~ feet?
    cant|couldnt|unable|hard|cannot|difficult|impossible|wont|not ~2 be? ~ woken|roused|rouse|
        rousable|arouse|awakened|waken
    keeled|keeling|keels
    unable|cant|cannot|couldnt ~2 rise|hold ~ himself|herself|up
    <neg> ~2 hold|support|holding ~ himself|herself|itself ~ up?
    no se sostiene|mantiene|tiene -<legword>
    cayo|cae|caido ~ redondo|redonda|fulminado|desmayado|desmayada|tieso
    quedo|esta|como ~ como muerto|muerta|muertito|muertita
    nobody|noone|no_one|none home
    <neg> ~ know ~ i|we was|were ~ there
    nonambulatory|non_ambulatory
    unrousable|unarousable|recumbent|ataxic_collapse|stuporous|stupor|estupor|estuporoso
    no lo|la|le|se? puedo|podemos|logro|logramos|consigo ~2 despertar|reanimar
    no ~ hay ~2 manera|forma|modo ~ despertar*|reaccione|levante
    limp and|n|like unresponsive|cold|pale|lifeless|rag
    cant|cannot|couldnt|unable|no ~ stand|parar|levantar|sostener ~2 up|at|se|solo|all|
        himself|herself
    cant|cannot|unable|couldnt|can't ~2 stand|get|stay|rise ~2 up|feet
    no ~ puede|pudo|logra ~ levantar|parar|pararse|levantarse|sostenerse|mantenerse|caminar
    cant walk|stand
    cant|couldnt|cannot|wont|unable|no ~2 wake|rouse|despertar|despierta|wakeup
    <neg> ~ wake|waking up
    dropped|fell|falls|cayo|se_cayo to? ~ like|como ~ stone|sack|costal|piedra|tabla|fulminado
    out cold
    sank|slumped|crumpled|folded|buckled ~ down|under|over|floor|knees
    <neg> ~ be got up
    patas|patitas|legs|piernas ~~ no ~2 sostiene|sostienen|aguantan|aguanta|responden
    went|goes|dropped|fell|cayo|drops|goes_down down? like|como ~ sack|stone|brick|costal|
        piedra|ton|tree
    <neg> ~ come|came round|around
    eyes ~2 rolled|roll|rolling -scratch -scratched -scratching -rub -rubs -bliss -massage -at
    ojos ~2 blanco|blancos|volteados
    lying motionless|limp
    unable|cant|cannot|couldnt|no ~2 lift|raise|levantar ~ himself|herself|itself
    <neg> ~2 flicker|response|reaction|reaccion -phone -vet -office -email -text -line
    <neg> ~ there|home behind|eyes
    motionless|inmovil|inerte
    no ~ reacciona|responde|despierta|se_despierta
    almost|nearly|casi se? collapsed|fainted|desmaya|desmayo
    dying|dies|muere|muriendo|esta_muriendo|agonizando -<hungry>
    going|in into? shock
    shock
    no se mueve ~ nada|para
    """,
}

NEGATED = {
    "energy": {
        "normal": "quiet",
        "quiet": None,
        "lethargic": "normal",
        "collapsed": None,
    },
}

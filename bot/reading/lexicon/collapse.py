"""Energy at its end: collapsed, fainted, cannot be woken."""

from __future__ import annotations

CLASSES = {
    "collapseword": """
        collapse collapsed collapses collapsing collapsd passed_out passes_out passing_out
        pass_out fainted faints fainting blacked_out unconscious unresponsive
        nonresponsive non_responsive comatose lost_consciousness keeled_over keels_over syncope
        syncopal moribund knocked_out_cold lights_out desmayo desmaya desmayado desmayada
        desmayando desmayó desvanecio desvanece desvanecido desvanecida desvanecimiento
        inconsciente colapso colapsado colapsada desplomo desploma desplomado desplomada
        se_fue_de_lado perdio_el_conocimiento perdio_el_sentido perdio_la_conciencia
        no_reacciona no_responde se_nos_va desplomó sincope desfallecio
        patatus soponcio
        """,
    "slipctx": "tiles tile lino laminate slipped slippery ice floor mat cone",
    "sleepwell": "during in_the_night overnight all_night once_in_the_night us me",
    "hungry": """
        hungry starvation hunger hambre food to for dolor pain ganas sueno miedo aburrido
        """,
}

RULES = {
    "idiom": """
    = void
    crate|cage|pen|box|cone|collar|tent|gate|fence|shelf|table|roof|bed|chair|one_side|half|ramp|stairgate ~ has|just|has_just? ~ collapsed|collapses|collapsing
    collapsed|collapsing|collapses|collapse ~ one|the|a|its|that|this side|cone|crate|edge|wall|collar|pen|cage|box|bed|rim -legs -back
    desplomo|colapso|desplomado ~ un|el|la|una lado|cono|jaula|caja|corral|orilla|cama|borde
    out cold ~~ snoring|snores|snored|snore|wakes|woke|gets_up|got_up|perks
    no|ningun|sin|zero|any ~ allergic|bad|adverse? reaction|reactions ~ to|from|at|after ~ all|it|pill|tablet|meds|med|new|food|the
    no|sin ~ le? ~ hizo|hace|dio|tuvo|ha_hecho|causo ~ ninguna|mala? reaccion|reacciones
    pide|pidiendo|exige|exigiendo|reclama ~3 a_gritos|gritos|gritando
    dormir ~ de|por tanto|tantas ~ jugar|jugando|juego|correr|ronquidos|roncar|ladrar
    """,
    "energy": """
    = collapsed fixed agent
    <neg> ~ get|getting|bring|bringing him|her|<patient> to? ~ come|wake? ~ to|round|around $
    <neg> ~ get him|her|<patient> to ~ come|wake|open|respond|react
    no ~ hay ~ forma|manera|modo|poder de|que ~ se? despierte|despertarlo|despertarla|reaccione
    no ~ vuelve|volvia|volvio|regresa en si
    <neg> ~2 wake|waking|rouse|roused|awaken|woken|woke|wakes|despierta|desperto|despertar|
        despertamos|reacciona|reaccionando|responde|respond|responding|responsive|responds ~ \
        up|him|her|at|to|all? -<sleepwell>
    = collapsed agent
    cant|couldnt|cannot ~ get|lift|stand ~ him|her|<patient> up|upright $
    shaking|shook|calling|called|shouting|clapping|nudging ~~ <neg> ~2 there|with_us|respond|responding|reacting|moving|react
    le|lo|la hablo|llamo|muevo|toco|sacudo|grito|pico ~~ y nada
    calling|shaking|shook|poked|poking|pinched|nudged|nudging|sacudo|muevo|toco|llamo|grito|hablo ~~ nothing|nada $ -clinic -vet -phone -office -you -clinica -veterinario -head
    = collapsed
    flop|flops|flopped|slump|slumps|slumped|crumples ~ over|down|back|straight? ~~ when|if|as ~ i|we lift|stand|pick|hold|prop
    se|esta|quedo ~ me|nos|le? privo|privado|privada|priva
    vahido|vahidos|sincope|soponcio|yeyo|patatus
    helado|helada|frio|fria y no ~ se mueve|responde|despierta|levanta
    levanto|cargo|paro|agarro|alzo ~~ cae|cuelga|dobla|desguanza ~ como ~ un? trapo|muneco|costal
    lies|lying|laid|lay|laying ~ there|still ~~ <neg> ~ even? blink|blinking|react|respond|breathe
    wobbly|dizzy|woozy|swayed|staggered|stumbled ~ and|then ~ just? dropped|fell|collapsed|down
    floppy|limp and|n cold
    cold and|n floppy|limp
    queda|quedo|anda|cuelga ~ como ~ un? trapo|trapito|muneco|hilacho -<wound> -<legword>
    <neg>|ni ~ abre|abrir|abrio ~ los|sus? ojitos
    <neg>|ni ~ levanta|sostiene ~ ni? ~ la|su cabeza|cabecita ~~ helado|helada|frio|fria|flojo|floja|guango|guanga
    no ~ se ~ para|levanta|sostiene ~~ se cae|desploma|va_de_lado -<legword>
    dropped|fell|collapsed|toppled|went_down|crumpled|sank ~~ <neg> ~ get|got|move|moved ~ back? up
    shook|shake|poked|nudged|prodded|lifted|tapped|clapped|called ~~ <neg> move|moved|react|reacted|respond|stir|stirred|flinch|blink
    <neg>|cant ~ lift|hold|raise ~ his|her|the? head ~ up? ~ or|and|nor ~ stand|walk|get_up|sit
    went|gone|passed ~ out ~ like ~ a? light|lamp -<lastnight> -bed -slept -snoring
    out ~ like ~ a? light ~~ come|came|round|wake
    lo|la|le muevo|toco|sacudo|hablo|llamo|grito|pico|jalo ~~ no|ni ~ pestanea|reacciona|responde|contesta -<coneword>
    lo|la|le muevo|toco|sacudo|pico|jalo ~ y no ~ hace|mueve|siente ~ nada|$ -<coneword>
    cabeza ~ se_le|le|se ~ cae|cuelga|va -<wound>
    quedo|esta|anda|cayo ~ todo|toda? lacio|lacia|flacido|desmadejado|desmadejada|suelto|suelta|desguanzado ~~ no|ni|ojos|cabeza|sin
    head ~ lolling|flopping|flopped|drooping|hanging -window -out -bed -side -over
    body|he|she|legs|all ~ went|gone|goes limp -<legword>
    went|gone|going ~ down|over ~~ and|then out|limp|unconscious|stiff
    <neg> ~ get ~ any|a|much ~ response|reaction|life ~ out|from ~ of? him|her
    glazed|glassy|fixed|blank|vacant eyes? ~~ <neg> ~ respond|responding|react|moving|blink
    dead|deadweight weight ~2 in|when|arms -<bandageword> -<coneword> -leg
    out|down for ~ the count ~~ not|wont|cant|isnt|doesnt
    inconciente|inconcientes|desvanecida|desmayito|desmayon
    <neg>|sin ~ da|dar|dando senales|sena|signos ~ de? vida
    sin|perdio|perdiendo|pierde ~ el|la conocimiento|sentido|conciencia
    azoto|azota|azotado ~ contra|en|al|como piso|suelo|costal|tabla
    trapo|muneco_de_trapo ~~ no|sin|ni ~ responde|reacciona|despierta|abre|mueve
    fueron|fue|van ~ las patas|patitas ~~ cayo|suelo|piso|desplomo
    limp ~2 in ~ my|his|her|our arms|hands|lap
    no ~ se? ~ podia|puede|pudo ~ parar|pararse|levantar|levantarse|sostener|sostenerse|mantener -<legword>
    fell|fallen|fainted|toppled ~ over|down ~~ wont|cant|couldnt|hasnt|not ~ get|got|getting ~ back? up
    went|goes|fell|keeled|dropped|cayo ~ over|down|redondo ~ like|como ~3 tree|log|plank|skittle|domino|arbol|tronco|tabla
    eyes|ojos ~ are? ~ open|abiertos ~~ <neg>|sin|ausente|perdido ~ know|recognise|conoce|reconoce|responde|ausente
    shaking|shook|shaken|poked|pinched|nudged|sacudo|muevo|soplo|grito|gritado|shouted|hablo|llamo ~~ and|y nothing|nada -phone -clinic -vet
    hes|shes|is|was|feels limp $ -<legword>
    <neg> ~ coming|come|came to|round|around $
    cold|floppy|pale|grey ~~ and limp -<legword>
    cayo|fue_al_suelo|azoto ~~ no ~ se ~ levanta|para|levanto|paro|mueve|despierta
    unable|cannot ~ to? stand|rise|get_up -<legword> -on
    lifeless ~2 on|in floor|ground|arms|side|heap
    in ~ a ~ heap|puddle|pile ~~ <neg>|wont|wouldnt|couldnt|limp
    crumpled|crumples|sagged|buckled ~ in|to|into|onto ~2 heap|floor|ground|pile
    no ~ puede|logra|pudo ~ ponerse|tenerse|mantenerse|estar ~ de|en|parado|parada pie
    doblaron|doblan|doblo|aflojaron|vencieron|flaquean|flaquearon ~2 patas|patitas|piernas|manos ~~ cayo|cae|suelo|piso|levanta
    esta|anda yendo|muriendo
    flacido|flacida|flaccid -<wound> -<swell>
    tieso|tiesa|tirado|tirada ~ tirado|tirada|tieso|tiesa
    puso|quedo|esta ~ todo? flojo|floja|aguado|aguada|guango|guanga ~~ cayo|responde|reacciona|ojos|despierta|inconsciente
    se me|nos va $
    floppy|limp|flaccid ~2 like|as ~ a ~ doll|rag|noodle|fish|cloth
    cant|couldnt|wont|doesnt|unable ~2 hold|lift|keep ~ his|her ~ head ~ up ~~ limp|floppy|weak|cold
    eyes|ojos ~3 open|abiertos ~~ nobody|no_one|nadie|noone
    stopped|quit responding|moving
    <neg> ~ get|getting ~ a|any|no ~ response|reaction|rise ~ from|out|of ~ him|her
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
    se aflojo|fue|cayo ~ todo|toda|redondito -<inanimate> -me -nos
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
    no hay ~ manera|forma|modo|como ~ de|para? que? ~2 despierte|despertarlo|despertarla|reaccione|responda
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
    = normal fixed
    <neg> ~ lost ~2 spark|sparkle|mischief|cheek
    cant|couldnt ~ keep ~ a ~ good ~ dog|cat ~ down
    never ~ been ~ better|happier
    = normal @asked-general
    follows|following|followed|shadowing|trailing ~ me|us|my ~3 around|about|everywhere|round|room|house|all|kitchen
    giving ~ me|us ~ cheek|lip|sass|attitude|lots
    = quiet !@cone !@asked-cone
    so|bit|pretty|really|totally|completely|still|very|seems|looks|hes|shes|is|was|little|kinda|anda|esta out_of_it -<coneword>
    ^ out_of_it
    = collapsed agent
    <neg> ~2 get ~2 wake|waking|rouse|respond|open_his_eyes|open_her_eyes -<sleepwell> -<coneword>
    """,
}

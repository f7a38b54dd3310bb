"""Figures of speech and phrases whose words mean something else."""

from __future__ import annotations

CLASSES = {
    "nothungry": "no not wont refuses quiere want wants quiso trying tries able",
}

RULES = {
    "idiom": """
    = void !@asked-incision
    its|it|is|still|now ~2 running|runs|ran ~ all? ~ down ~ his|her|the|its ~ back|hind|left|right? ~ leg|thigh|paw|knee|side|hock -<bleedword> -blood -bloods -sangre
    = void
    died|dying|dead|speechless ~ of|with|from ~ embarrassment|shame|laughter|boredom|cuteness|jealousy
    paralysed|paralyzed ~ with|from ~ laughter|laughing
    shaking|trembling|wriggling|quivering ~4 with|of|from ~ joy|happiness|glee
    temblando|tiembla|temblaba ~4 de ~ gusto|alegria|felicidad
    muerto|muerta|muriendo|muere|murio|paralizado|paralizada ~ de ~ la? ~ pena|verguenza|risa|celos|miedo|susto|emocion|aburrimiento
    hace|haciendo|hizo ~ el|la ~ muerto|muerta|muertito|muertita|dormido|dormida|sordo|sorda|loco|loca|tonto|tonta
    plays|playing|played|pretends|pretending|acts|acting ~ to_be|being? ~ dead|deaf|dumb
    me|nos ~ deja|dejo|dejó ~ sin ~ aire|aliento ~ de|por
    cayo|cayó|fue|va ~ la|el|mi ~ señal|senal|internet|luz|red|sistema|linea|llamada|wifi|pagina
    white|blanco|blanca part|parte? of|de|del +eye|eyes|ojo|ojos
    parte blanca|blanquita +eye|eyes|ojo|ojos
    bleeding|bled|blood|sangrado|sangre|sangraba ~~ never|hasnt|havent|not|didnt|no ~ has|ha? ~ come|came|returned|happened|volvio|regreso|vuelto ~ back|again|a_pasar?
    nearly|almost|casi|por_poco|about_to ~4 gave|give|giving|doy|di|dimos|daba ~4 double|two|twice|another|doble|dos|otra
    nearly|almost|casi|por_poco ~3 double|doble dosed|dose|dosis
    scream*|crying|yelling|shouting|grit*|llor* ~2 kids|toddler|toddlers|children|ninos
    kids|toddler|children|ninos ~2 scream*|crying|yelling|grit*|llor*
    cayo|cae|tiro ~2 phone|telefono|celular|cel|movil|mobile
    read|reading|heard|googled|lei|leyendo|oi ~2 about|of|on|that|de|sobre|que ~2 dog|dogs|cat|cats|perro|perros|gato|pets|people|someone
    puede|pueden|can ~3 un|una|a ~ dog|cat|perro|gato|perrito ~ go|be|estar|pasar|survive|last? ~2 without|sin
    dangling|dangles|hanging|colgando ~ off|over|out_of|del|de ~3 sofa|bed|couch|chair|edge|basket|cama|sillon
    foco|luz|bulb|light ~2 fundido|fundida|fundio|gone
    like|como ~ a? ~2 meat|carne ~ gone|echada|podrida|rotten|off|bad?
    tiembla|tiemblan|temblaba|tembla ~ la|las|su|sus? pata|patita|pierna|patas|patitas|muslo -entero -entera -todo
    twitching|twitched|twitches|paddling|running|movia|mueve|moviendo|pataleaba ~~ dreaming|dream|dreams|sonaba|suena|sonando|sueno
    when|whenever|cuando|if|si he|she|it|hes|shes? runs|run|corre|trota|trots|jogs|running|jumps|salta -<fallword> -ayer -yesterday
    leg|legs|pata|patas|patita|muscle|muscles|thigh|thighs ~3 shake|shakes|shaking|tremble|trembles|trembling|quiver|quivers|quivering|tiembla|tiemblan|temblando
    <whimper> ~~ dream|dreaming|dreams|dreamt|suena|sonando|sueno
    <runword>|<jumpword> ~4 if ~ id|i|we|wed|you|given ~ let|allowed|half|the_chance
    went|goes|going ~ to <jumpword>|<runword> ~~ thought|but|decided|stopped|caught|changed
    iba|quiso|queria ~ a? <jumpword>|<runword>|brincar|saltar|correr ~~ arrepintio|pero|agarre|deje|pare
    thought better of
    casi ~ se ~ <slidword>|<fallword>
    full of piss
    bolt*|raced|races|tore|flew|galloped|zoomed|ripped|charged|shot|ran|powered ~ down|through|into? ~3 <food>|kibble|biscuits|bowlful -out -door -yard -off -after -leash -lead
    chas* ~ his|her|the|a|last ~2 <food>|pill|bowl|kibble|biscuit|kong|tail|treat
    this|last|next|early|late|every fall
    runs|run|running ~2 warm|hot|cold|errands
    tummy|stomach|belly|bum|nose|eyes|barriga|panza ~2 runs|running|ran|corre
    knock*|hit|tip*|kick*|flip*|tumbo|tiro|volteo ~3 bowl|bowls|cup|glass|tv|lamp|vase|plant|bin|dish|mug|plato|vaso|maceta|lampara|basura
    crashed|crashes|crashing|conked ~ out? on|onto|in ~2 bed|sofa|couch|lap|basket|cushion|crate|rug
    thunder|lightning ~2 crash|crashes|crashing|clap
    with a crash|bang
    slid|slides|pushed|pushes|slid_his ~ his|her|the|su|el ~ bowl|plate|toy|dish|plato
    climb*|get*|got|goes|went|hop*|settle*|se_sube|se_subio|subio|sube ~ back? on|in|into|onto|to|a|en ~ his|her|its|own|su bed|basket|crate|cushion|mat|spot|cama|camita|colchon|cojin|jaula|transportadora
    climb* the walls
    yelling|yells|yelled|bark*|scream*|howl*|shout*|whin*|hiss*|growl*|squeal*|cry|crying ~ at|a ~4 cat|cats|dog|dogs|squirrel|squirrels|bird|birds|mailman|postman|neighbour|neighbours|neighbor|neighbors|door|window|hoover|vacuum|tv|fridge
    gasping for ~ a ~ drink|cuppa|tea|walk|beer|coffee|fag
    came|comes ~ off worse|best|second|lightly|unscathed
    hell|shell|itll|will|wont|soon|gonna|going_to|theyll ~ be ~2 <runword>|<jumpword>|climbing|wrestling
    wrestl*|fight*|fought|battl*|struggl*|pelea|peleando|batalla ~4 <coneword>|<meds>|drops|harness|bandage
    keep|keeps|keeping|help|helps|bring|brings|para|pa ~3 swelling|hinchazon|inflamacion down|under|baje|bajar
    swelling|hinchazon <pillword>
    for|para|pa ~ the|his|her|la|su? hinchazon|comezon|bruising
    se me hincho|hincharon|inflamo|inflamaron ~2 pie|pies|tobillo|tobillos|mano|manos|cara|rodilla
    hed|shed|would ~ love|like|kill|give ~ to <lick>
    inside ~ of ~ the|his|her thigh|thighs|leg|hock|flank|groin|hip|elbow|knee +<bruiseword>
    swing|swings|swinging|swung ~ that|his|her|the ~ hip|hips out|round|wide
    choked|chokes|choking up
    colour|color ~ of ~2 weak
    bump*|bang*|crash* ~2 every|frames|doorframes|furniture|walls|skirting
    was|were|been doing|going|getting|coming ~ so|really|very|pretty? nicely|beautifully|brilliantly|grand|lovely
    ^ cojo la|el|las|los|un|una
    cojo ~ la|el|las|los ~ correa|pastilla|pastillas|juguete|pelota|plato|llaves|jeringa|hielo|toalla
    llorandome|llorando|llora|llorandole ~ el|por|mi|al ~2 plato|comida
    dele|dale que dele|dale
    on ~ ice|frost|snow +<slidword>
    being|such|hes|shes|is ~ a ~ real|right|total|proper|royal? pain -in -has -have -having -shows -lot -<legword>
    pains me|us
    im in pain
    dolor de cabeza|muelas|huevos
    tent|table|shelf|roof|gate ~2 collapsed|collapses|colapso|desplomo
    leg|legs|pata|patas of|de ~ the|a|la|el|una chair|table|bed|sofa|desk|couch|silla|mesa|cama|mueble|sillon
    chair|table|sofa|bed|desk leg|legs
    howls|howling|howled|aulla|aullando|aullo|ladra|ladrando ~ at|con|a|al|along ~4 siren|sirens|ambulance|ambulancias|ambulancia|moon|luna|tv|music|sirenas|patrullas
    pants|panting|panted|jadea|jadeaba|jadeando ~ when|because|after|from|in|cuando|porque|despues|por|en|con ~4 hot|heat|warm|sun|running|playing|car|calor|sol|carro|coche|correr|jugar|walk|paseo -not -isnt -no -sin -ni -hasnt
    lifts|holds|cocks|raises|lifted|lifting|levanta|alza ~2 leg|pata|patita ~3 to|para|when|on|cuando|en|at|against ~4 <pee>|lamppost|tree|post|bush|arbol|poste|maceta|llanta
    hides|hiding|hid|hidden|esconde|escondiendo|escondio ~ his|her|the|sus|los|las|su|el|la ~ toys|bones|treats|ball|bone|juguetes|premios|hueso|pelota|comida
    subio|bajo|sube|baja|subir|bajar ~2 precio|costo|peso|presion|volumen|fiebre|temperatura|foto|video
    cayo|caer|cae|caia|cayendo ~2 aguacero|lluvia|rayo|granizo|tormenta|helada|nevada
    llora|llorando|lloraba|chilla|crying|cries|whines|whining ~4 quiere|wants|porque|because ~3 salir|comida|comer|premio|atencion|calle|mimos|out|food|attention|dinner|fed
    we|were|weve|everyone all ~2 tired|exhausted|shattered|knackered
    ran|running|run|sali|corri|fui ~2 to|down|over|a|al ~ the|la|el pharmacy|store|clinic|vets|vet|chemist|farmacia|tienda|veterinaria|clinica
    bored stiff|rigid
    beside himself|herself
    blood|sangre ~~ was|is|its|just|only|from|off|era|es|fue|resulto|puro ~2 ketchup|catsup|beetroot|beet|paint|pintura|jam|mermelada|salsa|lipstick|tomato|tomate|betabel|remolacha -like -as -como
    blood|sangre ~~ but|pero ~3 from|de my|mi|mis|the <kin>
    ears ~ jumped|pricked|shot|went ~ up
    even|ni|not ~ in|with|con ~2 <hid>
    cant|couldnt|wont ~ rouse ~ any|much interest
    smells|smelled|stinks|smelling|huele|olia ~ of|like|a ~ <pee>|<poo> -<wound> -<bandageword>
    me mordi ~ la? lengua|labio|cachete
    gap ~ between ~2 walks|walk|meals|doses|visits|teeth
    stitch ~ knitting
    shook|shake|shakes|shaking ~ himself|herself|itself ~ dry|off|down|all|over
    bled|bleed|bleeding ~ my|the|our ~ radiator|radiators|brakes|valve|line|system
    passed|pass out ~~ snoring|snores|snored
    running ~3 hot|warm|temperature|fever|cold
    makes|make|making|made ~ it|him|her|leg ~ look ~2 fat|fatter|big|bigger|swollen|puffy|crooked|thin
    nail|claw|toenail|uñita|su_una|sus_unas|una_una|la_una_se|de_la_una ~~ bled|bleeds|bleeding|blood|sangro|sangra|sangre
    cant|couldnt ~ breathe ~ for|from ~ laughing
    collapsed|fainted|died|dying ~ laughing|de_risa
    gave|give|giving ~4 <pillword> a miss
    before|antes ~3 <surgery> he|she ~ <cryout>
    me la|lo avento|tiro|escupio ~ en|a
    no_interest|interest ~ in ~3 wound|incision|stitches|scar|cut|squirrels|cone|walk|bandage
    heaven|goodness|god|lord|christ knows|only? how|what|why
    quien sabe como|que
    not taken ~ eyes off
    stinks|smells|reeks|rolled|rolling|rolls|huele|revolco ~2 of|in|a|en ~2 <poo> -<wound> -<bandageword>
    knocked|knocks ~ back
    wriggle*|slip*|squirm*|get|got|wiggle*|climb* ~ out of it
    school|milk|shop|errand|bread run
    de corrido|corridito
    pujando|vomitando|sangrando|cojeando|llorando|lamiendose no ~3 visto|vi|veo|vimos
    size|like|as ~ of? a ~ pea|peas
    ah|oh|aw|well|holy|no crap|shit
    was|were ~ doing|going ~ so|really|much|very|pretty|quite? well|better|great|good|fine
    been ~ doing|going ~ so|really|much|very|pretty|quite? well|better|great|good +used_to|until|before|yesterday|now|but
    andaba|iba|estaba|caminaba|venia ~ mejor
    was|were better
    crashed|flaked|conked|zonked|sparked|flopped out -<neg> -wake -waking -awake
    se me fue ~ mano|alma|corazon|pajaro
    como_trapo +<legonly>
    polished|finished|wolfed|scoffed|horsed ~ off
    whatever ~ i|we ~ put|puts ~ down
    without ~ a hiccup
    threw|throws|throwing|had|has|having ~ a ~ hissy|paddy|strop|tantrum fit?
    hissy fit|fits
    where|donde ~ do? i start|begin|empiezo|empezar
    where to start|begin
    would you believe
    punto y coma
    polished off
    semi colon
    cayo|cayeron|caen el|la|los|las|un|una|mi frasco|vaso|plato|telefono|celular|cel|taza|botella|diente|silla|puerta|cuchara|cubeta|maceta|cuadro|salsa|agua|control|foto
    no ~ lo|la|los|las? suelta|suelto|suelten
    mientras|cuando|while|whilst ~3 come|comia|coma|eats|eating|eat|desayuna|cena|comer -<neg> -llora -cries -<vomit> -<whimper>
    so|para_que|pa_que|that ~2 could|can|pueda|pudiera|puede ~ eat|comer ~ in? peace|paz?
    none|neither|ninguno ~ of|de ~2 us|nosotros ~2 <drink>|<ingest>|drinking|eating
    yo ~2 lloraba|llorando|lloro|llore
    lloraba|lloro|llore yo
    scratched|scratching|scratches|pawed|rasco|rascando ~ at|en ~3 door|puerta|window|ventana|gate|crate|carpet|floor
    muri|muero|muere ~ de? verguenza|pena|aburrimiento
    <xray> ~3 se? ve|veia|shows|show|showed|looks|sale|salio|muestra|mostro ~4 <deepword>
    want*|offered|offer|thinking|thought|tempted|quiso|queria|quieren|queriendo|pensaba|penso|suggested|sugirio|told|dijo ~3 give|giving|dar|darle|diera|dieramos|dar_le ~5 <humandrug>|aspirin|aspirina|paracetamol|ibuprofen|ibuprofeno -gave -di -dio -dimos
    <xray> ~6 <deepword>
    <deepword> ~6 <xray>
    hissy|paddy|strop|screaming|toddler fit
    ataque|ataques|ataquito|crisis ~ estornudos|hipo|estornudo|calor|ansiedad|ladridos|mimos|cosquillas|arranques|coraje|llanto|ternura
    dying|starving|starved of? starvation|hunger|thirst
    screaming|crying|howling|shouting|whining|barking|yelling|begging|whinging ~3 for|at ~3 \
        <food>|attention|treats|cuddles|walk|walkies|ball|cookies
    screams|cries|howls|shouts|whines|begs|cried|whined|barked ~3 for|at ~3 <food>|attention|
        treats|cuddles|walk|walkies|ball|postman|mailman|cookies
    screaming|screamed the house|place down ~2 for
    i|we|im|can breathe|breathing ~ easier|easy|again
    sad|puppy eyes|face|look
    tried|trying|tries|wants|wanted|attempted|attempts|intento|intenta|quiso|quiere|queria ~ \
        to? <jumpword>|<runword>|climb|chase|brincar|correr|saltar|subirse|salir
    eats|ate|eating|come|comio|eaten ~2 grass|pasto|zacate|pastito
    about_to|would|could|hed|shed|might|allowed|love|dying|nearly|almost|casi|iba_a|before|antes_de ~3 \
        <jumpword>|<runword>|<fallword>|<slidword>
    didnt|dont|not|havent want|wanted|like|dare|bother ~2 to ~ wake|waking|disturb|rouse
    didnt|dont|not wake|disturb him|her yet|so|till|until|for
    no quise|queria|quisimos|queriamos|quiero despertar|despertarlo|despertarla|molestarlo
    keep|keeping|kept|stay|staying|mantener|mantenerlo|mantenerla ~2 quiet|calm|tranquilo|tranquila
    quietly
    weak|weaker tea|coffee|signal|stream|bladder
    took|take|taking the jump|plunge
    to get|go|climb|hop|be ~ up|on|onto ~3 <perch>
    whining|crying|whingeing|whinging|begging|asking|barking|llorando|llora ~ to|for|por|para ~3 up|bed|sofa|out|him|attention|go|salir
    sore|tender|red|itchy ~2 ear|ears|eye|eyes|throat|patch|neck ~ behind|on|from? -<wound> -<legword>
    for|para ~2 <sign> ~~ and|y|or|o ~ <sign>|swelling|inflammation
    breathing down my
    sigh of relief
    swelling|hinchazon|temperature|weight|it|puffiness|bruising ~2 come|came|comes|gone|went back up|down +<swell>
    it ~2 come|came|comes back up since|again|on|around
    fell|falling|falls|tripping|trips over himself|herself|themselves
    breathe a sigh
    holding my|our breath
    dying|die|killing to|for|me
    muriendo|muere|muero ~ de? hambre|risa|ganas|sueno
    muerta|muerto ~ de? hambre|risa|sueno|miedo|cansancio|cansada
    se muere por
    collapsed|collapses onto|into ~2 bed|sofa|couch|lap|basket|cushion
    flopped|flops|crashed|crashes onto|into|in ~2 bed|sofa|couch|lap|basket|
        cushion|crate
    bleeding heart|hearts
    out cold snoring|asleep
    out like ~ light
    ataque ~ risa|nervios|tos|panico|locura|alegria|celos|juego|amor|hambre|energia
    heaving|shaking|trembling|panting|crying|whining with ~ excitement|joy|delight|anticipation|
        happiness
    collapsed|collapses|collapse the crate|cage|box|pen|gate|tent|chair
    i|we|yo cant|couldnt|dont|didnt|wont wake up
    bit|bites|took|takes ~4 hand|arm|fingers off
    lung|lungs collapsed
    away ~ with ~ fairies
    took|takes|take ~2 breath ~ away
    held|holds|hold ~2 breath
    in one breath
    dead|dog to the world|tired
    sick and tired
    sick|ill with|of worry
    worried sick
    tired|sick|bored|weary|cansado|cansada|cansados|harto|harta|hartos of|de ~2 it|cone|collar|being|this|crate|<coneword>|<coneword>
    quiet ~ night|day|evening|house|morning|weekend|afternoon|spell|on|time|word|corner|room|place
    noche|dia|casa|tarde tranquila|tranquilo
    active ingredient|ingredients|substance
    bright sun|sunny|light|lights|side|sunshine|window|yellow|idea|morning
    happy hour|birthday|christmas|holidays|days|ending|place
    hungry|thirsty for ~2 attention|love|cuddles|company|fuss|more
    i|we|im|owners ~ happy|content|alert|active
    happy with|about|for|to ~2 progress|you|it|how|that|the|his|her|report
    sick of the|it|being|this|wearing
    cone|collar|him|her ~ sick of
    hot dog|dogs
    cool as
    dead weight
    blue in the face
    out of the blue
    feeling blue
    red tape|dress|blanket|bed|toy|ball|collar|lead|leash|rug|carpet|light|towel|bowl|mist|
        handed|bandage|wrap|vetwrap
    white as bread
    black|white and white|tan|black
    black|white|blue|red|yellow|green|pink|purple dog|cat|blanket|towel|lab|labrador|fur|coat|
        towel|lead|car|van|pill|pills|tablet|tablets|capsule|capsules|toy|bed|bandage|wrap|
        cone|collar|socks|sock|pants|vet|harness
    pastilla|pastillas|capsula|capsulas|cobija|collar|venda|correa|juguete|pelota|carro|coche \
        roja|rojas|blanca|blancas|azul|azules|amarilla|amarillas|negra|negro|rosa|rojo|blanco
    blood pressure|test|tests|work|results|sugar|thinners
    bloody hell|thing|good|cone|collar|well|nuisance|brilliant|lovely|marvellous|great|dog|
        cat|vet|phone|stubborn|happy|stupid|annoying|postman|doorbell
    run|ran|running errands|late|low|smoothly
    running|ran ~2 bath|shop|shops|car|errand
    ran|run out of
    ran|run|running|runs out $
    ran|run|running|runs out yesterday|today|on|last|since|so|and|this|tomorrow|soon|early
    ran|run|running late|short|low|over|smoothly|through
    jump|jumped|jumping|leapt for|with joy
    jump|jumped to conclusions
    jumped out of ~ skin
    jumped when the bell
    fell|fallen|fall|falling|falls asleep|out|in love|behind|apart|on deaf
    fast asleep
    se cae|cayo|caen de sueno
    cae|cayo bien
    cayo ~ dormido|dormida
    caigo|caigo de
    slipped my|our|a mind|pill|bit
    slipped ~2 into|in ~3 <food>|cheese|ham
    slip ~2 into|in
    over the moon
    open|opened|opens ~ eyes|mouth|door|gate|eye|his|window|wide_eyes|fridge|packet|tin|bag|
        up_to
    abierta|abierto|abrio|abre|abri|abrí ~2 puerta|ojo|ojos|reja|porton|refri|ventana|boca|lata
    keep|keeps|kept|keeping an? eye
    off his|her face
    off|went|go|gone to|for sleep|bed|walk|nap|wee|walkies
    weight off my|our
    lost|loses interest in the ball
    gained|losing|lost|loses|gain weight
    accident ~6 car|road|shops|driving|work|insurance|hurt
    car accident|crash
    chocado|choco|accidente ~3 carro|coche|auto
    shaking|shook|shake|shakes ~3 head|paw|hands|hand|toy|water|tail|off|rain
    shake|shakes|shook himself|herself|it|off
    give|gives|gave ~2 shake|scratch|hug|kiss|belly|bath
    belly rub|rubs
    wagging|wags|wag
    hit the roof
    pain in the
    such a pain
    a pain to
    painful|pain ~ for us|me|owner|wallet
    feeling|in the pink
    in the red
    tickled pink
    strong as
    weak at the
    ate|eats|eating|eaten ~ like|as a? bird
    driving|drives|drive ~ me|us|crazy|nuts|mad|insane|wall|up
    killing|kills|kill me|us
    break|breaks|broke|breaking ~ heart
    breaks|broke my|our
    gave us|me a|the scare|fright|look|eyes
    le|me|nos dio un? ~ susto|gusto|pena|risa
    heart|hearts broken|sank
    stop|stopped at|by|for
    can|cant|could|couldnt hardly|barely? contain|wait
    blowing|blew a? kisses
    water bottle
    hot|cold water|bottle
    tea towel|time|break|cup
    cup of tea
    disculpen|disculpe|perdon|perdonen ~2 molestia|molestias
    nobody|noone|no_one|nadie ~2 hurt|injured|lastimado
    no harm done
    <hours>|<times>|days|nights|times|day|night|week|weeks|row running
    misses|miss|missing|missed ~2 run|runs|walks|walk|park|walkies
    ni|to|para hacer|go? pipi|popo|pee|poop|poo|wee|del
    para ~ hacer|ir pipi|popo|baño|orinar
    went to bed
    fed up
    as a bone|whistle|pin|die
    dried|old|dry ~ blood
    sangre seca
    para|to comer|eat|dormir|pasear -<nothungry>
    for|para|por|4 ~ the|his|her|el|la|su|any? pain|dolor|inflammation|inflamacion|swelling|
        seizures|itching|stomach
    pain med|meds|pill|pills|relief|killer|killers|medication|tablet|tablets|medicine|
        medicines|control|management|patch|reliever
    like hes|shes|he|she|its ~ running|dreaming|dying|swimming
    como|como_si ~2 corriendo|nadando
    thank|thanks|gracias ~ bother
    puts|put ~ down my|the tea|cup|kettle
    my|the tea down
    stool softener
    stool ~ kitchen
    sat|sitting on ~ stool
    bit|bits of a? hero|madam|character|star|drama
    drama queen
    crying|cried|cry i|me|happy
    i|im|ive|we ~2 crying|cried|cry|shaking|trembling|panicking|panicked
    yo ~2 llorando|llore|temblando
    llorando yo|de|conmigo
    pus|puss in boots
    calls|called|call ~ name
    called her|him|it
    """,
}

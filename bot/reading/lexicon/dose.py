"""Doses: given, forgotten, spat out, brought up, given twice."""

from __future__ import annotations

CLASSES = {
    "nowword": """
        that_time this_time second_attempt esta_vez esa_vez al_final
        """,
    "gave": """
        gave given give giving get got gets took taken take takes taking had has_had swallowed
        administered popped medicated dosed dosing ate eaten administer di dio dimos dieron dado
        dando damos tomo tomado toma tomando trago comio comido administre administro
        administramos suministre
        pilled
        """,
    "hid": """
        cheese ham peanut_butter chicken hidden hid hide wrapped crushed crush butter treat
        sausage pate queso jamon salchicha escondida escondido pollo sneaked snuck slipped mixed
        pill_pocket pocket escondi camuflada
        atun yogur yogurt cajeta higado carnita tuna brie liverwurst pate_de miel honey marmite
        banana platano crema_de_cacahuate crema_de_mani queso_crema requeson jamoncito
        taquito tortilla taco rollito pancito croqueta_humeda bolillo mantequilla
        """,
    "spat": """
        spat spit spits spitting spitted spat_out spit_out escupio escupe escupio_todo escupido
        escupiendo escupi escupia escupió vomita_la spits_out
        """,
    "refuse": """
        refused refuses refuse refusing rejected rejects rechazo rechaza nego niega negaba
        """,
    "trying": "tried trying attempts attempted try intente intentamos intento wouldnt",
    "stash": """
        slipped slip snuck sneaked hid hidden popped crushed tucked buried stuffed put
        escondi escondimos meti metimos disfrace machaque
        puse puso pusimos wrapped
        """,
    "missword": "missed forgot forgotten skipped olvide olvido olvidamos falta faltan left behind",
    "twiceword": "twice two_times double doubled doubles dos_veces doble 2_times",
    "human": "paracetamol ibuprofen aspirin ibuprofeno aspirina",
    "interval": """
        daily day dia diario diarias twice_a_day twice_daily a_day al_dia every_day per_day
        """,
    "asever": """
        tonight planned usual yesterday like same scheduled normal always hoy anoche siempre
        """,
    "objectword": "sock socks calcetin toy juguete bone hueso stone piedra string hilo",
}

RULES = {
    "dose": """
    = given
    ^ given ~ at|around|about|by? <clock> -<neg> -<human> -<food> -<thing> -<askmark>
    ^ all|both given $
    le|ya di|dimos ~ todo|todas|todos $ -<neg> -<human> -<food>
    di|dimos|dio|dieron|doy ~ las|los|ambas|ambos dos|ambas|ambos -<neg> -<food> -vuelta -vueltas
    gave|give|given ~ him|her|them|it? ~ both -<neg> -<human> -<food> -<icepack>
    <partly>|mitad ~ of|de ~ la|the|his|her? <meds> ~2 como|as ~ decia|dijo|dijeron|said|directed|label|receta
    <meds> ~2 entro|paso|bajo ~ a|al|hasta ~ la|el? tercera|segunda|tercer|fin|final
    <meds> ~~ went|go|goes ~ in|down ~~ stayed|kept|swallowed|gone
    did|does|doing ~ the|his|her|all|both? <meds> -<neg> -<askmark>
    <meds> ~ tambien|too|also|as_well|igual -<neg> -<missword> -<spat>
    <meds> yes|si|thumbsup
    <meds> ~2 in|down|given|done|taken|swallowed|eaten|gone|adentro|dada|dadas|dado|dados|
        tomada|tomadas|administrada|administrado|administrados|listo|lista|listas|ok|fine|good
    <gave>|having ~4 <meds>
    had ~4 <meds> -<diarrhoea> -<vomit> -<runny>
    <meds> ~4 <gave>
    gave|given it|them ~ to? him|her|at|with|in|<clock>|this|last|late|early|hidden|before|after|$ -<human> -<thing>
    gave|given it|them $
    gave|given them all|both $ -<neg>
    gave|give|gives ~ him|her it|them|half|one -<human> -<food>
    la|lo|las|los di|dimos|dieron|dado -<human> -<food>
    le di|dimos|dieron ~3 <clock>|media|mitad|temprano|tarde|puntual -<human> -<food>
    le di|dimos|dieron|dio $
    la|lo|las|los dio -<human> -<food>
    ya ~ le dio
    took|taken|swallowed ~ it|them well|fine|ok|no
    le|se|ya la|lo|las|los di|dimos|dio|tomo|trago
    ya le di|dimos|dieron $
    ya le di|dimos|dieron su|sus|la|las|lo|todas|todo|ambas|dos <meds>?
    ya se la|lo|las|los ~ tomo|trago|comio|di|dimos|dio|paso
    had his|her|the <meds>
    got his|her|the <meds>
    <meds> ~3 as directed|prescribed|instructed|planned|scheduled|indicated|per|ordered -<askmark> -saving -keeping -later
    <meds> ~3 segun|como indicado|indicacion|indicaciones|receta|indicaron|indico -<askmark>
    finished|completed|termino|acabo ~3 <meds>
    has had ~ <meds>
    meds|pills|tablets|medicine|medicines|medication|medicinas|pastillas|medicamentos <good>
    down went the? <meds>
    no_issues|no_problems|no_problem|no_trouble|good_as_gold|no_bother|sin_problemas|sin_problema ~3 <meds>
    <meds> ~3 no_issues|no_problems|no_trouble|good_as_gold|no_bother
    took ~ like ~ champ|star|lamb|angel|pro|candy
    se la|lo|las|los di|dimos|dio|tomo|trago
    all|both <meds> ~ taken|given|done|in
    antibiotico|antibiotic|painkiller|analgesico ~ yes|si|done|listo
    se|ya tomo ~2 <meds>
    <stash> ~3 <meds> ~3 in|into|inside|en|entre ~3 <food>|<hid>
    acabo|acabamos|acaba|acaban|acabe de dar|darle|darsela|darselas|darselo|tomar|tomarsela -<neg>
    pude|pudimos|logre|logramos|consegui ~3 darsela|darselo -<neg>
    la|lo ~ pude|pudimos|logre|logramos ~ dar -<neg>
    pude|pudimos|logre|logramos|consegui|managed|able|finally ~3 dar|darle|get|give ~4 <meds> -<neg>
    pude|pudimos|logre|logramos|consegui|managed|able|finally ~3 dar|darle|get|give -<neg> -<bandageword> -<coneword> -<food> -<icepack>
    cayo|fell|dropped|rolled|spat|escupio|tiro|lost ~~ di|gave|got|dio|dimos ~3 otra|otro|another|new|again
    <meds> ~ on board|onboard
    pilled ~ him|her|it|them
    <meds> ~ squirted|popped|shoved|slipped|syringed|crushed|mixed|hidden|tucked|puesto|puesta|puestas|escondida|metida|metido|clavada|echada ~2 on|in|into|en|con|over|entre -<neg>
    <meds> ~ given|dado|dada|dadas|administered $
    managed|manages ~ the|his|her? ~ <meds>
    la|lo|las ~ clave|meti|escondi|envolvi|embarre|disfrace|puse|mezcle ~2 en|con|entre|dentro -<bandageword> -<coneword> -<icepack>
    only|solo|just|lleva|nomas ~ had|lleva|gave|di? ~ the? one|once|una ~ no|not ~ two|twice|dos
    never|nunca ~2 missed|forgot|skipped|late|pasado|olvidado|fallado|saltado ~~ today|hoy|either|tampoco|one|ninguna
    dosed|medicated|drugged|medicado|medicada ~ up? -<neg> -double -doble -<twiceword>
    = given @dose @asked-dose
    gave|di|dimos|given|given_him|dado ~ thismornings|mornings|tonights|todays|evenings|usual|morning's
    di|dimos|dado la de hoy|ahorita|esta|manana|noche
    ^ half|media|mitad ~ it|of|tab
    tercera|third|second|segunda|finally|eventually|al_final|por_fin ~2 si|yes|time|worked|
        tomo|trago|got|took|swallowed|acepto
    ^ <number>|half|media|medio|1/2|one|una|two|dos ~ <meds> $
    got|get|snuck|sneaked|popped|bunged|chucked|shoved|slipped|posted it|them|him|her|one ~ in|down
    had|took|taken|ate|swallowed|swallows the|all lot|lots|them|todo -<neg>
    took|taken|swallowed|ate|eaten|eats|had it|them -<neg> -<food>
    took|taken|tomo|trago well|fine|la|lo|las|los -<neg>
    took|taken his|hers $ -<neg>
    <hid> ~~ ate|eaten|eats|took|gone|down|swallowed ~ it?
    le dio|di|dimos|dieron|dado
    gave|give|gives ~ it|him|her|them -<human> -<food> -nobody -nadie
    given|administered|swallowed|dado|dada|dados|dadas|tomada|tomadas
    down ~ in|with|no|easy|easily|fine|well|ok|first|without|at|now|already|$ -<neg> -<legword>
    took|gave|di|dimos|dio|tomo|trago -<neg>
    <gave> ~ late|tarde
    all|both|everything ~ given|taken|done|in|down
    in|with|con|en ~2 <hid> -even -ni -todo -hasta -aun -siquiera
    a las <clock>
    not|no til|till|until|hasta <clock>
    late|closer|nearer|around|about|cerca ~2 <clock>|<number> than|que
    tarde|late ~ pero|but ~ seguro|done|in|given|down|got
    <minutes>|<hours> ~ tarde|despues|late|later $
    no_need ~ to ~ check|worry|remind ~~ done|given|in
    wrestled|poked|shoved|persuaded|squirted|syringed ~ it|them|him|her ~ into|down|in
    gone in ~2 second|seconds|gulp
    gone|went|popped|shoved|straight ~ in|into|inside|with ~ a|his|her|some|the? ~3 <hid>|<food> -<neg>
    ni ~ cuenta|enterado|enterada ~ se? ~ dio|dieron?
    didnt|never|hasnt ~ even? ~ notice|noticed|knew|know|suspect|suspected
    tarde|late|atrasado|retrasada ~~ pero|but ~ ya|done|given|si|in|had
    wolfed|gobbled|scoffed|ate|devoro|comio ~ it|them|la|lo|todo|down
    had|has|took|taken|takes|eaten|ate ~ it|his|hers|them|one|em|her ~ with|in|alongside|inside|wrapped ~ his|her|a|some|the? <food>|<hid> -<neg>
    ^ had|hes|shes|has ~ had? ~ his|hers|it|them|em|theirs $
    had hers|his|theirs -<neg>
    in|inside|down ~ his|her|the belly|tummy|mouth|gob|hatch|throat -<neg> -<spat>
    down the hatch
    ^ its|theyre|all|both|thats|hers|his ~ in|down|gone|inside $
    goes|tries|attempts|intentos ~ but|and|pero ~ its|its_in|it|he|she ~ in|down|took|gone
    slipped|slip|snuck|sneaked|hid|hidden|popped|tucked|buried|stirred|mixed|chucked|wrapped|smuggled|crushed|disguised|bunged|meti|escondi|camufle|revolvi|disfrace|puse|mezcle|envolvi ~ it|them|one|la|lo|las? ~ in|into|inside|with|en|con|dentro|entre ~ his|her|some|a|the|un|una|su? ~4 <food>|<hid> -<neg> -<spat>
    third|second|3rd|2nd|fourth|last|next ~ time|go|attempt|try|lucky ~ lucky|charm|worked|it|was|did? -<neg> -forgot -missed
    ^ adentro|dentro
    pa|para adentro|dentro -<vomit>
    tragada|tragadas|adentrada
    machaque|moli|triture|disolvi|aplaste ~ con|en|y|la|lo -<neg>
    down|gone ~ in one|a_flash|seconds
    <times> ~ lucky|charm|worked|suerte -<neg>
    <clock> ~ en_vez|en_lugar|instead|rather -<neg>
    <meds>|it|one|that|la|lo ~2 went ~ down ~ like|a|well|fine|easy|no|in
    in|with|inside|con|en ~ a|some|un|una|his|her ~ bit|piece|lump|blob|spoonful|slice|pedazo|pedacito|poquito|cucharada ~ of|de ~ <hid>|<food> -<neg> -even
    = missed
    forgot|forgotten|missed|skipped|skip|miss|olvido|olvide|olvidamos|olvidaron|omiti|
        omitimos|salte|saltamos|olvidaba|olvidado ~5 <meds>|dose|dosis|give|dar|darle
    <meds> ~3 forgot|forgotten|missed|skipped|olvido|olvide|paso
    <neg> ~3 give|given|gave|di|dado|dimos|dio|got|gotten|administer|administered ~3 <meds>
    <neg> ~2 had|taken|received|tomado ~3 <meds>
    ran|run out of ~ <meds>
    <meds> ~2 ran|run|runs out
    <meds> ~ all gone|finished ~2 none|no|nothing
    se me|nos olvido|olvidaron|paso|fue|pasaron ~4 <meds>|darle|darsela|darselo|dar|pastilla
    missed|forgot|forgotten|skipped ~2 two|2|three|3|both|last doses|dosis|<meds>
    sin ~ <meds>
    no ~2 podido|pude|pudimos ~ dar|darle|darsela|darselo ~3 <meds>
    no ~ <meds> ~ left|today|tonight|yet|hoy
    se acabo|acabaron|termino ~ <meds>
    out of ~ <meds>
    <meds> no|not_yet|nope $
    <meds> ~3 withheld|omitted|held|suspended|suspendido|suspendida|omitida|omitido -<neg>
    withheld|omitted|held|suspendimos ~2 <meds> -<neg>
    after|been missing|forgetting ~3 one|dose|<meds>
    missed|missing|forgot|forgotten|skipped ~3 lastnights|mornings|nights|tonights|evening|morning|one|noon
    no me|nos acorde|acordamos|acordo
    <neg> ~ acorde|acordamos|acordaron|acordé
    no|none|nothing|zero ~ more|meds|pills|tablets? ~ left -pain -<food>
    gone|went|going without ~~ <meds> -<food>
    = missed @dose @asked-dose
    not ~2 morning|evening|night|lunchtime|last|lunch ~ one|dose|tablet|pill
    never happened|went|got
    didnt happen|manage
    one|dose|pill|tablet|dosis ~ never|didnt ~ happened|happen|went|given
    ran|run out
    out of ~ it|them
    forgot|forgotten|missed|skipped|olvido|olvide|olvidamos|olvidaron
    not|havent|hasnt|didnt|no|aun|todavia ~ yet|given|had|gave|give|dado|di|darle|todavia
    not|didnt|nope|no|hes ~2 asleep|sleeping
    not yet -home
    se me|nos olvido|paso|fue|pasaron
    no|couldnt find|encuentro|encontre
    slept|dormi|dormimos through|quede|se
    ran|run clean? all? out of? it|them? $
    ^ ran|run|running all? out
    none|nothing left ~ since?
    se ~ acabaron|acabo|terminaron|termino|agotaron -todo -<food>
    farmacia|pharmacy|chemist|clinica|store ~~ no|out|closed|cerrada|cerrado|hasnt|wont
    no ~ tengo|tenemos|hay|quedan|queda ~ mas? <meds>
    asleep|slept|overslept|dozed|nodded ~~ before|without|and ~ giving|i|we|could|didnt|missed|forgot|giving
    gone without ~ lastnights|last|tonights|mornings|this|his|her?
    <neg> ~ got|get ~ round|around to
    ni|no ~ me|nos acorde|acordamos
    se ~ me|nos ~ hizo tarde|dormi|barrio|borro|fue|paso
    no ~ alcance|alcanzo|llegue|llegamos|pude ~ a? darsela|darselo|dar|tiempo
    me|nos ~ quede|quedamos|dormi dormido|dormida|dormidos ~~ no|olvide
    se ~ me|nos acabo|acabaron|termino|terminaron
    = refused
    spat|spits|spit ~ it|them ~ at|on|onto|out ~ my|the|me
    wise|onto|cottoned ~ to|on ~ the ~2 trick|cheese|ham|pill
    no|wont|wouldnt ~ abre|abrio|abrir|open ~2 hocico|boca|mouth
    <meds> ~3 still|on|under ~2 bowl|floor|bed|plate|carpet|rug|piso|plato|suelo
    found|find|encontre|halle ~3 <meds> ~4 floor|bed|bowl|rug|sofa|piso|cama|under|plato \
        -<vomit> -<ingest> -<medcontainer>
    <refuse> ~4 <meds>
    <spat> ~5 <meds>
    <meds> ~4 <spat>
    <neg> ~ take|swallow|open|tomar|tragar|tragarse|tomarse|tomo|trago|aceptar|acepto|quiso ~4 \
        <meds>|mouth|hocico|boca
    <neg> ~ quiere|quiso|want|wanted|wants ~4 <meds>
    <neg> ~2 quiere|quiso tomar|tragar|tomarse|tomarla|tomarlo|tragarsela -<drinkwater>
    couldnt|cant|couldn't|no get|pude|pudimos|puedo ~4 <meds> ~3 down|in|into|darle|dar
    couldnt|cant|impossible|struggled|no|unable ~ get|pude|pudimos|puedo|to darle|dar|give|
        get|him|her ~4 <meds>
    fought|fights|fighting|bit|clamps|clamped ~4 <meds>|mouth -<food>
    wont|wouldnt|will_not take ~ <meds>
    hides|hid|runs|ran ~3 when|from ~3 <meds>
    no se ~ deja|dejo ~3 dar|pastilla|medicina|medicar
    no ~ hay|hubo|habia|encuentro|existe|tengo ~ forma|manera|modo|como ~4 dar|darle|trague|tome|darsela|tomarla
    slipped ~4 <meds> ~3 out_of_his_mouth|out_of_her_mouth
    foams|foamed|foaming|drools|drooled ~4 <meds>
    found|find|encontre|encontramos|halle ~ pill|tablet|pastilla ~ behind|under|on|in|debajo|atras|detras|en|tirada|tirado ~3 sofa|couch|floor|bed|rug|cushion|piso|cama|sillon|suelo|mueble -<vomit>
    imposible|no_hubo_modo|no_hubo_manera|no_hubo_forma|no_hay_modo|no_hay_manera|no_hay_forma|impossible ~ de? ~ darsela|darselo|dar|darle|que_se|get|give|pill|medicate
    <meds> ~5 <refuse>
    <neg> ~ go|come|goes|went ~ near ~ anything|it|food|cheese|any? ~ with|that|if|containing ~2 <meds>
    <spat> ~~ <neg> ~2 take|swallow|tomar|toma|traga|tragar|tomarse|tragarse ~ it|them? -<food>
    <spat> ~~ wont|wouldnt|will_not take|swallow|have|hold -<food>
    <spat> ~ it|them|la|lo|las? ~ out? ~ twice|times|<times>|dos_veces|again|otra_vez ~~ <neg> ~2 quiere|quiso|want|wants|having -<food>
    = refused @dose @asked-dose
    found|find|encontre|halle ~ it|one|them|la|lo|las ~ behind|under|on|in|down|debajo|atras|detras|en ~3 <perch>|floor|rug|blanket|cushion|cushions|carpet|piso|cobija
    having none
    esconde|escondio|guarda|guardo ~3 cachete|cachetes|boca|encia|lengua
    <patient>|just wont|refuses|wouldnt $
    no_hubo|no_hay ~ forma|manera|modo|poder|quien
    turned|turns|lifted|sticks|stuck ~ his|her ~ nose ~ up|away
    me aranó|arano|araño|mordio|aruño|rasguño
    scratched|clawed|bit|mauled|shredded ~ me|us|my
    he|she|it ~ wasnt|isnt ~ fooled|daft|stupid|buying
    <neg> ~ having it|any
    spits|hides|hid|stashed ~2 cheek|mouth|cachete
    push*|spit*|empuja*|saca* ~3 out|fuera|con ~4 tongue|lengua
    <spat>
    <refuse>
    wont|wouldnt|will_not|didnt|doesnt take|swallow|have|eat|want ~ it?
    no ~ quiere|quiso|acepta|acepto|trago|tomo|deja|dejo
    no se ~2 deja|dejo|tomo|traga|trago
    couldnt|cant|no get|pude|pudimos ~ it|him|her|them|darsela|darselo|darle|down|in
    fought me|us
    eats|ate|comio around it|alrededor
    leaves|left|dejo the|la pill|tablet|pastilla
    drools|drooled|dribbles|dribbled|foams ~3 out|everywhere|all
    hides|hid|keeps|holds|tucks ~3 cheek|mouth|lip ~~ drops|spits|out|later
    only half ~~ rest
    clamps|clamped ~ mouth|jaw|shut -<food>
    bit me|us
    wont|wouldnt|doesnt|didnt ~ have ~ it|any|them|none
    ate|eats|eating|eaten|come|comio|licked ~ round|around|alrededor|all_around ~ it|the|de? -fine
    left|leaves|leaving|leave|dejo|deja|deja_solo ~ the|la|solo? pill|tablet|pastilla|capsule|capsula|meds ~ behind|there|in|ahi? -<neg>
    la|lo|las|los ~ tira|tiro|avienta|avento|bota|boto|saca|saco|empuja|rechaza -<neg>
    push*|saca|empuja|poke|pokes|poked|poking ~2 it|la|lo|out|con ~2 tongue|lengua
    not|isnt|wasnt|no ~ having ~ any|it|none|that
    couldnt|cant|no ~ get ~ near ~ mouth|him|her|his|hocico
    ni ~ con ~ <hid>|<food>|nada ~ la|lo|las|los? ~ quiso|quiere|agarra|acepta|pasa|traga
    turned|turns|turning|volteo|voltea|gira ~ his|her|la|su head|face|cabeza|cara ~ away?
    wont|wouldnt|didnt|doesnt|refused|refuses ~ to? ~ open
    cierra|aprieta|clamps|locks|shuts ~ la|el|los|his|her? ~ boca|hocico|mouth|jaw|jaws|dientes
    <neg> ~2 get|persuade|convince|make ~ him|her|them to? take|swallow|have ~ it|them|any|his|the
    no ~ se? ~ la|lo|las ~ traga|trague|toma|tome|come
    hides|hid|runs|ran|bolts|scarpers|disappears ~2 when|from|as|at ~3 <meds>
    = vomited_up
    <vomit> ~4 <meds> -post
    <meds> ~5 <vomit>
    brought|threw|threw_up|coughed ~3 <meds> ~ up|back
    <meds> ~~ came|come back? up|out
    <meds> ~~ <vomit>|regreso
    <vomit> ~~ <meds>
    devolvio|regreso ~3 <meds>
    found|see|saw|salio|venia|encontre ~2 <meds> ~3 vomit|puke|sick|vomito
    <meds> came|come|comes ~ back -<neg>
    = vomited_up @dose @asked-dose
    chucked|hoiked|sicked|coughed|spewed ~2 it|them|lot ~ up
    up it|they came|comes
    came|come|comes ~ straight|right|all? back up
    <vomit> ~2 it|them|la|lo|las
    la|lo|las|los ~ <vomit>
    came back up
    brought|threw|fetched ~2 it|them|lot ~ back? up
    <vomit> ~3 after|despues|luego|later
    la|lo|las|los ~ regreso|devolvio|echo|arrojo|guacareo $
    la|lo|las|los ~ regreso|devolvio|echo|arrojo|guacareo ~ toda|todo|entera|entero|para|pa|con|luego|despues|al|a|ya|y|enseguida|completa -se
    salio|estaba|venia|came|was|aparecio|iba ~ en|in|con|con_todo|out ~ el|la|his|her|the? <vomit>|vomito|sick|puke
    la|lo ~ ha ~ echado|vomitado|devuelto|regresado
    it|they|pill|back ~ was|came|were|came_right back up
    gave|given|took|had ~ it|them|his|her? ~~ then|and ~ he|she? <vomit> -<food>
    = doubled
    puse|di|dimos|dio|gave|given ~4 <number> ~~ eran|era|supposed|meant|should|tocaba|tocaban|debian ~3 <number>
    gave|give|given|dio|di ~ him|her|le? ~ the|la? ~ same|misma ~ tablet|pill|dose|one|meds|pastilla|dosis|medicine? ~ again|otra_vez|de_nuevo|twice
    gave|given|dio|di ~4 again|another|otra|otra_vez ~~ thinking|forgetting|forgot|creyendo|pensando|automatico|mistake|error -<spat> -<vomit>
    puse|di|dimos|dio|pusimos ~ las|los dos ~2 juntas|juntos|de_una|de_un_jalon|al_mismo_tiempo|a_la_vez
    di|dimos|dio|gave|given ~~ cinco|five|<minutes>|rato|later|luego|despues ~4 doy|di|dimos|gave|give ~3 otra|another|igualita|igual|again
    gave|given|dio|di ~ it|him|her|one|las|la? ~ too|also|as_well|tambien ~~ had|has|got|lleva|tiene|van|tomo ~ two|2|double|twice|dos|doble
    <number> ~ <meds> ~~ gave|di|dimos|dio|gived ~3 one_more|another|more|otra|una_mas
    two|2|dos|double ~ lots|goes|rounds|tandas|veces ~ of|de ~3 <meds>
    had|got|given ~ two|2|double lots|goes|rounds|doses|helpings -<food>
    me and ~2 <kin> ~ have|had? both ~ did|gave|done|given
    <kin> ~2 y yo|un_servidor ~~ dimos|dio|di|le
    <kin> ~3 dio|dieron|dado ~~ y yo -pastilla_mia
    yo|i ~3 di|gave ~~ y|and ~ luego|despues|then? ~ mi|my <kin> -<neg>
    <kin> ~2 fed|gave|given|dosed ~~ right_after|just_after|after|before|when ~ i|we|id|wed ~ had|already|just? ~ fed|gave|given|done|dosed
    <kin> ~2 had|has|already|hed|shed ~ already? done|given|given_it|fed ~~ double|two|twice|again|too|another
    no ~ nos ~ avisamos|avisaron|pusimos_de_acuerdo|comunicamos|dijimos
    gave|given|had|got|di|dimos|dio ~ him|her|it|le? ~ a|an|the|otra|una? ~ second|extra|segunda ~ one|dose|pill|tablet|dosis ~~ mistake|error|accident|realising|realizing|thinking|sin_querer|equivocacion
    overlapped|doubled_up|crossed_wires|crossed_over ~~ dose|<meds>|gave|given|it
    wires crossed
    le toco|tocaron ~ doble|dos
    confundi|confundimos|confused|muddled ~~ doble|double|two|dos|twice +<meds>|dosis|dose|doble
    yo ~ le|se_la? di|dimos ~~ esposa|esposo|marido|mama|hijo|hija|novio|novia|pareja|hermana ~ a|tambien|otra|le|igual +<clock>|tambien|otra|igual
    no ~ pusimos|pusieron|pusimos_de ~ acuerdo
    tonights|tonight|mornings ~~ tomorrows|tomorrow|evenings ~ together|both|at_once|mistake +<meds>|dose|had|together
    so did ~ my ~ wife|husband|partner|mum|mom|daughter|son
    i|we ~ gave ~~ so did|has
    tambien|igual le ~ dio|habia ~ mi <person>
    <twiceword> ~4 <meds>|dose|dosis
    two|double|2|doble|dos|extra|second|otra|another|segunda ~ dose|doses|dosis -<missword> -<askmark>
    <meds> ~4 twice|double|doble|dos_veces -<interval>
    gave|given|dio|di|dimos|dieron ~3 twice|double|doble -<interval>
    volvi|volvio|volvimos|volvieron a dar|darle|darsela|darselo
    ya ~4 dado ~~ yo|otra|le ~2 di|dio|volvi
    gave|given|got|dio|di|dimos|diste|dieron|gives ~3 <meds> ~~ gave|dio|di|dieron|given ~4 \
        another|otro|otra|again|too|also|tambien|second|segunda|de_nuevo
    di|dio|dimos|gave|given ~3 <meds> ~~ esposo|esposa|husband|wife|hijo|hija|mama|partner ~2 \
        dio|gave|did|again|tambien|too
    both|los_dos|ambos ~ gave|dimos|medicated|dosed|given ~3 <meds>|it|him|her|pastilla
    each|both ~2 us|of_us ~ gave|given|dosed
    each gave|dosed
    got|had|given ~4 <meds> ~~ again|another|also ~ from|by
    from|by me ~~ again|also|another ~2 from|by
    cada quien|uno ~2 dio|dimos
    gave|given|di|dio|dimos ~~ unaware|not_knowing|without_knowing|sin_saber|didnt_know|not_realising|not_realizing ~2 gave|dio|di|again|otra|otro|another?
    <kin> ~ also|tambien ~ gave|given|had|le|dio|habia|lo|la
    <kin> ~ already|ya ~ gave|given|had|dio ~3 too|also|tambien|as_well
    gave|given|dio|dieron|dimos ~ him|her|le? ~ it|them|all|las|los|la|lo|everything ~ all|todas|<meds>? ~2 again|otra_vez|de_nuevo|nuevamente -<asever> -<food>
    gave|given|dio|dieron ~5 <meds> ~ again|otra_vez|de_nuevo|nuevamente -<asever> -<neg> -<clock>
    gave|dio|gave_it|dieron ~3 again|otra_vez|de_nuevo|nuevamente ~3 mistake|error|accident|
        without|sin
    two ~ <meds> ~3 instead|by_mistake|at_once|together|mistake
    dos|2 ~ <meds> ~3 en|juntas|juntos|vez|lugar|error
    twice by|por mistake|accident|error
    repeti|repetimos|repitio|repetido ~3 dosis|pastilla|<meds>
    gave|got|had|has|given ~ two|2|both ~2 by|instead|accident|mistake
    le dimos dos
    doble|double dosis|dose|dosed|dosing|dosage|dosificamos
    extra <meds>
    gave|given|had|got|fed|di|dimos|dieron|dio ~ him|her? ~ an|one|una? extra|additional|de_mas ~ one|pill|dose|tablet|half|lot?
    gave|given|had|di|dimos ~ tomorrows|tonights|mornings|la_de_mañana ~~ as_well|too|also|by_mistake|by_accident|mistake|tambien|error
    se ~ la|lo|las dimos ~ los ~ dos|ambos|dos
    di|dimos|gave|given|dio ~~ <kin> ~2 otra|otro|another|tambien|igual|too|also|again|volvio|as_well
    dado|given|gave|dio|daba ~~ yo|i|we|nosotros ~3 di|dimos|gave|given ~ otra|otro|another|again|also|de_nuevo
    <kin> ~3 gave|dio|given|dado|dieron ~~ so did|tambien i|we|yo|nosotros?
    repeti|repetimos|repitio ~ la|le|por ~ dosis|pastilla|error
    los dos|ambos ~ se|le ~ la|lo|las? dimos
    = doubled !@asked-dose
    le di dos|2
    = doubled
    le di doble
    = doubled @dose @asked-dose
    one|1|una|uno ~ <meds>? too many
    one|1|una|uno ~ <meds>? de mas
    had|got|tomo|took ~3 twice|double|doble -<interval> -<neg>
    gave|dio|di|given|dado|had|dose|dosis|took ~3 twice|double|doubled|doble|dos_veces -<interval> -<missword>
    gave|dio|di|dimos|given ~ another|otra|otro
    gave|dio|di|dimos|given ~ again|otra_vez -<asever>
    also|tambien gave|given|dio|dado
    two|2|dos|both|double ~~ not|instead|rather ~2 <number>|half|una|uno|media -<three> -<clock>
    dos ~~ no|en_vez|en_lugar ~ de? ~ una|uno|media
    two|2|dos instead|by|en|por ~ of|mistake|accident|lugar|vez|error
    had|got|given ~ two|2|dos ~~ one ~ from|by ~ me|us|mum|dad
    dos_veces|<times> ~ sin querer
    = doubled @dose
    twice|double|doubled|doble|dos_veces -<interval> -<missword>
    = given !@asked-appetite
    se|ya la|lo|las|los comio
    = given @asked-dose
    ^ all|both|todas|todos|every ~ of|las|sus|his|her|the|one? <meds>|them|ellas $ -<neg>
    se las comio|trago|tomo ~ todas -<neg> -<medcontainer>
    <gave> ~2 all|both|todas -<neg> -<medcontainer> -<food> -<noneleft>
    con|with|in ~ su|his|her|some|tantito <food>|<hid> -<neg> -even -ni
    se la|lo|las|los ~ echo|zampo|bajo|chuto|mando -<neg>
    = missed @asked-dose
    not since
    went|gone|going without
    """,
    "idiom": """
    = void
    <painpill>
    dieron|dio|dan|dar|dado de alta
    para|pa|for|por ~ la|el|lo|the? hinchazon|inflamacion|dolor|fiebre|temperatura
    me|nos ~ quede|quedamos|habia_quedado dormido|dormida|dormidos
    me|nos dormi|dormimos
    he dormido
    double|doble check|checked|checking|sure|trouble|chaos|fun|the|figures|vida|turno|jornada
    """,
    "mood": """
    = phatic
    so did i|we|he|she|they|my
    """,
}

NEGATED = {
    "dose": {
        "given": "missed",
        "missed": "given",
        "refused": "given",
        "vomited_up": None,
        "doubled": None,
    },
}

"""Licking, chewing or scratching at the incision or the bandage."""

from __future__ import annotations

CLASSES = {
    "lick": """
        lapping lapped sucking suckling sucked tonguing lametea lametear lametón lamidota relame
        relamiendo relamerse chupetón lambe lambiendo lamber lambio lambida lambidas lambiendose
        lambetea lambeteo lame_y lenguazos lick licks licked licking lickety lame lamer lamio
        lamiendo lamido lamerse lamia lami lamiendose lamiendola lamiendolo lamida lamidas lamen
        lamerla lamerlo lamiéndose chupa chupo chupando chuparse chupandose chupetea lamérsela
        lickin lamerselo darse_lengua dandose_lengua slurping grooms grooming groomed acicala
        acicalando acicalarse slobbering slobbers slobbered lametazos lenguetea lengüetea
        lengüeteando lenguetazos licky
        """,
    "chew": """
        morderse mordisquearse mordisquear mordiéndole rascada rascones scrapes scraping nibbly
        munching munched munches chew chews chewed chewing chewin nibble nibbles nibbled nibbling
        gnaw gnaws gnawed gnawing mordisquea mordisqueo mordisqueando muerde mordio mordiendo
        morder mordiendose masca mascando biting bites bit bite worrying nips scratch scratches
        scratched scratching rasca rasco rascando rascarse rascandose rascado rascar pawing paws
        paw picking fussing bothering messing muerda mordido roe royendo itch itching itches
        itched yanking tugging plucking
        nip nipping nipped chomping chomps chomped gnashing
        """,
    "at_wound": """
        stitches wound incision staples sutures bandage it leg knee area site dressing cut scar
        line puntos herida grapas vendaje venda pata patita sutura operacion cirugia rodilla ahi
        cicatriz seam splint cast surgical_site surgery surgery_site lesion ella_misma op_site hip
        cadera paw zona puntadas
        """,
    "elsewhere": """
        other_leg other_paw other_foot other_hind good_leg front_paws front_paw bigotes labios
        trompa hocico lips chops nose hand hands face fingers mano cara otra_pata manos private
        privates bits_and belly_button bowl plate spoon plato
        """,
    "otherears": "ear ears neck chin oreja orejas cuello",
    "at_place": """
        stitches wound incision staples sutures bandage leg knee area site scab scabs costra
        dressing cut scar line puntos herida grapas vendaje venda pata patita sutura operacion
        cirugia rodilla ahi cicatriz seam splint cast surgical_site surgery surgery_site lesion
        ella_misma op_site hip cadera paw zona puntadas
        """,
}

RULES = {
    "licking": """
    = yes fixed
    no hay ~ manera|forma|modo ~4 deje|pare ~ de? <lick>
    cant|cannot|couldnt|impossible|hard ~4 stop|keep|get ~2 him|her|it ~2 from|off|stop|to|stopping? ~2 <lick>
    got|had|sneaked|snuck|stole|managed ~3 lick|licks -<food> -of
    giving|gave|gives|give ~3 <wound> ~3 wash|clean|lick|bath|going|polish|seeing
    no|wont|cant|doesnt|never|hasnt|isnt|wouldnt ~ deja|para|stop|stops|stopped|stopping|quit|dejado|parado ~ de? <lick> -<elsewhere>
    no ~ deja|dejo|dejaba en_paz ~3 <at_wound>
    = yes
    quiere|intenta|trata ~ de? <lick> -<food> -plato -cara -mano
    chuparse|lamerse|morderse|rascarse|mordisquearse ~3 <at_place>
    nose|mouth|teeth|hocico|trompa ~ in|on|at|en ~ his|her|the|la|su <at_place>
    sound|noise|ruido ~ of|de licking|chewing|lamido|lamerse
    been|gone|was|is|hes|shes|having_a_go ~ at ~ his|her|the|its <wound> -<neg>
    like|como ~4 lolly|lollipop|ice_cream|icecream|popsicle|paleta|paletita|helado|chupete ~3 <at_place>|them
    <at_place> ~ like|como ~3 lolly|lollipop|popsicle|paleta|helado|chupete
    va|fue|lanza|tira ~ sobre|directo|derechito|derecho|encima ~3 <wound>|puntos|herida
    tanto|puro|tan ~ <lick>
    tongue|lengua|mouth|teeth ~ is|its? never|always ~3 off|on|out|at
    goes|going|went|gone ~ to town ~ on ~2 <at_place>
    attack*|munch*|demolish*|destroy* ~2 <wound> -cone
    suck*|lap* ~ at|on ~2 <at_place>
    every|each|cada ~ time|vez|rato|chance ~~ <lick> -<food>
    sneaky|quick|good|little|crafty|cheeky|proper|big ~ lick|licks|chew|nibble|scratch -<food> -face -hand -toy -toys -bone -treat -ball -stick -juguete -hueso
    pulling|pulls|tugging|tugs|plucking|yanking|pawing|scratching|digging|worrying ~ at|on ~2 <at_wound> -<coneword> -door
    constantly|always|forever|keeps|still|nonstop|back ~ at ~2 <at_wound>
    at ~ his|her|the ~ <at_place> ~ with ~2 tongue|teeth|mouth|paw|foot
    quiere|trata|intenta|queriendo|tratando|wants|trying|tries|tried ~3 arrancar|arrancarse|quitar|quitarse|jalar|sacar|sacarse|morder|morderse|chew|pull|bite|rip|lick ~3 <at_place>|<lick>
    morderse|mordisquearse|rascarse|lamerse|chuparse ~2 <at_place>
    se la? pasa|vive|vivio|paso ~ <lick>
    <lick> y|and|e <lick>
    <lick> ~ <lick> ~ <lick>
    keeps|kept|always|constantly|forever|sigue ~2 going|having|getting|trying|back ~ for|at|to ~2 <at_wound>
    few|couple|one|two|some|good|quick lick|licks ~ in|of|at -<food>
    got|get|gets|getting|reach|reaches|reached ~ to? ~3 <at_wound> ~ with ~2 tongue|teeth|mouth
    rub|rubs|rubbing|rubbed|scooting|talla|tallando|tallo|restriega|restregando|frota|frotando ~3 <wound> ~4 carpet|sofa|floor|rug|wall|furniture|couch|alfombra|suelo|piso|pared|sillon|mueble|tapete
    quitar|quitarse|jalar|jalarse|arrancar|arrancarse|jala|jalando|estira ~3 puntos|puntadas|grapas|costura|<stitchword> ~3 con ~ boca|dientes|hocico|trompa
    obsesion*|obsessed|empenado|terco|necia|encanta|aferrado ~3 <lick> -<food> -<elsewhere>
    dale|duro|anda|esta|sigue|puro ~4 con ~ lengua -<food> -<breath>
    dale que? dale ~3 <lick>|lengua
    licking|licked|chewing ~ raw|himself|herself
    at ~ his|her|the ~ leg|wound|stitches|scar|incision|cut|knee ~ again|constantly|nonstop|all|like|slurp
    slurp|slurping|slurps
    pasa|pasando|paso|pasaba|dando|da ~ la? lengua|lenguetazos|lengüetazos -<food>
    bugging|messing|bothering|worrying|fussing|fiddling|picking|obsessed ~2 <at_place> -<food>
    <lick> ~4 <at_place>|himself|herself|there -<elsewhere> -<food>
    <at_wound> ~3 <lick> -<elsewhere>
    <chew> ~3 <at_place> -<coneword> -<meds>
    keeps|keep|kept|constantly|always|started|caught|sigue|anda|siempre|seguia ~3 <lick>
    caught|catch|cache|pesque|encontre ~3 <chew> ~3 <at_wound>
    se|le|la ~ <lick> -<food> -<elsewhere>
    scratch|scratches|scratching|scratched|rasca|rascando ~4 back|hind foot|leg|paw -<otherears>
    itchy|comezon|picazon ~~ <chew>|<lick>
    se muerde|mordio|rasca|rasco|mordisquea ~3 puntos|herida|venda|vendaje|pata|ahi|grapas
    <lick> ~3 constantly|nonstop|lot|mucho|todo|non_stop|like_mad|obsessively -<elsewhere>
    ^ <lick> $
    got|gets|getting ~ at ~ his|her|the <at_wound>
    lick|lamida|lengua ~ or|o two|dos
    tongue|lengua ~3 <at_wound>
    with|con ~2 teeth|dientes|mouth|hocico & <at_wound> -<bandageword>
    a|having go at ~2 <at_wound>
    go|going|went|gone at ~2 <at_wound>
    wont|doesnt|cant|couldnt|wouldnt|no ~ leave|let|stop|deja|dejar ~3 <at_wound> ~ alone|be|en_paz|paz|quieta|quietos
    cache|cacho|cachamos|caught|agarre|pesque|encontre|found ~2 <lick>
    se ~ lava|asea|lavando|limpiando|acicala ~3 <wound>
    = yes !@asked-appetite !@asked-dose
    <lick> ~2 it -<elsewhere> -<food> -up
    = yes @asked-incision @asked-bandage
    se ~ mordio|muerde|mordisqueo|mordisquea|rasco|rasca|rascando|mordiendo -lengua -lips
    = yes @cone @incision @bandage @licking
    <lick> -<food> -<elsewhere> -<coneword>
    got|gets|getting|been at it|them|stitches
    <chew> ~ it|them|at|la|los|ahi
    = no fixed
    no ~ le? interesa|interesan|importa|importan|llama|llaman ~3 <at_place>
    <neg> ~ been ~ at|near|bothering|touching ~2 <at_place>|them
    no se ~ anda|esta|ha|pone|la|lo|le|vive|estuvo ~2 <lick>
    no|ni ~ se? acerca|arrima|asoma|mete ~2 <wound>
    paying|pays|paid|takes|taking|giving ~ no attention|notice|heed ~3 <at_place>
    no se ~ ha|ha_andado? tocado|toca|tocaba ~3 <wound>|puntos
    stopped|quit|dejo|dejado|ya_no ~ de|se? <lick> -wont -cant -hasnt -doesnt -no -not
    ya no ~ <lick>
    <neg> ~3 rascado|mordido|rasca|muerde|chewed|scratched ~ ni|or|nor <lick>
    ni ~3 caso ~4 <wound>|cicatriz
    <neg> ~3 near ~5 tongue|teeth
    = no fixed @asked-incision @asked-bandage @asked-cone @licking
    <neg> ~2 touched|touching|touches|toca|tocado|near ~ it|la|lo $
    ni|no ~ se? la|lo toca|pela|lame|mira|voltea $ -<food>
    ni ~ la|lo pela|toca -<food>
    la|lo ~ deja|dejado en_paz|tranquila|quieta
    = no
    couldnt|could care less ~3 <at_place>
    leaving|leaves|left|leave ~3 <at_place> ~ well? alone|be
    no|zero ~ interest ~ in ~2 <at_place>|cone|wound|it
    no_interest in ~ the|his|her? <at_place>
    leaving|leaves|left|leave ~ it|them|stitches|wound|line|cut ~ be|alone
    left|leaves|leaving ~2 <at_wound>|alone alone
    leaves it alone
    ignoring|ignores|ignored ~3 <at_wound>
    <neg> ~ interested|bother|bothered|bothering|touching|touched|interest|pela|toca|tocado|
        hace_caso ~3 <at_place>
    not|isnt|hasnt|doesnt|no ~2 <lick>
    = no @asked-licking @asked-cone @asked-incision @asked-bandage
    <neg> ~ bothered|interested|fussed ~ with|by|about|in|at ~ it|them|the <at_place>?
    = no
    not|hasnt|isnt ~2 <chew> ~ at? <at_wound>
    = yes !@asked-appetite !@asked-dose
    <chew> at it|them -<food> -<coneword>
    = yes
    al rascarse|morderse|lamerse|mordisquearse|chuparse
    = yes @cone @licking
    get|gets|getting|got|reach|reaches|reached ~ at|to it|them|there
    = no fixed @licking
    la|los|las|el|the|his|her <at_wound>|stitches no|not $
    only|unico ~ licking|lamer|lamido|chewing ~ going|he|she|que
    = yes @asked-licking
    all|every|each|whenever ~ night|day|time|chance|minute -<neg>
    sometimes|once|twice|occasionally|couple|now_and_then|constantly|nonstop|whenever -<neg> -till -until -hasta -wait -sniffed -sniffs
    a_veces|ratito|poquito|tantito|seguido|constantemente|de_vez_en_cuando|dos_veces|una_vez -<neg> -till -until -hasta -wait -huele
    caught|saw|found|spotted ~ him|her ~ at|doing it
    lo|la cache|caché|pesque|pille|vi|agarre ~ en|haciendolo|con
    = no fixed @asked-licking
    <neg> ~2 once|tried|tries|bothered|bothers|interested|touched|touches|looked|looks|reach|reaches|get ~ at|to|near|it?
    <neg> ~3 alcanza|llega|puede|intenta|intentado|interesa|acerca|hecho|caso
    cone|cono|collar ~3 stops|stopping|keeps|blocks|deja|impide|tapa
    toy|juguete|bowl|plato|floor|piso|sofa|hand|mano|face|cara ~2 only|just|nomas|solo|nada_mas
    only|just|nomas|solo|puro ~3 toy|toys|juguete|bowl|plato|floor|piso|hand|mano|face|cara|me
    = yes @asked-licking
    afraid|guilty so|yes -<neg>
    wet|damp|soggy|slimy|slobbery ~2 fur|hair|bandage|leg|from|with
    mojado|mojada|babeado|babeada|ensalivada ~4 pelo|pelito|baba|saliva|venda|pata
    <yesword> ~~ whenever|when|if|anoche|cuando|while|night|overnight|mientras|rato|minute|bit -<neg>
    sneaks|sneaked|snuck|sneaking ~2 in|one|some|there
    = no fixed @asked-licking
    leaves|leaving|left ~ it|them ~ well? alone|be
    ignores|ignoring|forgotten|olvido|ignora ~ it|about|them|la|los|de?
    <neg> ~ the|a? slightest|least|single ~ interest|lick|bit?
    """,
}

NEGATED = {
    "licking": {
        "yes": "no",
        "no": "yes",
    },
}

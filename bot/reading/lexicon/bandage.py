"""The bandage or splint, and the toes below it."""

from __future__ import annotations

CLASSES = {
    "drykept": """
        stayed_dry stays_dry kept_dry keeps_dry still_dry bone_dry is_dry quedo_seca sigue_seca sigue_seco esta_seca esta_seco quedo_seco
        """,
    "wetword": """
        soppy sopping_wet rain_soaked muddy_wet empapadita empapadisima mojadisima humedecida
        sudada escurriendo estilando chorreada encharcando sogging orinada orinado meada meado
        remojada remojado encharcada encharcó salpicada salpico sprayed rained_on swamped sploshed
        wet soaked soaking damp drenched soggy sodden saturated moist sopping splashed mojado
        mojada mojo mojaron empapado empapada empapo humedo humeda mojadito humedecio
        soaked_through dunked puddle moja mojando soaking_wet waterlogged drooled encharcado orino
        chorreando squelching squelchy squelches sloshing squidgy chorrea escurre
        """,
    "slipword": """
        rucked ruckled scrunched crumpled baggy gappy slack floppy saggy unwound unwinding
        flapping adrift holgada holgado colgada colgado medio_suelta arrugada arrugado corrida
        bolsuda desprendida desprendido a_medias a_la_mitad despuesta desamarro desamarrado aguado
        aguada aguo cayendo saliendo bajando dropped drooped sagging sags sagged slumped slump
        slouched desacomodo desacomodado desarreglo descolgo desajusto desajustado saco aflojando
        deshilacho shuffled migrated ridden_up crept slipped slip slipping slid slides sliding
        fell fallen come_off came_off coming_off off loose moved down falling_off fallen_off
        slipping_down ridden shifted undone unravelled unraveled unraveling unwrapping unwrapped
        bunched twisted half_off hanging hangs rolled ripped torn tore shredded chewed removed
        gone shifted_down loosened unravelling pulled_off resbalo resbalado deslizo deslizado
        recorrio recorrido bajo bajado suelto suelta solto flojo floja aflojo cayo caido caida
        zafo movio corrio corrido arranco quito quitado quita deshizo desbarato chueca rompio rodo
        desenrollo desenrollado despego despegado enrollo safo escurrio escurrido trailing
        unpicked rotated spun voltea volteo volteado giro girado concertinaed bunched_up desato
        desatado bufanda
        """,
    "legit_ok": """
        fine good dry clean intact snug secure warm normal bien seca limpia firme tight apretada
        """,
    "spill": "agua water lluvia rain cafe coffee jugo dew soaked empapo",
    "byvet": """
        took_off_at removed_at hospital surgeon as_planned quitaron sacaron retiraron planned
        the_vet at_the_vet our_vet vets vet_took vet_removed vet_said clinic nurse appointment
        scheduled checkup check_up you_said veterinario veterinaria clinica cita enfermera doctora
        tomorrow manana monday friday hooray due finally
        """,
    "tightword": """
        indenting choking pinched gripping vice clamped marca_mucho comprime comprimiendo
        tiesa_apretada incrustada incrustado justa justo rubbing ceñida strangled pinching
        ahorcando asfixiando estrangulando ajustadisima rozando squeezing tight tighter apretado
        apretada aprieta apretando muy_justo constricting cutting_in digging ajustado ajustada
        tirante strangling apretadisimo
        """,
    "toeword": """
        toe toes toesies dedo dedos deditos toenails paw foot dedito pie patita pata feet
        """,
    "coldswollen": """
        like_ice como_hielo moraditos moraditas azulitos heladitos heladitas friitos
        cold icy freezing cool chilly chilled swollen blue purple puffy fat numb spread splayed sausage sausages
        discoloured discolored white grey gray frio fria frios frias helados helada hinchados
        hinchadas hinchado hinchada morados moradas azules azul inflamados inflamado hinchaditos
        morado helado
        congelados congeladas congelado congelada azulosos azulosas azuloso azulados azuladas amoratados amoratadas violaceos violetas palidos palidas blancos blancas grises entumidos entumecidos frozen bluish blueish bluey greyish grayish icicles ice_cubes ice_blocks stone_cold cubo_de_hielo cubos_de_hielo hielitos como_cubo como_cubos bloque_de_hielo
        """,
    "dressed": "",
    "coldtoe": """
        moraditos moraditas azulitos azulitas heladitos heladitas friitos friitas
        like_ice like_blocks_of_ice like_ice_cubes como_hielo de_hielo como_paleta
        cold colder icy freezing ice cool chilly chilled blue bluish purple white grey gray numb frio fria frios frias
        friecitos helado helada helados heladas morado morada morados moradas azul azules
        azulados
        congelados congeladas congelado congelada azulosos azulosas azuloso azuladas amoratados amoratadas violaceos violetas palidos palidas blancos blancas grises entumidos entumecidos frozen blueish bluey greyish grayish icicles ice_cubes ice_blocks stone_cold cubo_de_hielo cubos_de_hielo hielitos como_cubo como_cubos bloque_de_hielo
        """,
}

RULES = {
    "bandage": """
    = fine agent
    two|2 ~ fingers -<wound> -<openword> -<neg>
    get|fit|slide|fits|slip|cabe|caben|entran|meter ~3 two|2|dos|couple ~2 fingers|dedos -<neg> -<wound>
    = fine
    <bandageword> ~3 nice|bien|good ~~ snug|dry|firm|firme|seca
    <bandageword> ~4 where|donde|como ~4 be|left|was|put|dejaron|pusieron|deja
    <bandageword> ~3 intacta|intacto|budged|igualita|igualito -<wetword>
    caben|cabe|entran|entra|fit|fits ~ los? dos|two|2 dedos|fingers
    venda|vendaje|bandage|dressing|ferula|cast|splint ~ seca|seco|dry
    toes|dedos|deditos ~4 calientitos|tibios|rosaditos|warm|pink
    <bandageword> ~5 <good>|dry|clean|intact|place|secure|snug|seco|seca|limpio|limpia|lugar|
        sitio|sitting|neat|puesto|puesta|firme|bien_puesto|sequita|sequito
    <good>|dry|clean|seco|limpio ~2 <bandageword>
    toes|dedos|deditos|toe ~3 warm|pink|normal|fine|good|tibios|calientitos|rosaditos|rosas|
        calientes|ok|bien -<bandageword>
    <bandageword> ~4 still_on|in_place|staying|stays|on_properly -<wetword>
    = fine fixed
    toes|dedos|deditos|toe ~4 <neg> ~ puffy|swollen|cold|hinchados|frios|swelling|fat
    = fine @asked-bandage
    clean|dry|limpia|seca ~ and|y? ~ clean|dry|limpia|seca|intact -<wound>
    hasnt|not|isnt|no ~2 budged|shifted|moved|slipped|loose
    no se|lo|la? ~ ha movido|corrido|bajado|aflojado
    ^ exactly|just|still|right ~ where|how|as ~3 left|was|put|should|did
    igual|igualita|igualito|tal ~ como|cual ~3 dejaron|pusieron|dejo|estaba $
    tal cual
    ni|not|no mojada|mojado|wet|floja|suelta|loose ni|not|or|nor|no ~ mojada|floja|suelta|slipped|loose|smelly|wet|huele
    intacta|intacto|en_su_lugar|ajustadita
    = fine @asked-bandage fixed
    ^ not|no|isnt wet|mojada|slipped|smelly|loose|floja
    = fine @bandage
    ^ ~ dry|clean|intact|snug|seca|seco|limpia|limpio|firme|sequito|sequita -<neg>
    ^ <good> -<food> -<ingest>
    looks|look|looking|se_ve|lo_veo|la_veo|smells|huele ~ <good> -<neg>
    todo|all|everything ~2 <good>
    in_place|en_su_lugar|en_su_sitio|still_on|bien_puesto|bien_puesta
    hasnt|not ~ moved|slipped|shifted
    no se|lo? ha? movido|movio|mueve|corrido
    = wet
    <bandageword> ~3 hecha|hecho ~ una? sopa
    <bandageword> ~2 took|had|having ~ a bath|swim|dip|soak
    <bandageword> ~3 gone|got|went|puso ~2 <wetword>
    metio|meti|mete ~3 <bandageword> ~3 cubeta|balde|tina|alberca|pileta|lavadero|charco|fuente|inodoro|excusado|tinaco|plato
    paddled|waded|swam|stood|puddle|stream|pond|snow|nieve|dew|grass|sprinkler|sprinklers|shower|hose|sea ~~ <bandageword> ~ on|wet|soaked|drenched|mojada? -dry -<good>
    cayo|cayeron|regue|rego|tiro|echo|derramo|tipped|spilled|spilt ~2 agua|water|liquido|leche|milk ~4 <bandageword>
    meo|orino|peed|weed|meado|orinado ~ en|on|all|over? ~2 <bandageword>
    <bandageword> ~3 orinada|orinado|meada|meado
    <bandageword> ~4 in|into|al|en|a ~3 water|agua|puddle|charco|bath|river|sea|pond|toilet|sink|bowl|lago|rio|alberca|tina -dry -clean -<good>
    stepped|stood|walked|metio|piso|pisado|sat|splashed|dipped|dunked|paddled ~5 water|agua|puddle|charco|bowl|bath|pond|sea|lodo|mud ~~ <bandageword> -dry -seca
    metio|meti|dipped|dunked|stuck|put ~4 <bandageword> ~4 water|agua|puddle|charco|bowl|bath
    spilt|spilled|tipped|knocked|tiro|cayo|regue|rego|derramo|threw|poured|splashed ~4 water|agua|cafe|coffee|tea|drink|juice|jugo|refresco|milk|leche|squash|beer|cerveza|soup|sopa ~4 on|over|all|encima|en|sobre ~3 <bandageword>
    hizo|hace|hicieron|did|done ~ pipi|pis|chis|wee|pee|popo|caca ~3 en|encima|sobre|on|over ~2 <bandageword>
    wringing|sopping|soaking|dripping|absolutely|right wet|through +<bandageword>
    rain|rained|lluvia|llovio ~~ <bandageword> ~3 wet|mojo|mojada|mojado|damp
    <bandageword> & <wetword>
    moja|mojo|mojado|empapo|mojaron ~3 <bandageword>
    got|gets|getting ~4 <bandageword> ~3 wet|soaked|damp
    <bandageword> ~~ soaking wet
    <wetword> ~~ so ~3 <bandageword>
    peed|pooped|pee|wee|orino|meo|weed ~3 on|en|encima|over ~3 <bandageword>
    <bandageword> & meado|orinado|pee|peed|urine|orina
    = wet @bandage
    <wetword>
    = slipped
    <bandageword> ~3 apart|abrio|abierto|abierta -<wound> -<byvet> -toes -dedos
    <bandageword> ~2 did|done|doing ~ runner
    <bandageword> ~2 parted|gone ~ company|walkabout|awol
    <bandageword> ~2 amanecio|aparecio|estaba|is|was|lying ~ en|on|in|under ~2 piso|suelo|cama|floor|bed|ground|basket|crate|patio
    <bandageword> ~5 de|como|like|a ~2 calcetin|calceta|calceton|pulsera|bufanda|legwarmer|leg_warmer|sock|anklet|scarf|bracelet
    no|without|lost|missing ~ his|her|the|any? <bandageword> ~ on|left|anymore|at_all
    padding|cotton|stuffing|lining|relleno|algodon|guata ~3 coming|out|showing|hanging|saliendo|sale +<bandageword>
    <bandageword> ~4 hecho|hecha|hizo ~ mierda|polvo|bolsa|trizas|pedazos|garras|anicos|jirones|tiras|pelota|pomada
    hizo ~ mierda|bolsa|trizas|pedazos|garras|anicos|jirones|tiras ~3 <bandageword>
    <bandageword> ~3 worked|working|wriggled ~~ loose|off|down|free -<byvet>
    <bandageword> ~6 round|around|over|por|en ~ his|her|its|the|el|los|su? foot|ankle|toes|pie|tobillo|dedos -<legit_ok> -<wetword> -<tightword> -<coldswollen> -<swell> -<byvet>
    found|encontre|halle|hallamos|amanecio|woke ~4 <bandageword> ~3 on|in|under|tirada|tirado|botada|floor|bed|suelo|piso|cama -<toeword> -<byvet>
    wriggled|wiggled|slipped|pulled|got|worked|squirmed ~ out of ~2 <bandageword> -<byvet>
    destroyed|destroys|wrecked|trashed|shredded|mangled|despedazo|destrozo|desbarato|deshizo|rompio|trozo ~2 <bandageword> -<byvet>
    hizo ~ trizas|pedazos|garras|jirones ~2 <bandageword> -<byvet>
    <bandageword> ~3 wont|doesnt|no ~ stay|queda|aguanta|sostiene ~ on|up? -<byvet>
    <bandageword> ~5 opening|unravel*|fraying|peeling|lifting|desbarat*|desenvol*|deshac*|saliendo|abriendo|zafando|cayendo|bajando|aflojando -<byvet>
    desenvolvio|desenvuelve|desenrollo ~3 <bandageword> -<byvet>
    tape|cinta|esparadrapo|micropore ~4 come|came|off|peeling|lifting|despego|solto|undone
    trae|tiene|lleva|has|got ~2 <bandageword> ~ en|round|around|at|down|on ~ el|his|her|the? tobillo|pie|ankle -<byvet>
    sin <bandageword> -<byvet>
    sin ~1 <bandageword> -<byvet> -problema -problemas -novedad -broncas
    <bandageword> ~2 va|anda|esta ~ por|en ~ el tobillo|pie|suelo|piso -<byvet>
    <bandageword> ~3 sticking|poking|hanging|coming ~ out|off -<byvet>
    se ~ saco|quito|arranco|jalo ~2 <bandageword> -<byvet>
    <bandageword> se ~ le? ~ salio|sale -<bleedword> -<seepword> -<smellword> -<byvet>
    salio ~2 <bandageword> -<spill> -<bleedword> -<seepword> -<byvet>
    ya no ~2 trae|tiene|lleva ~2 <bandageword> -<byvet>
    <bandageword> ~~ trailing|unpicked|dragging|arrastrando|colgando -<byvet>
    unpicked|undid|unwound|desato|desenredo ~3 <bandageword> -<byvet>
    <bandageword> ~~ shreds|bits|tatters|pieces|trizas|pedazos|tiras|ribbons|hilachos -<byvet>
    <neg> ~2 tiene|trae|has|have|wearing|got ~2 <bandageword> -<byvet>
    <bandageword> ~~ arranco|quito|zafo|destrozo -<byvet>
    <bandageword> & <slipword> -<byvet> -<spill>
    <slipword> ~4 <bandageword> -<byvet> -<spill>
    <bandageword> ~~ cayo|caido|fell|slipped|came off? -<spill> -<byvet>
    took|pulled|chewed|chews|ripped|tore|kicked|shook|pawed|rubbed|scratched|flicked|tugged|wiggled|worked|got|gets ~4 <bandageword> ~ off|apart|completely|down -<byvet>
    ripped|tore|shredded|arranco|quito ~4 <bandageword> -<byvet>
    chewing|pulling|tearing ~4 <bandageword> ~ off|apart|through|to_bits -<byvet>
    lost|perdio ~3 <bandageword> -<byvet>
    <bandageword> ~5 ankle|foot|down|round|abajo|around_his_foot -<legit_ok> -<byvet>
    = slipped @asked-bandage
    took|takes|tore|ripped|pulled|got|had|chewed|kicked ~ it ~ off|apart|to
    bit|little|quite|rather|un_poco|medio|algo ~ loose|floja|flojo|suelta|aguada|aguado
    slid|sliding|slides|slipping|falling|coming|riding|working ~ down|off|loose|undone
    ya no la|lo? trae|tiene
    ^ gone|missing|aguada|desbaratada
    se ~ le? esta|anda|va ~ saliendo|bajando|cayendo|zafando|aflojando|deshaciendo
    se le aflojo|solto|bajo|corrio|zafo|desbarato|deshizo
    ^ slipped|slipping|loose|undone|unravelled|unravelling|unwrapped|chewed|flojo|floja|suelto|
        suelta|chueco|chueca|zafado|recorrido|corrido|roto|rota|torn|shredded
    ^ its|it|se|lo|la ~2 slipped|slipping|loose|undone|off|down|moved|bunched|twisted|unravelling|
        zafo|corrio|recorrio|bajo|movio|aflojo|quito|arranco|solto|cayo|deshizo|mordio|rompio
    chewed|chewing|pulled|tore|ripped|mordio|arranco|masco ~2 it|off|lo|la
    = odour
    <smellword> ~2 coming|comes|wafting ~ off ~2 <bandageword>
    <bandageword> & <smellword>
    <smellword> ~4 <bandageword>
    = odour @bandage
    <smellword> -<good>
    = odour @asked-bandage
    <smellword> ~3 bad|foul|rotten|awful|horrible|feo|mal|podrido|off|funky|nasty|raro|weird|funny
    = tight agent
    <neg> ~3 cabe|caben|fit|get|entra|entran|meter|slide|squeeze|slip ~4 finger|fingers|dedo|dedos|pinky|pinkie
    cant|no|not|barely|hardly ~3 finger|fingers|dedo ~3 under|in|inside|debajo ~ <bandageword>|it?
    = tight
    toes|dedos|deditos ~3 wee|little|tiny ~ sausages|balloons|pillows
    toes|dedos|deditos ~3 salchichitas|globitos|choricitos
    toes|dedos|deditos ~3 como|like|parecen ~2 <sizeword>|globitos|globos|balloons|bolitas
    dent|dents|indent|indents|marks|groove|ridge|marca|marcas ~4 <bandageword> -wet
    toes|dedos|deditos ~3 puffing|puff|swelling|bulging|bulge|ballooning|inflating ~ up|out? -<neg>
    toes|dedos|deditos ~3 como|like|parecen ~2 chorizos|morcillas|longanizas|salchichas|sausages|hot_dogs|tamales
    <swell> ~3 pata|patita|pie|piecito|foot|paw|mano|manita ~ debajo|abajo|below|under|por_debajo ~3 <bandageword>
    <swell> ~3 pata|patita|pie|foot|paw ~ por ~ debajo|abajo
    toes|dedos|deditos ~3 ballooned|balloon|balloons|twice|double|blown|huge|enormes|ball|size|giant|turning|gone ~ up|purple|blue|morado?
    <bandageword> ~4 rubbing|cutting|digging|biting ~ and|y? ~ cutting|digging|in
    toes|dedos|deditos ~~ gordos|gordo|gorditos|frios|helados|hinchados|morados|icy|puffed|puffy|cold|swollen +<bandageword> -<neg>
    toes|dedos|deditos|toe ~4 gorditos|gordito|salchichas|salchicha|sausages|ice|hielo|icicles|paleta|paletas -<neg> -<walkword>
    toes|dedos|deditos ~~ and|y|e|plus <coldswollen>|<swell> -<neg>
    foot|paw|pata|patita|pie ~3 <coldswollen>|<swell>|ballooned|huge|massive|twice ~~ below|under|beneath|debajo|abajo|underneath ~3 <bandageword> -<neg>
    below|under|beneath|debajo|abajo|underneath ~3 <bandageword> ~3 <coldswollen>|<swell>|ballooned|huge -<neg>
    cutting|cuts|cortando|corta|cut ~3 circulation|circulacion|blood_supply
    <bandageword> ~4 digging|biting|pinching|squeezing|strangling|encajando|lastimando|marcando ~ in|into?
    <toeword> ~3 gordos|gordo|fat|spread|separados|splayed|abiertos ~4 abajo|debajo|below|under|venda|vendaje|bandage|splint|ferula
    toes|dedos|deditos ~2 gordos|fat|spread|separados|splayed ~ and|y ~ fat|spread|separados|gordos
    toes|dedos|deditos ~ fat|gordos|spread|splayed -<neg>
    <toeword> ~4 below|under|abajo|debajo|beneath ~2 <bandageword> ~~ twice|double|size|doble|fat|huge|ballooned
    <bandageword> ~4 <tightword>
    <tightword> ~4 <bandageword>
    <toeword> ~6 <coldswollen>|<swell> +<dressed> -<neg>
    <coldswollen> ~2 <toeword> +<dressed> -<neg>
    toes|dedos|deditos|toe|dedo|toesies|toenails ~4 <coldswollen> -<neg>
    toes|dedos|deditos|foot|paw|pie|pata|patita ~6 <swell>|<coldswollen> +<bandageword> -<neg>
    <swell> ~4 toes|dedos|deditos|foot|paw|pie +<bandageword> -<neg>
    toes|dedos|deditos ~4 <swell> -<neg>
    cold|swollen|blue|purple|puffy|fat|icy|hinchados|frios|helados|morados|freezing ~2 toes|
        dedos|deditos
    foot|paw|pie|pata|patita ~4 <coldswollen> ~4 <bandageword>|below|under|abajo|debajo -hasta -down
    <bandageword> ~~ <toeword> ~3 <coldswollen>
    <toeword>|pata|patita ~4 <bandageword> ~3 <coldswollen>
    = tight cold fixed
    <neg> ~ feeling|feel|feels|sensation|sensibilidad|siente|sentir ~6 <toeword> +<dressed>
    <toeword> ~3 <neg> ~2 feeling|feel|sensation|sensibilidad|siente|sienten +<dressed>
    <toeword> ~2 numb|dormidos|entumidos|dormida|insensibles +<dressed>
    = tight @bandage
    <tightword>
    cutting|digging in|into
    = tight cold fixed
    toco|toque|aprieto|apriete|pellizco|pellizque|pico|pique|pincho|pinche ~2 dedos|deditos|dedo ~~ no|ni ~ los|las|lo|la|le? siente|reacciona|mueve|quita|retira|responde|jala|hace
    dedos|deditos ~~ no|ni ~ los|las|lo? siente|siento|retira|quita|reacciona|responde|reaccionan
    pinch|pinched|squeeze|squeezed|touch|touched|press|pressed|poke|poked|prick|tickle ~3 toe|toes ~~ <neg> ~2 feel|feels|react|reacts|reaction|pull|pulls|respond|responds|response|flinch|flinches|move|moves
    toes ~~ <neg> ~3 flinch|flinches|react|reacts|withdraw|pull_back|pull_away|respond|responds|feel|feeling
    = wet
    orino|meo|se_orino|se_meo|hizo|hace ~ encima|arriba|sobre|en|pipi ~ del|de|la|el|su|en? <bandageword>
    <bandageword> ~4 yellow ~ from ~ pee|wee|urine
    = slipped
    pulled|ripped|tore|chewed|yanked|got|had|bitten|torn ~ the|it whole|entire ~ lot|thing ~ off|down -<coneword> -<stitchword>
    se ~ arranco|quito|saco ~ todo|toda ~ con|a ~ los? dientes|mordidas|hocico|boca
    = slipped @bandage
    tore|ripped|pulled|chewed|yanked|kicked ~ it|lot off|apart
    = fine fixed
    <bandageword> ~3 stayed|stays|kept|keeps|still|bone|quedo|sigue dry|seca|seco
    = fine
    warm|pink|rosy ~ pink? toes -<neg>
    calientitos|tibios|rosaditos|calientes|tibiecitos ~ los|sus? dedos|deditos -<neg>
    = fine @asked-bandage fixed
    ^ its|it|no not|no|isnt|nada too|muy? tight|apretada|apretado|ajustada $
    can|puedo ~ still? wiggle|get|fit|slide|slip|meter|pasar ~2 finger|fingers|dedo|dedos ~ in|under|inside|debajo|por
    = wet @asked-bandage
    stepped|stood|walked|went|sat|fell|jumped|waded|paddled|piso|metio|cayo ~3 in|into|through|en|al|un ~2 puddle|charco|bath|pond|river|stream|mud|lodo|rain|snow|dew|bowl|alberca|tina|rio -dry -seca
    drooled|peed|weed|pissed|rained|spilled|spilt|orino|meo|derramo|tiro ~4 on|over|encima|it|sobre -dry -seca
    = fine @asked-bandage
    still ~2 on|there|up|in_place -<slipword> -<wetword>
    sigue|queda ~2 puesta|puesto|fija|fijo|ahi -<neg>
    """,
}

NEGATED = {
    "bandage": {
        "fine": None,
        "wet": None,
        "slipped": None,
        "odour": None,
        "tight": None,
    },
}

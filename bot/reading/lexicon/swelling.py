"""Swelling and bruising."""

from __future__ import annotations

CLASSES = {
    "fruitcolour": """
        berenjena aubergine eggplant beetroot betabel remolacha
        """,
    "darkest": """
        moradisimo moradisima moradisimos moradisimas negrisimo negrisima negrisimos negrisimas moradote moradota
        """,
    "spotlike": """
        spot spots dot dots mark marks patch patches blotch blotches smudge smudges thumbprint fingerprint mancha manchas manchita manchitas puntito puntitos pinta pintas
        """,
    "scared": "throat ran into dog",
    "swell": """
        hincharon hinchan inflamaron inflaman hinche enlarged engorged engrosado engrosada
        abultamiento tumefaccion ensanchado ensanchada inchadita inchadito hinchaita swolled
        swollend hinchao inflamaíta hinchás abombado abombada abotagada bloated_leg edematizado
        tumefacta swoll swelling swellings swollen swell swells swelled swole swolen puffy
        puffiness puffed puff oedema edema oedematous edematous seroma fluid_pocket
        pocket_of_fluid lump_of_fluid effusion tumefaction swollen_up distended_leg hinchado
        hinchada hinchazon hincho hincha hinchadito hinchadita hinchando hinchó hinchados
        hinchadas inflamado inflamada inflamo inflama inflamacion inflamadito inflamadita
        inflamando inflamados bolsita_de_liquido bola_de_agua bolsa_de_liquido abultado abultada
        boludo abotagado tumefacto bulge bulging inchado inchada inchazon chipote hinchar
        hincharse inflamar inflamarse swellin hinchaito inflamao
        """,
    "bruiseword": """
        cardenales moraduras moradura magulladura magullado magullada golpeado contusión
        moretoneado moretoneada moretonada moraton moratones moretonote bruise bruises bruised
        bruising ecchymosis ecchymoses contusion haematoma hematoma black_and_blue moreton
        moretones moreteado moreteada amoratado amoratada hematomas cardenal moretoncito
        moretoncitos equimosis negro_y_azul shiner moraetes morete moretes cardenalito moretonsito
        moretonsote moretonazo moretonzote
        """,
    "bruisecolour": """
        purply moretoncitos negruzco negruzca azulado azulada azulosa indigo maroon livida lívido
        purple violet morado morada morados moradas moradito moradita violaceo violeta purplish
        bluish blue black greenish plum
        moradilla purpley purplely negrito morenado
        """,
    "bruiseplace": """
        leg thigh skin groin tummy belly underside knee hock flank armpit inner area around
        surgery wound incision chest foot shin pata patita pierna muslo ingle panza piel rodilla
        zona herida alrededor shaved pecho
        """,
    "sizeword": """
        bote barco tambor poste bolo morcilla remolacha ballon sandia watermelon mandarina
        duraznos kiwi nuez_grande plato cantaloupe onion potato beach_ball bowling puño puno fists
        cantalupo coquito guayaba chirimoya golf_ball tennis_ball grapefruit orange balloon
        baseball softball melon fist egg lemon apple pelota globo toronja naranja limon mandarin
        tangerine plum peach football huevo manzana durazno nectarine papa doorknob cricket_ball
        ping_pong_ball snooker_ball rugby_ball bowling_ball tree_trunk elephant pear aguacate
        mango satsuma clementine turnip coconut coco elefante tronco papaya jitomate tomate
        bolillo pambazo tamal chayote globito pelotota boxing_glove salvavidas flotador llanta
        tyre tire bagel
        """,
    "notswell": """
        pride fur tail hair cheeks orgullo pelo pecho belly tummy stomach abdomen panza barriga
        estomago vientre gums balls mattress
        swell_time swell_day swell_job swell_party swell_guy swell_boy swell_weekend swell_night
        """,
    "lumpword": """
        mound hump nodule egg_shaped protuberance protuberancia joroba lumpiness bultico bolitas
        burbuja vejiga nodulo nódulo hernia bultazo fluid_filled bolón pelotica quiste cyst
        knobble lump lumps bump bumps knot bulto bultito bola bolita bolota chipote chichon
        chichoncito bubble pouch blister ampolla lumpy tumorcito pelotita pelota_de_agua
        """,
    "sized": """
        chorizos morcilla morcillas longaniza longanizas poste postes jamon jamones salchicha
        salchichas sausage sausages balloon globo tamal tronco camote chorizo bolillo ham gammon
        marrow
        """,
    "wholly": """
        completely totally entirely fully altogether completamente totalmente por_completo
        all_the_way disappeared vanished
        """,
    "verymuch": """
        something_chronic something_terrible something_rotten something_fierce big_time bigtime
        summat_awful like_anything no_end exageradamente exagerado brutal brutalmente ridiculous
        impresionante impresionantemente terriblemente canon un_chingo un_chingos bestia horrores
        resto cualquier_cantidad awful_lot something_awful recontra requete requeteque retequete
        un_chorro un_resto machin caleta un_monton un_chorrote kilos to_hell cantidad un_vergo
        harto_harto arto
        """,
    "seepword2": "drink drinks drank bowl bebe toma clear coming sale leaking",
    "patientfat": "esta_gordo esta_gorda",
    "notvery": "not no isnt nothing wasnt arent",
    "nearly": "way_out on_its_way going coming nearly almost casi mostly",
}

RULES = {
    "swelling": """
    = mild
    fluid|liquid|liquido|agua ~3 in|on|round|around|acumulado|acumulada|juntado|junto|alrededor|en ~3 <joint>|joint -<seepword2>
    <joint> ~ is|looks|bit? up ~ a? bit|little|touch
    <lumpword> ~~ <wound>|<joint> ~ small|chiquito|chiquita|pequeno|pequena
    small|little|tiny|chiquito|pequeno ~ <sizeword> ~ shaped|sized ~ <lumpword>
    tobillo|rodilla|pata|pierna|pie|codo ~4 gordo|gorda|gordito|gordita|ancha|ancho|gruesa|grueso -<patientfat>
    fat|thick|chunky|puffy|gordito|gordita ~ ankle|hock|knee|foot|tobillo
    squishy|soft|squidgy|jelly|blandita|blando|aguadita|aguado ~ <lumpword>|spot|area|bulge
    bag|bolsa|pocket|bolsita|sac|pouch|bubble ~ of|de|con ~ fluid|agua|liquid|liquido
    <lumpword> ~ <wound>|cicatriz
    <lumpword> ~~ <joint>|<wound>|ankle|hock -<notswell>
    <lumpword> ~~ come|came|appeared|popped|salio|aparecio|salido ~ up? -<notswell> -<scared>
    <swell> -<notswell>
    <slight> ~3 <swell> -<notswell>
    <swell> ~3 <slight> -<notswell>
    <lumpword> ~4 <joint>|<wound>|ankle|hock -<notswell>
    <joint>|<wound> ~4 <lumpword>
    <joint>|leg|pata|patita|foot|ankle ~3 fat|fatter|thick|thicker|bigger|chubby|plump|podgy|tubby|chunkier|gordita|gorda|
        grande|chunky|round|gruesa ~ than?
    = mild fixed
    not|isnt|arent|no ~ that|too|very|muy ~ <swell> -<notswell>
    = mild trend:better fixed
    not|isnt|arent|no|ya_no|nowhere ~ as|tan|nearly|near ~ as? <swell> -<notswell>
    = mild trend:worse fixed
    <swell> ~4 gets|getting|got|growing|keeps|va|anda ~ bigger|larger|fatter|puffier|creciendo
    <swell> ~2 has|have|is|its|have? ~ gone|went|shot|going|crept up -down
    bigger|fatter|thicker|mas_gorda|mas_grande ~2 than|que ~2 yesterday|before|ayer|antes|this|monday|tuesday|wednesday|anoche +<joint>
    wasnt|werent|not|estaba ~ <swell> ~2 yesterday|before|ayer|antes|earlier|morning ~~ is|now|hoy|ya|ahora -<notswell>
    ayer|antes|anoche|before|yesterday|lunes|martes|monday|tuesday ~3 nada|no|nothing|flat|normal|fine|bien ~~ <swell>|<lumpword> -<notswell>
    = mild trend:worse
    creciendo|crecio|crece|growing|grew ~3 <lumpword> -<notswell>
    <swell> ~3 subiendo|sube|subio|avanza|avanzando|extendiendo|climbing|rising|creeping -<notswell>
    going|getting|gone ~ up not ~ down +<swell>
    <swell> ~3 otra_vez|de_nuevo|de_repente|suddenly|overnight|de_golpe|again -<neg>
    otra vez <swell>
    is|its|hes|shes|sigue|esta ~ swelling|hinchando|inflamando ~ up|mas|more
    <joint>|it|<legword> ~ is|its swelling -down -<neg>
    <swell> ~2 since|desde -<surgery> -doubled -tripled -twice -<neg> -<fewer> -<samey>
    wasnt|werent|no ~2 fat|thick|big|gorda|grande ~ like|that|as|asi|como ~~ yesterday|ayer|before|antes|this
    crecio|creciendo|crece|aumento|aumentando ~3 hinchazon|inflamacion|bola|bulto|chichon
    <swell> ~~ up|back again -<neg>
    otra_vez|de_nuevo|again ~3 <swell> -<neg>
    <swell> ~3 otra_vez|again|de_nuevo -<neg>
    <swell> ~~ but|pero more|mas than|que
    bag|bolsa|pocket|bolsita|sac ~ of|de|con ~ fluid|agua|liquid|liquido ~~ filled|crecio|crece|bigger|more|mas|grande|creciendo|lleno|growing
    <swell> ~4 <more> -<neg> -<notswell> -<fewer>
    more|mas|increased|worse|new|extra|bigger|increasing ~2 <swell> -<neg> -<notswell>
    <swell> ~~ getting_worse|getting_bigger|creeping|growing|spreading|up_not_down|
        wasnt_there|bigger_than|worse_than|creciendo|aumentando
    <swell> ~6 mas_que
    <swell> ~ getting|is|going|keeps ~ worse|bigger|up
    <swell> ~~ back_up|come_back|came_back|returned|crept_up|vuelto|volvio_a|regreso -<neg>
    volvio ~2 hinchar|inflamar|hincharse|inflamarse|hinchazon
    <swell> ~5 wasnt|werent|no ~ there|before|yesterday|estaba|ayer|antes|habia
    <lumpword>|<joint>|thicker ~~ wasnt|werent|no ~ there|estaba|tenia -<notswell> +<lumpword>|<swell>|thicker
    <lumpword> ~4 <more> -<notswell>
    more|mas big|fat|thick|grande|gorda than|que -<notswell>
    puffier|fatter|thicker|rounder|gordota -<neg> -<fewer> -<notswell>
    started|starting|begun|empezo|begins|empieza|comenzo ~3 <swell>
    = mild trend:same
    <swell> ~4 <samey> -<notswell>
    <samey> ~3 <swell> -<notswell>
    <swell> ~~ <samey> ~ as|que -<notswell>
    = mild trend:better
    <swell> ~3 on ~ way out
    <swell> ~3 halved|settled|settling|cediendo|bajo|baja|cede|quitando
    <swell> ~5 <fewer> -<neg> -<notswell> -<wholly>
    <fewer> ~3 <swell> -<neg> -<notswell> -<wholly>
    <swell> ~~ going_down|gone_down|coming_down|went_down|half_what|better|improving|bajando|
        bajado -<wholly>
    desinflam*|deshinch* -<neg>
    = marked
    <swell> <swell> -<neg>
    <joint> ~~ like|como ~2 <sizeword> -<food>
    massive|huge|big|giant|enormous|enorme|gigante|tremendo|grande|horrible ~ <lumpword> -<neg> -<notswell> -mas -more
    fat|thick|big|gorda|gordo|gruesa ~ as|like|como ~ a|an|un|una? <sizeword>|<sized>
    salio|hizo|tiene|trae|has|got ~2 bolota|bultote|bultazo|bolon|chichonzote|chipotote
    ridiculous|insane|incredible|horrendous|terrible|enormous|major|serious|bad|nasty|extreme ~ <swell> -<neg>
    crecio|puso|quedo|esta|hincho ~ al|el doble
    parece|like|como|looks ~3 <sizeword>|<sized> ~3 <joint>|<legword> -<notswell> -<food>
    <joint>|<legword> ~3 parece|parecen|like|como ~2 <sized>|<sizeword> -<bandageword>
    tiene|trae|puso|quedo|hincho|inflamo ~ como ~2 <sizeword> -<notswell> -<poo>
    tamano|size ~ de|of ~2 <sizeword> -<poo> -<bruiseword> -<eyes>
    tremendo|tremenda|tamano|menudo|menuda|flor_de bola|bolota|bulto|chichon|chipote
    inflo|inflado|inflada|esponjo ~3 <joint> -<notswell>
    hinchadota|hinchadote|hinchadotes|hinchadotas|inflamadota|hinchonsisima|hinchadona
    <swell> ~3 <verymuch>
    <verymuch> ~ <swell>
    hinchado|hinchada|inflamado|inflamada|hinchadito ~ como ~ <sizeword>|salvavidas|flotador|globo|pelota
    <swell> ~ hasta|up_to|down_to|up_past|past ~2 ingle|groin|arriba|knee|hip|cadera|dedos
    <joint>|ankle|foot|leg|paw|toes|pata ~4 sausage|balloon|burst|bursting|reventar|salchicha|jamon|ham -<bandageword> -<food>
    bulge|bulto|bump|lump|swelling ~~ <sizeword>
    so|tan|re|bien <swell> -<notswell>
    <very> ~3 <swell> -<notvery> -<notswell> -<fewer>
    <swell> ~4 <very> -<notvery> -<notswell> -<fewer>
    <swell> ~~ <sizeword>
    <lumpword>|hinchazon ~5 <sizeword> -<notswell>
    <sizeword> ~5 <joint> -<notswell> +size
    like|size|as|como|tamano|tamaño ~5 <sizeword> ~4 <joint>|<swell>|leg|pata|foot
    <joint>|leg|foot|ankle|paw|hock|knee|rodilla|pata|tobillo|patita ~5 size|like|big|como|
        tamaño|tamano ~3 <sizeword>
    <joint>|leg|foot|paw|pata|patita ~3 twice|double|doble|triple|ballooned|blown|huge|gigante|gigantesca|inmensa|descomunal|humongous|ginormous|gigantic|colossal|immense|whopping|
        massive|enorme|hinchadisima|enormous -<minutes> -<massageword> -<icepack> -<warmpack>
    ballooned|blown|blew up
    <legword> ~2 ballooned|massive|huge|enormous -<neg>
    tight|shiny|tense|duro|dura|tensa|hard ~2 <swell>
    <swell> ~3 tight|shiny|tense|hard|duro|dura|tensa|brillosa|hot|down_to|whole|entire|
        entera|toda|rock|badly
    <swell> ~ like crazy|mad|hell
    hinchadisima|hinchadisimo|inflamadisima|inflamadisimo
    toda|todo|whole|entire ~2 <swell> -<slight>
    = marked trend:worse
    like|como ~2 <sizeword> ~~ more|mas|now|ahora|ya|hoy ~ like|como? ~2 <sizeword> -<food> -<poo>
    <very> ~2 <more> ~ <swell>
    <swell> ~3 much|lot|way|mucho ~ <more>
    doubled|tripled|twice|double ~3 <swell>|size
    <joint> ~~ now|ahora|ya|today|hoy ~4 <sizeword>
    <swell> ~4 doubled|tripled
    = marked @asked-incision
    like|as|size|como|tamano ~3 <sizeword> -<openword> -<bruiseword> -<bleedword> -<poo> -<seepword>
    = mild @asked-incision @swelling
    <lumpword> -<wound> -<spotword> -<pusword>
    squishy|spongy|boggy|squidgy|squashy|blandito|esponjoso -<poo>
    raised|bulging|proud|puffed|saltada|levantada|abultada|bumpy|lumpy -<neg>
    = mild @swelling
    walnut|hazelnut|pea|marble|grape|almond|nuez|chicharo|uva|canica|cherry|small|little|slight
    = mild trend:worse @swelling
    <more>
    = mild trend:better @swelling
    almost|nearly|casi nothing|nada
    <fewer> -<neg>
    = mild trend:same @swelling
    <samey>
    = marked @swelling
    <sizeword>|huge|massive|enorme|enormous
    = mild trend:same fixed
    no|not more|less|bigger|worse ~2 <swell> ~3 than|que
    = none fixed
    <swell> ~3 history|historia
    <swell> ~ is|are? ~ thing ~ of ~ past
    se le ~ quito|fue|acabo|desaparecio ~ toda? ~ la|el|lo <swell>
    <zero> ~ <swell>
    <neg> ~2 lumps|bumps|bultos|bolitas|bolas ~ or|nor|ni|o bumps|lumps|bultos|bolas?
    swelling|hinchazon|<swell> ~3 gone|down|went|bajo|bajado|fue ~ <wholly>
    bajo|quito|fue|desaparecio ~ toda|todo|completa ~ la|lo <swell>
    se le ~ deshincho|desinflamo|deshinchado|desinflamado $ -<slight> -<nearly>
    legs|patas|piernas|knees|rodillas|sides ~4 same|iguales|equal ~ size|width|tamano|grosor|grandes
    legs|patas|patitas|piernas|knees|rodillas ~3 iguales|igualitas -<bandageword>
    same|mismo size|tamano|grosor ~3 other|otra
    back to ~2 normal|usual|proper ~ size|shape|thickness
    <neg> ~2 <bruiseword> or|nor|and|ni|y|o|u ~ <swell>
    esta|tiene|quedo|anda|trae ~4 deshinchado|deshinchada|desinflamado|desinflamada -<slight> -<nearly> -<more>
    <swell> ~4 down|gone|bajo|bajado|fue ~ completely|completamente|totally|entirely|entirely|por_completo
    <swell> ~~ no|nothing hay|queda|left nada
    <neg> ~3 <swell>
    <swell> ~7 all|completely|totally|has|have|ha gone|disappeared|vanished|desaparecido -up \
        -<fewer> -<nearly>
    swelling|hinchazon|inflamacion ~3 gone|disappeared|vanished|nil|none|completely_gone|
        resolved|desaparecio|all_gone|zero -<nearly>
    ya no ~2 <swell>
    <neg> ~ signs ~4 <swell>
    desinflamo|desinflamado ~ completamente|todo|completo
    = mild trend:better @swelling
    hardly|barely|scarcely|almost|casi any|none|nothing|nada ~ left|there|queda|quedaba|tiene
    casi no|ni ~ se? ve|nota|notan|ven|distingue -<bruiseword>
    can|you ~ barely|hardly|just ~ see|tell|notice
    = mild @swelling
    thickening|thickened|thicker|engrosamiento|engrosadita|grosor -no
    = mild trend:worse
    cada ~ dia|vez|hora ~ mas ~ grande|gorda|gordita|gordo|inflada|dura ~4 <lumpword>|<joint>|<legword>|hinchazon
    bigger|fatter|puffier|larger ~ every|each ~ day|hour|morning|time ~~ <lumpword>|<joint>|<legword>|swelling
    <lumpword>|<joint>|<legword>|swelling ~4 bigger|fatter|puffier|larger ~ every|each|by ~ the? day|hour|morning|time
    = marked
    gordisima|gordisimo|gordisimas|grandisima|grandisimo|gordota|gruesisima ~3 <joint>|<legword>
    <joint>|<legword> ~3 gordisima|gordisimo|grandisima|grandisimo|gordota|gruesisima|grueso_como
    = marked @asked-swelling
    al|el|como triple|doble
    triple|double|twice ~ the|its|his|her? ~ normal? size|width|other
    gordisima|gordisimo|hinchadota|grandisima|gigante
    = none fixed @asked-swelling
    bajo|fue|quito|desaparecio|deshincho|desinflamo ~2 toda|todo|completa|completo|completamente|por_completo -<neg>
    ^ deshinchada|deshinchado|deshinchadita|deshinchadito|desinflamada|desinflamado|desinflamadita|desinflamadito ~ ya|completamente|toda|todo? $
    back ~ to ~3 normal|skinny|slim|usual|thin|slender
    ni|ningun ~ rastro|huella|senal|sombra|seña
    not|no ~ a? trace|sign|hint|scrap|bit ~ of? ~ it|left?
    gone|went|all ~ right|all|completely|totally|fully down
    = none @asked-swelling
    thin|skinny|slim|slender|flat|delgadita|flaquita|flaca|delgada|parejas|parejitas|iguales|igualitas|matching -<neg> -<more>
    normal|usual|right ~ size|shape|again
    tamano|grosor|forma ~ normal|de_siempre|igual
    """,
    "bruising": """
    = mild
    <bruiseplace> ~ is|looks|gone|turned ~2 colour|color|shade ~ of ~2 <bruisecolour>|aubergine|eggplant|beetroot|plum
    <bruiseplace> ~4 aubergine|eggplant|beetroot|plum|berenjena|uva -red -roja -rojo
    <bruiseword> -gums -tongue -cone
    <bruisecolour> ~ mark|marks|patch|patches|blotch|blotches|stain|mancha|manchas|manchita|manchitas ~4 <bruiseplace>|cut|scar|stitches -gums
    esta|anda|ve|tiene|trae ~ medio|algo|poco|poquito|bit morado|morada|moradito|moradita|purple -gums -<toeword>
    skin|piel ~3 greenish|verdosa|verde|violet|violeta -gums
    greenish|verdosa ~3 skin|piel -gums
    <slight> ~3 <bruiseword> -gums
    <bruiseplace> ~4 <bruisecolour> -gums -<toeword> -<coneword>
    <bruisecolour> ~3 <bruiseplace> -gums -<toeword> -<coneword>
    <bruiseword> ~3 <slight> -gums
    yellow|green|yellowish|greenish|amarillento|verdoso ~2 bruise|bruising|moreton|bruises
    bruise|bruising|moreton|moretones ~4 yellow|green|yellowish|fading|amarillo|verde|fainter|
        verdoso
    = mild @asked-incision
    ^ morada|morado|moradita|moradito|purple
    bit|un_poco|poquito|medio|poco ~ morada|morado|moradita|moradito|purple
    = marked @asked-incision
    bien|muy|very|super|all|toda ~ morada|morado|purple
    morada|morado|purple ~ toda|todo|all|everywhere
    = mild trend:better
    <bruiseword> ~4 <fewer> -<neg>
    fading|faded ~ <bruiseword>
    <bruiseword> ~2 all_but|almost|nearly|practically|casi|mostly ~ gone|away|faded|desaparecido|quitado -<neg>
    <bruiseplace>|<bruisecolour> ~~ fading|faded|fades +<bruisecolour>
    = mild trend:worse
    <bruiseword> ~4 <more> -<neg>
    more|new|worse|increased|mas ~2 <bruiseword> -<neg>
    = mild trend:same
    <bruiseword> ~4 <samey>
    = marked
    <bruiseplace> ~5 colour|color|colours|colores ~ of|del|de ~ the|el? rainbow|arcoiris
    <bruiseplace> ~ de? todos ~ los? colores
    <bruiseword> ~2 from|de|desde ~2 <bruiseplace>|hip|cadera ~3 to|al|a|hasta
    <bruiseword> ~3 size ~ of ~3 plate|saucer|hand|palm|dinner|fist|phone|plato|mano
    <bruiseword> ~ del? tamano ~ de ~2 plato|mano|palma
    toda|todo|whole|one|all ~2 <bruiseword> -gone -cleared -<neg> -<fewer>
    <bruisecolour> ~ de|from ~ la|el|the? <bruiseplace>|hip|cadera ~ a|al|to|hasta|down
    whole|entire|all|toda|todo ~4 <bruiseplace> ~4 <bruisecolour>|aubergine|eggplant|berenjena -gums -<toeword>
    <bruisecolour>|negra|negro ~2 toda|todo|entera|entero|completa|completo ~3 <bruiseplace> -gums
    <bruiseplace> ~3 toda|todo|entera|entero|whole|entire|all ~ <bruisecolour>|negra -gums -<toeword>
    <bruiseplace> ~2 negra|negro|morada|morado ~ de|con <bruiseword>
    bien|tan|so|re <bruiseword>
    <bruiseword> ~3 cubre|covers|covering|abarca|agarra|takes|taking|llega|goes|reaches|baja|desde|from -<neg>
    moretonsote|moretonazo|moretonzote|moretonote|moretonotes
    <bruiseword> ~~ grandote|grandotote|enorme|enormes|negrisimo|hasta|extendido|huge|massive|enormous|hip_to|from_hip -<neg> -<fewer>
    <bruiseword> ~~ whole|entire|toda|todo ~3 <bruiseplace>
    aubergine|eggplant|beetroot|berenjena ~2 coloured|colored|colour|color? ~ <bruiseword>
    <very> ~3 <bruiseword> -<notvery> -gums
    <bruiseword> ~4 <very> -<notvery> -gums
    huge|big|massive|dark|deep|giant|nasty|impressive|spectacular|large|grande|enorme|
        tremendo|oscuro ~2 <bruiseword>
    <bruiseword> ~2 huge|big|massive|dark|giant|large|grande|enorme|grandote|oscuro
    <bruiseword> ~4 all|whole|entire|down|up|toda|todo|entire|everywhere|extends|spread|hasta|
        plum|aubergine|eggplant
    black and|n blue|purple
    black_and_blue
    purple all|down|from|as|to|like -gums
    whole|entire|toda|todo ~4 purple|black_and_blue|morada|morado|bruised|amoratada
    = marked @bruising
    grandote|grandota|enorme|huge|massive|negrisimo|hasta|everywhere|extensive -<neg> -<fewer>
    = mild @bruising
    fading
    yellow|green|yellowy|greenish|yellowish|fading|amarillo|verde -<wound>
    = none fixed
    <neg> ~2 <swell> or|nor|and|ni|y|o|u ~ <bruiseword>
    sin|no morados|morado|moradito|moraditos|moraduras $
    <bruiseword> ~ all|have|has|totally gone|cleared|disappeared|vanished -<nearly>
    <bruiseword> no ~ tiene|hay|veo|trae $
    <neg> ~ esta|tiene|ve|veo|is|isnt|looks ~ morado|morada|moradito|purple|black_and_blue -gums
    quito|borro|desaparecio|fue|desvanecio|quitaron|borraron ~3 <bruiseword> -<nearly>
    <bruiseword> ~3 cleared|healed|gone|went|faded up|away|over|completely|altogether -<nearly>
    <neg> ~3 <bruiseword>
    bruise|bruising|bruises|moreton|moretones ~3 gone|disappeared|cleared|vanished|
        desaparecio|desaparecieron|quito -<nearly>
    = mild @bruising @asked-incision
    <slight>|bit|little|few ~3 <bruisecolour> -gums -<toeword> -<bandageword> -<coneword>
    <bruisecolour> ~ <spotlike> -gums -<toeword> -<eyes>
    <spotlike> ~ de? <bruisecolour> -gums -<toeword> -<eyes>
    = mild @asked-bruising
    amarillento|amarillenta|amarillentos|amarilloso|amarillito|verdoso|verdosito|amarillentito
    = mild trend:better @asked-bruising
    casi no|ni ~ se? ve|nota|notan|ven|distingue
    hardly|barely|scarcely|almost|casi any|none|nothing|nada ~ left|there|queda|tiene
    can|you ~ barely|hardly|just ~ see|tell|notice
    = marked @asked-bruising
    bien|muy|tan|re|super|sumamente|todo|toda morado|morada|negro|negra|azul|amoratado
    very|so|really|all|proper|properly|still_very purple|blue|black|dark
    = marked trend:worse @asked-bruising
    extendio|extendiendo|expandio|corrio|bajo|subio ~ a|al|hasta|por ~ la|el|toda? <bruiseplace>
    spread|spreading|spreads|crept|moved ~ to|down|up|across|onto|over|round|into
    = marked
    <darkest> ~3 <bruiseplace>
    <bruiseplace> ~3 <darkest> -gums
    toda|todo|todito|todita ~ negra|negro|morada|morado|azul ~ el|la|los|las|del|de ~ <bruiseplace>
    <bruiseplace> ~2 whole|entire|entera|entero|toda|todo|completa ~2 color|colour|de? ~ <fruitcolour>
    whole|entire|all|toda|todo ~ of|la|el? ~ his|her|the? <bruiseplace> ~4 <fruitcolour>
    = marked @asked-bruising
    <darkest>
    = none fixed @asked-bruising
    ni|ningun ~ rastro|huella|senal|sombra
    not|no ~ a? trace|sign|hint|mark ~ of? ~ it|left?
    to ~ nothing|normal $
    <bruisecolour> ~~ to nothing|normal
    gone|disappeared|vanished|faded ~ away|completely|totally|altogether? $ -<nearly> -<neg>
    = none @asked-bruising
    skin ~2 pink|normal|clear|clean|fine -<bruisecolour>
    normal|usual|natural ~ colour|color|skin|pink
    piel ~3 normal|limpia|rosita|rosada|blanquita|clarita
    se le ~ borro|quito|fue|quitaron|borraron|fueron ~ ya|todo|todos? -<neg> -<nearly>
    cleared|healed|faded up|completely|away|fully -<nearly> -<neg>
    = mild @asked-bruising
    coin|penny|thumb|thumbnail|pea|grape|fingernail|fingertip|moneda|monedita|una|lenteja|frijol|uva ~ sized? -<neg>
    = marked @asked-bruising
    whole|entire|all|toda|todo|entera|entero ~3 <bruiseplace> -<neg> -gone -cleared -fading
    size ~ of ~2 hand|palm|plate|saucer|fist|phone
    tamano ~ de ~2 mano|palma|plato|puno
    """,
}

NEGATED = {
    "swelling": {
        "mild": "none",
        "marked": "mild",
        "none": "mild",
    },
    "bruising": {
        "mild": "none",
        "marked": "mild",
        "none": "mild",
    },
}

"""The belly: bloat, and retching with nothing coming up."""

from __future__ import annotations

CLASSES = {
    "bellyword": """
        tumtum middle midriff panzota pansita buche pancota
        belly tummy stomach abdomen abdominal tum gut guts barriga panza pancita pansa estomago
        vientre estomaguito guata tripa barriguita panzita cranial_abdomen
        """,
    "bloatword": """
        massive ginormous ballooning inflated abultado abultados abultadita inflamado
        inflamados inflamadisimo hinchadito hinchadita inflon aventado aventada timpanizado
        timpanizada empanzado empanzada hinchadote hinchadota inflamadota dilatado dilatados
        parada infladota infladote
        bloated bloat bloating distended distension tympanic tympanitic drum balloon barrel
        tight taut hard swollen big huge blown swelled swelling rigid enormous expanded
        expanding gas_filled ballooned tense ballooning swole puffed firm rock hinchado
        hinchada hincho hinchando inflada inflado inflo inflando inflamada inflamado distendido
        distendida dura duro tambor globo tirante timpanico timpanica enorme grande grandota
        abombada pelota tensa tenso abultada piedra hinchadisima dilatada dilatado llena_de_aire
        crecida bloats pelotota bola timpanismo
        hinchadisimo infladisima infladisimo durisima durisimo
        balon sandia
        """,
    "retchword": """
        arquea arquear arqueaba arquean arqueos arquearse dry_retch dry_retches dry_retching
        basca bascas tries_to_heave motions_of_vomiting
        retch retches retching retched heave heaves heaving heaved dry_heave dry_heaves
        dry_heaving gag gags gagging gagged trying_to_vomit trying_to_be_sick trying_to_throw_up
        tries_to_vomit tries_to_be_sick tries_to_throw_up tryin_to_throw_up trying_to_puke
        tries_to_puke trying_to_sick trying_to_bring arcadas arcada nauseas quiere_vomitar
        intenta_vomitar intentando_vomitar trata_de_vomitar tratando_de_vomitar
        queriendo_vomitar hace_como_que_vomita quiere_devolver ganas_de_vomitar intenta_devolver
        hace_por_vomitar queriendo_devolver arqueando arqueadas arcadea quiere_guacarear
        como_que_quiere_vomitar hace_el_intento quiere_basquear basqueando hacking wretching
        wretches amaga_a_vomitar amagando_a_vomitar
        """,
    "nothingup": """
        nothing nada zero none foam froth saliva spit drool non_productive nonproductive
        unproductive improductivas improductivo improductivos improductiva espuma baba
        unproductively dry empty solo_baba solo_espuma
        """,
    "neg_belly": """
        full_of_energy
        not_hard not_bloated isnt_hard not_tight isnt_bloated not_swollen isnt_swollen rub rubs
        rubbing pumping no_esta tickle scratch button shaved full_of_food full_belly butterflies
        my_stomach crawling crawls on_his_belly
        """,
    "swollenleg": "leg knee foot face paw cat_food bladder",
}

RULES = {
    "idiom": """
    = void
    gag|gagged|gagging|gags|retched|heaved ~ at|on ~ the|a|it|his|her taste|smell|sight|pill|tablet|it
    <retchword> ~~ hairball|hairballs|furball|bola_de_pelo|bolas_de_pelo -<neg> -nothing
    """,
    "belly": """
    = normal
    round|full|fat|swollen|bloated ~~ gone|went|going ~ down ~ now|$ +soft
    pipon|pipona|panzon|inflado|inflada ~~ bajo|desinflo ~~ normal|bien
    ^ no ~ esta|anda|trae|tiene|se_ve ~ nada? inflado|inflada|panzon|panzona|pipon|pipona|timpanico|abultado ~ ni|para|$ -<askmark>
    <bellyword> ~3 soft|normal|fine|ok|blanda|blandita|suave|good|relaxed|flat|bien|
        non_tender|comfortable|plana|palpates_normal|blandito|normalita -<neg>
    soft|blanda ~2 <bellyword> -<neg>
    <neg> ~2 bloat|bloated|bloating|distension|distended|distendido
    <bellyword> ~2 <neg> ~2 swollen|bloated|hard|tight|distended|hinchado|hinchada|inflada|inflado|dura|duro|big
    no ~ esta|tiene|trae|anda|se ~ ve? ~ inflado|inflada|hinchado|hinchada|abotagado|distendido ~ de|la ~ la? ~ <bellyword>
    <bellyword> ~ esta|is|feels|todo|toda ~ todo|nice|nice_and|lovely|and? ~ soft|squishy|squashy|floppy|blandito|blandita|suavecita|flat|normal
    = bloated
    bringing|brings|throwing|brought ~ up ~ only|just|white|thick? ~ froth|foam|spit|drool ~~ over|again|nothing|repeatedly|constantly
    saca|sacando|escupe|vomita ~ pura|puro|solo|nomas|nada_mas ~ baba|espuma|saliva ~~ panza|barriga|estomago|inflado|inflada|hinchado
    <bellyword> ~~ sounds|sound hollow
    <bellyword> ~~ suena hueco|hueca|tambor
    making|doing|does|makes|going ~ all? ~ the motion|motions|movements|actions|noises ~ of ~ being? sick|vomiting|puking|throwing_up ~~ nothing|no|without
    motions|motion ~ of|to ~ be|being? sick|vomit|vomiting|puke ~~ nothing|no|only|just
    hace|haciendo|hacia ~ por|como_que|como_si|fuerza|esfuerzo ~3 vomitar|vomito|devolver|guacarear ~~ nada|no|solo|pura|puro
    <retchword> ~~ nada ~ de? ~ vomito|sale|saca|agua|comida
    lleno|llena|llenito ~ de ~ aire|gas|gases +<bellyword>
    like ~ swallowed ~2 football|basketball|melon|balloon|beach_ball|ball
    inflo|inflado|inflada|hincho ~ como ~ sapo|globo|pelota|tambor|sandia|garrafon
    <bellyword> ~3 round|rounded|redonda -<neg_belly>
    <bellyword> ~4 <bloatword> -<neg_belly> -<wound>
    <bloatword> ~3 <bellyword> -<neg_belly> -<bruiseword>
    <bellyword> ~~ drum|tambor|balloon|globo|tympanic|dura|duro|tensa|tight -<neg_belly> -<wound>
    <bellyword> ~4 hueco|hueca|hollow|ping|pings|drum|tambor|melon|football|basketball -<neg_belly>
    bloat|bloated|bloating|gdv|torsion|volvulus|timpanismo|distended|distension|abotagado \
        -<swollenleg>
    <retchword> ~~ <nothingup>
    <nothingup> ~3 <retchword>
    <retchword> ~~ <neg> ~4 comes|coming|up|out|sale|vomita|saca|come|bring|produces|
        producing|vomit|brings|anything
    trying|tries|tried|keeps|wants|attempting|tryin|intenta|intentando|trata|tratando|quiere|
        queriendo|hace ~5 <vomit>|sick|vomitar|retch|puke ~~ nothing|nada|no|foam|espuma|baba|
        wont|cant|nothing_comes
    <vomit>|sick ~~ nothing ~3 comes|coming|came|up|out|comes_out|comes_up
    vomitar|devolver|vomita|vomito ~~ nada ~3 sale|saca|saliendo
    vomitar|devolver|vomita|vomito ~~ no ~ sale|saca|echa ~ nada
    puras arcadas|nauseas
    dry_heaving|dry_heaves|dry_heave
    dry heave|heaves|heaving|retching
    <retchword> ~3 constantly|repeatedly|nonstop|every|over|sin_parar|keeps|minutes
    keeps|keep|kept|sigue|anda|no_para_de|lleva ~2 <retchword>
    <retchword> & <bellyword>
    unproductive|non_productive|nonproductive|improductivas ~ <retchword>|vomiting|vomito|
        vomitos|efforts
    blown|puffed|swelled|swollen|ballooned|inflated|filled ~ up|out ~ like ~ beach|football|balloon|barrel|pufferfish|tick|drum|whale|space_hopper|basketball|melon -<wound> -<legword> -<joint> -<bandageword> -face -eye -eyes
    looks|look|looking|parece|como ~ like|heavily|he|she|hes|shes|is|que|si? ~2 pregnant|embarazado|embarazada|prenada|preñada|preñado|panzon|panzona
    arquea|arqueo|arqueando|arcadas ~ y|pero|and ~ no|nada|nothing
    timpanico|timpanica|meteorismo
    <bellyword> ~3 tieso|tiesa|dura|duro|enorme|grande|grandisima|hinchadota|botada|saltada|parada ~ y|como|e? ~ grande|dura|tiesa|hinchada|roca|piedra|enorme?
    sides|flanks|costados|costillas|ribs|costado ~2 blown|bulging|ballooned|out|inflados|hinchados|abombados|bulged ~ out|like|up?  -breath -breathe -breath -breathing
    intenta|quiere|trata|tries|trying|keeps ~2 vomitar|devolver|vomit|sick|puke|throw_up ~~ solo|nomas|only|pura|just ~ saca|sale|brings|bringing|echa|up? ~ espuma|baba|foam|froth|spit|saliva|flem|white
    swollen|blown|bloated|puffed|huge|bulging|ballooned|tight ~ round|around|in|about ~ the|his|her middle|waist|sides|tummy|guts|gut -<legword>
    no ~ puede|logra|consigue|alcanza ~ vomitar|devolver|guacarear|basquear
    cant|cannot|unable ~ to? ~ vomit|throw_up|puke|be_sick ~~ keeps|keep|trying|tries|heaving|gagging|retching|but|only
    = bloated @vomiting @belly
    nothing|nada ~3 comes|coming|sale|saliendo -better
    = bloated @belly
    hard|tight|huge|tense|distended|swollen|dura|tensa|hinchada|inflada -soft -<neg>
    = bloated @asked-belly
    like|as ~ a? drum|balloon|football|barrel|rock|basketball|melon -<neg>
    como ~ un|una? tambor|globo|pelota|piedra|roca|sandia|balon -<neg>
    muy|bien|toda|todo|super ~ hinchada|hinchado|inflada|inflado|dura|duro|tensa|abultada|inflamada -<neg>
    inflada|inflado|dura|abultada|tirante|distendida -<neg> -<slight>
    swelled|ballooned|blown|round|rounded|taut|solid|firm -<neg>
    """,
}

NEGATED = {
    "belly": {
        "normal": "bloated",
        "bloated": "normal",
    },
}

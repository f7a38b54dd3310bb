"""The incision come open: stitches lost, edges apart, what shows inside."""

from __future__ import annotations

CLASSES = {
    "lostverb": """
        awol aguantaron fallaron untied unstuck unglued detached sheared undid loosened unfastened
        let_go gave_out soltado soltada soltados quitado quitados reventadas rota rotas partido
        partida rajado tronada despegado despegada despegados caida caidas suelta sueltas aflojo
        aflojaron afloja aflojado aflojados snapped broke broken popped pinged burst bust busted
        unpicked undone tugged yanked gone missing failed failing hanging dangling loose flapping
        unravelled unraveled lifted lost reventado reventados rompio rompieron roto rotos partio
        partieron solto soltaron suelto sueltos zafo zafaron zafado zafados botado botados safo
        safaron trono tronaron tronado desprendio desprendieron desprendido arranco arrancado
        arrancados perdio perdido falta faltan salido salidos caido caidos colgando flojo flojos
        abierto abiertos saltado saltados
        """,
    "wantsto": """
        trying tries try wants want quiere intenta trata queriendo intentando tratando almost
        nearly casi
        """,
    "openword": """
        unstuck unglued untied unsealed detached sprung ruptured breached widened widening cleft
        divot notch rip unravelling_open cracked_open gapping gapped spreading_apart drawn_apart
        drifted_apart pulled_apart come_away coming_away sheared rasgado rasgada rasgo
        entreabierta entreabierto despegadita ojalito tajito tajo_abierto aberturilla desunida
        desunido desunieron rajo rajando partio parting partiendo separando separan separa
        desgarro desgarrado desgarrando abriendose abrirse abierto_de despego despegando despegada
        unpicked unstitched ripped_open torn_open tear tearing chasm cavity crevice cavidad
        grietita fissure parts abrieron desprendida desprendio open opened opening opens reopened
        gaping gape gapes gap gaps split splitting splits apart separated separating separation
        dehisced dehiscence dehiscing popped burst bursted unzipped came_apart come_apart
        came_open come_open coming_apart coming_open popped_open split_open wide_open parted hole
        slot undone separacion aberturita abertura rendija rajita grieta huequito agujerito
        abierto abierta abrio abriendo abre abierta_la reventado revento reventaron separo
        separado separada separados hueco hoyo hoyito rajada rajado boquete agujero dehiscencia
        descosio descosido descosida zafaron zafo_un
        """,
    "deepword": """
        bone metal plate screw screws pin pins wire wires implant implants hardware muscle meat
        flesh fat tendon tendons tissue inside insides guts raw_meat joint ligament hueso placa
        tornillo tornillos clavo clavos alambre implante musculo carne carnita tejido grasa
        adentro lo_de_adentro fierro fierros tripas intestines nail shiny deep hondo honda
        profundo profunda femur tibia fierrito fierritos tornillito tornillitos huesito placita
        metalito clavito musculito bistec rod rods bolt bolts spike varilla perno pernos
        """,
    "stitchword": """
        stitch stitches suture sutures staple staples puntos punto puntada puntadas grapa grapas
        sutura suturas hilo hilos
        """,
    "removal": """
        remove removed removal removing appointment today's dissolvable dissolved removeing quitar
        quitan quitaron retirar retiraron came_out_today vet_took when_do due_out out_on
        coming_out_on coming_out_tomorrow come_out_on due friday_at come_out_next coming_out_next
        """,
    "tooth": "teeth tooth fence gate hedge diente",
    "deepbone": """
        bone metal plate screw screws implant hardware hueso placa tornillo tornillos implante
        tendon tendons fierrito tornillito huesito rod varilla perno pernos
        """,
    "nodeep": """
        no_deeper no_bone no_muscle superficial nothing_to_see superficially no_deep toy chew
        """,
    "toyctx": """
        telly tv buried enterro cable charger plug fence reja crate jaula toy chew chewing chewed
        treat eating food bowl tin nylon ate juguete masticando mordiendo premio
        """,
}

RULES = {
    "incision": """
    = open
    descosio|descosieron|descosido|descosida -<bandageword> -<coneword> -<toyctx>
    <wound> ~5 <openword> -<eyes>
    <openword> ~4 <wound>|incision|edges -<eyes>
    = open edges
    end|corner|side|bit|part|esquina|punta|puntita|orilla|ladito|lado ~3 <openword> -<eyes> -<toyctx> -<bandageword> -<coneword> -<legword>
    bit|bitten ~3 <stitchword> ~ out|off|through|apart
    not|isnt|arent|no ~2 holding|held|staying|stuck ~ together
    <wound> ~ edge|edges|side|corner|end ~3 lifted|lifting|curled|curling|peeled|peeling|raised|levantado
    space|gap ~ between ~3 <stitchword>|edges
    <stitchword>|<wound> ~2 sprung|pulled|drawn apart|open|loose
    <stitchword>|staple|grapa ~4 poking|sticking|standing ~ up|out ~~ not|isnt|no|skin|gap|piel
    <stitchword> ~~ soltaron|zafaron|reventaron|aguantaron|desprendieron|salieron -<removal> -<seepword> -<bleedword>
    <stitchword> ~~ one|two|una|un|dos ~ has|have|is|are? gone|missing|awol|popped|salio|cayo|falta -<removal>
    lips|mouth|boquita|boca ~3 opening|open|abierta|abriendo ~4 <wound>
    isnt|not|no|arent ~2 knitting|closing|joining|joined|pegando|cerrando ~~ <wound>|end|skin|piel|edges
    skin|piel|<wound> ~2 isnt|not|no|arent ~2 knitting|closing|joining|joined|pegando|cerrando
    leg|knee|pata|rodilla|pierna ~ is|has|esta open|opened|abierta
    top|bottom|end|middle|arriba|abajo|edge|corner|part|medio|punta|orilla|lado ~4 <neg> ~3 joined|closed|stuck|pegada|pegado|cerrada|cerrado|together|meeting|touching
    <stitchword> ~5 <lostverb> -<removal> -<wantsto> -<pusword> -<bleedword>
    <lostverb> ~3 <stitchword> -<removal> -<wantsto> -<seepword> -<bleedword> -<pusword> -<goo> -<smellword>
    found|encontre|halle|vi|hay|theres ~3 <stitchword> ~4 floor|bed|bedding|suelo|cama|piso|cobija|tirado|tirada|lying|basket|crate|sofa|carpet
    <neg> ~2 there|holding|esta|estan ~2 <stitchword> -<wantsto>
    <stitchword> ~2 isnt|arent|not|no|ya_no there|holding|esta|estan
    zip|zipper|cierre ~4 open|opened|undone|abierto|abrio -jacket -bag
    gap ~5 match|finger|fingernail|pencil|coin|penny|cerillo|lapiz|get_in|fit
    sprung|popped|pinged|burst|peeled|lifted|come ~ open|apart -<bagctx> -<coneword> -<bandageword>
    lips|mouth|boquita|labios ~4 come_apart|apart|opened|abierta|abierto
    stitches|puntos|staples|sutures ~ out ~3 teeth|mouth|tongue|himself|herself
    slot|slit|eyelet|buttonhole|ojalito|ojal|rajita|ranurita|boquita ~~ wound|cut|scar|stitches|penny|finger|herida|puntada|puntadas|punto|puntos
    desprendio|desprendieron|desprendido|given|gave|let ~ una|un|dos|way|go? <stitchword>
    <stitchword> ~3 given|gave way|out
    glue ~3 let|given|gave|failed|come|peeled|lifted
    <stitchword> ~3 given|gave way -<removal>
    edges|bordes|orillas|skin|sides ~4 apart|separated|open|separados|separada|abiertos|
        parting|not_meeting|pulled|abren|separan|gaping|lifting|abiertas
    <stitchword> ~4 popped|burst|missing|out|gone|fell|broke|broken|loose|undone|
        snapped|ripped|torn|pulled|unpicked|solto|soltaron|salio|salieron|zafo|zafaron|cayo|cayeron|
        faltan|falta|revento|reventaron|rompio|rompieron|arranco|abrio|abrieron|suelto|
        sueltos|flojos|tronaron|trono|botaron|boto|desprendieron -<removal> -<wantsto> -<pusword> -<seepword> -<bleedword>
    soltaron|solto|zafo|zafaron|cayo|cayeron|botaron|reventaron|abrieron ~4 <stitchword> \
        -<removal>
    popped|burst|missing|lost|broke|pulled|ripped|snapped|tore|loose|chewed|unpicked|arranco|perdio|
        solto|faltan|falta|se_quito|quito|mordio|ate|comio ~4 <stitchword> -<removal> -<wantsto>
    edges|bordes|orillas|lados|sides|skin ~4 no|not|arent|isnt|ya_no|never|dont|havent ~3 pegados|pegadas|juntos|juntas|together|meeting|meet|touching|joined|closed|met|cerrados|cerradas|unidos
    <stitchword> ~4 came|come|coming ~ out|undone|apart|loose|away|off|free -<removal>
    dehiscence|dehisced|dehiscing|dehiscencia
    boto|botaron|botado|salio|salieron|fue|fueron|saltaron|salto|desprendio|desprendieron|volo|volaron|
        cayo|cayeron|tronaron|trono ~2 <stitchword> -<removal> -<seepword> -<bleedword> -<pusword> -<goo> -<smellword>
    <stitchword> ~3 failed|failing|fails|hanging|dangling|let_go|pinged|bust|busted|lifted|unravelled|unraveled|botado|salido|suelta -<removal>
    bust|busted|pinged|undone ~3 <stitchword> -<removal>
    tugged|yanked|scratched|rubbed|nibbled|licked ~3 <stitchword> ~ out|loose|off|free|apart -<removal> -<wantsto>
    fit|get|stick|put|poke|cabe|meter ~3 pencil|finger|fingertip|fingernail|match|coin|penny|lapiz|dedo|moneda ~2 in|into|inside|it|between|through|there -<bandageword> -under
    <neg> ~3 <stitchword> ~~ arranco|quito|solto|mordio|pulled|chewed|ripped
    <neg> ~2 closed|shut|cierra|cerrado|cerrada|pega|pegado|joined ~4 <wound>|top|bottom|end|middle|esquina|punta|abajo|arriba|enmedio|orilla
    despego|despegado|despegada|despegando|despegaron|levanto|levantado ~3 orilla|orillita|puntita|borde|piel|pegamento|bordes|<wound>
    <wound> ~3 despego|despegado|despegada|despegando
    edges|edge|bordes|orillas|orillitas|bordecitos|sides ~ of_it|are|have|se|ya? ~ se? separaron|separado|separados|separadas|separated|apart|abrieron|despegaron|parted|pulled_apart
    puntito|puntitos|hoyito|hoyitos|agujeritos|piquetito|piquetitos ~ abierto|abiertos
    hoyito|huequito|hueco|hoyo|agujerito|abertura|aberturita ~3 orilla|orillita|esquina|punta|puntita|medio|cicatriz
    se le ~2 abrio|abriendo|abre -apetito -hambre -<eyes> -puerta -boca -ojo -ojos
    abierta|abierto ~ de ~2 puntita|esquina|esquinita|orilla|orillita|abajo|arriba
    separacion ~3 <size>
    gap|gaping|hole|hoyo|hoyito|hueco|agujero|abertura|slit ~4 <wound>|line|edges|
        stitches|en_la_herida|millimetres|mm|<size> -<tooth> -<bandageword> -<coneword>
    gap|hole|hoyo|hoyito|hueco|agujero|slit ~ in|en it|him|her|ella $ -<coneword> -dug
    gap|hole|hoyo|hoyito|hueco|agujero|slit ~ in|en ~2 <legword>|<joint>|skin|piel -<bandageword> -sock -floor
    gap|hole|hoyo|hueco ~3 where|donde ~3 <wound>|cut|was|were|estaba
    <size> ~2 gap|hole|opening|dehiscence
    <slight> ~4 <openword> -<eyes>
    <openword> ~4 <slight>|<size>|superficial -<eyes>
    <size> ~5 <openword> -<eyes>
    = open @incision @asked-incision
    <openword> -<eyes> -<neg>
    <neg> ~3 closed|shut|cierra|cerrado|cerrada|pega|pegado|cerro -<good>
    popped open
    = open deep
    carne roja|viva|rojita -<food> -come -comio -premio
    should ~ be ~3 inside
    lo de adentro +<openword>
    whole|entire|toda|todita ~3 <wound>|thing ~2 <openword> -<slight> -<neg>
    <openword> ~~ ve|ven|see ~ todo|everything -<eyes> -<toyctx>
    open|opened|abierta|abierto|split ~ all_the_way|completely|fully|totally|end_to_end|completamente|totalmente
    open|opened|split ~ all ~ the way
    abiertisima|abiertisimo|abiertota
    abrio|abierta|abierto|abrieron|abri ~ toda|todita|todo|completa|completita|entera|enterita|de_par|totalmente|completamente
    abrio|abierta|abierto ~2 de ~ par ~ en
    cuelga|colgando|hanging|flap|flapping ~3 carne|piel|skin|flesh|meat|colgajo -<good> -fur
    flap|colgajo ~ of|de ~ skin|piel|flesh ~~ see|ve|underneath|debajo|hanging
    boquete|hoyote|hoyazo|huecote|crater|cavern|boquetote
    hole|hoyo|hueco ~3 hondo|honda|deep|profundo
    peeled|pelo|pelado ~ back ~~ see|red|muscle|bone
    insides|guts|tripas ~3 out|hanging|fuera|ven|ve|salen|saliendo
    rod|pin|screw|wire|nail|plate|metal ~4 poking|sticking|coming|protruding|jutting ~3 out|through|from
    completely|totally|fully|totalmente|completamente|completita|todita unzipped|unzipped|abierta|descosida|undone
    laid|slit|sliced|filleted|ripped|torn|peeled open
    <wound>|whole|all|leg|knee|thing ~4 hanging|gaping|flapping|wide open
    red|pink|raw flesh|muscle|meat|tissue
    <wound> ~~ raw|red steak|meat|chicken
    <stitchword> ~~ whole|entire|todo|toda ~4 open|abierta|abierto|apart
    everything|guts|insides ~3 showing|visible|hanging|out
    unzipped|parted|ripped|torn|split|gaping ~3 end|top|lado ~ to|a ~ end|bottom|lado
    see|ve|veo|seeing ~2 white|blanco|blanca|bone|red|rojo ~ in_there|inside|adentro|underneath|in ~ there?
    carne|hueso|musculo ~ de_fuera|de_afuera|al_aire|viva|afuera -<toyctx>
    carne|hueso|musculo de fuera -<toyctx>
    flesh|muscle ~3 exposed
    <seeword> ~ at ~ red|raw meat
    ve|ven|see|seeing|looking|veo ~ todo? por_dentro|adentro|inside|right_in|into_it|right_inside|hasta_adentro -<eyes> -<bowel>
    salio|sale|saliendo|came|coming|cayo ~3 pedazo|piece|bit|pedacito ~ de|of ~ metal|fierro|alambre|placa|tornillo|wire|plate|screw
    metal|fierro|fierrito|tornillo|placa|clavo|hueso|alambre|pin|screw|plate|wire ~3 sale|asoma|sobresale|salio|saliendo|sticks|pokes|protrudes|sobresaliendo ~3 de|por|out|through|la
    something|algo ~3 white|shiny|blanco|metal|metallic|brillante|duro|hard ~~ asomando|asoma|sale|saliendo|sticking|poking|through|sobresale -<eyes>
    abierta|abierto|open|opened|abrio|split ~2 de_lado_a_lado|end_to_end|from_end|top_to_bottom|de_arriba_abajo|completita|todita|de_punta_a_punta
    toda|todita|completamente|totalmente|entera ~ abierta|abierto -<slight>
    <seeword> ~5 <deepword> -<nodeep> -<toyctx>
    <deepword> ~4 <seeword> -<nodeep> -<toyctx> -puffing -<tightword>
    <deepbone> ~2 in|from|of|through|en|de ~2 <wound>
    down|hasta to|el ~ bone|hueso|muscle
    <openword> ~~ <deepbone> -<nodeep> -<eyes>
    hole|gap|open|opened|abierto|abierta|hueco|hoyo|abrio ~~ bone|metal|plate|screw|muscle|
        meat|flesh|hueso|placa|tornillo|musculo|carne|fat|tendon|tendons|tissue|grasa|tejido|
        deep|profunda|profundo|honda|hondo|clavo|fierro|pin -<nodeep> -<toyctx>
    hole|gap|open|opened|abierto|abierta|hueco|hoyo|abrio ~~ wide -<eyes> -<nodeep> -<toyctx> -<size> -<slight>
    gap|hole|hoyo|hueco|opening|abertura|slit|split ~~ shiny|white|blanco|brillante|bone|hueso
    <seeword> ~3 something|algo ~3 white|shiny|blanco|metal|metallic|brillante|duro|hard -<bandageword>
    something|algo|knuckle|bit ~3 white|shiny|blanco|metal|metallic|brillante ~5 <wound>|<seeword> \
        -<bandageword>
    <wound> ~~ something|algo ~3 white|shiny|blanco|metal|metallic|brillante
    wide open -<eyes> -mouth -jaw -door
    burst|bursted|split|popped|ripped|tore|torn ~ open|apart -<bagctx>
    tornillo|placa|clavo|hueso|fierro|alambre|plate|screw|pin|wire ~3 salio|salido|salir|
        fuera|out|poking
    salio|sale|asoma|salido|saliendo ~3 hueso|placa|tornillo|clavo|fierro|carne
    open wide
    abierta|abierto ~ completa|toda|completamente|totalmente|todita|bastante|de_par
    completely|totally|fully|all_the_way ~ open|opened|split|apart|burst
    gaping ~ wound|hole|open|incision
    bone|metal|plate|screw|pin|hueso|placa|tornillo|clavo|muscle|fierro ~3 showing|exposed|
        visible|out|sticking|through|expuesto|expuesta|salido|salida|poking|asoma|asomando|ve|
        protruding|fuera|afuera
    exposed|expuesto ~2 bone|metal|plate|hueso|implant|muscle|tissue|tendon
    se ve|ven|mira|asoma|alcanza ~4 hueso|placa|tornillo|carne|musculo|metal|adentro|clavo|
        tejido|tornillos|fierro|grasa|carnita
    = open deep @incision @asked-incision
    muscle|tendon|meat|bone|flesh|hueso|musculo|carne ~3 in|inside|dentro|adentro it|there|de? -<food>
    like|parece|como ~ raw? steak|mince|meat|bistec|carne|carniceria
    = open deep
    pink|pinky|pinkish|red|white|fatty ~ stuff|bits|bit|stringy|tissue|jelly|blob|lump ~ bulging|poking|popping|hanging|sticking|coming|spilling out
    cosa|algo|bola|bolita|pedazo ~ rosa|rosado|rosada|blanca|roja ~ asomando|colgando|saliendo|brotando
    """,
}

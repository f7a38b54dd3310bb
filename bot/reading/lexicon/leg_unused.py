"""The leg not used at all, and use that was lost."""

from __future__ import annotations

RULES = {
    "weight_bearing": """
    = none
    a la pata coja
    <neg> ~ walk|walks|walking|camina ~ with|con ~ the|la|his|her|that|esa ~ leg|pata|paw|foot
    keeps|keeping|has|holding|holds|stays ~ the|his|her|that|it ~ leg|paw|foot|it ~ lifted|raised|tucked|bent_up|hiked|up
    holding|holds|lifting|keeping|carrying|hiking|tucking ~ up ~ the|his|her|that|its ~ paw|leg|foot|limb
    no ~ ha bajado|apoyado|puesto|asentado|pisado|plantado|usado ~2 pata|patita|pierna|pie|la -<meds> -<coneword>
    ahora|siempre|sigue|todavia levanta|encoge|recoge|alza ~ la ~ pata|patita|pierna -<pee>
    got|gets|has|keeps|keeping|holding|holds|had|its|it ~2 hoisted|hitched|hiked|cocked|hooked|hoiked|clamped|curled ~ up|under
    hoists|hitches|hikes|hoisting|hitching ~ it|leg|foot|paw ~ up
    leg|paw|foot|its ~ still|always|permanently|constantly up $
    ni ~ de ~ chiste|broma|chiripa|loco ~ la? ~ apoya|pisa|asienta|baja|usa
    hoppy -more -less -mas -menos
    <threeleg> ~ <limpword>
    dead|completely|totally|fully|hopping|severely|utterly|completamente|totalmente lame|cojo|coja|lameness
    10|5|five|ten 10|5|five|ten <limpword>
    keeps|keeping|kept|holds|holding|stays|staying ~ it|leg|foot|paw ~2 off ~ the? ground|floor|deck
    acts|acting|like|as_if|as_though|como|como_si ~2 leg|paw|foot|pata ~2 isnt|not|wasnt|no|doesnt ~ there|exist|existe|estuviera|existiera
    como|como_si ~ no ~2 tuviera|existiera|fuera ~3 pata|patita|pierna
    forgotten|forgot|forgets ~~ fourth|leg|foot -pill -tablet -dose
    <neg> ~ put ~ any|much ~ weight ~ on
    no ~2 ponerle|pone|puso|quiere_ponerle ~ peso|carga
    no ~2 quiere|quiso|ha|deja ~ apoyar*|pisar*|asentar*|bajar*|usar*|plantar*|poner +pata|patita|pierna|la|pie|peso|ella
    no ~ la|le ~ ha bajado|apoyado|usado|pisado|puesto|asentado -plato -agua -bebedero -comida
    ni ~ la pone|baja|usa|apoya|pisa|asienta
    la|pata|patita ~ recoge|encoge|levanta|sube|guarda ~~ no ~ la ~ baja|apoya|pone
    siempre|todo_el_tiempo|todo_el_dia|todavia|sigue ~2 encogida|levantada|recogida|alzada|arriba +pata|la|patita|trae|tiene|lleva|siempre
    va|anda|camina ~ dando|a|de|con ~ saltitos|brincos|brinquitos|saltos -contento
    not|isnt|wont|no ~2 any ~ weight
    won't|wont|doesnt|refuses ~ commit ~ to? it
    leg|paw|foot ~2 does ~ nothing
    just|only ~ swings|hangs ~ it|leg ~2 when|as|uses
    wont|doesnt|not|no ~ trust|confia ~ it|leg|pata|en
    <neg> ~2 touched|touch|touches|seen|met ~ the ~ carpet|floor|ground|lino|grass|rug -<bandageword>
    carries|carrying|holds|wears ~ it|leg|paw ~ like ~ a ~ handbag|purse|bag|trophy|flag|baby
    trae|lleva|tiene|anda ~3 pata|patita|pierna ~2 guardada|guardadita|pegada|recogida|metida|en_el_aire
    four|4|cuatro ~ feet|legs|paws|patas ~~ three|3|tres
    tripod
    <barely> ~ ounce
    leg|paw|foot|pata|patita ~ in|en ~ the|el? air|aire
    carries|carrying|holds|holding ~ it|leg|paw ~ like ~4 glass|broken|egg|eggshell
    la|pata|patita ~3 de adorno
    no ~ la baja|bajo|apoya|asienta|planta|usa +pata|patita|pierna|la|fuerza
    from|de ~ four|4|cuatro ~ legs|patas? ~ to|a ~ three|3|tres
    leg|paw|pata ~3 decoration|decorative|ornamental|ornament|adorno|passenger|dead_weight
    four|4 ~ to three|3
    <neg> ~4 <bear> ~4 leg|it|foot|paw|pata|patita|pierna|ground|floor|la|suelo|piso|all|nada|
        limb -<bathroom>
    <neg> ~3 <bear> -<coneword> -<bathroom>
    <neg> ~3 put|puts|putting|place|placing|set|touch|touches|pone|poner|baja|bajar|toca|rest|
        resting|asienta ~4 down|weight|floor|ground|piso|suelo|foot|pata|patita|leg|paw|pie|
        carga
    <neg> ~2 peso|weight ~4 leg|pata|patita|foot|limb|it|paw|pierna
    <neg> ~ weight
    <neg> ~5 foot|paw ~3 floor|ground
    <threeleg>
    hopping|hops|hop|hopped|brinca|brincando|saltando|salta|brinquitos ~4 three|3|tres|around|
        about|everywhere|una|tres_patas|other
    carries|carrying|carry ~ it|leg|foot|paw|limb ~2 time|day|mostly|constantly|always|when|
        most|everywhere|around|still
    carries|carrying|carry ~ it|leg|foot|paw|limb $
    carry|carries|carrying|carried|holds|hold|holding|held|keeps|tucks|tucked|tucking|lifts|
        lifting|pulled|levanta|trae|carga|lleva|encoge|mantiene|recoge|alza|tiene ~3 leg|it|
        foot|paw|limb|pata|patita|pierna|pie|la ~3 up|off|air|arriba|levantada|encogida|aire|
        recogida|alzada|doblada|high|raised|tucked|under|volando
    la|it|leg ~ trae|lleva|tiene|mantiene ~3 aire
    camina|anda|walks|walking|goes|going|brinca en|on tres|three|3 $
    la|it|leg ~ trae|lleva|tiene|mantiene|trae_siempre ~ encogida|levantada|recogida|alzada|
        doblada|arriba|colgando|volando
    leg|foot|paw|pata|patita|limb|it|pierna|one ~4 held|tucked|carried|up|levantada|encogida|
        recogida|alzada|doblada|volando|stays ~ up|in|off|under|air|aire -<give>
    pata|patita|pierna levantada|encogida|recogida|alzada|al_aire|arriba
    wont|doesnt|isnt|not|no|refuses|still_not|hasnt ~ use|using|used|usa|usar|usado|uses ~3 \
        leg|it|foot|paw|pata|patita|pierna|la|limb|at
    non weight bearing|weightbearing
    nada|cero|zero ~2 apoyo|weight|peso|carga
    ni ~ apoya|pisa
    on|with|getting|walking|about|en|anda|camina|con ~3 three|3|tres ~ legs|patas|paws|patitas|legged|feet|foots
    leg|pata|patita ~2 useless|inutil|dragging|drags|arrastra|arrastrando
    drags|dragging|arrastra|arrastrando ~3 leg|foot|paw|pata|patita|pierna|limb|it
    <neg> ~3 stand|standing|walk|walking|pararse|parar|caminar|step ~ on|con|en ~ it|leg|ella|
        esa|pata|paw|foot
    foot|paw|leg|pata|patita|pie|toe|limb ~2 never|not|no|nunca|isnt|wont|doesnt ~2 down|floor|ground|suelo|piso|touches|toca
    not|ni|nor a|single|un toe|paw|dedo|foot ~3 ground|floor|down|suelo|piso
    dead|hopping|broken lame
    leg|pata ~3 <neg> ~3 ground|floor|suelo|piso|touch|toca
    never|not ~ once ~ touches|touched
    lame 10
    = none @mobility @weight_bearing
    ^ tucked|held|carried|lifted|hiked ~ up|under
    its|it|leg|paw|foot ~ still|always|constantly ~ up|raised|lifted|tucked
    ^ still ~ up|raised|lifted|tucked
    ^ never ~ down|touches
    ^ no ~ apoya|pisa|asienta|planta
    ^ no pisa|apoya|asienta
    ^ not at all|yet
    ^ nada|nothing $
    ^ <neg> ~ yet|todavia $
    ^ lo|la <neg> ~ apoya|usa|pisa
    = none sudden
    apoyaba|pisaba|usaba|caminaba|cargaba|asentaba ~~ desde|hoy|ahora ~3 nada|nadita|cero|ni
    bearing|using|walking|putting|standing ~~ zilch|zip|nothing|zero|none|nowt ~ since|today|now|this
    was|were|been bearing|using|putting|walking ~~ zilch|zip|nothing|none|nowt|zero ~ since|today|now|this|from
    <threeleg> ~ again|otra_vez|de_nuevo
    otra_vez|de_nuevo|again ~3 <threeleg>
    lifting|holding|carrying|hopping ~ the|his|her|that|it|up ~ leg|paw|foot|it|up ~ again
    ya ~ no ~ la ~ apoyo|piso|bajo|uso|puso|asento
    back|vuelta ~ to|on|a|en <threeleg>|carrying|holding|lifting|tres|three|3|hopping
    volvio|vuelve|regreso ~ a ~ levantar*|encoger*|cargar*|alzar*|brincar|saltar|recoger* ~3 pata|patita|pierna|pie|la|tres? -<meds> -<perch> -<walkword>
    apoyando|usando|pisando|caminando ~~ dejo ~ de ~ hacerlo|usarla|apoyarla|apoyar
    started|starts|empezo ~ holding|carrying|lifting|tucking|a_levantar|a_encoger|a_cargar ~2 it|leg|paw|foot|pata|patita|up|la -<neg>
    ya ~ no ~ pisa|asienta|planta
    ya ~ no|ni ~ la|le pone|baja|apoya|pisa|asienta
    suddenly|sudden|de_repente|de_pronto|de_golpe|out_of_nowhere|de_la_nada ~3 trae|lleva|tiene ~3 levantada|encogida|alzada|arriba|colgando
    suddenly|sudden|de_repente|de_pronto|de_golpe|overnight|out_of_nowhere|all_of_a|subito|
        subitamente|abruptly|de_la_nada|acute|acutely ~~ <threeleg>
    suddenly|sudden|de_repente|de_pronto|de_golpe|overnight|out_of_nowhere|subitamente|
        abruptly|de_la_nada|acute ~~ <neg> ~3 <bear>
    suddenly|sudden|de_repente|de_pronto|de_golpe|out_of_nowhere|subitamente|abruptly|
        de_la_nada ~~ <neg> ~3 put|use|using|touch|pone|usa
    suddenly|sudden|de_repente|de_pronto|de_golpe|out_of_nowhere|subitamente|abruptly ~~ \
        carry|carries|carrying|holds|hold|holding|levanta|encoge ~3 leg|it|up|pata|foot|paw
    gave|given up ~ on|using ~3 leg|it|foot|paw -<food>
    stopped|quit|dejo|paro ~2 using|putting|walking|bearing|usar|apoyar|pisar ~4 leg|it|pata|
        weight|foot|paw|patita|la
    dejo de ~ usar|apoyar|pisar|usarla|apoyarla
    dejo_de|dejó_de usar|apoyar|pisar|usarla|apoyarla
    no longer|ya_no ~ <bear>|putting|apoya|usa|pisa|quiere_apoyar
    ya no ~ apoya|pisa|usa|apoyo|la|quiere ~2 pata|patita|apoya|apoyar|pisa|usa|nada|leg|pierna -<food> -comer -<ingest>
    was|were|had_been|been|estaba|venia ~2 <bear>|walking|walkin|putting|usando|apoyando|
        caminando ~~ now|ahora|today|hoy|this_morning|ahorita|but|pero ~4 <threeleg>|wont|
        cant|not|no|nothing|refuses|nada|none|holds|carries|doesnt
    apoyaba|usaba|pisaba|caminaba|andaba ~~ ya_no|no|hoy_no
    went|gone|goes|paso ~ from|de ~4 <bear>|<legmove>|caminar|apoyar|usar|fine|normal|sound ~~ \
        not|none|nothing|nada|zero|cero|no
    from|de <bear>|<legmove>|caminar|apoyar|usarla ~~ to|a ~ not|none|nothing|nada|zero|no|cero
    since|desde ~5 nothing|nada|none|not_at_all $ +<slidword>
    acute|acutely|sudden ~2 nwb|<threeleg>
    de_golpe|de_pronto|de_repente|subitamente ~3 levanto|encogio|levanta|encoge|alzo|alza
    """,
}

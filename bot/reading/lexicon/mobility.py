"""Mobility: how the patient goes against earlier days."""

from __future__ import annotations

RULES = {
    "mobility": """
    = better
    nota|noto|veo|vemos|hay|harto|mucho ~3 avance|avances|progreso|adelanto|mejora -<neg>
    up and about ~2 quicker|faster|sooner|easier|more
    huge|big|massive|real|lots|loads|great ~ of? improvement|progress|difference|change -<neg> -bad -worse
    <neg> ~ as|tan|so ~ <limpword>|stiff|sore|tieso|tiesa|tambaleante|inestable ~ as|como|que|now|today|anymore
    <limpword> ~~ ya no tanto
    <limpword> ~2 <neg> ~ as|so|tan|tanto ~ bad|much|badly|noticeable|fuerte|mucho
    <limpword> ~~ no|not tanto|much
    <limpword> ~~ less|menos|better|mejor ~ than|que|de ~2 yesterday|ayer|before|last|antes|week|semana|day
    <limpword> ~~ but|pero ~ less|menos
    come|came|coming ~ on|along ~ heaps|loads|miles|lots|well|so|great|far|nicely|leaps
    nothing like ~ he|she|it was|used +<limpword>
    mejoro|mejorado ~3 montonazo|chorro|resto|burrada|barbaridad|full|cañon
    definite|definitely|big|huge|massive|real|steady|slow|visible|noticeable|good|great|mucha|gran|hay|veo|noto|nota|muchisima|buena|clara ~2 improvement|progress|mejoria|avance -<wound> -<swell>
    improving|improves|improved|mejorando|progresando|progressing|avanzando -<wound> -<swell> -<food>
    coming ~ on|along ~3 treat|nicely|well|great|lovely|good|fine|brilliantly
    <limpword> ~3 less|better|fading|improving|fainter|smaller -<neg>
    <neg> ~ <limpword> ~2 as ~ much|badly|bad
    menos ~ <limpword>|tieso|tiesa|rigido|rigida|duro|torpe
    more confident|confidence|confidently|sure|mobile|agile|supple|nimble|fluid|limber
    steadier|surer|firmer|freer|looser|bouncier|springier ~ on|in|with|than|every|now|today|gait|getting
    lot|much|bit|far|way more ~ mobile|agile|sure|comfortable ~ on?
    night ~ and ~ day
    on the up
    on up and up
    heading|going|moving|headed|step|steps ~2 in|into ~ the? right|good direction|way
    right direction
    getting the hang
    walks|walking|moves|moving|trots ~ nicer|lovelier|straighter|freer|smoother|quicker|faster|easier|further
    faster|quicker|easier ~ up|down|on|getting|rising ~2 <perch>|ramp|steps|stairs|walk|than|up
    getting ~ around|about ~2 better|easier|more
    va|vamos|ahi_va|anda ~ para|pa adelante|delante|arriba
    pa_delante|padelante|pa'lante|palante
    mas|cada_dia_mas ~ suelto|suelta|agil|firme|confianza|confiado|confiada|seguro|segura|fuerte|soltura|fuerza|movil|fuertecito|activa_la_pata -<swell> -<poo>
    agarrando|tomando|cogiendo|recuperando|ganando ~ fuerza|confianza|movilidad|musculo|ritmo
    se ~ levanta|para|mueve|incorpora ~2 mas|mejor ~ facil|rapido|ligero|solo|agil
    mejoro|mejorado|mejorando|mejorar|mejora ~3 bastante|mucho|monton|bien|poco|poquito|muchisimo|pata|andar|caminar -<wound> -<swell>
    recovering|recuperando|recuperandose ~2 well|nicely|bien|great|fast|quickly
    turned ~ a|the corner
    <limpword> ~~ not|nowhere|nothing ~3 as bad
    not|nowhere ~2 as bad ~ as|before +<limpword>|<legword>|walking
    <limpword> ~ menos|less
    moving|walking|moves|walks ~2 more|mas ~ freely|easily|comfortably|fluidly|suelto|libre|facil
    walking|walks|moving|moves|mobility|leg|camina|caminando|gait|limp|limping|pata|anda|knee \
        ~5 better|mejor|easier|improved|improving|stronger|steadier|mejorando|mejorado|
        smoother|faster|progress
    better|mejor ~2 on|than|que ~3 leg|it -<wound> -<swell>
    less ~ limp|limping|lame|stiff|wobbly
    <limpword> ~ less|menos
    using ~3 more
    apoya|usa|pisa|camina|anda ~ mejor|mejorcito
    apoya|usa|pisa ~2 mas|mejor ~ cada|que|hoy|pata
    cojea menos
    improving|getting_stronger|going_from_strength|leaps_and_bounds|from_strength|on_the_mend
    putting|puts ~ more weight
    more weight|steady|confident|stable
    getting there
    gets|getting|got|stands|rises|lies ~ up|down|stairs ~ easier|quicker|better|faster
    quicker|steadier|looser|smoother|stronger ~4 than|each|every -<swell>
    = better @mobility @weight_bearing
    se ~ mueve ~ mas
    apoya|apoyo|usa|uso|pisa|piso|cargo|asento ~ mas|mejor -<neg>
    miles|heaps|loads|worlds|streets|leagues|tons better
    less|menos $
    = better @mobility @weight_bearing @walk @mishap
    improvement|mejoria|progressing|fortaleciendo
    mas fuerte|fuertecito|suelto|suelta|firme -<swell>
    steadier|sturdier|bouncier
    better|mejor|improving|mejorando|improved|mejoro|stronger|progress|mejorcito|mejorcita|
        avanzando
    = same
    <neg> ~ difference|change|diferencia|cambio ~~ walk|walks|walking|gait|limp|camina|caminar|cojera|anda -better -worse -peor -mejor -<wound>
    <neg> ~2 worse|peor ~2 than|que|for ~ before|antes|ayer|yesterday|it
    <neg>|neither ~ further ~ on|forward|along ~~ back|backwards|behind
    <neg> ~3 difference|diferencia|change|cambio|cambios|changes -<wound> -<swell> -<bandageword> -<meds> -<food>
    nothing|nada ~ changed|different|new|cambia|cambiado|distinto|diferente|nuevo +<legword>
    <neg> ~2 improved|improving|mejorado|mejora|mejorando ~~ <neg>|ni|nor|or|but ~3 worse|worsened|deteriorated|worsening|empeorado|empeora|peor|deteriorating
    <neg> ~ improvement ~2 <neg>|or|nor ~ deterioration|worsening
    <neg> ~ better|mejor ~~ <neg>|nor|or|ni ~ worse|peor
    <neg> ~ avanza|adelanta ~2 ni ~ retrocede|atrasa
    ni ~ para|pa|patras|pa'tras|adelante|delante|atras ~4 ni
    standstill|stagnant|plateaued|plateau|estancado|estancada|estancados
    parecido|similar|similarly ~2 ayer|yesterday|before|a|to|antes -<swell>
    no better|worse|change nor|no|or worse|better
    no_better_no_worse|no_worse_no_better|neither_better
    <neg> ~ <limpword> ~3 more|worse|mas|peor than|que
    walking|walks|walkin|moving|mobility|leg|camina|caminando|limp|limping|gait|anda|cojea|
        pata|about|getting_about ~4 <samey> -better -mejor
    <samey> ~2 limp|walking|mobility|leg|gait
    no_change|no_changes|no_difference|sin_cambios|sin_cambio ~3 leg|limp|walking|walk|
        mobility|walks|pata|moving|moves|camina
    <neg> ~2 worse|peor ~2 than|que|for ~ before|antes|ayer|yesterday
    = same @mobility @weight_bearing @walk @mishap
    <neg> ~2 changed|cambiado|cambia|change ~ nada|much
    same|igual ~ as|que ~ last|la ~ time|week|vez|check|visit
    ^ as he|she|it was|were
    nothing|nada ~ changed|different|new|cambia|cambiado|distinto|nuevo
    static|ditto|stable|estable|unaltered|unchanged|idem|steady
    no_news|nothing_new|sin_novedad|nada_nuevo|holding_steady|misma_historia|same_old
    <neg> ~ hay|noto|veo|has ~3 cambio|cambios|mejoria
    parecido ~ a
    <samey>
    no_change|no_changes|sin_cambios|sin_cambio|no_different
    = same @mishap
    no_change|no_different|sin_cambios|no_changes|<samey>
    = worse
    reluctant|unwilling ~ to ~ get|stand|rise|walk|move|use ~3 up|today|tonight|now|it|leg -<food>
    holding|holds|carrying|lifting|keeps|keeping|hopping|trae|lleva ~4 more|mas|higher ~ than|que -<meds>
    went|goes|going|gone|slid|slipped backwards|backward|downhill -<poo> -<food>
    gait|walk|walking|leg|limp ~ gone|went ~ off|backwards|downhill
    worse|peor|more|mas ~ lame|limping|limp|limpy|coja|cojo|wobbly|stiff|cojera|unsteady|
        hobbly -<neg>
    worse|peor on -<neg>
    going|gone|go|moving|heading ~2 in ~ reverse
    going|gone|heading ~ the ~ wrong ~ way|direction -<legonly> -<poo> -<food>
    gait|walking|walk|mobility ~3 apart|pieces|downhill|backwards
    <neg> ~ walking|moving|getting_about|using|camina|caminando|anda|apoya|moves|walks ~ it? ~2 as|so|tan well|good|much|bien|freely|easily ~ as|than|like|como?
    ya no ~ camina|anda|apoya|pisa|mueve ~ tan bien
    menos bien que|than
    struggling|struggles|struggled|batalla|batallando|cuesta|costando|costo ~2 more|mas ~4 up|to|get|para|pararse|levantarse|caminar|moverse|echarse|acostarse|al? -<breath> -<food> -<pee> -<poo> -respirar -comer
    <neg> ~ as ~ good ~ as|on|with ~2 yesterday|he|she|it|was|before|last|leg
    harder|tougher|more_difficult ~ for|to ~3 him|her|get|up|rise|walk|move|stand -breathe -eat -poop -pee
    finding|finds ~ it harder|tougher
    regressed|regressing|regress|backslid|backsliding|relapsed|desmejoro|desmejorado|desmejorando|decayo|decaido_de_la_pata|recayo|recaida
    lost|losing|perdimos|perdio ~ ground|terreno
    bit|real|had|un|una|tuvimos ~2 setback|retroceso|recaida
    was|were|had_been ~ better|walking_better|stronger ~2 yesterday|last|on|before|earlier|this|a|week -<food>
    antes|ayer|semana|lunes ~3 caminaba|andaba|apoyaba|estaba|iba mejor
    caminaba|andaba|apoyaba|estaba|iba mejor ~2 ayer|antes|antier|semana|hace
    mas flojo|floja|torpe|lento|lenta|cojo|coja|renco|renga|inestable ~ de|que|hoy|al|para? -<poo>
    esta|anda|va|amanecio|lo_veo|la_veo ~2 mas duro|dura|tieso|tiesa|flojo|floja|torpe
    slower|stiffer|weaker|wobblier|creakier ~ getting|on|up|to|off|in|since -mornings -first_thing
    retrocedimos|retrocedio|retroceder|retrocediendo
    mas tieso|tiesa|rigido|rigida|duro|torpe|lento -<neg>
    tieso|tiesa ~ mas|otra_vez
    va|vamos|anda|viene|fue pa|para atras
    patras|pa_atras|para_atras
    stiffer|slower|wobblier|weaker|lamer|creakier ~ getting|on|getting_up|in|at|when|to|going -<neg> -mornings
    taken|took|step|steps|gone|paso ~ a? step|steps|pasos? back|backwards|backward|atras
    backward|backwards step
    mas encogida|levantada|coja|floja ~ que|than
    lleva|trae|carries|holds ~2 mas|more|higher ~2 que|than
    walking|walks|moving|moves|mobility|leg|limp|limping|limps|gait|camina|caminando|anda|
        cojea|cojeando|pata|lame|lameness ~5 worse|peor|worsened|worsening|deteriorated|
        badly_than|harder|empeoro|worst|deteriorating -<neg>
    worse|peor|more|mas ~ lame|limping|limp|limpy|coja|cojo|wobbly|stiff|cojera|unsteady|
        hobbly -<neg>
    worse|peor on -<wound> -<swell>
    <limpword> ~2 more|mas|again|otra_vez|de_nuevo
    <limpword> ~4 worse|peor|mas_que
    <limpword> ~2 more|mas than|que
    using ~3 less
    apoya|usa|pisa menos
    less weight
    stiffer|slower|wobblier|weaker|lamer|shakier ~5 than|today|tonight|now -<neg>
    getting|going|gone|getting_worse|vamos|va ~ worse|downhill|backwards|peor|empeorando|
        patras -<wound> -<swell>
    setback|retroceso|step backwards
    camina|anda|cojea|apoya ~2 peor
    more of a limp|hitch
    was|were|used|been|had ~3 <bear>|walking|walkin|fine|better|good|using|on|doing ~~ now|
        today|but ~4 <threeleg>|limping|wont|cant|worse|lame|not
    caminaba|apoyaba|estaba|andaba ~2 bien|mejor|normal ~~ pero|hoy|ahora|ya ~4 cojea|no|peor|
        cojeando
    = worse @mobility @weight_bearing @walk @mishap
    worse|peor|worsened|empeoro|deteriorated|empeorando|peorcito|peorsito
    = worse @mobility @weight_bearing @walk
    <neg> ~ so|as|too|tan ~ good|great|well|clever|brilliant|bien|hot ~2 today|tonight|yesterday|as|hoy|como|que
    cuesta|batalla ~ mas|harto
    cuesta|costando|batalla ~2 mas
    slower|stiffer|weaker|wobblier|lamer -<neg>
    setback|retroceso|recaida
    = same agent @mobility @weight_bearing @walk @mishap
    <neg> ~2 see|notice|veo|noto|tell ~3 difference|diferencia|change|cambio|cambios
    <neg> ~ hay|noto|veo|has ~3 cambio|cambios
    = same @mishap @mobility
    <neg>|none ~ the? worse ~ for ~ it|wear
    = same fixed @mobility @weight_bearing @walk @mishap
    no_ha_cambiado|no_cambia|sin_cambio|sin_cambios|no_hay_cambios nada
    <neg> ~ changed|cambiado
    """,
}

NEGATED = {
    "mobility": {
        "worse": "same",
        "better": "same",
        "same": None,
    },
}

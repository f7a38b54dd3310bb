"""Use of the leg: weight bearing on its own, and mobility against earlier days."""

from __future__ import annotations

CLASSES = {
    "limpword": """
        limp limps limped limping limpin lame lameness hobble hobbles hobbling hobbled hobbly
        gimpy gimp gimping hitch favoring favouring favors favours favoured favored wobbly unsteady shaky_on cojea
        cojeando cojeo cojera coja cojo cojito cojita cojear renguea rengueando renquea
        renqueando renco renga rengo cojeaba limpy lopsided toe_dragging ginger gingerly
        renguera claudica claudicacion renguear tentative
        """,
    "bear": """
        weight weight_bearing weightbearing weightbear bear bears bearing use uses using used
        walking_on standing_on stand_on stands_on walk_on walks_on walked_on walkin_on
        put_weight putting_weight puts_weight put_it_down putting_it_down puts_it_down apoya
        apoyo apoyando apoyar apoyado apoyarla apoyarse apoyaba pisa piso_con pisando pisar
        pisado usa usando usar usado carga cargando cargar asienta asentando asentar asienta_la
        recarga recargar recargando planta plantando plantar usarla apoyándola load loads
        loading
        """,
    "threeleg": """
        three_legs 3_legs three_legged 3_legged three_legs_only tripod tripoding tripodding
        hopping hops hop hopped tres_patas 3_patas tres_patitas 3_patitas brinquitos
        brincando_en nwb non_weight_bearing nonweightbearing non_weightbearing 3_legger on_three
        on_3 three_pawed saltitos leg_up
        de_brinquito de_brinquitos a_brinquitos a_brincos de_brincos brincando_como hop_hop
        saltando_como a_saltitos de_saltitos en_tres
        """,
    "toetouch": """
        toe_touching toe_touch toe_touches toe_touched toetouching toe_tap toe_taps toe_tapping
        tip_toe tip_toes tiptoe tiptoes tip_toeing tippy_toes tippy_toe tiptoeing ttwb
        toe_touch_weight toes_down puntita puntitas de_puntitas la_puntita de_puntas de_punta
        toe_down toe_dips toes_touching dabs_it ttouch
        """,
    "legit": """
        it leg legs foot paw pata patita pie that_leg bad_leg pierna la back_leg limb patica
        """,
    "legmove": """
        walking walkin trotting using weight_bearing bearing standing running putting touching
        toe_touching moving
        """,
    "legmoved": """
        walked trotted used walkd stood put_weight moved_about got_about getting_about
        """,
    "bad_use": "lame limping limped hopping three_legs",
    "nottouch": "warm cold hot cool swollen toasty nails fingers pink fingertips temperature",
    "give": "give paws lifted_his",
}

RULES = {
    "weight_bearing": """
    = full
    walks|walking|walked|camina|caminando|anda|runs ~ as_if_nothing|as_though_nothing|like_nothing|como_si_nada
    trotting|trots|trotando|trotar -<neg> -<limpword>
    apoya|pisa|usa|carga|apoyando ~ las|sus? cuatro|las_cuatro|las_4|sus_cuatro
    camina|caminando|anda derechito|derechita|parejito|parejita
    striding|strides|strode ~ out
    puts|putting|puttin|placing|plants ~3 foot|paw|leg ~ down ~2 square|squarely|flat|proper|properly|like
    foot|paw|leg ~2 square|squarely ~ on|down|like
    full|fully|normal|normally|evenly|equal|equally ~ <bear>
    <bear> ~3 full|fully|normal|normally|evenly|well|properly|great|confidently|completely|
        bien|completo|todo|total|parejo|fine|four|all|nicely|again -<neg>
    <bear> ~3 weight ~3 leg|legs|it|foot|paw -<slight> -<neg>
    placing|places|plants|planting ~2 foot|paw|leg|it ~3 step|down|flat|properly|normally|
        every|well
    on|using|uses|walks|walking|en|con|usa ~2 all|las|todas|sus ~ four|4|fours|cuatro ~ legs|
        paws|patas|patitas|feet?
    all fours
    walking|walks|walked|camina|caminando|runs|moving|trots|trotting|moves ~3 normal|normally|
        fine|well|great|good|sound|evenly|beautifully|perfectly|bien|perfecto|normalmente|
        perfectamente|nicely|parejo|lovely
    sound|soundness ~ at walk|trot|today
    sound as ~ pound|bell
    hes|shes|is|completely|totally sound -asleep -sleep -sleeping
    <bear> ~3 <legit> -<neg> -<slight>
    puts|putting|put|pone|apoya ~3 down|whole|toda|completa|entera ~ <good>
    foot|paw ~ down lovely|fine|well|properly|flat|firmly|beautifully|great|flat
    <neg> ~2 <limpword> -<barely>
    sin ~ <limpword>
    limp|cojera ~ gone|disappeared|desaparecio|quito
    ya apoya|pisa|usa|camina ~3 bien|completa|normal|toda
    = full fixed
    limp|limping|cojera ~ gone|vanished|disappeared
    no longer|ya_no ~ <limpword>
    = full @mobility @weight_bearing @walk
    derechito|derechita|parejito|parejita
    anda|va ~ <good>
    = full @mobility @weight_bearing
    flying|cruising|motoring|strutting -<neg>
    ^ <good> $
    ^ all|todo <good> $
    = partial fixed
    <neg> ~ <limpword> ~3 more|worse|mas|peor than|que
    = partial
    bears|bearing|puts|uses|put ~ weight|it ~2 when|if|only ~ standing|still|stood
    pone|apoya|asienta|baja ~3 de_a_poquito|poquito_a_poco|a_ratitos|de_a_poco|poco_a_poco|con_cuidado|con_miedo
    casi ~ ni|no ~ se ~ nota|ve -<wound> -<swell> -<bruiseword> +cojera|cojea|le
    barely|hardly ~ noticeable|tell|see|notice +<limpword>
    casi|almost|nearly ~ apoya|pisa|full|fully|normal|completely ~2 toda|completa|bien|weight|full
    ya casi apoya|pisa|usa
    <limpword>
    carries|holds|lifts|hops|hop|hopping|skips|lifted ~~ but|pero ~3 uses|using|puts|walks|bears|weight|touches ~ it|leg|on|down?
    three ~ legged|legs ~~ four|4|all ~3 walk|times|mostly
    <neg> ~ full|fully|all ~ weight
    partial|some|little|bit|half|light|lightly|partially|part|less|parcial|poco|poquito|algo|
        tantito ~3 <bear>|weight|peso
    <bear> ~4 little|bit|some|poco|poquito|tantito|partially|lightly|gingerly|sometimes|
        a_veces|parcial|occasionally|intermittently|half|50|algo|carefully|cuidado|
        mas_o_menos|ratos|partial -<neg>
    apoya|pisa|usa ~2 poco|poquito|tantito|medio|ratos|veces|algo
    medio ~ apoya|pisa|cojea|usa|camina
    on and off ~ weight|using
    puts|putting|put|sets|setting|getting ~ foot|paw|leg|it ~ down|floor|ground -<neg> -<good> \
        -<toetouch> -toe -toes
    <bear> ~5 first|primera time|vez
    <bear> ~~ but ~4 lifts|holds|carries|hops|skips|lift|hold|hop|carry|tucks|skip
    sometimes|a_veces|a_ratos|occasionally|mostly ~3 <bear>|limps|hops|lifts|holds|carries|
        apoya|levanta
    <bear> ~~ pero ~4 levanta|brinca|encoge|a_veces
    <barely> ~ <limpword>
    starting|started|beginning|empieza|empezo|comienza|empezando|learning|trying|begun ~3 \
        <bear>|apoyar|pisar|walk|usar|use
    favoring|favors|favouring ~3 leg|side|other
    still ~ limpy|lame|limping|limps|favouring
    uneven gait|weight
    lame|lameness ~ grade|grado
    shifts|shifting weight
    weight ~2 shifting|shifts|shifted ~3 other|good|sound
    50|half|60|70|75|80 percent? weight
    <bear> ~4 third|thirds|two_thirds|quarter|quarters|percent|% -<neg>
    pwb|partial_weight_bearing|partially_weight_bearing|semi_weight_bearing
    <barely> ~2 puts|bears weight
    50 ~~ 50
    = toe_touching
    dot ~~ carry one|on
    dot|dots and|n carry
    casi_no|apenas ~ pone|asienta|baja|usa|carga +pata|patita|pierna|la|leg
    toes|toe|dedos|deditos ~5 tapping|brushing|grazing|tocando|rozando ~3 floor|ground|suelo|piso
    <toetouch>
    ^ only|just|solo|nomas ~3 toes|toe|punta|puntita|dedos
    toe|toes|tips|punta|dedos|dedito|deditos|puntita ~4 touch|touches|touching|down|ground|
        floor|apoya|toca|pisa|suelo|piso -<nottouch>
    touch|touches|touching|taps|tapping|dips|dabs|rests|resting|puts|putting|apoya|toca|pone|
        pisa|asienta|places|sets|dots ~4 toe|toes|tips|punta|dedos|puntita|puntitas|tippy|
        deditos|tip -<nottouch>
    barely|just|only|lightly|apenas|apenitas|hardly|casi_no ~3 <bear>|touches|touching|toca|
        apoya|pisa|touch ~ it|leg|ground|floor|down|la?
    apenas ~2 apoya|pisa|toca|asienta|usa
    dots|dabs|taps|dips ~ it|leg|foot|paw ~ down|ground|floor
    on|en ~2 tiptoe|tiptoes|puntitas|puntas
    solo|nomas|only|just ~ apoya|pone|puts ~2 punta|puntita|toes|dedos
    = none
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
        recogida|alzada|doblada|high|raised|tucked|colgando|under|volando
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
    ^ not at all|yet
    ^ nada|nothing $
    ^ <neg> ~ yet|todavia $
    ^ lo|la <neg> ~ apoya|usa|pisa
    = none sudden
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
    ya no ~ apoya|pisa|usa|apoyo|la|quiere ~2 pata|patita|apoya|apoyar|pisa|usa|nada|leg|pierna
    was|were|had_been|been|estaba|venia ~2 <bear>|walking|walkin|putting|usando|apoyando|
        caminando ~~ now|ahora|today|hoy|this_morning|ahorita|but|pero ~4 <threeleg>|wont|
        cant|not|no|nothing|refuses|nada|none|holds|carries|doesnt
    apoyaba|usaba|pisaba|caminaba|andaba ~~ ya_no|no|nada|hoy_no
    went|gone|goes|paso ~ from|de ~4 <bear>|<legmove>|caminar|apoyar|usar|fine|normal|sound ~~ \
        not|none|nothing|nada|zero|cero|no
    from|de <bear>|<legmove>|caminar|apoyar|usarla ~~ to|a ~ not|none|nothing|nada|zero|no|cero
    since|desde ~5 nothing|nada|none|not_at_all $ +<slidword>
    acute|acutely|sudden ~2 nwb|<threeleg>
    de_golpe|de_pronto|de_repente|subitamente ~3 levanto|encogio|levanta|encoge|alzo|alza
    """,
    "mobility": """
    = better
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
    apoya|usa|pisa|cojea ~2 mas|mejor|menos ~ cada|que|hoy|pata
    cojea menos
    improving|getting_stronger|going_from_strength|leaps_and_bounds|from_strength|on_the_mend
    putting|puts ~ more weight
    more weight|steady|confident|stable
    getting there
    gets|getting|got|stands|rises|lies ~ up|down|stairs ~ easier|quicker|better|faster
    quicker|steadier|looser|smoother|stronger ~4 than|each|every -<swell>
    = better @mobility @weight_bearing
    apoya|apoyo|usa|uso|pisa|piso|cargo|asento ~ mas|mejor -<neg>
    miles|heaps|loads|worlds|streets|leagues|tons better
    less|menos $
    = better @mobility @weight_bearing @walk @mishap
    better|mejor|improving|mejorando|improved|mejoro|stronger|progress|mejorcito|mejorcita|
        avanzando
    = same
    no better|worse|change nor|no|or worse|better
    no_better_no_worse|no_worse_no_better|neither_better
    <neg> ~ <limpword> ~3 more|worse|mas|peor than|que
    walking|walks|walkin|moving|mobility|leg|camina|caminando|limp|limping|gait|anda|cojea|
        pata|about|getting_about ~4 <samey> -better -mejor
    <samey> ~2 limp|walking|mobility|leg|gait
    no_change|no_changes|no_difference|sin_cambios|sin_cambio ~3 leg|limp|walking|walk|
        mobility|walks|pata|moving|moves|camina
    <neg> ~2 worse|peor ~2 than|que|for ~ before|antes|ayer|yesterday|it
    = same @mobility @weight_bearing @walk @mishap
    <samey>
    no_change|no_changes|sin_cambios|sin_cambio|no_different
    = same @mishap
    no_change|no_different|sin_cambios|no_changes|<samey>
    = worse
    gait|walk|walking|leg|limp ~ gone|went ~ off|backwards|downhill
    retrocedimos|retrocedio|retroceder|retrocediendo
    mas tieso|tiesa|rigido|rigida|duro|torpe|lento -<neg>
    tieso|tiesa ~ mas|otra_vez
    va|vamos|anda|viene|fue pa|para atras
    patras|pa_atras|para_atras
    stiffer|slower|wobblier|weaker|lamer|creakier ~ getting|on|getting_up|in|at|when|to|going -<neg>
    taken|took|step|steps|gone|paso ~ a? step|steps|pasos? back|backwards|backward|atras
    backward|backwards step
    mas encogida|levantada|coja|floja ~ que|than
    lleva|trae|carries|holds ~2 mas|more|higher ~2 que|than
    walking|walks|moving|moves|mobility|leg|limp|limping|limps|gait|camina|caminando|anda|
        cojea|cojeando|pata|lame|lameness ~5 worse|peor|worsened|worsening|deteriorated|
        badly_than|harder|empeoro|worst|deteriorating -<neg>
    worse|peor|more|mas ~ lame|limping|limp|limpy|coja|cojo|wobbly|stiff|cojera|unsteady|
        hobbly -<neg>
    worse|peor on -<neg>
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
    """,
}

NEGATED = {
    "weight_bearing": {
        "full": "none",
        "partial": "full",
        "toe_touching": "none",
        "none": "full",
    },
    "mobility": {
        "worse": "same",
        "better": "same",
        "same": None,
    },
}

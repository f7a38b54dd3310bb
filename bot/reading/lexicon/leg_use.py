"""Use of the leg: full, partial, toes only (not used at all: leg_unused.py)."""

from __future__ import annotations

CLASSES = {
    "easygait": """
        like_nothing like_new like_normal like_never like_it_never as_if_nothing
        as_though_nothing like_its_nothing like_theres_nothing as_if_it_never
        like_there_was_never como_si_nada como_si_nunca como_nuevo como_nueva como_antes
        """,
    "skim": """
        skim skims skimming kiss kisses kissing graze grazes grazing brush brushes
        brushing scuff scuffs roza rozan rozando rozar acaricia
        scrape scrapes scraping dust dusts
        """,
    "attimes": """
        on_and_off off_and_on now_and_then now_and_again every_now_and_then
        every_now_and_again some_of_the_time most_of_the_time part_of_the_time
        half_the_time once_in_a_while from_time_to_time sometimes occasionally at_times
        here_and_there intermittently de_vez_en_cuando de_vez_en_vez de_cuando_en_cuando
        a_ratos por_ratos a_veces algunas_veces a_ratitos ratos mostly some_days
        """,
    "limpword": """
        limp limps limped limping limpin lame lameness hobble hobbles hobbling hobbled hobbly
        gimpy gimp gimping hitch favoring favouring favors favours favoured favored wobbly unsteady shaky_on cojea
        cojeando cojeo cojera coja cojo cojito cojita cojear renguea rengueando renquea
        renqueando renco renga rengo cojeaba limpy lopsided toe_dragging ginger gingerly
        renguera claudica claudicacion renguear tentative
        dot_and_carry dot_n_carry renqueo renqueaba rengueaba cojerita cojeadita
        renguito rengueo chuequea claudicando limpish hobbledy gammy
        """,
    "bear": """
        weight weight_bearing weightbearing weightbear bear bears bearing use uses using used
        walking_on standing_on stand_on stands_on walk_on walks_on walked_on walkin_on
        put_weight putting_weight puts_weight put_it_down putting_it_down puts_it_down apoya
        apoyo apoyando apoyar apoyado apoyarla apoyarse apoyaba pisa piso_con pisando pisar
        pisado usa usando usar usado carga cargando cargar asienta asentando asentar asienta_la
        recarga recargar recargando planta plantando plantar usarla apoyándola load loads
        loading
        wt_bearing wtbearing apolla apollar apollando apollo_la asienta_bien
        """,
    "threeleg": """
        three_legs 3_legs three_legged 3_legged three_legs_only tripod tripoding tripodding
        hopping hops hop hopped tres_patas 3_patas tres_patitas 3_patitas brinquitos
        brincando_en nwb non_weight_bearing nonweightbearing non_weightbearing 3_legger on_three
        on_3 three_pawed saltitos leg_up
        de_brinquito de_brinquitos a_brinquitos a_brincos de_brincos brincando_como hop_hop
        saltando_como a_saltitos de_saltitos en_tres
        tripawd tripodding three_wheeling three_legging patita_arriba pata_arriba
        a_la_pata_coja pata_coja a_la_patita_coja
        three_pegs three_pins three_wheels three_limbs on_three_pegs pegs
        """,
    "toetouch": """
        toe_touching toe_touch toe_touches toe_touched toetouching toe_tap toe_taps toe_tapping
        tip_toe tip_toes tiptoe tiptoes tip_toeing tippy_toes tippy_toe tiptoeing ttwb
        toe_touch_weight toes_down puntita puntitas de_puntitas la_puntita de_puntas de_punta
        toe_down toe_dips toes_touching dabs_it ttouch
        ballerina bailarina ballet toe_touch_only tippytoes tippytoe tippie_toes
        puros_deditos pura_puntita
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
    ^ leg|foot|paw|pata|patita down|abajo $
    foot|paw flat
    walking|walk|gait ~2 is|looks|seems ~ <good> -<neg>
    hes|shes|is|up on ~ it|leg|all_four ~2 all|always|whole ~ the? ~ time|day -licking -<neg>
    ya ~ la|le esta|anda|va|viene apoyando|pisando|usando|cargando|asentando -<neg>
    walking|walks|trotting ~ a treat|dream
    back to ~ normal|usual|himself ~ on|with ~ that|the|his|her leg
    foot|paw|leg ~ down ~2 every|each ~ single? ~ stride|step|time -other -few -second -third
    ambulatory ~ x4|on|all|4|four|without
    ambulatory -<neg> -non
    camina|anda|corre|va ~~ sin ~3 note|notarse|nota|noten
    walking|walks|walk|walkin|using|uses|moving|moves|trotting|running|goes|treats|anda|camina|usa|apoya|corre ~3 <easygait>
    <easygait> ~ camina|anda|apoya|pisa|corre
    <neg> ~ know|tell|guess|say ~ which ~2 leg|one|side|paw
    <neg>|never ~ know|guess|think|believe|tell ~~ op|operation|surgery|operated|hurt|injured|limped -<wound>
    solid|sound|100|steady|firm|firme|seguro|segura percent? ~2 on|en|con ~ it|leg|paw|pata|ella
    all|his|her|on|the|las|sus four|4|cuatro ~2 paws|feet|legs|patas|patitas ~2 on|down|hitting|flat|en
    four|4|cuatro ~2 on|en|down ~2 floor|ground|piso|suelo|deck
    four|4|cuatro ~ paws|feet|legs|patas|patitas ~ down|planted|square|flat|squarely|en|al ~2 floor|ground|piso|suelo?
    anda|camina|corre|para|va ~2 en|con|sobre ~ las|sus? cuatro|4 -tres
    puts|put|putting|plants|placing|places ~ it|foot|paw|leg ~ down ~2 every|each|always step|stride|time -other -few -second -third -two -three
    la|pata|patita ~2 pone|apoya|asienta|pisa ~2 cada|todos|siempre ~ paso|pasos|vez
    stands|standing|stood ~2 square|squarely|evenly|foursquare
    <bear> ~4 without|sin ~2 problem|problems|trouble|issue|issues|hesitation|hesitating|problema|problemas|miedo|limping|cojear|renguear|renquear|dudar|complaint
    foot|paw ~2 flat ~ on|to|every
    walks|walking|trots|moves|runs ~2 straight|square|even|level|true -for -to
    steps|stepping ~2 out like|nicely|well|properly|lovely|great
    trusts|trusting|confia ~ it|leg|en ~2 now|completely|fully|again|ya|totalmente
    apoya|pisa|usa|carga|asienta|planta ~2 completamente|totalmente|toda|todito|enterita|entera|fuerte|firme|ganas|confianza|perfecto -<neg> -mas
    la|pata|patita ~ apoya|pisa|usa|asienta|planta ~ toda|entera|completa|completita|con_ganas|con_confianza|normal|firme -<neg>
    using|uses|use ~ it|leg ~ 100|hundred|fully percent? -<neg>
    feet|paws|legs|patas ~3 all ~ working|down|going
    even|equal|same ~2 weight ~2 both|all|all_four
    cero|ni|zero <limpword> -more -less -mas -menos
    <neg> ~2 <limpword> -<barely>
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
    <neg> ~ see|notice|spot|detect|make_out|pick_up ~3 <limpword>
    <neg> ~ se ~ le ~ nota|ve|veo|noto ~ nada|cual|que ~2 pata|camina|caminar|andar|anda|cojera
    limp|cojera|limping|renguera ~3 gone|vanished|disappeared|cleared|desaparecio|quito|se_fue
    quito|fue|desaparecio ~2 cojera|renguera|renquera|cojerita
    without|sin ~2 <limpword>
    <neg> ~3 <limpword> ~2 at_all|anymore|any_more|whatsoever|nada|para_nada|now|left|ya
    limp|limping|cojera ~ gone|vanished|disappeared
    no longer|ya_no ~ <limpword>
    = full @mobility @weight_bearing @walk
    derechito|derechita|parejito|parejita -pata -patita -pierna -mueve
    anda|va ~ <good>
    = full @mobility @weight_bearing
    flying|cruising|motoring|strutting -<neg>
    ^ <good> $
    ^ all|todo <good> $
    = partial fixed
    <neg> ~ as|tan|so <limpword>
    casi ~ no|ni|nada <limpword>
    hardly|barely|scarcely ~ a? ~ <limpword>
    casi ~ ni|no ~ <limpword>
    <neg> ~ improvement|change|difference|mejoria|cambio|progress ~3 <limpword>
    <neg> ~ <limpword> ~3 more|worse|mas|peor than|que
    = partial
    echa|pone|carga|apoya|recarga ~3 mitad|tercio|algo|parte|poco|poquito ~ de|del? ~ el|su|peso
    dips|dip|dipping|sinks|drops|rolls|waddles|swagger|swaggers|sways ~3 bad|op|operated|left|right|one|sore|that|his|her ~ side|leg|hip|back
    leans|leaning|recarga|recargado|ladea|ladeado ~3 right|left|derecho|izquierdo|derecha|izquierda|one_side ~~ standing|stands|walks|walking|parado|para|camina|side|lado
    baja|bajar|pone|poner|put|puts ~ the|it|la? leg|pata|patita|down ~~ sube|levanta|encoge|picks|lifts|up_again|right_back
    puts|putting|carga|apoya|bears|bearing ~3 3|2|1 4|3|2 ~3 weight|peso
    <bear> ~4 <partly>|cuartos|mitad|tercio|tercios ~3 peso|weight
    trote|trotando|corriendo ~2 la? levanta|sube|encoge ~~ caminando|paso|camina|despacio ~2 apoya|usa|pisa|baja
    lifts|lifting|picks|picking|levanta|sube ~ it|leg|paw|la|up ~~ like|como|as_if ~3 hot|quemara|quema|burns|burning|lava
    forgets|forgot|olvida|olvido ~ to? ~ use|usarla|using|apoyarla|pisar
    hes|shes|is on ~ it|leg ~2 nearly|almost|most|mostly ~ all|of? time
    three|3|tres ~4 when|cuando|if|si ~~ four|4|cuatro ~3 when|cuando|if|si
    four|4|cuatro ~4 when|cuando|if|si ~~ three|3|tres ~3 when|cuando|if|si
    weight|down|uses|using|puts ~4 but|pero ~ not|no ~ fully|all|full|completely|100|much|todo|completo|del_todo
    drags|dragging|scuffs|scuffing|knuckles|knuckling|arrastra|arrastrando ~3 toes|toe|nails|uñas|dedos
    grade|grado 1|2|3|4|one|two|three|four 5? ~3 hind|leg|lame|lameness|fore|rear|lh|rh|lf|rf|l|r|mpi|mpd|cojera
    <limpword> 1|2|3|4 5|10
    weight|down|uses|using|puts ~3 but ~ not ~ fully|all|full|completely|100|much
    lightly|gingerly|carefully ~ putting|puts|placing|places ~ some? weight|it|foot|paw
    walks|walking|moves ~ stiff|stiffly ~ legged? ~ on|with|in
    first|few|couple|some ~ of? steps ~2 on|with ~ leg|it|foot
    apoya|pisa|usa ~2 casi siempre|todo
    brinca|salta|saltita ~2 cuando ~3 prisa|rapido|apurado|corre|emociona
    babying|babies|babied|nursing|sparing|protecting|cuidando|protegiendo ~2 it|leg|paw|foot|pata|patita
    hesitant|cautious|unsure|uncertain|insecure|wobbly|unsteady|shaky|timid|inseguro|insegura|desconfiado|desconfiada|precavido ~2 on|with|en|con ~ it|leg|foot|paw|pata|al? apoyar?
    <bear>|walks|puts|pone|baja|sets ~ <legit>? ~4 <attimes>
    <attimes> ~4 <bear>|puts|pone|baja
    <bear>|puts|down|walks ~ <legit>? ~~ picks|lifts|raises|tucks|hops|hop|skips|levanta|sube|encoge|alza ~2 when|if|cuando|si|corre|corriendo|runs|running|faster|trots|ratos|y? -<neg>
    <bear>|puts|down|usa|apoya|baja ~4 when|if|cuando|para|al|at|on ~3 walk|walks|walking|slow|slowly|stands|standing|despacio|despacito|caminar|camina|parado|quieto ~~ hops|hop|lifts|picks|skips|levanta|sube|encoge|carries|up
    corriendo|corre|trota|runs|running|trots ~2 la? sube|levanta|encoge|alza|lifts|hops|picks
    baja|pone|apoya ~3 cuando|si|al ~ camina|va|anda|caminar ~2 despacio|despacito|lento|lentito
    <bear> ~3 half|quarters|third|most|some|partly|<partly> ~2 time|times
    walks|using|uses|puts|camina|apoya ~ <legit>? ~4 every ~ other|few|second|third|so step|often|steps?
    puts|put|putting ~ it|foot|paw|leg ~ down ~3 other|few|second|third|most|some step|steps|time|times
    skip|skips|skipping|hop|hops|brinquito|saltito|brinca ~2 in|every|cada|each ~3 step|steps|stride|gait|pasos|paso
    every|cada ~3 step|steps|stride|pasos|paso ~3 skip|skips|hop|hops|brinca|brinquito|saltito|lifts
    does|little|da|da_un ~2 skip|skips|brinquito|brinquitos|saltito|saltitos ~3 <attimes>
    bunny|rabbit hop|hops|hopping|hopped
    takes|taking|shifts|shifting|keeps|keeping|quita ~2 weight|peso ~ off|de|a
    weight shifting|shifts|shift
    leans|leaning|recarga|recargado|recargando|carga|se_apoya ~4 other|good|sound|otra|buena leg|side|one|pata|patita?
    head ~ bob|bobs|bobbing|nod|nods|nodding -breathing -breath -breaths -panting -sleep -food
    nodding lame
    <neg> ~ 100|hundred|fully|completely|quite ~2 on ~ it|leg
    not|isnt|doesnt|no ~3 all|full|whole|todo|completo|total ~3 weight|peso
    not|isnt|doesnt|no ~ fully|completely|totally|entirely|del_todo ~2 <bear>
    uneven -<wound> -<stitchword> -<swell>
    walks|camina|anda|walking ~2 crooked|funny|wonky|chueco|chueca|chuequito|ladeado|ladeada|de_lado|de_ladito|sideways|lopsided -<neg> -<legonly>
    walks|camina|walking ~2 raro|rara|rarito|weird|oddly -<neg>
    apoya|pisa|usa|carga|baja ~3 mitad|miedo|miedito|cuidado|cuidadito|pena|cautela|desconfianza
    apoya|pisa|usa ~2 pero|y|but ~~ cansa|levanta|encoge|cojea
    <bear> ~2 50|60|70|75|80|cincuenta|sesenta|setenta|ochenta ~2 percent|por_ciento|ciento
    cuesta|costandole|batalla ~~ pero ~2 apoya|pisa|usa|camina
    puts|putting ~2 some|little|bit|half|more ~2 weight -<neg>
    using|uses ~ it ~2 more|less
    mobile|up_on_it|on_it but ~ <limpword>
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
        tantito ~3 <bear>|weight|peso -lost -lose -dropped -gained -gain -losing -bajo -subio -bajado
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
    resting|rests|standing|stands|descansa|descansando|descansa ~2 on|en|sobre ~3 toes|toe|tip|tips|punta|puntas|puntita
    casi ~ no|ni ~ la|lo ~ pone|asienta|baja|usa|carga|apoya|pisa
    barely|hardly|scarcely uses|using ~ it|leg|foot
    claws|claw|toenails ~3 touch|touching|<skim>|down|reach|reaching|ground|floor -<nottouch>
    only|just|merely ~ rests|resting|rest|hovers|perches|props it|leg|foot|paw -<bandageword>
    arrima|roza ~ nomas|apenas|tantito|la|al|el ~ piso|suelo
    nomas|apenas|solo ~ la ~ arrima|roza|posa
    puts|put|putting|touches|touching|touch|sets|rests|pops|dots|dabs|foot|toe|paw ~3 down ~~ <neg> ~4 weight
    toca|pone|baja|apoya|asienta ~3 pero ~ <neg>|sin ~3 peso|carga|cargar
    touches|touching|pops|popping|dots|dabs|taps|tapping|dips|dipping|touch ~ it|leg|foot|paw ~ down|ground|floor -<neg>
    touching|touches|hits|hitting|toca|pisa ~2 ground|floor|piso|suelo ~~ barely|just|only|apenas|nomas
    <skim> ~3 floor|ground|grass|carpet|piso|suelo|tierra -incision -<wound>
    toes|toe|nails|paw|foot|tip|dedos|uñas|unas|nails ~3 <skim>
    on|en|with|down ~2 tip|tips|end|point|puntas|punta ~ of|de ~2 toes|toe|foot|nails|paw|dedos|pie
    end|tip|tips|front|edge ~ of ~2 foot|paw|toes|toe ~2 down|touches|touch|only
    only|just|solo|nomas|nada_mas|puro|puros|pura ~4 tips|tip|toes|nails|punta|puntita|dedos|deditos|uñas|uñitas|unas -<nottouch> -swollen
    pone|pisa|apoya|toca|asienta ~3 uñitas|unitas|uñas|deditos|puntita|punta|dedos -corte -cortar
    for|para ~ balance|equilibrio|equilibrarse|equilibrar|steady ~ herself|himself?
    la|pata|patita ~ pone|baja|apoya|asienta|pisa ~2 tantito|apenas|apenitas|poquitito
    apenas|apenitas|casi_no|apenas_si ~2 la|lo ~ pone|baja|apoya|pisa|asienta|usa|planta
    apenas|apenitas|barely|just|just_about ~2 toca|roza|touches|touching|grazes ~3 suelo|piso|ground|floor
    la|pata|patita ~ baja|apoya|pone ~3 solo|nomas|nada_mas ~ para|cuando|al
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
    = full fixed agent
    <neg> ~ see|notice|spot|detect|make_out|pick_up|veo|noto ~3 <limpword>
    <neg>|never ~ know|tell|guess|say|notice ~~ which ~2 leg|one|side|paw
    <neg> ~ se|le ~ nota|ve|veo|noto ~~ cual|que ~2 pata
    = full @asked-weight_bearing @asked-mobility
    ya|la|si ~ la? pisa|usa|apoya|pone|asienta|planta ~ siempre|bien|normal|toda|completa|al|en? ~ piso|suelo? $ -<neg> -<slight> -<barely> -casi
    bearing weight $ -<neg> -<slight> -not
    """,
}

NEGATED = {
    "weight_bearing": {
        "full": "none",
        "partial": "full",
        "toe_touching": "none",
        "none": "full",
    },
}

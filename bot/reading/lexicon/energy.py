"""Energy: bright, quiet, listless."""

from __future__ import annotations

CLASSES = {
    "thriving": """
        como_lechuga fresco_como fresca_como como_reloj como_relojito relojito ahi_la_llevamos ahi_vamos viento_en_popa requetebien requete_bien de_perlas de_lujo como_pez_en como_rey como_reina como_principe como_princesa de_pelos sin_pendiente sin_pendientes todo_marcha marchando_bien a_todo_dar a_toda_madre al_puro_cien hecho_un_toro hecha_una_reina como_roble como_coco fuerte_como_roble ni_se_nota_que ni_parece_que nada_nuevo nada_que_reportar todo_sereno todo_en_calma feliz_y_contento vivito_y_coleando coleando mejor_que_nunca mejor_imposible tan_campante campante como_uva en_su_salsa como_los_grandes lo_mismo_de_siempre dando_guerra
        not_too_shabby living_the_dream hunky_dory smooth_sailing cool_as_a_cucumber same_old_same_old same_old more_of_the_same all_systems_go reporting_for_duty ship_shape shipshape in_the_pink chipper firing_on_all_cylinders thumbs_up right_as_ninepence ninepence all_quiet nothing_exciting nothing_wild nothing_new_here nothing_of_note no_dramas nothing_out_of_the_ordinary living_his_best_life living_her_best_life living_like_a_king sunbathing loving_life having_a_ball snug_as_a_bug in_his_element in_her_element usual_self pain_in_the_bum tickety_boo no_news_is_good_news cool_beans textbook plain_sailing going_swimmingly swimmingly up_to_his_tricks up_to_her_tricks up_to_no_good ruling_the_roost king_of_the_castle queen_of_the_house good_as_new happy_camper top_dog
        """,
    "bienbad": """
        bien_agitado bien_agitada muy_agitado muy_agitada bien_inflado bien_inflada
        muy_inflado muy_inflada bien_ido bien_ida bien_palido bien_palida muy_palido
        muy_palida
        bien_caliente bien_feo bien_fea bien_hinchado bien_hinchada bien_mal bien_malo
        bien_mala bien_triste bien_decaido bien_decaida bien_raro bien_rara bien_frio
        bien_fria bien_rojo bien_roja bien_inflamado bien_inflamada bien_cojo bien_coja
        bien_renco bien_renga bien_tieso bien_tiesa bien_apagado bien_apagada
        bien_aguitado bien_aguitada bien_enfermo bien_enferma bien_agotado bien_agotada
        bien_cansado bien_cansada bien_asustado bien_asustada bien_adolorido
        bien_adolorida bien_dormido bien_dormida bien_gordo bien_flaco bien_sucio
        bien_sucia bien_mojado bien_mojada bien_flojo bien_floja bien_aguado bien_aguada
        bien_guango bien_guanga bien_malito bien_malita bien_inquieto bien_inquieta
        bien_tirado bien_tirada muy_caliente muy_feo muy_fea muy_hinchado muy_hinchada
        muy_mal muy_malo muy_mala muy_triste muy_decaido muy_decaida muy_raro muy_rara
        muy_frio muy_fria muy_rojo muy_roja muy_inflamado muy_inflamada muy_cojo
        muy_coja muy_renco muy_renga muy_tieso muy_tiesa muy_apagado muy_apagada
        muy_aguitado muy_aguitada muy_enfermo muy_enferma muy_agotado muy_agotada
        muy_cansado muy_cansada muy_asustado muy_asustada muy_adolorido muy_adolorida
        muy_dormido muy_dormida muy_gordo muy_flaco muy_sucio muy_sucia muy_mojado
        muy_mojada muy_flojo muy_floja muy_aguado muy_aguada muy_guango muy_guanga
        muy_malito muy_malita muy_inquieto muy_inquieta muy_tirado muy_tirada
        """,
    "good": """
        bacan chevere pura_vida brutal_de_bien de_perlas fenomenal fenomeno estupendo
        estupenda de_pelos chingon filete
        """,
    "bright": """
        diez_puntos de_diez full_of_it brand_new a_new_dog himself_today like_new bright brighter perkier perky bouncing_off_the_walls cheerful cheery playful lively
        active alert bouncy energetic chirpy chipper chatty himself_again herself_again
        normal_self usual_self old_self own_self happy_self cheeky_self good_spirits
        great_spirits high_spirits full_of_beans full_of_life full_of_energy full_of_himself
        waggy wagging_tail tail_wagging wagging_his_tail wagging_her_tail wags_his_tail
        wags_her_tail tail_going bar_and_alert happy_as bright_eyed bushy_tailed in_good_form
        in_great_form in_fine_form spirited sparky right_as_rain fit_as_a_fiddle up_to_mischief
        happy content alegre contento contenta animado animada activo activa juguetón jugueton
        juguetona despierto despierta alerta feliz mueve_la_cola moviendo_la_cola
        moviendo_su_cola de_buenas de_buen_animo muy_vivo vivaracho vivaracha
        energia_normal energico energica inquieto_normal meneando_la_cola meneando movio_la_cola
        colita_moviendo menea_la_cola buen_humor bien_animado
        up_and_about out_and_about up_and_at_it mischievous boisterous bubbly zippy
        peppy frisky feisty sassy pepped_up raring bouncing_about full_of_mischief
        full_of_the_joys mad_as_a_box happy_chappy happy_camper good_mood great_mood
        fine_mood sunny_mood smiley grinning inquisitive como_nuevo como_nueva re_pilas
        muy_pilas pilas_puestas a_mil al_100_de_animo despabilado despabilada vivaz
        entusiasta entusiasmado entusiasmada alborotado alborotada coqueto coqueta
        chispa_de_siempre saltarin espabilado espabilada buen_animo
        buenos_animos happy_dog happy_girl happy_boy jolly merry spritely sprightly
        upbeat on_top_form top_form

        haciendo_travesuras haciendo_de_las_suyas haciendo_diabluras
        parrandero parrandera fiestero fiestera tail_like_a_helicopter
        tail_like_a_propeller helicopter_tail
        happier livelier cheerier chirpier bouncier more_himself more_herself
        more_like_himself more_like_herself
        up_and_at_em right_as_ninepence full_of_piss full_of_vinegar que_se_sale
        """,
    "quietword": """
        down_in_the_dumps in_the_dumps pachucho pachucha mustio mustia chilling chillin chill under_the_weather peaky not_on_form mimoso quiet quieter subdued sleepy sleepier drowsy groggy dozy dopey woozy tired
        sleeping_a_lot sleeping_more mellow sedate sedated spaced_out spacey zonked
        sleeping_lots less_active bit_flat a_bit_flat bit_down bit_off off_colour off_color
        slept_all sleeping_most quietish dazed doped loopy stoned high_as_a_kite mopey
        adormilado adormilada dormilon dormilona somnoliento somnolienta cansado cansada
        tranquilo_de_mas calladito calladita apagadito apagadita adormecido adormecida atontado
        atontada mareado mareada borrachito borrachita sedado sedada amodorrado amodorrada
        modorro modorra duerme_mucho dormidito dormidita sonoliento
        medio_dormido medio_dormida zombi apachurrado tristón triston tristona triste sad grogui
        drugged hungover knackered pooped_out shattered
        crashed_out conked_out flaked_out zonked_out sparked_out
        seems_down looks_down feeling_down
        worn_out tuckered tuckered_out moping mopes mopey sulking sulks sulky sulk
        feeling_sorry_for_himself feeling_sorry_for_herself lazing napping naps
        dozing low_key lacking_his lacking_her taking_it_easy down_in_the_mouth glum
        gloomy blah meh_today sluggish_ish laid_back snoozy yawning not_much_go callado
        callada mas_callado mas_callada tristecito tristecita quietecito quietecita
        con_sueno con_sueñito bajito_de_animo medio_ido medio_ida medio_perdido
            desanimado desanimada con_flojera flojera
        flojo_de_animo cansadito cansadita atarantado atarantada turulato turulata
        embobado embobada alelado alelada apachurradito chipil mohino mohina enchipilado
        planchado planchada como_borracho quietud medio_zombi medio_grogui abombado
        abombada
        drogado drogada not_firing_on_all not_firing snoozing_a_lot bit_blah
        away_with_it sad_sack dopado dopada
        clingy
        aguitado aguitada aguitadito aguitadita en_las_nubes en_la_luna
        explotado_de_cansancio
        """,
    "lethargicword": """
        droopy lethargic lethargy listless lifeless floppy weak weakness very_flat flat_as
        depressed obtunded no_energy zero_energy withdrawn dull apathetic lacklustre
        like_a_rag_doll wet_dishcloth rag_doll ragdoll limp_as prostrate sluggish no_life
        wiped_out very_weak letargico letargica letargo decaido decaida decaimiento desganado
        desganada apatico apatica apagado apagada aplatanado aplatanada debil debilidad
        sin_fuerza sin_fuerzas sin_energia sin_animo sin_animos aguadito aguadita achicopalado
        achicopalada tirado tirada desvanecido_poco deprimido deprimida postrado postrada
        echado_todo flojito flojita guango lánguido languido languida agotado agotada exhausted
        bajoneado bajoneada caido_de_animo caida_de_animo como_trapo
        without_strength no_strength sin_ganas_de_nada no_puede_con_su_alma
        aletargado aletargada decaidisimo decaidisima sin_chispa sin_vida sin_pilas
        desinflado_de_animo crook_as listlessness moribundo_no apagadisimo apagadisima
        debilucho debilucha debilísimo hecho_bolsa hecha_bolsa hecho_mierda hecha_mierda
        hecho_polvo hecha_polvo hecho_un_trapo hecha_un_trapo hecho_trapo hecha_trapo
        hecho_pomada hecho_garras hecho_percha echo_bolsa echo_mierda echo_polvo
        hecho_un_guinapo no_da_mas no_da_para_mas no_le_quedan_fuerzas desganadisimo
        alicaido alicaida abatido abatida mustio_mustio caidito caidita
        dead_to_the_world like_death_warmed_up half_dead at_deaths_door bombed_out
        ko_total knackered_looking poorly_looking desguanzado desguanzada
        desmejoradisimo fundido fundida muertito_en_vida
        lack_lustre lackluster lack_luster
        apagadisima apagadisimo decaidota
        """,
    "brightcolour": """
        bright_red bright_pink bright_yellow bright_green bright_orange bright_light
        bright_blood bright_fresh by_himself by_herself wet_himself wet_herself hurt_himself
        hurt_herself to_himself lift_himself lift_herself bit_himself getting_himself
        licking_himself licking_herself biting_himself scratching_himself throws_himself
        peed_himself
        """,
    "mishapwords": "cama sillon escalera escaleras puntos cono venda",
    "pillhide": "pill pills pastilla tablet cheese",
}

RULES = {
    "energy": """
    = normal
    zoomies|zooming|zoomed|zooms -<neg> -before
    chasing|chases|batting|batted|pouncing|pounces ~ her|his|the|a|at|my|on ~3 mouse|toy|ball|string|feather|laser|tail|mug|cup|glass|pen|curtain|feet|toes|shadow -<neg>
    alive and|n kicking|well
    very|much|so ~ alive -<neg>
    same|usual|normal|total|complete|absolute|little|proper|old ~ old? ~ lunatic|nutter|nutcase|maniac|loon|gremlin|goblin|tornado|whirlwind|rascal|scamp|livewire|hooligan|menace
    as|so lively|bright|cheeky|daft|bouncy|playful|happy|mad|bonkers ~ as ever|always|usual|normal
    back from the dead
    more energy|life|bounce ~ than me|us|i|him|ever
    eating|up|playing|sleeping and|n daft|playful|playing|wagging|cheeky|bouncy|happy
    all|everything is? ~ well $
    stealing|steals|nicking|nicked|pinching|robbing|raiding|begging ~ for? ham|toast|cheese|biscuits|treats|food|chicken|bacon|sausages|cushions|slippers -<neg>
    attention seeking|seeker|hog
    wants|wanting|demanding|demands|asking|begging|after ~ for? cuddles|scratches|belly_rubs|tickles -<neg>
    into everything
    pide|pidiendo|exige|busca|buscando|quiere|queriendo ~2 mimos|carino|caricias|apapacho|apapachos|juego|jugar|pelota|calle|cosquillas|fiesta -<neg>
    tanto|puro|quiere|quiso|anda|puros ~ de? ~ jugar|jugando|juego|brincos -<neg>
    vivito|vivita|vivitos ~~ coleando
    anda|esta|sigue|va|amanecio ~ al|a cien|100|mil|full|tope
    loco|loca|loquito|loquita ~ de contento|contenta|alegria|felicidad|gusto
    de|haciendo|hace|hizo ~ sus? travesuras|diabluras|maldades|desastre|desastres
    panza|patas arriba ~~ pidiendo|jugando|ronroneando
    ronronea|ronroneando|amasando|ronroneo -<neg>
    persigue|persiguiendo|corretea|correteando|cazando ~2 su|la|el|las|los|una ~ pelota|cola|raton|ratoncito|moscas|juguete|bolita|laser|sombra -<neg>
    <thriving> -<neg> -<wound> -<legword> -<swell> -<bandageword> -<food> -<poo> -<pee>
    a|bien|muy|echado|acostado|echadita|echadito gusto|rico $ -<coneword> -<food>
    tanta|so_much|tons_of|loads_of|heaps_of energia|energy|pila
    more ~ go|life|spark|energy|oomph|bounce|pep|beans in ~ him|her
    trae|tiene|con ~ mas|mucha|toda|buena ~ pila|pilas|chispa|cuerda -<neg>
    got|has|have|found ~ his|her ~ mojo|spark|sparkle|bounce|cheek|zip ~ back
    recupero|recobro|recuperado ~ su|la|el ~ chispa|energia|animo|alegria|brillo
    spring in his|her step
    different|new|changed ~ dog|cat|animal|boy|girl|pup -<food>
    parece|es|esta|anda|hecho ~ otro|otra ~ perro|perra|perrito|perrita|gato|gata
    hes|shes|is|was|been bouncing -<perch>
    got|gets|came|comes|jumped ~ up? ~ to ~ greet|meet|say_hello -<neg>
    tail ~2 like ~ a? helicopter|propeller|windmill|metronome|rotor|mad|crazy|whip
    being|such|right|proper|little|total ~ a|an|the|his|her|usual? ~ pest|nuisance|menace|terror|brat|monster|imp|clown|goofball|comedian|handful|diva|madam|pickle|monkey -<coneword>
    bring|brings|bringing|brought|fetched|fetching|carrying ~ me|us ~3 ball|toy|toys|lead|leash|slipper|slippers|teddy|sock|things
    barks|barking|barked ~ at ~3 mailman|postman|everything|everyone|door|doorbell|window|neighbours|neighbors|birds|cat|squirrels|bin
    nosy|nosey|naughty|cheeky|sassy|rude|noisy|greedy|daft|silly|loving|affectionate|cuddly ~ as ~ ever|always|usual|normal
    cant|hard|impossible|difficult|struggling|struggle|tough|trouble|cannot ~ to? keep|keeping him|her|<patient> ~ quiet|still|calm|rested|contained|in|settled
    mad|desperate|dying|itching|keen|wanting|begging ~ to ~ be? go|get|play|run ~ out|outside|walk|walkies
    es|esta|sigue|anda|vuelve|ya ~2 el|la de_siempre
    ^ el|la de_siempre
    anda|esta|sigue|de|bien|muy|re|super|todo ~ de? travieso|traviesa|latoso|latosa|encimoso|encimosa|metiche|necio|necia|lata|loquito|loquita|tremendo|tremenda -<coneword>
    da|dando|dar|dio ~ lata|guerra|lora|vueltas_de_gusto -<coneword>
    recibio|recibe|recibieron ~3 puerta|cola|contento|fiestas|brincos
    sigue|anda|persigue|camina ~ tras|detras|atras ~ de? mi|nosotros|nos|todos
    ladra|ladrando|ladro|ladrandole ~ a|al|como|toda ~2 cartero|timbre|vecino|siempre|perros|puerta|todo|gente|todos
    <neg> ~ hay ~ quien ~ lo|la ~ pare|aguante|calme
    full of himself|herself|sass|fun
    game for
    hes|shes|is|he|she|seems|acting|back ~ his|her|a? ~ total|complete|usual|normal|regular|silly|goofy|happy|cheeky|daft|lovely ~ self|dog|cat|boy|girl|lad
    energy|energia|animo|animos|mood ~2 buena|buenos|bueno|normal|bien|alto|altos|arriba|excelente|great -<neg>
    his|her usual|normal|old ~ self
    happy as ~ larry|clam|pig|sandboy|anything|ever
    patient|pt|bright ~ bar|alert
    ^ bar $
    es|volvio|vuelve|parece|siendo ~ a? ser? ~ el|la|ella ~ de antes|siempre
    travieso|traviesa|latoso|latosa|necio|necia|inquieto_como|encimoso|tremendo ~ y|como|de|todo|siempre
    perked|perks|brightened ~ up -<neg> -ears
    sparkling|cracking|flying|top|fine|great|good ~ form|spirits|nick
    ^ el|la|the perro|perra|perrito|perrita|gato|gata|gatito|gatita|dog|cat <good> $
    bossing|bullying|terrorising|terrorizing|annoying|mithering|rude|bothering ~3 about|cat|dog|everyone|kitten|kids|us
    anda|esta|sigue|estaba|amanecio|ella|el|corre|juega ~2 como_si_nada
    seems|is|hes|shes|quite|completely|almost|like|very|totally ~ himself|herself \
        -<brightcolour>
    back to himself|herself
    <bright> -<brightcolour>
    <be>|in ~3 <bright> -<brightcolour>
    back to ~ himself|herself|normal|self|usual|old
    energy|energia|animo|spirits|mood|demeanour|demeanor ~3 <good>|up|high|back|alto|alta
    <good>|lots|plenty|loads|mucha|buena|full ~ of? energy|energia|animo|spirits
    wagging|wags|wag|wagged ~3 tail
    tail ~2 wagging|wag|going|wags|up
    mueve|moviendo|movio|mueve ~2 cola|colita|rabo
    wants|trying|quiere ~2 play|jugar
    playing|plays|played|juega|jugando|juego
    otherwise|apart_from_that|else ~3 <good>|bright|happy
    <good>|bright|happy ~ otherwise
    por lo demas ~3 <good>
    doing ~2 <good> -<neg> -<legword> -<wound>
    ^ bar $
    in himself|herself|itself ~4 <good>|<bright>
    greeted|greets|greeting|saludo|recibe ~3 me|us|door|puerta
    had|having ~2 <good> ~ day|night|morning|evening|weekend
    but|pero|otherwise ~2 he|she|ella|dog|cat|patient|perro|gato ~ is|esta|seems <good> $
    but|pero|otherwise ~2 hes|shes <good> $
    con ~ energia|energias|animo|ganas_de_jugar -<neg>
    mad to be|get|go
    wants|quiere|queriendo ~ to? play|jugar -<neg>
    up and about|barking|at|doing|playing|raring|dressed|looking
    raring to
    wagging|wags ~2 at|everyone|everybody|away|tail|like|to
    as lively|happy|bright
    ours|mine ~~ <good>|bright
    dog|cat|patient|perro|gato|perrita|gatita is|esta|seems|anda ~2 <good> $
    = normal @asked-general
    ^ peachy|golden|stellar|superb|marvellous|marvelous|brill|ace|cushty|mint|tops|groovy|dandy|jolly|splendid|mustard|solid|sweet|mellow|chill $
    ^ chévere|bacano|bacan|macanudo|fenomenal|estupendo|estupendamente|divino|divina|maravilloso|tranqui|tranquilo|contento|feliz|sereno $
    ^ hes|shes|dogs|cats|otherwise|and|but ~ just|doing|all|otherwise|back? ~ <good> ~ now|today|after|though|again|anyway|thanks|ok? $ -<neg>
    ^ he|she|dog|cat|ours|mine|this|patient is|seems|looks|does ~ just|doing|all? ~ <good> ~ now|today|after|though|again|anyway|thanks? $ -<neg>
    ^ el|ella|este|esta|mio|mia|pero ~ perro|perra|gato|gata|mio|mia|va|esta|anda|sigue|si? ~ va|esta|anda|sigue? ~ <good> ~ hoy|ahora|gracias? $ -<neg>
    ^ va|esta|anda|sigue ~ <good> ~ hoy|ahora|gracias? $ -<neg>
    = normal !@asked-incision !@asked-mobility !@incision !@swelling !@bandage !@stool !@urine \
        !@bruising
    seems|looks|acts|acting|se_ve <good> $
    = normal @general @asked-general
    no_complaints|no_complaint|cant_complain|not_a_bother|not_a_bad_day|bored|bossy|cheeky
    not ~ bad ~ day|night|today|all
    = normal @general @none
    todo|all bien|good|well|fine|normal|tranquilo -<neg>
    ^ sin_novedad|sin_novedades|nothing_to_report
    ^ hes|shes|doing|all|everything|todo|esta|anda|sigue|amanecio|se_ve ~2 <good> $
    he|she|dog|cat|patient|ella is|was|seems|looks|feels|doing|esta|anda|sigue ~2 <good> $
    anda|esta|sigue|amanecio|va ~ <good> -<neg> -<legword> -<wound> -<bienbad>
    <good> ~ in himself|herself
    con pila|pilas|toda_la_pila|mucha_pila
    full of ~ joys|mischief|chat|devilment|the_joys
    is|hes|shes flying
    flying form|it
    skipping|bouncing|prancing ~2 like|about|around -<bear>
    in ~2 form|fettle|spirits +<good>
    = quiet
    anda|esta|amanecio ~ flojo|floja|flojito|flojita|huevon|huevona -<poo> -<legword> -<stitchword> -<bandageword> -<bellyword> -estomago
    <neg> ~ acting|seeming|looking|behaving ~ right|normal|normally|herself|himself -<legword> -<wound>
    only|just|solo|nomas|nada_mas|puro ~ wants|want|quiere|queriendo ~ to? sleep|nap|snooze|dormir|lie|echarse|cuddle -dark -corner -rincon -oscuro
    couch potato
    puro echado|echada|acostado|acostada
    anda|esta|sigue|lo_veo|la_veo|amanecio ~ medio|algo|poco|tantito|poquito ~ malito|malita|enfermito|maluco
    energys|energy|energia|animo|animos ~2 low|down|baja|bajo|bajita|bajito|bajos
    tiene|trae|con|tenia ~ mucho? sueno|flojera|weba|hueva -<neg>
    muy|medio|sigue|anda|pasa|mas|puro ~ dormido|dormida
    ^ esta|ahorita|ahora|ya|sigue ~ dormido|dormida|durmiendo $
    anda|esta|muy|bien ~ muy? pegajoso|pegajosa|mimoso|mimosa -<poo> -<wound>
    hes|shes|he|she|bit|being|feeling|very|is ~ lazy -sunday -day -morning
    <slight>|medio|algo|bit|little|slightly|touch|tad|kinda|sorta|somewhat|kind_of|sort_of ~ <lethargicword>
    <neg> ~ esta|anda|es|lo_veo|la_veo ~ como_siempre|igual_de|tan ~ animado|animada|activo|activa|contento|contenta|alegre|juguetona|jugueton
    <neg> ~ esta|anda ~ como_siempre
    <neg> ~ tan|muy ~ animado|animada|activo|activa|contento|contenta|alegre|jugueton|juguetona|vivo|despierto|despierta
    less ~ active|lively|energetic|playful|bouncy|chirpy|perky ~ than ~2 normal|usual|before
    bit|little|touch ~ less ~ bouncy|lively|active|playful|energetic|chirpy ~ than? normal|usual?
    <neg> ~ much ~ energy|oomph|go|bounce|pep|sparkle
    <neg> ~ much ~ life ~ in
    sleeps|sleeping|slept|duerme|dormido ~3 most|casi ~ of|todo ~2 day|time|dia|tiempo
    seems|bit|little|feeling ~ down|low ~ today|tonight|lately
    low ~ in ~ himself|herself
    lacking|lost|missing ~2 sparkle|bounce|spark|mojo|oomph
    anda|esta|lo_noto|la_noto|lo_veo|la_veo|sigue ~2 quieto|quieta|calladito|bajito|bajita|bajon -<neg>
    con poca|poco|menos ~ energia|pila|pilas|animo|ganas
    duerme|duermen|durmiendo ~2 bastante|mucho|harto|resto|montones|siesta
    off today|tonight -<food> -<coneword> -<limpword> -on_and_off -on -<bear>
    qar
    <quietword>
    quiet|quieter|sleepy|tired
    sleeping|sleep|sleepy|duerme|duerma|dormir|tired|quiet ~ so|this|that|tanto|tan ~ much|
        tired?
    sleeping|sleeps|slept|sleep|duerme|durmiendo|dormido|dormir ~2 a_lot|more|mostly|most|
        mucho|lots|all_day|mas|loads|day|todo|constantly
    less|low|lower|poca|menos|not_much ~2 energy|energia|active|lively|animo|activo|activa
    bit|little|un_poco|slightly|poco ~ lethargic|flat|dull|weak|decaido|decaida|apagado|
        apagada|off
    slightly|bit|little off|subdued
    slightly|bit|little ~ subdued
    <neg> ~2 quite|fully|completely|totally himself|herself|self
    <neg> ~ as lively|active|playful|bright|energetic|bouncy|perky
    <neg> ~2 his|her usual|normal|bouncy|cheerful self
    <neg> ~ himself|herself
    no es|esta el|la mismo|misma|de_siempre
    menos activo|activa|juguetona|jugueton
    off|not_in form|sorts|his_form|her_form
    off his|her form|sorts|game
    out of sorts
    nods|nodding|dozing|doze|dozes off|on
    vuelve a dormir
    se ~ la pasa durmiendo|dormido|dormida
    = lethargic
    flat|dull|droopy|mopey|lifeless ~ as ~ a? pancake|anything|dishwater|ditchwater
    off|down ~ all|the whole? ~ day|week ~~ wont|doesnt|not|hasnt -<food>
    no ~ quiere|quiso ~ ni? ~ jugar|levantarse|pararse|salir ~ ni|en_todo|desde
    todo|toda ~ el|la ~ dia|manana|tarde|noche ~ tirado|tirada|echado|echada|botado|botada
    aguitadisimo|aguitadisima|tristisimo|tristisima|chipilisimo
    sin ~ moverse|levantarse ~ desde|en_todo|todo
    super|really|very|so|right|properly down ~ in|today|and|since|lately|$ -go -going -<swell> -<wound> -lie -lay -sit
    ignores|ignoring|ignored ~ his|her|the|all|me|us|every ~2 ball|toy|toys|treats|everyone|everything|us|squirrels|doorbell|lead|leash|favourite|favorite
    couldnt|doesnt|dont|not care|bothered ~ less|about ~ anything|about|$
    there|around|about|just like ~ a lump|log|statue|doormat|rug|slug|blob|potato -sleep -slept -sleeping -snor*
    botado|botada|echadote|echadota|aplastado ~2 todo|desde|ahi|en -<poo> -<coneword>
    no|ni ~ reaction|interest|response ~ to|in visitors|doorbell|toys|treats|walk|walks|anyone|food|company
    <neg> ~ own|himself|herself|his_usual|her_usual ~~ flat|lethargic|listless
    ni|no ~ se ~ levanta|para|mueve|inmuta ~ a|para|cuando|con ~ saludar|recibir*|comer|jugar|llego|llegue|timbre
    no|ni ~ le_interesa|hace_caso ~ nada|a_nada|de_nada $
    sin ~ ganas|animo|animos ~ de|para? ~ nada|jugar|levantarse|moverse|salir|vivir|comer
    perdio|perdido ~ la|el|su ~ chispa|brillo|animo|alegria|energia
    just|only ~ laid|lain|lies|lying|laying ~ in|on|under ~2 mat|rug|blanket|bed|sofa|couch|cushion|floor ~2 since|all
    echado|echada|tirado|tirada ~4 desde|todo_el_dia -<poo>
    just|only|nomas|nada_mas|solo ~ stares|staring|mira|mirando|viendo ~ at|a|fijo
    wont|doesnt|refuses|wouldnt ~ to? move|budge|get_up|stir|stand_up $ -<legword>
    queda ~ viendo ~~ no ~ se ~ mueve
    zero_interest|no_interest|little_interest ~ in ~ getting|moving|walking|standing|playing
    <neg> ~ gotten|got|getting ~ out ~ of ~ bed|basket|crate
    no ~ se ~ ha ~ parado|levantado|movido ~8 dia|hoy|manana|cama
    nada|cero|sin ~ de? ~ ganas ~ de ~ levant*|mover*|parar*|caminar
    <neg> ~ bothering|bother|bothers ~ with|about ~ anything|anyone|us|me|toys
    no ~ ha ~ salido|sale|salio|asomado ~ de ~ atras|abajo|debajo|detras|bajo -<legword>
    hasnt|wont|not|doesnt|refuses ~2 come|came|coming ~ out ~ from ~ behind|under|beneath|underneath
    <neg> ~ want|wants|quiere ~ to? ~ do|hacer ~ anything|nada|a_thing -<ingest>
    hasnt|not|wont|doesnt|no|wouldnt|refuses ~2 shift|shifted|move|moved|budge|budged|stir|stirred|leave|leaving|left|rise ~3 blanket|mat|rug|cushion|basket|duvet|kennel|corner|spot|pillow -<coneword>
    llamo|llaman|hablan|silbo ~~ ni|no ~ voltea|mira|caso|inmuta|asoma
    <neg> ~ want|wants|wanting|wanna|feel|feels|wanted ~ to? move|budge|stir|rise|shift|stand|get_up -<legword>
    <neg> ~ even? ~ look|looks|looked|looking ~ up -<food>
    <neg> ~ react|reacts|respond|stir|stirred|budge|budged|move|lift ~~ when|to|for ~3 home|door|doorbell|came|come|walk|food|leash|lead|treats|treat|postman|keys
    have|had|need|needed|having ~ to ~ carry|lift|drag ~ him|her ~3 pee|wee|potty|toilet|bowl|yard
    not|isnt|is with it $
    not|isnt ~ quite|really|all|fully|very with it $
    <neg> ~ interested|bothered|fussed|keen|excited ~ in|about|with|for|by ~3 walk|ball|toy|toys|lead|leash|squirrels|visitors|anything|anyone|me|us -<coneword>
    seems|looks|looking|feels|acting|acts ~2 ill|poorly|unwell|rough|awful|dreadful|terrible|miserable|drained|wretched|crook -<bruiseword> -<wound> -<swell> -<stitchword> -<poo>
    crook -<legword> -<wound>
    lies|lying|sits|sitting|stands|standing|stares|staring|faces|facing ~3 wall|corner
    <neg> ~ le ~ interesa|importa|emociona|llama|anima ~ la? nada
    ni|no ~ me|nos pela|topa|voltea|fuma|pelan
    no ~2 hace caso +ni|nada|nadie|cuando|llamo|hablo
    esconde|escondido|escondida|metido|metida ~3 todo|desde|dia|bajo|debajo|abajo|closet|ropero -<pillhide>
    durmio|dormido|durmiendo|pasado|paso|duerme ~2 todo|entero ~ el? ~ dia|tiempo|rato -casi -<nearly>
    como|medio|muy|esta|anda|toda|todo ida|ido|perdida|perdido|zombie|zombi|zombificado -medio
    anda|esta|sigue|amanecio|lo_veo|la_veo|la_noto|lo_noto ~2 malito|malita|maluco|maluca|enfermo|enfermito|enfermita|fatal -<wound> -<legword> -<swell> -<poo>
    todo|toda|bien|muy|esta|anda aguadito|aguadita|guango|guanga|desguanzado|desguanzada -<poo>
    sin ~ ganas|fuerzas ~ de|para ~ nada|levantarse|moverse|pararse|vivir
    pasa|paso|paso_todo|la_pasa ~2 echado|echada|tirado|tirada|acostado|acostada|dormido|durmiendo ~~ todo|dia|siempre|sin
    apenas|casi_no|ni ~ se ~ mueve|movio|levanta|levanto|para|asoma -<legword>
    ni ~ se ~ asoma|asomo|acerca|acerco
    hardly|barely|scarcely ~2 awake|alert|budged|stirring|lifts|raised|there
    <neg> ~ the? ~ energy|strength ~ to
    <neg> ~ even ~ get|got|lift|raise|come|greet|wag ~ up|tail|head|to|out -<legword>
    too|so ~ weak|tired|exhausted|lethargic ~ to
    have|has|had|tengo ~ to|que ~ carry|cargar*|cargarlo|lift ~3 garden|toilet|out|wee|porque|afuera|patio|because
    <neg> ~ got|get|gotten|been|ha|paro|parado|levantado|levanta ~ up ~2 once|all|today|since
    no ~ se ~ ha ~ parado|levantado|movido ~3 dia|hoy|manana|desde|todo
    flat out|on ~~ staring|wall|blank|glazed
    staring|mirando|stares ~ at|into|a|la ~2 wall|space|nothing|pared|nada
    <neg> ~3 greet|greeted|greeting|meet|recibe|recibio|recibirme|saludar|saluda|recibir
    wont|not|doesnt|didnt|no ~ come ~ to ~ the? door
    slept|sleeps|sleeping|asleep ~ round|around the clock
    hardly|barely|apenas|cant ~ get ~ him|her ~ to|on|up ~ his|her ~ feet
    lie|lies|lying|hide|hides|esconde|sits|stays ~3 dark|oscuro|corner|rincon -toy
    lump|ton|sack ~ of ~ lead|bricks|potatoes|spuds|cement
    aplastado|aplastada|desmadejado|desmadejada|derrumbado|desguanzado|desguanzada|amolado
    ni ~ la|el|su ~ pelota|juguete|correa|premio ~2 llama|emociona|mueve|interesa|hace
    <neg> ~ tiene ~ fuerzas|fuerza|energia
    fuerzas|fuerza ~ no|ni ~ tiene
    ni fuerzas|energia|ganas tiene|trae
    mirada|ojos ~ triste|perdida|apagada|tristes ~~ sin|no ~ levantarse|levanta|moverse|mueve
    sin ~ levantarse|moverse|pararse
    head|ears|tail ~ down ~~ wont|not|no|hardly|doesnt
    <neg>|just ~2 there|with_us ~ today|mentally|at_all -pain
    <neg> ~ bothered ~ with ~ anything|everything|us|ball|toys
    no go|life|spark ~ in ~ him|her
    vive|pasa|la_pasa ~ echado|echada|tirado|tirada|acostado|acostada
    ni ~ se ~ inmuta|inmuto|mueve|entera
    no ~ se ~ inmuta
    no ~ sale|salio|ha_salido ~ de ~ su ~ casita|cama|jaula|rincon|transportadora|kennel|camita
    no ~ levanta|alza ~ cabeza|la
    hasnt|not|wont|doesnt|no ~ stirred|stirs|budged|budge|shifted|moved ~2 off|from|out ~ his|her|the|that? <perch>|basket|bed|sofa|rug|mat|crate|box|spot
    zero|no|little|lost ~ interest|enthusiasm ~ in ~ anything|life|us|everything|nothing
    <neg> ~2 wagged|wag|wagging|mueve|movido ~3 day|days|once|all|today|cola|since
    tail ~3 hasnt|not|no|doesnt ~ wagged|wag|moved
    glazed|vacant|staring ~ look|into_space|at_nothing
    no spark|life|fight|oomph|get_up_and_go
    sleeping|sleeps|asleep|duerme|dormido|dormida ~ all ~ time|todo_el_tiempo|todo_el_dia|constantly|non_stop|nonstop
    have|had|tengo|toca ~ to|que ~ wake|despertar*  ~~ for|para ~ his|her|<meds>|comer|food|meds
    no ~ tiene|le_quedan|trae ~ fuerza|fuerzas|energia|energias|animo|animos
    no ~3 quiere ~2 mover|moverse|levantar|levantarse|pararse -<legword> -pata
    moves|move|mueve ~2 only|just|solo|nomas ~ the|his|her|los ~ eyes|ojos
    <neg> ~ go|get_up_and_go|life|spark|pep|energy|interest|oomph in him|her
    like|acting|acts|seems|looks|if|walks|walking|parece|anda|como|como_si ~3 drunk|drunken|tipsy|
        borracho|borracha|borrachito|borrachita
    disoriented|disorientated|desorientado|desorientada|uncoordinated|staggering|staggers|
        tambalea|tambaleando|tambaleandose
    ni ~2 quiere ~ mover|levantar|parar|moverse|levantarse|pararse
    not|isnt|wont|hasnt ~ standing|stood ~ up
    esta|anda|se_ve|lo|la|muy|bien|re|toda|todo ~2 caido|caida|bajon|tirado|tirada \
        -<mishapwords>
    no ~3 bola|pelota ~ a nada|nadie
    no pela a? nada|nadie
    <neg> ~ himself|herself ~~ just|only ~ lies|lays|lying|sleeps|sits
    <lethargicword>
    <very> ~ lethargic|sleepy|weak|flat|quiet|tired|sluggish|letargico|decaido|decaida|
        apagado|debil|dull
    just|only ~ lies|laying|lays|lying|lay|sits|stays ~ in|on|under ~2 bed|basket|crate|
        corner|spot|sofa|floor|there
    just|only|solo|nomas|nada_mas ~ lies|laying|lays|lying|lay|sits|echado|acostado|tirado|
        echada|acostada|tirada ~ there
    lies|lays|lying|laying|sits there ~2 staring|wont|not|doing
    wont|doesnt|didnt|cant|barely|hardly|not|refuses|no|ni|apenas ~2 lift|lifts|lifted|raises|
        moves|lifting|raise|raising|
        levanta|alza|levanto|alzar|levantar ~2 head|cabeza|cabecita
    wont|doesnt|didnt|not|refuses|hasnt|no|isnt ~2 get|move|moving|moved|getting|stand|leave|
        left|come|budge|budged|quiere|se|levantarse|levanta|mueve|sale|salir|pararse|parar|
        want ~3 up|bed|sofa|couch|crate|basket|spot|corner|levantar|moverse|mover|parar|
        levantarse|pararse|salir|cama|all|off|out|camita|rincon|under -<legword>
    no se quiere ~ levantar|mover|parar
    no quiere ~ levantarse|moverse|pararse|salir|hacer
    no ~2 interest|interes|interested|ganas|energy|energia|life|spark ~3 anything|nada|me|us|
        toys|life|todo|in? -<food> -comer -<meds>
    <neg> ~2 care|cares|interested ~2 about|in ~2 anything
    sin ~ ganas|interes|energia|fuerzas|animos
    doesnt|wont|no react|respond|hace|pela|greet|reacciona ~3 to|caso|me|us|cuando|name|nadie
    under|beneath|behind|debajo|bajo ~2 bed|sofa|couch|table|cama|sillon|mesa ~3 since|all_day|desde|all|whole|todo
    <barely> ~2 moves|move|moved|moving|mueve|levanta|stirs|stir|leaves|left|opens|abre -<legword> -any
    hiding|hides|esconde|escondido|escondida|escondiendose ~3 under|bajo|debajo|away|
        closet|bed|all -<pillhide>
    slept|sleeping|sleeps|duerme|durmiendo|dormido ~2 all|todo|entire|whole ~ day|dia -<nearly>
    glassy|vidriosos|glazed ~2 eyes|ojos
    eyes|ojos ~3 glassy|glazed|vidriosos
    no ~ sale ~3 abajo|debajo|cama|rincon|escondite
    hard to|difficult to rouse|wake|arouse
    cuesta ~ despertar|despertarlo|despertarla
    seems|looks|acts|se_ve drained|lifeless|terrible|miserable|sick|ill|malito|malita|muy_mal|
        enfermo|enferma
    se ve|siente|pone|esta muy? mal|malito|malita|enfermo|enferma
    like|como ~ zombie|zombi|rag|dishcloth|ragdoll|corpse|trapo|muerto|muneco -ronca -roncaba -roncando -snoring -snores -<smellword> -huele -smells
    = normal @asked-general
    anda|esta|sigue|amanecio|ha_estado ~2 tranquilo|tranquila|tranquilito|tranquilita -<neg> -mas
    = quiet !@cone !@asked-cone
    kind|sort of out_of_it
    = lethargic !@asked-fixator !@asked-bandage !@asked-cone
    no se ~2 levanta|mueve|para|levanto|ha_movido|ha_levantado|quiere_parar|paro|movio \
        -<legword>
    = normal fixed
    opposite|anything|far|nothing ~ of|but|from|like lethargic|quiet|listless|sleepy|tired|flat|dull|depressed
    de desmayado|desmayada|decaido|decaida|enfermo|enferma|triste|cansado|cansada|apagado|apagada|flojo|floja nada
    = quiet @general @none
    snoring|snores|snored -<neg> -<breath>
    curled up|round -<neg>
    dead_to_the_world ~~ opened|woke|wakes|until|till|but
    snoozing|kipping|kip|snooze
    running|twitching|dreaming|woofing ~ in his|her sleep
    muerto|muerta de sueno|cansancio -<neg>
    cayo|cae|quedo|esta ~ bien? rendido|rendida|frito|frita|roque|planchado|jetón
    roncando -<neg> -<breath>
    se ~ acaba|ya|me? ~ durmio|quedo_dormido|quedo_dormida
    enroscado|enroscada|hecho_bolita|hecha_bolita|acurrucado|acurrucada
    """,
}

NEGATED = {
    "energy": {
        "normal": "quiet",
        "quiet": None,
        "lethargic": "normal",
        "collapsed": None,
    },
}

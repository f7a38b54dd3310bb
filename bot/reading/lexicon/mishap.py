"""Mishaps: jumps, runs, stairs, falls, slips, rough play."""

from __future__ import annotations

CLASSES = {
    "inanimate": """
        gel compresa ice_pack icepack gel_pack cold_pack heat_pack signal señal senal internet wifi phone telefono celular pastilla pildora pill tablet remote spoon cuchara jeringa syringe bottle frasco
        """,
    "blow": """
        golpe golpazo chingadazo madrazo porrazo trancazo guamazo fregadazo putazo
        trompada ranazo senton costalazo panzazo batacazo guantazo caida caidon trastazo
        cabezazo revolcon zarpazo
        mata matada trompazo tortazo lenazo golpetazo bombazo aterrizaje
        """,
    "hopping": """
        canguro conejo chapulin kangaroo bunny de_brinquito de_brinquitos a_brinquitos a_brincos
        de_brincos con_brinquitos en_tres on_three
        cuerpo
        """,
    "jumpword": """
        jump jumps jumped jumping jumpd leap leaps leapt leaped leaping leapd hop_up hopped_up
        hopped_onto hopped_on hopped_off hopped_down pounced pounces launched launches
        launched_himself launched_herself vaulted bounded bounds sprang springs flew_off
        flew_over cleared_the_fence climbed climbs clambered scaled brinco brinca
        brincado brincando brincó salto salta saltado saltando saltó avento se_subio
        se_sube se_avento se_aventó se_lanzo trepo trepa trepado brincos trepó subio subió brincar saltar lunge
        lunged up_and_over
        hurdled hurdles vaults vaulting leapfrogged parkour catapulted
        """,
    "runword": """
        ran run runs running bolted bolts bolt sprinted sprints sprint sprinting dashed dashes
        dash dashing raced races chased chases chasing chase tore_off tore_across took_off
        shot_off shot_out zoomed zoomies legged_it galloped galloping gallop charged charging
        belted escaped got_loose got_out broke_free broke_loose slipped_his_lead
        slipped_her_lead slipped_the_lead slipped_his_leash slipped_the_leash pelted hared_off
        scarpered off_lead off_leash corrio corre corriendo corrido corrió escapado escapada fugo fugado escapo escapó
        se_solto pelo_gallo echo_a_correr hecho_la_mocha persiguio persigue
        persiguiendo se_echo_a_correr arranco_a_correr se_me_escapo se_nos_escapo se_me_solto
        se_nos_solto salio_corriendo correteo correteando correr carrera made_a_run made_a_break mad_half_hour mad_five_minutes the_zoomies doing_laps gave_chase
        did_a_runner did_a_bunk bombed_off bombing_around tearing_around tearing_about
        charging_about belting_around
        tearing_round tore_round tore_around legging_it careering bombing_round tearing_across
        sprinting_round charging_round
        zoomin zooming zoomie sprinted_off pelted hightailed hightailing bolting se_fugo
        arranco_corriendo salio_disparado salio_disparada salio_volando salio_pitando
        salio_rajando salio_embalado salio_hecho echo_carrera a_toda_velocidad
        se_desboco se_dio_a_la_fuga destapado embalado bat_out_of_hell
        haring hared the_zooms had_the_zooms zoomed_off loquera scooted_off bolted_off
        perseguir corretear escopetado escopetada
        galopando galopo galoparon galopar
        """,
    "fallword": """
        fell fall falls falling fallen felled tumbled tumble tumbles tumbling toppled
        crashed crash faceplanted wiped_out came_off took_a_tumble took_a_spill came_a_cropper
        fell_off fell_down cayo cae caida caido cayó caer cayendo azoto azotó se_dio_un_golpe
        ranazo sopapo porrazo se_pego madrazo zapotazo tropezo tropezó tropezon rodo rodó
        tripped trips_over stumbled stumbles stumble collision costalazo desbarranco collided bumped
        hit_his knocked
        face_planted faceplant face_plant head_over_heels nosedived nose_dived
        arse_over_tit arse_over_teakettle ass_over_teakettle went_over_backwards
        tipped_over rolled_off rolled_out_of fell_out lost_his_balance lost_her_balance
        lost_balance perdio_el_equilibrio se_desbarranco se_desriscó se_estrello
        se_estampo se_estampó se_despeño se_machuco se_vino_abajo se_embarro
        stacked_it ate_dirt ate_pavement bit_the_dust fel_down fel_off patatazo
        """,
    "slidword": """
        slip slips slipped slipping slid slides sliding skidded skids skidding skid
        lost_his_footing lost_her_footing lost_footing did_the_splits splayed resbalo
        resbala resbalon resbalado resbalando resbaló patino patina patinó derrapo derrapó
        went_flying feet_went_from legs_shot_from patinon derrapa deslizo resbalar
        patinazo resbalones espatarro espatarró despatarro despatarró despatarrado
        despatarrada abrio_de_patas abrieron_las_patas fueron_las_patas
        fueron_las_patitas skated skating slithered slithering
        slipt
        lost_traction lost_grip lost_his_grip lost_her_grip lost_his_feet
        """,
    "roughword": """
        luchar luchando lucharon luchaban correteadera jalonearse wrassling rassling
        wrestled wrestling wrestles wrestle rough_play roughhousing rough_housing roughhoused
        playfight play_fight playfought playfighting play_fighting roughed tussle tussled
        tussling romping romped played_rough playing_rough play_bowing got_in_a_fight fight
        fought scrapped tug_of_war played_fetch playing_fetch playing_ball chased_a_ball pelearon peleo
        pelea pelearse jugo_brusco jugando_brusco jugo_pesado jugaron_pesado jugo_fuerte
        juego_brusco forcejeo forcejeando luchitas a_las_luchas jugar_pesado se_agarro
        se_agarraron jugaron revolcaron revolcandose mounted humping jugando_con_el_otro
        jugando_con_la_otra peleando horsing
        brawl tiff scuffle scuffled scuffling dustup
         forcejearon mordiditas se_revolcaron se_revolco se_corretearon jaloneo
        jaloneando jaloneandose
        rough_and_tumble ding_dong squabble squabbled squabbling barney kerfuffle
        punch_up argy_bargy tussles bodyslammed
        """,
    "perch": """
        bed sofa couch settee chair armchair car counter worktop table windowsill window sill
        wall fence gate cat_tree cat_tower bunk bench desk shelf wardrobe dresser bath tub truck
        suv van trunk boot lap stairs step deck porch cama sillon silla mesa ventana barda cerca
        coche carro camioneta barandal azotea escritorio ropero refri alacena rascador techo
        reja tina banco bancas barra muro baby_gate puppy_gate pen crate island fridge sideboard
        steps balcony balcon
        tailgate ottoman futon recliner bonnet roof_of trampoline playpen litera hamaca
        mecedora lavadora estufa comedor camioneta troca pickup batea puff
        guagua buseta colectivo moto litera terraza
        """,
    "stairword": """
        stairs stair staircase stairway steps upstairs downstairs escaleras escalera escalones
        gradas peldaños flight_of_stairs flights
        """,
    "nomove": """
        nose eye eyes water heart mouth bath tap engine fridge washing test tests errand
        """,
    "fewsteps": """
        first_few_steps few_steps two_steps three_steps couple_of_steps first_steps steps_on
        every_step each_step steps_with four_steps five_steps some_steps baby_steps steps_then
        first_couple_of next_steps stairs_gate stair_gate stairgate blocked_off
        """,
    "mishapish": "jumped ran bolted chased fell escaped limps limping race raced",
    "wantword": "want wants wanted wanting trying tried quiere queria interested ready",
    "nojump": """
        corazon de_la_alegria
        gun heart breathing for_joy with_joy of_joy de_gusto de_alegria de_contento
        de_felicidad de_emocion leaps_and_bounds in_leaps by_leaps to_conclusions jumped_when
        jumps_when dream dreams dreaming in_his_sleep in_her_sleep sueno suenos sonando
        jumped_at_the jump_through out_of_his_skin out_of_her_skin out_of_my_skin de_que_mejora
        """,
    "thing": """
        gel pack ice_pack icepack bag towel signal señal senal internet bolsa bolsita compresa paquete toalla pastilla pastillas luz red wifi plato agua
        phone mobile time temperature temp swelling hair fur battery list mind day days night
        week weeks mood spirits heart_rate weight price internet signal pulse alarm reminder
        app message messages telefono tiempo temperatura hinchazon pelo inflamacion pila bateria
        celular cel animo dia semana peso clock supply stock tap bath pills stitch scab tooth
        rain car van bus sight score appetite nose eyes eye blood clip tape plaster toy ball
        crate picture tv lamp plant shelf branch tree bowl dish plate glass patch lid
        bucket book sock vase mirror ladder cuadro maceta vaso taza lampara arbol rama
        florero espejo cubeta
        """,
    "nomishapword": """
        pendientes tramites mandados vueltas de_prisa las_compras compras trabajo_al mi_corazon el_corazon mil_cosas
        dream dreams dreaming dreamt in_his_sleep in_her_sleep sueno suenos sonando behind
        out_of_time around_after fever temperature a_temperature joke rings_around rings_round
        in_the_family errand errands lagrima hills true_to_form run_it_by in_the_car car_ride run_by through_it for_his_money on_empty de_sueno for_it through_the_list
        """,
    "nofallword": """
        into_place for_him for_her for_it in_love back_to to_pieces apart fell_ill off_to
        off_at off_in_my off_on_my off_on_the_sofa off_in_his off_again back_asleep
        himself_to herself_to over_himself over_herself off_his_food off_her_food pelo costra costrita puntada diente lagrima baba into_a_routine into_a_rhythm
        out_with into_old into_bad silent quiet short flat_on_his_face de_sueno las_ganas
        cae_bien cayo_bien le_cayo me_cayo_bien me_cayo_mal in_line dropped_off_to dropped_him_off dropped_her_off dropped_in drop_in gordo_el
        rough_and
        """,
    "bloodrun": """
        bum bottom backend arse rear
        blood bleeding runny sangre nose fever temperature water discharge pus fluid liquid temp
        diarrhea through_him fiebre well
        bloods
        """,
    "carried": """
        carry carried carrying carries cargo cargue cargamos cargando cargado en_brazos blocked
        gate avoid avoided avoiding
        """,
    "fellat": "fell falls fallen tumbled cayo rodo cae rolled rolls tumbles bounced slid",
    "nofall": """
        over_unconscious hair fur stitch temperature scab asleep knocked_out_ hit_his_appetite
        fever tooth leaf night sleep sueno bien_mal drop_of drops
        """,
    "noslipword": """
        through_the_net through_my back_into into_bad slipped_up slip_up disc slipped_disc of_the
        tongue away_from_me let_slip by_unnoticed permission paper pink_slip me_paso
        """,
    "leashslip": "leash lead collar harness pocket correa out_of knot mind cheese ham",
}

RULES = {
    "mishap": """
    = jumped
    echo|aventó|avento|tiro|dio|pego ~ un ~ clavado|brinco|salto|maroma
    flew|flying|flung|went_flying|went_sailing|sailed ~ off|over|from ~2 <perch>
    hop|hops|hopped|hopping ~ in|into|onto|off|out|over|up|on ~3 <perch>|me|him|bath -<neg>
    been|gone|got|gets|is|was ~ back? on|up|onto|atop ~2 windowsill|counter|worktop|table|wardrobe|shelf|desk|dresser|fridge|countertop|mesa -<carried> -<food> -<meds> -<coneword> -tube -bowl
    bounced|bounces|threw|throws|dove|dived|dives|launched|catapulted|hurled|flung|plunged|parachuted ~ himself|herself? ~ off|from|out|over ~2 <perch>
    up|stood|stands|standing ~ on ~ his|her ~ back|hind ~ legs|feet ~ at|against|to|trying
    boto|mando|arrojo|disparo|volo|bajo ~ un? de|del|desde|por ~2 <perch> -<stairword> -<carried>
    arriba|encima|trepado|trepada|subido|subida ~ de|del|en ~2 <perch> -<carried> -<stairword> -<meds> -<food>
    got|gets|getting ~ himself|herself ~ up|on|onto ~2 <perch>
    hopped|popped|scrambled|clambered ~ into|onto|up|in|on|off|out ~3 <perch>|car|boot
    tiro|lanzo|avento|aventó ~ de|del|desde ~2 <perch>
    got|gets|getting|climbed|climbs|hopped ~ on|onto|up ~2 <perch> -<carried>
    <jumpword> ~4 <perch>|up|off|down|over|out|on|onto|in|into|al|a|del|de|encima|door|dog|me|
        him|visitors|postman|floor|fence -<stairword> -<nojump> -piso -pisos
    <jumpword> -<stairword> -<nojump> -<threeleg> -<hopping>
    up on ~2 <perch> -vets -vet -gave -give -given -giving
    cleared|clears ~2 <perch>|gate|fence|sofa
    up and over
    off|from|del|de ~2 <perch> ~2 <jumpword>
    = ran
    mando|pego|echo|dio|metio ~ una|unas ~2 corrida|corridas|carrera|carreras|correteada|corrediza
    se me|nos pelo ~ por|a|pa|para|del|de
    shot|darted|dashed|bolted|flew|ran|legged|pegged|hared ~ into|across|onto|up|down ~ the? ~ road|street|traffic|driveway|highway|lane|park|alley
    dropped|drop|lost|slipped|let_go ~3 leash|lead ~~ gone|off|away|halfway
    tearing|tore|pelting|hurtling|belting|flying|careering|barrelling|barreling|storming off|across|after|down|round|around|out -<food>
    made|make|makes|making ~ a ~ dash|run|bolt|break|beeline ~ for|out
    full speed|tilt|pelt|gallop|sprint|chat -ahead
    did ~ one ~ out|through|over
    got|gets|broke ~ away ~ from ~ me|us|him|husband
    shot|flew|went|off ~ like ~ a ~ rocket|bullet|shot|cannonball|greyhound|racehorse|bat
    salio|salieron|sale|arranco|fue|iba ~ disparado|disparada|volando|corriendo|destapado|destapada|embalado|rajando|pitando|hecho|hecha|soplado|como_bala|como_alma|como_cohete|como_loco|patitas_para
    se ~ me|nos? ~ zafo|solto|safo|arranco ~ de ~ la|su|el correa|arnes|collar|mano|pechera|lazo|leash
    se ~ me|nos ~ pelo|escapo|fugo|largo|salio|fue ~ a|por|para|pa|hacia|rumbo|corriendo|tras|detras|del|de ~2 calle|puerta|patio|jardin|parque|casa|corriendo|gato|perro|ardilla|porton|reja|monte|esquina
    puerta|porton|reja|zaguan ~ abierta|abierto ~~ fue|salio|escapo|corrio|pelo|largo|solto
    dio ~ a ~ la ~ fuga
    carrera|carreron|pique|correteada ~2 tras|detras|atras|a|hasta|por|de
    pego|echo|dio|metio ~ una|la|unas ~ carrera|carreras|carrerita|carreron|correteada|corridas
    detras|atras|tras ~ de? ~ un|una|el|la|los|del ~ gato|gata|ardilla|paloma|pajaro|moto|perro|conejo|pelota|bici|cartero
    tore|raced|pelted|charged|zoomed|hared|belted|shot|flew ~ round|around|up|down|across|about|through ~2 garden|yard|park|house|field|beach|room|lawn
    agarro|agarraron|jalo|tomo ~ monte|calle|camino|carrera|vuelo
    se fue|arranco ~ hecho|como ~ bala|rayo|cohete|raya
    tardamos|took|costo ~6 alcanzar*|catch|agarrar*|atrapar*|get_him|get_her
    away|off|across ~ across|over|down|up|through ~3 field|fields|road|street|park|lane|meadow
    broke|snapped|slipped|chewed|rompio|zafo|trozo ~3 rope|lead|leash|chain|tether|cuerda|correa|cadena|mecate|lazo ~~ away|off|gone|ran|fue|corrio|across
    <runword> -<nomove> -<nomishapword> -<bloodrun> -<stairword> -<diarrhoea>
    off like ~ shot|rocket|bullet|flash
    off|away he|she|<patient> went|goes|ran|flew|shot|tore
    got|getting|slipped|broke|escaped ~2 out|off|loose|free|away ~3 leash|lead|yard|door|
        garden|harness|gate|house|street -<coneword> -<bandageword>
    se solto|escapo|salio|zafo ~4 correa|calle|puerta|patio|casa|arnes -<stitchword> \
        -<bandageword> -<coneword>
    chased|chasing|chase|tras|persiguio -<nomishapword> ~3 squirrel|cat|cats|rabbit|rabbits|ball|bird|postman|
        ardilla|gato|gatos|pelota|pajaro|moto|squirrels|deer|fox|paloma
    zoomies
    = ran agent
    pulled|yanked|ripped|tugged|jerked|dragged ~2 lead|leash|rope ~ out|from|off|right -<coneword>
    left ~2 gate|door open ~~ off|away|out|gone|bolted|ran|escaped|street|road -<stairword>
    = stairs
    tried|attempted|intento|probo ~ the|las|la|los ~ <stairword> ~~ made|got|llego|all|hasta|top|arriba -<carried>
    se subio|bajo|trepo|aventó|avento|echo ~ las|la|por|todas|los ~2 <stairword> -<carried>
    did|does|done|managed|tackled ~3 front|back|porch|garden|all steps -<carried> -<fewsteps>
    nipped|popped|scooted|darted|dashed|slipped|hopped|crept|shot ~ off? upstairs|downstairs -<carried>
    all ~2 stairs|flights -<carried>
    colo|metio|escabullo|largo ~~ <stairword>|segundo -<carried>
    went|got|gone|goes|gets|came|comes|wandered|made_it|sneaked|crept|scampered|trotted ~ all_the_way? upstairs|downstairs -<carried>
    top|middle|halfway ~ of|up|down ~ the? stairs -<carried> -gate -<fellat>
    managed|manages|tackled|attempted|conquered|negotiated ~4 <stairword> -<carried>
    subio|bajo|sube|baja|subieron|bajaron|anduvo|fue|echo|agarro|trepo|avento|andaba|corrio ~~ <stairword> -<carried> -<fellat>
    escaleras|gradas|escalones arriba|abajo
    arriba|alto ~ de ~ las|la <stairword>
    charged|ran|raced|went|shot|bolted|tore|bounded ~ up|down|upstairs|downstairs ~~ <stairword>
    avento|aventó|brinco|salto|bajo|subio|boto|corrio ~3 <stairword> -<carried>
    escapo|fue|solto|subio ~2 por|x|a ~ la|las? <stairword> -<carried>
    subio|bajo|subieron|bajaron|sube|baja ~3 pisos|piso|gradas|tramos -<carried>
    up|down|climbed|climbs|climbing|went|goes|ran|used|took|did|raced|shot|flew|bounded|
        charged|subio|bajo|sube|baja|subir|subido|bajado|subiendo|corrio|trepo ~4 <stairword> \
        -<carried> -<fellat> -<fewsteps> -i_went -we_went -i_go -we_go -i_came -i_ran -i_walked -i_come \
        -live -lives -few -couple
    <stairword> ~4 like|rocket|alone|solo|sola|himself|herself -<carried>
    snuck|sneaked|escaped ~3 upstairs|stairs
    subio|bajo|subido|subiendo ~3 escaleras|escalera|escalones -<carried>
    = fell
    tangled|wrapped|caught_up ~~ went|came down|over
    se ~ dio|pego|metio ~ en|con|contra ~ la|el|una|un ~ puerta|pared|mesa|esquina|mueble|poste|reja|banqueta|silla|pata
    se callo|calló ~ de|del|por|en ~3 <perch>|<stairword>
    came|come|comes|coming ~ down ~ awkwardly|badly|wrong|heavily|hard|funny|awkward|sideways|crooked
    went|goes|going splat|sprawling|tumbling|headfirst|headlong|nose_first
    took|takes|taken ~ a ~2 header|dive|nosedive|tumble|spill|knock|topple|fall -<meds>
    rolled|tumbled|bounced|crashed|slid|fell ~ down|off ~3 <stairword>|<perch>|ramp|bank
    went|goes|gone|going over ~ on|sideways|backwards
    went|came|goes|crashed|gone down hard|heavily|heavy|with
    landed|lands|landing|landin ~3 badly|wrong|awkwardly|awkward|funny|heavily|hard|leg|side|back|face|foot|shoulder|hip|chin|bum|heap|thump|splat -<carried> -phone
    bashed|whacked|banged|bumped|smacked|clipped|cracked|jammed|trapped|bonked|caught|scraped|clobbered ~ his|her|the|it|that|bad ~3 leg|foot|paw|knee|hip|stump|head|shoulder -<bandageword> -<coneword>
    got|getting|gets ~ his|her|the|it|a ~2 leg|foot|paw ~2 stuck|caught|trapped|jammed|wedged|hung
    leg|foot|paw ~2 stuck|caught|trapped|jammed|wedged ~ in|under|between|through -<coneword> -<bandageword>
    lost|loses|losing ~ his|her|its balance
    dio|metio|pego|llevo|acomodo|puso|di ~3 <blow> -calor -sol
    dio ~ en ~ la ~ madre|torre
    machuco|prenso|atoro|pellizco|aplasto|atrapo|atranco|enredo ~3 pata|patita|pierna|dedo|deditos|pie -<bandageword> -<coneword>
    estrello|estampo|azoto ~3 contra|con|en ~2 puerta|pared|mesa|piso|suelo|mueble|vidrio|poste
    golpeo|pego|choco|golpe|pegada ~2 contra|con|en ~2 puerta|pared|mesa|mueble|esquina|silla|vidrio|poste|reja|banqueta|pata|rodilla|pierna -<coneword> -<slidword>
    fell|falls flat
    missed|misjudged|mistimed ~ the|a|his|her ~ step|kerb|curb|jump|landing|edge|sofa|chair
    on his|her side|face with a thump|bump|thud|crash
    = fell !@mishap
    cayo|cae|caido ~ mal|feo|parado|sentado|encima|sobre -<food> -<meds>
    = fell
    <fallword> -mal -feo -<inanimate> -<nofall> -<nofallword> -<bandageword> -<stitchword> -<coneword> -<meds>
    <fallword> ~4 <perch>|<stairword>|down|over|on|off|floor|se|al|del|de -<meds> -<inanimate> -<nofall> -<nofallword> \
        -<bandageword> -<coneword> -<stitchword>
    dropped ~ from|off|out ~3 <perch>|<stairword>|arms
    = fell agent
    <person>|toddler|kid|kids|baby|child ~2 fell|tripped|stepped|sat|landed ~ on|onto|over ~ him|her
    le|lo|la cayo ~2 encima
    slammed|bulldozed|steamrolled|barrelled|ploughed|plowed|crashed|body ~ into? him|her|it
    le|lo|la ~ piso ~2 pata|patita|pie|cola|dedito|manita
    shut|slammed|closed ~3 door|gate|drawer ~2 on ~2 him|her|leg|paw|foot|tail|toes
    i|we|someone|somebody|<person> ~3 stood|knelt|stomped|stamped ~ on ~2 leg|paw|foot|toes|toe|tail -<neg>
    i|we|someone|somebody|<person> ~3 stood|sat|knelt|stomped ~ on him|her -<neg>
    stood|stepped|trod|trampled|stomped|stamped on him|her|by
    le|lo|la pise|pisamos|pisaron|machuque|aplaste|aplastaron|tumbaron|empujaron|patearon|pateo|aventaron|atropellaron
    le|lo ~ piso ~ mi|el|un|una|alguien|sin
    <otheranimal>|perro|gato|cachorro ~2 tumbo|arrollo|tiro|empujo ~ lo|la?
    lo|la tumbo|arrollo|empujo|atropello ~ el|mi|un|la|una
    barged|flattened|bowled|atropello|arrollo|embistio ~ into|over|him|her|by|lo|la
    knocked|tumbo ~ him|her ~ over|down|flying
    lo|la|le atropello|tumbo|arrollo|tiro|empujo
    got|was|been barged|flattened|bowled|trampled|knocked
    dropped|drop|solte|tire ~ him|her|lo|la -<meds> -at -daycare -groomers -groomer -kennels -clinic -vets -off
    hit by|car|bike
    got|was|been|nearly ~ run over|down
    fue|fueron|cayo de hocico|boca|bruces|cara
    golpeo|golpeo|golpe|choco|bumped|banged|knocked|hit|atropello|pego ~4 leg|knee|pata|
        patita|rodilla|door|pared|wall|car|head|coche -<coneword>
    bump|knock to|on|en ~2 leg|knee
    stepped|trod|tripped|piso|pise|pisaron ~ on|over ~ him|her|leg|foot|paw|pata|patita
    = slipped
    legs|feet|paws|back_end|bum ~2 went|go|gone|gave|shot|slid|flew ~3 under|beneath ~2 on ~3 laminate|floor|tile|tiles|lino|wood|ice|kitchen|vinyl|mud
    did|does|like|went|pulled|full ~ a? bambi
    slip|slipped|slid|slips|slipping ~ getting|coming|going|climbing|stepping|trying|walking|running|turning|when|as ~ out|off|in|up|down|of|to|round|the|he|she ~3 car|bed|sofa|bath|ramp|house|garden|corner|step|door|couch|truck|van
    abrio|abrieron|fueron|resbalaron|patinaron|deslizaron|abren ~2 patas|patitas|piernas|pies
    se abrio ~ de ~ patas|piernas
    legs|feet|paws|patas ~2 went|go|flew|shot|fueron|salieron|slid ~2 out|from|everywhere|under|sideways
    <slidword> -<coneword> -<bandageword> -<leashslip> -<meds> -<noslipword>
    <slidword> ~4 floor|tile|tiles|ice|wet|kitchen|laminate|piso|mud|grass|wood|ramp|curva|
        mojado|loseta|banqueta|baño|wooden|mosaico -<bandageword> -<noslipword>
    legs went|slid ~ from|under|out
    = rough_play
    got|into|had|a ~ scrap|scraps ~ with|between
    <otheranimal>|puppy|pup|brother|sister|kitten|dog|cat ~3 jumped|jumping|pounced|landed|leapt|trampled|climbing|climbed|mounted ~3 on|onto|over ~ him|her|it|top
    got|gets|getting|been ~ jumped|pounced ~ on|by
    rough|boisterous|rowdy|silly ~2 with ~ him|her|it|the|kids|dog|cat|puppy|each|our|my
    a las? mordidas|luchas|luchitas|guerritas ~ con|los|entre|todo
    jalar|jaloneando|estirando|jalando|estira|jalo|jaloneo|forcejear ~3 cuerda|soga|trapo|juguete|mecate
    revolco|revolcaron|revolcando|revolcandose|luchando ~3 con|perro|cachorro|gato|otro|otra
    jugando|jugar|jugo|jugaron|jugaban|juega ~3 rudo|ruda|tosco|rudamente|bruto|fuertecito|cachorro|cachorrito|pelota|pelotita|frisbee|cuerda|a_lo_bruto -<wantword>
    echo|avento|subio|tiro|monto|lanzo|brinco ~ encima +<otheranimal>
    <otheranimal>|perro|cachorro|gato ~3 le|lo|la ~ avento|echo|tiro|brinco|salto|monto|lanzo|revolco
    set_to|dust_up|punch_up|run_in ~ with
    play|playing|played|plays ~3 tug|wrestle|chase|keepaway
    tug ~ of
    jugando|jugo|juegan|jugaron|anduvo ~3 mordidas|luchas|luchitas|guerritas|peleas|brusco
    <roughword> -<meds> -<wantword> -it -<coneword> -<bandageword> -blanket -teddy -cushion -mat -kong
    play|plays|played|playing|jugo|jugar|jugando|jugaron|jugado|juega ~3 rough|roughly|brusco|
        pesado|fuerte|tosco|hard|ball|fetch|tug|pelota|with|con ~3 dog|dogs|cat|other|puppy|
        ball|brother|kids|perro|perra|pelota|niños|ninos|gato|rough|hard|otro -<wantword> -mat -kong -puzzle -teddy -food -bowl
    play|played|plays|playing|game|games|bit ~3 fetch -<wantword>
    ^ fetch
    = jumped agent
    found|caught|encontre|encontramos|cache|cachamos|halle|pille|pillamos ~ him|her|lo|la? ~3 on|onto|up|atop|arriba|encima|trepado|trepada|subido|subida|en ~3 <perch> -his -own -dog -<stairword> -lying -crate -boot
    = stairs agent
    found|caught|encontre|cache|halle ~ him|her|lo|la? ~3 stairs|upstairs|landing|escaleras|escalera
    = rough_play agent
    roughhousing|roughhoused|wrestling|wrestled|roughing ~ with|him|her -it -<meds> -<coneword>
    jugando|jugaban|jugaron ~2 pesado|brusco|fuerte|rudo
    threw|throwing|throws|throw|kicked|kicking|tossed|tossing ~ the|a|his|her ~ ball|frisbee|toy|stick|tennis ~2 for|to|with
    avento|aventaron|aventando|tiro|tiraron|tirando|lanzo|lanzaron|lanzando ~ le? ~ la|una|su|pelota ~ pelota|pelotita|frisbee|palo
    got|get ~ too ~ rough|rowdy
    """,
}

NEGATED = {
    "mishap": {
        "jumped": None,
        "ran": None,
        "stairs": None,
        "fell": None,
        "slipped": None,
        "rough_play": None,
    },
}

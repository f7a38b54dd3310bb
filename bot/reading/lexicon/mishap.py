"""Mishaps: jumps, runs, stairs, falls, slips, rough play."""

from __future__ import annotations

CLASSES = {
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
        brincado brincando brincó salto salta saltado saltando saltó aventó avento se_subio
        se_sube trepo trepa trepado brincos trepó aventado subio subió brincar saltar lunge
        lunged up_and_over
        """,
    "runword": """
        ran run runs running bolted bolts bolt sprinted sprints sprint sprinting dashed dashes
        dash dashing raced races chased chases chasing chase tore_off tore_across took_off
        shot_off shot_out zoomed zoomies legged_it galloped galloping gallop charged charging
        belted escaped got_loose got_out broke_free broke_loose slipped_his_lead
        slipped_her_lead slipped_the_lead slipped_his_leash slipped_the_leash pelted hared_off
        scarpered off_lead off_leash corrio corre corriendo corrido corrió escapado escapada fugo fugado escapo escapó
        se_solto soltó solto pelo_gallo echo_a_correr hecho_la_mocha persiguio persigue
        persiguiendo se_echo_a_correr arranco_a_correr se_me_escapo se_nos_escapo se_me_solto
        se_nos_solto salio_corriendo correteo correteando correr carrera made_a_run made_a_break mad_half_hour mad_five_minutes the_zoomies doing_laps gave_chase
        did_a_runner did_a_bunk bombed_off bombing_around tearing_around tearing_about
        charging_about belting_around
        tearing_round tore_round tore_around legging_it careering bombing_round tearing_across
        sprinting_round charging_round
        """,
    "fallword": """
        fell fall falls falling fallen felled tumbled tumble tumbles tumbling toppled
        crashed crash faceplanted wiped_out came_off took_a_tumble took_a_spill came_a_cropper
        fell_off fell_down cayo cae caida caido cayó caer cayendo azoto azotó se_dio_un_golpe
        ranazo sopapo porrazo se_pego madrazo zapotazo tropezo tropezó tropezon rodo rodó
        tripped trips_over stumbled stumbles stumble collision costalazo desbarranco collided bumped
        hit_his knocked
        """,
    "slidword": """
        slip slips slipped slipping slid slides sliding skidded skids skidding skid splits
        lost_his_footing lost_her_footing lost_footing did_the_splits splayed slippery resbalo
        resbala resbalon resbalado resbalando resbaló patino patina patinó derrapo derrapó
        went_flying feet_went_from legs_shot_from patinon derrapa deslizo resbalar
        """,
    "roughword": """
        wrestled wrestling wrestles wrestle rough_play roughhousing rough_housing roughhoused
        playfight play_fight playfought playfighting play_fighting roughed tussle tussled
        tussling romping romped played_rough playing_rough play_bowing got_in_a_fight fight
        fought scrapped tug_of_war fetch played_fetch playing_ball chased_a_ball pelearon peleo
        pelea pelearse jugo_brusco jugando_brusco jugo_pesado jugaron_pesado jugo_fuerte
        juego_brusco forcejeo forcejeando luchitas a_las_luchas jugar_pesado se_agarro
        se_agarraron jugaron revolcaron revolcandose mounted humping jugando_con_el_otro
        jugando_con_la_otra peleando horsing
        """,
    "perch": """
        bed sofa couch settee chair armchair car counter worktop table windowsill window sill
        wall fence gate cat_tree cat_tower bunk bench desk shelf wardrobe dresser bath tub truck
        suv van trunk boot lap stairs step deck porch cama sillon silla mesa ventana barda cerca
        coche carro camioneta barandal azotea escritorio ropero refri alacena rascador techo
        reja tina banco bancas barra muro baby_gate puppy_gate pen crate island fridge sideboard
        steps balcony balcon
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
        gun heart breathing for_joy with_joy of_joy de_gusto de_alegria de_contento
        de_felicidad de_emocion leaps_and_bounds in_leaps by_leaps to_conclusions jumped_when
        jumps_when dream dreams dreaming in_his_sleep in_her_sleep sueno suenos sonando
        jumped_at_the jump_through out_of_his_skin out_of_her_skin out_of_my_skin de_que_mejora
        """,
    "thing": """
        phone mobile time temperature temp swelling hair fur battery list mind day days night
        week weeks mood spirits heart_rate weight price internet signal pulse alarm reminder
        app message messages telefono tiempo temperatura hinchazon pelo inflamacion pila bateria
        celular cel animo dia semana peso clock supply stock tap bath pills stitch scab tooth
        rain car van bus sight score appetite nose eyes eye blood clip tape plaster toy ball
        """,
    "nomishapword": """
        dream dreams dreaming dreamt in_his_sleep in_her_sleep sueno suenos sonando behind
        out_of_time around_after fever temperature a_temperature joke rings_around rings_round
        in_the_family errand errands lagrima hills true_to_form run_it_by in_the_car car_ride run_by through_it for_his_money on_empty de_sueno for_it through_the_list
        """,
    "nofallword": """
        into_place for_him for_her for_it in_love back_to to_pieces apart fell_ill off_to
        off_at off_in_my off_on_my off_on_the_sofa off_in_his off_again back_asleep
        himself_to herself_to over_himself over_herself off_his_food off_her_food pelo costra costrita puntada diente lagrima baba into_a_routine into_a_rhythm
        out_with into_old into_bad silent quiet short flat_on_his_face de_sueno las_ganas
        cae_bien cayo_bien cayo_mal le_cayo in_line dropped_off_to dropped_him_off dropped_her_off dropped_in drop_in gordo_el
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
    "fellat": "fell falls fallen tumbled cayo rodo cae",
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
    hopped|popped|scrambled|clambered ~ into|onto|up|in|on|off|out ~3 <perch>|car|boot
    tiro|lanzo|avento|aventó ~ de|del|desde ~2 <perch>
    got|gets|getting|climbed|climbs|hopped ~ on|onto|up ~2 <perch> -<carried>
    <jumpword> ~4 <perch>|up|off|down|over|out|on|onto|in|into|al|a|del|de|encima|door|dog|me|
        him|visitors|postman|floor|fence -<stairword> -<nojump>
    <jumpword> -<stairword> -<nojump> -<threeleg> -<hopping>
    up on ~2 <perch>
    cleared|clears ~2 <perch>|gate|fence|sofa
    up and over
    off|from|del|de ~2 <perch> ~2 <jumpword>
    = ran
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
    left ~2 gate|door open ~~ off|away|out|gone|bolted|ran|escaped|street|road -<stairword>
    = stairs
    charged|ran|raced|went|shot|bolted|tore|bounded ~ up|down|upstairs|downstairs ~~ <stairword>
    avento|aventó|brinco|salto|bajo|subio|boto|corrio ~3 <stairword> -<carried>
    escapo|fue|solto|subio ~2 por|x|a ~ la|las? <stairword> -<carried>
    subio|bajo|subieron|bajaron|sube|baja ~3 pisos|piso|gradas|tramos -<carried>
    up|down|climbed|climbs|climbing|went|goes|ran|used|took|did|raced|shot|flew|bounded|
        charged|subio|bajo|sube|baja|subir|subido|bajado|subiendo|corrio|trepo ~4 <stairword> \
        -<carried> -<fellat> -<fewsteps>
    <stairword> ~4 like|rocket|alone|solo|sola|himself|herself -<carried>
    snuck|sneaked|escaped ~3 upstairs|stairs
    subio|bajo|subido|subiendo ~3 escaleras|escalera|escalones -<carried>
    = fell
    <fallword> -<nofall> -<nofallword> -<bandageword> -<stitchword> -<coneword> -<meds>
    <fallword> ~4 <perch>|<stairword>|down|over|on|off|floor|se|al|del|de -<meds> -<nofall> -<nofallword> \
        -<bandageword> -<coneword> -<stitchword>
    dropped ~ from|off|out ~3 <perch>|<stairword>|arms
    = fell agent
    barged|flattened|bowled|atropello|arrollo|embistio ~ into|over|him|her|by|lo|la
    knocked|tumbo ~ him|her ~ over|down|flying
    lo|la|le atropello|tumbo|arrollo|tiro|empujo
    got|was|been barged|flattened|bowled|trampled|knocked
    dropped|drop|solte|tire ~ him|her|lo|la -<meds>
    hit|run by|over|car|bike
    fue|fueron|cayo de hocico|boca|bruces|cara
    golpeo|golpeo|golpe|choco|bumped|banged|knocked|hit|atropello|pego ~4 leg|knee|pata|
        patita|rodilla|door|pared|wall|car|head|coche -<coneword>
    bump|knock to|on|en ~2 leg|knee
    stepped|trod|tripped|piso|pise|pisaron ~ on|over ~ him|her|leg|foot|paw|pata|patita
    = slipped
    legs|feet|paws|patas ~2 went|go|flew|shot|fueron|salieron|slid ~2 out|from|everywhere|under|sideways
    <slidword> -<coneword> -<bandageword> -<leashslip> -<meds> -<noslipword>
    <slidword> ~4 floor|tile|tiles|ice|wet|kitchen|laminate|piso|mud|grass|wood|ramp|curva|
        mojado|loseta|banqueta|baño|wooden|mosaico -<bandageword> -<noslipword>
    legs went|slid ~ from|under|out
    = rough_play
    jugando|jugo|juegan|jugaron|anduvo ~3 mordidas|luchas|luchitas|guerritas|peleas|brusco
    <roughword> -<meds> -<wantword> -it
    play|plays|played|playing|jugo|jugar|jugando|jugaron|jugado|juega ~3 rough|roughly|brusco|
        pesado|fuerte|tosco|hard|ball|fetch|tug|pelota|with|con ~3 dog|dogs|cat|other|puppy|
        ball|brother|kids|perro|perra|pelota|niños|ninos|gato|rough|hard|otro -<wantword>
    fetch -<wantword>
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

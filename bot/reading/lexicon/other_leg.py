"""Another leg than the operated one that limps."""

from __future__ import annotations

CLASSES = {
    "favours": """
        favouring favoring favours favors favoured favored babying nursing
        """,
    "amputee": """
        tripata tripie tripode amputaron amputada amputado amputacion le_quitaron_la_pata le_quitaron_una_pata sin_una_pata perdio_la_pata perdio_una_pata
        tripod amputee amputated amputation three_legger tripawd lost_the_leg lost_his_leg lost_her_leg lost_a_leg took_the_leg took_his_leg took_her_leg
        """,
    "notoperated": """
        la_operada pata_operada patita_operada la_de_la_cirugia la_de_la_operacion operaron_atras operaron_de_atras operaron_la_de_atras operada_es cirugia_fue_en cirugia_fue_atras operacion_fue_en operaron_la_trasera
        leg_you_did leg_they_did leg_we_did op_leg operated_leg operated_one surgery_leg surgical_leg leg_you_operated leg_they_operated one_you_did one_they_did one_you_operated one_they_operated one_you_fixed leg_you_fixed bad_leg op_was_on surgery_was_on operation_was_on back_leg_op hind_leg_op op_side
        """,
    "otherend": """
        manita mano delantera pata_delantera patita_delantera pata_de_adelante patita_de_adelante adelante delante enfrente pata_de_enfrente
        front_leg front_paw front_foot front_one front_legs front_left front_right left_front right_front foreleg forelimb forepaw front_limb fore shoulder
        """,
    "otherleg": """
        la_sana
        la_otra_pata la_otra_patita pata_que_le_quedo la_que_le_quedo la_que_le_queda pata_que_le_quedaba una_de_las_tres patita_sana patita_buena patita_que_le_queda pierna_que_le_queda otra_manita otra_mano otro_lado lado_bueno lado_sano la_contraria la_sana la_buena la_opuesta pata_de_al_lado la_de_al_lado otra_cadera otro_codo otro_hombro otra_extremidad
        good_hind good_back rear_good_one remaining_leg one_next_to_it one_beside_it leg_next_to_it remaining_one one_he_has_left one_she_has_left leg_hes_got_left leg_he_has_left last_back_leg healthy_one healthy_side sound_side sound_one good_foot good_paw good_one good_limb opposite_foot opposite_paw opposite_one opposite_back contralateral contralateral_leg other_rear_leg other_rear other_limb other_foot other_hip other_stifle other_elbow other_shoulder other_wrist other_front wrong_leg
        other_leg other_back_leg other_hind_leg other_hind other_knee other_paw other_side
        other_front_leg other_one opposite_leg opposite_hind opposite_knee opposite_side good_leg
        good_back_leg good_hind_leg good_side good_knee sound_leg unoperated_leg non_operated_leg
        unaffected_leg remaining_leg remaining_hind_leg remaining_back_leg healthy_leg otra_pata
        otra_patita otra_pierna otra_rodilla pata_buena pata_sana patita_buena pierna_buena
        pierna_sana pata_contraria pata_no_operada pata_que_no_operaron pata_que_no_le_operaron
        otra_trasera pata_que_le_queda one_that_wasnt_operated leg_that_wasnt_operated
        leg_that_wasnt_done leg_they_didnt_operate different_leg another_leg non_operated_side unoperated_side
        not_the_operated_one not_the_operated_leg not_the_one_that_was_operated not_the_op_leg
        not_the_surgery_leg not_the_bad_leg not_his_bad_leg not_her_bad_leg no_la_operada
        no_la_de_la_cirugia no_la_de_la_operacion no_de_la_operada no_es_la_operada
        pierna_contraria patita_contraria pata_del_otro_lado leg_you_didnt_operate
        leg_that_wasnt_operated_on pata_opuesta
        """,
    "lameword": """
        gimpy gimp gimping hopping hops gammy gyp limper claudica rengueo renguea
        lame lameness limp limps limping limped limpy hobbling hobbles hobble cojea cojeando cojear cojo coja cojera renguea rengueando
        renguera renquea renqueando renco renca rengo renga cojeo
        """,
}

RULES = {
    "other_leg": """
    = limping
    <lameword>|<favours>|lifting|holding ~4 left ~~ did|done|op|operated|surgery|operation|fixed ~4 right
    <lameword>|<favours>|lifting|holding ~4 left ~~ right ~4 did|done|op|operated|surgery|operation|fixed
    <lameword>|<favours>|lifting|holding ~4 right ~~ did|done|op|operated|surgery|operation|fixed ~4 left
    <lameword>|<favours>|lifting|holding ~4 right ~~ left ~4 did|done|op|operated|surgery|operation|fixed
    <lameword>|<favours>|lifting|holding ~4 front|fore ~~ did|done|op|operated|surgery|operation|fixed ~4 back|hind|rear
    <lameword>|<favours>|lifting|holding ~4 front|fore ~~ back|hind|rear ~4 did|done|op|operated|surgery|operation|fixed
    <lameword>|<favours>|lifting|holding ~4 back|hind|rear ~~ did|done|op|operated|surgery|operation|fixed ~4 front|fore
    <lameword>|<favours>|lifting|holding ~4 back|hind|rear ~~ front|fore ~4 did|done|op|operated|surgery|operation|fixed
    <lameword>|levanta|encoge ~4 izquierda|izquierdo ~~ operada|operaron|operado|operacion|cirugia ~4 derecha|derecho
    <lameword>|levanta|encoge ~4 izquierda|izquierdo ~~ derecha|derecho ~4 operada|operaron|operado|operacion|cirugia
    <lameword>|levanta|encoge ~4 derecha|derecho ~~ operada|operaron|operado|operacion|cirugia ~4 izquierda|izquierdo
    <lameword>|levanta|encoge ~4 derecha|derecho ~~ izquierda|izquierdo ~4 operada|operaron|operado|operacion|cirugia
    <lameword>|levanta|encoge ~4 delantera|adelante|mano|manita ~~ operada|operaron|operado|operacion|cirugia ~4 trasera|atras
    <lameword>|levanta|encoge ~4 delantera|adelante|mano|manita ~~ trasera|atras ~4 operada|operaron|operado|operacion|cirugia
    <lameword>|levanta|encoge ~4 trasera|atras ~~ operada|operaron|operado|operacion|cirugia ~4 delantera|adelante|mano|manita
    <lameword>|levanta|encoge ~4 trasera|atras ~~ delantera|adelante|mano|manita ~4 operada|operaron|operado|operacion|cirugia
    <lameword>|<favours>|lifting|holding|stiff|sore ~~ leg|side|one|paw|foot|knee|hip ~2 wasnt|didnt|werent|never|not|havent ~2 operated|done|do|fixed|touched|touch
    <lameword>|levanta|encoge|batalla|duele ~~ la|del|lado|pata|de ~ que|la? ~ no|nunca ~2 operada|operaron|operado|tocaron|hicieron
    <otherleg> ~~ no ~ la? ~ quiere|puede ~ pisar|apoyar|usar|asentar|plantar
    <otherleg> ~~ <lameword>|stiff|tender|playing_up|giving_way -<neg>
    <otherleg> ~~ adolorida|dolorida|resentida|tiesa|sentida|levantada|encogida|falla|fallando|batalla -<neg>
    <otherleg> ~~ toe tapping|touching|tapped on
    <otherleg> ~4 no|ni ~ quiere|puede|la? ~ apoyar|pisar|usar|asentar|plantar|apoya|pisa
    <lameword>|<favours>|lifting|holding ~4 <otherend> ~~ <notoperated>
    <lameword>|levanta|encoge ~4 <otherend> ~~ <notoperated>
    <notoperated> ~~ <lameword>|<favours>|lifting|holding ~4 <otherend>
    <notoperated> ~~ <lameword>|levanta|encoge ~4 <otherend>
    <otherend> ~3 <lameword> ~~ <notoperated>
    <lameword> ~~ operaron|operada|operado|cirugia|operacion ~3 atras|trasera|traseras|adelante|delantera
    <lameword> ~~ not|isnt|wasnt ~ even? ~ the|on? <notoperated>
    <lameword> ~~ no ~ es|de|con|en? <notoperated>
    <amputee> ~~ <lameword>
    <lameword> ~~ <amputee>
    <otherleg> ~3 <lameword>
    <lameword> ~4 <otherleg> -<neg>
    <lameword>|<legmove> ~ de|con|on|in ~ la|the|su otra|other|opposite|contraria|opuesta ~ one|side? $ -<neg>
    holding|holds|lifting|carrying|limping|limps|levanta|cojea ~~ leg|pata|pierna|one ~ that|que? ~ you|they|was|not|no|le ~ didnt|wasnt|never|not|no|le? do|done|operate|operated|touch|fix|operaron|operada
    <otherleg> ~~ <lameword>|favouring|favoring|sore|bothering
    <lameword>|favouring|favoring|carrying|lifting|sore ~~ not_the_operated_one|not_the_operated_leg|not_the_op_leg|not_the_bad_leg|no_la_operada|no_la_de_la_cirugia|no_la_de_la_operacion|no_es_la_operada|not_the_surgery_leg|not_his_bad_leg|not_her_bad_leg
    <lameword> ~~ surgery|operation|op|operada|operacion|cirugia ~ was|is|es|fue ~ at|on|de|en|la|the ~2 back|front|other|atras|adelante|left|right
    <otherleg> ~3 <neg> ~3 put|puts|putting|bear|bears|apoya|apoyar|usa|usar|pisa|pisar
    <neg> ~2 put|puts|putting|bear|bears|bearing|using|use|uses|apoya|apoyar|usa|pisa ~4 <otherleg>
    holding|holds|carrying|lifting|levanta ~ up? ~ <otherleg>
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {"other_leg": {"limping": None}}

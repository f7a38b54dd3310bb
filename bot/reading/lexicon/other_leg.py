"""Another leg than the operated one that limps."""

from __future__ import annotations

CLASSES = {
    "otherleg": """
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
        lame lameness limp limps limping limped limpy hobbling hobbles hobble cojea cojeando cojear cojo coja cojera renguea rengueando
        renguera renquea renqueando renco renca rengo renga cojeo
        """,
}

RULES = {
    "other_leg": """
    = limping
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

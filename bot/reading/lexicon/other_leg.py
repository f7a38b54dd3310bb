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
        leg_that_wasnt_done leg_they_didnt_operate
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
    <neg> ~2 put|puts|putting|bear|bears|bearing|using|use|uses|apoya|apoyar|usa|pisa ~4 <otherleg>
    holding|holds|carrying|lifting|levanta ~ up? ~ <otherleg>
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {"other_leg": {"limping": None}}

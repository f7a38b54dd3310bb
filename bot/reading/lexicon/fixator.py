"""The external fixator: its frame, and the pins, clamps and bolts that hold it."""

from __future__ import annotations

CLASSES = {
    "pinword": """
        pin pins clamp clamps bolt bolts nut nuts screw screws clavo clavos abrazadera abrazaderas
        tornillo tornillos tuerca tuercas perno pernos tornillito clavito
        """,
    "frameword": """
        fixator fixators ex_fix exfix external_fixator external_frame metal_frame frame rod rods
        bar bars metalwork scaffold scaffolding fijador fijadores marco barra barras varilla
        varillas aparato_de_fierro aparato_de_metal aparato frame_thing metal_thing halo
        """,
    "notframe": """
        door_frame bed_frame picture_frame window_frame frame_of_the_door snack_bar baby_gate crate
        on_her_pins on_his_pins tried_to_bolt toenail_clamp by_the_vet
        """,
    "workedloose": """
        loose loosened loosening wobbly wobbles wobbling wiggles wiggling wiggly wiggle rattles
        rattling backed_out backing_out came_out come_out coming_out came_off come_off
        coming_off came_away come_away fell_out fallen_out falling_out fell_off fallen_off
        missing popped_out slid_out sliding_out slipped_out moves moved unscrewed spun_off spun_round turns unwound slides sliding slid moving shifting shifts jiggles jiggling come_away fell_off flojo floja
        flojos flojas suelto suelta sueltos sueltas aflojo aflojaron afloja aflojado aflojando
        solto soltaron mueve mueven movio movieron cayo cayeron salio salieron saliendo zafo
        zafaron falta baila bailan bailando
        """,
    "bentword": """
        bent bends bending bowed twisted crooked buckled warped deformed doblado doblada doblo
        dobló doblaron torcido torcida torcio chueco chueca deformo deformado deformada
        """,
}

RULES = {
    "fixator": """
    = fine
    <pinword>|<frameword> ~4 <good>|tight|solid|secure|place|firm|straight|intact|firme|firmes|
        lugar|sitio|derecho|intacto|apretados|bien -<neg> -<notframe> -<workedloose> -<bentword>
    = loose
    <pinword>|<frameword> ~4 <workedloose> -<byvet> -<notframe> -<stitchword>
    loose|wobbly|wiggly|flojo|floja|suelto|suelta ~2 <pinword>|<frameword> -<byvet> -<notframe>
    aflojo|aflojaron|solto|soltaron|cayo|cayeron|salio|salieron|zafo|movio|mueve|falta ~3 \
        <pinword>|<frameword> -<byvet> -<notframe>
    lost ~2 <pinword>
    <pinword> ~2 fell|fallen|came|come|dropped|popped|missing|gone|moving ~2 out|off|away|from|in ~3 <frameword>
    <pinword> ~ are|is|keeps|keep? ~ moving|sliding|loose|turning|backing ~ in|out|up|back
    <pinword>|<frameword> ~2 wobbles|wobbly|moves|slides|suelto|suelta|mueve
    = bent
    <frameword>|<pinword> ~4 <bentword> -<notframe>
    <bentword> ~2 <frameword>|<pinword> -<notframe>
    = loose @asked-fixator
    <workedloose>
    = bent @asked-fixator
    <bentword>
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {
    "fixator": {"fine": None, "loose": "fine", "bent": "fine"},
}

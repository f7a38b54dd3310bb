"""The external fixator: its frame, and the pins, clamps and bolts that hold it."""

from __future__ import annotations

CLASSES = {
    "tightened": """
        tightened retightened re_tightened apretaron reapretaron ajustaron apreto reapreto le_apretaron
        """,
    "pinword": """
        pin pins clamp clamps bolt bolts nut nuts screw screws clavo clavos abrazadera abrazaderas
        tornillo tornillos tuerca tuercas perno pernos tornillito clavito
        pernito pernitos tornillitos clavitos tuerquita tuerquitas broche_de_metal washer wingnut
        """,
    "frameword": """
        fixator fixators ex_fix exfix external_fixator external_frame metal_frame frame rod rods
        bar bars metalwork scaffold scaffolding fijador fijadores marco barra barras varilla
        varillas aparato_de_fierro aparato_de_metal aparato frame_thing metal_thing halo
        contraption metal_cage cage_thing rig external_fix connecting_bar connecting_rod ex_fixator tutor tutores tutor_externo fijacion_externa armazon armatoste estructura fierros_de_afuera fierros_de_fuera
        """,
    "notframe": """
        door_frame bed_frame picture_frame window_frame frame_of_the_door snack_bar baby_gate crate
        on_her_pins on_his_pins tried_to_bolt toenail_clamp by_the_vet
        tag collar leash lead correa placa_de jaula reja puerta door tooth teeth diente kennel tap
        """,
    "workedloose": """
        loose loosened loosening wobbly wobbles wobbling wiggles wiggling wiggly wiggle rattles
        rattling backed_out backing_out came_out come_out coming_out came_off come_off
        coming_off came_away come_away fell_out fallen_out falling_out fell_off fallen_off
        missing popped_out slid_out sliding_out slipped_out moves moved unscrewed spun_off spun_round turns unwound slides sliding slid moving shifting shifts jiggles jiggling come_away fell_off flojo floja
        flojos flojas suelto suelta sueltos sueltas aflojo aflojaron afloja aflojado aflojando
        solto soltaron mueve mueven movio movieron cayo cayeron salio salieron saliendo zafo
        zafaron falta baila bailan bailando
        unscrewing unscrews spins spinning clicks clicking clunking clunks clanking jiggle wobble wobbled rattly rattled dangling undone gone tambalea tambaleando bailotea gira giran desatornillo desatornillado desatornillando desenrosco desenroscado desenroscando destornillo desajusto desajustado zafado zafada zafados zafando salirse aflojandose suena suelto_suelto caido caida
        """,
    "bentword": """
        bent bends bending bowed twisted crooked buckled warped deformed doblado doblada doblo
        dobló doblaron torcido torcida torcio chueco chueca deformo deformado deformada
        ladeado ladeada ladeo inclinado inclinada enchuecado enchueco enchuecaron desviado curvado curvada arqueado curved curving squashed crushed flattened mangled wonky skewed kinked lopsided
        pandeo pandeado pandeada virado virada deforme abollado abollada dented askew cockeyed out_of_shape not_straight at_an_angle leaning ladeandose doblandose torciendose enchuecada sagging misshapen
        """,
}

RULES = {
    "fixator": """
    = fine
    <pinword>|<frameword> ~4 <good>|tight|solid|secure|place|firm|straight|intact|firme|firmes|
        lugar|sitio|derecho|intacto|apretados|bien|fijo|fija|fijos|fijas|fijito|fijitos|spot_on|rock_solid|rigid|sturdy -<neg> -<notframe> -<workedloose> -<bentword>
    = loose
    <pinword>|<frameword> ~4 <workedloose> -<byvet> -<notframe> -<stitchword> -<tightened>
    loose|wobbly|wiggly|flojo|floja|suelto|suelta ~2 <pinword>|<frameword> -<byvet> -<notframe> -<tightened>
    aflojo|aflojaron|solto|soltaron|cayo|cayeron|salio|salieron|zafo|movio|mueve|falta ~3 \
        <pinword>|<frameword> -<byvet> -<notframe>
    lost ~2 <pinword>
    <pinword> ~2 fell|fallen|came|come|dropped|popped|missing|gone|moving ~2 out|off|away|from|in ~3 <frameword>
    <pinword> ~ are|is|keeps|keep? ~ moving|sliding|loose|turning|backing ~ in|out|up|back
    <pinword>|<frameword> ~2 wobbles|wobbly|moves|slides|suelto|suelta|mueve
    = bent
    <frameword>|<pinword>|fierro|fierros ~4 <bentword> -<notframe>
    <bentword> ~3 <frameword>|<pinword>|fierro|fierros -<notframe>
    <bentword> ~ like ~ a? banana|boomerang|hanger|paperclip|coat_hanger -<legword>
    = loose @asked-fixator
    <workedloose> -<notframe> -<animalnoun> -<poo> -<stitchword> -<bandageword> -<tightened>
    = bent @asked-fixator
    <bentword> -<notframe>
    = loose
    found|encontre|halle|aparecio|hallamos|encontramos ~4 <pinword>|piececita|pieza|bit|piece ~4 floor|bed|crate|piso|suelo|cama|metal|fierro -<ingest>
    <tightened> ~~ again|otra_vez|de_nuevo|volvio ~3 <workedloose>
    <tightened> ~~ <workedloose> ~ again|otra_vez|de_nuevo
    = fine fixed
    <pinword>|<frameword> ~4 <neg> ~3 budge|budged|budging|shift|shifted|wobble|wiggle|mueve|mueven|movido|movio|move|moved|moves|paso|pasa
    <tightened> ~~ <neg> ~4 move|moved|moves|budged|mueve|movido|loose|flojo|problem|problema
    = fine @asked-fixator
    solid|steady|rigid|tight|straight|firme|firmes|fijo|fija|fijos|derecho|derechito|derechos|solido|secure|sturdy|rock_solid|parejo -<neg> -<workedloose> -<bentword> -too
    = fine fixed @asked-fixator
    <neg>|nothing|nada ~2 <workedloose>|<bentword>|budge|budged|budges|wobble|play -<stitchword>
    = loose
    can ~ turn|twist|spin|wiggle|move|waggle|unscrew ~2 <pinword>|<frameword> -cant -not
    puedo ~ girar|mover|voltear|desatornillar ~2 <pinword>|<frameword> -no
    <pinword> ~2 sticking|sticks|poking|stuck|further|longer|sale|sobresale|salido|salida ~ out|mas|further|more|than ~3 others|before|yesterday|rest|otros|antes|demas|ayer
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {
    "fixator": {"fine": None, "loose": "fine", "bent": "fine"},
}

"""The leg crooked, dangling or bent the wrong way."""

from __future__ import annotations

CLASSES = {
    "crookedword": """
        crooked wonky flapping flapped dangling dangles dangle dangled bent deformed twisted
        misaligned wonky_looking floppy flopping flops swinging swings swung swing pendulum
        angle angled snapped dislocated displaced wobbling loose chueca chueco chuecas colgando
        cuelga colgada colgaba torcida torcido doblada doblado volteada volteado deforme
        deformada bailando bamboleando suelta desviada quebrada rota dislocada zafada zafo_se
        girada virada malformed malalignment misshapen unstable rotated broken_again banana
        askew torcidita chuequita unnatural angulated desencajada fracturada fractured guanga
        bambolea desarmada guango
        """,
    "legonly": """
        leg legs limb paw foot foots pata patas patita pierna piernita hindleg hind_leg back_leg
        lower_leg knee bone hock pie hueso ankle rodilla muslo shin tibia femur elbow forearm
        tarsus
        """,
    "notleg": """
        straight derecha derechita neck head ear tail cone collar cola oreja bed basket table
        sofa sills swinging_a carefully normally
        """,
}

RULES = {
    "leg": """
    = crooked
    from|below|desde|de ~ the|la|el? <joint> ~ down|abajo|para ~~ swinging|swings|dangling|flopping|cuelga|hanging|colgando|flops|loose|suelta
    <legonly> ~4 back_to_front|wrong_way_round|inside_out
    <legonly> ~3 bend|kink|angle|step|dent in it
    heard ~ it ~ go|snap|crack|pop
    se le quebro|rompio|fracturo|zafo ~ otra_vez|de_nuevo|de_vuelta -<coneword> -<bandageword>
    hueso ~2 de lado
    hueso ~2 salido|chueco|desviado|fuera_de_lugar
    bent|bends|doblada|bending|angled ~2 halfway|below|above|middle|mitad|medio ~3 <legonly>|shin
    <legonly> ~3 out|fuera of|de ~ joint|place|socket|lugar|su_lugar
    <legonly> ~3 all? wrong|mal|raro|rara ~~ pointing|apuntando|twisted|side|lado|turned
    bends|bending|bent|moves|moving|dobla|doblando ~2 where|donde ~4 shouldnt|isnt|no|not|arent ~4 joint|bend|knee|articulacion|coyuntura|doblar|dobla|rodilla
    <legonly> ~4 pointing|points|bending|bends|going|goes|apunta|dobla|va ~3 direction|way|direccion|lado|angle ~~ shouldnt|not_right|no_debe|not_supposed|no_deberia|isnt_right
    <legonly> ~4 angulo|angulos|posicion|position|angle ~ raro|rara|extrano|extrana|feo|fea|imposible|weird|odd|strange|funny|wrong|horrible|unnatural|anormal|que_no
    volvio|volvieron ~3 quebrar|romper|fracturar|quebrarse|romperse|zafar ~3 <legonly>
    oyo|oi|oimos|escuche|escuchamos|sono|heard|hear|was|hubo ~4 snap|crack|pop|tronido|crujido|chasquido|trueno ~~ <legonly> ~3 colgando|cuelga|chueca|dangling|hanging|swinging|limp|loose|useless
    <legonly> ~3 del? reves
    <legonly> ~5 <crookedword> -<notleg> -<coneword> -<bandageword>
    cuelga|colgando ~2 <legonly>
    crooked|dangling|deformed|dislocated|chueca|colgando|deforme|dangles|misshapen|quebrada|
        rota|torcida|snapped ~3 <legonly> -<notleg> -<coneword>
    <legonly> ~4 wrong|weird|funny|odd|strange|opposite|other|impossible|unnatural|backwards|
        sideways|raro|rara ~ way|direction|angle|angulo|lado|direccion|out
    <legonly> ~5 bends|bent|bending|points|pointing|facing|sticks|sticking|turned|dobla|
        doblada|apunta|apuntando|mira|volteada|se_le_va|rotated|twisted|se_va|goes ~3 wrong|
        backwards|sideways|outwards|inwards|out|side|reves|otro|lado|fuera|afuera|atras|
        unnatural|angle|raro|inward|outward|pa
    bent|bends|pointing|points|turned|twisted|doblada|apunta|volteada ~3 wrong|backwards|
        sideways|outwards|reves|otro_lado ~ way|direction? -<bandageword> -<coneword>
    bend|bent|bends|bending ~ the wrong|in
    al reves ~ pata|patita
    <legonly> ~4 facing|faces|faced|pointed|points|pointing|turns|viendo|mirando|apunta|
        apuntando|volteada|va|vaya|ve ~4 other|another|wrong|otro|contrario|opuesto ~ way|side|
        direction|lado|sentido
    <legonly> ~4 bends|bending|bend|moves|moving|dobla|dobló|doblo|gira ~3 where|donde ~3 shouldnt|
        not|no|knee|joint|debe|debia
    <legonly> ~ swings|swinging|flops|flopping|wobbles|cuelga ~4 below|like|como|freely|loose|
        sideways|from|gate|rag|trapo
    extra|second|another joint|bend|elbow|knee ~4 leg|shin|bone|where|below
    bend|kink|angle|twist|curve|dobladura|angulo ~2 in|en|to ~ <legonly> -<notleg>
    <legonly> ~4 deviates|deviated|deviation|angulation|instability|unstable|desvia|desviada
    <legonly> ~3 look|looks|looking ~ to? other|wrong|another ~ way|side|direction
    instability|crepitus ~3 fracture|site|tibia|femur|limb
    como si ~2 no ~2 tuviera ~ hueso|huesos +<legonly>
    = crooked @weight_bearing @leg @mobility
    hanging|dangling|swinging|pointing|points|twisted|bent|swings|flopping|flops ~3 sideways|
        out|loose|wrong|outwards|backwards|around
    = crooked
    heard|felt|hear|oi|escuche|trono|sono ~4 snap|crack|pop|tronido|crujido|chasquido ~5 leg|
        bone|knee|pata|hueso
    leg|bone|pata|hueso|pierna|patita ~3 broken|broke|snapped|rompio|quebro|fracturo|
        fractured|rota|quebrada|breaks|zafo|fracturada -<coneword>
    broke|broken|rompio|quebro|refractured|fracturo|snapped ~2 leg|bone|pata|hueso|patita|
        pierna|femur|tibia -<coneword>
    implant|plate|placa|pin ~3 failure|failed|broken|snapped|rota|doblada
    <legonly> ~4 hanging|hangs|hung|hang -<notleg>
    hanging ~ by ~ thread -<stitchword> -<coneword> -<bandageword>
    doblo|volteo|torcio ~3 <legonly>
    hanging|hangs ~3 leg|paw|limb
    <legonly> ~~ swings ~3 pendulum
    = crooked !@bandage !@cone !@asked-bandage !@asked-cone !@incision
    its|it|leg|paw|foot ~ hanging ~ off -<bandageword> -<coneword> -<stitchword>
    """,
}

NEGATED = {
    "leg": {
        "crooked": None,
    },
}

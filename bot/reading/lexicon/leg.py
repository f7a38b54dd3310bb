"""The leg crooked, dangling or bent the wrong way."""

from __future__ import annotations

CLASSES = {
    "limpthing": """
        trapo trapos hilacha gelatina chicle hule goma fideo fideos espagueti cuerda mecate manguera calcetin media cordon pendulo toalla
        spaghetti noodle noodles jelly jello rubber rag ragdoll sock string rope hose wet_towel flannel elastic blancmange pendulum
        """,
    "crookedword": """
        descuadrada ladeada enchuecada enchuecado zambo desalineada
        zigzag zig_zag zigzagged boomerang deviated kinked skewed cockeyed cock_eyed skew_whiff wonkified
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
        foots
        leg legs limb paw foot foots pata patas patita pierna piernita hindleg hind_leg back_leg
        lower_leg knee bone hock pie hueso ankle rodilla muslo shin tibia femur elbow forearm
        tarsus
        """,
    "notleg": """
        straight derecha derechita neck head ear tail cone collar cola oreja bed basket table
        sofa sills swinging_a carefully normally
        a_pierna_suelta
        """,
}

RULES = {
    "leg": """
    = crooked
    wobble|wobbles|bend|bends|bending|bent|moves|gives|hinge|hinges|swings ~3 where ~2 shouldnt|isnt|doesnt|not|never|arent
    bone|bones ~ are|is|sits|lies|looks? ~ at ~ a|an ~ funny|odd|weird|strange|wrong|bad|different angle|angles
    kneecap|patella ~3 side|round|around|slid|slipped|popped|moved|out
    rotula ~3 lado|movio|salio|corrio|safo|zafo
    <legonly>|foots ~3 pointing|points|pointed|faces|facing ~3 me|him|us|sky|ceiling|behind|backwards -licks
    <legonly> ~2 parece|parecia|quedo|esta ~ como|de|un? ~ <limpthing> -<bandageword>
    <legonly> ~ mira|apunta|ve|viendo ~ al|pal|para|hacia|pa ~ el? techo|cielo|lado|atras|revés|reves
    <legonly> ~4 corta|cortita|chica ~~ chueca|torcida|girada|volteada|doblada
    hueso|cabeza_del_hueso|cadera|femur ~3 salio|sale|zafo|safo|movio|disloco -piel -herida
    <legonly> ~~ like ~ a ~ question|broken|snapped|banana|boomerang|pretzel|corkscrew|hockey mark|branch|twig|stick|$
    <legonly> ~4 at <heat>
    <legonly> ~4 a|en <heat>
    bendy|bends|wobbly|loose|floppy ~ in|at|around ~ the ~ middle ~ of ~ the|his|her? bone|shin|leg|thigh
    <legonly> ~4 folds|folding|folded|collapses|bends ~ in half|two
    <legonly> ~4 dobla|doblada|partida|parte ~ en|por|a dos|mitad|medio
    pata|patita|pierna ~3 como ~ un|una? acordeon|bumeran|bumerang|gancho|interrogacion|platano|escuadra|trompo|resorte|arco
    pata|patita|pierna ~3 en escuadra|angulo|gancho|arco
    zigzag|wonky|dangly|deformed|l_shaped|z_shaped|twisted|backwards|sideways|dangling|floppy leg|paw|foot -<coneword> -<bandageword> -walking
    <legonly> ~3 points|pointing|spins|spinning|twirls|spun|rotates ~2 right|all|sky|ceiling|round|behind|backward|wrong -<swell>
    <legonly> ~4 viendo|apuntando|mirando|volteando ~ pa|para|hacia ~ atras|tras|arriba|cielo|techo|afuera|adentro -camina
    <legonly> ~3 da|dando ~ vueltas|la_vuelta -<walkword>
    shin|leg|tibia|femur|thigh|bone ~~ bends|bending|bend|moves|gives|kinks ~ in|at|halfway ~ the ~ middle|way
    <legonly> ~3 different|funny|weird|odd|strange|wrong shape
    <legonly> ~4 gone|went|goes|went_all ~ floppy|wonky|sideways|backwards|crooked
    <legonly> ~~ shape|shaped ~2 like|of ~2 a|an|the? letter|l|z|v|s|u|hook|banana|boomerang|bow|question|corkscrew|horseshoe
    <legonly> ~~ forma|figura ~ de ele|l|zeta|z|v|ve|s|gancho|arco|platano|bumeran|herradura|paréntesis
    l|z|v|s shaped ~ <legonly>
    <legonly> ~3 on|is|was|sits|facing|faces|face|put|goes|looks|turned|now ~ backwards|back_to_front|upside_down|inside_out|wrong_way_round|sideways -walking -walks -walk -going
    <legonly> ~3 mira|quedo|esta|apunta|ve|anda ~ para|pa|hacia|al? ~ atras|reves|otro_lado|revez -camina
    extra|spare knee|elbow|joint|hinge|hock -bandage -bed
    like|as_if|looks|got|has|grew ~4 another|second|extra|two|new|spare knee|knees|elbow|joint|joints|hinge|hock -<notleg> -surgery -op -done
    como|como_si|parece ~ tuviera|tiene|trae|hubiera? ~ otra|otro|dos|doble|una ~ rodilla|rodillas|codo|codos|coyuntura|articulacion|bisagra
    flop|flops|flopping|flopped|flap|flaps|flapping|swing|swings|swinging|wobble|wobbles ~ about|around|loose? ~ like ~3 <limpthing>
    <legonly> ~~ like|as ~3 <limpthing> -<bandageword> -<coneword> -<stitchword>
    <legonly> ~~ como ~ de|un|una? ~ <limpthing> -<bandageword> -<coneword> -<stitchword>
    se ~ le ~ va|mueve|abre|ladea|gira|dobla ~ pa|para|hacia|de|a ~ un|el|los|todos? lado|lados|donde|afuera|fuera ~3 <legonly>
    <legonly> ~~ se ~ le? ~ va|mueve|abre|ladea|gira ~ pa|para|hacia|de|a ~ un|el|los|todos? lado|lados|donde|afuera
    <legonly> ~4 moves|moving|swivels|spins|rotates|turns ~ in|every|all|any ~ every|all|any? ~ direction|directions|which_way|ways
    hang|hangs|hanging|hung|stick|sticks|sticking|stuck|point|points|pointing|bend|bends|bent|lies|lying|sits|held|its|it ~3 at ~ a|an|some|this? weird|funny|odd|strange|bad|wrong|impossible|unnatural|crazy|mad|horrible|awful|nasty angle -<coneword> -<bandageword> -ear -ears -tail -head -tongue -neck
    cuelga|queda|quedo|apunta|esta|tiene|trae ~3 en ~ un angulo ~ raro|feo|extraño|chueco|imposible -<coneword> -<bandageword> -oreja -cola -cabeza
    <legonly> ~~ now|ahora ~2 bowed|arqueada|chueca|crooked|bent|torcida|curved|twisted -<coneword> -<bandageword>
    rodilla|cadera|codo|rotula|hombro ~2 sale|salen ~ para|pa|de|hacia
    wobbly|floja|loose|guanga|suelta|unstable|jelly ~3 below|abajo|debajo|under ~4 knee|elbow|hock|rodilla|codo|shin -<stitchword> -<bandageword> -<coneword>
    bending|bends|bent|gives|moving ~2 where|donde ~2 shouldnt|shouldn't|no|not ~~ <joint>|below|above
    se ~ le ~ dobla|volteo|voltea|tuerce|torcio ~ la|el? <legonly> -<neg>
    extra|second|another|an|like elbow|joint|knee|bend ~3 in ~ it|leg|shin|middle
    <legonly> ~3 swings|flops|dangles|flaps|swinging|flopping ~ free|loose|about|around|freely
    like|as_if|como_si|como ~~ no|sin|without ~2 bone|bones|hueso|huesos +<legonly>
    floppy|floppy_as ~2 halfway|below|from|under ~2 knee|down|elbow|hock|shin|there
    <legonly> ~3 reves
    reves ~3 <legonly>
    trono|trueno|crac|crack|snap|pop|tronido|crujido|chasquido ~~ le|la|ahora|now|it|its ~3 cuelga|colgando|suelta|dangling|dangles|hanging|floppy|swinging|chueca
    dislocated|dislocation|luxated|luxation|deformed|deforme|deformada|dislocada|dislocado|dislocó|luxada|luxado|luxo -<coneword> -<bandageword> -<bruiseword>
    hip|knee|kneecap|stifle|elbow|shoulder|ankle|hock|bone|joint ~3 popped|pops|slipped|slid|jumped|came|come|gone ~ right? out|off -<wound> -cushion
    rodilla|cadera|codo|hueso|rotula|hombro|tobillo|articulacion ~3 salio|zafo|safo|disloco|brinco|desencajo|movio|corrio
    salio|zafo|safo|disloco|torcio|desencajo|luxo|desvio|descoyunto|volteo|viro|giro ~3 rodilla|cadera|codo|hueso|rotula|hombro|tobillo|pata|patita|pierna|pie -<coneword> -<bandageword>
    <legonly> ~3 torcio|zafo|safo|disloco|desencajo|luxo|desvio|descoyunto|viro|volteo -<coneword> -<bandageword>
    <legonly> ~4 isnt|not|no|aint ~3 straight|derecha|recta|derechita|aligned|lined_up|alineada
    <legonly> ~3 turned|turns|turning|twisted|rotated|rotating|swung|splayed|rolled|swivelled|swiveled|spun ~2 out|outwards|in|inwards|round|around|over|sideways|backwards|under -<bandageword>
    <legonly> ~3 bowed|bows|bowing|curved|curves|curving|arqueada|arqueado|chuequita
    <legonly> ~4 like|como ~ a|un|una|de|si? jelly|rubber|spaghetti|noodle|gelatina|chicle|hule|trapo|goma|fideo|rag|wet_noodle
    below|abajo_de|debajo_de ~ the|la|his|her|su ~ knee|elbow|hock|rodilla|codo ~~ jelly|rubber|loose|floppy|swinging|swings|flops|gelatina|suelta|colgando|cuelga
    volteada|virada|girada|chueca|torcida|desviada|guanga|desencajada|descuadrada|zafada|arqueada ~2 <legonly> -<bandageword>
    pata|patita|pie|pierna ~2 para|pa|hacia ~ afuera|fuera|adentro|otro -<walkword> -echado -acostado -<swell>
    baila|bailotea|bambolea|bamboleando|bailando|balancea|columpia|zangolotea ~2 <legonly>
    <legonly> ~3 baila|bailotea|bambolea|bamboleando|balancea|columpia|zangolotea|zarandea
    la|le ~ trae|tiene|lleva|cuelga|quedo ~ bailando|bamboleando|suelta|chueca|volteada|torcida|deforme|zafada|quebrada|virada|guanga -<coneword> -<bandageword> -<stitchword>
    volvio|vuelto|vuelve ~2 quebrar|romper|fracturar|zafar|quebrarse|romperse|fracturarse|salir ~3 hueso|pata|pierna|placa|tornillo|clavo
    fracturo|fracturado|quebro|refracturo ~ de_nuevo|otra_vez|de_vuelta -<coneword>
    pata|patita|pierna|pie ~2 colgando|cuelga|colgada -lleva -<neg>
    trono|trueno|crack|snap|pop ~~ colgando|cuelga|suelta|chueca|dangling|hanging|floppy|swinging|useless +<legonly>
    trono ~~ quedo ~ colgando|suelta|chueca
    <legonly> ~3 shorter|longer ~~ twisted|crooked|turned|than
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
    <legonly> ~3 folded|folds|folding|buckled|buckles|gone ~ out|outward|outwards|sideways|backwards|inwards|inward -<bandageword> -<coneword>
    <legonly> ~4 off|out ~ to ~ the|one ~ side
    dobla|doblo|tuerce|mueve ~3 <legonly> ~3 donde|hacia ~2 no|afuera|fuera|lado|atras -<bandageword>
    <legonly> ~3 tuerce|dobla|voltea|abre ~ para|pa|hacia|de ~ afuera|fuera|adentro|lado|atras
    <legonly> ~3 va|fue|cae ~ de|hacia|para ~ un|el? ~ lado|afuera|fuera
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
    bent|doblada|torcida|turned|twisted|angled|chueca|girada|volteada|bends|dobla ~2 inward|inwards|in|outward|outwards|out|adentro|afuera -<stitchword> -<bandageword> -<coneword>
    dangling|dangles|colgando -<stitchword> -<bandageword> -<coneword> -thread -lead -lleva -la
    turns|turned|twists|splays|sticks ~ out to|sideways|at
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
    hanging|hangs ~3 leg|paw|limb -<bandageword> -<coneword> -<stitchword>
    <legonly> ~~ swings ~3 pendulum
    = crooked !@bandage !@cone !@asked-bandage !@asked-cone !@incision
    he|she|hes|shes|its|it|looks ~2 broken|broke|rebroken|rebroke|refractured|snapped ~ it? ~ again -<anyobject>
    se ~ le|lo? ~ volvio|vuelve ~ a ~ quebrar|romper|fracturar|zafar
    se ~ le|lo? ~ quebro|fracturo|zafo|disloco ~ otra_vez|de_nuevo|de_vuelta
    bend|kink|angle|curve|wobble ~ in it
    la trae|tiene|lleva ~ de lado
    trae|lleva|tiene ~ la ~ pata colgando
    its|it|leg|paw|foot ~ hanging ~ off -<bandageword> -<coneword> -<stitchword>
    """,
}

"""Both hind legs that drag or do not answer."""

from __future__ import annotations

CLASSES = {
    "crawler": """
        sirena sirenita foca carretilla lombriz gusano soldado pecho_tierra
        mermaid seal sealion sea_lion wheelbarrow commando army_crawl army_crawling army_crawls commando_crawl commando_crawling merman walrus
        """,
    "hindpair": """
        dedos_de_atras patitas_de_abajo los_de_atras cuartos
        hinds hind legs_behind legs_at_the_back rear_half_of_him
        las_dos_de_atras las_de_atras lo_de_atras las_dos_traseras traseras los_cuartos parte_de_atras parte_trasera mitad_de_atras mitad_trasera media_de_atras cuarto_de_atras patas_de_atras de_la_cintura_para_abajo cadera_para_abajo cintura_para_abajo de_la_cadera_para_atras ambas_traseras
        back_legs_both both_rears both_rear rears hinders back_ones hind_ones tail_half tail_end back_pair hind_half rear_half rear_paws rear_feet rear_limbs bum_end back_part
        back_legs hind_legs rear_legs back_feet hind_feet back_paws hind_paws back_end hind_end
        rear_end back_half hindquarters hind_quarters hind_limbs back_limbs patas_traseras
        patitas_traseras patas_de_atras patitas_de_atras piernas_de_atras patas_posteriores
        tren_posterior tren_trasero cuarto_trasero cuartos_traseros dos_de_atras dos_traseras
        las_de_atras las_traseras both_legs both_hinds ambas_patas dos_patas
        """,
    "lifeless": """
        muerto muertos sin_vida dormidas inertes inerte colgando flojas paralizados paralizada guangas de_trapo
        dead_weight deadweight lifeless kaput unresponsive numb knackered_completely trailing
        drag drags dragging dragged useless paralysed paralyzed limp gone dead floppy arrastra
        arrastrando arrastran arrastro paralizada paralizadas paralizado inmoviles muertas flacidas
        """,
}

RULES = {
    "leg": """
    = paralysed
    no|ni ~ le|les|se|me? ~ funcionan|funciona|jalan|responden|sirven|sostienen|aguantan|mueven|siente|mueve ~ las|sus|los ~ dos? <hindpair>
    quedo|esta|anda|amanecio ~ paralitico|paralitica|paralizado|paralizada|invalido|invalida|tullido|tullida|parapléjico
    cant|cannot|unable|wont|couldnt ~2 stand|rise|get|lift|support ~ up|himself|herself? ~ at|from|on ~ the? <hindpair>|back
    no ~ se? ~ puede|logra|quiere? ~ parar|levantar|sostener|pararse|levantarse|sostenerse ~ de|con ~ las? atras|traseras|<hindpair>
    drag|drags|dragging|pulls|pulling|hauls|hauling|scooting|shuffles ~ his|her|its bum|bottom|backside|rear|butt|back_end ~ along|behind|around|about -carpet -itch -glands -<poo>
    walks|walking|goes|gets|moves|pulls ~2 on|with|by ~ his|her|the? ~ front ~ legs|paws|feet|two|ones ~~ drag|drags|dragging|rest|back|behind
    no|zero ~ movement|feeling|sensation|deep_pain|response|reaction|reflexes|pain_response ~ in|from|at ~ the|his|her|either|both? ~ <hindpair>
    pinched|pinch|squeezed|poked|tickled ~3 back|hind|rear ~ toes|feet|paws|foot|legs ~~ nothing|no|not|doesnt|didnt|zero
    pellizque|pellizco|aprete|apriete|piqué ~4 atras|traseras|traseros ~~ no|ni|nada
    cintura|cadera|lomo ~ para|pa|hacia abajo|atras ~3 muerto|muerta|paralizado|paralizada|nada|no|inmovil
    <hindpair> ~~ <neg>|neither|none ~3 move|moves|work|works|function|functions|respond|responds|budge|hold|do_a_thing|do_anything|a_thing -<askmark>
    <hindpair> ~~ no|ni|ninguna|tampoco ~3 jalan|jala|mueve|mover|responden|responde|funcionan|funciona|sirven|sostienen|aguantan|siente|sienten|reaccionan
    <neg> ~ <hindpair> ~ today|now|anymore|at_all|this_morning|tonight|since
    move|moves|moving|use|uses|feel|feels|drag|drags|dragging ~~ neither|either ~ one|leg|of ~4 <hindpair>|back|hind|rear
    <hindpair> ~4 slides|sliding|scoots|trails|trailing|flat|dragged ~ along|behind|out|on
    <crawler> ~~ <hindpair>
    <hindpair> ~~ <crawler>
    half ~ body|dog|cat|of_him|of_her ~ is|has|gone? dead|paralysed|limp|numb|gone
    media|medio|mitad ~ del|el? cuerpo ~2 muerto|muerta|paralizado|paralizada|dormido|dormida
    walks|walking|pulls|pulling|drags|moves|moving|gets ~ himself|herself|along|around|about? ~ only|just ~ with|on|by|using ~ his|her|the ~ front|forelegs|arms
    camina|anda|avanza|jala|arrastra|arrastrandose|mueve ~ solo|nomas|puro|puras|solamente? ~ con ~ las|sus|puras ~ manos|manitas|delanteras|de_adelante|de_enfrente|brazos
    <hindpair> ~4 <lifeless> ~ both|dos|ambas? -<neg>
    <lifeless> ~3 both|las_dos|ambas ~ of? <hindpair>
    <hindpair> ~3 trail|trails|trailing|trailed|useless|limp|lifeless|paralitica|paraliticas -<neg>
    lost|perdio|perdido|loses|losing ~ the|el|la|all? ~ use|feeling|movement|control|movimiento|sensibilidad|uso ~ of|in|de|en ~ both|all|sus|las? ~2 <hindpair>|back|hind|rear|atras|traseras
    <neg> ~ feeling|sensation|movement|sensibilidad|movimiento|fuerza ~ in|of|en|de|at ~ his|her|the|both|either|las|sus? ~2 <hindpair>
    neither ~ of|his|her? ~ the|his|her? back|hind|rear ~ leg|legs|foot ~3 moves|move|works|work|moving|working
    paralitico|paralitica|paralizado|paralizada|paraplegic|paraplejico ~ de|from? ~ atras|cintura|waist|behind -<neg>
    arrastra|arrastrando|jala|arrastro ~ lo|la|todo|su|el ~ parte|tren? ~ de? atras|trasera|trasero|posterior
    perdio|perdido ~3 movimiento|fuerza|sensibilidad ~3 <hindpair>|atras|traseras
    se quedo ~ paralitico|paralitica|invalido|invalida|tullido|tullida
    <hindpair> ~4 <lifeless> -<neg>
    drag|drags|dragging|dragged|arrastra|arrastrando ~4 <hindpair>
    <hindpair> ~~ drags|dragging|arrastra|arrastrando ~ them|both|las|ambas
    <neg> ~3 move|moving|feel|use|using|mueve|mover|siente|sentir|responden|usar|usa ~4 <hindpair>
    <hindpair> ~2 <neg> ~2 work|working|move|moving|respond|responding|mueve|mueven|responden|
        funcionan|siente
    <hindpair> ~2 <neg> mueve|siente|responde
    drags|dragging|pulls|pulling|hauls|hauling ~ himself|herself|itself ~3 front|arms|floor
    se arrastra|jala ~ con ~3 delanteras|adelante|enfrente
    paralysed|paralyzed|paralisis|paralizado|paralizada|paralytic|paralysis -<neg> -<askmark> -laughter -laughing -laugh -fear -shock -risa -miedo -susto -me -im -i
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {"leg": {"crooked": None, "paralysed": None}}

"""Both hind legs that drag or do not answer."""

from __future__ import annotations

CLASSES = {
    "hindpair": """
        back_legs hind_legs rear_legs back_feet hind_feet back_paws hind_paws back_end hind_end
        rear_end back_half hindquarters hind_quarters hind_limbs back_limbs patas_traseras
        patitas_traseras patas_de_atras patitas_de_atras piernas_de_atras patas_posteriores
        tren_posterior tren_trasero cuarto_trasero cuartos_traseros dos_de_atras dos_traseras
        las_de_atras las_traseras both_legs both_hinds ambas_patas dos_patas
        """,
    "lifeless": """
        drag drags dragging dragged useless paralysed paralyzed limp gone dead floppy arrastra
        arrastrando arrastran arrastro paralizada paralizadas paralizado inmoviles muertas flacidas
        """,
}

RULES = {
    "leg": """
    = paralysed
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
    paralysed|paralyzed|paralisis|paralizado|paralizada|paralytic|paralysis -<neg> -<askmark>
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {"leg": {"crooked": None, "paralysed": None}}

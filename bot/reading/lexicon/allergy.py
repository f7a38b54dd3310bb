"""Signs of an allergic reaction: hives, and a face that swells."""

from __future__ import annotations

CLASSES = {
    "crying": """
        crying cry cried chew chewing drool drooling bedtime meal
        """,
    "hiveword": """
        hivey hivy enronchado enronchada enronchadito ronchudo ronchuda
        sarpullido salpullido urticarial nettlerash erupcion
        hives hive welts wheals urticaria nettle_rash ronchas roncha habones habon ronchitas
        """,
    "bumpword": """
        bumps lumps spots bolitas granitos bultitos blotches weals granos bultos ronchones
        bumpy lumpy blotchy pimples granotes granote granulos ronchitas bolotas piquetes
        bultos bolas bolita granito granitos puntitos chipotes
        """,
    "faceword": """
        chops chin cheek cheeks brow eyebrows mouth nostrils jeta jetita trompita hociquito
        carita cachete bemba bembas belfo ojito ojitos papada morro morros rostro boca
        face muzzle snout lips lip eyelids eyelid eyes eye jowls nose cara carita hocico trompa
        labios labio parpados parpado ojos ojo cachetes belfos
        """,
    "facepuff": """
        puffing huge enormous massive enorme enormes twice_its twice_her twice_his double_its
        double_her double_his ensanchada
        swell blown blew inflated inflates ballooning fat double_the_size twice_the_size puffs
        hinchando hincha hinchadito hinchadita hinchadas hinchandosele inflado inflada
        inflados inflo inflaron infla inflando inflandose inflama inflaman inflamadas
        inflamando crecieron crecio abotagada abotagado abotagados abultada abultado deforme
        deformada desfigurada desfigurado abultados
        puffed puffed_up puffy blown_up ballooned balloon swelled swollen swelling swells bloated
        hinchada hinchado hinchados hinchadas hincho hincharon inflamada inflamado inflamados
        inflamo hinchando hinchandose hinchaditos globo
        """,
}

RULES = {
    "allergy": """
    = hives
    se ~ le|me? ~ broto|brotado|enroncho|enronchado|enroncha|salpullo ~ todo|toda|la|el|de|$ -<wound>
    skin|coat|belly|back|body ~3 bumpy|lumpy|blotchy|hivey|welted -<wound>
    raised|itchy|red|round ~ little|small|red|round|raised? circles|rings|patches|bumps|lumps|spots|blotches|marks|dots -<wound> -<stitchword>
    little|small|tiny ~ raised|red|round? circles|lumps|bumps|blotches ~3 everywhere|all|body|belly|tummy|back|fur|skin -<wound>
    <bumpword> ~ all over|everywhere -<wound>
    <bumpword> ~3 under ~ the|his|her fur|coat -<wound>
    <bumpword> ~4 popped|come|came|coming|broke|sprang|appeared|appearing ~ up|out? ~3 all|everywhere|nowhere|back|belly|tummy|body|sides -<wound>
    came|come|coming|broken|broke|breaking|erupted out in ~ a|an|some|big|loads|of? rash|<bumpword>|<hiveword>
    rash ~ all over|everywhere
    rash ~3 on|over|across ~ his|her|the belly|tummy|back|body|chest|sides
    salieron|salio|salido|brotaron|broto|brotado|saliendo|brotando ~4 <bumpword>|<hiveword> -<wound> -<gumword>
    <bumpword> ~2 levantados|levantadas|rojas|rojos|rojitas ~ en|por -<wound>
    <bumpword> ~2 por|en ~ el|la|su|sus|todo|toda? lomo|lomito|panza|pancita|cuerpo|espalda|piel|cuello|pecho|orejas|patas -<wound> -<surgery>
    pelo|pelito|piel ~ como? levantado|levantada|parado ~ en bolitas|bolas|parches|ronchas|motas
    reaccion|dio ~ una? alergica|alergia -<neg>
    <neg>|sin reaccion alergica
    allergic reaction -<neg> -<ifword> -<askmark>
    <hiveword> -bees -bee -abejas
    <bumpword> ~ on|under|in|all|across|en ~ over|the|his|her|toda|todo|la? skin|piel|body|cuerpo -<wound>
    <bumpword> ~2 por ~ todos|toda|todo|todas
    brotaron|brotado|brotando|salieron|came_up|broke_out|coming_up ~3 <bumpword>|<hiveword>
    <bumpword> ~ en|por ~ todo|toda
    covered|full|lleno|llena|cubierto|cubierta ~ in|of|de|con <bumpword>|<hiveword>
    = swollen_face
    stung|bee|wasp ~~ lip|lips|face|muzzle|nose|eye|eyes|snout ~3 <facepuff>|big|up
    pico|picadura|piquete|abeja|avispa|alacran ~~ cara|hocico|labio|ojo|jeta|trompa|nariz ~3 <facepuff>|grande
    cara|hocico|trompa|jeta|labios|ojos|parpados|nariz ~4 grandota|grandote|grandotes|gordo|gordos|gorda|saltados|cerrado|cerrados ~ de? ~ lo? hinchado|hinchada|hinchados|inflamado|inflamada
    <faceword> ~4 <facepuff> -<wound> -<joint> -<crying>
    <faceword> ~4 swollen|puffed|swelled shut|closed|closing|over|right|up
    <facepuff> ~3 <faceword> -<wound> -<joint> -<crying>
    parece|como|cara ~ de? ~ un? boxeador
    <faceword> ~~ como pelota|globo|sapo|pez_globo|toronja|papa -<bellyword>
    <faceword> ~~ like ~ a|an? balloon|boxer|pufferfish|hamster|chipmunk|football|grapefruit|hippo
    no ~ puede|logra ~ abrir ~2 ojo|ojos|ojito|ojitos ~~ hinchado|hinchados|inflado|inflados|inflamado
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {
    "allergy": {"hives": None, "swollen_face": None},
}

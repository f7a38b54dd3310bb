"""Breathing."""

from __future__ import annotations

CLASSES = {
    "fastly": """
        rapido rapida rapidisimo rapidisima rapidito acelerado acelerada fast quick
        rapidly recio
        """,
    "calmly": """
        quietly gently peacefully slowly silently softly evenly easily comfortably
        calmado calmada calmadito calmadita tranquilito tranquilita suave suavecito
        despacito pausado pausada igual igualito como_siempre rico parejito
        profundo_y_tranquilo al_ritmo sereno relajado
        """,
    "calmrate": """
        12 14 15 16 18 20 21 22 23 24 25 26 27 28 30 twenty_four twenty_two veinticuatro
        veintidos veinte
        """,
    "felid": "",
    "goodrate": "heart pulse bpm ticker lpm latidos pulso corazon",
    "breath": """
        breath breathing breathe breathes breathed breaths breathin breathless respiration
        respirations respiratory resp resps rr respira respirando respiracion respirar respiro
        respiraba jala_aire jalar_aire jalando_aire toma_aire agarra_aire agarrar_aire inhala inhales exhales resuella resollando aliento_falta resuello
        """,
    "air": "air aire oxygen oxigeno",
    "hardword": """
        ahogado ahogada strong strongly hard heavy heavily fast rapid rapidly quick quickly
        laboured labored labouring laboring difficult difficulty trouble struggling struggles
        struggle struggled noisy noisily raspy rasping rattling rattle rattly wheezing wheezy
        wheeze wheezes gurgling gurgly gurgle crackly crackling crackles shallow funny strange
        weird gasping effort effortful forced strained straining heaving irregular short
        stressed distressed bad badly weirdly choking stridor whistling whistle snorting
        grunting loud sucking distress working working_hard increased abdominal belly mouth
        open_mouth open_mouthed paradoxical panicky off not_right wrong tachypneic tachypnea
        dyspnea dyspnoea dyspneic dyspnoeic agitado agitada agitadamente rapido rapida
        rapidisimo rapidito raro rara mal dificultad trabajo forzada forzado fuerte cuesta
        batalla batallando silbido silba silbando ronca roncando ruido ruidosa acelerada
        acelerado entrecortada entrecortado hondo esfuerzo feo pesado pesada jadeante corta
        cortada cortadito agitacion problemas problema panza boca_abierta superficial apenas
        tight harder faster quicker heavier louder worse difficult barking honking hoarse
        choky rapidos hunde hunden superficiales agonico costosa costoso desesperado
        struggle rasp rasps rasped wheezed puffing puffed huffing grunts grunt snore snoring
        costando sofocado sofocada pujando barely hardly hiperventilando angustia jala jalando
        """,
    "gaspword": """
        gasping gasps gasped gasp choking chokes choked suffocating suffocates suffocated
        dyspnea dyspnoea dyspneic dyspnoeic tachypnea tachypnoea tachypneic tachypnoeic apnea
        apnoea respiratory_distress hyperventilating stridor wheezing wheezes ahoga ahogando
        ahogandose se_ahoga asfixia asfixiando boqueando boquea sofocando sofocandose disnea
        disneico taquipnea taquipneico hiperventila hiperventilando short_of_breath
        shortness_of_breath out_of_breath breathless fighting_for_breath fighting_for_air
        air_hunger ahogo le_falta_el_aire le_falta_aire falta_de_aire faltandole_el_aire
        no_le_entra_aire sin_aliento cant_catch_his_breath cant_catch_her_breath
        struggling_for_air open_mouth_breathing mouth_breathing agonal open_mouthed_breathing
        gulping_air gulping_for_air sin_aire dificultad_respiratoria flail_chest
        respirando_por_la_boca respira_por_la_boca
        darth_vader huffing_and_puffing puffing_and_panting puffing_and_blowing sofocado
        sofocada sofocandose se_sofoca boqueadas bocanadas agonal_breaths
        le_falta_la_respiracion le_falta_el_aliento sin_resuello se_queda_sin_aire
        quedando_sin_aire quedarse_sin_aire hiperventilado asfixiandose ahogandose_solo
        """,
    "fresh": "fresh outside fuera conditioning con",
    "fastrate": "50 52 54 56 58 60 62 64 66 68 70 72 75 78 80 85 88 90 95 100 110 120",
    "breathfine": "fine normal ok clear good quiet bien",
    "notlaboured": "unlabored unlaboured fine normal normally eupneic easier easy bad_breath breath_smells",
}

RULES = {
    "idiom": """
    = void
    hardly|barely|scarcely ~ hear|notice|see|tell it|him|her +<breath>
    respirar|respirara|airear ~ la|el|su patita|pata|herida|piel|pierna|cicatriz|rodilla
    skin|leg|paw|foot|wound breathe|breathes
    room|space|chance|time to breathe
    """,
    "breathing": """
    = normal
    <breath> ~ so|very|really|nice|nicely softly|quietly|gently|peacefully|evenly|slowly -<neg>
    respira ~ muy|bien|super tranquilo|tranquila|suave|suavecito|despacito|parejo -<neg>
    <breath> ~ is|are|esta|back ~ back|vuelto to|a normal|usual
    fr|rr <calmrate>
    <breath> ~ hondo|profundo|deep|deeply ~~ tranquilo|calmado|parejo|lento|tranquila|relajado|steady|even|calm|slow -<neg>
    <breath> ~3 <calmly> -<neg> -<hardword>
    <calmly> ~ <breath> -<neg> -<hardword>
    respira|respirando|breathing|breathes ~ ya? mejor|better -<neg> -no -peor -worse
    nice|slow|easy|calm|gentle|quiet|even|regular|steady ~2 breaths|breathing -<neg> -<hardword>
    <breath> ~4 <calmrate> -<hardword> -<neg> -<fastrate>
    <calmrate> ~2 breaths|respiraciones|respirations|resps|rpm|respiration -<hardword> -<neg>
    <breath> ~3 same|usual|igual ~ as? always|usual|normal|siempre -<neg>
    <breath> ~3 nice|lovely|slow|slowly|softly|gently|despacio|lento|comoda|comodo -<hardword> \
        -<neg>
    <breath> ~3 <good>|regular|steady|easy|calm|quiet|tranquilo|tranquila|regular|even|
        relaxed|eupneic|sin_esfuerzo|easily|sin_problema|parejo|20|22|24 -<neg>
    <good>|normal|regular|easy|steady ~ <breath> -<neg>
    eupneic|eupnoeic|eupneico|eupneica
    <breath> ~3 unlabored|unlaboured -<neg>
    = normal fixed
    nothing|nada ~ abnormal|wrong|unusual|odd|raro|anormal ~ about|with|in|en|con|de ~ his|her|the|su|la? <breath>
    no|not|isnt|sin|doesnt ~ batalla|batallando|struggle|struggles|struggling|cuesta|dificultad ~3 <breath>|aire
    no|without|sin|zero|ningun|not_any ~ breathing|respiratory|respiration|wheezing ~ problem|problems|issue|issues|trouble|difficulty|difficulties|distress|concerns
    no|not|isnt|nunca|sin ~ <breath> ~ <hardword>|agitado -bien -can -puede -<notlaboured>
    no|not|isnt|arent|nunca|sin ~ <breath> ~2 raro|rara|mal|agitado|agitada|rapido|fast|hard|heavy|heavily|funny|forzado|fuerte|quickly|rapidly -bien -can -puede
    no|without|sin|not ~ trouble|difficulty|difficulties|problem|problems|issue|issues|
        problema|problemas|dificultad|struggling ~3 <breath>
    <breath> ~ without|sin ~ trouble|difficulty|dificultad|problema|effort
    = laboured
    gulping|gulps|gasps|gasping|biting|snapping ~~ for|get|at air|breath
    <breath> ~4 double|twice|catches|catching|hitching|hiccup|hiccupy|stuttering|choppy|erratic
    respira|respiracion|respirando ~ raro|rara|chistoso|chistosa|como|con ~ hipo|brincos|saltitos|pausas|ronquido
    water|fluid|liquid ~ in|on ~ his|her|the chest|lungs|lung
    agua|liquido|flemas ~ en ~ el|los|sus pecho|pulmones
    agitado|agitada ~~ no|ni ~2 acostar*|echar*|dormir*|descansar
    agitado|agitada ~~ acostado|acostada|reposo|echado|echada|descansando|dormido
    jadea|jadeando ~~ no|sin ~ para|parar|deja|detiene +<felid>
    panting|pants ~~ wont|cant|without|not|nonstop|since|hours ~ stop|stopping|settle|stopped|rest? +<felid>
    respirando|respira ~ mal|feo|raro|pesado|cortado -<neg>
    sucking|sucks|pulling|dragging|drawing|gasping|heaving ~ the? air|breath|breaths ~ in|into|$
    hauling|dragging|hauls|drags ~ in|for air|breath|breaths
    chest|ribs|sides|belly|tummy ~2 caving|cave|caves|sinking|sucks|sucked|pulling ~ in -<wound>
    cuello|pescuezo|cabeza ~ para|pa respirar|jalar|agarrar
    estira|estirando|alarga ~ el|su? cuello|pescuezo|cabeza
    honk*|rattl*|gurgl*|snort*|wheez*|rasp* ~~ breath|breathe|breathing|breathes|air|inhale|inhales|lungs|chest
    suena|oye|escucha|hace ~2 silbido|ronquido|estertor|estertores|burbujas|burbujeo|gorgoteo ~~ respira|pecho|respirar|aire
    struggl*|fight*|battl*|labour*|labor* ~ to|for ~ breathe|breath|air
    <barely>|cant|cannot|couldnt|wont ~ get|catch|draw|take ~ a|his|her|any|enough|proper|full ~ breath|air|breaths
    respir* ~3 agitad*|acelerad*|rapid*|feo|fea|entrecort*|forzad*|ruidos*|trabajos* -<neg> -<notlaboured>
    agitad* ~ al|cuando|hasta ~ respirar|respira|dormido|dormida|acostado|acostada -<neg>
    resuella|resuello|resollando|resopla|resoplando|bufa|bufando ~2 fuerte|mucho|feo|recio|pesado|ruidoso|cada|constante
    nariz|narices|naricitas|nostrils ~3 abre|abren|abriendo|abriendose|abiertas|aletean|aleteando
    flaring|flared|flares ~ his|her? nostrils|nose
    <breath> ~3 con|usando ~ la|el|toda|puro? panza|abdomen|estomago|pancita|barriga
    <breath> ~3 with|using|from ~ his|her|the? belly|tummy|stomach|abdomen|whole
    <breath> ~3 por ~ la? boca|hocico
    <breath> ~3 through ~ his|her|the? mouth
    lengua ~2 fuera|afuera|salida ~~ agitado|agitada|ahoga|jadea|jadeando|respira +<felid>
    agitado|agitada ~ sin|y_no|aunque ~3 corrido|correr|ejercicio|hacer|moverse|movido|calor
    congested|congestionado|congestionada|tapado ~~ <breath> -no
    trabajo|esfuerzo|lucha ~ para|por|pa ~ respirar|jalar|agarrar
    working|works|worked ~ so|really|very|too? ~ hard|overtime ~ to|for ~ breathe|breath|air|breaths
    <breath> ~ is|are|was|like|de? ~ shallow|superficial|cortita|cortito|jadeante|raspy|noisy|ragged|laboured|labored
    no|not|isnt|cant|cannot ~2 <breath> ~ properly|right|well|easily|freely
    se ~ le? ~ oye|escucha|siente ~3 pecho|pulmones|garganta ~3 silbido|ruido|ronquido|agua|flemas
    crackl*|gurgl*|rattl*|whistl*|wheez* ~4 chest|lungs|breath|inhales|exhales|inhaling|breathes
    <breath> ~3 faster|quicker|heavier|harder|louder|noisier|shallower|rapido|agitado|agitada|fuerte|pesado|acelerado|recio ~2 than|de|que -<neg>
    <breath> ~3 too|really|super|way|muy|demasiado|bien ~ fast|quick|hard|rapido|agitado|fuerte|recio -<neg>
    panza|pecho|costillas|barriga|chest|tummy|sides|ribs|costados|ijares|pancita ~4 <fastly> -<cryout>
    codos|elbows ~3 afuera|fuera|out|apart|stuck|abiertos -<wound>
    stands|standing|parado|parada ~3 elbows|codos|neck|cuello ~3 out|afuera|fuera|stretched|estirado
    heaving|hauling|sucking|clawing|begging|reaching|gulping|snatching|fighting|desperate ~ for|at ~ air|breath
    aire ~ a|con ~ jalones|tirones|jaloncitos|trabajo|dificultad
    mete|entra|jala|toma|agarra ~ el? aire ~ a|con ~ jalones|tirones|trabajo
    resopl* ~~ resopl*|descansa|para|acostado|echado
    suena|hierve|chifla|ronca|truena|silba ~2 pecho
    busca|buscando ~ aire
    pescuezo|cuello|neck ~2 estirado|stretched|extended|out
    breaths|breathing|breath ~4 snatches|gulps|jerks|bursts|whole_body
    panting|pants|panted|jadea|jadeando|jadeaba|jadeo & mouth|boca|hocico|tongue|lengua|dog|perro|perrito +<felid> -<neg>
    mouth|boca|hocico ~2 open|abierta ~~ panting|jadea|jadeando +<felid>
    puffing|huffing|blowing ~ and|n puffing|huffing|blowing -hot
    <breath> ~~ gaps|pauses|gap|pausas|pausa|gulp|gulps|gulping
    panza|pecho|costillas|barriga|chest|tummy|sides|ribs ~3 <very>? rapido|rapidisimo|acelerado|fast|quick|rapidly -<cryout>
    chest|sides|ribs|flanks ~2 going ~ nineteen|like|ten_to_the|clappers|hammer|bellows
    se le atora|corta|acaba|va|escapa|atoro|acorta ~ aire|respiracion|resuello
    no ~ alcanza|llega|rinde ~ aire
    <breath>|breaths|respiraciones ~4 <rapidrate> -<goodrate>
    <rapidrate> ~2 breaths|respiraciones|respirations|resps|rpm
    <breath> ~4 <hardword> -<notlaboured>
    <hardword> ~3 <breath> -<notlaboured>
    <gaspword>
    <breath> & <hardword> -<notlaboured>
    <breath> ~3 sounds|sounding|suena|ruido|noise|noises -<breathfine>
    <breath> ~2 like|as_though|as_if|como|como_si ~5 run|ran|running|race|marathon|sprint|
        mile|miles|train|drowning|ahogara|ahogaba|corrido|corriera|maraton|fish|pez|straw|
        darth|accordion|pump|locomotive|tren|fuelle|iba
    <breath> ~~ ruido|ruidos|noise|saltitos|jalones|tirones|rattly|raspy|wheezy|noisy|heavy|fast|rapid|laboured|labored|agitado|agitada|
        rapidito
    no ~2 entra ~ bien? ~ aire
    aire ~2 no ~ entra
    open|abierta|abierto ~2 mouth|boca|hocico ~4 <breath>|panting|pants|jadeando
    mouth|boca|hocico ~2 open|abierta|abierto ~5 <breath>|panting|pants|pumping|jadea|
        jadeando|air|aire
    <breath> ~5 mouth|boca|hocico ~2 open|abierta|abierto
    mouth|boca|hocico ~2 open|abierta|abierto ~~ <breath>
    <breath> ~~ mouth|boca|hocico ~2 open|abierta|abierto
    belly|sides|flanks|flank|chest|stomach|tummy|abdomen|panza|costillas|costados|pecho|
        pancita|ribs ~3 pumping|heaving|sucking|heaves|pumps|bellows|subiendo|sube
    <breath> ~5 belly|abdomen|panza|stomach|tummy|sides|flanks
    sides|flanks|flank|belly|chest|stomach|ribs|tummy|panza|costillas ~4 in_and_out|pumping|
        heaving|up_and_down
    panting|breathing|puffing|breathes|respira ~4 steam|train|bellows|locomotora|engine|freight
    orthopnoea|orthopnea|orthopnoeic|orthopneic|elbows_abducted
    respiratory effort
    barely|hardly|not|isnt|stopped|cant|couldnt|cannot|apenas|casi_no|no|dejo_de|stops|aint|
        doesnt|unable|struggles|struggling|never|dejo ~3 <breath> -<notlaboured>
    casi no ~ <breath>
    le cuesta ~2 respirar|aire|trabajo
    <neg> ~2 puede|get|getting|enough|catch|agarra|jala ~4 <air>|<breath>
    trouble|difficulty|problems|problem|dificultad|trabajo|problema|struggling|fighting|
        batalla|batallando ~3 <breath>|<air>
    no ~2 puede ~ respirar
    falta|faltando|falto|faltaba ~3 aire|oxigeno
    catch|catching ~ his|her breath
    <breath> ~ at? <fastrate>
    <fastrate> ~2 breaths|respiraciones|respirations|resps|bpm_resp
    rr|respirations|resps|respiratory rate? ~3 <fastrate>|60|65|70|72|80|90|100
    panting|pants|jadea|jadeando ~4 mouth|gums|blue|cyanotic|tongue_blue|wont_stop|gasping|
        nonstop_hours
    drowning ~4 <breath>
    <breath> ~4 drowning|underwater|darth
    throat|garganta closing|cerrando|closed
    muscles between ribs
    neck stretched|extended|stuck
    cuello estirado|estira
    cat|cats pants|panting
    se ~ ahoga|ahogando|asfixia
    turning blue|purple|morado
    poniendo|puso|pone|pusieron ~ azul|morado|morada -<gumword>
    whistle|whistling|rattle|rattling|wheeze|crackle|rasp|silbido|silba|silban|ronquido|pitido|
        ruido ~5 <breath>|chest|pecho
    noise|noises|sound|sounds ~4 <breath>|inhales
    chest|sides|ribs|flanks|pecho|costillas ~2 going|flying|racing|moviendo ~4 ninety|mad|crazy|fast|
        clappers|rapido|train|up|hard|overtime
    nostrils|nostril|ollares|narinas ~2 flared|flaring|flare|aletean|abiertas
    <breath> ~~ nostrils|heaving|struggling|gasping|blue|elbows
    each|every|cada ~2 <breath>|respiracion|respiro ~4 effort|struggle|work|battle|esfuerzo|
        lucha|grunt|noise|hard
    panza|costillas|costado|costados|ijares|barriga|flancos ~3 hunde|hunden|sume|mete|bombea|
        sube|suben|agita
    bobbing|head ~2 bobbing|bobs ~4 <breath>
    blowing|puffing|huffing ~2 hard|heavily|like|away -<notlaboured>
    lips|cheeks|nostrils ~2 puffing|flaring|flared|sucking
    ollares|narinas ~3 abre|abren|abiertas|aletean
    cant|couldnt|struggling|fighting|no|not|unable ~5 air|aire|oxygen|oxigeno -<fresh>
    <breath> ~2 stopping|stops|pauses|stopped
    = laboured fixed
    cant|wont|wouldnt|couldnt|not|unable ~3 for|from|with|because gasping|choking|wheezing
    <breath> ~3 <neg> ~2 normal|normally|right|well|properly|usual|good|great|bien|regular|anormal
    <neg> ~2 <breath> ~2 normal|normally|right|well|properly|proper|good|bien|regular|regularly|como_siempre|easily
    <neg> ~3 <breath> ~ the|like ~ way|how|she|he ~ should|does|usually|normally
    <breath> ~2 anormal|abnormal|abnormally|anormalmente
    out_of_breath|winded|breathless|puffed|short_of_breath ~~ nothing|lying|resting|still|asleep|just
    winded
    hunden|hunde|marcan|marca|sume|sumen ~2 costillas|costados|costado|panza|pecho|ijares
    = normal @asked-breathing
    <calmrate> ~ per|a|por|al|x minute|min|minuto -<hardword>
    <neg> ~ esta|muy|anda agitado|agitada|agitadito|acelerado
    <calmly> -<hardword> -<neg>
    parejita|parejito|parejo|normalita|serena|sereno
    = laboured @asked-breathing
    labored|labouring|open_mouthed|open_mouth|mouth_open|struggly|struggling|difficult|difficulty|strained|wheezing|gurgly|worse|bad|badly|panting -<neg> -<good>
    con ~ mucha? dificultad|trabajo|esfuerzo|ruido|silbido -<neg>
    por la|el boca|hocico
    trabajosa|costosa|dificultosa|mal|feo|fea|cortadita|rapidisima|agitadisima|peor|jadeando -<neg> -<good>
    fast|quick|rapid|noisy|heavy|hard|shallow|laboured|raspy|wheezy|ragged|struggling|uneven|rough -<neg>
    rapida|rapidita|rapidito|agitada|agitado|agitadita|acelerada|pesada|ruidosa|cortada|entrecortada|forzada|dificil|cortita -<neg>
    """,
}

NEGATED = {
    "breathing": {
        "normal": "laboured",
        "laboured": "normal",
    },
}

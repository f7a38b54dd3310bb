"""Sessions at home: cold pack, warm compress, massage, leash walk."""

from __future__ import annotations

CLASSES = {
    "unneg": """
        didnt_mind doesnt_mind dont_mind wasnt_bothered isnt_bothered didnt_complain no_se_quejo no_le_molesto no_le_importo
        """,
    "icepack": """
        ice icing iced cold_pack ice_pack cold_compress frozen_peas peas cold_packs gel_pack
        icepack cold_therapy cryo hielo hielos hielito compresa_fria compresas_frias
        bolsa_de_hielo el_frio frio_local compresa_de_hielo bolsa_fria gel_frio bolsita_fria
        icepacks chicharos_congelados compresita_fria ice_packs slush bolsa_de_chicharos
        bag_of_peas bag_of_frozen chicharos compresa_helada bolsa_helada gel_helado froze_peas
        """,
    "warmpack": """
        warm_compress warm_pack heat_pack hot_pack heat_pad warm_compresses heating_pad
        wheat_bag bean_bag heat_bag hot_bag warm_flannel warm_wheat_bag warm_cloth warm_towel
        hot_compress hot_water_bottle warm_soak rice_sock heat_therapy compresa_tibia
        compresas_tibias compresa_caliente compresas_calientes fomentos fomento calorcito
        compresas_calientitas compresita tibia tibias tibio tibios pano_tibio toalla_tibia
        lienzos_tibios lienzos compresas compresa trapo_caliente trapito paño_caliente
        panos_tibios panos_calientes pano_caliente paños_tibios trapito_caliente
        trapito_calientito lienzo_tibio bolsa_de_agua_caliente bolsa_caliente bolsa_de_semillas
        """,
    "warmish": """
        heat warm warmth calor
        """,
    "massageword": """
        massage massaged massages massaging massage_session rub rubbed rubdown masaje masajes
        masajito masajitos masajeamos masajee sobadita sobe sobamos sobada masajear physio
        stretches rom sobar sobarle sobarlo sobarla masajearle range_of_motion kneaded fisio
        fisioterapia physiotherapy bicycle_legs
        sobar sobarle sobarlo sobo masajearle range_of_motion kneaded fisio fisioterapia physiotherapy bicycle_legs stretching amasar
        """,
    "walkword": """
        dander ramble saunter mooch walk walked walks walkies walkie wander stroll leash_walk
        lead_walk potty_walk outing outings salidas toddle potter plod amble caminata caminatas paseo paseos
        paseito paseamos camino caminamos caminado vuelta vueltas vueltita caminar caminadita
        sacamos saque salimos sali paseado paseando caminando walking went_out lap laps strolled
        pottered took_him_out took_her_out caminatita caminito constitutional been_out saidas
        leash on_leash lead con_correa
        """,
    "donework": """
        did done finished completed had managed yes did_it hice hicimos hecho puse pusimos dimos
        di puesto listo lista termine terminamos aplicamos aplique complete logramos good fine
        ok
        """,
}

_SKIP = """
    = skipped
    slipped_up|fallen_behind|behind|lapsed|slacked ~3 {c}
    forgot|forgotten|skipped|skip|missed|miss|olvide|olvido|olvidamos|skipping|salte|saltamos ~3 {c}
    {c} ~ we|i|was|got|he|she forgot|skipped|missed|cancelled
    {c} ~3 forgot|forgotten|skipped|missed|olvido|olvide|not_yet
    se me|nos olvido|paso ~3 {c}
    <neg> ~ time|had|did|do|done|get|got|manage|managed|hice|hicimos|hecho|pude|pudimos|di|dimos|puse|pusimos|hubo|toco|tuve|tuvimos|salimos|saque|sacamos|quiso ~4 {c}
    wont|wouldnt|no let|deja|dejo|dejaba ~4 {c}
    hates|hated|refused|refuses|odia ~2 {c}
    <neg> ~ quiere|quiso|deja|dejo|dejaba ~3 {c}
    no {c} today|yet|tonight|this_morning|hoy|yesterday|for
    sin {c} hoy?
    no {c}
"""

RULES = {
    "ice": """
    = done
    iced|icing ~ him|her|it|them -<neg> -<intent>
    <icepack> for <number> -<neg>
    then|plus|also|and|y|luego|despues|followed_by|con ~2 <icepack> -<neg> -<intent> -<askmark>
    <icepack> ~3 <donework>
    <donework> ~3 <icepack>
    <icepack> ~4 <minutes>
    <minutes> ~4 <icepack>
    <icepack> <good>
    ^ <icepack> $
    had|put|puse|pusimos|tuvo|held|used ~3 <icepack>
    iced ~3 <legword>
    <icepack> ~2 <times>|twice|once -<neg>
    on|puesto ~ <icepack> -<neg>
    <icepack> ~ un|a|for ~ rato|while|bit|ratito -<neg>
    aplique|aplicamos|puse|pusimos|ponemos|pongo|applied ~2 frio|cold ~2 <minutes>|rato|veces|<times>|en|on -<neg> -agua
    icing|iced|ice ~ him|her|it|knee|leg ~ <minutes>|for
    = done @ice @asked-ice
    ^ <number>|<minutes> ~3 <icepack> -<neg>
    did|do|done|managed|got ~2 <number> of|out ~2 <number>
    did|done|managed|got|hicimos|hice|logramos|aguanto|tolerated|lasted|stood ~3 <minutes>
    = skipped
    <neg> ~ <icepack> ~ it|him|her|his|today|tonight|leg|knee|the
    couldnt|didnt|havent|hasnt|dont|nadie ~ <icepack>
    <icepack> ~ didnt|not|never|no ~ happen|happened|done|hubo|se
    paso|olvido|olvide ~ lo de ~ <icepack>
    = done !@asked-ice
    <icepack> on for <number> -<neg>
    <icepack> ~ on? ~ for <number>|<minutes>|rato|while|bit|ratito -<neg>
    = done @asked-ice @ice
    ya ~ se? ~ le|la|lo ~ puse|pusimos|hice|hicimos|di|dimos|aplique -<meds>
    """
    + _SKIP.format(c="<icepack>"),
    "warm_compress": """
    = done
    <warmish> ~3 <minutes>
    <minutes> ~3 <warmish>
    did|done|put|applied|used|puse|pusimos ~2 <warmish>
    <warmpack> for <number> -<neg>
    then|plus|also|and|y|luego|despues|followed_by|con ~2 <warmpack> -<neg> -<intent> -<askmark>
    <warmpack> ~3 <donework>
    <donework> ~3 <warmpack>
    <warmpack> ~4 <minutes>
    <minutes> ~4 <warmpack>
    <warmpack> ~2 <good>
    had|put|puse|pusimos|tuvo|held|used ~3 <warmpack>
    <warmpack> ~ un|a|for ~ rato|while|bit|ratito -<neg>
    warm|heat ~ packed|compressed ~ him|her|his|it|leg
    <donework> ~ <warmish> ~ <number>|<minutes> -<neg>
    = done @warm_compress @asked-warm_compress
    ^ <number>|<minutes> ~3 <warmpack> -<neg>
    did|do|done|managed|got ~2 <number> of|out ~2 <number>
    did|done|managed|got|hicimos|hice|logramos|aguanto|tolerated|lasted|stood ~3 <minutes>
    = skipped
    skipped|skip|forgot|missed|forgotten|salte|olvide|olvido ~ the|her|his|el|lo? <warmish>
    <neg> ~ <warmpack> ~ it|him|her|his|today|tonight|leg|knee|the
    paso|olvido|olvide ~ lo de ~3 <warmpack>
    = done !@asked-warm_compress
    <warmpack> ~ on? ~ for <number>|<minutes>|rato|while|bit|ratito -<neg>
    = done @asked-warm_compress @warm_compress
    ya ~ se? ~ le|la|lo ~ puse|pusimos|hice|hicimos|di|dimos|aplique -<meds>
    """
    + _SKIP.format(c="<warmpack>"),
    "massage": """
    = done
    <massageword> ~3 encanto|gusto|relajo|disfruto -<neg>
    <massageword> for <number> -<neg>
    then|plus|also|and|y|luego|despues|followed_by|con ~2 <massageword> -<neg> -<intent> -<askmark>
    <massageword> ~3 <donework>
    <donework> ~3 <massageword>
    <massageword> ~4 <minutes>
    <massageword> <number> -<neg>
    <massageword> ~2 <times> -<neg>
    <minutes> ~4 <massageword>
    gave|give|loved|enjoyed|disfruto|le_gusto|dio ~3 <massageword>
    rubbed|massaged ~2 <legword> ~ for <number>
    massaged|masajee|masajeamos ~3 <legword>|him|her
    rubbed|rubbing|rub|sobe|sobamos|massaged|kneaded|masajee|sobando ~3 <legword>|muscle|muscles|musculo|thigh -<neg> -against -eyes
    did|done|hicimos|hice|hago|completed|finished ~ his|her|the|los|sus|las|all? <massageword>|exercises|ejercicios|ejercicio|rehab|terapia|fisio -<neg>
    exercises|ejercicios|rehab|terapia|fisio|fisioterapia ~ done|fine|hechos|listos|hecha|completed|bien -<neg>
    flexed|bent|stretched|flexionamos|doblamos|estire|estiramos ~3 <legword> ~ <times>|<number> -<neg>
    massaged ~ for|him|her|it|his <minutes>|<number>
    = done @massage @asked-massage
    ^ <number>|<minutes> ~3 <massageword> -<neg>
    did|do|done|managed|got ~2 <number> of|out ~2 <number>
    did|done|managed|got|hicimos|hice|logramos|aguanto|tolerated|lasted|stood ~3 <minutes>
    = skipped
    <neg> ~ se? ~ deja|dejo|dejaba|quiso|quiere|let|lets ~ me? ~ sobar|sobarlo|sobarla|masajear|massage|sobe|masaje
    give|gave|giving ~ up|over ~2 <massageword>
    = skipped @massage @asked-massage
    give|gave|had_to ~ up|stop|parar
    rendi|rendimos|desisti
    = done @asked-massage @massage
    ya ~ se? ~ le|la|lo ~ puse|pusimos|hice|hicimos|di|dimos|sobe -<meds>
    = skipped @asked-massage @massage
    so|and|asi|y ~ i|we|lo|la|he ~ left|stopped|skipped|deje|dejamos ~ it|him|her|alone?
    """
    + _SKIP.format(c="<massageword>"),
    "walk": """
    = done
    trip|spin|turn|jaunt|lap ~ round|around ~ block|green|park|garden|field|manzana|cuadra
    <minutes> ~ round|around|up|down ~ the|our? block|park|lane|road|garden|green|field|street
    <walkword> ~4 <minutes>|<metres>
    <minutes>|<metres> ~4 <walkword>
    went|gone|took|been|did|had|salimos|fuimos|dimos|hicimos|saque|sacamos|sali ~4 walk|walks|walkies|wander|stroll|caminata|paseo|paseito|vuelta|vueltas|caminar|pasear|caminata|toddle|potter|amble
    walks|outings|outing|salidas|salidita|salida|paseos|caminatas ~ are|were|is|was|all|both|todas|ya? done|finished|completed|listos|listas|hechos|hechas -<neg>
    did|done|finished|hicimos|hice ~2 walks|outings|outing|salidas|paseos|caminatas -<neg> -<intent> -<askmark>
    walk|paseo|caminata|walkies ~ done|fine|good|great|went|ok|was|listo|lista|hecho|hecha|hechos|bien
    went|gone|been out|outside <minutes>
    out for ~2 <minutes>
    out|afuera|fuera ~ on the? lead|leash|correa
    took|taken|take him|her out|outside -<pee> -<poo> -business -toilet -potty -vet -vets -car
    walk|walked|walks|paseo|caminata|paseito|vuelta|caminamos|caminado ~3 <number>|15|10|5 $ -<neg>
    la|el <walkword> ~ si ~ hicimos|dimos|salio
    <number>|one|two|three|una|dos|tres|un ~ short|quick|little|slow|wee|gentle <walkword> -<neg>
    <walkword> ~ corta|cortita|cortito|rapida|rapidita|lenta|chiquita|tranquila -<neg>
    walked|strolled|pottered|toddled|wandered|trotted ~ to|round|around|up|down|as ~4 corner|park|gate|lane|lamppost|garden|block|postbox|shop|shops|field|end|road|driveway|mailbox
    walked ~3 <minutes>|block|blocks|cuadra|cuadras|round|around
    caminamos|paseamos|caminó
    dimos la|una|dos ~ vuelta|vueltas
    dio|di una|la ~ vuelta -verle -revisarle -ver -revisar -limpiarle
    did|about|hicimos|caminamos ~3 <metres>
    block|blocks|cuadra|cuadras ~ walk|walked
    loop|lap|laps|circuit ~3 garden|yard|block
    short|quick|little|gentle|slow|tiny|wee|brief walk|stroll|potter|wander|lap|mooch|paseo|paseito -<neg> -<intent> -<askmark> -can -should
    walk|stroll|potter|wander ~ round|around|up|down|to ~ the|our ~ garden|block|road|park|street|yard|lane|corner -<neg> -<intent> -<askmark>
    = done @walk @asked-walk
    out|outside ~2 <minutes>
    did|managed|hicimos|aguanto ~3 <minutes>|<metres>
    went|round|around|to|gone|al|a|down|up|hasta ~4 block|park|garden|corner|yard|field|lane|gate|green|manzana|cuadra|parque|esquina|postbox|mailbox|road|street|drive|driveway|shop|shops|tree|lamppost|bench|stop|tienda|plaza|porton|calle ~ and? back? -<mishapish> -<neg>
    half|media|medio|una|dos|tres|<number>|one|two|couple ~ block|cuadra|cuadras|blocks|manzana|manzanas|laps|lap|vueltas|vuelta|loop|loops|circuit|circuits -<neg>
    there and back -<neg>
    ida y vuelta
    <number>|one|two|three|una|dos|tres|couple ~ short|quick|little|slow ~ ones|one|goes|sessions|cortas|cortitas -<neg>
    went|gone|been out|outside
    ^ <minutes>|<metres> ~ no|sin|zero limp|limping|problem|problems|issues|pain|cojera|cojear|problema|dolor|trouble|bother|fuss
    = skipped @asked-walk @walk
    rest|lazy|duvet|day_off day -<minutes>
    descanso|reposo|descansando|descansar|guardado|encerrado -<minutes>
    <neg> ~ get|got|gotten ~ out|outside ~ for|on|today|tonight|much|there|because?
    = skipped
    <neg> ~ set|put ~ foot|paw|a_foot ~ outside|out|over
    """
    + _SKIP.format(c="<walkword>")
    + """
    <neg> ~ go|went|gone|been ~ out|walk|walking
    no salimos|sali
    no hemos salido|paseado|caminado
    didnt go out
    """,
}

NEGATED = {
    "ice": {"done": "skipped", "skipped": "done"},
    "warm_compress": {"done": "skipped", "skipped": "done"},
    "massage": {"done": "skipped", "skipped": "done"},
    "walk": {"done": "skipped", "skipped": "done"},
}

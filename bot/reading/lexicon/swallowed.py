"""Things swallowed: too much of the patient's own medicine, people's medicine, objects."""

from __future__ import annotations

CLASSES = {
    "ingest": """
        ate eat eaten eats eating swallowed swallow swallows swallowing ingested ingest ingests
        got_into gotten_into got_hold got_at found_and_ate chewed chewed_up chewed_open
        chewed_through scoffed wolfed devoured gobbled consumed munched hoovered nicked pinched
        stole helped_himself helped_herself had_the_lot had_the trago comio tragado comido traga
        ingirio se_comio se_trago masco mastico masticado masticó devoro agarro se_tomo
        se_atasco se_robo atragantó tragó lamio_todo raided broke_into crunched ingerido robo
        comiendo tragando comi
        """,
    "wholelot": """
        whole entire all lot full bottle packet pack box strip blister blister_pack sheet tub
        everything remaining rest bunch loads many handful several bottles vial syringeful week
        weeks supply todo toda todas todos frasco bote botella caja tira entero entera completo
        completa sobrantes restante monton puño puñado paquete tarro lleno resto quedaba
        quedaban empty vacio vacia missing faltan
        """,
    "medcontainer": """
        bottle packet box blister strip tub pack vial container bote frasco caja tira tarro
        paquete botella sobre blister_pack pillbox pill_box pastillero
        """,
    "objectthing": """
        sock socks toy toys bone bones stick sticks stone stones rock rocks ball balls string
        thread needle tampon underwear knickers pants tights stocking button coin coins battery
        batteries plastic rubber rubber_band elastic hair_tie hair_band bandage dressing gauze
        wrap vetwrap stitches staples staple suture sutures cotton towel cloth squeaker corn_cob
        cob foil wrapper bag ribbon tinsel glove gloves magnet lego earplug pacifier dummy
        calcetin calcetines calceta juguete hueso huesos palo piedra piedras pelota hilo aguja
        trapo liga plastico bolsa boton moneda pila vendaje venda gasa puntos grapas olote
        algodon guante tela pedazo elote carozo media calzon calzones sponge esponja wood
        chew_toy rag cone dish_cloth tea_towel collar leash strap shoelace lace envoltura
        bolsita chupon tapon corcho cork imán iman tornillo clip pin zip peluche relleno
        stuffing
        """,
    "poisonthing": """
        chocolate grapes grape raisins raisin xylitol antifreeze rat_poison ratpoison
        slug_pellets onion onions lily lilies bleach weedkiller macadamia uva uvas pasas cebolla
        veneno raticida cloro anticongelante rodenticide insecticide garlic mouse_poison lirio
        marijuana edible edibles alcohol chicle rubbing_alcohol
        """,
    "gulp": """
        ate eat eaten eats swallowed swallow swallows ingested got_into scoffed wolfed devoured
        gobbled consumed nicked stole trago comio tragado traga ingirio se_comio se_trago tragó
        robo comido raided gulped necked downed
        """,
    "someones": """
        husbands wifes moms mums dads grandmas grandads nans grans mothers fathers my daughters
        sons sisters brothers neighbours neighbors grandfathers grandmothers hubbys partners
        granny grandpas
        """,
    "relative": """
        mother father mum mom dad husband wife grandma grandmother grandfather nan gran granny
        son daughter sister brother abuela abuelo mama papa esposo esposa suegra suegro mine
        owner hermana tia
        """,
    "plural": "all several extra more mas varias todas",
    "bigcount": """
        three four five six seven eight nine ten twelve fifteen twenty thirty 3 4 5 6 7 8 9 10
        12 14 15 20 30 tres cuatro cinco seis siete ocho nueve diez doce quince veinte bunch
        handful several triple varias puño monton
        """,
    "wholelotmed": """
        whole_bottle entire_bottle whole_lot whole_syringe entire_syringe all_of_it whole_thing
        everything_left whole entire frasco_entero frasco_completo bote_entero todo_el_frasco
        todo_lo todo_el_bote la_botella_entera todo toda full_bottle rest_of_the_bottle bottle
        whole_week the_lot enterito
        """,
    "humanno": """
        not_give never_give dont_give didnt_give wont_give know_not no_le_di no_le_dimos
        no_le_he havent_given never_gave
        """,
    "foodbone": "broth stew marrow caldo",
    "anyobject": """
        sock toy string bone ball stitch plastic thing cosa objeto object piece chunk fragment
        pedazo
        """,
    "stitchfall": "stitches staples sutures puntos stitch came fell grapas suture dissolved",
}

RULES = {
    "swallowed": """
    = medicine_overdose
    <ingest> ~6 <wholelot> ~5 <meds>
    <ingest> ~6 <meds> ~5 <wholelot>
    <meds> ~6 <ingest> ~4 <wholelot>
    <wholelot> ~4 <meds> ~5 <ingest>|gone|missing|empty|vacio|faltan
    <meds> ~~ <ingest> ~4 <wholelot>
    <wholelot> ~~ <meds> ~~ <ingest>
    <meds> ~~ <medcontainer> ~4 empty|chewed|vacio|masticado|missing|open|abierto|mordido|
        destrozado|ripped|vacia
    <medcontainer> ~4 <meds> ~~ empty|chewed|vacio|masticado|missing|mordido|gone|ate|eaten
    <meds> ~~ <medcontainer> ~~ <ingest>
    empty|chewed|vacio|masticado ~3 <medcontainer> ~4 <meds>
    <ingest> ~4 <plural> <meds>
    <ingest> ~3 <bigcount> ~3 <meds>
    <bigcount> ~3 <meds> ~3 missing|gone|faltan|eaten|swallowed
    gave|given|got|had|di|dio|dieron|le_dio|squirted|poured|squeezed|tomo|took|syringed ~6 \
        <wholelotmed> ~4 <meds>
    <meds> ~4 <wholelotmed> ~3 squirted|gave|down|in
    gave|squirted|di|dio|dieron ~5 <wholelotmed> ~~ <meds>
    gave|given|had|dio|di|dieron|dimos|got|took|tomo ~3 <bigcount> ~3 <meds>|doses|dosis|
        pills|instead|times_the|at_once|juntas
    <bigcount> ~2 doses|dosis|times ~5 dose|once|juntas|together|hoy|error|mistake|instead
    triple|tripled|quadruple|triplicamos|cuadruple|ten|10|five|5|four|4|diez ~ times? ~3 dose|
        dosis|dosed
    times the ~ dose|amount
    had|ate|eaten|took|finished|got ~ all ~ <meds>
    <ingest> ~4 entire|whole|full|complete ~2 <medcontainer> ~4 <meds>
    <times> ~ the|la|su|his|her ~ dose|amount|dosis
    <amount> ~3 instead|en_vez|en_lugar
    <medcontainer> ~4 <meds> ~~ tomo|comio|trago|ate ~3 todo|todas|all
    <medcontainer> ~4 <meds> ~~ mordida|mordido|masticada|masticado|rota|roto|queda
    overdose|overdosed|od|sobredosis|overdosing -<future>
    ten_times|10_times|tenfold
    = medicine_overdose @dose @swallowed
    <ingest> ~3 whole|entire|all|todas|todo|lot|bottle|frasco|packet ~3 of|them|bottle|lot|
        packet|bag|frasco|pastillas -<food> -<poisonthing> -<objectthing>
    se las comio|trago|tomo ~ todas
    three|four|five|3|4|5|tres|cuatro|cinco ~ instead|at_once|in_one|juntas|en_vez|de_golpe
    = human_medicine
    <humanmeds> -<humanno>
    <someones> ~4 tablets|tablet|pill|pills|meds|medicine|medication|patch|capsule|capsules|
        painkiller|painkillers ~~ <ingest>|gone|missing
    <ingest>|gave|given|fed|got|had ~4 <someones> ~4 tablets|tablet|pill|pills|meds|medicine|
        medication|patch|capsule|capsules|painkiller|painkillers
    <ingest>|gave|given|fed|di|dio|dimos|got|had|chewed|dieron|tomo|slipped ~5 <humanmeds> \
        -<humanno>
    <ingest>|gave|given|got|had|chewed|missing|di|dio|dieron|dimos|found|tomo|took ~~ my|mine|
        our|husbands|wifes|moms|mums|dads|grandmas|nans|grans|mothers|fathers|his_mothers|
        human|peoples|mi|mis|abuela|suegra ~5 tablets|tablet|pill|pills|meds|medicine|
        medication|inhaler|patch|pastilla|pastillas|medicina|medicinas|medicamento|capsules
    my|mine|our|husbands|wifes|moms|mums|dads|grandmas|nans|grans|mothers|fathers|human|
        peoples|mi|mis ~4 tablets|tablet|pill|pills|meds|medicine|medication|pastilla|
        pastillas|medicina|medicinas|medicamento|capsules ~~ <ingest>|gone|missing|chewed|
        gave|given|faltan|mordido
    pastilla|pastillas|medicina|medicinas|medicamento|medicine|pills|tablets ~2 de|of|for|
        from|para|made ~3 gente|humano|humanos|people|humans|mi|mama|papa|esposo|abuela|
        suegra|dormir|presion|diabetes|kids|adults|personas|children
    <ingest>|gave|given|fed|took|got|di|dio ~4 pill|pills|tablet|tablets|medicine|pastilla|
        medicina ~ of|from|belonging|de ~2 <relative>
    pain|heart|sleeping|thyroid|diabetes|water|blood ~ pressure? ~ pills|tablets|meds of mine
    = human_medicine fixed
    <poisonthing> & <ingest>
    <ingest> ~4 <poisonthing>
    = bandage_or_object
    <gulp> ~5 <objectthing> -<humanmeds> -<foodbone>
    swallowed|swallow|trago|se_trago|ingested|tragó ~4 a|an|the|his|her|un|una|su|el|la|my|
        something|algo|half|part|pedazo|piece|some ~2 <anyobject> -<meds> -<food>
    <objectthing> ~3 swallowed|ate|eaten|gone|missing|trago|comio|tragado|disappeared \
        -<stitchfall> -<foodbone>
    swallowed|swallow|trago|ingested ~ something|it|algo -<meds> -<food>
    pieces|piece|bits|bit|chunk|chunks|part|pedazo|pedazos|cacho ~ of|de|del ~3 <objectthing> \
        ~2 missing|gone|faltan|falta|eaten|ate
    <objectthing> ~~ pieces|piece|bits|bit|chunk|part|pedazo|cacho ~3 missing|gone|falta|faltan
    """,
}

NEGATED = {
    "swallowed": {
        "medicine_overdose": None,
        "human_medicine": None,
        "bandage_or_object": None,
    },
}

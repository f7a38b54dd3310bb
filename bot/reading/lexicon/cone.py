"""The cone (Elizabethan collar, or what stands in for it) and what becomes of it."""

from __future__ import annotations

CLASSES = {
    "oldone": """
        last_one old_one first_one other_one previous_one el_anterior el_otro el_viejo el_primero la_anterior la_vieja
        """,
    "broke": """
        crushed squashed flattened crumpled shredded obliterated annihilated tatters mashed warped
        cracking squash demolition rotito rotita hundido hundida machucado machucada rompido
        fisurado fisurada abollado abollada abollo aplasto aplastado aplastada chafo doblo doblado
        desprendio torn_up rip ripped_up snapping fractured cuarteo cuarteado cuarteada rasgo
        rasgado rasgada agujereado agujero desarmo desarmado tronado tronada tronó reventado
        reventada smooshed squished buggered broke broken break cracked crack snapped split
        shattered smashed destroyed ripped torn damaged bust busted wrecked ruined chewed
        demolished dented bent split_in rompio roto rota rompe partio partida partido quebro
        quebrado quebrada destrozo destrozado destruyo desbarato desgarro trono despedazo mordio
        hizo_pedazos madreo rajo rajado rajada quebró mangled mauled trashed smithereens flitters
        bits_of cracks busted_up chewed_up buckled snapped_off hecho_trizas hizo_trizas trizas
        added_a_hole in_pieces in_half in_bits to_bits fell_apart unvelcroed sprung_a_leak
        sprung_leak punctured deflated poncho ponchado pincho pinchado desinflo desinflado flat_as
        """,
    "wore": """
        on wearing wears wore worn puesto puesta trae lleva usa usando trayendo stays stayed
        stuck_on in_place back_on keeps_it_on still_on traia
        """,
    "dueday": """
        monday tuesday wednesday thursday friday saturday sunday tomorrow next_week soon lunes
        martes miercoles jueves viernes sabado domingo manana
        """,
    "perchy": """
        sofa bed couch chair work school vet tea lunch
        """,
    "watched": """
        sitting_beside sitting_right_beside sitting_right_next right_beside beside_him beside_her
        right_next_to while_he_has while_she_has while_he_is_eating lo_estoy_viendo
        la_estoy_viendo lo_veo la_veo lo_vigilo la_vigilo im_with_him im_with_her with_him
        mealtime dinner_time for_dinner for_breakfast for_his_meals in_my_sight my_eyes_on
        watching watched watch i_watch we_watch while_i_am while_im eye_on_him eye_on_her
        under_my_eye estuve_con mientras_la_cuido supervised supervising supervision watching_him
        watching_her while_i_watch with_me with_us sitting_with while_he_eats while_she_eats
        under_supervision vigilado vigilada vigilando supervisado supervisada viendolo viendola
        conmigo with_someone mientras_come mientras_lo mientras_la estoy_con cuidandolo cuidandola
        to_eat meals for_meals mealtimes keep_an_eye keeping_an_eye
        """,
    "unwatched": """
        overnight all_night at_night i_was_asleep we_were_asleep was_asleep were_asleep popped_out
        nobody_home went_to_work mientras_dormia mientras_dormiamos durante_la_noche por_la_noche
        de_noche se_quedo_solo amanecio alone nobody_watching unsupervised unwatched
        while_we_slept while_i_slept slept sleeping at_work solo sola solito solita en_la_noche
        toda_la_noche out_of_the_room dormidos anoche sin_vigilar sin_supervision while_i_was_out
        last_night in_the_night
        """,
}

RULES = {
    "cone": """
    = on fixed
    <coneword> ~ hasnt|isnt|not|never|no|wasnt ~2 <broke>
    = on
    anda|sigue|duerme|come|camina|va ~5 con ~ su|el <coneword> -choca -choco
    ^ con|with|wearing ~ el|su|the|his|her? <coneword>
    usado|uso|usa|usando|usar ~2 <coneword> -no -nunca -sin
    <coneword> ~5 on|<wore> -lead -leash -correa -harness -lawn -bits -pieces -floor -out
    <wore>|wears|wearing|kept|keeps ~5 <coneword>
    tolerates|tolerating|tolerated|accepts|tolera|aguanta|puts_up_with ~2 <coneword>
    <coneword> ~ yes|si|fine|good|ok|thumbsup|done|bien
    trae|lleva|tiene|usa ~3 puesto|puesta|cono|collar|campana
    si lo|la trae|tiene|lleva|usa
    todo el ~ tiempo|dia puesto
    in ~4 soft|inflatable|doughnut|donut|cone|collar|suit|onesie
    sleeps|slept|sleeping|durmio|duerme ~3 <coneword>
    no se lo|la ~ quito|quitado|ha|hemos|he|quitamos|quita
    put|popped|stuck|puse|pusimos|volvi_a_poner ~ it|him|her|lo|se_lo|<coneword> ~3 back|again|de_nuevo|otra_vez +<coneword> -off -out
    = on fixed @asked-cone
    never ~2 without|off it?
    off never
    = on @asked-cone
    24 ~~ 7
    las 24 horas?
    all ~ the time
    all|todo ~ day|dia
    day|dia|morning and|y night|noche
    always|siempre|religiously|constantly|continuously|permanently|as_we_speak|full_time|round_the_clock|a_toda_hora|sin_falta|todo_el_rato|en_todo_momento -off -sin -quita -<broke>
    used to it
    acostumbr* -no
    wears|wearing|wore|keeps ~ it|on -<neg>
    <neg> ~2 come|comes|came|been|taken|goes|take ~ it? off
    <neg> ~3 had|has ~ it? off
    duerme|come|camina|anda|sale|vive ~ con el|eso|ella
    volvi|volvimos|volver ~ a poner
    hasta|even ~ para|to|for dormir|sleep|bed
    = on @cone @asked-cone
    put|popped|got|puse|pusimos|poner ~ it|him|her|lo|se_lo? ~ back|again|de_nuevo|otra_vez ~ on? -off -out
    ^ <coneword> $
    tolerates|tolerating|tolerated|accepts|accepted|tolera|aguanta ~ it|him|her
    wearing|worn|puesto|puesta -<neg>
    on $ -<neg>
    ^ on -<neg>
    is|its|still|stays|staying|been|kept|firmly|got|has|had|leave|leaving|left|wears|keeps|keep|put|popped|yes|yep|yeah ~1 on -<neg>
    swap|swapped|swapping|changed|switched|change ~3 to|for|por ~4 ring|inflatable|donut|doughnut|soft|suit|collar|neck
    stays|stayed|staying|stay on
    ahi|pero|bien|todavia|aun ~ lo|la trae|tiene|lleva|usa
    = off
    cant|couldnt|wont|unable|cannot|didnt ~2 keep|get|leave ~3 <coneword> ~ on?
    no ~ pude|pudimos|puedo|pueden|logro|logramos ~2 dejar*|poner*|pongo|mantener* ~3 <coneword>
    volvio|vuelve ~ a caer|salir|zafar|quitar ~2 <coneword>
    <coneword> ~2 in|en ~ the|la|el? bin|trash|rubbish|basura|bote|closet|cupboard|drawer|cajon
    volvio ~ a quitar|sacar|arrancar ~2 <coneword>
    <coneword> ~~ gets|getting|got|pulls|pulling|takes|taking|has|had|rips|gotten ~ it off
    se ~ salio|sale|saca|escapo|zafa|zafo ~2 del|de ~ su? <coneword>
    perdimos|perdio|perdi|extravio|tiramos|tire ~2 <coneword>
    ditched|binned|chucked|abandoned|retired|removed|lost|scrapped ~3 <coneword>
    got|get|gave|given ~ rid|up ~ of|on ~2 <coneword>
    slipped|slips|slip|backed ~2 cone|cono|donut|lampshade|campana|buster_collar|e_collar|ecollar
    break|rest|breather|time_off|descanso|descansito ~2 from|of|de|sin ~3 <coneword>
    stopped|quit|dejo|dejamos|deje ~ de? using|wearing|usar|ponerle|usarlo ~2 <coneword>
    out|free ~ of ~ his|her|the? <coneword>
    <coneword> ~4 off|removed|quitado|quitada|fuera -<dueday>
    took|takes|taken|taking|gets|got|get|getting|slipped|pulled|pulls|wriggled|wiggled|shook|
        kicked|pawed|rips|ripped|tore|sacó|saco|worked|managed|has|had ~4 <coneword> ~3 off
    took|taken|take|got|pulled|ripped|kicked ~ off ~3 <coneword>
    escaped|escapes|wriggled|slipped|squirmed|backed|zafo|zafa|safo ~3 out|del|de ~3 <coneword>?
    out of ~2 <coneword>
    quita|quito|quitamos|quite|quitó|quitado|arranco|arranca|saco|zafo|safo ~4 <coneword>
    cayo|cae|caido|caia ~3 <coneword>
    <coneword> ~4 quita|quito|quitamos|quite|arranco|zafo|quitado|cayo
    sin ~2 <coneword>
    no ~ <coneword>
    without ~2 <coneword>
    <neg> ~ wearing|wear|wears|tolerate|trae|lleva|aguanta|usa|use|using ~4 <coneword>
    hates|refuses ~3 wear ~2 <coneword>
    <coneword> ~~ wont|doesnt|didnt|cant ~ stay|keep|wear ~ on?
    no ~ deja|aguanta|tolera|quiere ~4 <coneword>
    se lo|la quito|quita|saco|zafo|arranco ~~ <coneword>
    = off fixed @asked-cone
    out of it
    = off @asked-cone
    se lo|la sacudio|avento|tiro|boto|bajo|desabrocho|desamarro|revento
    not|isnt|aint on
    without it
    only|solo|nomas ~3 it|lo|nights|bed ~2 at|en|para|for ~ night|noche|dormir|bed
    naked|bare ~ neck|head
    ahora|ahorita ~ mismo? no
    lo|la trae|tiene|lleva fuera|quitado|de_lado|colgando
    se ~ lo|la acaba ~ de quitar|sacar|arrancar
    had|has|got ~ it off ~ again
    se ~ escapo|escapa|salio|sale ~2 del|de ~ <coneword>|el
    goes|going|go|put|pongo ~3 back on ~ directly|after|when|once|soon
    out of it for|while|so|to|at
    he|she|they|always|hes|shes|keeps|managed|its|it ~2 got|gets|getting|get|wriggle*|slip*|squirm*|wiggle*|climb*|escape* ~ out of it
    houdini
    slipped|slips|slip ~ it|his|her|<coneword>
    <neg> ~2 wearing|wear|wears|using|use|got|have|has|having ~2 it|one
    unclipped|undid|unhooked|undone|hid|hides|hidden ~ it
    break|rest|breather|time_off|descanso|descansito ~3 from|of|de|sin|from_it?
    stopped|quit|dejo|dejamos|deje ~ de? using|wearing|usar|usarlo|ponerselo it?
    free of|from ~ it
    anda|esta|estuvo|queda|dejamos|deje ~2 sin ~ el|nada|cono|eso
    se ~ le cae|cayo|sale|salio
    se lo? zafa|zafo|safo|saca|saco
    no ~ lo usa|trae|usamos|lleva|pongo|ponemos|aguanta
    gave up on|with ~ it
    <neg> at|for ~ the ~ minute|moment|second|now
    = off @cone @asked-cone
    gets|getting|got|pulls|pulling|takes|taking|rips|wriggles ~ it off
    had|has|got|get|gets ~ it|that ~ off
    removed
    off $ -<food>
    ^ off -to
    is|its|was|been|had|has|take|taken|comes|came|keep|keeps|goes|wriggled|still|left ~2 off -<food> -<perchy>
    off while|when|for|at|during|because|since|now|again|overnight|til|till|until|so|and|but|mientras
    took|got|gets|pulled|slipped|wriggled|slips ~2 off|out
    se lo|la quita|quito|saca|saco|zafo|arranco|quitamos|arranca
    lo|la quite|quito|quitamos|quitado|saque|sacamos|sacaron|sacado|sacaste
    quitado|quitada|quitarselo|quitarsela
    wont|doesnt|didnt|refuses|no wear|keep|aguanta|deja|tolera|quiere
    = damaged
    <coneword> ~4 held|taped|stuck|patched|glued|pegado|pegada|parchado|parchada|remendado ~3 tape|cinta|duct|glue|string|staples|pegamento|kola_loka|silicon
    <coneword> ~4 held|holding|hold ~ together
    <coneword> ~4 hecho|hecha|hizo ~ mierda|polvo|bolsa|trizas|pedazos|garras|anicos|tiras|pelota|pomada
    inflatable|ring|donut|doughnut|dona|collar ~3 gone|went|going down|flat
    plastic|plastico|clip|edge|velcro|strap|side|part|bit|orilla ~ on|of|de|del ~ the|his|her|el? <coneword> ~4 <broke>
    <broke> ~4 <coneword> ~ strap|straps|tie|ties|velcro|clip|clips|edge|rim|side
    <coneword> ~3 velcro|clip|clips|strap|clasp|buckle|broche|seguro|boton ~4 gone|broke|broken|loose|off|roto|rota|undone|ripped|snapped|rompio|zafo|torn
    <coneword> ~3 had_it|knackered|kaput|toast|history|buggered|done_for|totalled|totaled|inservible|fucked|beyond|seen_better
    mordio|mordido|mordida|masco|mascado|mordisqueado|roido ~3 <coneword>
    <coneword> ~4 mordido|mordida|mordisqueado|roido|mascado|chueco|aplastado|aplastada
    ya no ~ sirve +<coneword>
    = damaged @asked-cone
    it|its|ha|se|ya|esta|quedo|it_s ~2 <broke> -break
    munched|chomped|gnawed|nibbled|bitten|ate|eaten ~2 edge|rim|side|half|bit|corner|piece
    bent|out of ~ shape
    hecho|hecha|hizo ~ mierda|polvo|bolsa|trizas|pedazos|garras|anicos|tiras|pelota|pomada
    lo|la reventaron|revento|deshizo|desarmo|destruyo|mato|chingo|jodio|cago
    hole|holes|rip|tear|gash|crack|hoyo|hueco|rajada|rajadura|agujero|grieta|cortada ~2 in|en? it|el?
    <broke> ~3 up ~ the? seam|side|middle|edge
    <broke> ~ through ~ it
    falling|coming|fell|come|came ~ apart|to ~ pieces|bits? -edges -<wound> -<stitchword>
    sat|stood|lay|stepped|trod|rolled|slept|jumped ~ on it
    se le ~ desprendio|zafo|rompio|despego|quebro|solto|arranco ~3 velcro|broche|seguro|correa|cinta|boton|pestana
    despego|desprendio ~3 velcro|broche|cinta|pestana
    mordio|masco|comio ~ la|el|toda|todo? orilla|borde|esquina|plastico
    <broke> ~ it ~ on|against ~3 door|wall|frame|doorframe|furniture|step|fence
    <broke> ~3 off
    velcro|clip|clips|strap|clasp|buckle|broche|seguro|boton|snap|fastener|popper|tab ~4 gone|broke|broken|loose|off|roto|rota|undone|ripped|snapped|rompio|zafo|torn|worn
    had_it|knackered|kaput|toast|history|buggered|done_for|totalled|totaled|inservible
    no sirve
    held|holding|hold|stuck|kept ~ together
    ate|eaten|eats|comio|trago ~ it|half|bits|part|chunk|lo|un|parte|medio|la
    tape|cinta|duct|gorilla_glue|staples ~3 it|holding|together? -off
    <coneword> ~3 bits|pieces|pedazos|trizas|shreds|half|two
    <coneword> ~3 popped|burst|bursted|punctured|deflated|flat
    popped|burst|punctured|deflated ~3 <coneword> -to
    <broke> ~5 <coneword>
    <coneword> ~5 <broke>
    = damaged
    <coneword> ~~ <broke>
    = damaged @cone
    in ~2 pieces|bits|half|pedazos|trozos
    taped|pegged|glued|stapled|pegue|parche|remende ~ it|lo|up|together|con|with
    <broke> -<oldone>
    = off fixed @asked-cone
    ^ no its|it|hes|shes|he|she ~2 off
    ^ no its|it|hes|shes|he|she has|is|was|been? been|come|taken|it? off
    = on @cone @asked-cone
    his|hers|new_one|new ~ one? ~ is|its? on -off
    = damaged @asked-cone
    chunk|piece|bit|corner|pedazo|trozo|cacho ~2 missing|gone|falta|broken|off|out
    missing|falta|lost|perdio ~ a|un|le? chunk|piece|bit|corner|pedazo|trozo|cacho
    """,
}

NEGATED = {
    "cone": {
        "on": "off",
        "off": "on",
        "damaged": None,
    },
}

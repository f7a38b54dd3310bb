"""Things swallowed: too much of the patient's own medicine, people's medicine, objects."""

from __future__ import annotations

_KIN_EN = """
    husband wife mom mum mam mother da das ma pa dad father grandma granny gran nan nana nanna grandad grandpa
    grandmother grandfather daughter son sister brother neighbour neighbor hubby partner
    roomate roommates flatmates boyfriend girlfriend aunt auntie uncle owner kid toddler flatmate roommate friend missus
    in_law housemate
    """
_KIN_ES = """
    mama papa abuela abuelo abuelita abuelito esposa esposo marido mujer suegra suegro hija hijo
    hermana hermano tia tio nina nino vecina vecino viejo vieja senora novia novio jefe jefa
    madre padre gente humano humanos persona personas
    """

CLASSES = {
    "pillword": """
        gomitas gomita_de
        """,
    "menspills": "",
    "thepoison": "",
    "theobject": "",
    "keepsake": """
        sock socks toy toys squeaker blanket hem earbud earplug glove slipper underwear knickers
        tampon string thread needle coin battery hair_tie sponge rag calcetin juguete cobija hilo
        aguja chancla guante moneda pila pelota liga esponja trapo peluche tapon chupon
        """,
    "pillofman": """
        my_pills my_tablets my_meds my_medicine my_medication my_pill my_tablet my_sleeping
        my_blood_pressure my_heart_pills my_antidepressants my_painkillers husbands_pills
        husbands_tablets wifes_pills wifes_tablets mums_tablets moms_pills nans_tablets
        dads_tablets dads_pills his_own_pills mis_pastillas mi_pastilla mis_medicinas
        mi_medicina sus_pastillas_de mis_tabletas pastillas_de_mi medicinas_de_mi medicina_de_mi
        pastilla_de_mi ibuprofen paracetamol aspirin ibuprofeno aspirina acetaminophen naproxen
        naproxeno diclofenac diclofenaco blood_pressure_pills blood_pressure_tablets
        heart_tablets sleeping_tablets sleeping_pills antidepressants
        my_heart_tablets my_bp my_statins my_thyroid my_inhaler heart_pills mi_pastillero
        """,
    "gaveit": """
        had_his had_her took_his took_her gave_him gave_her got_his got_her le_di le_dimos
        se_tomo_su tomo_su
        """,
    "ingest": """
        ate eat eaten eats eating swallowed swallow swallows swallowing ingested ingest ingests
        got_into gotten_into got_hold got_at found_and_ate chewed chewed_up chewed_open
        chewed_through chews scoffed wolfed devoured gobbled consumed munched hoovered nicked
        pinched stole robbed helped_himself helped_herself had_the_lot had_the crunched gulped
        raided broke_into licked licked_up lapped licking necked downed horsed polished_off
        trago comio tragado comido traga ingirio se_comio se_trago masco mastico masticado
        devoro agarro se_tomo se_atasco se_robo lamio lamido se_mando se_zampo zampo se_bajo
        se_echo se_papeo morfo se_morfo ingerido robo comiendo tragando comi
        snaffled snaffles scarfed inhaled demolished troughed pilfered swiped snatched
        sneaked_off hoovered_up made_off_with legged_it_with guzzled se_chuto se_jambo tragaron
        comieron ingirieron
        munches munching gulp gulps gulping crunch crunches chomp chomps chomped scoff scoffs
        scoffing wolfing gobble gobbled gobbles devour devours snaffling nibbled noshed hoover
        hoovers masca mascado mastica traga tragarse comerse lamer lambio chupo chupado royo roido
        se_los_paso se_las_paso se_lo_paso se_la_paso se_empujo embucho refino se_ventilo
        snacked snacking snacks_on tucked_into tucks_into dug_into chowed chomping feasted sampled
        had_a_go_at been_at put_away dispatched snarfed got_his_paws got_her_paws got_his_teeth
        got_her_teeth chewing chewing_on sucked sucking eaten_through bolted
        mordisqueo mordisqueado mordisquea mordisqueando despacho le_entro le_entraron probado
        soplo merendo atraganto embuchado tragando engullo engullido saboreo
        """,
    "handed": """
        gave given giving give fed feed feeds slipped sneaked snuck dosed administered popped
        handed eche echamos aventó let di dio dimos dieron dado doy puse puso pusimos pusieron echo metio meti
        """,
    "took": "tome tomamos had has_had took taken take takes got getting tomo tomado toma",
    "lot": """
        whole entire all lot full bottle packet pack box strip blister blister_pack sheet tub
        every_last_one every_single_one everything remaining rest bunch loads many handful several bottles vial syringeful week
        weeks supply todo toda todas todos frasco bote botella caja tira entero entera completo
        completa sobrantes restante monton punado paquete tarro lleno resto quedaba quedaban
        """,
    "noneleft": """
        gone missing empty empties vacio vacia faltan falta disappeared vanished none_left
        nothing_left cleaned_out finished_off
        """,
    "wrecked": """
        chewed chewed_up shredded shreds bits pieces ripped torn destroyed mangled punctured
        mordido mordida masticado masticada destrozado destrozada roto rota mastico mordio
        desbarato desbaratado destrozo destruyo deshizo deshecho despedazo despedazado chomped
        gnawed burst popped split demolished babeado babeada mordisqueado rasgado reventado
        """,
    "medcontainer": """
        bottle packet box blister blisters strip tub pack vial container bote frasco caja tira
        tarro paquete botella sobre blister_pack pillbox pill_box pastillero bag lid
        bottles boxes packets strips tubs vials jar jars pot tube frasquito cajita botecito tubo
        """,
    "wholeone": """
        whole_tablet whole_pill whole_capsule whole_dose entire_tablet entire_pill entire_dose
        full_tablet full_pill full_dose complete_dose whole_thing_down pastilla_entera
        todo_con toda_con pastilla_completa tableta_entera dosis_completa dosis_entera whole_course full_course
        pill_whole tablet_whole capsule_whole one_whole it_whole them_whole pills_whole
        """,
    "planned": """
        all_four all_five all_4 all_5 his_three her_three the_three all_three his_3 her_3 the_3 all_3 sus_tres las_tres
        los_tres sus_3 las_3 his_four her_four the_four his_4 her_4 sus_cuatro las_cuatro
        prescribed label_says as_directed sheet_says gave_us gave_me vet_gave left quedan
        remaining to_go different_ones different_tablets each_day every_day al_dia por_dia
        per_day a_day daily por_tomar para_terminar nos_dieron me_dieron nos_dio me_dio
        tomo_todas_sus tomo_sus tomo_todos_sus tomando_sus tome_sus como_debe como_dios
        como_buen como_buena como_campeon
        tomo_toda_su toma_toda_su tomado_toda_su took_all_his took_all_her taken_all_his taken_all_her had_all_his had_all_her
        """,
    "jointly": """
        at_once in_one at_one_go in_one_go together instead accidentally mistake mistaken juntas
        juntos en_vez en_lugar de_golpe de_una_vez de_un_jalon de_un_tiron error accident
        """,
    "putaway": """
        bought buy need needed locked checked put_away put_my put_the_human hide away_from_him
        away_from_her near shelf handbag allergic compre guarde guardo
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
        hook hooks anzuelo anzuelos dish_towel splinter glass vidrio clavo nail screw llave key ring anillo arete
        earbud earphone audifono bateria marble canica cap hairbrush wipe wipes toallita pañal nappy diaper
        condom pad crayola tee_towel
        stitch punto grapa balloon globo chancla cordon agujeta etiqueta label popote straw tapa lid corcholata candle crayon marble bead earring pebble pebbles acorn conker peach_stone peach_pit avocado_stone skewer toothpick palillo mango_stone tinfoil clingfilm
        liston cinta moño rope leaf feather pluma hairball_toy squeaky carpet_bit
        """,
    "poisonthing": """
        chocolate weed grapes grape raisins raisin xylitol antifreeze rat_poison ratpoison
        slug_pellets onion onions lily lilies bleach weedkiller macadamia uva uvas pasas cebolla
        veneno raticida cloro anticongelante rodenticide insecticide garlic mouse_poison lirio
        marijuana edible edibles alcohol chicle rubbing_alcohol
        chewing_gum sugar_free_gum sugarless_gum goma_de_mascar chicles
        rat_bait mouse_bait rodent_bait slug_bait snail_bait ant_bait roach_bait rat_pellets
        snail_pellets ant_killer rat_killer poison cacao cocoa nicotine vape_juice
        choccy choccies choc chocs chocolates chocolatina chocolatinas bombon bombones chives leek
        leeks cebollin ajo yeast dough levadura masa_cruda mothballs naftalina pesticide plaguicida
        herbicida fertilizer fertiliser fertilizante detergent detergente suavizante lejia aguarras
        turpentine gasolina petrol kerosene toadstool toadstools azucena azucenas daffodil daffodils
        oleander adelfa foxglove vapor_rub vaporub vicks cigarette cigarettes cigarro cigarros
        colilla colillas weed_brownie weed_brownies weed_cookie weed_cookies pot_brownie space_cake
        pasitas toothpaste pasta_dental pasta_de_dientes cebo cebos poinsettia nochebuena aerosol
        masa_de_pan masa_para_pan bola_de_masa bread_mix raw_dough mouthwash enjuague_bucal nutmeg
        blue_cheese_mould compost moho fly_spray matamoscas ant_powder drain_unblocker dishwasher_tablet
        laundry_pod pastilla_de_jabon jabon soap washing_powder
        hash vodka whisky whiskey hand_sanitiser hand_sanitizer gel_antibacterial matarratas
        insecticida dark_chocolate
        easter_egg easter_eggs brownie brownies advent_calendar mince_pie mince_pies christmas_pudding christmas_cake fruitcake hot_cross_buns
        """,
    "drank": """
        drank drunk drink drinks drinking drained sipped slurped bebio bebido bebe bebiendo tomo
        tomado tome tomando chupo
        """,
    "bit": """
        bit bitten chewed chew chews chewing chomped punctured mordio mordido muerde mordiendo
        mastico masticado masticando rompio
        """,
    "packthing": """
        slush gel_pack gel_packs cold_pack cold_packs ice_pack ice_packs icepack icepacks
        freezer_pack gel_frio bolsa_de_gel bolsa_fria compresa_fria compresa_de_gel
        paquete_frio paquete_de_hielo ziplock zip_lock paquete_de_gel gel_bag ice_bag bolsita_fria ice_bags freezer_packs bolsita_de_gel
        compresa_de_hielo cold_compress
        """,
    "licked": "licked licking licks lapped lapping laps lamio lamiendo lame lamido chupo chupando chupado lambio",
    "gunk": "gel goo gunk slush beads liquid contents insides filling jelly liquido relleno contenido",
    "chops": "chops mouth lips muzzle face whiskers tongue hocico boca labios bigotes trompa lengua",
    "meanwhile": """
        after before while during then with next about under through_his through_her despues antes
        luego mientras con off at from wrap towel hate hated
        """,
    "brownish": """
        lab labrador labs coloured colored colour color mousse brown lab_mix colored_like_chocolate
        wrapper_only point_of size_of sized shaped
        """,
    "gulp": """
        ate eat eaten eats swallowed swallow swallows ingested got_into scoffed wolfed devoured
        gobbled consumed trago comio tragado traga ingirio se_comio se_trago tragó
        comido raided gulped gulp gulps gulping necked downed munched munches chomped
        se_lo_paso se_la_paso se_los_paso se_las_paso embucho
        snaffled scarfed inhaled demolished guzzled se_zampo se_jambo
        """,
    "kinswhose": "laws himselfs herselfs " + " ".join(f"{word}s" for word in _KIN_EN.split()),
    "kin": _KIN_EN + _KIN_ES,
    "mymine": "my mis mi our",
    "humanno": """
        not_give never_give dont_give didnt_give wont_give know_not no_le_di no_le_dimos
        no_le_he havent_given never_gave
        """,
    "mineonly": "away reach shelf prescribed vet",
    "humanthing": "inhaler inhalers inhalador vape vapes viagra edible edibles",
    "dosegiver": "vet gave_his gave_her le_toca nurse",
    "wholelotmed": """
        whole_bottle entire_bottle whole_lot whole_syringe entire_syringe all_of_it whole_thing
        everything_left whole entire frasco_entero frasco_completo bote_entero todo_el_frasco
        todo_lo todo_el_bote la_botella_entera todo toda full_bottle rest_of_the_bottle bottle
        whole_week the_lot enterito
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
    <ingest> ~3 pack|packet|box|bottle|strip|blister ~ of|de ~ <patient>|his|her|su|sus ~ <meds> -<food>
    whole|entire|full course|supply|lot|bag|batch ~ of|de? ~ his|her? ~ <meds> ~~ gone|missing|eaten|vanished|disappeared -run -finished
    se ~ acabo ~ todas|todos|toda|todo ~ sus|las|los|su|la|el ~ <meds> ~ de|for ~ la|toda? semana|mes|caja
    every|all|each ~ single|last|of_the? ~ tablet|pill|capsule|tablets|pills|capsules ~4 gone|missing|eaten|swallowed|vanished -<planned>
    se ~ metio|agarro|trepo|echo ~3 <meds>|<pillword>|caja|frasco|tira|blister ~~ vacio|vacia|ninguna|nada|ya_no_hay|todas
    packet|bottle|strip|blister|tub ~ is|was|now? ~ empty|gone ~~ got|helped|chewed|raided ~ at|into|it|himself|herself?
    got|gotten|broke|chewed|ripped|tore ~ into|open|at|through|hold_of ~3 <meds>|<pillword>|packet|bottle|strip|blister ~~ empty|gone|none|everything|nothing_left|all
    frasco|bottle|jeringa|syringe|botella|liquid|liquido ~~ tomo|lamio|bebio|chupo|drank|licked|lapped|drunk ~2 todo|todito|todita|all|lot|everything|entero -<food> -water -agua
    helped ~ himself|herself|themselves ~ to ~4 packet|bottle|box|strip|blister|tablets|pills|meds|tub
    necked|drank|downed|ate|swallowed|trago|tomo|bebio ~2 whole|entire|todo ~ bottle|frasco|blister|strip|vial -<food> -water -milk -beer -wine -agua -leche
    <handed> ~3 <amount>|ml|<number> ~~ should ~ be|been|have ~3 <number>|<amount>|ml
    <handed> ~3 <amount>|ml|<number> ~~ era|eran|debia|tocaba|debian ~ ser? <number>|<amount>|ml|media|solo
    <took>|<ingest>|had ~3 weeks|months|semana|mes ~ <meds> -<planned> -left -ago -since
    <handed> ~3 jeringa|syringe ~ completa|entera|llena|whole|full ~~ era|should|instead|eran|only|solo|hasta
    whole|full|entire syringe|syringeful ~~ should|instead|supposed|only
    fue ~ mano ~ con ~3 <meds>|dosis
    eaten|ate|swallowed|comio|trago ~ all ~ <three>
    home|found|find|encontre|encontramos|halle|vi ~4 <noneleft>|<wrecked> ~ <meds> ~ <medcontainer>
    <ingest> ~3 <three> ~4 <meds> -<planned>
    <wrecked>|mordio ~~ no|not|isnt ~ queda|quedan|quedo|left|remaining ~3 <meds>
    acabo|trago|bebio|drank|finished ~2 frasco|bote|botella|caja|bottle|box ~2 <jointly>|jalon|sentada|tiron
    whole|entire|all|todo|todas|full ~ gotero|dropper|syringe|jeringa|syringes ~3 <meds>
    <meds> ~3 <number> ~ ml|cc|mg ~ instead|en_vez|en_lugar
    drank|drunk|drinks|bebio|tomo|chupo|lamio ~2 whole|entire|rest|all|todo|toda|full ~3 <meds> -water -<wholeone> -<planned>
    <medcontainer> ~~ <wrecked>|<noneleft> ~~ <three> ~ <meds>
    blister|blisters|blister_pack|pill_bottle|tableta ~~ <wrecked>|<noneleft> -<planned>
    <wrecked>|<noneleft> ~3 blister|blisters|blister_pack|pill_bottle
    <handed> ~3 <three> ~ de|of ~3 <meds> -<planned> -treats
    <meds> ~~ <ingest> ~3 <three> -<food> -<planned>
    <meds>|<medcontainer> ~~ se lo|la|los|las bajo|comio|trago|zampo|mando|echo|devoro|acabo|bajaron ~2 <lot> -<food>
    vacio|vaciaron|emptied|tipped|poured|squirted|squeezed|echo ~5 <lot> ~3 <meds> -<food>
    <medcontainer> ~2 de|of ~ <meds> ~~ se lo|la|los|las bajo|comio|trago|zampo|mando|acabo
    left|quedaban|habia|faltan|faltaban|missing ~3 <three> ~ <meds> ~~ <ingest>|<wrecked>|<noneleft>
    <ingest> ~4 <lot> ~3 <meds> -<wholeone> -<planned>
    <ingest> ~6 <meds> ~4 <lot> -<wholeone> -<food>
    had|given ~ all ~2 <meds> ~3 left|remaining
    <meds> ~5 <ingest> ~4 <lot> -<wholeone> -<food>
    <lot> ~3 <meds> ~5 <ingest>|<noneleft> -<wholeone>
    <meds> ~~ <ingest> ~4 <lot> -<wholeone> -<food> -<clock> -<gaveit> -<spat>
    <lot> ~~ <meds> ~~ <ingest> -<wholeone> -<food> -<gave>
    <medcontainer> ~3 <meds> ~~ <wrecked>|<noneleft>
    <meds> ~3 <medcontainer> ~~ <wrecked>|<noneleft>
    <wrecked>|<noneleft> ~3 <medcontainer> ~4 <meds>
    <medcontainer> ~3 <meds> ~~ <ingest>|took|tomo|had ~3 todo|todas|all|lot|them|everything
    <meds> ~~ <medcontainer> ~~ <ingest>
    acabo|termino ~2 <medcontainer> ~3 <meds> ~~ todo|toda|<ingest>|tomo
    <ingest> ~3 <three> ~3 <meds>
    <ingest> ~4 extra|more|mas ~ <meds>
    <ingest>|<took>|<handed> ~3 <hours> worth ~ <meds>
    <three> ~3 <meds> ~4 <ingest>|<noneleft> -<planned>
    <noneleft> ~2 <three> ~2 <meds> -<planned>
    <handed> ~3 <three> ~2 his|her|the <meds> -<planned> -treats
    <handed>|<took> ~3 <three> ~ <meds>|doses|dosis|pills|instead -<planned> -treats -oclock
    <three> ~3 <meds> ~3 <jointly> -<planned>
    <amount> ~4 <amount> +<jointly>
    <handed>|<took> ~5 <wholelotmed> ~4 <meds> -<wholeone> -<planned>
    <meds> ~4 <wholelotmed> ~3 squirted|gave|down|in
    <handed>|squirted|squeezed|poured|syringed ~5 <wholelotmed> ~~ <meds> -<wholeone>
    <three> ~2 doses|dosis|times ~5 dose|once|juntas|together|hoy|error|mistake|instead
    triple|tripled|quadruple|triplicamos|cuadruple|<three> ~ times? ~3 dose|dosis|dosed -<planned>
    times the ~ dose|amount
    <times> ~ the|la|su|his|her|el|lo ~ dose|amount|dosis|cantidad
    <amount> ~3 instead|en_vez|en_lugar -early -earlier -late -later -<askmark>
    <handed> ~3 rest|remainder|whole|entire|resto|contents ~ of|de|del? ~3 <meds> ~ <medcontainer>
    <handed> ~3 rest|whole|entire|resto|contents ~ of|de|del ~ the|la|el|un|his|her? ~ <medcontainer> ~ of|de ~ <meds>
    acabo|acabaron|<ingest> ~2 <medcontainer> ~ completa|completo|entera|entero|whole ~ de|of ~ <meds>
    <meds> ~ <medcontainer> ~~ open|opened|abierto|abierta|chewed|floor|piso ~~ now|ahora|ya|only|solo ~ <zero>|0|empty|vacio|vacia|gone|<number>
    <handed> ~~ error|mistake|accident|accidente|mixup ~~ <times>|<three> ~ doses|dosis?
    <handed> ~3 <meds> ~~ <times> ~~ mismo|same ~ rato|time|hour|hora
    overdose|overdosed|od|sobredosis|overdosing -<future> -cuddles -love -affection -attention -kisses -fuss -amor -besos -mimos -cariño
    ten_times|10_times|tenfold ~3 dose|amount|dosis|much|strength|what|normal|recommended|lo
    had|has_had|<ingest>|<took> ~2 whole|entire|full|entero|entera|completo|completa ~ blister|blisters|blister_pack|strip|pill_bottle|pill|medicine|medication|meds ~ bottle|packet|box? -<wholeone> -<planned> -<food>
    blister|blister_pack|pill_bottle|tableta|frasco ~ entero|entera|completo|completa ~~ <ingest>|tomo|comio -<food>
    <wrecked>|mordio|abrio|opened|destapo|rompio|knocked|got_into ~3 <medcontainer> ~~ <ingest> ~3 <meds>|todas|them|lot|everything -<food> -<humandrug>
    robo|agarro|stole|nicked|swiped|pinched|saco|alcanzo ~3 <meds> ~~ no|none|nothing|ni ~ queda|quedan|left|quedo|una|dejo -<food>
    <meds> ~3 <medcontainer> ~ empty|vacio|vacia|chewed|open|licked ~ and|y|on|en? ~ chewed|empty|floor|piso|todo|his? -<planned> -need -refill
    <medcontainer> ~ of|de ~ <meds> ~2 empty|vacio|vacia|chewed|gone|licked -<planned> -need -refill
    <ingest> ~ all|everything|whatever|what ~4 left|remaining|quedaba|quedaban ~3 <meds> -<food>
    every|all|todas|todos ~ single|the|las|los|of? ~ <meds> ~ gone|missing|vanished|eaten|faltan|desaparecieron -<planned> -run -need -<food>
    <handed> ~3 whole|entire|full ~ bottle|vial|syringe|tube|dropper ~ of|instead|by|when|to|down|not -water -milk -<food>
    <wrecked>|mordio|mastico|abrio|chews ~3 lid|cap|top|tapa|tapon ~~ drank|drunk|licked|ate|comio|bebio|trago|lamio ~3 <meds>
    drank|drunk|bebio|bebido|tomo|lamio|chupo ~ el|the|un|his|her|su|all|whole? ~ frasco|bottle|bote|botella ~ de|of|entero|completo|whole ~ <meds>
    <handed>|di|puse ~ him|her|le? ~ <times> ~ mas|more|the|lo|la|su|as ~ de|than|dose|dosis|que|amount|much
    acabo|comio|trago|ate|swallowed|zampo|ingested ~3 <meds> ~ de|for ~ toda|whole|the|una|esta|entire|all ~ semana|week|mes|month
    <ingest> ~ el|la|un|una|the|his|a|my? ~ blister|frasco|strip|blister_pack|pill_bottle|pill_packet ~ entero|entera|completo|completa|whole -<food>
    <ingest> ~ whole|entire|full ~ blister|strip|blister_pack|pill_bottle|pill_packet|bottle_of_pills -<food>
    cleared|polished|cleaned|worked ~ out|off|through ~ a|the|his|her? ~ whole|entire|all|full ~ blister|strip|packet|bottle|box|<medcontainer> ~ of ~ <meds>
    empino|chingo|bajo|tumbo ~ el|la|todo ~ frasco|bote|botella|jarabe ~ de ~ <meds>|medicina|jarabe|remedio -<food>
    <ingest>|had ~2 whole|entire|full bottle|packet|blister|strip $
    whole|entire|full bottle|packet|blister|strip ~ is|was|been|got? ~ eaten|swallowed|chewed $
    se ~ comio|tomo|trago|bebio|acabo ~ el|la|un|una|todo frasco|bote|botella|blister ~ entero|
        entera|completo|completa $
    = medicine_overdose @dose @swallowed @asked-dose
    <three>|two|2|dos|couple|few ~ <meds>? too many -<food>
    <handed>|had|got|tomo ~2 far|way? too much -<food> -<bandageword> -trouble -fuss -<walkword>
    filled|drew|llene|cargue|llenamos ~ the|la? ~ syringe|jeringa ~~ instead|should|en_vez|en_lugar|debia|era|top|tope|lleno
    misread|misjudged|mismeasured ~~ label|dose|syringe|ml|bottle|gave|given
    me|nos pase|pasamos|pasaron ~ con|de ~ la|las|el? ~ dosis|gotas|medida|cantidad|ml|raya
    confundi|lei|equivoque ~~ ml|mililitros|miligramos|mg|rayas|lineas|decimal|punto
    decimal|decimals ~ point|place? ~~ wrong|out|gave|error
    <three>|two|2|dos|couple|few ~ <meds>|mas? de mas -<food>
    <ingest>|<took> ~2 whole|entire|full|toda|todo|entera|entero ~2 <medcontainer>|caja|tira|blister|frasco -<food>
    <three> ~~ not|instead|rather|en_vez|en_lugar ~2 <number>|half|una|uno|media -<clock>
    <ingest> ~3 whole|entire|all|todas|todo|lot|bottle|frasco|packet ~3 of|them|bottle|lot|
        packet|bag|frasco|pastillas -<food> -<poisonthing> -<objectthing> -<planned>
    se las comio|trago|tomo ~ todas -<planned>
    <three> ~ <jointly>
    <handed>|<took> ~ <three> $
    = human_medicine
    dish|bowl|plate|box|bottle|packet|strip|blister|plato|caja|frasco|pot ~~ empty|gone|vacio|vacia|licked|chewed +<menspills> -<food>
    <handed>|gave|di|fed ~3 one|two|some|half|una|uno|media|dos|<number> ~ of|de ~ mine|mias|mios|ours|my_own|las_mias|mis
    <handed> ~ de ~ mis ~ <pillword>
    <ingest>|<handed> ~4 jarabe|pastilla|pastillas|gotas|syrup|medicina ~ para|pa|for ~ la|the|el? ~ tos|gripa|gripe|fiebre|cabeza|cough|cold|fever|presion|acidez
    <ingest> ~3 pomada|crema|unguento|ointment|cream|gel|balm ~ de|of|for|para? -<packthing> -<food> -cheese -ice -sour -queso -leche
    <ingest>|<took>|comio|trago ~3 <three>|<number>|one|some|una|unas|dos ~ of|de ~ them|those|ellas|esas +<menspills>
    se|las|los|la ~ comio|trago|tomo ~ todas|todos|una|dos|<three> +<menspills> -<food>
    <ingest> ~ them|those|one|two|<three> +<menspills> -<food>
    <humandrug>|<pillkind> ~ <pillword>? ~~ strip|packet|blister|bottle|box|frasco|caja ~~ <wrecked>|<noneleft>
    <humandrug> -<humanno> -<putaway> -<humanthing>
    <ingest>|<handed>|<took>|chewed|licked|dropped|found|dieron ~5 <humandrug> -<humanno>
    <humandrug> ~~ <ingest>|<noneleft>|<wrecked> -<humanno>
    <ingest>|<handed>|<took> ~5 <pillkind> ~ <pillword>|d -<humanno>
    <pillkind> ~ <pillword> ~~ <ingest>|<noneleft>|<wrecked> -<humanno>
    <ingest>|<handed> ~5 <kinswhose>|<mymine> own? <pillkind>? <pillword>|<pillkind>
    <ingest>|<handed> ~5 <kinswhose> ~2 <pillword>
    <took> ~3 <kinswhose>|<mymine> own? <pillkind>? <pillword> -<dosegiver>
    <kinswhose>|<mymine> own? <pillkind>? <pillword> ~~ <ingest>|<noneleft>|<wrecked>
    <kinswhose> ~2 <pillword> ~~ <ingest>|<noneleft>|<wrecked>
    <took>|<ingest> ~~ laws <pillkind>? <pillword>
    <took> ~~ <kinswhose> ~2 <pillword>|<pillkind> -<dosegiver>
    <ingest> ~4 <mymine> ~ <pillword> -dog -dogs -cat -boy -girl -perro -gato
    <ingest> ~4 pastillero|pillbox|pill_box|pill_organiser|pill_organizer
    <wrecked> ~5 <mymine>|<kinswhose> <pillkind>? <pillword>
    <pillkind> ~ <pillword> ~3 dog|cat|perro|perra|gato|gata -<mineonly>
    inhaler|inhalador|vape ~ has|with|tiene|con|got ~2 teeth|tooth|bite|dientes|mordidas
    <ingest> ~ el|la|un|una|the ~ <meds> ~ de|of ~ mi|la|el|my ~ <kin>
    <kin>|<mymine> ~2 <pillword> ~~ faltan|falta|missing|short|gone ~2 varias|several|some|few|<number>|algunas
    shared|sharing|convido|compartio ~~ <pillword> -<food>
    <pillword> ~ of|from|belonging|for|made ~2 <kin>|mine|humans|people|adults|kids
    <ingest>|<handed> ~2 de|para ~2 presion|tiroides|colesterol|diabetes|ansiedad|depresion
    <pillword> ~ para|pa|de ~2 <kin>|dormir|presion|diabetes|tiroides|alergia|colesterol|
        ansiedad|corazon|nervios|gripa|gripe|cabeza|depresion|colicos|adulto|adultos|acidez
    <ingest>|<handed>|dieron ~5 vitaminas|suplementos|suplemento|<pillword> ~ de|para ~2 <kin>
    <ingest>|<handed>|<took> ~3 <kin> ~2 <pillword> -<dosegiver>
    <mymine>|<kinswhose> own? antihistamine|antihistamines|steroid|steroids|supplement|supplements|vitamin|vitamins|multivitamin|multivitamins|gummies|insulin|laxative|laxatives|antacid|antacids|thinners|sedative|sedatives ~~ <wrecked>|<noneleft>|<ingest>
    give|giving|dar|darle|diera|dieramos|try|trying ~3 <humandrug> ~~ so|and|y|then ~ se|le|i|we|she|he ~ did|gave|have|la|lo di?|dimos?
    give|giving|dar|darle|diera|dieramos ~3 <humandrug> ~~ se|le ~ la|lo|las|los? ~ di|dimos|dio|dieron
    been|got|gotten|getting ~ at|into|in ~ the|my|some|our|his|her|a ~ <humandrug>
    <kin> ~ le dio|dieron|dieran ~ de ~ su|sus|las|la <pillword>
    = poison fixed
    <poisonthing> & <ingest>|<drank> -<brownish> -<humanno>
    been|got|gotten|getting ~ at|into|in ~ the|my|some|our|his|her|a ~ <poisonthing> -<brownish>
    <poisonthing> ~~ <ingest>|<drank> it|them|some|half|all|most -<brownish> -<humanno>
    <poisonthing> ~~ se ~ lo|la|los|las ~ ha|habia|ya? <ingest>|tomo|tomado -<brownish> -<humanno>
    <poisonthing> ~~ <noneleft>|<wrecked> -<brownish> -<humanno>
    <drank>|<bit>|<gulp> ~3 <packthing> -<meanwhile> -se_rompio
    <packthing> ~ has|with|tiene|con|got|have ~2 teeth|tooth|bite|bitten|dientes|mordidas|mordida|hoyo ~~ half|empty|gone|leaking|vacio|vacia|less|missing
    <ingest>|<drank>|<gulp> ~4 gel|gunk|goo|slush|liquido|melted|mezcla ~ that|stuff|out|from|of|del|de? ~3 <packthing>
    <packthing> ~~ <gunk>|blue|green|stuff ~4 <chops>
    <packthing> ~~ <wrecked>|shreds ~~ <gunk> ~ gone|missing|round|around|all|on|everywhere
    <gunk>|<poisonthing> ~2 round|around|on|over|in|en|por ~ all? ~ his|her|the|el|la|su|todo? ~ <chops>
    <chops> ~2 lleno|llena|covered|full|smeared|embarrado|embarrada|manchado|manchada|untado ~ de|of|in|with ~2 <poisonthing>|<gunk>
    <licked> ~~ <gunk> ~ del|off|from|de ~ dedo|finger|floor|piso|bolsa
    <gunk> ~~ <licked>|drank|ate|trago|comio ~ it|lo|him|her? ~~ bolsa|pack|bag|compresa
    <packthing> ~~ drank|drunk|licked|lapped|bebio|lamio|tomo ~2 what|lo_que|whatever ~2 came|leaked|salio|fuga|spilled
    <ingest> ~~ y|con|and|with|of|de <poisonthing> -<brownish> -<humanno>
    <poisonthing> ~~ <ingest>|<drank>|had ~ a? one|two|few|bit|piece|<number>|uno|una|unos|poco|pedazo -<brownish> -<humanno>
    <poisonthing> ~~ bits|bite|chunk|pedazo|pedazos|half ~ are|is|of|out? missing|gone|faltan|falta|eaten
    <poisonthing> ~~ se ~ echo|empujo|aviento|avento|refino|zampo|bajo ~ la|el|una|un|lo|toda|todo -<brownish>
    <licked> ~~ molde|bowl|wrapper|envoltura|tarro|jar|lata|tin|pan ~~ <poisonthing> -<brownish> -<humanno>
    <poisonthing> ~~ <licked> ~ lo|it|todo|toda|all|everything -<brownish> -<humanno> -<wound>
    <licked> ~2 slush
    <packthing> ~~ <drank>|<licked>|lapped it|them|some|half|all|most|lo|la -water -agua -bowl
    <ingest>|<licked>|<drank>|<gulp> ~3 stuff|contents|inside|insides|filling|liquid|gel|relleno|liquido ~ inside|of|from|in|de|del|out ~3 <packthing>|<icepack>|bag|pack|bolsa|compresa
    <bit>|mordio|rompio|abrio|mastico ~3 <packthing>|<icepack>|compresa|bolsa ~~ <gulp>|trago|comio|lamio|bebio|<licked>|<drank> ~2 gel|liquid|liquido|contents|insides|slush
    <licked>|<ingest>|lamio|trago ~2 gel ~~ <packthing>|bolsa|compresa|pack|bag
    <licked>|<drank>|<gulp> ~2 gel|liquid|liquido|contents|inside|juice|agua|water ~ of|from|de|in|inside ~2 <packthing>|<icepack> -bowl
    <bit>|rompio|abrio|burst ~2 pack|bag|bolsa|bolsita|compresa ~~ gel|slush|liquid|liquido ~2 everywhere|all|out|mouth|face|todo|todas|hocico|boca|piso|floor
    <packthing> ~~ <bit>|burst|leaking|leaked|split|roto|rota|derramo ~~ licked|lapped|drank|ate|
        licking|lamio|tomo|trago|comio
    = poison
    had|<handed>|took|se_echo|se_empujo ~5 <poisonthing> -<brownish> -<humanno> -<poo> -wipe -swab -pad -flavour -flavor -wanted -wants -queria -quiso -want
    = poison
    <ingest>|<drank>|had ~2 it|them|one|two|some|half|lot|all|most|any|bit|few|<number> +<thepoison> -<food> -<meds> -<water> -<bandageword> -<wound> -look
    <ingest>|tomo|bebio ~2 uno|una|unos|dos|tantito|poco|algo|mitad|todo|toda|todas|todos +<thepoison> -<food> -<meds> -<water> -<wound>
    lo|la|los|las ~ ha|habia|ya? ~ <ingest>|tomo|bebio +<thepoison> -<food> -<meds> -<water> -<wound> -<bandageword> -<coneword>
    licking|smacking ~ his|her ~ lips|chops +<thepoison> -<food>
    = bandage_or_object !@asked-dose !@asked-appetite
    <gulp> ~2 it|them|one|some|half|most +<theobject> -<food> -<meds> -<icepack>
    se ~ lo|la|los|las ~ ha|habia|ya? ~ <gulp> +<theobject> -<food> -<meds> -<icepack>
    inside|dentro ~ of|de? ~ him|her|el|ella +<theobject>
    in|en ~ his|her|su|la tummy|belly|stomach|guts|panza|barriga|estomago +<theobject> -<wound>
    = bandage_or_object
    <objectthing>|<bandageword> ~~ it|se_le? went|fue ~ down|adentro|dentro -<meds> -<foodbone> -<food>
    bit|piece|chunk|lump|some|pedazo|pedacito ~ of|de ~2 <objectthing> ~ went|gone|fue|paso ~ down|in|adentro
    trago|comio|swallowed|ate ~2 tapa|tapita|tapon|lid|cap|corcholata|taparrosca|popote|straw|globo|balloon|chancla|cordon|agujeta|etiqueta|label|wrapper
    hilo|string|thread|cordon|ribbon|liga ~~ trago|swallowed|tragado ~ el|the? resto|rest
    <gulp> ~5 <objectthing> -<humandrug> -<foodbone> -<poisonthing>
    swallowed|swallow|trago|se_trago|ingested|tragó ~4 a|an|the|his|her|un|una|su|el|la|my|
        something|algo|half|part|pedazo|piece|some ~2 <anyobject> -<meds> -<food>
    <objectthing> ~3 swallowed|ate|eaten|gone|missing|trago|comio|tragado|disappeared \
        -<stitchfall> -<foodbone>
    pieces|piece|bits|bit|chunk|chunks|part|pedazo|pedazos|cacho ~ of|de|del ~3 <objectthing> \
        ~2 missing|gone|faltan|falta|eaten|ate
    <objectthing> ~~ pieces|piece|bits|bit|chunk|part|pedazo|cacho ~3 missing|gone|falta|faltan
    <bandageword>|<objectthing> ~~ lo|la|se ~ habia|ha ~ tragado|comido
    <bandageword>|<objectthing> ~~ fui|went|quise|before|antes|got|tried ~~ tragado|tragada|swallowed|tragó
    <gulp> ~2 part|chunk|piece|bit|pieces|bits|pedazo|pedacito|cacho|trozo|lump ~ of|de ~3 bed|bedding|blanket|cushion|carpet|rug|pillow|mat|crate|sofa|cobija|cama|tapete|sillon|colchon|cojin|almohada|puerta|jaula|shoe|slipper|zapato
    <bandageword>|<objectthing> ~~ ate|eaten|swallowed|comio|trago|tragado|eating|munched|gulped ~ half|some|bit|part|most|all|pedazo|mitad|it|lo|cacho|them|one ~ of? it? -<food> -<meds>
    no|sin|without|missing|lost|gone <bandageword> ~~ ate|eaten|swallowed|comio|trago|tragado ~ it|lo|la|un?
    <bandageword>|<objectthing> ~~ se ~ lo|la|los|las ~ comio|trago|tragado|comido|paso|embucho -<food> -<meds>
    <bandageword>|<objectthing> ~~ falta|faltan|missing|gone ~~ inside|dentro|adentro|swallowed|ate|paso|trago|comio -<food>
    <bandageword>|<objectthing>|chunk|pedazo ~~ inside him|her -<wound>
    <bandageword>|<objectthing> ~~ in ~ his|her|the tummy|belly|stomach|guts -<wound>
    swallowed|down|gone|must|probably|likely inside him|her -<meds> -<food>
    <bandageword>|<objectthing> ~~ down the hatch|gullet
    <bandageword>|<objectthing> ~~ esta|anda|quedo dentro|adentro|en ~ del? ~ el|la|su? ~ perro|gato|panza|estomago|barriga
    = bandage_or_object !@asked-dose !@dose
    swallowed|swallow|gulped|trago|ingested ~ down? ~ a|an|un|una|another|half|part|piece|pedazo|trozo -<meds> -<food> -<humandrug> -<poisonthing> -<water> -<drinkwater> -<pillkind> -<mymine> -bit -lot -mouthful -treat -hard -well -time -story -cuento -cuentos -rato
    swallowed|swallow|trago|ingested ~ something|it|algo -<meds> -<food>
    """,
}

NEGATED = {
    "swallowed": {
        "medicine_overdose": None,
        "human_medicine": None,
        "poison": None,
        "bandage_or_object": None,
    },
}

"""Drinking."""

from __future__ import annotations

CLASSES = {
    "sipword": """
        sip sips lap laps lick licks trago tragos traguito traguitos sorbo sorbos sorbito sorbitos lengüetazos
        lenguetazos lenguetazo lamidas lamida lambidas gotita gotitas buchito buchitos mouthful mouthfuls
        """,
    "tipsy": """
        makes_him_drunk makes_her_drunk like_a_drunk bit_drunk hes_drunk shes_drunk looks_drunk
        seems_drunk him_drunk her_drunk little_drunk drunk_sailor
        """,
    "waterbowl": """
        water_bowl waterbowl bowl_of_water bebedero tazon_de_agua plato_de_agua water_dish
        fountain
        watering_hole traste_del_agua traste_de_agua bowl_de_agua cubeta_de_agua
        """,
    "drink": """
        drink drinks drinking drank drunk drinkin lapping laps_water lapped bebe bebio bebiendo
        bebido beber drinked hydrating hydrated hidratado hidratada toma_agua tomo_agua
        tomando_agua tomado_agua tomar_agua sips sipped sipping guzzling bebe_agua fluids
        slurping slurps slurped hidratandose bebia hidratarse bebiendose
        """,
    "drinkwater": """
        water agua aguita awa fountain water_bowl fuente bebedero trago traguito sip drop gota
        liquido liquidos
        """,
}

RULES = {
    "drinking": """
    = normal
    bowl|bowlful|whole|half ~3 of water -<neg> -soaked -hot -warm -<drink>
    agua|water ~2 si|also|tambien|yes ~4 toma|tomar|tomado|tomo|bebe|bebido|beber|visto|drinks|drinking|drank
    agua|water ~ tambien|too|also
    <drink> -acting -acts -wobbly -staggering -weird -drunken -<tipsy>
    <drink> ~3 <good>
    water|agua ~3 <good>|normally
    water|agua ~~ taking|drinks|drinking|toma ~2 <good>
    toma|tomo|tomando|tomado|tomar|taking|takes|took|had|has_had|bebe|bebio ~3 <water>|<waterbowl>
    had|has|having|drunk|taken ~ plenty|loads|his_fill|her_fill ~ to|of drink|<water> -<neg>
    <drink> ~2 <slight> $
    good|big|long|decent|nice|proper ~ drink|slurp|lap|guzzle -<neg>
    lapped|lapping|laps|slurp|slurps|slurped|slurping ~ up|down? ~ some|his|her|the|a? ~ water
    si ~ toma|tomo|bebe|bebio ~ su? agua
    <drink>|hidratandose ~ bien|normal|normalmente|like_normal
    water|agua ~2 taking|takes|toma|drinks|drinking|bebe|la_bebe ~ the|it|lo? same|as|normal|mismo|fine|like -<neg>
    fluids|liquids|liquidos ~2 going|staying ~ in|down -<neg>
    = less
    only|just|solo|nomas ~2 sip|sips|trago|tragos|traguito|traguitos
    casi_no|casi ~2 tomado|bebido ~ agua
    sips ~ of ~ water ~~ nowhere|less|not|menos
    nowhere near ~4 normally|usual|normal|drinks +<drink>|<drinkwater>|sips
    taking|takes|took|drinking|having ~2 less ~ water
    <drink> ~3 less|little|bit|menos|poco|poquito|barely -more
    <barely>|less|little|menos|poca|poco ~3 <drink>|<drinkwater> -<wound> -<vomit>
    toma|tomo|tomando|bebe|bebio|tomado ~2 menos|poca|poco|poquita|poquito|tantita ~ agua?
    <neg> ~2 <drink> ~3 much|lot|mucho|mucha|enough|suficiente|tanto|usual|bien
    no ~2 toma|tomo|tomado|tomando mucha|mucho|casi|bastante|suficiente
    water ~3 less|low
    few sips|laps
    <drink> ~2 drop|sip|gota|trago|traguito|sips ~ here|now|and|only? -<neg>
    few|couple|some|unos ~ sips|laps|tragos|traguitos
    casi no ~2 toma|bebe|tomo ~ agua?
    <sipword> ~ of|de ~ water|agua ~2 off|from|only|in|en|all|y -more -mas -<neg> -ni -sin
    only|just|solo|nomas|puro|nada_mas ~3 <sipword> ~ of|de? ~ water|agua
    <sipword> ~2 nada_mas|nomas|only|and_no_more|at_most|en_todo|all_day|todo_el_dia|or_two -<neg> -<food> -<meds> -<wound>
    only|just|solo|nomas|nada_mas ~ <drink>|toma|bebe|tomo|drinks|drank ~2 if|when|because|si|cuando|from|de ~ i|we|le|add|put|la|mi|my
    water|agua|bowl ~2 barely|hardly|scarcely|apenas|casi ~ gone|moved|touched|dropped|down|bajo|bajado|tocado|tocó
    <number>|few|couple|unos|unas|dos|tres ~ <sipword> ~ of|de|al? ~ water|agua
    le ~ dio|da ~2 <sipword> ~ al|a|del ~ agua
    no ~ toma|tomo|tomando|tomado|bebe|bebio ~ mucha|mucho|tanta|bastante|suficiente ~ agua
    drinks|drinking|bebe|toma ~ menos|less|poco|little
    <drink> ~ a? lot|much|way|far|loads|bit|little|mucho|bastante less|menos
    <neg> ~ much|little|great ~ interest|interested ~ in|por|en ~ water|agua|drinking
    casi ~ no|ni|nada ~ prueba|toma|bebe|tomado|bebido|tomo|bebio|probado ~ el|nada|su? ~ agua?
    <drink>|toma|tomo|bebio ~ agua? ~~ pero|but|aunque|though ~ poca|poco|poquita|poquito|little|barely|less
    = more
    cant|no|couldnt ~ get ~ enough ~ water|drink
    acaba|acabo|termina|vacia|tomo ~2 bebedero|tazon|plato_de_agua|cubeta|agua ~4 veces|<times>|dia|rato|seguido
    empties|emptying|emptied|draining|drains ~3 water|agua|bebedero ~4 fast|quick|as|again
    drinks|drinking|drank ~ us|me|the ~2 dry|house
    toma|tomando|bebe|bebiendo|drinks|drinking ~2 como|like ~2 loco|loca|camello|crazy|mad|desesperado|desesperada
    guzzl*|gulp*|drinking|drinks ~3 more|far_more|twice ~2 water
    vive|pasa|tiempo tomando|bebiendo
    stop|stops ~ drinking|tomando
    <drink> ~3 more|lots|lot|loads|tons|gallons|england|excessive|excessively|constantly|mas|
        mucho|mucha|muchisimo|camel|fish|litres|liters|nonstop|non_stop|double|excess|
        excesivo|demasiado|demasiada -<neg>
    toma|tomo|tomando|bebe|bebiendo|bebio|tomado ~3 mas|mucha|muchisima|demasiada|bastante|
        mucho|exagerada|monton|chingo ~2 agua
    drinking|bebiendo so|too much
    more|extra|mas|double|excessive|very|really|super|so ~2 thirsty|sediento|sedienta|thirst|sed
    thirsty|sediento|sedienta|polydipsic|polydipsia|polidipsia|thirst|sed -<neg>
    mucha|bastante|demasiada sed
    more ~2 water
    guzzling|gulping|glugging|guzzles|gulps ~2 water|bowl|it
    <drink> ~3 doubled|tripled|increased|gone_up|is_up|right_up|way_up|subido|aumentado
    fill|filling|topping|refilling|filled|refill|rellenar|relleno|lleno|refilled ~4 bowl|water|agua|plato|
        tazon|bebedero
    empties|emptied|empty|drains|drained|vacia|vacio ~3 water|bowl|agua|bebedero ~3 times|
        constantly|again|day
    empties it like
    se acaba|acabo ~2 agua
    todo el tiempo tomando|bebiendo
    <drink>|toma|bebe|tomando|bebiendo ~3 cada_rato|a_cada_rato|todo_el_rato|todo_el_dia|litros|litres|gallons|bucketful|bucketloads|buckets
    toma|bebe|tomando|bebiendo ~~ mas que antes|normal|siempre
    <drink>|toma|bebe|tomo|bebio|tomando ~2 un? monton|chorro|resto|chingo|bestia|vaca|esponja|barbaridad|barbaro|doble|triple|litros|cubetas|baldes|monte -<neg>
    toma|tomando|bebe|bebiendo|drinks|drinking ~ agua? ~ como|like ~2 desesperado|desesperada|loco|loca|camello|esponja|vaca|pez|caballo|sponge|camel|horse|fish|crazy|mad
    drank|drinks|drunk|drinking|emptied|empties|drained|drains ~ the|his|her|it|two|three|<number>? ~ water? bowl|bowls ~ dry|twice|<times>|water|since
    <number>|<three> ~ bowls|tazones|platos|trastes|bebederos|cubetas|litros|bottles ~ de|of ~ agua|water
    emptied|empties|emptying|drains|drained|vacio|vacia|acaba|acabo ~3 <waterbowl>|water|agua -<bandageword>
    constantly|always|forever|all_day|continually|continuously|never_away|todo_el_dia|siempre|pegado|pegada|metido|metida|forever ~2 at|a|al|en|to|from|filling|del ~3 <waterbowl>|water|tap|faucet|bebedero|agua|llave -<neg> -bandage -warm
    no ~ para|deja|paraba|sale|despega|suelta ~ de|del|el ~ beber|tomar|agua|bebedero|tomando|<waterbowl>
    tanking|necking|glugging|knocking ~ up|back|down? ~ on? ~ water|it
    water|agua ~3 like|como ~ its|it|si ~ going|fuera|no
    drinks|drinking|bebe ~ and|y ~ drinks|drinking|bebe
    se ~ la|lo|pasa ~ pasa|vive ~ bebiendo|tomando|en ~ el|agua?
    <drink>|toma|bebe|tomo|bebio|tomando ~2 el|a? ~ doble|triple|lo_bestia|lo_loco|chorros|mares -<neg>
    double|twice|triple|doble ~ what|the|of|lo|de? ~3 <drink>|normally|usual|normal
    at|in|on|en|a ~ the|his|her|el|la ~ water|tap|bebedero|<waterbowl> ~2 all|constantly|every|non_stop|always|todo|nonstop
    <drink> ~2 <times>|double|doble ~ as|what|lo|the|de ~ much|amount|normal|he|she|que|usual
    <drink> ~ de ~ mas
    water|drinking|thirst|agua|sed ~3 through ~ the roof
    water|drinking|thirst ~ intake|consumption ~3 up|doubled|increased|rocketed|roof|high|higher
    drinks|drinking|drank|drained|downs|downed ~ the|a whole|entire|full ~ bowl|bowls -<neg> -<good>
    <neg> ~ leave|leaves|away ~ the|his|her|from ~ water|<waterbowl> ~ alone|be?
    no ~ se ~ le ~ quita|pasa ~ la sed
    at|on ~ his|her|the ~ water ~ like|again|every|since
    <number>|two|three|dos|tres ~ bowls|bowlfuls|tazones|platos|trastes ~ of|de|since|already|desde|ya|today -<food> -clean -empty
    = normal @drinking
    had|has|hes|shes ~2 plenty|enough|some|fill|lots -<neg>
    plenty|glug|glugs|slurp|slurps|slurping|lapping|gulping -<neg>
    si|toma|tomo|bebe|bebio|tomando ~ su|la|normal|bien|igual|siempre|rato|agua|solito|solita -<neg> -menos -poca -poco -mas -mucha -muchisima
    bowl|dish|water|plato|traste|bebedero|tazon ~ is|was|went|half|medio? ~ gone|down|empty|emptied|lower|bajo|bajado|vacio|mitad|medio -<neg>
    se ~ la|lo ~ tomo|acabo|bebio|toma
    as|same|como always|usual|normal|ever|before|siempre -<neg>
    = less @drinking
    ^ only|just|barely|hardly|little|bit|tiny|apenas|poco|poquito|poquita|tantita|tantito|poquitito -more -mas
    <neg> ~ really|much|mucho|mucha|tanto|tanta|enough|loads|lot|great|casi -<sipword>
    less|menos|fewer|barely|hardly|apenas -<neg>
    few|couple|one|two|dos|tres|unos|unas|un|<number> ~ <sipword>
    <sipword> $
    when|if|solo|cuando|from|off|de ~ i|se|la|le|my|mi ~ hand|finger|fingers|palm|mano|manos|dedo|jeringa|syringe|spoon|cuchara
    = none @drinking
    refuses|refused|refusing|rejects|rechaza|rechazo|desprecia|ignores|ignored|ignoring|untouched|intacto|intacta|intactos
    wont|doesnt|hasnt|didnt|not|havent ~2 touch|touched|look|go|near|have|had|take|taken|lick|licked|sip|interested|drop|want|even
    no ~ la|lo|le|ha|se? ~ prueba|probo|probado|toca|tocado|toco|quiere|quiso|querido|acepta|acerca|acerco|pela
    bowl|dish|level|plato|traste|nivel ~2 still|same|untouched|full|lleno|igual|brim
    ni ~ una|un|la|el|siquiera? ~ gota|gotita|lenguetazo|lamida|lengua|trago|sorbo|prueba|mira|huele|tantita
    = more @drinking
    muchisima|muchisimo|demasiada|demasiado|bastante|exagerado|un_monton|litros|buckets|gallons -<neg>
    loads|lots|tons|masses|constantly|nonstop|non_stop|obsessed|insatiable|all_day -<neg> -plenty -normal -usual
    twice|double|triple|doble|triple ~ what|as|the|of|lo|de|que
    bowl|tazon|plato ~ after|tras bowl|tazon|plato
    mas ~ de|que ~ lo? normal|siempre|antes|usual|costumbre|cuenta
    toma|tomo|bebe|bebio ~ de mas
    drains|empties|drained|emptied|draining|emptying|finishes ~ it|the|his|her|bowl ~~ every|again|twice|<times>|constantly|straight
    keep|keeps|sigo|vivo|tengo ~ filling|refilling|topping|rellenando|llenando|que ~ llenar|rellenar|it?
    le|lo|la lleno|relleno ~3 cada|rato|veces|<times>
    cada|every rato|ratito|five|few|<minutes> -<neg>
    fill*|refill*|top*|rellen* ~2 it|him|her|lo ~~ times|veces|day|dia|again|constantly|barmaid|<times>
    more than|que usual|normal|antes|lo
    = none
    syringe|syringing|syringed|jeringa ~ water|agua ~~ wont|no|not|refuses ~ take|drink|toma|quiere|bebe
    wont|doesnt|no ~ take|drink|toma|bebe ~ any ~ himself|herself|solo|sola +water|agua
    no ~3 bajado|baja|bajo|movido ~ nada? ~4 agua|bebedero
    agua|water ~4 sigue|still|esta ~2 igual|same|just ~3 lleno|llena|full
    <neg> ~5 sip|trago|traguito -<pee> -<bleedword>
    <neg> ~5 drop|gota -<pee> -<bleedword> +water|agua|drink|drunk|drank|drinking|tomado|toma|tomar|bebido|bebe|had|taken
    <neg> ~3 <drink>
    <neg> ~2 <drink> ~3 anything|nada|drop|nothing|all|gota|sip
    <drink> ~2 <zero>
    <drink> ~3 nothing|nada
    no ~2 toma|tomo|tomado|tomando|quiere|quiso|querido|acepta|bebe|prueba|probado ~2 agua|liquidos -casi_no -casi
    no ~ tomado|toma|bebido ni
    <neg> ~3 touch|touched|want|wants|take|taking|tocado|toca|gone_near|interested|lick ~3 \
        <drinkwater>
    refuses|refused|refusing|rechaza|rechazo ~3 water|agua|drink|beber|drinking|fountain
    water|agua ~4 hasnt|not|no ~ gone|moved|touched|down|bajado|tocado
    water ~2 untouched|full
    water|agua|bebedero ~3 where|exactly|level|same|igual|intacta|intacto ~~ left|filled|level|baja|bajado|yesterday|mark|desde|ayer
    water|agua ~3 same|igual ~ level|mark|nivel
    agua|water|bebedero|bowl ~~ no|hasnt|not ~2 bajado|baja|dropped|moved
    agua intacta
    adipsic|adipsia|adipsico
    sin tomar|beber|probar|tomado ~2 agua|liquidos|nada_de_agua
    <neg> ~ a? sip|trago|traguito|lap -<bleedword> -<pee> -<seepword> -pus
    ni ~ agua|traguito|trago -<bleedword> -<pee> -<seepword> -pus
    stopped drinking
    <neg> ~2 go|goes|gone|went|going|come|acerca|acerco|arrima|near ~ near|close|a|al|to|her? ~ her|his|the|it|su|el? <drinkwater>|<waterbowl>|agua
    no|sin|zero|cero ~ water|agua|fluids|liquidos ~ since|for|all|in|desde|en|today|hoy
    agua|water ~ esta|sigue|is|still ~ igual|intacta|untouched|intacto|full|llena|where
    <neg> ~2 get|convince|make|hago|logro|consigo ~2 drink|<drinkwater>|beba|tome
    ni ~ agua ~ ha|quiere|toma|bebe|acepta|prueba|con
    ni ~ con ~ jeringa|cuchara|gotero ~2 agua|water
    <neg> ~ get|getting|persuade|convince ~ her|him|them to drink
    ni ~ un|una? ~ <sipword> ~ de ~ agua
    ni ~ un|una ~ <sipword> ~~ en todo ~~ jeringa|agua
    <neg> ~ had|taken|took|have ~ a single? sip|lap|drop|drink|lick -<blood>
    no_interest|zero_interest|no|zero ~ interest? ~ in|por ~ water|drinking|agua
    turn|turns|turned|turning|walks|walked ~ away ~ from ~ <drinkwater>|<waterbowl>|water
    desprecia|rechaza|rechazo|ignora|desprecio|ignores|refuses|snubs ~ el|la|su|the|his|her? ~ agua|water
    had|has|have|drunk|taken|drank no ~ water|drink|fluids|liquid
    = none @drinking
    <neg>|ni ~ a? drop|gota
    nothing|nada|none -mas -grave -<wrongword> -dramatic -raro -preocupante -serio
    = more agent
    <neg> ~ keep up ~ with ~ <waterbowl>|water|drinking
    fill|filling|topping|refilling|filled|refill|refilled|rellenar|relleno|rellenado|llenado ~4 bowl|water|agua|plato|tazon|bebedero ~ <times>|again|constantly|twice|day
    = none agent
    <neg> ~ seen|visto ~ him|her|lo|la|que? ~ drink|drinking|beber|tome|tomar|beba|bebiendo|tomando ~ agua?
    """,
}

NEGATED = {
    "drinking": {
        "normal": "none",
        "less": None,
        "more": "normal",
        "none": "normal",
    },
}

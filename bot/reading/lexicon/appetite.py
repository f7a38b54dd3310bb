"""Appetite: what and how much was eaten. More of it in ``meals``."""

from __future__ import annotations

CLASSES = {
    "leavingword": "leave leaves leaving left dejo deja wastes",
    "offverb": """
        polished finished wolfed scoffed knocked bolted horsed saw wiped took
        """,
    "eat": """
        eat eats eating ate eaten eatin eated feeding feeds fed come comio comiendo comido comer
        comia morfa morfo morfar morfando lastro lastra comen comimos coma cena ceno desayuno
        almorzo cenado desayunado desayunando cenando almorzando jama papeo jamando munching
        munches munched dined nibbles
        """,
    "devour": """
        demolish devour wolf_down hoover scoff polish_off finish_his appetite_maintained
        appetite_preserved devoured devours devouring devoro devora devorando wolfed wolfs
        wolfing gobbled gobbles gobbling scoffed scoffs scoffing inhaled inhales hoovered
        hoovers hoovering polished_off polishing_off polishes_off demolished cleaned_his_plate
        cleaned_her_plate cleaned_the_plate cleaned_his_bowl cleaned_her_bowl cleaned_the_bowl
        cleans_his clean_plate empty_bowl bowl_empty empty_plate licked_the_bowl licked_his_bowl
        licked_her_bowl licked_the_plate licked_clean every_scrap every_crumb every_bite
        ate_everything ate_it_all ate_the_lot ate_all eats_everything finished_his finished_her
        finished_breakfast finished_dinner finished_it_all ravenous hungry starving hambriento
        hambrienta hambre tragon tragona se_lo_acabo se_la_acabo se_acabo_todo se_acabo_su
        se_comio_todo dejo_limpio plato_limpio limpio_el_plato plato_vacio scarfed scarfs
        scarfing chowed chowing wiped_the_bowl troughing tucked_in tucks_in tucking_into
        eating_like eats_like second_helpings seconds_please pidio_mas pide_mas queria_mas
        quiere_mas asked_for_more wants_more wanted_more begging_for good_appetite
        great_appetite appetite_good buen_apetito hearty_appetite plates_are_empty comelon
        comelona atasco traga tragando zampo hoovered_up back_for_more lo_dejo_limpio
        no_dejo_nada ate_up eats_up repitio comio_todo come_todo lamio_el_plato lamio_su_plato
        vacuumed vacuumed_up tucked_into tucks_into horsed_down necked_it woofed woofs
        woofed_down munched_through sees_off saw_off_his saw_off_her arraso
        """,
    "appetiteword": "appetite apetito hambre hunger appetit eating eat",
    "partly": """
        half little bit some less few couple barely quarter third part mouthful mouthfuls bites
        bite picking nibble nibbled nibbles nibbling poco poquito poquita menos mitad cachito
        casi_nada bocado bocados tantito cuarto algo probadita
        """,
    "offfood": """
        off_his_food off_her_food off_food off_his_grub off_her_grub off_his_feed off_the_food
        anorexic anorexia inappetent inappetant inappetence fasting hunger_strike inapetente
        anorexico anorexica ayunas huelga_de_hambre sin_apetito no_appetite lost_his_appetite
        lost_her_appetite hyporexic_none
        """,
    "treatword": """
        treat treats chicken tuna cheese sausage steak ham boiled hand_fed favourite favorite
        anything
        """,
    "noteat": """
        half bit little some less taken_away no not didnt hasnt havent wont seen
        """,
    "wrongword": """
        wrong different new else special unusual comes coming came happened malo raro nuevo
        major
        """,
    "leftword": "left leave leaving dejo",
}

RULES = {
    "appetite": """
    = normal
    tucked|tucking|tucks ~ into|in
    recupero|recuperado|regreso|volvio|tiene|trae ~2 apetito|hambre -<neg>
    come|comio|comiendo|cena|ceno ~2 con_ganas|con_gusto|gustoso|gustosa|rico
    pide|pidio|pidiendo ~ mas|comida -agua
    appetite|apetito ~ is|through|back|a ~2 roof|vengeance|tope|full|cien
    back ~ on ~ his|her ~ food|grub|meals|feed|dinners
    back ~ to ~ eating ~ <good>|properly|everything
    no complaints|problems|issues|worries ~ in|with|on ~ the? food|eating|appetite|meal|feeding
    food|eating|appetite department|wise|front ~ <good>|no
    inhaled|hoovered|vacuumed|destroyed|annihilated|smashed ~3 <food>|everything
    arraso|acabo|termino|barrio ~ con ~ todo|toda
    lamio|licked|limpio ~ el|the|su|his|her? plato|plate|bowl|dish
    looked|looking|mirando|pidio ~3 for|por|mas? more|mas
    polished|scoffed|demolished|hoovered|wolfed|necked|troughed ~2 off|up|down? ~3 <food>|lot
    cleared|licked|cleaned|emptied|scraped|emptying ~2 plate|bowl|trough|dish|traste|cazo
    tearing|tore|tears|steaming|ploughing|plowing ~ through ~3 <food>|breakfasts|teas|dinners
    se la|las|lo|los acaba|acabo|come|comio|termina|termino|traga|acabaron ~2 toda|todas|todo|todos -<meds>
    apetito|appetite ~ de|of|like ~2 camionero|leon|caballo|lion|horse|wolf|lobo|trucker
    cenando|comiendo|desayunando ~ como ~ reina|rey|reyes|siempre|loco|campeon|nina
    <eat> -<meds> -grass -pasto
    <devour> -<meds> -<coneword> -<bandageword>
    licked|licking|licks ~2 lips|chops ~~ after|for ~3 <food>
    <eat> ~3 <good>
    <eat> ~4 all|everything|todo|todito|toda|lot|entire|whole|completo|entero|every|full
    <eat> ~ like a|un|una|si
    <eat> as usual|normal|always|though
    appetite|apetito|hunger ~2 <good>|back|returned|excellent|normal|regreso|volvio
    <good>|back|normal|excellent|healthy ~ appetite|apetito
    had|has|finished|cleared|cleaned|took|got ~3 breakfast|dinner|supper|tea|lunch|meal|tea|
        kibble|food|desayuno|cena -<noteat>
    finished|acabo|termino ~3 <food>
    tiene ~ hambre|apetito
    never|nunca not hungry
    hungry again|now
    starving|ravenous|hungry
    interested in|back food|eating
    loves|loving|enjoying|enjoyed|enjoys ~2 <food>
    todo|toda ~2 <food> -<neg>
    cleared|clears|cleaned|cleans|polished|finished|emptied|licked ~4 plate|bowl|dish|lot|
        dinner|supper|breakfast|tea|kibble|everything
    morfo|morfa|lastro|manduco ~ todo|bien|plato?
    hand|hands fed? eating
    a pedir|pidiendo comida
    food|comida|breakfast|dinner|desayuno ~ yes|si|fine|good|bien|gone|thumbsup
    <good> ~ eater|comelon
    = normal fixed
    no dejo|deja nada|ni|migaja
    didnt|never leave|left ~ a? crumb|scrap|anything|bite
    <neg> ~ leave|left|leaving ~ crumb|scrap|bite
    <neg> ~ problem|trouble|issues|problems|issue|problema|problemas ~ eating|with|comer|
        comiendo|para ~ food|comer?
    <neg> lost ~2 appetite
    = normal @appetite
    all|everything|todo|todito|lot|whole|completo|entero|every -<neg> -<eat> -<spat>
    bowl|plate|plato|dish ~ empty|clean|licked|limpio|vacio
    <clock> like ~ champion|horse|pig|king
    gone|finished|cleared
    hungry|hambre
    = less
    only ~ eating|eats|eat ~ if|when|from
    solo|nomas ~ come ~ si|cuando|de
    picotea|picoteo|pica|pico|probo|prueba|mordisquea ~ tantito|poquito|algo|nomas|dos|un|y
    comio|come ~ solo|nomas|puro|pura ~3 <food> ~~ dejo|deja
    licks|licked|lame|lamio ~ the|his|her|la? spoon|cuchara|gravy|jelly|juice|sauce|caldo ~~ thats|only|ya|nothing|lot|nomas
    only|just|solo|nomas ~ licks|licked|lame|lamio ~ the|his|her|la? spoon|cuchara|gravy|jelly|juice|sauce|caldo
    <neg> ~2 clearing|clear|clears|finishing|finishes|emptying|cleaning|acabando ~2 <food>|plate|bowl|plato
    ate|eaten|comio ~ his|her|su? breakfast|desayuno ~~ left|dejo|skipped|not ~ his|her|la? dinner|tea|supper|lunch|cena
    leaving|leaves|dejando ~2 bits|some|half|most|algo
    <eat> ~~ only|solo|solamente ~2 if|when|si|cuando|from ~ i|we|hand|fed|le|my
    had|took|ate|has|dio|comio ~2 lick|licks|nibble|nibbles|mouthful|mouthfuls|taste|few|lenguetazos|lengueteada|bocados|mordidas|probaditas|probadas ~2 of|de|a|al|<food> -my -mi -our
    left|leaves|leaving|dejo ~ the|his|her|la|el|las? <food> -<meds>
    pecking|picking|picked|picks|pecked|pecks ~ at ~ it|food|his|her
    no ~ quiere|quiso|queria ~ mas|seguir -<meds>
    didnt|doesnt|not|wouldnt ~ want|wanted ~ any ~ more -<meds>
    managed|ate|eaten|had|eats ~2 third|quarter|half|fraction ~ of ~ it|that|his|her
    then|luego lost|perdio|loses interest|interes
    <neg> ~2 quiere|quiso mas
    <eat> ~4 <partly>
    <partly>|poco ~4 <eat>
    <partly> ~3 <food> -<water>
    quarter|third|half|fraction|corner ~ of ~2 bowl|plate|portion|ration|meal|breakfast|dinner|<food>
    hand_feed|hand_feeding|hand_fed|handfeed|spoon_feed|spoon_feeding|coax|coaxed
    <food> ~3 half|partly|poco|mitad
    <eat> ~2 <neg> ~ <good>|great|well|much|mucho|bien
    <eat> ~ <number> percent|%|pct
    <eat> ~3 50%|40%|30%|25%|60%|75%
    <eat> ~ slowly|less|poorly|menos|poco|mal|lento
    <neg> ~2 <eat> ~4 much|well|lot|mucho|bien|tanto|enough|suficiente|properly|normally|all|
        everything|todo|usual|finish|completo
    <neg> ~2 finish|finished|acabo|termino|acaba|termina|finishing ~4 <food>|todo|it|eating
    <neg> ~ that|as|so|too|very|much|really hungry|interested
    not ~ fussed|bothered|keen|mad ~ about|on ~3 <food>
    <neg> ~2 much|mucho|muchas|mucha appetite|apetito|hambre|ganas
    less|poor|reduced|smaller|low|decreased|diminished|down|poco|menos|menor|reducido|bajo|
        picky|lacking|hyporexia|hyporexic|bad ~2 appetite|apetito|hambre
    appetite|apetito|hambre ~3 less|down|poor|reduced|low|decreased|bajo|menos|poco|off|
        smaller|diminished|bad|not_great|disminuido|so-so|so_so|meh|iffy|dropped
    picking|picks|picked ~2 at|food|it|bowl|his|her -up -<legword>
    turns|turned ~ nose up
    fussier|pickier|fussy|picky|finicky|choosy|melindrosa|melindroso|especial -<neg>
    left|leaves|leaving|dejo|deja ~3 half|most|some|bit|lot|mitad|resto|food|bowl|breakfast|
        dinner|comida|croquetas
    <barely> ~3 <eat>
    <barely> ~ touched|touches|touching|toco|probo|prueba|mordio
    <eat> ~2 <barely> ~ half|quarter|anything|nada?
    off ~ his|her ~ food a|bit|little
    only|just|solo|solamente|nomas ~3 <eat> ~3 treats|chicken|bit|little|pollo|some|premios|poco
    <eat> ~ only|just|solo|solamente|nomas|nada_mas
    nibbled|nibbles|nibbling|mordisqueo|probadita|lamio ~3 <food>|chicken|a|some -plato -plate -bowl -dish -clean
    comio|come|comiendo menos|poco|poquito|mal|a_medias|la_mitad
    medio comio|come|ha
    half|mitad ~ his|her|the|of|de ~2 <food>
    <eat> ~4 not|no|skipped|but_not ~ dinner|breakfast|lunch|supper|cena|desayuno|tea
    coaxing|coax|hand|tempt|tempted|persuading|rogandole|rogarle ~3 eat|feed|fed|feeding|him|
        her|comer
    <neg> ~ his|her|as usual|normal|full appetite|self_eating
    se come|comio la|media mitad|porcion
    no ~ come|comio|comiendo|ha_comido ~2 igual|tanto|como
    with ~ coaxing|persuasion
    treats|treat|snacks|premios|chicken ~~ not|no|pero_no ~3 food|kibble|dinner|breakfast|
        comida|croquetas|meals
    leaves|left|leaving|deja|dejo ~ rest|lot|resto
    skipped|missed|skip|salto ~2 breakfast|dinner|lunch|meal|desayuno|cena|comida
    only|just|solo|solamente|nomas|puro ~4 <treatword>|pollo|jamon|salchicha|premios ~~ <neg>|turns|turned|refuses|leaves|walks|deja|rechaza ~4 <food>
    = less @appetite
    <neg> ~2 bothered|fussed|keen|impressed
    third|thirds|quarters|tercios|cuartos
    lick|licks|lenguetazos
    <partly> -<meds> -<water> -<eat>
    third|quarter|half|cuarto|tercio|mitad ~ of ~ it
    not ~2 fussed|bothered|keen|mad|pushed
    casi nada
    almost|hardly|barely nothing|anything|any
    ^ only|just|solo|nomas|puro ~ <food>|treats -<eat>
    half|little|some|quarter|bit|less|few|mouthful|mouthfuls|bites|nibble|nibbled|nibbles|
        poco|poquito|menos|mitad|bocados|algo|tantito|picking|so_so|meh|mas_o_menos|masomenos|
        regular|partly|barely|apenas|third|bocaditos -<water> -<eat>
    <neg> ~ much|mucho|lot|all|todo|everything|great|whole|really
    = none
    living|lives|existing ~ on ~ fresh|thin? air
    <neg> ~3 morsel|mouthful|crumb|bite|nibble -<leftword> -<leavingword>
    looks|looked|looking|stares|mira ~ at|la|lo ~ it|food|<food>|comida|plato ~~ poison|mad|veneno|nothing|walks
    cant|couldnt|cannot|no ~2 get|tempt|puedo|logro ~ a ~ thing|bite|mouthful|crumb|anything ~ into|in|past ~ him|her
    even|ni ~4 <food> ~2 doesnt|wont|didnt|no ~ tempt|interest|tienta|antoja
    no matter|importa what|que ~2 cook|offer|give|cocine|ofrezca ~3 wont|doesnt|no
    starve|starving ~ rather
    breakfast|lunch|dinner|tea|supper|desayuno|comida|cena ~~ in|to|a ~ the|la ~ bin|basura|trash
    no ~ le ~ interesa|llama|apetece|antoja|provoca ~3 comida|comer|plato|<food>|nada
    desprecia|desaira|rechaza ~ todo
    todo ~3 desprecia|desaira|rechaza|deja
    plato|bowl|dish|tazon ~2 igualito|igual|intacto|lleno|as_was|untouched -agua
    comidas|meals ~3 sin|without|un ~ tocarlas|tocar|touching|touched|left|eaten
    sin|without tocarlas|tocarla
    meal|comida|meals ~4 in ~ a? row ~3 left|dejado|refused|missed
    cero|zero|nada_de|no ~ ganas|hambre|apetito ~2 comer|food?
    sin ~ ganas ~ de ~ comer
    <neg>|havent|hasnt ~3 much ~ as ~ looked|sniffed ~ at ~2 <food>|dish
    <neg> ~3 much ~ as ~2 looked|sniffed|glanced|touched ~4 <food>
    clamps|clamped|shuts|grits|cierra|aprieta ~2 teeth|mouth|jaws|hocico|boca|dientes ~~ offer|food|feed|try|comida|comer|cuchara -<meds>
    no|ni ~ le ~ pasa|paso|pasan ~ bocado|nada|comida
    no ~ come ~ ni
    voltea|volteo|hace ~ la? cara ~ al|a ~ la? plato|comida|<food>
    ni ~ el|la|los|las <food> ~ que
    turned|turns ~ up ~ his|her nose
    ni con ~ jeringa|cuchara|mano|pollo|carne|premio ~3 come|entra|quiere|comida|acepta|abre
    <food> ~~ ni asi
    no|ni ~2 entra|entro ~ nada|comida|bocado|la -<air>
    hice|prepare|compre|cocine|made|cooked|bought ~4 <food> ~~ ni|no|nada|nothing|wont|refused|turned
    turns|turned|turning|voltea|volteo|gira ~ his|her|la head|face|cabeza|cara ~3 away|every|cada|time|to|from|when|cuando -<meds> -<coneword>
    hunger strike
    huelga de hambre
    <neg> ~3 passed ~ lips
    <food> ~~ hasnt|not|no|never been? ~ touched|tocado|moved -<drinkwater>
    cant|couldnt|wont ~2 get|tempt|interest ~ him|her ~ to|with|in ~3 <food>|eat
    no_interest|interest ~ in ~2 <food>|eating|meals
    hace|hizo|haciendo ~ el? feo|fuchi|gacho|gestos ~3 todo|comida|<food>
    acerco|acercamos|ofrezco|sirvo|acerque|ofreci|servi|puse|pongo|ponemos ~3 <food> ~~ nada|voltea|ni|no|huele|va
    <neg> ~3 <eat>
    <neg> ~2 <eat> ~3 anything|nada|thing|bite|bocado|nothing|all|single
    <eat> ~3 <zero>
    <neg> ~2 touch|touched|touching|toca|tocado|toco|tocar|look|looked|sniff|olio|probo|
        probado|prueba|probar|pela ~4 <food>
    <neg> ~2 fancy|fancies|fancied|fancying ~4 <food>|eat|eating
    <neg> ~2 want|wants|wanted|interested|interest|quiere|quiso|querido|quiera|acepta|acepto|
        take|taking|taken|had|accept|try ~4 <food>|eat|comer|eating|desayunar|cenar
    <neg> ~2 want|wanted|quiere|quiso|interested ~2 ni
    refuses|refused|refusing|rejects|rejected|rechaza|rechazo|rehusa|nego|niega ~4 <food>|eat|
        comer|everything|comida|dry|wet
    <neg> ~ appetite|apetito|hambre
    <neg> ~2 tiene|tenido|have|has|had ~2 appetite|apetito|hambre|ganas_de_comer
    <offfood> -<slight> -<rather>
    lost ~3 appetite
    perdio|perdido|quito|fue ~2 apetito|hambre
    appetite|apetito ~ gone|zero|none|nil|nulo|nada|non_existent|cero|zilch
    sniffs|sniffed|smells|olfatea|huele|olio ~~ walks|walked|turns|leaves|wanders|voltea|va|
        deja|away|off
    untouched ~2 <food>
    walks|walked|turns|turned away from ~2 <food>
    not|hasnt|havent|no a|one|ni single? bite|scrap|morsel|crumb|thing|un|bocado|mouthful|kibble -<leftword> -<strain> -<poo> -<pee>
    sin comer|probar|probado|apetito|desayunar|cenar
    wont|doesnt|didnt|not ~ even ~3 <treatword>
    food|comida|breakfast|dinner ~ no $
    fed|feeding not working
    lleva ~4 sin comer
    stopped|quit|dejo|paro ~ eating|de? comer
    dejo de comer
    nothing|nada ~3 to|de eat|comer|comida
    eaten|eats|ate|come|comio nothing|nada|zero|ni
    nothing|nada ~2 going|gone|goes in|down -<meds> -<wound>
    no le entra|pasa nada
    still|remains|sigue|todavia|aun ~4 full|lleno|llenos +bowl|plate|plato|dish|tazon|platito -<drinkwater>
    bowl|plate|plato|dish|platito|tazon ~3 full|lleno|llenos ~ since|from|desde|still -<drinkwater>
    so_much_as ~2 sniff|look|lick|touch|taste|nibble|eat|try +<neg> -<drinkwater> -<legword>
    desprecia|desprecio|desaira|ignora|ignoro|ignores|ignored|snubbed|snubs|spurns|spurned ~4 <food>|todo|everything
    nothing|nowt doing|tempts|appeals +<food>
    nothing|nada ~2 tempts|tempt|appeals|interests|apetece|antoja
    nothing|nada le|him|her ~ apetece|antoja|gusta|provoca
    nothing|not|nada|no ~2 luck|exito|suerte +<food>
    nothing|not|nada|no|cant ~3 tempt|tentar|antojar ~ him|her|lo|la
    nothing|nada|not|hasnt ~4 passed|crossed ~2 lips|mouth|muzzle
    le|les da|dan asco|nauseas ~3 todo|toda|<food>|comer
    ni ~ <patient>|lo|la ~ voltea|volteo|mira|miro|pela|pelo|huele|olio|toca|toco|prueba|probo ~4 <food>
    turned|turns|turning ~2 nose up at ~2 everything|all|anything
    nose up at everything
    clean|right|completely|totally off ~ his|her|their? food|grub|feed|dinner
    = none @appetite
    nothing|no doing|luck|interest|takers
    ni ~ <patient>|lo|la ~ voltea|volteo|mira|miro|pela|pelo|huele|olio|toca|toco
    ^ today|hoy|ayer|tonight|yesterday ~ nothing|nada $
    ni|no|not|didnt ~ la|lo|las|it probo|toco|olio|touch|look|sniff
    ni probo|toco|olio
    ni ~ la|lo probo|toco|olio
    ^ nothing|nada|none|zero|zilch|nil -<wrongword>
    refuses|refused|refusing
    <neg> ~ hungry|interested|interest|touched|touch|want|quiere|quiso|hambre|ganas
    not|hasnt|no a|one|ni single|bite|bit|un|bocado
    = none !@dose
    tried|trying|probado|offered|ofrecido ~6 <food> ~~ turns|turned|walks|walked|refuses|refused|sniffs|wont|voltea|rechaza|ignora
    ni ~ agua|comida|pollo|pollito|atun|croquetas|salchicha|jamon|premios|carne|carnita|bistec|sobre|salmon|higado|churu|caldo
    de comer ni
    = less trend:worse
    <eat> ~ less and less
    cada_vez ~ menos
    """,
}

NEGATED = {
    "appetite": {
        "normal": "none",
        "less": None,
        "none": "normal",
    },
}

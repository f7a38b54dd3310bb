"""Appetite: what and how much was eaten."""

from __future__ import annotations

CLASSES = {
    "neg_food": """
        out_of delivered shop shopping bring run_out
        """,
    "bingeword": """
        pig hog hoover dustbin bin vacuum piranha horse gannet vulture
        """,
    "meaty": """
        roast beef steak mince bacon lamb turkey fish salmon sardines sardine prawns prawn liver burger
        frankfurter frankfurters sausages sausage pate broth egg eggs yoghurt peanut_butter ice_cream
        bistec carne molida carnita higado sardina huevo huevito jamon salchichas queso barbacoa chorizo
        milanesa asado pavo caldito premios chuches golosinas pescado carnaza filete
        """,
    "foodie": """
        foodie gannet glutton gluttonous greedy greedyguts gutsy piggy chowhound tragon tragona gloton
        glotona comelon comelona tragaldabas bottomless_pit barril_sin_fondo pozo_sin_fondo buen_diente
        good_doer gutbucket
        """,
    "mouthfulword": """
        bite bites mouthful mouthfuls spoonful spoonfuls teaspoon teaspoons teaspoonful tablespoon
        tablespoons tbsp tsp biscuit biscuits kibble kibbles pieces crunchies licks lick nibbles bits
        cucharada cucharadas cucharadita cucharaditas croqueta croquetas croquetitas granito granitos
        bocado bocados bocadito bocaditos mordida mordidas mordiditas probadita probaditas lamida
        lamidas lametazos lengüetazos lenguetazos trocitos pedacitos cachitos lambidas chunks
        """,
    "serving": """
        ration rations racion raciones plateful bowlful bowlfuls helping helpings serving servings tin
        tins pouch pouches sachet sachets scoop scoops lata latas tupper porcion porciones tinful
        """,
    "leavingword": "leave leaves leaving left dejo deja wastes",
    "offverb": "polished finished wolfed scoffed knocked bolted horsed saw wiped took",
    "eat": """
        eat eats eating ate eaten eatin eated feeding feeds fed come comio comiendo comido comer
        comia morfa morfo morfar morfando lastro lastra comen comimos coma cena ceno desayuno
        almorzo cenado desayunado desayunando cenando almorzando jama papeo jamando munching
        munches munched dined nibbles
        """,
    "devour": """
        demolish devour wolf_down hoover scoff polish_off finish_his appetite_maintained appetite_preserved devoured devours devouring devoro devora
        devorando wolfed wolfs wolfing gobbled gobbles gobbling scoffed scoffs scoffing inhaled
        inhales hoovered hoovers hoovering polished_off polishing_off polishes_off demolished
        cleaned_his_plate cleaned_her_plate cleaned_the_plate cleaned_his_bowl cleaned_her_bowl
        cleaned_the_bowl cleans_his clean_plate empty_bowl bowl_empty empty_plate
        licked_the_bowl licked_his_bowl licked_her_bowl licked_the_plate licked_clean
        every_scrap every_crumb every_bite ate_everything ate_it_all ate_the_lot ate_all
        eats_everything finished_his finished_her finished_breakfast finished_dinner
        finished_it_all ravenous hungry starving hambriento hambrienta hambre tragon tragona
        se_lo_acabo se_la_acabo se_acabo_todo se_acabo_su se_comio_todo dejo_limpio plato_limpio
        limpio_el_plato plato_vacio scarfed scarfs scarfing chowed chowing wiped_the_bowl
        troughing tucked_in tucks_in tucking_into eating_like eats_like second_helpings
        seconds_please pidio_mas pide_mas queria_mas quiere_mas asked_for_more wants_more
        wanted_more begging_for good_appetite great_appetite appetite_good buen_apetito
        hearty_appetite plates_are_empty comelon comelona atasco traga tragando zampo
        hoovered_up back_for_more lo_dejo_limpio no_dejo_nada ate_up eats_up repitio comio_todo
        come_todo lamio_el_plato lamio_su_plato
        vacuumed vacuumed_up tucked_into tucks_into horsed_down necked_it woofed woofs woofed_down
        munched_through sees_off saw_off_his saw_off_her
        arraso
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
    "noteat": "half bit little some less taken_away no not didnt hasnt havent wont seen",
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
    like|como ~ no ~ tomorrow -<drinkwater>
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
    bowl|plate|plato|food|comida ~2 empty|vacio|clean|limpio|gone|finished|all_gone -<drinkwater>
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
    all|everything|todo|todito|lot|whole|completo|entero|every -<neg> -<eat>
    bowl|plate|plato|dish ~ empty|clean|licked|limpio|vacio
    <clock> like ~ champion|horse|pig|king
    gone|finished|cleared
    hungry|hambre
    como siempre|antes|normal|loco -<neg>
    same|usual|as ~ as ~ ever|always|usual|before|normal -<neg>
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
    less|menos ~ than|de|que usual|normal|siempre|before|lo|antes +<eat>|<food>|appetite|apetito -<drink> -<drinkwater> -<limpword> -<swell> -<walkword>
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
    gone|right|totally|completely|hes|shes|is|still|been off ~ everything|all|food|eating
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
    bowl|plate|plato|dish|food|dinner|breakfast|comida|croquetas ~~ exactly|just|still|sigue|esta ~2 as|como|igual|where|how ~ i|lo|la|le left|put|deje|servi|puse -<drinkwater>
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
    <offfood>
    lost ~3 appetite
    perdio|perdido|quito|fue ~2 apetito|hambre
    appetite|apetito ~ gone|zero|none|nil|nulo|nada|non_existent|cero|zilch
    turned|turns ~ nose|away|head|down ~2 at|from|everything|food -<drinkwater>
    sniffs|sniffed|smells|olfatea|huele|olio ~~ walks|walked|turns|leaves|wanders|voltea|va|
        deja|away|off
    <food> ~3 untouched|intacto|intacta|not_touched|intactas|igual -<drinkwater> -bien -<good>
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
    wont|doesnt|didnt|wouldnt ~ even take|eat|touch|look|try|sniff|smell|entertain|taste -<meds> -<drinkwater> -step -steps -round -up -me -around -back
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
    off ~ his|her|their|the ~ food|grub|dinner|breakfast|tea|meals|feed|biscuits|kibble|supper|meat|nosh|scran|tucker|chow|treats|chicken|snacks -<partly> -<slight> -<offverb>
    clean|right|completely|totally off ~ his|her|their? food|grub|feed|dinner
    = none @appetite
    nothing|no doing|luck|interest|takers
    ni ~ <patient>|lo|la ~ voltea|volteo|mira|miro|pela|pelo|huele|olio|toca|toco
    ^ today|hoy|ayer|tonight|yesterday ~ nothing|nada $
    ni|no|not|didnt ~ la|lo|las|it probo|toco|olio|touch|look|sniff
    ni probo|toco|olio
    ni ~ la|lo probo|toco|olio
    = none !@dose
    tried|trying|probado|offered|ofrecido ~6 <food> ~~ turns|turned|walks|walked|refuses|refused|sniffs|wont|voltea|rechaza|ignora
    offered|ofreci|ofrecimos|ofrecio|ofrecido|ofrecemos|tried|trying|probamos|intente ~4 <food>|everything|todo ~~ nothing|nada|none|no|wont|refused|turns|turned|ignores|walks|rechaza|voltea
    ni ~ agua|comida|pollo|pollito|atun|croquetas|salchicha|jamon|premios|carne|carnita|bistec|sobre|salmon|higado|churu|caldo
    de comer ni
    = none @appetite
    ^ nothing|nada|none|zero|zilch|nil -<wrongword>
    refuses|refused|refusing
    <neg> ~ hungry|interested|interest|touched|touch|want|quiere|quiso|hambre|ganas
    not|hasnt|no a|one|ni single|bite|bit|un|bocado
    = less !@asked-dose !@dose
    <neg> ~2 <devour>|hoovering|wolfing|scoffing|inhaling|gobbling|hoover|wolf|inhale|gobble it? up|off|down? like|as? -hungry -hambre
    = less trend:worse
    <eat> ~ less and less
    cada_vez ~ menos
    = normal
    polish|polishes|polished|polishing|scoff|scoffs|scoffed|scoffing|hoover|hoovers|hoovered|hoovering|wolf|wolfs|wolfed|wolfing|demolish|demolishes|demolished|demolishing|vacuum|vacuums|vacuumed|vacuuming|inhale|inhales|inhaled|inhaling|snaffle|snaffles|snaffled|snaffling|finish|finishes|finished|finishing|gobble|gobbles|gobbled|gobbling ~2 it|that|lot|everything|all ~ off|up|down -<meds>
    had|got|ate|eaten|took|takes|eating ~2 full|whole|entire|normal|usual|complete ~3 <serving>|<food> -<neg>
    straight ~ to ~ his|her|the bowl|dish|plate|food|dinner|breakfast -<neg>
    demanding|begging|asking|shouting|meowing|nagging|pestering|hassling|yelling ~2 for ~ his|her|more|the|some? <food> ~ as|like|again|already|always|now? -<neg>
    <eat> just ~ fine|normal|normally|as|like|great|well|lovely|grand|perfectly|okay|ok
    <foodie> -<neg> -<coneword>
    plate|bowl|dish|plato|tazon|traste ~2 spotless|gleaming|shining|sparkling|bare|reluciente|brillando|limpiecito|rechinando
    dejo|deja|left|leaves ~ el|la|the|his|her? plato|tazon|bowl|plate|dish ~2 limpio|limpisimo|reluciente|vacio|brillando|limpiecito|spotless|clean|empty|bare|gleaming
    bajo|jamo|despacho|chuto|aviento|atasco|echo|bajó|mando ~2 plato|platote|comida|croquetas|racion|cena|desayuno|almuerzo -<neg> -<meds>
    le ~ entro|entra|hinco|da|dio ~ con ~ ganas|todo|gusto|fe|furia -<neg>
    le ~ hinco ~ el diente
    apetito|hambre ~ lo|la? ~ tiene ~ intacto|intacta|bien|normal|perfecto|como
    apetito|hambre ~2 intacto|perfecto|excelente|buenisimo|de_siempre|feroz|voraz|envidiable|tremendo|brutal|enorme
    barrio|arraso|acabo|termino ~ con ~ el|la|las|los|su|sus? <food> -<meds>
    vuela|volo|volaron|desaparecio|desaparecieron ~2 comida|croquetas|cena|plato|desayuno
    <food> ~2 volo|volaron|desaparecio|vanished|disappeared ~ in|en|seconds|minutes|segundos|al?
    le ~ dio|da|puso ~ fin|mate|baje|vuelta ~ a|al ~2 <food>
    hasta|even ~ lo ~ del ~ gato|perro|otro|hermano
    = normal fixed
    <neg> ~ touched|touch ~ the? sides
    nothing|nowt|nada ~2 wrong|amiss|malo ~ with|about|con|en ~2 appetite|eating|apetito|comida
    appetite|eating|apetito ~2 <neg> ~2 changed|dropped|suffered|altered|faltered|disminuido|cambiado|bajado
    no ~ le ~ falla|falta|fallo ~ el|la? apetito|hambre|diente
    no ~ perdona|perdono ~ ni? ~2 comida|plato|croqueta|una|nada
    no ~ hay ~ quien ~ lo|la ~ llene|pare
    nunca|jamas ~ le ~ hace|hizo ~ el? ~ feo|asco
    = normal @appetite
    every|last|todito|toditita ~ bit|scrap|morsel|crumb|kibble|biscuit|mouthful|drop|poquito -<neg>
    ^ 100|110|hundred|cien percent|pct?
    went|gone|goes ~ down ~ a? treat|well|nicely|great|fine|lovely|easy -<meds> -<neg>
    usual|always|still|such|total|proper|complete|being|like|little|back ~ a|an|the? <bingeword>
    <neg> ~ issue|issues|problem|problems|worries|complaints|concerns|trouble|dramas|fuss|quejas|broncas ~ there|here|at|por_ahi|ahi?
    se ~ lo|la|los|las ~ echo|bajo|jamo|chuto|mando|zampo|despacho|sampo -<neg>
    = normal fixed @appetite
    <neg> ~ issue|issues|problem|problems|worries|complaints|concerns|trouble|dramas ~ there|here|at
    = less
    <slight> ~ off ~ his|her|their|the? <food>
    only|just|solo|nomas|nada_mas ~ <eat> ~2 when|if|because|from|off|cuando|si|porque|de
    feed|fed|feeding|fed ~2 by|from|with|off ~ my|the|a? hand|spoon|fingers|finger|palm
    dar|darle|doy|di|dando|damos|dimos|come|comio ~3 en|de|con ~ la|mi? mano|boquita|cuchara|cucharita|dedo|dedos -<meds>
    only|just|solo|nomas|puro|pura ~2 take|takes|took|taking|eat|eats|have|had|want|wants|accept|accepts|quiere|quiso|acepta|acepto|agarra ~3 <treatword>|<food>|<meaty> -<meds> -<neg>
    solo|nomas|nada_mas|only ~ le ~ hace|hizo|entra|entro|gusta ~ caso|ojitos|ojo? ~ al|a|el|la <food>|<meaty>
    <food>|<meaty>|<mouthfulword> ~~ thats|that|ya|eso ~ it|was|all|nada_mas|es|fue|todo -<neg> -<devour>
    had|took|ate|managed|eaten|comio|quiso|acepto ~2 few|couple|some|unas|unos|pocas|pocos|cuantas|<number>|one|tres|dos ~ <mouthfulword> -<meds>
    <neg> ~2 diving|dive|rushing|tucking|digging ~ in|into|to
    bribe|bribes|bribed|bribing|persuade|persuades|persuaded|persuading|cajole|cajoled|cajoling ~2 him|her|with|to|into|needed? ~2 eat|<food>|<meaty>|treats
    had|have ~ to ~ be? ~ bribe|bribed|coax|coaxed|tempt|tempted|persuade|persuaded ~~ eat|<food>|<meaty>
    rogar|rogarle|rogue|rogando|insistir|insistirle|batalle|batallo|suplicar|apapachar ~~ coma|comiera|comer|come|comio
    grazing|grazed|grazes ~2 on|at|through|bits|all|food|rather
    come|comio|comiendo|comido|desayuno|ceno|cena ~2 a_regañadientes|a_reganadientes|sin_ganas|con_desgano|desganado|desganada|sin_gusto|sin_animo|de_mala_gana|a_fuerzas|a_la_fuerza|a_duras_penas|regular|regularcito -<neg> -<walkword>
    desganado|desganada ~~ come|comio|comida|plato|mitad|poco
    desayuno|ceno|cena|almorzo ~~ no ~ ceno|desayuno|cena|almorzo|comio
    no ~ con ~ el|las? ~ gusto|ganas|apetito|hambre|entusiasmo ~ de|que ~ siempre|antes
    no ~ tiene|trae|tenia ~ mucho|mucha|tanto|tanta|gran apetito|hambre|ganas
    no ~ come|comio|comido|comiendo|cena|ceno ~2 tanto|mucho|igual|completo|bien
    no ~ se ~ lo|la|las|los? acabo|acaba|termino|termina|acabó ~2 todo|toda|comida|plato|croquetas|cena|desayuno? -<meds>
    se ~ dejo|deja ~ casi ~ todo|toda|todas|entera|completo
    dejo|deja|left|leaves|leaving ~ casi|bastante|almost|nearly|mucho|good|fair|un ~ todo|toda|all|of|bit|en|poco|lot ~ it|comida|plato|el|bowl|<food>?
    = less @appetite
    ^ bit|little|slightly|tad|poquito|algo off|desganado|desganada|apagado|bajo|floja|flojo today|tonight|hoy? this|esta?
    <neg> ~ as|so|very|that|too|overly|particularly|super ~ keen|hungry|interested|enthusiastic|fussed|eager|bothered|into
    less|menos ~ keen|enthusiastic|interested|interest|entusiasmo|ganas|hungry|eager
    <number>|few|couple|one|un|una|unas|unos|cuantas|dos|tres|some|several ~ <mouthfulword> -<neg> -<meds> -<devour>
    taste|smidge|smidgen|tad|speck|sliver|pinch|probadita|pizca -<neg>
    <number> percent|por_ciento -100 -90 -95 -hundred -cien -110
    <eat> ~2 like|as? ~ a ~ wee|little? ~ bird|pajarito
    only|just|solo|nomas|puro|puros|puras ~ el|la|lo|las|los|the <food>|<meaty>|caldito|blandito|blando|humedo|wet|soft|gravy|mojadito
    picky|picotear|picoteo|picotea|picoteando
    hand|mano ~ feeding|fed|only|nomas
    = none
    even|ni|hasta|not ~3 <meaty> ~2 <neg>|doesnt|wont|didnt|quiere|quiso|tienta|pela|acepta|le|get|got
    even|ni ~ el|la|las|los|con|un|su|siquiera|sus ~ <meaty>
    <neg> ~ get|got|gets ~ a ~ look|sniff|glance|lookin
    no|ningun <food> ~ no|ni|nor|or|and|y ningun? ~ <food> -treats -<meds>
    had|has|ate|eaten|took ~ no ~ <food> -treats -treat -since_treats
    left|leave|leaves|leaving|dejo|deja ~ it|the|her|his|his_whole|su? all|lot|everything|whole|todo|toda|entero|entera|completo|completa|todito|intacto ~ of? it|<food>|plato? -<meds> -<bandageword> -<coneword>
    <three>|third|second|two|dos|another|every|tercera|segunda meal|meals|breakfast|dinner|comida|comidas ~~ ignored|refused|turned|missed|skipped|left|ignora|rechaza|deja|despreciado
    turned|turns|turning|turn ~2 down ~3 <food>|meals|everything|food
    turned|turns|turning|turn ~ <food>|it|everything|them|all|meals ~ down -<meds> -<coneword> -<wound>
    ignored|ignores|ignoring|snubbed|snubs|blanked|blanks|ignoro|desairo|desprecio|desprecia ~ his|her|the|all|su|la|el|every? <food>|meal|meals|everything|plato|comida
    everything|whatever|anything|todo ~ i|we|le|que ~ put|offer|give|try|doy|pongo|ofrezco|damos ~~ left|ignored|refused|untouched|rechaza|deja|desprecia|no|turned|nothing
    <food>|bowl|plate|plato|comida|croquetas ~ just|still|is|was|ahi|sigue|siguen|esta|been|has ~ just|still|is|ahi? ~ sitting|sat|lying|servido|servida|ahi|servidas|there -<drinkwater>
    no|cero|zero|nil|zip ~ apetito|appetite ~ whatsoever|at|alguno|para?
    no ~ prueba|probo|probado|prueban|probó ~ nada|bocado|alimento -<drinkwater>
    rechazo|rechaza|rechazado|desprecia|desprecio|dejo|ignoro ~ todo|toda|todito -<meds>
    no|ni|sin ~ hay|encuentro|existe ~ manera|forma|modo|poder ~ de ~ que ~ coma|pruebe|acepte
    ni|no ~ a ~ la fuerza|fuerzas|rastras
    <neg> ~2 entertain|entertained|entertaining ~3 <food>|it|any|anything|even
    ayuno|ayunando|ayunas -<neg> -antes -before -cirugia
    = none @appetite
    <neg> ~ even ~ sniff|smell|look|lick|touch|try|come|taste|glance|open
    <neg> ~ go|goes|gone|went|came|going|get|acerca|acerco|acercarse ~ near|close|al
    turn|turns|turned|turning|voltea|volteo ~2 away|round|around|cara|cabeza|head|back -<meds>
    <neg> ~ had|has|have|touched|eaten|took|taken ~ anything|nothing|any|thing|a_thing -<meds>
    get|got|getting ~ anything|nothing|food|thing|any|it|scrap ~ down|into|in|past ~ him|her +<neg> -<meds>
    just|only|solo|nomas|no_mas ~ look|looks|looked|looking|stare|stares|stared|staring|sniff|sniffs|sniffed|sniffing|mira|ve|huele|olfatea ~ at? ~ it|lo|la|y|food?
    ni ~ un|una|el|la ~ grano|croqueta|migaja|pedacito|bocado|gramo|lamida|mordida|probada|probadita|probadilla|pizca -dejo -deja -quedo
    ni se ~ acerco|acerca|asomo|asoma|arrimo|arrima|inmuto
    nadita|nadota|naa|nothin|nuttin|nowt
    ni ~ fu ~ ni? fa
    ^ ignored|ignores|ignoring ~ it|me|bowl|completely|totally?
    stub|stubs|stubbed ~ his|her ~ nose
    clamp|clamps|clamped|clamping|shut|shuts|grit|grits|gritted|aprieta|cierra ~2 mouth|jaw|jaws|teeth|dientes|boca|hocico
    servi|puse|sirvo|pongo ~ el|la|su ~ plato|comida|<food> ~~ volteo|voltea|fue|va|huele|ni|nada|dejo
    = normal
    appetite|eating|apetito|hunger ~2 <samey>
    se ~ lo|la|los|las ~ comio|comió todito|todita|todo|toda|enterito|enterita|completo -<meds>
    = normal fixed
    no ~ dejo|deja|quedo ~ ni ~ un|una ~ <food>|<mouthfulword>|<serving>|migaja|grano|granito
    = less
    grazing|grazes ~~ bits|through|day|dia
    puras|puros|pura ~ <mouthfulword>|probaditas|mordiditas
    turned|turns ~ his|her nose ~ up|at ~ <food> ~~ but|pero|though ~ ate|had|took|eaten ~ some|bit|little|half|the?
    = none
    <neg> ~ want|wants|wanted ~2 any|the|his|her|to? <food>|eat|eating at? all?
    <neg> ~ had a? bite|mouthful|morsel|crumb since|all|today|yet|of?
    = none !@dose
    clamp|clamps|clamped|clamping|shut|shuts|grit|grits|gritted|aprieta|cierra ~ his|her|its|la|el|su|los? ~ mouth|jaws|teeth|hocico|boca|dientes shut? ~~ food|feed|eat|spoon|<food>|comida|comer|cuchara|jeringa
    = none @appetite
    love|amor ~ nor|or|ni money|dinero
    = normal
    <eat> ~ every|last bit|scrap|crumb|mouthful|drop|morsel|biscuit
    vacio|vacia|vaciando ~ el|su ~ plato|tazon|traste -agua
    trago|comio|acabo|zampo|devoro ~ lo suyo
    full of ~ his|her|its <food>
    = less
    half|quarter|third|bit|little|some|couple ~ a|of|una? ~ <serving>
    = less @appetite
    less|menos ~ than|de|que usual|normal|siempre|before|lo|antes -<drink> -<drinkwater> -<limpword> -<swell> -<walkword> -bouncy -active -energy
    thats ~ his|her lot
    = none
    no_interest|interest|zero_interest ~ in ~ his|her|the|any? <food>|eating|meals
    2nd|3rd|second|third|segundo|tercer|<hours>|day|days|dia|dias ~ no|without|sin|with ~ no? <food>
    ni|no ~ bola|caso|pelota|bolilla ~ a|al|le|da ~ la|el? <food>
    = none @appetite
    ^ no|zero <food> -treats -left -since -problem
    = normal
    second|third|double|<number> helping|helpings|round|rounds -<neg>
    begging at|by|under ~ table|counter -<neg>
    nearly|practically|almost|about ~ took|takes|had|bit ~ my|our ~ hand|arm|fingers ~ off
    making up ~ for ~ lost time
    = normal fixed
    <neg>|ni|nary ~ a|one|single|un|una? ~ <mouthfulword>|kibble|crumb|scrap|morsel|speck|grain left|behind|remaining
    <neg> ~ get|eat|wolf|shovel ~ it|food|that ~ down|in ~ fast|quick|quickly enough
    no ~ quedo|dejo|queda ~ ni ~ rastro|olor|sombra|migajas|polvo|huella
    = less
    only|just ~ the ~ meaty|soft|wet|best|juicy|good|tasty bits|parts|stuff|pieces
    took|takes|taking ~ forever|ages|long|hours|while ~ to eat|finish ~ half|his|her|it|most?
    <mouthfulword>|nibbles|bites|pecks|bits here ~ and there
    only|just|solo|nomas|apenas|maybe ~ a|un|una|el? ~ handful|puñito|punado|puñado|cup|tablespoon|scoop|spoonful ~ of|de? ~ <food>|<mouthfulword>|<meaty>|it
    tercera|cuarta|quinta parte
    ni la mitad ~ se? <eat>?
    medio|media|half ~ plato|tazon|lata|sobre|racion|porcion|bowl|plate|tin|can|pouch|sachet|plateful|bowlful
    lame|lamio|licks|licked|lambe ~ el|the|his|su? ~ caldo|caldito|gravy|jelly|jugo|sauce|salsa|salsita|juices
    nada_mas|only|just|solo|nomas lame|lamio|licks|licked ~ el|la|the|his|su? ~ caldo|caldito|gravy|jelly|jugo|sauce|salsa|salsita
    cena|comida|desayuno|almuerzo|dinner|tea|supper|breakfast ~ la|lo|he|she dejo|deja|salto|left|skipped
    = none
    tempt|tempting|tempted|coaxing|coax|tried|trying ~4 <food>|<meaty>|him|her|everything ~~ no|zero ~ joy|luck|use|dice|success
    <neg>|ni ~ even ~ a|one? lick|sniff|bite|nibble|taste -ice|mouthful|crumb|morsel -<drinkwater> -<wound> -<meds> -ice -<coneword>
    nothing|nada ~ to|que do|ver ~ with|con ~2 <food>|eating|comida|comer
    no ~ querido|quiere|quiso|quizo ~ probar|comer|tocar|agarrar ~ nada|bocado
    no ~ quiere|quiso ~ saber ~ nada? ~ de|con ~2 <food>|comer
    = none @appetite
    no joy|luck|dice|go|takers|interest
    no ~ agarra|agarro|prueba|probo|toca|toco nada
    bury|buries|buried|covers|covered|entierra|tapa|burying ~ it|food|his|her|the|bowl|la
    <neg>|ni ~ even ~ a|one? lick|sniff|bite|nibble|taste
    = normal
    <number>|dos|two|three|tres|all ~ clean|empty|licked ~ bowls|plates|platos -<neg>
    old|normal|usual|greedy|hungry self ~ with|around|about|for ~ his|her? ~ food|eating|meals|dinner -<neg>
    <barely> ~ chewed|tasted|breathed|paused ~ it|his|for?
    dejo|deja ~ limpisimo|limpiecito|limpio|reluciente ~ el|su ~ plato|tazon|traste
    come|comio ~ como|cual ~ si ~ no ~ hubiera
    = less
    fraction|half|third|quarter|mitad|tercio ~ of|de ~ what|lo ~ que? ~ he|she|it|normally|usual|normal|come|comia?
    one|single|una ~ meal|comida ~ instead|not|rather|en_vez|en_lugar
    needs|needed|needing|lots|lot|took|takes|with|plenty|bit ~3 encouragement|coaxing|persuasion|convincing|bribery|encouraging
    no ~ anda|esta|trae|anduvo ~ con ~ mucha|tanta|mucho|tanto ~ hambre|apetito|ganas
    = less @appetite
    tiny|small|little|minimal|wee ~ amount|amounts|portion|portions|helping|quantity
    = none
    <neg> ~3 <eat> ~2 <allday>|<hours>|<yesterday>|<lastnight>|since|desde|surgery
    <neg> ~2 persuade|convince|get|make|coax|entice|tempt ~2 him|her|them ~ to? eat ~ a|any|anything|his|her?
    no|zero|sin|without ~ food|comida|meals|meal ~ in|for|since|today|all|desde|en|tonight -left -<neg_food>
    lo que ~ le? ~ pongo|sirvo|doy|ofrezco ~4 queda|deja|rechaza|intacto
    """,
    "idiom": """
    = void
    and then some
    after|before|when|while|tras|despues|antes ~ de? eating|comer|meals -<neg> -<strain>
    bill|bills|cost|it ate ~ into
    ate|eaten|eats|chewed|eating ~ his|her way|away
    eating|eats away at
    para|pa ~ que|q coma|coman
    desde|antes|despues|hora|durante|until|since|before|after ~ de? la|el|her|his|our ~ cena|comida|desayuno|almuerzo -<neg>
    nos|me comio|come ~ la|las|el prisa|tiempo|uñas|unas|cuento
    """,
}

NEGATED = {
    "appetite": {
        "normal": "none",
        "less": None,
        "none": "normal",
    },
}

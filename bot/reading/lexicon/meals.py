"""Appetite again: portions, bowls, coaxing, and the figures of speech of meals."""

from __future__ import annotations

CLASSES = {
    "neg_food": "out_of delivered shop shopping bring run_out",
    "bingeword": """
        pig hog hoover dustbin bin vacuum piranha horse gannet vulture
        """,
    "meaty": """
        roast beef steak mince bacon lamb turkey fish salmon sardines sardine prawns prawn liver
        burger frankfurter frankfurters sausages sausage pate broth egg eggs yoghurt
        peanut_butter ice_cream bistec carne molida carnita higado sardina huevo huevito jamon
        salchichas queso barbacoa chorizo milanesa asado pavo caldito premios chuches golosinas
        pescado carnaza filete
        """,
    "foodie": """
        foodie gannet glutton gluttonous greedy greedyguts gutsy piggy chowhound tragon tragona
        gloton glotona comelon comelona tragaldabas bottomless_pit barril_sin_fondo
        pozo_sin_fondo buen_diente good_doer gutbucket
        """,
    "mouthfulword": """
        bite bites mouthful mouthfuls spoonful spoonfuls teaspoon teaspoons teaspoonful
        tablespoon tablespoons tbsp tsp biscuit biscuits kibble kibbles pieces crunchies licks
        lick nibbles bits cucharada cucharadas cucharadita cucharaditas croqueta croquetas
        croquetitas granito granitos bocado bocados bocadito bocaditos mordida mordidas
        mordiditas probadita probaditas lamida lamidas lametazos lengüetazos lenguetazos
        trocitos pedacitos cachitos lambidas chunks
        """,
    "serving": """
        ration rations racion raciones plateful bowlful bowlfuls helping helpings serving
        servings tin tins pouch pouches sachet sachets scoop scoops lata latas tupper porcion
        porciones tinful
        """,
}

RULES = {
    "appetite": """
    = normal
    like|como ~ no ~ tomorrow -<drinkwater>
    bowl|plate|plato|food|comida ~2 empty|vacio|clean|limpio|gone|finished|all_gone -<drinkwater>
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
    appetite|eating|apetito|hunger ~2 <samey>
    se ~ lo|la|los|las ~ comio|comió todito|todita|todo|toda|enterito|enterita|completo -<meds>
    <eat> ~ every|last bit|scrap|crumb|mouthful|drop|morsel|biscuit
    vacio|vacia|vaciando ~ el|su ~ plato|tazon|traste -agua
    trago|comio|acabo|zampo|devoro ~ lo suyo
    full of ~ his|her|its <food>
    second|third|double|<number> helping|helpings|round|rounds -<neg>
    begging at|by|under ~ table|counter -<neg>
    nearly|practically|almost|about ~ took|takes|had|bit ~ my|our ~ hand|arm|fingers ~ off
    making up ~ for ~ lost time
    <number>|dos|two|three|tres|all ~ clean|empty|licked ~ bowls|plates|platos -<neg>
    old|normal|usual|greedy|hungry self ~ with|around|about|for ~ his|her? ~ food|eating|meals|dinner -<neg>
    <barely> ~ chewed|tasted|breathed|paused ~ it|his|for?
    dejo|deja ~ limpisimo|limpiecito|limpio|reluciente ~ el|su ~ plato|tazon|traste
    come|comio ~ como|cual ~ si ~ no ~ hubiera
    had|has ~ the|his|her|it|whole? ~ whole|entire|full? ~ bowl|plate|lot|dish|tin gone|finished|cleared|licked
    abrio ~ el apetito
    hasta|to|down ~ el|la|the ultimo|ultima|last ~ grano|croqueta|migaja|bocado|crumb|scrap|morsel -<neg>
    le ~ entro ~ duro|parejo|durisimo|sabroso ~ al|a ~ plato|comida|la?
    come|comio|comiendo|comer ~ ya? solo|sola|solito|solita $
    went|goes|going|gone ~ mad|crazy|nuts|wild|bonkers|loco|loca ~ for|over|por|con ~2 <food> -<neg>
    full ~ tummy|belly|stomach|barriga|panza -<neg>
    panza|barriga|pancita llena
    chupo|chupa|lamio|relamio|relame ~ los|sus|el|su ~ bigotes|bigote|dedos|labios|hocico -<wound>
    = normal fixed
    <neg> ~ touched|touch ~ the? sides
    nothing|nowt|nada ~2 wrong|amiss|malo ~ with|about|con|en ~2 appetite|eating|apetito|comida
    appetite|eating|apetito ~2 <neg> ~2 changed|dropped|suffered|altered|faltered|disminuido|cambiado|bajado
    no ~ le ~ falla|falta|fallo ~ el|la? apetito|hambre|diente
    no ~ perdona|perdono ~ ni? ~2 comida|plato|croqueta|una|nada
    no ~ hay ~ quien ~ lo|la ~ llene|pare
    nunca|jamas ~ le ~ hace|hizo ~ el? ~ feo|asco
    no ~ dejo|deja|quedo ~ ni ~ un|una ~ <food>|<mouthfulword>|<serving>|migaja|grano|granito
    <neg>|ni|nary ~ a|one|single|un|una? ~ <mouthfulword>|kibble|crumb|scrap|morsel|speck|grain left|behind|remaining
    <neg> ~ get|eat|wolf|shovel ~ it|food|that ~ down|in ~ fast|quick|quickly enough
    no ~ quedo|dejo|queda ~ ni ~ rastro|olor|sombra|migajas|polvo|huella
    no|sin|zero|without|any leftovers|leftover|sobras
    like|como ~ never|nunca ~ been? ~ fed|eaten|comido ~ before?
    = normal @appetite
    como siempre|antes|normal|loco -<neg>
    same|usual|as ~ as ~ ever|always|usual|before|normal -<neg>
    he|she ~ left nothing|nowt|none
    nothing|nowt|nada left|quedo
    not|nada bad|mal
    every|last|todito|toditita ~ bit|scrap|morsel|crumb|kibble|biscuit|mouthful|drop|poquito -<neg>
    ^ 100|110|hundred|cien percent|pct?
    went|gone|goes ~ down ~ a? treat|well|nicely|great|fine|lovely|easy -<meds> -<neg>
    usual|always|still|such|total|proper|complete|being|like|little|back ~ a|an|the? <bingeword>
    <neg> ~ issue|issues|problem|problems|worries|complaints|concerns|trouble|dramas|fuss|quejas|broncas ~ there|here|at|por_ahi|ahi?
    se ~ lo|la|los|las ~ echo|bajo|jamo|chuto|mando|zampo|despacho|sampo -<neg>
    = less
    less|menos ~ than|de|que usual|normal|siempre|before|lo|antes +<eat>|<food>|appetite|apetito -<drink> -<drinkwater> -<limpword> -<swell> -<walkword>
    <slight> ~ off ~ his|her|their|the? <food>
    <slight>|<rather>|poco ~2 <offfood>
    <offfood> ~2 <slight>|<rather>
    desganado|desganada ~ para|de|con ~ comer|comida -nada
    only|just|solo|nomas|nada_mas ~ <eat> ~2 when|if|because|from|off|cuando|si|porque|de
    feed|fed|feeding|fed ~2 by|from|with|off ~ my|the|a? hand|spoon|fingers|finger|palm
    dar|darle|doy|di|dando|damos|dimos|come|comio ~3 en|de|con ~ la|mi? mano|boquita|cuchara|cucharita|dedo|dedos -<meds>
    only|just|solo|nomas|puro|pura ~2 take|takes|took|taking|eat|eats|have|had|want|wants|accept|accepts|quiere|quiso|acepta|acepto|agarra ~3 <treatword>|<food>|<meaty> -<meds> -<neg>
    solo|nomas|nada_mas|only ~ le ~ hace|hizo|entra|entro|gusta ~ caso|ojitos|ojo? ~ al|a|el|la <food>|<meaty>
    <food>|<meaty>|<mouthfulword> ~~ thats_it|thats_all|thats_about|that_was_it|that_was_all|and_no_more|y_ya|eso_fue_todo|es_todo|nada_mas -<neg> -<devour>
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
    grazing|grazes ~~ bits|through|day|dia
    puras|puros|pura ~ <mouthfulword>|probaditas|mordiditas
    turned|turns ~ his|her nose ~ up|at ~ <food> ~~ but|pero|though ~ ate|had|took|eaten ~ some|bit|little|half|the?
    half|quarter|third|bit|little|some|couple ~ a|of|una? ~ <serving>
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
    fraction|half|third|quarter|mitad|tercio ~ of|de ~ what|lo ~ que? ~ he|she|it|normally|usual|normal|come|comia?
    one|single|una ~ meal|comida ~ instead|not|rather|en_vez|en_lugar
    needs|needed|needing|lots|lot|took|takes|with|plenty|bit ~3 encouragement|coaxing|persuasion|convincing|bribery|encouraging
    no ~ anda|esta|trae|anduvo ~ con ~ mucha|tanta|mucho|tanto ~ hambre|apetito|ganas
    takes|taking|take|took|eats|ate|had|has|does|managed ~ a? <number>|few|couple|odd ~ <mouthfulword>|mouthful|bite -<meds>
    half_hearted|halfhearted|half_heartedly ~~ <food>|mealtimes|eating|food|bowl
    <food>|mealtimes|eating ~~ half_hearted|halfhearted|half_heartedly
    apenas|only|barely|hardly|solo|just|nomas|nada_mas|maybe ~ <number>|un|una|par|few|couple|one|two|dos|tres ~ de|of? ~ <mouthfulword> -<meds> -<neg>
    comio|come|desayuno|ceno ~ una|solo_una parte|partecita|porcion
    casi ~ se? ~ lo|la|los|las? acaba|acabo|termina|termino -no -nada
    come|comio|comiendo ~ como ~ un? ~ pajarito|pajaro|canario
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
    less|menos ~ than|de|que usual|normal|siempre|before|lo|antes -<drink> -<drinkwater> -<limpword> -<swell> -<walkword> -bouncy -active -energy
    thats ~ his|her lot
    tiny|small|little|minimal|wee ~ amount|amounts|portion|portions|helping|quantity
    ^ only|just|solo|nomas|nada_mas|solamente if|when|cuando|si
    ^ a medias
    bits and bobs|pieces
    = none
    gone|right|totally|completely|hes|shes|is|still|been off ~ everything|all|food|eating
    bowl|plate|plato|dish|food|dinner|breakfast|comida|croquetas ~~ exactly|just|still|sigue|esta|quedo|quedaron|is|are ~2 as|como|igual|where|how ~ i|lo|la|le left|put|deje|servi|puse -<drinkwater>
    turned|turns ~ nose|away|head|down ~2 at|from|everything|food -<drinkwater>
    <food> ~3 untouched|intacto|intacta|not_touched|intactas|igual -<drinkwater> -bien -<good>
    wont|doesnt|didnt|wouldnt ~ even take|eat|touch|look|try|sniff|smell|entertain|taste -<meds> -<drinkwater> -step -steps -round -up -me -around -back
    off ~ his|her|their|the ~ food|grub|dinner|breakfast|tea|meals|feed|biscuits|kibble|supper|meat|nosh|scran|tucker|chow|treats|chicken|snacks -<partly> -<slight> -<offverb>
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
    <neg> ~ want|wants|wanted ~2 any|the|his|her|to? <food>|eat|eating at? all?
    <neg> ~ had a? bite|mouthful|morsel|crumb since|all|today|yet|of?
    no_interest|interest|zero_interest ~ in ~ his|her|the|any? <food>|eating|meals
    2nd|3rd|second|third|segundo|tercer|<hours>|day|days|dia|dias ~ no|without|sin|with ~ no? <food>
    ni|no ~ bola|caso|pelota|bolilla ~ a|al|le|da ~ la|el? <food>
    tempt|tempting|tempted|coaxing|coax|tried|trying ~4 <food>|<meaty>|him|her|everything ~~ no|zero ~ joy|luck|use|dice|success
    <neg>|ni ~ even ~ a|one? lick|sniff|bite|nibble|taste -ice|mouthful|crumb|morsel -<drinkwater> -<wound> -<meds> -ice -<coneword>
    nothing|nada ~ to|que do|ver ~ with|con ~2 <food>|eating|comida|comer
    no ~ querido|quiere|quiso|quizo ~ probar|comer|tocar|agarrar ~ nada|bocado
    no ~ quiere|quiso ~ saber ~ nada? ~ de|con ~2 <food>|comer
    <neg> ~3 <eat> ~2 <allday>|<hours>|<yesterday>|<lastnight>|since|desde|surgery
    <neg> ~2 persuade|convince|get|make|coax|entice|tempt ~2 him|her|them ~ to? eat ~ a|any|anything|his|her?
    no|zero|sin|without ~ food|comida|meals|meal ~ in|for|since|today|all|desde|en|tonight -left -<neg_food>
    lo que ~ le? ~ pongo|sirvo|doy|ofrezco ~4 queda|deja|rechaza|intacto
    bowl|<food>|plate|dish ~~ hasnt|not|never|didnt|havent|wont ~ so|even|as ~ much? ~ as? ~ look|looked|touched|sniff|sniffed|glanced|been|touch
    <food>|<meaty> ~~ wasnt|isnt|not|wouldnt|werent ~ having|have ~ any|none|it ~ of? ~ it|that?
    <neg> ~ bothered|interested|fussed ~ with|in|about|by ~ any ~ <food>
    ni|no|sin ~ ganas ~ tiene|trae ~ de ~ comer
    <neg> ~ wanted|touched|eaten|fancied ~ anything|thing|nothing ~ since -<meds>
    = none @appetite
    <neg> ~ even ~ sniff|smell|look|lick|touch|try|come|taste|glance|open
    <neg> ~ go|goes|gone|went|came|going|get|acerca|acerco|acercarse ~ near|close|al
    turn|turns|turned|turning|voltea|volteo ~2 away|round|around|cara|cabeza|head|back -<meds> -before -gone
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
    love|amor ~ nor|or|ni money|dinero
    ^ no|zero <food> -treats -left -since -problem
    no joy|luck|dice|go|takers|interest
    no ~ agarra|agarro|prueba|probo|toca|toco nada
    bury|buries|buried|covers|covered|entierra|tapa|burying ~ it|food|his|her|the|bowl|la
    <neg>|ni ~ even ~ a|one? lick|sniff|bite|nibble|taste
    turns|turned|turning ~ nose up $
    not a sausage|bean|dicky|scooby|jot
    = none !@dose
    offered|offering|ofreci|ofrecimos|ofrecio|ofrecido|ofrecemos|tried|trying|probamos|intente ~4 <food>|everything|todo ~~ nothing|nada|none|no|wont|refused|turns|turned|ignores|walks|rechaza|voltea
    clamp|clamps|clamped|clamping|shut|shuts|grit|grits|gritted|aprieta|cierra ~ his|her|its|la|el|su|los? ~ mouth|jaws|teeth|hocico|boca|dientes shut? ~~ food|feed|eat|spoon|<food>|comida|comer|cuchara|jeringa
    = less !@asked-dose !@dose
    <neg> ~2 <devour>|hoovering|wolfing|scoffing|inhaling|gobbling|hoover|wolf|inhale|gobble it? up|off|down? like|as? -hungry -hambre
    = normal fixed @appetite
    <neg> ~ issue|issues|problem|problems|worries|complaints|concerns|trouble|dramas ~ there|here|at
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

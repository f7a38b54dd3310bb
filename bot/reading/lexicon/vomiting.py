"""Vomiting."""

from __future__ import annotations

CLASSES = {
    "vomit": """
        vomit vomits vomited vomiting vomitted vomitting vom vomming vommed puke pukes puked
        puking barf barfs barfed barfing throw_up throws_up threw_up throwing_up thrown_up
        throwup upchucked upchuck chucked_up chucking_up chucks_up chuck_up hurled hurling
        spewed spewing spew brought_up bringing_up brings_up bring_up heaved_up coughed_up_food
        regurgitated regurgitates regurgitating regurgitate been_sick was_sick being_sick
        got_sick getting_sick sicked_up sick_up sicky emesis blew_chunks vomito vomita vomitaba
        vomitando vomitado vomitar vomitos vomitó vomitona vomite vomitivo guacareo guacarea
        guacara guacareando basqueo basquea volvio_el devolvio devuelve devolviendo
        volvio_el_estomago devolvio_el regreso_la_comida regreso_su regreso_todo arrojo arroja
        arrojando trasboco gomito gomita gomitado gomitando bomito bomitando bomitado
        echo_la_pota threw_it_up tossed_his_cookies lost_his_lunch lost_her_lunch deponer depuso
        buitreo lanzo_la_comida hacked_up_food sick_on_the sick_in_the sick_all_over
        sick_everywhere sick_once sick_twice chundered chunder retched_up hairball emesed
        hacked_up came_back_up cant_keep_anything keep_anything_down keep_food_down keep_it_down
        keep_water_down keeping_anything_down keeping_food_down retiene_nada
        devuelto devuelva vomitadas vomitada guacala
        hoiked hoik hoicked hoiking honked yakked yacked yakking upped chundering fetched_up
        ralphed ralph ralphing ralphs threw_all blew_groceries brought_his_dinner brought_her_dinner
        guacara_ lanzo_todo lanzo_la_cena lanzo_el_desayuno lanzo_la_comida largo_la_comida lo_largo
        largo_todo vomitazo vomitona vomitó_todo basca basqueando echo_la_papa
        echo_las_tripas echo_el_desayuno echo_la_cena echo_la_comida tiro_la_comida cat_sick dog_sick
        technicolour_yawn technicolor_yawn pukey sicking chunder chunders vomits_up up_chuck
        guacarear basquear sicked sicks_up borra_de_cafe_vomito
        upchucking upchucks vommit boak boaked boaking boaks boke boked regurge regurged regurging
        regurg regurgs yak yaks yack yacks heaved_it heaving_up heaves_up spews sick_again
        projectile_vomiting threw_his threw_her lost_his_breakfast lost_her_breakfast
        lost_his_dinner lost_her_dinner regreso_el_estomago regresa_el_estomago
        devolvio_el_estomago devuelve_el_estomago volviendo_el_estomago saco_el_estomago
        volver_el_estomago vuelve_el_estomago deponiendo depone trasboca trasbocando buitreando
        vomitadera vomitera vomitadota vomitadito vomitito guacarada
        """,
    "vomitstuff": """
        vomit puke sick bile barf vomito bilis yellow_foam white_foam espuma_amarilla foam
        espuma baba_amarilla
        """,
    "redcolor": "red reddish pink pinkish crimson scarlet maroon rojo roja rojos rojas rojito rojita rojitos rojitas rojizo rojiza rojizos rojizas rosado rosada rosadito rosadita rosita rosa colorado colorada guinda",
    "heaps": """
        piles pools puddles patches lots heaps rounds goes bouts splats veces charcos plastas rondas
        manchas tandas montones
        """,
    "phlegm": "phlegm flem mucus_only poo",
    "stopword": "cant_stop wont_stop no_para no_deja",
}

RULES = {
    "vomiting": """
    = yes
    regreso|saco|echo|arrojo ~4 espuma|bilis|baba_amarilla -boca -hocico -<meds> -tembl*
    sick ~ in ~ every|each|the|my ~ room|hall|car|kitchen|bed|lounge
    twice|<times>|once ~ sick -of
    limpie|cleaned|limpiamos|mopped ~3 vomito|vomitos|sick|puke|vomit
    no ~ le ~ para ~ el|la? ~ vomito|vomitadera
    brought|brings|threw ~2 straight|right back
    <food>|it|everything|pill ~2 reappeared|reappearance|resurfaced
    saw|seen ~3 <food>|pill|tablet ~ again|twice -<neg>
    <food>|todo|comio|agua ~ por la boca|hocico -<wound> -<drink>
    tiro|saco|echo|aviento|avento|arrojo ~3 por la boca|hocico
    retching|heaving ~ then|and|before|until ~ sick|sicked
    nothing|nada ~ stays|stayed|stay|queda|se_queda ~ down|adentro
    todo ~4 lo|la regresa|regreso|devuelve|devolvio|avienta|saca
    regresa|regreso|devuelve|saca ~ todo ~ lo que
    <food>|water|it|everything ~ came|comes|coming|shot ~ straight|right|all? back
    came|comes|coming straight|right back|up
    lots|lot|piles|pile ~ of ~ sick|vomit|puke
    ^ sick again|twice|once|everywhere|<times>|over|all
    hes|shes|been sick again
    lots|lot|round|rounds|patch|patches|pool|pools|load of ~ sick|vomit|puke
    up it|she|he comes|came|come|went
    come|came|comes|shot straight|right|all back? up
    <vomit>
    is|was|been|being|got|gets|bit|violently|just|hes|shes ~ sick ~ again|twice|once|times|
        everywhere|up|on|in|over|after|this|last|all|three|two
    been sick
    sick on|in|all|over ~2 rug|carpet|floor|bed|car|kitchen|sofa|night|morning|over
    brought|threw|bring|brings|bringing|coughed|throwing|chucked|spewed ~4 back? up -<phlegm>
    <food>|breakfast|dinner|it|everything ~ came|comes|come ~ back? up
    yellow|white|green ~ bile|foam|froth|liquid
    bilis|espuma amarilla|blanca
    volvio|devolvio|regreso|saco|echo ~3 comida|estomago|croquetas|desayuno|cena|todo
    lost his|her lunch|breakfast|dinner
    pile|piles|puddle of sick|vomit|puke
    tummy upset|bug
    hairball|furball|bola_de_pelo
    cleaned|cleaning|limpiando ~2 sick|vomit|vomito|puke
    chuck|chucks|chucked|chucking|threw|throw|bring|brought|spew|spews|spewed|spewing|cough|coughs|coughed|coughing|hack|hacks|hacked|hacking|heave|heaves|heaved|heaving|gak|gaked ~ his|her|the|all|it|that|some|up|more ~ <food>|lot|it|bile|foam|water|everything|liquid up|again|all? -<phlegm>
    up ~ came|comes|it|went ~ his|her|the|came|went ~ <food>|lot|it|everything|tea
    saco|echo|devolvio|regreso|largo|lanzo|avento|tiro|arrojo ~ todo ~ lo que|del|de -pelota -ball
    devolvio|regreso|saco|largo|lanzo|arrojo|depuso|avento ~ la|el|lo|su|toda|todo|pura ~ <food>|comida|desayuno|cena|bilis|espuma|amarillo|croquetas|agua -llamada -pelota -ball
    ^ lanzo|depuso|basqueo|guacareo $
    <meds> came|come|comes ~ back -<neg>
    choke|chokes|choked|choking|gag|gags|gagged|gagging|heave|heaves|heaved ~ up ~ his|her|the|all|some? <food>|lot|supper
    brought|threw|coughed|fetched|sicked|hacked ~ it|the|his|her? ~3 <meds> ~ back? up
    trajo|echo|saco|tiro|avento|arrojo ~ la|el|toda|todo|lo|su ~ <food>|comida|desayuno|cena|todo? ~ para|pa ~ afuera|fuera
    hes|shes|is|was|being|gets|got|been ~ sick ~ every|each|whenever|after ~ time|he|she|meal|drinks?
    = yes count:2
    sick sick
    vomita|vomito|vomitando y vomita|vomito|vomitando
    cada ~ que ~4 vomita|devuelve|regresa
    perdi|lost ~2 cuenta|count
    cant|couldnt|wont|doesnt ~ hold|keep ~ anything|food|water|it|nothing ~ down
    <neg> ~2 keep|keeping ~7 down
    <neg> ~2 keep|keeping|kept|retiene|retener|tolera|aguanta ~3 down|nada|food|comida|water|
        anything|agua
    keeps|keep|kept|wont_stop|cant_stop|doesnt_stop|hasnt_stopped|nonstop|non_stop|constantly|continuously ~3 <vomit>
    no_para|no_para_de|no_deja|no_deja_de|no_ha_parado|no_ha_parado_de|no_ha_dejado_de|no_dejo_de|sigue|siguio|vuelve|volvio|sin_parar|puro ~3 <vomit>
    again|de_nuevo|otra_vez|second|third|2nd|3rd ~ <vomit>
    otra_vez|de_nuevo ~ lo|la|se|le? ~ <vomit>
    <vomit> ~~ second|third|fourth|2nd|3rd|another go|time|round|lot|one|bout
    <vomit> ~~ segunda|tercera|cuarta vez|ronda|tanda
    <vomit> ~~ <three>|two|2|dos|couple|few|several ~2 <heaps>|different|separate
    <vomit> ~~ on_and_off|off_and_on|how_many|lost_count|ya_perdi
    <vomit> ~~ ya van|lleva|van ~ <number>
    <vomit> ~~ y luego|otra|despues|then|and ~2 otra|again|<vomit>
    <vomit> ~~ maybe|like|about|around|como|unas|at_least <three>
    everything|todo ~ back? up
    bring|brings|bringing|throwing|chucking|sicking ~ everything|all_of_it ~ back? ~ up
    <vomit> ~3 nonstop|non_stop|constantly|repeatedly|continuously|again_and_again|
        over_and_over|sin_parar|cada_rato|a_cada_rato|all_night|all_day|toda_la_noche|
        todo_el_dia|every_time|cada_vez|everything
    throwing everything up
    <vomit> ~3 again|otra_vez|de_nuevo
    more|another|second ~ vomit
    projectile
    todo|everything|whatever|all ~ lo|what? ~ que|he|she|it? ~ come|comio|eats|ate|drinks|toma ~ lo|la|gets|comes|up? ~ <vomit>
    = no fixed @vomiting @asked-vomiting @asked-appetite @asked-general
    ^ nothing|nada ~ has|ha? came|come|brought|devuelto|devolvio ~ back? up? -<retchword>
    = no fixed
    no|nor|not|without|never ~ sick|sickness|being_sick|been_sick
    <neg> ~2 <vomit> -<stopword>
    <neg> ~ hairball
    kept|keeping|keeps|held ~4 down -<neg>
    kept|keeping|stayed it down
    nothing|nada came|comes|salio|vino up
    se le quito el? vomito
    ya no ~2 <vomit>
    <neg> ~ brought|bring|bringing|thrown|threw|come|came|coughed ~ anything|nothing|it|any|food? ~ back? up
    = bloody
    <vomit> ~~ coagulos|coagulo|clots|clot|cuajos|cuajo|cuajarones|hilos_de_sangre
    devolvio|devuelve|regreso ~ el? estomago ~~ coagulos|coagulo|cuajos|sangre|rojo|rojos
    <vomit> ~5 <blood>
    <blood> ~5 <vomit>
    <vomitstuff> & <blood>
    <redcolor>|brown_red ~2 <vomitstuff>|<vomit> -<wound> -<poo> -<pee>
    <vomitstuff>|<vomit> ~4 <redcolor>|coffee_grounds|coffee_ground -<wound> -<gumword>
    <vomitstuff>|<vomit> ~3 con|with|had|has|tenia|traia ~3 <redcolor> -<wound>
    coffee grounds|ground
    cafe molido
    coffee_grounds|asiento_de_cafe|posos_de_cafe|como_cafe
    haematemesis|hematemesis
    throwing|threw|vomiting|bringing|coughing|threw_up|brought_up ~2 blood
    blood ~2 came|coming up
    came|comes|brought|threw|coming|bringing up ~~ coffee|bloody|blood|cafe|grounds|grainy|tar
    <vomit>|sick ~~ red|rojo|roja|rojizo|reddish|blood|sangre|sangrita|streaks_of_red
    <vomit>|sick ~~ hilitos|hilos|hebras|hebritas|rayitas|vetas|puntitos ~ de? ~ <redcolor>|<blood>
    <vomit>|sick ~~ streaks|threads|specks|bits|flecks|strings|spots ~ of|in? ~ <redcolor>|<blood>
    <vomit>|sick ~~ like|looks|grainy|brown|grounds ~3 coffee|cafe
    como cafe|posos|asientos ~ molido|cafe?
    escupe|escupio|arroja|devolvio ~2 sangre
    <blood> ~~ al|when|while|as|cuando ~ he|she? ~ <vomit>
    <vomit>|vomito ~~ borra|asiento|asientos|posos|granos|cuncho ~ de|del ~ cafe
    = bloody @vomiting
    blood|bloody|sangre|sangrita|hilitos_de_sangre|bloodstained|blood_tinged -<wound> -<poo> \
        -<pee>
    = yes @asked-vomiting
    happened|happening|did|done|had|has|doing ~2 again|another -<neg> -<askmark>
    ^ again|another $
    ^ otra ~ vez|mas $
    volvio|vuelto|vuelve ~ a ~ pasar|hacer|hacerlo|suceder|ocurrir|darle -<neg> -<askmark>
    paso|hizo|sucedio|dio ~3 otra_vez|de_nuevo|nuevamente -<neg> -<askmark>
    = yes @vomiting @appetite
    lo|la|todo largo|lanzo|devolvio|regreso|echo -llamada
    = yes @dose
    la|lo|las|los ~ regreso|devolvio|echo|arrojo|guacareo|deposo $
    la|lo|las|los ~ regreso|devolvio|arrojo|guacareo|echo ~ toda|todo|entera|entero|para|pa|con|luego|despues|al|a|ya|y|enseguida|completa -se
    la|lo|las|los ~ ha|habia ~ echado|devuelto|regresado|vomitado|devolvido
    it|they|pill ~ was|came|were back up
    """,
    "idiom": """
    = void
    me|nos ~ dan|da|dio|daban ~ ganas ~ de ~ <vomit>
    yo ~ ando|estoy|traigo|amaneci|estuve ~ con|todo? ~ <vomit>
    i|we feel|felt|feeling|nearly|almost ~ like? ~ <vomit>
    choke|chokes|choked|choking|gag|gags|gagged|gagging up
    threw|throws|throw up ~ his|her|my|our hands|head|arms
    brought|bring|bringing up ~ the|a|this|that|it subject|topic|matter|concern|idea|question
    me|nos devolvio|regreso ~ la|el|mi llamada|dinero|telefono|mensaje
    """,
}

NEGATED = {
    "vomiting": {
        "yes": "no",
        "bloody": None,
        "no": "yes",
    },
}

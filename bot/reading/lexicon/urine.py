"""Urine."""

from __future__ import annotations

CLASSES = {
    "othersense_pee": """
        pissed_off pissing_down piss_off the_number_one my_number_one number_one_boy number_one_girl number_one_fan number_one_priority number_one_concern
        """,
    "redliquid": """
        jamaica vino wine coca cola te tea ketchup sangria granadina rose beetroot betabel rust
        oxido cherry cereza tamarindo port cafe coffee cuba grosella cranberry claret rosewater
        coca_cola cocacola te_negro salsa ladrillo brick
        """,
    "pee": """
        pee pees peed peeing pea peepee pee_pee wee wees weed weeing wee_wee weewee weeed piddle
        piddled piddles urine urinate urinated urinates urinating urination wizz wizzed whizz
        tinkle tinkled tinkling piss pissed pisses pissing void voided voiding micturate
        number_one number_ones number_1 no_1 pp wiz pipi pis pipí orina orino orinar orinado
        orinando orinas pipis chis chi meo mea meado meada meando mear hizo_del_uno del_uno
        pishar pisha pisho micciono miccion micciones micciona hacer_del_uno bladder vejiga
        weewees cocked_his_leg cocked_leg cocks_his_leg passed_water passing_water pass_water
        pichi hacer_chis waterworks peepees pishi lifted_his_leg anuria anuric
        diuresis
        clump clumps pee_clump peeing_like orinada orinadas meadita pipicito pipisito chichi pichin
        lifted_leg marca_territorio wazz wazzed widdle widdled widdling
        emptied_his_bladder emptied_her_bladder empties_his_bladder empties_her_bladder
        orines orin
        orine orinaron orinara peeps took_a_leak take_a_leak takes_a_leak had_a_leak took_a_whizz
        took_a_slash had_a_slash had_a_tinkle spent_a_penny meadota meadotas chisito
        piddling tinkles orinadita orinaditas hace_pis hizo_chi
        """,
    "lastdone": "last ultima ultimo since",
    "accidentword": """
        accident accidents accidente accidentes leaked leaking leaks leakage dribble dribbled
        dribbling dribbles incontinent incontinence incontinencia incontinente puddle puddles
        wet_the_bed wet_himself wet_herself wet_his_bed wet_her_bed wet_bed wet_his_bedding
        inside indoors in_the_house in_his_bed in_her_bed in_bed se_hizo_en se_le_salio
        se_le_sale gotea goteando goteo escurre charco charquito adentro dentro se_orino_en
        se_meo_en en_su_cama en_la_cama mojo_su_cama mojo_la_cama encima
        """,
    "indoor": """
        rug carpet floor sofa couch bed blanket crate kitchen house inside indoors sleep
        sleeping himself herself lap mat alfombra tapete sala cama sillon piso casa adentro
        dentro cobija encima jaula cocina colchon bedding cushion hallway hall room dormido
        dormida corridor outside_the_box outside_the_litter outside_the_tray outside_his_litter
        outside_her_litter fuera_del_arenero everywhere duvet laundry pillow settee
        carrier car my_lap playpen pen transportadora transportin basket coat jersey colcha
        edredon sabanas
        landing doorstep porch bathmat stairs
        """,
}

RULES = {
    "urine": """
    = normal
    watered|waters|watering ~ every|the|all|my ~2 plant|plants|lamppost|tree|trees|bush|hedge|grass|flowers
    <pee> ~ is|are|was? ~ no_bother|no_problem|no_problems|no_trouble|no_issue|no_issues|grand|gallons
    used|uso|usado ~ the|su|el|her|his? litter|litterbox|litter_box|tray|arenero ~4 both|dos|fine|bien|well|twice|normally
    diuresis|miccion ~3 conservada|normal|presente|adecuada
    pass|passed|passing|passes ~2 water|urine -<neg>
    <pee> -<othersense_pee> -marking -marked -clump -clumps
    <pee> ~3 <formed>
    did|done|had|hizo|ha|hecho|plenty|lots|took|long ~3 <pee>
    litter|tray|litterbox|litter_box|toileting|bathroom|toilet ~4 as_normal|as_usual|normally|
        normal|fine|like_normal -<strain>
    <poo> ~ and|n|y ~ <pee>
    <pee> ~ and|n|y ~ <poo>
    hizo ~ las? dos cosas
    hizo|hace|haciendo ~ sus? necesidades
    bathroom|toileting|necesidades ~ <good>|<formed>
    <pee> ~ outside|afuera|garden|yard|grass|bins|patio|calle
    marked|marking|marks|watered|watering|sprayed|baptised ~3 tree|trees|lamppost|lampposts|bush|bushes|post|posts|hedge|fence|street|wheel|garden -<neg>
    big|good|normal|huge|nice|healthy|usual|decent|two|three|<number> ~ clump|clumps|pee_clump ~ in|of|litter|tray|box|this|today? -<neg>
    clump|clumps ~ in|de|en ~ litter|tray|box|litterbox|arenero|litter_box -<neg> -<blood> -small -tiny
    levanto|levanta|alzo|alza ~ la|su ~ pata|patita ~ en|y ~ cada|todos|arbol|orino|llanta|poste|meo -<neg>
    pees|peed|peeing|pee|wee ~ like ~ racehorse|horse|champ|river|hosepipe|fire|normal
    vejiga|bladder ~ empty|emptied|vacia|vacio ~ fully|completely|bien|well -<neg>
    good|strong|normal|steady|nice|decent ~ stream|flow|chorro -<blood> -<neg>
    = normal @urine @bathroom !@stool
    ^ <good> -thumbsup -one -ones -firm -firme -formed -solid -durita -solida -formada -formadas
    todo|all|everything ~2 <good>
    = accident
    left|made|makes|leaves ~ a? puddle|puddles|pool ~2 under|on|in|where -<bleedword>
    amanecio|desperto|lo_encontre|la_encontre ~ mojado|mojada|empapado|empapada ~3 <pee>|orina
    woke|wakes|found|amanecio ~4 puddle|charco|soaked|empapado -<bleedword> -rain -blood -sangre
    peed|weed|pissed|piddled|widdled|wet ~ his|her|the|our|my ~ own? <indoor>|bed|bedding|crate|blanket|duvet|sofa|couch|basket|mattress|cushion -<bandageword> -<coneword>
    <pee> ~3 in|on ~ his|her|the crate|basket|bed|carrier|kennel|cage -litter
    <pee> ~3 on|in|inside|all|over|en|por|sobre|encima|adentro|dentro ~3 <indoor>|bed|floor
    <accidentword> ~4 <pee>
    <pee> ~4 <accidentword> -outside
    accident|accidents|accidente ~4 <indoor>|night|carpet|overnight -<poo> -car -road
    had ~ little? accident|accidents -<poo> -car
    made|did|done|hizo ~3 toilet|bathroom|baño ~3 <indoor>
    wet ~ bed|bedding|himself|herself|blanket|crate -<bandageword> -<coneword>
    puddle|puddles|charco|charcos|charquito ~4 bed|floor|kitchen|cama|piso|house|sala|crate|
        overnight|pipi|pee|wee -street -rain
    leaking|leaks|leaked|dribbling|dribbles|dribbled|incontinent|incontinence|incontinente|
        incontinencia -<wound> -<blood> -<goo> -<strain>
    se orino|hizo|meo|orina|mea|hace ~3 <indoor>
    se orino|meo|mea
    se le sale|salio|escapa|escapo ~3 <pee>
    ganarle|gano ~ <pee>
    se hizo pipi|pis|chis
    <pee> ~ himself|herself|themselves|hisself|encima
    <pee>|orinado|orinada|meado|meada ~ outside_the_box|outside_the_litter|outside_the_tray|fuera_del|por_toda
    amanecio|desperto|encontre|esta|estaba|aparecio ~ todo|toda|el|la? ~ orinado|orinada|meado|meada
    <pee> ~2 outside|out|fuera|beside|next ~ of|to|the|del? ~ litter|litterbox|litter_box|tray|box|arenero|arena|caja
    puddles|puddle|spots|patches|drips|drops|trail|trails|charcos|charquitos|gotas|rastros ~ of|de ~ <pee> ~ where|round|around|all|on|in|everywhere|behind|por|donde|en -tiny -only -litter -tray -arenero
    se ~ hace|hizo|orina|mea|orino|meo ~ <pee>|chis|pipi|pis|orina? ~ dormido|dormida|acostado|acostada|cuando|encima|adentro|sin
    moja|mojo|mojado|mojando|moje ~ la|su|el|las|sus ~ cama|camita|cobija|colchon|cobijas|tapete|sillon|sabanas -<neg> -<bandageword>
    wets|wetting|wet ~ his|her|the|our ~2 bed|bedding|blanket|crate|rug|floor|carpet|sofa|mat -<bandageword> -<coneword> -not -<wound>
    wets|wetting ~ himself|herself|themselves
    <neg> ~ hold|aguanto|aguanta|aguantar ~ it|la|lo|las|in? ~~ <pee>|floor|rug|carpet|bed|piso|cama|sala
    chorrea|escurre|gotea|escapa|riega ~ la|el|un ~ <pee>
    cama|camita|cobija|colchon|bed|bedding|blanket ~ mojada|mojado|empapada|empapado|soaked|wet ~ de|with|in|from ~ <pee>
    leaking|leaks|leaked|dribbling|dribbles ~ when|as|while|cuando|in ~ he|she|his|her ~ sleep|lies|lying|sleeps|asleep|gets|stands|barks|bed
    <pee> ~ en|on|all|por|in ~ cualquier|todos|todas|over|every|any ~ lado|lugar|lados|partes|place|places|rincon
    = none
    <neg> ~ used|using|been|visited|usado|usa ~2 tray|litter|litterbox|litter_box|arenero|box
    pad|pads|litter|tray|box|arenero|tapete|bed|cama ~3 dry ~3 day|night|all|since|<hours>|days
    <neg> ~2 seen ~ him|her ~ wee|pee|go|urinate|piddle
    <neg> ~2 visto ~ orinar|hacer|mear
    <neg> ~ cocked|cocks|lifted ~ his ~ leg
    no ~ me? ~ ha ~ hecho ~ <pee>
    <neg> ~ been ~ since ~ <lastnight>|yesterday|<clock>|morning|anoche +dry|tray|litter|garden|pad|grass
    no ~ moja|mojado ~ el|la? arenero|arena|pad|tapete
    dry ~ pad|pads|bed|garden|litter ~~ <neg> ~ been|gone|wee
    not|ni so|hardly ~ much ~ as ~2 dribble|drop|drip|trickle|squirt|gota
    <neg> ~2 dribble|trickle|squirt ~~ day|night|since|hours|<hours>
    nothing|nada ~ in|en ~2 litter|tray|litterbox|litter_box|arenero|box ~~ since|desde|day|days|<hours>|ayer|yesterday -<poo>
    <zero> ~ <pee>
    no_pee|sin_pipi|sin_orinar
    <neg> ~2 pass|passed|passing|passes ~2 water|urine
    <neg> ~4 <pee>
    <neg>|nothing|nada ~2 drop|drops|thing|gota out ~ of? him|her
    last <pee>
    last did|had|went|passed|done|time|made ~4 <pee>
    <hours>|<minutes>|yesterday|day|days since ~5 <pee>
    <pee> ~3 was|were|fue ~2 yesterday|ayer|last_night|anoche|<daybefore>|<yesterdaymorning>|
        <yesterdayevening> -<accidentword> +<lastdone>
    ultima|ultimo ~2 vez ~5 <pee>
    ultimo|ultima <pee>|meada|orinada
    <pee> ~3 not_yet|none|nothing|nada|nope|nil|zero -<but>
    <pee> ~3 no ha|han|he|hay|hizo|hace|hecho|salio|sale|todavia|aun|yet|today|tonight|since|at|for|desde|en|hoy|nothing|nada|sign|$ -<but>
    sin ~2 <pee>
    lleva ~4 sin ~3 <pee>
    <neg> ~2 gone|been|go ~2 bathroom|toilet|litter|litterbox|tray|potty ~ since|in|for
    litter|litterbox|litter_box|tray|arenero ~3 dry|seco|empty|bone_dry -<poo>
    litter|litterbox|litter_box|tray|arenero|arena ~3 still|sigue|stayed|stays|amanecio|completely|totally|untouched ~ clean|limpio|limpia|intacto|intacta|seca -<poo>
    anuric|anuria|anurico|anurica
    cant|couldnt|unable|no pee|wee|urinate|puede|go ~2 at? all|orinar|hacer|pipi
    no|ni pipi|pee ni|nor|or popo|poo|poop
    <pee> no $
    <pee> not|no for|desde|en|hace
    dry ~ pads|pee_pad|litter
    ni ~ gota ~ pipi|orina
    <neg> ~ drop ~ urine|pee
    hold|holding|aguantando|aguanta ~ his|her|la|el|it|in? ~ <pee> ~~ <neg>|since|desde
    hasnt|not|no|havent|didnt ~ wet|wetted|moja|mojado|mojo ~ the|her|his|el|la|any? ~ pad|pads|litter|tray|arenero|sand|bed|arena
    no|zero|ningun ~ clump|clumps|wet|pee_clump|bola|bolas|grumos|terrones ~2 in|litter|tray|box|today|since|all|arenero|arena
    refuse|refuses|refused|refusing|rehusa|niega to|a ~ go? have? <pee>
    bladder|vejiga ~ <neg> ~ emptied|been|vaciado|vacia ~ since|in|for|desde?
    <neg> ~ emptied|empty|empties ~ his|her|the ~ bladder
    no ~ ha|quiere|quiso ~ levantado|levantar|alzado ~ la|su? ~ pata|patita ~ para|ni?
    <neg> ~ lifted|lift|cocked|cock|raised ~ his|her? ~ leg once|all|today|since|at?
    <neg> ~ used|use|uses|usado ~ the|her|his|su|el ~ tray|litter|box|arenero|litterbox ~ to|for|para ~ <pee>|orinar
    bone_dry|dry tray|litter|litterbox|arenero|pads
    = none @bathroom @urine !@stool
    last|previous one|time was ~2 yesterday|<lastnight>|<clock>|<hours>|<daybefore>
    el|la ultimo|ultima fue ~2 ayer|<lastnight>|<clock>|<hours>|<daybefore>
    no|ninguna de|of las? dos
    neither|ninguna|nothing|nada -<poo> -wrong -<comeword> -<strain> -solid -solido -<wrongword> -dramatic -<runny> -otro -otra -other -mas -grave -behind
    not a drop
    = straining
    orinar|orina|pipi|pis|pee|peeing|wee|weeing ~~ puras|puro|solo|nomas|only|just|nada_mas ~2 gotas|gotitas|goticas|drops|drips|dribbles
    gotas|gotitas|drops|drips ~ nomas|only|nada_mas? ~~ fuerza|puja|pujando|strains|straining|pushing +<pee>
    cocking|cocks|cocked|lifting|lifts|raising|levanta|alza ~ his|her|la? leg|pata|patita ~~ nothing|no|nada|drops ~ comes|coming|comes_out|sale|hace|happens?
    sat|sits|sitting|sienta|sentado|sentada|parada|posing|poses ~3 in|en ~ her|his|the|el|su? tray|litter|arenero|box|caja ~~ hour|hours|<hours>|<minutes>|ages|nothing|maulla|crying|rato|horas|nada
    urge|quiere|ganas|trata|intenta ~~ no ~2 sale ~3 <pee>|orina|chis
    licking ~ herself|himself ~ down|there|privates|bits|under ~~ tray|litter|crying|straining
    going|goes|keeps|went ~3 in|into|to ~2 tray|litter|litterbox|box|arenero ~~ coming|comes|came|sale ~ out|back? ~~ crying|cries|nothing|nada|llora
    yowls|yowling|cries|crying|maulla|llora|grita|howls ~ in|en ~ the|el|his|her? litter|tray|litterbox|arenero|box|caja
    fuerza|fuercita|esfuerzo ~~ salen|sale ~2 gotas|gotitas|gota
    levanta|alza|subio ~ la pata|patita ~~ gotea|gotas|gotitas|nada|no ~ sale?
    nada_mas|nomas|solo ~ le? ~ gotea|gotean|gotita|gotitas -<wound> -<bleedword> -nariz
    leg up|cocked|lifted|raised ~~ only|just|few|nothing|drops ~3 drops|drips|came|comes|dribble|out
    few|couple|only|just|dos|tres ~ drops|drips|gotas|gotitas ~2 came|come|out|salieron|salen -<bleedword> -<wound> -<eyes>
    agacha|agachan|acomoda|posicion ~~ no|nada ~2 sale|hace ~3 <pee>
    squat*|crouch* ~~ barely|hardly|only|little|tiny ~3 <pee>
    gotas|gotitas|gotita|drops|dribbles|chorritos ~ de|of ~ <pee> -<neg> -<blood>
    hace|haciendo ~ fuerza ~~ gotas|gotitas|pis|pipi|orina
    se acomoda ~~ fuerza|nada|gotas
    <strain> ~3 <pee> -<neg_strain>
    <pee> ~4 strain|strains|straining|puja|pujando|esfuerzo|struggling|struggles|batalla|
        painful|hurts|cries|crying|llora|duele|dolor|trabajo|cuesta
    hard_time|trouble|difficulty|painful|problema|dificultad|dolor|hurts|cries|crying|llora|
        grita|yelps ~4 <pee> -<neg_strain>
    strain|straining|strains|puja|pujando|esfuerzo ~3 litter|litterbox|litter_box|tray|arenero
    only|just|solo|nomas|drops|few|gotas|unas|gotitas|a ~3 drops|drips|drip|dribbles|gotas|
        gotitas|gotita ~3 <pee>|come|comes|sale|salen
    <pee> ~4 drops|drips|gotas|gotitas|gotea|trickle|dribs -<blood>
    in_and_out|back_and_forth|entra_y_sale|va_y_viene ~4 litter|litterbox|litter_box|box|tray|
        arenero
    litter|litterbox|litter_box|tray|arenero ~~ nothing|nada|no ~2 comes|coming|sale|hace
    back|going|goes|va|entra|vueltas ~4 litter|litterbox|litter_box|arenero|tray ~4 nothing|
        nada|no|sale
    tiny|small|little ~2 amounts|bits|dribbles|puddles ~2 <pee>
    stranguria|dysuria|disuria|pollakiuria
    tray|litter|litterbox|litter_box|arenero|box ~~ <times>|<minutes>|every|cada|constantly|keeps|again|rato ~~ not_a_drop|nothing|nada|dry|empty|sin_hacer|sin_orinar|vacio +<felid>
    squat*|crouch*|agacha*|acomoda* ~~ no|nothing|nada|not ~ <pee>? comes|coming|came|sale|salio|out
    tray|litter|litterbox|litter_box|arenero|box ~~ cant|couldnt ~2 <pee> +<felid>
    tray|litter|litterbox|litter_box|arenero|box ~~ nothing|no|nada ~ happens|clumps|clump +<felid>
    constantly|visiting|visits|keeps|again|rato|going|goes|cada ~4 tray|litter|litterbox|litter_box|arenero|box ~~ nothing|no|nada|cant|never ~2 happens|clumps|clump|wee|pee|sale|in_it|there|come|hace +<felid>
    puras|solo|nomas|only|just|few ~ gotas|gotitas|drops|drips ~~ arenero|tray|litter|litterbox|litter_box|box
    fuerza|pujando|puja|esfuerzo|straining ~~ nada|sin|no|nothing ~ de? <pee>
    squat* ~3 <pee>
    tray|litter|litterbox|litter_box|arenero|box ~~ drops|drop|dribble|dribbles|drips|gotas|gotitas -<poo>
    squat* ~~ dribble|dribbles|drop|drops|gotas|trickle
    le cuesta ~3 <pee>
    tries|trying|tried|intenta|trata|keeps|quiere ~3 <pee> -<neg_strain>
    <pee> ~3 but|pero|only|solo ~ drops|drips|dribbles|trickle|gotas|gotitas
    squat*|crouch*|agacha|acomoda ~~ only|just|solo|nomas|few|couple|but|puras ~ drops|drips|dribbles|trickle|gotas|gotitas -<wound>
    tries|trying|tried|attempt|attempts|attempted|attempting|quiere|intenta|trata|queriendo ~2 <pee> ~~ nothing|nada|cant|no|every|over|again|ni ~ puede|sale|comes|minutes|few|out? -<poo>
    trying ~ to <pee> every|over|again|constantly|all|nonstop
    litter|litterbox|litter_box|tray|box|arenero ~~ only|just|solo|nomas|but ~ dribbles|dribble|drops|drips|trickle|gotas|gotitas
    little|tiny|small|few|only|just ~ drips|drops|dribbles|squirts|spurts ~ every|each|at|come|when ~ time|go|squat?  +<pee>
    leg|legs ~ up|cocked|lifted ~~ ages|minutes|forever|long|hours|just|only ~~ trickle|drops|drips|dribble|nothing
    cant|couldnt|doesnt|not ~2 seem|able|manage ~ to? ~ <pee> ~ properly|right|proper|freely ~ just|only? ~ drops|drips?
    push*|puja|fuerza ~ to|for|para|cuando|al|when ~ he|she? ~ <pee>
    salen|sale|hace|echa|cae|caen ~ puras|unas|solo|nomas|algunas|apenas|nada_mas? ~ gotas|gotitas|gotita|chorritos|chorrito ~~ orinar|orina|pipi|chis|mear|pis -<blood>
    salen|sale|hace|echa ~ gotas|gotitas|gotita|chorritos ~ nada_mas|nomas|apenas|solo? ~ al|cuando ~ <pee>
    queja|chilla|grita|llora|aulla|duele|arde|maulla|quejaba|cries|whines|yelps|screams|howls|hurts|sore|burning|burns|whining|crying|yelping|howling|screaming|meowing ~ cuando|al|when|while|as|to|si|mientras ~ he|she|va|a|for|hace|le|for? ~ <pee> -<neg_strain>
    pasa|vive|lleva ~ en|metido|metida|dentro|adentro ~ el|del|la? ~ arenero|caja|arena ~~ nada|no|gotas|ni
    dribs and drabs
    dribs_and_drabs|drip_by_drip|gota_a_gota|drop_by_drop & <pee>
    in|out|dentro|sale ~ in|out|and|y|of|del ~ of? ~ the|her|his|el? litter|litterbox|litter_box|tray|arenero
    only|just|but|solo|nomas ~ a|una|un? ~ dribble|trickle|drip|drop|squirt|gotita|chorrito ~ comes|came|out|sale|salio|of|coming
    squat|squats|squatting|agacha ~~ hardly|barely|little|casi ~ anything|any|nothing|nada
    <pee> ~~ drop_by_drop|drip_by_drip|gota_a_gota|a_gotas|dribs_and_drabs|bit_by_bit
    forever|ages|long|siglos ~ to|en <pee>|orinar ~ properly|anything|now?
    tiny|small|little|few|only|pocas ~ spots|dots|specks|amounts|splashes|spurts ~ of|de ~ <pee>
    orina|mea|orinando|hace|orine ~ de ~ a? poquito|poquitos|gotitas|poco
    agacha|acomoda|pone ~3 <pee> ~~ no|nada|ni ~ le? ~ sale|hace|salio
    arenero|tray|litter|litterbox|litter_box ~ a? cada_rato|every|constantly|over|todo|seguido ~~ nada|nothing|gotas|drops
    ganas|quiere|intenta|trata|wants|needs ~ de|to? <pee>|orinar ~~ no|nada|nothing ~ le? ~ sale|salio|puede|comes
    <pee> ~ every|cada <minutes>|few|rato|couple|ratito
    <pee> ~ poquito|little|bits|poquitito ~ y|and|pero|but ~ seguido|often|frequently|frecuente|muchas
    cant|cannot|couldnt ~ <pee> ~ just|only|but ~ drips|drops|dribbles|trickle
    = accident @asked-urine @asked-bathroom
    gotea|goteando|escurriendo|escurre|dribbling|leaking|charquitos|gotitas ~2 por|en|all|everywhere|round|around|as|when|al|cuando -<blood> -<wound> -<strain>
    accident|accidents|accidente|accidentes|puddle|puddles|leak|leaks|mishap|mishaps|goteo|charco|charcos -car -road -<poo> -took -take -takes
    = straining @bathroom @urine
    solo|nomas|nada_mas|puras|apenas ~ unas|dos|algunas|una|tres|puras? gotas|gotitas|gotita|gota|chorritos -<blood> -<poo>
    only|just|barely|couple|few ~ a|of|couple|few? drops|drips|drop|dribbles|dribble|squirts -<blood> -<poo>
    no|cant|cannot|couldnt ~ puede|logra|able|manage ~ to? <pee> -hold -sleep -dormir -<hours> -since -desde -today -hoy
    lleva|llevan|pasa|paso ~~ yendo|entrando|metiendose|sentado|sentada|parado ~ al|en|del? ~ arenero|arena|caja ~ sin|y nada|hacer|no
    visita|visitando|entrando|va ~ mucho|seguido|rato|veces|cada? ~ al|el|en? ~ arenero|arena ~~ sin|nada|no ~ hacer|sale|deja?
    squat*|crouch*|dig|digs|digging|scrapes|scraping|push*|strain*|posing ~~ no|zero|nothing|not|one|barely|hardly|just|only|couple|few ~4 clump|clumps|drop|drops|drip|drips|dribble|patch|puddle|spot|spots|trickle +<felid> -<poo>
    agacha*|escarba*|rasca|acomoda*|puja*|pone|fuerza|sienta ~~ nada|no|ni|solo|nomas|puras|dos|apenas|si_mucho ~4 gota|gotas|gotita|gotitas|hace|sale|chorrito +<felid> -<poo>
    in|goes|going|back|visits|visiting|trips|comes ~~ out|in|back|again|forth|tray|box|litter ~~ nothing|drop|drops|dribble|spot|clump|empty|dry +<felid> -<poo>
    va|entra|mete|corre|vuelve|regresa ~~ viene|sale|arenero|arena|caja|vuelve ~~ nada|gota|gotas|gotitas|gotita +<felid> -<poo>
    push*|strain*|puja*|squat*|crouch* ~3 in|en ~ the|his|her|el|la|su? ~ tray|litter|box|litterbox|arenero|arena|caja +<felid> -<poo>
    = straining @urine
    trying|tries|intenta|trata ~ trying|tries|intenta|trata
    keeps|sigue trying|intentando|tratando
    strain|straining|strains|puja|pujando -other -otro -otra -second
    tiny|small|little|wee amounts|bits|dribbles|spurts|drops
    = bloody
    red|pink|blood|bloody|rojo|rosa|sangre ~3 in|en ~ the|her|his|el|la? litter|tray|litterbox|arenero|arena -<wound> -<bandageword> -<poo>
    <pee> ~~ tomato|beetroot|cherry|cranberry|ketchup|jamaica|betabel ~ juice|sauce|soup?
    <pee> ~3 coagulos|coagulo|clots|clot
    pink|red|rosa|rojo|rojiza|reddish ~ puddle|charco|patch|mancha|wet_patch ~4 litter|tray|litterbox|arenero|bed|floor -<wound>
    <pee> ~3 parece|looks|like|como ~3 jugo|betabel|vino|jamaica|coca|te|wine|beetroot|juice -orange -manzana -apple
    <pee> ~~ como|like|color|colour|coloured|de_color|tipo|looks ~3 <redliquid>
    <pee> ~3 sale|salio|comes|came|looks|is|was|esta ~~ rojo|roja|red|pink|rojizo|rojiza|rosado|rosada|rusty -gums -<wound>
    <pee> & <blood>
    <pee> ~4 red|pink|pinkish|rosa|rosita|rosada|rojo|roja|rusty|coca_cola|cola_coloured|
        brown_red|rojiza|reddish
    pink|red|pinkish|reddish|rosa|rojiza|rosada ~2 <pee>
    haematuria|hematuria|haemoglobinuria
    <pee> ~6 <redcolor> -gums -<wound> -<poo> -light -blanket -tray -collar -bandage
    color|colour|coloured|colored|tipo|como|like ~ de|a|the? <redliquid> ~3 <pee> -<neg>
    <redcolor> ~3 al|cuando|when|as|after|tras ~2 <pee> -<wound> -<neg>
    mancho|pinto|pinta|marked ~3 arena|arenero|litter|tray|pad|piso|tapete|floor ~ de|con|with? ~ <redcolor>|<blood>
    <redcolor>|<blood> ~3 litter|tray|litterbox|arenero|arena|pad ~~ <pee> -<wound> -<poo> -<neg>
    <redcolor> ~ stain|stains|patch|spot|spots|mark ~3 litter|tray|pad|snow -<wound>
    <pee> ~3 dark|oscura|oscurisima|brown|marron|cafe|negra|black ~3 cola|tea|coffee|te|cafe|rust|coca -<poo>
    = bloody @urine
    rojizo|rojiza|reddish|pinkish|rosada
    colour|color ~4 wine|rose|coke|cola|tea|blood|rust|vino|beetroot
    blood|bloody|sangre|red|roja|pink -<poo>
    = normal @bathroom @urine
    both|las_dos|ambas ~ normal|good|fine|times
    both|las_dos|ambas ~ done|cosas
    = none agent
    <neg> ~ seen|visto|see|found ~ any|a|him|her|one|nada? ~ <pee>
    cannot|cant|couldnt|unable ~ get|make|coax ~ him|her|them ~ to go? have? <pee>
    = none @urine
    not a sausage|dicky|jot
    """,
    "idiom": """
    = void
    para|pa ~ hacer|ir|salir a|al|del? <pee>|<poo>|baño -<strain> -cuesta -duele
    hed|shed|had ~ been bunged|blocked|constipated|backed up?
    """,
}

NEGATED = {
    "urine": {
        "normal": "none",
        "none": "normal",
        "straining": None,
        "bloody": None,
        "accident": None,
    },
}

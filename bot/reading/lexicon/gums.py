"""Colour of the gums and other mucous membranes."""

from __future__ import annotations

CLASSES = {
    "gumword": """
        lenguita encita enciitas lengüita gumz gumms ensias ensia enzias
        gum gums gumline mucous_membranes mucous_membrane mucosa mucosas mm mms encias encia
        encía labios lips inner_lip inside_lip inside_of_his_lip lip inside_of_her_lip
        inside_his_mouth inside_her_mouth inside_of_his_mouth inside_the_mouth tongue lengua
        conjunctiva conjunctivae conjunctivas inner_eyelids eyelids parpados sclera sclerae
        whites_of_his_eyes whites_of_her_eyes whites_of_the_eyes encillas boquita paladar
        labio inside_of_her_mouth inside_of_the_lip inside_the_lip inside_of_their_mouth
        inside_her_lip inside_of_his_lips inside_of_her_lips inside_of_her_cheek
        inside_of_his_cheek
        labios belfos enciitas
        """,
    "paleword": """
        grisaceo grisacea grisaceos grisaceas palidona palidonas palidon palidones see_through
        translucent transparent off_white whiteish greyed ghostlike milky pastel deathly
        transparente transparentita transparentosa clarisimas palidisima palidisimas
        blanqueadas blanqueada deslavaditas blanquizcas
        pale pallor pallid white whitish ghostly grey gray greyish grayish ashen chalky
         washed_out colourless colorless blanched white_as_paper paper_white palida
        palidas palido palidos blanca blancas blanco blancos blanquecinas blanquecina blancuzcas
        descoloridas descolorida grises gris sin_color transparentes blanquitas blanquita
        anaemic anemic palidez anemicas paler whiter bloodless waxy washed_out bleached_out pasty snowy pallor light_coloured
        no_colour no_color pálidas blancuzca palidita paliditas
        bleached
        paliducha paliduchas paliduchos faded blanchy bleachy pálidos blancuzco
        blancusca blancuscas descolorido descoloridos palideces desteñidas destenidas
        clarito claritas blanquisima blanquisimas
        deslavado deslavada deslavadas deslavados desteñida despintadas
        """,
    "palenoun": """
        porridge putty clay candle wax dough marble paper milk snow sheet papel cera yeso leche cal
        gis porcelana tiza harina chalk ash ceniza ghost fantasma hoja_de_papel candle_wax hueso
        paste flour cement cemento skimmed_milk
        """,
    "blueword": """
        blu purpl bluegrey bluegray
        bluey purpley purplely blackish dark_purple dark_blue azuladita azuladitas azulita
        azulitas azulitos azulino moradusca moraduscas morado_oscuro violacea violaceo
        violaceos
        blueness blue bluish blueish purple purplish cyanotic cyanosed cyanosis lilac lavender
        azul azules azulada azuladas moradas morada morado azuladitas cianotica cianoticas
        cianosis violetas azulosas amoratadas amoratada violaceas violacea slate navy inky plum violeta azulosa moraditas grey_blue blue_grey
        mauve dusky lila lilas violet morados moraditos azulado azulados azulito
        amoratado amoratados moretonadas blackberries blueberries blueberry
        """,
    "yellowword": """
        amarillita amarillosos amarilloso amarillenta yellow_ish yellowing golden_yellow
        yellow yellowish jaundiced icteric icterus jaundice yellowy orangey amarilla amarillas
        amarillo amarillos amarillentas amarillenta ictericas icterica ictericia amarillitas amarillentos amarillento amarillean amarillo_palido mustard
        yellow_tinge
        custard lemon butter turmeric curry saffron mostaza curcuma yellowy_white amarillosas
        amarillosa
        """,
    "pinkword": """
        pink pinkish rosy rosadas rosada rosas rosa rosita rositas rosado rosados rosaditas
        rosadita sonrosadas colour_good good_colour normal good fine ok healthy bien normales
        bonitas bonito moist buen_color salmon great lovely
        """,
    "discharged": "discharge goo gunk lagañas boogers legañas",
}

RULES = {
    "idiom": """
    = void
    chow|chows|shar_pei|pigment|pigmented ~~ <gumword> ~3 <blueword>|black
    = void @gums @asked-gums
    darker|lighter|duller|different|redder ~ than normal|usual|always|before
    oscuras|claras|diferentes ~ que|de lo_normal|normal|siempre|antes
    """,
    "gums": """
    = pink
    boca|boquita|labio ~3 bien|esta|toda|todo ~ muy? rosa|rosita|rosada|rosadita|rosado -<neg> -<wound> -<paleword>
    mouth|lip ~3 nice|lovely|all|good|still ~ and|n? pink -<neg> -<wound> -<paleword>
    good|healthy|normal|great|lovely|nice ~ pink? colour|color|pink ~3 <gumword> -<neg>
    <gumword> ~~ like_always|like_they|like_usual|as_usual|as_always|same_as|como_siempre|igual -<paleword> -<blueword> -<yellowword> -<neg>
    <gumword> ~5 <pinkword> -<neg>
    pink|rosadas|rositas|normal ~2 <gumword> -<neg>
    <gumword> ~~ pink|rosadas|rositas|rosita -<neg> -<paleword>
    crt ~3 normal|<number>
    = pale
    <gumword>|mouth ~3 drained|dead|lifeless|anaemic|anemic -<neg>
    looks|look|looking|seems ~ very|so|really|bit? anaemic|anemic|bloodless
    se ~ lo|la|le? ~ ve|mira ~ muy|bien|medio? anemico|anemica|palidito|palidita|sin_sangre
    pink|blood|colour|color|pinkness ~2 drained|gone|faded|left|vanished|disappeared|washed|draining|fading ~ from|out|in ~ of? ~ his|her|the? <gumword>|mouth|them
    no|little|without|barely|zero ~ any? colour|color|pink ~ in|to|left ~ in? ~ his|her|the <gumword>|mouth|nose
    takes|took|taking|slow ~2 forever|ages|long|while|seconds|slow|to ~3 pink|refill|return|colour|color -<legword> -walk
    capillary|cap|refill ~3 slow|delayed|prolonged|poor|sluggish|over|more -<neg>
    white|pale|grey|whiter ~~ so|same|and ~ have|are|do|with ~ his|her|the gums|lips|tongue -<neg>
    <gumword> ~3 real|so|super|pretty|quite|extremely|way|dead ~ light|faint|faded|washed|white
    se ~ le|les? ~ fue|quito|borro|bajo|perdio ~ el|lo|todo? ~ rosa|rosado|rosita|color|colorcito -<wound>
    tarda|tardan|demora|demoran|lento|lenta ~3 volver|regresar|recuperar|ponerse|pintar|volverse +<gumword>
    <gumword> ~3 lavadas|deslavadas|apagadas|marchitas|grises|cenizas
    sangre ~ se_le|le ~ fue|bajo ~ de ~ la|las cara|encias
    <gumword> ~3 light|pale ~3 see_through|transparent|translucent
    <gumword> ~4 muddy|murky
    todo|toda|muy|bien|esta ~ palido|palida|blanco|blanca|transparente ~ de|por la|las|sus ~ boca|boquita|encias|labios|adentro
    labio ~~ palido|blanco|blanquito|descolorido|transparente -<wound>
    under|inside|lifted|lift|pulled ~ his|her|the|up? ~ lip|cheek|mouth ~~ white|pale|grey|gray|colourless|bleached -<wound> -foam
    boca|boquita|hocico|trompa|tongue|mouth ~4 palida|palido|palidita|blanca|blanquisima|white|pale -espuma -foam -<wound> -froth -baba -whites
    lost|losing|loses ~ all|the|his|her? colour|color|pink|pinkness +<gumword>
    <gumword> ~4 sin|perdieron|perdio ~ el|su? color|sangre|vida
    <gumword> ~3 white|pale|grey|gray ~ as ~ a? sheet|ghost|paper|snow
    palido|palida ~ como papel|cera|muerto|fantasma|hoja
    <gumword> ~4 <palenoun>
    <gumword> ~5 like|as|colour|color|como ~4 <palenoun>
    <palenoun> ~2 <gumword>
    trompa|hocico|boca|belfo|labio ~3 dentro|<paleword> ~3 <paleword> -espuma -<wound>
    belfo|lip|labio ~~ palido|pale|white|blanco|palida -<wound> -<swell> -espuma
    mouth|boca|hocico ~ gone|is|looks|es|esta|muy? pale|palida|palido|blanquita -foam -espuma -<wound>
    <gumword> ~3 very|too|rather|really|muy ~ light|faded|faint|dull|claras|clarita|clara
    <neg> ~ tiene|trae|estan|ve|ven|veo ~3 <gumword> ~2 <pinkword>
    <gumword> ~3 menos|less ~ pink|rosa|rosas|rosadas|color
    se ~ le ~ fue ~ el ~ color|sangre ~3 <gumword>
    <gumword> ~~ <neg> ~2 regresa|vuelve|vuelven|come|go|return|goes|returning|coming ~2 rosa|pink|back|color|colour
    <gumword> ~5 <paleword> -whites
    <paleword> ~4 <gumword> -whites
    <gumword> ~~ <paleword>|white|blancas|palidas -whites
    pallor|palidez
    <neg> ~4 colour|color|pink|blood ~3 in|left|en ~4 <gumword>|them|mouth +<gumword>
    <barely> ~ pink|colour|color|rosa ~5 <gumword>
    <gumword> ~3 <barely> ~2 pink|colour|color|rosa|rosadas|rositas
    <gumword> ~~ no ~ colour|color|blood
    no ~ tienen|tiene color +<gumword>
    <neg> ~4 pink|rosa|rosadas|rositas|color|colour ~4 <gumword>
    <gumword> ~3 <neg> ~3 pink|rosadas|rositas|rosas|color|colour
    <gumword> ~4 lost ~ colour|color|pink
    = pale @gums
    like|as|colour|color|como ~4 <palenoun>
    <paleword>
    = blue
    trompita|trompa|hocico|hociquito|boca|boquita|nariz|naricita|jeta ~2 morada|morado|azul|azulada|azulado|moradita|moradito -<wound> -<bruiseword> -<facepuff>
    nose|mouth|muzzle ~2 blue|bluish|purple|purplish -<wound> -<bruiseword>
    se ~ me|le|nos? ~ esta|anda|estan? poniendo|puso|pone|pusieron|puesto azul|azules|morado|morada|moradita|azulado -<bruiseword> -<legword> -<wound> -<toeword> -<swell>
    <patient> ~ turned|gone|went|going|goes blue|purple -<bruiseword> -<legword> -<wound> -<toeword>
    blue|bluish|purple|morado|azul|morada ~ round|around|alrededor|in ~2 mouth|lips|muzzle|boca|hocico|nose
    <gumword> ~5 <blueword>
    <blueword> ~4 <gumword>
    cyanotic|cyanosis|cyanosed|cianotica|cianotico|cianosis
    = blue @gums
    <blueword>
    = yellow
    se ~ esta|me|le|nos|anda ~ poniendo|puso|ve|viendo ~ todo|toda|muy|medio? amarillo|amarilla|amarillento|amarillenta|amarillita -<discharged> -<wound> -<bruiseword> -<poo> -<pee> -<vomit>
    <yellowword> ~7 eyes|ojos|encias|gums -<discharged> -<bruiseword> -<wound>
    eyes|ojos|ojitos|skin|piel|ears|ear|orejas|orejitas|oreja ~4 <yellowword> -<discharged> -<bruiseword> -<wound>
    eye|ojo ~4 <yellowword> +white|whites|blanco|blanca -<discharged>
    piel|skin|eyes|ojos|<gumword> ~~ <yellowword> -<discharged> -<bruiseword> -<wound>
    todo|toda|se_puso|se_puso_todo|gone|turned|turning|going ~ a? yellow|amarillo|amarilla +<patient> -<discharged> -<wound> -<bruiseword> -<poo> -<pee> -<swell> -<vomit>
    eyes|gums|encias|ojos ~3 yolk|yema|mustard|mostaza|lemon|limon
    tirando a amarillo|amarilla ~3 <gumword>|ojos
    <yellowword> ~4 eyes|ojos|encias|gums|skin|piel -<discharged> -<bruiseword>
    <gumword> ~6 <yellowword>
    <yellowword> ~4 <gumword>
    jaundice|jaundiced|icteric|icterus|ictericia|icterico|icterica
    eyes|ojos|skin|piel|ears|orejas|oreja|blanco_del_ojo ~3 yellow|amarillos|amarillo|
        amarilla|yellowish|jaundiced|amarillentos -<discharged> -<bruiseword>
    = pink fixed
    ^ no|ya_no ~ estan|son|se_ven palidas|palidos|blancas|azules|moradas -<askmark>
    pink again|now|underneath|inside|though|enough -<wound> -<neg> -<discharged> -<bruiseword>
    pale|paler ~~ but ~2 pink ~ again|now|today -<neg> -<barely>
    rosa|rosita|rosadas|rositas clarito|clarita|claritas|bajito ~ normal|normales|bien
    = yellow @gums @asked-gums
    ^ theyre|are|kinda|still|very <yellowword> -<pee>
    = pale @gums @asked-gums
    <neg> ~ really|very|quite|at_all|even|that? ~ pink
    <neg> ~ estan|son|se_ven|tan|muy ~ rosas|rosadas|rositas|rosita|rosa
    lost|losing|without|no ~ all? ~ their|its|the|any? ~ colour|color
    perdieron|perdio|sin ~ el|su? color|colorcito
    less|barely|hardly pink
    menos|apenas|poco rosas|rosadas|rositas|rosa
    like|as as? ~2 <palenoun>
    como ~2 <palenoun>
    = yellow @asked-gums
    <yellowword> -<pee> -<meds>
    = pink @gums @asked-gums
    healthy|peachy|bubblegum -<neg>
    chicle|saludables|saludable|sanas|sanitas -<neg>
    de|buen|bonito|lindo|color ~ buen? color|saludable|bonito|sano|normal -<neg> -<paleword> -<blueword>
    """,
}

NEGATED = {
    "gums": {
        "pink": "pale",
        "pale": "pink",
        "blue": None,
        "yellow": None,
    },
}

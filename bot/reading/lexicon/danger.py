"""The danger net: words that must never be passed over in a clause that gave nothing else.

The value is the observation to note, as doubtful: topic and value with a dot between.
"""

from __future__ import annotations

CLASSES = {
    "uneasy": """
        weird strange funny odd off wrong bad badly dark darker different change changed changing
        not_right isnt_right doesnt_look_right concerning worrying alarming scary horrible awful
        terrible cold dry tacky sticky colour color raro raras raros rara mal fea feas feo feos
        distintas distinta cambiaron color oscuras oscura frias secas preocupa
        """,
    "calmbreath": """
        bad smell smells smelly stinks stinky fresh minty one hold held holding deep away mine
        under last easier easy settled mal huele aliento regular slow asleep sleeping sleep
        check count counted sheet video monitor baby exercise fine good normal steady
        """,
    "bloodtest": """
        taken drawn sacaron extrajeron tomaron
        test tests work results bank pressure sample sugar thinner thinners type donor draw count
        panel vessels vessel orange moon relative brother clot analisis examen examenes
        muestra prueba pruebas presion azucar tipo naranja dry dried seca old vieja clean cleaned
        washed heart
        """,
    "goodcoat": "coat collar blanket toy cone lead toy bed bowl",
    "notdead": """
        chew chewing chewed treat toy gnaw gnawing broth bone_broth dinner premio caldo juguete
        """,
    "wakeless": """
        wake waken waking woke wakes rouse roused rousing stir stirring respond responds
        responding response react reacts reacting reaction despierta despertar despierte
        reacciona reaccionar responde responder contesta reaccion respuesta
        """,
}

RULES = {
    "danger": """
    = breathing.laboured
    <breath> -<good> -<calmbreath> -<notlaboured>
    panting|jadeando|jadea & hours|nonstop|blue|gums|cold|still
    = gums.pale
    gum|gums|gumline|encias|mucous_membranes|mucosas & <uneasy> -what -should -que
    = gums.pale fixed
    gum|gums|gumline|encias|mucous_membranes|mucosas ~ <neg> ~2 right|normal|good|great|healthy|
        bien|normales
    = gums.blue
    tongue|lengua & <uneasy>|<blueword>
    = incision.bleeding
    blood|bloods|bleeding|bleed|bleeds|bled|sangre|sangra|sangrando|sangrado|haemorrhage|hemorrhage \
        -<bloodtest> -<notwoundblood> -<goodcoat>
    = seizure.yes
    fit|fits|fitting|seizure|seizures|convuls*|convulsion|epilep*|ataque|ataques \
        -<notfit> -<notattack> -<seizedup>
    paddling|pataleando|pataleaba|pedaleando -pool -water -swim -swimming -river -sea -stream \
        -puddle -happy -playing -kids -dreaming -dream
    = incision.open
    <deepbone>|bones|fierro & <wound>|showing|poking|sticking|visible|asoma|ve|seen -<notdead>
    white|shiny|blanco|metal & <wound>|hole|hoyo & see|can|ve|veo|poking|out|asoma|inside|down -<goodcoat>
    = energy.collapsed agent
    <neg> ~3 <wakeless> -<sleepwell>
    collapsed|desplomo|desmayo|unconscious|inconsciente|unresponsive
    = belly.bloated
    <retchword> -<meds> -<food> -cough -coughing
    retch*|heav*|arcad* ~4 nothing|nada|froth|foam|espuma|baba
    """,
}

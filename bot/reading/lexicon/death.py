"""The patient's death, in plain words and in those that soften it."""

from __future__ import annotations

CLASSES = {
    "diedword": """
        perished passed_overnight fallecido fallecida
        died passed_away passed_on passed_peacefully passed_in deceased slipped_away murio
        fallecio muerto_ya ha_muerto ha_fallecido se_murio
        """,
    "forsleepof": """
        surgery operation op xray x_ray xrays scan mri ct dental procedure anaesthesia anesthesia
        anaesthetic anesthetic before during vets_appointment stitches cirugia operacion
        operar operarlo operarla radiografia placas limpieza anestesia antes para curar sutura
        crate bed cone blanket basket couch sofa meds pill gabapentin trazodone walk massage car
        puts putting cama cuna canasta paseo nap ray siesta
        """,
    "ahead": """
        tomorrow next_week next_month may might should considering consider thinking whether
        discuss discussing discussed talked talking plan plans deciding scheduled booked
        appointment has_to had_better habria podria podriamos pensando consideran considerando
        """,
    "notquite": "nearly almost casi could might would thought if down",
    "laid": """
        last_night yesterday today this_morning tonight overnight peacefully ayer anoche hoy
        esta_manana
        """,
}

RULES = {
    "life": """
    = died
    said|say|saying|had_to_say ~ our|my|a|the|final|last? goodbye|goodbyes ~ <laid>|$ -<ahead>
    we|ive|i lost ~ our|my ~ best|baby|sweet|little|old|big|dear? ~ boy|girl|baby|dog|cat|friend|lad|pup|kitty|companion -<thing>
    was|got|been|hit ~~ and|was killed -<neg>
    killed ~ by|outright|instantly -<neg>
    is|hes|shes ~ in|up ~ heaven|paradise ~ now|$
    ya|esta|anda ~ ya? ~ en|con ~ el|los? cielo|angelitos|angeles|diosito
    ya descanso ~ mi|nuestro|nuestra|de_sufrir|por|$ -<neg>
    encontre|encontramos|hallamos|encontraron|hallaron|estaba|amanecio ~ ya? sin vida
    lo|la mataron|mato ~ un|el|una|al|en|$ -<food>
    ya_no despierta|desperto|amanecio ~ $
    no ~ amanecio|sobrevivio|libro ~ vivo|viva|hoy|la_noche|esta|$
    he|she|hes|shes is|was? gone $ -<neg> -outside -escaped -looking
    woke|found|came ~~ he|she|<patient> was gone $ -<neg>
    gone ~ at|around <clock> -<wound> -<bandageword>
    ^ rip my|our|little|sweet|baby|buddy|old|<patient>
    rest|rests|resting in peace|power
    his|her heart gave|stopped|quit ~ out|beating|working?
    no|without|<neg> ~ heartbeat|pulse|heart_beat -<askmark>
    cold|stone_cold|stiff and stiff|cold -<legword> -<legonly> -leg -weather -joint
    isnt|arent|not with us ~ any|anymore|now|longer
    <neg> ~ pull|pulled through
    <neg> survive|survived|surviving ~ the|his|her? ~ night|surgery|op|operation|$
    crossed|crossing|over ~ the? rainbow
    gained|got|grew|earned ~ his|her wings
    left us ~ <laid>|$ -alone
    taken ~ from us
    he|she|hes|shes ~ is|at? in a better place
    his|her|the ashes|urn
    no la|lo? libro|armo|conto $
    no resistio|aguanto $ -cono -<bandageword>
    no ~ salio ~ adelante|de_esta
    colgo ~ los tenis
    se ~ me|nos? petateo|pelo
    descansa|descanse ~ en paz
    perdio ~ la vida
    su corazon|corazoncito ~ se? paro|detuvo|fallo|rindio
    <neg>|ya_no|sin ~ late|latia|latidos|latir|pulso ~ corazon? -<askmark>
    frio|fria|helado|helada y tieso|tiesa|duro|dura|rigido|rigida -<legword>
    tieso|tiesa|duro|dura|rigido|rigida y frio|fria|helado|helada -<legword> -<wound>
    ya no ~ lo|la ~ tenemos|tengo
    cruzo ~ al ~ otro lado
    fue|voló|volo|subio ~ al|a_el cielo|cielito
    mi angelito|angel ~ ya|se|voló
    sus cenizas
    <diedword> -<notquite>
    is|was|hes|shes ~ no longer with us
    is|was|hes|shes ~ not|isnt with us ~ anymore|now|any
    was|were|been|be|got put to sleep|rest -<forsleepof>
    pts $
    rainbow|arcoiris ~ bridge|puente
    bridge|puente ~ del|de|of? ~ arcoiris|rainbow
    <neg> make it ~ through|past|overnight -walk -food
    he|she <neg> make it $
    we|i|they|vet put ~ him|her|<patient> down <laid> -<forsleepof> -it
    was|were|been|be|got put down <laid>|$ -<forsleepof>
    took|dio|gave ~ his|her|su? ~ last|ultimo breath|aliento|suspiro
    cruzo ~ el? arcoiris
    no ~ pudieron|pudimos|pudo|lograron ~ salvarlo|salvarla|revivirlo|revivirla|reanimarlo|reanimarla
    lo|la perdimos ~ <laid>|$ -<notquite>
    no sobrevivio $
    gone ~ to ~ heaven|dog_heaven
    ya no esta ~ con nosotros
    ya no esta|vive $
    se nos|me ~ fue ~ <laid> -corriendo -puerta -calle
    se nos ~ fue $
    se nos|me ~ murio
    se nos adelanto
    paso a mejor vida
    partio|fue ~ al ~ cielo
    lo|la|<patient> ~ tuvimos|tuve|tuvieron|decidimos ~ que? sacrificar|eutanasiar -<ahead>
    que ~ sacrificarlo|sacrificarla|eutanasiarlo|eutanasiarla -<ahead> -<wanting> -<ifword>
    dejo de existir
    partio ~ <laid>|$ -<meds> -se
    esta|estaba|amanecio|encontre|encontramos|aparecio ~ ya? ~ muerto|muerta|muertito|muertita -como -<notquite> -<neg> -sueño -sueno -cansancio -hambre
    = died !@stool !@urine !@asked-stool !@asked-urine !@asked-bathroom
    he|she|<patient> ~ has|just? passed <laid>|$ -<ahead>
    = died agent
    buried|burying|cremated|cremating ~ him|her|<patient> -bone -toy -treat -nose -face -head -ball -bury
    lo|la|<patient> enterramos|enterre|enterraron|sepultamos|cremamos|cremaron|incineramos|incineraron|velamos -hueso -juguete
    enterramos|enterre|sepultamos|cremamos|incineramos ~ a ~ mi|nuestro|nuestra|la|el? <patient>
    is|was|hes|shes|found|he|she|him|her dead -<hindpair> -<legword> -<notquite> -<neg> -asleep -tired -weight -set -lame -leg
    had|have|decided|chose|agreed|time ~3 put ~ him|her|it|them|<patient> ~ to? sleep -<forsleepof> -<ahead> -<wanting> -<intent>
    had|have|decided|chose|agreed|time ~3 put ~ him|her|it|them|<patient> ~ down <laid>|$ -<forsleepof> -<ahead> -<wanting> -<intent>
    had|have|having ~ him|her|it|them|<patient> put ~ to? sleep -<forsleepof> -<ahead> -<wanting> -<intent>
    had|have|having ~ him|her|it|them|<patient> put down <laid>|$ -<forsleepof> -<ahead> -<wanting> -<intent>
    put|laid ~ him|her|<patient> to rest -<forsleepof> -<ahead> -<wanting> -<intent> -down
    we|i|they|vet|vets put ~ him|her|it|them|<patient> to sleep -<forsleepof>
    <neg> ~ save|revive|resuscitate him|her|<patient> <laid>|$
    <neg> ~ bring ~ him|her|<patient> back <laid>|$
    euthanised|euthanized|euthanize|euthanise|euthanasia|eutanasia|eutanasiado|eutanasiada|eutanasiar|sacrificar|sacrificaron|sacrificamos -<askmark>
    had|have|decided|chose|time ~2 let ~ him|her|<patient> ~ go -out -outside -off -free -home -<pee> -<poo>
    said|say|saying ~ our|my|a? goodbye ~ to ~ him|her|<patient>
    lost ~ him|her|<patient> <laid> -<notquite>
    perdimos|perdi ~ a? <patient> ~ <laid>|$ -<notquite>
    lo|la|<patient> ~ pusimos|pusieron a dormir -<forsleepof>
    we lost him|her $
    tuvimos|tuve|tuvieron|decidimos|hubo ~ que? ~ dormir|dormirlo|dormirla|dormirle -<forsleepof>
    lo|la|<patient> ~ durmieron|dormimos ~ <laid>|$ -<forsleepof>
    """,
    "danger": """
    = energy.collapsed
    he|she|hes|shes|my|our ~2 dying|dieing -for -to -of -battery -down -hair
    se ~ me|nos? ~ esta|anda ~ muriendo -de -por
    se me|nos muere
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {"life": {"died": None}}

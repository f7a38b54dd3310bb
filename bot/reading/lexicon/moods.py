"""How a clause is meant: a question, a condition, a wish, a worry, a purpose."""

from __future__ import annotations

CLASSES = {
    "askmark": "",
    "askword": "?",
    "sitwith": "sat sitting",
    "orderer": """
        vet vets doctor doctora doc er emergency hospital clinic surgeon nurse they veterinario
        veterinaria clinica urgencias enfermera cirujano cirujana ellos dr dra
        """,
    "ordering": """
        said says say told tells advised instructed ordered dijo dijeron dice dicen indico
        indicaron ordeno ordenaron pidio pidieron
        """,
    "ordered": """
        mouth boca food feed feeding eat drink water pill pills meds
        medicine medicines medication tablet tablets walk walks walking comer comida beber agua
        tomar dar darle diera demos pastilla pastillas medicina medicinas paseos caminar
        give giving breakfast dinner treats premios
        """,
    "orderverb": """
        diera dieramos demos den diesemos doy coma comiera tome tomara beba camine caminara saque
        sacara sacaramos saquemos pongamos pusieramos
        """,
    "moving": """
        driving going headed heading rushing running racing speeding taking bringing leaving
        manejando yendo vamos voy llevando llevo llevamos corriendo salimos saliendo camino
        """,
    "careplace": """
        er vet vets hospital emergency clinic urgencias veterinario veterinaria clinica hospitals
        """,
    "emergencyword": "emergency animal pet out_of_hours urgencias hospital",
    "arewe": "we were weve im i am are estamos estoy ando andamos les los",
    "morepee": """
        more gallons lakes buckets bucketloads litres liters rivers oceans pools floods
        twice_as twice_what double triple constantly excessively mas muchisimo muchisima litros lagos mares rios
        cantidades chorros doble demasiado demasiada
        """,
    "peesnow": """
        peeing pees weeing wees urinating urinates pissing pisses orina orinando mea meando
        """,
    "mad": "crazy mad fountain loco loca llave",
    "any": "be",
    "joiner": """
        and y e but pero so then entonces also o or pues bueno well oh hi hola hey oye oigan ok
        plus ay che doc doctor doctora vet disculpe disculpen perdon sorry
        """,
}

RULES = {
    "mood": """
    = question
    ^ como se|sabemos|saber si
    ^ how many|much|high|low|hot|cold|fast <breath>|degrees|is|counts|can|should|would|before|makes|a
    ^ what temp|temperature|rate|number|colour|color|dose|age|weight ~ counts|is|should|would|means|do|does|are
    ^ a|que cuanto|temperatura|fiebre ~ es|se|cuenta|debe
    side effect|effects +<askmark>
    ^ are|is <sign>|<seizureword>|<limpword> +<askmark>
    dan|causan|provocan|cause|causes|provoca|causa ~2 <seizureword>|<sign> +<askmark>
    ^ does|do|did|can|could|should|would|will +<askmark> -<patient>
    pasa|paso|pasara algo|nada +<askmark>
    hay problema|bronca|lio +<askmark>
    le hace|hara|hace_dano mal|dano +<askmark>
    esta|estara bien|mal si
    ^ a|de|con|por que +<askmark>
    am i|we allowed
    kindly|please|can_you|could_you confirm|clarify|advise|tell ~2 whether|if|when|how|what
    confirm|clarify|advise whether
    could|can|would|might|does|do|will the|those|these|his|her|all ~6 +<askmark>
    ^ que|de_que color|colores|aspecto|sintomas|senales|temperatura|cantidad|tipo|tanto|tan +<askmark>
    es|son|is|are ~4 verdad|cierto|right|correct $ +<askmark>
    ^ ok hago|hacemos
    ^ should|shall|can|could|may|do|does|is|are|was|will|would|must|isnt|shouldnt|doesnt i|we|
        he|she|it|you|they|that|this|there|these|his|her|the|anyone|him
    ^ did|has|have|wont i|we|he|she|you|they|anyone -<sitwith>
    ^ wil|whens|hows|whats|whys
    should|shall i|we
    do|can|could|may i|we
    ^ which is|are +<askmark>
    ^ which one|leg|pill|med|meds|medicine|should|do|does|can|of|tablet|day|foot -was -were -wouldnt
    ^ who is|are|should|do|does|can|could|would|will +<askmark>
    ^ what|whose is|are|should|do|does|can|could|if|about|would|will|to|time|kind|
        happens|now|else|did
    ^ what|which|who +<askmark>
    ^ how is|are|should|do|does|can|could|would|will|much|long|many|often|soon|far|to|come|bad \
        +<askmark>
    what do|should|can|to|if|now|about|happens
    what shall|would|could
    ^ when|where can|should|do|does|will|is|are|could|would|shall
    ^ when|where +<askmark>
    when can|should|will|does|do
    how long|soon|much|many|often|far|do|can|should|will|bad|late|early|come
    is|are it|that|this|these normal|ok|okay|bad|alright|fine|safe|right|usual|common|
        expected|serious|dangerous|wrong|enough|too|worrying|good|worry|correct|anything
    ^ is|are normal|ok|okay|bad
    ^ is|are ~4 normal|ok|okay|common|usual|expected|bad|safe|allowed
    that normal|ok $
    is ~3 something|anything i|we|to
    any advice|tips|ideas|suggestions|thoughts|guidance
    wondering|wonder|asking|ask|know|sure|tell if|whether|how|when|what
    let me know if|whether|what|when|how
    i|we|id|would|just need|want|like|love ~ to know
    worried should
    puedo|puede|podemos|debo|debemos|deberia|deberiamos|puedes|pueden|se_puede +<askmark>
    ^ le|la|lo|se|les puedo|podemos|debo|puede|debemos|deberia dar|darle|banar|quitar|poner|sacar|dejar|llevar|cambiar|limpiar|mover|cargar|tocar|lavar
    ^ puedo|podemos -ver -verle -verlo -sentir -oler
    ^ debo|podremos|debemos|deberia|sera|cuanto|cuanta|cuantos|cuantas|cual|cuales
    ^ cuando|donde|como +<askmark>
    ^ como hago|hacer|puedo|le_hago|se_hace|se_le|le_doy|lo_hago
    ^ que hago|hacemos|debo|puedo|podemos|sigue|pasa|tan|me|hacer|tal
    que hago|hacemos|debo|puedo
    que hacer si|cuando
    ^ se_puede|se_pueden
    ya ~ puede|puedo|podemos ~~ o todavia|aun|no
    es|sera|seria|eso|esto|esta normal|malo|grave|bueno|seguro|peligroso|comun +<askmark>
    ^ es|sera|seria normal|malo|grave|comun|bien
    ^ es|sera que? normal|malo|grave|comun
    cuando puedo|puede|podra|debo|toca
    cuanto|cuanta tiempo|tarda|dura|falta|debo|le|agua
    tengo|hay que +<askmark>
    estuvo|esta|hice ~ mal|bien +<askmark>
    le doy|pongo|quito|cambio|repito|vuelvo +<askmark>
    la|lo llevo|saco|bano|dejo +<askmark>
    o|u espero|aguanto|no +<askmark>
    me preocupo|debo
    por que +<askmark>
    duda|pregunta|consulta|question about|on|regarding|sobre|de|del|acerca|con|whether|if -<unneg>
    ^ le|ya|cuando ~2 toca|tocan -<ground>
    ^ cuando ~ le|la|lo|se? ~ doy|damos|pongo
    <askword>
    = announced
    duda|pregunta|consulta|question -<unneg>
    = factive
    should ~ his|her|the <gumword>|<wound>|<legword>|<bellyword> ~ be|look|feel
    normal|okay|common|weird|usual|bad|expected for|para ~ him|her|<patient>|un|una|el|la ~~ to|be|que
    normal|ok|okay|common|weird|usual|bad|expected|fine that|hes|shes
    normal ~2 que
    ^ why +<askmark>
    ^ why is|are|does|do|did|wont|isnt|doesnt|would|cant|hasnt|might|not
    why ~ is|are|does|wont|isnt|doesnt|hes|shes|would
    how come
    supposed|meant to be
    por que
    should ~ still
    still be <any>
    is it normal
    = hypo
    <ifword>
    if -<touchif>
    if ~ i|we let|allow|allowed|give|gave|leave|take
    would <be>|become|happen|get|need|mean
    y si
    ^ si +<askmark>
    dijo|dijeron|dice|dicen ~ que? si
    if|when|in_case he|she|it starts
    = wish
    <wish>
    = ordered
    <orderer> ~4 <ordering> us|me|that|absolutely|strictly|to? no|nothing|stop|hold|withhold|skip|dont ~4 <ordered>|<meds> -left
    <ordering> us|me? not to ~3 <ordered>|<meds>
    <ordering> nos|me? que? nada|no de ~3 <ordered>
    <ordering>|ordeno que? nada|no ~ se|le|lo|la|les? ~ <orderverb>
    nothing|nil|nada ~ by|per|por|via ~ la|the? mouth|boca|oral|os
    = acting
    <moving> ~4 to|at|al|a|for|hacia ~ the|our|la|el|su|an|your? ~ <emergencyword>? <careplace> -tomorrow -checkup -appointment -cita -weekly -next
    on our|my way -recovery -mend -home -back -car -door
    on the way $ -<patient>
    on our|my|the way ~ to|over|now|in ~ <emergencyword>|<careplace>|you|now
    vamos|voy|salimos|venimos|ya ~ en|de|para camino|alla|hospital|urgencias|clinica
    ^ llegamos|llegue|arrived|en_route $
    ^ we|i|weve|ya|just|acabamos ~2 llegamos|llegue|llegar|arrived|here $
    got|made|left ~ it|just? ~ to|for|at ~ the|our|an? ~ <emergencyword>? <careplace> $
    arrived|llegamos|llegue|here ~2 at|a|al|to|la|en ~2 <careplace>
    <arewe> ~2 at|en|in ~ the|an|el|la? ~ <emergencyword>? <careplace>
    <arewe> ~ calling|phoning|ringing|llamando|marcando ~ them|you|now|a|al|the|les|ya|la|los|vet|yous?
    = taken_back
    false_alarm|falsa_alarma
    = more_pee
    <pee> ~3 <morepee> -<neg> -<accidentword> -once -easily -freely -comfortably
    <pee> ~ so|too|tan much|mucho
    <peesnow> ~2 lot|mucho|mucha|loads|lots|tons -<neg>
    <peesnow> ~ like|como ~ a|un|una? <mad> -<neg>
    <morepee>|mucha|mucho|lots ~ of? ~ de? <pee> -<neg> -<accidentword> -once
    = worry
    dreading ~ him|her|it
    afraid|scared|terrified|worried|nervous of|about him|her|it
    was|were|got|estaba|andaba ~ <worry> ~ his|her|the|that|que|sus|la|de
    <worry> ~2 that|of|about|he|she|it|hell|shell|may|might|que
    <worry> for him|her|it
    <worry> he|she|it|hes|shes ~ <future>|might|may|will|could
    me da miedo
    = purpose
    <purpose>
    <future> ~2 <patient> be|need|have
    ^ so|so_that|until|till|before he|she ~ can|does|doesnt|wont|cant
    until|till|hasta ~ better|heals|que
    = dream
    i|we had ~ dream|dreams
    i|we|ive|im ~ dreamt|dreamed|dreaming
    sone|sonaba|soñe|soñaba ~ que
    = phatic
    alguien|ustedes|estan|hay ~ despierto|despierta|ahi|abierto|guardia|alguien -<patient>
    por_donde|como ~ empezar|empiezo|explicarle|explicarlo|explicarles|decirlo|decirle|decirles
    <neg>|never ~ know|tell|guess|say ~ which ~2 leg|one|side|paw
    where do? i start|begin
    where to start|begin
    would you believe
    guess what
    you know what|how
    ya ven como|que|lo
    que creen|cree
    what can i say
    adivinen|adivine que
    sabe|saben que
    = denied
    look|looked|checked|check|felt|feel|busque|revise|fije|revisado|mire ~2 for|si|por|algo ~~ isnt|arent|wasnt|no|nothing|none|nada ~2 any|there|hay|ninguna|ninguno|nada|encontre|found $
    juraba|jurando|swore ~~ y|pero|but|and no|wasnt|nope|era
    <denyword> -sideways -outwards -toes -foot -paw -side -leg
    = thought
    <thought>
    straight as ~ die|arrow|pencil|rod
    esta ~ derecha|recta|derechita
    = general
    read|saw|heard|googled|lei|vi|see ~ online|google|internet|facebook|that|que ~2 dogs|cats|animals|perros|gatos
    dogs|cats|perros|gatos ~ can|could|may|might|sometimes|pueden|suelen|often|do|get
    a|any|every|all|un|una|los|las cat|cats|dog|dogs|perro|gato|gatos|perros who|that|que|which
    in my country
    = since_not
    <sincenot>
    but|pero ~3 <good> ~ now|today|since|ahora|hoy|ya
    but|pero ~2 ya|ahora|hoy ~2 <good>
    but|pero not|none|nothing|no|nada since|desde
    = far_past
    hace ~3 anos|ano|meses
    ^ antes ~2 cojeaba|rengueaba|renqueaba|lloraba|jadeaba
    <farpast>
    in_the_past -<hours> -<minutes> -day -days -week -hour -hours -few -couple
    last_time -<pee> -<poo> -<vomit> -<food> -same -as -than
    = near_past
    <nearpast>
    = used_before
    he|she did ~ yesterday|before|last|earlier|this -<neg>
    ^ ayer|antes ~ si
    was|were ~2 fine|ok|okay|grand|perfect|great|good|normal|sound|walking ~2 going|this|an|yesterday|when|earlier|before|until|last|at|on|ago -<neg>
    was|were|been|had ~3 <bear>|<legmove>|<toetouch> -<neg>
    <legmoved> ~4 leg|legs|it|four|4|fours|on|normally|fine|well|grand|normal|great|properly|
        lovely|away|soundly -<neg>
    until|till|hasta|before|yesterday|ayer|previously|antes ~~ <legmoved>|<legmove> -<neg> -<bad_use>
    estaba|venia|andaba|iba|estuvo|habia ~2 apoyando|pisando|usando|caminando|andando|apoyado -<neg>
    was|been|had|were ~3 doing|getting|going ~2 well|great|better|grand|brilliant|brilliantly|good|nicely|fine -<neg>
    iba|venia|estaba|andaba ~2 bien|mejor|perfecto|mejorando|excelente|super -<neg>
    yesterday|ayer|anoche|antes ~2 <good> -<neg>
    <good> ~ yesterday|ayer|anoche|antes|before|until -<neg>
    four|4|all|cuatro ~ legs|fours|paws|patas ~2 yesterday|before|ayer|and
    apoyaba|pisaba|usaba|caminaba|andaba|corria|trotaba|asentaba|cargaba -<neg>
    ayer|antier|anoche|antes|manana|hasta ~4 apoyo|piso|camino|anduvo|uso|apoya|camina -<neg>
    previously|formerly|prior ~3 <toetouch>|<bear>|sound|grade|ambulatory|wb -<neg>
    up_to|right_up_to|until last|yesterday|this ~~ <bear>|<legmoved> -<neg>
    """,
}

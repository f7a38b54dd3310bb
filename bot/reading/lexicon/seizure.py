"""Seizures."""

from __future__ import annotations

CLASSES = {
    "trances": """
        baba babas babeo babea babeaba babeando espuma espumarajo ojos_en_blanco mirada_ida
        mirada_perdida mirada_fija ojos_volteados ojos_idos orino orinado meo inconsciente
        perdido perdida ido trabado trabada trabo quijada mandibula engarrotado engarrotada
        desorientado desorientada no_nos_oia no_me_oia no_oia no_reaccionaba no_respondia
        no_me_reconocia cabeza_pa_atras cabeza_para_atras cabeza_hacia_atras perdio_el_sentido
        pierde_el_sentido perdio_el_conocimiento
        """,
    "jerkses": """
        temblaban sacudian pataleaban tembloroso temblaba_todo
        temblaba temblo temblar temblando tiembla sacudia sacudio sacude sacudirse sacudidas
        sacudiendose sacudiendo pataleaba patalea pataleo patalear pataleando pedaleaba
        pedaleo pedaleando pedalea contracciones espasmos calambres retorcia retorcio
        retorcerse retorciendose convulso tembladera brincaba brincoteaba tironeaba
        """,
    "trancen": """
        drooling drool drooled foam foaming foamy froth frothing rolled_back glazed vacant
        vacantly unaware unconscious out_of_it chomping champing chattering peed_himself
        peed_herself wet_himself wet_herself soiled disoriented dazed blank_stare not_with_us
        zoned_out
        """,
    "jerksen": """
        twitchin shakin jerkin thrashin convulsin
        twitching twitched twitch twitches jerking jerked jerks jerky thrashing thrashed
        flailing shaking shook shakes trembling paddling paddled pedalling cycling kicking
        kicked spasming spasms convulsing juddering shuddering quivering vibrating
        """,
    "seizureword": """
        seizure seizures seizuring seizured convulsion convulsions convulsing
        convulsed convulses convulse convulsive fit fits fitting epileptic tonic_clonic
        grand_mal petit_mal ictal post_ictal postictal status_epilepticus convulsiones
        convulsiono convulsionando convulsiona convulsionar convulsionado convulsionó
        ataque_epileptico epilepsia epileptica epileptico ataque ataques convulso
        crisis_convulsiva crisis_epileptica ataquito convulsivo le_dio_un_ataque seizing
        combulsion combulsiones combulsiono combulsionando conbulsion conbulsiones
        convulcion convulciones convulciono seisure seizur seizurs
        """,
    "onside": """
        on_his_side on_her_side onto_his_side onto_her_side over_sideways de_lado de_costado
        on_the_floor en_el_piso en_el_suelo tirado tirada
        """,
    "sleeping": """
        sleep asleep sleeping dream dreams dreaming dreamt sueno suena sonando soñando dormido
        dormida duerme nap squirrels rabbits durmiendo
        sonaba soñaba soñando
        """,
    "seizureless": "toy ball",
    "shakes": "twitching jerking drooling shaking paddling tiembla temblando babeando rigid stiff",
    "notfit": """
        fit_of fits_of fit_in fits_in fit_on fits_him fits_her well perfectly properly cone collar through
        crate bed snug snugly car as_a a_fiddle bandage nicely fit_as and_healthy and_well into
        better pants suit tight harness doorway fighting
        """,
    "notattack": "heart corazon panic asthma risa me_dio cardiac al_corazon",
    "seizedup": "back knee joint joints neck printer up_my car",
    "bellyctx": "belly stomach tummy abdomen leg wire",
}

RULES = {
    "idiom": """
    = void
    having|has|had|have|threw|throws|throwing|throw|pitched a ~ fit ~~ because|cos|cause|about|over|if|when|at|of|since ~ i|we|its|it|my|the|sulks|laughter|giggles|rage
    perfect|good|great|better|snug|nice|tight|loose|right fit -<neg>
    in fits of
    berrinche|drama|show|teatro ~ de ataque
    hizo|hace|haciendo|armo ~ un|su? berrinche
    """,
    "seizure": """
    = yes @asked-seizure
    ^ yes|yep|yeah|yup|had|just ~ <number>|one|two|three|another|again|twice -<neg>
    ^ one|another|two|three|<number> ~ at|last|just|in|this|around|today|yesterday|earlier|overnight -<neg>
    ^ si|tuvo|le_dio|le_dieron ~ <number>|un|una|otro|otra|dos|tres|uno -<neg>
    ^ una|uno|otra|otro|dos|tres|<number> ~ en|anoche|hoy|ayer|de|a_las|hace|chiquito|chiquita|leve -<neg>
    happened|happening|did|done|had|has|doing ~2 again|another -<neg> -<askmark>
    ^ again|another $
    ^ otra ~ vez|mas $
    volvio|vuelto|vuelve ~ a ~ pasar|hacer|hacerlo|suceder|ocurrir|darle -<neg> -<askmark>
    paso|hizo|sucedio|dio ~3 otra_vez|de_nuevo|nuevamente -<neg> -<askmark>
    = yes
    electrocuted|electrocution
    electrocutado|electrocutada|electrocutando|electrocutara
    puso|quedo|pone ~ todo|toda|bien? ~ duro|dura|tieso|tiesa|rigido ~~ <jerkses> -<sleeping>
    whole|entire|full body ~ was|is|just? jerked|jerking|jerks|twitched|twitching|convulsed|spasmed|shook|shaking -joy -excitement -tail
    toques|descargas|choques|electricidad ~ como? electricos|electricas|electricidad|cuerpo -cerca
    <jerksen> ~~ <trancen> -<sleeping> -<meds> -pool -fetch
    <trancen> ~~ <jerksen> -<sleeping> -<meds> -pool -fetch
    <jerkses> ~~ <trances> -<sleeping> -<meds> -agua
    <trances> ~~ <jerkses> -<sleeping> -<meds> -agua
    rigid|stiff|stiffened ~~ chomp*|champ*|chew*|head ~ at|back ~ nothing|air?
    chomp*|champ*|chew*|bit*|snap* ~ at nothing|thin_air|the_air|invisible -flies -fly
    threw|throwing|arched|thrown ~ his|her head ~ back ~~ stiff|rigid|shaking|jerking|chomp*
    twitching|jerking|drooling|tiembla|babea|temblando|babeando ~~ eyes|ojos ~3 roll|rolling|rolled|van|volteados|voltea|voltearon|blanco|fueron|torcidos -<sleeping>
    running|corriendo|paddling|moving|mueve|legs ~~ eyes|ojos ~3 open|abiertos ~~ drooling|babeando|drools|babea|foaming
    shudder*|tremor ~~ went|goes|gone ~ stiff|rigid -<legword>
    <shakes>|twitches|drool ~~ gone|went|goes|going|puso|quedo ~ all? stiff|rigid|tieso|tiesa|rigido -<legword>
    thrashing|flailing|convulsing ~~ side|eyes|wet|peed|drool|floor -<sleeping>
    temblar|temblando|temblaba|tembladera ~~ orino|meo|reconoc*|inconsciente|espuma|babe*
    stiff|rigid|stiffened|tieso|tiesa|rigido ~~ twitched|twitching|kicking|kicked|drooling|drooled|babeando|babeaba|babear|pateando|pataleaba|pataleando|sacudia|sacudiendo -<legword> -<walkword>
    seized ~2 <minutes>|<seconds>|minutes|seconds|again|twice
    tuvo|dio|dieron|tiene|dando|tenido ~ una|otra|la? crisis -<notattack>
    pataleaba|pataleo|pataleando|pataleaban|pedaleaba|pedaleando|pedalea ~4 aire|lado|suelo|acostado|acostada|tirado|tirada|costado|piso
    mueve|movia|moviendo|movio ~2 patas|patitas|piernas ~3 como|como_si ~3 corr*|nad*|pedal*|bici
    sacudia|sacudio|sacudidas|sacudiendose|sacudiendo|sacude|retorcia|retorciendose|convulsos ~~ bab*|espuma|orin*|meo|tieso|tiesa|ojos|mordia|inconsciente -<touched> -<coneword> -agua
    bab*|espuma|orino|meo|tieso|tiesa|ojos ~~ sacudia|sacudio|sacudiendose|sacudiendo -<coneword> -agua -<meds>
    engarroto|engarrotaba|engarroto|engarrotado -<legword> -frio
    shaking|jerking|twitching|shook ~~ peed|pissed|wet|soiled|pooped himself|herself|itself
    episode|episodio ~~ stiff|rigid|drooling|kicking|paddling|jerking|twitching|tieso|babe*|temblando|unconscious
    legs ~3 going|running|paddling ~~ drooling|foaming|unconscious|rolled|stiff
    staring|stared|mirando ~~ chewing|chomping|champing|masticando ~ air|aire|nothing|nada
    thrashing|flailing ~~ frothing|foaming|froth|foam|conscious|drooling -<sleeping>
    shakes ~ all over|body -hands -i
    went|goes|gone rigid|stiff ~ with|and ~2 head|neck|legs|eyes|back
    brincaba|brincando|brinca|saltaba ~2 todo ~2 cuerpo
    patalear|pataleando|pataleo|pataleaba ~~ espuma|baba|babeando
    echar|echo|echaba ~ espuma -<meds>
    fell|falls|cayo ~~ went|goes|puso|quedo ~ stiff|rigid|tieso|tiesa|rigido|rigida -<legword>
    went|goes|puso|quedo ~ stiff|rigid|tieso|rigido ~~ fell|falls|cayo -<legword>
    body|cuerpo ~2 went|puso|goes|quedo ~ stiff|rigid|tieso|rigido|duro -<legword>
    stiff|rigid|tieso|tiesa|rigido|rigida|duro|dura ~~ jerky|twitchy|frothing|foaming|temblar|temblo|sacudi*|convuls* -<legword> -<walkword>
    champing|chomping|snapping|clacking|chattering|masticando|mascando|trabo ~2 jaw|jaws|teeth|mandibula|quijada|dientes -at -food
    puso|quedo|esta duro|dura ~ como ~ tabla|palo|piedra
    mirada|eyes ~ perdida|glazed|vacant ~~ shaking|temblando|pataleando|babeando|drooling|twitching
    tirado|tirada|tiro|piso|suelo|side|costado|lado ~~ pataleando|patalea|paddling|twitching|drooling_and ~~ babeando|espuma|drooling|foam
    he|she|<patient> ~ seized -<seizedup> -up -the -toy -on -my -his -her -it
    <seizureword> -<notfit> -<notattack>
    seized_up -<seizedup>
    had|having|has|went|took|threw|suffered|got ~ a|into|another|some|two|first|second ~ fit|
        fits|convulsion|seizure
    paddling|paddled|paddle ~3 legs|feet|paws|air
    legs|paws|four|feet|patas ~4 paddling|paddled|pedaleando|pedaleo|jerking|twitching|
        running_in_the_air -<sleeping>
    jerking|jerked|jerks|twitching|thrashing|convulsing|spasming|shook|shaking|temblaba|
        sacudia|sacudidas|sacudiendo|sacudio ~5 all_over|uncontrollably|violently|whole_body|
        everywhere|whole|foaming|foam|todo_el_cuerpo|unconscious|todo|feo
    foaming|foam|frothing|froth|espuma|babeando ~4 mouth|boca|hocico -<meds>
    echando|echaba|sacaba|saca|salia|echo ~ espuma|espumita ~3 boca|hocico? -<meds>
    espuma ~3 boca|hocico -<meds>
    stiff|rigid|tieso|tiesa|rigido|rigida|stiffened|entieso|engarroto|engarrotado ~~ jerked|
        jerking|shaking|twitching|paddling|shook|temblando|sacudiendose|temblaba|thrashing|
        espuma|pedaleando|convulsed
    went|goes|gone|puso|quedo|se_puso rigid|stiff ~2 as|and|all|whole|tieso|como|like|board \
        -<legword> -<bellyctx>
    se puso|quedo tieso|tiesa|rigido|rigida -<legword>
    spasms|espasmos|fasciculations|tremors|sacudidas ~3 body|over|cuerpo|todo|whole|
        uncontrolled|uncontrollable|violent
    stiff|rigid|tieso|tiesa ~2 poker|board|plank|ramrod|tabla|palo
    legs|patas|four ~4 thrashing|cycling|pedalling|pedaling|flailing|kicking|twitching|jerking \
        ~4 about|all|wildly|side|air|lado|ground? -<sleeping>
    temblar|temblando|tiembla|temblaba|temblo|shaking|shook|trembling|twitching ~3 todo|whole|
        all|entire|over ~ cuerpo|body|over
    ojos ~3 fueron|voltearon|volteo|torcieron|blancos
    fueron|voltearon|volteados ~2 ojos
    uncontrollable|uncontrolled ~ shaking|tremors|trembling|jerking
    ojos en? blanco ~~ <seizureword>|temblando|tieso|tiesa|espuma|patas|temblaba
    eyes ~3 rolled|rolling ~~ shaking|jerking|stiff|twitching
    pedaleando|pataleando ~3 aire|lado|suelo|acostado|acostada|tirado|tirada
    legs|paws|feet|patas|patitas ~3 going|moving|kicking|pumping|moviendose|moviendo ~3 like|as|
        as_if|como ~4 run|running|swimming|bicycle|bike|cycling|corriera|corriendo|nadando|bici|
        bicicleta|race -<sleeping>
    <onside> ~~ paddling|jerking|twitching|legs_going|kicking|shaking|thrashing|patalear|
        pataleando|temblando|temblar|sacudiendose|convulsionando|pedaleando -<sleeping>
    jaw|teeth|mouth|mandibula|dientes ~2 champing|chomping|clenched|locked|trabada|trabados|
        apretada
    doesnt|didnt|not|no ~ know|recognise|recognize|reconoce|conoce ~ me|us|where -<seizureless> \
        +<shakes>
    body|cuerpo|muscles ~3 jerking|jerks|convulsing|twitching|spasming|sacudiendose|sacudia
    jaw ~2 chomping|clapping|clamping|snapping|chattering
    chewing gum fits
    = no fixed
    <neg> ~ seized|convulsed|fitted|convulsionado
    <neg> ~ vuelto ~ a ~ convulsionar|darle|dar ~2 ataque|convulsion
    <neg> ~3 <seizureword> -<notfit> -<seizedup>
    <neg> ~ more <seizureword>
    just|only|was|probably|solo|estaba|nomas dreaming|dreams|dream|soñando|sonando
    """,
}

NEGATED = {
    "seizure": {
        "yes": "no",
        "no": "yes",
    },
}

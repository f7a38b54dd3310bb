"""What stands beside a report and weighs nothing: hope, thanks, doubt, apology, worry, a
question whether it is normal.

``whole``: a formula from end to end. ``head``: where another statement begins, which reaches
to the next boundary. Read before phrases are joined, so every word stands alone here.
"""

from __future__ import annotations

CLASSES = {
    "aside_verdict": """
    ok okay normal fine alright right bad serious important relevant common usual expected
    nothing anything worrying dangerous urgent enough wrong good weird silly normalito grave
    malo bien nada serio importante comun bueno peligroso urgente algo
        """,
    "aside_fine": "fine ok okay good well great normal grand bien normal perfecto tranquilo tranquila",
    "aside_open": """
        hope hoping hopefully wish wishing praying is does do can could should would what whats
        any sure maybe ojala espero quiera sera que me puede pueden sabe tell please sorry pardon excuse forgive perdon perdone disculpe digame
        """,
    "aside_close": """
        ok okay normal fine alright right bad serious important relevant common usual expected
        nothing anything worrying dangerous urgent wrong good help matter matters think worry
        worried sign sooner better passes down know imagining overthinking dramatic asking bother
        grave malo bien nada serio importante comun urgente aconseja recomienda ayudar escribir
        pase preocuparme decirlo exagerando favor molesto it
        """,
    "aside_hope": "hope hoping hopefully pray praying espero esperemos ojala esperando",
    "aside_it": "it its that thats this is isnt be all hes shes everything isnt",
    "festive": """
        monday tuesday wednesday thursday friday saturday sunday weekend new easter xmas christmas
        holidays thanksgiving lunes martes miercoles jueves viernes sabado domingo ano navidad
        """,
    "aside_know": "know sure certain tell",
    "aside_help": "help advise answer reply ayudar ayudarme orientarme decirme",
    "aside_advice": "advice help thoughts opinion ideas suggestions input",
}

RULES = {
    "aside": """
    = whole
    <aside_hope> <aside_it> <aside_it>? not|just|only|all? a? <aside_verdict> healing|sign|thing?
    <aside_hope> <aside_verdict> -<askmark>
    <aside_hope> i|im am? not? overreacting|worrying|fussing|silly|bothering|disturbing|annoying you?
    if|is|are anyone|anybody|someone|somebody|you|youre|yous even|still? open|awake|there|around|up|online
    fingers crossed
    happy|merry|feliz|lovely <festive> year|nuevo|to? everyone|all|team|guys|folks|todos|todas?
    <aside_hope> you|u|yous|youre|everyone had|have|are|re|having? a? good|nice|lovely|great|well \
        weekend|day|week|evening|one|night|rest?
    wish he|she|they|it could talk|speak|tell
    i|we wish we|i knew
    i|we was|am|were|are? <aside_hope> you|someone can|could|might <aside_help> me|us?
    love|like|appreciate|welcome your|some|any|a <aside_advice>
    any <aside_advice> please|welcome|appreciated?
    dont|not|no|cant|hard know|sure|idea|tell|clue to? say? if|whether that|thats|its|it|this|hes|shes is? \
        <aside_verdict>
    dont|not|no know|sure|idea if|whether that|it|this matters|helps
    dont|not|no know|sure|idea if|whether i should be? worry|worried|concerned|call|ring
    dont|not|no know|sure|idea what to do|think|say|make
    maybe|probably|perhaps|surely|guess its|it|thats|is? just|only? <aside_verdict>
    could|might|may|must be just|only? <aside_verdict>
    oh well
    ni modo|hablar
    no rush|hurry|pressure|worries
    the|my|our other|old|second dog|cat|one|pup|dogs|cats is|are|was <aside_fine>
    el|la|mi|los|las otro|otra|otros|otras perro|perra|gato|gata|perros|perros|gatos esta|anda|come|estan|andan <aside_fine>
    if that|it|this makes sense
    if that|it|this helps|matters
    should i|we be? worry|worried|concerned|worrying
    do|should i|we need to worry|panic|call
    is that|this|it all? <aside_verdict>
    is that|this|it something|anything i|we|to should? be? worry|worried|concerned about?
    does|do that|this|it sound|look|seem <aside_verdict>
    am|maybe|might|probably|im i|im|just? probably|just|be|maybe? overreacting|paranoid|fussing
    what do you|u think|reckon
    what you|u think|reckon
    let me know what you think
    let me|us know please?
    sorry to|for bother|bothering|trouble|message|text|disturb|be you|a|so? late|again|nuisance|pain?
    sorry if|that this|its|it|im|i is|am? a? silly|stupid|dumb|daft|basic|long|late|bothering question|one|message|you?
    sorry for|about the|so? late|long|bother|another|all|early|trouble|many the? message|text|messages|texts|bother|questions|trouble|hour?
    apologies for the? message|bother|trouble|late|long message?
    dont|not|didnt|hate want|wanting|mean|like? to be|bother|trouble a|you|any nuisance|bother|pain|trouble?
    better safe than sorry
    just letting you know
    just so you know
    just checking in?
    just in case
    worried|scared|nervous|concerned|panicking|frightened sick?
    poor thing|baby|boy|girl|lad|love|fella|dog|cat
    bless him|her|them
    <aside_hope> que|y? no? sea|este|es|vaya|fuera|pase|haya a? ser? nada|algo? <aside_verdict>
    <aside_hope> que todo? este|salga|siga|vaya|sea todo? <aside_verdict>
    no se si es|sea|sera|esto|eso|este|esta eso|esto|es|sea? <aside_verdict>
    no estoy seguro|segura si es|sea <aside_verdict>
    no se si importa|sirve|importe|sirva
    no se si deba|debo|tenga|tengo|deberia? que? preocuparme|preocuparnos|llamar|llamarles|alarmarme
    no se que hacer|pensar|decir
    a lo mejor no? es|sea <aside_verdict>
    capaz|quiza|quizas|seguro|igual|chance que|y? no? es|sea <aside_verdict>
    tal vez no? es|sea <aside_verdict>
    a ver si no? es|sea <aside_verdict>
    dios quiera que? y? no? sea|es|este <aside_verdict>
    primero dios no? es|sea|sera <aside_verdict>
    es|sera|seria eso|esto|eso? <aside_verdict> eso|esto
    sera <aside_verdict>
    eso|esto es <aside_verdict>
    perdon|perdone|perdonen|disculpe|disculpen|disculpa|lamento|siento por|la|las|que|el? la|los|le|les|lo? molestar|molestia|molestias|molesto|moleste|molestarlos|molestarla|lata|hora
    no quiero|queria|quisiera dar|ser? molestar|molestarlos|lata|molestia
    que opina|opinan|piensa|piensan|cree|creen|opinas
    estoy|ando|me muy|tan|bien? preocupada|preocupado|asustada|asustado|nerviosa|nervioso|preocupa
    por si acaso|las|sirve
    solo|nomas aviso|avisaba|comento|informo|digo
    avisenme|aviseme|aviseme|diganme|digame|avisen por|porfa|cualquier? favor|cosa?
    quedo atenta|atento|pendiente
    quedo al pendiente
    pobrecito|pobrecita|pobre
    saludos
    me puede|pueden|podria|podrian ayudar|orientar|apoyar
    = front
    <aside_open> ~4 <aside_close>
    not|no|dont|cant sure|se|clue|idea|know|tell if|whether|si ~4 <aside_close>
    = head
    no idea if|whether
    hoping|wishing|praying i|we|that|thats|he|she|it|its
    i|we hope|hoping|pray
    hope|hoping|espero i|im|ive|we|you|u|youre|your|everyone|all|you|estar|haberlo|no
    hopefully|ojala|esperemos
    espero que
    not sure if|whether
    dont|don't know if|whether
    no se si
    should|shall i|we
    what do|should|can i|we|you|u
    let me know if|whether|what|when|how
    im|am worried|scared|afraid that
    """,
}

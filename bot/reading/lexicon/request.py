"""What the owner asks of the practice: a call back, an end to messages, later."""

from __future__ import annotations

CLASSES = {
    "callword": """
        call ring phone telephone callback call_back ring_back phone_back bell buzz llamar llame
        llamen llamada llaman llamarme llama llámenme llamenme marcar marquen marcarme marque
        marquenme hablar hablen hablarme hablenme telefonear comunicarse comuniquense
        comunicarme comuniquen telefonazo llamadita ringing calling
        fonazo timbrazo marcada toque telefonema ringback
        llamarnos marcarnos hablarnos rang phoned phoning
        """,
    "staff": """
        someone somebody anyone you nurse vet doctor surgeon tech receptionist girls team clinic
        reception practice doctora alguien ustedes veterinaria veterinario clinica enfermera dr
        dra staff lads
        persona
        """,
    "msgword": """
        message messages messaging msgs msg texts texting text reminders reminder notifications
        alerts mensaje mensajes recordatorio recordatorios msjs avisos notificaciones updates
        bot pings mensajitos
        """,
    "wecall": """
        911 insurance should_i_call if_he_calls ill_call will_call we_call i_called les_llamo
        los_llamo llamo yo_llamo debo shall_i
        """,
}

RULES = {
    "request": """
    = call_back
    id|i_would|wed ~ like|love|prefer|appreciate ~ a|the|some|one? ~ <staff> ~ to? call|ring|phone|contact
    contact|phone|ring|reach ~ me|us ~ please|asap|urgently|today|when|back|$ -<wecall>
    human|person|someone|somebody|anyone|nurse|vet|surgeon ~ to contact|reach|text|email ~ me|us
    echenme|denme|peguenme|echeme|deme|dame|pegame|echame|echen|den|pueden_dar ~ un|una <callword>|llamada|grito
    give ~ me|us a ~ <callword>|ring|bell|bell|tinkle
    <callword> ~2 me|us|back|nos|por_favor|please -<wecall>
    can|could|please|would|have|get|need|want|like|ask|pueden|puede|podrian|podria|puedes|
        quiero|necesito|por_favor|favor|me|nos|chance|if ~5 <staff>|me|nos ~4 <callword> \
        -<wecall>
    <staff> ~4 <callword> ~2 me|us|nos|home|mobile|landline|back -<wecall>
    me|nos pueden|puede|podrian|podria|puedes ~ <callword>
    que me|nos ~ <callword>
    need|want|like|love|quiero|necesito|quisiera|gustaria ~ to? ~ talk|speak|hablar|platicar|
        consultar ~ to|with|con ~4 <staff>|surgeon|human|person|persona
    speak|talk to|with ~3 vet|nurse|surgeon|doctor|someone|somebody|human|person|real
    hablar con ~3 doctor|doctora|veterinario|veterinaria|alguien|cirujano|enfermera|persona|
        humano
    call ~ back|please|me|asap
    a|phone|quick call ~2 when|if|back|convenient|sometime|today|please
    grateful|appreciate|like|want|need ~3 call|ring|phone_call
    por_favor|please|porfa|urge|urgente ~3 <callword> -<wecall>
    llamenme|llameme|llamame|marquenme|marqueme|marcame|hablenme
    callback|call_back|ring_back
    give ~ me|us ~2 call|ring|bell|buzz|shout
    could|can|may|chance|possible|would|like|love|want|need|appreciate|prefer|appreciated ~4 a|the|any|phone|of|get|quick ~ call|callback|phone_call|phonecall -<wecall> -<neg> -close
    call|ring|phone ~ from ~ <staff>|vet|nurse|surgeon|you|yous
    if|like|for|want|wish|have|get|ask|need ~ <staff> to? rang|called|phoned|ring|call|phone ~ me|us -<wecall>
    someone|somebody|anyone|anybody|person|human|alguien|quien ~ i|we|que|con|me|to ~ can|could|quien|pueda|puedo|podria|speak|talk? ~ talk|speak|hablar|chat|ask|llamar|pueda
    puede|pueden|podria|podrian|puedes|podrias|podes|pueda ~ hablarme|llamarme|marcarme|hablarnos|llamarnos|marcarnos
    me|nos llamas|llaman|llama|marcas|marcan|marca|hablan ~ cuando|porfa|por_favor|luego|hoy|please|pls|a|ahorita|al -<wecall> -se
    ^ me llamas|llaman|llama|marcas|marcan|marca|llamarian $
    quisiera|quiero|necesito|gustaria|urge ~ me? ~ comunicarme|comunicar|contactar|contactarme|hablar ~ con
    contact|reach|get_hold ~ of? me|us ~ by|on|at ~ phone|mobile|cell|number|landline
    please|pls|por_favor|porfa ~ ring|phone|call|llamen|llame|marquen -<wecall> -name
    phone|ring|call me|us -<wecall> -if -called
    alguien|someone|doctor|doctora|vet|enfermera ~ que|who|can|could|me|nos ~ me|nos? ~ hable|llame|marque|ring|call|phone ~ me|us|al|a|por|hoy|porfa?
    ring|call|phone when|once|as ~ you|u|soon ~ get|can|have|are|as
    pasenme|paseme|comuniquenme|comuniqueme|pongame|ponganme ~ con|al
    necesito|espero|quiero|quisiera|ocupo|agradeceria ~ una|su|tu|la|alguna llamada|llamadita
    glad|grateful|happy|pleased|appreciative ~ of|for|to ~ a|get|have? ~ call|ring|phone_call|callback
    favor|bondad|amabilidad|posibilidad ~ de ~ que|me? llamarme|marcarme|hablarme|llamar|marcar|llamen|marquen
    = stop
    no_need|dont|stop|no ~3 keep|need|more? pinging|messaging|texting|contacting|sending|writing|notifying
    borren|borra|borrar|quiten|eliminen|saquen|saquenme|delete|remove ~2 mi|my|me numero|number|contacto|phone
    done|finished|over here|now ~~ pinging|messages|texts|messaging
    switch|turn|shut|take|turning|switching ~3 <msgword> ~ off
    switch|turn|shut ~ off ~4 <msgword>
    ^ stop|baja|alto|unsubscribe|parar|cancelar|unenroll|basta|detener $
    ^ stop|unsubscribe|basta|cancelar
    stop|stopping|quit|cease|dejen|deja|paren|para|parar|detener|cancel|cancelar|end|suspend|
        unsubscribe|turn_off|no_more|basta ~5 <msgword>
    stop|quit ~3 texting|messaging|sending|contacting|pinging|bothering
    dejar|dejen|deje|dejan ~ de? mandar|enviar|escribir|mandarme ~2 <msgword>?
    ya no ~3 <msgword>|manden|mande|envien|mandes|escriban
    no ~4 quiero|more|mas|want|need|manden|envien|mande|envie|mandarme ~4 <msgword>
    dont|do_not|stop ~2 message|text|send|contact ~ me|us|any|this
    unsubscribe|opt_out|darme_de_baja|dar_de_baja|dame_de_baja|denme_de_baja|baja_del
    take|remove ~ me|us off|from ~3 list
    leave ~ me|us alone
    <msgword> ~4 stop|parar
    <neg> ~3 want|need|like|wish|receive|get ~4 <msgword> ~ anymore|any_more|any|more|again?
    enough|sick|fed_up|tired|had_it|harto|harta|cansado|cansada ~ with|of|already|de ~3 <msgword>
    you ~ can|may|could ~ stop ~ now|messaging|sending|asking|texting|these|with|writing|checking
    ^ end|quit|cancel|fin|termina|terminar $
    no ~ me? ~ escriban|escriba|escribas|manden|mande|mandes|molesten|moleste|envien ~ mas|nada|por_favor|porfa|ya
    no ~ quiero|queremos|deseo ~ recibir
    quiten|quitenme|saquen|saquenme|borren|borrenme|eliminen|eliminenme|quitame|quitenme ~ de ~ la|su|el|lista|aqui|grupo|esto
    dejen|deje|dejar|dejenme|paren ~ de? ~ molestar|escribir|escribirme|mandar|mandarme|fregar|chingar|enviar|en_paz
    paren|parenle|pare ~ con ~3 <msgword>
    neednt|need_not|no_need|dont_have_to|dont_need_to ~ send|message|text|write|keep|contact|check ~ any|us|me|to|more
    no ~ longer ~ want|need|require ~3 <msgword>|this|it|these
    discharged|signed_off|alta|finished ~~ stop|dejen|neednt|no_need|no ~2 <msgword>|escribirme|escriban|messaging|send|texting
    <neg> ~ need|want ~ these|this|those|them ~ anymore|any_more|any_longer|messages -<meds> -<coneword>
    take|remove|drop|get ~ me|us off ~ this|of|the|your|here
    cancelen|cancela|cancele|cancelar|suspendan|quiten ~ los|las|mis|el|la ~ <msgword>
    quiero|queremos|deseo|quisiera|me_gustaria ~ cancelar|desuscribirme|salirme|salir_de|darme_de_baja
    enough ~ <msgword> ~ now|thanks|thank_you?
    = snooze
    esperame|espereme|esperenme|aguantame|aguanteme|dame|deme|denme ~ tantito|tantitito|poquito|un_ratito|un_momento|un_rato|chance
    ^ esperame|espereme|aguantame|aguanteme
    avisame|aviseme|avisenme|recuerdame|escribeme|preguntame|buscame ~ a|en|por ~ esa|esta|la ~ hora|noche|tarde
    remind|ping|nudge|ask|message|text ~ me|us? ~ then|at_that_time|around_then|when
    pause|pausa|pausar|hold_on|wait|espere|espera|esperen|esperame|esperenme|posponga|pospon|posponer|delay|postpone ~ it|this|un|unos|por|for|me|about|like? ~ <minutes>|<hours> -<vomit> -<neg>
    ratito|rato ~ contesto|aviso|respondo|digo|escribo
    ill|i_will ~2 answer|reply|respond|write|text ~ in_the_morning|tomorrow|later|tonight
    ask|remind|nudge|ping|prod|poke|message|text|try|check|write ~2 me|us|with_me ~4 later|tonight|tomorrow|again|around|after|manana|noche|rato
    luego|despues|al_rato|ahorita ~ t|te|les|le digo|aviso|contesto|respondo|cuento|escribo
    voy|estoy manejando|en_junta|trabajando|ocupado|ocupada
    nudge|ping|prod me
    ^ snooze
    please|pls snooze
    snooze ~ it|this|reminder|that|until|till|<minutes>|<hours>
    remind ~3 later|tomorrow|in|again|hour|hours|minutes
    ask ~2 again|later ~ later|in|tomorrow
    recuerdame|recuerdeme|recuerdenme|recordarme|recuérdame ~4 luego|rato|tarde|despues|hora|
        horas|manana|en|minutos|media|minutitos
    preguntame|preguntenme|preguntame ~3 luego|rato|tarde|despues|hora|en
    later ~ please|pls
    ^ later $
    ^ luego|al_rato|mas_tarde|despues $
    ^ luego|al_rato|mas_tarde|despues ~ se|lo|la|le|les|los|las? ~ lo|la|los|las? doy|damos|hago|hacemos|pongo|ponemos|saco|sacamos
    ^ luego|despues de|del ~ desayuno|desayunar|almuerzo|almorzar|comida|comer|cena|cenar|trabajo $
    not now|rn
    ahorita ocupado|ocupada|estoy
    al rato $
    busy|at_work|driving|in_a_meeting|manejando|en_una_junta ~3 later|rato|luego|remind|now
    ask me later|tomorrow
    in ~ <minutes> please|again
    ping me later
    check back later
    te|les digo|aviso|contesto|respondo ~ luego|rato|tarde|despues|al_rato
    ill ~2 answer|reply|get_back|respond|let_you_know|do_it ~ later|tomorrow|soon
    remind|nudge|ping|prod|poke|message|text|ask|try|recuerda|recuerdame|recuerdamelo|recuerdanos|recuerde|recuerdeme|recuerdenme|recuerdemelo|recuerdenmelo|recordame|recordarme|avisame|preguntame|escribeme ~2 at|in|a|en|on|after|dentro ~ a|las? <clock>|<minutes>|<hours>|morning|hour|bit|while|lunch|dinner
    remind|nudge|ping|recuerda|recuerdame|recuerdamelo|recuerdanos|recuerde|recuerdeme|recuerdenme|recuerdemelo|recuerdenmelo|recordame|recordame|recordarme ~3 <clock>|<minutes>|<hours>|tonight|tomorrow|later|morning|noche|rato
    will|ill|we|i ~ do|give|answer|reply|check|look|send|get|tell|update ~ it|that|him|back|to|you? ~ later|after|tonight|tomorrow|soon|when_i|once -<askmark> -yet -not -todavia -aun -should -shall
    give|dame|deme|denme ~ me|us? ~ a|un|una|like|5|ten|another? ~ <minutes>|<hours>|minute|min|sec|second|moment|while|bit|ratito|rato|minuto|minutito|momento|momentito|segundo|chance|tiempo|mins -<callword> -call
    ^ driving|manejando|busy|ocupado|ocupada|conduciendo|trabajando|working|at_work|snoozing $
    ^ in|en|dentro ~ de|like|about|un|una? <minutes>|<hours> $
    ^ in ~ a ~ bit|sec|while|minute|moment|mo|min|few $
    ^ not right|just now
    ^ ahora|ahorita|ahora_mismo|horita no|ocupado|ocupada|estoy ~ mismo|puedo? $
    al_rato|al_ratito|ratito|luego|luegito|mas_tarde|despues|en_un_rato ~ te|le|les|lo ~ digo|aviso|contesto|respondo|mando|escribo|cuento
    te|les|le ~ aviso|digo|contesto|respondo ~ luego|rato|tarde|despues|al_rato|al_ratito
    mas|más tarde -<eat> -<meds> -<vomit> -<walkword> -<gave>
    dejame|dejeme|let_me|lemme ~ ahorita|llegar|salir|get|finish|terminar|acabar|check ~ home|de|y|this|and?
    ask|try|text|message|remind|ping ~ me|us|again? ~ later|tomorrow|tonight|mañana|manana
    give me ten|five|fifteen|twenty|5|10|15|20|30|thirty|<number> $
    preguntame|preguntenme|recuerdame|escribeme|avisame|buscame ~ mañana|manana|noche|tarde|luego|rato|ratito
    mas al|en_un rato|ratito
    ^ en|al|dentro ~ de? ~ un? ratito|rato|momento|momentito|poco $
    ^ ratito|ahorita|ahoritita|orita $
    ^ al ratito $
    ^ after|despues|cuando ~ del|de|i|we|la|get|salga|llegue ~ work|trabajo|home|jale|chamba|lunch|dinner|casa $
    im|i_am|estoy|ando|voy|iba|currently ~ driving|manejando|conduciendo|en_carretera -<neg> -him -her -crazy -mad
    = snooze @asked-dose @asked-ice @asked-warm_compress @asked-massage @asked-walk
    estoy|ando|i_am|im ~ en|in|at|on ~ una|el|la|a|my|the? ~ junta|reunion|clase|clases|trabajo|oficina|jale|meeting|class|work|train|bus|shift|call|break|camino|hospital|consulta
    cant now|yet|atm|today_now
    no ~ puedo ahora|ahorita|orita
    ^ tomorrow|mañana ~ morning|temprano $
    = snooze !@asked-cone
    ahorita no
    = snooze @asked-ice @asked-warm_compress @asked-massage @asked-walk
    al_rato|al_ratito|luego|despues|mas_tarde|en_un_rato ~ se? ~ le|lo|la|las ~ pongo|hago|doy|saco|reviso|damos|hacemos
    en|in|dentro ~ de? <minutes>|<hours> ~ lo|la|le|i|we|ill ~ hago|pongo|doy|saco|do|will
    """,
    "idiom": """
    = void
    he|she|hes|shes|him|her|it ~ calls|calling|called|cries|shouts ~ for|out|to ~ me|us
    vet|clinic|nurse|they|doctor|someone|surgeon|you|reception|receptionist called|rang|phoned ~ me|us|back -if -want -would -until
    ya me|nos llamaron|marcaron|hablaron
    """,
    "mood": """
    = phatic
    no|zero|sin|ninguna|ningun|cero ~ question|questions|duda|dudas|pregunta|preguntas
    que tal ~ te|les|le|doctora|doc|cuento
    puedo ver|sentir|oler|notar|escuchar -<askmark>
    = question
    ^ cuando es|son|sera|seria|abren|cierran|empieza|empiezan
    ^ cuando le quitan|sacan|retiran|quitamos ~ puntos|grapas|suturas|cono|vendaje $
    ^ donde es|estan|queda|quedan|compro|consigo
    ^ a que hora
    ^ cada cuanto|cuantas|cuantos
    ^ cada que ~ tiempo|hora|horas
    ^ con que|cuanto
    ya ~ lo|la|le puedo|podemos|podria|pueden ~ banar|bañar|sacar|quitar|dejar|pasear|dar|soltar|subir
    ^ ya ~ puede|podra ~ banarse|bañarse|salir|correr|caminar|subir|jugar|brincar|comer
    ok|k hago|hacemos
    la|lo|las|los ~ doy|pongo|quito|repito ~~ o|u ~ espero|no|mejor
    la|lo|las|los doy|repito|pongo +<askmark>
    ^ can|could|may|should|do|will|would dogs|cats|puppies|animals|pets|i|he|she
    ^ que puede|puedo|debe|debo|deberia ~ comer|tomar|dar|darle|hacer|ponerle
    ^ hasta cuando
    ^ a partir de cuando
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {
    "request": {},
}

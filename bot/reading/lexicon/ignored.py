"""An owner whom nobody answers, who will ring, or is on the way: the practice calls back.

"Nobody answers me" is anger at the practice, and no patient that does not respond: read so
only of those who may answer (people, the telephone), never of waking.
"""

from __future__ import annotations

CLASSES = {
    "phonedus": """
        marcando llamando llame llamado marque marcado escribiendo escribi escrito hablando mandando llamo marco escribo
        ringing calling phoning rang called phoned ring call messaging messaged writing written wrote texting texted emailing emailed dialling dialing
        """,
    "phonebot": """
        buzon contestadora maquinita maquina grabadora robot espera conmutador
        voicemail voice_mail answerphone answering_machine answer_machine message_bank messagebank robot bot machine hold engaged busy_tone busy_signal engaged_tone on_hold
        """,
    "answers": """
        answer answers answering answered respond responds responding responded reply replies
        replying replied react reacts reacting pick_up picks_up picking_up get_back gets_back
        contesta contestan contesto contestaron contestar responde responden respondio
        respondieron responder reacciona reaccionan atiende atienden hace_caso hacen_caso
        response responses
        """,
    "noanswerer": "nobody no_one noone nadie none_of_you not_one_of_you not_a_single_person",
    "answerplace": """
        clinic practice vets surgery reception receptionist phone line telephone
        hospital clinica telefono recepcion doctor doctora mensajes messages texts emails whatsapp
        """,
}

RULES = {
    "request": """
    = call_back
    been|ive|weve|i|we|tried|keep ~2 <phonedus> ~2 you|yous|u|clinic|practice|vets? ~2 since|all|for|nonstop|non_stop|constantly|repeatedly|and|three|four|five|times -me -us -dog -name -ambulance
    been <phonedus> ~ you? ~ since|all|for
    llevo|llevamos|ando|estoy|he|hemos|seguimos|sigo ~5 <phonedus> -me -nos
    llevo|llevamos ~5 llamando|marcando|escribiendo|esperando ~ su? ~ llamada|respuesta|contestacion?
    <phonedus> ~~ <phonebot>
    me|nos ~ manda|mandan|pasa|pasan ~ a|al|directo|con ~ un|una|el|la|directo? <phonebot>
    goes|went|going|get|got|getting|straight ~ straight? ~ to|through|only|the|a|your ~ a|the|your? <phonebot> -on_hold
    put|left|stuck|kept ~ me|us? ~ on hold
    me|nos ~ dejaron|dejan|tienen|tuvieron|traen ~ colgado|colgada|colgados|esperando|plantado|plantada|en_espera|en_la_linea|en_visto
    waiting|waited|waits ~3 call|callback|reply|answer|response|phone_call|ring -<coneword>
    espero|esperando|esperamos ~3 llamada|respuesta|contestacion|llamen|contesten|respondan|hablen
    promised|promise|swore|supposed ~4 call|ring|phone|callback -<neg>
    said ~ youd|you_would|theyd|they_would|someone|somebody ~2 call|ring|phone
    quedaron|prometieron|dijeron|quedo|prometio|iban ~ que|de|en|a|me|nos ~2 llamar*|hablar*|marcar*|llamaban|hablaban|marcaban|comunicar*
    no|nunca|ni ~ me|nos ~ devuelven|regresan|devolvieron|regresaron|regreso|devolvio|han_devuelto ~ la|las|el|mi|mis|ni? ~ llamada|llamadas|mensaje|mensajes
    never|not|hasnt|havent|didnt|dont|wont|nobody|noone|no_one ~2 returned|returns|return|returning ~ my|our|the|a? call|calls|message|messages
    second|third|fourth|fifth|sixth|2nd|3rd|4th|5th|umpteenth|nth|hundredth|tenth time ~~ <phonedus>|asking|asked|message|call
    segunda|tercera|cuarta|quinta|sexta|decima|enesima vez ~~ escribo|llamo|marco|pido|hablo|pregunto|mando
    two|three|four|five|six|several|many|so_many|2|3|4|5|6|countless ~ messages|calls|texts|emails|voicemails ~~ <neg>|zero|none|nobody|still
    dos|tres|cuatro|cinco|varios|varias|tantos|mil ~ mensajes|llamadas|correos ~~ ni|no|nada|nadie|cero|sin
    zero|no|any|without ~ answers|replies|responses
    cero|sin|ninguna|ni_una|ni ~ respuestas|respuesta|contestacion
    ni ~ contestan|responden|contestaron|pelan|atienden|toman_la_llamada|llaman|hablan $
    ^ contesten|contestenme|contesteme|respondan|respondanme|haganme_caso|peleme|pelenme|atiendanme
    not|none|nobody ~ a? ~ one|single|of ~3 decency|courtesy|bothered|bother ~ to
    sick|tired|fed_up|done|had_enough ~ of|with ~ talking|speaking|typing|texting|writing|chatting|dealing ~ to|with ~ a|this|the|your? <phonebot>|computer
    harto|harta|cansado|cansada|hartos ~ de ~ hablar|escribir|escribirle|hablarle|tratar|platicar ~ con|a|le? ~ una|un|esta|este|la|el? <phonebot>
    <neg> ~4 real|actual|live|single human|person|being
    real|actual|live|proper|human human|person|being|vet|nurse|voice ~3 contact|talk|speak|reach|answer|reply|ring|call|me|us|please
    quiero|necesito|hay|pasen|pasenme|comuniquen|ningun|un|alguna|alguien ~3 ser_humano|persona_real|humano|persona_de_verdad|persona_de_carne
    nadie|ninguno ~3 da|dan|dieron ~ la ~ cara
    anybody|anyone|somebody|someone ~ even|actually|there|is|ever? reading|reads|read|listening|monitoring|there|home|alive ~ this|these|messages|my|it|or|out|at|$
    alguien ~ lee|leyendo|leen|ahi|escucha|contesta|atiende|responde -<gave>
    hay alguien ~ ahi|alli|aqui|que_conteste|del_otro_lado
    get|getting ~ an? answer|hold|through ~3 phone|you|anyone|line
    pesimo|pesima|mal|mala|horrible|malisimo|terrible servicio|atencion|trato
    terrible|awful|shocking|appalling|disgraceful|rubbish|poor|shit|crap|worst|dreadful service|communication|aftercare|customer_service
    falta ~ de ~ respeto|profesionalismo|seriedad|atencion|etica
    you|yous ~ people|lot|guys|all? ~ are|r ~ useless|hopeless|a_joke|a_disgrace|rubbish|shocking|unbelievable
    son|ustedes ~ unos|una|puros? inutiles|incompetentes|irresponsables|desgraciados|verguenza
    disgusted|fuming|furious|livid|appalled ~~ answers|answer|call|calls|called|reply|replies|service|nobody|messages|you|staff|clinic|practice
    estoy|estamos ~ muy|bien|super|que? ~ enojado|enojada|furioso|furiosa|encabronado|encabronada|indignado|indignada|molesto|molesta ~~ llamada|llamadas|llaman|contestan|responden|servicio|ustedes|nadie|clinica|devuelven
    <noanswerer> ~3 <answers>|called|calls|calling|rang|rung|phoned|llama|llamo
    <noanswerer> ~ of|here|there? ~2 <answers>
    <answerplace> ~ never|dont|doesnt|not|wont|havent|arent|no|nunca ~3 <answers>
    you|yous|ustedes never|dont|wont|havent|arent|no|nunca ~2 <answers>
    no|never|nunca|ni ~ me|nos|even? ~ <answers> ~2 <answerplace>
    no|never|nunca ~ single|one? ~ <answers> ~ at_all? ~ from ~ you|<answerplace>
    no|nunca ~ me|nos contestan|responden|contestaron|respondieron|atienden|hacen_caso|reaccionan
    no|any|still ~ answer|reply|response|respuesta ~ at_all? ~ from|de ~ <answerplace>|you|people|ustedes
    no answer|reply|response|respuesta ~ when|cuando ~ i|we|les|los? call|ring|phone|llamo ~ you|yous|ustedes|$
    nadie me|nos ~ <answers>|pela|atiende
    por que|porque no ~ me|nos? contestan|responden|contestaron|respondieron|reaccionan|atienden
    no|not ~ one|single ~ of ~ you ~3 <answers>
    ill|well|will|voy|vamos ~ just|a? ~ ring|phone|call|telephone|llamarles|llamarlos|marcarles you|them|yous|ustedes|$
    will|ill|voy|vamos ~ give|dar ~ you|les ~ a|un|una call|ring|bell|shout|llamada|telefonazo
    vamos|voy|estamos ~ saliendo|llegando|entrando ~ para|a|al|hacia|en ~ la|el|alla <answerplace>|urgencias|alla|veterinaria|vet
    ^ were|im|we ~ are? outside $
    calling|ringing|phoning ~ you|them|the ~ clinic|vet|vets|hospital|now|straight|right|again?
    les|los|las marco|llamo|hablo -no
    driving|heading|headed|rushing|racing|manejando|coming ~2 to|over|in|para|hacia|alla ~2 you|clinic|hospital|vet|vets|er|alla|clinica|urgencias
    pulled|pulling|parked|parking|outside|afuera|parqueando ~2 in|into|at|your|the|de|la|el? ~2 car_park|carpark|parking|clinic|hospital|practice|vets|clinica|veterinaria
    ^ at|in the hospital|clinic|vets|er ~ now|already|here? $
    """,
}

"""An owner whom nobody answers, who will ring, or is on the way: the practice calls back.

"Nobody answers me" is anger at the practice, and no patient that does not respond: read so
only of those who may answer (people, the telephone), never of waking.
"""

from __future__ import annotations

CLASSES = {
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

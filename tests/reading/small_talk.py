"""Words of no weight, put together from parts: hope, thanks, apology, doubt, worry, a joke, the
weather, visitors, work, other topics, questions of every kind.

Every list of parts is dealt out by turns into two halves. With ``SEEN`` the reader may be
mended; ``KEPT`` is only measured, and nobody looks at what falls.
"""

from __future__ import annotations

from itertools import product
from typing import Final

EN: Final = {
    "hope": (
        "hope | hoping | i hope | hopefully | really hope | praying | fingers crossed | im "
        "hoping | lets hope | just hope | we hope | i do hope",
        "thats ok | its nothing | its not serious | this is normal | you can help | you had "
        "a good weekend | im not wasting your time | its just the stitches settling | youre "
        "not too busy | someone sees this | you dont mind me asking | this is the right "
        "number | it passes | everyone at the clinic is well | it gets better soon | the "
        "weather clears up",
    ),
    "wish": (
        "wish | i wish | just wish | honestly wish",
        "id noticed sooner | i knew what to do | he could talk | you were open at night | "
        "id rung earlier | we lived closer | i had taken a photo | someone had warned me | "
        "my partner was home | i was better at this | i could sleep | it was over",
    ),
    "thanks": (
        "thank you | thanks | many thanks | thanks so much | thank u | cheers",
        "for everything | in advance | for being there | for your patience | for getting "
        "back to me | doctor | for all you do | for the reminder | for reading this | again",
    ),
    "sorry": (
        "sorry | so sorry | im sorry | apologies | sorry again",
        "to bother you | for the late message | if this is silly | for all the messages | "
        "for the spelling | about the hour | for going on | to be a pain | i forgot to say "
        "| if i worry too much",
    ),
    "doubt": (
        "not sure | dont know | no idea | i cant tell | im unsure | dunno | not certain | "
        "im not sure",
        "if thats normal | if it matters | if i should worry | what to do | what that means "
        "| if im imagining it | whether to call | if this is urgent | who to ask | how to "
        "describe it",
    ),
    "fear": (
        "im worried | im so scared | im freaking out | getting nervous | bit concerned | im "
        "panicking | im in bits",
        "here | now | to be honest | and alone | about it all | tonight | and cant sleep | "
        "please help",
    ),
    "joke": (
        "haha | lol | honestly | typical | you couldnt make it up | story of my life",
        "what a night | he keeps us busy | its always on a sunday | never a dull moment | "
        "ill need a holiday | my hair is going grey | the drama | whats next",
    ),
    "weather": (
        "its | it is | its been",
        "pouring here | so hot today | freezing outside | really windy | lovely and sunny | "
        "a grey day | snowing again | wet all week",
    ),
    "home": (
        "we have visitors | my sister is staying | the kids are off school | my husband is "
        "away | the neighbours are noisy | my mum is coming over | we just moved house | "
        "the builders are in | my boss is on the phone | our car is in the garage",
        "today | this week | until friday | again | at the minute | so its busy here | if "
        "that matters | as you know",
    ),
    "work": (
        "i was at work | i work nights | ive got a meeting | im on the train | i have to "
        "drive to town | i start early | im off out",
        "all day | tomorrow | at nine | in a bit | until six | with no signal | so text me",
    ),
    "other": (
        "ps | also | by the way | oh and | one more thing | unrelated but",
        "the app is lovely | i paid the bill | we still have your towel | your receptionist "
        "was so kind | ill bring the form on monday | i need a receipt | we love the little "
        "reminders | his insurance came through | your card number changed",
    ),
    "question": (
        "can you tell me | quick question | do you know | let me know | could you say | "
        "just asking | wondering",
        "what time you open | if you do saturdays | how much the visit costs | when the "
        "stitches come out | is the vet in today | where to park | who is on tonight | if "
        "you got my email | if i can pay later | do you read these at night",
    ),
    "asked": (
        "is that | is this | could that be | would that be | might this be",
        "normal | ok | bad | just the medicine | to be expected | something to worry about "
        "| from the drugs | a problem | urgent | my fault",
    ),
    "advice": (
        "what should i do | what do i do | what do you think | what would you do | should i "
        "wait | should i come in | do i call someone | can i do anything | is anyone there "
        "| does it matter | am i overreacting | should i be worried",
        "please | now | about that | at this hour | here | or not | tonight | thanks",
    ),
    "excuse": (
        "i was | im | maybe im | probably",
        "just being silly | overthinking | a bit tired | rambling | typing with one hand | "
        "new to this | the anxious sort | paranoid",
    ),
    "hearsay": (
        "my mum says | the internet says | a friend told me | my husband thinks | the "
        "neighbour reckons | google says",
        "its nothing | not to worry | its normal | i fuss too much | to wait | everything "
        "and nothing | to ask you | hes fine",
    ),
    "greeting": (
        "hi | hello | hiya | good evening | morning | hey there | hello again",
        "its me again | all | doctor | team | hope youre well | quick one | me with another "
        "one | everyone | its rosies mum | just an update",
    ),
}
ES: Final = {
    "hope": (
        "espero | ojala | espero que | ojalá que | dios quiera que | esperemos que | "
        "esperando que | primero dios",
        "no sea nada | sea normal | no sea grave | todo salga bien | se le pase pronto | me "
        "puedan ayudar | me lean pronto | estén muy bien | no sea tarde para escribir | "
        "alguien conteste | tengan buen día | mejore el clima",
    ),
    "wish": (
        "quisiera | me gustaría | cómo quisiera | ojala pudiera",
        "saber qué hacer | no molestar tanto | haberme dado cuenta antes | dormir un poco | "
        "que hablara | vivir más cerca | tener su paciencia | mandarle una foto | que ya "
        "pasara todo | entender más",
    ),
    "thanks": (
        "gracias | muchas gracias | mil gracias | se lo agradezco | muy agradecida",
        "por todo | doctora | de antemano | por su paciencia | por contestar | de verdad | "
        "por el recordatorio | siempre | por estar ahí | otra vez",
    ),
    "sorry": (
        "perdón | disculpe | perdone | una disculpa | qué pena",
        "por la hora | la molestia | por molestar tanto | si es una tontería | por tantos "
        "mensajes | la mala letra | que pregunte | por la tardanza | con usted | si exagero",
    ),
    "doubt": (
        "no sé | no estoy segura | quién sabe | ni idea | no tengo idea | no sabría decir",
        "si es normal | si sea grave | qué hacer | si me preocupo de más | a quién "
        "preguntar | si es urgente | qué significa | cómo explicarle | si importa | si "
        "llamar",
    ),
    "fear": (
        "estoy preocupada | tengo miedo | ando muy nerviosa | estoy asustado | me preocupa "
        "| estoy que no duermo",
        "la verdad | mucho | hoy | ahorita | y sola | en serio | por favor ayuda | como "
        "nunca",
    ),
    "joke": (
        "jaja | ay dios | así es la vida | qué cosas | este perro me va a sacar canas | de "
        "película",
        "qué noche | siempre en domingo | nunca me aburro | ya ni modo | voy a necesitar "
        "vacaciones | quién me manda | pura aventura | ni en las novelas",
    ),
    "weather": (
        "hoy hace | aquí hace | ha hecho | está haciendo",
        "mucho calor | un frío horrible | bastante viento | buen clima | un sol bonito | un "
        "día gris | mal tiempo | un bochorno",
    ),
    "home": (
        "tenemos visitas | vino mi hermana | los niños no tienen clases | mi esposo está de "
        "viaje | los vecinos hacen ruido | viene mi suegra | nos acabamos de mudar | hay "
        "albañiles en casa | mi jefe me está llamando | no tengo carro",
        "hoy | esta semana | hasta el viernes | otra vez | por ahora | ya sabe | por si "
        "importa | toda la tarde",
    ),
    "work": (
        "estoy en el trabajo | trabajo de noche | tengo junta | voy en el camión | salgo "
        "temprano | entro a las nueve | ando en la calle",
        "todo el día | mañana | sin señal | hasta las seis | así que escríbame | como "
        "siempre | al rato",
    ),
    "other": (
        "por cierto | ah y | otra cosa | también | oiga | fuera de tema",
        "ya pagué la cuenta | me encanta la aplicación | les debo una toalla | la "
        "recepcionista fue muy amable | el lunes llevo el papel | necesito factura | ya "
        "llegó el seguro | cambié de teléfono | me gustan los recordatorios",
    ),
    "question": (
        "me puede decir | una pregunta | sabe usted | quería saber | una duda | me dice",
        "a qué hora abren | si atienden sábados | cuánto cuesta la consulta | cuándo le "
        "quitan los puntos | si está la doctora | dónde me estaciono | quién está de "
        "guardia | si recibió mi correo | si aceptan tarjeta | si leen esto de noche",
    ),
    "asked": (
        "es | será | eso es | esto es | podría ser",
        "normal | malo | grave | por la medicina | de esperarse | algo serio | mi culpa | "
        "urgente | común | de cuidado",
    ),
    "advice": (
        "qué hago | qué debo hacer | qué opina | usted qué haría | me espero | lo llevo | "
        "llamo a alguien | hay alguien ahí | importa | estoy exagerando | me preocupo | "
        "puedo hacer algo",
        "por favor | ahora | o no | a esta hora | gracias | entonces | doctora | hoy",
    ),
    "excuse": (
        "a lo mejor | capaz que | yo creo que | seguro",
        "exagero | soy muy nerviosa | ando cansada | son cosas mías | me estoy imaginando "
        "cosas | soy una histérica | me preocupo de más | estoy loca",
    ),
    "hearsay": (
        "mi mamá dice | en internet dice | una amiga me dijo | mi esposo cree | la vecina "
        "dice | según google",
        "que no es nada | que es normal | que no me preocupe | que espere | de todo | que "
        "le pregunte | que exagero | que ya pasará",
    ),
    "greeting": (
        "hola | buenas noches | buenos días | buenas | qué tal | buenas tardes | hola otra "
        "vez",
        "soy yo otra vez | doctora | a todos | equipo | espero que estén bien | una "
        "consulta | otra vez molestando | a ver si me ayuda | soy la mamá de rosita | le "
        "cuento",
    ),
}  # fmt: skip
"""Kind → how it begins, how it goes on; every beginning goes with every end."""


AS_WRITTEN: Final = """
hope thats ok | hope that's normal | i hope its nothing | hopefully its fine | fingers crossed
hoping its just normal healing | hope you had a good weekend | hope i'm not bothering you
i wish he could talk | i was hoping you could help | would love your advice | any advice please
not sure if thats normal | dont know if its important | no idea if thats bad | does it matter
if that makes sense | if that helps | should i worry | is that ok
is this something to worry about | am i overreacting | probably nothing | could be nothing
what do you think | let me know | sorry to bother you | sorry for the late message
sorry if this is a silly question | dont want to be a nuisance | better safe than sorry
thanks in advance | thank you so much | im so worried | poor thing | just letting you know
just so you know | oh well | no rush | no sé si es normal | espero que no sea nada
ojalá no sea grave | no sé si preocuparme | a lo mejor no es nada | dios quiera que no sea nada
perdón por molestar | disculpe la molestia | no quiero molestar | es normal eso | será normal
qué opina | estoy preocupada | por si acaso | gracias | muchas gracias doctora | quedo atenta
saludos | pobrecita | me puede ayudar | ok so dont panic but | hiya only me again
probably nothing as usual with me but | right quick update from us | hope your weekend was lovely
not being funny but | me again the anxious one | aquí molestando otra vez
fíjese que no quiero alarmar pero | espero que tengan bonito día
buenas tardes una consultita rápida | ojalá no sea nada pero | hope youre all keeping well
just a daft question | wishing you all a merry xmas | sorry its so early | ojalá tengan buen turno
tengo una pregunta | deseo que se encuentren muy bien | hola soy yo otra vez
longing for some sleep here | happy sunday everyone | wondering if youre open
i feel so silly asking | ojalá estén de guardia | quisiera platicarles algo
perdone mi ignorancia | no sé por dónde empezar | praying someone is up | just wanted to ask
hoping to hear from you | afternoon all hope youre well | espero no interrumpir
quería preguntarles | ojalá me puedan contestar | hola equipo lindo | hope its ok to write here
long time no speak | wish i didnt have to write again | excuse the hour | qué tal doctora
espero se encuentren bien | me da pena preguntar | oiga una cosa | dunno if u need to know that
my sister reckons its nothing | god i hate this | ps love the little reminders
the internet says all sorts | sorry typing with one hand | im sure youve seen worse
gonna make a cup of tea | thank god its friday tomorrow | would hate to waste your time
please dont laugh | is this chat even read at night | first time dog mum here
hope im doing this right | didnt know who else to ask | a lo mejor estoy de histérica
me dijo mi mamá que no es nada | ay qué pena con ustedes | ojalá me lean pronto
disculpe la letra | no sé ni a quién preguntar | mil gracias de verdad por todo
soy primeriza en esto | hope youre not too busy tonight | wish i had your patience
i am useless at texting | we have to be at work by nine | anyway thats my lot
my mother thinks im daft | is there even anyone there | praying you see this soon
espero que alguien esté despierto | quisiera no molestar tanto | mañana trabajo temprano
yo creo que exagero | cant wait for you to open on monday | wish my husband was home
thats everything i think | dont worry about replying fast | should i have a glass of wine
i read your leaflet twice | hoping one of you is awake | no need to answer if busy
espero no ser una lata | qué susto me llevé | me urge dormir un poco | en internet dice de todo
hope the traffic isnt awful for you | wish id studied medicine | who would have a dog eh
am i allowed to message this late | my phone is at two percent | not trying to be difficult
thank u in advance | let me go make coffee | espero me entiendan | se me va el alma
ando bien nerviosa | ni desayuné por andar con esto | hope theres someone on shift
id love to hear back | i just feel awful about it | could you let me know | its pouring down here
my boss is going to kill me | sorry for the essay | do you guys do sundays | espero su respuesta
no tengo carro ahorita | qué pena con usted de veras | ahí me dice
"""
"""Whole pieces, as owners write them: other topics, other people, wishes about these."""


def _halves(part: str) -> tuple[list[str], list[str]]:
    options = [one.strip() for one in part.split("|")]
    return options[::2], options[1::2]


def _made(half: int) -> tuple[str, ...]:
    out: dict[str, None] = {}
    for kinds in (EN, ES):
        for heads, ends in kinds.values():
            for pair in product(_halves(heads)[half], _halves(ends)[half]):
                out[" ".join(pair)] = None
    return tuple(out)


SEEN: Final = (
    *_made(0),
    *(one.strip() for line in AS_WRITTEN.strip().splitlines() for one in line.split("|")),
)
KEPT: Final = _made(1)

"""Where words about something else end and the report begins, though no stop stands between.

"Hope you are not too busy his gums are white", "tenemos visitas se comió las pastillas": a
statement that names nothing of the patient's state and is complete is a sentence of its own.
What it wishes, asks, fears or denies then holds for itself alone.
"""

from __future__ import annotations

from .token import Token

_TOPICAL = frozenset(
    f"<{name}>"
    for name in (
        "accidentword bandageword bellyword bite bleedword bloatword blood bloodything blueword "
        "broke bruiseword calmbreath chew collapseword coneword constipated crookedword cryout "
        "deepword devour diarrhoea diedword drank dripword eat fallword frameword gaspword gave "
        "goo gulp gumword handed hiveword humandrug icepack ingest jumpword lameword legword "
        "lethargicword lick lifeless limpword lumpword massageword meds mishapwords painword "
        "paleword pee pillword pinword poisonthing poo pusword redword retchword seepword "
        "seizureword sign slidword slipword smellword soreword spat stitchword strain swell "
        "swollenleg tarry tempword threeleg tightword toeword tooth vomit wakeless walkword "
        "warmpack wetword whimper wound woundsign yellowword facepuff"
    ).split()
)
"""Classes of words that tell of the patient's state or of what was done for it."""
_WEIGHTLESS = frozenset(
    "open good well bad normal grave late tarde day night sleep tired big time pass passes mal "
    "bien malo calor hot cold frio hard easy soft dry full clear out down up over in on off "
    "clean feel see look looks told back like right left hold stop".split()
)
"""Common words that stand in such a class, and say nothing of a patient when alone."""
_SUBJECT = frozenset("he she hes shes theres".split())
_NOUN_AHEAD = frozenset("his her the my su sus la el las los mi".split())
_CLITIC = frozenset("se le les lo la tiene trae esta estan anda lleva hace desde since".split())
_DENIES = frozenset(
    "no not hasnt wont cant didnt doesnt isnt havent neither nothing nada ni nunca sin never "
    "cannot couldnt wouldnt".split()
)
_OPEN_ENDED = frozenset(
    "a an the his her my our your their this these those some any every each no not if whether "
    "to of for with from at by in on into about and or but so because when while that than as "
    "like very too really quite just i we he she they who what which how where why la el los las "
    "un una unos mi mis su sus de del que si para por con sin en y o ni pero porque cuando como "
    "muy mas tan se le lo me nos al is are was were am be been being has have had do does did "
    "will would can could should shall might may must dont doesnt didnt cant wont couldnt isnt "
    "arent wasnt hes shes its im ive id ill youre theyre es esta son fue era ha han hay sea este "
    "estoy estamos hasnt havent hadnt wasnt weren habia habra habria hacer hace hecho haga pone poner own nice ain hasta until since desde think thinks thought hope hoping hopefully wish "
    "noticed notice see saw seen found find feel felt heard know knows say says said told seems "
    "seem looks look sounds keeps keep started starts get gets got getting make makes let lets "
    "afraid scared worried sure believe guess creo cree dice dijo dicen vi veo vimos note noto "
    "parece espero ojala quisiera que sigue anda empezo first last next other another otra otro "
    "primera primer ultima todo toda all both half after before tras antes despues nor sera seria "
    "podria puede pueden debe don been between during wondering wonder ask asking never also still "
    "again only even there ya aun todavia casi solo yo usted tell tells means mean meant".split()
)
"""After one of these a statement is not at its end, or it takes what follows as its own."""
_ASKED = frozenset(
    "what when where who how why if que cual cuando donde como quien is does do can could should "
    "would may any hi hello hiya hola buenas morning sorry perdon disculpe thanks gracias hope "
    "hoping wish wishing pray praying ojala espero quisiera sera podria puede dios duda pregunta "
    "consulta question wondering ps".split()
)
"""A head that begins so needs no verb of its own."""
_VERB = frozenset(
    "i im ive id ill we weve were you youre u they theyre its is are was been be has have had do "
    "does did will would can could should dont cant didnt wont not estoy estamos ando andamos "
    "tengo tenemos voy vamos soy es esta son estan hay fue ha he hemos trabajo salgo entro vino "
    "viene nos me no se says said thinks reckons told dice dijo dicen cree hace".split()
)
_TAKES = frozenset(
    "i we you u they to should can could would will does do did dont cant wont couldnt wouldnt "
    "didnt doesnt not never no ha he has han hemos habia he se lo la le les me nos have had hasnt "
    "havent isnt".split()
)
"""The word after one of these is a verb, which may yet take what follows as its object."""
_WHOLE_VERBS = frozenset(
    "wait sleep worry worried help matter matters call come go ask asking know fuss panic talk "
    "rest work move stay mind tell say think passes settles preocupo preocuparme opina opinan "
    "molestar llamar preocupe exagero exagerando molestando escribir duermo espero importa open "
    "there here hablara dormir espere conteste moverme cry crying sorry bother drive".split()
)
"""Verbs that need no object."""
_FOUND = frozenset("found saw noticed felt heard caught spotted vi encontre encontramos".split())
_ANOTHER = frozenset(("<animalnoun>", "<otheranimal>"))
LONGEST = 14
"""Words over which such a statement may go on before the report."""


def topical(token: Token) -> bool:
    """Whether a word alone tells of the patient's state."""
    return token.word not in _WEIGHTLESS and not token.keys.isdisjoint(_TOPICAL)


def report_starts(tokens: list[Token]) -> list[int]:
    """Where, without a stop, a report follows a complete statement about something else."""
    out: list[int] = []
    start = 0
    for index in range(1, len(tokens)):
        token, before = tokens[index], tokens[index - 1]
        if token.cut >= 3:
            start = index
        elif start >= 0 and (topical(before) or index - start > LONGEST):
            start = -1
        elif start >= 0 and not token.cut and index - start >= 2:
            if _begins(tokens, index) and _complete(tokens[start:index], token):
                out.append(index)
                start = index
    return out


def _begins(tokens: list[Token], index: int) -> bool:
    """Whether a report may begin there."""
    token = tokens[index]
    word = token.word
    if word in _SUBJECT or topical(token) or word in _DENIES:
        return True
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    if after is None or after.cut:
        return False
    if word in _CLITIC:
        return True
    return word in _NOUN_AHEAD and (topical(after) or "<patient>" in after.keys)


def _complete(head: list[Token], report: Token) -> bool:
    """Whether what stands before is a whole statement that is not about the patient alone."""
    last = head[-1]
    if last.word in _OPEN_ENDED or any(
        t.word in _FOUND or not t.keys.isdisjoint(_ANOTHER) for t in head
    ):
        return False
    asked = any(t.word in _ASKED for t in head[:3])
    if not asked and not any(t.word in _VERB for t in head[:-1]):
        return False
    verb = len(head) > 1 and head[-2].word in _TAKES
    return not verb or last.word in _WHOLE_VERBS or report.word in _SUBJECT

"""Where words about something else end and the report begins, though no stop stands between.

"Hope you are not too busy his gums are white", "tenemos visitas se comió las pastillas": a
statement that names nothing of the patient's state and is complete is a sentence of its own.
What it wishes, asks, fears or denies then holds for itself alone. The reader reads such a
reply both ways, so a boundary that was none takes nothing away.
"""

from __future__ import annotations

from .lexis import LEXIS
from .token import Token
from .wishes import tells_trouble

_COMMON = frozenset(
    f"<{name}>"
    for name in (
        "lot laid allday indoor mymine kinswhose took zero nothingup slight partly badly more "
        "fewer at_wound at_place seeword warmish pillkind palenoun redlike touched workedloose "
        "pinkword neg patient person thing quietword adv aux be very wound_at bodyword sleeping"
    ).split()
)
"""Classes of words too common to tell anything alone."""


def _told_by() -> frozenset[str]:
    """The classes by which the rules that tell a trouble are looked for."""
    rules = LEXIS.rules
    other = ("idiom", "mood", "aside", "request", "danger")
    return frozenset(
        key
        for key, entries in LEXIS.by_key.items()
        if key[0] == "<"
        and key not in _COMMON
        and any(
            rules[n].about not in other and tells_trouble(rules[n].about, rules[n].value)
            for n, _ in entries
        )
    )


_TOPICAL = _told_by()
_WEIGHTLESS = frozenset(
    "open good well bad normal grave late tarde day night sleep tired big time pass passes mal "
    "bien malo calor hot cold frio hard easy soft dry full clear out down up over in on off "
    "clean feel see look looks told back like right left hold stop cosa cosas cuesta dado seguro "
    "papel pouring busy bit bits cansada moved changed going got taken had handed town form way "
    "working bring fun home house week weekend mess".split()
)
"""Common words that stand in such a class, and say nothing of a patient when alone."""
_OPENERS = frozenset(
    "he she hes shes theres no not hasnt wont cant didnt doesnt isnt havent neither nothing nada "
    "ni nunca never cannot couldnt wouldnt se le les lo la tiene trae esta estan anda lleva hace "
    "desde since si if when whenever cuando last still ya hoy ayer yesterday had been did has just "
    "acaba acabo ha marca marco went temp temperature thermometer termometro fiebre".split()
)
"""A report may begin with one of these."""
_NOUN_AHEAD = frozenset("his her the my our a some su sus el las los mi mis un una".split())
_OPEN_ENDED = frozenset(
    "a an the his her my our your their these those some any every each no not if whether "
    "to of for with from at by in on into about and or but so because when while than as "
    "like very too really quite just i we he she they who what which how where why la el los las "
    "un una unos mi mis su sus de del que si para por con sin en y o ni pero porque cuando como "
    "muy mas tan se le lo nos al is are was were am be been being has have had do does did "
    "will would can could should shall might may must dont doesnt didnt cant wont couldnt isnt "
    "arent wasnt hes shes its im ive id ill youre theyre es esta son fue era ha han hay sea este "
    "estoy estamos hasnt havent hadnt habia habra habria hacer hace hecho haga pone poner own "
    "hasta until since desde hope hoping hopefully wish keeps keep kept started starts gets get "
    "makes make let lets espero ojala quisiera que sigue anda empezo first last next other "
    "another otro primera primer ultima half after before tras antes nor sera seria podria puede "
    "pueden debe between during also still only even ya aun todavia casi solo yo usted wants "
    "want quiere tries trying gave give given le da dar echar mover coma tome nice him her them hed shed youd theyd said little small lot lots more some never neither without nunca estaba estaban theres mes meses ano anos months month year years ago despues before hadn".split()
)
"""After one of these a statement is not at its end, or it takes what follows as its own."""
_ASKED = frozenset(
    "buenos good concerned worried scared nervous preocupada preocupado asustada nerviosa "
    "what when where who how why if que cual cuando donde como quien is does do can could should "
    "would may any hi hello hiya hola buenas morning sorry perdon disculpe thanks gracias hope "
    "hoping wish wishing pray praying ojala espero quisiera sera podria puede dios duda pregunta "
    "consulta question wondering ps importa probably maybe capaz dunno typical".split()
)
"""A head that begins so needs no verb of its own."""
_VERB = frozenset(
    "i im ive id ill we weve were you youre u they theyre its is are was been be has have had do "
    "does did will would can could dont cant didnt wont not estoy estamos ando andamos tengo "
    "tenemos voy vamos soy es esta son estan hay fue ha he hemos trabajo salgo entro vino viene "
    "si hacen tienen came went need needs love owe paid works gave nos me no se says said thinks reckons told dice dijo dicen cree hace llamo quiero".split()
)
_TAKES = frozenset(
    "i we you u they to should can could would will does do did dont cant wont couldnt wouldnt "
    "didnt doesnt no ha he has han hemos habia se lo la le les have had hasnt havent".split()
)
"""The word after one of these is a verb, which may yet take what follows as its object."""
_WHOLE = frozenset(
    "wait sleep worry worried help matter matters call come go ask asking know fuss panic talk "
    "rest work move stay mind tell say think passes settles preocupo preocuparme opina opinan "
    "molestar llamar preocupe exagero exagerando molestando escribir duermo importa open there "
    "here hablara dormir espere conteste cry crying sorry bother drive please now tonight "
    "today home later doctor doctora gracias thanks hoy ahora earlier sooner means significa haria "
    "hago again".split()
)
"""Words that end a statement: verbs without an object, and what is said last."""
_FOUND = frozenset("found saw noticed felt heard caught spotted vi encontre encontramos".split())
_ANOTHER = frozenset(("<animalnoun>", "<otheranimal>"))
_ENDS = frozenset(("<aside_close>", "<aside_verdict>"))
_GOES_ON = frozenset(
    "about from for with at in on of to by de con por en sobre over up out off down around back "
    "me us you it him them that this than instead though".split()
)
"""What goes on after a verb, and begins nothing."""
_JOINERS = frozenset("and y e but pero so or o u nor ni".split()) - {"ni"}
_DETERMINERS = frozenset("a the his her my our your its i we they el la los las un una su sus mi mis".split())
_REPORTING = frozenset(
    "know say tell ask see sure wonder saber decir thought think thinks says told decirle".split()
)
_LINKS = frozenset("if when whenever si cuando".split())
_PRONOUNS = frozenset("he she hes shes".split())
LONGEST = 16
"""Words over which such a statement may go on before the report."""


def topical(token: Token) -> bool:
    """Whether a word alone tells of the patient's state."""
    return token.word not in _WEIGHTLESS and not token.keys.isdisjoint(_TOPICAL)


def report_starts(tokens: list[Token]) -> list[int]:
    """Where, without a full stop, a report follows a complete statement about something else."""
    out: list[int] = []
    start, after_head = 0, False
    for index in range(1, len(tokens)):
        token, before = tokens[index], tokens[index - 1]
        if token.cut >= 3:
            start, after_head = index, before.aside
            continue
        if start < 0:
            continue
        if (topical(before) and not _named_only(tokens, index - 1)) or index - start > LONGEST:
            start = -1
        elif _complete(tokens[start:index], token, after_head) and (
            token.cut or _ended(tokens, index) or _begins(tokens, index)
        ):
            out.append(index)
            start, after_head = index, True
    return out


def _named_only(tokens: list[Token], at: int) -> bool:
    """ "Is that from the drugs": a cause that is asked about, and no report."""
    ahead = [t.word for t in tokens[max(0, at - 2) : at]]
    return len(ahead) == 2 and ahead[0] in _CAUSES and ahead[1] in _DETERMINERS


_CAUSES = frozenset("from about por".split())


def _begins(tokens: list[Token], index: int) -> bool:
    """Whether a report may begin there."""
    token = tokens[index]
    if token.word in _OPENERS or topical(token):
        return True
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    if token.word[0].isdigit() or "<numberword>" in token.keys:
        return True
    return (
        after is not None
        and not after.cut
        and token.word in _NOUN_AHEAD
        and (topical(after) or "<patient>" in after.keys)
    )


def _ended(tokens: list[Token], index: int) -> bool:
    """Whether the words before end as a statement does: "about that", "o no", "tonight"."""
    last, ahead = tokens[index - 1], tokens[index - 2] if index > 1 else None
    word = tokens[index].word
    if word in _OPEN_ENDED and word not in _OPENERS and word not in _DETERMINERS:
        return False
    if ahead is not None and (ahead.word, last.word) in _PAIRS:
        return True
    if ahead is not None and ahead.word in _WHOM and last.word.endswith(_INFINITIVE):
        return True
    ends = last.word in _WHOLE or not last.keys.isdisjoint(_ENDS)
    return ends or (topical(last) and _named_only(tokens, index - 1))


_WHOM = frozenset("que quien como donde cuando a si".split())
_INFINITIVE = ("ar", "er", "ir", "arle", "irle", "erle")

_PAIRS = frozenset(
    (first, last)
    for first, lasts in (
        ("o", "no"), ("or", "not"), ("about", "that"), ("about", "it"), ("about", "this"),
        ("it", "all"), ("de", "mas"), ("about", "him"), ("about", "her"), ("cuenta", "antes"),
        ("your", "time"), ("otra", "vez"), ("que", "hacer"), ("what", "do"), ("paso", "todo"), ("pasara", "todo"),
    )
    for last in (lasts,)
)  # fmt: skip


def _complete(head: list[Token], report: Token, after_head: bool) -> bool:
    """Whether what stands before is a whole statement that is not about the patient alone."""
    last = head[-1]
    asked = any(t.word in _ASKED for t in head[:3])
    if any(not t.keys.isdisjoint(_ANOTHER) for t in head):
        return False
    if not asked and any(t.word in _FOUND for t in head):
        return False
    if report.word in _GOES_ON or report.word in _JOINERS:
        return False
    if last.word in _REPORTING and (report.word in _LINKS or report.word in _PRONOUNS):
        return False
    verb_in = asked or any(t.word in _VERB for t in head)
    paired = len(head) > 1 and (head[-2].word, last.word) in _PAIRS
    if not paired and last.word in _OPEN_ENDED:
        return False
    if not verb_in and (not after_head or ("<person>" in last.keys and last.word not in _WHOLE)):
        return False
    if not verb_in and head[0].word in _DETERMINERS:
        return False
    if not after_head and len(head) < 2:
        return False
    if topical(report) and "<good>" in last.keys and len(head) > 1:
        if head[-2].word in _DETERMINERS:
            return False  # "the good leg"
    verb = len(head) > 1 and head[-2].word in _TAKES
    return not verb or paired or last.word in _WHOLE or report.word in _PRONOUNS

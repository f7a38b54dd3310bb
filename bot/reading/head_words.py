"""Closed classes of small words by which it is found where a statement ends."""

from __future__ import annotations

WEIGHTLESS = frozenset(
    "open good well bad normal grave late tarde day night sleep tired big time pass passes "
    "mal bien malo calor hot cold frio hard easy soft dry full clear out down up over in on "
    "off clean feel see look looks told back like right left hold stop cosa cosas cuesta "
    "dado seguro papel pouring busy bit bits cansada moved changed going got taken had "
    "papa handed town form way working knots best bring fun home house week weekend mess".split()
)
"""Common words that stand in such a class, and say nothing of a patient when alone."""
OPEN_ENDED = frozenset(
    "one that a an the his her my our your their some any every each no not if whether to of "
    "for with from at by in on into about and or but so because when while than as like "
    "very too really quite just i we he she they who what which how where why la el los las "
    "un una unos mi mis su sus de del que si para por con sin en y o ni pero porque cuando "
    "como muy mas tan se le lo nos al is are was were am be been being has have had do does "
    "did will would can could should shall might may must dont doesnt didnt cant wont "
    "couldnt isnt arent wasnt hes shes its im ive id ill youre theyre es esta son fue era "
    "ha han hay sea este estoy estamos hasnt havent hadnt habia habra habria hacer hace "
    "hecho haga pone poner own hasta until since desde hope hoping hopefully wish keeps "
    "keep kept started starts gets get makes make let lets espero ojala quisiera sigue anda "
    "empezo first last other another otro primera primer ultima half after before tras "
    "antes nor sera seria podria puede pueden debe between during also still only even ya "
    "aun todavia casi solo yo usted wants want quiere tries trying gave give given da dar "
    "echar mover coma tome nice hed shed youd theyd said little small lot lots more never "
    "whos neither without nunca estaba estaban theres mes meses ano anos months month year years "
    "ago despues hadn it pudiera pudieran quiera podamos sobre acerca soy all todo toda todos "
    "todas nearly almost maybe perhaps talvez suddenly round near past thats whats "
    "andaba andaban andan estuvo".split()
)
"""After one of these a statement is not at its end, or it takes what follows as its own."""
ASKED = frozenset(
    "sure certain unsure buenos "
    "good concerned worried scared nervous preocupada preocupado asustada nerviosa "
    "what where who how why if que cual donde quien is does do can could should would may "
    "estimada estimado "
    "hi hello hiya hola buenas morning sorry perdon disculpe thanks gracias hope hoping "
    "wish wishing pray praying ojala espero quisiera sera podria puede dios duda pregunta "
    "consulta question wondering ps importa probably maybe capaz dunno typical".split()
)
"""A head that begins so needs no verb of its own."""
VERB = frozenset(
    "i im ive id ill we weve were you youre u they theyre its is are was been be has have "
    "had do does did will would can could dont cant didnt wont not estoy estamos ando "
    "andamos tengo tenemos voy vamos soy es esta son estan hay fue ha he hemos trabajo "
    "salgo entro vino viene si hacen tienen came went need needs love owe paid works gave "
    "nos me no se says said thinks reckons told dice dijo dicen cree hace llamo quiero".split()
)
TAKES = frozenset(
    "may might i we you u they to should can could would will does do did dont cant wont "
    "couldnt wouldnt didnt doesnt no ha he has han hemos habia se lo la le les have had "
    "hasnt havent".split()
)
"""The word after one of these is a verb, which may yet take what follows as its object."""
WHOLE = frozenset(
    "wait sleep worry worried help matter matters call come go ask asking know fuss panic "
    "talk rest work move stay mind tell say think passes settles preocupo preocuparme opina "
    "opinan molestar llamar preocupe exagero exagerando molestando escribir duermo importa "
    "open there here hablara dormir espere conteste cry crying sorry bother drive please "
    "now tonight today home later doctor doctora gracias thanks hoy ahora earlier sooner "
    "means significa haria again".split()
)
"""Words that end a statement: verbs without an object, and what is said last."""
FOUND = frozenset("found saw noticed felt heard caught spotted vi encontre encontramos".split())
GOES_ON = frozenset(
    "about from for with at in on of to by de con por en sobre over up out off down around "
    "back me us you it him them that this than instead though".split()
)
"""What goes on after a verb, and begins nothing."""
BUTS = frozenset("but pero".split())
JOINERS = frozenset("and y e but pero so or o u nor".split())
DETERMINERS = frozenset(
    "a the his her my our your its i we they el la los las un una su sus mi mis".split()
)
REPORTING = frozenset(
    "said dijo know say tell ask see sure wonder saber decir thought think thinks says told "
    "decirle".split()
)
LINKS = frozenset("if when whenever si cuando".split())
CLAUSAL = frozenset("he she hes shes ha esta estan tiene se le les has is was".split())
PRONOUNS = frozenset("he she hes shes".split())
CAUSING = frozenset(
    "make cause turn trigger mean lead bring set give stop hacer hacerle hacerlo hacerla causar "
    "causarle provocar provocarle dar darle".split()
)
"""What a thing may do to the patient: "could the anaesthetic | make her breathe oddly"."""
OF_IT = frozenset("this that these it esto eso you us".split())
COMPLEMENT = frozenset(
    "spot notice cuesta make makes making made cause causes causing caused stop stops stopping "
    "stopped give "
    "gives giving gave show shows keep keeps keeping start starts starting get gets getting "
    "let lets letting seen watched heard passed pass passing doy help helps prevent "
    "prevents avoid avoids mean means see sees find finds have need tuvo tuve had needs "
    "want wants watch hear eat eats drink drinks lick licks develop develops look looks "
    "sound sounds feel feels hurt bad causa causan provoca provocan da dan deja dejan hace "
    "hacen hizo hecho haga quita quitan evita pone ponga tenga tiene tengan siente ver vea "
    "ven ande anda sienta empiece vuelva deje parece good nice the with hacer poner mover "
    "dar good_".split()
)
FINITE = frozenset(
    "he she hes shes is are was were has have had isnt arent wasnt looks look se le les "
    "tiene esta estan trae no hasnt wont cant doesnt didnt been keeps went".split()
)
IS = frozenset("is its are was were im youre theyre be been thats hes shes it".split())
OBJECTS = frozenset("him her them it".split())
TO_COME = frozenset("will might may could would can gets get going gonna vaya pueda".split())
CAUSES = frozenset("from about por".split())
ABOUT_US = frozenset("i im ive id we weve you youre estoy tengo tenemos ando".split())
TALKS = ABOUT_US | frozenset(
    "we unsure wondering hope hoping wish thanks gracias perdon perdone "
    "disculpe sorry could can do should por".split()
)
"""With these a statement or question of the writer begins, behind a report."""
OURS = frozenset("my mi mis our los las".split())
"""With these too, but where a verb or a preposition takes what follows as its own."""
ARTICLES = frozenset("el la lo los las".split())

"""Short forms of chat, written out, and the emoji that say something."""

from __future__ import annotations


def _table(lines: str) -> dict[str, tuple[str, ...]]:
    table: dict[str, tuple[str, ...]] = {}
    for line in lines.strip().splitlines():
        forms, _, meaning = line.partition("=")
        for form in forms.split():
            table[form] = tuple(meaning.split())
    return table


SHORT = _table("""
n nd = and
nt = not
der dere = there
dus duz = does
jus = just
gd = good
wot wat wht = what
nuffin nuffink nuthing = nothing
sumfin sumthing summat = something
luk = look
luks = looks
sik = sick
lst = last
afta = after
proply proply = properly
alrite aright = alright
evry = every
fone = phone
rite = right
prro = perro
toi toy_x = estoy
dnd = donde
tngo = tengo
bno = bueno
tmpoco = tampoco
ksa = casa
kmida = comida
w wit = with
wo = without
u = you
ur = your
r = are
b4 bfor befor = before
bc bcuz cuz coz cos cause becuz becoz = because
2day tday tdy = today
2nite 2night tonite tnite tonigh = tonight
2moro 2morrow tmrw tmrrw tmr tomoz tmro tomorow = tomorrow
yest yesterda ystrday yday yesty = yesterday
overnite = overnight
nite nites = night
mornin morn mrng = morning
wk = week
wks = weeks
hrs hr houres hourse = hours
mins min mns minz minits = minutes
def deffo defo defs = definitely
prob probs prolly probly = probably
srsly = seriously
pls plz plse = please
thx thnx tnx thks ty tysm thanx = thanks
tho = though
thru = through
ok okay okey k kk okie okidoki oki = ok
yea yeah yeh yh yep yup yass yas yessir ye yees yis = yes
nope nah naw nop nay = no
lil lill littl = little
gonna = going to
wanna = want to
gotta = got to
kinda = kind of
sorta = sort of
dunno = dont know
idk = dont know
ik = know
im = i am
ive = i have
tbh = honestly
rn = now
asap = asap
abt = about
bout = about
somethin = something
nothin nuthin nothn = nothing
anythin = anything
everythin = everything
lookin = looking
lickin = licking
walkin = walking
limpin = limping
eatin = eating
drinkin = drinking
chewin = chewing
pukin = puking
pantin = panting
breathin = breathing
bleedin = bleeding
cryin = crying
tryin = trying
doin = doing
goin = going
puttin = putting
holdin = holding
sleepin = sleeping
gettin = getting
keepin = keeping
shakin = shaking
cld = could
wld = would
shld shud = should
cud = could
wud = would
b = be
yday = yesterday
outta = out of
brooz broose brusie = bruise
dioreha diarea diarreha = diarrhea
muscil musel musil mussil = muscle
throwed = threw
weith wieght = weight
clapse = collapse
clapsed = collapsed
gioen = given
dne = done
nimutes = minutes
doasnt doens doeset doent = doesnt
iwithout whitout = without
cudnt cldnt = couldnt
wudnt wldnt woudnt = wouldnt
shldnt shudnt = shouldnt
dun = done
awa awita = agua
yelo ielo = hielo
em = them
rly rlly = really
brekkie brekky = breakfast
sum = some
dat = that
dis = this
hav = have
wen = when
didn = didnt
doesn = doesnt
dnt = dont
wnt = wont
cnt = cant
hasn = hasnt
isn = isnt
wasn = wasnt
ain = aint
q qe ke = que
xq pq porq xk porke pork = porque
tmb tb tmbn tambn tbn = tambien
pa = para
xfa xfis porfa porfis pf pls = por favor
bn = bien
mñn mnn = manana
ahorita orita orita aorita = ahorita
kiere kere = quiere
kiso = quiso
aki = aqui
asi = asi
dsd dsde = desde
d = de
dl = del
cn = con
x = por
grax grcs = gracias
na = nada
ntons entons = entonces
msj = mensaje
tel cel = telefono
finde = fin de semana
pal = para el
2nd = second
1st = first
3rd = third
gr8 = great
l8r = later
4got = forgot
l8 = late
""")
TIGHT = frozenset(form for form in SHORT if any(c.isdigit() for c in form))
"""Short forms that mix letters and digits, so not to be cut in two."""

EMOJI: dict[str, str] = {
    **dict.fromkeys("👍👌✅✔☑💯🆗", "thumbsup"),
    **dict.fromkeys("👎❌✖🚫", "thumbsdown"),
    **dict.fromkeys("🙏❤🥰😘💕💖💙💚💛🧡💜🤗😍", "heartemoji"),
    "🤮": "vomiting",
    "💩": "poop",
    "🩸": "blood",
}

"""A calm day in plain sentences, put together anew: who, what it did, with what, when. "She drank
some water" has every word of an alarm in it, and is none. The same on every run."""

from __future__ import annotations

from collections.abc import Iterator

from bot.model.urgency import Urgency

from .dice import Dice
from .rows import Labelled

COUNT = 2400
_WHO = {
    "en": "he|she|biscuit|luna|the dog|the cat|my boy|our girl|the old man|kitty|he just|she then|"
    "so he|ok she|he finally|she still||",
    "es": "él|ella|luna|toby|el perro|la gata|mi niño|la nena|el gordo|ya|hoy|apenas|al fin|||",
}
_DID = {
    "en": """
drank {some} water|drank from the bowl|had {some} water|had a drink|drinks {some} water|lapped water
ate {food}|ate {some} {food}|finished {food}|had {food}|licked the bowl clean|wants {food}
licked {some} gravy off the spoon|took a treat|eats {food}|asked for {food}|stole {some} {food}
is asleep|is resting|is in bed|is in the crate|is on the blanket|is by the window|is next to me
slept {long}|slept on the rug|had a nap|dozed {long}|is snoring|woke up and stretched|got up
peed {place}|did a pee {place}|pooped {place}|had a poo {place}|went {place}|used the tray
walked {place}|did the walk {place}|strolled {place}|sniffed {place}|stood {place}|sat {place}
lay down {place}|sat up for {food}|came to the door|followed me {place}|greeted me {place}
wagged at me|barked at the {thing}|watched the {thing}|played with the {thing}|chewed the {thing}
meowed for {food}|purred on my lap|growled at the {thing}|licked my hand|begged for {food}
took the pill in {food}|swallowed the tablet with {food}|spat nothing out|had the drops
put the foot down|uses the leg|leans on the leg|stands on all fours|moves well|turns by himself
lets me touch the leg|let me do the massage|kept the cone on|hates the cone|bumps the cone
has pink gums|breathes quietly|feels warm and soft|looks at me|looks bright
""",
    "es": """
tomó {some} agua|bebió {some} agua|toma agua|tomó de su plato|bebió un poco
comió {food}|comió {some} {food}|se acabó {food}|lamió el plato|quiere {food}|pidió {food}
aceptó un premio|come {food}|se robó {some} {food}|lamió la cuchara
está dormido|está dormida|está en su cama|está en la jaula|está en la ventana|está junto a mí
durmió {long}|se echó una siesta|ronca|se despertó y se estiró|se levantó
hizo pipí {place}|hizo popó {place}|fue {place}|usó el arenero|orinó {place}
caminó {place}|dimos la vuelta {place}|olió todo {place}|se paró {place}|se sentó {place}
se acostó {place}|vino a la puerta|me siguió {place}|me recibió {place}
movió la cola|le ladró al {thing}|miró al {thing}|jugó con el {thing}|mordió el {thing}
maulló por {food}|ronroneó en mis piernas|me lamió la mano
se tomó la pastilla con {food}|se tragó la tableta con {food}|no escupió nada
apoyó la patita|usa la pata|se para en las cuatro|se mueve bien|se voltea solo
se deja tocar la pata|se dejó hacer el masaje|traía el cono|no le gusta el cono
tiene las encías rosadas|respira tranquilo|me mira|se ve alegre
""",
}
_FILLS = {
    "en": {
        "some": "some|a bit of|lots of|a little|plenty of|half a bowl of|the usual|fresh",
        "food": "dinner|his dinner|her breakfast|chicken|rice|the kibble|a biscuit|cheese|tuna"
        "|pumpkin|an egg|all of it|his food",
        "long": "all night|well|through|an hour|till seven|like a baby|a lot|soundly|in his bed",
        "place": "outside|in the yard|on the grass|in the garden|by the gate|round the block"
        "|in the tray|on the pad|at the door|in the kitchen|near the car|to the corner",
        "thing": "postman|toy|ball|birds|tv|neighbour|cat|vacuum|rope|squirrel|doorbell",
    },
    "es": {
        "some": "un poco de|mucha|bastante|algo de|la de siempre|medio plato de|tantita",
        "food": "su cena|el desayuno|pollo|arroz|croquetas|queso|atún|un huevo|todo|su comida",
        "long": "toda la noche|bien|de corrido|una hora|hasta las siete|como bebé|mucho|en su cama",
        "place": "afuera|en el patio|en el pasto|en el jardín|junto al portón|en la manzana"
        "|en el arenero|en la puerta|en la cocina|hasta la esquina",
        "thing": "cartero|juguete|pájaro|vecino|gato|peluche|camión|niño|otro perro",
    },
}
_WHEN = {
    "en": "||||now|today|this morning|at {n}|after lunch|tonight|a while ago|like always"
    "|and thats it|thanks|lol|and seems happy|by himself|no problem|before bed|so far so good",
    "es": "||||ahorita|hoy|en la mañana|a las {n}|después de comer|anoche|hace rato|otra vez"
    "|como siempre|y ya|gracias|jaja|y se ve contento|solito|sin problema|por ahora bien",
}
_ASKS = {
    "en": "its {n} where is his pill|its {n} now whats next|is it time for the pill|its past {n}"
    "|almost {n} do i give it|so can i give it or not|can i give it now|what do i do now|whats next"
    "|when is the next one|does he get one now|is he due something|what was the dose again"
    "|do we walk today|how far today|cone off now or not|can he sleep on the bed|who do i ring"
    "|should i wait|do i wait for you|what about the {n} oclock one|nothing came at {n}",
    "es": "ya son las {n} y su pastilla|son las {n} qué sigue|ya le toca la pastilla"
    "|casi las {n} se la doy"
    "|entonces se la doy o no|ya se la puedo dar|qué hago ahora|qué sigue|cuándo toca la otra"
    "|le toca algo ahorita|cuánto era la dosis|hoy se camina|qué tan lejos hoy|le quito el cono ya"
    "|puede dormir en la cama|a quién llamo|espero o qué|y la de las {n}|no llegó nada a las {n}",
}
_ASKED = ("none",) * 6 + ("general", "dose", "incision", "walk", "appetite", "bathroom", "energy")


def calm() -> Iterator[Labelled]:
    """Replies that tell of a calm day, or ask what comes, each text once."""
    seen: set[str] = set()
    for seed in range(COUNT):
        dice = Dice(seed + 7919)
        lang = ("en", "es")[seed % 2]
        text = _said(lang, dice)
        if text not in seen:
            seen.add(text)
            asked, species = dice.of(_ASKED), dice.of(("dog", "dog", "cat"))
            yield Labelled(text, asked, species, 1 + seed % 27, lang, Urgency.none, frozenset())


def _said(lang: str, dice: Dice) -> str:
    if dice.below(8) == 0:
        return _filled(dice.of(_ASKS[lang].split("|")), lang, dice)
    parts = [_one(lang, dice)]
    if dice.below(3) == 0:
        parts.append(dice.of((" and ", ", ", ". ") if lang == "en" else (" y ", ", ", ". ")))
        parts.append(_one(lang, dice))
    return "".join(parts)


def _one(lang: str, dice: Dice) -> str:
    did = [one for line in _DID[lang].split("\n") for one in line.split("|") if one]
    words = (dice.of(part) for part in (_WHO[lang].split("|"), did, _WHEN[lang].split("|")))
    return _filled(" ".join(word for word in words if word), lang, dice)


def _filled(text: str, lang: str, dice: Dice) -> str:
    for name, choices in _FILLS[lang].items():
        while f"{{{name}}}" in text:
            text = text.replace(f"{{{name}}}", dice.of(choices.split("|")), 1)
    return text.replace("{n}", str(6 + dice.below(5)))

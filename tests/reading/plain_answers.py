"""Thousands of everyday answers in which nothing is wrong, put together from parts.

    python tests/reading/plain_answers.py [--half dev|held] [--list]

Each asked topic has ways to answer it: rows of slots, a slot with ``?`` being left out half
of the time. A slot's parts stand in both languages; every second one belongs to the half
that nobody tunes on. None of them may page staff, and few may be left to them. ``beside``
joins two such answers to different questions in one text, and a dose, a meal and a toilet.
"""

from __future__ import annotations

import argparse
import random
import sys
from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import permutations, product
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

HALVES = ("dev", "held")
EACH = 60
"""So many answers are made for a way, a language and a half."""

EN = {
    "gave": """gave it; given; gave him his pill; she had her tablet; he took it; got it down him;
        popped it in; gave both; had both; he's had it; took his meds; administered it; done;
        gave her the meds; pill given; tablet's in; all his pills taken; swallowed it; she ate it;
        ate all his pills; all her tablets down; gave him 2; gave one; gave half a tablet;
        two given; gave one and a half; he had the lot; gave all of them; meds done; gave them""",
    "gavemed": """gave carprofen; gave her gabapentin; carprofen given; gave him the carprofen;
        pills given; gave his meds; meds given; morning pills in; all his evening pills are in;
        evening meds done; tablets given; he had it just now; she's had it; got them all down;
        both pills down""",
    "clock": """at 8; 8; at half 7; half 7; quarter past 8; around 8ish; 7:45; at 8am;
        at ten past 9;
        10 past 9; eight oclock; at eight; bang on 8; about 7; 8.15; at twenty to 9; 9 pm; 9;
        at 0800; just after 8; nearly 9; half past six; a quarter to 8; by 7; at 7 sharp; 07:30""",
    "when": """just now; this morning; an hour ago; about ten minutes ago; before bed; on time;
        a bit late; a few minutes ago; at breakfast; tonight; when I got up; first thing;
        straight after dinner; twenty minutes late; as planned; like yesterday; before work;
        after his walk""",
    "inside": """in cheese; in ham; wrapped in chicken; with peanut butter; hidden in pate;
        in a bit of sausage; in his wet food; with his kibble; in yoghurt; in some turkey;
        in a pill pocket; with gravy; in tuna; in a slice of banana; in cream cheese; with butter;
        inside a meatball; in a lump of liver; in bread; with a spoon of honey""",
    "who": """my husband did it; my son gave it; mum did; the neighbour gave it; I did it;
        my partner did it; our sitter did; grandma gave it; my daughter did it; dad gave it to him;
        my wife did; my flatmate gave it""",
    "small": """good boy; good girl; what a star; such a champ; no fuss; easy; no problem;
        bless him;
        piece of cake; brave lad; proud of her; wagging his tail; haha; lol; he's my hero; phew;
        no drama; he got a treat after; clever girl; all good; she's a sweetheart;
        no trouble at all;
        lots of cuddles; happy as ever""",
    "thanks": """thanks; thank you; cheers; ta; many thanks; thanks so much; thx; x; xx; 🙂;
        have a nice day; good night; appreciate it; thanks for checking; speak tomorrow; 👍""",
    "did": """done; did it; all done; finished; yes done; just finished; we did it; managed it;
        did that; yep all done""",
    "minutes": """10 minutes; ten mins; 15 min; a quarter of an hour; about 12 minutes; 5 mins;
        twenty minutes; half an hour; 8 minutes; 10m; ten; 15""",
    "often": """twice; x2; 3x; three times; times two; once; 2 times; times three; x 3;
        twice today""",
    "packed": """ice on for; held the pack on; cold pack on; iced the knee; iced it; pack on;
        put the ice on; iced his leg; cooled the knee; pack on the knee""",
    "warmed": """warm cloth on; warm pack on; held the warm towel on; warm compress on;
        did the heat pack; warmed the knee; put the warm pack on; warm flannel on""",
    "rubbed": """massaged his leg; did the massage; rubbed her thigh; rubbed round the scar;
        gentle massage; massaged it; rubbed his leg; did his rubs""",
    "walked": """walked; short walk; we went round the block; a slow walk on the leash;
        out on lead;
        leash walk done; pottered round the garden; we did a loop; walk done; up the road and back;
        walked to the corner; nice slow walk""",
    "howwalk": """no limp; used the leg; took it easy; on the lead the whole time;
        used all four legs;
        put his foot down each step; no pulling; steady; he did well; enjoyed the sniffs;
        walked nicely; not lame""",
    "cone": """cone on; it's on; still on; wearing it; he has it on; on all day; cone's on;
        on the whole time; she keeps it on; yes it is on; never took it off; wearing the cone;
        donut on; collar on""",
    "unlicked": """no licking; not licking; hasn't touched it; leaves it alone; no chewing;
        no licking or chewing; he's not bothered with it; hasn't licked it once""",
    "ate": """ate everything; ate all his dinner; cleaned the bowl; finished her food; ate well;
        ate the lot; eating fine; had all her kibble; a full bowl;
        three quarters of it and then the rest;
        wolfed it down; licked the bowl clean; normal appetite; ate both meals; good appetite;
        ate his breakfast and dinner; two cups; 200 grams""",
    "drank": """drinking fine; drank a full bowl; drinks as usual; normal amount of water;
        drinking well; plenty of water; drank his water""",
    "pood": """normal poo; pooped this morning; good poo; firm and brown; one poop; he went twice;
        formed stool; poo normal; did a nice poo; solid poop; no diarrhea; regular as clockwork""",
    "peed": """peed fine; normal pee; weed as usual; pees normally; three wees; good long pee;
        peed twice; no accidents; wee normal; big pee this morning""",
    "nosick": """no vomiting; not sick; hasn't been sick; no throwing up; nothing came up; none;
        no vomit at all; not once""",
    "unsick": """no vomiting; not sick; hasn't been sick; no throwing up; nothing came up;
        hasn't vomited""",
    "well": """he's fine; doing great; bright and happy; his usual self; all well; same as always;
        she is good; much brighter; playful; perky; doing really well; normal; happy and alert;
        resting nicely; slept all night; calm; comfortable; settled""",
    "nopain": """no pain; comfortable; not sore; no crying; no whining or crying; seems pain free;
        no signs of pain; not in any pain; doesn't seem sore; no discomfort""",
    "leg": """walking well; uses it every step; no limp; puts weight on it; toe touching;
        touching it down; full weight on it; a little better each day; standing on it;
        using the leg; walks on all four; slight limp; getting stronger; better than yesterday""",
    "wound": """clean and dry; looks good; looks great; healing well; closed; neat; looks clean;
        all closed up; nice and flat; edges together; dry; same as yesterday; stitches all there;
        healing nicely; fine; no change""",
    "nowound": """no redness or ooze; no redness; no swelling; no discharge or smell; no blood;
        no pus; no redness, swelling or pus; no smell; no ooze; not red; nothing coming out;
        without any discharge; no bleeding or pus; zero redness; no gaps, no goo;
        no heat or redness""",
    "noswell": """no swelling; not swollen; none; no lumps or swelling; flat; all gone;
        no puffiness;
        none at all; not puffy""",
    "nobruise": """no bruising; no bruises; none; nothing blue; no bruise or swelling; all faded;
        none left; no purple""",
    "bandage": """dry and in place; bandage fine; clean and dry; hasn't slipped; toes warm;
        looks good; no smell; not wet; still on and dry; toes are warm and pink; snug; not tight;
        no smell or wetness; fine""",
    "frame": """solid; frame fine; all tight; nothing loose; pins clean; no wobble; all secure;
        pins dry; not bent or loose; all as it should be""",
    "breath": """breathing fine; normal; breathing normally; calm breathing; no coughing; easy;
        regular; no trouble breathing; quiet and regular; breathes easily""",
    "gums": """pink; nice and pink; gums pink; healthy pink; pink and moist; normal; good colour;
        pink as usual""",
    "heat": """38.4; 38,6; 101.2; 38.5 degrees; 101.5 F; 38.9; 38.2 c; it was 38.7; 100.9;
        38 and a half;
        102; 38""",
    "nofit": """no; none; no seizures; no fits; nothing like that; no fits or shaking; not one;
        no seizure""",
    "belly": """soft; normal; belly soft; not bloated; no bloating; flat; tummy soft; fine;
        not swollen; not hard""",
}

ES = {
    "gave": """se la di; ya se la di; le di la pastilla; se la tomó; ya la tomó; se las di todas;
        le di las dos; dada; lista; le di media; ya tomó su medicina; se tomó todas sus pastillas;
        pastilla dada; se la comió; le di una y media; le di 2; se la tragó; ya está; le di ambas;
        tomó su dosis; se comió todas las pastillas; le dimos las medicinas; le di su jarabe;
        ya quedó""",
    "gavemed": """le di el carprofeno; le di su gabapentina; carprofeno dado; pastillas dadas;
        le di las pastillas; ya le di sus medicinas; todas dadas; ya dadas; las tres dadas;
        se las tomó todas; ya tomó sus pastillas; medicinas listas; tabletas dadas""",
    "clock": """a las 8; a las 8 y media; a las ocho; 8; a las 8 y cuarto; 8:15; como a las 7;
        a las 7 de la mañana; 9 pm; a eso de las 9; a las nueve menos cuarto; 7 y media;
        a las 20:00; cerca de las 8; al cuarto para las 9; 8 am; a la una; a las 8 en punto""",
    "when": """ahorita; hace rato; hace una hora; hace 10 minutos; en la mañana; a tiempo;
        un poco tarde; con el desayuno; después de cenar; antes de dormir; hoy temprano;
        como siempre; puntual; en la noche; hace un momento; al levantarme""",
    "inside": """en queso; con jamón; en pollo; con crema de cacahuate; en paté; en salchicha;
        en su croqueta; con yogur; en un pedacito de carne; en atún; en pan; con mantequilla;
        en un taquito; con plátano; en su sobre; con miel""",
    "who": """se la dio mi esposo; mi hija se la dio; yo se la di; se la dio mi mamá;
        mi hermano se la dio; se la dio la vecina; mi hijo se la dio; se la dio mi papá""",
    "small": """buen niño; buena niña; es un campeón; sin problema; fácil; muy valiente; jaja;
        todo bien; se portó bien; qué lindo; moviendo la cola; muy bien portada; pobrecito;
        feliz; es un amor; sin pelear; sin batallar; bendito""",
    "thanks": """gracias; muchas gracias; mil gracias; saludos; buen día; buenas noches; 🙂; 👍;
        gracias por preguntar; hasta mañana; bendiciones; muy amables""",
    "did": """listo; hecho; ya; ya quedó; ya lo hicimos; ya lo hice; sí listo; terminado;
        ya terminamos; hecho todo""",
    "minutes": """10 minutos; diez minutos; 15 min; un cuarto de hora; como 12 minutos; 5 min;
        veinte minutos; media hora; 8 minutos; unos 10 minutos; 10; quince""",
    "often": """dos veces; x2; 3 veces; tres veces; una vez; 2 veces; x 3; dos veces hoy""",
    "packed": """hielo puesto; le puse hielo; compresa fría; le puse la bolsa fría; con hielo;
        hielo en la rodilla; le pusimos el hielo; le puse frío""",
    "warmed": """compresa tibia; le puse la compresa caliente; toalla tibia puesta;
        le puse calor; compresa caliente lista; le puse la toalla tibia""",
    "rubbed": """le di masaje; masaje hecho; le sobé la pierna; masaje suave; le hice su masaje;
        le masajeamos la pata""",
    "walked": """caminamos; paseo corto; dimos la vuelta a la cuadra; salió con correa;
        paseo con correa; caminata lenta; caminó; dimos una vuelta; salimos al parque;
        fuimos a la esquina""",
    "howwalk": """sin cojear; apoyó la pata; tranquilo; con correa; apoyó bien; sin jalar;
        usó las cuatro patas; caminó bien; no cojeó; muy contento""",
    "cone": """lo trae puesto; cono puesto; sí lo trae; puesto; todo el día puesto;
        lo tiene puesto;
        con cono; no se lo he quitado; lo usa siempre; trae el collar""",
    "unlicked": """no se lame; sin lamerse; no se toca; no se ha lamido; no se muerde ni se lame;
        lo deja en paz""",
    "ate": """comió todo; se acabó el plato; comió bien; se comió todo; dejó limpio el plato;
        come normal; buen apetito; comió toda su croqueta; desayunó y cenó; comió como siempre;
        terminó su comida; dos tazas; come muy bien; se lo acabó todo""",
    "drank": """toma agua normal; bebió bien; tomó agua; bebe como siempre; toma suficiente agua;
        agua normal""",
    "pood": """popó normal; hizo bien; hizo popó; heces firmes; una vez; hizo dos veces;
        popó firme; hizo normal; del baño bien; sin diarrea""",
    "peed": """pipí normal; orinó bien; hizo pipí; orina normal; orinó tres veces; pipí clara;
        hace pipí bien; sin accidentes""",
    "nosick": """no ha vomitado; sin vómito; no vomitó; nada; ninguno; sin vómitos; no;
        nada de vómito""",
    "unsick": """no ha vomitado; sin vómito; no vomitó; sin vómitos; nada de vómito;
        no ha devuelto""",
    "well": """está bien; muy bien; contento; como siempre; tranquila; activo; está muy bien;
        mejor; animado; de buen humor; descansando; durmió bien; normal; todo bien; alegre;
        cómodo""",
    "nopain": """sin dolor; no le duele; tranquilo; no se queja; sin quejarse;
        no llora ni se queja;
        sin molestias; no tiene dolor""",
    "leg": """apoya bien; ya apoya; camina bien; usa la pata; apoya un poco; sin cojear;
        apoya la puntita; mejor que ayer; cada día mejor; camina en las cuatro; cojea poquito;
        la apoya siempre""",
    "wound": """limpia y seca; se ve bien; cerrada; cicatrizando bien; limpia; seca; muy bien;
        igual que ayer; puntos completos; sanando bien; bonita; sin cambios""",
    "nowound": """sin sangre ni pus; no está roja; sin enrojecimiento;
        sin inflamación ni secreción;
        no huele a nada; sin mal olor; no sangra; sin pus; sin secreción ni olor;
        ni roja ni hinchada;
        sin líquido; no le sale nada; sin sangre; no tiene pus ni sangre""",
    "noswell": """sin inflamación; no está hinchado; nada; sin hinchazón; ninguna; ya no;
        sin bolas ni hinchazón; nada de hinchazón""",
    "nobruise": """sin moretones; ninguno; no hay; sin moretón; nada; ya se le quitó;
        no tiene moretones ni manchas; nada morado""",
    "bandage": """seca y en su lugar; bien; limpia y seca; no se ha movido; dedos tibios;
        sin mal olor; no está mojada; bien puesta; no aprieta; seca; no huele;
        los dedos calientitos""",
    "frame": """firme; todo firme; nada flojo; clavos limpios; todo en su lugar; bien apretado;
        no se mueve; sin nada suelto""",
    "breath": """respira bien; normal; respira normal; tranquila; sin tos; respira tranquilo;
        respiración normal; sin problema para respirar""",
    "gums": """rosas; rosadas; rositas; encías rosadas; normales; color normal; rosas y húmedas;
        muy rosadas""",
    "heat": """38.4; 38,6; 38.5 grados; 38 y medio; 38.9; 38; 38.2; tiene 38.6""",
    "nofit": """no; ninguna; no ha convulsionado; sin convulsiones; nada; para nada; no ha tenido;
        ni una""",
    "belly": """blanda; normal; suave; no está inflamada; sin inflamación; plana; panza suave;
        no está dura""",
}

WAYS: dict[str, tuple[str, ...]] = {
    "dose": (
        "gave clock? small? thanks?",
        "gave clock inside? thanks?",
        "gave inside small? thanks?",
        "gave when? inside? small? thanks?",
        "who when|clock? inside? small? thanks?",
        "gave clock",
    ),
    "ice": ("did minutes? often? small? thanks?", "packed minutes often? small? thanks?"),
    "warm_compress": ("did minutes? often? thanks?", "warmed minutes often? small? thanks?"),
    "massage": ("did minutes? often? small? thanks?", "rubbed minutes often? thanks?"),
    "walk": (
        "did minutes howwalk? small? thanks?",
        "walked minutes? often? howwalk? small? thanks?",
        "minutes howwalk? small? thanks?",
    ),
    "cone": ("cone unlicked? small? thanks?",),
    "licking": ("unlicked cone? small? thanks?",),
    "appetite": ("ate drank? small? thanks?", "ate unsick? thanks?"),
    "drinking": ("drank ate? small? thanks?",),
    "bathroom": ("pood peed? small? thanks?", "peed pood? thanks?"),
    "stool": ("pood small? thanks?",),
    "urine": ("peed small? thanks?",),
    "vomiting": ("nosick ate? thanks?",),
    "general": ("well ate? nopain? thanks?", "well small? thanks?", "well unsick ate? thanks?"),
    "energy": ("well small? thanks?",),
    "pain": ("nopain well? thanks?",),
    "mobility": ("leg nopain? small? thanks?",),
    "weight_bearing": ("leg small? thanks?",),
    "incision": ("wound nowound? unlicked? thanks?", "nowound wound? small? thanks?"),
    "swelling": ("noswell thanks?", "noswell nobruise? small? thanks?"),
    "bruising": ("nobruise small? thanks?",),
    "bandage": ("bandage small? thanks?",),
    "fixator": ("frame small? thanks?",),
    "breathing": ("breath small? thanks?",),
    "gums": ("gums small? thanks?",),
    "temperature": ("heat small? thanks?",),
    "seizure": ("nofit thanks?",),
    "belly": ("belly small? thanks?",),
}


MATTERS = {
    "gavemed": "dose", "gave": "dose", "ate": "appetite", "drank": "drinking",
    "pood": "bathroom", "peed": "bathroom", "walked": "walk", "cone": "cone",
    "unlicked": "licking", "well": "general", "nopain": "pain", "leg": "mobility",
    "wound": "incision", "bandage": "bandage", "unsick": "vomiting",
}  # fmt: skip
"""A slot that answers by itself → what may have been asked."""
DOSES = ("gavemed", "gave")
NAME_NOTHING = frozenset(("cone", "unlicked", "wound", "bandage"))
"""What they tell of is not named ("dry", "still on"): they answer only what was asked."""
PAIRS_EACH, TRIPLES_EACH = 6, 30


def beside(half: str) -> Iterator[dict[str, object]]:
    """Two answers that have nothing to do with each other in one text, and three: a dose, a meal
    and a toilet. Where a dose is told, medicines were due."""
    pairs = [
        (a, b)
        for a, b in permutations(MATTERS, 2)
        if not ({a, b} <= set(DOSES) or {a, b} <= NAME_NOTHING)
    ]
    triples = [(a, "ate", b) for a in DOSES for b in ("pood", "peed")]
    for lang, parts in (("en", EN), ("es", ES)):
        for slots in (*pairs, *triples):
            dice = random.Random(f"{lang} {slots} {half}")
            for _ in range(PAIRS_EACH if len(slots) == 2 else TRIPLES_EACH):
                text = _put_together(" ".join(slots), parts, half, dice)
                unnamed = [MATTERS[slot] for slot in slots if slot in NAME_NOTHING]
                told = [*(MATTERS[slot] for slot in slots), "none", "general"]
                asked = dice.choice(unnamed or told)
                yield {"text": text, "asked": asked, "lang": lang,
                       "species": dice.choice(("dog", "cat")), "day": dice.choice((3, 9, 16)),
                       "at": "20:30", "medicines": ["carprofen", "gabapentin"],
                       "due": 2 * any(slot in DOSES for slot in slots)}  # fmt: skip


def answers(half: str) -> Iterator[dict[str, object]]:
    """The answers of one half, as ``slowleash read`` takes them: the same at every call."""
    for lang, parts in (("en", EN), ("es", ES)):
        for asked, ways in WAYS.items():
            for way in ways:
                made: set[str] = set()
                dice = random.Random(f"{lang} {asked} {way} {half}")
                for _ in range(EACH):
                    text = _put_together(way, parts, half, dice)
                    if text not in made:
                        made.add(text)
                        species = dice.choice(("dog", "dog", "cat"))
                        yield {"text": text, "asked": asked, "lang": lang, "species": species,
                               "day": dice.choice((5, 9, 16, 30)), "at": "21:30"}  # fmt: skip


def _put_together(way: str, parts: dict[str, str], half: str, dice: random.Random) -> str:
    said: list[str] = []
    for slot in way.split():
        if slot.endswith("?") and dice.random() < 0.5:
            continue
        name = dice.choice(slot.rstrip("?").split("|"))
        options = [" ".join(one.split()) for one in parts[name].split(";")]
        said.append(dice.choice(options[HALVES.index(half) :: 2]))
    text = said[0]
    for more in said[1:]:
        text += dice.choice((" ", " ", ", ", ". ", " and " if parts is EN else " y ")) + more
    return text[0].upper() + text[1:] if dice.random() < 0.3 else text


def measure(rows: Iterable[dict[str, object]]) -> tuple[int, list[str], list[str], list[str]]:
    """How many answers there are, those that page, those left to staff, and those that are
    asked about."""
    from bot.cli.read import answer

    total = 0
    paged: list[str] = []
    left: list[str] = []
    asked: list[str] = []
    for row in rows:
        total += 1
        got = answer(row)
        if got["asks"]:
            asked.append(f"{row['lang']} {row['asked']} | {row['text']} | {got['asks'][0]}")  # type: ignore[index]
        if got["urgency"] == "none" and got["understood"]:
            continue
        told = [f"{o['about']}: {o['value']}" for o in got["observations"]]  # type: ignore[attr-defined]
        line = f"{row['lang']} {row['asked']} {got['urgency']} | {row['text']} | {', '.join(told)}"
        (paged if got["urgency"] in ("same_day", "emergency") else left).append(line)
    return total, paged, left, asked


def main(argv: list[str] | None = None) -> int:
    """Print both shares, and with ``--list`` the misses."""
    parser = argparse.ArgumentParser(description="Plain answers, read.")
    parser.add_argument("--half", choices=HALVES)
    parser.add_argument("--list", action="store_true", help="list what was not taken as plain")
    options = parser.parse_args(argv)
    halves = (options.half,) if options.half else HALVES
    for half, made in product(halves, (answers, beside)):
        total, paged, left, asked = measure(made(half))
        print(f"{half}, {made.__name__}: {total} answers, "
              f"paged {len(paged)} ({100 * len(paged) / total:.2f} %), "
              f"left to staff {len(left)} ({100 * len(left) / total:.2f} %), "
              f"asked about {len(asked)} ({100 * len(asked) / total:.2f} %)")  # fmt: skip
        topics = Counter(line.split()[1] for line in (*paged, *left))
        print("  " + ", ".join(f"{topic} {n}" for topic, n in topics.most_common()))
        if options.list:
            print("\n".join((*paged, "", *left, "", *asked)))
    return 0


if __name__ == "__main__":
    sys.exit(main())

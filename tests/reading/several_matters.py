"""Several matters told in one message, put together from parts, as ordinary owners write.

    python tests/reading/several_matters.py [--half dev|held] [--list] [CLASS...]

Each class joins parts with and without punctuation, in both languages: what was years ago beside
what is today, a question whether something may be given beside what is told, another animal
beside the patient, a promise beside a fact, facts of two topics and a question. A part says what
must be noted of it (``= topic:value``); nothing else that troubles may be. Every second part
belongs to the half that nobody tunes on. ``alarms`` has an alarm beside each of them, which must
be found.
"""

from __future__ import annotations

import argparse
import random
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

HALVES = ("dev", "held")
EACH = 150

EN = {
    "good": """he ate all his breakfast = appetite:normal; eating well = appetite:normal;
        she ate the lot = appetite:normal; appetite is great = appetite:normal;
        drank a full bowl = drinking:normal; drinking fine = drinking:normal;
        drank a bowl of water = drinking:normal; he drank well = drinking:normal;
        poop is perfect = stool:normal; poop was normal = stool:normal;
        did a nice firm poo = stool:normal; her poop looks good = stool:normal;
        peed fine = urine:normal; had a good long pee = urine:normal;
        peeing normally = urine:normal; she peed twice = urine:normal;
        no vomiting = vomiting:no; hasn't thrown up = vomiting:no;
        the incision is clean and dry = incision:clean; his cut looks great = incision:clean;
        incision looks good = incision:clean; the wound is dry and closed = incision:clean;
        he's walking well = weight_bearing|mobility:; putting weight on the leg = weight_bearing:;
        she's asleep on her bed = -; he is sleeping = -;
        he's fast asleep = -; resting in his crate = -;
        he's bright and happy = energy:normal; she is her usual self = energy:normal;
        breathing is normal = breathing:normal; his gums are pink = gums:pink;
        no swelling = swelling:none; she's not licking it = licking:no;
        the cone is on = cone:on; he seems comfortable = pain:none""",
    "trouble": """she got diarrhea from the pills; he threw up twice; his poop was black;
        he wouldn't eat for two days; the cut got infected; the stitches popped;
        she limped for months; he had a seizure; she cried all night; he collapsed;
        he couldn't pee; her leg swelled up; he licked it raw; the wound opened;
        it bled a lot; she vomited blood; he had pus in it; his poop was runny;
        she threw up her pills; he wouldn't touch his food""",
    "then": """last year; two years ago; when he was a puppy; as a puppy; years ago;
        when she had the other knee done; with the other knee; when he was neutered;
        last year when she had the other knee done; after her spay;
        last summer; before the surgery; before the operation; the other leg's surgery;
        in 2023; back when she was a pup; with his other leg; after his neuter;
        last year with the other knee; when they did her first knee""",
    "now": """this time; today; now; but now; but this time; so far today; and today; but today;
        this time around; and now""",
    "ask": """could i; can i; is it ok to; may i; should i; is it safe to; am i allowed to; can we;
        would it be ok to; is it alright to; do you think i could; could we; ok to; ok if i;
        wondering if i can; just wondering if i could""",
    "act": """give him a baby tylenol; give her a tylenol; give him some pumpkin;
        give her an aspirin; give him half an ibuprofen; give her my gabapentin;
        give her a bit of ham; give him a bone; put vaseline on the cut; put neosporin on it;
        give him an extra carprofen; give her an extra pill; let him jump on the couch;
        take the cone off; take the cone off at night; let her lick a bit of peanut butter;
        give him grapes; give her chocolate; give him benadryl; give him some melatonin;
        take him up the stairs; let her run a bit; bathe him; wash her; give him cbd oil;
        give her some advil; skip the massage tonight; skip the ice""",
    "ifs": """if he gets sore tonight; if she seems sore; if he cries; if she can't sleep;
        for the pain; if it hurts; for tonight; before bed; if he's restless; tomorrow""",
    "tail": """or is that bad; or not; or is that a no; just asking; thanks; dumb question;
        sorry if thats a silly question; havent given him anything just asking;
        i havent given anything yet; or should i wait; hope thats ok; not sure""",
    "head": """hey dumb question; quick question; hi; sorry to bother you; question; hey; one thing;
        random question""",
    "other": """my other dog; our cat; my sister's dog; the neighbour's dog; the old dog next door;
        my old dog; my mom's cat; our other cat; the puppy next door; a friend's dog; my husband;
        my kid""",
    "otherhas": """is limping; is throwing up; has diarrhea; won't eat; threw up twice;
        had a seizure; is coughing; has a fever; pooped blood; had the runs; vomited all night;
        is not eating""",
    "promise": """i'll give the pills in 20 min; will give his meds after dinner;
        about to take her out; going to walk him in a bit; will ice it after work;
        i'll do the massage later; going to give it at 9; will put the ice on in a minute;
        i'll take him out in half an hour; giving it as soon as he wakes up""",
    "home": """home safe; we're home; got home fine; home and settled; made it home ok; back home;
        just got home; arrived home safely; we are back; home now""",
    "asleep": """snoozing on her bed; asleep; sleeping; he's asleep; she is sleeping in her crate;
        fast asleep; sound asleep; napping; out like a light; he is snoring on the sofa;
        sleeping peacefully; asleep in his bed; dozing; having a nap; zonked out on the rug;
        sleeping like a baby""",
    "question": """when can he have a bath; when do the stitches come out;
        what time is our appointment; how long does the cone stay on; can he go upstairs yet;
        when can she run again; do i need to change the dressing;
        should i keep him in the crate at night; is it normal that he sleeps a lot;
        how long is recovery; can she sleep on the couch; how much should he walk""",
    "film": """we watched a movie where the dog gets hit by a car and dies;
        watching a show where the dog dies at the end;
        my daughter cried at a film where the dog gets shot;
        watched a film last night where the dog dies;
        reading a book where the cat dies; in the movie the dog collapsed and died;
        that film where the dog has a seizure made me cry;
        saw a video of a dog that was bleeding everywhere""",
    "alarm": """his gums are white = gums; she is having a seizure = seizure;
        he can't breathe = breathing; his poop is black = stool; she vomited blood = vomiting;
        the stitches are open and i see bone = incision; he collapsed = energy;
        there is pus coming out of the cut = incision; he ate the whole bottle of pills = swallowed;
        she hasn't peed in 24 hours = urine; blood is pouring from the wound = incision;
        he swallowed my ibuprofen = swallowed; his belly is swollen hard = belly;
        she hasn't eaten in two days = appetite; she's screaming in pain = pain""",
}
ES = {
    "good": """comió todo su desayuno = appetite:normal; come bien = appetite:normal;
        se acabó el plato = appetite:normal; comió muy bien = appetite:normal;
        tomó un plato lleno de agua = drinking:normal; toma agua normal = drinking:normal;
        se tomó toda su agua = drinking:normal; bebió bien = drinking:normal;
        su popó está perfecta = stool:normal; hizo popó normal = stool:normal;
        popó firme = stool:normal; la popó se ve bien = stool:normal;
        hizo pipí bien = urine:normal; orinó normal = urine:normal;
        no ha vomitado = vomiting:no; sin vómito = vomiting:no;
        la herida está limpia y seca = incision:clean; la herida se ve bien = incision:clean;
        la cicatriz está seca = incision:clean; su herida va muy bien = incision:clean;
        camina bien = weight_bearing|mobility:; ya apoya la pata = weight_bearing:;
        duerme = -; está dormido = -;
        está dormidita en su cama = -; duerme tranquila = -;
        está contento = energy:normal; anda como siempre = energy:normal;
        respira normal = breathing:normal; sus encías están rosadas = gums:pink;
        sin hinchazón = swelling:none; no se lame = licking:no;
        trae puesto el cono = cone:on; no se queja = pain:none""",
    "trouble": """le dio diarrea con las pastillas; vomitó dos veces; hizo popó negra;
        no comió en dos días; se le infectó la herida; se le abrieron los puntos;
        cojeó por meses; le dio una convulsión; lloró toda la noche; se desmayó;
        no podía orinar; se le hinchó la pata; se lamió hasta sangrar; se le abrió la herida;
        sangró mucho; vomitó sangre; le salía pus; tuvo diarrea; vomitó las pastillas;
        no quería comer""",
    "then": """el año pasado; hace dos años; cuando era cachorro; de cachorro; hace años;
        cuando le operaron la otra rodilla; con la otra rodilla; cuando la esterilizaron;
        el año pasado con la otra rodilla; cuando lo castraron;
        el verano pasado; antes de la cirugía; antes de la operación; en la cirugía de la otra pata;
        en 2023; de chiquita; con la otra pata; de bebé;
        el año pasado cuando le operaron la otra rodilla; cuando le operaron la primera rodilla""",
    "now": """esta vez; hoy; ahora; pero ahora; pero esta vez; pero hoy; y hoy; ahora sí;
        en cambio hoy; y ahora""",
    "ask": """puedo; le puedo; se puede; podría; está bien; es seguro; debo; podemos;
        será que puedo; me permiten; ¿puedo; hay problema en; estaría bien; está mal;
        quería saber si puedo; me pregunto si puedo""",
    "act": """darle un paracetamol; darle tylenol; darle calabaza; darle una aspirina;
        darle medio ibuprofeno; darle de mi gabapentina; darle un poco de jamón; darle un hueso;
        ponerle vaselina en la herida; ponerle pomada; darle otra pastilla de carprofeno;
        darle una pastilla extra; dejarlo subir al sillón; quitarle el cono;
        quitarle el cono en la noche; darle crema de cacahuate; darle uvas; darle chocolate;
        darle benadryl; darle melatonina; subirlo por las escaleras; dejarla correr un poco;
        bañarlo; lavarla; darle aceite de cbd; darle un advil; saltarme el masaje;
        saltarme el hielo""",
    "ifs": """si le duele en la noche; si se siente mal; si llora; si no puede dormir;
        para el dolor; si le duele; por esta noche; antes de dormir; si anda inquieto; mañana""",
    "tail": """o es malo; o no; o mejor no; solo pregunto; gracias; perdón la pregunta;
        disculpe la pregunta tonta; no le he dado nada solo pregunto;
        todavía no le doy nada; o mejor espero; espero que sí; no estoy segura""",
    "head": """una pregunta; pregunta rápida; hola; perdón la molestia; oiga; disculpe; una duda;
        duda""",
    "other": """mi otro perro; el gato; el perro de mi hermana; la perra del vecino;
        la otra perra Luna;
        mi otra perrita; la gata de mi mamá; nuestro otro gato; el perro de al lado;
        el perro de una amiga; mi esposo; mi hijo""",
    "otherhas": """está cojeando; está vomitando; tiene diarrea; no quiere comer; vomitó dos veces;
        tuvo una convulsión; tiene tos; tiene fiebre; hizo popó con sangre; anda con diarrea;
        vomitó toda la noche; no come""",
    "promise": """le doy las pastillas en 20 minutos; le voy a dar sus medicinas después de cenar;
        ahorita la saco; al rato lo voy a caminar; le pongo el hielo saliendo del trabajo;
        más tarde le hago el masaje; se la doy a las 9; ahorita le pongo el hielo;
        lo saco en media hora; se la doy en cuanto despierte""",
    "home": """llegamos bien; ya llegamos a casa; ya estamos en casa; llegamos sin problema;
        ya en casa; de regreso en casa; ya llegamos; llegamos a la casa bien; en casa ya;
        ya estamos aquí""",
    "asleep": """duerme; está dormido; dormida; ya se durmió; está durmiendo; dormidito en su cama;
        duerme en su camita; durmiendo; se quedó dormida; está echando la siesta;
        duerme como angelito; bien dormidito; dormida en el sillón; roncando; descansando;
        tomando una siesta""",
    "question": """cuándo lo puedo bañar; cuándo le quitan los puntos; a qué hora es la cita;
        cuánto tiempo lleva el cono; cuándo puede subir escaleras; cuándo puede volver a correr;
        cada cuánto le cambio la venda; lo dejo en la jaula en la noche; es normal que duerma mucho;
        cuánto dura la recuperación; lo puedo dejar dormir en el sillón; cuánto debe caminar""",
    "film": """vimos una película donde atropellan al perro y se muere;
        estamos viendo una serie donde se muere el perro;
        mi hija lloró con una película donde matan al perro;
        anoche vimos una película en la que muere el perro;
        leí un libro donde se muere el gato; en la novela el perro se desmayó y murió;
        la película donde al perro le da una convulsión me hizo llorar;
        vi un video de un perro que sangraba por todos lados""",
    "alarm": """tiene las encías blancas = gums; está convulsionando = seizure;
        no puede respirar = breathing; hizo popó negra = stool; vomitó sangre = vomiting;
        se le abrieron los puntos y se ve el hueso = incision; se desmayó = energy;
        le sale pus de la herida = incision; se comió todo el frasco de pastillas = swallowed;
        no ha orinado en 24 horas = urine; le sale mucha sangre de la herida = incision;
        se tragó mi ibuprofeno = swallowed; tiene la panza hinchada y dura = belly;
        no ha comido en dos días = appetite; está gritando de dolor = pain""",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Row:
    """A text, what must be noted of it (topics to a value, or to any that is no trouble), whether
    it asks something, which alarm stands in it, and whether all of it is to be understood."""

    text: str
    lang: str
    want: tuple[tuple[str, str], ...]
    asks: bool
    alarm: str | None = None
    plain: bool = False


class Deck:
    """Parts of one language and half, drawn by a die of their own."""

    def __init__(self, lang: str, half: str, seed: str) -> None:
        self.lang, self.half = lang, half
        self.parts = EN if lang == "en" else ES
        self.dice = random.Random(f"{lang} {half} {seed}")
        self.want: list[tuple[str, str]] = []

    def draw(self, slot: str, but: str = "") -> str:
        """A part of a slot; what it must give is added to ``want``."""
        options = [" ".join(one.split()) for one in self.parts[slot].split(";")]
        options = options[HALVES.index(self.half) :: 2]
        if but:
            options = [one for one in options if one.partition(" = ")[2] != but]
        part, _, told = self.dice.choice(options).partition(" = ")
        if told and told != "-" and slot == "good":
            about, _, value = told.partition(":")
            self.want.append((about, value))
        self.told = told
        return part

    def join(self, *said: str) -> str:
        """The parts in one text: with a stop, a comma, "and", or nothing at all."""
        text = said[0]
        for more in said[1:]:
            text += self.dice.choice((" ", " ", ", ", ". ", self._and(more))) + more
        return text

    def _and(self, more: str) -> str:
        first = more.split()[0]
        if first in ("but", "and", "pero", "y", "or", "o"):
            return " "
        return " and " if self.lang == "en" else " y "

    def often(self, share: float = 0.5) -> bool:
        """Whether something is said at all."""
        return self.dice.random() < share


def then_and_now(deck: Deck) -> Row:
    """A trouble of years ago, and what is good today."""
    framed = deck.draw("then"), deck.draw("trouble")
    then = f"{framed[0]} {framed[1]}" if deck.often(0.6) else f"{framed[1]} {framed[0]}"
    now = f"{deck.draw('now')} {deck.draw('good')}"
    return _row(deck, deck.join(then, now))


def asking(deck: Deck) -> Row:
    """Whether something may be given or done, by itself."""
    said = [f"{deck.draw('ask')} {deck.draw('act')}"]
    if deck.often():
        said[0] += f" {deck.draw('ifs')}"
    if deck.often():
        said.append(deck.draw("tail"))
    if deck.often(0.4):
        said.insert(0, deck.draw("head"))
    text = " ".join(said) if deck.often() else deck.join(*said)
    return _row(deck, text + ("?" if deck.often(0.3) else ""), asks=True)


def asking_beside(deck: Deck) -> Row:
    """Whether something may be given or done, beside what is good today."""
    asked = f"{deck.draw('ask')} {deck.draw('act')}" + ("?" if deck.often(0.3) else "")
    said = [deck.draw("good"), asked]
    if deck.often(0.3):
        said.reverse()
    return _row(deck, deck.join(*said), asks=True)


def another(deck: Deck) -> Row:
    """A trouble of another animal or a person, and what is good of the patient."""
    said = [f"{deck.draw('other')} {deck.draw('otherhas')}", f"but {deck.draw('good')}"]
    if deck.lang == "es":
        said[1] = said[1].replace("but ", "pero ", 1)
    if deck.often():
        said = [said[1].partition(" ")[2], said[0]]
    return _row(deck, deck.join(*said))


def film(deck: Deck) -> Row:
    """What is seen in a film, and what is good of the patient."""
    said = [deck.draw("film")]
    if deck.often(0.7):
        said.insert(deck.dice.choice((0, 1)), deck.draw("good"))
    return _row(deck, deck.join(*said))


def promised(deck: Deck) -> Row:
    """What will be done, and what is good now."""
    said = [deck.draw("promise"), deck.draw("good")]
    if deck.often():
        said.reverse()
    return _row(deck, deck.join(*said))


def two_and_a_question(deck: Deck) -> Row:
    """What is good of two topics, and a question."""
    first = deck.draw("good")
    said = [first, deck.draw("good", but=deck.told)]
    said.insert(2 if deck.often(0.7) else 0, deck.draw("question"))
    return _row(deck, deck.join(*said), asks=True)


def two_goods(deck: Deck) -> Row:
    """What is good of two topics."""
    first = deck.draw("good")
    return _row(deck, deck.join(first, deck.draw("good", but=deck.told)), plain=True)


def resting(deck: Deck) -> Row:
    """Home, and asleep: nothing is wrong."""
    said = [deck.draw("asleep")]
    if deck.often(0.7):
        said.insert(0, deck.draw("home"))
    return _row(deck, deck.join(*said), plain=True)


def _row(deck: Deck, text: str, asks: bool = False, plain: bool = False) -> Row:
    return Row(text, deck.lang, tuple(deck.want), asks, plain=plain)


CLASSES: dict[str, Callable[[Deck], Row]] = {
    "then_and_now": then_and_now,
    "asking": asking,
    "asking_beside": asking_beside,
    "another": another,
    "film": film,
    "promised": promised,
    "two_and_a_question": two_and_a_question,
    "two_goods": two_goods,
    "resting": resting,
}


def made(name: str, half: str) -> Iterator[Row]:
    """The messages of a class and half, in both languages: the same at every call."""
    for lang in ("en", "es"):
        deck = Deck(lang, half, name)
        for _ in range(EACH):
            deck.want = []
            yield CLASSES[name](deck)


def alarms(half: str) -> Iterator[Row]:
    """An alarm before or behind a message of each class, with and without a stop."""
    for lang in ("en", "es"):
        for name, build in CLASSES.items():
            deck = Deck(lang, half, f"alarm {name}")
            for _ in range(60):
                deck.want = []
                said = [build(deck).text, deck.draw("alarm")]
                about = deck.told
                if deck.often():
                    said.reverse()
                yield Row(deck.join(*said), lang, (), False, about)


def _answered(row: Row) -> dict[str, object]:
    from bot.cli.read import answer

    return answer({"text": row.text, "lang": row.lang, "asked": "none", "day": 6, "at": "20:30",
                   "medicines": ["carprofen", "gabapentin"], "due": 0})  # fmt: skip


def missed(row: Row) -> str | None:
    """What is wrong with the reading of a message in which nothing is amiss; None if nothing."""
    from bot.reading.wishes import tells_trouble

    got = _answered(row)
    told: list[dict[str, str]] = got["observations"]  # type: ignore[assignment]
    wrong: list[str] = []
    if got["urgency"] in ("same_day", "emergency"):
        wrong.append(f"paged {got['urgency']}")
    for one in told:
        pair = (one["about"], one["value"])
        if one["about"] != "request" and pair != ("energy", "quiet") and tells_trouble(*pair):
            wrong.append(f"notes {pair[0]}: {pair[1]}")
    for about, value in row.want:
        heard = [o["value"] for o in told if o["about"] in about.split("|")]
        if not heard or (value and value not in heard):
            wrong.append(f"lacks {about}: {value or 'any'}")
    if row.asks and not any((o["about"], o["value"]) == ("request", "question") for o in told):
        wrong.append("lacks the question")
    if not got["understood"] and not wrong and row.plain:
        wrong.append("not understood")
    if not wrong and got["asks"]:
        return f"{row.lang} | {row.text} | asked about {got['asks'][0]['about']}"  # type: ignore[index]
    return f"{row.lang} | {row.text} | {', '.join(wrong)}" if wrong else None


def lost(row: Row) -> str | None:
    """Whether the alarm of a message is neither found nor asked about."""
    got = _answered(row)
    if got["urgency"] in ("same_day", "emergency"):
        return None
    if any(one["about"] == row.alarm for one in got["asks"]):  # type: ignore[attr-defined]
        return None
    return f"{row.lang} | {row.text} | {row.alarm}"


def main(argv: list[str] | None = None) -> int:
    """Print the share of each class that is misread, and with ``--list`` the messages."""
    parser = argparse.ArgumentParser(description="Several matters in one message, read.")
    parser.add_argument("--half", choices=HALVES)
    parser.add_argument("--list", action="store_true")
    parser.add_argument("classes", nargs="*", metavar="CLASS")
    options = parser.parse_args(argv)
    for half in (options.half,) if options.half else HALVES:
        for name in options.classes or (*CLASSES, "alarms"):
            rows = list(alarms(half) if name == "alarms" else made(name, half))
            wrong = [w for row in rows if (w := (lost if row.alarm else missed)(row))]
            paged = sum("| paged" in one for one in wrong)
            asked = sum("| asked" in one for one in wrong)
            print(f"{half} {name}: {len(rows)}, paged {paged}, misread "
                  f"{100 * (len(wrong) - asked) / len(rows):.1f} %, "
                  f"asked about {100 * asked / len(rows):.1f} %")  # fmt: skip
            if options.list:
                print("\n".join(wrong))
    return 0


if __name__ == "__main__":
    sys.exit(main())

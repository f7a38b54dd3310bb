"""Words of no weight beside an urgent report never lower it: hope, doubt, thanks, apology."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.cli.read import answer
from tests.reading.joining import read_at
from tests.triage.table import LEVELS

REPLIES = Path(__file__).parents[1] / "replies"
SAME_DAY = LEVELS.index("same_day")
BESIDE = """
hope thats ok | hope that's normal | i hope its nothing | hopefully its fine | fingers crossed
hoping its just normal healing | hope you had a good weekend | hope i'm not bothering you
i wish he could talk | i was hoping you could help | would love your advice | any advice please
not sure if thats normal | dont know if its important | no idea if thats bad | does it matter
if that makes sense | if that helps | should i worry | is that ok | is this something to worry about
am i overreacting | probably nothing | could be nothing | what do you think | let me know
sorry to bother you | sorry for the late message | sorry if this is a silly question
dont want to be a nuisance | better safe than sorry | thanks in advance | thank you so much
im so worried | poor thing | just letting you know | just so you know | oh well | no rush
no sé si es normal | espero que no sea nada | ojalá no sea grave | no sé si preocuparme
a lo mejor no es nada | dios quiera que no sea nada | perdón por molestar | disculpe la molestia
no quiero molestar | es normal eso | será normal | qué opina | estoy preocupada | por si acaso
gracias | muchas gracias doctora | quedo atenta | saludos | pobrecita | me puede ayudar
"""
TALK_BEFORE = """
ok so dont panic but | hiya only me again | probably nothing as usual with me but
right quick update from us | hope your weekend was lovely | not being funny but
me again the anxious one | aquí molestando otra vez | fíjese que no quiero alarmar pero
espero que tengan bonito día | buenas tardes una consultita rápida | ojalá no sea nada pero
hope youre all keeping well | just a daft question | wishing you all a merry xmas
sorry its so early | ojalá tengan buen turno | tengo una pregunta
deseo que se encuentren muy bien | hola soy yo otra vez | longing for some sleep here
happy sunday everyone | wondering if youre open | i feel so silly asking | ojalá estén de guardia
quisiera platicarles algo | perdone mi ignorancia | no sé por dónde empezar
praying someone is up | just wanted to ask | hoping to hear from you
afternoon all hope youre well | espero no interrumpir | quería preguntarles
ojalá me puedan contestar | hola equipo lindo | hope its ok to write here | long time no speak
wish i didnt have to write again | excuse the hour | qué tal doctora | espero se encuentren bien
me da pena preguntar | oiga una cosa
"""
TALK_AFTER = """
dunno if u need to know that | my sister reckons its nothing | god i hate this
ps love the little reminders | the internet says all sorts | sorry typing with one hand
im sure youve seen worse | gonna make a cup of tea | thank god its friday tomorrow
would hate to waste your time | please dont laugh | is this chat even read at night
first time dog mum here | hope im doing this right | didnt know who else to ask
a lo mejor estoy de histérica | me dijo mi mamá que no es nada | ay qué pena con ustedes
ojalá me lean pronto | disculpe la letra | no sé ni a quién preguntar
mil gracias de verdad por todo | soy primeriza en esto | hope youre not too busy tonight
wish i had your patience | i am useless at texting | we have to be at work by nine
anyway thats my lot | my mother thinks im daft | is there even anyone there
praying you see this soon | espero que alguien esté despierto | quisiera no molestar tanto
mañana trabajo temprano | yo creo que exagero | cant wait for you to open on monday
wish my husband was home | thats everything i think | dont worry about replying fast
should i have a glass of wine | i read your leaflet twice | hoping one of you is awake
no need to answer if busy | espero no ser una lata | qué susto me llevé | me urge dormir un poco
en internet dice de todo | hope the traffic isnt awful for you | wish id studied medicine
who would have a dog eh | am i allowed to message this late | my phone is at two percent
not trying to be difficult | thank u in advance | let me go make coffee | espero me entiendan
se me va el alma | ando bien nerviosa | ni desayuné por andar con esto
hope theres someone on shift | id love to hear back | i just feel awful about it
could you let me know | its pouring down here | my boss is going to kill me | sorry for the essay
do you guys do sundays | espero su respuesta | no tengo carro ahorita
qué pena con usted de veras | ahí me dice
"""
"""Small talk as owners write it: other topics, other people, wishes about these."""


def _each(table: str) -> list[str]:
    return [one.strip() for line in table.strip().splitlines() for one in line.split("|")]


TAILS = _each(BESIDE)
BEHIND = ("{said} {tail}", "{said}, {tail}", "{said}. {tail}", "{said} - {tail}", "{said}\n{tail}")
BEFORE = ("{tail}. {said}", "{tail}, {said}", "{tail}\n{said}")
UNSTOPPED = "{tail} {said}"


def _level(row: dict[str, object], text: str) -> int:
    asked = {k: row[k] for k in ("lang", "species", "day", "asked", "at")}
    return LEVELS.index(str(answer({**asked, "text": text})["urgency"]))


@cache
def _urgent() -> list[tuple[dict[str, object], int]]:
    """Labelled replies that the grammar reads as urgent when they stand alone."""
    rows = []
    for file in ("heldout.jsonl", "tuned.jsonl"):
        for line in (REPLIES / file).read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            level = read_at(row)
            if level >= SAME_DAY and len(row["text"]) > 15:
                rows.append((row, level))
    return rows


def _joined(form: str, text: str, tail: str) -> str:
    said = text.rstrip(".! ") if form.startswith("{said}") else text
    return form.format(said=said, tail=tail)


@settings(max_examples=1500, deadline=None, derandomize=True)
@given(st.data())
def test_what_stands_behind_or_before_a_stop_takes_nothing_away(data: st.DataObject) -> None:
    row, level = data.draw(st.sampled_from(_urgent()))
    form = data.draw(st.sampled_from((*BEHIND, *BEFORE)))
    text = _joined(form, str(row["text"]), data.draw(st.sampled_from(TAILS)))
    assert _level(row, text) >= level, text


def test_nearly_nothing_is_taken_away_where_no_stop_stands_between() -> None:
    """Where a hope runs into the report without a stop, its end is a guess: at most 1 in 100."""
    fallen, tried = _fallen(UNSTOPPED, TAILS, 9)
    assert len(fallen) * 100 <= tried, fallen


def test_small_talk_without_a_stop_takes_nearly_nothing_away() -> None:
    for form, table in ((UNSTOPPED, TALK_BEFORE), ("{said} {tail}", TALK_AFTER)):
        fallen, tried = _fallen(form, _each(table), 13)
        assert len(fallen) * 100 <= tried, fallen


def _fallen(form: str, talk: list[str], step: int) -> tuple[list[str], int]:
    """What was read as less urgent with words beside it, and how many were tried."""
    fallen, tried = [], 0
    for number, (row, level) in enumerate(_urgent()):
        for tail in talk[number % step :: step]:
            tried += 1
            text = _joined(form, str(row["text"]), tail)
            if _level(row, text) < level:
                fallen.append(text)
    return fallen, tried

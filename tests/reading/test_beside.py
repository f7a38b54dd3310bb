"""Words of no weight beside an urgent report never lower it: hope, doubt, thanks, apology."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.cli.read import answer
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
TAILS = [one.strip() for line in BESIDE.strip().splitlines() for one in line.split("|")]
BEHIND = ("{said} {tail}", "{said}, {tail}", "{said}. {tail}", "{said} - {tail}", "{said}\n{tail}")
BEFORE = ("{tail}. {said}", "{tail}, {said}", "{tail}\n{said}")
UNSTOPPED = "{tail} {said}"


def _level(row: dict[str, object], text: str) -> int:
    asked = {k: row[k] for k in ("lang", "species", "day", "asked", "at")}
    return LEVELS.index(str(answer({**asked, "text": text})["urgency"]))


@cache
def _urgent() -> list[tuple[dict[str, object], int]]:
    """Labelled replies that are read as urgent when they stand alone."""
    rows = []
    for file in ("heldout.jsonl", "tuned.jsonl"):
        for line in (REPLIES / file).read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            level = _level(row, row["text"])
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
    fallen, tried = [], 0
    for number, (row, level) in enumerate(_urgent()):
        for tail in TAILS[number % 9 :: 9]:
            tried += 1
            text = _joined(UNSTOPPED, str(row["text"]), tail)
            if _level(row, text) < level:
                fallen.append(text)
    assert len(fallen) * 100 <= tried, fallen

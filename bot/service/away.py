"""At the start, and whenever the bot runs again: was it away so long (switched off, asleep,
without its storage), or set back to a copy, that what fell due meanwhile must be asked about?"""

from __future__ import annotations

import logging
from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from bot.context.practice import Practice
from bot.context.words import when
from bot.household.away import KIND, Span, passed
from bot.household.hour import PATIENCE, STALE
from bot.model.chart import RosterLine
from bot.model.effects import Effects
from bot.model.ids import EventId, PatientId, PromptId
from bot.store import load
from bot.store.database import Tx, moment, stamp
from bot.store.each import attempt, each
from bot.store.off import note_off
from bot.store.rows import log, put_due, send
from bot.store.staff_ways import ways

logger = logging.getLogger(__name__)

ALIVE, RESTORED = "alive", "restored"
"""Settings: when the bot last ran (UTC), and from when the copy is that it was set back to."""
AWAY, BACK = "away_since", "away_until"
"""Settings: since when it was away, and from when on it has run again. They stand until it has
been looked back."""
BEAT = timedelta(minutes=5)
"""How often it is written down that the bot runs."""


BEGAN, MOMENT = "began", 2 * BEAT
"""The setting of since when the bot has run but for so short breaks. When a life ended is known to
``BEAT`` only, and one that was shorter wrote down its start alone."""


def ran_on(tx: Tx, now: datetime, most: timedelta) -> timedelta:
    """At a start: how long it has run, ``most`` at most, where it was gone for a moment only. Else
    what waits would wait anew in each of many short lives, and never too long."""
    began, alive = tx.one("setting", key=BEGAN), tx.one("setting", key=ALIVE)
    if began and alive and timedelta(0) <= now - moment(alive["value"]) <= MOMENT:
        return max(min(now - moment(began["value"]), most), timedelta(0))
    tx.run("setting_put", key=BEGAN, value=stamp(now))
    return timedelta(0)


def beat(tx: Tx, now: datetime, *, gaps: bool) -> bool:
    """It is running. Where it was not for long (``gaps``: a gap is one, and no clock in a hurry),
    or was put back to a copy, that is kept until it has been looked back; whether it must be."""
    alive, restored = tx.one("setting", key=ALIVE), tx.one("setting", key=RESTORED)
    since = moment(alive["value"]) if alive and gaps else now
    if now - since > 2 * BEAT:
        note_off(tx, since, now)
    if now - since > PATIENCE:
        tx.run("setting_first", key=AWAY, value=stamp(since))
        tx.run("setting_drop", key=BACK)
    tx.run("setting_put", key=ALIVE, value=stamp(now))
    looks = restored is not None or tx.one("setting", key=AWAY) is not None
    if looks:
        tx.run("setting_first", key=BACK, value=stamp(now))
    return looks


def unseen(tx: Tx, now: datetime) -> bool:
    """Whether it is not known yet what was missed. Where that cannot be found out, it is called
    known after a while: else nothing that waits would ever come."""
    alive, back = tx.one("setting", key=ALIVE), tx.one("setting", key=BACK)
    if alive is not None and now - moment(alive["value"]) > 2 * BEAT:
        return True  # it beats in a moment
    if back is None:
        return tx.one("setting", key=RESTORED) is not None
    return abs(now - moment(back["value"])) <= PATIENCE


def look_back(tx: Tx, practice: Practice, now: datetime) -> datetime | None:
    """Since when the bot was away, where that matters: a message to each household falls due,
    and staff hear of it once. None where nothing was missed."""
    restored, away = tx.one("setting", key=RESTORED), tx.one("setting", key=AWAY)
    back = tx.one("setting", key=BACK)
    for key in (RESTORED, AWAY, BACK):
        tx.run("setting_drop", key=key)
    if (kept := restored or away) is None:
        return None
    since, everybody = moment(kept["value"]), load.everybody(tx)
    # Not until now: where this could not be done for hours, it has run in them.
    until = min(moment(back["value"]), now) if back else now
    off = since, until
    # Nothing of most households has passed in a short time: what fell due comes now.
    short = restored is None and until - since <= STALE

    def asked_of(id: PatientId) -> list[PromptId] | None:
        ready = _ready(tx, id)
        return ready if not short or _passed(tx, id, off, now, ready) else None

    looked = each(tx, asked_of, [id for id, row in everybody.found.items() if row.under_way])
    asked, unread = looked.found, {**everybody.unread, **looked.unread}
    if not asked and not unread:
        return None
    for patient in (*asked, *unread):
        data: dict[str, object] = {
            "since": since.isoformat(), "until": until.isoformat(),
            "restored": restored is not None, "queued": asked.get(patient, []),
        }  # fmt: skip
        if patient in asked:
            _fell_due(tx, since, patient, data)
        else:  # where not even its number is there, none is kept
            attempt(tx, ("due", patient), partial(_fell_due, tx, since, patient, data))
    rows = tuple(everybody.found.values())
    _tell_staff(tx, practice, off, now, rows, len(asked), unread, restored is not None)
    logger.warning("away since %s: %d households are asked about their doses", since, len(asked))
    return since


def _fell_due(tx: Tx, since: datetime, patient: PatientId, data: dict[str, object]) -> None:
    put_due(tx, f"{KIND}:{patient}:{stamp(since)}", KIND, since, patient, data)


def _ready(tx: Tx, patient: PatientId) -> list[PromptId]:
    """The prompts that were ready and have reached nobody: not sent, whatever their mark says."""
    waiting = tx.all("outbox_prompts_waiting", patient_id=patient)
    found = dict.fromkeys(int(row["dedupe"].split(":")[1]) for row in waiting)
    return [PromptId(one) for one in found if not came(tx, PromptId(one))]


def came(tx: Tx, prompt: PromptId) -> bool:
    """Whether a prompt has reached anybody."""
    keys = {"first": f"prompt:{prompt}:", "last": f"prompt:{prompt};"}
    return bool(tx.all("outbox_prompt_arrived", **keys))


def _passed(tx: Tx, patient: PatientId, off: Span, now: datetime, ready: list[PromptId]) -> bool:
    chart = load.chart(tx, patient, now)
    return chart is not None and passed(chart, off, now, ready)


def _tell_staff(
    tx: Tx, practice: Practice, off: Span, now: datetime, roster: Sequence[RosterLine],
    households: int, unread: Mapping[PatientId, str], restored: bool,
) -> None:  # fmt: skip
    """``unread``: whoever cannot be looked at. Their row falls due as well, and is tried until it
    can be; until then somebody must phone."""
    lang = practice.clinic.language
    zone, since = ZoneInfo(practice.clinic.zone), off[0]
    began, ended = (when(one.astimezone(zone), now.astimezone(zone), lang) for one in off)
    cases = [f"{row.plan.patient} {case.id}" for row in roster for case in row.cases]
    text = practice.words.say(
        "restored_staff" if restored else "away_staff",
        lang,
        since=began,
        until=ended,
        count=len({row.id for row in roster if row.under_way} | set(unread)),
        asked=households,
        cases=", ".join(cases) or "0",
    )
    if unread:
        names = ", ".join(unread.values())
        text = f"{text} {practice.words.say('unread_staff', lang, names=names)}"
    out = Effects(EventId(f"{KIND}:{stamp(since)}"))
    for chat in ways(tx):
        out.say(chat, text, urgent=True)
    send(tx, out.sends, now, out.cause)
    kept: dict[str, object] = {"since": since.isoformat(), "until": off[1].isoformat()}
    log(tx, "not_sent", "bot", text, now, None, kept, out.cause)

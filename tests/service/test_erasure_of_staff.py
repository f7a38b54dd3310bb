"""One of the practice, of a name that no pattern fits, does all there is to do, leaves, and is
erased; and so does one at home. Nothing of them is found afterwards, in no file."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from typing import Final

import pytest

from bot.model.effects import ClockIsRight, Effects, Entry, Note
from bot.model.ids import EventId, PatientId, PersonId, SourceId
from bot.model.observation import Observation
from bot.records.erasure import Tally
from bot.records.names import parts_of
from bot.service import upkeep
from bot.store.audit import verify
from bot.store.erase import StillHere
from bot.store.erase_stranger import StrangerErasure
from bot.store.erase_table import MADE_OF_THE_LOG, PLACES, SWEPT, swept
from demo.standin.values import Chat, Message, User
from tests.service.box import Box, at, plan
from tests.service.test_erasure_leaves_nothing import found, places
from tests.service.test_former_staff import opens, removes, staff_of

MEMBER = "Anne-Lou O’Brannoch 🐶 Ольга 李 小龙 Jö"
AT_HOME = "D'Arvillé Zoë🐱 Łuk Ñu"
ORDER = """/enrol
patient: Bruno
species: dog
weight_kg: 22.7
procedure: Plate, left
clinician: Dr Okafor
surgery: 2026-03-03
home: 2026-03-04 10:30
zone: America/Denver
protocol: general-orthopaedic
"""
MEDICINE = (
    "/medicine Canela\nname: gabapentin\namount: {en: one capsule, es: una cápsula}\n"
    "every_hours: 12\nfirst_dose: 2026-03-05 20:00\ndays: 5"
)


class Acts:
    """What one of the practice does, in a chat of theirs."""

    def __init__(self, box: Box, who: User, chat: Chat) -> None:
        self.box, self.who, self.chat = box, who, chat

    async def says(self, text: str, reply_to: Message | None = None) -> None:
        self.box.stage.standin.say(self.who, self.chat, text, reply_to)
        await self.box.stage.settle()

    async def taps(self, label: str, message: Message | None = None) -> None:
        self.box.stage.standin.press(self.who, self.chat, label, message)
        await self.box.stage.settle()

    def told(self, words: str) -> Message:
        return self.box.stage.standin.last(self.chat, words)


async def _comes(box: Box) -> Acts:
    """They join, open an own chat and a group of their own, and act in the group of all."""
    user = box.stage.standin.user(MEMBER, username="zz_annelou")
    await box.stage.employ(user, MEMBER, "administrator")
    box.desk.members[user.id] = user
    await opens(box, user, box.stage.standin.group("Night", [user]), rank=1)
    await opens(box, user, rank=1)
    return Acts(box, user, box.desk)


async def _cares(acts: Acts) -> None:
    """Of patients: enrol, link, order, a case from its page to its end, a hold and its release."""
    box = acts.box
    await acts.says(ORDER)
    await acts.says("/link Canela")
    await acts.says("/people Canela")
    await box.to(1, 11)
    await box.says(box.ines, "there is yellow pus on the cut")
    case = box.case("pus")
    await acts.taps("I take it", case)
    await acts.says("Please come in at 11.", case)
    await box.says(box.ines, "Anne-Lou said 11, ok")
    await acts.taps("Close", case)
    await acts.taps("Advice given", case)
    await acts.says("/hold Canela walks")
    await acts.says("/release Canela walks")
    await acts.says("/hold Canela walks")
    await acts.says("/note I looked at her", case)
    await acts.says(MEDICINE)
    await acts.taps("Confirm this dose")
    await acts.taps("Clinician's decision", acts.told("Why?"))
    await box.says(box.ines, "she threw up blood")
    await acts.taps("I take it", box.case("EMERGENCY"))
    await box.staff_says("As Anne Lou said: come now", box.case("EMERGENCY"))
    for text in (f"{MEMBER} saw her", "with ANNE LOU O'BRANNOCH", "o'brannoch phoned", "ask ОЛЬГА",
                 "小龙说", "Jo knows, and jö too", "@zz_annelou"):  # fmt: skip
        await box.staff_says(f"/note {text}", box.case("EMERGENCY"))


async def _invites(acts: Acts) -> User:
    """Of the practice: one is let in, one refused, one never comes, one waits; who was refused."""
    box, people = acts.box, acts.box.stage.standin
    refused = people.user("Refusnik Unoqo", username="zz_refused")
    ola = people.user("Ola", username="zz_olaprima")
    for user, label in ((ola, "Yes, let in"), (refused, "No, keep out"),
                        (people.user("Who Waits"), ""), (None, "")):  # fmt: skip
        await acts.says(f"/staff add {user.name if user else 'Nobody'} staff")
        link = acts.told("Link for").words.split()[-1]
        if user is not None:
            people.start(user, link)
            await box.stage.settle()
        if label:
            people.press(acts.who, people.private(acts.who), label, None)
            await box.stage.settle()
    ola.username = "zz_olasecunda"  # the log has the name that they came with
    await box.says(ola, "/staff")
    await acts.says("/staff")
    await acts.says("/board")
    out = Effects(EventId(f"message:{acts.who.id}:9"))
    out.add(ClockIsRight())
    await box.stage.app.act(out)
    return refused


async def _leaves(acts: Acts) -> int:
    """Their chat is lost, they are taken out, what is left is a group, and they try it again."""
    box, people = acts.box, acts.box.stage.standin
    number = (await staff_of(box))[MEMBER].id
    people.block(acts.who)
    await box.stage.settle()
    with pytest.raises(StillHere, match="/staff remove"):
        await _erase(box, lambda one: one.member(number))
    await removes(box, MEMBER)
    await acts.says("/log Canela")
    return number


async def _corrects(acts: Acts) -> None:
    """On the review pages: what was read is another thing."""
    member = (await staff_of(acts.box))[MEMBER]
    out = Effects(EventId("review:1:1"), member=member.id)
    new, source = Observation("pain", "mild"), SourceId("message:1:1")
    told = {"observation": new.as_dict(), "day": 1, "source": source}
    out.add(
        Note(PatientId(1), new, 1, source, member.name, None, at(1, 11)),
        Entry("noted", member.name, "mild pain", PatientId(1), told),
    )
    await acts.box.stage.app.act(out)


async def _erase(box: Box, whom: Callable[[StrangerErasure], Tally]) -> None:
    """What is told beforehand is what is done, and done again there is nothing to do."""
    now, db = box.stage.clock.now(), box.stage.app.db

    async def tried(*, do: bool) -> dict[str, int]:
        tally = await db.transact(lambda tx: whom(StrangerErasure(tx, now, 7, "Kim", do=do)))
        return tally.goes

    assert await tried(do=False) == await tried(do=True) != {}
    assert await tried(do=False) == {}
    await db.compact()


async def _nothing_is_left(box: Box, name: str, user: User, kept: tuple[str, ...]) -> None:
    path, words = Path(box.stage.app.db.path), words_of(name, user)
    assert (found(path, *words), places(path, *words)) == ({}, [])
    assert set(found(path, *kept)) == set(kept)
    result = await box.stage.app.db.read(verify)
    assert (result.strays, result.breaks) == ((), ())


def words_of(name: str, user: User) -> tuple[str, ...]:
    return (name, *parts_of(name), str(user.id), user.username or "–")


def columns(path: Path, words: tuple[str, ...]) -> set[str]:
    """The columns in which one of these words stands."""
    with closing(sqlite3.connect(path)) as plain:
        return {
            f"{table}.{column}"
            for table in PLACES
            for (column,) in plain.execute("SELECT name FROM pragma_table_info(?)", (table,))
            for (value,) in plain.execute(f'SELECT DISTINCT "{column}" FROM "{table}"')  # noqa: S608
            if any(word in str(value) for word in words)
        }


ACTED: Final = frozenset(
    "case_file.acknowledged_by case_file.answered_by case_file.body case_file.closed_by "
    "case_file.note desk.name desk.opened_by due.data hold.body hold.ended_by inbox.body "
    "invitation.made_by invitation.name invitation.used_by log.author log.data log.text "
    "lost_chat.chat_id observation.author outbox.body outbox.chat_id outbox.dedupe "
    "patient.enrolled_by patient.plan setting.value staff.name thread.body thread.chat_id "
    "turned_away.sender".split()
)
"""Where the play leaves the member's name or account; else it would show nothing."""


async def test_who_did_all_there_is_to_do_is_found_nowhere(practice: Box) -> None:
    practice.marco.name, practice.marco.username = AT_HOME, "zz_darville"
    box = await practice.with_patient(plan())
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(box.marco, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()
    await box.says(box.marco, "comió bien")
    acts = await _comes(box)
    await _cares(acts)
    await _corrects(acts)
    refused = await _invites(acts)
    second = (await staff_of(box))["Ola"].id
    await upkeep.forget_strangers(box.stage.app.db, box.stage.clock.now() + timedelta(days=31))
    number, path = await _leaves(acts), Path(box.stage.app.db.path)
    assert columns(path, words_of(MEMBER, acts.who)) >= ACTED
    kept = ("phoned", "saw her", "Kim, nurse", "+1 303 555 0107", "yellow pus")
    await _erase(box, lambda one: one.member(number))
    await _nothing_is_left(box, MEMBER, acts.who, (*kept, "D'Arvillé", "Refusnik Unoqo"))
    await _erase(box, lambda one: one.stranger(refused.id))
    await _nothing_is_left(box, "Refusnik Unoqo", refused, kept)
    await removes(box, "Ola")
    await _erase(box, lambda one: one.member(second))
    assert places(path, "zz_ola") == []
    await box.says(box.marco, "Anne-Lou no vino")
    await box.says(box.marco, "borrar mis datos")
    await box.taps(box.marco, "Salir y borrar mis datos")
    await _erase(box, lambda one: one.person(PersonId(2)))
    await _nothing_is_left(box, AT_HOME, box.marco, kept)


async def test_no_column_is_forgotten(practice: Box) -> None:
    """Whoever adds one says in `erase_table.py` what becomes of it."""
    with closing(sqlite3.connect(practice.stage.app.db.path)) as plain:
        tables = {name for (name,) in plain.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT GLOB 'sqlite_*'"
                " AND name NOT GLOB ?",
            (f"{MADE_OF_THE_LOG}*",))}  # fmt: skip
        there = {
            table: {row[0] for row in plain.execute(
                "SELECT name FROM pragma_table_xinfo(?)", (table,))}
            for table in tables
        }  # fmt: skip
    assert {table: set(columns) for table, columns in PLACES.items()} == there
    assert {table for table in PLACES if swept(table)} == set(SWEPT)

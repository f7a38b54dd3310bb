"""A nurse runs the desk from a phone: nothing falls between two people."""

from __future__ import annotations

import json

import pytest

from bot.model.settings import Clinic
from bot.store import load
from demo.stage import Stage
from demo.standin.values import User
from tests.service.box import CLINIC, Box, at, plan


async def _cases(box: Box, patient: int = 1) -> list[dict[str, object]]:
    rows = await box.stage.app.db.read(lambda tx: tx.all("cases_of", patient_id=patient))
    return [dict(row) for row in rows]


async def _row(box: Box, case: str) -> dict[str, object]:
    def read(tx: object) -> dict[str, object]:
        connection = tx._connection  # type: ignore[attr-defined]
        found = connection.execute("SELECT * FROM case_file WHERE id = ?", (case,)).fetchone()
        return dict(found)

    return await box.stage.app.db.read(read)


async def _join(box: Box, name: str, role: str) -> User:
    user = box.stage.standin.user(name)
    await box.stage.employ(user, name, role)
    return user


# -- the life of a case ---------------------------------------------------------------


@pytest.mark.begins(5, 10)
async def test_a_case_is_taken_answered_and_closed_with_an_outcome_and_a_note(
    canela: Box,
) -> None:
    await canela.says(canela.ines, "he threw up blood")
    case = canela.case("EMERGENCY")
    await canela.staff_taps("I take it", case)
    await canela.staff_says("Come in now please, ring at the door.", canela.case("EMERGENCY"))
    row = await _row(canela, "1-2")
    assert (row["state"], row["acknowledged_by"], row["answered_by"]) == (
        "answered", "Kim, nurse", "Kim, nurse",
    )  # fmt: skip
    await canela.staff_taps("Close", case)
    await canela.staff_taps("Sent to emergency", case)
    await canela.staff_says("/note seen at 10:40, stable", case)
    row = await _row(canela, "1-2")
    assert (row["state"], row["outcome"], row["note"]) == (
        "closed", "emergency", "seen at 10:40, stable",
    )  # fmt: skip
    assert "Closed by Kim, nurse, 10:00: Sent to emergency" in canela.case("EMERGENCY").words
    log = await canela.log()
    states = [r.data.get("state") for r in log if r.data.get("case") == "1-2"]
    assert [state for state in states if state] == ["acknowledged", "closed"]


async def test_a_second_person_sees_who_has_it(canela: Box) -> None:
    surgeon = await _join(canela, "Dr Okafor", "clinician")
    canela.desk.members[surgeon.id] = surgeon
    await canela.to(5, 10)
    await canela.says(canela.ines, "the incision smells bad")
    case = canela.case("TODAY")
    data = case.buttons[0][0]["callback_data"]
    await canela.staff_taps("I take it")
    callback = canela.stage.standin.press_data(surgeon, case, data)
    await canela.stage.settle()
    assert canela.stage.standin.answer(callback) == "Kim, nurse already has it"


async def test_a_deadline_that_passes_is_told_to_everyone(canela: Box) -> None:
    okafor = await _join(canela, "Dr Okafor", "clinician")  # on duty on Mondays
    other = await _join(canela, "Dr Abara", "clinician")
    await canela.to(5, 21)
    await canela.says(canela.ines, "the incision smells bad")
    assert "Answer by: tomorrow at 09:00" in canela.case("TODAY").words
    await canela.to(6, 8, 30)
    await canela.staff_taps("I take it")
    await canela.to(6, 9)
    assert "OVERDUE, with Kim, nurse" in canela.case("OVERDUE").words
    assert "OVERDUE" in canela.heard(okafor)[-1]
    assert canela.heard(other)[-1].startswith("Welcome")  # on no list: not woken


@pytest.mark.begins(5, 10)
async def test_staff_read_in_their_own_language_what_was_understood(canela: Box) -> None:
    await canela.says(canela.ines, "vomitó dos veces y no quiere comer nada")
    case = canela.case("TODAY").words
    assert "“vomitó dos veces y no quiere comer nada”" in case
    assert "Understood: vomiting (2×), not eating" in case


# -- duty ------------------------------------------------------------------------------


@pytest.fixture
def clinic() -> Clinic:
    """With a duty list: on Sundays Dr Okafor, then Dr Lind."""
    duty = {day: ["Dr Okafor", "Dr Lind"] for day in ("sun", "mon")}
    return Clinic.model_validate({**CLINIC, "duty": duty, "emergency_answer_minutes": 60})


async def test_unacknowledged_cases_climb_the_duty_list_of_the_day(canela: Box) -> None:
    okafor = await _join(canela, "Dr Okafor", "clinician")
    lind = await _join(canela, "Dr Lind", "clinician")
    await canela.to(6, 2)  # on Monday, in the night
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(6, 2, 16)
    assert "EMERGENCY" in canela.last(okafor, "Nobody has taken").words
    assert not any("EMERGENCY" in text for text in canela.heard(lind))
    await canela.to(6, 2, 31)
    assert "EMERGENCY" in canela.last(lind, "Nobody has taken").words
    await canela.taps(lind, "I take it")
    assert "Taken by Dr Lind" in canela.last(okafor, "Taken by").words
    assert "Taken by Dr Lind" in canela.case("Taken by").words


# -- rights ----------------------------------------------------------------------------


async def test_a_stranger_in_the_staff_chat_can_do_nothing(canela: Box) -> None:
    stranger = canela.stage.standin.user("Somebody")
    canela.desk.members[stranger.id] = stranger
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    callback = canela.stage.standin.press(stranger, canela.desk, "I take it")
    canela.stage.standin.say(stranger, canela.desk, "/end Canela")
    await canela.stage.settle()
    assert "I do not know you yet, Somebody" in (canela.stage.standin.answer(callback) or "")
    assert (await _cases(canela))[0]["state"] == "open"
    refused = await canela.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    assert sum(row["kind"] == "refused" for row in refused) == 2


async def test_a_nurse_may_not_change_a_plan_and_an_administrator_names_people(
    canela: Box,
) -> None:
    await canela.staff_says("/staff add Ola staff")
    link = canela.case("Link for Ola").words.split()[-1]
    ola = canela.stage.standin.user("Ola")
    canela.stage.standin.start(ola, link)
    await canela.stage.settle()
    await canela.staff_taps("Yes, let in")
    assert "Welcome, Ola" in canela.last(ola).words
    canela.desk.members[ola.id] = ola
    canela.stage.standin.say(ola, canela.desk, "/plan Canela")
    await canela.stage.settle()
    assert "clinician / administrator" in canela.case("Only these may").words
    await canela.staff_says("/staff remove Ola")
    canela.stage.standin.say(ola, canela.desk, "/board")
    await canela.stage.settle()
    assert "I do not know you yet, Ola" in canela.case("do not know you").words
    await canela.staff_says("/staff remove Kim, nurse")
    assert "last administrator" in canela.case("last administrator").words


# -- ready answers ----------------------------------------------------------------------


async def test_answering_an_owner_takes_two_taps_and_goes_out_in_their_language(
    canela: Box,
) -> None:
    await canela.taps(canela.ines, "Español")
    await canela.to(5, 10)
    await canela.says(canela.ines, "¿es normal el moretón?")
    await canela.staff_taps("Ready answers")
    await canela.staff_taps("Send 1")
    assert "Mantenga a Canela en calma" in canela.last(canela.ines, "escribe").words
    assert "✓ Sent to Ines (Canela)." in canela.case("✓ Sent").words
    assert (await _cases(canela))[0]["state"] == "answered"
    before = len(canela.on_desk())
    await canela.says(canela.ines, "gracias, ya le saqué la foto")
    assert any("ya le saqué la foto" in text for text in canela.on_desk()[before:])


# -- changing the plan -------------------------------------------------------------------


@pytest.mark.begins(4, 10)
async def test_a_medicine_is_stopped_with_a_reason_and_never_asked_for_again(
    canela: Box,
) -> None:
    await canela.staff_says("/plan Canela")
    await canela.staff_taps("Medicines")
    await canela.staff_taps("Stop carprofen")
    question = canela.case("Why?").words
    assert "Please give Canela no more carprofen" in question
    assert not any("no more carprofen" in text for text in canela.heard(canela.ines))
    await canela.staff_taps("Suspected side effect")
    assert "no more carprofen" in canela.last(canela.ines).words
    await canela.to(4, 20)
    evening = canela.last(canela.ines, "cephalexin").words
    assert "carprofen" not in evening
    entry = next(r for r in await canela.log() if r.kind == "plan" and r.author == "Kim, nurse")
    assert entry.data["why"] == "Suspected side effect"


@pytest.mark.begins(4, 10)
async def test_a_reason_may_be_written_and_leaving_it_changes_nothing(canela: Box) -> None:
    await canela.staff_says("/plan Canela")
    await canela.staff_taps("Cone")
    await canela.staff_taps("Leave it")
    assert "stays as it is" in canela.case("stays as it is").words
    await canela.staff_says("/plan Canela")
    await canela.staff_taps("Walks")
    await canela.staff_taps("Hold the walks")
    await canela.staff_says("limped after Sunday", canela.case("Why?"))
    assert "stay at" in canela.last(canela.ines).words
    assert "changed by Kim, nurse: limped after Sunday" in canela.case("changed by").words


@pytest.mark.begins(4, 10)
async def test_a_new_medicine_is_checked_and_then_asked_for(canela: Box) -> None:
    order = (
        "/medicine Canela\nname: gabapentin\namount: {en: two capsules (200 mg), "
        "es: dos cápsulas (200 mg)}\nevery_hours: 12\nfirst_dose: 2026-03-07 20:00\ndays: 5"
    )
    await canela.staff_says(order.replace("every_hours: 12", "every_hours: twelve"))
    assert "medicine:3" in canela.case("Nothing was changed").words
    await canela.staff_says(order)
    assert "no figures" in canela.case("Not ordered yet").words
    await canela.staff_taps("Confirm this dose")
    kept = next(r for r in await canela.log() if r.kind == "confirmed")
    assert kept.author == "Kim, nurse"
    assert "two capsules (200 mg)" in kept.text
    await canela.staff_taps("Clinician's decision")
    assert "new medicine: gabapentin" in canela.last(canela.ines).words
    await canela.to(4, 20)
    assert "gabapentin: two capsules" in canela.last(canela.ines, "gabapentin").words


@pytest.mark.begins(4, 10)
async def test_back_in_hospital_nothing_is_sent_until_resumed(canela: Box) -> None:
    await canela.staff_says("/plan Canela")
    for label in ("Pause or end", "Pause: back in hospital", "Not as hoped"):
        await canela.staff_taps(label)
    before = len(canela.heard(canela.ines))
    await canela.to(6, 10)
    assert len(canela.heard(canela.ines)) == before
    await canela.staff_says("/plan Canela")
    for label in ("Pause or end", "Resume", "Healing well"):
        await canela.staff_taps(label)
    await canela.to(6, 20)
    assert "cephalexin" in canela.last(canela.ines, "cephalexin").words
    assert len(canela.heard(canela.ines)) > before + 1


@pytest.mark.begins(4, 10)
async def test_when_the_patient_has_died_everything_stops_in_silence(canela: Box) -> None:
    await canela.says(canela.ines, "he threw up blood")
    heard, desk = len(canela.heard(canela.ines)), canela.case("EMERGENCY")
    await canela.staff_says("/plan Canela")
    for label in ("Pause or end", "The patient died", "Clinician's decision"):
        await canela.staff_taps(label)
    pages = len(canela.on_desk())
    await canela.to(20, 12)
    assert len(canela.heard(canela.ines)) == heard
    assert not any("Canela" in text for text in canela.on_desk()[pages:])
    assert desk is not None


async def test_cone_and_packs_follow_the_clinician(canela: Box) -> None:
    await canela.to(4, 7, 30)
    await canela.staff_says("/plan Canela")
    for label in ("Packs", "Cold packs 2 more days", "Not as hoped"):
        await canela.staff_taps(label)
    await canela.to(6, 8, 1)
    assert "Cold pack" in canela.last(canela.ines, "cephalexin").words
    await canela.staff_says("/plan Canela")
    for label in ("Cone", "Cone off", "Healing well"):
        await canela.staff_taps(label)
    assert "without the cone" in canela.last(canela.ines).words
    await canela.to(6, 23)
    bedtime = [t for t in canela.heard(canela.ines) if "day 6" in t]
    assert not any("Is the cone on" in text for text in bedtime)


# -- the board ---------------------------------------------------------------------------


async def test_the_board_fits_one_screen_and_tells_more_on_tap(canela: Box) -> None:
    await canela.stage.enrol(plan(patient="Miso", species="dog"), "Dr Okafor")
    await canela.to(5, 10)
    await canela.says(canela.ines, "he threw up blood")
    await canela.staff_says("/board")
    board = canela.case("Board,").words
    assert len(board.splitlines()) <= 25
    assert "Open cases: 2" in board  # and Miso's owner never joined
    assert "EMERGENCY · vomiting · nobody" in board
    assert "Silent owners: 1" in board
    await canela.staff_taps("Patients: 2")
    assert "1. Canela · day 5 · Fracture repair" in canela.case("Patients: 2").words


async def test_the_board_comes_by_itself_when_the_clinic_opens(canela: Box) -> None:
    await canela.to(6, 7, 59)
    before = len([text for text in canela.on_desk() if text.startswith("Board")])
    await canela.to(6, 8)
    boards = [text for text in canela.on_desk() if text.startswith("Board")]
    assert len(boards) == before + 1


async def test_the_board_stays_away_on_a_public_holiday(tmp_path: object) -> None:
    settings = {**CLINIC, "holidays": {"country": "US", "region": "CO"}}
    clinic = Clinic.model_validate(settings)
    from pathlib import Path

    start = at(0, 15).replace(month=5, day=24)  # the Sunday before Memorial Day 2026
    async with Stage(clinic, Path(str(tmp_path)) / "a.db", start) as stage:
        nurse = stage.standin.user("Kim")
        desk = await stage.staff_chat("Desk", [nurse])
        await stage.enrol(plan(surgery="2026-05-23", home="2026-05-24T10:00", medicines=[]), "Dr")
        await stage.advance(start.replace(day=25, hour=12))
        assert not any(text.startswith("Board") for text in stage.standin.said(desk))
        await stage.advance(start.replace(day=26, hour=9))
        assert any(text.startswith("Board") for text in stage.standin.said(desk))


async def test_every_refusal_keeps_what_was_tried(canela: Box) -> None:
    stranger = canela.stage.standin.user("Somebody")
    own = await canela.says(stranger, "hi")
    canela.stage.standin.press_data(stranger, own, "c.1-1.ack~AAAAAAAAAAAA")
    await canela.stage.settle()
    refused = await canela.stage.app.db.read(lambda tx: tx.all("log_nobody"))
    data = [json.loads(row["data"]) for row in refused if row["kind"] == "refused"]
    assert any(one.get("data") == "c.1-1.ack~AAAAAAAAAAAA" for one in data)


async def test_after_a_re_operation_the_household_stays(canela: Box) -> None:
    await canela.to(9, 10)
    await canela.staff_says("/plan Canela")
    for label in ("Pause or end", "Re-operation"):
        await canela.staff_taps(label)
    assert "continues: 1" in canela.case("Operated again").words
    order = """/enrol
patient: Canela
species: dog
weight_kg: 22.7
procedure: Plate replaced, left
clinician: Dr Okafor
surgery: 2026-03-12
home: 2026-03-12 16:00
zone: America/Denver
owner: Ines Vale
protocol: general-orthopaedic
continues: 1
"""
    await canela.staff_says(order)
    before = len(canela.heard(canela.ines))
    await canela.to(10, 22)
    new = canela.heard(canela.ines)[before:]
    assert any("Canela · day 1" in text for text in new)
    assert not any("day 10" in text for text in new)


async def test_an_order_outside_the_label_waits_for_a_clinician(practice: Box) -> None:
    """21 CFR 520.304: carprofen 1 mg/lb every 12 hours; 100 mg is twice that for 50 lb."""
    await practice.staff_says(
        "/enrol\npatient: Bruno\nspecies: dog\nweight_kg: 22.7\nprocedure: Plate, left\n"
        "clinician: Dr Okafor\nsurgery: 2026-03-03\nhome: 2026-03-04 10:30\n"
        "zone: America/Denver\nprotocol: general-orthopaedic\nmedicines:\n"
        "  - name: carprofen 100 mg\n    sig: 1 tab PO q12h x 7d with food\n"
        "    kind: anti-inflammatory\n    first_dose: 2026-03-04 20:00"
    )
    asked = practice.case("not enrolled yet").words
    assert "520.304" in asked
    assert "ordered 100 mg every 12 h; stated 50.04 mg" in asked
    assert not any("One-time link" in text for text in practice.on_desk())
    ola = await joins(practice, "Ola", "staff")
    callback = practice.stage.standin.press(ola, practice.desk, "Keep and enrol", None)
    await practice.stage.settle()
    assert "clinician / administrator" in (practice.stage.standin.answer(callback) or "")
    assert not any("One-time link" in text for text in practice.on_desk())
    okafor = await joins(practice, "Dr Okafor", "clinician")
    practice.stage.standin.press(okafor, practice.desk, "Keep and enrol", None)
    await practice.stage.settle()
    assert "Bruno is enrolled" in practice.case("One-time link").words
    assert "Order kept by Dr Okafor" in practice.case("Order kept").words
    kept = next(r for r in await practice.log() if r.kind == "confirmed")
    assert kept.author == "Dr Okafor"
    assert "ordered 100 mg every 12 h; stated 50.04 mg" in kept.text
    assert [one["ordered_mg"] for one in kept.data["findings"]] == [100]


async def joins(box: Box, name: str, role: str) -> User:
    """Someone of the practice, by a link of their own."""
    await box.staff_says(f"/staff add {name} {role}")
    link = box.case(f"Link for {name}").words.split()[-1]
    user = box.stage.standin.user(name)
    box.stage.standin.start(user, link)
    await box.stage.settle()
    await box.staff_taps("Yes, let in")
    box.desk.members[user.id] = user
    return user


async def test_an_owners_code_makes_nobody_staff(canela: Box) -> None:
    await canela.taps(canela.ines, "Add someone at home")
    code = canela.last(canela.ines, "start=").words.split("start=")[-1].split()[0]
    await canela.says(canela.ines, f"/join {code}")
    await canela.says(canela.ines, "/patients")
    assert len(await canela.stage.app.db.read(load.desks)) == 1
    assert len(await canela.stage.app.db.read(lambda tx: tx.all("staff"))) == 1
    assert not any("Fracture repair" in text and "1." in text for text in
                   canela.heard(canela.ines)[-2:])  # fmt: skip


async def test_two_orders_that_wait_are_not_mixed_up(canela: Box) -> None:
    await canela.stage.enrol(plan(patient="Luna", medicines=[]), "Dr Okafor")
    await canela.to(4, 10)
    order = (
        "/medicine {name}\nname: {med}\namount: {{en: one tablet, es: una tableta}}\n"
        "every_hours: 12\nfirst_dose: 2026-03-07 20:00\ndays: 5"
    )
    await canela.staff_says(order.format(name="Canela", med="gabapentin"))
    await canela.staff_taps("Confirm this dose")
    first = canela.case("Why?")
    await canela.staff_says(order.format(name="Luna", med="tramadol"))
    await canela.staff_taps("Confirm this dose")
    await canela.staff_taps("Clinician's decision", first)
    assert "new medicine: gabapentin" in canela.last(canela.ines).words
    assert not any("tramadol" in text for text in canela.heard(canela.ines))


@pytest.mark.begins(4, 10)
async def test_an_ordinary_reply_is_never_taken_for_a_reason(canela: Box) -> None:
    await canela.says(canela.ines, "is the bruise normal?")
    question = canela.case("is the bruise normal")
    await canela.staff_says("/plan Canela")
    await canela.staff_taps("Medicines")
    await canela.staff_taps("Stop carprofen")
    await canela.staff_says("That looks as expected, thank you!", question)
    assert "looks as expected" in canela.last(canela.ines, "looks as expected").words
    assert not any("no more carprofen" in text for text in canela.heard(canela.ines))


async def test_an_answered_case_pages_again_when_more_comes(canela: Box) -> None:
    await canela.to(6, 9)
    await canela.says(canela.ines, "he vomited twice")
    await canela.staff_says("Offer water, we will see.", canela.case("vomited twice"))
    await canela.says(canela.ines, "he vomited twice again")
    await canela.to(6, 10, 30)
    assert "Nobody has taken this yet" in canela.case("vomited twice again").words

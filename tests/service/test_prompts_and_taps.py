"""Prompts come at their hour, in one message; a tap is enough."""

from __future__ import annotations

from tests.service.box import Box, at, plan


async def test_the_owner_joins_by_a_link_that_works_once(practice: Box) -> None:
    link = await practice.stage.enrol(plan(), "Dr Okafor")
    practice.stage.standin.start(practice.ines, link)
    await practice.stage.settle()
    welcome = practice.last(practice.ines, "not watched around the clock").words
    assert "+1 303 555 0142" in welcome
    assert "+1 303 555 0199" in welcome
    practice.stage.standin.start(practice.marco, link)
    await practice.stage.settle()
    assert "ya se usó" in practice.last(practice.marco).words
    assert not any("Marco" in text for text in practice.heard(practice.ines))


async def test_what_is_due_together_comes_as_one_message_at_its_hour(canela: Box) -> None:
    await canela.to(1, 19, 59)
    before = len(canela.heard(canela.ines))
    await canela.to(1, 20)
    assert len(canela.heard(canela.ines)) == before + 1
    evening = canela.last(canela.ines).words
    assert "carprofen" in evening
    assert "cephalexin" in evening
    assert "Cold pack" in evening


async def test_no_message_comes_in_the_quiet_hours_and_at_most_six_a_day(canela: Box) -> None:
    await canela.to(8, 0)
    sent = [r for r in await canela.log() if r.kind == "sent" and not r.data["staff"]]
    prompts = [r for r in sent if r.data["key"].startswith("prompt:")]
    local = [r.at.astimezone(at(0, 0).tzinfo) for r in prompts]
    assert all(7 <= moment.hour < 22 for moment in local)
    by_day: dict[object, int] = {}
    for moment in local:
        by_day[moment.date()] = by_day.get(moment.date(), 0) + 1
    assert max(by_day.values()) <= 6
    assert min(by_day.values()) >= 2


async def test_one_tap_notes_a_dose_and_the_message_shows_it(canela: Box) -> None:
    await canela.to(1, 20, 4)
    assert await canela.taps(canela.ines, "1 · Given") == "Noted: Given"
    assert "dose: given" in await canela.seen()
    assert "✓ Given, 20:04, Ines" in canela.last(canela.ines, "carprofen").words


async def test_a_dose_is_given_once_whoever_taps_first(canela: Box) -> None:
    await canela.taps(canela.ines, "Add someone at home")
    link = canela.last(canela.ines, "start=").words.split()[-1]
    canela.stage.standin.start(canela.marco, link)
    await canela.stage.settle()
    assert "Marco now also takes care of Canela" in canela.last(canela.ines).words
    await canela.to(1, 20, 1)
    his = canela.last(canela.marco, "carprofen")
    await canela.taps(canela.ines, "1 · Given")
    assert "✓ Ya se la di, 20:01, Ines" in canela.last(canela.marco, "carprofen").words
    data = next(
        b["callback_data"]
        for row in canela.last(canela.marco, "carprofen").buttons
        for b in row
        if b["text"].startswith("2 · Ya se la di")
    )
    assert data  # the other medicine is still his to tap
    assert await _old_button(canela, his) == "Ines ya anotó esto: Ya se la di, 20:01"
    assert (await canela.seen()).count("dose: given") == 1


async def _old_button(box: Box, message: object) -> str | None:
    """Press the first dose's button as it stood before the message was changed."""
    from bot.context.buttons import button
    from bot.model.action import TapLine

    rows = await box.stage.app.db.read(
        lambda tx: tx.all("doses_near", patient_id=1, since="2026-03-05T03", until="2026-03-05T04")
    )
    carprofen = min(row["id"] for row in rows)
    chat = box.stage.standin.private(box.marco)
    made = button(box.stage.app.practice.secret, chat.id, "", TapLine(carprofen, "given"))
    callback = box.stage.standin.press_data(box.marco, message, made.data)  # type: ignore[arg-type]
    await box.stage.settle()
    return box.stage.standin.answer(callback)


async def test_one_gentle_reminder_then_the_slot_is_unanswered(canela: Box) -> None:
    await canela.to(1, 23, 30)
    reminders = [text for text in canela.heard(canela.ines) if text.startswith("Still open")]
    assert sum("carprofen" in text for text in reminders) == 1
    log = await canela.log()
    assert any(r.kind == "unanswered" and "carprofen" in r.text for r in log)
    await canela.taps(canela.ines, "1 · Given", canela.last(canela.ines, "Still open"))
    assert await canela.seen() == []  # hours later: was it given then, or just now?
    await canela.taps(canela.ines, "At about 20:00")
    assert "dose: given" in await canela.seen()
    assert "✓ Given, 20:00, Ines" in canela.last(canela.ines, "✓ Given").words


async def test_a_late_dose_moves_the_next_one_and_says_when(canela: Box) -> None:
    await canela.to(1, 20, 1)
    await canela.taps(canela.ines, "1 · Given")
    await canela.to(2, 12, 30)  # the morning dose of 08:00 is four and a half hours late
    await canela.says(canela.ines, "gave the carprofen just now")
    told = canela.last(canela.ines, "not at 20:00").words
    assert "at 20:30" in told
    assert "8 h between doses" in told
    await canela.to(2, 20, 5)
    assert "carprofen" not in canela.last(canela.ines, "cephalexin").words
    await canela.to(2, 20, 30)
    assert "carprofen" in canela.last(canela.ines).words


async def test_a_dose_too_late_to_move_is_held_and_staff_are_asked(practice: Box) -> None:
    strict = [{**plan().medicines[0].model_dump(mode="json"), "min_gap_hours": 11}]
    canela = await practice.with_patient(plan(medicines=strict))
    await canela.to(1, 20, 1)
    await canela.taps(canela.ines, "1 · Given")
    await canela.to(2, 11)
    await canela.says(canela.ines, "I gave the carprofen at 10:30")  # two and a half hours late
    told = canela.last(canela.ines, "I have asked the clinic").words
    assert "Please wait with the next carprofen" in told
    assert "carprofen" in canela.case("TODAY").words
    before = len([text for text in canela.heard(canela.ines) if "Give carprofen" in text])
    await canela.to(2, 23)
    after = [text for text in canela.heard(canela.ines) if "Give carprofen" in text]
    assert len(after) == before


async def test_all_done_marks_doses_and_sessions_but_no_questions(canela: Box) -> None:
    await canela.to(1, 20, 2)
    await canela.taps(canela.ines, "✓ 1, 2, 3 done")
    seen = await canela.seen()
    assert seen.count("dose: given") == 2
    assert "ice: done" in seen
    assert len(seen) == 3


async def test_a_last_tap_can_be_taken_back(canela: Box) -> None:
    await canela.to(1, 20, 2)
    await canela.taps(canela.ines, "1 · Given")
    await canela.taps(canela.ines, "Take back my last tap")
    assert await canela.seen() == []
    assert "1 · Given" in canela.last(canela.ines, "Cold pack").labels
    assert any(r.kind == "undone" for r in await canela.log())

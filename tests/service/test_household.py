"""Several people at home, each with their own hours, language and wishes."""

from __future__ import annotations

import pytest

from tests.service.box import Box, plan


async def _with_marco(box: Box) -> None:
    await box.taps(box.ines, "Add someone at home")
    box.stage.standin.start(box.marco, box.last(box.ines, "start=").words.split()[-1])
    await box.stage.settle()


async def test_each_gets_what_they_want_and_nobody_loses_a_dose(canela: Box) -> None:
    await _with_marco(canela)
    await canela.says(canela.marco, "otras horas")
    await canela.taps(canela.marco, "Todo menos medicinas")
    await canela.to(1, 20)
    assert "carprofen" in canela.last(canela.ines, "Cold pack").words
    his = canela.last(canela.marco, "Bolsa fría").words
    assert "carprofen" not in his
    await canela.says(canela.ines, "hours")
    await canela.taps(canela.ines, "Everything but medicines")
    await canela.to(2, 8)
    assert "carprofen" in canela.last(canela.marco, "día 2").words  # nobody else would get it


async def test_own_hours_hold_back_ones_own_messages_only(canela: Box) -> None:
    await _with_marco(canela)
    await canela.says(canela.marco, "otras horas")
    await canela.taps(canela.marco, "Mañana 9:00")
    before = len(canela.heard(canela.marco))
    await canela.to(2, 8)
    assert "carprofen" in canela.last(canela.ines, "day 2").words
    assert not any("día 2" in text for text in canela.heard(canela.marco)[before:])


async def test_alone_at_home_the_rounds_move_but_never_a_dose(canela: Box) -> None:
    await canela.says(canela.ines, "other hours")
    await canela.taps(canela.ines, "Morning 10:00")
    await canela.to(2, 8)
    early = canela.last(canela.ines, "day 2").words
    assert "carprofen" in early
    assert "Cold pack" not in early
    await canela.to(2, 10)
    assert "Cold pack" in canela.last(canela.ines, "day 2").words


async def test_a_pause_of_an_hour(canela: Box) -> None:
    await canela.to(1, 20, 10)
    await canela.says(canela.ines, "in an hour")
    assert "21:10" in canela.last(canela.ines).words
    await canela.to(1, 21, 9)
    assert not any(t.startswith("Still open") for t in canela.heard(canela.ines)[-2:])
    await canela.to(1, 21, 10)
    assert canela.last(canela.ines, "Still open")


async def test_one_may_leave_and_have_their_data_deleted(canela: Box) -> None:
    await _with_marco(canela)
    await canela.says(canela.marco, "borrar mis datos")
    await canela.taps(canela.marco, "Salir y borrar mis datos")
    assert "historia clínica" in canela.last(canela.marco).words
    assert "Marco" in canela.case("no longer wants").words
    before = len(canela.heard(canela.marco))
    await canela.to(2, 21)
    assert len(canela.heard(canela.marco)) == before
    row = await canela.stage.app.db.read(
        lambda tx: tx.one("person_of_user", user_id=canela.marco.id)
    )
    assert row is None


async def test_staff_can_remove_someone_at_home(canela: Box) -> None:
    await _with_marco(canela)
    await canela.staff_says("/people Canela")
    await canela.staff_taps("Remove Marco")
    assert "no longer gets messages" in canela.case("✓ Marco").words
    before = len(canela.heard(canela.marco))
    await canela.to(1, 21)
    assert len(canela.heard(canela.marco)) == before


async def test_two_patients_in_one_household_are_told_apart(canela: Box) -> None:
    link = await canela.stage.enrol(plan(patient="Miso", medicines=[]), "Dr Okafor")
    canela.stage.standin.start(canela.ines, link)
    await canela.stage.settle()
    await canela.to(5, 10)
    await canela.says(canela.ines, "Miso threw up twice")
    assert "Miso" in canela.case("TODAY").words
    await canela.says(canela.ines, "he is limping more today")
    asked = canela.last(canela.ines, "Who is this about")
    assert asked.labels == ["Canela", "Miso"]
    await canela.taps(canela.ines, "Canela", asked)
    assert "mobility: worse" in await canela.seen(1) or "weight_bearing: partial" in (
        await canela.seen(1)
    )
    assert "vomiting: yes" in await canela.seen(2)


@pytest.mark.begins(3, 10)
async def test_what_is_next_and_what_is_normal_by_button_and_by_words(canela: Box) -> None:
    await canela.says(canela.ines, "what's next?")
    assert "today at 13:00" in canela.last(canela.ines, "Next for Canela").words
    await canela.says(canela.ines, "menu")
    await canela.taps(canela.ines, "What is normal now")
    assert "For day 3" in canela.last(canela.ines).words
    await canela.taps(canela.ines, "Talk to the clinic")
    assert "+1 303 555 0142" in canela.last(canela.ines).words


async def test_a_red_flag_does_not_wait_until_the_patient_is_named(canela: Box) -> None:
    link = await canela.stage.enrol(plan(patient="Miso", medicines=[]), "Dr Okafor")
    canela.stage.standin.start(canela.ines, link)
    await canela.stage.settle()
    await canela.to(5, 23, 30)
    await canela.says(canela.ines, "she collapsed and her gums are white")
    assert "This cannot wait" in canela.last(canela.ines, "Who is this about").words
    assert "Canela / Miso? she collapsed" in canela.case("EMERGENCY").words
    await canela.says(canela.ines, "please help")
    await canela.taps(canela.ines, "Miso", canela.last(canela.ines, "Who is this about"))
    assert "energy: collapsed" in await canela.seen(2)


async def test_a_name_inside_another_word_is_no_name(canela: Box) -> None:
    link = await canela.stage.enrol(plan(patient="Bo", medicines=[]), "Dr Okafor")
    canela.stage.standin.start(canela.ines, link)
    await canela.stage.settle()
    await canela.to(5, 10)
    await canela.says(canela.ines, "knocked over her bowl and vomited twice")
    assert "Who is this about" in canela.last(canela.ines, "Who is this about").words

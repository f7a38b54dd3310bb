"""Two patients of one household, one of them in an emergency; and who joins while something
is held."""

from __future__ import annotations

from datetime import timedelta

from bot.model.urgency import Urgency
from bot.rehearsal.play import Rehearsal
from bot.rehearsal.story import read_story
from bot.rehearsal.transcript import Message
from bot.rehearsal.world import World

from .telling import practice

STORY = """\
household: {robin: en}
staff: {pell: staff, wrenfield: clinician}
events:
  - {at: day 3 09:00, robin: "hello"}
expect: []
"""
ROBIN = 1001


def _played() -> tuple[World, Rehearsal]:
    player = Rehearsal(read_story(STORY, "story.yaml", practice().protocols), practice())
    player.play()
    return player.world, player


def _second(world: World, player: Rehearsal) -> None:
    """Another patient of the same household, of the same plan."""
    plan = player.story.plan.model_copy(update={"patient": "Olive"})
    code = world.enrol(plan, player.story.protocol, "Dr Example")
    world.write("robin", ROBIN, ROBIN, f"/start {code}", lang="en")


def _since(world: World, count: int, chat: int = ROBIN) -> list[str]:
    """What was sent to a chat after the first ``count`` entries, with the labels."""
    found = world.transcript.entries[count:]
    return [
        " ".join([one.sent.text, *one.sent.labels])
        for one in found if isinstance(one, Message) and one.chat == chat
    ]  # fmt: skip


def _says(world: World, text: str) -> list[str]:
    count = len(world.transcript.entries)
    world.write("robin", ROBIN, ROBIN, text)
    return _since(world, count)


def test_words_without_a_name_join_the_emergency_and_nobody_asks_about_whom() -> None:
    world, player = _played()
    _second(world, player)
    first, second = sorted(world.tables.patients)
    said = _says(world, "Biscuit collapsed, her gums are white")
    assert "0142" in " ".join(said)
    for words in ("still not moving", "is she going to be ok?", "what comes next", "menu"):
        said = _says(world, words)
        assert said
        assert all("0187" in one for one in said), said
        assert not any("Who is this about" in one or "normal" in one for one in said), said
    case = world.chart(first).cases[0]
    assert case.urgency is Urgency.emergency
    texts = [entry["text"] for entry in case.body["entries"]]
    assert texts[1:3] == ["still not moving", "is she going to be ok?"]
    assert not world.chart(second).cases
    count = len(world.transcript.entries)
    world.until(world.now + timedelta(minutes=40))
    assert not any("did not understand" in one for one in _since(world, count))
    assert [entry["text"] for entry in world.chart(first).cases[0].body["entries"]] == texts
    assert not world.chart(second).cases


def test_the_other_patient_goes_on() -> None:
    world, player = _played()
    _second(world, player)
    second = max(world.tables.patients)
    _says(world, "Biscuit collapsed, her gums are white")
    said = _says(world, "Olive ate all her dinner")
    assert any("Olive" in one for one in said)
    assert not world.chart(second).cases
    assert not world.chart(second).holds
    count = len(world.transcript.entries)
    world.until(world.now + timedelta(hours=12))
    sent = _since(world, count)
    assert any(one.startswith("Olive") and "Give" in one for one in sent)
    assert not any(one.startswith("Biscuit") and "Give" in one for one in sent)
    assert any("on hold for Biscuit" in one for one in sent)


def test_who_joins_reads_what_is_on_hold() -> None:
    world, player = _played()
    patient = player.patient
    _says(world, "black poop")
    code = world.invite(kind="owner", patient=patient)
    count = len(world.transcript.entries)
    world.write("lucia", 2002, 2002, f"/start {code}", lang="es")
    said = " ".join(_since(world, count, 2002))
    assert "En espera para Biscuit: carprofen" in said
    assert "0142" in said


def test_after_the_death_of_one_words_without_a_name_reach_staff_at_once() -> None:
    world, player = _played()
    _second(world, player)
    _says(world, "Biscuit died last night")
    for words in ("my phone number has changed", "nobody tells us anything at all"):
        count = len(world.transcript.entries)
        said = _says(world, words)
        assert any("303 555" in one for one in said)
        staff = [
            one.sent.text
            for one in world.transcript.entries[count:]
            if isinstance(one, Message) and one.chat != ROBIN
        ]
        assert any(words in one for one in staff), (said, staff)

"""The log as a conversation: what belongs together is told by its event, never by its time."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace

import pytest

from bot.context.words import default_words
from bot.model.effects import Effects, Entry, Note, Retract
from bot.model.ids import EventId, PersonId, SourceId
from bot.model.observation import Observation
from bot.records.whole import WholeRecord
from bot.review.conversation import Turn, conversation
from bot.review.words import Tongue
from bot.store.apply import apply
from bot.store.database import Tx
from bot.store.whole import whole
from tests.store.canela import CANELA, INES, MARCO, NOW, fresh

EATS, VOMITS = Observation("appetite", "normal"), Observation("vomiting", "yes")


def _said(
    event: str, who: int, text: str, source: str, seen: Observation, urgency: str = ""
) -> Effects:
    out = Effects(EventId(event), who, person=PersonId(who))
    name = "Inés" if who == 1 else "Marco"
    noted = {"observation": seen.as_dict(), "day": 2, "source": source}
    out.add(
        Entry("said", name, text, CANELA, {"source": source}),
        Note(CANELA, seen, 2, SourceId(source), name, PersonId(who)),
        Entry("noted", "bot", seen.about, CANELA, noted),
    )
    if urgency:
        out.add(Entry("finding", "rule", "she vomits", CANELA, {"urgency": urgency, "rule": "v"}))
    out.reply(INES if who == 1 else MARCO, f"Noted: {text}", patient=CANELA)
    return out


@pytest.fixture
def record() -> WholeRecord:
    """Two people write at one moment; then Inés changes her message, at that moment too."""
    with closing(fresh()) as plain:
        tx = Tx(plain)
        apply(tx, _said("update:1", 1, "she threw up", "message:11:1", VOMITS, "same_day"), NOW)
        apply(tx, _said("update:2", 2, "she eats well", "message:12:1", EATS), NOW)
        apply(
            tx,
            Effects(
                EventId("update:3"), all=[Retract(CANELA, SourceId("message:11:1"), "corrected")]
            ),
            NOW,
        )
        apply(tx, _said("update:3", 1, "she eats", "message:11:1", EATS), NOW)
        found = whole(tx, CANELA)
    assert found is not None
    return found


def turns(record: WholeRecord) -> dict[str, Turn]:
    """By their words, those of people and the replies to them."""
    found = [
        turn for day in conversation(record, Tongue("en", default_words()), 0) for turn in day.turns
    ]
    return {turn.text: turn for turn in found if "eats" in turn.text or "threw" in turn.text}


def test_rules_readings_and_replies_stand_with_the_words_of_their_event(
    record: WholeRecord,
) -> None:
    found = turns(record)
    assert [why.rule for why in found["she threw up"].why] == ["v"]
    assert found["she eats well"].why == found["she eats"].why == []
    seen = {text: [(s.words, s.state) for s in turn.seen] for text, turn in found.items()}
    assert [state for _, state in seen["she threw up"]] == ["corrected"]
    assert [state for _, state in seen["she eats"]] == ["stands"]
    assert len(seen["she eats well"]) == 1
    assert not any(found[text].quiet for text in found)


def test_of_rows_from_before_events_had_ids_nothing_is_guessed(record: WholeRecord) -> None:
    log = tuple(replace(entry, by=replace(entry.by, event=None)) for entry in record.log)
    statements = tuple(replace(one, event=None) for one in record.statements)
    found = turns(replace(record, log=log, statements=statements))
    assert all(turn.why == [] for turn in found.values())
    assert len(found["she eats well"].seen) == 1, "the only words of its source: certain"
    assert found["she threw up"].seen == found["she eats"].seen == []
    assert found["Noted: she eats"].quiet

"""What each column of the database may hold of a person, and what becomes of it when they are
erased. A test holds this against the schema, so that no new column is forgotten; what is a plain
text here stays, and the text is the reason."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from typing import Final


class Fate(Enum):
    """What becomes of a column's value."""

    name = "of whoever did it: one without a name stands there"
    staff = "the same of the practice's people; it stays while they are of it"
    meant = "whom a link was made for: nobody"
    words = "what people wrote: accounts, the phone number, and names that can only be theirs go"
    told = "JSON, at every depth: the same, and whole strings that are a name"
    ours = "JSON with words of the program's own: the same, and whole names within them"
    key = "an account in it is replaced by our own number of the person"
    account = "an account: none"
    member = "an account of one of the practice: none, unless they are still of it"
    row = "an account: the whole row goes"
    member_row = "the same, unless they are still of the practice"
    own = "by a statement of its own (erase.sql), with all that hangs on it"
    raw = "a raw copy: emptied wherever it leads to them"
    entry = "as an entry of the log, sealed anew (bot/records/chain.py)"


NUMBER: Final = "a number of our own, which leads to nobody once the person is nobody"
HOUR: Final = "an hour"
FIGURE: Final = "a figure, or a word of the program's own"
DIGEST: Final = "a digest, from which nothing can be read"
COURSE: Final = "how the animal does, in figures and words of the program's own"
RULES: Final = "what the practice has set"

PLACES: Final[Mapping[str, Mapping[str, Fate | str]]] = {
    "begun": {"key": Fate.own, "tries": FIGURE, "since": HOUR},
    "caregiver": {"patient_id": NUMBER, "person_id": NUMBER, "joined_at": HOUR, "left_at": HOUR,
                  "hours": Fate.own, "wants": Fate.own},
    "case_file": {
        "id": NUMBER, "patient_id": NUMBER, "matter": FIGURE, "urgency": FIGURE, "state": FIGURE,
        "opened_at": HOUR, "deadline_at": HOUR, "acknowledged_at": HOUR,
        "acknowledged_by": Fate.staff, "answered_at": HOUR, "answered_by": Fate.staff,
        "closed_at": HOUR, "closed_by": Fate.staff, "outcome": FIGURE, "note": Fate.words,
        "pages": FIGURE, "policy": RULES, "body": Fate.told,
    },
    "chat_moved": {"old": Fate.member_row, "new": Fate.member_row},
    "desk": {"name": Fate.staff, "rank": FIGURE, "joined_at": HOUR, "opened_by": Fate.member,
             "held_at": HOUR, "chat_id": Fate.member_row},
    "due": {"patient_id": NUMBER, "kind": FIGURE, "due_at": HOUR, "data": Fate.ours,
            "state": FIGURE, "attempts": FIGURE, "error": Fate.words, "key": Fate.key},
    "hold": {"patient_id": NUMBER, "body": Fate.told, "since": HOUR, "ended_at": HOUR,
             "ended_by_member": NUMBER, "ended_by": Fate.staff, "event": Fate.key,
             "id": Fate.key},
    "inbox": {"update_id": NUMBER, "body": Fate.raw, "received_at": HOUR, "state": FIGURE,
              "attempts": FIGURE, "error": Fate.raw, "lane": Fate.raw, "turn": FIGURE,
              "urgent": FIGURE, "strange": FIGURE},
    "invitation": {
        "digest": DIGEST, "kind": FIGURE, "patient_id": NUMBER, "rank": FIGURE,
        "name": Fate.meant, "role": FIGURE, "made_at": HOUR, "made_by": Fate.name,
        "expires_at": HOUR, "used_at": HOUR, "used_by": Fate.account, "member_id": NUMBER,
    },
    "item": {
        "id": NUMBER, "patient_id": NUMBER, "prompt_id": NUMBER, "item_id": FIGURE,
        "kind": FIGURE, "med": COURSE, "slot_at": HOUR, "body": Fate.told, "state": FIGURE,
        "choice": COURSE, "by_name": Fate.name, "at": HOUR, "source": Fate.key,
        "event": Fate.key, "person_id": NUMBER,
    },
    "log": {
        "id": NUMBER, "patient_id": NUMBER, "at": HOUR, "kind": FIGURE, "author": Fate.entry,
        "text": Fate.entry, "data": Fate.entry, "salt": Fate.entry, "digest": DIGEST,
        "prev_hash": DIGEST, "hash": DIGEST, "erased_in": NUMBER, "event": Fate.entry,
        "person_id": NUMBER, "member_id": NUMBER, "source": Fate.entry,
    },
    "lost_chat": {"since": HOUR, "why": FIGURE, "chat_id": Fate.member_row},
    "media": {
        "id": NUMBER, "patient_id": NUMBER, "source": Fate.own, "kind": FIGURE,
        "file_id": Fate.own, "file_unique": Fate.own, "album": FIGURE, "day": FIGURE,
        "at": HOUR, "caption": Fate.own, "person_id": NUMBER, "line_id": NUMBER,
        "state": FIGURE, "path": Fate.own, "sha256": DIGEST, "bytes": FIGURE, "width": FIGURE,
        "height": FIGURE, "verdict": FIGURE, "retake": FIGURE, "attempts": FIGURE,
        "error": Fate.words,
    },
    "observation": {
        "id": NUMBER, "patient_id": NUMBER, "at": HOUR, "day": FIGURE, "about": COURSE,
        "value": COURSE, "body": COURSE, "source": Fate.key, "person_id": NUMBER,
        "author": Fate.name, "state": FIGURE, "event": Fate.key,
    },
    "outbox": {
        "id": NUMBER, "dedupe": Fate.raw, "kind": FIGURE, "chat_id": Fate.raw,
        "body": Fate.raw, "topic": Fate.raw, "patient_id": NUMBER, "urgent": FIGURE,
        "due_at": HOUR, "state": FIGURE, "attempts": FIGURE, "uncertain": FIGURE,
        "message_id": NUMBER, "error": Fate.raw, "created_at": HOUR, "sent_at": HOUR,
        "event": Fate.raw, "late_at": HOUR, "staff": FIGURE, "held_at": HOUR,
    },
    "patient": {
        "id": NUMBER, "name": Fate.own, "plan": Fate.own, "protocol": RULES, "state": FIGURE,
        "enrolled_at": HOUR, "enrolled_by": Fate.staff, "last_heard_at": HOUR,
        "ended_at": HOUR, "ended_why": FIGURE,
    },
    "person": {"id": NUMBER, "user_id": Fate.own, "chat_id": Fate.own, "name": Fate.own,
               "lang": FIGURE, "reachable": Fate.own, "joined_at": HOUR},
    "prompt": {"id": NUMBER, "patient_id": NUMBER, "key": FIGURE, "due_at": HOUR, "day": FIGURE,
               "sent_at": HOUR, "reminded_at": HOUR, "moved": FIGURE},
    "review": {"id": NUMBER, "patient_id": NUMBER, "line_id": NUMBER, "shown_at": HOUR,
               "body": Fate.told},
    "review_seen": {"member_id": NUMBER, "patient_id": NUMBER, "before": NUMBER,
                    "before_at": HOUR, "upto": NUMBER, "at": HOUR},
    "review_session": {"digest": DIGEST, "member_id": NUMBER, "began_at": HOUR,
                       "expires_at": HOUR, "ended_at": HOUR},
    "schema_version": {"number": FIGURE},
    "sealed_row": {"name": FIGURE, "key": Fate.own, "salt": DIGEST, "digest": DIGEST},
    "sealed_sum": {"name": FIGURE, "sum": DIGEST},
    "setting": {"value": Fate.key, "key": FIGURE},
    "staff": {"id": NUMBER, "user_id": Fate.own, "chat_id": Fate.own, "name": Fate.own,
              "role": FIGURE, "joined_at": HOUR, "removed_at": HOUR},
    "thread": {"body": Fate.own, "at": HOUR, "chat_id": Fate.row},
    "touched": {"id": NUMBER, "name": FIGURE, "key": Fate.own, "strange": FIGURE},
    "turned_away": {"since": HOUR, "count": FIGURE, "sender": Fate.row},
    "wound_check": {"patient_id": NUMBER, "day": FIGURE, "asked_at": HOUR, "told": COURSE,
                    "told_at": HOUR, "person_id": NUMBER, "drafts": COURSE},
}  # fmt: skip
"""Table → column → what becomes of it, or why it stays. The column that names a row of a table
that is swept stands last: it is changed last."""

MADE_OF_THE_LOG: Final = "log_words"
"""The search's index: its triggers follow the log, and `compact` merges it."""

ROWS: Final = frozenset({Fate.row, Fate.member_row})
"""With what stands there, the whole row goes."""
BY_STATEMENT: Final = frozenset({Fate.own, Fate.raw, Fate.entry})
"""What `erase.py` does itself; all else is done alike for every table, by `sweep`."""


@dataclass(frozen=True, slots=True)
class Place:
    """How the rows of a table are found: ``key`` names one, ``patient`` is whose they are, and
    ``loose`` which of them are about no patient."""

    key: str
    patient: str = "NULL"
    loose: str = "1 = 1"


_OF_PATIENT: Final = {
    "case_file": "t.id", "due": "t.key", "hold": "t.id", "invitation": "t.digest",
    "item": "t.id", "media": "t.id", "observation": "t.id", "review": "t.id",
}  # fmt: skip
SWEPT: Final[Mapping[str, Place]] = {
    **{table: Place(key, "t.patient_id", "t.patient_id IS NULL")
       for table, key in _OF_PATIENT.items()},
    "patient": Place("t.id", "t.id", "1 = 0"),
    "chat_moved": Place("t.old"),
    "desk": Place("t.chat_id"),
    "lost_chat": Place("t.chat_id"),
    "setting": Place("t.key", loose="t.key = 'clock_right'"),  # no other has an account in it
    "thread": Place("t.chat_id"),
    "turned_away": Place("t.sender"),
}  # fmt: skip
"""The tables of which `sweep` changes something."""


def swept(table: str) -> dict[str, Fate]:
    """The columns of a table that are treated alike everywhere."""
    return {
        column: fate
        for column, fate in PLACES[table].items()
        if isinstance(fate, Fate) and fate not in BY_STATEMENT
    }

"""The log's chain in the database, walked from end to end, and what must agree with it."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Final

from bot.model.codes import without_codes
from bot.model.ids import Cause, PatientId
from bot.records.chain import Break, Link, Walk
from bot.records.keyed import Keyed
from bot.records.whole import Head

from .sealed_rows import ROWS
from .sealed_rows import strays as unsealed
from .shelf import Shelf
from .tx import Row, Tx

BATCH: Final = 2000


@dataclass(frozen=True, slots=True)
class Verified:
    """What a walk found: ``breaks`` in the chain, and ``strays``: rows elsewhere that do not
    agree with it. Nothing in either: the record stands, up to its end. ``keyed``: how far
    seals with a key cover it."""

    entries: int
    erased: int
    pictures: int
    head: Head | None
    breaks: tuple[Break, ...]
    keyed: Keyed
    strays: tuple[str, ...]

    @property
    def stands(self) -> bool:
        """Whether nothing was found."""
        return not self.breaks and not self.strays


def head(tx: Tx) -> Head | None:
    """The last entry of the log and its hash; None while nothing is logged."""
    row = tx.one("log_last")
    return Head(row["id"], row["hash"]) if row else None


def kind_of(tx: Tx, entry: Head) -> str:
    """What kind of entry this is."""
    row = tx.one("log_kind", id=entry.entry)
    return str(row["kind"]) if row else ""


def links(tx: Tx) -> Iterator[Link]:
    """Every entry of the log, in order, a batch at a time."""
    after = 0
    while rows := tx.all("log_chain", after=after, most=BATCH):
        for row in rows:
            yield _link(row)
        after = rows[-1]["id"]


def cause_of(row: Row) -> Cause:
    """What an entry of the log comes from."""
    return Cause(row["event"], row["person_id"], row["member_id"])


def _link(row: Row) -> Link:
    return Link(
        id=row["id"], patient=row["patient_id"], at=row["at"], kind=row["kind"],
        author=row["author"], text=row["text"], data=row["data"], salt=row["salt"],
        digest=row["digest"], prev=row["prev_hash"], hash=row["hash"],
        erased_in=row["erased_in"], by=cause_of(row),
    )  # fmt: skip


def verify(
    tx: Tx,
    against: str = "",
    shelf: Shelf | None = None,
    progress: Callable[[int], None] = lambda done: None,
    keys: tuple[str, ...] = (),
) -> Verified:
    """Walks the whole chain, then looks whether sealed rows, observations, messages, updates and
    the pictures on the ``shelf`` agree with it. ``against``: a hash (or its first figures)
    that was written down earlier; ``keys``: those that the bot has sealed it with."""
    walk, keyed = Walk(against.lower()), Keyed(keys)
    strays: list[str] = []
    sums: dict[str, str] = {}
    for link in links(tx):
        walk.feed(link)
        keyed.feed(link)
        sums |= _sums(link)
        strays += _message(tx, link)
        if walk.entries % BATCH == 0:
            progress(walk.entries)
    for row in tx.all("patient_ids"):
        strays += _observations(tx, row["id"])
    strays += unsealed(tx, sums)
    pictures = tx.all("media_files")
    for row in pictures:
        if shelf is not None and (wrong := shelf.wrong(row["path"], row["sha256"])):
            strays.append(f"picture {row['id']} of patient {row['patient_id']} is {wrong}: "
                          f"{row['path']}")  # fmt: skip
    breaks = tuple(sorted((*walk.finish(), *keyed.finish()), key=lambda one: one.entry))
    last = Head(walk.last, walk.head) if walk.entries else None
    return Verified(walk.entries, walk.erased, len(pictures), last, breaks, keyed, tuple(strays))


def _message(tx: Tx, link: Link) -> Iterator[str]:
    """Whether what an entry says was sent, or tapped, is there as it was."""
    if link.kind not in ("queued", "sent", "tapped"):
        return
    data = _json(link.data)
    if link.kind != "tapped" and (key := data.get("key")):
        rows = tx.all("outbox_of", dedupe=key)
        if len(rows) > 1:  # what did not leave in its hour gave its key to what came instead
            written = data.get("queued", link.at if link.kind == "queued" else "")
            rows = [row for row in rows if written in (row["created_at"], "")]
        bodies = [_json(row["body"]) for row in rows]
        if not bodies:
            yield f"the message of entry {link.id} is not in the outbox any more"
        elif not any(not body or _same(body, link.text) for body in bodies):
            yield f"the message of entry {link.id} is not what the outbox holds"
    number = str(data.get("source", "")).removeprefix("tap:")
    if (
        link.kind == "tapped"
        and number.isdecimal()
        and len(number) < 19
        and not tx.one("inbox_of", update_id=int(number))
    ):
        yield f"the update of entry {link.id} is not in the inbox any more"


def _sums(link: Link) -> Mapping[str, str]:
    """The sums of tables that an entry seals."""
    found = _json(link.data).get("sums") if link.kind == ROWS else None
    return {str(k): str(v) for k, v in found.items()} if isinstance(found, dict) else {}


def _same(body: dict[str, object], logged: str) -> bool:
    """Codes aside: the outbox needs them until the message has arrived, the log never does. Sent
    late it had its hour before it; sent once more after a lost answer, a word of that."""
    sent, written, again = (str(body.get(one, "")) for one in ("text", "written", "again"))
    words = [sent, f"{written}\n{sent}"] if written else [sent]
    if again:
        words += [f"{again}\n{one}" for one in words]
    return without_codes(logged) in map(without_codes, words)


def _observations(tx: Tx, patient: PatientId) -> Iterator[str]:
    """Observations and the entries that note them must be the same, one for one."""
    noted: Counter[tuple[str, str]] = Counter()
    entry: dict[tuple[str, str], int] = {}
    for row in tx.all("noted_of", patient_id=patient):
        data = _json(row["data"])
        key = (str(data.get("source", "")), _plain(data.get("observation")))
        noted[key] += 1
        entry[key] = row["id"]
    for row in tx.all("observations_kept", patient_id=patient):
        key = (row["source"], _plain(_json(row["body"])))
        if not noted[key]:
            yield f"observation {row['id']} of patient {patient} stands in no entry of the log"
        noted[key] -= 1
    for key, left in noted.items():
        if left > 0:
            yield f"the observation of entry {entry[key]} is not kept any more"


def _json(text: str) -> dict[str, object]:
    try:
        found = json.loads(text)
    except ValueError:
        return {}
    return found if isinstance(found, dict) else {}


def _plain(value: object) -> str:
    return json.dumps(value, sort_keys=True, ensure_ascii=False)

"""Whoever changes, removes, puts in or moves an entry of the log is found; and what cannot
be found is said."""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.cli import verify as command
from bot.model.ids import PatientId
from bot.records.chain import START, Link, Walk, digest_of, seal
from bot.store.audit import Verified, cause_of, links, verify
from bot.store.database import Database, Tx
from bot.store.sealed_rows import settle
from bot.store.shelf import Shelf
from bot.store.sql import migrations

PNG = b"\x89PNG\r\n\x1a\n" + b"not much of a picture"


@contextmanager
def opened(path: Path) -> Iterator[sqlite3.Connection]:
    """The file as anyone with a database program sees it."""
    with sqlite3.connect(path) as plain:
        yield plain
    plain.close()


def do(path: Path, *statements: str) -> None:
    with opened(path) as plain:
        for statement in statements:
            plain.execute(statement)


async def look(path: Path, against: str = "") -> Verified:
    async with Database(path) as db:
        return await db.read(lambda tx: verify(tx, against))


async def test_an_untouched_record_stands(copy: Path) -> None:
    found = await look(copy)
    assert found.stands
    assert found.entries > 100
    assert found.head is not None
    assert found.head.entry == found.entries


TAMPERING: dict[str, tuple[list[str], int, str]] = {
    "one word changed": (
        ["UPDATE log SET text = text || '.' WHERE id = 40"], 40, "words of entry 40 were changed"),
    "said by another": (
        ["UPDATE log SET author = 'Marco' WHERE id = 40"], 40, "words of entry 40 were changed"),
    "of another person": (
        ["UPDATE log SET person_id = 77 WHERE id = 40"], 40, "words of entry 40 were changed"),
    "of another member": (
        ["UPDATE log SET member_id = 77 WHERE id = 40"], 40, "words of entry 40 were changed"),
    "of another event": (
        ["UPDATE log SET event = 'update:77' WHERE id = 40"], 40,
        "words of entry 40 were changed"),
    "of nobody, as before that was kept": (
        ["UPDATE log SET event = NULL, person_id = NULL, member_id = NULL WHERE id = 40"], 40,
        "words of entry 40 were changed"),
    "another rule": (
        ["UPDATE log SET data = '{}' WHERE id = (SELECT min(id) FROM log WHERE kind = 'finding')"],
        0, "were changed"),
    "another hour": (
        ["UPDATE log SET at = '2026-03-05T03:00:00.000000Z' WHERE id = 40"], 40,
        "entry 40 was changed"),
    "another patient": (
        ["UPDATE log SET patient_id = 2 WHERE id = 40"], 40, "entry 40 was changed"),
    "another kind": (["UPDATE log SET kind = 'said' WHERE id = 40"], 40, "entry 40 was changed"),
    "one removed": (["DELETE FROM log WHERE id = 40"], 41, "entry 40 is missing"),
    "several removed": (
        ["DELETE FROM log WHERE id BETWEEN 40 AND 44"], 45, "entries 40 to 44 are missing"),
    "the beginning removed": (["DELETE FROM log WHERE id < 4"], 4, "does not begin with it"),
    "two swapped": (
        ["UPDATE log SET id = -1 WHERE id = 40", "UPDATE log SET id = 40 WHERE id = 41",
         "UPDATE log SET id = 41 WHERE id = -1"], 40, "changed, put in or moved"),
    "words taken away as if by an erasure": (
        ["UPDATE log SET text = '', data = '{}', erased_in = 9999 WHERE id = 40"], 40,
        "no entry 9999 says that they were erased"),
}  # fmt: skip


@pytest.mark.parametrize("what", TAMPERING)
async def test_tampering_is_found_and_the_first_entry_named(copy: Path, what: str) -> None:
    statements, entry, words = TAMPERING[what]
    do(copy, *statements)
    found = await look(copy)
    assert not found.stands
    first = found.breaks[0]
    assert words in first.why
    assert entry in (0, first.entry)


def forge(path: Path, put_in: Callable[[sqlite3.Connection], None]) -> None:
    with opened(path) as plain:
        plain.row_factory = sqlite3.Row
        put_in(plain)


async def test_an_entry_put_in_with_a_seal_of_its_own_is_found(copy: Path) -> None:
    """The forger knows how seals are made, and moves the rest along to make room."""

    def put_in(plain: sqlite3.Connection) -> None:
        before = plain.execute("SELECT * FROM log WHERE id = 40").fetchone()
        plain.execute("UPDATE log SET id = -id - 1 WHERE id > 40")
        plain.execute("UPDATE log SET id = -id WHERE id < 0")
        digest = digest_of("00", "Inés", "she fell", "{}")
        hash = seal(before["hash"], 41, PatientId(1), before["at"], "said", digest)
        plain.execute(
            "INSERT INTO log (id, patient_id, at, kind, author, text, data, salt, digest, "
            "prev_hash, hash) VALUES (41, 1, ?, 'said', 'Inés', 'she fell', '{}', '00', ?, ?, ?)",
            (before["at"], digest, before["hash"], hash),
        )

    forge(copy, put_in)
    found = await look(copy)
    assert found.breaks[0].entry == 42


async def test_an_entry_changed_and_sealed_anew_is_found_at_the_next(copy: Path) -> None:
    def change(plain: sqlite3.Connection) -> None:
        row = plain.execute("SELECT * FROM log WHERE id = 40").fetchone()
        digest = digest_of(row["salt"], row["author"], "all is well", row["data"], cause_of(row))
        hash = seal(row["prev_hash"], 40, row["patient_id"], row["at"], row["kind"], digest)
        plain.execute("UPDATE log SET text = 'all is well', digest = ?, hash = ? WHERE id = 40",
                      (digest, hash))  # fmt: skip

    forge(copy, change)
    found = await look(copy)
    assert found.breaks[0].entry == 41
    assert "entry 40" in found.breaks[0].why


async def test_a_cut_end_is_found_only_against_a_seal_kept_elsewhere(copy: Path) -> None:
    head = (await look(copy)).head
    assert head is not None
    assert (await look(copy, head.hash)).stands
    do(copy, "DELETE FROM log WHERE id = (SELECT max(id) FROM log)")
    alone = await look(copy)
    assert alone.breaks == ()  # the chain alone cannot know
    against = await look(copy, head.hash)
    assert "cut off" in against.breaks[0].why
    assert (await look(copy, head.hash[:16])).breaks


def written_anew(tx: Tx) -> None:
    """What a forger with our own code would do."""
    prev = START
    for link in list(links(tx)):
        digest = digest_of(link.salt, link.author, link.text, link.data, link.by)
        now = seal(prev, link.id, link.patient, link.at, link.kind, digest)
        tx.run("log_seal", id=link.id, salt=link.salt, digest=digest, prev=prev, hash=now)
        prev = now


async def test_a_chain_written_anew_is_found_against_a_seal(copy: Path) -> None:
    head = (await look(copy)).head
    assert head is not None
    do(copy, "UPDATE log SET text = 'all is well' WHERE id = 40")
    async with Database(copy) as db:
        await db.transact(written_anew)
    assert (await look(copy)).breaks == ()
    assert (await look(copy, head.hash)).breaks


STRAYS = {
    "UPDATE observation SET body = '{\"about\":\"pain\",\"value\":\"none\"}' WHERE id = 1":
        "observation 1 of patient 1 stands in no entry",
    "DELETE FROM observation WHERE id = 1": "is not kept any more",
    "UPDATE outbox SET body = json_set(body, '$.text', 'no hurry') WHERE id = "
    "(SELECT max(id) FROM outbox WHERE patient_id = 1 AND kind = 'send')": "the outbox holds",
    "DELETE FROM outbox WHERE id = (SELECT max(id) FROM outbox WHERE patient_id = 1 AND "
    "kind = 'send')": "not in the outbox any more",
}  # fmt: skip


@pytest.mark.parametrize("statement", STRAYS)
async def test_rows_that_do_not_agree_with_the_log_are_found(copy: Path, statement: str) -> None:
    do(copy, statement)
    found = await look(copy)
    assert found.breaks == ()
    assert any(STRAYS[statement] in stray for stray in found.strays)


async def test_a_log_from_before_the_seals_is_sealed_when_it_is_opened(copy: Path) -> None:
    columns = ("salt", "digest", "prev_hash", "hash", "erased_in")
    do(copy, "UPDATE log SET event = NULL, person_id = NULL, member_id = NULL",
       *(f"ALTER TABLE log DROP COLUMN {column}" for column in columns),
       "DELETE FROM schema_version WHERE number = 3")  # fmt: skip
    found = await look(copy)
    assert found.stands
    assert found.entries > 100
    assert 3 in [number for number, _ in migrations()]


def test_the_command_says_it_in_words_and_by_its_exit_code(
    lived: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.copy(lived / "practice.db", tmp_path / "a.db")
    place = ["--database", str(tmp_path / "a.db")]
    assert command.main(place) == 0
    shown = capsys.readouterr().out
    assert "No entry of the log was changed" in shown
    hash = shown.rpartition("sealed ")[2].split()[0]
    assert command.main([*place, "--against", hash]) == 0
    capsys.readouterr()
    do(tmp_path / "a.db", "DELETE FROM log WHERE id = 40")
    assert command.main(place) == 1
    assert "does NOT stand. First: entry 40 is missing." in capsys.readouterr().out


# ---- The chain alone ---------------------------------------------------------------------


def chain(words: list[str]) -> list[Link]:
    links: list[Link] = []
    for number, text in enumerate(words, 1):
        prev = links[-1].hash if links else START
        digest = digest_of(f"{number}", "Inés", text, "{}")
        hash = seal(prev, number, PatientId(1), "2026", "said", digest)
        links.append(Link(number, PatientId(1), "2026", "said", "Inés", text, "{}", f"{number}",
                          digest, prev, hash))  # fmt: skip
    return links


def breaks(links: list[Link]) -> list[str]:
    walk = Walk()
    for link in links:
        walk.feed(link)
    return [one.why for one in walk.finish()]


@given(st.lists(st.text(), min_size=2, max_size=20), st.data())
def test_any_entry_left_out_or_out_of_place_is_found(words: list[str], data: st.DataObject) -> None:
    links = chain(words)
    assert breaks(links) == []
    place = data.draw(st.integers(0, len(links) - 2))
    assert breaks(links[:place] + links[place + 1 :])
    swapped = [*links]
    swapped[place], swapped[place + 1] = swapped[place + 1], swapped[place]
    assert breaks(swapped)
    assert breaks([*links[: place + 1], *links[place:]])


@given(st.text(), st.text())
def test_parts_cannot_run_into_one_another(first: str, second: str) -> None:
    assert digest_of("a", first, second, "") != digest_of("a", first + second, "", "") or not second


@pytest.mark.parametrize("harm", ["changed", "missing"])
async def test_a_picture_that_is_not_what_was_kept_is_found(copy: Path, harm: str) -> None:
    shelf = Shelf(copy)
    kept = shelf.put(PatientId(1), PNG)
    with opened(copy) as plain:
        plain.execute(
            "INSERT INTO media (patient_id, source, kind, file_id, file_unique, day, at, "
            "person_id, state, path, sha256) VALUES (1, 'm', 'photo', 'f', 'u', 3, '', 1, "
            "'kept', ?, ?)",
            (kept.path, kept.sha256),
        )
        plain.row_factory = sqlite3.Row
        settle(Tx(plain))
    async with Database(copy) as db:
        assert (await db.read(lambda tx: verify(tx, "", shelf))).stands
        if harm == "missing":
            shelf.full(kept.path).unlink()
        else:
            shelf.full(kept.path).write_bytes(PNG + b" ")
        found = await db.read(lambda tx: verify(tx, "", shelf))
    assert found.strays == (f"picture 1 of patient 1 is {harm}: {kept.path}",)

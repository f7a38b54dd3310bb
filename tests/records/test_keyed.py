"""What the chain alone cannot show, a key that the database does not hold can."""

from __future__ import annotations

import asyncio
import json
from datetime import timedelta
from hashlib import sha256
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.cli import verify as command
from bot.model.codes import json_without_codes, without_codes, without_known
from bot.model.ids import Cause
from bot.records.chain import START, digest_of, seal
from bot.records.keyed import A_DAY
from bot.service.sealing import seal_log
from bot.store.audit import Verified, links, verify
from bot.store.chaining import append
from bot.store.database import Database, Tx, moment
from tests.records.test_chain import do, opened

KEY, OLD = "a key that nobody can guess", "the key of the year before"


async def look(path: Path, *keys: str) -> Verified:
    async with Database(path) as db:
        return await db.read(lambda tx: verify(tx, keys=keys))


async def sealed(path: Path, *after: timedelta, key: str = KEY) -> None:
    """An entry and a seal, so long after the log's last entry, each in turn."""
    async with Database(path) as db:
        for wait in after:
            last = await db.read(lambda tx: list(links(tx))[-1])
            now = moment(last.at) + wait

            def one(tx: Tx) -> int:
                return append(tx, "desk", "Kim", "looked", now, None, {})  # noqa: B023

            await db.transact(one)
            assert await seal_log(db, key, now)
            assert not await seal_log(db, key, now)  # not one upon another


def rewritten(path: Path, first: int) -> None:
    """All from this entry on sealed anew, as someone who has the database can."""
    with opened(path) as plain:
        prev = plain.execute("SELECT hash FROM log WHERE id = ?", (first - 1,)).fetchone()
        prev = prev[0] if prev else START
        for number, patient, at, kind, author, text, data, salt, *by in plain.execute(
            "SELECT id, patient_id, at, kind, author, text, data, salt, event, person_id, "
            "member_id FROM log WHERE id >= ? ORDER BY id", (first,)
        ).fetchall():  # fmt: skip
            digest = digest_of(salt, author, text, data, Cause(*by))
            whole = seal(prev, number, patient, at, kind, digest)
            plain.execute(
                "UPDATE log SET digest = ?, prev_hash = ?, hash = ? WHERE id = ?",
                (digest, prev, whole, number),
            )
            prev = whole


async def test_a_log_that_was_written_anew_is_found_with_the_key_only(copy: Path) -> None:
    hour = timedelta(hours=1)
    await sealed(copy, hour, hour)
    assert (await look(copy, KEY)).stands
    do(copy, "UPDATE log SET author = 'Marco' WHERE id = 40")
    rewritten(copy, 40)
    assert (await look(copy)).breaks == ()  # as the README says
    found = await look(copy, KEY)
    assert "of another key, or what stands before it was written anew" in found.breaks[-1].why
    do(copy, "DELETE FROM log WHERE kind = 'sealed'")
    assert any("no entry bears a seal" in one.why for one in (await look(copy, KEY)).breaks)


async def test_seals_that_were_taken_out_leave_a_gap(copy: Path) -> None:
    await sealed(copy, timedelta(hours=1), timedelta(hours=24), timedelta(hours=24))
    found = await look(copy, KEY)
    assert (found.keyed.good, found.keyed.gaps) == (3, [])
    assert found.keyed.upto == found.entries
    second = "SELECT id FROM log WHERE kind = 'sealed' ORDER BY id LIMIT 1 OFFSET 1"
    do(copy, f"DELETE FROM log WHERE id >= ({second})")  # noqa: S608
    await sealed(copy, timedelta(hours=47))  # the bot goes on over what was rewritten
    (gap,) = (await look(copy, KEY)).keyed.gaps
    assert "seals were taken out" in gap


async def test_a_seal_of_another_place_hour_or_key_is_none(copy: Path) -> None:
    await sealed(copy, timedelta(hours=1), timedelta(hours=2))
    with opened(copy) as plain:
        (first, data), (second, _) = plain.execute(
            "SELECT id, data FROM log WHERE kind = 'sealed' ORDER BY id"
        ).fetchall()
        plain.execute("UPDATE log SET data = ? WHERE id = ?", (data, second))
    rewritten(copy, second)
    assert [one.entry for one in (await look(copy, KEY)).breaks] == [second]
    assert [one.entry for one in (await look(copy, "another key altogether")).breaks] == [
        first, second,
    ]  # fmt: skip


async def test_a_key_may_be_changed(copy: Path) -> None:
    await sealed(copy, timedelta(hours=1), key=OLD)
    await sealed(copy, timedelta(hours=1))
    assert (await look(copy, KEY, OLD)).stands
    assert not (await look(copy, KEY)).stands
    assert timedelta(hours=25) < A_DAY  # a day on which the clock goes back has 25


def test_verify_says_how_far_the_key_reaches(
    copy: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    asyncio.run(sealed(copy, timedelta(hours=1)))
    assert command.main(["--database", str(copy)]) == 0
    assert "SLOWLEASH_SEAL_KEY to check them" in capsys.readouterr().out
    monkeypatch.setenv("SLOWLEASH_SEAL_KEY", f"{KEY.replace(' ', '-')} {OLD.replace(' ', '-')}")
    assert command.main(["--database", str(copy)]) == 1  # these have no spaces
    assert "of another key" in capsys.readouterr().out


@given(st.from_regex(r"[A-Za-z0-9_-]{22}", fullmatch=True), st.text(max_size=20))
def test_no_code_of_a_link_stays(code: str, around: str) -> None:
    for link in (f"https://t.me/the_bot?start={code}", f"http://127.0.0.1:1/enter?code={code}"):
        kept = without_codes(f"{around} {link} {around}")
        assert code not in kept.replace(around, "")
        assert without_codes(kept) == kept
        assert without_codes(f"{around} {link.replace(code, '')}").endswith("=")


@given(st.from_regex(r"[A-Za-z0-9_-]{22}", fullmatch=True), st.sampled_from(" \n\t\u00a0\u3000"))
def test_no_code_behind_a_command_stays(code: str, space: str) -> None:
    for said in ("/start", "/join", "/join@the_bot"):
        body = json.dumps({"message": {"text": f"{said}{space}{code}", "n": [1, None]}})
        kept = json_without_codes(body, _nobodys)
        assert code not in kept
        assert json_without_codes(kept, _nobodys) == kept
        assert json.loads(kept)["message"]["n"] == [1, None]
    body = json.dumps({"text": f"how do I start {code}"})
    assert json_without_codes(body, _nobodys) == body


def _nobodys(digest: str) -> bool:
    return False


@given(
    st.from_regex(r"[A-Za-z0-9_-]{22}", fullmatch=True),
    st.text(max_size=30),
    st.sampled_from(("", " ", "start ", "START=", "%3Fstart%3D", "start", "(", "\n", "code:")),
)
def test_a_code_that_stands_alone_goes_too_and_no_other_word(
    code: str, around: str, before: str
) -> None:
    ours = {sha256(code.encode()).hexdigest()}
    text = f"{around} {before}{code}. {around}"
    kept = without_known(text, ours.__contains__)
    assert code not in kept.replace(around, "")
    assert without_known(kept, ours.__contains__) == kept
    alone = "".join(one for one in before if one not in "=%")  # no link, and no command
    plain = f"{around} {alone}{code}"
    assert without_known(plain, _nobodys) == without_codes(plain)
    body = json.dumps({"text": text, "n": [text]})
    assert code not in json_without_codes(body, ours.__contains__).replace(json.dumps(around), "")

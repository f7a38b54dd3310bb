"""The commands about a practice: what can be mended is said, and nothing is half done."""

from __future__ import annotations

import asyncio
import os
import re
import signal
import socket
import sqlite3
import stat
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import mkdtemp

import pytest

from bot import cli
from bot.model.ids import PatientId
from bot.model.settings import Clinic
from bot.pictures.opening import checksum
from bot.protocol.settings import read_clinic
from bot.store.archive import unpack
from bot.store.database import Database
from bot.store.shelf import Shelf
from demo.standin import Standin
from tests.harness.bots import KILL, Nest

RUN = "import sys; from bot.cli import main; sys.exit(main(sys.argv[1:]))"


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A practice's folder, with the settings and the order as the command prints them."""
    place = tmp_path / "Clínica del río"
    place.mkdir()
    monkeypatch.chdir(place)
    monkeypatch.delenv("SLOWLEASH_TOKEN", raising=False)
    return place


def said(capsys: pytest.CaptureFixture[str], *words: str, code: int = 0) -> str:
    """What the command printed, when it ended as it should."""
    try:
        ended = cli.main(list(words))
    except SystemExit as stopped:  # argparse
        ended = stopped.code if isinstance(stopped.code, int) else 1
    out = capsys.readouterr()
    assert ended == code, out.err
    return out.err if code else out.out


def settings(capsys: pytest.CaptureFixture[str]) -> None:
    Path("clinic.yaml").write_text(said(capsys, "run", "--example"), "utf-8")


async def begun() -> None:
    """A practice that has had its first start."""
    async with Database(Path("slowleash.db")):
        pass


def order(capsys: pytest.CaptureFixture[str], **changed: object) -> None:
    """The example, as if the surgery had been yesterday."""
    text = said(capsys, "enrol", "--example")
    yesterday = datetime.now(UTC).date() - timedelta(days=1)
    for number in range(3):
        old = f"2026-03-{3 + number:02d}"
        text = text.replace(old, str(yesterday + timedelta(days=number)))
    for key, value in changed.items():
        text = re.sub(rf"(?m)^{key}: \S+", f"{key}: {value}", text)
    Path("order.yaml").write_text(text, "utf-8")


def test_the_examples_pass_their_check(capsys: pytest.CaptureFixture[str]) -> None:
    for command, name in (("run", "clinic.yaml"), ("enrol", "order.yaml")):
        text = said(capsys, command, "--example")
        assert text.endswith("\n")
        assert not text.endswith("\n\n")
        Path(name).write_text(text, "utf-8")
        assert said(capsys, "check", name) == "1 file, no problems\n"
    assert "BEGIN:VCALENDAR" in said(capsys, "calendar", "order.yaml")  # of a course long over


@pytest.mark.parametrize(
    ("words", "mend"),
    [
        ("run --review-port 99999999", "from 1 to 65535"),
        ("run --port -5", "from 1 to 65535"),
        ("review --port 0", "from 1 to 65535"),
        ("demo --port eighty", "from 1 to 65535"),
        ("run --webhook http://bot.example.org/", "https"),
        ("run --review-url bot", "https"),
        ("run --staff-code -3", "0 is the clinic's group"),
        ("log 1 --last -1", "1 or more"),
        ("log", "slowleash run"),
        ("export 1 --to no/where.txt", "Make it"),
        ("export 1 --to .", "Name a file in it"),
        ("export 1 --clinic gone.yaml", "gone.yaml"),
        ("calendar order.yaml --to no/where.ics", "Make it"),
        ("preview order.yaml --to no/where.pdf", "Make it"),
        ("preview order.yaml --flows gone", "no such folder"),
        ("enrol order.yaml --flows clinic.yaml", "no such folder"),
        ("enrol order.yaml", "BotFather"),
        ("run", "BotFather"),
    ],
)
def test_a_wrong_word_gets_its_mend(
    words: str, mend: str, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    order(capsys)
    told = said(capsys, *words.split(), code=2)
    assert mend in told
    assert not Path("slowleash.db").exists()


async def test_an_enrolment_needs_a_good_order_and_comes_once(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    settings(capsys)
    order(capsys)
    await begun()
    async with Standin() as people:
        monkeypatch.setenv("SLOWLEASH_TOKEN", people.token)
        enrol = ("enrol", "order.yaml", "--base-url", people.base_url)
        first = await asyncio.to_thread(said, capsys, *enrol)
        assert re.search(r"https://t\.me/\w+\?start=\S{22}\n", first)
        again = await asyncio.to_thread(said, capsys, *enrol, code=2)
        assert "is enrolled already, as patient 1" in again
        assert "Biscuit is enrolled" in await asyncio.to_thread(said, capsys, *enrol, "--again")
    told = await asyncio.to_thread(said, capsys, "log", "Biscuit", code=2)
    assert "1 Biscuit, 2 Biscuit" in told
    if os.name != "nt":
        assert stat.S_IMODE(Path("slowleash.db").stat().st_mode) == 0o600
        kept = Shelf(Path("slowleash.db")).put(PatientId(1), b"a picture")
        for open_to_all in (Path("slowleash-media"), Path("slowleash-media", kept.path)):
            open_to_all.chmod(0o755)  # as an older version left them
        told = await asyncio.to_thread(said, capsys, "backup", "copy.db")
        assert "1 pictures and films" in told
        assert stat.S_IMODE(Path("copy.db").stat().st_mode) == 0o600
        unpack(Path("copy.db"), Path("laid"))
        there = Path("laid", "media")
        modes = [stat.S_IMODE(one.stat().st_mode) for one in (there, *there.rglob("*"))]
        assert modes == [0o700, 0o700, 0o600]
        assert checksum((there / kept.path).read_bytes()) == kept.sha256


async def test_what_is_not_checked_needs_a_clinician_named_for_it(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Ten times the dose, and a name that slipped; 21 CFR 520.304: 1 mg/lb, 50 mg here."""
    settings(capsys)
    order(capsys)
    good = Path("order.yaml").read_text("utf-8")
    ten_times = good.replace("strength_mg: 50\n", "strength_mg: 500\n").replace(
        "name: cephalexin", "name: cefalexna"
    )
    Path("order.yaml").write_text(
        ten_times.replace("name: carprofen", "name: carprofen\n    confirmed_by: Dr Vale"), "utf-8"
    )
    told = await asyncio.to_thread(said, capsys, "enrol", "order.yaml", code=2)
    assert "`confirmed_by` cannot be written into an order" in told
    Path("order.yaml").write_text(ten_times, "utf-8")
    told = await asyncio.to_thread(said, capsys, "enrol", "order.yaml", "--check", code=2)
    assert "carprofen: ordered 500 mg every 12 h; stated 50.04 mg here, 1 mg/lb" in told
    assert "cefalexina is: nothing was checked" in told
    assert "--confirm-as" in told
    assert not Path("slowleash.db").exists()
    for nobody in ("", "  "):
        words = ("enrol", "order.yaml", "--check", "--confirm-as", nobody)
        await asyncio.to_thread(said, capsys, *words, code=2)
    await begun()
    async with Standin() as people:
        monkeypatch.setenv("SLOWLEASH_TOKEN", people.token)
        enrol = ("enrol", "order.yaml", "--base-url", people.base_url, "--confirm-as", "Dr Vale")
        assert "Biscuit is enrolled" in await asyncio.to_thread(said, capsys, *enrol)
    log = await asyncio.to_thread(said, capsys, "log", "Biscuit")
    line = next(one for one in log.splitlines() if "confirmed by Dr Vale" in one)
    assert "carprofen: ordered 500 mg every 12 h; stated 50.04 mg here, 1 mg/lb" in line


async def test_an_own_protocol_serves_every_command(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    settings(capsys)
    own = Path("ours/protocols/our-knees.yaml")
    own.parent.mkdir(parents=True)
    own.write_text("protocol: our-knees\nbased_on: tibial-osteotomy\nversion: 1\n", "utf-8")
    order(capsys, protocol="our-knees")
    told = said(capsys, "preview", "order.yaml", code=2)
    assert "our-knees" in told
    flows = ("order.yaml", "--flows", "ours")
    assert "Day 1" in said(capsys, "preview", *flows)
    assert "BEGIN:VCALENDAR" in said(capsys, "calendar", *flows)
    assert "Rules:" in said(capsys, "try", "she is limping", "--order", *flows)
    await begun()
    async with Standin() as people:
        monkeypatch.setenv("SLOWLEASH_TOKEN", people.token)
        done = await asyncio.to_thread(said, capsys, "enrol", *flows, "--base-url", people.base_url)
    assert "Biscuit is enrolled" in done
    assert "protocol our-knees" in await asyncio.to_thread(said, capsys, "log", "Biscuit")


def test_a_database_of_another_program_is_left_alone(capsys: pytest.CaptureFixture[str]) -> None:
    with sqlite3.connect("books.db") as books:
        books.execute("CREATE TABLE books (title TEXT)")
    books.close()
    before = Path("books.db").read_bytes()
    told = said(capsys, "log", "--database", "books.db", code=2)
    assert "books.db: this is the database of another program" in told
    assert Path("books.db").read_bytes() == before


async def test_a_newer_database_names_itself_and_the_mend(
    capsys: pytest.CaptureFixture[str],
) -> None:
    async with Database(Path("newer.db")):
        pass
    with sqlite3.connect("newer.db") as newer:
        newer.execute("INSERT INTO schema_version VALUES (999)")
    newer.close()
    told = await asyncio.to_thread(said, capsys, "verify", "--database", "newer.db", code=2)
    assert told.startswith("slowleash verify: newer.db: ")
    assert "Install the newer slowleash" in told


class Bot:
    """``slowleash run`` as a process of its own; what it says is read line by line."""

    def __init__(self, nest: Nest, base_url: str, token: str, *words: str) -> None:
        first = () if Path("slowleash.db").exists() else ("--new",)
        self._nest, self._token = nest, token
        self._words = ("run", "--base-url", base_url, *first, *words)
        self._log = Path(mkdtemp(dir=Path.cwd().parent)) / "said"
        self._log.touch()
        self._read = self._process = 0
        self._code: int | None = None

    async def __aenter__(self) -> Bot:
        self._process = await self._nest.program(
            RUN, self._log, *self._words, SLOWLEASH_TOKEN=self._token
        )
        return self

    async def __aexit__(self, *error: object) -> None:
        if self._code is None:
            os.kill(self._process, KILL)
            await self.ended()

    async def until(self, words: str) -> str:
        """The next line with these words; fails when the bot ends without it."""
        while True:
            gone = self._code is not None or self._look()
            lines = self._log.read_text("utf-8").splitlines(keepends=True)
            while self._read < len(lines) and lines[self._read].endswith("\n"):
                self._read += 1
                if words in lines[self._read - 1]:
                    return lines[self._read - 1]
            assert not gone, "".join(lines)
            await asyncio.sleep(0.02)

    def _look(self) -> bool:
        self._code = self._nest.ended(self._process)
        return self._code is not None

    async def ended(self) -> int:
        if self._code is None:
            self._code = await self._nest.wait(self._process)
        return self._code

    def stop(self) -> None:
        os.kill(self._process, signal.SIGINT)


async def test_a_second_bot_on_the_same_database_is_refused(
    nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    async with Standin() as people, Bot(nest, people.base_url, people.token) as first:
        await first.until("is served by")
        async with Bot(nest, people.base_url, people.token) as second:
            await second.until("another slowleash is already running on slowleash.db")
            assert await second.ended() == 2
        first.stop()
        await first.until("nothing is lost")
        assert await first.ended() == 0
        async with Bot(nest, people.base_url, people.token) as third:
            await third.until("is served by")


async def test_the_bot_waits_for_the_network_at_the_start(
    nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    async with Bot(nest, f"http://127.0.0.1:{port}/bot", "42:not-asked") as bot:
        assert "Trying again" in await bot.until("Telegram cannot be reached")
        async with Standin(token="42:not-asked", port=port):
            await bot.until("is served by")
            bot.stop()
            assert await bot.ended() == 0


async def test_a_port_in_use_and_a_wrong_token_are_told(
    nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    async with Standin() as people:
        taken = people.base_url.rpartition(":")[2].removesuffix("/bot")
        calls = ("--webhook", "https://bot.example.org/telegram", "--port", taken)
        for words in (calls, ("--review-port", taken)):
            async with Bot(nest, people.base_url, people.token, *words) as bot:
                assert "Try another" in await bot.until(f"slowleash run: port {taken}")
                assert await bot.ended() == 2
        async with Bot(nest, people.base_url, "42:wrong") as bot:
            assert "SLOWLEASH_TOKEN" in await bot.until("the token is wrong")
            assert await bot.ended() == 2


async def test_what_ends_the_bot_calls_the_alert_once(
    folder: Path, nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    script = folder / "call.py"
    script.write_text("import sys; open('called', 'a').write(sys.stdin.read())", "utf-8")
    text = Path("clinic.yaml").read_text("utf-8")
    Path("clinic.yaml").write_text(f"{text}alert: [{sys.executable}, call.py]\n", "utf-8")
    async with Standin() as people:
        for _ in range(2):  # whatever starts it again does not call each time
            async with Bot(nest, people.base_url, "42:revoked") as bot:
                await bot.until("the token is wrong")
                assert await bot.ended() == 2
        async with Bot(nest, people.base_url, people.token) as bot:
            await bot.until("is served by")
            bot.stop()
            assert await bot.ended() == 0
        Path("other.db").write_text("no database at all " * 100, "utf-8")
        async with Bot(nest, people.base_url, people.token, "--database", "other.db") as bot:
            await bot.until("is it a slowleash database")
            assert await bot.ended() == 2
    called = Path("called").read_text("utf-8")
    assert called.count("its database cannot be used") == 1
    assert called.count("does not know the bot's token any more") == 1


async def test_the_start_waits_wherever_the_platform_fails(
    nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    async with Standin() as people:
        people.fault("gateway", "deleteWebhook", times=1)
        async with Bot(nest, people.base_url, people.token) as bot:
            await bot.until("is served by")
            await bot.until("Telegram cannot be reached")
            ines = people.user("Ines")
            people.start(ines)
            await people.wait_for(lambda: bool(people.said(people.private(ines))))
            bot.stop()
            assert await bot.ended() == 0


async def test_the_webhook_listens_on_the_path_of_its_address(
    nest: Nest, capsys: pytest.CaptureFixture[str]
) -> None:
    settings(capsys)
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = str(free.getsockname()[1])
    async with Standin() as people:
        calls = ("--webhook", f"http://127.0.0.1:{port}/a/b", "--port", port)
        async with Bot(nest, people.base_url, people.token, *calls) as bot:
            await bot.until("is served by")
            ines = people.user("Ines")
            people.start(ines)
            await people.wait_for(lambda: bool(people.said(people.private(ines))))
            bot.stop()
            assert await bot.ended() == 0


def test_the_settings_example_shows_every_setting(capsys: pytest.CaptureFixture[str]) -> None:
    text = said(capsys, "run", "--example")
    shown = {key for key in Clinic.model_fields if re.search(rf"(?m)^(# )?{key}:", text)}
    assert shown == set(Clinic.model_fields)
    whole = re.sub(
        r"(?m)^# (duty:|  \w{3}: \[|holidays:|closed_on:|emergency_answer_minutes:)", r"\1", text
    )
    clinic = read_clinic(whole, "clinic.yaml")
    assert clinic.duty
    assert clinic.holidays

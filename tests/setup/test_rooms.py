"""Habits that no linter knows: where SQL, the clock and dependencies may stand."""

from __future__ import annotations

import ast
import re
import sys
import tomllib
from collections.abc import Iterator
from functools import cache
from importlib.metadata import packages_distributions
from pathlib import Path

import pytest
from packaging.requirements import Requirement

ROOT = Path(__file__).resolve().parents[2]
SQL = re.compile(
    r"^\s*(SELECT\b.+\bFROM\b|INSERT\s+(OR\s+\w+\s+)?INTO\b|UPDATE\s+\w+\s+SET\b"
    r"|DELETE\s+FROM\b|(CREATE|DROP|ALTER)\s+(TABLE|INDEX|VIEW|TRIGGER)\b|PRAGMA\s+\w)",
    re.IGNORECASE | re.DOTALL,
)
CLOCKS = {("datetime", "now"), ("datetime", "utcnow"), ("datetime", "today"), ("date", "today"),
          ("time", "time"), ("time", "time_ns"), ("time", "localtime")}  # fmt: skip
CLOCK_FILES = {"bot/service/clock.py", "demo/clock.py"}
NEVER_IMPORTED = {
    "python-multipart": "starlette reads uploads with it",
    "tzdata": "time zones where the system has none (Windows)",
    "sniffio": "httpcore looks for it on every request",
}


def modules(*folders: str) -> Iterator[tuple[str, ast.Module]]:
    """Our files, without those that name their own libraries (PEP 723)."""
    for folder in folders:
        yield from _modules(folder)


@cache
def _modules(folder: str) -> list[tuple[str, ast.Module]]:
    texts = {path: path.read_text("utf-8") for path in sorted((ROOT / folder).rglob("*.py"))}
    return [
        (path.relative_to(ROOT).as_posix(), ast.parse(text))
        for path, text in texts.items()
        if not text.startswith("# /// script\n")
    ]


def sql_in(tree: ast.AST) -> list[int]:
    """Lines that hold an SQL statement as text."""
    return [
        node.lineno
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and SQL.match(node.value)
    ]


def clock_calls_in(tree: ast.AST) -> list[int]:
    """Lines that ask the machine what time it is."""
    return [
        node.lineno
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and (ast.unparse(node.func.value).rpartition(".")[2], node.func.attr) in CLOCKS
    ]


def test_sql_lives_in_the_store_only() -> None:
    found = [
        f"{name}:{line}"
        for name, tree in modules("bot", "demo", "flows")
        if not name.startswith("bot/store/")
        for line in sql_in(tree)
    ]
    assert found == []


def test_the_clock_is_read_in_one_place() -> None:
    found = [
        f"{name}:{line}"
        for name, tree in modules("bot", "demo", "flows")
        if name not in CLOCK_FILES
        for line in clock_calls_in(tree)
    ]
    assert found == []


def test_a_digit_is_one_that_can_be_reckoned_with() -> None:
    """``str.isdigit`` takes "²" and "①", which no number is made of. Replies are read with
    each digit folded to one of ten (``bot/reading/normalise.py``)."""
    found = [
        f"{name}:{node.lineno}"
        for name, tree in modules("bot", "demo")
        if not name.startswith("bot/reading/")
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute) and node.attr in ("isdigit", "isnumeric")
    ]
    assert found == []


@pytest.mark.parametrize("text", ["SELECT id\nFROM patient", "insert or ignore into inbox(x)",
                                  "UPDATE chat SET state = 1", "PRAGMA synchronous"])  # fmt: skip
def test_the_scan_finds_sql(text: str) -> None:
    assert sql_in(ast.parse(f"run({text!r})")) == [1]


@pytest.mark.parametrize("words", ["Select a patient first.", "Update: she is better",
                                   "Delete the plan?", "Insert the ball"])  # fmt: skip
def test_the_scan_leaves_plain_words(words: str) -> None:
    assert sql_in(ast.parse(f"say({words!r})")) == []


@pytest.mark.parametrize("call", ["datetime.now(UTC)", "datetime.datetime.now()", "time.time()",
                                  "date.today()"])  # fmt: skip
def test_the_scan_finds_a_look_at_the_clock(call: str) -> None:
    assert clock_calls_in(ast.parse(call)) == [1]


def normal(name: str) -> str:
    return re.sub(r"[-_.]+", "-", re.split(r"[\[<>=!~; ]", name)[0]).lower()


def imported_from(*folders: str) -> dict[str, str]:
    """Distribution → a file that imports it; standard library and own rooms left out."""
    own = {"bot", "demo", "flows", "tests"} | sys.stdlib_module_names
    homes = packages_distributions()
    found: dict[str, str] = {}
    for name, tree in modules(*folders):
        for node in ast.walk(tree):
            if isinstance(node, ast.Import):
                names = [alias.name for alias in node.names]
            elif isinstance(node, ast.ImportFrom) and node.level == 0:
                names = [node.module or ""]
            else:
                continue
            for top in {full.partition(".")[0] for full in names} - own:
                found[normal(homes.get(top, [top])[0])] = name
    return found


def declared(extra: str | None = None) -> dict[str, Requirement]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    lines = project["optional-dependencies"][extra] if extra else project["dependencies"]
    return {normal(line): Requirement(line) for line in lines}


def test_dependencies_are_what_the_code_imports() -> None:
    """Nothing that users must download for no reason, nothing that comes by luck."""
    imported = imported_from("bot", "demo", "flows")
    known = declared().keys() | declared("film").keys()  # an extra, looked for at run time
    lacking = {name: file for name, file in imported.items() if name not in known}
    assert lacking == {}
    assert declared().keys() - imported.keys() - NEVER_IMPORTED.keys() == set()


def test_the_tests_declare_what_they_import() -> None:
    known = declared().keys() | declared("test").keys()
    for folder in sorted(path for path in (ROOT / "tests").iterdir() if path.is_dir()):
        more = declared("bench").keys() if folder.name == "bench" else set()
        imported = imported_from(f"tests/{folder.name}")
        assert {name: file for name, file in imported.items() if name not in known | more} == {}


@pytest.mark.parametrize("lock", ["demo/requirements.lock", "tests/requirements.lock"])
def test_locks_pin_with_hashes_and_name_no_host(lock: str) -> None:
    text = (ROOT / lock).read_text("utf-8")
    entries = re.split(r"^(?=[a-z])", text, flags=re.MULTILINE)[1:]
    assert entries
    for entry in entries:
        assert re.match(r"[a-z0-9._-]+==\S+ .*\\\n(    --hash=sha256:[0-9a-f]{64}( \\)?\n)+$",
                        entry), entry  # fmt: skip
    assert "//" not in text


def test_locks_hold_every_dependency_and_agree() -> None:
    demo, tests = (
        dict(re.findall(r"^([a-z0-9._-]+)==(\S+)", (ROOT / lock).read_text(), re.MULTILINE))
        for lock in ("demo/requirements.lock", "tests/requirements.lock")
    )
    for pins, wanted in ((demo, declared()), (tests, declared("test"))):
        for name, requirement in wanted.items():
            assert name in pins, f"renew the lock: {name} is not in it"
            assert requirement.specifier.contains(pins[name]), f"renew the lock: {requirement}"
    assert demo.items() <= tests.items()

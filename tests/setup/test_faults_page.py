"""The page of faults and threats names tests that exist, and DEVELOPERS.md leads to it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

ROOT = Path(__file__).parents[2]
PAGE = ROOT / "bot" / "FAULTS_AND_THREATS.md"
NAMED = re.compile(r"`([\w/]+\.py)::(\w+)`")


def _tests_in(path: Path) -> set[str]:
    tree = ast.parse(path.read_text("utf-8")) if path.exists() else ast.parse("")
    return {one.name for one in ast.walk(tree) if isinstance(one, ast.FunctionDef |
                                                             ast.AsyncFunctionDef)}  # fmt: skip


def test_every_test_that_the_page_names_exists() -> None:
    named = NAMED.findall(PAGE.read_text("utf-8"))
    assert len(named) > 50
    lacking = [f"{file}::{name}" for file, name in named
               if name not in _tests_in(ROOT / "tests" / file)]  # fmt: skip
    assert lacking == []


def test_every_row_names_a_test_and_every_file_is_there() -> None:
    text = PAGE.read_text("utf-8")
    proven = text.split("## What is assumed")[0]
    rows = [
        line for line in proven.splitlines() if line.startswith("| ") and "shown by" not in line
    ]
    assert [row for row in rows if not NAMED.search(row)] == []
    files = re.findall(r"`(tests/[\w/]+(?:\.py|/))`", text)
    assert [one for one in files if not (ROOT / one).exists()] == []
    assert "bot/FAULTS_AND_THREATS.md" in (ROOT / "DEVELOPERS.md").read_text("utf-8")

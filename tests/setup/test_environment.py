"""The set-up that both README commands share: whole, or made anew."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

from demo import environment
from demo.environment import ROOT, STAMP, SetupError, prepare, with_environment

DEMO, TESTS = "demo/requirements.lock", "tests/requirements.lock"


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    for name in (DEMO, TESTS):
        (tmp_path / name).parent.mkdir()
        (tmp_path / name).write_text(f"# {name}\n")
    (tmp_path / "pyproject.toml").write_text("[project]\nname = 'x'\n")
    return tmp_path


@pytest.fixture
def steps(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What the set-up did, with the slow outside parts (venv and pip) written down only."""
    done: list[str] = []

    def create(home: Path, python: Path) -> None:
        done.append("create")
        python.parent.mkdir(parents=True, exist_ok=True)
        python.touch()

    def install(python: Path, root: Path, lock: str) -> None:
        done.append(lock)

    def pip(python: Path, args: list[str]) -> None:
        done.append("slowleash")

    monkeypatch.setattr(environment, "_create", create)
    monkeypatch.setattr(environment, "_install_lock", install)
    monkeypatch.setattr(environment, "_pip", pip)
    return done


def test_a_second_start_does_nothing(checkout: Path, steps: list[str]) -> None:
    prepare(checkout, DEMO)
    assert steps == ["create", DEMO, "slowleash"]
    prepare(checkout, DEMO)
    assert len(steps) == 3


def test_the_tests_are_added_to_the_demos_environment(checkout: Path, steps: list[str]) -> None:
    prepare(checkout, DEMO)
    prepare(checkout, TESTS)
    assert steps[3:] == [TESTS, "slowleash"]
    prepare(checkout, DEMO)
    prepare(checkout, TESTS)
    assert len(steps) == 5


def test_a_changed_lock_makes_all_anew(checkout: Path, steps: list[str]) -> None:
    prepare(checkout, DEMO)
    prepare(checkout, TESTS)
    (checkout / DEMO).write_text("# renewed\n")
    prepare(checkout, TESTS)
    assert steps[5:] == ["create", TESTS, "slowleash"]


def test_another_python_or_place_makes_all_anew(
    checkout: Path, steps: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    prepare(checkout, DEMO)
    monkeypatch.setattr(sys, "version", "3.99.0 (another)")
    prepare(checkout, DEMO)
    moved = checkout.rename(checkout.with_name("moved"))
    prepare(moved, DEMO)
    assert steps.count("create") == 3


def test_a_changed_project_file_installs_only_the_project(checkout: Path, steps: list[str]) -> None:
    prepare(checkout, DEMO)
    (checkout / "pyproject.toml").write_text("[project]\nname = 'y'\n")
    prepare(checkout, DEMO)
    assert steps[3:] == ["slowleash"]


@pytest.mark.parametrize("step", ["_create", "_install_lock", "_pip"])
def test_an_interrupted_set_up_is_never_believed_whole(
    step: str, checkout: Path, steps: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(environment, "ROOT", checkout)
    with monkeypatch.context() as patch:
        patch.setattr(environment, step, interrupted)
        assert with_environment(DEMO, lambda _: pytest.fail("ran in half a house")) == 130
    assert not (checkout / ".venv" / STAMP).exists()
    steps.clear()
    assert with_environment(DEMO, lambda _: 7) == 7
    assert steps == ["create", DEMO, "slowleash"]


def test_a_damaged_stamp_makes_all_anew(checkout: Path, steps: list[str]) -> None:
    prepare(checkout, DEMO)
    (checkout / ".venv" / STAMP).write_text('{"maker": ')
    prepare(checkout, DEMO)
    assert steps.count("create") == 2


def test_without_a_network_the_message_says_so(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A real pip and a port where nobody listens."""
    (checkout / DEMO).write_text(f"no-such-library==1.0 \\\n    --hash=sha256:{'0' * 64}\n")
    monkeypatch.setenv("PIP_INDEX_URL", "http://127.0.0.1:9/simple")
    monkeypatch.setenv("NO_PROXY", "127.0.0.1")
    with pytest.raises(SetupError, match="the package index cannot be reached"):
        prepare(checkout, DEMO)
    assert not (checkout / ".venv" / STAMP).exists()


def test_an_old_python_is_told_what_to_install(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2))
    with pytest.raises(SetupError, match=r"needs Python 3\.11 or newer, and this is 3\.9"):
        prepare(checkout, DEMO)


@pytest.mark.parametrize("name", ["demo/__init__.py", "demo/start.py", "demo/environment.py",
                                  "tests/run.py"])  # fmt: skip
def test_what_runs_first_can_be_read_by_an_old_python(name: str) -> None:
    ast.parse((ROOT / name).read_text("utf-8"), feature_version=(3, 7))


def test_what_runs_first_needs_the_standard_library_only() -> None:
    quiet = "import sys; sys.argv = ['run.py', '--help']; sys.path[0] = 'tests'; import run"
    subprocess.run([sys.executable, "-I", "-S", "-c", "import sys; sys.path.insert(0, '.');"
                    "import demo.environment"], cwd=ROOT, check=True)  # fmt: skip
    subprocess.run([sys.executable, "-S", "-c", quiet], cwd=ROOT, check=True)


def test_a_folder_that_may_not_be_written(checkout: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refused(*_: object) -> None:
        raise PermissionError(13, "Permission denied", str(checkout / ".venv"))

    monkeypatch.setattr(environment, "_create", refused)
    with pytest.raises(SetupError, match=r"\.venv may not be written.\nCopy the project"):
        prepare(checkout, DEMO)


def test_the_exit_code_is_the_programs_own() -> None:
    assert environment.run([sys.executable, "-c", "raise SystemExit(7)"]) == 7

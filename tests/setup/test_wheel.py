"""The built package works in an empty folder, with the flows and the demo inside."""

from __future__ import annotations

import os
import subprocess
import sys
import sysconfig
import venv
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


def call(*command: str | Path, cwd: Path) -> str:
    """What the program printed; fails with all that it said when it fails."""
    env = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    done = subprocess.run(command, cwd=cwd, env=env, capture_output=True, text=True,
                          encoding="utf-8", check=False)  # fmt: skip
    assert done.returncode == 0, f"{done.stdout[-3000:]}\n{done.stderr[-3000:]}"
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("wheel")
    call(sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--no-index",
         "--no-build-isolation", "--wheel-dir", out, ROOT, cwd=out)  # fmt: skip
    (built,) = out.glob("slowleash-*.whl")
    return built


@pytest.fixture(scope="module")
def slowleash(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The command of a fresh environment that has the wheel and, by a path, the libraries
    of this one (to download none again); never the checkout."""
    home = tmp_path_factory.mktemp("installed") / "env"
    venv.EnvBuilder(symlinks=os.name != "nt").create(home)
    scripts = home / ("Scripts" if os.name == "nt" else "bin")
    python = scripts / ("python.exe" if os.name == "nt" else "python")
    call(sys.executable, "-m", "pip", "--python", python, "install", "--quiet", "--no-deps",
         "--no-index", wheel, cwd=home)  # fmt: skip
    place = call(python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))", cwd=home)
    libraries = Path(sysconfig.get_path("purelib"))
    (Path(place.strip()) / "libraries.pth").write_text(f"{libraries}\n", "utf-8")
    found = call(python, "-c", "import bot, demo, flows; print(bot.__file__)", cwd=home)
    assert Path(found.strip()).is_relative_to(home)
    return scripts / ("slowleash.exe" if os.name == "nt" else "slowleash")


def test_every_file_of_the_rooms_is_inside(wheel: Path) -> None:
    left_out = {".py", ".lock", ".pyc"}
    inside = set(zipfile.ZipFile(wheel).namelist())
    data = {
        path.relative_to(ROOT).as_posix()
        for room in ("bot", "flows", "demo")
        for path in (ROOT / room).rglob("*")
        if path.is_file() and path.suffix not in left_out
    }
    code = {
        path.relative_to(ROOT).as_posix()
        for room in ("bot", "flows", "demo")
        for path in (ROOT / room).rglob("*.py")
    } - {"demo/start.py", "demo/environment.py", "demo/pictures/draw.py"}
    assert data
    assert (data | code) - inside == set()
    assert not any(name.startswith("tests/") for name in inside)


def test_the_command_helps_in_an_empty_folder(slowleash: Path, tmp_path: Path) -> None:
    assert "usage: slowleash COMMAND" in call(slowleash, "--help", cwd=tmp_path)


def test_the_demo_plays_in_an_empty_folder(slowleash: Path, tmp_path: Path) -> None:
    assert call(slowleash, "demo", "--play", cwd=tmp_path).strip()
    assert list(tmp_path.iterdir()) == []

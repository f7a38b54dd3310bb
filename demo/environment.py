"""Makes the project's own virtual environment, ``.venv``, for the demo and for the tests.

Standard library only, since it runs before anything is installed; written so that an older
Python can still read it and say what it lacks.
"""

from __future__ import annotations

import errno
import hashlib
import importlib.util
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import time
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any, Callable, Iterator  # noqa: UP035 (read by old Pythons, too)

OLDEST = (3, 11)
ROOT = Path(__file__).resolve().parent.parent
STAMP = "slowleash.json"
"""Written last: an environment without it is half-made, and is made anew."""
LIBRARY = re.compile(
    r"(?:Collecting|Processing|Requirement already satisfied:) (?:\S*[/\\])?"
    r"([A-Za-z0-9._-]+?)(?=[=<>!~\s]|-\d)"
)
"""A line of pip's that names the next library: from an index, a file, or already there."""


class SetupError(Exception):
    """The set-up cannot go on; the message says why, and what mends it."""


def with_environment(lock: str, job: Callable[[Path], int]) -> int:
    """Runs ``job`` with the Python of an environment that holds all that ``lock`` lists.

    ``lock`` is a file under the project's folder. Returns the exit code: the job's own,
    1 when the set-up failed, 130 when it was interrupted.
    """
    try:
        python = prepare(ROOT, lock)
    except SetupError as error:
        print(f"\nSet-up stopped: {error}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print("\nSet-up interrupted. The next start makes it whole.", file=sys.stderr)
        return 130
    return job(python)


def run(command: list[str], cwd: Path | None = None) -> int:
    """Runs a program to its end and returns its exit code (128 + signal, as shells do).

    Ctrl-C reaches the program by itself, so we only wait for it to close; a request to
    end that reaches us alone is passed on.
    """
    child = subprocess.Popen(command, cwd=cwd, env=child_environment())
    before = signal.signal(signal.SIGTERM, lambda *_: child.terminate())
    try:
        while True:
            try:
                code = child.wait()
                break
            except KeyboardInterrupt:
                continue
    finally:
        signal.signal(signal.SIGTERM, before)
    return 128 - code if code < 0 else code


def child_environment() -> dict[str, str]:
    """The user's variables, without those that would mix other libraries in."""
    mixing = {"PYTHONPATH", "PYTHONHOME", "PIP_TARGET", "PIP_PREFIX", "PIP_REQUIREMENT"}
    kept = {name: value for name, value in os.environ.items() if name.upper() not in mixing}
    return {**kept, "PIP_USER": "0", "PYTHONUTF8": "1"}


def prepare(root: Path, lock: str) -> Path:
    """The Python of ``root/.venv``, which is made or renewed if need be.

    Whole means: made by this Python, at this place, from these locks. Raises SetupError.
    """
    if sys.version_info < OLDEST:
        raise SetupError(
            "slowleash needs Python {}.{} or newer, and this is {}.{}.\nInstall a newer one "
            "and start this file with it, for example: python3.11 {}".format(
                *OLDEST, *sys.version_info[:2], sys.argv[0]
            )
        )
    home = root / ".venv"
    python = home / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
    try:
        with _one_at_a_time(root / ".cache" / "setup.lock"):
            _make_whole(root, home, python, lock)
    except PermissionError as error:
        raise SetupError(
            f"{error.filename or home} may not be written.\nCopy the project to a folder of "
            "your own, close programs that still use its .venv, and start again."
        ) from None
    except OSError as error:
        if error.errno != errno.ENOSPC:
            raise
        raise SetupError("the disk is full. About 300 MB are needed; free some.") from None
    return python


def _make_whole(root: Path, home: Path, python: Path, lock: str) -> None:
    """Brings ``home`` to the wanted state: nothing, one more lock, or all of it."""
    maker = {"python": sys.version, "base": sys.base_prefix, "root": str(root)}
    project = _digest(root / "pyproject.toml")
    stamp = _read_stamp(home, python)
    known = {
        name: _digest(root / name) for name in stamp.get("locks", {}) if (root / name).exists()
    }
    whole = stamp.get("maker") == maker and stamp.get("locks") == known
    if whole and lock in known and stamp.get("project") == project:
        return

    started = time.monotonic()
    print("Setting up slowleash; later starts take seconds.", flush=True)
    (home / STAMP).unlink(missing_ok=True)
    if not whole:
        known = {}
        print("  making its own environment in .venv", flush=True)
        _create(home, python)
    if lock not in known:
        _install_lock(python, root, lock)
    print("  installing slowleash itself", flush=True)
    _pip(python, ["--no-deps", "--no-index", "--no-build-isolation", "--editable", str(root)])
    known[lock] = _digest(root / lock)
    unfinished = home / (STAMP + ".new")
    unfinished.write_text(
        json.dumps({"maker": maker, "project": project, "locks": known}, indent=1), "utf-8"
    )
    unfinished.replace(home / STAMP)
    print(f"Ready after {time.monotonic() - started:.0f} s.\n", flush=True)


def _digest(path: Path) -> str:
    """SHA-256 of a file's text, the same whatever the line ends of the checkout."""
    return hashlib.sha256(path.read_text("utf-8").encode()).hexdigest()


def _read_stamp(home: Path, python: Path) -> dict[str, Any]:
    try:
        stamp = json.loads((home / STAMP).read_text("utf-8"))
    except (FileNotFoundError, NotADirectoryError, ValueError):
        return {}
    return stamp if isinstance(stamp, dict) and python.exists() else {}


def _create(home: Path, python: Path) -> None:
    """A fresh environment with pip, in whichever of three ways this Python can.

    Debian and Ubuntu leave ``ensurepip`` out of their Python: there, ``virtualenv`` or a
    pip from outside serve when they are at hand.
    """
    if home.is_symlink() or home.is_file():
        home.unlink()
    elif home.exists():
        shutil.rmtree(home)
    at_hand = {name for name in ("ensurepip", "virtualenv", "pip") if _has(name)}
    # Started with the very Python that goes: the one behind it makes the new one.
    maker = getattr(sys, "_base_executable", "") if Path(sys.prefix) == home else sys.executable
    module = [maker or sys.executable, "-m"]
    if "ensurepip" in at_hand:
        steps = [[*module, "venv", str(home)]]
    elif "virtualenv" in at_hand:
        steps = [[*module, "virtualenv", "--quiet", str(home)]]
    elif "pip" in at_hand:
        outside = [*module, "pip", "--disable-pip-version-check", "--python", str(python)]
        steps = [[*module, "venv", "--without-pip", str(home)], [*outside, "install", "pip"]]
    else:
        version = "{}.{}".format(*sys.version_info[:2])
        raise SetupError(
            "this Python lacks the part that makes environments (venv with ensurepip).\n"
            f"On Debian and Ubuntu: sudo apt-get install python{version}-venv\n"
            "Elsewhere: install virtualenv with your package manager. Then start again."
        )
    for step in steps:
        done = subprocess.run(
            step, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, env=child_environment()
        )
        if done.returncode:
            raise SetupError(_why(done.stdout.decode("utf-8", "replace")))


def _has(module: str) -> bool:
    return importlib.util.find_spec(module) is not None


def _install_lock(python: Path, root: Path, lock: str) -> None:
    """Installs what the lock lists, with a line of progress."""
    pinned = re.findall(r"^([A-Za-z0-9._-]+)==", (root / lock).read_text("utf-8"), re.MULTILINE)
    print(f"  installing up to {len(pinned)} libraries ({lock})", flush=True)
    fetched = 0
    shown = sys.stdout.isatty()

    def progress(line: str) -> None:
        nonlocal fetched
        found = LIBRARY.match(line)
        if found:
            fetched += 1
            note = f"{fetched} of {len(pinned)}: {found.group(1)}"
        elif line.startswith("Installing collected"):
            note = "putting them in place"
        else:
            return
        if shown:
            print("\r    " + note.ljust(60), end="", flush=True)

    try:
        _pip(python, ["--require-hashes", "--requirement", str(root / lock)], progress)
    finally:
        if shown:
            print("\r" + " " * 64 + "\r", end="", flush=True)


def _pip(python: Path, args: list[str], progress: Callable[[str], None] = lambda _: None) -> None:
    """``pip install`` with ``args``; SetupError with the mend when it fails."""
    command = [str(python), "-m", "pip", "install", "--no-input", "--retries", "2"]
    command += ["--disable-pip-version-check", "--no-warn-script-location", *args]
    lines = []
    with subprocess.Popen(
        command,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
        env={**child_environment(), "PYTHONUNBUFFERED": "1", "PIP_PROGRESS_BAR": "off"},
    ) as pip:
        for line in pip.stdout or ():
            lines.append(line)
            progress(line)
    if pip.returncode:
        raise SetupError(_why("".join(lines)))


def _why(said: str) -> str:
    """What pip's words mean for the reader, and what to do."""
    tail = "\n".join("  | " + line for line in said.strip().splitlines()[-12:])
    mends = (
        (r"HASHES", "a downloaded library is not the one that the lock names. Your mirror or "
         "proxy may alter files; try another network."),
        (r"No space left", "the disk is full. About 300 MB are needed; free some."),
        (r"ermission denied|WinError 5", "a file may not be written. Close programs that use "
         "the project's .venv, and copy the project to a folder of your own."),
        (r"SSL|CERTIFICATE", "the secure connection failed. Behind a company proxy, set PIP_CERT "
         "to its certificate file; also check this computer's date."),
        (r"onnection|resolution|timed out|getaddrinfo|Network|ProxyError",
         "the package index cannot be reached. The first start needs the network: check the "
         "connection (behind a proxy: set HTTPS_PROXY)."),
        (r"No matching distribution|Could not find a version", "a pinned library is not offered "
         "for this computer, or the package index cannot be reached."),
    )  # fmt: skip
    reason = next(
        (mend for sign, mend in mends if re.search(sign, said)), "a step of the set-up failed."
    )
    return f"{reason}\nThen start again; nothing is left half-made.\n{tail}"


@contextmanager
def _one_at_a_time(path: Path) -> Iterator[None]:
    """Two starts at once must not make the same environment: the second waits."""
    path.parent.mkdir(exist_ok=True)
    with path.open("a", encoding="utf-8") as handle:
        told = False
        while not _claim(handle):
            if not told:
                print("Another start is setting up; waiting for it.", flush=True)
            told = True
            time.sleep(0.3)
        yield


def _claim(handle: IO[str]) -> bool:
    """Whether the file is ours now, until it is closed. A disk without locks lets all in."""
    try:
        if sys.platform == "win32":
            import msvcrt

            handle.seek(0)
            msvcrt.locking(handle.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        return error.errno not in (errno.EAGAIN, errno.EACCES, errno.EDEADLK)
    return True

"""The ``slowleash`` command: finds the sub-command, runs it, and says errors plainly."""

from __future__ import annotations

import difflib
import errno
import os
import sys
from collections.abc import Callable
from importlib import import_module
from keyword import iskeyword

from bot import __version__

from .errors import CommandError
from .terminal import cleaned

COMMANDS: dict[str, str] = {
    "demo": "try the whole job on this machine, with an invented patient",
    "run": "run the bot for a practice, until it is stopped",
    "enrol": "enrol a patient and print the owner's invitation",
    "log": "print all that was said and decided about a patient",
    "export": "write a patient's record: a page, the log, a calendar, FHIR",
    "verify": "look for damage, and tell whether an entry of the log was changed or removed",
    "erase": "erase what the law lets go of a patient, of someone at home, or of the staff",
    "review": "open the review pages: who needs me, one patient, search, figures",
    "calendar": "write an order's whole course as a calendar file (iCalendar)",
    "backup": "copy the whole practice to one file, while the bot runs",
    "restore": "put a practice back from such a copy; what was there is set aside",
    "check": "check protocols, plans and settings, and say what to mend",
    "preview": "show an order's whole course, or write one page of it for the fridge",
    "try": "show what the bot would read, decide and say in answer to a reply",
    "rehearse": "play whole conversations from files, and say what does not hold",
    "read": "show what the bot understands in a reply; --explain: by which rules",
}
"""Sub-command → its line in the help. Each is the module of that name in this folder
(``try_`` for try), with ``main(argv: list[str]) -> int``, imported only when asked for."""


def main(argv: list[str] | None = None) -> int:
    """Runs ``slowleash`` with ``argv`` (the process's own by default); the exit code.

    0: done; 1: the command's own "no" (a check that found something); 2: it could not
    run, and the last lines say why; 75: the bot stood still and ended itself; 130: interrupted.
    """
    _plain_text()
    with cleaned():
        return _told(argv)


def _told(argv: list[str] | None) -> int:
    words = list(sys.argv[1:] if argv is None else argv)
    if words[:1] == ["help"]:
        words = [*words[1:2], "--help"]
    if not words or words[0] in ("-h", "--help"):
        print(_help())
        return 0 if words else 2
    if words[0] in ("-V", "--version"):
        print(f"slowleash {__version__}")
        return 0
    name, rest = words[0], words[1:]
    if name not in COMMANDS:
        print(_unknown(name), file=sys.stderr)
        return 2
    return _run(name, rest)


def module_of(name: str) -> str:
    """The module of a sub-command: its name, with ``_`` where Python keeps the word."""
    return f"{__name__}.{name}_" if iskeyword(name) else f"{__name__}.{name}"


def _run(name: str, argv: list[str]) -> int:
    try:
        command: Callable[[list[str]], int] = import_module(module_of(name)).main
        code = command(argv)
        sys.stdout.flush()
        return code
    except KeyboardInterrupt:
        print("\nStopped.", file=sys.stderr)
        return 130
    except BrokenPipeError:
        # The reader of our output has left (``slowleash log … | head``): nothing to say.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 141
    except OSError as error:
        if error.filename is None and error.errno not in _DISK:
            raise
        where = f"{error.filename}: " if error.filename is not None else ""
        print(f"slowleash {name}: {where}{error.strerror}.{_mend(error)}", file=sys.stderr)
        return 2
    except Exception as error:
        if not isinstance(error, _known_errors()):
            raise
        print(f"slowleash {name}: {error}", file=sys.stderr)
        return 2


_DISK = (errno.ENOSPC, errno.EFBIG, errno.EIO, errno.EROFS, getattr(errno, "EDQUOT", errno.ENOSPC))
"""What a disk says of a file that is open already, and so without its name."""


def _mend(error: OSError) -> str:
    if isinstance(error, PermissionError):
        return " This user may not write or read there: name another place."
    if isinstance(error, FileNotFoundError | NotADirectoryError | IsADirectoryError):
        return " Check the name."
    if error.errno in _DISK:
        return " Make room, then try again."
    return ""


def _known_errors() -> tuple[type[Exception], ...]:
    """Errors whose message tells the user all: what is wrong, where, and the mend."""
    from bot.protocol.library import UnknownProtocol
    from bot.protocol.problem import FlowError
    from bot.store.database import StoreError
    from bot.telegram.outcome import PlatformError

    return (CommandError, FlowError, UnknownProtocol, StoreError, PlatformError)


def _plain_text() -> None:
    """Files and pipes are UTF-8, whatever the system's own encoding; a character that a
    terminal lacks, or a byte that is none, becomes a question mark, never an error."""
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is None:
            continue
        if stream.isatty() or "PYTHONIOENCODING" in os.environ:
            reconfigure(errors="replace")
        else:
            reconfigure(encoding="utf-8", errors="replace")


def _help() -> str:
    width = max(map(len, COMMANDS)) + 2
    lines = [
        "usage: slowleash COMMAND [...]",
        "",
        "Follows a pet home after orthopaedic surgery, by chat: prompts the owner,",
        "reads the replies, and calls staff when something is wrong.",
        "",
        "Commands:",
        *(f"  {name:<{width}}{line}" for name, line in COMMANDS.items()),
        "",
        "slowleash COMMAND --help   tells more about a command",
        "slowleash --version        tells which version this is",
        "",
        "Not a medical device. It never replaces the attending vet.",
    ]
    return "\n".join(lines)


def _unknown(name: str) -> str:
    near = difflib.get_close_matches(name.lower(), COMMANDS, n=1, cutoff=0.5)
    hint = f" Did you mean: slowleash {near[0]}?" if near else ""
    return (
        f"slowleash: there is no command {name!r}.{hint}\n"
        f"Commands: {', '.join(COMMANDS)}. For more: slowleash --help"
    )

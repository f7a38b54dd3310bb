"""What the command prints passes one cleaner: names and words come from anybody, and a terminal
obeys what it is shown."""

from __future__ import annotations

import contextlib
import sys
from collections.abc import Iterator
from typing import Any, TextIO, cast

from bot.model.harmless import harmless


class _Clean:
    """A stream that lets nothing through that acts on a terminal; all else is the stream's own."""

    def __init__(self, stream: TextIO) -> None:
        self.stream = stream

    def write(self, text: str) -> int:
        self.stream.write(harmless(text))
        return len(text)

    def writelines(self, lines: Any) -> None:
        for line in lines:
            self.write(line)

    def __getattr__(self, name: str) -> Any:
        return getattr(self.stream, name)


@contextlib.contextmanager
def cleaned() -> Iterator[None]:
    """While a command runs, whatever is printed is cleaned."""
    out, error = (cast(TextIO, _Clean(stream)) for stream in (sys.stdout, sys.stderr))
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(error):
        yield


def bare(stream: TextIO) -> TextIO:
    """The stream itself, for signs of our own that no word of others stands among."""
    return cast(TextIO, getattr(stream, "stream", stream))


def over(words: str, stream: TextIO) -> None:
    """At a terminal: words that the next ones are written over."""
    if stream.isatty():
        print(f"{harmless(words)}\r", end="", file=bare(stream), flush=True)

"""What is wrong in a file that a person wrote, where, and how to mend it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing to mend. ``line`` and ``column`` count from 1, as editors show them.

    ``what`` and ``mend`` are plain English, ``mend`` may be empty where ``what`` says it
    all. A ``warning`` is worth a look but stops nothing.
    """

    file: str
    line: int
    column: int
    what: str
    mend: str = ""
    level: Literal["error", "warning"] = "error"

    def __str__(self) -> str:
        """``file:line:column: what. mend.``"""
        said = [_sentence(part) for part in (self.what, self.mend) if part.strip()]
        mark = "warning: " if self.level == "warning" else ""
        return f"{self.file}:{self.line}:{self.column}: {mark}{' '.join(said)}"


class FlowError(Exception):
    """A file that cannot be used as it stands, with every problem found in it."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        """At least one problem; they are kept in the order of the file."""
        self.problems: tuple[Problem, ...] = tuple(
            sorted(problems, key=lambda problem: (problem.file, problem.line, problem.column))
        )
        if not self.problems:
            raise ValueError("a FlowError needs at least one problem")
        super().__init__(self.problems)

    def __str__(self) -> str:
        """One problem a line."""
        return "\n".join(str(problem) for problem in self.problems)


def _sentence(words: str) -> str:
    words = words.strip()
    return words if words.endswith((".", "?", "!")) else words + "."

"""Load a model from YAML. What is wrong comes back as FlowError: file, line, column, mend."""

from __future__ import annotations

import codecs
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from .fields import guard_times
from .plain_words import explain
from .problem import FlowError, Problem
from .yaml_tree import MAX_BYTES, Mapping, Node, read_tree

__all__ = [
    "FlowError",
    "Problem",
    "build",
    "decode",
    "load_file",
    "load_model",
    "load_model_bytes",
    "load_tree",
    "read_root",
    "read_text",
]

T = TypeVar("T", bound=BaseModel)


def load_model(text: str, name: str, model: type[T]) -> T:
    """``text`` as ``model``. ``name`` is the file's name as errors should show it.

    Raises FlowError, with all problems found at once; nothing else.
    """
    return load_tree(text, name, model)[0]


def load_tree(
    text: str,
    name: str,
    model: type[T],
    prepare: Callable[[Mapping, str], list[Problem]] | None = None,
) -> tuple[T, Node]:
    """As ``load_model``, with the tree of the file, for later checks that name a line.

    ``prepare`` is given the tree and the file's name before the model is; it may spell out
    in the tree what the file says in short, and returns what is wrong with it.
    """
    root, problems = read_root(text, name)
    if prepare is not None:
        problems = [*problems, *prepare(root, name)]
    return build(root, problems, name, model), root


def read_root(text: str, name: str) -> tuple[Mapping, list[Problem]]:
    """The tree of a file that holds keys, and what did not stop the reading; FlowError."""
    root, problems = read_tree(text.removeprefix("\ufeff"), name)
    if not isinstance(root, Mapping):
        mend = "Write it as lines of `key: value`"
        what = "the file must hold keys with values, not a list or a single value"
        raise FlowError([*problems, Problem(name, root.place.line, root.place.column, what, mend)])
    return root, problems


def build(root: Mapping, problems: list[Problem], name: str, model: type[T]) -> T:
    """``root`` as ``model``; FlowError with ``problems``, found before, and all others."""
    guard_times(root, model)
    try:
        made = model.model_validate(root.value)
    except ValidationError as error:
        raise FlowError([*problems, *explain(error, root, name, model)]) from None
    if problems:
        raise FlowError(problems)
    return made


def load_model_bytes(data: bytes, name: str, model: type[T]) -> T:
    """``data``, UTF-8 with or without a byte order mark, as ``model``; raises FlowError."""
    return load_model(decode(data, name), name, model)


def load_file(path: Path, model: type[T]) -> T:
    """The file at ``path`` as ``model``; raises FlowError, also when it cannot be read."""
    return load_model(read_text(path), str(path), model)


def read_text(path: Path) -> str:
    """The words of the file; raises FlowError. Never reads more than the limit."""
    try:
        with path.open("rb") as file:
            data = file.read(MAX_BYTES + 4)
    except (OSError, ValueError) as error:
        why = getattr(error, "strerror", None) or str(error)
        mend = "Check the name, and that it is a file that you may read"
        raise FlowError(
            [Problem(str(path), 1, 1, f"the file cannot be read ({why})", mend)]
        ) from None
    return decode(data, str(path))


def decode(data: bytes, name: str) -> str:
    """``data`` as words, without a byte order mark; FlowError when it is not UTF-8.

    UTF-16 with its mark is taken, too: Windows PowerShell 5 writes it after ``>``.
    """
    if len(data) > MAX_BYTES:
        mend = f"Keep it under {MAX_BYTES // 1_000_000} MB; is it the right file?"
        raise FlowError([Problem(name, 1, 1, "the file is too long", mend)])
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        try:
            return data.decode("utf-16")
        except UnicodeDecodeError:
            pass  # it only begins like it; what is told of UTF-8 mends it as well
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        before = data[: error.start]
        line = before.count(b"\n") + 1
        column = len(before[before.rfind(b"\n") + 1 :].decode("utf-8", "replace")) + 1
        mend = "Save the file as UTF-8 (in the editor: Save as, Encoding)"
        raise FlowError(
            [Problem(name, line, column, "a letter here is not in UTF-8", mend)]
        ) from None

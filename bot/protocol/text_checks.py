"""What may be wrong with the words of a text: a gap left open, one language, too hard."""

from __future__ import annotations

import re
import string
from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import Final

from pydantic import BaseModel

from bot.model.text import LANGS, Text

from .problem import Problem
from .reading_level import too_hard
from .yaml_tree import Node, at_hand, find

Path = tuple[str | int, ...]

_FILL: Final = (
    "name|phone|number|clinic|date|insert|your|here|nombre|teléfono|número|clínica|fecha|aquí"
)
_GAP: Final = re.compile(
    r"\b(?:TODO|TBD|FIXME|XXX+)\b|\?\?\?|_{3,}|<[A-Za-z][\w .-]*>|[Ll]orem ipsum"
    rf"|\[(?:[\s.…]*|[^\]\n]*\b(?:{_FILL})\b[^\]\n]*)\]"
)
_BARE: Final = re.compile(r"\{[^{}]*\}|[\W\d_]+")
SAME_WORDS: Final = 3
"""From so many words on, the same text in both languages is surely not translated."""
_FOR_STAFF: Final = re.compile(
    r"(?:answers|board|case|change|desk|group|hold_staff|joined_staff|left_staff|media|note|outcome|plan"
    r"|reason|role|staff|urgency)(?:_|$)"
)
"""Keys of ``words.yaml`` whose texts only staff read."""


def check_text(text: Text, file: str, tree: Node, path: Path, *, owner: bool) -> Iterator[Problem]:
    """Gaps that were left to fill, and a text that is in one language only.

    ``path`` leads to the text in ``tree``; ``owner``: an owner reads it, so it must be easy.
    """

    def warn(lang: str, what: str, mend: str) -> Problem:
        place = find(tree, (*path, lang))
        return Problem(file, place.line, place.column, at_hand(what, place), mend, "warning")

    for lang in LANGS:
        words = text.say(lang)
        gap = _GAP.search(words)
        if gap:
            what = f"{gap.group()!r} looks like a gap that was left to fill"
            yield warn(lang, what, "Write the words that belong there")
        elif owner and (hard := too_hard(words, lang)):
            yield warn(lang, hard, "Use shorter words and shorter sentences")
    said = _BARE.sub(" ", text.en).split()
    if len(said) >= SAME_WORDS and said == _BARE.sub(" ", text.es).split():
        yield warn("es", "the Spanish text is the English one", "Translate it")


def check_words(
    words: Mapping[str, Text], seen: Mapping[str, Mapping[str, Text]], file: str, tree: Node
) -> list[Problem]:
    """What may be wrong in ``words.yaml``; an error is what would fail when it is sent."""
    texts: list[tuple[Path, Text, bool]] = [
        (("words", key), text, not _FOR_STAFF.match(key)) for key, text in words.items()
    ]
    texts += [
        (("seen", topic, value), text, False)
        for topic, values in seen.items()
        for value, text in values.items()
    ]
    found: list[Problem] = []
    for path, text, owner in texts:
        found += check_text(text, file, tree, path, owner=owner)
        names = {lang: placeholders(text.say(lang)) for lang in LANGS}
        for lang in LANGS:
            if names[lang] is None:
                place = find(tree, (*path, lang))
                what, mend = "a brace { or } is not rightly closed", "Close it, or take it away"
                found.append(Problem(file, place.line, place.column, what, mend))
        en, es = names["en"], names["es"]
        if en is None or es is None:
            continue
        for name in sorted(en ^ es):
            lang = "es" if name in en else "en"
            place = find(tree, (*path, lang))
            what = f"{{{name}}} stands in one language only"
            mend = "Say it in both, or in neither"
            found.append(Problem(file, place.line, place.column, what, mend, "warning"))
    return sorted(found, key=lambda problem: (problem.line, problem.column))


def check_texts(
    model: BaseModel, file: str, tree: Node, owner: Callable[[Path], bool]
) -> list[Problem]:
    """``check_text`` for every text in the model; ``owner`` tells by its path who reads it."""
    found: list[Problem] = []
    for path, text in _texts(model, ()):
        found += check_text(text, file, tree, path, owner=owner(path))
    return found


def _texts(value: object, path: Path) -> Iterator[tuple[Path, Text]]:
    if isinstance(value, Text):
        yield path, value
        return
    parts: Iterable[tuple[str | int, object]] = ()
    if isinstance(value, BaseModel):
        fields = type(value).model_fields.items()
        parts = ((field.alias or name, getattr(value, name)) for name, field in fields)
    elif isinstance(value, Mapping):
        parts = value.items()
    elif isinstance(value, tuple):
        parts = enumerate(value)
    for key, part in parts:
        yield from _texts(part, (*path, key))


def placeholders(words: str) -> set[str] | None:
    """The names in braces; None where a brace is stray, or holds more than a name."""
    try:
        parts = [part for part in string.Formatter().parse(words) if part[1] is not None]
    except ValueError:
        return None
    names = {str(name) for _, name, _, _ in parts}
    plain = all(not spec and not conversion for _, _, spec, conversion in parts)
    return names if plain and all(name.isidentifier() for name in names) else None

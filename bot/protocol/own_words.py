"""A clinic's own words over ours: the texts that it says in another way, and no others.

``words.yaml`` in the clinic's folder:

    words:
      thanks: {en: You are welcome., es: De nada.}
"""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator, Mapping

from pydantic import Field

from bot.model.protocol import Strict
from bot.model.text import LANGS, Text

from .problem import FlowError, Problem
from .text_checks import check_words, placeholders
from .yaml_lines import load_tree
from .yaml_tree import Mapping as Keys
from .yaml_tree import Node, Place, find

Seen = Mapping[str, Mapping[str, Text]]


class OwnWords(Strict):
    """The whole file: ``words`` by key, ``seen`` by topic and value, as in ours."""

    words: dict[str, Text] = Field(default_factory=dict)
    seen: dict[str, dict[str, Text]] = Field(default_factory=dict)


def own_words(
    text: str, name: str, words: Mapping[str, Text], seen: Seen
) -> tuple[dict[str, Text], dict[str, dict[str, Text]]]:
    """Our ``words`` and ``seen`` with those that ``text`` says in another way.

    Raises FlowError: for a key that ours do not have, and for a placeholder that ours
    does not fill there.
    """
    own, tree = load_tree(text, name, OwnWords)
    problems = list(_refused(own, tree, name, words, seen))
    if problems:
        raise FlowError(problems)
    merged = {topic: {**values, **own.seen.get(topic, {})} for topic, values in seen.items()}
    return {**words, **own.words}, merged


def check_own_words(text: str, name: str, words: Mapping[str, Text], seen: Seen) -> list[Problem]:
    """What is worth mending in the file itself; raises FlowError as ``own_words`` does."""
    own_words(text, name, words, seen)
    own, tree = load_tree(text, name, OwnWords)
    return check_words(own.words, own.seen, name, tree)


def word_differences(text: str, name: str, words: Mapping[str, Text], seen: Seen) -> list[str]:
    """``thanks (en) “You're welcome. I'm here.” → “You are welcome.” (yours)``."""
    theirs, saw = own_words(text, name, words, seen)
    pairs = [(key, words[key], theirs[key]) for key in words]
    pairs += [
        (f"{topic} {value}", seen[topic][value], saw[topic][value])
        for topic in seen
        for value in seen[topic]
    ]
    return [
        f"{key} ({lang}) “{ours.say(lang).strip()}” → “{own.say(lang).strip()}” (yours)."
        for key, ours, own in pairs
        for lang in LANGS
        if ours.say(lang) != own.say(lang)
    ]


def _refused(
    own: OwnWords, tree: Node, name: str, words: Mapping[str, Text], seen: Seen
) -> Iterator[Problem]:
    def problem(place: Place, what: str, mend: str) -> Problem:
        return Problem(name, place.line, place.column, what, mend)

    texts: list[tuple[tuple[str, ...], Text, Text | None, Iterable[str]]] = [
        (("words", key), text, words.get(key), words) for key, text in own.words.items()
    ]
    for topic, values in own.seen.items():
        if topic not in seen:
            yield problem(_key(tree, ("seen", topic)), *_unknown(topic, seen))
            continue
        for value, text in values.items():
            texts.append((("seen", topic, value), text, seen[topic].get(value), seen[topic]))
    for path, text, ours, known in texts:
        if ours is None:
            yield problem(_key(tree, path), *_unknown(path[-1], known))
            continue
        filled = (placeholders(ours.en) or set()) | (placeholders(ours.es) or set())
        for lang in LANGS:
            names = placeholders(text.say(lang))
            place = find(tree, (*path, lang))
            if names is None:
                yield problem(place, "a brace { or } is not rightly closed", "Close it")
                continue
            for extra in sorted(names - filled):
                listed = ", ".join(f"{{{one}}}" for one in sorted(filled)) or "nothing"
                yield problem(place, f"nothing fills in {{{extra}}}", f"Filled in here: {listed}")


def _unknown(word: str, known: Iterable[str]) -> tuple[str, str]:
    close = difflib.get_close_matches(word, sorted(known), n=1)
    mend = f"Did you mean {close[0]}?" if close else "Compare it with flows/words.yaml"
    return f"our words have no text called {word!r}", mend


def _key(tree: Node, path: tuple[str, ...]) -> Place:
    node = tree
    for step in path[:-1]:
        if isinstance(node, Keys) and step in node.values:
            node = node.values[step]
    keys = node.keys if isinstance(node, Keys) else {}
    return keys.get(path[-1], node.place)

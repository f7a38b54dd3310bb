"""How hard a text is to read: by the formulas of Kincaid (English) and Fernández Huerta.

Both weigh words per sentence against syllables per word. They know nothing of meaning:
a text that passes may still be unclear. English syllables come from the dictionary of
``syllapy``; Spanish ones follow from the spelling.
"""

from __future__ import annotations

import re
from typing import Final

import syllapy

from bot.model.text import Lang

GRADE: Final = 6
"""The school grade that owners' texts should not go beyond (common practice for handouts
to the public in the United States)."""
FEWEST_WORDS: Final = 20
"""Shorter texts are not judged: one long word would decide (a choice of ours)."""

_NAMES: Final = frozenset(
    """acetaminophen ibuprofen naproxen paracetamol aspirin carprofen meloxicam gabapentin
    cephalexin xylitol ibuprofeno naproxeno aspirina carprofeno gabapentina cefalexina
    xilitol""".split()
)
"""Names that owners know from the packet; there is no shorter word for them."""

_PLACEHOLDER: Final = re.compile(r"\{[^{}]*\}")
_WORD: Final = re.compile(r"[^\W_]+(?:['’\-][^\W_]+)*")
_SENTENCE: Final = re.compile(r"[.:;?!…—]+(?=\s|[»”\"')\]]|$)|\n")
_VOWELS: Final = re.compile(r"[aeiouáéíóúü]+")
_STRONG: Final = frozenset("aeoáéíóú")


def grade(words: int, sentences: int, syllables: int) -> float:
    """The grade level of Kincaid and others (1975): 0.39 w/s + 11.8 syl/w - 15.59."""
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59


def ease(words: int, sentences: int, syllables: int) -> float:
    """The "lecturabilidad" of Fernández Huerta (1959): 206.84 - 60 syl/w - 1.02 w/s.

    The higher the easier. His table: 80 to 90 grade 5, 70 to 80 grade 6, 60 to 70
    grades 7 and 8.
    """
    return 206.84 - 60 * syllables / words - 1.02 * words / sentences


def too_hard(text: str, lang: Lang) -> str | None:
    """Why the text is harder than grade 6, in words; None when it is not, or is short."""
    words, sentences, syllables = counts(text, lang)
    if words < FEWEST_WORDS:
        return None
    if lang == "en":
        level = grade(words, sentences, syllables)
        if level < GRADE + 1:
            return None
        measured = f"grade {level:.1f} by Flesch–Kincaid"
    else:
        level = ease(words, sentences, syllables)
        if level >= 70:
            return None
        measured = f"{level:.0f} by Fernández Huerta, where 70 and more is grade {GRADE}"
    return f"hard to read: {measured} ({words / sentences:.0f} words in a sentence)"


def counts(text: str, lang: Lang) -> tuple[int, int, int]:
    """Words, sentences and syllables; at least one of each, so that they can be divided.

    A sentence ends at a full stop, colon, semicolon, dash, question or exclamation mark
    (Flesch's rule) or with the line. A figure counts as one syllable; a placeholder or
    the name of a medicine as a word of two.
    """
    filled = _PLACEHOLDER.sub("Luna", text)
    sentences = sum(bool(_WORD.search(part)) for part in _SENTENCE.split(filled))
    words = _WORD.findall(filled)
    count = _english if lang == "en" else _spanish
    syllables = sum(2 if word.lower() in _NAMES else count(word) for word in words)
    return max(len(words), 1), max(sentences, 1), max(syllables, 1)


def _english(word: str) -> int:
    parts = word.replace("’", "'").split("-")
    return max(1, sum(int(syllapy.count(part)) for part in parts))


def _spanish(word: str) -> int:
    """Every strong vowel (a, e, o, or one with an accent) is a syllable of its own; weak
    ones beside it join it. ``y`` sounds as a vowel only where none follows."""
    lower = word.lower()
    lower = re.sub(r"(?<=q)u|(?<=g)u(?=[eiéí])", "", lower)
    lower = re.sub(r"y(?![aeiouáéíóú])", "i", lower)
    groups = _VOWELS.findall(lower)
    return max(1, sum(max(1, sum(letter in _STRONG for letter in group)) for group in groups))

"""The lexicon's files: every example is found by its own rule, and a bad line says its mend."""

from __future__ import annotations

import re

import pytest

from bot.model.reading import Context
from bot.model.vocabulary import ASKED
from bot.reading import Trace, read
from bot.reading.grammar import Compiler
from bot.reading.inflect import forms_of
from bot.reading.lexicon_files import File, LexiconError, files, parse

RULED = [file for file in files() if file.rules]


def _context(marks: list[str]) -> Context:
    asked = [mark for mark in marks if mark in ASKED]
    assert set(marks) <= {*asked, "cat", "due"}, f"@ before {marks}: a topic, cat or due"
    return Context(
        asked=asked[0] if asked else "none",
        day=8,
        at=720,
        species="cat" if "cat" in marks else "dog",
        doses_due=1 if "due" in marks else 0,
    )


@pytest.mark.parametrize("file", RULED, ids=[f"{file.folder}/{file.topic}" for file in RULED])
def test_every_rule_is_found_in_its_example(file: File) -> None:
    """``> words``, or ``> @cone @cat words`` as an answer about the cone, of a cat."""
    wrong: list[str] = []
    for rule in file.rules:
        if not rule.examples:
            wrong.append(f"{rule.place}: no example")
        for example in rule.examples:
            marks = re.findall(r"@(\w+) ", example)
            text = re.sub(r"^(@\w+ )+", "", example)
            trace = Trace()
            read(text, _context(marks), trace)
            if rule.id not in {step.rule for step in trace.steps()}:
                wrong.append(f"{rule.place}: {rule.id} is not found in {text!r}")
    assert wrong == []


def _compile(text: str) -> None:
    compiler = Compiler()
    compiler.add_class("poo", ["poo"], "en")
    for rule in parse("en", "stool", text).rules:
        compiler.add_rule("stool", rule)


BAD = (
    ("= none\n1   <poop>", "stool.txt:2", "did you mean <poo>"),
    ("= none\n1   a\n1   b", "stool.txt:3", "no other of its value has"),
    ("= none loud\n1   a", "stool.txt:2", "after the value may stand"),
    ("= none\n1   a?", "stool.txt:2", "begins with a word that must be there"),
    ("= none\n1   a\n    b", "stool.txt:3", "goes on after"),
    ("nothing here", "stool.txt:1", "begin with"),
    ("= none\n1   a|$ b|$ c", "stool.txt:2", "only the last place"),
    ("= none\n1   poop.x", "stool.txt:2", "verb, noun, adjective"),
)


@pytest.mark.parametrize(("text", "place", "mend"), BAD)
def test_a_bad_line_is_refused_with_its_place_and_the_mend(
    text: str, place: str, mend: str
) -> None:
    with pytest.raises(LexiconError) as error:
        _compile(text)
    assert place in str(error.value)
    assert mend in str(error.value)


EN = frozenset("the his her and with of when after not has been she they was".split())
ES = frozenset("el los las su y con cuando despues ella lo le muy para".split())


@pytest.mark.parametrize(("folder", "strange"), [("en", ES), ("es", EN)])
def test_no_line_mixes_the_languages(folder: str, strange: frozenset[str]) -> None:
    wrong = [
        f"{rule.place}: {word}"
        for file in files()
        if file.folder == folder
        for rule in file.rules
        for word in re.findall(r"[^\W\d_]+", re.sub(r"<\w+>|\.[vna]\b", " ", rule.pattern))
        if word in strange
    ]
    assert wrong == []


@pytest.mark.parametrize(
    ("word", "kind", "lang", "forms"),
    [
        ("limp", "v", "en", "limp limps limped limping"),
        ("slip", "v", "en", "slip slips slipped slipping"),
        ("bite", "n", "en", "bite bites"),
        ("carry", "v", "en", "carry carries carried carrying"),
        ("aguado", "a", "es", "aguado aguada aguados aguadas"),
        ("beber", "v", "es", "beber bebe beben bebio bebieron bebia bebian bebido bebiendo"),
        ("deposicion", "n", "es", "deposicion deposiciones"),
    ],
)
def test_forms_are_made(word: str, kind: str, lang: str, forms: str) -> None:
    assert forms_of(word, kind, lang) == tuple(forms.split())

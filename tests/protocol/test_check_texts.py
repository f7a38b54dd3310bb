"""How hard a text is to read, gaps that were left open, and a clinic's own words."""

from __future__ import annotations

import pytest

from bot.context.words import default_words
from bot.model.text import LANGS, Lang, Text
from bot.protocol.checks import check_protocol
from bot.protocol.library import load_protocol, packaged_texts
from bot.protocol.own_words import check_own_words, own_words, word_differences
from bot.protocol.problem import FlowError
from bot.protocol.reading_level import counts, ease, grade, too_hard
from bot.protocol.text_checks import placeholders

ORTHO = next(text for _, stem, text in packaged_texts() if stem == "general-orthopaedic")
OURS = default_words()


def warnings(old: str, new: str) -> list[str]:
    assert old in ORTHO
    made, tree = load_protocol(ORTHO.replace(old, new, 1), "x.yaml")
    return list(map(str, check_protocol(made, file="x.yaml", tree=tree)))


# The formulas, against published worked examples.


def test_flesch_kincaid_by_published_examples() -> None:
    """The sentence on the platypus (13 words, 24 syllables: grade 11.3) and Green Eggs and
    Ham (5.7 words a sentence, 1.02 syllables a word: -1.3), Wikipedia, "Flesch–Kincaid
    readability tests"; with 26 syllables 13.08, readme of the npm package flesch-kincaid."""
    assert round(grade(13, 1, 24), 1) == 11.3
    assert round(grade(13, 1, 26), 2) == 13.08
    assert round(grade(570, 100, round(570 * 1.02)), 1) == -1.3
    platypus = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
    words, sentences, syllables = counts(platypus, "en")
    assert (words, sentences) == (13, 1)
    assert abs(syllables - 24) <= 1  # dictionaries differ on "Australian"


def test_fernandez_huerta_by_its_own_formula_per_hundred_words() -> None:
    """L = 206.84 - 0.60 P - 1.02 F with P syllables in 100 words and F words in a sentence
    (Fernández Huerta 1959, as corrected by Law 2011; legible.es)."""
    for syllables, sentences in ((180, 10), (200, 5), (230, 4)):
        written = 206.84 - 0.60 * syllables - 1.02 * (100 / sentences)
        assert ease(100, sentences, syllables) == pytest.approx(written)


@pytest.mark.parametrize(
    ("word", "syllables"),
    [
        # The rules of the Royal Spanish Academy's orthography on diphthongs and hiatuses.
        ("agua", 2), ("aire", 2), ("río", 2), ("aéreo", 4), ("buey", 1), ("guitarra", 3),
        ("pingüino", 3), ("quiere", 2), ("ahora", 3), ("construye", 3), ("muñeca", 3),
        ("raíz", 2), ("veterinario", 5), ("hoy", 1), ("cirugía", 4), ("avísenos", 4), ("y", 1),
    ],
)  # fmt: skip
def test_spanish_syllables_follow_the_spelling(word: str, syllables: int) -> None:
    assert counts(word, "es")[2] == syllables


@pytest.mark.parametrize(
    ("text", "sentences"),
    [
        ("Cold pack: 5 to 10 minutes. Stop!", 3),  # a colon ends a unit of speech (Flesch)
        ("At 39.4 °C phone us at 08:00", 1),
        ("1. Close it.\n2. Freeze it…", 4),
        ("¿Cómo está? Bien.", 2),
        ("", 1),
    ],
)
def test_where_a_sentence_ends(text: str, sentences: int) -> None:
    assert counts(text, "en")[1] == sentences


HARD: dict[Lang, str] = {
    "en": "Postoperative administration of prescribed pharmaceutical preparations necessitates "
    "conscientious observation of gastrointestinal abnormalities, particularly vomiting, "
    "diarrhoea and inappetence, throughout the convalescent period.",
    "es": "La administración postoperatoria de preparaciones farmacológicas prescritas requiere "
    "una observación concienzuda de anormalidades gastrointestinales, particularmente vómito, "
    "diarrea e inapetencia, durante todo el periodo de convalecencia.",
}


@pytest.mark.parametrize("lang", LANGS)
def test_a_handbook_is_too_hard_and_plain_words_are_not(lang: Lang) -> None:
    assert "hard to read" in (too_hard(HARD[lang], lang) or "")
    plain = {"en": "Look at the cut. ", "es": "Mire la herida. "}[lang] * 8
    assert too_hard(plain, lang) is None
    assert too_hard(HARD[lang][:40], lang) is None  # too short to tell


def test_names_of_medicines_are_not_held_against_a_text() -> None:
    text = "Give no pills for people. No {}, no {}, no {}. They can hurt your dog. Phone us first."
    assert too_hard(text.format("ibuprofen", "acetaminophen", "naproxen"), "en") is None


# Warnings in a protocol.

SLUSH = "Close it. Put it in a second bag. Freeze it: it turns to slush."


@pytest.mark.parametrize("lang", LANGS)
def test_a_hard_text_is_told_at_its_line(lang: Lang) -> None:
    old = {"en": SLUSH, "es": "Ciérrela, métala en otra bolsa y congélela: queda como raspado"}
    found = [one for one in warnings(old[lang], HARD[lang]) if "hard to read" in one]
    assert len(found) == 1
    assert "Use shorter words" in found[0]


@pytest.mark.parametrize(
    "gap", ["TODO", "???", "[name of the clinic]", "<phone number>", "____", "TBD", "XXX"]
)
def test_a_gap_left_to_fill_is_told(gap: str) -> None:
    (found,) = warnings(SLUSH, f"Close it, then {gap} it.")
    assert "looks like a gap that was left to fill" in found


def test_square_brackets_alone_are_no_gap() -> None:
    assert warnings(SLUSH, "Close it [with tape].") == []


def test_a_text_that_was_not_translated_is_told() -> None:
    spanish = "Mire la herida con buena luz. ¿Cómo está?\n        No le ponga nada: ni crema, ni espray, ni agua."  # noqa: E501
    english = "Look at the cut in good light. How is it?\n        Put nothing on it: no cream, no spray, no water."  # noqa: E501
    (found,) = warnings(spanish, english)
    assert "the Spanish text is the English one. Translate it." in found


def test_a_day_with_too_much_is_told_once() -> None:
    every = "    at: [morning, midday, evening, bedtime]"
    text = ORTHO.replace("    at: [morning]", every).replace("    at: [morning, evening]", every)
    for words, most in ((ORTHO, 0), (text, 1)):
        made, tree = load_protocol(words, "x.yaml")
        found = [str(one) for one in check_protocol(made, file="x.yaml", tree=tree)]
        told = [one for one in found if "things to do and to read" in one]
        assert len(told) == most  # the same for dogs and cats


# A clinic's own words.


def test_a_clinic_says_it_in_its_own_words() -> None:
    text = "words: {thanks: {en: You are welcome., es: Con gusto.}}\n"
    words, seen = own_words(text, "own.yaml", OURS.words, OURS.seen)
    assert words["thanks"] == Text(en="You are welcome.", es="Con gusto.")
    assert {**words, "thanks": OURS.words["thanks"]} == OURS.words
    assert seen == OURS.seen
    assert word_differences(text, "own.yaml", OURS.words, OURS.seen) == [
        f"thanks (en) “{OURS.words['thanks'].en}” → “You are welcome.” (yours).",
        f"thanks (es) “{OURS.words['thanks'].es}” → “Con gusto.” (yours).",
    ]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("words: {thank: {en: a, es: b}}", "own.yaml:1:9: our words have no text called 'thank'. "
         "Did you mean thanks?"),
        ("seen: {pane: {none: {en: a, es: b}}}", "own.yaml:1:8: our words have no text called "
         "'pane'. Did you mean pain?"),
        ("seen: {pain: {milt: {en: a, es: b}}}", "own.yaml:1:15: our words have no text called "
         "'milt'. Did you mean mild?"),
        ("words: {thanks: {en: '{pet}', es: b}}", "own.yaml:1:22: nothing fills in {pet}"),
        ("words: {thanks: {en: '{', es: b}}", "own.yaml:1:22: a brace"),
        ("words: {thanks: {en: '{0.real}', es: b}}", "own.yaml:1:22: a brace"),
        ("words: {thanks: {en: a}}", "own.yaml:1:9: `es` is missing"),
        ("word: {}", "own.yaml:1:1: `word` is not a known key. Did you mean words?"),
    ],
)  # fmt: skip
def test_a_slip_in_own_words(text: str, says: str) -> None:
    with pytest.raises(FlowError) as caught:
        own_words(text, "own.yaml", OURS.words, OURS.seen)
    assert str(caught.value).startswith(says)


def test_a_placeholder_in_one_language_only() -> None:
    text = "words: {dose_no_more: {en: 'The last {med}.', es: La última dosis.}}\n"
    (found,) = check_own_words(text, "own.yaml", OURS.words, OURS.seen)
    assert "{med} stands in one language only" in found.what
    assert found.level == "warning"


def test_placeholders_are_names_and_nothing_more() -> None:
    assert placeholders("{name} and {at}") == {"name", "at"}
    assert placeholders("{{not one}}") == set()
    for words in ("{", "}", "{}", "{0}", "{a.b}", "{a[0]}", "{a:>9}", "{a!r}"):
        assert placeholders(words) is None

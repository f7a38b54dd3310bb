"""Spelling slips are read as the word that was meant.

Source: the dictionary of `codespell` 2.4, read from the installed package
(``wrong->right[, other,]``, CC BY-SA 3.0): every slip whose first correction is a word of
the trade that the reader relies on is put in that word's place in a sentence.
"""

from __future__ import annotations

from importlib.resources import files

from bot.model.reading import Context
from bot.reading import read
from tests.each import each

SENTENCES: dict[str, str] = {
    "accident": "he had an {} on the rug, peed all over it",
    "afternoon": "he ate everything this {}",
    "ankle": "a little swelling at the {}",
    "anything": "he won't eat {}",
    "appetite": "his {} is good",
    "better": "he is walking {} than last week",
    "black": "his poop is {}",
    "bleeding": "the incision is {} a little",
    "bloated": "his belly is {}",
    "blood": "there is {} in his poop",
    "bloody": "{} diarrhea",
    "blue": "his gums are {}",
    "breathing": "he is {} very hard and fast at rest",
    "bruise": "there is a small {}",
    "can't": "he {} put any weight on the leg",
    "collapse": "he seemed to {} just now",
    "collapsed": "he {} in the yard",
    "compress": "warm {} done for ten minutes",
    "diarrhea": "he has {}",
    "diarrhoea": "he has {}",
    "didn't": "he {} vomit",
    "discharge": "yellow thick {} from the incision",
    "doesn't": "he {} limp at all",
    "done": "massage {}",
    "double": "i gave him a {} dose by mistake",
    "dressing": "his {} got wet",
    "eaten": "he has not {} anything",
    "everything": "he ate {}",
    "finished": "he {} all his food",
    "forgot": "i {} his pill this morning",
    "forgotten": "i have {} his pill",
    "given": "i have {} his pill",
    "green": "{} pus from the incision",
    "half": "he ate only {} of his food",
    "hasn't": "he {} peed since last night",
    "hours": "he has not peed in 26 {}",
    "isn't": "he {} eating",
    "jumped": "he {} off the bed",
    "massage": "we did the {}",
    "medicine": "he refused his {}",
    "minutes": "we walked for ten {}",
    "muscle": "the wound is open and i can see {}",
    "night": "he screamed in pain all {}",
    "normal": "his poop is {}",
    "nothing": "he has eaten {} since yesterday",
    "odor": "there is a bad {} from the incision",
    "pain": "he is screaming in {}",
    "pooped": "he {} twice, all normal",
    "redness": "there is {} around the incision",
    "refused": "he {} his food completely",
    "refuses": "he {} to eat",
    "same": "he walks the {} as yesterday",
    "seizure": "he is having a {}",
    "seizures": "he has had two {}",
    "slightly": "the knee is {} swollen",
    "slipped": "he {} on the tiles",
    "smell": "there is a bad {} from the incision",
    "stitch": "one {} has come out and the edges have come apart",
    "stitches": "he is chewing his {}",
    "swallowed": "he {} a sock",
    "temperature": "his {} is 103.4",
    "thick": "yellow {} pus",
    "threw": "he {} up twice",
    "throwing": "he keeps {} up",
    "unconscious": "he is {}",
    "unresponsive": "he is {}",
    "walking": "he is {} normally, no limp",
    "weight": "he puts full {} on the leg",
    "white": "his gums are {}",
    "without": "he walks {} a limp",
    "won't": "he {} eat",
    "worse": "he is walking {} than yesterday",
    "wound": "the {} is open and i can see bone",
    "yellow": "his gums are {}",
}

ANOTHER_WORD: dict[str, str] = {}
"""Slip → why it is not read as its correction."""


def _slips() -> list[tuple[str, str]]:
    text = (files("codespell_lib") / "data" / "dictionary.txt").read_text(encoding="utf-8")
    found = []
    for line in text.splitlines():
        wrong, _, right = line.partition("->")
        word = right.split(",")[0].strip()
        if word in SENTENCES and wrong not in ANOTHER_WORD:
            found.append((wrong, word))
    return found


def _gist(sentence: str) -> list[tuple[object, ...]]:
    """What was read, without where and how surely: a repaired word may be marked unsure."""
    reading = read(sentence, Context(asked="none", day=7, lang="en"))
    return sorted(
        (str(o.about), o.value, o.count, o.minutes, o.celsius, o.hours, o.detail or "")
        for o in reading.observations
    )


@each(*sorted(SENTENCES))
def test_the_sentence_itself_is_read(word: str) -> None:
    assert _gist(SENTENCES[word].format(word))


@each(*_slips())
def test_a_slip_is_read_as_the_word_that_was_meant(wrong: str, word: str) -> None:
    assert _gist(SENTENCES[word].format(wrong)) == _gist(SENTENCES[word].format(word))

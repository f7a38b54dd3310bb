"""Everything that may take a finding away, in one place: why, how far it reaches, and examples.

A finding, once read, is lowered only by evidence about itself: a negation that governs it,
another subject, a time that is over, a question whether it could come. What only stands beside
it takes nothing away. Each entry holds texts that it lowers and texts in which the same words
stand beside a finding that must stand; the tests read them all.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final


class Reach(Enum):
    """The words that a suppressor may cover."""

    words = "its own words"
    governed = "what it governs: from its first word to the end of its statement"
    clause = "its clause, and what goes on of the same subject"
    reply = "the whole reply"


@dataclass(frozen=True, slots=True)
class Suppressor:
    """One thing that takes a finding away. ``lowers``: replies that it makes no alarm of;
    ``stands``: replies with such words in which the alarm stands."""

    id: str
    why: str
    reach: Reach
    lowers: tuple[str, ...]
    stands: tuple[str, ...] = ()


NEGATION: Final = Suppressor(
    "negation",
    "denied",
    Reach.governed,
    (
        "i dont see any blood or pus thank god",
        "no le veo sangre",
        "he hasn't vomited",
        "ya no anda sangrando",
    ),
    ("i dont know what to do he is vomiting blood", "no sé qué hacer vomita sangre"),
)
TORN: Final = Suppressor(
    "torn",
    "a negation, or another statement, stands in its midst",
    Reach.words,
    ("it is pink, no goo", "he is eating well, and the stitches are clean"),
    ("he ate his dinner and the stitches are gone",),
)
TAKEN_BACK: Final = Suppressor(
    "taken_back",
    "taken back",
    Reach.reply,
    ("false alarm, he did eat it, I had miscounted",),
)
DENIED_REPORT: Final = Suppressor(
    "denied_report",
    "a report that is denied",
    Reach.clause,
    ("my husband swore the bandage was wet but it was not true",),
)
LIKENESS: Final = Suppressor(
    "likeness",
    "a likeness",
    Reach.governed,
    ("he looks at me as if he was dying",),
    ("he is vomiting blood as i said",),
)
WISH: Final = Suppressor(
    "wish",
    "a wish",
    Reach.governed,
    ("hope he doesn't vomit again", "espero que no vomite"),
    ("hope you had a good weekend his gums are white", "vomita sangre ojalá no sea nada"),
)
QUESTION: Final = Suppressor(
    "question",
    "a question",
    Reach.governed,
    ("can he get a seizure from this", "¿puede vomitar con esta pastilla?"),
    ("what time do you open his gums are white", "his gums are white what time do you open"),
)
CONDITION: Final = Suppressor(
    "condition",
    "a condition",
    Reach.governed,
    ("ring if he vomits blood", "y si vomita sangre"),
    ("sorry if this is silly he is vomiting blood", "vomita sangre por si importa"),
)
FEAR: Final = Suppressor(
    "fear",
    "something feared or prevented",
    Reach.governed,
    ("im scared that he will have a seizure", "me da miedo que le dé una convulsión"),
    ("im so worried his gums are white",),
)
THOUGHT: Final = Suppressor(
    "thought",
    "only thought",
    Reach.clause,
    ("i dreamt that he was bleeding",),
)
GENERAL: Final = Suppressor(
    "general",
    "said of animals in general",
    Reach.clause,
    ("i read online that dogs can have seizures", "vi una serie de doctores anoche pura sangre"),
    ("le puse una diclofenaco de las mías está tranquilo viendo la novela conmigo",),
)
LONG_AGO: Final = Suppressor(
    "long_ago",
    "long ago",
    Reach.clause,
    ("he had a seizure two years ago", "el año pasado vomitaba sangre"),
    ("he had a seizure just now. he had one last year too",),
)
BEFORE_SURGERY: Final = Suppressor(
    "before_surgery",
    "before the operation",
    Reach.clause,
    ("before the operation he couldn't breathe well, now fine",),
    ("he was fine before the operation and now his gums are white",),
)
OVER: Final = Suppressor(
    "over",
    "told to be over",
    Reach.clause,
    ("he was sick the first night but not since",),
)
NOT_DONE: Final = Suppressor(
    "not_done",
    "not done yet",
    Reach.clause,
    ("will give it at nine",),
)
UNREAL: Final = Suppressor(
    "unreal",
    "nobody tells that it was done",
    Reach.clause,
    ("should have given it at eight", "casi se la doy"),
    ("he must have been given it twice",),
)
ORDERED: Final = Suppressor(
    "ordered",
    "an order of the practice",
    Reach.clause,
    ("the vet said nothing by mouth so no food",),
)
ON_THE_WAY: Final = Suppressor(
    "on_the_way",
    "on the way to help",
    Reach.clause,
    ("we are running to the er",),
)
SOMETHING_ELSE: Final = Suppressor(
    "something_else",
    "said of something else",
    Reach.clause,
    ("took two steps to the bowl", "there should be ten tablets in it and there are ten"),
    ("there should be ten tablets in it and there are three",),
)
ANOTHERS_DEATH: Final = Suppressor(
    "anothers_death",
    "another's death",
    Reach.clause,
    ("my grandma passed away",),
)
PERSON: Final = Suppressor(
    "person",
    "a person",
    Reach.clause,
    ("i feel sick", "my husband threw up", "ive got the runs and threw up twice"),
    (
        "my mum says its nothing his gums are white",
        "he is vomiting blood i feel sick",
        "doctora se le abrió la herida y se le ve el hueso",
    ),
)
ANIMAL: Final = Suppressor(
    "animal",
    "another animal",
    Reach.clause,
    ("my other dog is vomiting blood", "mi otro perro está vomitando"),
    ("his gums are white and my other dog is fine",),
)
THING: Final = Suppressor(
    "thing",
    "a thing",
    Reach.clause,
    ("my phone fell", "his eyes are gunky", "la reja de su jaula quedó chueca"),
    ("his ear is fine but the stitches are gunky",),
)
ELSEWHERE: Final = Suppressor(
    "elsewhere",
    "said to come from another, or from a thing",
    Reach.governed,
    (
        "the blood on the floor was from a chicken",
        "the one who is not eating is my husband",
        "la sangre de la cobija era de mi dedo",
        "los gritos de anoche eran de los vecinos",
        "lo que se abrió fue la bolsa",
    ),
    (
        "the blood on the floor was from his wound",
        "la sangre de la cobija era de su herida",
        "lo que se abrió fue la herida",
        "he is vomiting blood my husband was from the start against it",
    ),
)
GUESSED: Final = Suppressor(
    "guessed",
    "a guess at a misspelt word does not clear anything",
    Reach.words,
    (),
)
FIGURE: Final = Suppressor(
    "figure",
    "a figure of speech",
    Reach.words,
    ("i am sick and tired of this cone",),
    ("i am sick and tired of this he is vomiting blood",),
)
FORMULA: Final = Suppressor(
    "formula",
    "a formula beside the report",
    Reach.words,
    ("hope its nothing serious",),
    ("hope its nothing serious he is vomiting blood",),
)
FIGURE_ALONE: Final = Suppressor(
    "figure_alone",
    "a figure alone answers what was asked",
    Reach.reply,
    (),
)

ALL: Final = (
    NEGATION, TORN, TAKEN_BACK, DENIED_REPORT, LIKENESS, WISH, QUESTION, CONDITION, FEAR, THOUGHT,
    GENERAL, LONG_AGO, BEFORE_SURGERY, OVER, NOT_DONE, UNREAL, ORDERED, ON_THE_WAY,
    SOMETHING_ELSE, ANOTHERS_DEATH, PERSON, ANIMAL, THING, ELSEWHERE,
    GUESSED, FIGURE, FORMULA, FIGURE_ALONE,
)  # fmt: skip
"""Nothing else takes a finding away."""

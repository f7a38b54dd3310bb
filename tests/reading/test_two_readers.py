"""Two readers: the second may raise or ask, and never clears what the first has read."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.model.observation import Noted, Observation
from bot.model.reading import Context, Doubt, Reading, Suppressed
from bot.model.urgency import Urgency
from bot.model.vocabulary import ASKED, DETAILS, TOPICS
from bot.reading import read, reader
from bot.reading.alarms import ALARMS, level, level_told
from bot.reading.remedies import some_was_given
from bot.reading.stand import told_at
from bot.reading.statistical import Suspicion
from bot.reading.two_readers import ENOUGH, LEFT_UNREAD, RAISES_EMERGENCY, combined, raised
from bot.reading.wishes import tells_trouble
from bot.triage import default_rules, triage
from bot.triage import urgency as highest

RULES = default_rules()
NOON = datetime(2000, 1, 1, 12, tzinfo=UTC)
PAIRS = [(about, value) for about, values in TOPICS.items() for value in values]
FIGURES: dict[str, list[dict[str, object]]] = {
    "urine": [{}, {"hours": 6.0}, {"hours": 12.0}, {"hours": 24.0}],
    "vomiting": [{}, {"count": 1}, {"count": 2}],
    "temperature": [{"celsius": c} for c in (34.9, 35.0, 36.9, 37.0, 39.3, 39.4, 40.4, 40.5)],
    "swelling": [{}, {"trend": "worse"}, {"trend": "better"}],
    "weight_bearing": [{}, {"trend": "worse"}],
}

texts = st.one_of(
    st.text(max_size=120),
    st.lists(
        st.sampled_from("gums white pale he ate all pus blood no not hope ok tablets".split()),
        max_size=12,
    ).map(" ".join),
)
suspicions = st.builds(
    Suspicion,
    urgent=st.floats(0, 1),
    emergency=st.floats(0, 1),
    matters=st.permutations(sorted(ALARMS)).map(tuple),
)
contexts = st.builds(
    Context,
    asked=st.sampled_from(ASKED),
    day=st.integers(0, 60),
    species=st.sampled_from(("dog", "cat")),
)


def _judged(one: Observation, day: int, species: str) -> Urgency:
    now = NOON + timedelta(minutes=1)
    found = triage([Noted(one, NOON, day)], (), day=day, now=now, rules=RULES, species=species)
    return highest(found)


@pytest.mark.parametrize(("about", "value"), PAIRS)
def test_a_value_alone_alarms_as_the_rules_have_it(about: str, value: str) -> None:
    details = [None, *DETAILS.get(about, ())]
    for figures, detail, day, species in product(
        FIGURES.get(about, [{}]), details, (0, 1, 2, 3, 4, 9, 14, 15, 40), ("dog", "cat")
    ):
        one = Observation(about, value, detail=detail, **figures)  # type: ignore[arg-type]
        judged = _judged(one, day, species)
        told = level_told(one, day, species)
        assert told == (judged if judged >= Urgency.same_day else Urgency.none), (one, day)


@settings(deadline=None, max_examples=150, derandomize=True)
@given(texts, suspicions, contexts)
def test_whatever_is_suspected_nothing_read_is_lost_or_added(
    text: str, suspicion: Suspicion, context: Context
) -> None:
    grammar = reader.read(text, context)
    both = combined(grammar, suspicion, context)
    assert replace(both, asks=(), reasons=grammar.reasons) == grammar
    assert both.reasons[: len(grammar.reasons)] == grammar.reasons
    told = [one.urgency for one in both.asks]
    assert told == sorted(told, reverse=True)
    assert all(one >= Urgency.same_day for one in told)
    assert len({(one.about, one.value) for one in both.asks}) == len(both.asks)
    for one in both.asks:
        if not one.alarmed:
            low = level(one.about, one.value, context.day, context.species)
            high = level(one.about, one.value, context.day, context.species, worst=True)
            assert one.urgency in (low, high)


@settings(deadline=None, max_examples=100, derandomize=True)
@given(texts, contexts)
def test_the_reader_tells_no_less_than_the_grammar(text: str, context: Context) -> None:
    grammar = reader.read(text, context)
    both = read(text, context)
    assert both.understood == grammar.understood
    assert told_at(both, context) >= told_at(grammar, context)
    more = [one for one in both.observations if one not in grammar.observations]
    assert all(tells_trouble(one.about, one.value) for one in more)
    assert read(text, context) == both


@settings(deadline=None, max_examples=150, derandomize=True)
@given(texts, suspicions, contexts)
def test_what_is_raised_takes_nothing_away_and_is_asked(
    text: str, suspicion: Suspicion, context: Context
) -> None:
    grammar = reader.read(text, context)
    both = raised(grammar, suspicion, context, text)
    assert both.observations[: len(grammar.observations)] == grammar.observations
    assert replace(both, observations=grammar.observations, reasons=grammar.reasons) == grammar
    for one in both.observations[len(grammar.observations) :]:
        at = level_told(one, context.day, context.species)
        assert one.unsure
        assert at > told_at(grammar, context)
        asks = combined(both, suspicion, context).asks
        assert Doubt(one.about, one.value, at, alarmed=True) in asks


def _suspicion(urgent: float, emergency: float, matters: tuple[tuple[str, str], ...]) -> Suspicion:
    return Suspicion(urgent, emergency, matters, matters[0], 0.5)


CALM = _suspicion(0.001, 0.001, (("incision", "pus"), ("gums", "pale")))
ALARMED = _suspicion(0.99, 0.1, (("incision", "pus"), ("gums", "pale")))
GRAVE = _suspicion(0.99, 0.99, (("incision", "pus"), ("gums", "pale")))
GRAVER = _suspicion(0.99, 0.6, (("gums", "pale"), ("incision", "pus")))
WORSE = _suspicion(0.99, 0.8, (("energy", "lethargic"), ("energy", "collapsed")))
PALER = _suspicion(0.99, 0.1, GRAVER.matters)
FLAT = Observation("energy", "lethargic", span=(0, 3))
NORMAL = Observation("appetite", "normal", span=(0, 3))
PUS = Observation("incision", "pus", span=(0, 3))


def _asks(seen: tuple[Observation, ...], suspicion: Suspicion) -> tuple[Doubt, ...]:
    return combined(Reading(seen, True, "en", unread=9), suspicion, Context(day=9)).asks


@pytest.mark.parametrize(
    ("seen", "suspicion", "asks"),
    [
        ((NORMAL,), CALM, ()),
        ((NORMAL,), ALARMED, (Doubt("incision", "pus", Urgency.same_day),)),
        ((NORMAL,), GRAVE, (Doubt("gums", "pale", Urgency.emergency),)),
        ((PUS,), ALARMED, ()),
        ((PUS,), GRAVER, ()),  # an alarm that was read whole is not asked again
        ((PUS,), GRAVE, (Doubt("gums", "pale", Urgency.emergency),)),  # but what is worse is
        ((NORMAL,), PALER, (Doubt("gums", "pale", Urgency.same_day),)),  # at the level suspected
        ((NORMAL,), replace(ALARMED, likeliest=("swelling", "marked")), ()),  # expected that day
        ((NORMAL,), replace(ALARMED, alone=0.01), ()),  # odd as a whole, nobody could say why
        ((FLAT,), WORSE, (Doubt("energy", "collapsed", Urgency.emergency),)),
        ((PUS,), CALM, (Doubt("incision", "pus", Urgency.same_day, alarmed=True),)),
        (
            (replace(PUS, unsure=True),),
            ALARMED,
            (Doubt("incision", "pus", Urgency.same_day, alarmed=True),),
        ),
    ],
)
def test_where_they_disagree_the_matter_is_asked(
    seen: tuple[Observation, ...], suspicion: Suspicion, asks: tuple[Doubt, ...]
) -> None:
    assert _asks(seen, suspicion) == asks


DOUBTFUL = _suspicion(0.3, 0.01, ALARMED.matters)
GRAVELY = _suspicion(0.6, 0.5, ALARMED.matters)
PALE = (Doubt("gums", "pale", Urgency.emergency),)
TODAY = (Doubt("gums", "pale", Urgency.same_day),)


@pytest.mark.parametrize(
    ("by", "suspicion", "asks"),
    [
        ("wish", DOUBTFUL, TODAY),
        ("question", DOUBTFUL, TODAY),
        ("over", DOUBTFUL, TODAY),
        ("over", GRAVELY, PALE),
        ("wish", CALM, ()),
        ("negation", DOUBTFUL, ()),
        ("animal", DOUBTFUL, ()),
        ("negation", replace(DOUBTFUL, urgent=0.6), TODAY),
        ("animal", GRAVELY, PALE),
    ],
)
def test_an_emergency_named_and_not_counted_leaves_a_question(
    by: str, suspicion: Suspicion, asks: tuple[Doubt, ...]
) -> None:
    hidden = (Suppressed("gums", "pale", by, (0, 3)),)
    reading = Reading((NORMAL,), True, "en", suppressed=hidden)
    assert combined(reading, suspicion, Context(day=9)).asks == asks


def test_where_every_word_is_accounted_for_the_model_has_no_say() -> None:
    whole = Reading((NORMAL,), True, "en", unread=LEFT_UNREAD - 1)
    assert combined(whole, GRAVE, Context(day=9)).asks == ()
    assert combined(replace(whole, unread=LEFT_UNREAD), GRAVE, Context(day=9)).asks != ()
    assert combined(replace(whole, understood=False), GRAVE, Context(day=9)).asks != ()


@pytest.mark.parametrize(
    ("asked", "text"),
    [
        ("massage", "not 2day"),
        ("dose", "all his evening pills are in"),
        ("swelling", "sin hinchazón y muchas gracias"),
        ("pain", "Not in any pain, calm and thanks so much"),
    ],
)
def test_a_plain_answer_is_not_asked_about(asked: str, text: str) -> None:
    assert read(text, Context(asked, 11)).asks == ()


def test_what_is_less_than_an_emergency_and_not_counted_is_not_asked() -> None:
    hidden = (Suppressed("incision", "pus", "wish", (0, 3)),)
    reading = Reading((NORMAL,), True, "en", suppressed=hidden)
    assert combined(reading, DOUBTFUL, Context(day=9)).asks == ()


def test_what_was_read_otherwise_and_whole_is_not_asked() -> None:
    pink = replace(NORMAL, about="gums", value="pink")
    assert not any(one.about == "gums" for one in _asks((pink,), GRAVE))
    assert _asks((NORMAL,), GRAVE) == PALE


CERTAIN = replace(GRAVE, emergency=(1 + RAISES_EMERGENCY) / 2, matters=GRAVER.matters)
UNREAD = Reading((NORMAL,), False, "en")


@pytest.mark.parametrize(
    ("reading", "suspicion", "day", "told"),
    [
        (UNREAD, CERTAIN, 9, ("gums", "pale")),
        (replace(UNREAD, understood=True), CERTAIN, 9, None),
        (UNREAD, replace(CERTAIN, emergency=RAISES_EMERGENCY - 0.01), 9, None),
        (UNREAD, replace(CERTAIN, matters=(("life", "died"), ("gums", "pale"))), 9, None),
        (UNREAD, replace(CERTAIN, matters=(("temperature", "measured"),)), 9, None),
        # Denied, wished or told of another: that the model cannot know.
        (replace(UNREAD, suppressed=(Suppressed("gums", "pale", "negation", (0, 3)),)), CERTAIN,
         9, None),
        # Read otherwise and whole.
        (Reading((replace(NORMAL, about="gums", value="pink"),), True, "en"), CERTAIN, 9, None),
    ],
)  # fmt: skip
def test_what_the_model_is_certain_of_is_raised_in_doubt(
    reading: Reading, suspicion: Suspicion, day: int, told: tuple[str, str] | None
) -> None:
    context, words = Context(day=day), ["word"] * ENOUGH
    new = raised(reading, suspicion, context, " ".join(words)).observations[1:]
    assert [(one.about, one.value) for one in new] == ([told] if told else [])
    assert raised(reading, suspicion, context, " ".join(words[1:])) == reading


GIVEN = [
    *(f"{verb} {whose} {what}" for verb in ("gave", "gave all", "just gave", "we gave")
      for whose in ("her", "his", "the") for what in ("pills", "meds", "evening pills", "tablets")),
    *(f"{verb} {what}" for verb in ("le di", "ya le di", "le dimos", "se tomó")
      for what in ("las pastillas", "sus pastillas", "todas las pastillas", "la medicina")),
]  # fmt: skip


@pytest.mark.parametrize("asked", ["none", "dose"])
@pytest.mark.parametrize("day", [1, 3, 9])
def test_medicines_that_were_given_are_asked_about_as_nothing_else(asked: str, day: int) -> None:
    """What the plan wants given is told every day; nobody is asked whether it was a poison."""
    context = Context(asked=asked, day=day, names=("Clover",), medicines=("carprofen",))
    assert [text for text in GIVEN if read(text, context).asks] == []


@pytest.mark.parametrize(
    "ask", ["can i give him {}?", "is it ok to give her {}", "le puedo dar {}?"]
)
@pytest.mark.parametrize("medicine", ["ibuprofen", "tylenol", "aspirin"])
def test_some_that_was_given_while_leave_is_asked_is_asked_about(ask: str, medicine: str) -> None:
    for behind in ("i gave one already", "he had half an hour ago", "gave it at 8", "ya le di una"):
        found = read(f"{ask.format(medicine)} {behind}", Context("dose", 6))
        matters = {(one.about, one.value) for one in found.asks}
        matters |= {(one.about, one.value) for one in found.observations}
        assert ("swallowed", "human_medicine") in matters, behind


def test_nothing_was_given_of_what_leave_is_asked_for() -> None:
    for behind in ("i haven't given any", "he had a quiet night", "aún no le di ninguna"):
        assert not some_was_given(behind), behind

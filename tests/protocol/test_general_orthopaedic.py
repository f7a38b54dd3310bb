"""The general orthopaedic protocol: the whole course, in both languages, for dog and cat."""

from __future__ import annotations

import re
from collections import defaultdict
from datetime import date, datetime
from itertools import pairwise

import pytest

from bot.model.plan import Hours, Medicine, Plan
from bot.model.protocol import Activity, Species
from bot.model.text import LANGS, Lang, Text
from bot.model.vocabulary import TOPICS
from bot.plan.expected import expected_on
from bot.plan.prompts import days_of, prompts
from bot.protocol.checks import check_protocol
from bot.protocol.library import load_protocol, packaged_texts, protocol

ORTHO = protocol("general-orthopaedic")
SPECIES: tuple[Species, ...] = ("dog", "cat")
WEEKS = 8


def plan(species: Species, **more: object) -> Plan:
    """The usual three medicines, one of them every eight hours; home at ten on day 1."""
    three = [
        ("cephalexin", "antibiotic", 12, "2026-03-03T20:00", 7),
        ("carprofen", "anti-inflammatory", 24, "2026-03-04T08:00", 10),
        ("gabapentin", "pain relief", 8, "2026-03-03T12:00", 7),
    ]
    medicines = [
        Medicine.model_validate(
            {"name": name, "amount": Text(en="one tablet", es="una tableta"), "kind": kind,
             "every_hours": every, "first_dose": first, "days": days}
        )
        for name, kind, every, first, days in three
    ]  # fmt: skip
    return Plan.model_validate(
        {
            "patient": "Biscuit", "species": species, "weight_kg": 20, "procedure": "Plate",
            "surgery": date(2026, 3, 2), "home": datetime(2026, 3, 3, 10),
            "zone": "America/Denver", "protocol": "general-orthopaedic",
            "clinician": "Dr Example", "medicines": medicines, **more,
        }
    )  # fmt: skip


def of(species: Species, *ids: str) -> list[Activity]:
    return [
        one for one in ORTHO.activities if species in one.species and (not ids or one.id in ids)
    ]


def days(activity: Activity) -> set[int]:
    return set(days_of(activity, plan(activity.species[0]), ORTHO))


def asked(species: Species, topic: str) -> set[int]:
    """The days on which something asks about ``topic``."""
    return {day for one in of(species) if one.asks == topic for day in days(one)}


def every_text() -> list[Text]:
    texts = [one.text for one in ORTHO.activities] + [one.text for one in ORTHO.expected]
    return texts + [choice.label for one in ORTHO.activities for choice in one.choices]


def test_nothing_to_mend() -> None:
    for name, stem, text in packaged_texts():
        made, tree = load_protocol(text, name, stem)
        assert check_protocol(made, Hours(), file=name, tree=tree) == []


# The figures are common practice.


@pytest.mark.parametrize("species", SPECIES)
def test_cold_then_warm_twice_a_day(species: Species) -> None:
    cold, warm = of(species, "cold-pack", "warm-compress")
    assert {day for day in days(cold) if day >= 1} == {1, 2, 3, 4}  # first 3 to 4 days at home
    assert days(warm) == set(range(5, 12))  # then about a week
    for one in (cold, warm):
        assert one.at == ("morning", "evening")
        assert "5 to 10 minutes" in one.text.en
        assert "5 a 10 minutos" in one.text.es
        assert "cloth" in one.text.en
        assert "tela" in one.text.es
    assert "your own wrist first" in warm.text.en
    assert "primero en su muñeca" in warm.text.es


def test_how_to_make_a_slush_pack() -> None:
    (made,) = of("dog", "slush-pack")
    assert "1 cup of rubbing alcohol and 3 to 4 cups of water" in made.text.en
    assert "1 taza de alcohol de farmacia y de 3 a 4 tazas de agua" in made.text.es
    for words in ("second bag", "poison", "can't reach"):
        assert words in made.text.en
    for words in ("otra bolsa", "veneno", "lejos de"):
        assert words in made.text.es


def test_massage_from_the_foot_toward_the_heart() -> None:
    (massage,) = of("cat", "massage")
    assert re.search(r"foot.+toward the heart,\s+past each joint", massage.text.en)
    assert re.search(r"pie.+hacia el corazón,\s+pasando cada articulación", massage.text.es)


def test_walks_begin_as_toilet_trips_and_lengthen_each_week() -> None:
    trips, short, later = of("dog", "toilet-trips", "short-walks", "leash-walks")
    walked = [days(one) for one in (trips, short, later)]
    assert sorted(day for some in walked for day in some) == list(range(WEEKS * 7 + 1))
    assert [ORTHO.walks.minutes_on(7 * week) for week in range(WEEKS)] == [
        5, 10, 15, 20, 25, 30, 30, 30,
    ]  # fmt: skip
    for one in (trips, short, later):
        for words in (one.text.en, one.text.es):
            assert "{minutes}" in words
            assert "{outings}" in words
    assert asked("cat", "walk") == set()  # cats rest in a small room
    assert asked("cat", "general") >= set(range(15))


@pytest.mark.parametrize("species", SPECIES)
def test_no_running_is_said_every_week(species: Species) -> None:
    (rest,) = of(species, f"no-running-{species}")
    assert {day // 7 for day in days(rest)} == set(range(WEEKS))
    assert "eight weeks" in rest.text.en


@pytest.mark.parametrize("species", SPECIES)
def test_the_cone_every_night_for_two_weeks(species: Species) -> None:
    (cone,) = of(species, "cone")
    assert days(cone) == set(range(15))  # 10 to 14 days
    assert cone.at == ("bedtime",)


@pytest.mark.parametrize("species", SPECIES)
def test_questions_are_daily_first_and_rarer_later(species: Species) -> None:
    assert asked(species, "incision") >= set(range(1, 15))
    for topic in ("appetite", "bathroom"):
        assert asked(species, topic) >= set(range(1, 6))  # no stool is asked past day 4
        assert {8, 11, 14} <= asked(species, topic)
    leg = sorted(asked(species, "mobility"))
    assert leg[0] <= 3
    assert leg[-1] == 56
    assert max(b - a for a, b in pairwise(leg)) <= 4


def test_home_hazards_are_told_in_the_first_days() -> None:
    first = [one for one in of("dog") if one.kind == "notice" and max(days(one)) <= 3]
    said = " ".join(one.text.en for one in first)
    for hazard in ("doorbell", "guests", "floors", "stairs", "sofa", "crate", "ointment"):
        assert hazard in said
    dicho = " ".join(one.text.es for one in first)
    for hazard in ("timbre", "pisos", "escaleras", "sofá", "jaula", "pomada"):
        assert hazard in dicho


@pytest.mark.parametrize("species", SPECIES)
def test_recheck_by_picture_and_film_then_radiographs_then_the_end(species: Species) -> None:
    pictures = [one for one in of(species) if one.kind == "picture"]
    assert len(pictures) == 2
    assert {day for one in pictures for day in days(one)} == {12}  # 10 to 14 days
    assert "film" in pictures[1].text.en
    assert "video" in pictures[1].text.es
    ends = {one.id: days(one) for one in of(species)}
    assert ends["radiographs-book"] == {49}
    assert ends["radiographs-due"] == {56}  # about eight weeks
    assert ends["the-end"] == {ORTHO.spans["last"]}


def test_a_clinician_moves_a_stage_for_one_patient() -> None:
    later = plan("dog", spans={"recheck": 14, "ice_last": 3, "warm_first": 4, "cone_last": 10})
    on = defaultdict(set)
    for prompt in prompts(later, ORTHO):
        for item in prompt.items:
            on[item.id.split(":")[0]].add(prompt.day)
    assert on["recheck-picture"] == {14}
    assert max(on["cold-pack"]) == 3
    assert min(on["warm-compress"]) == 4
    assert max(on["cone"]) == 10


# What comes in a day.


@pytest.mark.parametrize("species", SPECIES)
@pytest.mark.parametrize("home", ["2026-03-02T18:00", "2026-03-03T10:00", "2026-03-03T17:30"])
def test_few_messages_and_short_ones(species: Species, home: str) -> None:
    """With three medicines, one every eight hours, some of it in the night."""
    course = prompts(plan(species, home=datetime.fromisoformat(home)), ORTHO)
    by_day = defaultdict(list)
    for prompt in course:
        by_day[prompt.day].append(prompt)
    assert max(len(some) for some in by_day.values()) <= 6
    at_home = [prompt for prompt in course if prompt.day > 1]
    assert max(len(prompt.items) for prompt in at_home) <= 5
    for prompt in course:
        for lang in LANGS:
            assert sum(len(item.text.say(lang)) for item in prompt.items) <= 900
    assert max(len(some) for day, some in by_day.items() if day > 14) <= 2


# The words.


def test_every_choice_can_be_understood() -> None:
    for one in ORTHO.activities:
        if one.kind == "session":
            assert {"done", "skipped"} <= {choice.id for choice in one.choices}
        if one.kind == "question":
            assert 2 <= len(one.choices) <= 6
        silent = [choice.id for choice in one.choices if not choice.notes]
        assert set(silent) <= {"wrong"}  # the bot asks to describe it


def test_every_figure_has_a_source() -> None:
    sources = [one.source for one in ORTHO.activities] + [one.source for one in ORTHO.expected]
    for source in sources:
        assert re.search(r"common practice|handout|AJVR|FDA|Veterinary Partner|CDC", source)


def test_what_is_normal_is_known_for_every_day_of_the_usual_topics() -> None:
    topics = {
        "bruising", "swelling", "weight_bearing", "stool", "appetite", "energy", "incision",
        "licking", "cone", "walk", "ice", "warm_compress", "massage", "dose", "mobility",
        "urine", "pain", "drinking", "vomiting", "mishap", "bandage", "temperature",
    }  # fmt: skip
    assert topics <= set(TOPICS)
    for topic in topics:
        for day in range(ORTHO.spans["last"] + 1):
            for species in SPECIES:
                assert len(expected_on(plan(species), ORTHO, [topic], day)) == 1, (topic, day)


def test_no_stool_is_normal_until_day_four_while_eating_and_not_straining() -> None:
    early, later = (one for one in ORTHO.expected if one.about == "stool")
    assert early.to_day == 4
    assert "eats and does not strain" in early.text.en
    assert "si come y no hace fuerza" in early.text.es
    assert "Tell us if there is none" in later.text.en


def test_nothing_is_called_fine_and_no_name_is_left_open() -> None:
    for text in every_text():
        for lang in LANGS:
            assert not re.search(r"\b(fine|all right|no problem|sin problema)\b", text.say(lang))
    for one in ORTHO.expected:
        assert "{" not in one.text.en + one.text.es


def test_owners_are_addressed_one_way_in_spanish() -> None:
    """Usted throughout, and no word that takes the patient's sex."""
    familiar = r"\b(tú|tu|tus|ti|vos|pon|mira|avísanos|llámanos|llama|puedes|tienes|dale)\b"
    sexed = r"\b(él está|ella está|tranquila|operad[oa]|cansad[oa]|perrit[oa]|gatit[oa])\b"
    for text in every_text():
        assert not re.search(familiar, text.es.lower())
        assert not re.search(sexed, text.es.lower())


@pytest.mark.parametrize(("lang", "limit"), [("en", 320), ("es", 340)])
def test_every_text_fits_one_screen_of_a_phone(lang: Lang, limit: int) -> None:
    for text in every_text():
        assert len(text.say(lang)) <= limit


@pytest.mark.parametrize("lang", LANGS)
def test_sentences_are_short(lang: Lang) -> None:
    """At most 28 words (a plain-language habit: common practice), far fewer on average."""
    lengths = [
        len(sentence.split())
        for text in every_text()
        for sentence in re.split(r"(?<=[.:;?!])\s", text.say(lang))
        if sentence.strip()
    ]
    assert max(lengths) <= 28
    assert sum(lengths) / len(lengths) <= 10

"""The default table of urgencies, line by line (the project's own, common practice)."""

from __future__ import annotations

import pytest

from tests.triage.conftest import Tell

EMERGENCY = [
    ("breathing laboured", 2),
    ("gums pale", 2),
    ("gums blue", 40),
    ("energy collapsed", 0),
    ("seizure yes", 12),
    ("incision bleeding heavy", 3),
    ("incision open deep", 8),
    ("leg crooked", 3),
    ("leg paralysed", 3),
    ("bandage tight cold", 3),
    ("swallowed poison", 3),
    ("temperature measured celsius=34.9", 1),
    ("swallowed medicine_overdose", 4),
    ("swallowed human_medicine", 30),
    ("belly bloated", 13),
    ("vomiting bloody", 1),
    ("urine none hours=24", 1),
    ("urine none hours=48", 22),
    ("temperature measured celsius=40.5", 5),
]
SAME_DAY = [
    ("incision pus", 1),
    ("incision odour", 9),
    ("incision open edges", 7),
    ("incision bleeding slow", 5),
    ("incision bleeding stopped", 5),
    ("swelling marked", 4),
    ("swelling mild trend=worse", 4),
    ("swelling marked trend=worse", 12),
    ("vomiting yes count=2", 0),
    ("vomiting yes; appetite none", 1),
    ("vomiting yes; energy lethargic", 1),
    ("appetite none", 2),
    ("drinking none", 0),
    ("stool black", 5),
    ("stool bloody", 6),
    ("stool straining", 2),
    ("stool none; appetite none", 1),
    ("stool none; vomiting yes", 2),
    ("stool none; pain moderate", 3),
    ("urine bloody", 4),
    ("urine none hours=12", 1),
    ("urine none hours=23.9", 1),
    ("urine none", 1),  # for a time not told
    ("energy lethargic", 2),
    ("pain severe", 0),
    ("weight_bearing none", 15),
    ("weight_bearing none sudden", 2),
    ("weight_bearing none trend=worse", 10),
    ("weight_bearing none; mobility worse", 10),
    ("mishap jumped; pain severe", 13),
    ("mishap fell; pain moderate", 13),
    ("mishap stairs; swelling mild", 5),
    ("mishap slipped; mobility worse", 30),
    ("mishap rough_play; weight_bearing none", 2),
    ("temperature measured celsius=39.4", 3),
    ("temperature measured celsius=40.4", 3),
    ("gums yellow", 9),
    ("temperature measured celsius=35", 9),
    ("temperature measured celsius=36.9", 9),
    ("fixator loose", 9),
    ("fixator bent", 9),
    ("allergy hives", 9),
    ("allergy swollen_face", 9),
    ("life died", 0),
    ("urine straining; urine normal", 4),
    ("bandage wet", 2),
    ("bandage slipped", 2),
    ("bandage odour", 2),
    ("bandage tight", 2),
    ("dose doubled", 7),
    ("swallowed bandage_or_object", 23),
]
NEXT_DAY = [
    ("vomiting yes", 0),
    ("vomiting yes count=1; appetite normal", 10),
    ("appetite less", 3),
    ("stool none; appetite normal", 5),
    ("stool loose", 3),
    ("urine accident", 3),
    ("drinking more", 21),
    ("pain moderate", 3),
    ("weight_bearing none", 4),
    ("weight_bearing none", 14),
    ("mobility worse", 20),
    ("other_leg limping", 20),
    ("mishap ran; mobility same", 12),
    ("mishap jumped", 22),  # its outcome not told
    ("mishap jumped; weight_bearing full; pain none", 22),
    ("incision red", 4),
    ("incision discharge", 4),
    ("incision red trend=better", 8),
    ("swelling mild", 8),
    ("swelling marked", 0),
    ("swelling marked", 3),
    ("bruising marked", 8),
    ("licking yes", 3),
    ("cone damaged", 9),
    ("dose refused count=2", 4),
    ("dose missed count=3", 4),
    ("dose vomited_up", 3),
    ("request call_back", 11),
    ("request stop", 56),
    ("request question", 17),
]
NONE = [
    ("bruising mild; swelling mild", 7),
    ("weight_bearing toe_touching", 20),
    ("weight_bearing partial", 50),
    ("stool none; appetite normal", 4),
    ("energy quiet", 0),
    ("energy quiet", 30),
    ("appetite less", 2),
    ("incision red; incision discharge", 3),
    ("dose missed", 6),
    ("dose refused", 6),
    ("dose given", 6),  # late
    ("bruising marked", 7),
    ("appetite none", 1),
    ("energy lethargic", 1),
    ("weight_bearing none", 0),
    ("weight_bearing none", 3),
    ("pain mild", 3),
    ("drinking less", 3),
    ("mobility same", 3),
    ("request snooze", 3),
    ("ice skipped; warm_compress skipped; massage skipped; walk skipped", 3),
    ("cone off", 3),
    ("cone off unwatched", 3),
    ("urine none hours=8", 3),
    ("temperature measured celsius=38.6; gums pink", 5),
    ("appetite normal; drinking normal; stool normal; urine normal; vomiting no", 5),
    ("energy normal; pain none; weight_bearing full; mobility better", 30),
    ("swelling none; bruising none; incision clean; bandage fine; licking no; cone on", 9),
    ("fixator fine; temperature measured celsius=37", 9),
    ("breathing normal; seizure no; belly normal; gums pink", 9),
    ("dose given; ice done; warm_compress done; massage done; walk done", 9),
]
TABLE = [
    (reply, day, urgency)
    for urgency, lines in (
        ("emergency", EMERGENCY),
        ("same_day", SAME_DAY),
        ("next_day", NEXT_DAY),
        ("none", NONE),
    )
    for reply, day in lines
]


@pytest.mark.parametrize("species", ["dog", "cat"])
def test_the_default_table(tell: Tell, species: str) -> None:
    given = [(reply, day, tell(reply, day=day, species=species).urgency) for reply, day, _ in TABLE]
    assert given == TABLE


def test_a_cat_that_strains_to_pee_may_be_blocked(tell: Tell) -> None:
    assert tell("urine straining", species="cat").urgency == "emergency"
    assert tell("urine straining; urine none hours=3", species="cat").urgency == "emergency"
    assert tell("urine straining", species="dog").urgency == "same_day"


def test_another_leg_that_limps_weighs_more_after_an_amputation(tell: Tell) -> None:
    assert tell("other_leg limping", protocol="amputation").urgency == "same_day"
    assert tell("other_leg limping", protocol="fracture-plate").urgency == "next_day"


def test_what_is_not_told_raises(tell: Tell) -> None:
    assert tell("incision bleeding").urgency == "emergency"
    assert tell("incision open").urgency == "same_day"
    assert tell("temperature measured").urgency == "next_day"
    assert tell("gums pale", species="ferret").urgency == "emergency"


def test_the_most_urgent_comes_first_and_a_lesser_word_on_the_same_is_left_out(tell: Tell) -> None:
    case = tell("licking yes; vomiting yes count=2; energy collapsed")
    assert [f.urgency.name for f in case.findings][:2] == ["emergency", "same_day"]
    assert "vomiting-once" not in case.rules
    assert "licking" in case.rules


def test_an_unwatched_dog_without_its_cone_is_advice_and_no_case(tell: Tell) -> None:
    finding = tell("cone off unwatched").findings[0]
    assert finding.urgency == 0
    assert finding.advice is not None
    assert tell("cone off watched").findings == ()


# 102.9 °F is 39.39 °C and reads 39.4 in tenths; 104.9 °F is 40.5; 102.8 °F is 39.3.
@pytest.mark.parametrize(
    ("fahrenheit", "urgency"),
    [
        (101.5, "none"),
        (102.8, "none"),
        (102.9, "same_day"),
        (103.0, "same_day"),
        (104.8, "same_day"),
        (104.9, "emergency"),
        (105.4, "emergency"),
    ],
)
def test_temperatures_are_compared_in_tenths(tell: Tell, fahrenheit: float, urgency: str) -> None:
    celsius = (fahrenheit - 32) * 5 / 9
    assert tell(f"temperature measured celsius={celsius}").urgency == urgency

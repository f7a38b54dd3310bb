"""What is told by a comparison, a sum or a sound: the patient's own, and as grave as it is."""

from __future__ import annotations

from itertools import product

import pytest

from bot.cli.read import answer

Asked = dict[str, object]
MEASURES = ("double", "twice the size of", "triple")
OTHERS = ("the other one", "the other leg")
CRIES = ("she screamed", "she shrieked", "she howled")
SIZES = ("a golf ball", "half an orange", "a tennis ball")


def found(text: str, **told: object) -> set[tuple[str, str]]:
    """Topics and values of what is read in a reply."""
    row: Asked = {"text": text, "at": "18:00", **told}
    return {(one["about"], one["value"]) for one in answer(row)["observations"]}  # type: ignore[attr-defined]


@pytest.mark.parametrize(("measure", "other", "cry"), list(product(MEASURES, OTHERS, CRIES)))
def test_what_another_only_measures_takes_no_alarm_away(measure: str, other: str, cry: str) -> None:
    """ "Double the other one, and when I touched it she screamed": both are of the patient."""
    read = found(f"the leg is {measure} {other}, and when I touched it {cry}")
    assert ("swelling", "marked") in read
    assert ("pain", "severe") in read


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("like", ["like he has", "like he's got"])
def test_a_shape_is_told_by_its_likeness(like: str, size: str) -> None:
    """A likeness takes away what it only pretends; a size it is that tells the swelling."""
    assert ("swelling", "marked") in found(f"it is {like} {size} under the skin", asked="incision")


@pytest.mark.parametrize(
    ("said", "meant"),
    [("frew up twice", "threw up twice"), ("his mouf is blue", "his mouth is blue")],
)
def test_th_that_is_said_as_f_is_understood(said: str, meant: str) -> None:
    """ "Frew", "mouf": the same is found as in the words that were meant."""
    assert found(said) == found(meant) != set()


@pytest.mark.parametrize("hours", [13, 15, 17])
@pytest.mark.parametrize("sum_of", ["so thats what, {} hours", "so thats {} hours"])
def test_an_owners_own_sum_of_hours_stands(hours: int, sum_of: str) -> None:
    """No hour of the clock was told: how long it is, the owner has reckoned."""
    read = answer(
        {
            "text": f"he hasnt peed since before tea yesterday {sum_of.format(hours)}",
            "asked": "bathroom",
            "at": "06:19",
        }
    )
    told = [(one["value"], one.get("hours")) for one in read["observations"]]  # type: ignore[attr-defined]
    assert (told, read["urgency"]) == ([("none", hours)], "same_day")


@pytest.mark.parametrize(
    "text",
    ["never went to either bowl", "both bowls exactly as i left them", "los dos platos intactos"],
)
def test_of_both_bowls_it_is_food_and_water(text: str) -> None:
    """Nothing eaten and nothing drunk: neither takes the words from the other."""
    assert {("appetite", "none"), ("drinking", "none")} <= found(text, asked="appetite")


@pytest.mark.parametrize(
    "text",
    [
        "se mete a la arena, puja y puja, maúlla feo y no le sale ni una gotita",
        "puja y puja en la arena y llora y no le sale ni una gota",
    ],
)
def test_a_cat_that_strains_for_a_drop_strains_to_pee(text: str) -> None:
    """A drop is of water: the bare straining beside it is no stool that would explain it."""
    assert ("urine", "straining") in found(text, asked="bathroom", species="cat")


def test_four_feet_that_stand_are_no_length() -> None:
    """ "Four feet landing square" is a dog that stands, "four feet down the road" a walk."""
    assert ("weight_bearing", "full") in found("four feet landing square", asked="mobility")

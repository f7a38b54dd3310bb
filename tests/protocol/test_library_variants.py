"""A protocol that stands on another and states only what differs; the slips one may make."""

from __future__ import annotations

from datetime import date, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.model.plan import Plan
from bot.model.protocol import Activity, Protocol, Walks
from bot.plan.expected import expected_days, expected_on
from bot.protocol.checks import check_protocol
from bot.protocol.library import load_protocol, packaged_texts, protocol, protocols
from bot.protocol.problem import FlowError, Problem
from bot.protocol.variant import Change, WalksChange

ORTHO = protocol("general-orthopaedic")
MINE = """\
protocol: mine
version: 1
based_on: general-orthopaedic
title: {en: Ours, es: El nuestro}
spans: {recheck: 13, phone: 3}
walks: {cap_minutes: 20}
without: [slush-pack]
change:
  cone: {every_days: 2}
activities:
  - id: phone-us
    kind: notice
    from_day: phone
    to_day: phone
    at: [evening]
    text: {en: We will phone you today., es: Hoy le llamamos.}
    source: common practice
expected:
  - {about: massage, from_day: 0, to_day: last, text: {en: No rubs., es: Sin masaje.}, source: x}
"""


def load(text: str) -> Protocol:
    return load_protocol(text, "mine.yaml")[0]


def warnings(text: str) -> list[Problem]:
    made, tree = load_protocol(text, "mine.yaml")
    return check_protocol(made, file="mine.yaml", tree=tree)


def changed(old: str, new: str, text: str = MINE) -> str:
    assert old in text
    return text.replace(old, new, 1)


def where(text: str, spot: str) -> tuple[int, int]:
    index = text.index(spot)
    return text.count("\n", 0, index) + 1, index - text.rfind("\n", 0, index)


def plan(**more: object) -> Plan:
    return Plan.model_validate(
        {
            "patient": "Biscuit", "species": "dog", "weight_kg": 20, "procedure": "Arthrodesis",
            "surgery": date(2026, 3, 2), "home": datetime(2026, 3, 3, 10),
            "zone": "America/Denver", "protocol": "mine",
            "clinician": "Dr Example", **more,
        }
    )  # fmt: skip


# What holds.


def test_only_what_differs_is_stated_and_all_else_stays() -> None:
    mine = load(MINE)
    assert (mine.protocol, mine.version, mine.title.es) == ("mine", 1, "El nuestro")
    assert mine.spans == {**ORTHO.spans, "recheck": 13, "phone": 3}
    assert mine.walks == ORTHO.walks.model_copy(update={"cap_minutes": 20})
    before, after = ({one.id: one for one in some.activities} for some in (ORTHO, mine))
    assert before.keys() - after.keys() == {"slush-pack"}
    assert list(after)[-1] == "phone-us"  # after those of the base
    differ = [one for one in after if one in before and after[one] != before[one]]
    assert differ == ["cone"]
    assert after["cone"] == before["cone"].model_copy(update={"every_days": 2})
    said = [one for one in mine.expected if one.about != "massage"]
    assert said == [one for one in ORTHO.expected if one.about != "massage"]
    assert [one.text.en for one in mine.expected if one.about == "massage"] == ["No rubs."]
    assert warnings(MINE) == []


def test_names_of_days_that_nothing_uses_any_longer_go_too() -> None:
    mine = load(changed("[slush-pack]", "[slush-pack, cold-pack, radiographs-due]"))
    assert ORTHO.spans.keys() - mine.spans.keys() == {"ice_last", "radiographs"}


def test_what_is_taken_away_may_be_said_anew() -> None:
    mine = load(changed("id: phone-us", "id: slush-pack"))
    assert [one.text.en for one in mine.activities if one.id == "slush-pack"] == [
        "We will phone you today."
    ]


def test_a_protocol_for_one_species_leaves_the_other_s_part_out() -> None:
    text = changed("spans:", "species: [dog]\nspans:")
    mine = load(text)
    assert {one.id for one in ORTHO.activities if one.species == ("cat",)} == {
        one.id for one in ORTHO.activities
    } - {one.id for one in mine.activities} - {"slush-pack"}
    assert warnings(text) == []


def test_all_fields_of_an_activity_and_of_the_walks_can_be_changed() -> None:
    assert Change.model_fields.keys() == Activity.model_fields.keys() - {"id"}
    assert WalksChange.model_fields.keys() == Walks.model_fields.keys()


def test_a_practice_stands_on_ours_on_its_own_and_on_its_namesake(tmp_path: Path) -> None:
    (tmp_path / "mine.yaml").write_text(MINE, "utf-8")
    (tmp_path / "mine-too.yaml").write_text(
        "protocol: mine-too\nversion: 1\nbased_on: mine\nspans: {recheck: 11}\n", "utf-8"
    )
    (tmp_path / "amputation.yaml").write_text(
        "protocol: amputation\nversion: 2\nbased_on: amputation\nwalks: {outings: 5}\n", "utf-8"
    )
    found = protocols(tmp_path)
    assert found["mine-too"].spans == {**found["mine"].spans, "recheck": 11}
    assert found["amputation"].walks.outings == 5
    assert found["amputation"].activities == protocol("amputation").activities
    assert protocol("amputation").walks.outings == 3  # ours is as it was


def test_a_stage_moved_for_one_patient_moves_its_words() -> None:
    entry = (
        "  - {{about: incision, from_day: {}, to_day: {}, text: {{en: {}, es: x}}, source: x}}\n"
    )
    mine = load(
        changed("phone: 3", "phone: 3, under: 42, off: 43")
        + entry.format("0", "under", "Under the bandage.")
        + entry.format("off", "56", "Bare.")
    )
    under, bare = (one for one in mine.expected if one.about == "incision")
    assert expected_days(under, plan(), mine) == range(43)
    assert expected_days(bare, plan(), mine) == range(43, 57)
    longer = plan(spans={"under": 49, "off": 50})
    assert expected_days(under, longer, mine) == range(50)
    assert expected_on(longer, mine, ["incision"], 45) == (under.text,)
    assert expected_on(plan(), mine, ["incision", "incision"], 45) == (bare.text,)
    to_the_end = plan(spans={"last": 70})
    assert expected_on(to_the_end, mine, ["incision"], 70) == (bare.text,)
    assert expected_on(plan(spans={"last": 50}), mine, ["incision"], 51) == ()
    cats = next(one for one in mine.expected if one.species == ("cat",))
    assert expected_days(cats, plan(), mine) == range(0)


# What goes wrong.


@pytest.mark.parametrize(
    ("old", "new", "spot", "says"),
    [
        ("based_on: general-orthopaedic", "based_on: general-orthopedic", "general-orthopedic",
         "no protocol 'general-orthopedic' to stand on. Did you mean general-orthopaedic?"),
        ("based_on: general-orthopaedic", "based_on: hip", "hip", "There are: amputation, "),
        ("based_on: general-orthopaedic", "based_on: mine", "mine\ntitle", "based on itself"),
        ("based_on:", "base_on:", "base_on", "Did you mean based_on?"),
        ("[slush-pack]", "[slush-pak]", "slush-pak]",
         "general-orthopaedic has no activity 'slush-pak'. Did you mean slush-pack?"),
        ("[slush-pack]", "[slush-pack, slush-pack]", "slush-pack]", "stands here twice"),
        ("  cone: {every", "  con: {every", "con: {every", "no activity 'con'. Did you mean cone?"),
        ("  cone: {every", "  slush-pack: {every", "slush-pack: {every", "taken away in `without`"),
        ("  cone: {every", "  phone-us: {every", "phone-us: {every", "is your own"),
        ("every_days: 2", "every_dais: 2", "every_dais", "Did you mean every_days?"),
        ("every_days: 2", "at: [evenin]", "evenin]", "Did you mean evening?"),
        ("every_days: 2", "every_days: ", "}\nactivities", "`every_days` has no value"),
        ("every_days: 2", "id: conus", "id: conus", "`id` is not a known key"),
        ("cone: {every_days: 2}", "cone: {choices: []}", "cone: {choices",
         "needs choices: the buttons under its message"),
        ("cone: {every_days: 2}", "cone: {to_day: con_last}", "con_last",
         "spans does not name 'con_last'"),
        ("id: phone-us", "id: cone", "cone\n    kind",
         "general-orthopaedic already has an activity cone"),
        ("from_day: phone", "from_day: fone", "fone", "spans does not name 'fone'"),
        ("cap_minutes: 20", "cap_minutes: 200", "200", "at most 120"),
        ("about: massage", "about: masage", "masage", "Did you mean massage?"),
        ("to_day: last, text", "to_day: lst, text", "lst", "spans does not name 'lst'"),
    ],
)  # fmt: skip
def test_a_slip_is_shown_at_its_place(old: str, new: str, spot: str, says: str) -> None:
    text = changed(old, new)
    with pytest.raises(FlowError) as caught:
        load(text)
    found = [one for one in caught.value.problems if says in str(one)]
    assert found, str(caught.value)
    assert (found[0].file, found[0].line, found[0].column) == ("mine.yaml", *where(text, spot))


@pytest.mark.parametrize(
    ("old", "new", "spot", "says"),
    [
        ("recheck: 13", "recheck: 12", "12", "`recheck`, day 12 is the same in general-orthopaed"),
        ("cap_minutes: 20", "cap_minutes: 30", "30", "`cap_minutes` is the same"),
        ("every_days: 2", "at: [bedtime]", "[bedtime]", "`at` of cone is the same"),
        ("every_days: 2", "at: [evening], every_days: 1", "1}", "`every_days` of cone is the same"),
        ("every_days: 2", "", "cone: {}", "cone is changed in nothing"),
        ("spans:", "species: [dog, cat]\nspans:", "[dog, cat]", "`species` is the same"),
        ("phone: 3}", "phone: 3, sms: 4}", "4}", "nothing uses `sms`"),
        ("to_day: last, text", "to_day: 14, text", "14, text", "massage: no answer after day 14"),
    ],
)  # fmt: skip
def test_what_says_nothing_new_is_a_warning(old: str, new: str, spot: str, says: str) -> None:
    text = changed(old, new)
    found = [one for one in warnings(text) if says in str(one)]
    assert found, [str(one) for one in warnings(text)]
    assert {one.level for one in found} == {"warning"}
    assert (found[0].line, found[0].column) == where(text, spot)


def test_what_is_expected_said_again_is_a_warning() -> None:
    again = next(one for one in ORTHO.expected if one.about == "massage").model_dump_json()
    text = MINE[: MINE.index("  - {about: massage")] + f"  - {again}\n"
    assert "what is expected of massage is the same" in str(warnings(text)[0])


def test_what_only_the_two_together_do_is_shown_where_the_base_is_named() -> None:
    text = changed("every_days: 2", "at: [midday]")
    (first, *_) = [one for one in warnings(text) if "things in the midday message" in one.what]
    assert (first.line, first.column) == where(text, "general-orthopaedic")
    assert "of flows/protocols/general-orthopaedic.yaml)" in first.what


def test_a_circle_is_found(tmp_path: Path) -> None:
    for one, other in (("a", "b"), ("b", "c"), ("c", "a")):
        text = f"protocol: {one}\nversion: 1\nbased_on: {other}\n"
        (tmp_path / f"{one}.yaml").write_text(text, "utf-8")
    with pytest.raises(FlowError, match="in a circle: a → b → c → a"):
        protocols(tmp_path)


def test_three_deep_is_too_deep(tmp_path: Path) -> None:
    for one, other in (("a", "amputation"), ("b", "a")):
        text = f"protocol: {one}\nversion: 1\nbased_on: {other}\n"
        (tmp_path / f"{one}.yaml").write_text(text, "utf-8")
    with pytest.raises(FlowError) as caught:
        protocols(tmp_path)
    (found,) = caught.value.problems
    assert (Path(found.file).name, found.line, found.column) == ("b.yaml", 3, 11)
    assert "a on amputation on general-orthopaedic" in found.what
    assert found.mend == "Base it on amputation, and write here what a changes"


def test_ours_leave_the_second_step_to_a_practice() -> None:
    for _, stem, text in packaged_texts():
        assert ("based_on: general-orthopaedic" in text) == (stem != "general-orthopaedic")


def test_what_is_wrong_in_a_base_is_told_once_and_there(tmp_path: Path) -> None:
    (tmp_path / "mine.yaml").write_text(changed("version: 1", "version: one"), "utf-8")
    for one in ("x", "y"):
        text = f"protocol: {one}\nversion: 1\nbased_on: mine\n"
        (tmp_path / f"{one}.yaml").write_text(text, "utf-8")
    with pytest.raises(FlowError) as caught:
        protocols(tmp_path)
    assert [Path(one.file).name for one in caught.value.problems] == ["mine.yaml"]


@settings(max_examples=150)
@given(st.data())
def test_a_good_file_with_one_spot_changed(data: st.DataObject) -> None:
    start = data.draw(st.integers(0, len(MINE)))
    end = data.draw(st.integers(start, min(len(MINE), start + 12)))
    put = data.draw(st.text(max_size=6) | st.sampled_from([": ", "- ", "{", "[", "'", "\t", "~"]))
    text = MINE[:start] + put + MINE[end:]
    try:
        made, tree = load_protocol(text, "mine.yaml")
    except FlowError as error:
        for found in error.problems:
            assert found.file == "mine.yaml"
            assert 1 <= found.line <= text.count("\n") + text.count("\r") + 3
        return
    assert Protocol.model_validate(made.model_dump()) == made
    for found in check_protocol(made, file="mine.yaml", tree=tree):
        assert 1 <= found.line <= text.count("\n") + text.count("\r") + 3

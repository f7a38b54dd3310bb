"""A surgeon's slip in a YAML file: where it stands and how to mend it, never a traceback."""

from __future__ import annotations

import contextlib
from datetime import date, datetime, time
from pathlib import Path

import pytest
import yaml
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.model.plan import Hours, Plan
from bot.model.protocol import Protocol, Strict
from bot.model.settings import Clinic
from bot.model.text import Text
from bot.protocol.yaml_lines import (
    FlowError,
    Problem,
    load_file,
    load_model,
    load_model_bytes,
    load_tree,
)

PROTOCOL = """\
protocol: small
version: 1
title: {en: Small, es: Pequeño}
species: [dog]
spans: {last: 56, ice_last: 3}
walks: {start_minutes: 5, step_minutes: 5, cap_minutes: 30}
activities:
  - id: cold-pack
    kind: session
    asks: ice
    from_day: 1
    to_day: ice_last
    at: [morning, evening]
    text: {en: Cold pack, es: Compresa fría}
    choices:
      - {id: done, label: {en: Done, es: Hecho}, notes: [{about: ice, value: done}]}
      - {id: no, label: {en: No, es: No}}
    source: common practice
expected: []
"""

TEXT = "text: {en: Cold pack, es: Compresa fría}"

PLAN = """\
patient: Biscuit
species: dog
weight_kg: 28.5
procedure: Extracapsular repair
surgery: 2026-03-02
home: 2026-03-03 10:00
zone: America/Denver
protocol: general-orthopaedic
clinician: Dr Example
"""

CLINIC = """\
name: Example Clinic
phone: "+1 303 555 0142"
emergency_name: Example Hospital
emergency_phone: "+1 303 555 0187"
zone: America/Denver
opening: {mon: {opens: 08:00, closes: "18:00"}, tue: {opens: 09:00, closes: "12:00"}}
paging: {emergency: {again_after_minutes: 5}}
"""

HOURS = 'morning: 07:30\nquiet_from: "23:00"\n'


class Switches(Strict):
    """Words that YAML 1.1 would turn into something else."""

    on: str
    answer: str
    at: time
    ok: bool = False
    much: float = 0.0


def problems(text: str, model: type[Strict] = Protocol) -> list[Problem]:
    with pytest.raises(FlowError) as caught:
        load_model(text, "x.yaml", model)
    assert str(caught.value) == "\n".join(map(str, caught.value.problems))
    return list(caught.value.problems)


def only(text: str, model: type[Strict] = Protocol) -> Problem:
    found = problems(text, model)
    assert len(found) == 1, found
    return found[0]


def where(text: str, word: str, after: int = 0) -> tuple[int, int]:
    """Line and column of the first ``word`` from ``after`` on, counted from 1."""
    index = text.index(word, after)
    return text.count("\n", 0, index) + 1, index - (text.rfind("\n", 0, index) + 1) + 1


def test_a_good_protocol_is_read() -> None:
    loaded = load_model(PROTOCOL, "x.yaml", Protocol)
    assert loaded.activities[0].choices[1].label == Text(en="No", es="No")
    assert loaded.activities[0].at == ("morning", "evening")
    assert loaded.activities[0].to_day == "ice_last"


def test_yaml_1_1_traps_stay_what_they_say() -> None:
    read = load_model("on: off\nanswer: no\nat: 08:30\nok: true\nmuch: 3\n", "x", Switches)
    assert read == Switches(on="off", answer="no", at=time(8, 30), ok=True, much=3.0)
    assert yaml.safe_load("at: 08:30\nwhen: 12:30") == {"at": "08:30", "when": 750}  # the trap


def test_dates_and_times_of_a_plan_are_read() -> None:
    plan = load_model(PLAN, "x", Plan)
    assert (plan.surgery, plan.home) == (date(2026, 3, 2), datetime(2026, 3, 3, 10))


@pytest.mark.parametrize(
    ("text", "word", "what"),
    [
        ("morning: 8\n", "8", "`morning` must be a time of day, not '8'"),
        ("morning: 8.5\n", "8.5", "`morning` must be a time of day, not '8.5'"),
        ("morning: 8:30\n", "8:30", "`morning` must be a time of day, not '8:30'"),
        ("evening: 8 pm\n", "8 pm", "`evening` must be a time of day, not '8 pm'"),
        ("evening: 20:00Z\n", "20:00Z", "`evening` must be a time of day, not '20:00Z'"),
    ],
)
def test_a_number_is_no_time_of_day(text: str, word: str, what: str) -> None:
    found = only(text, Hours)
    assert (found.line, found.column) == where(text, word)
    assert found.what == what
    assert "08:00" in found.mend


@pytest.mark.parametrize("value", ["20260302", "1772438400", '"1772438400"'])
def test_a_number_is_no_date(value: str) -> None:
    assert "date" in only(PLAN.replace("2026-03-02", value), Plan).what


@pytest.mark.parametrize(
    ("old", "new", "spot", "says"),
    [
        ("kind: session", "kind: sesion", "sesion", "Did you mean session?"),
        ("    asks: ice", "    aks: ice", "aks", "Did you mean asks?"),
        ("asks: ice", "asks: icee", "icee", "Did you mean ice?"),
        ("to_day: ice_last", "to_day: ice_lst", "ice_lst", "does not name 'ice_lst'"),
        ("from_day: 1", "from_day: Day-1", "Day-1", "a whole number or lower-case letters"),
        ("at: [morning, evening]", "at: morning", "morning", "square brackets around it"),
        ("[morning, evening]", "[morning, evenin]", "evenin]", "Did you mean evening?"),
        ("about: ice, value: done", "about: ice, value: don", "don", "Did you mean done?"),
        ("about: ice,", "about: icy,", "icy", "Did you mean ice?"),
        ("es: Compresa fría", "es: ''", "''", "`es` is empty"),
        ("es: Compresa fría", "es: ", "}", "`es` has no value"),
        (TEXT, "text: {en: Cold}", "text:", "`es` is missing in `text`"),
        ("{en: Cold pack,", "{en: {name},", "{name}", "begins with { in quotes"),
        ("version: 1", "version: one", "one", "whole number, not 'one'"),
        ("version: 1", "version: 0", "0", "at least 1"),
        ("version: 1", "version: 1\nversion: 2", "version: 2", "twice; first on line 2"),
        ("id: cold-pack", "id: Cold Pack", "Cold Pack", "joined by hyphens"),
        ("id: done", "id: seventeenletters_", "seventeen", "at most 12"),
        ("label: {en: No,", "label: {en: 5,", "5,", 'Put it in quotes: "5"'),
        ("spans: {last: 56,", "spans: {Last-Day: 56, last: 56,", "Last-Day", "the key `Last-Day`"),
        ("version: 1", "version: &v 1", "&v", "anchor &v is not allowed"),
        ("version: 1", "version: *v", "*v", "alias *v is not allowed"),
        ("version: 1", "version: !!int 1", "!!int", "tag"),
        ("version: 1", "\tversion: 1", "\tversion", "Use spaces instead of tabs"),
        ("en: Cold pack", "en: 'Cold pack", "'Cold", "quotation mark"),
        ("source: common practice", "source: practice: common", ": common", "second colon"),
        ("source: common practice", "source: @clinic", "@clinic", "may not begin with @"),
        ("source: common practice", "source: *so* they say", "* they", "may not begin with *"),
        ("source: common practice", "sour\x07ce: x", "\x07", "invisible character (U+0007)"),
        ("expected: []", "expected: []\n---\na: b", "---", "second document"),
    ],
)  # fmt: skip
def test_a_slip_is_shown_at_its_place(old: str, new: str, spot: str, says: str) -> None:
    text = PROTOCOL.replace(old, new, 1)
    assert text != PROTOCOL
    found = only(text)
    assert says in str(found)
    assert (found.line, found.column) == where(text, spot, PROTOCOL.index(old))


def test_all_problems_of_a_file_come_at_once_in_its_order() -> None:
    text = (
        PROTOCOL.replace("version: 1", "version: x")
        .replace("[dog]", "[dgo]")
        .replace("expected: []", "expected: []\nversion: 3\nextra: 1")
    )
    assert [(found.line, found.column) for found in problems(text)] == [
        where(text, "x\ntitle"), where(text, "dgo"), where(text, "version: 3"),
        where(text, "extra"),
    ]  # fmt: skip


def test_a_wrong_file_is_not_told_line_by_line_for_ever() -> None:
    text = "".join(f"key{number}: 1\n" for number in range(5_000))
    found = problems(text)
    assert len(found) <= 60
    assert "more problems follow" in str(found[-1]) or "more problems follow" in str(found)


@pytest.mark.parametrize("text", ["", "  \n\n", "# only a comment\n", "---\n"])
def test_an_empty_file(text: str) -> None:
    assert any(word in str(problems(text)) for word in ("empty", "keys with values"))


@pytest.mark.parametrize("text", ["- a\n- b\n", "just words\n", "5\n"])
def test_not_a_mapping(text: str) -> None:
    assert "must hold keys with values" in only(text).what


def test_a_bomb_of_aliases_is_refused_before_it_grows() -> None:
    lines = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
    lines += [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 40)]
    assert "anchor &a0 is not allowed" in only("\n".join(lines)).what
    assert "anchor" in only("a: &a [*a]").what


def test_a_deep_file_is_refused() -> None:
    assert "too deep" in only("a: " + "[" * 500 + "]" * 500).what
    assert "too deep" in only("".join(" " * n + "a:\n" for n in range(200))).what
    only("a: " + "[" * 100_000)


def test_a_long_file_is_refused(tmp_path: Path) -> None:
    assert "too long" in only("# " + "é" * 600_000).what
    long = tmp_path / "long.yaml"
    with long.open("wb") as file:
        file.truncate(50_000_000)
    with pytest.raises(FlowError, match="too long"):
        load_file(long, Protocol)


def test_bytes_that_are_not_utf_8() -> None:
    data = PROTOCOL.encode().replace("Pequeño".encode(), "Pequeño".encode("latin-1"))
    with pytest.raises(FlowError) as caught:
        load_model_bytes(data, "x.yaml", Protocol)
    found = caught.value.problems[0]
    assert (found.line, found.column) == where(PROTOCOL, "ño")
    assert "UTF-8" in found.mend


def test_a_byte_order_mark_and_windows_lines_do_no_harm() -> None:
    data = b"\xef\xbb\xbf" + PROTOCOL.replace("\n", "\r\n").encode()
    assert load_model_bytes(data, "x", Protocol) == load_model(PROTOCOL, "x", Protocol)


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    for path in (tmp_path / "no.yaml", tmp_path, Path("a\0b")):
        with pytest.raises(FlowError, match="cannot be read"):
            load_file(path, Protocol)


def test_a_problem_prints_as_editors_expect() -> None:
    found = Problem("flows/a.yaml", 3, 7, "`kind` is missing", "Add it")
    assert str(found) == "flows/a.yaml:3:7: `kind` is missing. Add it."
    assert str(Problem("a", 1, 1, "short", level="warning")) == "a:1:1: warning: short."


# Only FlowError ever comes out, and only what the models allow goes in.

GOOD: list[tuple[str, type[Strict]]] = [
    (PROTOCOL, Protocol),
    (PLAN, Plan),
    (CLINIC, Clinic),
    (HOURS, Hours),
]
CLOCKS = ["08:00", "08:00Z", "25:00", "8", "1772438400", "2026-03-02", "2026-03-02T08:00+01:00",
          "9999-12-31", "0001-01-01T00:00", "24:00", "08:00:00.5", "-1", "1e9"]  # fmt: skip
MODELS = (Protocol, Plan, Clinic, Hours, Switches)
plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=12),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=8), inner),
    max_leaves=12,
)


def never_but_flow_error(text: str, model: type[Strict]) -> None:
    try:
        made, _ = load_tree(text, "fuzz.yaml", model)
    except FlowError as error:
        lines = text.count("\n") + text.count("\r") + 3
        for found in error.problems:
            assert 1 <= found.line <= lines
            assert found.column >= 1
            assert "pydantic" not in str(found)
        return
    assert model.model_validate(made.model_dump()) == made


@settings(max_examples=300, deadline=None)
@given(st.text(max_size=200), st.sampled_from(MODELS))
@example("a: *x\n\tb: &y [", Protocol)
@example("? [a]\n: {b\n", Hours)
@example("%YAML 9.9\n---\na: b", Hours)
@example("morning: \x85", Hours)
def test_any_text(text: str, model: type[Strict]) -> None:
    never_but_flow_error(text, model)


@settings(max_examples=200, deadline=None)
@given(st.binary(max_size=200), st.sampled_from(MODELS))
def test_any_bytes(data: bytes, model: type[Strict]) -> None:
    with contextlib.suppress(FlowError):
        load_model_bytes(data, "fuzz.yaml", model)


@settings(max_examples=300, deadline=None)
@given(st.data())
def test_a_good_file_with_one_spot_changed(data: st.DataObject) -> None:
    text, model = data.draw(st.sampled_from(GOOD))
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, min(len(text), start + 12)))
    put = data.draw(st.text(max_size=6) | st.sampled_from([": ", "- ", "{", "[", "'", "\t", "~"]))
    never_but_flow_error(text[:start] + put + text[end:], model)


@settings(max_examples=400, deadline=None)
@given(st.data())
def test_a_good_file_with_any_value_in_it(data: st.DataObject) -> None:
    text, model = data.draw(st.sampled_from(GOOD))
    source = yaml.safe_load(text)
    spot, key = source, data.draw(st.sampled_from(sorted(source)))
    while isinstance(spot[key], dict | list) and spot[key] and data.draw(st.booleans()):
        spot = spot[key]
        key = data.draw(st.sampled_from(list(spot) if isinstance(spot, dict) else range(len(spot))))
    spot[key] = data.draw(plain | st.sampled_from(CLOCKS))
    never_but_flow_error(yaml.safe_dump(source, allow_unicode=True, default_style='"'), model)
    never_but_flow_error(yaml.safe_dump(source, allow_unicode=True), model)

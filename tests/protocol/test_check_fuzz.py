"""Bad files of every kind: never a crash, and nothing accepted that the models forbid."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from bot.cli import check
from bot.cli.checking import check_file
from bot.cli.schemas import KINDS, schemas
from bot.model.protocol import Strict
from bot.protocol.problem import FlowError, Problem
from bot.protocol.yaml_lines import load_tree
from bot.protocol.yaml_tree import read_tree
from bot.triage import default_rules
from bot.triage.overlay import overlaid

FLOWS = Path(__file__).resolve().parents[2] / "flows"
OVERLAY = """\
version: 1
over_version: 1
change:
  swelling-marked: {after_day: 5, examples: [{said: [{about: pain, value: none}], day: 1, gives: none}]}
  seizure: {species: [dog], why: x}
  leg-unused: {to_day: , advice: {en: a, es: b}}
silence: {silent: {hours: 36}}
without: {licking: x, mishap: }
add:
  - {id: own, urgency: none, matter: pain, when: {about: pain}, because: {en: a, es: b}}
advice: {next_day: {en: a, es: b}}
words: {pain: {none: {en: a, es: b}}}
"""  # noqa: E501
OWN_WORDS = """\
words: {thanks: {en: a, es: b}, noted: {en: "{what}", es: "{what}"}}
seen: {pain: {none: {en: a, es: b}}}
"""
SOURCES = {
    "protocol": FLOWS / "protocols/general-orthopaedic.yaml",
    "protocol-variant": FLOWS / "protocols/joint-fusion-bandage.yaml",
    "red-flags": FLOWS / "red-flags.yaml",
    "holds": FLOWS / "holds.yaml",
    "words": FLOWS / "words.yaml",
    "answers": FLOWS / "answers.yaml",
    "doubts": FLOWS / "doubts.yaml",
    "medicines": FLOWS / "medicines.yaml",
    "clinic": FLOWS / "clinic-example.yaml",
    "order": FLOWS / "enrolment-example.yaml",
}
TEXTS = {name: path.read_text("utf-8") for name, path in SOURCES.items()}
RULES = TEXTS["red-flags"]
TEXTS["red-flags"] = (  # some of the rules: those of vomiting to those of the stool
    "version: 1\nrules:\n"
    + RULES[RULES.index("  - id: vomiting-twice") : RULES.index("  - id: urine-straining")]
    + RULES[RULES.index("# Nothing heard at all") :]
)
HOLDS = TEXTS["holds"]
TEXTS["holds"] = (  # by mouth, double dose, the leg
    HOLDS[HOLDS.index("version: 1") : HOLDS.index("  - id: bloated")]
    + HOLDS[HOLDS.index("  - id: dose-doubled") : HOLDS.rindex("  # ---")]
)
ORTHO = TEXTS["protocol"]
TEXTS["protocol"] = (  # packs, massage, walks; what is expected of bruises
    ORTHO[: ORTHO.index("  # ---- Rest in a small room")]
    + ORTHO[ORTHO.index("expected:") : ORTHO.index("  - about: swelling\n")]
)
SAID = TEXTS["words"]
TEXTS["words"] = "words: {thanks: {en: a, es: b}}\n" + SAID[SAID.index("\nseen:") :]
TEXTS |= {"own-red-flags": OVERLAY, "own-words": OWN_WORDS}
EDITORS = {
    name.removesuffix(".schema.json"): Draft202012Validator(schema) for name, schema in schemas()
}
PLAIN = st.recursive(
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=8)
    | st.sampled_from(["", "{", "{name}", "{0}", "yes", "9" * 400, "08:00", "none", -1, 1e308]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=6), inner),
    max_leaves=8,
)
LIMITED = settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])


def test_every_kind_of_file_is_tried() -> None:
    assert TEXTS.keys() == KINDS.keys()


def judged(text: str, kind: str) -> None:
    """The file is refused with places and plain words, or is what its model allows; what is
    taken, no editor marks as wrong."""
    model: type[Any] = KINDS[kind][0]
    lines = text.count("\n") + text.count("\r") + 3
    for one in check_file(text, "fuzz.yaml"):
        if isinstance(one, Problem):
            assert 1 <= one.line <= lines
            assert one.column >= 1
            assert one.what.strip()
            assert "pydantic" not in str(one)
            assert "Traceback" not in str(one)
    try:
        made, _ = load_tree(text, "fuzz.yaml", model)
    except FlowError:
        return
    assert model.model_validate(made.model_dump(by_alias=True, exclude_unset=True)) == made
    refused = [one.json_path for one in EDITORS[kind].iter_errors(read_tree(text, "x")[0].value)]
    assert refused == []


@pytest.mark.parametrize("kind", KINDS)
def test_the_good_file_is_good(kind: str) -> None:
    load_tree(TEXTS[kind], "x.yaml", KINDS[kind][0])
    judged(TEXTS[kind], kind)


@pytest.mark.parametrize("kind", KINDS)
@LIMITED
@given(data=st.data())
def test_a_spot_of_the_text_changed(kind: str, data: st.DataObject) -> None:
    text = TEXTS[kind]
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, min(len(text), start + 12)))
    put = data.draw(st.text(max_size=6) | st.sampled_from([": ", "- ", "{", "[", "\t", "~", "&a"]))
    judged(text[:start] + put + text[end:], kind)


@pytest.mark.parametrize("kind", KINDS)
@LIMITED
@given(data=st.data())
def test_any_value_in_any_place(kind: str, data: st.DataObject) -> None:
    """Values are exchanged, taken away and added at every depth."""
    source = yaml.load(TEXTS[kind], Loader=yaml.BaseLoader)  # noqa: S506  texts alone
    spot, key = source, data.draw(st.sampled_from(sorted(source)))
    while isinstance(spot[key], dict | list) and spot[key] and data.draw(st.integers(0, 3)):
        spot = spot[key]
        key = data.draw(st.sampled_from(list(spot) if isinstance(spot, dict) else range(len(spot))))
    act: Callable[[], None] = data.draw(
        st.sampled_from([lambda: _put(spot, key, data), lambda: spot.__delitem__(key)])
    )
    act()
    written = yaml.dump(source, Dumper=_Plain, allow_unicode=True, sort_keys=False)
    judged(written, kind)


def _put(spot: Any, key: Any, data: st.DataObject) -> None:
    if isinstance(spot, dict) and data.draw(st.booleans()):
        spot[data.draw(st.text(min_size=1, max_size=8))] = data.draw(PLAIN)
    else:
        spot[key] = data.draw(PLAIN)


class _Plain(yaml.SafeDumper):
    """Writes ``5`` and ``yes`` as they stood, without quotes."""

    def choose_scalar_style(self) -> Any:
        style = super().choose_scalar_style()
        event: Any = self.event
        plain = event.value and self.analysis is not None and self.analysis.allow_block_plain
        return "" if plain and style == "'" and not self.flow_level else style

    def ignore_aliases(self, data: object) -> bool:
        return True


@LIMITED
@given(st.dictionaries(st.sampled_from(["after_day", "to_day"]), st.integers(-3, 90)),
       st.sampled_from([rule.id for rule in default_rules().file.rules]))  # fmt: skip
def test_no_overlay_makes_what_a_whole_file_may_not_hold(days: dict[str, int], name: str) -> None:
    fields = "".join(f"    {key}: {value}\n" for key, value in days.items())
    text = f"version: 1\nchange:\n  {name}:\n    why: x\n{fields}"
    try:
        made = overlaid(default_rules(), text, "own.yaml")
    except FlowError as error:
        lines = [one.line for one in error.problems]
    else:
        lines = [3]
        model: type[Strict] = type(made.file)
        assert model.model_validate(made.file.model_dump(exclude_unset=True)) == made.file
    assert min(lines) >= 3


# What is made to hurt.

BOMB = "\n".join(
    ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
    + [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 40)]
)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (BOMB, "1:5: the anchor &a0 is not allowed"),
        ("rules: &r [*r]", "1:8: the anchor &r is not allowed"),
        ("rules: *r", "1:8: the alias *r is not allowed"),
        ("words:\n\ta: b", "2:1: a tab stands in the space before the words"),
        ("version: 1\nrules: []\nversion: 2\n", "3:1: `version` stands here twice; first on"),
        ("change: {mishap: {to_day: 1}, mishap: {to_day: 2}}", "1:31: `mishap` stands here twice"),
        ("rules: " + "[" * 500 + "]" * 500, "lie too deep in each other"),
        ("rules: !!python/object/apply:os.system [ls]", "1:8: the tag"),
        ("<<: {rules: []}\nrules: []", "`<<` is not a known key"),
        ("rules: " + "9" * 100_000, "must be a list"),
    ],
)  # fmt: skip
def test_a_trap_is_a_clear_error(text: str, says: str, tmp_path: Path) -> None:
    said = [str(one) for one in check_file(text, "x.yaml")]
    assert any(f"x.yaml:{says}" in line or says in line for line in said), said
    assert all(len(line) < 1_000 for line in said)


def test_a_long_file_is_refused_unread(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "long.yaml"
    with path.open("wb") as file:
        file.write(b"rules:\n" + b"- {id: a}\n" * 5_000_000)
    started = time.process_time()
    assert check.main([str(path)]) == 1
    assert time.process_time() - started < 5  # not a timing: 50 MB parsed would take minutes
    shown = capsys.readouterr().out
    assert "long.yaml:1:1: the file is too long. Keep it under 1 MB" in shown

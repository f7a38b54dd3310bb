"""What editors complete by: JSON Schemas that are current, and that our files fit."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from bot.cli import check
from bot.cli.schemas import KINDS, schemas
from bot.model.vocabulary import TOPICS
from bot.protocol.schema import written
from bot.protocol.yaml_tree import read_tree

FLOWS = Path(__file__).resolve().parents[2] / "flows"
FILES = sorted(FLOWS.rglob("*.yaml"))


def validator(name: str) -> Draft202012Validator:
    return Draft202012Validator(json.loads((FLOWS / "schema" / name).read_text("utf-8")))


def complaints(name: str, text: str) -> list[str]:
    tree, _ = read_tree(text, "x.yaml")
    return [one.json_path for one in validator(name).iter_errors(tree.value)]


@pytest.mark.parametrize(("name", "schema"), list(schemas()), ids=KINDS)
def test_a_schema_is_valid_and_the_copy_in_flows_is_current(
    name: str, schema: dict[str, Any]
) -> None:
    Draft202012Validator.check_schema(schema)
    copy = (FLOWS / "schema" / name).read_text("utf-8")
    assert copy == written(schema), "renew it: slowleash check --schema flows/schema"


def test_no_schema_is_left_over() -> None:
    here = {path.name for path in (FLOWS / "schema").iterdir()}
    assert here == {f"{name}.schema.json" for name in KINDS}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_file_names_its_schema_in_its_first_line_and_fits_it(path: Path) -> None:
    text = path.read_text("utf-8")
    first = text.splitlines()[0]
    start = "# yaml-language-server: $schema="
    assert first.startswith(start)
    schema = (path.parent / first.removeprefix(start)).resolve()
    assert schema.is_relative_to(FLOWS / "schema")
    assert complaints(schema.name, text) == []


@pytest.mark.parametrize(
    ("path", "old", "new", "where"),
    [
        ("red-flags.yaml", "when: {about: gums, value: [pale, blue]}",
         "when: {about: gums, value: [pale, bleu]}", "$.rules[1].when.value"),
        ("red-flags.yaml", "urgency: emergency", "urgency: emergncy", "$.rules[0].urgency"),
        ("red-flags.yaml", "matter: gums", "matter: gumms", "$.rules[1].matter"),
        ("red-flags.yaml", "trend: worse}\n    after_day", "trend: wurse}\n    after_day", "trend"),
        ("protocols/general-orthopaedic.yaml", "asks: ice", "asks: icee", "asks"),
        ("protocols/general-orthopaedic.yaml", "{about: ice, value: done}",
         "{about: ice, value: given}", "notes[0].value"),
        ("protocols/general-orthopaedic.yaml", "kind: session", "kind: sesion", "kind"),
        ("clinic-example.yaml", "language: en", "language: fr", "language"),
        ("enrolment-example.yaml", "species: dog", "species: dogs", "species"),
        ("words.yaml", "  thanks: {en:", "  thanks: {e:", "thanks"),
    ],
)  # fmt: skip
def test_a_slip_is_seen_by_the_schema_too(path: str, old: str, new: str, where: str) -> None:
    text = (FLOWS / path).read_text("utf-8")
    assert old in text
    schema = text.splitlines()[0].rpartition("/")[2]
    assert any(where in found for found in complaints(schema, text.replace(old, new, 1)))


def test_the_vocabulary_is_offered_topic_by_topic() -> None:
    schema = dict(schemas())["red-flags.schema.json"]
    said = schema["$defs"]["Said"]
    assert said["properties"]["about"]["enum"] == list(TOPICS)
    branch = next(one for one in said["allOf"] if one["if"]["properties"]["about"]["const"]
                  == "gums")  # fmt: skip
    assert branch["then"]["properties"]["value"] == {"enum": ["pink", "pale", "blue", "yellow"]}


def test_a_clinics_own_rules_complete_by_the_names_of_ours() -> None:
    schema = dict(schemas())["own-red-flags.schema.json"]
    assert {"swelling-marked", "licking"} <= set(schema["properties"]["change"]["properties"])
    good = "version: 1\nchange: {swelling-marked: {after_day: 5}}\nwithout: {licking: }\n"
    assert complaints("own-red-flags.schema.json", good) == []
    bad = good.replace("after_day", "after")
    assert set(complaints("own-red-flags.schema.json", bad)) == {"$.change['swelling-marked']"}


def test_the_command_writes_them(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "new" / "schema"
    assert check.main(["--schema", str(folder)]) == 0
    assert capsys.readouterr().out.count(".schema.json") == len(KINDS)
    assert {path.name: path.read_text("utf-8") for path in folder.iterdir()} == {
        name: written(schema) for name, schema in schemas()
    }

"""A practice's own folder goes before ours, and a bad one stops the start."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.model.settings import Clinic
from bot.protocol.problem import FlowError
from bot.service.practice import open_practice
from tests.service.box import CLINIC


def test_own_words_rules_and_protocols_go_before_ours(tmp_path: Path) -> None:
    (tmp_path / "words.yaml").write_text(
        'words:\n  thanks: {en: "Any time.", es: "Cuando quiera."}\n', encoding="utf-8"
    )
    (tmp_path / "red-flags.yaml").write_text(
        "version: 1\nchange:\n  drinking-more:\n    urgency: same_day\n    examples:\n"
        "      - {said: [{about: drinking, value: more}], day: 21, gives: same_day}\n",
        encoding="utf-8",
    )
    (tmp_path / "protocols").mkdir()
    (tmp_path / "protocols" / "house-plate.yaml").write_text(
        "protocol: house-plate\nversion: 1\nbased_on: fracture-plate\n"
        "title: {en: Our plates, es: Nuestras placas}\nspans: {cone_last: 10}\n",
        encoding="utf-8",
    )
    practice = open_practice(Clinic.model_validate(CLINIC), tmp_path, "bot", b"x" * 32)
    assert practice.words.say("thanks", "en") == "Any time."
    assert practice.words.say("undo_nothing", "es").startswith("No hay nada")
    assert practice.protocols["house-plate"].spans["cone_last"] == 10
    assert "general-orthopaedic" in practice.protocols


def test_a_bad_folder_stops_the_start_with_the_line(tmp_path: Path) -> None:
    (tmp_path / "words.yaml").write_text(
        'words:\n  thakns: {en: "Any time.", es: "Cuando quiera."}\n', encoding="utf-8"
    )
    with pytest.raises(FlowError, match=r"words\.yaml:2:3"):
        open_practice(Clinic.model_validate(CLINIC), tmp_path, "bot", b"x" * 32)

"""Nothing that leaves acts on a terminal, or shows words in another order than they stand."""

from __future__ import annotations

import json
import unicodedata

from hypothesis import given
from hypothesis import strategies as st

from bot.model.harmless import harmless, harmless_json, harmless_value

BIDI = ("LRE", "RLE", "PDF", "LRO", "RLO", "LRI", "RLI", "FSI", "PDI")


def acts(text: str) -> list[str]:
    """The characters of ``text`` that act, by the tables of Unicode."""
    return [
        one
        for one in text.replace("\r\n", "\n")
        if (unicodedata.category(one) in ("Cc", "Cs", "Zl", "Zp") and one not in "\t\n")
        or unicodedata.bidirectional(one) in BIDI
        or one in "\u061c\u200e\u200f"
    ]


@given(st.text(st.characters()))
def test_what_acts_is_left_out_and_what_is_seen_stays(text: str) -> None:
    clean = harmless(text)
    assert acts(clean) == []
    assert harmless(clean) == clean
    seen = [one for one in text if unicodedata.category(one)[0] in "LMNPS"]
    assert [one for one in clean if unicodedata.category(one)[0] in "LMNPS"] == seen


def test_joined_emoji_and_the_ends_of_lines_of_tables_stay() -> None:
    text = "👩\u200d⚕️ said:\r\n\tone\ttwo\n"
    assert harmless(text) == text


@given(st.dictionaries(st.text(), st.lists(st.text() | st.integers())))
def test_json_is_cleaned_within_its_escapes(value: dict[str, list[str | int]]) -> None:
    clean = json.loads(harmless_json(json.dumps(value)))
    assert clean == harmless_value(value)
    assert all(acts(one) == [] for row in clean.values() for one in row if isinstance(one, str))

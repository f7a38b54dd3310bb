"""A number of thousands of digits in an order is refused like any other mistake."""

from __future__ import annotations

import re
from contextlib import suppress
from datetime import date

import pytest

from bot.desk.patients import ORDER_EXAMPLE
from bot.plan.order import read_order
from bot.protocol.library import protocols
from bot.protocol.yaml_lines import FlowError

SIGS = """
  - name: gabapentin 100 mg
    sig: 1 1/2 caps q8h prn pain x 14 doses
    first_dose: 2026-03-04 20:00
  - {name: trazodone 100 mg, sig: "1/2 tab q12h x 7 days prn anxiety",
     first_dose: 2026-03-04 20:00}
"""
NINES = "9" * 5000
PLACES = [
    (text, found.span())
    for text in (ORDER_EXAMPLE, ORDER_EXAMPLE.rstrip() + SIGS)
    for found in re.finditer(r"\d+", text)
]


@pytest.mark.parametrize("digits", [NINES, "²", "٣" * 5000], ids=["nines", "raised", "arabic"])
def test_every_number_of_an_order(digits: str) -> None:
    for text, (start, end) in PLACES:
        changed = text[:start] + digits + text[end:]
        with suppress(FlowError):  # or taken: a phone number may be of any digits
            read_order(changed, "order", protocols(), date(2026, 3, 3))


def test_as_they_are_they_are_taken() -> None:
    for text, _ in PLACES:
        assert read_order(text, "order", protocols(), date(2026, 3, 3))[0].patient == "Biscuit"

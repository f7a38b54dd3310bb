"""Orders in the shorthand that staff write (common practice), English and Spanish."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Reason, Route
from bot.plan.sig import Sig, SigError, parse_sig
from bot.plan.sig_words import Unit

HALF = Fraction(1, 2)


@pytest.mark.parametrize(
    ("written", "parts"),
    [
        ("1.5 tab PO q12h x 7d",
         {"amount": 3 * HALF, "unit": "tablet", "route": "mouth", "every_hours": 12, "days": 7}),
        ("1 cap BID", {"amount": 1, "unit": "capsule", "every_hours": 12}),
        ("SID", {"every_hours": 24}),
        ("BID", {"every_hours": 12}),
        ("TID", {"every_hours": 8}),
        ("QID", {"every_hours": 6}),
        ("EOD", {"every_hours": 48}),
        ("q8h", {"every_hours": 8}),
        ("q 8 hrs", {"every_hours": 8}),
        ("q2d", {"every_hours": 48}),
        ("q24h x 5 days", {"every_hours": 24, "days": 5}),
        ("PRN", {"as_needed": True}),
        ("1/2 tab", {"amount": HALF, "unit": "tablet"}),
        ("½ tab", {"amount": HALF, "unit": "tablet"}),
        ("1½ tabs", {"amount": 3 * HALF, "unit": "tablet"}),
        ("1-1/2 tab", {"amount": 3 * HALF, "unit": "tablet"}),
        ("half a tablet", {"amount": HALF, "unit": "tablet"}),
        ("0.8 ml PO q24h",
         {"amount": Fraction(4, 5), "unit": "ml", "route": "mouth", "every_hours": 24}),
        ("0,5 mL q24h", {"amount": HALF, "unit": "ml", "every_hours": 24}),
        ("20 mg q12h", {"amount": 20, "unit": "mg", "every_hours": 12}),
        ("2 caps q12h until gone (20)",
         {"amount": 2, "unit": "capsule", "every_hours": 12, "quantity": 20}),
        ("2 caps q12h #20", {"amount": 2, "unit": "capsule", "every_hours": 12, "quantity": 20}),
        ("with food", {"with_food": True}),
        ("Give 1 tablet by mouth twice daily with meals for 2 weeks.",
         {"amount": 1, "unit": "tablet", "route": "mouth", "every_hours": 12, "days": 14,
          "with_food": True}),
        ("1 chew once daily", {"amount": 1, "unit": "chew", "every_hours": 24}),
        ("2 gtt both eyes TID x5d",
         {"amount": 2, "unit": "drop", "route": "eyes", "every_hours": 8, "days": 5}),
        ("1 cap q8h PRN for pain x 3d",
         {"amount": 1, "unit": "capsule", "every_hours": 8, "days": 3, "as_needed": True,
          "needed_for": "pain"}),
        ("1 tab PO once",
         {"amount": 1, "unit": "tablet", "route": "mouth", "every_hours": 24, "doses": 1}),
        ("1 tab TID x 10 doses", {"amount": 1, "unit": "tablet", "every_hours": 8, "doses": 10}),
        # Spanish
        ("1 tab c/12h por 7 días", {"amount": 1, "unit": "tablet", "every_hours": 12, "days": 7}),
        ("cada 8 horas", {"every_hours": 8}),
        ("1 tableta y media VO c/ 12 hrs con comida",
         {"amount": 3 * HALF, "unit": "tablet", "route": "mouth", "every_hours": 12,
          "with_food": True}),
        ("media tableta al día", {"amount": HALF, "unit": "tablet", "every_hours": 24}),
        ("Dar 2 cápsulas vía oral dos veces al día durante 10 días",
         {"amount": 2, "unit": "capsule", "route": "mouth", "every_hours": 12, "days": 10}),
        ("1 comprimido cada 24 hs por una semana",
         {"amount": 1, "unit": "tablet", "every_hours": 24, "days": 7}),
        ("1 cáps cada 8 h si hace falta para el dolor",
         {"amount": 1, "unit": "capsule", "every_hours": 8, "as_needed": True,
          "needed_for": "pain"}),
        ("2 cápsulas c/12h hasta terminar (20)",
         {"amount": 2, "unit": "capsule", "every_hours": 12, "quantity": 20}),
        ("un día sí y otro no", {"every_hours": 48}),
    ],
)  # fmt: skip
def test_shorthand(written: str, parts: dict[str, Any]) -> None:
    assert parse_sig(written) == Sig(**parts)
    assert parse_sig(written.upper()) == Sig(**parts)


@pytest.mark.parametrize(
    ("written", "what", "mend"),
    [
        ("1 tab q12hh", "'q12hh' is no interval", "write q12h or BID"),
        ("1 tab q8-12h", "range, no interval", "write one"),
        ("1-2 tab q8h", "range, no dose", "write one amount"),
        ("1 to 2 caps q8h", "range, no dose", "write one amount"),
        ("1 tab OD", "once a day or the right eye", "write SID or q24h"),
        ("5 cc q12h", "cc", "write ml"),
        ("1 tsp q12h", "a spoon is no measure", "write ml"),
        ("1 tab BID q8h", "8 and 12", "keep one"),
        ("1 tab 2 caps q8h", "two amounts|amounts, 1 and 2", "write one|keep one"),
        ("1 tab BID until gone", "how many there are", r"until gone \(20\)"),
        ("3 caps BID until gone (20)", "whole doses of 3", "write the days"),
        ("20 mg BID until gone (20)", "needs an amount", "write it"),
        ("1 tab BID x 7d x 14 doses", "twice how long", "keep"),
        ("1 tab BID x 7", "days or doses is not said", "x 7d"),
        ("1 tab q2h", "every 2 hours is out of reach", "4 to 168"),
        ("1 tab q24h x 0 d", "days is 0", "how long"),
        ("1 tab q12h x 3d then q24h x 3d", "two things", "keep one"),
        ("1 tab as directed", "does not say how", "amount and interval"),
        ("10 mg/kg q12h", "'10 mg/kg' is not understood", "write it as in"),
        ("1 tab sublingually q12h", "'sublingually' is not understood", "write it as in"),
        ("", "empty", "write it"),
        ("1 tab q12h " * 40, "longer than 200", "only how to give it"),
    ],
)
def test_what_may_be_misread_is_refused_with_its_mend(written: str, what: str, mend: str) -> None:
    with pytest.raises(SigError, match=what) as caught:
        parse_sig(written)
    assert re.search(mend, caught.value.mend)


@st.composite
def sigs(draw: st.DrawFn) -> Sig:
    unit = draw(st.sampled_from([None, *get_args(Unit)]))
    amount = None
    if unit in ("ml", "mg"):
        amount = Fraction(draw(st.integers(1, 20_000)), 100)
    elif unit:
        amount = Fraction(draw(st.integers(1, 60)), draw(st.sampled_from([1, 2, 3, 4])))
    long = draw(st.sampled_from(["", "days", "doses", "quantity"]))
    number = draw(st.integers(1, 90))
    how_long: dict[str, Any] = {}
    if long == "quantity" and amount is not None and unit != "mg":
        how_long = {"quantity": amount * number}
    elif long in ("days", "doses"):
        how_long = {long: number}
    as_needed = draw(st.booleans())
    return Sig(
        amount=amount,
        unit=unit,
        route=draw(st.sampled_from([None, *get_args(Route)])),
        every_hours=draw(st.none() | st.integers(4, 168)),
        as_needed=as_needed,
        needed_for=draw(st.sampled_from([None, *get_args(Reason)])) if as_needed else None,
        with_food=draw(st.booleans()),
        **how_long,
    )


@given(sigs())
def test_what_is_written_is_read_back(sig: Sig) -> None:
    if sig == Sig():
        assert sig.written() == ""
        return
    assert parse_sig(sig.written()) == sig
    assert parse_sig(sig.written().upper()) == sig


PIECES = """
1 1/2 2.5 ½ - tab caps ml mg PO VO q12h qq c/8h BID TID x 7d 0 99999999999 until gone ( ) # 20 PRN
pain with food con comida cada horas por días once y media , . ; : / × ñ 🐶 \u0301 {x}
""".split()


@given(st.lists(st.sampled_from(PIECES), max_size=14).map(" ".join) | st.text(max_size=60))
def test_any_line_is_read_or_refused_in_words(line: str) -> None:
    refused: SigError | None = None
    try:
        sig = parse_sig(line)
    except SigError as error:
        refused = error
    if refused is None:
        assert parse_sig(sig.written()) == sig
    else:
        assert refused.what
        assert refused.mend

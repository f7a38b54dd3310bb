"""What the words of an amount say: two languages and the figures of one order are one dose."""

from __future__ import annotations

from datetime import date, datetime
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from num2words import num2words  # type: ignore[import-untyped]

from bot.model.plan import Medicine
from bot.model.quantity import Quantity
from bot.model.text import LANGS, Lang, Text
from bot.plan.amount_reader import said
from bot.plan.amount_words import Measure
from bot.plan.amounts import slips
from bot.plan.order import load_medicine, load_plan, read_order
from bot.protocol.library import protocols
from bot.protocol.problem import FlowError

HALF = Fraction(1, 2)
TODAY = date(2026, 3, 4)


def medicine(en: str, es: str, **figures: Any) -> Medicine:
    return Medicine.model_validate(
        {"name": "carprofen", "amount": {"en": en, "es": es}, "every_hours": 12, "days": 5,
         "first_dose": datetime(2026, 3, 4, 20), **figures}
    )  # fmt: skip


@pytest.mark.parametrize(
    ("lang", "words", "told"),
    [
        ("en", "two tablets (100 mg)", {"solid": [2], "mg": [100]}),
        ("es", "una tableta (50 mg)", {"solid": [1], "mg": [50]}),
        ("en", "one and a half tablets", {"solid": [3 * HALF]}),
        ("en", "one tablet and a half", {"solid": [3 * HALF]}),
        ("en", "1 1/2 tabs", {"solid": [3 * HALF]}),
        ("en", "1½ tabs", {"solid": [3 * HALF]}),
        ("en", "½ tab", {"solid": [HALF]}),
        ("en", "1/2 a tablet", {"solid": [HALF]}),
        ("en", "half of one tablet", {"solid": [HALF]}),
        ("en", "one half tablet", {"solid": [HALF]}),
        ("en", "three quarters of a tablet", {"solid": [Fraction(3, 4)]}),
        ("en", "half a 100 mg tablet (50 mg)", {"solid": [HALF], "mg": [50, 100]}),
        ("en", "a capsule", {"solid": [1]}),
        ("en", "a couple of the small white capsules", {"solid": [2]}),
        ("en", "thirty-five mg", {"mg": [35]}),
        ("en", "one hundred and fifty milligrams", {"mg": [150]}),
        ("en", "0.1 g", {"mg": [100]}),
        ("en", "1,000 mg", {"mg": [1000]}),
        ("en", "1 mL (1.5 mg/mL) every 12 hours for 7 days", {"ml": [1]}),
        ("en", "0.8ml of 50 mg per 5 ml", {"ml": [Fraction(4, 5)]}),
        ("en", "one tablet once a day, 3 times, at 8", {"solid": [1]}),
        ("es", "una tableta y media", {"solid": [3 * HALF]}),
        ("es", "una y media tabletas", {"solid": [3 * HALF]}),
        ("es", "tableta y media", {"solid": [3 * HALF]}),
        ("es", "2 tabletas masticables y media", {"solid": [5 * HALF]}),
        ("es", "1 tableta y 1/2", {"solid": [3 * HALF]}),
        ("es", "MEDIA TABLETA", {"solid": [HALF]}),
        ("es", "medio comprimido", {"solid": [HALF]}),
        ("es", "la mitad de una tableta", {"solid": [HALF]}),
        ("es", "un cuarto de tableta", {"solid": [Fraction(1, 4)]}),
        ("es", "dos tabletas y tres cuartos", {"solid": [Fraction(11, 4)]}),
        ("es", "once gotas", {"drop": [11]}),
        ("es", "0,8 ml cada 12 horas", {"ml": [Fraction(4, 5)]}),
        ("es", "treinta y cinco miligramos", {"mg": [35]}),
        ("es", "un par de cápsulas", {"solid": [2]}),
        ("en", "two (2) tablets", {"solid": [2]}),
        ("en", "one 100-mg tablet", {"solid": [1], "mg": [100]}),
        ("en", "one tablet and half an hour later her food", {"solid": [1]}),
        ("es", "una tableta y media hora después la comida", {"solid": [1]}),
        ("es", "dos (2) tabletas dos veces al día, cada 12 h", {"solid": [2]}),
        ("en", "as before", {}),
        ("es", "una", {}),
    ],
)  # fmt: skip
def test_words_are_read_into_figures(
    lang: Lang, words: str, told: dict[Measure, list[Any]]
) -> None:
    found = said(words, lang)
    assert {kind: sorted(found.of(kind)) for kind in found.measures} == told
    assert not found.ranges


@pytest.mark.parametrize(
    ("en", "es", "figures", "what"),
    [
        ("two tablets (100 mg)", "una tableta (50 mg)", {}, "100 mg in English, 50 mg in Spanish"),
        ("two tablets", "una tableta", {}, "2 tablets in English, 1 tablet in Spanish"),
        ("one and a half tablets", "media tableta", {}, "1.5 tablets in English, 0.5 tablet in"),
        ("one tablet (50 mg)", "una tableta (500 mg)", {}, "50 mg in English, 500 mg in Spanish"),
        ("2 ml", "0,2 ml", {}, "2 ml in English, 0.2 ml in Spanish"),
        ("two tablets", "dos gotas", {}, "of tablets in English, of drops in Spanish"),
        ("2 sachets", "3 sobres", {}, "2 in English only, 3 in Spanish only"),
        ("one sachet", "medio sobre", {}, "0.5 in Spanish only"),
        ("1-2 tablets", "1-2 tabletas", {}, "'1 - 2' in English: a range is no dose"),
        ("one tablet", "una o dos tabletas", {}, "a range is no dose"),
        ("half to one tablet", "una tableta", {}, "a range is no dose"),
        ("between 1 and 2 tablets", "2 tabletas", {}, "'1 and 2' in English: a range"),
        ("two tablets", "entre una y dos tabletas", {}, "'una y dos' in Spanish: a range"),
        ("up to two tablets", "dos tabletas", {}, "'up to two' in English: a range"),
        ("two tablets", "hasta dos tabletas", {}, "'hasta dos' in Spanish: a range"),
        ("two tablets", "dos tabletas", {"units": 1}, "the figures make 1 tablet"),
        ("ten drops", "diez gotas", {"units": 1, "form": "drop"}, "the figures make 1 drop"),
        ("two tablets (100 mg)", "dos tabletas (100 mg)", {"units": 2, "strength_mg": 500},
         "100 mg in English, but the figures make 1000 mg"),
        ("two tablets of 50 mg", "dos tabletas de 50 mg", {"units": 2, "strength_mg": 50},
         "50 mg in English, but the figures make 100 mg"),
        ("4 ml", "4 ml", {"ml": 0.4}, "4 ml in English, but the figures make 0.4 ml"),
        ("one (75 mg)", "una (75 mg)", {"mg": 50}, "75 mg in English, but the figures make 50"),
    ],
)  # fmt: skip
def test_what_is_not_one_dose_is_refused_at_its_line(
    en: str, es: str, figures: dict[str, Any], what: str
) -> None:
    more = "".join(f"    {key}: {value}\n" for key, value in figures.items())
    text = written(f"    amount: {{en: {en}, es: '{es}'}}\n{more}")
    for read in (
        lambda: load_plan(text, "order.yaml"),
        lambda: read_order(text, "order.yaml", protocols(), TODAY),
    ):
        with pytest.raises(FlowError) as caught:
            read()
        told = [str(problem) for problem in caught.value.problems]
        assert any(what in one for one in told), told
        assert all(one.startswith("order.yaml:12:13: carprofen: `amount`") for one in told)
    alone = text.split("  - ")[1].replace("\n    ", "\n")
    with pytest.raises(FlowError, match="medicine:2:9: carprofen: `amount`"):
        load_medicine(alone, "medicine")


@pytest.mark.parametrize(
    ("en", "es", "figures"),
    [
        ("two capsules (200 mg)", "dos cápsulas (200 mg)", {"units": 2, "strength_mg": 100}),
        ("2 caps (200 mg)", "2 cápsulas de 100 mg (200 mg)", {"units": 2, "strength_mg": 100}),
        ("a third of a tablet (33.3 mg)", "un tercio de tableta (33 mg)",
         {"units": "1/3", "strength_mg": 100}),
        ("half a tablet", "25 mg", {"units": "1/2", "strength_mg": 50}),
        ("one pill", "1 comprimido", {}),
    ],
)  # fmt: skip
def test_one_dose_said_in_two_ways_is_no_slip(en: str, es: str, figures: dict[str, Any]) -> None:
    assert slips(medicine(en, es, **figures)) == []


@pytest.mark.parametrize(
    ("en", "es", "figures", "times"),
    [
        ("one", "una", {}, 2),
        ("as before", "como antes", {"units": 1}, 2),
        ("one tablet", "lo de siempre", {"units": 1}, 1),
        ("half a tablet", "25 mg", {}, 1),
        ("2 sachets", "2 sobres", {}, 2),
    ],
)
def test_words_that_cannot_be_compared_are_told_and_stop_nothing(
    en: str, es: str, figures: dict[str, Any], times: int
) -> None:
    more = "".join(f"    {key}: {value}\n" for key, value in figures.items())
    text = written(f"    amount: {{en: {en}, es: {es}}}\n{more}")
    _, warnings = read_order(text, "order.yaml", protocols(), TODAY)
    told = [str(one) for one in warnings if "not compared" in one.what and "amount" in one.what]
    assert len(told) == times
    assert all(one.startswith("order.yaml:12:13: warning: carprofen") for one in told)


def test_two_amounts_in_one_order_are_pointed_at() -> None:
    words = "one tablet in the morning, two tablets at night"
    found = slips(medicine(words, "una tableta por la mañana, dos tabletas por la noche"))
    assert [(slip.stops, "1 and 2 tablets" in slip.what) for slip in found] == [(False, True)] * 2


def written(medicine: str) -> str:
    return f"""patient: Biscuit
species: dog
weight_kg: 22.7
procedure: Plate, left
clinician: Dr Example
surgery: 2026-03-03
home: 2026-03-04 10:30
zone: America/Denver
protocol: general-orthopaedic
medicines:
  - name: carprofen
{medicine}    every_hours: 12
    days: 5
    first_dose: 2026-03-04 20:00
"""


@st.composite
def quantities(draw: st.DrawFn) -> Quantity:
    """Doses as clinics order them: parts of a tablet, whole drops, tenths of a millilitre."""
    form = draw(st.sampled_from(["tablet", "chew", "capsule", "drop", "liquid", None]))
    strength = draw(st.none() | st.sampled_from([2.5, 12, 37.5, 50, 100, 500]))
    if form == "liquid":
        ml = draw(st.integers(1, 300)) / 10
        return Quantity(form=form, ml=ml, mg_per_ml=draw(st.sampled_from([None, 1.5, 50])))
    units = draw(st.integers(1, 30) | st.integers(1, 120).map(lambda n: Fraction(n, 4))
                 | st.integers(1, 36).map(lambda n: Fraction(n, 12)))  # fmt: skip
    return Quantity(form=form, units=float(units), strength_mg=strength)


@given(quantities())
def test_the_words_made_from_figures_are_read_back_as_these(quantity: Quantity) -> None:
    words = quantity.in_words()
    assert words is not None
    made = medicine(words.en, words.es, **quantity.model_dump(exclude_none=True))
    assert slips(made) == []
    for lang in LANGS:
        assert said(words.say(lang), lang).measured, words


@given(quantities(), quantities(), st.booleans())
def test_another_dose_in_one_language_is_never_taken(
    one: Quantity, other: Quantity, swap: bool
) -> None:
    """Words of two doses, one in each language: refused, whichever the figures are."""
    first, second = one.in_words(), other.in_words()
    assert first is not None
    assert second is not None
    kinds = {"drop": "drop", "liquid": "ml"}
    same_kind = kinds.get(one.form or "", "solid") == kinds.get(other.form or "", "solid")
    if same_kind and (one.units or one.ml) == (other.units or other.ml):
        return
    mixed = Text(en=second.en, es=first.es) if swap else Text(en=first.en, es=second.es)
    for figures in ({}, one.model_dump(exclude_none=True)):
        found = slips(medicine(mixed.en, mixed.es, **figures))
        assert any(slip.stops for slip in found), mixed


@given(st.integers(1, 199), st.sampled_from(LANGS))
def test_number_words_as_an_independent_library_writes_them(number: int, lang: Lang) -> None:
    words = num2words(number, lang=lang)
    if lang == "es":
        words = words.removesuffix("uno") + "una" if words.endswith("uno") else words
    unit = {"en": "tablets", "es": "tabletas"}[lang]
    assert said(f"{words} {unit}", lang).of("solid") == {Fraction(number)}


@given(st.text(max_size=60), st.text(max_size=60))
def test_whatever_is_written_it_is_read_without_fail(en: str, es: str) -> None:
    if en.strip() and es.strip():
        for slip in slips(medicine(en, es, units=1)):
            assert slip.what
            assert slip.mend

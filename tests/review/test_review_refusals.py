"""Who is turned away fills no log, however often and from however many addresses."""

from __future__ import annotations

from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from bot.review.refusals import CALLERS, ELSEWHERE, MOST, Refusals, caller_of
from tests.review.conftest import Pages
from tests.service.box import at

NOON = at(4, 12)
ADDRESSES = st.ip_addresses().map(str) | st.just("?")


async def test_a_made_up_cookie_is_told_a_few_times_and_then_counted(pages: Pages) -> None:
    pages.web.cookies.set("slowleash_review", "made-up")
    for _ in range(37):
        assert (await pages.web.get("/patients")).status_code == 401
    told = await pages.logged("refused")
    assert len(told) == MOST
    assert "only counted" in told[-1]["text"]
    pages.watch.move(timedelta(hours=1))
    await pages.web.get("/patients")
    told = (await pages.logged("refused"))[MOST:]
    assert len(told) == 2
    assert told[0]["text"].startswith("refused 37 times from 127.0.0.1 within an hour of")


async def test_a_members_refusals_are_told_whoever_else_knocks(pages: Pages) -> None:
    pages.web.cookies.set("slowleash_review", "made-up")
    for _ in range(30):
        await pages.web.get("/patients")
    pages.web.cookies.clear()
    await pages.enter("Pell")
    assert (await pages.web.get("/patients/1/readings/1")).status_code == 403
    assert (await pages.logged("refused"))[-1]["author"] == "Pell"


@given(st.lists(ADDRESSES, max_size=400))
def test_an_hour_of_knocking_has_its_bound(knocks: list[str]) -> None:
    refusals, lines = Refusals(), 0
    for address in knocks:
        lines += len(refusals.of(address, None, "a session that has ended", "/", NOON))
    assert lines <= (CALLERS + 1) * MOST
    later = refusals.of("::1", None, "a session that has ended", "/", NOON + timedelta(hours=1))
    assert len(later) <= CALLERS + 2


def test_one_network_is_one_caller() -> None:
    refusals = Refusals()
    lines = [
        line
        for number in range(200)
        for line in refusals.of(f"2001:db8::{number:x}", None, "a link", "/enter", NOON)
    ]
    assert len(lines) == MOST
    assert "2001:db8::/64" in lines[-1].why
    assert caller_of("::ffff:192.0.2.7") == caller_of("192.0.2.7") == "192.0.2.7"


def test_more_callers_than_are_counted_are_one() -> None:
    refusals = Refusals()
    for number in range(CALLERS + 100):
        refusals.of(f"192.0.2.{number}", None, "a link", "/enter", NOON)
    over = refusals.of("::1", None, "a link", "/enter", NOON + timedelta(hours=1))
    assert f"refused 100 times from {ELSEWHERE}" in over[0].why

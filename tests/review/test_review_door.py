"""Who comes in, for how long, and what is refused and written down."""

from __future__ import annotations

from datetime import timedelta

import httpx
import pytest
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import PlainTextResponse
from starlette.routing import Route

from bot.model.effects import Dismiss, Effects
from bot.model.ids import EventId
from bot.review import review_app, serving
from bot.review.limits import Limit
from tests.review.conftest import BASE, Pages


async def test_a_link_lets_its_member_in_once(pages: Pages) -> None:
    link = await pages.link("Dr Okafor")
    asked = await pages.web.get(link)
    assert "You come in as Dr Okafor." in asked.text
    assert not pages.web.cookies  # looking at a link, as chat programs do, uses nothing up
    code = link.partition("code=")[2]
    came = await pages.web.post("/enter", data={"code": code})
    assert came.url.path == "/patients"
    assert "Canela" in came.text
    cookie = came.history[0].headers["set-cookie"].lower()
    assert all(part in cookie for part in ("httponly", "samesite=strict", "max-age=43200"))
    assert "secure" not in cookie  # loopback has no https
    pages.web.cookies.clear()
    again = await pages.web.post("/enter", data={"code": code})
    assert again.status_code == 403
    assert "used or has run out" in again.text
    assert [row["author"] for row in await pages.logged("entered")] == ["Dr Okafor"]
    assert "unknown, used or has run out" in (await pages.logged("refused"))[-1]["text"]


async def test_the_cookie_is_secure_behind_https_under_the_practices_own_name(
    pages: Pages,
) -> None:
    link = await pages.link("Pell")
    refused = await pages.web.get("/patients", headers={"host": "evil.example"})
    assert refused.status_code == 400
    assert link.startswith(f"{BASE}/enter?code=")


async def test_a_link_runs_out(pages: Pages) -> None:
    link = await pages.link("Dr Okafor")
    pages.watch.move(timedelta(minutes=15))
    assert (await pages.web.get(link)).status_code == 403
    late = await pages.web.post("/enter", data={"code": link.partition("code=")[2]})
    assert late.status_code == 403
    assert len(await pages.logged("refused")) == 2


@pytest.mark.parametrize(
    "path",
    ["/", "/patients", "/patients/1", "/patients/1/readings/1", "/patients/1/records/log.csv",
     "/patients/1/pictures/1", "/search?q=pill", "/cohort"],
)  # fmt: skip
async def test_a_stranger_sees_nothing(pages: Pages, path: str) -> None:
    answer = await pages.web.get(path)
    assert answer.status_code == 401
    assert "/review" in answer.text
    assert "Canela" not in answer.text
    pages.web.cookies.set("slowleash_review", "made-up")
    assert (await pages.web.get(path)).status_code == 401
    assert (await pages.logged("refused"))[-1]["text"] == "a session that has ended"


async def test_a_session_ends_by_itself_by_leaving_and_with_the_job(pages: Pages) -> None:
    await pages.enter("Pell")
    pages.watch.move(timedelta(hours=11, minutes=59))
    assert (await pages.web.get("/patients")).status_code == 200
    pages.watch.move(timedelta(minutes=1))
    assert (await pages.web.get("/patients")).status_code == 401

    await pages.enter("Pell")
    held = dict(pages.web.cookies)
    left = await pages.web.post("/leave", data={"token": await pages.token()})
    assert "You have left" in left.text
    pages.web.cookies.update(held)
    assert (await pages.web.get("/patients")).status_code == 401

    pages.web.cookies.clear()
    await pages.enter("Pell")
    link = await pages.link("Pell")
    out = Effects(EventId("test"))
    out.add(Dismiss((await pages.member("Pell")).id))
    await pages.store.act(out, pages.watch.now())
    assert (await pages.web.get("/patients")).status_code == 401
    assert (await pages.web.get(link)).status_code == 403


async def test_a_form_must_come_from_our_own_page(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    token, note = await pages.token(), {"note": "looks good"}
    path = "/patients/1/notes"
    for data, headers in (
        (note, {}),
        (note | {"token": "0" * 64}, {}),
        (note | {"token": token}, {"origin": "https://evil.example"}),
        (note | {"token": token}, {"sec-fetch-site": "cross-site"}),
        ({"note": "x" * 70_000, "token": token}, {}),
    ):
        answer = await pages.web.post(path, data=data, headers=headers)
        assert answer.status_code == 403, data.keys()
    assert len(await pages.logged("refused")) == 5
    assert await pages.logged("note", 1) == []
    other = httpx.AsyncClient(transport=httpx.ASGITransport(app=pages.app), base_url=BASE)
    async with other as web:
        code = (await pages.link("Pell")).partition("code=")[2]
        await web.post("/enter", data={"code": code})
        theirs = await web.post(path, data=note | {"token": token})
    assert theirs.status_code == 403  # a token of another session


async def test_every_answer_allows_no_script_and_nothing_from_elsewhere(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    for path in ("/patients", "/patients/1", "/nowhere", "/review.css", "/cohort", "/search?q=a"):
        answer = await pages.web.get(path)
        policy = answer.headers["content-security-policy"]
        assert "default-src 'none'" in policy
        assert "script-src" not in policy
        assert "unsafe" not in policy
        assert answer.headers["cache-control"] == "no-store"
        assert "<script" not in answer.text
        assert "style=" not in answer.text
        assert 'src="http' not in answer.text


async def test_who_asks_too_much_waits(pages: Pages) -> None:
    answers = [(await pages.web.get("/enter?code=x")).status_code for _ in range(21)]
    assert answers == [403] * 20 + [429]
    pages.watch.move(timedelta(seconds=15))
    assert (await pages.web.get("/enter?code=x")).status_code == 403


def test_a_limit_forgets_those_who_have_their_measure_back() -> None:
    now = [0.0]
    limit = Limit(2, 10, lambda: now[0])
    assert [limit.wait("a") for _ in range(3)] == [0, 0, 5]
    now[0] = 5
    assert limit.wait("a") == 0
    for number in range(30_000):
        limit.wait(str(number))
    assert len(limit._left) <= 10_000


# -- who asks ---------------------------------------------------------------------------------

SECRET = "a secret that nobody guesses"
FORGED = {"x-forwarded-for": "someone at 10.0.0.9", "x-real-ip": "10.0.0.9", "forwarded": "for=1"}


@pytest.fixture
def behind(pages: Pages) -> httpx.AsyncClient:
    """The pages as a web server before them asks, which shares ``SECRET``."""
    watch = pages.watch
    app = review_app(pages.store, pages.practice, watch, real=watch, tick=watch.tick, proxy=SECRET)
    return httpx.AsyncClient(transport=httpx.ASGITransport(app=app), base_url=BASE)


async def test_the_server_itself_believes_no_caller_who_it_is() -> None:
    """With real sockets: what serves the pages takes no address from whoever is on this machine."""

    async def caller(request: Request) -> PlainTextResponse:
        host = request.client.host if request.client else ""
        return PlainTextResponse(f"{host} {request.url.scheme}")

    app = Starlette(routes=[Route("/", caller)])
    forged = {"x-forwarded-for": "203.0.113.9", "x-forwarded-proto": "https",
              "forwarded": "for=203.0.113.9;proto=https"}  # fmt: skip
    async with serving.serving(app, 0) as port, httpx.AsyncClient() as web:
        told = await web.get(f"http://127.0.0.1:{port}/", headers=forged)
    assert told.text == "127.0.0.1 http"


async def test_nobody_says_for_whom_they_ask_but_the_named_proxy(
    pages: Pages, behind: httpx.AsyncClient
) -> None:
    for web, headers in (
        (pages.web, FORGED),
        (pages.web, {"x-forwarded-for": "10.0.0.9", "x-slowleash-proxy": ""}),
        (pages.web, {"x-forwarded-for": "10.0.0.9", "x-slowleash-proxy": SECRET}),
        (behind, {"x-forwarded-for": "10.0.0.9"}),
        (behind, {"x-forwarded-for": "10.0.0.9", "x-slowleash-proxy": SECRET[:-1]}),
        (behind, {"x-forwarded-for": "Dr Okafor", "x-slowleash-proxy": SECRET}),
        (behind, {"x-forwarded-for": "10.0.0.9, ", "x-slowleash-proxy": SECRET}),
        (behind, {"x-forwarded-for": "fe80::1%Dr Okafor", "x-slowleash-proxy": SECRET}),
        (behind, {"x-forwarded-for": "fe80::1%", "x-slowleash-proxy": SECRET}),
        (behind, {"x-forwarded-for": "[fe80::1%25x]:80", "x-slowleash-proxy": SECRET}),
    ):
        assert (await web.get("/enter?code=x", headers=headers)).status_code == 403
    assert {row["author"] for row in await pages.logged("refused")} == {"someone at 127.0.0.1"}
    told = "192.0.2.1, 2001:DB8:0::7"  # the caller wrote the first of them
    await behind.get(
        "/enter?code=x", headers={"x-forwarded-for": told, "x-slowleash-proxy": SECRET}
    )
    assert (await pages.logged("refused"))[-1]["author"] == "someone at 2001:db8::7"


async def test_the_limit_on_guesses_cannot_be_got_round(
    pages: Pages, behind: httpx.AsyncClient
) -> None:
    async def guess(web: httpx.AsyncClient, number: int, by: str = "") -> int:
        headers = {"x-forwarded-for": f"10.0.0.{number}", "x-slowleash-proxy": by}
        return (await web.get("/enter?code=x", headers=headers)).status_code

    assert [await guess(pages.web, n) for n in range(21)] == [403] * 20 + [429]
    # By the form no more than by the address.
    assert (await pages.web.post("/enter", data={"code": "x"})).status_code == 429
    assert [await guess(behind, n) for n in range(21)] == [403] * 20 + [429]
    # Through the proxy each caller has a measure of their own.
    assert [await guess(behind, 1, by=SECRET) for _ in range(21)] == [403] * 20 + [429]
    assert await guess(behind, 2, by=SECRET) == 403


@pytest.mark.parametrize("number", ["9" * 16, "9" * 30, "9" * 5000, "٣", "-1", "1e3"])
@pytest.mark.parametrize(
    "path",
    ["/patients/{}", "/patients/1/pictures/{}", "/patients/1/readings/{}",
     "/patients/{}/records/log.csv"],
)  # fmt: skip
async def test_a_number_that_no_row_has_is_not_found(pages: Pages, path: str, number: str) -> None:
    await pages.enter("Dr Okafor")
    answer = await pages.web.get(path.format(number))
    assert answer.status_code == 404
    assert answer.headers["cache-control"] == "no-store"
    assert "default-src 'none'" in answer.headers["content-security-policy"]


async def test_a_page_that_no_list_has_is_the_nearest(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    for page in ("9" * 5000, "0", "-3", "²"):
        assert (await pages.web.get("/patients", params={"page": page})).status_code == 200

"""The demo's page in a real browser, over a real stand-in and the chat library."""

from __future__ import annotations

import contextlib
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager
from datetime import UTC, date, datetime
from functools import partial
from pathlib import Path
from typing import NamedTuple

import httpx
import pytest
from playwright.async_api import Browser, Page, async_playwright, expect
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup
from telegram.request import HTTPXRequest

import demo
from demo.clock import DemoClock
from demo.controls import PlainControls, Status
from demo.page import Page as DemoPage
from demo.page import Sample, Seat
from demo.standin import Chat, Standin, User

PICTURES = Path(demo.__file__).parent / "pictures"
FLAGS = (
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run "
    "--disable-background-networking --disable-component-update --disable-sync"
).split()
Look = Callable[..., AbstractAsyncContextManager[Page]]
PHONE, DESK = (390, 844), (1280, 900)
START = datetime(2026, 2, 24, 15, 0, tzinfo=UTC)  # 8:00 in Denver


class Stage(NamedTuple):
    """A running page, who sits at it, and a bot to speak for."""

    standin: Standin
    clock: DemoClock
    controls: PlainControls
    robin: User
    lucia: User
    ward: Chat
    bot: Bot

    async def says(self, chat: int, text: str, *labels: str) -> int:
        """The bot sends a message with one button a label; its id."""
        buttons = [InlineKeyboardButton(label, callback_data=label) for label in labels]
        markup = InlineKeyboardMarkup([buttons]) if labels else None
        return (await self.bot.send_message(chat, text, reply_markup=markup)).message_id

    async def hears(self) -> list[str]:
        """What people wrote, pressed or corrected since it last asked."""
        updates = await self.bot.get_updates(timeout=2)
        if updates:
            await self.bot.get_updates(offset=updates[-1].update_id + 1)
        heard = []
        for update in updates:
            if update.callback_query:
                heard.append(f"pressed {update.callback_query.data}")
                await update.callback_query.answer("Noted, 8:00")
            elif update.edited_message:
                heard.append(f"corrected: {update.edited_message.text}")
            elif update.message and update.message.photo:
                heard.append(f"picture: {update.message.caption}")
            elif update.message and update.message.video:
                heard.append("film")
            elif update.message and update.message.text:
                heard.append(update.message.text)
        return heard


@pytest.fixture
async def stage() -> AsyncIterator[Stage]:
    clock = DemoClock(START, rate=0)
    local = {"trust_env": False, "verify": False}
    async with Standin(clock=clock) as s:
        robin, lucia = s.user("Robin"), s.user("Lucía", "es")
        pell, wren = s.user("Nurse Pell"), s.user("Dr. Wrenfield")
        ward = s.group("Ward desk", [pell, wren])
        status = Status("Clover", "dog, 22.7 kg", "America/Denver", date(2026, 2, 24))
        controls = PlainControls(clock, status)
        seats = [
            Seat("robin", "home", "Robin", "owner", s.private(robin), (robin,)),
            Seat("lucia", "home", "Lucía", "partner", s.private(lucia), (lucia,)),
            Seat("ward", "clinic", "Ward desk", "staff", ward, (pell, wren)),
        ]
        samples = [
            Sample("Sample picture", "photo", PICTURES / "incision.png", "image/png", "day 13"),
            Sample("Sample film", "video", PICTURES / "walk.mp4", "video/mp4"),
        ]
        DemoPage(s, clock, controls, seats, samples).attach()
        s.start(robin)
        async with Bot(
            s.token,
            base_url=s.base_url,
            base_file_url=s.file_url,
            request=HTTPXRequest(httpx_kwargs=local),
            get_updates_request=HTTPXRequest(httpx_kwargs=local),
        ) as bot:
            running = Stage(s, clock, controls, robin, lucia, ward, bot)
            await running.hears()
            yield running


@contextlib.asynccontextmanager
async def _looking(
    stage: Stage, chromium: str, size: tuple[int, int] = DESK
) -> AsyncIterator[Page]:
    """The page, open in a browser window of that size; its errors fail the test."""
    async with async_playwright() as play:
        browser: Browser = await play.chromium.launch(executable_path=chromium, args=FLAGS)
        context = await browser.new_context(
            viewport={"width": size[0], "height": size[1]}, has_touch=size == PHONE
        )
        context.set_default_timeout(10_000)
        page = await context.new_page()
        wrong: list[str] = []
        page.on("pageerror", lambda error: wrong.append(str(error)))
        page.on("request", lambda r: None if stage.standin.page_url in r.url or r.url.startswith(
            "data:") else wrong.append(f"asked elsewhere: {r.url}"))  # fmt: skip
        await page.goto(stage.standin.page_url)
        await expect(page.get_by_role("tab", name="Robin")).to_be_visible()
        yield page
        await browser.close()
        assert wrong == []


@pytest.fixture
def look(stage: Stage, chromium: str) -> Look:
    """``async with look() as page``: the page in a real browser."""
    return partial(_looking, stage, chromium)


async def test_an_owner_answers_writes_corrects_and_sends_pictures(
    stage: Stage, look: Look
) -> None:
    home = stage.robin.id
    async with look() as page:
        robin = page.get_by_role("tabpanel", name="Robin")
        await stage.says(home, "Give carprofen: one tablet.", "Given", "Refused it")
        await robin.get_by_role("button", name="Given").click()
        assert await stage.hears() == ["pressed Given"]
        await expect(robin.get_by_role("status")).to_have_text("Noted, 8:00")

        box = robin.get_by_role("textbox", name="Write as Robin")
        await box.fill("vomited 20 times")
        await box.press("Enter")
        assert await stage.hears() == ["vomited 20 times"]
        await expect(box).to_have_value("")
        entry = robin.get_by_role("listitem").filter(has_text="vomited 20 times")
        await entry.hover()
        await entry.get_by_role("button", name="Correct").click()
        await expect(box).to_have_value("vomited 20 times")
        await box.fill("vomited 2 times")
        await robin.get_by_role("button", name="Send").click()
        assert await stage.hears() == ["corrected: vomited 2 times"]
        await expect(robin.get_by_text("corrected")).to_be_visible()

        await robin.get_by_text("Picture or film").click()
        await robin.get_by_role("button", name="Sample picture").click()
        assert await stage.hears() == ["picture: day 13"]
        picture = robin.get_by_role("img", name="day 13")
        await expect(picture).to_be_visible()
        assert (
            await picture.evaluate("async i => { await i.decode(); return i.naturalWidth }") == 640
        )
        await robin.get_by_text("Picture or film").click()
        await robin.locator("input[type=file]").set_input_files(PICTURES / "incision.png")
        assert await stage.hears() == ["picture: None"]
        await robin.get_by_text("Picture or film").click()
        await robin.get_by_role("button", name="Sample film").click()
        assert await stage.hears() == ["film"]
        film = robin.locator("video")
        await expect(film).to_have_js_property("duration", 4)  # seconds: it can be played


async def test_staff_answer_a_case_and_the_owner_joins_by_the_link(
    stage: Stage, look: Look
) -> None:
    async with look() as page:
        ward = page.get_by_role("tabpanel", name="Ward desk")
        link = f"https://t.me/{stage.standin.chats.bot.username}?start=Zk3-aa_0981"
        await stage.says(stage.ward.id, f"Clover is enrolled. One-time link:\n{link}")
        await ward.get_by_role("button", name="Open the link as Lucía").click()
        assert await stage.hears() == ["/start Zk3-aa_0981"]
        await expect(page.get_by_role("tab", name="Lucía")).to_have_attribute(
            "aria-selected", "true"
        )
        await stage.says(stage.lucia.id, "Hola, Lucía.")
        await expect(page.get_by_role("tabpanel", name="Lucía")).to_contain_text("Hola, Lucía.")

        case = await stage.says(stage.ward.id, "Case 7: Clover, day 4", "I take it")
        entry = ward.get_by_role("listitem").filter(has_text="Case 7")
        await entry.hover()
        await entry.get_by_role("button", name="Answer").click()
        await ward.get_by_label("Writing as").select_option("Dr. Wrenfield")
        await ward.get_by_role("textbox").fill("Bring her in")
        await ward.get_by_role("button", name="Send").click()
        (update,) = await stage.bot.get_updates(timeout=2)
        assert update.message
        assert update.message.reply_to_message
        assert update.message.reply_to_message.message_id == case
        assert update.message.from_user
        assert update.message.from_user.first_name == "Dr. Wrenfield"
        await stage.bot.edit_message_text("Case 7: taken by Pell", stage.ward.id, case)
        await expect(ward).to_contain_text("Case 7: taken by Pell")
        await expect(ward.get_by_role("button", name="I take it")).to_have_count(0)


async def test_the_clock_moves_and_the_log_is_read(stage: Stage, look: Look) -> None:
    stage.controls.log = [
        {
            "at": "2026-02-24T15:00:00+00:00",
            "author": "rule",
            "kind": "finding",
            "text": "emergency: bleeding that does not stop",
            "data": {"rule": "bleeding"},
        }
    ]
    async with look() as page:
        clock, day = page.locator("#clock"), page.locator("#day")
        await expect(clock).to_have_text("Tue 24 Feb, 08:00")
        await expect(day).to_have_text("0")
        await page.get_by_role("button", name="Next prompt").click()
        await expect(clock).to_have_text("Tue 24 Feb, 13:00")
        await page.get_by_role("button", name="+1 hour").click()
        await expect(clock).to_have_text("Tue 24 Feb, 14:00")
        await page.get_by_role("button", name="Next morning").click()
        await expect(clock).to_have_text("Wed 25 Feb, 08:00")
        await page.get_by_label("To day").fill("13")  # over the change to summer time
        await page.get_by_label("To day").press("Enter")
        await expect(clock).to_have_text("Mon 9 Mar, 08:00")
        await expect(day).to_have_text("13")
        assert stage.clock.now() == datetime(2026, 3, 9, 14, 0, tzinfo=UTC)
        await page.get_by_label("To day").fill("2")
        await page.get_by_label("To day").press("Enter")
        await expect(page.get_by_role("alert")).to_contain_text("never runs backwards")
        await page.get_by_label("Clock runs").select_option("1 hour a second")
        await expect(clock).not_to_have_text("Mon 9 Mar, 08:00")
        assert stage.clock.rate == 3600
        await page.get_by_role("tab", name="Log").click()
        log = page.get_by_role("tabpanel", name="Log")
        await expect(log).to_contain_text("emergency: bleeding that does not stop")
        await expect(log).to_contain_text("rule: bleeding")


async def test_on_a_phone_one_sheet_is_shown_and_thumbs_find_the_buttons(
    stage: Stage, look: Look
) -> None:
    async with look(PHONE) as page:
        await stage.says(stage.robin.id, "Evening.", "Given", "Refused it", "Could not give it")
        given = page.get_by_role("button", name="Given")
        await expect(given).to_be_visible()
        for button in (given, page.get_by_role("button", name="Next prompt")):
            box = await button.bounding_box()
            assert box
            assert box["height"] >= 44  # WCAG 2.2, 2.5.5: a target of 44 by 44 CSS pixels
        await expect(page.get_by_role("tabpanel", name="Ward desk")).to_be_hidden()
        await stage.says(stage.ward.id, "Case 7")
        tab = page.get_by_role("tab", name="Ward desk")
        await expect(tab).to_contain_text("1 new")
        await tab.click()
        await expect(page.get_by_role("tabpanel", name="Ward desk")).to_be_visible()
        await expect(page.get_by_role("tabpanel", name="Robin")).to_be_hidden()
        await expect(tab).not_to_contain_text("new")
        await stage.says(stage.ward.id, "The beginning.\n" + "A long case.\n" * 60, "Close")
        await expect(page.get_by_text("The beginning.")).to_be_in_viewport()
        wide = await page.evaluate("document.documentElement.scrollWidth")
        assert wide == PHONE[0]


@pytest.mark.parametrize("scheme", ["light", "dark"])
async def test_words_stand_out_from_their_ground(stage: Stage, look: Look, scheme: str) -> None:
    """WCAG 2.2, 1.4.3: contrast of at least 4.5 to 1, for every text on the page."""
    stage.standin.say(stage.robin, None, "He ate well")
    await stage.says(stage.robin.id, "Evening.", "Given")
    async with look() as page:
        await page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
        await expect(page.get_by_role("button", name="Given")).to_be_visible()
        low = await page.evaluate(_CONTRASTS)
        assert low == []


async def test_the_keyboard_reaches_everything(stage: Stage, look: Look) -> None:
    await stage.says(stage.robin.id, "Evening.", "Given")
    async with look() as page:
        await expect(page.get_by_role("button", name="Given")).to_be_visible()
        reached = []
        for _ in range(40):
            await page.keyboard.press("Tab")
            reached.append(await page.evaluate(
                "(e => e.ariaLabel || e.labels?.[0]?.innerText || e.innerText || e.id)"
                "(document.activeElement)"))  # fmt: skip
        for name in ("Next prompt", "Clock runs", "Given", "Write as Robin", "Send"):
            assert any(name in words for words in reached), (name, reached)
        await page.get_by_role("tab", name="Robin").focus()
        await page.keyboard.press("ArrowRight")
        await expect(page.get_by_role("tab", name="Lucía")).to_be_focused()
        await expect(page.get_by_label("Invitation for Lucía")).to_be_visible()


async def test_no_other_site_drives_the_demo(stage: Stage) -> None:
    say = {"seat": "robin", "text": "hello"}
    async with httpx.AsyncClient(trust_env=False, base_url=stage.standin.page_url) as web:
        theirs = await web.post("demo/say", json=say, headers={"origin": "https://evil.example"})
        assert theirs.status_code == 403
        assert (await web.post("demo/say", json=say)).status_code == 200
        unknown = await web.post("demo/say", json={"seat": "nobody", "text": "x"})
        assert unknown.status_code == 400
        assert "load it again" in unknown.json()["error"]
    assert await stage.hears() == ["hello"]


_CONTRASTS = """() => {
  const rgb = c => c.match(/[\\d.]+/g).map(Number);
  const light = ([r, g, b]) => [r, g, b].map(v => (v /= 255) <= .03928 ? v / 12.92
    : ((v + .055) / 1.055) ** 2.4).reduce((sum, v, i) => sum + v * [.2126, .7152, .0722][i], 0);
  const ground = e => { for (; e; e = e.parentElement) {
    const c = rgb(getComputedStyle(e).backgroundColor); if (c[3] !== 0) return c; }
    return [255, 255, 255]; };
  const low = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const e = walk.currentNode.parentElement;
    if (!walk.currentNode.data.trim() || !e.checkVisibility() || e.closest('.skip')) continue;
    const [a, b] = [light(rgb(getComputedStyle(e).color)), light(ground(e))].sort((x, y) => y - x);
    if ((a + .05) / (b + .05) < 4.5) low.push(walk.currentNode.data.trim());
  }
  return low;
}"""

"""The pages in a real browser, at the size of a phone and of a desk."""

from __future__ import annotations

import contextlib
from collections.abc import AsyncIterator
from typing import Final, Literal

import pytest
from axe_playwright_python.async_playwright import Axe
from playwright.async_api import Browser, Page, async_playwright, expect

from bot.review.serving import serving
from tests.review.conftest import BASE, Pages

FLAGS: Final = (
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run "
    "--disable-background-networking --disable-component-update --disable-sync"
).split()
SIZES: Final = {"phone": (390, 844), "desk": (1280, 900)}
NEVER: Final = ("serious", "critical")


@contextlib.asynccontextmanager
async def look(pages: Pages, chromium: str, size: str, name: str) -> AsyncIterator[Page]:
    """The list of patients, open as this member; errors of the page fail the test."""
    width, height = SIZES[size]
    wrong: list[str] = []
    async with serving(pages.app, 0) as port, async_playwright() as play:
        here = f"{BASE}:{port}"
        browser: Browser = await play.chromium.launch(executable_path=chromium, args=FLAGS)
        context = await browser.new_context(
            viewport={"width": width, "height": height}, base_url=here
        )
        context.set_default_timeout(10_000)
        page = await context.new_page()
        page.on("pageerror", lambda error: wrong.append(str(error)))
        page.on("request", lambda r: None if r.url.startswith(here) else wrong.append(r.url))
        await page.goto((await pages.link(name)).replace(BASE, here))
        await page.get_by_role("button", name="Come in").click()
        await expect(page.get_by_role("heading", name="Patients")).to_be_visible()
        yield page
        await browser.close()
    assert wrong == []


@pytest.mark.parametrize(("size", "scheme"), [("phone", "light"), ("desk", "dark")])
async def test_every_page_is_accessible_and_fits(
    pages: Pages, chromium: str, size: str, scheme: Literal["light", "dark"]
) -> None:
    """axe-core (in the wheel of axe-playwright-python) finds nothing serious or critical."""
    ident = await pages.observation("pain")
    async with look(pages, chromium, size, "Dr Okafor") as page:
        axe = Axe()
        await page.emulate_media(color_scheme=scheme)
        for path in ("/patients", "/patients/1", f"/patients/1/readings/{ident}",
                     "/search?q=pill", "/cohort", "/nowhere"):  # fmt: skip
            await page.goto(path)
            await page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)")
            found = (await axe.run(page)).response["violations"]
            bad = [(one["id"], one["nodes"][0]["html"]) for one in found if one["impact"] in NEVER]
            assert bad == [], path
            wide = await page.evaluate("document.documentElement.scrollWidth")
            assert wide == SIZES[size][0], path


async def test_a_mark_on_a_chart_leads_to_the_words(pages: Pages, chromium: str) -> None:
    told = await pages.observation("weight_bearing")
    async with look(pages, chromium, "desk", "Dr Okafor") as page:
        await page.get_by_role("link", name="Canela").click()
        await page.get_by_role("link", name="day 2, 13:00: touches the toes down").click()
        words = page.locator(f"#r{told}")
        await expect(words).to_be_in_viewport()
        turn = page.locator("li.turn").filter(has=words)
        await expect(turn).to_contain_text("walked 6 minutes, toe touching now")
        await page.get_by_label("Cases").get_by_role("link").first.click()
        await expect(page.locator("li.turn:target")).to_contain_text("she threw up her pill")
        why = page.locator("li.turn:target details.why")
        await why.locator("summary").click()
        await expect(why).to_contain_text("Rule")


async def test_every_mark_can_be_hit_with_a_finger_and_its_words_are_seen(
    pages: Pages, chromium: str
) -> None:
    """On a phone the marks of neighbouring days do not take each other's touch."""
    async with look(pages, chromium, "phone", "Dr Okafor") as page:
        await page.goto("/patients/1")
        marks = page.locator(".lane:not(.case) a")
        labels = [await mark.get_attribute("aria-label") for mark in await marks.all()]
        assert len(set(labels)) > 5
        for number, label in enumerate(labels):
            href = await marks.nth(number).get_attribute("href")
            await marks.nth(number).click(timeout=2_000)
            assert page.url.endswith(str(href)), label
            turn = (
                page.locator("li.turn")
                .filter(has=page.locator(":target"))
                .or_(page.locator("li.turn:target"))
            )
            await expect(turn.locator(".by")).to_be_in_viewport()


async def test_a_reading_is_corrected_and_a_note_added_with_the_keyboard(
    pages: Pages, chromium: str
) -> None:
    ident = await pages.observation("swelling")
    async with look(pages, chromium, "phone", "Dr Okafor") as page:
        await page.keyboard.press("Tab")
        await expect(page.get_by_role("link", name="Skip to the page")).to_be_focused()
        await page.goto("/patients/1")
        fix = page.locator(f"#r{ident} a.fix")
        await fix.focus()
        await page.keyboard.press("Enter")
        box = page.get_by_label("It says")
        await expect(box).to_have_value("swelling.mild")
        await box.select_option("swelling.marked")
        await page.get_by_label("Reason").fill("seen on the picture")
        await page.keyboard.press("Enter")
        await expect(page.locator(f"#r{ident}")).to_contain_text("Reason: seen on the picture")
        await expect(page.locator(f"#r{ident} s")).to_be_visible()
        note = page.get_by_text("Add a note")
        await note.focus()
        await page.keyboard.press("Enter")
        await page.get_by_label("A note for the record").fill("recheck tomorrow")
        await page.get_by_role("button", name="Add the note").click()
        await expect(page.locator("li.turn.note")).to_contain_text("recheck tomorrow")


async def test_printed_it_is_a_record(pages: Pages, chromium: str) -> None:
    async with look(pages, chromium, "desk", "Pell") as page:
        await page.goto("/patients/1")
        await page.emulate_media(media="print")
        await expect(page.get_by_role("navigation")).to_have_count(0)
        await expect(page.get_by_text("Rule breathing-laboured")).to_be_visible()
        await expect(page.get_by_role("button", name="Leave")).to_have_count(0)
        assert (await page.pdf()).startswith(b"%PDF-")

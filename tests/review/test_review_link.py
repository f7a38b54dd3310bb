"""``/review`` in the chat: a link for the one who asks, in their own chat."""

from __future__ import annotations

from pathlib import Path

import httpx

from bot.model.settings import Clinic
from bot.review import review_app
from bot.store.review import ReviewStore
from demo.stage import Stage
from tests.service.box import CLINIC, at

URL = "http://127.0.0.1:8642"


async def test_staff_get_their_own_link_and_nobody_else(tmp_path: Path) -> None:
    clinic = Clinic.model_validate(CLINIC)
    async with Stage(clinic, tmp_path / "practice.db", at(0, 15)) as stage:
        people = stage.standin
        kim, pell, owner = people.user("Kim"), people.user("Pell"), people.user("Ines")
        desk = await stage.staff_chat("Surgery desk", [kim, pell, owner])
        await stage.employ(pell, "Pell", "clinician")
        await stage.settle()

        async def heard(user: object, group: bool) -> str:
            chat = desk if group else people.private(user)  # type: ignore[arg-type]
            people.say(user, chat, "/review")  # type: ignore[arg-type]
            await stage.settle()
            return people.messages(chat)[-1].words

        assert "not open" in await heard(pell, False)
        stage.app.review_at(URL)
        # Kim made the staff chat and has opened no chat of her own: the group gets no link.
        assert "Open your own chat" in await heard(kim, True)
        assert "link" in await heard(pell, True)
        assert not any("code=" in m.words for m in people.messages(desk))
        link = people.messages(people.private(pell))[-1].words.split()[-1]
        assert link.startswith(f"{URL}/enter?code=")
        assert "code=" not in await heard(owner, False)
        assert "code=" not in await heard(owner, True)

        app = review_app(ReviewStore(stage.app.db), stage.app.practice, stage.clock)
        through = httpx.ASGITransport(app=app)
        async with httpx.AsyncClient(transport=through, base_url=URL) as web:
            assert "You come in as Pell." in (await web.get(link)).text
            people.start(owner, link.partition("code=")[2])  # not a link into a chat
            await stage.settle()
            assert "You come in as Pell." in (await web.get(link)).text

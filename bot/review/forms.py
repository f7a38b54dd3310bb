"""The two things that can be written here: a corrected reading, and a note."""

from __future__ import annotations

from starlette.requests import Request
from starlette.responses import Response

from bot.model.vocabulary import TOPICS
from bot.store.review import Reading

from .conversation import pieces
from .correct import NOTHING, REASON_LIMIT, NotCorrected, as_read, correct, note
from .site import Site


class Forms:
    """GET and POST of a reading, POST of a note."""

    def __init__(self, site: Site) -> None:
        self._site = site

    async def reading(self, request: Request) -> Response:
        """The form: the words, how they were read, and what else they may say."""
        reading = await self._reading(request)
        if reading is None:
            return self._missing(request)
        return self._form(request, reading, "", "", "")

    async def corrected(self, request: Request) -> Response:
        """Keep the correction."""
        site, patient = self._site, request.path_params["id"]
        reading = await self._reading(request)
        if reading is None:
            return self._missing(request)
        chosen = str(request.state.form.get("reading", ""))
        why = str(request.state.form.get("why", ""))[:REASON_LIMIT]
        try:
            new = as_read(reading.statement.observation, chosen)
            to = site.tongue.say("nothing") if new is None else site.tongue.seen(new)
            was = site.tongue.seen(reading.statement.observation)
            out = correct(patient, reading, chosen, why, request.state.member, to, was)
            await site.store.act(out, site.clock.now())
        except NotCorrected as error:
            return self._form(request, reading, chosen, why, str(error))
        except ValueError:
            gone = "This reading was corrected or taken back in the meantime."
            return self._form(request, reading, chosen, why, gone)
        return site.go(request, f"/patients/{patient}#r{reading.statement.noted.id}")

    async def note(self, request: Request) -> Response:
        """Keep a note."""
        site, patient = self._site, request.path_params["id"]
        if all(one.id != patient for one in await site.store.listed(ended=True)):
            return self._missing(request)
        words, now = str(request.state.form.get("note", "")), site.clock.now()
        try:
            out = note(patient, words, request.state.member, now)
        except NotCorrected as error:
            return site.message(request, 400, "Nothing was kept", str(error))
        await site.store.act(out, now)
        return site.go(request, f"/patients/{patient}#words")

    async def _reading(self, request: Request) -> Reading | None:
        ids = request.path_params
        return await self._site.store.reading(
            ids["id"], ids["observation"], request.state.member, self._site.clock.now()
        )

    def _missing(self, request: Request) -> Response:
        return self._site.message(
            request, 404, "Nothing is here", "Perhaps the address was typed wrong. "
            "The list of patients has everybody.",
        )  # fmt: skip

    def _form(
        self, request: Request, reading: Reading, chosen: str, why: str, wrong: str
    ) -> Response:
        site, statement = self._site, reading.statement
        old = statement.observation
        topics = [old.about, *(about for about in TOPICS if about != old.about)]
        groups = [
            (site.tongue.topic(about),
             [(f"{about}.{value}", site.tongue.value(about, value)) for value in TOPICS[about]
              if about != "temperature" or about == old.about])
            for about in topics
        ]  # fmt: skip
        return site.page(
            request, "reading.html", 400 if wrong else 200, reading=reading,
            was=site.tongue.seen(old), pieces=pieces(reading.words, [statement], site.tongue),
            groups=[group for group in groups if group[1]], nothing=NOTHING,
            chosen=chosen or f"{old.about}.{old.value}", why=why,
            wrong=site.tongue.say(wrong) if wrong else "", patient=request.path_params["id"],
            limit=REASON_LIMIT,
        )  # fmt: skip

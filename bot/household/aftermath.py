"""What words mean in the light of what happened just before: an emergency that staff have
closed goes on, or one whose death was told is alive after all."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Final

from bot.context.contexts import AtHome
from bot.household import talking
from bot.model.chart import Chart, ClosedCase
from bot.model.finding import Finding
from bot.model.observation import Noted
from bot.model.reading import Reading
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.triage import triage

AFTER: Final = timedelta(hours=6)
"""So long after an emergency was closed "again" is about it. Common practice."""

_GOES_ON: Final = re.compile(
    r"\b(again|still|another|(goes|going) on|not over|never stopped|keeps|(is|.s|came) back"
    r"|worse|not? better|the same|happening|help|somebody|anybody|emergency"
    r"|otra vez|otro|otra|de nuevo|sigue|todav[ií]a|a[uú]n|volvi[oó]|vuelve|no para|no se le quita"
    r"|peor|no mejora|igual|ayuda|auxilio|socorro|emergencia|alguien)\b",
    re.IGNORECASE,
)
_ALIVE: Final = re.compile(
    r"\b(alive|(?<!not )(?<!n.t )(?<!stopped )breath(es|ing)|not dead|(isn.t|wasn.t) dead"
    r"|(woke|waking) up|opened (his|her|its) eyes|(he|she|it)(.s| is)? (moved|moving)"
    r"|(?<!no )(?<!a )(pulse|heart ?beat)|has a (pulse|heart ?beat)"
    r"|heart (is |still )*beat(s|ing)|(est[aá]|sigue) viv[oa]|vive|(?<!no )respira(ndo)?"
    r"|no (est[aá] muert[oa]|muri[oó])|despert[oó]|se mueve|abri[oó] los ojos"
    r"|(tiene|hay) (pulso|latidos?)|(?<!no )le late)\b",
    re.IGNORECASE,
)
_WELL: Final = re.compile(
    r"\b(is|.s|seems|est[aá]) (still |todav[ií]a )?"
    r"(fine|well|okay|ok|here|with (me|us)|bien|aqu[ií])\b",
    re.IGNORECASE,
)
GOES_ON: Final = "emergency-goes-on"
ALIVE: Final = "alive-after-all"


def aftermath(ctx: AtHome, chart: Chart, reading: Reading, text: str) -> list[Finding]:
    """The emergency that these words raise only because of what went before."""
    if any(one.about == "life" for one in reading.observations):
        return []
    advice = ctx.rules.advice(Urgency.emergency)
    if ctx.standing(chart).death_told:
        confirmed = chart.state == "died"
        if not (_ALIVE.search(text) or (confirmed and _WELL.search(text))):
            return []
        because = Text(
            en="A death was told, and now that the patient is alive.",
            es="Avisaron de una muerte y ahora dicen que el paciente vive.",
        )
        # What staff have confirmed they look at today; else help goes before the question.
        level = Urgency.same_day if confirmed else Urgency.emergency
        return [Finding(ALIVE, level, "life", because, (), advice)]
    closed = _asked_in(ctx, chart, reading, text)
    if closed is None and _GOES_ON.search(text) and not _calm(ctx, chart, reading):
        closed = just_closed(ctx, chart)
    if closed is None:
        return []
    minutes = int((ctx.now - closed.at).total_seconds() // 60)
    because = Text(
        en=f"Told {minutes} min after the emergency of case {closed.id} was closed: not over.",
        es=f"A {minutes} min de cerrar la emergencia del caso {closed.id}: dicen que no terminó.",
    )
    return [Finding(GOES_ON, Urgency.emergency, closed.matter, because, (), advice)]


def just_closed(ctx: AtHome, chart: Chart) -> ClosedCase | None:
    """The emergency that staff closed within the last hours; the latest."""
    found = _recent(ctx, chart)
    return found[-1] if found else None


def _recent(ctx: AtHome, chart: Chart) -> list[ClosedCase]:
    return [
        one
        for one in chart.closed
        if one.urgency is Urgency.emergency and ctx.now - one.at <= AFTER
    ]


def _asked_in(ctx: AtHome, chart: Chart, reading: Reading, text: str) -> ClosedCase | None:
    """The emergency, closed just now, in which staff had asked what these words answer. An
    answer that tells us nothing may be the worst one: "is he breathing?", "no"."""
    told = reading.understood and bool(reading.observations)
    if told or talking.is_thanks(text):
        return None
    asked = talking.staff_asked(ctx, chart)
    found = [one for one in _recent(ctx, chart) if one.id == asked]
    if not found or asked is None:
        return None
    words = talking.words_of_staff(ctx, asked)
    return found[-1] if words is None or "?" in words else None


def _calm(ctx: AtHome, chart: Chart, reading: Reading) -> bool:
    """Understood, a mere question too, and nothing in it that staff would be told of."""
    day = chart.day(ctx.now)
    found = triage(
        [Noted(one, ctx.now, day) for one in reading.observations if one.about != "request"],
        chart.history,
        day=day,
        now=ctx.now,
        rules=ctx.rules,
        species=chart.plan.species,
        protocol=chart.plan.protocol,
    )
    if any(one.urgency > Urgency.none for one in found):
        return False
    return reading.understood

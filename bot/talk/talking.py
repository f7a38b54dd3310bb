"""While staff and someone at home talk about a case: the words go to that case."""

from __future__ import annotations

import re

from bot.model.text import Text

from .outcome import Outcome
from .scene import Case, Chart, Person, Scene
from .words import clock

THANKS = re.compile(
    r"^\W*((ok|okay|got it|thanks?|thank you|so much|very much|will do|great|perfect|understood"
    r"|vale|gracias|muchas|listo|entendido|perfecto|de acuerdo|mil)\W*)+$",
    re.IGNORECASE,
)
WROTE_BACK = Text(en="The owner has written back.", es="El dueño ha respondido.")


def is_thanks(text: str) -> bool:
    """Whether the words are a thank-you or an "understood", and nothing more."""
    return len(text) <= 120 and bool(THANKS.match(text))


def case_in_hand(scene: Scene, chart: Chart) -> Case | None:
    """The case in which staff have written to this chat, until it is closed."""
    return next((one for one in chart.cases if one.id == scene.thread.get("case")), None)


def copy_to_case(scene: Scene, out: Outcome, chart: Chart, person: Person, text: str) -> None:
    """While staff talk with an owner, the owner's words go to the case as they are."""
    case = case_in_hand(scene, chart)
    if case is None:
        return
    for desk in scene.desks:
        if desk.rank == 0:
            out.say(
                desk.chat,
                scene.words.say(
                    "case_said",
                    scene.clinic.language,
                    by=f"{person.name} ({chart.name})",
                    at=clock(chart.local(scene.now)),
                    text=text,
                ),
                topic=f"case:{case.id}",
                patient=chart.id,
            )

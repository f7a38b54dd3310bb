"""What was not understood: asked about once with buttons, then handed to staff."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from bot.model.chat import Media
from bot.model.finding import Finding
from bot.model.observation import Observation
from bot.model.text import Lang
from bot.model.urgency import Urgency
from bot.triage import handed_over

from .buttons import button
from .cases import Said, raise_findings
from .dosing import hold_next
from .outcome import Due, Entry, Outcome, Rows
from .phones import both_phones, what_happens_now, whom_to_phone
from .scene import Chart, Person, Scene
from .sheet import sheet_buttons

PATIENCE = timedelta(minutes=20)
"""How long an unclear message waits for its owner before staff get it."""

OFFERED: dict[str, tuple[tuple[str, str], ...]] = {
    "appetite": (("appetite", "normal"), ("appetite", "less"), ("appetite", "none")),
    "bathroom": (
        ("stool", "none"), ("stool", "loose"), ("stool", "bloody"), ("stool", "straining"),
        ("urine", "none"), ("urine", "bloody"), ("urine", "straining"), ("urine", "accident"),
    ),
    "vomiting": (("vomiting", "yes"), ("vomiting", "bloody"), ("vomiting", "no")),
    "incision": (
        ("incision", "clean"), ("incision", "red"), ("swelling", "mild"), ("swelling", "marked"),
        ("incision", "discharge"), ("incision", "pus"), ("incision", "open"),
        ("incision", "bleeding"),
    ),
    "bandage": (
        ("bandage", "fine"), ("bandage", "wet"), ("bandage", "slipped"), ("bandage", "odour"),
        ("bandage", "tight"),
    ),
    "mobility": (
        ("weight_bearing", "full"), ("weight_bearing", "partial"),
        ("weight_bearing", "toe_touching"), ("weight_bearing", "none"), ("mobility", "worse"),
        ("leg", "crooked"),
    ),
    "pain": (
        ("pain", "none"), ("pain", "mild"), ("pain", "moderate"), ("pain", "severe"),
        ("energy", "quiet"), ("energy", "lethargic"),
    ),
    "dose": (
        ("dose", "given"), ("dose", "missed"), ("dose", "refused"), ("dose", "vomited_up"),
        ("dose", "doubled"),
    ),
}  # fmt: skip
"""What may be meant by a topic, as buttons, the usual first."""

ONLY_WHERE_ASKED = frozenset(("bandage",))
"""Topics that are offered only where the patient's protocol asks about them."""


def pending(scene: Scene) -> dict[str, Any] | None:
    """The unclear message that this chat has been asked about, if it still waits."""
    found: dict[str, Any] | None = scene.thread.get("unclear")
    return found


def ask_once(
    scene: Scene, out: Outcome, chart: Chart, person: Person, said: Said, *, rest: bool = False
) -> None:
    """Ask what was meant, with buttons that fit; staff get it if no answer comes."""
    phone = whom_to_phone(scene, person.lang)
    key = "ask_rest" if rest else "ask_once"
    out.say(
        person.chat,
        scene.words.say(key, person.lang, phone=phone),
        buttons=_buttons(scene, chart, person),
        topic=f"unclear:{chart.id}",
        patient=chart.id,
    )
    data = {
        "patient": chart.id, "chat": person.chat, "by": said.by, "text": said.text,
        "source": said.source,
    }  # fmt: skip
    before = out.threads.get(person.chat, scene.thread)
    out.threads[person.chat] = {**before, "unclear": data}
    out.add(
        Due(f"unclear:{person.chat}", "unclear", scene.now + PATIENCE, chart.id, data),
        Entry("unclear", "bot", said.text, chart.id, {"asked": key, "source": said.source}),
    )


def _buttons(scene: Scene, chart: Chart, person: Person) -> Rows:
    """What was asked just now, if anything; then the topics; then the clinic."""
    secret, words, lang = scene.secret, scene.words, person.lang
    rows: list[Any] = []
    asked = chart.asked(scene.now)
    if asked and len(asked[0].open) == 1:
        rows += sheet_buttons(scene, person.chat, asked[0], lang)
    topics = [
        button(secret, person.chat, words.say(f"ask_about_{topic}", lang), f"q.{topic}.{chart.id}")
        for topic in OFFERED
        if topic not in ONLY_WHERE_ASKED
        or any(one.asks == topic for one in chart.protocol.activities)
    ]
    rows += [tuple(topics[i : i + 2]) for i in range(0, len(topics), 2)]
    clinic = words.say("ask_about_clinic", lang)
    rows.append((button(secret, person.chat, clinic, f"q.clinic.{chart.id}"),))
    return tuple(rows)


def settle(scene: Scene, out: Outcome, chat: int) -> None:
    """The unclear message has been cleared up: forget it, and call off the handing over."""
    if out.threads.get(chat, {}).get("unclear", None) not in (None, scene.thread.get("unclear")):
        return  # asked about just now, in this very outcome
    if "unclear" in scene.thread:
        rest = {key: value for key, value in out.threads.get(chat, scene.thread).items()
                if key != "unclear"}  # fmt: skip
        out.threads[chat] = rest
        out.cancel.append(f"unclear:{chat}")


def hand_over(scene: Scene, out: Outcome, chart: Chart, data: dict[str, Any]) -> list[Finding]:
    """Give the owner's own words to staff, and tell the owner so."""
    finding = handed_over(data["text"], scene.rules)
    said = Said(data["by"], data["text"], data["source"])
    person = next((one for one in chart.people if one.chat == data["chat"]), None)
    lang: Lang = person.lang if person else chart.plan.language
    # It may have been a second dose, and nobody says: the next one waits for staff.
    wait, held = hold_next(scene, out, chart, data.get("maybe_twice"), lang)
    raise_findings(scene, out, chart, [finding, *held], said)
    key = "passed_on" if data.get("asked_for") else "handed_over"
    told = scene.words.say(key, lang, phone=both_phones(scene, lang))
    if held:
        told = what_happens_now(scene, chart, Urgency.same_day, lang)
    out.say(data["chat"], "\n\n".join([*wait, told]), patient=chart.id)
    for media in data.get("media", ()):
        for desk in scene.desks:
            if desk.rank == 0:
                shown = Media.model_validate(media)
                out.say(desk.chat, data["by"], media=shown, topic=f"patient:{chart.id}")
    settle(scene, out, data["chat"])
    left = out.threads.get(data["chat"], scene.thread)
    if "which" in left:
        out.threads[data["chat"]] = {k: v for k, v in left.items() if k != "which"}
    return [finding]


def offer_values(scene: Scene, out: Outcome, chart: Chart, person: Person, topic: str) -> None:
    """The topic was tapped: offer what may be seen of it, in plain words."""
    made = [
        button(
            scene.secret,
            person.chat,
            scene.words.observation(Observation(about, value), person.lang),
            f"v.{chart.id}.{about}.{value}",
        )
        for about, value in OFFERED[topic]
    ]
    clinic = scene.words.say("ask_about_clinic", person.lang)
    rows = [(one,) for one in made]
    rows.append((button(scene.secret, person.chat, clinic, f"q.clinic.{chart.id}"),))
    out.say(
        person.chat,
        scene.words.say("describe", person.lang),
        buttons=tuple(rows),
        topic=f"unclear:{chart.id}",
        patient=chart.id,
    )

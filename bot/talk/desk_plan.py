"""Changing a plan from the staff chat: what, why, what the owner will be told, done.

Nothing changes before a reason is given: tapping one, or writing one, is the confirmation.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from bot.model.chat import Button, Incoming
from bot.model.plan import Medicine
from bot.plan.order import load_medicine
from bot.plan.prompts import rebuild
from bot.protocol.problem import FlowError

from . import wound
from .board import named
from .buttons import button, mark_of
from .cases import heard_again
from .outcome import Entry, NewPlan, Outcome, Rows
from .plan_changes import GROUPS, Changed, change, offer, with_medicine
from .scene import Chart, Member, Scene

REASONS = ("decided", "side_effect", "healing", "worse")
"""Ready reasons; the words stand in flows/words.yaml under ``reason_…``."""
NEW_MEDICINE = "mn"
PATIENCE = timedelta(hours=1)
"""How long a question for a reason waits."""


def command(
    scene: Scene, out: Outcome, event: Incoming, actor: Member, word: str, argument: str
) -> None:
    """``/plan NAME``: what can be changed; ``/medicine NAME`` and an order below it."""
    first, _, rest = argument.partition("\n")
    chart = named(scene, out, event, first)
    if chart is None:
        return
    if word == "/medicine":
        _medicine(scene, out, event, actor, chart, rest)
        return
    text, rows = _menu(scene, event.chat, chart)
    out.say(event.chat, text, buttons=rows, patient=chart.id, topic=f"reason:{chart.id}")


def _menu(scene: Scene, chat: int, chart: Chart) -> tuple[str, Rows]:
    lang = scene.clinic.language
    made = [
        button(scene.secret, chat, scene.words.say(f"group_{g}", lang), f"t.{chart.id}.g-{g}")
        for g in GROUPS
    ]
    head = scene.words.say("plan_what", lang, name=chart.name, day=chart.day(scene.now))
    return head, (tuple(made[:2]), tuple(made[2:4]), (made[4],))


def tap(scene: Scene, out: Outcome, event: Incoming, actor: Member, parts: list[str]) -> bool:
    """A button of the plan's dialogue; False when it leads nowhere."""
    if len(parts) != 3 or not scene.charts or str(scene.charts[0].id) != parts[1]:
        return False
    chart, code = scene.charts[0], parts[2]
    lang = scene.clinic.language
    out.answer(event.callback)
    if code == "x":
        out.threads[event.chat] = {k: v for k, v in scene.thread.items() if k != "reason"}
        text = scene.words.say("plan_nothing", lang, name=chart.name)
        out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        return True
    if code == "zo":
        text = scene.words.say("plan_reop_how", lang, name=chart.name, id=chart.id)
        out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        return True
    if code.startswith("g-"):
        return _group(scene, out, event, chart, code[2:])
    leaf, mark, why = code.partition("!")
    if not mark:
        return _ask_reason(scene, out, event, chart, leaf)
    if why not in REASONS:
        return False
    if not _waits(scene, chart, leaf, event.message):
        return True  # a second tap, or a question that was left long ago
    words = scene.words.say(f"reason_{why}", lang)
    return _do(scene, out, event, actor, chart, leaf, words, event.message)


def _group(scene: Scene, out: Outcome, event: Incoming, chart: Chart, group: str) -> bool:
    if group not in GROUPS:
        return False
    lang = scene.clinic.language
    offered = offer(chart.plan, chart.state, group, scene.now)
    rows = [
        (button(scene.secret, event.chat, scene.words.say(key, lang, what=what),
                f"t.{chart.id}.{code}"),)
        for code, key, what in offered
    ]  # fmt: skip
    rows.append((_cancel(scene, event.chat, chart),))
    head = scene.words.say("plan_what", lang, name=chart.name, day=chart.day(scene.now))
    if group == "med":
        head = f"{head}\n{scene.words.say('plan_medicine_how', lang, name=chart.name)}"
    out.edit(event.chat, "", head, tuple(rows), patient=chart.id, message=event.message)
    return True


def _cancel(scene: Scene, chat: int, chart: Chart) -> Button:
    words = scene.words.say("plan_cancel", scene.clinic.language)
    return button(scene.secret, chat, words, f"t.{chart.id}.x")


def _ask_reason(scene: Scene, out: Outcome, event: Incoming, chart: Chart, leaf: str) -> bool:
    made = _changed(scene, chart, leaf, "…", "…")
    if made is None:
        return False
    text, rows = _question(scene, event.chat, chart, leaf, made)
    out.edit(event.chat, "", text, rows, patient=chart.id, message=event.message)
    waiting = {
        "patient": chart.id, "code": leaf, "message": event.message,
        "at": scene.now.isoformat(),
    }  # fmt: skip
    out.threads[event.chat] = {**scene.thread, "reason": waiting}
    return True


def _waits(scene: Scene, chart: Chart, leaf: str, message: int | None) -> bool:
    """Whether this very change waits for a reason: asked under this message, lately."""
    waiting = _pending(scene, leaf)
    return (
        waiting is not None
        and waiting["patient"] == chart.id
        and waiting.get("message") in (None, message)
        and scene.now - datetime.fromisoformat(waiting["at"]) <= PATIENCE
    )


def _pending(scene: Scene, leaf: str) -> dict[str, Any] | None:
    """What is kept of a question: an order by its own mark, any other change as the one
    that this chat was asked about last."""
    if leaf.startswith(f"{NEW_MEDICINE}-"):
        kept: dict[str, Any] | None = scene.thread.get("orders", {}).get(leaf)
        return kept
    waiting: dict[str, Any] = scene.thread.get("reason") or {}
    return waiting if waiting.get("code") == leaf else None


def _question(scene: Scene, chat: int, chart: Chart, leaf: str, made: Changed) -> tuple[str, Rows]:
    """What would change, what the owner will read, and: why?"""
    lang = scene.clinic.language
    told = (
        scene.words.say(made.words, lang, name=chart.name, reason="", **made.fields)
        if made.words
        else scene.words.say("plan_silent", lang)
    )
    text = scene.words.say("plan_why", lang, name=chart.name, told=told)
    rows = [
        (button(scene.secret, chat, scene.words.say(f"reason_{why}", lang),
                f"t.{chart.id}.{leaf}!{why}"),)
        for why in REASONS
    ]  # fmt: skip
    return text, (*rows, (_cancel(scene, chat, chart),))


def reason(scene: Scene, out: Outcome, event: Incoming, actor: Member) -> bool:
    """A reason in own words, in reply to the question: the change is made."""
    parts = scene.reply_topic.split(":")
    chart = scene.chart(int(parts[1]))
    leaf = parts[2] if len(parts) > 2 else (scene.thread.get("reason") or {}).get("code", "")
    text = event.text.strip()
    if chart is None or not text or not _waits(scene, chart, leaf, event.reply_to):
        return False
    return _do(scene, out, event, actor, chart, leaf, text, event.reply_to)


def _medicine(
    scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart, order: str
) -> None:
    """A new or changed medicine, as in an order; checked, and asked about like any change."""
    del actor
    lang = scene.clinic.language
    if not order.strip():
        out.say(event.chat, scene.words.say("plan_medicine_how", lang, name=chart.name))
        return
    try:
        medicine = load_medicine(order, "medicine")
    except FlowError as error:
        out.say(event.chat, f"{scene.words.say('plan_not_changed', lang)}\n{error}")
        return
    made = with_medicine(chart.plan, medicine, scene.now)
    kept = medicine.model_dump(mode="json")
    leaf = f"{NEW_MEDICINE}-{mark_of(f'{chart.id}{kept}')}"
    text, rows = _question(scene, event.chat, chart, leaf, made)
    warnings = scene.check_order(made.plan)
    out.say(
        event.chat,
        "\n".join([text, *warnings]),
        buttons=rows,
        patient=chart.id,
        topic=f"reason:{chart.id}:{leaf}",
    )
    waiting = {"patient": chart.id, "at": scene.now.isoformat(), "medicine": kept}
    orders = {**scene.thread.get("orders", {}), leaf: waiting}
    out.threads[event.chat] = {**scene.thread, "orders": dict(list(orders.items())[-10:])}


def _changed(scene: Scene, chart: Chart, leaf: str, author: str, why: str) -> Changed | None:
    if leaf.startswith(NEW_MEDICINE):
        kept = _pending(scene, leaf)
        if kept is None:
            return None
        return with_medicine(chart.plan, Medicine.model_validate(kept["medicine"]), scene.now)
    return change(
        chart.plan, chart.protocol, chart.history, leaf, scene.now, chart.day(scene.now),
        author, why,
    )  # fmt: skip


def _do(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    actor: Member,
    chart: Chart,
    leaf: str,
    why: str,
    message: int | None,
) -> bool:
    made = _changed(scene, chart, leaf, actor.name, why)
    if made is None:
        return False
    carry_out(scene, out, chart, made, actor.name, why)
    lang = scene.clinic.language
    done = scene.words.say("plan_done", lang, by=actor.name, name=chart.name, reason=why)
    if message is not None:
        out.edit(event.chat, "", f"✓ {done}", (), patient=chart.id, message=message)
    else:
        out.say(event.chat, f"✓ {done}", patient=chart.id)
    left = {k: v for k, v in scene.thread.items() if k != "reason"}
    left["orders"] = {k: v for k, v in left.get("orders", {}).items() if k != leaf}
    out.threads[event.chat] = left
    return True


def carry_out(
    scene: Scene, out: Outcome, chart: Chart, made: Changed, author: str, why: str
) -> None:
    """Keep a change: future prompts are built anew, past ones stay; the owner is told in
    plain words, in each person's language."""
    data = {"change": made.words or made.then, "why": why, **made.fields}
    words = made.words or "told_died"
    what = scene.words.say(words, scene.clinic.language, name=chart.name, reason="", **made.fields)
    out.add(Entry("plan", author, what, chart.id, data))
    sent = chart.settled()
    coming = () if made.then else rebuild(made.plan, chart.protocol, scene.now, sent)
    if made.then == "resume":
        coming = rebuild(made.plan, chart.protocol, scene.now, sent)
    if made.then in ("", "pause", "resume"):
        out.add(NewPlan(chart.id, made.plan, coming))
    if made.then == "pause":
        out.states[chart.id] = "paused"
        heard_again(scene, out, chart, author)  # in hospital nobody at home is silent
    elif made.then == "resume":
        out.states[chart.id] = "active"
    elif made.then:
        out.end.add(chart.id)
        out.cancel += wound.keys_of(chart.id)  # "and with it my messages"
    if made.then == "died":
        out.silence.add(chart.id)
        return
    for person in chart.people:
        text = scene.words.say(made.words, person.lang, name=chart.name, reason="", **made.fields)
        head = scene.words.say("saved_for_staff", person.lang, clinic=scene.clinic.name)
        out.say(person.chat, f"{head}\n{text}", patient=chart.id, topic=f"patient:{chart.id}")

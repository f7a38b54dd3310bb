"""Everything that someone at home may send: who is meant, and what to do with it."""

from __future__ import annotations

from bot.model.chat import Incoming
from bot.model.text import Lang

from . import clarify, household, pictures, twice, wishes, wound
from .buttons import action_of
from .cases import heard_again
from .late_told import tap_when, told_when_anew
from .outcome import Entry, Outcome
from .phones import both_phones
from .reply import cannot_be_read, reply
from .scene import Person, Scene
from .spoken import spoken
from .tap import tap_all, tap_line, tap_undo, tap_value
from .undo import retract, without
from .which import ask_which, changed_while_waiting, told_which, which


def on_owner(scene: Scene, event: Incoming) -> Outcome:
    """An event from a private chat with someone at home, or with a stranger."""
    out = Outcome(scene.cause, event.chat)
    if event.kind in ("blocked", "unblocked"):
        _reachable(scene, out, event)
    elif event.text.startswith("/start "):
        _start(scene, out, event)
    elif scene.person is None or not scene.charts:
        _stranger(scene, out, event)
    elif event.kind == "button":
        _button(scene, out, event, scene.person)
    elif event.kind == "edited":
        _edited(scene, out, event, scene.person)
    elif event.kind == "message":
        _message(scene, out, event, scene.person)
    if (
        scene.person is not None
        and not scene.person.reachable
        and event.kind in ("message", "button")
    ):
        out.reachable[scene.person.chat] = True  # who writes can be written to
    for chart in scene.charts:
        if chart.id in out.heard:
            heard_again(scene, out, chart, scene.person.name if scene.person else _who(event))
    return out


def _start(scene: Scene, out: Outcome, event: Incoming) -> None:
    invitation = scene.invitation
    lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
    chart = scene.chart(invitation.patient) if invitation and invitation.patient else None
    if chart and scene.person and any(p.id == scene.person.id for p in chart.people):
        text = scene.words.say("already_in", lang, name=chart.name)
        out.say(event.chat, text, patient=chart.id)
    elif invitation is None or not invitation.good or chart is None:
        out.say(event.chat, scene.words.say("bad_code", lang, phone=both_phones(scene, lang)))
        out.add(Entry("refused", _who(event), "a link that is unknown, used or has run out"))
    else:
        household.join(scene, out, event, chart)


def _stranger(scene: Scene, out: Outcome, event: Incoming) -> None:
    if event.kind == "button":
        out.answer(event.callback)
    elif event.kind == "message":
        lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
        phone = both_phones(scene, lang)
        out.say(event.chat, scene.words.say("stranger", lang, phone=phone))
    said = f"a stranger: {event.text[:200] or event.kind}"
    out.add(Entry("refused", _who(event), said, None, {"data": event.data[:64]}))


def _who(event: Incoming) -> str:
    return f"{event.sender.name} ({event.sender.user})" if event.sender else f"chat {event.chat}"


def _reachable(scene: Scene, out: Outcome, event: Incoming) -> None:
    """The bot was blocked or let in again; staff hear when it was blocked."""
    if scene.person is None:
        return
    out.reachable[scene.person.chat] = event.kind == "unblocked"
    for chart in scene.charts:
        out.add(Entry(event.kind, scene.person.name, f"the bot was {event.kind}", chart.id))
        if event.kind == "blocked" and chart.state == "active":
            for desk in scene.desks:
                if desk.rank == 0:
                    words = scene.words.say(
                        "desk_blocked", scene.clinic.language, by=scene.person.name,
                        name=chart.name, phone=chart.plan.phone or "–",
                    )  # fmt: skip
                    out.say(desk.chat, words, patient=chart.id, topic=f"patient:{chart.id}")


def _message(scene: Scene, out: Outcome, event: Incoming, person: Person) -> None:
    command = wishes.command_of(event.text) if not event.media else None
    chart = which(scene, event)
    source = f"message:{event.chat}:{event.message}"
    if chart is None:
        ask_which(scene, out, event, person, source)
    elif event.text.startswith("/zone"):
        household.move_zone(scene, out, chart, person, event.text[5:].strip())
    elif command is not None:
        wishes.carry_out(scene, out, event, chart, person, command)
    elif event.media:
        pictures.got(scene, out, event, chart, person, source)
    elif event.text.strip():
        spoken(scene, out, event, chart, person, event.text, source)
    else:
        cannot_be_read(scene, out, chart, person, source)


def _button(scene: Scene, out: Outcome, event: Incoming, person: Person) -> None:
    action = action_of(scene.secret, (event.chat, *scene.former), event.data)
    if action is None or not _act(scene, out, event, person, action.split(".")):
        # One that was ours is too old, or about what is theirs no longer: never silence.
        old = action is not None and scene.person is not None
        out.answer(event.callback, scene.words.say("tap_over", person.lang) if old else "")
        out.add(
            Entry(
                "refused", _who(event), "a button that is not ours or not theirs", None,
                {"data": event.data[:64]},
            )
        )  # fmt: skip


def _act(scene: Scene, out: Outcome, event: Incoming, person: Person, action: list[str]) -> bool:
    """Do what a genuine button says; False when this person may not."""
    kind, *rest = action
    if kind == "i" and len(rest) == 2:
        return tap_line(scene, out, event, person, int(rest[0]), rest[1])
    if kind == "a":
        return tap_all(scene, out, event, person, int(rest[0]))
    if kind == "g" and len(rest) == 3:
        return tap_when(scene, out, event, person, int(rest[0]), rest[1], rest[2])
    if kind == "z":
        return tap_undo(scene, out, event, person, int(rest[0]))
    if kind == "x":
        return twice.same_dose(scene, out, event, person, int(rest[0]), rest[1])
    if kind == "w":
        return told_which(scene, out, event, person, int(rest[0]))
    if kind == "l":
        out.answer(event.callback)
        name = "english" if rest[0] == "en" else "spanish"
        wishes.carry_out(scene, out, event, scene.charts[0], person, name)
        return True
    chart = scene.chart(int(rest[0] if kind == "v" else rest[-1]))
    if chart is None:
        return False
    if kind == "v":
        return tap_value(scene, out, event, person, chart, rest[1], rest[2])
    if kind == "y" and len(rest) == 3:
        return wound.tapped(scene, out, event, person, chart, int(rest[0]), rest[1])
    out.answer(event.callback)
    if kind == "m":
        return wishes.carry_out(scene, out, event, chart, person, rest[0])
    if kind == "h":
        return wishes.own_setting(scene, out, event, chart, person, rest[0])
    if kind == "s":
        if rest[0] == "data":
            household.forget(scene, out, chart, person)
        else:
            household.stop(scene, out, chart, person, sure=rest[0] == "yes")
        return True
    if kind == "q" and rest[0] in clarify.OFFERED:
        clarify.offer_values(scene, out, chart, person, rest[0])
        return True
    if kind == "q" and rest[0] == "clinic":
        waiting = clarify.pending(scene)
        if waiting is not None:
            clarify.hand_over(scene, out, chart, {**waiting, "asked_for": True})
        return True
    return False


def _edited(scene: Scene, out: Outcome, event: Incoming, person: Person) -> None:
    """An edited message corrects: the old reading no longer counts, the new one does."""
    source = f"message:{event.chat}:{event.message}"
    for chart in scene.charts:
        if any(found == source for found, _ in chart.sources.values()) or any(
            line.source == source for line in chart.lines()
        ):
            told = [n.at for n in chart.history if chart.sources[n.id][0] == source]
            retract(scene, out, chart, person, source, "corrected")
            left = without(scene, chart, source)
            if told_when_anew(scene, out, left, chart, person, event.text, source):
                return
            reply(
                scene, out, event, left, person, event.text, source,
                without=source, first_at=min(told, default=None),
            )  # fmt: skip
            return
    if changed_while_waiting(scene, out, event, person, source):
        return
    chart_or_none = which(scene, event)
    if chart_or_none is not None and event.text.strip():
        spoken(scene, out, event, chart_or_none, person, event.text, source, without=source)

"""What must hold, whatever happens: a small model beside the product. It knows the order, what
people did and what was delivered to them, and reckons from these alone what may be offered.
It imports nothing of the product."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Final

from .facts import Cause, Dose, Facts, Order, Shown, Told
from .told_doses import ToldDoses

DAY: Final = timedelta(days=1)
MINUTE: Final = timedelta(minutes=1)
LATEST: Final = 2 * DAY
"""What is changed so long after a dose may still take it back, and is told then."""
SHOWN: Final = timedelta(hours=30)
"""Messages so old are looked at; a button of an older one is refused when it is pressed."""
SOOTHING = re.compile(
    r"\b(normal|common|next working day|común|siguiente día (hábil|laboral))\b|Right\?|¿Correcto\?",
    re.IGNORECASE,
)
KEPT = re.compile(
    r"on hold|wait|hold|no more|do not give|not sent in time|espera|espere|aguarde"
    r"|no l[aeo] dé|no se envió|left out|se omite|taken back|retirado|told otherwise"
    r"|se avisó de otra forma",
    re.IGNORECASE,
)
TOO_CLOSE = re.compile(r"two doses of \w+ [\d.]+ hours apart|dos dosis de \w+ con [\d.]+ horas")
FROM_A_TAP: Final = frozenset({"i", "a", "g", "x", "v", "r", "y", "k"})
"""Buttons of the household by which something is told."""


@dataclass(slots=True)
class Model:
    """One history. ``step`` gives back what does not hold."""

    order: Order
    home: Collection[int]  # chats
    words: Collection[str] = ()  # staff's own
    must: dict[str, int] = field(default_factory=dict)  # med → must be held
    deaths: set[int] = field(default_factory=set)  # who told of a death, and has not taken it back
    prompted: set[str] = field(default_factory=set)
    told_kept: list[tuple[str, datetime]] = field(default_factory=list)
    late: dict[str, list[tuple[datetime, int]]] = field(default_factory=dict)
    free: list[tuple[datetime, datetime]] = field(default_factory=list)
    """From when to when nothing was to be prompted."""
    last: datetime | None = None
    journeys: int = 0
    erasing: list[int] = field(default_factory=list)  # who left and wants their name deleted
    erased: set[int] = field(default_factory=set)  # whose name is deleted: a stranger from then on
    told_doses: ToldDoses = field(init=False)

    def __post_init__(self) -> None:
        self.told_doses = ToldDoses(self.order, self.home)

    def step(
        self, cause: Cause, now: datetime, before: Facts, after: Facts,
        delivered: Sequence[Shown], live: Sequence[Shown],
    ) -> Iterator[str]:  # fmt: skip
        """All that does not hold after something happened."""
        if cause.user in self.erased:  # nobody here: told whom to phone, and no more
            cause = Cause("stranger")
        self._remember(cause, now, before, after, delivered)
        yield from self._offers(now, after, delivered, live)
        yield from self._facts(cause, now, before, after)
        yield from self._others(cause, before, after)
        yield from self._holds(cause, before, after)
        yield from self._silence(cause, before, after, delivered)
        yield from self._emergency(cause, before, after, delivered)
        yield from self._cases(before, after)
        yield from self.told_doses.step(cause, now, before, after, delivered)

    # -- what is known beside the product -----------------------------------------------------

    def _remember(
        self, cause: Cause, now: datetime, before: Facts, after: Facts, delivered: Sequence[Shown]
    ) -> None:
        if cause.kind == "tap" and cause.code in "ia" and before.state != "ended":
            for item in cause.meds:
                self.late.setdefault(item, []).append((now, cause.user))
        if cause.kind in ("say", "edit") and "dose" in cause.saying.may:
            for med in self.order.meds:  # asked when, it counts from these words on
                self.late.setdefault(f"said:{med.name}", []).append((now, cause.user))
        leaves = cause.kind == "tap" and cause.code == "s" and "data" in cause.args[:1]
        if leaves and cause.user not in self.erasing:
            self.erasing.append(cause.user)
        if cause.due == "forget" and self.erasing:
            self.erased.add(self.erasing.pop(0))
        for one in delivered:
            if one.chat not in self.home:
                continue
            self.prompted |= {item for _, code, item in one.buttons if code == "i" and item}
            for med in self.order.meds:
                if med.name in one.text and KEPT.search(one.text):
                    self.told_kept.append((med.name, now))
        saying = cause.saying
        told = cause.kind in ("say", "edit") and cause.user in before.members
        on = before.state == "active" and not before.over
        if told and saying.state == "death" and (self.deaths or on):
            self.deaths.add(cause.user)
        elif cause.user in self.deaths and not _tells_death(after, cause.user):
            self.deaths.discard(cause.user)
        if told and on:
            for name in self._meant(saying.holds):
                if name not in before.stopped:
                    self.must[name] = 1
        if told and saying.state == "emergency" and not after.over:
            self.deaths = set()  # told alive and in danger: the emergency goes before
        if told and saying.state == "alive" and _urgent(after):
            self.deaths = set()  # told alive by another: all waits, and staff say what is true
        if cause.kind == "staff":
            self.deaths = self.deaths if after.over else set()
            if set(before.holds) - set(after.holds):
                # Not what an open emergency keeps back besides: that goes with it.
                held = {name for target, _ in after.holds.values() for name in self._of(target)}
                self.must = {med: 1 for med in self.must if med in held}
        if before.over or before.state != "active" or not before.reachable:
            self.free.append((self.last or now, now))
        self.last = now

    def _of(self, target: str) -> list[str]:
        """The medicines of a hold as it is stored: ``med:carprofen``, ``by_mouth``, …"""
        if target.startswith("med:"):
            return [target.removeprefix("med:")]
        whole = target in ("by_mouth", "everything")
        soothes = target == "anti_inflammatories"
        return [x.name for x in self.order.meds if whole or (soothes and x.soothes)]

    def _meant(self, holds: str) -> list[str]:
        return [
            med.name for med in self.order.meds
            if holds == "mouth" or (holds == "anti" and med.soothes) or holds == med.name
        ]  # fmt: skip

    def _names(self, held: frozenset[str]) -> frozenset[str]:
        every = frozenset(med.name for med in self.order.meds)
        return held | every if "everything" in held else held

    # -- never inside the gap, never what is held or stopped ----------------------------------

    def _offers(
        self, now: datetime, facts: Facts, delivered: Sequence[Shown], live: Sequence[Shown]
    ) -> Iterator[str]:
        fresh = [one for one in delivered if one.chat in self.home]
        # Whoever has left is a stranger there: no button of theirs does anything.
        old = [x for x in live if now - x.at < SHOWN and x.chat in facts.members]
        for one in [*fresh, *old]:
            for label, code, item in one.buttons:
                if code == "i" and item:
                    for why in self.why_not(now, facts, item):
                        yield f"offer: “{label}” ({item}): {why}"
        for one in fresh:
            yield from _all_done(one)

    def why_not(self, now: datetime, facts: Facts, item: str) -> Iterator[str]:
        """Why a dose must not be offered now."""
        dose = facts.doses.get(item)
        if dose is None:
            yield "no such dose is planned"
            return
        med = next((one for one in self.order.meds if one.name == dose.med), None)
        if facts.over or self.deaths:
            yield "after the end"
        if dose.med in self._names(facts.held) | set(self.must):
            yield "on hold"
        if dose.med in facts.stopped:
            yield "stopped"
        if _urgent(facts):
            yield "an emergency is open"
        if dose.state == "answered":
            yield "it is told already"
        for given in facts.given.get(dose.med, ()):
            if med is not None and abs(now - given) < med.gap:
                yield f"within the gap of the one given at {given:%d %H:%M} UTC"

    # -- never a fact that nobody told --------------------------------------------------------

    def _facts(self, cause: Cause, now: datetime, before: Facts, after: Facts) -> Iterator[str]:
        for id, told in after.told.items():
            if id in before.told:
                continue
            what = f"{told.about}={told.value} {told.med}".strip()
            match cause.kind:
                case "say" | "edit" | "tap" if (told.about, told.value) == ("dose", "given") and (
                    not told.med
                ):
                    yield f"fact: a dose of no medicine by {cause.kind} {cause.code}"
                case "say" | "edit":
                    if told.about not in cause.saying.may and told.about != "request":
                        yield f"fact: {what} from “{cause.saying.text}”"
                    elif told.user != cause.user:
                        yield f"fact: {what} is written to somebody else"
                case "tap":
                    if cause.code not in FROM_A_TAP and not _says_yes(cause):
                        yield f"fact: {what} from a button “{cause.code}”"
                    elif told.user != cause.user:
                        yield f"fact: {what} is written to somebody else"
                case "due":
                    if cause.due != "given":
                        yield f"fact: {what} by itself ({cause.due})"
                case _ if told.about == "dose":
                    yield f"fact: {what} from staff"
        for item, dose in after.doses.items():
            old = before.doses.get(item)
            if dose.choice != "given" or (old is not None and old.choice == "given"):
                continue
            yield from self._given(cause, now, before, item, dose)

    def _given(
        self, cause: Cause, now: datetime, before: Facts, item: str, dose: Dose
    ) -> Iterator[str]:
        told = dose.at is not None and dose.at <= now
        if not told:
            yield f"fact: {item} given in time to come, at {dose.at}"
        if cause.kind == "due":
            # It may have been the dose of another hour that the tap turns out to tell of.
            taps = [
                tap for one, found in self.late.items() if _med(one) == _med(item) for tap in found
            ]
            if cause.due != "given" or (dose.at, dose.user) not in taps:
                yield f"fact: {item} given by itself"
        elif cause.kind == "tap" and cause.code in "ia":
            if _med(item) not in map(_med, cause.meds):
                yield f"fact: {item} given by a button of another dose"
            elif dose.at != now:
                yield f"fact: {item} tapped now is written for {dose.at}"
            for why in self.why_not(now, before, item):
                yield f"noted: {item} by an old button: {why}"
        elif cause.kind == "tap" and cause.code == "g" and cause.args[-1] == "x":
            yield f"fact: {item} given by “not given”"
        elif cause.kind == "staff":
            yield f"fact: {item} given by staff"

    # -- one person's undo never changes what another told ------------------------------------

    def _others(self, cause: Cause, before: Facts, after: Facts) -> Iterator[str]:
        for id, told in before.told.items():
            alive = told.about == "life" and cause.kind == "staff"  # a death taken back
            alive = alive or self._given_after_all(told, before, after)
            if id not in after.told and (told.user != cause.user or not told.user) and not alive:
                yield f"undo: {told.about}={told.value} of {told.user} by {cause.kind} {cause.user}"
        for item, dose in before.doses.items():
            now = after.doses.get(item)
            stays = now is not None and (now.choice, now.at) == (dose.choice, dose.at)
            stays = stays and now is not None and self._teller(now) == self._teller(dose)
            if dose.choice == "given" and dose.user != cause.user and not stays:
                yield f"undo: {item} of {dose.user} by {cause.kind} {cause.user}"

    @staticmethod
    def _given_after_all(told: Told, before: Facts, after: Facts) -> bool:
        """What was told as not given, and is now told as given."""
        new = [after.told[id] for id in after.told.keys() - before.told.keys()]
        given = {(one.about, one.value, one.med) for one in new}
        missed = (told.about, told.value) == ("dose", "missed")
        return missed and ("dose", "given", told.med) in given

    def _teller(self, dose: Dose) -> int | None:
        """Who told of it; nobody, once they had their name deleted: the dose itself stays."""
        nameless = dose.user is not None and dose.user < 0
        return 0 if self.erased and (nameless or dose.user in self.erased) else dose.user

    # -- a hold never ends by itself ----------------------------------------------------------

    def _holds(self, cause: Cause, before: Facts, after: Facts) -> Iterator[str]:
        for id, (target, ends) in before.holds.items():
            if id in after.holds:
                continue
            own = cause.kind in ("say", "edit", "tap")
            good = cause.clinician or (cause.kind == "staff" and ends == "answer")
            good = good or (own and ends == "answer") or (own and target == "everything")
            if not good:
                yield f"hold: {target} ({ends}) ended by {cause.kind} {cause.due}{cause.code}"
        missing = set(self.must) - self._names(after.held)
        if missing and not after.over and after.state == "active":
            yield f"hold: not held though told: {', '.join(sorted(missing))}"
        alarm = cause.saying.state == "emergency" and cause.kind in ("say", "edit")
        alarm = alarm and cause.user in before.members  # who has left is a stranger
        if alarm and not after.over and not _urgent(after):
            yield f"emergency: none is open after “{cause.saying.text}”"

    # -- nothing after a death or the end -----------------------------------------------------

    def _silence(
        self, cause: Cause, before: Facts, after: Facts, delivered: Sequence[Shown]
    ) -> Iterator[str]:
        if self.deaths and not after.over:
            yield "death: told, and the course goes on"
        if not (before.over and after.over):
            return
        for one in delivered:
            if one.chat in self.home and one.kind == "send":
                direct = cause.user == one.chat or cause.kind in ("staff", "stranger")
                # An animal whose course staff have ended is alive: what cannot wait is told.
                direct = direct or (before.state == "ended" and bool(_urgent(after)))
                # Nor do words that it wrote before stay without an answer.
                direct = direct or (before.state == "ended" and cause.due == "unclear")
                # Nor two doses too close, of which the tap was made before the end.
                close = cause.due == "given" and TOO_CLOSE.search(one.text) is not None
                direct = direct or (before.state == "ended" and close)
                # Nor that another says of a dose that it was not given.
                denied = cause.kind == "say" and "dose" in cause.saying.may
                direct = direct or (before.state == "ended" and denied)
                if not direct and cause.due != "wound":
                    yield f"death: sent by {cause.kind} {cause.due}: {one.text[:80]!r}"

    # -- an emergency is kept to its end ------------------------------------------------------

    def _emergency(
        self, cause: Cause, before: Facts, after: Facts, delivered: Sequence[Shown]
    ) -> Iterator[str]:
        was, still = _urgent(before), _urgent(after)
        if was - still and cause.kind != "staff":
            yield f"emergency: ended by {cause.kind}"
        if not still or before.over:
            return
        for one in delivered:
            said = one.chat in self.home and one.kind != "edit" and cause.kind != "staff"
            if said and (found := SOOTHING.search(one.text)) is not None:
                yield f"emergency: says {found[0]!r}: {one.text[:120]!r}"
        if was and cause.user in before.members:
            heard = any(one.chat not in self.home for one in delivered)
            grew = any(after.cases[one][2] > before.cases[one][2] for one in was & still)
            if not (heard or grew):
                yield f"emergency: {cause.kind} {cause.code} does not join it"

    # -- cases --------------------------------------------------------------------------------

    def _cases(self, before: Facts, after: Facts) -> Iterator[str]:
        if len(fresh := set(after.cases) - set(before.cases)) > 1:
            yield f"case: one event opened {len(fresh)}"
        # One that was answered stands on every morning's board.
        waits = {id for id, (_, state, _) in after.cases.items() if state != "answered"}
        if lonely := waits - after.watched:
            yield f"case: {', '.join(sorted(lonely))} is never looked at again"

    # -- never a dose lost unsaid -------------------------------------------------------------

    def lost(self, since: datetime, until: datetime, facts: Facts) -> Iterator[str]:
        """The slots of a time that ended as nothing. After a journey the product's own."""
        planned = [(one.med, one.slot) for one in facts.doses.values()]
        if facts.over or facts.state != "active" or not facts.reachable:
            self.free.append((self.last or since, until))
        slots = planned if self.journeys else list(self.order.slots())
        by_slot = {(one.med, one.slot): item for item, one in facts.doses.items()}
        for med, slot in slots:
            if not since < slot <= until or self._excused(med, slot, facts):
                continue
            item = by_slot.get((med, slot))
            if item is None:
                yield f"lost: {med} of {slot:%d %H:%M} UTC stands nowhere"
            elif item not in self.prompted and facts.doses[item].state not in ("answered",):
                told = any(name == med and slot - MINUTE <= at <= slot + LATEST
                           for name, at in self.told_kept)  # fmt: skip
                if not told:
                    state = facts.doses[item].state
                    yield f"lost: {med} of {slot:%d %H:%M} UTC ({state}), nobody was told"

    def _excused(self, med: str, slot: datetime, facts: Facts) -> bool:
        if med in facts.stopped or not facts.reachable or facts.over:
            return True
        # One that had to wait for the gap falls due at its end.
        gap = next(one.gap for one in self.order.meds if one.name == med)
        given = [at + gap for at in facts.given.get(med, ()) if at <= slot < at + gap]
        due = max([slot, *given])
        return any(since <= due and slot <= until for since, until in self.free)


def _urgent(facts: Facts) -> set[str]:
    return {case for case, (urgency, *_) in facts.cases.items() if urgency == "emergency"}


def _med(item: str) -> str:
    """The medicine's part of ``dose:carprofen:2026-03-04T20:00``."""
    return item.split(":")[1]


def _tells_death(facts: Facts, user: int) -> bool:
    return any(one.about == "life" and one.user == user for one in facts.told.values())


def _all_done(one: Shown) -> Iterator[str]:
    """ "All done" speaks of no line that has no button of its own."""
    own = {label.split(" · ")[0] for label, code, _ in one.buttons if code == "i"}
    for label, code, _ in one.buttons:
        if code == "a":
            named = set(re.findall(r"\d+", label))
            if own and named - own:  # alone, it is looked at when it is pressed
                yield f"offer: “{label}” speaks of lines without a button"


def _says_yes(cause: Cause) -> bool:
    """Yes to a question that names a sign tells of that sign."""
    return cause.code == "f" and "yes" in cause.args

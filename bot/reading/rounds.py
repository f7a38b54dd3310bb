"""A round of doses told in words: which of those that were due were given, which were not, when.

"All but the gabapentin", "carprofen yes, the other two no", "second one at 8:15". Only what was
due can be meant, so such a telling is read as a whole or not at all: every word of it must do
something in it (``round_words``), and no medicine may be told of twice as handed over. Behind it
may stand another statement in which nothing is wrong. Any other word, and the telling is left to
the rules: "again", "too", "the whole packet" stand in no table here.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Reading

from .clock import clock_text
from .normalise import words_of
from .round_words import GIVEN, NOT, Atom, atoms, of_form
from .token import Token
from .wishes import tells_trouble

MOST_WORDS: Final = 40
_BACK: Final = 4
"""So many words of a round may be the first ones of what stands behind it: "ate all" his dinner."""
_VALUES: Final = {"given": "given", "no": "missed", "refused": "refused"}

Reader = Callable[[str, Context], Reading]


class _Unclear(Exception):
    """No plain telling of a round."""


@dataclass(slots=True)
class _Told:
    """Some of the medicines, and what is told of them. ``all``: by a word for all of them, which
    what is told of one overrules."""

    meds: tuple[str, ...]
    atom: Atom
    all: bool = False
    value: str | None = None  # given, no, refused, yet, left (nothing is told of it)
    by: str = ""  # the word that told it: yes, gave, took
    follows: bool = False  # another one stood between that word and this
    at: float | None = None
    timed: bool = False


def round_told(text: str, context: Context, whole: Reading, read: Reader) -> Reading:
    """The reading of a round, where the words are one; else the ``whole`` as it was read."""
    if not context.due or "?" in text or "¿" in text:
        return whole
    tokens = words_of(text)
    if not 1 <= len(tokens) <= MOST_WORDS:
        return whole
    known, end = atoms(tokens, context)
    for stop in _stops(tokens, end):
        try:
            said = _Round(context, tokens, text).tell([one for one in known if one.end <= stop])
        except _Unclear:
            continue
        rest = _beside(text, tokens, stop, context, read)
        if rest is not None:
            return _together(said, rest, whole)
    return whole


def _stops(tokens: Sequence[Token], end: int) -> list[int]:
    """Where the round may end: with the last word that is of one, or where a new statement may
    begin, at a stop first."""
    back = [at for at in range(end, 0, -1) if at < len(tokens) and at >= end - _BACK]
    stops = [at for at in range(end, 0, -1) if at < len(tokens) and tokens[at].cut]
    whole = [end] if end == len(tokens) else []
    return list(dict.fromkeys([*whole, *stops[:2], *reversed(back)]))


def _beside(
    text: str, tokens: Sequence[Token], stop: int, context: Context, read: Reader
) -> Reading | None:
    """What stands behind the round, where nothing is wrong in it and it tells of no medicine."""
    if stop == len(tokens):
        return Reading((), True, context.lang or "en")
    start = tokens[stop].start
    alone = replace(context, asked="none", doses_due=0, due=())
    rest, _ = atoms(list(tokens[stop:]), context)
    if any(one.role in ("gave", "med", "noun", "kind", "later") or one.role in NOT for one in rest):
        return None
    if {t.word for t in tokens[stop:]} & _MORE:
        return None
    found = read(text[start:], alone)
    wrong = any(
        one.unsure or one.about in ("dose", "swallowed", "request")
        or tells_trouble(one.about, one.value)
        for one in found.observations
    )  # fmt: skip
    if wrong or found.asks or not found.understood:
        return None
    moved = [
        replace(one, span=(one.span[0] + start, one.span[1] + start)) for one in found.observations
    ]
    return replace(found, observations=tuple(moved))


_MORE = frozenset(
    "again twice double too also another more extra already mistake accident accidentally instead "
    "whole packet box bottle bag should supposed meant doubled otra vez doble tambien mas extra "
    "error accidente caja frasco bolsa entera entero eran era tocaba debia antes before".split()
)
"""May tell of too much."""


def _together(said: tuple[Observation, ...], rest: Reading, whole: Reading) -> Reading:
    told = (*said, *rest.observations)
    why = ", ".join(f"{one.med}: {one.value}" for one in said)
    return Reading(
        told, True, whole.lang, (*rest.reasons, f"a round of doses: {why}"),
        suppressed=rest.suppressed, unread=rest.unread,
    )  # fmt: skip


@dataclass(slots=True)
class _Round:
    """One telling, word by word."""

    context: Context
    tokens: Sequence[Token]
    text: str
    told: list[_Told] = field(default_factory=list)
    pending: list[_Told] = field(default_factory=list)  # named, and not yet what of them
    last: list[_Told] = field(default_factory=list)  # what was told of last
    lead: Atom | None = None  # what was done, told before the medicines
    used: bool = False  # the lead told of one already
    only: bool = False
    turned: bool = False  # then, but, at last
    excepting: bool = False
    skips: bool = False  # "ate the lot", of what was given: said once more
    opening: float | None = None
    names: bool = False  # something in it can only be of medicines

    def tell(self, said: Sequence[Atom]) -> tuple[Observation, ...]:
        """The observations; ``_Unclear`` where the words leave a choice."""
        people = [one.role for one in said if one.role in ("who", "self")]
        if people.count("who") > 1 or len(set(people)) > 1:
            raise _Unclear
        said = [one for one in said if one.role not in ("who", "self")]
        if not said:
            raise _Unclear
        said = self._repeated(self._denials(self._amounts(said)))
        for at, atom in enumerate(said):
            self._step(atom, said[at + 1] if at + 1 < len(said) else None)
        return self._settled()

    # -- before ---------------------------------------------------------------------------------

    def _amounts(self, said: Sequence[Atom]) -> list[Atom]:
        """ "All her pills", "both tablets", "the other two": one word for the medicines."""
        out: list[Atom] = []
        at = 0
        while at < len(said):
            one = said[at]
            behind = said[at + 1] if at + 1 < len(said) and not said[at + 1].cut else None
            role = one.role.partition(":")[0]
            if role in ("noun", "kind", "kinds", "both", "number", "place", "half"):
                self.names = True
            if role in ("all", "both", "number", "others", "half"):
                number = 2.0 if role == "both" else one.number
                meds = self._left() if role == "others" else self._due()
                if role == "both" and self._of_people(one, behind):
                    raise _Unclear
                if behind and role in ("all", "others") and behind.role == "number":
                    number, at = behind.number, at + 1
                    behind = said[at + 1] if at + 1 < len(said) and not said[at + 1].cut else None
                self.names = self.names or self.tokens[one.first].word in _MANY
                if behind and behind.role == "noun":
                    self.names, at = True, at + 1
                elif behind and behind.role.startswith("kind"):
                    meds = tuple(x for x in meds if x in self._formed(behind.role))
                    at += 1
                if role == "half":
                    meds = self._halves()
                    number = None
                others = role == "others"
                out.append(replace(one, role="others" if others else "all", end=said[at].end,
                                   meds=() if others else meds, number=number))  # fmt: skip
                if not others and number is not None and number != len(meds):
                    raise _Unclear
            elif role == "noun":
                out.append(replace(one, role="all", meds=self._due()))
            elif role in ("kind", "kinds"):
                meds = self._formed(one.role)
                named = out[-1] if out else None
                if named and named.role == "med" and not one.cut and set(named.meds) <= set(meds):
                    out[-1] = replace(named, end=one.end)
                elif not meds or (role == "kind" and len(meds) != 1):
                    raise _Unclear
                else:
                    every = len(meds) == len(self.context.due)
                    out.append(replace(one, role="all" if every else "med", meds=meds))
            elif role == "place":
                due = self._due()
                number = int(one.number or 0)
                if len(due) < 2 or number > len(due):
                    raise _Unclear
                out.append(replace(one, role="med", meds=(due[number if number < 0 else number - 1],)))
            elif role == "later":
                raise _Unclear
            else:
                out.append(one)
            at += 1
        return out

    def _of_people(self, both: Atom, behind: Atom | None) -> bool:
        """ "We both gave it", "both gave it": it may have been given twice."""
        before = self.tokens[both.first - 1].word if both.first else ""
        gave = behind is not None and self.tokens[behind.first].word in _HANDS
        return before in _PEOPLE or (gave and before not in ("it", "them"))

    def _denials(self, said: Sequence[Atom]) -> list[Atom]:
        """ "Not given", "no le di", "wouldn't take": one denial; "not yet" is nothing done."""
        out: list[Atom] = []
        for one in said:
            before = out[-1] if out else None
            if before and (before.role in NOT or before.role == "none") and not one.cut:
                if one.role in GIVEN and self._verb(one):
                    out[-1] = replace(before, end=one.end)
                    self.names = self.names or one.role != "yes"
                    continue
                if one.role == "yet" and before.role in NOT:
                    out[-1] = replace(before, role="yet", end=one.end)
                    continue
            if one.role == "tries":
                spat = [x for x in (before, _after(said, one)) if x and x.role == "refused"]
                if not spat:
                    raise _Unclear  # "three times" what was given
                continue
            out.append(one)
        return out

    def _verb(self, one: Atom) -> bool:
        return self.tokens[one.first].word not in ("si", "yes", "yep", "yeah", "yup", "ya", "in")

    def _repeated(self, said: Sequence[Atom]) -> list[Atom]:
        """ "Given given given" of three: each of them."""
        words = [self.text[one.start : one.end].casefold() for one in self.tokens]
        due = len(self.context.due)
        same = [one for one in said if one.role in GIVEN]
        if due < 2 or len(same) < 2 or any(one.role not in (*GIVEN, "now", "time") for one in said):
            return list(said)
        told = " ".join(words[one.first] for one in same).split()
        if len(set(told)) > 1:
            return list(said)
        if len(told) != due or same[0].role == "yes":
            raise _Unclear
        every = replace(same[0], role="all", meds=self._due())
        return [every, same[0], *(one for one in said if one.role in ("now", "time"))]

    # -- word by word ---------------------------------------------------------------------------

    def _step(self, atom: Atom, behind: Atom | None) -> None:
        match atom.role:
            case "med" | "all" | "others" | "none":
                self._of(atom)
            case "yes" | "gave" | "took" | "no" | "refused" | "yet":
                self._as(atom, behind)
            case "time" | "now":
                self._when(atom)
            case "except":
                if not any(one.all for one in self.told):
                    raise _Unclear
                self.excepting = True
            case "but":
                self.turned = True
                self.excepting = bool(self.told) and self.told[-1].all and _names(behind)
                self.lead = None
            case "then":
                self.turned = True
            case "only":
                self.only = True
            case "and":
                pass
            case _:
                raise _Unclear
        if atom.role not in ("except", "but", "med", "and"):
            self.excepting = False

    def _of(self, atom: Atom) -> None:
        """Medicines are named."""
        if self.skips:
            self.skips = False
            return
        if atom.role == "others":
            left = self._left()
            if not 0 < len(left) < len(self._due()) or (atom.number or len(left)) != len(left):
                raise _Unclear
            atom = replace(atom, role="med", meds=left)
            self.lead = None if self.used else self.lead
        one = _Told(atom.meds or self._due(), atom, all=atom.role in ("all", "none"))
        if self.excepting:
            self._except(one)
            return
        if atom.role == "none":
            self._none(one)
        elif self.lead is not None and not (self.lead.role == "yes" and atom.cut):
            self._give(one, self.lead)
            one.follows = self.used
            self.used = True
        else:
            self.lead = None
            self.pending.append(one)
        self.names = self.names or not one.all
        self.told.append(one)
        self.last, self.turned = [one], False

    def _except(self, one: _Told) -> None:
        """ "All but the gabapentin": it is left open."""
        for other in self.told:
            if other.all and other.value not in NOT:
                other.meds = tuple(med for med in other.meds if med not in one.meds)
        if one.all or not any(other.meds for other in self.told if other.all):
            raise _Unclear
        one.value = "left"
        self.told.append(one)
        self.last, self.names = [one], True

    def _none(self, one: _Told) -> None:
        """ "None of them", "haven't given him anything"."""
        if self.told or (self.lead is not None and self.lead.role not in NOT):
            raise _Unclear
        one.value, self.used = (self.lead.role if self.lead is not None else "no"), True

    def _as(self, atom: Atom, behind: Atom | None) -> None:
        """What was done, with what stands before it or with what follows."""
        follows = behind is not None and behind.role in ("med", "all", "others", "none")
        self.names = self.names or atom.role in ("gave", "took", "refused")
        if self.pending:
            for one in self.pending:
                self._give(one, atom)
            self.last, self.pending = self.pending, []
            self.lead, self.turned, self.used = None, False, False
        elif follows and atom.role == "took" and self.last and _names_all(behind):
            if self._left() or any(one.value != "given" for one in self.told):
                raise _Unclear  # "gave the carprofen, ate the lot": dinner
            self.skips = True
        elif follows or not self.last:
            self._leads(atom)
        else:
            self._once_more(atom)

    def _leads(self, atom: Atom) -> None:
        before = self.lead
        if before is not None and not self.used:
            turns = before.role == "refused" and atom.role in GIVEN and self.turned
            again = before.role in ("gave", "took") and atom.role == "gave"
            differs = (before.role in NOT) != (atom.role in NOT) or before.role in NOT
            if again or (differs and not turns and before.role != "yes"):
                raise _Unclear
        self.lead, self.turned, self.used = atom, False, False

    def _once_more(self, atom: Atom) -> None:
        """ "Gave it, he took it" says it once more; "spat it out, then took it" how it ended; "gave
        this, that not" is of that."""
        before, value = self.last[0], "given" if atom.role in GIVEN else atom.role
        if before.value == value or {before.value, value} == {"no", "yet"}:
            before.value = value if value == "yet" else before.value
            if atom.role == "gave" and before.by in ("gave", "took"):
                raise _Unclear  # handed over twice
            return
        chunk = self.last
        if before.value == "left":
            if atom.role not in NOT:
                raise _Unclear
        elif before.value == "refused" and value == "given":
            if not self.turned:
                raise _Unclear
        elif before.follows:
            chunk = self._chunk()
        elif not (value == "refused" and len(self.told) == 1):
            raise _Unclear
        for one in chunk:
            self._give(one, atom)
        self.last, self.turned = chunk, False

    def _chunk(self) -> list[_Told]:
        """Those named since the last stop, which is not before the first of them."""
        chunk: list[_Told] = []
        for one in reversed(self.told):
            if not one.follows:
                break
            chunk.append(one)
            if one.atom.cut:
                return chunk
        raise _Unclear

    def _give(self, one: _Told, atom: Atom) -> None:
        one.value = "given" if atom.role in GIVEN else atom.role
        one.by = atom.role

    def _when(self, atom: Atom) -> None:
        if not self.told:
            if self.opening is not None:
                raise _Unclear
            self.opening = atom.number
            return
        since = [one for one in self.told if not one.timed and one.value != "left"]
        if not since:
            raise _Unclear
        for one in since:
            one.timed, one.at = True, atom.number
            if one.value is None:
                one.value, one.by = "given", "took"
        self.pending, self.names = [], True

    # -- after ----------------------------------------------------------------------------------

    def _settled(self) -> tuple[Observation, ...]:
        """One value a medicine."""
        if not self.told:
            self._of_all()
        for one in self.pending:
            if not (one.all or self.only):
                raise _Unclear
            one.value, one.by = "given", "took"
        found: dict[str, _Told] = {}
        for one in [*(x for x in self.told if x.all), *(x for x in self.told if not x.all)]:
            for med in one.meds:
                before = found.get(med)
                if before is not None and not self._overrules(one, before):
                    raise _Unclear
                found[med] = one
        if not (self.names or self.context.asked == "dose"):
            raise _Unclear
        return self._observations(found)

    def _of_all(self) -> None:
        """No medicine is named: it is told of all that were due, where that is plain."""
        if self.lead is None or self.lead.role == "yes" and self.context.asked != "dose":
            raise _Unclear
        if len(self.context.due) > 1 and not self._plural():
            raise _Unclear
        one = _Told(self._due(), self.lead, all=True)
        self._give(one, self.lead)
        self.told.append(one)

    def _plural(self) -> bool:
        return any(t.word in _MANY for t in self.tokens)

    def _overrules(self, one: _Told, before: _Told) -> bool:
        if not before.all or one.all:
            return before.all and one.all and one.value == before.value and one.by != "gave"
        return one.value != before.value or (one.timed and not before.timed)

    def _observations(self, found: dict[str, _Told]) -> tuple[Observation, ...]:
        out: list[Observation] = []
        for med in self._due():
            one = found.get(med)
            if one is None or one.value not in _VALUES:
                continue
            at = one.at if one.timed else self.opening
            hour = clock_text(at) if at is not None and one.value == "given" else None
            span = (self.tokens[one.atom.first].start, self.tokens[one.atom.end - 1].end)
            out.append(Observation("dose", _VALUES[one.value], med=med, at=hour, span=span))
        if not out and any(one.value == "yet" for one in found.values()):
            end = self.tokens[-1].end
            return (Observation("request", "snooze", span=(0, end)),)
        if not out:
            raise _Unclear
        return tuple(out)

    # -- what was due ---------------------------------------------------------------------------

    def _due(self) -> tuple[str, ...]:
        return tuple(one.med for one in self.context.due)

    def _left(self) -> tuple[str, ...]:
        told = {med for one in self.told for med in one.meds}
        return tuple(med for med in self._due() if med not in told)

    def _halves(self) -> tuple[str, ...]:
        halves = tuple(one.med for one in self.context.due if one.half)
        unknown = not any(one.called for one in self.context.due)
        if len(halves) != 1 and not (unknown and len(self.context.due) == 1):
            raise _Unclear
        return halves or self._due()

    def _formed(self, role: str) -> tuple[str, ...]:
        kind, _, form = role.partition(":")
        form = form.replace("_", " ")
        found = of_form(self.context.due, form)
        if not found and form in ("tablet", "capsule"):
            found = of_form(self.context.due, "pill")
        if not found and not any(one.called for one in self.context.due):
            found = self._due()
        return found


def _names(atom: Atom | None) -> bool:
    return atom is not None and atom.role == "med"


def _names_all(atom: Atom | None) -> bool:
    return atom is not None and atom.role == "all"


def _after(said: Sequence[Atom], one: Atom) -> Atom | None:
    return next((other for other in said if other.first >= one.end), None)


_HANDS = frozenset("gave give administered dosed did di dimos dieron".split())
_PEOPLE = frozenset("we us you and i y los nosotros".split())
_MANY = frozenset(
    "them they theyre em las los dadas dados tomadas listas puestas tragadas todas todos ambas".split()
)

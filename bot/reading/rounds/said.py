"""A round told word by word: what was done, of which, and when.

"Gave this, not that": the deed stands before. "This yes, that no": it stands behind. "All but
that", "this, the rest no", "spat it out, then took it". Where the words leave a choice, or hand
a medicine over twice, it is none (``Unclear``)."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context

from ..clock import clock_text
from ..token import Token
from .meant import Meant
from .words import GIVEN, NOT, SETS, Atom, Differs, Unclear

_STOP: Final = 3
"""The cut before a new sentence."""
_VALUES: Final = {"given": "given", "no": "missed", "refused": "refused"}


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
    joined: bool = False  # by "and"
    by_rest: bool = False  # as the others
    at: float | None = None
    timed: bool = False


@dataclass(slots=True)
class Said:
    """One telling, word by word."""

    context: Context
    tokens: Sequence[Token]
    meant: Meant
    told: list[_Told] = field(default_factory=list)
    pending: list[_Told] = field(default_factory=list)  # named, and not yet what of them
    last: list[_Told] = field(default_factory=list)  # what was told of last
    lead: Atom | None = None  # what was done, told before the medicines
    used: bool = False  # the lead told of one already
    only: bool = False
    turned: bool = False  # then, but, at last
    excepting: bool = False
    joined: bool = False  # an "and" stands before what comes
    parted: bool = False  # and an hour before that
    skips: bool = False  # "ate the lot", of what was given: said once more
    opening: float | None = None
    names: bool = False  # something in it can only be of medicines
    earlier: Mapping[str, str] = field(default_factory=dict)  # what earlier sentences told
    values: dict[str, str] = field(default_factory=dict)  # what this one tells of each
    denied: bool = False  # what stands before the medicines named last was denied
    adds: bool = False  # "and the other one", "the other one too"

    def tell(self, said: Sequence[Atom]) -> tuple[Observation, ...]:
        """The observations; ``Unclear`` where the words leave a choice."""
        words = self.meant.of(said)
        self.names = self.meant.names
        self.adds = bool(words) and words[0].role == "and"
        for at, atom in enumerate(words):
            self._step(atom, words[at + 1] if at + 1 < len(words) else None)
        if self.turned and self.last and self.last[0].value == "refused":
            raise Unclear  # "spat it out, second go with turkey": and then?
        if self.meant.some and self.earlier:
            raise Unclear
        return self._of_some() if self.meant.some else self._settled()

    def _of_some(self) -> tuple[Observation, ...]:
        """ "Gave two of them", where three were due: so many; which ones, must be asked."""
        one = self.told[0] if len(self.told) == 1 else None
        plain = one is not None and one.all and one.value in ("given", None) and not self.only
        if one is None or not plain or not 1 <= self.meant.some < len(self.meant.due):
            raise Unclear
        at = one.at if one.timed else self.opening
        hour = clock_text(at) if at is not None else None
        span = (self.tokens[one.atom.first].start, self.tokens[one.atom.end - 1].end)
        return (Observation("dose", "given", count=self.meant.some, at=hour, span=span),)

    # -- word by word ---------------------------------------------------------------------------

    def _step(self, atom: Atom, behind: Atom | None) -> None:
        match atom.role:
            case "med" | "all" | "others" | "none":
                self._of(atom)
            case "yes" | "gave" | "took" | "ate" | "no" | "refused" | "yet":
                self._as(atom, behind)
            case "gone":
                if not self.names:
                    raise Unclear  # "all gone": dinner, or the packet
                self._as(replace(atom, role="ate"), behind)
            case "time" | "now":
                self._when(atom)
            case "except":
                if not any(one.all for one in self.told):
                    raise Unclear
                self.excepting = True
            case "but":
                self.turned = True
                self.excepting = bool(self.told) and self.told[-1].all and _names(behind)
                self.lead = None
            case "then":
                self.turned = True
            case "only":
                self.only = True
            case "too":
                self._too()
            case "and":
                self.joined = not self.parted
                return
            case _:
                raise Unclear
        if atom.role not in ("except", "but", "med", "and"):
            self.excepting = False

    def _of(self, atom: Atom) -> None:
        """Medicines are named."""
        if self.skips:
            self.skips = False
            return
        rest = atom.role == "others"
        if rest:
            left = self._others(atom)
            atom = replace(atom, role="med", meds=left)
            self.lead = None if self.used else self.lead
        one = _Told(
            atom.meds or self.meant.due, atom, all=atom.role in ("all", "none"), by_rest=rest
        )
        if self.excepting:
            self._except(one)
            return
        if atom.role == "none":
            self._none(one)
        elif self.lead is not None and not self._led_to_here(self.lead, atom):
            self._give(one, self.lead)
            one.follows, one.joined = self.used, self.joined
            if one.all and one.follows:
                raise Unclear  # "two doses of everything"
            self.used = True
        else:
            self.denied = self.denied or (self.lead is not None and self.lead.role in NOT)
            self.lead = None
            self.pending.append(one)
        self.names = self.names or not one.all
        self.told.append(one)
        self.last, self.turned, self.joined, self.parted = [one], False, False, False

    def _led_to_here(self, lead: Atom, atom: Atom) -> bool:
        """Whether what was done is told of what stood before only: "yes, this one ...", "wouldn't
        take this. that ..."."""
        if lead.role == "yes":
            return bool(atom.cut)
        if lead.role not in NOT or not atom.cut or self.joined:
            return False
        beside = (*self.tokens[lead.end : atom.first], *self.tokens[max(0, lead.first - 1) :][:1])
        of_it = any(token.word in SETS["it"] for token in beside)  # "spat it out, that one ..."
        return atom.cut >= _STOP or (of_it and not self.used)

    def _others(self, atom: Atom) -> tuple[str, ...]:
        """Those that were not told of: here, or earlier and so no more due."""
        left = self._left()
        number = atom.number
        if not left or number not in (None, float(len(left))):
            raise Unclear
        told = len(left) < len(self.meant.due) or bool(self.context.told)
        if not told and not (number is not None and number > 1):
            raise Unclear
        return left

    def _too(self) -> None:
        """ "The other one too": beside those that were told of before. "Gave it too" is another."""
        before = {**dict(self.context.told), **self.earlier}
        named = self.last or self.pending
        if not named or any(one.all for one in named) or not before:
            raise Unclear
        if any(before.get(med) for one in named for med in one.meds):
            raise Unclear
        self.adds = True

    def _except(self, one: _Told) -> None:
        """ "All but the gabapentin": it is left open."""
        for other in self.told:
            if other.all and other.value not in NOT:
                other.meds = tuple(med for med in other.meds if med not in one.meds)
        if one.all or not any(other.meds for other in self.told if other.all):
            raise Unclear
        one.value = "left"
        self.told.append(one)
        self.last, self.names = [one], True

    def _none(self, one: _Told) -> None:
        """ "None of them", "haven't given him anything"."""
        if self.told or (self.lead is not None and self.lead.role not in NOT):
            raise Unclear
        one.value, self.used = (self.lead.role if self.lead is not None else "no"), True

    def _as(self, atom: Atom, behind: Atom | None) -> None:
        """What was done, with what stands before it or with what follows."""
        follows = behind is not None and behind.role in ("med", "all", "others", "none")
        if behind and behind.cut and not atom.cut and atom.role in ("took", "ate") and self.last:
            follows = follows and self.last[0].value != "given"  # "yes she took them, the other no"
        if behind and behind.cut and not atom.cut and self.last and self.last[0].follows:
            follows = False  # "refused this, that yes, the third ..."
        if behind and behind.cut and self.last and self.last[0].value == atom.role in NOT:
            follows = False  # "no luck with this, spat it out. that ..."
        self.names = self.names or atom.role in ("gave", "took", "refused")
        if self.pending and atom.role in NOT and self.last and self.last[0].value == "left":
            if not atom.cut:
                raise Unclear
            for one in self.pending:  # "all but that one, he spat it out"
                self._give(one, replace(atom, role="took"))
            self.pending = []
            self._once_more(atom)
        elif self.pending:
            for one in self.pending:
                self._give(one, atom)
            self.last, self.pending = self.pending, []
            self.lead, self.turned, self.used = None, False, False
        elif follows and atom.role in ("took", "ate") and self.last and _names_all(behind):
            if self._left() or any(one.value != "given" for one in self.told):
                raise Unclear  # "gave the carprofen, ate the lot": dinner
            self.skips = True
        elif follows or not self.last:
            self._leads(atom)
        else:
            self._once_more(atom)

    def _leads(self, atom: Atom) -> None:
        before = self.lead
        if before is not None and not self.used:
            turns = before.role == "refused" and atom.role in GIVEN and self.turned
            again = before.role in ("gave", "took", "ate") and atom.role == "gave"
            differs = (before.role in NOT) != (atom.role in NOT) or before.role in NOT
            if again or (differs and not turns and before.role != "yes"):
                raise Unclear
        self.lead, self.turned, self.used = atom, False, False

    def _once_more(self, atom: Atom) -> None:
        """ "Gave it, he took it" says it once more; "spat it out, then took it" how it ended; "gave
        this, that not" is of that."""
        before, value = self.last[0], "given" if atom.role in GIVEN else atom.role
        if before.value == value or {before.value, value} == {"no", "yet"}:
            before.value = value if value == "yet" else before.value
            if atom.role == "gave" and before.by in ("gave", "took", "ate"):
                raise Unclear  # handed over twice
            return
        chunk = self.last
        if before.value == "left":
            if atom.role not in NOT:
                raise Unclear
        elif before.value == "refused" and value == "given" and self.turned:
            pass
        elif before.follows:
            chunk = self._chunk()
        elif (before.value == "refused" and value == "given") or not (
            value == "refused" and len(self.told) == 1
        ):
            raise Unclear
        for one in chunk:
            self._give(one, atom)
        self.last, self.turned = chunk, False

    def _chunk(self) -> list[_Told]:
        """The last one named with those that an "and" joins to it, which is not the first."""
        chunk: list[_Told] = []
        for one in reversed(self.told):
            if not one.follows:
                break
            chunk.append(one)
            if not one.joined or len(self.told) == 2:
                if len(chunk) > 1 and not one.atom.cut:
                    break  # "refused this that and the third ok": from where on
                return chunk
        raise Unclear

    def _give(self, one: _Told, atom: Atom) -> None:
        one.value = "given" if atom.role in GIVEN else atom.role
        one.by = atom.role

    def _when(self, atom: Atom) -> None:
        self.parted = True
        if not self.told:
            if self.opening is not None:
                raise Unclear
            self.opening = atom.number
            return
        since = [one for one in self.told if not one.timed and one.value != "left"]
        if not since:
            raise Unclear
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
        if self.pending and self.denied:
            raise Unclear  # "haven't given them. all three": no word of what became of these
        for one in self.pending:
            if not (one.all or (self.only and not one.by_rest) or self._added(one)):
                raise Unclear
            one.value, one.by = "given", "took"
        found: dict[str, _Told] = {}
        for one in [*(x for x in self.told if x.all), *(x for x in self.told if not x.all)]:
            for med in one.meds:
                before = found.get(med)
                if before is not None and not self._overrules(one, before):
                    raise Unclear
                found[med] = one
        if not (self.names or self.context.asked == "dose"):
            raise Unclear
        self._beside_earlier(found)
        return self._observations(found)

    def _added(self, one: _Told) -> bool:
        """ "And the other one", where those before it were given."""
        before = {**dict(self.context.told), **self.earlier}
        return self.adds and one.by_rest and set(before.values()) == {"given"}

    def _beside_earlier(self, found: dict[str, _Told]) -> None:
        """What an earlier sentence told stands: it may be told once more, and not otherwise. A word
        for all leaves open whether it is of those that were not given, too."""
        told = {med: one.value or "" for med, one in found.items()}
        by_all = any(one.all for one in found.values())
        refused = any(value != "given" for _, value in self.context.told)
        if by_all and (refused or self.earlier):
            raise Unclear
        for med, value in told.items():
            before = self.earlier.get(med)
            if before is None or before == "left":
                continue
            if {before, value} - {"no", "yet"} and before != value:
                raise Differs
            if found[med].by == "gave":
                raise Unclear  # handed over twice
            found.pop(med)
        self.values = told

    def _of_all(self) -> None:
        """No medicine is named: it is told of all that were due, where that is plain."""
        if self.lead is None or (self.lead.role == "yes" and not self.names):
            raise Unclear  # a bare "done" answers what was asked, whatever that was
        words = {token.word for token in self.tokens}
        if words & SETS["meal"] and not words & SETS["points"]:
            raise Unclear  # "ate well": dinner
        if len(self.context.due) > 1 and not self._plural():
            raise Unclear
        one = _Told(self.meant.due, self.lead, all=True)
        self._give(one, self.lead)
        self.told.append(one)

    def _plural(self) -> bool:
        return any(t.word in SETS["many"] for t in self.tokens)

    def _overrules(self, one: _Told, before: _Told) -> bool:
        if not before.all or one.all:
            same = one.value == before.value and one.at == before.at
            return before.all and one.all and same and one.by != "gave"
        return one.value != before.value or (one.timed and not before.timed)

    def _observations(self, found: dict[str, _Told]) -> tuple[Observation, ...]:
        out: list[Observation] = []
        for med in self.meant.due:
            one = found.get(med)
            if one is None or one.value not in _VALUES:
                continue
            at = one.at if one.timed else self.opening
            hour = clock_text(at) if at is not None and one.value == "given" else None
            span = (self.tokens[one.atom.first].start, self.tokens[one.atom.end - 1].end)
            out.append(Observation("dose", _VALUES[one.value], med=med, at=hour, span=span))
        if self.meant.looks:
            out = self._unnamed(out, found)
        if not out and not self.earlier and any(one.value == "yet" for one in found.values()):
            end = self.tokens[-1].end
            return (Observation("request", "snooze", span=(0, end)),)
        if not out and not (self.earlier and self.values):
            raise Unclear
        return tuple(out)

    def _unnamed(self, out: list[Observation], found: dict[str, _Told]) -> list[Observation]:
        """ "Spat out the big one, the others went down": so many were given."""
        named = {med for one in found.values() if not one.all for med in one.meds}
        named -= set(self.meant.looks.values())
        values = {one.value for one in out}
        if len(out) == len(self.meant.due) and len(values) == 1:
            return out
        given = [one for one in out if one.value == "given"]
        if (named and not self._rest_is_told) or not given:
            raise Unclear
        return [replace(given[0], med=None, count=len(given))]

    @property
    def _rest_is_told(self) -> bool:
        """Whether those beside are told of as the others only."""
        return all(one.all or (one.atom.role == "med" and one.by_rest) for one in self.told
                   if not set(one.meds) <= set(self.meant.looks.values()))  # fmt: skip

    def _left(self) -> tuple[str, ...]:
        told = {med for one in self.told for med in one.meds} | self.earlier.keys()
        return tuple(med for med in self.meant.due if med not in told)


def _names(atom: Atom | None) -> bool:
    return atom is not None and atom.role == "med"


def _names_all(atom: Atom | None) -> bool:
    return atom is not None and atom.role == "all"

"""Which of the medicines that were due the words mean: "all her pills", "both", "the other two",
"the capsule", "the second one"; and what is one denial in several words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from itertools import takewhile

from bot.model.reading import Context

from ..token import Token
from .words import GIVEN, NOT, SETS, Atom, Unclear, of_form


@dataclass(slots=True)
class Meant:
    """The words of one telling, each with its medicines."""

    context: Context
    tokens: Sequence[Token]
    text: str
    names: bool = False  # something in it can only be of medicines
    some: int = 0  # fewer than were due, of which it is not said which
    looks: dict[str, str] = field(default_factory=dict)  # "the big one": it stands for one of them

    def of(self, said: Sequence[Atom]) -> list[Atom]:
        """What was said, settled; ``Unclear`` where it leaves a choice."""
        people = [one.role for one in said if one.role in ("who", "self")]
        if people.count("who") > 1 or len(set(people)) > 1:
            raise Unclear
        self.names = any(one.role == "hid" for one in said)  # in food: no meal, and no walk
        said = [one for one in said if one.role not in ("who", "self", "hid")]
        if (
            len(said) > 1
            and said[0].role == "no"
            and self._answers(said[0])
            and said[1].role in NOT
        ):
            said = said[1:]  # "nope, won't take it": one denial
        if not said:
            raise Unclear
        return self._repeated(self._denials(self._amounts(said)))

    def _answers(self, one: Atom) -> bool:
        """Whether it is a "no" by itself."""
        return self.tokens[one.first].word in SETS["plain_no"]

    def _amounts(self, said: Sequence[Atom]) -> list[Atom]:
        """ "All her pills", "both tablets", "the other two": one word for the medicines."""
        out: list[Atom] = []
        at = 0
        while at < len(said):
            one = said[at]
            behind = said[at + 1] if at + 1 < len(said) and not said[at + 1].cut else None
            role = one.role.partition(":")[0]
            again = role in ("both", "number") and self._names_again(one, out)
            if again:
                at += 1
                continue
            if role in ("all", "both", "number") and (same := self._apposed(one, behind, out)):
                at += same
                continue
            if role in ("noun", "doses", "kind", "kinds", "both", "number", "place", "half"):
                self.names = True
            if role in ("all", "both", "number", "others", "half"):
                number = 2.0 if role == "both" else one.number
                if role == "others" and (
                    self.tokens[one.end - 1].word in SETS["one_other"]
                    and (behind is None or behind.role != "noun")
                ):
                    number = 1.0
                meds = self.due
                if role in ("both", "number") and self._of_people(one, behind):
                    raise Unclear
                if behind and role in ("all", "others") and behind.role == "number":
                    if self._of_people(behind, None):
                        raise Unclear
                    number, at, self.names = behind.number, at + 1, True
                    behind = said[at + 1] if at + 1 < len(said) and not said[at + 1].cut else None
                self.names = self.names or self.tokens[one.first].word in SETS["all_pills"]
                if behind and behind.role == "doses" and role in ("both", "number"):
                    raise Unclear  # of one medicine, it may be
                if behind and behind.role in ("noun", "doses"):
                    self.names, at = True, at + 1
                elif behind and behind.role.startswith("kind"):
                    meds = self._of_them(behind.role, number)
                    at += 1
                if role == "half":
                    meds = self._halves()
                    number = None
                others = role == "others"
                out.append(replace(one, role="others" if others else "all", end=said[at].end,
                                   meds=() if others else meds, number=number))  # fmt: skip
                if not others and number is not None and number != len(meds):
                    self.some = int(number)
            elif role in ("noun", "doses"):
                out.append(replace(one, role="all", meds=self.due))
                if behind and behind.role == "med":  # "the dose of carprofen"
                    out[-1], at = replace(behind, first=one.first, cut=one.cut), at + 1
            elif role in ("kind", "kinds"):
                meds = self._formed(one.role)
                named = out[-1] if out else None
                if named and named.role == "med" and not one.cut and set(named.meds) <= set(meds):
                    out[-1] = replace(named, end=one.end)
                elif not meds or (role == "kind" and len(meds) != 1):
                    raise Unclear
                else:
                    every = len(meds) == len(self.context.due)
                    out.append(replace(one, role="all" if every else "med", meds=meds))
            elif role == "place":
                due = self.due
                number = int(one.number or 0)
                if len(due) < 2 or number > len(due):
                    raise Unclear
                place = number if number < 0 else number - 1
                out.append(replace(one, role="med", meds=(due[place],)))
            elif role == "which":
                out.append(replace(one, role="med", meds=(self._stands_for(one),)))
            elif role == "fine":
                if out and out[-1].role in ("med", "all", "others") and not one.cut:
                    out.append(replace(one, role="yes"))
            elif role == "later":
                raise Unclear
            else:
                out.append(one)
            at += 1
        return out

    def _stands_for(self, one: Atom) -> str:
        """ "The big one", "la blanca": one of those that were due; which, nobody can say."""
        word = self.tokens[one.end - 1].word
        word = self.tokens[one.first].word if word == "one" else word
        free = [med for med in self.due if med not in self.looks.values()]
        if word not in self.looks and (len(self.due) < 2 or not free):
            raise Unclear
        self.names = True
        return self.looks.setdefault(word, free[0] if free else "")

    def _of_them(self, role: str, number: float | None) -> tuple[str, ...]:
        """All of a form; of two "tablets" one may be a capsule."""
        found = self._formed(role)
        solid = of_form(self.context.due, "pill")
        return solid if number is not None and len(found) != number == len(solid) else found

    def _apposed(self, one: Atom, behind: Atom | None, out: Sequence[Atom]) -> int:
        """ "His pills, all three": the same ones, told in so many parts."""
        amount = one.role == "all" and behind is not None and behind.role == "number"
        number = behind.number if behind is not None and amount else one.number
        number = 2.0 if one.role == "both" else number
        after = self.tokens[one.end + amount].word if one.end + amount < len(self.tokens) else ""
        things = behind is not None and behind.role.partition(":")[0] in _THINGS
        if not one.cut or things or after in SETS["so_many_things"]:
            return 0
        every = bool(out) and out[-1].role == "all" and out[-1].meds == self.due
        return 1 + amount if every and number in (None, float(len(self.due))) else 0

    def _names_again(self, one: Atom, out: Sequence[Atom]) -> bool:
        """ "Carprofen and gabapentin both in": those two."""
        number = 2.0 if one.role == "both" else one.number
        before = [x for x in out if x.role != "and"]
        named = list(takewhile(lambda x: x.role == "med", reversed(before)))
        return len(named) > 1 and sum(len(x.meds) for x in named) == number

    def _of_people(self, both: Atom, behind: Atom | None) -> bool:
        """ "We both gave it", "both gave it", "le dimos los dos": it may have been given twice."""
        before = self.tokens[both.first - 1].word if both.first else ""
        if before == "los":
            return behind is None or behind.role not in GIVEN or not self._been(behind)
        gave = behind is not None and self.tokens[behind.first].word in SETS["hands"]
        return before in SETS["people"] or (
            both.role == "both" and gave and before not in SETS["thing_before"]
        )

    def _been(self, one: Atom) -> bool:
        return self.tokens[one.first].word.endswith(tuple(SETS["participle_ends"]))

    def _denials(self, said: Sequence[Atom]) -> list[Atom]:
        """ "Not given", "no le di", "wouldn't take": one denial; "not yet" is nothing done."""
        out: list[Atom] = []
        for one in said:
            before = out[-1] if out else None
            if before and (before.role in NOT or before.role == "none") and not one.cut:
                if one.role == "would" or (one.role in GIVEN and self._verb(one)):
                    out[-1] = replace(before, end=one.end)
                    self.names = self.names or one.role in ("gave", "would")
                    continue
                if one.role == "yet" and before.role in NOT:
                    out[-1] = replace(before, role="yet", end=one.end)
                    continue
            if one.role == "tries":
                spat = [x for x in (before, _after(said, one)) if x and x.role == "refused"]
                if not spat:
                    raise Unclear  # "three times" what was given
                continue
            out.append(one)
        return out

    def _verb(self, one: Atom) -> bool:
        return self.tokens[one.first].word not in SETS["plain_yes"]

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
            raise Unclear
        every = replace(same[0], role="all", meds=self.due)
        return [every, same[0], *(one for one in said if one.role in ("now", "time"))]

    @property
    def due(self) -> tuple[str, ...]:
        """All that were due, in the order of the prompt."""
        return tuple(one.med for one in self.context.due)

    def _halves(self) -> tuple[str, ...]:
        halves = tuple(one.med for one in self.context.due if one.half)
        unknown = not any(one.called for one in self.context.due)
        if len(halves) != 1 and not (unknown and len(self.context.due) == 1):
            raise Unclear
        return halves or self.due

    def _formed(self, role: str) -> tuple[str, ...]:
        form = role.partition(":")[2].replace("_", " ")
        found = of_form(self.context.due, form)
        if not found and form in ("tablet", "capsule"):
            found = of_form(self.context.due, "pill")
        if not found and not any(one.called for one in self.context.due):
            found = self.due
        return found


def _after(said: Sequence[Atom], one: Atom) -> Atom | None:
    return next((other for other in said if other.first >= one.end), None)


_THINGS = ("noun", "doses", "kind", "kinds", "half", "part")

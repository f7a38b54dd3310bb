"""Bare answers in the light of what was asked; thanks; what was left unread."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise

from bot.model.observation import Observation
from bot.model.reading import Context
from bot.model.topics import TABLE, told_by_no, told_by_yes

from . import courtesy
from .actors import planned
from .clauses import Clause
from .clock import clock_text
from .focus import DEEDS, kin
from .grammar import Pattern, Rule
from .matching import Match
from .quantities import body_heat
from .settle import Found
from .token import Token

_SESSIONS = ("ice", "warm_compress", "massage", "walk")
_TROUBLES = frozenset(name for name, topic in TABLE.items() if topic.trouble)
_SAYS_YES = frozenset("yes yep yeah yup sure si sip simon claro indeed aye affirmative".split())
_BESIDE_NO: dict[str, tuple[str, str]] = {"appetite": ("appetite", "none")}
"""A "no" that more words follow answers these as well."""


_RULE = Rule("bare", "", Pattern((), frozenset(), (), False, False, False, ()))
"""What a bare answer stands on: no pattern."""


@dataclass(slots=True)
class Answer:
    """What a bare answer gave."""

    found: list[Found] = field(default_factory=list)
    reasons: list[str] = field(default_factory=list)


def topics_of(asked: str) -> frozenset[str]:
    """The topics that a question is about."""
    return frozenset(topic for topic, _ in told_by_yes(asked))


def answer(
    tokens: list[Token],
    clauses: list[Clause],
    matches: list[Match],
    found: list[Found],
    context: Context,
) -> Answer:
    """The asked topic's value from a yes, a no, a figure, when nothing else told it."""
    asked = context.asked
    out = Answer()
    if asked == "temperature":
        return _degrees(tokens, {item.observation.about for item in found})
    if not told_by_yes(asked):
        return _resting(tokens, found, matches) if asked == "none" else out
    told = {item.observation.about for item in found}
    if asked == "mobility" and "mobility" in told:
        told |= {"weight_bearing"}
    if told & topics_of(asked):
        return out
    later = any(m.rule.about == "request" and m.rule.value == "snooze" for m in matches)
    pick: tuple[tuple[str, str], ...] = ()
    chosen = clauses[0]
    first = 0
    while first < len(clauses) - 1 and _polite(tokens, clauses[first]):
        first += 1
    for number, clause in enumerate(clauses[first : first + 4]):
        if clause.moods & _NO_ANSWER or clause.other:
            continue
        if asked in _DEEDS and planned(tokens, clause, clause.end):
            continue
        if _of_another(clause, asked) or any(_reaches_in(m, clause, asked) for m in matches):
            continue
        own = {
            m.rule.about
            for m in matches
            if m.clause == number + first and m.rule.about not in ("idiom", "request")
        }
        verdict = _verdict(tokens, clause, asked, bool(own), number)
        words = tokens[clause.start : clause.end]
        if asked == "dose" and (clause.asked or not _of_a_dose(words)):
            verdict = ""  # "done with work", "he fell asleep and hasn't moved"
        if verdict == "yes" and not later:
            pick = told_by_yes(asked)
        elif verdict == "no" and not later:
            if said := told_by_no(asked):
                pick = (said,)
            elif asked in _BESIDE_NO and _more(tokens, clauses, clause):
                pick = (_BESIDE_NO[asked],)
        if pick:
            chosen = clause
            break
    if not pick and asked in _HOW_MUCH:
        pick, chosen = _how_much(tokens, clauses, asked, chosen)
    if not pick and asked in _SESSIONS and not later:
        for number, clause in enumerate(clauses):
            own = {m.rule.about for m in matches if m.clause == number}
            if (
                ("<minutes>" in clause.keys or "<metres>" in clause.keys)
                and not (clause.moods & {"question", "hypo", "wish"} or "<neg>" in clause.keys)
                and own <= _ON_A_WALK
                and not _dates(tokens, clause)
                and not planned(tokens, clause, clause.end)
            ):
                pick, chosen = told_by_yes(asked), clause
                break
    if asked not in (*_DEEDS, "bandage"):
        bad = {(i.observation.about, i.observation.value) for i in found} - _HARMLESS
        spoken = any(
            m.clause == first and m.rule.about not in ("idiom", "request") for m in matches
        )
        plainly = chosen is clauses[first] and chosen.end - chosen.start <= 3 and not spoken
        if asked == "general" and (bad or (told and not plainly) or "energy" in told):
            pick = ()
    if not pick:
        return _resting(tokens, found, matches) if asked == "general" else out
    span = (tokens[chosen.start].start, tokens[chosen.end - 1].end)
    for about, value in pick:
        fields: dict[str, object] = {}
        if about in _SESSIONS and value == "done":
            for token in tokens:
                if "<minutes>" in token.keys and token.value is not None:
                    fields["minutes"] = round(token.value, 1)
                if "<metres>" in token.keys and token.value is not None and about == "walk":
                    fields["metres"] = float(round(token.value))
            if not fields:
                only = [
                    t
                    for at, t in enumerate(tokens)
                    if "<number>" in t.keys
                    and (t.word not in _ONE or len(tokens) == 1)
                    and not (at and _MEASURE in tokens[at - 1].keys)
                ]
                if only and only[-1].value is not None and 1 <= only[-1].value <= 90:
                    fields["minutes"] = only[-1].value
        if about == "dose" and value == "given":
            for token in tokens:
                if "<clock>" in token.keys and token.value is not None:
                    fields["at"] = clock_text(token.value)
        observation = Observation(about, value, span=span, **fields)  # type: ignore[arg-type]
        match = Match(_RULE, (chosen.start,), clauses.index(chosen))
        out.found.append(Found(observation, match))
        out.reasons.append(f"an answer to what was asked ({asked}) → {about}: {value}")
    return out


def _reaches_in(match: Match, clause: Clause, asked: str) -> bool:
    """ "Walk, | skipped it", "my wife | and the kid all gave it tonight": a rule from the clause
    before has told what stands here."""
    if match.first >= clause.start:
        return False
    half = match.rule.about not in topics_of(asked) | {"idiom"}
    return match.last >= ((clause.start + clause.end) // 2 if half else clause.end - 1)


def _resting(tokens: list[Token], found: list[Found], matches: list[Match]) -> Answer:
    """ "Home safe, snoozing on her bed": where that is all, the patient is well."""
    out = Answer()
    beside = any(m.rule.about != "idiom" for m in matches)
    if not found and not beside and courtesy.at_rest(tokens):
        span = (tokens[0].start, tokens[-1].end)
        rests = Observation("energy", "normal", span=span)
        out.found.append(Found(rests, Match(_RULE, (0,), 0)))
        out.reasons.append("asleep, and nothing else → energy: normal")
    return out


def _of_another(clause: Clause, asked: str) -> bool:
    """ "The walks are done" is no answer about the medicine."""
    named = {topic for key, topic in DEEDS.items() if key in clause.keys}
    return bool(named) and named.isdisjoint(kin(topics_of(asked)))


_NO_ANSWER = frozenset(("question", "hypo", "wish", "announced", "ordered", "taken_back", "unreal"))
_HOW_MUCH = {name: topic.how_much for name, topic in TABLE.items() if topic.how_much}


_LOTS = frozenset("lot mucho mucha bastante".split())


def _how_much(
    tokens: list[Token], clauses: list[Clause], asked: str, chosen: Clause
) -> tuple[tuple[tuple[str, str], ...], Clause]:
    """ "A bit", "a lot": the whole answer."""
    said = tokens[clauses[0].start : clauses[0].end]
    keys = clauses[0].keys
    plain = all(
        not t.keys.isdisjoint(("<slight>", "<very>", "<adv>", "<function>", "<joiner>"))
        or t.word in _LOTS
        for t in said
    )
    # "On our way" is no degree.
    if len(clauses) > 1 or not plain or "<neg>" in keys or said[-1].word == "way":
        return (), chosen
    little, much = _HOW_MUCH[asked]
    if "<slight>" in keys:
        return ((asked, little),), clauses[0]
    if "<very>" in keys or any(t.word in _LOTS for t in said):
        return ((asked, much),), clauses[0]
    return (), chosen


_FEVER = 39.4


def only_a_figure(tokens: list[Token], context: Context) -> bool:
    """A bare figure answers what was asked, and else tells of nothing; but "40.9!!!" where no
    figure was asked is no way to say anything other than a fever."""
    if len(tokens) > 1 or len(tokens[0].parts) > 1 or context.asked == "temperature":
        return False
    hot = (tokens[0].value or 0) >= _FEVER and tokens[0].word != str(int(tokens[0].value or 0))
    return context.asked in _DEEDS or not hot


def _degrees(tokens: list[Token], told: set[str]) -> Answer:
    """The first figure, where the temperature was asked and told in no other way."""
    out = Answer()
    if "temperature" in told:
        return out
    for at, token in enumerate(tokens[:8]):
        figure = token.keys & {"<number>", "<three>"}
        celsius = body_heat(token.value, "") if figure and token.value is not None else None
        if celsius is not None:
            span = (token.start, token.end)
            heat = Observation("temperature", "measured", celsius=celsius, span=span)
            out.found.append(Found(heat, Match(_RULE, (at,), 0)))
            out.reasons.append(f"an answer to what was asked (temperature) → {celsius} °C")
            break
    return out


_DEEDS = ("dose", *_SESSIONS, "cone")
_ONE = frozenset("one uno una un".split())
_ON_A_WALK = frozenset("idiom walk mobility weight_bearing pain energy urine stool".split())
"""What may be told in one breath with how long a session was."""
_AGO = frozenset("ago back hace later earlier before after since in inside cada every".split())


def _dates(tokens: list[Token], clause: Clause) -> bool:
    """Whether the duration says when ("an hour ago"), not how long."""
    for at in range(clause.start, clause.end):
        if not tokens[at].keys.isdisjoint(("<minutes>", "<hours>", "<metres>")):
            after = tokens[at + 1].word if at + 1 < clause.end else ""
            before = {t.word for t in tokens[max(clause.start, at - 2) : at]}
            if after in _AGO - {"in", "inside"} or before & {"hace", "in", "every", "cada", "last"}:
                return True
    return False


def _more(tokens: list[Token], clauses: list[Clause], clause: Clause) -> bool:
    """Whether anything but politeness is said beside a bare no."""
    if clause.end - clause.start > 1:
        return True
    return any(other is not clause and not _polite(tokens, other) for other in clauses)


def _polite(tokens: list[Token], clause: Clause) -> bool:
    """A greeting, an excuse, thanks, a name in front of the answer."""
    if "<donework>" in clause.keys:
        return False  # "we did it"
    return all(
        not t.keys.isdisjoint(("<hello>", "<thanks>", "<joiner>", "<person>", "<excuse>"))
        or t.inside
        or ("<function>" in t.keys and t.keys.isdisjoint(("<yesword>", "<noword>", "<neg>")))
        for t in tokens[clause.start : clause.end]
    )


_HARMLESS = {
    ("energy", "normal"), ("appetite", "normal"), ("drinking", "normal"), ("stool", "normal"),
    ("urine", "normal"), ("pain", "none"), ("vomiting", "no"), ("walk", "done"), ("dose", "given"),
    ("ice", "done"), ("cone", "on"), ("licking", "no"), ("incision", "clean"), ("swelling", "none"),
    ("weight_bearing", "full"), ("mobility", "better"), ("breathing", "normal"),
}  # fmt: skip


def _same_one(body: list[Token]) -> bool:
    """ "The same one" counts nothing, nor do a thousand thanks."""
    numbers = [token for token in body if "<number>" in token.keys]
    if numbers and all((token.value or 0) >= _A_THOUSAND for token in numbers):
        return True
    which = any(token.word in _WHICH for token in body)
    return which and all(token.word in _ONE for token in numbers)


_A_THOUSAND = 1000
_WHICH = frozenset("same other another mismo misma otro otra".split())


def _verdict(tokens: list[Token], clause: Clause, asked: str, own: bool, number: int) -> str:
    """ "yes", "no" or "" of one clause."""
    body = [t for t in tokens[clause.start : clause.end] if "<joiner>" not in t.keys]
    if asked in _TROUBLES and any(t.word in _SAYS_YES for t in body):
        return ""
    if not body:  # "ok": it is well; of something to do it may only mean "I shall"
        alone = len(tokens) == 1 and tokens[0].word == "ok"
        return "yes" if alone and told_by_no(asked) is None else ""
    if not clause.keys.isdisjoint(("<wrongness>", "<spat>", "<refuse>")):
        return ""
    first = body[0]
    keys = clause.keys
    size = len(body)
    begins = "<yesword>" in first.keys and not _goes_on(body, own)
    if begins and size > 1 and "<neg>" in body[1].keys and first.word not in _SAYS_YES:
        begins = False  # "did not walk him"
    trouble = asked in _TROUBLES  # "he did" tells that there was some
    if begins and not trouble and (number == 0 or size <= 3) and "<notyes>" not in keys:
        return "yes"
    if not own and _of_figure(body, asked) and not _same_one(body):
        return "yes"
    negative = "<noword>" in first.keys and (number == 0 or size <= 3) and (size <= 1 or not own)
    if first.word == "not" and size > 1 and body[1].word not in _NOT_WHAT:
        negative = False  # "not her stitches"
    if negative and (
        size == 1 or told_by_no(asked) or (asked in _BESIDE_NO and number == 0 and size <= 2)
    ):
        return "no"
    if own:
        return ""
    none = not first.keys.isdisjoint(("<zero>", "<neg>"))
    seen = none and all("<function>" in t.keys or t.word in _SEE for t in body[1:])
    if asked in _TROUBLES and (seen or (size <= 3 and (none or "<zero>" in keys))):
        return "no"  # "none that I can see"
    if asked in _UNCHANGED and "<samey>" in keys and "<neg>" not in keys and size <= 5:
        return "yes"
    if asked in _WITH_SIGNS and _only_denied(body, asked):
        return "yes"  # "no coughing", told of the breathing
    if asked in ("stool", "urine", "bathroom") and "<times>" in keys and "<neg>" not in keys:
        return "yes" if size <= 3 else ""
    if "<notdone>" in keys and (size <= 3 or not _only_nothing(body)):
        return "no" if told_by_no(asked) else ""
    later = begins or any("<yesword>" in t.keys for t in body[1:])
    did = any(a.word == "did" and b.word in ("it", "that") for a, b in pairwise(body[:5]))
    if later and not trouble and "<neg>" not in keys and size <= (10 if did else 6):
        return "yes"
    if (
        asked in _SESSIONS
        and "<neg>" not in keys
        and (
            "<minutes>" in keys
            or "<metres>" in keys
            or "<times>" in keys
            or ("<number>" in keys and size <= 4 and not _same_one(body))
        )
    ):
        return "yes"
    if asked == "dose" and "<neg>" not in keys and keys & _ALL_OR_WHEN and size <= 5:
        # "At 7", "all of them"; and not "phoned you at 7", "we all slept".
        return "yes" if _of_a_dose(body) else ""
    opener = "<joiner>" in tokens[clause.start].keys  # the "ok" of "ok, I gave it"
    told = tokens[clause.start + opener : clause.end]
    well = frozenset(("<good>", f"<well_{'energy' if asked == 'general' else asked}>"))
    past = any(t.word in _PAST for t in told)
    if (
        any(not t.keys.isdisjoint(well) for t in told)
        and not past
        and "<neg>" not in keys
        and size <= 7
    ):
        # "He's fine" says how he is, not that something was done.
        how = first.word in _IS_WELL or (asked == "dose" and not _of_a_dose(told))
        return "" if asked in _DEEDS and how else "yes"
    return ""


def _of_a_dose(body: list[Token]) -> bool:
    """Whether every word may be of one that was given: "7 with food", and no "dinner is at 7"."""
    if any(t.word in _ANOTHER_TIME for t in body):
        return False  # "it's been since 6"
    plain = [not t.keys.isdisjoint(_BESIDE_AN_HOUR) or t.word == "mind" for t in body]
    fed = [at for at, t in enumerate(body) if t.word in ("with", "con")]
    of_meal = frozenset(("<food>", "<hid>"))
    return all(
        ok or (bool(fed) and at > fed[0] and not t.keys.isdisjoint(of_meal))
        for at, (ok, t) in enumerate(zip(plain, body, strict=True))
    )


_ANOTHER_TIME = frozenset("since desde entre between every cada".split())
_ALL_OR_WHEN = frozenset(("<clock>", "<allofthem>"))
_BESIDE_AN_HOUR = _ALL_OR_WHEN | frozenset(
    ("<function>", "<adv>", "<nowword>", "<aux>", "<be>", "<joiner>", "<neg>", "<noword>",
     "<notdone>", "<zero>", "<person>", "<kin>", "<patient>", "<thanks>", "<hello>", "<excuse>",
     "<later>", "<both>", "<gave>", "<handed>", "<took>", "<donework>", "<meds>",
     "<good>", "<yesword>", "<number>", "<numberword>", "<half>", "<partly>", "<pillword>",
     "<partday>")
)  # fmt: skip
_FIGURES = frozenset(("<minutes>", "<metres>", "<number>"))
_MEASURE = "<measure>"
"""What a figure behind it measures: "RR 24", "CRT 2" tell no minutes."""


def _of_figure(body: list[Token], asked: str) -> bool:
    """ "Ten, no pulling", "two cups": a figure comes first, whatever is denied behind it."""
    if asked in ("appetite", "drinking"):
        portion = [at for at, t in enumerate(body) if "<portion>" in t.keys][:1]
        less = any(not t.keys.isdisjoint(_NOT_ALL) for t in body)
        return bool(portion) and portion[0] <= 3 and len(body) <= 5 and not less
    if asked not in _SESSIONS:
        return False
    for token in body[:3]:
        if "<neg>" in token.keys or "<times>" in token.keys or _MEASURE in token.keys:
            return False
        if not token.keys.isdisjoint(_FIGURES):
            return len(body) <= 8 and 1 <= (token.value or 0) <= 600
    return False


_SEE = frozenset("see seen notice noticed spot tell find veo vea noto note visto ver".split())
_UNCHANGED = frozenset(
    "appetite drinking stool urine bathroom bandage fixator breathing gums belly".split()
)
_WITH_SIGNS = frozenset("breathing bandage incision belly fixator gums".split())


def _only_denied(body: list[Token], asked: str) -> bool:
    """ "No coughing", "not moving": nothing is told but that a sign is not there."""
    bad = frozenset(("<sign>", f"<bad_{asked}>"))
    talk = bad | {"<neg>", "<function>", "<adv>"}
    denied = not body[0].keys.isdisjoint(("<neg>", "<zero>"))
    return (
        denied
        and all(not t.keys.isdisjoint(talk) or t.word in ("se", "ha", "esta") for t in body)
        and any(not t.keys.isdisjoint(bad) for t in body)
    )


_NOT_ALL = frozenset(
    ("<neg>", "<partly>", "<slight>", "<barely>", "<fewer>", "<more>", "<half>", "<hedge>")
)


def _goes_on(body: list[Token], own: bool) -> bool:
    """Whether words that alone say yes ("he is", "ya le di") begin a sentence of its own: "he
    is limping", "it is getting worse", "ya le di el carprofeno" answer nothing but what they
    tell."""
    first, size = body[0], len(body)
    if "<both>" in first.keys:
        return not _of_a_dose(body)  # "both dogs barking"
    phrases = [key for key in first.keys if key.startswith(f"{first.word}_")]
    if not phrases or first.word in _SAYS_YES:
        return False
    length = max(key.count("_") + 1 for key in phrases)
    if first.word not in _PRONOUNS:
        return size > length and own
    tells = any(t.keys.isdisjoint(_AFTER_YES) for t in body[length:])
    return size > length and (own or tells or size > length + 2)


_AFTER_YES = frozenset(
    ("<function>", "<adv>", "<aux>", "<good>", "<yesword>", "<nowword>", "<number>", "<times>",
     "<minutes>", "<metres>", "<clock>")
)  # fmt: skip
"""What may stand behind "it is", "he has" in an answer that is a yes."""
_PRONOUNS = frozenset("he she it i we they".split())
_PAST = frozenset("was were used estaba estuvo era antes before until last".split())
_IS_WELL = frozenset("he she hes shes esta sigue anda".split())


def _only_nothing(body: list[Token]) -> bool:
    """ "I give nothing, I wait": the word alone does not tell what was not done."""
    return all(t.word == "nothing" for t in body if "<notdone>" in t.keys)


_NOT_WHAT = frozenset(
    "yet today tonight now really done this so him her it at given able possible happening".split()
)

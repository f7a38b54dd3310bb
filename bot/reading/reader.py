"""Free text to observations: the way of one reply through the room."""

from __future__ import annotations

from itertools import pairwise

from bot.model.observation import Observation
from bot.model.reading import Context, Reading
from bot.model.topics import denied
from bot.model.vocabulary import TOPICS

from . import bare, danger, scope, subjects
from .actors import all_that_was_due, promised
from .asides import is_aside, set_apart
from .attach import area, figures, medicines_meant, until
from .clauses import Clause, split
from .contrast import drop_before, mark_sudden
from .focus import FOCUS_OF, NOUNS, WOUND, kin
from .grammar import Rule
from .language import guess, settle_homographs
from .lexis import LEXIS, mark_phrases, settle_bit, tag
from .matching import Match, candidates, find
from .normalise import words_of
from .overlap import drop_overlaps
from .quantities import fold_quantities, hours_of_doses, those_due
from .retold import also_given, brought_up, not_yet, of_the_dead, resolve_past
from .settle import Found, settle
from .token import Token
from .trace import Trace
from .wishes import CLEARING

_WAS = frozenset(
    "was were been had yesterday ayer anoche estaba estuvo andaba thought pense crei".split()
)
_EARLIER = frozenset(
    ("<yesterday>", "<lastnight>", "<yesterdaymorning>", "<yesterdayevening>", "<daybefore>")
)
_LIMIT = 4096
_OFTEN = 50
"""What is said in the same way more often in one reply says nothing more."""


def read(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """What a reply says. Pure; never raises for any text. Text beyond 4,096 code points is
    not read, and the reply then counts as not understood. ``trace`` is told how it came."""
    tokens = words_of(text[:_LIMIT])
    if trace:
        trace.text = text
    tag(tokens)
    lang = guess(tokens, context.lang)
    settle_homographs(tokens, lang)
    settle_bit(tokens)
    set_apart(tokens, trace)
    mark_phrases(tokens)
    tokens = fold_quantities(tokens, context.at)
    if context.doses_due > 1:
        those_due(tokens, context.doses_due)
    if context.asked == "dose":
        hours_of_doses(tokens, context.at, context.doses_due)
    if not tokens:
        return Reading((), False, lang, ("no words",))
    own = frozenset(word for name in context.names for word in name.casefold().split())
    subjects.mark_own_name(tokens, own, lang)
    clauses = split(tokens)
    due = context.asked == "dose" or context.doses_due > 0
    dressed = context.asked == "bandage" or any("<bandageword>" in t.keys for t in tokens)
    for clause in clauses:
        if clause.asked:
            clause.keys |= {"<askmark>"}
        if context.species == "cat":
            clause.keys |= {"<felid>"}  # a cat that pants is short of breath
        if dressed:
            clause.keys |= {"<dressed>"}
        if due and all_that_was_due(tokens, clause):
            clause.keys |= {"<planned>"}
    matches, moods = _match(tokens, clauses, context, trace)
    if trace:
        trace.begin(tokens, matches)
    scope.mark_moods(tokens, clauses, moods)
    scope.mark_carried(tokens, clauses)
    subjects.mark_people(tokens, clauses)
    told = {m.clause for m in matches if m.rule.about not in ("idiom", "request", "danger")}
    other = subjects.mark_subjects(tokens, clauses, context.species, own, told)
    apart = {n for n, clause in enumerate(clauses) if is_aside(clause, tokens)}
    if len(apart) < len(clauses):
        matches = [m for m in matches if m.clause not in apart or m.rule.about == "request"]
    matches = [m for m in matches if not _tail_of_talk(m, clauses)]
    if trace:
        trace.keep(matches, "in a formula that weighs nothing")
    for match in matches:
        clause = clauses[match.clause]
        match.denied = scope.denied(match, tokens, clause)
        match.hedged = scope.hedged(match, tokens, clause)
        match.void = scope.void(match, tokens, clause)
    matches = [m for m in matches if not scope.torn(m, tokens)]
    if bare.only_a_figure(tokens, context):
        matches = [m for m in matches if m.rule.about != "temperature"]
    if trace:
        trace.keep(matches, "a denial stands in the midst of it")
    net = [m for m in matches if m.rule.about == "danger"]
    matches = drop_overlaps([m for m in matches if m.rule.about != "danger"], clauses)
    matches += danger.caught(net, matches, clauses)
    if trace:
        trace.keep_owned(matches)
    return _conclude(text, tokens, clauses, matches, context, lang, other)


def _tail_of_talk(match: Match, clauses: list[Clause]) -> bool:
    """A "later" that only ends what was told is no wish to be asked later."""
    pattern = match.rule.pattern
    return (match.rule.value == "snooze" and "acting" in clauses[match.clause].moods) or (
        match.rule.value == "snooze"
        and pattern.at_start
        and pattern.at_end
        and clauses[match.clause].rank < 2
    )


def _match(
    tokens: list[Token], clauses: list[Clause], context: Context, trace: Trace | None
) -> tuple[list[Match], dict[int, set[str]]]:
    """Every rule that is found, clause by clause; what is spoken of moves on with them."""
    asked = FOCUS_OF.get(context.asked, frozenset((context.asked,)))
    matches: list[Match] = []
    moods: dict[int, set[str]] = {}
    focus = asked
    before: dict[tuple[object, ...], tuple[list[tuple[Rule, tuple[int, ...]]], frozenset[str]]] = {}
    pointed = -9
    for number, clause in enumerate(clauses):
        if any("<pillofman>" in t.keys for t in tokens[clause.start : clause.end]):
            pointed = number
        if number - pointed <= 4:
            clause.keys |= {"<menspills>"}  # "my tablets … he ate eight of them"
        far = clause.end
        keys = clause.keys
        step = number + 1
        while step < len(clauses) and clauses[step].rank <= 2 and step <= number + 2:
            far = clauses[step].end
            keys = keys | clauses[step].keys
            step += 1
        said = tuple(t.word for t in tokens[clause.start : far])
        known = (said, clause.end - clause.start, clause.asked, focus, number - pointed <= 4)
        if known not in before:  # the same words again say the same again
            found, after = _in_clause(tokens, clause, far, keys, focus, asked, context.asked)
            start = clause.start
            relative = [(rule, tuple(p - start for p in at)) for rule, at in found]
            before[known] = (relative, after)
        shifted, after = before[known]
        focus = focus if is_aside(clause, tokens) else after
        for rule, at in shifted:
            if rule.about == "mood":
                moods.setdefault(number, set()).add(rule.value)
                if trace:
                    trace.moods.append((rule, tuple(p + clause.start for p in at)))
            else:
                matches.append(Match(rule, tuple(p + clause.start for p in at), number))
    return matches, moods


def _in_clause(
    tokens: list[Token],
    clause: Clause,
    far: int,
    keys: frozenset[str],
    focus: frozenset[str],
    asked: frozenset[str],
    asked_name: str,
) -> tuple[list[tuple[Rule, tuple[int, ...]]], frozenset[str]]:
    """The rules found in one clause and where, and what is spoken of after it."""
    waiting: list[Rule] = []
    found: list[tuple[Rule, tuple[int, ...]]] = []
    own: set[str] = set()
    rules = LEXIS.rules
    for which in candidates(LEXIS, keys):
        rule = rules[which]
        if rule.about == "aside":
            continue
        if rule.focus or rule.unless:
            waiting.append(rule)
            continue
        for at in find(rule.pattern, tokens, clause, far, keys):
            found.append((rule, at))
            if rule.about not in ("idiom", "request", "mood", "danger"):
                own.add(rule.about)
    if not own:
        named = frozenset(topic for key, topic in NOUNS.items() if key in clause.keys)
        if named and named.isdisjoint(focus):
            focus = named
    now = frozenset(own) if own else focus
    if own == {"vomiting"} and "dose" in focus:
        now |= {"dose"}  # "gave it at eight but he threw it up"
    now |= {f"asked-{asked_name}"}
    if not asked.isdisjoint(kin(focus) if not own else WOUND if own <= WOUND else own):
        now |= asked
    for rule in waiting:
        if (rule.focus and rule.focus.isdisjoint(now)) or not rule.unless.isdisjoint(now):
            continue
        for at in find(rule.pattern, tokens, clause, far, keys):
            found.append((rule, at))
            own.add(rule.about)
    return found, frozenset(own) or focus


def _conclude(
    text: str,
    tokens: list[Token],
    clauses: list[Clause],
    matches: list[Match],
    context: Context,
    lang: str,
    other: bool,
) -> Reading:
    found: list[Found] = []
    reasons: list[str] = []
    questions: list[str] = []
    taken = {m.clause for m in matches if m.rule.about != "idiom"}
    asks = any(c.moods & {"question", "factive", "announced"} for c in clauses)
    calls = any(
        m.rule.about == "request" and m.rule.value in ("call_back", "stop", "snooze")
        for m in matches
    )
    times: dict[tuple[int, bool, bool, str], int] = {}
    for match in matches:
        about = match.rule.about
        if about == "idiom":
            continue
        same = (id(match.rule), match.denied, match.hedged, match.void)
        times[same] = times.get(same, 0) + 1
        if times[same] > _OFTEN:
            continue
        if about == "danger":
            found.append(danger.doubtful(match, tokens))
            reasons.append(f"{_quote(text, tokens, match)} → {match.rule.value}: in doubt")
            continue
        if (
            not match.void
            and (about, match.rule.value) in CLEARING
            and any(tokens[at].guessed for at in match.at)
        ):
            match.void = "a guess at a misspelt word does not clear anything"
        if match.void:
            reasons.append(f"{_quote(text, tokens, match)} not counted: {match.void}")
            if match.void in ("a question", "a condition") and about not in questions:
                questions.append(about)
            continue
        for observation in _observe(text, tokens, clauses, match, taken, context):
            found.append(_timed(observation, match, tokens, clauses))
            reasons.append(f"{_quote(text, tokens, match)} → {about}: {observation.value}")
    found.extend(also_given(tokens, clauses, found, taken, context))
    found = resolve_past(found, clauses)
    mark_sudden(found, clauses)
    found = drop_before(found, clauses)
    put_off = any(m.void == "not done yet" for m in matches) or (
        context.asked in (*_TO_DO, "none")
        and any(promised(tokens, c, context.asked != "none") for c in clauses)
    )
    answer = bare.answer(tokens, clauses, matches, found, context)
    found.extend(answer.found)
    reasons.extend(answer.reasons)
    found.extend(brought_up(found))
    observations = settle(of_the_dead(not_yet(found, tokens), clauses))
    if put_off and not observations:
        span = (tokens[0].start, tokens[-1].end)
        when = until(tokens, range(len(tokens)), context, ahead=True)
        observations.append(Observation("request", "snooze", span=span, **when))  # type: ignore[arg-type]
        reasons.append("a promise or a plan: asked again later")
    requests = [o for o in observations if o.about == "request"]
    said = [o for o in observations if o.about != "request"]
    voids = any(
        m.void in ("a wish", "a question", "a condition", "another animal") for m in matches
    )
    wish = any("wish" in c.moods or "hypo" in c.moods for c in clauses)
    feared = any(m.void == "something feared or prevented" for m in matches)
    worry = any("worry" in c.moods for c in clauses)
    marked = any(c.asked and c.end - c.start > 1 for c in clauses)
    lone = not said and not requests and (voids or wish or other or feared or worry or marked)
    if not observations and any("acting" in c.moods for c in clauses):
        observations.append(
            Observation("request", "call_back", span=(tokens[0].start, tokens[-1].end))
        )
        reasons.append("on the way to help, or phoning: staff know")
    thirst = any((o.about, o.value) == ("drinking", "more") for o in said)
    known = {name for name, told in (("more_pee", thirst), ("taken_back", said)) if told}
    beyond = any(c.moods & (_BEYOND - known) for c in clauses)
    if ((asks and not calls) or lone or beyond) and not any(
        o.value == "question" for o in requests
    ):
        span = (tokens[0].start, tokens[-1].end)
        for clause in clauses:
            if clause.moods & ({"question", "factive", "wish", "hypo", "announced"} | _BEYOND):
                span = (tokens[clause.start].start, tokens[clause.end - 1].end)
                break
        observations.append(Observation("request", "question", span=span))
        reasons.append("a question" if asks else "for a person to read")
        if asks and not questions:
            questions.extend(o.about for o in said)
        if asks and not questions:
            questions.extend(_named(clauses))
    greeting = not observations and bare.is_greeting(tokens, clauses, context)
    understood = (bool(observations) or greeting) and len(text) <= _LIMIT
    if understood and not greeting:
        understood = not bare.worrying_rest(tokens, clauses, matches, observations)
    understood = understood and not beyond and not any(m.rule.about == "danger" for m in matches)
    if not understood:
        reasons.append("not all of it was understood")
    topics = tuple(topic for topic in dict.fromkeys(questions) if topic in TOPICS)
    plain = frozenset(item.observation.about for item in answer.found)
    seen, why = tuple(observations), tuple(reasons)
    return Reading(seen, understood, lang, why, topics, greeting, plain)  # type: ignore[arg-type]


def _timed(
    observation: Observation, match: Match, tokens: list[Token], clauses: list[Clause]
) -> Found:
    """An observation with whether it is of an earlier day, or of how it ended."""
    clause = clauses[match.clause]
    final = "<nowword>" in clause.keys or clause.rank == 2
    if match.clause and not final:
        before = clauses[match.clause - 1]
        final = before.sentence == clause.sentence and (
            "<nowword>" in before.keys or before.rank == 2
        )
    past = (
        "near_past" in clause.moods
        or any(tokens[at].word in _WAS for at in range(clause.start, match.first))
        or not (clause.keys.isdisjoint(_EARLIER) or "<sinceword>" in clause.keys)
    )
    now = "<nowword>" in clause.keys
    if observation.about == "dose":
        ahead = {t.word for t in tokens[max(clause.start, match.first - 2) : match.last + 1]}
        after = {t.word for t in tokens[match.last + 1 : match.last + 3] if not t.cut}
        now = bool(ahead & _ONLY_NOW or after & _LATE)
    return Found(observation, match, final, now, past, clause.joiner == "but")


_LATE = frozenset("now ahorita ahora late tarde finally".split())
_ONLY_NOW = _LATE | frozenset("just only apenas recien acabo acabamos".split())
_BEYOND = frozenset(("ordered", "taken_back", "more_pee"))
"""What no value of the vocabulary holds, and staff have to read: an order of another practice,
a false alarm, more urine than before."""


def _named(clauses: list[Clause]) -> list[str]:
    """The topics that a question only names."""
    nouns = {**NOUNS, "<meds>": "dose"}
    asked = [c for c in clauses if c.moods & {"question", "factive", "announced"}]
    return list(dict.fromkeys(nouns[key] for c in asked for key in sorted(c.keys & nouns.keys())))


_TO_DO = ("dose", "ice", "warm_compress", "massage", "walk", "cone")
"""What a household does when it is asked to."""


def _cold_toes(tokens: list[Token], clauses: list[Clause], sentence: int) -> bool:
    """Whether the toes are told to be cold, blue or numb, not denied."""
    toes = False
    for clause in clauses:
        if clause.sentence != sentence:
            continue
        toes = toes or "<toeword>" in clause.keys
        for at in range(clause.start, clause.end):
            ahead = tokens[max(clause.start, at - 3) : at]
            wraps = at + 1 < clause.end and "<bandageword>" in tokens[at + 1].keys
            denied = any("<neg>" in t.keys for t in ahead)
            if toes and "<coldtoe>" in tokens[at].keys and not (wraps or denied):
                said = tokens[clause.start : clause.end]
                return not any(_cools(here, after) for here, after in pairwise((*said, said[-1])))
    return False


def _cools(token: Token, after: Token) -> bool:
    """Whether a word names what makes toes cold, and not how cold ("ice cold")."""
    keys = token.keys & {"<icepack>", "<water>", "outside"}
    return bool(keys) and not ("<coldtoe>" in token.keys and "<coldtoe>" in after.keys)


def _quote(text: str, tokens: list[Token], match: Match) -> str:
    return f"“{text[tokens[match.first].start : tokens[match.last].end]}”"


def _observe(
    text: str,
    tokens: list[Token],
    clauses: list[Clause],
    match: Match,
    taken: set[int],
    context: Context,
) -> list[Observation]:
    """The observations of one match; none when its denial says nothing."""
    rule = match.rule
    value: str | None = rule.value
    detail, trend = rule.detail, rule.trend
    if match.denied:
        value = denied(rule.about, rule.value)
        detail = trend = None
    if value is None:
        return []
    clause = clauses[match.clause]
    places = area(match.clause, clauses, taken)
    fields = figures(match, value, tokens, clauses, places, context)
    if rule.about == "temperature":
        fields["celsius"] = next(tokens[at].value for at in match.at if "<heat>" in tokens[at].keys)
    if rule.about == "cone" and value == "off" and detail is None:
        near = frozenset().union(*(clauses[place].keys for place in places))
        detail = next((name for name in ("unwatched", "watched") if f"<{name}>" in near), None)
    span = (tokens[match.first].start, tokens[match.last].end)
    if (rule.about, value) == ("request", "snooze"):
        fields = {}
        for place in places:
            span_of = range(clauses[place].start, clauses[place].end)
            fields = fields or until(tokens, span_of, context, ahead=False)
    if (rule.about, value) == ("bandage", "tight") and _cold_toes(tokens, clauses, clause.sentence):
        detail = "cold"
    if (rule.about, value) == ("urine", "none") and "<lastdone>" in clause.keys:
        hours = fields.get("hours")
        if isinstance(hours, float) and hours < 10 and not match.held:
            value = "normal"  # "last peed two hours ago"
            del fields["hours"]
    meds: list[str | None] = [None]
    if rule.about in ("dose", "swallowed"):
        meds = list(medicines_meant(match, tokens, clauses, places, context)) or [None]
        if rule.about == "swallowed":
            meds = meds[:1]
    return [
        Observation(rule.about, value, med=med, detail=detail, trend=trend,
                    unsure=match.hedged, span=span, **fields)  # type: ignore[arg-type]
        for med in meds
    ]  # fmt: skip

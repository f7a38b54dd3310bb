"""Free text to observations: the way of one reply through the room."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from bot.model.lang import Lang
from bot.model.observation import Observation
from bot.model.reading import Context, Reading, Suppressed
from bot.model.topics import denied
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS

from . import bare, courtesy, danger, denial, foreign, scope, subjects, suppress
from .actors import promised
from .asides import is_aside, set_apart
from .attach import area, figures, medicines_meant, until
from .clauses import Clause, split
from .contrast import drop_before, mark_sudden
from .earlier import mark_before_surgery
from .focus import NOUNS
from .heads import report_starts, talk_behind, ways_to_bound
from .heard import as_meant
from .language import guess, settle_homographs
from .lexis import is_word, mark_phrases, settle_bit, tag
from .limbs import drop_told_twice, mark_lost, of_other_legs
from .matching import Match
from .meals import beside_a_dose, told_of_what_was_due
from .moods import mark_carried, mark_moods
from .normalise import plain, words_of
from .overlap import drop_overlaps, in_figures
from .part_of import without_parts
from .plans import when_awake
from .quantities import all_of_them, fold_quantities, those_due
from .retold import also_given, as_well, brought_up, not_until, not_yet, of_the_dead, over_by_now
from .seek import seek
from .settle import ABSENT, Found, settle
from .shorthand import written_out
from .side_by_side import side_by_side
from .stand import Lost, hoped, lost_to_others, raising, told_at, with_trouble_of
from .suppress import Suppressor
from .toes import cold_toes, swollen_and_cold
from .token import Token
from .trace import Trace
from .typed import hours_of_doses
from .wishes import CLEARING, tells_trouble

_WAS = frozenset(
    "was were been had yesterday ayer anoche estaba estuvo andaba thought pense crei".split()
)
_EARLIER = frozenset(
    ("<yesterday>", "<lastnight>", "<yesterdaymorning>", "<yesterdayevening>", "<daybefore>")
)
_LIMIT = 4096
_TWICE = 300  # words up to which a reply is read twice, where a statement may end without a stop
_OFTEN = 50
"""What is said in the same way more often in one reply says nothing more."""


def read(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """What a reply says. Pure; never raises for any text. Text beyond 4,096 code points is
    not read, and the reply then counts as not understood. ``trace`` is told how it came."""
    return side_by_side(text, _alone(text, context, trace), context, _alone)


def _alone(text: str, context: Context, trace: Trace | None = None) -> Reading:
    if trace:
        trace.text = text
    tokens = written_out(words_of(text[:_LIMIT]), text)
    if foreign.is_foreign(tokens):
        danger_words = tuple(foreign.dangers(tokens))
        return Reading(danger_words, False, context.lang or "en", ("a language that is not read",))
    lang = _prepare(tokens, context, trace)
    reading, lost = _read(text, _marked(tokens, lang, context), lang, context, trace)
    return bounded(text, lost, reading, context, trace)


def bounded(
    text: str, lost: list[Lost], reading: Reading, context: Context, trace: Trace | None = None
) -> Reading:
    """The reading, and the alarms of those ``lost`` that are read where a statement ends without
    a stop."""
    lost = raising(lost, told_at(reading, context))
    tokens = written_out(words_of(text[:_LIMIT]), text) if lost else []
    if not tokens or len(tokens) > _TWICE or foreign.is_foreign(tokens):
        return reading
    lang = _prepare(tokens, context, trace)
    told = [one.span for one in reading.observations if one.about != "request"]
    told += [one.span for one in reading.suppressed]
    last = max(one.span[1] for one in lost) - 1
    ways = ways_to_bound(report_starts(tokens, lang, last), tokens, told)
    for way in ways or ([()] if talk_behind(tokens, len(tokens)) else []):
        if told_at(reading, context) >= Urgency.emergency:
            break
        bounds = {tokens[start].start for start in way}
        talks = [at for end in (*way, len(tokens)) if (at := talk_behind(tokens, end))]
        for talk in talks:
            bounds.add(max((t.start for t in tokens[:talk] if t.cut >= 3), default=0))
        tokens = written_out(words_of(text[:_LIMIT]), text)
        for start in (*way, *talks):
            tokens[start].cut = 3
        _prepare(tokens, context, trace)  # each side in its own language
        stops = [t.start for t in tokens if t.cut >= 3]
        apart, _ = _read(text, _marked(tokens, lang, context), lang, context, trace)
        reading = with_trouble_of(apart, reading, lost, stops, bounds, context)
    return reading


def _prepare(tokens: list[Token], context: Context, trace: Trace | None) -> Lang:
    """Give the words their classes, and bound formulas beside the report; the language."""
    as_meant(tokens)
    tag(tokens)
    lang = guess(tokens, context.lang)
    settle_homographs(tokens, lang)
    settle_bit(tokens)
    set_apart(tokens, trace)
    return lang


def _marked(tokens: list[Token], lang: Lang, context: Context) -> list[Token]:
    """The words with phrases, quantities and the patient's own name known."""
    mark_phrases(tokens)
    mark_lost(tokens)
    all_of_them(tokens, context.doses_due)
    if context.asked == "dose" or context.doses_due:
        tokens = hours_of_doses(tokens, context.at)
    tokens = fold_quantities(tokens, context.at)
    those_due(tokens, context.doses_due)
    subjects.mark_own_name(tokens, _own(context), lang)
    named = _words(context.people) - _own(context)
    for token in tokens:
        if token.word in named and not is_word(token.word):
            token.keys |= {"<smalltalk>"}
    return tokens


def _own(context: Context) -> frozenset[str]:
    return _words(context.names)


def _words(names: Iterable[str]) -> frozenset[str]:
    return frozenset(plain(word) for name in names for word in name.split())


def _read(
    text: str, tokens: list[Token], lang: Lang, context: Context, trace: Trace | None
) -> tuple[Reading, list[Lost]]:
    """What these words say, bounded as they are, and what others beside it took away."""
    if not tokens:
        return Reading((), False, lang, ("no words",)), []
    own = _own(context)
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
        if due:
            clause.keys |= told_of_what_was_due(tokens, clause)
    matches, moods = seek(tokens, clauses, context, trace)
    if trace:
        trace.begin(tokens, matches)
    mark_moods(tokens, clauses, moods)
    mark_before_surgery(tokens, clauses)
    mark_carried(tokens, clauses)
    subjects.mark_people(tokens, clauses)
    told = {m.clause for m in matches if m.rule.about not in ("idiom", "request", "danger")}
    other = subjects.mark_subjects(tokens, clauses, context.species, own, told)
    apart = {n for n, clause in enumerate(clauses) if is_aside(clause, tokens)}
    lost: list[tuple[Match, Suppressor]] = []
    if len(apart) < len(clauses):
        formula = [m for m in matches if m.clause in apart and m.rule.about != "request"]
        matches = _without(matches, formula, suppress.FORMULA, lost)
    matches = [m for m in matches if not _tail_of_talk(m, clauses)]
    if trace:
        trace.keep(matches, "in a formula that weighs nothing", suppress.FORMULA)
    scope.weigh(matches, tokens, clauses)
    torn = [
        m
        for m in matches
        if denial.torn(m, tokens, clauses[m.clause]) or beside_a_dose(m, tokens, clauses)
    ]
    matches = _without(matches, torn, suppress.TORN, lost)
    if trace:
        trace.keep(matches, "a denial, or another statement, stands in its midst", suppress.TORN)
    if bare.only_a_figure(tokens, context):
        heat = [m for m in matches if m.rule.about == "temperature"]
        matches = _without(matches, heat, suppress.FIGURE_ALONE, lost)
        if trace:
            trace.keep(matches, "a figure alone answers what was asked", suppress.FIGURE_ALONE)
    net = [m for m in matches if m.rule.about == "danger"]
    matches = [m for m in matches if m.rule.about != "danger"]
    of_speech = in_figures(matches)
    matches = drop_overlaps(matches, clauses)
    matches = drop_told_twice(matches, clauses, context.asked)
    matches += danger.caught(net, matches, clauses)
    if trace:
        trace.keep_owned(matches)
    reading = _conclude(text, tokens, clauses, matches, context, lang, other)
    lost.extend((m, m.void) for m in matches if m.void)
    lost.extend((m, suppress.NEGATION) for m in matches if m.denied and not m.void)
    lost.extend((m, suppress.FIGURE) for m in of_speech)  # last: a longer match may have told it
    away = lost_to_others(lost, tokens)
    return replace(reading, suppressed=_suppressed(lost, tokens, reading), hoped=hoped(lost)), away


def _without(
    matches: list[Match],
    taken: list[Match],
    by: Suppressor,
    lost: list[tuple[Match, Suppressor]],
) -> list[Match]:
    """The matches but for those taken away, which are noted with what took them."""
    lost.extend((match, by) for match in taken)
    gone = {id(match) for match in taken}
    return [match for match in matches if id(match) not in gone]


def _suppressed(
    lost: list[tuple[Match, Suppressor]], tokens: list[Token], reading: Reading
) -> tuple[Suppressed, ...]:
    """The troubles named and not counted, each once, but for those read elsewhere as well."""
    read_too = {(o.about, o.value) for o in reading.observations}
    out: dict[tuple[str, str], Suppressed] = {}
    for match, by in lost:
        about, value = match.rule.about, match.rule.value
        if by is not suppress.NEGATION and match.denied:
            value = denied(about, value) or ""
        if about in ("idiom", "request", "danger") or not value:
            continue
        if tells_trouble(about, value) and (about, value) not in read_too:
            span = (tokens[match.first].start, tokens[match.last].end)
            out.setdefault((about, value), Suppressed(about, value, by.id, span))
    return tuple(out.values())


def _tail_of_talk(match: Match, clauses: list[Clause]) -> bool:
    """A "later" that only ends what was told is no wish to be asked later."""
    pattern = match.rule.pattern
    return (match.rule.value == "snooze" and "acting" in clauses[match.clause].moods) or (
        match.rule.value == "snooze"
        and pattern.at_start
        and pattern.at_end
        and clauses[match.clause].rank < 2
    )


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
        same = (id(match.rule), match.denied, match.hedged, match.void.id if match.void else "")
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
            match.void = suppress.GUESSED
        if match.void:
            reasons.append(f"{_quote(text, tokens, match)} not counted: {match.void.why}")
            if match.void in (suppress.QUESTION, suppress.CONDITION) and about not in questions:
                questions.append(about)
            continue
        for observation in _observe(text, tokens, clauses, match, taken, context):
            found.append(_timed(observation, match, tokens, clauses))
            reasons.append(f"{_quote(text, tokens, match)} → {about}: {observation.value}")
    found.extend(also_given(tokens, clauses, found, taken, context))
    found = over_by_now(as_well(not_until(found, tokens, clauses, context)), clauses, tokens)
    mark_sudden(found, clauses)
    found = drop_before(found, clauses)
    put_off = (
        any(m.void is suppress.NOT_DONE for m in matches)
        or when_awake(text)
        or (
            context.asked in (*_TO_DO, "none")
            and any(promised(tokens, c, context.asked != "none") for c in clauses)
        )
    )
    answer = bare.answer(tokens, clauses, matches, found, context)
    found = of_other_legs([*found, *answer.found], clauses, tokens)
    reasons.extend(answer.reasons)
    found.extend(brought_up(found))
    found.extend(swollen_and_cold(tokens, clauses, found))
    observations = without_parts(settle(of_the_dead(not_yet(found, tokens), clauses)), text)
    if put_off and not observations:
        span = (tokens[0].start, tokens[-1].end)
        when = until(tokens, range(len(tokens)), context, ahead=True)
        observations.append(Observation("request", "snooze", span=span, **when))  # type: ignore[arg-type]
        reasons.append("a promise or a plan: asked again later")
    requests = [o for o in observations if o.about == "request"]
    said = [o for o in observations if o.about != "request"]
    voids = any(
        m.void in (suppress.WISH, suppress.QUESTION, suppress.CONDITION, suppress.ANIMAL)
        for m in matches
    )
    wish = any(c.moods & {"wish", "hypo", "worry"} for c in clauses)
    feared = any(m.void is suppress.FEAR for m in matches)
    marked = any(c.asked and c.end - c.start > 1 for c in clauses)
    lone = not said and not requests and (voids or wish or other or feared or marked)
    if not observations and any("acting" in c.moods for c in clauses):
        observations.append(
            Observation("request", "call_back", span=(tokens[0].start, tokens[-1].end))
        )
        reasons.append("on the way to help, or phoning: staff know")
    known = {"taken_back"} if said else set[str]()
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
    greeting = not observations and courtesy.is_greeting(tokens, clauses, context)
    understood = (bool(observations) or greeting) and len(text) <= _LIMIT
    if understood and not greeting:
        understood = not courtesy.worrying_rest(tokens, clauses, matches, observations)
    open_ = any(m.rule.about == "danger" or m.void is suppress.UNREAL for m in matches)
    understood = understood and not beyond and not open_
    if not understood:
        reasons.append("not all of it was understood")
    topics = tuple(topic for topic in dict.fromkeys(questions) if topic in TOPICS)
    plain = frozenset(item.observation.about for item in answer.found)
    seen, why, left = tuple(observations), tuple(reasons), courtesy.unread(tokens, matches)
    return Reading(seen, understood, lang, why, topics, greeting, plain, unread=left)  # type: ignore[arg-type]


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
_BEYOND = frozenset(("ordered", "taken_back"))
"""What no value of the vocabulary holds, and staff have to read: an order of another practice,
a false alarm, more urine than before."""


def _named(clauses: list[Clause]) -> list[str]:
    """The topics that a question only names."""
    nouns = {**NOUNS, "<meds>": "dose"}
    asked = [c for c in clauses if c.moods & {"question", "factive", "announced"}]
    return list(dict.fromkeys(nouns[key] for c in asked for key in sorted(c.keys & nouns.keys())))


_TO_DO = ("dose", "ice", "warm_compress", "massage", "walk", "cone")
"""What a household does when it is asked to."""


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
        if value is None and courtesy.absent(
            match, tokens, clauses, taken, bare.topics_of(context.asked)
        ):
            value = ABSENT.get(rule.about)
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
    if (rule.about, value) == ("bandage", "tight") and cold_toes(tokens, clauses, clause.sentence):
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

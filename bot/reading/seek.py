"""Every rule that is found in a reply, clause by clause, and what is spoken of meanwhile."""

from __future__ import annotations

from bot.model.reading import Context

from .asides import is_aside
from .clauses import Clause
from .focus import FOCUS_OF, NOUNS, WOUND, kin
from .grammar import Rule
from .lexis import LEXIS
from .matching import Match, candidates, find
from .token import Token
from .trace import Trace

POINTS_BACK = {
    "<pillofman>": "<menspills>", "<poisonthing>": "<thepoison>", "<packthing>": "<thepoison>",
    "<bandageword>": "<theobject>", "<keepsake>": "<theobject>", "<catplace>": "<thetray>",
    "<bearing>": "<thestrain>", "<waits>": "<thestrain>", "<cockleg>": "<thecocked>",
    "<boxword>": "<thetray>",
}  # fmt: skip
"""What is still spoken of in the next clauses, without its name: "my tablets … he ate eight of
them", "in the box, strains, comes out, goes back, nothing"."""
_SPOKEN_OF = 4


def seek(
    tokens: list[Token], clauses: list[Clause], context: Context, trace: Trace | None = None
) -> tuple[list[Match], dict[int, dict[str, int]]]:
    """Every rule that is found, clause by clause; what is spoken of moves on with them."""
    asked = FOCUS_OF.get(context.asked, frozenset((context.asked,)))
    matches: list[Match] = []
    moods: dict[int, dict[str, int]] = {}
    focus = asked
    before: dict[tuple[object, ...], tuple[list[tuple[Rule, tuple[int, ...]]], frozenset[str]]] = {}
    named: dict[str, int] = {}
    for number, clause in enumerate(clauses):
        for token in tokens[clause.start : clause.end]:
            for key in token.keys & POINTS_BACK.keys():
                named[POINTS_BACK[key]] = number
        back = frozenset(key for key, at in named.items() if number - at <= _SPOKEN_OF)
        clause.keys |= back
        far = clause.end
        keys = clause.keys
        step = number + 1
        while step < len(clauses) and clauses[step].rank <= 2 and step <= number + 2:
            far = clauses[step].end
            keys = keys | clauses[step].keys
            step += 1
        said = tuple(t.word for t in tokens[clause.start : far])
        known = (said, clause.end - clause.start, clause.asked, focus, back)
        if known not in before:  # the same words again say the same again
            found, after = _in_clause(tokens, clause, far, keys, focus, asked, context.asked)
            start = clause.start
            relative = [(rule, tuple(p - start for p in at)) for rule, at in found]
            before[known] = (relative, after)
        shifted, after = before[known]
        focus = focus if is_aside(clause, tokens) else after
        for rule, at in shifted:
            if rule.about == "mood":
                begun = moods.setdefault(number, {})
                first = min(at) + clause.start
                begun[rule.value] = min(first, begun.get(rule.value, first))
                if trace:
                    last = max(at) + clause.start
                    trace.moods.append((rule, tokens[first].start, tokens[last].end))
            else:
                matches.append(Match(rule, tuple(p + clause.start for p in at), number))
    return matches, moods


def _of_pills(clause: Clause, asked: str) -> bool:
    """ "Gave him all his pills", where it was asked how he eats: neither food nor eating is
    spoken of."""
    told = clause.keys & {"<meds>", "<food>", "<eat>", "<appetiteword>"}
    return asked == "appetite" and told == {"<meds>"}


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
    if "swallowed" in own:
        own.discard("appetite")  # the thing that was eaten is spoken of, and no meal
    now = frozenset(own) if own else focus
    if own == {"vomiting"} and "dose" in focus:
        now |= {"dose"}  # "gave it at eight but he threw it up"
    if _of_pills(clause, asked_name):
        asked, now, focus = frozenset(), now - {"appetite"}, focus - {"appetite"}
    else:
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

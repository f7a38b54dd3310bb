"""Where words about something else end and the report begins, though no stop stands between.

"Hope you are not too busy his gums are white", "tenemos visitas se comió las pastillas": a
statement that names nothing of the patient's state and is complete is a sentence of its own.
What it wishes, asks, fears or denies then holds for itself alone. The reader reads such a
reply both ways, so a boundary that was none takes nothing away.
"""

from __future__ import annotations

from . import head_words as words
from .lexis import LEXIS
from .token import Token
from .wishes import tells_trouble

_COMMON = frozenset(
    f"<{name}>"
    for name in (
        "lot laid allday indoor mymine kinswhose took zero nothingup slight partly badly more "
        "fewer at_wound at_place seeword warmish pillkind palenoun redlike touched workedloose "
        "treatword bear handed playing pinkword neg patient person thing quietword adv aux be "
        "very bodyword sleeping"
    ).split()
)
"""Classes of words too common to tell anything alone."""


def _told_by() -> frozenset[str]:
    """The classes by which the rules that tell a trouble are looked for."""
    rules = LEXIS.rules
    other = ("idiom", "mood", "aside", "request", "danger")
    return frozenset(
        key
        for key, entries in LEXIS.by_key.items()
        if key[0] == "<"
        and key not in _COMMON
        and any(
            rules[n].about not in other and tells_trouble(rules[n].about, rules[n].value)
            for n, _ in entries
        )
    )


_TOPICAL = _told_by()
_ANOTHER = frozenset(("<animalnoun>", "<otheranimal>"))
_ENDS = frozenset(("<aside_close>", "<aside_verdict>"))
LONGEST = 16
"""Words over which such a statement may go on before the report."""


def topical(tokens: list[Token], at: int) -> bool:
    """Whether a word tells of the patient's state: itself, or with the next as one phrase."""
    token = tokens[at]
    if at + 1 < len(tokens) and not tokens[at + 1].cut:
        for phrase, key in LEXIS.phrases.get((token.word, tokens[at + 1].word), ()):
            if key in _TOPICAL and [t.word for t in tokens[at : at + len(phrase)]] == list(phrase):
                return True
    return _tells(token) and not (
        at and "<ownbody>" in token.keys and tokens[at - 1].word in ("my", "mi", "mis")
    )


def report_starts(tokens: list[Token]) -> list[int]:
    """Where, without a full stop, a report follows a complete statement about something else."""
    if any(t.asks for t in tokens):
        return _starts(tokens, _in_question(tokens))
    return _starts(tokens, frozenset())


def _in_question(tokens: list[Token]) -> frozenset[int]:
    """The words of sentences that end in a question mark: these are one question each."""
    out: set[int] = set()
    first = 0
    for at, token in enumerate(tokens):
        if token.cut >= 3:
            first = at
        if token.asks:
            out.update(range(first, at + 1))
    return frozenset(out)


def _starts(tokens: list[Token], asked: frozenset[int]) -> list[int]:
    out: list[int] = []
    start, after_head = 0, False
    for index in range(1, len(tokens)):
        token, before = tokens[index], tokens[index - 1]
        if token.word in words.BUTS:
            start = -1
        if token.cut >= 3:
            start, after_head = index, before.aside
            continue
        if start < 0 or index in asked:
            continue
        if topical(tokens, index - 1) and not _named_only(tokens, index - 1):
            phrase = _phrase_start(tokens, start, index - 1)
            if (
                phrase
                and not _feared(tokens, phrase)
                and _of_its_own(tokens, start, phrase)
                and _apart(tokens[start:phrase], tokens[phrase : index + 3])
            ):
                out.append(phrase)
                start = -1
                continue
            if not _asks_or_tells_of_us(tokens, start):
                start = -1
                continue
        if index - start > LONGEST:
            start = -1
        elif (
            _complete(tokens[start:index], token, after_head)
            and not _feared(tokens, index)
            and _of_its_own(tokens, start, index)
            and (token.cut or _ended(tokens, index) or _begins(tokens, start, index))
        ):
            out.append(index)
            start, after_head = index, True
    return out


def _tells(token: Token) -> bool:
    return token.word not in words.WEIGHTLESS and not token.keys.isdisjoint(_TOPICAL)


def stands_apart(tokens: list[Token], begun: int, first: int, last: int) -> bool:
    """Whether what begins at ``begun`` has ended before the finding from ``first`` to ``last``:
    a whole statement lies between, so it asks or wishes something else."""
    phrase = _phrase_start(tokens, begun, first)
    if not phrase or _feared(tokens, phrase):
        return False
    if any(_tells(tokens[at]) and not _named_only(tokens, at) for at in range(begun, phrase)):
        return False
    return _apart(tokens[begun:phrase], tokens[phrase : last + 2])


def _names_under_a_link(head: list[Token]) -> bool:
    """ "If his gums turn | white": what it asks is of the patient, and not yet at its end."""
    for place, token in enumerate(head):
        if token.word in words.LINKS or token.word in ("that", "que", "whether"):
            return any(_tells(t) for t in head[place:])
    return False


def _phrase_start(tokens: list[Token], start: int, at: int) -> int:
    """Where the phrase of a topical word begins: before its small words. 0 where it hangs on a
    preposition or a link, and so on what stands before."""
    while at > start and not tokens[at].cut:
        ahead = tokens[at - 1]
        if ahead.word in ("of", "de") and at - 2 > start:
            at -= 2
            continue
        if ahead.word in words.OF_IT and tokens[at - 2].word in _HANGING and at - 2 > start:
            return at  # "a manual for this | ..."
        if ahead.word in _HANGING:
            return 0
        if ahead.keys.isdisjoint(_SMALL) and not ahead.word.isdigit():
            return at
        at -= 1
    return 0


_SMALL = frozenset(("<function>", "<aux>", "<adv>", "<neg>", "<zero>", "<slight>", "<very>",
                    "<patient>", "<numberword>", "<be>", "<more>"))  # fmt: skip
_HANGING = frozenset(
    "and or nor y e o u ni to of for with from at by in on into about if whether that than as "
    "like when while because so que si para por con en de del a al como cuando porque i we you "
    "my mi him her them lo sin without until hasta before after antes despues sobre acerca".split()
) - frozenset("a her my mi lo".split())


def _apart(head: list[Token], report: list[Token]) -> bool:
    """Whether a statement of its own stands before: it has a verb, or two words that say
    something, and its last word does not take the report as what it is about."""
    last = head[-1]
    if (
        len(head) < 2
        or last.word in words.COMPLEMENT | words.REPORTING | words.OPEN_ENDED
        or _tells(last)
    ):
        return False
    if any(not t.keys.isdisjoint(_ANOTHER) or t.word in words.FOUND for t in head):
        return False
    clausal = any(t.word in words.FINITE for t in report)
    if not clausal and _names_under_a_link(head):
        return False
    asked = any(t.word in words.ASKED for t in head[:3])
    saying = sum(t.keys.isdisjoint(_SMALL) for t in head)
    verb_in = asked or any(_is_verb(t) for t in head)
    if not verb_in and (saying < 2 or head[0].word in words.DETERMINERS):
        return False
    return clausal or not _ends_in_a_verb(head) or last.word in words.WHOLE


"""Verbs whose object may be the trouble itself: "hope it stops the bleeding"."""


def _ends_in_a_verb(head: list[Token]) -> bool:
    """Whether the last word is a verb by what stands before it: "did not demonstrate"."""
    if len(head) < 2:
        return False
    before = head[-2].word
    if before in ("not", "never"):
        return len(head) < 3 or head[-3].word not in words.IS
    return before in words.TAKES


def _is_verb(token: Token) -> bool:
    return token.word in words.VERB or not token.keys.isdisjoint(("<aux>", "<be>", "<neg>"))


def _feared(tokens: list[Token], at: int) -> bool:
    """ "Worried he might vomit": a fear of what may come, and no report."""
    if tokens[at].cut or "<worry>" not in tokens[at - 1].keys:
        return False
    if any(
        t.word in ("was", "were", "got", "estaba", "andaba") for t in tokens[max(0, at - 4) : at]
    ):
        return True  # "I was worried his gums were pale but"
    ahead = tokens[at : at + 5]
    return any(t.word in words.TO_COME or "<future>" in t.keys for t in ahead)


def _named_only(tokens: list[Token], at: int) -> bool:
    """ "Is that from the drugs": a cause that is asked about, and no report."""
    ahead = [t.word for t in tokens[max(0, at - 2) : at]]
    return len(ahead) == 2 and ahead[0] in words.CAUSES and ahead[1] in words.DETERMINERS


def _of_its_own(tokens: list[Token], start: int, index: int) -> bool:
    """Whether the words before ``index`` are a wish, a question or a greeting, or else one about
    the writer, behind which the report brings a subject of its own."""
    ahead = [t.word for t in tokens[start:index]]
    if (
        "dream" in ahead
        or "sueno" in ahead
        or "sone" in ahead
        or tokens[index].word in words.GOES_ON
    ):
        return False
    if any(word in words.ASKED for word in ahead[:3]) or "<thanks>" in tokens[start].keys:
        return True
    of_us = ahead[0] in ("it", "its") or any(
        t.word in words.OF_US or "<person>" in t.keys for t in tokens[start : start + 4]
    )
    if not of_us:
        return start > 0 and tokens[start - 1].aside
    if index + 1 < len(tokens) and tokens[index + 1].word == "que":
        return False  # "yo soy la que"
    return (
        tokens[index].word in words.OWN_SUBJECT or bool(tokens[index].cut) or _ended(tokens, index)
    )


def _asks_or_tells_of_us(tokens: list[Token], start: int) -> bool:
    """Whether a statement begins as a wish, a question or as one about the writer: what it names
    of the patient is then in passing."""
    return any(t.word in words.ASKED or t.word in words.ABOUT_US for t in tokens[start : start + 2])


def _begins(tokens: list[Token], start: int, index: int) -> bool:
    """Whether a report may begin there, behind the words from ``start`` on."""
    asked = any(t.word in words.ASKED for t in tokens[start : start + 3])
    token = tokens[index]
    if token.word in words.OPENERS or topical(tokens, index):
        return True
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    if token.word[0].isdigit() or "<numberword>" in token.keys:
        return True
    return (
        after is not None
        and not after.cut
        and token.word in words.NOUN_AHEAD
        and (asked or topical(tokens, index + 1) or "<patient>" in after.keys)
    )


def _ended(tokens: list[Token], index: int) -> bool:
    """Whether the words before end as a statement does: "about that", "o no", "tonight"."""
    last, ahead = tokens[index - 1], tokens[index - 2] if index > 1 else None
    word = tokens[index].word
    if word in words.OPEN_ENDED and word not in words.OPENERS and word not in words.DETERMINERS:
        return False
    if ahead is not None and (ahead.word, last.word) in _PAIRS:
        return True
    if (
        ahead is not None
        and ahead.word in words.DETERMINERS
        and tokens[index - 3].word in words.COPULA
    ):
        return True  # "whats your view", "cuál es el teléfono"
    if ahead is not None and ahead.word in words.WHOM and last.word.endswith(_INFINITIVE):
        return True
    ends = last.word in words.WHOLE or not last.keys.isdisjoint(_ENDS)
    return ends or (topical(tokens, index - 1) and _named_only(tokens, index - 1))


_INFINITIVE = ("ar", "er", "ir", "arle", "irle", "erle")

_PAIRS = frozenset(
    (first, last)
    for first, last in (
        ("o", "no"), ("or", "not"), ("about", "that"), ("about", "it"), ("about", "this"),
        ("it", "all"), ("de", "mas"), ("about", "him"), ("about", "her"), ("cuenta", "antes"),
        ("your", "time"), ("otra", "vez"), ("que", "hacer"), ("que", "hago"), ("what", "do"),
        ("paso", "todo"), ("pasara", "todo"),
    )
)  # fmt: skip


def _complete(head: list[Token], report: Token, after_head: bool) -> bool:
    """Whether what stands before is a whole statement that is not about the patient alone."""
    last = head[-1]
    asked = any(t.word in words.ASKED for t in head[:3])
    if (
        head[0].word in words.PRONOUNS
        or head[0].word[0].isdigit()
        or "<numberword>" in head[0].keys
    ):
        return False
    if any(not t.keys.isdisjoint(_ANOTHER) for t in head):
        return False
    if not asked and any(t.word in words.FOUND for t in head):
        return False
    if len(head) > 1 and head[-2].word in words.LINKS and last.word in words.TIMES:
        return False
    if last.word in words.COMPLEMENT and report.word not in words.PRONOUNS:
        return False
    if report.word in words.GOES_ON or report.word in words.JOINERS:
        return False
    if report.word in words.LINKS:
        return False
    if last.word in words.REPORTING and (asked or report.word in words.PRONOUNS | words.IS):
        return False
    if last.word in words.OBJECTS and len(head) > 1 and head[-2].word in words.COMPLEMENT:
        return False
    if last.word in ("up", "down", "off", "over", "out") and len(head) > 1:
        return head[-2].word not in words.OBJECTS  # "I carry him up | the stairs"
    verb_in = asked or any(_is_verb(t) for t in head)
    paired = len(head) > 1 and (head[-2].word, last.word) in _PAIRS
    if not paired and last.word in words.OPEN_ENDED:
        return False
    if not verb_in and (
        not after_head or ("<person>" in last.keys and last.word not in words.WHOLE)
    ):
        return False
    if not verb_in and head[0].word in words.DETERMINERS and last.word not in words.WHOLE:
        return False
    if not after_head and len(head) < 2:
        return False
    told = not report.keys.isdisjoint(_TOPICAL)
    if told and "<good>" in last.keys and len(head) > 1 and head[-2].word in words.DETERMINERS:
        return False  # "the good leg"
    clausal = report.word in words.FINITE | words.DETERMINERS or bool(report.cut)
    if not clausal and _names_under_a_link(head[:-1]):
        return False
    if not clausal and not last.keys.isdisjoint(_TOPICAL):
        return last.word in words.WEIGHTLESS
    verb = _ends_in_a_verb(head)
    return not verb or paired or last.word in words.WHOLE or report.word in words.CLAUSAL

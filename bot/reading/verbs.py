"""What the last words of a statement leave open: a verb without its object, a link, a fear."""

from __future__ import annotations

from . import head_words as words
from .token import Token
from .topical import tells


def names_under_a_link(head: list[Token]) -> bool:
    """ "If his gums turn | white": what it asks is of the patient, and not yet at its end."""
    for place, token in enumerate(head):
        if token.word in words.LINKS or token.word in ("that", "que", "whether"):
            return any(tells(t) for t in head[place:])
    return False


def ends_in_a_verb(head: list[Token]) -> bool:
    """Whether the last word is a verb by what stands before it: "did not demonstrate"."""
    if len(head) < 2:
        return False
    before, last = head[-2].word, head[-1].word
    ahead = head[-3].word if len(head) > 2 else ""
    if before in ("not", "never"):
        return ahead not in words.IS
    if before in _ARTICLES:
        return ahead in _AHEAD_OF_CLITICS
    if before in ("para", "por") and last.endswith(("ar", "er", "ir")):
        return True
    return before in words.TAKES


_ARTICLES = frozenset("la lo los las".split())


_AHEAD_OF_CLITICS = frozenset("no ya se me te nos le que si yo".split())


def is_verb(token: Token, lang: str = "") -> bool:
    if token.word in OF_NOUNS and (lang != "es" or token.word != "no"):
        return False
    return token.word in words.VERB or not token.keys.isdisjoint(("<aux>", "<be>", "<neg>"))


OF_NOUNS = frozenset(
    "no not nothing none ningun ninguna ninguno without sin zero cero nada neither nor ni "
    "never".split()
)


def feared(tokens: list[Token], at: int) -> bool:
    """ "Worried he might vomit": a fear of what may come, and no report."""
    if tokens[at].cut or "<worry>" not in tokens[at - 1].keys:
        return False
    if any(
        t.word in ("was", "were", "got", "estaba", "andaba") for t in tokens[max(0, at - 4) : at]
    ):
        return True  # "I was worried his gums were pale but"
    ahead = tokens[at : at + 5]
    return any(t.word in words.TO_COME or "<future>" in t.keys for t in ahead)

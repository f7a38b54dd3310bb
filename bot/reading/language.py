"""Which of the two languages a reply is in, by its small words; a hint breaks ties."""

from __future__ import annotations

from bot.model.text import Lang

from .token import Token

_EN = frozenset(
    "the a an of to in on at is it he she his her was and my i you with not for has had but this "
    "that no its hes shes of from they we are been did dont wont today yes".split()
)
_ES = frozenset(
    "el la los las un una de que en es se le lo su con por para y pero ya muy hoy ayer si mi me "
    "esta nada tiene come hace mas bien mal como sin del al porque gracias".split()
)


def guess(tokens: list[Token], hint: Lang | None) -> Lang:
    """English or Spanish."""
    english = spanish = 0
    for token in tokens:
        for word in token.parts or (token.word,):
            english += word in _EN
            spanish += word in _ES
    if english == spanish:
        return hint or "en"
    return "en" if english > spanish else "es"

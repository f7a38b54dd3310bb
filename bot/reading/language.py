"""Which of the two languages a reply is in, by its small words; a hint breaks ties."""

from __future__ import annotations

from bot.model.lang import Lang

from .token import Token

_EN = frozenset(
    "the a an of to in on at is it he she his her was and my i you with not for has had but this "
    "that its hes shes of from they we are been did dont wont today yes "
    "minutes hours days times walked gave ate dog cat my its him".split()
)
_ES = frozenset(
    "el la los las un una de que en es se le lo su con por para y pero ya muy hoy ayer si mi me "
    "esta nada tiene come hace mas bien mal como sin del al porque gracias casi mucho mucha poco "
    "todo toda le les quiere comio ha he te nos son fue estan anda sigue desde hasta cuando "
    "tambien aun minutos minuto horas hora dias veces vez caminamos perro perra gato gata "
    "todavia ni eso esto este ella mañana manana noche dia dio di tarde agua".split()
)


HOMOGRAPHS = {
    "come": "es", "once": "en", "sale": "es", "pie": "es", "sin": "es", "rota": "es",
    "pare": "es", "sana": "es", "van": "es", "parte": "es", "coma": "es", "pan": "es",
    "ten": "en", "tire": "es", "pone": "es", "dice": "es", "cae": "es", "pisa": "es", "vale": "es",
    "dale": "es", "mala": "es", "hay": "es", "den": "es", "dado": "es", "sea": "es", "he": "en",
    "has": "en", "as": "en", "pies": "es", "menos": "es", "mete": "es", "toma": "es",
}  # fmt: skip
"""Words of both languages → the language in which our classes mean them ("" for both)."""


ONE_SENSE: dict[str, dict[str, frozenset[str]]] = {
    "son": {"en": frozenset(), "es": frozenset(("<person>", "<kin>"))},
    "yo": {"en": frozenset(("<person>", "<kin>")), "es": frozenset()},
    "lame": {"en": frozenset(("<lick>",)), "es": frozenset(("<limpword>",))},
}
"""Words with a class in each language → what to drop in a sentence of either."""


def settle_homographs(tokens: list[Token], hint: Lang) -> None:
    """Take from words of both languages the classes of the language not meant."""
    start = 0
    for index in range(1, len(tokens) + 1):
        if index < len(tokens) and tokens[index].cut < 3:
            continue
        sentence = tokens[start:index]
        if any(t.word in HOMOGRAPHS or t.word in ONE_SENSE for t in sentence):
            english = sum(t.word in _EN for t in sentence)
            spanish = sum(t.word in _ES for t in sentence)
            lang = hint if english == spanish else "en" if english > spanish else "es"
            for place, token in enumerate(sentence):
                before = sentence[place - 1] if place else None
                _choose(token, "en" if before and _helps(before) else lang)
        start = index


_HELPERS = frozenset("has have had its hes shes theyve been will wont didnt".split())


def _helps(token: Token) -> bool:
    """Before an English participle: "the wrap's come undone"."""
    return bool(token.base) or token.word in _HELPERS


def _choose(token: Token, lang: str) -> None:
    senses = ONE_SENSE.get(token.word)
    if senses:
        token.keys -= senses[lang]
        return
    meant = HOMOGRAPHS.get(token.word)
    if meant is None or meant == lang:
        return
    if token.word == "once":
        token.word, token.keys = "once_es", frozenset(("once_es", "<numword>"))
        return
    token.keys = frozenset((token.word,))


def guess(tokens: list[Token], hint: Lang | None) -> Lang:
    """English or Spanish."""
    english, spanish = marks_of(tokens)
    if english == spanish:
        return hint or "en"
    return "en" if english > spanish else "es"


def marks_of(tokens: list[Token]) -> tuple[int, int]:
    """How many small words are English, and how many Spanish."""
    english = spanish = 0
    for token in tokens:
        for word in token.parts or (token.word,):
            english += word in _EN
            spanish += word in _ES and word != "me"
    return english, spanish

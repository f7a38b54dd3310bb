"""Negation cues before and after our findings.

Source: the term sets `en_clinical` and `es_clinical` of `negspacy` 1.1 (NegEx: Chapman,
J Biomed Inform 2001;34:301), read from the installed package; its term sets need no spaCy.
Every cue is tried, save those listed with the reason why an owner cannot mean a denial.
"""

from __future__ import annotations

import pytest

from bot.model.reading import Context
from bot.reading import read
from tests.each import each

termsets = pytest.importorskip(
    "negspacy.termsets", reason="pip install --no-deps negspacy (72 kB; spaCy is not needed)"
)

FINDINGS = {
    "en": {
        "vomiting": ("vomiting", "yes"),
        "diarrhea": ("stool", "loose"),
        "swelling": ("swelling", "mild"),
        "pus": ("incision", "pus"),
        "bleeding": ("incision", "bleeding"),
        "seizures": ("seizure", "yes"),
    },
    "es": {
        "vómito": ("vomiting", "yes"),
        "diarrea": ("stool", "loose"),
        "hinchazón": ("swelling", "mild"),
        "pus": ("incision", "pus"),
        "convulsiones": ("seizure", "yes"),
    },
}
VERBS = {
    "en": {"vomit": ("vomiting", "yes"), "limp": ("weight_bearing", "partial")},
    "es": {},
}
AUXILIARIES = {
    "doesn't", "doesnt", "don't", "dont", "didn't", "didnt", "cannot", "can't", "cant",
    "couldn't", "couldnt",
}  # fmt: skip
COPULAS = {"wasn't", "wasnt", "weren't", "werent", "isn't", "isnt", "aren't", "arent"}

A_PLAN = "says that something is still to be found out, which denies nothing: doubt stays"
A_HEDGE = "a hedge; doubt raises the urgency, so the finding stands, marked unsure"
NO_OWNER = "a phrase of reports on images or of bad translation; no owner writes it"
ANOTHER_VERB = "names what was turned down (a dose, food), not a finding that is absent"

NOT_A_DENIAL_EN = {
    **dict.fromkeys(
        ("evaluate for", "rules out", "rule out", "rule him out", "rule her out",
         "rule patient out", "rule the patient out", "r/o", "ro"), A_PLAN),
    **dict.fromkeys(("doubt", "unlikely"), A_HEDGE),
    **dict.fromkeys(
        ("symptoms atypical", "versus", "ruled him out", "ruled her out", "ruled patient out",
         "ruled the patient out", "no cause of"), NO_OWNER),
    "declined": ANOTHER_VERB,
}  # fmt: skip
NOT_A_DENIAL_ES = {
    **dict.fromkeys(
        ("revisado para", "evaluar por", "hacer una prueba por", "excluir", "descartar",
         "descartar para", "descartarlo por", "descartarla por", "descartarlo", "descartarla",
         "descartar al paciente por", "descartar al paciente", "lo que debe descartarse es"),
        A_PLAN),
    **dict.fromkeys(("improbable", "no significativo", "no sospechoso"), A_HEDGE),
    **dict.fromkeys(
        ("no pueden ver", "no poder", "nunca desarrollado", "nunca tuve", "no anormal",
         "ninguna causa de", "no hay evidencia mamográfica de", "nada nuevo",
         "ninguna evidencia radiográfica de", "no apreciar", "no asociado con", "no demostrar",
         "no exhibir", "no sentir", "no tengo", "no saber de", "no se sabe que tiene",
         "no revelar", "no ver", "no ser", "paciente no era", "más bien que",
         "nada especial para", "r / o", "ro", "resuelto", "libre", "no me quejo de",
         "no aparece", "con ningún"), NO_OWNER),
    **dict.fromkeys(("rechazado", "declina"), ANOTHER_VERB),
}  # fmt: skip
A_WORD_THAT_RULES_OUT = ("descart", "exclu", "expulsó", "gobierna")
"""Every further cue with these is a form of "rule out", told of a clinician: A_PLAN, NO_OWNER."""


def _said(text: str, lang: str) -> set[tuple[str, str]]:
    context = Context(asked="none", day=7, lang="en" if lang == "en" else "es")
    return {(o.about, o.value) for o in read(text, context).observations}


def _cues(lang: str, place: str) -> list[str]:
    cues = dict.fromkeys(termsets.LANGUAGES[f"{lang}_clinical"][place])
    left_out = NOT_A_DENIAL_EN if lang == "en" else NOT_A_DENIAL_ES
    return [
        cue
        for cue in cues
        if cue not in left_out
        and not (lang == "es" and any(word in cue for word in A_WORD_THAT_RULES_OUT))
    ]


def _before() -> list[tuple[str, str, tuple[str, str]]]:
    tried = []
    for lang in ("en", "es"):
        for cue in _cues(lang, "preceding_negations"):
            if cue in AUXILIARIES:
                tried += [(lang, f"he {cue} {verb}", bad) for verb, bad in VERBS[lang].items()]
            elif cue in COPULAS:
                tried.append((lang, f"he {cue} vomiting", ("vomiting", "yes")))
            else:
                tried += [(lang, f"{cue} {word}", bad) for word, bad in FINDINGS[lang].items()]
    return tried


def _after() -> list[tuple[str, str, tuple[str, str]]]:
    tried = []
    for lang in ("en", "es"):
        for cue in _cues(lang, "following_negations"):
            if cue == "declined":
                continue
            seen = {"free": "", "was ruled out": "", "were ruled out": ""}.get(cue, " seen")
            tried += [(lang, f"{word} {cue}{seen}", bad) for word, bad in FINDINGS[lang].items()]
    return tried


@each(*((lang, w, b) for lang in FINDINGS for w, b in (FINDINGS[lang] | VERBS[lang]).items()))
def test_the_finding_alone_is_read(lang: str, word: str, bad: tuple[str, str]) -> None:
    frame = {"en": "he has {}", "es": "tiene {}"}[lang]
    if word in VERBS[lang]:
        frame = "i saw him {}"
    assert bad in _said(frame.format(word), lang)


@each(*_before())
def test_a_cue_before_denies(lang: str, text: str, bad: tuple[str, str]) -> None:
    assert not [said for said in _said(text, lang) if said == bad], text


@each(*_after())
def test_a_cue_after_denies(lang: str, text: str, bad: tuple[str, str]) -> None:
    assert bad not in _said(text, lang)


STILL_THERE = {
    "no further": None,  # owners' "no further vomiting" does deny; see below
    "not able to be": "not able to be sure but he has {}",
    "not certain if": "not certain if it matters but he has {}",
    "not certain whether": "not certain whether it matters, he has {}",
    "not necessarily": "not necessarily bad but he has {}",
    "without any further": None,
    "without difficulty": "walks without difficulty, he has {}",
    "without further": None,
    "might not": "it might not matter, he has {}",
    "not only": "not only {} but he is quiet",
    "no increase": "no increase, he still has {}",
    "no significant change": "no significant change, he still has {}",
    "no change": "no change, he still has {}",
    "no definite change": "no definite change, he still has {}",
    "not extend": "it does not extend far, he has {}",
    "not cause": "it does not cause him trouble but he has {}",
    "gram negative": None,  # a laboratory's word
    "not rule out": "we can not rule out {}",
    "not ruled out": "{} not ruled out",
    "not been ruled out": "{} has not been ruled out",
    "not drain": "it does not drain but he has {}",
    "no suspicious change": None,  # a report's word
    "no interval change": None,  # a report's word
    "no significant interval change": None,  # a report's word
}
STILL_THERE_ES = {
    "sin aumento": "sin aumento, sigue con {}",
    "ningún cambio": "ningún cambio, sigue con {}",
    "no causa": "no le causa molestia pero tiene {}",
    "no drena": "no drena pero tiene {}",
    "no estoy seguro si": "no estoy seguro si importa pero tiene {}",
    "no estoy seguro de si": "no estoy seguro de si importa pero tiene {}",
    "sin dificultad": "camina sin dificultad, tiene {}",
    "no necesariamente": "no necesariamente es malo pero tiene {}",
    "no solo": "no solo tiene {}, también está quieto",
    "duda": "sin duda tiene {}",
    "tengo dudas": "tengo dudas pero creo que tiene {}",
    "dudo": "dudo pero creo que tiene {}",
}


def test_every_false_negation_of_the_set_was_thought_of() -> None:
    assert set(STILL_THERE) == set(termsets.LANGUAGES["en_clinical"]["pseudo_negations"])
    assert set(STILL_THERE_ES) <= set(termsets.LANGUAGES["es_clinical"]["pseudo_negations"])


@each(
    *(
        (frame.format(word), bad, lang)
        for lang, frames in (("en", STILL_THERE), ("es", STILL_THERE_ES))
        for frame in frames.values()
        if frame
        for word, bad in FINDINGS[lang].items()
    )
)
def test_what_only_looks_like_a_denial(text: str, bad: tuple[str, str], lang: str) -> None:
    assert bad in _said(text, lang)


@pytest.mark.parametrize("word", FINDINGS["en"])
@pytest.mark.parametrize("cue", ["no further {}", "no more {}", "without any further {}"])
def test_owners_deny_with_no_further(cue: str, word: str) -> None:
    assert FINDINGS["en"][word] not in _said(cue.format(word), "en")


ENDS_EN = ("although", "but", "except", "however", "nevertheless", "still", "though", "yet",
           "apart from", "aside from")  # fmt: skip
"""The rest of the set ("as there are", "involving", "which", "cause of", "secondary to",
"origin of" and the like) names causes, in reports; no owner joins two findings with them."""
ENDS_ES = ("pero", "sin embargo", "aunque", "a pesar de que", "excepto", "aparte de")


@each(
    *[
        *((f"no vomiting {end} he has some swelling", "en") for end in ENDS_EN[:8]),
        *((f"no vomiting {end} some swelling", "en") for end in ENDS_EN),
        *((f"no vomiting, {end} a bit of diarrhea", "en") for end in ENDS_EN),
        *((f"sin vómito {end} tiene hinchazón", "es") for end in ENDS_ES),
    ]
)
def test_a_denial_ends_at_a_turn(text: str, lang: str) -> None:
    said = _said(text, lang)
    assert ("vomiting", "yes") not in said
    assert said & {("swelling", "mild"), ("stool", "loose")}


def test_the_ends_are_in_the_set() -> None:
    for lang, ends in (("en", ENDS_EN), ("es", ENDS_ES)):
        assert set(ends) <= set(termsets.LANGUAGES[f"{lang}_clinical"]["termination"])

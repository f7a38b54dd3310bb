"""Findings that are only wished away, asked about, feared or told of another: put together from
parts. Each says nothing of this patient now, so none may alarm."""

from __future__ import annotations

from itertools import product
from typing import Final

_BARE_EN = "vomits blood | has a seizure | collapses | vomits again | bleeds | cant breathe"
_WOUND_EN = "the wound opens | his gums turn white | his leg swells up | the wound smells"
_BARE_ES = "vomita sangre | convulsiona | se desmaya | le sangra la herida | no puede respirar"
GOVERNED: Final = (
    ("what if he | what should i do if he | is it normal if he | let me know what to do if he",
     _BARE_EN),
    ("what if | what should i do if | what happens if | should i ring if | do i call you if",
     _WOUND_EN),
    ("hope he doesnt | i hope she doesn't | hopefully he wont | praying he doesnt | hope he never",
     "vomit again | have a seizure | bleed | collapse | get worse | lick the wound open"),
    ("im worried he might | im scared that he will | worried she could | afraid he may",
     "vomit blood | have a seizure | collapse | bleed | swallow the bandage"),
    ("can he | could she | will he",
     "have a seizure from this medicine | vomit from the tablets | bleed from the stitches"),
    ("my other dog | the neighbours cat | my sisters dog | our old dog",
     "vomited blood | had a seizure | collapsed last night | has white gums"),
    ("my husband | my daughter | my mum | my neighbour",
     "had a seizure | collapsed last night | threw up all night"),
    ("he | she", "had a seizure two years ago | vomited blood last year | used to collapse"),
    ("no | there is no | i dont see any | he has no | without any",
     "blood | pus | swelling | bad smell | blood or pus"),
    ("qué hago si | qué pasa si | y si | me pregunto qué hacer si | es normal si", _BARE_ES),
    ("espero que no | ojalá no | dios quiera que no | primero dios no",
     "vomite otra vez | convulsione | se desmaye | le sangre la herida | se ponga peor"),
    ("me da miedo que | tengo miedo de que | me preocupa que",
     "vomite sangre | le dé una convulsión | se desmaye | se le abra la herida"),
    ("mi otro perro | el gato de la vecina | la perra de mi hermana",
     "vomitó sangre | convulsionó | se desmayó anoche"),
    ("mi esposo | mi hija | mi suegra", "convulsionó | se desmayó anoche | vomitó toda la noche"),
    ("no tiene | no le veo | no hay | sin", "sangre | pus | mal olor | sangre ni pus"),
)  # fmt: skip
"""What governs, and what is governed; every one goes with every other of its row."""


def governed() -> tuple[str, ...]:
    """Every text of the table."""
    out: list[str] = []
    for heads, ends in GOVERNED:
        for pair in product(heads.split("|"), ends.split("|")):
            out.append(" ".join(part.strip() for part in pair))
    return tuple(out)

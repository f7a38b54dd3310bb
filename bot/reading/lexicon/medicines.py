"""Medicines that owners name: what their own vet gives, and those meant for people.

Generic names; the common ways to misspell them are caught by the spelling repair.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.spelling import distance

_PRESCRIBED = """
carprofen: carprofeno carprofin carprophen carpro
meloxicam: melox meloxican
robenacoxib:
firocoxib:
grapiprant:
deracoxib:
gabapentin: gabapentina gaba gabapentine gabba gabapentim
tramadol:
amantadine: amantadina
buprenorphine: buprenorfina bupe
trazodone: trazodona traz
cephalexin: cefalexina cefalexin keflex cephalex
amoxicillin: amoxicilina amox amoxi
clindamycin: clindamicina clinda
doxycycline: doxiciclina doxi
enrofloxacin: enrofloxacina enro
metronidazole: metronidazol
acepromazine: acepromacina ace
famotidine: famotidina
omeprazole: omeprazol
maropitant:
prednisone: prednisona pred
methocarbamol: metocarbamol
dipyrone: dipirona metamizol
antibiotic: antibiotics antibiotico antibioticos abx
painkiller: painkillers analgesico analgesicos
anti-inflammatory: antiinflammatory antiinflamatorio desinflamatorio
"""
_HUMAN = """
paracetamol: acetaminophen acetaminofen paracetamols acetaminofén paracetemol parasetamol
ibuprofen: ibuprofeno ibuprophen ibuprofin ibu ibuprofens
aspirin: aspirina aspirins aspirinas aspirine
naproxen: naproxeno
diclofenac: diclofenaco
ketorolac: ketorolaco
codeine: codeina
antidepressant: antidepressants antidepresivo antidepresivos
"""

CANONICAL: dict[str, str] = {}
HUMAN: set[str] = set()
for _text, _human in ((_PRESCRIBED, False), (_HUMAN, True)):
    for _line in _text.strip().splitlines():
        _name, _, _others = _line.partition(":")
        for _form in (_name, *_others.split()):
            CANONICAL[_form.replace("é", "e")] = _name
            if _human:
                HUMAN.add(_form.replace("é", "e"))


def canonical(word: str, plan: Sequence[str]) -> str | None:
    """The plan's own name for a medicine word, else the generic one; None for other words."""
    generic = CANONICAL.get(word)
    for name in plan:
        plain = name.casefold()
        if word == plain or generic == plain:
            return name
        if generic and generic in CANONICAL.get(plain.split()[0], plain):
            return name
        if len(word) >= 6 and word[0] == plain[0] and distance(word, plain.split()[0]) <= 2:
            return name
    return generic

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
ibuprofen: ibuprofeno ibuprophen ibuprofin ibu ibuprofens ibuprofenos
aspirin: aspirina aspirins aspirinas aspirine
naproxen: naproxeno
diclofenac: diclofenaco
ketorolac: ketorolaco
codeine: codeina cocodamol codamol
nimesulide: nimesulida
oxycodone: oxicodona
hydrocodone: hidrocodona
morphine: morfina
antidepressant: antidepressants antidepresivo antidepresivos
sertraline: sertralina
fluoxetine: fluoxetina
citalopram: escitalopram
venlafaxine: venlafaxina duloxetine duloxetina
amitriptyline: amitriptilina
clonazepam: lorazepam alprazolam
zolpidem: zopiclone zopiclona
lithium: litio
quetiapine: quetiapina
methylphenidate: metilfenidato lisdexamfetamine amphetamine amphetamines anfetamina anfetaminas
losartan: candesartan valsartan telmisartan irbesartan
lisinopril: ramipril perindopril
captopril:
bisoprolol: metoprolol propranolol atenolol carvedilol
nifedipine: nifedipino
statin: statins estatina estatinas simvastatin atorvastatin atorvastatina rosuvastatin
warfarin: warfarina apixaban rivaroxaban clopidogrel
metformin: metformina gliclazide glibenclamida semaglutide
levothyroxine: levotiroxina thyroxine
loratadine: loratadina
pseudoephedrine: pseudoefedrina phenylephrine fenilefrina decongestant descongestionante
salbutamol: albuterol inhaler inhalers inhalador ventolin
loperamide: loperamida
colchicine: colchicina
methotrexate: metotrexato
tamoxifen: tamoxifeno finasteride minoxidil
contraceptive: contraceptives anticonceptivo anticonceptivos anticonceptiva anticonceptivas
vitamin D: calciferol colecalciferol cholecalciferol
sildenafil: viagra
melatonin: melatonina
nicotine: nicotina vape vapes
cannabis: marihuana marijuana edible edibles
"""
_TRADE = """
paracetamol: tylenol panadol calpol tempra lemsip
ibuprofen: advil nurofen motrin
naproxen: aleve
diclofenac: voltarol voltaren
sertraline: zoloft
fluoxetine: prozac
clonazepam: xanax rivotril valium
methylphenidate: ritalin adderall
"""
"""Names of the trade that households say for the substance, for safety's sake only."""

CANONICAL: dict[str, str] = {}
HUMAN: set[str] = set()
for _text, _human in ((_PRESCRIBED, False), (_HUMAN, True), (_TRADE, True)):
    for _line in _text.strip().splitlines():
        _name, _, _others = _line.partition(":")
        for _form in (_name.replace(" ", "_"), *_others.split()):
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
